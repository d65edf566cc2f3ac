// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::sawing::*;

/// Tooth pitch of a saw blade whose teeth per inch are given.
///
///     p = 25.4 mm/z_i
///
/// teeth_per_inch: z_i, teeth per inch; of a variable blade such as 3/4 the mean, 3.5 [-];
///     teeth_per_inch > 0.
/// saw_tooth_pitch_m_out: p [m].
/// Valid for: even pitch, or the mean of a variable one.
/// Source: definition of the inch.
/// Example: teeth_per_inch=10 => 0.1 in (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_tooth_pitch(
    teeth_per_inch: f64,
    saw_tooth_pitch_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&saw_tooth_pitch::FORMULA, &[teeth_per_inch], saw_tooth_pitch_m_out) }
}

/// gullet_saw_tooth_pitch over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_tooth_pitch_array(
    count: usize,
    teeth_per_inch: *const f64,
    saw_tooth_pitch_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&saw_tooth_pitch::FORMULA, count, [teeth_per_inch], saw_tooth_pitch_m_out, status_out) }
}

/// Teeth of a saw blade that are in the work at one time.
///
///     z_w = w/p
///
/// width_m: w, width of the work along the blade; of a tube the longest single crossing of the wall
///     [m]; width >= 0.
/// tooth_pitch_m: p, tooth pitch [m]; tooth_pitch > 0.
/// teeth_in_work_out: z_w [-].
/// Valid for: 3 to 24 teeth (common practice, no source): fewer strip, more clog their gullets and
///     rub.
/// Source: definition.
/// Example: width=2 in; tooth_pitch=0.25 in => 8 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_teeth_in_work(
    width_m: f64,
    tooth_pitch_m: f64,
    teeth_in_work_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&teeth_in_work::FORMULA, &[width_m, tooth_pitch_m], teeth_in_work_out) }
}

/// gullet_teeth_in_work over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_teeth_in_work_array(
    count: usize,
    width_m: *const f64,
    tooth_pitch_m: *const f64,
    teeth_in_work_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&teeth_in_work::FORMULA, count, [width_m, tooth_pitch_m], teeth_in_work_out, status_out) }
}

/// Tooth pitch that keeps a number of teeth in the work.
///
///     p = w/z_w
///
/// width_m: w, width of the work along the blade [m]; width >= 0.
/// teeth_in_work: z_w, teeth in the work: the fewest for the coarsest pitch, the most for the finest
///     [-]; teeth_in_work > 0.
/// saw_pitch_for_teeth_m_out: p [m].
/// Valid for: width of the work where it is narrowest for the coarsest pitch, widest for the finest.
/// Source: derived: inverse of teeth_in_work.
/// Example: width=0.25 in; teeth_in_work=3 => 2.11666666667 mm (identity: 12 teeth an inch).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_pitch_for_teeth(
    width_m: f64,
    teeth_in_work: f64,
    saw_pitch_for_teeth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&saw_pitch_for_teeth::FORMULA, &[width_m, teeth_in_work], saw_pitch_for_teeth_m_out) }
}

/// gullet_saw_pitch_for_teeth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_pitch_for_teeth_array(
    count: usize,
    width_m: *const f64,
    teeth_in_work: *const f64,
    saw_pitch_for_teeth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&saw_pitch_for_teeth::FORMULA, count, [width_m, teeth_in_work], saw_pitch_for_teeth_m_out, status_out) }
}

/// Factor on the blade speed of a bimetal blade for the width of the stock.
///
///     k_w = 1.15 - 0.03 s_1 - 0.02 s_2 - 0.05 s_3 - 0.05 s_4 - 0.12 s_5; s_1 = min(max((w - 6.35
///         mm)/12.7 mm, 0), 1); s_2 = min(max((w - 19.05 mm)/12.7 mm, 0), 1); s_3 = min(max((w -
///         31.75 mm)/31.75 mm, 0), 1); s_4 = min(max((w - 63.5 mm)/38.1 mm, 0), 1); s_5 = min(max((w
///         - 101.6 mm)/101.6 mm, 0), 1)
///
/// width_m: w, width of the stock along the blade [m]; width > 0.
/// saw_stock_factor_out: k_w [-].
/// Valid for: against the speed for 4 in stock cut with fluid; straight lines between the printed
///     sizes 1/4, 3/4, 1 1/4, 2 1/2, 4 and 8 in, constant beyond them; each size with its usual
///     tooth pitch.
/// Source: E. Oberg et al., Machinery's Handbook, 31st ed., p.1245, seen; 2 1/2 in: manual of a
///     band-saw machine, seen.
/// Example: width=8 in => 88 % (E. Oberg et al., Machinery's Handbook, 31st ed., p.1245, seen: 12 %
///     less).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_stock_factor(
    width_m: f64,
    saw_stock_factor_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&saw_stock_factor::FORMULA, &[width_m], saw_stock_factor_out) }
}

/// gullet_saw_stock_factor over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_stock_factor_array(
    count: usize,
    width_m: *const f64,
    saw_stock_factor_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&saw_stock_factor::FORMULA, count, [width_m], saw_stock_factor_out, status_out) }
}

/// Blade speed of a band saw from the speed of a table.
///
///     v_c = k_w k_d k_b v_t
///
/// table_speed_m_per_s: v_t, blade speed of the table, for 4 in stock cut with fluid by a bimetal
///     blade [m/s]; table_speed > 0.
/// stock_factor: k_w, factor for the width of the stock [-]; stock_factor > 0.
/// dry_factor: k_d, 1 with fluid, 0.5 to 0.7 dry [-]; 0 < dry_factor <= 1.
/// blade_factor: k_b, 1 for a bimetal blade, 0.5 for a carbon steel one [-]; blade_factor > 0.
/// saw_blade_speed_m_per_s_out: v_c [m/s].
/// Valid for: the factors multiply as if they knew nothing of each other.
/// Source: factors: E. Oberg et al., Machinery's Handbook, 31st ed., p.1245, seen.
/// Example: table_speed=300 ft/min; stock_factor=0.88; blade_factor=0.5 => 132 ft/min (own
///     arithmetic: 300 x 0.88 x 0.5).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_blade_speed(
    table_speed_m_per_s: f64,
    stock_factor: f64,
    dry_factor: f64,
    blade_factor: f64,
    saw_blade_speed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&saw_blade_speed::FORMULA, &[table_speed_m_per_s, stock_factor, dry_factor, blade_factor], saw_blade_speed_m_per_s_out) }
}

/// gullet_saw_blade_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_blade_speed_array(
    count: usize,
    table_speed_m_per_s: *const f64,
    stock_factor: *const f64,
    dry_factor: *const f64,
    blade_factor: *const f64,
    saw_blade_speed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&saw_blade_speed::FORMULA, count, [table_speed_m_per_s, stock_factor, dry_factor, blade_factor], saw_blade_speed_m_per_s_out, status_out) }
}

/// Speed at which a saw blade sinks into the work at a feed per tooth.
///
///     v_f = v_c f_z/p
///
/// blade_speed_m_per_s: v_c, blade speed [m/s]; blade_speed >= 0.
/// feed_per_tooth_m: f_z, advance per tooth [m]; feed_per_tooth >= 0.
/// tooth_pitch_m: p, tooth pitch [m]; tooth_pitch > 0.
/// saw_feed_speed_m_per_s_out: v_f [m/s].
/// Valid for: every tooth cuts.
/// Source: derived: teeth passing per time.
/// Example: blade_speed=60 m/min; feed_per_tooth=0.002 mm; tooth_pitch=6 mm => 20 mm/min (identity:
///     10 000 teeth a minute).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_feed_speed(
    blade_speed_m_per_s: f64,
    feed_per_tooth_m: f64,
    tooth_pitch_m: f64,
    saw_feed_speed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&saw_feed_speed::FORMULA, &[blade_speed_m_per_s, feed_per_tooth_m, tooth_pitch_m], saw_feed_speed_m_per_s_out) }
}

/// gullet_saw_feed_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_feed_speed_array(
    count: usize,
    blade_speed_m_per_s: *const f64,
    feed_per_tooth_m: *const f64,
    tooth_pitch_m: *const f64,
    saw_feed_speed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&saw_feed_speed::FORMULA, count, [blade_speed_m_per_s, feed_per_tooth_m, tooth_pitch_m], saw_feed_speed_m_per_s_out, status_out) }
}

/// Teeth of a saw blade that pass while its driving wheel turns once.
///
///     z_r = pi D_w/p
///
/// wheel_diameter_m: D_w, diameter of the wheel that drives the blade [m]; wheel_diameter > 0.
/// tooth_pitch_m: p, tooth pitch [m]; tooth_pitch > 0.
/// saw_teeth_per_turn_out: z_r [-].
/// Valid for: the blade does not slip; its thickness beside the wheel is left out.
/// Source: definition.
/// Example: wheel_diameter=350 mm; tooth_pitch=7 mm => 157.079632679 (identity: 50 pi).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_teeth_per_turn(
    wheel_diameter_m: f64,
    tooth_pitch_m: f64,
    saw_teeth_per_turn_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&saw_teeth_per_turn::FORMULA, &[wheel_diameter_m, tooth_pitch_m], saw_teeth_per_turn_out) }
}

/// gullet_saw_teeth_per_turn over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_teeth_per_turn_array(
    count: usize,
    wheel_diameter_m: *const f64,
    tooth_pitch_m: *const f64,
    saw_teeth_per_turn_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&saw_teeth_per_turn::FORMULA, count, [wheel_diameter_m, tooth_pitch_m], saw_teeth_per_turn_out, status_out) }
}

/// Advance per tooth of a saw blade that a feed speed amounts to.
///
///     f_z = v_f p/v_c
///
/// feed_speed_m_per_s: v_f, speed at which the blade sinks into the work [m/s]; feed_speed >= 0.
/// blade_speed_m_per_s: v_c, blade speed [m/s]; blade_speed > 0.
/// tooth_pitch_m: p, tooth pitch [m]; tooth_pitch > 0.
/// saw_feed_per_tooth_m_out: f_z [m].
/// Valid for: every tooth cuts.
/// Source: derived: inverse of saw_feed_speed.
/// Example: feed_speed=20 mm/min; blade_speed=60 m/min; tooth_pitch=6 mm => 0.002 mm (identity: 10
///     000 teeth a minute).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_feed_per_tooth(
    feed_speed_m_per_s: f64,
    blade_speed_m_per_s: f64,
    tooth_pitch_m: f64,
    saw_feed_per_tooth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&saw_feed_per_tooth::FORMULA, &[feed_speed_m_per_s, blade_speed_m_per_s, tooth_pitch_m], saw_feed_per_tooth_m_out) }
}

/// gullet_saw_feed_per_tooth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_feed_per_tooth_array(
    count: usize,
    feed_speed_m_per_s: *const f64,
    blade_speed_m_per_s: *const f64,
    tooth_pitch_m: *const f64,
    saw_feed_per_tooth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&saw_feed_per_tooth::FORMULA, count, [feed_speed_m_per_s, blade_speed_m_per_s, tooth_pitch_m], saw_feed_per_tooth_m_out, status_out) }
}

/// Area that a saw cuts per time.
///
///     q = v_f w
///
/// feed_speed_m_per_s: v_f, speed at which the blade sinks into the work [m/s]; feed_speed >= 0.
/// width_m: w, width of the work along the blade [m]; width >= 0.
/// sawing_area_rate_m2_per_s_out: q [m2/s].
/// Valid for: width at this moment, or the mean one over the cut.
/// Source: definition.
/// Example: feed_speed=0.5 in/min; width=4 in => 2 in2/min (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_sawing_area_rate(
    feed_speed_m_per_s: f64,
    width_m: f64,
    sawing_area_rate_m2_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&sawing_area_rate::FORMULA, &[feed_speed_m_per_s, width_m], sawing_area_rate_m2_per_s_out) }
}

/// gullet_sawing_area_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_sawing_area_rate_array(
    count: usize,
    feed_speed_m_per_s: *const f64,
    width_m: *const f64,
    sawing_area_rate_m2_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&sawing_area_rate::FORMULA, count, [feed_speed_m_per_s, width_m], sawing_area_rate_m2_per_s_out, status_out) }
}

/// Speed at which a saw blade sinks into the work at an area per time.
///
///     v_f = q/w
///
/// area_rate_m2_per_s: q, area sawn per time [m2/s]; area_rate >= 0.
/// width_m: w, width of the work along the blade, or the mean one over the cut [m]; width > 0.
/// saw_feed_speed_for_area_rate_m_per_s_out: v_f [m/s].
/// Valid for: constant area per time: slower where the work is wide.
/// Source: derived: inverse of sawing_area_rate.
/// Example: area_rate=2 in2/min; width=4 in => 0.5 in/min (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_feed_speed_for_area_rate(
    area_rate_m2_per_s: f64,
    width_m: f64,
    saw_feed_speed_for_area_rate_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&saw_feed_speed_for_area_rate::FORMULA, &[area_rate_m2_per_s, width_m], saw_feed_speed_for_area_rate_m_per_s_out) }
}

/// gullet_saw_feed_speed_for_area_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_saw_feed_speed_for_area_rate_array(
    count: usize,
    area_rate_m2_per_s: *const f64,
    width_m: *const f64,
    saw_feed_speed_for_area_rate_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&saw_feed_speed_for_area_rate::FORMULA, count, [area_rate_m2_per_s, width_m], saw_feed_speed_for_area_rate_m_per_s_out, status_out) }
}

/// Removal rate of a saw.
///
///     Q = q b
///
/// area_rate_m2_per_s: q, area sawn per time [m2/s]; area_rate >= 0.
/// kerf_m: b, width of the cut that the set teeth make [m]; kerf >= 0.
/// sawing_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: kerf wider than the blade by the set on both sides.
/// Source: definition.
/// Example: area_rate=20 cm2/min; kerf=1.6 mm => 3.2 cm3/min (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_sawing_removal_rate(
    area_rate_m2_per_s: f64,
    kerf_m: f64,
    sawing_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&sawing_removal_rate::FORMULA, &[area_rate_m2_per_s, kerf_m], sawing_removal_rate_m3_per_s_out) }
}

/// gullet_sawing_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_sawing_removal_rate_array(
    count: usize,
    area_rate_m2_per_s: *const f64,
    kerf_m: *const f64,
    sawing_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&sawing_removal_rate::FORMULA, count, [area_rate_m2_per_s, kerf_m], sawing_removal_rate_m3_per_s_out, status_out) }
}

/// Area of a round section, solid or a tube.
///
///     A = pi (D^2 - d^2)/4
///
/// outer_diameter_m: D, outer diameter [m]; outer_diameter > 0.
/// inner_diameter_m: d, inner diameter, 0 for a solid bar [m]; 0 <= inner_diameter <=
///     outer_diameter.
/// round_section_area_m2_out: A [m2].
/// Valid for: cut square to the axis.
/// Source: geometry.
/// Example: outer_diameter=4 in; inner_diameter=3 in => 5.5 in2 (manual of a band-saw machine: 12.5
///     less 7.0 in2, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_round_section_area(
    outer_diameter_m: f64,
    inner_diameter_m: f64,
    round_section_area_m2_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&round_section_area::FORMULA, &[outer_diameter_m, inner_diameter_m], round_section_area_m2_out) }
}

/// gullet_round_section_area over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_round_section_area_array(
    count: usize,
    outer_diameter_m: *const f64,
    inner_diameter_m: *const f64,
    round_section_area_m2_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&round_section_area::FORMULA, count, [outer_diameter_m, inner_diameter_m], round_section_area_m2_out, status_out) }
}
