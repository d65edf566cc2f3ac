//! Student's distribution, whose degrees of freedom are whole.

use crate::elementary::{atan, cos, sin, tan};
use core::f64::consts::{FRAC_2_PI, FRAC_PI_2};

/// Probability that a value lies within `t` of zero, where `angle` is the arc tangent of `t` over the
/// root of the degrees of freedom: the finite series for whole degrees (Abramowitz and Stegun,
/// Handbook of Mathematical Functions, 26.7.3 and 26.7.4, from memory).
fn within(angle: f64, degrees: usize) -> f64 {
    let (sine, cosine) = (sin(angle), cos(angle));
    let square = cosine * cosine;
    let odd = degrees % 2 == 1;
    // Terms cos^k with k of the other parity than the degrees, up to degrees - 2.
    let mut term = if odd { cosine } else { 1.0 };
    let mut sum = 0.0;
    let mut k = if odd { 1 } else { 0 };
    while k + 2 <= degrees {
        sum += term;
        k += 2;
        term *= square * (k - 1) as f64 / k as f64;
    }
    if odd {
        FRAC_2_PI * (angle + sine * sum)
    } else {
        sine * sum
    }
}

/// The distance from zero within which a value lies with this probability, in (0, 1).
pub(super) fn two_sided(confidence: f64, degrees: usize) -> f64 {
    let (mut low, mut high) = (0.0, FRAC_PI_2);
    // Halving ends where the middle is one of the ends.
    loop {
        let middle = 0.5 * (low + high);
        if middle <= low || middle >= high {
            break;
        }
        if within(middle, degrees) < confidence {
            low = middle;
        } else {
            high = middle;
        }
    }
    (degrees as f64).sqrt() * tan(high)
}

/// Probability that a value lies further than `t` from zero.
pub(super) fn beyond(t: f64, degrees: usize) -> f64 {
    let angle = atan(t.abs() / (degrees as f64).sqrt());
    (1.0 - within(angle, degrees)).clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Quantiles of printed tables of Student's distribution, from memory (two-sided 95 % and 99 %);
    /// the Python tests compare with another library.
    #[test]
    fn quantiles_are_those_of_the_tables() {
        for (confidence, degrees, printed) in [
            (0.95, 1, 12.706),
            (0.95, 2, 4.303),
            (0.95, 3, 3.182),
            (0.95, 4, 2.776),
            (0.95, 5, 2.571),
            (0.95, 10, 2.228),
            (0.95, 17, 2.110),
            (0.95, 30, 2.042),
            (0.95, 120, 1.980),
            (0.99, 1, 63.657),
            (0.99, 4, 4.604),
            (0.99, 10, 3.169),
            (0.99, 17, 2.898),
            (0.90, 17, 1.740),
        ] {
            let t = two_sided(confidence, degrees);
            assert!((t - printed).abs() <= 5.1e-4, "{confidence} {degrees}: {t}");
        }
    }

    #[test]
    fn quantile_and_probability_are_inverse() {
        for degrees in [1, 2, 3, 4, 7, 8, 50, 51, 1000, 1001] {
            for confidence in [0.5, 0.9, 0.95, 0.999] {
                let t = two_sided(confidence, degrees);
                let back = 1.0 - beyond(t, degrees);
                assert!(
                    (back - confidence).abs() < 1e-12,
                    "{degrees} {confidence}: {back}"
                );
            }
        }
    }

    #[test]
    fn one_and_two_degrees_have_closed_forms() {
        for t in [0.1, 0.7, 2.0, 15.0_f64] {
            let cauchy = 1.0 - FRAC_2_PI * t.atan();
            let second = 1.0 - t / (t * t + 2.0).sqrt();
            assert!((beyond(t, 1) - cauchy).abs() < 1e-14, "{t}");
            assert!((beyond(t, 2) - second).abs() < 1e-14, "{t}");
        }
    }
}
