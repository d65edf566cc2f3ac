//! `gullet tap-drill`: drills for a thread, the one nearest to the percentage wanted first.

use super::card::library;
use super::evaluate::named_values;
use super::list::table;
use crate::answer::{Answer, joined};
use crate::arguments::{Flag, JSON, Spec, UNITS, read};
use gullet::error::{Error, Result};
use gullet::formula::units_of;
use gullet::quantity::{Kind, Ratio, UnitSystem, format as printed};
use gullet::table::{DrillSet, TapDrill, TapDrillWish, ThreadBasis};
use serde_json::{Value, json};

const SPEC: Spec = Spec {
    flags: &[
        JSON,
        UNITS,
        Flag::choice("--basis", &["chart", "overlap", "forming"]),
        Flag::with_value("--sets", "LIST"),
        Flag::with_value("--overlay", "FILE").repeated(),
    ],
    operand: "NAME=VALUE",
    least: 1,
    most: usize::MAX,
};

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    let units = given
        .units()
        .unwrap_or_else(|| units_of(&given.operands.join(" ")));
    let (pairs, mut problems) = named_values(&given.operands);
    let mut keep = |error: Error| problems.extend(error.into_problems());
    let basis = ThreadBasis::parse(given.value("--basis").unwrap_or("chart"))
        .map_err(|error| keep(error.within("--basis")))
        .unwrap_or(ThreadBasis::Chart);
    let names = given.value("--sets").unwrap_or_default();
    let names = names.split(',').map(str::trim);
    let sets = DrillSet::parse_all(names.filter(|name| !name.is_empty()))
        .map_err(&mut keep)
        .unwrap_or_default();
    let overlays: Vec<&str> = given.values("--overlay").collect();
    let library = library(&overlays)?;
    let wish = match TapDrillWish::read(&pairs, basis) {
        Ok(wish) => Error::unless_empty(problems, wish)?,
        Err(error) => return Err(joined(problems, error)),
    };
    let found = library.tap_drills(&wish, &sets)?;
    if given.has("--json") {
        let drills: Vec<Value> = found.iter().map(entry).collect();
        return Ok(Answer::json(&json!({
            "basis": basis.name(),
            "major_diameter_m": wish.major_diameter.value,
            "pitch_m": wish.pitch.value,
            "thread_percent": wish.thread_percent.value,
            "drills": drills,
        })));
    }
    let rows: Vec<(Vec<String>, Value)> = found
        .iter()
        .map(|near| (line(near, units), Value::Null))
        .collect();
    Ok(Answer::text(table(&rows)))
}

fn entry(near: &TapDrill) -> Value {
    json!({
        "name": near.drill.name,
        "set": near.drill.set.name(),
        "diameter_m": near.drill.diameter.value,
        "percent": near.percent.value,
        "chart_percent": near.chart_percent.map(|percent| percent.value),
        "overlap_percent": near.overlap_percent.map(|percent| percent.value),
    })
}

fn line(near: &TapDrill, units: UnitSystem) -> Vec<String> {
    let share = |percent: Ratio| format!("{:.1} %", percent.value * 100.0);
    let bases = match (near.chart_percent, near.overlap_percent) {
        (Some(chart), Some(overlap)) => format!(
            "{} of thread as charts reckon, {} of the ISO and UN overlap",
            share(chart),
            share(overlap)
        ),
        _ => format!("{} of thread of a forming tap", share(near.percent)),
    };
    vec![
        near.drill.name.clone(),
        printed(Kind::Length, near.drill.diameter.value, units),
        near.drill.set.name().to_owned(),
        bases,
    ]
}
