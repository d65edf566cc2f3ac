//! Economic speeds, lots and moves: optima against search, steps of a spindle against trying all,
//! shares against their sums, and time estimates of published examples composed anew.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::Code;
use gullet::economics::{Aim, Economics, EdgeEconomics, LotCost, Priced};
use gullet::model::{Drive, Machine};
use gullet::quantity::{RotationalSpeed, UnitSystem, si};
use proptest::prelude::*;

#[path = "economics/estimates.rs"]
mod estimates;
#[path = "economics/moves.rs"]
mod moves;

fn near(a: f64, b: f64, tolerance: f64) -> bool {
    (a - b).abs() <= tolerance * a.abs().max(b.abs())
}

fn cases(count: u32) -> ProptestConfig {
    ProptestConfig {
        cases: count,
        failure_persistence: None,
        ..ProptestConfig::default()
    }
}

fn edge() -> impl Strategy<Value = EdgeEconomics> {
    (
        (1e-3..0.05f64, 0.0..20.0f64, 1.0..600.0f64, 0.0..600.0f64),
        (0.05..1.0f64, 0.5..10.0f64, 0.1..0.7f64),
        (5e-3..0.2f64, 0.01..1.0f64, 5e-5..1e-3f64),
    )
        .prop_map(
            |((rate, cost, change, handling), (share, c, n), (d, l, f))| EdgeEconomics {
                machine_rate: si(rate),
                edge_cost: si(cost),
                change_time: si(change),
                handling_time: si(handling),
                in_cut_share: si(share),
                taylor_speed: si(c),
                taylor_exponent: si(n),
                diameter: si(d),
                travel: si(l),
                feed_per_rev: si(f),
            },
        )
}

/// Time and cost a part, written a second time.
fn by_hand(e: &EdgeEconomics, speed: f64) -> (f64, f64) {
    let cut =
        core::f64::consts::PI * e.diameter.value * e.travel.value / (e.feed_per_rev.value * speed);
    let life = 60.0 * (e.taylor_speed.value / speed).powf(1.0 / e.taylor_exponent.value);
    let edges = e.in_cut_share.value * cut / life;
    let time = e.handling_time.value + cut + edges * e.change_time.value;
    (
        time,
        e.machine_rate.value * time + edges * e.edge_cost.value,
    )
}

fn measure(e: &EdgeEconomics, speed: f64, aim: Aim) -> f64 {
    let (time, cost) = by_hand(e, speed);
    match aim {
        Aim::LeastCost => cost,
        Aim::LeastTime => time,
    }
}

fn optimum(e: &EdgeEconomics, aim: Aim) -> Priced {
    match aim {
        Aim::LeastCost => e.minimum_cost().unwrap(),
        Aim::LeastTime => e.maximum_production().unwrap(),
    }
}

fn spindle(speeds: &[f64]) -> Drive {
    let mut speeds: Vec<f64> = speeds.to_vec();
    speeds.sort_by(f64::total_cmp);
    speeds.dedup();
    Drive::Stepped(speeds.into_iter().map(si).collect())
}

proptest! {
    #![proptest_config(cases(400))]

    #[test]
    fn no_other_speed_is_better(e in edge(), other in 0.3..3.0f64) {
        for aim in Aim::ALL {
            let best = optimum(&e, *aim).speed;
            let v = best.cutting_speed.value;
            let least = measure(&e, v, *aim);
            let found = match aim { Aim::LeastCost => best.cost_per_part.value, Aim::LeastTime => best.time_per_part.value };
            prop_assert!(near(found, least, 1e-12), "{found} {least}");
            prop_assert!(measure(&e, other * v, *aim) >= least * (1.0 - 1e-12));
            // Near it, too, where the function is flat: both neighbours cost more.
            for factor in [1.0 - 1e-3, 1.0 + 1e-3] {
                prop_assert!(measure(&e, factor * v, *aim) > least * (1.0 - 1e-15));
            }
        }
    }

    #[test]
    fn the_step_is_that_of_trying_all(
        e in edge(), steps in prop::collection::vec(0.2..5.0f64, 1..14), shift in 0.02..50.0f64,
    ) {
        for aim in Aim::ALL {
            let wanted = optimum(&e, *aim).speed.spindle_speed.value;
            let speeds: Vec<f64> = steps.iter().map(|step| step * shift * wanted).filter(|n| *n < 1e5).collect();
            if speeds.is_empty() {
                continue;
            }
            let drive = spindle(&speeds);
            let Drive::Stepped(all) = &drive else { unreachable!() };
            let real = e.snapped(&drive, *aim).unwrap();
            prop_assert_eq!(real.left_out, 0);
            let at = |n: &RotationalSpeed| measure(&e, core::f64::consts::PI * e.diameter.value * n.value, *aim);
            let least = all.iter().map(at).fold(f64::INFINITY, f64::min);
            let chosen = at(&real.chosen.speed.spindle_speed);
            prop_assert!(chosen <= least * (1.0 + 1e-12), "{chosen} {least}");
            prop_assert!(all.contains(&real.chosen.speed.spindle_speed));
            // The neighbours enclose the wanted speed with no step between.
            let below = all.iter().rev().find(|n| n.value <= wanted);
            let above = all.iter().find(|n| n.value > wanted);
            prop_assert_eq!(real.below.as_ref().map(|p| p.speed.spindle_speed), below.copied());
            prop_assert_eq!(real.above.as_ref().map(|p| p.speed.spindle_speed), above.copied());
            // What it costs, in money and as a share.
            let (time, cost) = (real.chosen.speed.time_per_part, real.chosen.speed.cost_per_part);
            prop_assert!(near(real.extra_cost.value + real.wanted.speed.cost_per_part.value, cost.value, 1e-12));
            prop_assert!(near(real.extra_time.value + real.wanted.speed.time_per_part.value, time.value, 1e-12));
            let more = match aim { Aim::LeastCost => real.extra_cost_share, Aim::LeastTime => real.extra_time_share };
            prop_assert!(more.value >= -1e-12);
            // With whole parts an edge, likewise by trying all.
            let whole = |n: &RotationalSpeed| {
                let priced = e.at_spindle_speed(*n).unwrap();
                priced.whole.map(|w| match aim { Aim::LeastCost => w.cost_per_part.value, Aim::LeastTime => w.time_per_part.value })
            };
            let least = all.iter().filter_map(whole).reduce(f64::min);
            let found = real.chosen_whole.map(|p| whole(&p.speed.spindle_speed).unwrap());
            prop_assert_eq!(found, least);
        }
    }

    #[test]
    fn a_continuous_spindle_gives_the_nearest_speed(e in edge(), low in 0.1..5.0f64, wide in 1.0..5.0f64) {
        let wanted = optimum(&e, Aim::LeastCost).speed.spindle_speed.value;
        let (low, high) = (low * wanted, low * wide * wanted);
        if high < 1e5 {
            let drive = Drive::Continuous { lowest: si(low), highest: si(high) };
            let real = e.snapped(&drive, Aim::LeastCost).unwrap();
            prop_assert_eq!(real.chosen.speed.spindle_speed.value, wanted.max(low).min(high));
            prop_assert!(real.below.is_none() && real.above.is_none());
        }
    }

    #[test]
    fn whole_parts_never_cost_less(e in edge(), factor in 0.2..3.0f64) {
        let n = optimum(&e, Aim::LeastCost).speed.spindle_speed * factor;
        let priced = e.at_spindle_speed(n).unwrap();
        prop_assert_eq!(priced.whole.is_some(), priced.speed.parts_per_edge.value >= 1.0 - 1e-12);
        if let Some(whole) = priced.whole {
            prop_assert!(whole.parts_per_edge.value >= 1.0);
            prop_assert!(whole.parts_per_edge.value <= priced.speed.parts_per_edge.value * (1.0 + 2e-9));
            prop_assert!(whole.cost_per_part.value >= priced.speed.cost_per_part.value * (1.0 - 2e-9));
        }
    }

    #[test]
    fn shares_add_up_to_the_last_bit(
        size in 1u32..500, times in prop::array::uniform6(0.0..3600.0f64), parts in 0.1..50.0f64, every in 1u32..20,
        kind in 0..3, share in 0.0..0.4f64, curve in 0..3, learning in 0.6..1.0f64, money in prop::array::uniform3(0.0..50.0f64),
    ) {
        let [setup, handling, cutting, moving, change, gauging] = times;
        let lot = LotCost {
            lot_size: si(f64::from(size)),
            machine_rate: si(money[0] / 3600.0),
            setup_time: si(setup),
            handling_time: si(handling),
            cutting_time: si(cutting),
            moving_time: si(moving),
            change_time: si(change),
            edge_cost: si(money[1]),
            parts_per_edge: si(parts),
            gauging_time: si(gauging),
            gauged_every: si(f64::from(every)),
            allowance_of_normal_time: si(if kind == 1 { share } else { 0.0 }),
            allowance_of_standard_time: si(if kind == 2 { share } else { 0.0 }),
            wright_rate: si(if curve == 1 { learning } else { 1.0 }),
            crawford_rate: si(if curve == 2 { learning } else { 1.0 }),
            material_cost: si(money[2]),
        };
        let price = lot.price().unwrap();
        let sum = |value: fn(&gullet::economics::Share) -> f64| price.shares.iter().map(value).fold(0.0, |a, b| a + b);
        prop_assert_eq!(sum(|share| share.time.value), price.time_per_part.value);
        prop_assert_eq!(sum(|share| share.cost.value), price.cost_per_part.value);
        // The lot both ways, and every part by itself.
        let n = f64::from(size);
        prop_assert!(near(price.lot_time.value, n * price.time_per_part.value, 1e-12));
        prop_assert_eq!(price.lot_cost.value, n * price.cost_per_part.value);
        let exponent = learning.log2();
        let hands = handling + change / parts + gauging / f64::from(every);
        let mut total = setup;
        for unit in 1..=size {
            let x = f64::from(unit);
            let factor = match curve {
                1 => x.powf(1.0 + exponent) - (x - 1.0).powf(1.0 + exponent),
                2 => x.powf(exponent),
                _ => 1.0,
            };
            let normal = hands * factor + cutting + moving;
            total += match kind { 1 => normal * (1.0 + share), 2 => normal / (1.0 - share), _ => normal };
        }
        prop_assert!(near(price.lot_time.value, total, 1e-10), "{} {total}", price.lot_time.value);
    }
}

fn problems<T>(result: gullet::Result<T>) -> Vec<(Code, String)> {
    let error = result.err().expect("refused");
    let found = error.problems().iter();
    found
        .map(|problem| (problem.code, problem.parameter.clone()))
        .collect()
}

const TEXT: &str = "machine_rate=60 money/h; edge_cost=4; change_time=3 min; handling_time=2 min; \
    taylor_speed=200 m/min; taylor_exponent=0.25; diameter=60 mm; travel=200 mm; feed_per_rev=0.2 mm";

#[test]
fn bad_input_is_told_all_at_once() {
    let mut e = EdgeEconomics::from_text(TEXT).unwrap();
    e.machine_rate = si(0.0);
    e.taylor_exponent = si(1.25);
    e.in_cut_share = si(f64::NAN);
    e.feed_per_rev = si(-1.0);
    let expected = [
        (Code::OutOfRange, "machine_rate"),
        (Code::NotFinite, "in_cut_share"),
        (Code::OutOfRange, "taylor_exponent"),
        (Code::OutOfRange, "feed_per_rev"),
    ]
    .map(|(code, name)| (code, name.to_owned()));
    assert_eq!(problems(e.minimum_cost()), expected);
    assert_eq!(problems(e.maximum_production()), expected);
    assert_eq!(problems(e.at_spindle_speed(si(1.0))), expected);
    let remedy = &e.problems()[2].remedy;
    assert!(remedy.contains("no best speed"), "{remedy}");

    let mut free = EdgeEconomics::from_text(TEXT).unwrap();
    free.change_time = si(0.0);
    // Changing costs money only: least cost exists, least time does not.
    assert!(free.minimum_cost().is_ok());
    assert_eq!(
        problems(free.maximum_production()),
        [(Code::OutOfRange, "change_time".to_owned())]
    );
    let both = Economics::new(
        free,
        Some(&Machine::builtin("manual-knee-mill").unwrap().drive),
    );
    let both = both.unwrap();
    assert!(both.least_time.is_none() && both.spindle_least_time.is_none());
    free.edge_cost = si(0.0);
    assert_eq!(
        problems(free.minimum_cost()),
        [(Code::Inconsistent, "change_time".to_owned())]
    );
}

#[test]
fn names_and_texts_are_told_all_at_once() {
    let read = EdgeEconomics::from_text(
        "machine_rates=60 money/h; change_time=3; taylor_speed=200 m/min; taylor_speed=1 m/min; \
         taylor_exponent=0.25; diameter=60 mm; travel=200 mm; feed_per_rev=0.2 mm",
    );
    assert_eq!(
        problems(read),
        [
            (Code::UnknownName, "economics".to_owned()),
            (Code::UnitMissing, "change_time".to_owned()),
            (Code::Duplicate, "taylor_speed".to_owned()),
            (Code::Missing, "machine_rate".to_owned()),
        ]
    );
}

#[test]
fn a_drive_without_speeds_and_a_spindle_far_away_are_answered() {
    let e = EdgeEconomics::from_text(TEXT).unwrap();
    assert_eq!(
        problems(e.snapped(&Drive::Stepped(Vec::new()), Aim::LeastCost)),
        [(Code::Missing, "speeds".to_owned())]
    );
    // A life that no number holds leaves the other steps.
    let mut steep = e;
    steep.taylor_exponent = si(0.02);
    let wanted = steep.minimum_cost().unwrap().speed.spindle_speed.value;
    let drive = spindle(&[1e-7 * wanted, 0.9 * wanted, 1.2 * wanted]);
    let real = steep.snapped(&drive, Aim::LeastCost).unwrap();
    assert_eq!(real.left_out, 1);
    assert_eq!(real.chosen.speed.spindle_speed.value, 0.9 * wanted);
    let none = spindle(&[1e-7 * wanted]);
    assert_eq!(
        steep.snapped(&none, Aim::LeastCost).err().unwrap().code(),
        Code::ResultOverflow
    );
}

#[test]
fn a_lot_of_no_parts_or_of_two_kinds_is_refused() {
    let lot =
        LotCost::from_text("lot_size=10; machine_rate=60 money/h; cutting_time=4 min").unwrap();
    let bad = LotCost {
        lot_size: si(2.5),
        allowance_of_normal_time: si(0.1),
        allowance_of_standard_time: si(0.1),
        wright_rate: si(0.9),
        crawford_rate: si(0.8),
        ..lot
    };
    assert_eq!(
        problems(bad.price()),
        [
            (Code::NotWhole, "lot_size".to_owned()),
            (Code::Inconsistent, "allowance_of_standard_time".to_owned()),
            (Code::Inconsistent, "crawford_rate".to_owned()),
        ]
    );
    assert_eq!(
        problems(lot.with_lot_size(si(0.0)).price()),
        [(Code::OutOfRange, "lot_size".to_owned())]
    );
    let all = LotCost {
        allowance_of_standard_time: si(1.0),
        ..lot
    };
    assert_eq!(
        problems(all.price()),
        [(Code::OutOfRange, "allowance_of_standard_time".to_owned())]
    );
}

#[test]
fn larger_lots_cost_less_a_part_and_never_less_than_the_part_itself() {
    let lot = LotCost::from_text(
        "lot_size=1; machine_rate=48 money/h; setup_time=1 h; handling_time=1.5 min; cutting_time=6 min; \
         moving_time=0.5 min; change_time=2 min; edge_cost=3; parts_per_edge=8; gauging_time=1 min; \
         gauged_every=5; allowance_of_normal_time=15 %; material_cost=2.20",
    )
    .unwrap();
    let prices = [1.0, 10.0, 100.0].map(|size| lot.with_lot_size(si(size)).price().unwrap());
    let minutes = prices
        .each_ref()
        .map(|price| price.time_per_part.value / 60.0);
    // 1.5 + 6 + 0.5 + 0.25 + 0.2 = 8.45; with 15 % 9.7175.
    for (found, expected) in minutes.into_iter().zip([69.7175, 15.7175, 10.3175]) {
        assert!(near(found, expected, 1e-13), "{found} {expected}");
    }
    let costs = prices.map(|price| price.cost_per_part.value);
    for (found, minutes) in costs.into_iter().zip(minutes) {
        assert!(near(found, 0.8 * minutes + 0.375 + 2.2, 1e-13), "{found}");
    }
}

#[test]
fn every_step_can_be_redone_by_hand() {
    let e = EdgeEconomics::from_text(TEXT).unwrap();
    let lot = LotCost::from_text(
        "lot_size=12; machine_rate=48 money/h; setup_time=1 h; handling_time=1.5 min; cutting_time=6 min; \
         allowance_of_standard_time=15 %; wright_rate=90 %",
    )
    .unwrap()
    .price()
    .unwrap();
    let best = e.minimum_cost().unwrap();
    for step in best.steps.iter().chain(&lot.steps) {
        let value = step.value_of_equation().expect("written out");
        assert!(near(value, step.result, 1e-12), "{}", step.formula.name);
        assert_eq!(step.formula.call(&step.arguments).unwrap(), step.result);
    }
    let names: Vec<&str> = best.steps.iter().map(|step| step.formula.name).collect();
    assert_eq!(
        names,
        [
            "minimum_cost_speed",
            "spindle_speed",
            "feed_rate",
            "cutting_time",
            "tool_life",
            "mean_parts_per_edge",
            "unit_time",
            "unit_cost",
            "whole_parts_per_edge",
            "unit_time_whole_parts",
            "unit_cost_whole_parts",
        ]
    );
}

#[test]
fn text_and_json_tell_the_same_numbers() {
    let e = EdgeEconomics::from_text(TEXT).unwrap();
    let drive = Machine::builtin("manual-knee-mill").unwrap().drive;
    let economics = Economics::new(e, Some(&drive)).unwrap();
    let json = economics.json(UnitSystem::Metric);
    let text = economics.text(UnitSystem::Metric);
    let spindle = &json["spindle_least_cost"];
    for value in [
        &json["least_cost"]["cost_per_part"],
        &json["least_time"]["cutting_speed"],
        &spindle["chosen"]["spindle_speed"],
        &spindle["below"]["tool_life"],
        &spindle["above"]["whole_parts"]["cost_per_part"],
        &spindle["extra_cost"],
    ] {
        let shown = value["text"].as_str().unwrap();
        assert!(text.contains(shown), "{shown} in\n{text}");
        assert!(value["si"].is_f64());
    }
    assert_eq!(json["inputs"]["in_cut_share"]["si"], 1.0);
    let lot = LotCost::from_text(
        "lot_size=10; machine_rate=60 money/h; handling_time=1 min; cutting_time=4 min; crawford_rate=80 %",
    )
    .unwrap()
    .price()
    .unwrap();
    let text = lot.text(UnitSystem::Metric);
    assert!(text.contains("unit curve (Crawford)"), "{text}");
    let json = lot.json(UnitSystem::Metric);
    assert_eq!(json["shares"].as_array().unwrap().len(), 9);
    assert_eq!(json["cost_per_part"]["si"], lot.cost_per_part.value);
}
