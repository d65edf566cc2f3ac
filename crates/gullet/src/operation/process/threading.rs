//! Threads cut by a single point on a lathe, outside and inside.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::{Loads, Operate, Start};
use crate::formula::thread::{external_thread_height, internal_thread_height, thread_lead};
use crate::formula::{NoRecord, force, power, practice, rotation, thread};
use crate::formula::{threading as formula, turning};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::process::pick::pick;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{PI, max, min, number, select};
use crate::quantity::{Area, Force, Length, Ratio, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    Threading "threading", "Single-point threading";
    meaning "A 60 degree thread cut by a single point on a lathe, in passes of equal chip area.";
    tables Some(TableProcess::Turning);
    inputs {
        major_diameter D: Length, above 0.0, to 2.0, "major diameter of the thread";
        pitch P: Length, above 0.0, below major_diameter / 1.732_050_807_568_877_2, "pitch";
        starts s: Count, from 1.0, to 24.0, default 1.0, "starts of the thread";
        length l: Length, above 0.0, to 10.0, "length of the thread";
        first_depth a_1: Length, from 0.0, to 0.01, default 0.0, "largest depth of the first pass; 0 takes as many passes as the smallest infeed allows";
        smallest_infeed s_a: Length, above 0.0, to 1e-3, default 0.05e-3, "infeed below which the tool rubs: 0.05 mm is common practice, no source";
        spring_passes N_s: Count, from 0.0, to 100.0, default 1.0, "passes without infeed, for each start";
        tool_flat w: Length, from 0.0, below pitch, default 0.0, "flat or width of the rounding at the tip of the tool";
        run_in l_a: Length, from 0.0, to 1.0, default 0.0, "room before the thread; 0 where it sets no limit";
        run_out l_u: Length, from 0.0, to 1.0, default 0.0, "run-out beyond the thread";
        carriage_speed v_max: Velocity, above 0.0, to 10.0, default f64::INFINITY, "largest speed of the carriage, or what a hand can stop at a shoulder";
        return_time t_r: Time, from 0.0, to 3600.0, default 0.0, "time of one return to the start";
    }
    choices {
        thread: ["external", "internal"], 0.0, "on a shaft or in a bore";
    }
    results {
        lead: Length, "Lead: the feed per revolution.";
        height: Length, "Height of the thread, on the radius.";
        passes: Count, "Passes that cut, for each start.";
        total_passes: Count, "Passes over all starts, spring passes included.";
        first_infeed: Length, "Depth of the first pass.";
        last_infeed: Length, "Infeed of the last pass.";
        compound_infeed: Length, "Way of a compound slide set to 29.5 deg over all passes.";
        chip_section: Area, "Section that the heaviest pass cuts.";
        chip_thickness: Length, "Mean undeformed chip thickness of the heaviest pass.";
        cutting_force: Force, "Cutting force of the heaviest pass, default pair, sharp edge.";
        torque: Torque, "Torque at the work, default pair, sharp edge.";
        cutting_power: Power, "Power at the edge, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        limit_torque: Torque, "Torque that limits are checked with.";
        limit_power: Power, "Power that limits are checked with.";
        thread_speed: Velocity, "Speed of the carriage along the thread.";
        run_in_needed: Length, "Shortest run-in in which the carriage reaches its speed.";
        time: Time, "Time of all passes.";
    }
    example "1018", Hss, "engine-lathe", "major_diameter=24 mm; pitch=3 mm; length=40 mm; run_in=6 mm; carriage_speed=1.2 m/min; return_time=6 s";
    limits [CarriageSpeed, RunIn];
    cautions [
        "Take the key out of the chuck before the spindle runs. Disengage the half-nut before a shoulder, not at it.",
        "Leave the half-nut closed between passes where the lead screw and the thread do not go together.",
        "Never feel a turning thread with a finger or a rag: it winds them in.",
    ];
}

/// Threading runs at about half the speed of turning (common practice, no source).
const SLOWER: f64 = 0.5;
/// Half the angle of the thread.
const FLANK: f64 = PI / 6.0;
/// A compound slide is set a little below it.
const COMPOUND: f64 = 29.5 * PI / 180.0;

/// Passes of a plan that is still listed.
const MOST_LISTED: f64 = 200.0;

/// Depth from the crest after each pass of a thread that is cut at equal chip area.
///
/// ```
/// use gullet::operation::process::threading_plan;
/// use gullet::quantity::si;
/// let depths = threading_plan(si(1.2e-3), 9);
/// assert_eq!(depths.len(), 9);
/// // A third of the height first, two thirds after four passes, all of it after nine.
/// assert!((depths[0].value - 0.4e-3).abs() < 1e-12);
/// assert!((depths[3].value - 0.8e-3).abs() < 1e-12);
/// assert!((depths[8].value - 1.2e-3).abs() < 1e-12);
/// ```
pub fn threading_plan(height: Length, passes: u16) -> Vec<Length> {
    let count = number(f64::from(passes));
    (1..=passes)
        .map(|pass| thread::threading_depth::value(height, count, number(f64::from(pass))))
        .collect()
}

/// One pass with what it loads.
struct Pass {
    section: Area,
    chip: Length,
    force: Force,
    worst: Force,
    exponent: Ratio,
}

impl Own {
    #[inline(always)]
    fn lead(&self, log: &mut impl Log) -> Length {
        thread_lead::step(log, self.pitch, self.starts)
    }

    #[inline(always)]
    fn height(&self, log: &mut impl Log) -> Length {
        let pitch = self.pitch;
        pick(
            log,
            self.thread.value < 0.5,
            |log| external_thread_height::step(log, pitch),
            |log| internal_thread_height::step(log, pitch),
        )
    }

    /// The pass between two depths.
    #[inline(always)]
    fn pass(&self, log: &mut impl Log, ground: &Ground, depth: Length, before: Length) -> Pass {
        let (flat, flank) = (self.tool_flat, si(FLANK));
        let section = formula::threading_chip_section::step(log, depth, before, flat, flank);
        let edge = formula::threading_edge_length::step(log, depth, flat, flank);
        let chip = formula::threading_mean_chip_thickness::step(log, section, edge);
        let k = ground.own_force(log, chip, one());
        let force = force::chip_section_force::step(log, k, chip, edge);
        let worst = ground.worst_force(log, chip, one());
        Pass {
            section,
            chip,
            force,
            worst: force::chip_section_force::step(log, worst.k, chip, edge),
            exponent: one() - worst.exponent,
        }
    }
}

impl Pass {
    #[inline(always)]
    fn heavier(first: Pass, last: Pass) -> Pass {
        let other = last.worst.value > first.worst.value;
        Pass {
            section: select(other, last.section, first.section),
            chip: select(other, last.chip, first.chip),
            force: select(other, last.force, first.force),
            worst: select(other, last.worst, first.worst),
            exponent: select(other, last.exponent, first.exponent),
        }
    }
}

impl Operate for Threading {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.major_diameter, own.height(&mut NoRecord))
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let lead = own.lead(log);
        let slower = ground.speed_factor * number(SLOWER);
        let carriage = pick(
            log,
            own.carriage_speed.value < f64::INFINITY,
            |log| formula::threading_speed_for_carriage::step(log, own.carriage_speed, lead),
            |_| si(f64::INFINITY),
        );
        let accelerates = ground.acceleration.value < f64::INFINITY;
        let acceleration = select(accelerates, ground.acceleration, si(1.0));
        let run_in = pick(
            log,
            accelerates & (own.run_in.value > 0.0),
            |log| formula::threading_speed_for_run_in::step(log, lead, own.run_in, acceleration),
            |_| si(f64::INFINITY),
        );
        Start {
            diameter: own.major_diameter,
            cutting_speed: practice::practice_cutting_speed::step(log, ground.speed_chosen, slower),
            highest_speed: min(carriage, run_in),
            feed: lead,
            least_feed: lead,
            feeds_per_rev: one(),
        }
    }

    #[inline(always)]
    fn evaluate(
        log: &mut impl Log,
        own: &Own,
        ground: &Ground,
        n: RotationalSpeed,
        lead: Length,
    ) -> (Results, Loads) {
        let height = own.height(log);
        let asked = own.first_depth.value > 0.0;
        let first_depth = select(asked, own.first_depth, height);
        let passes = pick(
            log,
            asked,
            |log| thread::threading_passes::step(log, height, first_depth),
            |log| formula::threading_most_passes::step(log, height, own.smallest_infeed),
        );
        let first_infeed = thread::threading_depth::step(log, height, passes, one());
        let last_infeed = formula::threading_infeed::step(log, height, passes, passes);
        let before = max(height - last_infeed, si(0.0));
        let first = own.pass(&mut NoRecord, ground, first_infeed, si(0.0));
        let last = own.pass(&mut NoRecord, ground, height, before);
        if log.records() {
            // Told is the heavier of the two.
            let other = last.worst.value > first.worst.value;
            let depth = select(other, height, first_infeed);
            own.pass(log, ground, depth, select(other, before, si(0.0)));
        }
        let pass = Pass::heavier(first, last);
        let torque = turning::turning_torque::step(log, pass.force, own.major_diameter);
        let cutting_power = power::power_from_torque::step(log, torque, n);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        let limit_torque = turning::turning_torque::step(log, pass.worst, own.major_diameter);
        let limit_power = power::power_from_torque::step(log, limit_torque, n);
        let total_passes =
            formula::threading_pass_count::step(log, passes, own.spring_passes, own.starts);
        let run_in_needed = pick(
            log,
            ground.acceleration.value < f64::INFINITY,
            |log| formula::threading_run_in::step(log, lead, n, ground.acceleration),
            |_| si(0.0),
        );
        let time = formula::threading_time::step(
            log,
            own.length,
            own.run_in,
            own.run_out,
            lead,
            n,
            total_passes,
            own.return_time,
        );
        let results = Results {
            lead,
            height,
            passes,
            total_passes,
            first_infeed,
            last_infeed,
            compound_infeed: formula::compound_infeed::step(log, height, si(COMPOUND)),
            chip_section: pass.section,
            chip_thickness: pass.chip,
            cutting_force: pass.force,
            torque,
            cutting_power,
            motor_power,
            limit_torque,
            limit_power,
            thread_speed: rotation::feed_rate::value(lead, n),
            run_in_needed,
            time,
        };
        let loads = Loads {
            limit_power,
            limit_torque,
            exponent: pass.exponent,
            chip: pass.chip,
            force: pass.force,
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
        _loads: &Loads,
        eye: &mut impl Eye,
    ) {
        eye.look(
            Look::most(
                LimitName::CarriageSpeed,
                results.thread_speed.value,
                own.carriage_speed.value,
            )
            .only(own.carriage_speed.value < f64::INFINITY)
            .with_speed(one())
            .from("given: speed of the carriage")
            .change("take a machine with a lower speed"),
        );
        eye.look(
            Look::most(
                LimitName::RunIn,
                results.run_in_needed.value,
                own.run_in.value,
            )
            .only((own.run_in.value > 0.0) & (results.run_in_needed.value > 0.0))
            .with_speed(number(2.0))
            .from("given: room before the thread")
            .change("leave more room before the thread"),
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        doubt.doubt(
            (own.carriage_speed.value == f64::INFINITY)
                & (ground.highest_feed.value == f64::INFINITY),
            WarningCode::Assumed,
            "no carriage_speed given: nothing says whether a hand can open the half-nut in time, so that the speed is that of the tables alone",
        );
        doubt.doubt(
            results.last_infeed.value < own.smallest_infeed.value * (1.0 - 1e-9),
            WarningCode::OutsideValidity,
            "the last infeed is below the smallest that cuts: the tool rubs; take a deeper first pass",
        );
        doubt.doubt(
            results.first_infeed.value > results.height.value / 2.0,
            WarningCode::OutsideValidity,
            "the first pass takes more than half the height: the tip breaks",
        );
    }

    fn depths(results: &Results) -> Vec<Length> {
        let passes = results.passes.value;
        if passes > MOST_LISTED {
            return Vec::new();
        }
        threading_plan(results.height, passes as u16)
    }
}
