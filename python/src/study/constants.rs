//! Constants of a study: values of Python as the text that a study reads.

use crate::array::Data;
use crate::errors::Fault;
use crate::quantity::{read, text_of};
use gullet::quantity::{Kind, exact_text};
use gullet::{Code, Problem};
use gullet_table::Takes;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyFloat, PyInt, PyString};

/// Constants as text. Names of those with problems are added to the told ones.
pub fn texts(
    constants: &[(String, Bound<'_, PyAny>)],
    told: &mut Vec<String>,
    problems: &mut Vec<Problem>,
) -> PyResult<Vec<(String, String)>> {
    let operation = constants
        .iter()
        .find(|(name, _)| name == "operation")
        .and_then(|(_, value)| value.extract::<String>().ok());
    let takes = Takes::of_operation(operation.as_deref());
    let mut all = Vec::new();
    for (name, value) in constants {
        match text(&takes, name, value) {
            Ok(text) => all.push((name.clone(), text)),
            Err(fault) => {
                fault.collect(name, problems)?;
                told.push(name.clone());
            }
        }
    }
    Ok(all)
}

fn text(takes: &Takes, name: &str, any: &Bound<'_, PyAny>) -> Result<String, Fault> {
    if let Ok(text) = any.cast::<PyString>() {
        return Ok(text_of(text)?.into_owned());
    }
    let kind = match takes.number(name) {
        Some(number) => number.kind,
        None if name == gullet_table::COST_PER_HOUR => {
            if any.is_instance_of::<PyFloat>() || any.is_instance_of::<PyInt>() {
                return Ok(any.str()?.to_string());
            }
            Kind::MoneyRate
        }
        None if any.is_instance_of::<PyBool>() => {
            return Ok(any.is_truthy()?.to_string());
        }
        // A name, or an unknown constant, which the study refuses.
        None => return Ok(any.str()?.to_string_lossy().into_owned()),
    };
    match read(kind, any)? {
        Data::Scalar(si) => Ok(exact_text(kind, si)),
        Data::Array(..) => Err(Problem::new(
            Code::WrongType,
            "",
            "an array",
            "one quantity for all rows",
            "give it as a column of the table",
        )
        .into()),
    }
}
