//! Readings looked at before they are fitted: every problem at once.

use super::FitOptions;
use super::regression::{Regression, Variable};
use super::student::two_sided;
use crate::elementary::ln;
use crate::error::{Code, Error, Problem, Result, Warning, WarningCode};
use crate::quantity::{Kind, UnitSystem, format};

/// Fewest values of a variable that a law is fitted to, and readings of each in the mean.
const DISTINCT: usize = 3;
const EACH: usize = 2;

/// Most readings: more are no test of a shop.
const MOST: usize = 100_000;

/// Values nearer than this, relative, count as one.
const APART: f64 = 0.01;

/// Fewest degrees of freedom that limits of confidence rest on.
const FREEDOM: usize = 3;

/// Weakest correlation that is fitted.
pub(super) const CORRELATION: f64 = 0.9;

/// Inflation of a variance above which the readings hardly tell two exponents apart.
const INFLATED: f64 = 10.0;

/// Readings of one quantity: its name, kind, SI values, and the SI value that logarithms are of.
pub(super) struct Readings<'r> {
    pub name: &'static str,
    pub kind: Kind,
    pub values: &'r [f64],
    pub unit: f64,
    /// Fewest distinct values.
    pub distinct: usize,
}

impl<'r> Readings<'r> {
    pub(super) fn new(
        name: &'static str,
        kind: Kind,
        values: &'r [f64],
        unit: f64,
    ) -> Readings<'r> {
        Readings {
            name,
            kind,
            values,
            unit,
            distinct: DISTINCT,
        }
    }

    /// The same with at least so many distinct values.
    pub(super) fn distinct(mut self, least: usize) -> Readings<'r> {
        self.distinct = least;
        self
    }

    pub(super) fn logarithms(&self) -> Vec<f64> {
        self.values
            .iter()
            .map(|value| ln(value / self.unit))
            .collect()
    }

    pub(super) fn variable(&self) -> Variable {
        (self.name, self.logarithms())
    }

    /// Lowest and highest value.
    pub(super) fn range(&self) -> (f64, f64) {
        let low = self.values.iter().copied().fold(f64::INFINITY, f64::min);
        let high = self.values.iter().copied().fold(0.0, f64::max);
        (low, high)
    }

    pub(super) fn text(&self, value: f64, units: UnitSystem) -> String {
        format(self.kind, value, units)
    }

    fn distinct_values(&self) -> usize {
        let mut sorted = self.values.to_vec();
        sorted.sort_by(f64::total_cmp);
        let mut count = 0;
        let mut last = 0.0;
        for value in sorted {
            if value > last * (1.0 + APART) {
                count += 1;
                last = value;
            }
        }
        count
    }
}

/// Checks readings that belong together row by row; the first is what the others are compared with.
pub(super) fn screen(all: &[&Readings], options: &FitOptions) -> Result<()> {
    let mut problems = Vec::new();
    let confidence = options.confidence.value;
    if !(0.5..=0.999).contains(&confidence) {
        problems.push(Problem::new(
            if confidence.is_finite() {
                Code::OutOfRange
            } else {
                Code::NotFinite
            },
            "confidence",
            format!("{confidence}"),
            "0.5 to 0.999",
            "give the confidence of the limits, such as 95 %",
        ));
    }
    if options.source.trim().is_empty() || options.source.chars().any(char::is_control) {
        problems.push(Problem::new(
            Code::Missing,
            "source",
            "",
            "text on one line",
            "say where the readings come from: what is fitted carries it",
        ));
    }
    for (name, given) in [
        ("reference_feed", options.reference_feed),
        ("reference_depth", options.reference_depth),
    ] {
        if let Some(value) = given
            && !(value.value > 0.0 && value.value.is_finite())
        {
            problems.push(Problem::new(
                if value.value.is_finite() {
                    Code::OutOfRange
                } else {
                    Code::NotFinite
                },
                name,
                format(Kind::Length, value.value, options.units),
                "above 0 mm",
                "give what C is for, such as 1 mm or 1 in",
            ));
        }
    }
    let count = all.first().map_or(0, |readings| readings.values.len());
    for readings in all {
        if readings.values.len() != count {
            let first = all.first().map_or("", |first| first.name);
            problems.push(Problem::new(
                Code::Inconsistent,
                readings.name,
                format!("{} readings", readings.values.len()),
                format!("{count} readings, as of {first}"),
                "give each reading all its values",
            ));
        }
        for (row, value) in readings.values.iter().enumerate() {
            let code = match *value {
                value if !value.is_finite() => Code::NotFinite,
                value if value <= 0.0 => Code::OutOfRange,
                _ => continue,
            };
            problems.push(Problem::new(
                code,
                format!("{}[{row}]", readings.name),
                readings.text(*value, options.units),
                format!("above {}", readings.text(0.0, options.units)),
                "correct the reading, or leave it out if it was not taken",
            ));
        }
    }
    if problems.is_empty() {
        problems.extend(scope(all, count));
    }
    Error::unless_empty(problems, ())
}

/// Whether there is enough of it.
fn scope(all: &[&Readings], count: usize) -> Vec<Problem> {
    let mut problems = Vec::new();
    // One of them is what is fitted, and the constant takes one more.
    let least = (DISTINCT * EACH).max(all.len() + FREEDOM);
    if !(least..=MOST).contains(&count) {
        problems.push(Problem::new(
            Code::OutOfRange,
            "readings",
            count.to_string(),
            format!("{least} to {MOST}"),
            "test at three values at least, twice each: fewer readings say nothing of the scatter",
        ));
    }
    for readings in all.iter().filter(|readings| readings.distinct > 0) {
        let found = readings.distinct_values();
        if found < readings.distinct && count > 0 {
            problems.push(Problem::new(
                Code::OutOfRange,
                readings.name,
                format!("{found} distinct values"),
                format!("at least {}, more than 1 % apart", readings.distinct),
                format!("add readings at other values: a line through {found} says nothing of how well it fits"),
            ));
        }
    }
    problems
}

/// Refuses a correlation that is no law.
pub(super) fn strong(regression: &Regression) -> Option<Problem> {
    (regression.correlation.abs() < CORRELATION).then(|| {
        Problem::new(
            Code::OutOfRange,
            "correlation",
            format!("{:.3}", regression.correlation),
            format!("at least {CORRELATION} in size"),
            "the readings scatter too much for one law: keep one criterion, one fluid and one regime of wear, or test further apart",
        )
    })
}

/// Doubts that any fit may leave.
pub(super) fn doubts(regression: &Regression) -> Vec<Warning> {
    let mut warnings = Vec::new();
    for (place, inflation) in regression.inflation.iter().enumerate() {
        if *inflation > INFLATED {
            let name = regression
                .coefficients
                .get(place + 1)
                .map_or("", |known| known.name);
            warnings.push(Warning::new(
                WarningCode::OutsideValidity,
                format!("{name} hardly changes by itself: its exponent's variance is inflated {inflation:.0} times"),
            ));
        }
    }
    for coefficient in regression.coefficients.iter().skip(1) {
        if coefficient.low <= 0.0 && coefficient.high >= 0.0 {
            warnings.push(Warning::new(
                WarningCode::OutsideValidity,
                format!(
                    "the readings do not show that {} matters: its limits include 0",
                    coefficient.name
                ),
            ));
        }
    }
    // So far off lies one of all readings by chance in one fit of twenty.
    let chance = 0.05 / regression.readings() as f64;
    let far = two_sided(1.0 - chance, regression.degrees_of_freedom);
    for (row, residual) in regression.residuals.iter().enumerate() {
        if regression.deviation > 0.0 && residual.abs() > far * regression.deviation {
            warnings.push(Warning::new(
                WarningCode::OutsideValidity,
                format!(
                    "reading {row} lies {:.1} standard deviations off: check it",
                    residual.abs() / regression.deviation
                ),
            ));
        }
    }
    warnings
}
