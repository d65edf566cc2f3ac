//! Kinds of quantity and the closed list of their units.

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
    /// Whole number, at least 1.
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

/// Which units a shop prints in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum UnitSystem {
    /// mm, m/min, N, kW.
    Metric,
    /// in, ft/min, lbf, hp.
    Inch,
}

/// A unit: its spellings and its exact size as `numerator/denominator` SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unit {
    /// ASCII symbol it is printed with.
    pub symbol: &'static str,
    /// Other spellings that are read.
    pub aliases: &'static [&'static str],
    /// Exact decimal numerator of the size in SI units.
    pub numerator: &'static str,
    /// Exact decimal denominator of the size in SI units.
    pub denominator: &'static str,
}
