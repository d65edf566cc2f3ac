// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::turning::*;

/// Error of the radius that a drop of the tool tip along the cutting direction leaves.
///
///     e_R = delta^2/(D/2 + sqrt((D/2)^2 + delta^2))
///
/// tangential_deflection_m: delta, drop of the tip from the height of the axis; a rise counts the
///     same [m]; tangential_deflection: any finite value.
/// diameter_m: D, diameter that is cut [m]; diameter > 0.
/// radius_error_of_tangential_deflection_m_out: e_R [m].
/// Valid for: the tip stays at its distance across: bore and shaft are both left larger by this,
///     mostly nothing beside the radial deflection.
/// Source: right triangle, derived.
/// Example: tangential_deflection=3 mm; diameter=8 mm => 1 mm (identity: 3-4-5 triangle).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_radius_error_of_tangential_deflection(
    tangential_deflection_m: f64,
    diameter_m: f64,
    radius_error_of_tangential_deflection_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&radius_error_of_tangential_deflection::FORMULA, &[tangential_deflection_m, diameter_m], radius_error_of_tangential_deflection_m_out) }
}

/// gullet_radius_error_of_tangential_deflection over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_radius_error_of_tangential_deflection_array(
    count: usize,
    tangential_deflection_m: *const f64,
    diameter_m: *const f64,
    radius_error_of_tangential_deflection_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&radius_error_of_tangential_deflection::FORMULA, count, [tangential_deflection_m, diameter_m], radius_error_of_tangential_deflection_m_out, status_out) }
}

/// Travel of a turning tool from its clearance to the full depth of cut.
///
///     l_a = a_p/tan(kappa_r) + c
///
/// depth_of_cut_m: a_p, depth of cut [m]; depth_of_cut >= 0.
/// cutting_edge_angle_rad: kappa_r, tool cutting-edge angle [rad]; 0 deg < cutting_edge_angle <= 90
///     deg.
/// clearance_m: c, clearance before the first contact [m]; clearance >= 0.
/// turning_approach_m_out: l_a [m].
/// Valid for: straight edge; run-out beyond the end the same way, without the slope; clearances of 1
///     to 3 mm are common practice, no source.
/// Source: right triangle, derived.
/// Example: depth_of_cut=3 mm; cutting_edge_angle=45 deg; clearance=2 mm => 5 mm (identity: 3 + 2
///     mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_approach(
    depth_of_cut_m: f64,
    cutting_edge_angle_rad: f64,
    clearance_m: f64,
    turning_approach_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_approach::FORMULA, &[depth_of_cut_m, cutting_edge_angle_rad, clearance_m], turning_approach_m_out) }
}

/// gullet_turning_approach over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_approach_array(
    count: usize,
    depth_of_cut_m: *const f64,
    cutting_edge_angle_rad: *const f64,
    clearance_m: *const f64,
    turning_approach_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_approach::FORMULA, count, [depth_of_cut_m, cutting_edge_angle_rad, clearance_m], turning_approach_m_out, status_out) }
}

/// Travel of a turning pass with approach and run-out.
///
///     L = l + l_a + l_u
///
/// length_m: l, length that is turned [m]; length >= 0.
/// approach_m: l_a, approach [m]; approach >= 0.
/// run_out_m: l_u, run-out beyond the end; none at a shoulder [m]; run_out >= 0.
/// turning_travel_m_out: L [m].
/// Valid for: one pass at one feed.
/// Source: definition.
/// Example: length=120 mm; approach=2 mm => 122 mm (Rao P.N., Manufacturing Technology vol. 2, 2nd
///     ed., p.130, seen in a digest: 2 mm of approach included).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_travel(
    length_m: f64,
    approach_m: f64,
    run_out_m: f64,
    turning_travel_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&turning_travel::FORMULA, &[length_m, approach_m, run_out_m], turning_travel_m_out) }
}

/// gullet_turning_travel over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_turning_travel_array(
    count: usize,
    length_m: *const f64,
    approach_m: *const f64,
    run_out_m: *const f64,
    turning_travel_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&turning_travel::FORMULA, count, [length_m, approach_m, run_out_m], turning_travel_m_out, status_out) }
}

/// Diameter below which a spindle held at constant cutting speed stays at its largest speed.
///
///     D_k = v_c/(pi n_max)
///
/// cutting_speed_m_per_s: v_c, cutting speed that is held [m/s]; cutting_speed >= 0.
/// maximum_speed_rev_per_s: n_max, largest spindle speed, of the machine, the chuck or the program
///     [rev/s]; maximum_speed > 0.
/// constant_speed_knee_diameter_m_out: D_k [m].
/// Valid for: facing and parting towards the centre; n in revolutions per second; without a largest
///     speed the spindle would run away.
/// Source: derived: spindle_speed solved for the diameter.
/// Example: cutting_speed=200 m/min; maximum_speed=3000 rpm => 21.2 mm (own arithmetic: 200/(3 pi)
///     mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_constant_speed_knee_diameter(
    cutting_speed_m_per_s: f64,
    maximum_speed_rev_per_s: f64,
    constant_speed_knee_diameter_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&constant_speed_knee_diameter::FORMULA, &[cutting_speed_m_per_s, maximum_speed_rev_per_s], constant_speed_knee_diameter_m_out) }
}

/// gullet_constant_speed_knee_diameter over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_constant_speed_knee_diameter_array(
    count: usize,
    cutting_speed_m_per_s: *const f64,
    maximum_speed_rev_per_s: *const f64,
    constant_speed_knee_diameter_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&constant_speed_knee_diameter::FORMULA, count, [cutting_speed_m_per_s, maximum_speed_rev_per_s], constant_speed_knee_diameter_m_out, status_out) }
}

/// Time of facing or parting at one spindle speed.
///
///     t = (D_1 - D_2)/(2 f n)
///
/// outer_diameter_m: D_1, diameter where the cut starts [m]; outer_diameter >= 0.
/// inner_diameter_m: D_2, diameter where the cut ends [m]; 0 <= inner_diameter <= outer_diameter.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed > 0.
/// facing_time_fixed_speed_s_out: t [s].
/// Valid for: the way is the radius, not the diameter; n in revolutions per second.
/// Source: definition of the feed; example: Groover M.P., Fundamentals of Modern Manufacturing, 4th
///     ed., facing problem, from memory.
/// Example: outer_diameter=38 in; inner_diameter=24 in; feed_per_rev=0.015 in; spindle_speed=40 rpm
///     => 11.67 min (Groover M.P., Fundamentals of Modern Manufacturing, 4th ed., facing of a tube
///     on a vertical boring mill, from memory).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_facing_time_fixed_speed(
    outer_diameter_m: f64,
    inner_diameter_m: f64,
    feed_per_rev_m: f64,
    spindle_speed_rev_per_s: f64,
    facing_time_fixed_speed_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&facing_time_fixed_speed::FORMULA, &[outer_diameter_m, inner_diameter_m, feed_per_rev_m, spindle_speed_rev_per_s], facing_time_fixed_speed_s_out) }
}

/// gullet_facing_time_fixed_speed over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_facing_time_fixed_speed_array(
    count: usize,
    outer_diameter_m: *const f64,
    inner_diameter_m: *const f64,
    feed_per_rev_m: *const f64,
    spindle_speed_rev_per_s: *const f64,
    facing_time_fixed_speed_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&facing_time_fixed_speed::FORMULA, count, [outer_diameter_m, inner_diameter_m, feed_per_rev_m, spindle_speed_rev_per_s], facing_time_fixed_speed_s_out, status_out) }
}

/// Time of parting at constant cutting speed up to a limit of the spindle speed, with less feed near
///     the centre.
///
///     t = pi (D_1^2 - D_a^2)/(4 v_c f) + (D_a - D_m)/(2 f n_max) + pi (D_m^2 - D_b^2)/(4 v_c k f) +
///         (D_b - D_2)/(2 k f n_max); D_m = max(D_2, D_s); D_a = max(D_m, min(D_1, v_c/(pi n_max)));
///         D_b = max(D_2, min(D_m, v_c/(pi n_max)))
///
/// outer_diameter_m: D_1, diameter where the cut starts [m]; outer_diameter >= 0.
/// inner_diameter_m: D_2, diameter where the cut ends: the bore, or 0 for a solid bar [m]; 0 <=
///     inner_diameter <= outer_diameter.
/// slow_diameter_m: D_s, diameter below which the feed is reduced [m]; 0 <= slow_diameter <=
///     outer_diameter.
/// cutting_speed_m_per_s: v_c, cutting speed [m/s]; cutting_speed > 0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev > 0.
/// maximum_speed_rev_per_s: n_max, largest spindle speed [rev/s]; maximum_speed > 0.
/// feed_share: k, reduced feed over the feed [-]; 0 < feed_share <= 1.
/// parting_time_s_out: t [s].
/// Valid for: facing_time_limited_speed twice: at the full feed down to D_m, at the reduced one
///     below; half the feed near the centre is common practice, no source; n in revolutions per
///     second.
/// Source: derived: integral of the speed over the radius.
/// Example: outer_diameter=40 mm; inner_diameter=0 mm; slow_diameter=10 mm;
///     cutting_speed=3.14159265358979 m/s; feed_per_rev=0.1 mm; maximum_speed=50 r/s; feed_share=0.5
///     => 6 s (own arithmetic: 3 s at constant speed from 40 to 20 mm, then at 50 turns a second 1 s
///     to 10 mm and 2 s to the centre at half the feed).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_parting_time(
    outer_diameter_m: f64,
    inner_diameter_m: f64,
    slow_diameter_m: f64,
    cutting_speed_m_per_s: f64,
    feed_per_rev_m: f64,
    maximum_speed_rev_per_s: f64,
    feed_share: f64,
    parting_time_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&parting_time::FORMULA, &[outer_diameter_m, inner_diameter_m, slow_diameter_m, cutting_speed_m_per_s, feed_per_rev_m, maximum_speed_rev_per_s, feed_share], parting_time_s_out) }
}

/// gullet_parting_time over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_parting_time_array(
    count: usize,
    outer_diameter_m: *const f64,
    inner_diameter_m: *const f64,
    slow_diameter_m: *const f64,
    cutting_speed_m_per_s: *const f64,
    feed_per_rev_m: *const f64,
    maximum_speed_rev_per_s: *const f64,
    feed_share: *const f64,
    parting_time_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&parting_time::FORMULA, count, [outer_diameter_m, inner_diameter_m, slow_diameter_m, cutting_speed_m_per_s, feed_per_rev_m, maximum_speed_rev_per_s, feed_share], parting_time_s_out, status_out) }
}

/// Longest overhang of a parting blade for its width.
///
///     l_c = k w
///
/// blade_width_m: w, width of the blade [m]; blade_width > 0.
/// overhang_ratio: k, overhang over width that the practice allows [-]; overhang_ratio > 0.
/// parting_overhang_cap_m_out: l_c [m].
/// Valid for: blades of steel; the overhang is the radius that is parted and a little more.
/// Source: common practice, no source.
/// Example: blade_width=3 mm => 24 mm (identity: 8 x 3 mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_parting_overhang_cap(
    blade_width_m: f64,
    overhang_ratio: f64,
    parting_overhang_cap_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&parting_overhang_cap::FORMULA, &[blade_width_m, overhang_ratio], parting_overhang_cap_m_out) }
}

/// gullet_parting_overhang_cap over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_parting_overhang_cap_array(
    count: usize,
    blade_width_m: *const f64,
    overhang_ratio: *const f64,
    parting_overhang_cap_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&parting_overhang_cap::FORMULA, count, [blade_width_m, overhang_ratio], parting_overhang_cap_m_out, status_out) }
}
