//! The quick look at a row: whether it is surely within what the scalar call admits.

use crate::elementary::floor;
use crate::operation::Operation;
use crate::operation::numbers::{Inputs, Kinds};

/// Whether no check of the set-up and the pass can find fault with these numbers. What it holds back
/// is looked at by those checks.
#[inline(always)]
pub(super) fn clean(kinds: &Kinds, inputs: &Inputs) -> bool {
    let d = inputs.diameter.value;
    let teeth = inputs.teeth.value;
    let flutes = inputs.flute_length.value;
    let stick_out = inputs.stick_out.value;
    let axial = inputs.axial_depth.value;
    let radial = inputs.radial_depth.value;
    let asked_speed = inputs.asked_speed.value;
    let asked_feed = inputs.asked_feed.value;
    let marked = inputs.cutter_speed.value;
    let roughness = inputs.mean_roughness.value;
    let helix = inputs.helix_angle.value;
    let cutter = within(d, 1.0)
        & within(teeth, 200.0)
        & (teeth == floor(teeth))
        & within(flutes, 1e6)
        & within(inputs.shank_diameter.value, 1e6)
        & within(stick_out, 1e6)
        & (flutes <= stick_out)
        & (0.0..=1.39).contains(&helix)
        & (within(marked, 1e5) | (marked == f64::INFINITY));
    let radius = inputs.corner_radius.value;
    let radius_fits = (radius >= 0.0) & (radius <= d / 2.0);
    let angle_fits = within(
        inputs.cutting_edge_angle.value,
        core::f64::consts::FRAC_PI_2,
    );
    let form = (radius_fits | !kinds.corner_radius) & (angle_fits | !kinds.face_mill);
    let hold = within(inputs.clamping_force.value, 1e7)
        & within(inputs.friction.value, 1.0)
        & within(inputs.grip_depth.value, 1e6)
        & within(inputs.part_height.value, 1e4);
    let pass = within(axial, 1e4)
        & (axial <= flutes)
        & within(radial, 1e4)
        & within(inputs.cut_length.value, 1e4)
        & ((asked_feed == 0.0) | within(asked_feed, d / 2.0))
        & ((asked_speed == 0.0) | within(asked_speed, 1e5))
        & ((roughness == f64::INFINITY) | within(roughness, 1e-3));
    let reach = match kinds.operation {
        Operation::SideMilling => radial <= d,
        Operation::Slotting => true,
        Operation::FaceMilling => {
            (inputs.offset.value.abs() < (radial + d) / 2.0) & !kinds.ball_nose
        }
    };
    cutter & form & hold & pass & reach
}

/// Above 0, at most a bound.
#[inline(always)]
fn within(x: f64, most: f64) -> bool {
    (x > 0.0) & (x <= most)
}
