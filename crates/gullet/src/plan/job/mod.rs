//! A job: what is to be cut, with what, how held; read from a job file.

mod keys;
mod machine;
mod part;
mod read;
mod sections;
mod words;

pub use keys::{JobKey, job_keys};
pub(in crate::plan) use machine::{machine, practice};
pub use part::Part;
pub(in crate::plan) use read::{cutter_of, hold_of, job, material, unnamed_cutter};
pub(in crate::plan) use sections::{CutterKeys, HoldKeys, MachineKeys, MaterialKeys, PracticeKeys};

use super::document::{self, Node};
use crate::error::Result;
use crate::model::{Blank, Cutter, Hold, Machine, Practice};
use crate::operation::Operation;
use crate::quantity::{Length, RotationalSpeed, UnitSystem};
use crate::table::{Library, Material};

/// How much is to come off.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stock {
    /// A depth to remove.
    Remove(Length),
    /// A size as measured and the size wanted.
    Measured {
        /// Size as measured.
        measured: Length,
        /// Size wanted.
        target: Length,
    },
}

/// How the stock is split into passes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Strategy {
    /// As few passes as the limits allow, all of the same depth to one count of the readout.
    Even,
    /// Every pass as deep as the limits allow, the rest in the last one.
    DeepestFirst,
}

/// A job as read from a job file.
#[derive(Debug, Clone, PartialEq)]
pub struct Job {
    /// Title on the card.
    pub title: String,
    /// Units the card prints in.
    pub units: UnitSystem,
    /// Work material.
    pub material: Material,
    /// The blank.
    pub blank: Blank,
    /// The cutter.
    pub cutter: Cutter,
    /// The machine.
    pub machine: Machine,
    /// The vise.
    pub hold: Hold,
    /// The practice.
    pub practice: Practice,
    /// The operation.
    pub operation: Operation,
    /// How much is to come off: across the axis in side milling, along it in slotting and facing.
    pub stock: Stock,
    /// Side milling: height of the wall the cutter covers, along its axis.
    pub axial_depth: Option<Length>,
    /// Face milling: width of the work under the cutter; the blank's width where not given.
    pub radial_depth: Option<Length>,
    /// Face milling: distance from the cutter's axis to the middle of the work.
    pub offset: Length,
    /// Length of the cut; the blank's length where not given.
    pub length: Option<Length>,
    /// How the stock is split.
    pub strategy: Strategy,
    /// Mean roughness wanted of the finishing pass.
    pub mean_roughness: Option<Length>,
    /// What the readout shows when the cutter touches the stock.
    pub readout_start: Length,
    /// Whether the readout counts up while stock is removed.
    pub readout_rises: bool,
    /// Spindle speed to use instead of the table's.
    pub spindle_speed: Option<RotationalSpeed>,
    /// Feed per tooth to use instead of the table's.
    pub feed_per_tooth: Option<Length>,
    /// What the file left out and the reading assumed, for the card to state.
    pub assumptions: Vec<String>,
}

impl Job {
    /// Reads a job file in TOML; `library` holds the materials.
    ///
    /// # Errors
    /// [`Code::Syntax`](crate::Code::Syntax) with line and column for a file that is not well-formed;
    /// otherwise every unknown, missing, unreadable, inadmissible or contradictory key at once, each
    /// with its path, such as `cutter.teeth`, and its line.
    ///
    /// ```
    /// use gullet::{plan::Job, table::Library};
    /// let file = r#"
    ///     [material]
    ///     id = "6061"
    ///     [blank]
    ///     length = "3 in"
    ///     width = "2 in"
    ///     height = "1 in"
    ///     [cutter]
    ///     form = "square"
    ///     material = "HSS"
    ///     diameter = "1/2 in"
    ///     teeth = 2
    ///     flute_length = "1 in"
    ///     stick_out = "1.5 in"
    ///     [machine]
    ///     base = "manual-knee-mill"
    ///     [hold]
    ///     clamping_force = "10 kN"
    ///     grip_depth = "1/2 in"
    ///     [cut]
    ///     operation = "side-milling"
    ///     remove = "0.120 in"
    ///     axial_depth = "0.4 in"
    /// "#;
    /// let job = Job::from_toml(file, Library::builtin())?;
    /// assert!(job.assumptions.iter().any(|text| text.contains("helix_angle")));
    ///
    /// let error = Job::from_toml(&file.replace("teeth", "teath"), Library::builtin()).unwrap_err();
    /// assert_eq!(error.problems()[0].parameter, "cutter.teath");
    /// assert!(error.to_string().contains("did you mean teeth?"));
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn from_toml(text: &str, library: &Library) -> Result<Job> {
        read::job(&Node::from_toml(text)?, library)
    }

    /// Reads a job file in JSON, with the same sections and keys as in TOML.
    ///
    /// # Errors
    /// Those of [`Job::from_toml`], without lines but for faults of form.
    pub fn from_json(text: &str, library: &Library) -> Result<Job> {
        read::job(&Node::from_json(text)?, library)
    }
}

/// The JSON Schema (draft 2020-12) of a job file, as text that ends in a line break.
pub fn job_schema() -> String {
    let sections: Vec<_> = sections::SECTIONS.iter().map(|section| section()).collect();
    let schema = document::schema("urn:gullet:job", "Job file of gullet", &sections);
    format!("{schema:#}\n")
}

/// Every key of a job file with its meaning, as Markdown.
pub fn job_reference() -> String {
    let sections: Vec<_> = sections::SECTIONS.iter().map(|section| section()).collect();
    document::reference(&sections)
}
