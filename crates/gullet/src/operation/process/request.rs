//! What an operation is asked for.

use super::cut::ProcessCut;
use super::ground::Ground;
use super::prepared::Prepared;
use super::{Process, find};
use crate::error::{Code, Error, Problem, Result};
use crate::model::{Machine, Practice};
use crate::quantity::{Quantity, UnitSystem};
use crate::table::{Grounds, Library, Material, ToolMaterial};
use std::sync::Arc;

/// What an operation is done with: tables, work material, tool material, machine, practice.
#[derive(Clone, Copy)]
pub struct Bench<'a> {
    /// The tables.
    pub library: &'a Library,
    /// The work material.
    pub material: &'a Material,
    /// What the tool's edges are made of.
    pub tool: ToolMaterial,
    /// The machine.
    pub machine: &'a Machine,
    /// The practice.
    pub practice: &'a Practice,
    /// Units that errors and warnings are told in.
    pub units: UnitSystem,
}

/// One operation with its inputs.
///
/// ```
/// use gullet::model::{Machine, Practice};
/// use gullet::operation::process::{Bench, Request};
/// use gullet::quantity::UnitSystem;
/// use gullet::table::{Library, ToolMaterial};
/// let library = Library::builtin();
/// let bench = Bench {
///     library,
///     material: library.material("1018")?,
///     tool: ToolMaterial::Hss,
///     machine: &Machine::builtin("small-cnc-mill")?,
///     practice: &Practice::builtin("experienced")?,
///     units: UnitSystem::Metric,
/// };
/// let cut = Request::new("drilling")?
///     .text("diameter", "8.5 mm")?
///     .text("depth", "22 mm")?
///     .cut(&bench)?;
/// assert!(cut.value("thrust").is_some());
/// assert!(cut.ledger.iter().all(|limit| !limit.exceeded()));
/// # Ok::<(), gullet::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Request {
    process: &'static Process,
    values: Vec<f64>,
}

impl Request {
    /// The operation of this name, nothing given yet.
    ///
    /// # Errors
    /// `UnknownName` with the nearest right one.
    pub fn new(name: &str) -> Result<Request> {
        Ok(Request::of(find(name)?))
    }

    /// An operation, nothing given yet.
    pub fn of(process: &'static Process) -> Request {
        Request {
            process,
            values: process.defaults(),
        }
    }

    /// The operation.
    pub fn process(&self) -> &'static Process {
        self.process
    }

    /// The SI values of all inputs; NaN where a required one is missing.
    pub fn values(&self) -> &[f64] {
        &self.values
    }

    /// Gives several inputs as text: `name=value; ...`.
    ///
    /// # Errors
    /// Every problem, as [`Request::text`].
    pub fn texts(self, text: &str) -> Result<Request> {
        let mut request = self;
        let mut problems = Vec::new();
        for (name, value) in crate::formula::split_arguments(text)? {
            match request.clone().text(&name, &value) {
                Ok(next) => request = next,
                Err(error) => problems.extend(error.into_problems()),
            }
        }
        Error::unless_empty(problems, request)
    }

    /// Gives an input as text with its unit, or as the word of a choice.
    ///
    /// # Errors
    /// `UnknownName` for an input or a word that does not exist; as [`crate::quantity::parse`].
    pub fn text(mut self, name: &str, text: &str) -> Result<Request> {
        let (place, input) = self.process.input(name)?;
        let value = input.read(text)?;
        self.put(place, value);
        Ok(self)
    }

    /// Gives an input as a quantity.
    ///
    /// # Errors
    /// `UnknownName` for an input that does not exist, `WrongType` for a quantity of another kind.
    pub fn quantity(mut self, name: &str, quantity: Quantity) -> Result<Request> {
        let (place, input) = self.process.input(name)?;
        let kind = input.parameter.kind;
        if kind != quantity.kind || !input.words.is_empty() {
            let wanted = super::describe::kind_or_words(input);
            return Err(Problem::new(
                Code::WrongType,
                name,
                quantity.text(UnitSystem::Metric),
                wanted,
                format!("give {name} as {}", input.parameter.meaning),
            )
            .into());
        }
        self.put(place, quantity.si);
        Ok(self)
    }

    /// Gives an input as an SI value, or as the place of the word of a choice.
    ///
    /// # Errors
    /// `UnknownName` for an input that does not exist.
    pub fn si(mut self, name: &str, value: f64) -> Result<Request> {
        let (place, _) = self.process.input(name)?;
        self.put(place, value);
        Ok(self)
    }

    fn put(&mut self, place: usize, value: f64) {
        if let Some(slot) = self.values.get_mut(place) {
            *slot = value;
        }
    }

    /// Every problem of the inputs, without computing: missing ones, and values that are not
    /// admissible.
    pub fn problems(&self, units: UnitSystem) -> Vec<Problem> {
        self.process.problems(&self.values, units)
    }

    /// Computes the cut: settings the machine really has, results, limits, worked steps.
    ///
    /// # Errors
    /// Every problem of machine, practice and inputs at once; `NoData` where the tables hold nothing
    /// for the combination; `LimitExceeded` naming each limit that lowering feed and speed does not
    /// meet.
    pub fn cut(&self, bench: &Bench) -> Result<ProcessCut> {
        let mut problems: Vec<Problem> = Vec::new();
        let within = |found: Vec<Problem>, section: &str| -> Vec<Problem> {
            found
                .into_iter()
                .map(|problem| problem.within(section))
                .collect()
        };
        problems.extend(within(bench.machine.problems_in(bench.units), "machine"));
        problems.extend(within(bench.practice.problems_in(bench.units), "practice"));
        problems.extend(self.problems(bench.units));
        Error::unless_empty(problems, ())?;
        let grounds = grounds(bench.library, bench.material, bench.tool, self.process);
        let ground = Ground::new(bench.material, bench.machine, bench.practice, &grounds);
        (self.process.cut)(&Prepared {
            process: self.process,
            material: bench.material,
            tool: bench.tool,
            machine: bench.machine,
            practice: bench.practice,
            units: bench.units,
            values: &self.values,
            grounds: &grounds,
            ground,
        })
    }
}

/// What the tables say to an operation; an operation that needs none asks for pairs alone.
pub(crate) fn grounds(
    library: &Library,
    material: &Material,
    tool: ToolMaterial,
    process: &Process,
) -> Arc<Grounds> {
    match process.tables {
        Some(tables) => library.grounds(material, tool, tables),
        None => Arc::new(Grounds::pairs_alone(library, material)),
    }
}
