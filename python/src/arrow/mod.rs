//! `gullet.Table`: columns in the form of Apache Arrow, in and out without a copy.

mod build;
mod column;
mod pickle;

pub use build::{of_columns, of_listing, system_named};
use column::numbers;

use crate::array::Data;
use crate::errors::Fault;
use crate::quantity::{Quantity, escaped, kind_named};
use arrow_array::{Array, RecordBatch};
use arrow_schema::{FieldRef, SchemaRef};
use gullet::error::unknown_name;
use gullet::quantity::{Converter, UnitSystem, unit};
use gullet::{Code, Problem};
use pyo3::prelude::*;
use pyo3::types::{PyCapsule, PyDict, PyIterator, PyList, PyTuple};

/// Key of a field's metadata: the unit its plain numbers are in.
pub const UNIT: &str = "unit";
/// Key of a field's metadata: the kind of quantity.
pub const KIND: &str = "kind";
/// Key of a field's metadata: what the column is.
pub const MEANING: &str = "meaning";

/// Columns in the form of Apache Arrow; pandas, polars, pyarrow and duckdb take it as it is.
///
/// Made of a table of any library that exports Arrow, or of a dictionary of columns. Plain numbers
/// are in the unit that the name ends with and the field's metadata tells.
///
/// >>> import gullet
/// >>> table = gullet.Table({"diameter": gullet.Quantity([6, 12.7], "mm"), "name": ["a", "b"]})
/// >>> table.column_names
/// ['diameter_mm', 'name']
/// >>> table["diameter_mm"]
/// Quantity('[6, 12.7] mm')
/// >>> list(table)[0]
/// {'diameter_mm': 6.0, 'name': 'a'}
#[pyclass(frozen, module = "gullet", name = "Table")]
pub struct Table {
    pub schema: SchemaRef,
    pub batches: Vec<RecordBatch>,
}

/// What an object of Arrow brings, or none where it is no such object.
pub fn taken(any: &Bound<'_, PyAny>) -> Result<Option<Table>, Fault> {
    let found = gullet_arrow::import(any).map_err(no_arrow)?;
    Ok(found.map(|(schema, batches)| Table { schema, batches }))
}

/// What stops an import.
pub fn no_arrow(fault: gullet_arrow::Fault) -> Fault {
    match fault {
        gullet_arrow::Fault::Python(error) => error.into(),
        gullet_arrow::Fault::Data(error) => broken_table(&error).into(),
    }
}

/// The problem of data that are no table.
pub fn broken_table(error: &gullet_arrow::ImportError) -> Problem {
    Problem::new(
        Code::WrongType,
        "",
        error.to_string(),
        "a table of Arrow: a stream of record batches, or one struct array",
        "have the library that made it check it",
    )
}

impl Table {
    pub fn rows(&self) -> usize {
        self.batches.iter().map(RecordBatch::num_rows).sum()
    }

    /// Place and field of a column.
    pub fn field(&self, name: &str) -> Result<(usize, &FieldRef), Fault> {
        let fields = self.schema.fields();
        let found = fields.iter().enumerate().find(|(_, f)| f.name() == name);
        found.ok_or_else(|| {
            unknown_name("column", name, fields.iter().map(|f| f.name().as_str())).into()
        })
    }

    /// The parts of a column, a batch each.
    pub fn parts(&self, place: usize) -> impl Iterator<Item = &dyn Array> {
        self.batches
            .iter()
            .filter_map(move |batch| batch.columns().get(place))
            .map(|array| array.as_ref())
    }

    /// A column of numbers with its unit, as written in the metadata; rows without a number are nan.
    fn quantity(&self, place: usize, field: &FieldRef) -> Result<Option<Quantity>, Fault> {
        let metadata = field.metadata();
        let (Some(symbol), Some(kind)) = (metadata.get(UNIT), metadata.get(KIND)) else {
            return Ok(None);
        };
        let kind = kind_named(kind)?;
        let converter = Converter::new(unit(kind, symbol)?);
        let mut values = Vec::new();
        for part in self.parts(place) {
            let part = numbers(field.name(), part)?;
            values.extend(part.into_iter().map(|value| converter.to_si(value)));
        }
        let shape = vec![values.len()];
        Ok(Some(Quantity {
            kind,
            data: Data::Array(values.into(), shape),
            units: Some(gullet::formula::units_of(symbol)),
        }))
    }

    fn column<'py>(&self, py: Python<'py>, name: &str) -> Result<Bound<'py, PyAny>, Fault> {
        let (place, field) = self.field(name)?;
        if let Some(quantity) = self.quantity(place, field)? {
            return Ok(Bound::new(py, quantity)?.into_any());
        }
        if !field.data_type().is_numeric() {
            return Ok(self.list(py, place, field)?.into_any());
        }
        let mut values = Vec::new();
        for part in self.parts(place) {
            values.extend(numbers(field.name(), part)?);
        }
        let shape = vec![values.len()];
        Ok(Data::Array(values.into(), shape).give(py)?)
    }

    /// A column as a list, None where a cell is empty.
    fn list<'py>(
        &self,
        py: Python<'py>,
        place: usize,
        field: &FieldRef,
    ) -> Result<Bound<'py, PyList>, Fault> {
        let list = PyList::empty(py);
        for part in self.parts(place) {
            for item in column::items(py, field.name(), part)? {
                list.append(item)?;
            }
        }
        Ok(list)
    }

    /// Rows from the first on as dictionaries.
    fn dicts<'py>(&self, py: Python<'py>, most: usize) -> Result<Vec<Bound<'py, PyDict>>, Fault> {
        let count = self.rows().min(most);
        let rows: Vec<_> = (0..count).map(|_| PyDict::new(py)).collect();
        for (place, field) in self.schema.fields().iter().enumerate() {
            let mut row = 0;
            for part in self.parts(place) {
                let part = part.slice(0, part.len().min(count - row));
                for item in column::items(py, field.name(), &part)? {
                    rows[row].set_item(field.name(), item)?;
                    row += 1;
                }
            }
        }
        Ok(rows)
    }
}

/// Name, type, unit, kind and meaning of a column.
type FieldRow<'a> = (
    &'a str,
    String,
    Option<&'a str>,
    Option<&'a str>,
    Option<&'a str>,
    bool,
);

#[pymethods]
impl Table {
    #[new]
    #[pyo3(signature = (source, *, units=None))]
    fn new(source: &Bound<'_, PyAny>, units: Option<&str>) -> PyResult<Table> {
        let py = source.py();
        let read = || -> Result<Table, Fault> {
            if let Some(table) = taken(source)? {
                return Ok(table);
            }
            build::of_columns(source, system_named(py, units)?)
        };
        read().map_err(|fault| fault.raise(py))
    }

    /// Names of the columns.
    #[getter]
    fn column_names(&self) -> Vec<&str> {
        let fields = self.schema.fields().iter();
        fields.map(|field| field.name().as_str()).collect()
    }

    /// Each column with its type, unit, kind and meaning.
    #[getter]
    fn columns<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let rows: Vec<FieldRow<'_>> = self
            .schema
            .fields()
            .iter()
            .map(|field| {
                let of = |key: &str| field.metadata().get(key).map(String::as_str);
                (
                    field.name().as_str(),
                    field.data_type().to_string(),
                    of(UNIT),
                    of(KIND),
                    of(MEANING),
                    field.is_nullable(),
                )
            })
            .collect();
        crate::cut::made(py, "_table_columns", (rows,))
    }

    fn __len__(&self) -> usize {
        self.rows()
    }

    fn __getitem__<'py>(&self, py: Python<'py>, name: &str) -> PyResult<Bound<'py, PyAny>> {
        self.column(py, name).map_err(|fault| fault.raise(py))
    }

    fn __contains__(&self, name: &str) -> bool {
        self.schema
            .fields()
            .iter()
            .any(|field| field.name() == name)
    }

    fn __iter__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyIterator>> {
        let rows = self
            .dicts(py, usize::MAX)
            .map_err(|fault| fault.raise(py))?;
        PyList::new(py, rows)?.try_iter()
    }

    fn __arrow_c_schema__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyCapsule>> {
        gullet_arrow::schema_capsule(py, &self.schema)
    }

    // A consumer that asks for another schema converts itself, as the interface allows.
    #[pyo3(signature = (requested_schema=None))]
    fn __arrow_c_stream__<'py>(
        &self,
        py: Python<'py>,
        requested_schema: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Bound<'py, PyCapsule>> {
        let _ = requested_schema;
        gullet_arrow::stream_capsule(py, &self.schema, &self.batches)
    }

    fn __eq__(&self, other: &Table) -> bool {
        self.schema == other.schema && self.rows() == other.rows() && {
            let mut own = column::Walk::new(&self.batches);
            let mut others = column::Walk::new(&other.batches);
            loop {
                let count = own.left().min(others.left());
                if count == 0 {
                    break true;
                }
                if own.next(count) != others.next(count) {
                    break false;
                }
            }
        }
    }

    // Holds data of any size, so it is no key.
    #[classattr]
    fn __hash__() -> Option<bool> {
        None
    }

    fn __copy__(slf: Py<Table>) -> Py<Table> {
        slf
    }

    fn __deepcopy__(slf: Py<Table>, _memo: &Bound<'_, PyAny>) -> Py<Table> {
        slf
    }

    fn __reduce__<'py>(
        &self,
        py: Python<'py>,
    ) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let make = py.import("gullet._gullet")?.getattr("_table")?;
        Ok((make, pickle::write(py, self)?))
    }

    fn __repr__(&self) -> String {
        let fields = self.schema.fields();
        let mut names: Vec<&str> = fields.iter().take(8).map(|f| f.name().as_str()).collect();
        if fields.len() > names.len() {
            names.push("...");
        }
        format!("<Table of {} rows: {}>", self.rows(), names.join(", "))
    }

    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        const MOST: usize = 20;
        let mut html = String::from("<div><table><thead><tr>");
        for field in self.schema.fields() {
            html += &format!("<th>{}</th>", escaped(field.name()));
        }
        html += "</tr></thead><tbody>";
        for row in self.dicts(py, MOST).map_err(|fault| fault.raise(py))? {
            html += "<tr>";
            for value in row.values() {
                let text = if value.is_none() {
                    String::new()
                } else {
                    value.str()?.to_string()
                };
                html += &format!("<td>{}</td>", escaped(&shortened(&text)));
            }
            html += "</tr>";
        }
        html += "</tbody></table>";
        if self.rows() > MOST {
            html += &format!("<p>{MOST} of {} rows</p>", self.rows());
        }
        Ok(html + "</div>")
    }
}

/// A cell of a page, at most 60 characters long.
fn shortened(text: &str) -> String {
    if text.chars().count() <= 60 {
        return text.to_owned();
    }
    text.chars().take(59).chain(['…']).collect()
}

/// A table from its pickled parts.
#[pyfunction]
pub fn _table(py: Python<'_>, schema: &str, batches: &Bound<'_, PyList>) -> PyResult<Table> {
    pickle::read(schema, batches).map_err(|fault| fault.raise(py))
}

/// The unit a column of plain numbers of a kind is in.
///
/// >>> import gullet
/// >>> gullet.column_unit("velocity", "inch")
/// 'ft/min'
#[pyfunction]
#[pyo3(signature = (kind, units=None))]
pub fn column_unit(py: Python<'_>, kind: &str, units: Option<&str>) -> PyResult<&'static str> {
    let answer = || -> Result<&'static str, Fault> {
        let system: UnitSystem = system_named(py, units)?;
        Ok(gullet::quantity::column_unit(kind_named(kind)?, system).symbol)
    };
    answer().map_err(|fault| fault.raise(py))
}

/// The catalogue as a table, a formula a row.
///
/// >>> import gullet
/// >>> gullet.catalogue()["name"][:2]
/// ['spindle_speed', 'cutting_speed']
#[pyfunction]
pub fn catalogue(py: Python<'_>) -> PyResult<Table> {
    let listing = py.detach(gullet::formula::catalogue_listing);
    of_listing(&listing, UnitSystem::Metric).map_err(|fault| fault.raise(py))
}

/// The worked examples of the literature as a table, each run.
///
/// >>> import gullet
/// >>> examples = gullet.worked_examples()
/// >>> all(row["passed"] or row["missed"] for row in examples)
/// True
#[pyfunction]
pub fn worked_examples(py: Python<'_>) -> PyResult<Table> {
    let listing = py.detach(gullet::formula::examples_listing);
    of_listing(&listing, UnitSystem::Metric).map_err(|fault| fault.raise(py))
}
