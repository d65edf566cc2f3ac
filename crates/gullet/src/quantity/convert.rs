//! Numbers in a unit to SI values and back.

use super::decimal::Fraction;
use super::kind::Unit;
use super::text::decimal;

/// Up to here every whole number is a double.
const EXACT: f64 = 9_007_199_254_740_992.0;

/// Converts numbers in one unit; make it once for a column.
#[derive(Debug, Clone)]
pub struct Converter {
    size: Fraction,
    /// The size as a quotient of whole numbers, where doubles hold both.
    quotient: Option<(f64, f64)>,
}

impl Converter {
    /// For numbers in this unit.
    pub fn new(unit: &Unit) -> Converter {
        Converter {
            size: Fraction::of_unit(unit),
            quotient: quotient(unit),
        }
    }

    /// The SI value of a number in the unit. The number stands for its shortest decimal text, so
    /// that 12.7 with `mm` and the text `12.7 mm` give the same bits.
    ///
    /// Infinite where the SI value is beyond every double; NaN and infinity stay what they are.
    pub fn to_si(&self, value: f64) -> f64 {
        if let Some(si) = self.short_to_si(value) {
            return si;
        }
        if !value.is_finite() {
            return value;
        }
        let text = format!("{:e}", value.abs());
        let exact = decimal(&text).map_or_else(|| Fraction::of_double(value), |(exact, _)| exact);
        exact.times(&self.size).to_f64().copysign(value)
    }

    /// The SI value of a number of few digits, by one division of whole numbers.
    ///
    /// Only one decimal of at most 15 digits is nearest to a double, so a short one that is found
    /// is also the one that would be printed.
    pub(super) fn short_to_si(&self, value: f64) -> Option<f64> {
        let (numerator, denominator) = self.quotient?;
        let mut scale = 1.0;
        for _ in 0..7 {
            let whole = (value * scale).round();
            if whole / scale == value && whole.abs() < 1e15 {
                let (above, below) = (whole * numerator, scale * denominator);
                return (above.abs() <= EXACT && below <= EXACT).then(|| above / below);
            }
            scale *= 10.0;
        }
        None
    }

    pub(super) fn quotient(&self) -> Option<(f64, f64)> {
        self.quotient
    }

    /// An SI value in the unit: the double nearest to the exact quotient.
    ///
    /// Infinite where that is beyond every double; NaN and infinity stay what they are.
    pub fn from_si(&self, si: f64) -> f64 {
        if !si.is_finite() {
            return si;
        }
        let exact = Fraction::of_double(si).over(&self.size);
        exact.to_f64().copysign(si)
    }
}

/// The SI value of a number in this unit, as [`Converter::to_si`].
pub fn from_unit(value: f64, unit: &Unit) -> f64 {
    Converter::new(unit).to_si(value)
}

/// An SI value in this unit, as [`Converter::from_si`].
pub fn to_unit(si: f64, unit: &Unit) -> f64 {
    Converter::new(unit).from_si(si)
}

/// The size in lowest terms, where doubles hold both numbers.
fn quotient(unit: &Unit) -> Option<(f64, f64)> {
    let (mut above, places_above) = whole(unit.numerator)?;
    let (mut below, places_below) = whole(unit.denominator)?;
    let shift = 10_u128.checked_pow(places_above.abs_diff(places_below))?;
    if places_below > places_above {
        above = above.checked_mul(shift)?;
    } else {
        below = below.checked_mul(shift)?;
    }
    let (mut a, mut b) = (above, below);
    while b != 0 {
        (a, b) = (b, a.checked_rem(b)?);
    }
    let (above, below) = (above.checked_div(a)? as f64, below.checked_div(a)? as f64);
    (above <= EXACT && below <= EXACT).then_some((above, below))
}

/// A plain decimal without its point, and the places behind it.
fn whole(text: &str) -> Option<(u128, u32)> {
    let places = text.split_once('.').map_or(0, |(_, tail)| tail.len());
    let whole = text.replace('.', "").parse().ok()?;
    Some((whole, u32::try_from(places).ok()?))
}
