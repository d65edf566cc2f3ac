//! What an operation is called, takes and gives: the one place from which every face is made.

use super::cut::ProcessCut;
use super::prepared::Prepared;
use crate::error::{Code, Error, Problem, Result, unknown_name};
use crate::formula::Parameter;
use crate::operation::LimitName;
use crate::operation::cut::Field;
use crate::quantity::{self, UnitSystem};
use crate::table::{Process as TableProcess, ToolMaterial};

/// An input of an operation: a quantity, or a choice between words.
#[derive(Clone, Copy)]
pub struct ProcessInput {
    /// Name, kind, meaning, default and admissible range. A choice is the place of its word, from 0.
    pub parameter: Parameter,
    /// The words to choose between; empty for a quantity.
    pub words: &'static [&'static str],
}

/// An example of an operation, with an invented part: what documentation shows and tests start from.
#[derive(Debug, Clone, Copy)]
pub struct ProcessExample {
    /// Material of the tables.
    pub material: &'static str,
    /// What the tool's edges are made of.
    pub tool: ToolMaterial,
    /// Built-in machine.
    pub machine: &'static str,
    /// Inputs as text: `name=value; ...`.
    pub inputs: &'static str,
}

/// An operation: what it takes, what it gives, and how it is computed.
#[derive(Clone, Copy)]
pub struct Process {
    /// Name, the same in every face.
    pub name: &'static str,
    /// Name as a heading.
    pub title: &'static str,
    /// What it does, one sentence.
    pub meaning: &'static str,
    /// Process of the tables that speed and feed are looked up for; none where it needs none.
    pub tables: Option<TableProcess>,
    /// Its inputs, in order; those that every operation takes come last.
    pub inputs: &'static [ProcessInput],
    /// What it gives beside the common settings.
    pub results: &'static [Field],
    /// Limits that it looks at beside those of spindle, feed, power and torque.
    pub limits: &'static [LimitName],
    /// An example.
    pub example: ProcessExample,
    /// Cautions beside those of every operation.
    pub cautions: &'static [&'static str],
    pub(crate) cut: fn(&Prepared) -> Result<ProcessCut>,
    pub(crate) study: crate::study::ProcessKernel,
}

impl ProcessInput {
    /// Name of the input.
    pub fn name(&self) -> &'static str {
        self.parameter.name
    }

    /// Whether it must be given.
    pub fn required(&self) -> bool {
        self.parameter.default.is_none()
    }

    /// The value that stands for "not given".
    fn stands_for_none(&self, value: f64) -> bool {
        self.parameter
            .default
            .is_some_and(|default| default.to_bits() == value.to_bits())
    }

    /// SI value, or the place of the word, from text.
    ///
    /// # Errors
    /// As [`quantity::parse`]; `UnknownName` for a word that is none of the choices.
    pub fn read(&self, text: &str) -> Result<f64> {
        let name = self.name();
        if self.words.is_empty() {
            return quantity::parse(self.parameter.kind, text).map_err(|error| error.within(name));
        }
        let wanted = text.trim();
        self.words
            .iter()
            .position(|word| word.eq_ignore_ascii_case(wanted))
            .map(|place| place as f64)
            .ok_or_else(|| unknown_name(name, text, self.words.iter().copied()).into())
    }

    /// A value as a person reads it.
    pub fn text(&self, value: f64, system: UnitSystem) -> String {
        if self.words.is_empty() {
            return quantity::format(self.parameter.kind, value, system);
        }
        self.words
            .get(value as usize)
            .map_or_else(String::new, |word| (*word).to_owned())
    }

    /// A value; none where it stands for "not given": one that is not finite, or a quantity's default
    /// of zero.
    pub fn told(&self, value: f64) -> Option<f64> {
        let nothing = value == 0.0 && self.words.is_empty() && self.stands_for_none(value);
        (value.is_finite() && !nothing).then_some(value)
    }

    /// The default as a person reads it; none where there is none, or it stands for "not given".
    pub fn default_text(&self, system: UnitSystem) -> Option<String> {
        let default = self.parameter.default?;
        self.told(default).map(|value| self.text(value, system))
    }

    /// What is admissible: the range in the names of the other inputs, or the words.
    pub fn admissible(&self) -> String {
        if self.words.is_empty() {
            self.parameter.range()
        } else {
            self.words.join(", ")
        }
    }

    /// What is wrong with a value among all values, if anything.
    pub(crate) fn problem(&self, value: f64, values: &[f64], units: UnitSystem) -> Option<Problem> {
        if self.stands_for_none(value) {
            return None;
        }
        if value.is_nan() && self.required() {
            return Some(Problem::new(
                Code::Missing,
                self.name(),
                "",
                self.parameter.admissible(values, units),
                format!("give {} ({})", self.name(), self.parameter.meaning),
            ));
        }
        self.parameter.problem(value, values, units)
    }

    /// The code of what is wrong with a value; none where it is admissible.
    pub(crate) fn fault(&self, value: f64, values: &[f64]) -> Option<Code> {
        if self.stands_for_none(value) {
            return None;
        }
        if value.is_nan() && self.required() {
            return Some(Code::Missing);
        }
        self.parameter.fault(value, values)
    }
}

impl Process {
    /// The input of this name.
    ///
    /// # Errors
    /// `UnknownName` with the nearest right one.
    pub fn input(&self, name: &str) -> Result<(usize, &ProcessInput)> {
        self.inputs
            .iter()
            .enumerate()
            .find(|(_, input)| input.name() == name)
            .ok_or_else(|| {
                unknown_name(
                    self.name,
                    name,
                    self.inputs.iter().map(|input| input.name()),
                )
                .into()
            })
    }

    /// The values with nothing given: defaults, and NaN where a value is required.
    pub fn defaults(&self) -> Vec<f64> {
        self.inputs
            .iter()
            .map(|input| input.parameter.default.unwrap_or(f64::NAN))
            .collect()
    }

    /// Every problem of a list of values.
    pub(crate) fn problems(&self, values: &[f64], units: UnitSystem) -> Vec<Problem> {
        self.inputs
            .iter()
            .zip(values)
            .filter_map(|(input, value)| input.problem(*value, values, units))
            .collect()
    }

    /// The code of the first value that is not admissible.
    pub(crate) fn first_fault(&self, values: &[f64]) -> Option<Code> {
        self.inputs
            .iter()
            .zip(values)
            .find_map(|(input, value)| input.fault(*value, values))
    }

    /// Settings and results, in the order in which a cut gives them.
    pub fn fields(&self) -> impl Iterator<Item = &'static Field> {
        super::settle::SETTINGS.iter().chain(self.results)
    }
}

impl core::fmt::Debug for Process {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.name)
    }
}

impl PartialEq for Process {
    fn eq(&self, other: &Process) -> bool {
        self.name == other.name
    }
}

/// Text of an input that is no choice of words, for tables of inputs.
pub(crate) fn kind_or_words(input: &ProcessInput) -> String {
    if input.words.is_empty() {
        input.parameter.kind.name().to_owned()
    } else {
        input.words.join(" | ")
    }
}

/// An error of an operation that does not exist.
pub(crate) fn unknown(name: &str) -> Error {
    unknown_name(
        "operation",
        name,
        super::ALL.iter().map(|process| process.name),
    )
    .into()
}
