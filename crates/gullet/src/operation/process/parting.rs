//! Parting off with a blade, and grooves of its width.

use super::define::process;
use super::ground::Ground;
use super::lathe::{GRIP_ORIGIN, GRIP_REMEDY, Hold, clamp, constant_speed_doubts, holds_speed};
use super::limits::{Doubt, Eye, Look};
use super::pick::pick;
use super::{Loads, Operate, Start};
use crate::formula::turning as formula;
use crate::formula::{force, power, practice, removal, rotation, time};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{max, min, number};
use crate::quantity::{Length, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    Parting "parting", "Parting";
    meaning "A bar or a tube parted off with a blade on a lathe.";
    tables Some(TableProcess::Turning);
    inputs {
        outer_diameter D_1: Length, above 0.0, to 2.0, "diameter where the cut starts";
        inner_diameter D_2: Length, from 0.0, below outer_diameter, default 0.0, "diameter where the cut ends: the bore of a tube, the floor of a groove, 0 for a solid bar";
        blade_width w: Length, above 0.0, to 0.05, "width of the blade";
        overhang l_c: Length, above 0.0, to 1.0, "overhang of the blade from its holder";
        feed_per_rev f: Length, above 0.0, to 1e-3, default 0.08e-3, "feed per revolution to start from: 0.08 mm is common practice, no source";
        slow_diameter D_s: Length, from 0.0, to 2.0, default 5e-3, "diameter below which the feed is halved: 5 mm is common practice, no source";
        static_grip F_0: Force, above 0.0, to 1e7, default f64::INFINITY, "sum of the jaw forces of the chuck at rest";
        jaw_friction mu: Ratio, above 0.0, to 1.0, default 0.15, "friction between jaw and work: 0.15 for smooth steel, from memory";
    }
    choices {
        drive: ["fixed-speed", "constant-speed"], 0.0, "one spindle speed, or a spindle that holds the cutting speed up to its largest speed";
    }
    results {
        wall: Length, "Way of the blade, on the radius.";
        removal_rate: VolumeRate, "Removal rate at the outer diameter.";
        cutting_force: Force, "Cutting force, default pair, sharp edge.";
        torque: Torque, "Torque at the outer diameter, default pair, sharp edge.";
        cutting_power: Power, "Power at the outer diameter, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        limit_torque: Torque, "Torque that limits are checked with.";
        limit_power: Power, "Power that limits are checked with.";
        static_grip_needed: Force, "Sum of the jaw forces at rest that the cut needs, at the outer diameter or where the spindle turns fastest.";
        overhang_ratio: Ratio, "Overhang of the blade over its width.";
        speed_at_end: RotationalSpeed, "Spindle speed where the cut ends.";
        parting_time: Time, "Time from the outer to the inner diameter.";
        time: Time, "Time of the cut with its clearance.";
    }
    example "1018", UncoatedCarbide, "engine-lathe", "outer_diameter=30 mm; blade_width=3 mm; overhang=20 mm; static_grip=40 kN; maximum_speed=3000 rpm";
    limits [ChuckGrip, Overhang, DepthOfCut];
    cautions [
        "The part drops when it parts. Never catch it by hand: let it fall on a tray, or stop short and saw it through.",
        "Set the blade square and to the height of the axis, as short as the work allows; part near the jaws.",
        "Never part work that a centre holds: it jams the blade when it comes off.",
        "Keep the feed up: a blade that rubs chatters, digs in and breaks.",
    ];
}

/// Parting runs at half to two thirds of the speed of turning (common practice, no source).
const SLOWER: f64 = 0.6;
/// Feed near the centre over the feed (common practice, no source).
const SLOW_SHARE: f64 = 0.5;
/// Overhang of a blade over its width (common practice, no source).
const OVERHANG: f64 = 8.0;

impl Own {
    /// Diameter at which the feed is halved, within the cut.
    #[inline(always)]
    fn slow_from(&self) -> Length {
        max(
            min(self.slow_diameter, self.outer_diameter),
            self.inner_diameter,
        )
    }
}

impl Operate for Parting {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.outer_diameter, own.blade_width)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let slower = ground.speed_factor * number(SLOWER);
        let feed =
            practice::practice_feed_per_tooth::step(log, own.feed_per_rev, ground.feed_factor);
        Start {
            diameter: own.outer_diameter,
            cutting_speed: practice::practice_cutting_speed::step(log, ground.speed_chosen, slower),
            highest_speed: si(f64::INFINITY),
            feed,
            least_feed: min(ground.smallest_chip, feed / 2.0),
            feeds_per_rev: one(),
        }
    }

    #[inline(always)]
    fn evaluate(
        log: &mut impl Log,
        own: &Own,
        ground: &Ground,
        n: RotationalSpeed,
        f: Length,
    ) -> (Results, Loads) {
        let (outer, inner, w) = (own.outer_diameter, own.inner_diameter, own.blade_width);
        let wall = formula::depth_of_cut_from_diameters::step(log, outer, inner);
        // The edge is as wide as the blade and stands across the feed: h = f, b = w.
        let k = ground.own_force(log, f, one());
        let cutting_force = force::chip_section_force::step(log, k, f, w);
        let v_c = rotation::cutting_speed::value(n, outer);
        let removal_rate = removal::turning_removal_rate::step(log, v_c, f, w);
        let torque = formula::turning_torque::step(log, cutting_force, outer);
        let cutting_power = power::cutting_power::step(log, removal_rate, k);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        let worst = ground.worst_force(log, f, one());
        let highest = force::chip_section_force::step(log, worst.k, f, w);
        let limit_torque = formula::turning_torque::step(log, highest, outer);
        let limit_power = power::cutting_power::step(log, removal_rate, worst.k);
        let hold = Hold {
            force: highest,
            diameter: outer,
            friction: own.jaw_friction,
            marked: own.maximum_speed,
        };
        let grip_outside = hold.grip_at_rest(log, ground, outer, n);
        let clamped = max(clamp(ground, own.maximum_speed), n);
        let slow = own.slow_from();
        let speed_at_end = pick(
            log,
            holds_speed(own.drive, ground),
            |log| {
                let knee = formula::constant_speed_knee_diameter::step(log, v_c, clamped);
                rotation::spindle_speed::step(log, v_c, max(knee, inner))
            },
            |_| n,
        );
        let static_grip_needed = pick(
            log,
            holds_speed(own.drive, ground),
            |log| {
                let knee = formula::constant_speed_knee_diameter::value(v_c, clamped);
                let end = max(knee, inner);
                let grip_at_end = hold.grip_at_rest(log, ground, end, speed_at_end);
                max(grip_outside, grip_at_end)
            },
            |_| grip_outside,
        );
        let parting_time = pick(
            log,
            holds_speed(own.drive, ground),
            |log| {
                formula::parting_time::step(
                    log,
                    outer,
                    inner,
                    slow,
                    v_c,
                    f,
                    clamped,
                    number(SLOW_SHARE),
                )
            },
            |log| {
                let fixed = formula::facing_time_fixed_speed::step;
                let full = fixed(log, outer, slow, f, n);
                full + fixed(log, slow, inner, f * SLOW_SHARE, n)
            },
        );
        let feed_speed = rotation::feed_rate::value(f, n);
        let approach = time::cutting_time::step(log, ground.clearance, feed_speed);
        let time = parting_time + approach;
        let results = Results {
            wall,
            removal_rate,
            cutting_force,
            torque,
            cutting_power,
            motor_power,
            limit_torque,
            limit_power,
            static_grip_needed,
            overhang_ratio: own.overhang / w,
            speed_at_end,
            parting_time,
            time,
        };
        let loads = Loads {
            limit_power,
            limit_torque,
            exponent: one() - worst.exponent,
            chip: f,
            force: cutting_force,
            power: cutting_power,
            time,
        };
        (results, loads)
    }

    #[inline(always)]
    fn limits(
        own: &Own,
        _ground: &Ground,
        _feed: Length,
        results: &Results,
        loads: &Loads,
        eye: &mut impl Eye,
    ) {
        eye.look(
            Look::most(
                LimitName::ChuckGrip,
                results.static_grip_needed.value,
                own.static_grip.value,
            )
            .only(own.static_grip.value < f64::INFINITY)
            .with_feed(loads.exponent)
            .from(GRIP_ORIGIN)
            .change(GRIP_REMEDY),
        );
        eye.look(
            Look::most(LimitName::Overhang, results.overhang_ratio.value, OVERHANG)
                .from("common practice, no source: 8 widths of a blade")
                .change("take a wider blade, or set it shorter"),
        );
        eye.look(
            Look::most(
                LimitName::DepthOfCut,
                results.wall.value,
                own.overhang.value,
            )
            .from("overhang of the blade")
            .change("set the blade longer: it must reach the end of the cut"),
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, _results: &Results, doubt: &mut impl Doubt) {
        doubt.doubt(
            !holds_speed(own.drive, ground) & (own.inner_diameter.value <= 0.0),
            WarningCode::OutsideValidity,
            "at one spindle speed the cutting speed falls to nothing at the axis: a pip stays",
        );
        constant_speed_doubts(own.drive, own.maximum_speed, ground, doubt);
    }
}
