//! Studies: formulas and operations over columns of many rows.
//!
//! Every row gets the same bits as the scalar calls, whatever the processor, the number of threads
//! and the place of the row among the others.

mod bare;
mod base;
mod dispatch;
mod draws;
mod group;
mod kernel;
mod lanes;
mod milling;
mod process;
mod results;
mod rows;
mod screen;
mod stages;
mod uncertainty;

pub use bare::{SideMilling, SideMillingResults, side_milling};
pub use base::Base;
pub use dispatch::{Execution, InstructionSet};
pub use milling::MillingStudy;
pub use process::{ProcessBase, ProcessRows, ProcessStudy};
pub(crate) use process::{ProcessKernel, process_kernel};
pub use results::{ResultField, Results};
pub use rows::{Choice, Codes, FORMS, Input, NONE, Rows};
pub use uncertainty::{Quantiles, Spread, Uncertain, Uncertainty};
