//! Worked steps: a formula with numbers and units that a person can redo by hand.

use super::describe::Formula;
use crate::quantity::{self, UnitSystem};

/// Looks at each formula as an operation applies it.
pub trait Recorder {
    /// Called with the formula, its SI arguments and its SI result.
    fn record(&mut self, formula: &'static Formula, arguments: &[f64], result: f64);
}

/// Records nothing; costs nothing.
#[derive(Debug, Default, Clone, Copy)]
pub struct NoRecord;

impl Recorder for NoRecord {
    #[inline(always)]
    fn record(&mut self, _: &'static Formula, _: &[f64], _: f64) {}
}

/// One applied formula.
#[derive(Clone)]
pub struct Step {
    /// The formula.
    pub formula: &'static Formula,
    /// Its SI arguments.
    pub arguments: Vec<f64>,
    /// Its SI result.
    pub result: f64,
}

/// Keeps every step in order.
#[derive(Clone, Default)]
pub struct Steps(pub Vec<Step>);

impl Recorder for Steps {
    fn record(&mut self, formula: &'static Formula, arguments: &[f64], result: f64) {
        self.0.push(Step::new(formula, arguments, result));
    }
}

impl Step {
    /// A step of a formula over SI arguments.
    pub fn new(formula: &'static Formula, arguments: &[f64], result: f64) -> Step {
        Step {
            formula,
            arguments: arguments.to_vec(),
            result,
        }
    }

    /// The step in one line: equation, the same with numbers, result.
    pub fn text(&self, system: UnitSystem) -> String {
        format!(
            "{} = {}",
            self.formula.equation,
            quantity::format(self.formula.result, self.result, system)
        )
    }
}
