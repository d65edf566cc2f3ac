//! What became of the rows of tables: totals, and what is wrong with single cells.

use crate::failure::{Failure, Kept};
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{Opaque, handle, handle_out, held, out};
use crate::model::release;
use crate::report::gullet_problem;
use crate::structs::{Sized32, room};
use crate::study::no_such;
use gullet::operation::LimitName;
use gullet::{Code, Problem};
use gullet_arrow::RecordBatch;
use gullet_table::{Answer, Totals};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// Computed rows by the limit nearest to its bound.
pub const GULLET_ROWS_BINDING: i32 = 1;
/// Computed rows by the limit that holds the feed below the wanted one.
pub const GULLET_ROWS_HELD_BY: i32 = 2;
/// Rows that a limit made an error, by that limit.
pub const GULLET_ROWS_EXCEEDED: i32 = 3;

/// What became of rows over any number of tables and streams: totals, and cells that mean nothing, such
/// as a material that the tables do not know. Several threads may use it at once; calls that compute
/// into one report take turns.
pub struct gullet_study_report {
    _private: (),
}

impl Opaque for gullet_study_report {
    type Inner = Shared;
}

/// What a report holds; streams keep it too.
#[derive(Clone, Default)]
pub(crate) struct Shared(Arc<Mutex<Report>>);

/// Totals, and the problems among them as C reads them: never taken away, so that texts stay.
#[derive(Default)]
pub(crate) struct Report {
    totals: Totals,
    told: Vec<Kept>,
}

impl Shared {
    pub(crate) fn lock(&self) -> MutexGuard<'_, Report> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Report {
    /// Number of the next row.
    pub(crate) fn rows(&self) -> u64 {
        self.totals.rows()
    }

    pub(crate) fn add(&mut self, answer: Answer) -> RecordBatch {
        let batch = self.totals.add(answer);
        let new = self.totals.told().iter().skip(self.told.len());
        self.told
            .extend(new.map(|(_, problem)| Kept::problem(problem)));
        batch
    }
}

/// Totals over rows. Times, energies and costs are rounded row by row, to a nanosecond, a microjoule
/// and a millionth, and added as whole numbers, so that no order of the rows changes them.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_study_summary {
    /// sizeof(gullet_study_summary); set by gullet_study_summary_init().
    pub struct_size: u32,
    /// 1 where a cost per hour is given, else 0.
    pub cost_known: i32,
    /// Rows there are.
    pub rows: u64,
    /// Rows that were computed.
    pub computed: u64,
    /// Time in the cut over the computed rows: without return, handling and set-up.
    pub cutting_time_s: f64,
    /// Energy of the spindle motor over the computed rows, at full width of cut: without idling, feed
    /// drives and coolant.
    pub energy_j: f64,
    /// Machine and operator for the time in the cut over the computed rows; 0 where it is not known.
    pub cost: f64,
}

// SAFETY: `repr(C)`, numbers, the size first.
unsafe impl Sized32 for gullet_study_summary {
    const NAME: &'static str = "gullet_study_summary";
    const FIRST: usize = 48;
}

/// An empty report, for gullet_table_study_run_with_report and
/// gullet_table_study_stream_with_report. Free it with gullet_study_report_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_report_new(
    report_out: *mut *mut gullet_study_report,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let target = unsafe { handle_out(report_out, "report_out")? };
        target.write(handle(Shared::default()));
        Ok(GULLET_OK)
    })
}

/// Frees a report; NULL is left alone. Streams made with it keep what they need.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_report_free(report: *mut gullet_study_report) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(report) }
}

/// The totals over all rows of a report.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_report_summary(
    report: *const gullet_study_report,
    summary: *mut gullet_study_summary,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (report, target) = unsafe { (held(report, "report")?, room(summary, "summary")?) };
        let report = report.lock();
        let summary = report.totals.summary();
        let cost = summary.cost();
        target.write(gullet_study_summary {
            struct_size: size_of::<gullet_study_summary>() as u32,
            cost_known: i32::from(cost.is_some()),
            rows: summary.rows(),
            computed: summary.ok(),
            cutting_time_s: summary.cutting_time() as f64 / 1e9,
            energy_j: summary.energy() as f64 / 1e6,
            cost: cost.unwrap_or(0) as f64 / 1e6,
        });
        Ok(GULLET_OK)
    })
}

/// How many rows have this status: 0, or that of an error.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_report_rows_of_status(
    report: *const gullet_study_report,
    status: gullet_status,
    rows_out: *mut u64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (report, target) = unsafe { (held(report, "report")?, out(rows_out, "rows_out")?) };
        let report = report.lock();
        let summary = report.totals.summary();
        target.write(if status == GULLET_OK {
            summary.ok()
        } else {
            if !Code::ALL.iter().any(|code| -code.number() == status) {
                return Err(no_such("status", status));
            }
            let codes = summary.codes().into_iter();
            let found = codes.filter(|(code, _)| -code.number() == status);
            found.map(|(_, rows)| rows).sum()
        });
        Ok(GULLET_OK)
    })
}

/// How many rows a limit bears on: `which` is one of GULLET_ROWS_..., `limit` one of
/// GULLET_LIMIT_...
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_report_rows_of_limit(
    report: *const gullet_study_report,
    which: i32,
    limit: i32,
    rows_out: *mut u64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (report, target) = unsafe { (held(report, "report")?, out(rows_out, "rows_out")?) };
        let report = report.lock();
        let summary = report.totals.summary();
        let counts = match which {
            GULLET_ROWS_BINDING => summary.binding(),
            GULLET_ROWS_HELD_BY => summary.held_by(),
            GULLET_ROWS_EXCEEDED => summary.exceeded(),
            _ => return Err(no_such("which", which)),
        };
        let known = u8::try_from(limit).ok().and_then(LimitName::from_number);
        let known = known.ok_or_else(|| no_such("limit", limit))?;
        let found = counts.into_iter().find(|(limit, _)| *limit == known);
        target.write(found.map_or(0, |(_, rows)| rows));
        Ok(GULLET_OK)
    })
}

/// How many cells that mean nothing the report tells of: the first hundred.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_report_problem_count(
    report: *const gullet_study_report,
    count_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (report, target) = unsafe { (held(report, "report")?, out(count_out, "count_out")?) };
        target.write(report.lock().told.len());
        Ok(GULLET_OK)
    })
}

/// A cell that means nothing, from 0: the number of its row over all tables of the report, and what is
/// wrong with it, whose parameter is the name of the column. The texts stay valid until the report is
/// freed.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_report_problem(
    report: *const gullet_study_report,
    index: usize,
    row_out: *mut u64,
    problem: *mut gullet_problem,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (report, row, target) = unsafe {
            (
                held(report, "report")?,
                out(row_out, "row_out")?,
                room(problem, "problem")?,
            )
        };
        let report = report.lock();
        let (Some((number, _)), Some(kept)) =
            (report.totals.told().get(index), report.told.get(index))
        else {
            return Err(no_cell(index, report.told.len()));
        };
        row.write(*number);
        target.write(gullet_problem::of(kept.told()));
        Ok(GULLET_OK)
    })
}

fn no_cell(index: usize, count: usize) -> Failure {
    Problem::new(
        Code::OutOfRange,
        "index",
        index.to_string(),
        format!("below {count}"),
        "ask gullet_study_report_problem_count how many there are",
    )
    .into()
}
