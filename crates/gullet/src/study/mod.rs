//! Studies: the catalogue's formulas over columns of many rows.
//!
//! Every row gets the same bits as the scalar calls, whatever the processor, the number of threads
//! and the place of the row among the others.

mod dispatch;

pub use dispatch::{Execution, InstructionSet};
