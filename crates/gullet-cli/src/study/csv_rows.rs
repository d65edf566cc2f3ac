//! Rows into CSV: the shortest text of each number, nothing for null.

use crate::files;
use arrow_array::cast::AsArray;
use arrow_array::types::{
    Date32Type, Float32Type, Float64Type, Int8Type, Int16Type, Int32Type, Int64Type,
    TimestampMicrosecondType, TimestampMillisecondType, TimestampNanosecondType,
    TimestampSecondType, UInt8Type, UInt16Type, UInt32Type, UInt64Type,
};
use arrow_array::{Array, ArrayRef, RecordBatch};
use arrow_schema::{DataType, Schema, TimeUnit};
use csv::{Writer, WriterBuilder};
use gullet::error::{Code, Error, Problem, Result};
use std::fmt::Write as _;
use std::io::Write;

/// A CSV file that is being written.
pub struct CsvRows<W: Write> {
    name: String,
    writer: Writer<W>,
    cell: String,
}

impl<W: Write> CsvRows<W> {
    /// Writes the header.
    ///
    /// # Errors
    /// `WrongType` for every column that CSV does not hold.
    pub fn new(name: &str, file: W, schema: &Schema) -> Result<CsvRows<W>> {
        let problems = schema
            .fields()
            .iter()
            .filter(|field| !is_known(field.data_type()))
            .map(|field| {
                Problem::new(
                    Code::WrongType,
                    field.name(),
                    format!("a column of {}", field.data_type()),
                    "text, numbers, booleans, dates and timestamps without a zone",
                    "write Parquet, or leave the column out",
                )
            })
            .collect();
        Error::unless_empty(problems, ())?;
        let mut rows = CsvRows {
            name: files::shown(name).to_owned(),
            writer: WriterBuilder::new()
                .buffer_capacity(1 << 18)
                .from_writer(file),
            cell: String::new(),
        };
        let names = schema.fields().iter().map(|field| field.name().as_bytes());
        let written = rows.writer.write_record(names);
        written.map_err(|error| rows.unwritable(error))?;
        Ok(rows)
    }

    pub fn write(&mut self, rows: &RecordBatch) -> Result<()> {
        for row in 0..rows.num_rows() {
            for column in rows.columns() {
                self.cell.clear();
                cell(&mut self.cell, column, row);
                let written = self.writer.write_field(self.cell.as_bytes());
                written.map_err(|error| self.unwritable(error))?;
            }
            let written = self.writer.write_record(None::<&[u8]>);
            written.map_err(|error| self.unwritable(error))?;
        }
        Ok(())
    }

    /// What is still in memory.
    pub fn end(mut self) -> Result<W> {
        let name = self.name.clone();
        let failed = move |error: &std::io::Error| Error::from(files::unwritable(&name, error));
        self.writer.flush().map_err(|error| failed(&error))?;
        self.writer
            .into_inner()
            .map_err(|error| failed(error.error()))
    }

    fn unwritable(&self, error: csv::Error) -> Error {
        match error.into_kind() {
            csv::ErrorKind::Io(error) => files::unwritable(&self.name, &error).into(),
            other => Problem::new(
                Code::File,
                &self.name,
                format!("{other:?}"),
                "",
                "write elsewhere",
            )
            .into(),
        }
    }
}

fn is_known(data_type: &DataType) -> bool {
    match data_type {
        DataType::Dictionary(_, values) => is_known(values),
        DataType::Utf8
        | DataType::LargeUtf8
        | DataType::Utf8View
        | DataType::Boolean
        | DataType::Float32
        | DataType::Float64
        | DataType::Date32
        | DataType::Timestamp(_, None)
        | DataType::Null => true,
        other => other.is_integer(),
    }
}

/// The text of a cell; nothing for null.
fn cell(text: &mut String, array: &ArrayRef, row: usize) {
    if array.is_null(row) {
        return;
    }
    macro_rules! plain {
        ($type:ty) => {
            array
                .as_primitive_opt::<$type>()
                .map(|array| write!(text, "{}", array.value(row)))
        };
    }
    macro_rules! moment {
        ($type:ty) => {
            array
                .as_primitive_opt::<$type>()
                .and_then(|array| array.value_as_datetime(row))
                .map(|moment| write!(text, "{}", moment.format("%Y-%m-%dT%H:%M:%S%.f")))
        };
    }
    let _ = match array.data_type() {
        DataType::Utf8 => array.as_string_opt::<i32>().map(|array| {
            text.push_str(array.value(row));
            Ok(())
        }),
        DataType::LargeUtf8 => array.as_string_opt::<i64>().map(|array| {
            text.push_str(array.value(row));
            Ok(())
        }),
        DataType::Utf8View => array.as_string_view_opt().map(|array| {
            text.push_str(array.value(row));
            Ok(())
        }),
        DataType::Dictionary(..) => array.as_any_dictionary_opt().map(|array| {
            if let Some(place) = key(array.keys(), row) {
                cell(text, array.values(), place);
            }
            Ok(())
        }),
        DataType::Float64 => array
            .as_primitive_opt::<Float64Type>()
            .map(|array| number(text, array.value(row))),
        DataType::Float32 => array.as_primitive_opt::<Float32Type>().map(|array| {
            let value = array.value(row);
            if (1e-5..1e16).contains(&value.abs()) || value == 0.0 {
                write!(text, "{value}")
            } else {
                write!(text, "{value:e}")
            }
        }),
        DataType::Boolean => array
            .as_boolean_opt()
            .map(|array| write!(text, "{}", array.value(row))),
        DataType::Int8 => plain!(Int8Type),
        DataType::Int16 => plain!(Int16Type),
        DataType::Int32 => plain!(Int32Type),
        DataType::Int64 => plain!(Int64Type),
        DataType::UInt8 => plain!(UInt8Type),
        DataType::UInt16 => plain!(UInt16Type),
        DataType::UInt32 => plain!(UInt32Type),
        DataType::UInt64 => plain!(UInt64Type),
        DataType::Date32 => array
            .as_primitive_opt::<Date32Type>()
            .and_then(|array| array.value_as_date(row))
            .map(|date| write!(text, "{date}")),
        DataType::Timestamp(TimeUnit::Second, _) => moment!(TimestampSecondType),
        DataType::Timestamp(TimeUnit::Millisecond, _) => moment!(TimestampMillisecondType),
        DataType::Timestamp(TimeUnit::Microsecond, _) => moment!(TimestampMicrosecondType),
        DataType::Timestamp(TimeUnit::Nanosecond, _) => moment!(TimestampNanosecondType),
        _ => None,
    };
}

/// Where a key points.
fn key(keys: &dyn Array, row: usize) -> Option<usize> {
    macro_rules! place {
        ($type:ty) => {
            keys.as_primitive_opt::<$type>()
                .and_then(|keys| usize::try_from(keys.value(row)).ok())
        };
    }
    match keys.data_type() {
        DataType::Int8 => place!(Int8Type),
        DataType::Int16 => place!(Int16Type),
        DataType::Int32 => place!(Int32Type),
        DataType::Int64 => place!(Int64Type),
        DataType::UInt8 => place!(UInt8Type),
        DataType::UInt16 => place!(UInt16Type),
        DataType::UInt32 => place!(UInt32Type),
        DataType::UInt64 => place!(UInt64Type),
        _ => None,
    }
}

/// The shortest text that reads back to the same bits.
fn number(text: &mut String, value: f64) -> core::fmt::Result {
    if (1e-5..1e16).contains(&value.abs()) || value == 0.0 || !value.is_finite() {
        write!(text, "{value}")
    } else {
        write!(text, "{value:e}")
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn numbers_read_back_to_the_same_bits() {
        for value in [0.1, 1.0, 12.7, 1e-7, 1e300, 5e-324, 123_456.789, -0.0, 1e16] {
            let mut text = String::new();
            number(&mut text, value).unwrap();
            assert_eq!(
                text.parse::<f64>().unwrap().to_bits(),
                value.to_bits(),
                "{text}"
            );
            assert!(text.len() < 25, "{text}");
        }
    }
}
