//! Tables through pickles: the schema as JSON, each column as its buffers.

use super::Table;
use crate::errors::Fault;
use arrow_array::{Array, RecordBatch, RecordBatchOptions, make_array};
use arrow_buffer::Buffer;
use arrow_data::ArrayData;
use arrow_data::transform::MutableArrayData;
use arrow_schema::{DataType, Schema};
use gullet::{Code, Problem};
use pyo3::prelude::*;
use pyo3::types::{PyBytes, PyList, PyTuple};
use std::sync::Arc;

/// Schema, and for each batch its count of rows and its columns.
pub fn write<'py>(py: Python<'py>, table: &Table) -> PyResult<Bound<'py, PyTuple>> {
    let schema = serde_json::to_string(table.schema.as_ref())
        .map_err(|error| pyo3::exceptions::PyValueError::new_err(error.to_string()))?;
    let batches = PyList::empty(py);
    for batch in &table.batches {
        let columns = PyList::empty(py);
        for column in batch.columns() {
            // A copy of its own rows: a slice would drag its whole parent along.
            let data = column.to_data();
            let mut own = MutableArrayData::new(vec![&data], false, data.len());
            own.try_extend(0, 0, data.len())
                .map_err(|error| pyo3::exceptions::PyValueError::new_err(error.to_string()))?;
            columns.append(array(py, &own.freeze())?)?;
        }
        batches.append((batch.num_rows(), columns))?;
    }
    (schema, batches).into_pyobject(py)
}

type Buffers<'py> = Vec<Bound<'py, PyBytes>>;

fn array<'py>(py: Python<'py>, data: &ArrayData) -> PyResult<Bound<'py, PyTuple>> {
    let nulls = data.nulls().map(|nulls| {
        let bits = nulls.inner().sliced();
        PyBytes::new(py, bits.as_slice())
    });
    let buffers: Buffers<'py> = data
        .buffers()
        .iter()
        .map(|buffer| PyBytes::new(py, buffer.as_slice()))
        .collect();
    let children = PyList::empty(py);
    for child in data.child_data() {
        children.append(array(py, child)?)?;
    }
    (data.len(), data.offset(), nulls, buffers, children).into_pyobject(py)
}

fn broken(text: impl ToString) -> Fault {
    Problem::new(
        Code::WrongType,
        "",
        text.to_string(),
        "a pickled table",
        "pickle it again",
    )
    .into()
}

pub fn read(schema: &str, batches: &Bound<'_, PyList>) -> Result<Table, Fault> {
    let schema: Schema = serde_json::from_str(schema).map_err(broken)?;
    let schema = Arc::new(schema);
    let mut read = Vec::new();
    for batch in batches.iter() {
        let (rows, columns): (usize, Vec<Bound<'_, PyAny>>) = batch.extract()?;
        let columns = schema
            .fields()
            .iter()
            .zip(columns)
            .map(|(field, column)| Ok(make_array(array_data(field.data_type(), &column)?)))
            .collect::<Result<Vec<_>, Fault>>()?;
        let options = RecordBatchOptions::new().with_row_count(Some(rows));
        let batch = RecordBatch::try_new_with_options(schema.clone(), columns, &options);
        read.push(batch.map_err(broken)?);
    }
    let batches = read;
    Ok(Table { schema, batches })
}

fn array_data(data_type: &DataType, any: &Bound<'_, PyAny>) -> Result<ArrayData, Fault> {
    type Parts<'py> = (
        usize,
        usize,
        Option<Bound<'py, PyBytes>>,
        Buffers<'py>,
        Vec<Bound<'py, PyAny>>,
    );
    let (length, offset, nulls, buffers, children): Parts<'_> = any.extract()?;
    let bytes = |bytes: &Bound<'_, PyBytes>| {
        // Aligned for any type, as a vector of bytes need not be.
        let mut buffer = arrow_buffer::MutableBuffer::new(bytes.as_bytes().len());
        buffer.extend_from_slice(bytes.as_bytes());
        Buffer::from(buffer)
    };
    let types: Vec<&DataType> = match data_type {
        DataType::List(field)
        | DataType::LargeList(field)
        | DataType::ListView(field)
        | DataType::LargeListView(field)
        | DataType::FixedSizeList(field, _)
        | DataType::Map(field, _) => vec![field.data_type()],
        DataType::Struct(fields) => fields.iter().map(|field| field.data_type()).collect(),
        DataType::Dictionary(_, values) => vec![values.as_ref()],
        DataType::RunEndEncoded(ends, values) => vec![ends.data_type(), values.data_type()],
        _ => Vec::new(),
    };
    let children = types
        .into_iter()
        .zip(&children)
        .map(|(data_type, child)| array_data(data_type, child))
        .collect::<Result<Vec<_>, _>>()?;
    // Nulls are stored from the first row on, buffers from their own start.
    let nulls = nulls.map(|nulls| {
        let bits = bytes(&nulls);
        arrow_buffer::NullBuffer::new(arrow_buffer::BooleanBuffer::new(bits, 0, length))
    });
    let builder = ArrayData::builder(data_type.clone())
        .len(length)
        .offset(offset)
        .nulls(nulls)
        .buffers(buffers.iter().map(bytes).collect())
        .child_data(children);
    let data = builder.build().map_err(broken)?;
    data.validate_full().map_err(broken)?;
    Ok(data)
}
