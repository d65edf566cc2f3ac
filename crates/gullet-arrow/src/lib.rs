//! Tables across the Arrow C interfaces, for the faces of Gullet.
//!
//! Everything unsafe that this takes lives here, each block with its reason, so that the Python
//! face has none. What comes in is checked in full before anybody reads it: offsets, lengths,
//! text in UTF-8. A producer's panic or fault becomes an [`ImportError`].

#[cfg(feature = "python")]
mod python;

#[cfg(feature = "python")]
pub use python::{Fault, import, lazy_stream_capsule, open_stream, schema_capsule, stream_capsule};

use arrow_array::ffi_stream::{FFI_ArrowArrayStream, RecordBatchStreamReader};
use arrow_array::{
    Array, RecordBatch, RecordBatchIterator, RecordBatchOptions, RecordBatchReader, make_array,
};
use arrow_schema::ffi::FFI_ArrowSchema;
use arrow_schema::{ArrowError, DataType, Schema, SchemaRef};
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
    reader: RecordBatchStreamReader,
    broken: bool,
}

impl Incoming {
    /// Begins to read a stream.
    ///
    /// # Errors
    /// The stream is spent, or its schema cannot be read.
    pub fn new(stream: FFI_ArrowArrayStream) -> Result<Incoming, ImportError> {
        guarded(|| {
            let reader = RecordBatchStreamReader::try_new(stream).map_err(ImportError::new)?;
            let broken = false;
            Ok(Incoming { reader, broken })
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
        self.reader.schema()
    }
}

impl Iterator for Incoming {
    type Item = Result<RecordBatch, ImportError>;

    fn next(&mut self) -> Option<Self::Item> {
        if self.broken {
            return None;
        }
        let batch = guarded(|| match self.reader.next() {
            None => Ok(None),
            Some(batch) => batch.map_err(ImportError::new).and_then(checked).map(Some),
        })
        .transpose();
        self.broken = matches!(batch, Some(Err(_)));
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

/// A batch from one struct array of the C data interface.
///
/// # Errors
/// The array is no struct, or its data contradict its schema.
///
/// # Safety
/// Both follow the Arrow C data interface.
pub unsafe fn batch_from_ffi(
    array: arrow_array::ffi::FFI_ArrowArray,
    schema: &FFI_ArrowSchema,
) -> Result<RecordBatch, ImportError> {
    guarded(|| {
        let schema = Schema::try_from(schema).map_err(ImportError::new)?;
        let data_type = DataType::Struct(schema.fields().clone());
        // SAFETY: the caller promises an array of the C data interface.
        let data = unsafe { arrow_array::ffi::from_ffi_and_data_type(array, data_type) }
            .map_err(ImportError::new)?;
        let rows = data.len();
        let columns = data
            .child_data()
            .iter()
            .map(|child| make_array(child.slice(data.offset(), rows)))
            .collect();
        if data.nulls().is_some_and(|nulls| nulls.null_count() > 0) {
            return Err(ImportError::new("rows that are null as a whole"));
        }
        let options = RecordBatchOptions::new().with_row_count(Some(rows));
        RecordBatch::try_new_with_options(Arc::new(schema), columns, &options)
            .map_err(ImportError::new)
            .and_then(checked)
    })
}

/// A stream over batches that are at hand, so that reading it cannot fail.
pub fn outgoing(schema: SchemaRef, batches: Vec<RecordBatch>) -> FFI_ArrowArrayStream {
    let reader = RecordBatchIterator::new(batches.into_iter().map(Ok), schema);
    FFI_ArrowArrayStream::new(Box::new(reader))
}

/// A stream over batches that are made while it is read. A panic in their making, which would end
/// the host program, becomes an error of the stream and its end.
pub fn outgoing_lazily<I>(schema: SchemaRef, batches: I) -> FFI_ArrowArrayStream
where
    I: Iterator<Item = Result<RecordBatch, ArrowError>> + Send + 'static,
{
    let guarded = Guarded {
        batches,
        broken: false,
    };
    FFI_ArrowArrayStream::new(Box::new(RecordBatchIterator::new(guarded, schema)))
}

struct Guarded<I> {
    batches: I,
    broken: bool,
}

impl<I: Iterator<Item = Result<RecordBatch, ArrowError>>> Iterator for Guarded<I> {
    type Item = Result<RecordBatch, ArrowError>;

    fn next(&mut self) -> Option<Self::Item> {
        if self.broken {
            return None;
        }
        let batch = catch_unwind(AssertUnwindSafe(|| self.batches.next())).unwrap_or_else(|_| {
            let text = "a fault while the batch was made";
            Some(Err(ArrowError::ComputeError(text.to_owned())))
        });
        self.broken = !matches!(batch, Some(Ok(_)));
        batch
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use arrow_array::{ArrayRef, Float64Array, StringArray, StructArray};

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
    #[allow(clippy::panic)]
    fn a_panic_in_a_lazy_stream_is_its_error_and_its_end() {
        let made = batch();
        let schema = made.schema();
        let mut left = 2;
        let batches = core::iter::from_fn(move || {
            left -= 1;
            match left {
                1 => Some(Ok(made.clone())),
                _ => panic!("planted"),
            }
        });
        let mut incoming = Incoming::new(outgoing_lazily(schema, batches)).unwrap();
        assert_eq!(incoming.next().unwrap().unwrap(), batch());
        let error = incoming.next().unwrap().unwrap_err();
        assert!(error.to_string().contains("a fault"), "{error}");
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
