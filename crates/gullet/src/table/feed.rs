//! Feeds per tooth and per revolution, over cutter diameter and axial depth.

use super::library::Library;
use super::rows::{Common, FeedRow};
use super::select::{Hit, Question, TableRow, attempts};
use super::speed::no_data;
use super::types::{Material, Process, Ranged, Support, ToolMaterial};
use crate::error::{Code, Problem, Result};
use crate::quantity::{Length, si};
use std::collections::BTreeMap;

impl TableRow for FeedRow {
    fn common(&self) -> &Common {
        &self.common
    }
    fn tools(&self) -> &[ToolMaterial] {
        &self.tools
    }
    fn process(&self) -> Process {
        self.process
    }
}

/// Low, start and high at one place.
type Values = [f64; 3];

/// Values of one source over diameter, at one axial depth.
struct Column<'r> {
    axial_depth: Option<f64>,
    rows: Vec<&'r FeedRow>,
}

/// A value and how well it covers the question.
struct Reading {
    values: Values,
    row: String,
    covered: bool,
    assumption: Option<String>,
}

fn mix(a: Values, b: Values, share: f64) -> Values {
    let [a0, a1, a2] = a;
    let [b0, b1, b2] = b;
    [
        a0 + (b0 - a0) * share,
        a1 + (b1 - a1) * share,
        a2 + (b2 - a2) * share,
    ]
}

fn scaled(values: Values, factor: f64) -> Values {
    values.map(|value| value * factor)
}

fn millimetres(x: f64) -> String {
    let text = format!("{:.3}", x * 1000.0);
    format!("{} mm", text.trim_end_matches('0').trim_end_matches('.'))
}

/// Reads one column at a diameter: constant where rows have none, straight between rows, in
/// proportion to the diameter below the smallest, constant above the largest.
fn at_diameter(rows: &[&FeedRow], diameter: f64) -> Option<Reading> {
    let tolerance = 1e-9 * diameter;
    let inside = |row: &&&FeedRow| {
        row.diameter
            .is_none_or(|(low, high)| low - tolerance <= diameter && diameter <= high + tolerance)
    };
    if let Some(row) = rows.iter().find(inside) {
        return Some(Reading {
            values: row.values,
            row: row.common.id.clone(),
            covered: true,
            assumption: None,
        });
    }
    let below = rows
        .iter()
        .filter_map(|row| row.diameter.filter(|d| d.1 < diameter).map(|d| (d.1, *row)))
        .max_by(|a, b| a.0.total_cmp(&b.0));
    let above = rows
        .iter()
        .filter_map(|row| row.diameter.filter(|d| d.0 > diameter).map(|d| (d.0, *row)))
        .min_by(|a, b| a.0.total_cmp(&b.0));
    match (below, above) {
        (Some((d0, a)), Some((d1, b))) => Some(Reading {
            values: mix(a.values, b.values, (diameter - d0) / (d1 - d0)),
            row: format!("{} and {}", a.common.id, b.common.id),
            covered: true,
            assumption: Some(format!(
                "feed interpolated between the tabulated diameters {} and {}",
                millimetres(d0),
                millimetres(d1)
            )),
        }),
        (None, Some((d1, b))) => Some(Reading {
            values: scaled(b.values, diameter / d1),
            row: b.common.id.clone(),
            covered: false,
            assumption: Some(format!(
                "feed scaled in proportion to the diameter below the smallest tabulated one, {}",
                millimetres(d1)
            )),
        }),
        (Some((d0, a)), None) => Some(Reading {
            values: a.values,
            row: a.common.id.clone(),
            covered: false,
            assumption: Some(format!(
                "feed of the largest tabulated diameter, {}, kept for the larger one",
                millimetres(d0)
            )),
        }),
        (None, None) => None,
    }
}

/// Reads the columns of one source at a diameter and an axial depth, straight between depths and
/// constant beyond them.
fn at_depth(columns: &[Column], diameter: f64, depth: f64) -> Vec<Reading> {
    let mut deep: Vec<(f64, Reading)> = Vec::new();
    let mut readings = Vec::new();
    for column in columns {
        if let Some(reading) = at_diameter(&column.rows, diameter) {
            match column.axial_depth {
                Some(tabulated) => deep.push((tabulated, reading)),
                None => readings.push(reading),
            }
        }
    }
    deep.sort_by(|a, b| a.0.total_cmp(&b.0));
    let place = deep
        .iter()
        .position(|(tabulated, _)| depth <= *tabulated + 1e-9 * depth.abs());
    let count = deep.len();
    let mut taken = deep
        .into_iter()
        .skip(place.unwrap_or(count).saturating_sub(1));
    match place {
        Some(0) => readings.extend(taken.next().map(|(_, reading)| reading)),
        Some(_) => {
            if let (Some((d0, a)), Some((d1, b))) = (taken.next(), taken.next()) {
                let share = ((depth - d0) / (d1 - d0)).clamp(0.0, 1.0);
                let note = format!(
                    "feed interpolated between the tabulated axial depths {} and {}",
                    millimetres(d0),
                    millimetres(d1)
                );
                let notes: Vec<String> = a
                    .assumption
                    .into_iter()
                    .chain(b.assumption)
                    .chain([note])
                    .collect();
                readings.push(Reading {
                    values: mix(a.values, b.values, share),
                    row: format!("{} and {}", a.row, b.row),
                    covered: a.covered && b.covered,
                    assumption: Some(notes.join("; ")),
                });
            }
        }
        None => {
            if let Some((d, mut reading)) = taken.next() {
                let note = format!(
                    "feed of the largest tabulated axial depth, {}, kept for the larger one",
                    millimetres(d)
                );
                reading.assumption = Some(
                    reading
                        .assumption
                        .map_or(note.clone(), |first| format!("{first}; {note}")),
                );
                readings.push(reading);
            }
        }
    }
    readings
}

impl Library {
    /// Feed per tooth of a milling cutter.
    ///
    /// Tables are read at the cutter's diameter and axial depth: interpolated between tabulated
    /// ones, scaled in proportion to the diameter below the smallest, kept above the largest, each
    /// stated as an assumption. A table that covers the diameter is preferred for the start value.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a diameter or depth that is not above zero, [`Code::Inconsistent`]
    /// for a process that feeds per revolution, [`Code::NoData`] where no row applies.
    pub fn feed_per_tooth(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
        diameter: Length,
        axial_depth: Length,
    ) -> Result<Ranged<Length>> {
        if !process.is_milling() {
            return Err(wrong_process(
                process,
                "a milling process; feed_per_revolution for the others",
            ));
        }
        self.feed(material, tool, process, diameter, axial_depth)
    }

    /// Feed per revolution of a drill, reamer or turning tool; the diameter is the tool's, or the
    /// work's when turning.
    ///
    /// # Errors
    /// As [`Library::feed_per_tooth`]; tapping is refused, since its feed is the lead of the thread.
    pub fn feed_per_revolution(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
        diameter: Length,
    ) -> Result<Ranged<Length>> {
        if process.is_milling() || process == Process::Tapping {
            return Err(wrong_process(
                process,
                "drilling, reaming or turning; a tap feeds the lead of its thread",
            ));
        }
        self.feed(material, tool, process, diameter, diameter)
    }

    fn feed(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
        diameter: Length,
        depth: Length,
    ) -> Result<Ranged<Length>> {
        let mut problems = Vec::new();
        for (name, value) in [("diameter", diameter), ("axial_depth", depth)] {
            if !(value.value > 0.0 && value.value.is_finite()) {
                problems.push(Problem::new(
                    Code::OutOfRange,
                    name,
                    millimetres(value.value),
                    "above 0 mm",
                    "give the size of the tool and of the cut",
                ));
            }
        }
        crate::error::Error::unless_empty(problems, ())?;
        self.feed_range(material, tool, process, diameter, depth)
            .ok_or_else(|| {
                let answered: Vec<ToolMaterial> = ToolMaterial::ALL
                    .iter()
                    .copied()
                    .filter(|other| {
                        self.feed_range(material, *other, process, diameter, depth)
                            .is_some()
                    })
                    .collect();
                no_data("feed", material, tool, process, &answered)
            })
    }

    fn feed_range(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
        diameter: Length,
        depth: Length,
    ) -> Option<Ranged<Length>> {
        let mut ways = attempts(tool, process);
        // Coating changes the speed, hardly the feed.
        for way in &mut ways {
            if way.cautious {
                way.cautious = false;
                for text in &mut way.assumptions {
                    if text.starts_with("uncoated carbide taken") {
                        *text = "feed of uncoated carbide taken from coated carbide".to_owned();
                    }
                }
            }
        }
        let per_tooth = process.is_milling();
        let rows: Vec<&FeedRow> = self
            .feeds
            .iter()
            .filter(|row| row.per_tooth == per_tooth)
            .collect();
        let selection = self.select(material, &rows, &ways, Question::Feed)?;
        let mut series: BTreeMap<(usize, String), Vec<&Hit<&FeedRow>>> = BTreeMap::new();
        let mut order: Vec<(String, Vec<String>, u8, Process)> = Vec::new();
        for hit in &selection.hits {
            let common = &hit.row.common;
            let key = (
                common.source.clone(),
                common.classes.clone(),
                hit.tier,
                hit.row.process,
            );
            let place = order
                .iter()
                .position(|other| *other == key)
                .unwrap_or_else(|| {
                    order.push(key);
                    order.len() - 1
                });
            series
                .entry((place, common.source.clone()))
                .or_default()
                .push(hit);
        }
        let mut found: Vec<(u8, bool, Support<Length>, Option<String>)> = Vec::new();
        for hits in series.values() {
            let Some(first) = hits.first() else { continue };
            let mut columns: Vec<Column> = Vec::new();
            for hit in hits {
                let depth = hit.row.axial_depth;
                match columns
                    .iter_mut()
                    .find(|column| column.axial_depth == depth)
                {
                    Some(column) => column.rows.push(hit.row),
                    None => columns.push(Column {
                        axial_depth: depth,
                        rows: vec![hit.row],
                    }),
                }
            }
            for reading in at_depth(&columns, diameter.value, depth.value) {
                let [low, start, high] = reading.values;
                let support = Support {
                    row: reading.row,
                    source: first.row.common.source.clone(),
                    provenance: first.row.common.provenance,
                    low: si(low),
                    start: si(start),
                    high: si(high),
                    why: format!(
                        "{}: {}, {}",
                        first.row.common.material, first.why, first.row.process
                    ),
                };
                found.push((first.tier, !reading.covered, support, reading.assumption));
            }
        }
        // The series come in order of preference; within a tier, one that covers the diameter leads.
        found.sort_by_key(|(tier, uncovered, ..)| (*tier, *uncovered));
        let mut assumptions = selection.assumptions;
        if selection.stand_in.is_some() {
            assumptions.push("no feed for the family: taken from a class that is fed alike (common practice, no source)".to_owned());
        }
        for (_, _, support, note) in &found {
            if let Some(note) = note {
                assumptions.push(format!("{} ({}): {note}", support.row, support.source));
            }
        }
        Ranged::over(
            found
                .into_iter()
                .map(|(_, _, support, _)| support)
                .collect(),
            assumptions,
        )
    }
}

fn wrong_process(process: Process, admissible: &str) -> crate::error::Error {
    Problem::new(
        Code::Inconsistent,
        "process",
        process.name(),
        admissible,
        "ask for the feed that belongs to the process",
    )
    .into()
}
