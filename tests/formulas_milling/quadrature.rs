//! Closed integrals against numerical ones.

use super::{close, of};
use core::f64::consts::{FRAC_PI_2, PI};

/// Tanh-sinh quadrature from 0 to `end`, refined until two steps agree; blind to a root or pole of
/// fractional order at 0.
fn integral(end: f64, f: impl Fn(f64) -> f64) -> f64 {
    let mut previous = f64::NAN;
    for level in 3..12 {
        let step = 0.5f64.powi(level);
        let count = (4.0 / step) as i32;
        let mut sum = 0.0;
        for k in -count..=count {
            let t = f64::from(k) * step;
            let s = FRAC_PI_2 * t.sinh();
            // Distance from 0 as a share of the range, without cancellation.
            let share = 1.0 / (1.0 + (-2.0 * s).exp());
            let weight = FRAC_PI_2 * t.cosh() * 2.0 * share / (1.0 + (2.0 * s).exp());
            if share > 0.0 && weight > 0.0 {
                sum += f(end * share) * weight;
            }
        }
        let value = sum * step * end;
        if (value - previous).abs() <= 2e-15 * value.abs() {
            return value;
        }
        previous = value;
    }
    previous
}

/// Integral of sin(phi)^p from 0 to acos(1 - 2 x), by quadrature of the arc and, past the quarter
/// turn, of the part counted back from the half turn.
fn sine_power(x: f64, p: f64) -> f64 {
    let rising = |end: f64| integral(end, |phi| phi.sin().powf(p));
    if x <= 0.5 {
        rising(2.0 * x.sqrt().asin())
    } else {
        let rest = 2.0 * (1.0 - x).sqrt().asin();
        2.0 * rising(FRAC_PI_2) - if rest > 0.0 { rising(rest) } else { 0.0 }
    }
}

/// The integral alone: one tooth, one turn a second, unit lever, edge and force.
fn integral_of_the_formula(x: f64, m: f64) -> f64 {
    of(
        "arc_mean_cutting_power",
        &[1000.0, m, 1e-3, 2.0, 2.0 * x, 1.0, 1.0, 1.0, FRAC_PI_2],
    )
}

#[test]
fn arc_mean_power_agrees_with_quadrature_to_1e_12() {
    let mut worst: f64 = 0.0;
    for i in 0..=60 {
        for x in [
            f64::from(i) / 60.0,
            10f64.powf(-f64::from(i) / 5.0),
            1.0 - 10f64.powf(-f64::from(i) / 5.0 - 0.1),
            0.5 + 1e-3 * f64::from(i - 30),
        ] {
            if x <= 0.0 {
                continue;
            }
            for m in [0.0, 0.1, 0.17, 0.26, 0.4, 0.5, 0.7, 0.9, 0.99, 0.999_999] {
                let (value, expected) = (integral_of_the_formula(x, m), sine_power(x, 1.0 - m));
                worst = worst.max((value / expected - 1.0).abs());
            }
        }
    }
    assert!(worst < 1e-12, "worst relative error {worst:e}");
    assert!(worst > 0.0);
}

/// (a_e/D, m, integral) of 2^(1 - m) B(x; 1 - m/2, 1 - m/2) by mpmath at 30 digits, rounded to a double.
const BY_MPMATH: &[(f64, f64, f64)] = &[
    (1e-9, 0.26, 2.8395070035842368e-8),
    (0.03, 0.26, 0.09101952172291074),
    (0.4999999, 0.26, 1.0902717416911878),
    (0.5, 0.26, 1.090271941691188),
    (0.51, 0.26, 1.1102722884048721),
    (0.87, 0.26, 1.852486989540602),
    (0.9999999, 0.26, 2.180542322957207),
    (1.0, 0.26, 2.180543883382376),
    (1e-9, 0.5, 3.3531558128470945e-7),
    (0.03, 0.5, 0.13636573736094854),
    (0.51, 0.5, 1.2181409015022804),
    (1.0, 0.5, 2.3962804694711846),
    (1e-9, 0.9, 2.1864538254342823e-5),
    (0.4999999, 0.9, 1.471234074460388),
    (0.9999999, 0.9, 2.942193290688249),
    (1e-9, 0.99, 5.684848848025722e-5),
    (0.03, 0.99, 0.3410777284726075),
    (0.87, 0.99, 2.3920402061349977),
    (1.0, 0.99, 3.1200194607741443),
];

#[test]
fn arc_mean_power_agrees_with_reference_values_to_1e_12() {
    for (x, m, expected) in BY_MPMATH {
        let value = integral_of_the_formula(*x, *m);
        assert!(
            close(value, *expected, 1e-12),
            "{x} {m}: {value} {expected}"
        );
    }
}

#[test]
fn mean_forces_agree_with_quadrature() {
    let (ktc, krc, kac) = (796.1e6, 168.8e6, 222.0e6);
    let (kte, kre, kae) = (27.7e3, 30.8e3, 1.4e3);
    let (z, a, f) = (3.0, 0.005, 1.3e-4);
    for (start, end) in [(0.0, 0.7), (0.0, PI), (1.9, PI), (0.4, 1.1), (2.0, 2.001)] {
        let over = |g: &dyn Fn(f64) -> f64| {
            z * a / (2.0 * PI) * integral(end - start, |phi| g(start + phi))
        };
        let x = over(&|phi| {
            let h = f * phi.sin();
            -(ktc * h + kte) * phi.cos() - (krc * h + kre) * phi.sin()
        });
        let y = over(&|phi| {
            let h = f * phi.sin();
            (ktc * h + kte) * phi.sin() - (krc * h + kre) * phi.cos()
        });
        let axial = over(&|phi| kac * f * phi.sin() + kae);
        let arguments = [ktc, krc, kte, kre, z, a, f, start, end];
        assert!(
            close(of("mean_feed_force", &arguments), x, 1e-11),
            "{start} {end}"
        );
        assert!(
            close(of("mean_normal_force", &arguments), y, 1e-11),
            "{start} {end}"
        );
        let arguments = [kac, kae, z, a, f, start, end];
        assert!(
            close(of("mean_axial_force", &arguments), axial, 1e-12),
            "{start} {end}"
        );
    }
}

#[test]
fn mean_thicknesses_agree_with_quadrature() {
    let (f, d, kappa) = (1.3e-4, 0.05, 0.9f64);
    for (low, high) in [
        (-0.3, 0.2),
        (0.1, 0.9),
        (-0.9, 0.9),
        (-0.45, -0.44),
        (0.2, 0.2001),
    ] {
        let start = of("face_entry_angle", &[d, high * d]);
        let end = of("face_exit_angle", &[d, low * d]);
        let mean =
            integral(end - start, |phi| f * kappa.sin() * (start + phi).sin()) / (end - start);
        let value = of(
            "face_mean_chip_thickness",
            &[f, d, low * d, high * d, kappa],
        );
        assert!(close(value, mean, 1e-11), "{low} {high}: {value} {mean}");
    }
    for x in [1e-6, 0.03, 0.4, 0.5, 0.8, 1.0] {
        let end = of("engagement_angle", &[d, x * d]);
        let mean = integral(end, |phi| f * kappa.sin() * phi.sin()) / end;
        assert!(
            close(
                of("mean_chip_thickness", &[f, d, x * d, kappa]),
                mean,
                1e-12
            ),
            "{x}"
        );
    }
    for x in [1e-6, 0.03, 0.4, 0.5] {
        let end = 2.0 * f64::sqrt(x).asin();
        let mean = integral(end, f64::sin) / end;
        assert!(
            close(
                of("round_edge_mean_thickness_ratio", &[d, x * d]),
                mean,
                1e-12
            ),
            "{x}"
        );
    }
}
