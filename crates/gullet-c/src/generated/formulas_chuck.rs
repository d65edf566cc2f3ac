// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::chuck::*;

/// Sum of the jaw forces that keeps the work from slipping in a lathe chuck.
///
///     F_g = S sqrt((F_c D/D_g)^2 + F_f^2)/mu
///
/// cutting_force_n: F_c, peak cutting force, which turns the work in the jaws [N]; cutting_force >=
///     0.
/// feed_force_n: F_f, peak feed force, which pushes the work along the jaws; 0 against a stop [N];
///     feed_force >= 0.
/// cutting_diameter_m: D, largest diameter that is cut [m]; cutting_diameter > 0.
/// grip_diameter_m: D_g, diameter that the jaws grip [m]; grip_diameter > 0.
/// friction: mu, coefficient of friction between jaw and work [-]; friction > 0.
/// safety_factor: S, safety factor on the peak forces [-]; safety_factor >= 1.
/// required_chuck_grip_n_out: F_g [N].
/// Valid for: short work: no tipping out of the jaws by overhang; the grip at the speed of the cut,
///     not at rest.
/// Source: Coulomb friction, derived; a safety factor of at least 1.5 is asked for lathe chucks by
///     VDI 3106, seen in a chuck manual.
/// Example: cutting_force=3000 N; feed_force=2000 N; cutting_diameter=50 mm; grip_diameter=100 mm;
///     friction=0.25; safety_factor=2 => 20000 N (identity: 2 x 2500/0.25 N, by a 3-4-5 triangle).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_required_chuck_grip(
    cutting_force_n: f64,
    feed_force_n: f64,
    cutting_diameter_m: f64,
    grip_diameter_m: f64,
    friction: f64,
    safety_factor: f64,
    required_chuck_grip_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&required_chuck_grip::FORMULA, &[cutting_force_n, feed_force_n, cutting_diameter_m, grip_diameter_m, friction, safety_factor], required_chuck_grip_n_out) }
}

/// gullet_required_chuck_grip over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_required_chuck_grip_array(
    count: usize,
    cutting_force_n: *const f64,
    feed_force_n: *const f64,
    cutting_diameter_m: *const f64,
    grip_diameter_m: *const f64,
    friction: *const f64,
    safety_factor: *const f64,
    required_chuck_grip_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&required_chuck_grip::FORMULA, count, [cutting_force_n, feed_force_n, cutting_diameter_m, grip_diameter_m, friction, safety_factor], required_chuck_grip_n_out, status_out) }
}

/// Grip of a lathe chuck's jaws from outside, at a spindle speed.
///
///     F_n = F_0 (1 - c (n/n_max)^2)
///
/// static_grip_n: F_0, sum of the jaw forces at rest [N]; static_grip >= 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; 0 <= spindle_speed <= maximum_speed.
/// maximum_speed_rev_per_s: n_max, largest speed marked on the chuck [rev/s]; maximum_speed > 0.
/// loss_at_maximum: c, share of the grip at rest that is lost at the largest speed [-]; 0 <=
///     loss_at_maximum <= 1.
/// jaw_grip_at_speed_n_out: F_n [N].
/// Valid for: jaws of the chuck's own weight and place, gripped with the largest actuating force;
///     heavier or farther jaws and a weaker grip lose more; gripping from inside, speed adds grip.
/// Source: centrifugal force of the jaws, derived; the loss at the largest speed: DIN EN 1550 allows
///     67 % of the grip at rest, seen in a chuck manual.
/// Example: static_grip=36 kN; spindle_speed=2000 rpm; maximum_speed=4000 rpm => 30 kN (own
///     arithmetic: a sixth is lost at half the speed).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_jaw_grip_at_speed(
    static_grip_n: f64,
    spindle_speed_rev_per_s: f64,
    maximum_speed_rev_per_s: f64,
    loss_at_maximum: f64,
    jaw_grip_at_speed_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&jaw_grip_at_speed::FORMULA, &[static_grip_n, spindle_speed_rev_per_s, maximum_speed_rev_per_s, loss_at_maximum], jaw_grip_at_speed_n_out) }
}

/// gullet_jaw_grip_at_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_jaw_grip_at_speed_array(
    count: usize,
    static_grip_n: *const f64,
    spindle_speed_rev_per_s: *const f64,
    maximum_speed_rev_per_s: *const f64,
    loss_at_maximum: *const f64,
    jaw_grip_at_speed_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&jaw_grip_at_speed::FORMULA, count, [static_grip_n, spindle_speed_rev_per_s, maximum_speed_rev_per_s, loss_at_maximum], jaw_grip_at_speed_n_out, status_out) }
}

/// Grip at rest of a lathe chuck whose jaws still hold with a wanted grip at a spindle speed.
///
///     F_0 = F_g/(1 - c (n/n_max)^2)
///
/// required_grip_n: F_g, sum of the jaw forces that the cut needs [N]; required_grip >= 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; 0 <= spindle_speed <= maximum_speed.
/// maximum_speed_rev_per_s: n_max, largest speed marked on the chuck [rev/s]; maximum_speed > 0.
/// loss_at_maximum: c, share of the grip at rest that is lost at the largest speed [-]; 0 <=
///     loss_at_maximum < 1.
/// static_grip_for_speed_n_out: F_0 [N].
/// Valid for: as jaw_grip_at_speed.
/// Source: derived: inverse of jaw_grip_at_speed.
/// Example: required_grip=30 kN; spindle_speed=2000 rpm; maximum_speed=4000 rpm => 36 kN (own
///     arithmetic: a sixth is lost at half the speed).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_static_grip_for_speed(
    required_grip_n: f64,
    spindle_speed_rev_per_s: f64,
    maximum_speed_rev_per_s: f64,
    loss_at_maximum: f64,
    static_grip_for_speed_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&static_grip_for_speed::FORMULA, &[required_grip_n, spindle_speed_rev_per_s, maximum_speed_rev_per_s, loss_at_maximum], static_grip_for_speed_n_out) }
}

/// gullet_static_grip_for_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_static_grip_for_speed_array(
    count: usize,
    required_grip_n: *const f64,
    spindle_speed_rev_per_s: *const f64,
    maximum_speed_rev_per_s: *const f64,
    loss_at_maximum: *const f64,
    static_grip_for_speed_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&static_grip_for_speed::FORMULA, count, [required_grip_n, spindle_speed_rev_per_s, maximum_speed_rev_per_s, loss_at_maximum], static_grip_for_speed_n_out, status_out) }
}

/// Largest spindle speed at which a lathe chuck's jaws keep a grip from outside.
///
///     n = n_max sqrt(min((1 - F_g/F_0)/c, 1))
///
/// static_grip_n: F_0, sum of the jaw forces at rest [N]; static_grip > 0.
/// required_grip_n: F_g, sum of the jaw forces that the cut needs [N]; 0 <= required_grip <=
///     static_grip.
/// maximum_speed_rev_per_s: n_max, largest speed marked on the chuck [rev/s]; maximum_speed > 0.
/// loss_at_maximum: c, share of the grip at rest that is lost at the largest speed [-]; 0 <
///     loss_at_maximum <= 1.
/// chuck_speed_for_grip_rev_per_s_out: n [rev/s].
/// Valid for: as jaw_grip_at_speed; never above the speed marked on the chuck.
/// Source: derived: inverse of jaw_grip_at_speed.
/// Example: static_grip=36 kN; required_grip=30 kN; maximum_speed=4000 rpm => 2000 rpm (own
///     arithmetic: half the speed costs a sixth of the grip).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chuck_speed_for_grip(
    static_grip_n: f64,
    required_grip_n: f64,
    maximum_speed_rev_per_s: f64,
    loss_at_maximum: f64,
    chuck_speed_for_grip_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&chuck_speed_for_grip::FORMULA, &[static_grip_n, required_grip_n, maximum_speed_rev_per_s, loss_at_maximum], chuck_speed_for_grip_rev_per_s_out) }
}

/// gullet_chuck_speed_for_grip over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chuck_speed_for_grip_array(
    count: usize,
    static_grip_n: *const f64,
    required_grip_n: *const f64,
    maximum_speed_rev_per_s: *const f64,
    loss_at_maximum: *const f64,
    chuck_speed_for_grip_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&chuck_speed_for_grip::FORMULA, count, [static_grip_n, required_grip_n, maximum_speed_rev_per_s, loss_at_maximum], chuck_speed_for_grip_rev_per_s_out, status_out) }
}
