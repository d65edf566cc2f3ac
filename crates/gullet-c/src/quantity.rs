//! Text with units to SI values and back.

use crate::failure::Failure;
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{name, out, text, write_text};
use core::ffi::c_char;
use gullet::error::unknown_name;
use gullet::quantity::{self, Kind, Quantity, UnitSystem};
use gullet::{Code, Problem};

/// Units of a metric shop: mm, m/min, N, kW.
pub const GULLET_METRIC: i32 = 0;
/// Units of an inch shop: in, ft/min, lbf, hp.
pub const GULLET_INCH: i32 = 1;

/// The kind of a name.
///
/// # Safety
/// As [`name`].
unsafe fn kind(pointer: *const c_char) -> Result<Kind, Failure> {
    // SAFETY: the same promise.
    let word = unsafe { name(pointer, "kind")? };
    Kind::from_name(word)
        .ok_or_else(|| unknown_name("kind", word, Kind::ALL.iter().map(|kind| kind.name())).into())
}

/// One of a few whole numbers.
pub(crate) fn choose<T: Copy>(parameter: &str, number: i32, all: &[T]) -> Result<T, Failure> {
    usize::try_from(number)
        .ok()
        .and_then(|index| all.get(index))
        .copied()
        .ok_or_else(|| {
            Problem::new(
                Code::OutOfRange,
                parameter,
                number.to_string(),
                format!("0 to {}", all.len().saturating_sub(1)),
                "use a constant of the header",
            )
            .into()
        })
}

pub(crate) fn system(units: i32) -> Result<UnitSystem, Failure> {
    choose("units", units, &[UnitSystem::Metric, UnitSystem::Inch])
}

/// A number, told under the name of its argument where it is not finite.
fn told_as(parameter: &str, result: gullet::Result<f64>) -> Result<f64, Failure> {
    result.map_err(|error| error.within(parameter).into())
}

/// Reads text with a unit, such as "1-1/4 in" or "90 ft/min", into the SI value of its kind. Kinds:
/// length, area, velocity, acceleration, time, rotational_speed, frequency, angle, ratio, count,
/// turns, force, line_force, stiffness, pressure, power, torque, volume_rate, area_rate, money,
/// money_rate, density. A bare number where a unit belongs is an error.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_parse(
    kind_name: *const c_char,
    quantity_text: *const c_char,
    quantity_length: usize,
    value_si_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (kind, text, target) = unsafe {
            (
                kind(kind_name)?,
                text(quantity_text, quantity_length, "quantity")?,
                out(value_si_out, "value_si_out")?,
            )
        };
        target.write(quantity::parse(kind, text)?);
        Ok(GULLET_OK)
    })
}

/// Converts a number from one unit of a kind to another, rounded once each way: 1 in is 25.4 mm.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_convert(
    kind_name: *const c_char,
    value: f64,
    from_unit: *const c_char,
    to_unit: *const c_char,
    value_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (kind, from, to, target) = unsafe {
            (
                kind(kind_name)?,
                name(from_unit, "from_unit")?,
                name(to_unit, "to_unit")?,
                out(value_out, "value_out")?,
            )
        };
        let quantity = Quantity::new(kind, value, from).map_err(|e| e.within("value"))?;
        target.write(told_as("value", quantity.to(to))?);
        Ok(GULLET_OK)
    })
}

/// A number in a unit as the SI value that every other call takes; the same bits as reading the
/// text of the two together.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_to_si(
    kind_name: *const c_char,
    value: f64,
    unit: *const c_char,
    value_si_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (kind, unit, target) = unsafe {
            (
                kind(kind_name)?,
                name(unit, "unit")?,
                out(value_si_out, "value_si_out")?,
            )
        };
        let quantity = Quantity::new(kind, value, unit).map_err(|e| e.within("value"))?;
        target.write(quantity.si);
        Ok(GULLET_OK)
    })
}

/// An SI value in a unit.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_from_si(
    kind_name: *const c_char,
    value_si: f64,
    unit: *const c_char,
    value_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (kind, unit, target) = unsafe {
            (
                kind(kind_name)?,
                name(unit, "unit")?,
                out(value_out, "value_out")?,
            )
        };
        let quantity = Quantity { kind, si: value_si };
        target.write(told_as("value_si", quantity.to(unit))?);
        Ok(GULLET_OK)
    })
}

/// An SI value as people read it, in the units of a shop: GULLET_METRIC or GULLET_INCH. See
/// "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_format(
    kind_name: *const c_char,
    value_si: f64,
    units: i32,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let kind = unsafe { kind(kind_name)? };
        if !value_si.is_finite() {
            return Err(Problem::new(
                Code::NotFinite,
                "value_si",
                format!("{value_si}"),
                "a finite number",
                "print finite numbers only",
            )
            .into());
        }
        let shown = quantity::format(kind, value_si, system(units)?);
        // SAFETY: the caller's promise in the header.
        unsafe { write_text(&shown, buffer, capacity, needed_out) }
    })
}
