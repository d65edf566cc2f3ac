//! The card as JSON: every quantity with its SI value and as the card prints it.

use serde_json::{Value, json};

use super::Card;
use crate::operation::{Band, Cut, Side, WorkedStep};
use crate::plan::PlannedPass;
use crate::quantity::{Angle, Kind, UnitSystem, format};

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

fn quantity(kind: Kind, si: f64, system: UnitSystem) -> Value {
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
fn cut(cut: &Cut, system: UnitSystem) -> Value {
    let s = &cut.settings;
    let c = &cut.consequences;
    let q = |kind, si| quantity(kind, si, system);
    let angle = |a: Angle| q(Kind::Angle, a.value);
    json!({
        "settings": {
            "wanted_speed": q(Kind::RotationalSpeed, s.wanted_speed.value),
            "spindle_speed": q(Kind::RotationalSpeed, s.spindle_speed.value),
            "cutting_speed": q(Kind::Velocity, s.cutting_speed.value),
            "feed_per_tooth": q(Kind::Length, s.feed_per_tooth.value),
            "feed_per_rev": q(Kind::Length, s.feed_per_rev.value),
            "table_feed": q(Kind::Velocity, s.table_feed.value),
            "handwheel_rate": s.handwheel_rate.map(|rate| q(Kind::RotationalSpeed, rate.value)),
            "time_per_inch": q(Kind::Time, s.time_per_inch.value),
            "time_per_10_mm": q(Kind::Time, s.time_per_10_mm.value),
        },
        "consequences": {
            "effective_diameter": q(Kind::Length, c.effective_diameter.value),
            "entry_angle": angle(c.entry_angle),
            "exit_angle": angle(c.exit_angle),
            "max_chip_thickness": q(Kind::Length, c.max_chip_thickness.value),
            "mean_chip_thickness": q(Kind::Length, c.mean_chip_thickness.value),
            "removal_rate": q(Kind::VolumeRate, c.removal_rate.value),
            "specific_cutting_force": q(Kind::Pressure, c.specific_cutting_force.value),
            "cutting_power": q(Kind::Power, c.cutting_power.value),
            "cutting_power_by_unit_power": c.unit_power_cutting_power.map(|p| q(Kind::Power, p.value)),
            "motor_power": q(Kind::Power, c.motor_power.value),
            "torque": q(Kind::Torque, c.torque.value),
            "mean_tangential_force": q(Kind::Force, c.mean_tangential_force.value),
            "limit_power": q(Kind::Power, c.limit_power.value),
            "limit_torque": q(Kind::Torque, c.limit_torque.value),
            "peak_tangential_force": q(Kind::Force, c.peak_tangential_force.value),
            "peak_force": q(Kind::Force, c.peak_force.value),
            "axial_force": q(Kind::Force, c.axial_force.value),
            "deflection": q(Kind::Length, c.deflection.value),
            "clamping_needed": q(Kind::Force, c.clamping_needed.value),
            "clamping_force": q(Kind::Force, c.clamping_force.value),
            "available_power": q(Kind::Power, c.available_power.value),
            "available_torque": q(Kind::Torque, c.available_torque.value),
            "mean_roughness": c.mean_roughness.map(|r| q(Kind::Length, r.value)),
            "travel": q(Kind::Length, c.travel.value),
            "time": q(Kind::Time, c.time.value),
        },
        "limits": cut.ledger.iter().map(|limit| json!({
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
        })).collect::<Vec<_>>(),
        "adjustments": cut.adjustments.iter().map(|adjustment| json!({
            "limit": adjustment.limit,
            "setting": adjustment.setting,
            "from": q(adjustment.kind, adjustment.from),
            "to": q(adjustment.kind, adjustment.to),
        })).collect::<Vec<_>>(),
        "spread": {
            "cutting_speed": band(&cut.spread.cutting_speed, |v| q(Kind::Velocity, v.value)),
            "feed_per_tooth": band(&cut.spread.feed_per_tooth, |f| q(Kind::Length, f.value)),
            "force": band(&cut.spread.force, |f| q(Kind::Force, f.value)),
            "power": band(&cut.spread.power, |p| q(Kind::Power, p.value)),
            "time": band(&cut.spread.time, |t| q(Kind::Time, t.value)),
        },
        "data": cut.data.iter().map(|datum| json!({
            "name": datum.name,
            "value": q(datum.kind, datum.value),
            "origin": datum.origin,
        })).collect::<Vec<_>>(),
        "warnings": cut.warnings.iter().map(|warning| json!({
            "code": warning.code.name(),
            "text": warning.text,
        })).collect::<Vec<_>>(),
        "steps": cut.steps.iter().map(|step| match step {
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
        }).collect::<Vec<_>>(),
    })
}

fn band<T>(band: &Band<T>, show: impl Fn(&T) -> Value) -> Value {
    json!({"low": show(&band.low), "start": show(&band.start), "high": show(&band.high)})
}
