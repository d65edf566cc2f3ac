//! `gullet card`: the set-up card of a job.

use crate::answer::Answer;
use crate::arguments::{Flag, Spec, UNITS, read};
use crate::files;
use gullet::error::{Code, Error, Problem, Result};
use gullet::plan::{Card, Job};
use gullet::table::{Library, Overlay};

const FORMATS: &[&str] = &["text", "json", "html"];

const SPEC: Spec = Spec {
    flags: &[
        Flag::choice("--format", FORMATS),
        Flag::with_value("--output", "FILE"),
        Flag::with_value("--overlay", "FILE").repeated(),
        Flag::switch("--steps"),
        UNITS,
    ],
    operand: "JOB",
    least: 1,
    most: 1,
};

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    let name = given.operands.first().map_or("-", String::as_str);
    let output = given.value("--output");
    let format = given
        .value("--format")
        .unwrap_or_else(|| format_of(output.unwrap_or_default()));
    if given.has("--steps") && format != "html" {
        return Err(Problem::new(
            Code::Inconsistent,
            "--steps",
            format!("--format {format}"),
            "--format html",
            "drop --steps: text and JSON carry the worked steps anyway",
        )
        .into());
    }
    let overlays: Vec<&str> = given.values("--overlay").collect();
    let (text, library) = inputs(name, &overlays)?;
    let mut job = job(name, &text, &library)?;
    if let Some(units) = given.units() {
        job.units = units;
    }
    let card = Card::new(job, &library)?;
    let text = match format {
        "json" => format!("{:#}\n", card.json()),
        "html" if given.has("--steps") => card.html_with_steps(),
        "html" => card.html(),
        _ => card.text(),
    };
    match output {
        Some(file) => files::write(file, &text).map(|()| Answer::default()),
        None => Ok(Answer::text(text)),
    }
    .map_err(Error::from)
}

/// The job's text and the tables under their overlays; the problems of both at once.
fn inputs(job: &str, overlays: &[&str]) -> Result<(String, Library)> {
    let mut problems = Vec::new();
    let text = files::read(job)
        .map_err(|problem| problems.push(problem))
        .ok();
    let library = library(overlays)
        .map_err(|error| problems.extend(error.into_problems()))
        .ok();
    match (text, library) {
        (Some(text), Some(library)) => Ok((text, library)),
        _ => Error::unless_empty(problems, (String::new(), Library::builtin().clone())),
    }
}

/// The built-in tables with a shop's own files laid over them.
pub fn library(files: &[&str]) -> Result<Library> {
    let mut problems = Vec::new();
    let mut overlays = Vec::new();
    for name in files {
        match files::read_bytes(name) {
            Ok(bytes) => match Overlay::from_bytes(name, &bytes) {
                Ok(overlay) => overlays.push(overlay),
                Err(error) => problems.extend(error.into_problems()),
            },
            Err(problem) => problems.push(problem),
        }
    }
    match Library::builtin().with_overlay(&overlays) {
        Ok(library) => Error::unless_empty(problems, library),
        Err(error) => {
            problems.extend(error.into_problems());
            Error::unless_empty(problems, Library::builtin().clone())
        }
    }
}

/// The job of a file.
pub fn job_file(name: &str, library: &Library) -> Result<Job> {
    job(name, &files::read(name)?, library)
}

/// A job in TOML, or in JSON where the name or the first character says so.
fn job(name: &str, text: &str, library: &Library) -> Result<Job> {
    let in_json = match name {
        "-" => text.trim_start().starts_with('{'),
        _ => files::has_ending(name, "json"),
    };
    if in_json {
        Job::from_json(text, library)
    } else {
        Job::from_toml(text, library)
    }
}

/// The format that the name of an output asks for.
pub fn format_of(output: &str) -> &'static str {
    match () {
        () if files::has_ending(output, "json") => "json",
        () if files::has_ending(output, "html") || files::has_ending(output, "htm") => "html",
        () => "text",
    }
}
