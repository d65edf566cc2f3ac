// Written by gullet-c-gen: do not edit.
use crate::structs::Sized32;
use core::ffi::CStr;
use gullet::operation::CutNumbers;

/// Highest spindle speed of the machine.
pub const GULLET_LIMIT_SPINDLE_SPEED_HIGHEST: i32 = 1;
/// Lowest spindle speed of the machine.
pub const GULLET_LIMIT_SPINDLE_SPEED_LOWEST: i32 = 2;
/// Speed marked on the cutter or its holder.
pub const GULLET_LIMIT_CUTTER_SPEED: i32 = 3;
/// Cutting speed at the high end of the tables.
pub const GULLET_LIMIT_CUTTING_SPEED: i32 = 4;
/// Pace that a hand can hold.
pub const GULLET_LIMIT_HANDWHEEL_PACE: i32 = 5;
/// Highest table feed of the machine.
pub const GULLET_LIMIT_TABLE_FEED: i32 = 6;
/// Lowest table feed of the machine.
pub const GULLET_LIMIT_TABLE_FEED_LOWEST: i32 = 7;
/// Thinnest chip that cuts.
pub const GULLET_LIMIT_SMALLEST_CHIP: i32 = 8;
/// Thickest chip of the tables.
pub const GULLET_LIMIT_LARGEST_CHIP: i32 = 9;
/// Roughness asked for.
pub const GULLET_LIMIT_MEAN_ROUGHNESS: i32 = 10;
/// Power at the cutter.
pub const GULLET_LIMIT_POWER: i32 = 11;
/// Torque on the spindle.
pub const GULLET_LIMIT_TORQUE: i32 = 12;
/// Deflection of the cutter.
pub const GULLET_LIMIT_DEFLECTION: i32 = 13;
/// Clamping force.
pub const GULLET_LIMIT_CLAMPING: i32 = 14;
/// Length of the flutes.
pub const GULLET_LIMIT_FLUTE_LENGTH: i32 = 15;
/// Roughing depth of the practice.
pub const GULLET_LIMIT_ROUGHING_DEPTH: i32 = 16;
/// Depth of a climb cut on a table with backlash.
pub const GULLET_LIMIT_CLIMB_WITH_BACKLASH: i32 = 17;
/// Height that the jaws grip.
pub const GULLET_LIMIT_GRIP: i32 = 18;
/// Stick-out over diameter.
pub const GULLET_LIMIT_STICK_OUT: i32 = 19;
/// Feed at the high end of the tables.
pub const GULLET_LIMIT_LARGEST_FEED: i32 = 20;
/// Smallest feed that cuts instead of rubbing.
pub const GULLET_LIMIT_SMALLEST_FEED: i32 = 21;
/// Force along the spindle.
pub const GULLET_LIMIT_THRUST: i32 = 22;
/// Torque that turns the work out of its hold.
pub const GULLET_LIMIT_HOLD_TORQUE: i32 = 23;
/// Depth of a hole over its diameter.
pub const GULLET_LIMIT_DEPTH_RATIO: i32 = 24;
/// Stock on the diameter, largest.
pub const GULLET_LIMIT_LARGEST_STOCK: i32 = 25;
/// Stock on the diameter, smallest.
pub const GULLET_LIMIT_SMALLEST_STOCK: i32 = 26;
/// Percentage of thread, largest.
pub const GULLET_LIMIT_LARGEST_THREAD: i32 = 27;
/// Percentage of thread, smallest.
pub const GULLET_LIMIT_SMALLEST_THREAD: i32 = 28;
/// Travel that a tap runs on while the spindle reverses.
pub const GULLET_LIMIT_OVERRUN: i32 = 29;
/// Length of a bar or blade over its size.
pub const GULLET_LIMIT_OVERHANG: i32 = 30;
/// Force that holds work in a chuck.
pub const GULLET_LIMIT_CHUCK_GRIP: i32 = 31;
/// Speed of the carriage along a thread.
pub const GULLET_LIMIT_CARRIAGE_SPEED: i32 = 32;
/// Depth of cut over what the edge or the practice allows.
pub const GULLET_LIMIT_DEPTH_OF_CUT: i32 = 33;
/// Angle of a ramp or a helix into the work.
pub const GULLET_LIMIT_RAMP_ANGLE: i32 = 34;
/// Diameter of a cutter over the bore or thread it cuts.
pub const GULLET_LIMIT_CUTTER_IN_BORE: i32 = 35;
/// Stepover across the passes.
pub const GULLET_LIMIT_STEPOVER: i32 = 36;
/// Teeth in the work, most.
pub const GULLET_LIMIT_MOST_TEETH: i32 = 37;
/// Teeth in the work, fewest.
pub const GULLET_LIMIT_FEWEST_TEETH: i32 = 38;
/// Rate at which a saw cuts through an area.
pub const GULLET_LIMIT_AREA_RATE: i32 = 39;
/// Length of work that stands out of a chuck, over its diameter.
pub const GULLET_LIMIT_WORK_OVERHANG: i32 = 40;
/// Width of the chamfer over what the edge reaches.
pub const GULLET_LIMIT_EDGE_REACH: i32 = 41;
/// Acceleration length before a thread.
pub const GULLET_LIMIT_RUN_IN: i32 = 42;
/// Room for the ledger of any cut of this version.
pub const GULLET_LIMITS_MOST: usize = 42;

pub(crate) fn limit_texts(limit: i32) -> (&'static CStr, &'static CStr) {
    match limit {
        GULLET_LIMIT_SPINDLE_SPEED_HIGHEST => (c"spindle_speed_highest", c"rev/s"),
        GULLET_LIMIT_SPINDLE_SPEED_LOWEST => (c"spindle_speed_lowest", c"rev/s"),
        GULLET_LIMIT_CUTTER_SPEED => (c"cutter_speed", c"rev/s"),
        GULLET_LIMIT_CUTTING_SPEED => (c"cutting_speed", c"m/s"),
        GULLET_LIMIT_HANDWHEEL_PACE => (c"handwheel_pace", c"m/s"),
        GULLET_LIMIT_TABLE_FEED => (c"table_feed", c"m/s"),
        GULLET_LIMIT_TABLE_FEED_LOWEST => (c"table_feed_lowest", c"m/s"),
        GULLET_LIMIT_SMALLEST_CHIP => (c"smallest_chip", c"m"),
        GULLET_LIMIT_LARGEST_CHIP => (c"largest_chip", c"m"),
        GULLET_LIMIT_MEAN_ROUGHNESS => (c"mean_roughness", c"m"),
        GULLET_LIMIT_POWER => (c"power", c"W"),
        GULLET_LIMIT_TORQUE => (c"torque", c"N.m"),
        GULLET_LIMIT_DEFLECTION => (c"deflection", c"m"),
        GULLET_LIMIT_CLAMPING => (c"clamping", c"N"),
        GULLET_LIMIT_FLUTE_LENGTH => (c"flute_length", c"m"),
        GULLET_LIMIT_ROUGHING_DEPTH => (c"roughing_depth", c"m"),
        GULLET_LIMIT_CLIMB_WITH_BACKLASH => (c"climb_with_backlash", c"m"),
        GULLET_LIMIT_GRIP => (c"grip", c"m"),
        GULLET_LIMIT_STICK_OUT => (c"stick_out", c"m"),
        GULLET_LIMIT_LARGEST_FEED => (c"largest_feed", c"m"),
        GULLET_LIMIT_SMALLEST_FEED => (c"smallest_feed", c"m"),
        GULLET_LIMIT_THRUST => (c"thrust", c"N"),
        GULLET_LIMIT_HOLD_TORQUE => (c"hold_torque", c"N.m"),
        GULLET_LIMIT_DEPTH_RATIO => (c"depth_ratio", c""),
        GULLET_LIMIT_LARGEST_STOCK => (c"largest_stock", c"m"),
        GULLET_LIMIT_SMALLEST_STOCK => (c"smallest_stock", c"m"),
        GULLET_LIMIT_LARGEST_THREAD => (c"largest_thread", c""),
        GULLET_LIMIT_SMALLEST_THREAD => (c"smallest_thread", c""),
        GULLET_LIMIT_OVERRUN => (c"overrun", c"m"),
        GULLET_LIMIT_OVERHANG => (c"overhang", c""),
        GULLET_LIMIT_CHUCK_GRIP => (c"chuck_grip", c"N"),
        GULLET_LIMIT_CARRIAGE_SPEED => (c"carriage_speed", c"m/s"),
        GULLET_LIMIT_DEPTH_OF_CUT => (c"depth_of_cut", c"m"),
        GULLET_LIMIT_RAMP_ANGLE => (c"ramp_angle", c"rad"),
        GULLET_LIMIT_CUTTER_IN_BORE => (c"cutter_in_bore", c"m"),
        GULLET_LIMIT_STEPOVER => (c"stepover", c"m"),
        GULLET_LIMIT_MOST_TEETH => (c"most_teeth", c""),
        GULLET_LIMIT_FEWEST_TEETH => (c"fewest_teeth", c""),
        GULLET_LIMIT_AREA_RATE => (c"area_rate", c"m2/s"),
        GULLET_LIMIT_WORK_OVERHANG => (c"work_overhang", c""),
        GULLET_LIMIT_EDGE_REACH => (c"edge_reach", c"m"),
        GULLET_LIMIT_RUN_IN => (c"run_in", c"m"),
        _ => (c"", c""),
    }
}

/// A cut: what a person sets on the machine, and what follows from it.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_cut {
    /// sizeof(gullet_cut); set by gullet_cut_init().
    pub struct_size: u32,
    /// Number of limits in the ledger.
    pub limit_count: u32,
    /// Doubts: 1 << GULLET_WARNING_... for each.
    pub warning_bits: u32,
    /// The limit nearest to its bound, one of GULLET_LIMIT_...; 0 for none.
    pub binding_limit: i32,
    /// The limit that holds the feed below the wanted one, one of GULLET_LIMIT_...; 0 for none.
    pub held_by_limit: i32,
    /// Number of limits that are exceeded; some only where loads lower nothing.
    pub exceeded_count: u32,
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
    /// Cutting speed of the tables: low end.
    pub cutting_speed_low_m_per_s: f64,
    /// Cutting speed of the tables: starting value.
    pub cutting_speed_start_m_per_s: f64,
    /// Cutting speed of the tables: high end.
    pub cutting_speed_high_m_per_s: f64,
    /// Feed per tooth of the tables: low end.
    pub feed_per_tooth_low_m: f64,
    /// Feed per tooth of the tables: starting value.
    pub feed_per_tooth_start_m: f64,
    /// Feed per tooth of the tables: high end.
    pub feed_per_tooth_high_m: f64,
    /// Mean tangential force at the settings, over the pairs of the material: low end.
    pub force_low_n: f64,
    /// Mean tangential force at the settings, over the pairs of the material: starting value.
    pub force_start_n: f64,
    /// Mean tangential force at the settings, over the pairs of the material: high end.
    pub force_high_n: f64,
    /// Power at the cutter at the settings, over the pairs of the material: low end.
    pub power_low_w: f64,
    /// Power at the cutter at the settings, over the pairs of the material: starting value.
    pub power_start_w: f64,
    /// Power at the cutter at the settings, over the pairs of the material: high end.
    pub power_high_w: f64,
    /// Time of the pass with speed and feed at the ends of the tables: low end.
    pub time_low_s: f64,
    /// Time of the pass with speed and feed at the ends of the tables: starting value.
    pub time_start_s: f64,
    /// Time of the pass with speed and feed at the ends of the tables: high end.
    pub time_high_s: f64,
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
    const FIRST: usize = 440;
}

impl gullet_cut {
    pub(crate) fn of(cut: &CutNumbers) -> gullet_cut {
        gullet_cut {
            struct_size: size_of::<gullet_cut>() as u32,
            limit_count: cut.ledger.len() as u32,
            warning_bits: cut.warnings.bits(),
            binding_limit: cut.binding().map_or(0, |limit| limit.name as i32),
            held_by_limit: cut.held_by.map_or(0, |limit| limit as i32),
            exceeded_count: cut.ledger.iter().filter(|limit| limit.exceeded()).count() as u32,
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
            cutting_speed_low_m_per_s: cut.spread.cutting_speed.low.value,
            cutting_speed_start_m_per_s: cut.spread.cutting_speed.start.value,
            cutting_speed_high_m_per_s: cut.spread.cutting_speed.high.value,
            feed_per_tooth_low_m: cut.spread.feed_per_tooth.low.value,
            feed_per_tooth_start_m: cut.spread.feed_per_tooth.start.value,
            feed_per_tooth_high_m: cut.spread.feed_per_tooth.high.value,
            force_low_n: cut.spread.force.low.value,
            force_start_n: cut.spread.force.start.value,
            force_high_n: cut.spread.force.high.value,
            power_low_w: cut.spread.power.low.value,
            power_start_w: cut.spread.power.start.value,
            power_high_w: cut.spread.power.high.value,
            time_low_s: cut.spread.time.low.value,
            time_start_s: cut.spread.time.start.value,
            time_high_s: cut.spread.time.high.value,
            handwheel_rate_known: i32::from(cut.settings.handwheel_rate.is_some()),
            unit_power_cutting_power_known: i32::from(cut.consequences.unit_power_cutting_power.is_some()),
            mean_roughness_known: i32::from(cut.consequences.mean_roughness.is_some()),
            reserved: 0,
        }
    }
}
