//! One operation of a part: what is done, where, how often.

use crate::model::Machine;
use crate::operation::process::Request;
use crate::quantity::{MoneyRate, Time};
use crate::table::ToolMaterial;

/// What is done next.
#[derive(Debug, Clone, PartialEq)]
pub enum PartStep {
    /// An operation.
    Operation(Box<PartOperation>),
    /// The six clampings of the block.
    Squaring,
}

/// One operation on the part.
#[derive(Debug, Clone)]
pub struct PartOperation {
    /// What is done, as the shop says it.
    pub name: String,
    /// How the part is held; operations in a row with the same words share a clamping.
    pub clamping: String,
    /// The operation with its inputs.
    pub request: Request,
    /// The machine.
    pub machine: Machine,
    /// What the tool's edges are made of.
    pub tool: ToolMaterial,
    /// How often it is done on one part.
    pub count: u32,
    /// Time to move to each place and back, and to clear chips.
    pub handling_time: Time,
    /// Time to change to this tool, once a part.
    pub tool_change_time: Time,
    /// Time to make machine and tool ready, once a lot.
    pub setup_time: Time,
    /// Time to clean, seat and clamp the work, where a new clamping begins.
    pub clamping_time: Time,
    /// Time to measure the work after it.
    pub measuring_time: Time,
    /// Time to deburr the work after it.
    pub deburring_time: Time,
    /// Machine and operator, money per time; the part's where it is not given.
    pub rate: Option<MoneyRate>,
    /// What to look after before and while it is done, in the shop's words.
    pub note: Option<String>,
}

impl PartialEq for PartOperation {
    fn eq(&self, other: &PartOperation) -> bool {
        self.name == other.name
            && self.clamping == other.clamping
            && self.request == other.request
            && self.machine == other.machine
            && self.tool == other.tool
            && self.count == other.count
            && self.times() == other.times()
            && self.rate == other.rate
            && self.note == other.note
    }
}

impl PartOperation {
    fn times(&self) -> [Time; 6] {
        [
            self.handling_time,
            self.tool_change_time,
            self.setup_time,
            self.clamping_time,
            self.measuring_time,
            self.deburring_time,
        ]
    }
}
