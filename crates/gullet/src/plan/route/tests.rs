//! A block for the tests of this module.

use super::SquaredBlock;
use crate::table::Library;

/// A strip of cold-drawn steel, sawn to length, on the knee mill.
pub(super) const FILE: &str = r#"
    route = "squared-block"
    units = "inch"
    material.id = "1018cd"
    machine.base = "manual-knee-mill"
    blank = { length = "3.300 in", width = "2.100 in", height = "1.150 in", sawn = ["left", "right"] }
    part = { length = "3.200 in", width = "2.000 in", height = "1.050 in", tolerance = "0.004 in" }
    [cutter]
    form = "square"
    material = "HSS"
    diameter = "3/4 in"
    teeth = 4
    flute_length = "1-1/2 in"
    stick_out = "1-3/4 in"
    [hold]
    clamping_force = "14 kN"
    jaw_height = "1-3/4 in"
    parallels = ["1/2 in", "3/4 in", "7/8 in", "1 in", "1-1/8 in"]
    round_bar = "1/2 in"
"#;

pub(super) fn block() -> SquaredBlock {
    match SquaredBlock::from_toml(FILE, Library::builtin()) {
        Ok(block) => block,
        Err(error) => panic!("{error}"),
    }
}
