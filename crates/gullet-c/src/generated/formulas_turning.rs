// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::turning::*;

/// Tool cutting-edge angle of a turning tool whose lead angle is given.
///
///     kappa_r = 90 deg - psi_r
///
/// lead_angle_rad: psi_r, lead (approach) angle, from the square of the axis [rad]; 0 deg <=
///     lead_angle < 90 deg.
/// cutting_edge_angle_of_lead_angle_rad_out: kappa_r [rad].
/// Valid for: lead angle of American catalogues, also called side cutting-edge angle; the tool
///     cutting-edge angle counts from the direction of feed.
/// Source: definition; symbols of ISO 3002-1, from memory.
/// Example: lead_angle=15 deg => 75 deg (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_edge_angle_of_lead_angle(
    lead_angle_rad: f64,
    cutting_edge_angle_of_lead_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&cutting_edge_angle_of_lead_angle::FORMULA, &[lead_angle_rad], cutting_edge_angle_of_lead_angle_rad_out) }
}

/// gullet_cutting_edge_angle_of_lead_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_edge_angle_of_lead_angle_array(
    count: usize,
    lead_angle_rad: *const f64,
    cutting_edge_angle_of_lead_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&cutting_edge_angle_of_lead_angle::FORMULA, count, [lead_angle_rad], cutting_edge_angle_of_lead_angle_rad_out, status_out) }
}

/// Depth of cut between the diameters before and after a turning or boring pass.
///
///     a_p = (D_1 - D_2)/2
///
/// larger_diameter_m: D_1, larger diameter: the stock in turning, the finished bore in boring [m];
///     larger_diameter > 0.
/// smaller_diameter_m: D_2, smaller diameter: the finished one in turning, the bore before the pass
///     in boring [m]; 0 <= smaller_diameter <= larger_diameter.
/// depth_of_cut_from_diameters_m_out: a_p [m].
/// Valid for: one pass, both diameters about the axis of the spindle: the depth is on the radius,
///     half of what the diameter changes by; a tube's wall likewise.
/// Source: geometry.
/// Example: larger_diameter=4.50 in; smaller_diameter=4.25 in => 0.125 in (Groover M.P.,
///     Fundamentals of Modern Manufacturing, 4th ed., turning problem with 46 in turned to 4.25 in,
///     from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_depth_of_cut_from_diameters(
    larger_diameter_m: f64,
    smaller_diameter_m: f64,
    depth_of_cut_from_diameters_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&depth_of_cut_from_diameters::FORMULA, &[larger_diameter_m, smaller_diameter_m], depth_of_cut_from_diameters_m_out) }
}

/// gullet_depth_of_cut_from_diameters over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_depth_of_cut_from_diameters_array(
    count: usize,
    larger_diameter_m: *const f64,
    smaller_diameter_m: *const f64,
    depth_of_cut_from_diameters_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&depth_of_cut_from_diameters::FORMULA, count, [larger_diameter_m, smaller_diameter_m], depth_of_cut_from_diameters_m_out, status_out) }
}

/// Depth of cut up to which the nose of a turning tool cuts alone.
///
///     a_n = 2 r sin(kappa_r/2)^2
///
/// nose_radius_m: r, nose radius [m]; nose_radius >= 0.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// nose_depth_m_out: a_n [m].
/// Valid for: below this depth the cutting-edge angle of the straight edge means nothing: chip and
///     force follow the nose.
/// Source: circle and tangent, derived: r (1 - cos(kappa_r)).
/// Example: nose_radius=0.8 mm; cutting_edge_angle=60 deg => 0.4 mm (identity: 0.8 (1 - 1/2) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_nose_depth(
    nose_radius_m: f64,
    cutting_edge_angle_rad: f64,
    nose_depth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&nose_depth::FORMULA, &[nose_radius_m, cutting_edge_angle_rad], nose_depth_m_out) }
}

/// gullet_nose_depth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_nose_depth_array(
    count: usize,
    nose_radius_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    nose_depth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&nose_depth::FORMULA, count, [nose_radius_m, cutting_edge_angle_rad], nose_depth_m_out, status_out) }
}

/// Largest depth of cut for the length of a turning tool's edge.
///
///     a_max = k l_e sin(kappa_r)
///
/// edge_length_m: l_e, length of the straight edge [m]; edge_length > 0.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// edge_share: k, share of the edge that may cut [-]; 0 < edge_share <= 1.
/// turning_depth_cap_m_out: a_max [m].
/// Valid for: roughing; half to two thirds of the edge, less with weak corners (common practice, no
///     source).
/// Source: geometry; the share: common practice, no source.
/// Example: edge_length=12 mm; cutting_edge_angle=30 deg => 4 mm (identity: 2/3 x 12 x 1/2 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_depth_cap(
    edge_length_m: f64,
    cutting_edge_angle_rad: f64,
    edge_share: f64,
    turning_depth_cap_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_depth_cap::FORMULA, &[edge_length_m, cutting_edge_angle_rad, edge_share], turning_depth_cap_m_out) }
}

/// gullet_turning_depth_cap over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_depth_cap_array(
    count: usize,
    edge_length_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    edge_share: *const f64,
    turning_depth_cap_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_depth_cap::FORMULA, count, [edge_length_m, cutting_edge_angle_rad, edge_share], turning_depth_cap_m_out, status_out) }
}

/// Length of edge in the cut of a turning tool with a nose radius.
///
///     l = r (theta + asin(min(f/(2 r), 1))) + max(a_p - 2 r sin(kappa_r/2)^2, 0 mm)/sin(kappa_r);
///         theta = min(kappa_r, acos(1 - min(a_p/r, 1)))
///
/// depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut >= 0.
/// feed_per_rev_m: f, feed per revolution [m]; 0 <= feed_per_rev <= 2*nose_radius.
/// nose_radius_m: r, nose radius [m]; nose_radius > 0.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// turning_edge_length_m_out: l [m].
/// Valid for: cylindrical cut; the straight edge where the depth reaches it, the nose, and the part
///     of the nose that cuts the feed mark; below nose_depth the nose alone.
/// Source: arcs and tangent, derived.
/// Example: depth_of_cut=2 mm; feed_per_rev=0.8 mm; nose_radius=0.8 mm; cutting_edge_angle=90 deg =>
///     2.87551608 mm (own arithmetic: 0.8 (pi/2 + pi/6) + 1.2 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_edge_length(
    depth_of_cut_m: f64,
    feed_per_rev_m: f64,
    nose_radius_m: f64,
    cutting_edge_angle_rad: f64,
    turning_edge_length_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_edge_length::FORMULA, &[depth_of_cut_m, feed_per_rev_m, nose_radius_m, cutting_edge_angle_rad], turning_edge_length_m_out) }
}

/// gullet_turning_edge_length over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_edge_length_array(
    count: usize,
    depth_of_cut_m: *const f64,
    feed_per_rev_m: *const f64,
    nose_radius_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    turning_edge_length_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_edge_length::FORMULA, count, [depth_of_cut_m, feed_per_rev_m, nose_radius_m, cutting_edge_angle_rad], turning_edge_length_m_out, status_out) }
}

/// Mean undeformed chip thickness over the edge in the cut in turning.
///
///     h_m = a_p f/l
///
/// depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut >= 0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// edge_length_m: l, length of edge in the cut [m]; edge_length > 0.
/// turning_mean_chip_thickness_m_out: h_m [m].
/// Valid for: section of the chip spread over the edge, so that k_c h_m l keeps the section; with
///     edge_length as turning_edge_length.
/// Source: derived: equal section.
/// Example: depth_of_cut=2 mm; feed_per_rev=0.2 mm; edge_length=2.5 mm => 0.16 mm (identity: 0.4/2.5
///     mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_mean_chip_thickness(
    depth_of_cut_m: f64,
    feed_per_rev_m: f64,
    edge_length_m: f64,
    turning_mean_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_mean_chip_thickness::FORMULA, &[depth_of_cut_m, feed_per_rev_m, edge_length_m], turning_mean_chip_thickness_m_out) }
}

/// gullet_turning_mean_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_mean_chip_thickness_array(
    count: usize,
    depth_of_cut_m: *const f64,
    feed_per_rev_m: *const f64,
    edge_length_m: *const f64,
    turning_mean_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_mean_chip_thickness::FORMULA, count, [depth_of_cut_m, feed_per_rev_m, edge_length_m], turning_mean_chip_thickness_m_out, status_out) }
}

/// Cutting-edge angle of the chord between the ends of the edge in the cut of a tool with a nose
///     radius.
///
///     kappa_c = atan(a_p/(x + f/2)); x = r sin(theta) + max(a_p - 2 r sin(kappa_r/2)^2, 0
///         mm)/tan(kappa_r); theta = min(kappa_r, acos(1 - min(a_p/r, 1)))
///
/// depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut > 0.
/// feed_per_rev_m: f, feed per revolution [m]; 0 <= feed_per_rev <= 2*nose_radius.
/// nose_radius_m: r, nose radius [m]; nose_radius > 0.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// turning_chord_angle_rad_out: kappa_c [rad].
/// Valid for: the chip is taken to leave square to the chord, so the thrust in the plane of the cut
///     acts along it too; no rake, no inclination.
/// Source: L.V. Colwell, Predicting the angle of chip flow for single-point cutting tools, Trans.
///     ASME 76, 1954, from memory; geometry derived.
/// Example: depth_of_cut=1 mm; feed_per_rev=0.4 mm; nose_radius=0.8 mm; cutting_edge_angle=90 deg =>
///     45 deg (own arithmetic: the edge reaches 0.8 mm ahead of the lowest point of the nose and 0.2
///     mm behind it, 1 mm for a depth of 1 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_chord_angle(
    depth_of_cut_m: f64,
    feed_per_rev_m: f64,
    nose_radius_m: f64,
    cutting_edge_angle_rad: f64,
    turning_chord_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_chord_angle::FORMULA, &[depth_of_cut_m, feed_per_rev_m, nose_radius_m, cutting_edge_angle_rad], turning_chord_angle_rad_out) }
}

/// gullet_turning_chord_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_chord_angle_array(
    count: usize,
    depth_of_cut_m: *const f64,
    feed_per_rev_m: *const f64,
    nose_radius_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    turning_chord_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_chord_angle::FORMULA, count, [depth_of_cut_m, feed_per_rev_m, nose_radius_m, cutting_edge_angle_rad], turning_chord_angle_rad_out, status_out) }
}

/// Feed force of a turning tool, as a rough share of the cutting force.
///
///     F_f = s F_c sin(kappa)
///
/// cutting_force_n: F_c, cutting force [N]; cutting_force >= 0.
/// cutting_edge_angle_rad: kappa, cutting-edge angle; with a nose radius that of the chord [rad]; 0
///     deg < cutting_edge_angle <= 90 deg.
/// thrust_share: s, thrust in the plane of the cut over the cutting force [-]; thrust_share >= 0.
/// turning_feed_force_n_out: F_f [N].
/// Valid for: rough, within 40 % either way: the share rises with wear, thin chips and negative
///     rake, and is below 0.4 with sharp positive edges.
/// Source: resolution of the thrust, derived; a share of 0.6 from feed force 0.5 to 0.6 and radial
///     force 0.25 to 0.3 of the cutting force, supplier's article on boring, seen.
/// Example: cutting_force=1000 N; cutting_edge_angle=30 deg; thrust_share=0.6 => 300 N (identity:
///     600 x 1/2 N).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_feed_force(
    cutting_force_n: f64,
    cutting_edge_angle_rad: f64,
    thrust_share: f64,
    turning_feed_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_feed_force::FORMULA, &[cutting_force_n, cutting_edge_angle_rad, thrust_share], turning_feed_force_n_out) }
}

/// gullet_turning_feed_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_feed_force_array(
    count: usize,
    cutting_force_n: *const f64,
    cutting_edge_angle_rad: *const f64,
    thrust_share: *const f64,
    turning_feed_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_feed_force::FORMULA, count, [cutting_force_n, cutting_edge_angle_rad, thrust_share], turning_feed_force_n_out, status_out) }
}

/// Passive (radial) force of a turning tool, as a rough share of the cutting force.
///
///     F_p = s F_c cos(kappa)
///
/// cutting_force_n: F_c, cutting force [N]; cutting_force >= 0.
/// cutting_edge_angle_rad: kappa, cutting-edge angle; with a nose radius that of the chord [rad]; 0
///     deg < cutting_edge_angle <= 90 deg.
/// thrust_share: s, thrust in the plane of the cut over the cutting force [-]; thrust_share >= 0.
/// turning_passive_force_n_out: F_p [N].
/// Valid for: rough, within 40 % either way; the force that bends a slender shaft or a boring bar
///     out of size: least at 90 deg, and never none with a nose radius, so take the angle of the
///     chord.
/// Source: resolution of the thrust, derived; a share of 0.6 from feed force 0.5 to 0.6 and radial
///     force 0.25 to 0.3 of the cutting force, supplier's article on boring, seen.
/// Example: cutting_force=1000 N; cutting_edge_angle=60 deg; thrust_share=0.6 => 300 N (identity:
///     600 x 1/2 N).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_passive_force(
    cutting_force_n: f64,
    cutting_edge_angle_rad: f64,
    thrust_share: f64,
    turning_passive_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_passive_force::FORMULA, &[cutting_force_n, cutting_edge_angle_rad, thrust_share], turning_passive_force_n_out) }
}

/// gullet_turning_passive_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_passive_force_array(
    count: usize,
    cutting_force_n: *const f64,
    cutting_edge_angle_rad: *const f64,
    thrust_share: *const f64,
    turning_passive_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_passive_force::FORMULA, count, [cutting_force_n, cutting_edge_angle_rad, thrust_share], turning_passive_force_n_out, status_out) }
}

/// Torque of a cutting force at the work of a lathe.
///
///     M_c = F_c D/2
///
/// cutting_force_n: F_c, cutting force [N]; cutting_force >= 0.
/// diameter_m: D, diameter that is cut [m]; diameter >= 0.
/// turning_torque_n_m_out: M_c [N.m].
/// Valid for: one tool; the same torque at any spindle speed, so lowering the speed frees no torque.
/// Source: force times lever.
/// Example: cutting_force=2000 N; diameter=50 mm => 50 N.m (identity: 2000 x 0.025 N m).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_torque(
    cutting_force_n: f64,
    diameter_m: f64,
    turning_torque_n_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_torque::FORMULA, &[cutting_force_n, diameter_m], turning_torque_n_m_out) }
}

/// gullet_turning_torque over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_torque_array(
    count: usize,
    cutting_force_n: *const f64,
    diameter_m: *const f64,
    turning_torque_n_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_torque::FORMULA, count, [cutting_force_n, diameter_m], turning_torque_n_m_out, status_out) }
}

/// Error of the diameter that a radial deflection of tool or work leaves.
///
///     e_D = 2 delta
///
/// radial_deflection_m: delta, deflection along the radius, tool and work together; its sign is kept
///     [m]; radial_deflection: any finite value.
/// diameter_error_of_radial_deflection_m_out: e_D [m].
/// Valid for: pushed apart, a shaft is left larger and a bore smaller; a spring pass takes part of
///     it away.
/// Source: geometry.
/// Example: radial_deflection=0.015 mm => 0.03 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_diameter_error_of_radial_deflection(
    radial_deflection_m: f64,
    diameter_error_of_radial_deflection_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&diameter_error_of_radial_deflection::FORMULA, &[radial_deflection_m], diameter_error_of_radial_deflection_m_out) }
}

/// gullet_diameter_error_of_radial_deflection over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_diameter_error_of_radial_deflection_array(
    count: usize,
    radial_deflection_m: *const f64,
    diameter_error_of_radial_deflection_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&diameter_error_of_radial_deflection::FORMULA, count, [radial_deflection_m], diameter_error_of_radial_deflection_m_out, status_out) }
}
