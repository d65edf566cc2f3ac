// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::thread::*;

/// Drill diameter that leaves a percentage of thread.
///
///     d = D - p K P
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// pitch_m: P, pitch [m]; pitch > 0.
/// thread_percent: p, percentage of thread [-]; 0 <= thread_percent <
///     major_diameter/(thread_basis*pitch).
/// thread_basis: K, basis of the percentage, over the pitch [-]; thread_basis > 0.
/// tap_drill_diameter_m_out: d [m].
/// Valid for: 60 deg threads; basis 1.2990381 (3 sqrt(3)/4, twice 3/4 H, rounded) is that of
///     tap-drill charts, inch and metric; 1.0825318 (5 sqrt(3)/8, twice 5/8 H) is the ISO and UN
///     overlap, on which 100 % is the basic minor diameter; cutting taps, not forming ones.
/// Source: thread geometry of ISO 68-1 and ASME B1.1, from memory; the charts' basis: E. Oberg et
///     al., Machinery's Handbook, 31st ed., p.2155, seen.
/// Example: major_diameter=0.25 in; pitch=0.05 in; thread_percent=75 % => 0.20128607125 in
///     (identity: 1/4-20 at 75 % takes a No 7 drill (0.201 in)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tap_drill_diameter(
    major_diameter_m: f64,
    pitch_m: f64,
    thread_percent: f64,
    thread_basis: f64,
    tap_drill_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tap_drill_diameter::FORMULA, &[major_diameter_m, pitch_m, thread_percent, thread_basis], tap_drill_diameter_m_out) }
}

/// gullet_tap_drill_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tap_drill_diameter_array(
    count: usize,
    major_diameter_m: *const f64,
    pitch_m: *const f64,
    thread_percent: *const f64,
    thread_basis: *const f64,
    tap_drill_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tap_drill_diameter::FORMULA, count, [major_diameter_m, pitch_m, thread_percent, thread_basis], tap_drill_diameter_m_out, status_out) }
}

/// Percentage of thread that a drill leaves.
///
///     p = (D - d)/(K P)
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// pitch_m: P, pitch [m]; pitch > 0.
/// drill_diameter_m: d, drill diameter [m]; 0 < drill_diameter <= major_diameter.
/// thread_basis: K, basis of the percentage, over the pitch [-]; thread_basis > 0.
/// thread_percent_out: p [-].
/// Valid for: 60 deg threads; basis 1.2990381 (3 sqrt(3)/4, twice 3/4 H, rounded) is that of
///     tap-drill charts, inch and metric; 1.0825318 (5 sqrt(3)/8, twice 5/8 H) is the ISO and UN
///     overlap, on which 100 % is the basic minor diameter; cutting taps, not forming ones.
/// Source: thread geometry of ISO 68-1 and ASME B1.1, from memory; the charts' basis: E. Oberg et
///     al., Machinery's Handbook, 31st ed., p.2155, seen.
/// Example: major_diameter=0.0600 in; pitch=0.0125 in; drill_diameter=0.0512 in;
///     thread_basis=1.2990381 => 54 % (E. Oberg et al., Machinery's Handbook, 31st ed., table 2
///     p.2155, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_percent(
    major_diameter_m: f64,
    pitch_m: f64,
    drill_diameter_m: f64,
    thread_basis: f64,
    thread_percent_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thread_percent::FORMULA, &[major_diameter_m, pitch_m, drill_diameter_m, thread_basis], thread_percent_out) }
}

/// gullet_thread_percent over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_percent_array(
    count: usize,
    major_diameter_m: *const f64,
    pitch_m: *const f64,
    drill_diameter_m: *const f64,
    thread_basis: *const f64,
    thread_percent_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thread_percent::FORMULA, count, [major_diameter_m, pitch_m, drill_diameter_m, thread_basis], thread_percent_out, status_out) }
}

/// Single-point passes of equal chip area whose first one is not deeper than allowed.
///
///     N = ceil((h/a_1)^2)
///
/// thread_height_m: h, height of the thread [m]; thread_height > 0.
/// first_depth_m: a_1, largest depth of the first pass [m]; first_depth > 0.
/// threading_passes_out: N [-].
/// Valid for: flank infeed; at least 1; a quotient within 1e-9, relative, above a whole number
///     counts as that number; spring passes come on top.
/// Source: derived: equal chip area, a_i = h sqrt(i/N).
/// Example: thread_height=0.92 mm; first_depth=0.25 mm => 14 (own arithmetic: 13.54 rounded up).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_passes(
    thread_height_m: f64,
    first_depth_m: f64,
    threading_passes_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_passes::FORMULA, &[thread_height_m, first_depth_m], threading_passes_out) }
}

/// gullet_threading_passes over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_passes_array(
    count: usize,
    thread_height_m: *const f64,
    first_depth_m: *const f64,
    threading_passes_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_passes::FORMULA, count, [thread_height_m, first_depth_m], threading_passes_out, status_out) }
}

/// Depth from the crest after a pass of single-point threading at equal chip area.
///
///     a_i = h sqrt(i/N)
///
/// thread_height_m: h, height of the thread [m]; thread_height >= 0.
/// passes: N, number of passes [-]; passes >= 1.
/// index: i, number of the pass [-]; 1 <= index <= passes.
/// threading_depth_m_out: a_i [m].
/// Valid for: flank infeed, a straight-flanked thread; measured square to the axis.
/// Source: derived: chip area grows with the square of the depth.
/// Example: thread_height=1.2 mm; passes=9; index=4 => 0.8 mm (identity: 1.2 x 2/3 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_depth(
    thread_height_m: f64,
    passes: f64,
    index: f64,
    threading_depth_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&threading_depth::FORMULA, &[thread_height_m, passes, index], threading_depth_m_out) }
}

/// gullet_threading_depth over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_threading_depth_array(
    count: usize,
    thread_height_m: *const f64,
    passes: *const f64,
    index: *const f64,
    threading_depth_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&threading_depth::FORMULA, count, [thread_height_m, passes, index], threading_depth_m_out, status_out) }
}
