// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::chip::*;

/// Largest undeformed chip thickness of a side cut or slot.
///
///     h_max = f_z sin(kappa_r) s; s = 2 sqrt((a_e/D) (1 - a_e/D)) for a_e < D/2, s = 1 for a_e >=
///         D/2
///
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// max_chip_thickness_m_out: h_max [m].
/// Valid for: circular tooth path, f_z much smaller than D; side cut or slot.
/// Source: geometry of the circular tooth path, derived; ISO 3002 symbols from memory.
/// Example: feed_per_tooth=0.1 mm; diameter=12.7 mm; radial_depth=1.27 mm; cutting_edge_angle=90 deg
///     => 0.06 mm (identity: 3-4-5 triangle).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_max_chip_thickness(
    feed_per_tooth_m: f64,
    diameter_m: f64,
    radial_depth_m: f64,
    cutting_edge_angle_rad: f64,
    max_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&max_chip_thickness::FORMULA, &[feed_per_tooth_m, diameter_m, radial_depth_m, cutting_edge_angle_rad], max_chip_thickness_m_out) }
}

/// gullet_max_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_max_chip_thickness_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    max_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&max_chip_thickness::FORMULA, count, [feed_per_tooth_m, diameter_m, radial_depth_m, cutting_edge_angle_rad], max_chip_thickness_m_out, status_out) }
}

/// Mean undeformed chip thickness over the arc of a side cut or slot.
///
///     h_m = 2 f_z sin(kappa_r) a_e/(D phi_s); phi_s = acos(1 - 2 a_e/D)
///
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// mean_chip_thickness_m_out: h_m [m].
/// Valid for: circular tooth path, f_z much smaller than D; the exact mean of f_z sin(kappa_r)
///     sin(phi) over the arc; phi_s in radians; the shortcut f_z sqrt(a_e/D) reads 1.7 % high at
///     a_e/D = 0.1 and 57 % high in a slot.
/// Source: derived: integral of the sine over the arc.
/// Example: feed_per_tooth=0.1 mm; diameter=12.7 mm; radial_depth=1.27 mm; cutting_edge_angle=90 deg
///     => 0.0310799775 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_chip_thickness(
    feed_per_tooth_m: f64,
    diameter_m: f64,
    radial_depth_m: f64,
    cutting_edge_angle_rad: f64,
    mean_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_chip_thickness::FORMULA, &[feed_per_tooth_m, diameter_m, radial_depth_m, cutting_edge_angle_rad], mean_chip_thickness_m_out) }
}

/// gullet_mean_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_chip_thickness_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    mean_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_chip_thickness::FORMULA, count, [feed_per_tooth_m, diameter_m, radial_depth_m, cutting_edge_angle_rad], mean_chip_thickness_m_out, status_out) }
}

/// Mean undeformed chip thickness over the arc of a face mill.
///
///     h_m = 2 f_z sin(kappa_r) (y_2 - y_1)/(D phi_s); phi_s = acos(2 y_1/D) - acos(2 y_2/D); y_1 =
///         max(y_low, -D/2); y_2 = min(y_high, D/2)
///
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// edge_low_m: y_low, signed distance of the work edge where teeth leave from the cutter axis [m];
///     edge_low < edge_high.
/// edge_high_m: y_high, signed distance of the work edge where teeth enter from the cutter axis [m];
///     edge_high > -diameter/2.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// edge_low < diameter/2.
/// face_mean_chip_thickness_m_out: h_m [m].
/// Valid for: circular tooth path, f_z much smaller than D; edges beyond the cutter count as at its
///     rim; phi_s in radians; positive on the side where teeth enter (left of the cutter's travel
///     relative to the work, right-hand cutter seen from the spindle).
/// Source: derived: integral of the sine over the arc, f_z sin(kappa_r) (cos phi_st - cos
///     phi_ex)/phi_s.
/// Example: feed_per_tooth=0.2 mm; diameter=100 mm; edge_low=-20 mm; edge_high=20 mm;
///     cutting_edge_angle=45 deg => 0.137463492 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_mean_chip_thickness(
    feed_per_tooth_m: f64,
    diameter_m: f64,
    edge_low_m: f64,
    edge_high_m: f64,
    cutting_edge_angle_rad: f64,
    face_mean_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&face_mean_chip_thickness::FORMULA, &[feed_per_tooth_m, diameter_m, edge_low_m, edge_high_m, cutting_edge_angle_rad], face_mean_chip_thickness_m_out) }
}

/// gullet_face_mean_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_mean_chip_thickness_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    diameter_m: *const f64,
    edge_low_m: *const f64,
    edge_high_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    face_mean_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&face_mean_chip_thickness::FORMULA, count, [feed_per_tooth_m, diameter_m, edge_low_m, edge_high_m, cutting_edge_angle_rad], face_mean_chip_thickness_m_out, status_out) }
}

/// Largest undeformed chip thickness over the arc of a face mill.
///
///     h_max = f_z sin(kappa_r) m; m = sqrt(1 - (2 y/D)^2); y = max(y_low, -y_high, 0 mm)
///
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// edge_low_m: y_low, signed distance of the work edge where teeth leave from the cutter axis [m];
///     edge_low < edge_high.
/// edge_high_m: y_high, signed distance of the work edge where teeth enter from the cutter axis [m];
///     edge_high > -diameter/2.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// edge_low < diameter/2.
/// face_max_chip_thickness_m_out: h_max [m].
/// Valid for: circular tooth path, f_z much smaller than D; y is the distance of the work from the
///     cutter axis, so m = 1 where the axis runs over the work; positive on the side where teeth
///     enter (left of the cutter's travel relative to the work, right-hand cutter seen from the
///     spindle).
/// Source: derived: largest sine over the arc.
/// Example: feed_per_tooth=0.2 mm; diameter=100 mm; edge_low=-20 mm; edge_high=20 mm;
///     cutting_edge_angle=45 deg => 0.141421356 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_max_chip_thickness(
    feed_per_tooth_m: f64,
    diameter_m: f64,
    edge_low_m: f64,
    edge_high_m: f64,
    cutting_edge_angle_rad: f64,
    face_max_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&face_max_chip_thickness::FORMULA, &[feed_per_tooth_m, diameter_m, edge_low_m, edge_high_m, cutting_edge_angle_rad], face_max_chip_thickness_m_out) }
}

/// gullet_face_max_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_max_chip_thickness_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    diameter_m: *const f64,
    edge_low_m: *const f64,
    edge_high_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    face_max_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&face_max_chip_thickness::FORMULA, count, [feed_per_tooth_m, diameter_m, edge_low_m, edge_high_m, cutting_edge_angle_rad], face_max_chip_thickness_m_out, status_out) }
}

/// Feed per tooth over the largest chip thickness of a side cut at a cutting-edge angle of 90 deg.
///
///     C_r = 1/s; s = 2 sqrt((a_e/D) (1 - a_e/D)) for a_e < D/2, s = 1 for a_e >= D/2
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// radial_thinning_factor_out: C_r [-].
/// Valid for: side cut or slot, circular tooth path; never below 1: from half immersion on every
///     tooth passes its full feed.
/// Source: derived: largest sine over the arc.
/// Example: diameter=12.7 mm; radial_depth=1.27 mm => 1.66666667 (identity: 3-4-5 triangle).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_radial_thinning_factor(
    diameter_m: f64,
    radial_depth_m: f64,
    radial_thinning_factor_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&radial_thinning_factor::FORMULA, &[diameter_m, radial_depth_m], radial_thinning_factor_out) }
}

/// gullet_radial_thinning_factor over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_radial_thinning_factor_array(
    count: usize,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    radial_thinning_factor_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&radial_thinning_factor::FORMULA, count, [diameter_m, radial_depth_m], radial_thinning_factor_out, status_out) }
}

/// Feed per tooth that gives a largest chip thickness in a side cut or slot.
///
///     f_z = h_max/(sin(kappa_r) s); s = 2 sqrt((a_e/D) (1 - a_e/D)) for a_e < D/2, s = 1 for a_e >=
///         D/2
///
/// max_chip_thickness_m: h_max, largest chip thickness [m]; max_chip_thickness >= 0.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// feed_for_max_chip_thickness_m_out: f_z [m].
/// Valid for: circular tooth path, f_z much smaller than D; in thin cuts the strength of the tooth
///     and its chip space bound the feed before this does.
/// Source: derived: inverse of max_chip_thickness.
/// Example: max_chip_thickness=0.2 mm; diameter=75 mm; radial_depth=5 mm => 0.400891862869 mm (own
///     arithmetic on the inputs of a metal-cutting textbook companion, Ex. 2.4).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_max_chip_thickness(
    max_chip_thickness_m: f64,
    diameter_m: f64,
    radial_depth_m: f64,
    cutting_edge_angle_rad: f64,
    feed_for_max_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_for_max_chip_thickness::FORMULA, &[max_chip_thickness_m, diameter_m, radial_depth_m, cutting_edge_angle_rad], feed_for_max_chip_thickness_m_out) }
}

/// gullet_feed_for_max_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_max_chip_thickness_array(
    count: usize,
    max_chip_thickness_m: *const f64,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    feed_for_max_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_for_max_chip_thickness::FORMULA, count, [max_chip_thickness_m, diameter_m, radial_depth_m, cutting_edge_angle_rad], feed_for_max_chip_thickness_m_out, status_out) }
}

/// Largest chip thickness along a round edge: round insert, ball or corner radius.
///
///     h_max = f_z m; m = sqrt(1 - (1 - 2 a_p/IC)^2) for a_p < IC/2, m = 1 for a_p >= IC/2
///
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// insert_diameter_m: IC, diameter of the round insert; twice the radius of a ball or corner [m];
///     insert_diameter > 0.
/// axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth > 0.
/// round_edge_max_chip_thickness_m_out: h_max [m].
/// Valid for: arc that holds phi = 90 deg: slot, half immersion or more, face mill over its axis;
///     f_z much smaller than IC.
/// Source: derived: slope of the circle at the depth of cut.
/// Example: feed_per_tooth=0.2 mm; insert_diameter=10 mm; axial_depth=1 mm => 0.12 mm (identity:
///     3-4-5 triangle, sine 0.6).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_round_edge_max_chip_thickness(
    feed_per_tooth_m: f64,
    insert_diameter_m: f64,
    axial_depth_m: f64,
    round_edge_max_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&round_edge_max_chip_thickness::FORMULA, &[feed_per_tooth_m, insert_diameter_m, axial_depth_m], round_edge_max_chip_thickness_m_out) }
}

/// gullet_round_edge_max_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_round_edge_max_chip_thickness_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    insert_diameter_m: *const f64,
    axial_depth_m: *const f64,
    round_edge_max_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&round_edge_max_chip_thickness::FORMULA, count, [feed_per_tooth_m, insert_diameter_m, axial_depth_m], round_edge_max_chip_thickness_m_out, status_out) }
}

/// Feed per tooth that gives a largest chip thickness along a round edge.
///
///     f_z = h_max/m; m = sqrt(1 - (1 - 2 a_p/IC)^2) for a_p < IC/2, m = 1 for a_p >= IC/2
///
/// max_chip_thickness_m: h_max, largest chip thickness [m]; max_chip_thickness >= 0.
/// insert_diameter_m: IC, diameter of the round insert; twice the radius of a ball or corner [m];
///     insert_diameter > 0.
/// axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth > 0.
/// round_edge_feed_for_max_chip_thickness_m_out: f_z [m].
/// Valid for: arc that holds phi = 90 deg: slot, half immersion or more, face mill over its axis;
///     f_z much smaller than IC.
/// Source: derived: inverse of round_edge_max_chip_thickness.
/// Example: max_chip_thickness=0.1 mm; insert_diameter=12 mm; axial_depth=1.5 mm => 0.151185789 mm
///     (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_round_edge_feed_for_max_chip_thickness(
    max_chip_thickness_m: f64,
    insert_diameter_m: f64,
    axial_depth_m: f64,
    round_edge_feed_for_max_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&round_edge_feed_for_max_chip_thickness::FORMULA, &[max_chip_thickness_m, insert_diameter_m, axial_depth_m], round_edge_feed_for_max_chip_thickness_m_out) }
}

/// gullet_round_edge_feed_for_max_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_round_edge_feed_for_max_chip_thickness_array(
    count: usize,
    max_chip_thickness_m: *const f64,
    insert_diameter_m: *const f64,
    axial_depth_m: *const f64,
    round_edge_feed_for_max_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&round_edge_feed_for_max_chip_thickness::FORMULA, count, [max_chip_thickness_m, insert_diameter_m, axial_depth_m], round_edge_feed_for_max_chip_thickness_m_out, status_out) }
}

/// Mean chip thickness along a round edge over the feed per tooth.
///
///     r_m = 2 a_p/(IC psi); psi = acos(1 - 2 a_p/IC)
///
/// insert_diameter_m: IC, diameter of the round insert; twice the radius of a ball or corner [m];
///     insert_diameter > 0.
/// axial_depth_m: a_p, depth of cut along the axis [m]; 0 < axial_depth <= insert_diameter/2.
/// round_edge_mean_thickness_ratio_out: r_m [-].
/// Valid for: at phi = 90 deg, f_z much smaller than IC; psi in radians.
/// Source: derived: integral of the sine along the edge.
/// Example: insert_diameter=12 mm; axial_depth=1.5 mm => 0.345908611 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_round_edge_mean_thickness_ratio(
    insert_diameter_m: f64,
    axial_depth_m: f64,
    round_edge_mean_thickness_ratio_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&round_edge_mean_thickness_ratio::FORMULA, &[insert_diameter_m, axial_depth_m], round_edge_mean_thickness_ratio_out) }
}

/// gullet_round_edge_mean_thickness_ratio over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_round_edge_mean_thickness_ratio_array(
    count: usize,
    insert_diameter_m: *const f64,
    axial_depth_m: *const f64,
    round_edge_mean_thickness_ratio_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&round_edge_mean_thickness_ratio::FORMULA, count, [insert_diameter_m, axial_depth_m], round_edge_mean_thickness_ratio_out, status_out) }
}

/// Undeformed chip thickness in turning.
///
///     h = f sin(kappa_r)
///
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// turning_chip_thickness_m_out: h [m].
/// Valid for: straight edge, depth above the part that the nose radius takes, feed below the nose
///     radius.
/// Source: derived: parallelogram of the cut; symbols of ISO 3002-3, from memory.
/// Example: feed_per_rev=0.25 mm; cutting_edge_angle=45 deg => 0.176776695297 mm (own arithmetic:
///     0.25/sqrt(2)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_chip_thickness(
    feed_per_rev_m: f64,
    cutting_edge_angle_rad: f64,
    turning_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_chip_thickness::FORMULA, &[feed_per_rev_m, cutting_edge_angle_rad], turning_chip_thickness_m_out) }
}

/// gullet_turning_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_chip_thickness_array(
    count: usize,
    feed_per_rev_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    turning_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_chip_thickness::FORMULA, count, [feed_per_rev_m, cutting_edge_angle_rad], turning_chip_thickness_m_out, status_out) }
}
