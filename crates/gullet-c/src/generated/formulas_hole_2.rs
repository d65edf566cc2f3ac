// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::hole::*;

/// Least stock on the diameter that a machine reamer needs to cut and not to rub.
///
///     s = 0.13 mm for D < 4.3 mm, s = 0.2 mm for D < 7.1 mm, s = 0.25 mm for D < 22 mm, s = 0.38 mm
///         else
///
/// diameter_m: D, diameter of the reamer [m]; 0023 <= diameter <= 064.
/// smallest_reaming_stock_m_out: s [m].
/// Valid for: machine reamers of 2.3 to 64 mm in steel and iron.
/// Source: E. Oberg et al., Machinery's Handbook, tables of drilling and reaming speeds, public
///     reprint, seen.
/// Example: diameter=10 mm => 0.25 mm (E. Oberg et al., Machinery's Handbook, public reprint, seen:
///     holes of 7.1 to 22 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_smallest_reaming_stock(
    diameter_m: f64,
    smallest_reaming_stock_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&smallest_reaming_stock::FORMULA, &[diameter_m], smallest_reaming_stock_m_out) }
}

/// gullet_smallest_reaming_stock over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_smallest_reaming_stock_array(
    count: usize,
    diameter_m: *const f64,
    smallest_reaming_stock_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&smallest_reaming_stock::FORMULA, count, [diameter_m], smallest_reaming_stock_m_out, status_out) }
}

/// Most stock on the diameter to leave for a machine reamer.
///
///     s = 0.25 mm for D < 4.3 mm, s = 0.3 mm for D < 7.1 mm, s = 0.41 mm for D < 22 mm, s = 0.76 mm
///         else
///
/// diameter_m: D, diameter of the reamer [m]; 0023 <= diameter <= 064.
/// largest_reaming_stock_m_out: s [m].
/// Valid for: machine reamers of 2.3 to 64 mm in steel and iron.
/// Source: E. Oberg et al., Machinery's Handbook, tables of drilling and reaming speeds, public
///     reprint, seen.
/// Example: diameter=10 mm => 0.41 mm (E. Oberg et al., Machinery's Handbook, public reprint, seen:
///     holes of 7.1 to 22 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_largest_reaming_stock(
    diameter_m: f64,
    largest_reaming_stock_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&largest_reaming_stock::FORMULA, &[diameter_m], largest_reaming_stock_m_out) }
}

/// gullet_largest_reaming_stock over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_largest_reaming_stock_array(
    count: usize,
    diameter_m: *const f64,
    largest_reaming_stock_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&largest_reaming_stock::FORMULA, count, [diameter_m], largest_reaming_stock_m_out, status_out) }
}

/// Drill diameter that leaves a stock for the reamer.
///
///     d = D - s
///
/// diameter_m: D, diameter of the reamer [m]; diameter > 0.
/// stock_m: s, stock on the diameter [m]; 0 <= stock < diameter.
/// reaming_drill_diameter_m_out: d [m].
/// Valid for: the drill cuts to its size; one that cuts large leaves less.
/// Source: definition.
/// Example: diameter=10 mm; stock=0.3 mm => 9.7 mm (own arithmetic).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_reaming_drill_diameter(
    diameter_m: f64,
    stock_m: f64,
    reaming_drill_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&reaming_drill_diameter::FORMULA, &[diameter_m, stock_m], reaming_drill_diameter_m_out) }
}

/// gullet_reaming_drill_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_reaming_drill_diameter_array(
    count: usize,
    diameter_m: *const f64,
    stock_m: *const f64,
    reaming_drill_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&reaming_drill_diameter::FORMULA, count, [diameter_m, stock_m], reaming_drill_diameter_m_out, status_out) }
}
