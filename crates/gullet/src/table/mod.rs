//! Reference tables with their sources, and a shop's own tables over them.
//!
//! [`Library::builtin`] holds the embedded tables. A question (this material, this tool material,
//! this process) is answered with a range, a start value, the rows behind it and what was assumed:
//! handbook values are starting points, and the answer says how far to trust it.

mod drill;
mod feed;
mod force;
mod grounds;
mod hardness;
mod library;
mod listings;
mod names;
mod parse;
mod parse_material;
mod reader;
mod rows;
mod saw;
mod select;
mod speed;
pub(crate) mod tap_drill;
mod types;
mod write;

pub use drill::{Drill, TapDrill, TapDrillWish, ThreadBasis};
pub(crate) use feed::{FeedCursor, FeedNumbers};
pub use force::{ForceBand, Kienzle, UnitPower};
pub(crate) use grounds::Grounds;
pub use hardness::HardnessScale;
pub use library::{Library, LibraryRef, Overlay};
pub use rows::{LifeRow, MeasuredAt};
pub use saw::SawRate;
pub use types::*;

#[cfg(test)]
mod table_tests;
