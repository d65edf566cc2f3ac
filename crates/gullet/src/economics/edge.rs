//! The speed of least cost and of least time, and what the steps of a spindle make of it.

use super::inputs::inputs;
use super::worked;
use crate::error::{Code, Error, Problem, Result};
use crate::formula::{Step, Steps, parameter_problems};
use crate::model::Drive;
use crate::operation::{Field, records};
use crate::quantity::{
    self, Kind, Money, Ratio, RotationalSpeed, Time, UnitSystem, Velocity, format, si,
};

inputs! {
    /// What decides the economic speed of a turned, bored, drilled or milled part.
    ///
    /// Feed and depth already stand in the speed for a life of one minute. The cost function is that
    /// of [`unit_cost`](fn@crate::formula::cost::unit_cost), over the cutting time of the travel.
    ///
    /// ```
    /// use gullet::economics::{Aim, EdgeEconomics};
    /// use gullet::model::Machine;
    /// let edge = EdgeEconomics::from_text(
    ///     "machine_rate=60 money/h; edge_cost=4; change_time=3 min; handling_time=2 min; \
    ///      taylor_speed=200 m/min; taylor_exponent=0.25; \
    ///      diameter=60 mm; travel=200 mm; feed_per_rev=0.2 mm",
    /// )?;
    /// let best = edge.minimum_cost()?;
    /// assert!((best.speed.tool_life.value / 60.0 - 21.0).abs() < 1e-9, "3 (3 + 4/1) min");
    /// let real = edge.snapped(&Machine::builtin("manual-knee-mill")?.drive, Aim::LeastCost)?;
    /// assert!(real.chosen.speed.cost_per_part >= best.speed.cost_per_part);
    /// # Ok::<(), gullet::Error>(())
    /// ```
    EdgeEconomics ("economics") {
        machine_rate C_m: MoneyRate, above 0.0, "machine and operator, money per time";
        edge_cost C_e: Money, from 0.0, default 0.0, "cost of one cutting edge, regrinding included";
        change_time t_ch: Time, from 0.0, "time of one tool change";
        handling_time t_h: Time, from 0.0, default 0.0, "handling time a part";
        in_cut_share q: Ratio, above 0.0, to 1.0, default 1.0, "share of the cutting time that the edge is in cut";
        taylor_speed C: Velocity, above 0.0, "cutting speed for a life of one minute at this feed and depth";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        diameter D: Length, above 0.0, "diameter that the cutting speed is counted on";
        travel L: Length, above 0.0, "travel at feed, all passes together";
        feed_per_rev f: Length, above 0.0, "feed per revolution";
    }
}

records! {
    /// What a part takes and costs at one speed.
    EconomicSpeed {
        cutting_speed: Velocity, "Cutting speed.";
        spindle_speed: RotationalSpeed, "Spindle speed.";
        feed_speed: Velocity, "Feed speed.";
        tool_life: Time, "Tool life, counted while the edge cuts.";
        cutting_time: Time, "Cutting time a part.";
        parts_per_edge: Ratio, "Parts an edge makes, as a mean.";
        time_per_part: Time, "Time a part, without set-up, edges changed also within a part.";
        cost_per_part: Money, "Cost a part, without set-up and material, edges changed also within a part.";
    }

    /// The same where an edge makes whole parts only.
    WholeParts {
        parts_per_edge: Count, "Whole parts an edge makes.";
        time_per_part: Time, "Time a part, without set-up.";
        cost_per_part: Money, "Cost a part, without set-up and material.";
    }
}

/// What is to be least.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Aim {
    /// Cost per part.
    LeastCost,
    /// Time per part: the speed of maximum production.
    LeastTime,
}

impl Aim {
    /// Both aims.
    pub const ALL: &'static [Aim] = &[Aim::LeastCost, Aim::LeastTime];

    /// Its name in every face.
    pub fn name(self) -> &'static str {
        match self {
            Aim::LeastCost => "least_cost",
            Aim::LeastTime => "least_time",
        }
    }
}

/// A speed with what it costs and how that is worked out.
#[derive(Clone)]
pub struct Priced {
    /// The speed and what follows.
    pub speed: EconomicSpeed,
    /// The same with whole parts an edge; none where an edge does not last one part.
    pub whole: Option<WholeParts>,
    /// The formulas with their numbers, in order.
    pub steps: Vec<Step>,
}

impl Priced {
    fn measure(&self, aim: Aim) -> f64 {
        match aim {
            Aim::LeastCost => self.speed.cost_per_part.value,
            Aim::LeastTime => self.speed.time_per_part.value,
        }
    }

    fn whole_measure(&self, aim: Aim) -> Option<f64> {
        self.whole.map(|whole| match aim {
            Aim::LeastCost => whole.cost_per_part.value,
            Aim::LeastTime => whole.time_per_part.value,
        })
    }
}

/// The economic speed on a real spindle.
#[derive(Clone)]
pub struct Snapped {
    /// What was to be least.
    pub aim: Aim,
    /// The speed that would be best if it could be set.
    pub wanted: Priced,
    /// The best of the speeds the spindle has.
    pub chosen: Priced,
    /// The highest step at or below the wanted speed; none on a continuous drive or below the lowest.
    pub below: Option<Priced>,
    /// The lowest step above the wanted speed; none on a continuous drive or above the highest.
    pub above: Option<Priced>,
    /// The best of the speeds where an edge makes whole parts only; none where no edge lasts a part.
    pub chosen_whole: Option<Priced>,
    /// What a part costs more than at the wanted speed; negative is possible where time was the aim.
    pub extra_cost: Money,
    /// That over the cost at the wanted speed.
    pub extra_cost_share: Ratio,
    /// What a part takes longer than at the wanted speed; negative is possible where cost was the aim.
    pub extra_time: Time,
    /// That over the time at the wanted speed.
    pub extra_time_share: Ratio,
    /// Steps left out because their life is beyond what a number holds.
    pub left_out: usize,
}

/// Everything about the economic speed: both optima and, with a spindle, its best speeds.
#[derive(Clone)]
pub struct Economics {
    /// The inputs.
    pub inputs: EdgeEconomics,
    /// At the speed of least cost.
    pub least_cost: Priced,
    /// At the speed of least time; none where a tool change takes no time.
    pub least_time: Option<Priced>,
    /// Of the spindle's speeds the one of least cost.
    pub spindle_least_cost: Option<Snapped>,
    /// Of the spindle's speeds the one of least time.
    pub spindle_least_time: Option<Snapped>,
}

impl Economics {
    /// Both optima, and the best of a spindle's speeds where one is given.
    ///
    /// # Errors
    /// Every problem of the inputs and of the drive; a result that no number can hold.
    pub fn new(inputs: EdgeEconomics, drive: Option<&Drive>) -> Result<Economics> {
        Economics::new_in(inputs, drive, UnitSystem::Metric)
    }

    /// As [`Self::new`], with the numbers of an error in a shop's units.
    ///
    /// # Errors
    /// As [`Self::new`].
    pub fn new_in(
        inputs: EdgeEconomics,
        drive: Option<&Drive>,
        units: UnitSystem,
    ) -> Result<Economics> {
        let mut problems = inputs.problems_in(units);
        if let Some(drive) = drive {
            problems.extend(drive.problems_in(units));
        }
        Error::unless_empty(problems, ())?;
        let timed = inputs.change_time.value > 0.0;
        let spindle = |aim| drive.map(|drive| inputs.snapped(drive, aim)).transpose();
        Ok(Economics {
            inputs,
            least_cost: inputs.minimum_cost()?,
            least_time: timed.then(|| inputs.maximum_production()).transpose()?,
            spindle_least_cost: spindle(Aim::LeastCost)?,
            spindle_least_time: if timed {
                spindle(Aim::LeastTime)?
            } else {
                None
            },
        })
    }
}

impl EdgeEconomics {
    /// Every problem of the fields.
    pub fn problems(&self) -> Vec<Problem> {
        self.problems_in(UnitSystem::Metric)
    }

    /// As [`Self::problems`], with the numbers in a shop's units.
    pub fn problems_in(&self, units: UnitSystem) -> Vec<Problem> {
        let mut problems = parameter_problems(EdgeEconomics::PARAMETERS, &self.si(), units);
        for problem in &mut problems {
            if problem.parameter == "taylor_exponent" && self.taylor_exponent.value >= 1.0 {
                problem.remedy = "from 1 on a part costs less the faster it is cut, without end: there is no best speed; test the life again, or give n where 1/n was given".to_owned();
            }
        }
        if problems.is_empty() && self.change_time.value == 0.0 && self.edge_cost.value == 0.0 {
            problems.push(Problem::new(
                Code::Inconsistent,
                "change_time",
                format(Kind::Time, 0.0, units),
                format!(
                    "above {}, or edge_cost above 0",
                    format(Kind::Time, 0.0, units)
                ),
                "a change that costs neither time nor money has no best speed: give one of the two",
            ));
        }
        problems
    }

    fn checked(&self) -> Result<()> {
        Error::unless_empty(self.problems(), ())
    }

    /// The speed at which a part costs least.
    ///
    /// # Errors
    /// Every problem of the fields; a result that no number can hold.
    pub fn minimum_cost(&self) -> Result<Priced> {
        self.optimum(Aim::LeastCost)
    }

    /// The speed at which a part takes least time.
    ///
    /// # Errors
    /// As [`Self::minimum_cost`]; a tool change that takes no time.
    pub fn maximum_production(&self) -> Result<Priced> {
        self.optimum(Aim::LeastTime)
    }

    fn optimum(&self, aim: Aim) -> Result<Priced> {
        self.checked()?;
        let mut steps = Steps::default();
        let log = &mut steps;
        let speed = match aim {
            Aim::LeastCost => worked!(
                log,
                cost::minimum_cost_speed(
                    self.taylor_speed,
                    self.taylor_exponent,
                    self.change_time,
                    self.edge_cost,
                    self.machine_rate,
                    self.in_cut_share,
                )
            ),
            Aim::LeastTime => worked!(
                log,
                cost::maximum_production_speed(
                    self.taylor_speed,
                    self.taylor_exponent,
                    self.change_time,
                    self.in_cut_share,
                )
            ),
        };
        let spindle = worked!(log, rotation::spindle_speed(speed, self.diameter));
        self.priced(speed, spindle, steps)
    }

    /// What a part takes and costs at a spindle speed.
    ///
    /// # Errors
    /// Every problem of the fields; a result that no number can hold.
    pub fn at_spindle_speed(&self, spindle_speed: RotationalSpeed) -> Result<Priced> {
        self.checked()?;
        let mut steps = Steps::default();
        let speed = worked!(
            &mut steps,
            rotation::cutting_speed(spindle_speed, self.diameter)
        );
        self.priced(speed, spindle_speed, steps)
    }

    fn priced(&self, v: Velocity, n: RotationalSpeed, mut steps: Steps) -> Result<Priced> {
        let log = &mut steps;
        let feed_speed = worked!(log, rotation::feed_rate(self.feed_per_rev, n));
        let t_c = worked!(log, time::cutting_time(self.travel, feed_speed));
        let life = worked!(
            log,
            wear::tool_life(v, self.taylor_speed, self.taylor_exponent)
        );
        let (t_h, t_ch, q) = (self.handling_time, self.change_time, self.in_cut_share);
        let (edge, rate) = (self.edge_cost, self.machine_rate);
        let parts_per_edge = worked!(log, cost::mean_parts_per_edge(t_c, life, q));
        let time_per_part = worked!(log, cost::unit_time(t_h, t_c, t_ch, life, q));
        let cost_per_part = worked!(log, cost::unit_cost(t_h, t_c, t_ch, life, edge, rate, q));
        // Half the slack of the formulas' bound, so that they take what passes here.
        let whole = if parts_per_edge.value * (1.0 + 5e-13) >= 1.0 {
            Some(WholeParts {
                parts_per_edge: worked!(log, cost::whole_parts_per_edge(t_c, life, q)),
                time_per_part: worked!(log, cost::unit_time_whole_parts(t_h, t_c, t_ch, life, q)),
                cost_per_part: worked!(
                    log,
                    cost::unit_cost_whole_parts(t_h, t_c, t_ch, life, edge, rate, q)
                ),
            })
        } else {
            None
        };
        Ok(Priced {
            speed: EconomicSpeed {
                cutting_speed: v,
                spindle_speed: n,
                feed_speed,
                tool_life: life,
                cutting_time: t_c,
                parts_per_edge,
                time_per_part,
                cost_per_part,
            },
            whole,
            steps: steps.0,
        })
    }

    /// The best of the speeds a spindle has, every step tried through the whole cost function, and
    /// what it costs against the wanted speed. Equally good ones: the slowest.
    ///
    /// # Errors
    /// As [`Self::minimum_cost`]; problems of the drive.
    pub fn snapped(&self, drive: &Drive, aim: Aim) -> Result<Snapped> {
        Error::unless_empty(drive.problems_in(UnitSystem::Metric), ())?;
        let wanted = self.optimum(aim)?;
        let n = wanted.speed.spindle_speed.value;
        let mut tried = Vec::new();
        let mut failed = Vec::new();
        match drive {
            Drive::Continuous { lowest, highest } => {
                // Cost and time fall up to the optimum and rise behind it: the nearest speed is best.
                let near = n.max(lowest.value).min(highest.value);
                tried.push(if near == n {
                    wanted.clone()
                } else {
                    self.at_spindle_speed(si(near))?
                });
            }
            Drive::Stepped(steps) => {
                for step in steps {
                    match self.at_spindle_speed(*step) {
                        Ok(priced) => tried.push(priced),
                        Err(error) => failed.push(error),
                    }
                }
            }
        }
        let Some(chosen) = best(&tried, |priced| Some(priced.measure(aim))) else {
            return Err(failed
                .into_iter()
                .next()
                .unwrap_or_else(|| no_speed().into()));
        };
        let chosen_whole = best(&tried, |priced| priced.whole_measure(aim));
        let stepped = matches!(drive, Drive::Stepped(_));
        let speed = |priced: &&Priced| priced.speed.spindle_speed.value;
        let (low, high): (Vec<&Priced>, Vec<&Priced>) = tried
            .iter()
            .filter(|_| stepped)
            .partition(|priced| speed(priced) <= n);
        let (real, best) = (&chosen.speed, &wanted.speed);
        let (extra_cost, extra_time) = (
            real.cost_per_part - best.cost_per_part,
            real.time_per_part - best.time_per_part,
        );
        Ok(Snapped {
            aim,
            extra_cost,
            extra_cost_share: extra_cost / best.cost_per_part,
            extra_time,
            extra_time_share: extra_time / best.time_per_part,
            below: low.last().copied().cloned(),
            above: high.first().copied().cloned(),
            chosen_whole: chosen_whole.cloned(),
            chosen: chosen.clone(),
            left_out: failed.len(),
            wanted,
        })
    }
}

/// The first of those whose measure is least.
fn best(tried: &[Priced], measure: impl Fn(&Priced) -> Option<f64>) -> Option<&Priced> {
    let mut best: Option<(f64, &Priced)> = None;
    for priced in tried {
        if let Some(value) = measure(priced)
            && best.is_none_or(|(least, _)| value < least)
        {
            best = Some((value, priced));
        }
    }
    best.map(|(_, priced)| priced)
}

fn no_speed() -> Problem {
    Problem::new(
        Code::Missing,
        "speeds",
        "",
        "at least one step",
        "list the steps in rising order",
    )
}
