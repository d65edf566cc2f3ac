// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::deflection::*;

/// Diameter of the solid round bar that bends like the fluted length of a cutter.
///
///     d_e = k D
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// factor: k, equivalent diameter as a share of the cutter diameter [-]; 0 < factor <= 1.
/// fluted_equivalent_diameter_m_out: d_e [m].
/// Valid for: end mills of common flute shapes; the second moment of area falls with the fourth
///     power, to 41 % at 0.8; stubbier cores take a larger factor.
/// Source: factor 0.8: metal-cutting textbook companion file, seen; the range of other cores: common
///     practice, no source.
/// Example: diameter=0.5 in => 10.16 mm (identity: 0.8 x 12.7 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_fluted_equivalent_diameter(
    diameter_m: f64,
    factor: f64,
    fluted_equivalent_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&fluted_equivalent_diameter::FORMULA, &[diameter_m, factor], fluted_equivalent_diameter_m_out) }
}

/// gullet_fluted_equivalent_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_fluted_equivalent_diameter_array(
    count: usize,
    diameter_m: *const f64,
    factor: *const f64,
    fluted_equivalent_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&fluted_equivalent_diameter::FORMULA, count, [diameter_m, factor], fluted_equivalent_diameter_m_out, status_out) }
}

/// Deflection of the tip of a round bar under a force at its tip.
///
///     delta = F L^3/(3 E I); I = pi d^4/64
///
/// force_n: F, force across the axis, at the tip; its sign is kept [N]; force: any finite value.
/// overhang_m: L, overhang from the holder [m]; overhang >= 0.
/// diameter_m: d, diameter; for a fluted length the equivalent one [m]; diameter > 0.
/// modulus_pa: E, modulus of elasticity [Pa]; modulus > 0.
/// cantilever_deflection_m_out: delta [m].
/// Valid for: slender elastic bar of one diameter in a rigid holder; a real holder and spindle add
///     to it, often as much again.
/// Source: beam theory; example: E. Isakov, Boring: calculating deflection (trade magazine article,
///     July 2019), seen.
/// Example: force=207.8 lbf; overhang=4 in; diameter=1 in; modulus=30e6 psi => 0.003 in (E. Isakov,
///     Boring: calculating deflection (trade magazine article, July 2019), seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cantilever_deflection(
    force_n: f64,
    overhang_m: f64,
    diameter_m: f64,
    modulus_pa: f64,
    cantilever_deflection_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&cantilever_deflection::FORMULA, &[force_n, overhang_m, diameter_m, modulus_pa], cantilever_deflection_m_out) }
}

/// gullet_cantilever_deflection over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cantilever_deflection_array(
    count: usize,
    force_n: *const f64,
    overhang_m: *const f64,
    diameter_m: *const f64,
    modulus_pa: *const f64,
    cantilever_deflection_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&cantilever_deflection::FORMULA, count, [force_n, overhang_m, diameter_m, modulus_pa], cantilever_deflection_m_out, status_out) }
}

/// Deflection of the tip of a round bar under a force that acts inboard of the tip.
///
///     delta = F a^2 (3 L - a)/(6 E I); I = pi d^4/64
///
/// force_n: F, force across the axis; its sign is kept [N]; force: any finite value.
/// overhang_m: L, overhang from the holder [m]; overhang >= 0.
/// load_distance_m: a, distance of the force from the holder [m]; 0 <= load_distance <= overhang.
/// diameter_m: d, diameter; for a fluted length the equivalent one [m]; diameter > 0.
/// modulus_pa: E, modulus of elasticity [Pa]; modulus > 0.
/// cantilever_deflection_inboard_m_out: delta [m].
/// Valid for: slender elastic bar of one diameter in a rigid holder; a side cut of depth a_p loads
///     the bar about a_p/2 above the tip.
/// Source: beam theory.
/// Example: force=100 N; overhang=40 mm; load_distance=20 mm; diameter=10 mm; modulus=200 GPa =>
///     0.00679061091 mm (identity: 4e6/(6 x 200000 x 490.873852) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cantilever_deflection_inboard(
    force_n: f64,
    overhang_m: f64,
    load_distance_m: f64,
    diameter_m: f64,
    modulus_pa: f64,
    cantilever_deflection_inboard_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&cantilever_deflection_inboard::FORMULA, &[force_n, overhang_m, load_distance_m, diameter_m, modulus_pa], cantilever_deflection_inboard_m_out) }
}

/// gullet_cantilever_deflection_inboard over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cantilever_deflection_inboard_array(
    count: usize,
    force_n: *const f64,
    overhang_m: *const f64,
    load_distance_m: *const f64,
    diameter_m: *const f64,
    modulus_pa: *const f64,
    cantilever_deflection_inboard_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&cantilever_deflection_inboard::FORMULA, count, [force_n, overhang_m, load_distance_m, diameter_m, modulus_pa], cantilever_deflection_inboard_m_out, status_out) }
}

/// Deflection of the tip of a cutter whose flutes are weaker than its shank, under a force at the
///     tip.
///
///     delta = F/(3 E) (L_f^3/I_f + (L^3 - L_f^3)/I_s); I_f = pi d_f^4/64; I_s = pi d_s^4/64
///
/// force_n: F, force across the axis, at the tip; its sign is kept [N]; force: any finite value.
/// overhang_m: L, overhang from the holder [m]; overhang >= 0.
/// flute_length_m: L_f, fluted length, from the tip [m]; 0 <= flute_length <= overhang.
/// flute_equivalent_diameter_m: d_f, equivalent diameter of the fluted length, not the nominal one
///     [m]; flute_equivalent_diameter > 0.
/// shank_diameter_m: d_s, shank diameter [m]; shank_diameter > 0.
/// modulus_pa: E, modulus of elasticity [Pa]; modulus > 0.
/// stepped_cutter_deflection_m_out: delta [m].
/// Valid for: slender elastic bar of two diameters in a rigid holder; the fluted length as
///     fluted_equivalent_diameter.
/// Source: beam theory, derived: unit-load integral over the two lengths.
/// Example: force=150 N; overhang=40 mm; flute_length=22 mm; flute_equivalent_diameter=8 mm;
///     shank_diameter=10 mm; modulus=600000 MPa => 0.0134705508 mm (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stepped_cutter_deflection(
    force_n: f64,
    overhang_m: f64,
    flute_length_m: f64,
    flute_equivalent_diameter_m: f64,
    shank_diameter_m: f64,
    modulus_pa: f64,
    stepped_cutter_deflection_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&stepped_cutter_deflection::FORMULA, &[force_n, overhang_m, flute_length_m, flute_equivalent_diameter_m, shank_diameter_m, modulus_pa], stepped_cutter_deflection_m_out) }
}

/// gullet_stepped_cutter_deflection over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_stepped_cutter_deflection_array(
    count: usize,
    force_n: *const f64,
    overhang_m: *const f64,
    flute_length_m: *const f64,
    flute_equivalent_diameter_m: *const f64,
    shank_diameter_m: *const f64,
    modulus_pa: *const f64,
    stepped_cutter_deflection_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&stepped_cutter_deflection::FORMULA, count, [force_n, overhang_m, flute_length_m, flute_equivalent_diameter_m, shank_diameter_m, modulus_pa], stepped_cutter_deflection_m_out, status_out) }
}

/// Deflection of round work between centres under a force at its middle.
///
///     delta = F L^3/(48 E I); I = pi d^4/64
///
/// force_n: F, force across the axis, at the middle; its sign is kept [N]; force: any finite value.
/// length_m: L, length between the centres [m]; length >= 0.
/// diameter_m: d, diameter of the work [m]; diameter > 0.
/// modulus_pa: E, modulus of elasticity [Pa]; modulus > 0.
/// work_deflection_between_centres_m_out: delta [m].
/// Valid for: slender elastic bar of one diameter, simply supported at both ends; centres and
///     tailstock yield as well.
/// Source: beam theory.
/// Example: force=48 N; length=1 m; diameter=20 mm; modulus=200 GPa => 0.636619772368 mm (identity:
///     64/(pi 0.02^4 x 2e11) m).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_work_deflection_between_centres(
    force_n: f64,
    length_m: f64,
    diameter_m: f64,
    modulus_pa: f64,
    work_deflection_between_centres_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&work_deflection_between_centres::FORMULA, &[force_n, length_m, diameter_m, modulus_pa], work_deflection_between_centres_m_out) }
}

/// gullet_work_deflection_between_centres over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_work_deflection_between_centres_array(
    count: usize,
    force_n: *const f64,
    length_m: *const f64,
    diameter_m: *const f64,
    modulus_pa: *const f64,
    work_deflection_between_centres_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&work_deflection_between_centres::FORMULA, count, [force_n, length_m, diameter_m, modulus_pa], work_deflection_between_centres_m_out, status_out) }
}

/// Deflection of round work held in a chuck and by a centre under a force at its middle.
///
///     delta = 7 F L^3/(768 E I); I = pi d^4/64
///
/// force_n: F, force across the axis, at the middle; its sign is kept [N]; force: any finite value.
/// length_m: L, length from the jaws to the centre [m]; length >= 0.
/// diameter_m: d, diameter of the work [m]; diameter > 0.
/// modulus_pa: E, modulus of elasticity [Pa]; modulus > 0.
/// work_deflection_chuck_and_centre_m_out: delta [m].
/// Valid for: slender elastic bar of one diameter, held fast by the jaws and simply supported by the
///     centre; near the largest over all places of the force; jaws that grip short hold less.
/// Source: beam theory.
/// Example: force=768 N; length=1 m; diameter=20 mm; modulus=200 GPa => 4.45633840657 mm (identity:
///     7 x 64/(pi 0.02^4 x 2e11) m).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_work_deflection_chuck_and_centre(
    force_n: f64,
    length_m: f64,
    diameter_m: f64,
    modulus_pa: f64,
    work_deflection_chuck_and_centre_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&work_deflection_chuck_and_centre::FORMULA, &[force_n, length_m, diameter_m, modulus_pa], work_deflection_chuck_and_centre_m_out) }
}

/// gullet_work_deflection_chuck_and_centre over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_work_deflection_chuck_and_centre_array(
    count: usize,
    force_n: *const f64,
    length_m: *const f64,
    diameter_m: *const f64,
    modulus_pa: *const f64,
    work_deflection_chuck_and_centre_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&work_deflection_chuck_and_centre::FORMULA, count, [force_n, length_m, diameter_m, modulus_pa], work_deflection_chuck_and_centre_m_out, status_out) }
}
