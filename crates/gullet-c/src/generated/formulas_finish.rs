// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::finish::*;

/// Ideal peak-to-valley height that a nose radius leaves in turning.
///
///     R_t = f^2/(8 r)
///
/// feed_per_rev_m: f, feed per revolution [m]; 0 <= feed_per_rev <= 2*nose_radius.
/// nose_radius_m: r, nose radius [m]; nose_radius > 0.
/// turning_peak_to_valley_m_out: R_t [m].
/// Valid for: the nose alone cuts the profile; parabola for the exact r - sqrt(r^2 - f^2/4): 1.6 %
///     low at f = r/2, 6.7 % low at f = r; real surfaces are rougher (built-up edge, wear,
///     vibration).
/// Source: geometry of the feed marks, derived; textbooks of metal cutting from memory.
/// Example: feed_per_rev=0.2 mm; nose_radius=0.8 mm => 6.25 um (identity: 0.04/6.4 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_peak_to_valley(
    feed_per_rev_m: f64,
    nose_radius_m: f64,
    turning_peak_to_valley_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_peak_to_valley::FORMULA, &[feed_per_rev_m, nose_radius_m], turning_peak_to_valley_m_out) }
}

/// gullet_turning_peak_to_valley over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_peak_to_valley_array(
    count: usize,
    feed_per_rev_m: *const f64,
    nose_radius_m: *const f64,
    turning_peak_to_valley_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_peak_to_valley::FORMULA, count, [feed_per_rev_m, nose_radius_m], turning_peak_to_valley_m_out, status_out) }
}

/// Ideal arithmetic mean roughness that a nose radius leaves in turning.
///
///     R_a = f^2/(18 sqrt(3) r)
///
/// feed_per_rev_m: f, feed per revolution [m]; 0 <= feed_per_rev <= 2*nose_radius.
/// nose_radius_m: r, nose radius [m]; nose_radius > 0.
/// turning_mean_roughness_m_out: R_a [m].
/// Valid for: arithmetic mean deviation of the parabolic profile, the nose alone cutting; the shop
///     form f^2/(32 r) is 2.6 % lower; real roughness is 1.5 to 3 times the ideal (common practice).
/// Source: derived: mean deviation of a parabola; constant 0.0321 in a metal-cutting textbook
///     companion file, seen.
/// Example: feed_per_rev=0.2 mm; nose_radius=0.8 mm => 1.60375075 um (identity: 0.0320750 x 0.04/0.8
///     mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_mean_roughness(
    feed_per_rev_m: f64,
    nose_radius_m: f64,
    turning_mean_roughness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_mean_roughness::FORMULA, &[feed_per_rev_m, nose_radius_m], turning_mean_roughness_m_out) }
}

/// gullet_turning_mean_roughness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_mean_roughness_array(
    count: usize,
    feed_per_rev_m: *const f64,
    nose_radius_m: *const f64,
    turning_mean_roughness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_mean_roughness::FORMULA, count, [feed_per_rev_m, nose_radius_m], turning_mean_roughness_m_out, status_out) }
}

/// Nose radius that leaves a wanted ideal mean roughness at a feed in turning.
///
///     r = f^2/(18 sqrt(3) R_a)
///
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
/// mean_roughness_m: R_a, wanted arithmetic mean roughness [m]; 0 < mean_roughness <=
///     feed_per_rev/(9*sqrt(3)).
/// nose_radius_for_mean_roughness_m_out: r [m].
/// Valid for: as turning_mean_roughness; the range of the roughness keeps f <= 2 r.
/// Source: derived: inverse of turning_mean_roughness.
/// Example: feed_per_rev=0.1 mm; mean_roughness=0.001 mm => 0.32075015 mm (identity: inputs and the
///     constant 0.0321 of a metal-cutting textbook companion file).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_nose_radius_for_mean_roughness(
    feed_per_rev_m: f64,
    mean_roughness_m: f64,
    nose_radius_for_mean_roughness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&nose_radius_for_mean_roughness::FORMULA, &[feed_per_rev_m, mean_roughness_m], nose_radius_for_mean_roughness_m_out) }
}

/// gullet_nose_radius_for_mean_roughness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_nose_radius_for_mean_roughness_array(
    count: usize,
    feed_per_rev_m: *const f64,
    mean_roughness_m: *const f64,
    nose_radius_for_mean_roughness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&nose_radius_for_mean_roughness::FORMULA, count, [feed_per_rev_m, mean_roughness_m], nose_radius_for_mean_roughness_m_out, status_out) }
}

/// Feed that leaves a wanted ideal mean roughness with a nose radius in turning.
///
///     f = sqrt(18 sqrt(3) r R_a)
///
/// mean_roughness_m: R_a, wanted arithmetic mean roughness [m]; 0 <= mean_roughness <=
///     2*nose_radius/(9*sqrt(3)).
/// nose_radius_m: r, nose radius [m]; nose_radius > 0.
/// feed_for_mean_roughness_m_out: f [m].
/// Valid for: as turning_mean_roughness; the range of the roughness keeps f <= 2 r.
/// Source: derived: inverse of turning_mean_roughness.
/// Example: mean_roughness=1.6037507477489606 um; nose_radius=0.8 mm => 0.2 mm (identity: inverse of
///     turning_mean_roughness).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_mean_roughness(
    mean_roughness_m: f64,
    nose_radius_m: f64,
    feed_for_mean_roughness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_for_mean_roughness::FORMULA, &[mean_roughness_m, nose_radius_m], feed_for_mean_roughness_m_out) }
}

/// gullet_feed_for_mean_roughness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_mean_roughness_array(
    count: usize,
    mean_roughness_m: *const f64,
    nose_radius_m: *const f64,
    feed_for_mean_roughness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_for_mean_roughness::FORMULA, count, [mean_roughness_m, nose_radius_m], feed_for_mean_roughness_m_out, status_out) }
}

/// Mean roughness to expect in turning: the shop form of the ideal one times a ratio of real to
///     ideal.
///
///     R_a = K f^2/(32 r)
///
/// feed_per_rev_m: f, feed per revolution [m]; 0 <= feed_per_rev <= 2*nose_radius.
/// nose_radius_m: r, nose radius [m]; nose_radius > 0.
/// roughness_ratio: K, real over ideal roughness [-]; roughness_ratio >= 1.
/// turning_roughness_estimate_m_out: R_a [m].
/// Valid for: a quarter of the peak-to-valley height is taken for the mean deviation, 2.6 % below
///     turning_mean_roughness; ratio 1 at high speeds, 1 to 2.5 below about 100 m/min in ductile
///     metals (built-up edge).
/// Source: form and ratio: Groover M.P., Fundamentals of Modern Manufacturing, chapter on surface
///     finish, from memory.
/// Example: feed_per_rev=0.25 mm; nose_radius=1.2 mm; roughness_ratio=1.25 => 2.0 um (Groover M.P.,
///     Fundamentals of Modern Manufacturing, 4th ed., Ex. 24.1, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_roughness_estimate(
    feed_per_rev_m: f64,
    nose_radius_m: f64,
    roughness_ratio: f64,
    turning_roughness_estimate_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_roughness_estimate::FORMULA, &[feed_per_rev_m, nose_radius_m, roughness_ratio], turning_roughness_estimate_m_out) }
}

/// gullet_turning_roughness_estimate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_roughness_estimate_array(
    count: usize,
    feed_per_rev_m: *const f64,
    nose_radius_m: *const f64,
    roughness_ratio: *const f64,
    turning_roughness_estimate_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_roughness_estimate::FORMULA, count, [feed_per_rev_m, nose_radius_m, roughness_ratio], turning_roughness_estimate_m_out, status_out) }
}

/// Feed that leaves a wanted mean roughness in turning, with a ratio of real to ideal roughness.
///
///     f = sqrt(32 r R_a/K)
///
/// mean_roughness_m: R_a, wanted arithmetic mean roughness [m]; 0 <= mean_roughness <=
///     roughness_ratio*nose_radius/8.
/// nose_radius_m: r, nose radius [m]; nose_radius > 0.
/// roughness_ratio: K, real over ideal roughness [-]; roughness_ratio >= 1.
/// feed_for_roughness_estimate_m_out: f [m].
/// Valid for: as turning_roughness_estimate; the range of the roughness keeps f <= 2 r.
/// Source: derived: inverse of turning_roughness_estimate.
/// Example: mean_roughness=1.6 um; nose_radius=0.75 mm => 0.196 mm (Groover M.P., Fundamentals of
///     Modern Manufacturing, 4th ed., problem on the feed for a finish, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_roughness_estimate(
    mean_roughness_m: f64,
    nose_radius_m: f64,
    roughness_ratio: f64,
    feed_for_roughness_estimate_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_for_roughness_estimate::FORMULA, &[mean_roughness_m, nose_radius_m, roughness_ratio], feed_for_roughness_estimate_m_out) }
}

/// gullet_feed_for_roughness_estimate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_roughness_estimate_array(
    count: usize,
    mean_roughness_m: *const f64,
    nose_radius_m: *const f64,
    roughness_ratio: *const f64,
    feed_for_roughness_estimate_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_for_roughness_estimate::FORMULA, count, [mean_roughness_m, nose_radius_m, roughness_ratio], feed_for_roughness_estimate_m_out, status_out) }
}

/// Feed that leaves a wanted ideal peak-to-valley height with a nose radius in turning.
///
///     f = sqrt(8 r R_t)
///
/// peak_to_valley_m: R_t, wanted peak-to-valley height [m]; 0 <= peak_to_valley <= nose_radius/2.
/// nose_radius_m: r, nose radius [m]; nose_radius > 0.
/// feed_for_peak_to_valley_m_out: f [m].
/// Valid for: as turning_peak_to_valley; the range of the height keeps f <= 2 r.
/// Source: derived: inverse of turning_peak_to_valley.
/// Example: peak_to_valley=10 um; nose_radius=0.5 mm => 0.2 mm (identity: sqrt(8 x 0.5 x 0.01) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_peak_to_valley(
    peak_to_valley_m: f64,
    nose_radius_m: f64,
    feed_for_peak_to_valley_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_for_peak_to_valley::FORMULA, &[peak_to_valley_m, nose_radius_m], feed_for_peak_to_valley_m_out) }
}

/// gullet_feed_for_peak_to_valley over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_peak_to_valley_array(
    count: usize,
    peak_to_valley_m: *const f64,
    nose_radius_m: *const f64,
    feed_for_peak_to_valley_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_for_peak_to_valley::FORMULA, count, [peak_to_valley_m, nose_radius_m], feed_for_peak_to_valley_m_out, status_out) }
}

/// Ideal peak-to-valley height that a tool without nose radius leaves in turning.
///
///     R_t = f/(tan(C_s) + 1/tan(C_e))
///
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// side_cutting_edge_angle_rad: C_s, side cutting-edge angle [rad]; 0 deg <= side_cutting_edge_angle
///     < 90 deg.
/// end_cutting_edge_angle_rad: C_e, end cutting-edge angle [rad]; 0 deg < end_cutting_edge_angle <
///     90 deg.
/// sharp_tool_peak_to_valley_m_out: R_t [m].
/// Valid for: sharp corner, no nose radius; both edges straight over the feed mark.
/// Source: geometry of the ridge; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.24
///     (the form, seen).
/// Example: feed_per_rev=0.1 mm; side_cutting_edge_angle=45 deg; end_cutting_edge_angle=45 deg =>
///     0.05 mm (identity: right-angled ridge).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_sharp_tool_peak_to_valley(
    feed_per_rev_m: f64,
    side_cutting_edge_angle_rad: f64,
    end_cutting_edge_angle_rad: f64,
    sharp_tool_peak_to_valley_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&sharp_tool_peak_to_valley::FORMULA, &[feed_per_rev_m, side_cutting_edge_angle_rad, end_cutting_edge_angle_rad], sharp_tool_peak_to_valley_m_out) }
}

/// gullet_sharp_tool_peak_to_valley over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_sharp_tool_peak_to_valley_array(
    count: usize,
    feed_per_rev_m: *const f64,
    side_cutting_edge_angle_rad: *const f64,
    end_cutting_edge_angle_rad: *const f64,
    sharp_tool_peak_to_valley_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&sharp_tool_peak_to_valley::FORMULA, count, [feed_per_rev_m, side_cutting_edge_angle_rad, end_cutting_edge_angle_rad], sharp_tool_peak_to_valley_m_out, status_out) }
}

/// Height of the feed marks that peripheral milling leaves.
///
///     h = f_z^2/(4 D)
///
/// feed_per_tooth_m: f_z, feed per tooth; with run-out the feed per revolution [m]; 0 <=
///     feed_per_tooth <= diameter.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// feed_mark_height_m_out: h [m].
/// Valid for: circular tooth path, parabola for the arc; every tooth cuts: with run-out take the
///     feed per revolution.
/// Source: geometry of the feed marks; example: A. Ghosh, A.K. Mallik, Manufacturing Science, Ex.
///     4.25 p.262, seen.
/// Example: feed_per_tooth=0.0347222222222222 mm; diameter=100 mm => 3e-06 mm (A. Ghosh, A.K.
///     Mallik, Manufacturing Science, Ex. 4.25 p.262, seen; f_z = 25/(60 x 12) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_mark_height(
    feed_per_tooth_m: f64,
    diameter_m: f64,
    feed_mark_height_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_mark_height::FORMULA, &[feed_per_tooth_m, diameter_m], feed_mark_height_m_out) }
}

/// gullet_feed_mark_height over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_mark_height_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    diameter_m: *const f64,
    feed_mark_height_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_mark_height::FORMULA, count, [feed_per_tooth_m, diameter_m], feed_mark_height_m_out, status_out) }
}

/// Height of the feed marks that up (conventional) peripheral milling leaves.
///
///     h = f_z^2/(8 (D/2 + f_z z/pi))
///
/// feed_per_tooth_m: f_z, feed per tooth [m]; 0 <= feed_per_tooth <= diameter.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// teeth: z, number of teeth [-]; teeth >= 1.
/// feed_mark_height_up_m_out: h [m].
/// Valid for: trochoidal tooth path, up milling, no run-out.
/// Source: M. Martellotti, 1941, from memory; derived again: curvature of the trochoid at the
///     finished wall.
/// Example: feed_per_tooth=0.1 mm; diameter=12 mm; teeth=4 => 0.204004229 um (identity: 0.01/(8 (6 +
///     0.4/pi)) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_mark_height_up(
    feed_per_tooth_m: f64,
    diameter_m: f64,
    teeth: f64,
    feed_mark_height_up_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_mark_height_up::FORMULA, &[feed_per_tooth_m, diameter_m, teeth], feed_mark_height_up_m_out) }
}

/// gullet_feed_mark_height_up over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_mark_height_up_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    diameter_m: *const f64,
    teeth: *const f64,
    feed_mark_height_up_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_mark_height_up::FORMULA, count, [feed_per_tooth_m, diameter_m, teeth], feed_mark_height_up_m_out, status_out) }
}

/// Height of the feed marks that down (climb) peripheral milling leaves.
///
///     h = f_z^2/(8 (D/2 - f_z z/pi))
///
/// feed_per_tooth_m: f_z, feed per tooth [m]; 0 <= feed_per_tooth <= diameter.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// teeth: z, number of teeth [-]; teeth >= 1.
/// feed_per_tooth*teeth/pi < diameter/2.
/// feed_mark_height_down_m_out: h [m].
/// Valid for: trochoidal tooth path, down milling, no run-out.
/// Source: M. Martellotti, 1941, from memory; derived again: curvature of the trochoid at the
///     finished wall.
/// Example: feed_per_tooth=0.1 mm; diameter=12 mm; teeth=4 => 0.212850154 um (identity: 0.01/(8 (6 -
///     0.4/pi)) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_mark_height_down(
    feed_per_tooth_m: f64,
    diameter_m: f64,
    teeth: f64,
    feed_mark_height_down_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_mark_height_down::FORMULA, &[feed_per_tooth_m, diameter_m, teeth], feed_mark_height_down_m_out) }
}

/// gullet_feed_mark_height_down over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_mark_height_down_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    diameter_m: *const f64,
    teeth: *const f64,
    feed_mark_height_down_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_mark_height_down::FORMULA, count, [feed_per_tooth_m, diameter_m, teeth], feed_mark_height_down_m_out, status_out) }
}
