//! The speed the machine has and the feed per tooth that every limit leaves at it.

use super::chain::{self, Geometry, Inputs, Outcome};
use super::cut::{Adjustment, Chain, Log, Warning, WarningCode, support_text};
use super::inputs::no_data;
use super::ledger;
use super::milling::{Lowering, Solver, clamping_force, exceeded_problem, limit_exceeded};
use super::request::Operation;
use crate::error::{Problem, Result};
use crate::formula::{NoRecord, chip, practice, rotation};
use crate::model::{Feed, SpeedChoice};
use crate::quantity::math::min;
use crate::quantity::{Kind, Length, RotationalSpeed, Velocity, si};
use crate::table::Ranged;

/// A spindle speed with the feed per tooth that every limit leaves at it.
pub(super) struct Candidate {
    pub speed: RotationalSpeed,
    pub feed: Length,
    pub wanted: Length,
    /// The limit that holds the feed below the wanted one.
    pub held_by: Option<&'static str>,
}

impl Solver<'_> {
    /// The wanted speed and the speed the machine has for it.
    pub(super) fn speed(
        &self,
        log: &mut impl Log,
        effective: Length,
        adjustments: &mut Vec<Adjustment>,
        warnings: &mut Vec<Warning>,
    ) -> Result<(RotationalSpeed, RotationalSpeed)> {
        let machine = self.setup.machine;
        let practice = self.setup.practice;
        let (lowest, highest) = machine.speed_range();
        let wanted = if let Some(speed) = self.pass.spindle_speed {
            log.choose(Kind::RotationalSpeed, speed.value, || {
                "spindle speed asked for by the job".to_owned()
            });
            speed
        } else {
            let table = match practice.speed_choice {
                SpeedChoice::Low => self.tables.speed.low,
                SpeedChoice::Start => self.tables.speed.start,
            };
            log.choose(Kind::Velocity, table.value, || {
                format!(
                    "cutting speed of the tables, {} of the range, from {}",
                    match practice.speed_choice {
                        SpeedChoice::Low => "low end",
                        SpeedChoice::Start => "starting value",
                    },
                    support_text(&self.tables.speed.support)
                )
            });
            let v = practice::practice_cutting_speed::step(log, table, practice.speed_factor);
            rotation::spindle_speed::step(log, v, effective)
        };
        let capped = self
            .setup
            .cutter
            .maximum_speed
            .map_or(wanted, |most| min(wanted, most));
        let worn = rotation::spindle_speed::value(self.tables.speed.high, effective);
        let real = machine.speed_at_or_below(min(capped, worn));
        if let Some((fast, slow)) = machine.speed_at_or_below(capped).zip(real)
            && slow.value < fast.value
        {
            adjustments.push(Adjustment {
                limit: "cutting_speed",
                setting: "spindle_speed",
                kind: Kind::RotationalSpeed,
                from: fast.value,
                to: slow.value,
            });
        }
        let speed = match real {
            Some(speed) => speed,
            None => {
                let cap = self.setup.cutter.maximum_speed.unwrap_or(lowest);
                if lowest.value > cap.value * (1.0 + 1e-9) {
                    return Err(limit_exceeded(
                        self.setup.units,
                        "cutter_speed",
                        Kind::RotationalSpeed,
                        lowest.value,
                        cap.value,
                        "the machine's lowest speed is above the highest speed marked on the cutter: take another machine or cutter",
                    )
                    .into());
                }
                warnings.push(Warning {
                    code: WarningCode::MachineLimits,
                    text: "the machine's lowest speed is above the speed wanted: the cutter runs faster than the table says and wears sooner".to_owned(),
                });
                lowest
            }
        };
        let reach = min(self.setup.cutter.maximum_speed.unwrap_or(highest), highest);
        if wanted.value > reach.value * (1.0 + 1e-9) {
            warnings.push(Warning {
                code: WarningCode::MachineLimits,
                text: "the highest speed of the machine, or the one marked on the cutter, is below the speed wanted: the cut runs at the highest there is".to_owned(),
            });
        }
        log.choose(Kind::RotationalSpeed, speed.value, || {
            if real.is_some() {
                "spindle speed the machine has at or below that".to_owned()
            } else {
                "lowest spindle speed of the machine, above that".to_owned()
            }
        });
        Ok((wanted, speed))
    }

    /// Feed per tooth whose largest chip is this thick: the two are in proportion.
    pub(super) fn feed_for_chip(&self, chip: Length) -> Length {
        let unit: Length = si(1.0);
        chip * (unit / self.inputs.max_chip(&mut NoRecord, unit))
    }

    /// The feed per tooth at a speed: wanted chip, thinning, then every limit that feed relieves.
    pub(super) fn feed(
        &self,
        log: &mut impl Log,
        geometry: &Geometry,
        speed: RotationalSpeed,
        lowering: Lowering,
    ) -> Candidate {
        let inputs = self.inputs;
        let wanted = self.wanted_feed(log);
        let mut candidate = Candidate {
            speed,
            feed: wanted,
            wanted,
            held_by: None,
        };
        candidate.hold("largest_chip", self.feed_for_chip(self.feed.high));
        let silent = &mut NoRecord;
        if let Some((name, most)) = self.highest_feed(silent) {
            let cap = rotation::feed_per_tooth::value(most, inputs.teeth, speed);
            candidate.hold(name, cap);
        }
        if let Some(wanted) = self.pass.mean_roughness
            && let Some(f) = chain::feed_per_rev_for_roughness(silent, inputs, wanted)
        {
            candidate.hold("mean_roughness", f / inputs.teeth);
        }
        if lowering == Lowering::Allowed {
            for (name, cap) in self.load_caps(geometry, speed, wanted) {
                candidate.hold(name, cap);
            }
        }
        if let Some(limit) = candidate.held_by {
            log.choose(Kind::Length, candidate.feed.value, || {
                format!("feed per tooth lowered for the limit {limit}")
            });
        }
        candidate
    }

    /// What follows from the feed wanted at another axial depth, whatever it loads.
    pub(super) fn wanted_at(&self, axial_depth: Length, feed: &Ranged<Length>) -> Option<Outcome> {
        let silent = &mut NoRecord;
        let inputs = Inputs {
            axial_depth,
            cutting_edge_angle: chain::edge_angle(self.setup.cutter, axial_depth),
            ..*self.inputs
        };
        let solver = Solver {
            feed,
            inputs: &inputs,
            ..*self
        };
        let effective = chain::effective_diameter(silent, &inputs);
        let (_, speed) = solver
            .speed(silent, effective, &mut Vec::new(), &mut Vec::new())
            .ok()?;
        let geometry = chain::geometry(silent, &inputs, effective);
        let candidate = solver.feed(silent, &geometry, speed, Lowering::NotForLoads);
        let f_z = candidate.feed;
        Some(chain::outcome(silent, &inputs, &geometry, speed, f_z))
    }

    pub(super) fn wanted_feed(&self, log: &mut impl Log) -> Length {
        let inputs = self.inputs;
        let practice = self.setup.practice;
        if let Some(feed) = self.pass.feed_per_tooth {
            log.choose(Kind::Length, feed.value, || {
                "feed per tooth asked for by the job".to_owned()
            });
            return feed;
        }
        let table = self.feed.start;
        log.choose(Kind::Length, table.value, || {
            format!(
                "feed per tooth of the tables, starting value, from {}",
                support_text(&self.feed.support)
            )
        });
        let chip = practice::practice_feed_per_tooth::step(log, table, practice.feed_factor);
        if inputs.operation != Operation::SideMilling {
            return chip;
        }
        let right_angle = si(core::f64::consts::FRAC_PI_2);
        let thinned = chip::feed_for_max_chip_thickness::step(
            log,
            chip,
            inputs.diameter,
            inputs.radial_depth,
            right_angle,
        );
        let cap = practice::thinning_cap_feed::step(log, chip, practice.thinning_cap);
        let feed = min(thinned, cap);
        log.choose(Kind::Length, feed.value, || {
            "feed per tooth, the smaller of the two".to_owned()
        });
        feed
    }

    /// The highest table feed and what bounds it.
    pub(super) fn highest_feed(&self, log: &mut impl Log) -> Option<(&'static str, Velocity)> {
        let machine = self.setup.machine;
        match &machine.feed {
            Feed::Hand => machine.travel_per_turn.map(|lead| {
                let pace = self.setup.practice.handwheel_pace;
                ("handwheel_pace", rotation::feed_rate::step(log, lead, pace))
            }),
            Feed::Continuous { highest, .. } => Some(("table_feed", *highest)),
            Feed::Stepped(steps) => steps.last().map(|highest| ("table_feed", *highest)),
        }
    }

    /// For every limit on a load, the feed per tooth that meets it, over the pairs.
    fn load_caps(
        &self,
        geometry: &Geometry,
        speed: RotationalSpeed,
        feed: Length,
    ) -> Vec<(&'static str, Length)> {
        let mut caps = Vec::new();
        let across = self.setup.hold.feed_across_jaws;
        let clamping = clamping_force(&mut NoRecord, &self.setup.hold.clamping);
        let deflection = self.setup.practice.deflection(self.pass.kind);
        let torque_first = self.torque_first(speed);
        for (index, pair) in self.inputs.limit_pairs.into_iter().enumerate() {
            // Places without a pair of their own repeat the default one.
            if index > 0 && pair == self.inputs.default_pair {
                continue;
            }
            let inputs = Inputs {
                limit_pairs: [pair; 4],
                ..*self.inputs
            };
            let at = chain::outcome(&mut NoRecord, &inputs, geometry, speed, feed);
            let needed = chain::clamping_needed(&at, across);
            let power = ("power", at.limit_power.value, at.available_power.value);
            let torque = ("torque", at.limit_torque.value, at.available_torque.value);
            let (first, second) = if torque_first {
                (torque, power)
            } else {
                (power, torque)
            };
            for (name, value, bound) in [
                first,
                second,
                ("deflection", at.deflection.value, deflection.value),
                ("clamping", needed.value, clamping.value),
            ] {
                let share = value / bound;
                if share > 1.0 {
                    let cap = practice::feed_for_load_share::value(feed, si(share), pair.exponent);
                    caps.push((name, cap));
                }
            }
        }
        caps
    }

    /// Below the base speed the drive's torque is constant: power and torque then run out together,
    /// and it is the torque that a lower speed does not relieve.
    pub(super) fn torque_first(&self, speed: RotationalSpeed) -> bool {
        speed.value < self.inputs.base_speed.value * (1.0 - 1e-9)
    }

    /// The next lower speed worth trying, if a lower speed thickens the chip.
    pub(super) fn slower(
        &self,
        candidate: &Candidate,
        real: Length,
        smallest: Length,
    ) -> Option<RotationalSpeed> {
        let held_by = if candidate.feed.value < smallest.value * (1.0 - 1e-9) {
            candidate.held_by?
        } else {
            // The step below: at a lower speed the same step gives a thicker chip.
            "table_feed"
        };
        if !matches!(held_by, "handwheel_pace" | "table_feed" | "power") {
            return None;
        }
        let ratio = real / smallest;
        let reach = match self.setup.machine.drive {
            crate::model::Drive::Continuous { .. } => candidate.speed * ratio * 0.999_999,
            crate::model::Drive::Stepped(_) => candidate.speed * 0.999_999,
        };
        self.setup.machine.speed_at_or_below(reach)
    }

    /// Nothing that may be lowered helps: the limit that holds the feed below the smallest that
    /// cuts, or the smallest chip itself where no other limit does.
    pub(super) fn stuck(
        &self,
        geometry: &Geometry,
        candidate: &Candidate,
        real: Length,
        smallest: Length,
    ) -> Problem {
        let limits = |feed: Length| {
            let at = chain::outcome(&mut NoRecord, self.inputs, geometry, candidate.speed, feed);
            let mut limits = ledger::ledger(self, geometry, candidate, &at);
            ledger::add_reliefs(self, geometry, candidate, &at, &mut limits);
            limits
        };
        let held = candidate.held_by.and_then(|name| {
            limits(smallest)
                .into_iter()
                .find(|limit| limit.name == name && limit.exceeded())
        });
        held.or_else(|| {
            limits(real)
                .into_iter()
                .find(|limit| limit.name == "smallest_chip")
        })
        .map_or_else(
            || no_data("smallest_chip"),
            |limit| exceeded_problem(&limit, self.setup.units),
        )
    }

    /// The feed per tooth of the table feed the machine has; none below its lowest.
    pub(super) fn real_feed(&self, candidate: &Candidate) -> Option<Length> {
        let z = self.inputs.teeth;
        let wanted = rotation::table_feed::value(candidate.feed, z, candidate.speed);
        let real = self.setup.machine.feed_at_or_below(wanted)?;
        Some(if real.value < wanted.value * (1.0 - 1e-9) {
            rotation::feed_per_tooth::value(real, z, candidate.speed)
        } else {
            candidate.feed
        })
    }

    /// The feed the machine has: the step at or below; by hand as it is.
    pub(super) fn snap_feed(
        &self,
        log: &mut Chain,
        geometry: &Geometry,
        candidate: &mut Candidate,
        warnings: &mut Vec<Warning>,
    ) -> Result<()> {
        let inputs = self.inputs;
        let (n, z) = (candidate.speed, inputs.teeth);
        let wanted = rotation::table_feed::value(candidate.feed, z, n);
        let Some(real) = self.setup.machine.feed_at_or_below(wanted) else {
            let at = chain::outcome(&mut NoRecord, inputs, geometry, n, candidate.feed);
            return Err(ledger::ledger(self, geometry, candidate, &at)
                .iter()
                .find(|limit| limit.name == "table_feed_lowest")
                .map_or_else(
                    || no_data("table_feed_lowest"),
                    |limit| exceeded_problem(limit, self.setup.units),
                )
                .into());
        };
        if real.value < wanted.value * (1.0 - 1e-9) {
            candidate.feed = rotation::feed_per_tooth::step(log, real, z, n);
            candidate.held_by = candidate.held_by.or(Some("table_feed"));
            log.choose(Kind::Velocity, real.value, || {
                "table feed the machine has at or below that".to_owned()
            });
            warnings.push(Warning {
                code: WarningCode::MachineLimits,
                text: "the machine's feed step lies below the feed wanted".to_owned(),
            });
        }
        Ok(())
    }
}

impl Candidate {
    fn hold(&mut self, name: &'static str, cap: Length) {
        // Of limits that meet to the last digits the first one holds.
        if cap.value < self.feed.value * (1.0 - 1e-12) {
            self.feed = cap;
            self.held_by = Some(name);
        }
    }
}
