// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::removal::*;

/// Removal rate of a milling cut.
///
///     Q = a_p a_e v_f
///
/// axial_depth_m: a_p, depth of cut along the axis, in face and side milling alike [m]; axial_depth
///     >= 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; radial_depth >= 0.
/// table_feed_m_per_s: v_f, table feed [m/s]; table_feed >= 0.
/// milling_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: full engagement, constant section; the mean over a pass with approach and overtravel
///     is lower.
/// Source: derived: section times feed.
/// Example: axial_depth=3 mm; radial_depth=60 mm; table_feed=600 mm/min => 108000 mm3/min
///     (Kalpakjian & Schmid, Manufacturing Engineering & Technology, Ex. 24.2 p.667 (open
///     textbook-companion file), seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_milling_removal_rate(
    axial_depth_m: f64,
    radial_depth_m: f64,
    table_feed_m_per_s: f64,
    milling_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&milling_removal_rate::FORMULA, &[axial_depth_m, radial_depth_m, table_feed_m_per_s], milling_removal_rate_m3_per_s_out) }
}

/// gullet_milling_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_milling_removal_rate_array(
    count: usize,
    axial_depth_m: *const f64,
    radial_depth_m: *const f64,
    table_feed_m_per_s: *const f64,
    milling_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&milling_removal_rate::FORMULA, count, [axial_depth_m, radial_depth_m, table_feed_m_per_s], milling_removal_rate_m3_per_s_out, status_out) }
}

/// Axial depth of the plain cut that removes as much as another at the same radial depth and feed.
///
///     a_p = Q/(a_e v_f)
///
/// removal_rate_m3_per_s: Q, removal rate [m3/s]; removal_rate >= 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; radial_depth > 0.
/// table_feed_m_per_s: v_f, feed of the cutter's axis [m/s]; table_feed > 0.
/// axial_depth_for_removal_rate_m_out: a_p [m].
/// Valid for: profiles that take more at their crest than at their foot, such as threads: the mean
///     width of the section.
/// Source: derived: inverse of milling_removal_rate.
/// Example: removal_rate=108000 mm3/min; radial_depth=60 mm; table_feed=600 mm/min => 3 mm (own
///     arithmetic on the inputs of Kalpakjian & Schmid, Manufacturing Engineering & Technology, Ex.
///     24.2 p.667).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_axial_depth_for_removal_rate(
    removal_rate_m3_per_s: f64,
    radial_depth_m: f64,
    table_feed_m_per_s: f64,
    axial_depth_for_removal_rate_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&axial_depth_for_removal_rate::FORMULA, &[removal_rate_m3_per_s, radial_depth_m, table_feed_m_per_s], axial_depth_for_removal_rate_m_out) }
}

/// gullet_axial_depth_for_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_axial_depth_for_removal_rate_array(
    count: usize,
    removal_rate_m3_per_s: *const f64,
    radial_depth_m: *const f64,
    table_feed_m_per_s: *const f64,
    axial_depth_for_removal_rate_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&axial_depth_for_removal_rate::FORMULA, count, [removal_rate_m3_per_s, radial_depth_m, table_feed_m_per_s], axial_depth_for_removal_rate_m_out, status_out) }
}

/// Removal rate of a turning cut.
///
///     Q = v_c f a_p
///
/// cutting_speed_m_per_s: v_c, cutting speed at the mean diameter of the cut [m/s]; cutting_speed >=
///     0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// depth_of_cut_m: a_p, depth of cut, on the radius [m]; depth_of_cut >= 0.
/// turning_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: exact with the speed at the mean diameter D - a_p; the speed at the outer diameter D
///     reads a_p/(D - a_p) high.
/// Source: derived: section times speed, by Pappus's rule at the mean diameter.
/// Example: cutting_speed=145 m/min; feed_per_rev=0.38 mm; depth_of_cut=2 mm => 110.2 cm3/min (own
///     arithmetic on the inputs of Rao P.N., Manufacturing Technology vol. 2, 2nd ed., p.134).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_removal_rate(
    cutting_speed_m_per_s: f64,
    feed_per_rev_m: f64,
    depth_of_cut_m: f64,
    turning_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_removal_rate::FORMULA, &[cutting_speed_m_per_s, feed_per_rev_m, depth_of_cut_m], turning_removal_rate_m3_per_s_out) }
}

/// gullet_turning_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_removal_rate_array(
    count: usize,
    cutting_speed_m_per_s: *const f64,
    feed_per_rev_m: *const f64,
    depth_of_cut_m: *const f64,
    turning_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_removal_rate::FORMULA, count, [cutting_speed_m_per_s, feed_per_rev_m, depth_of_cut_m], turning_removal_rate_m3_per_s_out, status_out) }
}

/// Removal rate of a drill in solid metal.
///
///     Q = (pi D^2/4) f n
///
/// diameter_m: D, drill diameter [m]; diameter >= 0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// drilling_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: solid drilling at full diameter; n in revolutions per second.
/// Source: derived: section times feed rate.
/// Example: diameter=10 mm; feed_per_rev=0.2 mm; spindle_speed=800 rpm => 210 mm3/s (Kalpakjian &
///     Schmid, Manufacturing Engineering & Technology, 4th ed., Ex. 22.2 p.632, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drilling_removal_rate(
    diameter_m: f64,
    feed_per_rev_m: f64,
    spindle_speed_rev_per_s: f64,
    drilling_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&drilling_removal_rate::FORMULA, &[diameter_m, feed_per_rev_m, spindle_speed_rev_per_s], drilling_removal_rate_m3_per_s_out) }
}

/// gullet_drilling_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drilling_removal_rate_array(
    count: usize,
    diameter_m: *const f64,
    feed_per_rev_m: *const f64,
    spindle_speed_rev_per_s: *const f64,
    drilling_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&drilling_removal_rate::FORMULA, count, [diameter_m, feed_per_rev_m, spindle_speed_rev_per_s], drilling_removal_rate_m3_per_s_out, status_out) }
}

/// Removal rate of plunge milling.
///
///     Q = a_e s v_f
///
/// radial_depth_m: a_e, working engagement, across the axis [m]; radial_depth >= 0.
/// side_step_m: s, step between two plunges, along the wall [m]; side_step >= 0.
/// table_feed_m_per_s: v_f, feed along the axis [m/s]; table_feed >= 0.
/// plunge_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: every plunge after the first, step below the cutter's chord at a_e.
/// Source: derived: section times feed.
/// Example: radial_depth=6 mm; side_step=8 mm; table_feed=320 mm/min => 15360 mm3/min (identity;
///     feed of 0.08 mm x 2 teeth x 2000 rpm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plunge_removal_rate(
    radial_depth_m: f64,
    side_step_m: f64,
    table_feed_m_per_s: f64,
    plunge_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&plunge_removal_rate::FORMULA, &[radial_depth_m, side_step_m, table_feed_m_per_s], plunge_removal_rate_m3_per_s_out) }
}

/// gullet_plunge_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plunge_removal_rate_array(
    count: usize,
    radial_depth_m: *const f64,
    side_step_m: *const f64,
    table_feed_m_per_s: *const f64,
    plunge_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&plunge_removal_rate::FORMULA, count, [radial_depth_m, side_step_m, table_feed_m_per_s], plunge_removal_rate_m3_per_s_out, status_out) }
}

/// Removal rate of the first plunge of plunge milling, alone in the stock.
///
///     Q = (D^2/4) (phi_s - sin(phi_s) cos(phi_s)) v_f; phi_s = acos(1 - 2 a_e/D)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 <= radial_depth <= diameter.
/// table_feed_m_per_s: v_f, feed along the axis [m/s]; table_feed >= 0.
/// first_plunge_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: stock wider than the cutter's chord; phi_s in radians; the plunges after it take
///     plunge_removal_rate.
/// Source: derived: segment of a circle times feed.
/// Example: diameter=20 mm; radial_depth=10 mm; table_feed=100 mm/min => 15707.9632679 mm3/min
///     (identity: half a circle, 50 pi mm2 x 100 mm/min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_first_plunge_removal_rate(
    diameter_m: f64,
    radial_depth_m: f64,
    table_feed_m_per_s: f64,
    first_plunge_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&first_plunge_removal_rate::FORMULA, &[diameter_m, radial_depth_m, table_feed_m_per_s], first_plunge_removal_rate_m3_per_s_out) }
}

/// gullet_first_plunge_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_first_plunge_removal_rate_array(
    count: usize,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    table_feed_m_per_s: *const f64,
    first_plunge_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&first_plunge_removal_rate::FORMULA, count, [diameter_m, radial_depth_m, table_feed_m_per_s], first_plunge_removal_rate_m3_per_s_out, status_out) }
}

/// Removal rate of a helix that sinks or widens a bore.
///
///     Q = (pi/4) (D_m - D_w) (D_m + D_w) v_a
///
/// finished_diameter_m: D_m, diameter after the pass [m]; finished_diameter > 0.
/// start_diameter_m: D_w, diameter before the pass, 0 for solid work [m]; 0 <= start_diameter <=
///     finished_diameter.
/// axial_feed_m_per_s: v_a, feed along the axis [m/s]; axial_feed >= 0.
/// bore_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: mean over the turns between the first and the last.
/// Source: derived: ring times feed along the axis.
/// Example: finished_diameter=40 mm; start_diameter=36 mm; axial_feed=10 mm/min => 2387.61041673
///     mm3/min (identity: 76 pi mm2 x 10 mm/min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_bore_removal_rate(
    finished_diameter_m: f64,
    start_diameter_m: f64,
    axial_feed_m_per_s: f64,
    bore_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&bore_removal_rate::FORMULA, &[finished_diameter_m, start_diameter_m, axial_feed_m_per_s], bore_removal_rate_m3_per_s_out) }
}

/// gullet_bore_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_bore_removal_rate_array(
    count: usize,
    finished_diameter_m: *const f64,
    start_diameter_m: *const f64,
    axial_feed_m_per_s: *const f64,
    bore_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&bore_removal_rate::FORMULA, count, [finished_diameter_m, start_diameter_m, axial_feed_m_per_s], bore_removal_rate_m3_per_s_out, status_out) }
}
