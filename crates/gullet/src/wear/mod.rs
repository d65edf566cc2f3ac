//! Wear: the life of a cutting edge by Taylor's law, with what the law was found for.

mod criterion;
mod life;

pub use criterion::WearCriterion;
pub use life::{EdgeLife, Influence, LifeSpeed, ToolLife};
