//! The kernel: blocks of rows that choose alike, through the same functions as a single pass.

use super::dispatch::{Execution, Work};
use super::group::{Group, Key, Keys, Made};
use super::lanes::{Block, Lanes};
use super::milling::MillingStudy;
use super::results::Results;
use super::rows::{Input, Rows};
use crate::error::Code;
use crate::formula::{Column, NoRecord, rotation};
use crate::model::{Drive, Feed, Machine};
use crate::operation::inputs::{fill_asked_speed, fill_feed};
use crate::operation::lanes::LANES;
use crate::operation::limits::{self, LimitName};
use crate::operation::numbers::{Form, Inputs, Kinds};
use crate::operation::results::{self, Reached};
use crate::operation::settle::{self, Settled, Stop, settle};
use crate::operation::{Lowering, Operation, chain, speed_feed};
use crate::quantity::si;
use std::sync::Arc;

/// Rows that one thread takes at a time.
const CHUNK: usize = 16 * 1024;

impl MillingStudy<'_> {
    pub(super) fn run_chunks(
        &self,
        rows: &Rows,
        wanted: &[usize],
        execution: Execution,
        results: &mut Results,
    ) {
        let keys = Keys::new(rows);
        let count = rows.count;
        // Small studies are shared out too, in blocks that are worth a thread.
        let share = count.div_ceil(execution.threads().max(1));
        let chunk = share.clamp(4 * LANES, CHUNK).next_multiple_of(LANES);
        let parts = pieces(results, chunk);
        execution.for_each(count.div_ceil(chunk), parts, |out| Chunk {
            study: self,
            rows,
            keys: &keys,
            wanted,
            out,
        });
    }
}

/// The place in the results that a chunk fills.
struct Piece<'r> {
    start: usize,
    columns: Vec<&'r mut [f64]>,
    status: &'r mut [i32],
    binding: &'r mut [u8],
    held_by: &'r mut [u8],
    warnings: &'r mut [u8],
}

/// Cuts the results into pieces of so many rows.
fn pieces(results: &mut Results, chunk: usize) -> impl Iterator<Item = Piece<'_>> + Send {
    let mut columns: Vec<_> = results
        .columns
        .iter_mut()
        .map(|column| column.chunks_mut(chunk))
        .collect();
    results
        .status
        .chunks_mut(chunk)
        .zip(results.binding.chunks_mut(chunk))
        .zip(results.held_by.chunks_mut(chunk))
        .zip(results.warnings.chunks_mut(chunk))
        .enumerate()
        .map(
            move |(index, (((status, binding), held_by), warnings))| Piece {
                start: index * chunk,
                columns: columns.iter_mut().filter_map(Iterator::next).collect(),
                status,
                binding,
                held_by,
                warnings,
            },
        )
}

/// A run of rows that one thread computes.
struct Chunk<'a> {
    study: &'a MillingStudy<'a>,
    rows: &'a Rows<'a>,
    keys: &'a Keys<'a>,
    wanted: &'a [usize],
    out: Piece<'a>,
}

impl Work for Chunk<'_> {
    type Output = ();

    #[inline(always)]
    fn run(mut self) {
        let mut block = Block::new();
        for (made, places) in self.groups() {
            let group = match &*made {
                Ok(group) => group,
                Err(code) => {
                    self.refuse(&places, *code);
                    continue;
                }
            };
            block.inputs.fill(&group.template);
            for lanes in places.chunks(LANES) {
                self.gather(group, lanes, &mut block);
                compute(group, &mut block, lanes.len());
                self.mend(group, lanes.len(), &mut block);
                self.scatter(lanes, &block);
            }
        }
    }
}

impl Chunk<'_> {
    /// The rows of the chunk by what they choose, as places in the chunk.
    fn groups(&self) -> Vec<(Arc<Made>, Vec<usize>)> {
        let count = self.out.status.len();
        let start = self.out.start;
        let needed = |place: &usize| {
            !self
                .rows
                .missing
                .is_some_and(|missing| missing.get(start + place).copied().unwrap_or_default())
        };
        if self.keys.uniform() {
            let made = self.study.group(&self.keys.of(start));
            return vec![(made, (0..count).filter(needed).collect())];
        }
        let mut groups: Vec<(Key, Vec<usize>)> = Vec::new();
        let mut last = 0;
        let mut places: std::collections::HashMap<Key, usize> = Default::default();
        for place in (0..count).filter(needed) {
            let key = self.keys.of(start + place);
            if groups.get(last).is_none_or(|(other, _)| *other != key) {
                last = *places.entry(key).or_insert_with(|| {
                    groups.push((key, Vec::new()));
                    groups.len() - 1
                });
            }
            if let Some((_, rows)) = groups.get_mut(last) {
                rows.push(place);
            }
        }
        groups
            .into_iter()
            .map(|(key, places)| (self.study.group(&key), places))
            .collect()
    }

    fn refuse(&mut self, places: &[usize], code: Code) {
        for place in places {
            if let Some(status) = self.out.status.get_mut(*place) {
                *status = code.number();
            }
        }
    }

    /// Lays the columns over the numbers of the group.
    fn gather(&self, group: &Group, places: &[usize], block: &mut Block) {
        let mut sized = false;
        for (input, column) in &self.rows.numbers {
            let lanes = input.lanes(&mut block.inputs);
            match column {
                Column::Constant(value) => *lanes = [input.held(*value); LANES],
                Column::Values(values) => {
                    let start = self.out.start;
                    for (lane, place) in lanes.iter_mut().zip(places) {
                        let value = values.get(start + place).copied().unwrap_or(f64::NAN);
                        *lane = input.held(value);
                    }
                }
            }
            sized |= matches!(
                input,
                Input::CutterDiameter
                    | Input::AxialDepth
                    | Input::FeedPerTooth
                    | Input::SpindleSpeed
            );
        }
        let inputs = &mut block.inputs;
        match group.kinds.form {
            Form::Square => inputs.corner_radius = [0.0; LANES],
            Form::BallNose => inputs.corner_radius = inputs.diameter.map(|d| d / 2.0),
            Form::FaceMill => inputs.corner_radius = [0.0; LANES],
            Form::CornerRadius => {}
        }
        if group.kinds.form != Form::FaceMill {
            inputs.cutting_edge_angle = [core::f64::consts::FRAC_PI_2; LANES];
        }
        if group.kinds.operation == Operation::Slotting {
            inputs.radial_depth = inputs.diameter;
        }
        if sized {
            // The tables are read row by row: a search is no work for vectors.
            for lane in 0..places.len() {
                let mut row = inputs.get(lane);
                row.assumed = group.template.assumed;
                row.speed_low = group.template.speed_low;
                row.speed_start = group.template.speed_start;
                row.speed_high = group.template.speed_high;
                row.speed_chosen = group.template.speed_chosen;
                fill_feed(&mut row, &group.grounds);
                fill_asked_speed(&mut row);
                inputs.set_tables(lane, &row);
            }
        }
        block.status = [0; LANES];
    }

    /// Rows that the lanes did not decide go through the scalar call.
    fn mend(&self, group: &Group, count: usize, block: &mut Block) {
        for lane in 0..count {
            if block.careful[lane] == 0.0 {
                continue;
            }
            let inputs = block.inputs.get(lane);
            match self.study.row(group, &inputs) {
                Ok(settled) => block.put(lane, &group.kinds, &inputs, &settled),
                Err((code, limit)) => {
                    block.status[lane] = code.number();
                    block.verdict.binding[lane] = limit.map_or(0.0, LimitName::lane);
                    block.candidate.held_by[lane] = 0.0;
                    block.doubts[lane] = 0.0;
                }
            }
        }
    }

    fn scatter(&mut self, places: &[usize], block: &Block) {
        for (column, place) in self.out.columns.iter_mut().zip(self.wanted) {
            let Some(lanes) = block.result(*place) else {
                continue;
            };
            for (lane, place) in places.iter().enumerate() {
                if let Some(slot) = column.get_mut(*place) {
                    *slot = if block.status[lane] == 0 {
                        lanes[lane]
                    } else {
                        f64::NAN
                    };
                }
            }
        }
        for (lane, place) in places.iter().enumerate() {
            let out = &mut self.out;
            if let (Some(status), Some(binding), Some(held_by), Some(warnings)) = (
                out.status.get_mut(*place),
                out.binding.get_mut(*place),
                out.held_by.get_mut(*place),
                out.warnings.get_mut(*place),
            ) {
                *status = block.status[lane];
                *binding = block.verdict.binding[lane] as u8;
                *held_by = block.candidate.held_by[lane] as u8;
                *warnings = block.doubts[lane] as u8;
            }
        }
    }
}

impl MillingStudy<'_> {
    /// One row by the scalar call; else the code of its error and the limit it rests on.
    fn row(&self, group: &Group, inputs: &Inputs) -> Result<Settled, (Code, Option<LimitName>)> {
        let bad = |code| (code, None);
        let mut base = group.base_of(inputs);
        // What is no count cannot stand in a cutter: 0 takes its place among the problems.
        let teeth = inputs.teeth.value;
        let no_count = if !teeth.is_finite() {
            Some(Code::NotFinite)
        } else if teeth.fract() != 0.0 {
            Some(Code::NotWhole)
        } else {
            None
        };
        if no_count.is_some() {
            base.cutter.teeth = 0;
        }
        if let Some(problem) = self.first_problem(&base) {
            let code = no_count.filter(|_| problem.parameter == "cutter.teeth");
            return Err(bad(code.unwrap_or(problem.code)));
        }
        if !group.grounds.answers(inputs) {
            return Err(bad(Code::NoData));
        }
        let machine = base.machines.first().ok_or(bad(Code::Missing))?;
        let kinds = &group.kinds;
        let settled = settle(
            &mut NoRecord,
            kinds,
            inputs,
            machine,
            Lowering::Allowed,
            None,
        )
        .map_err(|stop| {
            let name = match &stop {
                Stop::CutterSpeed => LimitName::CutterSpeed,
                Stop::TableFeedLowest(_) => LimitName::TableFeedLowest,
                Stop::Stuck(stuck) => stuck.limit(kinds, inputs),
            };
            (Code::LimitExceeded, Some(name))
        })?;
        if let Some(limit) = LimitName::from_lane(settled.verdict.exceeded.value) {
            return Err((Code::LimitExceeded, Some(limit)));
        }
        if settled.is_sound(kinds, inputs) {
            return Ok(settled);
        }
        // Beyond what the formulas admit: the cut with its words knows which.
        match self
            .milling(&base)
            .map(|milling| milling.cut(&base.pass, Lowering::Allowed))
        {
            Some(Err(error)) => Err(bad(error.code())),
            _ => Ok(settled),
        }
    }
}

impl Block {
    /// What the scalar call gave for one lane.
    fn put(&mut self, lane: usize, kinds: &Kinds, inputs: &Inputs, settled: &Settled) {
        let Settled {
            engaged,
            speeds,
            geometry,
            candidate,
            outcome,
            ..
        } = settled;
        self.engaged.set(lane, *engaged);
        self.speeds.set(lane, *speeds);
        self.geometry.set(lane, *geometry);
        self.candidate.set(lane, *candidate);
        self.outcome.set(lane, *outcome);
        self.pace
            .set(lane, results::pace(&mut NoRecord, kinds, inputs, outcome));
        self.ends
            .set(lane, results::ends(inputs, engaged, geometry, outcome));
        self.verdict.set(lane, settled.verdict);
        self.doubts[lane] = results::doubts(
            inputs,
            speeds,
            settled.reached(),
            candidate,
            settled.snapped,
            outcome,
        )
        .value;
        self.status[lane] = 0;
    }
}

/// The lanes of a block, each operation compiled on its own.
#[inline(always)]
fn compute(group: &Group, block: &mut Block, count: usize) {
    let Some(machine) = group.base.machines.first() else {
        block.careful = [1.0; LANES];
        return;
    };
    let kinds = |operation| Kinds {
        operation,
        ..group.kinds
    };
    match group.kinds.operation {
        Operation::SideMilling => {
            stages(&kinds(Operation::SideMilling), machine, block, count);
        }
        Operation::Slotting => stages(&kinds(Operation::Slotting), machine, block, count),
        Operation::FaceMilling => stages(&kinds(Operation::FaceMilling), machine, block, count),
    }
}

#[inline(always)]
fn stages(kinds: &Kinds, machine: &Machine, block: &mut Block, count: usize) {
    for lane in 0..LANES {
        let inputs = block.inputs.get(lane);
        let engaged = chain::engage(&mut NoRecord, kinds, &inputs);
        block.engaged.set(lane, engaged);
        block.speeds.set(
            lane,
            speed_feed::wanted_speed(&mut NoRecord, &inputs, &engaged, None),
        );
        block.careful[lane] = flag(!super::screen::clean(kinds, &inputs));
    }
    speeds_at_or_below(machine, &block.speeds.bound, &mut block.real);
    speeds_at_or_below(machine, &block.speeds.capped, &mut block.fast);
    for lane in 0..LANES {
        let inputs = block.inputs.get(lane);
        let engaged = block.engaged.get(lane);
        block.geometry.set(
            lane,
            chain::geometry(&mut NoRecord, kinds, &inputs, &engaged),
        );
    }
    for lane in 0..LANES {
        let real = block.real[lane];
        block.careful[lane] += flag(real.is_nan());
        block.candidate.speed[lane] = real;
    }
    feeds(kinds, machine, block);
    while slow_down(machine, block, count) {
        feeds(kinds, machine, block);
    }
    for lane in 0..LANES {
        let inputs = block.inputs.get(lane);
        let engaged = block.engaged.get(lane);
        let geometry = block.geometry.get(lane);
        let candidate = block.candidate.get(lane);
        let outcome = chain::outcome(
            &mut NoRecord,
            kinds,
            &inputs,
            &engaged,
            &geometry,
            candidate.speed,
            candidate.feed,
        );
        block.outcome.set(lane, outcome);
    }
    for lane in 0..LANES {
        let inputs = block.inputs.get(lane);
        let engaged = block.engaged.get(lane);
        let geometry = block.geometry.get(lane);
        let outcome = block.outcome.get(lane);
        block
            .pace
            .set(lane, results::pace(&mut NoRecord, kinds, &inputs, &outcome));
        block
            .ends
            .set(lane, results::ends(&inputs, &engaged, &geometry, &outcome));
    }
    for lane in 0..LANES {
        let inputs = block.inputs.get(lane);
        let candidate = block.candidate.get(lane);
        let outcome = block.outcome.get(lane);
        let verdict = limits::judge(kinds, &inputs, &candidate, &outcome);
        block.verdict.set(lane, verdict);
        let speeds = block.speeds.get(lane);
        let reached = Reached {
            below_lowest: false,
            worn_slower: block.real[lane] < block.fast[lane],
            first: block.real[lane],
        };
        let wanted: f64 = block.wanted_feed[lane];
        let snapped = settle::steps_down(si(block.machine_feed[lane]), si(wanted));
        block.doubts[lane] =
            results::doubts(&inputs, &speeds, reached, &candidate, snapped, &outcome).value;
    }
    for lane in 0..LANES {
        let verdict = block.verdict.get(lane);
        let sound = results::sound(
            &block.engaged.get(lane),
            &block.geometry.get(lane),
            &block.candidate.get(lane),
            &block.outcome.get(lane),
            &block.pace.get(lane),
            &block.ends.get(lane),
            &verdict,
        );
        // A limit that stays exceeded is an error: the scalar call says which.
        block.careful[lane] += flag(!sound | (verdict.exceeded.value > 0.0));
    }
}

#[inline(always)]
fn flag(holds: bool) -> f64 {
    if holds { 1.0 } else { 0.0 }
}

/// The feed at the speed of each lane, and the machine's at or below it.
#[inline(always)]
fn feeds(kinds: &Kinds, machine: &Machine, block: &mut Block) {
    for lane in 0..LANES {
        let inputs = block.inputs.get(lane);
        let engaged = block.engaged.get(lane);
        let geometry = block.geometry.get(lane);
        let candidate = speed_feed::feed(
            &mut NoRecord,
            kinds,
            &inputs,
            &engaged,
            &geometry,
            si(block.candidate.speed[lane]),
            Lowering::Allowed,
            None,
        );
        block.unsnapped.set(lane, candidate);
        block.wanted_feed[lane] =
            rotation::table_feed::value(candidate.feed, inputs.teeth, candidate.speed).value;
    }
    feeds_at_or_below(machine, &block.wanted_feed, &mut block.machine_feed);
    for lane in 0..LANES {
        let candidate = block.unsnapped.get(lane);
        let teeth = si(block.inputs.teeth[lane]);
        let real = block.machine_feed[lane];
        let snapped = settle::steps_down(si(real), si(block.wanted_feed[lane]));
        let feed = rotation::feed_per_tooth::value(si(real), teeth, candidate.speed);
        let at_step = settle::snap(candidate, feed);
        block.candidate.wanted[lane] = candidate.wanted.value;
        block.candidate.feed[lane] = if snapped {
            at_step.feed.value
        } else {
            candidate.feed.value
        };
        block.candidate.held_by[lane] = if snapped {
            at_step.held_by.value
        } else {
            candidate.held_by.value
        };
        block.careful[lane] += flag(real.is_nan());
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

/// The highest speed of the machine at or below each, as [`Machine::speed_at_or_below`]; NaN for none.
#[inline(always)]
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
#[inline(always)]
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

#[inline(always)]
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

#[inline(always)]
fn step_up(step: f64, wanted: &Lanes, found: &mut Lanes) {
    for lane in 0..LANES {
        let reach = wanted[lane] * (1.0 + 1e-9);
        found[lane] = if step <= reach { step } else { found[lane] };
    }
}
