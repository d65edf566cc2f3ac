//! Operations: formulas composed into a cut with its limits and its worked steps.

mod cautions;
mod chain;
mod check;
mod cut;
mod inputs;
mod ledger;
mod milling;
mod report;
mod request;
mod speed_feed;

pub use cut::{
    Adjustment, Band, Choice, Consequences, Cut, Datum, Field, Limit, Relief, Settings, Side,
    Spread, Warning, WarningCode, WorkedStep,
};
pub use milling::{Lowering, mill};
pub use request::{Operation, Pass, Setup};
