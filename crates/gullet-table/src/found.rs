//! What columns and constants give, and what is wrong with them.

use crate::base::{FACE_MILL, lacks, needs, place_of};
use crate::choice::{self, Lists, Reader};
use crate::names::{COST_PER_HOUR, Role, role, usual_names};
use crate::numbers;
use crate::options::{StudyOptions, TextNumbers};
use crate::plan::{ChoiceSource, CostSource, NumberSource};
use crate::start::{Covered, Start};
use arrow_schema::{Field, Schema};
use gullet::error::{Code, Problem, Result, unknown_name};
use gullet::operation::Operation;
use gullet::quantity::{ColumnConverter, Kind, parse, parse_number, unit};
use gullet::study::{Base, Choice, Input};

/// What was found of the columns and constants.
#[derive(Default)]
pub(crate) struct Found {
    pub numbers: Vec<(Input, NumberSource)>,
    pub choices: Vec<(Choice, ChoiceSource)>,
    pub cost: Option<CostSource>,
    /// Names that gave each input, for duplicates.
    given: Vec<(&'static str, String)>,
    /// Inputs that a refused column means: they are not told as missing too.
    meant: Vec<&'static str>,
    covered: Covered,
    pub passed_through: Vec<String>,
    pub problems: Vec<Problem>,
}

impl Found {
    pub(crate) fn starting_from(start: &Start) -> Found {
        Found {
            meant: start.told_names(),
            covered: start.covered(),
            ..Found::default()
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
                role(name)
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
            Role::Choice(choice) => choice::check_type(choice, field.data_type()),
            Role::Refused(ref problem) => Err(problem.clone()),
            Role::Other => Ok(()),
        };
        if let Err(problem) = typed {
            self.problems.push(problem);
        }
        match named {
            Role::Number(input, unit) => {
                if self.give(input.name(), name) {
                    let converter = ColumnConverter::shared(unit);
                    self.numbers
                        .push((input, NumberSource::Column { index, converter }));
                }
            }
            Role::Choice(choice) => {
                if self.give(choice.name(), name) {
                    let reader = Reader::new(choice);
                    self.choices
                        .push((choice, ChoiceSource::Column { index, reader }));
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
        let input = Input::ALL.iter().map(|input| input.name());
        let names = input.chain(Choice::ALL.iter().map(|choice| choice.name()));
        if let Some(name) = names
            .filter(|name| problem.parameter.starts_with(name) || meant.starts_with(name))
            .max_by_key(|name| name.len())
        {
            self.meant.push(name);
        }
    }

    pub(crate) fn constants(&mut self, constants: &[(String, String)], lists: &Lists) {
        for (name, text) in constants {
            if let Some(input) = Input::ALL.iter().find(|input| input.name() == name) {
                if self.give(input.name(), name) {
                    match parse(input.kind(), text) {
                        Ok(si) => self.numbers.push((*input, NumberSource::Constant(si))),
                        Err(error) => self.problems.extend(error.within(name).into_problems()),
                    }
                }
            } else if let Some(choice) = Choice::ALL.iter().find(|choice| choice.name() == name) {
                if self.give(choice.name(), name) {
                    match lists.place(*choice, text) {
                        Ok(place) => self.choices.push((*choice, ChoiceSource::Constant(place))),
                        Err(problem) => self.problems.push(problem),
                    }
                }
            } else if name == COST_PER_HOUR {
                if self.give(COST_PER_HOUR, name) {
                    match cost_per_hour(text) {
                        Ok(cost) => self.cost = Some(CostSource::Constant(cost)),
                        Err(error) => self.problems.extend(error.within(name).into_problems()),
                    }
                }
            } else {
                let inputs = Input::ALL.iter().map(|input| input.name());
                let choices = Choice::ALL.iter().map(|choice| choice.name());
                let known = inputs.chain(choices).chain([COST_PER_HOUR]);
                self.problems.push(unknown_name("constant", name, known));
            }
        }
    }

    fn gives(&self, name: &str) -> bool {
        self.given.iter().any(|(known, _)| *known == name)
    }

    /// The place that all rows choose; none where it differs by row.
    fn constant(&self, choice: Choice) -> Option<u32> {
        self.choices
            .iter()
            .find_map(|(other, source)| match source {
                ChoiceSource::Constant(place) if *other == choice => Some(*place),
                _ => None,
            })
    }

    /// Fills in what job files have a default for.
    pub(crate) fn defaults(&mut self, helix: [f64; 2], assumptions: &mut Vec<String>) {
        let form = self.constant(Choice::CutterForm);
        let face = form == Some(FACE_MILL as u32);
        let covered = self.covered;
        if !covered.input(Input::CutterShankDiameter)
            && !self.gives(Input::CutterShankDiameter.name())
            && !face
        {
            self.numbers
                .push((Input::CutterShankDiameter, NumberSource::Diameter));
            self.given
                .push((Input::CutterShankDiameter.name(), String::new()));
            assumptions.push("cutter_shank_diameter: the cutter's diameter".to_owned());
        }
        if !covered.input(Input::CutterHelixAngle) && !self.gives(Input::CutterHelixAngle.name()) {
            let source = match form {
                Some(_) => NumberSource::Constant(helix[usize::from(face)]),
                None => NumberSource::ByForm(helix),
            };
            self.numbers.push((Input::CutterHelixAngle, source));
            assumptions.push("cutter_helix_angle: 30 deg, of a face mill 0 deg".to_owned());
        }
        let choice = |choice: Choice| (choice.name(), covered.choice(choice));
        let friction = Input::JawFriction;
        for ((name, covered), told) in [
            ((friction.name(), covered.input(friction)), "0.15"),
            (choice(Choice::Practice), "training"),
            (choice(Choice::Pass), "roughing"),
            (choice(Choice::FeedAcrossJaws), "false"),
        ] {
            if !covered && !self.gives(name) {
                assumptions.push(format!("{name}: {told}"));
            }
        }
        let slot = Operation::ALL.get(self.constant(Choice::Operation).unwrap_or(0) as usize);
        let offset = covered.input(Input::Offset) || self.gives(Input::Offset.name());
        if !offset && slot != Some(&Operation::Slotting) {
            assumptions.push("offset: 0 mm".to_owned());
        }
    }

    /// Tells what every row needs and nobody gives.
    pub(crate) fn missing(&mut self, own: &Base) {
        let form = self
            .constant(Choice::CutterForm)
            .map(|place| place as usize)
            .or((!self.gives(Choice::CutterForm.name())).then_some(place_of(own.cutter.form)));
        let operation = match self.constant(Choice::Operation) {
            Some(place) => Operation::ALL.get(place as usize).copied(),
            None if self.gives(Choice::Operation.name()) => None,
            None => Some(own.pass.operation),
        };
        let always = |input: Input| match operation {
            // Where operations differ by row, a depth that some of them need is asked for.
            None => {
                input != Input::Offset && needs(input, Operation::SideMilling, form.unwrap_or(0))
            }
            Some(operation) => needs(input, operation, form.unwrap_or(0)),
        };
        let without_base = |input: Input| {
            !matches!(
                input,
                Input::Offset | Input::CutterHelixAngle | Input::JawFriction
            )
        };
        let of_own_form = form == Some(place_of(own.cutter.form));
        let mut problems = Vec::new();
        for input in Input::ALL.iter().copied() {
            let none = if self.covered.input(input) {
                lacks(own, input)
                    || (matches!(input, Input::CutterCornerRadius | Input::CutterEdgeAngle)
                        && !of_own_form)
            } else {
                without_base(input)
            };
            let told = self.gives(input.name()) || self.meant.contains(&input.name());
            if none && always(input) && !told {
                let remedy = format!(
                    "give it for every row, or a job that has it: {}",
                    input.meaning()
                );
                problems.push(missing(input.name(), &usual_names(input), &remedy));
            }
        }
        for choice in [
            Choice::Material,
            Choice::Machine,
            Choice::Operation,
            Choice::CutterMaterial,
            Choice::CutterForm,
        ] {
            let told = self.gives(choice.name()) || self.meant.contains(&choice.name());
            if !self.covered.choice(choice) && !told {
                let remedy = format!("give one of: {}", choice::known(choice));
                problems.push(missing(choice.name(), choice.name(), &remedy));
            }
        }
        self.problems.extend(problems);
    }
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
