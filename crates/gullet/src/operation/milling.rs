//! Side milling, slotting and face milling: from a set-up and a pass to a cut.

use super::check;
use super::cut::{Chain, Cut};
use super::cut_numbers::CutNumbers;
use super::inputs::{Shop, fill_pass, kinds, process, template};
use super::numbers::{Form, Inputs, Kinds};
use super::report::Report;
use super::request::{Operation, Pass, Setup};
use super::settle::settle;
use crate::error::{Error, Problem, Result};
use crate::formula::NoRecord;
use crate::model::{Cutter, Hold, Machine, Practice};
use crate::quantity::{Length, UnitSystem};
use crate::table::{Grounds, Library, Material, Process};
use std::sync::Arc;

/// Whether limits may lower feed and speed, or only be looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lowering {
    /// Feed, then speed, are lowered until every limit holds.
    Allowed,
    /// Feed is lowered to what machine, hand and finish allow; loads that exceed their limits
    /// stand in the ledger. Serves the search for a depth.
    NotForLoads,
}

/// Computes a cut: settings the machine really has, consequences, limits, worked steps.
///
/// Feed is lowered for torque, power, deflection, clamping, finish and the table's feed; speed is
/// lowered where the chip would become thinner than cuts. Depth is left to the pass plan.
///
/// # Errors
/// Every problem of the set-up and the pass at once; `NoData` where the tables hold nothing for
/// the combination; `LimitExceeded` naming the limit where nothing that may be lowered helps.
pub fn mill(setup: &Setup, pass: &Pass, lowering: Lowering) -> Result<Cut> {
    Milling::new(setup).cut(pass, lowering)
}

/// A set-up made ready for many passes: checked and looked up in the tables once.
///
/// [`Milling::cut`] gives a cut with its words, [`Milling::numbers`] the same numbers without them,
/// some fifty times faster.
pub struct Milling {
    pub(super) material: Material,
    pub(super) cutter: Cutter,
    pub(super) machine: Machine,
    pub(super) hold: Hold,
    pub(super) practice: Practice,
    pub(super) part_height: Length,
    pub(super) units: UnitSystem,
    problems: Vec<Problem>,
    end: Ready,
    face: Option<Ready>,
}

/// The tables of one process with the numbers made from them.
struct Ready {
    grounds: Arc<Grounds>,
    template: Inputs,
}

impl Ready {
    fn new(library: &Library, shop: &Shop, process: Process) -> Ready {
        let grounds = library.grounds(shop.material, shop.cutter.material, process);
        let template = template(shop, &grounds);
        Ready { grounds, template }
    }
}

impl Milling {
    /// Checks a set-up and looks it up; what is wrong is told by the first cut.
    pub fn new(setup: &Setup) -> Milling {
        let shop = Shop {
            material: setup.material,
            cutter: setup.cutter,
            machine: setup.machine,
            hold: setup.hold,
            practice: setup.practice,
            part_height: setup.part_height,
        };
        let face = process(Operation::FaceMilling, Form::of(setup.cutter.form));
        Milling {
            end: Ready::new(setup.library, &shop, Process::EndMilling),
            face: (face != Process::EndMilling).then(|| Ready::new(setup.library, &shop, face)),
            problems: check::setup(setup),
            material: setup.material.clone(),
            cutter: setup.cutter.clone(),
            machine: setup.machine.clone(),
            hold: setup.hold.clone(),
            practice: setup.practice.clone(),
            part_height: setup.part_height,
            units: setup.units,
        }
    }

    fn ready(&self, operation: Operation) -> &Ready {
        match (operation, &self.face) {
            (Operation::FaceMilling, Some(face)) => face,
            _ => &self.end,
        }
    }

    fn shop(&self) -> Shop<'_> {
        Shop {
            material: &self.material,
            cutter: &self.cutter,
            machine: &self.machine,
            hold: &self.hold,
            practice: &self.practice,
            part_height: self.part_height,
        }
    }

    fn check(&self, pass: &Pass) -> Result<()> {
        let mut problems = check::pass(&self.cutter, self.units, pass);
        if !self.problems.is_empty() {
            let own = core::mem::take(&mut problems);
            problems = self.problems.iter().cloned().chain(own).collect();
        }
        Error::unless_empty(problems, ())
    }

    fn prepare(&self, pass: &Pass) -> (&Grounds, Kinds, Inputs) {
        let ready = self.ready(pass.operation);
        let kinds = kinds(&self.shop(), &ready.grounds, pass);
        let mut inputs = ready.template;
        fill_pass(&mut inputs, &self.practice, &ready.grounds, pass);
        (&ready.grounds, kinds, inputs)
    }

    /// A cut with its words: worked steps, sources, warnings, cautions.
    ///
    /// # Errors
    /// As [`mill`].
    pub fn cut(&self, pass: &Pass, lowering: Lowering) -> Result<Cut> {
        self.check(pass)?;
        let (grounds, kinds, inputs) = self.prepare(pass);
        let tables = grounds.tables(&self.cutter, &self.practice, pass)?;
        let report = Report {
            milling: self,
            pass,
            grounds,
            kinds: &kinds,
            inputs: &inputs,
            tables: &tables,
            lowering,
        };
        let mut log = Chain::default();
        let settled = settle(
            &mut log,
            &kinds,
            &inputs,
            &self.machine,
            lowering,
            Some(&tables),
        )
        .map_err(|stop| report.stop(stop))?;
        let mut cut = report.cut(&mut log, &settled)?;
        check::check_chain(&log.0)?;
        check::check_finite(&cut.settings, &cut.consequences, &cut.spread, &cut.ledger)?;
        cut.steps = log.0;
        Ok(cut)
    }

    /// The numbers of a cut, the same as [`Milling::cut`] gives to the last bit.
    ///
    /// # Errors
    /// As [`mill`].
    pub fn numbers(&self, pass: &Pass, lowering: Lowering) -> Result<CutNumbers> {
        self.check(pass)?;
        let (_, kinds, inputs) = self.prepare(pass);
        settle(
            &mut NoRecord,
            &kinds,
            &inputs,
            &self.machine,
            lowering,
            None,
        )
        .ok()
        .filter(|settled| {
            lowering == Lowering::NotForLoads || settled.verdict.exceeded.value == 0.0
        })
        .map(|settled| CutNumbers::new(pass, &kinds, &inputs, &settled))
        .filter(CutNumbers::is_sound)
        // Something is wrong: with its words.
        .map_or_else(|| self.cut(pass, lowering).map(|cut| cut.numbers()), Ok)
    }
}
