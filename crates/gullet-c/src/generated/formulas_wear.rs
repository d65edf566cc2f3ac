// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::wear::*;

/// Tool life at a cutting speed.
///
///     T = 1 min (C/v_c)^(1/n)
///
/// cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
/// taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// tool_life_s_out: T [s].
/// Valid for: v_c T^n = C; one tool, work material, cutting fluid and wear criterion, within the
///     speeds tested.
/// Source: F.W. Taylor's life equation, from memory.
/// Example: cutting_speed=100 m/min; taylor_speed=400 m/min; taylor_exponent=0.25 => 256 min
///     (identity: 4^4 min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tool_life(
    cutting_speed_m_per_s: f64,
    taylor_speed_m_per_s: f64,
    taylor_exponent: f64,
    tool_life_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tool_life::FORMULA, &[cutting_speed_m_per_s, taylor_speed_m_per_s, taylor_exponent], tool_life_s_out) }
}

/// gullet_tool_life over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tool_life_array(
    count: usize,
    cutting_speed_m_per_s: *const f64,
    taylor_speed_m_per_s: *const f64,
    taylor_exponent: *const f64,
    tool_life_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tool_life::FORMULA, count, [cutting_speed_m_per_s, taylor_speed_m_per_s, taylor_exponent], tool_life_s_out, status_out) }
}

/// Cutting speed that gives a tool life.
///
///     v_c = C (T/1 min)^(-n)
///
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// speed_for_life_m_per_s_out: v_c [m/s].
/// Valid for: v_c T^n = C; one tool, work material, cutting fluid and wear criterion, within the
///     speeds tested.
/// Source: F.W. Taylor's life equation, from memory.
/// Example: tool_life=16 min; taylor_speed=400 m/min; taylor_exponent=0.25 => 200 m/min (identity:
///     400/2).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_speed_for_life(
    tool_life_s: f64,
    taylor_speed_m_per_s: f64,
    taylor_exponent: f64,
    speed_for_life_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&speed_for_life::FORMULA, &[tool_life_s, taylor_speed_m_per_s, taylor_exponent], speed_for_life_m_per_s_out) }
}

/// gullet_speed_for_life over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_speed_for_life_array(
    count: usize,
    tool_life_s: *const f64,
    taylor_speed_m_per_s: *const f64,
    taylor_exponent: *const f64,
    speed_for_life_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&speed_for_life::FORMULA, count, [tool_life_s, taylor_speed_m_per_s, taylor_exponent], speed_for_life_m_per_s_out, status_out) }
}

/// Taylor's exponent from the lives at two cutting speeds.
///
///     n = ln(v_1/v_2)/ln(T_2/T_1)
///
/// first_speed_m_per_s: v_1, cutting speed of the first test [m/s]; first_speed > 0.
/// first_life_s: T_1, tool life of the first test [s]; first_life > 0.
/// second_speed_m_per_s: v_2, cutting speed of the second test [m/s]; second_speed > 0.
/// second_life_s: T_2, tool life of the second test [s]; second_life > 0.
/// the higher speed has the shorter life: (first_speed - second_speed)*(second_life - first_life) >
///     0.
/// taylor_exponent_from_two_out: n [-].
/// Valid for: exponent of T in v T^n = C; two tests say nothing of the spread: a fit over many is
///     better.
/// Source: derived from v T^n = C; example: P.C. Sharma, A Textbook of Production Engineering, Ex.
///     14.7 p.568, seen in a companion.
/// Example: first_speed=25 m/min; first_life=90 min; second_speed=35 m/min; second_life=20 min =>
///     0.224 (P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 14.7 p.568, seen in a
///     companion).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_exponent_from_two(
    first_speed_m_per_s: f64,
    first_life_s: f64,
    second_speed_m_per_s: f64,
    second_life_s: f64,
    taylor_exponent_from_two_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&taylor_exponent_from_two::FORMULA, &[first_speed_m_per_s, first_life_s, second_speed_m_per_s, second_life_s], taylor_exponent_from_two_out) }
}

/// gullet_taylor_exponent_from_two over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_exponent_from_two_array(
    count: usize,
    first_speed_m_per_s: *const f64,
    first_life_s: *const f64,
    second_speed_m_per_s: *const f64,
    second_life_s: *const f64,
    taylor_exponent_from_two_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&taylor_exponent_from_two::FORMULA, count, [first_speed_m_per_s, first_life_s, second_speed_m_per_s, second_life_s], taylor_exponent_from_two_out, status_out) }
}

/// Cutting speed for a life of one minute from the lives at two cutting speeds.
///
///     C = v_1 (T_1/1 min)^n; n = ln(v_1/v_2)/ln(T_2/T_1)
///
/// first_speed_m_per_s: v_1, cutting speed of the first test [m/s]; first_speed > 0.
/// first_life_s: T_1, tool life of the first test [s]; first_life > 0.
/// second_speed_m_per_s: v_2, cutting speed of the second test [m/s]; second_speed > 0.
/// second_life_s: T_2, tool life of the second test [s]; second_life > 0.
/// the higher speed has the shorter life: (first_speed - second_speed)*(second_life - first_life) >
///     0.
/// taylor_speed_from_two_m_per_s_out: C [m/s].
/// Valid for: v T^n = C; two tests say nothing of the spread: a fit over many is better.
/// Source: derived from v T^n = C; example: P.C. Sharma, A Textbook of Production Engineering, Ex.
///     14.7 p.568, seen in a companion.
/// Example: first_speed=25 m/min; first_life=90 min; second_speed=35 m/min; second_life=20 min =>
///     68.4 m/min (P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 14.7 p.568, seen
///     in a companion).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_speed_from_two(
    first_speed_m_per_s: f64,
    first_life_s: f64,
    second_speed_m_per_s: f64,
    second_life_s: f64,
    taylor_speed_from_two_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&taylor_speed_from_two::FORMULA, &[first_speed_m_per_s, first_life_s, second_speed_m_per_s, second_life_s], taylor_speed_from_two_m_per_s_out) }
}

/// gullet_taylor_speed_from_two over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_speed_from_two_array(
    count: usize,
    first_speed_m_per_s: *const f64,
    first_life_s: *const f64,
    second_speed_m_per_s: *const f64,
    second_life_s: *const f64,
    taylor_speed_from_two_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&taylor_speed_from_two::FORMULA, count, [first_speed_m_per_s, first_life_s, second_speed_m_per_s, second_life_s], taylor_speed_from_two_m_per_s_out, status_out) }
}

/// Exponent of the feed in the extended Taylor equation from the lives at two feeds and one cutting
///     speed.
///
///     a = n ln(T_1/T_2)/ln(f_2/f_1)
///
/// first_feed_m: f_1, feed of the first test [m]; first_feed > 0.
/// first_life_s: T_1, tool life of the first test [s]; first_life > 0.
/// second_feed_m: f_2, feed of the second test [m]; second_feed > 0.
/// second_life_s: T_2, tool life of the second test [s]; second_life > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// the larger feed has the shorter life: (first_feed - second_feed)*(second_life - first_life) > 0.
/// feed_exponent_from_two_out: a [-].
/// Valid for: exponent of f in v T^n f^a = C; both tests at one cutting speed and depth; the form T
///     = K v^(-1/n) f^(-p) has p = a/n.
/// Source: derived from v T^n f^a = C: T_1^n f_1^a = T_2^n f_2^a.
/// Example: first_feed=0.2 mm; first_life=64 min; second_feed=0.4 mm; second_life=16 min;
///     taylor_exponent=0.25 => 0.5 (own arithmetic: 0.25 ln 4/ln 2).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_exponent_from_two(
    first_feed_m: f64,
    first_life_s: f64,
    second_feed_m: f64,
    second_life_s: f64,
    taylor_exponent: f64,
    feed_exponent_from_two_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_exponent_from_two::FORMULA, &[first_feed_m, first_life_s, second_feed_m, second_life_s, taylor_exponent], feed_exponent_from_two_out) }
}

/// gullet_feed_exponent_from_two over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_exponent_from_two_array(
    count: usize,
    first_feed_m: *const f64,
    first_life_s: *const f64,
    second_feed_m: *const f64,
    second_life_s: *const f64,
    taylor_exponent: *const f64,
    feed_exponent_from_two_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_exponent_from_two::FORMULA, count, [first_feed_m, first_life_s, second_feed_m, second_life_s, taylor_exponent], feed_exponent_from_two_out, status_out) }
}

/// Tool life relative to a reference cut at another speed, feed and depth.
///
///     T = T_ref (r_v r_f^a r_d^b)^(-1/n)
///
/// reference_life_s: T_ref, tool life of the reference cut [s]; reference_life > 0.
/// speed_ratio: r_v, cutting speed over that of the reference cut [-]; speed_ratio > 0.
/// feed_ratio: r_f, feed over that of the reference cut [-]; feed_ratio > 0.
/// depth_ratio: r_d, depth of cut over that of the reference cut [-]; depth_ratio > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// feed_exponent: a, exponent of the feed [-]; feed_exponent: any finite value.
/// depth_exponent: b, exponent of the depth [-]; depth_exponent: any finite value.
/// scaled_tool_life_s_out: T [s].
/// Valid for: v T^n f^a d^b = C, exponents of this form: the form T = K v^(-1/n) f^(-p) has a = n p;
///     within the range tested.
/// Source: extended Taylor equation, from memory; example: P.C. Sharma, A Textbook of Production
///     Engineering, Ex. 14.4 p.566, seen in a companion.
/// Example: reference_life=60 min; speed_ratio=1.2; feed_ratio=1.2; depth_ratio=1.2;
///     taylor_exponent=0.13; feed_exponent=0.77; depth_exponent=0.37 => 2.98 min (P.C. Sharma, A
///     Textbook of Production Engineering, 11th ed., Ex. 14.4 p.566, seen in a companion).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_scaled_tool_life(
    reference_life_s: f64,
    speed_ratio: f64,
    feed_ratio: f64,
    depth_ratio: f64,
    taylor_exponent: f64,
    feed_exponent: f64,
    depth_exponent: f64,
    scaled_tool_life_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&scaled_tool_life::FORMULA, &[reference_life_s, speed_ratio, feed_ratio, depth_ratio, taylor_exponent, feed_exponent, depth_exponent], scaled_tool_life_s_out) }
}

/// gullet_scaled_tool_life over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_scaled_tool_life_array(
    count: usize,
    reference_life_s: *const f64,
    speed_ratio: *const f64,
    feed_ratio: *const f64,
    depth_ratio: *const f64,
    taylor_exponent: *const f64,
    feed_exponent: *const f64,
    depth_exponent: *const f64,
    scaled_tool_life_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&scaled_tool_life::FORMULA, count, [reference_life_s, speed_ratio, feed_ratio, depth_ratio, taylor_exponent, feed_exponent, depth_exponent], scaled_tool_life_s_out, status_out) }
}

/// Tool life at a cutting speed, feed and depth of cut (extended Taylor equation).
///
///     T = 1 min (C/(v_c (f/f_0)^a (a_p/a_0)^b))^(1/n)
///
/// cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
/// feed_per_rev_m: f, feed [m]; feed_per_rev > 0.
/// depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut > 0.
/// taylor_speed_m_per_s: C, cutting speed for a life of one minute at the reference feed and depth
///     [m/s]; taylor_speed > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// feed_exponent: a, exponent of the feed [-]; feed_exponent: any finite value.
/// depth_exponent: b, exponent of the depth [-]; depth_exponent: any finite value.
/// reference_feed_m: f_0, feed that C is for [m]; reference_feed > 0.
/// reference_depth_m: a_0, depth of cut that C is for [m]; reference_depth > 0.
/// extended_tool_life_s_out: T [s].
/// Valid for: v_c T^n (f/f_0)^a (a_p/a_0)^b = C: exponents of this form, C for a life of one minute
///     at the reference feed and depth; f_0 = a_0 = 1 mm where f and a_p stand in mm in the source's
///     equation, 1 in where in inches; within the range tested.
/// Source: extended Taylor equation, from memory.
/// Example: cutting_speed=100 m/min; feed_per_rev=0.4 mm; depth_of_cut=2 mm; taylor_speed=400 m/min;
///     taylor_exponent=0.25; feed_exponent=0.5; depth_exponent=0.25; reference_feed=0.1 mm;
///     reference_depth=2 mm => 16 min (identity: (4/4^0.5)^4 min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_extended_tool_life(
    cutting_speed_m_per_s: f64,
    feed_per_rev_m: f64,
    depth_of_cut_m: f64,
    taylor_speed_m_per_s: f64,
    taylor_exponent: f64,
    feed_exponent: f64,
    depth_exponent: f64,
    reference_feed_m: f64,
    reference_depth_m: f64,
    extended_tool_life_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&extended_tool_life::FORMULA, &[cutting_speed_m_per_s, feed_per_rev_m, depth_of_cut_m, taylor_speed_m_per_s, taylor_exponent, feed_exponent, depth_exponent, reference_feed_m, reference_depth_m], extended_tool_life_s_out) }
}

/// gullet_extended_tool_life over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_extended_tool_life_array(
    count: usize,
    cutting_speed_m_per_s: *const f64,
    feed_per_rev_m: *const f64,
    depth_of_cut_m: *const f64,
    taylor_speed_m_per_s: *const f64,
    taylor_exponent: *const f64,
    feed_exponent: *const f64,
    depth_exponent: *const f64,
    reference_feed_m: *const f64,
    reference_depth_m: *const f64,
    extended_tool_life_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&extended_tool_life::FORMULA, count, [cutting_speed_m_per_s, feed_per_rev_m, depth_of_cut_m, taylor_speed_m_per_s, taylor_exponent, feed_exponent, depth_exponent, reference_feed_m, reference_depth_m], extended_tool_life_s_out, status_out) }
}

/// Cutting speed that gives a tool life at a feed and depth of cut (extended Taylor equation).
///
///     v_c = C (T/1 min)^(-n) (f/f_0)^(-a) (a_p/a_0)^(-b)
///
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// feed_per_rev_m: f, feed [m]; feed_per_rev > 0.
/// depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut > 0.
/// taylor_speed_m_per_s: C, cutting speed for a life of one minute at the reference feed and depth
///     [m/s]; taylor_speed > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// feed_exponent: a, exponent of the feed [-]; feed_exponent: any finite value.
/// depth_exponent: b, exponent of the depth [-]; depth_exponent: any finite value.
/// reference_feed_m: f_0, feed that C is for [m]; reference_feed > 0.
/// reference_depth_m: a_0, depth of cut that C is for [m]; reference_depth > 0.
/// extended_speed_for_life_m_per_s_out: v_c [m/s].
/// Valid for: v_c T^n (f/f_0)^a (a_p/a_0)^b = C: exponents of this form, C for a life of one minute
///     at the reference feed and depth; f_0 = a_0 = 1 mm where f and a_p stand in mm in the source's
///     equation, 1 in where in inches; within the range tested.
/// Source: extended Taylor equation, from memory.
/// Example: tool_life=16 min; feed_per_rev=0.4 mm; depth_of_cut=2 mm; taylor_speed=400 m/min;
///     taylor_exponent=0.25; feed_exponent=0.5; depth_exponent=0.25; reference_feed=0.1 mm;
///     reference_depth=2 mm => 100 m/min (identity: 400/2/2).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_extended_speed_for_life(
    tool_life_s: f64,
    feed_per_rev_m: f64,
    depth_of_cut_m: f64,
    taylor_speed_m_per_s: f64,
    taylor_exponent: f64,
    feed_exponent: f64,
    depth_exponent: f64,
    reference_feed_m: f64,
    reference_depth_m: f64,
    extended_speed_for_life_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&extended_speed_for_life::FORMULA, &[tool_life_s, feed_per_rev_m, depth_of_cut_m, taylor_speed_m_per_s, taylor_exponent, feed_exponent, depth_exponent, reference_feed_m, reference_depth_m], extended_speed_for_life_m_per_s_out) }
}

/// gullet_extended_speed_for_life over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_extended_speed_for_life_array(
    count: usize,
    tool_life_s: *const f64,
    feed_per_rev_m: *const f64,
    depth_of_cut_m: *const f64,
    taylor_speed_m_per_s: *const f64,
    taylor_exponent: *const f64,
    feed_exponent: *const f64,
    depth_exponent: *const f64,
    reference_feed_m: *const f64,
    reference_depth_m: *const f64,
    extended_speed_for_life_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&extended_speed_for_life::FORMULA, count, [tool_life_s, feed_per_rev_m, depth_of_cut_m, taylor_speed_m_per_s, taylor_exponent, feed_exponent, depth_exponent, reference_feed_m, reference_depth_m], extended_speed_for_life_m_per_s_out, status_out) }
}

/// Tool life relative to a reference cut, by the powers of the equation that is solved for the life.
///
///     T = T_ref r_v^(-p) r_f^(-q) r_d^(-r)
///
/// reference_life_s: T_ref, tool life of the reference cut: K of the equation where speed, feed and
///     depth of it are 1 [s]; reference_life > 0.
/// speed_ratio: r_v, cutting speed over that of the reference cut [-]; speed_ratio > 0.
/// feed_ratio: r_f, feed over that of the reference cut [-]; feed_ratio > 0.
/// depth_ratio: r_d, depth of cut over that of the reference cut [-]; depth_ratio > 0.
/// speed_power: p, power of the cutting speed, 1/n [-]; speed_power > 1.
/// feed_power: q, power of the feed, 1/n_1 [-]; feed_power: any finite value.
/// depth_power: r, power of the depth, 1/n_2 [-]; depth_power: any finite value.
/// tool_life_by_powers_s_out: T [s].
/// Valid for: T = K v^(-1/n) f^(-1/n_1) d^(-1/n_2), also written v^p f^q d^r T = K: not the
///     exponents of v T^n f^a d^b = C, which are a = q/p and b = r/p; within the range tested.
/// Source: extended Taylor equation solved for the life, from memory.
/// Example: reference_life=64 min; speed_ratio=2; feed_ratio=2; depth_ratio=2; speed_power=4;
///     feed_power=1; depth_power=0.5 => 1.41421356237 min (identity: 64/2^5.5 min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tool_life_by_powers(
    reference_life_s: f64,
    speed_ratio: f64,
    feed_ratio: f64,
    depth_ratio: f64,
    speed_power: f64,
    feed_power: f64,
    depth_power: f64,
    tool_life_by_powers_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tool_life_by_powers::FORMULA, &[reference_life_s, speed_ratio, feed_ratio, depth_ratio, speed_power, feed_power, depth_power], tool_life_by_powers_s_out) }
}

/// gullet_tool_life_by_powers over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tool_life_by_powers_array(
    count: usize,
    reference_life_s: *const f64,
    speed_ratio: *const f64,
    feed_ratio: *const f64,
    depth_ratio: *const f64,
    speed_power: *const f64,
    feed_power: *const f64,
    depth_power: *const f64,
    tool_life_by_powers_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tool_life_by_powers::FORMULA, count, [reference_life_s, speed_ratio, feed_ratio, depth_ratio, speed_power, feed_power, depth_power], tool_life_by_powers_s_out, status_out) }
}
