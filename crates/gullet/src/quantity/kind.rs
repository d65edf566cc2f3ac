//! Kinds of quantity, systems of units, and what a unit is.

use super::decimal::Fraction;

/// What a number measures; decides which units may stand behind it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Kind {
    /// Length; SI unit m.
    Length,
    /// Area; SI unit m2.
    Area,
    /// Speed along a path; SI unit m/s.
    Velocity,
    /// Acceleration; SI unit m/s2.
    Acceleration,
    /// Time; SI unit s.
    Time,
    /// Spindle speed; SI unit 1/s, counting revolutions.
    RotationalSpeed,
    /// Frequency of a vibration; SI unit Hz.
    Frequency,
    /// Plane angle; SI unit rad.
    Angle,
    /// Pure number, may be written with %.
    Ratio,
    /// Whole number, at least 1; whoever takes it checks that, not the reading.
    Count,
    /// Revolutions of a handwheel.
    Turns,
    /// Force; SI unit N.
    Force,
    /// Force per length of edge; SI unit N/m.
    LineForce,
    /// Spring stiffness; SI unit N/m.
    Stiffness,
    /// Stress, specific cutting force, unit power; SI unit Pa.
    Pressure,
    /// Power; SI unit W.
    Power,
    /// Torque; SI unit N m.
    Torque,
    /// Energy; SI unit J.
    Energy,
    /// Volume per time; SI unit m3/s.
    VolumeRate,
    /// Area per time; SI unit m2/s.
    AreaRate,
    /// Money, no unit.
    Money,
    /// Money per time; SI unit 1/s.
    MoneyRate,
    /// Mass density; SI unit kg/m3.
    Density,
}

impl Kind {
    /// Every kind.
    pub const ALL: &'static [Kind] = &[
        Kind::Length,
        Kind::Area,
        Kind::Velocity,
        Kind::Acceleration,
        Kind::Time,
        Kind::RotationalSpeed,
        Kind::Frequency,
        Kind::Angle,
        Kind::Ratio,
        Kind::Count,
        Kind::Turns,
        Kind::Force,
        Kind::LineForce,
        Kind::Stiffness,
        Kind::Pressure,
        Kind::Power,
        Kind::Torque,
        Kind::Energy,
        Kind::VolumeRate,
        Kind::AreaRate,
        Kind::Money,
        Kind::MoneyRate,
        Kind::Density,
    ];

    /// Stable name in lower case, such as `rotational_speed`; the same in every binding.
    pub fn name(self) -> &'static str {
        match self {
            Kind::Length => "length",
            Kind::Area => "area",
            Kind::Velocity => "velocity",
            Kind::Acceleration => "acceleration",
            Kind::Time => "time",
            Kind::RotationalSpeed => "rotational_speed",
            Kind::Frequency => "frequency",
            Kind::Angle => "angle",
            Kind::Ratio => "ratio",
            Kind::Count => "count",
            Kind::Turns => "turns",
            Kind::Force => "force",
            Kind::LineForce => "line_force",
            Kind::Stiffness => "stiffness",
            Kind::Pressure => "pressure",
            Kind::Power => "power",
            Kind::Torque => "torque",
            Kind::Energy => "energy",
            Kind::VolumeRate => "volume_rate",
            Kind::AreaRate => "area_rate",
            Kind::Money => "money",
            Kind::MoneyRate => "money_rate",
            Kind::Density => "density",
        }
    }

    /// The kind of this name.
    pub fn from_name(name: &str) -> Option<Kind> {
        Kind::ALL.iter().copied().find(|kind| kind.name() == name)
    }

    /// The name as words, for messages.
    pub(super) fn words(self) -> String {
        self.name().replace('_', " ")
    }
}

/// Which units a shop prints in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum UnitSystem {
    /// mm, m/min, N, kW.
    Metric,
    /// in, ft/min, lbf, hp.
    Inch,
}

/// A unit: its spellings and its exact size as `numerator / denominator` SI units.
///
/// Spellings are stored as the reading normalises them: `mm2`, not `mm²` or `mm^2`; `N.m`, not
/// `N·m` or `N m`; `u` for micro.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Unit {
    /// ASCII symbol it is printed with; empty for a number without a unit.
    pub symbol: &'static str,
    /// Other spellings that are read.
    pub aliases: &'static [&'static str],
    /// Numerator of the size in SI units, a plain decimal.
    pub numerator: &'static str,
    /// Denominator of the size in SI units, a plain decimal.
    pub denominator: &'static str,
}

impl Unit {
    /// Size in SI units, rounded once.
    pub fn size(&self) -> f64 {
        Fraction::of_unit(self).to_f64()
    }

    /// The symbol as the end of a column's or a field's name: `m_per_min`, `n_per_mm2`, `lbf_ft`;
    /// empty for a number without a unit.
    ///
    /// ```
    /// use gullet::quantity::{Kind, unit};
    /// assert_eq!(unit(Kind::Velocity, "ft/min")?.suffix(), "ft_per_min");
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn suffix(&self) -> String {
        let symbol = self.symbol.replace('%', "percent").replace('/', "_per_");
        symbol
            .replace('.', "_")
            .replace(['(', ')'], "")
            .to_ascii_lowercase()
    }

    /// Every spelling, the symbol first.
    pub(super) fn spellings(&self) -> impl Iterator<Item = &'static str> {
        core::iter::once(self.symbol).chain(self.aliases.iter().copied())
    }
}
