//! Studies over tables: Arrow in, Arrow out.

mod constants;
mod run;
mod stream;

pub use stream::{Source, Stream};

use crate::arrow::{Table, of_columns, system_named, taken};
use crate::errors::{Fault, of_problems};
use crate::job::Job;
use crate::model::{Library, Part, Tables};
use gullet::operation::LimitName;
use gullet::quantity::UnitSystem;
use gullet::study::{Base, Execution, Spread, Uncertain, Uncertainty};
use gullet::{Code, Error, Problem};
use gullet_table::{Columns, Start, StudyOptions, StudyPlan, Summary, TextNumbers, Totals};
use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;
use pyo3::types::PyDict;
use std::sync::Arc;

/// Rows by the names of limits or codes.
type Counts = Vec<(&'static str, u64)>;

/// The totals, as `gullet._study` names them.
type Sums = (
    u64,
    u64,
    Counts,
    u128,
    u128,
    Option<i128>,
    Counts,
    Counts,
    Counts,
);

/// Cells that mean nothing: row, code, column, and what would do.
type Told = Vec<(u64, &'static str, String, String)>;

/// Most threads that can be asked for.
const MOST_THREADS: usize = 1024;

/// What is drawn: spreads by name, draws, seed, quantiles, number of the first row.
type Drawing = (Vec<(String, String)>, i64, u64, Vec<f64>, i64);

/// What is drawn; problems of spreads stand among the others.
fn uncertainty(
    (spreads, draws, seed, quantiles, first_row): Drawing,
    problems: &mut Vec<Problem>,
) -> Option<Uncertainty> {
    let mut read = Vec::new();
    for (name, text) in &spreads {
        match (Uncertain::named(name), Spread::parse(text)) {
            (Ok(uncertain), Ok(spread)) => read.push((uncertain, spread)),
            (uncertain, spread) => {
                let told = [uncertain.err(), spread.err()];
                problems.extend(told.into_iter().flatten().flat_map(Error::into_problems));
            }
        }
    }
    if first_row < 0 {
        problems.push(Problem::new(
            Code::OutOfRange,
            "first_row",
            first_row.to_string(),
            "at least 0",
            "give the number of the partition's first row among all rows",
        ));
    }
    Some(Uncertainty {
        spreads: read,
        // What is none is told with the other problems of the draws.
        draws: usize::try_from(draws).unwrap_or(0),
        seed,
        quantiles,
        first_row: u64::try_from(first_row).unwrap_or(0),
    })
}

/// A study made ready for rows of one schema.
#[pyclass(frozen, module = "gullet._gullet", name = "_StudyPlan")]
pub struct Plan {
    plan: Arc<StudyPlan<'static>>,
    execution: Execution,
    /// Of a slice.
    rows: usize,
}

/// What the rows are read from: a table, or a stream that is read once. A stream has no length.
#[pyfunction]
#[pyo3(signature = (rows, units=None))]
pub fn _study_source<'py>(
    rows: &Bound<'py, PyAny>,
    units: Option<&str>,
) -> PyResult<Bound<'py, PyAny>> {
    let py = rows.py();
    let open = || -> Result<Bound<'py, PyAny>, Fault> {
        if rows.is_instance_of::<Table>() {
            return Ok(rows.clone());
        }
        if !rows.hasattr("__len__")?
            && let Some(source) = Source::open(rows)?
        {
            return Ok(source.into_bound_py_any(py)?);
        }
        let table = match taken(rows)? {
            Some(table) => table,
            None if rows.is_instance_of::<PyDict>() => {
                // A name that is none is told with the problems of the columns.
                let system = system_named(py, units).unwrap_or(UnitSystem::Metric);
                of_columns(rows, system)?
            }
            None => return Err(no_table()),
        };
        Ok(table.into_bound_py_any(py)?)
    };
    open().map_err(|fault| fault.raise(py))
}

fn no_table() -> Fault {
    Problem::new(
        Code::WrongType,
        "rows",
        "",
        "a table of any library that exports Arrow, or a dictionary of columns",
        "make one of columns: gullet.Table({\"radial_depth_mm\": [0.5, 1.0]})",
    )
    .into()
}

fn execution(threads: Option<i64>) -> Result<Execution, Fault> {
    let Some(wanted) = threads else {
        return Ok(Execution::default());
    };
    match usize::try_from(wanted) {
        Ok(threads @ 1..=MOST_THREADS) => Ok(Execution::default().with_threads(threads)?),
        _ => Err(Problem::new(
            Code::OutOfRange,
            "threads",
            wanted.to_string(),
            format!("1 to {MOST_THREADS}"),
            "give the number of threads that compute, or leave it out to use every processor",
        )
        .into()),
    }
}

/// The value, or its problems among the others and a stand-in.
fn kept<T>(found: Result<T, Fault>, other: T, problems: &mut Vec<Problem>) -> PyResult<T> {
    match found {
        Ok(value) => Ok(value),
        Err(Fault::Problems(found)) => {
            problems.extend(found);
            Ok(other)
        }
        Err(Fault::Python(error)) => Err(error),
    }
}

#[pymethods]
impl Plan {
    /// Every problem of the columns and constants is told at once; `told` names what has problems
    /// that the caller tells.
    #[new]
    #[allow(clippy::too_many_arguments)]
    fn new(
        source: &Bound<'_, PyAny>,
        constants: Vec<(String, Bound<'_, PyAny>)>,
        job: Option<&Bound<'_, Job>>,
        parts: Vec<Bound<'_, Part>>,
        told: Vec<String>,
        library: Option<&Bound<'_, Library>>,
        columns: Vec<String>,
        units: Option<&str>,
        pass_through: Vec<String>,
        threads: Option<i64>,
        dictionaries: bool,
        draws: Option<Drawing>,
    ) -> PyResult<Plan> {
        let py = source.py();
        let schema = match source.cast::<Table>() {
            Ok(table) => table.get().schema.clone(),
            Err(_) => source.cast::<Source>()?.get().schema.clone(),
        };
        let mut problems = Vec::new();
        let found = &mut problems;
        let execution = kept(execution(threads), Execution::default(), found)?;
        let job = job.map(|job| &job.get().data.job);
        let units = match (units, job) {
            (None, Some(job)) => job.units,
            _ => kept(system_named(py, units), UnitSystem::Metric, found)?,
        };
        let mut start = Start {
            base: job.map(Base::of_job),
            parts: parts.iter().map(|part| part.get().part.clone()).collect(),
            told,
        };
        let constants = constants::texts(&constants, &mut start.told, found)?;
        let options = StudyOptions {
            units,
            columns: match columns.as_slice() {
                [one] if one == "usual" => Columns::Usual,
                [one] if one == "all" => Columns::All,
                names => Columns::Named(names.to_vec()),
            },
            text_numbers: TextNumbers::Refused,
            pass_through,
            dictionaries,
            uncertainty: draws.and_then(|draws| uncertainty(draws, found)),
        };
        let draws = options.uncertainty.as_ref().map_or(1, |drawn| drawn.draws);
        let library = Tables::of(library).shared();
        let plan =
            py.detach(|| StudyPlan::starting_from(&schema, &constants, start, library, &options));
        match plan {
            Ok(plan) if problems.is_empty() => Ok(Plan {
                plan: Arc::new(plan),
                execution,
                rows: run::slice_rows(draws),
            }),
            Ok(_) => Err(of_problems(py, &problems, None)),
            Err(error) => {
                problems.extend(error.into_problems());
                Err(of_problems(py, &problems, None))
            }
        }
    }

    /// The rows with their results, totals, and cells that mean nothing; `first` is the number of
    /// the first row, which draws depend on.
    fn run(
        &self,
        py: Python<'_>,
        table: &Bound<'_, Table>,
        first: u64,
    ) -> PyResult<(Table, Sums, Told)> {
        let mut totals = Totals::default();
        let batches = run::table(py, self, &table.get().batches, first, &mut totals)
            .map_err(|fault| fault.raise(py))?;
        let table = Table {
            schema: self.plan.schema(),
            batches,
        };
        Ok((table, sums(totals.summary()), run::told(&totals)))
    }

    /// A stream of the rows with their results.
    fn stream(&self, py: Python<'_>, source: &Bound<'_, Source>) -> PyResult<Stream> {
        let source = source.get().take().map_err(|fault| fault.raise(py))?;
        Ok(Stream::new(source, self))
    }

    /// What was assumed where nothing gives it.
    #[getter]
    fn assumptions(&self) -> Vec<String> {
        self.plan.assumptions().to_vec()
    }
}

fn sums(summary: &Summary) -> Sums {
    let limits = |counts: Vec<(LimitName, u64)>| -> Counts {
        let named = counts.into_iter().map(|(limit, rows)| (limit.name(), rows));
        named.collect()
    };
    let errors = summary.codes().into_iter();
    (
        summary.rows(),
        summary.ok(),
        errors.map(|(code, rows)| (code.name(), rows)).collect(),
        summary.cutting_time(),
        summary.energy(),
        summary.cost(),
        limits(summary.binding()),
        limits(summary.held_by()),
        limits(summary.exceeded()),
    )
}
