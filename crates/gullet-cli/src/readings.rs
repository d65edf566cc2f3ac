//! A small table of readings: columns of numbers with their unit behind the name.

use crate::files;
use csv::{ReaderBuilder, StringRecord, Trim};
use gullet::error::{Code, Error, Problem, Result, distance};
use gullet::quantity::{Converter, Kind, UnitSystem, column_unit, parse_number, unit_of_suffix};
use gullet_table::with_unit;

/// A column that is looked for.
pub struct Wanted {
    /// Its name without the unit.
    pub name: &'static str,
    /// What it measures.
    pub kind: Kind,
    /// Whether the readings may do without it.
    pub optional: bool,
}

/// The columns that were found, in SI units, and the names of the others.
pub struct Readings {
    columns: Vec<Option<Vec<f64>>>,
    /// Columns that are none of those wanted.
    pub others: Vec<String>,
}

impl Readings {
    /// The column of this place among the wanted; empty where it was not needed and is not there.
    pub fn column(&self, place: usize) -> Option<&[f64]> {
        self.columns.get(place).and_then(Option::as_deref)
    }
}

/// The names that a column may have.
fn names(wanted: &Wanted) -> String {
    let name = |system| with_unit(wanted.name, column_unit(wanted.kind, system));
    let (metric, inch) = (name(UnitSystem::Metric), name(UnitSystem::Inch));
    if metric == inch {
        metric
    } else {
        format!("{metric} or {inch}")
    }
}

/// Where a wanted column stands, and how its numbers are converted.
type Found = Option<(usize, Converter)>;

/// Finds the wanted columns in a header.
fn find(
    shown: &str,
    header: &StringRecord,
    wanted: &[Wanted],
    problems: &mut Vec<Problem>,
) -> (Vec<Found>, Vec<String>) {
    let mut found: Vec<Found> = wanted.iter().map(|_| None).collect();
    let mut others = Vec::new();
    let at = format!("{shown}:1");
    for (place, name) in header.iter().enumerate() {
        let hit = wanted.iter().zip(&mut found).find_map(|(wanted, slot)| {
            let rest = name.strip_prefix(wanted.name)?;
            let suffix = rest.strip_prefix('_').unwrap_or(rest);
            (rest.is_empty() || rest.starts_with('_')).then_some((wanted, slot, suffix))
        });
        let Some((wanted, slot, suffix)) = hit else {
            let stem = |known: &&Wanted| {
                let cuts = name
                    .match_indices('_')
                    .map(|(cut, _)| cut)
                    .chain([name.len()]);
                cuts.filter_map(|cut| name.get(..cut))
                    .any(|stem| (1..=2).contains(&distance(stem, known.name)))
            };
            if let Some(near) = wanted.iter().find(stem) {
                problems.push(Problem::new(
                    Code::UnknownName,
                    &at,
                    name,
                    names(near),
                    format!("did you mean {}? Else rename the column", near.name),
                ));
            }
            others.push(name.to_owned());
            continue;
        };
        match unit_of_suffix(wanted.kind, suffix) {
            None => problems.push(Problem::new(
                if suffix.is_empty() {
                    Code::UnitMissing
                } else {
                    Code::UnitUnknown
                },
                &at,
                name,
                names(wanted),
                "put the unit of its numbers behind the name",
            )),
            Some(_) if slot.is_some() => problems.push(Problem::new(
                Code::Duplicate,
                &at,
                name,
                "each column once, in one unit",
                "remove one of the two columns",
            )),
            Some(unit) => *slot = Some((place, Converter::new(unit))),
        }
    }
    for (wanted, slot) in wanted.iter().zip(&found) {
        let refused = problems
            .iter()
            .any(|problem| problem.value.contains(wanted.name));
        if slot.is_none() && !wanted.optional && !refused {
            problems.push(Problem::new(
                Code::Missing,
                &at,
                "",
                names(wanted),
                format!("add the column {}", wanted.name),
            ));
        }
    }
    (found, others)
}

/// Reads a file, or standard input for `-`; every problem at once.
pub fn read(file: &str, wanted: &[Wanted]) -> Result<Readings> {
    let text = files::read(file)?;
    let shown = files::shown(file);
    let mut problems = Vec::new();
    let mut reader = ReaderBuilder::new()
        .flexible(true)
        .trim(Trim::All)
        .from_reader(text.as_bytes());
    let unreadable = |error: csv::Error| {
        let remedy = "save the table as CSV with commas between columns and points in numbers";
        Problem::new(
            Code::Syntax,
            shown,
            error.to_string(),
            "comma-separated text",
            remedy,
        )
    };
    let header = reader.headers().map_err(unreadable)?.clone();
    let (found, others) = find(shown, &header, wanted, &mut problems);
    let mut columns: Vec<Option<Vec<f64>>> = found
        .iter()
        .map(|slot| slot.as_ref().map(|_| Vec::new()))
        .collect();
    for record in reader.records() {
        let record = record.map_err(unreadable)?;
        let line = record.position().map_or(0, csv::Position::line);
        if record.len() != header.len() {
            problems.push(Problem::new(
                Code::BadRow,
                format!("{shown}:{line}"),
                format!("{} cells", record.len()),
                format!("{} cells, as in the header", header.len()),
                "is a comma missing, or does a number have a comma for its point?",
            ));
            continue;
        }
        for (slot, values) in found.iter().zip(&mut columns) {
            let (Some((place, converter)), Some(values)) = (slot, values) else {
                continue;
            };
            let (cell, name) = (
                record.get(*place).unwrap_or(""),
                header.get(*place).unwrap_or(""),
            );
            match parse_number(cell) {
                Ok(number) => values.push(converter.to_si(number)),
                Err(error) => problems.push(
                    error
                        .first()
                        .clone()
                        .within(&format!("{shown}:{line}:{name}")),
                ),
            }
        }
    }
    Error::unless_empty(problems, Readings { columns, others })
}
