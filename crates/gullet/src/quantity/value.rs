//! A quantity whose kind is known only at run time.

use super::convert::{from_unit, to_unit};
use super::kind::{Kind, UnitSystem};
use super::print::format;
use super::spelling::unit;
use super::text::parse;
use crate::error::{Code, Problem, Result};
use core::fmt;

/// A quantity whose kind is known only at run time; `si` is its value in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quantity {
    /// What it measures.
    pub kind: Kind,
    /// Value in the SI unit of the kind.
    pub si: f64,
}

impl fmt::Display for Quantity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let text = self.text(UnitSystem::Metric);
        // Padding to a precision would cut digits off and leave a wrong number.
        match f.precision() {
            None => f.pad(&text),
            Some(_) => f.write_str(&text),
        }
    }
}

impl Quantity {
    /// Reads text with a unit.
    ///
    /// # Errors
    /// As [`parse`].
    pub fn parse(kind: Kind, text: &str) -> Result<Quantity> {
        parse(kind, text).map(|si| Quantity { kind, si })
    }

    /// A number in a unit given by its spelling; the same bits as the text of the two together.
    ///
    /// # Errors
    /// [`Code::UnitMissing`] and [`Code::UnitUnknown`] as [`parse`]; [`Code::NotFinite`] where the
    /// number is not finite, in the unit or in SI.
    pub fn new(kind: Kind, value: f64, unit_text: &str) -> Result<Quantity> {
        let si = from_unit(value, unit(kind, unit_text)?);
        finite(si, value).map(|si| Quantity { kind, si })
    }

    /// The value in a unit given by its spelling, rounded once.
    ///
    /// # Errors
    /// [`Code::UnitMissing`] and [`Code::UnitUnknown`] as [`parse`]; [`Code::NotFinite`] where the
    /// value is not finite, in SI or in the unit.
    ///
    /// ```
    /// use gullet::quantity::{Kind, Quantity};
    /// let feed = Quantity::parse(Kind::Velocity, "9 in/min")?;
    /// assert_eq!(feed.to("mm/min")?, 228.6);
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn to(&self, unit_text: &str) -> Result<f64> {
        let value = to_unit(self.si, unit(self.kind, unit_text)?);
        finite(value, self.si)
    }

    /// Printed for people in the units of a shop.
    pub fn text(&self, system: UnitSystem) -> String {
        format(self.kind, self.si, system)
    }

    /// Whether it agrees with `expected`, text with a unit, within a relative tolerance.
    ///
    /// # Errors
    /// As [`parse`], for `expected`.
    pub fn agrees_with(&self, expected: &str, relative_tolerance: f64) -> Result<bool> {
        let expected = parse(self.kind, expected)?;
        Ok((self.si - expected).abs() <= relative_tolerance * expected.abs())
    }
}

fn finite(value: f64, given: f64) -> Result<f64> {
    if value.is_finite() {
        return Ok(value);
    }
    Err(Problem::new(
        Code::NotFinite,
        "",
        format!("{given:?}"),
        "a finite number, in the unit and in SI units",
        "check the size of the number",
    )
    .into())
}
