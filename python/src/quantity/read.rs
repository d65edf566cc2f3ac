//! Arguments read as SI values.

use super::Quantity;
use super::foreign::{foreign, unit_text};
use crate::array::{self, Data};
use crate::errors::Fault;
use gullet::quantity::{Kind, UnitSystem, exact_text, interchangeable, parse, units};
use gullet::{Code, Problem};
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyFloat, PyInt, PyList, PyString, PyTuple};

/// Whether numbers of this kind are written without a unit.
pub fn unitless(kind: Kind) -> bool {
    units(kind).iter().any(|unit| unit.symbol.is_empty())
}

pub fn wrong_type(any: &Bound<'_, PyAny>, kind: Kind) -> Fault {
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

/// The system an argument is written in; none where it names no unit.
pub fn units_of_argument(any: &Bound<'_, PyAny>) -> Option<UnitSystem> {
    let written = |text: &str| {
        let named = text.chars().any(|c| c.is_alphabetic() || c == '"');
        named.then(|| gullet::formula::units_of(text))
    };
    if let Ok(quantity) = any.cast::<Quantity>() {
        return quantity.get().units;
    }
    if let Ok(text) = any.cast::<PyString>() {
        return written(&text.to_string_lossy());
    }
    if any.is_instance_of::<PyList>() || any.is_instance_of::<PyTuple>() {
        let first = any.get_item(0).ok()?;
        // Not of lists in lists, however deep.
        let nested = first.is_instance_of::<PyList>() || first.is_instance_of::<PyTuple>();
        return if nested {
            None
        } else {
            units_of_argument(&first)
        };
    }
    if any.hasattr("m_as").ok()? && any.hasattr("units").ok()? {
        return written(&unit_text(any).ok()?);
    }
    None
}

/// The system a call is answered in: inch where an argument is, else that of the arguments, else
/// the one that is printed in.
pub fn units_of_call<'py>(
    py: Python<'py>,
    arguments: impl IntoIterator<Item = Bound<'py, PyAny>>,
) -> UnitSystem {
    let mut written = None;
    for any in arguments {
        match units_of_argument(&any) {
            Some(UnitSystem::Inch) => return UnitSystem::Inch,
            found => written = written.or(found),
        }
    }
    written.unwrap_or_else(|| super::system(py).unwrap_or(UnitSystem::Metric))
}
