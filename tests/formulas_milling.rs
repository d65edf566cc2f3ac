//! Properties of the formulas of rotation, diameter, engagement, chip, removal, force and power.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use core::f64::consts::{FRAC_PI_2, PI};
use gullet::formula::{Formula, catalogue, find};
use gullet::quantity::Kind;
use proptest::prelude::*;

#[path = "formulas_milling/peak.rs"]
mod peak;
#[path = "formulas_milling/quadrature.rs"]
mod quadrature;

const TOPICS: &[&str] = &[
    "rotation",
    "diameter",
    "engagement",
    "chip",
    "removal",
    "force",
    "power",
];

fn formulas() -> Vec<&'static Formula> {
    catalogue()
        .filter(|formula| TOPICS.contains(&formula.topic))
        .collect()
}

/// The checked value of a formula by name.
fn of(name: &str, arguments: &[f64]) -> f64 {
    find(name).unwrap().call(arguments).unwrap()
}

fn close(a: f64, b: f64, relative: f64) -> bool {
    (a - b).abs() <= relative * a.abs().max(b.abs())
}

/// A value of a size that a shop meets, from a number in 0..1.
fn usual(kind: Kind, share: f64) -> f64 {
    let spread = |low: f64, high: f64| low * (high / low).powf(share);
    match kind {
        Kind::Length => spread(1e-6, 1.0),
        Kind::Velocity => spread(1e-5, 50.0),
        Kind::RotationalSpeed => spread(0.01, 1000.0),
        Kind::Angle => share * PI,
        Kind::Ratio => share,
        Kind::Count => (1.0 + share * 20.0).floor(),
        Kind::Force | Kind::Torque => spread(1e-3, 1e6),
        Kind::LineForce => spread(1.0, 1e6),
        Kind::Pressure => spread(1e5, 1e11),
        Kind::Power => spread(1e-3, 1e6),
        Kind::VolumeRate => spread(1e-12, 1e-2),
        _ => share,
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 4000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_bits_make_a_call_panic_or_give_what_is_not_a_number(
        which in 0usize..200, bits in prop::collection::vec(any::<u64>(), 12)
    ) {
        let formulas = formulas();
        let formula = formulas[which % formulas.len()];
        let arguments: Vec<f64> = bits.iter().take(formula.parameters.len()).map(|bits| f64::from_bits(*bits)).collect();
        if let Ok(result) = formula.call(&arguments) {
            prop_assert!(result.is_finite());
        }
    }

    #[test]
    fn huge_and_tiny_arguments_give_a_number_or_an_overflow(
        which in 0usize..200, exponents in prop::collection::vec(-1074i32..1024, 12)
    ) {
        let formulas = formulas();
        let formula = formulas[which % formulas.len()];
        let arguments: Vec<f64> = exponents.iter().zip(formula.parameters).map(|(exponent, parameter)| match parameter.kind {
            Kind::Count => f64::from(1 + exponent.rem_euclid(30)),
            _ => 2f64.powi(*exponent),
        }).collect();
        if let Ok(result) = formula.call(&arguments) {
            prop_assert!(result.is_finite());
        }
    }

    #[test]
    fn admissible_arguments_of_usual_size_always_have_a_result(
        which in 0usize..200, shares in prop::collection::vec(0.0f64..1.0, 12)
    ) {
        let formulas = formulas();
        let formula = formulas[which % formulas.len()];
        let arguments: Vec<f64> = formula.parameters.iter().zip(&shares).map(|(parameter, share)| usual(parameter.kind, *share)).collect();
        if formula.check(&arguments).is_ok() {
            let result = formula.call(&arguments);
            prop_assert!(result.is_ok(), "{}: {arguments:?} gave {}", formula.name, result.unwrap_err());
        }
    }

    #[test]
    fn a_bound_and_its_slack_have_a_result(
        which in 0usize..200, shares in prop::collection::vec(0.0f64..1.0, 12), at in 0usize..12, over in -1e-12f64..1e-12
    ) {
        let formulas = formulas();
        let formula = formulas[which % formulas.len()];
        let mut arguments: Vec<f64> = formula.parameters.iter().zip(&shares).map(|(parameter, share)| usual(parameter.kind, *share)).collect();
        let at = at % arguments.len();
        let parameter = &formula.parameters[at];
        for limit in [&parameter.lower, &parameter.upper].into_iter().flatten() {
            arguments[at] = (limit.value)(&arguments) * (1.0 + over);
            if formula.check(&arguments).is_ok() {
                let result = formula.call(&arguments);
                prop_assert!(result.is_ok(), "{}: {arguments:?} gave {}", formula.name, result.unwrap_err());
            }
        }
    }

    #[test]
    fn speeds_and_feeds_invert_one_another(
        v in 0.01f64..50.0, d in 1e-4f64..0.5, f in 1e-6f64..1e-3, z in 1u32..30
    ) {
        let z = f64::from(z);
        let n = of("spindle_speed", &[v, d]);
        prop_assert!(close(of("cutting_speed", &[n, d]), v, 1e-15));
        let feed = of("table_feed", &[f, z, n]);
        prop_assert!(close(of("feed_per_tooth", &[feed, z, n]), f, 1e-15));
        prop_assert!(close(of("spindle_speed_for_feed", &[feed, f, z]), n, 1e-15));
        prop_assert!(close(of("feed_rate", &[of("feed_per_rev", &[f, z]), n]), feed, 1e-15));
        prop_assert!(close(of("rule_of_thumb_speed", &[v, d, 12.0 / PI]), n, 1e-15));
    }

    #[test]
    fn a_geometric_series_runs_from_its_lowest_to_its_highest_speed(
        low in 0.1f64..10.0, span in 1.0f64..40.0, k in 2u32..20
    ) {
        let (high, k) = (low * span, f64::from(k));
        let q = of("geometric_step_ratio", &[low, high, k]);
        prop_assert!(close(of("geometric_step_speed", &[low, high, k, 1.0]), low, 1e-15));
        prop_assert!(close(of("geometric_step_speed", &[low, high, k, k]), high, 1e-14));
        prop_assert!(close(of("geometric_step_speed", &[low, high, k, 2.0]), low * q, 1e-14));
    }

    #[test]
    fn thickness_and_feed_invert_one_another(
        f in 1e-6f64..1e-3, d in 1e-3f64..0.2, x in 1e-9f64..=1.0, kappa in 0.05f64..=FRAC_PI_2
    ) {
        let h = of("max_chip_thickness", &[f, d, x * d, kappa]);
        prop_assert!(close(of("feed_for_max_chip_thickness", &[h, d, x * d, kappa]), f, 1e-14));
        let thinning = of("radial_thinning_factor", &[d, x * d]);
        prop_assert!(thinning >= 1.0);
        prop_assert!(close(h * thinning, f * kappa.sin(), 1e-14));
        let mean = of("mean_chip_thickness", &[f, d, x * d, kappa]);
        prop_assert!(mean > 0.0 && mean < h && mean > 0.499 * h, "{mean} {h}");
        let h = of("round_edge_max_chip_thickness", &[f, d, x * d]);
        prop_assert!(close(of("round_edge_feed_for_max_chip_thickness", &[h, d, x * d]), f, 1e-14));
    }

    #[test]
    fn engagement_grows_with_the_width(d in 1e-3f64..0.2, x in 1e-9f64..1.0, wider in 1.0f64..2.0) {
        let y = (x * wider).min(1.0);
        prop_assert!(of("engagement_angle", &[d, y * d]) >= of("engagement_angle", &[d, x * d]));
        prop_assert!(of("max_chip_thickness", &[1e-4, d, y * d, 1.0]) >= of("max_chip_thickness", &[1e-4, d, x * d, 1.0]));
        let power = |x: f64| of("arc_mean_cutting_power", &[2e9, 0.25, 1e-4, d, x * d, 0.003, 4.0, 20.0, 1.2]);
        prop_assert!(power(y) >= power(x) * (1.0 - 1e-14));
    }

    #[test]
    fn up_and_down_milling_share_the_half_turn(d in 1e-3f64..0.2, x in 1e-12f64..=1.0) {
        let up = of("up_milling_exit_angle", &[d, x * d]);
        let down = of("down_milling_entry_angle", &[d, x * d]);
        prop_assert!(close(up + down, PI, 1e-15));
        prop_assert_eq!(up, of("engagement_angle", &[d, x * d]));
        prop_assert!(close((up / 2.0).sin().powi(2), x, 1e-14));
        prop_assert!(close((down / 2.0).cos().powi(2), x, 1e-9));
    }

    #[test]
    fn a_face_cut_flush_with_the_rim_is_a_side_cut(
        d in 1e-3f64..0.2, x in 1e-4f64..0.999, kappa in 0.2f64..1.5, f in 1e-6f64..1e-3
    ) {
        // Teeth enter at the rim: up milling; they leave at it: down milling.
        let (high, low) = (d / 2.0, d / 2.0 - x * d);
        prop_assert!(close(of("face_engagement_angle", &[d, low, 2.0 * high]), of("engagement_angle", &[d, d / 2.0 - low]), 1e-12));
        prop_assert!(close(of("face_exit_angle", &[d, low]), of("up_milling_exit_angle", &[d, d / 2.0 - low]), 1e-14));
        prop_assert!(close(of("face_entry_angle", &[d, -low]), of("down_milling_entry_angle", &[d, d / 2.0 - low]), 1e-12));
        prop_assert!(close(of("face_mean_chip_thickness", &[f, d, low, high, kappa]), of("mean_chip_thickness", &[f, d, d / 2.0 - low, kappa]), 1e-12));
        prop_assert!(close(of("face_max_chip_thickness", &[f, d, low, high, kappa]), of("max_chip_thickness", &[f, d, d / 2.0 - low, kappa]), 1e-12));
    }

    #[test]
    fn a_face_arc_is_the_difference_of_its_ends(d in 0.01f64..0.2, a in -0.7f64..0.7, b in -0.7f64..0.7) {
        let (low, high) = (a.min(b) * d, a.max(b) * d);
        prop_assume!(low < high && low < d / 2.0 && high > -d / 2.0);
        let arc = of("face_engagement_angle", &[d, low, high]);
        let ends = of("face_exit_angle", &[d, low]) - of("face_entry_angle", &[d, high]);
        prop_assert!((arc - ends).abs() < 1e-14, "{arc} {ends}");
        let mean = of("face_mean_chip_thickness", &[1e-4, d, low, high, 1.0]);
        let max = of("face_max_chip_thickness", &[1e-4, d, low, high, 1.0]);
        prop_assert!(mean <= max * (1.0 + 1e-14));
        // The mirrored work has the same arc.
        prop_assert!(close(of("face_engagement_angle", &[d, -high, -low]), arc, 1e-12));
    }

    #[test]
    fn power_force_and_torque_invert_one_another(p in 1.0f64..1e5, n in 0.1f64..500.0, v in 0.01f64..50.0) {
        prop_assert!(close(of("power_from_torque", &[of("cutting_torque", &[p, n]), n]), p, 1e-15));
        prop_assert!(close(of("power_from_force", &[of("tangential_force", &[p, v]), v]), p, 1e-15));
        prop_assert!(close(of("motor_power", &[p, 0.8]) * 0.8, p, 1e-15));
        let base = 25.0;
        let torque = of("available_torque", &[p, base, n]);
        prop_assert!(close(of("power_from_torque", &[torque, n]), of("available_power", &[p, base, n]), 1e-14));
    }

    #[test]
    fn effective_diameters_lie_between_nothing_and_the_full_one(
        d in 1e-3f64..0.05, x in 0.0f64..1.5, r in 0.0f64..=0.5, tilt in 0.0f64..=FRAC_PI_2
    ) {
        let ball = of("ball_effective_diameter", &[d, x * d, tilt]);
        prop_assert!((0.0..=d).contains(&ball));
        prop_assert!(ball >= of("ball_effective_diameter", &[d, x * d, 0.0]) * (1.0 - 1e-15));
        let nose = of("corner_radius_effective_diameter", &[d, r * d, x * d]);
        prop_assert!(nose >= d * (1.0 - 2.0 * r) && nose <= d * (1.0 + 1e-15), "{nose} {d}");
        let as_ball = of("corner_radius_effective_diameter", &[d, d / 2.0, x * d]);
        prop_assert!((as_ball - of("ball_effective_diameter", &[d, x * d, 0.0])).abs() < 1e-14 * d);
    }

    #[test]
    fn mean_torque_is_the_power_of_the_removal(
        k in 1e8f64..3e9, z in 1u32..12, a in 1e-4f64..0.02, x in 0.01f64..=1.0, f in 1e-6f64..3e-4, d in 1e-3f64..0.1
    ) {
        let z = f64::from(z);
        let n = 13.0;
        let torque = of("mean_milling_torque", &[k, 0.0, z, a, x * d, f, d]);
        let rate = of("milling_removal_rate", &[a, x * d, of("table_feed", &[f, z, n])]);
        let power = of("cutting_power", &[rate, k]);
        prop_assert!(close(of("power_from_torque", &[torque, n]), power, 1e-14));
        prop_assert!(close(of("arc_mean_cutting_power", &[k, 0.0, f, d, x * d, a, z, n, FRAC_PI_2]), power, 1e-13));
    }

    #[test]
    fn power_at_the_mean_thickness_reads_a_few_percent_high(m in 0.0f64..0.4, x in 0.001f64..=1.0, f in 1e-5f64..3e-4) {
        let (k, d, a, z, n) = (1.8e9, 0.02, 0.003, 4.0, 13.0);
        let exact = of("arc_mean_cutting_power", &[k, m, f, d, x * d, a, z, n, FRAC_PI_2]);
        let h = of("mean_chip_thickness", &[f, d, x * d, FRAC_PI_2]);
        let at_mean = of("specific_cutting_force", &[k, m, h, 0.0, 0.0, 0.01, 1.0]) * a * x * d * f * z * n;
        prop_assert!(exact <= at_mean * (1.0 + 1e-12) && exact > 0.9 * at_mean, "{exact} {at_mean}");
    }
}

#[test]
fn a_slot_in_inches_is_a_slot_in_millimetres() {
    let (d, a_e) = (0.5 * 0.0254, 12.7e-3);
    assert_eq!(of("engagement_angle", &[d, a_e]), PI);
    assert_eq!(of("engagement_angle", &[d, a_e * (1.0 + 9e-13)]), PI);
    assert_eq!(
        of("down_milling_entry_angle", &[d, a_e * (1.0 + 9e-13)]),
        0.0
    );
    assert!(
        find("engagement_angle")
            .unwrap()
            .call(&[d, a_e * (1.0 + 3e-12)])
            .is_err()
    );
}

#[test]
fn nothing_fed_is_nothing_cut() {
    let power = |f: f64| {
        let arguments = [1.8e9, 0.25, f, 0.02, 0.005, 0.003, 4.0, 13.0, 1.2];
        of("arc_mean_cutting_power", &arguments)
    };
    assert_eq!(power(0.0), 0.0);
    assert!(power(f64::MIN_POSITIVE) >= 0.0);
    assert_eq!(of("mean_chip_thickness", &[0.0, 0.02, 0.005, 1.2]), 0.0);
    assert_eq!(of("ball_effective_diameter", &[0.01, 0.0, 0.0]), 0.0);
    assert_eq!(
        of("corner_radius_effective_diameter", &[0.01, 0.0, 0.0]),
        0.01
    );
}

#[test]
fn a_percentage_typed_as_a_number_is_refused() {
    let error = find("motor_power")
        .unwrap()
        .call(&[1000.0, 80.0])
        .unwrap_err();
    assert_eq!(error.first().parameter, "efficiency");
}

#[test]
fn a_rake_that_would_turn_the_force_negative_is_refused() {
    let refused = find("specific_cutting_force")
        .unwrap()
        .call(&[1.8e9, 0.25, 1e-4, 2.0, 0.0, 0.01, 1.0])
        .unwrap_err();
    assert_eq!(refused.first().parameter, "rake_sensitivity");
}

#[test]
fn work_beside_the_cutter_is_refused() {
    for (low, high, blamed) in [
        (0.06, 0.08, "edge_low"),
        (-0.08, -0.06, "edge_high"),
        (0.01, 0.01, "edge_low"),
    ] {
        let error = find("face_engagement_angle")
            .unwrap()
            .call(&[0.1, low, high])
            .unwrap_err();
        assert_eq!(error.first().parameter, blamed);
    }
}

#[test]
fn a_thin_cut_loses_no_digits() {
    // phi_s = 2 sqrt(x) (1 + x/6 + ...), h_m = f_z sqrt(x) (1 - x/6 - ...).
    let x = 1e-14;
    assert!(close(of("engagement_angle", &[1.0, x]), 2e-7, 1e-14));
    assert!(close(
        of("mean_chip_thickness", &[1e-4, 1.0, x, FRAC_PI_2]),
        1e-11,
        1e-14
    ));
    // A narrow rib at 0.3 D from the axis: width/(D/2) over the sine of its immersion.
    let width = 1e-12;
    let arc = of("face_engagement_angle", &[1.0, 0.3, 0.3 + width]);
    let exact = ((0.3 + width) - 0.3) / 0.5 / 0.8;
    assert!(close(arc, exact, 1e-11), "{arc} {exact}");
}
