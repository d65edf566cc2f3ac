//! Tables across the Arrow C interfaces, for the faces of Gullet.
//!
//! Everything unsafe that this takes lives here, each block with its reason, so that the Python
//! face has none. What comes in is checked in full before anybody reads it: offsets, lengths,
//! text in UTF-8. A producer's panic or fault becomes an [`ImportError`].

mod extents;
mod outgoing;
#[cfg(feature = "python")]
mod python;

pub use arrow_array::RecordBatch;
pub use arrow_array::ffi::FFI_ArrowArray;
pub use arrow_array::ffi_stream::FFI_ArrowArrayStream;
pub use arrow_schema::ffi::FFI_ArrowSchema;
pub use outgoing::{array_of, computed, outgoing, schema_of};
#[cfg(feature = "python")]
pub use python::{Fault, import, lazy_stream_capsule, open_stream, schema_capsule, stream_capsule};

use arrow_array::{Array, RecordBatchOptions, make_array};
use arrow_schema::{DataType, Schema, SchemaRef};
use core::ffi::CStr;
use core::fmt;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::Arc;

/// Why what came in is no table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ImportError(String);

impl ImportError {
    fn new(text: impl fmt::Display) -> ImportError {
        ImportError(text.to_string())
    }
}

impl fmt::Display for ImportError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl core::error::Error for ImportError {}

/// Runs what may panic over a producer's data.
fn guarded<T>(run: impl FnOnce() -> Result<T, ImportError>) -> Result<T, ImportError> {
    catch_unwind(AssertUnwindSafe(run))
        .unwrap_or_else(|_| Err(ImportError::new("the data contradict their own schema")))
}

/// Batches that come in through a C stream, checked one by one.
#[derive(Debug)]
pub struct Incoming {
    stream: FFI_ArrowArrayStream,
    schema: SchemaRef,
    ended: bool,
}

impl Incoming {
    /// Begins to read a stream.
    ///
    /// # Errors
    /// The stream is spent, or its schema cannot be read.
    pub fn new(mut stream: FFI_ArrowArrayStream) -> Result<Incoming, ImportError> {
        guarded(|| {
            let get_schema = stream.get_schema().filter(|_| stream.release().is_some());
            let get_schema = get_schema.ok_or_else(|| ImportError::new("the stream is spent"))?;
            let mut schema = FFI_ArrowSchema::empty();
            // SAFETY: a callback of the stream it is called with, and room for its answer.
            let code = unsafe { get_schema(&raw mut stream, &raw mut schema) };
            if code != 0 {
                return Err(told(&mut stream, code));
            }
            let schema = Arc::new(schema_from_ffi(&schema)?);
            let ended = false;
            Ok(Incoming {
                stream,
                schema,
                ended,
            })
        })
    }

    /// Takes a stream over from a C pointer and leaves an empty one there.
    ///
    /// # Safety
    /// The pointer is null or points to a stream that follows the Arrow C stream interface.
    ///
    /// # Errors
    /// As [`Incoming::new`]; also for null.
    pub unsafe fn from_raw(stream: *mut FFI_ArrowArrayStream) -> Result<Incoming, ImportError> {
        if stream.is_null() {
            return Err(ImportError::new("no stream: the pointer is null"));
        }
        // SAFETY: not null, and the caller promises a stream of the C interface.
        Incoming::new(unsafe { FFI_ArrowArrayStream::from_raw(stream) })
    }

    /// The schema of every batch.
    pub fn schema(&self) -> SchemaRef {
        self.schema.clone()
    }

    fn read(&mut self) -> Result<Option<RecordBatch>, ImportError> {
        let get_next = self.stream.get_next();
        let get_next = get_next.ok_or_else(|| ImportError::new("the stream has no get_next"))?;
        let mut array = FFI_ArrowArray::empty();
        // SAFETY: a callback of the stream it is called with, and room for its answer.
        let code = unsafe { get_next(&raw mut self.stream, &raw mut array) };
        if code != 0 {
            return Err(told(&mut self.stream, code));
        }
        if array.is_released() {
            return Ok(None);
        }
        // SAFETY: the array comes from the stream of this schema.
        unsafe { batch_of(array, &self.schema) }.map(Some)
    }
}

/// What a producer says of its last call, which failed.
fn told(stream: &mut FFI_ArrowArrayStream, code: i32) -> ImportError {
    let said = stream.get_last_error().and_then(|get_last_error| {
        // SAFETY: a callback of the stream it is called with, whose last call failed.
        let text = unsafe { get_last_error(&raw mut *stream) };
        // SAFETY: not null, it is text that stays until the next call.
        (!text.is_null()).then(|| {
            unsafe { CStr::from_ptr(text) }
                .to_string_lossy()
                .into_owned()
        })
    });
    ImportError(match said {
        Some(said) => format!("the producer failed with {code}: {said}"),
        None => format!("the producer failed with {code}"),
    })
}

impl Iterator for Incoming {
    type Item = Result<RecordBatch, ImportError>;

    fn next(&mut self) -> Option<Self::Item> {
        if self.ended {
            return None;
        }
        let batch = guarded(|| self.read()).transpose();
        self.ended = !matches!(batch, Some(Ok(_)));
        batch
    }
}

/// The batch, once every column has been checked in full.
fn checked(batch: RecordBatch) -> Result<RecordBatch, ImportError> {
    for (column, field) in batch.columns().iter().zip(batch.schema().fields()) {
        column
            .to_data()
            .validate_full()
            .map_err(|error| ImportError(format!("column {}: {error}", field.name())))?;
    }
    Ok(batch)
}

/// The schema of a table, from that of its struct arrays.
///
/// # Errors
/// It is no schema of a struct.
pub fn schema_from_ffi(schema: &FFI_ArrowSchema) -> Result<Schema, ImportError> {
    if schema.release().is_none() {
        return Err(ImportError::new("the schema is spent"));
    }
    guarded(|| Schema::try_from(schema).map_err(ImportError::new))
}

/// A batch from one struct array of the C data interface.
///
/// # Errors
/// The array is no struct, or its data contradict its schema.
///
/// # Safety
/// Both follow the Arrow C data interface.
pub unsafe fn batch_from_ffi(
    array: FFI_ArrowArray,
    schema: &FFI_ArrowSchema,
) -> Result<RecordBatch, ImportError> {
    let schema = Arc::new(schema_from_ffi(schema)?);
    // SAFETY: the same promise.
    unsafe { batch_of(array, &schema) }
}

/// A batch from one struct array whose schema was read.
///
/// # Errors
/// The data contradict the schema.
///
/// # Safety
/// The array follows the Arrow C data interface and belongs to the schema.
pub unsafe fn batch_of(
    array: FFI_ArrowArray,
    schema: &SchemaRef,
) -> Result<RecordBatch, ImportError> {
    guarded(|| {
        if array.is_released() {
            return Err(ImportError::new("the array is spent"));
        }
        let data_type = DataType::Struct(schema.fields().clone());
        extents::check(&array, &data_type)?;
        // SAFETY: the caller promises an array of the C data interface.
        let data = unsafe { arrow_array::ffi::from_ffi_and_data_type(array, data_type) }
            .map_err(ImportError::new)?;
        let rows = data.len();
        for (child, field) in data.child_data().iter().zip(schema.fields()) {
            if child.len() < data.offset() + rows {
                let text = format!("column {}: fewer rows than the table", field.name());
                return Err(ImportError(text));
            }
        }
        let columns = data
            .child_data()
            .iter()
            .map(|child| make_array(child.slice(data.offset(), rows)))
            .collect();
        if data.nulls().is_some_and(|nulls| nulls.null_count() > 0) {
            return Err(ImportError::new("rows that are null as a whole"));
        }
        let options = RecordBatchOptions::new().with_row_count(Some(rows));
        RecordBatch::try_new_with_options(schema.clone(), columns, &options)
            .map_err(ImportError::new)
            .and_then(checked)
    })
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use arrow_array::{ArrayRef, Float64Array, RecordBatchIterator, StringArray, StructArray};

    fn batch() -> RecordBatch {
        let numbers: ArrayRef = Arc::new(Float64Array::from(vec![Some(1.0), None, Some(3.0)]));
        let texts: ArrayRef = Arc::new(StringArray::from(vec![Some("a"), Some("b"), None]));
        RecordBatch::try_from_iter([("number", numbers), ("text", texts)]).unwrap()
    }

    #[test]
    fn what_goes_out_comes_back() {
        let batch = batch();
        let whole = vec![batch.clone(), batch.slice(1, 2), batch.slice(0, 0)];
        let stream = outgoing(batch.schema(), whole.clone());
        let incoming = Incoming::new(stream).unwrap();
        assert_eq!(incoming.schema(), batch.schema());
        let back: Vec<RecordBatch> = incoming.collect::<Result<_, _>>().unwrap();
        assert_eq!(back, whole);
    }

    #[test]
    fn no_stream_and_a_spent_one_are_errors() {
        // SAFETY: null is admitted.
        let none = unsafe { Incoming::from_raw(core::ptr::null_mut()) };
        assert!(none.unwrap_err().to_string().contains("null"));
        let mut stream = outgoing(batch().schema(), vec![batch()]);
        // SAFETY: a live stream of our own.
        let first = unsafe { Incoming::from_raw(&raw mut stream) }.unwrap();
        assert_eq!(first.count(), 1);
        // SAFETY: taking it over left an empty one.
        assert!(unsafe { Incoming::from_raw(&raw mut stream) }.is_err());
    }

    #[test]
    fn a_failing_producer_ends_the_stream() {
        let schema = batch().schema();
        let failing = vec![
            Ok(batch()),
            Err(arrow_schema::ArrowError::ComputeError("no more".into())),
        ];
        let reader = RecordBatchIterator::new(failing, schema);
        let mut incoming = Incoming::new(FFI_ArrowArrayStream::new(Box::new(reader))).unwrap();
        assert!(incoming.next().unwrap().is_ok());
        let error = incoming.next().unwrap().unwrap_err();
        assert!(error.to_string().contains("no more"), "{error}");
        assert!(incoming.next().is_none());
    }

    #[test]
    fn a_sliced_struct_array_is_a_batch() {
        let batch = batch();
        let array = StructArray::from(batch.clone()).slice(1, 2);
        let (array, schema) = arrow_array::ffi::to_ffi(&array.to_data()).unwrap();
        // SAFETY: a pair of our own.
        let back = unsafe { batch_from_ffi(array, &schema) }.unwrap();
        assert_eq!(back, batch.slice(1, 2));
        let numbers = Float64Array::from(vec![1.0]);
        let (array, schema) = arrow_array::ffi::to_ffi(&numbers.to_data()).unwrap();
        // SAFETY: likewise.
        assert!(unsafe { batch_from_ffi(array, &schema) }.is_err());
    }
}
