//! Generic machines with invented, labelled data, so that an example can run.

use super::{Drive, Feed, Machine, Readout};
use crate::error::{Result, unknown_name};
use crate::quantity::{RotationalSpeed, si};
use std::sync::OnceLock;

const INCH: f64 = 0.0254;
const INVENTED: &str = "invented data of a generic machine: put in your own";

impl Machine {
    /// Names of the built-in machines.
    pub const BUILTIN: &'static [&'static str] = &[
        "manual-knee-mill",
        "small-cnc-mill",
        "engine-lathe",
        "band-saw",
        "drill-press",
    ];

    /// The built-in machine of this name.
    pub fn builtin(name: &str) -> Result<Machine> {
        match name {
            "manual-knee-mill" => Ok(manual_knee_mill()),
            "small-cnc-mill" => Ok(small_cnc_mill()),
            "engine-lathe" => Ok(engine_lathe()),
            "band-saw" => Ok(band_saw()),
            "drill-press" => Ok(drill_press()),
            _ => Err(unknown_name("machine", name, Machine::BUILTIN.iter().copied()).into()),
        }
    }

    /// The built-in machines, in the order of [`Machine::BUILTIN`].
    ///
    /// ```
    /// use gullet::model::Machine;
    /// let mill = Machine::builtin("small-cnc-mill")?;
    /// assert!(Machine::all_builtin().contains(&mill));
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn all_builtin() -> &'static [Machine] {
        static ALL: OnceLock<Vec<Machine>> = OnceLock::new();
        ALL.get_or_init(|| {
            let names = Machine::BUILTIN.iter();
            names
                .filter_map(|name| Machine::builtin(name).ok())
                .collect()
        })
    }
}

fn rpm(value: f64) -> RotationalSpeed {
    si(value / 60.0)
}

/// A knee mill with stepped belts, cranked by hand, read off a digital readout.
fn manual_knee_mill() -> Machine {
    Machine {
        name: "manual knee mill (generic)".to_owned(),
        drive: Drive::Stepped(
            [70.0, 115.0, 190.0, 310.0, 500.0, 820.0, 1200.0, 2100.0]
                .map(rpm)
                .to_vec(),
        ),
        motor_power: si(1100.0),
        efficiency: si(0.75),
        base_speed: None,
        maximum_torque: None,
        feed: Feed::Hand,
        travel_per_turn: Some(si(0.2 * INCH)),
        graduation: Some(si(0.001 * INCH)),
        readout: Some(Readout {
            resolution: si(0.0005 * INCH),
        }),
        backlash: si(0.006 * INCH),
        rapid_speed: None,
        acceleration: None,
        origin: INVENTED.to_owned(),
    }
}

/// A small machining centre with a motor spindle.
fn small_cnc_mill() -> Machine {
    Machine {
        name: "small CNC mill (generic)".to_owned(),
        drive: Drive::Continuous {
            lowest: rpm(100.0),
            highest: rpm(6000.0),
        },
        motor_power: si(3700.0),
        efficiency: si(0.85),
        base_speed: Some(rpm(1500.0)),
        maximum_torque: None,
        feed: Feed::Continuous {
            lowest: si(1e-3 / 60.0),
            highest: si(5.0 / 60.0),
        },
        travel_per_turn: None,
        graduation: None,
        readout: Some(Readout {
            resolution: si(1e-6),
        }),
        backlash: si(0.0),
        rapid_speed: Some(si(15.0 / 60.0)),
        acceleration: Some(si(2.0)),
        origin: INVENTED.to_owned(),
    }
}

/// A lathe with a gearbox, its feeds geared to the spindle.
fn engine_lathe() -> Machine {
    Machine {
        name: "engine lathe (generic)".to_owned(),
        drive: Drive::Stepped(
            [
                40.0, 63.0, 100.0, 160.0, 250.0, 400.0, 630.0, 1000.0, 1600.0,
            ]
            .map(rpm)
            .to_vec(),
        ),
        motor_power: si(4000.0),
        efficiency: si(0.75),
        base_speed: None,
        maximum_torque: Some(si(400.0)),
        feed: Feed::Geared(
            [
                40e-6, 50e-6, 63e-6, 80e-6, 100e-6, 125e-6, 160e-6, 200e-6, 250e-6, 315e-6, 400e-6,
                500e-6, 630e-6, 800e-6,
            ]
            .map(si)
            .to_vec(),
        ),
        travel_per_turn: None,
        graduation: Some(si(20e-6)),
        readout: None,
        backlash: si(0.1e-3),
        rapid_speed: None,
        acceleration: None,
        origin: INVENTED.to_owned(),
    }
}

/// A horizontal band saw; its spindle is the wheel that drives the blade.
fn band_saw() -> Machine {
    Machine {
        name: "horizontal band saw (generic)".to_owned(),
        drive: Drive::Continuous {
            lowest: rpm(18.0),
            highest: rpm(110.0),
        },
        motor_power: si(1500.0),
        efficiency: si(0.7),
        base_speed: None,
        maximum_torque: None,
        feed: Feed::Continuous {
            lowest: si(0.0),
            highest: si(0.3 / 60.0),
        },
        travel_per_turn: None,
        graduation: None,
        readout: None,
        backlash: si(0.0),
        rapid_speed: None,
        acceleration: None,
        origin: INVENTED.to_owned(),
    }
}

/// A pillar drill with stepped belts, fed by the lever of its quill.
fn drill_press() -> Machine {
    Machine {
        name: "drill press (generic)".to_owned(),
        drive: Drive::Stepped(
            [
                160.0, 250.0, 360.0, 500.0, 720.0, 1000.0, 1450.0, 2000.0, 2900.0,
            ]
            .map(rpm)
            .to_vec(),
        ),
        motor_power: si(750.0),
        efficiency: si(0.75),
        base_speed: None,
        maximum_torque: None,
        feed: Feed::Hand,
        travel_per_turn: Some(si(0.1)),
        graduation: Some(si(0.001)),
        readout: None,
        backlash: si(0.0),
        rapid_speed: None,
        acceleration: None,
        origin: INVENTED.to_owned(),
    }
}
