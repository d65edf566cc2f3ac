//! What is computed of a block, stage by stage.
//!
//! Each stage is a loop over the lanes that reads some records and writes others, small enough that
//! the compiler turns all of it into vectors. Choices between formulas are made outside. Inlined into
//! one function for the sake of the instruction set; unoptimized, that function would need a larger
//! stack than threads have.

// Every record of a lane has the same index: loops over lanes read better than zipped iterators.
#![allow(clippy::needless_range_loop, clippy::manual_memcpy)]

use super::group::Group;
use super::lanes::{Block, Lanes};
use super::screen::clean;
use crate::formula::{NoRecord, rotation};
use crate::model::{Drive, Feed, Machine};
use crate::operation::lanes::LANES;
use crate::operation::limits::{self, VerdictBlock};
use crate::operation::numbers::{
    CandidateBlock, EngagementBlock, FinishBlock, GeometryBlock, InputsBlock, Kinds, LawBlock,
    MotionBlock, Outcome, Pair, PeakBlock, RotaryBlock, SpeedsBlock, WantedBlock, Worst,
    WorstBlock,
};
use crate::operation::results::{self, EndsBlock, PaceBlock, Reached};
use crate::operation::{Operation, chain, settle, speed_feed};
use crate::quantity::si;

/// Computes the lanes of a block, each operation compiled on its own.
#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn compute(group: &Group, block: &mut Block, count: usize) {
    let Some(machine) = group.base.machines.first() else {
        block.careful = [1.0; LANES];
        return;
    };
    let kinds = |operation| Kinds {
        operation,
        ..group.kinds
    };
    let pairs = &group.pairs;
    match group.kinds.operation {
        Operation::SideMilling => {
            stages(&kinds(Operation::SideMilling), machine, pairs, block, count);
        }
        Operation::Slotting => {
            stages(&kinds(Operation::Slotting), machine, pairs, block, count);
        }
        Operation::FaceMilling => {
            stages(&kinds(Operation::FaceMilling), machine, pairs, block, count);
        }
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn stages(kinds: &Kinds, machine: &Machine, pairs: &[Pair], block: &mut Block, count: usize) {
    engage(kinds, &block.inputs, &mut block.engaged);
    wanted_speeds(&block.inputs, &block.engaged, &mut block.speeds);
    screen(kinds, &block.inputs, &mut block.careful);
    speeds_at_or_below(machine, &block.speeds.bound, &mut block.real);
    speeds_at_or_below(machine, &block.speeds.capped, &mut block.fast);
    start(&block.real, &mut block.candidate.speed, &mut block.careful);
    geometry(kinds, &block.inputs, &block.engaged, &mut block.geometry);
    for (pair, law) in pairs.iter().zip(&mut block.laws) {
        find_law(*pair, &block.inputs, &block.geometry, law);
    }
    let laws = pairs.len();
    feeds(kinds, machine, laws, block);
    while slow_down(machine, block, count) {
        feeds(kinds, machine, laws, block);
    }
    outcome(kinds, laws, block);
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
fn outcome(kinds: &Kinds, laws: usize, block: &mut Block) {
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
        &block.motion.mean_chip,
        &mut block.at_mean,
    );
    worst(
        laws,
        &block.laws,
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
    ends(
        &block.inputs,
        &block.engaged,
        &block.geometry,
        &outcome,
        &mut block.ends,
    );
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
    for (pair, law) in pairs.iter().zip(&mut block.laws) {
        find_law(*pair, &block.inputs, &block.geometry, law);
        scale(&mut law.kc11, force);
    }
    scale(&mut block.inputs.kc11_a, force);
    scale(&mut block.inputs.kc11_b, force);
    scale(&mut block.inputs.kc11_c, force);
    outcome(kinds, pairs.len(), block);
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

#[cfg_attr(not(debug_assertions), inline(always))]
fn flag(holds: bool) -> f64 {
    if holds { 1.0 } else { 0.0 }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn engage(kinds: &Kinds, inputs: &InputsBlock, engaged: &mut EngagementBlock) {
    for lane in 0..LANES {
        engaged.set(lane, chain::engage(&mut NoRecord, kinds, &inputs.get(lane)));
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn wanted_speeds(inputs: &InputsBlock, engaged: &EngagementBlock, speeds: &mut SpeedsBlock) {
    for lane in 0..LANES {
        speeds.set(
            lane,
            speed_feed::wanted_speed(&mut NoRecord, &inputs.get(lane), &engaged.get(lane), None),
        );
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn screen(kinds: &Kinds, inputs: &InputsBlock, careful: &mut Lanes) {
    for lane in 0..LANES {
        careful[lane] = flag(!clean(kinds, &inputs.get(lane)));
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn start(real: &Lanes, speed: &mut Lanes, careful: &mut Lanes) {
    for lane in 0..LANES {
        speed[lane] = real[lane];
        careful[lane] += flag(real[lane].is_nan());
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn geometry(
    kinds: &Kinds,
    inputs: &InputsBlock,
    engaged: &EngagementBlock,
    geometry: &mut GeometryBlock,
) {
    for lane in 0..LANES {
        geometry.set(
            lane,
            chain::geometry(&mut NoRecord, kinds, &inputs.get(lane), &engaged.get(lane)),
        );
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn find_law(pair: Pair, inputs: &InputsBlock, geometry: &GeometryBlock, law: &mut LawBlock) {
    for lane in 0..LANES {
        law.set(
            lane,
            chain::law(&inputs.get(lane), &geometry.get(lane), pair),
        );
    }
}

/// The feed at the speed of each lane, and the machine's at or below it.
#[cfg_attr(not(debug_assertions), inline(always))]
fn feeds(kinds: &Kinds, machine: &Machine, laws: usize, block: &mut Block) {
    feeds_without_loads(
        kinds,
        &block.inputs,
        &block.engaged,
        &block.geometry,
        &block.candidate.speed,
        &mut block.unsnapped,
    );
    wanted_loads(
        kinds,
        &block.inputs,
        &block.engaged,
        &block.unsnapped,
        &mut block.wanted,
    );
    for law in block.laws.iter().take(laws) {
        hold_for_law(
            kinds,
            &block.inputs,
            &block.geometry,
            &block.wanted,
            law,
            &mut block.unsnapped,
        );
    }
    table_feeds(&block.inputs, &block.unsnapped, &mut block.wanted_feed);
    feeds_at_or_below(machine, &block.wanted_feed, &mut block.machine_feed);
    snap_feeds(
        &block.inputs,
        &block.unsnapped,
        &block.wanted_feed,
        &block.machine_feed,
        &mut block.candidate,
        &mut block.careful,
    );
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn feeds_without_loads(
    kinds: &Kinds,
    inputs: &InputsBlock,
    engaged: &EngagementBlock,
    geometry: &GeometryBlock,
    speed: &Lanes,
    unsnapped: &mut CandidateBlock,
) {
    for lane in 0..LANES {
        unsnapped.set(
            lane,
            speed_feed::feed_without_loads(
                &mut NoRecord,
                kinds,
                &inputs.get(lane),
                &engaged.get(lane),
                &geometry.get(lane),
                si(speed[lane]),
                None,
            ),
        );
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn wanted_loads(
    kinds: &Kinds,
    inputs: &InputsBlock,
    engaged: &EngagementBlock,
    unsnapped: &CandidateBlock,
    wanted: &mut WantedBlock,
) {
    for lane in 0..LANES {
        wanted.set(
            lane,
            speed_feed::wanted_loads(
                kinds,
                &inputs.get(lane),
                &engaged.get(lane),
                &unsnapped.get(lane),
            ),
        );
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn hold_for_law(
    kinds: &Kinds,
    inputs: &InputsBlock,
    geometry: &GeometryBlock,
    wanted: &WantedBlock,
    law: &LawBlock,
    unsnapped: &mut CandidateBlock,
) {
    // Blocks of their own, so that the compiler sees that nothing read is written.
    let before = unsnapped.clone();
    let mut found = CandidateBlock::every(0.0);
    for lane in 0..LANES {
        found.set(
            lane,
            speed_feed::hold_for_law(
                kinds,
                &inputs.get(lane),
                &geometry.get(lane),
                &wanted.get(lane),
                before.get(lane),
                &law.get(lane),
            ),
        );
    }
    *unsnapped = found;
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn table_feeds(inputs: &InputsBlock, unsnapped: &CandidateBlock, wanted_feed: &mut Lanes) {
    for lane in 0..LANES {
        let candidate = unsnapped.get(lane);
        wanted_feed[lane] =
            rotation::table_feed::value(candidate.feed, si(inputs.teeth[lane]), candidate.speed)
                .value;
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn snap_feeds(
    inputs: &InputsBlock,
    unsnapped: &CandidateBlock,
    wanted_feed: &Lanes,
    machine_feed: &Lanes,
    candidate: &mut CandidateBlock,
    careful: &mut Lanes,
) {
    for lane in 0..LANES {
        let before = unsnapped.get(lane);
        let real = machine_feed[lane];
        let snapped = settle::steps_down(si(real), si(wanted_feed[lane]));
        let feed = rotation::feed_per_tooth::value(si(real), si(inputs.teeth[lane]), before.speed);
        let at_step = settle::snap(before, feed);
        candidate.wanted[lane] = before.wanted.value;
        candidate.feed[lane] = if snapped {
            at_step.feed.value
        } else {
            before.feed.value
        };
        candidate.held_by[lane] = if snapped {
            at_step.held_by.value
        } else {
            before.held_by.value
        };
        careful[lane] += flag(real.is_nan());
    }
}

/// Gives lanes whose chip would be too thin the next lower speed; whether there were any. Lanes that
/// no lower speed helps are left to the scalar call.
fn slow_down(machine: &Machine, block: &mut Block, count: usize) -> bool {
    let mut any = false;
    for lane in 0..count {
        if block.careful[lane] != 0.0 {
            continue;
        }
        let geometry = block.geometry.get(lane);
        let smallest = speed_feed::feed_for_chip(&geometry, si(block.inputs.smallest_chip[lane]));
        let real = si(block.candidate.feed[lane]);
        if !settle::too_thin(real, smallest) {
            continue;
        }
        let candidate = block.unsnapped.get(lane);
        match settle::slower(machine, &candidate, real, smallest) {
            Some(slower) => {
                block.candidate.speed[lane] = slower.value;
                any = true;
            }
            None => block.careful[lane] = 1.0,
        }
    }
    any
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn motion(
    kinds: &Kinds,
    inputs: &InputsBlock,
    engaged: &EngagementBlock,
    candidate: &CandidateBlock,
    motion: &mut MotionBlock,
) {
    for lane in 0..LANES {
        let candidate = candidate.get(lane);
        motion.set(
            lane,
            chain::motion(
                &mut NoRecord,
                kinds,
                &inputs.get(lane),
                &engaged.get(lane),
                candidate.speed,
                candidate.feed,
            ),
        );
    }
}

/// The law with the highest specific cutting force at a chip thickness.
#[cfg_attr(not(debug_assertions), inline(always))]
fn worst(count: usize, laws: &[LawBlock; 4], chip: &Lanes, worst: &mut WorstBlock) {
    let [first, ..] = laws;
    for lane in 0..LANES {
        worst.set(lane, Worst::of(&first.get(lane), si(chip[lane])));
    }
    for law in laws.iter().take(count).skip(1) {
        let before = worst.clone();
        let mut found = WorstBlock::every(0.0);
        for lane in 0..LANES {
            let other = Worst::of(&law.get(lane), si(chip[lane]));
            found.set(lane, before.get(lane).or(other));
        }
        *worst = found;
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn rotary(
    inputs: &InputsBlock,
    motion: &MotionBlock,
    worst: &WorstBlock,
    candidate: &CandidateBlock,
    rotary: &mut RotaryBlock,
) {
    for lane in 0..LANES {
        rotary.set(
            lane,
            chain::rotary(
                &mut NoRecord,
                &inputs.get(lane),
                &motion.get(lane),
                &worst.get(lane),
                candidate.get(lane).speed,
            ),
        );
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn peak(
    kinds: &Kinds,
    inputs: &InputsBlock,
    geometry: &GeometryBlock,
    motion: &MotionBlock,
    worst: &WorstBlock,
    peak: &mut PeakBlock,
) {
    let mut found = PeakBlock::every(0.0);
    for lane in 0..LANES {
        found.set(
            lane,
            chain::peak(
                &mut NoRecord,
                kinds,
                &inputs.get(lane),
                &geometry.get(lane),
                &motion.get(lane),
                &worst.get(lane),
            ),
        );
    }
    *peak = found;
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn finish(
    kinds: &Kinds,
    inputs: &InputsBlock,
    geometry: &GeometryBlock,
    motion: &MotionBlock,
    finish: &mut FinishBlock,
) {
    for lane in 0..LANES {
        finish.set(
            lane,
            chain::finish(
                &mut NoRecord,
                kinds,
                &inputs.get(lane),
                &geometry.get(lane),
                &motion.get(lane),
            ),
        );
    }
}

/// What follows from speed and feed, in its parts.
struct Outcomes<'b> {
    motion: &'b MotionBlock,
    rotary: &'b RotaryBlock,
    peak: &'b PeakBlock,
    finish: &'b FinishBlock,
}

impl<'b> Outcomes<'b> {
    #[cfg_attr(not(debug_assertions), inline(always))]
    fn of(
        motion: &'b MotionBlock,
        rotary: &'b RotaryBlock,
        peak: &'b PeakBlock,
        finish: &'b FinishBlock,
    ) -> Outcomes<'b> {
        Outcomes {
            motion,
            rotary,
            peak,
            finish,
        }
    }

    #[cfg_attr(not(debug_assertions), inline(always))]
    fn get(&self, lane: usize) -> Outcome {
        Outcome {
            motion: self.motion.get(lane),
            rotary: self.rotary.get(lane),
            peak: self.peak.get(lane),
            finish: self.finish.get(lane),
        }
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn pace(kinds: &Kinds, inputs: &InputsBlock, outcome: &Outcomes, pace: &mut PaceBlock) {
    for lane in 0..LANES {
        pace.set(
            lane,
            results::pace(&mut NoRecord, kinds, &inputs.get(lane), &outcome.get(lane)),
        );
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn ends(
    inputs: &InputsBlock,
    engaged: &EngagementBlock,
    geometry: &GeometryBlock,
    outcome: &Outcomes,
    ends: &mut EndsBlock,
) {
    for lane in 0..LANES {
        ends.set(
            lane,
            results::ends(
                &inputs.get(lane),
                &engaged.get(lane),
                &geometry.get(lane),
                &outcome.get(lane),
            ),
        );
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn judge(
    kinds: &Kinds,
    inputs: &InputsBlock,
    candidate: &CandidateBlock,
    outcome: &Outcomes,
    verdict: &mut VerdictBlock,
) {
    for lane in 0..LANES {
        verdict.set(
            lane,
            limits::judge(
                kinds,
                &inputs.get(lane),
                &candidate.get(lane),
                &outcome.get(lane),
            ),
        );
    }
}

/// What the machine made of the speeds and feeds wanted.
struct Snaps<'b> {
    real: &'b Lanes,
    fast: &'b Lanes,
    wanted_feed: &'b Lanes,
    machine_feed: &'b Lanes,
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn doubts(
    inputs: &InputsBlock,
    speeds: &SpeedsBlock,
    snaps: &Snaps,
    candidate: &CandidateBlock,
    outcome: &Outcomes,
    doubts: &mut Lanes,
) {
    for lane in 0..LANES {
        let reached = Reached {
            below_lowest: false,
            worn_slower: snaps.real[lane] < snaps.fast[lane],
            first: snaps.real[lane],
        };
        let snapped = settle::steps_down(si(snaps.machine_feed[lane]), si(snaps.wanted_feed[lane]));
        doubts[lane] = results::doubts(
            &inputs.get(lane),
            &speeds.get(lane),
            reached,
            &candidate.get(lane),
            snapped,
            &outcome.get(lane),
        )
        .value;
    }
}

/// What must be numbers.
struct Sound<'b> {
    engaged: &'b EngagementBlock,
    geometry: &'b GeometryBlock,
    candidate: &'b CandidateBlock,
    pace: &'b PaceBlock,
    ends: &'b EndsBlock,
    verdict: &'b VerdictBlock,
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn sound(results: &Sound, outcome: &Outcomes, careful: &mut Lanes) {
    for lane in 0..LANES {
        let sound = results::sound(
            &results.engaged.get(lane),
            &results.geometry.get(lane),
            &results.candidate.get(lane),
            &outcome.get(lane),
            &results.pace.get(lane),
            &results.ends.get(lane),
            &results.verdict.get(lane),
        );
        careful[lane] += flag(!sound);
    }
}

/// The highest speed of the machine at or below each, as [`Machine::speed_at_or_below`]; NaN for none.
#[cfg_attr(not(debug_assertions), inline(always))]
fn speeds_at_or_below(machine: &Machine, wanted: &Lanes, found: &mut Lanes) {
    match &machine.drive {
        Drive::Continuous { lowest, highest } => {
            within(lowest.value, highest.value, wanted, found);
        }
        Drive::Stepped(steps) => {
            *found = [f64::NAN; LANES];
            for step in steps {
                step_up(step.value, wanted, found);
            }
        }
    }
}

/// The highest feed of the machine at or below each, as [`Machine::feed_at_or_below`]; NaN for none.
#[cfg_attr(not(debug_assertions), inline(always))]
fn feeds_at_or_below(machine: &Machine, wanted: &Lanes, found: &mut Lanes) {
    match &machine.feed {
        Feed::Continuous { lowest, highest } => {
            within(lowest.value, highest.value, wanted, found);
        }
        Feed::Stepped(steps) => {
            *found = [f64::NAN; LANES];
            for step in steps {
                step_up(step.value, wanted, found);
            }
        }
        Feed::Hand => *found = *wanted,
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn within(lowest: f64, highest: f64, wanted: &Lanes, found: &mut Lanes) {
    for lane in 0..LANES {
        let reach = wanted[lane] * (1.0 + 1e-9);
        let below = if wanted[lane] < highest {
            wanted[lane]
        } else {
            highest
        };
        let inside = if below > lowest { below } else { lowest };
        found[lane] = if lowest <= reach { inside } else { f64::NAN };
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn step_up(step: f64, wanted: &Lanes, found: &mut Lanes) {
    for lane in 0..LANES {
        let reach = wanted[lane] * (1.0 + 1e-9);
        found[lane] = if step <= reach { step } else { found[lane] };
    }
}
