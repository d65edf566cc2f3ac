//! Operations: formulas composed into a cut with its limits and its worked steps.

mod request;

pub use request::{Operation, Pass, Setup};
