//! Reference tables and published worked examples, embedded.

mod cases;
pub use cases::CASES;
