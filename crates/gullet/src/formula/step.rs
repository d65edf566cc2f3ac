//! Worked steps: a formula with numbers and units that a person can redo by hand.

use super::describe::Formula;
use super::equation::{self, Case, Clause};
use super::substitute::{Known, latex_quantity, latex_symbol};
use crate::quantity::{self, Kind, UnitSystem};

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

    fn clauses(&self) -> Vec<Clause> {
        let symbols: Vec<&str> = self
            .formula
            .parameters
            .iter()
            .map(|parameter| parameter.symbol)
            .collect();
        equation::read(self.formula.equation, &symbols)
    }

    fn stands_for_angle(&self, index: usize, known: &Known, case: &Case) -> bool {
        match index {
            0 => self.formula.result == Kind::Angle,
            _ => known.is_angle(&case.node),
        }
    }

    fn result_text(&self, system: UnitSystem) -> String {
        quantity::format_worked(self.formula.result, self.result, system)
    }

    /// The SI value that the written equation gives for these arguments; none where a clause is in words.
    pub fn value_of_equation(&self) -> Option<f64> {
        let clauses = self.clauses();
        let known = Known::new(self, &clauses, UnitSystem::Metric);
        let main = clauses.first()?;
        let lookup = |name: &str| known.value(name);
        main.case(&lookup)?.node.value(&lookup)
    }

    /// The step in one line: equation, the same with numbers, result, then the clauses it rests on.
    ///
    /// ```
    /// use gullet::quantity::UnitSystem;
    /// let step = gullet::explain("handwheel_turns", "travel=11 mm; travel_per_turn=5 mm")?;
    /// assert_eq!(step.text(UnitSystem::Metric), "N = s/L = 11 mm/5 mm = 2.2 turns");
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn text(&self, system: UnitSystem) -> String {
        let clauses = self.clauses();
        let known = Known::new(self, &clauses, system);
        let mut text = String::new();
        for (index, clause) in clauses.iter().enumerate() {
            text += match index {
                0 => "",
                1 => "; with ",
                _ => "; ",
            };
            let lookup = |name: &str| known.value(name);
            let Some(case) = clause.case(&lookup) else {
                text += &clause.text;
                if index == 0 {
                    text += &format!(" = {}", self.result_text(system));
                }
                continue;
            };
            let mut parts = vec![clause.left.clone(), case.text.clone()];
            let angle = self.stands_for_angle(index, &known, case);
            let substituted = known.text(&case.node, angle);
            if substituted != case.text {
                parts.push(substituted);
            }
            let value = if index == 0 {
                Some(self.result_text(system))
            } else {
                known.shown(&clause.symbol)
            };
            let mut solved = String::new();
            if let Some(value) = value
                && parts.last() != Some(&value)
            {
                if clause.is_solved() {
                    solved = format!(", {} = {value}", clause.symbol);
                } else {
                    parts.push(value);
                }
            }
            text += &parts.join(" = ");
            text += &solved;
            if let Some(when) = &case.when {
                text += &format!(" ({})", when.text);
            }
        }
        text
    }

    /// The step in LaTeX for a display: equation, the same with numbers, the clauses it rests on.
    pub fn latex(&self, system: UnitSystem) -> String {
        let clauses = self.clauses();
        let known = Known::new(self, &clauses, system);
        let mut lines = vec![self.formula.latex.to_owned()];
        for (index, clause) in clauses.iter().enumerate() {
            let lookup = |name: &str| known.value(name);
            let substituted = clause
                .case(&lookup)
                .map(|case| known.latex(&case.node, self.stands_for_angle(index, &known, case)));
            let (symbol, value) = if index == 0 {
                let value = latex_quantity(&self.result_text(system));
                (self.formula.symbol_latex.to_owned(), Some(value))
            } else {
                let value = known.shown(&clause.symbol);
                (
                    latex_symbol(&clause.symbol),
                    value.map(|text| latex_quantity(&text)),
                )
            };
            let mut parts: Vec<String> = Vec::new();
            parts.extend(substituted);
            if value.as_ref() != parts.last() {
                parts.extend(value);
            }
            if clause.is_solved() {
                // The value is the symbol's, not that of the function of it on the left.
                parts.drain(..parts.len().saturating_sub(1));
            }
            if !parts.is_empty() {
                lines.push(format!("{symbol} = {}", parts.join(" = ")));
            }
        }
        let body = lines
            .iter()
            .map(|line| format!("& {line}"))
            .collect::<Vec<_>>()
            .join(" \\\\\n");
        format!("\\begin{{aligned}}\n{body}\n\\end{{aligned}}")
    }
}

/// Everything said about a formula, for a listing.
pub fn description(formula: &Formula) -> String {
    let mut text = format!(
        "{} ({}): {}\n",
        formula.name, formula.symbol, formula.meaning
    );
    text += &format!("  topic      {}\n", formula.topic);
    text += &format!("  equation   {}\n", formula.equation);
    text += "  arguments\n";
    for parameter in formula.parameters {
        text += &format!(
            "    {}  {} [{:?}] {}; {}",
            parameter.name,
            parameter.symbol,
            parameter.kind,
            parameter.meaning,
            parameter.range()
        );
        if let Some(default) = parameter.default {
            let default = quantity::format(parameter.kind, default, UnitSystem::Metric);
            text += &format!("; default {default}");
        }
        text.push('\n');
    }
    for condition in formula.conditions {
        text += &format!("    {}\n", condition.text);
    }
    text += &format!("  result     {} [{:?}]\n", formula.symbol, formula.result);
    text += &format!("  valid for  {}\n", formula.validity);
    text += &format!("  source     {}\n", formula.source);
    text += &format!(
        "  example    {} => {} ({})\n",
        formula.example.arguments, formula.example.expected, formula.example.source
    );
    text
}

#[cfg(test)]
#[path = "step_tests.rs"]
mod tests;
