//! The limit ledger in words: where each bound comes from and what would free it.

use super::chain;
use super::cut::{Limit, Relief};
use super::law;
use super::limits::{self, Entry, LimitName, See, Verdict};
use super::milling::Lowering;
use super::numbers::{Candidate, Engagement, Geometry, Inputs, Outcome};
use super::report::Report;
use super::settle::Settled;
use super::speed_feed::{self, feed_for_chip};
use crate::formula::{NoRecord, rotation};
use crate::quantity::{Kind, Length, si};
use crate::table::Ranged;

/// Every limit of a pass at the candidate's speed.
pub(super) fn ledger(
    report: &Report,
    geometry: &Geometry,
    candidate: &Candidate,
    outcome: &Outcome,
    verdict: &Verdict,
) -> Vec<Limit> {
    let mut collect = Collect {
        report,
        geometry,
        candidate,
        binding: verdict.binding.value,
        limits: Vec::with_capacity(LimitName::ALL.len()),
    };
    limits::each(
        report.kinds,
        report.inputs,
        candidate,
        outcome,
        &mut collect,
    );
    collect.limits
}

/// Collects the limits there are, with their words.
struct Collect<'r> {
    report: &'r Report<'r>,
    geometry: &'r Geometry,
    candidate: &'r Candidate,
    binding: f64,
    limits: Vec<Limit>,
}

impl See for Collect<'_> {
    fn see(&mut self, entry: Entry) {
        let Some(name) = LimitName::from_lane(entry.number).filter(|_| entry.present) else {
            return;
        };
        let binding = entry.number == self.binding;
        let mut limit = Limit::new(name, &entry, origin(self.report, name), binding);
        limit.relief = relief(self.report, self.geometry, self.candidate, name, &limit);
        self.limits.push(limit);
    }
}

/// Where a bound comes from.
fn origin(report: &Report, name: LimitName) -> String {
    let milling = report.milling;
    let practice = &milling.practice;
    let machine = || format!("machine: {}", milling.machine.name);
    let of_practice = |what: &str| format!("practice {}{what}; {}", practice.name, practice.origin);
    match name {
        LimitName::SpindleSpeedHighest
        | LimitName::SpindleSpeedLowest
        | LimitName::TableFeed
        | LimitName::TableFeedLowest => machine(),
        LimitName::CutterSpeed => "marked on the cutter or its holder".to_owned(),
        LimitName::CuttingSpeed => {
            "high end of the tables: the edge wears fast above it".to_owned()
        }
        LimitName::HandwheelPace => of_practice(": pace a hand can hold"),
        LimitName::SmallestChip => of_practice(": thinner chips rub"),
        LimitName::LargestChip => {
            "high end of the tables: the tooth or its chip space is overloaded above it".to_owned()
        }
        LimitName::MeanRoughness => "asked for by the job; real surfaces come out 1.5 to 3 times rougher than theory (common practice, no source)".to_owned(),
        LimitName::Power | LimitName::Torque => format!(
            "machine: {}, practice {}: share of the rating that is used",
            milling.machine.name, practice.name
        ),
        LimitName::Deflection => of_practice(&format!(", {} pass", report.pass.kind.name())),
        LimitName::Clamping => format!(
            "hold: {}, safety factor {} of practice {}",
            milling.hold.name, practice.holding_safety.value, practice.name
        ),
        LimitName::FluteLength => format!("cutter: {}", milling.cutter.name),
        LimitName::RoughingDepth => of_practice(""),
        LimitName::ClimbWithBacklash => {
            of_practice(": a deeper climb cut can pull the table through its backlash")
        }
        LimitName::Grip => of_practice(": share of the part's height"),
        LimitName::StickOut => of_practice(": multiple of the diameter"),
        // The others are looked at by operations that name their origin themselves.
        _ => String::new(),
    }
}

/// The change of another setting that would free a limit.
fn relief(
    report: &Report,
    geometry: &Geometry,
    candidate: &Candidate,
    name: LimitName,
    limit: &Limit,
) -> Option<Relief> {
    let inputs = report.inputs;
    let z = inputs.teeth;
    let speed = |to: f64| Some(("spindle speed", Kind::RotationalSpeed, to));
    let length = |setting, to: f64| Some((setting, Kind::Length, to));
    let (setting, kind, to) = match name {
        // The highest feed is met by a lower speed already where it is used up.
        LimitName::HandwheelPace | LimitName::TableFeed => {
            let highest = inputs.highest_feed;
            let slower = rotation::spindle_speed_for_feed::value(highest, candidate.wanted, z);
            let attainable = slower.value >= inputs.lowest_speed.value
                && slower.value < candidate.speed.value
                && limit.share > 1.0 - 1e-9;
            return attainable.then_some(Relief {
                setting: "spindle speed",
                kind: Kind::RotationalSpeed,
                to: slower.value,
            });
        }
        LimitName::CuttingSpeed => speed(
            rotation::spindle_speed::value(
                inputs.speed_high,
                chain::engage(&mut NoRecord, report.kinds, inputs).effective_diameter,
            )
            .value,
        ),
        LimitName::TableFeedLowest => {
            let faster =
                rotation::spindle_speed_for_feed::value(inputs.lowest_feed, candidate.feed, z);
            // No advice to run faster than the machine can.
            (faster.value <= inputs.highest_speed.value)
                .then_some(faster.value)
                .and_then(speed)
        }
        LimitName::SmallestChip => length(
            "feed per tooth",
            feed_for_chip(geometry, inputs.smallest_chip).value,
        ),
        LimitName::LargestChip => length(
            "feed per tooth",
            feed_for_chip(geometry, inputs.feed_high).value,
        ),
        LimitName::MeanRoughness => length(
            "feed per tooth",
            (chain::feed_per_rev_for_roughness(report.kinds, inputs) / z).value,
        ),
        LimitName::FluteLength => length("axial depth", limit.bound),
        LimitName::RoughingDepth | LimitName::ClimbWithBacklash => {
            length("depth of the pass", limit.bound)
        }
        LimitName::Grip => length("grip depth", limit.bound),
        LimitName::StickOut => length("stick-out", limit.bound),
        LimitName::SpindleSpeedHighest
        | LimitName::SpindleSpeedLowest
        | LimitName::CutterSpeed
        | LimitName::Power
        | LimitName::Torque
        | LimitName::Deflection
        | LimitName::Clamping => None,
        _ => None,
    }?;
    (limit.exceeded() && to.is_finite()).then_some(Relief { setting, kind, to })
}

/// The loads that axial depth relieves.
const LOADS: &[LimitName] = &[
    LimitName::Power,
    LimitName::Torque,
    LimitName::Deflection,
    LimitName::Clamping,
];

/// Adds the axial depth that would free a load which the wanted feed exceeds.
pub(super) fn add_reliefs(report: &Report, settled: &Settled, limits: &mut [Limit]) {
    add_reliefs_at(
        report,
        &settled.engaged,
        &settled.geometry,
        &settled.candidate,
        &settled.outcome,
        limits,
    );
}

/// As [`add_reliefs`], for a candidate that is no settled cut.
pub(super) fn add_reliefs_at(
    report: &Report,
    engaged: &Engagement,
    geometry: &Geometry,
    candidate: &Candidate,
    outcome: &Outcome,
    limits: &mut [Limit],
) {
    let wanted = if candidate.wanted.value > candidate.feed.value {
        &chain::outcome(
            &mut NoRecord,
            report.kinds,
            report.inputs,
            engaged,
            geometry,
            &law::laws(report.inputs, geometry),
            candidate.speed,
            candidate.wanted,
        )
    } else {
        outcome
    };
    for limit in limits.iter_mut().filter(|limit| limit.share > 1.0 - 1e-9) {
        let Some(name) = LOADS.iter().find(|name| name.name() == limit.name) else {
            continue;
        };
        if load(report.inputs, wanted, *name) > 1.0
            && let Some(depth) = depth_that_frees(report, *name)
        {
            limit.relief = Some(Relief {
                setting: "axial depth",
                kind: Kind::Length,
                to: depth.value,
            });
        }
    }
}

/// Share of its bound that a load uses.
fn load(inputs: &Inputs, outcome: &Outcome, name: LimitName) -> f64 {
    let (value, bound) = match name {
        LimitName::Power => (
            outcome.rotary.limit_power.value,
            outcome.rotary.available_power.value,
        ),
        LimitName::Torque => (
            outcome.rotary.limit_torque.value,
            outcome.rotary.available_torque.value,
        ),
        LimitName::Deflection => (outcome.peak.deflection.value, inputs.deflection.value),
        _ => (
            outcome.peak.clamping_needed.value,
            inputs.clamping_force.value,
        ),
    };
    limits::share(limits::Side::AtMost, value, bound)
}

/// Halvings in the search for a depth: to a thousandth of the depth.
const HALVINGS: u32 = 12;

/// The axial depth at which a load meets its bound with the feed wanted there. A helix makes the
/// force grow slower than the depth, and tables give another feed at another depth: it is searched.
fn depth_that_frees(report: &Report, name: LimitName) -> Option<Length> {
    let mut depth = report.inputs.axial_depth;
    let mut feed = report.tables.feed.clone();
    for _ in 0..4 {
        let free = |a_p: Length, feed: &Ranged<Length>| {
            wanted_at(report, a_p, feed)
                .is_some_and(|outcome| load(report.inputs, &outcome, name) <= 1.0 - 1e-6)
        };
        let (mut good, mut bad): (Length, Length) = (si(0.0), depth);
        for _ in 0..HALVINGS {
            let middle = (good + bad) / 2.0;
            if free(middle, &feed) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        if good.value <= 0.0 {
            return None;
        }
        feed = report
            .grounds
            .feed(&report.milling.cutter, report.pass, good)?;
        if free(good, &feed) {
            return Some(good);
        }
        depth = good;
    }
    None
}

/// What follows from the feed wanted at another axial depth, whatever it loads.
fn wanted_at(report: &Report, axial_depth: Length, feed: &Ranged<Length>) -> Option<Outcome> {
    let silent = &mut NoRecord;
    let kinds = report.kinds;
    let inputs = Inputs {
        axial_depth,
        feed_low: feed.low,
        feed_start: feed.start,
        feed_high: feed.high,
        ..*report.inputs
    };
    let engaged = chain::engage(silent, kinds, &inputs);
    let speeds = speed_feed::wanted_speed(silent, &inputs, &engaged, None);
    let machine = &report.milling.machine;
    let speed = machine.speed_at_or_below(speeds.bound).or_else(|| {
        (inputs.lowest_speed.value <= inputs.cutter_speed.value * (1.0 + 1e-9))
            .then_some(inputs.lowest_speed)
    })?;
    let geometry = chain::geometry(silent, kinds, &inputs, &engaged);
    let laws = law::laws(&inputs, &geometry);
    let candidate = speed_feed::feed(
        silent,
        kinds,
        &inputs,
        &engaged,
        &geometry,
        &laws,
        speed,
        Lowering::NotForLoads,
        None,
    );
    Some(chain::outcome(
        silent,
        kinds,
        &inputs,
        &engaged,
        &geometry,
        &laws,
        speed,
        candidate.feed,
    ))
}
