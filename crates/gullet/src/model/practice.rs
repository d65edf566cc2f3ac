//! What a shop allows itself: caps, factors and habits.
//!
//! The numbers of the built-in practices are common practice, no source, unless a field says
//! otherwise.

use super::Check;
use crate::error::{Problem, Result, unknown_name};
use crate::quantity::{Kind, Length, Ratio, RotationalSpeed, Time, UnitSystem, si};
use crate::table::Iso513;
use std::sync::OnceLock;

/// Which value of a table's range a cut starts from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SpeedChoice {
    /// The low end: light machines, beginners.
    Low,
    /// The starting value.
    Start,
}

/// What a pass is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PassKind {
    /// Takes stock away.
    Roughing,
    /// Leaves the surface.
    Finishing,
}

impl PassKind {
    /// Both kinds.
    pub const ALL: &'static [PassKind] = &[PassKind::Roughing, PassKind::Finishing];

    /// The word cards print.
    pub fn name(self) -> &'static str {
        match self {
            PassKind::Roughing => "roughing",
            PassKind::Finishing => "finishing",
        }
    }
}

/// Which way the teeth meet the feed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Direction {
    /// Up milling: teeth run against the feed; the chip starts thin.
    Conventional,
    /// Down milling: teeth run with the feed; the chip starts thick and pulls at the table.
    Climb,
}

impl Direction {
    /// Both directions.
    pub const ALL: &'static [Direction] = &[Direction::Conventional, Direction::Climb];

    /// The word cards print.
    pub fn name(self) -> &'static str {
        match self {
            Direction::Conventional => "conventional",
            Direction::Climb => "climb",
        }
    }
}

/// Largest roughing depth of a pass over the cutter's diameter, by ISO 513 group of the work.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DepthRatios {
    /// Steel.
    pub p: f64,
    /// Stainless steel.
    pub m: f64,
    /// Cast iron.
    pub k: f64,
    /// Non-ferrous metal.
    pub n: f64,
    /// Superalloy and titanium.
    pub s: f64,
    /// Hardened material.
    pub h: f64,
}

/// A shop's practice.
#[derive(Debug, Clone, PartialEq)]
pub struct Practice {
    /// What the shop calls it.
    pub name: String,
    /// End of the speed table a cut starts from.
    pub speed_choice: SpeedChoice,
    /// Factor on the table's cutting speed.
    pub speed_factor: Ratio,
    /// Factor on the table's feed per tooth.
    pub feed_factor: Ratio,
    /// Largest factor by which radial chip thinning may raise the feed per tooth.
    pub thinning_cap: Ratio,
    /// Smallest largest-chip-thickness that still cuts instead of rubbing.
    pub smallest_chip: Length,
    /// Largest roughing depth of a pass over the diameter.
    pub roughing_depth: DepthRatios,
    /// Stock left for the finishing pass.
    pub finish_allowance: Length,
    /// Thinnest pass that still cuts instead of rubbing.
    pub smallest_depth: Length,
    /// Largest deflection of the cutter's tip in a roughing pass.
    pub roughing_deflection: Length,
    /// Largest deflection of the cutter's tip in a finishing pass.
    pub finishing_deflection: Length,
    /// Largest share of the available power and torque that is used.
    pub power_share: Ratio,
    /// Safety factor of the clamping, on the peak force.
    pub holding_safety: Ratio,
    /// Factor on forces for a worn edge, in limit checks.
    pub wear_factor: Ratio,
    /// Radial over tangential force.
    pub radial_force_ratio: Ratio,
    /// Smallest grip of the jaws over the height of the part.
    pub smallest_grip: Ratio,
    /// Largest stick-out over the cutter's diameter.
    pub stick_out_ratio: Ratio,
    /// Fastest pace at which a handwheel is turned for a cut.
    pub handwheel_pace: RotationalSpeed,
    /// Fastest pace at which a handwheel is turned to return.
    pub handwheel_return_pace: RotationalSpeed,
    /// Clearance before and behind the cut.
    pub clearance: Length,
    /// Time to set, measure and clear chips, a pass.
    pub handling_per_pass: Time,
    /// Widest strip over the cutter's diameter, where a face is wider than the cutter.
    pub strip_width: Ratio,
    /// Distance kept between cutter and jaws.
    pub jaw_clearance: Length,
    /// Time to make machine and vise ready, once.
    pub setup_time: Time,
    /// Time to clean, seat and clamp the work, a clamping.
    pub clamping_time: Time,
    /// Time to measure the work after a clamping.
    pub measuring_time: Time,
    /// Time to deburr the work after a clamping.
    pub deburring_time: Time,
    /// Direction of a roughing pass.
    pub roughing_direction: Direction,
    /// Direction of a finishing pass.
    pub finishing_direction: Direction,
    /// Largest depth of a climb cut on a table with backlash.
    pub climb_depth_with_backlash: Length,
    /// Where the numbers come from.
    pub origin: String,
}

impl Practice {
    /// Names of the built-in practices.
    pub const BUILTIN: &'static [&'static str] = &["training", "experienced"];

    /// The built-in practice of this name.
    ///
    /// ```
    /// let training = gullet::model::Practice::builtin("training")?;
    /// assert_eq!(training.holding_safety.value, 2.0);
    /// assert!(gullet::model::Practice::builtin("traning").is_err());
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn builtin(name: &str) -> Result<Practice> {
        match name {
            "training" => Ok(Practice::training()),
            "experienced" => Ok(Practice::experienced()),
            _ => Err(unknown_name("practice", name, Practice::BUILTIN.iter().copied()).into()),
        }
    }

    /// The built-in practices, in the order of [`Practice::BUILTIN`].
    ///
    /// ```
    /// use gullet::model::Practice;
    /// assert_eq!(Practice::all_builtin()[0], Practice::builtin("training")?);
    /// assert_eq!(Practice::all_builtin().len(), Practice::BUILTIN.len());
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn all_builtin() -> &'static [Practice] {
        static ALL: OnceLock<Vec<Practice>> = OnceLock::new();
        ALL.get_or_init(|| {
            let names = Practice::BUILTIN.iter();
            names
                .filter_map(|name| Practice::builtin(name).ok())
                .collect()
        })
    }

    /// For people who learn: the low end of the tables less a fifth, light passes, a hand that
    /// follows. A half-inch cutter roughs aluminium at no more than 0.100 in a pass and leaves
    /// 0.010 in for the finishing pass, in climb.
    fn training() -> Practice {
        const INCH: f64 = 0.0254;
        Practice {
            name: "training".to_owned(),
            speed_choice: SpeedChoice::Low,
            speed_factor: si(0.8),
            feed_factor: si(0.8),
            thinning_cap: si(2.0),
            smallest_chip: si(0.01e-3),
            roughing_depth: DepthRatios {
                p: 0.08,
                m: 0.06,
                k: 0.08,
                n: 0.2,
                s: 0.04,
                h: 0.01,
            },
            finish_allowance: si(0.010 * INCH),
            smallest_depth: si(0.005 * INCH),
            roughing_deflection: si(0.05e-3),
            finishing_deflection: si(0.02e-3),
            power_share: si(0.8),
            holding_safety: si(2.0),
            wear_factor: si(1.3),
            radial_force_ratio: si(0.3),
            smallest_grip: si(1.0 / 3.0),
            stick_out_ratio: si(4.0),
            handwheel_pace: si(1.0),
            handwheel_return_pace: si(2.0),
            clearance: si(0.1 * INCH),
            handling_per_pass: si(60.0),
            strip_width: si(0.75),
            jaw_clearance: si(0.125 * INCH),
            setup_time: si(900.0),
            clamping_time: si(180.0),
            measuring_time: si(60.0),
            deburring_time: si(60.0),
            roughing_direction: Direction::Conventional,
            finishing_direction: Direction::Climb,
            climb_depth_with_backlash: si(0.010 * INCH),
            origin: "common practice, no source".to_owned(),
        }
    }

    /// For people who know the machine: the tables' starting values, deeper passes.
    fn experienced() -> Practice {
        Practice {
            name: "experienced".to_owned(),
            speed_choice: SpeedChoice::Start,
            speed_factor: si(1.0),
            feed_factor: si(1.0),
            thinning_cap: si(4.0),
            roughing_depth: DepthRatios {
                p: 0.5,
                m: 0.3,
                k: 0.5,
                n: 1.0,
                s: 0.2,
                h: 0.05,
            },
            power_share: si(0.9),
            handling_per_pass: si(20.0),
            setup_time: si(300.0),
            clamping_time: si(50.0),
            measuring_time: si(20.0),
            deburring_time: si(20.0),
            handwheel_pace: si(1.5),
            handwheel_return_pace: si(3.0),
            roughing_direction: Direction::Conventional,
            ..Practice::training()
        }
    }

    /// Largest roughing depth over the diameter for work of this group.
    pub fn depth_ratio(&self, group: Iso513) -> Ratio {
        si(match group {
            Iso513::P => self.roughing_depth.p,
            Iso513::M => self.roughing_depth.m,
            Iso513::K => self.roughing_depth.k,
            Iso513::N => self.roughing_depth.n,
            Iso513::S => self.roughing_depth.s,
            Iso513::H => self.roughing_depth.h,
        })
    }

    /// Direction of a pass of this kind.
    pub fn direction(&self, pass: PassKind) -> Direction {
        match pass {
            PassKind::Roughing => self.roughing_direction,
            PassKind::Finishing => self.finishing_direction,
        }
    }

    /// Direction of a pass of this depth on a table with this backlash: a climb cut that is too deep
    /// for the backlash turns conventional.
    pub fn direction_with_backlash(
        &self,
        pass: PassKind,
        depth: Length,
        backlash: Length,
    ) -> Direction {
        let deep = depth.value > self.climb_depth_with_backlash.value * (1.0 + 1e-9);
        match self.direction(pass) {
            Direction::Climb if backlash.value > 0.0 && deep => Direction::Conventional,
            wanted => wanted,
        }
    }

    /// Largest deflection in a pass of this kind.
    pub fn deflection(&self, pass: PassKind) -> Length {
        match pass {
            PassKind::Roughing => self.roughing_deflection,
            PassKind::Finishing => self.finishing_deflection,
        }
    }

    /// Every problem of the fields.
    pub fn problems(&self) -> Vec<Problem> {
        self.problems_in(UnitSystem::Metric)
    }

    /// As [`Self::problems`], with the numbers in a shop's units.
    pub fn problems_in(&self, units: UnitSystem) -> Vec<Problem> {
        let mut check = Check::new(units);
        let ratio = Kind::Ratio;
        let length = Kind::Length;
        for (name, value, low, high) in [
            ("speed_factor", self.speed_factor.value, 0.05, 3.0),
            ("feed_factor", self.feed_factor.value, 0.05, 3.0),
            ("thinning_cap", self.thinning_cap.value, 1.0, 20.0),
            ("roughing_depth_p", self.roughing_depth.p, 0.001, 10.0),
            ("roughing_depth_m", self.roughing_depth.m, 0.001, 10.0),
            ("roughing_depth_k", self.roughing_depth.k, 0.001, 10.0),
            ("roughing_depth_n", self.roughing_depth.n, 0.001, 10.0),
            ("roughing_depth_s", self.roughing_depth.s, 0.001, 10.0),
            ("roughing_depth_h", self.roughing_depth.h, 0.001, 10.0),
            ("power_share", self.power_share.value, 0.05, 1.0),
            ("holding_safety", self.holding_safety.value, 1.0, 20.0),
            ("wear_factor", self.wear_factor.value, 1.0, 5.0),
            (
                "radial_force_ratio",
                self.radial_force_ratio.value,
                0.0,
                2.0,
            ),
            ("smallest_grip", self.smallest_grip.value, 0.0, 1.0),
            ("stick_out_ratio", self.stick_out_ratio.value, 0.5, 50.0),
            ("strip_width", self.strip_width.value, 0.05, 1.0),
        ] {
            check.range(
                name,
                ratio,
                value,
                low,
                true,
                high,
                "a built-in practice shows usual values",
            );
        }
        for (name, value, low, high) in [
            ("smallest_chip", self.smallest_chip.value, 1e-7, 1e-3),
            ("finish_allowance", self.finish_allowance.value, 0.0, 0.02),
            ("smallest_depth", self.smallest_depth.value, 1e-6, 0.01),
            (
                "roughing_deflection",
                self.roughing_deflection.value,
                1e-7,
                0.01,
            ),
            (
                "finishing_deflection",
                self.finishing_deflection.value,
                1e-7,
                0.01,
            ),
            ("clearance", self.clearance.value, 0.0, 1.0),
            ("jaw_clearance", self.jaw_clearance.value, 0.0, 0.1),
            (
                "climb_depth_with_backlash",
                self.climb_depth_with_backlash.value,
                0.0,
                0.1,
            ),
        ] {
            check.range(
                name,
                length,
                value,
                low,
                true,
                high,
                "a built-in practice shows usual values",
            );
        }
        for (name, value) in [
            ("handwheel_pace", self.handwheel_pace),
            ("handwheel_return_pace", self.handwheel_return_pace),
        ] {
            check.range(
                name,
                Kind::RotationalSpeed,
                value.value,
                0.0,
                false,
                10.0,
                "turns a hand can hold, such as 60 rpm",
            );
        }
        for (name, value, remedy) in [
            (
                "handling_per_pass",
                self.handling_per_pass,
                "time to set and measure",
            ),
            ("setup_time", self.setup_time, "time to make ready"),
            (
                "clamping_time",
                self.clamping_time,
                "time to seat and clamp",
            ),
            ("measuring_time", self.measuring_time, "time to measure"),
            ("deburring_time", self.deburring_time, "time to deburr"),
        ] {
            check.range(name, Kind::Time, value.value, 0.0, true, 86_400.0, remedy);
        }
        check.finish()
    }
}
