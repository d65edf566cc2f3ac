// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::hole::*;

/// Travel at feed of a drill through the work.
///
///     L = t + l_p + l_a + l_u
///
/// thickness_m: t, thickness of the work along the hole [m]; thickness > 0.
/// point_length_m: l_p, length of the drill's point [m]; point_length >= 0.
/// approach_m: l_a, clearance above the work from which the drill feeds [m]; approach >= 0.
/// overtravel_m: l_u, travel past the point where the full diameter breaks through [m]; overtravel
///     >= 0.
/// through_hole_travel_m_out: L [m].
/// Valid for: flat faces square to the drill; the point counts once: it must pass the far face, on
///     the near one it only starts the cut.
/// Source: definition; textbooks on manufacturing give travel as thickness and point, from memory.
/// Example: thickness=15 mm; point_length=6 mm; approach=2 mm; overtravel=1 mm => 24 mm (own
///     arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_through_hole_travel(
    thickness_m: f64,
    point_length_m: f64,
    approach_m: f64,
    overtravel_m: f64,
    through_hole_travel_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&through_hole_travel::FORMULA, &[thickness_m, point_length_m, approach_m, overtravel_m], through_hole_travel_m_out) }
}

/// gullet_through_hole_travel over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_through_hole_travel_array(
    count: usize,
    thickness_m: *const f64,
    point_length_m: *const f64,
    approach_m: *const f64,
    overtravel_m: *const f64,
    through_hole_travel_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&through_hole_travel::FORMULA, count, [thickness_m, point_length_m, approach_m, overtravel_m], through_hole_travel_m_out, status_out) }
}

/// Travel at feed of a drill into a blind hole whose depth counts at full diameter.
///
///     L = l + l_p + l_a
///
/// depth_m: l, depth of the hole at full diameter, without the cone of the point [m]; depth > 0.
/// point_length_m: l_p, length of the drill's point [m]; point_length >= 0.
/// approach_m: l_a, clearance above the work from which the drill feeds [m]; approach >= 0.
/// blind_hole_travel_m_out: L [m].
/// Valid for: a depth that a drawing gives to the tip has the point in it: see full_diameter_depth.
/// Source: definition.
/// Example: depth=60 mm; point_length=4 mm; approach=2 mm => 66 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_blind_hole_travel(
    depth_m: f64,
    point_length_m: f64,
    approach_m: f64,
    blind_hole_travel_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&blind_hole_travel::FORMULA, &[depth_m, point_length_m, approach_m], blind_hole_travel_m_out) }
}

/// gullet_blind_hole_travel over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_blind_hole_travel_array(
    count: usize,
    depth_m: *const f64,
    point_length_m: *const f64,
    approach_m: *const f64,
    blind_hole_travel_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&blind_hole_travel::FORMULA, count, [depth_m, point_length_m, approach_m], blind_hole_travel_m_out, status_out) }
}

/// Depth at full diameter of a blind hole whose depth counts to the tip of the drill.
///
///     l = l_t - l_p
///
/// tip_depth_m: l_t, depth of the hole to the tip of the drill [m]; tip_depth > 0.
/// point_length_m: l_p, length of the drill's point [m]; 0 <= point_length <= tip_depth.
/// full_diameter_depth_m_out: l [m].
/// Valid for: the hole is deeper than the point is long.
/// Source: definition.
/// Example: tip_depth=20 mm; point_length=3 mm => 17 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_full_diameter_depth(
    tip_depth_m: f64,
    point_length_m: f64,
    full_diameter_depth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&full_diameter_depth::FORMULA, &[tip_depth_m, point_length_m], full_diameter_depth_m_out) }
}

/// gullet_full_diameter_depth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_full_diameter_depth_array(
    count: usize,
    tip_depth_m: *const f64,
    point_length_m: *const f64,
    full_diameter_depth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&full_diameter_depth::FORMULA, count, [tip_depth_m, point_length_m], full_diameter_depth_m_out, status_out) }
}

/// Pecks of a drill for a travel.
///
///     N = ceil(L/q)
///
/// travel_m: L, travel at feed from the plane where the pecks start to the bottom [m]; travel > 0.
/// peck_m: q, depth of a peck [m]; peck > 0.
/// peck_count_out: N [-].
/// Valid for: equal pecks, the last one what is left; a quotient within 1e-9, relative, above a
///     whole number counts as that number.
/// Source: definition.
/// Example: travel=30 mm; peck=8 mm => 4 (own arithmetic: 3.75 rounded up).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_peck_count(
    travel_m: f64,
    peck_m: f64,
    peck_count_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&peck_count::FORMULA, &[travel_m, peck_m], peck_count_out) }
}

/// gullet_peck_count over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_peck_count_array(
    count: usize,
    travel_m: *const f64,
    peck_m: *const f64,
    peck_count_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&peck_count::FORMULA, count, [travel_m, peck_m], peck_count_out, status_out) }
}

/// Time of drilling a hole in pecks, out of the hole after each.
///
///     t = (L + (N - 1) s)/v_f + N t_d + t_L + T; N = ceil(L/q); t_L = time of a rapid move over L;
///         T = sum over i from 1 to N - 1 of the rapid moves over i q and over i q - s, at v and a
///
/// travel_m: L, travel at feed from the retract plane to the bottom [m]; travel > 0.
/// peck_m: q, depth of a peck [m]; peck > 0.
/// reentry_clearance_m: s, distance above the last bottom where the feed starts again [m]; 0 <=
///     reentry_clearance <= peck.
/// feed_speed_m_per_s: v_f, feed speed [m/s]; feed_speed > 0.
/// rapid_speed_m_per_s: v, rapid speed [m/s]; rapid_speed > 0.
/// acceleration_m_per_s2: a, acceleration of the rapid moves [m/s2]; acceleration > 0.
/// dwell_s: t_d, dwell at the bottom of each peck [s]; dwell >= 0.
/// travel <= 1000*peck.
/// peck_cycle_time_s_out: t [s].
/// Valid for: pecks measured from the retract plane, to which the drill goes back each time and at
///     the end; t_r is rapid_time with v and a: short moves never reach the rapid speed; no time for
///     the spindle or the control.
/// Source: derived: the moves of the cycle, each by motion at constant acceleration.
/// Example: travel=30 mm; peck=10 mm; reentry_clearance=1 mm; feed_speed=120 mm/min; rapid_speed=6
///     m/min; acceleration=10 m/s2; dwell=0.5 s => 18.43 s (own arithmetic: 16 s of feed, 1.5 s of
///     dwell, rapids over 10, 9, 20, 19 and 30 mm at 0.1 m/s with 0.01 s of ramps each).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_peck_cycle_time(
    travel_m: f64,
    peck_m: f64,
    reentry_clearance_m: f64,
    feed_speed_m_per_s: f64,
    rapid_speed_m_per_s: f64,
    acceleration_m_per_s2: f64,
    dwell_s: f64,
    peck_cycle_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&peck_cycle_time::FORMULA, &[travel_m, peck_m, reentry_clearance_m, feed_speed_m_per_s, rapid_speed_m_per_s, acceleration_m_per_s2, dwell_s], peck_cycle_time_s_out) }
}

/// gullet_peck_cycle_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_peck_cycle_time_array(
    count: usize,
    travel_m: *const f64,
    peck_m: *const f64,
    reentry_clearance_m: *const f64,
    feed_speed_m_per_s: *const f64,
    rapid_speed_m_per_s: *const f64,
    acceleration_m_per_s2: *const f64,
    dwell_s: *const f64,
    peck_cycle_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&peck_cycle_time::FORMULA, count, [travel_m, peck_m, reentry_clearance_m, feed_speed_m_per_s, rapid_speed_m_per_s, acceleration_m_per_s2, dwell_s], peck_cycle_time_s_out, status_out) }
}

/// Time of drilling a hole in pecks with a short retract after each, that breaks the chip.
///
///     t = (L + (N - 1) d)/v_f + N t_d + (N - 1) t_r + t_L; N = ceil(L/q); t_r = d/v + v/a for d >=
///         v^2/a, t_r = 2 sqrt(d/a) for d < v^2/a; t_L = L/v + v/a for L >= v^2/a, t_L = 2 sqrt(L/a)
///         for L < v^2/a
///
/// travel_m: L, travel at feed from the retract plane to the bottom [m]; travel > 0.
/// peck_m: q, depth of a peck [m]; peck > 0.
/// retract_m: d, retract after each peck, at rapid speed [m]; 0 <= retract <= peck.
/// feed_speed_m_per_s: v_f, feed speed [m/s]; feed_speed > 0.
/// rapid_speed_m_per_s: v, rapid speed [m/s]; rapid_speed > 0.
/// acceleration_m_per_s2: a, acceleration of the rapid moves [m/s2]; acceleration > 0.
/// dwell_s: t_d, dwell at the bottom of each peck [s]; dwell >= 0.
/// chip_break_cycle_time_s_out: t [s].
/// Valid for: back to the bottom at feed; out of the hole only at the end; t_r is rapid_time with v
///     and a; no time for the spindle or the control.
/// Source: derived: the moves of the cycle, each by motion at constant acceleration.
/// Example: travel=30 mm; peck=10 mm; retract=1 mm; feed_speed=120 mm/min; rapid_speed=6 m/min;
///     acceleration=10 m/s2 => 16.35 s (own arithmetic: 16 s of feed, twice 0.02 s back, 0.31 s out;
///     ramps of 0.01 s at 0.1 m/s).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chip_break_cycle_time(
    travel_m: f64,
    peck_m: f64,
    retract_m: f64,
    feed_speed_m_per_s: f64,
    rapid_speed_m_per_s: f64,
    acceleration_m_per_s2: f64,
    dwell_s: f64,
    chip_break_cycle_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&chip_break_cycle_time::FORMULA, &[travel_m, peck_m, retract_m, feed_speed_m_per_s, rapid_speed_m_per_s, acceleration_m_per_s2, dwell_s], chip_break_cycle_time_s_out) }
}

/// gullet_chip_break_cycle_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_chip_break_cycle_time_array(
    count: usize,
    travel_m: *const f64,
    peck_m: *const f64,
    retract_m: *const f64,
    feed_speed_m_per_s: *const f64,
    rapid_speed_m_per_s: *const f64,
    acceleration_m_per_s2: *const f64,
    dwell_s: *const f64,
    chip_break_cycle_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&chip_break_cycle_time::FORMULA, count, [travel_m, peck_m, retract_m, feed_speed_m_per_s, rapid_speed_m_per_s, acceleration_m_per_s2, dwell_s], chip_break_cycle_time_s_out, status_out) }
}

/// Time of a hole whose tool goes in at feed, dwells, and comes out at feed.
///
///     t = L/v_f + t_d + L/(k v_f)
///
/// travel_m: L, travel at feed from the clearance plane to the bottom [m]; travel > 0.
/// feed_speed_m_per_s: v_f, feed speed on the way in [m/s]; feed_speed > 0.
/// return_ratio: k, feed speed on the way out over that on the way in [-]; return_ratio > 0.
/// dwell_s: t_d, dwell at the bottom [s]; dwell >= 0.
/// feed_out_cycle_time_s_out: t [s].
/// Valid for: reaming and boring with the spindle turning forward both ways; no time for the
///     control.
/// Source: definition.
/// Example: travel=30 mm; feed_speed=60 mm/min; return_ratio=2; dwell=1 s => 46 s (own arithmetic:
///     30 s in, 1 s, 15 s out).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_out_cycle_time(
    travel_m: f64,
    feed_speed_m_per_s: f64,
    return_ratio: f64,
    dwell_s: f64,
    feed_out_cycle_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_out_cycle_time::FORMULA, &[travel_m, feed_speed_m_per_s, return_ratio, dwell_s], feed_out_cycle_time_s_out) }
}

/// gullet_feed_out_cycle_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_out_cycle_time_array(
    count: usize,
    travel_m: *const f64,
    feed_speed_m_per_s: *const f64,
    return_ratio: *const f64,
    dwell_s: *const f64,
    feed_out_cycle_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_out_cycle_time::FORMULA, count, [travel_m, feed_speed_m_per_s, return_ratio, dwell_s], feed_out_cycle_time_s_out, status_out) }
}

/// Depth of a hole over its diameter.
///
///     k_l = l/D
///
/// depth_m: l, depth of the hole at full diameter [m]; depth >= 0.
/// diameter_m: D, diameter of the hole [m]; diameter > 0.
/// hole_depth_ratio_out: k_l [-].
/// Valid for: any hole.
/// Source: definition.
/// Example: depth=30 mm; diameter=8 mm => 3.75 (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_hole_depth_ratio(
    depth_m: f64,
    diameter_m: f64,
    hole_depth_ratio_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&hole_depth_ratio::FORMULA, &[depth_m, diameter_m], hole_depth_ratio_out) }
}

/// gullet_hole_depth_ratio over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_hole_depth_ratio_array(
    count: usize,
    depth_m: *const f64,
    diameter_m: *const f64,
    hole_depth_ratio_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&hole_depth_ratio::FORMULA, count, [depth_m, diameter_m], hole_depth_ratio_out, status_out) }
}

/// Depth of feed from first contact with the hole's rim to the diameter of a countersink.
///
///     z = (D - d)/(2 tan(sigma/2))
///
/// countersink_diameter_m: D, diameter of the countersink at the surface [m]; countersink_diameter >
///     0.
/// hole_diameter_m: d, diameter of the hole [m]; 0 <= hole_diameter <= countersink_diameter.
/// included_angle_rad: sigma, included angle of the countersink [rad]; 0 deg < included_angle < 180
///     deg.
/// countersink_depth_m_out: z [m].
/// Valid for: a hole square to a flat surface, the tip of the countersink smaller than the hole.
/// Source: geometry, derived.
/// Example: countersink_diameter=12 mm; hole_diameter=6 mm; included_angle=90 deg => 3 mm (own
///     arithmetic: tan 45 deg = 1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_countersink_depth(
    countersink_diameter_m: f64,
    hole_diameter_m: f64,
    included_angle_rad: f64,
    countersink_depth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&countersink_depth::FORMULA, &[countersink_diameter_m, hole_diameter_m, included_angle_rad], countersink_depth_m_out) }
}

/// gullet_countersink_depth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_countersink_depth_array(
    count: usize,
    countersink_diameter_m: *const f64,
    hole_diameter_m: *const f64,
    included_angle_rad: *const f64,
    countersink_depth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&countersink_depth::FORMULA, count, [countersink_diameter_m, hole_diameter_m, included_angle_rad], countersink_depth_m_out, status_out) }
}

/// Diameter at the surface that a countersink reaches at a depth from first contact with the hole's
///     rim.
///
///     D = d + 2 z tan(sigma/2)
///
/// depth_m: z, depth of feed from first contact with the hole's rim [m]; depth >= 0.
/// hole_diameter_m: d, diameter of the hole [m]; hole_diameter >= 0.
/// included_angle_rad: sigma, included angle of the countersink [rad]; 0 deg < included_angle < 180
///     deg.
/// countersink_diameter_m_out: D [m].
/// Valid for: a hole square to a flat surface, the tip of the countersink smaller than the hole.
/// Source: geometry, derived.
/// Example: depth=3 mm; hole_diameter=6 mm; included_angle=90 deg => 12 mm (own arithmetic: tan 45
///     deg = 1).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_countersink_diameter(
    depth_m: f64,
    hole_diameter_m: f64,
    included_angle_rad: f64,
    countersink_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&countersink_diameter::FORMULA, &[depth_m, hole_diameter_m, included_angle_rad], countersink_diameter_m_out) }
}

/// gullet_countersink_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_countersink_diameter_array(
    count: usize,
    depth_m: *const f64,
    hole_diameter_m: *const f64,
    included_angle_rad: *const f64,
    countersink_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&countersink_diameter::FORMULA, count, [depth_m, hole_diameter_m, included_angle_rad], countersink_diameter_m_out, status_out) }
}
