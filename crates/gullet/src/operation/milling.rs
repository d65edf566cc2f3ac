//! Side milling, slotting and face milling: from a set-up and a pass to a cut.

use super::chain::{self, Geometry, Inputs, Outcome, Pair};
use super::check;
use super::cut::{
    Adjustment, Band, Chain, Cut, Datum, Limit, Log, Settings, Spread, Warning, WarningCode,
    WorkedStep, support_text,
};
use super::ledger;
use super::request::{Operation, Pass, Setup};
use crate::error::{Code, Error, Problem, Result};
use crate::formula::{NoRecord, chip, force, practice, rotation};
use crate::model::{Clamping, CutterForm, Feed, SpeedChoice};
use crate::quantity::math::{max, min};
use crate::quantity::{Force, Kind, Length, RotationalSpeed, Time, UnitSystem, Velocity, si};
use crate::table::{Kienzle, KienzlePair, MeasuredAt, Process, Ranged, UnitPower};

/// What the tables say of the material under this cutter.
pub(super) struct Tables {
    pub speed: Ranged<Velocity>,
    pub feed: Ranged<Length>,
    pub kienzle: Kienzle,
    pub unit_power: Option<UnitPower>,
}

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

fn process(setup: &Setup, pass: &Pass) -> Process {
    match pass.operation {
        Operation::FaceMilling if matches!(setup.cutter.form, CutterForm::FaceMill(_)) => {
            Process::FaceMilling
        }
        _ => Process::EndMilling,
    }
}

impl Tables {
    /// Feed per tooth at an axial depth.
    pub(super) fn feed(setup: &Setup, pass: &Pass, axial_depth: Length) -> Result<Ranged<Length>> {
        setup.library.feed_per_tooth(
            setup.material,
            setup.cutter.material,
            process(setup, pass),
            setup.cutter.diameter,
            axial_depth,
        )
    }

    fn look_up(setup: &Setup, pass: &Pass) -> Result<Tables> {
        let process = process(setup, pass);
        let tool = setup.cutter.material;
        let library = setup.library;
        let mut problems = Vec::new();
        let mut keep = |error: Error| problems.extend(error.into_problems());
        let speed = library
            .cutting_speed(setup.material, tool, process)
            .or_else(|error| match pass.spindle_speed {
                Some(n) => asked_for(rotation::cutting_speed::value(n, setup.cutter.diameter)),
                None => Err(error),
            })
            .map_err(&mut keep)
            .ok();
        let feed = Tables::feed(setup, pass, pass.axial_depth)
            .or_else(|error| match pass.feed_per_tooth {
                Some(feed) => asked_for(feed),
                None => Err(error),
            })
            .map_err(&mut keep)
            .ok();
        let kienzle = library.kienzle(setup.material).map_err(&mut keep).ok();
        // The second method is an opinion beside the first: a cut does without it.
        let unit_power = library.unit_power(setup.material).ok();
        match (speed, feed, kienzle) {
            (Some(speed), Some(feed), Some(kienzle)) => Ok(Tables {
                speed,
                feed,
                kienzle,
                unit_power,
            }),
            _ => Err(Error::unless_empty(problems, ())
                .err()
                .unwrap_or_else(|| no_data("material").into())),
        }
    }
}

/// The job's own value where the tables hold none: all there is to compare with.
fn asked_for<T>(value: T) -> Result<Ranged<T>>
where
    T: Copy,
{
    Ok(Ranged {
        low: value,
        start: value,
        high: value,
        support: Vec::new(),
        assumptions: vec![
            "the tables hold no value for this material: the one asked for stands unchecked"
                .to_owned(),
        ],
    })
}

fn no_data(parameter: &str) -> Problem {
    Problem::new(
        Code::NoData,
        parameter,
        "",
        "",
        "give speed, feed and cutting force in an overlay",
    )
}

fn inputs(setup: &Setup, pass: &Pass, tables: &Tables) -> Inputs {
    let cutter = setup.cutter;
    let machine = setup.machine;
    let practice = setup.practice;
    let d = cutter.diameter;
    let half = d / 2.0;
    let zero: Length = si(0.0);
    let (edge_low, edge_high) = match pass.operation {
        Operation::FaceMilling => (
            max(pass.offset - pass.radial_depth / 2.0, zero - half),
            min(pass.offset + pass.radial_depth / 2.0, half),
        ),
        _ => (zero - half, half),
    };
    let radial_depth = match pass.operation {
        Operation::SideMilling => min(pass.radial_depth, d),
        Operation::Slotting => d,
        Operation::FaceMilling => edge_high - edge_low,
    };
    let default_pair = Pair::of(&tables.kienzle.default);
    let mut pairs = [default_pair; 3];
    for (slot, pair) in pairs.iter_mut().skip(1).zip(&tables.kienzle.others) {
        *slot = Pair::of(pair);
    }
    // A face mill's body is solid: its arbor bends, not a fluted length.
    let flute_length = match cutter.form {
        CutterForm::FaceMill(_) => zero,
        _ => cutter.flute_length,
    };
    Inputs {
        operation: pass.operation,
        direction: pass.direction,
        finishing: pass.kind == crate::model::PassKind::Finishing,
        form: cutter.form,
        diameter: d,
        teeth: si(f64::from(cutter.teeth)),
        axial_depth: pass.axial_depth,
        radial_depth,
        edge_low,
        edge_high,
        cutting_edge_angle: cutter.cutting_edge_angle(),
        corner_radius: cutter.corner_radius(),
        helix_angle: cutter.helix_angle,
        default_pair,
        pairs,
        wear_factor: practice.wear_factor,
        unit_power: tables
            .unit_power
            .as_ref()
            .map(|unit_power| chain::UnitPower {
                start: unit_power.range.start,
                chip_thickness: unit_power.chip_thickness,
                drive_efficiency: match unit_power.measured_at {
                    MeasuredAt::Motor { efficiency } => {
                        Some(efficiency.map_or(machine.efficiency, si))
                    }
                    _ => None,
                },
            }),
        motor_power: machine.motor_power,
        efficiency: machine.efficiency,
        power_share: practice.power_share,
        base_speed: machine.base_speed.unwrap_or(machine.speed_range().0),
        maximum_torque: machine.maximum_torque,
        overhang: cutter.stick_out,
        flute_length: min(flute_length, cutter.stick_out),
        shank_diameter: cutter.shank_diameter,
        modulus: cutter.modulus(),
        radial_force_ratio: practice.radial_force_ratio,
        friction: setup.hold.jaw_friction,
        safety: practice.holding_safety,
        cut_length: pass.length,
        clearance: practice.clearance,
    }
}

impl Pair {
    fn of(pair: &KienzlePair) -> Pair {
        Pair {
            kc11: pair.kc11,
            exponent: pair.exponent,
        }
    }
}

/// A spindle speed with the feed per tooth that every limit leaves at it.
pub(super) struct Candidate {
    pub speed: RotationalSpeed,
    pub feed: Length,
    pub wanted: Length,
    /// The limit that holds the feed below the wanted one.
    pub held_by: Option<&'static str>,
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
            .map(exceeded_problem)
            .collect();
        Error::unless_empty(exceeded, cut)
    }

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

    fn wanted_feed(&self, log: &mut impl Log) -> Length {
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
        let known = 1 + self.tables.kienzle.others.len();
        for pair in self.inputs.pairs.into_iter().take(known) {
            let inputs = Inputs {
                pairs: [pair; 3],
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
    fn slower(
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
    fn stuck(
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
            |limit| exceeded_problem(&limit),
        )
    }

    /// The feed per tooth of the table feed the machine has; none below its lowest.
    fn real_feed(&self, candidate: &Candidate) -> Option<Length> {
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
    fn snap_feed(
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
                .map_or_else(|| no_data("table_feed_lowest"), exceeded_problem)
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
                text: adjustment.text(UnitSystem::Metric),
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

    /// What the tables' ranges make of speed, force, power and time.
    fn spread(&self, geometry: &Geometry, outcome: &Outcome) -> Spread {
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

impl Candidate {
    fn hold(&mut self, name: &'static str, cap: Length) {
        // Of limits that meet to the last digits the first one holds.
        if cap.value < self.feed.value * (1.0 - 1e-12) {
            self.feed = cap;
            self.held_by = Some(name);
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
fn exceeded_problem(limit: &Limit) -> Problem {
    let remedy = limit.relief.map_or_else(
        || {
            "lowering feed and speed does not help: another cutter, machine or hold is needed"
                .to_owned()
        },
        |relief| {
            format!(
                "lowering feed and speed does not help: change the {}",
                relief.text(UnitSystem::Metric)
            )
        },
    );
    let mut problem = limit_exceeded(limit.name, limit.kind, limit.value, limit.bound, &remedy);
    problem.admissible = format!("{} ({})", problem.admissible, limit.origin);
    problem
}

/// A limit that is exceeded and cannot be met by lowering feed or speed.
pub(super) fn limit_exceeded(
    name: &str,
    kind: Kind,
    value: f64,
    bound: f64,
    remedy: &str,
) -> Problem {
    let show = |x: f64| crate::quantity::format(kind, x, UnitSystem::Metric);
    Problem::new(
        Code::LimitExceeded,
        name,
        show(value),
        format!("bound {}", show(bound)),
        remedy,
    )
}
