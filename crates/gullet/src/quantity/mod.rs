//! Quantities: uom types outside, SI values inside, text with units.

mod column;
mod convert;
mod decimal;
mod dimension;
mod kind;
pub(crate) mod math;
mod natural;
mod print;
mod spelling;
mod suffix;
mod text;
mod types;
mod units;
mod value;

#[cfg(test)]
mod decimal_tests;
#[cfg(test)]
mod print_tests;
#[cfg(test)]
mod text_tests;
#[cfg(test)]
mod units_tests;

pub use column::ColumnConverter;
pub use convert::{Converter, from_unit, to_unit};
pub use dimension::{interchangeable, product, quotient};
pub use kind::{Kind, Unit, UnitSystem};
pub use print::{exact_text, format, format_digits, format_exact, format_in, format_worked};
pub use spelling::unit;
pub use suffix::{unit_behind, unit_of_suffix};
pub use text::{parse, parse_number};
pub use types::*;
pub use units::{column_unit, units};
pub use value::Quantity;
