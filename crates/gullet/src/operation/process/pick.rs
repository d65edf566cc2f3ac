//! One of two chains of formulas, by a choice.

use crate::operation::cut::Log;
use crate::quantity::math::select;
use uom::si::{Dimension, Quantity, Units};

/// The value of the first chain where the choice falls on it, else of the second. Only the one that
/// was chosen is told; where nothing is told both are computed, without a branch.
#[inline(always)]
pub(crate) fn pick<L: Log, D: Dimension + ?Sized, U: Units<f64> + ?Sized>(
    log: &mut L,
    first: bool,
    a: impl FnOnce(&mut L) -> Quantity<D, U, f64>,
    b: impl FnOnce(&mut L) -> Quantity<D, U, f64>,
) -> Quantity<D, U, f64> {
    if log.records() {
        return if first { a(log) } else { b(log) };
    }
    let (a, b) = (a(log), b(log));
    select(first, a, b)
}
