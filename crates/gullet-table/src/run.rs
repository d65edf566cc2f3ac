//! A batch of rows through the study.

use crate::choice::{self, MOST_TOLD, Meaning, OF_ITS_OWN, Unknown};
use crate::numbers::{self, Numbers};
use crate::output;
use crate::plan::{ChoiceSource, CostSource, NumberSource, StudyPlan};
use crate::subject::{Given, Marks, Places, Read, Values};
use crate::summary::{Row, Summary};
use crate::takes::Pick;
use arrow_array::{ArrayRef, RecordBatch, UInt32Array};
use arrow_schema::Schema;
use gullet::error::{Code, Error, Problem, Result};
use gullet::formula::cost;
use gullet::study::{Choice, Execution, Quantiles, Results, Uncertainty};
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

impl StudyPlan<'_> {
    /// Computes the rows of a batch; `marked` are rows that whoever read them refuses already.
    ///
    /// # Errors
    /// `Inconsistent` for a batch of another schema, and for an operation in a column that has
    /// columns of its own. Problems of single rows stand in the results.
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
        let mut marks = Marks::new(batch.num_rows());
        for (row, code) in marked {
            marks.code(*row, *code);
        }
        let mut replaced: Vec<(usize, ArrayRef)> = Vec::new();
        let mut read = Read {
            count: batch.num_rows(),
            ..Read::default()
        };
        self.read_choices(batch, &mut read, &mut marks)?;
        self.read_numbers(batch, &mut read, &mut marks, &mut replaced);
        let rates = self.read_cost(batch, &mut marks, &mut replaced);
        self.subject.complete(&mut read, &mut marks);
        let (codes, problems) = marks.into_codes();
        let left_out: Vec<bool> = codes.iter().map(|code| *code != 0).collect();
        let given = Given {
            read: &read,
            left_out: &left_out,
        };
        let (mut results, quantiles) = match &self.uncertainty {
            None => (self.subject.run(&given, &self.wanted, execution)?, None),
            Some(uncertainty) => {
                let here = Uncertainty {
                    first_row: uncertainty.first_row.wrapping_add(first_row),
                    ..uncertainty.clone()
                };
                let (results, quantiles) =
                    self.subject
                        .run_uncertain(&given, &self.wanted, &here, execution)?;
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

    /// Whether every row of a batch has an operation that rows may differ in. A batch that is run is
    /// looked at anyway: this is for whoever has a whole table and wants to know beforehand.
    ///
    /// # Errors
    /// `Inconsistent` for an operation that has columns of its own.
    pub fn check_operations(&self, batch: &RecordBatch) -> Result<()> {
        self.check(batch.schema_ref())?;
        for (pick, source) in &self.choices {
            if let ChoiceSource::Column { index, reader } = source
                && *pick == Pick::Of(Choice::Operation)
            {
                let mut unknown = Vec::new();
                let read = reader.read(&self.lists, batch.column(*index), &mut unknown);
                self.one_table(pick, &read, batch.column(*index))?;
            }
        }
        Ok(())
    }

    /// Refuses a table with a row of an operation that has columns of its own.
    fn one_table(&self, pick: &Pick, read: &[Option<Meaning>], column: &ArrayRef) -> Result<()> {
        if *pick != Pick::Of(Choice::Operation) {
            return Ok(());
        }
        let Some(row) = read.iter().position(|it| *it == Some(Err(OF_ITS_OWN))) else {
            return Ok(());
        };
        let word = choice::word_at(column, row).unwrap_or_default();
        self.lists.place(pick, word).map(drop).map_err(Error::from)
    }

    fn read_choices(&self, batch: &RecordBatch, rows: &mut Read, marks: &mut Marks) -> Result<()> {
        for (pick, source) in &self.choices {
            let places = match source {
                ChoiceSource::Constant(place) => Places::Constant(*place),
                ChoiceSource::Column { index, reader } => {
                    let mut unknown: Vec<Unknown> = Vec::new();
                    let read = reader.read(&self.lists, batch.column(*index), &mut unknown);
                    self.one_table(pick, &read, batch.column(*index))?;
                    for Unknown { row, problem } in unknown {
                        marks.tell(pick.name(), row, problem);
                    }
                    let default = match pick {
                        Pick::Word(word) => word.default,
                        Pick::Of(_) => None,
                    };
                    let place = |(row, meaning): (usize, Option<Meaning>)| {
                        match (meaning, default) {
                            (Some(Ok(place)), _) | (None, Some(place)) => return place,
                            (Some(Err(code)), _) => marks.code(row, code),
                            (None, None) => marks.missing(row),
                        }
                        0
                    };
                    Places::of(read.into_iter().enumerate().map(place).collect())
                }
            };
            rows.choices.push((*pick, places));
        }
        Ok(())
    }

    fn read_numbers(
        &self,
        batch: &RecordBatch,
        rows: &mut Read,
        marks: &mut Marks,
        replaced: &mut Vec<(usize, ArrayRef)>,
    ) {
        for (number, source) in &self.numbers {
            let values = match source {
                NumberSource::Constant(value) => Values::Constant(*value),
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
                        let (stands_in, needed) = self.subject.absent(number, row, rows);
                        *value = stands_in;
                        if needed {
                            marks.missing(row);
                        }
                    }
                    Values::Rows(read.values)
                }
            };
            rows.numbers.push((number.place, values));
        }
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

    /// Cost of every row's time in the cut; NaN where there is none.
    fn costs(&self, results: &Results, rates: &Values) -> Vec<f64> {
        let [time, _] = self.summed;
        let times = column(results, time);
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

    fn sum(&self, results: &Results, costs: Option<&[f64]>) -> Summary {
        let [times, powers] = self.summed.map(|place| column(results, place));
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

/// A column of results; empty where there is none.
fn column(results: &Results, place: Option<usize>) -> &[f64] {
    let column = place.and_then(|place| results.columns.get(place));
    column.map_or(&[], Vec::as_slice)
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
