//! What is known of a formula besides its body, and the check of its arguments.

use crate::error::{Code, Error, Problem, Result, unknown_name};
use crate::quantity::{self, Kind, UnitSystem};

/// One end of an admissible range.
#[derive(Clone, Copy)]
pub struct Limit {
    /// Whether the end itself is admissible; it then holds to 1e-12 relative.
    pub inclusive: bool,
    /// The bound as written.
    pub text: &'static str,
    /// The bound in SI units, from all arguments.
    pub value: fn(&[f64]) -> f64,
}

/// An argument of a formula.
#[derive(Clone, Copy)]
pub struct Parameter {
    /// Full name, the same in every binding.
    pub name: &'static str,
    /// Symbol in the equation.
    pub symbol: &'static str,
    /// What it measures.
    pub kind: Kind,
    /// What it is.
    pub meaning: &'static str,
    /// SI value taken where it is not given.
    pub default: Option<f64>,
    /// Lower end of the admissible range.
    pub lower: Option<Limit>,
    /// Upper end of the admissible range.
    pub upper: Option<Limit>,
}

/// A condition over several arguments that no single range expresses.
#[derive(Clone, Copy)]
pub struct Condition {
    /// The argument an error names.
    pub blamed: &'static str,
    /// The condition in words.
    pub text: &'static str,
    /// Whether it holds.
    pub holds: fn(&[f64]) -> bool,
}

/// A worked example.
#[derive(Debug, Clone, Copy)]
pub struct Example {
    /// Arguments as text, `name=value; …`.
    pub arguments: &'static str,
    /// Result as printed.
    pub expected: &'static str,
    /// Tolerance that the printed digits allow.
    pub relative_tolerance: f64,
    /// Where it comes from.
    pub source: &'static str,
}

/// A formula: its body and everything said about it.
#[derive(Clone, Copy)]
pub struct Formula {
    /// Name, the same in every binding.
    pub name: &'static str,
    /// Topic it belongs to.
    pub topic: &'static str,
    /// Symbol of the result.
    pub symbol: &'static str,
    /// Symbol of the result in LaTeX.
    pub symbol_latex: &'static str,
    /// What it gives, one sentence.
    pub meaning: &'static str,
    /// Its arguments, in order.
    pub parameters: &'static [Parameter],
    /// Conditions beside the arguments' ranges.
    pub conditions: &'static [Condition],
    /// What the result measures.
    pub result: Kind,
    /// Equation in plain text, in the symbols.
    pub equation: &'static str,
    /// Equation in LaTeX.
    pub latex: &'static str,
    /// Assumptions and range.
    pub validity: &'static str,
    /// Where the equation comes from.
    pub source: &'static str,
    /// A worked example.
    pub example: Example,
    /// The body over SI values, unchecked.
    pub(crate) of: fn(&[f64]) -> f64,
}

/// Slack of an inclusive bound, relative: 12.7 mm in a half-inch cutter is a slot.
const INCLUSIVE_SLACK: f64 = 1e-12;

impl Limit {
    fn below(&self, value: f64, arguments: &[f64]) -> bool {
        let bound = (self.value)(arguments);
        if self.inclusive {
            value >= bound - INCLUSIVE_SLACK * bound.abs()
        } else {
            value > bound
        }
    }

    fn above(&self, value: f64, arguments: &[f64]) -> bool {
        let bound = (self.value)(arguments);
        if self.inclusive {
            value <= bound + INCLUSIVE_SLACK * bound.abs()
        } else {
            value < bound
        }
    }
}

impl Parameter {
    /// The admissible range in words, with the numbers it comes to for these arguments.
    pub fn admissible(&self, arguments: &[f64], system: UnitSystem) -> String {
        let end = |limit: &Limit, exclusive: &str, inclusive: &str| {
            let bound = (limit.value)(arguments);
            let word = if limit.inclusive {
                inclusive
            } else {
                exclusive
            };
            let number = quantity::format(self.kind, bound, system);
            let text = tidy(limit.text);
            if names_argument(limit.text) {
                format!("{word} {text} = {number}")
            } else {
                format!("{word} {number}")
            }
        };
        let mut parts = Vec::new();
        if let Some(limit) = &self.lower {
            parts.push(end(limit, "above", "at least"));
        }
        if let Some(limit) = &self.upper {
            parts.push(end(limit, "below", "at most"));
        }
        if parts.is_empty() {
            "any finite value".to_owned()
        } else {
            parts.join(", ")
        }
    }

    /// The admissible range as it stands in the catalogue, such as `0 < radial_depth <= diameter`.
    pub fn range(&self) -> String {
        let bound = |limit: &Limit| match (self.kind, limit.text) {
            (Kind::Angle, "0.0") => "0 deg".to_owned(),
            (Kind::Angle, "PI / 2.0") => "90 deg".to_owned(),
            (Kind::Angle, "PI") => "180 deg".to_owned(),
            (Kind::Angle, "2.0 * PI") => "360 deg".to_owned(),
            (_, text) => tidy(text),
        };
        let sign = |limit: &Limit, inclusive, exclusive| {
            if limit.inclusive {
                inclusive
            } else {
                exclusive
            }
        };
        match (&self.lower, &self.upper) {
            (Some(lower), Some(upper)) => format!(
                "{} {} {} {} {}",
                bound(lower),
                sign(lower, "<=", "<"),
                self.name,
                sign(upper, "<=", "<"),
                bound(upper)
            ),
            (Some(lower), None) => {
                format!("{} {} {}", self.name, sign(lower, ">=", ">"), bound(lower))
            }
            (None, Some(upper)) => {
                format!("{} {} {}", self.name, sign(upper, "<=", "<"), bound(upper))
            }
            (None, None) => format!("{}: any finite value", self.name),
        }
    }

    /// What is wrong with the value among these arguments, if anything.
    pub(crate) fn fault(&self, value: f64, arguments: &[f64]) -> Option<Code> {
        if !value.is_finite() {
            return Some(Code::NotFinite);
        }
        if self.kind == Kind::Count && value.fract() != 0.0 {
            return Some(Code::NotWhole);
        }
        let inside = self
            .lower
            .as_ref()
            .is_none_or(|limit| limit.below(value, arguments))
            && self
                .upper
                .as_ref()
                .is_none_or(|limit| limit.above(value, arguments));
        // A bound that rests on a bad argument says nothing of this one.
        let known = || {
            [&self.lower, &self.upper]
                .into_iter()
                .flatten()
                .all(|limit| !(limit.value)(arguments).is_nan())
        };
        (!inside && known()).then_some(Code::OutOfRange)
    }

    pub(crate) fn problem(
        &self,
        value: f64,
        arguments: &[f64],
        system: UnitSystem,
    ) -> Option<Problem> {
        let code = self.fault(value, arguments)?;
        let shown = || {
            if value.is_finite() {
                quantity::format(self.kind, value, system)
            } else {
                format!("{value}")
            }
        };
        let wanted = match code {
            Code::NotFinite => Some(("a finite number", "a finite number")),
            Code::NotWhole => Some(("a whole number, at least 1", "a whole number")),
            _ => None,
        };
        if let Some((admissible, form)) = wanted {
            return Some(Problem::new(
                code,
                self.name,
                shown(),
                admissible,
                format!("give {} as {form}", self.meaning),
            ));
        }
        let admissible = self.admissible(arguments, system);
        // Rounded alike, a value beyond its bound would look like it: then every digit is shown.
        let value = if admissible.ends_with(&shown()) {
            quantity::format_digits(self.kind, value, system, 17)
        } else {
            shown()
        };
        Some(Problem::new(
            code,
            self.name,
            value,
            admissible,
            format!("check {} ({})", self.name, self.meaning),
        ))
    }
}

impl Formula {
    /// Checks SI arguments against their admissible ranges; every problem is reported.
    pub fn check(&self, arguments: &[f64]) -> Result<()> {
        self.check_in(arguments, UnitSystem::Metric)
    }

    /// As [`Formula::check`], with the numbers of the error in a shop's units.
    pub fn check_in(&self, arguments: &[f64], system: UnitSystem) -> Result<()> {
        if arguments.len() != self.parameters.len() {
            return Err(Problem::new(
                Code::Missing,
                self.name,
                format!("{} arguments", arguments.len()),
                format!("{} arguments", self.parameters.len()),
                "give every argument, in the catalogue's order",
            )
            .into());
        }
        let mut problems = parameter_problems(self.parameters, arguments, system);
        if problems.is_empty() {
            for condition in self.conditions {
                if !(condition.holds)(arguments) {
                    let value = self
                        .parameters
                        .iter()
                        .zip(arguments)
                        .find(|(parameter, _)| parameter.name == condition.blamed)
                        .map(|(parameter, value)| quantity::format(parameter.kind, *value, system));
                    problems.push(Problem::new(
                        Code::OutOfRange,
                        condition.blamed,
                        value.unwrap_or_default(),
                        condition.text,
                        "change the arguments so that the condition holds",
                    ));
                }
            }
        }
        Error::unless_empty(problems, ())
    }

    /// The checked value over SI arguments.
    pub fn call(&self, arguments: &[f64]) -> Result<f64> {
        self.call_in(arguments, UnitSystem::Metric)
    }

    /// As [`Formula::call`], with the code of the first problem in place of the error.
    pub(crate) fn value_or_code(&self, arguments: &[f64]) -> core::result::Result<f64, Code> {
        if arguments.len() != self.parameters.len() {
            return Err(Code::Missing);
        }
        for (parameter, value) in self.parameters.iter().zip(arguments) {
            if let Some(code) = parameter.fault(*value, arguments) {
                return Err(code);
            }
        }
        if !self.conditions.iter().all(|known| (known.holds)(arguments)) {
            return Err(Code::OutOfRange);
        }
        let result = (self.of)(arguments);
        if result.is_finite() {
            Ok(result)
        } else {
            Err(Code::ResultOverflow)
        }
    }

    /// As [`Formula::call`], with the numbers of an error in a shop's units.
    pub fn call_in(&self, arguments: &[f64], system: UnitSystem) -> Result<f64> {
        if let Ok(result) = self.value_or_code(arguments) {
            return Ok(result);
        }
        self.check_in(arguments, system)?;
        Err(Problem::new(
            Code::ResultOverflow,
            self.name,
            self.parameters
                .iter()
                .zip(arguments)
                .map(|(parameter, value)| {
                    format!(
                        "{}={}",
                        parameter.name,
                        quantity::format(parameter.kind, *value, system)
                    )
                })
                .collect::<Vec<_>>()
                .join("; "),
            "arguments whose result a double can hold",
            "check the size of the arguments",
        )
        .into())
    }

    /// SI arguments from `(name, text)` pairs, defaults filled in; every problem is reported.
    pub fn read_arguments(&self, given: &[(String, String)]) -> Result<Vec<f64>> {
        read_parameters(self.name, self.parameters, given)
    }

    /// The SI arguments of the worked example.
    pub fn example_arguments(&self) -> Result<Vec<f64>> {
        self.read_arguments(&split_arguments(self.example.arguments)?)
    }
}

/// SI values of parameters from `(name, text)` pairs, defaults filled in; every problem is reported.
pub(crate) fn read_parameters(
    owner: &str,
    parameters: &[Parameter],
    given: &[(String, String)],
) -> Result<Vec<f64>> {
    let mut problems = Vec::new();
    let mut values: Vec<Option<f64>> = vec![None; parameters.len()];
    for (name, text) in given {
        let found = parameters
            .iter()
            .zip(values.iter_mut())
            .find(|(parameter, _)| parameter.name == name);
        let Some((parameter, slot)) = found else {
            problems.push(unknown_name(
                owner,
                name,
                parameters.iter().map(|parameter| parameter.name),
            ));
            continue;
        };
        if slot.is_some() {
            problems.push(Problem::new(
                Code::Duplicate,
                parameter.name,
                text.as_str(),
                "each argument once",
                "drop one of the two",
            ));
            continue;
        }
        match quantity::parse(parameter.kind, text) {
            Ok(si) => *slot = Some(si),
            Err(error) => {
                *slot = Some(f64::NAN);
                problems.extend(error.within(parameter.name).into_problems());
            }
        }
    }
    for (parameter, slot) in parameters.iter().zip(values.iter_mut()) {
        if slot.is_none() {
            *slot = parameter.default;
        }
        if slot.is_none() {
            problems.push(Problem::new(
                Code::Missing,
                parameter.name,
                "",
                parameter.range(),
                format!("give {} ({})", parameter.name, parameter.meaning),
            ));
        }
    }
    Error::unless_empty(problems, ())?;
    Ok(values.into_iter().flatten().collect())
}

/// What is wrong with SI values of parameters, each against its range.
pub(crate) fn parameter_problems(
    parameters: &[Parameter],
    values: &[f64],
    system: UnitSystem,
) -> Vec<Problem> {
    parameters
        .iter()
        .zip(values)
        .filter_map(|(parameter, value)| parameter.problem(*value, values, system))
        .collect()
}

/// Splits `name=value; name=value` into pairs, in their order.
///
/// ```
/// let pairs = gullet::formula::split_arguments("teeth=2; diameter=1/2 in")?;
/// assert_eq!(pairs[1], ("diameter".to_owned(), "1/2 in".to_owned()));
/// # Ok::<(), gullet::Error>(())
/// ```
///
/// # Errors
/// `Syntax` for every part without an equals sign.
pub fn split_arguments(text: &str) -> Result<Vec<(String, String)>> {
    let mut problems = Vec::new();
    let mut pairs = Vec::new();
    for part in text
        .split(';')
        .map(str::trim)
        .filter(|part| !part.is_empty())
    {
        match part.split_once('=') {
            Some((name, value)) => pairs.push((name.trim().to_owned(), value.trim().to_owned())),
            None => problems.push(Problem::new(
                Code::Syntax,
                "",
                format!("\"{part}\""),
                "name=value",
                "write each argument as name=value, with a semicolon between two",
            )),
        }
    }
    Error::unless_empty(problems, pairs)
}

/// Whether a bound rests on other arguments; constants are digits and `PI`.
fn names_argument(bound: &str) -> bool {
    bound.chars().any(|c| c.is_ascii_lowercase())
}

/// A bound as people write it: `diameter / 2.0` becomes `diameter/2`.
fn tidy(text: &str) -> String {
    text.replace(" / ", "/")
        .replace(" * ", "*")
        .replace(".0", "")
        .replace("super::SQRT_3", "sqrt(3)")
        .replace("PI", "pi")
}
