//! How a study reads its rows and which results it writes.

use gullet::quantity::UnitSystem;
use gullet::study::Uncertainty;

/// Which results are written.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub enum Columns {
    /// What one sets on the machine and looks at first.
    #[default]
    Usual,
    /// All there are.
    All,
    /// These, named with or without their unit.
    Named(Vec<String>),
}

impl Columns {
    /// The results of [`Columns::Usual`].
    pub const USUAL: &'static [&'static str] = &[
        "spindle_speed",
        "cutting_speed",
        "feed_per_tooth",
        "table_feed",
        "max_chip_thickness",
        "removal_rate",
        "motor_power",
        "torque",
        "peak_force",
        "deflection",
        "time",
        "binding_share",
    ];
}

/// What becomes of text in a column of numbers.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum TextNumbers {
    /// The column is refused.
    #[default]
    Refused,
    /// Each cell is read as a number; the text itself is passed through.
    Kept,
    /// Each cell is read as a number, which takes the place of the text.
    Replaced,
}

/// How a study reads its rows and which results it writes.
#[derive(Debug, Clone, PartialEq)]
pub struct StudyOptions {
    /// Units of the results.
    pub units: UnitSystem,
    /// Which results are written.
    pub columns: Columns,
    /// What becomes of text in a column of numbers; for rows that come from text, as CSV does.
    pub text_numbers: TextNumbers,
    /// Columns that are passed through whatever their name looks like.
    pub pass_through: Vec<String>,
    /// What is drawn, and which quantiles of the results are written; none where nothing is.
    pub uncertainty: Option<Uncertainty>,
    /// Whether names among the results are dictionary-encoded; plain text is for readers that know
    /// no dictionaries.
    pub dictionaries: bool,
}

impl Default for StudyOptions {
    fn default() -> StudyOptions {
        StudyOptions {
            units: UnitSystem::Metric,
            columns: Columns::Usual,
            text_numbers: TextNumbers::Refused,
            pass_through: Vec::new(),
            uncertainty: None,
            dictionaries: true,
        }
    }
}
