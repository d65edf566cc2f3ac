//! Drilling with a twist drill in solid metal or from a smaller hole, in one go or in pecks.

use super::define::process;
use super::ground::Ground;
use super::hole::{self as holes, DRILL};
use super::limits::{Doubt, Eye, Look};
use super::pick::pick;
use super::{Loads, Operate, Start};
use crate::formula::{NoRecord, chip, drilling, hole, power, practice, rotation, time};
use crate::operation::cut::Log;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{PI, max, min, number, select};
use crate::quantity::{Length, Ratio, RotationalSpeed, Time, Velocity, si};
use crate::table::Process as TableProcess;

process! {
    Drilling "drilling", "Drilling";
    meaning "A hole with a twist drill, in solid metal or from a smaller hole.";
    tables Some(TableProcess::Drilling);
    inputs {
        diameter D: Length, above 0.0, to 0.2, "diameter of the drill";
        depth l: Length, above 0.0, to 5.0, "depth of the hole at full diameter";
        start_diameter d: Length, from 0.0, below diameter, default 0.0, "diameter of the hole that is there already; 0 for solid metal";
        point_angle sigma: Angle, from 0.5, to PI, default 118.0_f64.to_radians(), "point angle of the drill";
        chisel_factor K: Ratio, above 0.0, to 3.0, default 1.0, "thrust factor in solid metal: about 1 for a standard chisel edge, 0.5 for a thinned point";
        peck q: Length, above 0.0, to 1.0, default 0.0, "depth of a peck; one diameter without it, common practice";
        reentry_clearance s: Length, from 0.0, to 0.1, default 0.0005, "distance above the last bottom where a peck starts again, common practice; a larger one than the peck counts as the peck";
        retract d_r: Length, from 0.0, to 0.1, default 0.0005, "retract that breaks the chip, common practice; a larger one than the peck counts as the peck";
        dwell t_d: Time, from 0.0, to 60.0, default 0.0, "dwell at the bottom of each peck";
        hand_speed v_h: Velocity, above 0.0, to 1.0, default 0.05, "speed of the moves out of the hole where the machine has no rapid traverse, common practice";
        work_factor K_d: Ratio, above 0.0, to 1e6, default 0.0, "work material factor of a handbook's torque and thrust, a second opinion in solid metal; about 24000 for steel of 200 HB";
        maximum_thrust F_max: Force, above 0.0, to 1e6, default f64::INFINITY, "thrust that quill, column or work allows";
        hold_torque M_h: Torque, above 0.0, to 1e5, default f64::INFINITY, "torque that the hold of the work withstands";
        flute_length l_f: Length, above 0.0, to 5.0, default f64::INFINITY, "length of the flutes";
    }
    choices {
        hole: ["through", "blind"], 0.0, "whether the drill breaks through";
        cycle: ["straight", "peck", "chip-break"], 0.0, "in one go, out of the hole after each peck, or with a short retract that breaks the chip";
    }
    results {
        point_length: Length, "Length of the point.";
        travel: Length, "Travel at feed with clearance and point.";
        depth_ratio: Ratio, "Depth over diameter.";
        pecks: Count, "Pecks of the hole.";
        chip_thickness: Length, "Undeformed chip thickness of a lip.";
        chip_width: Length, "Undeformed chip width of a lip.";
        removal_rate: VolumeRate, "Removal rate at full diameter.";
        torque: Torque, "Torque, default pair, sharp edge.";
        thrust: Force, "Thrust, the highest pair, worn edge.";
        handbook_torque: Torque, "Torque of a worn drill by a handbook's factors; 0 without a work factor or from a smaller hole.";
        handbook_thrust: Force, "Thrust of a worn drill by a handbook's factors; 0 without a work factor or from a smaller hole.";
        cutting_power: Power, "Power at the drill, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        limit_thrust: Force, "Thrust that limits are checked with: the larger of both methods.";
        limit_torque: Torque, "Torque that limits are checked with: the larger of both methods.";
        limit_power: Power, "Power that limits are checked with.";
        feed_time: Time, "Time of the travel at feed, in one go.";
        time: Time, "Time of the hole: feed, pecks, and the way out.";
    }
    example "1018", Hss, "small-cnc-mill", "diameter=8.5 mm; depth=22 mm";
    limits [DepthRatio, Thrust, HoldTorque, FluteLength];
    cautions [
        "Clamp the work: a drill that catches spins it. Never hold it by hand.",
        "Ease the feed at breakthrough: the drill grabs. Thin plate needs a backing.",
        "Take the key out of the chuck before the spindle starts.",
    ];
}

/// Depth over diameter up to which a hole is drilled in one go.
const STRAIGHT: f64 = 3.0;

/// Depth over diameter up to which the reductions of deep holes are printed.
const PRINTED: f64 = 6.0;

impl Own {
    #[inline(always)]
    fn solid(&self) -> bool {
        self.start_diameter.value <= 0.0
    }

    #[inline(always)]
    fn straight(&self) -> bool {
        self.cycle.value < 0.5
    }

    #[inline(always)]
    fn out_of_the_hole(&self) -> bool {
        (self.cycle.value > 0.5) & (self.cycle.value < 1.5)
    }

    #[inline(always)]
    fn peck(&self) -> Length {
        select(self.peck.value > 0.0, self.peck, self.diameter)
    }
}

/// Time of the hole and its pecks, by the cycle.
#[inline(always)]
fn cycle(
    log: &mut impl Log,
    own: &Own,
    ground: &Ground,
    travel: Length,
    v_f: Velocity,
) -> (Ratio, Time) {
    let rapids = holes::rapids(ground, own.hand_speed);
    let (v, a) = (rapids.v, rapids.a);
    let q = own.peck();
    let s = min(own.reentry_clearance, q);
    let back = min(own.retract, q);
    let straight = own.straight();
    let pecks = pick(
        log,
        straight,
        |_| number(1.0),
        |log| hole::peck_count::step(log, travel, q),
    );
    let time = pick(
        log,
        straight,
        |log| holes::single_time(log, travel, v_f, rapids, own.dwell),
        |log| {
            pick(
                log,
                own.out_of_the_hole(),
                |log| hole::peck_cycle_time::step(log, travel, q, s, v_f, v, a, own.dwell),
                |log| hole::chip_break_cycle_time::step(log, travel, q, back, v_f, v, a, own.dwell),
            )
        },
    );
    (pecks, time)
}

impl Operate for Drilling {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.diameter, own.depth)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let (l, d) = (own.depth, own.diameter);
        let table_speed =
            practice::practice_cutting_speed::step(log, ground.speed_chosen, ground.speed_factor);
        let k_v = drilling::deep_hole_speed_factor::step(log, l, d);
        let cutting_speed = practice::practice_cutting_speed::step(log, table_speed, k_v);
        let table_feed =
            practice::practice_feed_per_tooth::step(log, ground.feed_start, ground.feed_factor);
        let k_f = drilling::deep_hole_feed_factor::step(log, l, d);
        let feed = practice::practice_feed_per_tooth::step(log, table_feed, k_f);
        Start {
            diameter: d,
            cutting_speed,
            highest_speed: si(f64::INFINITY),
            feed,
            least_feed: drilling::feed_for_hole_chip_thickness::value(
                ground.smallest_chip,
                number(2.0),
                own.point_angle,
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
        let (d, start, sigma) = (own.diameter, own.start_diameter, own.point_angle);
        let depth_ratio = hole::hole_depth_ratio::step(log, own.depth, d);
        let point_length = time::drill_point_length::step(log, d, sigma);
        let through = own.hole.value < 0.5;
        let travel = holes::travel(log, through, own.depth, point_length, ground.clearance);
        let h = chip::drilling_chip_thickness::step(log, f, sigma);
        let chip_width = drilling::drilling_chip_width::step(log, d, sigma, start);
        let k = ground.own_force(log, h, number(DRILL));
        let torque = holes::torque(log, d, start, f, k);
        let cutting_power = power::power_from_torque::step(log, torque, n);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        let removal_rate = drilling::enlarging_removal_rate::step(log, d, start, f, n);
        let worst = ground.worst_force(log, h, number(DRILL));
        let worn_torque = holes::torque(log, d, start, f, worst.k);
        let thrust = holes::thrust(log, worst.k, d, start, f, sigma, own.chisel_factor);
        let (handbook_torque, handbook_thrust) = handbook(log, own, ground, f);
        let limit_torque = max(worn_torque, handbook_torque);
        let limit_power = power::power_from_torque::step(log, limit_torque, n);
        let v_f = rotation::feed_rate::value(f, n);
        let feed_time = time::cutting_time::step(log, travel, v_f);
        let (pecks, time) = cycle(log, own, ground, travel, v_f);
        let results = Results {
            point_length,
            travel,
            depth_ratio,
            pecks,
            chip_thickness: h,
            chip_width,
            removal_rate,
            torque,
            thrust,
            handbook_torque,
            handbook_thrust,
            cutting_power,
            motor_power,
            limit_thrust: max(thrust, handbook_thrust),
            limit_torque,
            limit_power,
            feed_time,
            time,
        };
        let by_handbook = handbook_torque.value > worn_torque.value;
        let loads = Loads {
            limit_power,
            limit_torque,
            exponent: select(
                by_handbook,
                number(HANDBOOK_TORQUE),
                number(1.0) - worst.exponent,
            ),
            chip: h,
            force: holes::thrust(&mut NoRecord, k, d, start, f, sigma, own.chisel_factor),
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
        let at_once = select(own.straight(), own.depth, min(own.peck(), own.depth));
        let ratio = hole::hole_depth_ratio::value(at_once, own.diameter);
        eye.look(
            Look::most(LimitName::DepthRatio, ratio.value, STRAIGHT * (1.0 + 1e-9))
                .from("common practice, no source: deeper holes are pecked, a peck is no deeper")
                .change("drill in pecks of 3 diameters at most: cycle peck, or chip-break"),
        );
        let most = own.maximum_thrust.value;
        let by_handbook = results.handbook_thrust.value > results.thrust.value;
        eye.look(
            Look::most(LimitName::Thrust, results.limit_thrust.value, most)
                .only(most < f64::INFINITY)
                .with_feed(select(by_handbook, number(HANDBOOK_THRUST), loads.exponent))
                .from("thrust that quill, column or work allows, as given")
                .change("drill a smaller hole first, or take a thinned point"),
        );
        let hold = own.hold_torque.value;
        eye.look(
            Look::most(LimitName::HoldTorque, loads.limit_torque.value, hold)
                .only(hold < f64::INFINITY)
                .with_feed(loads.exponent)
                .from("torque that the hold withstands, as given")
                .change("clamp the work more firmly, or against a stop"),
        );
        let flutes = own.flute_length.value;
        let within = hole::blind_hole_travel::value(own.depth, results.point_length, si(0.0));
        eye.look(
            Look::most(LimitName::FluteLength, within.value, flutes)
                .only(flutes < f64::INFINITY)
                .from("length of the flutes, as given: chips must leave the hole")
                .change("take a drill with longer flutes"),
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        doubt.doubt(
            own.point_angle.value < 1.5,
            WarningCode::OutsideValidity,
            "points below 86 deg are for soft plastics",
        );
        doubt.doubt(
            results.depth_ratio.value > PRINTED * (1.0 + 1e-9),
            WarningCode::OutsideValidity,
            "deeper than 6 diameters: the reductions of speed and feed are printed up to there; a drill for deep holes or fluid through the drill is usual",
        );
        doubt.doubt(
            !own.straight() & !holes::has_rapids(ground),
            WarningCode::Assumed,
            "the machine has no rapid traverse: moves out of the hole and back take hand_speed",
        );
        let (a, b) = (results.thrust.value, results.handbook_thrust.value);
        let (c, d) = (results.limit_torque.value, results.handbook_torque.value);
        let apart = |low: f64, high: f64| (low > 0.0) & (high > 1.4 * low);
        doubt.doubt(
            (b > 0.0) & (apart(a, b) | apart(b, a) | apart(d, c)),
            WarningCode::SourcesDisagree,
            "the handbook's factors and the power law of the cutting force lie more than 40 % apart: limits take the larger",
        );
    }
}

/// Exponent of the feed in the handbook's torque.
const HANDBOOK_TORQUE: f64 = 0.8;

/// Exponent of the feed in the handbook's thrust, at most 0.8; the chisel edge's part, which the feed
/// does not move, lowers it.
const HANDBOOK_THRUST: f64 = 0.5;

/// Torque and thrust of a worn standard drill by a handbook's factors; 0 without a work factor.
#[inline(always)]
fn handbook(
    log: &mut impl Log,
    own: &Own,
    ground: &Ground,
    f: Length,
) -> (crate::quantity::Torque, crate::quantity::Force) {
    // The factors of a standard drill: chisel edge 0.18 of the diameter.
    let (a, b, j) = (number(1.085), number(1.355), number(0.030));
    let known = own.solid() & (own.work_factor.value > 0.0);
    let k_d = select(known, own.work_factor, number(0.0));
    let w = ground.wear_factor;
    if log.records() && known {
        drilling::handbook_drilling_torque::step(log, k_d, own.diameter, f, w, a);
        drilling::handbook_drilling_thrust::step(log, k_d, own.diameter, f, w, b, j);
    }
    (
        drilling::handbook_drilling_torque::value(k_d, own.diameter, f, w, a),
        drilling::handbook_drilling_thrust::value(k_d, own.diameter, f, w, b, j),
    )
}
