//! A bore sunk into solid work by an end mill on a helix.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::mills::{self, Side, Tool, right_angle};
use super::{Loads, Operate, Start};
use crate::formula::{NoRecord, path, practice, removal, rotation, time};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{PI, max, min, number, select};
use crate::quantity::{Angle, Length, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    HelicalEntry "helical-entry", "Helical entry";
    meaning "A bore sunk into solid work by an end mill on a helix.";
    tables Some(TableProcess::EndMilling);
    inputs {
        bore_diameter D_f: Length, above 0.0, to 5.0, "diameter of the bore";
        depth l: Length, above 0.0, to 1.0, "depth of the bore";
        diameter D_c: Length, above 0.0, below bore_diameter, "cutter diameter";
        corner_radius r: Length, from 0.0, to diameter / 2.0, default 0.0, "corner radius of the cutter";
        teeth z: Count, from 1.0, to 200.0, "effective teeth of the cutter";
        ramp_angle alpha: Angle, from 0.1 * PI / 180.0, to 30.0 * PI / 180.0, default 2.0_f64.to_radians(), "ramp angle of the cutter's centre; 1 to 3 deg is common practice, no source";
        largest_ramp_angle alpha_max: Angle, above 0.0, to PI / 2.0, default f64::INFINITY, "steepest ramp that the cutter's maker allows";
        core_diameter d_k: Length, above 0.0, to diameter, default 0.0, "diameter of the end's middle that does not cut, of a cutter that does not cut at its centre; the whole end where it is not given";
        core_clearance h_k: Length, from 0.0, to 0.1, default 0.0, "height of that middle above the edges";
        flute_length l_f: Length, above 0.0, to 1.0, "length of the flutes, from the tip";
        stick_out L: Length, from depth, to 2.0, "distance from the tip to the holder";
        shank_diameter d_s: Length, above 0.0, to 1.0, default 0.0, "diameter of the shank; the cutter's where it is not given";
        helix_angle beta: Angle, from 0.0, to 80.0 * PI / 180.0, default 30.0_f64.to_radians(), "helix angle of the flutes";
        clamping_force F: Force, above 0.0, to 1e7, default f64::INFINITY, "force that the jaws clamp with; not looked at where it is not given";
        friction mu: Ratio, above 0.0, to 1.0, default 0.15, "friction between jaws and work; 0.15 is common practice for smooth dry steel, no source";
    }
    choices {
        hole: ["through", "blind"], 0.0, "whether the helix breaks through; a blind bore gets a full circle on its floor and must leave no pillar";
        centre_cutting: ["yes", "no"], 0.0, "whether the cutter cuts at its centre";
        body: ["hss", "carbide"], 0.0, "what the cutter's body is made of";
        programmed: ["centre", "contour"], 0.0, "what the control takes the feed for; one that corrects arcs itself is given the feed at the contour";
    }
    results {
        contour_feed: Velocity, "Feed at the wall of the bore.";
        centre_feed: Velocity, "Feed of the cutter's centre, along the helix.";
        axial_feed: Velocity, "Part of it along the axis.";
        feed_per_rev: Length, "Feed per revolution at the wall.";
        path_diameter: Length, "Diameter of the helix of the cutter's centre.";
        axial_per_turn: Length, "Depth that one turn of the helix gains.";
        slug_diameter: Length, "Diameter of the slug that a through bore wider than twice the cutter leaves; else 0.";
        turns: Turns, "Turns of the helix, with the clearance.";
        max_chip: Length, "Largest chip thickness.";
        mean_chip: Length, "Mean chip thickness over the arc.";
        removal_rate: VolumeRate, "Removal rate between the first turn and the last.";
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
        travel: Length, "Travel of the cutter's centre.";
        time: Time, "Time in the cut.";
    }
    example "6061", Hss, "small-cnc-mill",
        "bore_diameter=30 mm; depth=10 mm; diameter=20 mm; teeth=3; flute_length=38 mm; stick_out=45 mm";
    limits [CutterInBore, RampAngle, FluteLength, Deflection, Clamping];
    cautions [
        "Program the feed of the cutter's centre, unless the control corrects arcs itself: never correct twice.",
        "A cutter that does not cut at its centre must never be fed straight down: keep the ramp within its limit.",
        "Chips pack in the bore: blow them out all the way down.",
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

/// Diameter of the helix, and a slot as deep as one turn: ahead of the cutter stands the floor of the
/// turn before.
#[inline(always)]
fn slot(log: &mut impl Log, own: &Own) -> (Length, Side) {
    let circle = path::inside_path_diameter::step(log, own.bore_diameter, own.diameter);
    let axial_depth = path::axial_per_turn_for_ramp::step(log, own.ramp_angle, circle);
    let side = Side {
        circle: own.diameter,
        radial_depth: own.diameter,
        axial_depth,
        cutting_edge_angle: right_angle(),
        chip_width: axial_depth,
    };
    (circle, side)
}

/// Diameter of what the inner side of the cutter leaves standing.
#[inline(always)]
fn slug(own: &Own, circle: Length) -> Length {
    max(
        path::inside_path_diameter::value(circle, own.diameter),
        si(0.0),
    )
}

/// Diameter of the end's middle that does not cut.
#[inline(always)]
fn core(own: &Own) -> Length {
    let whole = select(
        own.core_diameter.value > 0.0,
        own.core_diameter,
        own.diameter,
    );
    select(own.centre_cutting.value < 0.5, si(0.0), whole)
}

/// Steepest ramp: the maker's limit comes first; infinite where nothing limits it.
#[inline(always)]
fn steepest(own: &Own) -> Angle {
    let core = core(own);
    let geometric = path::core_ramp_angle::value(own.core_clearance, core);
    let marked = own.largest_ramp_angle;
    let unmarked = select(core.value > 0.0, geometric, si(f64::INFINITY));
    select(marked.value < f64::INFINITY, marked, unmarked)
}

impl Operate for HelicalEntry {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.diameter, slot(&mut NoRecord, own).1.axial_depth)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let (_, side) = slot(&mut NoRecord, own);
        let share = mills::inside_share(own.bore_diameter, own.diameter);
        let contour = own.programmed.value > 0.5;
        Start {
            diameter: own.diameter,
            cutting_speed: mills::wanted_speed(log, ground),
            highest_speed: si(f64::INFINITY),
            feed: practice::practice_feed_per_tooth::step(
                log,
                ground.feed_start,
                ground.feed_factor,
            ),
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
        let (circle, side) = slot(log, own);
        let feed = mills::inside_feed(log, f, own.teeth, n, own.bore_diameter, own.diameter);
        let axial_feed = path::helix_axial_feed::step(log, feed.centre, circle, side.axial_depth);
        let chips = side.chips(log, feed.per_tooth);
        let slug_diameter = slug(own, circle);
        let removal_rate =
            removal::bore_removal_rate::step(log, own.bore_diameter, slug_diameter, axial_feed);
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
        let mean_roughness =
            mills::bore_wall_roughness(log, own.bore_diameter, own.diameter, feed_per_rev);
        let through = own.hole.value < 0.5;
        let depth = practice::cut_travel::step(
            log,
            own.depth,
            si(0.0),
            select(through, ground.clearance, si(0.0)),
            ground.clearance / 2.0,
        );
        let turns = path::helix_turns::step(log, depth, side.axial_depth);
        let on_floor = select(through, number(0.0), one());
        let travel = path::helix_travel::step(log, depth, side.axial_depth, circle, on_floor);
        let time = time::cutting_time::step(log, travel, feed.centre);
        let results = Results {
            contour_feed: feed.contour,
            centre_feed: feed.centre,
            axial_feed,
            feed_per_rev,
            path_diameter: circle,
            axial_per_turn: side.axial_depth,
            slug_diameter,
            turns,
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
            mean_roughness,
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
        let smallest = path::smallest_helix_bore::value(own.diameter, core(own));
        let largest = path::largest_helix_bore::value(own.diameter, own.corner_radius);
        let bore = own.bore_diameter;
        let blind = own.hole.value > 0.5;
        let wide = blind & ((bore / largest).value > (smallest / bore).value);
        eye.look(
            Look::most(
                LimitName::CutterInBore,
                select(wide, bore, smallest).value,
                select(wide, largest, bore).value,
            )
            .from("cutter: smallest bore that its middle leaves no pillar in, largest blind one that its flat end clears")
            .change("take another diameter of cutter, or one that cuts at its centre"),
        );
        let steepest = steepest(own);
        eye.look(
            Look::most(LimitName::RampAngle, own.ramp_angle.value, steepest.value)
                .only(steepest.value < f64::INFINITY)
                .from("cutter: the ramp its maker or the middle of its end allows")
                .change("take a flatter ramp, or give core_diameter with core_clearance, or largest_ramp_angle, of the cutter"),
        );
        tool.flute_limit(own.depth, min(own.depth, results.axial_per_turn), eye);
        mills::deflection_limit(
            results.deflection,
            ground.roughing_deflection,
            exponent,
            eye,
        );
        mills::clamping_limit(results.clamping_needed, own.clamping_force, exponent, eye);
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        tool(own).doubt_stick_out(ground, doubt);
        mills::doubt_by_hand(ground, doubt);
        doubt.doubt(
            results.slug_diameter.value > 0.0,
            WarningCode::OutsideValidity,
            "the bore is wider than twice the cutter: a slug comes loose at the end and can jam",
        );
        mills::doubt_feed_marks(results.feed_per_rev, own.diameter, doubt);
    }
}
