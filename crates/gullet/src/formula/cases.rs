//! Worked examples as data: read, run, compared with what the source prints.
//!
//! A file is CSV with the columns [`COLUMNS`]; the last one, `status`, may be left out. An example that is missed stays in its file, marked
//! with the reason in the column `status`; a mark on an example that passes is stale and is told.

use super::describe::split_arguments;
use super::{Formula, find};
use crate::error::{Code, Error, Problem};
use crate::quantity::{self, Quantity};
use core::fmt;
use std::collections::HashMap;

/// The columns of a file of worked examples, in order.
pub const COLUMNS: [&str; 9] = [
    "id",
    "formula",
    "arguments",
    "expected",
    "rtol",
    "source",
    "provenance",
    "note",
    "status",
];

/// How the expected value of an example is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Provenance {
    /// The source itself, or a file that reproduces it, was read.
    Seen,
    /// From memory; the source was not opened.
    Memory,
    /// A mathematical identity or own arithmetic.
    Identity,
    /// Common practice of the trade, without a source.
    CommonPractice,
}

impl Provenance {
    const ALL: [(&'static str, Provenance); 4] = [
        ("seen", Provenance::Seen),
        ("memory", Provenance::Memory),
        ("identity", Provenance::Identity),
        ("common practice", Provenance::CommonPractice),
    ];
}

/// A worked example of a formula.
#[derive(Clone)]
pub struct Case {
    /// File it stands in.
    pub file: String,
    /// Line of the file it starts on.
    pub line: u64,
    /// Identifier, unique in its file.
    pub id: String,
    /// The formula it is an example of.
    pub formula: &'static Formula,
    /// Arguments as text, `name=value; …`.
    pub arguments: String,
    /// Result as the source prints it, with its unit.
    pub expected: String,
    /// Relative tolerance that the printed digits allow.
    pub relative_tolerance: f64,
    /// Where it comes from.
    pub source: String,
    /// How the expected value is known.
    pub provenance: Provenance,
    /// Remarks: intermediates, roundings of the source.
    pub note: String,
    /// Why it is missed, where it is known to be.
    pub missed: Option<String>,
    values: Vec<f64>,
    expected_si: f64,
}

/// What became of an example.
#[derive(Debug, Clone, PartialEq)]
pub enum Outcome {
    /// The value agrees within the tolerance.
    Passed,
    /// The value does not agree.
    Missed,
    /// The formula refused the arguments.
    Refused(Error),
}

/// An example, run.
#[derive(Debug, Clone, PartialEq)]
pub struct Verdict {
    /// What became of it.
    pub outcome: Outcome,
    /// The computed value, unless the formula refused.
    pub computed: Option<Quantity>,
    /// The expected value.
    pub expected: Quantity,
    /// `|computed - expected|/|expected|`; where zero is expected, `|computed|` in SI units.
    pub relative_deviation: Option<f64>,
    /// The tolerance it was held against.
    pub relative_tolerance: f64,
    /// Whether the example is marked as missed.
    pub marked: bool,
}

impl Verdict {
    /// Whether the example passed.
    pub fn passed(&self) -> bool {
        self.outcome == Outcome::Passed
    }

    /// Whether the example is marked as missed although it passes.
    pub fn stale_mark(&self) -> bool {
        self.passed() && self.marked
    }

    /// Whether the example is as its file says: it passes unmarked or is missed and marked.
    pub fn in_order(&self) -> bool {
        self.passed() != self.marked
    }
}

impl fmt::Display for Verdict {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match &self.outcome {
            Outcome::Passed => write!(f, "passed")?,
            Outcome::Missed => write!(f, "missed")?,
            Outcome::Refused(error) => write!(f, "refused: {error}")?,
        }
        if let (Some(computed), Some(deviation)) = (self.computed, self.relative_deviation) {
            write!(
                f,
                ": {computed} against {}, relative deviation {deviation:.3e} of {:.3e}",
                self.expected, self.relative_tolerance
            )?;
        }
        match (self.passed(), self.marked) {
            (true, true) => write!(f, "; stale mark: it is marked as missed"),
            (false, true) => write!(f, "; marked"),
            (false, false) => write!(f, "; not marked"),
            (true, false) => Ok(()),
        }
    }
}

impl Case {
    /// Evaluates the formula over the arguments and compares with the expected value.
    pub fn run(&self) -> Verdict {
        let quantity = |si| Quantity {
            kind: self.formula.result,
            si,
        };
        let (outcome, computed) = match self.formula.call(&self.values) {
            Ok(si) => (Outcome::Passed, Some(si)),
            Err(error) => (Outcome::Refused(error), None),
        };
        let scale = if self.expected_si == 0.0 {
            1.0
        } else {
            self.expected_si.abs()
        };
        let deviation = computed.map(|si| (si - self.expected_si).abs() / scale);
        let outcome = match deviation {
            Some(deviation) if deviation > self.relative_tolerance => Outcome::Missed,
            _ => outcome,
        };
        Verdict {
            outcome,
            computed: computed.map(quantity),
            expected: quantity(self.expected_si),
            relative_deviation: deviation,
            relative_tolerance: self.relative_tolerance,
            marked: self.missed.is_some(),
        }
    }
}

/// Reads a file of worked examples: the good rows, and every problem of the others.
///
/// A problem names its place as `file:line:column`.
///
/// ```
/// use gullet::formula::cases::read_cases;
///
/// let text = "id,formula,arguments,expected,rtol,source,provenance,note,status\n\
///     one,standard_time,normal_time=8 min; allowance=15 %,9.2 min,1e-12,identity,identity,,\n\
///     two,standard_time,normal_time=8 min; allowance=15 %,9.2 min,none,identity,identity,,\n";
/// let (cases, problems) = read_cases("own.csv", text);
/// assert!(cases[0].run().passed());
/// assert_eq!(problems[0].parameter, "own.csv:3:rtol");
/// ```
pub fn read_cases(file_name: &str, text: &str) -> (Vec<Case>, Vec<Problem>) {
    let mut cases = Vec::new();
    let mut problems = Vec::new();
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .from_reader(text.as_bytes());
    let mut lines_of_ids: HashMap<String, u64> = HashMap::new();
    let mut headed = false;
    let mut with_status = true;
    for record in reader.records() {
        let record = match record {
            Ok(record) => record,
            Err(error) => {
                let line = error.position().map_or(0, csv::Position::line);
                problems.push(Problem::new(
                    Code::Syntax,
                    format!("{file_name}:{line}"),
                    "",
                    "a row of comma-separated values in UTF-8",
                    error.to_string(),
                ));
                continue;
            }
        };
        let line = record.position().map_or(0, csv::Position::line);
        let mut cells: Vec<&str> = record.iter().map(str::trim).collect();
        if !headed {
            headed = true;
            with_status = cells.len() >= COLUMNS.len();
            if !with_status {
                cells.push("status");
            }
            if cells != COLUMNS {
                problems.push(Problem::new(
                    Code::BadRow,
                    format!("{file_name}:{line}"),
                    cells.join(","),
                    COLUMNS.join(","),
                    "name the columns in the first row",
                ));
                break;
            }
            continue;
        }
        if !with_status {
            cells.push("");
        }
        let row = Row {
            file_name,
            line,
            cells,
        };
        match row.case() {
            Ok(case) => match lines_of_ids.get(&case.id) {
                Some(first) => problems.push(row.problem(
                    Code::Duplicate,
                    "id",
                    &case.id,
                    "an identifier that is unique in the file",
                    &format!("line {first} has the same"),
                )),
                None => {
                    lines_of_ids.insert(case.id.clone(), line);
                    cases.push(case);
                }
            },
            Err(found) => problems.extend(found),
        }
    }
    if !headed {
        problems.push(Problem::new(
            Code::BadRow,
            file_name,
            "",
            COLUMNS.join(","),
            "name the columns in the first row",
        ));
    }
    (cases, problems)
}

struct Row<'a> {
    file_name: &'a str,
    line: u64,
    cells: Vec<&'a str>,
}

impl Row<'_> {
    fn place(&self, column: &str) -> String {
        format!("{}:{}:{column}", self.file_name, self.line)
    }

    fn problem(
        &self,
        code: Code,
        column: &str,
        value: &str,
        admissible: &str,
        remedy: &str,
    ) -> Problem {
        let value: String = value.chars().take(80).collect();
        Problem::new(
            code,
            self.place(column),
            format!("\"{value}\""),
            admissible,
            remedy,
        )
    }

    fn case(&self) -> Result<Case, Vec<Problem>> {
        let [
            id,
            formula,
            arguments,
            expected,
            rtol,
            source,
            provenance,
            note,
            status,
        ] = self.cells[..]
        else {
            return Err(vec![Problem::new(
                Code::BadRow,
                format!("{}:{}", self.file_name, self.line),
                format!("{} cells", self.cells.len()),
                format!("{} cells", COLUMNS.len()),
                "quote cells that hold a comma; leave empty cells in place",
            )]);
        };
        let mut problems = Vec::new();
        for (column, cell) in [("id", id), ("source", source)] {
            if cell.is_empty() {
                problems.push(self.problem(Code::Missing, column, cell, "text", "fill the cell"));
            }
        }
        let found = find(formula)
            .map_err(|error| problems.extend(self.within("formula", error)))
            .ok();
        let values = match (found, split_arguments(arguments)) {
            (Some(formula), Ok(given)) => formula
                .read_arguments(&given)
                .map_err(|error| problems.extend(self.within("arguments", error)))
                .ok(),
            (_, Err(error)) => {
                problems.extend(self.within("arguments", error));
                None
            }
            (None, Ok(_)) => None,
        };
        let expected_si = found.and_then(|formula| {
            quantity::parse(formula.result, expected)
                .map_err(|error| problems.extend(self.within("expected", error)))
                .ok()
        });
        let relative_tolerance = rtol
            .parse()
            .ok()
            .filter(|rtol: &f64| (0.0..1.0).contains(rtol));
        if relative_tolerance.is_none() {
            problems.push(self.problem(
                Code::NumberUnreadable,
                "rtol",
                rtol,
                "a number, at least 0 and below 1",
                "give the tolerance that the printed digits allow",
            ));
        }
        let known = Provenance::ALL.iter().find(|(name, _)| *name == provenance);
        if known.is_none() {
            let names = Provenance::ALL.map(|(name, _)| name).join(", ");
            problems.push(self.problem(
                Code::UnknownName,
                "provenance",
                provenance,
                &names,
                "say how the expected value is known",
            ));
        }
        let missed = match status.strip_prefix("missed:").map(str::trim) {
            Some(reason) if !reason.is_empty() => Some(reason.to_owned()),
            _ if status.is_empty() => None,
            _ => {
                problems.push(self.problem(
                    Code::BadRow,
                    "status",
                    status,
                    "empty, or missed: and the reason",
                    "say why the example is missed",
                ));
                None
            }
        };
        match (found, values, expected_si, relative_tolerance, known) {
            (
                Some(formula),
                Some(values),
                Some(expected_si),
                Some(relative_tolerance),
                Some((_, provenance)),
            ) if problems.is_empty() => Ok(Case {
                file: self.file_name.to_owned(),
                line: self.line,
                id: id.to_owned(),
                formula,
                arguments: arguments.to_owned(),
                expected: expected.to_owned(),
                relative_tolerance,
                source: source.to_owned(),
                provenance: *provenance,
                note: note.to_owned(),
                missed,
                values,
                expected_si,
            }),
            _ => Err(problems),
        }
    }

    fn within(&self, column: &str, error: Error) -> Vec<Problem> {
        error
            .into_problems()
            .into_iter()
            .map(|mut problem| {
                // The place comes first; the argument within the cell stays named.
                let inner = core::mem::take(&mut problem.parameter);
                problem.parameter = self.place(column);
                if !inner.is_empty() && inner != column {
                    problem.parameter += &format!(":{inner}");
                }
                problem
            })
            .collect()
    }
}
