//! The description as a JSON Schema, draft 2020-12.

use super::field::{Field, Presence, Rule, Section, Shape};
use super::key::{LONGEST_LIST, LONGEST_TEXT, items};
use super::quantity_text::pattern;
use crate::quantity::Kind;
use serde_json::{Map, Value, json};

/// The schema of a document with these sections; the first holds the keys before every section.
pub(in crate::plan) fn schema(id: &str, title: &str, sections: &[&Section]) -> Value {
    let mut properties = Map::new();
    let mut required = Vec::new();
    for section in sections {
        let object = object(section);
        if section.name.is_empty() {
            properties.extend(object);
            required.extend(always(section));
        } else {
            let mut whole = json!({
                "type": "object",
                "description": section.meaning,
                "properties": object,
                "additionalProperties": false,
            });
            let needed: Vec<&str> = always(section).collect();
            let rules = rules(section);
            if let Some(whole) = whole.as_object_mut() {
                if !needed.is_empty() {
                    whole.insert("required".to_owned(), json!(needed));
                }
                if !rules.is_empty() {
                    whole.insert("allOf".to_owned(), json!(rules));
                }
            }
            properties.insert(section.name.to_owned(), whole);
            required.extend(section.required.then_some(section.name));
        }
    }
    json!({
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$id": id,
        "title": title,
        "description": "Text of a quantity is a number with a unit, such as 1/2 in or 12.7 mm. The program reads more spellings of units than this schema, and checks ranges and sizes against one another.",
        "type": "object",
        "properties": properties,
        "required": required,
        "additionalProperties": false,
    })
}

fn always(section: &Section) -> impl Iterator<Item = &'static str> {
    section
        .fields
        .iter()
        .filter(|field| field.presence == Presence::Required)
        .map(|field| field.key)
}

fn object(section: &Section) -> Map<String, Value> {
    section
        .fields
        .iter()
        .map(|field| (field.key.to_owned(), property(field)))
        .collect()
}

fn property(field: &Field) -> Value {
    let mut value = match field.shape {
        Shape::Text => json!({
            "type": "string",
            "minLength": 1,
            "pattern": r"^[^\u0000-\u001f\u007f-\u009f]*$",
            "maxLength": LONGEST_TEXT,
        }),
        Shape::Quantity(kind) => json!({"type": "string", "pattern": pattern(kind)}),
        Shape::Ratio => json!({
            "anyOf": [
                {"type": "number"},
                {"type": "string", "pattern": pattern(Kind::Ratio)},
            ]
        }),
        Shape::Count => json!({
            "anyOf": [
                {"type": "integer", "minimum": 1},
                {"type": "string", "pattern": "^ *[1-9][0-9]* *$"},
            ]
        }),
        Shape::Flag => json!({"type": "boolean"}),
        Shape::Choice(words) => json!({"enum": words}),
        Shape::List(kind) => json!({
            "type": "array",
            "items": {"type": "string", "pattern": pattern(kind)},
            "maxItems": LONGEST_LIST,
        }),
        Shape::Words(words) => json!({
            "type": "array",
            "items": {"enum": words},
            "uniqueItems": true,
        }),
    };
    if let Some(value) = value.as_object_mut() {
        value.insert("description".to_owned(), json!(field.meaning));
        let default = match field.presence {
            Presence::Default(text) | Presence::Assumed(text, _) => Some(text),
            Presence::Required | Presence::RequiredUnless(_) | Presence::Optional(_) => None,
        };
        if let Some(text) = default {
            value.insert("default".to_owned(), shown(field.shape, text));
        }
        let example = match field.shape {
            Shape::List(_) | Shape::Words(_) => json!(items(field).collect::<Vec<_>>()),
            shape => shown(shape, field.example),
        };
        value.insert("examples".to_owned(), json!([example]));
    }
    value
}

/// A value written as text, as JSON writes it.
fn shown(shape: Shape, text: &str) -> Value {
    let number = serde_json::from_str::<Value>(text).ok();
    match (shape, number) {
        (Shape::Ratio | Shape::Count | Shape::Flag, Some(value)) => value,
        _ => json!(text),
    }
}

fn requires(keys: &[&str]) -> Value {
    json!({"required": keys})
}

fn rules(section: &Section) -> Vec<Value> {
    let mut all = Vec::new();
    for field in section.fields {
        if let Presence::RequiredUnless(other) = field.presence {
            all.push(json!({"anyOf": [requires(&[other]), requires(&[field.key])]}));
        }
    }
    for rule in section.rules {
        match rule {
            Rule::OneOf { groups, unless } => {
                let ways: Vec<Value> = groups
                    .iter()
                    .map(|group| requires(group.needs))
                    .chain(unless.map(|key| requires(&[key])))
                    .collect();
                all.push(json!({"anyOf": ways}));
                for (index, group) in groups.iter().enumerate() {
                    for other in groups.iter().skip(index + 1) {
                        for key in group.keys() {
                            for rival in other.keys() {
                                all.push(json!({"not": requires(&[key, rival])}));
                            }
                        }
                    }
                }
            }
            Rule::With {
                key,
                other,
                word,
                needed,
                elsewhere,
            } => {
                let mut condition = Map::new();
                condition.insert(
                    "if".to_owned(),
                    json!({"properties": {*other: {"const": word}}, "required": [other]}),
                );
                if *needed {
                    condition.insert("then".to_owned(), requires(&[key]));
                }
                if !elsewhere {
                    condition.insert("else".to_owned(), json!({"properties": {*key: false}}));
                }
                all.push(Value::Object(condition));
            }
        }
    }
    all
}
