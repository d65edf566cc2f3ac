// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::thread::*;

/// Depth at full diameter of the drilled hole that a tapped depth needs.
///
///     l = b + c P + l_c
///
/// thread_depth_m: b, depth of full thread [m]; thread_depth > 0.
/// pitch_m: P, pitch [m]; pitch > 0.
/// chamfer_threads: c, length of the tap's chamfer in threads [-]; chamfer_threads >= 0.
/// clearance_m: l_c, room below the tap, for chips and its point [m]; clearance >= 0.
/// tapping_hole_depth_m_out: l [m].
/// Valid for: blind holes; chamfers of about 8 threads (taper), 4 (plug), 1.5 (bottoming), from
///     memory.
/// Source: definition; the chamfers: ASME B94.9, from memory.
/// Example: thread_depth=15 mm; pitch=1.5 mm; chamfer_threads=4; clearance=2 mm => 23 mm (own
///     arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tapping_hole_depth(
    thread_depth_m: f64,
    pitch_m: f64,
    chamfer_threads: f64,
    clearance_m: f64,
    tapping_hole_depth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tapping_hole_depth::FORMULA, &[thread_depth_m, pitch_m, chamfer_threads, clearance_m], tapping_hole_depth_m_out) }
}

/// gullet_tapping_hole_depth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tapping_hole_depth_array(
    count: usize,
    thread_depth_m: *const f64,
    pitch_m: *const f64,
    chamfer_threads: *const f64,
    clearance_m: *const f64,
    tapping_hole_depth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tapping_hole_depth::FORMULA, count, [thread_depth_m, pitch_m, chamfer_threads, clearance_m], tapping_hole_depth_m_out, status_out) }
}

/// Undeformed chip thickness of a tooth in the chamfer of a cutting tap.
///
///     h = (D - d)/(2 c z)
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// drill_diameter_m: d, diameter of the drilled hole [m]; 0 < drill_diameter <= major_diameter.
/// chamfer_threads: c, length of the tap's chamfer in threads [-]; chamfer_threads > 0.
/// flutes: z, flutes of the tap [-]; flutes >= 1.
/// tap_chip_thickness_m_out: h [m].
/// Valid for: measured square to the axis; the teeth of the chamfer share the height alike; one
///     start.
/// Source: derived: half the difference of the diameters over the teeth of the chamfer.
/// Example: major_diameter=10 mm; drill_diameter=8.5 mm; chamfer_threads=4; flutes=3 => 0.0625 mm
///     (own arithmetic: 0.75/12 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tap_chip_thickness(
    major_diameter_m: f64,
    drill_diameter_m: f64,
    chamfer_threads: f64,
    flutes: f64,
    tap_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tap_chip_thickness::FORMULA, &[major_diameter_m, drill_diameter_m, chamfer_threads, flutes], tap_chip_thickness_m_out) }
}

/// gullet_tap_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tap_chip_thickness_array(
    count: usize,
    major_diameter_m: *const f64,
    drill_diameter_m: *const f64,
    chamfer_threads: *const f64,
    flutes: *const f64,
    tap_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tap_chip_thickness::FORMULA, count, [major_diameter_m, drill_diameter_m, chamfer_threads, flutes], tap_chip_thickness_m_out, status_out) }
}

/// Torque of a cutting tap.
///
///     M_c = P^2 D k_c K/8
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// pitch_m: P, pitch [m]; pitch > 0.
/// specific_cutting_force_pa: k_c, specific cutting force at the chip thickness of a tooth of the
///     chamfer [Pa]; specific_cutting_force >= 0.
/// factor: K, wear and friction; 1.3 to 2 [-]; factor > 0.
/// tapping_torque_n_m_out: M_c [N.m].
/// Valid for: 60 deg threads of one start; rough, within 50 % either way: a dull tap or packed
///     flutes multiply it; never for a forming tap.
/// Source: form of German handbooks, from memory: half of the section of the thread, about P^2/4, at
///     the radius D/2.
/// Example: major_diameter=10 mm; pitch=1.5 mm; specific_cutting_force=3200 N/mm2 => 13.5 N.m (own
///     arithmetic: 2.25 x 10 x 3200 x 1.5/8 N mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tapping_torque(
    major_diameter_m: f64,
    pitch_m: f64,
    specific_cutting_force_pa: f64,
    factor: f64,
    tapping_torque_n_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tapping_torque::FORMULA, &[major_diameter_m, pitch_m, specific_cutting_force_pa, factor], tapping_torque_n_m_out) }
}

/// gullet_tapping_torque over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tapping_torque_array(
    count: usize,
    major_diameter_m: *const f64,
    pitch_m: *const f64,
    specific_cutting_force_pa: *const f64,
    factor: *const f64,
    tapping_torque_n_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tapping_torque::FORMULA, count, [major_diameter_m, pitch_m, specific_cutting_force_pa, factor], tapping_torque_n_m_out, status_out) }
}

/// Turns that a tap makes while the spindle comes to a stop.
///
///     N = n t_s/2
///
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// stopping_time_s: t_s, time from full speed to a stop; half of a reversal between equal speeds
///     [s]; stopping_time >= 0.
/// tap_stopping_turns_out: N [turns].
/// Valid for: even slowing down; n in revolutions per second.
/// Source: derived: mean speed n/2 over the stop.
/// Example: spindle_speed=600 rpm; stopping_time=0.4 s => 2 turns (own arithmetic: 10 x 0.4/2).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tap_stopping_turns(
    spindle_speed_rev_per_s: f64,
    stopping_time_s: f64,
    tap_stopping_turns_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tap_stopping_turns::FORMULA, &[spindle_speed_rev_per_s, stopping_time_s], tap_stopping_turns_out) }
}

/// gullet_tap_stopping_turns over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tap_stopping_turns_array(
    count: usize,
    spindle_speed_rev_per_s: *const f64,
    stopping_time_s: *const f64,
    tap_stopping_turns_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tap_stopping_turns::FORMULA, count, [spindle_speed_rev_per_s, stopping_time_s], tap_stopping_turns_out, status_out) }
}

/// Depth that a tap goes on while the spindle comes to a stop.
///
///     l_s = P n t_s/2
///
/// lead_m: P, lead of the thread: pitch times starts [m]; lead > 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// stopping_time_s: t_s, time from full speed to a stop; half of a reversal between equal speeds
///     [s]; stopping_time >= 0.
/// tap_stopping_travel_m_out: l_s [m].
/// Valid for: even slowing down, feed tied to the turns; n in revolutions per second; a control that
///     brakes ahead of the depth needs this length above it instead.
/// Source: derived: mean speed n/2 over the stop.
/// Example: lead=1.5 mm; spindle_speed=600 rpm; stopping_time=0.4 s => 3 mm (own arithmetic: 1.5 x 2
///     turns).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tap_stopping_travel(
    lead_m: f64,
    spindle_speed_rev_per_s: f64,
    stopping_time_s: f64,
    tap_stopping_travel_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tap_stopping_travel::FORMULA, &[lead_m, spindle_speed_rev_per_s, stopping_time_s], tap_stopping_travel_m_out) }
}

/// gullet_tap_stopping_travel over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tap_stopping_travel_array(
    count: usize,
    lead_m: *const f64,
    spindle_speed_rev_per_s: *const f64,
    stopping_time_s: *const f64,
    tap_stopping_travel_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tap_stopping_travel::FORMULA, count, [lead_m, spindle_speed_rev_per_s, stopping_time_s], tap_stopping_travel_m_out, status_out) }
}

/// Spindle speed at which a tap stops within a length.
///
///     n = 2 l_s/(P t_s)
///
/// stopping_travel_m: l_s, length in which the tap has to stop [m]; stopping_travel >= 0.
/// lead_m: P, lead of the thread: pitch times starts [m]; lead > 0.
/// stopping_time_s: t_s, time from full speed to a stop; half of a reversal between equal speeds
///     [s]; stopping_time > 0.
/// tapping_speed_for_stopping_travel_rev_per_s_out: n [rev/s].
/// Valid for: even slowing down, feed tied to the turns; n in revolutions per second; the time of
///     the stop is that of the full speed.
/// Source: derived: mean speed n/2 over the stop.
/// Example: stopping_travel=3 mm; lead=1.5 mm; stopping_time=0.4 s => 600 rpm (own arithmetic: 2 x
///     3/(1.5 x 0.4) revolutions per second).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tapping_speed_for_stopping_travel(
    stopping_travel_m: f64,
    lead_m: f64,
    stopping_time_s: f64,
    tapping_speed_for_stopping_travel_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tapping_speed_for_stopping_travel::FORMULA, &[stopping_travel_m, lead_m, stopping_time_s], tapping_speed_for_stopping_travel_rev_per_s_out) }
}

/// gullet_tapping_speed_for_stopping_travel over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tapping_speed_for_stopping_travel_array(
    count: usize,
    stopping_travel_m: *const f64,
    lead_m: *const f64,
    stopping_time_s: *const f64,
    tapping_speed_for_stopping_travel_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tapping_speed_for_stopping_travel::FORMULA, count, [stopping_travel_m, lead_m, stopping_time_s], tapping_speed_for_stopping_travel_rev_per_s_out, status_out) }
}
