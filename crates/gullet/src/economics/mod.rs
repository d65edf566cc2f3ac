//! Economics: the speed at which a part costs or takes least, set to what a spindle really has; what
//! a lot takes and costs; time of moves.

mod edge;
mod inputs;
mod lot;
mod moves;
mod report;

pub use edge::{Aim, EconomicSpeed, Economics, EdgeEconomics, Priced, Snapped, WholeParts};
pub use lot::{Allowance, Learning, LotCost, LotPrice, Share};
pub use moves::{Axes, MoveTime, Way};

/// Calls a checked formula and records it as a worked step.
macro_rules! worked {
    ($steps:expr, $topic:ident::$formula:ident($($argument:expr),* $(,)?)) => {{
        let result = $crate::formula::$topic::$formula($($argument),*)?;
        $crate::formula::Recorder::record(
            $steps,
            &$crate::formula::$topic::$formula::FORMULA,
            &[$($argument.value),*],
            result.value,
        );
        result
    }};
}

use worked;
