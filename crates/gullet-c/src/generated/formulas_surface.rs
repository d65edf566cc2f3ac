// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::surface::*;

/// Diameter of the circle that cuts at the top of the engaged edge of a tilted cutter with a corner
///     radius.
///
///     D_eff = D - 2 r + 2 r sin(min(beta + theta, 90 deg)); theta = acos(1 - min(a_p/r, 1))
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// corner_radius_m: r, corner radius [m]; 0 < corner_radius <= diameter/2.
/// axial_depth_m: a_p, depth of cut along the surface normal [m]; axial_depth >= 0.
/// tilt_angle_rad: beta, tilt between the tool axis and the surface normal [rad]; 0 deg <=
///     tilt_angle <= 90 deg.
/// tilted_corner_effective_diameter_m_out: D_eff [m].
/// Valid for: the full diameter once the depth reaches the corner radius or the angle reaches 90
///     deg; a ball nose at r = D/2.
/// Source: derived: circle of latitude on a torus; without tilt it is
///     corner_radius_effective_diameter.
/// Example: diameter=12 mm; corner_radius=2 mm; axial_depth=0.5 mm; tilt_angle=15 deg =>
///     11.332056657 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tilted_corner_effective_diameter(
    diameter_m: f64,
    corner_radius_m: f64,
    axial_depth_m: f64,
    tilt_angle_rad: f64,
    tilted_corner_effective_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tilted_corner_effective_diameter::FORMULA, &[diameter_m, corner_radius_m, axial_depth_m, tilt_angle_rad], tilted_corner_effective_diameter_m_out) }
}

/// gullet_tilted_corner_effective_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tilted_corner_effective_diameter_array(
    count: usize,
    diameter_m: *const f64,
    corner_radius_m: *const f64,
    axial_depth_m: *const f64,
    tilt_angle_rad: *const f64,
    tilted_corner_effective_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tilted_corner_effective_diameter::FORMULA, count, [diameter_m, corner_radius_m, axial_depth_m, tilt_angle_rad], tilted_corner_effective_diameter_m_out, status_out) }
}

/// Mean chip thickness along the engaged arc of a tilted ball or corner radius over that of an edge
///     along the axis.
///
///     r_m = (2 sin((beta + gamma)/2) sin((gamma - beta)/2) + max(beta + psi - pi/2, 0))/psi; psi =
///         acos(1 - 2 a_p/d); gamma = min(beta + psi, pi/2)
///
/// edge_diameter_m: d, diameter of the ball; twice the corner radius [m]; edge_diameter > 0.
/// axial_depth_m: a_p, depth of cut along the surface normal [m]; 0 < axial_depth <=
///     edge_diameter/2.
/// tilt_angle_rad: beta, tilt between the tool axis and the surface normal [rad]; 0 deg <=
///     tilt_angle <= 90 deg.
/// tilted_edge_mean_thickness_ratio_out: r_m [-].
/// Valid for: at phi = 90 deg, feed much smaller than the edge's diameter; beyond 90 deg the shank's
///     cylinder cuts; angles in radians.
/// Source: derived: integral of the sine of the cutting-edge angle from beta to beta + psi; without
///     tilt it is round_edge_mean_thickness_ratio.
/// Example: edge_diameter=12 mm; axial_depth=3 mm; tilt_angle=30 deg => 0.826993343133 (identity:
///     (cos 30 deg - cos 90 deg)/(pi/3)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tilted_edge_mean_thickness_ratio(
    edge_diameter_m: f64,
    axial_depth_m: f64,
    tilt_angle_rad: f64,
    tilted_edge_mean_thickness_ratio_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tilted_edge_mean_thickness_ratio::FORMULA, &[edge_diameter_m, axial_depth_m, tilt_angle_rad], tilted_edge_mean_thickness_ratio_out) }
}

/// gullet_tilted_edge_mean_thickness_ratio over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tilted_edge_mean_thickness_ratio_array(
    count: usize,
    edge_diameter_m: *const f64,
    axial_depth_m: *const f64,
    tilt_angle_rad: *const f64,
    tilted_edge_mean_thickness_ratio_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tilted_edge_mean_thickness_ratio::FORMULA, count, [edge_diameter_m, axial_depth_m, tilt_angle_rad], tilted_edge_mean_thickness_ratio_out, status_out) }
}

/// Diameter of the circle on which the point that leaves the finished surface runs.
///
///     D_k = D - 2 r + 2 r sin(beta)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// corner_radius_m: r, corner radius; of a ball nose half the diameter [m]; 0 <= corner_radius <=
///     diameter/2.
/// tilt_angle_rad: beta, tilt between the tool axis and the surface normal [rad]; 0 deg <=
///     tilt_angle <= 90 deg.
/// contact_diameter_m_out: D_k [m].
/// Valid for: 0 for a ball nose whose axis is the normal: its centre stands still and rubs; a tilt
///     of 10 to 15 deg avoids that (common practice).
/// Source: derived: circle of latitude on a torus.
/// Example: diameter=12 mm; corner_radius=6 mm; tilt_angle=30 deg => 6 mm (identity: half the ball's
///     diameter).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_contact_diameter(
    diameter_m: f64,
    corner_radius_m: f64,
    tilt_angle_rad: f64,
    contact_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&contact_diameter::FORMULA, &[diameter_m, corner_radius_m, tilt_angle_rad], contact_diameter_m_out) }
}

/// gullet_contact_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_contact_diameter_array(
    count: usize,
    diameter_m: *const f64,
    corner_radius_m: *const f64,
    tilt_angle_rad: *const f64,
    contact_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&contact_diameter::FORMULA, count, [diameter_m, corner_radius_m, tilt_angle_rad], contact_diameter_m_out, status_out) }
}

/// Radius of the ball that leaves the same scallops as a cutter with a corner radius tilted along
///     its path.
///
///     R_s = r + (D/2 - r)/sin(beta)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// corner_radius_m: r, corner radius [m]; 0 < corner_radius <= diameter/2.
/// tilt_angle_rad: beta, tilt between the tool axis and the surface normal, in the plane of the path
///     [rad]; 0 deg < tilt_angle <= 90 deg.
/// tilted_corner_scallop_radius_m_out: R_s [m].
/// Valid for: small scallops; a large radius at a small tilt: the corner must not gouge a hollow
///     surface.
/// Source: derived: second radius of curvature of a torus, the length of its normal to the axis.
/// Example: diameter=12 mm; corner_radius=2 mm; tilt_angle=30 deg => 10 mm (identity: 2 + 4/0.5 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tilted_corner_scallop_radius(
    diameter_m: f64,
    corner_radius_m: f64,
    tilt_angle_rad: f64,
    tilted_corner_scallop_radius_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tilted_corner_scallop_radius::FORMULA, &[diameter_m, corner_radius_m, tilt_angle_rad], tilted_corner_scallop_radius_m_out) }
}

/// gullet_tilted_corner_scallop_radius over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tilted_corner_scallop_radius_array(
    count: usize,
    diameter_m: *const f64,
    corner_radius_m: *const f64,
    tilt_angle_rad: *const f64,
    tilted_corner_scallop_radius_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tilted_corner_scallop_radius::FORMULA, count, [diameter_m, corner_radius_m, tilt_angle_rad], tilted_corner_scallop_radius_m_out, status_out) }
}

/// Height of the ridges that a cutter with a corner radius leaves between two passes over a flat
///     surface.
///
///     h = w^2/(4 r + 2 sqrt(4 r^2 - w^2)); w = max(s - (D - 2 r), 0 mm)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// corner_radius_m: r, corner radius [m]; 0 < corner_radius <= diameter/2.
/// stepover_m: s, distance between two passes [m]; 0 <= stepover <= diameter.
/// corner_scallop_height_m_out: h [m].
/// Valid for: tool axis along the surface normal; none while the flat end covers the stepover; the
///     same as r - sqrt(r^2 - w^2/4).
/// Source: derived: circle and chord; a ball nose at r = D/2.
/// Example: diameter=12 mm; corner_radius=2 mm; stepover=9 mm => 0.0635083269 mm (identity: 2 -
///     sqrt(3.75) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_corner_scallop_height(
    diameter_m: f64,
    corner_radius_m: f64,
    stepover_m: f64,
    corner_scallop_height_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&corner_scallop_height::FORMULA, &[diameter_m, corner_radius_m, stepover_m], corner_scallop_height_m_out) }
}

/// gullet_corner_scallop_height over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_corner_scallop_height_array(
    count: usize,
    diameter_m: *const f64,
    corner_radius_m: *const f64,
    stepover_m: *const f64,
    corner_scallop_height_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&corner_scallop_height::FORMULA, count, [diameter_m, corner_radius_m, stepover_m], corner_scallop_height_m_out, status_out) }
}

/// Stepover of a cutter with a corner radius that leaves ridges of a wanted height on a flat
///     surface.
///
///     s = D - 2 r + 2 sqrt(h (2 r - h))
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// corner_radius_m: r, corner radius [m]; 0 < corner_radius <= diameter/2.
/// scallop_height_m: h, wanted height of the ridges [m]; 0 <= scallop_height <= corner_radius.
/// corner_stepover_for_scallop_m_out: s [m].
/// Valid for: tool axis along the surface normal.
/// Source: derived: inverse of corner_scallop_height.
/// Example: diameter=12 mm; corner_radius=2 mm; scallop_height=0.02 mm => 8.56426943989 mm
///     (identity: 8 + 2 sqrt(0.0796) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_corner_stepover_for_scallop(
    diameter_m: f64,
    corner_radius_m: f64,
    scallop_height_m: f64,
    corner_stepover_for_scallop_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&corner_stepover_for_scallop::FORMULA, &[diameter_m, corner_radius_m, scallop_height_m], corner_stepover_for_scallop_m_out) }
}

/// gullet_corner_stepover_for_scallop over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_corner_stepover_for_scallop_array(
    count: usize,
    diameter_m: *const f64,
    corner_radius_m: *const f64,
    scallop_height_m: *const f64,
    corner_stepover_for_scallop_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&corner_stepover_for_scallop::FORMULA, count, [diameter_m, corner_radius_m, scallop_height_m], corner_stepover_for_scallop_m_out, status_out) }
}

/// Height of the scallops that a ball-nosed cutter leaves between two passes over a convex surface.
///
///     h = q/(R + sqrt(R^2 - q)) - q/(rho + R + sqrt((rho + R)^2 - q)); R = D/2; q = (s (rho + R)/(2
///         rho))^2
///
/// ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
/// surface_radius_m: rho, radius of the surface across the passes [m]; surface_radius > 0.
/// stepover_m: s, straight distance between two points of contact [m]; 0 <= stepover <=
///     ball_diameter*surface_radius/(surface_radius + ball_diameter/2).
/// convex_scallop_height_m_out: h [m].
/// Valid for: round across the passes; nearly s^2/8 (1/R + 1/rho) where both are large against s:
///     higher than on a flat.
/// Source: derived: two circles about centres on a circle of radius rho + R.
/// Example: ball_diameter=10 mm; surface_radius=40 mm; stepover=0.6 mm => 10.137986478 um
///     (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_convex_scallop_height(
    ball_diameter_m: f64,
    surface_radius_m: f64,
    stepover_m: f64,
    convex_scallop_height_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&convex_scallop_height::FORMULA, &[ball_diameter_m, surface_radius_m, stepover_m], convex_scallop_height_m_out) }
}

/// gullet_convex_scallop_height over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_convex_scallop_height_array(
    count: usize,
    ball_diameter_m: *const f64,
    surface_radius_m: *const f64,
    stepover_m: *const f64,
    convex_scallop_height_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&convex_scallop_height::FORMULA, count, [ball_diameter_m, surface_radius_m, stepover_m], convex_scallop_height_m_out, status_out) }
}

/// Height of the scallops that a ball-nosed cutter leaves between two passes over a hollow surface.
///
///     h = q/(R + sqrt(R^2 - q)) + q/(rho - R + sqrt((rho - R)^2 - q)); R = D/2; q = (s (rho - R)/(2
///         rho))^2
///
/// ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
/// surface_radius_m: rho, radius of the surface across the passes [m]; surface_radius >
///     ball_diameter/2.
/// stepover_m: s, straight distance between two points of contact [m]; 0 <= stepover <=
///     2*surface_radius.
/// stepover (surface_radius - ball_diameter/2) <= ball_diameter surface_radius.
/// concave_scallop_height_m_out: h [m].
/// Valid for: round across the passes; nearly s^2/8 (1/R - 1/rho) where both are large against s:
///     lower than on a flat; a ball as large as the hollow leaves none.
/// Source: derived: two circles about centres on a circle of radius rho - R.
/// Example: ball_diameter=10 mm; surface_radius=40 mm; stepover=0.6 mm => 7.87976846918 um
///     (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_concave_scallop_height(
    ball_diameter_m: f64,
    surface_radius_m: f64,
    stepover_m: f64,
    concave_scallop_height_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&concave_scallop_height::FORMULA, &[ball_diameter_m, surface_radius_m, stepover_m], concave_scallop_height_m_out) }
}

/// gullet_concave_scallop_height over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_concave_scallop_height_array(
    count: usize,
    ball_diameter_m: *const f64,
    surface_radius_m: *const f64,
    stepover_m: *const f64,
    concave_scallop_height_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&concave_scallop_height::FORMULA, count, [ball_diameter_m, surface_radius_m, stepover_m], concave_scallop_height_m_out, status_out) }
}

/// Stepover of a ball-nosed cutter that leaves a wanted scallop height on a convex surface.
///
///     s = 4 rho sqrt(w (1 - w)); w = h (D - h)/(2 (2 rho + D) (rho + h))
///
/// ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
/// surface_radius_m: rho, radius of the surface across the passes [m]; surface_radius > 0.
/// scallop_height_m: h, wanted scallop height [m]; 0 <= scallop_height <= ball_diameter/2.
/// (surface_radius + scallop_height)^2 <= surface_radius (surface_radius + ball_diameter).
/// convex_stepover_for_scallop_m_out: s [m].
/// Valid for: straight distance between two points of contact; the balls of both passes must still
///     meet.
/// Source: derived: triangle of ball centre, ridge and centre of the surface; inverse of
///     convex_scallop_height.
/// Example: ball_diameter=10 mm; surface_radius=40 mm; scallop_height=0.005 mm => 0.421503793018 mm
///     (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_convex_stepover_for_scallop(
    ball_diameter_m: f64,
    surface_radius_m: f64,
    scallop_height_m: f64,
    convex_stepover_for_scallop_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&convex_stepover_for_scallop::FORMULA, &[ball_diameter_m, surface_radius_m, scallop_height_m], convex_stepover_for_scallop_m_out) }
}

/// gullet_convex_stepover_for_scallop over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_convex_stepover_for_scallop_array(
    count: usize,
    ball_diameter_m: *const f64,
    surface_radius_m: *const f64,
    scallop_height_m: *const f64,
    convex_stepover_for_scallop_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&convex_stepover_for_scallop::FORMULA, count, [ball_diameter_m, surface_radius_m, scallop_height_m], convex_stepover_for_scallop_m_out, status_out) }
}

/// Stepover of a ball-nosed cutter that leaves a wanted scallop height on a hollow surface.
///
///     s = 4 rho sqrt(w (1 - w)); w = h (D - h)/(2 (2 rho - D) (rho - h))
///
/// ball_diameter_m: D, diameter of the ball [m]; ball_diameter > 0.
/// surface_radius_m: rho, radius of the surface across the passes [m]; surface_radius >
///     ball_diameter/2.
/// scallop_height_m: h, wanted scallop height [m]; 0 <= scallop_height <= ball_diameter/2.
/// scallop_height (ball_diameter - scallop_height) <= (2 surface_radius - ball_diameter)
///     (surface_radius - scallop_height).
/// concave_stepover_for_scallop_m_out: s [m].
/// Valid for: straight distance between two points of contact; a ball nearly as large as the hollow
///     leaves no scallop of this height at any stepover, which is refused.
/// Source: derived: triangle of ball centre, ridge and centre of the surface; inverse of
///     concave_scallop_height.
/// Example: ball_diameter=10 mm; surface_radius=40 mm; scallop_height=0.005 mm => 0.477999648833 mm
///     (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_concave_stepover_for_scallop(
    ball_diameter_m: f64,
    surface_radius_m: f64,
    scallop_height_m: f64,
    concave_stepover_for_scallop_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&concave_stepover_for_scallop::FORMULA, &[ball_diameter_m, surface_radius_m, scallop_height_m], concave_stepover_for_scallop_m_out) }
}

/// gullet_concave_stepover_for_scallop over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_concave_stepover_for_scallop_array(
    count: usize,
    ball_diameter_m: *const f64,
    surface_radius_m: *const f64,
    scallop_height_m: *const f64,
    concave_stepover_for_scallop_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&concave_stepover_for_scallop::FORMULA, count, [ball_diameter_m, surface_radius_m, scallop_height_m], concave_stepover_for_scallop_m_out, status_out) }
}
