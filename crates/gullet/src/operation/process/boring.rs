//! Boring: widening a bore along its axis with a bar.

use super::define::process;
use super::ground::Ground;
use super::lathe::{self, Edge};
use super::limits::{Doubt, Eye, Look};
use super::{Loads, Operate, Start};
use crate::formula::turning as formula;
use crate::formula::{deflection, diameter, finish, power, removal, rotation, time};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{PI, number, select};
use crate::quantity::{Length, Pressure, Ratio, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    Boring "boring", "Boring";
    meaning "One pass along a bore with a boring bar on a lathe.";
    tables Some(TableProcess::Turning);
    inputs {
        bore_before D_2: Length, above 0.0, to 5.0, "diameter of the bore before the pass";
        bore_after D_1: Length, above bore_before, to 5.0, "diameter of the bore after the pass";
        length l: Length, above 0.0, to 20.0, "length that is bored";
        bar_diameter d: Length, above 0.0, below bore_before, "diameter of the bar";
        overhang L: Length, above 0.0, to 5.0, "overhang of the bar from its holder";
        nose_radius r: Length, above 0.0, to 0.05, default 0.4e-3, "nose radius of the tool";
        cutting_edge_angle kappa_r: Angle, from 0.1, to PI / 2.0, default PI / 2.0, "tool cutting-edge angle, from the direction of feed: not the lead angle, which is the rest to 90 deg";
        edge_length l_e: Length, above 0.0, to 1.0, default f64::INFINITY, "length of the straight edge";
        thrust_share s: Ratio, from 0.0, to 2.0, default 0.6, "thrust in the plane of the cut over the cutting force; rough";
        mean_roughness R_a: Length, above 0.0, to 1e-3, default f64::INFINITY, "mean roughness wanted";
        run_out l_u: Length, from 0.0, to 1.0, default 0.0, "run-out beyond the end; none in a blind bore";
    }
    choices {
        bar: ["steel", "carbide"], 0.0, "what the bar is made of";
        pass: ["roughing", "finishing"], 0.0, "what the pass is for: a finishing pass starts faster, with a smaller feed";
    }
    results {
        depth_of_cut: Length, "Depth of cut, on the radius.";
        chip_thickness: Length, "Mean undeformed chip thickness.";
        removal_rate: VolumeRate, "Removal rate, at the mean diameter.";
        cutting_force: Force, "Cutting force, default pair, sharp edge.";
        passive_force: Force, "Force across the axis, the highest pair, worn edge; rough.";
        torque: Torque, "Torque at the work, default pair, sharp edge.";
        cutting_power: Power, "Power at the edge, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        limit_torque: Torque, "Torque that limits are checked with.";
        limit_power: Power, "Power that limits are checked with.";
        overhang_ratio: Ratio, "Overhang of the bar over its diameter.";
        radial_deflection: Length, "Deflection of the bar along the radius, for limits.";
        tangential_deflection: Length, "Drop of the bar's tip along the cutting direction, for limits.";
        diameter_error: Length, "What the radial one leaves on the diameter: the bore is smaller by it.";
        radius_error: Length, "What the drop leaves on the radius: the bore is larger by it.";
        peak_to_valley: Length, "Ideal peak-to-valley height of the feed marks.";
        ideal_roughness: Length, "Ideal mean roughness; real ones are 1.5 to 3 times that.";
        travel: Length, "Travel at feed with approach and run-out.";
        time: Time, "Time of the pass in the cut.";
    }
    example "1018", UncoatedCarbide, "engine-lathe", "bore_before=38 mm; bore_after=40 mm; length=50 mm; bar_diameter=25 mm; overhang=75 mm";
    limits [MeanRoughness, DepthOfCut, Deflection, Overhang];
    cautions [
        "Take the key out of the chuck before the spindle runs; turn the work once by hand past the bar.",
        "Chips fill a blind bore: stop, back the bar out and clear them with a hook, never with fingers.",
        "Measure with the spindle at rest and the bar clear of the bore.",
    ];
}

/// Inside a bore the chip bends back and rubs: specific cutting force over that of outside turning
/// (DIN tables as taught, from memory).
const INSIDE: f64 = 1.2;
/// Young's moduli of bars: steel 206 to 210, carbide 550 to 650 GPa (from memory), the softer ends.
const STEEL: f64 = 206e9;
const CARBIDE: f64 = 550e9;
/// Overhang over diameter (common practice, no source).
const STEEL_RATIO: f64 = 4.0;
const CARBIDE_RATIO: f64 = 6.0;
/// Bar over bore above which chips find no way out (common practice, no source).
const CROWDED: f64 = 0.8;

impl Own {
    #[inline(always)]
    fn edge(&self) -> Edge {
        Edge {
            nose_radius: self.nose_radius,
            cutting_edge_angle: self.cutting_edge_angle,
            thrust_share: self.thrust_share,
        }
    }

    #[inline(always)]
    fn depth(&self, log: &mut impl Log) -> Length {
        formula::depth_of_cut_from_diameters::step(log, self.bore_after, self.bore_before)
    }

    #[inline(always)]
    fn is_finishing(&self) -> bool {
        self.pass.value > 0.5
    }

    #[inline(always)]
    fn modulus(&self) -> Pressure {
        select(self.bar.value < 0.5, si(STEEL), si(CARBIDE))
    }

    #[inline(always)]
    fn longest(&self) -> Ratio {
        select(
            self.bar.value < 0.5,
            number(STEEL_RATIO),
            number(CARBIDE_RATIO),
        )
    }
}

impl Operate for Boring {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.bore_after, own.depth(&mut crate::formula::NoRecord))
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let (cutting_speed, feed) = lathe::wanted(log, ground, own.is_finishing());
        Start {
            diameter: own.bore_after,
            cutting_speed,
            highest_speed: si(f64::INFINITY),
            feed,
            least_feed: own.edge().least_feed(ground.smallest_chip),
            feeds_per_rev: one(),
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
        let depth = own.depth(log);
        let forces = own.edge().forces(log, ground, depth, f, number(INSIDE));
        let mean = diameter::turning_mean_diameter::step(log, own.bore_after, depth);
        let v_mean = rotation::cutting_speed::step(log, n, mean);
        let removal_rate = removal::turning_removal_rate::step(log, v_mean, f, depth);
        let torque = formula::turning_torque::step(log, forces.cutting, mean);
        let cutting_power = power::cutting_power::step(log, removal_rate, forces.k);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        let limit_torque = formula::turning_torque::step(log, forces.worst, mean);
        let limit_power = power::cutting_power::step(log, removal_rate, forces.worst_k);
        let (length, d, modulus) = (own.overhang, own.bar_diameter, own.modulus());
        let bend = deflection::cantilever_deflection::step;
        let radial_deflection = bend(log, forces.passive, length, d, modulus);
        let diameter_error =
            formula::diameter_error_of_radial_deflection::step(log, radial_deflection);
        let tangential_deflection = bend(log, forces.worst, length, d, modulus);
        let radius_error = formula::radius_error_of_tangential_deflection::step(
            log,
            tangential_deflection,
            own.bore_after,
        );
        let peak_to_valley = finish::turning_peak_to_valley::step(log, f, own.nose_radius);
        let ideal_roughness = finish::turning_mean_roughness::step(log, f, own.nose_radius);
        let approach =
            formula::turning_approach::step(log, depth, own.cutting_edge_angle, ground.clearance);
        let travel = formula::turning_travel::step(log, own.length, approach, own.run_out);
        let time = time::cutting_time::step(log, travel, rotation::feed_rate::value(f, n));
        let results = Results {
            depth_of_cut: depth,
            chip_thickness: forces.chip,
            removal_rate,
            cutting_force: forces.cutting,
            passive_force: forces.passive,
            torque,
            cutting_power,
            motor_power,
            limit_torque,
            limit_power,
            overhang_ratio: own.overhang / own.bar_diameter,
            radial_deflection,
            tangential_deflection,
            diameter_error,
            radius_error,
            peak_to_valley,
            ideal_roughness,
            travel,
            time,
        };
        let loads = Loads {
            limit_power,
            limit_torque,
            exponent: forces.exponent,
            chip: forces.chip,
            force: forces.cutting,
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
        lathe::edge_limits(
            eye,
            results.ideal_roughness,
            own.mean_roughness,
            results.depth_of_cut,
            own.edge_length,
            own.cutting_edge_angle,
        );
        let allowed = select(
            own.is_finishing(),
            ground.finishing_deflection,
            ground.roughing_deflection,
        );
        eye.look(
            Look::most(
                LimitName::Deflection,
                results.radial_deflection.value,
                allowed.value,
            )
            .with_feed(loads.exponent)
            .from("practice: deflection of a pass")
            .change("take a thicker or shorter bar, or a smaller depth"),
        );
        eye.look(
            Look::most(
                LimitName::Overhang,
                results.overhang_ratio.value,
                own.longest().value,
            )
            .from("common practice, no source: 4 diameters of a steel bar, 6 of carbide")
            .change("take a thicker, shorter or carbide bar"),
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, _ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        doubt.doubt(
            results.peak_to_valley.value > own.nose_radius.value / 8.0,
            WarningCode::OutsideValidity,
            "the feed is larger than the nose radius: the surface is a thread, and the ideal roughness reads low",
        );
        let share = own.bar_diameter / own.bore_before;
        doubt.doubt(
            share.value > CROWDED,
            WarningCode::OutsideValidity,
            "the bar fills the bore: chips find no way out",
        );
        doubt.doubt(
            own.overhang.value < own.length.value,
            WarningCode::OutsideValidity,
            "the bar is shorter than the bore is deep",
        );
    }
}
