//! Numbers alone or in an array, in SI units, with numpy's rules of broadcasting.
//!
//! Arrays cross as bytes: numpy is needed only where arrays are used, the copy cannot change under
//! a call that has let go of the interpreter, and no strides or alignment are taken on trust.

use crate::errors::Fault;
use gullet::{Code, Problem};
use pyo3::exceptions::PyMemoryError;
use pyo3::prelude::*;
use pyo3::types::{PyByteArray, PyBytes};
use std::sync::Arc;

pub fn module(py: Python<'_>) -> PyResult<Bound<'_, PyModule>> {
    py.import("gullet._arrays")
}

/// Rows between two looks at Ctrl-C.
pub const CHUNK: usize = 8192;

#[derive(Debug, Clone, PartialEq)]
pub enum Data {
    Scalar(f64),
    Array(Arc<[f64]>, Vec<usize>),
}

impl Data {
    pub fn shape(&self) -> &[usize] {
        match self {
            Data::Scalar(_) => &[],
            Data::Array(_, shape) => shape,
        }
    }

    pub fn values(&self) -> &[f64] {
        match self {
            Data::Scalar(value) => std::slice::from_ref(value),
            Data::Array(values, _) => values,
        }
    }

    /// Every value changed; long arrays without the interpreter, in chunks.
    pub fn map(&self, py: Python<'_>, change: impl Fn(f64) -> f64 + Sync) -> PyResult<Data> {
        Ok(match self {
            Data::Scalar(value) => Data::Scalar(change(*value)),
            Data::Array(values, shape) => {
                let mut results = reserve(values.len())?;
                for chunk in values.chunks(CHUNK) {
                    py.detach(|| results.extend(chunk.iter().map(|value| change(*value))));
                    py.check_signals()?;
                }
                Data::Array(results.into(), shape.clone())
            }
        })
    }

    /// Both broadcast together and combined, value by value.
    pub fn zip(
        &self,
        py: Python<'_>,
        other: &Data,
        combine: impl Fn(f64, f64) -> f64 + Sync,
    ) -> Result<Data, Fault> {
        if let (Data::Scalar(a), Data::Scalar(b)) = (self, other) {
            return Ok(Data::Scalar(combine(*a, *b)));
        }
        let shape = common_shape(&[self, other])?;
        let (a, b) = (self.spread(py, &shape)?, other.spread(py, &shape)?);
        let count = size(&shape)?;
        let mut results = reserve(count)?;
        for start in (0..count).step_by(CHUNK) {
            let end = (start + CHUNK).min(count);
            py.detach(|| match (&a, &b) {
                (Data::Scalar(a), b) => {
                    results.extend(b.values()[start..end].iter().map(|b| combine(*a, *b)));
                }
                (a, Data::Scalar(b)) => {
                    results.extend(a.values()[start..end].iter().map(|a| combine(*a, *b)));
                }
                (a, b) => {
                    let pairs = a.values()[start..end].iter().zip(&b.values()[start..end]);
                    results.extend(pairs.map(|(a, b)| combine(*a, *b)));
                }
            });
            py.check_signals()?;
        }
        Ok(Data::Array(results.into(), shape))
    }

    /// Repeated to a shape; a scalar stays one.
    pub fn spread(&self, py: Python<'_>, shape: &[usize]) -> Result<Data, Fault> {
        let Data::Array(values, own) = self else {
            return Ok(self.clone());
        };
        if own == shape {
            return Ok(self.clone());
        }
        let missing = shape.len() - own.len();
        // Step of each axis in the own values; 0 where they are repeated.
        let mut steps = vec![0; shape.len()];
        let mut step = 1;
        for axis in (0..own.len()).rev() {
            if own[axis] != 1 {
                steps[missing + axis] = step;
            }
            step *= own[axis];
        }
        let count = size(shape)?;
        let mut results = reserve(count)?;
        let mut index = vec![0; shape.len()];
        let mut place = 0;
        for start in (0..count).step_by(CHUNK) {
            py.detach(|| {
                for _ in start..(start + CHUNK).min(count) {
                    results.push(values[place]);
                    for axis in (0..shape.len()).rev() {
                        index[axis] += 1;
                        place += steps[axis];
                        if index[axis] < shape[axis] {
                            break;
                        }
                        place -= steps[axis] * index[axis];
                        index[axis] = 0;
                    }
                }
            });
            py.check_signals()?;
        }
        Ok(Data::Array(results.into(), shape.to_vec()))
    }

    /// A float, or a fresh array of numpy.
    pub fn give<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        match self {
            Data::Scalar(value) => Ok(value.into_pyobject(py)?.into_any()),
            Data::Array(values, shape) => {
                let bytes = PyByteArray::new_with(py, values.len() * 8, |bytes| {
                    for (slot, value) in bytes.chunks_exact_mut(8).zip(values.iter()) {
                        slot.copy_from_slice(&value.to_ne_bytes());
                    }
                    Ok(())
                })?;
                module(py)?.getattr("give")?.call1((bytes, shape.clone()))
            }
        }
    }

    /// The numbers of a bare array, list or number.
    pub fn take(any: &Bound<'_, PyAny>) -> Result<Data, Fault> {
        let py = any.py();
        let answer = module(py)?.getattr("take")?.call1((any,))?;
        if let Ok((why, remedy)) = answer.extract::<(String, String)>() {
            return Err(Problem::new(
                Code::WrongType,
                "",
                why,
                "numbers: int, float32 or float64",
                remedy,
            )
            .into());
        }
        let (bytes, shape): (Bound<'_, PyBytes>, Vec<usize>) = answer.extract()?;
        Ok(Data::of_bytes(bytes.as_bytes(), shape)?)
    }

    pub fn of_bytes(bytes: &[u8], shape: Vec<usize>) -> PyResult<Data> {
        let mut values = reserve(bytes.len() / 8)?;
        values.extend(bytes.chunks_exact(8).map(|eight| {
            let mut value = [0; 8];
            value.copy_from_slice(eight);
            f64::from_ne_bytes(value)
        }));
        Ok(match (values.as_slice(), shape.as_slice()) {
            ([value], []) => Data::Scalar(*value),
            _ => Data::Array(values.into(), shape),
        })
    }
}

pub fn reserve(count: usize) -> PyResult<Vec<f64>> {
    let mut values = Vec::new();
    values
        .try_reserve_exact(count)
        .map_err(|_| PyMemoryError::new_err(format!("no memory for {count} numbers")))?;
    Ok(values)
}

pub fn size(shape: &[usize]) -> PyResult<usize> {
    shape
        .iter()
        .try_fold(1_usize, |size, axis| size.checked_mul(*axis))
        .ok_or_else(|| PyMemoryError::new_err("the arguments broadcast to too many rows"))
}

/// The shape to which all broadcast.
pub fn common_shape(all: &[&Data]) -> Result<Vec<usize>, Fault> {
    let axes = all.iter().map(|data| data.shape().len()).max().unwrap_or(0);
    let mut shape = vec![1; axes];
    for data in all {
        let own = data.shape();
        for (slot, axis) in shape.iter_mut().rev().zip(own.iter().rev()) {
            if *slot == 1 {
                *slot = *axis;
            } else if *axis != 1 && *axis != *slot {
                let shapes: Vec<String> = all
                    .iter()
                    .map(|data| format!("{:?}", data.shape()))
                    .collect();
                return Err(Problem::new(
                    Code::Inconsistent,
                    "",
                    format!("shapes {}", shapes.join(", ")),
                    "shapes that broadcast together",
                    "give arrays of one length, or numbers",
                )
                .into());
            }
        }
    }
    Ok(shape)
}
