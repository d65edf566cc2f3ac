// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::chip::*;

/// Undeformed chip width in turning.
///
///     b = a_p/sin(kappa_r)
///
/// depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut >= 0.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// turning_chip_width_m_out: b [m].
/// Valid for: straight edge, depth above the part that the nose radius takes; along the edge of a
///     mill as well.
/// Source: derived: parallelogram of the cut; symbols of ISO 3002-3, from memory.
/// Example: depth_of_cut=3.0 mm; cutting_edge_angle=45 deg => 4.24264068712 mm (own arithmetic: 3
///     sqrt(2)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_chip_width(
    depth_of_cut_m: f64,
    cutting_edge_angle_rad: f64,
    turning_chip_width_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_chip_width::FORMULA, &[depth_of_cut_m, cutting_edge_angle_rad], turning_chip_width_m_out) }
}

/// gullet_turning_chip_width over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_chip_width_array(
    count: usize,
    depth_of_cut_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    turning_chip_width_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_chip_width::FORMULA, count, [depth_of_cut_m, cutting_edge_angle_rad], turning_chip_width_m_out, status_out) }
}

/// Undeformed chip thickness of each lip of a two-lip drill.
///
///     h = (f/2) sin(sigma/2)
///
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// point_angle_rad: sigma, point angle [rad]; 0 deg < point_angle <= 180 deg.
/// drilling_chip_thickness_m_out: h [m].
/// Valid for: two equal lips; sigma = 180 deg is a flat bottom.
/// Source: derived: half the feed, square to the lip.
/// Example: feed_per_rev=0.2 mm; point_angle=118 deg => 0.0857167300702 mm (own arithmetic: 0.1 sin
///     59 deg).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drilling_chip_thickness(
    feed_per_rev_m: f64,
    point_angle_rad: f64,
    drilling_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&drilling_chip_thickness::FORMULA, &[feed_per_rev_m, point_angle_rad], drilling_chip_thickness_m_out) }
}

/// gullet_drilling_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drilling_chip_thickness_array(
    count: usize,
    feed_per_rev_m: *const f64,
    point_angle_rad: *const f64,
    drilling_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&drilling_chip_thickness::FORMULA, count, [feed_per_rev_m, point_angle_rad], drilling_chip_thickness_m_out, status_out) }
}

/// Undeformed chip thickness in plunging with the end of a mill.
///
///     h = f_z sin(kappa_r)
///
/// feed_per_tooth_m: f_z, feed per tooth along the axis [m]; feed_per_tooth >= 0.
/// cutting_edge_angle_rad: kappa_r, angle between the end edge and the axis [rad]; 0 deg <
///     cutting_edge_angle <= 90 deg.
/// plunge_chip_thickness_m_out: h [m].
/// Valid for: feed along the axis: the end edges cut and the whole feed is chip, whatever the width;
///     no thinning.
/// Source: derived: parallelogram of the cut; symbols of ISO 3002-3, from memory.
/// Example: feed_per_tooth=0.08 mm; cutting_edge_angle=30 deg => 0.04 mm (identity: half the feed).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plunge_chip_thickness(
    feed_per_tooth_m: f64,
    cutting_edge_angle_rad: f64,
    plunge_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&plunge_chip_thickness::FORMULA, &[feed_per_tooth_m, cutting_edge_angle_rad], plunge_chip_thickness_m_out) }
}

/// gullet_plunge_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plunge_chip_thickness_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    plunge_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&plunge_chip_thickness::FORMULA, count, [feed_per_tooth_m, cutting_edge_angle_rad], plunge_chip_thickness_m_out, status_out) }
}
