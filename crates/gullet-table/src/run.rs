//! A batch of rows through the study.

use crate::base::{FACE_MILL, needs};
use crate::choice::{MOST_TOLD, Unknown};
use crate::numbers::{self, Numbers};
use crate::output;
use crate::plan::{ChoiceSource, CostSource, NumberSource, StudyPlan, lacks_form};
use crate::summary::{Row, Summary};
use arrow_array::{ArrayRef, RecordBatch, UInt32Array};
use arrow_schema::Schema;
use gullet::error::{Code, Error, Problem, Result};
use gullet::formula::{Column, cost};
use gullet::model::{Direction, PassKind};
use gullet::operation::Operation;
use gullet::quantity::si;
use gullet::study::{Choice, Codes, Execution, Input, NONE, Quantiles, Results, Rows, Uncertainty};
use std::sync::Arc;

/// A batch of rows with its results.
#[derive(Debug, Clone)]
pub struct Answer {
    /// The rows' own columns and their results.
    pub batch: RecordBatch,
    /// Totals of these rows.
    pub summary: Summary,
    /// Some of the cells that mean nothing, with what would: names the tables do not know, text that
    /// is no number.
    pub problems: Vec<RowProblem>,
}

/// A cell that means nothing.
#[derive(Debug, Clone, PartialEq)]
pub struct RowProblem {
    /// Row of the batch, from 0.
    pub row: usize,
    /// What is wrong with it.
    pub problem: Problem,
}

/// What is known of the rows before they are computed.
struct Marks {
    /// 0, or the number of a code.
    codes: Vec<i32>,
    missing: Vec<bool>,
    problems: Vec<RowProblem>,
}

impl Marks {
    fn code(&mut self, row: usize, code: Code) {
        if let Some(slot) = self.codes.get_mut(row)
            && *slot == 0
        {
            *slot = code.number();
        }
    }

    fn missing(&mut self, row: usize) {
        if let Some(slot) = self.missing.get_mut(row) {
            *slot = true;
        }
    }

    fn tell(&mut self, name: &str, row: usize, mut problem: Problem) {
        if self.problems.len() < 4 * MOST_TOLD {
            name.clone_into(&mut problem.parameter);
            self.problems.push(RowProblem { row, problem });
        }
    }
}

/// The places that rows choose.
enum Places {
    Constant(u32),
    Rows(Vec<u32>),
}

impl Places {
    fn at(&self, row: usize) -> usize {
        match self {
            Places::Constant(place) => *place as usize,
            Places::Rows(places) => places.get(row).copied().unwrap_or_default() as usize,
        }
    }

    fn codes(&self) -> Codes<'_> {
        match self {
            Places::Constant(place) => Codes::Constant(*place),
            Places::Rows(places) => Codes::Values(places),
        }
    }
}

/// SI values of an input.
enum Values {
    Constant(f64),
    Rows(Vec<f64>),
}

impl Values {
    fn column(&self) -> Column<'_> {
        match self {
            Values::Constant(value) => Column::Constant(*value),
            Values::Rows(values) => Column::Values(values),
        }
    }

    fn at(&self, row: usize) -> f64 {
        match self {
            Values::Constant(value) => *value,
            Values::Rows(values) => values.get(row).copied().unwrap_or(f64::NAN),
        }
    }
}

impl StudyPlan<'_> {
    /// Computes the rows of a batch; `marked` are rows that whoever read them refuses already.
    ///
    /// # Errors
    /// `Inconsistent` for a batch of another schema. Problems of single rows stand in the results.
    pub fn run(
        &self,
        batch: &RecordBatch,
        marked: &[(usize, Code)],
        execution: Execution,
    ) -> Result<Answer> {
        self.run_from(0, batch, marked, execution)
    }

    /// As [`StudyPlan::run`], for the batch whose first row has this number: draws depend on the
    /// number of a row, not on the batch it comes in.
    ///
    /// # Errors
    /// As [`StudyPlan::run`].
    pub fn run_from(
        &self,
        first_row: u64,
        batch: &RecordBatch,
        marked: &[(usize, Code)],
        execution: Execution,
    ) -> Result<Answer> {
        self.check(batch.schema_ref())?;
        let count = batch.num_rows();
        let mut marks = Marks {
            codes: vec![0; count],
            missing: vec![false; count],
            problems: Vec::new(),
        };
        for (row, code) in marked {
            marks.code(*row, *code);
        }
        let mut replaced: Vec<(usize, ArrayRef)> = Vec::new();
        let mut choices = self.read_choices(batch, &mut marks);
        let numbers = self.read_numbers(batch, &choices, &mut marks, &mut replaced);
        let rates = self.read_cost(batch, &mut marks, &mut replaced);
        self.follow_direction(count, &numbers, &mut choices);
        let Marks {
            mut codes,
            missing,
            problems,
        } = marks;
        for (code, missing) in codes.iter_mut().zip(&missing) {
            if *missing && *code == 0 {
                *code = Code::Missing.number();
            }
        }
        let left_out: Vec<bool> = codes.iter().map(|code| *code != 0).collect();
        let rows = Rows {
            count,
            numbers: numbers
                .iter()
                .map(|(input, values)| (*input, values.column()))
                .collect(),
            choices: choices
                .iter()
                .map(|(choice, places)| (*choice, places.codes()))
                .collect(),
            missing: Some(&left_out),
        };
        let (mut results, quantiles) = match &self.uncertainty {
            None => (self.study.run(&rows, &self.wanted, execution)?, None),
            Some(uncertainty) => {
                let here = Uncertainty {
                    first_row: uncertainty.first_row + first_row,
                    ..uncertainty.clone()
                };
                let (results, quantiles) =
                    self.study
                        .run_uncertain(&rows, &self.wanted, &here, execution)?;
                (results, Some(quantiles))
            }
        };
        for (status, code) in results.status.iter_mut().zip(&codes) {
            if *code != 0 {
                *status = *code;
            }
        }
        let costs = rates.map(|rates| self.costs(&results, &rates));
        let summary = self.sum(&results, costs.as_deref());
        Ok(Answer {
            batch: self.assemble(batch, results, quantiles, costs, &replaced)?,
            summary,
            problems,
        })
    }

    /// Whether batches of a schema can be run: the columns have the names and types of the plan's.
    ///
    /// # Errors
    /// `Inconsistent` where they have not.
    pub fn check(&self, schema: &Schema) -> Result<()> {
        let same = schema.fields().len() == self.input.fields().len()
            && schema
                .fields()
                .iter()
                .zip(self.input.fields())
                .all(|(a, b)| a.name() == b.name() && a.data_type() == b.data_type());
        if same {
            return Ok(());
        }
        Err(Problem::new(
            Code::Inconsistent,
            "batch",
            "another schema than the plan's",
            "the columns that the plan was made for",
            "make a plan for this schema",
        )
        .into())
    }

    fn read_choices(&self, batch: &RecordBatch, marks: &mut Marks) -> Vec<(Choice, Places)> {
        let mut all = Vec::new();
        for (choice, source) in &self.choices {
            let places = match source {
                ChoiceSource::Constant(place) => Places::Constant(*place),
                ChoiceSource::Column { index, reader } => {
                    let mut unknown: Vec<Unknown> = Vec::new();
                    let read = reader.read(&self.lists, batch.column(*index), &mut unknown);
                    for Unknown { row, problem } in unknown {
                        marks.tell(choice.name(), row, problem);
                    }
                    let place =
                        |(row, meaning): (usize, Option<core::result::Result<u32, Code>>)| {
                            match meaning {
                                Some(Ok(place)) => return place,
                                Some(Err(code)) => marks.code(row, code),
                                None => marks.missing(row),
                            }
                            0
                        };
                    Places::Rows(read.into_iter().enumerate().map(place).collect())
                }
            };
            all.push((*choice, places));
        }
        all
    }

    fn read_numbers(
        &self,
        batch: &RecordBatch,
        choices: &[(Choice, Places)],
        marks: &mut Marks,
        replaced: &mut Vec<(usize, ArrayRef)>,
    ) -> Vec<(Input, Values)> {
        let chosen = |choice: Choice| choices.iter().find(|(other, _)| *other == choice);
        let (forms, operations) = (chosen(Choice::CutterForm), chosen(Choice::Operation));
        let form = |row: usize| forms.map_or(self.base_form, |(_, places)| places.at(row));
        let operation = |row: usize| {
            let place = operations.map_or(self.base_operation, |(_, places)| places.at(row));
            Operation::ALL
                .get(place)
                .copied()
                .unwrap_or(Operation::SideMilling)
        };
        let mut all: Vec<(Input, Values)> = Vec::new();
        for (input, source) in &self.numbers {
            let values = match source {
                NumberSource::Constant(value) => Values::Constant(*value),
                NumberSource::ByForm([end, face]) => Values::Rows(
                    (0..batch.num_rows())
                        .map(|row| if form(row) == FACE_MILL { *face } else { *end })
                        .collect(),
                ),
                // Laid over below, when the diameter is known.
                NumberSource::Diameter => continue,
                NumberSource::Column { index, converter } => {
                    let mut read = numbers::read(batch.column(*index));
                    if self.replaced.contains(index) {
                        replaced.push((*index, Arc::new(numbers::as_column(&read))));
                    }
                    unreadable(batch, *index, &mut read, marks);
                    converter.to_si(&mut read.values);
                    for (row, value) in read.values.iter_mut().enumerate() {
                        let null = read.valid.as_ref().is_some_and(|valid| valid.is_null(row));
                        if !null {
                            if !value.is_finite() {
                                marks.code(row, Code::NotFinite);
                            }
                            continue;
                        }
                        *value = if input.optional() { NONE } else { 0.0 };
                        if needs(*input, operation(row), form(row)) {
                            marks.missing(row);
                        }
                    }
                    Values::Rows(read.values)
                }
            };
            all.push((*input, values));
        }
        self.shanks(batch.num_rows(), form, &mut all, marks);
        all
    }

    /// Shanks as thick as the cutter; sizes of forms that nobody gives.
    fn shanks(
        &self,
        count: usize,
        form: impl Fn(usize) -> usize,
        all: &mut Vec<(Input, Values)>,
        marks: &mut Marks,
    ) {
        for input in [Input::CutterCornerRadius, Input::CutterEdgeAngle] {
            for row in 0..count {
                if lacks_form(self, input, form(row)) {
                    marks.missing(row);
                }
            }
        }
        let follows = |source: &NumberSource| matches!(source, NumberSource::Diameter);
        if !self.numbers.iter().any(|(_, source)| follows(source)) {
            return;
        }
        for row in 0..count {
            if form(row) == FACE_MILL {
                marks.missing(row);
            }
        }
        let diameter = all
            .iter()
            .find(|(input, _)| *input == Input::CutterDiameter);
        let shank = match diameter {
            Some((_, Values::Constant(value))) => Values::Constant(*value),
            Some((_, Values::Rows(values))) => Values::Rows(values.clone()),
            None => return,
        };
        all.push((Input::CutterShankDiameter, shank));
    }

    /// Money per hour of every row.
    fn read_cost(
        &self,
        batch: &RecordBatch,
        marks: &mut Marks,
        replaced: &mut Vec<(usize, ArrayRef)>,
    ) -> Option<Values> {
        Some(match self.cost.as_ref()? {
            CostSource::Constant(rate) => Values::Constant(*rate),
            CostSource::Column(index) => {
                let mut read = numbers::read(batch.column(*index));
                if self.replaced.contains(index) {
                    replaced.push((*index, Arc::new(numbers::as_column(&read))));
                }
                unreadable(batch, *index, &mut read, marks);
                for (row, value) in read.values.iter_mut().enumerate() {
                    // A row without a rate has no cost; the cut is computed.
                    if read.valid.as_ref().is_some_and(|valid| valid.is_null(row)) {
                        *value = f64::NAN;
                    } else if !value.is_finite() {
                        marks.code(row, Code::NotFinite);
                    } else if *value < 0.0 {
                        marks.code(row, Code::OutOfRange);
                    }
                }
                Values::Rows(read.values)
            }
        })
    }

    /// Where no direction is given, that of the row's practice on the row's machine.
    fn follow_direction(
        &self,
        count: usize,
        numbers: &[(Input, Values)],
        choices: &mut Vec<(Choice, Places)>,
    ) {
        if !self.direction_follows {
            return;
        }
        let base = self.study.base();
        let own = |list: Option<usize>| Places::Constant(list.unwrap_or(0) as u32);
        let kinds = own(PassKind::ALL
            .iter()
            .position(|kind| *kind == base.pass.kind));
        let operations = own(Some(self.base_operation));
        let first = own(None);
        let chosen = |choice: Choice| {
            let found = choices.iter().find(|(other, _)| *other == choice);
            found.map(|(_, places)| places)
        };
        let practices = chosen(Choice::Practice).unwrap_or(&first);
        let machines = chosen(Choice::Machine).unwrap_or(&first);
        let kinds = chosen(Choice::Pass).unwrap_or(&kinds);
        let operations = chosen(Choice::Operation).unwrap_or(&operations);
        let number = |input: Input| {
            let found = numbers.iter().find(|(other, _)| *other == input);
            found.map(|(_, values)| values)
        };
        let (axial, radial) = (number(Input::AxialDepth), number(Input::RadialDepth));
        let mut pass = base.pass;
        let mut direction = |row: usize| {
            let practice = base.practices.get(practices.at(row))?;
            let machine = base.machines.get(machines.at(row))?;
            let kind = PassKind::ALL.get(kinds.at(row))?;
            pass.operation = *Operation::ALL.get(operations.at(row))?;
            if let Some(depths) = axial {
                pass.axial_depth = si(depths.at(row));
            }
            if let Some(depths) = radial {
                pass.radial_depth = si(depths.at(row));
            }
            let found = practice.direction_with_backlash(*kind, pass.depth(), machine.backlash);
            Direction::ALL
                .iter()
                .position(|direction| *direction == found)
        };
        let places = (0..count)
            .map(|row| direction(row).unwrap_or(0) as u32)
            .collect();
        choices.push((Choice::Direction, Places::Rows(places)));
    }

    /// Cost of every row's time in the cut; NaN where there is none.
    fn costs(&self, results: &Results, rates: &Values) -> Vec<f64> {
        let times = self.extra(results, 0);
        let formula = &cost::unit_cost::FORMULA;
        (0..results.count())
            .map(|row| {
                let time = times.get(row).copied().unwrap_or(f64::NAN);
                let rate = rates.at(row) / 3600.0;
                let parts = [0.0, time, 0.0, 1.0, 0.0, rate, 1.0];
                formula.call(&parts).unwrap_or(f64::NAN)
            })
            .collect()
    }

    /// Time or motor power, which stand behind the results that are written.
    fn extra<'r>(&self, results: &'r Results, which: usize) -> &'r [f64] {
        results
            .columns
            .get(self.written.len() + which)
            .map_or(&[], Vec::as_slice)
    }

    fn sum(&self, results: &Results, costs: Option<&[f64]>) -> Summary {
        let (times, powers) = (self.extra(results, 0), self.extra(results, 1));
        let at = |values: &[f64], row: usize| values.get(row).copied().unwrap_or_default();
        let number = |numbers: &[u8], row: usize| numbers.get(row).copied().unwrap_or_default();
        let mut summary = Summary::default();
        for (row, status) in results.status.iter().enumerate() {
            summary.add_row(Row {
                status: *status,
                binding: number(&results.binding, row),
                held_by: number(&results.held_by, row),
                time: at(times, row),
                power: at(powers, row),
                cost: costs.map(|costs| at(costs, row)),
            });
        }
        summary
    }

    fn assemble(
        &self,
        batch: &RecordBatch,
        results: Results,
        quantiles: Option<Quantiles>,
        costs: Option<Vec<f64>>,
        replaced: &[(usize, ArrayRef)],
    ) -> Result<RecordBatch> {
        let mut columns: Vec<ArrayRef> = batch.columns().to_vec();
        for (index, array) in replaced {
            if let Some(slot) = columns.get_mut(*index) {
                *slot = array.clone();
            }
        }
        let each = self
            .uncertainty
            .as_ref()
            .map_or(0, |uncertainty| uncertainty.quantiles.len());
        let (mut drawn, left_out) = quantiles
            .map(|quantiles| (quantiles.columns.into_iter(), quantiles.left_out))
            .unzip();
        for (converter, values) in self.written.iter().zip(results.columns) {
            let own = drawn.iter_mut().flatten().take(each);
            for mut values in core::iter::once(values).chain(own) {
                converter.from_si(&mut values);
                columns.push(output::numbers(values));
            }
        }
        if let Some(left_out) = left_out {
            columns.push(Arc::new(UInt32Array::from(left_out)));
        }
        columns.extend(costs.map(output::numbers));
        columns.push(self.names.statuses(&results.status));
        columns.push(self.names.limits(&results.binding));
        columns.push(self.names.limits(&results.held_by));
        columns.push(self.names.warnings(&results.warnings));
        RecordBatch::try_new(self.output.clone(), columns).map_err(|error| {
            Error::from(Problem::new(
                Code::Inconsistent,
                "batch",
                error.to_string(),
                "columns as their schema says",
                "mend the batch: a column that may hold no null holds one",
            ))
        })
    }
}

/// Rows with text that is no number get its code; some are told.
fn unreadable(batch: &RecordBatch, index: usize, read: &mut Numbers, marks: &mut Marks) {
    let schema = batch.schema();
    let name = schema.field(index).name();
    for (told, (row, problem)) in read.unreadable.drain(..).enumerate() {
        marks.code(row, problem.code);
        if told < MOST_TOLD {
            marks.tell(name, row, problem);
        }
    }
}
