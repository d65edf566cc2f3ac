//! What a file gives, key by key, and the problems found with it.

use super::super::document::Node;
use crate::error::{Code, Error, Problem, unknown_name};
use crate::quantity::{self, Kind, UnitSystem};

/// Problems gathered while reading.
#[derive(Default)]
pub(super) struct Problems(pub(super) Vec<Problem>);

impl Problems {
    /// A problem of a value that is given.
    pub(super) fn add(
        &mut self,
        code: Code,
        path: &str,
        node: &Node,
        admissible: &str,
        remedy: &str,
    ) {
        let value = node.as_given();
        self.told(Problem::new(code, path, value, admissible, remedy), node);
    }

    /// The problems of an error, each with the line of the value.
    pub(super) fn error(&mut self, error: Error, node: &Node) {
        for problem in error.into_problems() {
            self.told(problem, node);
        }
    }

    /// A problem with the line of the value.
    pub(super) fn told(&mut self, mut problem: Problem, node: &Node) {
        problem.remedy += &node.place();
        self.0.push(problem);
    }

    /// A key that does not exist.
    pub(super) fn unknown<'a>(
        &mut self,
        path: &str,
        key: &str,
        node: &Node,
        known: impl IntoIterator<Item = &'a str>,
    ) {
        self.told(unknown_name(path, key, known), node);
    }

    /// A key or a section that is left out.
    pub(super) fn missing(&mut self, path: impl Into<String>, admissible: &str, remedy: &str) {
        self.0
            .push(Problem::new(Code::Missing, path, "", admissible, remedy));
    }

    /// A key that is given a second time, which only JSON lets through.
    pub(super) fn twice(&mut self, path: &str, node: &Node) {
        self.add(
            Code::Duplicate,
            path,
            node,
            "each key and each section once",
            "leave one of them out",
        );
    }

    /// Text of the shop's own, where it is given.
    pub(super) fn words(&mut self, path: &str, node: Option<&Node>) -> Option<String> {
        let node = node?;
        match node.as_text() {
            Some(text) if !text.trim().is_empty() => Some(text.to_owned()),
            Some(_) => {
                let remedy = "write a few words, or leave it out";
                self.add(Code::OutOfRange, path, node, "text, not empty", remedy);
                None
            }
            None => {
                let remedy = "write words in quotes";
                self.add(Code::WrongType, path, node, "text", remedy);
                None
            }
        }
    }

    /// A number of a kind: text with its unit, or the bare number of a kind without one.
    pub(super) fn plain(&mut self, kind: Kind, path: &str, node: &Node) -> Option<f64> {
        let bare = matches!(kind, Kind::Count | Kind::Ratio | Kind::Money);
        match (node.as_text(), node.as_number()) {
            (Some(text), _) => match quantity::parse(kind, text) {
                Ok(value) => Some(value),
                Err(error) => {
                    self.error(error.within(path), node);
                    None
                }
            },
            (None, Some(value)) if bare && value.is_finite() => Some(value),
            (None, Some(_)) if bare => {
                let remedy = "write a number";
                self.add(Code::NotFinite, path, node, "a finite number", remedy);
                None
            }
            (None, Some(_)) => {
                let remedy = "write the number with its unit in quotes, such as \"8.5 mm\"";
                self.add(Code::UnitMissing, path, node, kind.name(), remedy);
                None
            }
            (None, None) => {
                let remedy = if bare {
                    "write a number"
                } else {
                    "write the number with its unit in quotes, such as \"8.5 mm\""
                };
                self.add(Code::WrongType, path, node, kind.name(), remedy);
                None
            }
        }
    }

    /// A number of a kind up to the largest that makes sense; a count is whole and at least 1, any
    /// other number at least 0.
    pub(super) fn number(
        &mut self,
        kind: Kind,
        path: &str,
        node: &Node,
        largest: f64,
    ) -> Option<f64> {
        let value = self.plain(kind, path, node)?;
        let counts = kind == Kind::Count;
        let least = if counts { 1.0 } else { 0.0 };
        let code = if !(least..=largest).contains(&value) {
            Code::OutOfRange
        } else if counts && value.fract() != 0.0 {
            Code::NotWhole
        } else {
            return Some(value);
        };
        let show = |si: f64| quantity::format(kind, si, UnitSystem::Metric);
        let admissible = format!(
            "{}{} to {}",
            if counts { "a whole number, " } else { "" },
            show(least),
            show(largest)
        );
        self.add(code, path, node, &admissible, "correct the number");
        None
    }
}
