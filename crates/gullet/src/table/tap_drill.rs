//! The choice of a tap drill in words: bases and sets by name, a wish from names and texts.

use super::drill::{TapDrillWish, ThreadBasis};
use super::types::DrillSet;
use crate::error::{Code, Error, Problem, Result, unknown_name};
use crate::quantity::{Kind, Length, Ratio, parse, si};

/// Least, wanted and largest percentage of thread on the basis of tap-drill charts; common practice,
/// no source.
pub(crate) const CHART_PERCENTS: [f64; 3] = [0.60, 0.75, 0.83];

/// The same thread on the overlap of ISO and unified threads: six fifths, rounded.
const OVERLAP_PERCENTS: [f64; 3] = [0.72, 0.90, 1.0];

/// Of a forming tap; common practice, no source.
const FORMING_PERCENTS: [f64; 3] = [0.55, 0.65, 0.75];

impl ThreadBasis {
    /// Every basis.
    pub const ALL: &'static [ThreadBasis] = &[
        ThreadBasis::Chart,
        ThreadBasis::Overlap,
        ThreadBasis::Forming,
    ];

    /// Stable name.
    pub fn name(self) -> &'static str {
        match self {
            ThreadBasis::Chart => "chart",
            ThreadBasis::Overlap => "overlap",
            ThreadBasis::Forming => "forming",
        }
    }

    /// The basis of this name.
    ///
    /// # Errors
    /// `UnknownName` with the nearest right one.
    pub fn parse(text: &str) -> Result<ThreadBasis> {
        let wanted = text.trim();
        ThreadBasis::ALL
            .iter()
            .copied()
            .find(|basis| basis.name().eq_ignore_ascii_case(wanted))
            .ok_or_else(|| {
                unknown_name("basis", text, ThreadBasis::ALL.iter().map(|b| b.name())).into()
            })
    }
}

impl DrillSet {
    /// Sets by their names; every wrong one at once.
    ///
    /// # Errors
    /// `UnknownName` with the nearest right one.
    pub fn parse_all<'t>(names: impl IntoIterator<Item = &'t str>) -> Result<Vec<DrillSet>> {
        let mut problems = Vec::new();
        let mut sets = Vec::new();
        for name in names {
            match DrillSet::parse(name) {
                Some(set) => sets.push(set),
                None => problems.push(unknown_name(
                    "sets",
                    name,
                    DrillSet::ALL.iter().map(|set| set.name()),
                )),
            }
        }
        Error::unless_empty(problems, sets)
    }
}

impl TapDrillWish {
    /// What a wish is read from: name, kind, and whether it must be given.
    pub const INPUTS: &'static [(&'static str, Kind, bool)] = &[
        ("major_diameter", Kind::Length, true),
        ("pitch", Kind::Length, true),
        ("thread_percent", Kind::Ratio, false),
        ("smallest_percent", Kind::Ratio, false),
        ("largest_percent", Kind::Ratio, false),
    ];

    /// The usual percentages of a basis, common practice, no source.
    pub fn usual(major_diameter: Length, pitch: Length, basis: ThreadBasis) -> TapDrillWish {
        let [smallest, wanted, largest] = match basis {
            ThreadBasis::Chart => CHART_PERCENTS,
            ThreadBasis::Overlap => OVERLAP_PERCENTS,
            ThreadBasis::Forming => FORMING_PERCENTS,
        };
        TapDrillWish {
            major_diameter,
            pitch,
            thread_percent: si(wanted),
            smallest_percent: si(smallest),
            largest_percent: si(largest),
            basis,
        }
    }

    /// A wish from SI values by their names; what is left out is usual.
    ///
    /// # Errors
    /// `Missing`, `Duplicate` or `UnknownName`, every one at once. Values are looked at with the drills.
    pub fn from_values(values: &[(&str, f64)], basis: ThreadBasis) -> Result<TapDrillWish> {
        let mut problems = Vec::new();
        let mut found = [None; 5];
        for (name, value) in values {
            let place = TapDrillWish::INPUTS
                .iter()
                .position(|(known, ..)| known == name);
            match place.and_then(|place| found.get_mut(place)) {
                None => problems.push(unknown_name(
                    "tap_drill",
                    name,
                    TapDrillWish::INPUTS.iter().map(|(known, ..)| *known),
                )),
                Some(Some(_)) => problems.push(Problem::new(
                    Code::Duplicate,
                    *name,
                    "",
                    "each value once",
                    "give it once",
                )),
                Some(slot) => *slot = Some(*value),
            }
        }
        for ((name, _, required), value) in TapDrillWish::INPUTS.iter().zip(&found) {
            if *required && value.is_none() {
                problems.push(Problem::new(
                    Code::Missing,
                    *name,
                    "",
                    "above 0 mm",
                    "give major diameter and pitch of the thread; for 20 threads per inch 1/20 in",
                ));
            }
        }
        let [major, pitch, wanted, smallest, largest] = found;
        let length = |value: Option<f64>| si(value.unwrap_or(f64::NAN));
        let usual = TapDrillWish::usual(length(major), length(pitch), basis);
        let percent = |value: Option<f64>, usual: Ratio| value.map_or(usual, si);
        Error::unless_empty(
            problems,
            TapDrillWish {
                thread_percent: percent(wanted, usual.thread_percent),
                smallest_percent: percent(smallest, usual.smallest_percent),
                largest_percent: percent(largest, usual.largest_percent),
                ..usual
            },
        )
    }

    /// A wish from names and texts with units.
    ///
    /// # Errors
    /// As [`TapDrillWish::from_values`], and as [`parse`]; every problem at once.
    ///
    /// ```
    /// use gullet::table::{DrillSet, Library, TapDrillWish, ThreadBasis};
    /// let pairs = [("major_diameter", "10 mm"), ("pitch", "1.5 mm")];
    /// let pairs = pairs.map(|(name, text)| (name.to_owned(), text.to_owned()));
    /// let wish = TapDrillWish::read(&pairs, ThreadBasis::Chart)?;
    /// let found = Library::builtin().tap_drills(&wish, &[DrillSet::Metric])?;
    /// assert!(found.iter().any(|near| near.drill.name == "8.5 mm"));
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn read(pairs: &[(String, String)], basis: ThreadBasis) -> Result<TapDrillWish> {
        let mut problems = Vec::new();
        let mut values = Vec::new();
        for (name, text) in pairs {
            let kind = TapDrillWish::INPUTS
                .iter()
                .find(|(known, ..)| known == name)
                .map(|(_, kind, _)| *kind);
            match kind.map(|kind| parse(kind, text)) {
                Some(Err(error)) => {
                    problems.extend(error.within(name).into_problems());
                    // Given, if wrongly: not missing as well.
                    values.push((name.as_str(), f64::NAN));
                }
                Some(Ok(value)) => values.push((name.as_str(), value)),
                None => values.push((name.as_str(), f64::NAN)),
            }
        }
        match TapDrillWish::from_values(&values, basis) {
            Ok(wish) => Error::unless_empty(problems, wish),
            Err(error) => {
                problems.extend(error.into_problems());
                Error::unless_empty(problems, TapDrillWish::usual(si(0.0), si(0.0), basis))
            }
        }
    }
}
