//! Expressions that several formulas are written with.

use crate::quantity::math::{
    asin, ceil, cos, floor, fractional_power, inverse_half_versine, max, min, number, pow, select,
    sin, sqrt, tan,
};
use crate::quantity::{Angle, Force, Length, Ratio, Torque, si};

/// An angle as a pure number, in radians.
#[inline(always)]
pub fn radians(angle: Angle) -> Ratio {
    angle.into()
}

/// A force times its lever as a torque; uom counts that product as an energy.
#[inline(always)]
pub fn torque(force_times_lever: uom::si::f64::Energy) -> Torque {
    si(force_times_lever.value)
}

/// A length as a pure number, in millimetres.
#[inline(always)]
pub fn millimetres(length: Length) -> Ratio {
    number(length.value * 1000.0)
}

/// Whether a side cut takes no more than half the diameter.
#[inline(always)]
fn is_half_at_most(diameter: Length, radial_depth: Length) -> bool {
    radial_depth.value <= (diameter - radial_depth).value
}

/// The smaller of a_e/D and 1 - a_e/D, without cancellation; the one division that the two ratios and
/// the arc of a side cut share. Held at 0 where a width is wider than the cutter by rounding.
#[inline(always)]
fn smaller_share(diameter: Length, radial_depth: Length) -> Ratio {
    max(min(radial_depth, diameter - radial_depth), si(0.0)) / diameter
}

/// a_e/D, held at 1 where a width is wider than the cutter by rounding.
#[inline(always)]
pub fn engagement_ratio(diameter: Length, radial_depth: Length) -> Ratio {
    let share = smaller_share(diameter, radial_depth);
    select(
        is_half_at_most(diameter, radial_depth),
        share,
        number(1.0) - share,
    )
}

/// 1 - a_e/D without cancellation, held at 0 where a width is wider than the cutter by rounding.
#[inline(always)]
pub fn remaining_ratio(diameter: Length, radial_depth: Length) -> Ratio {
    let share = smaller_share(diameter, radial_depth);
    select(
        is_half_at_most(diameter, radial_depth),
        number(1.0) - share,
        share,
    )
}

/// acos(1 - 2 part) for a part in 0..1 and rest = 1 - part, by the smaller of the two, so that neither
/// a thin cut nor one near the slot loses digits.
#[inline(always)]
pub fn immersion(part: Ratio, rest: Ratio) -> Angle {
    let angle = inverse_half_versine(min(part, rest));
    select(part.value <= rest.value, angle, half_turn() - angle)
}

#[inline(always)]
fn half_turn() -> Angle {
    si(core::f64::consts::PI)
}

/// phi_s = acos(1 - 2 a_e/D) of a side cut or slot.
#[inline(always)]
pub fn side_arc(diameter: Length, radial_depth: Length) -> Angle {
    let angle = inverse_half_versine(smaller_share(diameter, radial_depth));
    select(
        is_half_at_most(diameter, radial_depth),
        angle,
        half_turn() - angle,
    )
}

/// Largest sine over the arc of a side cut: 2 sqrt(x (1 - x)) for x < 1/2, else 1.
#[inline(always)]
pub fn largest_sine(x: Ratio) -> Ratio {
    let x = min(x, number(0.5));
    2.0 * sqrt(x * (number(1.0) - x))
}

/// (1 - cos(phi))/2 at the signed distance y from the cutter axis, held within the cutter: the square
/// of the sine of half the immersion angle.
#[inline(always)]
pub fn half_versine(diameter: Length, y: Length) -> Ratio {
    max(
        min((diameter / 2.0 - y) / diameter, number(1.0)),
        number(0.0),
    )
}

/// acos(2 y/D) at the signed distance y from the cutter axis, held within the cutter.
#[inline(always)]
pub fn immersion_at(diameter: Length, y: Length) -> Angle {
    immersion(half_versine(diameter, y), half_versine(diameter, -y))
}

/// acos(2 y_low/D) - acos(2 y_high/D), both held within the cutter, without subtracting two near angles.
#[inline(always)]
pub fn face_arc(diameter: Length, low: Length, high: Length) -> Angle {
    // Sines and cosines of half the immersion at the entry and at the exit.
    let sin_entry = sqrt(half_versine(diameter, high));
    let cos_entry = sqrt(half_versine(diameter, -high));
    let sin_exit = sqrt(half_versine(diameter, low));
    let cos_exit = sqrt(half_versine(diameter, -low));
    let sine =
        face_width(diameter, low, high) / diameter / (sin_exit * cos_entry + cos_exit * sin_entry);
    let cosine = cos_exit * cos_entry + sin_exit * sin_entry;
    let quarter: Angle = si(core::f64::consts::FRAC_PI_2);
    2.0 * select(
        sine.value < cosine.value,
        asin(min(sine, number(1.0))),
        quarter - asin(min(cosine, number(1.0))),
    )
}

/// y_high - y_low, both held within the cutter.
#[inline(always)]
pub fn face_width(diameter: Length, low: Length, high: Length) -> Length {
    min(high, diameter / 2.0) - max(low, -diameter / 2.0)
}

/// Integral of sin(phi)^(1 - m) from 0 to acos(1 - 2 x), for 0 <= x <= 1 and 0 <= m < 1.
///
/// It is 2^(1 - m) B(x; a, a) with a = 1 - m/2. The power series of B in x serves up to x = 1/2, where
/// its terms still halve; above, the arc is the slot's less the missing part.
#[inline(always)]
pub fn sine_power_integral(x: Ratio, missing: Ratio, exponent: Ratio) -> Ratio {
    let a = number(1.0) - exponent / 2.0;
    let half = number(0.5);
    let part = half_beta(min(min(x, missing), half), a);
    let slot = 2.0 * half_beta(half, a);
    let beta = select(x.value <= 0.5, part, slot - part);
    pow(number(2.0), number(1.0) - exponent) * beta
}

/// Terms of the series: the first left out is below 1e-14 of the sum at x = 1/2.
const BETA_TERMS: u32 = 44;

/// B(x; a, a) for 0 <= x <= 1/2 and 1/2 < a <= 1: x^a times the sum of (1 - a)_k/k! x^k/(a + k).
#[inline(always)]
fn half_beta(x: Ratio, a: Ratio) -> Ratio {
    let mut term = 1.0;
    let mut sum = 1.0 / a.value;
    let mut k = 0.0;
    for _ in 0..BETA_TERMS {
        term *= (k + 1.0 - a.value) / (k + 1.0) * x.value;
        k += 1.0;
        sum += term / (a.value + k);
    }
    pow(x, a) * number(sum)
}

/// z phi_s/(2 pi) rounded up; a quotient within 1e-9 of a whole number counts as it.
#[inline(always)]
pub fn teeth_in_arc(teeth: Ratio, arc: Angle) -> Ratio {
    let quotient = teeth.value * arc.value / (2.0 * core::f64::consts::PI);
    max(ceil(number(quotient - 1e-9)), number(1.0))
}

/// What the teeth in an arc can add up to, whatever the exponent of the chip thickness.
#[derive(Clone, Copy)]
pub struct TeethSum {
    /// k, teeth in the arc at one instant at most.
    pub teeth: Ratio,
    /// s, bound of the sum of their sines over the largest in the arc; at least 1.
    pub sines: Ratio,
}

impl TeethSum {
    #[inline(always)]
    pub fn of(teeth: Ratio, arc: Angle, largest_sine: Ratio) -> TeethSum {
        let k = teeth_in_arc(teeth, arc);
        let psi = si(2.0 * core::f64::consts::PI / teeth.value);
        let s = min(largest_sine_sum(k, psi) / min(largest_sine, number(1.0)), k);
        TeethSum {
            teeth: k,
            sines: max(s, number(1.0)),
        }
    }

    /// S, sum of the forces over that of one tooth: k^m_c s^(1 - m_c).
    #[inline(always)]
    pub fn factor(&self, exponent: Ratio) -> Ratio {
        fractional_power(self.teeth, exponent)
            * fractional_power(self.sines, number(1.0) - exponent)
    }
}

/// How far a helical edge lags over the axial depth, whatever the exponent of the chip thickness.
#[derive(Clone, Copy)]
pub struct HelixLag {
    /// psi, the pitch angle of the teeth in radians.
    pub pitch: Ratio,
    /// t in radians.
    pub lag: Ratio,
    /// w, whole pitches in it.
    pub whole: Ratio,
}

impl HelixLag {
    #[inline(always)]
    pub fn of(teeth: Ratio, axial_depth: Length, diameter: Length, helix: Angle) -> HelixLag {
        let pitch = number(2.0 * core::f64::consts::PI) / teeth;
        let lag = max(2.0 * axial_depth * tan(helix) / diameter, number(1e-9));
        HelixLag {
            pitch,
            lag,
            whole: floor(lag / pitch + number(1e-9)),
        }
    }

    /// L, force of helical edges over that of straight ones whose bound is S.
    #[inline(always)]
    pub fn relief(&self, arc: Angle, chip_ratio: Ratio, exponent: Ratio, sum: Ratio) -> Ratio {
        let (psi, t, w, s) = (self.pitch, self.lag, self.whole, sum);
        let over_pitch = radians(arc) * fractional_power(chip_ratio, number(1.0) - exponent);
        let q = min(over_pitch, psi * s);
        min((w * q + min((t - w * psi) * s, q)) / (t * s), number(1.0))
    }
}

/// Largest sum of the sines of k teeth a pitch psi apart, anywhere: sin(k psi/2)/sin(psi/2).
#[inline(always)]
pub fn largest_sine_sum(k: Ratio, pitch: Angle) -> Ratio {
    let half_pitch = pitch / 2.0;
    sin(si(k.value * half_pitch.value)) / sin(half_pitch)
}

/// A torque as work per radian, the other way round than [`torque`].
#[inline(always)]
pub fn work(torque: Torque) -> uom::si::f64::Energy {
    si(torque.value)
}

/// What the antiderivatives of the milling forces gain over an arc, by products of sines and cosines
/// of its half sum and half difference, so that a short arc loses no digits.
#[derive(Clone, Copy)]
pub struct Arc {
    /// cos(2 phi) at the exit less the same at the entry.
    pub cos_2phi: Ratio,
    /// 2 phi - sin(2 phi) likewise: four times the integral of the squared sine.
    pub sine_squared: Ratio,
    /// cos(phi) likewise.
    pub cos_phi: Ratio,
    /// sin(phi) likewise.
    pub sin_phi: Ratio,
}

impl Arc {
    /// Over the arc from an entry to an exit angle.
    #[inline(always)]
    pub fn between(entry: Angle, exit: Angle) -> Arc {
        let (sum, arc) = (exit + entry, exit - entry);
        let (half_sum, half_arc) = (sum / 2.0, arc / 2.0);
        Arc {
            cos_2phi: -2.0 * sin(sum) * sin(arc),
            sine_squared: 2.0 * (radians(arc) - cos(sum) * sin(arc)),
            cos_phi: -2.0 * sin(half_sum) * sin(half_arc),
            sin_phi: 2.0 * cos(half_sum) * sin(half_arc),
        }
    }
}

/// A length as a pure number, in inches.
#[inline(always)]
pub fn inches(length: Length) -> Ratio {
    number(length.value / 0.0254)
}

/// One pound-force: the pound times standard gravity.
#[inline(always)]
pub fn pound_force() -> Force {
    si(0.453_592_37 * 9.806_65)
}

/// 1 for each of 3, 4, 5 and 6 diameters that a depth reaches, else 0; a depth within 1e-9, relative,
/// below one counts as that one.
#[inline(always)]
pub fn deep_hole_steps(depth: Length, diameter: Length) -> [Ratio; 4] {
    let reached = depth / diameter * (1.0 + super::cost::WHOLE);
    [3.0, 4.0, 5.0, 6.0].map(|step| select(reached.value >= step, number(1.0), number(0.0)))
}

/// Pecks for a travel: rounded up, at least 1; a quotient within 1e-9, relative, above a whole number
/// counts as that number.
#[inline(always)]
pub fn pecks(travel: Length, peck: Length) -> Ratio {
    max(
        ceil(travel / peck * (1.0 - super::cost::WHOLE)),
        number(1.0),
    )
}
