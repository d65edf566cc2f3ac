//! The closed list of units: every spelling and every exact size, once.
//!
//! Sizes follow from the inch of 0.0254 m, the pound of 0.45359237 kg and the standard gravity of
//! 9.80665 m/s2: the pound-force is 4.4482216152605 N, the mechanical horsepower of 550 ft.lbf/s
//! 745.69987158227022 W, the metric horsepower of 75 kgf.m/s 735.49875 W.

use super::kind::{Kind, Unit, UnitSystem};

macro_rules! list {
    ($($symbol:literal $([$($alias:literal),* $(,)?])? = $numerator:literal / $denominator:literal;)*) => {
        &[$(Unit {
            symbol: $symbol,
            aliases: &[$($($alias),*)?],
            numerator: $numerator,
            denominator: $denominator,
        }),*]
    };
}

const NUMBER: &[Unit] = list! { "" = "1" / "1"; };

const RATIO: &[Unit] = list! {
    "" = "1" / "1";
    "%" ["percent"] = "1" / "100";
};

const TURNS: &[Unit] = list! {
    "turns" ["turn", "rev", "revs", "revolutions", "revolution", ""] = "1" / "1";
};

const LENGTH: &[Unit] = list! {
    "mm" [
        "millimetre", "millimetres", "millimeter", "millimeters",
        "mm/tooth", "mm/rev", "mm/r", "mm/turn", "mm/pass",
    ] = "1" / "1000";
    "in" [
        "inch", "inches", "\"", "''",
        "in/tooth", "in/rev", "in/r", "in/turn", "in/pass", "ipt", "ipr",
    ] = "0.0254" / "1";
    "thou" ["mil", "mils", "thou/tooth", "thou/rev"] = "0.0254" / "1000";
    "um" ["micrometre", "micrometres", "micrometer", "micrometers", "micron", "microns",
        "um/tooth", "um/rev"] = "1" / "1000000";
    "cm" [] = "1" / "100";
    "m" ["metre", "metres", "meter", "meters"] = "1" / "1";
    "ft" ["foot", "feet", "'"] = "0.3048" / "1";
    "uin" ["microinch", "microinches"] = "0.0254" / "1000000";
};

const AREA: &[Unit] = list! {
    "mm2" = "1" / "1000000";
    "cm2" = "1" / "10000";
    "m2" = "1" / "1";
    "in2" = "0.00064516" / "1";
};

const VELOCITY: &[Unit] = list! {
    "m/min" = "1" / "60";
    "ft/min" ["fpm", "sfm", "sfpm", "feet/min", "feet/minute"] = "0.3048" / "60";
    "mm/min" = "1" / "60000";
    "in/min" ["ipm", "inch/min", "inches/min", "inches/minute"] = "0.0254" / "60";
    "mm/s" = "1" / "1000";
    "in/s" ["ips"] = "0.0254" / "1";
    "m/s" = "1" / "1";
};

const ACCELERATION: &[Unit] = list! {
    "m/s2" = "1" / "1";
    "mm/s2" = "1" / "1000";
    "in/s2" = "0.0254" / "1";
    "ft/s2" = "0.3048" / "1";
};

const TIME: &[Unit] = list! {
    "s" ["sec", "second", "seconds"] = "1" / "1";
    "min" ["minute", "minutes"] = "60" / "1";
    "h" ["hr", "hour", "hours"] = "3600" / "1";
    "ms" = "1" / "1000";
};

/// Revolutions are counted, so that 1 rpm is 1/60 and never 2 pi/60.
const ROTATIONAL_SPEED: &[Unit] = list! {
    "rpm" ["rev/min", "revs/min", "r/min", "turns/min", "1/min", "/min", "min-1"] = "1" / "60";
    "rps" ["rev/s", "revs/s", "r/s", "turns/s", "1/s", "/s", "s-1"] = "1" / "1";
};

const FREQUENCY: &[Unit] = list! {
    "Hz" ["1/s", "s-1"] = "1" / "1";
    "kHz" = "1000" / "1";
};

/// pi to 50 places: far past what a double of any size can tell from pi itself.
const ANGLE: &[Unit] = list! {
    "deg" ["°", "degree", "degrees"] = "3.14159265358979323846264338327950288419716939937511" / "180";
    "rad" ["radian", "radians"] = "1" / "1";
};

const FORCE: &[Unit] = list! {
    "N" = "1" / "1";
    "kN" = "1000" / "1";
    "lbf" = "4.4482216152605" / "1";
};

const LINE_FORCE: &[Unit] = list! {
    "N/mm" = "1000" / "1";
    "N/m" = "1" / "1";
    "lbf/in" = "4.4482216152605" / "0.0254";
};

const STIFFNESS: &[Unit] = list! {
    "N/mm" = "1000" / "1";
    "N/um" = "1000000" / "1";
    "N/m" = "1" / "1";
    "lbf/in" = "4.4482216152605" / "0.0254";
};

const PRESSURE: &[Unit] = list! {
    "N/mm2" = "1000000" / "1";
    "MPa" = "1000000" / "1";
    "psi" ["lbf/in2"] = "4.4482216152605" / "0.00064516";
    "ksi" = "4448.2216152605" / "0.00064516";
    "GPa" = "1000000000" / "1";
    "kPa" = "1000" / "1";
    "Pa" ["N/m2"] = "1" / "1";
    "bar" = "100000" / "1";
    "J/mm3" = "1000000000" / "1";
    "W.s/mm3" ["W/(mm3/s)"] = "1000000000" / "1";
    "kW.min/cm3" ["kW/(cm3/min)"] = "60000000000" / "1";
    "kW/(cm3/s)" ["kW.s/cm3"] = "1000000000" / "1";
    "hp.min/in3" ["hp/(in3/min)"] = "44741.9922949362132" / "0.000016387064";
};

const POWER: &[Unit] = list! {
    "kW" = "1000" / "1";
    "hp" = "745.69987158227022" / "1";
    "W" = "1" / "1";
    "PS" = "735.49875" / "1";
};

const TORQUE: &[Unit] = list! {
    "N.m" ["Nm"] = "1" / "1";
    "lbf.ft" ["ft.lbf", "ft.lb", "lb.ft"] = "1.3558179483314004" / "1";
    "lbf.in" ["in.lbf", "in.lb", "lb.in"] = "0.1129848290276167" / "1";
    "N.mm" ["Nmm"] = "1" / "1000";
};

const ENERGY: &[Unit] = list! {
    "kJ" = "1000" / "1";
    "J" ["W.s"] = "1" / "1";
    "MJ" = "1000000" / "1";
    "kWh" ["kW.h"] = "3600000" / "1";
    "Wh" ["W.h"] = "3600" / "1";
    "hp.h" ["hph"] = "2684519.537696172792" / "1";
};

const VOLUME_RATE: &[Unit] = list! {
    "cm3/min" = "1" / "60000000";
    "in3/min" = "0.000016387064" / "60";
    "mm3/min" = "1" / "60000000000";
    "mm3/s" = "1" / "1000000000";
    "cm3/s" = "1" / "1000000";
    "m3/s" = "1" / "1";
};

const AREA_RATE: &[Unit] = list! {
    "cm2/min" = "1" / "600000";
    "in2/min" = "0.00064516" / "60";
    "mm2/min" = "1" / "60000000";
    "m2/s" = "1" / "1";
};

const MONEY_RATE: &[Unit] = list! {
    "money/h" ["/h", "/hr", "/hour", "money/hr", "money/hour"] = "1" / "3600";
    "money/min" ["/min", "/minute", "money/minute"] = "1" / "60";
};

const DENSITY: &[Unit] = list! {
    "kg/m3" = "1" / "1";
    "g/cm3" = "1000" / "1";
    "lb/in3" = "0.45359237" / "0.000016387064";
};

/// The units of a kind, the common ones first.
pub fn units(kind: Kind) -> &'static [Unit] {
    match kind {
        Kind::Length => LENGTH,
        Kind::Area => AREA,
        Kind::Velocity => VELOCITY,
        Kind::Acceleration => ACCELERATION,
        Kind::Time => TIME,
        Kind::RotationalSpeed => ROTATIONAL_SPEED,
        Kind::Frequency => FREQUENCY,
        Kind::Angle => ANGLE,
        Kind::Ratio => RATIO,
        Kind::Count | Kind::Money => NUMBER,
        Kind::Turns => TURNS,
        Kind::Force => FORCE,
        Kind::LineForce => LINE_FORCE,
        Kind::Stiffness => STIFFNESS,
        Kind::Pressure => PRESSURE,
        Kind::Power => POWER,
        Kind::Torque => TORQUE,
        Kind::Energy => ENERGY,
        Kind::VolumeRate => VOLUME_RATE,
        Kind::AreaRate => AREA_RATE,
        Kind::MoneyRate => MONEY_RATE,
        Kind::Density => DENSITY,
    }
}

/// The unit a column of plain numbers of this kind is in.
pub fn column_unit(kind: Kind, system: UnitSystem) -> &'static Unit {
    let usual = usual(kind);
    // Times have two usual units of one system.
    let place = usize::from(system == UnitSystem::Inch && usual.len() > 1 && kind != Kind::Time);
    let found = usual.get(place).and_then(|symbol| unit_of(kind, symbol));
    found.unwrap_or(&units(kind)[0])
}

fn unit_of(kind: Kind, symbol: &str) -> Option<&'static Unit> {
    units(kind).iter().find(|unit| unit.symbol == symbol)
}

/// One or two units that show a person how a quantity of this kind is written.
pub(super) fn usual(kind: Kind) -> &'static [&'static str] {
    match kind {
        Kind::Length => &["mm", "in"],
        Kind::Area => &["mm2", "in2"],
        Kind::Velocity => &["m/min", "ft/min"],
        Kind::Acceleration => &["m/s2", "in/s2"],
        Kind::Time => &["s", "min"],
        Kind::RotationalSpeed => &["rpm"],
        Kind::Frequency => &["Hz"],
        Kind::Angle => &["deg"],
        Kind::Ratio | Kind::Count | Kind::Money => &[""],
        Kind::Turns => &["turns"],
        Kind::Force => &["N", "lbf"],
        Kind::LineForce => &["N/mm", "lbf/in"],
        Kind::Stiffness => &["N/mm", "lbf/in"],
        Kind::Pressure => &["N/mm2", "psi"],
        Kind::Power => &["kW", "hp"],
        Kind::Torque => &["N.m", "lbf.ft"],
        Kind::Energy => &["kJ", "hp.h"],
        Kind::VolumeRate => &["cm3/min", "in3/min"],
        Kind::AreaRate => &["cm2/min", "in2/min"],
        Kind::MoneyRate => &["money/h"],
        Kind::Density => &["kg/m3", "lb/in3"],
    }
}
