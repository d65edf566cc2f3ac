//! Inverse sine, cosine, half versine and tangent.

use super::bits::{flip, head, select};
use core::f64::consts::{FRAC_PI_2, FRAC_PI_4};

/// What pi/2 as a double lacks.
const FRAC_PI_2_LOW: f64 = 6.123_233_995_736_766e-17;

/// `(asin(t) - t)/t` from `z = t^2`: `z A(z)`, `A` of degree 11 for `abs(t) <= 1/2`, error of the
/// polynomial 2^-55.9 of `asin(t)`.
#[inline(always)]
fn asin_rest(z: f64) -> f64 {
    z * polynomial!(z;
        0.16666666666665383,
        0.07500000000342948,
        0.04464285682354267,
        0.030381959329166465,
        0.02237175356826803,
        0.017359770476205585,
        0.013884604352287538,
        0.012173242641307343,
        0.006511004441017392,
        0.019573510905748222,
        -0.016293478932980134,
        0.031958573718924084,
    )
}

/// `square - root^2` for the rounded root of `square`, exact but for the last bit.
#[inline(always)]
fn remainder_of_root(square: f64, root: f64) -> f64 {
    let high = head(root);
    let low = root - high;
    ((square - high * high) - 2.0 * (high * low)) - low * low
}

/// Angle in `-pi/2..=pi/2`, in rad, whose sine is `x`.
///
/// `asin(1)` is the double nearest to pi/2; outside `-1..=1` NaN. Up to 1/2 a polynomial, from there
/// on `pi/2 - 2 asin(sqrt((1 - x)/2))`.
#[inline(always)]
pub fn asin(x: f64) -> f64 {
    let a = x.abs();
    let small = a < 0.5;
    let square = select(small, a * a, 0.5 - 0.5 * a);
    let root = (0.5 - 0.5 * a).sqrt();
    let rest = asin_rest(square);
    // What the rounding of the root took away, remainder/(2 root), counts only for roots of
    // 1/4..1/2, where a line stands for 1/(2 root) to within a tenth.
    let root_low = remainder_of_root(square, root) * (2.914 - 4.0 * root);
    let direct = a + a * rest;
    let high = FRAC_PI_2 - 2.0 * root;
    let low = ((FRAC_PI_2 - high) - 2.0 * root) + FRAC_PI_2_LOW;
    let folded = high + (low - 2.0 * (root_low + root * rest));
    flip(select(small, direct, folded), x)
}

/// Angle in `0..=pi`, in rad, whose cosine is `x`.
///
/// `acos(1) = 0` exactly, `acos(-1)` is the double nearest to pi; outside `-1..=1` NaN. Near 1 the
/// angle depends on the rounding of `x`: where half the angle's sine is known, `asin` of it is the
/// better choice.
#[inline(always)]
pub fn acos(x: f64) -> f64 {
    let a = x.abs();
    let small = a < 0.5;
    let square = select(small, a * a, 0.5 - 0.5 * a);
    let root = (0.5 - 0.5 * a).sqrt();
    let rest = asin_rest(square);
    let root_low = remainder_of_root(square, root) / (2.0 * root + f64::MIN_POSITIVE);
    let tail = root_low + root * rest;

    let high = FRAC_PI_2 - x;
    let middle = high + (((FRAC_PI_2 - high) - x) + (FRAC_PI_2_LOW - x * rest));
    let near = 2.0 * (root + tail);
    let high = FRAC_PI_2 - root;
    let far = 2.0 * (high + (((FRAC_PI_2 - high) - root) + (FRAC_PI_2_LOW - tail)));
    let outer = select(x > 0.0, near, far);
    select(small, middle, outer)
}

/// Angle in `0..=pi/2`, in rad, whose half versine `(1 - cos)/2` is `x`; outside `0..=1/2` NaN.
///
/// It is `acos(1 - 2 x)` without the rounding of `1 - 2 x`: up to 1/4 `2 asin(sqrt(x))`, from there on
/// `pi/2 - asin(1 - 2 x)`, whose argument is then exact.
#[inline(always)]
pub fn inverse_half_versine(x: f64) -> f64 {
    let near = x < 0.25;
    let cosine = 1.0 - 2.0 * x;
    let rest = asin_rest(select(near, x, cosine * cosine));
    let root = x.sqrt();
    let acute = 2.0 * (root + root * rest);
    let high = FRAC_PI_2 - cosine;
    let steep = high + (((FRAC_PI_2 - high) - cosine) + (FRAC_PI_2_LOW - cosine * rest));
    select(x <= 0.5, select(near, acute, steep), f64::NAN)
}

/// Angle in `-pi/2..=pi/2`, in rad, whose tangent is `x`.
///
/// `atan(-x) = -atan(x)`; the infinities give the doubles nearest to -pi/2 and pi/2.
///
/// `atan x = atan c + atan((x - c)/(1 + c x))` with `c` the nearest of 0, 1/2, 1, 3/2 and infinity
/// leaves `abs(t) <= 7/16`, and `atan t = t + t^3 A(t^2)`, `A` of degree 10, error of the polynomial
/// 2^-57.7 of `atan(t)`.
#[inline(always)]
pub fn atan(x: f64) -> f64 {
    let a = x.abs();
    let far = a >= 2.4375;
    let choose = |zero: f64, half: f64, one: f64, three_halves: f64| {
        let below = select(a < 0.4375, zero, half);
        let above = select(a < 1.1875, one, three_halves);
        select(a < 0.6875, below, above)
    };
    let c = choose(0.0, 0.5, 1.0, 1.5);
    let high = choose(0.0, 0.4636476090008061, FRAC_PI_4, 0.982793723247329);
    // What the arc tangents of c as doubles lack.
    let low = choose(
        0.0,
        2.2698777452961687e-17,
        3.061616997868383e-17,
        1.3903311031230998e-17,
    );
    let numerator = select(far, -1.0, a - c);
    let denominator = select(far, a, 1.0 + c * a);
    let high = select(far, FRAC_PI_2, high);
    let low = select(far, FRAC_PI_2_LOW, low);

    let t = numerator / denominator;
    let z = t * t;
    let rest = t
        * (z * polynomial!(z;
            -0.3333333333333293,
            0.19999999999876486,
            -0.14285714272503783,
            0.1111111040547678,
            -0.09090887133792884,
            0.07691876210353522,
            -0.06661073187331175,
            0.05833570432775644,
            -0.049768790992090334,
            0.0365315957003231,
            -0.016285840636087973,
        ));
    flip(high + (t + (rest + low)), x)
}
