//! Drilling, pecks and tap drills: forms that must agree, and charts of tap drills.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::Code;
use gullet::formula::find;
use gullet::quantity::{Length, si};
use gullet::table::{Drill, DrillSet, Library, Overlay, TapDrillWish, ThreadBasis};
use proptest::prelude::*;

fn value(name: &str, arguments: &[f64]) -> f64 {
    find(name)
        .unwrap()
        .call(arguments)
        .unwrap_or_else(|error| panic!("{name}{arguments:?}: {error}"))
}

fn near(a: f64, b: f64, tolerance: f64) -> bool {
    (a - b).abs() <= tolerance * a.abs().max(b.abs())
}

const INCH: f64 = 0.0254;
const STANDARD_POINT: f64 = 118.0 * core::f64::consts::PI / 180.0;

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    /// The handbook's metric form has rounded constants: 0.05, 0.007 and 2.5e-5 for millimetres.
    #[test]
    fn inch_and_metric_forms_of_the_handbook_agree(d in 0.002..0.05f64, f in 2e-5..6e-4f64, w in 1.0..2.0f64) {
        let (k_d, a, b, j) = (24_000.0, 1.085, 1.355, 0.030);
        let (d_mm, f_mm) = (d * 1e3, f * 1e3);
        let thrust = 0.05 * k_d * f_mm.powf(0.8) * d_mm.powf(0.8) * b * w + 0.007 * k_d * d_mm * d_mm * j * w;
        let torque = 2.5e-5 * k_d * f_mm.powf(0.8) * d_mm.powf(1.8) * a * w;
        prop_assert!(near(value("handbook_drilling_thrust", &[k_d, d, f, w, b, j]), thrust, 0.016));
        prop_assert!(near(value("handbook_drilling_torque", &[k_d, d, f, w, a]), torque, 0.006));
        // In inches it is the printed form, with the pound-force and the inch of their definitions.
        let (d_in, f_in) = (d / INCH, f / INCH);
        let pounds = 2.0 * k_d * f_in.powf(0.8) * d_in.powf(0.8) * b * w + k_d * d_in * d_in * j * w;
        prop_assert!(near(value("handbook_drilling_thrust", &[k_d, d, f, w, b, j]), pounds * 4.4482216152605, 1e-12));
    }

    /// A hole drilled in two steps takes the torque and the removal of one step, shared out.
    #[test]
    fn enlarging_adds_up_to_solid_drilling(d in 0.004..0.04f64, share in 0.1..0.9f64, f in 2e-5..6e-4f64) {
        let (first, k_c, n) = (d * share, 2e9, 8.0);
        let torque = value("drilling_torque", &[first, f, k_c]) + value("enlarging_torque", &[d, first, f, k_c]);
        prop_assert!(near(torque, value("drilling_torque", &[d, f, k_c]), 1e-12));
        let removal = value("drilling_removal_rate", &[first, f, n]) + value("enlarging_removal_rate", &[d, first, f, n]);
        prop_assert!(near(removal, value("drilling_removal_rate", &[d, f, n]), 1e-12));
        // Width times thickness of both lips is the section of the chip, whatever the point.
        let width = value("drilling_chip_width", &[d, STANDARD_POINT, first]);
        let thickness = value("drilling_chip_thickness", &[f, STANDARD_POINT]);
        prop_assert!(near(2.0 * width * thickness, f * (d - first) / 2.0, 1e-12));
        // The power of the torque is that of the removal rate at the same k_c.
        let power = value("power_from_torque", &[value("enlarging_torque", &[d, first, f, k_c]), n]);
        let removed = value("enlarging_removal_rate", &[d, first, f, n]);
        prop_assert!(near(power, value("cutting_power", &[removed, k_c]), 1e-12));
    }

    /// The sum over the moves, written out.
    #[test]
    fn peck_cycles_are_the_sum_of_their_moves(
        travel in 0.005..0.2f64, peck in 0.001..0.02f64, share in 0.0..1.0f64,
        feed in 5e-4..0.02f64, rapid in 0.02..0.8f64, acceleration in 0.2..10.0f64, dwell in 0.0..1.0f64,
    ) {
        let s = share * peck;
        let move_time = |distance: f64| value("rapid_time", &[distance, rapid, acceleration]);
        let count = value("peck_count", &[travel, peck]);
        let (mut full, mut short) = (0.0, 0.0);
        let mut bottom = 0.0;
        for i in 1..=count as usize {
            let from = if i == 1 { 0.0 } else { bottom - s };
            let from_short = if i == 1 { 0.0 } else { bottom - s };
            bottom = (i as f64 * peck).min(travel);
            full += (bottom - from) / feed + dwell + move_time(bottom);
            short += (bottom - from_short) / feed + dwell;
            if i < count as usize {
                full += move_time((bottom - s).max(0.0));
                short += move_time(s);
            }
        }
        short += move_time(travel);
        let arguments = [travel, peck, s, feed, rapid, acceleration, dwell];
        prop_assert!(near(value("peck_cycle_time", &arguments), full, 1e-11));
        prop_assert!(near(value("chip_break_cycle_time", &arguments), short, 1e-11));
    }
}

#[test]
fn one_peck_is_plain_drilling() {
    let plain = 0.03 / 0.002 + value("rapid_time", &[0.03, 0.1, 2.0]);
    for name in ["peck_cycle_time", "chip_break_cycle_time"] {
        let cycle = value(name, &[0.03, 0.05, 0.001, 0.002, 0.1, 2.0, 0.0]);
        assert!(near(cycle, plain, 1e-12), "{name}");
    }
    // A peck of a ten-thousandth of the travel is no plan.
    let error = find("peck_cycle_time")
        .unwrap()
        .call(&[0.1, 1e-5, 0.0, 0.002, 0.1, 2.0, 0.0])
        .unwrap_err();
    assert_eq!(error.first().parameter, "peck");
}

#[test]
fn a_depth_at_a_step_takes_the_step_whatever_the_rounding() {
    for (diameters, speed, feed) in [
        (2.9, 1.0, 1.0),
        (3.0, 0.9, 0.9),
        (4.0, 0.8, 0.9),
        (5.0, 0.7, 0.8),
        (6.0, 0.6, 0.8),
        (9.0, 0.6, 0.8),
    ] {
        for diameter in [0.0031, 0.0127, 0.5 * INCH, 0.01, 1.0 / 3000.0] {
            let depth = diameters * diameter;
            assert!(
                near(
                    value("deep_hole_speed_factor", &[depth, diameter]),
                    speed,
                    1e-12
                ),
                "{depth} {diameter}"
            );
            assert!(
                near(
                    value("deep_hole_feed_factor", &[depth, diameter]),
                    feed,
                    1e-12
                ),
                "{depth} {diameter}"
            );
        }
    }
}

#[test]
fn countersinks_and_taps_round_trip() {
    let depth = value("countersink_depth", &[0.0124, 0.0066, 1.5]);
    assert!(near(
        value("countersink_diameter", &[depth, 0.0066, 1.5]),
        0.0124,
        1e-12
    ));
    let drill = value("form_tap_drill_diameter", &[0.008, 0.00125, 0.65]);
    assert!(near(
        value("form_thread_percent", &[0.008, 0.00125, drill]),
        0.65,
        1e-12
    ));
    let travel = value("tap_stopping_travel", &[0.0015, 12.0, 0.3]);
    assert!(near(
        value("tapping_speed_for_stopping_travel", &[travel, 0.0015, 0.3]),
        12.0,
        1e-12
    ));
    assert!(near(
        value("tap_stopping_turns", &[12.0, 0.3]) * 0.0015,
        travel,
        1e-12
    ));
    // Heights and diameters of one form.
    let [major, pitch] = [0.012, 0.00175];
    let minor = value("thread_minor_diameter", &[major, pitch]);
    assert!(near(
        major - minor,
        2.0 * value("internal_thread_height", &[pitch]),
        1e-9
    ));
    let root = value("thread_root_diameter", &[major, pitch]);
    assert!(near(
        major - root,
        2.0 * value("external_thread_height", &[pitch]),
        1e-9
    ));
    let triangle = value("thread_triangle_height", &[pitch]);
    assert!(near(
        value("thread_pitch_diameter", &[major, pitch]),
        major - 0.75 * triangle,
        1e-12
    ));
}

fn wish(major_diameter: f64, pitch: f64, percent: f64, basis: ThreadBasis) -> TapDrillWish {
    TapDrillWish {
        major_diameter: si(major_diameter),
        pitch: si(pitch),
        thread_percent: si(percent),
        smallest_percent: si(percent - 0.15),
        largest_percent: si(percent + 0.08),
        basis,
    }
}

const INCH_SETS: &[DrillSet] = &[DrillSet::Fraction, DrillSet::Number, DrillSet::Letter];

/// Drills of tap-drill charts in the United States, Machinery's Handbook, from memory.
#[test]
fn the_nearest_inch_drill_is_that_of_the_charts() {
    for (major, threads, drill) in [
        (0.138, 32.0, "No 36"),
        (0.164, 32.0, "No 29"),
        (0.190, 24.0, "No 25"),
        (0.190, 32.0, "No 21"),
        (0.250, 20.0, "No 7"),
        (0.250, 28.0, "No 3"),
        (0.3125, 18.0, "F"),
        (0.375, 16.0, "5/16 in"),
        (0.5, 13.0, "27/64 in"),
        (0.625, 11.0, "17/32 in"),
        (0.75, 10.0, "21/32 in"),
    ] {
        let wish = wish(major * INCH, INCH / threads, 0.75, ThreadBasis::Chart);
        let found = Library::builtin().tap_drills(&wish, INCH_SETS).unwrap();
        assert_eq!(found[0].drill.name, drill, "{major}-{threads}");
    }
}

/// ISO 2306, from memory. M12 takes 10.2 mm there, and 10.3 mm is nearer to 75 %.
#[test]
fn the_nearest_metric_drill_is_that_of_the_standard() {
    for (major, pitch, drill) in [
        (3.0, 0.5, "2.5 mm"),
        (4.0, 0.7, "3.3 mm"),
        (5.0, 0.8, "4.2 mm"),
        (6.0, 1.0, "5 mm"),
        (8.0, 1.25, "6.8 mm"),
        (10.0, 1.5, "8.5 mm"),
        (12.0, 1.75, "10.3 mm"),
        (16.0, 2.0, "14 mm"),
        (20.0, 2.5, "17.5 mm"),
    ] {
        let wish = wish(major * 1e-3, pitch * 1e-3, 0.75, ThreadBasis::Chart);
        let found = Library::builtin()
            .tap_drills(&wish, &[DrillSet::Metric])
            .unwrap();
        assert_eq!(found[0].drill.name, drill, "M{major}");
    }
}

#[test]
fn choices_are_admissible_and_nearest_first() {
    let library = Library::builtin();
    for basis in [
        ThreadBasis::Chart,
        ThreadBasis::Overlap,
        ThreadBasis::Forming,
    ] {
        let wish = wish(0.010, 0.0015, 0.7, basis);
        let found = library.tap_drills(&wish, &[]).unwrap();
        assert!(found.len() > 1);
        for drill in &found {
            let percent = drill.percent.value;
            assert!((0.55 - 1e-9..=0.78 + 1e-9).contains(&percent), "{drill:?}");
            assert_eq!(drill.chart_percent.is_some(), basis != ThreadBasis::Forming);
        }
        let misses: Vec<f64> = found
            .iter()
            .map(|drill| (drill.percent.value - 0.7).abs())
            .collect();
        assert!(
            misses.windows(2).all(|pair| pair[0] <= pair[1]),
            "{misses:?}"
        );
    }
    // A forming tap needs the larger hole.
    let first = |basis| {
        library
            .tap_drills(&wish(0.010, 0.0015, 0.7, basis), &[])
            .unwrap()[0]
            .drill
            .diameter
    };
    assert!(first(ThreadBasis::Forming) > first(ThreadBasis::Chart));
}

#[test]
fn wishes_without_an_answer_say_why() {
    let library = Library::builtin();
    let good = wish(0.010, 0.0015, 0.75, ThreadBasis::Chart);
    let tight = TapDrillWish {
        smallest_percent: si(0.749),
        largest_percent: si(0.751),
        ..good
    };
    let error = library.tap_drills(&tight, &[DrillSet::Metric]).unwrap_err();
    assert_eq!(error.code(), Code::NoData);
    assert!(error.first().remedy.contains("8.5 mm"), "{error}");
    let tiny = wish(1e-4, 2e-5, 0.75, ThreadBasis::Chart);
    assert_eq!(
        library.tap_drills(&tiny, &[]).unwrap_err().code(),
        Code::NoData
    );
    for (bad, parameter) in [
        (
            TapDrillWish {
                pitch: si(0.0),
                ..good
            },
            "pitch",
        ),
        (
            TapDrillWish {
                major_diameter: si(f64::NAN),
                ..good
            },
            "major_diameter",
        ),
        (
            TapDrillWish {
                thread_percent: si(9.0),
                ..good
            },
            "thread_percent",
        ),
        (
            TapDrillWish {
                smallest_percent: si(0.8),
                ..good
            },
            "smallest_percent",
        ),
        (
            TapDrillWish {
                smallest_percent: si(f64::NAN),
                ..good
            },
            "smallest_percent",
        ),
        (
            TapDrillWish {
                largest_percent: si(0.7),
                ..good
            },
            "largest_percent",
        ),
        (
            TapDrillWish {
                largest_percent: si(f64::INFINITY),
                ..good
            },
            "largest_percent",
        ),
    ] {
        let error = library.tap_drills(&bad, &[]).unwrap_err();
        assert_eq!(error.first().parameter, parameter, "{error}");
    }
}

fn of(set: DrillSet) -> Vec<&'static Drill> {
    let drills = Library::builtin().drills();
    drills.iter().filter(|drill| drill.set == set).collect()
}

#[test]
fn sets_are_whole_and_in_order() {
    let counts = [
        (DrillSet::Number, 80),
        (DrillSet::Letter, 26),
        (DrillSet::Fraction, 80),
        (DrillSet::Metric, 167),
    ];
    for (set, count) in counts {
        let drills = of(set);
        assert_eq!(drills.len(), count, "{set}");
        assert!(
            drills
                .windows(2)
                .all(|pair| pair[0].diameter < pair[1].diameter),
            "{set}"
        );
    }
    assert_eq!(of(DrillSet::Own).len(), 0);
    // The name of a fraction or of a metric size is its diameter; E is a quarter of an inch.
    let length = |text: &str| -> Length {
        si(gullet::quantity::parse(gullet::quantity::Kind::Length, text).unwrap())
    };
    for drill in of(DrillSet::Fraction)
        .into_iter()
        .chain(of(DrillSet::Metric))
    {
        assert!(
            near(drill.diameter.value, length(&drill.name).value, 1e-12),
            "{}",
            drill.name
        );
    }
    let letter = of(DrillSet::Letter);
    assert!(near(letter[4].diameter.value, 0.25 * INCH, 1e-12) && letter[4].name == "E");
}

#[test]
fn a_shops_drills_are_chosen_from() {
    let overlay = |text: &str| Overlay {
        file_name: "drills.csv".into(),
        text: text.into(),
    };
    let own = overlay("id,name,diameter_mm\nown1,step drill 8.54,8.54\n");
    let library = Library::builtin().with_overlay(&[own]).unwrap();
    let wish = wish(0.010, 0.0015, 0.75, ThreadBasis::Chart);
    let found = library.tap_drills(&wish, &[]).unwrap();
    assert_eq!(found[0].drill.name, "step drill 8.54");
    assert_eq!(found[0].drill.set, DrillSet::Own);
    let bad = overlay(
        "id,name,set,diameter_mm,diameter_in\na,x,metric,,\nb,y,meters,3,\nc,z,metric,3,0.5\nd,,metric,-3,\n",
    );
    let error = Library::builtin().with_overlay(&[bad]).unwrap_err();
    let told: Vec<&str> = error
        .problems()
        .iter()
        .map(|problem| problem.parameter.as_str())
        .collect();
    for place in [
        "drills.csv:2:diameter_mm",
        "drills.csv:3:set",
        "drills.csv:4:diameter_in",
        "drills.csv:5:name",
        "drills.csv:5:diameter_mm",
    ] {
        assert!(told.contains(&place), "{place} missing in {told:?}");
    }
}
