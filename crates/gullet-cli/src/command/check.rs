//! `gullet check`: worked examples run against what their sources print.

use crate::answer::Answer;
use crate::arguments::{Flag, JSON, Spec, read};
use crate::files;
use gullet::error::{Code, Problem, Result};
use gullet::formula::cases::{Case, Verdict, read_cases};
use gullet_reference_data::CASES;
use serde_json::{Value, json};

const SPEC: Spec = Spec {
    flags: &[JSON, Flag::switch("--builtin"), Flag::switch("--verbose")],
    operand: "CASES.csv",
    least: 0,
    most: usize::MAX,
};

#[derive(Default)]
struct Tally {
    passed: usize,
    failed: usize,
    marked: usize,
    told: Vec<(Case, Verdict)>,
    problems: Vec<Problem>,
}

impl Tally {
    fn add(&mut self, file: &str, text: &str, verbose: bool) {
        let (cases, problems) = read_cases(file, text);
        self.problems.extend(problems);
        for case in cases {
            let verdict = case.run();
            match (verdict.in_order(), verdict.passed()) {
                (true, true) => self.passed += 1,
                (true, false) => self.marked += 1,
                // Missed without a mark, or passed in spite of one: the file is wrong somewhere.
                (false, _) => self.failed += 1,
            }
            if verbose || !verdict.passed() || !verdict.in_order() {
                self.told.push((case, verdict));
            }
        }
    }
}

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    if given.operands.is_empty() && !given.has("--builtin") {
        return Err(Problem::new(
            Code::Missing,
            "CASES.csv",
            "",
            "files of worked examples, or --builtin",
            "give a file, or --builtin for the embedded examples",
        )
        .into());
    }
    let mut tally = Tally::default();
    let verbose = given.has("--verbose");
    if given.has("--builtin") {
        for (file, text) in CASES {
            tally.add(file, text, verbose);
        }
    }
    for file in &given.operands {
        match files::read(file) {
            Ok(text) => tally.add(file, &text, verbose),
            Err(problem) => tally.problems.push(problem),
        }
    }
    let text = if given.has("--json") {
        format!("{:#}\n", as_json(&tally))
    } else {
        as_text(&tally)
    };
    Ok(Answer {
        text,
        missed: tally.failed > 0,
        problems: tally.problems,
    })
}

fn as_text(tally: &Tally) -> String {
    let mut text = String::new();
    for (case, verdict) in &tally.told {
        text += &format!(
            "{}:{} {} {}: {verdict}",
            case.file, case.line, case.id, case.formula.name
        );
        if let Some(reason) = &case.missed {
            text += &format!(" ({reason})");
        }
        text.push('\n');
    }
    text += &format!(
        "{} passed, {} failed, {} marked\n",
        tally.passed, tally.failed, tally.marked
    );
    text
}

fn as_json(tally: &Tally) -> Value {
    let rows: Vec<Value> = tally
        .told
        .iter()
        .map(|(case, verdict)| {
            json!({
                "file": case.file,
                "line": case.line,
                "id": case.id,
                "formula": case.formula.name,
                "passed": verdict.passed(),
                "in_order": verdict.in_order(),
                "computed_si": verdict.computed.map(|value| value.si),
                "expected_si": verdict.expected.si,
                "relative_deviation": verdict.relative_deviation,
                "rtol": verdict.relative_tolerance,
                "marked": case.missed,
                "text": verdict.to_string(),
            })
        })
        .collect();
    json!({
        "passed": tally.passed,
        "failed": tally.failed,
        "marked": tally.marked,
        "unread": tally.problems.len(),
        "rows": rows,
    })
}
