//! The numeric chain of a milling pass: formulas only, the same for scalar calls, searches, columns
//! and worked steps.

use super::cut::Log;
use super::loads::{available_at, bending, clamping_needed, k_c, rotary_load, tooth_factors};
use super::numbers::{
    Engagement, Finish, Geometry, Inputs, Kinds, Law, Motion, Outcome, Peak, Rotary,
    UNIT_POWER_EXPONENT, Worst, no_rake, one, unit_feed,
};
use super::request::Operation;
use crate::formula::{
    NoRecord, chip, diameter, engagement, finish as finish_formula, force, power, practice,
    removal, rotation, time,
};
use crate::model::Direction;
use crate::quantity::math::{asin, max, min, number, select};
use crate::quantity::{Angle, Kind, Length, Power, RotationalSpeed, Torque, VolumeRate, si};

/// How the cutter meets the work: the diameter that cuts, the edges of the work, the edge's angle.
#[inline(always)]
pub(crate) fn engage(log: &mut impl Log, kinds: &Kinds, inputs: &Inputs) -> Engagement {
    let d = inputs.diameter;
    let a_p = inputs.axial_depth;
    let half = d / 2.0;
    let effective_diameter = if kinds.ball_nose {
        diameter::ball_effective_diameter::step(log, d, a_p, no_rake())
    } else if kinds.corner_radius {
        diameter::corner_radius_effective_diameter::step(log, d, inputs.corner_radius, a_p)
    } else if kinds.face_mill {
        diameter::face_mill_outer_diameter::step(log, d, a_p, inputs.cutting_edge_angle)
    } else {
        d
    };
    let half_width = inputs.radial_depth / 2.0;
    let (edge_low, edge_high) = match kinds.operation {
        Operation::FaceMilling => (
            max(inputs.offset - half_width, -half),
            min(inputs.offset + half_width, half),
        ),
        _ => (-half, half),
    };
    let radial_depth = match kinds.operation {
        Operation::SideMilling => min(inputs.radial_depth, d),
        Operation::Slotting => d,
        Operation::FaceMilling => edge_high - edge_low,
    };
    let cutting_edge_angle = if kinds.ball_nose | kinds.corner_radius {
        let round =
            chip::round_edge_mean_thickness_ratio::value(2.0 * max(inputs.corner_radius, a_p), a_p);
        select(
            inputs.within_round_edge(),
            asin(round),
            inputs.cutting_edge_angle,
        )
    } else {
        inputs.cutting_edge_angle
    };
    Engagement {
        effective_diameter,
        radial_depth,
        edge_low,
        edge_high,
        cutting_edge_angle,
    }
}

/// Arc, teeth in cut, chip width and travel.
#[inline(always)]
pub(crate) fn geometry(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    engaged: &Engagement,
) -> Geometry {
    let d = inputs.diameter;
    let Engagement {
        radial_depth: a_e,
        edge_low,
        edge_high,
        ..
    } = *engaged;
    let straight: Angle = si(core::f64::consts::PI);
    let (entry_angle, exit_angle, arc, largest_sine, approach) = match kinds.operation {
        Operation::SideMilling => {
            let arc = engagement::engagement_angle::step(log, d, a_e);
            let (entry, exit) = match kinds.direction {
                Direction::Conventional => {
                    (si(0.0), engagement::up_milling_exit_angle::value(d, a_e))
                }
                Direction::Climb => (
                    engagement::down_milling_entry_angle::step(log, d, a_e),
                    straight,
                ),
            };
            let sine = one() / chip::radial_thinning_factor::value(d, a_e);
            let approach = time::peripheral_approach::step(log, d, a_e);
            (entry, exit, arc, sine, approach)
        }
        Operation::Slotting => {
            let arc = engagement::engagement_angle::step(log, d, d);
            let approach = time::peripheral_approach::step(log, d, d);
            (si(0.0), straight, arc, one(), approach)
        }
        Operation::FaceMilling => {
            let entry = engagement::face_entry_angle::step(log, d, edge_high);
            let exit = engagement::face_exit_angle::step(log, d, edge_low);
            let arc = engagement::face_engagement_angle::step(log, d, edge_low, edge_high);
            // The largest chip of one unit of feed is the largest sine in the arc.
            let unit = unit_feed();
            let sine =
                chip::face_max_chip_thickness::value(unit, d, edge_low, edge_high, straight / 2.0)
                    / unit;
            let centred = edge_low.value < 0.0
                && edge_high.value > 0.0
                && (edge_low.value + edge_high.value).abs() <= 1e-9 * d.value;
            let approach = if centred {
                time::face_approach_centred::step(log, d, a_e)
            } else {
                // Off the centre the whole radius is the most that first contact can lie ahead.
                d / 2.0
            };
            (entry, exit, arc, sine, approach)
        }
    };
    if log.records() && inputs.within_round_edge() {
        chip::round_edge_mean_thickness_ratio::step(
            log,
            2.0 * inputs.corner_radius,
            inputs.axial_depth,
        );
        log.choose(Kind::Angle, engaged.cutting_edge_angle.value, || {
            "the angle whose sine is that ratio: a straight edge of the same length and chip area stands for the round one".to_owned()
        });
    }
    let chip_width =
        chip::turning_chip_width::step(log, inputs.axial_depth, engaged.cutting_edge_angle);
    let sweeps_out = kinds.finishing || kinds.operation == Operation::Slotting;
    let overtravel = if sweeps_out && kinds.operation != Operation::SideMilling {
        d / 2.0
    } else {
        si(0.0)
    };
    let travel = practice::cut_travel::step(
        log,
        inputs.cut_length,
        approach,
        overtravel,
        inputs.clearance,
    );

    let silent = &mut NoRecord;
    let unit = unit_feed();
    let largest = max_chip(silent, kinds, inputs, engaged, unit);
    let chip_ratio = mean_chip(silent, kinds, inputs, engaged, unit) / largest;
    Geometry {
        entry_angle,
        exit_angle,
        arc,
        largest_sine,
        chip_per_feed: largest / unit,
        chip_ratio,
        chip_width,
        travel,
    }
}

#[inline(always)]
pub(crate) fn max_chip(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    engaged: &Engagement,
    f_z: Length,
) -> Length {
    match kinds.operation {
        Operation::SideMilling | Operation::Slotting => chip::max_chip_thickness::step(
            log,
            f_z,
            inputs.diameter,
            engaged.radial_depth,
            engaged.cutting_edge_angle,
        ),
        Operation::FaceMilling => chip::face_max_chip_thickness::step(
            log,
            f_z,
            inputs.diameter,
            engaged.edge_low,
            engaged.edge_high,
            engaged.cutting_edge_angle,
        ),
    }
}

#[inline(always)]
pub(crate) fn mean_chip(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    engaged: &Engagement,
    f_z: Length,
) -> Length {
    match kinds.operation {
        Operation::SideMilling | Operation::Slotting => chip::mean_chip_thickness::step(
            log,
            f_z,
            inputs.diameter,
            engaged.radial_depth,
            engaged.cutting_edge_angle,
        ),
        Operation::FaceMilling => chip::face_mean_chip_thickness::step(
            log,
            f_z,
            inputs.diameter,
            engaged.edge_low,
            engaged.edge_high,
            engaged.cutting_edge_angle,
        ),
    }
}

/// Width of the cut: of a slot with a round end what the end cuts at this depth.
#[inline(always)]
fn width(kinds: &Kinds, engaged: &Engagement) -> Length {
    let round = kinds.ball_nose | kinds.corner_radius;
    if kinds.operation == Operation::Slotting && round {
        engaged.effective_diameter
    } else {
        engaged.radial_depth
    }
}

#[inline(always)]
pub(crate) fn peak_load(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    geometry: &Geometry,
    law: &Worst,
    max_chip: Length,
) -> Peak {
    let k_peak = law.force(log, max_chip, inputs.wear_factor);
    let (tooth_sum, relief) = if log.records() {
        tooth_factors(
            log,
            inputs.teeth,
            geometry.arc,
            geometry.largest_sine,
            geometry.chip_ratio,
            law.exponent,
            inputs.axial_depth,
            inputs.diameter,
            inputs.helix_angle,
        )
    } else {
        (law.tooth_sum, law.relief)
    };
    let tangential = force::peak_tangential_force::step(
        log,
        k_peak,
        max_chip,
        geometry.chip_width,
        tooth_sum,
        relief,
    );
    let in_plane = force::in_plane_force::step(log, tangential, inputs.radial_force_ratio);
    let axial = force::helix_axial_force::step(log, tangential, inputs.helix_angle);
    // A face mill's body is solid: its arbor bends, not a fluted length.
    let fluted = if kinds.face_mill {
        si(0.0)
    } else {
        min(inputs.flute_length, inputs.stick_out)
    };
    let deflection = bending(
        log,
        in_plane,
        inputs.diameter,
        fluted,
        inputs.stick_out,
        inputs.shank_diameter,
        inputs.modulus,
    );
    let clamping_needed = clamping_needed(
        log,
        in_plane,
        axial,
        inputs.friction,
        inputs.safety,
        kinds.across_jaws,
    );
    Peak {
        tangential,
        in_plane,
        axial,
        deflection,
        clamping_needed,
    }
}

/// Power and torque the machine gives at a speed, within the practice's share.
#[inline(always)]
pub(crate) fn available(
    log: &mut impl Log,
    inputs: &Inputs,
    n: RotationalSpeed,
) -> (Power, Torque) {
    available_at(
        log,
        inputs.motor_power,
        inputs.efficiency,
        inputs.power_share,
        inputs.base_speed,
        inputs.maximum_torque,
        n,
    )
}

/// Everything that follows from a spindle speed and a feed per tooth.
#[inline(always)]
#[allow(clippy::too_many_arguments)]
pub(crate) fn outcome(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    engaged: &Engagement,
    geometry: &Geometry,
    laws: &[Law; 4],
    n: RotationalSpeed,
    f_z: Length,
) -> Outcome {
    let motion = motion(log, kinds, inputs, engaged, n, f_z);
    let at_mean = Worst::among(laws, motion.mean_chip, inputs.wear_factor);
    let at_largest = Worst::among(laws, motion.max_chip, inputs.wear_factor);
    let rotary = rotary(log, inputs, &motion, &at_mean, n);
    let peak = peak(log, kinds, inputs, geometry, &motion, &at_largest);
    let finish = finish(log, kinds, inputs, geometry, &motion);
    Outcome {
        motion,
        rotary,
        peak,
        finish,
    }
}

/// Motion, chips, and power with the material's own pair.
#[inline(always)]
pub(crate) fn motion(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    engaged: &Engagement,
    n: RotationalSpeed,
    f_z: Length,
) -> Motion {
    let z = inputs.teeth;
    let cutting_speed = rotation::cutting_speed::step(log, n, engaged.effective_diameter);
    let feed_per_rev = rotation::feed_per_rev::step(log, f_z, z);
    let table_feed = rotation::table_feed::step(log, f_z, z, n);
    let max_chip = max_chip(log, kinds, inputs, engaged, f_z);
    let mean_chip = mean_chip(log, kinds, inputs, engaged, f_z);
    let removal_rate = removal::milling_removal_rate::step(
        log,
        inputs.axial_depth,
        width(kinds, engaged),
        table_feed,
    );
    let [own, ..] = inputs.pairs();
    let specific_cutting_force = k_c(log, own, mean_chip, one());
    let cutting_power = power::cutting_power::step(log, removal_rate, specific_cutting_force);
    let motor_power = power::motor_power::step(log, cutting_power, inputs.efficiency);
    let torque = power::cutting_torque::step(log, cutting_power, n);
    let mean_force = force::tangential_force::step(log, cutting_power, cutting_speed);
    let unit_power_power = second_method(log, kinds, inputs, mean_chip, removal_rate);
    Motion {
        cutting_speed,
        feed_per_rev,
        table_feed,
        max_chip,
        mean_chip,
        removal_rate,
        specific_cutting_force,
        cutting_power,
        motor_power,
        torque,
        mean_force,
        unit_power_power,
    }
}

/// Power and torque that limits are checked with, and those there are.
#[inline(always)]
pub(crate) fn rotary(
    log: &mut impl Log,
    inputs: &Inputs,
    motion: &Motion,
    worst: &Worst,
    n: RotationalSpeed,
) -> Rotary {
    let highest = worst.pair();
    if log.records() {
        let [a, b, c, unit] = inputs.pairs();
        let by_unit_power = highest == unit && ![a, b, c].contains(&unit);
        log.choose(Kind::Pressure, highest.kc11.value, || {
            if by_unit_power {
                "for limits the unit power, here the higher method, as k_c1.1 at a chip of 1 mm, with a worn edge"
            } else {
                "for limits the pair with the highest force, with a worn edge"
            }
            .to_owned()
        });
    }
    let k_limit = worst.force(log, motion.mean_chip, inputs.wear_factor);
    let (limit_power, limit_torque) = rotary_load(log, k_limit, motion.removal_rate, n);
    let (available_power, available_torque) = available(log, inputs, n);
    Rotary {
        limit_power,
        limit_torque,
        available_power,
        available_torque,
    }
}

/// Peak forces, and what bends and loosens under them.
#[inline(always)]
pub(crate) fn peak(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    geometry: &Geometry,
    motion: &Motion,
    worst: &Worst,
) -> Peak {
    peak_load(log, kinds, inputs, geometry, worst, motion.max_chip)
}

/// What the pass leaves and takes.
#[inline(always)]
pub(crate) fn finish(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    geometry: &Geometry,
    motion: &Motion,
) -> Finish {
    Finish {
        mean_roughness: roughness(log, kinds, inputs, motion.feed_per_rev),
        time: time::cutting_time::step(log, geometry.travel, motion.table_feed),
    }
}

/// Removal rate at a feed per tooth.
#[inline(always)]
pub(crate) fn removal_rate(
    kinds: &Kinds,
    inputs: &Inputs,
    engaged: &Engagement,
    n: RotationalSpeed,
    f_z: Length,
) -> VolumeRate {
    let table_feed = rotation::table_feed::value(f_z, inputs.teeth, n);
    removal::milling_removal_rate::value(inputs.axial_depth, width(kinds, engaged), table_feed)
}

/// Power at the cutter by the unit power; NaN where none is known.
#[inline(always)]
fn second_method(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    mean_chip: Length,
    removal_rate: VolumeRate,
) -> Power {
    // Flags of their own: a choice between three is no work for vectors.
    if log.records() && !kinds.unit_power {
        return si(f64::NAN);
    }
    let u = if kinds.unit_power_at_chip {
        power::unit_power_at_chip::step(
            log,
            inputs.unit_power,
            inputs.unit_power_chip,
            mean_chip,
            number(UNIT_POWER_EXPONENT),
        )
    } else {
        inputs.unit_power
    };
    let given = power::cutting_power::step(log, removal_rate, u);
    if kinds.unit_power_at_motor {
        // What reaches the cutter of a power at the motor.
        practice::usable_power::step(log, given, inputs.unit_power_efficiency, one())
    } else {
        given
    }
}

/// Theoretical roughness: of a wall from the feed marks of one tooth a revolution, of a floor from
/// the corner radius; NaN where no model applies, as for a sharp corner.
#[inline(always)]
fn roughness(log: &mut impl Log, kinds: &Kinds, inputs: &Inputs, f: Length) -> Length {
    match kinds.operation {
        Operation::SideMilling => {
            let applies = f.value <= inputs.diameter.value;
            if log.records() && !applies {
                return si(f64::NAN);
            }
            log.choose(Kind::Length, f.value, || {
                "for the feed marks the feed per revolution in the place of f_z: with run-out one tooth leaves the mark".to_owned()
            });
            let height = finish_formula::feed_mark_height::step(log, f, inputs.diameter);
            let roughness = finish_formula::feed_mark_mean_roughness::step(log, height);
            select(applies, roughness, si(f64::NAN))
        }
        Operation::Slotting | Operation::FaceMilling => {
            let radius = inputs.corner_radius;
            let applies = radius.value > 0.0 && f.value <= 2.0 * radius.value;
            if log.records() && !applies {
                return si(f64::NAN);
            }
            let roughness = finish_formula::turning_mean_roughness::step(log, f, radius);
            select(applies, roughness, si(f64::NAN))
        }
    }
}

/// The largest feed per revolution that meets a mean roughness; infinite where no model applies.
#[inline(always)]
pub(crate) fn feed_per_rev_for_roughness(kinds: &Kinds, inputs: &Inputs) -> Length {
    let wanted = inputs.mean_roughness;
    let endless = si(f64::INFINITY);
    match kinds.operation {
        Operation::SideMilling => practice::feed_for_wall_roughness::value(wanted, inputs.diameter),
        Operation::Slotting | Operation::FaceMilling => select(
            inputs.corner_radius.value > 0.0,
            finish_formula::feed_for_mean_roughness::value(wanted, inputs.corner_radius),
            endless,
        ),
    }
}
