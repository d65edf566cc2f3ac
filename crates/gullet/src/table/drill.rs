//! Drills of standard sizes, a shop's own among them, and the choice of a tap drill from them.

use super::library::Library;
use super::parse::{Context, provenance};
use super::reader::{Row, above};
use super::types::{DrillSet, Provenance};
use crate::error::{Code, Error, Problem, Result};
use crate::formula::thread::{
    CHART_BASIS, OVERLAP_BASIS, form_tap_drill_diameter, form_thread_percent, tap_drill_diameter,
    thread_percent,
};
use crate::quantity::{self, Kind, Length, Ratio, UnitSystem, si};

pub(crate) const DRILL_COLUMNS: &[&str] = &[
    "id",
    "name",
    "set",
    "diameter_mm",
    "diameter_in",
    "printed_in",
    "src",
    "provenance",
    "note",
];

/// A drill that can be had: its name and diameter.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Drill {
    /// Row id.
    pub id: String,
    /// Name in the trade, such as No 7, F, 27/64 in or 8.5 mm.
    pub name: String,
    /// Set it belongs to.
    pub set: DrillSet,
    /// Diameter.
    pub diameter: Length,
    /// Source id.
    pub source: String,
    /// How the row came here.
    pub provenance: Provenance,
}

impl Context<'_> {
    pub(crate) fn drill(&mut self, row: &mut Row) -> Option<Drill> {
        let name = row.required("name");
        let set = if self.shop && row.text("set").is_empty() {
            Some(DrillSet::Own)
        } else {
            let names: Vec<&str> = DrillSet::ALL.iter().map(|set| set.name()).collect();
            row.name("set", DrillSet::parse, &names)
        };
        let printed = row.text("printed_in");
        let diameter = row.quantity(
            &[
                ("diameter_mm", "mm", 1.0, 1000.0),
                ("diameter_in", "in", 25.4, 1000.0),
            ],
            above(0.0, 0.5),
            printed,
        );
        if diameter.is_none() && !row.failed() {
            row.refuse(
                "diameter_mm",
                "",
                "a value",
                "give the diameter in one of its units",
            );
        }
        let source = self.source(row, "src");
        let provenance = provenance(row, self.shop);
        match (set, diameter, provenance) {
            (Some(set), Some(diameter), Some(provenance)) if !row.failed() => Some(Drill {
                id: row.text("id").to_owned(),
                name,
                set,
                diameter: si(diameter),
                source,
                provenance,
            }),
            _ => None,
        }
    }
}

/// What a percentage of thread is a share of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum ThreadBasis {
    /// Cutting tap, as tap-drill charts reckon: over 1.2990381 pitches.
    Chart,
    /// Cutting tap, the ISO and unified overlap: over 1.0825318 pitches; 100 % is the basic minor
    /// diameter.
    Overlap,
    /// Forming tap, as its charts reckon.
    Forming,
}

impl ThreadBasis {
    fn percent(self, major_diameter: Length, pitch: Length, drill: Length) -> Ratio {
        match self {
            ThreadBasis::Chart => {
                thread_percent::value(major_diameter, pitch, drill, si(CHART_BASIS))
            }
            ThreadBasis::Overlap => {
                thread_percent::value(major_diameter, pitch, drill, si(OVERLAP_BASIS))
            }
            ThreadBasis::Forming => form_thread_percent::value(major_diameter, pitch, drill),
        }
    }

    /// Whether there is a drill for this percentage of this thread.
    fn check(self, major_diameter: Length, pitch: Length, percent: Ratio) -> Result<()> {
        let [major, pitch, percent] = [major_diameter.value, pitch.value, percent.value];
        match self {
            ThreadBasis::Chart => {
                tap_drill_diameter::FORMULA.call(&[major, pitch, percent, CHART_BASIS])
            }
            ThreadBasis::Overlap => {
                tap_drill_diameter::FORMULA.call(&[major, pitch, percent, OVERLAP_BASIS])
            }
            ThreadBasis::Forming => form_tap_drill_diameter::FORMULA.call(&[major, pitch, percent]),
        }
        .map(|_| ())
    }
}

/// The thread a tap drill is wanted for, and how much of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TapDrillWish {
    /// Major diameter of the thread.
    pub major_diameter: Length,
    /// Pitch.
    pub pitch: Length,
    /// Percentage of thread to come near.
    pub thread_percent: Ratio,
    /// Least percentage that still holds.
    pub smallest_percent: Ratio,
    /// Largest percentage that the tap still cuts.
    pub largest_percent: Ratio,
    /// What the three percentages are shares of.
    pub basis: ThreadBasis,
}

/// A drill for a thread, and the thread it leaves.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct TapDrill<'a> {
    /// The drill.
    pub drill: &'a Drill,
    /// Percentage on the basis of the wish.
    pub percent: Ratio,
    /// Percentage of a cutting tap as tap-drill charts reckon; none for a forming tap.
    pub chart_percent: Option<Ratio>,
    /// Percentage of a cutting tap on the ISO and unified overlap; none for a forming tap.
    pub overlap_percent: Option<Ratio>,
}

/// How far a percentage may lie beyond its end by rounding.
const SLACK: f64 = 1e-9;

impl TapDrillWish {
    fn check(&self) -> Result<()> {
        self.basis
            .check(self.major_diameter, self.pitch, self.thread_percent)?;
        let text = |ratio: Ratio| {
            if ratio.value.is_finite() {
                quantity::format(Kind::Ratio, ratio.value, UnitSystem::Metric)
            } else {
                ratio.value.to_string()
            }
        };
        let wanted = self.thread_percent.value;
        let mut problems = Vec::new();
        let smallest = self.smallest_percent.value;
        if !(0.0..=wanted).contains(&smallest) {
            problems.push(Problem::new(
                Code::OutOfRange,
                "smallest_percent",
                text(self.smallest_percent),
                format!("0 to thread_percent = {}", text(self.thread_percent)),
                "give the least percentage of thread that still holds",
            ));
        }
        let largest = self.largest_percent.value;
        if !(largest.is_finite() && largest >= wanted) {
            problems.push(Problem::new(
                Code::OutOfRange,
                "largest_percent",
                text(self.largest_percent),
                format!("at least thread_percent = {}", text(self.thread_percent)),
                "give the largest percentage of thread that the tap still cuts",
            ));
        }
        Error::unless_empty(problems, ())
    }

    fn drilled<'a>(&self, drill: &'a Drill) -> TapDrill<'a> {
        let on =
            |basis: ThreadBasis| basis.percent(self.major_diameter, self.pitch, drill.diameter);
        let cutting = self.basis != ThreadBasis::Forming;
        TapDrill {
            drill,
            percent: on(self.basis),
            chart_percent: cutting.then(|| on(ThreadBasis::Chart)),
            overlap_percent: cutting.then(|| on(ThreadBasis::Overlap)),
        }
    }

    fn miss(&self, found: &TapDrill) -> f64 {
        (found.percent.value - self.thread_percent.value).abs()
    }

    fn admits(&self, found: &TapDrill) -> bool {
        let percent = found.percent.value;
        percent >= self.smallest_percent.value * (1.0 - SLACK)
            && percent <= self.largest_percent.value * (1.0 + SLACK)
    }
}

impl Library {
    /// Every drill, in the order of the table, a shop's new ones last.
    pub fn drills(&self) -> &[Drill] {
        &self.drills
    }

    /// The drills of these sets, or of all where none is named, that leave an admissible percentage of
    /// thread: the one nearest to the percentage wanted first, of two equally near the larger drill.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] and the like for a thread or percentages that make no sense;
    /// [`Code::NoData`] where no drill of the sets leaves an admissible percentage, with the nearest one.
    ///
    /// ```
    /// use gullet::quantity::si;
    /// use gullet::table::{DrillSet, Library, TapDrillWish, ThreadBasis};
    /// let wish = TapDrillWish {
    ///     major_diameter: si(0.25 * 0.0254),
    ///     pitch: si(0.0254 / 20.0),
    ///     thread_percent: si(0.75),
    ///     smallest_percent: si(0.60),
    ///     largest_percent: si(0.83),
    ///     basis: ThreadBasis::Chart,
    /// };
    /// let inch = [DrillSet::Fraction, DrillSet::Number, DrillSet::Letter];
    /// let found = Library::builtin().tap_drills(&wish, &inch)?;
    /// assert_eq!(found[0].drill.name, "No 7");
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn tap_drills(&self, wish: &TapDrillWish, sets: &[DrillSet]) -> Result<Vec<TapDrill<'_>>> {
        wish.check()?;
        let mut found: Vec<TapDrill> = self
            .drills
            .iter()
            .filter(|drill| sets.is_empty() || sets.contains(&drill.set))
            .filter(|drill| drill.diameter < wish.major_diameter)
            .map(|drill| wish.drilled(drill))
            .collect();
        found.sort_by(|a, b| {
            (wish.miss(a).total_cmp(&wish.miss(b)))
                .then(b.drill.diameter.value.total_cmp(&a.drill.diameter.value))
        });
        let nearest = found.first().map(|near| {
            let percent = quantity::format(Kind::Ratio, near.percent.value, UnitSystem::Metric);
            format!(
                "the nearest is {} with a share of {percent}: widen the percentages or the sets, or lay a drill of your own over the table",
                near.drill.name
            )
        });
        found.retain(|drill| wish.admits(drill));
        if found.is_empty() {
            let share =
                |ratio: Ratio| quantity::format(Kind::Ratio, ratio.value, UnitSystem::Metric);
            return Err(Problem::new(
                Code::NoData,
                "tap_drill",
                share(wish.thread_percent),
                format!(
                    "a drill that leaves {} to {}",
                    share(wish.smallest_percent),
                    share(wish.largest_percent)
                ),
                nearest.unwrap_or_else(|| {
                    "no drill of the sets is smaller than the thread: lay a drill of your own over the table".to_owned()
                }),
            )
            .into());
        }
        Ok(found)
    }
}
