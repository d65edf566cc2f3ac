//! Studies over streams: rows are computed while the stream of results is read.

use super::run;
use super::{Plan, Sums, Told, sums};
use crate::arrow::{Table, no_arrow};
use crate::errors::Fault;
use arrow_array::RecordBatch;
use arrow_schema::{ArrowError, SchemaRef};
use gullet::study::Execution;
use gullet::{Code, Error, Problem, Result};
use gullet_arrow::Incoming;
use gullet_table::{StudyPlan, Totals};
use pyo3::prelude::*;
use pyo3::types::PyCapsule;
use std::collections::VecDeque;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

fn locked<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

fn spent(parameter: &str) -> Fault {
    Problem::new(
        Code::Missing,
        parameter,
        "a stream that was read already",
        "a stream at its start",
        "open it anew, or keep its rows in a table, which can be read as often as you like",
    )
    .into()
}

/// A stream of rows that nobody has read yet.
#[pyclass(frozen, module = "gullet._gullet", name = "_StudySource")]
pub struct Source {
    pub schema: SchemaRef,
    stream: Mutex<Option<Incoming>>,
}

impl Source {
    /// Begins to read; none where the object has no stream.
    pub fn open(rows: &Bound<'_, PyAny>) -> core::result::Result<Option<Source>, Fault> {
        let stream = gullet_arrow::open_stream(rows).map_err(no_arrow)?;
        Ok(stream.map(|stream| Source {
            schema: stream.schema(),
            stream: Mutex::new(Some(stream)),
        }))
    }

    pub fn take(&self) -> core::result::Result<Incoming, Fault> {
        locked(&self.stream).take().ok_or_else(|| spent("rows"))
    }
}

/// Rows that are computed as they are asked for.
struct Running {
    source: Incoming,
    plan: Arc<StudyPlan<'static>>,
    execution: Execution,
    /// Of a slice.
    rows: usize,
    totals: Arc<Mutex<Totals>>,
    /// Read, not computed yet.
    slices: VecDeque<RecordBatch>,
    /// Computed, not asked for yet.
    ready: VecDeque<RecordBatch>,
    /// Of the source: told when all before it is.
    failed: Option<Error>,
}

impl Running {
    /// Reads on until a window is full or the source ends.
    fn fill(&mut self) {
        while self.failed.is_none() && self.slices.len() < run::window(self.execution) {
            match self.source.next() {
                None => return,
                Some(Ok(batch)) => self.slices.extend(run::slices(&batch, self.rows)),
                Some(Err(error)) => self.failed = Some(crate::arrow::broken_table(&error).into()),
            }
        }
    }

    fn compute(&mut self) -> Result<()> {
        let count = self.slices.len().min(run::window(self.execution));
        let window: Vec<RecordBatch> = self.slices.drain(..count).collect();
        let first = locked(&self.totals).rows();
        let answers = run::compute(&self.plan, first, &window, self.execution)?;
        let mut totals = locked(&self.totals);
        let done = answers.into_iter().map(|answer| totals.add(answer));
        self.ready.extend(done);
        Ok(())
    }
}

impl Iterator for Running {
    type Item = Result<RecordBatch>;

    fn next(&mut self) -> Option<Self::Item> {
        if self.ready.is_empty() {
            self.fill();
            if self.slices.is_empty() {
                return self.failed.take().map(Err);
            }
            if let Err(error) = self.compute() {
                return Some(Err(error));
            }
        }
        self.ready.pop_front().map(Ok)
    }
}

/// The results of a study over a stream, read once.
#[pyclass(frozen, module = "gullet._gullet", name = "_StudyStream")]
pub struct Stream {
    plan: Arc<StudyPlan<'static>>,
    running: Mutex<Option<Running>>,
    totals: Arc<Mutex<Totals>>,
}

impl Stream {
    pub fn new(source: Incoming, plan: &Plan) -> Stream {
        let totals = Arc::new(Mutex::new(Totals::default()));
        Stream {
            running: Mutex::new(Some(Running {
                source,
                plan: plan.plan.clone(),
                execution: plan.execution,
                rows: plan.rows,
                totals: totals.clone(),
                slices: VecDeque::new(),
                ready: VecDeque::new(),
                failed: None,
            })),
            plan: plan.plan.clone(),
            totals,
        }
    }
}

#[pymethods]
impl Stream {
    /// The next rows; none at the end.
    fn next(&self, py: Python<'_>) -> PyResult<Option<Table>> {
        let read = || -> core::result::Result<Option<Result<RecordBatch>>, Fault> {
            // Another thread may hold the lock while its producer waits for the interpreter.
            py.detach(|| {
                let mut running = locked(&self.running);
                let running = running.as_mut().ok_or_else(|| spent("stream"))?;
                Ok(running.next())
            })
        };
        let batch = read().map_err(|fault| fault.raise(py))?.transpose();
        let batch = batch.map_err(|error| crate::errors::raise(py, &error))?;
        Ok(batch.map(|batch| Table {
            schema: batch.schema(),
            batches: vec![batch],
        }))
    }

    fn __arrow_c_schema__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyCapsule>> {
        gullet_arrow::schema_capsule(py, &self.plan.schema())
    }

    /// What is left of the stream; reading it needs no interpreter.
    fn __arrow_c_stream__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyCapsule>> {
        let running = py
            .detach(|| locked(&self.running).take())
            .ok_or_else(|| spent("stream").raise(py))?;
        let batches =
            running.map(|batch| batch.map_err(|error| ArrowError::ComputeError(error.to_string())));
        gullet_arrow::lazy_stream_capsule(py, self.plan.schema(), batches)
    }

    /// Totals over the rows read so far, and cells that mean nothing.
    fn totals(&self) -> (Sums, Told) {
        let totals = locked(&self.totals);
        (sums(totals.summary()), run::told(&totals))
    }
}
