//! The form of the file of a part, as a JSON Schema.

use super::super::document;
use super::super::job::MachineKeys;
use super::super::route;
use super::read::{MOST_LOTS, SECTIONS};
use super::steps::{KEYS, MOST, MOST_TIMES, SQUARING};
use crate::operation::process::{self, Process, ProcessInput};
use crate::plan::document::Keys;
use crate::quantity::Kind;
use serde_json::{Map, Value, json};

/// The JSON Schema (draft 2020-12) of the file of a part, as text that ends in a line break.
pub fn part_schema() -> String {
    let sections: Vec<_> = SECTIONS.iter().map(|section| section()).collect();
    let mut schema = document::schema("urn:gullet:part", "File of a part of gullet", &sections);
    let own = json!({
        "machines": {
            "type": "object",
            "description": "Machines of the shop, a section for each name.",
            "additionalProperties": machine(),
        },
        "squaring": squaring(),
        "rates": {
            "type": "object",
            "description": "What time costs, and the lots to tell time and cost for.",
            "properties": {
                "machine_rate": quantity(Kind::MoneyRate, "Machine and operator, money per time."),
                "material_cost": quantity(Kind::Money, "Material of one part."),
                "lots": {
                    "type": "array",
                    "items": {"type": "integer", "minimum": 1},
                    "minItems": 1,
                    "maxItems": MOST_LOTS,
                    "description": "Parts in a lot.",
                },
            },
            "additionalProperties": false,
        },
        "operation": {
            "type": "array",
            "description": "The operations, in order.",
            "minItems": 1,
            "maxItems": MOST,
            "items": {"oneOf": operations()},
        },
    });
    if let (Some(properties), Value::Object(own)) = (
        schema.get_mut("properties").and_then(Value::as_object_mut),
        own,
    ) {
        properties.extend(own);
    }
    if let Some(required) = schema.get_mut("required").and_then(Value::as_array_mut) {
        required.push(json!("operation"));
    }
    format!("{schema:#}\n")
}

/// The keys of a machine.
fn machine() -> Value {
    document::schema("", "", &[MachineKeys::section()])
        .pointer("/properties/machine")
        .cloned()
        .unwrap_or_default()
}

/// The sections of a squared block but for those that the part itself has.
fn squaring() -> Value {
    let schema: Value = serde_json::from_str(&route::route_schema()).unwrap_or_default();
    let mut properties = schema
        .get("properties")
        .and_then(Value::as_object)
        .cloned()
        .unwrap_or_default();
    properties.retain(|key, _| {
        !["route", "title", "units", "$schema", "material"].contains(&key.as_str())
    });
    let required: Vec<&Value> = schema
        .get("required")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
        .filter(|key| key.as_str().is_some_and(|key| properties.contains_key(key)))
        .collect();
    json!({
        "type": "object",
        "description": "The block of the step squared-block; material and practice are the part's.",
        "required": required,
        "properties": properties,
        "additionalProperties": false,
    })
}

/// What an operation may be: the step that squares the block, or one with inputs of its own.
fn operations() -> Vec<Value> {
    let squared = json!({
        "type": "object",
        "properties": {"operation": {"const": SQUARING}},
        "required": ["operation"],
        "additionalProperties": false,
    });
    core::iter::once(squared)
        .chain(process::ALL.iter().map(|process| operation(process)))
        .collect()
}

fn operation(process: &Process) -> Value {
    let mut properties: Map<String, Value> = KEYS
        .iter()
        .map(|key| ((*key).to_owned(), key_of(key, process)))
        .collect();
    let mut required = vec!["operation"];
    for input in process.inputs {
        properties.insert(input.name().to_owned(), input_of(input));
        required.extend(input.required().then_some(input.name()));
    }
    json!({
        "type": "object",
        "description": process.meaning,
        "properties": properties,
        "required": required,
        "additionalProperties": false,
    })
}

/// A key of every operation.
fn key_of(key: &str, process: &Process) -> Value {
    match key {
        "operation" => json!({"const": process.name}),
        "count" => json!({"type": "integer", "minimum": 1, "maximum": MOST_TIMES}),
        "machine_rate" => quantity(Kind::MoneyRate, "Machine and operator, money per time."),
        key if key.ends_with("_time") => quantity(Kind::Time, &key.replace('_', " ")),
        _ => json!({"type": "string"}),
    }
}

fn input_of(input: &ProcessInput) -> Value {
    if input.words.is_empty() {
        return quantity(input.parameter.kind, input.parameter.meaning);
    }
    json!({"enum": input.words, "description": input.parameter.meaning})
}

/// A quantity as text with its unit; what has no unit may stand as a number too.
fn quantity(kind: Kind, meaning: &str) -> Value {
    let text = match kind {
        // The reader checks the text of kinds whose units a pattern does not list.
        Kind::MoneyRate | Kind::Money | Kind::Count => json!({"type": "string"}),
        kind => json!({"type": "string", "pattern": document::pattern(kind)}),
    };
    match kind {
        Kind::Count | Kind::Ratio | Kind::Money => json!({
            "anyOf": [{"type": "number"}, text],
            "description": meaning,
        }),
        _ => {
            let mut text = text;
            if let Some(text) = text.as_object_mut() {
                text.insert("description".to_owned(), json!(meaning));
            }
            text
        }
    }
}
