//! Reaming a drilled hole to size with a machine reamer.

use super::define::process;
use super::ground::Ground;
use super::hole::{self as holes, DRILL};
use super::limits::{Doubt, Eye, Look};
use super::{Loads, Operate, Start};
use crate::formula::{drilling, hole, power, practice, rotation};
use crate::operation::cut::Log;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{PI, min, number, select};
use crate::quantity::{Length, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    Reaming "reaming", "Reaming";
    meaning "A drilled hole brought to size with a machine reamer.";
    tables Some(TableProcess::Reaming);
    inputs {
        diameter D: Length, from 0.0023, to 0.064, "diameter of the reamer";
        depth l: Length, above 0.0, to 1.0, "depth of the reamed hole at full diameter";
        start_diameter d: Length, above 0.0, below diameter, default 0.0, "diameter of the drilled hole; without it the one that leaves the middle of the usual stock";
        teeth z: Count, from 1.0, to 40.0, default 6.0, "cutting edges of the reamer";
        chamfer_angle sigma: Angle, from 0.02, to PI, default 90.0_f64.to_radians(), "included angle of the chamfer that cuts, 90 deg for a lead of 45 deg; common practice";
        chamfer_length l_p: Length, from 0.0, to 0.1, default 0.002, "length of the chamfer, which has to leave a through hole; common practice";
        return_ratio k: Ratio, above 0.0, to 10.0, default 1.0, "feed speed on the way out over that on the way in; the spindle turns forward both ways";
        dwell t_d: Time, from 0.0, to 60.0, default 0.0, "dwell at the bottom";
        hold_torque M_h: Torque, above 0.0, to 1e5, default f64::INFINITY, "torque that the hold of the work withstands";
    }
    choices {
        hole: ["through", "blind"], 0.0, "whether the reamer passes through";
    }
    results {
        drill_diameter: Length, "Diameter of the drilled hole.";
        stock: Length, "Stock on the diameter.";
        smallest_stock: Length, "Least stock that cuts and does not rub.";
        largest_stock: Length, "Most stock to leave.";
        travel: Length, "Travel at feed with clearance and chamfer.";
        chip_thickness: Length, "Undeformed chip thickness of an edge.";
        removal_rate: VolumeRate, "Removal rate.";
        torque: Torque, "Torque, default pair, sharp edges; margins rub on top.";
        thrust: Force, "Thrust, default pair, sharp edges.";
        cutting_power: Power, "Power at the reamer, default pair, sharp edges.";
        motor_power: Power, "Power of the motor for that.";
        limit_torque: Torque, "Torque that limits are checked with.";
        limit_power: Power, "Power that limits are checked with.";
        time: Time, "Time in at feed, dwell, and out at feed.";
    }
    example "1018", Hss, "drill-press", "diameter=10 mm; depth=22 mm; feed=0.25 mm";
    limits [SmallestStock, LargestStock, HoldTorque];
    cautions [
        "Never turn a reamer backwards, not even on the way out: it dulls the edges and scores the hole.",
        "Clamp the work: a reamer that catches spins it.",
        "Take the key out of the chuck before the spindle starts.",
    ];
}

impl Own {
    /// The drilled hole: as given, else with the middle of the usual stock.
    #[inline(always)]
    fn drilled(&self) -> Length {
        let middle = (hole::smallest_reaming_stock::value(self.diameter)
            + hole::largest_reaming_stock::value(self.diameter))
            / 2.0;
        select(
            self.start_diameter.value > 0.0,
            self.start_diameter,
            hole::reaming_drill_diameter::value(self.diameter, middle),
        )
    }
}

impl Operate for Reaming {
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
        let thinnest = drilling::feed_for_hole_chip_thickness::value(
            ground.smallest_chip,
            own.teeth,
            own.chamfer_angle,
        );
        // A small reamer of many teeth has thinner chips than any other tool: the low end of its own
        // table cuts.
        let low = ground.feed_low;
        Start {
            diameter: own.diameter,
            cutting_speed,
            highest_speed: si(f64::INFINITY),
            feed,
            least_feed: select(low.value > 0.0, min(low, thinnest), thinnest),
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
        let (big, sigma) = (own.diameter, own.chamfer_angle);
        let smallest_stock = hole::smallest_reaming_stock::step(log, big);
        let largest_stock = hole::largest_reaming_stock::step(log, big);
        let d = own.drilled();
        let stock = big - d;
        if log.records() {
            hole::reaming_drill_diameter::step(log, big, stock);
        }
        let through = own.hole.value < 0.5;
        let travel = holes::travel(
            log,
            through,
            own.depth,
            own.chamfer_length,
            ground.clearance,
        );
        let h = drilling::hole_chip_thickness::step(log, f, own.teeth, sigma);
        let k = ground.own_force(log, h, number(DRILL));
        let torque = drilling::enlarging_torque::step(log, big, d, f, k);
        let thrust = drilling::enlarging_thrust::step(log, k, big, d, f, sigma, si(0.5));
        let cutting_power = power::power_from_torque::step(log, torque, n);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        let removal_rate = drilling::enlarging_removal_rate::step(log, big, d, f, n);
        let worst = ground.worst_force(log, h, number(DRILL));
        let limit_torque = drilling::enlarging_torque::step(log, big, d, f, worst.k);
        let limit_power = power::power_from_torque::step(log, limit_torque, n);
        let v_f = rotation::feed_rate::value(f, n);
        let time = hole::feed_out_cycle_time::step(log, travel, v_f, own.return_ratio, own.dwell);
        let results = Results {
            drill_diameter: d,
            stock,
            smallest_stock,
            largest_stock,
            travel,
            chip_thickness: h,
            removal_rate,
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
            force: thrust,
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
        let origin = "stock usual for machine reamers, E. Oberg et al., Machinery's Handbook, public reprint";
        let stock = results.stock.value;
        eye.look(
            Look::least(
                LimitName::SmallestStock,
                stock,
                results.smallest_stock.value * (1.0 - 1e-9),
            )
            .from(origin)
            .change("drill smaller: with so little stock the reamer rubs and follows the drill"),
        );
        eye.look(
            Look::most(
                LimitName::LargestStock,
                stock,
                results.largest_stock.value * (1.0 + 1e-9),
            )
            .from(origin)
            .change("drill larger, or bore first: a reamer chokes on so much stock"),
        );
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
            own.start_diameter.value <= 0.0,
            WarningCode::Assumed,
            "no drilled hole given: the middle of the usual stock is taken, whether or not there is such a drill",
        );
        let ratio = hole::hole_depth_ratio::value(own.depth, own.diameter);
        doubt.doubt(
            ratio.value > 3.0 * (1.0 + 1e-9),
            WarningCode::OutsideValidity,
            "deeper than 3 diameters: flutes pack and the hole runs large; withdraw and clear, common practice, no source",
        );
        doubt.doubt(
            results.chip_thickness.value > 0.15e-3,
            WarningCode::OutsideValidity,
            "more than 0.15 mm a tooth is a drill's chip: the finish suffers, common practice, no source",
        );
    }
}
