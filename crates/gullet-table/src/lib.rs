//! Studies of cuts over tables in the form of Apache Arrow: batches of rows in, the same rows with
//! their results out.
//!
//! A [`StudyPlan`] is made from the schema of the rows, constants and an optional base (what a job
//! file says). It finds every problem of the columns at once, before any work. [`StudyPlan::run`]
//! then takes batch after batch; the borders between batches change nothing. [`Summary`] adds up.
//!
//! # Operations
//!
//! Rows are milling cuts, whose operation may differ by row, or they are all of one operation of
//! [`gullet::operation::process`], which the constant `operation` names: `operation=drilling`. Each of
//! these has columns of its own, so a table that mixes them is split. [`Takes`] lists what rows give.
//!
//! # Columns
//!
//! - A number stands in a column named as the [`gullet::study::Input`], or the input of the
//!   operation, with its unit behind: `axial_depth_mm`, `cutter_diameter_in`, `spindle_speed_rpm`. The unit is spelled as
//!   [`gullet::quantity::Unit::suffix`] spells it; the `per` may be left out (`m_min`). Numbers
//!   without a unit have the bare name: `cutter_teeth`, `jaw_friction`. Types: float64, float32 and
//!   integers. A float32 is widened as it is: 0.1 becomes 0.10000000149. Text and decimals are
//!   refused.
//! - A choice stands in a column named as the [`gullet::study::Choice`], as text, dictionary-encoded
//!   or not: `material`, `machine`, `practice`, `operation`, `pass`, `direction`, `cutter_material`,
//!   `cutter_form`, and `feed_across_jaws` as booleans. Operations of their own have material,
//!   machine, practice, cutter material and their own words, such as `hole`: `through`.
//! - `cost_per_hour` is what machine and operator cost; it adds the column `cost`.
//! - Every other column is passed through. A column whose name is nearly that of an input, or that
//!   names an input with something that is no unit, is refused, unless it is named in
//!   [`StudyOptions::pass_through`].
//! - What no column gives is a constant, else as in the base. Without a base some inputs have the
//!   defaults of job files; [`StudyPlan::assumptions`] tells which.
//!
//! # Rows
//!
//! A null in an input that the row needs gives the row the code `missing`; in an optional one it
//! means none, or the default where there is one. A NaN is a value and gives `not_finite`. A name that the tables do not know gives the
//! code of that error. Such rows have nulls for results; the other rows are computed.
//!
//! # Results
//!
//! The rows' own columns come first, unchanged. A result whose name a column of the rows already has
//! gets `result_` before its name. `status` is `ok` or the name of a [`gullet::Code`];
//! `binding_limit` names the limit nearest to its bound, or the one that made the row an error;
//! `held_by` the limit that holds the feed below the wanted one; `warnings` the doubts, joined by
//! `;`. Each field of a result carries its unit, kind and meaning as metadata.
//!
//! With [`StudyOptions::uncertainty`] every result that is written is followed by its quantiles over
//! the draws, `time_p5_s` for that of 5 %, and `draws_left_out` counts the draws of a row that left
//! what can be computed.
#![forbid(unsafe_code)]

mod base;
mod choice;
mod draws;
mod found;
mod milling;
mod names;
mod numbers;
mod options;
mod output;
mod plan;
mod process;
mod run;
mod start;
mod subject;
mod summary;
mod takes;
mod totals;

pub use draws::DrawWords;
pub use names::{COST_PER_HOUR, Role, with_unit};
pub use options::{Columns, StudyOptions, TextNumbers};
pub use output::{HELD_BY, LEFT_OUT, LIMIT, STATUS, WARNINGS};
pub use plan::StudyPlan;
pub use run::{Answer, RowProblem};
pub use start::Start;
pub use summary::Summary;
pub use takes::{Number, Pick, Takes, Word};
pub use totals::Totals;
