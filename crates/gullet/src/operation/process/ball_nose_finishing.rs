//! Flat and round surfaces finished in rows with a ball-nosed cutter.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::mills::{self, Tool};
use super::pick::pick;
use super::rows::{self, Area, Rows};
use super::{Loads, Operate, Start};
use crate::formula::{NoRecord, diameter, finish, surface};
use crate::operation::cut::Log;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{PI, max, select};
use crate::quantity::{Length, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    BallNoseFinishing "ball-nose-finishing", "Finishing with a ball nose";
    meaning "A flat or round surface finished in rows with a ball-nosed cutter.";
    tables Some(TableProcess::EndMilling);
    inputs {
        width W: Length, above 0.0, to 20.0, "width of the surface across the rows";
        length l: Length, above 0.0, to 20.0, "length of the surface along the rows";
        stock a_p: Length, above 0.0, to diameter / 2.0, "stock to be taken, along the surface normal";
        diameter D: Length, above 0.0, to 0.5, "diameter of the ball";
        teeth z: Count, from 1.0, to 100.0, "effective teeth of the cutter";
        wanted_scallop h: Length, above 0.0, to diameter / 2.0, "height that is allowed of the ridges between two rows and of the marks along one";
        wanted_stepover s: Length, above 0.0, to diameter, default 0.0, "step between two rows along the surface, in place of the one that the ridges allow";
        tilt_angle beta: Angle, from 0.0, to 75.0 * PI / 180.0, default 0.0, "tilt between the tool axis and the surface normal, in the plane of the row";
        slope_angle theta: Angle, from 0.0, to PI / 2.0, default 0.0, "slope of the surface across the rows, from the plane of the table";
        surface_radius rho: Length, above 0.0, to 1000.0, default f64::INFINITY, "radius of a convex or hollow surface across the rows";
        flute_length l_f: Length, above 0.0, to 1.0, "length of the flutes, from the tip";
        stick_out L: Length, above 0.0, to 2.0, "distance from the tip to the holder";
        shank_diameter d_s: Length, above 0.0, to 0.5, default 0.0, "diameter of the shank; the cutter's where it is not given";
        link_time t_l: Time, from 0.0, to 3600.0, default 0.0, "time between two rows";
    }
    choices {
        surface: ["flat", "convex", "hollow"], 0.0, "shape of the surface across the rows; flat too where no radius is given";
        body: ["hss", "carbide"], 0.0, "what the cutter's body is made of";
    }
    results {
        effective_diameter: Length, "Largest diameter that cuts, at which the cutting speed is meant.";
        contact_diameter: Length, "Diameter on which the point runs that leaves the surface.";
        passes: Count, "Rows over the surface.";
        stepover: Length, "Step between two rows along the surface.";
        scallop_height: Length, "Height of the ridges between two rows.";
        plan_step: Length, "Step between two rows in the plane of the table.";
        level_step: Length, "Step down between two rows.";
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
        mean_roughness: Length, "Ideal mean roughness across the rows.";
        limit_power: Power, "Power that limits are checked with.";
        limit_torque: Torque, "Torque that limits are checked with.";
        travel: Length, "Travel of a row at feed.";
        time: Time, "Time of the surface, with the moves between rows.";
    }
    example "6061", Hss, "small-cnc-mill",
        "width=40 mm; length=80 mm; stock=0.6 mm; diameter=16 mm; teeth=2; wanted_scallop=0.02 mm; tilt_angle=15 deg; flute_length=30 mm; stick_out=45 mm";
    limits [Stepover, CutterInBore, FluteLength, MeanRoughness, Deflection];
    cautions [
        "Upright on the surface the middle of a ball stands still and rubs: tilt the work or the axis where you can.",
        "Leave an even stock: a ball that meets a step of roughing digs in.",
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

/// Whether the surface is flat, or convex; else it is hollow.
#[inline(always)]
fn shape(own: &Own) -> (bool, bool) {
    let flat = (own.surface.value < 0.5) | (own.surface_radius.value == f64::INFINITY);
    (flat, own.surface.value < 1.5)
}

/// Radii that the formulas of convex and of hollow surfaces hold for, whichever applies: a ball that does
/// not go into the hollow is refused by its limit.
#[inline(always)]
fn radii(own: &Own) -> (Length, Length) {
    let (flat, _) = shape(own);
    let radius = select(flat, own.diameter, own.surface_radius);
    (radius, max(radius, own.diameter * 0.501))
}

/// The step that leaves ridges of the height allowed.
#[inline(always)]
fn allowed_step(log: &mut impl Log, own: &Own) -> Length {
    let (flat, convex) = shape(own);
    let (outside, inside) = radii(own);
    let (d, h) = (own.diameter, own.wanted_scallop);
    pick(
        log,
        flat,
        |log| finish::stepover_for_scallop::step(log, d, h),
        |log| {
            pick(
                log,
                convex,
                |log| surface::convex_stepover_for_scallop::step(log, d, outside, h),
                |log| surface::concave_stepover_for_scallop::step(log, d, inside, h),
            )
        },
    )
}

/// The ridges that a step leaves.
#[inline(always)]
fn ridges(log: &mut impl Log, own: &Own, s: Length) -> Length {
    let (flat, convex) = shape(own);
    let (outside, inside) = radii(own);
    let d = own.diameter;
    pick(
        log,
        flat,
        |log| finish::scallop_height::step(log, d, s),
        |log| {
            pick(
                log,
                convex,
                |log| surface::convex_scallop_height::step(log, d, outside, s),
                |log| surface::concave_scallop_height::step(log, d, inside, s),
            )
        },
    )
}

#[inline(always)]
fn lay(log: &mut impl Log, own: &Own) -> (Area, Rows) {
    let allowed = allowed_step(log, own);
    let effective_diameter =
        diameter::ball_effective_diameter::step(log, own.diameter, own.stock, own.tilt_angle);
    let given = own.wanted_stepover.value > 0.0;
    let area = Area {
        width: own.width,
        length: own.length,
        stock: own.stock,
        largest_step: select(given, own.wanted_stepover, allowed),
        tilt: own.tilt_angle,
        edge_diameter: own.diameter,
        effective_diameter,
        link_time: own.link_time,
    };
    let rows = rows::lay(log, &area);
    (area, rows)
}

impl Operate for BallNoseFinishing {
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
        let mean_roughness = finish::feed_mark_mean_roughness::step(log, scallop_height);
        let contact_diameter =
            surface::contact_diameter::step(log, own.diameter, own.diameter / 2.0, own.tilt_angle);
        let results = Results {
            effective_diameter: area.effective_diameter,
            contact_diameter,
            passes: rows.passes,
            stepover: rows.stepover,
            scallop_height,
            plan_step: surface::plan_step_for_stepover::step(log, rows.stepover, own.slope_angle),
            level_step: surface::level_step_for_stepover::step(log, rows.stepover, own.slope_angle),
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
        let (flat, convex) = shape(own);
        let allowed = allowed_step(&mut NoRecord, own);
        eye.look(
            Look::most(LimitName::Stepover, results.stepover.value, allowed.value)
                .from("ridges allowed between two rows")
                .change("take a smaller step or allow higher ridges"),
        );
        eye.look(
            Look::most(
                LimitName::CutterInBore,
                own.diameter.value,
                own.surface_radius.value * 2.0,
            )
            .only(!flat & !convex)
            .from("diameter of the hollow across the rows")
            .change("take a ball smaller than the hollow"),
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
        mills::doubt_feed_marks(results.feed_per_rev, own.diameter, doubt);
        doubt.doubt(
            results.contact_diameter.value < own.diameter.value / 20.0,
            WarningCode::OutsideValidity,
            "the middle of the ball stands still on the surface and rubs: a tilt of 10 to 15 deg avoids that",
        );
    }
}
