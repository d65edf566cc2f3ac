//! Rows of a Parquet file, and rows into one.

use super::{BATCH, Batch, Places};
use crate::files;
use arrow_array::RecordBatch;
use arrow_schema::{DataType, Schema, SchemaRef};
use gullet::error::{Code, Error, Problem, Result};
use parquet::arrow::ArrowWriter;
use parquet::arrow::arrow_reader::{ParquetRecordBatchReader, ParquetRecordBatchReaderBuilder};
use parquet::basic::Compression;
use parquet::errors::ParquetError;
use parquet::file::properties::{EnabledStatistics, WriterProperties};
use parquet::schema::types::ColumnPath;
use std::fs::File;
use std::io::Write;

/// Rows of a row group: its columns are held in memory until it is full.
const GROUP: usize = 256 * 1024;

/// Rows of a file, read page by page.
pub struct ParquetTable {
    name: String,
    reader: ParquetRecordBatchReader,
    schema: SchemaRef,
    rows: u64,
    read: u64,
}

impl ParquetTable {
    pub fn new(name: &str, file: File) -> Result<ParquetTable> {
        let builder = ParquetRecordBatchReaderBuilder::try_new(file)
            .map_err(|error| unreadable(name, &error))?
            .with_batch_size(BATCH);
        let schema = builder.schema().clone();
        let rows = builder.metadata().file_metadata().num_rows();
        let reader = builder.build().map_err(|error| unreadable(name, &error))?;
        Ok(ParquetTable {
            name: name.to_owned(),
            reader,
            schema,
            rows: rows.max(0).unsigned_abs(),
            read: 0,
        })
    }

    pub fn schema(&self) -> &Schema {
        &self.schema
    }

    pub fn rows(&self) -> u64 {
        self.rows
    }

    pub fn next(&mut self) -> Option<Result<Batch>> {
        let rows = match self.reader.next()? {
            Ok(rows) => rows,
            Err(error) => return Some(Err(unreadable(&self.name, &error).into())),
        };
        let first = self.read + 1;
        self.read += rows.num_rows() as u64;
        Some(Ok(Batch {
            rows,
            marked: Vec::new(),
            places: Places::From(first),
            share: None,
            first: 0,
        }))
    }
}

fn unreadable(name: &str, error: &dyn core::fmt::Display) -> Problem {
    Problem::new(
        Code::File,
        name,
        error.to_string(),
        "a whole Parquet file, plain or compressed with snappy or zstd",
        "write the file again",
    )
}

/// A Parquet file that is being written.
pub struct ParquetRows<W: Write + Send> {
    name: String,
    writer: ArrowWriter<W>,
}

impl<W: Write + Send> ParquetRows<W> {
    pub fn new(name: &str, file: W, schema: SchemaRef) -> Result<ParquetRows<W>> {
        let mut properties = WriterProperties::builder()
            .set_compression(Compression::SNAPPY)
            .set_max_row_group_row_count(Some(GROUP))
            .set_statistics_enabled(EnabledStatistics::Chunk);
        for field in schema.fields() {
            // Numbers of a cut rarely repeat; their dictionary would cost time and save nothing.
            if *field.data_type() == DataType::Float64 {
                let path = ColumnPath::from(field.name().as_str());
                properties = properties.set_column_dictionary_enabled(path, false);
            }
        }
        let writer = ArrowWriter::try_new(file, schema, Some(properties.build()))
            .map_err(|error| unwritable(name, error))?;
        Ok(ParquetRows {
            name: name.to_owned(),
            writer,
        })
    }

    pub fn write(&mut self, rows: &RecordBatch) -> Result<()> {
        self.writer
            .write(rows)
            .map_err(|error| unwritable(&self.name, error))
    }

    /// The footer, without which the file is none.
    pub fn end(self) -> Result<W> {
        self.writer
            .into_inner()
            .map_err(|error| unwritable(&self.name, error))
    }
}

fn unwritable(name: &str, error: ParquetError) -> Error {
    let error = match error {
        ParquetError::External(source) => match source.downcast::<std::io::Error>() {
            Ok(error) => return files::unwritable(name, &error).into(),
            Err(source) => source.to_string(),
        },
        other => other.to_string(),
    };
    Problem::new(
        Code::File,
        name,
        error,
        "columns that Parquet holds",
        "leave out or convert the column",
    )
    .into()
}
