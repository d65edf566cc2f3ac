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

/// Diameter of the circle that the cutter centre runs on inside a contour.
///
///     D_p = D_f - D_c
///
/// feature_diameter_m: D_f, diameter of the inside contour [m]; feature_diameter > 0.
/// cutter_diameter_m: D_c, cutter diameter [m]; 0 < cutter_diameter < feature_diameter.
/// inside_path_diameter_m_out: D_p [m].
/// Valid for: bores, internal threads at the major diameter.
/// Source: derived: the cutter touches the contour.
/// Example: feature_diameter=30 mm; cutter_diameter=20 mm => 10 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_inside_path_diameter(
    feature_diameter_m: f64,
    cutter_diameter_m: f64,
    inside_path_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&inside_path_diameter::FORMULA, &[feature_diameter_m, cutter_diameter_m], inside_path_diameter_m_out) }
}

/// gullet_inside_path_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_inside_path_diameter_array(
    count: usize,
    feature_diameter_m: *const f64,
    cutter_diameter_m: *const f64,
    inside_path_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&inside_path_diameter::FORMULA, count, [feature_diameter_m, cutter_diameter_m], inside_path_diameter_m_out, status_out) }
}

/// Diameter of the circle that the cutter centre runs on around a contour.
///
///     D_p = D_f + D_c
///
/// feature_diameter_m: D_f, diameter of the outside contour [m]; feature_diameter > 0.
/// cutter_diameter_m: D_c, cutter diameter [m]; cutter_diameter > 0.
/// outside_path_diameter_m_out: D_p [m].
/// Valid for: bosses, external threads at the minor diameter.
/// Source: derived: the cutter touches the contour.
/// Example: feature_diameter=30 mm; cutter_diameter=20 mm => 50 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_outside_path_diameter(
    feature_diameter_m: f64,
    cutter_diameter_m: f64,
    outside_path_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&outside_path_diameter::FORMULA, &[feature_diameter_m, cutter_diameter_m], outside_path_diameter_m_out) }
}

/// gullet_outside_path_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_outside_path_diameter_array(
    count: usize,
    feature_diameter_m: *const f64,
    cutter_diameter_m: *const f64,
    outside_path_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&outside_path_diameter::FORMULA, count, [feature_diameter_m, cutter_diameter_m], outside_path_diameter_m_out, status_out) }
}

/// Axial travel a turn at which the helix of the cutter centre has a ramp angle.
///
///     P = pi D_p tan(alpha)
///
/// ramp_angle_rad: alpha, ramp angle, at most the cutter's own limit [rad]; 0 deg <= ramp_angle < 90
///     deg.
/// path_diameter_m: D_p, diameter of the path of the cutter centre [m]; path_diameter > 0.
/// axial_per_turn_for_ramp_m_out: P [m].
/// Valid for: the axial depth of the cut is this much.
/// Source: derived: unrolled helix; inverse of helix_ramp_angle.
/// Example: ramp_angle=3 deg; path_diameter=10 mm => 1.64643894387 mm (identity: 10 pi tan(3 deg)
///     mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_axial_per_turn_for_ramp(
    ramp_angle_rad: f64,
    path_diameter_m: f64,
    axial_per_turn_for_ramp_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&axial_per_turn_for_ramp::FORMULA, &[ramp_angle_rad, path_diameter_m], axial_per_turn_for_ramp_m_out) }
}

/// gullet_axial_per_turn_for_ramp over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_axial_per_turn_for_ramp_array(
    count: usize,
    ramp_angle_rad: *const f64,
    path_diameter_m: *const f64,
    axial_per_turn_for_ramp_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&axial_per_turn_for_ramp::FORMULA, count, [ramp_angle_rad, path_diameter_m], axial_per_turn_for_ramp_m_out, status_out) }
}

/// Travel of the cutter centre in one turn of a helix.
///
///     L_t = sqrt((pi D_p)^2 + P^2)
///
/// path_diameter_m: D_p, diameter of the path of the cutter centre [m]; path_diameter > 0.
/// axial_per_turn_m: P, axial travel per turn of the helix; the pitch of a thread [m];
///     axial_per_turn >= 0.
/// helix_turn_length_m_out: L_t [m].
/// Valid for: a full circle at 0.
/// Source: derived: unrolled helix.
/// Example: path_diameter=10 mm; axial_per_turn=1.5 mm => 31.4517160122 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_turn_length(
    path_diameter_m: f64,
    axial_per_turn_m: f64,
    helix_turn_length_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&helix_turn_length::FORMULA, &[path_diameter_m, axial_per_turn_m], helix_turn_length_m_out) }
}

/// gullet_helix_turn_length over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_turn_length_array(
    count: usize,
    path_diameter_m: *const f64,
    axial_per_turn_m: *const f64,
    helix_turn_length_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&helix_turn_length::FORMULA, count, [path_diameter_m, axial_per_turn_m], helix_turn_length_m_out, status_out) }
}

/// Turns of a helix over an axial depth.
///
///     k = T/P
///
/// axial_depth_m: T, depth along the axis [m]; axial_depth >= 0.
/// axial_per_turn_m: P, axial travel per turn of the helix; the pitch of a thread [m];
///     axial_per_turn > 0.
/// helix_turns_out: k [turns].
/// Valid for: a blind bore needs one more turn on its floor.
/// Source: definition.
/// Example: axial_depth=12 mm; axial_per_turn=1.5 mm => 8 turns (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_turns(
    axial_depth_m: f64,
    axial_per_turn_m: f64,
    helix_turns_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&helix_turns::FORMULA, &[axial_depth_m, axial_per_turn_m], helix_turns_out) }
}

/// gullet_helix_turns over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_turns_array(
    count: usize,
    axial_depth_m: *const f64,
    axial_per_turn_m: *const f64,
    helix_turns_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&helix_turns::FORMULA, count, [axial_depth_m, axial_per_turn_m], helix_turns_out, status_out) }
}

/// Travel of the cutter centre on a helix into a bore, with full circles on its floor.
///
///     L = (T/P) sqrt((pi D_p)^2 + P^2) + k pi D_p
///
/// axial_depth_m: T, depth along the axis, with the clearance above the work [m]; axial_depth >= 0.
/// axial_per_turn_m: P, axial travel per turn of the helix [m]; axial_per_turn > 0.
/// path_diameter_m: D_p, diameter of the path of the cutter centre [m]; path_diameter > 0.
/// floor_turns: k, full circles on the floor: 1 of a blind bore, 0 of a through one [turns];
///     floor_turns >= 0.
/// helix_travel_m_out: L [m].
/// Valid for: the time is this travel over the feed of the cutter centre.
/// Source: derived: unrolled helix.
/// Example: axial_depth=12 mm; axial_per_turn=1.5 mm; path_diameter=10 mm => 283.029654633 mm
///     (identity: 8 turns and a circle).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_travel(
    axial_depth_m: f64,
    axial_per_turn_m: f64,
    path_diameter_m: f64,
    floor_turns: f64,
    helix_travel_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&helix_travel::FORMULA, &[axial_depth_m, axial_per_turn_m, path_diameter_m, floor_turns], helix_travel_m_out) }
}

/// gullet_helix_travel over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_travel_array(
    count: usize,
    axial_depth_m: *const f64,
    axial_per_turn_m: *const f64,
    path_diameter_m: *const f64,
    floor_turns: *const f64,
    helix_travel_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&helix_travel::FORMULA, count, [axial_depth_m, axial_per_turn_m, path_diameter_m, floor_turns], helix_travel_m_out, status_out) }
}
