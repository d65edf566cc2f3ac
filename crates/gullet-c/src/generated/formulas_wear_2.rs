// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::wear::*;

/// Taylor's exponent of the life from the power of the speed.
///
///     n = 1/p
///
/// speed_power: p, power of the cutting speed in v^p T = K or T = K v^(-p) [-]; speed_power > 1.
/// taylor_exponent_from_power_out: n [-].
/// Valid for: v^p T = K and v T^n = C are one law; a source's n of 2 to 12 is such a power.
/// Source: derived: the root of v^p T = K.
/// Example: speed_power=4 => 0.25 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_exponent_from_power(
    speed_power: f64,
    taylor_exponent_from_power_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&taylor_exponent_from_power::FORMULA, &[speed_power], taylor_exponent_from_power_out) }
}

/// gullet_taylor_exponent_from_power over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_exponent_from_power_array(
    count: usize,
    speed_power: *const f64,
    taylor_exponent_from_power_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&taylor_exponent_from_power::FORMULA, count, [speed_power], taylor_exponent_from_power_out, status_out) }
}

/// Exponent of feed or depth in v T^n f^a d^b = C from its power in the equation solved for the
///     life.
///
///     a = n q
///
/// power: q, power of the feed or depth in T = K v^(-1/n) f^(-q) d^(-r) [-]; power: any finite
///     value.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// exponent_from_power_out: a [-].
/// Valid for: both forms are one law: q = 1/n_1, so a = n/n_1.
/// Source: derived: T = K v^(-1/n) f^(-q) raised to the power n.
/// Example: power=2; taylor_exponent=0.25 => 0.5 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_exponent_from_power(
    power: f64,
    taylor_exponent: f64,
    exponent_from_power_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&exponent_from_power::FORMULA, &[power, taylor_exponent], exponent_from_power_out) }
}

/// gullet_exponent_from_power over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_exponent_from_power_array(
    count: usize,
    power: *const f64,
    taylor_exponent: *const f64,
    exponent_from_power_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&exponent_from_power::FORMULA, count, [power, taylor_exponent], exponent_from_power_out, status_out) }
}

/// Cutting speed for a life of one minute from the life at one cutting speed and the exponent.
///
///     C = v_c (T/1 min)^n
///
/// cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
/// tool_life_s: T, tool life at that speed; the unit life where C of a source is for seconds or for
///     60 minutes [s]; tool_life > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// taylor_speed_from_one_m_per_s_out: C [m/s].
/// Valid for: v T^n = C; a constant that is stated for lives in seconds becomes one for minutes with
///     T = 1 s.
/// Source: derived from v T^n = C; example: M.P. Groover, Fundamentals of Modern Manufacturing, 3rd
///     ed., ex. 23.1, from memory.
/// Example: cutting_speed=160 m/min; tool_life=5 min; taylor_exponent=0.223 => 229 m/min (M.P.
///     Groover, Fundamentals of Modern Manufacturing, 3rd ed., ex. 23.1, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_speed_from_one(
    cutting_speed_m_per_s: f64,
    tool_life_s: f64,
    taylor_exponent: f64,
    taylor_speed_from_one_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&taylor_speed_from_one::FORMULA, &[cutting_speed_m_per_s, tool_life_s, taylor_exponent], taylor_speed_from_one_m_per_s_out) }
}

/// gullet_taylor_speed_from_one over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_speed_from_one_array(
    count: usize,
    cutting_speed_m_per_s: *const f64,
    tool_life_s: *const f64,
    taylor_exponent: *const f64,
    taylor_speed_from_one_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&taylor_speed_from_one::FORMULA, count, [cutting_speed_m_per_s, tool_life_s, taylor_exponent], taylor_speed_from_one_m_per_s_out, status_out) }
}

/// Tool life to another width of flank wear.
///
///     T_2 = T_1 VB_2/VB_1
///
/// tool_life_s: T_1, tool life to the criterion it was found with [s]; tool_life > 0.
/// flank_wear_m: VB_1, width of flank wear of that criterion [m]; flank_wear > 0.
/// new_flank_wear_m: VB_2, width of flank wear of the new criterion [m]; new_flank_wear > 0.
/// tool_life_for_criterion_s_out: T_2 [s].
/// Valid for: flank wear that grows in proportion to time: its steady part; not the first minutes
///     nor the steep end.
/// Source: derived from wear in proportion to time.
/// Example: tool_life=20 min; flank_wear=0.3 mm; new_flank_wear=0.6 mm => 40 min (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tool_life_for_criterion(
    tool_life_s: f64,
    flank_wear_m: f64,
    new_flank_wear_m: f64,
    tool_life_for_criterion_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tool_life_for_criterion::FORMULA, &[tool_life_s, flank_wear_m, new_flank_wear_m], tool_life_for_criterion_s_out) }
}

/// gullet_tool_life_for_criterion over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tool_life_for_criterion_array(
    count: usize,
    tool_life_s: *const f64,
    flank_wear_m: *const f64,
    new_flank_wear_m: *const f64,
    tool_life_for_criterion_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tool_life_for_criterion::FORMULA, count, [tool_life_s, flank_wear_m, new_flank_wear_m], tool_life_for_criterion_s_out, status_out) }
}

/// Cutting speed for a life of one minute with another width of flank wear.
///
///     C_2 = C_1 (VB_2/VB_1)^n
///
/// taylor_speed_m_per_s: C_1, cutting speed for a life of one minute with the criterion it was found
///     with [m/s]; taylor_speed > 0.
/// taylor_exponent: n, Taylor's exponent, of the life [-]; 0 < taylor_exponent < 1.
/// flank_wear_m: VB_1, width of flank wear of that criterion [m]; flank_wear > 0.
/// new_flank_wear_m: VB_2, width of flank wear of the new criterion [m]; new_flank_wear > 0.
/// taylor_speed_for_criterion_m_per_s_out: C_2 [m/s].
/// Valid for: flank wear that grows in proportion to time; the exponent stays.
/// Source: derived: the life of v T^n = C times VB_2/VB_1.
/// Example: taylor_speed=100 m/min; taylor_exponent=0.25; flank_wear=0.05 mm; new_flank_wear=0.8 mm
///     => 200 m/min (identity: 16^0.25).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_speed_for_criterion(
    taylor_speed_m_per_s: f64,
    taylor_exponent: f64,
    flank_wear_m: f64,
    new_flank_wear_m: f64,
    taylor_speed_for_criterion_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&taylor_speed_for_criterion::FORMULA, &[taylor_speed_m_per_s, taylor_exponent, flank_wear_m, new_flank_wear_m], taylor_speed_for_criterion_m_per_s_out) }
}

/// gullet_taylor_speed_for_criterion over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_speed_for_criterion_array(
    count: usize,
    taylor_speed_m_per_s: *const f64,
    taylor_exponent: *const f64,
    flank_wear_m: *const f64,
    new_flank_wear_m: *const f64,
    taylor_speed_for_criterion_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&taylor_speed_for_criterion::FORMULA, count, [taylor_speed_m_per_s, taylor_exponent, flank_wear_m, new_flank_wear_m], taylor_speed_for_criterion_m_per_s_out, status_out) }
}

/// Depth of crater that ends the life of a carbide edge in a test.
///
///     KT = 0.06 mm + 0.3 f
///
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
/// crater_depth_limit_m_out: KT [m].
/// Valid for: turning tests with sintered carbide.
/// Source: ISO 3685, criteria of tool life of sintered carbide, from memory.
/// Example: feed_per_rev=0.2 mm => 0.12 mm (own arithmetic: 0.06 + 0.3 x 0.2).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_crater_depth_limit(
    feed_per_rev_m: f64,
    crater_depth_limit_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&crater_depth_limit::FORMULA, &[feed_per_rev_m], crater_depth_limit_m_out) }
}

/// gullet_crater_depth_limit over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_crater_depth_limit_array(
    count: usize,
    feed_per_rev_m: *const f64,
    crater_depth_limit_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&crater_depth_limit::FORMULA, count, [feed_per_rev_m], crater_depth_limit_m_out, status_out) }
}

/// Mean tool life from the median life that a fit of logarithms gives.
///
///     T_m = T_50 exp(s^2/2)
///
/// median_life_s: T_50, median life, the exponential of the fitted logarithm [s]; median_life > 0.
/// log_deviation: s, standard deviation of the natural logarithms of the lives [-]; log_deviation >=
///     0.
/// mean_from_median_life_s_out: T_m [s].
/// Valid for: lives that scatter log-normally; s of few readings is itself uncertain.
/// Source: mean of the log-normal distribution.
/// Example: median_life=10 min; log_deviation=0 => 10 min (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_from_median_life(
    median_life_s: f64,
    log_deviation: f64,
    mean_from_median_life_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_from_median_life::FORMULA, &[median_life_s, log_deviation], mean_from_median_life_s_out) }
}

/// gullet_mean_from_median_life over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_from_median_life_array(
    count: usize,
    median_life_s: *const f64,
    log_deviation: *const f64,
    mean_from_median_life_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_from_median_life::FORMULA, count, [median_life_s, log_deviation], mean_from_median_life_s_out, status_out) }
}
