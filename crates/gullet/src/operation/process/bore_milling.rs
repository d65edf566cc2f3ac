//! Widening a hole to size with an end mill that runs round inside it.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::mills::{self, Side, Tool, right_angle};
use super::{Loads, Operate, Start};
use crate::formula::{path, removal, rotation, surface, thread_milling};
use crate::operation::LimitName;
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::quantity::math::{PI, min, select};
use crate::quantity::{Length, Ratio, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    BoreMilling "bore-milling", "Bore milling";
    meaning "A hole widened to size by an end mill that runs round inside it, level by level.";
    tables Some(TableProcess::EndMilling);
    inputs {
        bore_diameter D_f: Length, above 0.0, to 5.0, "diameter of the bore after the pass";
        start_diameter D_w: Length, from bore_diameter - 2.0 * diameter, below bore_diameter, "diameter of the hole before the pass; a stock on the radius wider than the cutter would leave a ring standing";
        depth l: Length, above 0.0, to 1.0, "depth of the bore";
        largest_level a: Length, above 0.0, to 1.0, default f64::INFINITY, "largest depth of one level; the whole depth where it is not given";
        diameter D_c: Length, above 0.0, below bore_diameter, "cutter diameter";
        teeth z: Count, from 1.0, to 200.0, "effective teeth of the cutter";
        flute_length l_f: Length, above 0.0, to 1.0, "length of the flutes, from the tip";
        stick_out L: Length, from depth, to 2.0, "distance from the tip to the holder";
        shank_diameter d_s: Length, above 0.0, to 1.0, default 0.0, "diameter of the shank; the cutter's where it is not given";
        helix_angle beta: Angle, from 0.0, to 80.0 * PI / 180.0, default 30.0_f64.to_radians(), "helix angle of the flutes";
        wanted_roughness R_a: Length, above 0.0, to 0.001, default f64::INFINITY, "mean roughness that the wall must reach";
        clamping_force F: Force, above 0.0, to 1e7, default f64::INFINITY, "force that the jaws clamp with; not looked at where it is not given";
        friction mu: Ratio, above 0.0, to 1.0, default 0.15, "friction between jaws and work; 0.15 is common practice for smooth dry steel, no source";
        link_time t_l: Time, from 0.0, to 3600.0, default 0.0, "time between two levels";
    }
    choices {
        pass: ["roughing", "finishing"], 0.0, "what the pass is for, which decides how far the cutter may bend";
        body: ["hss", "carbide"], 0.0, "what the cutter's body is made of";
        programmed: ["centre", "contour"], 0.0, "what the control takes the feed for; one that corrects arcs itself is given the feed at the contour";
    }
    results {
        contour_feed: Velocity, "Feed at the wall of the bore.";
        centre_feed: Velocity, "Feed of the cutter's centre.";
        feed_per_rev: Length, "Feed per revolution at the wall.";
        radial_depth: Length, "Radial depth on a straight wall that engages the cutter alike.";
        levels: Count, "Levels of the bore.";
        axial_depth: Length, "Depth of one level.";
        max_chip: Length, "Largest chip thickness.";
        mean_chip: Length, "Mean chip thickness over the arc.";
        removal_rate: VolumeRate, "Removal rate on the full circle.";
        cutting_power: Power, "Power at the cutter, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        torque: Torque, "Torque for that.";
        mean_force: Force, "Mean tangential force for that.";
        peak_force: Force, "Peak force across the axis, the highest pair, worn edge.";
        axial_force: Force, "Force along the axis for that, which lifts the work.";
        deflection: Length, "Deflection of the cutter's tip under the peak force.";
        clamping_needed: Force, "Clamping force for the peak forces, with the practice's safety.";
        mean_roughness: Length, "Ideal mean roughness of the wall.";
        limit_power: Power, "Power that limits are checked with.";
        limit_torque: Torque, "Torque that limits are checked with.";
        travel: Length, "Travel of the cutter's centre at one level: half circle in, circle, half circle out.";
        time: Time, "Time in the cut, with the moves between levels.";
    }
    example "1018", Hss, "small-cnc-mill",
        "bore_diameter=62 mm; start_diameter=56 mm; depth=14 mm; largest_level=7 mm; diameter=20 mm; teeth=4; flute_length=40 mm; stick_out=45 mm";
    limits [CutterInBore, FluteLength, Deflection, Clamping, MeanRoughness];
    cautions [
        "Program the feed of the cutter's centre, unless the control corrects arcs itself: never correct twice.",
        "Run round against the clock with a right-hand cutter for a climb cut; lead in and out on an arc, or the wall keeps a mark.",
        "Chips pack in the bore: blow them out, never with the cutter turning in reach of a hand.",
    ];
}

#[inline(always)]
fn tool(own: &Own) -> Tool {
    Tool {
        diameter: own.diameter,
        teeth: own.teeth,
        helix_angle: own.helix_angle,
        flute_length: own.flute_length,
        shank_diameter: own.shank_diameter,
        stick_out: own.stick_out,
        body: own.body,
    }
}

/// Levels, and the side cut that each comes down to.
#[inline(always)]
fn side(log: &mut impl Log, own: &Own) -> (Ratio, Side) {
    let levels = surface::pass_count::step(log, own.depth, min(own.depth, own.largest_level));
    let axial_depth = surface::equal_pass::step(log, own.depth, levels);
    let radial_depth =
        path::bore_radial_depth::step(log, own.bore_diameter, own.start_diameter, own.diameter);
    let side = Side {
        circle: own.diameter,
        radial_depth,
        axial_depth,
        cutting_edge_angle: right_angle(),
        chip_width: axial_depth,
    };
    (levels, side)
}

impl Operate for BoreMilling {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        let (_, side) = side(&mut crate::formula::NoRecord, own);
        (own.diameter, side.axial_depth)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let (_, side) = side(&mut crate::formula::NoRecord, own);
        let share = mills::inside_share(own.bore_diameter, own.diameter);
        let contour = own.programmed.value > 0.5;
        Start {
            diameter: own.diameter,
            cutting_speed: mills::wanted_speed(log, ground),
            highest_speed: si(f64::INFINITY),
            feed: side.wanted_feed(log, ground),
            least_feed: side.feed_for_chip(ground.smallest_chip) / share,
            feeds_per_rev: own.teeth * select(contour, one(), share),
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
        let tool = tool(own);
        let (levels, side) = side(log, own);
        let feed = mills::inside_feed(log, f, own.teeth, n, own.bore_diameter, own.diameter);
        let chips = side.chips(log, feed.per_tooth);
        let removal_rate = removal::milling_removal_rate::step(
            log,
            side.axial_depth,
            side.radial_depth,
            feed.centre,
        );
        let powers = mills::powers(log, ground, removal_rate, chips.mean, n, side.circle);
        let peak = mills::peak(log, ground, &tool, &side, &chips, tool.fluted());
        // The force turns with the cutter's place on the circle: along the jaws and across them.
        let clamping_needed = crate::operation::loads::clamping_needed(
            log,
            peak.in_plane,
            peak.axial,
            own.friction,
            ground.safety,
            true,
        );
        let feed_per_rev = rotation::feed_per_rev::step(log, f, own.teeth);
        let roughness =
            mills::bore_wall_roughness(log, own.bore_diameter, own.diameter, feed_per_rev);
        let circle = path::inside_path_diameter::step(log, own.bore_diameter, own.diameter);
        let round = path::helix_turn_length::step(log, circle, si(0.0));
        let entry = path::half_circle_entry_length::step(log, circle);
        let travel = thread_milling::thread_milling_travel::step(log, round, one(), entry);
        let time = surface::passes_time::step(log, levels, travel, feed.centre, own.link_time);
        let results = Results {
            contour_feed: feed.contour,
            centre_feed: feed.centre,
            feed_per_rev,
            radial_depth: side.radial_depth,
            levels,
            axial_depth: side.axial_depth,
            max_chip: chips.largest,
            mean_chip: chips.mean,
            removal_rate,
            cutting_power: powers.cutting,
            motor_power: powers.motor,
            torque: powers.torque,
            mean_force: powers.mean_force,
            peak_force: peak.in_plane,
            axial_force: peak.axial,
            deflection: peak.deflection,
            clamping_needed,
            mean_roughness: roughness,
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
        let tool = tool(own);
        let exponent = mills::peak_exponent(ground, results.max_chip);
        eye.look(
            Look::most(
                LimitName::CutterInBore,
                own.diameter.value,
                own.start_diameter.value,
            )
            .from("the hole that the cutter goes down in")
            .change("take a smaller cutter, drill the start hole larger, or enter on a helix"),
        );
        tool.flute_limit(own.depth, results.axial_depth, eye);
        let bound = select(
            own.pass.value < 0.5,
            ground.roughing_deflection,
            ground.finishing_deflection,
        );
        mills::deflection_limit(results.deflection, bound, exponent, eye);
        mills::clamping_limit(results.clamping_needed, own.clamping_force, exponent, eye);
        mills::roughness_limit(results.mean_roughness, own.wanted_roughness, eye);
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        tool(own).doubt_stick_out(ground, doubt);
        mills::doubt_by_hand(ground, doubt);
        mills::doubt_feed_marks(results.feed_per_rev, own.diameter, doubt);
    }
}
