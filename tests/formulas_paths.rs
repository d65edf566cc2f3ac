//! Properties of the formulas of surfaces, chamfers, helices and thread milling.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use core::f64::consts::{FRAC_PI_2, FRAC_PI_6, PI};
use gullet::formula::find;
use proptest::prelude::*;

/// The checked value over SI arguments; the test fails where the formula refuses.
fn of(name: &str, arguments: &[f64]) -> f64 {
    find(name)
        .unwrap()
        .call(arguments)
        .unwrap_or_else(|error| panic!("{name}{arguments:?}: {error}"))
}

fn close(a: f64, b: f64, relative: f64) -> bool {
    (a - b).abs() <= relative * a.abs().max(b.abs())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn scallops_and_stepovers_invert_one_another(
        d in 1e-3f64..0.05, x in 1e-4f64..0.3, rho in 1.0f64..1e4, corner in 0.01f64..=0.5
    ) {
        let h = x * d / 2.0 * 0.1;
        for (height, step) in [
            ("convex_scallop_height", "convex_stepover_for_scallop"),
            ("concave_scallop_height", "concave_stepover_for_scallop"),
        ] {
            let s = of(step, &[d, rho * d, h]);
            prop_assert!(close(of(height, &[d, rho * d, s]), h, 1e-8), "{height} {d} {rho} {h}");
        }
        let r = corner * d;
        let s = of("corner_stepover_for_scallop", &[d, r, x * r]);
        prop_assert!(close(of("corner_scallop_height", &[d, r, s]), x * r, 1e-9));
    }

    #[test]
    fn a_hollow_is_smoother_than_a_flat_and_a_crown_rougher(
        d in 1e-3f64..0.05, rho in 1.0f64..1e3, x in 0.01f64..0.4
    ) {
        let s = x * d;
        let flat = of("scallop_height", &[d, s]);
        let convex = of("convex_scallop_height", &[d, rho * d, s]);
        let concave = of("concave_scallop_height", &[d, rho * d, s]);
        prop_assert!(concave < flat && flat < convex);
        // s^2/8 (1/R -+ 1/rho) for small steps.
        let ratio = 0.5 / rho;
        if x < 0.05 {
            prop_assert!(close(convex / flat, 1.0 + ratio, 2e-2) && close(concave / flat, 1.0 - ratio, 2e-2));
        }
    }

    #[test]
    fn a_large_radius_is_a_flat(d in 1e-3f64..0.05, x in 0.01f64..0.9) {
        let (s, rho) = (x * d, 1e9 * d);
        let flat = of("scallop_height", &[d, s]);
        prop_assert!(close(of("convex_scallop_height", &[d, rho, s]), flat, 1e-7));
        prop_assert!(close(of("concave_scallop_height", &[d, rho, s]), flat, 1e-7));
    }

    #[test]
    fn a_corner_of_half_the_diameter_is_a_ball(d in 1e-3f64..0.05, x in 0.0f64..0.5, tilt in 0.01f64..FRAC_PI_2) {
        let r = d / 2.0;
        prop_assert!(close(
            of("tilted_corner_effective_diameter", &[d, r, x * d, tilt]),
            of("ball_effective_diameter", &[d, x * d, tilt]), 1e-12));
        prop_assert!(close(of("corner_scallop_height", &[d, r, x * d]), of("scallop_height", &[d, x * d]), 1e-13));
        prop_assert!(close(of("corner_stepover_for_scallop", &[d, r, x * r]), of("stepover_for_scallop", &[d, x * r]), 1e-13));
        prop_assert!(close(of("tilted_corner_scallop_radius", &[d, r, tilt]), r, 1e-15));
        prop_assert!(close(of("contact_diameter", &[d, r, tilt]), of("ball_effective_diameter", &[d, 0.0, tilt]), 1e-14));
    }

    #[test]
    fn without_tilt_the_corner_cuts_as_an_upright_one(d in 1e-3f64..0.05, corner in 0.01f64..=0.5, x in 0.0f64..1.5) {
        let r = corner * d;
        prop_assert!(close(
            of("tilted_corner_effective_diameter", &[d, r, x * r, 0.0]),
            of("corner_radius_effective_diameter", &[d, r, x * r]), 1e-12));
    }

    #[test]
    fn slopes_step_along_the_surface(s in 1e-5f64..5e-3, theta in 0.01f64..1.56) {
        let (e, a) = (of("plan_step_for_stepover", &[s, theta]), of("level_step_for_stepover", &[s, theta]));
        prop_assert!(close(e.hypot(a), s, 1e-14));
        prop_assert!(close(of("stepover_of_plan_step", &[e, theta]), s, 1e-13));
        prop_assert!(close(of("stepover_of_level_step", &[a, theta]), s, 1e-13));
    }

    #[test]
    fn passes_cover_the_width_and_none_is_spare(w in 1e-3f64..0.5, s in 1e-4f64..0.1) {
        let n = of("raster_passes", &[w, s]);
        prop_assert!(n >= 2.0 && n.fract() == 0.0);
        prop_assert!(of("raster_stepover", &[w, n]) <= s * (1.0 + 1e-8));
        prop_assert!((n - 2.0) * s < w * (1.0 + 1e-8));
        prop_assert_eq!(of("pass_count", &[w, s]), n - 1.0);
        // A width that is a whole number of steps takes no further pass for its rounding.
        let whole = (w / s).ceil();
        prop_assert_eq!(of("pass_count", &[whole * s, s]), whole);
    }

    #[test]
    fn a_chamfer_closes_its_triangle(c in 1e-4f64..0.01, sigma in 0.3f64..2.8, u in 0.0f64..5e-3, tip in 0.0f64..5e-3) {
        let a = of("chamfer_depth", &[c, sigma]);
        prop_assert!(close(of("chamfer_width", &[a, sigma]), c, 1e-14));
        let kappa = of("cone_cutting_edge_angle", &[sigma]);
        // Chip width and diameters are those of a face mill with the cone's edge angle.
        prop_assert!(close(of("turning_chip_width", &[a, kappa]), a.hypot(c), 1e-13));
        prop_assert!(close(
            of("chamfer_outer_diameter", &[tip, c, u, sigma]),
            of("face_mill_outer_diameter", &[tip, u + a, kappa]), 1e-12));
        prop_assert!(close(of("chamfer_removal_rate", &[a, c, 0.01]), of("milling_removal_rate", &[a, c, 0.01]) / 2.0, 1e-15));
    }

    #[test]
    fn a_helix_unrolls_to_a_triangle(
        bore in 0.02f64..0.1, share in 0.3f64..0.9, p in 1e-4f64..5e-3, depth in 1e-3f64..0.05, v in 1e-3f64..0.1
    ) {
        let cutter = share * bore;
        let path = of("inside_path_diameter", &[bore, cutter]);
        let angle = of("helix_ramp_angle", &[p, bore, cutter]);
        prop_assert!(close(of("axial_per_turn_for_ramp", &[angle, path]), p, 1e-13));
        let turn = of("helix_turn_length", &[path, p]);
        prop_assert!(close(turn * angle.sin(), p, 1e-13));
        let axial = of("helix_axial_feed", &[v, path, p]);
        prop_assert!(close(axial, v * angle.sin(), 1e-13));
        let turns = of("helix_turns", &[depth, p]);
        let travel = of("helix_travel", &[depth, p, path, 0.0]);
        prop_assert!(close(travel, turns * turn, 1e-13));
        // The depth is reached in the time the axial part of the feed takes.
        prop_assert!(close(of("cutting_time", &[travel, v]), depth / axial, 1e-12));
        prop_assert!(close(of("helix_travel", &[depth, p, path, 1.0]) - travel, PI * path, 1e-9));
        prop_assert!(close(of("ramp_length", &[depth, angle]), depth / angle.tan(), 1e-13));
    }

    #[test]
    fn the_true_width_of_a_bore_removes_what_the_ring_holds(
        bore in 0.02f64..0.1, share in 0.3f64..0.9, start in 0.5f64..0.99, p in 1e-4f64..2e-3, v in 1e-3f64..0.1
    ) {
        let (cutter, hole) = (share * bore, (bore - 2.0 * share * bore * 0.5).max(start * bore));
        let width = of("bore_radial_depth", &[bore, hole, cutter]);
        prop_assume!(width < cutter * 0.999);
        let path = of("inside_path_diameter", &[bore, cutter]);
        let ring = of("bore_removal_rate", &[bore, hole, of("helix_axial_feed", &[v, path, p])]);
        let along = v * of("helix_ramp_angle", &[p, bore, cutter]).cos();
        prop_assert!(close(ring, of("milling_removal_rate", &[p, width, along]), 1e-12));
    }
}

/// Whether the floor of a bore is cut everywhere: no point stays outside every position of the ring
/// of edges, and none on the axis.
fn floor_is_cut(cutter: f64, core: f64, path: f64) -> bool {
    (0..=1000).all(|i| {
        let at = f64::from(i) / 1000.0 * (path + cutter) / 2.0;
        let (near, far) = ((path / 2.0 - at).abs(), path / 2.0 + at);
        near <= cutter / 2.0 * (1.0 + 1e-12) && far >= core / 2.0 * (1.0 - 1e-12)
    })
}

#[test]
fn bores_within_the_limits_keep_no_pillar() {
    for (cutter, core) in [(20.0, 12.0), (16.0, 4.0), (25.0, 0.0)] {
        let smallest = of("smallest_helix_bore", &[cutter, core]);
        let largest = of("largest_helix_bore", &[cutter, 0.0]);
        assert!(floor_is_cut(cutter, core, smallest - cutter));
        assert!(floor_is_cut(cutter, core, largest - cutter));
        assert!(!floor_is_cut(cutter, core, largest - cutter + 0.01));
        if core > 0.0 {
            assert!(!floor_is_cut(cutter, core, smallest - cutter - 0.01));
        }
    }
}

#[test]
fn a_ramp_at_the_limit_of_the_core_just_clears_it() {
    let (clearance, core) = (0.4e-3, 5e-3);
    let angle = of("core_ramp_angle", &[clearance, core]);
    // While the cutter moves on by its core it sinks by the clearance.
    assert!(close(core * angle.tan(), clearance, 1e-13));
}

/// Axial widening of a flank by the exact envelope of a ring that turns with the helix.
fn envelope(pitch: f64, major: f64, cutter: f64) -> f64 {
    let (offset, slope) = ((major - cutter) / 2.0, FRAC_PI_6.tan());
    let depth = 0.3 * pitch;
    let radius = major / 2.0 - depth;
    (-20_000..20_000)
        .filter_map(|i| {
            let theta = f64::from(i) * 3e-5;
            let reach =
                (radius * radius - (offset * theta.sin()).powi(2)).sqrt() - offset * theta.cos();
            let turn = (reach * theta.sin()).atan2(offset + reach * theta.cos());
            let half_width = (cutter / 2.0 - reach) * slope;
            (reach <= cutter / 2.0).then_some(half_width + turn * pitch / (2.0 * PI))
        })
        .fold(f64::MIN, f64::max)
        - depth * slope
}

#[test]
fn a_ringed_cutter_widens_an_internal_thread_as_its_envelope_does() {
    for (pitch, major, cutter) in [
        (1.5, 20.0, 16.0),
        (1.5, 10.0, 7.0),
        (1.25, 8.0, 6.0),
        (2.0, 30.0, 12.0),
    ] {
        let found = of(
            "internal_thread_mill_widening",
            &[pitch, major, cutter, FRAC_PI_6],
        );
        let exact = envelope(pitch, major, cutter);
        assert!(close(found, exact, 0.07), "{found} against {exact}");
    }
}

#[test]
fn a_thread_mill_shifts_by_whole_pitches() {
    assert!(close(
        of("thread_mill_axial_shift", &[12.7e-3, 1.27e-3]),
        12.7e-3,
        1e-12
    ));
    assert!(close(
        of("thread_mill_axial_shift", &[12.6e-3, 1.27e-3]),
        11.43e-3,
        1e-12
    ));
    assert!(
        find("thread_mill_axial_shift")
            .unwrap()
            .call(&[1e-3, 1.27e-3])
            .is_err()
    );
}

#[test]
fn a_thread_takes_the_groove_that_its_turn_sweeps() {
    // Volume of the groove by slices of the basic profile, M20 x 2.5, from the minor to the major diameter.
    let (pitch, major, length) = (2.5, 20.0, 25.0);
    let height = 0.625 * pitch * 3f64.sqrt() / 2.0;
    let slices = 20_000;
    let volume: f64 = (0..slices)
        .map(|i| {
            let at = (f64::from(i) + 0.5) / f64::from(slices);
            let radius = major / 2.0 - height * at;
            let width = pitch * (0.125 + 0.625 * at);
            2.0 * PI * radius * width * height / f64::from(slices)
        })
        .sum::<f64>()
        * length
        / pitch;
    let pitch_diameter = major - 0.75 * pitch * 3f64.sqrt() / 2.0;
    let rate = of(
        "thread_milling_removal_rate",
        &[pitch, length, pitch_diameter, 1.0],
    );
    assert!(close(rate, volume, 0.01), "{rate} against {volume}");
}

#[test]
fn impossible_geometry_is_refused_by_name() {
    for (name, arguments, blamed) in [
        (
            "concave_scallop_height",
            &[0.01, 0.004, 0.001][..],
            "surface_radius",
        ),
        (
            "concave_stepover_for_scallop",
            &[0.01, 0.00501, 0.004][..],
            "scallop_height",
        ),
        (
            "convex_scallop_height",
            &[0.01, 0.01, 0.009][..],
            "stepover",
        ),
        (
            "convex_stepover_for_scallop",
            &[0.01, 0.001, 0.004][..],
            "scallop_height",
        ),
        (
            "corner_stepover_for_scallop",
            &[0.01, 0.001, 0.002][..],
            "scallop_height",
        ),
        ("inside_path_diameter", &[0.01, 0.01][..], "cutter_diameter"),
        ("smallest_helix_bore", &[0.01, 0.02][..], "core_diameter"),
        (
            "stepover_of_plan_step",
            &[0.01, FRAC_PI_2][..],
            "slope_angle",
        ),
        ("cone_cutting_edge_angle", &[PI][..], "point_angle"),
        ("raster_stepover", &[0.01, 1.0][..], "passes"),
    ] {
        let error = find(name).unwrap().call(arguments).unwrap_err();
        assert_eq!(error.first().parameter, blamed, "{name}: {error}");
    }
}
