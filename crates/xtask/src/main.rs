//! The one command for every gate: `cargo xtask test`; and `cargo xtask render` for the page alone.
#![forbid(unsafe_code)]

mod counts;
mod dependencies;
mod gates;
mod process;
mod render;

use std::process::ExitCode;

const USAGE: &str =
    "cargo xtask test     run every gate: form, lints, build, tests, examples, docs, size, page
cargo xtask render   print the card of every job to PNG and PDF in a real browser
";

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let done = match words.as_slice() {
        ["test"] => gates::run_all(),
        ["render"] => gates::run_render(),
        ["help" | "--help"] => {
            print!("{USAGE}");
            true
        }
        _ => {
            eprint!("{USAGE}");
            return ExitCode::from(2);
        }
    };
    if done {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    }
}
