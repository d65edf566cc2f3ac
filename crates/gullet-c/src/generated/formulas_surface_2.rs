// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::surface::*;

/// Stepover along a sloping surface of passes that are stepped sideways.
///
///     s = e/cos(theta)
///
/// plan_step_m: e, distance of two passes in the plane of the table [m]; plan_step >= 0.
/// slope_angle_rad: theta, slope of the surface across the passes, from the plane of the table
///     [rad]; 0 deg <= slope_angle < 90 deg.
/// stepover_of_plan_step_m_out: s [m].
/// Valid for: plane surface; on a steep wall the ridges grow without bound: step down instead.
/// Source: derived: right triangle.
/// Example: plan_step=0.4 mm; slope_angle=60 deg => 0.8 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stepover_of_plan_step(
    plan_step_m: f64,
    slope_angle_rad: f64,
    stepover_of_plan_step_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&stepover_of_plan_step::FORMULA, &[plan_step_m, slope_angle_rad], stepover_of_plan_step_m_out) }
}

/// gullet_stepover_of_plan_step over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stepover_of_plan_step_array(
    count: usize,
    plan_step_m: *const f64,
    slope_angle_rad: *const f64,
    stepover_of_plan_step_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&stepover_of_plan_step::FORMULA, count, [plan_step_m, slope_angle_rad], stepover_of_plan_step_m_out, status_out) }
}

/// Sideways step of passes that are a stepover apart along a sloping surface.
///
///     e = s cos(theta)
///
/// stepover_m: s, distance of two passes along the surface [m]; stepover >= 0.
/// slope_angle_rad: theta, slope of the surface across the passes, from the plane of the table
///     [rad]; 0 deg <= slope_angle <= 90 deg.
/// plan_step_for_stepover_m_out: e [m].
/// Valid for: plane surface; the steepest part of a surface decides for all of it.
/// Source: derived: inverse of stepover_of_plan_step.
/// Example: stepover=0.8 mm; slope_angle=60 deg => 0.4 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plan_step_for_stepover(
    stepover_m: f64,
    slope_angle_rad: f64,
    plan_step_for_stepover_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&plan_step_for_stepover::FORMULA, &[stepover_m, slope_angle_rad], plan_step_for_stepover_m_out) }
}

/// gullet_plan_step_for_stepover over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plan_step_for_stepover_array(
    count: usize,
    stepover_m: *const f64,
    slope_angle_rad: *const f64,
    plan_step_for_stepover_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&plan_step_for_stepover::FORMULA, count, [stepover_m, slope_angle_rad], plan_step_for_stepover_m_out, status_out) }
}

/// Stepover along a sloping surface of passes that are stepped down.
///
///     s = a/sin(theta)
///
/// level_step_m: a, distance of two passes along the tool axis [m]; level_step >= 0.
/// slope_angle_rad: theta, slope of the surface across the passes, from the plane of the table
///     [rad]; 0 deg < slope_angle <= 90 deg.
/// stepover_of_level_step_m_out: s [m].
/// Valid for: plane surface; on a nearly level one the ridges grow without bound: step sideways
///     instead.
/// Source: derived: right triangle.
/// Example: level_step=0.2 mm; slope_angle=30 deg => 0.4 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stepover_of_level_step(
    level_step_m: f64,
    slope_angle_rad: f64,
    stepover_of_level_step_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&stepover_of_level_step::FORMULA, &[level_step_m, slope_angle_rad], stepover_of_level_step_m_out) }
}

/// gullet_stepover_of_level_step over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stepover_of_level_step_array(
    count: usize,
    level_step_m: *const f64,
    slope_angle_rad: *const f64,
    stepover_of_level_step_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&stepover_of_level_step::FORMULA, count, [level_step_m, slope_angle_rad], stepover_of_level_step_m_out, status_out) }
}

/// Step down of passes that are a stepover apart along a sloping surface.
///
///     a = s sin(theta)
///
/// stepover_m: s, distance of two passes along the surface [m]; stepover >= 0.
/// slope_angle_rad: theta, slope of the surface across the passes, from the plane of the table
///     [rad]; 0 deg <= slope_angle <= 90 deg.
/// level_step_for_stepover_m_out: a [m].
/// Valid for: plane surface; the most level part of a surface decides for all of it.
/// Source: derived: inverse of stepover_of_level_step.
/// Example: stepover=0.4 mm; slope_angle=30 deg => 0.2 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_level_step_for_stepover(
    stepover_m: f64,
    slope_angle_rad: f64,
    level_step_for_stepover_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&level_step_for_stepover::FORMULA, &[stepover_m, slope_angle_rad], level_step_for_stepover_m_out) }
}

/// gullet_level_step_for_stepover over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_level_step_for_stepover_array(
    count: usize,
    stepover_m: *const f64,
    slope_angle_rad: *const f64,
    level_step_for_stepover_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&level_step_for_stepover::FORMULA, count, [stepover_m, slope_angle_rad], level_step_for_stepover_m_out, status_out) }
}

/// Passes side by side, the first on one edge of an area and the last on the other, no further apart
///     than a stepover.
///
///     N = ceil(W/s) + 1
///
/// width_m: W, width of the area across the passes [m]; width >= 0.
/// stepover_m: s, largest distance between two passes [m]; stepover > 0.
/// raster_passes_out: N [-].
/// Valid for: a quotient within 1e-9, relative, above a whole number counts as that number.
/// Source: derived: gaps between the passes.
/// Example: width=25 mm; stepover=0.4 mm => 64 (own arithmetic: 62.5 gaps rounded up, and one).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_raster_passes(
    width_m: f64,
    stepover_m: f64,
    raster_passes_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&raster_passes::FORMULA, &[width_m, stepover_m], raster_passes_out) }
}

/// gullet_raster_passes over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_raster_passes_array(
    count: usize,
    width_m: *const f64,
    stepover_m: *const f64,
    raster_passes_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&raster_passes::FORMULA, count, [width_m, stepover_m], raster_passes_out, status_out) }
}

/// Stepover of equal passes over an area, the first on one edge and the last on the other.
///
///     s = W/(N - 1)
///
/// width_m: W, width of the area across the passes [m]; width >= 0.
/// passes: N, number of passes [-]; passes >= 2.
/// raster_stepover_m_out: s [m].
/// Valid for: equal gaps.
/// Source: derived: gaps between the passes.
/// Example: width=25 mm; passes=64 => 0.396825397 mm (identity: 25/63 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_raster_stepover(
    width_m: f64,
    passes: f64,
    raster_stepover_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&raster_stepover::FORMULA, &[width_m, passes], raster_stepover_m_out) }
}

/// gullet_raster_stepover over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_raster_stepover_array(
    count: usize,
    width_m: *const f64,
    passes: *const f64,
    raster_stepover_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&raster_stepover::FORMULA, count, [width_m, passes], raster_stepover_m_out, status_out) }
}

/// Equal passes that take a depth, length or width, none larger than a largest step.
///
///     N = max(ceil(T/a), 1)
///
/// total_m: T, depth, length or width to be taken [m]; total >= 0.
/// largest_step_m: a, largest that one pass takes [m]; largest_step > 0.
/// pass_count_out: N [-].
/// Valid for: at least 1; a quotient within 1e-9, relative, above a whole number counts as that
///     number; levels of a bore, axial shifts of a thread mill, plunges along a wall.
/// Source: definition.
/// Example: total=12 mm; largest_step=5 mm => 3 (own arithmetic: 2.4 rounded up).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_pass_count(
    total_m: f64,
    largest_step_m: f64,
    pass_count_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&pass_count::FORMULA, &[total_m, largest_step_m], pass_count_out) }
}

/// gullet_pass_count over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_pass_count_array(
    count: usize,
    total_m: *const f64,
    largest_step_m: *const f64,
    pass_count_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&pass_count::FORMULA, count, [total_m, largest_step_m], pass_count_out, status_out) }
}

/// What each of several equal passes takes.
///
///     a = T/N
///
/// total_m: T, depth, length or width to be taken [m]; total >= 0.
/// passes: N, number of passes [-]; passes >= 1.
/// equal_pass_m_out: a [m].
/// Valid for: with the passes of pass_count none takes more than the largest step.
/// Source: definition.
/// Example: total=12 mm; passes=3 => 4 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_equal_pass(
    total_m: f64,
    passes: f64,
    equal_pass_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&equal_pass::FORMULA, &[total_m, passes], equal_pass_m_out) }
}

/// gullet_equal_pass over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_equal_pass_array(
    count: usize,
    total_m: *const f64,
    passes: *const f64,
    equal_pass_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&equal_pass::FORMULA, count, [total_m, passes], equal_pass_m_out, status_out) }
}

/// Time of equal passes with the moves between them.
///
///     t = N L/v_f + (N - 1) t_l
///
/// passes: N, number of passes [-]; passes >= 1.
/// travel_m: L, travel of one pass at feed, with approach and overtravel [m]; travel >= 0.
/// feed_speed_m_per_s: v_f, feed speed [m/s]; feed_speed > 0.
/// link_time_s: t_l, time between two passes: step, return, lift [s]; link_time >= 0.
/// passes_time_s_out: t [s].
/// Valid for: constant feed; rasters one way or to and fro, rows of plunges, levels; rows so short
///     that the feed is never reached take longer.
/// Source: definition.
/// Example: passes=64; travel=80 mm; feed_speed=1200 mm/min; link_time=0.5 s => 287.5 s (own
///     arithmetic: 64 x 4 s + 63 x 0.5 s).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_passes_time(
    passes: f64,
    travel_m: f64,
    feed_speed_m_per_s: f64,
    link_time_s: f64,
    passes_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&passes_time::FORMULA, &[passes, travel_m, feed_speed_m_per_s, link_time_s], passes_time_s_out) }
}

/// gullet_passes_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_passes_time_array(
    count: usize,
    passes: *const f64,
    travel_m: *const f64,
    feed_speed_m_per_s: *const f64,
    link_time_s: *const f64,
    passes_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&passes_time::FORMULA, count, [passes, travel_m, feed_speed_m_per_s, link_time_s], passes_time_s_out, status_out) }
}
