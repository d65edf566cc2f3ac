// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::thread_milling::*;

/// Largest thread mill for an internal thread.
///
///     D_c = k D
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// diameter_ratio: k, cutter over major diameter that is allowed [-]; 0 < diameter_ratio < 1.
/// thread_mill_largest_diameter_m_out: D_c [m].
/// Valid for: ratios of 2/3 to 3/4 keep the flanks true enough for common threads;
///     internal_thread_mill_widening tells how true; coarse pitches need less.
/// Source: common practice, no source.
/// Example: major_diameter=12 mm; diameter_ratio=0.75 => 9 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_mill_largest_diameter(
    major_diameter_m: f64,
    diameter_ratio: f64,
    thread_mill_largest_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thread_mill_largest_diameter::FORMULA, &[major_diameter_m, diameter_ratio], thread_mill_largest_diameter_m_out) }
}

/// gullet_thread_mill_largest_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_mill_largest_diameter_array(
    count: usize,
    major_diameter_m: *const f64,
    diameter_ratio: *const f64,
    thread_mill_largest_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thread_mill_largest_diameter::FORMULA, count, [major_diameter_m, diameter_ratio], thread_mill_largest_diameter_m_out, status_out) }
}

/// Axial amount by which a ringed cutter of the thread's own profile mills each flank of an internal
///     thread too wide.
///
///     delta_f = P^2 D_c/(4 pi^2 tan(alpha) D (D - D_c))
///
/// pitch_m: P, lead of the thread; its pitch where it has one start [m]; pitch >= 0.
/// feature_diameter_m: D, diameter at which the flank is looked at [m]; feature_diameter > 0.
/// cutter_diameter_m: D_c, cutter diameter [m]; 0 < cutter_diameter < feature_diameter.
/// flank_angle_rad: alpha, angle of the flank from the normal to the axis; 30 deg of 60 deg threads
///     [rad]; 0 deg < flank_angle < 90 deg.
/// internal_thread_mill_widening_m_out: delta_f [m].
/// Valid for: cutter axis along the thread's, rings without lead; second order of the angle beside
///     the deepest point: within 7 % of the exact envelope for common metric threads.
/// Source: derived: envelope of the rings along the helix.
/// Example: pitch=1.5 mm; feature_diameter=20 mm; cutter_diameter=16 mm => 0.0197430118 mm
///     (identity: 36/(320 pi^2 tan(30 deg)) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_internal_thread_mill_widening(
    pitch_m: f64,
    feature_diameter_m: f64,
    cutter_diameter_m: f64,
    flank_angle_rad: f64,
    internal_thread_mill_widening_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&internal_thread_mill_widening::FORMULA, &[pitch_m, feature_diameter_m, cutter_diameter_m, flank_angle_rad], internal_thread_mill_widening_m_out) }
}

/// gullet_internal_thread_mill_widening over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_internal_thread_mill_widening_array(
    count: usize,
    pitch_m: *const f64,
    feature_diameter_m: *const f64,
    cutter_diameter_m: *const f64,
    flank_angle_rad: *const f64,
    internal_thread_mill_widening_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&internal_thread_mill_widening::FORMULA, count, [pitch_m, feature_diameter_m, cutter_diameter_m, flank_angle_rad], internal_thread_mill_widening_m_out, status_out) }
}

/// Axial shift between two turns of a thread mill with several rings: the whole pitches its rings
///     cover.
///
///     L_s = P floor(l/P)
///
/// cutting_length_m: l, length of the rings [m]; cutting_length >= pitch.
/// pitch_m: P, pitch of the thread [m]; pitch > 0.
/// thread_mill_axial_shift_m_out: L_s [m].
/// Valid for: single start; a quotient within 1e-9, relative, below a whole number counts as that
///     number; passes by pass_count over the thread's length.
/// Source: derived: rings fall into their own grooves only after whole pitches.
/// Example: cutting_length=10 mm; pitch=1.5 mm => 9 mm (own arithmetic: six pitches).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_mill_axial_shift(
    cutting_length_m: f64,
    pitch_m: f64,
    thread_mill_axial_shift_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thread_mill_axial_shift::FORMULA, &[cutting_length_m, pitch_m], thread_mill_axial_shift_m_out) }
}

/// gullet_thread_mill_axial_shift over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_mill_axial_shift_array(
    count: usize,
    cutting_length_m: *const f64,
    pitch_m: *const f64,
    thread_mill_axial_shift_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thread_mill_axial_shift::FORMULA, count, [cutting_length_m, pitch_m], thread_mill_axial_shift_m_out, status_out) }
}

/// Travel of the cutter centre at one axial position of a thread mill, or at one level of a bore:
///     in, turns, out.
///
///     L = k L_t + 2 l_e
///
/// turn_length_m: L_t, travel of one turn of the helix [m]; turn_length > 0.
/// turns_turns: k, turns: one with rings over the whole length, one a pitch with a single ring
///     [turns]; turns >= 1.
/// entry_length_m: l_e, travel of the entry arc; the exit is as long [m]; entry_length >= 0.
/// thread_milling_travel_m_out: L [m].
/// Valid for: turn_length by helix_turn_length over the pitch; feed of the cutter centre by
///     inside_arc_feed at the major diameter, by outside_arc_feed at the minor one.
/// Source: derived: sum of the moves.
/// Example: turn_length=20 mm; turns=1; entry_length=6 mm => 32 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_milling_travel(
    turn_length_m: f64,
    turns_turns: f64,
    entry_length_m: f64,
    thread_milling_travel_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thread_milling_travel::FORMULA, &[turn_length_m, turns_turns, entry_length_m], thread_milling_travel_m_out) }
}

/// gullet_thread_milling_travel over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_milling_travel_array(
    count: usize,
    turn_length_m: *const f64,
    turns_turns: *const f64,
    entry_length_m: *const f64,
    thread_milling_travel_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thread_milling_travel::FORMULA, count, [turn_length_m, turns_turns, entry_length_m], thread_milling_travel_m_out, status_out) }
}

/// Mean removal rate while a thread mill cuts an internal thread of 60 deg from its minor diameter
///     to its full depth in one turn.
///
///     Q = (35 sqrt(3)/256) pi D_2 P l/t
///
/// pitch_m: P, pitch of the thread [m]; pitch > 0.
/// thread_length_m: l, length of the thread that is cut at once [m]; thread_length >= 0.
/// pitch_diameter_m: D_2, pitch diameter of the thread [m]; pitch_diameter > 0.
/// turn_time_s: t, time of the turn [s]; turn_time > 0.
/// thread_milling_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: basic profile of ISO 68-1: a groove 5/8 H deep, 3/4 P wide at the minor and 1/8 P at
///     the major diameter; the tap drill at the minor diameter.
/// Source: derived: section 35 sqrt(3)/256 P^2 of the groove, one groove a pitch, on the pitch
///     diameter.
/// Example: pitch=1.75 mm; thread_length=14 mm; pitch_diameter=10.863 mm; turn_time=6 s =>
///     32.9991834 mm3/s (identity: M12).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_milling_removal_rate(
    pitch_m: f64,
    thread_length_m: f64,
    pitch_diameter_m: f64,
    turn_time_s: f64,
    thread_milling_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thread_milling_removal_rate::FORMULA, &[pitch_m, thread_length_m, pitch_diameter_m, turn_time_s], thread_milling_removal_rate_m3_per_s_out) }
}

/// gullet_thread_milling_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_milling_removal_rate_array(
    count: usize,
    pitch_m: *const f64,
    thread_length_m: *const f64,
    pitch_diameter_m: *const f64,
    turn_time_s: *const f64,
    thread_milling_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thread_milling_removal_rate::FORMULA, count, [pitch_m, thread_length_m, pitch_diameter_m, turn_time_s], thread_milling_removal_rate_m3_per_s_out, status_out) }
}

/// Mean removal rate while a thread mill cuts an external thread of 60 deg from its major diameter
///     to its full depth in one turn.
///
///     Q = (425 sqrt(3)/2304) pi D_2 P l/t
///
/// pitch_m: P, pitch of the thread [m]; pitch > 0.
/// thread_length_m: l, length of the thread that is cut at once [m]; thread_length >= 0.
/// pitch_diameter_m: D_2, pitch diameter of the thread [m]; pitch_diameter > 0.
/// turn_time_s: t, time of the turn [s]; turn_time > 0.
/// external_thread_milling_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: basic profile of ISO 68-1: a groove 17/24 H deep, 7/8 P wide at the major diameter,
///     counted down to a flat of P/6 in place of the rounded root, which is on the safe side; the
///     blank at the major diameter.
/// Source: derived: section 425 sqrt(3)/2304 P^2 of the groove, one groove a pitch, on the pitch
///     diameter.
/// Example: pitch=1.75 mm; thread_length=14 mm; pitch_diameter=10.863 mm; turn_time=6 s =>
///     44.522707729 mm3/s (identity: M12).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_external_thread_milling_removal_rate(
    pitch_m: f64,
    thread_length_m: f64,
    pitch_diameter_m: f64,
    turn_time_s: f64,
    external_thread_milling_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&external_thread_milling_removal_rate::FORMULA, &[pitch_m, thread_length_m, pitch_diameter_m, turn_time_s], external_thread_milling_removal_rate_m3_per_s_out) }
}

/// gullet_external_thread_milling_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_external_thread_milling_removal_rate_array(
    count: usize,
    pitch_m: *const f64,
    thread_length_m: *const f64,
    pitch_diameter_m: *const f64,
    turn_time_s: *const f64,
    external_thread_milling_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&external_thread_milling_removal_rate::FORMULA, count, [pitch_m, thread_length_m, pitch_diameter_m, turn_time_s], external_thread_milling_removal_rate_m3_per_s_out, status_out) }
}
