//! Tables made from listings of the core and from columns of Python.

use super::{KIND, MEANING, Table, UNIT};
use crate::array::Data;
use crate::errors::Fault;
use crate::quantity::{Quantity, quantity_of, system};
use arrow_array::builder::{ListBuilder, StringBuilder, StructBuilder};
use arrow_array::{
    ArrayRef, BooleanArray, Float64Array, Int64Array, RecordBatch, RecordBatchOptions, StringArray,
    UInt64Array,
};
use arrow_schema::{ArrowError, DataType, Field, Fields, Schema};
use gullet::error::unknown_name;
use gullet::listing::{Cell, Form, Listing};
use gullet::quantity::{Converter, Kind, Unit, UnitSystem, unit_behind};
use gullet::{Code, Problem};
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyDict, PyInt, PyList, PyString};
use std::collections::HashMap;
use std::sync::Arc;

/// The system named, else the one that is printed in.
pub fn system_named(py: Python<'_>, units: Option<&str>) -> Result<UnitSystem, Fault> {
    match units {
        None => Ok(system(py)?),
        Some("metric") => Ok(UnitSystem::Metric),
        Some("inch") => Ok(UnitSystem::Inch),
        Some(other) => Err(unknown_name("units", other, ["metric", "inch"]).into()),
    }
}

fn broken(error: &ArrowError) -> Fault {
    Problem::new(
        Code::Inconsistent,
        "",
        error.to_string(),
        "columns of one length",
        "give every column a cell for each row",
    )
    .into()
}

fn table(fields: Vec<Field>, columns: Vec<ArrayRef>, rows: usize) -> Result<Table, Fault> {
    let schema = Arc::new(Schema::new(fields));
    let options = RecordBatchOptions::new().with_row_count(Some(rows));
    let batch = RecordBatch::try_new_with_options(schema.clone(), columns, &options)
        .map_err(|error| broken(&error))?;
    let batches = if rows == 0 { Vec::new() } else { vec![batch] };
    Ok(Table { schema, batches })
}

/// Name with the unit and metadata of a column of quantities.
fn described(name: &str, kind: Kind, unit: &Unit, meaning: &str) -> Field {
    let suffix = unit.suffix();
    let name = if suffix.is_empty() || unit_behind(kind, name) == Some(unit) {
        name.to_owned()
    } else {
        format!("{name}_{suffix}")
    };
    let mut metadata = HashMap::new();
    if !unit.symbol.is_empty() {
        metadata.insert(UNIT.to_owned(), unit.symbol.to_owned());
        metadata.insert(KIND.to_owned(), kind.name().to_owned());
    }
    if !meaning.is_empty() {
        metadata.insert(MEANING.to_owned(), meaning.to_owned());
    }
    Field::new(name, DataType::Float64, true).with_metadata(metadata)
}

/// A listing with its numbers in the units of a system.
pub fn of_listing(listing: &Listing, system: UnitSystem) -> Result<Table, Fault> {
    let mut fields = Vec::new();
    let mut columns: Vec<ArrayRef> = Vec::new();
    for (place, column) in listing.columns.iter().enumerate() {
        let cells = || {
            listing
                .rows
                .iter()
                .map(|row| row.get(place).unwrap_or(&Cell::Empty))
        };
        let plain = |data_type: &DataType| {
            let metadata = HashMap::from([(MEANING.to_owned(), column.meaning.to_owned())]);
            Field::new(column.name, data_type.clone(), column.optional).with_metadata(metadata)
        };
        let numbers = |of: fn(&Cell) -> Option<f64>, unit: &Unit| -> ArrayRef {
            let converter = Converter::new(unit);
            let values = cells().map(|cell| of(cell).map(|si| converter.from_si(si)));
            Arc::new(values.collect::<Float64Array>())
        };
        let array: ArrayRef = match (column.form, column.unit(system)) {
            (Form::Number(kind), Some(unit)) => {
                fields.push(
                    described(column.name, kind, unit, column.meaning)
                        .with_nullable(column.optional),
                );
                columns.push(numbers(
                    |cell| match cell {
                        Cell::Number(value) => Some(*value),
                        _ => None,
                    },
                    unit,
                ));
                continue;
            }
            (Form::Range(kind), Some(unit)) => {
                let ends: [(&str, fn(&Cell) -> Option<f64>); 2] = [
                    ("low", |cell| match cell {
                        Cell::Range(low, _) => Some(*low),
                        _ => None,
                    }),
                    ("high", |cell| match cell {
                        Cell::Range(_, high) => Some(*high),
                        _ => None,
                    }),
                ];
                for (end, of) in ends {
                    let name = format!("{}_{end}", column.name);
                    fields.push(
                        described(&name, kind, unit, column.meaning).with_nullable(column.optional),
                    );
                    columns.push(numbers(of, unit));
                }
                continue;
            }
            (Form::Whole, _) => Arc::new(
                cells()
                    .map(|cell| match cell {
                        Cell::Whole(value) => Some(*value),
                        _ => None,
                    })
                    .collect::<UInt64Array>(),
            ),
            (Form::Flag, _) => Arc::new(
                cells()
                    .map(|cell| match cell {
                        Cell::Flag(value) => Some(*value),
                        _ => None,
                    })
                    .collect::<BooleanArray>(),
            ),
            (Form::Texts, _) => {
                let mut builder = ListBuilder::new(StringBuilder::new());
                for cell in cells() {
                    if let Cell::Texts(texts) = cell {
                        texts
                            .iter()
                            .for_each(|text| builder.values().append_value(text));
                    }
                    builder.append(matches!(cell, Cell::Texts(_)));
                }
                Arc::new(builder.finish())
            }
            (Form::Pairs, _) => pairs(cells()),
            _ => Arc::new(
                cells()
                    .map(|cell| match cell {
                        Cell::Text(text) => Some(text.as_str()),
                        _ => None,
                    })
                    .collect::<StringArray>(),
            ),
        };
        fields.push(plain(array.data_type()));
        columns.push(array);
    }
    table(fields, columns, listing.rows.len())
}

/// Lists of pairs of text, as lists of structs.
fn pairs<'a>(cells: impl Iterator<Item = &'a Cell>) -> ArrayRef {
    let text = |name| Field::new(name, DataType::Utf8, true);
    let fields = Fields::from(vec![text("of"), text("source")]);
    let mut builder = ListBuilder::new(StructBuilder::from_fields(fields, 0));
    for cell in cells {
        if let Cell::Pairs(pairs) = cell {
            for (first, second) in pairs {
                let row = builder.values();
                for (place, text) in [first, second].into_iter().enumerate() {
                    if let Some(column) = row.field_builder::<StringBuilder>(place) {
                        column.append_value(text);
                    }
                }
                row.append(true);
            }
        }
        builder.append(matches!(cell, Cell::Pairs(_)));
    }
    Arc::new(builder.finish())
}

/// A mapping of names to columns: arrays of quantities, numbers, texts or booleans.
pub fn of_columns(source: &Bound<'_, PyAny>, system: UnitSystem) -> Result<Table, Fault> {
    let mapping = source.cast::<PyDict>().map_err(|_| -> Fault {
        Problem::new(
            Code::WrongType,
            "",
            source
                .get_type()
                .name()
                .map_or_else(|_| "an object".to_owned(), |name| name.to_string()),
            "a table of Arrow, or a dictionary of columns",
            "write gullet.Table({\"diameter\": gullet.Quantity([6, 10], \"mm\")})",
        )
        .into()
    })?;
    let mut fields = Vec::new();
    let mut columns = Vec::new();
    let mut problems = Vec::new();
    for (name, value) in mapping.iter() {
        let name = name.str()?.to_string_lossy().into_owned();
        match column(&name, &value, system) {
            Ok((field, array)) => {
                let first = columns.first().map_or(array.len(), |c: &ArrayRef| c.len());
                if array.len() != first {
                    problems.push(Problem::new(
                        Code::Inconsistent,
                        name,
                        format!("{} cells", array.len()),
                        format!("{first} cells, as the first column"),
                        "give every column a cell for each row",
                    ));
                    continue;
                }
                fields.push(field);
                columns.push(array);
            }
            Err(fault) => fault.collect(&name, &mut problems)?,
        }
    }
    if !problems.is_empty() {
        return Err(Fault::Problems(problems));
    }
    let rows = columns.first().map_or(0, |column| column.len());
    table(fields, columns, rows)
}

fn column(
    name: &str,
    value: &Bound<'_, PyAny>,
    system: UnitSystem,
) -> Result<(Field, ArrayRef), Fault> {
    if value.is_instance_of::<Quantity>() || value.hasattr("m_as")? {
        return quantities(name, &quantity_of(value)?, system);
    }
    let items: Bound<'_, PyList> = if value.hasattr("tolist")? {
        value
            .call_method0("tolist")?
            .cast_into()
            .map_err(|_| single())?
    } else {
        match value.cast::<PyList>() {
            Ok(list) => list.clone(),
            Err(_) if value.is_instance_of::<PyString>() => return Err(single()),
            Err(_) => value
                .py()
                .get_type::<PyList>()
                .call1((value,))?
                .cast_into()
                .map_err(|_| single())?,
        }
    };
    let first = items.iter().find(|item| !item.is_none());
    let plain = |array: ArrayRef| Ok((Field::new(name, array.data_type().clone(), true), array));
    let Some(first) = first else {
        return plain(Arc::new(Float64Array::from(vec![None::<f64>; items.len()])));
    };
    if first.is_instance_of::<Quantity>() || first.hasattr("m_as")? {
        return quantities(name, &quantity_of(&items)?, system);
    }
    if first.is_instance_of::<PyString>() {
        let texts: Vec<Option<String>> = cells(&items)?;
        return plain(Arc::new(StringArray::from(texts)));
    }
    if first.is_instance_of::<PyBool>() {
        let flags: Vec<Option<bool>> = cells(&items)?;
        return plain(Arc::new(BooleanArray::from(flags)));
    }
    if items
        .iter()
        .all(|item| item.is_none() || item.is_instance_of::<PyInt>())
    {
        let whole: Vec<Option<i64>> = cells(&items)?;
        return plain(Arc::new(Int64Array::from(whole)));
    }
    let numbers: Vec<Option<f64>> = cells(&items)?;
    plain(Arc::new(Float64Array::from(numbers)))
}

/// Cells of one type.
fn cells<'py, T: FromPyObjectOwned<'py>>(
    items: &Bound<'py, PyList>,
) -> Result<Vec<Option<T>>, Fault> {
    let cell = |item: Bound<'py, PyAny>| {
        item.extract::<Option<T>>().map_err(|_| -> Fault {
            Problem::new(
                Code::WrongType,
                "",
                item.repr().map_or_else(
                    |_| "an object".to_owned(),
                    |text| text.to_string_lossy().chars().take(40).collect(),
                ),
                "cells of one type: text, booleans, integers of 64 bits, numbers or quantities",
                "give the column one type of cells, None where one is empty",
            )
            .into()
        })
    };
    items.iter().map(cell).collect()
}

fn single() -> Fault {
    Problem::new(
        Code::WrongType,
        "",
        "a single value",
        "a column: a list or an array with a cell for each row",
        "repeat the value for each row",
    )
    .into()
}

fn quantities(
    name: &str,
    quantity: &Quantity,
    system: UnitSystem,
) -> Result<(Field, ArrayRef), Fault> {
    let Data::Array(values, shape) = &quantity.data else {
        return Err(single());
    };
    if shape.len() != 1 {
        return Err(Problem::new(
            Code::WrongType,
            "",
            format!("an array of {} axes", shape.len()),
            "an array of one axis",
            "flatten it: one cell for each row",
        )
        .into());
    }
    // The unit that the name ends with, else the usual one.
    let unit = unit_behind(quantity.kind, name)
        .unwrap_or_else(|| gullet::quantity::column_unit(quantity.kind, system));
    let converter = Converter::new(unit);
    let cell = |si: &f64| si.is_finite().then(|| converter.from_si(*si));
    let array: Float64Array = values.iter().map(cell).collect();
    Ok((described(name, quantity.kind, unit, ""), Arc::new(array)))
}
