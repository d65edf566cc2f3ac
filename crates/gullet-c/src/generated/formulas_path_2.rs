// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::path::*;

/// Part of the cutter centre's feed on a helix that runs along the axis.
///
///     v_a = v_fc P/sqrt((pi D_p)^2 + P^2)
///
/// centre_feed_m_per_s: v_fc, feed of the cutter centre along the helix [m/s]; centre_feed >= 0.
/// path_diameter_m: D_p, diameter of the path of the cutter centre [m]; path_diameter > 0.
/// axial_per_turn_m: P, axial travel per turn of the helix [m]; axial_per_turn >= 0.
/// helix_axial_feed_m_per_s_out: v_a [m/s].
/// Valid for: v_fc times the sine of the ramp angle.
/// Source: derived: unrolled helix.
/// Example: centre_feed=200 mm/min; path_diameter=10 mm; axial_per_turn=1.5 mm => 9.53843026829
///     mm/min (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_axial_feed(
    centre_feed_m_per_s: f64,
    path_diameter_m: f64,
    axial_per_turn_m: f64,
    helix_axial_feed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&helix_axial_feed::FORMULA, &[centre_feed_m_per_s, path_diameter_m, axial_per_turn_m], helix_axial_feed_m_per_s_out) }
}

/// gullet_helix_axial_feed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_axial_feed_array(
    count: usize,
    centre_feed_m_per_s: *const f64,
    path_diameter_m: *const f64,
    axial_per_turn_m: *const f64,
    helix_axial_feed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&helix_axial_feed::FORMULA, count, [centre_feed_m_per_s, path_diameter_m, axial_per_turn_m], helix_axial_feed_m_per_s_out, status_out) }
}

/// Travel of a half circle that leads the cutter centre from the axis of a bore onto its circular
///     path.
///
///     l_e = pi D_p/4
///
/// path_diameter_m: D_p, diameter of the path of the cutter centre [m]; path_diameter > 0.
/// half_circle_entry_length_m_out: l_e [m].
/// Valid for: tangential entry and exit inside; the half circle's diameter is the radius of the
///     path.
/// Source: derived: half the circumference at D_p/2.
/// Example: path_diameter=8 mm => 6.28318530718 mm (identity: 2 pi mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_half_circle_entry_length(
    path_diameter_m: f64,
    half_circle_entry_length_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&half_circle_entry_length::FORMULA, &[path_diameter_m], half_circle_entry_length_m_out) }
}

/// gullet_half_circle_entry_length over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_half_circle_entry_length_array(
    count: usize,
    path_diameter_m: *const f64,
    half_circle_entry_length_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&half_circle_entry_length::FORMULA, count, [path_diameter_m], half_circle_entry_length_m_out, status_out) }
}

/// Length along the table in which a straight ramp reaches a depth.
///
///     L = T/tan(alpha)
///
/// axial_depth_m: T, depth along the axis [m]; axial_depth >= 0.
/// ramp_angle_rad: alpha, ramp angle, at most the cutter's own limit [rad]; 0 deg < ramp_angle < 90
///     deg.
/// ramp_length_m_out: L [m].
/// Valid for: straight ramp; what stands under it is cut on the way back.
/// Source: derived: right triangle.
/// Example: axial_depth=6 mm; ramp_angle=3 deg => 114.486820126 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_ramp_length(
    axial_depth_m: f64,
    ramp_angle_rad: f64,
    ramp_length_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&ramp_length::FORMULA, &[axial_depth_m, ramp_angle_rad], ramp_length_m_out) }
}

/// gullet_ramp_length over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_ramp_length_array(
    count: usize,
    axial_depth_m: *const f64,
    ramp_angle_rad: *const f64,
    ramp_length_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&ramp_length::FORMULA, count, [axial_depth_m, ramp_angle_rad], ramp_length_m_out, status_out) }
}

/// Steepest straight ramp of a cutter that does not cut at its centre.
///
///     alpha_max = atan(h_k/d_k)
///
/// core_clearance_m: h_k, height of the part that does not cut above the edges [m]; core_clearance
///     >= 0.
/// core_diameter_m: d_k, diameter of the part that does not cut [m]; core_diameter > 0.
/// core_ramp_angle_rad_out: alpha_max [rad].
/// Valid for: straight ramp, sharp inner corners: the work that the front edges leave rises under
///     the core until the rear edges cut it; the maker's own limit comes first.
/// Source: derived: descent while the cutter moves on by its core.
/// Example: core_clearance=0.5 mm; core_diameter=6 mm => 4.76364169073 deg (identity: atan(1/12)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_core_ramp_angle(
    core_clearance_m: f64,
    core_diameter_m: f64,
    core_ramp_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&core_ramp_angle::FORMULA, &[core_clearance_m, core_diameter_m], core_ramp_angle_rad_out) }
}

/// gullet_core_ramp_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_core_ramp_angle_array(
    count: usize,
    core_clearance_m: *const f64,
    core_diameter_m: *const f64,
    core_ramp_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&core_ramp_angle::FORMULA, count, [core_clearance_m, core_diameter_m], core_ramp_angle_rad_out, status_out) }
}

/// Smallest bore that a cutter which does not cut at its centre can sink into solid work.
///
///     D_min = D_c + d_k
///
/// cutter_diameter_m: D_c, cutter diameter [m]; cutter_diameter > 0.
/// core_diameter_m: d_k, diameter of the part that does not cut; 0 of a centre-cutting cutter [m]; 0
///     <= core_diameter <= cutter_diameter.
/// smallest_helix_bore_m_out: D_min [m].
/// Valid for: helix from solid; below it the part that does not cut never leaves the axis of the
///     bore and rides on a pillar; the ramp angle is limited besides.
/// Source: derived: the core's rim reaches the axis of the bore.
/// Example: cutter_diameter=20 mm; core_diameter=12 mm => 32 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_smallest_helix_bore(
    cutter_diameter_m: f64,
    core_diameter_m: f64,
    smallest_helix_bore_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&smallest_helix_bore::FORMULA, &[cutter_diameter_m, core_diameter_m], smallest_helix_bore_m_out) }
}

/// gullet_smallest_helix_bore over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_smallest_helix_bore_array(
    count: usize,
    cutter_diameter_m: *const f64,
    core_diameter_m: *const f64,
    smallest_helix_bore_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&smallest_helix_bore::FORMULA, count, [cutter_diameter_m, core_diameter_m], smallest_helix_bore_m_out, status_out) }
}

/// Largest bore that one helix sinks into solid work with a flat floor.
///
///     D_max = 2 (D_c - r)
///
/// cutter_diameter_m: D_c, cutter diameter [m]; cutter_diameter > 0.
/// corner_radius_m: r, corner radius [m]; 0 <= corner_radius <= cutter_diameter/2.
/// largest_helix_bore_m_out: D_max [m].
/// Valid for: above it a pillar or a point is left on the axis of the bore; up to twice the cutter
///     diameter what is left is a point of the corner's height.
/// Source: derived: the flat end reaches the axis of the bore.
/// Example: cutter_diameter=20 mm; corner_radius=2 mm => 36 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_largest_helix_bore(
    cutter_diameter_m: f64,
    corner_radius_m: f64,
    largest_helix_bore_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&largest_helix_bore::FORMULA, &[cutter_diameter_m, corner_radius_m], largest_helix_bore_m_out) }
}

/// gullet_largest_helix_bore over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_largest_helix_bore_array(
    count: usize,
    cutter_diameter_m: *const f64,
    corner_radius_m: *const f64,
    largest_helix_bore_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&largest_helix_bore::FORMULA, count, [cutter_diameter_m, corner_radius_m], largest_helix_bore_m_out, status_out) }
}

/// Step between two plunges at which nothing is left standing between them.
///
///     s_max = 2 sqrt(a (D - a)); a = min(a_e, D/2)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// largest_plunge_step_m_out: s_max [m].
/// Valid for: the chord of the cutter at the old wall; the ridges on the new wall are those of
///     scallop_height at the cutter diameter.
/// Source: derived: circle and chord.
/// Example: diameter=20 mm; radial_depth=6 mm => 18.3303027798 mm (identity: 2 sqrt(84) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_largest_plunge_step(
    diameter_m: f64,
    radial_depth_m: f64,
    largest_plunge_step_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&largest_plunge_step::FORMULA, &[diameter_m, radial_depth_m], largest_plunge_step_m_out) }
}

/// gullet_largest_plunge_step over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_largest_plunge_step_array(
    count: usize,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    largest_plunge_step_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&largest_plunge_step::FORMULA, count, [diameter_m, radial_depth_m], largest_plunge_step_m_out, status_out) }
}
