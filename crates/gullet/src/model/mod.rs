//! What a shop owns: cutter, machine, hold, blank, practice. Materials come from [`crate::table`].

mod builtin;
mod cutter;
mod hold;
mod machine;
mod practice;

pub(crate) use cutter::{CARBIDE_MODULUS, STEEL_MODULUS};
pub use cutter::{Cutter, CutterForm};
pub use hold::{Blank, Clamping, Hold};
pub use machine::{Drive, Feed, Machine, Readout};
pub use practice::{DepthRatios, Direction, PassKind, Practice, SpeedChoice};

use crate::error::{Code, Problem};
use crate::quantity::{self, Kind, UnitSystem};

/// Collects the problems of a model's fields; every field is looked at.
pub(crate) struct Check {
    problems: Vec<Problem>,
    units: UnitSystem,
}

impl Check {
    pub(crate) fn new(units: UnitSystem) -> Check {
        Check {
            problems: Vec::new(),
            units,
        }
    }

    /// The value must be finite, above `low` (or equal to it where `inclusive`) and at most `high`.
    #[allow(clippy::too_many_arguments)]
    pub(crate) fn range(
        &mut self,
        name: &str,
        kind: Kind,
        value: f64,
        low: f64,
        inclusive: bool,
        high: f64,
        remedy: &str,
    ) {
        let inside = value.is_finite()
            && (value > low || (inclusive && value >= low))
            && value <= high * (1.0 + 1e-12);
        if inside {
            return;
        }
        let show = |x: f64| quantity::format(kind, x, self.units);
        let mut admissible = format!(
            "{} {}",
            if inclusive { "at least" } else { "above" },
            show(low)
        );
        if high.is_finite() {
            admissible += &format!(", at most {}", show(high));
        }
        let (code, shown) = if value.is_finite() {
            (Code::OutOfRange, show(value))
        } else {
            (Code::NotFinite, format!("{value}"))
        };
        self.problems
            .push(Problem::new(code, name, shown, admissible, remedy));
    }

    /// The condition must hold; otherwise the named field is reported as contradictory.
    pub(crate) fn agree(
        &mut self,
        holds: bool,
        name: &str,
        value: String,
        admissible: String,
        remedy: &str,
    ) {
        if !holds {
            self.problems.push(Problem::new(
                Code::Inconsistent,
                name,
                value,
                admissible,
                remedy,
            ));
        }
    }

    pub(crate) fn finish(self) -> Vec<Problem> {
        self.problems
    }
}

/// Largest length, speed or force a field may hold: beyond any workshop, far below overflow.
pub(crate) const HUGE: f64 = 1e6;
