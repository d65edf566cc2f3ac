// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::finish::*;

/// Arithmetic mean roughness of a profile of feed marks.
///
///     R_a = 4 h/(9 sqrt(3))
///
/// feed_mark_height_m: h, height of the feed marks [m]; feed_mark_height >= 0.
/// feed_mark_mean_roughness_m_out: R_a [m].
/// Valid for: parabolic profile.
/// Source: derived: mean deviation of a parabola.
/// Example: feed_mark_height=9 um => 2.30940107676 um (identity: 4/sqrt(3) um).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_mark_mean_roughness(
    feed_mark_height_m: f64,
    feed_mark_mean_roughness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_mark_mean_roughness::FORMULA, &[feed_mark_height_m], feed_mark_mean_roughness_m_out) }
}

/// gullet_feed_mark_mean_roughness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_mark_mean_roughness_array(
    count: usize,
    feed_mark_height_m: *const f64,
    feed_mark_mean_roughness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_mark_mean_roughness::FORMULA, count, [feed_mark_height_m], feed_mark_mean_roughness_m_out, status_out) }
}

/// Height of the scallops that a ball-nosed cutter leaves between two passes over a flat surface.
///
///     h = (D - sqrt(D^2 - s^2))/2
///
/// ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
/// stepover_m: s, distance between two passes [m]; 0 <= stepover <= ball_diameter.
/// scallop_height_m_out: h [m].
/// Valid for: flat surface; on a wall or slope the stepover is measured along the surface; feed
///     marks add to it.
/// Source: derived: circle and chord.
/// Example: ball_diameter=10 mm; stepover=0.5 mm => 6.25391114 um (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_scallop_height(
    ball_diameter_m: f64,
    stepover_m: f64,
    scallop_height_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&scallop_height::FORMULA, &[ball_diameter_m, stepover_m], scallop_height_m_out) }
}

/// gullet_scallop_height over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_scallop_height_array(
    count: usize,
    ball_diameter_m: *const f64,
    stepover_m: *const f64,
    scallop_height_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&scallop_height::FORMULA, count, [ball_diameter_m, stepover_m], scallop_height_m_out, status_out) }
}

/// Stepover of a ball-nosed cutter that leaves a wanted scallop height on a flat surface.
///
///     s = 2 sqrt(h (D - h))
///
/// ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
/// scallop_height_m: h, wanted scallop height [m]; 0 <= scallop_height <= ball_diameter/2.
/// stepover_for_scallop_m_out: s [m].
/// Valid for: flat surface; on a wall or slope the stepover is measured along the surface.
/// Source: derived: inverse of scallop_height.
/// Example: ball_diameter=10 mm; scallop_height=0.005 mm => 0.447101778 mm (identity: 2 sqrt(0.005 x
///     9.995) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stepover_for_scallop(
    ball_diameter_m: f64,
    scallop_height_m: f64,
    stepover_for_scallop_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&stepover_for_scallop::FORMULA, &[ball_diameter_m, scallop_height_m], stepover_for_scallop_m_out) }
}

/// gullet_stepover_for_scallop over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stepover_for_scallop_array(
    count: usize,
    ball_diameter_m: *const f64,
    scallop_height_m: *const f64,
    stepover_for_scallop_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&stepover_for_scallop::FORMULA, count, [ball_diameter_m, scallop_height_m], stepover_for_scallop_m_out, status_out) }
}
