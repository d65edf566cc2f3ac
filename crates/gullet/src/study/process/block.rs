//! A block of rows of an operation, and the stages that compute it.
//!
//! Each stage is a loop over the lanes through the functions of the scalar call. The operation's own
//! chain is one of them and is gone through once for each speed and feed that is tried.

// Every record of a lane has the same index: loops over lanes read better than zipped iterators.
#![allow(clippy::needless_range_loop)]

use super::super::lanes::Lanes;
use super::super::results::ResultField;
use super::super::stages::settings::{feeds_at_or_below, speeds_at_or_below};
use crate::formula::NoRecord;
use crate::model::Machine;
use crate::operation::lanes::LANES;
use crate::operation::limits::VerdictBlock;
use crate::operation::process::ground::GroundBlock;
use crate::operation::process::limits::Bits;
use crate::operation::process::settle::{
    self, EndsBlock, FeedingBlock, ROUNDS, SPEED_ROUNDS, SettingsBlock, SpeedsBlock,
};
use crate::operation::process::{LoadsBlock, Operate, StartBlock};
use crate::quantity::{Kind, si};

/// Results beside the settings and results of the operation.
pub(super) const OTHERS: &[ResultField] = &[
    other(
        "speed_low",
        Kind::Velocity,
        "Cutting speed at the low end of the tables.",
    ),
    other(
        "speed_start",
        Kind::Velocity,
        "Cutting speed that the tables start with.",
    ),
    other(
        "speed_high",
        Kind::Velocity,
        "Cutting speed at the high end of the tables.",
    ),
    other(
        "force_low",
        Kind::Force,
        "Cutting force with the lowest pair of the material.",
    ),
    other(
        "force_high",
        Kind::Force,
        "Cutting force with the highest pair of the material.",
    ),
    other(
        "power_low",
        Kind::Power,
        "Power at the tool with the lowest pair of the material.",
    ),
    other(
        "power_high",
        Kind::Power,
        "Power at the tool with the highest pair of the material.",
    ),
    other(
        "time_low",
        Kind::Time,
        "Time with speed and feed at the high ends of the tables.",
    ),
    other(
        "time_high",
        Kind::Time,
        "Time with speed and feed at the low ends of the tables.",
    ),
    other(
        "binding_share",
        Kind::Ratio,
        "Share of its bound that the binding limit uses.",
    ),
];

const fn other(name: &'static str, kind: Kind, meaning: &'static str) -> ResultField {
    ResultField {
        name,
        kind,
        meaning,
        optional: true,
    }
}

/// A block of rows with everything that is computed of them.
pub(super) struct Block<P: Operate> {
    pub own: P::OwnBlock,
    pub ground: GroundBlock,
    pub start: StartBlock,
    pub speeds: SpeedsBlock,
    /// Speed and feed that the chain is gone through with.
    pub speed: Lanes,
    pub feed: Lanes,
    pub results: P::ResultsBlock,
    pub loads: LoadsBlock,
    /// The machine's speed before loads were looked at.
    pub first: Lanes,
    /// The machine's speed within every limit.
    pub settled: Lanes,
    pub feeding: FeedingBlock,
    pub settings: SettingsBlock,
    pub ends: EndsBlock,
    pub verdict: VerdictBlock,
    pub doubts: Lanes,
    wanted: Lanes,
    found: Lanes,
}

impl<P: Operate> Block<P> {
    pub(super) fn new() -> Block<P> {
        let nan = [f64::NAN; LANES];
        Block {
            own: P::own_block(),
            ground: GroundBlock::every(f64::NAN),
            start: StartBlock::every(f64::NAN),
            speeds: SpeedsBlock::every(f64::NAN),
            speed: nan,
            feed: nan,
            results: P::results_block(),
            loads: LoadsBlock::every(f64::NAN),
            first: nan,
            settled: nan,
            feeding: FeedingBlock::every(f64::NAN),
            settings: SettingsBlock::every(f64::NAN),
            ends: EndsBlock::every(f64::NAN),
            verdict: VerdictBlock::every(f64::NAN),
            doubts: nan,
            wanted: nan,
            found: nan,
        }
    }

    /// A column of results, by its place among all.
    pub(super) fn lanes(&self, place: usize) -> Option<&Lanes> {
        let settings = &self.settings;
        let first: [&Lanes; 8] = [
            &settings.wanted_speed,
            &settings.spindle_speed,
            &settings.cutting_speed,
            &settings.feed,
            &settings.feed_speed,
            &settings.handwheel_rate,
            &settings.available_power,
            &settings.available_torque,
        ];
        if let Some(lanes) = first.get(place) {
            return Some(lanes);
        }
        let results = P::process().results.len();
        let place = place - first.len();
        if place < results {
            return P::result_lanes(&self.results, place);
        }
        let ground = &self.ground;
        let ends = &self.ends;
        let others: [&Lanes; 10] = [
            &ground.speed_low,
            &ground.speed_start,
            &ground.speed_high,
            &ends.force_low,
            &ends.force_high,
            &ends.power_low,
            &ends.power_high,
            &ends.time_low,
            &ends.time_high,
            &self.verdict.share,
        ];
        others.get(place - results).copied()
    }
}

/// What the next walk through the chain is for.
#[derive(Clone, Copy, PartialEq)]
enum Walk {
    Relieve(usize),
    Lower(usize),
    TimeLow,
    TimeHigh,
    Outcome,
}

/// Computes the lanes of a block.
#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn compute<P: Operate>(machine: &Machine, block: &mut Block<P>) {
    begin(block);
    block.wanted = block.speeds.bound;
    on_machine(machine, block);
    block.first = block.found;
    block.speed = block.found;
    wanted_feeds(block);
    let mut walk = Walk::Relieve(0);
    loop {
        evaluate(block);
        walk = match walk {
            Walk::Relieve(round) => {
                relieve(block);
                on_machine(machine, block);
                take_slower(block);
                if round + 1 < SPEED_ROUNDS {
                    Walk::Relieve(round + 1)
                } else {
                    block.settled = block.speed;
                    first_feeds(block);
                    Walk::Lower(0)
                }
            }
            Walk::Lower(round) => {
                let before = block.feeding.feed;
                lower(block);
                // Lanes that stay as they are stay so in every further round.
                if round + 1 < ROUNDS && same(&before, &block.feeding.feed) == 0 {
                    block.feed = block.feeding.feed;
                    Walk::Lower(round + 1)
                } else {
                    snap(machine, block);
                    end_of_tables(true, block);
                    Walk::TimeLow
                }
            }
            Walk::TimeLow => {
                block.ends.time_low = block.loads.time;
                end_of_tables(false, block);
                Walk::TimeHigh
            }
            Walk::TimeHigh => {
                block.ends.time_high = block.loads.time;
                block.speed = block.settled;
                block.feed = block.feeding.feed;
                Walk::Outcome
            }
            Walk::Outcome => break,
        };
    }
    settings(block);
    judge(block);
    doubts(block);
    ends(block);
}

/// 1 where every lane is the same as before; NaN is the same as NaN.
fn same(a: &Lanes, b: &Lanes) -> usize {
    usize::from(
        a.iter()
            .zip(b)
            .all(|(a, b)| a.to_bits() == b.to_bits() || (a.is_nan() && b.is_nan())),
    )
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn begin<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let own = P::own_of(&block.own, lane);
        let ground = block.ground.get(lane);
        let start = P::start(&mut NoRecord, &own, &ground);
        block.start.set(lane, start);
        block.speeds.set(
            lane,
            settle::speeds::<P>(&mut NoRecord, &own, &ground, &start),
        );
    }
}

/// The machine's speed at or below the one wanted; its lowest where there is none.
#[cfg_attr(not(debug_assertions), inline(always))]
fn on_machine<P: Operate>(machine: &Machine, block: &mut Block<P>) {
    speeds_at_or_below(machine, &block.wanted, &mut block.found);
    for lane in 0..LANES {
        let found = block.found[lane];
        block.found[lane] = if found.is_nan() {
            block.ground.lowest_speed[lane]
        } else {
            found
        };
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn wanted_feeds<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let own = P::own_of(&block.own, lane);
        let start = block.start.get(lane);
        block.feed[lane] = settle::wanted(&start, P::asked(&own).feed).value;
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn first_feeds<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let own = P::own_of(&block.own, lane);
        let start = block.start.get(lane);
        let feeding = settle::first_feed(&start, P::asked(&own).feed);
        block.feeding.set(lane, feeding);
        block.feed[lane] = feeding.feed.value;
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn evaluate<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let own = P::own_of(&block.own, lane);
        let ground = block.ground.get(lane);
        let (results, loads) = P::evaluate(
            &mut NoRecord,
            &own,
            &ground,
            si(block.speed[lane]),
            si(block.feed[lane]),
        );
        P::set_results(&mut block.results, lane, results);
        block.loads.set(lane, loads);
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn relieve<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let own = P::own_of(&block.own, lane);
        block.wanted[lane] = settle::relieved::<P>(
            &own,
            &block.ground.get(lane),
            &block.start.get(lane),
            si(block.speed[lane]),
            &P::results_of(&block.results, lane),
            &block.loads.get(lane),
        )
        .value;
    }
}

/// The slower speed where one was asked for.
#[cfg_attr(not(debug_assertions), inline(always))]
fn take_slower<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let slower = block.wanted[lane] < block.speed[lane];
        block.speed[lane] = if slower {
            block.found[lane]
        } else {
            block.speed[lane]
        };
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn lower<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let own = P::own_of(&block.own, lane);
        let feeding = settle::lowered::<P>(
            &own,
            &block.ground.get(lane),
            &block.start.get(lane),
            si(block.speed[lane]),
            block.feeding.get(lane),
            &P::results_of(&block.results, lane),
            &block.loads.get(lane),
        );
        block.feeding.set(lane, feeding);
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn snap<P: Operate>(machine: &Machine, block: &mut Block<P>) {
    for lane in 0..LANES {
        block.wanted[lane] = settle::feed_speed(
            &block.start.get(lane),
            si(block.settled[lane]),
            si(block.feeding.feed[lane]),
        )
        .value;
    }
    feeds_at_or_below(machine, &block.settled, &block.wanted, &mut block.found);
    for lane in 0..LANES {
        let feeding = block.feeding.get(lane);
        let real = block.found[lane];
        let snapped = settle::snapped(
            &block.start.get(lane),
            si(block.settled[lane]),
            feeding,
            si(real),
        );
        let has = !real.is_nan();
        block.feeding.feed[lane] = if has {
            snapped.feed.value
        } else {
            feeding.feed.value
        };
        block.feeding.held_by[lane] = if has {
            snapped.held_by.value
        } else {
            feeding.held_by.value
        };
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn end_of_tables<P: Operate>(low: bool, block: &mut Block<P>) {
    for lane in 0..LANES {
        let own = P::own_of(&block.own, lane);
        let ground = block.ground.get(lane);
        let (v, f) = if low {
            (ground.speed_high, ground.feed_high)
        } else {
            (ground.speed_low, ground.feed_low)
        };
        let (n, f) = settle::end_of_tables::<P>(&own, &ground, &block.start.get(lane), v, f);
        block.speed[lane] = n.value;
        block.feed[lane] = f.value;
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn settings<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let settings = settle::settings(
            &mut NoRecord,
            &block.ground.get(lane),
            &block.start.get(lane),
            &block.speeds.get(lane),
            si(block.settled[lane]),
            si(block.feeding.feed[lane]),
        );
        block.settings.set(lane, settings);
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn judge<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let own = P::own_of(&block.own, lane);
        let verdict = settle::judged::<P>(
            &own,
            &block.ground.get(lane),
            &block.start.get(lane),
            si(block.settled[lane]),
            &block.feeding.get(lane),
            &P::results_of(&block.results, lane),
            &block.loads.get(lane),
        );
        block.verdict.set(lane, verdict);
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn doubts<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let own = P::own_of(&block.own, lane);
        let mut bits = Bits(0);
        settle::doubts::<P>(
            &own,
            &block.ground.get(lane),
            &block.speeds.get(lane),
            si(block.first[lane]),
            si(block.settled[lane]),
            &block.feeding.get(lane),
            &P::results_of(&block.results, lane),
            &block.loads.get(lane),
            &mut bits,
        );
        block.doubts[lane] = f64::from(bits.0);
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn ends<P: Operate>(block: &mut Block<P>) {
    for lane in 0..LANES {
        let ends = settle::ends(
            &block.ground.get(lane),
            &block.loads.get(lane),
            si(block.ends.time_low[lane]),
            si(block.ends.time_high[lane]),
        );
        block.ends.set(lane, ends);
    }
}
