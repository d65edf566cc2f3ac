//! `gullet card`: the set-up card of a job, or the cards of a route.

use crate::answer::Answer;
use crate::arguments::{Flag, Spec, UNITS, read};
use crate::files;
use gullet::error::{Code, Error, Problem, Result};
use gullet::plan::{Job, JobFile};
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
    let steps = given.has("--steps");
    let overlays: Vec<&str> = given.values("--overlay").collect();
    let (text, library) = inputs(name, &overlays)?;
    let mut file = if in_json(name, &text) {
        JobFile::from_json(&text, &library)?
    } else {
        JobFile::from_toml(&text, &library)?
    };
    if let Some(units) = given.units() {
        *file.units_mut() = units;
    }
    let route = !matches!(file, JobFile::Job(_));
    if steps && format != "html" && !(route && format == "text") {
        return Err(Problem::new(
            Code::Inconsistent,
            "--steps",
            format!("--format {format}"),
            "--format html",
            if route {
                "drop --steps: JSON carries the worked steps anyway"
            } else {
                "drop --steps: text and JSON carry the worked steps anyway"
            },
        )
        .into());
    }
    let card = file.card(&library)?;
    let text = match format {
        "json" => format!("{:#}\n", card.json()),
        "html" if steps => card.html_with_steps(),
        "html" => card.html(),
        _ if steps => card.text_with_steps(),
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
    let text = files::read(name)?;
    if in_json(name, &text) {
        Job::from_json(&text, library)
    } else {
        Job::from_toml(&text, library)
    }
}

/// Whether a file is in JSON, as its name or its first character says.
fn in_json(name: &str, text: &str) -> bool {
    match name {
        "-" => text.trim_start().starts_with('{'),
        _ => files::has_ending(name, "json"),
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
