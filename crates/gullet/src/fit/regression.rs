//! Linear least squares with a constant, by Householder's reflections on centred columns.

use super::student::{beyond, two_sided};
use crate::error::{Code, Problem, Result};

/// Share of a column's length that the others leave of it, below which they tell the same.
const COLLINEAR: f64 = 0.05;

/// A coefficient of a regression.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Coefficient {
    /// What it belongs to: `constant`, or the name of a variable.
    pub name: &'static str,
    /// The value.
    pub value: f64,
    /// Its standard error.
    pub standard_error: f64,
    /// Lower limit of its confidence.
    pub low: f64,
    /// Upper limit of its confidence.
    pub high: f64,
    /// Probability that chance alone gives a value this far from zero.
    pub p_value: f64,
}

/// A regression of logarithms: coefficients, scatter and what it left over.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Regression {
    /// The constant, then one coefficient a variable.
    pub coefficients: Vec<Coefficient>,
    /// Logarithm of each reading less the fitted one.
    pub residuals: Vec<f64>,
    /// Standard deviation s of the residuals.
    pub deviation: f64,
    /// Share of the squares that the fit explains.
    pub r_squared: f64,
    /// Correlation r; with several variables the multiple one, without a sign.
    pub correlation: f64,
    /// Readings less coefficients.
    pub degrees_of_freedom: usize,
    /// Confidence of the limits, two-sided.
    pub confidence: f64,
    /// Student's t of that confidence.
    pub t: f64,
    /// Means of the variables.
    pub(super) means: Vec<f64>,
    /// The fitted value at those means.
    pub(super) centre: f64,
    /// Inverse of the products of the centred columns: times s^2 the covariance of the slopes.
    pub(super) inverse: Vec<Vec<f64>>,
    /// How much the others inflate the variance of each slope.
    pub(super) inflation: Vec<f64>,
}

/// A variable: its name and its values.
pub(super) type Variable = (&'static str, Vec<f64>);

fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len() as f64
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

/// Reflects a column by the vector `v`, which acts on its end.
fn reflect(column: &mut [f64], v: &[f64], square: f64) {
    let start = column.len() - v.len();
    let Some(end) = column.get_mut(start..) else {
        return;
    };
    let factor = 2.0 * dot(v, end) / square;
    for (value, v) in end.iter_mut().zip(v) {
        *value -= factor * v;
    }
}

/// The upper triangle, by columns, and the reflected right side.
struct Triangle {
    columns: Vec<Vec<f64>>,
    right: Vec<f64>,
}

/// Factors the centred columns; the place of one that the columns before it tell already is an error.
fn factor(
    mut columns: Vec<Vec<f64>>,
    mut right: Vec<f64>,
) -> core::result::Result<Triangle, usize> {
    for place in 0..columns.len() {
        let (done, rest) = columns.split_at_mut(place);
        debug_assert_eq!(done.len(), place);
        let Some((column, later)) = rest.split_first_mut() else {
            break;
        };
        let whole = dot(column, column).sqrt();
        let end = column.get(place..).unwrap_or_default();
        let left = dot(end, end).sqrt();
        if left.is_nan() || left <= COLLINEAR * whole {
            return Err(place);
        }
        let mut v = end.to_vec();
        let head = v.first().copied().unwrap_or(0.0);
        let diagonal = if head > 0.0 { -left } else { left };
        if let Some(first) = v.first_mut() {
            *first -= diagonal;
        }
        let square = dot(&v, &v);
        for other in later {
            reflect(other, &v, square);
        }
        reflect(&mut right, &v, square);
        column.truncate(place);
        column.push(diagonal);
    }
    Ok(Triangle { columns, right })
}

/// Solves the triangle for a right side of as many values.
fn solve(columns: &[Vec<f64>], right: &[f64]) -> Vec<f64> {
    let mut x = right.to_vec();
    for (place, column) in columns.iter().enumerate().rev() {
        let (Some(value), Some(diagonal)) = (x.get(place).copied(), column.get(place)) else {
            continue;
        };
        let value = value / diagonal;
        for (slot, above) in x.iter_mut().zip(column).take(place) {
            *slot -= value * above;
        }
        if let Some(slot) = x.get_mut(place) {
            *slot = value;
        }
    }
    x
}

/// The inverse of the product of the triangle's transpose with itself.
fn inverse(columns: &[Vec<f64>]) -> Vec<Vec<f64>> {
    let count = columns.len();
    let unit = |place: usize| {
        (0..count)
            .map(|i| f64::from(u8::from(i == place)))
            .collect::<Vec<_>>()
    };
    // Columns of the inverse triangle; its product with its transpose is wanted.
    let own: Vec<Vec<f64>> = (0..count)
        .map(|place| solve(columns, &unit(place)))
        .collect();
    let entry = |i: usize, j: usize| {
        own.iter()
            .filter_map(|column| Some(column.get(i)? * column.get(j)?))
            .sum::<f64>()
    };
    (0..count)
        .map(|i| (0..count).map(|j| entry(i, j)).collect())
        .collect()
}

/// Fits `y` by a constant and the variables.
///
/// # Errors
/// [`Code::Inconsistent`] for a variable that the others tell already.
pub(super) fn regress(variables: Vec<Variable>, y: &[f64], confidence: f64) -> Result<Regression> {
    let means: Vec<f64> = variables.iter().map(|(_, values)| mean(values)).collect();
    let centred: Vec<Vec<f64>> = variables
        .iter()
        .zip(&means)
        .map(|((_, values), mean)| values.iter().map(|value| value - mean).collect())
        .collect();
    let centre = mean(y);
    let right: Vec<f64> = y.iter().map(|value| value - centre).collect();
    let squares = dot(&right, &right);
    let triangle = factor(centred.clone(), right.clone()).map_err(|place| {
        let name = variables.get(place).map_or("", |(name, _)| *name);
        let before: Vec<&str> = variables.iter().take(place).map(|(name, _)| *name).collect();
        Problem::new(
            Code::Inconsistent,
            name,
            format!("changes with {}", before.join(" and ")),
            "values that change by themselves",
            format!("the exponents cannot be told apart: add readings that change {name} alone, or fit without it"),
        )
    })?;
    let slopes = solve(
        &triangle.columns,
        triangle.right.get(..means.len()).unwrap_or_default(),
    );
    let inverse = inverse(&triangle.columns);
    let residuals: Vec<f64> = right
        .iter()
        .enumerate()
        .map(|(row, value)| {
            let parts = centred.iter().zip(&slopes);
            let fitted: f64 = parts
                .filter_map(|(column, slope)| Some(column.get(row)? * slope))
                .sum();
            value - fitted
        })
        .collect();
    let left = dot(&residuals, &residuals);
    let degrees_of_freedom = y.len().saturating_sub(1 + slopes.len());
    let deviation = (left / degrees_of_freedom as f64).sqrt();
    let r_squared = if squares > 0.0 {
        (1.0 - left / squares).clamp(0.0, 1.0)
    } else {
        0.0
    };
    let t = two_sided(confidence, degrees_of_freedom);
    let coefficient = |name, value: f64, variance: f64| {
        let standard_error = deviation * variance.sqrt();
        let ratio = if standard_error > 0.0 {
            value / standard_error
        } else {
            f64::MAX
        };
        Coefficient {
            name,
            value,
            standard_error,
            low: value - t * standard_error,
            high: value + t * standard_error,
            p_value: beyond(ratio, degrees_of_freedom),
        }
    };
    let diagonal = |place: usize| {
        inverse
            .get(place)
            .and_then(|row| row.get(place))
            .copied()
            .unwrap_or(0.0)
    };
    let at_zero: Vec<f64> = means.iter().map(|mean| -mean).collect();
    let constant = centre + dot(&slopes, &at_zero);
    let mut coefficients = vec![coefficient(
        "constant",
        constant,
        1.0 / y.len() as f64 + form(&inverse, &at_zero),
    )];
    let mut inflation = Vec::new();
    for (place, ((name, _), slope)) in variables.iter().zip(&slopes).enumerate() {
        coefficients.push(coefficient(*name, *slope, diagonal(place)));
        let column = centred.get(place).map_or(0.0, |column| dot(column, column));
        inflation.push(column * diagonal(place));
    }
    let sign = match slopes.as_slice() {
        [slope] if *slope < 0.0 => -1.0,
        _ => 1.0,
    };
    Ok(Regression {
        coefficients,
        residuals,
        deviation,
        r_squared,
        correlation: sign * r_squared.sqrt(),
        degrees_of_freedom,
        confidence,
        t,
        means,
        centre,
        inverse,
        inflation,
    })
}

/// The quadratic form of a matrix.
fn form(matrix: &[Vec<f64>], x: &[f64]) -> f64 {
    matrix
        .iter()
        .zip(x)
        .map(|(row, x_i)| x_i * dot(row, x))
        .sum()
}

impl Regression {
    /// The slope of a variable by its place.
    pub(super) fn slope(&self, place: usize) -> f64 {
        self.coefficients
            .get(place + 1)
            .map_or(0.0, |coefficient| coefficient.value)
    }

    /// Number of readings.
    pub fn readings(&self) -> usize {
        self.residuals.len()
    }

    /// Standard error of a function of the value at the means and of the slopes, by its derivatives.
    pub(super) fn error_of(&self, by_centre: f64, by_slopes: &[f64]) -> f64 {
        let variance =
            by_centre * by_centre / self.readings() as f64 + form(&self.inverse, by_slopes);
        self.deviation * variance.sqrt()
    }

    /// Standard error of the fitted value, and of a single new reading, for values of the variables.
    pub(super) fn errors_at(&self, values: &[f64]) -> (f64, f64) {
        let away: Vec<f64> = values
            .iter()
            .zip(&self.means)
            .map(|(value, mean)| value - mean)
            .collect();
        let fitted = self.error_of(1.0, &away);
        (
            fitted,
            (fitted * fitted + self.deviation * self.deviation).sqrt(),
        )
    }
}
