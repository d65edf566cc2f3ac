// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::cost::*;

/// Tool life at which a part costs least.
///
///     T_c = (1/n - 1) (t_ch + C_e/C_m)
///
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
/// machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate > 0.
/// minimum_cost_life_s_out: T_c [s].
/// Valid for: v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds.
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
    minimum_cost_life_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&minimum_cost_life::FORMULA, &[taylor_exponent, change_time_s, edge_cost_money, machine_rate_money_per_s], minimum_cost_life_s_out) }
}

/// gullet_minimum_cost_life over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_minimum_cost_life_array(
    count: usize,
    taylor_exponent: *const f64,
    change_time_s: *const f64,
    edge_cost_money: *const f64,
    machine_rate_money_per_s: *const f64,
    minimum_cost_life_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&minimum_cost_life::FORMULA, count, [taylor_exponent, change_time_s, edge_cost_money, machine_rate_money_per_s], minimum_cost_life_s_out, status_out) }
}

/// Tool life at which a part takes least time.
///
///     T_p = (1/n - 1) t_ch
///
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// maximum_production_life_s_out: T_p [s].
/// Valid for: v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds.
/// Source: derived: least time over the cutting speed; A. Ghosh, A.K. Mallik, Manufacturing Science,
///     2nd ed., Ex. 4.28 p.271 (the method, seen in a companion).
/// Example: taylor_exponent=0.25; change_time=2 min => 6 min (identity: 3 x 2 min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_maximum_production_life(
    taylor_exponent: f64,
    change_time_s: f64,
    maximum_production_life_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&maximum_production_life::FORMULA, &[taylor_exponent, change_time_s], maximum_production_life_s_out) }
}

/// gullet_maximum_production_life over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_maximum_production_life_array(
    count: usize,
    taylor_exponent: *const f64,
    change_time_s: *const f64,
    maximum_production_life_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&maximum_production_life::FORMULA, count, [taylor_exponent, change_time_s], maximum_production_life_s_out, status_out) }
}

/// Cutting speed at which a part costs least.
///
///     v_c = C (T_c/1 min)^(-n); T_c = (1/n - 1) (t_ch + C_e/C_m)
///
/// taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
/// machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate > 0.
/// change_time*machine_rate + edge_cost > 0: a change that costs nothing has no best speed.
/// minimum_cost_speed_m_per_s_out: v_c [m/s].
/// Valid for: v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds.
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
    minimum_cost_speed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&minimum_cost_speed::FORMULA, &[taylor_speed_m_per_s, taylor_exponent, change_time_s, edge_cost_money, machine_rate_money_per_s], minimum_cost_speed_m_per_s_out) }
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
    minimum_cost_speed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&minimum_cost_speed::FORMULA, count, [taylor_speed_m_per_s, taylor_exponent, change_time_s, edge_cost_money, machine_rate_money_per_s], minimum_cost_speed_m_per_s_out, status_out) }
}

/// Cutting speed at which a part takes least time.
///
///     v_c = C (T_p/1 min)^(-n); T_p = (1/n - 1) t_ch
///
/// taylor_speed_m_per_s: C, cutting speed for a life of one minute [m/s]; taylor_speed > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// change_time_s: t_ch, time of one tool change [s]; change_time > 0.
/// maximum_production_speed_m_per_s_out: v_c [m/s].
/// Valid for: v_c T^n = C; the edge cuts during all of the cutting time; no other limit binds.
/// Source: derived: least time over the cutting speed; example: A. Ghosh, A.K. Mallik, Manufacturing
///     Science, 2nd ed., Ex. 4.28 p.271, seen in a companion.
/// Example: taylor_speed=75 m/min; taylor_exponent=0.25; change_time=2 min => 47.92 m/min (A. Ghosh,
///     A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.28 p.271, seen in a companion).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_maximum_production_speed(
    taylor_speed_m_per_s: f64,
    taylor_exponent: f64,
    change_time_s: f64,
    maximum_production_speed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&maximum_production_speed::FORMULA, &[taylor_speed_m_per_s, taylor_exponent, change_time_s], maximum_production_speed_m_per_s_out) }
}

/// gullet_maximum_production_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_maximum_production_speed_array(
    count: usize,
    taylor_speed_m_per_s: *const f64,
    taylor_exponent: *const f64,
    change_time_s: *const f64,
    maximum_production_speed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&maximum_production_speed::FORMULA, count, [taylor_speed_m_per_s, taylor_exponent, change_time_s], maximum_production_speed_m_per_s_out, status_out) }
}

/// Cost of machining one part, with its share of edges and tool changes.
///
///     K = C_m (t_h + t_c + t_ch t_c/T) + C_e t_c/T
///
/// handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
/// cutting_time_s: t_c, cutting time a part [s]; cutting_time >= 0.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
/// machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate >= 0.
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
    unit_cost_money_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&unit_cost::FORMULA, &[handling_time_s, cutting_time_s, change_time_s, tool_life_s, edge_cost_money, machine_rate_money_per_s], unit_cost_money_out) }
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
    unit_cost_money_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&unit_cost::FORMULA, count, [handling_time_s, cutting_time_s, change_time_s, tool_life_s, edge_cost_money, machine_rate_money_per_s], unit_cost_money_out, status_out) }
}

/// Cost of machining one part where an edge makes whole parts only.
///
///     K = C_m (t_h + t_c + t_ch/m) + C_e/m; m = floor(T/t_c)
///
/// handling_time_s: t_h, handling time a part [s]; handling_time >= 0.
/// cutting_time_s: t_c, cutting time a part [s]; 0 < cutting_time <= tool_life.
/// change_time_s: t_ch, time of one tool change [s]; change_time >= 0.
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
/// machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate >= 0.
/// unit_cost_whole_parts_money_out: K [-].
/// Valid for: without material and set-up; m whole parts an edge, T/t_c within 1e-9, relative, below
///     a whole number counts as that number.
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
    unit_cost_whole_parts_money_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&unit_cost_whole_parts::FORMULA, &[handling_time_s, cutting_time_s, change_time_s, tool_life_s, edge_cost_money, machine_rate_money_per_s], unit_cost_whole_parts_money_out) }
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
    unit_cost_whole_parts_money_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&unit_cost_whole_parts::FORMULA, count, [handling_time_s, cutting_time_s, change_time_s, tool_life_s, edge_cost_money, machine_rate_money_per_s], unit_cost_whole_parts_money_out, status_out) }
}

/// Time of a lot: set-up and all its parts.
///
///     t = t_su + N t_cy
///
/// setup_time_s: t_su, set-up time of the lot [s]; setup_time >= 0.
/// cycle_time_s: t_cy, time of one part [s]; cycle_time >= 0.
/// lot_size: N, parts in the lot [-]; lot_size >= 1.
/// lot_time_s_out: t [s].
/// Valid for: one set-up; the same time for each part.
/// Source: definition; example: P.F. Ostwald, T.S. McLaren, Cost Analysis and Estimating for
///     Engineering and Management, ch. 7 no. 7.1, seen.
/// Example: setup_time=1.5 h; cycle_time=0.50 min; lot_size=75 => 2.125 h (P.F. Ostwald, T.S.
///     McLaren, Cost Analysis and Estimating for Engineering and Management, 1st ed., ch. 7 no. 7.1,
///     seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_lot_time(
    setup_time_s: f64,
    cycle_time_s: f64,
    lot_size: f64,
    lot_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&lot_time::FORMULA, &[setup_time_s, cycle_time_s, lot_size], lot_time_s_out) }
}

/// gullet_lot_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_lot_time_array(
    count: usize,
    setup_time_s: *const f64,
    cycle_time_s: *const f64,
    lot_size: *const f64,
    lot_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&lot_time::FORMULA, count, [setup_time_s, cycle_time_s, lot_size], lot_time_s_out, status_out) }
}
