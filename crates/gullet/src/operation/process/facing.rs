//! Facing the end of a part towards its axis.

use super::define::process;
use super::ground::Ground;
use super::lathe::{self, Edge, Hold, clamp, constant_speed_doubts, holds_speed};
use super::limits::{Doubt, Eye, Look};
use super::pick::pick;
use super::{Loads, Operate, Start};
use crate::formula::turning as formula;
use crate::formula::{finish, power, removal, rotation, time};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{PI, max, select};
use crate::quantity::{Length, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    Facing "facing", "Facing";
    meaning "One pass across the end of a part on a lathe, from the outside to the axis or to a bore.";
    tables Some(TableProcess::Turning);
    inputs {
        outer_diameter D_1: Length, above 0.0, to 5.0, "diameter where the cut starts";
        inner_diameter D_2: Length, from 0.0, below outer_diameter, default 0.0, "diameter where the cut ends; 0 at the axis";
        depth_of_cut a_p: Length, above 0.0, to 0.1, "depth of cut, along the axis";
        nose_radius r: Length, above 0.0, to 0.05, default 0.8e-3, "nose radius of the tool";
        cutting_edge_angle kappa_r: Angle, from 0.1, to PI / 2.0, default PI / 2.0, "tool cutting-edge angle, from the direction of feed: not the lead angle, which is the rest to 90 deg";
        edge_length l_e: Length, above 0.0, to 1.0, default f64::INFINITY, "length of the straight edge";
        thrust_share s: Ratio, from 0.0, to 2.0, default 0.6, "thrust in the plane of the cut over the cutting force; rough";
        mean_roughness R_a: Length, above 0.0, to 1e-3, default f64::INFINITY, "mean roughness wanted";
        static_grip F_0: Force, above 0.0, to 1e7, default f64::INFINITY, "sum of the jaw forces of the chuck at rest";
        grip_diameter D_g: Length, from 0.0, to 5.0, default 0.0, "diameter that the jaws grip; 0 takes the outer diameter";
        jaw_friction mu: Ratio, above 0.0, to 1.0, default 0.15, "friction between jaw and work: 0.15 for smooth steel, from memory";
    }
    choices {
        drive: ["fixed-speed", "constant-speed"], 0.0, "one spindle speed, or a spindle that holds the cutting speed up to its largest speed";
        pass: ["roughing", "finishing"], 0.0, "what the pass is for: a finishing pass starts faster, with a smaller feed";
    }
    results {
        chip_thickness: Length, "Mean undeformed chip thickness.";
        removal_rate: VolumeRate, "Removal rate at the outer diameter.";
        cutting_force: Force, "Cutting force, default pair, sharp edge.";
        torque: Torque, "Torque at the outer diameter, default pair, sharp edge.";
        cutting_power: Power, "Power at the outer diameter, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        limit_torque: Torque, "Torque that limits are checked with.";
        limit_power: Power, "Power that limits are checked with.";
        static_grip_needed: Force, "Sum of the jaw forces at rest that the cut needs, at the outer diameter or where the spindle turns fastest.";
        knee_diameter: Length, "Diameter below which a spindle that holds the cutting speed stays at its largest speed.";
        speed_at_end: RotationalSpeed, "Spindle speed where the cut ends.";
        ideal_roughness: Length, "Ideal mean roughness; real ones are 1.5 to 3 times that.";
        facing_time: Time, "Time from the outer to the inner diameter.";
        time: Time, "Time of the pass with its clearance.";
    }
    example "1018", UncoatedCarbide, "engine-lathe", "outer_diameter=80 mm; depth_of_cut=1.5 mm; static_grip=40 kN; maximum_speed=3000 rpm";
    limits [MeanRoughness, DepthOfCut, ChuckGrip];
    cautions [
        "Take the key out of the chuck before the spindle runs; turn the work once by hand past the tool and the bed.",
        "Set the tool to the height of the axis: below it a pip stays, above it the edge rubs and breaks.",
        "Holding the cutting speed, the spindle speeds up towards the axis: set its largest speed first.",
    ];
}

impl Own {
    #[inline(always)]
    fn edge(&self) -> Edge {
        Edge {
            nose_radius: self.nose_radius,
            cutting_edge_angle: self.cutting_edge_angle,
            thrust_share: self.thrust_share,
        }
    }
}

impl Operate for Facing {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.outer_diameter, own.depth_of_cut)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let (cutting_speed, feed) = lathe::wanted(log, ground, own.pass.value > 0.5);
        Start {
            diameter: own.outer_diameter,
            cutting_speed,
            highest_speed: si(f64::INFINITY),
            feed,
            least_feed: own.edge().least_feed(ground.smallest_chip),
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
        let (outer, inner, depth) = (own.outer_diameter, own.inner_diameter, own.depth_of_cut);
        let forces = own.edge().forces(log, ground, depth, f, one());
        let v_c = rotation::cutting_speed::value(n, outer);
        let removal_rate = removal::turning_removal_rate::step(log, v_c, f, depth);
        let torque = formula::turning_torque::step(log, forces.cutting, outer);
        let cutting_power = power::cutting_power::step(log, removal_rate, forces.k);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        let limit_torque = formula::turning_torque::step(log, forces.worst, outer);
        let limit_power = power::cutting_power::step(log, removal_rate, forces.worst_k);
        let grips = own.grip_diameter.value > 0.0;
        // The feed pushes across the jaws, the thrust into the chuck: turning is what slips.
        let hold = Hold {
            force: forces.worst,
            diameter: select(grips, own.grip_diameter, outer),
            friction: own.jaw_friction,
            marked: own.maximum_speed,
        };
        let grip_outside = hold.grip_at_rest(log, ground, outer, n);
        // Never below the speed at the outside, so that a speed above the clamp stays what it is.
        let highest = max(clamp(ground, own.maximum_speed), n);
        let knee_diameter = formula::constant_speed_knee_diameter::value(v_c, highest);
        let speed_at_end = pick(
            log,
            holds_speed(own.drive, ground),
            |log| {
                let knee = formula::constant_speed_knee_diameter::step(log, v_c, highest);
                rotation::spindle_speed::step(log, v_c, max(knee, inner))
            },
            |_| n,
        );
        let static_grip_needed = pick(
            log,
            holds_speed(own.drive, ground),
            |log| {
                let end = max(knee_diameter, inner);
                let grip_at_end = hold.grip_at_rest(log, ground, end, speed_at_end);
                max(grip_outside, grip_at_end)
            },
            |_| grip_outside,
        );
        let facing_time = pick(
            log,
            holds_speed(own.drive, ground),
            |log| time::facing_time_limited_speed::step(log, outer, inner, v_c, f, highest),
            |log| formula::facing_time_fixed_speed::step(log, outer, inner, f, n),
        );
        let feed_speed = rotation::feed_rate::value(f, n);
        let approach = time::cutting_time::step(log, ground.clearance, feed_speed);
        let ideal_roughness = finish::turning_mean_roughness::step(log, f, own.nose_radius);
        let time = facing_time + approach;
        let results = Results {
            chip_thickness: forces.chip,
            removal_rate,
            cutting_force: forces.cutting,
            torque,
            cutting_power,
            motor_power,
            limit_torque,
            limit_power,
            static_grip_needed,
            knee_diameter,
            speed_at_end,
            ideal_roughness,
            facing_time,
            time,
        };
        let loads = Loads {
            limit_power,
            limit_torque,
            exponent: forces.exponent,
            chip: forces.chip,
            force: forces.cutting,
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
        lathe::edge_limits(
            eye,
            results.ideal_roughness,
            own.mean_roughness,
            own.depth_of_cut,
            own.edge_length,
            own.cutting_edge_angle,
        );
        eye.look(
            Look::most(
                LimitName::ChuckGrip,
                results.static_grip_needed.value,
                own.static_grip.value,
            )
            .only(own.static_grip.value < f64::INFINITY)
            .with_feed(loads.exponent)
            .from(lathe::GRIP_ORIGIN)
            .change(lathe::GRIP_REMEDY),
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        constant_speed_doubts(own.drive, own.maximum_speed, ground, doubt);
        doubt.doubt(
            results.knee_diameter.value >= own.outer_diameter.value
                && holds_speed(own.drive, ground),
            WarningCode::MachineLimits,
            "the spindle is at its largest speed from the start: the cutting speed is not held",
        );
    }
}
