//! Pass plans and cards.

use crate::cut::{Cut, made};
use crate::job::{Job, JobData, units_name};
use crate::quantity::{Quantity, escaped, scalar, system};
use gullet::plan::{self as core, PassTime};
use gullet::quantity::{Kind, format};
use pyo3::prelude::*;
use std::sync::Arc;

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
    pub plan: core::PassPlan,
    pub data: Arc<JobData>,
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

    /// The plan as JSON: the section ``plan`` of the card.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        let card = self.job().card(py)?.card.json();
        Ok(card
            .get("plan")
            .map_or_else(String::new, ToString::to_string))
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
    pub card: core::Card,
    pub data: Arc<JobData>,
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

#[pyfunction]
pub fn _planned_cut(py: Python<'_>, job: &Bound<'_, Job>, index: usize) -> PyResult<Cut> {
    let plan = job.get().plan(py)?.plan;
    let pass = plan.passes.into_iter().nth(index);
    let pass = pass.ok_or_else(|| pyo3::exceptions::PyIndexError::new_err("no such pass"))?;
    Ok(Cut::planned(pass.cut, job.get().data.clone(), index))
}
