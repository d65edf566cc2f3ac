//! The kernel as a shared library, for `run.py` to call on the arrays of all sides.
#![allow(missing_docs, unsafe_code)]

use core::ffi::c_char;
use gullet::formula::Column;
use gullet::study::{
    Base, Execution, Input, InstructionSet, MillingStudy, Results, Rows, SideMilling,
    SideMillingResults, side_milling,
};
use gullet::table::Library;
use std::sync::{Mutex, OnceLock, PoisonError};

#[path = "../full_study.rs"]
mod full_study;

/// Computes `rows` rows; `set` counts the available instruction sets, the widest being the last.
///
/// Returns 0, or 1 where the sets or the threads are not to be had.
///
/// # Safety
/// `arguments` points to 8 columns and `results` to 9, each of `rows` doubles, `status` to `rows`
/// integers; none of the results overlaps another column.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn side_by_side(
    rows: usize,
    arguments: *const *const f64,
    results: *const *mut f64,
    status: *mut i32,
    threads: usize,
    set: usize,
) -> i32 {
    let Ok(execution) = Execution::default().with_threads(threads) else {
        return 1;
    };
    let Some(set) = InstructionSet::available().get(set).copied() else {
        return 1;
    };
    // SAFETY: as the caller promises.
    let argument = |index: usize| unsafe {
        Column::Values(std::slice::from_raw_parts(*arguments.add(index), rows))
    };
    // SAFETY: as the caller promises.
    let result =
        |index: usize| unsafe { std::slice::from_raw_parts_mut(*results.add(index), rows) };
    let arguments = SideMilling {
        diameter: argument(0),
        teeth: argument(1),
        cutting_speed: argument(2),
        max_chip_thickness: argument(3),
        axial_depth: argument(4),
        radial_depth: argument(5),
        kc11: argument(6),
        chip_exponent: argument(7),
        lowest_speed: Column::Constant(1.0),
        highest_speed: Column::Constant(300.0),
        efficiency: Column::Constant(0.8),
    };
    let results = SideMillingResults {
        spindle_speed: result(0),
        cutting_speed: result(1),
        feed_per_tooth: result(2),
        mean_chip_thickness: result(3),
        table_feed: result(4),
        removal_rate: result(5),
        specific_cutting_force: result(6),
        motor_power: result(7),
        torque: result(8),
        // SAFETY: as the caller promises.
        status: unsafe { std::slice::from_raw_parts_mut(status, rows) },
    };
    i32::from(side_milling(&arguments, results, execution.with_instruction_set(set)).is_err())
}

/// Rows that the full study computes at a time, into memory that is used again.
const BATCH: usize = 32 * 1024;

/// A study over one job, with room for the results of a batch.
struct Full {
    study: MillingStudy<'static>,
    wanted: Vec<usize>,
    results: Mutex<Results>,
}

fn full() -> Option<&'static Full> {
    static FULL: OnceLock<Option<Full>> = OnceLock::new();
    FULL.get_or_init(|| {
        let library = Library::builtin();
        let job = full_study::job(library).ok()?;
        Some(Full {
            study: MillingStudy::new(library, Base::of_job(&job)),
            wanted: full_study::wanted()?,
            results: Mutex::default(),
        })
    })
    .as_ref()
}

/// Computes the full study of a job over `rows` rows, batch after batch; how many rows were cuts, or -1
/// where it cannot be done.
///
/// # Safety
/// `arguments` points to 3 columns, each of `rows` doubles: axial depth, radial depth and length of the
/// cut.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn full_study(
    rows: usize,
    arguments: *const *const f64,
    threads: usize,
    set: usize,
) -> i64 {
    let (Some(full), Ok(execution), Some(set)) = (
        full(),
        Execution::default().with_threads(threads),
        InstructionSet::available().get(set).copied(),
    ) else {
        return -1;
    };
    let execution = execution.with_instruction_set(set);
    let mut results = full.results.lock().unwrap_or_else(PoisonError::into_inner);
    let mut good = 0;
    for start in (0..rows).step_by(BATCH) {
        let count = BATCH.min(rows - start);
        // SAFETY: as the caller promises.
        let argument = |index: usize| unsafe {
            Column::Values(std::slice::from_raw_parts(
                (*arguments.add(index)).add(start),
                count,
            ))
        };
        let rows = Rows {
            count,
            numbers: vec![
                (Input::AxialDepth, argument(0)),
                (Input::RadialDepth, argument(1)),
                (Input::CutLength, argument(2)),
            ],
            ..Rows::default()
        };
        let done = full
            .study
            .run_into(&rows, &full.wanted, execution, &mut results);
        if done.is_err() {
            return -1;
        }
        good += results.status.iter().filter(|status| **status == 0).count() as i64;
    }
    good
}

/// Name of an available instruction set, the narrowest first; null past the last.
#[unsafe(no_mangle)]
pub extern "C" fn instruction_set(index: usize) -> *const c_char {
    let name = match InstructionSet::available().get(index) {
        Some(InstructionSet::Baseline) => c"baseline",
        Some(InstructionSet::Avx2) => c"AVX2",
        Some(InstructionSet::Avx512) => c"AVX-512",
        _ => return std::ptr::null(),
    };
    name.as_ptr()
}
