//! Reference tables and published worked examples, embedded.

mod cases;
mod tables;

pub use cases::CASES;
pub use tables::*;
