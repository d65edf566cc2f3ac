//! What a study draws, from the command line.

use gullet::error::{Code, Error, Problem, Result};
use gullet::study::{Spread, Uncertain, Uncertainty};

/// Draws of a row where none are asked for.
const DRAWS: usize = 1000;

/// Quantiles where none are asked for.
const QUANTILES: &[f64] = &[0.05, 0.5, 0.95];

/// What is drawn; none without a spread.
pub fn read<'a>(
    spreads: impl Iterator<Item = &'a str>,
    draws: Option<&str>,
    seed: Option<&str>,
    quantiles: Option<&str>,
) -> Result<Option<Uncertainty>> {
    let mut problems = Vec::new();
    let mut keep = |error: Error| problems.extend(error.into_problems());
    let spreads: Vec<(Uncertain, Spread)> = spreads
        .filter_map(|word| spread(word).map_err(&mut keep).ok())
        .collect();
    let draws = number("--draws", draws, DRAWS).map_err(&mut keep);
    let seed = number("--seed", seed, 1).map_err(&mut keep);
    let quantiles = match quantiles {
        None => Ok(QUANTILES.to_vec()),
        Some(list) => list
            .split(',')
            .map(|share| number("--quantiles", Some(share.trim()), 0.0))
            .collect::<Result<Vec<f64>>>()
            .map_err(&mut keep),
    };
    let uncertainty = match (draws, seed, quantiles) {
        (Ok(draws), Ok(seed), Ok(quantiles)) if !spreads.is_empty() => Some(Uncertainty {
            spreads,
            draws,
            seed,
            quantiles,
            first_row: 0,
        }),
        _ => None,
    };
    Error::unless_empty(problems, uncertainty)
}

fn spread(word: &str) -> Result<(Uncertain, Spread)> {
    let (name, text) = word.split_once('=').ok_or_else(|| {
        Problem::new(
            Code::Syntax,
            "--spread",
            format!("\"{word}\""),
            "NAME=SPREAD",
            "write it such as --spread cutting_force=0.9..1.15",
        )
    })?;
    Ok((Uncertain::named(name.trim())?, Spread::parse(text)?))
}

fn number<T: std::str::FromStr>(flag: &str, text: Option<&str>, usual: T) -> Result<T> {
    let Some(text) = text else { return Ok(usual) };
    text.parse().map_err(|_| {
        Problem::new(
            Code::NumberUnreadable,
            flag,
            text,
            "a number",
            "write it without a unit, such as --draws 1000 --seed 1 --quantiles 0.05,0.5,0.95",
        )
        .into()
    })
}
