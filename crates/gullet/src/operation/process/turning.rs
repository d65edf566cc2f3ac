//! Turning the outside of a part along its axis.

use super::define::process;
use super::ground::Ground;
use super::lathe::{self, Edge};
use super::limits::{Doubt, Eye, Look};
use super::pick::pick;
use super::{Loads, Operate, Start};
use crate::formula::turning as formula;
use crate::formula::{chuck, deflection, diameter, finish, power, removal, rotation, time};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{PI, max, number, select};
use crate::quantity::{Length, Pressure, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    Turning "turning", "Turning";
    meaning "One pass along the outside of a part on a lathe.";
    tables Some(TableProcess::Turning);
    inputs {
        outer_diameter D_1: Length, above 0.0, to 5.0, "diameter before the pass";
        finished_diameter D_2: Length, above 0.0, below outer_diameter, "diameter after the pass";
        length l: Length, above 0.0, to 20.0, "length that is turned";
        nose_radius r: Length, above 0.0, to 0.05, default 0.8e-3, "nose radius of the tool";
        cutting_edge_angle kappa_r: Angle, from 0.1, to PI / 2.0, default PI / 2.0, "tool cutting-edge angle, from the direction of feed: not the lead angle, which is the rest to 90 deg";
        edge_length l_e: Length, above 0.0, to 1.0, default f64::INFINITY, "length of the straight edge";
        thrust_share s: Ratio, from 0.0, to 2.0, default 0.6, "thrust in the plane of the cut over the cutting force; rough";
        mean_roughness R_a: Length, above 0.0, to 1e-3, default f64::INFINITY, "mean roughness wanted";
        work_length L: Length, from 0.0, to 20.0, default 0.0, "work from the jaws to its free end, or between its supports; 0 takes the length that is turned";
        run_out l_u: Length, from 0.0, to 1.0, default 0.0, "run-out beyond the end; none at a shoulder";
        static_grip F_0: Force, above 0.0, to 1e7, default f64::INFINITY, "sum of the jaw forces of the chuck at rest";
        grip_diameter D_g: Length, from 0.0, to 5.0, default 0.0, "diameter that the jaws grip; 0 takes the diameter before the pass";
        jaw_friction mu: Ratio, above 0.0, to 1.0, default 0.15, "friction between jaw and work: 0.15 for smooth steel, from memory";
    }
    choices {
        pass: ["roughing", "finishing"], 0.0, "what the pass is for: a finishing pass starts faster, with a smaller feed";
        support: ["chuck", "tailstock", "centres"], 0.0, "what holds the work: a chuck, a chuck and a centre, or two centres";
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
        static_grip_needed: Force, "Sum of the jaw forces at rest that the cut needs at this speed.";
        work_deflection: Length, "Deflection of the work, on the radius, for limits.";
        diameter_error: Length, "What that leaves on the diameter.";
        peak_to_valley: Length, "Ideal peak-to-valley height of the feed marks.";
        ideal_roughness: Length, "Ideal mean roughness; real ones are 1.5 to 3 times that.";
        travel: Length, "Travel at feed with approach and run-out.";
        time: Time, "Time of the pass in the cut.";
    }
    example "1018", UncoatedCarbide, "engine-lathe", "outer_diameter=60 mm; finished_diameter=56 mm; length=90 mm; static_grip=40 kN; maximum_speed=3000 rpm";
    limits [MeanRoughness, DepthOfCut, ChuckGrip, Deflection, WorkOverhang];
    cautions [
        "Take the key out of the chuck before the spindle runs; turn the work once by hand past the tool and the bed.",
        "Never touch long chips: they cut and pull in. Raise the feed or change the edge until they break.",
        "Keep sleeves, rags and emery cloth away from turning work; the jaws stand out and are not seen.",
    ];
}

/// Free length of the work over its diameter (common practice, no source): beyond it a steady rest.
const OVERHANG_CHUCK: f64 = 3.0;
const OVERHANG_SUPPORTED: f64 = 10.0;
/// Young's modulus where the tables hold none: that of aluminium, the softest of the usual ones.
const SOFT: f64 = 70e9;

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
        formula::depth_of_cut_from_diameters::step(log, self.outer_diameter, self.finished_diameter)
    }

    #[inline(always)]
    fn is_finishing(&self) -> bool {
        self.pass.value > 0.5
    }

    #[inline(always)]
    fn is_in_chuck_alone(&self) -> bool {
        self.support.value < 0.5
    }

    #[inline(always)]
    fn is_between_centres(&self) -> bool {
        self.support.value > 1.5
    }

    #[inline(always)]
    fn free_length(&self) -> Length {
        max(self.work_length, self.length)
    }
}

/// Young's modulus of the work, the softest usual one where the tables hold none.
#[inline(always)]
fn modulus(ground: &Ground) -> Pressure {
    let unknown = ground.work_modulus.value.is_nan();
    select(unknown, si(SOFT), ground.work_modulus)
}

impl Operate for Turning {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.outer_diameter, own.depth(&mut crate::formula::NoRecord))
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let (cutting_speed, feed) = lathe::wanted(log, ground, own.is_finishing());
        Start {
            diameter: own.outer_diameter,
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
        let forces = own.edge().forces(log, ground, depth, f, one());
        let mean = diameter::turning_mean_diameter::step(log, own.outer_diameter, depth);
        let v_mean = rotation::cutting_speed::step(log, n, mean);
        let removal_rate = removal::turning_removal_rate::step(log, v_mean, f, depth);
        let torque = formula::turning_torque::step(log, forces.cutting, mean);
        let cutting_power = power::cutting_power::step(log, removal_rate, forces.k);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        let limit_torque = formula::turning_torque::step(log, forces.worst, mean);
        let limit_power = power::cutting_power::step(log, removal_rate, forces.worst_k);
        // A centre pushes the work along the jaws no less than the feed does: the feed counts.
        let grips = own.grip_diameter.value > 0.0;
        let grip = chuck::required_chuck_grip::step(
            log,
            forces.worst,
            forces.feed,
            own.outer_diameter,
            select(grips, own.grip_diameter, own.outer_diameter),
            own.jaw_friction,
            ground.safety,
        );
        let static_grip_needed = lathe::grip_at_rest(log, grip, n, own.maximum_speed);
        let (length, d, modulus) = (own.free_length(), own.finished_diameter, modulus(ground));
        let passive = forces.passive;
        let work_deflection = pick(
            log,
            own.is_in_chuck_alone(),
            |log| deflection::cantilever_deflection::step(log, passive, length, d, modulus),
            |log| {
                pick(
                    log,
                    own.is_between_centres(),
                    |log| {
                        deflection::work_deflection_between_centres::step(
                            log, passive, length, d, modulus,
                        )
                    },
                    |log| {
                        deflection::work_deflection_chuck_and_centre::step(
                            log, passive, length, d, modulus,
                        )
                    },
                )
            },
        );
        let diameter_error =
            formula::diameter_error_of_radial_deflection::step(log, work_deflection);
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
            passive_force: passive,
            torque,
            cutting_power,
            motor_power,
            limit_torque,
            limit_power,
            static_grip_needed,
            work_deflection,
            diameter_error,
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
        let chucked = !own.is_between_centres();
        eye.look(
            Look::most(
                LimitName::ChuckGrip,
                results.static_grip_needed.value,
                own.static_grip.value,
            )
            .only(chucked & (own.static_grip.value < f64::INFINITY))
            .with_feed(loads.exponent)
            .from(lathe::GRIP_ORIGIN)
            .change(lathe::GRIP_REMEDY),
        );
        let allowed = select(
            own.is_finishing(),
            ground.finishing_deflection,
            ground.roughing_deflection,
        );
        eye.look(
            Look::most(
                LimitName::Deflection,
                results.work_deflection.value,
                allowed.value,
            )
            .with_feed(loads.exponent)
            .from("practice: deflection of a pass")
            .change("support the work by a centre or a steady rest, or take a smaller depth"),
        );
        let longest = select(
            own.is_in_chuck_alone(),
            number(OVERHANG_CHUCK),
            number(OVERHANG_SUPPORTED),
        );
        let ratio = own.free_length() / own.outer_diameter;
        eye.look(
            Look::most(LimitName::WorkOverhang, ratio.value, longest.value)
                .from("common practice, no source: 3 diameters from a chuck, 10 with a centre")
                .change("support the work by a centre or a steady rest"),
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, ground: &Ground, results: &Results, doubt: &mut impl Doubt) {
        doubt.doubt(
            ground.work_modulus.value.is_nan(),
            WarningCode::Assumed,
            "the tables hold no Young's modulus of the work: 70 GPa taken",
        );
        // f = r where f^2/(8 r) = r/8.
        doubt.doubt(
            results.peak_to_valley.value > own.nose_radius.value / 8.0,
            WarningCode::OutsideValidity,
            "the feed is larger than the nose radius: the surface is a thread, and the ideal roughness reads low",
        );
        doubt.doubt(
            own.mean_roughness.value < FINEST,
            WarningCode::OutsideValidity,
            "real surfaces are rougher than the ideal one by some tenths of a micrometre whatever the feed",
        );
    }
}

/// Mean roughness below which the ideal one says little (common practice, no source).
const FINEST: f64 = 0.4e-6;
