//! `gullet schema`: the form of a job file, a route file or the file of a part.

use crate::answer::Answer;
use crate::arguments::{JSON, Spec, read};
use gullet::error::{Result, unknown_name};

const SPEC: Spec = Spec {
    // The answer is JSON anyway; the option says how problems are told.
    flags: &[JSON],
    operand: "FILE-KIND",
    least: 0,
    most: 1,
};

const KINDS: &[&str] = &["job", "part", "route"];

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    match given.operands.first().map(String::as_str) {
        None | Some("job") => Ok(Answer::text(gullet::plan::job_schema())),
        Some("part") => Ok(Answer::text(gullet::plan::part_schema())),
        Some("route") => Ok(Answer::text(gullet::plan::route_schema())),
        Some(other) => Err(unknown_name("FILE-KIND", other, KINDS.iter().copied()).into()),
    }
}
