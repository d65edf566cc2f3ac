//! Formulas by name, and what the typed functions share.

use crate::failure::Failure;
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{apart, extent, name, out, slice, slice_mut, text, write_text};
use crate::quantity::system;
use core::ffi::c_char;
use gullet::formula::{Column, Formula, catalogue, description, explain, find};
use gullet::{Code, Problem};

/// The checked value of a formula.
///
/// # Safety
/// `result` is NULL, misaligned, or points to room for a number.
#[inline(always)]
pub(crate) unsafe fn scalar(
    formula: &'static Formula,
    arguments: &[f64],
    result: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise.
        let target = unsafe { out(result, formula.name)? };
        target.write(formula.call(arguments)?);
        Ok(GULLET_OK)
    })
}

/// An argument of an array form: every row its own value, or all rows the same one.
#[derive(Clone, Copy)]
enum Given {
    Rows(*const f64),
    Same(f64),
}

/// A formula over arrays.
///
/// # Safety
/// Each pointer is NULL, misaligned, or points to `count` values; what is written may overlap, for
/// that is refused.
unsafe fn rows(
    formula: &'static Formula,
    arguments: &[Given],
    results: *mut f64,
    statuses: *mut i32,
    count: usize,
) -> Result<i32, Failure> {
    let written = [
        ("result", extent(results, count, "result")?),
        ("status", extent(statuses, count, "status")?),
    ];
    let [result_range, status_range] = written;
    apart(result_range, status_range)?;
    let mut columns = Vec::with_capacity(arguments.len());
    for (parameter, given) in formula.parameters.iter().zip(arguments) {
        columns.push(match *given {
            Given::Same(value) => Column::Constant(value),
            Given::Rows(pointer) => {
                // SAFETY: the caller's promise.
                let values = unsafe { slice(pointer, count, parameter.name)? };
                let range = extent(pointer, count, parameter.name)?;
                apart(result_range, (parameter.name, range))?;
                apart(status_range, (parameter.name, range))?;
                Column::Values(values)
            }
        });
    }
    // SAFETY: the caller's promise; what is written overlaps nothing, as was checked.
    let (results, statuses) = unsafe {
        (
            slice_mut(results, count, "result")?,
            slice_mut(statuses, count, "status")?,
        )
    };
    formula.call_columns(&columns, results, statuses)?;
    let mut refused = false;
    for status in statuses {
        *status = -*status;
        refused |= *status != GULLET_OK;
    }
    Ok(if refused {
        GULLET_WARNING_ROWS_REFUSED
    } else {
        GULLET_OK
    })
}

/// The array form of a typed function.
///
/// # Safety
/// As [`rows`].
#[inline(always)]
pub(crate) unsafe fn array<const N: usize>(
    formula: &'static Formula,
    count: usize,
    arguments: [*const f64; N],
    results: *mut f64,
    statuses: *mut i32,
) -> gullet_status {
    let arguments = arguments.map(Given::Rows);
    // SAFETY: the caller's promise.
    guard(|| unsafe { rows(formula, &arguments, results, statuses, count) })
}

/// An argument of gullet_evaluate_columns.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_column {
    /// The SI values: one a row, or a single one for all rows.
    pub values_si: *const f64,
    /// How many there are: the count of rows, or 1 for all rows alike.
    pub value_count: usize,
}

/// Evaluates a formula by name over arguments as text: "cutting_speed=90 ft/min; diameter=1/2 in".
/// The result is in the SI unit of its kind.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_evaluate(
    formula_name: *const c_char,
    arguments: *const c_char,
    arguments_length: usize,
    result_si_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (formula, arguments, target) = unsafe {
            (
                name(formula_name, "formula")?,
                text(arguments, arguments_length, "arguments")?,
                out(result_si_out, "result_si_out")?,
            )
        };
        target.write(gullet::evaluate(formula, arguments)?.si);
        Ok(GULLET_OK)
    })
}

/// Evaluates a formula by name over SI arguments in the catalogue's order.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_evaluate_si(
    formula_name: *const c_char,
    arguments_si: *const f64,
    argument_count: usize,
    result_si_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (formula, arguments, target) = unsafe {
            (
                find(name(formula_name, "formula")?)?,
                slice(arguments_si, argument_count, "arguments_si")?,
                out(result_si_out, "result_si_out")?,
            )
        };
        target.write(formula.call(arguments)?);
        Ok(GULLET_OK)
    })
}

/// Evaluates a formula by name over columns of SI values in the catalogue's order; rows as in the
/// array forms.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_evaluate_columns(
    formula_name: *const c_char,
    count: usize,
    columns: *const gullet_column,
    column_count: usize,
    result_si_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (formula, columns) = unsafe {
            (
                find(name(formula_name, "formula")?)?,
                slice(columns, column_count, "columns")?,
            )
        };
        if columns.len() != formula.parameters.len() {
            return Err(Problem::new(
                Code::Missing,
                formula.name,
                format!("{column_count} columns"),
                format!("{} columns", formula.parameters.len()),
                "give every argument, in the catalogue's order",
            )
            .into());
        }
        let mut arguments = Vec::with_capacity(columns.len());
        for (parameter, column) in formula.parameters.iter().zip(columns) {
            arguments.push(if column.value_count == count {
                Given::Rows(column.values_si)
            } else if column.value_count == 1 {
                // SAFETY: the caller's promise in the header.
                match unsafe { slice(column.values_si, 1, parameter.name)? } {
                    [value] => Given::Same(*value),
                    _ => Given::Same(f64::NAN),
                }
            } else {
                return Err(Problem::new(
                    Code::Inconsistent,
                    parameter.name,
                    format!("{} values", column.value_count),
                    format!("{count} values, or 1 for every row"),
                    "give columns of one length",
                )
                .into());
            });
        }
        // SAFETY: the caller's promise in the header.
        unsafe { rows(formula, &arguments, result_si_out, status_out, count) }
    })
}

/// A formula worked through with numbers, in one line: equation, numbers with units, result, in
/// GULLET_METRIC or GULLET_INCH units. See "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_explain(
    formula_name: *const c_char,
    arguments: *const c_char,
    arguments_length: usize,
    units: i32,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (formula, arguments) = unsafe {
            (
                name(formula_name, "formula")?,
                text(arguments, arguments_length, "arguments")?,
            )
        };
        let step = explain(formula, arguments)?.text(system(units)?);
        // SAFETY: the caller's promise in the header.
        unsafe { write_text(&step, buffer, capacity, needed_out) }
    })
}

/// What the catalogue says of a formula: meaning, equation, arguments with their ranges, validity,
/// source. See "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_describe(
    formula_name: *const c_char,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let formula = unsafe { find(name(formula_name, "formula")?)? };
        // SAFETY: the caller's promise in the header.
        unsafe { write_text(&description(formula), buffer, capacity, needed_out) }
    })
}

/// Number of formulas of the catalogue.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_formula_count() -> usize {
    catalogue().count()
}

/// Name of a formula of the catalogue, from 0. See "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_formula_name(
    index: usize,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        let formula = catalogue().nth(index).ok_or_else(|| {
            Problem::new(
                Code::OutOfRange,
                "index",
                index.to_string(),
                format!("below {}", catalogue().count()),
                "count up to gullet_formula_count",
            )
        })?;
        // SAFETY: the caller's promise in the header.
        unsafe { write_text(formula.name, buffer, capacity, needed_out) }
    })
}

/// Name of the kind that a formula's result measures, for gullet_from_si and gullet_format. See
/// "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_formula_result_kind(
    formula_name: *const c_char,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let formula = unsafe { find(name(formula_name, "formula")?)? };
        // SAFETY: the caller's promise in the header.
        unsafe { write_text(formula.result.name(), buffer, capacity, needed_out) }
    })
}
