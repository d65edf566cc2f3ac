//! What can go wrong: one error type that carries every problem found, each with a stable code;
//! and doubts about what was computed all the same.

use core::fmt;

/// Result of a fallible call of this crate.
pub type Result<T> = core::result::Result<T, Error>;

/// Stable code of a problem; the same number and name in every binding.
///
/// Numbers are grouped by tens and never reused.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Code {
    /// A value lies outside its admissible range.
    OutOfRange = 10,
    /// A value is not a finite number.
    NotFinite = 11,
    /// A count is not a whole number.
    NotWhole = 12,
    /// The result is too large or too small for a number to hold.
    ResultOverflow = 13,
    /// A number stands without the unit it needs.
    UnitMissing = 20,
    /// The unit is not known, or belongs to another kind of quantity.
    UnitUnknown = 21,
    /// The text cannot be read as a number.
    NumberUnreadable = 22,
    /// A formula, material, machine, key or argument of this name does not exist.
    UnknownName = 30,
    /// A required argument or key is missing.
    Missing = 31,
    /// The same argument, key or identifier is given twice.
    Duplicate = 32,
    /// Two values that are each admissible contradict one another.
    Inconsistent = 33,
    /// A value has the wrong type, such as text where a table belongs.
    WrongType = 34,
    /// The text of a file is not well-formed.
    Syntax = 40,
    /// A row of a table is refused.
    BadRow = 41,
    /// A file cannot be read or written.
    File = 42,
    /// The tables hold no value for this combination.
    NoData = 50,
    /// A limit is exceeded and nothing the practice may lower helps.
    LimitExceeded = 60,
    /// No pass plan satisfies every limit.
    NoPlan = 61,
}

impl Code {
    /// Every code, in the order of its number.
    pub const ALL: &'static [Code] = &[
        Code::OutOfRange,
        Code::NotFinite,
        Code::NotWhole,
        Code::ResultOverflow,
        Code::UnitMissing,
        Code::UnitUnknown,
        Code::NumberUnreadable,
        Code::UnknownName,
        Code::Missing,
        Code::Duplicate,
        Code::Inconsistent,
        Code::WrongType,
        Code::Syntax,
        Code::BadRow,
        Code::File,
        Code::NoData,
        Code::LimitExceeded,
        Code::NoPlan,
    ];

    /// The code's name in lower case, as JSON and the command line print it.
    pub fn name(self) -> &'static str {
        match self {
            Code::OutOfRange => "out_of_range",
            Code::NotFinite => "not_finite",
            Code::NotWhole => "not_whole",
            Code::ResultOverflow => "result_overflow",
            Code::UnitMissing => "unit_missing",
            Code::UnitUnknown => "unit_unknown",
            Code::NumberUnreadable => "number_unreadable",
            Code::UnknownName => "unknown_name",
            Code::Missing => "missing",
            Code::Duplicate => "duplicate",
            Code::Inconsistent => "inconsistent",
            Code::WrongType => "wrong_type",
            Code::Syntax => "syntax",
            Code::BadRow => "bad_row",
            Code::File => "file",
            Code::NoData => "no_data",
            Code::LimitExceeded => "limit_exceeded",
            Code::NoPlan => "no_plan",
        }
    }

    /// The code's number, the same in every binding.
    pub fn number(self) -> i32 {
        self as i32
    }
}

/// One problem: which parameter, its value with its unit, what would be admissible, what to do.
#[derive(Debug, Clone, PartialEq)]
pub struct Problem {
    /// Stable code.
    pub code: Code,
    /// Name of the argument, key or column; a path such as `cutter.teeth` in a job file.
    pub parameter: String,
    /// The offending value as given, with its unit; empty where there is none.
    pub value: String,
    /// The admissible range or the names that would do; empty where there is none.
    pub admissible: String,
    /// What to do about it, in words.
    pub remedy: String,
}

impl Problem {
    /// A problem with all its parts.
    pub fn new(
        code: Code,
        parameter: impl Into<String>,
        value: impl Into<String>,
        admissible: impl Into<String>,
        remedy: impl Into<String>,
    ) -> Problem {
        Problem {
            code,
            parameter: parameter.into(),
            value: value.into(),
            admissible: admissible.into(),
            remedy: remedy.into(),
        }
    }

    /// The same problem with `prefix.` before the parameter's name.
    pub fn within(mut self, prefix: &str) -> Problem {
        self.parameter = if self.parameter.is_empty() {
            prefix.to_owned()
        } else {
            format!("{prefix}.{}", self.parameter)
        };
        self
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.code.name())?;
        match (self.parameter.is_empty(), self.value.is_empty()) {
            (false, false) => write!(f, ": {} = {}", self.parameter, self.value)?,
            (false, true) => write!(f, ": {}", self.parameter)?,
            (true, false) => write!(f, ": {}", self.value)?,
            (true, true) => {}
        }
        if !self.admissible.is_empty() {
            write!(f, "; admissible: {}", self.admissible)?;
        }
        if !self.remedy.is_empty() {
            write!(f, "; {}", self.remedy)?;
        }
        Ok(())
    }
}

/// One or more problems found together; never empty.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub struct Error {
    problems: Vec<Problem>,
}

impl Error {
    /// Every problem, in the order found.
    pub fn problems(&self) -> &[Problem] {
        &self.problems
    }

    /// The first problem, which also gives the error its code.
    pub fn first(&self) -> &Problem {
        // Constructors never leave the list empty.
        &self.problems[0]
    }

    /// Code of the first problem.
    pub fn code(&self) -> Code {
        self.first().code
    }

    /// `Ok(value)` where the list is empty, else all problems as one error.
    pub fn unless_empty<T>(problems: Vec<Problem>, value: T) -> Result<T> {
        if problems.is_empty() {
            Ok(value)
        } else {
            Err(Error { problems })
        }
    }

    /// This error with the problems of another one after its own.
    pub fn and(mut self, other: Error) -> Error {
        self.problems.extend(other.problems);
        self
    }

    /// The problems themselves.
    pub fn into_problems(self) -> Vec<Problem> {
        self.problems
    }

    /// The same error with `prefix.` before each parameter's name.
    pub fn within(self, prefix: &str) -> Error {
        Error {
            problems: self
                .problems
                .into_iter()
                .map(|problem| problem.within(prefix))
                .collect(),
        }
    }
}

impl From<Problem> for Error {
    fn from(problem: Problem) -> Error {
        Error {
            problems: vec![problem],
        }
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (index, problem) in self.problems.iter().enumerate() {
            if index > 0 {
                writeln!(f)?;
            }
            write!(f, "{problem}")?;
        }
        Ok(())
    }
}

/// A doubt with its stable code.
#[derive(Debug, Clone, PartialEq)]
pub struct Warning {
    /// Stable name of the kind of doubt.
    pub code: WarningCode,
    /// In words.
    pub text: String,
}

impl Warning {
    /// A doubt.
    pub fn new(code: WarningCode, text: impl Into<String>) -> Warning {
        Warning {
            code,
            text: text.into(),
        }
    }
}

/// Kinds of doubt; the same number and name in every binding.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum WarningCode {
    /// A value the tables do not give was assumed.
    Assumed = 1,
    /// A value lies outside the range its model was tested in.
    OutsideValidity = 2,
    /// Sources disagree by more than a third.
    SourcesDisagree = 3,
    /// The machine cannot do what was wanted; the nearest it can do was taken.
    MachineLimits = 4,
    /// A setting was lowered because of a limit.
    Lowered = 5,
    /// A rounding to what the readout can show.
    Rounded = 6,
}

impl WarningCode {
    /// Every code, by number.
    pub const ALL: &'static [WarningCode] = &[
        WarningCode::Assumed,
        WarningCode::OutsideValidity,
        WarningCode::SourcesDisagree,
        WarningCode::MachineLimits,
        WarningCode::Lowered,
        WarningCode::Rounded,
    ];

    /// Name in lower case.
    pub fn name(self) -> &'static str {
        match self {
            WarningCode::Assumed => "assumed",
            WarningCode::OutsideValidity => "outside_validity",
            WarningCode::SourcesDisagree => "sources_disagree",
            WarningCode::MachineLimits => "machine_limits",
            WarningCode::Lowered => "lowered",
            WarningCode::Rounded => "rounded",
        }
    }
}

/// The name among `known` that is nearest to `name` by edit distance, if any is near enough.
pub fn nearest<'a>(name: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let wanted: Vec<char> = name.to_lowercase().chars().take(64).collect();
    let allowed = 1 + wanted.len() / 3;
    known
        .into_iter()
        .map(|candidate| (edit_distance(&wanted, candidate), candidate))
        .filter(|(distance, _)| *distance <= allowed)
        .min_by_key(|(distance, _)| *distance)
        .map(|(_, candidate)| candidate)
}

/// Letters by which two names differ: 0 for the same name, at least 1 where only the case differs.
pub fn distance(a: &str, b: &str) -> usize {
    let letters: Vec<char> = a.to_lowercase().chars().take(64).collect();
    if a == b {
        0
    } else {
        edit_distance(&letters, b).max(1)
    }
}

pub(crate) fn edit_distance(a: &[char], b: &str) -> usize {
    let b: Vec<char> = b.to_lowercase().chars().take(64).collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, x) in a.iter().enumerate() {
        let mut diagonal = i;
        let mut left = i + 1;
        for (cell, y) in row.iter_mut().skip(1).zip(&b) {
            let substituted = diagonal + usize::from(x != y);
            diagonal = *cell;
            left = substituted.min(diagonal + 1).min(left + 1);
            *cell = left;
        }
        if let Some(first) = row.first_mut() {
            *first = i + 1;
        }
    }
    row.last().copied().unwrap_or(0)
}

/// Problem for a name that does not exist, with the nearest one that does.
pub fn unknown_name<'a>(
    parameter: &str,
    name: &str,
    known: impl IntoIterator<Item = &'a str>,
) -> Problem {
    let names: Vec<&str> = known.into_iter().collect();
    let near = nearest(name, names.iter().copied());
    let admissible = if names.len() <= 24 {
        names.join(", ")
    } else {
        format!("one of {} names", names.len())
    };
    let remedy = near.map_or_else(
        || "use one of the known names".to_owned(),
        |near| format!("did you mean {near}?"),
    );
    Problem::new(
        Code::UnknownName,
        parameter,
        format!("\"{}\"", name.chars().take(80).collect::<String>()),
        admissible,
        remedy,
    )
}
