//! The uom types of the public API, one alias a kind, built from and read as SI values.
//!
//! Quantities are built from their SI value directly: uom's unit list holds rounded factors, and
//! its revolution per minute is an angular velocity, not a rotational speed.

use core::marker::PhantomData;
use uom::si::{Dimension, Units};

/// Any uom quantity over `f64`.
pub type Si<D> = uom::si::Quantity<D, uom::si::SI<f64>, f64>;

macro_rules! aliases {
    ($($(#[$doc:meta])* $name:ident = $uom:ident;)*) => {
        $($(#[$doc])* pub type $name = uom::si::f64::$uom;)*
    };
}

aliases! {
    /// Length in m.
    Length = Length;
    /// Area in m2.
    Area = Area;
    /// Speed along a path in m/s.
    Velocity = Velocity;
    /// Acceleration in m/s2.
    Acceleration = Acceleration;
    /// Time in s.
    Time = Time;
    /// Spindle speed in revolutions per second (never rad/s).
    RotationalSpeed = Frequency;
    /// Frequency of a vibration in Hz.
    Frequency = Frequency;
    /// Plane angle in rad.
    Angle = Angle;
    /// Pure number.
    Ratio = Ratio;
    /// Whole number, at least 1 unless said otherwise.
    Count = Ratio;
    /// Revolutions of a handwheel.
    Turns = Ratio;
    /// Force in N.
    Force = Force;
    /// Force per length of edge in N/m.
    LineForce = SurfaceTension;
    /// Spring stiffness in N/m.
    Stiffness = SurfaceTension;
    /// Stress, specific cutting force or unit power in Pa (J/m3).
    Pressure = Pressure;
    /// Power in W.
    Power = Power;
    /// Torque in N m.
    Torque = Torque;
    /// Energy in J.
    Energy = Energy;
    /// Volume per time in m3/s.
    VolumeRate = VolumeRate;
    /// Area per time in m2/s.
    AreaRate = DiffusionCoefficient;
    /// Money, in the currency of the shop.
    Money = Ratio;
    /// Money per second.
    MoneyRate = Frequency;
    /// Mass density in kg/m3.
    Density = MassDensity;
}

/// The quantity whose SI value is `value`.
#[inline(always)]
pub fn si<D: Dimension + ?Sized, U: Units<f64> + ?Sized>(
    value: f64,
) -> uom::si::Quantity<D, U, f64> {
    uom::si::Quantity {
        dimension: PhantomData,
        units: PhantomData,
        value,
    }
}
