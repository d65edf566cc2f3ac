//! Operations over columns: every row through the same functions as a single cut.

mod block;
mod kernel;

pub(crate) use kernel::{ProcessKernel, process_kernel};

use super::dispatch::Execution;
use super::group::listed;
use super::results::{ResultField, Results};
use super::rows::{Choice, Codes};
use crate::error::{Code, Error, Problem, Result};
use crate::formula::Column;
use crate::model::{Machine, Practice};
use crate::operation::process::Process;
use crate::table::{LibraryRef, Material, ToolMaterial};

/// What rows of a study have in common: the lists that choices pick from, and the inputs that no
/// column gives.
#[derive(Debug, Clone)]
pub struct ProcessBase {
    /// The operation.
    pub process: &'static Process,
    /// Materials that rows choose from; the first where no column chooses.
    pub materials: Vec<Material>,
    /// Machines that rows choose from.
    pub machines: Vec<Machine>,
    /// Practices that rows choose from.
    pub practices: Vec<Practice>,
    /// What the tool's edges are made of.
    pub tool: ToolMaterial,
    /// SI values of the operation's inputs, in their order; NaN where a required one is missing.
    pub values: Vec<f64>,
}

/// Rows of one operation: columns of its inputs, by their place, and choices.
#[derive(Debug, Clone, Default)]
pub struct ProcessRows<'a> {
    /// Rows there are.
    pub count: usize,
    /// Columns of inputs, by the place of the input; SI values. NaN stands for "not given".
    pub numbers: Vec<(usize, Column<'a>)>,
    /// Columns of choices: material, machine, practice, cutter material.
    pub choices: Vec<(Choice, Codes<'a>)>,
    /// Rows that lack something they need.
    pub missing: Option<&'a [bool]>,
}

/// An operation over columns, with the bits of the single cut.
///
/// Compiled for the baseline and for AVX2: where AVX-512 is asked for, AVX2 computes.
///
/// ```
/// use gullet::formula::Column;
/// use gullet::model::{Machine, Practice};
/// use gullet::operation::process;
/// use gullet::study::{Execution, ProcessBase, ProcessRows, ProcessStudy};
/// use gullet::table::{Library, ToolMaterial};
/// let library = Library::builtin();
/// let drilling = process::find("drilling")?;
/// let mut values = drilling.defaults();
/// values[drilling.input("depth")?.0] = 0.015;
/// let study = ProcessStudy::new(library, ProcessBase {
///     process: drilling,
///     materials: vec![library.material("1018")?.clone()],
///     machines: vec![Machine::builtin("small-cnc-mill")?],
///     practices: vec![Practice::builtin("experienced")?],
///     tool: ToolMaterial::Hss,
///     values,
/// });
/// let rows = ProcessRows {
///     count: 3,
///     numbers: vec![(drilling.input("diameter")?.0, Column::Values(&[0.005, 0.008, -1.0]))],
///     ..ProcessRows::default()
/// };
/// let time = ProcessStudy::fields(drilling).iter().position(|field| field.name == "time").unwrap_or(0);
/// let results = study.run(&rows, &[time], Execution::default())?;
/// assert_eq!(results.status, [0, 0, gullet::Code::OutOfRange.number()]);
/// # Ok::<(), gullet::Error>(())
/// ```
pub struct ProcessStudy<'a> {
    library: LibraryRef<'a>,
    base: ProcessBase,
    groups: kernel::Groups,
    /// Whether the lists go on with what the library and the program know.
    goes_on: bool,
}

impl<'a> ProcessStudy<'a> {
    /// A study over tables and a base.
    pub fn new(library: impl Into<LibraryRef<'a>>, base: ProcessBase) -> ProcessStudy<'a> {
        ProcessStudy {
            library: library.into(),
            base,
            groups: kernel::Groups::default(),
            goes_on: false,
        }
    }

    /// As [`ProcessStudy::new`], for rows that choose from all there is: behind the base's own lists
    /// stand the materials of the tables, [`Machine::BUILTIN`] and [`Practice::BUILTIN`].
    pub fn over_tables(library: impl Into<LibraryRef<'a>>, base: ProcessBase) -> ProcessStudy<'a> {
        ProcessStudy {
            goes_on: true,
            ..ProcessStudy::new(library, base)
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
    pub fn base(&self) -> &ProcessBase {
        &self.base
    }

    /// Every column of results of an operation: its settings and results, then the ends that the
    /// tables' ranges give, and the share of the binding limit.
    pub fn fields(process: &Process) -> Vec<ResultField> {
        process
            .fields()
            .map(|field| ResultField {
                name: field.name,
                kind: field.kind,
                meaning: field.meaning,
                optional: field.optional,
            })
            .chain(block::OTHERS.iter().copied())
            .collect()
    }

    /// Computes every row; `wanted` are places in [`ProcessStudy::fields`].
    ///
    /// # Errors
    /// `Inconsistent` for columns of another length than the rows, `Duplicate` for an input given
    /// twice, `OutOfRange` for an input or a result that does not exist. Problems of single rows
    /// stand in the results.
    pub fn run(
        &self,
        rows: &ProcessRows,
        wanted: &[usize],
        execution: Execution,
    ) -> Result<Results> {
        let mut results = Results::default();
        self.run_into(rows, wanted, execution, &mut results)?;
        Ok(results)
    }

    /// As [`ProcessStudy::run`], into results whose memory is used again.
    ///
    /// # Errors
    /// As [`ProcessStudy::run`]; the results are then as they were.
    pub fn run_into(
        &self,
        rows: &ProcessRows,
        wanted: &[usize],
        execution: Execution,
        results: &mut Results,
    ) -> Result<()> {
        self.check(rows, wanted)?;
        results.resize(wanted.len(), rows.count);
        (self.base.process.study)(self, rows, wanted, execution, results);
        Ok(())
    }

    fn check(&self, rows: &ProcessRows, wanted: &[usize]) -> Result<()> {
        let inputs = self.base.process.inputs;
        let mut problems = Vec::new();
        let mut names: Vec<&str> = Vec::new();
        let numbers = rows.numbers.iter().map(|(place, column)| {
            let length = match column {
                Column::Constant(_) => None,
                Column::Values(values) => Some(values.len()),
            };
            (inputs.get(*place).map(|input| input.name()), length)
        });
        let choices = rows.choices.iter().map(|(choice, codes)| {
            let length = match codes {
                Codes::Constant(_) => None,
                Codes::Values(values) => Some(values.len()),
            };
            let known = matches!(
                choice,
                Choice::Material | Choice::Machine | Choice::Practice | Choice::CutterMaterial
            );
            (known.then(|| choice.name()), length)
        });
        let missing = rows
            .missing
            .map(|missing| (Some("missing"), Some(missing.len())));
        for (name, length) in numbers.chain(choices).chain(missing) {
            let Some(name) = name else {
                problems.push(Problem::new(
                    Code::OutOfRange,
                    "rows",
                    "",
                    format!("inputs and choices of {}", self.base.process.name),
                    "give places in the list of the operation's inputs",
                ));
                continue;
            };
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
        let most = ProcessStudy::fields(self.base.process).len();
        for place in wanted.iter().filter(|place| **place >= most) {
            problems.push(Problem::new(
                Code::OutOfRange,
                "wanted",
                place.to_string(),
                format!("below {most}"),
                "give places in the list of all results",
            ));
        }
        Error::unless_empty(problems, ())
    }
}
