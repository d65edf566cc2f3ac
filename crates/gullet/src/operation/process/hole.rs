//! What the operations on holes have in common: travel at feed, the way out of the hole, and loads
//! of solid metal or of a hole that is there already.

use super::ground::Ground;
use super::pick::pick;
use crate::formula::{drilling, force, hole};
use crate::operation::cut::Log;
use crate::quantity::math::{min, select};
use crate::quantity::{
    Acceleration, Angle, Force, Length, Pressure, Ratio, Time, Torque, Velocity, si,
};

/// Specific cutting force of drilling over turning: high-speed steel and chip friction (DIN tables as
/// taught, from memory).
pub(super) const DRILL: f64 = 1.2;

/// An acceleration so high that ramps take no time, where none is known.
const AT_ONCE: f64 = 1e4;

/// How a tool moves out of a hole and back into it.
#[derive(Clone, Copy)]
pub(super) struct Rapids {
    pub v: Velocity,
    pub a: Acceleration,
}

/// The machine's rapid traverse; where it has none, the pace of the hand.
#[inline(always)]
pub(super) fn rapids(ground: &Ground, hand_speed: Velocity) -> Rapids {
    Rapids {
        v: select(has_rapids(ground), ground.rapid_speed, hand_speed),
        a: min(ground.acceleration, si(AT_ONCE)),
    }
}

#[inline(always)]
pub(super) fn has_rapids(ground: &Ground) -> bool {
    ground.rapid_speed.value < f64::INFINITY
}

/// Travel at feed: a blind hole ends at its full diameter with the point below it, a through hole
/// where the point has left the work, with the clearance once more.
#[inline(always)]
pub(super) fn travel(
    log: &mut impl Log,
    through: bool,
    depth: Length,
    point: Length,
    clearance: Length,
) -> Length {
    pick(
        log,
        through,
        |log| hole::through_hole_travel::step(log, depth, point, clearance, clearance),
        |log| hole::blind_hole_travel::step(log, depth, point, clearance),
    )
}

/// Time of a travel at feed in one go, and out again at rapid speed: a single peck.
#[inline(always)]
pub(super) fn single_time(
    log: &mut impl Log,
    travel: Length,
    v_f: Velocity,
    rapids: Rapids,
    dwell: Time,
) -> Time {
    let none = si(0.0);
    let Rapids { v, a } = rapids;
    hole::chip_break_cycle_time::step(log, travel, travel, none, v_f, v, a, dwell)
}

/// Torque of a drill, in solid metal where there is no hole before.
#[inline(always)]
pub(super) fn torque(
    log: &mut impl Log,
    diameter: Length,
    start: Length,
    f: Length,
    k: Pressure,
) -> Torque {
    pick(
        log,
        start.value <= 0.0,
        |log| force::drilling_torque::step(log, diameter, f, k),
        |log| drilling::enlarging_torque::step(log, diameter, start, f, k),
    )
}

/// Thrust over cutting force of edges that no chisel edge helps; common practice, no source.
const EDGES: f64 = 0.5;

/// Thrust of a drill; the chisel edge pushes only where there is no hole before.
#[inline(always)]
#[allow(clippy::too_many_arguments)]
pub(super) fn thrust(
    log: &mut impl Log,
    k: Pressure,
    diameter: Length,
    start: Length,
    f: Length,
    point_angle: Angle,
    chisel_factor: Ratio,
) -> Force {
    let edges = si(EDGES);
    pick(
        log,
        start.value <= 0.0,
        |log| force::drilling_thrust::step(log, k, diameter, f, point_angle, chisel_factor),
        |log| drilling::enlarging_thrust::step(log, k, diameter, start, f, point_angle, edges),
    )
}
