//! `gullet cost`: economic speeds and lots, as text and as JSON.

use super::{json, out, refusal};
use gullet::economics::{Economics, EdgeEconomics, LotCost};
use gullet::model::Machine;

const SPEED: &[&str] = &[
    "cost",
    "speed",
    "machine_rate=60 money/h",
    "edge_cost=4",
    "change_time=3 min",
    "handling_time=2 min",
    "taylor_speed=200 m/min",
    "taylor_exponent=0.25",
    "diameter=60 mm",
    "travel=200 mm",
    "feed_per_rev=0.2 mm",
];

const LOT: &[&str] = &[
    "cost",
    "lot",
    "machine_rate=60 money/h",
    "setup_time=30 min",
    "handling_time=1 min",
    "cutting_time=4 min",
];

fn with<'a>(words: &[&'a str], more: &[&'a str]) -> Vec<&'a str> {
    [words, more].concat()
}

#[test]
fn the_economic_speed_is_that_of_the_core() {
    let inputs = EdgeEconomics::from_text(&SPEED[2..].join("; ")).unwrap();
    let machine = Machine::builtin("manual-knee-mill").unwrap();
    let core = Economics::new(inputs, Some(&machine.drive)).unwrap();
    let told = json(&with(SPEED, &["--machine", "manual-knee-mill", "--json"]));
    assert_eq!(told, core.json(gullet::quantity::UnitSystem::Metric));
    let text = out(&with(SPEED, &["--machine=manual-knee-mill"]));
    assert_eq!(text, core.text(gullet::quantity::UnitSystem::Metric));
    // Steps given by hand are those of the machine.
    let steps = "70 rpm, 115 rpm, 190 rpm, 310 rpm, 500 rpm, 820 rpm, 1200 rpm, 2100 rpm";
    assert_eq!(json(&with(SPEED, &["--speeds", steps, "--json"])), told);
    assert_eq!(
        told["spindle_least_cost"]["chosen"]["spindle_speed"]["text"],
        "500 rpm"
    );
    let alone = json(&with(SPEED, &["--json"]));
    assert!(alone["spindle_least_cost"].is_null());
    assert!(out(&with(SPEED, &["--units", "inch"])).contains(" ft/min"));
}

#[test]
fn lots_of_several_sizes_stand_one_after_the_other() {
    let told = json(&with(LOT, &["--lots", "1,10,100", "--json"]));
    let minutes: Vec<f64> = told
        .as_array()
        .unwrap()
        .iter()
        .map(|lot| lot["time_per_part"]["si"].as_f64().unwrap() / 60.0)
        .collect();
    assert_eq!(minutes, [35.0, 8.0, 5.3]);
    let text = out(&with(
        LOT,
        &["lot_size=10", "allowance_of_standard_time=20 %", "--steps"],
    ));
    let inputs = format!(
        "{}; lot_size=10; allowance_of_standard_time=20 %",
        LOT[2..].join("; ")
    );
    let price = LotCost::from_text(&inputs).unwrap().price().unwrap();
    let units = gullet::quantity::UnitSystem::Metric;
    assert_eq!(text, price.text(units) + &price.steps_text(units));
    assert!(
        text.contains("20 % of the standard time") || text.contains("0.2 of the standard time"),
        "{text}"
    );
}

#[test]
fn what_is_wrong_is_told_at_once() {
    let (code, lines) = refusal(&[
        "cost",
        "speed",
        "diametre=60 mm",
        "travel=200",
        "--lots",
        "1",
    ]);
    assert_eq!(code, 2);
    let all = lines.join("\n");
    for told in [
        "--lots",
        "did you mean diameter?",
        "travel",
        "machine_rate",
        "taylor_exponent",
    ] {
        assert!(all.contains(told), "{told} in\n{all}");
    }
    let (_, lines) = refusal(&with(LOT, &["lot_size=5", "--lots", "1,x"]));
    assert!(
        lines.len() == 2 && lines.join("").contains("duplicate"),
        "{lines:?}"
    );
    let (_, lines) = refusal(&with(LOT, &["--lots", "0"]));
    assert!(lines[0].contains("lot_size"), "{lines:?}");
    let (_, lines) = refusal(&with(
        SPEED,
        &["--machine", "manual-mill", "--speeds", "70 rpm"],
    ));
    assert!(lines[0].contains("--speeds"), "{lines:?}");
    let (_, lines) = refusal(&with(SPEED, &["--machine", "manual-mill"]));
    assert!(lines[0].contains("manual-knee-mill"), "{lines:?}");
    let (_, lines) = refusal(&["cost", "sped"]);
    assert!(lines[0].contains("did you mean speed?"), "{lines:?}");
}
