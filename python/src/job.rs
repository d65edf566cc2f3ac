//! Jobs: the keys of a job file, read and checked.

use crate::errors::raise;
use crate::model::{Library, Tables};
use crate::plan::{Card, PassPlan};
use crate::quantity::escaped;
use gullet::plan as core;
use gullet::quantity::UnitSystem;
use gullet::{Code, Problem};
use pyo3::prelude::*;
use pyo3::types::PyDict;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::Arc;

/// A job with the text it was read from.
pub struct JobData {
    text: String,
    toml: bool,
    tables: Tables,
    pub job: core::Job,
}

impl JobData {
    pub fn to_py(self: &Arc<JobData>) -> Job {
        Job { data: self.clone() }
    }
}

/// A job: the keys of a job file, read and checked.
///
/// >>> import gullet
/// >>> job = gullet.Job(
/// ...     material="6061", machine="manual-knee-mill", operation="side-milling",
/// ...     blank={"length": "3 in", "width": "2 in", "height": "1 in"},
/// ...     cutter={"form": "square", "material": "HSS", "diameter": "1/2 in", "teeth": 2,
/// ...             "flute_length": "1 in", "stick_out": "1.5 in"},
/// ...     hold={"clamping_force": "10 kN", "grip_depth": "0.5 in"},
/// ...     remove="0.12 in", axial_depth="0.4 in",
/// ... )
/// >>> job.operation, job.units
/// ('side-milling', 'metric')
/// >>> gullet.Job.from_json(job.to_json()) == job
/// True
#[pyclass(frozen, module = "gullet", name = "Job")]
pub struct Job {
    pub data: Arc<JobData>,
}

pub fn units_name(units: UnitSystem) -> &'static str {
    match units {
        UnitSystem::Metric => "metric",
        UnitSystem::Inch => "inch",
    }
}

impl Job {
    fn read(
        py: Python<'_>,
        text: String,
        toml: bool,
        library: Option<&Bound<'_, Library>>,
    ) -> PyResult<Job> {
        let tables = Tables::of(library);
        let job = if toml {
            core::Job::from_toml(&text, tables.get())
        } else {
            core::Job::from_json(&text, tables.get())
        };
        let job = job.map_err(|error| raise(py, &error))?;
        Ok(Job {
            data: Arc::new(JobData {
                text,
                toml,
                tables,
                job,
            }),
        })
    }
}

#[pymethods]
impl Job {
    #[new]
    #[pyo3(signature = (*, library=None, **keys))]
    fn new(
        py: Python<'_>,
        library: Option<&Bound<'_, Library>>,
        keys: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<Job> {
        let text = py
            .import("gullet._model")?
            .getattr("_job_text")?
            .call1((keys,))?;
        Job::read(py, text.extract()?, false, library)
    }

    /// Reads a job file in TOML.
    #[staticmethod]
    #[pyo3(signature = (text, library=None))]
    fn from_toml(
        py: Python<'_>,
        text: String,
        library: Option<&Bound<'_, Library>>,
    ) -> PyResult<Job> {
        Job::read(py, text, true, library)
    }

    /// Reads a job file in JSON.
    #[staticmethod]
    #[pyo3(signature = (text, library=None))]
    fn from_json(
        py: Python<'_>,
        text: String,
        library: Option<&Bound<'_, Library>>,
    ) -> PyResult<Job> {
        Job::read(py, text, false, library)
    }

    /// The keys as given, as JSON.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        if !self.data.toml {
            return Ok(self.data.text.clone());
        }
        let value: serde_json::Value = toml::from_str(&self.data.text).map_err(|error| {
            let message = error.to_string();
            raise(
                py,
                &Problem::new(Code::Syntax, "", message, "TOML", "correct the text").into(),
            )
        })?;
        Ok(value.to_string())
    }

    /// Title of the job.
    #[getter]
    fn title(&self) -> &str {
        &self.data.job.title
    }

    /// System its card is printed in.
    #[getter]
    fn units(&self) -> &'static str {
        units_name(self.data.job.units)
    }

    /// What is milled.
    #[getter]
    fn operation(&self) -> &'static str {
        self.data.job.operation.name()
    }

    /// What was left out and assumed.
    #[getter]
    fn assumptions(&self) -> Vec<String> {
        self.data.job.assumptions.clone()
    }

    /// The tables it was read against.
    #[getter]
    fn library(&self) -> Library {
        self.data.tables.to_py()
    }

    /// The pass plan.
    pub fn plan(&self, py: Python<'_>) -> PyResult<PassPlan> {
        let plan = py
            .detach(|| core::PassPlan::new(&self.data.job, self.data.tables.get()))
            .map_err(|error| raise(py, &error))?;
        Ok(PassPlan {
            plan,
            data: self.data.clone(),
        })
    }

    /// The set-up card.
    pub fn card(&self, py: Python<'_>) -> PyResult<Card> {
        let card = py
            .detach(|| core::Card::new(self.data.job.clone(), self.data.tables.get()))
            .map_err(|error| raise(py, &error))?;
        Ok(Card {
            card,
            data: self.data.clone(),
        })
    }

    pub fn __eq__(&self, other: &Job) -> bool {
        self.data.job == other.data.job && self.data.tables.same(&other.data.tables)
    }

    pub fn __hash__(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        self.data.job.title.hash(&mut hasher);
        self.data.job.material.id.hash(&mut hasher);
        hasher.finish()
    }

    fn __reduce__(&self, py: Python<'_>) -> PyResult<(Py<PyAny>, (String, bool, Library))> {
        let make = py.import("gullet._gullet")?.getattr("_job")?.unbind();
        let data = &self.data;
        Ok((make, (data.text.clone(), data.toml, data.tables.to_py())))
    }

    fn __repr__(&self) -> String {
        let job = &self.data.job;
        format!(
            "<Job {}: {} {} with {} on {}>",
            job.title,
            job.operation.name(),
            job.material.name,
            job.cutter.name,
            job.machine.name
        )
    }

    fn _repr_html_(&self) -> String {
        format!("<pre>{}</pre>", escaped(&self.data.text))
    }
}
#[pyfunction]
pub fn _job(
    py: Python<'_>,
    text: String,
    toml: bool,
    library: &Bound<'_, Library>,
) -> PyResult<Job> {
    Job::read(py, text, toml, Some(library))
}

/// The JSON Schema of a job file.
#[pyfunction]
pub fn job_schema() -> String {
    core::job_schema()
}

/// Every key of a job file with its meaning, as Markdown.
#[pyfunction]
pub fn job_reference() -> String {
    core::job_reference()
}
