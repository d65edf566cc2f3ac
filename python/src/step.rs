//! Worked steps: a formula with its numbers, as text, LaTeX and HTML.

use crate::array::Data;
use crate::errors::{of_problems, raise};
use crate::formula::{Formula, named, units_given};
use crate::quantity::{Quantity, escaped, scalar, system};
use gullet::formula::{self as core, find};
use gullet::quantity::UnitSystem;
use gullet::{Code, Problem};
use pyo3::exceptions::PyValueError;
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// A formula by its name, worked with its numbers.
///
/// >>> import gullet
/// >>> step = gullet.explain("feed_rate", feed_per_rev="0.2 mm", spindle_speed="800 rpm")
/// >>> print(step)
/// v_f = f n = 0.2 mm x 800 rpm = 160 mm/min
/// >>> "800\\,\\mathrm{rpm}" in step.latex
/// True
#[pyfunction]
#[pyo3(signature = (name, /, **arguments))]
pub fn explain(
    py: Python<'_>,
    name: &str,
    arguments: Option<&Bound<'_, PyDict>>,
) -> PyResult<Step> {
    let formula = named(py, name)?;
    let (values, _) = formula.arguments(py, arguments)?;
    let mut scalars = Vec::new();
    for (data, parameter) in values.iter().zip(formula.formula.parameters) {
        match data {
            Data::Scalar(value) => scalars.push(*value),
            Data::Array(..) => {
                let problem = Problem::new(
                    Code::WrongType,
                    parameter.name,
                    "an array",
                    "one quantity",
                    "a step is worked for one row: take one",
                );
                return Err(of_problems(py, &[problem], None));
            }
        }
    }
    let units = units_given(py, arguments);
    step(py, formula.formula, scalars, units)
}

fn step(
    py: Python<'_>,
    formula: &'static core::Formula,
    values: Vec<f64>,
    units: UnitSystem,
) -> PyResult<Step> {
    let result = formula
        .call_in(&values, units)
        .map_err(|error| raise(py, &error))?;
    Ok(Step {
        step: core::Step::new(formula, &values, result),
    })
}

#[pyfunction]
pub fn _step(py: Python<'_>, name: &str, values: Vec<f64>) -> PyResult<Step> {
    let formula = find(name).map_err(|error| raise(py, &error))?;
    if values.len() != formula.parameters.len() {
        return Err(PyValueError::new_err("no pickled Step"));
    }
    step(py, formula, values, UnitSystem::Metric)
}

/// A worked step: a formula with its numbers; see ``gullet.explain``.
///
/// >>> import gullet
/// >>> step = gullet.explain("feed_rate", feed_per_rev="0.2 mm", spindle_speed="800 rpm")
/// >>> step.result, step.formula.name
/// (Quantity('160 mm/min'), 'feed_rate')
#[pyclass(frozen, module = "gullet", name = "Step")]
pub struct Step {
    pub step: core::Step,
}

#[pymethods]
impl Step {
    /// The formula.
    #[getter]
    fn formula(&self, py: Python<'_>) -> Formula {
        Formula::new(py, self.step.formula)
    }

    /// Its arguments by name.
    #[getter]
    fn arguments<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let dict = PyDict::new(py);
        for (parameter, si) in self
            .step
            .formula
            .parameters
            .iter()
            .zip(&self.step.arguments)
        {
            dict.set_item(parameter.name, scalar(parameter.kind, *si))?;
        }
        Ok(dict)
    }

    /// What it gives.
    #[getter]
    fn result(&self) -> Quantity {
        scalar(self.step.formula.result, self.step.result)
    }

    /// The step as text, in the units that are printed in.
    #[getter]
    fn text(&self, py: Python<'_>) -> PyResult<String> {
        Ok(self.step.text(system(py)?))
    }

    /// The step in LaTeX.
    #[getter]
    fn latex(&self, py: Python<'_>) -> PyResult<String> {
        Ok(self.step.latex(system(py)?))
    }

    /// Where the equation comes from.
    #[getter]
    fn source(&self) -> &'static str {
        self.step.formula.source
    }

    fn __str__(&self, py: Python<'_>) -> PyResult<String> {
        self.text(py)
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        Ok(format!("<Step {}>", self.text(py)?))
    }

    fn __eq__(&self, other: &Step) -> bool {
        let bits = |step: &core::Step| -> Vec<u64> {
            step.arguments.iter().map(|value| value.to_bits()).collect()
        };
        self.step.formula.name == other.step.formula.name && bits(&self.step) == bits(&other.step)
    }

    fn __hash__(&self) -> u64 {
        self.step.result.to_bits()
    }

    fn __reduce__(&self, py: Python<'_>) -> PyResult<(Py<PyAny>, (&'static str, Vec<f64>))> {
        let make = py.import("gullet._gullet")?.getattr("_step")?.unbind();
        Ok((make, (self.step.formula.name, self.step.arguments.clone())))
    }

    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        Ok(format!(
            "<div>$${}$$<small>{} Source: {}</small></div>",
            escaped(&self.latex(py)?),
            escaped(self.step.formula.meaning),
            escaped(self.step.formula.source)
        ))
    }

    fn _repr_latex_(&self, py: Python<'_>) -> PyResult<String> {
        Ok(format!("$${}$$", self.latex(py)?))
    }
}
