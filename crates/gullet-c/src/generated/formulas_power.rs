// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::power::*;

/// Power at the cutter for a removal rate.
///
///     P_c = k_c Q
///
/// removal_rate_m3_per_s: Q, removal rate [m3/s]; removal_rate >= 0.
/// specific_cutting_force_pa: k_c, specific cutting force at the mean chip thickness, or unit power
///     [Pa]; specific_cutting_force >= 0.
/// cutting_power_w_out: P_c [W].
/// Valid for: mean over a revolution; k_c at the mean chip thickness reads a few percent above the
///     exact mean over the arc; two sources of k_c or unit power agree within about 30 %.
/// Source: definition of the specific cutting force as energy per volume.
/// Example: removal_rate=150000 mm3/min; specific_cutting_force=3 J/mm3 => 7.5 kW (Kalpakjian &
///     Schmid, Manufacturing Engineering & Technology, Ex. 24.1 p.664 (open textbook-companion
///     file), seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_power(
    removal_rate_m3_per_s: f64,
    specific_cutting_force_pa: f64,
    cutting_power_w_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&cutting_power::FORMULA, &[removal_rate_m3_per_s, specific_cutting_force_pa], cutting_power_w_out) }
}

/// gullet_cutting_power over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_power_array(
    count: usize,
    removal_rate_m3_per_s: *const f64,
    specific_cutting_force_pa: *const f64,
    cutting_power_w_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&cutting_power::FORMULA, count, [removal_rate_m3_per_s, specific_cutting_force_pa], cutting_power_w_out, status_out) }
}

/// Power at the cutter from its tangential force.
///
///     P_c = F_c v_c
///
/// cutting_force_n: F_c, tangential force [N]; cutting_force >= 0.
/// cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed >= 0.
/// power_from_force_w_out: P_c [W].
/// Valid for: any process; the mean power where the force is the mean over a revolution.
/// Source: definition of power.
/// Example: cutting_force=1557 N; cutting_speed=100 m/min => 2595 W (Groover M.P., Fundamentals of
///     Modern Manufacturing, 3rd ed., power example, memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_power_from_force(
    cutting_force_n: f64,
    cutting_speed_m_per_s: f64,
    power_from_force_w_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&power_from_force::FORMULA, &[cutting_force_n, cutting_speed_m_per_s], power_from_force_w_out) }
}

/// gullet_power_from_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_power_from_force_array(
    count: usize,
    cutting_force_n: *const f64,
    cutting_speed_m_per_s: *const f64,
    power_from_force_w_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&power_from_force::FORMULA, count, [cutting_force_n, cutting_speed_m_per_s], power_from_force_w_out, status_out) }
}

/// Power at the cutter of a side cut or slot, mean over a revolution, with the specific cutting
///     force followed along the arc.
///
///     P_c = z n (D/2) (a_p/sin(kappa_r)) k_c11 (1 mm) (h/1 mm)^(1 - m) I; h = f_z sin(kappa_r); I =
///         integral of sin(phi)^(1 - m) dphi from 0 to acos(1 - 2 a_e/D)
///
/// kc11_pa: k_c11, specific cutting force at a chip 1 mm thick and 1 mm wide [Pa]; kc11 > 0.
/// chip_exponent: m, exponent of the chip thickness [-]; 0 <= chip_exponent < 1.
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
/// teeth: z, effective teeth [-]; teeth >= 1.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// arc_mean_cutting_power_w_out: P_c [W].
/// Valid for: side cut or slot, up or down, circular tooth path, equal pitch, sharp edge, chip
///     thickness within the range of k_c1.1; n in revolutions per second; the integral to 1e-12
///     relative.
/// Source: derived: Kienzle's law integrated over the arc, the integral as 2^(1 - m) B(a_e/D; 1 -
///     m/2, 1 - m/2).
/// Example: kc11=1800 N/mm2; chip_exponent=0.25; feed_per_tooth=0.1 mm; diameter=20 mm;
///     radial_depth=5 mm; axial_depth=3 mm; teeth=4; spindle_speed=800 rpm; cutting_edge_angle=90
///     deg => 297.374353 W (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_arc_mean_cutting_power(
    kc11_pa: f64,
    chip_exponent: f64,
    feed_per_tooth_m: f64,
    diameter_m: f64,
    radial_depth_m: f64,
    axial_depth_m: f64,
    teeth: f64,
    spindle_speed_rev_per_s: f64,
    cutting_edge_angle_rad: f64,
    arc_mean_cutting_power_w_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&arc_mean_cutting_power::FORMULA, &[kc11_pa, chip_exponent, feed_per_tooth_m, diameter_m, radial_depth_m, axial_depth_m, teeth, spindle_speed_rev_per_s, cutting_edge_angle_rad], arc_mean_cutting_power_w_out) }
}

/// gullet_arc_mean_cutting_power over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_arc_mean_cutting_power_array(
    count: usize,
    kc11_pa: *const f64,
    chip_exponent: *const f64,
    feed_per_tooth_m: *const f64,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    axial_depth_m: *const f64,
    teeth: *const f64,
    spindle_speed_rev_per_s: *const f64,
    cutting_edge_angle_rad: *const f64,
    arc_mean_cutting_power_w_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&arc_mean_cutting_power::FORMULA, count, [kc11_pa, chip_exponent, feed_per_tooth_m, diameter_m, radial_depth_m, axial_depth_m, teeth, spindle_speed_rev_per_s, cutting_edge_angle_rad], arc_mean_cutting_power_w_out, status_out) }
}

/// Unit power carried from the chip thickness of its table to that of a cut.
///
///     u_h = u (h/h_0)^(-x)
///
/// unit_power_pa: u, unit power of the table [Pa]; unit_power >= 0.
/// table_chip_thickness_m: h_0, chip thickness the table's value belongs to [m];
///     table_chip_thickness > 0.
/// chip_thickness_m: h, chip thickness of the cut [m]; chip_thickness > 0.
/// exponent: x, exponent of the chip thickness [-]; 0 <= exponent < 1.
/// unit_power_at_chip_pa_out: u_h [Pa].
/// Valid for: chips of about 0.025 to 1.3 mm; the exponent is one value for all materials, so expect
///     +-30 %.
/// Source: exponent 0.2: fit to the feed factors of Oberg E. et al., Machinery's Handbook, 31st ed.
///     (their table follows the power -0.193), table seen.
/// Example: unit_power=2 J/mm3; table_chip_thickness=0.32 mm; chip_thickness=0.01 mm => 4 J/mm3 (own
///     arithmetic: 32^0.2 = 2).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_unit_power_at_chip(
    unit_power_pa: f64,
    table_chip_thickness_m: f64,
    chip_thickness_m: f64,
    exponent: f64,
    unit_power_at_chip_pa_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&unit_power_at_chip::FORMULA, &[unit_power_pa, table_chip_thickness_m, chip_thickness_m, exponent], unit_power_at_chip_pa_out) }
}

/// gullet_unit_power_at_chip over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_unit_power_at_chip_array(
    count: usize,
    unit_power_pa: *const f64,
    table_chip_thickness_m: *const f64,
    chip_thickness_m: *const f64,
    exponent: *const f64,
    unit_power_at_chip_pa_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&unit_power_at_chip::FORMULA, count, [unit_power_pa, table_chip_thickness_m, chip_thickness_m, exponent], unit_power_at_chip_pa_out, status_out) }
}

/// Power of the motor for a power at the cutter.
///
///     P_m = P_c/eta
///
/// cutting_power_w: P_c, power at the cutter [W]; cutting_power >= 0.
/// efficiency: eta, efficiency of the drive [-]; 0 < efficiency <= 1.
/// motor_power_w_out: P_m [W].
/// Valid for: divide once; belts about 0.9, geared heads 0.7 to 0.8 (from memory).
/// Source: definition of efficiency.
/// Example: cutting_power=20.60 hp; efficiency=0.60 => 34.34 hp (P.C. Sharma, A Textbook of
///     Production Engineering, Ex. 15.1, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_motor_power(
    cutting_power_w: f64,
    efficiency: f64,
    motor_power_w_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&motor_power::FORMULA, &[cutting_power_w, efficiency], motor_power_w_out) }
}

/// gullet_motor_power over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_motor_power_array(
    count: usize,
    cutting_power_w: *const f64,
    efficiency: *const f64,
    motor_power_w_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&motor_power::FORMULA, count, [cutting_power_w, efficiency], motor_power_w_out, status_out) }
}

/// Torque at the spindle for a power at the cutter.
///
///     M_c = P_c/(2 pi n)
///
/// cutting_power_w: P_c, power at the cutter [W]; cutting_power >= 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed > 0.
/// cutting_torque_n_m_out: M_c [N.m].
/// Valid for: mean over a revolution where the cut is interrupted; n in revolutions per second.
/// Source: definition of power.
/// Example: cutting_power=7.5 kW; spindle_speed=100 rpm => 716 N.m (Kalpakjian & Schmid,
///     Manufacturing Engineering & Technology, Ex. 24.1 p.664 (open textbook-companion file), seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_torque(
    cutting_power_w: f64,
    spindle_speed_rev_per_s: f64,
    cutting_torque_n_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&cutting_torque::FORMULA, &[cutting_power_w, spindle_speed_rev_per_s], cutting_torque_n_m_out) }
}

/// gullet_cutting_torque over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_torque_array(
    count: usize,
    cutting_power_w: *const f64,
    spindle_speed_rev_per_s: *const f64,
    cutting_torque_n_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&cutting_torque::FORMULA, count, [cutting_power_w, spindle_speed_rev_per_s], cutting_torque_n_m_out, status_out) }
}

/// Power of a torque at a spindle speed.
///
///     P_c = 2 pi n M_c
///
/// torque_n_m: M_c, torque [N.m]; torque >= 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// power_from_torque_w_out: P_c [W].
/// Valid for: mean over a revolution where the torque is; n in revolutions per second.
/// Source: definition of power.
/// Example: torque=5252.11312203 lbf.ft; spindle_speed=1 rpm => 1 hp (identity: 33000/(2 pi)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_power_from_torque(
    torque_n_m: f64,
    spindle_speed_rev_per_s: f64,
    power_from_torque_w_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&power_from_torque::FORMULA, &[torque_n_m, spindle_speed_rev_per_s], power_from_torque_w_out) }
}

/// gullet_power_from_torque over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_power_from_torque_array(
    count: usize,
    torque_n_m: *const f64,
    spindle_speed_rev_per_s: *const f64,
    power_from_torque_w_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&power_from_torque::FORMULA, count, [torque_n_m, spindle_speed_rev_per_s], power_from_torque_w_out, status_out) }
}

/// Torque that a drive has to give at a spindle speed.
///
///     M_av = P/(2 pi max(n, n_b))
///
/// rated_power_w: P, rated power at the spindle [W]; rated_power >= 0.
/// base_speed_rev_per_s: n_b, lowest spindle speed at which the rated power is reached [rev/s];
///     base_speed > 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// available_torque_n_m_out: M_av [N.m].
/// Valid for: constant torque up to the base speed, constant power above it; one gear or pulley
///     step; n in revolutions per second.
/// Source: derived: the usual two-range characteristic of a controlled spindle drive.
/// Example: rated_power=5 hp; base_speed=1750 rpm; spindle_speed=1750 rpm => 15.0060374915 lbf.ft
///     (identity at the base speed: 33000 hp/(2 pi n)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_available_torque(
    rated_power_w: f64,
    base_speed_rev_per_s: f64,
    spindle_speed_rev_per_s: f64,
    available_torque_n_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&available_torque::FORMULA, &[rated_power_w, base_speed_rev_per_s, spindle_speed_rev_per_s], available_torque_n_m_out) }
}

/// gullet_available_torque over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_available_torque_array(
    count: usize,
    rated_power_w: *const f64,
    base_speed_rev_per_s: *const f64,
    spindle_speed_rev_per_s: *const f64,
    available_torque_n_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&available_torque::FORMULA, count, [rated_power_w, base_speed_rev_per_s, spindle_speed_rev_per_s], available_torque_n_m_out, status_out) }
}

/// Power that a drive has to give at a spindle speed.
///
///     P_av = P min(1, n/n_b)
///
/// rated_power_w: P, rated power at the spindle [W]; rated_power >= 0.
/// base_speed_rev_per_s: n_b, lowest spindle speed at which the rated power is reached [rev/s];
///     base_speed > 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// available_power_w_out: P_av [W].
/// Valid for: constant torque up to the base speed, constant power above it; one gear or pulley
///     step.
/// Source: derived: the usual two-range characteristic of a controlled spindle drive.
/// Example: rated_power=7.5 kW; base_speed=1500 rpm; spindle_speed=500 rpm => 2.5 kW (identity: a
///     third of the base speed).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_available_power(
    rated_power_w: f64,
    base_speed_rev_per_s: f64,
    spindle_speed_rev_per_s: f64,
    available_power_w_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&available_power::FORMULA, &[rated_power_w, base_speed_rev_per_s, spindle_speed_rev_per_s], available_power_w_out) }
}

/// gullet_available_power over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_available_power_array(
    count: usize,
    rated_power_w: *const f64,
    base_speed_rev_per_s: *const f64,
    spindle_speed_rev_per_s: *const f64,
    available_power_w_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&available_power::FORMULA, count, [rated_power_w, base_speed_rev_per_s, spindle_speed_rev_per_s], available_power_w_out, status_out) }
}

/// Energy of a power over a time in the cut.
///
///     E = P t
///
/// power_w: P, power, of the motor or at the cutter [W]; power >= 0.
/// cutting_time_s: t, time in the cut [s]; cutting_time >= 0.
/// cutting_energy_j_out: E [J].
/// Valid for: the power steady over the time, or its mean; idling, feed drives and coolant come on
///     top.
/// Source: definition of power.
/// Example: power=2 kW; cutting_time=90 s => 0.05 kWh (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_energy(
    power_w: f64,
    cutting_time_s: f64,
    cutting_energy_j_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&cutting_energy::FORMULA, &[power_w, cutting_time_s], cutting_energy_j_out) }
}

/// gullet_cutting_energy over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_energy_array(
    count: usize,
    power_w: *const f64,
    cutting_time_s: *const f64,
    cutting_energy_j_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&cutting_energy::FORMULA, count, [power_w, cutting_time_s], cutting_energy_j_out, status_out) }
}
