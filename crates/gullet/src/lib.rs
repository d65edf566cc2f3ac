//! Machining speeds, feeds, limits and passes: milling, holes, turning, threads, sawing.
//!
//! | to | look in |
//! |---|---|
//! | evaluate a formula by name or typed, with its worked step | [`evaluate`], [`explain`], [`formula`] |
//! | read quantities from text and print them in a shop's units | [`quantity`] |
//! | ask the reference tables, with a shop's own laid over | [`table`] |
//! | describe cutter, machine, hold and practice | [`model`] |
//! | compute a side milling, slotting or face milling cut | [`operation`] |
//! | compute any other operation: drilling, turning, sawing and so on | [`operation::process`] |
//! | plan a job, square a block, make a part; cards | [`plan`] |
//! | find the economic speed, cost a lot | [`economics`] |
//! | tell the life of an edge, fit laws to own readings | [`wear`], [`fit`] |
//! | do all this over columns of many rows | [`study`] |
//!
//! The floors, from the bottom: [`error`], [`quantity`], [`listing`], [`formula`], [`table`],
//! [`wear`], [`fit`], [`model`], [`operation`], [`economics`], [`plan`], [`study`]. A floor uses only
//! the floors below it. The core opens no file: text goes in, text comes out.
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
