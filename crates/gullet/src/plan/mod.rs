//! Plans: passes, time, job file, card.

mod document;
mod job;

pub use job::{Job, Stock, Strategy, job_reference, job_schema};
