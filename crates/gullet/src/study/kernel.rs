//! The kernel: blocks of rows that choose alike, through the same functions as a single pass.

use super::dispatch::{Execution, Work};
use super::draws::Draws;
use super::group::{Group, Key, Keys, Made};
use super::lanes::Block;
use super::milling::MillingStudy;
use super::results::Results;
use super::rows::{Input, Rows};
use super::stages;
use super::uncertainty::{Quantiles, Uncertainty};
use crate::error::Code;
use crate::formula::{Column, NoRecord};
use crate::operation::inputs::{feed_or_asked, fill_asked_speed};
use crate::operation::lanes::LANES;
use crate::operation::limits::LimitName;
use crate::operation::numbers::{Inputs, Kinds};
use crate::operation::results;
use crate::operation::settle::{Settled, Stop, settle};
use crate::operation::{Lowering, Operation};
use crate::table::FeedCursor;
use std::sync::Arc;

/// Rows that one thread takes at a time.
const CHUNK: usize = 16 * 1024;

/// Rows that one thread draws at a time: each is as much work as many rows.
const DRAWN: usize = LANES;

impl MillingStudy<'_> {
    pub(super) fn run_chunks(
        &self,
        rows: &Rows,
        wanted: &[usize],
        execution: Execution,
        results: &mut Results,
    ) {
        let keys = Keys::new(&rows.choices);
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
            draws: None,
        });
    }

    /// As [`MillingStudy::run_chunks`], and draws every good row.
    pub(super) fn run_draws(
        &self,
        rows: &Rows,
        wanted: &[usize],
        uncertainty: &Uncertainty,
        execution: Execution,
        results: &mut Results,
        quantiles: &mut Quantiles,
    ) {
        let keys = Keys::new(&rows.choices);
        let parts = pieces(results, DRAWN).zip(draw_pieces(quantiles, uncertainty, wanted));
        execution.for_each(rows.count.div_ceil(DRAWN), parts, |(out, draws)| Chunk {
            study: self,
            rows,
            keys: &keys,
            wanted,
            out,
            draws: Some(draws),
        });
    }
}

/// The place in the results that a chunk fills.
pub(super) struct Piece<'r> {
    pub start: usize,
    pub columns: Vec<&'r mut [f64]>,
    pub status: &'r mut [i32],
    pub binding: &'r mut [u8],
    pub held_by: &'r mut [u8],
    pub warnings: &'r mut [u8],
}

impl Piece<'_> {
    /// The row is an error that rests on a limit, or on none: 0.
    pub(super) fn refuse(&mut self, place: usize, code: Code, limit: f64) {
        for column in &mut self.columns {
            if let Some(slot) = column.get_mut(place) {
                *slot = f64::NAN;
            }
        }
        self.decide(place, limit, 0.0, 0.0);
        if let Some(status) = self.status.get_mut(place) {
            *status = code.number();
        }
    }

    /// The row is good: the limits that bind it and hold its feed, and its doubts.
    pub(super) fn decide(&mut self, place: usize, binding: f64, held_by: f64, doubts: f64) {
        let slots = (
            self.status.get_mut(place),
            self.binding.get_mut(place),
            self.held_by.get_mut(place),
            self.warnings.get_mut(place),
        );
        if let (Some(status), Some(bound), Some(holder), Some(warnings)) = slots {
            *status = 0;
            *bound = binding as u8;
            *holder = held_by as u8;
            *warnings = doubts as u8;
        }
    }
}

/// Cuts the results into pieces of so many rows.
pub(super) fn pieces(
    results: &mut Results,
    chunk: usize,
) -> impl Iterator<Item = Piece<'_>> + Send {
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

/// Cuts the quantiles into the same pieces.
fn draw_pieces<'r>(
    quantiles: &'r mut Quantiles,
    uncertainty: &'r Uncertainty,
    wanted: &'r [usize],
) -> impl Iterator<Item = Draws<'r>> + Send {
    let mut columns: Vec<_> = quantiles
        .columns
        .iter_mut()
        .map(|column| column.chunks_mut(DRAWN))
        .collect();
    quantiles
        .left_out
        .chunks_mut(DRAWN)
        .enumerate()
        .map(move |(index, left_out)| Draws {
            uncertainty,
            wanted,
            start: index * DRAWN,
            columns: columns.iter_mut().filter_map(Iterator::next).collect(),
            left_out,
            block: Block::new(),
            drawn: vec![Vec::with_capacity(uncertainty.draws); wanted.len()],
        })
}

/// A run of rows that one thread computes.
struct Chunk<'a> {
    study: &'a MillingStudy<'a>,
    rows: &'a Rows<'a>,
    keys: &'a Keys<'a>,
    wanted: &'a [usize],
    out: Piece<'a>,
    draws: Option<Draws<'a>>,
}

impl Work for Chunk<'_> {
    type Output = ();

    #[inline(always)]
    fn run(mut self) {
        let mut block = Block::new();
        let spread = self.wanted.iter().any(|result| block.is_spread(*result));
        let missing: Vec<usize> = (0..self.out.status.len())
            .filter(|place| self.is_missing(*place))
            .collect();
        self.refuse(&missing, Code::Missing);
        for (made, places) in self.groups() {
            let group = match &*made {
                Ok(group) => group,
                Err(code) => {
                    self.refuse(&places, *code);
                    continue;
                }
            };
            block.inputs.fill(&group.template);
            let mut cursor = group.grounds.feed.as_ref().map(FeedCursor::new);
            for lanes in places.chunks(LANES) {
                self.gather(group, &mut cursor, lanes, &mut block);
                stages::compute(group, spread, &mut block, lanes.len());
                self.mend(group, lanes.len(), &mut block);
                self.scatter(lanes, &block);
                if let Some(draws) = &mut self.draws {
                    draws.take(group, lanes, &block);
                }
            }
        }
    }
}

impl Chunk<'_> {
    /// Whether something that a row needs is missing.
    fn is_missing(&self, place: usize) -> bool {
        self.rows
            .missing
            .and_then(|missing| missing.get(self.out.start + place))
            .copied()
            .unwrap_or_default()
    }

    /// The rows of the chunk by what they choose, as places in the chunk.
    fn groups(&self) -> Vec<(Arc<Made>, Vec<usize>)> {
        let count = self.out.status.len();
        let start = self.out.start;
        let needed = |place: &usize| !self.is_missing(*place);
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
            for column in &mut self.out.columns {
                if let Some(slot) = column.get_mut(*place) {
                    *slot = f64::NAN;
                }
            }
        }
    }

    /// Lays the columns over the numbers of the group.
    #[inline(always)]
    fn gather(
        &self,
        group: &Group,
        cursor: &mut Option<FeedCursor>,
        places: &[usize],
        block: &mut Block,
    ) {
        let mut sized = false;
        for (input, column) in &self.rows.numbers {
            let lanes = input.lanes(&mut block.inputs);
            match column {
                Column::Constant(value) => *lanes = [input.held(*value); LANES],
                Column::Values(values) => {
                    let start = self.out.start;
                    let run = run_of(places).and_then(|run| values.get(start..)?.get(run));
                    if let Some(run) = run {
                        for (lane, value) in lanes.iter_mut().zip(run) {
                            *lane = input.held(*value);
                        }
                    } else {
                        for (lane, place) in lanes.iter_mut().zip(places) {
                            let value = values.get(start + place).copied().unwrap_or(f64::NAN);
                            *lane = input.held(value);
                        }
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
        if group.kinds.ball_nose {
            inputs.corner_radius = inputs.diameter.map(|d| d / 2.0);
        } else if !group.kinds.corner_radius {
            inputs.corner_radius = [0.0; LANES];
        }
        if !group.kinds.face_mill {
            inputs.cutting_edge_angle = [core::f64::consts::FRAC_PI_2; LANES];
        }
        if group.kinds.operation == Operation::Slotting {
            inputs.radial_depth = inputs.diameter;
        }
        if sized {
            // The tables are read row by row: a search is no work for vectors.
            let tables = &group.tables;
            for lane in 0..places.len() {
                let size = (inputs.diameter[lane], inputs.axial_depth[lane]);
                let found = cursor.as_mut().map(|cursor| cursor.numbers(size.0, size.1));
                let feed = feed_or_asked(found, inputs.asked_feed[lane]);
                inputs.feed_low[lane] = feed.low;
                inputs.feed_start[lane] = feed.start;
                inputs.feed_high[lane] = feed.high;
                let assumed = tables.assumed.value;
                inputs.assumed[lane] = if feed.assumed { 1.0 } else { assumed };
            }
            if tables.speed_start.value.is_nan() {
                for lane in 0..places.len() {
                    let mut row = inputs.get(lane);
                    row.speed_low = tables.speed_low;
                    row.speed_start = tables.speed_start;
                    row.speed_high = tables.speed_high;
                    row.speed_chosen = tables.speed_chosen;
                    fill_asked_speed(&mut row);
                    inputs.set_speeds(lane, &row);
                }
            }
        }
        block.status = [0; LANES];
    }

    /// Rows that the lanes did not decide go through the scalar call.
    fn mend(&self, group: &Group, count: usize, block: &mut Block) {
        let flags = block.careful.iter().zip(&block.verdict.exceeded);
        if flags
            .take(count)
            .all(|(careful, exceeded)| *careful == 0.0 && *exceeded <= 0.0)
        {
            return;
        }
        for lane in 0..count {
            if block.careful[lane] == 0.0 {
                // A limit that stays exceeded is an error.
                let exceeded = block.verdict.exceeded[lane];
                if exceeded > 0.0 {
                    block.refuse(lane, Code::LimitExceeded, exceeded);
                }
                continue;
            }
            let inputs = block.inputs.get(lane);
            match self.study.row(group, &inputs) {
                Ok(settled) => block.put(lane, &group.kinds, &inputs, &settled),
                Err((code, limit)) => {
                    block.refuse(lane, code, limit.map_or(0.0, LimitName::lane));
                }
            }
        }
    }

    #[inline(always)]
    fn scatter(&mut self, places: &[usize], block: &Block) {
        let run = run_of(places);
        let results = block.results();
        for (column, result) in self.out.columns.iter_mut().zip(self.wanted) {
            let Some(lanes) = results.get(*result) else {
                continue;
            };
            if let Some(slots) = run.clone().and_then(|run| column.get_mut(run)) {
                copy(slots, lanes.as_slice(), |value| value);
            } else {
                for (place, value) in places.iter().zip(lanes.iter()) {
                    if let Some(slot) = column.get_mut(*place) {
                        *slot = *value;
                    }
                }
            }
        }
        let bad = block
            .status
            .iter()
            .take(places.len())
            .any(|status| *status != 0);
        for (lane, place) in places.iter().enumerate().filter(|_| bad) {
            if block.status[lane] != 0 {
                for column in &mut self.out.columns {
                    if let Some(slot) = column.get_mut(*place) {
                        *slot = f64::NAN;
                    }
                }
            }
        }
        let out = &mut self.out;
        if let Some(run) = run
            && let (Some(status), Some(binding), Some(held_by), Some(warnings)) = (
                out.status.get_mut(run.clone()),
                out.binding.get_mut(run.clone()),
                out.held_by.get_mut(run.clone()),
                out.warnings.get_mut(run),
            )
        {
            copy(status, &block.status, |status| status);
            copy(binding, &block.verdict.binding, |number| number as u8);
            copy(held_by, &block.candidate.held_by, |number| number as u8);
            copy(warnings, &block.doubts, |bits| bits as u8);
            return;
        }
        for (lane, place) in places.iter().enumerate() {
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

/// Copies as many values as there are slots.
#[inline(always)]
fn copy<A: Copy, B>(slots: &mut [B], values: &[A], convert: impl Fn(A) -> B) {
    for (slot, value) in slots.iter_mut().zip(values) {
        *slot = convert(*value);
    }
}

/// The places as a range, where they follow one another.
#[inline(always)]
fn run_of(places: &[usize]) -> Option<std::ops::Range<usize>> {
    let (first, last) = (*places.first()?, *places.last()?);
    (last - first + 1 == places.len()).then_some(first..last + 1)
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
    /// The row is an error, that rests on a limit or on none.
    fn refuse(&mut self, lane: usize, code: Code, limit: f64) {
        self.status[lane] = code.number();
        self.verdict.binding[lane] = limit;
        self.candidate.held_by[lane] = 0.0;
        self.doubts[lane] = 0.0;
    }

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
        self.motion.set(lane, outcome.motion);
        self.rotary.set(lane, outcome.rotary);
        self.peak.set(lane, outcome.peak);
        self.finish.set(lane, outcome.finish);
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
