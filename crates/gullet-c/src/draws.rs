//! Draws of what is not known exactly, over the rows of a study.

use crate::failure::{Failure, fault};
use crate::generated::status::*;
use crate::generated::studies::INPUTS;
use crate::guard::guard;
use crate::memory::{apart, extent, held, slice, slice_mut};
use crate::names::spelled;
use crate::structs::{Sized32, take};
use crate::study::{
    Read, execution, gullet_study, gullet_study_batch, in_blocks, no_such, status_of,
};
use gullet::study::{Quantiles, Results, Spread, Uncertain, Uncertainty};
use gullet::{Code, Problem};

/// The specific cutting force of every pair.
pub const GULLET_SPREAD_CUTTING_FORCE: i32 = -1;
/// The practice's factor for a worn edge.
pub const GULLET_SPREAD_WEAR_FACTOR: i32 = -2;
/// The feed per tooth that is really fed.
pub const GULLET_SPREAD_FEED: i32 = -3;
/// The spindle speed that is really turned.
pub const GULLET_SPREAD_SPEED: i32 = -4;

/// Every factor between `low` and `high` is as likely as another.
pub const GULLET_SHAPE_UNIFORM: i32 = 1;
/// Likeliest at `mode`, falling straight to `low` and `high`.
pub const GULLET_SHAPE_TRIANGULAR: i32 = 2;
/// The logarithm of the factor is normal about 0 with the standard deviation `sigma`.
pub const GULLET_SHAPE_LOG_NORMAL: i32 = 3;

/// Rows that a thread draws before they are handed over: bounds the memory that a run takes.
const BLOCK: usize = 1 << 10;

/// How a factor on a quantity is spread about 1. Fields that the shape does not have are zero.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_spread {
    /// What is spread: one of GULLET_SPREAD_..., or one of GULLET_INPUT_... that is measured.
    pub quantity: i32,
    /// One of GULLET_SHAPE_...
    pub shape: i32,
    /// Smallest factor.
    pub low: f64,
    /// Likeliest factor.
    pub mode: f64,
    /// Largest factor.
    pub high: f64,
    /// Standard deviation of the factor's logarithm.
    pub sigma: f64,
}

/// What is drawn over the rows of a batch, and where the quantiles go.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_draws {
    /// sizeof(gullet_draws); set by gullet_draws_init().
    pub struct_size: u32,
    /// Draws of every row, from 1 to 1000000.
    pub draws: u32,
    /// The seed.
    pub seed: u64,
    /// Number of the batch's first row among all rows. A draw depends on the seed and the number of
    /// its row alone, so that parts of a table draw as the whole.
    pub first_row: u64,
    /// The spreads, each quantity once.
    pub spreads: *const gullet_spread,
    /// How many spreads there are.
    pub spread_count: usize,
    /// The quantiles that are wanted, from 0 (the smallest draw) to 1 (the largest).
    pub quantiles: *const f64,
    /// How many quantiles there are.
    pub quantile_count: usize,
    /// Room for a number a row for each quantile of each result: those of result r of the batch and
    /// quantile q begin at (r * quantile_count + q) * count. Rows without any keep what stood there.
    pub values_si_out: *mut f64,
    /// A number a row, or NULL: draws that left what can be computed and are not among the
    /// quantiles.
    pub left_out_out: *mut u32,
}

// SAFETY: `repr(C)`, pointers and numbers, the size first.
unsafe impl Sized32 for gullet_draws {
    const NAME: &'static str = "gullet_draws";
    const FIRST: usize = 24 + 6 * size_of::<usize>();
}

impl gullet_spread {
    fn core(&self) -> Result<(Uncertain, Spread), Failure> {
        let input = |number| INPUTS.iter().find(|entry| entry.number == number);
        let name = match self.quantity {
            GULLET_SPREAD_CUTTING_FORCE => "cutting_force",
            GULLET_SPREAD_WEAR_FACTOR => "wear_factor",
            GULLET_SPREAD_FEED => "feed",
            GULLET_SPREAD_SPEED => "speed",
            number => input(number)
                .map(|entry| spelled(entry.name))
                .ok_or_else(|| no_such("spreads.quantity", number))?,
        };
        let (low, mode, high, sigma) = (self.low, self.mode, self.high, self.sigma);
        let (spread, unused) = match self.shape {
            GULLET_SHAPE_UNIFORM => (Spread::Uniform { low, high }, [mode, sigma, 0.0]),
            GULLET_SHAPE_TRIANGULAR => (Spread::Triangular { low, mode, high }, [sigma, 0.0, 0.0]),
            GULLET_SHAPE_LOG_NORMAL => (Spread::LogNormal { sigma }, [low, mode, high]),
            shape => return Err(no_such("spreads.shape", shape)),
        };
        if let Some(value) = unused.into_iter().find(|value| *value != 0.0) {
            let remedy = "set the fields that the shape does not have to zero";
            let code = Code::OutOfRange;
            return Err(Problem::new(code, name, value.to_string(), "0", remedy).into());
        }
        Ok((Uncertain::named(name)?, spread))
    }
}

impl gullet_draws {
    /// # Safety
    /// Spreads and quantiles are NULL, misaligned, or as many as their counts say.
    unsafe fn core(&self) -> Result<Uncertainty, Failure> {
        // SAFETY: the same promise.
        let (spreads, quantiles) = unsafe {
            (
                slice(self.spreads, self.spread_count, "spreads")?,
                slice(self.quantiles, self.quantile_count, "quantiles")?,
            )
        };
        let spreads: Result<Vec<_>, _> = spreads.iter().map(gullet_spread::core).collect();
        Ok(Uncertainty {
            spreads: spreads?,
            draws: self.draws as usize,
            seed: self.seed,
            quantiles: quantiles.to_vec(),
            first_row: self.first_row,
        })
    }

    /// Numbers that the quantiles of so many results take.
    fn room(&self, count: usize, results: usize) -> Result<usize, Failure> {
        let columns = results.checked_mul(self.quantile_count);
        let room = columns.and_then(|columns| columns.checked_mul(count));
        room.ok_or_else(|| {
            fault(
                GULLET_ERROR_TOO_LARGE,
                "values_si_out",
                format!(
                    "{results} results of {} quantiles in {count} rows",
                    self.quantile_count
                ),
                "what fits into the address space",
                "check the counts",
            )
        })
    }
}

/// Takes over the quantiles of the rows from `start` on.
fn write(
    values: &mut [f64],
    left_out: &mut [u32],
    (start, count): (usize, usize),
    results: &Results,
    quantiles: &Quantiles,
) {
    for (column, found) in quantiles.columns.iter().enumerate() {
        let room = values.iter_mut().skip(column * count + start);
        for ((slot, value), code) in room.zip(found).zip(&results.status) {
            if *code == 0 && !value.is_nan() {
                *slot = *value;
            }
        }
    }
    let room = left_out.iter_mut().skip(start);
    for ((slot, value), code) in room.zip(&quantiles.left_out).zip(&results.status) {
        if *code == 0 {
            *slot = *value;
        }
    }
}

/// Computes every row of a batch as gullet_study_run does, and draws what is uncertain: the settings
/// of a row stay as they were found, what follows from them is computed for every draw, and the
/// quantiles of each result are told. No bit depends on the number of threads or on how rows are
/// split into batches. What is written may overlap nothing. Nothing is written where the call fails.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_draw(
    study: *const gullet_study,
    batch: *const gullet_study_batch,
    draws: *const gullet_draws,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (study, batch, draws) = unsafe {
            (
                held(study, "study")?,
                take(batch, "batch")?,
                take(draws, "draws")?,
            )
        };
        let execution = execution(batch.threads)?;
        let count = batch.count;
        // SAFETY: the caller's promise in the header.
        let uncertainty = unsafe { draws.core()? };
        uncertainty.check()?;
        let room = draws.room(count, batch.result_count)?;
        let left_out = match draws.left_out_out.is_null() {
            true => 0,
            false => count,
        };
        let (values_name, left_name) = ("values_si_out", "left_out_out");
        let written = [
            (values_name, extent(draws.values_si_out, room, values_name)?),
            (left_name, extent(draws.left_out_out, left_out, left_name)?),
        ];
        let (spreads, quantiles) = (
            extent(draws.spreads, draws.spread_count, "spreads")?,
            extent(draws.quantiles, draws.quantile_count, "quantiles")?,
        );
        for target in written {
            apart(target, ("spreads", spreads))?;
            apart(target, ("quantiles", quantiles))?;
        }
        // SAFETY: the caller's promise in the header; what is written overlaps nothing, as is checked.
        let ((Read { rows, wanted }, mut targets), values, left_out) = unsafe {
            (
                batch.read(&written)?,
                slice_mut(draws.values_si_out, room, values_name)?,
                slice_mut(draws.left_out_out, left_out, left_name)?,
            )
        };
        let block = BLOCK.saturating_mul(execution.threads());
        let refused = in_blocks(&rows, block, |start, rows| {
            let here = Uncertainty {
                first_row: uncertainty.first_row.wrapping_add(start as u64),
                ..uncertainty.clone()
            };
            let (results, quantiles) =
                study.get().run_uncertain(rows, &wanted, &here, execution)?;
            write(values, left_out, (start, count), &results, &quantiles);
            Ok(targets.write(start, &results))
        })?;
        Ok(status_of(refused))
    })
}
