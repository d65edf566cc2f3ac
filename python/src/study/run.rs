//! Rows in slices on several threads, in order.

use super::{Plan, Told};
use crate::errors::Fault;
use arrow_array::RecordBatch;
use gullet::study::Execution;
use gullet::{Problem, Result};
use gullet_table::{Answer, StudyPlan, Totals};
use pyo3::prelude::*;
use std::sync::OnceLock;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread;

/// Cuts of a slice: its rows, times their draws.
const CUTS: usize = 8 * 1024;

/// Slices of each thread between two looks for an interrupt: a hundredth of a second.
const SLICES: usize = 2;

/// The cells that mean nothing, as Python tells them.
pub fn told(totals: &Totals) -> Told {
    let cell = |(row, problem): &(u64, Problem)| {
        let (column, text) = (problem.parameter.clone(), problem.to_string());
        (*row, problem.code.name(), column, text)
    };
    totals.told().iter().map(cell).collect()
}

/// Slices that are under way together.
pub fn window(execution: Execution) -> usize {
    SLICES * execution.threads()
}

/// Rows of a slice, where each is drawn so many times.
pub fn slice_rows(draws: usize) -> usize {
    (CUTS / draws.max(1)).max(1)
}

/// A batch in slices of at most so many rows; none of a batch without rows.
pub fn slices(batch: &RecordBatch, most: usize) -> impl Iterator<Item = RecordBatch> {
    let rows = batch.num_rows();
    (0..rows)
        .step_by(most)
        .map(move |start| batch.slice(start, most.min(rows - start)))
}

/// The rows of batches, with looks for an interrupt between slices; `number` is that of the first.
pub fn table(
    py: Python<'_>,
    plan: &Plan,
    batches: &[RecordBatch],
    number: u64,
    totals: &mut Totals,
) -> core::result::Result<Vec<RecordBatch>, Fault> {
    // Of a whole table what is wrong is told before any work.
    for batch in batches {
        plan.plan.check_operations(batch)?;
    }
    let all: Vec<RecordBatch> = batches
        .iter()
        .flat_map(|batch| slices(batch, plan.rows))
        .collect();
    let mut done = Vec::with_capacity(all.len());
    for window in all.chunks(window(plan.execution)) {
        let first = number + totals.rows();
        let answers = py.detach(|| compute(&plan.plan, first, window, plan.execution))?;
        done.extend(answers.into_iter().map(|answer| totals.add(answer)));
        py.check_signals()?;
    }
    Ok(done)
}

/// Computes slices, each on one of the threads; `first` is the number of their first row.
pub fn compute(
    plan: &StudyPlan,
    first: u64,
    slices: &[RecordBatch],
    execution: Execution,
) -> Result<Vec<Answer>> {
    if let [one] = slices {
        return Ok(vec![plan.run_from(first, one, &[], execution)?]);
    }
    let alone = execution.with_threads(1)?;
    let firsts: Vec<u64> = slices
        .iter()
        .scan(first, |next, slice| {
            let this = *next;
            *next += slice.num_rows() as u64;
            Some(this)
        })
        .collect();
    let answers: Vec<OnceLock<Result<Answer>>> = slices.iter().map(|_| OnceLock::new()).collect();
    let next = AtomicUsize::new(0);
    let work = || {
        loop {
            let place = next.fetch_add(1, Ordering::Relaxed);
            let (Some(slice), Some(first), Some(answer)) =
                (slices.get(place), firsts.get(place), answers.get(place))
            else {
                return;
            };
            // Each place is taken once.
            let _ = answer.set(plan.run_from(*first, slice, &[], alone));
        }
    };
    thread::scope(|scope| {
        for _ in 1..execution.threads().min(slices.len()) {
            // A thread that the system refuses is done without.
            let _ = thread::Builder::new().spawn_scoped(scope, work);
        }
        work();
    });
    answers
        .into_iter()
        .filter_map(OnceLock::into_inner)
        .collect()
}
