//! Exponential, logarithm and power.

use super::bits::{ROUNDER, head, scale, select, split_exponent};
use core::f64::consts::{FRAC_1_SQRT_2, LOG2_E};

/// ln 2 in two parts; the first has 41 bits, so that its product with an exponent is exact.
const LN_2_HIGH: f64 = 0.693_147_180_559_663;
const LN_2_LOW: f64 = 2.823_529_056_303_157_7e-13;

/// `e` to the power `high + low`, where `low` is a small correction of `high`.
///
/// The argument is reduced to `k ln 2 + r` with `abs(r) <= ln(2)/2`, and
/// `e^r = 1 + r + r^2 P(r)`, `P` of degree 9; error of the polynomial 2^-56.3 of the result.
#[inline(always)]
fn exp_of_sum(high: f64, low: f64) -> f64 {
    const OVERFLOW: f64 = 709.8;
    const UNDERFLOW: f64 = -745.2;
    let biased = high * LOG2_E + (ROUNDER + 2046.0);
    let k = biased - (ROUNDER + 2046.0);
    let reduced = high - k * LN_2_HIGH;
    let correction = k * LN_2_LOW - low;
    let r = reduced - correction;
    let r_low = (reduced - r) - correction;
    let p = polynomial!(r;
        0.5000000000000011,
        0.16666666666666413,
        0.041666666666530155,
        0.00833333333349446,
        0.0013888888943630203,
        0.00019841269506579753,
        2.4801493098819076e-05,
        2.7557586375892424e-06,
        2.7630248407136307e-07,
        2.5000060220785995e-08,
    );
    let sum = 1.0 + r;
    let sum_low = (1.0 - sum) + r;
    let value = scale(sum + (sum_low + (r_low + r * r * p)), biased.to_bits());
    let value = select(high < UNDERFLOW, 0.0, value);
    select(high > OVERFLOW, f64::INFINITY, value)
}

/// `e` to the power `x`.
///
/// Overflows to infinity and underflows gradually to zero; `exp(0) = 1` exactly.
#[inline(always)]
pub fn exp(x: f64) -> f64 {
    exp_of_sum(x, 0.0)
}

/// Natural logarithm of `x`.
///
/// `ln(1) = 0` exactly; zero gives negative infinity, a negative number NaN.
///
/// With `x = 2^k m`, `f = m - 1` and `s = f/(2 + f)`, `ln m = ln((1 + s)/(1 - s))` is
/// `2 s + s R(s^2)`, written as `f - (f^2/2 - s (f^2/2 + R))`, which keeps the leading term exact;
/// `R(z)/z` of degree 6 for `abs(s) <= 0.1716`, error of the polynomial 2^-59.5 of the result.
#[inline(always)]
pub fn ln(x: f64) -> f64 {
    let (k, m) = split_exponent(x, FRAC_1_SQRT_2);
    let f = m - 1.0;
    let s = f / (2.0 + f);
    let z = s * s;
    let r = z * polynomial!(z;
        0.6666666666666734,
        0.39999999999416536,
        0.2857142874206728,
        0.22222198599810156,
        0.18183563176921325,
        0.15314075331059604,
        0.1479573907144314,
    );
    let half_square = 0.5 * f * f;
    let value = k * LN_2_HIGH - ((half_square - (s * (half_square + r) + k * LN_2_LOW)) - f);
    at_ends_of_ln(x, value)
}

/// The logarithm at zero, negative numbers, infinity and NaN; elsewhere `value`.
#[inline(always)]
fn at_ends_of_ln(x: f64, value: f64) -> f64 {
    let value = select(x < f64::INFINITY, value, x);
    let outside = select(x == 0.0, f64::NEG_INFINITY, f64::NAN);
    select(x > 0.0, value, outside)
}

/// Natural logarithm of a positive finite `x` as a sum `(high, low)`, the second at most 2^-10 of
/// the first; error at most about 2^-61 of the logarithm.
///
/// With `x = 2^k m`, `m` in `2^(-1/8)..2^(7/8)`, and the nearest `c` of four numbers close to the
/// fourth roots of 1, 2, 4 and 8, `s = (m - c)/(m + c)` is below 0.0436 in size, and
/// `ln x = k ln 2 + ln c + 2 s + s^3 P(s^2)`. The cubic term is then small enough for plain doubles;
/// the others are sums of two, by heads of 26 bits, whose products are exact. `P` of degree 4, error
/// of the polynomial 2^-68.6 of `2 s`.
#[inline(always)]
fn ln_in_two(x: f64) -> (f64, f64) {
    const SMALLEST: f64 = 0.9170040432046712;
    let (k, m) = split_exponent(x, SMALLEST);
    let choose = |first: f64, second: f64, third: f64, fourth: f64| {
        let below = select(m < 1.08984375, first, second);
        let above = select(m < 1.54296875, third, fourth);
        select(m < 1.296875, below, above)
    };
    let c = choose(1.0, 1.189208984375, 1.414306640625, 1.681884765625);
    // As for ln 2, the first parts are multiples of 2^-41, so that `whole` below is exact.
    let ln_c = choose(
        0.0,
        0.1732883670870251,
        0.3466394043771288,
        0.5199150488738269,
    );
    let ln_c_low = choose(
        0.0,
        1.7383930281051606e-13,
        1.5160765833917038e-13,
        2.5243458797770632e-14,
    );

    let f = m - c;
    let d = m + c;
    let d_high = head(d);
    let d_low = m - (d_high - c);
    let reciprocal = 1.0 / d;
    let s = f * reciprocal;
    let s_high = head(s);
    let s_low = ((f - s_high * d_high) - s_high * d_low) * reciprocal;
    let z = s * s;
    let cubic = s
        * z
        * polynomial!(z;
            0.6666666666666667,
            0.399999999999377,
            0.28571428731125387,
            0.22222047938286896,
            0.1826708803557042,
        );
    // The cubic term is that of the rounded s; this is half of what the rest of s adds to it, to first order.
    let change = z * (s_low - (s - s_high));

    let linear = 2.0 * s_high;
    let whole = k * LN_2_HIGH + ln_c;
    let total = whole + linear;
    let missed = (whole - total) + linear;
    (
        total,
        missed + ((2.0 * (s_low + change) + cubic) + (k * LN_2_LOW + ln_c_low)),
    )
}

/// `x` to the power `y`, for `x >= 0`.
///
/// `pow(x, 0) = 1` and `pow(1, y) = 1`, the infinities included; `pow(0, y)` is 0 for `y > 0` and
/// infinity for `y < 0`; `pow(x, 1) = x` exactly. Narrower than C: a negative `x` gives NaN for
/// every `y` (negative zero counts as zero), and NaN in either argument gives NaN.
///
/// `e^(y ln x)` with the logarithm and the product as sums of two numbers.
#[inline(always)]
pub fn pow(x: f64, y: f64) -> f64 {
    // With a larger y every x but 1 overflows or underflows; the products below stay finite.
    const LARGEST: f64 = 18_446_744_073_709_551_616.0;
    let y = select(y > LARGEST, LARGEST, y);
    let y = select(y < -LARGEST, -LARGEST, y);
    let (ln, rest) = ln_in_two(x);
    let ln_high = head(ln);
    let ln_low = (ln - ln_high) + rest;
    let y_high = head(y);
    let product = y_high * ln_high;
    let product_low = (y - y_high) * ln_high + y * ln_low;
    let high = product + product_low;
    let low = (product - high) + product_low;
    let value = exp_of_sum(high, low);

    // Selections on y itself: one more on its sign, and the loop is no longer vectorised at SSE2.
    let grows = (x > 1.0) == (y > 0.0);
    let end = select(grows, f64::INFINITY, 0.0);
    let end = select(y == 0.0, 1.0, end + y * 0.0);
    let at_end = (x == 0.0) | (x == f64::INFINITY);
    let value = select(at_end, end, value);
    select(x >= 0.0, value, f64::NAN)
}

/// `x` to the power `y`, for positive `x` and `abs(y) <= 1`; anything else gives NaN.
///
/// Infinity counts as 2^1024, the number just beyond those that doubles hold. Half the work of [`pow`]: with so small an exponent the logarithm need not be a sum of two.
/// `fractional_power(1, y) = 1` and `fractional_power(x, 0) = 1` exactly.
///
/// With `x = 2^k m`, `f = m - 1` and `s = f/(2 + f)`, `log2 m = s Q(s^2)`, `Q` of degree 7 for
/// `abs(s) <= 0.1716`, error of the polynomial 2^-56.0 of the result. The power is `2^(y k + y log2 m)`,
/// its exponent a whole number and a rest `r`, and `2^r = 1 + r P(r)`, `P` of degree 10 for
/// `abs(r) <= 1/2`, error of the polynomial 2^-56.7 of the result.
#[inline(always)]
pub fn fractional_power(x: f64, y: f64) -> f64 {
    let (k, m) = split_exponent(x, FRAC_1_SQRT_2);
    let f = m - 1.0;
    let s = f / (m + 1.0);
    let log2_m = s * polynomial!(s * s;
        2.8853900817779268,
        0.9617966939261171,
        0.5770780162752296,
        0.41219860033580163,
        0.32059711505051,
        0.2624056194353651,
        0.2191417750433818,
        0.23093590640351794,
    );
    // The head of y times a whole number of 11 bits is exact.
    let y_high = head(y);
    let large = y_high * k;
    let small = (y - y_high) * k + y * log2_m;
    let biased = (large + small) + (ROUNDER + 2046.0);
    let r = (large - (biased - (ROUNDER + 2046.0))) + small;
    let p = polynomial!(r;
        core::f64::consts::LN_2,
        0.24022650695910108,
        0.055504108664821715,
        0.009618129107601152,
        0.0013333558146546994,
        0.00015403530449548884,
        1.5252733633973174e-05,
        1.3215438600381633e-06,
        1.0178159804686203e-07,
        7.073270988211418e-09,
        4.4389297870162303e-10,
    );
    let value = scale(1.0 + r * p, biased.to_bits());
    let inside = (x > 0.0) & (y.abs() <= 1.0);
    select(inside, value, f64::NAN)
}
