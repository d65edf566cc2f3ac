//! What the tables say of a set-up, and the quantities the chain starts from.

use super::chain::{self, Inputs, Pair};
use super::request::{Operation, Pass, Setup};
use crate::error::{Code, Error, Problem, Result};
use crate::formula::rotation;
use crate::model::CutterForm;
use crate::quantity::math::{max, min};
use crate::quantity::{Length, Velocity, si};
use crate::table::{Kienzle, KienzlePair, MeasuredAt, Process, Ranged, UnitPower};

/// What the tables say of the material under this cutter.
pub(super) struct Tables {
    pub speed: Ranged<Velocity>,
    pub feed: Ranged<Length>,
    pub kienzle: Kienzle,
    pub unit_power: Option<UnitPower>,
}

fn process(setup: &Setup, pass: &Pass) -> Process {
    match pass.operation {
        Operation::FaceMilling if matches!(setup.cutter.form, CutterForm::FaceMill(_)) => {
            Process::FaceMilling
        }
        _ => Process::EndMilling,
    }
}

impl Tables {
    /// Feed per tooth at an axial depth.
    pub(super) fn feed(setup: &Setup, pass: &Pass, axial_depth: Length) -> Result<Ranged<Length>> {
        setup.library.feed_per_tooth(
            setup.material,
            setup.cutter.material,
            process(setup, pass),
            setup.cutter.diameter,
            axial_depth,
        )
    }

    pub(super) fn look_up(setup: &Setup, pass: &Pass) -> Result<Tables> {
        let process = process(setup, pass);
        let tool = setup.cutter.material;
        let library = setup.library;
        let mut problems = Vec::new();
        let mut keep = |error: Error| problems.extend(error.into_problems());
        let speed = library
            .cutting_speed(setup.material, tool, process)
            .or_else(|error| match pass.spindle_speed {
                Some(n) => asked_for(rotation::cutting_speed::value(n, setup.cutter.diameter)),
                None => Err(error),
            })
            .map_err(&mut keep)
            .ok();
        let feed = Tables::feed(setup, pass, pass.axial_depth)
            .or_else(|error| match pass.feed_per_tooth {
                Some(feed) => asked_for(feed),
                None => Err(error),
            })
            .map_err(&mut keep)
            .ok();
        let kienzle = library.kienzle(setup.material).map_err(&mut keep).ok();
        // The second method is an opinion beside the first: a cut does without it.
        let unit_power = library.unit_power(setup.material).ok();
        match (speed, feed, kienzle) {
            (Some(speed), Some(feed), Some(kienzle)) => Ok(Tables {
                speed,
                feed,
                kienzle,
                unit_power,
            }),
            _ => Err(Error::unless_empty(problems, ())
                .err()
                .unwrap_or_else(|| no_data("material").into())),
        }
    }
}

/// The job's own value where the tables hold none: all there is to compare with.
fn asked_for<T>(value: T) -> Result<Ranged<T>>
where
    T: Copy,
{
    Ok(Ranged {
        low: value,
        start: value,
        high: value,
        support: Vec::new(),
        assumptions: vec![
            "the tables hold no value for this material: the one asked for stands unchecked"
                .to_owned(),
        ],
    })
}

pub(super) fn no_data(parameter: &str) -> Problem {
    Problem::new(
        Code::NoData,
        parameter,
        "",
        "",
        "give speed, feed and cutting force in an overlay",
    )
}

pub(super) fn inputs(setup: &Setup, pass: &Pass, tables: &Tables) -> Inputs {
    let cutter = setup.cutter;
    let machine = setup.machine;
    let practice = setup.practice;
    let d = cutter.diameter;
    let half = d / 2.0;
    let zero: Length = si(0.0);
    let (edge_low, edge_high) = match pass.operation {
        Operation::FaceMilling => (
            max(pass.offset - pass.radial_depth / 2.0, zero - half),
            min(pass.offset + pass.radial_depth / 2.0, half),
        ),
        _ => (zero - half, half),
    };
    let radial_depth = match pass.operation {
        Operation::SideMilling => min(pass.radial_depth, d),
        Operation::Slotting => d,
        Operation::FaceMilling => edge_high - edge_low,
    };
    let default_pair = Pair::of(&tables.kienzle.default);
    let mut pairs = [default_pair; 3];
    for (slot, pair) in pairs.iter_mut().skip(1).zip(&tables.kienzle.others) {
        *slot = Pair::of(pair);
    }
    let unit_power = tables
        .unit_power
        .as_ref()
        .map(|unit_power| chain::UnitPower {
            start: unit_power.range.start,
            chip_thickness: unit_power.chip_thickness,
            drive_efficiency: match unit_power.measured_at {
                MeasuredAt::Motor { efficiency } => Some(efficiency.map_or(machine.efficiency, si)),
                _ => None,
            },
        });
    let [a, b, c] = pairs;
    let limit_pairs = [a, b, c, unit_power.map_or(a, |known| known.pair())];
    // A face mill's body is solid: its arbor bends, not a fluted length.
    let flute_length = match cutter.form {
        CutterForm::FaceMill(_) => zero,
        _ => cutter.flute_length,
    };
    Inputs {
        operation: pass.operation,
        direction: pass.direction,
        finishing: pass.kind == crate::model::PassKind::Finishing,
        form: cutter.form,
        diameter: d,
        teeth: si(f64::from(cutter.teeth)),
        axial_depth: pass.axial_depth,
        radial_depth,
        edge_low,
        edge_high,
        cutting_edge_angle: chain::edge_angle(cutter, pass.axial_depth),
        corner_radius: cutter.corner_radius(),
        helix_angle: cutter.helix_angle,
        default_pair,
        pairs,
        wear_factor: practice.wear_factor,
        limit_pairs,
        unit_power,
        motor_power: machine.motor_power,
        efficiency: machine.efficiency,
        power_share: practice.power_share,
        base_speed: machine.base_speed.unwrap_or(machine.speed_range().0),
        maximum_torque: machine.maximum_torque,
        overhang: cutter.stick_out,
        flute_length: min(flute_length, cutter.stick_out),
        shank_diameter: cutter.shank_diameter,
        modulus: cutter.modulus(),
        radial_force_ratio: practice.radial_force_ratio,
        friction: setup.hold.jaw_friction,
        safety: practice.holding_safety,
        cut_length: pass.length,
        clearance: practice.clearance,
    }
}

impl Pair {
    fn of(pair: &KienzlePair) -> Pair {
        Pair {
            kc11: pair.kc11,
            exponent: pair.exponent,
        }
    }
}
