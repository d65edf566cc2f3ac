//! What a cut says in words: warnings, adjustments, errors, values with their sources.

use super::cut::{Adjustment, Chain, Cut, Datum, Limit, WorkedStep, support_text};
use super::cut_numbers::{consequences, settings, spread};
use super::inputs::{Tables, clamping_force, no_data, stated};
use super::ledger;
use super::limits::{self, LimitName};
use super::milling::{Lowering, Milling};
use super::numbers::{Inputs, Kinds, Outcome};
use super::request::Pass;
use super::results::{self, THICKEST_CHIP, THINNEST_CHIP};
use super::settle::{Settled, Stop, Stuck};
use super::{cautions, chain, law};
use crate::error::{Code, Error, Problem, Result};
use crate::error::{Warning, WarningCode};
use crate::formula::NoRecord;
use crate::quantity::math::min;
use crate::quantity::{Kind, Length, RotationalSpeed, UnitSystem};
use crate::table::Grounds;

/// A pass with everything its words are made from.
pub(super) struct Report<'a> {
    pub milling: &'a Milling,
    pub pass: &'a Pass,
    pub grounds: &'a Grounds,
    pub kinds: &'a Kinds,
    pub inputs: &'a Inputs,
    pub tables: &'a Tables,
    pub lowering: Lowering,
}

impl Report<'_> {
    /// The cut, without its steps; an error where a limit stays exceeded.
    pub(super) fn cut(&self, log: &mut Chain, settled: &Settled) -> Result<Cut> {
        let milling = self.milling;
        let inputs = self.inputs;
        let Settled {
            candidate, outcome, ..
        } = settled;
        let pace = results::pace(log, self.kinds, inputs, outcome);
        clamping_force(log, &milling.hold.clamping);
        let ends = results::ends(inputs, &settled.engaged, &settled.geometry, outcome);
        let mut ledger = ledger::ledger(
            self,
            &settled.geometry,
            candidate,
            outcome,
            &settled.verdict,
        );
        if self.lowering == Lowering::Allowed {
            ledger::add_reliefs(self, settled, &mut ledger);
        }
        let adjustments = adjustments(settled);
        let mut warnings = self.machine_limits(settled);
        for adjustment in &adjustments {
            warnings.push(Warning {
                code: WarningCode::Lowered,
                text: adjustment.text(milling.units),
            });
        }
        self.doubts(outcome, &mut warnings);
        let exceeded: Vec<Problem> = ledger
            .iter()
            .filter(|limit| limit.exceeded() && self.lowering == Lowering::Allowed)
            .map(|limit| exceeded_problem(limit, milling.units))
            .collect();
        let cut = Cut {
            pass: *self.pass,
            settings: settings(settled, &pace),
            consequences: consequences(inputs, settled),
            ledger,
            held_by: candidate.holder(),
            adjustments,
            steps: Vec::<WorkedStep>::new(),
            spread: spread(inputs, settled, &ends),
            data: self.data(),
            warnings,
            cautions: cautions::cautions(milling, self.pass),
        };
        Error::unless_empty(exceeded, cut)
    }

    /// What the machine cannot do as wanted.
    fn machine_limits(&self, settled: &Settled) -> Vec<Warning> {
        let mut warnings = Vec::new();
        let mut add = |text: &str| {
            warnings.push(Warning {
                code: WarningCode::MachineLimits,
                text: text.to_owned(),
            });
        };
        if settled.real.is_none() {
            add(
                "the machine's lowest speed is above the speed wanted: the cutter runs faster than the table says and wears sooner",
            );
        }
        let reach = min(self.inputs.cutter_speed, self.inputs.highest_speed);
        if settled.speeds.wanted.value > reach.value * (1.0 + 1e-9) {
            add(
                "the highest speed of the machine, or the one marked on the cutter, is below the speed wanted: the cut runs at the highest there is",
            );
        }
        if settled.snapped {
            add("the machine's feed step lies below the feed wanted");
        }
        warnings
    }

    /// Why there is no cut.
    pub(super) fn stop(&self, stop: Stop) -> Error {
        match stop {
            Stop::CutterSpeed => limit_exceeded(
                self.milling.units,
                LimitName::CutterSpeed.name(),
                Kind::RotationalSpeed,
                self.inputs.lowest_speed.value,
                self.inputs.cutter_speed.value,
                "the machine's lowest speed is above the highest speed marked on the cutter: take another machine or cutter",
            )
            .into(),
            Stop::Stuck(stuck) => self.stuck(&stuck).into(),
            Stop::TableFeedLowest(stuck) => self
                .limits_at(&stuck, stuck.candidate.feed, false)
                .iter()
                .find(|limit| limit.name == LimitName::TableFeedLowest.name())
                .map_or_else(
                    || no_data(LimitName::TableFeedLowest.name()),
                    |limit| exceeded_problem(limit, self.milling.units),
                )
                .into(),
        }
    }

    /// Nothing that may be lowered helps: the limit that stands in the way.
    fn stuck(&self, stuck: &Stuck) -> Problem {
        let name = stuck.limit(self.kinds, self.inputs);
        let feed = match name {
            LimitName::SmallestChip => stuck.real,
            _ => stuck.smallest,
        };
        self.limits_at(stuck, feed, true)
            .into_iter()
            .find(|limit| limit.name == name.name())
            .map_or_else(
                || no_data(name.name()),
                |limit| exceeded_problem(&limit, self.milling.units),
            )
    }

    /// The ledger at the feed a search ended with.
    fn limits_at(&self, stuck: &Stuck, feed: Length, reliefs: bool) -> Vec<Limit> {
        let candidate = &stuck.candidate;
        let outcome = self.outcome(stuck.candidate.speed, feed, stuck);
        let verdict = limits::judge(self.kinds, self.inputs, candidate, &outcome);
        let mut limits = ledger::ledger(self, &stuck.geometry, candidate, &outcome, &verdict);
        if reliefs {
            ledger::add_reliefs_at(
                self,
                &stuck.engaged,
                &stuck.geometry,
                candidate,
                &outcome,
                &mut limits,
            );
        }
        limits
    }

    fn outcome(&self, speed: RotationalSpeed, feed: Length, stuck: &Stuck) -> Outcome {
        chain::outcome(
            &mut NoRecord,
            self.kinds,
            self.inputs,
            &stuck.engaged,
            &stuck.geometry,
            &law::laws(self.inputs, &stuck.geometry),
            speed,
            feed,
        )
    }

    /// Doubts that rest on the tables and on the models' ranges.
    fn doubts(&self, outcome: &Outcome, warnings: &mut Vec<Warning>) {
        let mut assume = |texts: &[String]| {
            for text in texts {
                let warning = Warning {
                    code: WarningCode::Assumed,
                    text: text.clone(),
                };
                if !warnings.contains(&warning) {
                    warnings.push(warning);
                }
            }
        };
        assume(&self.tables.speed.assumptions);
        assume(&self.tables.feed.assumptions);
        assume(&self.tables.kienzle.assumptions);
        if let Some(unit_power) = &self.tables.unit_power {
            assume(stated(unit_power));
        }
        let ratio = results::method_ratio(outcome);
        if results::methods_disagree(ratio) {
            warnings.push(Warning {
                code: WarningCode::SourcesDisagree,
                text: format!(
                    "the two methods for the power differ: unit power gives {ratio:.2} times the chip-thickness method"
                ),
            });
        }
        if self.pass.mean_roughness.is_some() && outcome.finish.mean_roughness.value.is_nan() {
            warnings.push(Warning {
                code: WarningCode::OutsideValidity,
                text: "no model for the roughness of a floor under a sharp corner, or at a feed per revolution above twice the corner radius: the roughness asked for is not checked".to_owned(),
            });
        }
        let h = outcome.motion.mean_chip.value;
        if !(THINNEST_CHIP..=THICKEST_CHIP).contains(&h) {
            warnings.push(Warning {
                code: WarningCode::OutsideValidity,
                text: "the mean chip lies outside the 0.02 to 1.5 mm for which the power law of the cutting force is usual: thinner chips plough and need more force".to_owned(),
            });
        }
    }

    /// The values that came from tables, model and practice.
    fn data(&self) -> Vec<Datum> {
        let tables = self.tables;
        let mut data = Vec::new();
        let mut add = |name: &str, kind: Kind, value: f64, origin: String| {
            data.push(Datum {
                name: name.to_owned(),
                kind,
                value,
                origin,
            });
        };
        let speed = support_text(&tables.speed.support);
        add(
            "cutting speed, low",
            Kind::Velocity,
            tables.speed.low.value,
            speed.clone(),
        );
        add(
            "cutting speed, start",
            Kind::Velocity,
            tables.speed.start.value,
            speed.clone(),
        );
        add(
            "cutting speed, high",
            Kind::Velocity,
            tables.speed.high.value,
            speed,
        );
        let feed = support_text(&tables.feed.support);
        add(
            "feed per tooth, low",
            Kind::Length,
            tables.feed.low.value,
            feed.clone(),
        );
        add(
            "feed per tooth, start",
            Kind::Length,
            tables.feed.start.value,
            feed.clone(),
        );
        add(
            "feed per tooth, high",
            Kind::Length,
            tables.feed.high.value,
            feed,
        );
        for pair in core::iter::once(&tables.kienzle.default).chain(&tables.kienzle.others) {
            let origin = format!("[{}]", pair.source);
            add("k_c1.1", Kind::Pressure, pair.kc11.value, origin.clone());
            add("m_c", Kind::Ratio, pair.exponent.value, origin);
        }
        if let Some(unit_power) = &tables.unit_power {
            let origin = support_text(&unit_power.range.support);
            add(
                "unit power",
                Kind::Pressure,
                unit_power.range.start.value,
                origin,
            );
        }
        let practice = &self.milling.practice;
        add(
            "factor for a worn edge",
            Kind::Ratio,
            practice.wear_factor.value,
            practice.origin.clone(),
        );
        add(
            "radial over tangential force",
            Kind::Ratio,
            practice.radial_force_ratio.value,
            practice.origin.clone(),
        );
        add(
            "friction of the jaws",
            Kind::Ratio,
            self.milling.hold.jaw_friction.value,
            "the job's hold".to_owned(),
        );
        add(
            "modulus of the cutter",
            Kind::Pressure,
            self.milling.cutter.modulus().value,
            "handbook-typical, from memory".to_owned(),
        );
        data
    }
}

/// What was lowered, and for which limit.
fn adjustments(settled: &Settled) -> Vec<Adjustment> {
    let mut adjustments = Vec::new();
    let candidate = &settled.candidate;
    if let Some((fast, slow)) = settled.fast.zip(settled.real)
        && slow.value < fast.value
    {
        adjustments.push(Adjustment {
            limit: LimitName::CuttingSpeed.name(),
            setting: "spindle_speed",
            kind: Kind::RotationalSpeed,
            from: fast.value,
            to: slow.value,
        });
    }
    if candidate.speed.value < settled.first.value {
        adjustments.push(Adjustment {
            limit: settled
                .held_before_snap
                .unwrap_or(LimitName::SmallestChip)
                .name(),
            setting: "spindle_speed",
            kind: Kind::RotationalSpeed,
            from: settled.first.value,
            to: candidate.speed.value,
        });
    }
    if candidate.feed.value < candidate.wanted.value * (1.0 - 1e-9) {
        adjustments.push(Adjustment {
            limit: candidate.holder().unwrap_or(LimitName::TableFeed).name(),
            setting: "feed_per_tooth",
            kind: Kind::Length,
            from: candidate.wanted.value,
            to: candidate.feed.value,
        });
    }
    adjustments
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
fn limit_exceeded(
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
