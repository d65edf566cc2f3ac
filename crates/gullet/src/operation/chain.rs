//! The numeric chain of a milling pass: formulas only, the same for scalar calls, searches and
//! worked steps.

use super::cut::Log;
use super::request::Operation;
use crate::formula::{
    chip, deflection, diameter, engagement, finish, force, holding, power, practice, removal,
    rotation, time,
};
use crate::model::{CutterForm, Direction};
use crate::quantity::math::{max, number};
use crate::quantity::{
    Angle, Force, Kind, Length, Power, Pressure, Ratio, RotationalSpeed, Time, Torque, Velocity,
    VolumeRate, si,
};

/// A Kienzle pair.
#[derive(Debug, Clone, Copy)]
pub(super) struct Pair {
    pub kc11: Pressure,
    pub exponent: Ratio,
}

/// Unit power of the tables.
#[derive(Debug, Clone, Copy)]
pub(super) struct UnitPower {
    pub start: Pressure,
    /// Chip thickness it belongs to, where that is known.
    pub chip_thickness: Option<Length>,
    /// Efficiency of the drive it includes, where it was measured at the motor.
    pub drive_efficiency: Option<Ratio>,
}

/// Everything the chain needs, in quantities; made once a pass.
#[derive(Debug, Clone, Copy)]
pub(super) struct Inputs {
    pub operation: Operation,
    pub direction: Direction,
    pub finishing: bool,
    pub form: CutterForm,
    pub diameter: Length,
    pub teeth: Ratio,
    pub axial_depth: Length,
    pub radial_depth: Length,
    pub edge_low: Length,
    pub edge_high: Length,
    pub cutting_edge_angle: Angle,
    pub corner_radius: Length,
    pub helix_angle: Angle,
    pub default_pair: Pair,
    /// Every pair of the material, the default one first; repeated where there are fewer.
    pub pairs: [Pair; 3],
    pub wear_factor: Ratio,
    pub unit_power: Option<UnitPower>,
    pub motor_power: Power,
    pub efficiency: Ratio,
    pub power_share: Ratio,
    pub base_speed: RotationalSpeed,
    pub maximum_torque: Option<Torque>,
    pub overhang: Length,
    pub flute_length: Length,
    pub shank_diameter: Length,
    pub modulus: Pressure,
    pub radial_force_ratio: Ratio,
    pub friction: Ratio,
    pub safety: Ratio,
    pub cut_length: Length,
    pub clearance: Length,
}

/// What does not depend on speed and feed.
#[derive(Debug, Clone, Copy)]
pub(super) struct Geometry {
    pub effective_diameter: Length,
    pub entry_angle: Angle,
    pub exit_angle: Angle,
    pub arc: Angle,
    pub largest_sine: Ratio,
    pub chip_width: Length,
    pub travel: Length,
}

/// What follows from speed and feed.
#[derive(Debug, Clone, Copy)]
pub(super) struct Outcome {
    pub cutting_speed: Velocity,
    pub feed_per_rev: Length,
    pub table_feed: Velocity,
    pub max_chip: Length,
    pub mean_chip: Length,
    pub removal_rate: VolumeRate,
    pub specific_cutting_force: Pressure,
    pub cutting_power: Power,
    pub motor_power: Power,
    pub torque: Torque,
    pub mean_force: Force,
    pub unit_power_power: Option<Power>,
    pub limit_power: Power,
    pub limit_torque: Torque,
    pub peak_tangential_force: Force,
    pub peak_force: Force,
    pub axial_force: Force,
    pub deflection: Length,
    pub clamping_along: Force,
    pub clamping_across: Force,
    pub available_power: Power,
    pub available_torque: Torque,
    pub mean_roughness: Option<Length>,
    pub time: Time,
}

const NO_RAKE: Angle = Angle {
    dimension: core::marker::PhantomData,
    units: core::marker::PhantomData,
    value: 0.0,
};

/// Diameter that cuts at the depth of the pass.
pub(super) fn effective_diameter(log: &mut impl Log, inputs: &Inputs) -> Length {
    match inputs.form {
        CutterForm::BallNose => diameter::ball_effective_diameter::step(
            log,
            inputs.diameter,
            inputs.axial_depth,
            NO_RAKE,
        ),
        CutterForm::CornerRadius(radius) => diameter::corner_radius_effective_diameter::step(
            log,
            inputs.diameter,
            radius,
            inputs.axial_depth,
        ),
        CutterForm::FaceMill(angle) => diameter::face_mill_outer_diameter::step(
            log,
            inputs.diameter,
            inputs.axial_depth,
            angle,
        ),
        CutterForm::Square => inputs.diameter,
    }
}

/// Arc, teeth in cut, chip width and travel.
pub(super) fn geometry(log: &mut impl Log, inputs: &Inputs, effective: Length) -> Geometry {
    let Inputs {
        diameter: d,
        radial_depth: a_e,
        edge_low,
        edge_high,
        ..
    } = *inputs;
    let straight: Angle = si(core::f64::consts::PI);
    let (entry_angle, exit_angle, arc, largest_sine, approach) = match inputs.operation {
        Operation::SideMilling => {
            let arc = engagement::engagement_angle::step(log, d, a_e);
            let (entry, exit) = match inputs.direction {
                Direction::Conventional => {
                    (si(0.0), engagement::up_milling_exit_angle::value(d, a_e))
                }
                Direction::Climb => (
                    engagement::down_milling_entry_angle::step(log, d, a_e),
                    straight,
                ),
            };
            let sine = number(1.0) / chip::radial_thinning_factor::value(d, a_e);
            let approach = time::peripheral_approach::step(log, d, a_e);
            (entry, exit, arc, sine, approach)
        }
        Operation::Slotting => {
            let arc = engagement::engagement_angle::step(log, d, d);
            let approach = time::peripheral_approach::step(log, d, d);
            (si(0.0), straight, arc, number(1.0), approach)
        }
        Operation::FaceMilling => {
            let entry = engagement::face_entry_angle::step(log, d, edge_high);
            let exit = engagement::face_exit_angle::step(log, d, edge_low);
            let arc = engagement::face_engagement_angle::step(log, d, edge_low, edge_high);
            // The largest chip of one unit of feed is the largest sine in the arc.
            let unit: Length = si(1.0);
            let sine =
                chip::face_max_chip_thickness::value(unit, d, edge_low, edge_high, straight / 2.0)
                    / unit;
            let approach = if edge_low.value < 0.0 && edge_high.value > 0.0 && inputs.symmetric() {
                time::face_approach_centred::step(log, d, a_e)
            } else {
                // Off the centre the whole radius is the most that first contact can lie ahead.
                d / 2.0
            };
            (entry, exit, arc, sine, approach)
        }
    };
    let chip_width =
        chip::turning_chip_width::step(log, inputs.axial_depth, inputs.cutting_edge_angle);
    let sweeps_out = inputs.finishing || inputs.operation == Operation::Slotting;
    let overtravel = if sweeps_out && inputs.operation != Operation::SideMilling {
        d / 2.0
    } else {
        si(0.0)
    };
    let travel = practice::cut_travel::step(
        log,
        inputs.cut_length,
        approach,
        overtravel,
        inputs.clearance,
    );
    Geometry {
        effective_diameter: effective,
        entry_angle,
        exit_angle,
        arc,
        largest_sine,
        chip_width,
        travel,
    }
}

impl Inputs {
    fn symmetric(&self) -> bool {
        (self.edge_low.value + self.edge_high.value).abs() <= 1e-9 * self.diameter.value
    }

    pub(super) fn max_chip(&self, log: &mut impl Log, f_z: Length) -> Length {
        match self.operation {
            Operation::SideMilling | Operation::Slotting => chip::max_chip_thickness::step(
                log,
                f_z,
                self.diameter,
                self.radial_depth,
                self.cutting_edge_angle,
            ),
            Operation::FaceMilling => chip::face_max_chip_thickness::step(
                log,
                f_z,
                self.diameter,
                self.edge_low,
                self.edge_high,
                self.cutting_edge_angle,
            ),
        }
    }

    fn mean_chip(&self, log: &mut impl Log, f_z: Length) -> Length {
        match self.operation {
            Operation::SideMilling | Operation::Slotting => chip::mean_chip_thickness::step(
                log,
                f_z,
                self.diameter,
                self.radial_depth,
                self.cutting_edge_angle,
            ),
            Operation::FaceMilling => chip::face_mean_chip_thickness::step(
                log,
                f_z,
                self.diameter,
                self.edge_low,
                self.edge_high,
                self.cutting_edge_angle,
            ),
        }
    }

    /// Specific cutting force of one pair.
    pub(super) fn k_c(&self, log: &mut impl Log, pair: Pair, h: Length, factor: Ratio) -> Pressure {
        force::specific_cutting_force::step(
            log,
            pair.kc11,
            pair.exponent,
            h,
            NO_RAKE,
            NO_RAKE,
            number(0.01),
            factor,
        )
    }

    /// The pair with the highest specific cutting force at this chip thickness.
    pub(super) fn worst_pair(&self, h: Length) -> Pair {
        let silent = &mut crate::formula::NoRecord;
        let [a, b, c] = self
            .pairs
            .map(|pair| (pair, self.k_c(silent, pair, h, number(1.0))));
        let worse = if b.1.value > a.1.value { b } else { a };
        if c.1.value > worse.1.value {
            c.0
        } else {
            worse.0
        }
    }
}

/// Everything that follows from a spindle speed and a feed per tooth.
pub(super) fn outcome(
    log: &mut impl Log,
    inputs: &Inputs,
    geometry: &Geometry,
    n: RotationalSpeed,
    f_z: Length,
) -> Outcome {
    let z = inputs.teeth;
    let cutting_speed = rotation::cutting_speed::step(log, n, geometry.effective_diameter);
    let feed_per_rev = rotation::feed_per_rev::step(log, f_z, z);
    let table_feed = rotation::table_feed::step(log, f_z, z, n);
    let max_chip = inputs.max_chip(log, f_z);
    let mean_chip = inputs.mean_chip(log, f_z);
    let removal_rate = removal::milling_removal_rate::step(
        log,
        inputs.axial_depth,
        inputs.radial_depth,
        table_feed,
    );

    let k_c = inputs.k_c(log, inputs.default_pair, mean_chip, number(1.0));
    let cutting_power = power::cutting_power::step(log, removal_rate, k_c);
    let motor_power = power::motor_power::step(log, cutting_power, inputs.efficiency);
    let torque = power::cutting_torque::step(log, cutting_power, n);
    let mean_force = force::tangential_force::step(log, cutting_power, cutting_speed);
    let unit_power_power = inputs.unit_power.map(|unit_power| {
        let table = unit_power.start;
        let u = match unit_power.chip_thickness {
            Some(chip) => power::unit_power_at_chip::step(log, table, chip, mean_chip, number(0.2)),
            None => table,
        };
        let given = power::cutting_power::step(log, removal_rate, u);
        match unit_power.drive_efficiency {
            // What reaches the cutter of a power at the motor.
            Some(eta) => practice::usable_power::step(log, given, eta, number(1.0)),
            None => given,
        }
    });

    let worst = inputs.worst_pair(mean_chip);
    log.choose(Kind::Pressure, worst.kc11.value, || {
        "for limits the pair with the highest force, with a worn edge".to_owned()
    });
    let k_limit = inputs.k_c(log, worst, mean_chip, inputs.wear_factor);
    let limit_power = power::cutting_power::step(log, removal_rate, k_limit);
    let limit_torque = power::cutting_torque::step(log, limit_power, n);

    let worst = inputs.worst_pair(max_chip);
    let k_peak = inputs.k_c(log, worst, max_chip, inputs.wear_factor);
    let tooth_sum =
        force::tooth_sum_factor::step(log, z, geometry.arc, geometry.largest_sine, worst.exponent);
    let relief = force::helix_relief_factor::step(
        log,
        z,
        geometry.arc,
        mean_chip / max_chip,
        worst.exponent,
        tooth_sum,
        inputs.axial_depth,
        inputs.diameter,
        inputs.helix_angle,
    );
    let peak_tangential_force = force::peak_tangential_force::step(
        log,
        k_peak,
        max_chip,
        geometry.chip_width,
        tooth_sum,
        relief,
    );
    let peak_force =
        force::in_plane_force::step(log, peak_tangential_force, inputs.radial_force_ratio);
    let axial_force =
        force::helix_axial_force::step(log, peak_tangential_force, inputs.helix_angle);

    let flute_diameter =
        deflection::fluted_equivalent_diameter::step(log, inputs.diameter, number(0.8));
    let deflection = deflection::stepped_cutter_deflection::step(
        log,
        peak_force,
        inputs.overhang,
        inputs.flute_length,
        flute_diameter,
        inputs.shank_diameter,
        inputs.modulus,
    );
    let clamping_along = holding::required_clamping_force::step(
        log,
        peak_force,
        axial_force,
        inputs.friction,
        inputs.safety,
    );
    let clamping_across = holding::clamping_force_across::step(log, peak_force, inputs.safety);

    let usable = practice::usable_power::step(
        log,
        inputs.motor_power,
        inputs.efficiency,
        inputs.power_share,
    );
    let available_power = power::available_power::step(log, usable, inputs.base_speed, n);
    let mut available_torque = power::available_torque::step(log, usable, inputs.base_speed, n);
    if let Some(most) = inputs.maximum_torque {
        available_torque = crate::quantity::math::min(available_torque, most);
        log.choose(Kind::Torque, available_torque.value, || {
            "torque available, at most what the drive holds".to_owned()
        });
    }

    let mean_roughness = roughness(log, inputs, feed_per_rev);
    let time = time::cutting_time::step(log, geometry.travel, table_feed);
    Outcome {
        cutting_speed,
        feed_per_rev,
        table_feed,
        max_chip,
        mean_chip,
        removal_rate,
        specific_cutting_force: k_c,
        cutting_power,
        motor_power,
        torque,
        mean_force,
        unit_power_power,
        limit_power,
        limit_torque,
        peak_tangential_force,
        peak_force,
        axial_force,
        deflection,
        clamping_along,
        clamping_across,
        available_power,
        available_torque,
        mean_roughness,
        time,
    }
}

/// Theoretical roughness: of a wall from the feed marks of one tooth a revolution, of a floor from
/// the corner radius; no model for a sharp corner.
fn roughness(log: &mut impl Log, inputs: &Inputs, f: Length) -> Option<Length> {
    match inputs.operation {
        Operation::SideMilling => {
            if f.value > inputs.diameter.value {
                return None;
            }
            let height = finish::feed_mark_height::step(log, f, inputs.diameter);
            Some(finish::feed_mark_mean_roughness::step(log, height))
        }
        Operation::Slotting | Operation::FaceMilling => {
            let radius = inputs.corner_radius;
            (radius.value > 0.0 && f.value <= 2.0 * radius.value)
                .then(|| finish::turning_mean_roughness::step(log, f, radius))
        }
    }
}

/// The largest feed per revolution that meets a mean roughness; none where no model applies.
pub(super) fn feed_per_rev_for_roughness(
    log: &mut impl Log,
    inputs: &Inputs,
    wanted: Length,
) -> Option<Length> {
    match inputs.operation {
        Operation::SideMilling => Some(practice::feed_for_wall_roughness::step(
            log,
            wanted,
            inputs.diameter,
        )),
        Operation::Slotting | Operation::FaceMilling => (inputs.corner_radius.value > 0.0)
            .then(|| finish::feed_for_mean_roughness::step(log, wanted, inputs.corner_radius)),
    }
}

/// The larger clamping force of those needed.
pub(super) fn clamping_needed(outcome: &Outcome, across: bool) -> Force {
    if across {
        max(outcome.clamping_along, outcome.clamping_across)
    } else {
        outcome.clamping_along
    }
}
