// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::cost::*;

/// Whole parts that one edge makes.
///
///     m = floor(T/(q t_c))
///
/// cutting_time_s: t_c, cutting time a part [s]; 0 < cutting_time <= tool_life/in_cut_share.
/// tool_life_s: T, tool life [s]; tool_life > 0.
/// in_cut_share: q, share of the cutting time that the edge is in cut [-]; 0 < in_cut_share <= 1.
/// whole_parts_per_edge_out: m [-].
/// Valid for: T/(q t_c) within 1e-9, relative, below a whole number counts as that number; an edge
///     that does not last one part is refused.
/// Source: definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the
///     method, from memory).
/// Example: cutting_time=5 min; tool_life=49.9 min => 9 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_whole_parts_per_edge(
    cutting_time_s: f64,
    tool_life_s: f64,
    in_cut_share: f64,
    whole_parts_per_edge_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&whole_parts_per_edge::FORMULA, &[cutting_time_s, tool_life_s, in_cut_share], whole_parts_per_edge_out) }
}

/// gullet_whole_parts_per_edge over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_whole_parts_per_edge_array(
    count: usize,
    cutting_time_s: *const f64,
    tool_life_s: *const f64,
    in_cut_share: *const f64,
    whole_parts_per_edge_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&whole_parts_per_edge::FORMULA, count, [cutting_time_s, tool_life_s, in_cut_share], whole_parts_per_edge_out, status_out) }
}

/// Cost of one cutting edge of an insert.
///
///     C_e = P/z_e
///
/// insert_price_money: P, price of the insert [-]; insert_price >= 0.
/// edges: z_e, edges that are used [-]; edges >= 1.
/// insert_edge_cost_money_out: C_e [-].
/// Valid for: edges that are used, not those the insert has; holder and screws are left out.
/// Source: definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the
///     method, from memory).
/// Example: insert_price=12; edges=8 => 1.5 (identity: 12/8).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_insert_edge_cost(
    insert_price_money: f64,
    edges: f64,
    insert_edge_cost_money_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&insert_edge_cost::FORMULA, &[insert_price_money, edges], insert_edge_cost_money_out) }
}

/// gullet_insert_edge_cost over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_insert_edge_cost_array(
    count: usize,
    insert_price_money: *const f64,
    edges: *const f64,
    insert_edge_cost_money_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&insert_edge_cost::FORMULA, count, [insert_price_money, edges], insert_edge_cost_money_out, status_out) }
}

/// Cost of one life of a tool that is reground.
///
///     C_e = P/(k + 1) + C_g
///
/// tool_price_money: P, price of the tool [-]; tool_price >= 0.
/// regrinds: k, regrinds before the tool is used up [-]; regrinds >= 0.
/// regrind_cost_money: C_g, cost of grinding, a life [-]; regrind_cost >= 0.
/// reground_edge_cost_money_out: C_e [-].
/// Valid for: one life as bought and one for each regrind; the grinder's time belongs here and not
///     to the tool change.
/// Source: definition; M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ch. 24 (the
///     method, from memory).
/// Example: tool_price=40; regrinds=9; regrind_cost=1.5 => 5.5 (identity: 40/10 + 1.5).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_reground_edge_cost(
    tool_price_money: f64,
    regrinds: f64,
    regrind_cost_money: f64,
    reground_edge_cost_money_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&reground_edge_cost::FORMULA, &[tool_price_money, regrinds, regrind_cost_money], reground_edge_cost_money_out) }
}

/// gullet_reground_edge_cost over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_reground_edge_cost_array(
    count: usize,
    tool_price_money: *const f64,
    regrinds: *const f64,
    regrind_cost_money: *const f64,
    reground_edge_cost_money_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&reground_edge_cost::FORMULA, count, [tool_price_money, regrinds, regrind_cost_money], reground_edge_cost_money_out, status_out) }
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
