//! The wanted speed, and the feed per tooth that every limit leaves at a speed the machine has.

use super::chain;
use super::cut::{Log, support_text};
use super::inputs::Tables;
use super::limits::{self, LimitName};
use super::loads;
use super::milling::Lowering;
use super::numbers::{
    Candidate, Engagement, Geometry, Inputs, Kinds, Law, Load, Speeds, Wanted, Worst, one,
};
use super::request::Operation;
use crate::formula::{NoRecord, chip, practice, rotation};
use crate::quantity::math::{min, select};
use crate::quantity::{Angle, Kind, Length, Ratio, RotationalSpeed, si};

/// The wanted speed with what is marked on the cutter and with what the tables allow.
#[inline(always)]
pub(crate) fn wanted_speed(
    log: &mut impl Log,
    inputs: &Inputs,
    engaged: &Engagement,
    tables: Option<&Tables>,
) -> Speeds {
    let asked = inputs.asked_speed.value > 0.0;
    let wanted = if log.records() && asked {
        log.choose(Kind::RotationalSpeed, inputs.asked_speed.value, || {
            "spindle speed asked for by the job".to_owned()
        });
        inputs.asked_speed
    } else {
        let table = inputs.speed_chosen;
        log.choose(Kind::Velocity, table.value, || {
            format!(
                "cutting speed of the tables, {} of the range, from {}",
                if tables.is_some_and(|tables| tables.low_end) {
                    "low end"
                } else {
                    "starting value"
                },
                tables.map_or_else(String::new, |tables| support_text(&tables.speed.support))
            )
        });
        let v = practice::practice_cutting_speed::step(log, table, inputs.speed_factor);
        let n = rotation::spindle_speed::step(log, v, engaged.effective_diameter);
        select(asked, inputs.asked_speed, n)
    };
    let capped = min(wanted, inputs.cutter_speed);
    let worn = rotation::spindle_speed::value(inputs.speed_high, engaged.effective_diameter);
    Speeds {
        wanted,
        capped,
        bound: min(capped, worn),
    }
}

/// Feed per tooth whose largest chip is this thick: the two are in proportion.
#[inline(always)]
pub(crate) fn feed_for_chip(geometry: &Geometry, chip: Length) -> Length {
    chip * (one() / geometry.chip_per_feed)
}

#[inline(always)]
pub(crate) fn wanted_feed(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    engaged: &Engagement,
    tables: Option<&Tables>,
) -> Length {
    let asked = inputs.asked_feed.value > 0.0;
    if log.records() && asked {
        log.choose(Kind::Length, inputs.asked_feed.value, || {
            "feed per tooth asked for by the job".to_owned()
        });
        return inputs.asked_feed;
    }
    let table = inputs.feed_start;
    log.choose(Kind::Length, table.value, || {
        format!(
            "feed per tooth of the tables, starting value, from {}",
            tables.map_or_else(String::new, |tables| support_text(&tables.feed.support))
        )
    });
    let chip = practice::practice_feed_per_tooth::step(log, table, inputs.feed_factor);
    let feed = if kinds.operation == Operation::SideMilling {
        let right_angle = si(core::f64::consts::FRAC_PI_2);
        thinned_feed(
            log,
            chip,
            inputs.diameter,
            engaged.radial_depth,
            right_angle,
            inputs.thinning_cap,
        )
    } else {
        chip
    };
    select(asked, inputs.asked_feed, feed)
}

/// Feed per tooth whose largest chip is the wanted one, raised for a thin cut no further than the
/// practice's cap.
#[inline(always)]
pub(crate) fn thinned_feed(
    log: &mut impl Log,
    chip: Length,
    diameter: Length,
    radial_depth: Length,
    cutting_edge_angle: Angle,
    thinning_cap: Ratio,
) -> Length {
    let thinned = chip::feed_for_max_chip_thickness::step(
        log,
        chip,
        diameter,
        radial_depth,
        cutting_edge_angle,
    );
    let cap = practice::thinning_cap_feed::step(log, chip, thinning_cap);
    let feed = min(thinned, cap);
    log.choose(Kind::Length, feed.value, || {
        "feed per tooth, the smaller of the two".to_owned()
    });
    feed
}

impl Candidate {
    /// Holds the feed below a cap. Of limits that meet to the last digits the first one holds.
    #[inline(always)]
    fn hold(&mut self, number: f64, cap: Length) {
        let holds = cap.value < self.feed.value * (1.0 - 1e-12);
        self.feed = select(holds, cap, self.feed);
        self.held_by = select(holds, si(number), self.held_by);
    }

    /// The limit that holds the feed below the wanted one.
    pub(crate) fn holder(&self) -> Option<LimitName> {
        LimitName::from_lane(self.held_by.value)
    }
}

/// The feed per tooth at a speed that chip, table, hand and finish leave.
#[inline(always)]
pub(crate) fn feed_without_loads(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    engaged: &Engagement,
    geometry: &Geometry,
    speed: RotationalSpeed,
    tables: Option<&Tables>,
) -> Candidate {
    let wanted = wanted_feed(log, kinds, inputs, engaged, tables);
    let mut candidate = Candidate {
        speed,
        feed: wanted,
        wanted,
        held_by: si(0.0),
    };
    candidate.hold(
        LimitName::LargestChip.lane(),
        feed_for_chip(geometry, inputs.feed_high),
    );
    let bound_by = if kinds.by_hand {
        LimitName::HandwheelPace
    } else {
        LimitName::TableFeed
    };
    candidate.hold(
        bound_by.lane(),
        rotation::feed_per_tooth::value(inputs.highest_feed, inputs.teeth, speed),
    );
    candidate.hold(
        LimitName::MeanRoughness.lane(),
        chain::feed_per_rev_for_roughness(kinds, inputs) / inputs.teeth,
    );
    candidate
}

/// The feed per tooth at a speed: wanted chip, thinning, then every limit that feed relieves.
#[allow(clippy::too_many_arguments)]
pub(crate) fn feed(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    engaged: &Engagement,
    geometry: &Geometry,
    laws: &[Law; 4],
    speed: RotationalSpeed,
    lowering: Lowering,
    tables: Option<&Tables>,
) -> Candidate {
    let mut candidate = feed_without_loads(log, kinds, inputs, engaged, geometry, speed, tables);
    if lowering == Lowering::Allowed {
        let loads = wanted_loads(kinds, inputs, engaged, &candidate);
        let [a, others @ ..] = laws;
        let others = others.iter().filter(|law| law.pair() != a.pair());
        for law in core::iter::once(a).chain(others) {
            let load = load(kinds, inputs, geometry, &loads, speed, law);
            if overloads(load.share.value) {
                candidate = hold_for_load(candidate, law, &load);
            }
        }
    }
    if log.records()
        && let Some(limit) = candidate.holder()
    {
        log.choose(Kind::Length, candidate.feed.value, || {
            format!("feed per tooth lowered for the limit {}", limit.name())
        });
    }
    candidate
}

/// What the loads at the wanted feed are computed from.
#[inline(always)]
pub(crate) fn wanted_loads(
    kinds: &Kinds,
    inputs: &Inputs,
    engaged: &Engagement,
    candidate: &Candidate,
) -> Wanted {
    let silent = &mut NoRecord;
    let (speed, feed) = (candidate.speed, candidate.wanted);
    let (power, torque) = chain::available(silent, inputs, speed);
    Wanted {
        mean_chip: chain::mean_chip(silent, kinds, inputs, engaged, feed),
        max_chip: chain::max_chip(silent, kinds, inputs, engaged, feed),
        removal_rate: chain::removal_rate(kinds, inputs, engaged, speed, feed),
        power,
        torque,
    }
}

/// The load that one law uses to the largest share at the wanted feed.
#[inline(always)]
pub(crate) fn load(
    kinds: &Kinds,
    inputs: &Inputs,
    geometry: &Geometry,
    wanted: &Wanted,
    speed: RotationalSpeed,
    law: &Law,
) -> Load {
    let silent = &mut NoRecord;
    let k = loads::k_c(silent, law.pair(), wanted.mean_chip, inputs.wear_factor);
    let at_largest = Worst::of(law, wanted.max_chip, inputs.wear_factor);
    let (power, torque) = loads::rotary_load(silent, k, wanted.removal_rate, speed);
    let peak = chain::peak_load(
        silent,
        kinds,
        inputs,
        geometry,
        &at_largest,
        wanted.max_chip,
    );
    let of_power = (LimitName::Power.lane(), power.value / wanted.power.value);
    let of_torque = (LimitName::Torque.lane(), torque.value / wanted.torque.value);
    let bent = peak.deflection.value / inputs.deflection.value;
    let clamped = peak.clamping_needed.value / inputs.clamping_force.value;
    let swapped = limits::torque_first(inputs, speed);
    let first = pick(swapped, of_torque, of_power);
    let second = pick(swapped, of_power, of_torque);
    let load = larger(first, second);
    let load = larger(load, (LimitName::Deflection.lane(), bent));
    let (number, share) = larger(load, (LimitName::Clamping.lane(), clamped));
    Load {
        number: si(number),
        share: si(share),
    }
}

/// Whether a load is beyond its bound.
#[inline(always)]
pub(crate) fn overloads(share: f64) -> bool {
    share > 1.0
}

/// Lowers the feed until one law keeps every load within its bound: the load used to the largest
/// share asks for the lowest feed.
#[inline(always)]
pub(crate) fn hold_for_load(mut candidate: Candidate, law: &Law, load: &Load) -> Candidate {
    let cap = practice::feed_for_load_share::value(candidate.wanted, load.share, law.exponent);
    let over = overloads(load.share.value);
    candidate.hold(load.number.value, select(over, cap, si(f64::INFINITY)));
    candidate
}

#[inline(always)]
fn pick(condition: bool, a: (f64, f64), b: (f64, f64)) -> (f64, f64) {
    (
        if condition { a.0 } else { b.0 },
        if condition { a.1 } else { b.1 },
    )
}

/// The load used to the larger share; of loads used alike the first.
#[inline(always)]
fn larger(first: (f64, f64), second: (f64, f64)) -> (f64, f64) {
    pick(second.1 > first.1 * (1.0 + 1e-12), second, first)
}
