//! Tables that go out: streams, arrays and schemas for other programs.

use crate::{FFI_ArrowArray, FFI_ArrowArrayStream, FFI_ArrowSchema, ImportError};
use arrow_array::{Array, RecordBatch, RecordBatchIterator, RecordBatchReader, StructArray};
use arrow_schema::{ArrowError, Schema, SchemaRef};
use std::panic::{AssertUnwindSafe, catch_unwind};

/// A stream over batches that are at hand, so that reading it cannot fail.
pub fn outgoing(schema: SchemaRef, batches: Vec<RecordBatch>) -> FFI_ArrowArrayStream {
    let reader = RecordBatchIterator::new(batches.into_iter().map(Ok), schema);
    FFI_ArrowArrayStream::new(Box::new(reader))
}

/// What gives the batches of a stream: none at its end, text where it fails.
type Next = Box<dyn FnMut() -> Option<Result<RecordBatch, String>> + Send>;

/// Reads what is computed; ends at its first failure.
struct Computed {
    schema: SchemaRef,
    next: Option<Next>,
}

impl Iterator for Computed {
    type Item = Result<RecordBatch, ArrowError>;

    fn next(&mut self) -> Option<Self::Item> {
        let next = self.next.as_mut()?;
        // A panic must not reach the consumer's code, nor a NUL its text.
        let batch = catch_unwind(AssertUnwindSafe(next))
            .unwrap_or_else(|_| Some(Err("a fault of the library".to_owned())));
        match batch {
            Some(Ok(batch)) if batch.schema_ref() == &self.schema => Some(Ok(batch)),
            None => {
                self.next = None;
                None
            }
            other => {
                self.next = None;
                let text = match other {
                    Some(Err(text)) => text.replace('\0', "\\0"),
                    _ => "a batch of another schema than the stream's".to_owned(),
                };
                Some(Err(ArrowError::ComputeError(text)))
            }
        }
    }
}

impl RecordBatchReader for Computed {
    fn schema(&self) -> SchemaRef {
        self.schema.clone()
    }
}

/// A stream whose batches are computed when they are asked for. It ends at the first failure.
pub fn computed(
    schema: SchemaRef,
    next: impl FnMut() -> Option<Result<RecordBatch, String>> + Send + 'static,
) -> FFI_ArrowArrayStream {
    let next: Option<Next> = Some(Box::new(next));
    FFI_ArrowArrayStream::new(Box::new(Computed { schema, next }))
}

/// A batch as a struct array of the C data interface.
pub fn array_of(batch: RecordBatch) -> FFI_ArrowArray {
    FFI_ArrowArray::new(&StructArray::from(batch).to_data())
}

/// A schema of the C data interface.
///
/// # Errors
/// Names that the interface cannot hold.
pub fn schema_of(schema: &Schema) -> Result<FFI_ArrowSchema, ImportError> {
    FFI_ArrowSchema::try_from(schema).map_err(ImportError::new)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::panic)]
    use super::*;
    use crate::Incoming;
    use arrow_array::{ArrayRef, Float64Array};
    use std::sync::Arc;

    fn batch() -> RecordBatch {
        let numbers: ArrayRef = Arc::new(Float64Array::from(vec![Some(1.0), None]));
        RecordBatch::try_from_iter_with_nullable([("number", numbers, true)]).unwrap()
    }

    fn read(
        batches: Vec<Option<Result<RecordBatch, String>>>,
    ) -> Vec<Result<RecordBatch, ImportError>> {
        let mut batches = batches.into_iter();
        let stream = computed(batch().schema(), move || batches.next().flatten());
        Incoming::new(stream).unwrap().collect()
    }

    #[test]
    fn batches_are_computed_until_the_first_failure() {
        assert_eq!(read(vec![Some(Ok(batch())), None]), [Ok(batch())]);
        let failed = read(vec![Some(Err("no\0more".to_owned())), Some(Ok(batch()))]);
        assert_eq!(failed.len(), 1);
        let error = failed[0].as_ref().unwrap_err().to_string();
        assert!(error.contains("no\\0more"), "{error}");
    }

    #[test]
    fn neither_panics_nor_other_schemas_go_out() {
        let other = batch().project(&[]).unwrap();
        assert!(read(vec![Some(Ok(other))])[0].is_err());
        let stream = computed(batch().schema(), || panic!("on purpose"));
        let all: Vec<_> = Incoming::new(stream).unwrap().collect();
        assert!(all.len() == 1 && all[0].is_err());
    }
}
