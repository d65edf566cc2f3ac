// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::diameter::*;

/// Diameter of the circle that cuts at the top of the engaged edge of a ball nose cutter.
///
///     D_eff = D sin(min(beta + theta, 90 deg)); theta = acos(1 - 2 min(a_p/D, 1))
///
/// diameter_m: D, diameter of the ball [m]; diameter > 0.
/// axial_depth_m: a_p, depth of cut along the surface normal [m]; axial_depth >= 0.
/// tilt_angle_rad: beta, tilt between the tool axis and the surface normal [rad]; 0 deg <=
///     tilt_angle <= 90 deg.
/// ball_effective_diameter_m_out: D_eff [m].
/// Valid for: the full diameter once a_p reaches D/2 or the angle reaches 90 deg; at beta = 0 the
///     tool axis is the normal, the value is 2 sqrt(a_p (D - a_p)), and the centre stands still and
///     rubs.
/// Source: derived: circle of latitude on a sphere; formula without tilt seen in public teaching
///     material, with tilt from memory, both checked by geometry.
/// Example: diameter=10 mm; axial_depth=0.2 mm; tilt_angle=15 deg => 5.18925515 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_ball_effective_diameter(
    diameter_m: f64,
    axial_depth_m: f64,
    tilt_angle_rad: f64,
    ball_effective_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&ball_effective_diameter::FORMULA, &[diameter_m, axial_depth_m, tilt_angle_rad], ball_effective_diameter_m_out) }
}

/// gullet_ball_effective_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_ball_effective_diameter_array(
    count: usize,
    diameter_m: *const f64,
    axial_depth_m: *const f64,
    tilt_angle_rad: *const f64,
    ball_effective_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&ball_effective_diameter::FORMULA, count, [diameter_m, axial_depth_m, tilt_angle_rad], ball_effective_diameter_m_out, status_out) }
}

/// Diameter of the circle that cuts at the top of the engaged edge of a cutter with a corner radius.
///
///     D_eff = D - 2 r + 2 sqrt(a (2 r - a)); a = min(a_p, r)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// corner_radius_m: r, corner radius [m]; 0 <= corner_radius <= diameter/2.
/// axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
/// corner_radius_effective_diameter_m_out: D_eff [m].
/// Valid for: tool axis along the surface normal; the full diameter once a_p reaches the corner
///     radius.
/// Source: derived: circle on a torus; a ball nose at r = D/2, a round insert at IC = 2 r.
/// Example: diameter=12 mm; corner_radius=2 mm; axial_depth=0.5 mm => 10.6457513 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_corner_radius_effective_diameter(
    diameter_m: f64,
    corner_radius_m: f64,
    axial_depth_m: f64,
    corner_radius_effective_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&corner_radius_effective_diameter::FORMULA, &[diameter_m, corner_radius_m, axial_depth_m], corner_radius_effective_diameter_m_out) }
}

/// gullet_corner_radius_effective_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_corner_radius_effective_diameter_array(
    count: usize,
    diameter_m: *const f64,
    corner_radius_m: *const f64,
    axial_depth_m: *const f64,
    corner_radius_effective_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&corner_radius_effective_diameter::FORMULA, count, [diameter_m, corner_radius_m, axial_depth_m], corner_radius_effective_diameter_m_out, status_out) }
}

/// Largest diameter that cuts on a face mill whose edges lean outward.
///
///     D_max = D_c + 2 a_p/tan(kappa_r)
///
/// tip_diameter_m: D_c, diameter at the bottom of the edge [m]; tip_diameter >= 0.
/// axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// face_mill_outer_diameter_m_out: D_max [m].
/// Valid for: depth within the height of the edge; a tip diameter of 0 is a pointed chamfer tool.
/// Source: derived: right triangle.
/// Example: tip_diameter=50 mm; axial_depth=4 mm; cutting_edge_angle=45 deg => 58 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_mill_outer_diameter(
    tip_diameter_m: f64,
    axial_depth_m: f64,
    cutting_edge_angle_rad: f64,
    face_mill_outer_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&face_mill_outer_diameter::FORMULA, &[tip_diameter_m, axial_depth_m, cutting_edge_angle_rad], face_mill_outer_diameter_m_out) }
}

/// gullet_face_mill_outer_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_mill_outer_diameter_array(
    count: usize,
    tip_diameter_m: *const f64,
    axial_depth_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    face_mill_outer_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&face_mill_outer_diameter::FORMULA, count, [tip_diameter_m, axial_depth_m, cutting_edge_angle_rad], face_mill_outer_diameter_m_out, status_out) }
}

/// Mean diameter of a turning or boring cut.
///
///     D_m = D - a_p
///
/// outer_diameter_m: D, larger diameter of the cut: the stock in turning, the finished bore in
///     boring [m]; outer_diameter > 0.
/// depth_of_cut_m: a_p, depth of cut, on the radius [m]; 0 <= depth_of_cut <= outer_diameter/2.
/// turning_mean_diameter_m_out: D_m [m].
/// Valid for: half-way between the diameters before and after the cut.
/// Source: derived: (D + (D - 2 a_p))/2.
/// Example: outer_diameter=50 mm; depth_of_cut=2.5 mm => 47.5 mm (identity: half-way between 50 and
///     45).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_mean_diameter(
    outer_diameter_m: f64,
    depth_of_cut_m: f64,
    turning_mean_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_mean_diameter::FORMULA, &[outer_diameter_m, depth_of_cut_m], turning_mean_diameter_m_out) }
}

/// gullet_turning_mean_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_mean_diameter_array(
    count: usize,
    outer_diameter_m: *const f64,
    depth_of_cut_m: *const f64,
    turning_mean_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_mean_diameter::FORMULA, count, [outer_diameter_m, depth_of_cut_m], turning_mean_diameter_m_out, status_out) }
}
