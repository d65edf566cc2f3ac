// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::learning::*;

/// Time of a unit after learning on the units before it.
///
///     t_x = t_1 x^(log2(r))
///
/// first_unit_time_s: t_1, time of the first unit [s]; first_unit_time >= 0.
/// learning_rate: r, time of a unit over the time of the unit half its number [-]; 0 < learning_rate
///     <= 1.
/// unit: x, number of the unit [-]; unit >= 1.
/// learning_unit_time_s_out: t_x [s].
/// Valid for: unit curve (Crawford), not the cumulative average (Wright): taking one for the other
///     errs by a third at 80 %.
/// Source: unit learning curve, from memory; T.P. Wright, Factors affecting the cost of airplanes,
///     quoted.
/// Example: first_unit_time=60 min; learning_rate=90 %; unit=4 => 48.6 min (identity: 60 x 0.9^2
///     min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_learning_unit_time(
    first_unit_time_s: f64,
    learning_rate: f64,
    unit: f64,
    learning_unit_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&learning_unit_time::FORMULA, &[first_unit_time_s, learning_rate, unit], learning_unit_time_s_out) }
}

/// gullet_learning_unit_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_learning_unit_time_array(
    count: usize,
    first_unit_time_s: *const f64,
    learning_rate: *const f64,
    unit: *const f64,
    learning_unit_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&learning_unit_time::FORMULA, count, [first_unit_time_s, learning_rate, unit], learning_unit_time_s_out, status_out) }
}

/// Time of the first units together, where the time of a unit falls by the rate at every doubling.
///
///     t = t_1 S; S = sum of x^(log2(r)) over x from 1 to N
///
/// first_unit_time_s: t_1, time of the first unit [s]; first_unit_time >= 0.
/// learning_rate: r, time of a unit over the time of the unit half its number [-]; 0 < learning_rate
///     <= 1.
/// units: N, units made [-]; units >= 1.
/// learning_total_time_unit_curve_s_out: t [s].
/// Valid for: unit curve (Crawford); the sum by its first terms and the Euler-Maclaurin formula, to
///     rounding for any number of units.
/// Source: sum of the unit learning curve; example: C.T. Horngren et al., Cost Accounting,
///     incremental unit-time learning model, from memory.
/// Example: first_unit_time=100 h; learning_rate=80 %; units=4 => 314.21 h (C.T. Horngren et al.,
///     Cost Accounting: A Managerial Emphasis, exhibit of the incremental unit-time learning model,
///     from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_learning_total_time_unit_curve(
    first_unit_time_s: f64,
    learning_rate: f64,
    units: f64,
    learning_total_time_unit_curve_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&learning_total_time_unit_curve::FORMULA, &[first_unit_time_s, learning_rate, units], learning_total_time_unit_curve_s_out) }
}

/// gullet_learning_total_time_unit_curve over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_learning_total_time_unit_curve_array(
    count: usize,
    first_unit_time_s: *const f64,
    learning_rate: *const f64,
    units: *const f64,
    learning_total_time_unit_curve_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&learning_total_time_unit_curve::FORMULA, count, [first_unit_time_s, learning_rate, units], learning_total_time_unit_curve_s_out, status_out) }
}

/// Mean time of the first units, where that mean falls by the rate at every doubling.
///
///     t_m = t_1 N^(log2(r))
///
/// first_unit_time_s: t_1, time of the first unit [s]; first_unit_time >= 0.
/// learning_rate: r, mean time of so many units over that of half as many [-]; 0 < learning_rate <=
///     1.
/// units: N, units made [-]; units >= 1.
/// learning_average_time_s_out: t_m [s].
/// Valid for: cumulative average (Wright), not the unit curve (Crawford): taking one for the other
///     errs by a third at 80 %.
/// Source: T.P. Wright, Factors affecting the cost of airplanes, quoted; example: C.T. Horngren et
///     al., Cost Accounting, cumulative average-time learning model, from memory.
/// Example: first_unit_time=100 h; learning_rate=80 %; units=7 => 53.45 h (C.T. Horngren et al.,
///     Cost Accounting: A Managerial Emphasis, exhibit of the cumulative average-time learning
///     model, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_learning_average_time(
    first_unit_time_s: f64,
    learning_rate: f64,
    units: f64,
    learning_average_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&learning_average_time::FORMULA, &[first_unit_time_s, learning_rate, units], learning_average_time_s_out) }
}

/// gullet_learning_average_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_learning_average_time_array(
    count: usize,
    first_unit_time_s: *const f64,
    learning_rate: *const f64,
    units: *const f64,
    learning_average_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&learning_average_time::FORMULA, count, [first_unit_time_s, learning_rate, units], learning_average_time_s_out, status_out) }
}

/// Time of the first units together, where their mean falls by the rate at every doubling.
///
///     t = N t_1 N^(log2(r))
///
/// first_unit_time_s: t_1, time of the first unit [s]; first_unit_time >= 0.
/// learning_rate: r, mean time of so many units over that of half as many [-]; 0 < learning_rate <=
///     1.
/// units: N, units made [-]; units >= 1.
/// learning_total_time_cumulative_average_s_out: t [s].
/// Valid for: cumulative average (Wright), not the unit curve (Crawford): taking one for the other
///     errs by a third at 80 %.
/// Source: T.P. Wright, Factors affecting the cost of airplanes, quoted; example: C.T. Horngren et
///     al., Cost Accounting, cumulative average-time learning model, from memory.
/// Example: first_unit_time=100 h; learning_rate=80 %; units=3 => 210.63 h (C.T. Horngren et al.,
///     Cost Accounting: A Managerial Emphasis, exhibit of the cumulative average-time learning
///     model, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_learning_total_time_cumulative_average(
    first_unit_time_s: f64,
    learning_rate: f64,
    units: f64,
    learning_total_time_cumulative_average_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&learning_total_time_cumulative_average::FORMULA, &[first_unit_time_s, learning_rate, units], learning_total_time_cumulative_average_s_out) }
}

/// gullet_learning_total_time_cumulative_average over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_learning_total_time_cumulative_average_array(
    count: usize,
    first_unit_time_s: *const f64,
    learning_rate: *const f64,
    units: *const f64,
    learning_total_time_cumulative_average_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&learning_total_time_cumulative_average::FORMULA, count, [first_unit_time_s, learning_rate, units], learning_total_time_cumulative_average_s_out, status_out) }
}

/// Mean time of the units of a lot.
///
///     t_m = t/N
///
/// total_time_s: t, time of all the units [s]; total_time >= 0.
/// units: N, units made [-]; units >= 1.
/// mean_unit_time_s_out: t_m [s].
/// Valid for: any curve of learning, or none.
/// Source: definition.
/// Example: total_time=314.21 h; units=4 => 78.5525 h (identity: 314.21/4).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_unit_time(
    total_time_s: f64,
    units: f64,
    mean_unit_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_unit_time::FORMULA, &[total_time_s, units], mean_unit_time_s_out) }
}

/// gullet_mean_unit_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_unit_time_array(
    count: usize,
    total_time_s: *const f64,
    units: *const f64,
    mean_unit_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_unit_time::FORMULA, count, [total_time_s, units], mean_unit_time_s_out, status_out) }
}
