//! What an operation is asked for: the set-up, and one pass of the cut.

use crate::model::{Cutter, Direction, Hold, Machine, PassKind, Practice};
use crate::quantity::{Length, RotationalSpeed, UnitSystem};
use crate::table::{Library, Material};

/// The milling operations.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Operation {
    /// The side of an end mill cuts a wall; the depth of a pass is radial.
    SideMilling,
    /// A slot as wide as the cutter; the depth of a pass is axial.
    Slotting,
    /// The end of the cutter sweeps a face; the depth of a pass is axial.
    FaceMilling,
}

impl Operation {
    /// Every operation.
    pub const ALL: &'static [Operation] = &[
        Operation::SideMilling,
        Operation::Slotting,
        Operation::FaceMilling,
    ];

    /// The word job files and cards use.
    pub fn name(self) -> &'static str {
        match self {
            Operation::SideMilling => "side-milling",
            Operation::Slotting => "slotting",
            Operation::FaceMilling => "face-milling",
        }
    }
}

/// Everything a cut is made with.
#[derive(Clone, Copy)]
pub struct Setup<'a> {
    /// The tables.
    pub library: &'a Library,
    /// The work material.
    pub material: &'a Material,
    /// The cutter.
    pub cutter: &'a Cutter,
    /// The machine.
    pub machine: &'a Machine,
    /// The vise.
    pub hold: &'a Hold,
    /// The practice.
    pub practice: &'a Practice,
    /// Height of the part along the spindle axis, for the grip.
    pub part_height: Length,
    /// Units that errors and warnings are told in.
    pub units: UnitSystem,
}

/// One pass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pass {
    /// The operation.
    pub operation: Operation,
    /// Roughing or finishing.
    pub kind: PassKind,
    /// Back engagement a_p, along the axis.
    pub axial_depth: Length,
    /// Working engagement a_e, across the axis; of a slot the cutter's diameter, of a face the
    /// width of the work under the cutter.
    pub radial_depth: Length,
    /// Face milling: distance from the cutter's axis to the middle of the work, positive towards
    /// the side where teeth enter.
    pub offset: Length,
    /// Length of the cut along the feed.
    pub length: Length,
    /// Conventional or climb; of slots and faces both, so the value only serves the card.
    pub direction: Direction,
    /// Mean roughness R_a wanted, if any.
    pub mean_roughness: Option<Length>,
    /// Spindle speed to use instead of the table's.
    pub spindle_speed: Option<RotationalSpeed>,
    /// Feed per tooth to use instead of the table's.
    pub feed_per_tooth: Option<Length>,
}

impl Pass {
    /// Depth in which a plan counts this pass: radial in side milling, axial otherwise.
    pub fn depth(&self) -> Length {
        match self.operation {
            Operation::SideMilling => self.radial_depth,
            Operation::Slotting | Operation::FaceMilling => self.axial_depth,
        }
    }

    /// The same pass with another depth.
    pub fn with_depth(mut self, depth: Length) -> Pass {
        match self.operation {
            Operation::SideMilling => self.radial_depth = depth,
            Operation::Slotting | Operation::FaceMilling => self.axial_depth = depth,
        }
        self
    }
}
