//! The catalogue: every formula as a function of keywords.

use crate::array::{self, CHUNK, Data};
use crate::errors::{Rows, of_problems, raise, warn_rows};
use crate::quantity::{Quantity, escaped, read, scalar, units_of_call};
use gullet::formula::{self as core, Column, catalogue, find};
use gullet::quantity::{UnitSystem, exact_text, format};
use gullet::{Code, Problem};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString, PyTuple};

/// Name of the one argument that belongs to no formula.
const ON_BAD_ROW: &str = "on_bad_row";

/// Most bad rows an error tells of one by one.
const FIRST: usize = 5;

// Each formula has a text of its own: a text of the class would hide it.
#[pyclass(frozen, module = "gullet.formula")]
pub struct Formula {
    pub formula: &'static core::Formula,
    names: Vec<Py<PyString>>,
}

impl Formula {
    pub fn new(py: Python<'_>, formula: &'static core::Formula) -> Formula {
        Formula {
            formula,
            names: formula
                .parameters
                .iter()
                .map(|parameter| PyString::intern(py, parameter.name).unbind())
                .collect(),
        }
    }

    fn default_text(parameter: &core::Parameter) -> Option<String> {
        parameter.default.map(|si| exact_text(parameter.kind, si))
    }

    fn doc(&self) -> String {
        let f = self.formula;
        let mut text = format!(
            "{}\n\n    {}\n\nParameters\n----------\n",
            f.meaning, f.equation
        );
        for p in f.parameters {
            text += &format!("{} : {}", p.name, p.kind.name().replace('_', " "));
            if let Some(default) = Formula::default_text(p) {
                text += &format!(", default {default}");
            }
            text += &format!("\n    {}, {}; {}\n", p.symbol, p.meaning, p.range());
        }
        text += "on_bad_row : \"raise\" or \"nan\"\n    Arrays: an error that counts the bad rows, or nan in them and a warning.\n";
        for condition in f.conditions {
            text += &format!("\n{}\n", condition.text);
        }
        text += &format!(
            "\nReturns\n-------\nQuantity\n    {}, {}\n\nNotes\n-----\n{}\n\nSource: {}\n",
            f.symbol,
            f.result.name().replace('_', " "),
            f.validity,
            f.source
        );
        let result = f.example_arguments().and_then(|values| f.call(&values));
        if let Ok(si) = result {
            let arguments: Vec<String> = f
                .example
                .arguments
                .split(';')
                .filter_map(|part| part.split_once('='))
                .map(|(name, value)| format!("{}={:?}", name.trim(), value.trim()))
                .collect();
            text += &format!(
                "\nExamples\n--------\n>>> import gullet\n>>> print(gullet.formula.{}({}))\n{}\n",
                f.name,
                arguments.join(", "),
                format(f.result, si, UnitSystem::Metric)
            );
        }
        text
    }

    /// The arguments in SI units and the policy for bad rows.
    pub fn arguments(
        &self,
        py: Python<'_>,
        given: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<(Vec<Data>, bool)> {
        let empty = PyDict::new(py);
        let given = given.unwrap_or(&empty);
        let mut used = 0;
        let mut problems = Vec::new();
        let mut values = Vec::with_capacity(self.names.len());
        let mut incomplete = false;
        for (parameter, name) in self.formula.parameters.iter().zip(&self.names) {
            match given.get_item(name.bind(py))? {
                Some(any) => {
                    used += 1;
                    match read(parameter.kind, &any) {
                        Ok(data) => values.push(data),
                        Err(fault) => fault.collect(parameter.name, &mut problems)?,
                    }
                }
                None => match parameter.default {
                    Some(si) => values.push(Data::Scalar(si)),
                    None => incomplete = true,
                },
            }
        }
        let mut nan = false;
        if used < given.len()
            && let Some(policy) = given.get_item(ON_BAD_ROW)?
        {
            used += 1;
            nan = match policy.extract::<String>().as_deref() {
                Ok("raise") => false,
                Ok("nan") => true,
                _ => {
                    problems.push(Problem::new(
                        Code::UnknownName,
                        ON_BAD_ROW,
                        policy.repr()?.to_string(),
                        "raise, nan",
                        "leave it out to raise",
                    ));
                    false
                }
            };
        }
        if used < given.len() || incomplete {
            problems.extend(self.names_at_fault(given, &problems)?);
        }
        if !problems.is_empty() {
            return Err(of_problems(py, &problems, None));
        }
        Ok((values, nan))
    }

    /// Unknown and missing names, told as the core tells them.
    fn names_at_fault(
        &self,
        given: &Bound<'_, PyDict>,
        known: &[Problem],
    ) -> PyResult<Vec<Problem>> {
        let mut pairs = Vec::new();
        for key in given.keys() {
            let name = key.str()?.to_string_lossy().into_owned();
            let is_parameter = self.formula.parameters.iter().any(|p| p.name == name);
            if name != ON_BAD_ROW || is_parameter {
                pairs.push((name, String::new()));
            }
        }
        // Without values every name is judged alone: problems of values have been found before.
        Ok(match self.formula.read_arguments(&pairs) {
            Ok(_) => Vec::new(),
            Err(error) => error
                .into_problems()
                .into_iter()
                .filter(|problem| matches!(problem.code, Code::UnknownName | Code::Missing))
                .filter(|problem| !known.contains(problem))
                .collect(),
        })
    }

    fn call(&self, py: Python<'_>, given: Option<&Bound<'_, PyDict>>) -> PyResult<Quantity> {
        let (values, nan) = self.arguments(py, given)?;
        let mut scalars = [0.0; 16];
        let mut all_scalar = true;
        for (slot, data) in scalars.iter_mut().zip(&values) {
            match data {
                Data::Scalar(value) => *slot = *value,
                Data::Array(..) => all_scalar = false,
            }
        }
        if all_scalar && let Some(scalars) = scalars.get(..values.len()) {
            if let Ok(si) = self.formula.call(scalars) {
                return Ok(scalar(self.formula.result, si));
            }
            // Once more for the error, told in the units given.
            return self
                .formula
                .call_in(scalars, units_given(py, given))
                .map(|si| scalar(self.formula.result, si))
                .map_err(|error| raise(py, &error));
        }
        let all: Vec<&Data> = values.iter().collect();
        let shape = array::common_shape(&all).map_err(|fault| fault.raise(py))?;
        let mut spread = Vec::with_capacity(values.len());
        for data in &values {
            spread.push(data.spread(py, &shape).map_err(|fault| fault.raise(py))?);
        }
        let data = self.rows(py, &spread, &shape, nan, given)?;
        Ok(Quantity::of(self.formula.result, data))
    }

    /// Every row, in chunks without the interpreter, so that other threads and Ctrl-C get a turn.
    fn rows(
        &self,
        py: Python<'_>,
        values: &[Data],
        shape: &[usize],
        nan: bool,
        given: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<Data> {
        let count = array::size(shape)?;
        let mut results = array::reserve(count)?;
        results.resize(count, f64::NAN);
        let mut status = [0; CHUNK];
        let mut bad = 0;
        let mut first: Vec<usize> = Vec::new();
        let mut counts: Vec<(i32, usize)> = Vec::new();
        for start in (0..count).step_by(CHUNK) {
            let end = (start + CHUNK).min(count);
            let columns: Vec<Column> = values
                .iter()
                .map(|data| match data {
                    Data::Scalar(value) => Column::Constant(*value),
                    Data::Array(values, _) => Column::Values(&values[start..end]),
                })
                .collect();
            let (results, status) = (&mut results[start..end], &mut status[..end - start]);
            py.detach(|| self.formula.call_columns(&columns, results, status))
                .map_err(|error| raise(py, &error))?;
            for (row, code) in status.iter().enumerate().filter(|(_, code)| **code != 0) {
                bad += 1;
                if first.len() < FIRST {
                    first.push(start + row);
                }
                match counts.iter_mut().find(|(known, _)| known == code) {
                    Some((_, count)) => *count += 1,
                    None => counts.push((*code, 1)),
                }
            }
            py.check_signals()?;
        }
        if bad > 0 {
            let name = |number: i32| {
                let code = Code::ALL.iter().find(|code| code.number() == number);
                code.map_or("unknown", |code| code.name())
            };
            let rows = Rows {
                bad,
                all: count,
                first: &first,
                counts: counts.iter().map(|(code, n)| (name(*code), *n)).collect(),
            };
            if nan {
                warn_rows(py, self.formula.name, &rows)?;
            } else {
                return Err(of_problems(
                    py,
                    &self.row_problems(values, &first, units_given(py, given)),
                    Some(&rows),
                ));
            }
        }
        Ok(Data::Array(results.into(), shape.to_vec()))
    }

    fn row_problems(&self, values: &[Data], rows: &[usize], units: UnitSystem) -> Vec<Problem> {
        let mut problems = Vec::new();
        for row in rows {
            let arguments: Vec<f64> = values
                .iter()
                .map(|data| match data {
                    Data::Scalar(value) => *value,
                    Data::Array(values, _) => values[*row],
                })
                .collect();
            if let Err(error) = self.formula.call_in(&arguments, units) {
                for mut problem in error.into_problems() {
                    problem.remedy = format!("row {row}: {}", problem.remedy);
                    problems.push(problem);
                }
            }
        }
        problems
    }
}

#[pymethods]
impl Formula {
    #[pyo3(signature = (*positional, **arguments))]
    fn __call__(
        &self,
        py: Python<'_>,
        positional: &Bound<'_, PyTuple>,
        arguments: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<Quantity> {
        if !positional.is_empty() {
            let names: Vec<&str> = self.formula.parameters.iter().map(|p| p.name).collect();
            return Err(PyTypeError::new_err(format!(
                "{} takes its arguments by name: {}",
                self.formula.name,
                names.join(", ")
            )));
        }
        self.call(py, arguments)
    }

    // Makes it a routine for `inspect` and `help`, and a static function in a class.
    fn __get__(
        slf: Py<Formula>,
        _instance: &Bound<'_, PyAny>,
        _owner: &Bound<'_, PyAny>,
    ) -> Py<Formula> {
        slf
    }

    #[getter]
    fn __name__(&self) -> &'static str {
        self.formula.name
    }

    #[getter]
    fn __qualname__(&self) -> &'static str {
        self.formula.name
    }

    #[getter]
    fn __doc__(&self) -> String {
        self.doc()
    }

    #[getter]
    fn __signature__<'py>(slf: &Bound<'py, Formula>) -> PyResult<Bound<'py, PyAny>> {
        slf.py()
            .import("gullet._display")?
            .getattr("signature")?
            .call1((slf,))
    }

    /// Name it is called by.
    #[getter]
    fn name(&self) -> &'static str {
        self.formula.name
    }

    /// Topic it stands under.
    #[getter]
    fn topic(&self) -> &'static str {
        self.formula.topic
    }

    /// Symbol of its result.
    #[getter]
    fn symbol(&self) -> &'static str {
        self.formula.symbol
    }

    /// What it gives.
    #[getter]
    fn meaning(&self) -> &'static str {
        self.formula.meaning
    }

    /// Equation as text.
    #[getter]
    fn equation(&self) -> &'static str {
        self.formula.equation
    }

    /// Equation in LaTeX.
    #[getter]
    fn latex(&self) -> &'static str {
        self.formula.latex
    }

    /// Assumptions and range.
    #[getter]
    fn validity(&self) -> &'static str {
        self.formula.validity
    }

    /// Where the equation comes from.
    #[getter]
    fn source(&self) -> &'static str {
        self.formula.source
    }

    /// Kind of its result.
    #[getter]
    fn result(&self) -> &'static str {
        self.formula.result.name()
    }

    /// Worked example: arguments, result as printed, tolerance, source.
    #[getter]
    fn example(&self) -> (&'static str, &'static str, f64, &'static str) {
        let example = &self.formula.example;
        (
            example.arguments,
            example.expected,
            example.relative_tolerance,
            example.source,
        )
    }

    /// Its arguments, each with symbol, kind, meaning and admissible range.
    #[getter]
    fn parameters<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let rows: Vec<_> = self
            .formula
            .parameters
            .iter()
            .map(|p| {
                (
                    p.name,
                    p.symbol,
                    p.kind.name(),
                    p.meaning,
                    p.range(),
                    Formula::default_text(p),
                )
            })
            .collect();
        py.import("gullet._records")?
            .getattr("_parameters")?
            .call1((rows,))
    }

    fn __repr__(&self) -> String {
        format!("<formula {}: {}>", self.formula.name, self.formula.equation)
    }

    fn __reduce__(&self, py: Python<'_>) -> PyResult<(Py<PyAny>, (Py<PyAny>, &'static str))> {
        let find = py.import("gullet._gullet")?.getattr("formulas")?.unbind();
        let restore = py.import("gullet._records")?.getattr("_formula")?.unbind();
        Ok((restore, (find, self.formula.name)))
    }

    fn _repr_html_(&self) -> String {
        format!(
            "<div><b>{}</b> {}<br>$${}$$</div>",
            escaped(self.formula.name),
            escaped(self.formula.meaning),
            escaped(self.formula.latex)
        )
    }

    fn _repr_latex_(&self) -> String {
        format!("$${}$$", self.formula.latex)
    }
}

pub fn units_given(py: Python<'_>, given: Option<&Bound<'_, PyDict>>) -> UnitSystem {
    let values = given.map(|given| given.iter().map(|(_, value)| value));
    units_of_call(py, values.into_iter().flatten())
}

/// Every formula, by topic.
///
/// >>> import gullet
/// >>> [formula.name for formula in gullet.formulas()][:2]
/// ['spindle_speed', 'cutting_speed']
#[pyfunction]
pub fn formulas(py: Python<'_>) -> Vec<Formula> {
    catalogue()
        .map(|formula| Formula::new(py, formula))
        .collect()
}

pub fn named(py: Python<'_>, name: &str) -> PyResult<Formula> {
    find(name)
        .map(|formula| Formula::new(py, formula))
        .map_err(|error| raise(py, &error))
}

/// A formula by its name.
///
/// >>> import gullet
/// >>> print(gullet.evaluate("spindle_speed", cutting_speed="300 ft/min", diameter="1/2 in"))
/// 2292 rpm
#[pyfunction]
#[pyo3(signature = (name, /, **arguments))]
pub fn evaluate(
    py: Python<'_>,
    name: &str,
    arguments: Option<&Bound<'_, PyDict>>,
) -> PyResult<Quantity> {
    named(py, name)?.call(py, arguments)
}
