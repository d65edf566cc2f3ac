//! Studies over tables: Arrow in, Arrow out.

use crate::arrow::{Table, system_named, taken};
use crate::errors::Fault;
use crate::job::Job;
use crate::model::{Library, Tables};
use crate::quantity::{Quantity, scalar};
use gullet::operation::LimitName;
use gullet::quantity::Kind;
use gullet::study::{Base, Execution};
use gullet::{Code, Problem};
use gullet_table::{Columns, StudyOptions, StudyPlan, Summary, TextNumbers};
use pyo3::prelude::*;

/// Rows after which an interrupt is looked for.
const ROWS: usize = 64 * 1024;

/// Rows by the names of limits.
type Counts = Vec<(&'static str, u64)>;

/// The totals, as `gullet._study` names them.
type Totals = (
    u64,
    u64,
    Counts,
    Quantity,
    f64,
    Option<f64>,
    Counts,
    Counts,
    Counts,
);

/// Cells that mean nothing: row, code, column, and what would do.
type Told = Vec<(usize, &'static str, String, String)>;

/// Cells of which a study tells.
const MOST_TOLD: usize = 100;

/// A study of the rows of a table: the table with its results, totals, assumptions, and cells that
/// mean nothing.
#[pyfunction]
#[pyo3(signature = (rows, constants, job, library, columns, units, pass_through, threads))]
#[allow(clippy::too_many_arguments)]
pub fn _study(
    rows: &Bound<'_, PyAny>,
    constants: Vec<(String, String)>,
    job: Option<&Bound<'_, Job>>,
    library: Option<&Bound<'_, Library>>,
    columns: Option<Vec<String>>,
    units: Option<&str>,
    pass_through: Vec<String>,
    threads: Option<usize>,
) -> PyResult<(Table, Totals, Vec<String>, Told)> {
    let py = rows.py();
    let work = || -> Result<_, Fault> {
        let source = match rows.cast::<Table>() {
            Ok(table) => Table {
                schema: table.get().schema.clone(),
                batches: table.get().batches.clone(),
            },
            Err(_) => taken(rows)?.ok_or_else(no_table)?,
        };
        let options = StudyOptions {
            units: system_named(py, units)?,
            columns: match columns.as_deref() {
                None => Columns::Usual,
                Some([one]) if one == "all" => Columns::All,
                Some(names) => Columns::Named(names.to_vec()),
            },
            text_numbers: TextNumbers::Refused,
            pass_through,
        };
        let execution = match threads {
            Some(threads) => Execution::default().with_threads(threads)?,
            None => Execution::default(),
        };
        let tables = Tables::of(library);
        let base = job.map(|job| Base::of_job(&job.get().data.job));
        let plan =
            py.detach(|| StudyPlan::new(&source.schema, &constants, base, tables.get(), &options))?;
        let mut summary = Summary::default();
        let mut batches = Vec::new();
        let mut told = Vec::new();
        let mut first = 0;
        for batch in &source.batches {
            for start in (0..batch.num_rows()).step_by(ROWS) {
                let part = batch.slice(start, ROWS.min(batch.num_rows() - start));
                let answer = py.detach(|| plan.run(&part, &[], execution))?;
                py.check_signals()?;
                summary.add(&answer.summary);
                batches.push(answer.batch);
                let left = MOST_TOLD.saturating_sub(told.len());
                told.extend(answer.problems.into_iter().take(left).map(|problem| {
                    let text = problem.problem.to_string();
                    let row = first + problem.row;
                    (
                        row,
                        problem.problem.code.name(),
                        problem.problem.parameter,
                        text,
                    )
                }));
                first += part.num_rows();
            }
        }
        let table = Table {
            schema: plan.schema(),
            batches,
        };
        Ok((table, totals(&summary), plan.assumptions().to_vec(), told))
    };
    work().map_err(|fault| fault.raise(py))
}

fn totals(summary: &Summary) -> Totals {
    let limits = |counts: Vec<(LimitName, u64)>| -> Counts {
        let named = counts.into_iter().map(|(limit, rows)| (limit.name(), rows));
        named.collect()
    };
    let errors = summary
        .codes()
        .into_iter()
        .map(|(code, rows)| (code.name(), rows));
    (
        summary.rows(),
        summary.ok(),
        errors.collect(),
        scalar(Kind::Time, summary.cutting_time() as f64 / 1e9),
        summary.energy() as f64 / 3.6e12,
        summary.cost().map(|cost| cost as f64 / 1e6),
        limits(summary.binding()),
        limits(summary.held_by()),
        limits(summary.exceeded()),
    )
}

fn no_table() -> Fault {
    Problem::new(
        Code::WrongType,
        "rows",
        "",
        "a table of any library that exports Arrow, or a gullet.Table",
        "make one of columns: gullet.Table({\"radial_depth_mm\": [0.5, 1.0]})",
    )
    .into()
}
