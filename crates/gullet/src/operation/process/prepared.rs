//! A cut with everything looked up, ready to be computed.

use super::Process;
use super::ground::Ground;
use crate::model::{Machine, Practice};
use crate::quantity::UnitSystem;
use crate::table::{Grounds, Material, ToolMaterial};

/// What one cut is computed from.
pub(crate) struct Prepared<'a> {
    pub process: &'static Process,
    pub material: &'a Material,
    pub tool: ToolMaterial,
    pub machine: &'a Machine,
    pub practice: &'a Practice,
    pub units: UnitSystem,
    pub values: &'a [f64],
    pub grounds: &'a Grounds,
    pub ground: Ground,
}

impl Ground {
    /// Lays the tables' feed at a size over the numbers.
    pub(crate) fn read_feed(&mut self, grounds: &Grounds, diameter: f64, depth: f64) {
        if let Some(reader) = &grounds.feed {
            let feed = reader.numbers(diameter, depth);
            self.feed_low = crate::quantity::si(feed.low);
            self.feed_start = crate::quantity::si(feed.start);
            self.feed_high = crate::quantity::si(feed.high);
            if feed.assumed {
                self.assumed = crate::quantity::si(1.0);
            }
        }
    }
}
