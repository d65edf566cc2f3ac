//! Rows with described columns: what the faces turn into tables of their own.

use crate::quantity::{Kind, Unit, UnitSystem, column_unit, unit};

/// What the cells of a column hold.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Form {
    /// Text.
    Text,
    /// A list of texts.
    Texts,
    /// A list of pairs of text.
    Pairs,
    /// A whole number.
    Whole,
    /// Yes or no.
    Flag,
    /// A number in SI units.
    Number(Kind),
    /// Two numbers in SI units, the lower first.
    Range(Kind),
}

/// A cell, of its column's form or empty.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Cell {
    /// Nothing.
    Empty,
    /// Text.
    Text(String),
    /// A list of texts.
    Texts(Vec<String>),
    /// A list of pairs of text.
    Pairs(Vec<(String, String)>),
    /// A whole number.
    Whole(u64),
    /// Yes or no.
    Flag(bool),
    /// A number in SI units.
    Number(f64),
    /// Two numbers in SI units.
    Range(f64, f64),
}

/// A column: its name without a unit, what it holds and means.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Column {
    /// Name, the same in every face; a face that shows plain numbers adds the unit.
    pub name: &'static str,
    /// What its cells hold.
    pub form: Form,
    /// Whether a cell may be empty.
    pub optional: bool,
    /// What it is.
    pub meaning: &'static str,
    /// Units plain numbers are shown in, metric and inch, where not the usual ones of the kind.
    pub units: Option<[&'static str; 2]>,
}

impl Column {
    /// The unit plain numbers are shown in; none for text.
    pub fn unit(&self, system: UnitSystem) -> Option<&'static Unit> {
        let (Form::Number(kind) | Form::Range(kind)) = self.form else {
            return None;
        };
        let own = self.units.map(|[metric, inch]| match system {
            UnitSystem::Metric => metric,
            UnitSystem::Inch => inch,
        });
        let own = own.and_then(|symbol| unit(kind, symbol).ok());
        Some(own.unwrap_or_else(|| column_unit(kind, system)))
    }
}

/// Rows under columns.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Listing {
    /// Name of the whole.
    pub name: &'static str,
    /// The columns.
    pub columns: Vec<Column>,
    /// The rows, each with one cell a column.
    pub rows: Vec<Vec<Cell>>,
}

/// A column with how its cell is taken from a row.
pub(crate) struct Field<R: 'static> {
    pub column: Column,
    pub cell: fn(&R) -> Cell,
}

impl<R> Field<R> {
    pub const fn new(
        name: &'static str,
        form: Form,
        meaning: &'static str,
        cell: fn(&R) -> Cell,
    ) -> Field<R> {
        Field {
            column: Column {
                name,
                form,
                optional: false,
                meaning,
                units: None,
            },
            cell,
        }
    }

    /// The same, its cells possibly empty.
    pub const fn optional(mut self) -> Field<R> {
        self.column.optional = true;
        self
    }

    /// The same, shown in these units.
    pub const fn shown_in(mut self, metric: &'static str, inch: &'static str) -> Field<R> {
        self.column.units = Some([metric, inch]);
        self
    }
}

impl Listing {
    pub(crate) fn new<'a, R: 'a>(
        name: &'static str,
        fields: &[Field<R>],
        rows: impl IntoIterator<Item = &'a R>,
    ) -> Listing {
        let row = |row| fields.iter().map(|field| (field.cell)(row)).collect();
        Listing {
            name,
            columns: fields.iter().map(|field| field.column).collect(),
            rows: rows.into_iter().map(row).collect(),
        }
    }
}

impl From<&str> for Cell {
    fn from(text: &str) -> Cell {
        Cell::Text(text.to_owned())
    }
}

impl From<&String> for Cell {
    fn from(text: &String) -> Cell {
        Cell::Text(text.clone())
    }
}

impl From<f64> for Cell {
    fn from(value: f64) -> Cell {
        Cell::Number(value)
    }
}

impl From<bool> for Cell {
    fn from(value: bool) -> Cell {
        Cell::Flag(value)
    }
}

impl From<(f64, f64)> for Cell {
    fn from((low, high): (f64, f64)) -> Cell {
        Cell::Range(low, high)
    }
}

impl From<&Vec<String>> for Cell {
    fn from(texts: &Vec<String>) -> Cell {
        Cell::Texts(texts.clone())
    }
}

impl<T: Into<Cell>> From<Option<T>> for Cell {
    fn from(value: Option<T>) -> Cell {
        value.map_or(Cell::Empty, Into::into)
    }
}
