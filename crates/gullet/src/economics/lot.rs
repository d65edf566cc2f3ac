//! What a lot takes and costs, each share named.

use super::inputs::inputs;
use super::worked;
use crate::error::{Code, Error, Problem, Result};
use crate::formula::{Step, Steps, parameter_problems};
use crate::quantity::{Count, Kind, Money, Ratio, Time, UnitSystem, format, si};

inputs! {
    /// A lot: its set-up, what each part takes, and what that costs.
    ///
    /// An allowance is given as one of its two kinds, and so is learning. Hands learn, machines do
    /// not: learning shortens load and unload, tool changes and gauging, whose times are then those
    /// of the first part.
    ///
    /// ```
    /// use gullet::economics::LotCost;
    /// let lot = LotCost::from_text(
    ///     "lot_size=10; machine_rate=60 money/h; setup_time=30 min; handling_time=1 min; \
    ///      cutting_time=4 min; allowance_of_normal_time=20 %",
    /// )?;
    /// let price = lot.price()?;
    /// assert_eq!(price.time_per_part.value / 60.0, 9.0, "30/10 + 1 + 4 + 1 min");
    /// assert_eq!(price.lot_cost.value, 90.0);
    /// # Ok::<(), gullet::Error>(())
    /// ```
    LotCost ("lot_cost") {
        lot_size N: Count, from 1.0, "parts in the lot";
        machine_rate C_m: MoneyRate, from 0.0, "machine and operator, money per time";
        setup_time t_su: Time, from 0.0, default 0.0, "set-up time of the lot, allowances included";
        handling_time t_h: Time, from 0.0, default 0.0, "load and unload";
        cutting_time t_c: Time, from 0.0, "in the cut, a part";
        moving_time t_m: Time, from 0.0, default 0.0, "moves outside the cut, a part";
        change_time t_ch: Time, from 0.0, default 0.0, "time of one tool change";
        edge_cost C_e: Money, from 0.0, default 0.0, "cost of one cutting edge, regrinding included";
        parts_per_edge m: Ratio, above 0.0, default 1.0, "parts one edge makes, whole or as a mean";
        gauging_time t_k: Time, from 0.0, default 0.0, "time to gauge one part";
        gauged_every k: Count, from 1.0, default 1.0, "one part in so many is gauged";
        allowance_of_normal_time A_n: Ratio, from 0.0, default 0.0, "allowance as a share of the normal time";
        allowance_of_standard_time A_s: Ratio, from 0.0, below 1.0, default 0.0, "allowance as a share of the standard time";
        wright_rate r_w: Ratio, above 0.0, to 1.0, default 1.0, "learning rate of the cumulative average (Wright)";
        crawford_rate r_c: Ratio, above 0.0, to 1.0, default 1.0, "learning rate of the unit curve (Crawford)";
        material_cost k_w: Money, from 0.0, default 0.0, "material, a part";
    }
}

/// What an allowance is a share of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Allowance {
    /// No allowance.
    None,
    /// Of the normal time: standard = normal (1 + A).
    OfNormalTime(Ratio),
    /// Of the standard time, the working day: standard = normal/(1 - A).
    OfStandardTime(Ratio),
}

/// How hands get faster.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Learning {
    /// They do not.
    None,
    /// The mean of all units falls by the rate at every doubling: the cumulative average.
    Wright(Ratio),
    /// The time of a unit falls by the rate at every doubling: the unit curve.
    Crawford(Ratio),
}

/// A named share of a part's time and cost.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share {
    /// Its name, the same in every face.
    pub name: &'static str,
    /// What it is.
    pub meaning: &'static str,
    /// Time a part; 0 for what only costs.
    pub time: Time,
    /// Cost a part.
    pub cost: Money,
}

/// What a lot takes and costs.
#[derive(Clone)]
pub struct LotPrice {
    /// The inputs.
    pub inputs: LotCost,
    /// The shares of one part; added in this order they give the totals to the last bit.
    pub shares: [Share; 9],
    /// Normal time of one part, a mean over the lot.
    pub normal_time: Time,
    /// Standard time of one part: with the allowance, without the set-up.
    pub standard_time: Time,
    /// Time of one part with its share of the set-up.
    pub time_per_part: Time,
    /// Cost of one part.
    pub cost_per_part: Money,
    /// Time of the lot.
    pub lot_time: Time,
    /// Cost of the lot.
    pub lot_cost: Money,
    /// The formulas with their numbers, in order.
    pub steps: Vec<Step>,
}

impl LotCost {
    /// The allowance with its kind.
    pub fn allowance(&self) -> Allowance {
        if self.allowance_of_normal_time.value > 0.0 {
            Allowance::OfNormalTime(self.allowance_of_normal_time)
        } else if self.allowance_of_standard_time.value > 0.0 {
            Allowance::OfStandardTime(self.allowance_of_standard_time)
        } else {
            Allowance::None
        }
    }

    /// Learning with its curve.
    pub fn learning(&self) -> Learning {
        if self.wright_rate.value < 1.0 {
            Learning::Wright(self.wright_rate)
        } else if self.crawford_rate.value < 1.0 {
            Learning::Crawford(self.crawford_rate)
        } else {
            Learning::None
        }
    }

    /// The same lot with another number of parts.
    pub fn with_lot_size(self, lot_size: Count) -> LotCost {
        LotCost { lot_size, ..self }
    }

    /// Every problem of the fields.
    pub fn problems(&self) -> Vec<Problem> {
        self.problems_in(UnitSystem::Metric)
    }

    /// As [`Self::problems`], with the numbers in a shop's units.
    pub fn problems_in(&self, units: UnitSystem) -> Vec<Problem> {
        let mut problems = parameter_problems(LotCost::PARAMETERS, &self.si(), units);
        let show = |ratio: Ratio| format(Kind::Ratio, ratio.value, units);
        if self.allowance_of_normal_time.value > 0.0 && self.allowance_of_standard_time.value > 0.0
        {
            problems.push(Problem::new(
                Code::Inconsistent,
                "allowance_of_standard_time",
                show(self.allowance_of_standard_time),
                "0 where allowance_of_normal_time is given",
                "an allowance is a share of one of the two times: ask which, and give that one",
            ));
        }
        if self.wright_rate.value < 1.0 && self.crawford_rate.value < 1.0 {
            problems.push(Problem::new(
                Code::Inconsistent,
                "crawford_rate",
                show(self.crawford_rate),
                "1 where wright_rate is given",
                "a rate belongs to one of the two curves: ask which, and give that one",
            ));
        }
        problems
    }

    /// Mean time of a hand's work over the lot, from that on the first part.
    fn learnt(&self, steps: &mut Steps, first: Time) -> Result<Time> {
        let units = self.lot_size;
        if first.value == 0.0 {
            return Ok(first);
        }
        let total = match self.learning() {
            Learning::None => return Ok(first),
            Learning::Wright(rate) => worked!(
                steps,
                learning::learning_total_time_cumulative_average(first, rate, units)
            ),
            Learning::Crawford(rate) => worked!(
                steps,
                learning::learning_total_time_unit_curve(first, rate, units)
            ),
        };
        Ok(worked!(steps, learning::mean_unit_time(total, units)))
    }

    /// What the lot takes and costs.
    ///
    /// # Errors
    /// Every problem of the fields; a result that no number can hold.
    pub fn price(&self) -> Result<LotPrice> {
        self.price_in(UnitSystem::Metric)
    }

    /// As [`Self::price`], with the numbers of an error in a shop's units.
    ///
    /// # Errors
    /// As [`Self::price`].
    pub fn price_in(&self, units: UnitSystem) -> Result<LotPrice> {
        Error::unless_empty(self.problems_in(units), ())?;
        let mut steps = Steps::default();
        let log = &mut steps;
        let (n, rate) = (self.lot_size, self.machine_rate);
        let setup = worked!(log, lot::setup_time_per_part(self.setup_time, n));
        let handling = self.learnt(log, self.handling_time)?;
        let change = worked!(
            log,
            lot::change_time_per_part(self.change_time, self.parts_per_edge)
        );
        let change = self.learnt(log, change)?;
        let gauging = worked!(
            log,
            lot::gauging_time_per_part(self.gauging_time, self.gauged_every)
        );
        let gauging = self.learnt(log, gauging)?;
        let (cutting, moving) = (self.cutting_time, self.moving_time);
        let normal = worked!(
            log,
            lot::normal_time_per_part(handling, cutting, moving, change, gauging)
        );
        let standard = match self.allowance() {
            Allowance::None => normal,
            Allowance::OfNormalTime(share) => worked!(log, time::standard_time(normal, share)),
            Allowance::OfStandardTime(share) => {
                worked!(log, lot::standard_time_by_share_of_standard(normal, share))
            }
        };
        let allowance = worked!(log, lot::allowance_time(standard, normal));
        let time_per_part = worked!(
            log,
            lot::lot_time_per_part(setup, handling, cutting, moving, change, gauging, allowance)
        );
        let mut costs = [si(0.0); 7];
        let times = [setup, handling, cutting, moving, change, gauging, allowance];
        for (cost, time) in costs.iter_mut().zip(times) {
            *cost = worked!(log, lot::time_cost(time, rate));
        }
        let [k_s, k_h, k_c, k_m, k_ch, k_g, k_a] = costs;
        let edges = worked!(
            log,
            lot::edge_cost_per_part(self.edge_cost, self.parts_per_edge)
        );
        let material = self.material_cost;
        let cost_per_part = worked!(
            log,
            lot::lot_cost_per_part(k_s, k_h, k_c, k_m, k_ch, k_g, k_a, edges, material)
        );
        let lot_time = worked!(log, cost::lot_time(self.setup_time, standard, n));
        let lot_cost = worked!(log, lot::lot_cost(cost_per_part, n));
        let share = |name, meaning, time, cost| Share {
            name,
            meaning,
            time,
            cost,
        };
        Ok(LotPrice {
            inputs: *self,
            shares: [
                share("setup", "share of the set-up", setup, k_s),
                share("handling", "load and unload", handling, k_h),
                share("cutting", "in the cut", cutting, k_c),
                share("moving", "moves outside the cut", moving, k_m),
                share("tool_change", "share of tool changes", change, k_ch),
                share("gauging", "share of gauging", gauging, k_g),
                share("allowance", "needs, fatigue, delays", allowance, k_a),
                share("edges", "share of cutting edges", si(0.0), edges),
                share("material", "material", si(0.0), material),
            ],
            normal_time: normal,
            standard_time: standard,
            time_per_part,
            cost_per_part,
            lot_time,
            lot_cost,
            steps: steps.0,
        })
    }
}
