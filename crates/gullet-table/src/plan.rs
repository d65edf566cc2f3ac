//! The plan of a study: what every column is for, and all problems at once.

use crate::choice::{self, Lists, Reader};
use crate::found::Found;
use crate::milling::Milling;
use crate::options::{StudyOptions, TextNumbers};
use crate::output::{self, NameLists};
use crate::process::Process;
use crate::start::Start;
use crate::subject::Subject;
use crate::takes::{Number, Pick, Takes};
use arrow_schema::{DataType, Field, Schema, SchemaRef};
use gullet::error::{Error, Result};
use gullet::operation::process;
use gullet::quantity::ColumnConverter;
use gullet::study::{Base, ResultField, Uncertainty};
use gullet::table::LibraryRef;
use std::sync::Arc;

/// Where the numbers of an input come from.
pub(crate) enum NumberSource {
    Constant(f64),
    Column {
        index: usize,
        converter: Arc<ColumnConverter>,
    },
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
    pub(crate) subject: Box<dyn Subject + 'a>,
    pub(crate) lists: Lists<'a>,
    pub(crate) numbers: Vec<(Number, NumberSource)>,
    pub(crate) choices: Vec<(Pick, ChoiceSource)>,
    pub(crate) cost: Option<CostSource>,
    /// Places of the results that are computed: those written, then what totals are made of.
    pub(crate) wanted: Vec<usize>,
    /// Where time and power stand among them.
    pub(crate) summed: [Option<usize>; 2],
    /// From SI to the units of the results that are written.
    pub(crate) written: Vec<Arc<ColumnConverter>>,
    pub(crate) uncertainty: Option<Uncertainty>,
    pub(crate) names: NameLists,
    pub(crate) input: SchemaRef,
    pub(crate) output: SchemaRef,
    pub(crate) replaced: Vec<usize>,
    assumptions: Vec<String>,
    passed_through: Vec<String>,
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
        library: impl Into<LibraryRef<'a>>,
        options: &StudyOptions,
    ) -> Result<StudyPlan<'a>> {
        let start = Start {
            base,
            ..Start::default()
        };
        StudyPlan::starting_from(schema, constants, start, library, options)
    }

    /// As [`StudyPlan::new`], with parts of a job laid over its base, or given without one.
    ///
    /// # Errors
    /// As [`StudyPlan::new`].
    pub fn starting_from(
        schema: &Schema,
        constants: &[(String, String)],
        start: Start,
        library: impl Into<LibraryRef<'a>>,
        options: &StudyOptions,
    ) -> Result<StudyPlan<'a>> {
        let library = library.into();
        let mut assumptions = Vec::new();
        let takes = Takes::of_constants(constants);
        let mut found = Found::new(takes, &start.told);
        found.columns(schema, options);
        let (mut subject, lists) = begin(&found.takes, start, &library, options)?;
        found.constants(constants, &lists);
        subject.settle(&mut found, &mut assumptions);

        let all = subject.fields();
        let usual = subject.usual();
        let mut places = output::wanted(
            &options.columns,
            &all,
            &usual,
            options.units,
            &mut found.problems,
        );
        let (fields, written) = fields(schema, options, &all, &places, &mut found);
        let summed = [Some("time"), subject.energy().map(|it| it.power)].map(|name| {
            let place = all.iter().position(|field| Some(field.name) == name)?;
            places.push(place);
            Some(places.len() - 1)
        });
        let replaced = replaced(schema, options, &found);
        if let Some(uncertainty) = &options.uncertainty {
            let problems = match (subject.no_draws(), uncertainty.check()) {
                (Some(problem), _) => vec![problem],
                (None, Err(error)) => error.into_problems(),
                (None, Ok(())) => Vec::new(),
            };
            found.problems.extend(problems);
        }
        let takes = found.takes;
        let known = |(place, source)| {
            let mut all = takes.numbers().iter();
            Some((*all.find(|number| number.place == place)?, source))
        };
        Error::unless_empty(
            found.problems,
            StudyPlan {
                subject,
                lists,
                numbers: found.numbers.into_iter().filter_map(known).collect(),
                choices: found.choices,
                cost: found.cost,
                wanted: places,
                summed,
                written,
                uncertainty: options.uncertainty.clone(),
                names: NameLists::new(options.dictionaries),
                input: Arc::new(schema.clone()),
                output: Arc::new(Schema::new_with_metadata(fields, schema.metadata().clone())),
                replaced,
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

    /// The operation of all rows; none where they are milling cuts, which may differ by row.
    pub fn operation(&self) -> Option<&'static process::Process> {
        self.subject.process()
    }

    /// Whose energy the totals hold, for people: "of the spindle motor at full width of cut". None
    /// where the operation gives no power.
    pub fn energy(&self) -> Option<&'static str> {
        self.subject.energy().map(|energy| energy.whose)
    }

    /// Columns that are none of ours.
    pub fn passed_through(&self) -> &[String] {
        &self.passed_through
    }
}

/// What computes the rows, and the lists that their names pick from.
fn begin<'a>(
    takes: &Takes,
    start: Start,
    library: &LibraryRef<'a>,
    options: &StudyOptions,
) -> Result<(Box<dyn Subject + 'a>, Lists<'a>)> {
    Ok(match takes.process() {
        None => {
            let (milling, lists) = Milling::begin(start, library)?;
            (Box::new(milling), lists)
        }
        Some(process) => {
            let (process, lists) = Process::begin(process, start, library, options.units)?;
            (Box::new(process), lists)
        }
    })
}

/// The fields of the rows with their results, and what is written.
fn fields(
    schema: &Schema,
    options: &StudyOptions,
    all: &[ResultField],
    places: &[usize],
    found: &mut Found,
) -> (Vec<Arc<Field>>, Vec<Arc<ColumnConverter>>) {
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
        written.push(ColumnConverter::shared(unit));
        let shares = options.uncertainty.iter().flat_map(|it| &it.quantiles);
        for share in shares {
            let quantile = output::quantile_field(field, unit, *share);
            fields.push(Arc::new(output::named(
                quantile,
                &taken,
                &mut found.problems,
            )));
        }
    }
    if options.uncertainty.is_some() {
        let left_out = output::left_out_field();
        fields.push(Arc::new(output::named(
            left_out,
            &taken,
            &mut found.problems,
        )));
    }
    let cost = found.cost.is_some().then(output::cost_field);
    for field in cost
        .into_iter()
        .chain(output::name_fields(options.dictionaries))
    {
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
        NumberSource::Constant(_) => None,
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
