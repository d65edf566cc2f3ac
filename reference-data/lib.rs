//! Reference tables and published worked examples, embedded.

mod tables;

pub use tables::*;
