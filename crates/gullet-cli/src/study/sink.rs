//! Where rows go: CSV or Parquet, by the name, under a temporary name until all are there.

use super::csv_rows::CsvRows;
#[cfg(feature = "parquet")]
use super::parquet_table::ParquetRows;
use crate::files;
use crate::replace::{self, Replacement};
use arrow_array::RecordBatch;
use arrow_schema::SchemaRef;
use gullet::error::{Code, Error, Problem, Result};
use std::fs::{self, OpenOptions};
use std::io::{self, ErrorKind, Write, stdout};
use std::path::{Path, PathBuf};

/// The forms of a table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    Csv,
    Parquet,
}

type Out = Box<dyn Write + Send>;

/// Standard output. A reader that closes it has had enough: the study ends, and nothing is wrong.
struct Output(io::Stdout);

impl Write for Output {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        ended(self.0.write(bytes))
    }

    fn flush(&mut self) -> io::Result<()> {
        ended(self.0.flush())
    }
}

fn ended<T>(result: io::Result<T>) -> io::Result<T> {
    match result {
        Err(error) if error.kind() == ErrorKind::BrokenPipe => replace::abandon(0),
        other => other,
    }
}

enum Rows {
    Csv(Box<CsvRows<Out>>),
    #[cfg(feature = "parquet")]
    Parquet(Box<ParquetRows<Out>>),
}

/// A table that is being written.
pub struct Sink {
    name: String,
    rows: Rows,
    /// None where there is nothing to put in place: standard output, a device, a pipe.
    replacement: Option<Replacement>,
}

impl Sink {
    /// The form that a name asks for.
    ///
    /// # Errors
    /// `UnknownName` for an ending that says neither.
    pub fn form(name: &str) -> Result<Form> {
        let regular = fs::metadata(name).map_or(true, |known| known.is_file());
        if files::has_ending(name, "parquet") {
            return Ok(Form::Parquet);
        }
        if name == "-" || files::has_ending(name, "csv") || !regular {
            return Ok(Form::Csv);
        }
        Err(Problem::new(
            Code::UnknownName,
            "OUT",
            name,
            "a name that ends in .csv or .parquet, or - for CSV on standard output",
            "say by the ending which form the table gets",
        )
        .into())
    }

    /// Opens the place and writes what stands before the rows.
    pub fn open(name: &str, form: Form, schema: SchemaRef) -> Result<Sink> {
        let failed = |error: io::Error| Error::from(files::unwritable(name, &error));
        let (out, replacement): (Out, Option<Replacement>) = if name == "-" {
            (Box::new(Output(stdout())), None)
        } else {
            // A link keeps pointing to its file, whose content is replaced.
            let path = fs::canonicalize(name).unwrap_or_else(|_| PathBuf::from(name));
            match fs::metadata(&path) {
                Ok(known) if known.is_dir() => {
                    return Err(failed(io::Error::from(ErrorKind::IsADirectory)));
                }
                // A device or pipe is written to, never replaced.
                Ok(known) if !known.is_file() => {
                    let device = OpenOptions::new().write(true).open(&path).map_err(failed)?;
                    (Box::new(device), None)
                }
                _ => {
                    let replacement = Replacement::new(&path).map_err(failed)?;
                    (
                        Box::new(replacement.handle().map_err(failed)?),
                        Some(replacement),
                    )
                }
            }
        };
        let rows = match form {
            Form::Csv => Rows::Csv(Box::new(CsvRows::new(name, out, &schema)?)),
            #[cfg(feature = "parquet")]
            Form::Parquet => Rows::Parquet(Box::new(ParquetRows::new(name, out, schema)?)),
            #[cfg(not(feature = "parquet"))]
            Form::Parquet => return Err(super::source::without_parquet(name).into()),
        };
        Ok(Sink {
            name: name.to_owned(),
            rows,
            replacement,
        })
    }

    pub fn write(&mut self, rows: &RecordBatch) -> Result<()> {
        match &mut self.rows {
            Rows::Csv(writer) => writer.write(rows),
            #[cfg(feature = "parquet")]
            Rows::Parquet(writer) => writer.write(rows),
        }
    }

    /// Writes what stands behind the rows and puts the file in place.
    pub fn commit(self) -> Result<()> {
        let mut out = match self.rows {
            Rows::Csv(writer) => writer.end()?,
            #[cfg(feature = "parquet")]
            Rows::Parquet(writer) => writer.end()?,
        };
        let flushed = out.flush();
        drop(out);
        flushed
            .and_then(|()| self.replacement.map_or(Ok(()), Replacement::commit))
            .map_err(|error| files::unwritable(&self.name, &error).into())
    }
}

/// Whether two names mean the same file.
pub fn same_file(one: &str, other: &str) -> bool {
    let path = |name: &str| fs::canonicalize(Path::new(name)).ok();
    one == other && one != "-"
        || path(one)
            .zip(path(other))
            .is_some_and(|(one, other)| one == other && one.is_file())
}
