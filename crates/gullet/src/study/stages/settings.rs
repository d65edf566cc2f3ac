//! The stages from the numbers of a row to the speed and the feed that the machine really has.

// Every record of a lane has the same index: loops over lanes read better than zipped iterators.
#![allow(clippy::needless_range_loop, clippy::manual_memcpy)]

use super::super::lanes::{Block, Lanes};
use super::super::screen::clean;
use crate::formula::{NoRecord, rotation};
use crate::model::{Drive, Feed, Machine};
use crate::operation::lanes::LANES;
use crate::operation::numbers::{
    CandidateBlock, EngagementBlock, GeometryBlock, InputsBlock, Kinds, LawBlock, LoadBlock, Pair,
    SpeedsBlock, TeethBlock, WantedBlock,
};
use crate::operation::{chain, law, settle, speed_feed};
use crate::quantity::si;

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn flag(holds: bool) -> f64 {
    if holds { 1.0 } else { 0.0 }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn engage(kinds: &Kinds, inputs: &InputsBlock, engaged: &mut EngagementBlock) {
    for lane in 0..LANES {
        engaged.set(lane, chain::engage(&mut NoRecord, kinds, &inputs.get(lane)));
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn wanted_speeds(
    inputs: &InputsBlock,
    engaged: &EngagementBlock,
    speeds: &mut SpeedsBlock,
) {
    for lane in 0..LANES {
        speeds.set(
            lane,
            speed_feed::wanted_speed(&mut NoRecord, &inputs.get(lane), &engaged.get(lane), None),
        );
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn screen(kinds: &Kinds, inputs: &InputsBlock, careful: &mut Lanes) {
    for lane in 0..LANES {
        careful[lane] = flag(!clean(kinds, &inputs.get(lane)));
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn start(real: &Lanes, speed: &mut Lanes, careful: &mut Lanes) {
    for lane in 0..LANES {
        speed[lane] = real[lane];
        careful[lane] += flag(real[lane].is_nan());
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn geometry(
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
pub(super) fn teeth(inputs: &InputsBlock, geometry: &GeometryBlock, teeth: &mut TeethBlock) {
    for lane in 0..LANES {
        teeth.set(lane, law::teeth(&inputs.get(lane), &geometry.get(lane)));
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn find_law(
    pair: Pair,
    geometry: &GeometryBlock,
    teeth: &TeethBlock,
    law: &mut LawBlock,
) {
    for lane in 0..LANES {
        law.set(lane, law::law(&geometry.get(lane), &teeth.get(lane), pair));
    }
}

/// The feed at the speed of each lane, and the machine's at or below it.
#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn feeds(kinds: &Kinds, machine: &Machine, laws: usize, block: &mut Block) {
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
        load(
            kinds,
            &block.inputs,
            &block.geometry,
            &block.wanted,
            &block.candidate.speed,
            law,
            &mut block.load,
        );
        // Most blocks have no load beyond its bound, and what lowers the feed is a power.
        if block
            .load
            .share
            .iter()
            .any(|share| speed_feed::overloads(*share))
        {
            hold_for_load(&block.load, law, &mut block.unsnapped);
        }
    }
    table_feeds(&block.inputs, &block.unsnapped, &mut block.wanted_feed);
    feeds_at_or_below(
        machine,
        &block.candidate.speed,
        &block.wanted_feed,
        &mut block.machine_feed,
    );
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
pub(super) fn feeds_without_loads(
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
pub(super) fn wanted_loads(
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
pub(super) fn load(
    kinds: &Kinds,
    inputs: &InputsBlock,
    geometry: &GeometryBlock,
    wanted: &WantedBlock,
    speed: &Lanes,
    law: &LawBlock,
    load: &mut LoadBlock,
) {
    for lane in 0..LANES {
        load.set(
            lane,
            speed_feed::load(
                kinds,
                &inputs.get(lane),
                &geometry.get(lane),
                &wanted.get(lane),
                si(speed[lane]),
                &law.get(lane),
            ),
        );
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn hold_for_load(load: &LoadBlock, law: &LawBlock, unsnapped: &mut CandidateBlock) {
    // Blocks of their own, so that the compiler sees that nothing read is written.
    let before = unsnapped.clone();
    let mut found = CandidateBlock::every(0.0);
    for lane in 0..LANES {
        found.set(
            lane,
            speed_feed::hold_for_load(before.get(lane), &law.get(lane), &load.get(lane)),
        );
    }
    *unsnapped = found;
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn table_feeds(
    inputs: &InputsBlock,
    unsnapped: &CandidateBlock,
    wanted_feed: &mut Lanes,
) {
    for lane in 0..LANES {
        let candidate = unsnapped.get(lane);
        wanted_feed[lane] =
            rotation::table_feed::value(candidate.feed, si(inputs.teeth[lane]), candidate.speed)
                .value;
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn snap_feeds(
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

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn find_thin(
    geometry: &GeometryBlock,
    smallest: &Lanes,
    feed: &Lanes,
    thin: &mut Lanes,
) {
    for lane in 0..LANES {
        let least = speed_feed::feed_for_chip(&geometry.get(lane), si(smallest[lane]));
        thin[lane] = flag(settle::too_thin(si(feed[lane]), least));
    }
}

/// Gives lanes whose chip would be too thin the next lower speed; whether there were any. Lanes that
/// no lower speed helps are left to the scalar call.
pub(super) fn slow_down(machine: &Machine, block: &mut Block, count: usize) -> bool {
    let mut thin = [0.0; LANES];
    find_thin(
        &block.geometry,
        &block.inputs.smallest_chip,
        &block.candidate.feed,
        &mut thin,
    );
    if thin.iter().take(count).all(|thin| *thin == 0.0) {
        return false;
    }
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

/// The highest speed of the machine at or below each, as [`Machine::speed_at_or_below`]; NaN for none.
#[cfg_attr(not(debug_assertions), inline(always))]
pub(in crate::study) fn speeds_at_or_below(machine: &Machine, wanted: &Lanes, found: &mut Lanes) {
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

/// The highest feed of the machine at or below each while the spindle turns at its speed, as
/// [`Machine::feed_at_speed`]; NaN for none.
#[cfg_attr(not(debug_assertions), inline(always))]
pub(in crate::study) fn feeds_at_or_below(
    machine: &Machine,
    speed: &Lanes,
    wanted: &Lanes,
    found: &mut Lanes,
) {
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
        Feed::Geared(steps) => {
            *found = [f64::NAN; LANES];
            for step in steps {
                geared_step_up(step.value, speed, wanted, found);
            }
        }
        Feed::Hand => *found = *wanted,
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
pub(super) fn within(lowest: f64, highest: f64, wanted: &Lanes, found: &mut Lanes) {
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
pub(super) fn step_up(step: f64, wanted: &Lanes, found: &mut Lanes) {
    for lane in 0..LANES {
        let reach = wanted[lane] * (1.0 + 1e-9);
        found[lane] = if step <= reach { step } else { found[lane] };
    }
}

#[cfg_attr(not(debug_assertions), inline(always))]
fn geared_step_up(step: f64, speed: &Lanes, wanted: &Lanes, found: &mut Lanes) {
    for lane in 0..LANES {
        let reach = wanted[lane] * (1.0 + 1e-9);
        let feed = step * speed[lane];
        found[lane] = if feed <= reach { feed } else { found[lane] };
    }
}
