// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::thread::*;

/// Height of the fundamental triangle of a 60 deg thread.
///
///     H = sqrt(3) P/2
///
/// pitch_m: P, pitch [m]; pitch > 0.
/// thread_triangle_height_m_out: H [m].
/// Valid for: 60 deg threads, metric and unified.
/// Source: ISO 68-1 and ASME B1.1, from memory.
/// Example: pitch=2 mm => 1.732 mm (own arithmetic: sqrt(3) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_triangle_height(
    pitch_m: f64,
    thread_triangle_height_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thread_triangle_height::FORMULA, &[pitch_m], thread_triangle_height_m_out) }
}

/// gullet_thread_triangle_height over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_triangle_height_array(
    count: usize,
    pitch_m: *const f64,
    thread_triangle_height_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thread_triangle_height::FORMULA, count, [pitch_m], thread_triangle_height_m_out, status_out) }
}

/// Height of a full 60 deg internal thread: the basic overlap of nut and screw.
///
///     H_1 = 5 sqrt(3) P/16
///
/// pitch_m: P, pitch [m]; pitch > 0.
/// internal_thread_height_m_out: H_1 [m].
/// Valid for: 60 deg threads, metric and unified; 5/8 of the fundamental triangle, 0.541266 P.
/// Source: ISO 68-1 and ASME B1.1, from memory.
/// Example: pitch=1.5 mm => 0.812 mm (table of basic dimensions of M10, DIN 13-1, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_internal_thread_height(
    pitch_m: f64,
    internal_thread_height_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&internal_thread_height::FORMULA, &[pitch_m], internal_thread_height_m_out) }
}

/// gullet_internal_thread_height over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_internal_thread_height_array(
    count: usize,
    pitch_m: *const f64,
    internal_thread_height_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&internal_thread_height::FORMULA, count, [pitch_m], internal_thread_height_m_out, status_out) }
}

/// Height of a 60 deg external thread with a rounded root.
///
///     h_3 = 17 sqrt(3) P/48
///
/// pitch_m: P, pitch [m]; pitch > 0.
/// external_thread_height_m_out: h_3 [m].
/// Valid for: 60 deg threads, metric and unified; 17/24 of the fundamental triangle, 0.613435 P; a
///     root of radius P sqrt(3)/12.
/// Source: ISO 68-1, ISO 965-1 and DIN 13-1, from memory.
/// Example: pitch=1.5 mm => 0.920 mm (table of basic dimensions of M10, DIN 13-1, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_external_thread_height(
    pitch_m: f64,
    external_thread_height_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&external_thread_height::FORMULA, &[pitch_m], external_thread_height_m_out) }
}

/// gullet_external_thread_height over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_external_thread_height_array(
    count: usize,
    pitch_m: *const f64,
    external_thread_height_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&external_thread_height::FORMULA, count, [pitch_m], external_thread_height_m_out, status_out) }
}

/// Basic pitch diameter of a 60 deg thread.
///
///     D_2 = D - 3 sqrt(3) P/8
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// pitch_m: P, pitch [m]; 0 < pitch < major_diameter/sqrt(3).
/// thread_pitch_diameter_m_out: D_2 [m].
/// Valid for: 60 deg threads, metric and unified; basic size, without allowance or tolerance;
///     0.649519 P below the major diameter.
/// Source: ISO 724 and ASME B1.1, from memory.
/// Example: major_diameter=10 mm; pitch=1.5 mm => 9.026 mm (ISO 724, M10, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_pitch_diameter(
    major_diameter_m: f64,
    pitch_m: f64,
    thread_pitch_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thread_pitch_diameter::FORMULA, &[major_diameter_m, pitch_m], thread_pitch_diameter_m_out) }
}

/// gullet_thread_pitch_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_pitch_diameter_array(
    count: usize,
    major_diameter_m: *const f64,
    pitch_m: *const f64,
    thread_pitch_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thread_pitch_diameter::FORMULA, count, [major_diameter_m, pitch_m], thread_pitch_diameter_m_out, status_out) }
}

/// Basic minor diameter of a 60 deg internal thread.
///
///     D_1 = D - 5 sqrt(3) P/8
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// pitch_m: P, pitch [m]; 0 < pitch < major_diameter/sqrt(3).
/// thread_minor_diameter_m_out: D_1 [m].
/// Valid for: 60 deg threads, metric and unified; basic size, without allowance or tolerance;
///     1.082532 P below the major diameter: 100 % on the ISO and UN overlap basis.
/// Source: ISO 724 and ASME B1.1, from memory.
/// Example: major_diameter=10 mm; pitch=1.5 mm => 8.376 mm (ISO 724, M10, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_minor_diameter(
    major_diameter_m: f64,
    pitch_m: f64,
    thread_minor_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thread_minor_diameter::FORMULA, &[major_diameter_m, pitch_m], thread_minor_diameter_m_out) }
}

/// gullet_thread_minor_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_minor_diameter_array(
    count: usize,
    major_diameter_m: *const f64,
    pitch_m: *const f64,
    thread_minor_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thread_minor_diameter::FORMULA, count, [major_diameter_m, pitch_m], thread_minor_diameter_m_out, status_out) }
}

/// Root diameter of a 60 deg external thread with a rounded root.
///
///     d_3 = D - 17 sqrt(3) P/24
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// pitch_m: P, pitch [m]; 0 < pitch < major_diameter/sqrt(3).
/// thread_root_diameter_m_out: d_3 [m].
/// Valid for: 60 deg threads, metric and unified; basic size, without allowance or tolerance;
///     1.226869 P below the major diameter.
/// Source: ISO 724, ISO 965-1 and DIN 13-1, from memory.
/// Example: major_diameter=10 mm; pitch=1.5 mm => 8.160 mm (table of basic dimensions of M10, DIN
///     13-1, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_root_diameter(
    major_diameter_m: f64,
    pitch_m: f64,
    thread_root_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thread_root_diameter::FORMULA, &[major_diameter_m, pitch_m], thread_root_diameter_m_out) }
}

/// gullet_thread_root_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_root_diameter_array(
    count: usize,
    major_diameter_m: *const f64,
    pitch_m: *const f64,
    thread_root_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thread_root_diameter::FORMULA, count, [major_diameter_m, pitch_m], thread_root_diameter_m_out, status_out) }
}

/// Lead of a thread: the advance of one turn.
///
///     P_h = s P
///
/// pitch_m: P, pitch [m]; pitch > 0.
/// starts: s, starts of the thread [-]; starts >= 1.
/// thread_lead_m_out: P_h [m].
/// Valid for: the feed per revolution of tapping and threading is the lead, not the pitch, where
///     there are several starts.
/// Source: definition; ISO 5408, from memory.
/// Example: pitch=2 mm; starts=3 => 6 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_lead(
    pitch_m: f64,
    starts: f64,
    thread_lead_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&thread_lead::FORMULA, &[pitch_m, starts], thread_lead_m_out) }
}

/// gullet_thread_lead over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_thread_lead_array(
    count: usize,
    pitch_m: *const f64,
    starts: *const f64,
    thread_lead_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&thread_lead::FORMULA, count, [pitch_m, starts], thread_lead_m_out, status_out) }
}

/// Pitch of a thread that is named by its threads per inch.
///
///     P = 1 in/N
///
/// threads_per_inch: N, threads per inch [-]; threads_per_inch > 0.
/// pitch_from_threads_per_inch_m_out: P [m].
/// Valid for: exact: the inch is 25.4 mm.
/// Source: definition; ASME B1.1, from memory.
/// Example: threads_per_inch=20 => 1.27 mm (identity: 25.4/20 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_pitch_from_threads_per_inch(
    threads_per_inch: f64,
    pitch_from_threads_per_inch_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&pitch_from_threads_per_inch::FORMULA, &[threads_per_inch], pitch_from_threads_per_inch_m_out) }
}

/// gullet_pitch_from_threads_per_inch over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_pitch_from_threads_per_inch_array(
    count: usize,
    threads_per_inch: *const f64,
    pitch_from_threads_per_inch_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&pitch_from_threads_per_inch::FORMULA, count, [threads_per_inch], pitch_from_threads_per_inch_m_out, status_out) }
}

/// Major diameter of a numbered machine-screw size.
///
///     D = 0.060 in + 0.013 in N
///
/// size: N, number of the size [-]; 0 <= size <= 30.
/// numbered_screw_diameter_m_out: D [m].
/// Valid for: unified machine screws, number 0 and up; today's standard ends at 12.
/// Source: ASME B1.1, from memory.
/// Example: size=10 => 0.1900 in (ASME B1.1, basic major diameter of No 10, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_numbered_screw_diameter(
    size: f64,
    numbered_screw_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&numbered_screw_diameter::FORMULA, &[size], numbered_screw_diameter_m_out) }
}

/// gullet_numbered_screw_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_numbered_screw_diameter_array(
    count: usize,
    size: *const f64,
    numbered_screw_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&numbered_screw_diameter::FORMULA, count, [size], numbered_screw_diameter_m_out, status_out) }
}

/// Tap drill by the rule of the workshop: major diameter less the pitch.
///
///     d = D - P
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// pitch_m: P, pitch [m]; 0 < pitch < major_diameter.
/// tap_drill_by_rule_m_out: d [m].
/// Valid for: 60 deg threads, cutting taps; 77 % of thread on the basis of tap-drill charts, 92 % of
///     the ISO and UN overlap; the standard rounds to a drill at hand.
/// Source: ISO 2306, from memory.
/// Example: major_diameter=12 mm; pitch=1.75 mm => 10.2 mm (ISO 2306, M12, from memory: rounded to a
///     drill).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tap_drill_by_rule(
    major_diameter_m: f64,
    pitch_m: f64,
    tap_drill_by_rule_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tap_drill_by_rule::FORMULA, &[major_diameter_m, pitch_m], tap_drill_by_rule_m_out) }
}

/// gullet_tap_drill_by_rule over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tap_drill_by_rule_array(
    count: usize,
    major_diameter_m: *const f64,
    pitch_m: *const f64,
    tap_drill_by_rule_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tap_drill_by_rule::FORMULA, count, [major_diameter_m, pitch_m], tap_drill_by_rule_m_out, status_out) }
}

/// Drill diameter for a forming tap that is to leave a percentage of thread.
///
///     d = D - 0.68 p P
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// pitch_m: P, pitch [m]; pitch > 0.
/// thread_percent: p, percentage of thread [-]; 0 <= thread_percent < major_diameter/(0.68*pitch).
/// form_tap_drill_diameter_m_out: d [m].
/// Valid for: 60 deg threads; forming taps move metal into the crest, so the hole is larger than for
///     a cutting tap; percentages near 65 are usual; trial holes decide.
/// Source: form of tap makers' charts (0.0068 times the percentage, over the threads per inch), from
///     memory.
/// Example: major_diameter=1/4 in; pitch=0.05 in; thread_percent=65 % => 0.2279 in (own arithmetic:
///     0.25 - 0.68 x 0.65/20 in).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_form_tap_drill_diameter(
    major_diameter_m: f64,
    pitch_m: f64,
    thread_percent: f64,
    form_tap_drill_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&form_tap_drill_diameter::FORMULA, &[major_diameter_m, pitch_m, thread_percent], form_tap_drill_diameter_m_out) }
}

/// gullet_form_tap_drill_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_form_tap_drill_diameter_array(
    count: usize,
    major_diameter_m: *const f64,
    pitch_m: *const f64,
    thread_percent: *const f64,
    form_tap_drill_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&form_tap_drill_diameter::FORMULA, count, [major_diameter_m, pitch_m, thread_percent], form_tap_drill_diameter_m_out, status_out) }
}

/// Percentage of thread that a forming tap leaves in a drilled hole.
///
///     p = (D - d)/(0.68 P)
///
/// major_diameter_m: D, major diameter of the thread [m]; major_diameter > 0.
/// pitch_m: P, pitch [m]; pitch > 0.
/// drill_diameter_m: d, drill diameter [m]; 0 < drill_diameter <= major_diameter.
/// form_thread_percent_out: p [-].
/// Valid for: 60 deg threads; forming taps; not the percentage of a cutting tap.
/// Source: form of tap makers' charts (0.0068 times the percentage, over the threads per inch), from
///     memory.
/// Example: major_diameter=6 mm; pitch=1 mm; drill_diameter=5.558 mm => 65 % (own arithmetic:
///     0.442/0.68).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_form_thread_percent(
    major_diameter_m: f64,
    pitch_m: f64,
    drill_diameter_m: f64,
    form_thread_percent_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&form_thread_percent::FORMULA, &[major_diameter_m, pitch_m, drill_diameter_m], form_thread_percent_out) }
}

/// gullet_form_thread_percent over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_form_thread_percent_array(
    count: usize,
    major_diameter_m: *const f64,
    pitch_m: *const f64,
    drill_diameter_m: *const f64,
    form_thread_percent_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&form_thread_percent::FORMULA, count, [major_diameter_m, pitch_m, drill_diameter_m], form_thread_percent_out, status_out) }
}
