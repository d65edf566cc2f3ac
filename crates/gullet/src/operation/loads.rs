//! Loads of cutter, machine and hold: what straight passes and every other operation have in common.

use super::cut::Log;
use super::numbers::{Pair, no_rake};
use crate::formula::{deflection, force, holding, power, practice};
use crate::quantity::math::{max, min, number};
use crate::quantity::{
    Angle, Force, Kind, Length, Power, Pressure, Ratio, RotationalSpeed, Torque, VolumeRate,
};

/// Specific cutting force of one pair.
#[inline(always)]
pub(crate) fn k_c(log: &mut impl Log, pair: Pair, h: Length, factor: Ratio) -> Pressure {
    force::specific_cutting_force::step(
        log,
        pair.kc11,
        pair.exponent,
        h,
        no_rake(),
        no_rake(),
        number(0.01),
        factor,
    )
}

/// Power and torque that limits are checked with.
#[inline(always)]
pub(crate) fn rotary_load(
    log: &mut impl Log,
    k: Pressure,
    removal_rate: VolumeRate,
    n: RotationalSpeed,
) -> (Power, Torque) {
    let limit_power = power::cutting_power::step(log, removal_rate, k);
    let limit_torque = power::cutting_torque::step(log, limit_power, n);
    (limit_power, limit_torque)
}

/// What an arc and a helix make of the largest force of one tooth: the sum over the teeth, and helical
/// edges over straight ones.
#[inline(always)]
#[allow(clippy::too_many_arguments)]
pub(crate) fn tooth_factors(
    log: &mut impl Log,
    teeth: Ratio,
    arc: Angle,
    largest_sine: Ratio,
    chip_ratio: Ratio,
    exponent: Ratio,
    axial_depth: Length,
    diameter: Length,
    helix_angle: Angle,
) -> (Ratio, Ratio) {
    let sum = force::tooth_sum_factor::step(log, teeth, arc, largest_sine, exponent);
    let relief = force::helix_relief_factor::step(
        log,
        teeth,
        arc,
        chip_ratio,
        exponent,
        sum,
        axial_depth,
        diameter,
        helix_angle,
    );
    (sum, relief)
}

/// How far the tip of a cutter bends under a force across its axis.
#[inline(always)]
pub(crate) fn bending(
    log: &mut impl Log,
    in_plane: Force,
    diameter: Length,
    fluted: Length,
    stick_out: Length,
    shank_diameter: Length,
    modulus: Pressure,
) -> Length {
    let flute_diameter = deflection::fluted_equivalent_diameter::step(log, diameter, number(0.8));
    deflection::stepped_cutter_deflection::step(
        log,
        in_plane,
        stick_out,
        fluted,
        flute_diameter,
        shank_diameter,
        modulus,
    )
}

/// Clamping force that holds the work under forces across the tool's axis and along it.
#[inline(always)]
pub(crate) fn clamping_needed(
    log: &mut impl Log,
    in_plane: Force,
    axial: Force,
    friction: Ratio,
    safety: Ratio,
    across_jaws: bool,
) -> Force {
    let along = holding::required_clamping_force::step(log, in_plane, axial, friction, safety);
    let across = holding::clamping_force_across::step(log, in_plane, safety);
    if across_jaws {
        max(along, across)
    } else {
        along
    }
}

/// Power and torque that a drive gives at a speed, within the practice's share.
#[inline(always)]
pub(crate) fn available_at(
    log: &mut impl Log,
    motor_power: Power,
    efficiency: Ratio,
    power_share: Ratio,
    base_speed: RotationalSpeed,
    maximum_torque: Torque,
    n: RotationalSpeed,
) -> (Power, Torque) {
    let usable = practice::usable_power::step(log, motor_power, efficiency, power_share);
    let power = power::available_power::step(log, usable, base_speed, n);
    let torque = power::available_torque::step(log, usable, base_speed, n);
    let held = min(torque, maximum_torque);
    if log.records() && maximum_torque.value.is_finite() {
        log.choose(Kind::Torque, held.value, || {
            "torque available, at most what the drive holds".to_owned()
        });
    }
    (power, held)
}
