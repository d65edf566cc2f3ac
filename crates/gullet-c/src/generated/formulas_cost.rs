// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::cost::*;

/// Tool life at which a part costs least.
///
///     T_c = q (1/n - 1) (t_ch + C_e/C_m)
///
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
/// machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate > 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// minimum_cost_life_s_out: T_c [s].
/// Valid for: v_c T^n = C; life counted while the edge cuts; no other limit binds.
/// Source: derived: least cost over the cutting speed; A. Ghosh, A.K. Mallik, Manufacturing Science,
///     2nd ed., Ex. 4.26 p.268 (the method, seen in a companion).
/// Example: taylor_exponent=0.25; change_time=2 min; edge_cost=2.50; machine_rate=0.15 money/min =>
///     56 min (identity: 3 (2 + 16.6667) min, inputs of A. Ghosh, A.K. Mallik, Manufacturing
///     Science, Ex. 4.26 p.268).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_minimum_cost_life(
    taylor_exponent: f64,
    change_time_s: f64,
    edge_cost_money: f64,
    machine_rate_money_per_s: f64,
    in_cut_share: f64,
    minimum_cost_life_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&minimum_cost_life::FORMULA, &[taylor_exponent, change_time_s, edge_cost_money, machine_rate_money_per_s, in_cut_share], minimum_cost_life_s_out) }
}

/// gullet_minimum_cost_life over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_minimum_cost_life_array(
    count: usize,
    taylor_exponent: *const f64,
    change_time_s: *const f64,
    edge_cost_money: *const f64,
    machine_rate_money_per_s: *const f64,
    in_cut_share: *const f64,
    minimum_cost_life_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&minimum_cost_life::FORMULA, count, [taylor_exponent, change_time_s, edge_cost_money, machine_rate_money_per_s, in_cut_share], minimum_cost_life_s_out, status_out) }
}

/// Tool life at which a part takes least time.
///
///     T_p = q (1/n - 1) t_ch
///
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// maximum_production_life_s_out: T_p [s].
/// Valid for: v_c T^n = C; life counted while the edge cuts; no other limit binds.
/// Source: derived: least time over the cutting speed; A. Ghosh, A.K. Mallik, Manufacturing Science,
///     2nd ed., Ex. 4.28 p.271 (the method, seen in a companion).
/// Example: taylor_exponent=0.25; change_time=2 min => 6 min (identity: 3 x 2 min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_maximum_production_life(
    taylor_exponent: f64,
    change_time_s: f64,
    in_cut_share: f64,
    maximum_production_life_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&maximum_production_life::FORMULA, &[taylor_exponent, change_time_s, in_cut_share], maximum_production_life_s_out) }
}

/// gullet_maximum_production_life over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_maximum_production_life_array(
    count: usize,
    taylor_exponent: *const f64,
    change_time_s: *const f64,
    in_cut_share: *const f64,
    maximum_production_life_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&maximum_production_life::FORMULA, count, [taylor_exponent, change_time_s, in_cut_share], maximum_production_life_s_out, status_out) }
}

/// Cutting speed at which a part costs least.
///
///     v_c = C (T_c/1 min)^(-n); T_c = q (1/n - 1) (t_ch + C_e/C_m)
///
/// taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
/// machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate > 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// change_time*machine_rate + edge_cost > 0: a change that costs nothing has no best speed.
/// minimum_cost_speed_m_per_s_out: v_c [m/s].
/// Valid for: v_c T^n = C; life counted while the edge cuts; no other limit binds.
/// Source: derived: least cost over the cutting speed; example: A. Ghosh, A.K. Mallik, Manufacturing
///     Science, 2nd ed., Ex. 4.26 p.268, seen in a companion.
/// Example: taylor_speed=75 m/min; taylor_exponent=0.25; change_time=2 min; edge_cost=2.50;
///     machine_rate=0.15 money/min => 27.42 m/min (A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd
///     ed., Ex. 4.26 p.268, seen in a companion).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_minimum_cost_speed(
    taylor_speed_m_per_s: f64,
    taylor_exponent: f64,
    change_time_s: f64,
    edge_cost_money: f64,
    machine_rate_money_per_s: f64,
    in_cut_share: f64,
    minimum_cost_speed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&minimum_cost_speed::FORMULA, &[taylor_speed_m_per_s, taylor_exponent, change_time_s, edge_cost_money, machine_rate_money_per_s, in_cut_share], minimum_cost_speed_m_per_s_out) }
}

/// gullet_minimum_cost_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_minimum_cost_speed_array(
    count: usize,
    taylor_speed_m_per_s: *const f64,
    taylor_exponent: *const f64,
    change_time_s: *const f64,
    edge_cost_money: *const f64,
    machine_rate_money_per_s: *const f64,
    in_cut_share: *const f64,
    minimum_cost_speed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&minimum_cost_speed::FORMULA, count, [taylor_speed_m_per_s, taylor_exponent, change_time_s, edge_cost_money, machine_rate_money_per_s, in_cut_share], minimum_cost_speed_m_per_s_out, status_out) }
}

/// Cutting speed at which a part takes least time.
///
///     v_c = C (T_p/1 min)^(-n); T_p = q (1/n - 1) t_ch
///
/// taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// change_time_s: t_ch, time of one tool change [s]; change_time > 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// maximum_production_speed_m_per_s_out: v_c [m/s].
/// Valid for: v_c T^n = C; life counted while the edge cuts; no other limit binds.
/// Source: derived: least time over the cutting speed; example: A. Ghosh, A.K. Mallik, Manufacturing
///     Science, 2nd ed., Ex. 4.28 p.271, seen in a companion.
/// Example: taylor_speed=75 m/min; taylor_exponent=0.25; change_time=2 min => 47.92 m/min (A. Ghosh,
///     A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.28 p.271, seen in a companion).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_maximum_production_speed(
    taylor_speed_m_per_s: f64,
    taylor_exponent: f64,
    change_time_s: f64,
    in_cut_share: f64,
    maximum_production_speed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&maximum_production_speed::FORMULA, &[taylor_speed_m_per_s, taylor_exponent, change_time_s, in_cut_share], maximum_production_speed_m_per_s_out) }
}

/// gullet_maximum_production_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_maximum_production_speed_array(
    count: usize,
    taylor_speed_m_per_s: *const f64,
    taylor_exponent: *const f64,
    change_time_s: *const f64,
    in_cut_share: *const f64,
    maximum_production_speed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&maximum_production_speed::FORMULA, count, [taylor_speed_m_per_s, taylor_exponent, change_time_s, in_cut_share], maximum_production_speed_m_per_s_out, status_out) }
}

/// Cost of machining one part, with its share of edges and tool changes.
///
///     K = C_m (t_h + t_c + t_ch q t_c/T) + C_e q t_c/T
///
/// handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
/// cutting_time_s: t_c, cutting time a part [s]; cutting_time >= 0.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
/// machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate >= 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// unit_cost_money_out: K [-].
/// Valid for: without material and set-up; mean over many parts, edges changed also within a part.
/// Source: definition of the machining cost; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed.,
///     Ex. 4.27 p.269 (the method, seen in a companion).
/// Example: handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=50 min;
///     edge_cost=4; machine_rate=60 money/h => 7.7 (identity: 2 + 5 + 3/10 and 4/10).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_unit_cost(
    handling_time_s: f64,
    cutting_time_s: f64,
    change_time_s: f64,
    tool_life_s: f64,
    edge_cost_money: f64,
    machine_rate_money_per_s: f64,
    in_cut_share: f64,
    unit_cost_money_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&unit_cost::FORMULA, &[handling_time_s, cutting_time_s, change_time_s, tool_life_s, edge_cost_money, machine_rate_money_per_s, in_cut_share], unit_cost_money_out) }
}

/// gullet_unit_cost over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_unit_cost_array(
    count: usize,
    handling_time_s: *const f64,
    cutting_time_s: *const f64,
    change_time_s: *const f64,
    tool_life_s: *const f64,
    edge_cost_money: *const f64,
    machine_rate_money_per_s: *const f64,
    in_cut_share: *const f64,
    unit_cost_money_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&unit_cost::FORMULA, count, [handling_time_s, cutting_time_s, change_time_s, tool_life_s, edge_cost_money, machine_rate_money_per_s, in_cut_share], unit_cost_money_out, status_out) }
}

/// Cost of machining one part where an edge makes whole parts only.
///
///     K = C_m (t_h + t_c + t_ch/m) + C_e/m; m = floor(T/(q t_c))
///
/// handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
/// cutting_time_s: t_c, cutting time a part [s]; 0 < cutting_time <= tool_life/in_cut_share.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
/// machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate >= 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// unit_cost_whole_parts_money_out: K [-].
/// Valid for: without material and set-up; m whole parts an edge, T/(q t_c) within 1e-9, relative,
///     below a whole number counts as that number.
/// Source: definition of the machining cost; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd
///     ed., ch. 24 (the method, from memory).
/// Example: handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=49.9 min;
///     edge_cost=4; machine_rate=60 money/h => 7.77777777778 (identity: 9 whole parts an edge, 7 +
///     3/9 + 4/9).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_unit_cost_whole_parts(
    handling_time_s: f64,
    cutting_time_s: f64,
    change_time_s: f64,
    tool_life_s: f64,
    edge_cost_money: f64,
    machine_rate_money_per_s: f64,
    in_cut_share: f64,
    unit_cost_whole_parts_money_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&unit_cost_whole_parts::FORMULA, &[handling_time_s, cutting_time_s, change_time_s, tool_life_s, edge_cost_money, machine_rate_money_per_s, in_cut_share], unit_cost_whole_parts_money_out) }
}

/// gullet_unit_cost_whole_parts over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_unit_cost_whole_parts_array(
    count: usize,
    handling_time_s: *const f64,
    cutting_time_s: *const f64,
    change_time_s: *const f64,
    tool_life_s: *const f64,
    edge_cost_money: *const f64,
    machine_rate_money_per_s: *const f64,
    in_cut_share: *const f64,
    unit_cost_whole_parts_money_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&unit_cost_whole_parts::FORMULA, count, [handling_time_s, cutting_time_s, change_time_s, tool_life_s, edge_cost_money, machine_rate_money_per_s, in_cut_share], unit_cost_whole_parts_money_out, status_out) }
}

/// Time of one part, with its share of tool changes.
///
///     t = t_h + t_c + t_ch q t_c/T
///
/// handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
/// cutting_time_s: t_c, cutting time a part [s]; cutting_time >= 0.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// unit_time_s_out: t [s].
/// Valid for: without set-up; mean over many parts, edges changed also within a part.
/// Source: definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the
///     method, from memory).
/// Example: handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=50 min => 7.3 min
///     (identity: 2 + 5 + 3/10 min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_unit_time(
    handling_time_s: f64,
    cutting_time_s: f64,
    change_time_s: f64,
    tool_life_s: f64,
    in_cut_share: f64,
    unit_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&unit_time::FORMULA, &[handling_time_s, cutting_time_s, change_time_s, tool_life_s, in_cut_share], unit_time_s_out) }
}

/// gullet_unit_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_unit_time_array(
    count: usize,
    handling_time_s: *const f64,
    cutting_time_s: *const f64,
    change_time_s: *const f64,
    tool_life_s: *const f64,
    in_cut_share: *const f64,
    unit_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&unit_time::FORMULA, count, [handling_time_s, cutting_time_s, change_time_s, tool_life_s, in_cut_share], unit_time_s_out, status_out) }
}

/// Time of one part where an edge makes whole parts only.
///
///     t = t_h + t_c + t_ch/m; m = floor(T/(q t_c))
///
/// handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
/// cutting_time_s: t_c, cutting time a part [s]; 0 < cutting_time <= tool_life/in_cut_share.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// unit_time_whole_parts_s_out: t [s].
/// Valid for: without set-up; m whole parts an edge, T/(q t_c) within 1e-9, relative, below a whole
///     number counts as that number.
/// Source: definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the
///     method, from memory).
/// Example: handling_time=2 min; cutting_time=5 min; change_time=3 min; tool_life=49.9 min =>
///     7.33333333333 min (identity: 9 whole parts an edge, 7 + 3/9 min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_unit_time_whole_parts(
    handling_time_s: f64,
    cutting_time_s: f64,
    change_time_s: f64,
    tool_life_s: f64,
    in_cut_share: f64,
    unit_time_whole_parts_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&unit_time_whole_parts::FORMULA, &[handling_time_s, cutting_time_s, change_time_s, tool_life_s, in_cut_share], unit_time_whole_parts_s_out) }
}

/// gullet_unit_time_whole_parts over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_unit_time_whole_parts_array(
    count: usize,
    handling_time_s: *const f64,
    cutting_time_s: *const f64,
    change_time_s: *const f64,
    tool_life_s: *const f64,
    in_cut_share: *const f64,
    unit_time_whole_parts_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&unit_time_whole_parts::FORMULA, count, [handling_time_s, cutting_time_s, change_time_s, tool_life_s, in_cut_share], unit_time_whole_parts_s_out, status_out) }
}

/// Parts that one edge makes, as a mean over many.
///
///     m = T/(q t_c)
///
/// cutting_time_s: t_c, cutting time a part [s]; cutting_time > 0.
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// mean_parts_per_edge_out: m [-].
/// Valid for: edges are changed at the end of their life, also within a part.
/// Source: definition.
/// Example: cutting_time=5 min; tool_life=49 min => 9.8 (identity: 49/5).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_parts_per_edge(
    cutting_time_s: f64,
    tool_life_s: f64,
    in_cut_share: f64,
    mean_parts_per_edge_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_parts_per_edge::FORMULA, &[cutting_time_s, tool_life_s, in_cut_share], mean_parts_per_edge_out) }
}

/// gullet_mean_parts_per_edge over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_parts_per_edge_array(
    count: usize,
    cutting_time_s: *const f64,
    tool_life_s: *const f64,
    in_cut_share: *const f64,
    mean_parts_per_edge_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_parts_per_edge::FORMULA, count, [cutting_time_s, tool_life_s, in_cut_share], mean_parts_per_edge_out, status_out) }
}
