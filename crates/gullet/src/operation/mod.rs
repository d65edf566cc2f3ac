//! Operations: formulas composed into a cut with its limits and its worked steps.
//!
//! Straight milling cuts (side milling, slotting, face milling) stand here, since job files and pass
//! plans rest on them. Every other operation is described in [`process`].

mod cautions;
pub(crate) mod chain;
mod check;
pub(crate) mod cut;
mod cut_numbers;
pub(crate) mod inputs;
pub(crate) mod lanes;
pub(crate) mod law;
mod ledger;
pub(crate) mod limits;
pub(crate) mod loads;
mod milling;
pub(crate) mod numbers;
pub mod process;
mod report;
mod request;
pub(crate) mod results;
pub(crate) mod settle;
pub(crate) mod speed_feed;

pub use crate::error::{Warning, WarningCode};
pub(crate) use cut::records;
pub use cut::{
    Adjustment, Band, Choice, Consequences, Cut, Datum, Field, Limit, Relief, Settings, Spread,
    WorkedStep,
};
pub use cut_numbers::{CutNumbers, LedgerNumbers, LimitNumbers, WarningCodes};
pub use limits::{LimitName, Side};
pub use milling::{Lowering, Milling, mill};
/// Every problem of a set-up and a pass, without computing the cut.
pub(crate) fn problems(setup: &Setup, pass: &Pass) -> Vec<crate::error::Problem> {
    let mut problems = check::setup(setup);
    problems.extend(check::pass(setup.cutter, setup.units, pass));
    problems
}

pub use request::{Operation, Pass, Setup};
