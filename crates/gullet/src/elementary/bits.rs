//! Exact operations on the bits of a number.

/// Added to a number below 2^51 in size, it leaves the nearest whole number (ties to even) in the
/// low bits of the sum; subtracted again, as a number.
pub(super) const ROUNDER: f64 = 6_755_399_441_055_744.0;

const SIGN: u64 = 1 << 63;
const FRACTION: u64 = (1 << 52) - 1;
const LOW_HALF: u64 = (1 << 27) - 1;

/// The leading 26 bits of `x`: products of two heads are exact, and so is `x - head(x)`.
#[inline(always)]
pub(super) fn head(x: f64) -> f64 {
    f64::from_bits(x.to_bits() & !LOW_HALF)
}

/// `x` with the sign changed where `sign` is negative (negative zero included).
#[inline(always)]
pub(super) fn flip(x: f64, sign: f64) -> f64 {
    f64::from_bits(x.to_bits() ^ (sign.to_bits() & SIGN))
}

/// `x` with the sign changed where bit 1 of `quarter` is set.
#[inline(always)]
pub(super) fn flip_second_half(x: f64, quarter: u64) -> f64 {
    f64::from_bits(x.to_bits() ^ ((quarter << 62) & SIGN))
}

/// `a` where the condition holds, else `b`, without a branch: the compiler duplicates what lies between
/// two branches on one condition.
#[inline(always)]
pub(super) fn select(condition: bool, a: f64, b: f64) -> f64 {
    core::hint::select_unpredictable(condition, a, b)
}

/// The nearest whole number (ties to even); by sums, since the oldest vectors have no instruction for it.
#[inline(always)]
fn nearest(x: f64) -> f64 {
    // From 2^51 on the sum may be off by one; from 2^52 on every number is whole.
    const LARGE: f64 = 2_251_799_813_685_248.0;
    let small = (x + ROUNDER) - ROUNDER;
    select(x.abs() < LARGE, small, x)
}

/// The largest whole number at or below `x`; numbers from 2^51 on count as whole.
#[inline(always)]
pub fn floor(x: f64) -> f64 {
    let near = nearest(x);
    near - select(near > x, 1.0, 0.0)
}

/// The smallest whole number at or above `x`; numbers from 2^51 on count as whole.
#[inline(always)]
pub fn ceil(x: f64) -> f64 {
    let near = nearest(x);
    near + select(near < x, 1.0, 0.0)
}

/// `odd` where bit 0 of `number` is set, else `even`; a mask, because a comparison of 64-bit
/// integers is not among the oldest vector instructions.
#[inline(always)]
pub(super) fn by_parity(number: u64, even: f64, odd: f64) -> f64 {
    let mask = 0_u64.wrapping_sub(number & 1);
    f64::from_bits((even.to_bits() & !mask) | (odd.to_bits() & mask))
}

/// `(k, m)` with `x = 2^k m` and `m` in `from..2 from`, `from` in 1/2..1, for positive finite `x`; anything
/// else gives some such pair of finite numbers.
#[inline(always)]
pub(super) fn split_exponent(x: f64, from: f64) -> (f64, f64) {
    const TWO_54: f64 = 18_014_398_509_481_984.0;
    const TWO_52: f64 = 4_503_599_627_370_496.0;
    let from = from.to_bits();
    let subnormal = x < f64::MIN_POSITIVE;
    let normal = select(subnormal, x * TWO_54, x);
    let bias = select(subnormal, TWO_52 + 1077.0, TWO_52 + 1023.0);
    let shifted = normal
        .to_bits()
        .wrapping_add(1.0_f64.to_bits().wrapping_sub(from));
    let k = f64::from_bits((shifted >> 52) | TWO_52.to_bits()) - bias;
    let m = f64::from_bits((shifted & FRACTION).wrapping_add(from));
    (k, m)
}

/// `x 2^k` for `k` in -1077..=1025, rounded once: in two steps, since 2^k alone may be out of range.
/// `biased` holds `k + 2046` in its low 12 bits.
#[inline(always)]
pub(super) fn scale(x: f64, biased: u64) -> f64 {
    let half = (biased & 0xfff) >> 1;
    let first = f64::from_bits(half << 52);
    let second = f64::from_bits(biased.wrapping_sub(half) << 52);
    x * first * second
}
