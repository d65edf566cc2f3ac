//! Reaming, tapping and countersinking computed a second time in plain numbers, tap drills of the
//! charts through the operation, and each limit at its edge.

use super::bench::Shop;
use super::drilling::{datum, near, si_of};
use gullet::Code;
use gullet::model::Machine;
use gullet::operation::WarningCode;
use gullet::operation::process::{ProcessCut, Request, find};
use std::f64::consts::PI;

fn try_cut(name: &str, inputs: &str, change: impl Fn(&mut Shop)) -> gullet::Result<ProcessCut> {
    let mut shop = Shop::of(find(name).unwrap());
    change(&mut shop);
    Request::new(name)
        .unwrap()
        .texts(inputs)
        .unwrap()
        .cut(&shop.bench())
}

fn cut(name: &str, inputs: &str) -> ProcessCut {
    try_cut(name, inputs, |_| {}).unwrap_or_else(|error| panic!("{name} {inputs}: {error}"))
}

fn refused(name: &str, inputs: &str) -> String {
    let error = try_cut(name, inputs, |_| {}).map(|_| ()).expect_err(inputs);
    assert_eq!(error.code(), Code::LimitExceeded, "{error}");
    error.first().parameter.clone()
}

fn told(cut: &ProcessCut, words: &str) -> bool {
    cut.warnings
        .iter()
        .any(|warning| warning.text.contains(words))
}

#[test]
fn a_reamed_hole_in_plain_numbers() {
    let cut = cut(
        "reaming",
        "diameter=10 mm; depth=20 mm; start_diameter=9.7 mm; feed=0.24 mm; dwell=0.5 s; return_ratio=2",
    );
    let (big, d, f, z) = (0.010, 0.0097, 0.24e-3, 6.0);
    let wanted = datum(&cut, "cutting speed, start") / (PI * big);
    let n = si_of(&cut, "spindle_speed");
    assert!(near(si_of(&cut, "wanted_speed"), wanted));
    let steps = [160.0, 250.0, 360.0, 500.0, 720.0, 1000.0];
    let below = steps.iter().rev().find(|step| **step / 60.0 <= wanted);
    assert!(near(n, below.unwrap() / 60.0));
    let h = f / z * (PI / 4.0).sin();
    let k = 1.2 * datum(&cut, "k_c1.1") * (h * 1e3).powf(-datum(&cut, "m_c"));
    let torque = k * f * (big * big - d * d) / 8.0;
    assert!(near(si_of(&cut, "chip_thickness"), h));
    assert!((si_of(&cut, "torque") / torque - 1.0).abs() < 1e-9);
    assert!((si_of(&cut, "stock") / 0.3e-3 - 1.0).abs() < 1e-9);
    let travel = 0.020 + 0.002 + 2.0 * 0.00254;
    let time = travel / (f * n) + 0.5 + travel / (2.0 * f * n);
    assert!(near(si_of(&cut, "time"), time));
    assert!(
        cut.cautions
            .iter()
            .any(|caution| caution.contains("backwards"))
    );
}

#[test]
fn a_reamer_wants_neither_too_much_nor_too_little() {
    // 7.1 to 22 mm: 0.25 to 0.41 mm on the diameter (Machinery's Handbook, public reprint, seen).
    let at = |start: f64| {
        format!("diameter=10 mm; depth=20 mm; feed=0.25 mm; start_diameter={start} mm")
    };
    for start in [9.75, 9.59] {
        cut("reaming", &at(start));
    }
    assert_eq!(refused("reaming", &at(9.76)), "smallest_stock");
    assert_eq!(refused("reaming", &at(9.58)), "largest_stock");
    let chosen = cut("reaming", "diameter=10 mm; depth=20 mm; feed=0.25 mm");
    assert!(near(si_of(&chosen, "drill_diameter"), 0.010 - 0.33e-3));
    assert!(told(&chosen, "no drilled hole given"));
    // The feed of the tables, where they hold one: 6 to 12 mm in steel, 0.2 mm, common practice.
    let table = cut("reaming", "diameter=10 mm; depth=20 mm");
    assert!(near(si_of(&table, "feed"), datum(&table, "feed, start")));
    // A reamer of 3 mm with its thin chips is no error.
    cut("reaming", "diameter=3.5 mm; depth=8 mm; teeth=8");
    assert!(told(
        &cut("reaming", "diameter=10 mm; depth=31 mm; feed=0.25 mm"),
        "deeper than 3"
    ));
}

#[test]
fn a_tapped_hole_in_plain_numbers() {
    let cut = cut(
        "tapping",
        "major_diameter=10 mm; pitch=1.5 mm; depth=15 mm; hole=blind; reversal=rigid; return_ratio=2; stopping_time=0.2 s; bottom_clearance=4 mm",
    );
    let (major, p, d) = (0.010, 1.5e-3, 8.5e-3);
    let n = datum(&cut, "cutting speed, start") / (PI * major);
    assert!(near(si_of(&cut, "spindle_speed"), n));
    assert_eq!(si_of(&cut, "feed"), p);
    assert!(near(si_of(&cut, "feed_speed"), p * n));
    assert!(near(si_of(&cut, "drill_diameter"), d));
    let h = (major - d) / (2.0 * 4.0 * 3.0);
    let k = datum(&cut, "k_c1.1") * (h * 1e3).powf(-datum(&cut, "m_c"));
    let torque = p * p * major * k * 1.5 / 8.0;
    assert!(near(si_of(&cut, "torque"), torque));
    assert!(near(si_of(&cut, "cutting_power"), 2.0 * PI * n * torque));
    assert!(si_of(&cut, "limit_torque") >= torque * (1.0 - 1e-12));
    assert!(near(
        si_of(&cut, "high_torque"),
        1.5 * si_of(&cut, "limit_torque")
    ));
    assert!(near(si_of(&cut, "hole_depth"), 0.015 + 4.0 * p + 0.004));
    assert!(near(si_of(&cut, "overrun"), p * n * 0.2 / 2.0));
    let turns = (0.015 + 4.0 * p + 0.00254) / p;
    assert!(near(
        si_of(&cut, "time"),
        turns / n + turns / (2.0 * n) + 2.0 * 0.4
    ));
}

#[test]
fn tap_drills_of_the_charts_leave_the_percentages_they_print() {
    // Tap-drill charts on their own basis, from memory.
    for (thread, drill, percent) in [
        ("major_diameter=6 mm; pitch=1 mm", "5.0 mm", 77.0),
        ("major_diameter=8 mm; pitch=1.25 mm", "6.8 mm", 74.0),
        ("major_diameter=10 mm; pitch=1.5 mm", "8.5 mm", 77.0),
        ("major_diameter=12 mm; pitch=1.75 mm", "10.2 mm", 79.0),
        ("major_diameter=16 mm; pitch=2 mm", "14.0 mm", 77.0),
        ("major_diameter=1/4 in; pitch=1/20 in", "0.201 in", 75.0),
        ("major_diameter=3/8 in; pitch=1/16 in", "5/16 in", 77.0),
        ("major_diameter=0.190 in; pitch=1/24 in", "0.1495 in", 75.0),
    ] {
        let inputs = format!("{thread}; depth=6 mm; drill_diameter={drill}");
        let cut = try_cut("tapping", &inputs, |shop| {
            shop.machine.motor_power = gullet::quantity::si(15_000.0);
        })
        .unwrap_or_else(|error| panic!("{inputs}: {error}"));
        let found = si_of(&cut, "chart_percent") * 100.0;
        assert_eq!(found.round(), percent, "{thread}");
        // On the overlap the same hole reads 1.2 times as much: M10 with 8.5 mm is 77 % or 92 %.
        assert!((si_of(&cut, "overlap_percent") / si_of(&cut, "chart_percent") - 1.2).abs() < 1e-6);
    }
}

#[test]
fn too_much_and_too_little_thread_are_limits_on_the_charts_basis() {
    let with = |drill: &str| {
        format!("major_diameter=10 mm; pitch=1.5 mm; depth=15 mm; drill_diameter={drill}")
    };
    assert_eq!(refused("tapping", &with("9 mm")), "smallest_thread");
    assert_eq!(refused("tapping", &with("8.2 mm")), "largest_thread");
    // 1.8 mm over 1.299 x 1.5 mm is 92.4 %.
    cut(
        "tapping",
        &format!("{}; largest_percent=92.5 %", with("8.2 mm")),
    );
    assert_eq!(
        refused(
            "tapping",
            &format!("{}; largest_percent=92.3 %", with("8.2 mm"))
        ),
        "largest_thread"
    );
}

#[test]
fn a_tap_slows_down_until_it_stops_within_its_room() {
    let inputs = "major_diameter=10 mm; pitch=1.5 mm; depth=15 mm; stopping_time=0.5 s";
    let blind = "hole=blind; bottom_clearance=1 mm";
    let floating = cut("tapping", &format!("{inputs}; {blind}"));
    // n = 2 x 1 mm over 1.5 mm and 0.5 s.
    assert!(near(si_of(&floating, "spindle_speed") * 60.0, 160.0));
    assert!(
        floating.adjustments.iter().any(
            |adjustment| adjustment.limit == "overrun" && adjustment.setting == "spindle_speed"
        )
    );
    let through = cut("tapping", inputs);
    assert!(through.adjustments.is_empty(), "nothing below to run into");
    let rigid = cut("tapping", &format!("{inputs}; {blind}; reversal=rigid"));
    assert!(si_of(&rigid, "spindle_speed") > si_of(&floating, "spindle_speed"));
    // Below the machine's lowest speed there is no way: 1.5 mm in 4 s.
    let error = try_cut(
        "tapping",
        &format!("major_diameter=10 mm; pitch=1.5 mm; depth=15 mm; stopping_time=4 s; {blind}"),
        |_| {},
    );
    assert_eq!(error.map(|_| ()).unwrap_err().first().parameter, "overrun");
}

#[test]
fn the_feed_of_a_thread_is_its_lead() {
    let two = cut(
        "tapping",
        "major_diameter=10 mm; pitch=1 mm; starts=2; depth=15 mm; feed=0.5 mm",
    );
    assert_eq!(si_of(&two, "feed"), 2e-3);
    assert_eq!(si_of(&two, "lead"), 2e-3);
    assert!(
        two.warnings
            .iter()
            .any(|warning| warning.code == WarningCode::MachineLimits
                && warning.text.contains("lead"))
    );
    assert!(told(&two, "one start"));
    assert!(told(
        &cut("tapping", "major_diameter=10 mm; pitch=1.5 mm; depth=21 mm"),
        "deeper than 2"
    ));
    // The torque at which something gives: exceeded it is an error, within 50 % a doubt.
    let base = "major_diameter=10 mm; pitch=1.5 mm; depth=15 mm";
    let limit = si_of(&cut("tapping", base), "limit_torque");
    let at = |share: f64| format!("{base}; hold_torque={} N.m", limit * share);
    assert_eq!(refused("tapping", &at(0.99)), "hold_torque");
    assert!(told(&cut("tapping", &at(1.4)), "within 50 %"));
    assert!(!told(&cut("tapping", &at(1.6)), "within 50 %"));
}

#[test]
fn a_countersink_in_plain_numbers() {
    let inputs = "diameter=13.4 mm; hole_diameter=6.6 mm; feed=0.15 mm";
    let found = try_cut("countersinking", inputs, |shop| {
        shop.machine = Machine::builtin("small-cnc-mill").unwrap();
    })
    .unwrap();
    let (big, d, f) = (0.0134, 0.0066, 0.15e-3);
    let n = 0.5 * datum(&found, "cutting speed, start") / (PI * big);
    assert!(
        near(si_of(&found, "spindle_speed"), n),
        "half the speed of drilling"
    );
    assert!((si_of(&found, "depth") / 0.0034 - 1.0).abs() < 1e-9);
    let h = f / 3.0 * (PI / 4.0).sin();
    assert!(near(si_of(&found, "feed"), f));
    assert!(near(si_of(&found, "chip_thickness"), h));
    let k = 1.2 * datum(&found, "k_c1.1") * (h * 1e3).powf(-datum(&found, "m_c"));
    let torque = k * f * (big * big - d * d) / 8.0;
    assert!((si_of(&found, "torque") / torque - 1.0).abs() < 1e-9);
    let thrust = 0.5 * k * (big - d) / 2.0 * f * (PI / 4.0).sin();
    assert!((si_of(&found, "thrust") / thrust - 1.0).abs() < 1e-9);
    let travel = 0.0034 + 0.00254;
    let time = travel / (f * n) + 2.0 * (travel / 2.0_f64).sqrt();
    assert!((si_of(&found, "time") / time - 1.0).abs() < 1e-9);
}

#[test]
fn a_flat_cone_is_shallow_and_a_fast_one_chatters() {
    let with = |more: &str| {
        cut(
            "countersinking",
            &format!("diameter=13.4 mm; hole_diameter=6.6 mm{more}"),
        )
    };
    // 82 deg goes deeper than 90 deg to the same diameter.
    assert!(si_of(&with("; included_angle=82 deg"), "depth") > si_of(&with(""), "depth"));
    assert!(told(&with("; speed_ratio=0.8"), "chatter"));
    assert!(!told(&with(""), "chatter"));
    let broad = cut(
        "countersinking",
        "diameter=25 mm; hole_diameter=13 mm; feed=0.1 mm",
    );
    assert!(told(&broad, "chatter"), "8.5 mm of edge");
    let error = Request::new("countersinking")
        .unwrap()
        .texts("diameter=6 mm; hole_diameter=6 mm")
        .unwrap()
        .cut(&Shop::of(find("countersinking").unwrap()).bench());
    assert_eq!(
        error.map(|_| ()).unwrap_err().first().parameter,
        "hole_diameter"
    );
    let torque = si_of(&with(""), "limit_torque") * 0.7;
    let held = with(&format!("; hold_torque={torque} N.m"));
    assert_eq!(held.held_by.map(|limit| limit.name()), Some("hold_torque"));
}

/// A hand on the quill is not tied to the spindle.
#[test]
fn a_rigid_tap_by_hand_is_told() {
    let process = gullet::operation::process::find("tapping").unwrap();
    let told = |machine: &str| {
        let mut shop = super::bench::Shop::of(process);
        shop.machine = gullet::model::Machine::builtin(machine).unwrap();
        gullet::operation::process::Request::of(process)
            .texts("major_diameter=6 mm; pitch=1 mm; depth=10 mm; reversal=rigid")
            .unwrap()
            .cut(&shop.bench())
            .unwrap_or_else(|error| panic!("{error}"))
            .warnings
            .iter()
            .any(|warning| warning.text.contains("floats"))
    };
    assert!(told("drill-press"));
    assert!(!told("small-cnc-mill"));
}
