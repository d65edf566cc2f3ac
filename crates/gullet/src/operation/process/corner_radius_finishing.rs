//! Flat surfaces finished in rows with a cutter that has a corner radius, upright or tilted.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::mills::{self, Tool};
use super::pick::pick;
use super::rows::{self, Area, Rows};
use super::{Loads, Operate, Start};
use crate::formula::{NoRecord, finish, surface};
use crate::operation::LimitName;
use crate::operation::cut::Log;
use crate::quantity::math::{PI, max, min, select};
use crate::quantity::{Length, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    CornerRadiusFinishing "corner-radius-finishing", "Finishing with a corner radius";
    meaning "A flat surface finished in rows with a cutter that has a corner radius, upright or tilted along the row.";
    tables Some(TableProcess::EndMilling);
    inputs {
        width W: Length, above 0.0, to 20.0, "width of the surface across the rows";
        length l: Length, above 0.0, to 20.0, "length of the surface along the rows";
        stock a_p: Length, above 0.0, to corner_radius, "stock to be taken, along the surface normal";
        diameter D: Length, above 0.0, to 0.5, "cutter diameter";
        corner_radius r: Length, above 0.0, to diameter / 2.0, "corner radius";
        teeth z: Count, from 1.0, to 100.0, "effective teeth of the cutter";
        wanted_scallop h: Length, above 0.0, to corner_radius, "height that is allowed of the ridges between two rows and of the marks along one";
        wanted_stepover s: Length, above 0.0, to diameter, default 0.0, "step between two rows, in place of the one that the ridges allow";
        tilt_angle beta: Angle, from 0.0, to 75.0 * PI / 180.0, default 0.0, "tilt between the tool axis and the surface normal, in the plane of the row";
        flute_length l_f: Length, above 0.0, to 1.0, "length of the flutes, from the tip";
        stick_out L: Length, above 0.0, to 2.0, "distance from the tip to the holder";
        shank_diameter d_s: Length, above 0.0, to 0.5, default 0.0, "diameter of the shank; the cutter's where it is not given";
        link_time t_l: Time, from 0.0, to 3600.0, default 0.0, "time between two rows";
    }
    choices {
        body: ["hss", "carbide"], 0.0, "what the cutter's body is made of";
    }
    results {
        effective_diameter: Length, "Largest diameter that cuts, at which the cutting speed is meant.";
        contact_diameter: Length, "Diameter on which the point runs that leaves the surface.";
        passes: Count, "Rows over the surface.";
        stepover: Length, "Step between two rows.";
        scallop_height: Length, "Height of the ridges between two rows; none where the flat end covers the step.";
        table_feed: Velocity, "Feed along a row.";
        feed_per_rev: Length, "Feed per revolution.";
        feed_mark_height: Length, "Height of the marks along a row.";
        max_chip: Length, "Largest chip thickness, mean along the edge.";
        mean_chip: Length, "Mean chip thickness over the arc.";
        removal_rate: VolumeRate, "Removal rate.";
        cutting_power: Power, "Power at the cutter, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        torque: Torque, "Torque for that.";
        mean_force: Force, "Mean tangential force for that.";
        peak_force: Force, "Peak force across the axis, the highest pair, worn edge.";
        deflection: Length, "Deflection of the cutter's tip under the peak force.";
        mean_roughness: Length, "Ideal mean roughness, of the higher of ridges and marks.";
        limit_power: Power, "Power that limits are checked with.";
        limit_torque: Torque, "Torque that limits are checked with.";
        travel: Length, "Travel of a row at feed.";
        time: Time, "Time of the surface, with the moves between rows.";
    }
    example "6061", Hss, "small-cnc-mill",
        "width=60 mm; length=80 mm; stock=0.4 mm; diameter=16 mm; corner_radius=2 mm; teeth=3; wanted_scallop=0.02 mm; tilt_angle=3 deg; flute_length=30 mm; stick_out=45 mm";
    limits [Stepover, FluteLength, MeanRoughness, Deflection];
    cautions [
        "Tilted along the row the heel clears; tilted the other way it rubs.",
        "Leave an even stock, and lead in on an arc: a straight plunge marks the floor.",
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

#[inline(always)]
fn is_upright(own: &Own) -> bool {
    own.tilt_angle.value <= 0.0
}

/// Diameter of the ball that leaves the ridges of the tilted cutter; upright none that counts.
#[inline(always)]
fn ball(log: &mut impl Log, own: &Own) -> Length {
    let tilt = max(own.tilt_angle, si(1e-9));
    surface::tilted_corner_scallop_radius::step(log, own.diameter, own.corner_radius, tilt) * 2.0
}

/// The step that leaves ridges of the height allowed: no wider than tilt and corners let it.
#[inline(always)]
fn allowed_step(log: &mut impl Log, own: &Own) -> Length {
    let h = own.wanted_scallop;
    let corners =
        surface::corner_stepover_for_scallop::step(log, own.diameter, own.corner_radius, h);
    pick(
        log,
        is_upright(own),
        |_| corners,
        |log| {
            let ball = ball(log, own);
            min(corners, finish::stepover_for_scallop::step(log, ball, h))
        },
    )
}

/// The ridges that a step leaves.
#[inline(always)]
fn ridges(log: &mut impl Log, own: &Own, s: Length) -> Length {
    let corners = surface::corner_scallop_height::step(log, own.diameter, own.corner_radius, s);
    pick(
        log,
        is_upright(own),
        |_| corners,
        |log| {
            let ball = ball(&mut NoRecord, own);
            max(corners, finish::scallop_height::step(log, ball, s))
        },
    )
}

#[inline(always)]
fn lay(log: &mut impl Log, own: &Own) -> (Area, Rows) {
    let allowed = allowed_step(log, own);
    let effective_diameter = surface::tilted_corner_effective_diameter::step(
        log,
        own.diameter,
        own.corner_radius,
        own.stock,
        own.tilt_angle,
    );
    let given = own.wanted_stepover.value > 0.0;
    let area = Area {
        width: own.width,
        length: own.length,
        stock: own.stock,
        largest_step: select(given, own.wanted_stepover, allowed),
        tilt: own.tilt_angle,
        edge_diameter: own.corner_radius * 2.0,
        effective_diameter,
        link_time: own.link_time,
    };
    let rows = rows::lay(log, &area);
    (area, rows)
}

impl Operate for CornerRadiusFinishing {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.diameter, own.stock)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let (_, rows) = lay(&mut NoRecord, own);
        Start {
            diameter: rows.side.circle,
            cutting_speed: mills::wanted_speed(log, ground),
            highest_speed: si(f64::INFINITY),
            feed: rows.side.wanted_feed(log, ground),
            least_feed: rows.side.feed_for_chip(ground.smallest_chip),
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
        let (area, rows) = lay(log, own);
        let cut = rows::cut(log, ground, &tool(own), &area, &rows, n, f);
        let scallop_height = ridges(log, own, rows.stepover);
        let higher = max(scallop_height, cut.feed_mark_height);
        let mean_roughness = finish::feed_mark_mean_roughness::step(log, higher);
        let contact_diameter =
            surface::contact_diameter::step(log, own.diameter, own.corner_radius, own.tilt_angle);
        let results = Results {
            effective_diameter: area.effective_diameter,
            contact_diameter,
            passes: rows.passes,
            stepover: rows.stepover,
            scallop_height,
            table_feed: cut.table_feed,
            feed_per_rev: cut.feed_per_rev,
            feed_mark_height: cut.feed_mark_height,
            max_chip: cut.chips.largest,
            mean_chip: cut.chips.mean,
            removal_rate: cut.removal_rate,
            cutting_power: cut.powers.cutting,
            motor_power: cut.powers.motor,
            torque: cut.powers.torque,
            mean_force: cut.powers.mean_force,
            peak_force: cut.peak.in_plane,
            deflection: cut.peak.deflection,
            mean_roughness,
            limit_power: cut.powers.limit,
            limit_torque: cut.powers.limit_torque,
            travel: cut.travel,
            time: cut.time,
        };
        (results, cut.loads())
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
        let allowed = allowed_step(&mut NoRecord, own);
        eye.look(
            Look::most(LimitName::Stepover, results.stepover.value, allowed.value)
                .from("ridges allowed between two rows")
                .change("take a smaller step or allow higher ridges"),
        );
        tool(own).flute_limit(own.stock, own.stock, eye);
        rows::marks_limit(results.feed_mark_height, own.wanted_scallop, eye);
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
        mills::doubt_feed_marks(results.feed_per_rev, own.corner_radius * 2.0, doubt);
    }
}
