//! The card as JSON: every quantity with its SI value and as the card prints it.

use super::super::card::{parts_json, quantity_json, record_json};
use super::ProcessCard;
use crate::quantity::{Kind, UnitSystem};
use serde_json::{Map, Value, json};

/// Version of the form; grows when a key is renamed or removed.
const FORM: u32 = 1;

pub(super) fn render(card: &ProcessCard) -> Value {
    let cut = &card.cut;
    let system = card.units();
    let inputs: Map<String, Value> = cut
        .process
        .inputs
        .iter()
        .zip(&cut.inputs)
        .map(|(input, value)| {
            let shown = if !value.is_finite() {
                Value::Null
            } else if input.words.is_empty() {
                quantity_json(input.parameter.kind, *value, system)
            } else {
                Value::String(input.text(*value, system))
            };
            (input.name().to_owned(), shown)
        })
        .collect();
    let spread: Map<String, Value> = cut
        .spread
        .iter()
        .map(|named| {
            let show = |si: f64| {
                if si.is_finite() {
                    quantity_json(named.kind, si, system)
                } else {
                    Value::Null
                }
            };
            let band = &named.band;
            (
                named.name.to_owned(),
                json!({"low": show(band.low), "start": show(band.start), "high": show(band.high)}),
            )
        })
        .collect();
    let setup: Map<String, Value> = cut
        .setup
        .iter()
        .map(|(label, text)| (label.to_lowercase(), Value::String(text.clone())))
        .collect();
    let mut value = json!({
        "form": FORM,
        "title": card.title,
        "operation": cut.process.name,
        "units": match system { UnitSystem::Metric => "metric", UnitSystem::Inch => "inch" },
        "setup": setup,
        "inputs": inputs,
        "settings": record_json(&cut.settings, system),
        "results": record_json(&cut.results, system),
        "depths": cut.depths.iter().map(|depth| quantity_json(Kind::Length, depth.value, system)).collect::<Vec<_>>(),
        "held_by": cut.held_by.map(|limit| limit.name()),
        "spread": spread,
        "cautions": cut.cautions,
        "sources": card.sources.iter().map(|(id, reference)| json!({"id": id, "reference": reference})).collect::<Vec<_>>(),
    });
    if let Some(value) = value.as_object_mut() {
        value.extend(parts_json(
            &cut.ledger,
            &cut.adjustments,
            &cut.data,
            &cut.warnings,
            &cut.steps,
            system,
        ));
    }
    value
}
