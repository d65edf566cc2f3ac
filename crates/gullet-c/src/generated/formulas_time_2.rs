// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::time::*;

/// Standard time: the normal time with an allowance.
///
///     t_s = t (1 + A)
///
/// normal_time_s: t, normal time [s]; normal_time >= 0.
/// allowance: A, allowance as a share of the normal time [-]; allowance >= 0.
/// standard_time_s_out: t_s [s].
/// Valid for: allowance as a share of the normal time; a share of the standard time would make it
///     t/(1 - A).
/// Source: definition.
/// Example: normal_time=8 min; allowance=15 % => 9.2 min (identity: 8 x 1.15 min, not 8/0.85).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_standard_time(
    normal_time_s: f64,
    allowance: f64,
    standard_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&standard_time::FORMULA, &[normal_time_s, allowance], standard_time_s_out) }
}

/// gullet_standard_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_standard_time_array(
    count: usize,
    normal_time_s: *const f64,
    allowance: *const f64,
    standard_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&standard_time::FORMULA, count, [normal_time_s, allowance], standard_time_s_out, status_out) }
}
