//! Job, pass plan and card.

use crate::cut::{Cut, made};
use crate::errors::raise;
use crate::model::{Library, Tables};
use crate::quantity::{Quantity, escaped, scalar, system};
use gullet::plan::{self as core, PassTime};
use gullet::quantity::{Kind, UnitSystem, format};
use gullet::{Code, Problem};
use pyo3::prelude::*;
use pyo3::types::PyDict;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::Arc;

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
pub struct JobData {
    text: String,
    toml: bool,
    tables: Tables,
    job: core::Job,
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
    data: Arc<JobData>,
}

fn units_name(units: UnitSystem) -> &'static str {
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
    fn plan(&self, py: Python<'_>) -> PyResult<PassPlan> {
        let plan = py
            .detach(|| core::PassPlan::new(&self.data.job, self.data.tables.get()))
            .map_err(|error| raise(py, &error))?;
        Ok(PassPlan {
            plan,
            data: self.data.clone(),
        })
    }

    /// The set-up card.
    fn card(&self, py: Python<'_>) -> PyResult<Card> {
        let card = py
            .detach(|| core::Card::new(self.data.job.clone(), self.data.tables.get()))
            .map_err(|error| raise(py, &error))?;
        Ok(Card {
            card,
            data: self.data.clone(),
        })
    }

    fn __eq__(&self, other: &Job) -> bool {
        self.data.job == other.data.job && self.data.tables.same(&other.data.tables)
    }

    fn __hash__(&self) -> u64 {
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

/// The passes of a job, each with its cut and its time.
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
/// >>> plan = job.plan()
/// >>> sum(planned.depth.to("in") for planned in plan.passes)
/// 0.12
#[pyclass(frozen, module = "gullet", name = "PassPlan")]
pub struct PassPlan {
    plan: core::PassPlan,
    data: Arc<JobData>,
}

type Times = (Quantity, Quantity, Quantity, Quantity);

fn times(time: PassTime) -> Times {
    let q = |si| scalar(Kind::Time, si);
    (
        q(time.cutting.value),
        q(time.returning.value),
        q(time.handling.value),
        q(time.total().value),
    )
}

type PassRow = (usize, u64, Quantity, u64, i64, Quantity, Py<Cut>, Times);

#[pymethods]
impl PassPlan {
    /// The job it belongs to.
    #[getter]
    fn job(&self) -> Job {
        self.data.to_py()
    }

    /// One step of the machine's readout.
    #[getter]
    fn resolution(&self) -> Quantity {
        scalar(Kind::Length, self.plan.resolution.value)
    }

    /// What is to be removed.
    #[getter]
    fn stock(&self) -> Quantity {
        scalar(Kind::Length, self.plan.stock.value)
    }

    /// That in steps of the readout.
    #[getter]
    fn stock_counts(&self) -> u64 {
        self.plan.total
    }

    /// Largest depth of a roughing pass, and the limit that sets it.
    #[getter]
    fn largest_roughing(&self) -> (Quantity, String) {
        let (depth, limit) = &self.plan.largest_roughing;
        (scalar(Kind::Length, depth.value), limit.clone())
    }

    /// Height of the parallel and grip it leaves; none where none fits.
    #[getter]
    fn parallel(&self) -> Option<(Quantity, Quantity)> {
        let length = |value: f64| scalar(Kind::Length, value);
        self.plan
            .parallel
            .map(|(height, grip)| (length(height.value), length(grip.value)))
    }

    /// The passes in order.
    #[getter]
    fn passes<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let row = |(index, pass): (usize, &core::PlannedPass)| {
            let cut = Cut::planned(pass.cut.clone(), self.data.clone(), index);
            Ok((
                pass.number,
                pass.counts,
                scalar(Kind::Length, pass.depth.value),
                pass.left,
                pass.readout_counts,
                scalar(Kind::Length, pass.readout.value),
                Py::new(py, cut)?,
                times(pass.time),
            ))
        };
        let rows: PyResult<Vec<PassRow>> = self.plan.passes.iter().enumerate().map(row).collect();
        made(py, "_passes", (rows?,))
    }

    /// Time of all passes in its parts.
    #[getter]
    fn time<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "PassTime", times(self.plan.time()))
    }

    /// Doubts about the plan.
    #[getter]
    fn warnings<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let row = |w: &gullet::operation::Warning| (w.code.name(), w.text.clone());
        let rows: Vec<_> = self.plan.warnings.iter().map(row).collect();
        made(py, "_warnings", (rows,))
    }

    fn __len__(&self) -> usize {
        self.plan.passes.len()
    }

    /// The passes as a table, in the units of the job unless others are asked for.
    #[pyo3(signature = (*, units=None))]
    fn to_table<'py>(
        slf: &Bound<'py, PassPlan>,
        units: Option<&str>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let units = units.unwrap_or_else(|| units_name(slf.get().data.job.units));
        made(slf.py(), "_plan_table", (slf.getattr("passes")?, units))
    }

    fn __arrow_c_schema__<'py>(slf: &Bound<'py, PassPlan>) -> PyResult<Bound<'py, PyAny>> {
        PassPlan::to_table(slf, None)?.call_method0("__arrow_c_schema__")
    }

    #[pyo3(signature = (requested_schema=None))]
    fn __arrow_c_stream__<'py>(
        slf: &Bound<'py, PassPlan>,
        requested_schema: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        PassPlan::to_table(slf, None)?.call_method1("__arrow_c_stream__", (requested_schema,))
    }

    fn __eq__(&self, other: &PassPlan) -> bool {
        self.job().__eq__(&other.job())
    }

    fn __hash__(&self) -> u64 {
        self.job().__hash__()
    }

    fn __repr__(&self) -> String {
        let units = self.data.job.units;
        let depths: Vec<String> = self
            .plan
            .passes
            .iter()
            .map(|pass| format(Kind::Length, pass.depth.value, units))
            .collect();
        format!(
            "<PassPlan of {} passes: {}; {}>",
            depths.len(),
            depths.join(", "),
            format(Kind::Time, self.plan.time().total().value, units)
        )
    }

    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        let units = system(py)?;
        let mut html = String::from(
            "<table><thead><tr><th>pass</th><th>kind</th><th>depth</th><th>stop at</th><th>speed</th><th>feed</th><th>time</th></tr></thead><tbody>",
        );
        for pass in &self.plan.passes {
            let settings = &pass.cut.settings;
            let cells = [
                pass.number.to_string(),
                pass.cut.pass.kind.name().to_owned(),
                format(Kind::Length, pass.depth.value, units),
                format(Kind::Length, pass.readout.value, units),
                format(Kind::RotationalSpeed, settings.spindle_speed.value, units),
                format(Kind::Velocity, settings.table_feed.value, units),
                format(Kind::Time, pass.time.total().value, units),
            ];
            html += "<tr>";
            for cell in cells {
                html += &format!("<td>{}</td>", escaped(&cell));
            }
            html += "</tr>";
        }
        Ok(html + "</tbody></table>")
    }

    fn __reduce__(&self, py: Python<'_>) -> PyResult<(Py<PyAny>, (Job,))> {
        let make = py.import("gullet._gullet")?.getattr("_plan")?.unbind();
        Ok((make, (self.job(),)))
    }
}

/// A set-up card: one page that goes to the machine.
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
/// >>> card = job.card()
/// >>> print(card.text.splitlines()[0])
/// SET-UP CARD  side-milling of EN AW-6061 T6
#[pyclass(frozen, module = "gullet", name = "Card")]
pub struct Card {
    card: core::Card,
    data: Arc<JobData>,
}

#[pymethods]
impl Card {
    /// The job it belongs to.
    #[getter]
    fn job(&self) -> Job {
        self.data.to_py()
    }

    /// The pass plan.
    #[getter]
    fn plan(&self) -> PassPlan {
        PassPlan {
            plan: self.card.plan.clone(),
            data: self.data.clone(),
        }
    }

    /// The card as text.
    #[getter]
    fn text(&self) -> String {
        self.card.text()
    }

    /// The card as one printable page.
    #[getter]
    fn html(&self) -> String {
        self.card.html()
    }

    /// The page with every worked step.
    #[getter]
    fn html_with_steps(&self) -> String {
        self.card.html_with_steps()
    }

    /// Sources with what they stand for.
    #[getter]
    fn sources(&self) -> Vec<(String, String)> {
        self.card.sources.clone()
    }

    /// The card as JSON.
    fn to_json(&self) -> String {
        self.card.json().to_string()
    }

    fn __str__(&self) -> String {
        self.card.text()
    }

    fn __repr__(&self) -> String {
        format!(
            "<Card {}: {} passes>",
            self.card.job.title,
            self.card.plan.passes.len()
        )
    }

    fn _repr_html_(&self) -> String {
        format!("<pre>{}</pre>", escaped(&self.card.text()))
    }

    fn __eq__(&self, other: &Card) -> bool {
        self.job().__eq__(&other.job())
    }

    fn __hash__(&self) -> u64 {
        self.job().__hash__()
    }

    fn __reduce__(&self, py: Python<'_>) -> PyResult<(Py<PyAny>, (Job,))> {
        let make = py.import("gullet._gullet")?.getattr("_card")?.unbind();
        Ok((make, (self.job(),)))
    }
}

#[pyfunction]
pub fn _plan(py: Python<'_>, job: &Bound<'_, Job>) -> PyResult<PassPlan> {
    job.get().plan(py)
}

#[pyfunction]
pub fn _card(py: Python<'_>, job: &Bound<'_, Job>) -> PyResult<Card> {
    job.get().card(py)
}

/// The cut of one pass of a job's plan.
#[pyfunction]
pub fn _job(
    py: Python<'_>,
    text: String,
    toml: bool,
    library: &Bound<'_, Library>,
) -> PyResult<Job> {
    Job::read(py, text, toml, Some(library))
}

#[pyfunction]
pub fn _planned_cut(py: Python<'_>, job: &Bound<'_, Job>, index: usize) -> PyResult<Cut> {
    let plan = job.get().plan(py)?.plan;
    let pass = plan.passes.into_iter().nth(index);
    let pass = pass.ok_or_else(|| pyo3::exceptions::PyIndexError::new_err("no such pass"))?;
    Ok(Cut::planned(pass.cut, job.get().data.clone(), index))
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
