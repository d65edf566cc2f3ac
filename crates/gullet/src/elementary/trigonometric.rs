//! Sine, cosine and tangent.

use super::bits::{ROUNDER, by_parity, flip, flip_second_half, head, select};
use core::f64::consts::FRAC_2_PI;

/// pi/2 in three parts; the first two have 33 bits, so that their products with a number of
/// quarter turns below 2^20 are exact.
const QUARTER_1: f64 = 1.570_796_326_734_125_6;
const QUARTER_2: f64 = 6.077_100_506_303_966e-11;
const QUARTER_3: f64 = 2.022_266_248_795_950_6e-21;

/// Angles from here on count as no turn at all.
const LARGEST: f64 = 35_184_372_088_832.0;

/// An angle as quarter turns plus a remainder in `-pi/4..pi/4`, the remainder as a sum of two.
struct Reduced {
    quarters: u64,
    r: f64,
    r_low: f64,
}

/// Reduces an angle that is not negative.
///
/// The remainder is right to 2^-107 up to 16384 rad, which no remainder of a double in that range
/// is small enough to feel. Up to 2^20 quarter turns the products are exact but the rest of pi/2 is
/// missed by the odd ulp close to its multiples; up to 2^45 rad the result is that of an angle less
/// than an ulp away. Beyond, where neighbouring angles lie a hundredth of a radian and more apart,
/// the remainder is 0. Infinity and NaN give NaN.
#[inline(always)]
fn reduce(angle: f64) -> Reduced {
    let angle = select(angle < LARGEST, angle, angle * 0.0);
    let rounded = angle * FRAC_2_PI + ROUNDER;
    let k = rounded - ROUNDER;
    let first = angle - k * QUARTER_1;
    let step = k * QUARTER_2;
    let second = first - step;
    let missed = ((first - second) - step) - k * QUARTER_3;
    let r = second + missed;
    Reduced {
        quarters: rounded.to_bits(),
        r,
        r_low: (second - r) + missed,
    }
}

/// Sine of `r + r_low` as `(r, rest)`: `r + r^3 S(r^2)`, `S` of degree 5 for `abs(r) <= pi/4`,
/// error of the polynomial 2^-58.0 of the result.
#[inline(always)]
fn sin_parts(r: f64, r_low: f64) -> (f64, f64) {
    let z = r * r;
    let s = polynomial!(z;
        -0.16666666666666632,
        0.008333333333322486,
        -0.00019841269829853369,
        2.755731370506293e-06,
        -2.505075988867534e-08,
        1.5896886410989214e-10,
    );
    (r, z * r * s + (r_low - 0.5 * z * r_low))
}

/// Cosine of `r + r_low` as `(leading, rest)`: `1 - r^2/2 + r^4 C(r^2)`, `C` of degree 5 for
/// `abs(r) <= pi/4`, error of the polynomial 2^-63.9 of the result.
#[inline(always)]
fn cos_parts(r: f64, r_low: f64) -> (f64, f64) {
    let z = r * r;
    let c = polynomial!(z;
        0.041666666666666595,
        -0.0013888888888873338,
        2.480158728899748e-05,
        -2.75573142152985e-07,
        2.0875705114749127e-09,
        -1.1358732751958578e-11,
    );
    let half = 0.5 * z;
    let leading = 1.0 - half;
    (leading, ((1.0 - leading) - half) + (z * z * c - r * r_low))
}

/// Sine of `x` rad.
///
/// `sin(-x) = -sin(x)` bit for bit; the sine of the double nearest to pi/2 is 1. An error of at
/// most 1 ulp is kept up to 16384 rad; beyond, up to 2^45, the result is that of an angle less than
/// an ulp away, and larger angles count as 0. Infinity gives NaN.
#[inline(always)]
pub fn sin(x: f64) -> f64 {
    let angle = reduce(x.abs());
    let (s, s_rest) = sin_parts(angle.r, angle.r_low);
    let (c, c_rest) = cos_parts(angle.r, angle.r_low);
    let value = by_parity(angle.quarters, s + s_rest, c + c_rest);
    flip(flip_second_half(value, angle.quarters), x)
}

/// Cosine of `x` rad.
///
/// `cos(-x) = cos(x)` and `cos(0) = 1`. Range as for [`sin`].
#[inline(always)]
pub fn cos(x: f64) -> f64 {
    let angle = reduce(x.abs());
    let (s, s_rest) = sin_parts(angle.r, angle.r_low);
    let (c, c_rest) = cos_parts(angle.r, angle.r_low);
    let value = by_parity(angle.quarters, c + c_rest, s + s_rest);
    flip_second_half(value, angle.quarters.wrapping_add(1))
}

/// Tangent of `x` rad.
///
/// `tan(-x) = -tan(x)`; finite for every finite angle, since no double is an odd multiple of pi/2.
/// Range as for [`sin`].
///
/// The quotient of sine and cosine, each as a sum of two numbers, corrected by its remainder.
#[inline(always)]
pub fn tan(x: f64) -> f64 {
    let angle = reduce(x.abs());
    let (s, s_rest) = sin_parts(angle.r, angle.r_low);
    let (c, c_rest) = cos_parts(angle.r, angle.r_low);
    let (sin_high, cos_high) = (s + s_rest, c + c_rest);
    let (sin_low, cos_low) = ((s - sin_high) + s_rest, (c - cos_high) + c_rest);

    let numerator = by_parity(angle.quarters, sin_high, -cos_high);
    let numerator_low = by_parity(angle.quarters, sin_low, -cos_low);
    let denominator = by_parity(angle.quarters, cos_high, sin_high);
    let denominator_low = by_parity(angle.quarters, cos_low, sin_low);
    // Only a reduction of more than 2^20 quarter turns can be off by so much as to leave nothing.
    let denominator = select(denominator == 0.0, 1e-18, denominator);

    let reciprocal = 1.0 / denominator;
    let quotient = numerator * reciprocal;
    let (q, d) = (head(quotient), head(denominator));
    let (q_low, d_low) = (quotient - q, denominator - d);
    let remainder = (((numerator - q * d) - q * d_low) - q_low * d) - q_low * d_low;
    let remainder = remainder + (numerator_low - quotient * denominator_low);
    flip(quotient + remainder * reciprocal, x)
}
