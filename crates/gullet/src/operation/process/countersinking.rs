//! Countersinking the rim of a hole.

use super::define::process;
use super::ground::Ground;
use super::hole::{self as holes, DRILL};
use super::limits::{Doubt, Eye, Look};
use super::{Loads, Operate, Start};
use crate::formula::{NoRecord, drilling, hole, power, practice, rotation};
use crate::operation::cut::Log;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{PI, number};
use crate::quantity::{Length, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    Countersinking "countersinking", "Countersinking";
    meaning "The rim of a hole opened to a cone, for a screw's head or against the burr.";
    tables Some(TableProcess::Drilling);
    inputs {
        diameter D: Length, above 0.0, to 0.2, "diameter of the countersink at the surface";
        hole_diameter d: Length, above 0.0, below diameter, "diameter of the hole";
        included_angle sigma: Angle, from 0.5, below PI, default 90.0_f64.to_radians(), "included angle of the cone; 82 and 100 deg are usual in inch work";
        teeth z: Count, from 1.0, to 20.0, default 3.0, "cutting edges of the countersink";
        speed_ratio k: Ratio, above 0.0, to 1.0, default 0.5, "cutting speed at the largest diameter over that of drilling, common practice: slower chatters less";
        dwell t_d: Time, from 0.0, to 60.0, default 0.0, "dwell at the bottom";
        hand_speed v_h: Velocity, above 0.0, to 1.0, default 0.05, "speed of the move out where the machine has no rapid traverse, common practice";
        hold_torque M_h: Torque, above 0.0, to 1e5, default f64::INFINITY, "torque that the hold of the work withstands";
    }
    choices {}
    results {
        depth: Length, "Depth of feed from first contact with the rim.";
        travel: Length, "Travel at feed with clearance.";
        chip_thickness: Length, "Undeformed chip thickness of an edge.";
        chip_width: Length, "Undeformed chip width at the bottom: a broad one chatters.";
        torque: Torque, "Torque at the full diameter, default pair, sharp edges.";
        thrust: Force, "Thrust at the full diameter, default pair, sharp edges.";
        cutting_power: Power, "Power at the countersink, default pair, sharp edges.";
        motor_power: Power, "Power of the motor for that.";
        limit_torque: Torque, "Torque that limits are checked with.";
        limit_power: Power, "Power that limits are checked with.";
        time: Time, "Time of feed, dwell, and the way out.";
    }
    example "1018", Hss, "drill-press", "diameter=13.4 mm; hole_diameter=6.6 mm";
    limits [HoldTorque];
    cautions [
        "A countersink that chatters leaves flats: lower the speed first, keep the feed firm, hold the work short.",
        "Clamp the work: a countersink that catches spins it.",
        "Take the key out of the chuck before the spindle starts.",
    ];
}

impl Operate for Countersinking {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.diameter, own.diameter)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let drilling =
            practice::practice_cutting_speed::step(log, ground.speed_chosen, ground.speed_factor);
        let cutting_speed = practice::practice_cutting_speed::step(log, drilling, own.speed_ratio);
        let feed =
            practice::practice_feed_per_tooth::step(log, ground.feed_start, ground.feed_factor);
        Start {
            diameter: own.diameter,
            cutting_speed,
            highest_speed: si(f64::INFINITY),
            feed,
            least_feed: drilling::feed_for_hole_chip_thickness::value(
                ground.smallest_chip,
                own.teeth,
                own.included_angle,
            ),
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
        let (big, d, sigma) = (own.diameter, own.hole_diameter, own.included_angle);
        let depth = hole::countersink_depth::step(log, big, d, sigma);
        let travel = holes::travel(log, false, depth, si(0.0), ground.clearance);
        let h = drilling::hole_chip_thickness::step(log, f, own.teeth, sigma);
        let chip_width = drilling::drilling_chip_width::step(log, big, sigma, d);
        let k = ground.own_force(log, h, number(DRILL));
        let torque = drilling::enlarging_torque::step(log, big, d, f, k);
        let thrust = holes::thrust(log, k, big, d, f, sigma, number(1.0));
        let cutting_power = power::power_from_torque::step(log, torque, n);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        let worst = ground.worst_force(log, h, number(DRILL));
        let limit_torque = drilling::enlarging_torque::step(log, big, d, f, worst.k);
        let limit_power = power::power_from_torque::step(log, limit_torque, n);
        let v_f = rotation::feed_rate::value(f, n);
        let rapids = holes::rapids(ground, own.hand_speed);
        let time = holes::single_time(log, travel, v_f, rapids, own.dwell);
        let results = Results {
            depth,
            travel,
            chip_thickness: h,
            chip_width,
            torque,
            thrust,
            cutting_power,
            motor_power,
            limit_torque,
            limit_power,
            time,
        };
        let loads = Loads {
            limit_power,
            limit_torque,
            exponent: number(1.0) - worst.exponent,
            chip: h,
            force: holes::thrust(&mut NoRecord, k, big, d, f, sigma, number(1.0)),
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
        _results: &Results,
        loads: &Loads,
        eye: &mut impl Eye,
    ) {
        let hold = own.hold_torque.value;
        eye.look(
            Look::most(LimitName::HoldTorque, loads.limit_torque.value, hold)
                .only(hold < f64::INFINITY)
                .with_feed(loads.exponent)
                .from("torque that the hold withstands, as given")
                .change("clamp the work more firmly, or against a stop"),
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, _ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        doubt.doubt(
            own.speed_ratio.value > 0.5,
            WarningCode::OutsideValidity,
            "more than half the speed of drilling: a countersink is likely to chatter, common practice, no source",
        );
        doubt.doubt(
            results.chip_width.value > BROAD,
            WarningCode::OutsideValidity,
            "an edge broader than 6 mm is in cut: it chatters unless machine and work are stiff, common practice, no source",
        );
    }
}

/// Width of a chip above which a countersink is likely to chatter.
const BROAD: f64 = 6e-3;
