//! What a study computes its rows with: milling cuts, or one operation.

use crate::choice::MOST_TOLD;
use crate::found::Found;
use crate::run::RowProblem;
use crate::takes::{Number, Pick};
use gullet::error::{Code, Problem, Result};
use gullet::formula::Column;
use gullet::operation::process::Process;
use gullet::study::{Choice, Codes, Execution, Quantiles, ResultField, Results, Uncertainty};

/// What computes the rows of a study.
pub(crate) trait Subject: Send + Sync {
    /// Every result there is.
    fn fields(&self) -> Vec<ResultField>;

    /// The results that are written where none are asked for.
    fn usual(&self) -> Vec<&'static str>;

    /// The operation of all rows; none where they are milling cuts.
    fn process(&self) -> Option<&'static Process>;

    /// What the energy of the totals is made of; none where nothing gives a power.
    fn energy(&self) -> Option<Energy>;

    /// Fills in what nothing gives where there is a default, and tells what is missing.
    fn settle(&mut self, found: &mut Found, assumptions: &mut Vec<String>);

    /// What stands for a number that a row does not give, and whether the row needs it.
    fn absent(&self, number: &Number, row: usize, read: &Read) -> (f64, bool);

    /// Gives what follows from other inputs of the rows.
    fn complete(&self, read: &mut Read, marks: &mut Marks);

    fn run(&self, rows: &Given, wanted: &[usize], execution: Execution) -> Result<Results>;

    /// Why nothing can be drawn; none where it can.
    fn no_draws(&self) -> Option<Problem> {
        None
    }

    /// As [`Subject::run`], with quantiles over draws.
    fn run_uncertain(
        &self,
        rows: &Given,
        wanted: &[usize],
        uncertainty: &Uncertainty,
        execution: Execution,
    ) -> Result<(Results, Quantiles)>;
}

/// What energies are made of.
#[derive(Clone, Copy)]
pub(crate) struct Energy {
    /// The result that is multiplied by the time.
    pub power: &'static str,
    /// Whose energy that is, for people.
    pub whose: &'static str,
}

/// Rows as they were read.
#[derive(Default)]
pub(crate) struct Read {
    pub count: usize,
    /// By the place of the number among the inputs.
    pub numbers: Vec<(usize, Values)>,
    pub choices: Vec<(Pick, Places)>,
}

/// Rows that are computed.
pub(crate) struct Given<'r> {
    pub read: &'r Read,
    /// Rows that are refused already.
    pub left_out: &'r [bool],
}

impl Read {
    pub(crate) fn chosen(&self, choice: Choice) -> Option<&Places> {
        let wanted = Pick::Of(choice);
        let found = self.choices.iter().find(|(pick, _)| *pick == wanted);
        found.map(|(_, places)| places)
    }

    pub(crate) fn number(&self, place: usize) -> Option<&Values> {
        let found = self.numbers.iter().find(|(other, _)| *other == place);
        found.map(|(_, values)| values)
    }

    pub(crate) fn columns(&self) -> impl Iterator<Item = (usize, Column<'_>)> {
        let numbers = self.numbers.iter();
        numbers.map(|(place, values)| (*place, values.column()))
    }

    /// The entries of lists that rows choose.
    pub(crate) fn entries(&self) -> impl Iterator<Item = (Choice, Codes<'_>)> {
        self.choices.iter().filter_map(|(pick, places)| match pick {
            Pick::Of(choice) => Some((*choice, places.codes())),
            Pick::Word(_) => None,
        })
    }
}

/// The places that rows choose.
pub(crate) enum Places {
    Constant(u32),
    Rows(Vec<u32>),
}

impl Places {
    /// One place for all rows where they choose alike: such rows need no sorting.
    pub(crate) fn of(places: Vec<u32>) -> Places {
        match places.split_first() {
            Some((first, rest)) if rest.iter().all(|place| place == first) => {
                Places::Constant(*first)
            }
            _ => Places::Rows(places),
        }
    }

    pub(crate) fn at(&self, row: usize) -> usize {
        match self {
            Places::Constant(place) => *place as usize,
            Places::Rows(places) => places.get(row).copied().unwrap_or_default() as usize,
        }
    }

    /// As numbers of an input.
    pub(crate) fn values(&self) -> Values {
        match self {
            Places::Constant(place) => Values::Constant(f64::from(*place)),
            Places::Rows(places) => Values::Rows(places.iter().map(|it| f64::from(*it)).collect()),
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
#[derive(Clone)]
pub(crate) enum Values {
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

    pub(crate) fn at(&self, row: usize) -> f64 {
        match self {
            Values::Constant(value) => *value,
            Values::Rows(values) => values.get(row).copied().unwrap_or(f64::NAN),
        }
    }
}

/// What is known of the rows before they are computed.
pub(crate) struct Marks {
    /// 0, or the number of a code.
    codes: Vec<i32>,
    missing: Vec<bool>,
    pub problems: Vec<RowProblem>,
}

impl Marks {
    pub(crate) fn new(count: usize) -> Marks {
        Marks {
            codes: vec![0; count],
            missing: vec![false; count],
            problems: Vec::new(),
        }
    }

    pub(crate) fn code(&mut self, row: usize, code: Code) {
        if let Some(slot) = self.codes.get_mut(row)
            && *slot == 0
        {
            *slot = code.number();
        }
    }

    pub(crate) fn missing(&mut self, row: usize) {
        if let Some(slot) = self.missing.get_mut(row) {
            *slot = true;
        }
    }

    pub(crate) fn tell(&mut self, name: &str, row: usize, mut problem: Problem) {
        if self.problems.len() < 4 * MOST_TOLD {
            name.clone_into(&mut problem.parameter);
            self.problems.push(RowProblem { row, problem });
        }
    }

    /// 0 for each row that can be computed, else the number of its code.
    pub(crate) fn into_codes(self) -> (Vec<i32>, Vec<RowProblem>) {
        let mut codes = self.codes;
        for (code, missing) in codes.iter_mut().zip(&self.missing) {
            if *missing && *code == 0 {
                *code = Code::Missing.number();
            }
        }
        (codes, self.problems)
    }
}
