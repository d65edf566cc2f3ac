//! Known traps of turning, facing, threading and sawing, one by one.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

use gullet::evaluate;
use gullet::formula::find;
use gullet::quantity::{Kind, unit};
use gullet::{Code, Error};

/// The SI value of a formula over arguments as text.
fn si(name: &str, arguments: &str) -> f64 {
    evaluate(name, arguments)
        .unwrap_or_else(|error| panic!("{name}: {error}"))
        .si
}

fn refused(name: &str, arguments: &str) -> Error {
    evaluate(name, arguments).expect_err(name)
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

#[track_caller]
fn assert_near(a: f64, b: f64) {
    assert!(near(a, b), "{a} against {b}");
}

/// Cutting-edge angle against lead angle: the sine is that of the cutting-edge angle.
#[test]
fn pitfall_4_cutting_edge_angle_is_not_the_lead_angle() {
    let kappa = si("cutting_edge_angle_of_lead_angle", "lead_angle=15 deg").to_degrees();
    assert_near(kappa, 75.0);
    let h = |angle: f64| {
        si(
            "turning_chip_thickness",
            &format!("feed_per_rev=0.2 mm; cutting_edge_angle={angle} deg"),
        )
    };
    assert_near(h(kappa), 0.2e-3 * 75f64.to_radians().sin());
    assert!(h(kappa) > 3.0 * h(15.0), "the wrong angle thins the chip");
    // Passive force rises, feed force falls as the edge leans; the wrong one would do the opposite.
    let passive = |angle: f64| {
        si(
            "turning_passive_force",
            &format!("cutting_force=1000 N; cutting_edge_angle={angle} deg"),
        )
    };
    assert!(passive(kappa) < passive(45.0) && passive(45.0) < passive(15.0));
    // A lead angle of 0 is a square shoulder, no edge without an angle.
    assert_near(
        si("cutting_edge_angle_of_lead_angle", "lead_angle=0 deg").to_degrees(),
        90.0,
    );
    assert_eq!(
        refused(
            "turning_chip_thickness",
            "feed_per_rev=0.2 mm; cutting_edge_angle=0 deg"
        )
        .code(),
        Code::OutOfRange
    );
}

/// The depth is half of what the diameter changes by, and the way of facing is the radius.
#[test]
fn pitfall_5_depth_is_on_the_radius() {
    let depth = si(
        "depth_of_cut_from_diameters",
        "larger_diameter=50 mm; smaller_diameter=46 mm",
    );
    assert_near(depth, 2e-3);
    // Volume over a pass: section of the ring times the length, by the depth on the radius only.
    let (d, f, n) = (0.050, 0.2e-3, 10.0);
    let v = core::f64::consts::PI * (d - depth) * n;
    let rate = si(
        "turning_removal_rate",
        &format!("cutting_speed={v} m/s; feed_per_rev={f} m; depth_of_cut={depth} m"),
    );
    let ring = core::f64::consts::PI / 4.0 * (0.050f64.powi(2) - 0.046f64.powi(2));
    assert_near(rate, ring * f * n);
    let time = si(
        "facing_time_fixed_speed",
        "outer_diameter=100 mm; inner_diameter=0 mm; feed_per_rev=0.1 mm; spindle_speed=500 rpm",
    );
    assert_near(time, 60.0);
    assert_near(
        si(
            "diameter_error_of_radial_deflection",
            "radial_deflection=0.01 mm",
        ),
        0.02e-3,
    );
    // Diameters in the wrong order are refused, and said to be.
    let error = refused(
        "depth_of_cut_from_diameters",
        "larger_diameter=46 mm; smaller_diameter=50 mm",
    );
    assert!(error.to_string().contains("larger_diameter"), "{error}");
}

/// A feed per revolution, a feed per tooth and a feed speed are told apart by their units.
#[test]
fn pitfall_6_feeds_are_told_apart() {
    assert_near(
        si("feed_rate", "feed_per_rev=0.2 mm; spindle_speed=600 rpm"),
        0.002,
    );
    let error = refused(
        "feed_rate",
        "feed_per_rev=120 mm/min; spindle_speed=600 rpm",
    );
    assert_eq!(error.problems()[0].parameter, "feed_per_rev");
    let error = refused("cutting_time", "travel=100 mm; feed_speed=0.2 mm");
    assert_eq!(error.problems()[0].parameter, "feed_speed");
    // Of a thread the feed is the lead.
    let lead = si("thread_lead", "pitch=1.5 mm; starts=3");
    assert_near(lead, 4.5e-3);
    let time = |lead: f64| {
        si(
            "threading_time",
            &format!("length=45 mm; lead={lead} m; spindle_speed=60 rpm; passes=1"),
        )
    };
    assert_near(time(lead), 10.0);
    // Of a saw it is the advance per tooth, thousands of which pass in a minute.
    let sink = si(
        "saw_feed_speed",
        "blade_speed=60 m/min; feed_per_tooth=2 um; tooth_pitch=6 mm",
    );
    assert_near(sink * 60.0, 0.020);
}

/// The efficiency divides once: power at the cutter by it is power at the motor, and the torque at
/// the spindle comes from the former.
#[test]
fn pitfall_7_efficiency_is_taken_once() {
    let cutter = si(
        "cutting_power",
        "removal_rate=375000 mm3/min; specific_cutting_force=2.8 J/mm3",
    );
    let motor = si(
        "motor_power",
        &format!("cutting_power={cutter} W; efficiency=0.9"),
    );
    assert_near(cutter, 17_500.0);
    assert_near(motor * 0.9, cutter);
    let back = si(
        "usable_power",
        &format!("rated_motor_power={motor} W; efficiency=0.9; power_share=1"),
    );
    assert_near(back, cutter);
    let torque = si(
        "cutting_torque",
        &format!("cutting_power={cutter} W; spindle_speed=600 rpm"),
    );
    let force = 2.0 * torque / 0.1;
    assert_near(
        si(
            "turning_torque",
            &format!("cutting_force={force} N; diameter=100 mm"),
        ),
        torque,
    );
}

/// At constant cutting speed the spindle would run away at the centre; the clamp bounds it.
#[test]
fn pitfall_10_constant_speed_needs_a_clamp() {
    let cut =
        "outer_diameter=100 mm; inner_diameter=0 mm; cutting_speed=200 m/min; feed_per_rev=0.2 mm";
    let limit = |rpm: f64| {
        si(
            "facing_time_limited_speed",
            &format!("{cut}; maximum_speed={rpm} rpm"),
        )
    };
    let knee = si(
        "constant_speed_knee_diameter",
        "cutting_speed=200 m/min; maximum_speed=3000 rpm",
    );
    assert!((knee - 0.0212).abs() < 5e-5, "{knee}");
    assert!((limit(3000.0) / 60.0 - 0.2052).abs() < 5e-5);
    // Lower clamps cost time, higher ones approach the integral without a clamp and never undercut it.
    let free = si("facing_time_constant_speed", cut);
    assert!(limit(1000.0) > limit(3000.0) && limit(3000.0) > limit(30_000.0));
    assert!(limit(30_000.0) > free && limit(30_000.0) < free * 1.01);
    // A clamp below the first speed is facing at that one speed.
    let fixed = si(
        "facing_time_fixed_speed",
        "outer_diameter=100 mm; inner_diameter=0 mm; feed_per_rev=0.2 mm; spindle_speed=100 rpm",
    );
    assert_near(limit(100.0), fixed);
    // Parting with the full feed to the centre is the same; none is to be had without a clamp.
    let parting = "slow_diameter=0 mm; maximum_speed=3000 rpm";
    assert_near(
        si("parting_time", &format!("{cut}; {parting}")),
        limit(3000.0),
    );
    assert_eq!(
        refused("parting_time", &format!("{cut}; slow_diameter=0 mm")).code(),
        Code::Missing
    );
    assert_eq!(
        refused(
            "facing_time_limited_speed",
            &format!("{cut}; maximum_speed=0 rpm")
        )
        .code(),
        Code::OutOfRange
    );
}

/// Horsepower is 550 ft.lbf/s; the metric one is smaller by 1.4 % and goes by its own name.
#[test]
fn pitfall_16_horsepower_is_not_metric_horsepower() {
    let hp = unit(Kind::Power, "hp").unwrap().size();
    assert!((hp - 745.699_871_582_270_2).abs() < 1e-9, "{hp}");
    match unit(Kind::Power, "PS") {
        Ok(metric) => assert!((metric.size() - 735.498_75).abs() < 1e-9),
        Err(error) => assert!(error.to_string().contains("PS"), "{error}"),
    }
    let motor = evaluate("motor_power", "cutting_power=2.16 hp; efficiency=0.85").unwrap();
    assert!(motor.agrees_with("2.54 hp", 2e-3).unwrap());
    assert!(!motor.agrees_with("2.54 kW", 2e-3).unwrap());
}

/// Nothing of zero is divided by: no chip has no force law, and no feed has a thickness of zero.
#[test]
fn pitfall_19_no_chip_has_no_infinite_force() {
    let error = refused(
        "specific_cutting_force",
        "kc11=1800 N/mm2; chip_exponent=0.25; chip_thickness=0 mm",
    );
    assert_eq!(error.code(), Code::OutOfRange);
    let edge =
        "depth_of_cut=0 mm; feed_per_rev=0 mm; nose_radius=0.8 mm; cutting_edge_angle=95 deg";
    assert_eq!(
        refused("turning_edge_length", edge).code(),
        Code::OutOfRange
    );
    let length = si("turning_edge_length", &edge.replace("95", "90"));
    assert_eq!(length, 0.0);
    let error = refused(
        "turning_mean_chip_thickness",
        "depth_of_cut=0 mm; feed_per_rev=0.1 mm; edge_length=0 mm",
    );
    assert_eq!(error.problems()[0].parameter, "edge_length");
    assert_eq!(
        si(
            "turning_mean_chip_thickness",
            "depth_of_cut=1 mm; feed_per_rev=0 mm; edge_length=1 mm"
        ),
        0.0
    );
    assert_eq!(
        refused(
            "turning_chord_angle",
            "depth_of_cut=0 mm; feed_per_rev=0.1 mm; nose_radius=0.8 mm; cutting_edge_angle=90 deg"
        )
        .code(),
        Code::OutOfRange
    );
    for name in [
        "cutting_time",
        "facing_time_fixed_speed",
        "threading_time",
        "parting_time",
    ] {
        let formula = find(name).unwrap();
        let feed = formula
            .parameters
            .iter()
            .position(|p| matches!(p.name, "feed_speed" | "feed_per_rev" | "lead"))
            .unwrap();
        let mut arguments = formula.example_arguments().unwrap();
        arguments[feed] = 0.0;
        assert_eq!(
            formula.call(&arguments).unwrap_err().code(),
            Code::OutOfRange,
            "{name}"
        );
    }
}

/// Below the depth of the nose the straight edge means nothing: its angle changes no chip.
#[test]
fn a_finishing_cut_follows_the_nose() {
    let length = |kappa: f64| {
        si(
            "turning_edge_length",
            &format!(
                "depth_of_cut=0.2 mm; feed_per_rev=0.1 mm; nose_radius=0.8 mm; cutting_edge_angle={kappa} deg"
            ),
        )
    };
    assert_near(length(60.0), length(90.0));
    assert!(
        length(30.0) > length(90.0) * 1.01,
        "here the straight edge cuts too"
    );
    // The mean chip of a finishing cut is far thinner than its feed.
    let mean = si(
        "turning_mean_chip_thickness",
        &format!(
            "depth_of_cut=0.2 mm; feed_per_rev=0.1 mm; edge_length={} m",
            length(90.0)
        ),
    );
    assert!(mean < 0.04e-3, "{mean}");
    // And its passive force is the larger one, whatever the angle of the straight edge.
    let chord = si(
        "turning_chord_angle",
        "depth_of_cut=0.2 mm; feed_per_rev=0.1 mm; nose_radius=0.8 mm; cutting_edge_angle=90 deg",
    );
    let force = |name: &str| {
        si(
            name,
            &format!("cutting_force=100 N; cutting_edge_angle={chord} rad"),
        )
    };
    assert!(force("turning_passive_force") > force("turning_feed_force"));
}

/// Steps of the depths add up to the thread, and cut equal sections with a sharp tip.
#[test]
fn threading_passes_add_up_and_cut_alike() {
    let (h, passes) = (1.2, 9);
    let mut depth = 0.0;
    let mut sections = Vec::new();
    for pass in 1..=passes {
        let step = si(
            "threading_infeed",
            &format!("thread_height={h} mm; passes={passes}; index={pass}"),
        );
        let after = depth + step;
        assert_near(
            after,
            si(
                "threading_depth",
                &format!("thread_height={h} mm; passes={passes}; index={pass}"),
            ),
        );
        sections.push(si(
            "threading_chip_section",
            &format!("depth={after} m; previous_depth={depth} m"),
        ));
        depth = after;
    }
    assert_near(depth, h * 1e-3);
    for section in &sections {
        assert_near(*section, sections[0]);
    }
}

/// A tube holds fewer teeth than its outside; over its height the crossings add up to its area.
#[test]
fn a_tube_is_its_walls() {
    let (outer, inner) = (100.0, 60.0);
    let tube = format!("outer_diameter={outer} mm; inner_diameter={inner} mm");
    let steps = 200_000;
    let mut area = 0.0;
    for step in 0..steps {
        let y = outer * ((f64::from(step) + 0.5) / f64::from(steps) - 0.5);
        let formula = find("tube_crossing_length").unwrap();
        area += formula
            .call(&[outer * 1e-3, inner * 1e-3, y * 1e-3])
            .unwrap();
    }
    area *= outer * 1e-3 / f64::from(steps);
    let whole = si("round_section_area", &tube);
    assert!((area / whole - 1.0).abs() < 1e-6, "{area} {whole}");
    let longest = si("tube_longest_crossing", &tube);
    assert_near(
        longest,
        si(
            "tube_crossing_length",
            &format!("{tube}; offset={} mm", inner / 2.0),
        ),
    );
    assert!(longest < outer * 1e-3);
}
