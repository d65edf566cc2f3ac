//! Results that follow from settings already made, for scalar calls and columns alike.

use super::lanes::lanes;
use super::limits::Verdict;
use super::loads::k_c;
use super::numbers::{Candidate, Engagement, Geometry, Inputs, Kinds, Outcome, Speeds, one};
use crate::formula::{NoRecord, Recorder, force, power, rotation, time};
use crate::quantity::math::{max, min, number, select};
use crate::quantity::{Length, Power, Pressure, Ratio, Time, Velocity, si};

lanes! {
    /// What a hand needs to follow the table feed.
    Pace, PaceBlock {
        /// NaN where the table is not cranked by hand.
        handwheel_rate: RotationalSpeed,
        time_per_inch: Time,
        time_per_10_mm: Time,
    }
}

/// Pace of the handwheel, and time for a length that is easily read off.
#[inline(always)]
pub(crate) fn pace(
    log: &mut impl Recorder,
    kinds: &Kinds,
    inputs: &Inputs,
    outcome: &Outcome,
) -> Pace {
    let handwheel_rate = if kinds.by_hand {
        rotation::handwheel_rate::step(log, outcome.motion.table_feed, inputs.travel_per_turn)
    } else {
        si(f64::NAN)
    };
    let inch: Length = si(0.0254);
    let ten_mm: Length = si(0.01);
    Pace {
        handwheel_rate,
        time_per_inch: time::cutting_time::value(inch, outcome.motion.table_feed),
        time_per_10_mm: time::cutting_time::value(ten_mm, outcome.motion.table_feed),
    }
}

lanes! {
    /// Ends that the tables' ranges give to force, power and time.
    Ends, EndsBlock {
        force_low: Force,
        force_high: Force,
        power_low: Power,
        power_high: Power,
        time_low: Time,
        time_start: Time,
        time_high: Time,
    }
}

/// What the tables' ranges make of force, power and time.
#[inline(always)]
pub(crate) fn ends(
    inputs: &Inputs,
    engaged: &Engagement,
    geometry: &Geometry,
    outcome: &Outcome,
) -> Ends {
    let [_, b, c, _] = inputs.pairs();
    let k_a = outcome.motion.specific_cutting_force;
    let k_b = k_c(&mut NoRecord, b, outcome.motion.mean_chip, one());
    let k_c = k_c(&mut NoRecord, c, outcome.motion.mean_chip, one());
    let power_low = power_with(outcome, min(min(k_a, k_b), k_c));
    let power_high = power_with(outcome, max(max(k_a, k_b), k_c));
    let times = times(inputs, engaged, geometry);
    Ends {
        force_low: force::tangential_force::value(power_low, outcome.motion.cutting_speed),
        force_high: force::tangential_force::value(power_high, outcome.motion.cutting_speed),
        power_low,
        power_high,
        time_low: times.low,
        time_start: times.start,
        time_high: times.high,
    }
}

/// Whether forces and powers at the ends are surely numbers where the loads of the limits are: none of
/// the material's pairs lies above the worst, so they are far from too large.
#[inline(always)]
pub(crate) fn ends_are_sound(inputs: &Inputs, outcome: &Outcome) -> bool {
    (outcome.rotary.limit_power.value < 1e100)
        & (inputs.wear_factor.value > 1e-50)
        & (outcome.motion.cutting_speed.value > 1e-50)
}

/// Times of the pass at the ends of the tables and at their start.
#[derive(Clone, Copy)]
pub(crate) struct Times {
    pub low: Time,
    pub start: Time,
    pub high: Time,
}

#[inline(always)]
pub(crate) fn times(inputs: &Inputs, engaged: &Engagement, geometry: &Geometry) -> Times {
    let at = |v, f| time_at(inputs, engaged, geometry, v, f);
    Times {
        low: at(inputs.speed_high, inputs.feed_high),
        start: at(inputs.speed_start, inputs.feed_start),
        high: at(inputs.speed_low, inputs.feed_low),
    }
}

#[inline(always)]
fn power_with(outcome: &Outcome, k: Pressure) -> Power {
    power::cutting_power::value(outcome.motion.removal_rate, k)
}

/// Time of the pass at a cutting speed and a feed per tooth.
#[inline(always)]
fn time_at(
    inputs: &Inputs,
    engaged: &Engagement,
    geometry: &Geometry,
    v: Velocity,
    f: Length,
) -> Time {
    let n = rotation::spindle_speed::value(v, engaged.effective_diameter);
    let v_f = rotation::table_feed::value(f, inputs.teeth, n);
    time::cutting_time::value(geometry.travel, v_f)
}

/// Whether every result is a number of the size that formulas admit; what is not goes the way of
/// errors.
#[inline(always)]
pub(crate) fn sound(
    engaged: &Engagement,
    geometry: &Geometry,
    candidate: &Candidate,
    outcome: &Outcome,
    pace: &Pace,
    ends: &Ends,
    verdict: &Verdict,
) -> bool {
    let above = |x: f64| x > f64::MIN_POSITIVE && x < f64::INFINITY;
    let from = |x: f64| (0.0..f64::INFINITY).contains(&x);
    above(engaged.effective_diameter.value)
        & above(engaged.radial_depth.value)
        & from(geometry.entry_angle.value)
        & above(geometry.exit_angle.value)
        & above(geometry.arc.value)
        & above(geometry.chip_per_feed.value)
        & above(geometry.chip_width.value)
        & above(geometry.travel.value)
        & above(candidate.speed.value)
        & above(candidate.feed.value)
        & above(candidate.wanted.value)
        & above(outcome.motion.cutting_speed.value)
        & above(outcome.motion.feed_per_rev.value)
        & above(outcome.motion.table_feed.value)
        & above(outcome.motion.max_chip.value)
        & above(outcome.motion.mean_chip.value)
        & above(outcome.motion.removal_rate.value)
        & above(outcome.motion.specific_cutting_force.value)
        & above(outcome.motion.cutting_power.value)
        & above(outcome.motion.motor_power.value)
        & above(outcome.motion.torque.value)
        & above(outcome.motion.mean_force.value)
        & !(outcome.motion.unit_power_power.value == f64::INFINITY)
        & above(outcome.rotary.limit_power.value)
        & above(outcome.rotary.limit_torque.value)
        & above(outcome.peak.tangential.value)
        & above(outcome.peak.in_plane.value)
        & from(outcome.peak.axial.value)
        & from(outcome.peak.deflection.value)
        & above(outcome.peak.clamping_needed.value)
        & above(outcome.rotary.available_power.value)
        & above(outcome.rotary.available_torque.value)
        & !(outcome.finish.mean_roughness.value == f64::INFINITY)
        & above(outcome.finish.time.value)
        & !(pace.handwheel_rate.value == f64::INFINITY)
        & from(pace.time_per_inch.value)
        & from(pace.time_per_10_mm.value)
        & from(ends.force_low.value)
        & from(ends.force_high.value)
        & from(ends.power_low.value)
        & from(ends.power_high.value)
        & from(ends.time_low.value)
        & from(ends.time_start.value)
        & from(ends.time_high.value)
        & from(verdict.share.value)
}

/// Doubts of a cut as bits, 1 shifted by the number of the [`super::WarningCode`].
#[inline(always)]
#[allow(clippy::too_many_arguments)]
pub(crate) fn doubts(
    inputs: &Inputs,
    speeds: &Speeds,
    reached: Reached,
    candidate: &Candidate,
    snapped: bool,
    outcome: &Outcome,
) -> Ratio {
    let bit = |holds: bool, code: u32| if holds { f64::from(1 << code) } else { 0.0 };
    let reach = min(inputs.cutter_speed, inputs.highest_speed);
    let machine =
        reached.below_lowest | (speeds.wanted.value > reach.value * (1.0 + 1e-9)) | snapped;
    let lowered = reached.worn_slower
        | (candidate.speed.value < reached.first)
        | (candidate.feed.value < candidate.wanted.value * (1.0 - 1e-9));
    let disagree = methods_disagree(method_ratio(outcome));
    let unchecked = (inputs.mean_roughness.value < f64::INFINITY)
        & outcome.finish.mean_roughness.value.is_nan();
    let h = outcome.motion.mean_chip.value;
    let outside = unchecked | !(THINNEST_CHIP..=THICKEST_CHIP).contains(&h);
    let assumed = select(inputs.assumed.value > 0.0, number(2.0), number(0.0)).value;
    si(assumed + bit(outside, 2) + bit(disagree, 3) + bit(machine, 4) + bit(lowered, 5))
}

/// What the machine's speeds made of the wanted one.
#[derive(Clone, Copy)]
pub(crate) struct Reached {
    /// The machine's lowest speed is above the one wanted.
    pub below_lowest: bool,
    /// The tables' high end asks for a lower step than the wanted speed.
    pub worn_slower: bool,
    /// The speed that was tried first.
    pub first: f64,
}

/// Power by the unit power over that by the chip thickness; not a number where no unit power is known.
#[inline(always)]
pub(crate) fn method_ratio(outcome: &Outcome) -> f64 {
    outcome.motion.unit_power_power.value / outcome.motion.cutting_power.value
}

/// Whether the two methods for the power differ by more than a third.
#[inline(always)]
pub(crate) fn methods_disagree(ratio: f64) -> bool {
    !ratio.is_nan() & !(0.7..=1.4).contains(&ratio)
}

/// Chips for which the power law of the cutting force is usual.
pub(crate) const THINNEST_CHIP: f64 = 0.02e-3;
pub(crate) const THICKEST_CHIP: f64 = 1.5e-3;
