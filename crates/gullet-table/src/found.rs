//! What columns and constants give, and what is wrong with them.

use crate::choice::{self, Lists, Reader};
use crate::names::{COST_PER_HOUR, Role, usual_names};
use crate::numbers;
use crate::options::{StudyOptions, TextNumbers};
use crate::plan::{ChoiceSource, CostSource, NumberSource};
use crate::takes::{Number, Pick, Takes, operation_named, operations};
use arrow_schema::{Field, Schema};
use gullet::error::{Code, Problem, Result, unknown_name};
use gullet::quantity::{ColumnConverter, Kind, parse, parse_number, unit};
use gullet::study::Choice;

/// What was found of the columns and constants.
pub(crate) struct Found {
    pub takes: Takes,
    /// By the place of the number among the inputs.
    pub numbers: Vec<(usize, NumberSource)>,
    pub choices: Vec<(Pick, ChoiceSource)>,
    pub cost: Option<CostSource>,
    /// Names that gave each input, for duplicates.
    given: Vec<(&'static str, String)>,
    /// Inputs that a refused column means: they are not told as missing too.
    meant: Vec<String>,
    pub passed_through: Vec<String>,
    pub problems: Vec<Problem>,
}

impl Found {
    /// Nothing yet; the problems of some names are told elsewhere.
    pub(crate) fn new(takes: Takes, told: &[String]) -> Found {
        Found {
            takes,
            numbers: Vec::new(),
            choices: Vec::new(),
            cost: None,
            given: Vec::new(),
            meant: told.to_vec(),
            passed_through: Vec::new(),
            problems: Vec::new(),
        }
    }

    /// Notes who gives an input; whether nobody gave it before.
    fn give(&mut self, what: &'static str, by: &str) -> bool {
        if let Some((_, other)) = self.given.iter().find(|(known, _)| *known == what) {
            self.problems.push(Problem::new(
                Code::Duplicate,
                by,
                "",
                format!("{what} once"),
                format!("{other} gives it already: drop one of the two"),
            ));
            return false;
        }
        self.given.push((what, by.to_owned()));
        true
    }

    pub(crate) fn columns(&mut self, schema: &Schema, options: &StudyOptions) {
        for name in &options.pass_through {
            if schema.index_of(name).is_err() {
                let known = schema.fields().iter().map(|field| field.name().as_str());
                self.problems
                    .push(unknown_name("pass_through", name, known));
            }
        }
        for (index, field) in schema.fields().iter().enumerate() {
            let name = field.name().as_str();
            if schema
                .fields()
                .iter()
                .take(index)
                .any(|other| other.name() == name)
            {
                self.problems.push(Problem::new(
                    Code::Duplicate,
                    name,
                    "",
                    "each column once",
                    "rename one of the two",
                ));
                continue;
            }
            let named = if options.pass_through.iter().any(|other| other == name) {
                Role::Other
            } else {
                self.takes.role(name)
            };
            self.column(index, field, named, options.text_numbers);
        }
    }

    fn column(&mut self, index: usize, field: &Field, named: Role, text: TextNumbers) {
        let name = field.name().as_str();
        let typed = match named {
            Role::Number(..) | Role::CostPerHour => {
                numbers::check_type(name, field.data_type(), text)
            }
            Role::Choice(ref pick) => choice::check_type(pick, field.data_type()),
            Role::Refused(ref problem) => Err(problem.clone()),
            Role::Other => Ok(()),
        };
        if let Err(problem) = typed {
            self.problems.push(problem);
        }
        match named {
            Role::Number(input, unit) => {
                if self.give(input.name, name) {
                    let converter = ColumnConverter::shared(unit);
                    self.numbers
                        .push((input.place, NumberSource::Column { index, converter }));
                }
            }
            Role::Choice(pick) => {
                if let Some(process) = self.takes.process()
                    && pick == Pick::Of(Choice::Operation)
                {
                    self.problems.push(two_operations(process.name));
                } else if self.give(pick.name(), name) {
                    let reader = Reader::new(pick);
                    self.choices
                        .push((pick, ChoiceSource::Column { index, reader }));
                }
            }
            Role::CostPerHour => {
                if self.give(COST_PER_HOUR, name) {
                    self.cost = Some(CostSource::Column(index));
                }
            }
            Role::Other => self.passed_through.push(name.to_owned()),
            Role::Refused(problem) => self.refused(&problem),
        }
    }

    fn refused(&mut self, problem: &Problem) {
        let meant = problem.admissible.as_str();
        let name = self
            .takes
            .names()
            .filter(|name| problem.parameter.starts_with(name) || meant.starts_with(name))
            .max_by_key(|name| name.len());
        self.meant.extend(name.map(str::to_owned));
    }

    pub(crate) fn constants(&mut self, constants: &[(String, String)], lists: &Lists) {
        for (name, text) in constants {
            if let Some(input) = self.takes.number(name) {
                if self.give(input.name, name) {
                    match parse(input.kind, text) {
                        Ok(si) => self.numbers.push((input.place, NumberSource::Constant(si))),
                        Err(error) => self.problems.extend(error.within(name).into_problems()),
                    }
                }
            } else if let Some(pick) = self.takes.pick(name) {
                if self.give(pick.name(), name) {
                    self.choose(pick, text, lists);
                }
            } else if name == COST_PER_HOUR {
                if self.give(COST_PER_HOUR, name) {
                    match cost_per_hour(text) {
                        Ok(cost) => self.cost = Some(CostSource::Constant(cost)),
                        Err(error) => self.problems.extend(error.within(name).into_problems()),
                    }
                }
            } else {
                let known = self.takes.names().chain([COST_PER_HOUR]);
                let problem = unknown_name("constant", name, known);
                self.problems.push(problem);
            }
        }
    }

    fn choose(&mut self, pick: Pick, text: &str, lists: &Lists) {
        if let Some(process) = self.takes.process()
            && pick == Pick::Of(Choice::Operation)
        {
            if operation_named(text) != Some(process.name) {
                self.problems
                    .push(unknown_name(pick.name(), text, operations()));
            }
            return;
        }
        match lists.place(&pick, text) {
            Ok(place) => self.choices.push((pick, ChoiceSource::Constant(place))),
            Err(problem) => self.problems.push(problem),
        }
    }

    pub(crate) fn gives(&self, name: &str) -> bool {
        self.given.iter().any(|(known, _)| *known == name)
    }

    /// The place that all rows choose; none where it differs by row.
    pub(crate) fn constant(&self, choice: Choice) -> Option<u32> {
        let wanted = Pick::Of(choice);
        self.choices.iter().find_map(|(pick, source)| match source {
            ChoiceSource::Constant(place) if *pick == wanted => Some(*place),
            _ => None,
        })
    }

    /// Tells that every row needs a number that nobody gives.
    pub(crate) fn missing_number(&mut self, number: &Number) {
        if self.accounts_for(number.name) {
            return;
        }
        let remedy = format!(
            "give it for every row, or a job that has it: {}",
            number.meaning
        );
        self.problems
            .push(missing(number.name, &usual_names(*number), &remedy));
    }

    /// Tells that every row needs a choice that nobody gives.
    pub(crate) fn missing_choice(&mut self, pick: &Pick) {
        if self.accounts_for(pick.name()) {
            return;
        }
        let remedy = format!("give one of: {}", choice::known(pick));
        self.problems
            .push(missing(pick.name(), pick.name(), &remedy));
    }

    /// Whether something gives an input or tells why not.
    fn accounts_for(&self, name: &str) -> bool {
        self.gives(name) || self.meant.iter().any(|meant| meant == name)
    }
}

/// An operation that all rows have, and a column that may say another.
fn two_operations(process: &str) -> Problem {
    Problem::new(
        Code::Duplicate,
        Choice::Operation.name(),
        format!("a column beside operation={process}"),
        "one operation for all rows",
        "split the table by operation, and name the column among those to pass through",
    )
}

fn missing(name: &str, column: &str, remedy: &str) -> Problem {
    Problem::new(
        Code::Missing,
        name,
        "",
        format!("a column {column}, or a constant {name}"),
        remedy,
    )
}

/// Money per hour: a bare number, or with `money/h` or `money/min` behind it.
fn cost_per_hour(text: &str) -> Result<f64> {
    let cost = match parse_number(text) {
        Ok(cost) => cost,
        Err(_) => gullet::quantity::to_unit(
            parse(Kind::MoneyRate, text)?,
            unit(Kind::MoneyRate, "money/h")?,
        ),
    };
    if cost >= 0.0 {
        return Ok(cost);
    }
    Err(Problem::new(
        Code::OutOfRange,
        "",
        text,
        "at least 0",
        "give money per hour",
    )
    .into())
}
