//! Milling cuts over columns.

use super::base::Base;
use super::dispatch::Execution;
use super::group::{Groups, listed};
use super::results::{ResultField, Results};
use super::rows::{Codes, Rows};
use super::uncertainty::{Quantiles, Uncertainty};
use crate::error::{Code, Problem, Result};
use crate::formula::Column;
use crate::model::{Machine, Practice};
use crate::table::{LibraryRef, Material};

/// Milling cuts over columns: for every row the settings that the machine really has, what follows
/// from them, the limit that binds and a status.
///
/// Each row gets the bits of [`crate::operation::Milling::numbers`], whatever the instruction set,
/// the number of threads and the rows beside it. A row that cannot be computed gets the code of its
/// error; the others are computed.
///
/// ```
/// use gullet::formula::Column;
/// use gullet::plan::Job;
/// use gullet::study::{Base, Execution, Input, MillingStudy, ResultField, Rows};
/// use gullet::table::Library;
/// # const JOB: &str = r#"
/// # [material]
/// # id = "6061"
/// # [blank]
/// # length = "4 in"
/// # width = "2 in"
/// # height = "1 in"
/// # [cutter]
/// # form = "square"
/// # material = "HSS"
/// # diameter = "1/2 in"
/// # teeth = 2
/// # flute_length = "1 in"
/// # stick_out = "1.5 in"
/// # [machine]
/// # base = "manual-knee-mill"
/// # [hold]
/// # clamping_force = "15 kN"
/// # grip_depth = "0.5 in"
/// # [practice]
/// # base = "training"
/// # [cut]
/// # operation = "side-milling"
/// # axial_depth = "1/4 in"
/// # remove = "0.1 in"
/// # "#;
/// let library = Library::builtin();
/// let job = Job::from_toml(JOB, library)?;
/// let study = MillingStudy::new(library, Base::of_job(&job));
/// let rows = Rows {
///     count: 3,
///     numbers: vec![(Input::RadialDepth, Column::Values(&[0.001, 0.002, -1.0]))],
///     ..Rows::default()
/// };
/// let time = ResultField::all().iter().position(|field| field.name == "time");
/// let results = study.run(&rows, &[time.unwrap_or_default()], Execution::default())?;
/// assert_eq!(results.status, [0, 0, gullet::Code::OutOfRange.number()]);
/// assert!(results.columns[0][0] > 0.0);
/// # Ok::<(), gullet::Error>(())
/// ```
pub struct MillingStudy<'a> {
    pub(super) library: LibraryRef<'a>,
    pub(super) base: Base,
    pub(super) groups: Groups,
    /// Whether the lists go on with what the library and the program know.
    goes_on: bool,
}

impl<'a> MillingStudy<'a> {
    /// A study over tables and a base.
    pub fn new(library: impl Into<LibraryRef<'a>>, base: Base) -> MillingStudy<'a> {
        MillingStudy {
            library: library.into(),
            base,
            groups: Groups::default(),
            goes_on: false,
        }
    }

    /// As [`MillingStudy::new`], for rows that choose from all there is: behind the base's own lists
    /// stand the materials of the tables, [`Machine::BUILTIN`] and [`Practice::BUILTIN`]. Only what
    /// rows choose is copied and looked up.
    ///
    /// ```
    /// use gullet::model::Machine;
    /// # use gullet::plan::Job;
    /// use gullet::study::{Base, MillingStudy};
    /// use gullet::table::Library;
    /// # const JOB: &str = "
    /// # material.id = '6061'
    /// # blank = { length = '90 mm', width = '60 mm', height = '25 mm' }
    /// # machine.base = 'manual-knee-mill'
    /// # hold = { clamping_force = '15 kN', grip_depth = '12 mm' }
    /// # cut = { operation = 'side-milling', axial_depth = '6 mm', remove = '3 mm' }
    /// # [cutter]
    /// # form = 'square'
    /// # material = 'HSS'
    /// # diameter = '12 mm'
    /// # teeth = 2
    /// # flute_length = '26 mm'
    /// # stick_out = '40 mm'
    /// # ";
    /// let library = Library::builtin();
    /// # let base = Base::of_job(&Job::from_toml(JOB, library)?);
    /// let study = MillingStudy::over_tables(library, base);
    /// assert_eq!(study.material(1), library.materials().first());
    /// assert_eq!(study.machine(1), Some(&Machine::builtin("manual-knee-mill")?));
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn over_tables(library: impl Into<LibraryRef<'a>>, base: Base) -> MillingStudy<'a> {
        MillingStudy {
            goes_on: true,
            ..MillingStudy::new(library, base)
        }
    }

    /// The material at a place that rows choose by.
    pub fn material(&self, place: usize) -> Option<&Material> {
        let others = self.goes_on.then(|| self.library.materials());
        listed(&self.base.materials, others, place)
    }

    /// The machine at a place that rows choose by.
    pub fn machine(&self, place: usize) -> Option<&Machine> {
        let others = self.goes_on.then(Machine::all_builtin);
        listed(&self.base.machines, others, place)
    }

    /// The practice at a place that rows choose by.
    pub fn practice(&self, place: usize) -> Option<&Practice> {
        let others = self.goes_on.then(Practice::all_builtin);
        listed(&self.base.practices, others, place)
    }

    /// What the rows have in common.
    pub fn base(&self) -> &Base {
        &self.base
    }

    /// Computes every row; `wanted` are places in [`ResultField::all`].
    ///
    /// # Errors
    /// `Inconsistent` for columns of another length than the rows, `Duplicate` for an input given
    /// twice, `OutOfRange` for a result that does not exist. Problems of single rows stand in the
    /// results.
    pub fn run(&self, rows: &Rows, wanted: &[usize], execution: Execution) -> Result<Results> {
        let mut results = Results::default();
        self.run_into(rows, wanted, execution, &mut results)?;
        Ok(results)
    }

    /// As [`MillingStudy::run`], into results whose memory is used again.
    ///
    /// # Errors
    /// As [`MillingStudy::run`]; the results are then as they were.
    pub fn run_into(
        &self,
        rows: &Rows,
        wanted: &[usize],
        execution: Execution,
        results: &mut Results,
    ) -> Result<()> {
        check(rows, wanted)?;
        results.resize(wanted.len(), rows.count);
        self.run_chunks(rows, wanted, execution, results);
        Ok(())
    }
}

impl MillingStudy<'_> {
    /// Computes every row, and draws what is uncertain: the settings stay as they were found, and the
    /// quantiles of each wanted result are told.
    ///
    /// # Errors
    /// As [`MillingStudy::run`]; spreads, draws or quantiles that are none.
    pub fn run_uncertain(
        &self,
        rows: &Rows,
        wanted: &[usize],
        uncertainty: &Uncertainty,
        execution: Execution,
    ) -> Result<(Results, Quantiles)> {
        check(rows, wanted)?;
        uncertainty.check()?;
        let mut results = Results::default();
        results.resize(wanted.len(), rows.count);
        let columns = wanted.len() * uncertainty.quantiles.len();
        let mut quantiles = Quantiles {
            columns: vec![vec![f64::NAN; rows.count]; columns],
            left_out: vec![0; rows.count],
        };
        self.run_draws(
            rows,
            wanted,
            uncertainty,
            execution,
            &mut results,
            &mut quantiles,
        );
        Ok((results, quantiles))
    }
}

fn check(rows: &Rows, wanted: &[usize]) -> Result<()> {
    let mut problems = Vec::new();
    let mut names: Vec<&str> = Vec::new();
    let columns = rows.numbers.iter().map(|(input, column)| {
        let length = match column {
            Column::Constant(_) => None,
            Column::Values(values) => Some(values.len()),
        };
        (input.name(), length)
    });
    let choices = rows.choices.iter().map(|(choice, codes)| {
        let length = match codes {
            Codes::Constant(_) => None,
            Codes::Values(values) => Some(values.len()),
        };
        (choice.name(), length)
    });
    let missing = rows.missing.map(|missing| ("missing", Some(missing.len())));
    for (name, length) in columns.chain(choices).chain(missing) {
        if names.contains(&name) {
            problems.push(Problem::new(
                Code::Duplicate,
                name,
                "",
                "each input once",
                "give one column",
            ));
        }
        names.push(name);
        if let Some(length) = length.filter(|length| *length != rows.count) {
            problems.push(Problem::new(
                Code::Inconsistent,
                name,
                format!("{length} rows"),
                format!("{} rows", rows.count),
                "give columns of one length",
            ));
        }
    }
    let most = ResultField::all().len();
    for place in wanted.iter().filter(|place| **place >= most) {
        problems.push(Problem::new(
            Code::OutOfRange,
            "wanted",
            place.to_string(),
            format!("below {most}"),
            "give places in the list of all results",
        ));
    }
    crate::error::Error::unless_empty(problems, ())
}
