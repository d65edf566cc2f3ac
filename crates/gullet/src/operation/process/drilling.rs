//! Drilling with a twist drill in solid metal or from a smaller hole.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::{Loads, Operate, Start};
use crate::formula::{chip, force, power, practice, removal, time};
use crate::operation::cut::Log;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{PI, max, number, select, sin};
use crate::quantity::{Length, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    Drilling "drilling", "Drilling";
    meaning "A hole with a twist drill.";
    tables Some(TableProcess::Drilling);
    inputs {
        diameter D: Length, above 0.0, to 0.2, "diameter of the drill";
        depth l: Length, above 0.0, to 5.0, "depth of the hole at full diameter";
        point_angle sigma: Angle, from 0.5, to PI, default 118.0_f64.to_radians(), "point angle of the drill";
        chisel_factor K: Ratio, above 0.0, to 3.0, default 1.0, "thrust factor: about 1 for a standard chisel edge, 0.5 for a thinned point";
    }
    choices {
        hole: ["through", "blind"], 0.0, "whether the drill breaks through";
    }
    results {
        point_length: Length, "Length of the point.";
        travel: Length, "Travel at feed with clearance and point.";
        chip_thickness: Length, "Undeformed chip thickness of a lip.";
        removal_rate: VolumeRate, "Removal rate at full diameter.";
        torque: Torque, "Torque, default pair, sharp edge.";
        thrust: Force, "Thrust, the highest pair, worn edge.";
        cutting_power: Power, "Power at the drill, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        limit_torque: Torque, "Torque that limits are checked with.";
        limit_power: Power, "Power that limits are checked with.";
        depth_ratio: Ratio, "Depth over diameter.";
        time: Time, "Time of the hole in the cut.";
    }
    example "1018", Hss, "small-cnc-mill", "diameter=8.5 mm; depth=22 mm";
    limits [DepthRatio];
    cautions [
        "Clamp the work: a drill that catches spins it. Never hold it by hand.",
        "Ease the feed at breakthrough: the drill grabs. Thin plate needs a backing.",
    ];
}

impl Operate for Drilling {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.diameter, own.depth)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let cutting_speed =
            practice::practice_cutting_speed::step(log, ground.speed_chosen, ground.speed_factor);
        let feed =
            practice::practice_feed_per_tooth::step(log, ground.feed_start, ground.feed_factor);
        // h = (f/2) sin(sigma/2): the feed of the thinnest chip that cuts.
        let half_sine = sin(own.point_angle / 2.0) / 2.0;
        Start {
            diameter: own.diameter,
            cutting_speed,
            highest_speed: si(f64::INFINITY),
            feed,
            least_feed: ground.smallest_chip / half_sine,
            feeds_per_rev: number(1.0),
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
        let d = own.diameter;
        let point_length = time::drill_point_length::step(log, d, own.point_angle);
        let through = own.hole.value < 0.5;
        let clearance = ground.clearance;
        // A blind hole ends at its full-diameter depth with the point below it; a through hole ends
        // where the point has left, with the clearance once more.
        let travel = practice::cut_travel::step(
            log,
            own.depth,
            point_length,
            select(through, clearance, si(0.0)),
            clearance / 2.0,
        );
        let h = chip::drilling_chip_thickness::step(log, f, own.point_angle);
        let k = ground.own_force(log, h, number(DRILL));
        let torque = force::drilling_torque::step(log, d, f, k);
        let cutting_power = power::power_from_torque::step(log, torque, n);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        let removal_rate = removal::drilling_removal_rate::step(log, d, f, n);
        let worst = ground.worst_force(log, h, number(DRILL));
        let limit_torque = force::drilling_torque::step(log, d, f, worst.k);
        let limit_power = power::power_from_torque::step(log, limit_torque, n);
        let thrust =
            force::drilling_thrust::step(log, worst.k, d, f, own.point_angle, own.chisel_factor);
        let feed_speed = crate::formula::rotation::feed_rate::value(f, n);
        let time = time::cutting_time::step(log, travel, feed_speed);
        let results = Results {
            point_length,
            travel,
            chip_thickness: h,
            removal_rate,
            torque,
            thrust,
            cutting_power,
            motor_power,
            limit_torque,
            limit_power,
            depth_ratio: own.depth / max(d, si(1e-9)),
            time,
        };
        let loads = Loads {
            limit_power,
            limit_torque,
            exponent: number(1.0) - worst.exponent,
            chip: h,
            force: force::drilling_thrust::value(k, d, f, own.point_angle, own.chisel_factor),
            power: cutting_power,
            time,
        };
        (results, loads)
    }

    #[inline(always)]
    fn limits(
        _own: &Own,
        _ground: &Ground,
        _feed: Length,
        results: &Results,
        _loads: &Loads,
        eye: &mut impl Eye,
    ) {
        eye.look(
            Look::most(LimitName::DepthRatio, results.depth_ratio.value, 3.0)
                .from("common practice, no source: deeper holes are pecked")
                .change("drill in pecks"),
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, _ground: &Ground, _results: &Results, doubt: &mut impl Doubt) {
        doubt.doubt(
            own.point_angle.value < 1.5,
            WarningCode::OutsideValidity,
            "points below 86 deg are for soft plastics",
        );
    }
}

/// Specific cutting force of drilling over turning: high-speed steel and chip friction (DIN tables as
/// taught, from memory).
const DRILL: f64 = 1.2;
