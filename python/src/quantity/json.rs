//! Quantities through JSON.

use super::{Quantity, kind_named};
use crate::array::{self, Data};
use crate::errors::Fault;
use gullet::quantity::exact_text;
use gullet::{Code, Problem};
use pyo3::prelude::*;

pub fn read(py: Python<'_>, text: &str) -> PyResult<Quantity> {
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
        (Some(serde_json::Value::Number(si)), None) => Data::Scalar(si.as_f64().ok_or_else(fault)?),
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
    Ok(Quantity::of(kind, data))
}

/// Rows that are not finite are null.
pub fn write(quantity: &Quantity) -> String {
    let text = match &quantity.data {
        Data::Scalar(si) => serde_json::json!({
            "kind": quantity.kind.name(), "si": si, "text": exact_text(quantity.kind, *si),
        }),
        Data::Array(values, shape) => serde_json::json!({
            "kind": quantity.kind.name(), "si": values.to_vec(), "shape": shape,
        }),
    };
    text.to_string()
}
