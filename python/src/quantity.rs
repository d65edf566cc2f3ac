//! `gullet.Quantity`: a number or an array with a unit.

use crate::array::{self, Data};
use crate::errors::{Fault, raise};
use gullet::quantity::{
    self as core, Converter, Kind, UnitSystem, exact_text, interchangeable, parse, unit, units,
};
use gullet::{Code, Problem};
use pyo3::basic::CompareOp;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyBool, PyBytes, PyFloat, PyInt, PyList, PyString, PyTuple};
use std::hash::{DefaultHasher, Hash, Hasher};

static UNITS: PyOnceLock<Py<PyAny>> = PyOnceLock::new();

/// The system of units that is printed in, of this thread or task.
pub fn system(py: Python<'_>) -> PyResult<UnitSystem> {
    let get = UNITS.get_or_try_init(py, || {
        py.import("gullet._units")?
            .getattr("_get")
            .map(Bound::unbind)
    })?;
    let inch = get.bind(py).call0()?.extract::<String>()? == "inch";
    Ok(if inch {
        UnitSystem::Inch
    } else {
        UnitSystem::Metric
    })
}

pub fn escaped(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
}

#[pyclass(frozen, module = "gullet", name = "Quantity")]
#[derive(Debug, Clone, PartialEq)]
pub struct Quantity {
    pub kind: Kind,
    pub data: Data,
}

pub fn scalar(kind: Kind, si: f64) -> Quantity {
    Quantity {
        kind,
        data: Data::Scalar(si),
    }
}

/// Whether numbers of this kind are written without a unit.
fn unitless(kind: Kind) -> bool {
    units(kind).iter().any(|unit| unit.symbol.is_empty())
}

fn wrong_type(any: &Bound<'_, PyAny>, kind: Kind) -> Fault {
    let name = any
        .get_type()
        .name()
        .map_or_else(|_| "object".to_owned(), |name| name.to_string());
    let unit = units(kind).first().map_or("", |unit| unit.symbol);
    let remedy = if unit.is_empty() {
        "write 0.15 or \"15 %\"".to_owned()
    } else {
        format!("write \"3 {unit}\" or gullet.Quantity(3, \"{unit}\")")
    };
    Problem::new(
        Code::WrongType,
        "",
        name,
        "text with a unit, a Quantity, an array of them, or an object of a units library",
        remedy,
    )
    .into()
}

/// The number of an `int`, `float` or anything with `__float__`.
fn number(any: &Bound<'_, PyAny>) -> Result<f64, Fault> {
    any.extract::<f64>().map_err(|_| {
        Problem::new(
            Code::NotFinite,
            "",
            any.str().map_or_else(
                |_| "a number of too many digits".to_owned(),
                |text| text.to_string().chars().take(40).collect(),
            ),
            "a finite number",
            "check the size of the number",
        )
        .into()
    })
}

/// A bare number: itself where the kind has no unit, else the error that shows how to write it.
fn bare(kind: Kind, value: f64) -> Result<f64, Fault> {
    if unitless(kind) {
        return Ok(value);
    }
    Ok(parse(kind, format!("{value:?}").trim_end_matches(".0"))?)
}

pub fn text_of<'a>(any: &'a Bound<'_, PyString>) -> Result<std::borrow::Cow<'a, str>, Fault> {
    any.to_cow().map_err(|_| {
        Problem::new(
            Code::NumberUnreadable,
            "",
            any.to_string_lossy().chars().take(80).collect::<String>(),
            "text in Unicode",
            "take out the characters that are half of a pair",
        )
        .into()
    })
}

/// Reads an argument of a kind: SI values.
pub fn read(kind: Kind, any: &Bound<'_, PyAny>) -> Result<Data, Fault> {
    if let Ok(quantity) = any.cast::<Quantity>() {
        let quantity = quantity.get();
        if quantity.kind == kind || interchangeable(quantity.kind, kind) {
            return Ok(quantity.data.clone());
        }
        let first = quantity.data.values().first().copied().unwrap_or(1.0);
        parse(kind, &exact_text(quantity.kind, first))?;
        // A unit both kinds spell, as 1/s: the kinds still differ.
        return Err(Problem::new(
            Code::UnitUnknown,
            "",
            exact_text(quantity.kind, first),
            format!("a {}", kind.name().replace('_', " ")),
            format!("it is a {}", quantity.kind.name().replace('_', " ")),
        )
        .into());
    }
    if let Ok(text) = any.cast::<PyString>() {
        return Ok(Data::Scalar(parse(kind, &text_of(text)?)?));
    }
    if any.is_instance_of::<PyBool>() {
        return Err(wrong_type(any, kind));
    }
    if any.is_instance_of::<PyFloat>() || any.is_instance_of::<PyInt>() {
        return Ok(Data::Scalar(bare(kind, number(any)?)?));
    }
    if any.hasattr("m_as")? && any.hasattr("units")? {
        return foreign(kind, any);
    }
    if any.is_instance_of::<PyList>() || any.is_instance_of::<PyTuple>() {
        let items: Vec<Bound<'_, PyAny>> = any.try_iter()?.collect::<PyResult<_>>()?;
        let written = |item: &Bound<'_, PyAny>| {
            item.is_instance_of::<PyString>() || item.is_instance_of::<Quantity>()
        };
        if items.iter().any(written) {
            return each(kind, &items);
        }
    }
    let array = any.hasattr("__array__")?
        || any.is_instance_of::<PyList>()
        || any.is_instance_of::<PyTuple>();
    if array {
        let data = Data::take(any)?;
        return match data {
            Data::Scalar(value) => Ok(Data::Scalar(bare(kind, value)?)),
            array if unitless(kind) => Ok(array),
            _ => {
                let unit = units(kind).first().map_or("", |unit| unit.symbol);
                let mut problems = match parse(kind, "1") {
                    Err(error) => error.into_problems(),
                    Ok(_) => Vec::new(),
                };
                for problem in &mut problems {
                    problem.value = "an array without a unit".to_owned();
                    problem.remedy = format!("write gullet.Quantity(array, \"{unit}\")");
                }
                Err(Fault::Problems(problems))
            }
        };
    }
    if any.hasattr("__float__")? {
        return Ok(Data::Scalar(bare(kind, number(any)?)?));
    }
    Err(wrong_type(any, kind))
}

/// A list of texts and quantities.
fn each(kind: Kind, items: &[Bound<'_, PyAny>]) -> Result<Data, Fault> {
    let mut values = array::reserve(items.len())?;
    let mut problems = Vec::new();
    for (row, item) in items.iter().enumerate() {
        match read(kind, item) {
            Ok(Data::Scalar(value)) => values.push(value),
            Ok(Data::Array(..)) => problems.push(Problem::new(
                Code::WrongType,
                "",
                format!("an array in row {row}"),
                "one quantity a row",
                "give an array of numbers with its unit",
            )),
            Err(Fault::Problems(found)) => {
                for mut problem in found {
                    problem.remedy = format!("{} (row {row})", problem.remedy);
                    problems.push(problem);
                }
            }
            Err(fault) => return Err(fault),
        }
    }
    if !problems.is_empty() {
        return Err(Fault::Problems(problems));
    }
    let shape = vec![values.len()];
    Ok(Data::Array(values.into(), shape))
}

/// A quantity of a units library: its number in our own unit where both mean the same by the
/// unit's name, else as the library converts it to SI.
fn foreign(kind: Kind, any: &Bound<'_, PyAny>) -> Result<Data, Fault> {
    let py = any.py();
    let refused = || -> Fault {
        let shown = any.str().map_or_else(|_| "?".to_owned(), |s| s.to_string());
        let admissible: Vec<&str> = units(kind).iter().map(|unit| unit.symbol).collect();
        Problem::new(
            Code::UnitUnknown,
            "",
            shown.chars().take(80).collect::<String>(),
            admissible.join(", "),
            if kind == Kind::RotationalSpeed {
                "give revolutions a time, such as rpm: 1/s or rad/s may mean either".to_owned()
            } else {
                format!("give a {}", kind.name().replace('_', " "))
            },
        )
        .into()
    };
    let name: String = module_text(py, any)?;
    let own = unit(kind, &name).ok();
    let magnitude = || -> Result<Data, Fault> { Data::take(&any.getattr("magnitude")?) };
    let in_own = |own| -> Result<Data, Fault> {
        let converter = Converter::new(own);
        Ok(magnitude()?.map(py, |value| converter.to_si(value))?)
    };
    if kind == Kind::RotationalSpeed {
        // Libraries take a revolution for 2 pi; only a name that counts revolutions is safe.
        return match own {
            Some(own) => in_own(own),
            None => Err(refused()),
        };
    }
    let si = units(kind)
        .iter()
        .find(|unit| unit.size() == 1.0)
        .map(|unit| library_spelling(unit.symbol));
    let Some(si) = si else { return Err(refused()) };
    let converted = match any.call_method1("m_as", (si,)) {
        Ok(value) => Data::take(&value)?,
        Err(error) if error.is_instance_of::<pyo3::exceptions::PyException>(py) => {
            return Err(refused());
        }
        Err(error) => return Err(error.into()),
    };
    if let Some(own) = own {
        let exact = in_own(own)?;
        let close = exact
            .values()
            .iter()
            .zip(converted.values())
            .all(|(a, b)| (a - b).abs() <= 1e-6 * b.abs() || !b.is_finite());
        if close {
            return Ok(exact);
        }
    }
    Ok(converted)
}

/// The short spelling of a library quantity's unit.
fn module_text(py: Python<'_>, any: &Bound<'_, PyAny>) -> PyResult<String> {
    let units = any.getattr("units")?;
    match py
        .import("builtins")?
        .getattr("format")?
        .call1((&units, "~C"))
    {
        Ok(text) => Ok(text.str()?.to_string()),
        Err(_) => Ok(units.str()?.to_string()),
    }
}

/// `N.m` and `m3/s` as libraries write them: `N*m`, `m**3/s`; a pure number as the empty text.
fn library_spelling(symbol: &str) -> String {
    let mut text = String::new();
    for c in symbol.chars() {
        match c {
            '.' => text.push('*'),
            c if c.is_ascii_digit() => {
                text.push_str("**");
                text.push(c);
            }
            c => text.push(c),
        }
    }
    text
}

/// The kind whose unit this text spells: an exact spelling before one that differs in case.
fn kind_of_unit(text: &str) -> Result<Kind, Fault> {
    let exact = Kind::ALL.iter().copied().find(|kind| {
        units(*kind)
            .iter()
            .any(|unit| unit.symbol == text || unit.aliases.contains(&text))
    });
    let known = || {
        Kind::ALL
            .iter()
            .copied()
            .find(|kind| unit(*kind, text).is_ok())
    };
    exact.or_else(known).ok_or_else(|| unknown_unit(text))
}

fn unknown_unit(text: &str) -> Fault {
    let symbols: Vec<&str> = Kind::ALL
        .iter()
        .filter_map(|kind| units(*kind).first())
        .map(|unit| unit.symbol)
        .filter(|symbol| !symbol.is_empty())
        .collect();
    Problem::new(
        Code::UnitUnknown,
        "",
        text.chars().take(80).collect::<String>(),
        symbols.join(", "),
        "write a unit such as \"3 mm\"; gullet.units_of(kind) lists them",
    )
    .into()
}

/// Reads text whose unit tells the kind.
fn parse_any(text: &str) -> Result<Quantity, Fault> {
    if core::parse_number(text).is_ok() {
        parse(Kind::Length, text)?;
    }
    // A unit known to several kinds means the first one: 1/s is a spindle speed, N/mm a line force.
    for kind in Kind::ALL {
        if let Ok(si) = parse(*kind, text) {
            return Ok(scalar(*kind, si));
        }
    }
    match parse(Kind::Length, text) {
        Err(error) if error.code() != Code::UnitUnknown => Err(error.into()),
        _ => Err(unknown_unit(text)),
    }
}

pub fn kind_named(name: &str) -> Result<Kind, Fault> {
    Kind::from_name(name).ok_or_else(|| {
        gullet::error::unknown_name("kind", name, Kind::ALL.iter().map(|kind| kind.name())).into()
    })
}

fn build(
    value: &Bound<'_, PyAny>,
    unit_text: Option<&str>,
    kind: Option<&str>,
) -> Result<Quantity, Fault> {
    let kind = kind.map(kind_named).transpose()?;
    if let Some(unit_text) = unit_text {
        let kind = kind.map_or_else(|| kind_of_unit(unit_text), Ok)?;
        let converter = Converter::new(unit(kind, unit_text)?);
        // The number alone is read as a ratio, which has no unit.
        let text = value.is_instance_of::<PyString>() || value.is_instance_of::<Quantity>();
        if text {
            return Err(Problem::new(
                Code::WrongType,
                "",
                value.str()?.to_string().chars().take(80).collect::<String>(),
                "a number or an array before the unit",
                format!("write gullet.Quantity(3, \"{unit_text}\") or gullet.Quantity(\"3 {unit_text}\")"),
            )
            .into());
        }
        let numbers = read(Kind::Ratio, value)?;
        if let Data::Scalar(number) = numbers {
            let quantity = core::Quantity::new(kind, number, unit_text)?;
            return Ok(scalar(kind, quantity.si));
        }
        let data = numbers.map(value.py(), |number| converter.to_si(number))?;
        return Ok(Quantity { kind, data });
    }
    if let Some(kind) = kind {
        let data = read(kind, value)?;
        return match data {
            Data::Scalar(si) if !si.is_finite() => Err(not_finite(si)),
            data => Ok(Quantity { kind, data }),
        };
    }
    if let Ok(quantity) = value.cast::<Quantity>() {
        return Ok(quantity.get().clone());
    }
    if let Ok(text) = value.cast::<PyString>() {
        return parse_any(&text_of(text)?);
    }
    if value.hasattr("m_as")? && value.hasattr("units")? {
        let name = module_text(value.py(), value)?;
        if let Ok(kind) = kind_of_unit(&name)
            && let Ok(data) = foreign(kind, value)
        {
            return Ok(Quantity { kind, data });
        }
        for kind in Kind::ALL {
            if let Ok(data) = foreign(*kind, value) {
                return Ok(Quantity { kind: *kind, data });
            }
        }
        return Err(unknown_unit(&name));
    }
    if let Ok(items) = value.cast::<PyList>()
        && let Some(first) = items.iter().next()
        && (first.is_instance_of::<PyString>() || first.is_instance_of::<Quantity>())
    {
        let kind = build(&first, None, None)?.kind;
        let data = read(kind, value)?;
        return Ok(Quantity { kind, data });
    }
    // No kind: the error of a length shows how a unit is written.
    read(Kind::Length, value)?;
    Err(wrong_type(value, Kind::Length))
}

fn not_finite(si: f64) -> Fault {
    Problem::new(
        Code::NotFinite,
        "",
        format!("{si}"),
        "a finite number",
        "check where the number comes from",
    )
    .into()
}

/// A result whose overflow is an error and not an infinity.
fn checked(kind: Kind, data: Data, operands: &[&Data]) -> Result<Quantity, Fault> {
    let finite = |data: &&Data| data.values().iter().all(|value| value.is_finite());
    if !finite(&&data) && operands.iter().all(finite) {
        return Err(Problem::new(
            Code::ResultOverflow,
            "",
            "",
            "operands whose result a double can hold",
            "check for a division by zero and the size of the operands",
        )
        .into());
    }
    Ok(Quantity { kind, data })
}

/// The other operand of a product: a quantity, or numbers without a unit.
fn factor(any: &Bound<'_, PyAny>) -> Result<Option<Quantity>, Fault> {
    if let Ok(quantity) = any.cast::<Quantity>() {
        return Ok(Some(quantity.get().clone()));
    }
    if any.is_instance_of::<PyString>() || any.hasattr("m_as")? {
        return Ok(None);
    }
    let data = read(Kind::Ratio, any)?;
    Ok(Some(Quantity {
        kind: Kind::Ratio,
        data,
    }))
}

impl Quantity {
    fn unknown_kind(&self, sign: &str, other: &Quantity) -> Fault {
        let turning = [self.kind, other.kind]
            .iter()
            .any(|kind| matches!(kind, Kind::RotationalSpeed | Kind::Turns | Kind::Angle));
        Problem::new(
            Code::Inconsistent,
            "",
            format!("{} {sign} {}", self.kind.name(), other.kind.name()),
            "operands whose result is one of gullet.kinds()",
            if turning {
                "revolutions and angles carry a 2 pi: use the formula in gullet.formula"
            } else {
                "use a formula in gullet.formula, or numbers from .to(unit)"
            },
        )
        .into()
    }

    fn times(&self, other: &Quantity) -> Result<Quantity, Fault> {
        let kind =
            core::product(self.kind, other.kind).ok_or_else(|| self.unknown_kind("*", other))?;
        let data = self.data.zip(&other.data, |a, b| a * b)?;
        checked(kind, data, &[&self.data, &other.data])
    }

    fn over(&self, other: &Quantity) -> Result<Quantity, Fault> {
        let kind =
            core::quotient(self.kind, other.kind).ok_or_else(|| self.unknown_kind("/", other))?;
        let data = self.data.zip(&other.data, |a, b| a / b)?;
        checked(kind, data, &[&self.data, &other.data])
    }

    fn sum(&self, other: &Bound<'_, PyAny>, sign: f64) -> Result<Quantity, Fault> {
        let other = read(self.kind, other)?;
        let data = self.data.zip(&other, |a, b| a + sign * b)?;
        checked(self.kind, data, &[&self.data, &other])
    }

    pub fn text(&self, system: UnitSystem) -> String {
        let values = match &self.data {
            Data::Scalar(si) => return core::format(self.kind, *si, system),
            Data::Array(values, _) => values,
        };
        // All in the unit of the largest, so that rows compare at a glance.
        let largest = values
            .iter()
            .filter(|value| value.is_finite())
            .fold(0.0, |a: f64, b| a.max(b.abs()));
        let printed = core::format_digits(self.kind, largest, system, 5);
        let symbol = units(self.kind)
            .iter()
            .map(|unit| unit.symbol)
            .filter(|symbol| !symbol.is_empty() && printed.ends_with(&format!(" {symbol}")))
            .max_by_key(|symbol| symbol.len())
            .unwrap_or("");
        let show = |si: &f64| {
            if !si.is_finite() {
                return "nan".to_owned();
            }
            core::format_in(self.kind, *si, symbol, 5)
                .unwrap_or_else(|_| format!("{si:?}"))
                .trim_end_matches(symbol)
                .trim_end()
                .to_owned()
        };
        let mut parts: Vec<String> = values.iter().take(6).map(show).collect();
        if values.len() > 6 {
            parts.push(format!("... {} in all", values.len()));
        }
        format!("[{}] {symbol}", parts.join(", "))
            .trim_end()
            .to_owned()
    }
}

#[pymethods]
impl Quantity {
    #[classattr]
    fn __array_ufunc__() -> Option<bool> {
        // numpy leaves the operators to this class.
        None
    }

    #[new]
    #[pyo3(signature = (value, unit=None, *, kind=None))]
    fn new(value: &Bound<'_, PyAny>, unit: Option<&str>, kind: Option<&str>) -> PyResult<Quantity> {
        build(value, unit, kind).map_err(|fault| fault.raise(value.py()))
    }

    #[staticmethod]
    fn from_json(py: Python<'_>, text: &str) -> PyResult<Quantity> {
        let parsed: serde_json::Value = serde_json::from_str(text).map_err(|error| {
            Fault::from(Problem::new(
                Code::Syntax,
                "",
                error.to_string(),
                "JSON as to_json() writes it",
                "correct the text",
            ))
            .raise(py)
        })?;
        let kind = parsed.get("kind").and_then(serde_json::Value::as_str);
        let si = parsed.get("si");
        let shape = parsed.get("shape").and_then(serde_json::Value::as_array);
        let fault = || -> PyErr {
            Fault::from(Problem::new(
                Code::WrongType,
                "",
                "",
                "an object with kind and si",
                "write {\"kind\": \"length\", \"si\": 0.0127}",
            ))
            .raise(py)
        };
        let kind = kind_named(kind.ok_or_else(fault)?).map_err(|fault| fault.raise(py))?;
        let data = match (si, shape) {
            (Some(serde_json::Value::Number(si)), None) => {
                Data::Scalar(si.as_f64().ok_or_else(fault)?)
            }
            (Some(serde_json::Value::Array(values)), Some(shape)) => {
                let number = |value: &serde_json::Value| match value {
                    serde_json::Value::Null => Some(f64::NAN),
                    value => value.as_f64(),
                };
                let values: Option<Vec<f64>> = values.iter().map(number).collect();
                let shape: Option<Vec<usize>> = shape
                    .iter()
                    .map(|axis| axis.as_u64().and_then(|axis| usize::try_from(axis).ok()))
                    .collect();
                let (values, shape) = (values.ok_or_else(fault)?, shape.ok_or_else(fault)?);
                if array::size(&shape)? != values.len() {
                    return Err(fault());
                }
                Data::Array(values.into(), shape)
            }
            _ => return Err(fault()),
        };
        Ok(Quantity { kind, data })
    }

    /// Rows that are not finite are null.
    fn to_json(&self) -> String {
        let text = match &self.data {
            Data::Scalar(si) => serde_json::json!({
                "kind": self.kind.name(), "si": si, "text": exact_text(self.kind, *si),
            }),
            Data::Array(values, shape) => serde_json::json!({
                "kind": self.kind.name(), "si": values.to_vec(), "shape": shape,
            }),
        };
        text.to_string()
    }

    fn to<'py>(&self, py: Python<'py>, unit: &str) -> PyResult<Bound<'py, PyAny>> {
        if let Data::Scalar(si) = self.data {
            let quantity = core::Quantity {
                kind: self.kind,
                si,
            };
            let value = quantity.to(unit).map_err(|error| raise(py, &error))?;
            return Ok(value.into_pyobject(py)?.into_any());
        }
        let own = core::unit(self.kind, unit).map_err(|error| raise(py, &error))?;
        let converter = Converter::new(own);
        self.data.map(py, |si| converter.from_si(si))?.give(py)
    }

    #[getter]
    fn si<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.data.give(py)
    }

    #[getter]
    fn kind(&self) -> &'static str {
        self.kind.name()
    }

    #[getter]
    fn shape<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(py, self.data.shape())
    }

    fn __len__(&self) -> PyResult<usize> {
        self.data
            .shape()
            .first()
            .copied()
            .ok_or_else(|| PyTypeError::new_err("a single Quantity has no len()"))
    }

    fn __getitem__(&self, py: Python<'_>, index: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        if matches!(self.data, Data::Scalar(_)) {
            return Err(PyTypeError::new_err("a single Quantity has no rows"));
        }
        let part = self.data.give(py)?.get_item(index)?;
        let data = Data::take(&part).map_err(|fault| fault.raise(py))?;
        Ok(Quantity {
            kind: self.kind,
            data,
        })
    }

    fn __add__(&self, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        self.sum(other, 1.0)
            .map_err(|fault| fault.raise(other.py()))
    }

    fn __radd__(&self, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        self.__add__(other)
    }

    fn __sub__(&self, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        self.sum(other, -1.0)
            .map_err(|fault| fault.raise(other.py()))
    }

    fn __rsub__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        self.__neg__(py)?.__add__(other)
    }

    fn __mul__<'py>(&self, other: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        product(other, |other| self.times(&other))
    }

    fn __rmul__<'py>(&self, other: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        product(other, |other| other.times(self))
    }

    fn __truediv__<'py>(&self, other: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        product(other, |other| self.over(&other))
    }

    fn __rtruediv__<'py>(&self, other: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        product(other, |other| other.over(self))
    }

    fn __neg__(&self, py: Python<'_>) -> PyResult<Quantity> {
        Ok(Quantity {
            kind: self.kind,
            data: self.data.map(py, |value| -value)?,
        })
    }

    fn __pos__(&self) -> Quantity {
        self.clone()
    }

    fn __abs__(&self, py: Python<'_>) -> PyResult<Quantity> {
        Ok(Quantity {
            kind: self.kind,
            data: self.data.map(py, f64::abs)?,
        })
    }

    fn __float__(&self, py: Python<'_>) -> PyResult<f64> {
        match self.data {
            Data::Scalar(si) if unitless(self.kind) => Ok(si),
            Data::Scalar(_) => Err(raise(
                py,
                &Problem::new(
                    Code::UnitMissing,
                    "",
                    self.text(UnitSystem::Metric),
                    "a number without a unit",
                    "name the unit: .to(\"mm\")",
                )
                .into(),
            )),
            Data::Array(..) => Err(PyTypeError::new_err("an array is no single number")),
        }
    }

    fn __bool__(&self) -> PyResult<bool> {
        match self.data {
            Data::Scalar(si) => Ok(si != 0.0),
            Data::Array(..) => Err(PyTypeError::new_err(
                "an array is neither true nor false: use .any() or .all() of a comparison",
            )),
        }
    }

    fn __richcmp__<'py>(
        &self,
        other: &Bound<'py, PyAny>,
        op: CompareOp,
    ) -> PyResult<Bound<'py, PyAny>> {
        let py = other.py();
        let equality = matches!(op, CompareOp::Eq | CompareOp::Ne);
        let comparable = match other.cast::<Quantity>() {
            Ok(quantity) => !equality || interchangeable(self.kind, quantity.get().kind),
            Err(_) => !equality,
        };
        if !comparable {
            return Ok(py.NotImplemented().into_bound(py));
        }
        let other = read(self.kind, other).map_err(|fault| fault.raise(py))?;
        let holds = |a: f64, b: f64| {
            f64::from(u8::from(match op {
                CompareOp::Lt => a < b,
                CompareOp::Le => a <= b,
                CompareOp::Eq => a == b,
                CompareOp::Ne => a != b,
                CompareOp::Gt => a > b,
                CompareOp::Ge => a >= b,
            }))
        };
        let answer = self
            .data
            .zip(&other, holds)
            .map_err(|fault| fault.raise(py))?;
        match answer {
            Data::Scalar(value) => Ok(PyBool::new(py, value != 0.0).to_owned().into_any()),
            array => array.give(py)?.call_method1("astype", ("bool",)),
        }
    }

    fn __hash__(&self) -> PyResult<u64> {
        match self.data {
            Data::Scalar(si) => {
                let mut hasher = DefaultHasher::new();
                // Equal zeros hash alike whatever their sign.
                (si + 0.0).to_bits().hash(&mut hasher);
                Ok(hasher.finish())
            }
            Data::Array(..) => Err(PyTypeError::new_err("unhashable: a Quantity of an array")),
        }
    }

    fn __copy__(slf: Py<Quantity>) -> Py<Quantity> {
        slf
    }

    fn __deepcopy__(slf: Py<Quantity>, _memo: &Bound<'_, PyAny>) -> Py<Quantity> {
        slf
    }

    fn __reduce__<'py>(
        &self,
        py: Python<'py>,
    ) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let make = py.import("gullet._gullet")?.getattr("_quantity")?;
        let bytes: Vec<u8> = self
            .data
            .values()
            .iter()
            .flat_map(|value| value.to_le_bytes())
            .collect();
        let shape = match &self.data {
            Data::Scalar(_) => None,
            Data::Array(_, shape) => Some(shape.clone()),
        };
        Ok((
            make,
            (self.kind.name(), PyBytes::new(py, &bytes), shape).into_pyobject(py)?,
        ))
    }

    fn __str__(&self, py: Python<'_>) -> PyResult<String> {
        Ok(self.text(system(py)?))
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        Ok(format!("Quantity('{}')", self.text(system(py)?)))
    }

    fn __format__(&self, py: Python<'_>, spec: &str) -> PyResult<String> {
        if spec.is_empty() {
            return self.__str__(py);
        }
        match self.data {
            Data::Scalar(si) => {
                core::format_in(self.kind, si, spec, 4).map_err(|error| raise(py, &error))
            }
            Data::Array(..) => Err(PyTypeError::new_err(
                "an array is printed without a format: take a row",
            )),
        }
    }

    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        Ok(format!("<span>{}</span>", escaped(&self.text(system(py)?))))
    }
}

fn product<'py>(
    other: &Bound<'py, PyAny>,
    combine: impl FnOnce(Quantity) -> Result<Quantity, Fault>,
) -> PyResult<Bound<'py, PyAny>> {
    let py = other.py();
    let answer = factor(other).and_then(|factor| factor.map(combine).transpose());
    match answer.map_err(|fault| fault.raise(py))? {
        Some(quantity) => Ok(Bound::new(py, quantity)?.into_any()),
        None => Ok(py.NotImplemented().into_bound(py)),
    }
}

#[pyfunction]
pub fn _quantity(
    py: Python<'_>,
    kind: &str,
    bytes: &Bound<'_, PyBytes>,
    shape: Option<Vec<usize>>,
) -> PyResult<Quantity> {
    let kind = kind_named(kind).map_err(|fault| fault.raise(py))?;
    let values: Vec<f64> = bytes
        .as_bytes()
        .chunks_exact(8)
        .map(|eight| {
            let mut value = [0; 8];
            value.copy_from_slice(eight);
            f64::from_le_bytes(value)
        })
        .collect();
    let fits = array::size(shape.as_deref().unwrap_or(&[]))? == values.len();
    let data = match (shape, values.as_slice()) {
        (None, [si]) => Data::Scalar(*si),
        (Some(shape), _) if fits => Data::Array(values.into(), shape),
        _ => return Err(PyTypeError::new_err("no pickled Quantity")),
    };
    Ok(Quantity { kind, data })
}

/// The units of a kind, the common ones first.
#[pyfunction]
pub fn units_of(py: Python<'_>, kind: &str) -> PyResult<Vec<&'static str>> {
    let kind = kind_named(kind).map_err(|fault| fault.raise(py))?;
    Ok(units(kind).iter().map(|unit| unit.symbol).collect())
}

/// Every kind of quantity.
#[pyfunction]
pub fn kinds() -> Vec<&'static str> {
    Kind::ALL.iter().map(|kind| kind.name()).collect()
}
