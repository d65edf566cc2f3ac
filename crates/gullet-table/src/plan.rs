//! The plan of a study: what every column is for, and all problems at once.

use crate::base::{self, CORNER_RADIUS, Defaults, FACE_MILL, lacks, needs, place_of, with_library};
use crate::choice::{self, Lists, Reader};
use crate::names::{COST_PER_HOUR, Role, role, usual_names};
use crate::numbers;
use crate::options::{StudyOptions, TextNumbers};
use crate::output::{self, NameLists};
use arrow_schema::{DataType, Field, Schema, SchemaRef};
use gullet::error::{Code, Error, Problem, Result, unknown_name};
use gullet::operation::Operation;
use gullet::quantity::{ColumnConverter, Kind, parse, parse_number, unit};
use gullet::study::{Base, Choice, Input, MillingStudy, ResultField};
use gullet::table::Library;
use std::sync::Arc;

/// Where the numbers of an input come from.
pub(crate) enum NumberSource {
    Constant(f64),
    Column {
        index: usize,
        converter: ColumnConverter,
    },
    /// The cutter's diameter, for a shank that is not given.
    Diameter,
    /// By the form of the cutter: an end mill's, a face mill's.
    ByForm([f64; 2]),
}

/// Where the places of a choice come from.
pub(crate) enum ChoiceSource {
    Constant(u32),
    Column { index: usize, reader: Reader },
}

/// What machine and operator cost.
pub(crate) enum CostSource {
    Constant(f64),
    Column(usize),
}

/// A study made ready for batches of one schema.
///
/// ```
/// use arrow_array::{Float64Array, RecordBatch, StringArray};
/// use arrow_schema::{DataType, Field, Schema};
/// use gullet::study::Execution;
/// use gullet::table::Library;
/// use gullet_table::{StudyOptions, StudyPlan};
/// use std::sync::Arc;
///
/// let schema = Schema::new(vec![
///     Field::new("part", DataType::Utf8, false),
///     Field::new("radial_depth_mm", DataType::Float64, true),
/// ]);
/// let constants = [
///     ("material", "6061"), ("machine", "small-cnc-mill"), ("operation", "side-milling"),
///     ("axial_depth", "6 mm"), ("length", "80 mm"), ("part_height", "25 mm"),
///     ("cutter_form", "square"), ("cutter_material", "HSS"), ("cutter_diameter", "12 mm"),
///     ("cutter_teeth", "2"), ("cutter_flute_length", "25 mm"), ("cutter_stick_out", "35 mm"),
///     ("clamping_force", "10 kN"), ("grip_depth", "15 mm"),
/// ].map(|(name, value)| (name.to_owned(), value.to_owned()));
/// let plan = StudyPlan::new(&schema, &constants, None, Library::builtin(), &StudyOptions::default())?;
/// let rows = RecordBatch::try_new(Arc::new(schema), vec![
///     Arc::new(StringArray::from(vec!["rail", "stop"])),
///     Arc::new(Float64Array::from(vec![Some(1.0), None])),
/// ])?;
/// let answer = plan.run(&rows, &[], Execution::default())?;
/// assert_eq!(answer.batch.num_rows(), 2);
/// assert_eq!((answer.summary.ok(), answer.summary.rows()), (1, 2));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub struct StudyPlan<'a> {
    pub(crate) study: MillingStudy<'a>,
    pub(crate) lists: Lists<'a>,
    pub(crate) numbers: Vec<(Input, NumberSource)>,
    pub(crate) choices: Vec<(Choice, ChoiceSource)>,
    pub(crate) cost: Option<CostSource>,
    /// Whether rows without a direction get that of their practice.
    pub(crate) direction_follows: bool,
    /// Places of the results that are computed: those written, then time and motor power.
    pub(crate) wanted: Vec<usize>,
    /// From SI to the units of the results that are written.
    pub(crate) written: Vec<ColumnConverter>,
    pub(crate) names: NameLists,
    pub(crate) input: SchemaRef,
    pub(crate) output: SchemaRef,
    pub(crate) replaced: Vec<usize>,
    pub(crate) base_form: usize,
    pub(crate) base_operation: usize,
    assumptions: Vec<String>,
    passed_through: Vec<String>,
}

/// What was found of the columns and constants.
#[derive(Default)]
struct Found {
    numbers: Vec<(Input, NumberSource)>,
    choices: Vec<(Choice, ChoiceSource)>,
    cost: Option<CostSource>,
    /// Names that gave each input, for duplicates.
    given: Vec<(&'static str, String)>,
    /// Inputs that a refused column means: they are not told as missing too.
    meant: Vec<&'static str>,
    passed_through: Vec<String>,
    problems: Vec<Problem>,
}

impl<'a> StudyPlan<'a> {
    /// A plan from the schema of the rows, constants (name without unit, value with unit) and a
    /// base.
    ///
    /// # Errors
    /// Every column and constant that is missing, given twice, of a wrong type or in a wrong unit,
    /// all in one error.
    pub fn new(
        schema: &Schema,
        constants: &[(String, String)],
        base: Option<Base>,
        library: &'a Library,
        options: &StudyOptions,
    ) -> Result<StudyPlan<'a>> {
        let mut assumptions = Vec::new();
        let mut found = Found::default();
        found.columns(schema, options);
        let defaults = Defaults::read(library)?;
        let with_base = base.is_some();
        let helix = defaults.helix;
        let own = base.unwrap_or_else(|| defaults.base());
        let lists = Lists::new(&own, library);
        found.constants(constants, &lists);
        if !with_base {
            found.defaults(helix, &mut assumptions);
        }
        found.missing(&own, with_base);

        let all = ResultField::all();
        let mut places = output::wanted(&options.columns, &all, options.units, &mut found.problems);
        let (fields, written) = fields(schema, options, &all, &places, &mut found);
        for name in ["time", "motor_power"] {
            places.extend(all.iter().position(|field| field.name == name));
        }
        let replaced = replaced(schema, options, &found);
        let base_form = place_of(own.cutter.form);
        let base_operation = Operation::ALL
            .iter()
            .position(|operation| *operation == own.pass.operation)
            .unwrap_or_default();
        let gives = |choice: Choice| found.choices.iter().any(|(other, _)| *other == choice);
        let direction_follows = !gives(Choice::Direction);
        let base = with_library(own, library)?;
        Error::unless_empty(
            found.problems,
            StudyPlan {
                study: MillingStudy::new(library, base),
                lists,
                numbers: found.numbers,
                choices: found.choices,
                cost: found.cost,
                direction_follows,
                wanted: places,
                written,
                names: NameLists::new(),
                input: Arc::new(schema.clone()),
                output: Arc::new(Schema::new_with_metadata(fields, schema.metadata().clone())),
                replaced,
                base_form,
                base_operation,
                assumptions,
                passed_through: found.passed_through,
            },
        )
    }

    /// Schema of the rows with their results.
    pub fn schema(&self) -> SchemaRef {
        self.output.clone()
    }

    /// Schema of the rows that the plan is made for.
    pub fn input_schema(&self) -> SchemaRef {
        self.input.clone()
    }

    /// What was assumed where neither a column nor a constant nor a base gives it.
    pub fn assumptions(&self) -> &[String] {
        &self.assumptions
    }

    /// Columns that are none of ours.
    pub fn passed_through(&self) -> &[String] {
        &self.passed_through
    }
}

impl Found {
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

    fn columns(&mut self, schema: &Schema, options: &StudyOptions) {
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
                    let converter = ColumnConverter::new(unit);
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

    fn constants(&mut self, constants: &[(String, String)], lists: &Lists) {
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
    fn defaults(&mut self, helix: [f64; 2], assumptions: &mut Vec<String>) {
        let form = self.constant(Choice::CutterForm);
        let face = form == Some(FACE_MILL as u32);
        if !self.gives(Input::CutterShankDiameter.name()) && !face {
            self.numbers
                .push((Input::CutterShankDiameter, NumberSource::Diameter));
            self.given
                .push((Input::CutterShankDiameter.name(), String::new()));
            assumptions.push("cutter_shank_diameter: the cutter's diameter".to_owned());
        }
        if !self.gives(Input::CutterHelixAngle.name()) {
            let source = match form {
                Some(_) => NumberSource::Constant(helix[usize::from(face)]),
                None => NumberSource::ByForm(helix),
            };
            self.numbers.push((Input::CutterHelixAngle, source));
            assumptions.push("cutter_helix_angle: 30 deg, of a face mill 0 deg".to_owned());
        }
        for (name, told) in [
            (Input::JawFriction.name(), "0.15"),
            (Choice::Practice.name(), "training"),
            (Choice::Pass.name(), "roughing"),
            (Choice::FeedAcrossJaws.name(), "false"),
        ] {
            if !self.gives(name) {
                assumptions.push(format!("{name}: {told}"));
            }
        }
        let slot = Operation::ALL.get(self.constant(Choice::Operation).unwrap_or(0) as usize);
        if !self.gives(Input::Offset.name()) && slot != Some(&Operation::Slotting) {
            assumptions.push("offset: 0 mm".to_owned());
        }
    }

    /// Tells what every row needs and nobody gives.
    fn missing(&mut self, own: &Base, with_base: bool) {
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
            let none = if with_base {
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
        if !with_base {
            for choice in [
                Choice::Material,
                Choice::Machine,
                Choice::Operation,
                Choice::CutterMaterial,
                Choice::CutterForm,
            ] {
                if !self.gives(choice.name()) && !self.meant.contains(&choice.name()) {
                    let remedy = format!("give one of: {}", choice::known(choice));
                    problems.push(missing(choice.name(), choice.name(), &remedy));
                }
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

/// The fields of the rows with their results, and what is written.
fn fields(
    schema: &Schema,
    options: &StudyOptions,
    all: &[ResultField],
    places: &[usize],
    found: &mut Found,
) -> (Vec<Arc<Field>>, Vec<ColumnConverter>) {
    let taken: Vec<String> = schema
        .fields()
        .iter()
        .map(|field| field.name().clone())
        .collect();
    let replaced = replaced(schema, options, found);
    let mut fields: Vec<Arc<Field>> = schema.fields().iter().cloned().collect();
    for index in replaced {
        if let Some(field) = fields.get_mut(index) {
            *field = Arc::new(Field::new(field.name(), DataType::Float64, true));
        }
    }
    let mut written = Vec::new();
    for place in places {
        let Some(field) = all.get(*place) else {
            continue;
        };
        let unit = output::unit_of(field, options.units);
        let named = output::named(
            output::number_field(field, unit),
            &taken,
            &mut found.problems,
        );
        fields.push(Arc::new(named));
        written.push(ColumnConverter::new(unit));
    }
    let cost = found.cost.is_some().then(output::cost_field);
    for field in cost.into_iter().chain(output::name_fields()) {
        fields.push(Arc::new(output::named(field, &taken, &mut found.problems)));
    }
    (fields, written)
}

/// Columns of text whose numbers take their place.
fn replaced(schema: &Schema, options: &StudyOptions, found: &Found) -> Vec<usize> {
    if options.text_numbers != TextNumbers::Replaced {
        return Vec::new();
    }
    let numbers = found.numbers.iter().filter_map(|(_, source)| match source {
        NumberSource::Column { index, .. } => Some(*index),
        _ => None,
    });
    let cost = found.cost.iter().filter_map(|source| match source {
        CostSource::Column(index) => Some(*index),
        CostSource::Constant(_) => None,
    });
    numbers
        .chain(cost)
        .filter(|index| choice::is_text(schema.field(*index).data_type()))
        .collect()
}

/// Whether rows of a form of cutter lack a size that neither a column nor the base gives.
pub(crate) fn lacks_form(plan: &StudyPlan, input: Input, form: usize) -> bool {
    let size = match input {
        Input::CutterCornerRadius => CORNER_RADIUS,
        Input::CutterEdgeAngle => FACE_MILL,
        _ => return false,
    };
    form == size
        && plan.base_form != form
        && !plan.numbers.iter().any(|(other, _)| *other == input)
        && base::needs(input, Operation::SideMilling, form)
}
