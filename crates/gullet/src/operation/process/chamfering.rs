//! Chamfers along a straight edge, cut by the flank of a conical cutter.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::mills::{self, Side, Tool};
use super::{Loads, Operate, Start};
use crate::formula::{NoRecord, chamfer, chip, finish, practice, rotation, time};
use crate::operation::cut::Log;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::PI;
use crate::quantity::{Length, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    Chamfering "chamfering", "Chamfering";
    meaning "A chamfer along a straight edge, cut by the flank of a conical cutter in one pass.";
    tables Some(TableProcess::EndMilling);
    inputs {
        chamfer_width c: Length, above 0.0, to 0.05, "width of the chamfer, across the axis";
        edge_length l: Length, above 0.0, to 20.0, "length of the edge";
        point_angle sigma: Angle, from 20.0 * PI / 180.0, to 160.0 * PI / 180.0, default 90.0_f64.to_radians(), "angle of the whole cone";
        diameter D_c: Length, above 0.0, to 1.0, "largest diameter of the cone's edges";
        tip_diameter D_t: Length, from 0.0, below diameter, default 0.0, "diameter of the flat at the tip; 0 of a pointed cutter";
        tip_clearance u: Length, above 0.0, to 0.1, default 0.0005, "height of the tip below the chamfer's lower end, where it cuts nothing; common practice, no source";
        teeth z: Count, from 1.0, to 200.0, "effective teeth of the cutter";
        stick_out L: Length, above 0.0, to 2.0, "distance from the tip to the holder";
        shank_diameter d_s: Length, above 0.0, to 1.0, default 0.0, "diameter of the shank; the cutter's where it is not given";
        wanted_roughness R_a: Length, above 0.0, to 0.001, default f64::INFINITY, "mean roughness that the chamfer must reach";
    }
    choices {
        body: ["hss", "carbide"], 0.0, "what the cutter's body is made of";
    }
    results {
        cutting_edge_angle: Angle, "Angle between the cone's edge and the plane of the feed.";
        axial_depth: Length, "Depth of the chamfer along the axis.";
        effective_diameter: Length, "Largest diameter that cuts, at which the cutting speed is meant.";
        smallest_diameter: Length, "Smallest diameter that cuts, at the chamfer's lower end.";
        feed_per_rev: Length, "Feed per revolution.";
        max_chip: Length, "Largest chip thickness.";
        mean_chip: Length, "Mean chip thickness over the arc at the largest diameter.";
        removal_rate: VolumeRate, "Removal rate.";
        cutting_power: Power, "Power at the cutter, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        torque: Torque, "Torque for that.";
        mean_force: Force, "Mean tangential force for that.";
        peak_force: Force, "Peak force across the axis, the highest pair, worn edge.";
        deflection: Length, "Deflection of the cutter's tip under the peak force.";
        mean_roughness: Length, "Ideal mean roughness at the chamfer's lower end, where it is highest.";
        limit_power: Power, "Power that limits are checked with.";
        limit_torque: Torque, "Torque that limits are checked with.";
        travel: Length, "Travel with approach and clearance.";
        time: Time, "Time of the edge in the cut.";
    }
    example "1018", Hss, "small-cnc-mill",
        "chamfer_width=1.5 mm; edge_length=120 mm; diameter=12 mm; tip_diameter=2 mm; teeth=4; stick_out=30 mm";
    limits [EdgeReach, Deflection, MeanRoughness];
    cautions [
        "Keep the tip below the work: a point that cuts stands still and breaks.",
        "The chamfer grows with the depth: touch off on the edge and measure before the last pass.",
    ];
}

#[inline(always)]
fn tool(own: &Own) -> Tool {
    Tool {
        diameter: own.diameter,
        teeth: own.teeth,
        helix_angle: si(0.0),
        flute_length: own.stick_out,
        shank_diameter: own.shank_diameter,
        stick_out: own.stick_out,
        body: own.body,
    }
}

/// The cut as one of a face mill whose edge leans outward.
#[inline(always)]
fn side(log: &mut impl Log, own: &Own) -> Side {
    let kappa = chamfer::cone_cutting_edge_angle::step(log, own.point_angle);
    let axial_depth = chamfer::chamfer_depth::step(log, own.chamfer_width, own.point_angle);
    let circle = chamfer::chamfer_outer_diameter::step(
        log,
        own.tip_diameter,
        own.chamfer_width,
        own.tip_clearance,
        own.point_angle,
    );
    let chip_width = chip::turning_chip_width::step(log, axial_depth, kappa);
    Side {
        circle,
        radial_depth: own.chamfer_width,
        axial_depth,
        cutting_edge_angle: kappa,
        chip_width,
    }
}

impl Operate for Chamfering {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        let side = side(&mut NoRecord, own);
        (side.circle, side.axial_depth)
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let side = side(&mut NoRecord, own);
        Start {
            diameter: side.circle,
            cutting_speed: mills::wanted_speed(log, ground),
            highest_speed: si(f64::INFINITY),
            feed: side.wanted_feed(log, ground),
            least_feed: side.feed_for_chip(ground.smallest_chip),
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
        let side = side(log, own);
        let table_feed = rotation::table_feed::step(log, f, own.teeth, n);
        let chips = side.chips(log, f);
        let removal_rate = chamfer::chamfer_removal_rate::step(
            log,
            side.axial_depth,
            own.chamfer_width,
            table_feed,
        );
        let powers = mills::powers(log, ground, removal_rate, chips.mean, n, side.circle);
        // The cone's body is solid: its shank bends, not a fluted length.
        let peak = mills::peak(log, ground, &tool, &side, &chips, si(0.0));
        let feed_per_rev = rotation::feed_per_rev::step(log, f, own.teeth);
        let smallest_diameter = chamfer::chamfer_outer_diameter::step(
            log,
            own.tip_diameter,
            si(0.0),
            own.tip_clearance,
            own.point_angle,
        );
        let height = finish::feed_mark_height::step(log, feed_per_rev, smallest_diameter);
        let mean_roughness = finish::feed_mark_mean_roughness::step(log, height);
        let approach = time::peripheral_approach::step(log, side.circle, side.radial_depth);
        let travel =
            practice::cut_travel::step(log, own.edge_length, approach, si(0.0), ground.clearance);
        let time = time::cutting_time::step(log, travel, table_feed);
        let results = Results {
            cutting_edge_angle: side.cutting_edge_angle,
            axial_depth: side.axial_depth,
            effective_diameter: side.circle,
            smallest_diameter,
            feed_per_rev,
            max_chip: chips.largest,
            mean_chip: chips.mean,
            removal_rate,
            cutting_power: powers.cutting,
            motor_power: powers.motor,
            torque: powers.torque,
            mean_force: powers.mean_force,
            peak_force: peak.in_plane,
            deflection: peak.deflection,
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
        eye.look(
            Look::most(
                LimitName::EdgeReach,
                results.effective_diameter.value,
                own.diameter.value,
            )
            .from("cutter: largest diameter of its edges")
            .change("take a larger cutter, a smaller chamfer, or less clearance under the tip"),
        );
        mills::deflection_limit(
            results.deflection,
            ground.finishing_deflection,
            mills::peak_exponent(ground, results.max_chip),
            eye,
        );
        mills::roughness_limit(results.mean_roughness, own.wanted_roughness, eye);
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        tool(own).doubt_stick_out(ground, doubt);
        mills::doubt_feed_marks(results.feed_per_rev, results.smallest_diameter, doubt);
        doubt.doubt(
            results.smallest_diameter.value < results.effective_diameter.value / 4.0,
            WarningCode::OutsideValidity,
            "the lower end of the chamfer is cut at less than a quarter of the speed of its upper end: it may tear; set the tip lower",
        );
    }
}
