// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::force::*;

/// Specific cutting force at a chip thickness (Kienzle).
///
///     k_c = k_c11 (h/1 mm)^(-m_c) (1 - s (gamma - gamma_0)/1 deg) K
///
/// kc11_pa: k_c11, specific cutting force at a chip 1 mm thick and 1 mm wide [Pa]; kc11 > 0.
/// chip_exponent: m_c, exponent of the chip thickness [-]; 0 <= chip_exponent < 1.
/// chip_thickness_m: h, undeformed chip thickness [m]; chip_thickness > 0.
/// rake_angle_rad: gamma, rake angle of the tool [rad]; rake_angle: any finite value.
/// reference_rake_rad: gamma_0, rake angle that the table's k_c1.1 belongs to [rad]; reference_rake:
///     any finite value.
/// rake_sensitivity: s, relative change per degree of rake [-]; rake_sensitivity >= 0.
/// correction: K, factor for wear, speed and tool material [-]; correction > 0.
/// rake_sensitivity*(rake_angle - reference_rake)/(1 deg) < 1.
/// specific_cutting_force_pa_out: k_c [Pa].
/// Valid for: chip thickness of about 0.05 to 1.5 mm, thicker than the edge radius (below it
///     ploughing lifts k_c above the law); k_c1.1 and m_c as a pair from one source, good to 20 % at
///     best; s = 0.01 per degree in one school, 0.015 in another; the reference rake belongs to the
///     table.
/// Source: Kienzle's law in the form of German handbooks, from memory.
/// Example: kc11=1800 N/mm2; chip_exponent=0.25; chip_thickness=0.08 mm; rake_angle=6 deg;
///     reference_rake=0 deg => 3181.47022 N/mm2 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_specific_cutting_force(
    kc11_pa: f64,
    chip_exponent: f64,
    chip_thickness_m: f64,
    rake_angle_rad: f64,
    reference_rake_rad: f64,
    rake_sensitivity: f64,
    correction: f64,
    specific_cutting_force_pa_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&specific_cutting_force::FORMULA, &[kc11_pa, chip_exponent, chip_thickness_m, rake_angle_rad, reference_rake_rad, rake_sensitivity, correction], specific_cutting_force_pa_out) }
}

/// gullet_specific_cutting_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_specific_cutting_force_array(
    count: usize,
    kc11_pa: *const f64,
    chip_exponent: *const f64,
    chip_thickness_m: *const f64,
    rake_angle_rad: *const f64,
    reference_rake_rad: *const f64,
    rake_sensitivity: *const f64,
    correction: *const f64,
    specific_cutting_force_pa_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&specific_cutting_force::FORMULA, count, [kc11_pa, chip_exponent, chip_thickness_m, rake_angle_rad, reference_rake_rad, rake_sensitivity, correction], specific_cutting_force_pa_out, status_out) }
}

/// Cutting force of a chip section.
///
///     F_c = k_c h b
///
/// specific_cutting_force_pa: k_c, specific cutting force at this chip thickness [Pa];
///     specific_cutting_force >= 0.
/// chip_thickness_m: h, undeformed chip thickness [m]; chip_thickness >= 0.
/// chip_width_m: b, undeformed chip width [m]; chip_width >= 0.
/// chip_section_force_n_out: F_c [N].
/// Valid for: one edge in the cut, sharp; k_c at the same chip thickness.
/// Source: definition of the specific cutting force; symbols of ISO 3002-4, from memory.
/// Example: specific_cutting_force=1.7 hp.min/in3; chip_thickness=0.003 in; chip_width=0.060 in =>
///     121 lbf (clamp maker's technical handbook, boring example, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chip_section_force(
    specific_cutting_force_pa: f64,
    chip_thickness_m: f64,
    chip_width_m: f64,
    chip_section_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&chip_section_force::FORMULA, &[specific_cutting_force_pa, chip_thickness_m, chip_width_m], chip_section_force_n_out) }
}

/// gullet_chip_section_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chip_section_force_array(
    count: usize,
    specific_cutting_force_pa: *const f64,
    chip_thickness_m: *const f64,
    chip_width_m: *const f64,
    chip_section_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&chip_section_force::FORMULA, count, [specific_cutting_force_pa, chip_thickness_m, chip_width_m], chip_section_force_n_out, status_out) }
}

/// Tangential force that a power at the cutter amounts to.
///
///     F_c = P_c/v_c
///
/// cutting_power_w: P_c, power at the cutter [W]; cutting_power >= 0.
/// cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
/// tangential_force_n_out: F_c [N].
/// Valid for: mean over a revolution where the cut is interrupted: never for tool strength or
///     holding.
/// Source: definition of power.
/// Example: cutting_power=21.7784052465875 kW; cutting_speed=100 m/min => 13067.043148 N (own
///     arithmetic on the inputs of a metal-cutting textbook companion, Ex. 2.4).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tangential_force(
    cutting_power_w: f64,
    cutting_speed_m_per_s: f64,
    tangential_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tangential_force::FORMULA, &[cutting_power_w, cutting_speed_m_per_s], tangential_force_n_out) }
}

/// gullet_tangential_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tangential_force_array(
    count: usize,
    cutting_power_w: *const f64,
    cutting_speed_m_per_s: *const f64,
    tangential_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tangential_force::FORMULA, count, [cutting_power_w, cutting_speed_m_per_s], tangential_force_n_out, status_out) }
}

/// Specific cutting force from a measured force in turning.
///
///     k_c = F_c/(f a_p)
///
/// cutting_force_n: F_c, measured cutting force [N]; cutting_force >= 0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
/// depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut > 0.
/// specific_energy_from_force_pa_out: k_c [Pa].
/// Valid for: the section f a_p equals b h whatever the cutting-edge angle; belongs to the chip
///     thickness of the test.
/// Source: definition of the specific cutting force.
/// Example: cutting_force=1600 N; feed_per_rev=0.2 mm; depth_of_cut=2 mm => 4000 N/mm2 (Sharma P.C.,
///     A Textbook of Production Engineering, 11th ed., Exa 14.10 p.571, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_specific_energy_from_force(
    cutting_force_n: f64,
    feed_per_rev_m: f64,
    depth_of_cut_m: f64,
    specific_energy_from_force_pa_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&specific_energy_from_force::FORMULA, &[cutting_force_n, feed_per_rev_m, depth_of_cut_m], specific_energy_from_force_pa_out) }
}

/// gullet_specific_energy_from_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_specific_energy_from_force_array(
    count: usize,
    cutting_force_n: *const f64,
    feed_per_rev_m: *const f64,
    depth_of_cut_m: *const f64,
    specific_energy_from_force_pa_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&specific_energy_from_force::FORMULA, count, [cutting_force_n, feed_per_rev_m, depth_of_cut_m], specific_energy_from_force_pa_out, status_out) }
}

/// Specific cutting force at a chip 1 mm thick from that at another chip thickness.
///
///     k_c11 = k_c (h/1 mm)^m_c
///
/// specific_cutting_force_pa: k_c, specific cutting force at the chip thickness [Pa];
///     specific_cutting_force > 0.
/// chip_exponent: m_c, exponent of the chip thickness [-]; 0 <= chip_exponent < 1.
/// chip_thickness_m: h, undeformed chip thickness [m]; chip_thickness > 0.
/// kc11_from_specific_force_pa_out: k_c11 [Pa].
/// Valid for: m_c of the same tests as k_c: the two are one pair.
/// Source: derived from k_c = k_c11 (h/1 mm)^(-m_c).
/// Example: specific_cutting_force=3600 N/mm2; chip_exponent=0.5; chip_thickness=0.25 mm => 1800
///     N/mm2 (identity: 3600 x 0.25^0.5).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_kc11_from_specific_force(
    specific_cutting_force_pa: f64,
    chip_exponent: f64,
    chip_thickness_m: f64,
    kc11_from_specific_force_pa_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&kc11_from_specific_force::FORMULA, &[specific_cutting_force_pa, chip_exponent, chip_thickness_m], kc11_from_specific_force_pa_out) }
}

/// gullet_kc11_from_specific_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_kc11_from_specific_force_array(
    count: usize,
    specific_cutting_force_pa: *const f64,
    chip_exponent: *const f64,
    chip_thickness_m: *const f64,
    kc11_from_specific_force_pa_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&kc11_from_specific_force::FORMULA, count, [specific_cutting_force_pa, chip_exponent, chip_thickness_m], kc11_from_specific_force_pa_out, status_out) }
}

/// Torque of a two-lip drill in solid metal.
///
///     M_c = k_c f D^2/8
///
/// diameter_m: D, drill diameter [m]; diameter >= 0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// specific_cutting_force_pa: k_c, specific cutting force at the chip thickness of a lip [Pa];
///     specific_cutting_force >= 0.
/// drilling_torque_n_m_out: M_c [N.m].
/// Valid for: solid drilling with two lips, each force k_c D f/4 at the radius D/4; k_c at h = (f/2)
///     sin(sigma/2), about 1.2 times for high-speed steel and chip friction (from memory); margins
///     not counted.
/// Source: derived: two lip forces times their lever.
/// Example: diameter=12.7 mm; feed_per_rev=0.254 mm; specific_cutting_force=1961.33 N/mm2 => 10.044
///     N.m (Sharma P.C., A Textbook of Production Engineering, 11th ed., Exa 15.4 p.616, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drilling_torque(
    diameter_m: f64,
    feed_per_rev_m: f64,
    specific_cutting_force_pa: f64,
    drilling_torque_n_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&drilling_torque::FORMULA, &[diameter_m, feed_per_rev_m, specific_cutting_force_pa], drilling_torque_n_m_out) }
}

/// gullet_drilling_torque over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drilling_torque_array(
    count: usize,
    diameter_m: *const f64,
    feed_per_rev_m: *const f64,
    specific_cutting_force_pa: *const f64,
    drilling_torque_n_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&drilling_torque::FORMULA, count, [diameter_m, feed_per_rev_m, specific_cutting_force_pa], drilling_torque_n_m_out, status_out) }
}

/// Thrust of a two-lip drill in solid metal.
///
///     F_f = K k_c (D/2) f sin(sigma/2)
///
/// specific_cutting_force_pa: k_c, specific cutting force at the chip thickness of a lip [Pa];
///     specific_cutting_force >= 0.
/// diameter_m: D, drill diameter [m]; diameter >= 0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// point_angle_rad: sigma, point angle [rad]; 0 deg < point_angle <= 180 deg.
/// factor: K, about 1 for a standard chisel edge, 0.5 for a thinned point [-]; factor > 0.
/// drilling_thrust_n_out: F_f [N].
/// Valid for: rough, within 40 % either way: the chisel edge takes a third of the thrust and depends
///     on the grind.
/// Source: form of German handbooks, from memory; factor 1 derived from a handbook's example, 0.5
///     common practice, no source.
/// Example: specific_cutting_force=2000 N/mm2; diameter=10 mm; feed_per_rev=0.2 mm; point_angle=60
///     deg; factor=0.5 => 500 N (own arithmetic: 0.5 x 2000 x 5 x 0.2 x 0.5).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drilling_thrust(
    specific_cutting_force_pa: f64,
    diameter_m: f64,
    feed_per_rev_m: f64,
    point_angle_rad: f64,
    factor: f64,
    drilling_thrust_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&drilling_thrust::FORMULA, &[specific_cutting_force_pa, diameter_m, feed_per_rev_m, point_angle_rad, factor], drilling_thrust_n_out) }
}

/// gullet_drilling_thrust over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drilling_thrust_array(
    count: usize,
    specific_cutting_force_pa: *const f64,
    diameter_m: *const f64,
    feed_per_rev_m: *const f64,
    point_angle_rad: *const f64,
    factor: *const f64,
    drilling_thrust_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&drilling_thrust::FORMULA, count, [specific_cutting_force_pa, diameter_m, feed_per_rev_m, point_angle_rad, factor], drilling_thrust_n_out, status_out) }
}

/// Force on a milling cutter along the feed, mean over a revolution.
///
///     F_x = z a_p f_z/(8 pi) (K_tc A - K_rc B) + z a_p/(2 pi) (K_re E - K_te S); A = cos(2 phi_ex)
///         - cos(2 phi_st); B = 2 (phi_ex - phi_st) - (sin(2 phi_ex) - sin(2 phi_st)); E =
///         cos(phi_ex) - cos(phi_st); S = sin(phi_ex) - sin(phi_st)
///
/// ktc_pa: K_tc, tangential cutting coefficient [Pa]; ktc: any finite value.
/// krc_pa: K_rc, radial cutting coefficient [Pa]; krc: any finite value.
/// kte_n_per_m: K_te, tangential edge coefficient [N/m]; kte: any finite value.
/// kre_n_per_m: K_re, radial edge coefficient [N/m]; kre: any finite value.
/// teeth: z, effective teeth [-]; teeth >= 1.
/// axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// entry_angle_rad: phi_st, immersion at which a tooth enters [rad]; 0 deg <= entry_angle <
///     exit_angle.
/// exit_angle_rad: phi_ex, immersion at which a tooth leaves [rad]; exit_angle <= 180 deg.
/// mean_feed_force_n_out: F_x [N].
/// Valid for: force ON THE TOOL (the work feels the opposite), mean over a revolution, NOT a peak:
///     not for tool strength or the vise; x along the motion of the tool relative to the work, y to
///     the left of x seen from the spindle, cutter turning clockwise seen from the spindle, phi from
///     +y in the sense of rotation; straight edge, cutting-edge angle 90 deg, any helix, one cut
///     arc; angles in radians.
/// Source: derived: linear edge force model integrated over the arc; the model after Altintas,
///     Manufacturing Automation, from memory.
/// Example: ktc=796.1 N/mm2; krc=168.8 N/mm2; kte=27.7 N/mm; kre=30.8 N/mm; teeth=4; axial_depth=5
///     mm; feed_per_tooth=0.1 mm; entry_angle=0 deg; exit_angle=90 deg => -355.114534 N (identity;
///     coefficients of Al7050 after Engin & Altintas 2001, memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_feed_force(
    ktc_pa: f64,
    krc_pa: f64,
    kte_n_per_m: f64,
    kre_n_per_m: f64,
    teeth: f64,
    axial_depth_m: f64,
    feed_per_tooth_m: f64,
    entry_angle_rad: f64,
    exit_angle_rad: f64,
    mean_feed_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_feed_force::FORMULA, &[ktc_pa, krc_pa, kte_n_per_m, kre_n_per_m, teeth, axial_depth_m, feed_per_tooth_m, entry_angle_rad, exit_angle_rad], mean_feed_force_n_out) }
}

/// gullet_mean_feed_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_feed_force_array(
    count: usize,
    ktc_pa: *const f64,
    krc_pa: *const f64,
    kte_n_per_m: *const f64,
    kre_n_per_m: *const f64,
    teeth: *const f64,
    axial_depth_m: *const f64,
    feed_per_tooth_m: *const f64,
    entry_angle_rad: *const f64,
    exit_angle_rad: *const f64,
    mean_feed_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_feed_force::FORMULA, count, [ktc_pa, krc_pa, kte_n_per_m, kre_n_per_m, teeth, axial_depth_m, feed_per_tooth_m, entry_angle_rad, exit_angle_rad], mean_feed_force_n_out, status_out) }
}

/// Force on a milling cutter square to the feed, mean over a revolution.
///
///     F_y = z a_p f_z/(8 pi) (K_tc B + K_rc A) - z a_p/(2 pi) (K_te E + K_re S); A = cos(2 phi_ex)
///         - cos(2 phi_st); B = 2 (phi_ex - phi_st) - (sin(2 phi_ex) - sin(2 phi_st)); E =
///         cos(phi_ex) - cos(phi_st); S = sin(phi_ex) - sin(phi_st)
///
/// ktc_pa: K_tc, tangential cutting coefficient [Pa]; ktc: any finite value.
/// krc_pa: K_rc, radial cutting coefficient [Pa]; krc: any finite value.
/// kte_n_per_m: K_te, tangential edge coefficient [N/m]; kte: any finite value.
/// kre_n_per_m: K_re, radial edge coefficient [N/m]; kre: any finite value.
/// teeth: z, effective teeth [-]; teeth >= 1.
/// axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// entry_angle_rad: phi_st, immersion at which a tooth enters [rad]; 0 deg <= entry_angle <
///     exit_angle.
/// exit_angle_rad: phi_ex, immersion at which a tooth leaves [rad]; exit_angle <= 180 deg.
/// mean_normal_force_n_out: F_y [N].
/// Valid for: force ON THE TOOL (the work feels the opposite), mean over a revolution, NOT a peak:
///     not for tool strength or the vise; x along the motion of the tool relative to the work, y to
///     the left of x seen from the spindle, cutter turning clockwise seen from the spindle, phi from
///     +y in the sense of rotation; straight edge, cutting-edge angle 90 deg, any helix, one cut
///     arc; angles in radians.
/// Source: derived: linear edge force model integrated over the arc; the model after Altintas,
///     Manufacturing Automation, from memory.
/// Example: ktc=796.1 N/mm2; krc=168.8 N/mm2; kte=27.7 N/mm; kre=30.8 N/mm; teeth=4; axial_depth=5
///     mm; feed_per_tooth=0.1 mm; entry_angle=0 deg; exit_angle=90 deg => 162.292039 N (identity;
///     coefficients of Al7050 after Engin & Altintas 2001, memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_normal_force(
    ktc_pa: f64,
    krc_pa: f64,
    kte_n_per_m: f64,
    kre_n_per_m: f64,
    teeth: f64,
    axial_depth_m: f64,
    feed_per_tooth_m: f64,
    entry_angle_rad: f64,
    exit_angle_rad: f64,
    mean_normal_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_normal_force::FORMULA, &[ktc_pa, krc_pa, kte_n_per_m, kre_n_per_m, teeth, axial_depth_m, feed_per_tooth_m, entry_angle_rad, exit_angle_rad], mean_normal_force_n_out) }
}

/// gullet_mean_normal_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_normal_force_array(
    count: usize,
    ktc_pa: *const f64,
    krc_pa: *const f64,
    kte_n_per_m: *const f64,
    kre_n_per_m: *const f64,
    teeth: *const f64,
    axial_depth_m: *const f64,
    feed_per_tooth_m: *const f64,
    entry_angle_rad: *const f64,
    exit_angle_rad: *const f64,
    mean_normal_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_normal_force::FORMULA, count, [ktc_pa, krc_pa, kte_n_per_m, kre_n_per_m, teeth, axial_depth_m, feed_per_tooth_m, entry_angle_rad, exit_angle_rad], mean_normal_force_n_out, status_out) }
}
