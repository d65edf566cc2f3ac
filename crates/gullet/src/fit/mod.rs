//! A shop's own measurements: laws fitted to readings by least squares of logarithms.
//!
//! The life is what scatters, so its logarithm is regressed on those of speed, feed and depth, and
//! never the other way round. Limits rest on Student's distribution; data that cannot carry a law
//! are refused with the reason.

mod kienzle;
mod listings;
mod regression;
mod screen;
mod student;
mod taylor;

pub use kienzle::{KienzleFit, fit_kienzle};
pub use regression::{Coefficient, Regression};
pub use taylor::{PredictedLife, TaylorFit, fit_extended_taylor, fit_taylor};

use crate::quantity::{Length, Ratio, UnitSystem, si};
use crate::wear::WearCriterion;

/// What a fit is told besides its readings.
///
/// ```
/// let options = gullet::fit::FitOptions::default();
/// assert_eq!(options.confidence.value, 0.95);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct FitOptions {
    /// Confidence of every limit, two-sided; 0.5 to 0.999.
    pub confidence: Ratio,
    /// Feed that C of an extended law is for; the geometric mean of the readings without it. 1 mm
    /// gives the C of an equation in mm, 1 in that of one in inches.
    pub reference_feed: Option<Length>,
    /// Depth of cut that C is for; the geometric mean of the readings without it.
    pub reference_depth: Option<Length>,
    /// When the edges counted as worn.
    pub criterion: WearCriterion,
    /// Where the readings come from; becomes the source of what is fitted.
    pub source: String,
    /// Units that problems and doubts are told in.
    pub units: UnitSystem,
}

impl Default for FitOptions {
    fn default() -> FitOptions {
        FitOptions {
            confidence: si(0.95),
            reference_feed: None,
            reference_depth: None,
            criterion: WearCriterion::Unstated,
            source: "own readings".to_owned(),
            units: UnitSystem::Metric,
        }
    }
}

/// A fitted value with the limits of its confidence.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
#[non_exhaustive]
pub struct Estimate {
    /// The value, in SI units.
    pub value: f64,
    /// Lower limit.
    pub low: f64,
    /// Upper limit.
    pub high: f64,
}
