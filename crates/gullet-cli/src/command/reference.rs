//! `gullet reference`: every formula and operation on one page.

use crate::answer::Answer;
use crate::arguments::{Flag, Spec, read};
use crate::files;
use crate::reference;
use gullet::error::{Error, Result};

const SPEC: Spec = Spec {
    flags: &[
        Flag::choice("--format", &["html", "text"]),
        Flag::with_value("--output", "FILE"),
    ],
    operand: "",
    least: 0,
    most: 0,
};

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    let output = given.value("--output");
    let as_text = match given.value("--format") {
        Some(format) => format == "text",
        None => output.is_some_and(|name| !files::has_ending(name, "html")),
    };
    let page = if as_text {
        reference::text()
    } else {
        reference::html()
    };
    match output {
        Some(file) => files::write(file, &page)
            .map(|()| Answer::default())
            .map_err(Error::from),
        None => Ok(Answer::text(page)),
    }
}
