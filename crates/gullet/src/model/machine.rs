//! Machine tools: spindle, power, feed, dials and readout.

use super::{Check, HUGE};
use crate::error::{Code, Problem};
use crate::quantity::{
    Acceleration, Kind, Length, Power, Ratio, RotationalSpeed, Torque, UnitSystem, Velocity, si,
};

/// Spindle speeds that can be set.
#[derive(Debug, Clone, PartialEq)]
pub enum Drive {
    /// Any speed between two ends.
    Continuous {
        /// Lowest speed.
        lowest: RotationalSpeed,
        /// Highest speed.
        highest: RotationalSpeed,
    },
    /// The steps of pulleys or gears, in rising order.
    Stepped(Vec<RotationalSpeed>),
}

/// Table feeds that can be set.
#[derive(Debug, Clone, PartialEq)]
pub enum Feed {
    /// Any feed between two ends.
    Continuous {
        /// Lowest feed.
        lowest: Velocity,
        /// Highest feed.
        highest: Velocity,
    },
    /// The steps of a feed box, in rising order.
    Stepped(Vec<Velocity>),
    /// The steps of a feed box that is geared to the spindle, as on a lathe: feeds per revolution, in
    /// rising order.
    Geared(Vec<Length>),
    /// Cranked by hand; the pace is the practice's.
    Hand,
}

/// What shows the position.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Readout {
    /// Smallest step that is displayed.
    pub resolution: Length,
}

/// A machine tool.
#[derive(Debug, Clone, PartialEq)]
pub struct Machine {
    /// What the shop calls it.
    pub name: String,
    /// Spindle speeds.
    pub drive: Drive,
    /// Rated power of the spindle motor.
    pub motor_power: Power,
    /// Share of the motor's power that reaches the cutter.
    pub efficiency: Ratio,
    /// Spindle speed below which torque instead of power is constant; none where a belt or gear
    /// step carries the full power at every speed.
    pub base_speed: Option<RotationalSpeed>,
    /// Torque at which the drive slips or trips, where it is known.
    pub maximum_torque: Option<Torque>,
    /// Table feeds.
    pub feed: Feed,
    /// Travel of the table for one turn of its handwheel.
    pub travel_per_turn: Option<Length>,
    /// Travel of one graduation of the dial.
    pub graduation: Option<Length>,
    /// Position readout.
    pub readout: Option<Readout>,
    /// Lost motion between screw and nut; none or zero where it is taken up.
    pub backlash: Length,
    /// Rapid traverse; none where every move is cranked.
    pub rapid_speed: Option<Velocity>,
    /// Acceleration of the rapid traverse.
    pub acceleration: Option<Acceleration>,
    /// Where the data come from.
    pub origin: String,
}

impl Drive {
    /// Every problem of the speeds; empty where the drive can be computed with.
    pub fn problems_in(&self, units: UnitSystem) -> Vec<Problem> {
        let mut check = Check::new(units);
        self.look_at(&mut check);
        check.finish()
    }

    fn look_at(&self, check: &mut Check) {
        let speed = Kind::RotationalSpeed;
        match self {
            Drive::Continuous { lowest, highest } => {
                check.range(
                    "lowest_speed",
                    speed,
                    lowest.value,
                    0.0,
                    false,
                    1e5,
                    "give the lowest spindle speed",
                );
                check.range(
                    "highest_speed",
                    speed,
                    highest.value,
                    lowest.value,
                    true,
                    1e5,
                    "give the highest spindle speed, not below the lowest",
                );
            }
            Drive::Stepped(steps) => {
                check.rising("speeds", speed, steps.iter().map(|s| s.value), 1e5)
            }
        }
    }
}

impl Machine {
    /// The lowest and the highest spindle speed.
    pub fn speed_range(&self) -> (RotationalSpeed, RotationalSpeed) {
        match &self.drive {
            Drive::Continuous { lowest, highest } => (*lowest, *highest),
            Drive::Stepped(steps) => (
                steps.first().copied().unwrap_or(si(0.0)),
                steps.last().copied().unwrap_or(si(0.0)),
            ),
        }
    }

    /// The highest speed the machine has at or below `wanted`, to 1e-9; none below its lowest.
    pub fn speed_at_or_below(&self, wanted: RotationalSpeed) -> Option<RotationalSpeed> {
        let reach = wanted.value * (1.0 + 1e-9);
        match &self.drive {
            Drive::Continuous { lowest, highest } => (lowest.value <= reach)
                .then(|| si(wanted.value.min(highest.value).max(lowest.value))),
            Drive::Stepped(steps) => steps.iter().rev().find(|step| step.value <= reach).copied(),
        }
    }

    /// The highest feed the machine has at or below `wanted`; none below its lowest, and none where
    /// the feed is geared to the spindle, whose speed [`Machine::feed_at_speed`] takes.
    pub fn feed_at_or_below(&self, wanted: Velocity) -> Option<Velocity> {
        self.feed_at_speed(wanted, si(f64::NAN))
    }

    /// The highest feed the machine has at or below `wanted` while the spindle turns at a speed; none
    /// below its lowest.
    ///
    /// ```
    /// use gullet::model::Machine;
    /// use gullet::quantity::si;
    /// // 0.19 mm a revolution at 10 r/s: the feed box has 0.16 mm.
    /// let lathe = Machine::builtin("engine-lathe")?;
    /// let feed = lathe.feed_at_speed(si(1.9e-3), si(10.0));
    /// assert_eq!(feed, Some(si(1.6e-3)));
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn feed_at_speed(&self, wanted: Velocity, speed: RotationalSpeed) -> Option<Velocity> {
        let reach = wanted.value * (1.0 + 1e-9);
        match &self.feed {
            Feed::Geared(steps) => steps
                .iter()
                .map(|step| step.value * speed.value)
                .rev()
                .find(|feed| *feed <= reach)
                .map(si),
            Feed::Continuous { lowest, highest } => (lowest.value <= reach)
                .then(|| si(wanted.value.min(highest.value).max(lowest.value))),
            Feed::Stepped(steps) => steps.iter().rev().find(|step| step.value <= reach).copied(),
            Feed::Hand => wanted.value.is_finite().then_some(wanted),
        }
    }

    /// Smallest step a position can be set in: the readout's, else the dial's graduation.
    pub fn resolution(&self) -> Option<Length> {
        self.readout
            .map(|readout| readout.resolution)
            .or(self.graduation)
    }

    /// Every problem of the fields; empty where the machine can be computed with.
    pub fn problems(&self) -> Vec<Problem> {
        self.problems_in(UnitSystem::Metric)
    }

    /// As [`Self::problems`], with the numbers in a shop's units.
    pub fn problems_in(&self, units: UnitSystem) -> Vec<Problem> {
        let mut check = Check::new(units);
        let speed = Kind::RotationalSpeed;
        self.drive.look_at(&mut check);
        check.range(
            "motor_power",
            Kind::Power,
            self.motor_power.value,
            0.0,
            false,
            1e7,
            "read it off the motor's plate",
        );
        check.range(
            "efficiency",
            Kind::Ratio,
            self.efficiency.value,
            0.0,
            false,
            1.0,
            "write 80 % or 0.8: the share of the motor's power that reaches the cutter",
        );
        if let Some(base) = self.base_speed {
            check.range(
                "base_speed",
                speed,
                base.value,
                0.0,
                false,
                1e5,
                "leave it out for a belt or gear drive",
            );
        }
        if let Some(torque) = self.maximum_torque {
            check.range(
                "maximum_torque",
                Kind::Torque,
                torque.value,
                0.0,
                false,
                1e6,
                "leave it out where it is not known",
            );
        }
        let velocity = Kind::Velocity;
        match &self.feed {
            Feed::Continuous { lowest, highest } => {
                check.range(
                    "lowest_feed",
                    velocity,
                    lowest.value,
                    0.0,
                    true,
                    10.0,
                    "give the lowest table feed",
                );
                check.range(
                    "highest_feed",
                    velocity,
                    highest.value,
                    lowest.value.max(f64::MIN_POSITIVE),
                    true,
                    10.0,
                    "give the highest table feed, not below the lowest",
                );
            }
            Feed::Stepped(steps) => {
                check.rising("feeds", velocity, steps.iter().map(|s| s.value), 10.0)
            }
            Feed::Geared(steps) => check.rising(
                "feeds_per_rev",
                Kind::Length,
                steps.iter().map(|s| s.value),
                1.0,
            ),
            Feed::Hand => {
                if self.travel_per_turn.is_none() {
                    check.problems.push(Problem::new(
                        Code::Missing,
                        "travel_per_turn",
                        "",
                        "above 0 mm",
                        "a hand-cranked table needs the travel for one turn of its handwheel",
                    ));
                }
            }
        }
        for (name, value) in [
            ("travel_per_turn", self.travel_per_turn),
            ("graduation", self.graduation),
        ] {
            if let Some(value) = value {
                check.range(
                    name,
                    Kind::Length,
                    value.value,
                    0.0,
                    false,
                    1.0,
                    "read it off the dial",
                );
            }
        }
        if let Some(readout) = self.readout {
            check.range(
                "readout_resolution",
                Kind::Length,
                readout.resolution.value,
                1e-9,
                true,
                1e-2,
                "the smallest step the display shows",
            );
        }
        check.range(
            "backlash",
            Kind::Length,
            self.backlash.value,
            0.0,
            true,
            0.1,
            "give 0 mm where it is taken up",
        );
        if let Some(rapid) = self.rapid_speed {
            check.range(
                "rapid_speed",
                velocity,
                rapid.value,
                0.0,
                false,
                10.0,
                "leave it out where every move is cranked",
            );
        }
        if let Some(acceleration) = self.acceleration {
            check.range(
                "acceleration",
                Kind::Acceleration,
                acceleration.value,
                0.0,
                false,
                HUGE,
                "leave it out where it is not known",
            );
        }
        check.finish()
    }
}

impl Check {
    /// Steps must be positive and rise.
    fn rising(&mut self, name: &str, kind: Kind, values: impl Iterator<Item = f64>, high: f64) {
        let mut last = 0.0;
        let mut any = false;
        for value in values {
            any = true;
            self.range(
                name,
                kind,
                value,
                last,
                false,
                high,
                "list the steps in rising order, each once",
            );
            last = if value.is_finite() { value } else { last };
        }
        if !any {
            self.problems.push(Problem::new(
                Code::Missing,
                name,
                "",
                "at least one step",
                "list the steps in rising order",
            ));
        }
    }
}
