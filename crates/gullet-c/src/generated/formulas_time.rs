// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::time::*;

/// Travel of a cutter from first contact to its full radial depth in slab, side or face milling from
///     one edge.
///
///     l_a = sqrt(a (D - a)); a = min(a_e, D/2)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// peripheral_approach_m_out: l_a [m].
/// Valid for: slab and side milling, face milling with one work edge inside the cutter; beyond half
///     immersion the rim at the height of the axis touches first, so D/2.
/// Source: circle and chord, derived; example: P.C. Sharma, A Textbook of Production Engineering,
///     Ex. 4.17 p.228, seen in a companion.
/// Example: diameter=150 mm; radial_depth=25 mm => 55.9 mm (P.C. Sharma, A Textbook of Production
///     Engineering, Ex. 4.17 p.228, seen in a companion: printed travel 255.9 mm less the 200 mm
///     length).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_peripheral_approach(
    diameter_m: f64,
    radial_depth_m: f64,
    peripheral_approach_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&peripheral_approach::FORMULA, &[diameter_m, radial_depth_m], peripheral_approach_m_out) }
}

/// gullet_peripheral_approach over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_peripheral_approach_array(
    count: usize,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    peripheral_approach_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&peripheral_approach::FORMULA, count, [diameter_m, radial_depth_m], peripheral_approach_m_out, status_out) }
}

/// Travel of a face mill from first contact to the full width of work that is centred on it.
///
///     l_a = (D - sqrt(D^2 - a_e^2))/2
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, width of the work [m]; 0 < radial_depth <= diameter.
/// face_approach_centred_m_out: l_a [m].
/// Valid for: work centred on the cutter axis; a finishing pass sweeps on for the whole diameter.
/// Source: circle and chord, derived.
/// Example: diameter=80 mm; radial_depth=50 mm => 8.77501001 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_approach_centred(
    diameter_m: f64,
    radial_depth_m: f64,
    face_approach_centred_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&face_approach_centred::FORMULA, &[diameter_m, radial_depth_m], face_approach_centred_m_out) }
}

/// gullet_face_approach_centred over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_approach_centred_array(
    count: usize,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    face_approach_centred_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&face_approach_centred::FORMULA, count, [diameter_m, radial_depth_m], face_approach_centred_m_out, status_out) }
}

/// Length of a drill's point.
///
///     l_p = D/(2 tan(sigma/2))
///
/// diameter_m: D, drill diameter [m]; diameter > 0.
/// point_angle_rad: sigma, point angle [rad]; 0 deg < point_angle <= 180 deg.
/// drill_point_length_m_out: l_p [m].
/// Valid for: straight lips, no allowance for the chisel edge.
/// Source: geometry, derived.
/// Example: diameter=25 mm; point_angle=118 deg => 7.511 mm (own arithmetic: 12.5/tan(59 deg) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drill_point_length(
    diameter_m: f64,
    point_angle_rad: f64,
    drill_point_length_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&drill_point_length::FORMULA, &[diameter_m, point_angle_rad], drill_point_length_m_out) }
}

/// gullet_drill_point_length over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drill_point_length_array(
    count: usize,
    diameter_m: *const f64,
    point_angle_rad: *const f64,
    drill_point_length_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&drill_point_length::FORMULA, count, [diameter_m, point_angle_rad], drill_point_length_m_out, status_out) }
}

/// Time of a travel at feed.
///
///     t = L/v_f
///
/// travel_m: L, travel with approach and overtravel [m]; travel >= 0.
/// feed_speed_m_per_s: v_f, feed speed [m/s]; feed_speed > 0.
/// cutting_time_s_out: t [s].
/// Valid for: constant feed; short fast feeds never reach it.
/// Source: definition.
/// Example: travel=650 mm; feed_speed=600 mm/min => 1.083 min (S. Kalpakjian, S. Schmid,
///     Manufacturing Engineering and Technology, Ex. 24.2 p.667, seen in a companion).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_time(
    travel_m: f64,
    feed_speed_m_per_s: f64,
    cutting_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&cutting_time::FORMULA, &[travel_m, feed_speed_m_per_s], cutting_time_s_out) }
}

/// gullet_cutting_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_time_array(
    count: usize,
    travel_m: *const f64,
    feed_speed_m_per_s: *const f64,
    cutting_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&cutting_time::FORMULA, count, [travel_m, feed_speed_m_per_s], cutting_time_s_out, status_out) }
}

/// Time of facing or parting at constant cutting speed.
///
///     t = pi (D_1^2 - D_2^2)/(4 v_c f)
///
/// outer_diameter_m: D_1, diameter where the cut starts [m]; outer_diameter >= 0.
/// inner_diameter_m: D_2, diameter where the cut ends [m]; 0 <= inner_diameter <= outer_diameter.
/// cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
/// facing_time_constant_speed_s_out: t [s].
/// Valid for: no limit of the spindle speed; towards the centre the spindle would run away: see
///     facing_time_limited_speed.
/// Source: derived: integral of the speed over the radius; example: P.C. Sharma, A Textbook of
///     Production Engineering, Ex. 4.13 p.220, seen in a companion.
/// Example: outer_diameter=250 mm; inner_diameter=100 mm; cutting_speed=27 m/min; feed_per_rev=0.8
///     mm => 1.91 min (P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.13 p.220,
///     seen in a companion).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_facing_time_constant_speed(
    outer_diameter_m: f64,
    inner_diameter_m: f64,
    cutting_speed_m_per_s: f64,
    feed_per_rev_m: f64,
    facing_time_constant_speed_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&facing_time_constant_speed::FORMULA, &[outer_diameter_m, inner_diameter_m, cutting_speed_m_per_s, feed_per_rev_m], facing_time_constant_speed_s_out) }
}

/// gullet_facing_time_constant_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_facing_time_constant_speed_array(
    count: usize,
    outer_diameter_m: *const f64,
    inner_diameter_m: *const f64,
    cutting_speed_m_per_s: *const f64,
    feed_per_rev_m: *const f64,
    facing_time_constant_speed_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&facing_time_constant_speed::FORMULA, count, [outer_diameter_m, inner_diameter_m, cutting_speed_m_per_s, feed_per_rev_m], facing_time_constant_speed_s_out, status_out) }
}

/// Time of facing or parting at constant cutting speed up to a limit of the spindle speed.
///
///     t = pi (D_1^2 - D_k^2)/(4 v_c f) + (D_k - D_2)/(2 f n_max); D_k = max(D_2, min(D_1, v_c/(pi
///         n_max)))
///
/// outer_diameter_m: D_1, diameter where the cut starts [m]; outer_diameter >= 0.
/// inner_diameter_m: D_2, diameter where the cut ends [m]; 0 <= inner_diameter <= outer_diameter.
/// cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
/// maximum_speed_rev_per_s: n_max, largest spindle speed [rev/s]; maximum_speed > 0.
/// facing_time_limited_speed_s_out: t [s].
/// Valid for: D_k is the diameter below which the spindle stays at its largest speed; n in
///     revolutions per second; no time for the spindle to gain speed.
/// Source: derived: integral of the speed over the radius.
/// Example: outer_diameter=100 mm; inner_diameter=0 mm; cutting_speed=200 m/min; feed_per_rev=0.2
///     mm; maximum_speed=3000 rpm => 0.2052 min (own arithmetic: 0.1875 min at constant cutting
///     speed down to 21.2 mm, then 0.0177 min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_facing_time_limited_speed(
    outer_diameter_m: f64,
    inner_diameter_m: f64,
    cutting_speed_m_per_s: f64,
    feed_per_rev_m: f64,
    maximum_speed_rev_per_s: f64,
    facing_time_limited_speed_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&facing_time_limited_speed::FORMULA, &[outer_diameter_m, inner_diameter_m, cutting_speed_m_per_s, feed_per_rev_m, maximum_speed_rev_per_s], facing_time_limited_speed_s_out) }
}

/// gullet_facing_time_limited_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_facing_time_limited_speed_array(
    count: usize,
    outer_diameter_m: *const f64,
    inner_diameter_m: *const f64,
    cutting_speed_m_per_s: *const f64,
    feed_per_rev_m: *const f64,
    maximum_speed_rev_per_s: *const f64,
    facing_time_limited_speed_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&facing_time_limited_speed::FORMULA, count, [outer_diameter_m, inner_diameter_m, cutting_speed_m_per_s, feed_per_rev_m, maximum_speed_rev_per_s], facing_time_limited_speed_s_out, status_out) }
}

/// Time of tapping one hole: in, out, and two reversals of the spindle.
///
///     t = (L + l_a)/(P n) + (L + l_a)/(P n_r) + 2 t_r
///
/// depth_m: L, depth of the thread [m]; depth >= 0.
/// approach_m: l_a, approach above the work [m]; approach >= 0.
/// lead_m: P, lead of the thread: pitch times starts [m]; lead > 0.
/// spindle_speed_rev_per_s: n, spindle speed on the way in [rev/s]; spindle_speed > 0.
/// reverse_speed_rev_per_s: n_r, spindle speed on the way out [rev/s]; reverse_speed > 0.
/// reversal_time_s: t_r, time of one reversal of the spindle [s]; reversal_time >= 0.
/// tapping_time_s_out: t [s].
/// Valid for: n in revolutions per second; two reversals a hole.
/// Source: derived: turns over speed.
/// Example: depth=20 mm; approach=4 mm; lead=1.5 mm; spindle_speed=320 rpm; reverse_speed=640 rpm;
///     reversal_time=0.5 s => 5.5 s (identity: 16 turns in 3.0 s, back in 1.5 s, two reversals).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tapping_time(
    depth_m: f64,
    approach_m: f64,
    lead_m: f64,
    spindle_speed_rev_per_s: f64,
    reverse_speed_rev_per_s: f64,
    reversal_time_s: f64,
    tapping_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tapping_time::FORMULA, &[depth_m, approach_m, lead_m, spindle_speed_rev_per_s, reverse_speed_rev_per_s, reversal_time_s], tapping_time_s_out) }
}

/// gullet_tapping_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tapping_time_array(
    count: usize,
    depth_m: *const f64,
    approach_m: *const f64,
    lead_m: *const f64,
    spindle_speed_rev_per_s: *const f64,
    reverse_speed_rev_per_s: *const f64,
    reversal_time_s: *const f64,
    tapping_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tapping_time::FORMULA, count, [depth_m, approach_m, lead_m, spindle_speed_rev_per_s, reverse_speed_rev_per_s, reversal_time_s], tapping_time_s_out, status_out) }
}

/// Time of a rapid move from rest to rest.
///
///     t = s/v + v/a for s >= v^2/a, t = 2 sqrt(s/a) for s < v^2/a
///
/// distance_m: s, distance [m]; distance >= 0.
/// rapid_speed_m_per_s: v, rapid speed [m/s]; rapid_speed > 0.
/// acceleration_m_per_s2: a, acceleration, the same to start and to stop [m/s2]; acceleration > 0.
/// rapid_time_s_out: t [s].
/// Valid for: constant acceleration, no limit of jerk; short moves never reach the rapid speed.
/// Source: derived: motion at constant acceleration.
/// Example: distance=50 mm; rapid_speed=30 m/min; acceleration=2.5 m/s2 => 0.28284 s (own
///     arithmetic: 2 sqrt(0.02) s, the speed not reached).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_rapid_time(
    distance_m: f64,
    rapid_speed_m_per_s: f64,
    acceleration_m_per_s2: f64,
    rapid_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&rapid_time::FORMULA, &[distance_m, rapid_speed_m_per_s, acceleration_m_per_s2], rapid_time_s_out) }
}

/// gullet_rapid_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_rapid_time_array(
    count: usize,
    distance_m: *const f64,
    rapid_speed_m_per_s: *const f64,
    acceleration_m_per_s2: *const f64,
    rapid_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&rapid_time::FORMULA, count, [distance_m, rapid_speed_m_per_s, acceleration_m_per_s2], rapid_time_s_out, status_out) }
}

/// Time of sawing through a section.
///
///     t = A/q
///
/// area_m2: A, area of the section [m2]; area >= 0.
/// cutting_rate_m2_per_s: q, area sawn per time [m2/s]; cutting_rate > 0.
/// band_saw_time_s_out: t [s].
/// Valid for: mean rate over the section; for a tube the area of the wall, not of the solid.
/// Source: definition; rates from band-saw charts.
/// Example: area=28.2743338823081391 in2; cutting_rate=2.5 in2/min => 11.31 min (identity: 6 in
///     round at 2.5 in2/min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_band_saw_time(
    area_m2: f64,
    cutting_rate_m2_per_s: f64,
    band_saw_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&band_saw_time::FORMULA, &[area_m2, cutting_rate_m2_per_s], band_saw_time_s_out) }
}

/// gullet_band_saw_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_band_saw_time_array(
    count: usize,
    area_m2: *const f64,
    cutting_rate_m2_per_s: *const f64,
    band_saw_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&band_saw_time::FORMULA, count, [area_m2, cutting_rate_m2_per_s], band_saw_time_s_out, status_out) }
}

/// Share of the tool change that falls on one part.
///
///     t = t_ch q t_c/T
///
/// cutting_time_s: t_c, cutting time a part [s]; cutting_time >= 0.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// tool_change_time_per_part_s_out: t [s].
/// Valid for: mean over many parts; edges are changed at the end of their life, also within a part.
/// Source: definition; example: P.C. Sharma, A Textbook of Production Engineering, Ex. 4.7 p.209,
///     seen in a companion.
/// Example: cutting_time=2 min; change_time=10 min; tool_life=240 min => 0.083 min (P.C. Sharma, A
///     Textbook of Production Engineering, 11th ed., Ex. 4.7 p.209, seen in a companion).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tool_change_time_per_part(
    cutting_time_s: f64,
    change_time_s: f64,
    tool_life_s: f64,
    in_cut_share: f64,
    tool_change_time_per_part_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tool_change_time_per_part::FORMULA, &[cutting_time_s, change_time_s, tool_life_s, in_cut_share], tool_change_time_per_part_s_out) }
}

/// gullet_tool_change_time_per_part over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tool_change_time_per_part_array(
    count: usize,
    cutting_time_s: *const f64,
    change_time_s: *const f64,
    tool_life_s: *const f64,
    in_cut_share: *const f64,
    tool_change_time_per_part_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tool_change_time_per_part::FORMULA, count, [cutting_time_s, change_time_s, tool_life_s, in_cut_share], tool_change_time_per_part_s_out, status_out) }
}

/// Standard time: the normal time with an allowance.
///
///     t_s = t (1 + A)
///
/// normal_time_s: t, normal time [s]; normal_time >= 0.
/// allowance: A, allowance as a share of the normal time [-]; allowance >= 0.
/// standard_time_s_out: t_s [s].
/// Valid for: allowance as a share of the normal time; a share of the standard time would make it
///     t/(1 - A).
/// Source: definition.
/// Example: normal_time=8 min; allowance=15 % => 9.2 min (identity: 8 x 1.15 min, not 8/0.85).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_standard_time(
    normal_time_s: f64,
    allowance: f64,
    standard_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&standard_time::FORMULA, &[normal_time_s, allowance], standard_time_s_out) }
}

/// gullet_standard_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_standard_time_array(
    count: usize,
    normal_time_s: *const f64,
    allowance: *const f64,
    standard_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&standard_time::FORMULA, count, [normal_time_s, allowance], standard_time_s_out, status_out) }
}
