//! The pair k_c1.1 and m_c from readings of chip thickness and force per width.

use super::regression::{Regression, regress};
use super::screen::{Readings, doubts, screen, strong};
use super::{Estimate, FitOptions};
use crate::elementary::exp;
use crate::error::{Code, Error, Problem, Result, Warning, WarningCode};
use crate::formula::force::kc11_from_specific_force;
use crate::quantity::{Kind, Length, LineForce, Pressure, si};
use crate::table::KienzlePair;

const MILLIMETRE: f64 = 1e-3;
const NEWTON_PER_MILLIMETRE: f64 = 1e3;

/// Least quotient of the thickest and the thinnest chip.
const SPAN: f64 = 5.0;

/// The pair of the power law of specific cutting force, fitted to readings.
///
/// The regression is one of ln(F/b in N/mm) on ln(h in mm); its slope is 1 - m_c. Main value and
/// exponent are strongly correlated, since k_c1.1 lies outside of most readings: the two belong
/// together, and are neither averaged with nor exchanged for those of other pairs.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct KienzleFit {
    /// The pair with its source.
    pub pair: KienzlePair,
    /// k_c1.1 in Pa.
    pub kc11: Estimate,
    /// m_c.
    pub chip_exponent: Estimate,
    /// Correlation of ln k_c1.1 and m_c.
    pub pair_correlation: f64,
    /// Geometric mean of the chip thicknesses.
    pub mean_chip_thickness: Length,
    /// Specific cutting force in Pa at that chip: what the readings tell best, and what fits of
    /// different readings are compared by.
    pub specific_force_at_mean: Estimate,
    /// Thinnest and thickest chip of the readings.
    pub chip_thickness: (Length, Length),
    /// The regression behind it.
    pub regression: Regression,
    /// Doubts about the fit.
    pub warnings: Vec<Warning>,
}

/// Fits the pair to readings: a chip thickness and the cutting force per width of chip each.
///
/// ```
/// use gullet::fit::{FitOptions, fit_kienzle};
/// use gullet::quantity::si;
/// let chips = [0.05, 0.05, 0.1, 0.2, 0.3, 0.3].map(|h| si(h * 1e-3));
/// let forces = [190.0, 196.0, 325.0, 541.0, 731.0, 742.0].map(|f| si(f * 1e3));
/// let fit = fit_kienzle(&chips, &forces, &FitOptions::default())?;
/// assert!((fit.pair.exponent.value - 0.25).abs() < 0.01);
/// # Ok::<(), gullet::Error>(())
/// ```
///
/// # Errors
/// [`Code::OutOfRange`] for readings that are not above zero, too few of them, chips whose thickness
/// spans less than a factor of 5, a correlation below 0.9, an exponent outside 0 to 1;
/// [`Code::Inconsistent`] for lists of different length.
pub fn fit_kienzle(
    chip_thickness: &[Length],
    force_per_width: &[LineForce],
    options: &FitOptions,
) -> Result<KienzleFit> {
    let chips: Vec<f64> = chip_thickness.iter().map(|reading| reading.value).collect();
    let forces: Vec<f64> = force_per_width
        .iter()
        .map(|reading| reading.value)
        .collect();
    let chip = Readings::new("chip_thickness", Kind::Length, &chips, MILLIMETRE);
    let force = Readings::new(
        "force_per_width",
        Kind::LineForce,
        &forces,
        NEWTON_PER_MILLIMETRE,
    )
    .distinct(0);
    screen(&[&chip, &force], options)?;
    let (low, high) = chip.range();
    if high < SPAN * low * (1.0 - 1e-9) {
        return Err(Problem::new(
            Code::OutOfRange,
            "chip_thickness",
            format!(
                "{} to {}",
                chip.text(low, options.units),
                chip.text(high, options.units)
            ),
            format!("a thickest chip of {SPAN} times the thinnest at least"),
            "add readings of thinner and thicker chips: k_c1.1 would be a guess far from them",
        )
        .into());
    }
    let regression = regress(
        vec![chip.variable()],
        &force.logarithms(),
        options.confidence.value,
    )?;
    let slope = regression.slope(0);
    let exponent = 1.0 - slope;
    let mut problems: Vec<Problem> = strong(&regression).into_iter().collect();
    if !(0.0..1.0).contains(&exponent) {
        problems.push(Problem::new(
            Code::OutOfRange,
            "chip_exponent",
            format!("m_c = {exponent:.3}"),
            "from 0 to below 1",
            "the specific force falls as the chip grows: check that the forces are per width of chip, and sharp edges were used",
        ));
    }
    Error::unless_empty(problems, ())?;
    let (t, mean) = (
        regression.t,
        regression.means.first().copied().unwrap_or(0.0),
    );
    let mean_chip = exp(mean) * MILLIMETRE;
    let at_mean = exp(regression.centre) * NEWTON_PER_MILLIMETRE / mean_chip;
    let kc11: Pressure = kc11_from_specific_force(si(at_mean), si(exponent), si(mean_chip))?;
    let around = |value: f64, error: f64| Estimate {
        value,
        low: value * exp(-t * error),
        high: value * exp(t * error),
    };
    let of_slope = regression.error_of(0.0, &[1.0]);
    let of_main = regression.error_of(1.0, &[-mean]);
    let mut warnings = doubts(&regression);
    let chip_exponent = Estimate {
        value: exponent,
        low: exponent - t * of_slope,
        high: exponent + t * of_slope,
    };
    if chip_exponent.low < 0.0 {
        warnings.push(Warning::new(
            WarningCode::OutsideValidity,
            format!(
                "the lower limit of m_c, {:.2}, is below 0",
                chip_exponent.low
            ),
        ));
    }
    Ok(KienzleFit {
        pair: KienzlePair {
            kc11,
            exponent: si(exponent),
            source: options.source.clone(),
        },
        kc11: around(kc11.value, of_main),
        chip_exponent,
        // Of ln k_c1.1 = centre - slope mean and m_c = 1 - slope.
        pair_correlation: if of_main > 0.0 {
            mean * of_slope / of_main
        } else {
            0.0
        },
        mean_chip_thickness: si(mean_chip),
        specific_force_at_mean: around(at_mean, regression.error_of(1.0, &[0.0])),
        chip_thickness: (si(low), si(high)),
        regression,
        warnings,
    })
}
