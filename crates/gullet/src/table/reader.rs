//! Reading CSV text row by row, with every problem named by file, line and column.

use crate::error::{Code, Problem, nearest};
use std::collections::{BTreeMap, BTreeSet};

/// A range a number of a table must lie in.
#[derive(Clone, Copy)]
pub(crate) struct Limits {
    /// Lower end.
    pub low: f64,
    /// Whether the lower end itself is admissible.
    pub low_inclusive: bool,
    /// Upper end.
    pub high: f64,
    /// Whether the upper end itself is admissible.
    pub high_inclusive: bool,
}

/// `low < x <= high`.
pub(crate) const fn above(low: f64, high: f64) -> Limits {
    Limits {
        low,
        low_inclusive: false,
        high,
        high_inclusive: true,
    }
}

/// `low <= x < high`.
pub(crate) const fn from_below(low: f64, high: f64) -> Limits {
    Limits {
        low,
        low_inclusive: true,
        high,
        high_inclusive: false,
    }
}

impl Limits {
    fn hold(self, x: f64) -> bool {
        let low = if self.low_inclusive {
            x >= self.low
        } else {
            x > self.low
        };
        let high = if self.high_inclusive {
            x <= self.high
        } else {
            x < self.high
        };
        low && high
    }

    fn text(self, unit: &str) -> String {
        let low = if self.low_inclusive { "from" } else { "above" };
        let high = if self.high_inclusive {
            "to"
        } else {
            "and below"
        };
        format!("{low} {} {high} {} {unit}", self.low, self.high)
            .trim_end()
            .to_owned()
    }
}

/// A column that holds a quantity in one unit: name, unit, factor to SI as `numerator/denominator`.
pub(crate) type UnitColumn = (&'static str, &'static str, f64, f64);

/// A header and the records under it.
pub(crate) struct Sheet {
    file: String,
    columns: BTreeMap<String, usize>,
    records: Vec<(u64, csv::StringRecord)>,
}

/// A field in quotes, short and without control characters, for a message.
pub(crate) fn clip(text: &str) -> String {
    let clean: String = text
        .chars()
        .take(60)
        .map(|c| if c.is_control() { '?' } else { c })
        .collect();
    format!("\"{clean}\"")
}

pub(crate) fn bad(
    file: &str,
    line: u64,
    column: &str,
    value: impl Into<String>,
    admissible: impl Into<String>,
    remedy: impl Into<String>,
) -> Problem {
    Problem::new(
        Code::BadRow,
        format!("{file}:{line}:{column}"),
        value,
        admissible,
        remedy,
    )
}

/// Names in the first line of a text, as a reader of the kind of table needs them.
pub(crate) fn header_names(text: &str) -> Vec<String> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut reader = csv::ReaderBuilder::new()
        .flexible(true)
        .has_headers(false)
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    reader
        .records()
        .next()
        .and_then(core::result::Result::ok)
        .map(|record| record.iter().map(str::to_lowercase).collect())
        .unwrap_or_default()
}

impl Sheet {
    /// Reads the whole text; header and shape problems are added to `problems`, and rows of the
    /// wrong shape left out.
    pub(crate) fn read(
        file: &str,
        text: &str,
        known: &[&str],
        problems: &mut Vec<Problem>,
    ) -> Sheet {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let mut reader = csv::ReaderBuilder::new()
            .flexible(true)
            .has_headers(false)
            .trim(csv::Trim::All)
            .from_reader(text.as_bytes());
        let mut sheet = Sheet {
            file: file.to_owned(),
            columns: BTreeMap::new(),
            records: Vec::new(),
        };
        let mut records = reader.records();
        let width = match records.next() {
            Some(Ok(header)) => {
                sheet.take_header(&header, known, problems);
                header.len()
            }
            _ => {
                problems.push(bad(
                    file,
                    1,
                    "header",
                    "",
                    known.join(", "),
                    "the file is empty: begin with a line of column names",
                ));
                return sheet;
            }
        };
        for record in records {
            match record {
                Ok(record) => {
                    let line = record.position().map_or(0, csv::Position::line);
                    if record.len() != width {
                        problems.push(bad(
                            file, line, "fields", record.len().to_string(), format!("{width} fields, as in the header"),
                            "give every column a field, empty where there is no value; put text with commas in double quotes",
                        ));
                    } else if let Some(field) = record
                        .iter()
                        .find(|field| field.chars().any(char::is_control))
                    {
                        problems.push(bad(
                            file, line, "fields", clip(field), "text on one line without control characters",
                            "close the double quote, and remove line breaks and control characters inside fields",
                        ));
                    } else {
                        sheet.records.push((line, record));
                    }
                }
                Err(error) => {
                    let line = error.position().map_or(0, csv::Position::line);
                    problems.push(bad(
                        file,
                        line,
                        "fields",
                        "",
                        "comma-separated text in UTF-8",
                        error.to_string(),
                    ));
                }
            }
        }
        sheet
    }

    fn take_header(
        &mut self,
        header: &csv::StringRecord,
        known: &[&str],
        problems: &mut Vec<Problem>,
    ) {
        for (index, name) in header.iter().enumerate() {
            let lower = name.to_lowercase();
            if !known.contains(&lower.as_str()) {
                let remedy = match nearest(&lower, known.iter().copied()) {
                    Some(near) => format!("did you mean {near}?"),
                    None => "remove the column".to_owned(),
                };
                let column = if name.is_empty() {
                    format!("column {}", index + 1)
                } else {
                    lower.chars().take(60).collect()
                };
                problems.push(bad(
                    &self.file,
                    1,
                    &column,
                    clip(name),
                    known.join(", "),
                    remedy,
                ));
            } else if self.columns.insert(lower.clone(), index).is_some() {
                problems.push(bad(
                    &self.file,
                    1,
                    &lower,
                    clip(name),
                    "each column once",
                    "remove one of the two columns",
                ));
            }
        }
    }

    /// Whether the header has this column.
    pub(crate) fn has(&self, column: &str) -> bool {
        self.columns.contains_key(column)
    }

    /// Reports a column that must be there.
    pub(crate) fn need(&self, columns: &[&str], problems: &mut Vec<Problem>) {
        if !columns.iter().any(|column| self.has(column)) {
            problems.push(bad(
                &self.file,
                1,
                columns.first().copied().unwrap_or(""),
                "",
                columns.join(" or "),
                "add the column",
            ));
        }
    }

    /// The rows in order, each with its own id, which must be new in this file.
    pub(crate) fn rows<'s>(
        &'s self,
        problems: &mut Vec<Problem>,
        mut each: impl FnMut(&mut Row<'s, '_>),
    ) {
        let mut seen = BTreeSet::new();
        for (line, record) in &self.records {
            let mut row = Row {
                sheet: self,
                line: *line,
                record,
                problems,
                failed: false,
            };
            let id = row.text("id");
            if id.is_empty() {
                row.refuse(
                    "id",
                    "",
                    "a short name, unique in the file",
                    "give the row an id",
                );
            } else if !seen.insert(id) {
                row.refuse(
                    "id",
                    clip(id),
                    "an id that no other row of this file has",
                    "rename or remove one of the two rows",
                );
            }
            each(&mut row);
        }
    }
}

/// One row while it is read.
pub(crate) struct Row<'s, 'p> {
    sheet: &'s Sheet,
    line: u64,
    record: &'s csv::StringRecord,
    problems: &'p mut Vec<Problem>,
    failed: bool,
}

impl<'s> Row<'s, '_> {
    /// Whether a problem was found in this row.
    pub(crate) fn failed(&self) -> bool {
        self.failed
    }

    /// Whether the file has this column.
    pub(crate) fn has(&self, column: &str) -> bool {
        self.sheet.has(column)
    }

    /// File name.
    pub(crate) fn file(&self) -> &'s str {
        &self.sheet.file
    }

    /// Adds a problem of this row.
    pub(crate) fn refuse(
        &mut self,
        column: &str,
        value: impl Into<String>,
        admissible: impl Into<String>,
        remedy: impl Into<String>,
    ) {
        self.failed = true;
        self.problems.push(bad(
            &self.sheet.file,
            self.line,
            column,
            value,
            admissible,
            remedy,
        ));
    }

    /// The field as it stands; empty where the column is missing.
    pub(crate) fn text(&self, column: &str) -> &'s str {
        self.sheet
            .columns
            .get(column)
            .and_then(|index| self.record.get(*index))
            .unwrap_or("")
    }

    /// The field, which must not be empty.
    pub(crate) fn required(&mut self, column: &str) -> String {
        let text = self.text(column);
        if text.is_empty() {
            self.refuse(column, "", "a value", "fill in the field");
        }
        text.to_owned()
    }

    /// The field as a list, split at semicolons.
    pub(crate) fn list(&self, column: &str) -> Vec<String> {
        self.text(column)
            .split(';')
            .map(str::trim)
            .filter(|item| !item.is_empty())
            .map(str::to_owned)
            .collect()
    }

    /// The field as a number in its column's unit; `None` where it is empty or refused.
    pub(crate) fn number(&mut self, column: &str, unit: &str, limits: Limits) -> Option<f64> {
        let text = self.text(column);
        if text.is_empty() {
            return None;
        }
        match text.parse::<f64>() {
            Ok(x) if x.is_finite() && limits.hold(x) => Some(x),
            Ok(x) if x.is_finite() => {
                self.refuse(
                    column,
                    format!("{text} {unit}").trim_end().to_owned(),
                    limits.text(unit),
                    "correct the value, or its unit: the column's name says which unit it takes",
                );
                None
            }
            _ => {
                self.refuse(column, clip(text), format!("a number, {}", limits.text(unit)), "write a bare number with a decimal point; the unit stands in the column's name");
                None
            }
        }
    }

    /// A quantity given in one or more columns of different units, in SI units.
    ///
    /// Where several are given they must agree within their printed digits; the one whose unit
    /// `printed_in` names is taken, else the first.
    pub(crate) fn quantity(
        &mut self,
        columns: &[UnitColumn],
        limits_si: Limits,
        printed_in: &str,
    ) -> Option<f64> {
        let mut found: Vec<(UnitColumn, f64, f64)> = Vec::new();
        for column in columns {
            let (name, unit, numerator, denominator) = *column;
            let scale = denominator / numerator;
            let limits = Limits {
                low: limits_si.low * scale,
                high: limits_si.high * scale,
                ..limits_si
            };
            if let Some(x) = self.number(name, unit, limits) {
                found.push((
                    *column,
                    x * numerator / denominator,
                    half_step(self.text(name)) * numerator / denominator,
                ));
            }
        }
        let chosen = found
            .iter()
            .find(|(column, ..)| column.1 == printed_in)
            .or(found.first())
            .copied();
        if let Some((_, value, step)) = chosen {
            for (column, other, other_step) in &found {
                if (other - value).abs() > (step + other_step) * (1.0 + 1e-9) + 1e-12 * value.abs()
                {
                    let given = self.text(column.0).to_owned();
                    self.refuse(
                        column.0,
                        format!("{given} {}", column.1),
                        "the same quantity in both units",
                        "the two columns differ: correct one or leave one empty",
                    );
                }
            }
        }
        chosen.map(|(_, value, _)| value)
    }

    /// Reads the field by a function that knows the names of the trade.
    pub(crate) fn name<T>(
        &mut self,
        column: &str,
        parse: impl Fn(&str) -> Option<T>,
        names: &[&str],
    ) -> Option<T> {
        let text = self.text(column);
        let value = parse(text);
        if value.is_none() {
            let remedy = match nearest(text, names.iter().copied()) {
                Some(near) => format!("did you mean {near}?"),
                None => "use one of the known names".to_owned(),
            };
            self.refuse(column, clip(text), names.join(", "), remedy);
        }
        value
    }

    /// Checks `low <= start <= high` and names the columns where it fails.
    pub(crate) fn ordered(&mut self, column: &str, low: f64, start: f64, high: f64) {
        if !(low <= start && start <= high) {
            self.refuse(
                column,
                self.text(column).to_owned(),
                "low <= start <= high",
                "order the three values",
            );
        }
    }
}

/// Half a unit of the last printed digit.
fn half_step(text: &str) -> f64 {
    let decimals = text.split_once('.').map_or(0, |(_, digits)| {
        digits.chars().take_while(char::is_ascii_digit).count()
    });
    let mut step = 0.5;
    for _ in 0..decimals.min(12) {
        step /= 10.0;
    }
    step
}
