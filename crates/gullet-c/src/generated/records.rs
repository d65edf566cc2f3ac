// Written by gullet-c-gen: do not edit.
use crate::structs::Sized32;
use gullet::operation::Cut;

/// A cut: what a person sets on the machine, and what follows from it.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_cut {
    /// sizeof(gullet_cut); set by gullet_cut_init().
    pub struct_size: u32,
    /// Number of limits in the ledger.
    pub limit_count: u32,
    /// Number of doubts; gullet_last_warning_text tells them.
    pub warning_count: u32,
    /// Number of settings that were lowered for a limit.
    pub adjustment_count: u32,
    /// Spindle speed that the wanted cutting speed would need.
    pub wanted_speed_rev_per_s: f64,
    /// Spindle speed the machine really has.
    pub spindle_speed_rev_per_s: f64,
    /// Cutting speed at that spindle speed.
    pub cutting_speed_m_per_s: f64,
    /// Largest chip wanted.
    pub chip_load_m: f64,
    /// Feed per tooth, after thinning and limits.
    pub feed_per_tooth_m: f64,
    /// Feed per revolution.
    pub feed_per_rev_m: f64,
    /// Table feed.
    pub table_feed_m_per_s: f64,
    /// Pace of the handwheel for that table feed; none where the table is not cranked by hand.
    pub handwheel_rate_rev_per_s: f64,
    /// Time to travel one inch, or 10 mm in a metric shop, at that table feed.
    pub time_per_inch_s: f64,
    /// Time to travel 10 mm at that table feed.
    pub time_per_10_mm_s: f64,
    /// Diameter that cuts at this depth.
    pub effective_diameter_m: f64,
    /// Angle of tooth immersion at entry.
    pub entry_angle_rad: f64,
    /// Angle of tooth immersion at exit.
    pub exit_angle_rad: f64,
    /// Largest undeformed chip thickness.
    pub max_chip_thickness_m: f64,
    /// Mean undeformed chip thickness.
    pub mean_chip_thickness_m: f64,
    /// Removal rate while the cut is at full width.
    pub removal_rate_m3_per_s: f64,
    /// Specific cutting force at the mean chip, default pair, sharp edge.
    pub specific_cutting_force_pa: f64,
    /// Power at the cutter, default pair, sharp edge.
    pub cutting_power_w: f64,
    /// Power of the motor for that.
    pub motor_power_w: f64,
    /// Mean torque on the spindle, default pair, sharp edge.
    pub torque_n_m: f64,
    /// Mean tangential force, default pair, sharp edge.
    pub mean_tangential_force_n: f64,
    /// Power at the cutter by the unit-power method, where a unit power is known.
    pub unit_power_cutting_power_w: f64,
    /// Power at the cutter that limits are checked with: the highest pair, worn edge.
    pub limit_power_w: f64,
    /// Torque that limits are checked with: the highest pair, worn edge.
    pub limit_torque_n_m: f64,
    /// Peak tangential force of the teeth in cut: the highest pair, worn edge.
    pub peak_tangential_force_n: f64,
    /// Peak force across the cutter's axis: the highest pair, worn edge.
    pub peak_force_n: f64,
    /// Peak force along the axis: pulls the work up and the cutter out.
    pub axial_force_n: f64,
    /// Deflection of the cutter's tip under the peak force.
    pub deflection_m: f64,
    /// Clamping force needed along the jaws and against lift, with the safety factor.
    pub clamping_needed_n: f64,
    /// Clamping force the hold gives.
    pub clamping_force_n: f64,
    /// Power that is available at the cutter at this speed, within the practice's share.
    pub available_power_w: f64,
    /// Torque that is available at this speed, within the practice's share.
    pub available_torque_n_m: f64,
    /// Theoretical mean roughness of the surface the pass leaves; none where no model applies.
    pub mean_roughness_m: f64,
    /// Travel of the pass with approach, overtravel and clearance.
    pub travel_m: f64,
    /// Time of the pass in the cut, without return and handling.
    pub time_s: f64,
    /// 1 where handwheel_rate is known, 0 where it is not and its field is 0.
    pub handwheel_rate_known: i32,
    /// 1 where unit_power_cutting_power is known, 0 where it is not and its field is 0.
    pub unit_power_cutting_power_known: i32,
    /// 1 where mean_roughness is known, 0 where it is not and its field is 0.
    pub mean_roughness_known: i32,
    /// Zero.
    pub reserved: i32,
}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_cut {
    const NAME: &'static str = "gullet_cut";
    const FIRST: usize = 312;
}

impl gullet_cut {
    pub(crate) fn of(cut: &Cut) -> gullet_cut {
        gullet_cut {
            struct_size: size_of::<gullet_cut>() as u32,
            limit_count: cut.ledger.len() as u32,
            warning_count: cut.warnings.len() as u32,
            adjustment_count: cut.adjustments.len() as u32,
            wanted_speed_rev_per_s: cut.settings.wanted_speed.value,
            spindle_speed_rev_per_s: cut.settings.spindle_speed.value,
            cutting_speed_m_per_s: cut.settings.cutting_speed.value,
            chip_load_m: cut.settings.chip_load.value,
            feed_per_tooth_m: cut.settings.feed_per_tooth.value,
            feed_per_rev_m: cut.settings.feed_per_rev.value,
            table_feed_m_per_s: cut.settings.table_feed.value,
            handwheel_rate_rev_per_s: cut.settings.handwheel_rate.map_or(0.0, |v| v.value),
            time_per_inch_s: cut.settings.time_per_inch.value,
            time_per_10_mm_s: cut.settings.time_per_10_mm.value,
            effective_diameter_m: cut.consequences.effective_diameter.value,
            entry_angle_rad: cut.consequences.entry_angle.value,
            exit_angle_rad: cut.consequences.exit_angle.value,
            max_chip_thickness_m: cut.consequences.max_chip_thickness.value,
            mean_chip_thickness_m: cut.consequences.mean_chip_thickness.value,
            removal_rate_m3_per_s: cut.consequences.removal_rate.value,
            specific_cutting_force_pa: cut.consequences.specific_cutting_force.value,
            cutting_power_w: cut.consequences.cutting_power.value,
            motor_power_w: cut.consequences.motor_power.value,
            torque_n_m: cut.consequences.torque.value,
            mean_tangential_force_n: cut.consequences.mean_tangential_force.value,
            unit_power_cutting_power_w: cut.consequences.unit_power_cutting_power.map_or(0.0, |v| v.value),
            limit_power_w: cut.consequences.limit_power.value,
            limit_torque_n_m: cut.consequences.limit_torque.value,
            peak_tangential_force_n: cut.consequences.peak_tangential_force.value,
            peak_force_n: cut.consequences.peak_force.value,
            axial_force_n: cut.consequences.axial_force.value,
            deflection_m: cut.consequences.deflection.value,
            clamping_needed_n: cut.consequences.clamping_needed.value,
            clamping_force_n: cut.consequences.clamping_force.value,
            available_power_w: cut.consequences.available_power.value,
            available_torque_n_m: cut.consequences.available_torque.value,
            mean_roughness_m: cut.consequences.mean_roughness.map_or(0.0, |v| v.value),
            travel_m: cut.consequences.travel.value,
            time_s: cut.consequences.time.value,
            handwheel_rate_known: i32::from(cut.settings.handwheel_rate.is_some()),
            unit_power_cutting_power_known: i32::from(cut.consequences.unit_power_cutting_power.is_some()),
            mean_roughness_known: i32::from(cut.consequences.mean_roughness.is_some()),
            reserved: 0,
        }
    }
}
