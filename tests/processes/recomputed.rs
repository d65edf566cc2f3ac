//! Forces and milling cuts a second time, in plain numbers and with the standard library's functions.

use gullet::table::{Library, Material, MeasuredAt};
use std::f64::consts::PI;

/// The numbers of the practice "experienced" that forces rest on.
pub const WEAR: f64 = 1.3;
pub const RADIAL: f64 = 0.3;
pub const SAFETY: f64 = 2.0;
pub const CLEARANCE: f64 = 0.1 * 0.0254;

/// Pairs of a material as k_c1.1 in Pa and exponent: its own first, the unit power last.
pub fn pairs(material: &Material) -> Vec<(f64, f64)> {
    let library = Library::builtin();
    let kienzle = library.kienzle(material).unwrap();
    let mut pairs: Vec<(f64, f64)> = std::iter::once(&kienzle.default)
        .chain(kienzle.others.iter().take(2))
        .map(|pair| (pair.kc11.value, pair.exponent.value))
        .collect();
    if let Ok(unit) = library.unit_power(material) {
        let start = unit.range.start.value;
        let reaches = match unit.measured_at {
            MeasuredAt::Motor { efficiency } => efficiency.unwrap_or(0.85),
            _ => 1.0,
        };
        pairs.push(match unit.chip_thickness {
            Some(h) => (reaches * start * (h.value * 1000.0).powf(0.2), 0.2),
            None => (reaches * start, 0.0),
        });
    }
    pairs
}

/// Specific cutting force of a pair at a chip thickness in metres.
pub fn k_c((kc11, exponent): (f64, f64), h: f64) -> f64 {
    kc11 * (h * 1000.0).powf(-exponent)
}

/// The pair with the highest force at a chip thickness.
pub fn worst(pairs: &[(f64, f64)], h: f64) -> (f64, f64) {
    pairs
        .iter()
        .copied()
        .fold(pairs[0], |a, b| if k_c(b, h) > k_c(a, h) { b } else { a })
}

/// A side cut: circle, radial depth, depth along the axis, length of edge, sine of the edge's angle.
#[derive(Clone, Copy)]
pub struct Side {
    pub circle: f64,
    pub a_e: f64,
    pub a_p: f64,
    pub width: f64,
    pub sine: f64,
}

impl Side {
    pub fn arc(&self) -> f64 {
        (1.0 - 2.0 * self.a_e / self.circle).acos()
    }

    pub fn largest_sine(&self) -> f64 {
        let x = self.a_e / self.circle;
        if x < 0.5 {
            2.0 * (x * (1.0 - x)).sqrt()
        } else {
            1.0
        }
    }

    pub fn max_chip(&self, f: f64) -> f64 {
        f * self.sine * self.largest_sine()
    }

    pub fn mean_chip(&self, f: f64) -> f64 {
        2.0 * f * self.sine * self.a_e / self.circle / self.arc()
    }
}

/// Force across the axis at the peak: sum over the teeth, less what a helix spreads.
pub fn peak(
    pairs: &[(f64, f64)],
    side: &Side,
    f: f64,
    teeth: f64,
    diameter: f64,
    helix: f64,
) -> f64 {
    let h = side.max_chip(f);
    let pair = worst(pairs, h);
    let m = pair.1;
    let arc = side.arc();
    let psi = 2.0 * PI / teeth;
    let k = (arc / psi - 1e-9).ceil().max(1.0);
    let s = ((k * psi / 2.0).sin() / (psi / 2.0).sin() / side.largest_sine())
        .min(k)
        .max(1.0);
    let sum = k.powf(m) * s.powf(1.0 - m);
    let lag = (2.0 * side.a_p * helix.tan() / diameter).max(1e-9);
    let whole = (lag / psi).floor();
    let q = (arc * (side.mean_chip(f) / h).powf(1.0 - m)).min(psi * sum);
    let relief = ((whole * q + ((lag - whole * psi) * sum).min(q)) / (lag * sum)).min(1.0);
    let tangential = k_c(pair, h) * WEAR * h * side.width * sum * relief;
    tangential * (1.0 + RADIAL * RADIAL).sqrt()
}

/// Deflection of a cutter whose shank is as thick as itself.
pub fn deflection(force: f64, diameter: f64, fluted: f64, stick_out: f64, modulus: f64) -> f64 {
    let inertia = |d: f64| PI * d.powi(4) / 64.0;
    force / (3.0 * modulus)
        * (fluted.powi(3) / inertia(0.8 * diameter)
            + (stick_out.powi(3) - fluted.powi(3)) / inertia(diameter))
}
