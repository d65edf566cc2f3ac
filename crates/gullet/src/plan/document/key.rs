//! Reads the value of one key as text, quantity, ratio, count, flag, word or list.

use super::field::{Field, Shape};
use super::node::{Node, Value, shown};
use crate::error::{Code, Problem, unknown_name};
use crate::quantity::{self, Kind};

/// Longest free text, in characters.
pub(super) const LONGEST_TEXT: usize = 200;
/// Most entries of a list.
pub(super) const LONGEST_LIST: usize = 100;

/// What the reading of sections and keys reports to.
pub(super) trait Collect {
    /// Takes a problem.
    fn add(&mut self, problem: Problem);
    /// Takes what is assumed.
    fn state(&mut self, assumption: String);
}

/// A key with the value of its example, as TOML writes it.
pub(super) fn example(field: &Field) -> String {
    let value = match field.shape {
        Shape::Text | Shape::Quantity(_) | Shape::Choice(_) => format!("\"{}\"", field.example),
        Shape::Ratio if field.example.contains('%') => format!("\"{}\"", field.example),
        Shape::Ratio | Shape::Count | Shape::Flag => field.example.to_owned(),
        Shape::List(_) | Shape::Words(_) => {
            let items: Vec<String> = items(field).map(|item| format!("\"{item}\"")).collect();
            format!("[{}]", items.join(", "))
        }
    };
    // Inch marks would end the text early; single quotes hold them.
    let value = if field.example.contains('"') {
        value.replace("\"", "'")
    } else {
        value
    };
    format!("{} = {value}", field.key)
}

/// The items of the example of a list.
pub(super) fn items(field: &Field) -> impl Iterator<Item = &'static str> {
    field.example.split(", ")
}

/// The value of one key being read.
pub(in crate::plan) struct KeyReader<'r> {
    pub(super) field: &'static Field,
    pub(super) path: &'r str,
    pub(super) reader: &'r mut dyn Collect,
}

impl KeyReader<'_> {
    fn report(
        &mut self,
        code: Code,
        value: impl Into<String>,
        admissible: impl Into<String>,
        remedy: impl Into<String>,
    ) {
        self.reader
            .add(Problem::new(code, self.path, value, admissible, remedy));
    }

    fn wrong_type(&mut self, node: &Node, wanted: &str) {
        let write = example(self.field);
        self.report(
            Code::WrongType,
            node.value.shown(),
            wanted,
            format!("{} is not {wanted}; write {write}", node.value.describe()),
        );
    }

    /// Free text.
    pub(super) fn text(&mut self, node: &Node) -> Option<String> {
        let Value::Text(text) = &node.value else {
            self.wrong_type(node, "text");
            return None;
        };
        let fits = !text.trim().is_empty()
            && text.chars().count() <= LONGEST_TEXT
            && !text.chars().any(char::is_control);
        if !fits {
            self.report(
                Code::OutOfRange,
                node.value.shown(),
                format!("1 to {LONGEST_TEXT} characters on one line"),
                "shorten it, without line breaks and control characters",
            );
        }
        fits.then(|| text.clone())
    }

    /// The SI value of text with a unit.
    pub(super) fn quantity(&mut self, node: &Node, kind: Kind) -> Option<f64> {
        match &node.value {
            Value::Text(text) => self.parse(kind, text, ""),
            Value::Number(_, text) => {
                self.bare_number(kind, text, "");
                None
            }
            _ => {
                self.wrong_type(node, "text of a number with a unit");
                None
            }
        }
    }

    /// Reads text with a unit; `item` names the place in a list.
    fn parse(&mut self, kind: Kind, text: &str, item: &str) -> Option<f64> {
        match quantity::parse(kind, text) {
            Ok(value) => Some(value),
            Err(error) => {
                for mut problem in error.into_problems() {
                    self.path.clone_into(&mut problem.parameter);
                    problem.value = format!("{item}\"{}\"", shown(text));
                    self.reader.add(problem);
                }
                None
            }
        }
    }

    /// A bare number where text with a unit belongs.
    fn bare_number(&mut self, kind: Kind, text: &str, item: &str) {
        let units = quantity::parse(kind, text)
            .err()
            .map_or_else(String::new, |error| error.first().admissible.clone());
        let write = example(self.field);
        self.report(
            Code::UnitMissing,
            format!("{item}{}", shown(text)),
            units,
            format!("write the number with its unit, in quotes, such as {write}"),
        );
    }

    /// A number, or text of a number with or without %.
    pub(super) fn ratio(&mut self, node: &Node) -> Option<f64> {
        match &node.value {
            Value::Text(text) => self.parse(Kind::Ratio, text, ""),
            Value::Number(number, text) => self.finite(*number, text),
            _ => {
                self.wrong_type(node, "a number");
                None
            }
        }
    }

    fn finite(&mut self, number: f64, text: &str) -> Option<f64> {
        if !number.is_finite() {
            self.report(
                Code::NotFinite,
                shown(text),
                "a finite number",
                format!("write {}", example(self.field)),
            );
        }
        number.is_finite().then_some(number)
    }

    /// A whole number from 1.
    pub(super) fn count(&mut self, node: &Node) -> Option<u32> {
        let (number, text) = match &node.value {
            Value::Number(number, text) => (self.finite(*number, text)?, shown(text)),
            Value::Text(text) => (self.parse(Kind::Count, text, "")?, shown(text)),
            _ => {
                self.wrong_type(node, "a whole number");
                return None;
            }
        };
        let range = "a whole number, at least 1";
        if number.fract() != 0.0 {
            let write = format!("write {}", example(self.field));
            self.report(Code::NotWhole, text, range, write);
            return None;
        }
        if !(1.0..=f64::from(u32::MAX)).contains(&number) {
            let write = format!("write {}", example(self.field));
            self.report(Code::OutOfRange, text, range, write);
            return None;
        }
        Some(number as u32)
    }

    /// true or false.
    pub(super) fn flag(&mut self, node: &Node) -> Option<bool> {
        if let Value::Flag(flag) = node.value {
            return Some(flag);
        }
        self.wrong_type(node, "true or false");
        None
    }

    /// Place of the word in the list.
    pub(super) fn choice(&mut self, node: &Node, words: &'static [&'static str]) -> Option<usize> {
        let Value::Text(text) = &node.value else {
            self.wrong_type(node, "one of the known words");
            return None;
        };
        let found = words.iter().position(|word| word == text);
        if found.is_none() {
            let mut problem = unknown_name(self.path, text, words.iter().copied());
            problem.value = node.value.shown();
            self.reader.add(problem);
        }
        found
    }

    /// The SI values of a list; none where one of them has a problem.
    pub(super) fn list(&mut self, node: &Node, kind: Kind) -> Option<Vec<f64>> {
        let Value::List(items) = &node.value else {
            self.wrong_type(node, "a list");
            return None;
        };
        if items.len() > LONGEST_LIST {
            self.report(
                Code::OutOfRange,
                format!("{} entries", items.len()),
                format!("at most {LONGEST_LIST} entries"),
                "shorten the list",
            );
            return None;
        }
        let mut values = Vec::with_capacity(items.len());
        for (index, item) in items.iter().enumerate() {
            let place = format!("entry {}: ", index + 1);
            match &item.value {
                Value::Text(text) => values.extend(self.parse(kind, text, &place)),
                Value::Number(_, text) => self.bare_number(kind, text, &place),
                _ => self.wrong_type(item, "text of a number with a unit"),
            }
        }
        (values.len() == items.len()).then_some(values)
    }

    /// Places of the words of a list; none where one of them has a problem.
    pub(super) fn words(
        &mut self,
        node: &Node,
        words: &'static [&'static str],
    ) -> Option<Vec<usize>> {
        let Value::List(items) = &node.value else {
            self.wrong_type(node, "a list");
            return None;
        };
        let mut places = Vec::with_capacity(items.len().min(words.len()));
        let mut sound = true;
        for item in items {
            match self.choice(item, words) {
                Some(place) if places.contains(&place) => {
                    self.report(
                        Code::Duplicate,
                        item.value.shown(),
                        "each word once",
                        "leave one of them out",
                    );
                    sound = false;
                }
                Some(place) => places.push(place),
                None => sound = false,
            }
        }
        sound.then_some(places)
    }
}
