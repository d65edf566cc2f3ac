//! Quantities printed: for people in the units of a shop, and exactly.

use super::decimal::{Digits, Fraction};
use super::kind::{Kind, Unit, UnitSystem};
use super::spelling::{unit, with_unit};
use super::units::usual;
use crate::error::Result;

/// How far a number is rounded for people.
#[derive(Clone, Copy)]
enum Rounding {
    Significant(i64),
    Decimals(i64),
    /// Every digit that tells the number from its neighbours.
    None,
}

use Rounding::{Decimals, Significant};

/// Rounding where a kind asks for nothing else.
const USUAL: Rounding = Significant(4);

/// Prints for people, in the units of a shop, with sensible digits.
///
/// Four significant digits, trailing zeros dropped, except: lengths to 0.001 mm or 0.0001 in,
/// spindle speeds from 100 rpm and counts whole, money to the cent. Below 0.01 mm a length is in
/// um; one below 0.1 mm or 0.0005 in that would be off by more than 1 % is in um or uin, so that
/// 0.0005 in is never 0.013 mm. The unit follows the size:
///
/// | kind | metric | inch |
/// |---|---|---|
/// | length | um, mm, m from 10 m | uin, in |
/// | velocity | mm/min, m/min from 6 m/min | in/min, ft/min from 20 ft/min |
/// | pressure | kPa below 0.1 N/mm2, N/mm2, GPa from 10 GPa | psi, ksi from 10 ksi |
/// | power | W, kW from 1 kW | hp |
/// | force | N, kN from 10 kN | lbf |
/// | time | ms below 0.1 s, s, min from 2 min, h from 2 h | the same |
///
/// A feed and a cutting speed are both velocities: where the size could mislead, name the unit
/// with [`format_in`]. Very large and very small numbers are printed as `1.2e9`; a value that is
/// not finite as `infinity`, `-infinity` or `not a number`.
///
/// ```
/// use gullet::quantity::{Kind, UnitSystem, format};
/// assert_eq!(format(Kind::Length, 0.0127e-3, UnitSystem::Metric), "12.7 um");
/// assert_eq!(format(Kind::Length, 0.0127e-3, UnitSystem::Inch), "0.0005 in");
/// ```
pub fn format(kind: Kind, si: f64, system: UnitSystem) -> String {
    let (symbol, rounding) = match system {
        UnitSystem::Metric => metric(kind, si.abs()),
        UnitSystem::Inch => inch(kind, si.abs()),
    };
    match unit(kind, symbol) {
        Ok(unit) => print(si, unit, rounding),
        // Tests print every kind at every size: each symbol below is in the list.
        Err(_) => format!("{si:?}"),
    }
}

/// Prints for somebody who goes on computing: as [`format_digits`] with five digits.
///
/// ```
/// use gullet::quantity::{Kind, UnitSystem, format_worked};
/// assert_eq!(format_worked(Kind::Length, 0.00162 * 0.0254, UnitSystem::Inch), "0.00162 in");
/// ```
pub fn format_worked(kind: Kind, si: f64, system: UnitSystem) -> String {
    format_digits(kind, si, system, 5)
}

/// Prints with so many significant digits (1 to 17) whatever the kind, in the unit of [`format()`];
/// lengths never in millionths of mm or in.
pub fn format_digits(kind: Kind, si: f64, system: UnitSystem, digits: u32) -> String {
    let (symbol, _) = match system {
        UnitSystem::Metric => metric(kind, si.abs()),
        UnitSystem::Inch => inch(kind, si.abs()),
    };
    let symbol = match symbol {
        "uin" => "in",
        "um" => "mm",
        other => other,
    };
    match unit(kind, symbol) {
        Ok(unit) => print(si, unit, Significant(i64::from(digits.clamp(1, 17)))),
        // Tests print every kind at every size: each symbol above is in the list.
        Err(_) => format!("{si:?}"),
    }
}

/// Prints in a given unit, rounded to so many significant digits (1 to 17), trailing zeros
/// dropped.
///
/// # Errors
/// [`Code::UnitMissing`](crate::Code::UnitMissing) and
/// [`Code::UnitUnknown`](crate::Code::UnitUnknown) for a unit that the kind does not have.
///
/// ```
/// use gullet::quantity::{Kind, format_in};
/// assert_eq!(format_in(Kind::Velocity, 0.00381, "in/min", 3)?, "9 in/min");
/// # Ok::<(), gullet::Error>(())
/// ```
pub fn format_in(
    kind: Kind,
    si: f64,
    unit_symbol: &str,
    significant_digits: u32,
) -> Result<String> {
    let digits = i64::from(significant_digits.clamp(1, 17));
    Ok(print(si, unit(kind, unit_symbol)?, Significant(digits)))
}

/// Prints the shortest text in this unit that [`parse`](super::parse) reads back to the same bits.
///
/// Holds for every finite value, the sign of zero included; other values print as in [`format()`]
/// and cannot be read.
///
/// ```
/// use gullet::quantity::{Kind, format_exact, unit};
/// let inch = unit(Kind::Length, "in")?;
/// assert_eq!(format_exact(Kind::Length, 0.0127, inch), "0.5 in");
/// # Ok::<(), gullet::Error>(())
/// ```
pub fn format_exact(kind: Kind, si: f64, unit: &Unit) -> String {
    // The kind is for the reader of the call; a unit knows its size by itself.
    let _ = kind;
    if let Some(word) = not_finite(si) {
        return word.to_owned();
    }
    let digits = Digits::shortest(si, &Fraction::of_unit(unit));
    with_unit(&digits.text(si.is_sign_negative(), -5, 17), unit.symbol)
}

/// Prints the shortest of the exact texts in the units that a person writes this kind in.
///
/// ```
/// use gullet::quantity::{Kind, exact_text};
/// assert_eq!(exact_text(Kind::Length, 0.0127), "0.5 in");
/// ```
pub fn exact_text(kind: Kind, si: f64) -> String {
    usual(kind)
        .iter()
        .filter_map(|symbol| unit(kind, symbol).ok())
        .map(|unit| format_exact(kind, si, unit))
        .min_by_key(String::len)
        .unwrap_or_else(|| format!("{si:?}"))
}

fn not_finite(value: f64) -> Option<&'static str> {
    if value.is_finite() {
        None
    } else if value.is_nan() {
        Some("not a number")
    } else if value > 0.0 {
        Some("infinity")
    } else {
        Some("-infinity")
    }
}

fn print(si: f64, unit: &Unit, rounding: Rounding) -> String {
    if let Some(word) = not_finite(si) {
        return word.to_owned();
    }
    let exact = Digits::shortest(si, &Fraction::of_unit(unit));
    let (rounded, most) = match rounding {
        Significant(count) => (exact.significant(count), count.max(7)),
        Decimals(places) => (exact.decimals(places), 9),
        Rounding::None => (exact, 17),
    };
    // Nothing is left of the sign where nothing is left of the number.
    let negative = si < 0.0 && !rounded.digits.is_empty();
    with_unit(&rounded.text(negative, -3, most), unit.symbol)
}

/// The symbol of the last step not above `size`; `first` below all of them.
fn step(size: f64, first: &'static str, steps: &[(f64, &'static str)]) -> (&'static str, Rounding) {
    let reached = steps.iter().rev().find(|(from, _)| size >= *from);
    (reached.map_or(first, |(_, symbol)| symbol), USUAL)
}

/// Whether `value` is off by more than 1 % where it is rounded to whole numbers.
fn coarse(value: f64) -> bool {
    (value.round() - value).abs() > 0.01 * value
}

const INCH: f64 = 0.0254;
const FOOT_PER_MINUTE: f64 = 0.3048 / 60.0;
const PSI: f64 = 4.4482216152605 / 0.00064516;

fn metric(kind: Kind, size: f64) -> (&'static str, Rounding) {
    match kind {
        Kind::Length if size >= 10.0 => ("m", USUAL),
        Kind::Length if size == 0.0 => ("mm", USUAL),
        Kind::Length if size < 1e-5 || (size < 1e-4 && coarse(size * 1e6)) => ("um", USUAL),
        Kind::Length => ("mm", Decimals(3)),
        Kind::Area => step(size, "mm2", &[(0.01, "cm2"), (1.0, "m2")]),
        Kind::Velocity => step(size, "mm/min", &[(0.1, "m/min")]),
        Kind::Acceleration => ("m/s2", USUAL),
        Kind::Force => step(size, "N", &[(1e4, "kN")]),
        Kind::LineForce => ("N/mm", USUAL),
        Kind::Stiffness => step(size, "N/mm", &[(1e7, "N/um")]),
        Kind::Pressure if size == 0.0 => ("N/mm2", USUAL),
        Kind::Pressure => step(size, "kPa", &[(1e5, "N/mm2"), (1e10, "GPa")]),
        Kind::Power => step(size, "W", &[(1e3, "kW")]),
        Kind::Torque => ("N.m", USUAL),
        Kind::Energy => step(size, "J", &[(1e3, "kJ"), (1e6, "MJ")]),
        Kind::VolumeRate => ("cm3/min", USUAL),
        Kind::AreaRate => ("cm2/min", USUAL),
        Kind::Density => ("kg/m3", USUAL),
        _ => either(kind, size),
    }
}

fn inch(kind: Kind, size: f64) -> (&'static str, Rounding) {
    match kind {
        Kind::Length if size == 0.0 => ("in", USUAL),
        Kind::Length if size < 4.95e-4 * INCH && coarse(size / INCH * 1e4) => ("uin", USUAL),
        Kind::Length => ("in", Decimals(4)),
        Kind::Area => ("in2", USUAL),
        Kind::Velocity => step(size, "in/min", &[(20.0 * FOOT_PER_MINUTE, "ft/min")]),
        Kind::Acceleration => ("in/s2", USUAL),
        Kind::Force => ("lbf", USUAL),
        Kind::LineForce | Kind::Stiffness => ("lbf/in", USUAL),
        Kind::Pressure => step(size, "psi", &[(1e4 * PSI, "ksi")]),
        Kind::Power => ("hp", USUAL),
        Kind::Torque => ("lbf.ft", USUAL),
        Kind::Energy => ("hp.h", USUAL),
        Kind::VolumeRate => ("in3/min", USUAL),
        Kind::AreaRate => ("in2/min", USUAL),
        Kind::Density => ("lb/in3", USUAL),
        _ => either(kind, size),
    }
}

/// Kinds that both systems print alike.
fn either(kind: Kind, size: f64) -> (&'static str, Rounding) {
    match kind {
        Kind::Time if size == 0.0 => ("s", USUAL),
        Kind::Time => step(size, "ms", &[(0.1, "s"), (120.0, "min"), (7200.0, "h")]),
        Kind::RotationalSpeed if size >= 100.0 / 60.0 => ("rpm", Decimals(0)),
        Kind::RotationalSpeed => ("rpm", USUAL),
        Kind::Frequency => step(size, "Hz", &[(1e4, "kHz")]),
        Kind::Angle => ("deg", USUAL),
        Kind::Count => ("", Rounding::None),
        Kind::Turns if size >= 1.0 => ("turns", Decimals(3)),
        Kind::Turns => ("turns", USUAL),
        Kind::Money if size >= 1.0 => ("", Decimals(2)),
        Kind::MoneyRate if size >= 1.0 / 3600.0 => ("money/h", Decimals(2)),
        Kind::MoneyRate => ("money/h", USUAL),
        _ => ("", USUAL),
    }
}
