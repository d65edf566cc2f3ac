//! Numbers of a card in the units of the shop and the steps of its readout.

use crate::quantity::{
    Kind, Length, RotationalSpeed, Time, UnitSystem, Velocity, format, format_digits, format_in,
};

/// Prints in a shop's units, positions in the steps of its readout.
#[derive(Clone, Copy)]
pub(in crate::plan) struct Print {
    pub system: UnitSystem,
    pub resolution: Length,
}

impl Print {
    pub fn any(&self, kind: Kind, si: f64) -> String {
        format(kind, si, self.system)
    }

    /// A force, torque, power or time: three digits are more than such models are good for.
    pub fn load(&self, kind: Kind, si: f64) -> String {
        format_digits(kind, si, self.system, 3)
    }

    pub fn named(&self, kind: Kind, si: f64, metric: &str, inch: &str, digits: u32) -> String {
        let unit = match self.system {
            UnitSystem::Metric => metric,
            UnitSystem::Inch => inch,
        };
        format_in(kind, si, unit, digits).unwrap_or_else(|_| format(kind, si, self.system))
    }

    pub fn cutting_speed(&self, v: Velocity) -> String {
        self.named(Kind::Velocity, v.value, "m/min", "ft/min", 3)
    }

    pub fn feed(&self, v: Velocity) -> String {
        self.named(Kind::Velocity, v.value, "mm/min", "in/min", 3)
    }

    pub fn speed(&self, n: RotationalSpeed) -> String {
        self.any(Kind::RotationalSpeed, n.value)
    }

    pub fn length(&self, length: Length) -> String {
        self.any(Kind::Length, length.value)
    }

    /// A chip, a feed or a deflection: three digits, however small.
    pub fn fine(&self, length: Length) -> String {
        self.named(Kind::Length, length.value, "mm", "in", 3)
    }

    /// The step of the readout, in the unit in which it is a short number.
    pub fn step(&self) -> String {
        let inches = self.resolution.value / 0.0254 * 1e5;
        let system = if (inches - inches.round()).abs() < 1e-6 {
            self.system
        } else {
            UnitSystem::Metric
        };
        format(Kind::Length, self.resolution.value, system)
    }

    /// A position or depth with as many decimals as the readout's step needs.
    pub fn position(&self, length: Length) -> String {
        let (unit, size) = match self.system {
            UnitSystem::Metric => ("mm", 1e-3),
            UnitSystem::Inch => ("in", 0.0254),
        };
        let step = self.resolution.value / size;
        // As many decimals as the step has, or where it has no end as many as it can tell apart.
        let decimals = (0..=6)
            .find(|decimals| {
                let scaled = step * 10f64.powi(*decimals);
                (scaled - scaled.round()).abs() < 1e-6 && scaled.round() >= 1.0
            })
            .or_else(|| (0..=6).find(|decimals| step * 10f64.powi(*decimals) >= 0.5))
            .unwrap_or(6) as usize;
        let value = length.value / size;
        // No negative zero on a dial.
        let value = if value.abs() * 10f64.powi(decimals as i32) < 0.5 {
            0.0
        } else {
            value
        };
        std::format!("{value:.decimals$} {unit}")
    }

    pub fn time(&self, time: Time) -> String {
        self.load(Kind::Time, time.value)
    }
}
