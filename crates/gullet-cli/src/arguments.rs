//! The command line read: options and operands, every problem at once.

use gullet::error::{Code, Error, Problem, Result, unknown_name};
use gullet::quantity::UnitSystem;

/// An option of a command.
pub struct Flag {
    /// Its name with the dashes.
    pub name: &'static str,
    /// What its value is called; none for a switch.
    pub value: Option<&'static str>,
    /// The values it may have; empty for any.
    pub choices: &'static [&'static str],
    /// Whether it may be given more than once.
    pub repeats: bool,
}

impl Flag {
    /// An option without a value.
    pub const fn switch(name: &'static str) -> Flag {
        Flag {
            name,
            value: None,
            choices: &[],
            repeats: false,
        }
    }

    /// An option with any value.
    pub const fn with_value(name: &'static str, value: &'static str) -> Flag {
        Flag {
            name,
            value: Some(value),
            choices: &[],
            repeats: false,
        }
    }

    /// An option with one of a few values.
    pub const fn choice(name: &'static str, choices: &'static [&'static str]) -> Flag {
        Flag {
            name,
            value: Some("CHOICE"),
            choices,
            repeats: false,
        }
    }

    /// The same option, allowed more than once.
    pub const fn repeated(mut self) -> Flag {
        self.repeats = true;
        self
    }
}

/// `--json`, which every command with an answer has.
pub const JSON: Flag = Flag::switch("--json");
/// `--units`, which commands that print for people have.
pub const UNITS: Flag = Flag::choice("--units", &["metric", "inch"]);

/// What a command takes.
pub struct Spec {
    /// Its options.
    pub flags: &'static [Flag],
    /// What its operands are called.
    pub operand: &'static str,
    /// Fewest operands.
    pub least: usize,
    /// Most operands.
    pub most: usize,
}

/// What was given.
#[derive(Debug)]
pub struct Given {
    /// Words that are no options, in order.
    pub operands: Vec<String>,
    options: Vec<(&'static str, String)>,
}

impl Given {
    /// Whether an option is given.
    pub fn has(&self, name: &str) -> bool {
        self.options.iter().any(|(known, _)| *known == name)
    }

    /// The value of an option.
    pub fn value(&self, name: &str) -> Option<&str> {
        self.values(name).next()
    }

    /// Every value of an option that repeats.
    pub fn values(&self, name: &str) -> impl Iterator<Item = &str> {
        self.options
            .iter()
            .filter(move |(known, _)| *known == name)
            .map(|(_, value)| value.as_str())
    }

    /// The units asked for with `--units`.
    pub fn units(&self) -> Option<UnitSystem> {
        self.value("--units").map(|word| match word {
            "inch" => UnitSystem::Inch,
            _ => UnitSystem::Metric,
        })
    }
}

/// Reads the words behind a command's name.
pub fn read(spec: &Spec, words: &[String]) -> Result<Given> {
    let mut problems = Vec::new();
    let mut operands = Vec::new();
    let mut options: Vec<(&'static str, String)> = Vec::new();
    let mut rest = words.iter();
    while let Some(word) = rest.next() {
        if word == "--" {
            operands.extend(rest.by_ref().cloned());
            break;
        }
        if word == "-" || !word.starts_with('-') {
            operands.push(word.clone());
            continue;
        }
        let (name, attached) = match word.split_once('=') {
            Some((name, value)) => (name, Some(value.to_owned())),
            None => (word.as_str(), None),
        };
        let Some(flag) = spec.flags.iter().find(|flag| flag.name == name) else {
            let known = spec.flags.iter().map(|flag| flag.name);
            problems.push(unknown_name("option", name, known.chain(["--help"])));
            continue;
        };
        let value = match (flag.value, attached) {
            (None, None) => String::new(),
            (None, Some(value)) => {
                problems.push(Problem::new(
                    Code::WrongType,
                    name,
                    value,
                    "no value",
                    format!("write {name} alone"),
                ));
                continue;
            }
            (Some(_), Some(value)) => value,
            (Some(called), None) => match rest.next() {
                Some(value) => value.clone(),
                None => {
                    problems.push(Problem::new(
                        Code::Missing,
                        name,
                        "",
                        flag.choices.join(", "),
                        format!("write {name} {called}"),
                    ));
                    continue;
                }
            },
        };
        if !flag.choices.is_empty() && !flag.choices.contains(&value.as_str()) {
            problems.push(unknown_name(name, &value, flag.choices.iter().copied()));
        } else if !flag.repeats && options.iter().any(|(known, _)| *known == flag.name) {
            problems.push(Problem::new(
                Code::Duplicate,
                name,
                value,
                "once",
                "drop one of the two",
            ));
        } else {
            options.push((flag.name, value));
        }
    }
    if operands.len() < spec.least {
        problems.push(Problem::new(
            Code::Missing,
            spec.operand,
            "",
            "",
            format!("give {}", spec.operand),
        ));
    }
    // What stands behind an unknown option is likelier its value than an operand.
    let sure = !problems.iter().any(|problem| problem.parameter == "option");
    for extra in operands.iter().skip(spec.most).filter(|_| sure) {
        problems.push(Problem::new(
            Code::Duplicate,
            spec.operand,
            format!("\"{extra}\""),
            format!("at most {}", spec.most),
            "drop it, or put quotes round words that belong together",
        ));
    }
    Error::unless_empty(problems, Given { operands, options })
}

/// Whether problems are to be told as JSON, known before the command line is understood.
pub fn asks_for_json(words: &[String]) -> bool {
    let options: Vec<&str> = words
        .iter()
        .map(String::as_str)
        .take_while(|word| *word != "--")
        .collect();
    options
        .iter()
        .any(|word| matches!(*word, "--json" | "--format=json"))
        || options.windows(2).any(|pair| pair == ["--format", "json"])
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]
    use super::*;

    const SPEC: Spec = Spec {
        flags: &[
            JSON,
            UNITS,
            Flag::with_value("--overlay", "FILE").repeated(),
        ],
        operand: "JOB",
        least: 1,
        most: 1,
    };

    fn given(words: &[&str]) -> Result<Given> {
        let words: Vec<String> = words.iter().map(|word| (*word).to_owned()).collect();
        read(&SPEC, &words)
    }

    #[test]
    fn options_stand_before_behind_and_attached() {
        let given = given(&["--overlay", "a", "-", "--overlay=b", "--units=inch"]).unwrap();
        assert_eq!(given.operands, ["-"]);
        assert_eq!(given.values("--overlay").collect::<Vec<_>>(), ["a", "b"]);
        assert_eq!(given.units(), Some(UnitSystem::Inch));
        assert!(!given.has("--json"));
    }

    #[test]
    fn behind_two_dashes_everything_is_an_operand() {
        assert_eq!(given(&["--", "--json"]).unwrap().operands, ["--json"]);
        assert!(!asks_for_json(&["--".to_owned(), "--json".to_owned()]));
    }

    #[test]
    fn every_problem_is_told_at_once() {
        let error = given(&[
            "--jsn",
            "--units",
            "feet",
            "--json=1",
            "--json",
            "--json",
            "--overlay",
        ])
        .unwrap_err();
        let codes: Vec<Code> = error
            .problems()
            .iter()
            .map(|problem| problem.code)
            .collect();
        assert_eq!(
            codes,
            [
                Code::UnknownName,
                Code::UnknownName,
                Code::WrongType,
                Code::Duplicate,
                Code::Missing,
                Code::Missing,
            ]
        );
        assert!(error.first().remedy.contains("--json"), "{error}");
    }
}
