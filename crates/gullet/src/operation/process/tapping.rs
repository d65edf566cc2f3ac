//! Tapping a 60 degree thread with a cutting tap.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::{Loads, Operate, Start};
use crate::formula::thread::{
    CHART_BASIS, OVERLAP_BASIS, tap_chip_thickness, tap_drill_by_rule, tap_stopping_travel,
    tap_stopping_turns, tapping_hole_depth, tapping_torque, thread_lead, thread_minor_diameter,
    thread_percent,
};
use crate::formula::{force, hole, power, practice, rotation, time};
use crate::operation::cut::Log;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{number, select};
use crate::quantity::{Kind, Length, Ratio, RotationalSpeed, si};
use crate::table::Process as TableProcess;
use crate::table::tap_drill::CHART_PERCENTS;

process! {
    Tapping "tapping", "Tapping";
    meaning "A 60 degree thread, metric or unified, with a cutting tap.";
    tables Some(TableProcess::Tapping);
    inputs {
        major_diameter D: Length, above 0.0, to 0.1, "major diameter of the thread";
        pitch P: Length, above 0.0, below major_diameter / super::SQRT_3, "pitch; for 20 threads per inch 1/20 in";
        starts s: Count, from 1.0, to 12.0, default 1.0, "starts of the thread";
        depth b: Length, above 0.0, to 1.0, "depth of full thread";
        drill_diameter d: Length, above 0.0, below major_diameter, default 0.0, "diameter of the drilled hole; without it major diameter less pitch";
        chamfer_threads c: Ratio, above 0.0, to 20.0, default 4.0, "chamfer of the tap in threads: about 8 taper, 4 plug, 1.5 bottoming";
        flutes z: Count, from 1.0, to 12.0, default 3.0, "flutes of the tap";
        torque_factor K: Ratio, from 1.0, to 10.0, default 1.5, "factor for wear and friction on the torque; 1.3 to 2";
        smallest_percent p_min: Ratio, from 0.0, to 1.0, default 0.0, "least percentage of thread on the basis of tap-drill charts; 60 % without it, common practice";
        largest_percent p_max: Ratio, from smallest_percent, to 1.0, default 0.0, "largest percentage of thread on the basis of tap-drill charts; 83 % without it, common practice";
        bottom_clearance l_c: Length, above 0.0, to 0.1, default 0.0, "room below the tap in a blind hole; two leads without it, common practice";
        stopping_time t_s: Time, from 0.0, to 60.0, default 0.25, "time from full speed to a stop, common practice for small spindles";
        return_ratio k: Ratio, above 0.0, to 10.0, default 1.0, "spindle speed on the way out over that on the way in";
        hold_torque M_h: Torque, above 0.0, to 1e5, default f64::INFINITY, "torque that the tap, its clutch and the hold of the work withstand, the least of them";
    }
    choices {
        hole: ["through", "blind"], 0.0, "whether the tap passes through";
        reversal: ["floating", "rigid"], 0.0, "holder that floats while the spindle stops at the bottom, or feed tied to the spindle, which brakes ahead of it";
    }
    results {
        lead: Length, "Lead of the thread: the feed per revolution.";
        drill_diameter: Length, "Diameter of the drilled hole.";
        minor_diameter: Length, "Basic minor diameter of the thread.";
        chart_percent: Ratio, "Percentage of thread on the basis of tap-drill charts, 1.299 pitches.";
        overlap_percent: Ratio, "Percentage of the ISO and unified overlap, 1.0825 pitches.";
        hole_depth: Length, "Depth at full diameter of the drilled hole that a blind thread needs; thread and chamfer of the tap where it passes through.";
        depth_ratio: Ratio, "Depth of thread over major diameter.";
        chip_thickness: Length, "Undeformed chip thickness of a tooth in the chamfer.";
        torque: Torque, "Torque with the factor, default pair; known within 50 %.";
        high_torque: Torque, "Torque at the high end of that, the highest pair and half as much again.";
        cutting_power: Power, "Power at the tap, default pair.";
        motor_power: Power, "Power of the motor for that.";
        limit_torque: Torque, "Torque that limits are checked with: the highest pair.";
        limit_power: Power, "Power that limits are checked with.";
        stopping_turns: Turns, "Turns while the spindle comes to a stop.";
        overrun: Length, "Depth that the tap goes on meanwhile.";
        time: Time, "Time in and out with both reversals of the spindle.";
    }
    example "1018", Hss, "small-cnc-mill", "major_diameter=10 mm; pitch=1.5 mm; depth=15 mm; hole=blind; reversal=rigid";
    limits [SmallestThread, LargestThread, Overrun, HoldTorque];
    cautions [
        "Compare the torque with what tap and clutch stand: a tap breaks before anything gives warning.",
        "Back a hand-fed tap off to break the chip; chips packed in a blind hole break it.",
        "Taps that break throw splinters: eyes, and no finger in the hole. Burrs of a fresh thread cut.",
        "Set the feed to the lead, not to the pitch, and prove the reversal in the air first.",
    ];
}

/// Bases of the two percentages.
#[inline(always)]
fn percents(own: &Own, d: Length, log: &mut impl Log) -> [Ratio; 2] {
    [CHART_BASIS, OVERLAP_BASIS]
        .map(|basis| thread_percent::step(log, own.major_diameter, own.pitch, d, number(basis)))
}

impl Own {
    #[inline(always)]
    fn drilled(&self) -> Length {
        select(
            self.drill_diameter.value > 0.0,
            self.drill_diameter,
            tap_drill_by_rule::value(self.major_diameter, self.pitch),
        )
    }

    #[inline(always)]
    fn lead(&self) -> Length {
        thread_lead::value(self.pitch, self.starts)
    }

    #[inline(always)]
    fn bottom_clearance(&self) -> Length {
        let blind = self.hole.value > 0.5;
        let room = select(
            self.bottom_clearance.value > 0.0,
            self.bottom_clearance,
            2.0 * self.lead(),
        );
        select(blind, room, si(0.0))
    }

    #[inline(always)]
    fn rigid(&self) -> bool {
        self.reversal.value > 0.5
    }
}

impl Operate for Tapping {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.major_diameter, own.depth)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let cutting_speed =
            practice::practice_cutting_speed::step(log, ground.speed_chosen, ground.speed_factor);
        let lead = thread_lead::step(log, own.pitch, own.starts);
        Start {
            diameter: own.major_diameter,
            cutting_speed,
            highest_speed: si(f64::INFINITY),
            feed: lead,
            least_feed: lead,
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
        let (major, pitch) = (own.major_diameter, own.pitch);
        let d = own.drilled();
        if log.records() && own.drill_diameter.value > 0.0 {
            log.choose(Kind::Length, d.value, || "tap drill as given".to_owned());
        } else if log.records() {
            tap_drill_by_rule::step(log, major, pitch);
        }
        let minor_diameter = thread_minor_diameter::step(log, major, pitch);
        let [chart_percent, overlap_percent] = percents(own, d, log);
        let c = own.chamfer_threads;
        let hole_depth = tapping_hole_depth::step(log, own.depth, pitch, c, own.bottom_clearance());
        let depth_ratio = hole::hole_depth_ratio::step(log, own.depth, major);
        let h = tap_chip_thickness::step(log, major, d, c, own.flutes);
        let k = ground.own_force(log, h, number(1.0));
        let torque = tapping_torque::step(log, major, pitch, k, own.torque_factor);
        let cutting_power = power::power_from_torque::step(log, torque, n);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        // The factor of the torque holds the wear already.
        let worst = ground.worst_force(log, h, number(1.0) / ground.wear_factor);
        let limit_torque = tapping_torque::step(log, major, pitch, worst.k, own.torque_factor);
        let limit_power = power::power_from_torque::step(log, limit_torque, n);
        let stopping_turns = tap_stopping_turns::value(n, own.stopping_time);
        let overrun = tap_stopping_travel::step(log, f, n, own.stopping_time);
        // The chamfer goes as deep again as it is long, whether into the room of a blind hole or out.
        let travel = tapping_hole_depth::value(own.depth, pitch, c, si(0.0));
        let time = time::tapping_time::step(
            log,
            travel,
            ground.clearance,
            f,
            n,
            n * own.return_ratio,
            2.0 * own.stopping_time,
        );
        let v_c = rotation::cutting_speed::value(n, major);
        let results = Results {
            lead: own.lead(),
            drill_diameter: d,
            minor_diameter,
            chart_percent,
            overlap_percent,
            hole_depth,
            depth_ratio,
            chip_thickness: h,
            torque,
            high_torque: limit_torque * UNSURE,
            cutting_power,
            motor_power,
            limit_torque,
            limit_power,
            stopping_turns,
            overrun,
            time,
        };
        let loads = Loads {
            limit_power,
            limit_torque,
            exponent: number(0.0),
            chip: h,
            force: force::tangential_force::value(cutting_power, v_c),
            power: cutting_power,
            time,
        };
        (results, loads)
    }

    #[inline(always)]
    fn limits(
        own: &Own,
        ground: &Ground,
        _feed: Length,
        results: &Results,
        loads: &Loads,
        eye: &mut impl Eye,
    ) {
        let percent = results.chart_percent.value;
        eye.look(
            Look::least(
                LimitName::SmallestThread,
                percent,
                given(own.smallest_percent, SMALLEST) * (1.0 - 1e-9),
            )
            .from(
                "smallest_percent, or common practice, no source; on the basis of tap-drill charts",
            )
            .change("drill smaller: so little thread strips"),
        );
        eye.look(
            Look::most(
                LimitName::LargestThread,
                percent,
                given(own.largest_percent, LARGEST) * (1.0 + 1e-9),
            )
            .from(
                "largest_percent, or common practice, no source; on the basis of tap-drill charts",
            )
            .change("drill larger: more thread breaks taps and holds hardly more"),
        );
        let blind = own.hole.value > 0.5;
        // A rigid cycle gains speed over half of the travel and brakes over the other half.
        let travel =
            tapping_hole_depth::value(own.depth, own.pitch, own.chamfer_threads, ground.clearance);
        let room = select(own.rigid(), travel / 2.0, own.bottom_clearance());
        eye.look(
            Look::most(LimitName::Overrun, results.overrun.value, room.value)
                .only(own.rigid() | blind)
                .with_speed(number(1.0))
                .from(
                    "room below the tap, or half the travel where the feed is tied to the spindle",
                )
                .change("lower the spindle speed, or drill deeper"),
        );
        let hold = own.hold_torque.value;
        eye.look(
            Look::most(LimitName::HoldTorque, loads.limit_torque.value, hold)
                .only(hold < f64::INFINITY)
                .from("torque that tap, clutch and hold withstand, as given")
                .change("take a larger drill, a longer chamfer, or a sharp tap with better fluid"),
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        doubt.doubt(
            own.rigid() & (ground.by_hand.value > 0.0),
            WarningCode::MachineLimits,
            "a feed by hand is not tied to the spindle: take a holder that floats",
        );
        doubt.doubt(
            (own.feed.value > 0.0) & (own.feed.value != results.lead.value),
            WarningCode::MachineLimits,
            "the feed of a thread is its lead: the feed asked for is not used",
        );
        let unsure = results.high_torque.value;
        doubt.doubt(
            unsure > own.hold_torque.value,
            WarningCode::OutsideValidity,
            "the torque of a tap is known within 50 %: at its high end it exceeds what tap, clutch or hold stand",
        );
        doubt.doubt(
            own.starts.value > 1.5,
            WarningCode::OutsideValidity,
            "the torque of a tap is known for one start",
        );
        doubt.doubt(
            results.depth_ratio.value > 2.0 * (1.0 + 1e-9),
            WarningCode::OutsideValidity,
            "deeper than 2 diameters: chips pack and the torque rises, while the thread holds no more; common practice, no source",
        );
    }
}

/// Percentages of thread where none are given.
const SMALLEST: f64 = CHART_PERCENTS[0];
const LARGEST: f64 = CHART_PERCENTS[2];

#[inline(always)]
fn given(percent: Ratio, usual: f64) -> f64 {
    select(percent.value > 0.0, percent, number(usual)).value
}

/// How much higher the torque of a tap may be than its formula says.
const UNSURE: f64 = 1.5;
