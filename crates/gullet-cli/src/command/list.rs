//! `gullet list`: what there is to choose from.

use super::card::library;
use super::explain::description;
use super::operate::description_json;
use crate::answer::Answer;
use crate::arguments::{Flag, JSON, Spec, UNITS, read};
use gullet::error::{Result, unknown_name};
use gullet::formula::catalogue;
use gullet::model::{Drive, Machine, Practice};
use gullet::operation::{Operation, process};
use gullet::quantity::{Kind, UnitSystem, format, units};
use gullet::table::Library;
use serde_json::{Value, json};

/// What can be listed.
const THINGS: &[&str] = &[
    "materials",
    "machines",
    "practices",
    "formulas",
    "sources",
    "units",
    "operations",
];

const SPEC: Spec = Spec {
    flags: &[
        JSON,
        UNITS,
        Flag::with_value("--overlay", "FILE").repeated(),
    ],
    operand: "materials, machines, practices, formulas, sources, units or operations",
    least: 1,
    most: 1,
};

/// One entry: its cells as text, and itself as JSON.
type Row = (Vec<String>, Value);

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    let thing = given.operands.first().map_or("", String::as_str);
    let system = given.units().unwrap_or(UnitSystem::Metric);
    if !THINGS.contains(&thing) {
        return Err(unknown_name("list", thing, THINGS.iter().copied()).into());
    }
    let overlays: Vec<&str> = given.values("--overlay").collect();
    let library = library(&overlays)?;
    let rows = match thing {
        "materials" => materials(&library),
        "machines" => machines(system)?,
        "practices" => practices()?,
        "sources" => sources(&library),
        "units" => kinds(),
        "operations" => operations(),
        _ => formulas(),
    };
    Ok(if given.has("--json") {
        let values: Vec<&Value> = rows.iter().map(|(_, value)| value).collect();
        Answer::json(&json!({ thing: values }))
    } else {
        Answer::text(table(&rows))
    })
}

fn materials(library: &Library) -> Vec<Row> {
    library
        .materials()
        .iter()
        .map(|material| {
            let hardness = material
                .hardness_brinell
                .map(|(low, high)| if low == high { format!("{low} HB") } else { format!("{low} to {high} HB") });
            (
                vec![
                    material.id.clone(),
                    format!("ISO {}", material.iso513.name()),
                    material.name.clone(),
                    material.condition.clone(),
                    hardness.unwrap_or_default(),
                ],
                json!({
                    "id": material.id,
                    "name": material.name,
                    "aliases": material.aliases,
                    "iso513": material.iso513.name(),
                    "condition": material.condition,
                    "hardness_brinell": material.hardness_brinell.map(|(low, high)| [low, high]),
                    "cautions": material.cautions,
                    "provenance": material.provenance.name(),
                    "sources": material.sources.iter().map(|(id, of)| json!({"id": id, "of": of})).collect::<Vec<_>>(),
                }),
            )
        })
        .collect()
}

fn machines(system: UnitSystem) -> Result<Vec<Row>> {
    Machine::BUILTIN
        .iter()
        .map(|id| {
            let machine = Machine::builtin(id)?;
            let (lowest, highest) = machine.speed_range();
            let speed = |si| format(Kind::RotationalSpeed, si, system);
            let power = format(Kind::Power, machine.motor_power.value, system);
            let steps = match &machine.drive {
                Drive::Stepped(steps) => steps.iter().map(|step| step.value).collect(),
                Drive::Continuous { .. } => Vec::new(),
            };
            Ok((
                vec![
                    (*id).to_owned(),
                    format!("{} to {}", speed(lowest.value), speed(highest.value)),
                    power,
                    machine.origin.clone(),
                ],
                json!({
                    "id": id,
                    "name": machine.name,
                    "lowest_speed_si": lowest.value,
                    "highest_speed_si": highest.value,
                    "speed_steps_si": steps,
                    "motor_power_si": machine.motor_power.value,
                    "origin": machine.origin,
                }),
            ))
        })
        .collect()
}

fn practices() -> Result<Vec<Row>> {
    Practice::BUILTIN
        .iter()
        .map(|id| {
            let practice = Practice::builtin(id)?;
            let cells = vec![
                (*id).to_owned(),
                format!("speed x {}", practice.speed_factor.value),
                format!("feed x {}", practice.feed_factor.value),
                practice.origin.clone(),
            ];
            let value = json!({
                "id": id,
                "speed_factor": practice.speed_factor.value,
                "feed_factor": practice.feed_factor.value,
                "power_share": practice.power_share.value,
                "holding_safety": practice.holding_safety.value,
                "origin": practice.origin,
            });
            Ok((cells, value))
        })
        .collect()
}

fn formulas() -> Vec<Row> {
    catalogue()
        .map(|formula| {
            let cells = vec![
                formula.topic.to_owned(),
                formula.name.to_owned(),
                formula.equation.to_owned(),
            ];
            (cells, description(formula))
        })
        .collect()
}

fn sources(library: &Library) -> Vec<Row> {
    library
        .sources()
        .iter()
        .map(|source| {
            let reference = [
                &source.author,
                &source.title,
                &source.edition,
                &source.year,
                &source.place,
            ]
            .into_iter()
            .filter(|part| !part.is_empty())
            .cloned()
            .collect::<Vec<_>>()
            .join(", ");
            let provenance = source.provenance.name();
            (
                vec![source.id.clone(), provenance.to_owned(), reference],
                json!({
                    "id": source.id,
                    "author": source.author,
                    "title": source.title,
                    "edition": source.edition,
                    "year": source.year,
                    "place": source.place,
                    "provenance": provenance,
                }),
            )
        })
        .collect()
}

fn kinds() -> Vec<Row> {
    Kind::ALL
        .iter()
        .map(|kind| {
            let symbols: Vec<&str> = units(*kind).iter().map(|unit| unit.symbol).collect();
            let shown: Vec<&str> = symbols
                .iter()
                .map(|symbol| if symbol.is_empty() { "(none)" } else { symbol })
                .collect();
            let list: Vec<Value> = units(*kind)
                .iter()
                .map(|unit| json!({"symbol": unit.symbol, "aliases": unit.aliases, "si": unit.size()}))
                .collect();
            (
                vec![kind.name().to_owned(), shown.join(", ")],
                json!({"kind": kind.name(), "units": list}),
            )
        })
        .collect()
}

fn operations() -> Vec<Row> {
    Operation::ALL
        .iter()
        .map(|operation| {
            let name = operation.name();
            (
                vec![name.to_owned(), "job files, studies".to_owned()],
                json!({"name": name}),
            )
        })
        .chain(process::ALL.iter().map(|process| {
            (
                vec![process.name.to_owned(), process.meaning.to_owned()],
                description_json(process),
            )
        }))
        .collect()
}

/// Columns padded to the widest cell, the last one as it comes.
pub fn table(rows: &[Row]) -> String {
    let columns = rows.iter().map(|(cells, _)| cells.len()).max().unwrap_or(0);
    let widths: Vec<usize> = (0..columns)
        .map(|column| {
            let cells = rows.iter().filter_map(|(cells, _)| cells.get(column));
            cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
        })
        .collect();
    let mut text = String::new();
    for (cells, _) in rows {
        let mut line = String::new();
        for (cell, width) in cells.iter().zip(&widths) {
            line += cell;
            line.extend(std::iter::repeat_n(' ', width + 2 - cell.chars().count()));
        }
        text += line.trim_end();
        text.push('\n');
    }
    text
}
