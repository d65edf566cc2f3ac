// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::formula::{array, scalar};
use gullet::formula::engagement::*;

/// Angle over which a tooth cuts in a side cut or slot.
///
///     phi_s = acos(1 - 2 a_e/D)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// engagement_angle_rad_out: phi_s [rad].
/// Valid for: side cut, up or down; slot at a_e = D (180 deg); circular tooth path.
/// Source: geometry of the circular tooth path, derived; evaluated by the half angle, which loses no
///     digits in thin cuts or near a slot.
/// Example: diameter=12.7 mm; radial_depth=1.27 mm => 36.8698976 deg (identity: 3-4-5 triangle).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_engagement_angle(
    diameter_m: f64,
    radial_depth_m: f64,
    engagement_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&engagement_angle::FORMULA, &[diameter_m, radial_depth_m], engagement_angle_rad_out) }
}

/// gullet_engagement_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_engagement_angle_array(
    count: usize,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    engagement_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&engagement_angle::FORMULA, count, [diameter_m, radial_depth_m], engagement_angle_rad_out, status_out) }
}

/// Immersion at which a tooth leaves the work in up (conventional) milling.
///
///     phi_ex = acos(1 - 2 a_e/D)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// up_milling_exit_angle_rad_out: phi_ex [rad].
/// Valid for: side cut that enters at phi_st = 0; phi from the normal to the feed in the sense of
///     rotation.
/// Source: geometry of the circular tooth path, derived.
/// Example: diameter=20 mm; radial_depth=5 mm => 60 deg (identity: acos(1/2)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_up_milling_exit_angle(
    diameter_m: f64,
    radial_depth_m: f64,
    up_milling_exit_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&up_milling_exit_angle::FORMULA, &[diameter_m, radial_depth_m], up_milling_exit_angle_rad_out) }
}

/// gullet_up_milling_exit_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_up_milling_exit_angle_array(
    count: usize,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    up_milling_exit_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&up_milling_exit_angle::FORMULA, count, [diameter_m, radial_depth_m], up_milling_exit_angle_rad_out, status_out) }
}

/// Immersion at which a tooth enters the work in down (climb) milling.
///
///     phi_st = pi - acos(1 - 2 a_e/D)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// radial_depth_m: a_e, working engagement, across the axis [m]; 0 < radial_depth <= diameter.
/// down_milling_entry_angle_rad_out: phi_st [rad].
/// Valid for: side cut that leaves at phi_ex = 180 deg; phi from the normal to the feed in the sense
///     of rotation.
/// Source: geometry of the circular tooth path, derived.
/// Example: diameter=20 mm; radial_depth=5 mm => 120 deg (identity: 180 - acos(1/2)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_down_milling_entry_angle(
    diameter_m: f64,
    radial_depth_m: f64,
    down_milling_entry_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&down_milling_entry_angle::FORMULA, &[diameter_m, radial_depth_m], down_milling_entry_angle_rad_out) }
}

/// gullet_down_milling_entry_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_down_milling_entry_angle_array(
    count: usize,
    diameter_m: *const f64,
    radial_depth_m: *const f64,
    down_milling_entry_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&down_milling_entry_angle::FORMULA, count, [diameter_m, radial_depth_m], down_milling_entry_angle_rad_out, status_out) }
}

/// Immersion at which a tooth of a face mill enters the work.
///
///     phi_st = acos(2 y/D); y = min(y_high, D/2)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// edge_high_m: y_high, signed distance of the work edge where teeth enter from the cutter axis [m];
///     edge_high > -diameter/2.
/// face_entry_angle_rad_out: phi_st [rad].
/// Valid for: an edge at or beyond D/2 gives 0; positive on the side where teeth enter (left of the
///     cutter's travel relative to the work, right-hand cutter seen from the spindle).
/// Source: geometry of the circular tooth path, derived.
/// Example: diameter=100 mm; edge_high=25 mm => 60 deg (identity: acos(1/2)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_entry_angle(
    diameter_m: f64,
    edge_high_m: f64,
    face_entry_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&face_entry_angle::FORMULA, &[diameter_m, edge_high_m], face_entry_angle_rad_out) }
}

/// gullet_face_entry_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_entry_angle_array(
    count: usize,
    diameter_m: *const f64,
    edge_high_m: *const f64,
    face_entry_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&face_entry_angle::FORMULA, count, [diameter_m, edge_high_m], face_entry_angle_rad_out, status_out) }
}

/// Immersion at which a tooth of a face mill leaves the work.
///
///     phi_ex = acos(2 y/D); y = max(y_low, -D/2)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// edge_low_m: y_low, signed distance of the work edge where teeth leave from the cutter axis [m];
///     edge_low < diameter/2.
/// face_exit_angle_rad_out: phi_ex [rad].
/// Valid for: an edge at or beyond -D/2 gives 180 deg; positive on the side where teeth enter (left
///     of the cutter's travel relative to the work, right-hand cutter seen from the spindle).
/// Source: geometry of the circular tooth path, derived.
/// Example: diameter=100 mm; edge_low=-25 mm => 120 deg (identity: acos(-1/2)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_exit_angle(
    diameter_m: f64,
    edge_low_m: f64,
    face_exit_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&face_exit_angle::FORMULA, &[diameter_m, edge_low_m], face_exit_angle_rad_out) }
}

/// gullet_face_exit_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_exit_angle_array(
    count: usize,
    diameter_m: *const f64,
    edge_low_m: *const f64,
    face_exit_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&face_exit_angle::FORMULA, count, [diameter_m, edge_low_m], face_exit_angle_rad_out, status_out) }
}

/// Angle over which a tooth of a face mill cuts.
///
///     phi_s = acos(2 y_1/D) - acos(2 y_2/D); y_1 = max(y_low, -D/2); y_2 = min(y_high, D/2)
///
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// edge_low_m: y_low, signed distance of the work edge where teeth leave from the cutter axis [m];
///     edge_low < edge_high.
/// edge_high_m: y_high, signed distance of the work edge where teeth enter from the cutter axis [m];
///     edge_high > -diameter/2.
/// edge_low < diameter/2.
/// face_engagement_angle_rad_out: phi_s [rad].
/// Valid for: one work piece without gaps; edges beyond the cutter count as at its rim; positive on
///     the side where teeth enter (left of the cutter's travel relative to the work, right-hand
///     cutter seen from the spindle).
/// Source: geometry of the circular tooth path, derived; centred it is 2 asin(a_e/D).
/// Example: diameter=100 mm; edge_low=-20 mm; edge_high=20 mm => 47.1563569564 deg (identity,
///     centred: 2 asin(0.4)).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_engagement_angle(
    diameter_m: f64,
    edge_low_m: f64,
    edge_high_m: f64,
    face_engagement_angle_rad_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&face_engagement_angle::FORMULA, &[diameter_m, edge_low_m, edge_high_m], face_engagement_angle_rad_out) }
}

/// gullet_face_engagement_angle over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_face_engagement_angle_array(
    count: usize,
    diameter_m: *const f64,
    edge_low_m: *const f64,
    edge_high_m: *const f64,
    face_engagement_angle_rad_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&face_engagement_angle::FORMULA, count, [diameter_m, edge_low_m, edge_high_m], face_engagement_angle_rad_out, status_out) }
}

/// Mean number of teeth in the arc of a cut.
///
///     z_m = z phi_s/(2 pi)
///
/// teeth: z, effective teeth [-]; teeth >= 1.
/// engagement_angle_rad: phi_s, angle over which a tooth cuts [rad]; 0 deg <= engagement_angle <=
///     360 deg.
/// mean_teeth_in_cut_out: z_m [-].
/// Valid for: straight flutes or one height along a helix, equal pitch; phi_s in radians.
/// Source: derived: share of the revolution times the teeth.
/// Example: teeth=4; engagement_angle=90 deg => 1 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_teeth_in_cut(
    teeth: f64,
    engagement_angle_rad: f64,
    mean_teeth_in_cut_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_teeth_in_cut::FORMULA, &[teeth, engagement_angle_rad], mean_teeth_in_cut_out) }
}

/// gullet_mean_teeth_in_cut over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_teeth_in_cut_array(
    count: usize,
    teeth: *const f64,
    engagement_angle_rad: *const f64,
    mean_teeth_in_cut_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_teeth_in_cut::FORMULA, count, [teeth, engagement_angle_rad], mean_teeth_in_cut_out, status_out) }
}

/// Mean number of teeth that touch the work with any part of their edge.
///
///     z_m = min(z, z (phi_s + 2 a_p tan(beta)/D)/(2 pi))
///
/// teeth: z, effective teeth [-]; teeth >= 1.
/// engagement_angle_rad: phi_s, angle over which a tooth cuts [rad]; 0 deg <= engagement_angle <=
///     360 deg.
/// diameter_m: D, cutter diameter [m]; diameter > 0.
/// axial_depth_m: a_p, depth of cut along the axis [m]; axial_depth >= 0.
/// helix_angle_rad: beta, helix angle [rad]; 0 deg <= helix_angle < 90 deg.
/// mean_teeth_touching_out: z_m [-].
/// Valid for: cylindrical helix, equal pitch; angles in radians; a smoothness figure, not a load
///     factor: most of the edges touch with a part of their length only.
/// Source: derived: arc plus the lag of the helix.
/// Example: teeth=4; engagement_angle=90 deg; diameter=20 mm; axial_depth=20 mm; helix_angle=30 deg
///     => 1.73510519 (identity).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_teeth_touching(
    teeth: f64,
    engagement_angle_rad: f64,
    diameter_m: f64,
    axial_depth_m: f64,
    helix_angle_rad: f64,
    mean_teeth_touching_out: *mut f64,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { scalar(&mean_teeth_touching::FORMULA, &[teeth, engagement_angle_rad, diameter_m, axial_depth_m, helix_angle_rad], mean_teeth_touching_out) }
}

/// gullet_mean_teeth_touching over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_mean_teeth_touching_array(
    count: usize,
    teeth: *const f64,
    engagement_angle_rad: *const f64,
    diameter_m: *const f64,
    axial_depth_m: *const f64,
    helix_angle_rad: *const f64,
    mean_teeth_touching_out: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { array(&mean_teeth_touching::FORMULA, count, [teeth, engagement_angle_rad, diameter_m, axial_depth_m, helix_angle_rad], mean_teeth_touching_out, status_out) }
}
