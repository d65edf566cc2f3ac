// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::path::*;

/// Feed of the cutter centre for the feed wanted at an inside contour.
///
///     v_fc = v_f (D_f - D_c)/D_f
///
/// contour_feed_m_per_s: v_f, feed wanted at the contour [m/s]; contour_feed >= 0.
/// feature_diameter_m: D_f, diameter of the inside contour [m]; feature_diameter > 0.
/// cutter_diameter_m: D_c, cutter diameter [m]; 0 < cutter_diameter < feature_diameter.
/// inside_arc_feed_m_per_s_out: v_fc [m/s].
/// Valid for: circular arc; some controls make this correction themselves: do not correct twice;
///     thread milling inside with the thread's diameter.
/// Source: derived: same angular rate of contour and cutter centre.
/// Example: contour_feed=600 mm/min; feature_diameter=40 mm; cutter_diameter=16 mm => 360 mm/min
///     (identity: 600 x 24/40).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_inside_arc_feed(
    contour_feed_m_per_s: f64,
    feature_diameter_m: f64,
    cutter_diameter_m: f64,
    inside_arc_feed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&inside_arc_feed::FORMULA, &[contour_feed_m_per_s, feature_diameter_m, cutter_diameter_m], inside_arc_feed_m_per_s_out) }
}

/// gullet_inside_arc_feed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_inside_arc_feed_array(
    count: usize,
    contour_feed_m_per_s: *const f64,
    feature_diameter_m: *const f64,
    cutter_diameter_m: *const f64,
    inside_arc_feed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&inside_arc_feed::FORMULA, count, [contour_feed_m_per_s, feature_diameter_m, cutter_diameter_m], inside_arc_feed_m_per_s_out, status_out) }
}

/// Feed of the cutter centre for the feed wanted at an outside contour.
///
///     v_fc = v_f (D_f + D_c)/D_f
///
/// contour_feed_m_per_s: v_f, feed wanted at the contour [m/s]; contour_feed >= 0.
/// feature_diameter_m: D_f, diameter of the outside contour [m]; feature_diameter > 0.
/// cutter_diameter_m: D_c, cutter diameter [m]; cutter_diameter > 0.
/// outside_arc_feed_m_per_s_out: v_fc [m/s].
/// Valid for: circular arc; some controls make this correction themselves: do not correct twice;
///     thread milling outside with the thread's diameter.
/// Source: derived: same angular rate of contour and cutter centre.
/// Example: contour_feed=600 mm/min; feature_diameter=40 mm; cutter_diameter=16 mm => 840 mm/min
///     (identity: 600 x 56/40).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_outside_arc_feed(
    contour_feed_m_per_s: f64,
    feature_diameter_m: f64,
    cutter_diameter_m: f64,
    outside_arc_feed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&outside_arc_feed::FORMULA, &[contour_feed_m_per_s, feature_diameter_m, cutter_diameter_m], outside_arc_feed_m_per_s_out) }
}

/// gullet_outside_arc_feed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_outside_arc_feed_array(
    count: usize,
    contour_feed_m_per_s: *const f64,
    feature_diameter_m: *const f64,
    cutter_diameter_m: *const f64,
    outside_arc_feed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&outside_arc_feed::FORMULA, count, [contour_feed_m_per_s, feature_diameter_m, cutter_diameter_m], outside_arc_feed_m_per_s_out, status_out) }
}

/// Radial depth on a straight wall that engages the cutter as enlarging a bore does.
///
///     a_e = min(D_c, (D_m^2 - D_w^2)/(4 (D_m - D_c)))
///
/// finished_diameter_m: D_m, diameter after the pass [m]; finished_diameter > 0.
/// start_diameter_m: D_w, diameter before the pass, 0 for solid work [m]; 0 <= start_diameter <
///     finished_diameter.
/// cutter_diameter_m: D_c, cutter diameter [m]; 0 < cutter_diameter < finished_diameter.
/// bore_radial_depth_m_out: a_e [m].
/// Valid for: cutter running round the inside; held at the cutter diameter, a full slot.
/// Source: derived: area balance over one turn of the cutter centre.
/// Example: finished_diameter=40 mm; start_diameter=36 mm; cutter_diameter=16 mm => 3.16666667 mm
///     (identity: 304/96 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_bore_radial_depth(
    finished_diameter_m: f64,
    start_diameter_m: f64,
    cutter_diameter_m: f64,
    bore_radial_depth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&bore_radial_depth::FORMULA, &[finished_diameter_m, start_diameter_m, cutter_diameter_m], bore_radial_depth_m_out) }
}

/// gullet_bore_radial_depth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_bore_radial_depth_array(
    count: usize,
    finished_diameter_m: *const f64,
    start_diameter_m: *const f64,
    cutter_diameter_m: *const f64,
    bore_radial_depth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&bore_radial_depth::FORMULA, count, [finished_diameter_m, start_diameter_m, cutter_diameter_m], bore_radial_depth_m_out, status_out) }
}

/// Radial depth on a straight wall that engages the cutter as turning down a boss does.
///
///     a_e = (D_w^2 - D_m^2)/(4 (D_m + D_c))
///
/// finished_diameter_m: D_m, diameter after the pass [m]; finished_diameter > 0.
/// start_diameter_m: D_w, diameter before the pass [m]; finished_diameter < start_diameter <=
///     finished_diameter + 2*cutter_diameter.
/// cutter_diameter_m: D_c, cutter diameter [m]; cutter_diameter > 0.
/// boss_radial_depth_m_out: a_e [m].
/// Valid for: cutter running round the outside; with more stock on the radius than the cutter is
///     wide a wall would be left standing, which is refused.
/// Source: derived: area balance over one turn of the cutter centre.
/// Example: finished_diameter=40 mm; start_diameter=44 mm; cutter_diameter=16 mm => 1.5 mm
///     (identity: 336/224 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_boss_radial_depth(
    finished_diameter_m: f64,
    start_diameter_m: f64,
    cutter_diameter_m: f64,
    boss_radial_depth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&boss_radial_depth::FORMULA, &[finished_diameter_m, start_diameter_m, cutter_diameter_m], boss_radial_depth_m_out) }
}

/// gullet_boss_radial_depth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_boss_radial_depth_array(
    count: usize,
    finished_diameter_m: *const f64,
    start_diameter_m: *const f64,
    cutter_diameter_m: *const f64,
    boss_radial_depth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&boss_radial_depth::FORMULA, count, [finished_diameter_m, start_diameter_m, cutter_diameter_m], boss_radial_depth_m_out, status_out) }
}

/// Ramp angle of the cutter centre on a helix into a bore.
///
///     alpha = atan(P/(pi (D_f - D_c)))
///
/// axial_per_turn_m: P, axial travel per turn of the helix [m]; axial_per_turn >= 0.
/// feature_diameter_m: D_f, diameter of the bore [m]; feature_diameter > 0.
/// cutter_diameter_m: D_c, cutter diameter [m]; 0 < cutter_diameter < feature_diameter.
/// helix_ramp_angle_rad_out: alpha [rad].
/// Valid for: path of the cutter centre, steeper than the helix at the wall; the cutter's own limit
///     is for this path.
/// Source: derived: unrolled helix.
/// Example: axial_per_turn=1.5 mm; feature_diameter=30 mm; cutter_diameter=20 mm => 2.73359594 deg
///     (identity: atan(1.5/(10 pi))).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_ramp_angle(
    axial_per_turn_m: f64,
    feature_diameter_m: f64,
    cutter_diameter_m: f64,
    helix_ramp_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&helix_ramp_angle::FORMULA, &[axial_per_turn_m, feature_diameter_m, cutter_diameter_m], helix_ramp_angle_rad_out) }
}

/// gullet_helix_ramp_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_ramp_angle_array(
    count: usize,
    axial_per_turn_m: *const f64,
    feature_diameter_m: *const f64,
    cutter_diameter_m: *const f64,
    helix_ramp_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&helix_ramp_angle::FORMULA, count, [axial_per_turn_m, feature_diameter_m, cutter_diameter_m], helix_ramp_angle_rad_out, status_out) }
}
