// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::lot::*;

/// Share of the set-up that falls on one part of a lot.
///
///     t_s = t_su/N
///
/// setup_time_s: t_su, set-up time of the lot [s]; setup_time >= 0.
/// lot_size: N, parts in the lot [-]; lot_size >= 1.
/// setup_time_per_part_s_out: t_s [s].
/// Valid for: one set-up for the lot.
/// Source: definition; example: public homework solution of a batch-machining problem, seen.
/// Example: setup_time=105 min; lot_size=40 => 2.625 min (identity: 105/40; a public homework
///     solution of a batch-machining problem uses it).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_setup_time_per_part(
    setup_time_s: f64,
    lot_size: f64,
    setup_time_per_part_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&setup_time_per_part::FORMULA, &[setup_time_s, lot_size], setup_time_per_part_s_out) }
}

/// gullet_setup_time_per_part over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_setup_time_per_part_array(
    count: usize,
    setup_time_s: *const f64,
    lot_size: *const f64,
    setup_time_per_part_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&setup_time_per_part::FORMULA, count, [setup_time_s, lot_size], setup_time_per_part_s_out, status_out) }
}

/// Share of gauging that falls on one part.
///
///     t_g = t_k/k
///
/// gauging_time_s: t_k, time to gauge one part [s]; gauging_time >= 0.
/// gauged_every: k, one part in so many is gauged [-]; gauged_every >= 1.
/// gauging_time_per_part_s_out: t_g [s].
/// Valid for: machine and operator wait for the gauge; gauging while the machine cuts costs nothing
///     here.
/// Source: definition.
/// Example: gauging_time=1.5 min; gauged_every=5 => 0.3 min (identity: 1.5/5).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_gauging_time_per_part(
    gauging_time_s: f64,
    gauged_every: f64,
    gauging_time_per_part_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&gauging_time_per_part::FORMULA, &[gauging_time_s, gauged_every], gauging_time_per_part_s_out) }
}

/// gullet_gauging_time_per_part over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_gauging_time_per_part_array(
    count: usize,
    gauging_time_s: *const f64,
    gauged_every: *const f64,
    gauging_time_per_part_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&gauging_time_per_part::FORMULA, count, [gauging_time_s, gauged_every], gauging_time_per_part_s_out, status_out) }
}

/// Share of the tool change that falls on one part, from the parts an edge makes.
///
///     t_ch = t_c/m
///
/// change_time_s: t_c, time of one tool change [s]; change_time >= 0.
/// parts_per_edge: m, parts one edge makes, whole or as a mean [-]; parts_per_edge > 0.
/// change_time_per_part_s_out: t_ch [s].
/// Valid for: m whole where no edge is changed within a part.
/// Source: definition.
/// Example: change_time=2 min; parts_per_edge=3 => 40 s (identity: 2/3 min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_change_time_per_part(
    change_time_s: f64,
    parts_per_edge: f64,
    change_time_per_part_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&change_time_per_part::FORMULA, &[change_time_s, parts_per_edge], change_time_per_part_s_out) }
}

/// gullet_change_time_per_part over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_change_time_per_part_array(
    count: usize,
    change_time_s: *const f64,
    parts_per_edge: *const f64,
    change_time_per_part_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&change_time_per_part::FORMULA, count, [change_time_s, parts_per_edge], change_time_per_part_s_out, status_out) }
}

/// Cost of cutting edges that falls on one part.
///
///     k_e = C_e/m
///
/// edge_cost_money: C_e, cost of one cutting edge [-]; edge_cost >= 0.
/// parts_per_edge: m, parts one edge makes, whole or as a mean [-]; parts_per_edge > 0.
/// edge_cost_per_part_money_out: k_e [-].
/// Valid for: m whole where no edge is changed within a part.
/// Source: definition.
/// Example: edge_cost=3; parts_per_edge=4 => 0.75 (identity: 3/4).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_edge_cost_per_part(
    edge_cost_money: f64,
    parts_per_edge: f64,
    edge_cost_per_part_money_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&edge_cost_per_part::FORMULA, &[edge_cost_money, parts_per_edge], edge_cost_per_part_money_out) }
}

/// gullet_edge_cost_per_part over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_edge_cost_per_part_array(
    count: usize,
    edge_cost_money: *const f64,
    parts_per_edge: *const f64,
    edge_cost_per_part_money_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&edge_cost_per_part::FORMULA, count, [edge_cost_money, parts_per_edge], edge_cost_per_part_money_out, status_out) }
}

/// Normal time of one part: everything that recurs, before allowances.
///
///     t_n = t_h + t_c + t_m + t_ch + t_g
///
/// handling_time_s: t_h, load and unload [s]; handling_time >= 0.
/// cutting_time_s: t_c, in the cut [s]; cutting_time >= 0.
/// moving_time_s: t_m, moves outside the cut [s]; moving_time >= 0.
/// change_share_s: t_ch, share of tool changes [s]; change_share >= 0.
/// gauging_share_s: t_g, share of gauging [s]; gauging_share >= 0.
/// normal_time_per_part_s_out: t_n [s].
/// Valid for: one after the other: what is done while the machine cuts counts as 0.
/// Source: definition.
/// Example: handling_time=1 min; cutting_time=4 min; moving_time=0.5 min; change_share=0.2 min;
///     gauging_share=0.3 min => 6 min (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_normal_time_per_part(
    handling_time_s: f64,
    cutting_time_s: f64,
    moving_time_s: f64,
    change_share_s: f64,
    gauging_share_s: f64,
    normal_time_per_part_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&normal_time_per_part::FORMULA, &[handling_time_s, cutting_time_s, moving_time_s, change_share_s, gauging_share_s], normal_time_per_part_s_out) }
}

/// gullet_normal_time_per_part over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_normal_time_per_part_array(
    count: usize,
    handling_time_s: *const f64,
    cutting_time_s: *const f64,
    moving_time_s: *const f64,
    change_share_s: *const f64,
    gauging_share_s: *const f64,
    normal_time_per_part_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&normal_time_per_part::FORMULA, count, [handling_time_s, cutting_time_s, moving_time_s, change_share_s, gauging_share_s], normal_time_per_part_s_out, status_out) }
}

/// Standard time: the normal time with an allowance that is a share of the standard time.
///
///     t_s = t/(1 - A)
///
/// normal_time_s: t, normal time [s]; normal_time >= 0.
/// allowance: A, allowance as a share of the standard time [-]; 0 <= allowance < 1.
/// standard_time_by_share_of_standard_s_out: t_s [s].
/// Valid for: allowance as a share of the standard time, the working day; a share of the normal time
///     would make it t (1 + A).
/// Source: definition; example: J. Heizer, B. Render, Operations Management, ch. 10, from memory.
/// Example: normal_time=15.36 min; allowance=15 % => 18.07 min (J. Heizer, B. Render, Operations
///     Management, ch. 10, example of a time study, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_standard_time_by_share_of_standard(
    normal_time_s: f64,
    allowance: f64,
    standard_time_by_share_of_standard_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&standard_time_by_share_of_standard::FORMULA, &[normal_time_s, allowance], standard_time_by_share_of_standard_s_out) }
}

/// gullet_standard_time_by_share_of_standard over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_standard_time_by_share_of_standard_array(
    count: usize,
    normal_time_s: *const f64,
    allowance: *const f64,
    standard_time_by_share_of_standard_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&standard_time_by_share_of_standard::FORMULA, count, [normal_time_s, allowance], standard_time_by_share_of_standard_s_out, status_out) }
}

/// Allowance in a standard time: for needs, fatigue and delays.
///
///     t_a = t_s - t_n
///
/// standard_time_s: t_s, standard time [s]; standard_time >= normal_time.
/// normal_time_s: t_n, normal time [s]; normal_time >= 0.
/// allowance_time_s_out: t_a [s].
/// Valid for: either kind of allowance.
/// Source: definition.
/// Example: standard_time=9.2 min; normal_time=8 min => 1.2 min (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_allowance_time(
    standard_time_s: f64,
    normal_time_s: f64,
    allowance_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&allowance_time::FORMULA, &[standard_time_s, normal_time_s], allowance_time_s_out) }
}

/// gullet_allowance_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_allowance_time_array(
    count: usize,
    standard_time_s: *const f64,
    normal_time_s: *const f64,
    allowance_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&allowance_time::FORMULA, count, [standard_time_s, normal_time_s], allowance_time_s_out, status_out) }
}

/// Time of one part of a lot, with its shares.
///
///     t_p = t_s + t_h + t_c + t_m + t_ch + t_g + t_a
///
/// setup_share_s: t_s, share of the set-up [s]; setup_share >= 0.
/// handling_time_s: t_h, load and unload [s]; handling_time >= 0.
/// cutting_time_s: t_c, in the cut [s]; cutting_time >= 0.
/// moving_time_s: t_m, moves outside the cut [s]; moving_time >= 0.
/// change_share_s: t_ch, share of tool changes [s]; change_share >= 0.
/// gauging_share_s: t_g, share of gauging [s]; gauging_share >= 0.
/// allowance_time_s: t_a, allowance [s]; allowance_time >= 0.
/// lot_time_per_part_s_out: t_p [s].
/// Valid for: one after the other.
/// Source: definition.
/// Example: setup_share=2 min; handling_time=1 min; cutting_time=4 min; moving_time=0.5 min;
///     change_share=0.2 min; gauging_share=0.3 min; allowance_time=0.9 min => 8.9 min (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_lot_time_per_part(
    setup_share_s: f64,
    handling_time_s: f64,
    cutting_time_s: f64,
    moving_time_s: f64,
    change_share_s: f64,
    gauging_share_s: f64,
    allowance_time_s: f64,
    lot_time_per_part_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&lot_time_per_part::FORMULA, &[setup_share_s, handling_time_s, cutting_time_s, moving_time_s, change_share_s, gauging_share_s, allowance_time_s], lot_time_per_part_s_out) }
}

/// gullet_lot_time_per_part over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_lot_time_per_part_array(
    count: usize,
    setup_share_s: *const f64,
    handling_time_s: *const f64,
    cutting_time_s: *const f64,
    moving_time_s: *const f64,
    change_share_s: *const f64,
    gauging_share_s: *const f64,
    allowance_time_s: *const f64,
    lot_time_per_part_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&lot_time_per_part::FORMULA, count, [setup_share_s, handling_time_s, cutting_time_s, moving_time_s, change_share_s, gauging_share_s, allowance_time_s], lot_time_per_part_s_out, status_out) }
}

/// Cost of a time at the machine.
///
///     k = C_m t
///
/// time_s: t, time [s]; time >= 0.
/// machine_rate_money_per_s: C_m, machine and operator, money per time [money/s]; machine_rate >= 0.
/// time_cost_money_out: k [-].
/// Valid for: the same rate throughout; overheads as the rate has them.
/// Source: definition.
/// Example: time=6 min; machine_rate=45 money/h => 4.5 (identity: a tenth of an hour).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_time_cost(
    time_s: f64,
    machine_rate_money_per_s: f64,
    time_cost_money_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&time_cost::FORMULA, &[time_s, machine_rate_money_per_s], time_cost_money_out) }
}

/// gullet_time_cost over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_time_cost_array(
    count: usize,
    time_s: *const f64,
    machine_rate_money_per_s: *const f64,
    time_cost_money_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&time_cost::FORMULA, count, [time_s, machine_rate_money_per_s], time_cost_money_out, status_out) }
}

/// Cost of one part of a lot, share by share.
///
///     k_p = k_s + k_h + k_c + k_m + k_ch + k_g + k_a + k_e + k_w
///
/// setup_cost_money: k_s, share of the set-up [-]; setup_cost >= 0.
/// handling_cost_money: k_h, load and unload [-]; handling_cost >= 0.
/// cutting_cost_money: k_c, in the cut [-]; cutting_cost >= 0.
/// moving_cost_money: k_m, moves outside the cut [-]; moving_cost >= 0.
/// change_cost_money: k_ch, tool changes [-]; change_cost >= 0.
/// gauging_cost_money: k_g, gauging [-]; gauging_cost >= 0.
/// allowance_cost_money: k_a, allowance [-]; allowance_cost >= 0.
/// edge_share_money: k_e, cutting edges [-]; edge_share >= 0.
/// material_cost_money: k_w, material [-]; material_cost >= 0.
/// lot_cost_per_part_money_out: k_p [-].
/// Valid for: shares in one currency.
/// Source: definition.
/// Example: setup_cost=1.5; handling_cost=0.75; cutting_cost=3; moving_cost=0.375; change_cost=0.15;
///     gauging_cost=0.225; allowance_cost=0.9; edge_share=0.5; material_cost=5 => 12.4 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_lot_cost_per_part(
    setup_cost_money: f64,
    handling_cost_money: f64,
    cutting_cost_money: f64,
    moving_cost_money: f64,
    change_cost_money: f64,
    gauging_cost_money: f64,
    allowance_cost_money: f64,
    edge_share_money: f64,
    material_cost_money: f64,
    lot_cost_per_part_money_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&lot_cost_per_part::FORMULA, &[setup_cost_money, handling_cost_money, cutting_cost_money, moving_cost_money, change_cost_money, gauging_cost_money, allowance_cost_money, edge_share_money, material_cost_money], lot_cost_per_part_money_out) }
}

/// gullet_lot_cost_per_part over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_lot_cost_per_part_array(
    count: usize,
    setup_cost_money: *const f64,
    handling_cost_money: *const f64,
    cutting_cost_money: *const f64,
    moving_cost_money: *const f64,
    change_cost_money: *const f64,
    gauging_cost_money: *const f64,
    allowance_cost_money: *const f64,
    edge_share_money: *const f64,
    material_cost_money: *const f64,
    lot_cost_per_part_money_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&lot_cost_per_part::FORMULA, count, [setup_cost_money, handling_cost_money, cutting_cost_money, moving_cost_money, change_cost_money, gauging_cost_money, allowance_cost_money, edge_share_money, material_cost_money], lot_cost_per_part_money_out, status_out) }
}

/// Cost of a lot.
///
///     K = N k_p
///
/// cost_per_part_money: k_p, cost of one part with its shares [-]; cost_per_part >= 0.
/// lot_size: N, parts in the lot [-]; lot_size >= 1.
/// lot_cost_money_out: K [-].
/// Valid for: the cost per part is that of this lot size.
/// Source: definition.
/// Example: cost_per_part=12.40; lot_size=40 => 496 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_lot_cost(
    cost_per_part_money: f64,
    lot_size: f64,
    lot_cost_money_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&lot_cost::FORMULA, &[cost_per_part_money, lot_size], lot_cost_money_out) }
}

/// gullet_lot_cost over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_lot_cost_array(
    count: usize,
    cost_per_part_money: *const f64,
    lot_size: *const f64,
    lot_cost_money_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&lot_cost::FORMULA, count, [cost_per_part_money, lot_size], lot_cost_money_out, status_out) }
}
