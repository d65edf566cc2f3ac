//! The cards of a route as JSON: every quantity with its SI value and as the cards print it.

use super::card::RouteCard;
use super::planned::BlockClamping;
use super::summary;
use super::totals::{RouteCost, TimeParts, money};
use crate::model::Blank;
use crate::plan::card::quantity_json as quantity;
use crate::quantity::{Kind, Length, UnitSystem};
use serde_json::{Map, Value, json};

/// Version of the form; grows when a key is renamed or removed.
const FORM: u32 = 1;

pub(super) fn render(card: &RouteCard) -> Value {
    let block = &card.route.block;
    let system = block.units;
    let length = |x: Length| quantity(Kind::Length, x.value, system);
    let entries: Vec<Value> = card
        .entries
        .iter()
        .zip(&card.totals.entries)
        .map(|(entry, cost)| {
            json!({
                "name": entry.name,
                "machine": entry.machine,
                "time": time(&entry.time, system),
                "cost": cost.as_ref().map(cost_json),
                "cautions": entry.cautions,
            })
        })
        .collect();
    json!({
        "form": FORM,
        "route": "squared-block",
        "title": block.title,
        "units": match system { UnitSystem::Metric => "metric", UnitSystem::Inch => "inch" },
        "setup": summary::rows(card)
            .into_iter()
            .filter(|(label, _)| *label != "Done")
            .map(|(label, text)| (label.to_lowercase(), Value::String(text)))
            .collect::<Map<_, _>>(),
        "blank": sizes(&block.sawn, system),
        "part": sizes(&block.finished, system),
        "tolerance": length(block.tolerance),
        "done": card.route.done.iter().map(|done| json!({
            "number": done.number,
            "face": done.face.name(),
            "size": length(done.size),
            "measured": done.measured,
        })).collect::<Vec<_>>(),
        "clampings": card.route.clampings.iter().map(|c| clamping(c, system)).collect::<Vec<_>>(),
        "entries": entries,
        "time": time(&card.totals.time, system),
        "cost": card.totals.cost.as_ref().map(cost_json),
        "before": summary::first(card),
        "between": summary::between(),
        "warnings": summary::doubts(card),
        "cautions": summary::cautions(card),
    })
}

fn sizes(block: &Blank, system: UnitSystem) -> Value {
    let length = |x: Length| quantity(Kind::Length, x.value, system);
    json!({
        "length": length(block.length),
        "width": length(block.width),
        "height": length(block.height),
    })
}

fn clamping(clamping: &BlockClamping, system: UnitSystem) -> Value {
    let length = |x: Length| quantity(Kind::Length, x.value, system);
    let seat = &clamping.seat;
    let placement = &clamping.placement;
    let instructions = &clamping.card.instructions;
    json!({
        "number": clamping.number,
        "face": seat.cut.name(),
        "fixed_jaw": seat.fixed.name(),
        "movable_jaw": seat.movable.name(),
        "below": seat.down.name(),
        "round_bar": placement.round_bar.map(length),
        "parallel": placement.parallel.map(length),
        "grip": length(placement.grip),
        "above_jaws": length(placement.above_jaws),
        "opening": length(placement.opening),
        "overhang": placement.overhang.map(length),
        "sizes_before": sizes(&clamping.before, system),
        "stock": length(clamping.stock),
        "size_after": length(clamping.after),
        "finishes": clamping.finishes,
        "why": clamping.reason,
        "before": instructions.before,
        "after": instructions.after,
        "card": clamping.card.json(),
    })
}

fn time(time: &TimeParts, system: UnitSystem) -> Value {
    let seconds = |si: f64| quantity(Kind::Time, si, system);
    let mut parts: Map<String, Value> = TimeParts::NAMES
        .iter()
        .zip(time.parts())
        .map(|((name, _), part)| ((*name).to_owned(), seconds(part.value)))
        .collect();
    parts.insert("total".to_owned(), seconds(time.total().value));
    parts.into()
}

/// Money as text, so that hundredths stay exact.
fn cost_json(cost: &RouteCost) -> Value {
    let mut parts: Map<String, Value> = TimeParts::NAMES
        .iter()
        .zip(&cost.parts)
        .map(|((name, _), part)| ((*name).to_owned(), money(*part).into()))
        .collect();
    parts.insert("total".to_owned(), money(cost.hundredths()).into());
    parts.into()
}
