// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::threading::*;

/// Infeed of a compound slide that is set near the flank of the thread.
///
///     s = h/cos(alpha)
///
/// thread_height_m: h, height of the thread, on the radius [m]; thread_height >= 0.
/// compound_angle_rad: alpha, angle of the slide, from the square of the axis [rad]; 0 deg <=
///     compound_angle < 90 deg.
/// compound_infeed_m_out: s [m].
/// Valid for: slide set a little below half the thread angle, so that the trailing flank is shaved;
///     the dial of the slide reads this way, the cross slide none of it.
/// Source: right triangle, derived; 29 to 29.5 deg: training manual on lathe threading, seen.
/// Example: thread_height=0.0811899 in; compound_angle=29 deg => 0.0928 in (public threading table:
///     8 threads an inch of the old American form (height 0.64952 P), seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_compound_infeed(
    thread_height_m: f64,
    compound_angle_rad: f64,
    compound_infeed_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&compound_infeed::FORMULA, &[thread_height_m, compound_angle_rad], compound_infeed_m_out) }
}

/// gullet_compound_infeed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_compound_infeed_array(
    count: usize,
    thread_height_m: *const f64,
    compound_angle_rad: *const f64,
    compound_infeed_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&compound_infeed::FORMULA, count, [thread_height_m, compound_angle_rad], compound_infeed_m_out, status_out) }
}

/// Infeed of one pass of single-point threading at equal chip area.
///
///     da_i = h (sqrt(i) - sqrt(i - 1))/sqrt(N)
///
/// thread_height_m: h, height of the thread [m]; thread_height >= 0.
/// passes: N, number of passes [-]; passes >= 1.
/// index: i, number of the pass [-]; 1 <= index <= passes.
/// threading_infeed_m_out: da_i [m].
/// Valid for: as threading_depth, of which it is the step; the last ones should not fall below about
///     0.05 mm (common practice, no source), or the tool rubs.
/// Source: derived: difference of two depths.
/// Example: thread_height=1.2 mm; passes=9; index=1 => 0.4 mm (identity: a third).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_infeed(
    thread_height_m: f64,
    passes: f64,
    index: f64,
    threading_infeed_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_infeed::FORMULA, &[thread_height_m, passes, index], threading_infeed_m_out) }
}

/// gullet_threading_infeed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_infeed_array(
    count: usize,
    thread_height_m: *const f64,
    passes: *const f64,
    index: *const f64,
    threading_infeed_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_infeed::FORMULA, count, [thread_height_m, passes, index], threading_infeed_m_out, status_out) }
}

/// Section that a pass of single-point threading cuts.
///
///     A = (a_2 - a_1) (w + (a_2 + a_1) tan(alpha))
///
/// depth_m: a_2, depth from the crest after the pass [m]; depth > 0.
/// previous_depth_m: a_1, depth from the crest before the pass [m]; 0 <= previous_depth <= depth.
/// tool_flat_m: w, flat or width of the rounding at the tip of the tool [m]; tool_flat >= 0.
/// flank_angle_rad: alpha, half the angle of the thread [rad]; 0 deg < flank_angle < 90 deg.
/// threading_chip_section_m2_out: A [m2].
/// Valid for: symmetrical thread; the same whether fed in square to the axis or along a flank; with
///     a sharp tip equal steps of the squared depth cut equal sections.
/// Source: trapezium, derived.
/// Example: depth=0.5 mm; previous_depth=0.3 mm; tool_flat=0.2 mm; flank_angle=45 deg => 0.2 mm2
///     (identity: 0.2 x (0.2 + 0.8) mm2).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_chip_section(
    depth_m: f64,
    previous_depth_m: f64,
    tool_flat_m: f64,
    flank_angle_rad: f64,
    threading_chip_section_m2_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_chip_section::FORMULA, &[depth_m, previous_depth_m, tool_flat_m, flank_angle_rad], threading_chip_section_m2_out) }
}

/// gullet_threading_chip_section over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_chip_section_array(
    count: usize,
    depth_m: *const f64,
    previous_depth_m: *const f64,
    tool_flat_m: *const f64,
    flank_angle_rad: *const f64,
    threading_chip_section_m2_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_chip_section::FORMULA, count, [depth_m, previous_depth_m, tool_flat_m, flank_angle_rad], threading_chip_section_m2_out, status_out) }
}

/// Length of edge in the cut of a threading tool that is fed in square to the axis.
///
///     l = w + 2 a/cos(alpha)
///
/// depth_m: a, depth from the crest after the pass [m]; depth > 0.
/// tool_flat_m: w, flat or width of the rounding at the tip of the tool [m]; tool_flat >= 0.
/// flank_angle_rad: alpha, half the angle of the thread [rad]; 0 deg < flank_angle < 90 deg.
/// threading_edge_length_m_out: l [m].
/// Valid for: both flanks cut; along the compound slide about half of it; section over edge is the
///     mean chip thickness.
/// Source: trapezium, derived.
/// Example: depth=0.5 mm; tool_flat=0.2 mm; flank_angle=60 deg => 2.2 mm (identity: 0.2 + 4 x 0.5
///     mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_edge_length(
    depth_m: f64,
    tool_flat_m: f64,
    flank_angle_rad: f64,
    threading_edge_length_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_edge_length::FORMULA, &[depth_m, tool_flat_m, flank_angle_rad], threading_edge_length_m_out) }
}

/// gullet_threading_edge_length over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_edge_length_array(
    count: usize,
    depth_m: *const f64,
    tool_flat_m: *const f64,
    flank_angle_rad: *const f64,
    threading_edge_length_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_edge_length::FORMULA, count, [depth_m, tool_flat_m, flank_angle_rad], threading_edge_length_m_out, status_out) }
}

/// Mean undeformed chip thickness of a pass of single-point threading.
///
///     h_m = A/l
///
/// chip_section_m2: A, section that the pass cuts [m2]; chip_section >= 0.
/// edge_length_m: l, length of edge in the cut [m]; edge_length > 0.
/// threading_mean_chip_thickness_m_out: h_m [m].
/// Valid for: section spread over the edge; fed in square to the axis the chips of both flanks run
///     into each other and bind.
/// Source: derived: equal section.
/// Example: chip_section=0.2 mm2; edge_length=2 mm => 0.1 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_mean_chip_thickness(
    chip_section_m2: f64,
    edge_length_m: f64,
    threading_mean_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_mean_chip_thickness::FORMULA, &[chip_section_m2, edge_length_m], threading_mean_chip_thickness_m_out) }
}

/// gullet_threading_mean_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_mean_chip_thickness_array(
    count: usize,
    chip_section_m2: *const f64,
    edge_length_m: *const f64,
    threading_mean_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_mean_chip_thickness::FORMULA, count, [chip_section_m2, edge_length_m], threading_mean_chip_thickness_m_out, status_out) }
}

/// Shortest run-in in which the carriage reaches the speed of a thread.
///
///     l_a = (P_h n)^2/(2 a)
///
/// lead_m: P_h, lead of the thread [m]; lead > 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// acceleration_m_per_s2: a, acceleration of the carriage [m/s2]; acceleration > 0.
/// threading_run_in_m_out: l_a [m].
/// Valid for: constant acceleration from rest; the first turns of a thread that starts sooner have a
///     wrong lead; controls add a lag of their own; n in revolutions per second.
/// Source: derived: motion at constant acceleration.
/// Example: lead=2 mm; spindle_speed=3000 rpm; acceleration=2 m/s2 => 2.5 mm (identity: 0.1^2/4 m).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_run_in(
    lead_m: f64,
    spindle_speed_rev_per_s: f64,
    acceleration_m_per_s2: f64,
    threading_run_in_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_run_in::FORMULA, &[lead_m, spindle_speed_rev_per_s, acceleration_m_per_s2], threading_run_in_m_out) }
}

/// gullet_threading_run_in over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_run_in_array(
    count: usize,
    lead_m: *const f64,
    spindle_speed_rev_per_s: *const f64,
    acceleration_m_per_s2: *const f64,
    threading_run_in_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_run_in::FORMULA, count, [lead_m, spindle_speed_rev_per_s, acceleration_m_per_s2], threading_run_in_m_out, status_out) }
}

/// Largest spindle speed at which a run-in suffices for a thread.
///
///     n = sqrt(2 a l_a)/P_h
///
/// lead_m: P_h, lead of the thread [m]; lead > 0.
/// run_in_m: l_a, room before the first turn [m]; run_in >= 0.
/// acceleration_m_per_s2: a, acceleration of the carriage [m/s2]; acceleration > 0.
/// threading_speed_for_run_in_rev_per_s_out: n [rev/s].
/// Valid for: as threading_run_in; n in revolutions per second.
/// Source: derived: inverse of threading_run_in.
/// Example: lead=2 mm; run_in=2.5 mm; acceleration=2 m/s2 => 3000 rpm (identity: 0.1/0.002 turns a
///     second).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_speed_for_run_in(
    lead_m: f64,
    run_in_m: f64,
    acceleration_m_per_s2: f64,
    threading_speed_for_run_in_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_speed_for_run_in::FORMULA, &[lead_m, run_in_m, acceleration_m_per_s2], threading_speed_for_run_in_rev_per_s_out) }
}

/// gullet_threading_speed_for_run_in over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_speed_for_run_in_array(
    count: usize,
    lead_m: *const f64,
    run_in_m: *const f64,
    acceleration_m_per_s2: *const f64,
    threading_speed_for_run_in_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_speed_for_run_in::FORMULA, count, [lead_m, run_in_m, acceleration_m_per_s2], threading_speed_for_run_in_rev_per_s_out, status_out) }
}

/// Largest spindle speed of a thread that the carriage can follow.
///
///     n = v_max/P_h
///
/// carriage_speed_m_per_s: v_max, largest feed speed of the carriage, or what a hand can stop at a
///     shoulder [m/s]; carriage_speed > 0.
/// lead_m: P_h, lead of the thread [m]; lead > 0.
/// threading_speed_for_carriage_rev_per_s_out: n [rev/s].
/// Valid for: the carriage moves one lead a turn whatever the cutting speed; n in revolutions per
///     second.
/// Source: derived: feed_rate solved for the spindle speed.
/// Example: carriage_speed=6 m/min; lead=4 mm => 1500 rpm (identity: 6000/4 turns a minute).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_speed_for_carriage(
    carriage_speed_m_per_s: f64,
    lead_m: f64,
    threading_speed_for_carriage_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_speed_for_carriage::FORMULA, &[carriage_speed_m_per_s, lead_m], threading_speed_for_carriage_rev_per_s_out) }
}

/// gullet_threading_speed_for_carriage over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_speed_for_carriage_array(
    count: usize,
    carriage_speed_m_per_s: *const f64,
    lead_m: *const f64,
    threading_speed_for_carriage_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_speed_for_carriage::FORMULA, count, [carriage_speed_m_per_s, lead_m], threading_speed_for_carriage_rev_per_s_out, status_out) }
}

/// Most passes of single-point threading at equal chip area whose last infeed still cuts.
///
///     N_max = floor(c^2/(2 c - 1)); c = max(h/s, 1)
///
/// thread_height_m: h, height of the thread [m]; thread_height > 0.
/// smallest_infeed_m: s, smallest infeed of a pass [m]; smallest_infeed > 0.
/// threading_most_passes_out: N_max [-].
/// Valid for: at least 1; a quotient within 1e-9, relative, below a whole number counts as that
///     number; an infeed below about 0.05 mm rubs (common practice, no source).
/// Source: derived: threading_infeed of the last pass, solved for the number of passes.
/// Example: thread_height=1 mm; smallest_infeed=0.1 mm => 5 (own arithmetic: the fifth of five
///     passes takes 0.106 mm, the sixth of six 0.087 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_most_passes(
    thread_height_m: f64,
    smallest_infeed_m: f64,
    threading_most_passes_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_most_passes::FORMULA, &[thread_height_m, smallest_infeed_m], threading_most_passes_out) }
}

/// gullet_threading_most_passes over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_most_passes_array(
    count: usize,
    thread_height_m: *const f64,
    smallest_infeed_m: *const f64,
    threading_most_passes_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_most_passes::FORMULA, count, [thread_height_m, smallest_infeed_m], threading_most_passes_out, status_out) }
}

/// Passes of single-point threading over all starts, spring passes included.
///
///     N_t = s (N + N_s)
///
/// passes: N, passes that cut, for one start [-]; passes >= 1.
/// spring_passes: N_s, passes without infeed, for one start [-]; spring_passes >= 0.
/// starts: s, starts of the thread [-]; starts >= 1.
/// threading_pass_count_out: N_t [-].
/// Valid for: every start is cut by itself to the full depth.
/// Source: definition.
/// Example: passes=8; spring_passes=2; starts=3 => 30 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_pass_count(
    passes: f64,
    spring_passes: f64,
    starts: f64,
    threading_pass_count_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_pass_count::FORMULA, &[passes, spring_passes, starts], threading_pass_count_out) }
}

/// gullet_threading_pass_count over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_pass_count_array(
    count: usize,
    passes: *const f64,
    spring_passes: *const f64,
    starts: *const f64,
    threading_pass_count_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_pass_count::FORMULA, count, [passes, spring_passes, starts], threading_pass_count_out, status_out) }
}

/// Time of single-point threading over all passes.
///
///     t = N ((l + l_a + l_u)/(P_h n) + t_r)
///
/// length_m: l, length of the thread [m]; length >= 0.
/// run_in_m: l_a, run-in before the thread [m]; run_in >= 0.
/// run_out_m: l_u, run-out beyond it [m]; run_out >= 0.
/// lead_m: P_h, lead of the thread [m]; lead > 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed > 0.
/// passes: N, number of passes, spring passes and every start included [-]; passes >= 1.
/// return_time_s: t_r, time of one return to the start [s]; return_time >= 0.
/// threading_time_s_out: t [s].
/// Valid for: every pass over the same way; n in revolutions per second.
/// Source: derived: turns over speed; example: P.C. Sharma, A Textbook of Production Engineering,
///     Ex. 4.21 p.231, seen in a companion.
/// Example: length=89 mm; lead=2 mm; spindle_speed=108.514733926292 rpm; passes=5 => 2.05 min (P.C.
///     Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.21 p.231, seen in a companion:
///     5 passes of 89 mm at 217.03 mm/min, which is 2 mm of lead at 108.5 rpm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_time(
    length_m: f64,
    run_in_m: f64,
    run_out_m: f64,
    lead_m: f64,
    spindle_speed_rev_per_s: f64,
    passes: f64,
    return_time_s: f64,
    threading_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_time::FORMULA, &[length_m, run_in_m, run_out_m, lead_m, spindle_speed_rev_per_s, passes, return_time_s], threading_time_s_out) }
}

/// gullet_threading_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_time_array(
    count: usize,
    length_m: *const f64,
    run_in_m: *const f64,
    run_out_m: *const f64,
    lead_m: *const f64,
    spindle_speed_rev_per_s: *const f64,
    passes: *const f64,
    return_time_s: *const f64,
    threading_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_time::FORMULA, count, [length_m, run_in_m, run_out_m, lead_m, spindle_speed_rev_per_s, passes, return_time_s], threading_time_s_out, status_out) }
}
