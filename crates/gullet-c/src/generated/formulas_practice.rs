// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::practice::*;

/// Cutting speed wanted: the table's value times the practice's factor.
///
///     v_w = k_v v_t
///
/// table_speed_m_per_s: v_t, cutting speed of the table [m/s]; table_speed > 0.
/// speed_factor: k_v, factor of the practice [-]; speed_factor > 0.
/// practice_cutting_speed_m_per_s_out: v_w [m/s].
/// Valid for: factors near 1; the table's value already belongs to the work and cutter material.
/// Source: definition of a factor; the factor itself is the practice's.
/// Example: table_speed=200 ft/min; speed_factor=0.8 => 160 ft/min (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_practice_cutting_speed(
    table_speed_m_per_s: f64,
    speed_factor: f64,
    practice_cutting_speed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&practice_cutting_speed::FORMULA, &[table_speed_m_per_s, speed_factor], practice_cutting_speed_m_per_s_out) }
}

/// gullet_practice_cutting_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_practice_cutting_speed_array(
    count: usize,
    table_speed_m_per_s: *const f64,
    speed_factor: *const f64,
    practice_cutting_speed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&practice_cutting_speed::FORMULA, count, [table_speed_m_per_s, speed_factor], practice_cutting_speed_m_per_s_out, status_out) }
}

/// Largest chip wanted: the table's feed per tooth times the practice's factor.
///
///     h_w = k_f f_t
///
/// table_feed_per_tooth_m: f_t, feed per tooth of the table, the largest chip of a cut at least half
///     the cutter wide [m]; table_feed_per_tooth > 0.
/// feed_factor: k_f, factor of the practice [-]; feed_factor > 0.
/// practice_feed_per_tooth_m_out: h_w [m].
/// Valid for: factors near 1; tables give the feed per tooth of cuts wide enough that the largest
///     chip equals it.
/// Source: definition of a factor; the factor itself is the practice's.
/// Example: table_feed_per_tooth=0.004 in; feed_factor=0.8 => 0.0032 in (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_practice_feed_per_tooth(
    table_feed_per_tooth_m: f64,
    feed_factor: f64,
    practice_feed_per_tooth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&practice_feed_per_tooth::FORMULA, &[table_feed_per_tooth_m, feed_factor], practice_feed_per_tooth_m_out) }
}

/// gullet_practice_feed_per_tooth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_practice_feed_per_tooth_array(
    count: usize,
    table_feed_per_tooth_m: *const f64,
    feed_factor: *const f64,
    practice_feed_per_tooth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&practice_feed_per_tooth::FORMULA, count, [table_feed_per_tooth_m, feed_factor], practice_feed_per_tooth_m_out, status_out) }
}

/// Largest feed per tooth to which chip thinning may raise the wanted chip.
///
///     f_c = c h_w
///
/// wanted_chip_m: h_w, largest chip wanted [m]; wanted_chip > 0.
/// thinning_cap: c, largest factor the practice allows [-]; thinning_cap >= 1.
/// thinning_cap_feed_m_out: f_c [m].
/// Valid for: keeps thin cuts from feeds that the table or the hand cannot follow.
/// Source: common practice, no source.
/// Example: wanted_chip=0.1 mm; thinning_cap=2 => 0.2 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thinning_cap_feed(
    wanted_chip_m: f64,
    thinning_cap: f64,
    thinning_cap_feed_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thinning_cap_feed::FORMULA, &[wanted_chip_m, thinning_cap], thinning_cap_feed_m_out) }
}

/// gullet_thinning_cap_feed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thinning_cap_feed_array(
    count: usize,
    wanted_chip_m: *const f64,
    thinning_cap: *const f64,
    thinning_cap_feed_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thinning_cap_feed::FORMULA, count, [wanted_chip_m, thinning_cap], thinning_cap_feed_m_out, status_out) }
}

/// Largest roughing depth of a pass that the practice allows.
///
///     a_w = k_a D
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// depth_ratio: k_a, depth over diameter that the practice allows for the work's ISO 513 group [-];
///     depth_ratio > 0.
/// practice_depth_m_out: a_w [m].
/// Valid for: roughing passes.
/// Source: common practice, no source.
/// Example: diameter=1/2 in; depth_ratio=0.2 => 0.1 in (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_practice_depth(
    diameter_m: f64,
    depth_ratio: f64,
    practice_depth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&practice_depth::FORMULA, &[diameter_m, depth_ratio], practice_depth_m_out) }
}

/// gullet_practice_depth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_practice_depth_array(
    count: usize,
    diameter_m: *const f64,
    depth_ratio: *const f64,
    practice_depth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&practice_depth::FORMULA, count, [diameter_m, depth_ratio], practice_depth_m_out, status_out) }
}

/// Smallest height of a part that the jaws must grip.
///
///     l_g = k_g H
///
/// part_height_m: H, height of the part along the spindle axis [m]; part_height > 0.
/// smallest_grip: k_g, share of the height that the practice asks for [-]; 0 <= smallest_grip <= 1.
/// grip_for_height_m_out: l_g [m].
/// Valid for: a block in a vise, cut from above.
/// Source: common practice, no source.
/// Example: part_height=30 mm; smallest_grip=0.3 => 9 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_grip_for_height(
    part_height_m: f64,
    smallest_grip: f64,
    grip_for_height_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&grip_for_height::FORMULA, &[part_height_m, smallest_grip], grip_for_height_m_out) }
}

/// gullet_grip_for_height over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_grip_for_height_array(
    count: usize,
    part_height_m: *const f64,
    smallest_grip: *const f64,
    grip_for_height_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&grip_for_height::FORMULA, count, [part_height_m, smallest_grip], grip_for_height_m_out, status_out) }
}

/// Longest stick-out of a cutter that the practice allows.
///
///     l_c = k_l D
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// stick_out_ratio: k_l, stick-out over diameter that the practice allows [-]; stick_out_ratio > 0.
/// stick_out_cap_m_out: l_c [m].
/// Valid for: end mills in a rigid holder.
/// Source: common practice, no source.
/// Example: diameter=10 mm; stick_out_ratio=4 => 40 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stick_out_cap(
    diameter_m: f64,
    stick_out_ratio: f64,
    stick_out_cap_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&stick_out_cap::FORMULA, &[diameter_m, stick_out_ratio], stick_out_cap_m_out) }
}

/// gullet_stick_out_cap over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stick_out_cap_array(
    count: usize,
    diameter_m: *const f64,
    stick_out_ratio: *const f64,
    stick_out_cap_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&stick_out_cap::FORMULA, count, [diameter_m, stick_out_ratio], stick_out_cap_m_out, status_out) }
}

/// Power at the cutter that a practice uses of a motor's rating.
///
///     P_u = k_p eta P_m
///
/// rated_motor_power_w: P_m, rated power of the spindle motor [W]; rated_motor_power >= 0.
/// efficiency: eta, efficiency of the drive [-]; 0 < efficiency <= 1.
/// power_share: k_p, share of the power that the practice uses [-]; 0 < power_share <= 1.
/// usable_power_w_out: P_u [W].
/// Valid for: continuous rating of the motor; above the base speed or with a belt step.
/// Source: definition of efficiency; the share is the practice's.
/// Example: rated_motor_power=1.5 kW; efficiency=80 %; power_share=0.5 => 0.6 kW (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_usable_power(
    rated_motor_power_w: f64,
    efficiency: f64,
    power_share: f64,
    usable_power_w_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&usable_power::FORMULA, &[rated_motor_power_w, efficiency, power_share], usable_power_w_out) }
}

/// gullet_usable_power over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_usable_power_array(
    count: usize,
    rated_motor_power_w: *const f64,
    efficiency: *const f64,
    power_share: *const f64,
    usable_power_w_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&usable_power::FORMULA, count, [rated_motor_power_w, efficiency, power_share], usable_power_w_out, status_out) }
}

/// Feed per tooth at which a load that follows the power law of the chip just meets its limit.
///
///     f_q = f_z q^(-1/(1 - m_c))
///
/// feed_per_tooth_m: f_z, feed per tooth at which the load was found [m]; feed_per_tooth > 0.
/// load_share: q, load over its limit at that feed [-]; load_share > 0.
/// chip_exponent: m_c, exponent m_c of the specific cutting force [-]; 0 <= chip_exponent < 1.
/// feed_for_load_share_m_out: f_q [m].
/// Valid for: loads in proportion to k_c h, that is to h^(1 - m_c): force, torque, power,
///     deflection, clamping force at one depth and speed.
/// Source: derived from k_c = k_c11 h^(-m_c): the load grows with f_z^(1 - m_c).
/// Example: feed_per_tooth=0.1 mm; load_share=2; chip_exponent=0.5 => 0.025 mm (own arithmetic:
///     2^(-2)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_load_share(
    feed_per_tooth_m: f64,
    load_share: f64,
    chip_exponent: f64,
    feed_for_load_share_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_for_load_share::FORMULA, &[feed_per_tooth_m, load_share, chip_exponent], feed_for_load_share_m_out) }
}

/// gullet_feed_for_load_share over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_load_share_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    load_share: *const f64,
    chip_exponent: *const f64,
    feed_for_load_share_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_for_load_share::FORMULA, count, [feed_per_tooth_m, load_share, chip_exponent], feed_for_load_share_m_out, status_out) }
}

/// Feed per revolution whose feed marks on a milled wall have a mean roughness.
///
///     f_r = sqrt(9 sqrt(3) D R_a)
///
/// mean_roughness_m: R_a, mean roughness wanted [m]; 0 <= mean_roughness <= diameter/(9*sqrt(3)).
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// feed_for_wall_roughness_m_out: f_r [m].
/// Valid for: parabolic feed marks of one tooth a revolution: run-out makes one tooth leave the
///     mark.
/// Source: derived: inverse of h = f^2/(4 D) and R_a = 4 h/(9 sqrt(3)).
/// Example: mean_roughness=0.5345835825 um; diameter=12 mm => 0.31622776 mm (own arithmetic: h =
///     0.1/48 mm, so f^2 = 0.1 mm2).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_wall_roughness(
    mean_roughness_m: f64,
    diameter_m: f64,
    feed_for_wall_roughness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_for_wall_roughness::FORMULA, &[mean_roughness_m, diameter_m], feed_for_wall_roughness_m_out) }
}

/// gullet_feed_for_wall_roughness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_wall_roughness_array(
    count: usize,
    mean_roughness_m: *const f64,
    diameter_m: *const f64,
    feed_for_wall_roughness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_for_wall_roughness::FORMULA, count, [mean_roughness_m, diameter_m], feed_for_wall_roughness_m_out, status_out) }
}

/// Travel of a pass: the cut with approach, overtravel and clearance at both ends.
///
///     s = l + l_a + l_u + 2 l_c
///
/// cut_length_m: l, length of the cut [m]; cut_length > 0.
/// approach_m: l_a, travel from first contact to full width [m]; approach >= 0.
/// overtravel_m: l_u, travel past the end until the cutter is clear of the surface [m]; overtravel
///     >= 0.
/// clearance_m: l_c, clearance at each end [m]; clearance >= 0.
/// cut_travel_m_out: s [m].
/// Valid for: one straight pass.
/// Source: definition; clearance is the practice's.
/// Example: cut_length=100 mm; approach=14 mm; overtravel=14 mm; clearance=0 mm => 128 mm (own
///     arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cut_travel(
    cut_length_m: f64,
    approach_m: f64,
    overtravel_m: f64,
    clearance_m: f64,
    cut_travel_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&cut_travel::FORMULA, &[cut_length_m, approach_m, overtravel_m, clearance_m], cut_travel_m_out) }
}

/// gullet_cut_travel over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cut_travel_array(
    count: usize,
    cut_length_m: *const f64,
    approach_m: *const f64,
    overtravel_m: *const f64,
    clearance_m: *const f64,
    cut_travel_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&cut_travel::FORMULA, count, [cut_length_m, approach_m, overtravel_m, clearance_m], cut_travel_m_out, status_out) }
}

/// Axial depth at which a load in proportion to it just meets its limit.
///
///     a_q = a_p/q
///
/// axial_depth_m: a_p, axial depth at which the load was found [m]; axial_depth > 0.
/// load_share: q, load over its limit at that depth [-]; load_share > 0.
/// depth_for_load_share_m_out: a_q [m].
/// Valid for: force, torque, power, deflection and clamping force at one speed, feed and radial
///     depth; square-ended cutters.
/// Source: derived: the width of the chip is in proportion to a_p.
/// Example: axial_depth=10 mm; load_share=1.25 => 8 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_depth_for_load_share(
    axial_depth_m: f64,
    load_share: f64,
    depth_for_load_share_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&depth_for_load_share::FORMULA, &[axial_depth_m, load_share], depth_for_load_share_m_out) }
}

/// gullet_depth_for_load_share over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_depth_for_load_share_array(
    count: usize,
    axial_depth_m: *const f64,
    load_share: *const f64,
    depth_for_load_share_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&depth_for_load_share::FORMULA, count, [axial_depth_m, load_share], depth_for_load_share_m_out, status_out) }
}
