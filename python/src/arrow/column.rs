//! Columns of Arrow read: numbers, texts, and cells as Python shows them.

use crate::errors::Fault;
use arrow_array::cast::AsArray;
use arrow_array::types::{
    Float32Type, Float64Type, Int8Type, Int16Type, Int32Type, Int64Type, UInt8Type, UInt16Type,
    UInt32Type, UInt64Type,
};
use arrow_array::{Array, ArrowPrimitiveType, RecordBatch};
use arrow_schema::DataType;
use gullet::{Code, Problem};
use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;
use pyo3::types::{PyList, PyTuple};

/// Integers beyond this are not all doubles.
const LARGEST: u64 = 1 << 53;

fn refused(name: &str, found: &DataType, wanted: &str, remedy: &str) -> Fault {
    Problem::new(
        Code::WrongType,
        name,
        format!("a column of {found}"),
        wanted,
        remedy,
    )
    .into()
}

fn primitive<T: ArrowPrimitiveType>(
    part: &dyn Array,
    double: fn(T::Native) -> f64,
) -> Option<Vec<f64>> {
    let array = part.as_primitive_opt::<T>()?;
    // By the validity, never by what stands behind a null.
    Some(
        array
            .iter()
            .map(|value| value.map_or(f64::NAN, double))
            .collect(),
    )
}

fn any<T: ArrowPrimitiveType>(part: &dyn Array, holds: fn(T::Native) -> bool) -> bool {
    part.as_primitive_opt::<T>()
        .is_some_and(|array| array.iter().flatten().any(holds))
}

/// The numbers of a column; a null is nan. A 32-bit float keeps its own rounding.
pub fn numbers(name: &str, part: &dyn Array) -> Result<Vec<f64>, Fault> {
    let found = match part.data_type() {
        DataType::Float64 => primitive::<Float64Type>(part, |v| v),
        DataType::Float32 => primitive::<Float32Type>(part, f64::from),
        DataType::Int8 => primitive::<Int8Type>(part, f64::from),
        DataType::Int16 => primitive::<Int16Type>(part, f64::from),
        DataType::Int32 => primitive::<Int32Type>(part, f64::from),
        DataType::Int64 => primitive::<Int64Type>(part, |v| v as f64),
        DataType::UInt8 => primitive::<UInt8Type>(part, f64::from),
        DataType::UInt16 => primitive::<UInt16Type>(part, f64::from),
        DataType::UInt32 => primitive::<UInt32Type>(part, f64::from),
        DataType::UInt64 => primitive::<UInt64Type>(part, |v| v as f64),
        DataType::Null => Some(vec![f64::NAN; part.len()]),
        _ => None,
    };
    let found = found.ok_or_else(|| {
        refused(
            name,
            part.data_type(),
            "numbers: integers, float32 or float64",
            "convert the column to float64 before it comes here",
        )
    })?;
    let beyond = match part.data_type() {
        DataType::Int64 => any::<Int64Type>(part, |v| v.unsigned_abs() > LARGEST),
        DataType::UInt64 => any::<UInt64Type>(part, |v| v > LARGEST),
        _ => false,
    };
    if beyond {
        return Err(refused(
            name,
            part.data_type(),
            "integers up to 2**53",
            "a double cannot hold them all: convert them yourself",
        ));
    }
    Ok(found)
}

/// The texts of a column, whatever form its library keeps them in.
pub fn texts(name: &str, part: &dyn Array) -> Result<Vec<Option<String>>, Fault> {
    let own = |text: Option<&str>| text.map(str::to_owned);
    if let Some(array) = part.as_string_opt::<i32>() {
        return Ok(array.iter().map(own).collect());
    }
    if let Some(array) = part.as_string_opt::<i64>() {
        return Ok(array.iter().map(own).collect());
    }
    if let Some(array) = part.as_string_view_opt() {
        return Ok(array.iter().map(own).collect());
    }
    if let Some(array) = part.as_any_dictionary_opt() {
        let values = texts(name, array.values().as_ref())?;
        if values.is_empty() {
            return Ok(vec![None; part.len()]);
        }
        // A key may be null, and so may the value it points at.
        let keys = array.normalized_keys().into_iter().enumerate();
        return Ok(keys
            .map(|(row, key)| {
                if array.keys().is_null(row) {
                    None
                } else {
                    values.get(key).cloned().flatten()
                }
            })
            .collect());
    }
    if part.data_type() == &DataType::Null {
        return Ok(vec![None; part.len()]);
    }
    Err(refused(
        name,
        part.data_type(),
        "text: utf8, large_utf8, utf8_view or a dictionary of these",
        "convert the column to text before it comes here",
    ))
}

/// Every cell as Python shows it; None where it is empty.
pub fn items<'py>(
    py: Python<'py>,
    name: &str,
    part: &dyn Array,
) -> Result<Vec<Bound<'py, PyAny>>, Fault> {
    let none = || py.None().into_bound(py);
    let part_type = part.data_type();
    if part_type.is_integer() {
        return integers(py, part).ok_or_else(|| unknown(name, part_type));
    }
    if matches!(part_type, DataType::Float64 | DataType::Float32) {
        let values = numbers(name, part)?.into_iter().enumerate();
        let item = |(row, value): (usize, f64)| {
            if part.is_null(row) {
                Ok(none())
            } else {
                Ok(value.into_bound_py_any(py)?)
            }
        };
        return values.map(item).collect();
    }
    if let Some(array) = part.as_boolean_opt() {
        let item = |value: Option<bool>| Ok(value.into_bound_py_any(py)?);
        return array.iter().map(item).collect();
    }
    if let Some(array) = part.as_list_opt::<i32>() {
        let item = |value: Option<arrow_array::ArrayRef>| match value {
            None => Ok(none()),
            Some(value) => Ok(PyList::new(py, items(py, name, value.as_ref())?)?.into_any()),
        };
        return array.iter().map(item).collect();
    }
    if let Some(array) = part.as_struct_opt() {
        let columns = array
            .columns()
            .iter()
            .map(|column| items(py, name, column.as_ref()))
            .collect::<Result<Vec<_>, _>>()?;
        let item = |row: usize| {
            let cells = columns.iter().filter_map(|column| column.get(row));
            Ok(PyTuple::new(py, cells.collect::<Vec<_>>())?.into_any())
        };
        return (0..array.len()).map(item).collect();
    }
    match texts(name, part) {
        Ok(texts) => {
            let item = |text: Option<String>| Ok(text.into_bound_py_any(py)?);
            texts.into_iter().map(item).collect()
        }
        Err(_) => Err(unknown(name, part_type)),
    }
}

fn unknown(name: &str, found: &DataType) -> Fault {
    refused(
        name,
        found,
        "numbers, text, booleans and lists of these",
        "leave the column out, or read it with the library it came from",
    )
}

fn integers<'py>(py: Python<'py>, part: &dyn Array) -> Option<Vec<Bound<'py, PyAny>>> {
    fn of<'py, T>(py: Python<'py>, part: &dyn Array) -> Option<Vec<Bound<'py, PyAny>>>
    where
        T: ArrowPrimitiveType,
        T::Native: IntoPyObject<'py>,
    {
        let array = part.as_primitive_opt::<T>()?;
        let item = |value: Option<T::Native>| match value {
            None => Some(py.None().into_bound(py)),
            Some(value) => value.into_bound_py_any(py).ok(),
        };
        array.iter().map(item).collect()
    }
    match part.data_type() {
        DataType::Int8 => of::<Int8Type>(py, part),
        DataType::Int16 => of::<Int16Type>(py, part),
        DataType::Int32 => of::<Int32Type>(py, part),
        DataType::Int64 => of::<Int64Type>(py, part),
        DataType::UInt8 => of::<UInt8Type>(py, part),
        DataType::UInt16 => of::<UInt16Type>(py, part),
        DataType::UInt32 => of::<UInt32Type>(py, part),
        DataType::UInt64 => of::<UInt64Type>(py, part),
        _ => None,
    }
}

/// Goes through batches in pieces of any length.
pub struct Walk<'a> {
    batches: &'a [RecordBatch],
    row: usize,
}

impl<'a> Walk<'a> {
    pub fn new(batches: &'a [RecordBatch]) -> Walk<'a> {
        let mut walk = Walk { batches, row: 0 };
        walk.skip_empty();
        walk
    }

    fn skip_empty(&mut self) {
        while let Some((first, rest)) = self.batches.split_first()
            && first.num_rows() == self.row
        {
            self.batches = rest;
            self.row = 0;
        }
    }

    /// Rows left in this batch; 0 at the end.
    pub fn left(&self) -> usize {
        self.batches
            .first()
            .map_or(0, |batch| batch.num_rows() - self.row)
    }

    pub fn next(&mut self, count: usize) -> Option<RecordBatch> {
        let piece = self.batches.first()?.slice(self.row, count);
        self.row += count;
        self.skip_empty();
        Some(piece)
    }
}
