//! Columns of numbers: by their validity, never by what stands behind a null.

use crate::choice::text_at;
use crate::options::TextNumbers;
use arrow_array::cast::AsArray;
use arrow_array::types::{
    Float32Type, Float64Type, Int8Type, Int16Type, Int32Type, Int64Type, UInt8Type, UInt16Type,
    UInt32Type, UInt64Type,
};
use arrow_array::{Array, ArrayRef, ArrowPrimitiveType};
use arrow_buffer::NullBuffer;
use arrow_schema::DataType;
use gullet::error::{Code, Problem};
use gullet::quantity::parse_number;

/// The numbers of a column.
pub(crate) struct Numbers {
    /// One a row; anything where there is none.
    pub values: Vec<f64>,
    /// Which rows have one; all where absent.
    pub valid: Option<NullBuffer>,
    /// Text that is no number, by row.
    pub unreadable: Vec<(usize, Problem)>,
}

impl Numbers {
    pub(crate) fn is_null(&self, row: usize) -> bool {
        self.valid.as_ref().is_some_and(|valid| valid.is_null(row))
    }
}

/// Whether numbers can be read from a column of this type.
pub(crate) fn check_type(
    name: &str,
    data_type: &DataType,
    text: TextNumbers,
) -> Result<(), Problem> {
    let (found, remedy) = match data_type {
        DataType::Float64 | DataType::Float32 => return Ok(()),
        whole if whole.is_integer() => return Ok(()),
        DataType::Utf8 | DataType::LargeUtf8 | DataType::Utf8View => {
            if text != TextNumbers::Refused {
                return Ok(());
            }
            (
                "text",
                "read the text as float64 before it comes here: whether 1,250 is a thousand or one and a quarter is for its owner to say",
            )
        }
        DataType::Decimal32(..)
        | DataType::Decimal64(..)
        | DataType::Decimal128(..)
        | DataType::Decimal256(..) => (
            "decimals",
            "convert the column to float64 before it comes here, so that the rounding is yours",
        ),
        DataType::Float16 => (
            "float16",
            "convert the column to float64: three digits are too few for a cut",
        ),
        DataType::Null => (
            "nothing but nulls",
            "give the column the type float64, or leave it out",
        ),
        DataType::Boolean => ("booleans", "give numbers"),
        _ => (
            "no numbers",
            "convert the column to float64 before it comes here",
        ),
    };
    Err(Problem::new(
        Code::WrongType,
        name,
        format!("{found} ({data_type})"),
        "float64, float32 or integers",
        remedy,
    ))
}

/// The numbers of a column whose type was checked.
pub(crate) fn read(array: &ArrayRef) -> Numbers {
    let values = match array.data_type() {
        DataType::Float64 => primitive::<Float64Type>(array, |v| v),
        DataType::Float32 => primitive::<Float32Type>(array, f64::from),
        DataType::Int8 => primitive::<Int8Type>(array, f64::from),
        DataType::Int16 => primitive::<Int16Type>(array, f64::from),
        DataType::Int32 => primitive::<Int32Type>(array, f64::from),
        DataType::Int64 => primitive::<Int64Type>(array, |v| v as f64),
        DataType::UInt8 => primitive::<UInt8Type>(array, f64::from),
        DataType::UInt16 => primitive::<UInt16Type>(array, f64::from),
        DataType::UInt32 => primitive::<UInt32Type>(array, f64::from),
        DataType::UInt64 => primitive::<UInt64Type>(array, |v| v as f64),
        _ => return texts(array),
    };
    Numbers {
        values,
        valid: array
            .nulls()
            .filter(|nulls| nulls.null_count() > 0)
            .cloned(),
        unreadable: Vec::new(),
    }
}

fn primitive<T: ArrowPrimitiveType>(array: &ArrayRef, double: fn(T::Native) -> f64) -> Vec<f64> {
    array
        .as_primitive_opt::<T>()
        .map(|array| array.values().iter().map(|value| double(*value)).collect())
        .unwrap_or_default()
}

/// Text cell by cell; empty cells are none.
fn texts(array: &ArrayRef) -> Numbers {
    let mut values = vec![0.0; array.len()];
    let mut valid = vec![true; array.len()];
    let mut unreadable = Vec::new();
    for (row, (value, valid)) in values.iter_mut().zip(&mut valid).enumerate() {
        match text_at(array, row).map(str::trim) {
            None | Some("") => *valid = false,
            Some(text) => match number(text) {
                Ok(number) => *value = number,
                Err(problem) => {
                    unreadable.push((row, problem));
                }
            },
        }
    }
    let valid = NullBuffer::from(valid);
    Numbers {
        values,
        valid: (valid.null_count() > 0).then_some(valid),
        unreadable,
    }
}

/// A plain decimal at once, everything else a person writes (`1/2`, `1-1/4`) by the careful way.
fn number(text: &str) -> Result<f64, Problem> {
    let plain = text
        .bytes()
        .all(|byte| byte.is_ascii_digit() || matches!(byte, b'.' | b'-' | b'+' | b'e' | b'E'));
    if plain && let Ok(number) = text.parse::<f64>() {
        return Ok(number);
    }
    parse_number(text).map_err(|error| error.first().clone())
}

/// The same numbers as a column of their own.
pub(crate) fn as_column(numbers: &Numbers) -> arrow_array::Float64Array {
    let mut valid: Vec<bool> = (0..numbers.values.len())
        .map(|row| !numbers.is_null(row))
        .collect();
    for (row, _) in &numbers.unreadable {
        if let Some(slot) = valid.get_mut(*row) {
            *slot = false;
        }
    }
    arrow_array::Float64Array::new(numbers.values.clone().into(), Some(NullBuffer::from(valid)))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn cells_are_read_as_people_write_them() {
        for (text, value) in [
            ("2.5", 2.5),
            ("-.5", -0.5),
            ("1e-3", 0.001),
            ("1/2", 0.5),
            ("1-1/4", 1.25),
        ] {
            assert_eq!(number(text).unwrap(), value, "{text}");
        }
        for text in ["2,5", "1,250.5", "2.5 mm", "x", "1..2", "--", "1e"] {
            assert_eq!(
                number(text).unwrap_err().code,
                Code::NumberUnreadable,
                "{text}"
            );
        }
        for text in ["nan", "inf", "-Infinity"] {
            assert_eq!(number(text).unwrap_err().code, Code::NotFinite, "{text}");
        }
    }
}
