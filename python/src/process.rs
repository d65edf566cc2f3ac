//! Operations that the core describes once: their listing, and cuts of them.

use crate::cut::{made, one, records};
use crate::errors::{Fault, of_problems, raise};
use crate::model::{Library, Part, Tables, choice};
use crate::quantity::{Quantity, scalar, system, text_of, units_of_argument};
use gullet::error::unknown_name;
use gullet::operation::Field;
use gullet::operation::process::{self as core, Bench, Process, ProcessCut, ProcessInput, Request};
use gullet::plan::ProcessCard;
use gullet::quantity::{Kind, UnitSystem, column_unit, format};
use gullet::table::{Library as CoreLibrary, ToolMaterial};
use gullet::{Code, Problem};
use pyo3::IntoPyObjectExt;
use pyo3::exceptions::{PyKeyError, PyValueError};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};
use std::hash::{DefaultHasher, Hash, Hasher};

type InputRow = (
    &'static str,
    &'static str,
    &'static str,
    &'static str,
    Option<String>,
    String,
    &'static str,
    &'static [&'static str],
    bool,
);
type FieldRow = (&'static str, &'static str, &'static str, &'static str, bool);
type ExampleRow = (
    &'static str,
    &'static str,
    &'static str,
    Vec<(String, String)>,
);
type OperationRow = (
    &'static str,
    &'static str,
    &'static str,
    Vec<InputRow>,
    Vec<FieldRow>,
    Vec<&'static str>,
    ExampleRow,
    &'static [&'static str],
);

fn input_row(input: &ProcessInput, units: UnitSystem) -> InputRow {
    let parameter = &input.parameter;
    let (kind, unit) = if input.words.is_empty() {
        let unit = column_unit(parameter.kind, units).symbol;
        (parameter.kind.name(), unit)
    } else {
        ("choice", "")
    };
    (
        parameter.name,
        parameter.symbol,
        kind,
        unit,
        input.default_text(units),
        input.admissible(),
        parameter.meaning,
        input.words,
        input.required(),
    )
}

fn field_row(field: &Field, units: UnitSystem) -> FieldRow {
    let unit = column_unit(field.kind, units).symbol;
    let kind = field.kind.name();
    (field.name, kind, unit, field.meaning, field.optional)
}

fn operation_row(process: &Process, units: UnitSystem) -> gullet::Result<OperationRow> {
    let example = &process.example;
    Ok((
        process.name,
        process.title,
        process.meaning,
        process
            .inputs
            .iter()
            .map(|input| input_row(input, units))
            .collect(),
        process
            .fields()
            .map(|field| field_row(field, units))
            .collect(),
        process.limits.iter().map(|limit| limit.name()).collect(),
        (
            example.material,
            example.tool.name(),
            example.machine,
            gullet::formula::split_arguments(example.inputs)?,
        ),
        process.cautions,
    ))
}

/// Every operation with what it takes and gives; the package names the columns.
#[pyfunction]
pub fn _operations(py: Python<'_>) -> PyResult<Vec<OperationRow>> {
    let units = system(py)?;
    let rows = core::ALL
        .iter()
        .map(|process| operation_row(process, units));
    rows.collect::<gullet::Result<_>>()
        .map_err(|error| raise(py, &error))
}

/// One input as given: a quantity, or the word of a choice; problems are kept.
fn value(
    input: &ProcessInput,
    any: &Bound<'_, PyAny>,
    problems: &mut Vec<Problem>,
) -> PyResult<Option<f64>> {
    let name = input.name();
    if input.words.is_empty() {
        return one(name, input.parameter.kind, Some(any), problems);
    }
    let Ok(text) = any.cast::<PyString>() else {
        problems.push(Problem::new(
            Code::WrongType,
            name,
            any.repr()?.to_string_lossy().into_owned(),
            input.admissible(),
            "give one of the words as text",
        ));
        return Ok(None);
    };
    let read = text_of(text).map(|text| input.read(&text));
    match read {
        Ok(Ok(place)) => Ok(Some(place)),
        Ok(Err(error)) => {
            problems.extend(error.into_problems());
            Ok(None)
        }
        Err(fault) => {
            fault.collect(name, problems)?;
            Ok(None)
        }
    }
}

/// The SI values of all inputs of an operation, and whether one is written in inch units; every
/// problem of name, tool and inputs at once.
#[pyfunction]
pub fn _operation_values(
    py: Python<'_>,
    name: &str,
    tool: &str,
    inputs: &Bound<'_, PyDict>,
) -> PyResult<(Vec<f64>, bool)> {
    let mut problems = Vec::new();
    match tool_named(tool) {
        Err(Fault::Problems(found)) => problems.extend(found),
        Err(Fault::Python(error)) => return Err(error),
        Ok(_) => {}
    }
    let process = match core::find(name) {
        Ok(process) => process,
        Err(error) => {
            problems.extend(error.into_problems());
            return Err(of_problems(py, &problems, None));
        }
    };
    let mut request = Request::of(process);
    let mut inch = false;
    for (key, any) in inputs {
        // An input that is None counts as left out.
        if any.is_none() {
            continue;
        }
        inch |= units_of_argument(&any) == Some(UnitSystem::Inch);
        let key = key.extract::<String>()?;
        match process.input(&key) {
            Ok((_, input)) => {
                if let Some(si) = value(input, &any, &mut problems)? {
                    request = request.si(&key, si).map_err(|error| raise(py, &error))?;
                }
            }
            Err(error) => problems.extend(error.into_problems()),
        }
    }
    let units = if inch { UnitSystem::Inch } else { system(py)? };
    let told: Vec<String> = problems.iter().map(|p| p.parameter.clone()).collect();
    let more = request.problems(units).into_iter();
    problems.extend(more.filter(|problem| !told.contains(&problem.parameter)));
    if problems.is_empty() {
        return Ok((request.values().to_vec(), inch));
    }
    Err(of_problems(py, &problems, None))
}

fn tool_named(text: &str) -> Result<ToolMaterial, Fault> {
    choice(
        "tool",
        text,
        ToolMaterial::parse,
        ToolMaterial::ALL,
        ToolMaterial::name,
    )
}

/// A cut of an operation: what to set, what follows, every limit, and how it was worked out; see
/// ``gullet.operate``.
///
/// >>> import gullet
/// >>> cut = gullet.operate("drilling", material="1018", machine="small-cnc-mill",
/// ...                      practice="experienced", diameter="8.5 mm", depth="22 mm",
/// ...                      warn_of_doubts=False)
/// >>> cut["time"].kind, cut.settings.feed == cut["feed"]
/// ('time', True)
/// >>> all(limit.share <= 1 for limit in cut.ledger)
/// True
/// >>> print(cut.text.splitlines()[0])
/// SET-UP CARD  Drilling
#[pyclass(frozen, mapping, module = "gullet", name = "OperationCut")]
pub struct OperationCut {
    cut: ProcessCut,
    tool: ToolMaterial,
    material: Py<Part>,
    machine: Py<Part>,
    practice: Py<Part>,
    tables: Tables,
}

impl OperationCut {
    /// The card, told in the units that are printed in.
    fn card(&self, py: Python<'_>) -> PyResult<ProcessCard> {
        let mut cut = self.cut.clone();
        cut.units = system(py)?;
        let library: &CoreLibrary = self.tables.get();
        Ok(ProcessCard::new(cut.process.title, cut, library))
    }

    fn bits(&self) -> Vec<Option<u64>> {
        let fields = self.cut.settings.iter().chain(&self.cut.results);
        let inputs = self.cut.inputs.iter().map(|value| Some(value.to_bits()));
        inputs
            .chain(fields.map(|field| field.value.map(f64::to_bits)))
            .collect()
    }
}

#[pymethods]
impl OperationCut {
    /// Name of the operation.
    #[getter]
    fn operation(&self) -> &'static str {
        self.cut.process.name
    }

    /// What it is done with: material, tool, machine, practice.
    #[getter]
    fn setup<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let rows = PyDict::new(py);
        for (label, text) in &self.cut.setup {
            rows.set_item(label.to_lowercase(), text)?;
        }
        Ok(rows)
    }

    /// The inputs as given or assumed, a choice as its word; None for what the tables decide.
    #[getter]
    fn inputs<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let mut rows = Vec::new();
        for (input, value) in self.cut.process.inputs.iter().zip(&self.cut.inputs) {
            let told = match input.told(*value) {
                None => py.None().into_bound(py),
                Some(si) if input.words.is_empty() => {
                    scalar(input.parameter.kind, si).into_bound_py_any(py)?
                }
                Some(place) => input
                    .text(place, UnitSystem::Metric)
                    .into_bound_py_any(py)?,
            };
            rows.push((input.name(), told));
        }
        made(py, "_operation_inputs", (self.operation(), rows))
    }

    /// What a person sets on the machine.
    #[getter]
    fn settings<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let rows = records::values(&self.cut.settings);
        made(py, "_operation_settings", (self.operation(), rows))
    }

    /// What follows from the settings.
    #[getter]
    fn results<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let rows = records::values(&self.cut.results);
        made(py, "_operation_results", (self.operation(), rows))
    }

    /// A setting or result by its name; None where the cut has none.
    fn __getitem__(&self, name: &str) -> PyResult<Option<Quantity>> {
        if let Some(found) = self.cut.value(name) {
            return Ok(Some(scalar(found.kind, found.si)));
        }
        let known: Vec<&str> = self.cut.process.fields().map(|field| field.name).collect();
        if known.contains(&name) {
            return Ok(None);
        }
        let problem = unknown_name(self.operation(), name, known.iter().copied());
        Err(PyKeyError::new_err(problem.to_string()))
    }

    /// Every limit that was looked at.
    #[getter]
    fn ledger<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_limits", (records::limits(&self.cut.ledger),))
    }

    /// The limit nearest to its bound.
    #[getter]
    fn binding<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.ledger(py)?.getattr("binding")
    }

    /// Name of the limit that holds the feed below the wanted one.
    #[getter]
    fn held_by(&self) -> Option<&'static str> {
        self.cut.held_by.map(|limit| limit.name())
    }

    /// What was lowered because of a limit.
    #[getter]
    fn adjustments<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let rows = records::adjustments(&self.cut.adjustments);
        made(py, "_adjustments", (rows,))
    }

    /// The chain of formulas and choices, in order.
    #[getter]
    fn steps<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_steps", (records::steps(py, &self.cut.steps)?,))
    }

    /// Low, start and high of what rests on ranges of tables; None for an end that is not known.
    #[getter]
    fn spread<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let row = |named: &core::NamedBand| {
            let end = |si: f64| si.is_finite().then(|| scalar(named.kind, si));
            let band = &named.band;
            (named.name, end(band.low), end(band.start), end(band.high))
        };
        let rows: Vec<_> = self.cut.spread.iter().map(row).collect();
        made(py, "_operation_spread", (rows,))
    }

    /// Values that came from tables, model or practice.
    #[getter]
    fn data<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_data", (records::data(&self.cut.data),))
    }

    /// Doubts about the result.
    #[getter]
    fn warnings<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_warnings", (records::warnings(&self.cut.warnings),))
    }

    /// What can hurt.
    #[getter]
    fn cautions(&self) -> Vec<&'static str> {
        self.cut.cautions.clone()
    }

    /// Sources with what they stand for.
    #[getter]
    fn sources(&self, py: Python<'_>) -> PyResult<Vec<(String, String)>> {
        Ok(self.card(py)?.sources)
    }

    /// The card of the cut as text.
    #[getter]
    fn text(&self, py: Python<'_>) -> PyResult<String> {
        Ok(self.card(py)?.text())
    }

    /// The card as one printable page.
    #[getter]
    fn html(&self, py: Python<'_>) -> PyResult<String> {
        Ok(self.card(py)?.html())
    }

    /// The page with every worked step.
    #[getter]
    fn html_with_steps(&self, py: Python<'_>) -> PyResult<String> {
        Ok(self.card(py)?.html_with_steps())
    }

    /// The cut as JSON.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        Ok(self.card(py)?.json().to_string())
    }

    fn __str__(&self, py: Python<'_>) -> PyResult<String> {
        self.text(py)
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        let units = system(py)?;
        let show = |name: &str, kind: Kind| {
            let si = self.cut.value(name).map(|value| value.si);
            si.map_or_else(|| "none".to_owned(), |si| format(kind, si, units))
        };
        Ok(std::format!(
            "<OperationCut {}: {}, feed {}, {}; time {}>",
            self.operation(),
            show("spindle_speed", Kind::RotationalSpeed),
            show("feed", Kind::Length),
            show("feed_speed", Kind::Velocity),
            show("time", Kind::Time),
        ))
    }

    fn _repr_html_<'py>(slf: &Bound<'py, OperationCut>) -> PyResult<Bound<'py, PyAny>> {
        made(slf.py(), "_operation_page", (slf,))
    }

    fn __eq__(&self, other: &OperationCut) -> bool {
        self.cut.process == other.cut.process
            && self.cut.setup == other.cut.setup
            && self.bits() == other.bits()
    }

    fn __hash__(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        self.operation().hash(&mut hasher);
        self.bits().hash(&mut hasher);
        hasher.finish()
    }

    fn __reduce__<'py>(
        &self,
        py: Python<'py>,
    ) -> PyResult<(Bound<'py, PyAny>, Bound<'py, pyo3::types::PyTuple>)> {
        let make = py.import("gullet._gullet")?.getattr("_operation_cut")?;
        let arguments = (
            self.operation(),
            self.material.clone_ref(py),
            self.tool.name(),
            self.machine.clone_ref(py),
            self.practice.clone_ref(py),
            self.tables.to_py(),
            self.cut.inputs.clone(),
            self.cut.units == UnitSystem::Inch,
        );
        Ok((make, arguments.into_pyobject(py)?))
    }
}

/// A cut from the SI values of its inputs; told in inch units where `inch` says so or a part is
/// written in them.
#[pyfunction]
#[allow(clippy::too_many_arguments)]
pub fn _operation_cut(
    py: Python<'_>,
    name: &str,
    material: &Bound<'_, Part>,
    tool: &str,
    machine: &Bound<'_, Part>,
    practice: &Bound<'_, Part>,
    library: Option<&Bound<'_, Library>>,
    values: Vec<f64>,
    inch: bool,
) -> PyResult<OperationCut> {
    let process = core::find(name).map_err(|error| raise(py, &error))?;
    if values.len() != process.inputs.len() {
        return Err(PyValueError::new_err("no pickled OperationCut"));
    }
    let written = |part: &&Bound<'_, Part>| part.get().units() == UnitSystem::Inch;
    let units = if inch || [material, machine, practice].iter().any(written) {
        UnitSystem::Inch
    } else {
        system(py)?
    };
    let tables = Tables::of(library);
    let build = || -> Result<(ProcessCut, ToolMaterial), Fault> {
        let tool = tool_named(tool)?;
        let mut request = Request::of(process);
        for (input, value) in process.inputs.iter().zip(&values) {
            request = request.si(input.name(), *value)?;
        }
        let cut = request.cut(&Bench {
            library: tables.get(),
            material: material.get().material()?,
            tool,
            machine: machine.get().machine()?,
            practice: practice.get().practice()?,
            units,
        })?;
        Ok((cut, tool))
    };
    let (cut, tool) = build().map_err(|fault| fault.raise(py))?;
    Ok(OperationCut {
        cut,
        tool,
        material: material.clone().unbind(),
        machine: machine.clone().unbind(),
        practice: practice.clone().unbind(),
        tables,
    })
}
