//! `gullet schema`: the form of a job file.

use crate::answer::Answer;
use crate::arguments::{JSON, Spec, read};
use gullet::error::Result;

const SPEC: Spec = Spec {
    // The answer is JSON anyway; the option says how problems are told.
    flags: &[JSON],
    operand: "nothing",
    least: 0,
    most: 0,
};

pub fn run(words: &[String]) -> Result<Answer> {
    read(&SPEC, words).map(|_| Answer::text(gullet::plan::job_schema()))
}
