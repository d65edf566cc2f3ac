// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::chamfer::*;

/// Cutting-edge angle of a conical cutter.
///
///     kappa_r = 90 deg - sigma/2
///
/// point_angle_rad: sigma, angle of the whole cone [rad]; 0 deg < point_angle < 180 deg.
/// cone_cutting_edge_angle_rad_out: kappa_r [rad].
/// Valid for: feed across the axis; with this angle chip thickness, chip width and the diameter at a
///     height are those of a face mill.
/// Source: definition of the angles, ISO 3002-1 from memory.
/// Example: point_angle=60 deg => 60 deg (identity: 90 - 30 deg).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cone_cutting_edge_angle(
    point_angle_rad: f64,
    cone_cutting_edge_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&cone_cutting_edge_angle::FORMULA, &[point_angle_rad], cone_cutting_edge_angle_rad_out) }
}

/// gullet_cone_cutting_edge_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cone_cutting_edge_angle_array(
    count: usize,
    point_angle_rad: *const f64,
    cone_cutting_edge_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&cone_cutting_edge_angle::FORMULA, count, [point_angle_rad], cone_cutting_edge_angle_rad_out, status_out) }
}

/// Depth along the axis of a chamfer whose width is measured across it.
///
///     a_p = c/tan(sigma/2)
///
/// chamfer_width_m: c, width of the chamfer, across the axis [m]; chamfer_width >= 0.
/// point_angle_rad: sigma, angle of the whole cone [rad]; 0 deg < point_angle < 180 deg.
/// chamfer_depth_m_out: a_p [m].
/// Valid for: edge of 90 deg, axis along one of its faces.
/// Source: derived: right triangle.
/// Example: chamfer_width=1.5 mm; point_angle=90 deg => 1.5 mm (identity: 45 deg).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chamfer_depth(
    chamfer_width_m: f64,
    point_angle_rad: f64,
    chamfer_depth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&chamfer_depth::FORMULA, &[chamfer_width_m, point_angle_rad], chamfer_depth_m_out) }
}

/// gullet_chamfer_depth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chamfer_depth_array(
    count: usize,
    chamfer_width_m: *const f64,
    point_angle_rad: *const f64,
    chamfer_depth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&chamfer_depth::FORMULA, count, [chamfer_width_m, point_angle_rad], chamfer_depth_m_out, status_out) }
}

/// Width across the axis of a chamfer of a depth along it.
///
///     c = a_p tan(sigma/2)
///
/// axial_depth_m: a_p, depth of the chamfer, along the axis [m]; axial_depth >= 0.
/// point_angle_rad: sigma, angle of the whole cone [rad]; 0 deg < point_angle < 180 deg.
/// chamfer_width_m_out: c [m].
/// Valid for: edge of 90 deg, axis along one of its faces.
/// Source: derived: inverse of chamfer_depth.
/// Example: axial_depth=3 mm; point_angle=60 deg => 1.732050808 mm (identity: 3 tan(30 deg) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chamfer_width(
    axial_depth_m: f64,
    point_angle_rad: f64,
    chamfer_width_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&chamfer_width::FORMULA, &[axial_depth_m, point_angle_rad], chamfer_width_m_out) }
}

/// gullet_chamfer_width over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chamfer_width_array(
    count: usize,
    axial_depth_m: *const f64,
    point_angle_rad: *const f64,
    chamfer_width_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&chamfer_width::FORMULA, count, [axial_depth_m, point_angle_rad], chamfer_width_m_out, status_out) }
}

/// Largest diameter that cuts on a conical cutter along an edge.
///
///     D_max = D_c + 2 c + 2 u tan(sigma/2)
///
/// tip_diameter_m: D_c, diameter of the flat at the tip; 0 of a pointed cutter [m]; tip_diameter >=
///     0.
/// chamfer_width_m: c, width of the chamfer, across the axis [m]; chamfer_width >= 0.
/// tip_clearance_m: u, height of the tip below the chamfer's lower end [m]; tip_clearance >= 0.
/// point_angle_rad: sigma, angle of the whole cone [rad]; 0 deg < point_angle < 180 deg.
/// chamfer_outer_diameter_m_out: D_max [m].
/// Valid for: the cutting speed belongs to this diameter; the smallest that cuts is 2 c less, and a
///     point that cuts with its tip stands still there: keep it below the work.
/// Source: derived: right triangle.
/// Example: tip_diameter=1 mm; chamfer_width=2 mm; tip_clearance=1 mm; point_angle=90 deg => 7 mm
///     (identity: 1 + 4 + 2 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chamfer_outer_diameter(
    tip_diameter_m: f64,
    chamfer_width_m: f64,
    tip_clearance_m: f64,
    point_angle_rad: f64,
    chamfer_outer_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&chamfer_outer_diameter::FORMULA, &[tip_diameter_m, chamfer_width_m, tip_clearance_m, point_angle_rad], chamfer_outer_diameter_m_out) }
}

/// gullet_chamfer_outer_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chamfer_outer_diameter_array(
    count: usize,
    tip_diameter_m: *const f64,
    chamfer_width_m: *const f64,
    tip_clearance_m: *const f64,
    point_angle_rad: *const f64,
    chamfer_outer_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&chamfer_outer_diameter::FORMULA, count, [tip_diameter_m, chamfer_width_m, tip_clearance_m, point_angle_rad], chamfer_outer_diameter_m_out, status_out) }
}

/// Removal rate of a chamfer along an edge.
///
///     Q = a_p c v_f/2
///
/// axial_depth_m: a_p, depth of the chamfer, along the axis [m]; axial_depth >= 0.
/// chamfer_width_m: c, width of the chamfer, across the axis [m]; chamfer_width >= 0.
/// table_feed_m_per_s: v_f, feed along the edge [m/s]; table_feed >= 0.
/// chamfer_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: sharp edge of 90 deg before the cut, one pass.
/// Source: derived: triangle times feed.
/// Example: axial_depth=2 mm; chamfer_width=2 mm; table_feed=300 mm/min => 600 mm3/min (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chamfer_removal_rate(
    axial_depth_m: f64,
    chamfer_width_m: f64,
    table_feed_m_per_s: f64,
    chamfer_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&chamfer_removal_rate::FORMULA, &[axial_depth_m, chamfer_width_m, table_feed_m_per_s], chamfer_removal_rate_m3_per_s_out) }
}

/// gullet_chamfer_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chamfer_removal_rate_array(
    count: usize,
    axial_depth_m: *const f64,
    chamfer_width_m: *const f64,
    table_feed_m_per_s: *const f64,
    chamfer_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&chamfer_removal_rate::FORMULA, count, [axial_depth_m, chamfer_width_m, table_feed_m_per_s], chamfer_removal_rate_m3_per_s_out, status_out) }
}
