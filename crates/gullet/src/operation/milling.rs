//! Side milling, slotting and face milling: from a set-up and a pass to a cut.

use super::chain::{self, Geometry, Inputs, Outcome};
use super::check;
use super::cut::{Adjustment, Chain, Cut, Limit, Log, Settings, Warning, WarningCode, WorkedStep};
use super::inputs::{Tables, inputs};
use super::ledger;
use super::request::{Pass, Setup};
use super::speed_feed::Candidate;
use crate::error::{Code, Error, Problem, Result};
use crate::formula::{NoRecord, rotation};
use crate::model::{Clamping, Feed};
use crate::quantity::{Force, Kind, Length, RotationalSpeed, Time, UnitSystem, si};
use crate::table::Ranged;

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
    check::check(setup, pass)?;
    let tables = Tables::look_up(setup, pass)?;
    let inputs = inputs(setup, pass, &tables);
    let mut log = Chain::default();
    let mut cut = Solver {
        setup,
        pass,
        tables: &tables,
        feed: &tables.feed,
        inputs: &inputs,
    }
    .solve(&mut log, lowering)?;
    check::check_chain(&log.0)?;
    check::check_finite(&cut)?;
    cut.steps = log.0;
    Ok(cut)
}

pub(super) struct Solver<'a> {
    pub setup: &'a Setup<'a>,
    pub pass: &'a Pass,
    pub tables: &'a Tables,
    /// The tables' feed per tooth, or that of another depth.
    pub feed: &'a Ranged<Length>,
    pub inputs: &'a Inputs,
}

impl Solver<'_> {
    fn solve(&self, log: &mut Chain, lowering: Lowering) -> Result<Cut> {
        let mut warnings = Vec::new();
        let mut adjustments = Vec::new();
        let effective = chain::effective_diameter(log, self.inputs);
        let (wanted_speed, first) = self.speed(log, effective, &mut adjustments, &mut warnings)?;
        let geometry = chain::geometry(log, self.inputs, effective);
        let smallest = self.feed_for_chip(self.setup.practice.smallest_chip);
        let mut candidate = self.feed(&mut NoRecord, &geometry, first, lowering);
        while let Some(real) = self
            .real_feed(&candidate)
            .filter(|real| real.value < smallest.value * (1.0 - 1e-9))
        {
            if lowering != Lowering::Allowed {
                break;
            }
            let Some(slower) = self.slower(&candidate, real, smallest) else {
                return Err(self.stuck(&geometry, &candidate, real, smallest).into());
            };
            candidate = self.feed(&mut NoRecord, &geometry, slower, lowering);
        }
        if candidate.speed.value < first.value {
            adjustments.push(Adjustment {
                limit: candidate.held_by.unwrap_or("smallest_chip"),
                setting: "spindle_speed",
                kind: Kind::RotationalSpeed,
                from: first.value,
                to: candidate.speed.value,
            });
            log.choose(Kind::RotationalSpeed, candidate.speed.value, || {
                "a lower speed, so that the chip stays thick enough to cut".to_owned()
            });
        }
        // The same choice once more, now for the record.
        let mut candidate = self.feed(log, &geometry, candidate.speed, lowering);
        self.snap_feed(log, &geometry, &mut candidate, &mut warnings)?;
        if candidate.feed.value < candidate.wanted.value * (1.0 - 1e-9) {
            adjustments.push(Adjustment {
                limit: candidate.held_by.unwrap_or("table_feed"),
                setting: "feed_per_tooth",
                kind: Kind::Length,
                from: candidate.wanted.value,
                to: candidate.feed.value,
            });
        }
        let outcome = chain::outcome(log, self.inputs, &geometry, candidate.speed, candidate.feed);
        let cut = self.cut(
            log,
            lowering,
            wanted_speed,
            &geometry,
            candidate,
            &outcome,
            adjustments,
            warnings,
        );
        if lowering == Lowering::NotForLoads {
            return Ok(cut);
        }
        let exceeded = cut
            .ledger
            .iter()
            .filter(|limit| limit.exceeded())
            .map(|limit| exceeded_problem(limit, self.setup.units))
            .collect();
        Error::unless_empty(exceeded, cut)
    }

    #[allow(clippy::too_many_arguments)]
    fn cut(
        &self,
        log: &mut Chain,
        lowering: Lowering,
        wanted_speed: RotationalSpeed,
        geometry: &Geometry,
        candidate: Candidate,
        outcome: &Outcome,
        adjustments: Vec<Adjustment>,
        mut warnings: Vec<Warning>,
    ) -> Cut {
        let setup = self.setup;
        let machine = setup.machine;
        let handwheel_rate = match (&machine.feed, machine.travel_per_turn) {
            (Feed::Hand, Some(lead)) => Some(rotation::handwheel_rate::step(
                log,
                outcome.table_feed,
                lead,
            )),
            _ => None,
        };
        let inch: Length = si(0.0254);
        let ten_mm: Length = si(0.01);
        let time_for = |length: Length| -> Time {
            crate::formula::time::cutting_time::value(length, outcome.table_feed)
        };
        let clamping = clamping_force(log, &setup.hold.clamping);
        let mut ledger = ledger::ledger(self, geometry, &candidate, outcome);
        if lowering == Lowering::Allowed {
            ledger::add_reliefs(self, geometry, &candidate, outcome, &mut ledger);
        }
        for adjustment in &adjustments {
            warnings.push(Warning {
                code: WarningCode::Lowered,
                text: adjustment.text(self.setup.units),
            });
        }
        self.doubts(outcome, &mut warnings);
        let settings = Settings {
            wanted_speed,
            spindle_speed: candidate.speed,
            cutting_speed: outcome.cutting_speed,
            chip_load: outcome.max_chip,
            feed_per_tooth: candidate.feed,
            feed_per_rev: outcome.feed_per_rev,
            table_feed: outcome.table_feed,
            handwheel_rate,
            time_per_inch: time_for(inch),
            time_per_10_mm: time_for(ten_mm),
        };
        Cut {
            pass: *self.pass,
            settings,
            consequences: ledger::consequences(
                geometry,
                outcome,
                chain::clamping_needed(outcome, setup.hold.feed_across_jaws),
                clamping,
            ),
            ledger,
            adjustments,
            steps: Vec::<WorkedStep>::new(),
            spread: self.spread(geometry, outcome),
            data: self.data(),
            warnings,
            cautions: super::cautions::cautions(setup, self.pass),
        }
    }
}

/// The force the hold clamps with.
pub(super) fn clamping_force(log: &mut impl Log, clamping: &Clamping) -> Force {
    match *clamping {
        Clamping::Force(force) => force,
        Clamping::Screw {
            torque,
            lead,
            efficiency,
        } => crate::formula::holding::screw_clamping_force_efficiency::step(
            log, torque, lead, efficiency,
        ),
    }
}

/// A limit of the ledger that nothing which may be lowered can meet.
pub(super) fn exceeded_problem(limit: &Limit, units: UnitSystem) -> Problem {
    let remedy = limit.relief.map_or_else(
        || {
            "lowering feed and speed does not help: another cutter, machine or hold is needed"
                .to_owned()
        },
        |relief| {
            format!(
                "lowering feed and speed does not help: change the {}",
                relief.text(units)
            )
        },
    );
    let mut problem = limit_exceeded(
        units,
        limit.name,
        limit.kind,
        limit.value,
        limit.bound,
        &remedy,
    );
    problem.admissible = format!("{} ({})", problem.admissible, limit.origin);
    problem
}

/// A limit that is exceeded and cannot be met by lowering feed or speed.
pub(super) fn limit_exceeded(
    units: UnitSystem,
    name: &str,
    kind: Kind,
    value: f64,
    bound: f64,
    remedy: &str,
) -> Problem {
    let show = |x: f64| crate::quantity::format(kind, x, units);
    Problem::new(
        Code::LimitExceeded,
        name,
        show(value),
        format!("bound {}", show(bound)),
        remedy,
    )
}
