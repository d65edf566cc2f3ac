//! What a command answers, how problems are told, and the exit codes.

use gullet::error::{Code, Error, Problem};
use serde_json::json;
use std::io::Write;

/// A worked example is missed, or no plan keeps the limits.
pub const UNMET: u8 = 1;
/// The command line or the input is wrong.
pub const INPUT: u8 = 2;
/// A file cannot be read or written.
pub const FILE: u8 = 3;
/// The tables hold no value for what is asked.
pub const NO_DATA: u8 = 4;

/// The answer of a command: what it prints, and what went wrong beside.
#[derive(Debug, Default)]
pub struct Answer {
    /// For standard output.
    pub text: String,
    /// For standard error.
    pub problems: Vec<Problem>,
    /// Whether a check was missed, which is an answer and no problem of the input.
    pub missed: bool,
}

impl Answer {
    /// An answer in full.
    pub fn text(text: String) -> Answer {
        Answer {
            text,
            ..Answer::default()
        }
    }

    /// An answer as JSON, one document that ends in a line break.
    pub fn json(value: &serde_json::Value) -> Answer {
        Answer::text(format!("{value:#}\n"))
    }

    /// No answer but problems.
    pub fn failed(problems: Vec<Problem>) -> Answer {
        Answer {
            problems,
            ..Answer::default()
        }
    }

    /// The exit code.
    pub fn exit(&self) -> u8 {
        let codes: Vec<u8> = self
            .problems
            .iter()
            .map(|problem| exit_of(problem.code))
            .collect();
        // What the person has to see to first decides.
        [FILE, INPUT, NO_DATA, UNMET]
            .into_iter()
            .find(|code| codes.contains(code))
            .unwrap_or(if self.missed { UNMET } else { 0 })
    }
}

fn exit_of(code: Code) -> u8 {
    match code {
        Code::LimitExceeded | Code::NoPlan => UNMET,
        Code::File => FILE,
        Code::NoData => NO_DATA,
        _ => INPUT,
    }
}

/// The problems found before an error and those of the error, as one.
pub fn joined(mut problems: Vec<Problem>, error: Error) -> Error {
    problems.extend(error.clone().into_problems());
    Error::unless_empty(problems, ()).err().unwrap_or(error)
}

/// Tells problems on standard error: a line each, or one JSON document.
pub fn report(problems: &[Problem], as_json: bool) {
    if problems.is_empty() {
        return;
    }
    let text = if as_json {
        let errors: Vec<_> = problems.iter().map(error_json).collect();
        format!("{:#}\n", json!({ "errors": errors }))
    } else {
        problems.iter().map(line).collect()
    };
    // Where standard error is closed there is nobody left to tell; the exit code says it.
    let _ = std::io::stderr().lock().write_all(text.as_bytes());
}

fn error_json(problem: &Problem) -> serde_json::Value {
    json!({
        "code": problem.code.name(),
        "number": problem.code.number(),
        "parameter": problem.parameter,
        "value": problem.value,
        "admissible": problem.admissible,
        "remedy": problem.remedy,
    })
}

/// One line whatever the input held: control characters are shown as escapes.
fn line(problem: &Problem) -> String {
    let mut text = String::from("error: ");
    for c in problem.to_string().chars() {
        if c.is_control() {
            text.extend(c.escape_default());
        } else {
            text.push(c);
        }
    }
    text.push('\n');
    text
}
