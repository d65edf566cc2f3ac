// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::stability::*;

/// Smallest limit width of cut of one vibration mode, over all speeds.
///
///     a_lim = 2 k zeta (1 + zeta)/K_f
///
/// stiffness_n_per_m: k, modal stiffness [N/m]; stiffness > 0.
/// damping_ratio: zeta, damping ratio, as a share of critical damping [-]; 0 < damping_ratio < 1.
/// cutting_coefficient_pa: K_f, cutting coefficient resolved into the mode's direction [Pa];
///     cutting_coefficient > 0.
/// stability_limit_single_mode_m_out: a_lim [m].
/// Valid for: one mode, one edge always in cut with full regeneration; below it no speed chatters;
///     process damping at low speed allows more.
/// Source: J. Tlusty's limit, from memory; derived: least real part of the mode's compliance, -1/(4
///     k zeta (1 + zeta)).
/// Example: stiffness=1e7 N/m; damping_ratio=0.05; cutting_coefficient=1000 MPa => 1.05 mm
///     (identity: 2e7 x 0.05 x 1.05/1e9 m).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stability_limit_single_mode(
    stiffness_n_per_m: f64,
    damping_ratio: f64,
    cutting_coefficient_pa: f64,
    stability_limit_single_mode_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&stability_limit_single_mode::FORMULA, &[stiffness_n_per_m, damping_ratio, cutting_coefficient_pa], stability_limit_single_mode_m_out) }
}

/// gullet_stability_limit_single_mode over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stability_limit_single_mode_array(
    count: usize,
    stiffness_n_per_m: *const f64,
    damping_ratio: *const f64,
    cutting_coefficient_pa: *const f64,
    stability_limit_single_mode_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&stability_limit_single_mode::FORMULA, count, [stiffness_n_per_m, damping_ratio, cutting_coefficient_pa], stability_limit_single_mode_m_out, status_out) }
}

/// Smallest limit depth of a slot with one vibration mode along or across the feed, over all speeds.
///
///     a_lim = 8 k zeta (1 + zeta)/(z K_rc)
///
/// stiffness_n_per_m: k, modal stiffness [N/m]; stiffness > 0.
/// damping_ratio: zeta, damping ratio [-]; 0 < damping_ratio < 1.
/// krc_pa: K_rc, radial cutting coefficient [Pa]; krc > 0.
/// teeth: z, number of teeth [-]; teeth >= 1.
/// stability_limit_slot_single_mode_m_out: a_lim [m].
/// Valid for: zeroth order (mean direction of the force), slot, one mode along x or along y; at one
///     speed the limit is higher.
/// Source: Y. Altintas, E. Budak: zeroth-order solution, from memory and seen in public research
///     files; the closed form derived.
/// Example: stiffness=1340049.65 N/m; damping_ratio=0.011; krc=200 MPa; teeth=2 => 0.298053843 mm
///     (identity: mode of the benchmark of T. Insperger and G. Stepan).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stability_limit_slot_single_mode(
    stiffness_n_per_m: f64,
    damping_ratio: f64,
    krc_pa: f64,
    teeth: f64,
    stability_limit_slot_single_mode_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&stability_limit_slot_single_mode::FORMULA, &[stiffness_n_per_m, damping_ratio, krc_pa, teeth], stability_limit_slot_single_mode_m_out) }
}

/// gullet_stability_limit_slot_single_mode over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stability_limit_slot_single_mode_array(
    count: usize,
    stiffness_n_per_m: *const f64,
    damping_ratio: *const f64,
    krc_pa: *const f64,
    teeth: *const f64,
    stability_limit_slot_single_mode_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&stability_limit_slot_single_mode::FORMULA, count, [stiffness_n_per_m, damping_ratio, krc_pa, teeth], stability_limit_slot_single_mode_m_out, status_out) }
}

/// Spindle speed at which a whole number of vibrations falls on a tooth: the widest stable pockets.
///
///     n = f_n/(z k)
///
/// natural_frequency_hz: f_n, natural frequency of the mode [Hz]; natural_frequency > 0.
/// teeth: z, number of teeth [-]; teeth >= 1.
/// waves: k, whole vibrations a tooth: 1, 2, ... [-]; waves >= 1.
/// best_spindle_speed_rev_per_s_out: n [rev/s].
/// Valid for: n in revolutions per second (1 Hz gives 60 rpm); the asymptote of the stability lobes,
///     evenly pitched teeth.
/// Source: definition of the tooth-passing frequency, derived.
/// Example: natural_frequency=922 Hz; teeth=2; waves=1 => 27660 rpm (identity: 60 x 922/2 rpm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_best_spindle_speed(
    natural_frequency_hz: f64,
    teeth: f64,
    waves: f64,
    best_spindle_speed_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&best_spindle_speed::FORMULA, &[natural_frequency_hz, teeth, waves], best_spindle_speed_rev_per_s_out) }
}

/// gullet_best_spindle_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_best_spindle_speed_array(
    count: usize,
    natural_frequency_hz: *const f64,
    teeth: *const f64,
    waves: *const f64,
    best_spindle_speed_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&best_spindle_speed::FORMULA, count, [natural_frequency_hz, teeth, waves], best_spindle_speed_rev_per_s_out, status_out) }
}
