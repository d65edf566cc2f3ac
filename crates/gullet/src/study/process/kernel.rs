//! Rows of an operation in blocks, by what they choose.

use super::super::dispatch::{Execution, InstructionSet, Work};
use super::super::group::{Key, Keys, pick_entry};
use super::super::kernel::{Piece, pieces};
use super::super::results::Results;
use super::super::rows::Choice;
use super::block::{Block, compute};
use super::{ProcessRows, ProcessStudy};
use crate::error::Code;
use crate::formula::Column;
use crate::model::Machine;
use crate::operation::lanes::LANES;
use crate::operation::process::ground::Ground;
use crate::operation::process::report::missing_data;
use crate::operation::process::settle::settle_one;
use crate::operation::process::{Operate, request};
use crate::quantity::UnitSystem;
use crate::table::{Grounds, ToolMaterial};
use std::collections::HashMap;
use std::sync::{Arc, Mutex, PoisonError};

/// Runs the rows of a study of one operation.
pub(crate) type ProcessKernel = fn(&ProcessStudy, &ProcessRows, &[usize], Execution, &mut Results);

/// Rows that one thread takes at a time.
const CHUNK: usize = 16 * 1024;

/// A group, or the code of the choice that names nothing.
type Made = Result<Group, Code>;

/// Groups that were made already.
#[derive(Default)]
pub(super) struct Groups(Mutex<HashMap<Key, Arc<Made>>>);

/// What rows that choose alike have in common.
pub(super) struct Group {
    machine: Machine,
    grounds: Arc<Grounds>,
    ground: Ground,
}

impl ProcessStudy<'_> {
    fn group(&self, key: &Key) -> Arc<Made> {
        let lock = || self.groups.0.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(made) = lock().get(key) {
            return made.clone();
        }
        let made = Arc::new(self.make(key));
        lock().entry(*key).or_insert(made).clone()
    }

    fn make(&self, key: &Key) -> Result<Group, Code> {
        let base = self.base();
        let code = |choice: Choice| key.get(choice as usize).copied().unwrap_or(u32::MAX);
        let (_, material) = pick_entry(|place| self.material(place), code(Choice::Material))?;
        let (_, machine) = pick_entry(|place| self.machine(place), code(Choice::Machine))?;
        let (_, practice) = pick_entry(|place| self.practice(place), code(Choice::Practice))?;
        let tool = match code(Choice::CutterMaterial) {
            u32::MAX => base.tool,
            place => *ToolMaterial::ALL
                .get(place as usize)
                .ok_or(Code::UnknownName)?,
        };
        let problems = machine.problems_in(UnitSystem::Metric);
        let problems = problems
            .iter()
            .chain(&practice.problems_in(UnitSystem::Metric))
            .map(|problem| problem.code)
            .next();
        if let Some(code) = problems {
            return Err(code);
        }
        let grounds = request::grounds(&self.library, &material, tool, base.process);
        let ground = Ground::new(&material, &machine, &practice, &grounds);
        Ok(Group {
            machine,
            grounds,
            ground,
        })
    }
}

/// Runs the rows of a study of the operation `P`.
pub(crate) fn process_kernel<P: Operate>(
    study: &ProcessStudy,
    rows: &ProcessRows,
    wanted: &[usize],
    execution: Execution,
    results: &mut Results,
) {
    let keys = Keys::new(&rows.choices);
    let share = rows.count.div_ceil(execution.threads().max(1));
    let chunk = share.clamp(4 * LANES, CHUNK).next_multiple_of(LANES);
    let parts = pieces(results, chunk);
    execution.for_each(rows.count.div_ceil(chunk), parts, |out| Chunk::<P> {
        study,
        rows,
        keys: &keys,
        wanted,
        out,
        process: core::marker::PhantomData,
    });
}

/// A run of rows that one thread computes.
struct Chunk<'a, P> {
    study: &'a ProcessStudy<'a>,
    rows: &'a ProcessRows<'a>,
    keys: &'a Keys<'a>,
    wanted: &'a [usize],
    out: Piece<'a>,
    process: core::marker::PhantomData<P>,
}

impl<P: Operate> Work for Chunk<'_, P> {
    type Output = ();

    // Seventeen operations thrice would be most of the library.
    fn on(self, set: InstructionSet) {
        set.run_narrow(self);
    }

    #[inline(always)]
    fn run(mut self) {
        let mut block = Box::new(Block::<P>::new());
        let mut values = Vec::new();
        for (made, places) in self.groups() {
            let group = match &*made {
                Ok(group) => group,
                Err(code) => {
                    self.refuse(&places, *code);
                    continue;
                }
            };
            block.ground.fill(&group.ground);
            for lanes in places.chunks(LANES) {
                let codes = self.gather(group, lanes, &mut values, &mut block);
                compute(&group.machine, &mut block);
                self.scatter(group, lanes, &codes, &values, &mut block);
            }
        }
    }
}

impl<P: Operate> Chunk<'_, P> {
    // Beside the computing all is compiled once an operation, not once an instruction set.
    /// The rows of the chunk by what they choose, as places in the chunk.
    #[inline(never)]
    fn groups(&mut self) -> Vec<(Arc<Made>, Vec<usize>)> {
        let start = self.out.start;
        let count = self.out.status.len();
        let lacks = |place: usize| {
            self.rows
                .missing
                .and_then(|missing| missing.get(start + place))
                .copied()
                .unwrap_or_default()
        };
        let (missing, needed): (Vec<usize>, Vec<usize>) = (0..count).partition(|row| lacks(*row));
        self.refuse(&missing, Code::Missing);
        if self.keys.uniform() {
            return vec![(self.study.group(&self.keys.of(start)), needed)];
        }
        let mut groups: Vec<(Key, Vec<usize>)> = Vec::new();
        let mut places: HashMap<Key, usize> = HashMap::new();
        for place in needed {
            let key = self.keys.of(start + place);
            let at = *places.entry(key).or_insert_with(|| {
                groups.push((key, Vec::new()));
                groups.len() - 1
            });
            if let Some((_, rows)) = groups.get_mut(at) {
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
            self.out.refuse(*place, code, 0.0);
        }
    }

    /// Lays the columns over the block; the code of each lane whose values are not admissible.
    #[inline(never)]
    fn gather(
        &self,
        group: &Group,
        places: &[usize],
        values: &mut Vec<f64>,
        block: &mut Block<P>,
    ) -> Vec<Option<Code>> {
        let process = P::process();
        let base = &self.study.base().values;
        let width = process.inputs.len();
        values.clear();
        values.reserve(width * LANES);
        for lane in 0..LANES {
            // Lanes beyond the last row repeat it.
            let Some(place) = places.get(lane).or(places.last()) else {
                continue;
            };
            let row = values.len();
            values.extend_from_slice(base);
            for (input, column) in &self.rows.numbers {
                let given = match column {
                    Column::Constant(value) => *value,
                    Column::Values(column) => column
                        .get(self.out.start + place)
                        .copied()
                        .unwrap_or(f64::NAN),
                };
                if let Some(slot) = values.get_mut(row + input) {
                    let default = process
                        .inputs
                        .get(*input)
                        .and_then(|input| input.parameter.default);
                    *slot = if given.is_nan() {
                        default.unwrap_or(f64::NAN)
                    } else {
                        given
                    };
                }
            }
        }
        for place in 0..width {
            if let Some(lanes) = P::input_lanes(&mut block.own, place) {
                for (lane, slot) in lanes.iter_mut().enumerate() {
                    *slot = values
                        .get(lane * width + place)
                        .copied()
                        .unwrap_or(f64::NAN);
                }
            }
        }
        for lane in 0..places.len() {
            let own = P::own_of(&block.own, lane);
            let (diameter, depth) = P::size(&own);
            let mut ground = group.ground;
            ground.read_feed(&group.grounds, diameter.value, depth.value);
            block.ground.set(lane, ground);
        }
        values
            .chunks(width.max(1))
            .take(places.len())
            .map(|row| process.first_fault(row))
            .collect()
    }

    /// Writes what was wanted of each lane, and its status.
    #[inline(never)]
    fn scatter(
        &mut self,
        group: &Group,
        places: &[usize],
        codes: &[Option<Code>],
        values: &[f64],
        block: &mut Block<P>,
    ) {
        let width = P::process().inputs.len();
        let results: Vec<usize> = (0..ProcessStudy::fields(P::process()).len()).collect();
        for (lane, place) in places.iter().enumerate() {
            if let Some(code) = codes.get(lane).copied().flatten() {
                self.out.refuse(*place, code, 0.0);
                continue;
            }
            let sound = results.iter().all(|result| {
                let optional = *result == HANDWHEEL || *result + 10 >= results.len();
                block
                    .lanes(*result)
                    .is_some_and(|lanes| lanes.get(lane).is_some_and(|value| value.is_finite()))
                    || optional
            });
            let exceeded = block.verdict.exceeded[lane] > 0.0;
            if exceeded || !sound || !ends_are_finite(block, lane) {
                let row = values
                    .get(lane * width..(lane + 1) * width)
                    .unwrap_or_default();
                if let Some((code, limit)) = self.code_of(group, row) {
                    self.out.refuse(*place, code, limit);
                    continue;
                }
            }
            for (column, result) in self.out.columns.iter_mut().zip(self.wanted) {
                if let (Some(slot), Some(lanes)) = (column.get_mut(*place), block.lanes(*result)) {
                    *slot = lanes[lane];
                }
            }
            self.out.decide(
                *place,
                block.verdict.binding[lane],
                block.feeding.held_by[lane],
                block.doubts[lane],
            );
        }
    }

    /// The code of a row that the scalar call refuses, and the limit it rests on.
    #[inline(never)]
    fn code_of(&self, group: &Group, values: &[f64]) -> Option<(Code, f64)> {
        let own = P::own(values);
        let (diameter, depth) = P::size(&own);
        let mut ground = group.ground;
        ground.read_feed(&group.grounds, diameter.value, depth.value);
        let settled = settle_one::<P>(&own, &ground, &group.machine);
        if !missing_data::<P>(&group.grounds, &own, &ground, &settled).is_empty() {
            return Some((Code::NoData, 0.0));
        }
        if settled.verdict.exceeded.value > 0.0 {
            return Some((Code::LimitExceeded, settled.verdict.exceeded.value));
        }
        (!settled.is_sound()).then_some((Code::ResultOverflow, 0.0))
    }
}

/// Place of the one setting that good rows may lack.
const HANDWHEEL: usize = 5;

fn ends_are_finite<P: Operate>(block: &Block<P>, lane: usize) -> bool {
    [
        &block.ends.force_high,
        &block.ends.power_high,
        &block.ends.time_low,
        &block.ends.time_high,
        &block.verdict.share,
    ]
    .iter()
    .all(|lanes| lanes[lane].is_finite())
}
