//! The text of a document as a tree of values with line numbers, from TOML or JSON.

use crate::error::{Code, Error, Problem, Result};
use core::fmt;
use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use toml::de::{DeTable, DeValue};

/// Largest document that is read, in bytes: a hundred times what a person writes.
const LARGEST: usize = 256 * 1024;

/// A value and the line it starts on, where the format tells.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::plan) struct Node {
    pub(super) value: Value,
    pub(super) line: Option<usize>,
}

/// What stands behind a key.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Value {
    Text(String),
    /// The number and how it is written.
    Number(f64, String),
    Flag(bool),
    Date(String),
    Nothing,
    List(Vec<Node>),
    Table(Vec<Entry>),
}

/// A key with its value, in the order of the document; keys may repeat.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Entry {
    pub(super) key: String,
    pub(super) line: Option<usize>,
    pub(super) node: Node,
}

impl Node {
    /// Text that stands for itself, as a default does.
    pub(super) fn text(text: &str) -> Node {
        Value::Text(text.to_owned()).without_line()
    }

    /// Whether the document has this key before every section, or a section of this name.
    pub(in crate::plan) fn has(&self, key: &str) -> bool {
        matches!(&self.value, Value::Table(entries) if entries.iter().any(|entry| entry.key == key))
    }

    /// Reads a TOML document.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a document that is too large, [`Code::Syntax`] with line and column
    /// for the first fault of form, [`Code::Duplicate`] for a key that is given twice.
    pub(in crate::plan) fn from_toml(text: &str) -> Result<Node> {
        let text = prepared(text)?;
        let lines = Lines::of(text);
        match DeTable::parse(text) {
            Ok(table) => Ok(Node {
                value: toml_table(table.get_ref(), &lines),
                line: Some(1),
            }),
            Err(error) => Err(toml_problem(&error, text, &lines).into()),
        }
    }

    /// Reads a JSON document.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a document that is too large, [`Code::Syntax`] with line and column
    /// for the first fault of form.
    pub(in crate::plan) fn from_json(text: &str) -> Result<Node> {
        let text = prepared(text)?;
        serde_json::from_str(text).map_err(|error| {
            let place = format!("line {}, column {}", error.line(), error.column());
            let whole = error.to_string();
            let message = whole
                .rsplit_once(" at line ")
                .map_or(whole.as_str(), |(message, _)| message);
            syntax(&place, message, "JSON")
        })
    }
}

impl Value {
    fn without_line(self) -> Node {
        Node {
            value: self,
            line: None,
        }
    }

    /// What it is, in words.
    pub(super) fn describe(&self) -> &'static str {
        match self {
            Value::Text(_) => "text",
            Value::Number(..) => "a number",
            Value::Flag(_) => "true or false",
            Value::Date(_) => "a date or time",
            Value::Nothing => "null",
            Value::List(_) => "a list",
            Value::Table(_) => "a section",
        }
    }

    /// How it was given, cut short, for a message.
    pub(super) fn shown(&self) -> String {
        match self {
            Value::Text(text) => format!("\"{}\"", shown(text)),
            Value::Number(_, text) | Value::Date(text) => shown(text),
            Value::Flag(flag) => flag.to_string(),
            Value::Nothing | Value::List(_) | Value::Table(_) => self.describe().to_owned(),
        }
    }
}

/// Given text for a message: one line, cut short.
pub(super) fn shown(text: &str) -> String {
    const LONGEST: usize = 60;
    let mut result: String = text
        .chars()
        .take(LONGEST)
        .map(|c| if c.is_control() { '\u{fffd}' } else { c })
        .collect();
    if text.chars().nth(LONGEST).is_some() {
        result.push('…');
    }
    result
}

/// The text without a byte-order mark; refused where it is too large.
fn prepared(text: &str) -> Result<&str> {
    if text.len() > LARGEST {
        return Err(Problem::new(
            Code::OutOfRange,
            "",
            format!("{} bytes", text.len()),
            format!("at most {LARGEST} bytes"),
            "a job file is a page of text: is this the right file?",
        )
        .into());
    }
    Ok(text.strip_prefix('\u{feff}').unwrap_or(text))
}

fn syntax(place: &str, message: &str, language: &str) -> Error {
    Problem::new(
        Code::Syntax,
        "",
        place,
        format!("well-formed {language}"),
        shown_message(message),
    )
    .into()
}

/// A parser's message on one line.
fn shown_message(message: &str) -> String {
    message.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Where each line of a text starts.
struct Lines<'a> {
    text: &'a str,
    starts: Vec<usize>,
}

impl Lines<'_> {
    fn of(text: &str) -> Lines<'_> {
        let after = text.match_indices('\n').map(|(at, _)| at + 1);
        Lines {
            text,
            starts: core::iter::once(0).chain(after).collect(),
        }
    }

    /// Number of the line at this byte, from 1.
    fn line(&self, at: usize) -> usize {
        self.starts.partition_point(|start| *start <= at)
    }

    /// Line and column of this byte, both from 1, columns counting characters.
    fn place(&self, at: usize) -> String {
        let line = self.line(at);
        let start = self
            .starts
            .get(line.saturating_sub(1))
            .copied()
            .unwrap_or(0);
        let column = 1 + self
            .text
            .get(start..at)
            .map_or(0, |before| before.chars().count());
        format!("line {line}, column {column}")
    }
}

fn toml_table(table: &DeTable<'_>, lines: &Lines<'_>) -> Value {
    let entries = table.iter().map(|(key, value)| Entry {
        key: key.get_ref().to_string(),
        line: Some(lines.line(key.span().start)),
        node: Node {
            value: toml_value(value.get_ref(), lines),
            line: Some(lines.line(value.span().start)),
        },
    });
    Value::Table(entries.collect())
}

fn toml_value(value: &DeValue<'_>, lines: &Lines<'_>) -> Value {
    match value {
        DeValue::String(text) => Value::Text(text.to_string()),
        DeValue::Integer(number) => {
            Value::Number(integer(number.as_str(), number.radix()), number.to_string())
        }
        DeValue::Float(number) => Value::Number(
            number.as_str().parse().unwrap_or(f64::NAN),
            number.to_string(),
        ),
        DeValue::Boolean(flag) => Value::Flag(*flag),
        DeValue::Datetime(date) => Value::Date(date.to_string()),
        DeValue::Array(list) => Value::List(
            list.iter()
                .map(|item| Node {
                    value: toml_value(item.get_ref(), lines),
                    line: Some(lines.line(item.span().start)),
                })
                .collect(),
        ),
        DeValue::Table(table) => toml_table(table, lines),
    }
}

/// A whole number as a double; not a number where it has more than 127 bits.
fn integer(digits: &str, radix: u32) -> f64 {
    if radix == 10 {
        digits.parse().unwrap_or(f64::NAN)
    } else {
        i128::from_str_radix(digits, radix).map_or(f64::NAN, |number| number as f64)
    }
}

fn toml_problem(error: &toml::de::Error, text: &str, lines: &Lines<'_>) -> Problem {
    let span = error.span().unwrap_or(0..0);
    let place = lines.place(span.start);
    if error.message() == "duplicate key" {
        let before = text.get(..span.start).unwrap_or_default();
        let key = text.get(span).unwrap_or_default();
        return Problem::new(
            Code::Duplicate,
            shown(&format!("{}{key}", section_prefix(before))),
            place,
            "each key and each section once",
            "leave one of them out",
        );
    }
    syntax(&place, error.message(), "TOML")
        .into_problems()
        .swap_remove(0)
}

/// The section in which a text breaks off, with a dot; empty in a section's own name.
fn section_prefix(before: &str) -> String {
    let mut lines = before.rsplit('\n');
    let own = lines.next().unwrap_or_default().trim_start();
    if own.starts_with('[') {
        return String::new();
    }
    lines
        .find_map(|line| line.trim_start().strip_prefix('[')?.split_once(']'))
        .map_or_else(String::new, |(name, _)| format!("{}.", name.trim()))
}

impl<'de> Deserialize<'de> for Node {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> core::result::Result<Node, D::Error> {
        deserializer.deserialize_any(Json).map(Value::without_line)
    }
}

/// Keeps what a general JSON value would drop: keys that are given twice.
struct Json;

impl<'de> Visitor<'de> for Json {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }

    fn visit_bool<E>(self, flag: bool) -> core::result::Result<Value, E> {
        Ok(Value::Flag(flag))
    }

    fn visit_i64<E>(self, number: i64) -> core::result::Result<Value, E> {
        Ok(Value::Number(number as f64, number.to_string()))
    }

    fn visit_u64<E>(self, number: u64) -> core::result::Result<Value, E> {
        Ok(Value::Number(number as f64, number.to_string()))
    }

    fn visit_f64<E>(self, number: f64) -> core::result::Result<Value, E> {
        Ok(Value::Number(number, number.to_string()))
    }

    fn visit_str<E>(self, text: &str) -> core::result::Result<Value, E> {
        Ok(Value::Text(text.to_owned()))
    }

    fn visit_unit<E>(self) -> core::result::Result<Value, E> {
        Ok(Value::Nothing)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> core::result::Result<Value, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = items.next_element()? {
            list.push(item);
        }
        Ok(Value::List(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> core::result::Result<Value, A::Error> {
        let mut entries = Vec::new();
        while let Some((key, node)) = map.next_entry()? {
            entries.push(Entry {
                key,
                line: None,
                node,
            });
        }
        Ok(Value::Table(entries))
    }
}
