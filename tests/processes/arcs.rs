//! Bores, helices and threads: cutters that run round inside and outside.

use super::bench::Shop;
use super::recomputed::{CLEARANCE, SAFETY, Side, WEAR, deflection, k_c, pairs, peak, worst};
use gullet::operation::process::{ProcessCut, Request, find};
use gullet::{Code, Result};
use std::f64::consts::PI;

const BORE: &str = "bore_diameter=62 mm; start_diameter=56 mm; depth=14 mm; diameter=20 mm; teeth=4; flute_length=40 mm; stick_out=45 mm";
const HELIX: &str = "bore_diameter=30 mm; depth=10 mm; diameter=20 mm; teeth=3; flute_length=38 mm; stick_out=45 mm";
const THREAD: &str = "major_diameter=36 mm; pitch=2 mm; thread_length=20 mm; diameter=20 mm; teeth=4; stick_out=42 mm";
const ASKED: &str = "spindle_speed=480 rpm; feed=0.06 mm";

pub fn try_cut(operation: &str, texts: &[&str]) -> Result<ProcessCut> {
    let process = find(operation)?;
    let mut request = Request::of(process);
    for text in texts {
        request = request.texts(text)?;
    }
    request.cut(&Shop::of(process).bench())
}

pub fn cut(operation: &str, texts: &[&str]) -> ProcessCut {
    try_cut(operation, texts).unwrap_or_else(|error| panic!("{operation} {texts:?}: {error}"))
}

pub fn of(cut: &ProcessCut, name: &str) -> f64 {
    cut.value(name).unwrap_or_else(|| panic!("{name}")).si
}

pub fn near(a: f64, b: f64, tolerance: f64, what: &str) {
    assert!((a - b).abs() <= tolerance * b.abs(), "{what}: {a} for {b}");
}

pub fn refused(operation: &str, texts: &[&str], limit: &str) {
    let error = try_cut(operation, texts).map(|_| ()).unwrap_err();
    assert_eq!(error.code(), Code::LimitExceeded, "{error}");
    assert!(
        error
            .problems()
            .iter()
            .any(|problem| problem.parameter == limit),
        "{limit}: {error}"
    );
    assert!(
        error
            .problems()
            .iter()
            .all(|problem| !problem.remedy.is_empty())
    );
}

#[test]
fn a_bore_computed_a_second_time() {
    let cut = cut(
        "bore-milling",
        &[BORE, ASKED, "largest_level=5 mm; link_time=1.5 s"],
    );
    let (bore, start, d, z) = (0.062_f64, 0.056_f64, 0.020_f64, 4.0);
    let (n, f) = (8.0, 0.06e-3);
    let contour = f * z * n;
    let centre = contour * (bore - d) / bore;
    // Where the cutter's circle meets the old wall, by the law of cosines about the bore's axis.
    let (e, r, old) = ((bore - d) / 2.0, d / 2.0, start / 2.0);
    let arc = ((old * old - e * e - r * r) / (2.0 * e * r)).acos();
    let a_e = d * (1.0 - arc.cos()) / 2.0;
    let a_p = 0.014 / 3.0;
    let side = Side {
        circle: d,
        a_e,
        a_p,
        width: a_p,
        sine: 1.0,
    };
    let f_centre = centre / (z * n);
    let (h_max, h_m) = (side.max_chip(f_centre), side.mean_chip(f_centre));
    let rate = a_p * a_e * centre;
    let pairs = pairs(&Shop::of(cut.process).material);
    let power = rate * k_c(pairs[0], h_m);
    let limit_power = rate * k_c(worst(&pairs, h_m), h_m) * WEAR;
    let helix = 30f64.to_radians();
    let force = peak(&pairs, &side, f_centre, z, d, helix);
    let axial = force / 1.09_f64.sqrt() * helix.tan();
    let round = PI * (bore - d);
    // Half circles of half the diameter lead in and out.
    let travel = round + 2.0 * (PI * (bore - d) / 2.0 / 2.0);
    // Circles of the cutter within the bore: where two a feed apart meet.
    let (step, rho) = (f * z, bore / 2.0);
    let turn = (step / 2.0 / rho).asin();
    let meeting = e * turn.cos() + (r * r - (e * turn.sin()).powi(2)).sqrt();
    let marks = rho - meeting;
    for (name, expected, tolerance) in [
        ("spindle_speed", n, 1e-15),
        ("feed", f, 1e-15),
        ("cutting_speed", PI * d * n, 1e-14),
        ("contour_feed", contour, 1e-14),
        ("centre_feed", centre, 1e-14),
        ("feed_speed", centre, 1e-14),
        ("radial_depth", a_e, 1e-12),
        ("levels", 3.0, 0.0),
        ("axial_depth", a_p, 1e-15),
        ("max_chip", h_max, 1e-12),
        ("mean_chip", h_m, 1e-12),
        ("removal_rate", rate, 1e-12),
        ("cutting_power", power, 1e-11),
        ("motor_power", power / 0.85, 1e-11),
        ("torque", power / (2.0 * PI * n), 1e-11),
        ("mean_force", power / (PI * d * n), 1e-11),
        ("limit_power", limit_power, 1e-11),
        ("limit_torque", limit_power / (2.0 * PI * n), 1e-11),
        ("peak_force", force, 1e-10),
        ("axial_force", axial, 1e-10),
        (
            "deflection",
            deflection(force, d, 0.040, 0.045, 206e9),
            1e-10,
        ),
        (
            "clamping_needed",
            (SAFETY * force.hypot(axial) / (2.0 * 0.15)).max(SAFETY * force),
            1e-10,
        ),
        ("mean_roughness", marks * 4.0 / (9.0 * 3f64.sqrt()), 1e-7),
        ("travel", travel, 1e-14),
        ("time", 3.0 * travel / centre + 2.0 * 1.5, 1e-13),
    ] {
        near(of(&cut, name), expected, tolerance, name);
    }
}

#[test]
fn what_a_bore_loses_is_what_its_circles_cut() {
    let bore = cut("bore-milling", &[BORE, "largest_level=5 mm"]);
    let round = PI * 0.042 / of(&bore, "centre_feed");
    let volume = PI / 4.0 * (0.062_f64.powi(2) - 0.056_f64.powi(2)) * 0.014;
    near(
        3.0 * of(&bore, "removal_rate") * round,
        volume,
        1e-12,
        "bore",
    );

    let helix = cut("helical-entry", &[HELIX]);
    let down = 0.010 / of(&helix, "axial_feed");
    near(
        of(&helix, "removal_rate") * down,
        PI / 4.0 * 0.030_f64.powi(2) * 0.010,
        1e-12,
        "helix",
    );
    let slug = cut("helical-entry", &[HELIX, "bore_diameter=50 mm"]);
    near(of(&slug, "slug_diameter"), 0.010, 1e-12, "slug");
    near(
        of(&slug, "removal_rate") * 0.010 / of(&slug, "axial_feed"),
        PI / 4.0 * (0.050_f64.powi(2) - 0.010_f64.powi(2)) * 0.010,
        1e-12,
        "helix around a slug",
    );
    assert!(
        slug.warnings
            .iter()
            .any(|warning| warning.text.contains("slug"))
    );
}

/// Arcs are corrected once, and not the wrong way round: inside the centre is slower than the contour,
/// outside faster, and a control that corrects by itself gets the contour's feed.
#[test]
fn arcs_are_corrected_once() {
    for (operation, text, contour, diameter, inside) in [
        ("bore-milling", BORE, 0.062, 0.020, true),
        ("helical-entry", HELIX, 0.030, 0.020, true),
        ("thread-milling", THREAD, 0.036, 0.020, true),
        (
            "thread-milling",
            "thread=external; major_diameter=36 mm; pitch=2 mm; thread_length=20 mm; diameter=20 mm; teeth=4; stick_out=42 mm",
            0.036 - 17.0 * 3f64.sqrt() / 24.0 * 0.002,
            0.020,
            false,
        ),
    ] {
        let a = cut(operation, &[text]);
        let teeth = if operation == "helical-entry" {
            3.0
        } else {
            4.0
        };
        let wanted = of(&a, "feed") * teeth * of(&a, "spindle_speed");
        let share: f64 = if inside {
            (contour - diameter) / contour
        } else {
            (contour + diameter) / contour
        };
        near(of(&a, "contour_feed"), wanted, 1e-13, operation);
        near(of(&a, "centre_feed"), wanted * share, 1e-13, operation);
        near(
            of(&a, "feed_speed"),
            of(&a, "centre_feed"),
            1e-13,
            operation,
        );
        assert_eq!(
            of(&a, "centre_feed") < of(&a, "contour_feed"),
            inside,
            "{operation}"
        );

        let b = cut(operation, &[text, "programmed=contour"]);
        near(
            of(&b, "feed_speed"),
            of(&b, "contour_feed"),
            1e-13,
            operation,
        );
        for same in [
            "feed",
            "centre_feed",
            "max_chip",
            "removal_rate",
            "peak_force",
            "time",
        ] {
            assert_eq!(
                of(&a, same).to_bits(),
                of(&b, same).to_bits(),
                "{operation}: {same} depends on what the control corrects"
            );
        }
    }
    // A cutter nearly as wide as the bore hardly moves.
    let wide = cut("helical-entry", &[HELIX, "bore_diameter=36 mm"]);
    let narrow = cut("helical-entry", &[HELIX, "bore_diameter=28 mm"]);
    assert!(of(&narrow, "centre_feed") < of(&wide, "centre_feed") * 0.7);
}

#[test]
fn the_step_of_an_arc_is_shown() {
    let cut = cut("bore-milling", &[BORE]);
    let steps: Vec<String> = cut
        .steps
        .iter()
        .map(|step| step.text(gullet::quantity::UnitSystem::Metric))
        .collect();
    assert_eq!(
        steps
            .iter()
            .filter(|step| step.contains("v_f (D_f - D_c)/D_f"))
            .count(),
        1,
        "{steps:#?}"
    );
}

#[test]
fn limits_of_a_bore_at_their_edges() {
    // The cutter must go down in the start hole, and the flutes must reach.
    assert!(try_cut("bore-milling", &[BORE, "start_diameter=44 mm; bore_diameter=46 mm; diameter=44 mm; flute_length=44 mm; feed=0.3 mm; spindle_speed=200 rpm; stick_out=44 mm"])
        .map_err(|error| error.problems().iter().all(|problem| problem.parameter != "cutter_in_bore"))
        .map_or_else(|other| other, |_| true));
    refused("bore-milling", &[BORE, "diameter=57 mm"], "cutter_in_bore");
    assert!(try_cut("bore-milling", &[BORE, "flute_length=14 mm"]).is_ok());
    refused(
        "bore-milling",
        &[BORE, "flute_length=13.9 mm"],
        "flute_length",
    );
    // Below a relieved shank a level is enough.
    assert!(
        try_cut(
            "bore-milling",
            &[
                BORE,
                "flute_length=13.9 mm; shank_diameter=19 mm; largest_level=7 mm"
            ]
        )
        .is_ok()
    );
    // A ring would be left; the holder would touch.
    for bad in ["start_diameter=21 mm", "stick_out=13 mm", "diameter=62 mm"] {
        let error = try_cut("bore-milling", &[BORE, bad])
            .map(|_| ())
            .unwrap_err();
        assert_eq!(error.code(), Code::OutOfRange, "{bad}: {error}");
    }

    // Roughness and clamping lower the feed until they just hold.
    let free = cut("bore-milling", &[BORE]);
    for (ask, unit, limit, result) in [
        ("wanted_roughness", "m", "mean_roughness", "mean_roughness"),
        ("clamping_force", "N", "clamping", "clamping_needed"),
    ] {
        let bound = 0.9 * of(&free, result);
        let held = cut("bore-milling", &[BORE, &format!("{ask}={bound} {unit}")]);
        assert_eq!(held.held_by.map(|name| name.name()), Some(limit));
        assert!(of(&held, "feed") < of(&free, "feed"));
        near(held.limit(limit).unwrap().share, 1.0, 1e-4, limit);
        assert!(!held.limit(limit).unwrap().exceeded());
    }
    assert!(free.limit("clamping").is_none());

    // A finishing pass may bend the cutter less; a carbide body bends less.
    let rough = cut("bore-milling", &[BORE]);
    let finish = cut(
        "bore-milling",
        &[BORE, "pass=finishing; largest_level=5 mm"],
    );
    assert!(rough.limit("deflection").unwrap().bound > finish.limit("deflection").unwrap().bound);
    let carbide = cut(
        "bore-milling",
        &[BORE, ASKED, "largest_level=5 mm; body=carbide"],
    );
    let hss = cut("bore-milling", &[BORE, ASKED, "largest_level=5 mm"]);
    near(
        of(&hss, "deflection") / of(&carbide, "deflection"),
        600.0 / 206.0,
        1e-12,
        "modulus",
    );
    let long = cut(
        "bore-milling",
        &[BORE, "stick_out=85 mm; largest_level=5 mm"],
    );
    assert_eq!(long.held_by.map(|name| name.name()), Some("deflection"));
    near(
        long.limit("deflection").unwrap().share,
        1.0,
        1e-8,
        "deflection",
    );
    assert!(
        long.warnings
            .iter()
            .any(|warning| warning.text.contains("stands out further"))
    );
}

#[test]
fn a_helix_has_the_ramp_it_is_given() {
    let cut_ = cut("helical-entry", &[HELIX, "ramp_angle=2.5 deg"]);
    let circle = 0.010_f64;
    let per_turn = PI * circle * 2.5_f64.to_radians().tan();
    near(
        of(&cut_, "axial_per_turn"),
        per_turn,
        1e-13,
        "axial_per_turn",
    );
    near(
        of(&cut_, "axial_feed") / of(&cut_, "centre_feed"),
        2.5_f64.to_radians().sin(),
        1e-13,
        "axial feed",
    );
    // Through: in from the clearance and out by it; blind: one more circle on the floor.
    let deep = 0.010 + 2.0 * CLEARANCE;
    near(
        of(&cut_, "travel"),
        deep / 2.5_f64.to_radians().sin(),
        1e-13,
        "travel",
    );
    let blind = cut("helical-entry", &[HELIX, "ramp_angle=2.5 deg; hole=blind"]);
    near(
        of(&blind, "travel"),
        (0.010 + CLEARANCE) / 2.5_f64.to_radians().sin() + PI * circle,
        1e-13,
        "blind",
    );
    near(
        of(&blind, "time"),
        of(&blind, "travel") / of(&blind, "centre_feed"),
        1e-13,
        "time",
    );
}

#[test]
fn limits_of_a_helix_at_their_edges() {
    let text = |more: &'static str| [HELIX, more];
    assert!(try_cut("helical-entry", &text("largest_ramp_angle=2 deg")).is_ok());
    refused(
        "helical-entry",
        &text("largest_ramp_angle=1.99 deg"),
        "ramp_angle",
    );
    // What does not cut at the middle: the smallest bore, and the ramp by its clearance.
    let core = "centre_cutting=no; core_diameter=10 mm; core_clearance=0.35 mm";
    let held = cut("helical-entry", &[HELIX, core]);
    near(
        held.limit("ramp_angle").unwrap().bound,
        (0.35_f64 / 10.0).atan(),
        1e-13,
        "ramp",
    );
    refused(
        "helical-entry",
        &[HELIX, core, "core_diameter=10.1 mm"],
        "cutter_in_bore",
    );
    refused(
        "helical-entry",
        &[HELIX, core, "core_clearance=0.34 mm"],
        "ramp_angle",
    );
    // Nothing known of the middle: the whole end is taken not to cut.
    refused(
        "helical-entry",
        &[HELIX, "centre_cutting=no"],
        "cutter_in_bore",
    );
    // A blind bore must leave no pillar: twice the flat of the end.
    assert!(
        try_cut(
            "helical-entry",
            &[HELIX, "hole=blind; bore_diameter=38 mm; corner_radius=1 mm"]
        )
        .is_ok()
    );
    refused(
        "helical-entry",
        &[
            HELIX,
            "hole=blind; bore_diameter=38.1 mm; corner_radius=1 mm",
        ],
        "cutter_in_bore",
    );
    let error = try_cut("helical-entry", &[HELIX, "diameter=30 mm"])
        .map(|_| ())
        .unwrap_err();
    assert_eq!(error.code(), Code::OutOfRange);
}

/// Basic sizes of M36x2 by ISO 724 (from memory): pitch diameter 34.701 mm, minor diameter 33.835 mm.
#[test]
fn a_thread_has_the_sizes_of_the_standard() {
    let inside = cut("thread-milling", &[THREAD]);
    near(
        of(&inside, "pitch_diameter"),
        34.701e-3,
        2e-5,
        "pitch diameter",
    );
    near(
        of(&inside, "minor_diameter"),
        33.835e-3,
        2e-5,
        "minor diameter",
    );
    // A single ring climbs pitch by pitch.
    near(of(&inside, "turns"), 10.0, 1e-12, "turns");
    near(of(&inside, "positions"), 1.0, 0.0, "positions");
    let turn = (PI * 0.016).hypot(0.002);
    let travel = 10.0 * turn + 2.0 * PI * 0.016 / 4.0;
    near(of(&inside, "travel"), travel, 1e-13, "travel");
    near(
        of(&inside, "time"),
        travel / of(&inside, "centre_feed"),
        1e-13,
        "time",
    );
    // The groove of the basic profile: 5/8 H deep, 3/4 P wide at the top and P/8 at the bottom.
    let groove = (0.75 + 0.125) / 2.0 * 0.002 * 5.0 * 3f64.sqrt() / 16.0 * 0.002;
    near(
        of(&inside, "removal_rate") * turn / of(&inside, "centre_feed"),
        groove * PI * (0.036 - 3.0 * 3f64.sqrt() / 8.0 * 0.002),
        1e-12,
        "groove",
    );

    // Rings over part of the length: whole pitches at a time.
    let several = cut(
        "thread-milling",
        &[THREAD, "rings_length=7 mm; link_time=1 s"],
    );
    near(of(&several, "positions"), 4.0, 0.0, "positions");
    near(of(&several, "turns"), 1.0, 0.0, "turns");
    near(
        of(&several, "time"),
        4.0 * (turn + PI * 0.008) / of(&several, "centre_feed") + 3.0,
        1e-12,
        "time",
    );
    assert!(of(&several, "peak_force") > of(&inside, "peak_force") * 1.5);
}

#[test]
fn limits_of_a_thread_at_their_edges() {
    assert!(try_cut("thread-milling", &[THREAD, "diameter=25.2 mm"]).is_ok());
    refused(
        "thread-milling",
        &[THREAD, "diameter=25.3 mm"],
        "cutter_in_bore",
    );
    refused(
        "thread-milling",
        &[THREAD, "diameter=40 mm"],
        "cutter_in_bore",
    );
    let outside = cut(
        "thread-milling",
        &[THREAD, "thread=external; diameter=40 mm"],
    );
    assert!(outside.limit("cutter_in_bore").is_none());
    assert_eq!(of(&outside, "flank_widening"), 0.0);
    for bad in ["rings_length=1.9 mm", "pitch=21 mm", "stick_out=19 mm"] {
        let error = try_cut("thread-milling", &[THREAD, bad])
            .map(|_| ())
            .unwrap_err();
        assert_eq!(error.code(), Code::OutOfRange, "{bad}");
    }
}

/// A circle needs axes that move together.
#[test]
fn a_table_cranked_by_hand_runs_no_circle() {
    for name in ["bore-milling", "helical-entry", "thread-milling"] {
        let process = find(name).unwrap();
        let told = |machine: &str| {
            let mut shop = Shop::of(process);
            shop.machine = gullet::model::Machine::builtin(machine).unwrap();
            let request = Request::of(process).texts(process.example.inputs).unwrap();
            let cut = request
                .cut(&shop.bench())
                .unwrap_or_else(|error| panic!("{name} on {machine}: {error}"));
            cut.warnings
                .iter()
                .any(|warning| warning.text.contains("cranked by hand"))
        };
        assert!(told("manual-knee-mill"), "{name}");
        assert!(!told("small-cnc-mill"), "{name}");
    }
}

/// A cutter that does not cut at its centre and of which nothing else is known: the remedy says what to
/// give.
#[test]
fn a_ramp_of_an_unknown_middle_is_refused_with_what_to_give() {
    let error = try_cut("helical-entry", &[HELIX, "centre_cutting=no"])
        .map(|_| ())
        .unwrap_err();
    let ramp = error
        .problems()
        .iter()
        .find(|problem| problem.parameter == "ramp_angle")
        .unwrap();
    assert!(ramp.remedy.contains("core_clearance"), "{error}");
}
