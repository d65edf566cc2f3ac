//! Errors of the core as `GulletError`, doubts as `GulletWarning`.

use gullet::{Code, Error, Problem};
use pyo3::prelude::*;
use pyo3::types::PyTuple;

// Modules are looked up anew each time: one kept here would be that of the first interpreter.
fn module(py: Python<'_>) -> PyResult<Bound<'_, PyModule>> {
    py.import("gullet._errors")
}

/// What stops a call: problems of the core, or an exception of Python such as an interrupt.
pub enum Fault {
    Problems(Vec<Problem>),
    Python(PyErr),
}

impl From<Error> for Fault {
    fn from(error: Error) -> Fault {
        Fault::Problems(error.into_problems())
    }
}

impl From<Problem> for Fault {
    fn from(problem: Problem) -> Fault {
        Fault::Problems(vec![problem])
    }
}

impl From<PyErr> for Fault {
    fn from(error: PyErr) -> Fault {
        Fault::Python(error)
    }
}

impl Fault {
    pub fn raise(self, py: Python<'_>) -> PyErr {
        match self {
            Fault::Problems(problems) => of_problems(py, &problems, None),
            Fault::Python(error) => error,
        }
    }

    /// Keeps problems for one error over all arguments; anything else stops at once.
    pub fn collect(self, within: &str, problems: &mut Vec<Problem>) -> PyResult<()> {
        match self {
            Fault::Problems(found) => {
                problems.extend(found.into_iter().map(|problem| problem.within(within)));
                Ok(())
            }
            Fault::Python(error) => Err(error),
        }
    }
}

/// Bad rows: how many of how many, the first ones, and how many of each code.
pub struct Rows<'a> {
    pub bad: usize,
    pub all: usize,
    pub first: &'a [usize],
    pub counts: Vec<(&'static str, usize)>,
}

impl Rows<'_> {
    fn to_tuple<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        (self.bad, self.all, self.first.to_vec(), self.counts.clone()).into_pyobject(py)
    }
}

pub fn of_problems(py: Python<'_>, problems: &[Problem], rows: Option<&Rows>) -> PyErr {
    let build = || -> PyResult<PyErr> {
        let problems: Vec<_> = problems
            .iter()
            .map(|problem| {
                (
                    problem.code.name(),
                    problem.parameter.as_str(),
                    problem.value.as_str(),
                    problem.admissible.as_str(),
                    problem.remedy.as_str(),
                    problem.to_string(),
                )
            })
            .collect();
        let rows = rows.map(|rows| rows.to_tuple(py)).transpose()?;
        let error = module(py)?.getattr("_error")?.call1((problems, rows))?;
        Ok(PyErr::from_value(error))
    };
    build().unwrap_or_else(|error| error)
}

pub fn raise(py: Python<'_>, error: &Error) -> PyErr {
    of_problems(py, error.problems(), None)
}

/// One warning for all doubts of a call.
pub fn warn(py: Python<'_>, texts: &[String]) -> PyResult<()> {
    if texts.is_empty() {
        return Ok(());
    }
    module(py)?.getattr("_warn")?.call1((texts.join("\n"),))?;
    Ok(())
}

pub fn warn_rows(py: Python<'_>, name: &str, rows: &Rows) -> PyResult<()> {
    module(py)?
        .getattr("_warn_rows")?
        .call1((name, rows.to_tuple(py)?))?;
    Ok(())
}

/// Every code of an error with its number, in order.
///
/// >>> import gullet
/// >>> gullet.codes()[0]
/// ('out_of_range', 10)
#[pyfunction]
pub fn codes() -> Vec<(&'static str, i32)> {
    Code::ALL
        .iter()
        .map(|code| (code.name(), code.number()))
        .collect()
}
