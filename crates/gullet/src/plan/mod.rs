//! Plans: passes, time, job file, card.

mod job;

pub use job::{Job, Stock, Strategy};
