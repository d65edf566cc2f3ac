//! Plans: passes, time, job file, card.

mod card;
mod document;
mod job;
mod pass_plan;
pub mod passes;
mod process_card;

pub use card::{Card, cut_json};
pub use job::{Job, JobKey, Part, Stock, Strategy, job_keys, job_reference, job_schema};
pub use pass_plan::{PassPlan, PassTime, PlannedPass};
pub use process_card::ProcessCard;
