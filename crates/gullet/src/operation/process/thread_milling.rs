//! Threads of 60 degrees milled on a helix, inside and outside.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::mills::{self, Side, Tool, right_angle};
use super::pick::pick;
use super::{Loads, Operate, Start};
use crate::formula::{NoRecord, path, removal, rotation, surface, thread, thread_milling, time};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{max, min, select};
use crate::quantity::{Length, Ratio, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    ThreadMilling "thread-milling", "Thread milling";
    meaning "A thread of 60 degrees milled on a helix, to its full depth at once.";
    tables Some(TableProcess::EndMilling);
    inputs {
        major_diameter D: Length, above 0.0, to 2.0, "major diameter of the thread";
        pitch P: Length, above 0.0, below major_diameter / super::SQRT_3, "pitch of the thread";
        thread_length l: Length, above 0.0, to 1.0, "length of the thread";
        diameter D_c: Length, above 0.0, to 1.0, "cutter diameter";
        teeth z: Count, from 1.0, to 200.0, "flutes of the cutter";
        rings_length l_z: Length, from pitch, to 1.0, default 0.0, "length of the rings of a cutter with several; left out for a single ring";
        diameter_ratio k: Ratio, from 0.1, to 0.95, default 0.7, "largest cutter over the major diameter of an internal thread; 2/3 to 3/4 is common practice, no source";
        stick_out L: Length, from thread_length, to 2.0, "distance from the tip to the holder";
        flute_length l_f: Length, above 0.0, to 1.0, default 0.0, "length of the flutes, from the tip; the rings' or the thread's where it is not given";
        shank_diameter d_s: Length, above 0.0, to 1.0, default 0.0, "diameter of the shank; the cutter's where it is not given";
        link_time t_l: Time, from 0.0, to 3600.0, default 0.0, "time between two axial positions";
    }
    choices {
        thread: ["internal", "external"], 0.0, "which thread";
        body: ["hss", "carbide"], 0.0, "what the cutter's body is made of";
        programmed: ["centre", "contour"], 0.0, "what the control takes the feed for; one that corrects arcs itself is given the feed at the contour";
    }
    results {
        minor_diameter: Length, "Diameter before the cut of an internal thread, after it of an external one.";
        pitch_diameter: Length, "Pitch diameter of the thread.";
        contour_feed: Velocity, "Feed at the bottom of the thread.";
        centre_feed: Velocity, "Feed of the cutter's centre, along the helix.";
        path_diameter: Length, "Diameter of the helix of the cutter's centre.";
        turns: Turns, "Turns at one axial position.";
        positions: Count, "Axial positions, each with its way in and out.";
        radial_depth: Length, "Radial depth on a straight wall that engages the cutter alike.";
        axial_depth: Length, "Axial depth of the plain cut that removes as much.";
        max_chip: Length, "Largest chip thickness, at the crest of a ring.";
        mean_chip: Length, "Mean chip thickness over the arc, on a flank.";
        removal_rate: VolumeRate, "Mean removal rate over a turn.";
        flank_widening: Length, "Amount by which each flank of an internal thread is milled too wide at the pitch diameter.";
        cutting_power: Power, "Power at the cutter, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        torque: Torque, "Torque for that.";
        mean_force: Force, "Mean tangential force for that.";
        peak_force: Force, "Peak force across the axis, the highest pair, worn edge.";
        deflection: Length, "Deflection of the cutter's tip under the peak force.";
        limit_power: Power, "Power that limits are checked with.";
        limit_torque: Torque, "Torque that limits are checked with.";
        travel: Length, "Travel of the cutter's centre at one axial position.";
        time: Time, "Time in the cut, with the moves between positions.";
    }
    example "6061", Hss, "small-cnc-mill",
        "major_diameter=36 mm; pitch=2 mm; thread_length=20 mm; diameter=20 mm; teeth=4; stick_out=42 mm";
    limits [CutterInBore, Deflection];
    cautions [
        "Program the feed of the cutter's centre, unless the control corrects arcs itself: never correct twice.",
        "A right-hand internal thread is climb milled against the clock from the bottom up; a left-hand one from the top down.",
        "Lead in on an arc that climbs its share of the pitch, or the thread gets a flat.",
        "Check the first thread with a gauge and correct by the radius, not by the depth.",
    ];
}

#[inline(always)]
fn internal(own: &Own) -> bool {
    own.thread.value < 0.5
}

/// A cutter as wide as the thread does not go in, which the limit says: the formulas of inside arcs get
/// one that just does.
#[inline(always)]
fn inside_diameter(own: &Own) -> Length {
    min(own.diameter, own.major_diameter * 0.999)
}

/// The thread, and how the cutter meets it.
#[derive(Clone, Copy)]
struct Meeting {
    minor: Length,
    /// Diameter of the contour that the feed is meant at: the bottom of the thread.
    contour: Length,
    /// Diameter of the path of the cutter's centre.
    circle: Length,
    /// Length of the thread that is cut at once.
    at_once: Length,
    side: Side,
    /// Feed of the cutter's centre over the feed at the contour.
    share: Ratio,
}

#[inline(always)]
fn meet(log: &mut impl Log, own: &Own) -> Meeting {
    let inside = internal(own);
    let (major, d) = (own.major_diameter, own.diameter);
    let bored = thread::thread_minor_diameter::value(major, own.pitch);
    let root = thread::thread_root_diameter::value(major, own.pitch);
    let d_in = inside_diameter(own);
    let minor = pick(
        log,
        inside,
        |log| thread::thread_minor_diameter::step(log, major, own.pitch),
        |log| thread::thread_root_diameter::step(log, major, own.pitch),
    );
    let circle = pick(
        log,
        inside,
        |log| path::inside_path_diameter::step(log, major, d_in),
        |log| path::outside_path_diameter::step(log, root, d),
    );
    let radial_depth = pick(
        log,
        inside,
        |log| path::bore_radial_depth::step(log, major, bored, d_in),
        |log| path::boss_radial_depth::step(log, root, major, d),
    );
    let share = select(
        inside,
        mills::inside_share(major, d_in),
        mills::outside_share(root, d),
    );
    let rings = max(own.rings_length, own.pitch);
    Meeting {
        minor,
        contour: select(inside, major, root),
        circle,
        at_once: min(own.thread_length, rings),
        side: Side {
            circle: select(inside, d_in, d),
            radial_depth: min(radial_depth, d),
            axial_depth: own.pitch,
            cutting_edge_angle: right_angle(),
            chip_width: own.pitch,
        },
        share,
    }
}

#[inline(always)]
fn tool(own: &Own) -> Tool {
    let given = own.flute_length.value > 0.0;
    Tool {
        diameter: own.diameter,
        teeth: own.teeth,
        helix_angle: si(0.0),
        flute_length: select(
            given,
            own.flute_length,
            max(own.thread_length, own.rings_length),
        ),
        shank_diameter: own.shank_diameter,
        stick_out: own.stick_out,
        body: own.body,
    }
}

impl Operate for ThreadMilling {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.diameter, own.pitch)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let met = meet(&mut NoRecord, own);
        let contour = own.programmed.value > 0.5;
        Start {
            diameter: own.diameter,
            cutting_speed: mills::wanted_speed(log, ground),
            highest_speed: si(f64::INFINITY),
            feed: met.side.wanted_feed(log, ground),
            least_feed: met.side.feed_for_chip(ground.smallest_chip) / met.share,
            feeds_per_rev: own.teeth * select(contour, one(), met.share),
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
        let inside = internal(own);
        let met = meet(log, own);
        let d_in = inside_diameter(own);
        let (d, contour) = (own.diameter, met.contour);
        let pitch_diameter =
            thread::thread_pitch_diameter::step(log, own.major_diameter, own.pitch);
        let contour_feed = rotation::table_feed::step(log, f, own.teeth, n);
        let centre_feed = pick(
            log,
            inside,
            |log| path::inside_arc_feed::step(log, contour_feed, contour, d_in),
            |log| path::outside_arc_feed::step(log, contour_feed, contour, d),
        );
        let per_tooth = rotation::feed_per_tooth::step(log, centre_feed, own.teeth, n);
        let turn = path::helix_turn_length::step(log, met.circle, own.pitch);
        let turn_time = time::cutting_time::step(log, turn, centre_feed);
        let (pitch, at_once) = (own.pitch, met.at_once);
        let removal_rate = pick(
            log,
            inside,
            |log| {
                thread_milling::thread_milling_removal_rate::step(
                    log,
                    pitch,
                    at_once,
                    pitch_diameter,
                    turn_time,
                )
            },
            |log| {
                thread_milling::external_thread_milling_removal_rate::step(
                    log,
                    pitch,
                    at_once,
                    pitch_diameter,
                    turn_time,
                )
            },
        );
        let crest = met.side.chips(log, per_tooth);
        // The flanks lie 30 deg from the normal to the axis, which is their cutting-edge angle: their
        // chips are the thinner and need the higher specific force.
        let flank = Side {
            cutting_edge_angle: si(FLANK),
            ..met.side
        };
        let chips = flank.chips(log, per_tooth);
        let powers = mills::powers(log, ground, removal_rate, chips.mean, n, met.side.circle);
        // A ring takes most at its crest and least at its foot, so that at the largest chip, where
        // only crests are in the cut, the mean width of the groove is on the safe side.
        let axial_depth = removal::axial_depth_for_removal_rate::step(
            log,
            removal_rate,
            met.side.radial_depth,
            centre_feed,
        );
        let side = Side {
            axial_depth,
            chip_width: axial_depth,
            ..met.side
        };
        let tool = tool(own);
        let peak = mills::peak(log, ground, &tool, &side, &crest, tool.fluted());
        let widening = thread_milling::internal_thread_mill_widening::value(
            own.pitch,
            pitch_diameter,
            min(d_in, pitch_diameter * 0.999),
            si(FLANK),
        );
        let several = own.rings_length.value > 0.0;
        let positions = pick(
            log,
            several,
            |log| {
                let shift = thread_milling::thread_mill_axial_shift::step(
                    log,
                    max(own.rings_length, own.pitch),
                    own.pitch,
                );
                surface::pass_count::step(log, own.thread_length, shift)
            },
            |_| one(),
        );
        let turns = pick(
            log,
            several,
            |_| one(),
            |log| {
                max(
                    path::helix_turns::step(log, own.thread_length, own.pitch),
                    one(),
                )
            },
        );
        let entry = path::half_circle_entry_length::step(log, met.circle);
        let travel = thread_milling::thread_milling_travel::step(log, turn, turns, entry);
        let time = surface::passes_time::step(log, positions, travel, centre_feed, own.link_time);
        let results = Results {
            minor_diameter: met.minor,
            pitch_diameter,
            contour_feed,
            centre_feed,
            path_diameter: met.circle,
            turns,
            positions,
            radial_depth: met.side.radial_depth,
            axial_depth,
            max_chip: crest.largest,
            mean_chip: chips.mean,
            removal_rate,
            flank_widening: select(inside, widening, si(0.0)),
            cutting_power: powers.cutting,
            motor_power: powers.motor,
            torque: powers.torque,
            mean_force: powers.mean_force,
            peak_force: peak.in_plane,
            deflection: peak.deflection,
            limit_power: powers.limit,
            limit_torque: powers.limit_torque,
            travel,
            time,
        };
        let loads = Loads {
            limit_power: powers.limit,
            limit_torque: powers.limit_torque,
            exponent: powers.exponent,
            chip: chips.mean,
            force: powers.mean_force,
            power: powers.cutting,
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
        _loads: &Loads,
        eye: &mut impl Eye,
    ) {
        let largest = thread_milling::thread_mill_largest_diameter::value(
            own.major_diameter,
            own.diameter_ratio,
        );
        eye.look(
            Look::most(LimitName::CutterInBore, own.diameter.value, largest.value)
                .only(internal(own))
                .from("share of the major diameter that keeps the flanks true")
                .change("take a smaller thread mill"),
        );
        mills::deflection_limit(
            results.deflection,
            ground.finishing_deflection,
            mills::peak_exponent(ground, results.max_chip),
            eye,
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        tool(own).doubt_stick_out(ground, doubt);
        mills::doubt_by_hand(ground, doubt);
        doubt.doubt(
            internal(own) & (own.diameter.value > results.minor_diameter.value * 0.98),
            WarningCode::OutsideValidity,
            "the cutter hardly goes into the bore at the minor diameter",
        );
    }
}

/// Angle of the flanks from the normal to the axis.
const FLANK: f64 = core::f64::consts::FRAC_PI_6;
