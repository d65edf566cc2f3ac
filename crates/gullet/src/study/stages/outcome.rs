//! The stages of what follows from a speed and a feed.

// Every record of a lane has the same index: loops over lanes read better than zipped iterators.
#![allow(clippy::needless_range_loop, clippy::manual_memcpy)]

use super::super::lanes::Lanes;
use super::settings::flag;
use crate::formula::NoRecord;
use crate::operation::lanes::LANES;
use crate::operation::limits::{self, VerdictBlock};
use crate::operation::numbers::{
    CandidateBlock, EngagementBlock, FinishBlock, GeometryBlock, InputsBlock, Kinds, LawBlock,
    MotionBlock, Outcome, PeakBlock, RotaryBlock, SpeedsBlock, Worst, WorstBlock,
};
use crate::operation::results::{self, EndsBlock, PaceBlock, Reached};
use crate::operation::{chain, settle};
use crate::quantity::si;

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn motion(
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
pub(super) fn worst(
    count: usize,
    laws: &[LawBlock; 4],
    wear: &Lanes,
    chip: &Lanes,
    worst: &mut WorstBlock,
) {
    let [first, ..] = laws;
    for lane in 0..LANES {
        worst.set(
            lane,
            Worst::of(&first.get(lane), si(chip[lane]), si(wear[lane])),
        );
    }
    for law in laws.iter().take(count).skip(1) {
        let before = worst.clone();
        let mut found = WorstBlock::every(0.0);
        for lane in 0..LANES {
            let other = Worst::of(&law.get(lane), si(chip[lane]), si(wear[lane]));
            found.set(lane, before.get(lane).or(other));
        }
        *worst = found;
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn rotary(
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
pub(super) fn peak(
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
pub(super) fn finish(
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
pub(super) struct Outcomes<'b> {
    pub motion: &'b MotionBlock,
    pub rotary: &'b RotaryBlock,
    pub peak: &'b PeakBlock,
    pub finish: &'b FinishBlock,
}

impl<'b> Outcomes<'b> {
    #[cfg_attr(not(debug_assertions), inline(always))]
    pub(super) fn of(
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
pub(super) fn pace(kinds: &Kinds, inputs: &InputsBlock, outcome: &Outcomes, pace: &mut PaceBlock) {
    for lane in 0..LANES {
        pace.set(
            lane,
            results::pace(&mut NoRecord, kinds, &inputs.get(lane), &outcome.get(lane)),
        );
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn ends(
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
pub(super) fn times(
    inputs: &InputsBlock,
    engaged: &EngagementBlock,
    geometry: &GeometryBlock,
    ends: &mut EndsBlock,
) {
    for lane in 0..LANES {
        let times = results::times(&inputs.get(lane), &engaged.get(lane), &geometry.get(lane));
        ends.time_low[lane] = times.low.value;
        ends.time_start[lane] = times.start.value;
        ends.time_high[lane] = times.high.value;
    }
    for unknown in [
        &mut ends.force_low,
        &mut ends.force_high,
        &mut ends.power_low,
        &mut ends.power_high,
    ] {
        *unknown = [0.0; LANES];
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn ends_are_sound(inputs: &InputsBlock, outcome: &Outcomes, careful: &mut Lanes) {
    for lane in 0..LANES {
        careful[lane] += flag(!results::ends_are_sound(
            &inputs.get(lane),
            &outcome.get(lane),
        ));
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn judge(
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
pub(super) struct Snaps<'b> {
    pub real: &'b Lanes,
    pub fast: &'b Lanes,
    pub wanted_feed: &'b Lanes,
    pub machine_feed: &'b Lanes,
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn doubts(
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
pub(super) struct Sound<'b> {
    pub engaged: &'b EngagementBlock,
    pub geometry: &'b GeometryBlock,
    pub candidate: &'b CandidateBlock,
    pub pace: &'b PaceBlock,
    pub ends: &'b EndsBlock,
    pub verdict: &'b VerdictBlock,
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn sound(results: &Sound, outcome: &Outcomes, careful: &mut Lanes) {
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
