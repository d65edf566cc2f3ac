//! What a cut says beside its numbers: spread, doubts, values with their sources.

use super::chain::{Geometry, Outcome};
use super::cut::{Band, Datum, Spread, Warning, WarningCode, support_text};
use super::milling::Solver;
use crate::formula::{NoRecord, force, rotation};
use crate::quantity::math::{max, min};
use crate::quantity::{Kind, Length, Velocity, si};
use crate::table::MeasuredAt;

impl Solver<'_> {
    /// What the tables' ranges make of speed, force, power and time.
    pub(super) fn spread(&self, geometry: &Geometry, outcome: &Outcome) -> Spread {
        let silent = &mut NoRecord;
        let inputs = self.inputs;
        let forces = inputs
            .pairs
            .map(|pair| inputs.k_c(silent, pair, outcome.mean_chip, si(1.0)));
        let least = forces.iter().fold(forces[0], |a, b| min(a, *b));
        let most = forces.iter().fold(forces[0], |a, b| max(a, *b));
        let power = |k| crate::formula::power::cutting_power::value(outcome.removal_rate, k);
        let tangential = |k| force::tangential_force::value(power(k), outcome.cutting_speed);
        let range = &self.tables.speed;
        let feed = &self.tables.feed;
        let time = |v: Velocity, f: Length| {
            let n = rotation::spindle_speed::value(v, geometry.effective_diameter);
            let v_f = rotation::table_feed::value(f, inputs.teeth, n);
            crate::formula::time::cutting_time::value(geometry.travel, v_f)
        };
        Spread {
            cutting_speed: Band {
                low: range.low,
                start: range.start,
                high: range.high,
            },
            feed_per_tooth: Band {
                low: feed.low,
                start: feed.start,
                high: feed.high,
            },
            force: Band {
                low: tangential(least),
                start: outcome.mean_force,
                high: tangential(most),
            },
            power: Band {
                low: power(least),
                start: outcome.cutting_power,
                high: power(most),
            },
            time: Band {
                low: time(range.high, feed.high),
                start: time(range.start, feed.start),
                high: time(range.low, feed.low),
            },
        }
    }

    /// Doubts that rest on the tables and on the models' ranges.
    pub(super) fn doubts(&self, outcome: &Outcome, warnings: &mut Vec<Warning>) {
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
            // Power at the cutter is what the second method is compared by: no doubt.
            let skip = usize::from(unit_power.measured_at == MeasuredAt::Cutter);
            let known = unit_power.range.assumptions.len().saturating_sub(skip);
            assume(
                unit_power
                    .range
                    .assumptions
                    .get(..known)
                    .unwrap_or_default(),
            );
        }
        if let Some(second) = outcome.unit_power_power {
            let ratio = (second / outcome.cutting_power).value;
            if !(0.7..=1.4).contains(&ratio) {
                warnings.push(Warning {
                    code: WarningCode::SourcesDisagree,
                    text: format!(
                        "the two methods for the power differ: unit power gives {ratio:.2} times the chip-thickness method"
                    ),
                });
            }
        }
        if self.pass.mean_roughness.is_some() && outcome.mean_roughness.is_none() {
            warnings.push(Warning {
                code: WarningCode::OutsideValidity,
                text: "no model for the roughness of a floor under a sharp corner, or at a feed per revolution above twice the corner radius: the roughness asked for is not checked".to_owned(),
            });
        }
        let h = outcome.mean_chip.value;
        if !(0.02e-3..=1.5e-3).contains(&h) {
            warnings.push(Warning {
                code: WarningCode::OutsideValidity,
                text: "the mean chip lies outside the 0.02 to 1.5 mm for which the power law of the cutting force is usual: thinner chips plough and need more force".to_owned(),
            });
        }
    }

    /// The values that came from tables, model and practice.
    pub(super) fn data(&self) -> Vec<Datum> {
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
        let practice = self.setup.practice;
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
            self.setup.hold.jaw_friction.value,
            "the job's hold".to_owned(),
        );
        add(
            "modulus of the cutter",
            Kind::Pressure,
            self.setup.cutter.modulus().value,
            "handbook-typical, from memory".to_owned(),
        );
        data
    }
}
