//! The totals of a study, for people and as JSON.

use super::Outcome;
use super::progress::grouped;
use gullet::operation::LimitName;
use gullet::quantity::{Kind, UnitSystem, format};
use gullet_table::{StudyPlan, Summary};
use serde_json::{Map, Value, json};

/// Totals as text.
pub fn as_text(outcome: &Outcome, plan: &StudyPlan) -> String {
    let summary = &outcome.summary;
    let mut text = format!("rows            {}\n", grouped(summary.rows()));
    text += &format!("computed        {}\n", grouped(summary.ok()));
    for (code, count) in summary.codes() {
        text += &format!("  {:<24} {:>15}\n", code.name(), grouped(count));
    }
    let time = format(
        Kind::Time,
        summary.cutting_time() as f64 / 1e9,
        UnitSystem::Metric,
    );
    let without = match plan.operation() {
        None => "return, handling and set-up",
        Some(_) => "handling and set-up",
    };
    text += &format!("cutting time    {time}, without {without}\n");
    if let Some(whose) = plan.energy() {
        text += &format!("energy          {} kWh {whose}\n", kilowatt_hours(summary));
    }
    if let Some(cost) = summary.cost() {
        text += &format!(
            "cost            {:.2} of machine and operator in that time, without tools and material\n",
            cost as f64 / 1e6
        );
    }
    for (heading, counts) in [
        ("rows by binding limit", summary.binding()),
        ("rows whose feed a limit holds", summary.held_by()),
        ("rows that a limit made an error", summary.exceeded()),
    ] {
        if !counts.is_empty() {
            text += &format!("{heading}\n");
        }
        for (limit, count) in counts {
            text += &format!("  {:<24} {:>15}\n", limit.name(), grouped(count));
        }
    }
    for assumption in plan.assumptions() {
        text += &format!("assumed         {assumption}\n");
    }
    text
}

/// Totals as JSON.
pub fn as_json(outcome: &Outcome, plan: &StudyPlan) -> Value {
    let summary = &outcome.summary;
    let limits = |counts: Vec<(LimitName, u64)>| -> Map<String, Value> {
        let entry = |(limit, count): (LimitName, u64)| (limit.name().to_owned(), count.into());
        counts.into_iter().map(entry).collect()
    };
    let codes: Map<String, Value> = summary
        .codes()
        .into_iter()
        .map(|(code, count)| (code.name().to_owned(), count.into()))
        .collect();
    json!({
        "rows": summary.rows(),
        "computed": summary.ok(),
        "errors": codes,
        "cutting_time_s": summary.cutting_time() as f64 / 1e9,
        "energy_kwh": plan.energy().map(|_| summary.energy() as f64 / 3.6e12),
        "energy_of": plan.energy(),
        "cost": summary.cost().map(|cost| cost as f64 / 1e6),
        "binding_limit": limits(summary.binding()),
        "held_by": limits(summary.held_by()),
        "limit_exceeded": limits(summary.exceeded()),
        "assumed": plan.assumptions(),
        "passed_through": plan.passed_through(),
        "notes": outcome.notes,
        "more_notes": outcome.more,
    })
}

/// Four digits or more, never in powers of ten.
fn kilowatt_hours(summary: &Summary) -> String {
    let energy = summary.energy() as f64 / 3.6e12;
    match energy {
        100.0.. => format!("{energy:.1}"),
        1.0.. => format!("{energy:.3}"),
        _ => format!("{energy:.6}"),
    }
}
