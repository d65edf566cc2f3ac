//! How a study reads its rows and which results it writes.

use crate::draws::DrawWords;
use gullet::error::{Code, Error, Problem, Result, unknown_name};
use gullet::quantity::UnitSystem;
use gullet::study::Uncertainty;

/// Which results are written.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub enum Columns {
    /// What one sets on the machine and looks at first: of an operation of its own, all results it
    /// gives.
    #[default]
    Usual,
    /// All there are.
    All,
    /// These, named with or without their unit.
    Named(Vec<String>),
}

impl Columns {
    /// The results of [`Columns::Usual`] of milling cuts.
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

    /// Reads `usual`, `all`, or names with commas between.
    ///
    /// ```
    /// use gullet_table::Columns;
    /// assert_eq!(Columns::parse("all"), Columns::All);
    /// let two = Columns::Named(vec!["time".to_owned(), "torque".to_owned()]);
    /// assert_eq!(Columns::parse("time, torque"), two);
    /// ```
    pub fn parse(text: &str) -> Columns {
        match text {
            "usual" => Columns::Usual,
            "all" => Columns::All,
            names => Columns::Named(list(names)),
        }
    }
}

/// Names with commas between.
fn list(text: &str) -> Vec<String> {
    text.split(',')
        .map(|name| name.trim().to_owned())
        .filter(|name| !name.is_empty())
        .collect()
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

impl StudyOptions {
    /// Takes options from pairs of name and value over those at hand: `units` metric or inch,
    /// `columns` as [`Columns::parse`] reads them, `text_numbers` refused, kept or replaced,
    /// `pass_through` names with commas between; `spread.NAME` a spread as
    /// [`gullet::study::Spread::parse`] reads it, with `draws`, `seed`, `quantiles` and `first_row` as
    /// in [`DrawWords`].
    ///
    /// ```
    /// use gullet_table::{Columns, StudyOptions};
    /// let pairs = [("units", "inch"), ("columns", "all")]
    ///     .map(|(name, value)| (name.to_owned(), value.to_owned()));
    /// let options = StudyOptions::default().with(&pairs)?;
    /// assert_eq!(options.columns, Columns::All);
    /// let drawn = [("spread.cutting_force", "0.9..1.15"), ("draws", "200")]
    ///     .map(|(name, value)| (name.to_owned(), value.to_owned()));
    /// assert_eq!(options.with(&drawn)?.uncertainty.unwrap().draws, 200);
    /// # Ok::<(), gullet::Error>(())
    /// ```
    ///
    /// # Errors
    /// Names and words that mean nothing, and options given twice, all in one error.
    pub fn with(mut self, pairs: &[(String, String)]) -> Result<StudyOptions> {
        const UNITS: [&str; 2] = ["metric", "inch"];
        const SPREAD: &str = "spread.";
        const TEXT: [&str; 3] = ["refused", "kept", "replaced"];
        let mut problems = Vec::new();
        let mut drawn = DrawWords::default();
        for (place, (name, value)) in pairs.iter().enumerate() {
            if pairs.iter().take(place).any(|(other, _)| other == name) {
                let remedy = "drop one of the two";
                problems.push(Problem::new(
                    Code::Duplicate,
                    name,
                    value,
                    "each option once",
                    remedy,
                ));
            }
            let mut word = |words: &[&str]| {
                let found = words.iter().position(|word| word == value);
                if found.is_none() {
                    problems.push(unknown_name(name, value, words.iter().copied()));
                }
                found
            };
            match name.as_str() {
                "units" => match word(&UNITS) {
                    Some(0) => self.units = UnitSystem::Metric,
                    Some(_) => self.units = UnitSystem::Inch,
                    None => {}
                },
                "text_numbers" => match word(&TEXT) {
                    Some(0) => self.text_numbers = TextNumbers::Refused,
                    Some(1) => self.text_numbers = TextNumbers::Kept,
                    Some(_) => self.text_numbers = TextNumbers::Replaced,
                    None => {}
                },
                "columns" => self.columns = Columns::parse(value),
                "pass_through" => self.pass_through = list(value),
                "draws" => drawn.draws = Some(value),
                "seed" => drawn.seed = Some(value),
                "quantiles" => drawn.quantiles = Some(value),
                "first_row" => drawn.first_row = Some(value),
                name if name.starts_with(SPREAD) => {
                    let quantity = name.strip_prefix(SPREAD).unwrap_or_default();
                    drawn.spreads.push((quantity, value));
                }
                _ => {
                    let known = [
                        "units",
                        "columns",
                        "text_numbers",
                        "pass_through",
                        "spread.cutting_force",
                        "draws",
                        "seed",
                        "quantiles",
                        "first_row",
                    ];
                    problems.push(unknown_name("option", name, known));
                }
            }
        }
        match drawn.read("") {
            Ok(None) => {}
            Ok(found) => self.uncertainty = found,
            Err(error) => problems.extend(error.into_problems()),
        }
        Error::unless_empty(problems, self)
    }
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
