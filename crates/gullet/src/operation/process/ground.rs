//! What tables, machine and practice say to an operation: numbers that are the same whatever is cut.

use crate::model::{Drive, Feed, Machine, Practice};
use crate::operation::cut::Log;
use crate::operation::inputs;
use crate::operation::lanes::lanes;
use crate::operation::loads;
use crate::operation::numbers::{Inputs, Pair, one};
use crate::quantity::math::select;
use crate::quantity::{Length, Power, Pressure, Ratio, RotationalSpeed, Torque, si};
use crate::table::{Grounds, Material};

lanes! {
    /// Numbers of tables, machine and practice; NaN where nothing is known.
    Ground, GroundBlock {
        lowest_speed: RotationalSpeed,
        highest_speed: RotationalSpeed,
        motor_power: Power,
        efficiency: Ratio,
        base_speed: RotationalSpeed,
        /// Infinite where none is known.
        maximum_torque: Torque,
        lowest_feed: Velocity,
        highest_feed: Velocity,
        /// Ends of a feed box that is geared to the spindle; 0 and infinite elsewhere.
        lowest_geared: Length,
        highest_geared: Length,
        /// 1 where the spindle has steps, and cannot hold a cutting speed.
        stepped: Ratio,
        /// 1 where the table is cranked by hand.
        by_hand: Ratio,
        travel_per_turn: Length,
        speed_factor: Ratio,
        feed_factor: Ratio,
        thinning_cap: Ratio,
        smallest_chip: Length,
        power_share: Ratio,
        wear_factor: Ratio,
        radial_force_ratio: Ratio,
        safety: Ratio,
        roughing_deflection: Length,
        finishing_deflection: Length,
        clearance: Length,
        stick_out_ratio: Ratio,
        smallest_grip: Ratio,
        /// Infinite where every move is cranked.
        rapid_speed: Velocity,
        acceleration: Acceleration,
        speed_low: Velocity,
        speed_start: Velocity,
        speed_high: Velocity,
        speed_chosen: Velocity,
        feed_low: Length,
        feed_start: Length,
        feed_high: Length,
        /// Areas that a saw cuts per time.
        area_rate_low: AreaRate,
        area_rate_high: AreaRate,
        /// Young's modulus of the work.
        work_modulus: Pressure,
        kc11_a: Pressure,
        kc11_b: Pressure,
        kc11_c: Pressure,
        kc11_d: Pressure,
        exponent_a: Ratio,
        exponent_b: Ratio,
        exponent_c: Ratio,
        exponent_d: Ratio,
        /// 1 where a value of the tables rests on something assumed.
        assumed: Ratio,
    }
}

/// A specific cutting force with the exponent it comes from.
#[derive(Clone, Copy)]
pub(crate) struct Worst {
    pub k: Pressure,
    pub exponent: Ratio,
}

impl Ground {
    /// The numbers of a material under a tool on a machine; those of the feed depend on the size.
    pub(crate) fn new(
        material: &Material,
        machine: &Machine,
        practice: &Practice,
        grounds: &Grounds,
    ) -> Ground {
        let from = inputs::without_tool(material, machine, practice, grounds);
        let nan = Ground::every(f64::NAN);
        let [a, b, c, d] = from.pairs();
        let (lowest_geared, highest_geared) = match &machine.feed {
            Feed::Geared(steps) => (steps.first().copied(), steps.last().copied()),
            _ => (None, None),
        };
        let Inputs {
            lowest_speed,
            highest_speed,
            motor_power,
            efficiency,
            base_speed,
            maximum_torque,
            lowest_feed,
            highest_feed,
            travel_per_turn,
            speed_factor,
            feed_factor,
            thinning_cap,
            smallest_chip,
            power_share,
            wear_factor,
            radial_force_ratio,
            safety,
            clearance,
            stick_out_ratio,
            smallest_grip,
            speed_low,
            speed_start,
            speed_high,
            speed_chosen,
            assumed,
            ..
        } = from;
        Ground {
            lowest_speed,
            highest_speed,
            motor_power,
            efficiency,
            base_speed,
            maximum_torque,
            lowest_feed,
            highest_feed,
            travel_per_turn,
            speed_factor,
            feed_factor,
            thinning_cap,
            smallest_chip,
            power_share,
            wear_factor,
            radial_force_ratio,
            safety,
            clearance,
            stick_out_ratio,
            smallest_grip,
            speed_low,
            speed_start,
            speed_high,
            speed_chosen,
            assumed,
            stepped: si(f64::from(u8::from(matches!(
                machine.drive,
                Drive::Stepped(_)
            )))),
            by_hand: si(f64::from(u8::from(machine.feed == Feed::Hand))),
            lowest_geared: lowest_geared.unwrap_or(si(0.0)),
            highest_geared: highest_geared.unwrap_or(si(f64::INFINITY)),
            roughing_deflection: practice.roughing_deflection,
            finishing_deflection: practice.finishing_deflection,
            rapid_speed: machine.rapid_speed.unwrap_or(si(f64::INFINITY)),
            acceleration: machine.acceleration.unwrap_or(si(f64::INFINITY)),
            kc11_a: a.kc11,
            kc11_b: b.kc11,
            kc11_c: c.kc11,
            kc11_d: d.kc11,
            exponent_a: a.exponent,
            exponent_b: b.exponent,
            exponent_c: c.exponent,
            exponent_d: d.exponent,
            work_modulus: material.youngs_modulus.unwrap_or(si(f64::NAN)),
            area_rate_low: grounds.area_rate.map_or(si(f64::NAN), |rate| rate.0),
            area_rate_high: grounds.area_rate.map_or(si(f64::NAN), |rate| rate.1),
            ..nan
        }
    }

    /// The pairs that limits are checked with, the material's own first.
    #[inline(always)]
    pub(crate) fn pairs(&self) -> [Pair; 4] {
        let pair = |kc11, exponent| Pair { kc11, exponent };
        [
            pair(self.kc11_a, self.exponent_a),
            pair(self.kc11_b, self.exponent_b),
            pair(self.kc11_c, self.exponent_c),
            pair(self.kc11_d, self.exponent_d),
        ]
    }

    /// Specific cutting force of the material's own pair, sharp edge, with a factor of the operation.
    #[inline(always)]
    pub(crate) fn own_force(&self, log: &mut impl Log, h: Length, factor: Ratio) -> Pressure {
        let [own, ..] = self.pairs();
        loads::k_c(log, own, h, factor)
    }

    /// The highest specific cutting force of all pairs at a chip thickness, with a worn edge and a
    /// factor of the operation; recorded is the pair that gives it.
    #[inline(always)]
    pub(crate) fn worst_force(&self, log: &mut impl Log, h: Length, factor: Ratio) -> Worst {
        let silent = &mut crate::formula::NoRecord;
        let factor = factor * self.wear_factor;
        let [a, b, c, d] = self.pairs();
        let mut worst = (a, loads::k_c(silent, a, h, factor));
        worst = higher(worst, (b, loads::k_c(silent, b, h, factor)));
        worst = higher(worst, (c, loads::k_c(silent, c, h, factor)));
        worst = higher(worst, (d, loads::k_c(silent, d, h, factor)));
        if log.records() {
            log.choose(crate::quantity::Kind::Pressure, worst.0.kc11.value, || {
                "for limits the pair with the highest force, with a worn edge".to_owned()
            });
            loads::k_c(log, worst.0, h, factor);
        }
        Worst {
            k: worst.1,
            exponent: worst.0.exponent,
        }
    }

    /// Highest and lowest specific cutting force of the material's own pairs over that of the default
    /// one, at a chip thickness.
    #[inline(always)]
    pub(crate) fn force_band(&self, h: Length) -> (Ratio, Ratio) {
        let silent = &mut crate::formula::NoRecord;
        let [a, b, c, _] = self.pairs();
        let own = loads::k_c(silent, a, h, one());
        let b = loads::k_c(silent, b, h, one()) / own;
        let c = loads::k_c(silent, c, h, one()) / own;
        let low = crate::quantity::math::min(one(), crate::quantity::math::min(b, c));
        let high = crate::quantity::math::max(one(), crate::quantity::math::max(b, c));
        (low, high)
    }

    /// Power and torque the machine gives at a speed, within the practice's share.
    #[inline(always)]
    pub(crate) fn available(&self, log: &mut impl Log, n: RotationalSpeed) -> (Power, Torque) {
        loads::available_at(
            log,
            self.motor_power,
            self.efficiency,
            self.power_share,
            self.base_speed,
            self.maximum_torque,
            n,
        )
    }
}

#[inline(always)]
fn higher(a: (Pair, Pressure), b: (Pair, Pressure)) -> (Pair, Pressure) {
    let other = b.1.value > a.1.value;
    (
        Pair {
            kc11: select(other, b.0.kc11, a.0.kc11),
            exponent: select(other, b.0.exponent, a.0.exponent),
        },
        select(other, b.1, a.1),
    )
}
