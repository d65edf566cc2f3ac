//! A job: what is to be cut, with what, how held.

use crate::model::{Blank, Cutter, Hold, Machine, Practice};
use crate::operation::Operation;
use crate::quantity::{Length, RotationalSpeed, UnitSystem};
use crate::table::Material;

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
    /// Defaults that were assumed, in words.
    pub assumptions: Vec<String>,
}
