//! Plans: passes, time, job file, card.

mod card;
mod document;
mod job;
mod pass_plan;
pub mod passes;

pub use card::Card;
pub use job::{Job, Stock, Strategy, job_reference, job_schema};
pub use pass_plan::{PassPlan, PassTime, PlannedPass};
