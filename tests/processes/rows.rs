//! Surfaces in rows, chamfers and plunges.

use super::arcs::{cut, near, of, refused, try_cut};
use super::bench::Shop;
use super::recomputed::{CLEARANCE, SAFETY, Side, WEAR, deflection, k_c, pairs, peak, worst};
use gullet::Code;
use std::f64::consts::PI;

const BALL: &str = "width=40 mm; length=80 mm; stock=0.6 mm; diameter=16 mm; teeth=2; wanted_scallop=0.02 mm; tilt_angle=15 deg; flute_length=30 mm; stick_out=45 mm";
const CORNER: &str = "width=60 mm; length=80 mm; stock=0.4 mm; diameter=16 mm; corner_radius=2 mm; teeth=3; wanted_scallop=0.02 mm; tilt_angle=3 deg; flute_length=30 mm; stick_out=45 mm";
const CHAMFER: &str = "chamfer_width=1.5 mm; edge_length=120 mm; diameter=12 mm; tip_diameter=2 mm; teeth=4; stick_out=30 mm";
const PLUNGE: &str = "radial_depth=4 mm; wall_length=60 mm; depth=25 mm; diameter=20 mm; largest_step=5 mm; teeth=4; flute_length=38 mm; stick_out=45 mm";

/// Mean of the sine along the engaged arc of a round edge, by a sum over many pieces.
fn edge_mean(reach: f64, tilt: f64) -> f64 {
    let pieces = 20_000;
    (0..pieces)
        .map(|i| {
            let angle = tilt + reach * (f64::from(i) + 0.5) / f64::from(pieces);
            angle.min(PI / 2.0).sin()
        })
        .sum::<f64>()
        / f64::from(pieces)
}

#[test]
fn a_ball_nosed_surface_computed_a_second_time() {
    let cut = cut(
        "ball-nose-finishing",
        &[
            BALL,
            "spindle_speed=3000 rpm; feed=0.1 mm; link_time=0.4 s; slope_angle=20 deg",
        ],
    );
    let (d, z, n, f, a_p) = (0.016_f64, 2.0, 50.0, 0.1e-3, 0.6e-3);
    let tilt = 15f64.to_radians();
    let reach = (1.0 - 2.0 * a_p / d).acos();
    let circle = d * (tilt + reach).sin();
    let allowed = 2.0 * (0.02e-3_f64 * (d - 0.02e-3)).sqrt();
    let passes = (0.040 / allowed).ceil() + 1.0;
    let s = 0.040 / (passes - 1.0);
    let feed = f * z * n;
    let side = Side {
        circle,
        a_e: s,
        a_p,
        width: d / 2.0 * reach,
        sine: edge_mean(reach, tilt),
    };
    let rate = a_p * s * feed;
    let pairs = pairs(&Shop::of(cut.process).material);
    let h_m = side.mean_chip(f);
    let power = rate * k_c(pairs[0], h_m);
    let limit = rate * k_c(worst(&pairs, h_m), h_m) * WEAR;
    let force = peak(&pairs, &side, f, z, d, 0.0);
    let scallop = d / 2.0 - (d * d / 4.0 - s * s / 4.0).sqrt();
    let mark = d / 2.0 - (d * d / 4.0 - (f * z).powi(2) / 4.0).sqrt();
    let travel = 0.080 + 2.0 * CLEARANCE;
    for (name, expected, tolerance) in [
        ("effective_diameter", circle, 1e-13),
        ("cutting_speed", PI * circle * n, 1e-13),
        ("contact_diameter", d * tilt.sin(), 1e-13),
        ("passes", passes, 0.0),
        ("stepover", s, 1e-14),
        ("scallop_height", scallop, 1e-11),
        ("plan_step", s * 20f64.to_radians().cos(), 1e-13),
        ("level_step", s * 20f64.to_radians().sin(), 1e-13),
        ("table_feed", feed, 1e-14),
        ("feed_speed", feed, 1e-14),
        ("feed_mark_height", mark, 1e-8),
        ("max_chip", side.max_chip(f), 1e-8),
        ("mean_chip", h_m, 1e-8),
        ("removal_rate", rate, 1e-13),
        ("cutting_power", power, 1e-8),
        ("motor_power", power / 0.85, 1e-8),
        ("torque", power / (2.0 * PI * n), 1e-8),
        ("mean_force", power / (PI * circle * n), 1e-8),
        ("limit_power", limit, 1e-8),
        ("limit_torque", limit / (2.0 * PI * n), 1e-8),
        ("peak_force", force, 1e-8),
        (
            "deflection",
            deflection(force, d, 0.030, 0.045, 206e9),
            1e-8,
        ),
        ("mean_roughness", scallop * 4.0 / (9.0 * 3f64.sqrt()), 1e-11),
        ("travel", travel, 1e-14),
        ("time", passes * travel / feed + (passes - 1.0) * 0.4, 1e-13),
    ] {
        near(of(&cut, name), expected, tolerance, name);
    }
}

/// The cutting speed belongs to the circle that cuts, not to the ball's diameter.
#[test]
fn a_ball_turns_faster_than_its_diameter_asks() {
    let upright = cut(
        "ball-nose-finishing",
        &[BALL, "tilt_angle=0 deg; stock=0.2 mm"],
    );
    let circle = 2.0 * (0.2e-3_f64 * (0.016 - 0.2e-3)).sqrt();
    near(of(&upright, "effective_diameter"), circle, 1e-12, "circle");
    near(
        of(&upright, "wanted_speed") * PI * circle,
        upright
            .spread
            .iter()
            .find(|band| band.name == "cutting_speed")
            .unwrap()
            .band
            .start,
        1e-12,
        "speed",
    );
    assert_eq!(of(&upright, "contact_diameter"), 0.0);
    assert!(
        upright
            .warnings
            .iter()
            .any(|warning| warning.text.contains("rubs"))
    );
    let tilted = cut("ball-nose-finishing", &[BALL]);
    assert!(
        !tilted
            .warnings
            .iter()
            .any(|warning| warning.text.contains("rubs"))
    );
}

#[test]
fn round_surfaces_want_other_steps() {
    let flat = cut("ball-nose-finishing", &[BALL]);
    let radius = "surface_radius=30 mm";
    let convex = cut("ball-nose-finishing", &[BALL, radius, "surface=convex"]);
    let hollow = cut("ball-nose-finishing", &[BALL, radius, "surface=hollow"]);
    assert!(of(&convex, "stepover") < of(&flat, "stepover"));
    assert!(of(&hollow, "stepover") > of(&flat, "stepover"));
    for cut in [&flat, &convex, &hollow] {
        assert!(of(cut, "scallop_height") <= 0.02e-3 * (1.0 + 1e-9));
        assert!(of(cut, "scallop_height") > 0.016e-3);
    }
    // Without a radius the surface is flat.
    let unknown = cut("ball-nose-finishing", &[BALL, "surface=hollow"]);
    assert_eq!(
        of(&unknown, "stepover").to_bits(),
        of(&flat, "stepover").to_bits()
    );
    assert!(
        try_cut(
            "ball-nose-finishing",
            &[BALL, "surface=hollow; surface_radius=8.1 mm"]
        )
        .is_ok()
    );
    refused(
        "ball-nose-finishing",
        &[BALL, "surface=hollow; surface_radius=7.9 mm"],
        "cutter_in_bore",
    );
    assert!(
        try_cut(
            "ball-nose-finishing",
            &[BALL, "surface=convex; surface_radius=7.9 mm"]
        )
        .is_ok()
    );
}

#[test]
fn steps_and_lengths_at_their_edges() {
    // 40 mm in steps of 1 mm: 41 rows, ridges of (16 - sqrt(256 - 1))/2 mm.
    let even = cut("ball-nose-finishing", &[BALL, "wanted_stepover=1 mm"]);
    near(of(&even, "passes"), 41.0, 0.0, "passes");
    near(
        of(&even, "scallop_height"),
        (16.0 - 255f64.sqrt()) / 2.0 * 1e-3,
        1e-10,
        "scallop",
    );
    refused(
        "ball-nose-finishing",
        &[BALL, "wanted_stepover=1.2 mm"],
        "stepover",
    );
    assert!(
        try_cut(
            "ball-nose-finishing",
            &[BALL, "wanted_stepover=1.2 mm; wanted_scallop=0.03 mm"]
        )
        .is_ok()
    );
    refused(
        "ball-nose-finishing",
        &[BALL, "flute_length=0.5 mm"],
        "flute_length",
    );
    let error = try_cut("ball-nose-finishing", &[BALL, "stock=8.1 mm"])
        .map(|_| ())
        .unwrap_err();
    assert_eq!(error.code(), Code::OutOfRange);
    // Out so far that the peak force bends it a tenth too much.
    let force = of(&cut("ball-nose-finishing", &[BALL]), "peak_force");
    let wanted = 1.1 * 0.02e-3 * 3.0 * 206e9 / force;
    let inertia = |d: f64| PI * d.powi(4) / 64.0;
    let fluted = 0.030_f64.powi(3);
    let reach = ((wanted - fluted / inertia(0.8 * 0.016)) * inertia(0.016) + fluted).cbrt();
    let long = cut(
        "ball-nose-finishing",
        &[BALL, &format!("stick_out={reach} m")],
    );
    assert_eq!(long.held_by.map(|name| name.name()), Some("deflection"));
    near(
        long.limit("deflection").unwrap().share,
        1.0,
        1e-8,
        "deflection",
    );
}

/// A thin chip may take more feed than the table, up to the practice's cap of four times; the high end of
/// the table is raised with it.
#[test]
fn thin_chips_take_more_feed_and_no_more_than_the_cap() {
    for (operation, text, ridges) in [
        ("ball-nose-finishing", BALL, "wanted_scallop=0.02 mm"),
        ("corner-radius-finishing", CORNER, "wanted_scallop=0.3 mm"),
    ] {
        let cut = cut(operation, &[text, ridges, "stock=0.2 mm; body=carbide"]);
        let table = cut
            .spread
            .iter()
            .find(|band| band.name == "feed")
            .unwrap()
            .band;
        assert!(
            of(&cut, "feed") > table.high,
            "{operation}: {} {table:?} {:?} {:?}",
            of(&cut, "feed"),
            cut.held_by,
            cut.adjustments
        );
        assert!(
            of(&cut, "feed") <= 4.0 * table.start * (1.0 + 1e-12),
            "{operation}"
        );
        assert!(
            of(&cut, "max_chip") <= table.start * (1.0 + 1e-12),
            "{operation}"
        );
        let largest = cut.limit("largest_feed").unwrap();
        near(
            largest.bound / table.high,
            of(&cut, "feed") / table.start,
            1e-12,
            operation,
        );
    }
}

#[test]
fn a_feed_that_only_rubs_is_refused_and_stays_the_reader_s() {
    refused(
        "ball-nose-finishing",
        &[BALL, "feed=0.02 mm"],
        "smallest_feed",
    );
    // Where the table's own feed is too small, the one asked for still counts.
    let thin = "stock=0.02 mm; wanted_scallop=0.0005 mm; tilt_angle=0 deg";
    let asked = try_cut("ball-nose-finishing", &[BALL, thin, "feed=0.05 mm"])
        .map(|_| ())
        .unwrap_err();
    assert!(
        asked.problems().iter().any(
            |problem| problem.parameter == "smallest_feed" && problem.value.contains("0.05 mm")
        ),
        "{asked}"
    );
}

/// Of three teeth with run-out one leaves its mark: sqrt(8 x 2 x 0.02) mm a revolution at most.
#[test]
fn marks_along_a_row_stay_as_low_as_the_ridges() {
    let held = cut("corner-radius-finishing", &[CORNER, "body=carbide"]);
    assert_eq!(held.held_by.map(|name| name.name()), Some("mean_roughness"));
    // Lowered as a parabola asks, which for the circle is a little more than needed.
    let wanted = held.adjustments[0].from;
    let mark = 2e-3 - (4e-6 - (3.0 * wanted / 2.0).powi(2)).sqrt();
    near(
        of(&held, "feed"),
        wanted * (0.02e-3 / mark).sqrt(),
        1e-10,
        "feed",
    );
    assert!(of(&held, "feed_mark_height") > 0.019e-3);
    assert!(of(&held, "feed_mark_height") <= 0.02e-3 * (1.0 + 1e-9));
}

#[test]
fn a_corner_radius_upright_and_tilted() {
    let upright = cut("corner-radius-finishing", &[CORNER, "tilt_angle=0 deg"]);
    let allowed = 12.0 + 2.0 * (0.02_f64 * (4.0 - 0.02)).sqrt();
    let passes = (60.0 / allowed).ceil() + 1.0;
    let s = 60.0 / (passes - 1.0) * 1e-3;
    near(of(&upright, "passes"), passes, 0.0, "passes");
    near(of(&upright, "stepover"), s, 1e-13, "step");
    let over = (s - 0.012).max(0.0) / 2.0;
    assert!((of(&upright, "scallop_height") - (2e-3 - (4e-6 - over * over).sqrt())).abs() < 1e-12);
    near(
        of(&upright, "effective_diameter"),
        0.012 + 2.0 * (0.4e-3_f64 * 3.6e-3).sqrt(),
        1e-13,
        "circle",
    );
    // Tilted by 3 deg it works as a ball of radius 2 + 6/sin(3 deg) mm.
    let tilted = cut("corner-radius-finishing", &[CORNER]);
    let ball = 2.0 * (2.0 + 6.0 / 3f64.to_radians().sin());
    let allowed = 2.0 * (0.02 * (ball - 0.02)).sqrt();
    near(
        of(&tilted, "passes"),
        (60.0 / allowed).ceil() + 1.0,
        0.0,
        "passes",
    );
    assert!(of(&tilted, "stepover") < of(&upright, "stepover"));
    near(
        of(&tilted, "contact_diameter"),
        0.012 + 0.004 * 3f64.to_radians().sin(),
        1e-13,
        "contact",
    );
    refused(
        "corner-radius-finishing",
        &[CORNER, "wanted_stepover=7 mm"],
        "stepover",
    );
    // A ball nose is a corner radius of half the diameter.
    let common = "width=40 mm; length=80 mm; stock=0.6 mm; diameter=16 mm; teeth=2; wanted_scallop=0.02 mm; tilt_angle=15 deg; flute_length=30 mm; stick_out=45 mm";
    let corner = cut("corner-radius-finishing", &[common, "corner_radius=8 mm"]);
    let ball = cut("ball-nose-finishing", &[common]);
    for name in [
        "effective_diameter",
        "passes",
        "stepover",
        "scallop_height",
        "feed",
        "max_chip",
        "peak_force",
        "time",
    ] {
        near(of(&corner, name), of(&ball, name), 1e-12, name);
    }
}

#[test]
fn a_chamfer_computed_a_second_time() {
    let cut_ = cut(
        "chamfering",
        &[CHAMFER, "spindle_speed=1200 rpm; feed=0.05 mm"],
    );
    let (z, n, f) = (4.0, 20.0, 0.05e-3);
    let (c, circle) = (1.5e-3, 6e-3);
    let half = 45f64.to_radians();
    let side = Side {
        circle,
        a_e: c,
        a_p: 1.5e-3,
        width: 1.5e-3 / half.sin(),
        sine: half.sin(),
    };
    let feed = f * z * n;
    let rate = c * c / 2.0 * feed;
    let pairs = pairs(&Shop::of(cut_.process).material);
    let force = peak(&pairs, &side, f, z, 12e-3, 0.0);
    let mark = (f * z).powi(2) / (4.0 * 3e-3);
    let travel = 0.120 + (c * (circle - c)).sqrt() + 2.0 * CLEARANCE;
    for (name, expected, tolerance) in [
        ("cutting_edge_angle", half, 1e-14),
        ("axial_depth", 1.5e-3, 1e-14),
        ("effective_diameter", circle, 1e-14),
        ("smallest_diameter", 3e-3, 1e-14),
        ("cutting_speed", PI * circle * n, 1e-13),
        ("max_chip", side.max_chip(f), 1e-12),
        ("mean_chip", side.mean_chip(f), 1e-12),
        ("removal_rate", rate, 1e-13),
        (
            "cutting_power",
            rate * k_c(pairs[0], side.mean_chip(f)),
            1e-11,
        ),
        ("peak_force", force, 1e-11),
        // The cone's body is solid.
        (
            "deflection",
            deflection(force, 12e-3, 0.0, 0.030, 206e9),
            1e-11,
        ),
        ("mean_roughness", mark * 4.0 / (9.0 * 3f64.sqrt()), 1e-12),
        ("travel", travel, 1e-13),
        ("time", travel / feed, 1e-13),
    ] {
        near(of(&cut_, name), expected, tolerance, name);
    }
}

#[test]
fn limits_of_a_chamfer_at_their_edges() {
    // Tip 2, chamfer 4.5 each side, 0.5 of clearance at 45 deg each side: 12 mm.
    assert!(try_cut("chamfering", &[CHAMFER, "chamfer_width=4.4999 mm"]).is_ok());
    refused(
        "chamfering",
        &[CHAMFER, "chamfer_width=4.51 mm"],
        "edge_reach",
    );
    let rough = cut("chamfering", &[CHAMFER, "wanted_roughness=0.5 um"]);
    assert_eq!(
        rough.held_by.map(|name| name.name()),
        Some("mean_roughness")
    );
    near(
        rough.limit("mean_roughness").unwrap().share,
        1.0,
        1e-9,
        "roughness",
    );
    let pointed = cut(
        "chamfering",
        &[CHAMFER, "tip_diameter=0 mm; chamfer_width=2 mm"],
    );
    assert!(
        pointed
            .warnings
            .iter()
            .any(|warning| warning.text.contains("tear"))
    );
    let error = try_cut("chamfering", &[CHAMFER, "tip_diameter=12 mm"])
        .map(|_| ())
        .unwrap_err();
    assert_eq!(error.code(), Code::OutOfRange);
}

#[test]
fn plunges_computed_a_second_time() {
    let cut_ = cut(
        "plunging",
        &[
            PLUNGE,
            "spindle_speed=450 rpm; feed=0.03 mm; largest_step=7 mm; link_time=3 s",
        ],
    );
    let (d, z, n, f, a_e) = (0.020_f64, 4.0, 7.5, 0.03e-3, 4e-3);
    let (passes, step) = (9.0, 0.060 / 9.0);
    let feed = f * z * n;
    let rate = a_e * step * feed;
    let pairs = pairs(&Shop::of(cut_.process).material);
    let edges = (z * (1.0 - 2.0 * a_e / d).acos() / (2.0 * PI)).ceil();
    let pair = worst(&pairs, f);
    let force = k_c(pair, f) * WEAR * f * a_e * edges * 1.09_f64.sqrt();
    let travel = 0.025 + CLEARANCE;
    for (name, expected, tolerance) in [
        ("passes", passes, 0.0),
        ("step", step, 1e-14),
        // The whole feed is chip, however narrow the cut.
        ("chip_thickness", f, 1e-15),
        ("removal_rate", rate, 1e-13),
        ("cutting_power", rate * k_c(pairs[0], f), 1e-11),
        // The first plunge stands alone: a sector of the cutter's circle less the triangle to its
        // chord of 2 sqrt(4 x 16) = 16 mm, 6 mm from the axis.
        (
            "limit_power",
            (0.01 * 0.01 * 0.6_f64.acos() - 0.008 * 0.006) * feed * k_c(pair, f) * WEAR,
            1e-11,
        ),
        ("peak_force", force, 1e-11),
        (
            "deflection",
            deflection(force, d, 0.038, 0.045, 206e9),
            1e-11,
        ),
        ("clamping_needed", SAFETY * force / 0.3, 1e-11),
        (
            "scallop_height",
            d / 2.0 - (d * d / 4.0 - step * step / 4.0).sqrt(),
            1e-11,
        ),
        ("travel", travel, 1e-14),
        ("time", passes * travel / feed + 8.0 * 3.0, 1e-13),
    ] {
        near(of(&cut_, name), expected, tolerance, name);
    }
}

#[test]
fn limits_of_plunges_at_their_edges() {
    // The chord of the cutter at the old wall: 2 sqrt(4 x 16) = 16 mm.
    assert!(
        try_cut(
            "plunging",
            &[PLUNGE, "largest_step=16 mm; wall_length=48 mm"]
        )
        .is_ok()
    );
    refused(
        "plunging",
        &[PLUNGE, "largest_step=16.1 mm; wall_length=48.3 mm"],
        "stepover",
    );
    refused("plunging", &[PLUNGE, "flute_length=24 mm"], "flute_length");
    assert!(
        try_cut(
            "plunging",
            &[PLUNGE, "flute_length=24 mm; shank_diameter=19 mm"]
        )
        .is_ok()
    );
    // A middle that does not cut must stay clear of the stock: 20 - 2 x 4 = 12 mm.
    assert!(try_cut("plunging", &[PLUNGE, "core_diameter=12 mm"]).is_ok());
    let error = try_cut("plunging", &[PLUNGE, "core_diameter=12.1 mm"])
        .map(|_| ())
        .unwrap_err();
    assert_eq!(error.code(), Code::OutOfRange);
    assert_eq!(error.first().parameter, "core_diameter");
    let free = cut("plunging", &[PLUNGE]);
    let bound = 0.9 * of(&free, "clamping_needed");
    let held = cut("plunging", &[PLUNGE, &format!("clamping_force={bound} N")]);
    assert_eq!(held.held_by.map(|name| name.name()), Some("clamping"));
    near(held.limit("clamping").unwrap().share, 1.0, 1e-8, "clamping");
}
