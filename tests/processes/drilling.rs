//! Drilling computed a second time in plain numbers, a handbook's worked example through the
//! operation, each limit at its edge, pecks, and machines without rapids.

use super::bench::Shop;
use gullet::Code;
use gullet::operation::WarningCode;
use gullet::operation::process::{ProcessCut, Request, find};
use gullet::quantity::si;
use std::f64::consts::PI;

pub fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-10 * a.abs().max(b.abs())
}

pub fn si_of(cut: &ProcessCut, name: &str) -> f64 {
    cut.value(name).map(|value| value.si).unwrap_or(f64::NAN)
}

pub fn datum(cut: &ProcessCut, name: &str) -> f64 {
    cut.data
        .iter()
        .find(|datum| datum.name == name)
        .map_or(f64::NAN, |datum| datum.value)
}

fn shop() -> Shop {
    Shop::of(find("drilling").unwrap())
}

fn cut(shop: &Shop, inputs: &str) -> ProcessCut {
    Request::new("drilling")
        .unwrap()
        .texts(inputs)
        .unwrap()
        .cut(&shop.bench())
        .unwrap_or_else(|error| panic!("{inputs}: {error}"))
}

fn refused(shop: &Shop, inputs: &str) -> gullet::Error {
    Request::new("drilling")
        .unwrap()
        .texts(inputs)
        .unwrap()
        .cut(&shop.bench())
        .map(|_| ())
        .expect_err(inputs)
}

/// From rest to rest.
fn rapid(distance: f64, v: f64, a: f64) -> f64 {
    if distance >= v * v / a {
        distance / v + v / a
    } else {
        2.0 * (distance / a).sqrt()
    }
}

const HALF_POINT: f64 = 59.0 * PI / 180.0;

#[test]
fn a_whole_cut_in_plain_numbers() {
    let shop = shop();
    let cut = cut(&shop, "diameter=8.5 mm; depth=22 mm");
    let (d, l) = (0.0085, 0.022);
    let (v, f) = (
        datum(&cut, "cutting speed, start"),
        datum(&cut, "feed, start"),
    );
    let (kc11, m) = (datum(&cut, "k_c1.1"), datum(&cut, "m_c"));
    let n = v / (PI * d);
    assert!(near(si_of(&cut, "spindle_speed"), n));
    assert!(
        near(si_of(&cut, "feed"), f),
        "2.6 diameters are no deep hole"
    );
    let h = f / 2.0 * HALF_POINT.sin();
    let k = 1.2 * kc11 * (h * 1e3).powf(-m);
    let torque = k * f * d * d / 8.0;
    assert!(near(si_of(&cut, "torque"), torque));
    assert!(near(si_of(&cut, "cutting_power"), 2.0 * PI * n * torque));
    assert!(near(
        si_of(&cut, "motor_power"),
        2.0 * PI * n * torque / 0.85
    ));
    assert!(near(si_of(&cut, "removal_rate"), PI / 4.0 * d * d * f * n));
    // The thrust of the material's own pair, worn, with the chisel edge of a standard point; other
    // pairs may ask for more.
    let own = 1.3 * k * d / 2.0 * f * HALF_POINT.sin();
    assert!(si_of(&cut, "thrust") >= own * (1.0 - 1e-12));
    let travel = l + d / 2.0 / HALF_POINT.tan() + 2.0 * 0.00254;
    assert!(near(si_of(&cut, "travel"), travel));
    assert!(near(si_of(&cut, "feed_time"), travel / (f * n)));
    assert!(near(
        si_of(&cut, "time"),
        travel / (f * n) + rapid(travel, 0.25, 2.0)
    ));
    assert_eq!(si_of(&cut, "pecks"), 1.0);
}

#[test]
fn a_handbooks_drill_through_the_operation() {
    // Machinery's Handbook, 31st ed., p.1152-1153, seen: 7/8 in, 0.008 in/rev, K_d 24000, worn 1.5:
    // 2668 lbf and 645 lbf in, by factors of two or three digits.
    let mut shop = shop();
    shop.practice.wear_factor = si(1.5);
    shop.machine.motor_power = si(30_000.0);
    shop.machine.base_speed = None;
    let cut = cut(
        &shop,
        "diameter=7/8 in; depth=1 in; feed=0.008 in; work_factor=24000",
    );
    let (pound, inch) = (0.453_592_37 * 9.806_65, 0.0254);
    let thrust = si_of(&cut, "handbook_thrust") / pound;
    let torque = si_of(&cut, "handbook_torque") / (pound * inch);
    assert!((thrust / 2668.0 - 1.0).abs() < 1e-3, "{thrust}");
    assert!((torque / 645.0 - 1.0).abs() < 1e-3, "{torque}");
    // Limits take the larger of the two methods.
    assert_eq!(
        si_of(&cut, "limit_thrust"),
        si_of(&cut, "handbook_thrust").max(si_of(&cut, "thrust"))
    );
    assert!(si_of(&cut, "limit_torque") >= si_of(&cut, "handbook_torque"));
}

#[test]
fn a_textbooks_removal_rate_through_the_operation() {
    // Kalpakjian & Schmid, Manufacturing Engineering & Technology, 4th ed., Ex. 22.2 p.632, seen: a
    // 10 mm drill, 0.2 mm/rev, 800 rpm: 210 mm3/s.
    let cut = cut(
        &shop(),
        "diameter=10 mm; depth=20 mm; feed=0.2 mm; spindle_speed=800 rpm",
    );
    let rate = si_of(&cut, "removal_rate") * 1e9;
    assert!((rate / 210.0 - 1.0).abs() < 4e-3, "{rate}");
}

#[test]
fn a_second_opinion_is_asked_for_and_holds_in_solid_metal_only() {
    let shop = shop();
    for inputs in [
        "diameter=8.5 mm; depth=22 mm",
        "diameter=8.5 mm; depth=22 mm; start_diameter=4 mm; work_factor=24000",
    ] {
        assert_eq!(si_of(&cut(&shop, inputs), "handbook_thrust"), 0.0);
    }
    // A work factor far too high lies apart, and is told.
    let cut = cut(&shop, "diameter=8.5 mm; depth=22 mm; work_factor=70000");
    assert!(
        cut.warnings
            .iter()
            .any(|warning| warning.code == WarningCode::SourcesDisagree
                && warning.text.contains("handbook"))
    );
}

#[test]
fn a_pilot_hole_takes_the_chisel_edge_away() {
    let shop = shop();
    let solid = cut(&shop, "diameter=12 mm; depth=22 mm; feed=0.1 mm");
    let piloted = cut(
        &shop,
        "diameter=12 mm; depth=22 mm; feed=0.1 mm; start_diameter=6 mm",
    );
    let share = si_of(&piloted, "torque") / si_of(&solid, "torque");
    assert!(near(share, 1.0 - 0.25), "a ring from half the diameter");
    let share = si_of(&piloted, "thrust") / si_of(&solid, "thrust");
    assert!(near(share, 0.25), "half the lips, and half the factor");
    assert!(near(
        si_of(&piloted, "chip_width") * 2.0,
        si_of(&solid, "chip_width")
    ));
    let error = refused(&shop, "diameter=12 mm; depth=22 mm; start_diameter=12 mm");
    assert_eq!(error.first().parameter, "start_diameter");
}

#[test]
fn deep_holes_are_pecked_slower_and_finer() {
    let shop = shop();
    cut(&shop, "diameter=8 mm; depth=24 mm");
    let error = refused(&shop, "diameter=8 mm; depth=24.01 mm");
    assert_eq!(error.code(), Code::LimitExceeded);
    assert_eq!(error.first().parameter, "depth_ratio");
    assert!(error.first().remedy.contains("peck"));
    let deep = cut(&shop, "diameter=8 mm; depth=40 mm; cycle=peck");
    let flat = cut(&shop, "diameter=8 mm; depth=16 mm; cycle=peck");
    let share = |name| si_of(&deep, name) / si_of(&flat, name);
    assert!(near(share("cutting_speed"), 0.7), "5 diameters: 30 % less");
    assert!(near(share("feed"), 0.8), "5 diameters: 20 % less");
    let told = |inputs| {
        cut(&shop, inputs)
            .warnings
            .iter()
            .any(|warning| warning.text.contains("deeper than 6"))
    };
    assert!(!told("diameter=8 mm; depth=48 mm; cycle=peck"));
    assert!(told("diameter=8 mm; depth=48.1 mm; cycle=peck"));
}

#[test]
fn pecks_take_the_time_of_their_moves() {
    let shop = shop();
    let (v, a) = (0.25, 2.0);
    for (cycle, peck) in [
        ("peck", 3.0),
        ("chip-break", 3.0),
        ("peck", 0.2),
        ("peck", 17.0),
    ] {
        let cut = cut(
            &shop,
            &format!("diameter=6 mm; depth=90 mm; cycle={cycle}; peck={peck} mm; dwell=0.2 s"),
        );
        let (q, travel) = (peck * 1e-3, si_of(&cut, "travel"));
        let (feed, back) = (si_of(&cut, "feed_speed"), 0.0005_f64.min(q));
        let (mut time, mut bottom, mut pecks) = (0.0, 0.0, 0.0);
        while bottom < travel * (1.0 - 1e-12) {
            let from = if bottom > 0.0 { bottom - back } else { 0.0 };
            bottom = (bottom + q).min(travel);
            time += (bottom - from) / feed + 0.2;
            pecks += 1.0;
            let last = bottom >= travel * (1.0 - 1e-12);
            time += match (cycle, last) {
                (_, true) => rapid(bottom, v, a),
                ("peck", _) => rapid(bottom, v, a) + rapid(bottom - back, v, a),
                _ => rapid(back, v, a),
            };
        }
        assert_eq!(si_of(&cut, "pecks"), pecks);
        assert!(near(si_of(&cut, "time"), time), "{cycle} {peck}");
    }
}

#[test]
fn without_rapids_the_hand_sets_the_pace_and_a_step_the_speed() {
    let mut shop = shop();
    shop.machine = gullet::model::Machine::builtin("drill-press").unwrap();
    let cut = cut(
        &shop,
        "diameter=8.5 mm; depth=40 mm; cycle=peck; hand_speed=20 mm/s",
    );
    let speed = si_of(&cut, "spindle_speed") * 60.0;
    assert!(
        [500.0, 720.0, 1000.0].iter().any(|step| near(*step, speed)),
        "{speed}"
    );
    assert!(speed <= si_of(&cut, "wanted_speed") * 60.0 * (1.0 + 1e-9));
    let (travel, q, s) = (si_of(&cut, "travel"), 0.0085, 0.0005);
    let returns = si_of(&cut, "pecks") - 1.0;
    let moves = q * returns * (returns + 1.0) - returns * s + travel;
    let expected = (travel + returns * s) / si_of(&cut, "feed_speed") + moves / 0.02;
    let time = si_of(&cut, "time");
    assert!(
        (time / expected - 1.0).abs() < 1e-5,
        "ramps aside: {time} {expected}"
    );
    assert!(
        cut.warnings
            .iter()
            .any(|warning| warning.text.contains("hand_speed"))
    );
}

#[test]
fn limits_that_are_given_lower_the_feed_to_their_edge() {
    let shop = shop();
    let inputs = "diameter=8.5 mm; depth=22 mm";
    let free = cut(&shop, inputs);
    let thrust = si_of(&free, "limit_thrust") * 0.8;
    let held = cut(&shop, &format!("{inputs}; maximum_thrust={thrust} N"));
    assert_eq!(held.held_by.map(|limit| limit.name()), Some("thrust"));
    let reached = si_of(&held, "limit_thrust");
    assert!(reached <= thrust * (1.0 + 1e-9) && reached > thrust * 0.999);
    let torque = si_of(&free, "limit_torque") * 0.8;
    let held = cut(&shop, &format!("{inputs}; hold_torque={torque} N.m"));
    assert_eq!(held.held_by.map(|limit| limit.name()), Some("hold_torque"));
    assert!(si_of(&held, "feed") < si_of(&free, "feed"));
    // By the handbook's thrust, whose chisel edge no feed lowers, the limit holds too.
    let wanted = "maximum_thrust=1600 N; work_factor=24000; chisel_factor=0.5";
    let held = cut(&shop, &format!("{inputs}; {wanted}"));
    assert!(si_of(&held, "limit_thrust") <= 1600.0 * (1.0 + 1e-9));
    // What no feed helps is an error.
    let error = refused(&shop, &format!("{inputs}; maximum_thrust=5 N"));
    assert_eq!(error.first().parameter, "thrust");
    let within = 22.0 + 8.5 / 2.0 / HALF_POINT.tan();
    cut(
        &shop,
        &format!("{inputs}; flute_length={} mm", within + 1e-6),
    );
    let error = refused(
        &shop,
        &format!("{inputs}; flute_length={} mm", within - 1e-3),
    );
    assert_eq!(error.first().parameter, "flute_length");
}

#[test]
fn a_point_counts_once_and_only_through_work_has_clearance_below() {
    let shop = shop();
    let through = cut(&shop, "diameter=8.5 mm; depth=22 mm");
    let blind = cut(&shop, "diameter=8.5 mm; depth=22 mm; hole=blind");
    assert!(near(
        si_of(&through, "travel") - si_of(&blind, "travel"),
        0.00254
    ));
}

/// A peck as deep as the hole is none.
#[test]
fn a_peck_is_no_deeper_than_a_hole_in_one_go() {
    let shop = shop();
    let inputs = "diameter=8 mm; depth=40 mm";
    for cycle in ["peck", "chip-break"] {
        let with = format!("{inputs}; cycle={cycle}");
        let usual = cut(&shop, &with);
        let share = usual.limit("depth_ratio").unwrap().share;
        assert!(near(share, 1.0 / (3.0 * (1.0 + 1e-9))));
        cut(&shop, &format!("{with}; peck=24 mm"));
        let error = refused(&shop, &format!("{with}; peck=24.1 mm"));
        assert_eq!(error.first().parameter, "depth_ratio");
    }
    // No peck is deeper than its hole.
    cut(&shop, "diameter=8 mm; depth=20 mm; cycle=peck; peck=50 mm");
}
