//! What a study draws, from the command line.

use gullet::error::{Code, Error, Problem, Result};
use gullet::study::Uncertainty;
use gullet_table::DrawWords;

/// What is drawn; none without a spread.
pub fn read<'a>(
    spreads: impl Iterator<Item = &'a str>,
    draws: Option<&'a str>,
    seed: Option<&'a str>,
    quantiles: Option<&'a str>,
) -> Result<Option<Uncertainty>> {
    let mut problems = Vec::new();
    let mut words = DrawWords {
        draws,
        seed,
        quantiles,
        ..DrawWords::default()
    };
    for word in spreads {
        match word.split_once('=') {
            Some((name, spread)) => words.spreads.push((name.trim(), spread)),
            None => problems.push(Problem::new(
                Code::Syntax,
                "--spread",
                format!("\"{word}\""),
                "NAME=SPREAD",
                "write it such as --spread cutting_force=0.9..1.15",
            )),
        }
    }
    let drawn = words.read("--").unwrap_or_else(|error| {
        problems.extend(error.into_problems());
        None
    });
    Error::unless_empty(problems, drawn)
}
