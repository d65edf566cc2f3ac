// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::rotation::*;

/// Turns of a handwheel for a travel.
///
///     N = s/L
///
/// travel_m: s, travel; its sign is kept [m]; travel: any finite value.
/// travel_per_turn_m: L, travel per turn of the handwheel [m]; travel_per_turn > 0.
/// handwheel_turns_out: N [turns].
/// Valid for: screw without backlash: approach from the same side each time.
/// Source: definition.
/// Example: travel=1.375 in; travel_per_turn=0.200 in => 6.875 turns (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_handwheel_turns(
    travel_m: f64,
    travel_per_turn_m: f64,
    handwheel_turns_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&handwheel_turns::FORMULA, &[travel_m, travel_per_turn_m], handwheel_turns_out) }
}

/// gullet_handwheel_turns over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_handwheel_turns_array(
    count: usize,
    travel_m: *const f64,
    travel_per_turn_m: *const f64,
    handwheel_turns_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&handwheel_turns::FORMULA, count, [travel_m, travel_per_turn_m], handwheel_turns_out, status_out) }
}

/// Speed at which a handwheel is turned for a table feed.
///
///     n_h = v_f/L
///
/// table_feed_m_per_s: v_f, table feed [m/s]; table_feed >= 0.
/// travel_per_turn_m: L, travel per turn of the handwheel [m]; travel_per_turn > 0.
/// handwheel_rate_rev_per_s_out: n_h [rev/s].
/// Valid for: a hand turns unevenly: the feed is a target; n_h in revolutions per second.
/// Source: definition.
/// Example: table_feed=10 in/min; travel_per_turn=0.200 in => 50 rpm (identity: 10/0.2 turns a
///     minute).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_handwheel_rate(
    table_feed_m_per_s: f64,
    travel_per_turn_m: f64,
    handwheel_rate_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&handwheel_rate::FORMULA, &[table_feed_m_per_s, travel_per_turn_m], handwheel_rate_rev_per_s_out) }
}

/// gullet_handwheel_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_handwheel_rate_array(
    count: usize,
    table_feed_m_per_s: *const f64,
    travel_per_turn_m: *const f64,
    handwheel_rate_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&handwheel_rate::FORMULA, count, [table_feed_m_per_s, travel_per_turn_m], handwheel_rate_rev_per_s_out, status_out) }
}
