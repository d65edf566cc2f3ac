//! Functions of quantities that formulas are written with: total, branch-free, the same bits
//! everywhere.

use super::types::{Angle, Ratio, si};
use crate::elementary;
use uom::si::{Dimension, Units};

/// pi as a number.
pub const PI: f64 = core::f64::consts::PI;

macro_rules! wrap {
    ($($(#[$doc:meta])* $name:ident: $from:ident -> $to:ident;)*) => {
        // The set is whole, whether or not a formula needs each today.
        $($(#[$doc])* #[allow(dead_code)] #[inline(always)] pub fn $name(x: $from) -> $to { si(elementary::$name(x.value)) })*
    };
}

wrap! {
    /// Sine of an angle.
    sin: Angle -> Ratio;
    /// Cosine of an angle.
    cos: Angle -> Ratio;
    /// Tangent of an angle.
    tan: Angle -> Ratio;
    /// Angle in -90..90 deg with this sine.
    asin: Ratio -> Angle;
    /// Angle in 0..180 deg with this cosine.
    acos: Ratio -> Angle;
    /// Angle in 0..90 deg with this half versine, (1 - cos)/2.
    inverse_half_versine: Ratio -> Angle;
    /// Angle in -90..90 deg with this tangent.
    atan: Ratio -> Angle;
    /// Natural logarithm.
    ln: Ratio -> Ratio;
    /// Exponential function.
    exp: Ratio -> Ratio;
}

/// `x` to the power `y`, for `x >= 0`.
#[inline(always)]
pub fn pow(x: Ratio, y: Ratio) -> Ratio {
    si(elementary::pow(x.value, y.value))
}

/// `x` to the power `y`, for positive `x` and `y` from -1 to 1.
#[inline(always)]
pub fn fractional_power(x: Ratio, y: Ratio) -> Ratio {
    si(elementary::fractional_power(x.value, y.value))
}

/// The largest whole number at or below `x`.
#[inline(always)]
pub fn floor(x: Ratio) -> Ratio {
    si(elementary::floor(x.value))
}

/// The smallest whole number at or above `x`.
#[inline(always)]
pub fn ceil(x: Ratio) -> Ratio {
    si(elementary::ceil(x.value))
}

/// A pure number as a quantity.
#[inline(always)]
pub fn number(x: f64) -> Ratio {
    si(x)
}

/// The smaller of two quantities of the same kind.
#[inline(always)]
pub fn min<D: Dimension + ?Sized, U: Units<f64> + ?Sized>(
    a: uom::si::Quantity<D, U, f64>,
    b: uom::si::Quantity<D, U, f64>,
) -> uom::si::Quantity<D, U, f64> {
    si(if a.value < b.value { a.value } else { b.value })
}

/// The larger of two quantities of the same kind.
#[inline(always)]
pub fn max<D: Dimension + ?Sized, U: Units<f64> + ?Sized>(
    a: uom::si::Quantity<D, U, f64>,
    b: uom::si::Quantity<D, U, f64>,
) -> uom::si::Quantity<D, U, f64> {
    si(if a.value > b.value { a.value } else { b.value })
}

/// `a` where the condition holds, else `b`; both are computed.
#[inline(always)]
pub fn select<D: Dimension + ?Sized, U: Units<f64> + ?Sized>(
    condition: bool,
    a: uom::si::Quantity<D, U, f64>,
    b: uom::si::Quantity<D, U, f64>,
) -> uom::si::Quantity<D, U, f64> {
    // No branch: the compiler would duplicate what lies between two on one condition.
    si(core::hint::select_unpredictable(
        condition, a.value, b.value,
    ))
}

/// Square root of a pure number.
#[inline(always)]
pub fn sqrt(x: Ratio) -> Ratio {
    si(x.value.sqrt())
}
