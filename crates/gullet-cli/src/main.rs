//! Command line of gullet.
#![forbid(unsafe_code)]

mod answer;
mod arguments;
mod command;
mod files;
mod help;
mod readings;
mod reference;
mod replace;
mod study;

use answer::{Answer, report};
use gullet::error::{Code, Problem, unknown_name};
use std::process::ExitCode;

fn main() -> ExitCode {
    let mut problems = Vec::new();
    let words: Vec<String> = std::env::args_os()
        .skip(1)
        .filter_map(|word| {
            word.into_string()
                .map_err(|word| {
                    problems.push(Problem::new(
                        Code::Syntax,
                        "argument",
                        word.to_string_lossy(),
                        "text in UTF-8",
                        "rename the file or retype the argument",
                    ));
                })
                .ok()
        })
        .collect();
    let json = arguments::asks_for_json(&words);
    let answer = if problems.is_empty() {
        dispatch(&words)
    } else {
        Answer::failed(problems)
    };
    match files::print(&answer.text) {
        Ok(files::Printed::Whole) => {}
        // Who reads has had enough, and will not be told that the rest failed.
        Ok(files::Printed::ReaderGone) => return ExitCode::SUCCESS,
        Err(problem) => {
            report(&[problem], json);
            return ExitCode::from(answer::FILE);
        }
    }
    report(&answer.problems, json);
    ExitCode::from(answer.exit())
}

fn dispatch(words: &[String]) -> Answer {
    let Some((name, rest)) = words.split_first() else {
        return Answer::failed(vec![Problem::new(
            Code::Missing,
            "command",
            "",
            help::names().collect::<Vec<_>>().join(", "),
            "give a command; gullet help explains them",
        )]);
    };
    match name.as_str() {
        "--help" | "-h" => return Answer::text(help::overview()),
        "--version" | "-V" => {
            return Answer::text(concat!("gullet ", env!("CARGO_PKG_VERSION"), "\n").to_owned());
        }
        _ => {}
    }
    if name.starts_with('-') {
        return Answer::failed(vec![unknown_name("option", name, ["--help", "--version"])]);
    }
    let options = rest.iter().take_while(|word| *word != "--");
    if options.clone().any(|word| word == "--help" || word == "-h")
        && let Some(text) = help::of(name)
    {
        return Answer::text(text);
    }
    command::run(name, rest).unwrap_or_else(|error| Answer::failed(error.into_problems()))
}
