//! What a study gives for every row.

use crate::operation::{Consequences, LimitName, Settings, WarningCodes};
use crate::quantity::Kind;

/// A column of results.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct ResultField {
    /// Name of the column, without the unit.
    pub name: &'static str,
    /// What it measures.
    pub kind: Kind,
    /// What it is.
    pub meaning: &'static str,
    /// Whether good rows may lack it.
    pub optional: bool,
}

/// Results beside the settings and consequences of a cut.
const OTHERS: &[ResultField] = &[
    other(
        "speed_low",
        Kind::Velocity,
        "Cutting speed at the low end of the tables.",
    ),
    other(
        "speed_start",
        Kind::Velocity,
        "Cutting speed that the tables start with.",
    ),
    other(
        "speed_high",
        Kind::Velocity,
        "Cutting speed at the high end of the tables.",
    ),
    other(
        "force_low",
        Kind::Force,
        "Mean tangential force with the lowest pair of the material.",
    ),
    other(
        "force_high",
        Kind::Force,
        "Mean tangential force with the highest pair of the material.",
    ),
    other(
        "power_low",
        Kind::Power,
        "Power at the cutter with the lowest pair of the material.",
    ),
    other(
        "power_high",
        Kind::Power,
        "Power at the cutter with the highest pair of the material.",
    ),
    other(
        "time_low",
        Kind::Time,
        "Time of the pass with speed and feed at the high ends of the tables.",
    ),
    other(
        "time_start",
        Kind::Time,
        "Time of the pass with speed and feed at the tables' starting values.",
    ),
    other(
        "time_high",
        Kind::Time,
        "Time of the pass with speed and feed at the low ends of the tables.",
    ),
    other(
        "binding_share",
        Kind::Ratio,
        "Share of its bound that the binding limit uses.",
    ),
];

const fn other(name: &'static str, kind: Kind, meaning: &'static str) -> ResultField {
    ResultField {
        name,
        kind,
        meaning,
        optional: false,
    }
}

impl ResultField {
    /// Every column of results, in the order of [`Settings::FIELDS`] and [`Consequences::FIELDS`],
    /// the others after them.
    pub fn all() -> Vec<ResultField> {
        Settings::FIELDS
            .iter()
            .chain(Consequences::FIELDS)
            .map(|field| ResultField {
                name: field.name,
                kind: field.kind,
                meaning: field.meaning,
                optional: field.optional,
            })
            .chain(OTHERS.iter().copied())
            .collect()
    }
}

/// The results of a study, a value a row in each column.
#[derive(Debug, Clone, Default)]
pub struct Results {
    /// The columns asked for, in SI units; NaN stands for a value that the row does not have.
    pub columns: Vec<Vec<f64>>,
    /// 0, or the number of the error's code.
    pub status: Vec<i32>,
    /// Number of the [`LimitName`] that binds, or of the one that made the row an error; 0 for none.
    pub binding: Vec<u8>,
    /// Number of the limit that holds the feed below the wanted one; 0 for none.
    pub held_by: Vec<u8>,
    /// Doubts, as the bits of [`WarningCodes`].
    pub warnings: Vec<u8>,
}

impl Results {
    /// Room for so many columns and rows; what stands in it is overwritten.
    pub(super) fn resize(&mut self, columns: usize, rows: usize) {
        self.columns.truncate(columns);
        for column in &mut self.columns {
            column.resize(rows, 0.0);
        }
        // Zeroed memory costs nothing until it is written.
        self.columns.resize_with(columns, || vec![0.0; rows]);
        self.status.clear();
        self.status.resize(rows, 0);
        self.binding.clear();
        self.binding.resize(rows, 0);
        self.held_by.clear();
        self.held_by.resize(rows, 0);
        self.warnings.clear();
        self.warnings.resize(rows, 0);
    }

    /// Rows there are.
    pub fn count(&self) -> usize {
        self.status.len()
    }

    /// The limit that binds in a row.
    pub fn binding(&self, row: usize) -> Option<LimitName> {
        LimitName::from_number(*self.binding.get(row)?)
    }

    /// The doubts of a row.
    pub fn warnings(&self, row: usize) -> WarningCodes {
        WarningCodes::from_bits(self.warnings.get(row).copied().unwrap_or_default())
    }
}
