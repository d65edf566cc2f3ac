// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::force::*;

/// Force on a milling cutter along its axis, mean over a revolution; positive pulls the tool out of
///     the holder.
///
///     F_z = z a_p/(2 pi) (K_ae (phi_ex - phi_st) - K_ac f_z E); E = cos(phi_ex) - cos(phi_st)
///
/// kac_pa: K_ac, axial cutting coefficient [Pa]; kac: any finite value.
/// kae_n_per_m: K_ae, axial edge coefficient [N/m]; kae: any finite value.
/// teeth: z, effective teeth [-]; teeth >= 1.
/// axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// entry_angle_rad: phi_st, immersion at which a tooth enters [rad]; 0 deg <= entry_angle <
///     exit_angle.
/// exit_angle_rad: phi_ex, immersion at which a tooth leaves [rad]; exit_angle <= 180 deg.
/// mean_axial_force_n_out: F_z [N].
/// Valid for: force ON THE TOOL, mean over a revolution, NOT a peak: not for holding; positive pulls
///     the tool away from the spindle and lifts the work (K_ac > 0 for a right-hand helix on a
///     right-hand cutter); straight edge, cutting-edge angle 90 deg, any helix, one cut arc; angles
///     in radians.
/// Source: derived: linear edge force model integrated over the arc; the model after Altintas,
///     Manufacturing Automation, from memory.
/// Example: kac=222.0 N/mm2; kae=1.4 N/mm; teeth=4; axial_depth=5 mm; feed_per_tooth=0.1 mm;
///     entry_angle=0 deg; exit_angle=90 deg => 77.6647947 N (identity; coefficients of Al7050 after
///     Engin & Altintas 2001, memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_axial_force(
    kac_pa: f64,
    kae_n_per_m: f64,
    teeth: f64,
    axial_depth_m: f64,
    feed_per_tooth_m: f64,
    entry_angle_rad: f64,
    exit_angle_rad: f64,
    mean_axial_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_axial_force::FORMULA, &[kac_pa, kae_n_per_m, teeth, axial_depth_m, feed_per_tooth_m, entry_angle_rad, exit_angle_rad], mean_axial_force_n_out) }
}

/// gullet_mean_axial_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_axial_force_array(
    count: usize,
    kac_pa: *const f64,
    kae_n_per_m: *const f64,
    teeth: *const f64,
    axial_depth_m: *const f64,
    feed_per_tooth_m: *const f64,
    entry_angle_rad: *const f64,
    exit_angle_rad: *const f64,
    mean_axial_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_axial_force::FORMULA, count, [kac_pa, kae_n_per_m, teeth, axial_depth_m, feed_per_tooth_m, entry_angle_rad, exit_angle_rad], mean_axial_force_n_out, status_out) }
}

/// Torque of a milling cutter in a side cut or slot, mean over a revolution.
///
///     M = a_p a_e f_z z K_tc/(2 pi) + a_p z phi_s K_te D/(4 pi); phi_s = acos(1 - 2 a_e/D)
///
/// ktc_pa: K_tc, tangential cutting coefficient [Pa]; ktc: any finite value.
/// kte_n_per_m: K_te, tangential edge coefficient [N/m]; kte: any finite value.
/// teeth: z, effective teeth [-]; teeth >= 1.
/// axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// mean_milling_torque_n_m_out: M [N.m].
/// Valid for: mean over a revolution, NOT a peak; side cut or slot, up or down, any helix; linear
///     edge forces; phi_s in radians.
/// Source: derived: mean of (D/2) (K_tc h + K_te) a_p over the arc; without edge force it is k_c
///     Q/(2 pi n).
/// Example: ktc=796.1 N/mm2; kte=27.7 N/mm; teeth=4; axial_depth=5 mm; radial_depth=10 mm;
///     feed_per_tooth=0.1 mm; diameter=20 mm => 3.919065 N.m (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_milling_torque(
    ktc_pa: f64,
    kte_n_per_m: f64,
    teeth: f64,
    axial_depth_m: f64,
    radial_depth_m: f64,
    feed_per_tooth_m: f64,
    diameter_m: f64,
    mean_milling_torque_n_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_milling_torque::FORMULA, &[ktc_pa, kte_n_per_m, teeth, axial_depth_m, radial_depth_m, feed_per_tooth_m, diameter_m], mean_milling_torque_n_m_out) }
}

/// gullet_mean_milling_torque over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_milling_torque_array(
    count: usize,
    ktc_pa: *const f64,
    kte_n_per_m: *const f64,
    teeth: *const f64,
    axial_depth_m: *const f64,
    radial_depth_m: *const f64,
    feed_per_tooth_m: *const f64,
    diameter_m: *const f64,
    mean_milling_torque_n_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_milling_torque::FORMULA, count, [ktc_pa, kte_n_per_m, teeth, axial_depth_m, radial_depth_m, feed_per_tooth_m, diameter_m], mean_milling_torque_n_m_out, status_out) }
}

/// Largest number of teeth in the arc of a cut at one instant.
///
///     z_s = ceil(z phi_s/(2 pi))
///
/// teeth: z, effective teeth [-]; teeth >= 1.
/// engagement_angle_rad: phi_s, angle over which a tooth cuts [rad]; 0 deg < engagement_angle <= 360
///     deg.
/// simultaneous_teeth_out: z_s [-].
/// Valid for: straight edges, or one height along a helix; equal pitch; a quotient within 1e-9 of a
///     whole number counts as it, so the instant at which one tooth enters as another leaves is not
///     counted; phi_s in radians.
/// Source: derived: teeth a pitch apart within the arc.
/// Example: teeth=4; engagement_angle=100 deg => 2 (own arithmetic: 4 x 100/360 = 1.11).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_simultaneous_teeth(
    teeth: f64,
    engagement_angle_rad: f64,
    simultaneous_teeth_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&simultaneous_teeth::FORMULA, &[teeth, engagement_angle_rad], simultaneous_teeth_out) }
}

/// gullet_simultaneous_teeth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_simultaneous_teeth_array(
    count: usize,
    teeth: *const f64,
    engagement_angle_rad: *const f64,
    simultaneous_teeth_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&simultaneous_teeth::FORMULA, count, [teeth, engagement_angle_rad], simultaneous_teeth_out, status_out) }
}

/// Bound of the sum of the tangential forces of all teeth in a cut over the largest force of one
///     tooth.
///
///     S = k^m_c max(1, s)^(1 - m_c); s = min(k, sin(k psi/2)/(sin(psi/2) s_max)); k = ceil(z
///         phi_s/(2 pi)); psi = 2 pi/z
///
/// teeth: z, effective teeth [-]; teeth >= 1.
/// engagement_angle_rad: phi_s, angle over which a tooth cuts [rad]; 0 deg < engagement_angle <= 180
///     deg.
/// largest_sine: s_max, largest sine of the immersion in the arc [-]; 0 < largest_sine <= 1.
/// chip_exponent: m_c, exponent of the chip thickness in the specific cutting force [-]; 0 <=
///     chip_exponent < 1.
/// tooth_sum_factor_out: S [-].
/// Valid for: upper bound for straight and for helical edges, equal pitch, sharp edges (force of a
///     tooth as the power 1 - m_c of its chip thickness); at m_c = 0 it bounds the sum of the sines
///     over the largest; an edge force that does not depend on the chip is to be multiplied by k
///     instead; angles in radians.
/// Source: derived: k sines a pitch apart sum to sin(k psi/2)/sin(psi/2) times the sine of their
///     middle; powers below 1 by Jensen's inequality; a helix averages straight edges.
/// Example: teeth=4; engagement_angle=180 deg; largest_sine=1 => 1.4142135624 (identity, slot with
///     four teeth: sin 45 deg + sin 135 deg).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tooth_sum_factor(
    teeth: f64,
    engagement_angle_rad: f64,
    largest_sine: f64,
    chip_exponent: f64,
    tooth_sum_factor_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tooth_sum_factor::FORMULA, &[teeth, engagement_angle_rad, largest_sine, chip_exponent], tooth_sum_factor_out) }
}

/// gullet_tooth_sum_factor over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tooth_sum_factor_array(
    count: usize,
    teeth: *const f64,
    engagement_angle_rad: *const f64,
    largest_sine: *const f64,
    chip_exponent: *const f64,
    tooth_sum_factor_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tooth_sum_factor::FORMULA, count, [teeth, engagement_angle_rad, largest_sine, chip_exponent], tooth_sum_factor_out, status_out) }
}

/// Bound of the tangential force of helical edges over that of straight ones.
///
///     L = min(1, (w q + min((t - w psi) S, q))/(t S)); t = max(2 a_p tan(beta)/D, 10^(-9)); q =
///         min(phi_s c^(1 - m_c), psi S); w = floor(t/psi); psi = 2 pi/z
///
/// teeth: z, effective teeth [-]; teeth >= 1.
/// engagement_angle_rad: phi_s, angle over which a tooth cuts [rad]; 0 deg < engagement_angle <= 180
///     deg.
/// chip_ratio: c, mean over largest chip thickness [-]; 0 < chip_ratio <= 1.
/// chip_exponent: m_c, exponent of the chip thickness in the specific cutting force [-]; 0 <=
///     chip_exponent < 1.
/// tooth_sum_factor: S, bound for straight edges: sum over the teeth over the largest of one tooth
///     [-]; tooth_sum_factor >= 1.
/// axial_depth_m: a_p, axial depth [m]; axial_depth > 0.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// helix_angle_rad: beta, helix angle [rad]; 0 deg <= helix_angle < 90 deg.
/// helix_relief_factor_out: L [-].
/// Valid for: upper bound for equal pitch and sharp edges; t is the angle by which the edge lags
///     over the axial depth: short of it only part of each edge is in the cut at one instant; angles
///     in radians.
/// Source: derived: a helix spreads the straight-edge force over the lag t; over a whole pitch that
///     force sums to at most q, by Jensen's inequality, and over less to at most its bound S.
/// Example: teeth=2; engagement_angle=90 deg; chip_ratio=0.5; chip_exponent=0; tooth_sum_factor=1;
///     axial_depth=10 mm; diameter=10 mm; helix_angle=45 deg => 0.39269908 (own arithmetic: lag 2
///     rad, q = pi/4, so (pi/4)/2).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_relief_factor(
    teeth: f64,
    engagement_angle_rad: f64,
    chip_ratio: f64,
    chip_exponent: f64,
    tooth_sum_factor: f64,
    axial_depth_m: f64,
    diameter_m: f64,
    helix_angle_rad: f64,
    helix_relief_factor_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&helix_relief_factor::FORMULA, &[teeth, engagement_angle_rad, chip_ratio, chip_exponent, tooth_sum_factor, axial_depth_m, diameter_m, helix_angle_rad], helix_relief_factor_out) }
}

/// gullet_helix_relief_factor over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_relief_factor_array(
    count: usize,
    teeth: *const f64,
    engagement_angle_rad: *const f64,
    chip_ratio: *const f64,
    chip_exponent: *const f64,
    tooth_sum_factor: *const f64,
    axial_depth_m: *const f64,
    diameter_m: *const f64,
    helix_angle_rad: *const f64,
    helix_relief_factor_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&helix_relief_factor::FORMULA, count, [teeth, engagement_angle_rad, chip_ratio, chip_exponent, tooth_sum_factor, axial_depth_m, diameter_m, helix_angle_rad], helix_relief_factor_out, status_out) }
}

/// Upper bound of the sum of the tangential forces of a milling cutter.
///
///     F_c = k_c h_max b S L
///
/// specific_cutting_force_pa: k_c, specific cutting force at the largest chip thickness [Pa];
///     specific_cutting_force >= 0.
/// max_chip_thickness_m: h_max, largest chip thickness in the arc [m]; max_chip_thickness >= 0.
/// chip_width_m: b, undeformed chip width, along the edge [m]; chip_width >= 0.
/// tooth_sum_factor: S, sum over the teeth over the largest of one tooth [-]; tooth_sum_factor >= 1.
/// helix_relief: L, helical edges over straight ones; 1 is safe for every helix [-]; 0 <
///     helix_relief <= 1.
/// peak_tangential_force_n_out: F_c [N].
/// Valid for: S = tooth_sum_factor and L = helix_relief_factor with the same chip exponent as k_c;
///     times the peak's own factors for run-out and wear.
/// Source: derived: largest force of one tooth times the bound of the sum.
/// Example: specific_cutting_force=2000 N/mm2; max_chip_thickness=0.06 mm; chip_width=5 mm;
///     tooth_sum_factor=1.5 => 900 N (own arithmetic: 2000 x 0.06 x 5 x 1.5).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_peak_tangential_force(
    specific_cutting_force_pa: f64,
    max_chip_thickness_m: f64,
    chip_width_m: f64,
    tooth_sum_factor: f64,
    helix_relief: f64,
    peak_tangential_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&peak_tangential_force::FORMULA, &[specific_cutting_force_pa, max_chip_thickness_m, chip_width_m, tooth_sum_factor, helix_relief], peak_tangential_force_n_out) }
}

/// gullet_peak_tangential_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_peak_tangential_force_array(
    count: usize,
    specific_cutting_force_pa: *const f64,
    max_chip_thickness_m: *const f64,
    chip_width_m: *const f64,
    tooth_sum_factor: *const f64,
    helix_relief: *const f64,
    peak_tangential_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&peak_tangential_force::FORMULA, count, [specific_cutting_force_pa, max_chip_thickness_m, chip_width_m, tooth_sum_factor, helix_relief], peak_tangential_force_n_out, status_out) }
}

/// Force across the tool's axis from the tangential force and the ratio of the radial to it.
///
///     F_xy = F_c sqrt(1 + rho^2)
///
/// cutting_force_n: F_c, tangential force [N]; cutting_force >= 0.
/// radial_force_ratio: rho, radial over tangential force [-]; radial_force_ratio >= 0.
/// in_plane_force_n_out: F_xy [N].
/// Valid for: exact for one tooth; with several teeth in the cut an upper bound, since their forces
///     point apart.
/// Source: derived: right triangle; triangle inequality over the teeth.
/// Example: cutting_force=400 N; radial_force_ratio=0.75 => 500 N (identity: 3-4-5 triangle).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_in_plane_force(
    cutting_force_n: f64,
    radial_force_ratio: f64,
    in_plane_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&in_plane_force::FORMULA, &[cutting_force_n, radial_force_ratio], in_plane_force_n_out) }
}

/// gullet_in_plane_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_in_plane_force_array(
    count: usize,
    cutting_force_n: *const f64,
    radial_force_ratio: *const f64,
    in_plane_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&in_plane_force::FORMULA, count, [cutting_force_n, radial_force_ratio], in_plane_force_n_out, status_out) }
}

/// Upper estimate of the axial force that a helix turns out of the tangential force.
///
///     F_a = F_c tan(beta)
///
/// cutting_force_n: F_c, tangential force [N]; cutting_force >= 0.
/// helix_angle_rad: beta, helix angle [rad]; 0 deg <= helix_angle < 90 deg.
/// helix_axial_force_n_out: F_a [N].
/// Valid for: right-hand helix on a right-hand cutter: pulls the tool out of the holder and lifts
///     the work; frictionless upper estimate: measured ratios of axial to tangential coefficients
///     for aluminium end mills lie at 0.28 to 0.43, tan 30 deg is 0.577.
/// Source: derived: force square to a frictionless edge; ratios from published coefficients (Engin &
///     Altintas 2001, memory; review in Chinese Journal of Mechanical Engineering 2021, Table 5,
///     seen).
/// Example: cutting_force=500 N; helix_angle=45 deg => 500 N (identity: tan 45 deg = 1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_axial_force(
    cutting_force_n: f64,
    helix_angle_rad: f64,
    helix_axial_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&helix_axial_force::FORMULA, &[cutting_force_n, helix_angle_rad], helix_axial_force_n_out) }
}

/// gullet_helix_axial_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_helix_axial_force_array(
    count: usize,
    cutting_force_n: *const f64,
    helix_angle_rad: *const f64,
    helix_axial_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&helix_axial_force::FORMULA, count, [cutting_force_n, helix_angle_rad], helix_axial_force_n_out, status_out) }
}
