//! `gullet study`: cuts over the rows of a table.

use super::{card, spreads};
use crate::answer::Answer;
use crate::arguments::{Flag, JSON, Spec, UNITS, read};
use crate::replace;
use crate::study::{self, Sink, Source, as_json, as_text};
use gullet::error::{Code, Error, Problem, Result};
use gullet::quantity::UnitSystem;
use gullet::study::{Base, Execution};
use gullet_table::{Columns, StudyOptions, StudyPlan, TextNumbers};

const SPEC: Spec = Spec {
    flags: &[
        JSON,
        UNITS,
        Flag::with_value("--job", "FILE"),
        Flag::with_value("--set", "NAME=VALUE").repeated(),
        Flag::with_value("--columns", "usual|all|NAME,..."),
        Flag::with_value("--pass-through", "NAME").repeated(),
        Flag::with_value("--overlay", "FILE").repeated(),
        Flag::with_value("--threads", "N"),
        Flag::with_value("--spread", "NAME=SPREAD").repeated(),
        Flag::with_value("--draws", "N"),
        Flag::with_value("--seed", "N"),
        Flag::with_value("--quantiles", "LIST"),
        Flag::switch("--summary"),
    ],
    operand: "IN and OUT",
    least: 2,
    most: 2,
};

/// Exit code of an interruption by the person.
const INTERRUPTED: i32 = 130;

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    let name = |place: usize| given.operands.get(place).map_or("-", String::as_str);
    let (from, to) = (name(0), name(1));
    let mut problems = Vec::new();
    let mut keep = |error: Error| problems.extend(error.into_problems());

    let overlays: Vec<&str> = given.values("--overlay").collect();
    let library = card::library(&overlays).map_err(&mut keep).ok();
    let job = match (given.value("--job"), &library) {
        (Some(file), Some(library)) => card::job_file(file, library).map_err(&mut keep).ok(),
        _ => None,
    };
    let constants = constants(given.values("--set")).map_err(&mut keep).ok();
    let threads = threads(given.value("--threads")).map_err(&mut keep).ok();
    let uncertainty = spreads::read(
        given.values("--spread"),
        given.value("--draws"),
        given.value("--seed"),
        given.value("--quantiles"),
    )
    .map_err(&mut keep)
    .ok()
    .flatten();
    if study::same_file(from, to) {
        keep(same(to).into());
    }
    if to == "-" && given.has("--summary") {
        keep(two_texts().into());
    }
    let form = Sink::form(to).map_err(&mut keep).ok();
    let source = Source::open(from).map_err(&mut keep).ok();
    let (Some(library), Some(constants), Some(threads), Some(form), Some(source)) =
        (library, constants, threads, form, source)
    else {
        return Error::unless_empty(problems, Answer::default());
    };

    let units = given.units().or(job.as_ref().map(|job| job.units));
    let options = StudyOptions {
        units: units.unwrap_or(UnitSystem::Metric),
        columns: Columns::parse(given.value("--columns").unwrap_or("usual")),
        text_numbers: match (source.is_text(), form) {
            (false, _) => TextNumbers::Refused,
            (true, study::Form::Csv) => TextNumbers::Kept,
            (true, study::Form::Parquet) => TextNumbers::Replaced,
        },
        pass_through: given.values("--pass-through").map(str::to_owned).collect(),
        uncertainty,
        ..StudyOptions::default()
    };
    let base = job.as_ref().map(Base::of_job);
    let plan = StudyPlan::new(source.schema(), &constants, base, &library, &options)
        .map_err(&mut keep)
        .ok();
    let Some(plan) = plan.filter(|_| problems.is_empty()) else {
        return Error::unless_empty(problems, Answer::default());
    };

    // Where no handler can be set, an interruption leaves its temporary file to the next run.
    let _ = ctrlc::set_handler(|| replace::abandon(INTERRUPTED));
    let mut sink = Sink::open(to, form, plan.schema())?;
    let outcome = study::run(&plan, source, &mut sink, threads)?;
    sink.commit()?;
    for note in &outcome.notes {
        eprintln!(
            "note: {}",
            note.escape_debug()
                .collect::<String>()
                .replace("\\\"", "\"")
        );
    }
    if outcome.more > 0 {
        eprintln!("note: {} more", outcome.more);
    }
    Ok(match (given.has("--summary"), given.has("--json")) {
        (true, true) => Answer::json(&as_json(&outcome, &plan)),
        (true, false) => Answer::text(as_text(&outcome, &plan)),
        _ => Answer::default(),
    })
}

fn constants<'a>(words: impl Iterator<Item = &'a str>) -> Result<Vec<(String, String)>> {
    let mut problems = Vec::new();
    let mut pairs = Vec::new();
    for word in words {
        match word.split_once('=') {
            Some((name, value)) => pairs.push((name.trim().to_owned(), value.trim().to_owned())),
            None => problems.push(Problem::new(
                Code::Syntax,
                "--set",
                format!("\"{word}\""),
                "NAME=VALUE",
                "write it such as --set axial_depth='1/4 in'",
            )),
        }
    }
    Error::unless_empty(problems, pairs)
}

fn threads(text: Option<&str>) -> Result<usize> {
    let Some(text) = text else {
        return Ok(Execution::default().threads());
    };
    match text.parse::<usize>() {
        Ok(threads @ 1..=1024) => Ok(threads),
        _ => Err(Problem::new(
            Code::OutOfRange,
            "--threads",
            text,
            "1 to 1024",
            "give the number of threads that compute, or leave it out to use every processor",
        )
        .into()),
    }
}

fn same(to: &str) -> Problem {
    Problem::new(
        Code::Duplicate,
        "OUT",
        to,
        "another file than IN",
        "a study reads its rows while it writes: give another name",
    )
}

fn two_texts() -> Problem {
    Problem::new(
        Code::Inconsistent,
        "--summary",
        "with - for OUT",
        "one text on standard output",
        "write the table to a file, or drop --summary",
    )
}
