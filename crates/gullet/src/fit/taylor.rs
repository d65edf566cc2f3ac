//! Taylor's law, plain and extended, from readings of tool life.

use super::regression::{Regression, regress};
use super::screen::{Readings, doubts, screen, strong};
use super::{Estimate, FitOptions};
use crate::elementary::{exp, ln};
use crate::error::{Code, Error, Problem, Result, Warning, WarningCode};
use crate::formula::wear::{
    exponent_from_power, mean_from_median_life, taylor_exponent_from_power, taylor_speed_from_one,
};
use crate::quantity::{Kind, Length, Time, Velocity, si};
use crate::table::{LifeRow, Provenance, ToolMaterial};
use crate::wear::{Influence, ToolLife};

const MINUTE: f64 = 60.0;
const METRE_PER_MINUTE: f64 = 1.0 / 60.0;
const MILLIMETRE: f64 = 1e-3;

/// Largest exponent that a row of the tables may have.
const LARGEST_EXPONENT: f64 = 0.999;

/// Taylor's law fitted to readings.
///
/// The regression is one of ln(T/1 min) on ln(v/1 m/min), ln(f/1 mm) and ln(d/1 mm); its slopes are
/// the negative powers of `T = K v^(-p) f^(-q) d^(-r)`. The law has the exponents of
/// `v T^n (f/f_0)^a (d/d_0)^b = C`: n = 1/p, a = q/p, b = r/p.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct TaylorFit {
    /// The law, with the ranges of the readings and their source. It gives median lives: half of all
    /// edges last longer.
    pub law: ToolLife,
    /// n; its limits are the reciprocals of those of p.
    pub exponent: Estimate,
    /// C in m/s.
    pub taylor_speed: Estimate,
    /// a.
    pub feed_exponent: Option<Estimate>,
    /// b.
    pub depth_exponent: Option<Estimate>,
    /// The regression behind it.
    pub regression: Regression,
    /// Doubts about the fit.
    pub warnings: Vec<Warning>,
}

/// The life that a fit predicts.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct PredictedLife {
    /// Half of all edges last longer.
    pub median: Time,
    /// The mean of all edges, longer than the median by the scatter.
    pub mean: Time,
    /// Lower limit for one edge, at the confidence of the fit.
    pub low: Time,
    /// Upper limit for one edge.
    pub high: Time,
    /// Doubts: a speed, feed or depth beyond the readings.
    pub warnings: Vec<Warning>,
}

/// Fits `v T^n = C` to readings: a cutting speed and the life of an edge each.
///
/// ```
/// use gullet::fit::{FitOptions, fit_taylor};
/// use gullet::quantity::si;
/// let speeds = [100.0, 100.0, 150.0, 150.0, 200.0, 200.0].map(|v| si(v / 60.0));
/// let lives = [61.0, 55.0, 12.5, 13.4, 4.4, 4.1].map(|t| si(t * 60.0));
/// let fit = fit_taylor(&speeds, &lives, &FitOptions::default())?;
/// assert!(fit.exponent.low < fit.exponent.value && fit.exponent.value < fit.exponent.high);
/// let half = fit.law.life(si(120.0 / 60.0), None, None)?;
/// assert!(half.time < fit.predict(si(120.0 / 60.0), None, None)?.mean);
/// # Ok::<(), gullet::Error>(())
/// ```
///
/// # Errors
/// [`Code::OutOfRange`] for readings that are not above zero, too few readings or speeds, a
/// correlation below 0.9 in size, an exponent outside 0 to 1; [`Code::Inconsistent`] for lists of
/// different length.
pub fn fit_taylor(speeds: &[Velocity], lives: &[Time], options: &FitOptions) -> Result<TaylorFit> {
    fit(speeds, None, None, lives, options)
}

/// Fits `v T^n (f/f_0)^a (d/d_0)^b = C` to readings, without the depth where there are no depths.
///
/// # Errors
/// As [`fit_taylor`]; [`Code::Inconsistent`] too for a feed or depth that only changes with the
/// others, since its exponent cannot be told apart.
pub fn fit_extended_taylor(
    speeds: &[Velocity],
    feeds: &[Length],
    depths: Option<&[Length]>,
    lives: &[Time],
    options: &FitOptions,
) -> Result<TaylorFit> {
    fit(speeds, Some(feeds), depths, lives, options)
}

fn values<D: uom::si::Dimension + ?Sized>(readings: &[crate::quantity::Si<D>]) -> Vec<f64> {
    readings.iter().map(|reading| reading.value).collect()
}

fn fit(
    speeds: &[Velocity],
    feeds: Option<&[Length]>,
    depths: Option<&[Length]>,
    lives: &[Time],
    options: &FitOptions,
) -> Result<TaylorFit> {
    let (speeds, lives) = (values(speeds), values(lives));
    let (feeds, depths) = (feeds.map(values), depths.map(values));
    let life = Readings::new("tool_life", Kind::Time, &lives, MINUTE).distinct(0);
    let speed = Readings::new("cutting_speed", Kind::Velocity, &speeds, METRE_PER_MINUTE);
    let length = |name, values| Readings::new(name, Kind::Length, values, MILLIMETRE).distinct(2);
    let feed = feeds
        .as_deref()
        .map(|values| length("feed_per_rev", values));
    let depth = depths
        .as_deref()
        .map(|values| length("depth_of_cut", values));
    let mut all = vec![&speed];
    all.extend(&feed);
    all.extend(&depth);
    let variables: Vec<_> = all.iter().map(|readings| readings.variable()).collect();
    all.push(&life);
    screen(&all, options)?;
    let regression = regress(variables, &life.logarithms(), options.confidence.value)?;
    Fitting {
        regression,
        speed: &speed,
        feed: feed.as_ref(),
        depth: depth.as_ref(),
        options,
    }
    .finish()
}

/// A regression on its way to a law.
struct Fitting<'r> {
    regression: Regression,
    speed: &'r Readings<'r>,
    feed: Option<&'r Readings<'r>>,
    depth: Option<&'r Readings<'r>>,
    options: &'r FitOptions,
}

impl Fitting<'_> {
    /// Feed and depth that were read, each with its place among the slopes and its wanted reference.
    fn sizes(&self) -> Vec<(usize, &Readings<'_>, Option<Length>)> {
        let parts = [
            (self.feed, self.options.reference_feed),
            (self.depth, self.options.reference_depth),
        ];
        let read = parts
            .into_iter()
            .filter_map(|(readings, wanted)| Some((readings?, wanted)));
        read.enumerate()
            .map(|(place, (readings, wanted))| (place + 1, readings, wanted))
            .collect()
    }

    fn finish(self) -> Result<TaylorFit> {
        let regression = &self.regression;
        let p = -regression.slope(0);
        let mut problems: Vec<Problem> = strong(regression).into_iter().collect();
        if p <= 1.0 {
            let n = if p == 0.0 {
                "no".to_owned()
            } else {
                format!("n = {:.3}", 1.0 / p)
            };
            problems.push(Problem::new(
                Code::OutOfRange,
                "taylor_exponent",
                n,
                "above 0 and below 1",
                "no wear of Taylor's kind: check the units, and that all readings have one criterion and one regime of wear",
            ));
        }
        let power = regression.coefficients.get(1);
        let (p_low, p_high) = power.map_or((0.0, 0.0), |known| (-known.high, -known.low));
        if p > 1.0 && p_low <= 0.0 {
            problems.push(Problem::new(
                Code::OutOfRange,
                "taylor_exponent",
                format!("power of the speed {p_low:.3} to {p_high:.3}"),
                "limits above 0",
                "the readings cannot carry the exponent at this confidence: add readings",
            ));
        }
        Error::unless_empty(problems, ())?;
        let n = taylor_exponent_from_power(si(p))?;
        let exponent = Estimate {
            value: n.value,
            low: 1.0 / p_high,
            high: 1.0 / p_low,
        };
        let mut warnings = doubts(regression);
        if exponent.high >= 1.0 {
            warnings.push(Warning::new(
                WarningCode::OutsideValidity,
                format!(
                    "the upper limit of n, {:.2}, reaches 1: add readings further apart",
                    exponent.high
                ),
            ));
        }
        // C by the life at the means, moved to the reference feed and depth.
        let b_0 = regression.centre;
        let slopes = 1 + self.sizes().len();
        let mut at_reference = b_0;
        let mut moved = vec![0.0; slopes];
        let mut influences = Vec::new();
        for (place, readings, wanted) in self.sizes() {
            let mean = regression.means.get(place).copied().unwrap_or(0.0);
            let reference = wanted.map_or_else(|| exp(mean) * readings.unit, |wanted| wanted.value);
            let away = if wanted.is_some() {
                ln(reference / readings.unit) - mean
            } else {
                0.0
            };
            let slope = regression.slope(place);
            at_reference += slope * away;
            if let Some(slot) = moved.get_mut(place) {
                *slot = away;
            }
            let value = exponent_from_power(si(-slope), n)?;
            let (low, high) = readings.range();
            influences.push((
                Influence {
                    exponent: Some(value),
                    reference: Some(si(reference)),
                    tested: Some((si(low), si(high))),
                },
                self.ratio(place, value.value),
            ));
            if value.value < 0.0 {
                warnings.push(Warning::new(
                    WarningCode::OutsideValidity,
                    format!(
                        "the life grows with {}: its exponent is below 0",
                        readings.name
                    ),
                ));
            }
        }
        let mean_speed = exp(regression.means.first().copied().unwrap_or(0.0)) * METRE_PER_MINUTE;
        let life_there: Time = si(exp(at_reference) * MINUTE);
        let c = taylor_speed_from_one(si(mean_speed), life_there, n)?;
        let mut by_slopes: Vec<f64> = moved.iter().map(|away| away / p).collect();
        if let Some(slot) = by_slopes.first_mut() {
            *slot = at_reference / (p * p);
        }
        let wide = regression.t * regression.error_of(1.0 / p, &by_slopes);
        let taylor_speed = Estimate {
            value: c.value,
            low: c.value * exp(-wide),
            high: c.value * exp(wide),
        };
        let (low, high) = self.speed.range();
        let mut law = ToolLife::new(c, n)?;
        law.tested_speeds = Some((si(low), si(high)));
        law.criterion = self.options.criterion.clone();
        law.source.clone_from(&self.options.source);
        law.provenance = Provenance::Shop;
        law.units = self.options.units;
        let mut influences = influences.into_iter();
        let mut next = |read: bool| if read { influences.next() } else { None }.unzip();
        let (feed, feed_exponent) = next(self.feed.is_some());
        let (depth, depth_exponent) = next(self.depth.is_some());
        law.feed = feed.unwrap_or_default();
        law.depth = depth.unwrap_or_default();
        Ok(TaylorFit {
            law,
            exponent,
            taylor_speed,
            feed_exponent,
            depth_exponent,
            regression: self.regression,
            warnings,
        })
    }

    /// Limits of the ratio a = q/p of two slopes, by its derivatives.
    fn ratio(&self, place: usize, value: f64) -> Estimate {
        let speed = self.regression.slope(0);
        let mut by_slopes = vec![0.0; self.regression.means.len()];
        for (slot, derivative) in [(0, -value / speed), (place, 1.0 / speed)] {
            if let Some(slot) = by_slopes.get_mut(slot) {
                *slot = derivative;
            }
        }
        let wide = self.regression.t * self.regression.error_of(0.0, &by_slopes);
        Estimate {
            value,
            low: value - wide,
            high: value + wide,
        }
    }
}

impl TaylorFit {
    /// The life at a cutting speed, feed and depth: median, mean, and the limits for one edge.
    ///
    /// # Errors
    /// As [`ToolLife::life`].
    pub fn predict(
        &self,
        cutting_speed: Velocity,
        feed: Option<Length>,
        depth: Option<Length>,
    ) -> Result<PredictedLife> {
        let edge = self.law.life(cutting_speed, feed, depth)?;
        let mut at = vec![ln(cutting_speed.value / METRE_PER_MINUTE)];
        let sizes = [(&self.law.feed, feed), (&self.law.depth, depth)];
        for (influence, given) in sizes {
            if let (Some(_), Some(given)) = (influence.exponent, given) {
                at.push(ln(given.value / MILLIMETRE));
            }
        }
        let (_, single) = self.regression.errors_at(&at);
        let wide = exp(self.regression.t * single);
        let mean = mean_from_median_life(edge.time, si(self.regression.deviation))?;
        if !(wide.is_finite() && (edge.time * wide).value.is_finite()) {
            return Err(Problem::new(
                Code::ResultOverflow,
                "cutting_speed",
                crate::quantity::format(Kind::Velocity, cutting_speed.value, self.law.units),
                "a speed nearer to those of the readings",
                "so far from the readings the limits are beyond every number",
            )
            .into());
        }
        Ok(PredictedLife {
            median: edge.time,
            mean,
            low: edge.time / wide,
            high: edge.time * wide,
            warnings: edge.warnings,
        })
    }

    /// The row of a shop's own table of tool life, with the limits of n; `classes` are classes or ids
    /// of materials by which it is found.
    pub fn to_row(
        &self,
        id: &str,
        work: &str,
        classes: &[String],
        tools: &[ToolMaterial],
    ) -> LifeRow {
        let mut row = self.law.to_row(id, work, classes, tools);
        let limits = format!("{:.3} to {:.3}", self.exponent.low, self.exponent.high);
        if self.exponent.high <= LARGEST_EXPONENT {
            row.exponent = [self.exponent.low, self.exponent.value, self.exponent.high];
        }
        let regression = &self.regression;
        row.note = format!(
            "own fit of {} readings, r = {:.3}, s = {:.3}, n {limits} at {} %; median lives",
            regression.readings(),
            regression.correlation,
            regression.deviation,
            regression.confidence * 100.0,
        );
        row
    }
}
