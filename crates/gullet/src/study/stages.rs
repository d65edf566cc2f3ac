//! What is computed of a block, stage by stage.
//!
//! Each stage is a loop over the lanes that reads some records and writes others, small enough that
//! the compiler turns all of it into vectors. Choices between formulas are made outside. Inlined into
//! one function for the sake of the instruction set; unoptimized, that function would need a larger
//! stack than threads have.

// Every record of a lane has the same index: loops over lanes read better than zipped iterators.
#![allow(clippy::needless_range_loop, clippy::manual_memcpy)]

mod outcome;
pub(super) mod settings;

use super::group::Group;
use super::lanes::{Block, Lanes};
use crate::model::{Feed, Machine};
use crate::operation::Operation;
use crate::operation::lanes::LANES;
use crate::operation::numbers::{Kinds, Pair};
use outcome::{
    Outcomes, Snaps, Sound, doubts, ends, ends_are_sound, finish, judge, motion, pace, peak,
    rotary, sound, times, worst,
};
use settings::{
    engage, feeds, find_law, geometry, screen, slow_down, speeds_at_or_below, start, teeth,
    wanted_speeds,
};

/// Computes the lanes of a block, each operation compiled on its own; forces and powers at the ends of
/// the tables only where they are asked for.
#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn compute(group: &Group, spread: bool, block: &mut Block, count: usize) {
    // A machine that does not mill is refused row by row, beside whatever else is wrong.
    let mills = |machine: &&Machine| !matches!(machine.feed, Feed::Geared(_));
    let Some(machine) = group.base.machines.first().filter(mills) else {
        block.careful = [1.0; LANES];
        return;
    };
    let kinds = |operation| Kinds {
        operation,
        ..group.kinds
    };
    let given = Given {
        machine,
        pairs: &group.pairs,
        spread: spread || !group.pairs.iter().all(is_usual),
    };
    match group.kinds.operation {
        Operation::SideMilling => stages(&kinds(Operation::SideMilling), &given, block, count),
        Operation::Slotting => stages(&kinds(Operation::Slotting), &given, block, count),
        Operation::FaceMilling => stages(&kinds(Operation::FaceMilling), &given, block, count),
    }
}

/// What the rows of a block have in common, beside what decides which formulas apply.
struct Given<'g> {
    machine: &'g Machine,
    pairs: &'g [Pair],
    /// Whether forces and powers at the ends of the tables are computed.
    spread: bool,
}

/// Whether a pair is such that its force is a number at every chip thickness.
fn is_usual(pair: &Pair) -> bool {
    pair.kc11.value.is_finite() && (0.0..=1.0).contains(&pair.exponent.value)
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn stages(kinds: &Kinds, given: &Given, block: &mut Block, count: usize) {
    let machine = given.machine;
    engage(kinds, &block.inputs, &mut block.engaged);
    wanted_speeds(&block.inputs, &block.engaged, &mut block.speeds);
    screen(kinds, &block.inputs, &mut block.careful);
    speeds_at_or_below(machine, &block.speeds.bound, &mut block.real);
    speeds_at_or_below(machine, &block.speeds.capped, &mut block.fast);
    start(&block.real, &mut block.candidate.speed, &mut block.careful);
    geometry(kinds, &block.inputs, &block.engaged, &mut block.geometry);
    teeth(&block.inputs, &block.geometry, &mut block.teeth);
    for (pair, law) in given.pairs.iter().zip(&mut block.laws) {
        find_law(*pair, &block.geometry, &block.teeth, law);
    }
    let laws = given.pairs.len();
    feeds(kinds, machine, laws, block);
    while slow_down(machine, block, count) {
        feeds(kinds, machine, laws, block);
    }
    outcome(kinds, laws, given.spread, block);
    let outcome = Outcomes::of(&block.motion, &block.rotary, &block.peak, &block.finish);
    judge(
        kinds,
        &block.inputs,
        &block.candidate,
        &outcome,
        &mut block.verdict,
    );
    let reached = Snaps {
        real: &block.real,
        fast: &block.fast,
        wanted_feed: &block.wanted_feed,
        machine_feed: &block.machine_feed,
    };
    doubts(
        &block.inputs,
        &block.speeds,
        &reached,
        &block.candidate,
        &outcome,
        &mut block.doubts,
    );
    let results = Sound {
        engaged: &block.engaged,
        geometry: &block.geometry,
        candidate: &block.candidate,
        pace: &block.pace,
        ends: &block.ends,
        verdict: &block.verdict,
    };
    sound(&results, &outcome, &mut block.careful);
}

/// What follows from the speed and the feed of each lane.
#[cfg_attr(not(debug_assertions), inline(always))]
fn outcome(kinds: &Kinds, laws: usize, spread: bool, block: &mut Block) {
    motion(
        kinds,
        &block.inputs,
        &block.engaged,
        &block.candidate,
        &mut block.motion,
    );
    worst(
        laws,
        &block.laws,
        &block.inputs.wear_factor,
        &block.motion.mean_chip,
        &mut block.at_mean,
    );
    worst(
        laws,
        &block.laws,
        &block.inputs.wear_factor,
        &block.motion.max_chip,
        &mut block.at_largest,
    );
    rotary(
        &block.inputs,
        &block.motion,
        &block.at_mean,
        &block.candidate,
        &mut block.rotary,
    );
    peak(
        kinds,
        &block.inputs,
        &block.geometry,
        &block.motion,
        &block.at_largest,
        &mut block.peak,
    );
    finish(
        kinds,
        &block.inputs,
        &block.geometry,
        &block.motion,
        &mut block.finish,
    );
    let outcome = Outcomes::of(&block.motion, &block.rotary, &block.peak, &block.finish);
    pace(kinds, &block.inputs, &outcome, &mut block.pace);
    if spread {
        ends(
            &block.inputs,
            &block.engaged,
            &block.geometry,
            &outcome,
            &mut block.ends,
        );
    } else {
        times(
            &block.inputs,
            &block.engaged,
            &block.geometry,
            &mut block.ends,
        );
        ends_are_sound(&block.inputs, &outcome, &mut block.careful);
    }
}

/// Computes again what follows from settings that are held, with a factor on every specific cutting
/// force; lanes that leave what can be computed are marked.
#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn follow(group: &Group, force: &Lanes, block: &mut Block) {
    let kinds = |operation| Kinds {
        operation,
        ..group.kinds
    };
    let pairs = &group.pairs;
    match group.kinds.operation {
        Operation::SideMilling => {
            follow_with(&kinds(Operation::SideMilling), pairs, force, block);
        }
        Operation::Slotting => follow_with(&kinds(Operation::Slotting), pairs, force, block),
        Operation::FaceMilling => {
            follow_with(&kinds(Operation::FaceMilling), pairs, force, block);
        }
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn follow_with(kinds: &Kinds, pairs: &[Pair], force: &Lanes, block: &mut Block) {
    screen(kinds, &block.inputs, &mut block.careful);
    engage(kinds, &block.inputs, &mut block.engaged);
    geometry(kinds, &block.inputs, &block.engaged, &mut block.geometry);
    teeth(&block.inputs, &block.geometry, &mut block.teeth);
    for (pair, law) in pairs.iter().zip(&mut block.laws) {
        find_law(*pair, &block.geometry, &block.teeth, law);
        scale(&mut law.kc11, force);
    }
    scale(&mut block.inputs.kc11_a, force);
    scale(&mut block.inputs.kc11_b, force);
    scale(&mut block.inputs.kc11_c, force);
    outcome(kinds, pairs.len(), true, block);
    let outcome = Outcomes::of(&block.motion, &block.rotary, &block.peak, &block.finish);
    judge(
        kinds,
        &block.inputs,
        &block.candidate,
        &outcome,
        &mut block.verdict,
    );
    let results = Sound {
        engaged: &block.engaged,
        geometry: &block.geometry,
        candidate: &block.candidate,
        pace: &block.pace,
        ends: &block.ends,
        verdict: &block.verdict,
    };
    sound(&results, &outcome, &mut block.careful);
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn scale(lanes: &mut Lanes, factors: &Lanes) {
    for lane in 0..LANES {
        lanes[lane] *= factors[lane];
    }
}
