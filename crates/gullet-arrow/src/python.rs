//! Capsules of Python: streams and arrays of other libraries in, re-readable tables out.

use crate::{ImportError, Incoming, batch_from_ffi, computed, outgoing};
use arrow_array::RecordBatch;
use arrow_array::ffi::FFI_ArrowArray;
use arrow_array::ffi_stream::FFI_ArrowArrayStream;
use arrow_schema::ffi::FFI_ArrowSchema;
use arrow_schema::{ArrowError, Schema, SchemaRef};
use pyo3::prelude::*;
use pyo3::types::{PyCapsule, PyCapsuleMethods};
use std::ffi::CStr;

const STREAM: &CStr = c"arrow_array_stream";
const ARRAY: &CStr = c"arrow_array";
const SCHEMA: &CStr = c"arrow_schema";

/// What stops an import: data that are no table, or an exception of Python.
#[derive(Debug)]
pub enum Fault {
    /// The data.
    Data(ImportError),
    /// An exception of the producer, or an interrupt.
    Python(PyErr),
}

impl From<ImportError> for Fault {
    fn from(error: ImportError) -> Fault {
        Fault::Data(error)
    }
}

impl From<PyErr> for Fault {
    fn from(error: PyErr) -> Fault {
        Fault::Python(error)
    }
}

/// Reads a table of any library that exports one: `__arrow_c_stream__`, else `__arrow_c_array__`
/// of a struct; none where the object has neither.
///
/// # Errors
/// What the producer raises, an interrupt, or data that contradict their schema.
pub fn import(any: &Bound<'_, PyAny>) -> Result<Option<(SchemaRef, Vec<RecordBatch>)>, Fault> {
    if any.hasattr("__arrow_c_stream__")? {
        return stream(&any.call_method0("__arrow_c_stream__")?).map(Some);
    }
    if any.hasattr("__arrow_c_array__")? {
        let pair = any.call_method0("__arrow_c_array__")?;
        let (schema, array): (Bound<'_, PyAny>, Bound<'_, PyAny>) = pair.extract()?;
        let batch = array_batch(&schema, &array)?;
        return Ok(Some((batch.schema(), vec![batch])));
    }
    Ok(None)
}

fn capsule<'a, 'py>(any: &'a Bound<'py, PyAny>) -> Result<&'a Bound<'py, PyCapsule>, Fault> {
    any.cast::<PyCapsule>()
        .map_err(|_| ImportError::new("the producer gave no capsule").into())
}

/// Begins to read a stream of any library, to be read on batch by batch; none where the object has
/// none.
///
/// # Errors
/// As [`import`].
pub fn open_stream(any: &Bound<'_, PyAny>) -> Result<Option<Incoming>, Fault> {
    if !any.hasattr("__arrow_c_stream__")? {
        return Ok(None);
    }
    opened(&any.call_method0("__arrow_c_stream__")?).map(Some)
}

fn opened(any: &Bound<'_, PyAny>) -> Result<Incoming, Fault> {
    let pointer = capsule(any)?.pointer_checked(Some(STREAM))?;
    // SAFETY: a capsule of this name holds a stream of the C interface; the capsule is alive, and
    // Python's lock, or the capsule's one owner, keeps others from taking the stream meanwhile.
    Ok(unsafe { Incoming::from_raw(pointer.cast().as_ptr()) }?)
}

fn stream(any: &Bound<'_, PyAny>) -> Result<(SchemaRef, Vec<RecordBatch>), Fault> {
    let py = any.py();
    let mut incoming = opened(any)?;
    let schema = incoming.schema();
    let mut batches = Vec::new();
    // A producer may wait for threads that need the interpreter.
    while let Some(batch) = py.detach(|| incoming.next()) {
        batches.push(batch?);
        py.check_signals()?;
    }
    Ok((schema, batches))
}

fn array_batch(schema: &Bound<'_, PyAny>, array: &Bound<'_, PyAny>) -> Result<RecordBatch, Fault> {
    let schema = capsule(schema)?.pointer_checked(Some(SCHEMA))?;
    let array = capsule(array)?.pointer_checked(Some(ARRAY))?;
    // SAFETY: a capsule of this name holds a schema of the C interface, and is alive.
    let schema: &FFI_ArrowSchema = unsafe { schema.cast().as_ref() };
    // SAFETY: likewise an array; taking it over leaves a released one, as the interface asks.
    let array = unsafe { FFI_ArrowArray::from_raw(array.cast().as_ptr()) };
    // SAFETY: both come from the producer's pair of capsules.
    Ok(unsafe { batch_from_ffi(array, schema) }?)
}

/// A capsule with a fresh stream over the batches.
///
/// # Errors
/// Python has no memory left.
pub fn stream_capsule<'py>(
    py: Python<'py>,
    schema: &SchemaRef,
    batches: &[RecordBatch],
) -> PyResult<Bound<'py, PyCapsule>> {
    let stream: FFI_ArrowArrayStream = outgoing(schema.clone(), batches.to_vec());
    PyCapsule::new_with_value(py, stream, STREAM)
}

/// A capsule with a stream over batches that are made while it is read.
///
/// # Errors
/// Python has no memory left.
pub fn lazy_stream_capsule<'py, I>(
    py: Python<'py>,
    schema: SchemaRef,
    batches: I,
) -> PyResult<Bound<'py, PyCapsule>>
where
    I: Iterator<Item = Result<RecordBatch, ArrowError>> + Send + 'static,
{
    let mut batches = batches;
    let next = move || {
        batches.next().map(|batch| {
            batch.map_err(|error| match error {
                ArrowError::ComputeError(text) => text,
                other => other.to_string(),
            })
        })
    };
    PyCapsule::new_with_value(py, computed(schema, next), STREAM)
}

/// A capsule with the schema.
///
/// # Errors
/// Metadata that the C interface cannot hold.
pub fn schema_capsule<'py>(py: Python<'py>, schema: &Schema) -> PyResult<Bound<'py, PyCapsule>> {
    let schema = crate::schema_of(schema)
        .map_err(|error| pyo3::exceptions::PyValueError::new_err(error.to_string()))?;
    PyCapsule::new_with_value(py, schema, SCHEMA)
}
