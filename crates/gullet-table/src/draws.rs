//! What is drawn, read from words.

use gullet::error::{Code, Error, Problem, Result};
use gullet::study::{Spread, Uncertain, Uncertainty};

/// What is drawn, as words of an option or of a command line. What is left out is as usual: 1000
/// draws, the seed 1, the quantiles 5, 50 and 95 %, rows numbered from 0.
///
/// ```
/// use gullet_table::DrawWords;
/// let words = DrawWords {
///     spreads: vec![("cutting_force", "0.9..1.15")],
///     quantiles: Some("0.05, 0.95"),
///     ..DrawWords::default()
/// };
/// let drawn = words.read("")?.unwrap();
/// assert_eq!((drawn.draws, drawn.quantiles), (1000, vec![0.05, 0.95]));
/// # Ok::<(), gullet::Error>(())
/// ```
#[derive(Debug, Clone, Default)]
pub struct DrawWords<'a> {
    /// Names of quantities with their spreads.
    pub spreads: Vec<(&'a str, &'a str)>,
    /// How many draws of a row.
    pub draws: Option<&'a str>,
    /// The seed.
    pub seed: Option<&'a str>,
    /// Quantiles with commas between.
    pub quantiles: Option<&'a str>,
    /// Number of the first row.
    pub first_row: Option<&'a str>,
}

impl DrawWords<'_> {
    /// What is drawn; none without a spread. Names of problems get `prefix` before them.
    ///
    /// # Errors
    /// `UnknownName` and `NumberUnreadable` for every word that means nothing, all in one error.
    pub fn read(&self, prefix: &str) -> Result<Option<Uncertainty>> {
        const DRAWS: usize = 1000;
        const QUANTILES: &[f64] = &[0.05, 0.5, 0.95];
        let mut problems = Vec::new();
        let mut keep = |error: Error| problems.extend(error.into_problems());
        let mut spreads = Vec::new();
        for (name, text) in &self.spreads {
            let quantity = Uncertain::named(name).map_err(&mut keep);
            let spread = Spread::parse(text).map_err(&mut keep);
            if let (Ok(quantity), Ok(spread)) = (quantity, spread) {
                spreads.push((quantity, spread));
            }
        }
        let named = |name: &str| format!("{prefix}{name}");
        let draws = number(named("draws"), self.draws, DRAWS).map_err(&mut keep);
        let seed = number(named("seed"), self.seed, 1).map_err(&mut keep);
        let first_row = number(named("first_row"), self.first_row, 0).map_err(&mut keep);
        let quantiles = match self.quantiles {
            None => Ok(QUANTILES.to_vec()),
            Some(list) => list
                .split(',')
                .map(|share| number(named("quantiles"), Some(share), 0.0))
                .collect::<Result<Vec<f64>>>()
                .map_err(&mut keep),
        };
        let drawn = match (draws, seed, quantiles, first_row) {
            (Ok(draws), Ok(seed), Ok(quantiles), Ok(first_row)) if !spreads.is_empty() => {
                Some(Uncertainty {
                    spreads,
                    draws,
                    seed,
                    quantiles,
                    first_row,
                })
            }
            _ => None,
        };
        Error::unless_empty(problems, drawn)
    }
}

fn number<T: std::str::FromStr>(name: String, text: Option<&str>, usual: T) -> Result<T> {
    let Some(text) = text else { return Ok(usual) };
    text.trim().parse().map_err(|_| {
        Problem::new(
            Code::NumberUnreadable,
            name,
            text,
            "a number",
            "write it without a unit, such as 1000 draws, the seed 1, the quantiles 0.05,0.5,0.95",
        )
        .into()
    })
}
