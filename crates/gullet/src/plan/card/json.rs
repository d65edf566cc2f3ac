//! The card as JSON: every quantity with its SI value and as the card prints it.

use serde_json::{Value, json};

use super::Card;
use crate::operation::{Adjustment, Band, Cut, Datum, Field, Limit, Side, Warning, WorkedStep};
use crate::plan::PlannedPass;
use crate::quantity::{Kind, UnitSystem, format};

/// Version of the form; grows when a key is renamed or removed.
const FORM: u32 = 1;

pub(super) fn render(card: &Card) -> Value {
    let print = card.print();
    let system = card.job.units;
    let plan = &card.plan;
    let time = plan.time();
    let setup: serde_json::Map<String, Value> = card
        .setup_rows()
        .into_iter()
        .map(|(label, text)| (label.to_lowercase(), Value::String(text)))
        .collect();
    json!({
        "form": FORM,
        "title": card.job.title,
        "units": match system { UnitSystem::Metric => "metric", UnitSystem::Inch => "inch" },
        "setup": setup,
        "plan": {
            "resolution": quantity(Kind::Length, plan.resolution.value, system),
            "stock": quantity(Kind::Length, plan.stock.value, system),
            "stock_counts": plan.total,
            "strips": plan.strips.count,
            "strip_width": quantity(Kind::Length, plan.strips.width.value, system),
            "largest_roughing_depth": quantity(Kind::Length, plan.largest_roughing.0.value, system),
            "largest_roughing_depth_set_by": plan.largest_roughing.1,
            "readout_start": print.position(card.job.readout_start),
            "time": {
                "total": quantity(Kind::Time, time.total().value, system),
                "cutting": quantity(Kind::Time, time.cutting.value, system),
                "returning": quantity(Kind::Time, time.returning.value, system),
                "handling": quantity(Kind::Time, time.handling.value, system),
            },
            "passes": plan.passes.iter().map(|pass| planned(card, pass)).collect::<Vec<_>>(),
        },
        "warnings": card.warnings(),
        "cautions": card.cautions(),
        "sources": card.sources.iter().map(|(id, reference)| json!({"id": id, "reference": reference})).collect::<Vec<_>>(),
    })
}

pub(in crate::plan) fn quantity(kind: Kind, si: f64, system: UnitSystem) -> Value {
    json!({"si": si, "kind": kind.name(), "text": format(kind, si, system)})
}

fn planned(card: &Card, pass: &PlannedPass) -> Value {
    let system = card.job.units;
    let print = card.print();
    json!({
        "number": pass.number,
        "kind": pass.cut.pass.kind.name(),
        "direction": pass.cut.pass.direction.name(),
        "depth_counts": pass.counts,
        "depth": quantity(Kind::Length, pass.depth.value, system),
        "readout_counts": pass.readout_counts,
        "readout": {"si": pass.readout.value, "kind": "length", "text": print.position(pass.readout)},
        "left_counts": pass.left,
        "time": {
            "cutting": quantity(Kind::Time, pass.time.cutting.value, system),
            "returning": quantity(Kind::Time, pass.time.returning.value, system),
            "handling": quantity(Kind::Time, pass.time.handling.value, system),
        },
        "cut": cut(&pass.cut, system),
    })
}

/// A cut as JSON.
pub fn cut(cut: &Cut, system: UnitSystem) -> Value {
    let q = |kind, si| quantity(kind, si, system);
    let mut value = json!({
        "settings": record(&cut.settings.fields(), system),
        "consequences": record(&cut.consequences.fields(), system),
        "spread": {
            "cutting_speed": band(&cut.spread.cutting_speed, |v| q(Kind::Velocity, v.value)),
            "feed_per_tooth": band(&cut.spread.feed_per_tooth, |f| q(Kind::Length, f.value)),
            "force": band(&cut.spread.force, |f| q(Kind::Force, f.value)),
            "power": band(&cut.spread.power, |p| q(Kind::Power, p.value)),
            "time": band(&cut.spread.time, |t| q(Kind::Time, t.value)),
        },
    });
    let parts = parts(
        &cut.ledger,
        &cut.adjustments,
        &cut.data,
        &cut.warnings,
        &cut.steps,
        system,
    );
    if let Some(value) = value.as_object_mut() {
        value.extend(parts);
    }
    value
}

/// What cuts of every operation have in common.
pub(in crate::plan) fn parts(
    ledger: &[Limit],
    adjustments: &[Adjustment],
    data: &[Datum],
    warnings: &[Warning],
    steps: &[WorkedStep],
    system: UnitSystem,
) -> serde_json::Map<String, Value> {
    let q = |kind, si| quantity(kind, si, system);
    let mut parts = serde_json::Map::new();
    let mut put =
        |key: &str, values: Vec<Value>| parts.insert(key.to_owned(), Value::Array(values));
    put("limits", ledger.iter().map(|limit| json!({
            "name": limit.name,
            "value": q(limit.kind, limit.value),
            "bound": q(limit.kind, limit.bound),
            "side": match limit.side { Side::AtMost => "at_most", Side::AtLeast => "at_least" },
            "share": limit.share,
            "origin": limit.origin,
            "binding": limit.binding,
            "relief": limit.relief.map(|relief| json!({
                "setting": relief.setting,
                "to": q(relief.kind, relief.to),
            })),
        })).collect());
    put(
        "adjustments",
        adjustments
            .iter()
            .map(|adjustment| {
                json!({
                    "limit": adjustment.limit,
                    "setting": adjustment.setting,
                    "from": q(adjustment.kind, adjustment.from),
                    "to": q(adjustment.kind, adjustment.to),
                })
            })
            .collect(),
    );
    put(
        "data",
        data.iter()
            .map(|datum| {
                json!({
                    "name": datum.name,
                    "value": q(datum.kind, datum.value),
                    "origin": datum.origin,
                })
            })
            .collect(),
    );
    put(
        "warnings",
        warnings
            .iter()
            .map(|warning| {
                json!({
                    "code": warning.code.name(),
                    "text": warning.text,
                })
            })
            .collect(),
    );
    put(
        "steps",
        steps
            .iter()
            .map(|step| match step {
                WorkedStep::Formula(step) => json!({
                    "formula": step.formula.name,
                    "arguments": step.formula.parameters.iter().zip(&step.arguments)
                        .map(|(parameter, si)| (parameter.name.to_owned(), q(parameter.kind, *si)))
                        .collect::<serde_json::Map<_, _>>(),
                    "result": q(step.formula.result, step.result),
                    "text": step.text(system),
                    "source": step.formula.source,
                }),
                WorkedStep::Choice(choice) => json!({
                    "choice": choice.text,
                    "result": q(choice.kind, choice.value),
                }),
            })
            .collect(),
    );
    parts
}

/// A record: one key a field, null where it is missing.
pub(in crate::plan) fn record(fields: &[Field], system: UnitSystem) -> Value {
    fields
        .iter()
        .map(|field| {
            let value = field.value.map(|si| quantity(field.kind, si, system));
            (field.name.to_owned(), value.unwrap_or(Value::Null))
        })
        .collect::<serde_json::Map<_, _>>()
        .into()
}

fn band<T>(band: &Band<T>, show: impl Fn(&T) -> Value) -> Value {
    json!({"low": show(&band.low), "start": show(&band.start), "high": show(&band.high)})
}
