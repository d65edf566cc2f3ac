//! What is not known exactly, and how it is drawn.

use super::rows::Input;
use crate::elementary;
use crate::error::{Code, Error, Problem, Result};
use crate::quantity::Kind;

/// A number of a cut that is known only within a spread.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Uncertain {
    /// The specific cutting force of every pair.
    CuttingForce,
    /// The practice's factor for a worn edge.
    WearFactor,
    /// The feed per tooth that is really fed.
    Feed,
    /// The spindle speed that is really turned.
    Speed,
    /// An input of the study.
    Input(Input),
}

impl Uncertain {
    /// The quantity of this name: `cutting_force`, `wear_factor`, `feed`, `speed` or that of an input.
    ///
    /// # Errors
    /// `UnknownName`; `WrongType` for a count, which is known exactly or not at all.
    pub fn named(name: &str) -> Result<Uncertain> {
        const OWN: &[(&str, Uncertain)] = &[
            ("cutting_force", Uncertain::CuttingForce),
            ("wear_factor", Uncertain::WearFactor),
            ("feed", Uncertain::Feed),
            ("speed", Uncertain::Speed),
        ];
        if let Some((_, own)) = OWN.iter().find(|(own, _)| *own == name) {
            return Ok(*own);
        }
        let inputs = Input::ALL.iter().filter(|input| !input.optional());
        match inputs.clone().find(|input| input.name() == name) {
            Some(input) if input.kind() == Kind::Count => Err(Problem::new(
                Code::WrongType,
                name,
                "",
                "a measured quantity",
                "a count has no spread: give it as it is",
            )
            .into()),
            Some(input) => Ok(Uncertain::Input(*input)),
            None => Err(crate::error::unknown_name(
                "uncertain quantity",
                name,
                OWN.iter().map(|(own, _)| *own).chain(
                    inputs
                        .filter(|input| input.kind() != Kind::Count)
                        .map(|input| input.name()),
                ),
            )
            .into()),
        }
    }

    /// Name, as [`Uncertain::named`] takes it.
    pub fn name(self) -> &'static str {
        match self {
            Uncertain::CuttingForce => "cutting_force",
            Uncertain::WearFactor => "wear_factor",
            Uncertain::Feed => "feed",
            Uncertain::Speed => "speed",
            Uncertain::Input(input) => input.name(),
        }
    }
}

/// How a factor on a quantity is spread about 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spread {
    /// Every factor between two ends is as likely as another.
    Uniform {
        /// Smallest factor.
        low: f64,
        /// Largest factor.
        high: f64,
    },
    /// Likeliest at one factor, falling straight to both ends.
    Triangular {
        /// Smallest factor.
        low: f64,
        /// Likeliest factor.
        mode: f64,
        /// Largest factor.
        high: f64,
    },
    /// The logarithm of the factor is normal about 0; for small spreads a normal one about 1.
    LogNormal {
        /// Standard deviation of the logarithm.
        sigma: f64,
    },
}

impl Spread {
    /// Reads a spread: `0.9..1.1` is uniform between two factors, `0.9..1..1.2` triangular with its
    /// mode between them, `sigma 0.1` log-normal with that standard deviation.
    ///
    /// # Errors
    /// `NumberUnreadable` for other text.
    ///
    /// ```
    /// use gullet::study::Spread;
    /// assert_eq!(Spread::parse("0.9..1.1")?, Spread::Uniform { low: 0.9, high: 1.1 });
    /// assert_eq!(Spread::parse("sigma 0.1")?, Spread::LogNormal { sigma: 0.1 });
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn parse(text: &str) -> Result<Spread> {
        let number = |text: &str| text.trim().parse::<f64>().ok();
        let read = || {
            if let Some(sigma) = text.trim().strip_prefix("sigma") {
                return Some(Spread::LogNormal {
                    sigma: number(sigma)?,
                });
            }
            let numbers: Option<Vec<f64>> = text.split("..").map(number).collect();
            match numbers?.as_slice() {
                [low, high] => Some(Spread::Uniform {
                    low: *low,
                    high: *high,
                }),
                [low, mode, high] => Some(Spread::Triangular {
                    low: *low,
                    mode: *mode,
                    high: *high,
                }),
                _ => None,
            }
        };
        read().ok_or_else(|| {
            Problem::new(
                Code::NumberUnreadable,
                "spread",
                text,
                "0.9..1.1, 0.9..1..1.2 or sigma 0.1",
                "give factors on the quantity: two ends, two ends with the likeliest between, or the standard deviation of the factor's logarithm",
            )
            .into()
        })
    }

    fn problem(self, name: &str) -> Option<Problem> {
        let above = |x: f64| x > 0.0 && x < f64::INFINITY;
        let good = match self {
            Spread::Uniform { low, high } => above(low) && above(high) && low <= high,
            Spread::Triangular { low, mode, high } => {
                above(low) && above(high) && low <= mode && mode <= high
            }
            Spread::LogNormal { sigma } => (0.0..=2.0).contains(&sigma),
        };
        (!good).then(|| {
            Problem::new(
                Code::OutOfRange,
                name,
                format!("{self:?}"),
                "factors above 0 in rising order; a standard deviation from 0 to 2",
                "give factors about 1: 0.9 to 1.1 is a spread of 10 % to either side",
            )
        })
    }

    /// The factor of two numbers drawn evenly between 0 and 1, ends left out.
    #[inline(always)]
    pub(super) fn factor(self, first: f64, second: f64) -> f64 {
        match self {
            Spread::Uniform { low, high } => low + (high - low) * first,
            Spread::Triangular { low, mode, high } => {
                let width = high - low;
                let rise = mode - low;
                if first * width < rise {
                    low + (first * width * rise).sqrt()
                } else {
                    high - ((1.0 - first) * width * (high - mode)).sqrt()
                }
            }
            Spread::LogNormal { sigma } => {
                let radius = (-2.0 * elementary::ln(first)).sqrt();
                let turn = 2.0 * core::f64::consts::PI * second;
                elementary::exp(sigma * radius * elementary::cos(turn))
            }
        }
    }
}

/// What is drawn, how often, and which quantiles are told.
///
/// The settings stay as they were found for the row: a machine is set once and then meets material
/// that is harder or softer. Every draw of a row depends on the seed, the place of the row and the
/// number of the draw alone, so that neither threads nor blocks change it.
#[derive(Debug, Clone, PartialEq)]
pub struct Uncertainty {
    /// The quantities with their spreads, independent of one another.
    pub spreads: Vec<(Uncertain, Spread)>,
    /// Draws of every row.
    pub draws: usize,
    /// The seed.
    pub seed: u64,
    /// The quantiles, from 0 (the smallest draw) to 1 (the largest).
    pub quantiles: Vec<f64>,
    /// Number of the first row, where rows come in batches.
    pub first_row: u64,
}

/// Most draws of a row.
const MOST_DRAWS: usize = 1_000_000;

impl Uncertainty {
    /// Every problem of spreads, draws and quantiles.
    ///
    /// # Errors
    /// `OutOfRange` and `Duplicate`, all in one error.
    pub fn check(&self) -> Result<()> {
        let mut problems: Vec<Problem> = self
            .spreads
            .iter()
            .filter_map(|(uncertain, spread)| spread.problem(uncertain.name()))
            .collect();
        for (index, (uncertain, _)) in self.spreads.iter().enumerate() {
            if self
                .spreads
                .iter()
                .take(index)
                .any(|(other, _)| other == uncertain)
            {
                problems.push(Problem::new(
                    Code::Duplicate,
                    uncertain.name(),
                    "",
                    "each quantity once",
                    "give one spread",
                ));
            }
        }
        if self.draws == 0 || self.draws > MOST_DRAWS {
            problems.push(Problem::new(
                Code::OutOfRange,
                "draws",
                self.draws.to_string(),
                format!("from 1 to {MOST_DRAWS}"),
                "1000 draws tell a quantile of 5 % to about 1 % of the range",
            ));
        }
        for quantile in &self.quantiles {
            if !(0.0..=1.0).contains(quantile) {
                problems.push(Problem::new(
                    Code::OutOfRange,
                    "quantiles",
                    quantile.to_string(),
                    "from 0 to 1",
                    "write 0.05 for the value that one draw of twenty stays below",
                ));
            }
        }
        Error::unless_empty(problems, ())
    }

    /// The factors of one draw of a row on each quantity.
    #[inline(always)]
    pub(super) fn factor(&self, place: usize, spread: Spread, row: u64, draw: u64) -> f64 {
        let stream = mixed(self.seed ^ mixed(row.wrapping_add(self.first_row)))
            .wrapping_add((place as u64) << 32);
        spread.factor(
            even(mixed(stream.wrapping_add(2 * draw))),
            even(mixed(stream.wrapping_add(2 * draw + 1))),
        )
    }
}

/// Mixes the bits of a number, so that neighbours share nothing: the finalizer of SplitMix64
/// (Steele, Lea, Flood, "Fast splittable pseudorandom number generators", 2014; constants from memory).
#[inline(always)]
fn mixed(x: u64) -> u64 {
    let z = x.wrapping_add(0x9e37_79b9_7f4a_7c15);
    let z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    let z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}

/// A number between 0 and 1, neither of them.
#[inline(always)]
fn even(bits: u64) -> f64 {
    ((bits >> 12) as f64 + 0.5) / (1u64 << 52) as f64
}

/// The quantiles of every row.
#[derive(Debug, Clone, Default)]
pub struct Quantiles {
    /// For each wanted result, in their order, a column for each quantile, in theirs; NaN for a row
    /// without any good draw.
    pub columns: Vec<Vec<f64>>,
    /// Draws of a row that left what can be computed, such as a width beyond the cutter's diameter.
    pub left_out: Vec<u32>,
}

/// The value below which this share of sorted draws lies, straight between neighbours.
pub(super) fn quantile(sorted: &[f64], share: f64) -> f64 {
    let Some(last) = sorted.len().checked_sub(1) else {
        return f64::NAN;
    };
    let place = share * last as f64;
    let below = (place.floor() as usize).min(last);
    let above = (below + 1).min(last);
    match (sorted.get(below), sorted.get(above)) {
        (Some(a), Some(b)) => a + (b - a) * (place - below as f64),
        _ => f64::NAN,
    }
}
