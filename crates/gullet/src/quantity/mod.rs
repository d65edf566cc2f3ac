//! Quantities: uom types outside, SI values inside, text with units.

mod kind;
pub mod math;
mod text;
mod types;

pub use kind::{Kind, Unit, UnitSystem};
pub use text::{Quantity, format, format_exact, parse, parse_number};
pub use types::*;
