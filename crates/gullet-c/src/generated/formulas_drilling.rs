// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::drilling::*;

/// Undeformed chip width of each lip in drilling or enlarging a hole.
///
///     b = (D - d)/(2 sin(sigma/2))
///
/// diameter_m: D, diameter of the drill, core drill or countersink [m]; diameter > 0.
/// point_angle_rad: sigma, point angle; the included angle of a countersink [rad]; 0 deg <
///     point_angle <= 180 deg.
/// start_diameter_m: d, diameter of the hole that is there already; 0 for solid metal [m]; 0 <=
///     start_diameter <= diameter.
/// drilling_chip_width_m_out: b [m].
/// Valid for: straight lips that meet on the axis; no allowance for the chisel edge.
/// Source: derived: half the difference of the diameters along the lip.
/// Example: diameter=20 mm; point_angle=60 deg; start_diameter=12 mm => 8 mm (own arithmetic: 8/(2
///     sin 30 deg) mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drilling_chip_width(
    diameter_m: f64,
    point_angle_rad: f64,
    start_diameter_m: f64,
    drilling_chip_width_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&drilling_chip_width::FORMULA, &[diameter_m, point_angle_rad, start_diameter_m], drilling_chip_width_m_out) }
}

/// gullet_drilling_chip_width over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_drilling_chip_width_array(
    count: usize,
    diameter_m: *const f64,
    point_angle_rad: *const f64,
    start_diameter_m: *const f64,
    drilling_chip_width_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&drilling_chip_width::FORMULA, count, [diameter_m, point_angle_rad, start_diameter_m], drilling_chip_width_m_out, status_out) }
}

/// Undeformed chip thickness of each edge of a core drill, countersink or reamer.
///
///     h = (f/z) sin(sigma/2)
///
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// teeth: z, cutting edges that share the feed [-]; teeth >= 1.
/// point_angle_rad: sigma, included angle of the edges that cut [rad]; 0 deg < point_angle <= 180
///     deg.
/// hole_chip_thickness_m_out: h [m].
/// Valid for: equal edges; with two edges that of a drill.
/// Source: derived: the feed of an edge, square to it.
/// Example: feed_per_rev=0.4 mm; teeth=4; point_angle=60 deg => 0.05 mm (own arithmetic: 0.1 sin 30
///     deg).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_hole_chip_thickness(
    feed_per_rev_m: f64,
    teeth: f64,
    point_angle_rad: f64,
    hole_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&hole_chip_thickness::FORMULA, &[feed_per_rev_m, teeth, point_angle_rad], hole_chip_thickness_m_out) }
}

/// gullet_hole_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_hole_chip_thickness_array(
    count: usize,
    feed_per_rev_m: *const f64,
    teeth: *const f64,
    point_angle_rad: *const f64,
    hole_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&hole_chip_thickness::FORMULA, count, [feed_per_rev_m, teeth, point_angle_rad], hole_chip_thickness_m_out, status_out) }
}

/// Feed per revolution at which each edge of a drill, reamer or countersink takes a chip thickness.
///
///     f = h z/sin(sigma/2)
///
/// chip_thickness_m: h, undeformed chip thickness of an edge [m]; chip_thickness >= 0.
/// teeth: z, cutting edges that share the feed; 2 for a twist drill [-]; teeth >= 1.
/// point_angle_rad: sigma, point angle; the included angle of the edges that cut [rad]; 0 deg <
///     point_angle <= 180 deg.
/// feed_for_hole_chip_thickness_m_out: f [m].
/// Valid for: equal edges.
/// Source: derived: inverse of h = (f/z) sin(sigma/2).
/// Example: chip_thickness=0.05 mm; teeth=4; point_angle=60 deg => 0.4 mm (own arithmetic: 0.05 x
///     4/sin 30 deg mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_hole_chip_thickness(
    chip_thickness_m: f64,
    teeth: f64,
    point_angle_rad: f64,
    feed_for_hole_chip_thickness_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&feed_for_hole_chip_thickness::FORMULA, &[chip_thickness_m, teeth, point_angle_rad], feed_for_hole_chip_thickness_m_out) }
}

/// gullet_feed_for_hole_chip_thickness over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_feed_for_hole_chip_thickness_array(
    count: usize,
    chip_thickness_m: *const f64,
    teeth: *const f64,
    point_angle_rad: *const f64,
    feed_for_hole_chip_thickness_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&feed_for_hole_chip_thickness::FORMULA, count, [chip_thickness_m, teeth, point_angle_rad], feed_for_hole_chip_thickness_m_out, status_out) }
}

/// Torque of a drill, core drill or countersink that enlarges a hole.
///
///     M_c = k_c f (D^2 - d^2)/8
///
/// diameter_m: D, diameter of the tool where it cuts last [m]; diameter >= 0.
/// start_diameter_m: d, diameter of the hole before [m]; 0 <= start_diameter <= diameter.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// specific_cutting_force_pa: k_c, specific cutting force at the chip thickness of an edge [Pa];
///     specific_cutting_force >= 0.
/// enlarging_torque_n_m_out: M_c [N.m].
/// Valid for: any number of edges: together they cut a chip of width (D - d)/2 and thickness f, at
///     the mean radius (D + d)/4; margins and chip friction not counted.
/// Source: derived: section of the chip times k_c times its lever; with no hole before, that of
///     solid drilling.
/// Example: diameter=20 mm; start_diameter=12 mm; feed_per_rev=0.25 mm; specific_cutting_force=2000
///     N/mm2 => 16 N.m (own arithmetic: 2000 x 0.25 x 256/8 N mm).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_enlarging_torque(
    diameter_m: f64,
    start_diameter_m: f64,
    feed_per_rev_m: f64,
    specific_cutting_force_pa: f64,
    enlarging_torque_n_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&enlarging_torque::FORMULA, &[diameter_m, start_diameter_m, feed_per_rev_m, specific_cutting_force_pa], enlarging_torque_n_m_out) }
}

/// gullet_enlarging_torque over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_enlarging_torque_array(
    count: usize,
    diameter_m: *const f64,
    start_diameter_m: *const f64,
    feed_per_rev_m: *const f64,
    specific_cutting_force_pa: *const f64,
    enlarging_torque_n_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&enlarging_torque::FORMULA, count, [diameter_m, start_diameter_m, feed_per_rev_m, specific_cutting_force_pa], enlarging_torque_n_m_out, status_out) }
}

/// Thrust of a drill, core drill or countersink that enlarges a hole.
///
///     F_f = K k_c ((D - d)/2) f sin(sigma/2)
///
/// specific_cutting_force_pa: k_c, specific cutting force at the chip thickness of an edge [Pa];
///     specific_cutting_force >= 0.
/// diameter_m: D, diameter of the tool where it cuts last [m]; diameter >= 0.
/// start_diameter_m: d, diameter of the hole before, larger than the chisel edge [m]; 0 <=
///     start_diameter <= diameter.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// point_angle_rad: sigma, point angle; the included angle of a countersink [rad]; 0 deg <
///     point_angle <= 180 deg.
/// factor: K, thrust of the edges over their cutting force; no chisel edge cuts [-]; factor > 0.
/// enlarging_thrust_n_out: F_f [N].
/// Valid for: rough, within 40 % either way; the form of solid drilling with the lips alone.
/// Source: form of German handbooks, from memory; factor 0.5 common practice, no source.
/// Example: specific_cutting_force=2000 N/mm2; diameter=20 mm; start_diameter=12 mm;
///     feed_per_rev=0.25 mm; point_angle=60 deg => 500 N (own arithmetic: 0.5 x 2000 x 4 x 0.25 x
///     0.5 N).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_enlarging_thrust(
    specific_cutting_force_pa: f64,
    diameter_m: f64,
    start_diameter_m: f64,
    feed_per_rev_m: f64,
    point_angle_rad: f64,
    factor: f64,
    enlarging_thrust_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&enlarging_thrust::FORMULA, &[specific_cutting_force_pa, diameter_m, start_diameter_m, feed_per_rev_m, point_angle_rad, factor], enlarging_thrust_n_out) }
}

/// gullet_enlarging_thrust over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_enlarging_thrust_array(
    count: usize,
    specific_cutting_force_pa: *const f64,
    diameter_m: *const f64,
    start_diameter_m: *const f64,
    feed_per_rev_m: *const f64,
    point_angle_rad: *const f64,
    factor: *const f64,
    enlarging_thrust_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&enlarging_thrust::FORMULA, count, [specific_cutting_force_pa, diameter_m, start_diameter_m, feed_per_rev_m, point_angle_rad, factor], enlarging_thrust_n_out, status_out) }
}

/// Removal rate of a drill, core drill or reamer that enlarges a hole.
///
///     Q = (pi (D^2 - d^2)/4) f n
///
/// diameter_m: D, diameter of the tool [m]; diameter >= 0.
/// start_diameter_m: d, diameter of the hole before [m]; 0 <= start_diameter <= diameter.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// spindle_speed_rev_per_s: n, spindle speed [rev/s]; spindle_speed >= 0.
/// enlarging_removal_rate_m3_per_s_out: Q [m3/s].
/// Valid for: at full diameter; n in revolutions per second.
/// Source: derived: section of the ring times feed rate.
/// Example: diameter=20 mm; start_diameter=12 mm; feed_per_rev=0.25 mm; spindle_speed=300 rpm =>
///     15079.6447372 mm3/min (own arithmetic: 64 pi x 75 mm3/min).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_enlarging_removal_rate(
    diameter_m: f64,
    start_diameter_m: f64,
    feed_per_rev_m: f64,
    spindle_speed_rev_per_s: f64,
    enlarging_removal_rate_m3_per_s_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&enlarging_removal_rate::FORMULA, &[diameter_m, start_diameter_m, feed_per_rev_m, spindle_speed_rev_per_s], enlarging_removal_rate_m3_per_s_out) }
}

/// gullet_enlarging_removal_rate over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_enlarging_removal_rate_array(
    count: usize,
    diameter_m: *const f64,
    start_diameter_m: *const f64,
    feed_per_rev_m: *const f64,
    spindle_speed_rev_per_s: *const f64,
    enlarging_removal_rate_m3_per_s_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&enlarging_removal_rate::FORMULA, count, [diameter_m, start_diameter_m, feed_per_rev_m, spindle_speed_rev_per_s], enlarging_removal_rate_m3_per_s_out, status_out) }
}

/// Thrust of a twist drill in solid metal by a handbook's factors for work, wear and chisel edge.
///
///     F_f = K_d W (2 B (f/1 in)^0.8 (D/1 in)^0.8 + J (D/1 in)^2) 1 lbf
///
/// work_factor: K_d, work material factor, the same number in the handbook's inch and metric forms
///     [-]; work_factor > 0.
/// diameter_m: D, drill diameter [m]; diameter >= 0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// wear_factor: W, tool wear factor [-]; wear_factor >= 1.
/// thrust_factor: B, factor of the chisel edge on the thrust of the lips [-]; thrust_factor > 0.
/// chisel_factor: J, factor of the thrust of the chisel edge itself [-]; chisel_factor >= 0.
/// handbook_drilling_thrust_n_out: F_f [N].
/// Valid for: two-lip twist drills in solid metal; K_d about 24000 for steel of 200 HB (from
///     memory), W 1.5 for a worn drill (from memory); B and J by chisel edge over diameter: 0.03
///     1.100 0.001, 0.10 1.235 0.010, 0.18 1.355 0.030 (standard drill), 0.25 1.445 0.065, 0.30
///     1.500 0.090; the handbook's metric form has rounded constants and reads 0.6 to 1.5 % off.
/// Source: E. Oberg et al., Machinery's Handbook, 31st ed., p.1152-1153, seen; its tables of factors
///     for feed and diameter are these powers within 0.8 %.
/// Example: work_factor=24000; diameter=7/8 in; feed_per_rev=0.008 in; wear_factor=1.5;
///     thrust_factor=1.355; chisel_factor=0.030 => 2668 lbf (E. Oberg et al., Machinery's Handbook,
///     31st ed., p.1152-1153, seen: its factors from tables of two or three digits).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_handbook_drilling_thrust(
    work_factor: f64,
    diameter_m: f64,
    feed_per_rev_m: f64,
    wear_factor: f64,
    thrust_factor: f64,
    chisel_factor: f64,
    handbook_drilling_thrust_n_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&handbook_drilling_thrust::FORMULA, &[work_factor, diameter_m, feed_per_rev_m, wear_factor, thrust_factor, chisel_factor], handbook_drilling_thrust_n_out) }
}

/// gullet_handbook_drilling_thrust over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_handbook_drilling_thrust_array(
    count: usize,
    work_factor: *const f64,
    diameter_m: *const f64,
    feed_per_rev_m: *const f64,
    wear_factor: *const f64,
    thrust_factor: *const f64,
    chisel_factor: *const f64,
    handbook_drilling_thrust_n_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&handbook_drilling_thrust::FORMULA, count, [work_factor, diameter_m, feed_per_rev_m, wear_factor, thrust_factor, chisel_factor], handbook_drilling_thrust_n_out, status_out) }
}

/// Torque of a twist drill in solid metal by a handbook's factors for work, wear and chisel edge.
///
///     M_c = K_d W A (f/1 in)^0.8 (D/1 in)^1.8 1 in 1 lbf
///
/// work_factor: K_d, work material factor, the same number in the handbook's inch and metric forms
///     [-]; work_factor > 0.
/// diameter_m: D, drill diameter [m]; diameter >= 0.
/// feed_per_rev_m: f, feed per revolution [m]; feed_per_rev >= 0.
/// wear_factor: W, tool wear factor [-]; wear_factor >= 1.
/// torque_factor: A, factor of the chisel edge on the torque [-]; torque_factor > 0.
/// handbook_drilling_torque_n_m_out: M_c [N.m].
/// Valid for: two-lip twist drills in solid metal; K_d about 24000 for steel of 200 HB (from
///     memory), W 1.5 for a worn drill (from memory); A by chisel edge over diameter: 0.03 1.000,
///     0.10 1.020, 0.18 1.085 (standard drill), 0.25 1.155, 0.30 1.235; the handbook's metric form
///     has a rounded constant and reads 0.6 % low.
/// Source: E. Oberg et al., Machinery's Handbook, 31st ed., p.1152-1153, seen; its tables of factors
///     for feed and diameter are these powers within 0.8 %.
/// Example: work_factor=24000; diameter=7/8 in; feed_per_rev=0.008 in; wear_factor=1.5;
///     torque_factor=1.085 => 645 lbf.in (E. Oberg et al., Machinery's Handbook, 31st ed.,
///     p.1152-1153, seen: its factors from tables of two or three digits).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_handbook_drilling_torque(
    work_factor: f64,
    diameter_m: f64,
    feed_per_rev_m: f64,
    wear_factor: f64,
    torque_factor: f64,
    handbook_drilling_torque_n_m_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&handbook_drilling_torque::FORMULA, &[work_factor, diameter_m, feed_per_rev_m, wear_factor, torque_factor], handbook_drilling_torque_n_m_out) }
}

/// gullet_handbook_drilling_torque over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_handbook_drilling_torque_array(
    count: usize,
    work_factor: *const f64,
    diameter_m: *const f64,
    feed_per_rev_m: *const f64,
    wear_factor: *const f64,
    torque_factor: *const f64,
    handbook_drilling_torque_n_m_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&handbook_drilling_torque::FORMULA, count, [work_factor, diameter_m, feed_per_rev_m, wear_factor, torque_factor], handbook_drilling_torque_n_m_out, status_out) }
}

/// Factor on the cutting speed of a twist drill in a deep hole.
///
///     k_v = 1 for l/D < 3, k_v = 0.9 for l/D < 4, k_v = 0.8 for l/D < 5, k_v = 0.7 for l/D < 6, k_v
///         = 0.6 else
///
/// depth_m: l, depth of the hole [m]; depth >= 0.
/// diameter_m: D, drill diameter [m]; diameter > 0.
/// deep_hole_speed_factor_out: k_v [-].
/// Valid for: twist drills with fluid from outside; the step of the printed depth at or below that
///     of the hole; printed 35 to 40 % less at 6 diameters, of which the larger cut is taken; beyond
///     it deep-hole drills or pecking.
/// Source: public drilling reference card of a maker, deep-hole reductions for 3 to 6 diameters,
///     seen.
/// Example: depth=40 mm; diameter=10 mm => 80 % (the card: 20 % less at 4 diameters, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_deep_hole_speed_factor(
    depth_m: f64,
    diameter_m: f64,
    deep_hole_speed_factor_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&deep_hole_speed_factor::FORMULA, &[depth_m, diameter_m], deep_hole_speed_factor_out) }
}

/// gullet_deep_hole_speed_factor over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_deep_hole_speed_factor_array(
    count: usize,
    depth_m: *const f64,
    diameter_m: *const f64,
    deep_hole_speed_factor_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&deep_hole_speed_factor::FORMULA, count, [depth_m, diameter_m], deep_hole_speed_factor_out, status_out) }
}

/// Factor on the feed of a twist drill in a deep hole.
///
///     k_f = 1 for l/D < 3, k_f = 0.9 for l/D < 5, k_f = 0.8 else
///
/// depth_m: l, depth of the hole [m]; depth >= 0.
/// diameter_m: D, drill diameter [m]; diameter > 0.
/// deep_hole_feed_factor_out: k_f [-].
/// Valid for: twist drills with fluid from outside; the step of the printed depth at or below that
///     of the hole; beyond 6 diameters deep-hole drills or pecking.
/// Source: public drilling reference card of a maker, deep-hole reductions for 3 to 6 diameters,
///     seen.
/// Example: depth=50 mm; diameter=10 mm => 80 % (the card: 20 % less at 5 diameters, seen).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_deep_hole_feed_factor(
    depth_m: f64,
    diameter_m: f64,
    deep_hole_feed_factor_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&deep_hole_feed_factor::FORMULA, &[depth_m, diameter_m], deep_hole_feed_factor_out) }
}

/// gullet_deep_hole_feed_factor over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_deep_hole_feed_factor_array(
    count: usize,
    depth_m: *const f64,
    diameter_m: *const f64,
    deep_hole_feed_factor_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&deep_hole_feed_factor::FORMULA, count, [depth_m, diameter_m], deep_hole_feed_factor_out, status_out) }
}
