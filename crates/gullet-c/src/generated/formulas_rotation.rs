// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::rotation::*;

/// Spindle speed that gives a cutting speed at a diameter.
///
///     n = v_c/(pi D)
///
/// cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed >= 0.
/// diameter_m: D, diameter that cuts: the effective diameter of a ball or bull nose [m]; diameter >
///     0.
/// spindle_speed_rev_per_s_out: n [rev/s].
/// Valid for: any process with a rotating tool or workpiece; n in revolutions per second.
/// Source: definition; symbols of ISO 3002-1 and -3, from memory.
/// Example: cutting_speed=300 ft/min; diameter=0.375 in => 3056 rpm (Bingham, Milling Procedures
///     (teaching web page), seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_spindle_speed(
    cutting_speed_m_per_s: f64,
    diameter_m: f64,
    spindle_speed_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&spindle_speed::FORMULA, &[cutting_speed_m_per_s, diameter_m], spindle_speed_rev_per_s_out) }
}

/// gullet_spindle_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_spindle_speed_array(
    count: usize,
    cutting_speed_m_per_s: *const f64,
    diameter_m: *const f64,
    spindle_speed_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&spindle_speed::FORMULA, count, [cutting_speed_m_per_s, diameter_m], spindle_speed_rev_per_s_out, status_out) }
}

/// Cutting speed at a diameter that turns at a spindle speed.
///
///     v_c = pi D n
///
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// diameter_m: D, diameter that cuts: the effective diameter of a ball or bull nose [m]; diameter >
///     0.
/// cutting_speed_m_per_s_out: v_c [m/s].
/// Valid for: any process with a rotating tool or workpiece; n in revolutions per second.
/// Source: definition; symbols of ISO 3002-1 and -3, from memory.
/// Example: spindle_speed=150 rpm; diameter=30 mm => 14.13 m/min (El-Hofy, Fundamentals of Machining
///     Processes, 2nd ed., p.189 face-milling example (publisher excerpt), seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_speed(
    spindle_speed_rev_per_s: f64,
    diameter_m: f64,
    cutting_speed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&cutting_speed::FORMULA, &[spindle_speed_rev_per_s, diameter_m], cutting_speed_m_per_s_out) }
}

/// gullet_cutting_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutting_speed_array(
    count: usize,
    spindle_speed_rev_per_s: *const f64,
    diameter_m: *const f64,
    cutting_speed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&cutting_speed::FORMULA, count, [spindle_speed_rev_per_s, diameter_m], cutting_speed_m_per_s_out, status_out) }
}

/// Spindle speed by the shop rule K times cutting speed in ft/min over diameter in inches.
///
///     n = K v_c/(12 D)
///
/// cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed >= 0.
/// diameter_m: D, diameter that cuts [m]; diameter > 0.
/// constant: K, constant of the rule: 4 or 3.82 [-]; constant > 0.
/// rule_of_thumb_speed_rev_per_s_out: n [rev/s].
/// Valid for: a shop rule for mental arithmetic, not the exact speed: the exact constant is 12/pi =
///     3.8197, so K = 4 reads 4.72 % high (factor pi/3) and K = 3.82 reads 0.0074 % high; the 12
///     turns feet into inches, so that K stands for rpm, ft/min and in.
/// Source: shop rule on student-shop sheets and in a chapter of the Society of Manufacturing
///     Engineers, both seen; error derived.
/// Example: cutting_speed=300 ft/min; diameter=0.5 in => 2400 rpm (identity: 4 x 300/0.5).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_rule_of_thumb_speed(
    cutting_speed_m_per_s: f64,
    diameter_m: f64,
    constant: f64,
    rule_of_thumb_speed_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&rule_of_thumb_speed::FORMULA, &[cutting_speed_m_per_s, diameter_m, constant], rule_of_thumb_speed_rev_per_s_out) }
}

/// gullet_rule_of_thumb_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_rule_of_thumb_speed_array(
    count: usize,
    cutting_speed_m_per_s: *const f64,
    diameter_m: *const f64,
    constant: *const f64,
    rule_of_thumb_speed_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&rule_of_thumb_speed::FORMULA, count, [cutting_speed_m_per_s, diameter_m, constant], rule_of_thumb_speed_rev_per_s_out, status_out) }
}

/// Feed per revolution of a cutter with several teeth.
///
///     f = f_z z
///
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// teeth: z, effective teeth [-]; teeth >= 1.
/// feed_per_rev_m_out: f [m].
/// Valid for: z counts the teeth that share one cut: half of them for one flank of a staggered side
///     cutter, one where run-out exceeds the feed per tooth.
/// Source: definition; symbols of ISO 3002-3, from memory.
/// Example: feed_per_tooth=0.05 mm; teeth=4 => 0.2 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_per_rev(
    feed_per_tooth_m: f64,
    teeth: f64,
    feed_per_rev_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_per_rev::FORMULA, &[feed_per_tooth_m, teeth], feed_per_rev_m_out) }
}

/// gullet_feed_per_rev over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_per_rev_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    teeth: *const f64,
    feed_per_rev_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_per_rev::FORMULA, count, [feed_per_tooth_m, teeth], feed_per_rev_m_out, status_out) }
}

/// Table feed of a milling cutter.
///
///     v_f = f_z z n
///
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth >= 0.
/// teeth: z, effective teeth [-]; teeth >= 1.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// table_feed_m_per_s_out: v_f [m/s].
/// Valid for: feed of the cutter's axis relative to the work; n in revolutions per second.
/// Source: definition; symbols of ISO 3002-3, from memory.
/// Example: feed_per_tooth=0.001 in; teeth=2; spindle_speed=3056 rpm => 6.1 in/min (Bingham, Milling
///     Procedures (teaching web page), seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_table_feed(
    feed_per_tooth_m: f64,
    teeth: f64,
    spindle_speed_rev_per_s: f64,
    table_feed_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&table_feed::FORMULA, &[feed_per_tooth_m, teeth, spindle_speed_rev_per_s], table_feed_m_per_s_out) }
}

/// gullet_table_feed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_table_feed_array(
    count: usize,
    feed_per_tooth_m: *const f64,
    teeth: *const f64,
    spindle_speed_rev_per_s: *const f64,
    table_feed_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&table_feed::FORMULA, count, [feed_per_tooth_m, teeth, spindle_speed_rev_per_s], table_feed_m_per_s_out, status_out) }
}

/// Feed per tooth that a table feed amounts to.
///
///     f_z = v_f/(z n)
///
/// table_feed_m_per_s: v_f, table feed [m/s]; table_feed >= 0.
/// teeth: z, effective teeth [-]; teeth >= 1.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed > 0.
/// feed_per_tooth_m_out: f_z [m].
/// Valid for: feed of the cutter's axis relative to the work; n in revolutions per second.
/// Source: definition; symbols of ISO 3002-3, from memory.
/// Example: table_feed=600 mm/min; teeth=10; spindle_speed=100 rpm => 0.6 mm (Kalpakjian & Schmid,
///     Manufacturing Engineering & Technology, Ex. 24.2 p.667 (open textbook-companion file), seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_per_tooth(
    table_feed_m_per_s: f64,
    teeth: f64,
    spindle_speed_rev_per_s: f64,
    feed_per_tooth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_per_tooth::FORMULA, &[table_feed_m_per_s, teeth, spindle_speed_rev_per_s], feed_per_tooth_m_out) }
}

/// gullet_feed_per_tooth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_per_tooth_array(
    count: usize,
    table_feed_m_per_s: *const f64,
    teeth: *const f64,
    spindle_speed_rev_per_s: *const f64,
    feed_per_tooth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_per_tooth::FORMULA, count, [table_feed_m_per_s, teeth, spindle_speed_rev_per_s], feed_per_tooth_m_out, status_out) }
}

/// Spindle speed at which a table feed gives a feed per tooth.
///
///     n = v_f/(f_z z)
///
/// table_feed_m_per_s: v_f, table feed [m/s]; table_feed >= 0.
/// feed_per_tooth_m: f_z, feed per tooth [m]; feed_per_tooth > 0.
/// teeth: z, effective teeth [-]; teeth >= 1.
/// spindle_speed_for_feed_rev_per_s_out: n [rev/s].
/// Valid for: feed of the cutter's axis relative to the work; n in revolutions per second.
/// Source: definition; symbols of ISO 3002-3, from memory.
/// Example: table_feed=120 mm/min; feed_per_tooth=0.1 mm; teeth=8 => 150 rpm (El-Hofy, Fundamentals
///     of Machining Processes, 2nd ed., p.189 face-milling example (publisher excerpt), seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_spindle_speed_for_feed(
    table_feed_m_per_s: f64,
    feed_per_tooth_m: f64,
    teeth: f64,
    spindle_speed_for_feed_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&spindle_speed_for_feed::FORMULA, &[table_feed_m_per_s, feed_per_tooth_m, teeth], spindle_speed_for_feed_rev_per_s_out) }
}

/// gullet_spindle_speed_for_feed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_spindle_speed_for_feed_array(
    count: usize,
    table_feed_m_per_s: *const f64,
    feed_per_tooth_m: *const f64,
    teeth: *const f64,
    spindle_speed_for_feed_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&spindle_speed_for_feed::FORMULA, count, [table_feed_m_per_s, feed_per_tooth_m, teeth], spindle_speed_for_feed_rev_per_s_out, status_out) }
}

/// Feed rate that a feed per revolution gives.
///
///     v_f = f n
///
/// feed_per_rev_m: f, feed per revolution; the lead in tapping [m]; feed_per_rev >= 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// feed_rate_m_per_s_out: v_f [m/s].
/// Valid for: turning, boring, drilling, reaming; tapping with f = lead; n in revolutions per
///     second.
/// Source: definition; symbols of ISO 3002-3, from memory.
/// Example: feed_per_rev=0.24 mm; spindle_speed=176 rpm => 42.24 mm/min (own arithmetic on the
///     inputs of Rao P.N., Manufacturing Technology vol. 2, 2nd ed., p.130).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_rate(
    feed_per_rev_m: f64,
    spindle_speed_rev_per_s: f64,
    feed_rate_m_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_rate::FORMULA, &[feed_per_rev_m, spindle_speed_rev_per_s], feed_rate_m_per_s_out) }
}

/// gullet_feed_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_rate_array(
    count: usize,
    feed_per_rev_m: *const f64,
    spindle_speed_rev_per_s: *const f64,
    feed_rate_m_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_rate::FORMULA, count, [feed_per_rev_m, spindle_speed_rev_per_s], feed_rate_m_per_s_out, status_out) }
}

/// Spindle speed of a belt step.
///
///     n = n_m d_1/d_2
///
/// motor_speed_rev_per_s: n_m, speed of the driving pulley [rev/s]; motor_speed >= 0.
/// driver_diameter_m: d_1, diameter of the driving pulley [m]; driver_diameter > 0.
/// driven_diameter_m: d_2, diameter of the driven pulley [m]; driven_diameter > 0.
/// pulley_speed_rev_per_s_out: n [rev/s].
/// Valid for: one belt without slip; n in revolutions per second.
/// Source: derived: both pulleys run at the belt's speed.
/// Example: motor_speed=1200 rpm; driver_diameter=6 in; driven_diameter=1.5 in => 4800 rpm (public
///     training pages on milling machines, milling machine 6, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_pulley_speed(
    motor_speed_rev_per_s: f64,
    driver_diameter_m: f64,
    driven_diameter_m: f64,
    pulley_speed_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&pulley_speed::FORMULA, &[motor_speed_rev_per_s, driver_diameter_m, driven_diameter_m], pulley_speed_rev_per_s_out) }
}

/// gullet_pulley_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_pulley_speed_array(
    count: usize,
    motor_speed_rev_per_s: *const f64,
    driver_diameter_m: *const f64,
    driven_diameter_m: *const f64,
    pulley_speed_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&pulley_speed::FORMULA, count, [motor_speed_rev_per_s, driver_diameter_m, driven_diameter_m], pulley_speed_rev_per_s_out, status_out) }
}

/// Ratio of neighbouring speeds in a geometric series of spindle speeds.
///
///     q = (n_max/n_min)^(1/(k - 1))
///
/// lowest_rev_per_s: n_min, lowest speed [rev/s]; 0 < lowest <= highest.
/// highest_rev_per_s: n_max, highest speed [rev/s]; highest > 0.
/// steps: k, number of speeds [-]; steps >= 2.
/// geometric_step_ratio_out: q [-].
/// Valid for: series designed after ISO 3 preferred numbers and the like.
/// Source: definition of a geometric series; P.C. Sharma, A Textbook of Production Engineering, Ex.
///     22.2 p.778, seen in a companion.
/// Example: lowest=72 rpm; highest=720 rpm; steps=11 => 1.2589 (public solution: 11 spindle speeds
///     from 72 to 720 rpm in geometric progression, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_geometric_step_ratio(
    lowest_rev_per_s: f64,
    highest_rev_per_s: f64,
    steps: f64,
    geometric_step_ratio_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&geometric_step_ratio::FORMULA, &[lowest_rev_per_s, highest_rev_per_s, steps], geometric_step_ratio_out) }
}

/// gullet_geometric_step_ratio over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_geometric_step_ratio_array(
    count: usize,
    lowest_rev_per_s: *const f64,
    highest_rev_per_s: *const f64,
    steps: *const f64,
    geometric_step_ratio_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&geometric_step_ratio::FORMULA, count, [lowest_rev_per_s, highest_rev_per_s, steps], geometric_step_ratio_out, status_out) }
}

/// One speed of a geometric series of spindle speeds.
///
///     n_i = n_min (n_max/n_min)^((i - 1)/(k - 1))
///
/// lowest_rev_per_s: n_min, lowest speed [rev/s]; 0 < lowest <= highest.
/// highest_rev_per_s: n_max, highest speed [rev/s]; highest > 0.
/// steps: k, number of speeds [-]; steps >= 2.
/// index: i, place in the series, 1 for the lowest speed [-]; 1 <= index <= steps.
/// geometric_step_speed_rev_per_s_out: n_i [rev/s].
/// Valid for: series designed after ISO 3 preferred numbers and the like; the speeds on a machine's
///     plate are rounded.
/// Source: definition of a geometric series; P.C. Sharma, A Textbook of Production Engineering, Ex.
///     22.2 p.778, seen in a companion.
/// Example: lowest=72 rpm; highest=720 rpm; steps=11; index=5 => 180.85 rpm (public solution: 11
///     spindle speeds from 72 to 720 rpm in geometric progression, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_geometric_step_speed(
    lowest_rev_per_s: f64,
    highest_rev_per_s: f64,
    steps: f64,
    index: f64,
    geometric_step_speed_rev_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&geometric_step_speed::FORMULA, &[lowest_rev_per_s, highest_rev_per_s, steps, index], geometric_step_speed_rev_per_s_out) }
}

/// gullet_geometric_step_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_geometric_step_speed_array(
    count: usize,
    lowest_rev_per_s: *const f64,
    highest_rev_per_s: *const f64,
    steps: *const f64,
    index: *const f64,
    geometric_step_speed_rev_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&geometric_step_speed::FORMULA, count, [lowest_rev_per_s, highest_rev_per_s, steps, index], geometric_step_speed_rev_per_s_out, status_out) }
}
