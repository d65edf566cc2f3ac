//! Where rows come from: CSV or Parquet, told by the first bytes.

use super::Batch;
use super::csv_table::CsvTable;
#[cfg(feature = "parquet")]
use super::parquet_table::ParquetTable;
use crate::files;
use arrow_schema::Schema;
use gullet::error::{Code, Problem, Result};
use std::fs::File;
use std::io::{self, Read, Seek};

/// Every Parquet file begins so.
const PARQUET: &[u8] = b"PAR1";

/// Rows of a file, batch by batch.
pub enum Source {
    Csv(Box<CsvTable>),
    #[cfg(feature = "parquet")]
    Parquet(Box<ParquetTable>),
}

impl Source {
    /// Opens a file, or standard input for `-`.
    ///
    /// # Errors
    /// `File` for what cannot be read, `Syntax` for a header that is none.
    pub fn open(name: &str) -> Result<Source> {
        if name == "-" {
            return CsvTable::new(name, Box::new(io::stdin()), None).map(csv);
        }
        let failed =
            |error: io::Error| files::problem(name, &error, "give a file that can be read");
        let mut file = File::open(name).map_err(failed)?;
        let known = file.metadata().map_err(failed)?;
        if known.is_dir() {
            return Err(failed(io::Error::from(io::ErrorKind::IsADirectory)).into());
        }
        if !known.is_file() {
            // A pipe can be read once, from its beginning to its end.
            return CsvTable::new(name, Box::new(file), None).map(csv);
        }
        let mut head = Vec::new();
        file.by_ref()
            .take(PARQUET.len() as u64)
            .read_to_end(&mut head)
            .and_then(|_| file.rewind())
            .map_err(failed)?;
        let named = files::has_ending(name, "parquet");
        if head == PARQUET {
            return parquet(name, file);
        }
        if named {
            return Err(Problem::new(
                Code::Syntax,
                name,
                "a name that ends in .parquet",
                "a file that begins with PAR1",
                "give a whole Parquet file, or a name that ends in .csv",
            )
            .into());
        }
        CsvTable::new(name, Box::new(file), Some(known.len())).map(csv)
    }

    /// Columns of the rows.
    pub fn schema(&self) -> &Schema {
        match self {
            Source::Csv(table) => table.schema(),
            #[cfg(feature = "parquet")]
            Source::Parquet(table) => table.schema(),
        }
    }

    /// Whether all cells are text.
    pub fn is_text(&self) -> bool {
        matches!(self, Source::Csv(_))
    }

    /// How many rows there are, where that is known beforehand.
    pub fn rows(&self) -> Option<u64> {
        match self {
            Source::Csv(_) => None,
            #[cfg(feature = "parquet")]
            Source::Parquet(table) => Some(table.rows()),
        }
    }

    /// The next batch; none at the end.
    pub fn next(&mut self) -> Option<Result<Batch>> {
        match self {
            Source::Csv(table) => table.next(),
            #[cfg(feature = "parquet")]
            Source::Parquet(table) => table.next(),
        }
    }
}

fn csv(table: CsvTable) -> Source {
    Source::Csv(Box::new(table))
}

#[cfg(feature = "parquet")]
fn parquet(name: &str, file: File) -> Result<Source> {
    ParquetTable::new(name, file).map(|table| Source::Parquet(Box::new(table)))
}

#[cfg(not(feature = "parquet"))]
fn parquet(name: &str, _: File) -> Result<Source> {
    Err(without_parquet(name).into())
}

/// This build was made without Parquet.
#[cfg(not(feature = "parquet"))]
pub fn without_parquet(name: &str) -> Problem {
    Problem::new(
        Code::WrongType,
        name,
        "Parquet",
        "CSV",
        "this gullet was built without Parquet: build it with its feature parquet",
    )
}
