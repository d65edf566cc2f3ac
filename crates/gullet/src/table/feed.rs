//! Feeds per tooth and per revolution, over cutter diameter and axial depth.

mod cursor;

use super::library::Library;
use super::rows::{Common, FeedRow};
use super::select::{Hit, Question, TableRow, attempts};
use super::speed::no_data;
use super::types::{Material, Process, Ranged, Support, ToolMaterial};
use crate::error::{Code, Problem, Result};
use crate::quantity::{Length, si};

pub(crate) use cursor::FeedCursor;

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
struct Column {
    axial_depth: Option<f64>,
    rows: Vec<FeedRow>,
}

/// How a value was read between or beside tabulated diameters.
#[derive(Clone, Copy)]
enum Read {
    Tabulated,
    /// The row states no diameter.
    Anywhere,
    Between(f64, f64),
    Below(f64),
    Above(f64),
}

/// A value at a diameter: the row, or the two rows, it was read from.
#[derive(Clone, Copy)]
struct Reading<'r> {
    values: Values,
    rows: (&'r FeedRow, Option<&'r FeedRow>),
    read: Read,
}

/// The same at an axial depth: read from one column, between two, or beyond the deepest.
#[derive(Clone, Copy)]
enum Deep<'r> {
    One(Reading<'r>),
    Between(f64, Reading<'r>, f64, Reading<'r>, f64),
    Beyond(f64, Reading<'r>),
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

fn millimetres(x: f64) -> String {
    let text = format!("{:.3}", x * 1000.0);
    format!("{} mm", text.trim_end_matches('0').trim_end_matches('.'))
}

impl Reading<'_> {
    /// Whether the table covers the diameter.
    fn covered(&self) -> bool {
        !matches!(self.read, Read::Below(_) | Read::Above(_))
    }

    fn row(&self) -> String {
        match self.rows {
            (a, Some(b)) => format!("{} and {}", a.common.id, b.common.id),
            (a, None) => a.common.id.clone(),
        }
    }

    fn note(&self) -> Option<String> {
        match self.read {
            Read::Tabulated => None,
            Read::Anywhere => {
                Some("the row states no diameter and is used as it stands".to_owned())
            }
            Read::Between(d0, d1) => Some(format!(
                "feed interpolated between the tabulated diameters {} and {}",
                millimetres(d0),
                millimetres(d1)
            )),
            Read::Below(d1) => Some(format!(
                "feed scaled in proportion to the diameter below the smallest tabulated one, {}",
                millimetres(d1)
            )),
            Read::Above(d0) => Some(format!(
                "feed of the largest tabulated diameter, {}, kept for the larger one",
                millimetres(d0)
            )),
        }
    }
}

impl Deep<'_> {
    fn values(&self) -> Values {
        match self {
            Deep::One(reading) | Deep::Beyond(_, reading) => reading.values,
            Deep::Between(_, a, _, b, share) => mix(a.values, b.values, *share),
        }
    }

    fn covered(&self) -> bool {
        match self {
            Deep::One(reading) | Deep::Beyond(_, reading) => reading.covered(),
            Deep::Between(_, a, _, b, _) => a.covered() && b.covered(),
        }
    }

    fn row(&self) -> String {
        match self {
            Deep::One(reading) | Deep::Beyond(_, reading) => reading.row(),
            Deep::Between(_, a, _, b, _) => format!("{} and {}", a.row(), b.row()),
        }
    }

    /// Whether something was assumed.
    fn assumed(&self) -> bool {
        !matches!(self, Deep::One(reading) if matches!(reading.read, Read::Tabulated))
    }

    fn note(&self) -> Option<String> {
        let (first, second, own) = match self {
            Deep::One(reading) => (reading.note(), None, None),
            Deep::Between(d0, a, d1, b, _) => (
                a.note(),
                b.note(),
                Some(format!(
                    "feed interpolated between the tabulated axial depths {} and {}",
                    millimetres(*d0),
                    millimetres(*d1)
                )),
            ),
            Deep::Beyond(d, reading) => (
                reading.note(),
                None,
                Some(format!(
                    "feed of the largest tabulated axial depth, {}, kept for the larger one",
                    millimetres(*d)
                )),
            ),
        };
        let notes: Vec<String> = first.into_iter().chain(second).chain(own).collect();
        (!notes.is_empty()).then(|| notes.join("; "))
    }
}

/// Reads one column at a diameter: constant where rows have none, straight between rows, in
/// proportion to the diameter below the smallest, constant above the largest.
fn at_diameter(rows: &[FeedRow], diameter: f64) -> Option<Reading<'_>> {
    let tolerance = 1e-9 * diameter;
    let inside = |row: &&FeedRow| {
        row.diameter
            .is_none_or(|(low, high)| low - tolerance <= diameter && diameter <= high + tolerance)
    };
    if let Some(row) = rows.iter().find(inside) {
        let anywhere = row.diameter.is_none() && row.process == Process::EndMilling;
        return Some(Reading {
            values: row.values,
            rows: (row, None),
            read: if anywhere {
                Read::Anywhere
            } else {
                Read::Tabulated
            },
        });
    }
    let mut below: Option<(f64, &FeedRow)> = None;
    let mut above: Option<(f64, &FeedRow)> = None;
    for row in rows {
        let Some((low, high)) = row.diameter else {
            continue;
        };
        if high < diameter && below.is_none_or(|(largest, _)| high >= largest) {
            below = Some((high, row));
        }
        if low > diameter && above.is_none_or(|(smallest, _)| low < smallest) {
            above = Some((low, row));
        }
    }
    let (values, rows, read) = match (below, above) {
        (Some((d0, a)), Some((d1, b))) => (
            mix(a.values, b.values, (diameter - d0) / (d1 - d0)),
            (a, Some(b)),
            Read::Between(d0, d1),
        ),
        (None, Some((d1, b))) => (
            b.values.map(|value| value * (diameter / d1)),
            (b, None),
            Read::Below(d1),
        ),
        (Some((d0, a)), None) => (a.values, (a, None), Read::Above(d0)),
        (None, None) => return None,
    };
    Some(Reading { values, rows, read })
}

/// An axial depth less what rounding may add to it.
fn reach(depth: f64) -> f64 {
    depth - 1e-9 * depth.abs()
}

/// Where a depth stands between two.
fn share(d0: f64, d1: f64, depth: f64) -> f64 {
    ((depth - d0) / (d1 - d0)).clamp(0.0, 1.0)
}

/// The axial depths, less rounding, that are read from the same columns.
#[derive(Clone, Copy)]
struct Span {
    above: f64,
    up_to: f64,
}

impl Span {
    const EVERY: Span = Span {
        above: f64::NEG_INFINITY,
        up_to: f64::INFINITY,
    };

    /// The depths in both.
    fn and(self, other: Span) -> Span {
        Span {
            above: self.above.max(other.above),
            up_to: self.up_to.min(other.up_to),
        }
    }

    fn holds(self, reach: f64) -> bool {
        self.above < reach && reach <= self.up_to
    }
}

/// The rows of one source that answer alike, by axial depth.
struct Series {
    tier: u8,
    /// Without an axial depth.
    plain: Vec<Column>,
    /// By rising axial depth.
    deep: Vec<Column>,
    source: String,
    provenance: super::types::Provenance,
    why: String,
}

impl Series {
    /// Shows the readings at a diameter and an axial depth, straight between depths and constant
    /// beyond them; gives the depths that are read from the same columns.
    fn readings<'r>(&'r self, diameter: f64, depth: f64, mut see: impl FnMut(Deep<'r>)) -> Span {
        for column in &self.plain {
            if let Some(reading) = at_diameter(&column.rows, diameter) {
                see(Deep::One(reading));
            }
        }
        if self.deep.is_empty() {
            return Span::EVERY;
        }
        let depth_of = |column: &Column| column.axial_depth.unwrap_or_default();
        let read = |place: usize| {
            let column = self.deep.get(place)?;
            Some((depth_of(column), at_diameter(&column.rows, diameter)?))
        };
        let reach = reach(depth);
        let place = self
            .deep
            .iter()
            .position(|column| reach <= depth_of(column));
        let bound = |place: Option<usize>, none: f64| {
            place
                .and_then(|place| self.deep.get(place))
                .map_or(none, depth_of)
        };
        let last = place.unwrap_or(self.deep.len()).checked_sub(1);
        let span = Span {
            above: bound(last, f64::NEG_INFINITY),
            up_to: bound(place, f64::INFINITY),
        };
        match place {
            Some(0) => {
                if let Some((_, reading)) = read(0) {
                    see(Deep::One(reading));
                }
            }
            Some(place) => {
                if let (Some((d0, a)), Some((d1, b))) = (read(place - 1), read(place)) {
                    see(Deep::Between(d0, a, d1, b, share(d0, d1, depth)));
                }
            }
            None => {
                if let Some((d, reading)) = self.deep.len().checked_sub(1).and_then(read) {
                    see(Deep::Beyond(d, reading));
                }
            }
        }
        span
    }
}

/// The feeds of one material under one tool, looked up once and read at any size.
pub(crate) struct FeedReader {
    series: Vec<Series>,
    assumptions: Vec<String>,
}

/// Low, start and high in numbers.
#[derive(Clone, Copy)]
pub(crate) struct FeedNumbers {
    pub low: f64,
    pub start: f64,
    pub high: f64,
    /// Whether something was assumed to come to them.
    pub assumed: bool,
}

impl FeedReader {
    /// The range at a diameter and an axial depth.
    pub(crate) fn range(&self, diameter: Length, depth: Length) -> Option<Ranged<Length>> {
        let mut found: Vec<(u8, bool, Support<Length>, Option<String>)> = Vec::new();
        for series in &self.series {
            series.readings(diameter.value, depth.value, |reading| {
                let [low, start, high] = reading.values();
                let support = Support {
                    row: reading.row(),
                    source: series.source.clone(),
                    provenance: series.provenance,
                    low: si(low),
                    start: si(start),
                    high: si(high),
                    why: series.why.clone(),
                };
                found.push((series.tier, !reading.covered(), support, reading.note()));
            });
        }
        // The series come in order of preference; within a tier, one that covers the diameter leads.
        found.sort_by_key(|(tier, uncovered, ..)| (*tier, *uncovered));
        let mut assumptions = self.assumptions.clone();
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

    /// The same in numbers, without words.
    pub(crate) fn numbers(&self, diameter: f64, depth: f64) -> FeedNumbers {
        let mut numbers = FeedNumbers {
            low: f64::NAN,
            start: f64::NAN,
            high: f64::NAN,
            assumed: !self.assumptions.is_empty(),
        };
        let mut best: Option<(u8, bool)> = None;
        for series in &self.series {
            series.readings(diameter, depth, |reading| {
                let [low, start, high] = reading.values();
                let rank = (series.tier, !reading.covered());
                if best.is_none_or(|best| rank < best) {
                    best = Some(rank);
                    numbers.start = start;
                }
                numbers.low = numbers.low.min(low);
                numbers.high = numbers.high.max(high);
                numbers.assumed |= reading.assumed();
            });
        }
        numbers
    }
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
        self.feed_reader(material, tool, process)
            .and_then(|reader| reader.range(diameter, depth))
            .ok_or_else(|| self.no_feed(material, tool, process))
    }

    /// The error where no row gives a feed.
    pub(crate) fn no_feed(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
    ) -> crate::error::Error {
        let answered: Vec<ToolMaterial> = ToolMaterial::ALL
            .iter()
            .copied()
            .filter(|other| self.feed_reader(material, *other, process).is_some())
            .collect();
        no_data("feed", material, tool, process, &answered)
    }

    /// The rows that give a feed, ready to be read at any size; none where there are none.
    pub(crate) fn feed_reader(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
    ) -> Option<FeedReader> {
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
        let rows = self.feeds.iter().filter(|row| row.per_tooth == per_tooth);
        let selection = self.select(material, rows, &ways, Question::Feed)?;
        let mut groups: Vec<(Key, Vec<&Hit<FeedRow>>)> = Vec::new();
        for hit in &selection.hits {
            let common = &hit.row.common;
            let key = (
                common.source.clone(),
                common.classes.clone(),
                hit.tier,
                hit.row.process,
            );
            match groups.iter_mut().find(|(other, _)| *other == key) {
                Some((_, hits)) => hits.push(hit),
                None => groups.push((key, vec![hit])),
            }
        }
        let series = groups
            .iter()
            .filter_map(|(_, hits)| Some(series(hits, hits.first()?)))
            .collect();
        let mut assumptions = selection.assumptions;
        if selection.stand_in.is_some() {
            assumptions.push("no feed for the family: taken from a class that is fed alike (common practice, no source)".to_owned());
        }
        Some(FeedReader {
            series,
            assumptions,
        })
    }
}

/// Rows that belong together: source, classes, tier, process.
type Key = (String, Vec<String>, u8, Process);

fn series(hits: &[&Hit<FeedRow>], first: &Hit<FeedRow>) -> Series {
    let mut columns: Vec<Column> = Vec::new();
    for hit in hits {
        let depth = hit.row.axial_depth;
        match columns
            .iter_mut()
            .find(|column| column.axial_depth == depth)
        {
            Some(column) => column.rows.push(hit.row.clone()),
            None => columns.push(Column {
                axial_depth: depth,
                rows: vec![hit.row.clone()],
            }),
        }
    }
    let (plain, mut deep): (Vec<Column>, Vec<Column>) = columns
        .into_iter()
        .partition(|column| column.axial_depth.is_none());
    deep.sort_by(|a, b| {
        let depth = |column: &Column| column.axial_depth.unwrap_or_default();
        depth(a).total_cmp(&depth(b))
    });
    Series {
        tier: first.tier,
        plain,
        deep,
        source: first.row.common.source.clone(),
        provenance: first.row.common.provenance,
        why: format!(
            "{}: {}, {}",
            first.row.common.material, first.why, first.row.process
        ),
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
