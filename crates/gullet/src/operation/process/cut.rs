//! What an operation returns.

use super::Process;
use crate::error::Warning;
use crate::operation::cut::{Adjustment, Band, Datum, Field, Limit, WorkedStep};
use crate::operation::limits::LimitName;
use crate::quantity::{Kind, Length, Quantity, UnitSystem};

/// A cut of any operation: settings, results, limits, worked steps, spread, doubts, cautions.
#[derive(Clone)]
pub struct ProcessCut {
    /// The operation.
    pub process: &'static Process,
    /// Units that its words are told in.
    pub units: UnitSystem,
    /// What it is done with: material, tool, machine, practice; label and text.
    pub setup: Vec<(&'static str, String)>,
    /// Every input with its SI value; a choice is the place of its word.
    pub inputs: Vec<f64>,
    /// What is set on the machine.
    pub settings: Vec<Field>,
    /// What follows from the settings.
    pub results: Vec<Field>,
    /// Depth after each pass, where the operation goes over the same way several times; else empty.
    pub depths: Vec<Length>,
    /// Every limit that was looked at.
    pub ledger: Vec<Limit>,
    /// The limit that holds the feed below the wanted one.
    pub held_by: Option<LimitName>,
    /// What was lowered, and why.
    pub adjustments: Vec<Adjustment>,
    /// The chain of formulas and choices, in order.
    pub steps: Vec<WorkedStep>,
    /// Low, start and high of what rests on the tables' ranges.
    pub spread: Vec<NamedBand>,
    /// Values that came from tables, machine or practice, with their sources.
    pub data: Vec<Datum>,
    /// Doubts.
    pub warnings: Vec<Warning>,
    /// What can hurt.
    pub cautions: Vec<&'static str>,
}

/// A value over the range of its tables.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NamedBand {
    /// What it is.
    pub name: &'static str,
    /// What it measures.
    pub kind: Kind,
    /// SI values.
    pub band: Band<f64>,
}

impl ProcessCut {
    /// A setting or a result by its name; none where there is no such value.
    pub fn value(&self, name: &str) -> Option<Quantity> {
        self.settings
            .iter()
            .chain(&self.results)
            .find(|field| field.name == name)
            .and_then(|field| {
                Some(Quantity {
                    kind: field.kind,
                    si: field.value?,
                })
            })
    }

    /// The limit nearest to its bound.
    pub fn binding(&self) -> Option<&Limit> {
        self.ledger.iter().find(|limit| limit.binding)
    }

    /// The ledger's limit of this name.
    pub fn limit(&self, name: &str) -> Option<&Limit> {
        self.ledger.iter().find(|limit| limit.name == name)
    }

    /// Inputs that were given or decided, as a person reads them.
    pub fn inputs_text(&self) -> Vec<(&'static str, String)> {
        self.process
            .inputs
            .iter()
            .zip(&self.inputs)
            .filter_map(|(input, value)| {
                let told = input.told(*value)?;
                Some((input.name(), input.text(told, self.units)))
            })
            .collect()
    }
}
