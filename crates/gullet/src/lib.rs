//! Machining speeds, feeds, limits and passes.
//!
//! The floors, from the bottom: [`error`], [`quantity`], [`listing`], [`formula`], [`table`],
//! [`wear`], [`fit`], [`model`], [`operation`], [`economics`], [`plan`], [`study`]. A floor uses only
//! the floors below it.
#![forbid(unsafe_code)]

// Unchecked by design: public for its own tests, not for callers.
pub mod economics;
#[doc(hidden)]
pub mod elementary;
pub mod error;
pub mod fit;
pub mod formula;
pub mod listing;
pub mod model;
pub mod operation;
pub mod plan;
pub mod quantity;
pub mod study;
pub mod table;
pub mod wear;

pub use error::{Code, Error, Problem, Result};
pub use formula::{evaluate, explain};

// The examples of README.md are tests.
#[cfg(doctest)]
#[doc = include_str!("../../../README.md")]
struct Readme;
