//! The cards of a part as JSON.

use super::super::card::quantity_json;
use super::PartCard;
use super::card::Sheet;
use crate::quantity::{Kind, UnitSystem};
use serde_json::{Map, Value, json};

/// Version of the form; grows when a key is renamed or removed.
const FORM: u32 = 1;

pub(super) fn render(card: &PartCard) -> Value {
    let route = &card.route;
    let system = route.units;
    let time = |si: f64| quantity_json(Kind::Time, si, system);
    let entries: Vec<Value> = card
        .entries
        .iter()
        .map(|entry| {
            let parts: Map<String, Value> = super::super::route::TimeParts::NAMES
                .iter()
                .zip(entry.time.parts())
                .map(|((name, _), part)| ((*name).to_owned(), time(part.value)))
                .collect();
            json!({
                "name": entry.name,
                "machine": entry.machine,
                "time": time(entry.time.total().value),
                "parts": parts,
                "machine_rate": entry.rate.map(|rate| quantity_json(Kind::MoneyRate, rate.value, system)),
            })
        })
        .collect();
    let lots: Vec<Value> = card
        .lots
        .iter()
        .map(|lot| {
            let entries: Vec<Value> = lot
                .entries
                .iter()
                .map(|price| {
                    json!({
                        "name": price.name,
                        "time": time(price.time.value),
                        "cost": price.cost.value,
                        "steps": price.steps.iter().map(|step| step.text(system)).collect::<Vec<_>>(),
                    })
                })
                .collect();
            json!({
                "size": lot.size.value,
                "time_per_part": time(lot.time_per_part.value),
                "cost_per_part": lot.cost_per_part.value,
                "material_cost": lot.material_cost.value,
                "entries": entries,
            })
        })
        .collect();
    json!({
        "form": FORM,
        "title": route.title,
        "units": match system { UnitSystem::Metric => "metric", UnitSystem::Inch => "inch" },
        "entries": entries,
        "time": time(card.totals.time.total().value),
        "lots": lots,
        "sheets": sheets(card),
        "squaring": card.block.as_ref().map(|block| block.json()),
        "assumptions": route.assumptions,
        "cautions": card.cautions(),
    })
}

fn sheets(card: &PartCard) -> Vec<Value> {
    card.sheets
        .iter()
        .map(|sheet| match sheet {
            Sheet::Clamping(clamping) => json!({
                "clamping": clamping.number,
                "held": clamping.held,
                "machine": clamping.machine(),
                "operations": clamping.work.iter().map(|(operation, process)| json!({
                    "count": operation.count,
                    "note": operation.note,
                    "card": process.json(),
                })).collect::<Vec<_>>(),
            }),
            Sheet::Block(place) => json!({ "squaring": place + 1 }),
        })
        .collect()
}
