//! Builds machine and practice: a built-in one, changed by the keys that are given.

use super::super::document::Reader;
use super::sections::{MachineKeys, PracticeKeys};
use crate::error::{Code, Problem};
use crate::model::{Drive, Feed, Machine, Practice, Readout};
use crate::quantity::{UnitSystem, si};

/// The machine of a job.
pub(in crate::plan) fn machine(reader: &mut Reader<'_>, units: UnitSystem) -> Machine {
    let keys: MachineKeys = reader.section();
    let base = keys.base.and_then(|base| Machine::builtin(base.0).ok());
    let changed = reader
        .given_in("machine", &["base", "name", "origin"])
        .join(", ");
    let based = base.is_some();
    let mut machine = base.unwrap_or_else(stand_in);
    machine.origin = origin(keys.origin, based.then_some(&machine.origin), &changed);
    if let Some(name) = keys.name {
        machine.name = name;
    }
    if let Some(steps) = keys.speeds {
        machine.drive = Drive::Stepped(steps);
    } else if reader.gives("machine.lowest_speed") || reader.gives("machine.highest_speed") {
        let (mut low, mut high) = (si(1e-9), si(1e5));
        if let Drive::Continuous { lowest, highest } = machine.drive {
            (low, high) = (lowest, highest);
        } else if based {
            other_end(reader, "lowest_speed", "highest_speed");
        }
        machine.drive = Drive::Continuous {
            lowest: keys.lowest_speed.unwrap_or(low),
            highest: keys.highest_speed.unwrap_or(high),
        };
    }
    if let Some(steps) = keys.feeds {
        machine.feed = Feed::Stepped(steps);
    } else if let Some(steps) = keys.feeds_per_rev {
        machine.feed = Feed::Geared(steps);
    } else if keys.feed.is_some() {
        machine.feed = Feed::Hand;
    } else if reader.gives("machine.lowest_feed") || reader.gives("machine.highest_feed") {
        let (mut low, mut high) = (si(0.0), si(10.0));
        if let Feed::Continuous { lowest, highest } = machine.feed {
            (low, high) = (lowest, highest);
        } else if based {
            other_end(reader, "lowest_feed", "highest_feed");
        }
        machine.feed = Feed::Continuous {
            lowest: keys.lowest_feed.unwrap_or(low),
            highest: keys.highest_feed.unwrap_or(high),
        };
    }
    replace(&mut machine.motor_power, keys.motor_power);
    replace(&mut machine.efficiency, keys.efficiency);
    replace(&mut machine.backlash, keys.backlash);
    machine.base_speed = keys.base_speed.or(machine.base_speed);
    machine.maximum_torque = keys.maximum_torque.or(machine.maximum_torque);
    machine.travel_per_turn = keys.travel_per_turn.or(machine.travel_per_turn);
    machine.graduation = keys.graduation.or(machine.graduation);
    machine.rapid_speed = keys.rapid_speed.or(machine.rapid_speed);
    machine.acceleration = keys.acceleration.or(machine.acceleration);
    let readout = keys
        .readout_resolution
        .map(|resolution| Readout { resolution });
    machine.readout = readout.or(machine.readout);
    reader.within("machine", machine.problems_in(units));
    machine
}

fn replace<T>(field: &mut T, given: Option<T>) {
    if let Some(given) = given {
        *field = given;
    }
}

/// Where the base has steps, both ends of a continuous range must be given.
fn other_end(reader: &mut Reader<'_>, low: &str, high: &str) {
    for (key, other) in [(low, high), (high, low)] {
        let path = format!("machine.{key}");
        if !reader.gives(&path) {
            reader.problem(Problem::new(
                Code::Missing,
                path,
                "",
                "",
                format!("the base machine has no such range: give {key} with {other}"),
            ));
        }
    }
}

/// Where the numbers come from, with the keys that a job changed.
fn origin(given: Option<String>, base: Option<&String>, changed: &str) -> String {
    match (given, base) {
        (Some(given), _) => given,
        (None, Some(base)) if changed.is_empty() => base.clone(),
        (None, Some(base)) => format!("{base}; changed by the job: {changed}"),
        (None, None) => "the shop's own data".to_owned(),
    }
}

/// A machine no field of which has a problem.
fn stand_in() -> Machine {
    Machine {
        name: "machine".to_owned(),
        drive: Drive::Continuous {
            lowest: si(1e-9),
            highest: si(1e5),
        },
        motor_power: si(1.0),
        efficiency: si(1.0),
        base_speed: None,
        maximum_torque: None,
        feed: Feed::Continuous {
            lowest: si(0.0),
            highest: si(10.0),
        },
        travel_per_turn: None,
        graduation: None,
        readout: None,
        backlash: si(0.0),
        rapid_speed: None,
        acceleration: None,
        origin: String::new(),
    }
}

/// The practice of a job; the reader admits only bases that exist.
pub(in crate::plan) fn practice(reader: &mut Reader<'_>, units: UnitSystem) -> Option<Practice> {
    let keys: PracticeKeys = reader.section();
    let changed = reader
        .given_in("practice", &["base", "name", "origin"])
        .join(", ");
    let base = keys.base.map_or("training", |base| base.0);
    let mut practice = Practice::builtin(base).ok()?;
    practice.origin = origin(keys.origin, Some(&practice.origin), &changed);
    let p = &mut practice;
    macro_rules! take {
        ($($field:ident),* $(,)?) => { $(replace(&mut p.$field, keys.$field);)* };
    }
    take!(
        name,
        speed_choice,
        speed_factor,
        feed_factor,
        thinning_cap,
        smallest_chip,
        finish_allowance,
        smallest_depth,
        roughing_deflection,
        finishing_deflection,
        power_share,
        holding_safety,
        wear_factor,
        radial_force_ratio,
        smallest_grip,
        stick_out_ratio,
        handwheel_pace,
        handwheel_return_pace,
        clearance,
        handling_per_pass,
        strip_width,
        jaw_clearance,
        setup_time,
        clamping_time,
        measuring_time,
        deburring_time,
        roughing_direction,
        finishing_direction,
        climb_depth_with_backlash,
    );
    for (field, given) in [
        (&mut p.roughing_depth.p, keys.roughing_depth_p),
        (&mut p.roughing_depth.m, keys.roughing_depth_m),
        (&mut p.roughing_depth.k, keys.roughing_depth_k),
        (&mut p.roughing_depth.n, keys.roughing_depth_n),
        (&mut p.roughing_depth.s, keys.roughing_depth_s),
        (&mut p.roughing_depth.h, keys.roughing_depth_h),
    ] {
        replace(field, given.map(|ratio| ratio.value));
    }
    reader.within("practice", practice.problems_in(units));
    Some(practice)
}
