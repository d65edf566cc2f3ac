//! Stock along a wall taken by plunges of an end mill along its axis.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::mills::{self, Tool};
use super::{Loads, Operate, Start};
use crate::formula::{chip, engagement, finish, force, path, practice, removal, rotation, surface};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::{LimitName, loads};
use crate::quantity::math::{PI, max, sin};
use crate::quantity::{Length, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    Plunging "plunging", "Plunge milling";
    meaning "Stock along a wall taken by plunges of an end mill along its axis, side by side.";
    tables Some(TableProcess::EndMilling);
    inputs {
        radial_depth a_e: Length, above 0.0, to diameter, "stock on the wall, across the axis";
        wall_length W: Length, above 0.0, to 20.0, "length of the wall";
        depth l: Length, above 0.0, to 2.0, "depth of the plunges";
        diameter D: Length, above 0.0, to 1.0, "cutter diameter";
        largest_step s: Length, above 0.0, to diameter, "largest step between two plunges, along the wall";
        core_diameter d_k: Length, above 0.0, to diameter - 2.0 * radial_depth, default 0.0, "diameter of the end's middle that does not cut: it must stay clear of the stock; left out of a cutter that cuts at its centre";
        teeth z: Count, from 1.0, to 200.0, "effective teeth of the cutter";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, default PI / 2.0, "angle between the end edges and the axis";
        feed_share k: Ratio, above 0.0, to 2.0, default 0.5, "feed per tooth along the axis over that of the table, which is for side cuts; common practice, no source";
        flute_length l_f: Length, above 0.0, to 1.0, "length of the flutes, from the tip";
        stick_out L: Length, from depth, to 2.0, "distance from the tip to the holder";
        shank_diameter d_s: Length, above 0.0, to 1.0, default 0.0, "diameter of the shank; the cutter's where it is not given";
        link_time t_l: Time, from 0.0, to 3600.0, default 2.0, "time between two plunges: lift and step; common practice, no source";
        clamping_force F: Force, above 0.0, to 1e7, default f64::INFINITY, "force that the jaws clamp with; not looked at where it is not given";
        friction mu: Ratio, above 0.0, to 1.0, default 0.15, "friction between jaws and work; 0.15 is common practice for smooth dry steel, no source";
    }
    choices {
        body: ["hss", "carbide"], 0.0, "what the cutter's body is made of";
    }
    results {
        passes: Count, "Plunges along the wall.";
        step: Length, "Step between two plunges.";
        feed_per_rev: Length, "Feed per revolution, along the axis.";
        chip_thickness: Length, "Chip thickness of an end edge.";
        removal_rate: VolumeRate, "Removal rate of a plunge after the first.";
        cutting_power: Power, "Power at the cutter, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        torque: Torque, "Torque for that.";
        mean_force: Force, "Mean tangential force for that.";
        peak_force: Force, "Peak force across the axis, the highest pair, worn edge.";
        deflection: Length, "Deflection of the cutter's tip under the peak force.";
        clamping_needed: Force, "Clamping force for the peak force, with the practice's safety.";
        scallop_height: Length, "Height of the ridges that the plunges leave on the wall.";
        limit_power: Power, "Power that limits are checked with: the heaviest plunge, a worn edge.";
        limit_torque: Torque, "Torque that limits are checked with.";
        travel: Length, "Travel of one plunge at feed.";
        time: Time, "Time of the wall, with the moves between plunges.";
    }
    example "1018", Hss, "small-cnc-mill",
        "radial_depth=4 mm; wall_length=60 mm; depth=25 mm; diameter=20 mm; largest_step=5 mm; teeth=4; flute_length=38 mm; stick_out=45 mm";
    limits [Stepover, FluteLength, Deflection, Clamping];
    cautions [
        "Only a cutter that cuts at its centre may plunge where its middle stands over stock.",
        "Lift at an angle off the wall: a straight retreat drags the edges.",
    ];
}

#[inline(always)]
fn tool(own: &Own) -> Tool {
    Tool {
        diameter: own.diameter,
        teeth: own.teeth,
        helix_angle: si(0.0),
        flute_length: own.flute_length,
        shank_diameter: own.shank_diameter,
        stick_out: own.stick_out,
        body: own.body,
    }
}

impl Operate for Plunging {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.diameter, own.radial_depth)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let table =
            practice::practice_feed_per_tooth::step(log, ground.feed_start, ground.feed_factor);
        Start {
            diameter: own.diameter,
            cutting_speed: mills::wanted_speed(log, ground),
            highest_speed: si(f64::INFINITY),
            feed: practice::practice_feed_per_tooth::step(log, table, own.feed_share),
            least_feed: ground.smallest_chip / sin(own.cutting_edge_angle),
            feeds_per_rev: own.teeth,
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
        let (d, a_e) = (own.diameter, own.radial_depth);
        let passes = surface::pass_count::step(log, own.wall_length, own.largest_step);
        let step = surface::equal_pass::step(log, own.wall_length, passes);
        let feed_per_rev = rotation::feed_per_rev::step(log, f, own.teeth);
        let feed_speed = rotation::table_feed::step(log, f, own.teeth, n);
        let h = chip::plunge_chip_thickness::step(log, f, own.cutting_edge_angle);
        let removal_rate = removal::plunge_removal_rate::step(log, a_e, step, feed_speed);
        let powers = mills::powers(log, ground, removal_rate, h, n, d);
        // All end edges in the arc at once cut the whole stock, as in the first plunge.
        let worst = ground.worst_force(log, h, one());
        let arc = engagement::engagement_angle::step(log, d, a_e);
        let edges = force::simultaneous_teeth::step(log, own.teeth, arc);
        let width = chip::turning_chip_width::step(log, a_e, own.cutting_edge_angle);
        let tangential = force::peak_tangential_force::step(log, worst.k, h, width, edges, one());
        let peak = mills::bent(log, ground, &tool, tangential, tool.fluted());
        // The first plunge stands alone in the stock; wide steps take as much after it.
        let first = removal::first_plunge_removal_rate::step(log, d, a_e, feed_speed);
        let largest = max(first, removal_rate);
        let (limit_power, limit_torque) = loads::rotary_load(log, worst.k, largest, n);
        let clamping_needed = loads::clamping_needed(
            log,
            peak.in_plane,
            si(0.0),
            own.friction,
            ground.safety,
            true,
        );
        let scallop_height = finish::scallop_height::step(log, d, step);
        let travel =
            practice::cut_travel::step(log, own.depth, si(0.0), si(0.0), ground.clearance / 2.0);
        let time = surface::passes_time::step(log, passes, travel, feed_speed, own.link_time);
        let results = Results {
            passes,
            step,
            feed_per_rev,
            chip_thickness: h,
            removal_rate,
            cutting_power: powers.cutting,
            motor_power: powers.motor,
            torque: powers.torque,
            mean_force: powers.mean_force,
            peak_force: peak.in_plane,
            deflection: peak.deflection,
            clamping_needed,
            scallop_height,
            limit_power,
            limit_torque,
            travel,
            time,
        };
        let checked = Loads {
            limit_power,
            limit_torque,
            exponent: powers.exponent,
            chip: h,
            force: powers.mean_force,
            power: powers.cutting,
            time,
        };
        (results, checked)
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
        let widest = path::largest_plunge_step::value(own.diameter, own.radial_depth);
        eye.look(
            Look::most(LimitName::Stepover, results.step.value, widest.value)
                .from("cutter and stock: above it something is left standing between two plunges")
                .change("take a smaller step or a larger cutter"),
        );
        tool(own).flute_limit(own.depth, si(0.0), eye);
        mills::deflection_limit(
            results.deflection,
            ground.roughing_deflection,
            loads.exponent,
            eye,
        );
        mills::clamping_limit(
            results.clamping_needed,
            own.clamping_force,
            loads.exponent,
            eye,
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, _results: &Results, doubt: &mut impl Doubt) {
        tool(own).doubt_stick_out(ground, doubt);
    }
}
