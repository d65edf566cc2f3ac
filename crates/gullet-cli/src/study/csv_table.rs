//! Rows of a CSV file, each cell a text: commas between cells, points in numbers.

use super::{BATCH, Batch, Places};
use crate::files;
use arrow_array::builder::StringBuilder;
use arrow_array::{ArrayRef, RecordBatch};
use arrow_schema::{DataType, Field, Schema, SchemaRef};
use csv::{ByteRecord, ErrorKind, Reader, ReaderBuilder};
use gullet::error::{Code, Error, Problem, Result};
use std::io::{BufReader, Read};
use std::sync::Arc;

/// A row longer than this is a quote that is never closed.
const LONGEST_ROW: u64 = 16 << 20;

/// Bytes of the file that are read at a time.
const BUFFER: usize = 1 << 18;

/// Rows of a file or a stream.
pub struct CsvTable {
    name: String,
    reader: Reader<Bounded>,
    schema: SchemaRef,
    size: Option<u64>,
    record: ByteRecord,
    ended: bool,
}

impl CsvTable {
    /// Reads the header; `size` is that of the file, where there is one.
    pub fn new(name: &str, input: Box<dyn Read + Send>, size: Option<u64>) -> Result<CsvTable> {
        let shown = files::shown(name).to_owned();
        let mut reader = ReaderBuilder::new()
            .flexible(true)
            .buffer_capacity(BUFFER)
            .from_reader(Bounded::new(input));
        let header = reader
            .byte_headers()
            .map_err(|error| unreadable(&shown, &error))?
            .clone();
        let schema = Arc::new(columns(&shown, &header)?);
        Ok(CsvTable {
            name: shown,
            reader,
            schema,
            size,
            record: ByteRecord::new(),
            ended: false,
        })
    }

    pub fn schema(&self) -> &Schema {
        &self.schema
    }

    pub fn next(&mut self) -> Option<Result<Batch>> {
        if self.ended {
            return None;
        }
        let batch = self.batch();
        self.ended = match &batch {
            Ok(batch) => batch.rows.num_rows() < BATCH,
            Err(_) => true,
        };
        match batch {
            Ok(batch) if batch.rows.num_rows() == 0 => None,
            batch => Some(batch),
        }
    }

    /// Line that the record begins on. Its reader counts the line breaks it has passed: at the end of
    /// a record the break behind it too, but for the second half of a break of two characters.
    fn line(&self) -> u64 {
        let within = |cell: &[u8]| cell.iter().filter(|byte| **byte == b'\n').count() as u64;
        let within: u64 = self.record.iter().map(within).sum();
        let input = self.reader.get_ref();
        let passed = !input.ended && input.pairs != Some(true);
        (self.reader.position().line()).saturating_sub(within + u64::from(passed))
    }

    fn batch(&mut self) -> Result<Batch> {
        let count = self.schema.fields().len();
        let mut cells: Vec<StringBuilder> = (0..count).map(|_| StringBuilder::new()).collect();
        let mut marked = Vec::new();
        let mut lines = Vec::new();
        while lines.len() < BATCH {
            let more = self.reader.read_byte_record(&mut self.record);
            if !more.map_err(|error| unreadable(&self.name, &error))? {
                break;
            }
            let row = lines.len();
            lines.push(self.line());
            if self.record.len() != count {
                marked.push((row, ragged(self.record.len(), count)));
            }
            for (place, cell) in cells.iter_mut().enumerate() {
                match self.record.get(place).map(core::str::from_utf8) {
                    None | Some(Ok("")) => cell.append_null(),
                    Some(Ok(text)) => cell.append_value(text),
                    Some(Err(_)) => {
                        let bytes = self.record.get(place).unwrap_or_default();
                        cell.append_value(String::from_utf8_lossy(bytes));
                        marked.push((row, no_text(self.schema.field(place).name())));
                    }
                }
            }
        }
        let columns: Vec<ArrayRef> = cells
            .iter_mut()
            .map(|cell| Arc::new(cell.finish()) as ArrayRef)
            .collect();
        let rows = RecordBatch::try_new(self.schema.clone(), columns).map_err(|error| {
            Error::from(Problem::new(
                Code::Inconsistent,
                &self.name,
                error.to_string(),
                "",
                "",
            ))
        })?;
        let read = self.reader.position().byte() as f64;
        Ok(Batch {
            rows,
            marked,
            places: Places::Lines(lines),
            share: self.size.map(|size| read / (size as f64).max(1.0)),
            first: 0,
        })
    }
}

/// Columns of text by a header.
fn columns(name: &str, header: &ByteRecord) -> Result<Schema> {
    let refuse = |value: String, admissible: &str, remedy: &str| {
        Err(Problem::new(Code::Syntax, format!("{name}:1"), value, admissible, remedy).into())
    };
    if header
        .iter()
        .all(|cell| cell.iter().all(u8::is_ascii_whitespace))
    {
        return refuse(
            "no header".to_owned(),
            "a first line with the names of the columns",
            "begin the file with a line such as material,axial_depth_mm,radial_depth_mm",
        );
    }
    if header.iter().any(|cell| {
        cell.starts_with(&[0xff, 0xfe]) || cell.starts_with(&[0xfe, 0xff]) || cell.contains(&0)
    }) {
        return refuse(
            "a header that is no text in UTF-8".to_owned(),
            "text in UTF-8, or Parquet",
            "save the table as CSV in UTF-8",
        );
    }
    let mut names: Vec<String> = Vec::new();
    for (place, cell) in header.iter().enumerate() {
        let Ok(text) = core::str::from_utf8(cell) else {
            return refuse(
                format!("column {} whose name is no text in UTF-8", place + 1),
                "text in UTF-8",
                "save the table as CSV in UTF-8",
            );
        };
        names.push(text.trim().to_owned());
    }
    if let [only] = names.as_slice()
        && let Some(other) = [';', '\t', '|']
            .into_iter()
            .find(|other| only.contains(*other))
    {
        return refuse(
            format!("one column, with {other:?} in its name"),
            "commas between columns, points in numbers",
            "save the table with commas between columns; where commas stand in numbers, with points there",
        );
    }
    let mut problems = Vec::new();
    for (place, column) in names.iter().enumerate() {
        if column.is_empty() {
            problems.push(Problem::new(
                Code::Syntax,
                format!("{name}:1"),
                format!("column {} without a name", place + 1),
                "a name for every column",
                "name it or take it out",
            ));
        }
    }
    let fields: Vec<Field> = names
        .into_iter()
        .map(|column| Field::new(column, DataType::Utf8, true))
        .collect();
    Error::unless_empty(problems, Schema::new(fields))
}

fn ragged(found: usize, wanted: usize) -> Problem {
    Problem::new(
        Code::BadRow,
        "",
        format!("{found} cells"),
        format!("{wanted} cells, as in the header"),
        "is a comma missing, or does a number have a comma for its point?",
    )
}

fn no_text(column: &str) -> Problem {
    Problem::new(
        Code::BadRow,
        column,
        "bytes that are no text",
        "text in UTF-8",
        "save the table as CSV in UTF-8",
    )
}

fn unreadable(name: &str, error: &csv::Error) -> Problem {
    match error.kind() {
        ErrorKind::Io(error) => files::problem(name, error, "give a file that can be read"),
        _ => Problem::new(
            Code::Syntax,
            name,
            error.to_string(),
            "CSV",
            "save the table as CSV",
        ),
    }
}

/// A reader that refuses to go on where a quote swallows the rest of the file.
struct Bounded {
    input: BufReader<Box<dyn Read + Send>>,
    /// Bytes since the last quote, while an odd number of them has gone by.
    open: Option<u64>,
    /// Whether lines end in two characters; as the first one does.
    pairs: Option<bool>,
    last: u8,
    ended: bool,
}

impl Bounded {
    fn new(input: Box<dyn Read + Send>) -> Bounded {
        Bounded {
            input: BufReader::with_capacity(BUFFER, input),
            open: None,
            pairs: None,
            last: 0,
            ended: false,
        }
    }
}

impl Read for Bounded {
    fn read(&mut self, buffer: &mut [u8]) -> std::io::Result<usize> {
        let count = self.input.read(buffer)?;
        let read = buffer.get(..count).unwrap_or_default();
        self.ended |= count == 0 && !buffer.is_empty();
        if self.pairs.is_none()
            && let Some(place) = read.iter().position(|byte| *byte == b'\n')
        {
            let before = place.checked_sub(1).and_then(|place| read.get(place));
            self.pairs = Some(before.copied().unwrap_or(self.last) == b'\r');
        }
        self.last = read.last().copied().unwrap_or(self.last);
        let quotes = read.iter().filter(|byte| **byte == b'"').count();
        let open_before = self.open.is_some();
        let open = open_before ^ (quotes % 2 == 1);
        self.open = match self.open {
            Some(length) if open && quotes == 0 => Some(length + count as u64),
            _ => open.then_some(0),
        };
        if self.open.is_some_and(|length| length > LONGEST_ROW) {
            return Err(std::io::Error::new(
                std::io::ErrorKind::InvalidData,
                "a quote is opened and not closed within 16 MiB",
            ));
        }
        Ok(count)
    }
}
