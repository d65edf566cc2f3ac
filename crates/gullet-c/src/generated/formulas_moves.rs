// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::moves::*;

/// Length of a straight path over three axes.
///
///     L = sqrt(x^2 + y^2 + z^2)
///
/// travel_x_m: x, travel of the first axis, either way [m]; travel_x: any finite value.
/// travel_y_m: y, travel of the second axis, either way [m]; travel_y: any finite value.
/// travel_z_m: z, travel of the third axis, either way [m]; travel_z: any finite value.
/// path_length_m_out: L [m].
/// Valid for: axes at right angles, interpolated: speed and acceleration are those along the path.
/// Source: geometry.
/// Example: travel_x=30 mm; travel_y=-40 mm; travel_z=120 mm => 130 mm (identity: 3-4-5 and
///     5-12-13).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_path_length(
    travel_x_m: f64,
    travel_y_m: f64,
    travel_z_m: f64,
    path_length_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&path_length::FORMULA, &[travel_x_m, travel_y_m, travel_z_m], path_length_m_out) }
}

/// gullet_path_length over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_path_length_array(
    count: usize,
    travel_x_m: *const f64,
    travel_y_m: *const f64,
    travel_z_m: *const f64,
    path_length_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&path_length::FORMULA, count, [travel_x_m, travel_y_m, travel_z_m], path_length_m_out, status_out) }
}

/// Time of a move in which each axis goes its own way at its own pace.
///
///     t = max(t_x, t_y, t_z)
///
/// time_x_s: t_x, time of the first axis [s]; time_x >= 0.
/// time_y_s: t_y, time of the second axis [s]; time_y >= 0.
/// time_z_s: t_z, time of the third axis [s]; time_z >= 0.
/// simultaneous_move_time_s_out: t [s].
/// Valid for: axes start together and do not wait for each other: the path is not straight, mind
///     what stands in the way.
/// Source: definition.
/// Example: time_x=1.2 s; time_y=0.8 s; time_z=0.3 s => 1.2 s (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_simultaneous_move_time(
    time_x_s: f64,
    time_y_s: f64,
    time_z_s: f64,
    simultaneous_move_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&simultaneous_move_time::FORMULA, &[time_x_s, time_y_s, time_z_s], simultaneous_move_time_s_out) }
}

/// gullet_simultaneous_move_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_simultaneous_move_time_array(
    count: usize,
    time_x_s: *const f64,
    time_y_s: *const f64,
    time_z_s: *const f64,
    simultaneous_move_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&simultaneous_move_time::FORMULA, count, [time_x_s, time_y_s, time_z_s], simultaneous_move_time_s_out, status_out) }
}

/// Highest speed that a move from rest to rest reaches.
///
///     v_p = min(v, sqrt(a s))
///
/// distance_m: s, distance [m]; distance >= 0.
/// set_speed_m_per_s: v, speed that is set [m/s]; set_speed > 0.
/// acceleration_m_per_s2: a, acceleration, the same to start and to stop [m/s2]; acceleration > 0.
/// move_peak_speed_m_per_s_out: v_p [m/s].
/// Valid for: constant acceleration, no limit of jerk; below v the move is too short for the speed,
///     a feed as well as a rapid.
/// Source: derived: motion at constant acceleration.
/// Example: distance=50 mm; set_speed=30 m/min; acceleration=2.5 m/s2 => 0.35355339 m/s (own
///     arithmetic: sqrt(0.125) m/s).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_move_peak_speed(
    distance_m: f64,
    set_speed_m_per_s: f64,
    acceleration_m_per_s2: f64,
    move_peak_speed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&move_peak_speed::FORMULA, &[distance_m, set_speed_m_per_s, acceleration_m_per_s2], move_peak_speed_m_per_s_out) }
}

/// gullet_move_peak_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_move_peak_speed_array(
    count: usize,
    distance_m: *const f64,
    set_speed_m_per_s: *const f64,
    acceleration_m_per_s2: *const f64,
    move_peak_speed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&move_peak_speed::FORMULA, count, [distance_m, set_speed_m_per_s, acceleration_m_per_s2], move_peak_speed_m_per_s_out, status_out) }
}

/// Time of a travel that is cranked by hand.
///
///     t = s/(L n)
///
/// travel_m: s, travel [m]; travel >= 0.
/// travel_per_turn_m: L, travel for one turn of the handwheel [m]; travel_per_turn > 0.
/// pace_rev_per_s: n, turns a hand can hold [rev/s]; pace > 0.
/// hand_cranked_time_s_out: t [s].
/// Valid for: steady turning, with no time to take hold or to look at the dial; n in revolutions per
///     second.
/// Source: definition: turns over pace.
/// Example: travel=4 in; travel_per_turn=0.2 in; pace=60 rpm => 20 s (identity: 20 turns, one a
///     second).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_hand_cranked_time(
    travel_m: f64,
    travel_per_turn_m: f64,
    pace_rev_per_s: f64,
    hand_cranked_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&hand_cranked_time::FORMULA, &[travel_m, travel_per_turn_m, pace_rev_per_s], hand_cranked_time_s_out) }
}

/// gullet_hand_cranked_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_hand_cranked_time_array(
    count: usize,
    travel_m: *const f64,
    travel_per_turn_m: *const f64,
    pace_rev_per_s: *const f64,
    hand_cranked_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&hand_cranked_time::FORMULA, count, [travel_m, travel_per_turn_m, pace_rev_per_s], hand_cranked_time_s_out, status_out) }
}
