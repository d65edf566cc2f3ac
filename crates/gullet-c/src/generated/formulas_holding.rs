// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::holding::*;

/// Largest force along the jaws or upward that friction on both jaw faces can hold.
///
///     F = 2 mu F_cl
///
/// clamping_force_n: F_cl, clamping force, pressing on both faces [N]; clamping_force >= 0.
/// friction: mu, coefficient of friction between jaw and work [-]; friction > 0.
/// two_face_friction_capacity_n_out: F [N].
/// Valid for: two flat jaws, one clamping force that both faces feel; no safety factor; no force
///     across the jaws.
/// Source: Coulomb friction, derived.
/// Example: clamping_force=10 kN; friction=0.2 => 4 kN (identity: 2 x 0.2 x 10 kN).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_two_face_friction_capacity(
    clamping_force_n: f64,
    friction: f64,
    two_face_friction_capacity_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&two_face_friction_capacity::FORMULA, &[clamping_force_n, friction], two_face_friction_capacity_n_out) }
}

/// gullet_two_face_friction_capacity over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_two_face_friction_capacity_array(
    count: usize,
    clamping_force_n: *const f64,
    friction: *const f64,
    two_face_friction_capacity_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&two_face_friction_capacity::FORMULA, count, [clamping_force_n, friction], two_face_friction_capacity_n_out, status_out) }
}

/// Clamping force that keeps the work from sliding along the jaws or lifting.
///
///     F_cl = S sqrt(F_a^2 + F_l^2)/(2 mu)
///
/// force_along_n: F_a, peak force along the jaws [N]; force_along: any finite value.
/// force_lift_n: F_l, peak force that lifts the work [N]; force_lift: any finite value.
/// friction: mu, coefficient of friction between jaw and work [-]; friction > 0.
/// safety_factor: S, safety factor on the peak force [-]; safety_factor >= 1.
/// required_clamping_force_n_out: F_cl [N].
/// Valid for: two faces; peak forces, not means; parallels under the work give no hold against lift;
///     force across the jaws and tipping are checked apart.
/// Source: Coulomb friction, derived; a safety factor of at least 1.5 is asked for lathe chucks by
///     VDI 3106, seen in a chuck manual.
/// Example: force_along=1200 N; force_lift=500 N; friction=0.2; safety_factor=2 => 6500 N (identity:
///     2 x 1300/0.4 N).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_required_clamping_force(
    force_along_n: f64,
    force_lift_n: f64,
    friction: f64,
    safety_factor: f64,
    required_clamping_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&required_clamping_force::FORMULA, &[force_along_n, force_lift_n, friction, safety_factor], required_clamping_force_n_out) }
}

/// gullet_required_clamping_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_required_clamping_force_array(
    count: usize,
    force_along_n: *const f64,
    force_lift_n: *const f64,
    friction: *const f64,
    safety_factor: *const f64,
    required_clamping_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&required_clamping_force::FORMULA, count, [force_along_n, force_lift_n, friction, safety_factor], required_clamping_force_n_out, status_out) }
}

/// Clamping force that keeps a force across the jaws from opening the clamp.
///
///     F_cl = S F_q
///
/// force_across_n: F_q, peak force across the jaws, away from the fixed jaw [N]; force_across >= 0.
/// safety_factor: S, safety factor on the peak force [-]; safety_factor >= 1.
/// clamping_force_across_n_out: F_cl [N].
/// Valid for: the clamping force does not rise when the work pulls away from the fixed jaw; the
///     fixed jaw then presses with F_cl - F_q only, which is what is left for its friction; towards
///     the fixed jaw the jaw itself carries the force.
/// Source: derived: balance of the forces across the jaws.
/// Example: force_across=1500 N; safety_factor=2 => 3000 N (identity: 2 x 1500 N).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_clamping_force_across(
    force_across_n: f64,
    safety_factor: f64,
    clamping_force_across_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&clamping_force_across::FORMULA, &[force_across_n, safety_factor], clamping_force_across_n_out) }
}

/// gullet_clamping_force_across over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_clamping_force_across_array(
    count: usize,
    force_across_n: *const f64,
    safety_factor: *const f64,
    clamping_force_across_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&clamping_force_across::FORMULA, count, [force_across_n, safety_factor], clamping_force_across_n_out, status_out) }
}

/// Clamping force that keeps a force across the jaws from tipping the work about the line of the
///     jaws.
///
///     F_cl = S F_q (1 + h/(mu w + g/2))
///
/// force_across_n: F_q, peak force across the jaws, away from the fixed jaw [N]; force_across >= 0.
/// height_m: h, height of the force above the middle of the grip [m]; height >= 0.
/// grip_height_m: g, height over which the jaws grip [m]; grip_height > 0.
/// work_width_m: w, width of the work between the jaw faces [m]; work_width > 0.
/// friction: mu, coefficient of friction between jaw and work [-]; friction > 0.
/// safety_factor: S, safety factor on the peak force [-]; safety_factor >= 1.
/// tipping_clamping_force_n_out: F_cl [N].
/// Valid for: rigid work and jaws; the movable jaw may pivot and takes no moment; the pressure on
///     the fixed jaw, F_cl - S F_q, can shift by half the grip height, and friction up and down on
///     the two faces adds a couple over the work's width; all friction is free for this; no support
///     from parallels.
/// Source: derived: moments about the middle of the grip, S F_q h <= (F_cl - S F_q) (mu w + g/2); no
///     published form seen.
/// Example: force_across=1000 N; height=30 mm; grip_height=20 mm; work_width=50 mm; friction=0.2;
///     safety_factor=2 => 5000 N (own arithmetic: 2000 (1 + 30/(10 + 10)) N).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tipping_clamping_force(
    force_across_n: f64,
    height_m: f64,
    grip_height_m: f64,
    work_width_m: f64,
    friction: f64,
    safety_factor: f64,
    tipping_clamping_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tipping_clamping_force::FORMULA, &[force_across_n, height_m, grip_height_m, work_width_m, friction, safety_factor], tipping_clamping_force_n_out) }
}

/// gullet_tipping_clamping_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tipping_clamping_force_array(
    count: usize,
    force_across_n: *const f64,
    height_m: *const f64,
    grip_height_m: *const f64,
    work_width_m: *const f64,
    friction: *const f64,
    safety_factor: *const f64,
    tipping_clamping_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tipping_clamping_force::FORMULA, count, [force_across_n, height_m, grip_height_m, work_width_m, friction, safety_factor], tipping_clamping_force_n_out, status_out) }
}

/// Force of a screw from the torque on it, with friction in its thread and under its collar.
///
///     F = T/(d_m tan(lambda + rho)/2 + mu_c d_c/2); tan(lambda) = L/(pi d_m); tan(rho) =
///         mu/cos(alpha)
///
/// torque_n_m: T, torque on the screw [N.m]; torque >= 0.
/// mean_diameter_m: d_m, mean diameter of the thread [m]; mean_diameter > 0.
/// lead_m: L, lead of the thread [m]; lead > 0.
/// thread_friction: mu, coefficient of friction in the thread [-]; thread_friction >= 0.
/// thread_half_angle_rad: alpha, angle of the flanks to the plane across the axis: 0 for a square
///     thread [rad]; 0 deg <= thread_half_angle < 90 deg.
/// collar_diameter_m: d_c, mean diameter of the collar: 2/3 of the outer one for a solid pivot under
///     even pressure [m]; collar_diameter >= 0.
/// collar_friction: mu_c, coefficient of friction under the collar [-]; collar_friction >= 0.
/// lead*thread_friction < pi*mean_diameter*cos(thread_half_angle).
/// screw_clamping_force_n_out: F [N].
/// Valid for: raising the load (tightening); the screw does not jam: lambda + rho below 90 deg.
/// Source: screw as an inclined plane; example: R.C. Hibbeler, Statics, 14th ed., problem 8-76, seen
///     (solution page).
/// Example: torque=8.75 N.m; mean_diameter=12 mm; lead=8 mm; thread_friction=0.27 => 2851 N (R.C.
///     Hibbeler, Statics, 14th ed., problem 8-76, seen (solution page)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_screw_clamping_force(
    torque_n_m: f64,
    mean_diameter_m: f64,
    lead_m: f64,
    thread_friction: f64,
    thread_half_angle_rad: f64,
    collar_diameter_m: f64,
    collar_friction: f64,
    screw_clamping_force_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&screw_clamping_force::FORMULA, &[torque_n_m, mean_diameter_m, lead_m, thread_friction, thread_half_angle_rad, collar_diameter_m, collar_friction], screw_clamping_force_n_out) }
}

/// gullet_screw_clamping_force over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_screw_clamping_force_array(
    count: usize,
    torque_n_m: *const f64,
    mean_diameter_m: *const f64,
    lead_m: *const f64,
    thread_friction: *const f64,
    thread_half_angle_rad: *const f64,
    collar_diameter_m: *const f64,
    collar_friction: *const f64,
    screw_clamping_force_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&screw_clamping_force::FORMULA, count, [torque_n_m, mean_diameter_m, lead_m, thread_friction, thread_half_angle_rad, collar_diameter_m, collar_friction], screw_clamping_force_n_out, status_out) }
}

/// Force of a screw from the torque on it and its efficiency.
///
///     F = 2 pi eta T/L
///
/// torque_n_m: T, torque on the screw [N.m]; torque >= 0.
/// lead_m: L, lead of the thread [m]; lead > 0.
/// efficiency: eta, efficiency of the screw with its collar [-]; 0 < efficiency <= 1.
/// screw_clamping_force_efficiency_n_out: F [N].
/// Valid for: efficiency 0.1 to 0.2 with plain collar friction (range of seen examples), 0.25 to
///     0.45 well greased (from memory).
/// Source: derived: work of one turn.
/// Example: torque=40 N.m; lead=5 mm; efficiency=0.35 => 17592.9189 N (identity: 28 pi/0.005 N).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_screw_clamping_force_efficiency(
    torque_n_m: f64,
    lead_m: f64,
    efficiency: f64,
    screw_clamping_force_efficiency_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&screw_clamping_force_efficiency::FORMULA, &[torque_n_m, lead_m, efficiency], screw_clamping_force_efficiency_n_out) }
}

/// gullet_screw_clamping_force_efficiency over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_screw_clamping_force_efficiency_array(
    count: usize,
    torque_n_m: *const f64,
    lead_m: *const f64,
    efficiency: *const f64,
    screw_clamping_force_efficiency_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&screw_clamping_force_efficiency::FORMULA, count, [torque_n_m, lead_m, efficiency], screw_clamping_force_efficiency_n_out, status_out) }
}
