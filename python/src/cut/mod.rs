//! The cuts a set-up makes.

pub mod records;
mod setup;

pub use records::record_fields;
pub use setup::{_cut, Setup, one};

use crate::errors::raise;
use crate::job::JobData;
use crate::quantity::{Quantity, system};
use gullet::operation::{self as core, CutNumbers, Lowering, Pass};
use gullet::plan::cut_json;
use gullet::quantity::{Kind, UnitSystem, format};
use pyo3::prelude::*;
use pyo3::types::PyDict;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::{Arc, OnceLock};

/// Where a cut came from, so that a pickle can make it again, bit for bit.
enum Origin {
    Milled(Py<Setup>, UnitSystem, bool),
    Planned(Arc<JobData>, usize),
}

/// A pass computed: what to set, what follows, every limit, and how it was worked out.
///
/// >>> import gullet
/// >>> setup = gullet.setup(
/// ...     material="6061",
/// ...     blank={"length": "3 in", "width": "2 in", "height": "1 in"},
/// ...     cutter=gullet.Cutter(form="square", material="HSS", diameter="1/2 in", teeth=2,
/// ...                          flute_length="1 in", stick_out="1.5 in"),
/// ...     machine="manual-knee-mill",
/// ...     hold={"clamping_force": "10 kN", "grip_depth": "0.5 in"},
/// ... )
/// >>> cut = setup.mill(operation="side-milling", axial_depth="0.4 in", radial_depth="0.03 in",
/// ...                  warn_of_doubts=False)
/// >>> cut.ledger.binding.name, len(cut.ledger) > 10
/// ('handwheel_pace', True)
#[pyclass(frozen, module = "gullet", name = "Cut")]
pub struct Cut {
    numbers: CutNumbers,
    /// The same cut with its words, made when they are asked for.
    words: OnceLock<core::Cut>,
    origin: Origin,
}

fn lowering(lower: bool) -> Lowering {
    if lower {
        Lowering::Allowed
    } else {
        Lowering::NotForLoads
    }
}

impl Cut {
    fn milled(
        setup: &Bound<'_, Setup>,
        pass: &Pass,
        units: UnitSystem,
        lower: bool,
    ) -> PyResult<Cut> {
        let numbers = setup.get().milling(units).numbers(pass, lowering(lower));
        Ok(Cut {
            numbers: numbers.map_err(|error| raise(setup.py(), &error))?,
            words: OnceLock::new(),
            origin: Origin::Milled(setup.clone().unbind(), units, lower),
        })
    }

    fn words(&self, py: Python<'_>) -> PyResult<&core::Cut> {
        if let (None, Origin::Milled(setup, units, lower)) = (self.words.get(), &self.origin) {
            let milling = setup.get().milling(*units);
            let cut = milling.cut(&self.numbers.pass, lowering(*lower));
            // Another thread may have been quicker: it made the same.
            let _ = self.words.set(cut.map_err(|error| raise(py, &error))?);
        }
        let missing = || pyo3::exceptions::PyRuntimeError::new_err("a cut without its words");
        self.words.get().ok_or_else(missing)
    }

    fn doubts(&self, py: Python<'_>) -> PyResult<Vec<String>> {
        if self.numbers.warnings.bits() == 0 {
            return Ok(Vec::new());
        }
        let words = self.words(py)?;
        Ok(words.warnings.iter().map(|w| w.text.clone()).collect())
    }

    pub fn planned(cut: core::Cut, job: Arc<JobData>, index: usize) -> Cut {
        Cut {
            numbers: cut.numbers(),
            words: OnceLock::from(cut),
            origin: Origin::Planned(job, index),
        }
    }

    fn bits(&self) -> Vec<Option<u64>> {
        let settings = self.numbers.settings.fields();
        let consequences = self.numbers.consequences.fields();
        settings
            .iter()
            .chain(&consequences)
            .map(|field| field.value.map(f64::to_bits))
            .collect()
    }
}

/// A record of the package made from plain values.
pub fn made<'py>(
    py: Python<'py>,
    name: &str,
    values: impl pyo3::call::PyCallArgs<'py>,
) -> PyResult<Bound<'py, PyAny>> {
    py.import("gullet._records")?.getattr(name)?.call1(values)
}

#[pymethods]
impl Cut {
    /// The pass as it was asked for.
    #[getter]
    fn pass_<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_pass", (records::pass(&self.numbers.pass),))
    }

    /// What a person sets on the machine.
    #[getter]
    fn settings<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(
            py,
            "_settings",
            (records::values(&self.numbers.settings.fields()),),
        )
    }

    /// What follows from the settings.
    #[getter]
    fn consequences<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(
            py,
            "_consequences",
            (records::values(&self.numbers.consequences.fields()),),
        )
    }

    /// Every limit that was looked at.
    #[getter]
    fn ledger<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_limits", (records::limits(&self.words(py)?.ledger),))
    }

    /// What was lowered because of a limit.
    #[getter]
    fn adjustments<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(
            py,
            "_adjustments",
            (records::adjustments(&self.words(py)?.adjustments),),
        )
    }

    /// Values that came from tables, model or practice.
    #[getter]
    fn data<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_data", (records::data(&self.words(py)?.data),))
    }

    /// Doubts about the result.
    #[getter]
    fn warnings<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(
            py,
            "_warnings",
            (records::warnings(&self.words(py)?.warnings),),
        )
    }

    /// Low, start and high of what rests on ranges of tables.
    #[getter]
    fn spread<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_spread", (records::spread(&self.numbers.spread),))
    }

    /// What can hurt.
    #[getter]
    fn cautions(&self, py: Python<'_>) -> PyResult<Vec<&'static str>> {
        Ok(self.words(py)?.cautions.clone())
    }

    /// The chain of formulas and choices, in order.
    #[getter]
    fn steps<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_steps", (records::steps(py, &self.words(py)?.steps)?,))
    }

    /// The cut as JSON.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        Ok(cut_json(self.words(py)?, system(py)?).to_string())
    }

    fn __eq__(&self, other: &Cut) -> bool {
        self.numbers == other.numbers
    }

    fn __hash__(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        self.bits().hash(&mut hasher);
        hasher.finish()
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        let system = system(py)?;
        let settings = &self.numbers.settings;
        Ok(format!(
            "<Cut {} {}: {}, {}, table feed {}; power {}>",
            self.numbers.pass.operation.name(),
            self.numbers.pass.kind.name(),
            format(Kind::RotationalSpeed, settings.spindle_speed.value, system),
            format(Kind::Length, settings.feed_per_tooth.value, system) + " a tooth",
            format(Kind::Velocity, settings.table_feed.value, system),
            format(
                Kind::Power,
                self.numbers.consequences.cutting_power.value,
                system
            ),
        ))
    }

    fn _repr_html_<'py>(slf: &Bound<'py, Cut>) -> PyResult<Bound<'py, PyAny>> {
        made(slf.py(), "_cut_page", (slf,))
    }

    fn __reduce__<'py>(
        &self,
        py: Python<'py>,
    ) -> PyResult<(Bound<'py, PyAny>, Bound<'py, pyo3::types::PyTuple>)> {
        let own = py.import("gullet._gullet")?;
        match &self.origin {
            Origin::Milled(setup, units, lower) => {
                let pass = &self.numbers.pass;
                let keys = PyDict::new(py);
                keys.set_item("operation", pass.operation.name())?;
                keys.set_item("kind", pass.kind.name())?;
                keys.set_item("direction", pass.direction.name())?;
                keys.set_item("lower_loads", lower)?;
                for (name, value) in records::pass(&self.numbers.pass).3 {
                    let units = Some(*units);
                    keys.set_item(name, value.map(|value| Quantity { units, ..value }))?;
                }
                let arguments = (setup.clone_ref(py), keys).into_pyobject(py)?;
                Ok((own.getattr("_cut")?, arguments))
            }
            Origin::Planned(job, index) => {
                let arguments = (job.to_py(), index).into_pyobject(py)?;
                Ok((own.getattr("_planned_cut")?, arguments))
            }
        }
    }
}
