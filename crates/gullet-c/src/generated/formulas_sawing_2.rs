// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::sawing::*;

/// Area of a rectangular section.
///
///     A = w H
///
/// width_m: w, width of the work along the blade [m]; width > 0.
/// height_m: H, way of the blade through the section [m]; height > 0.
/// rectangular_section_area_m2_out: A [m2].
/// Valid for: solid flats and squares, cut square to the axis.
/// Source: geometry.
/// Example: width=4 in; height=1.5 in => 6 in2 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_rectangular_section_area(
    width_m: f64,
    height_m: f64,
    rectangular_section_area_m2_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&rectangular_section_area::FORMULA, &[width_m, height_m], rectangular_section_area_m2_out) }
}

/// gullet_rectangular_section_area over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_rectangular_section_area_array(
    count: usize,
    width_m: *const f64,
    height_m: *const f64,
    rectangular_section_area_m2_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&rectangular_section_area::FORMULA, count, [width_m, height_m], rectangular_section_area_m2_out, status_out) }
}

/// Mean width of cut of a section that a blade sinks through.
///
///     w_m = A/H
///
/// area_m2: A, area of the section [m2]; area >= 0.
/// height_m: H, way of the blade through the section [m]; height > 0.
/// mean_sawn_width_m_out: w_m [m].
/// Valid for: for the choice of the tooth pitch and the feed of tubes and profiles; of a tube it
///     adds both walls, each of which is shorter.
/// Source: definition; manual of a band-saw machine, seen.
/// Example: area=5.5 in2; height=4 in => 1.38 in (manual of a band-saw machine: tube of 4 in outer
///     and 3 in inner diameter, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_sawn_width(
    area_m2: f64,
    height_m: f64,
    mean_sawn_width_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_sawn_width::FORMULA, &[area_m2, height_m], mean_sawn_width_m_out) }
}

/// gullet_mean_sawn_width over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_sawn_width_array(
    count: usize,
    area_m2: *const f64,
    height_m: *const f64,
    mean_sawn_width_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_sawn_width::FORMULA, count, [area_m2, height_m], mean_sawn_width_m_out, status_out) }
}

/// Length of wall of a round tube that a saw blade crosses at a height.
///
///     c = sqrt(max(D^2 - 4 y^2, 0 mm^2)) - sqrt(max(d^2 - 4 y^2, 0 mm^2))
///
/// outer_diameter_m: D, outer diameter [m]; outer_diameter > 0.
/// inner_diameter_m: d, inner diameter [m]; 0 <= inner_diameter <= outer_diameter.
/// offset_m: y, distance of the blade from the axis, either way [m]; offset: any finite value.
/// tube_crossing_length_m_out: c [m].
/// Valid for: both walls together where the blade runs through the bore: half of it is in one wall;
///     no length beyond the tube.
/// Source: chords, derived.
/// Example: outer_diameter=100 mm; inner_diameter=60 mm; offset=30 mm => 80 mm (identity: 3-4-5
///     triangle, tangent to the bore).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tube_crossing_length(
    outer_diameter_m: f64,
    inner_diameter_m: f64,
    offset_m: f64,
    tube_crossing_length_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tube_crossing_length::FORMULA, &[outer_diameter_m, inner_diameter_m, offset_m], tube_crossing_length_m_out) }
}

/// gullet_tube_crossing_length over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tube_crossing_length_array(
    count: usize,
    outer_diameter_m: *const f64,
    inner_diameter_m: *const f64,
    offset_m: *const f64,
    tube_crossing_length_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tube_crossing_length::FORMULA, count, [outer_diameter_m, inner_diameter_m, offset_m], tube_crossing_length_m_out, status_out) }
}

/// Longest single crossing of the wall of a round tube, where the blade touches the bore.
///
///     c_max = sqrt(D^2 - d^2)
///
/// outer_diameter_m: D, outer diameter [m]; outer_diameter > 0.
/// inner_diameter_m: d, inner diameter [m]; 0 <= inner_diameter <= outer_diameter.
/// tube_longest_crossing_m_out: c_max [m].
/// Valid for: the finest useful pitch follows this, the coarsest the wall itself.
/// Source: chord tangent to a circle, derived.
/// Example: outer_diameter=100 mm; inner_diameter=60 mm => 80 mm (identity: 3-4-5 triangle).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tube_longest_crossing(
    outer_diameter_m: f64,
    inner_diameter_m: f64,
    tube_longest_crossing_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&tube_longest_crossing::FORMULA, &[outer_diameter_m, inner_diameter_m], tube_longest_crossing_m_out) }
}

/// gullet_tube_longest_crossing over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_tube_longest_crossing_array(
    count: usize,
    outer_diameter_m: *const f64,
    inner_diameter_m: *const f64,
    tube_longest_crossing_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&tube_longest_crossing::FORMULA, count, [outer_diameter_m, inner_diameter_m], tube_longest_crossing_m_out, status_out) }
}
