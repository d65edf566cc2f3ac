//! The economic speed and the price of a lot.

use crate::failure::Failure;
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::slice;
use crate::quantity::choose;
use crate::structs::{Sized32, room, take};
use gullet::economics::{Aim, EdgeEconomics, LotCost, Priced};
use gullet::model::Drive;
use gullet::quantity::si;

/// The cost of a part is to be least.
pub const GULLET_LEAST_COST: i32 = 0;
/// The time of a part is to be least: maximum production.
pub const GULLET_LEAST_TIME: i32 = 1;

/// What decides the economic speed. Zero stands for what is said behind a field, else for zero.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_edge_economics {
    /// sizeof(gullet_edge_economics); set by gullet_edge_economics_init().
    pub struct_size: u32,
    /// Zero.
    pub reserved: u32,
    /// Machine and operator, money per time; needed.
    pub machine_rate_money_per_s: f64,
    /// Cost of one cutting edge, regrinding included.
    pub edge_cost_money: f64,
    /// Time of one tool change.
    pub change_time_s: f64,
    /// Handling time a part.
    pub handling_time_s: f64,
    /// Share of the cutting time that the edge is in cut; 0 for 1.
    pub in_cut_share: f64,
    /// Cutting speed for a life of one minute, C of v T^n = C, at this feed and depth; needed.
    pub taylor_speed_m_per_s: f64,
    /// Taylor's exponent n of the life, above 0 and below 1; needed.
    pub taylor_exponent: f64,
    /// Diameter that the cutting speed is counted on; needed.
    pub diameter_m: f64,
    /// Travel at feed, all passes together; needed.
    pub travel_m: f64,
    /// Feed per revolution; needed.
    pub feed_per_rev_m: f64,
}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_edge_economics {
    const NAME: &'static str = "gullet_edge_economics";
    const FIRST: usize = 88;
}

/// What a part takes and costs at one speed, without set-up and material.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_economic_speed {
    /// sizeof(gullet_economic_speed); set by gullet_economic_speed_init().
    pub struct_size: u32,
    /// Zero.
    pub reserved: u32,
    /// Cutting speed.
    pub cutting_speed_m_per_s: f64,
    /// Spindle speed.
    pub spindle_speed_rev_per_s: f64,
    /// Feed speed.
    pub feed_speed_m_per_s: f64,
    /// Tool life, counted while the edge cuts.
    pub tool_life_s: f64,
    /// Cutting time a part.
    pub cutting_time_s: f64,
    /// Parts an edge makes, as a mean.
    pub parts_per_edge: f64,
    /// Time a part, edges changed also within a part.
    pub time_per_part_s: f64,
    /// Cost a part, edges changed also within a part.
    pub cost_per_part_money: f64,
    /// Whole parts an edge makes; 0 where it does not last one part.
    pub whole_parts_per_edge: f64,
    /// Time a part where an edge makes whole parts only; 0 where it does not last one part.
    pub whole_parts_time_per_part_s: f64,
    /// Cost a part where an edge makes whole parts only; 0 where it does not last one part.
    pub whole_parts_cost_per_part_money: f64,
}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_economic_speed {
    const NAME: &'static str = "gullet_economic_speed";
    const FIRST: usize = 96;
}

/// What the best of a spindle's speeds costs against the wanted speed.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_snapping {
    /// sizeof(gullet_snapping); set by gullet_snapping_init().
    pub struct_size: u32,
    /// Zero.
    pub reserved: u32,
    /// Speed that would be best if it could be set.
    pub wanted_rev_per_s: f64,
    /// Highest step at or below it; 0 for none.
    pub below_rev_per_s: f64,
    /// Lowest step above it; 0 for none.
    pub above_rev_per_s: f64,
    /// Best step where an edge makes whole parts only; 0 for none.
    pub whole_parts_rev_per_s: f64,
    /// What a part costs more than at the wanted speed.
    pub extra_cost_money: f64,
    /// That over the cost at the wanted speed.
    pub extra_cost_share: f64,
    /// What a part takes longer than at the wanted speed.
    pub extra_time_s: f64,
    /// That over the time at the wanted speed.
    pub extra_time_share: f64,
    /// Steps left out because their life is beyond what a number holds.
    pub left_out: u64,
}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_snapping {
    const NAME: &'static str = "gullet_snapping";
    const FIRST: usize = 80;
}

/// A lot. Zero stands for what is said behind a field, else for zero. Hands learn and machines do
/// not: a learning rate shortens load and unload, tool changes and gauging, whose times are then
/// those of the first part.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_lot {
    /// sizeof(gullet_lot); set by gullet_lot_init().
    pub struct_size: u32,
    /// Zero.
    pub reserved: u32,
    /// Parts in the lot, a whole number; needed.
    pub lot_size: f64,
    /// Machine and operator, money per time.
    pub machine_rate_money_per_s: f64,
    /// Set-up time of the lot, allowances included.
    pub setup_time_s: f64,
    /// Load and unload.
    pub handling_time_s: f64,
    /// In the cut, a part.
    pub cutting_time_s: f64,
    /// Moves outside the cut, a part.
    pub moving_time_s: f64,
    /// Time of one tool change.
    pub change_time_s: f64,
    /// Cost of one cutting edge, regrinding included.
    pub edge_cost_money: f64,
    /// Parts one edge makes, whole or as a mean; 0 for 1.
    pub parts_per_edge: f64,
    /// Time to gauge one part.
    pub gauging_time_s: f64,
    /// One part in so many is gauged, a whole number; 0 for 1.
    pub gauged_every: f64,
    /// Allowance as a share of the normal time: standard = normal (1 + A).
    pub allowance_of_normal_time: f64,
    /// Allowance as a share of the standard time: standard = normal/(1 - A).
    pub allowance_of_standard_time: f64,
    /// Learning rate of the cumulative average (Wright); 0 for 1, no learning.
    pub wright_rate: f64,
    /// Learning rate of the unit curve (Crawford); 0 for 1, no learning.
    pub crawford_rate: f64,
    /// Material, a part.
    pub material_cost_money: f64,
}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_lot {
    const NAME: &'static str = "gullet_lot";
    const FIRST: usize = 136;
}

/// What a lot takes and costs. The shares of a part, added in this order, give its totals to the
/// last bit.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_lot_price {
    /// sizeof(gullet_lot_price); set by gullet_lot_price_init().
    pub struct_size: u32,
    /// Zero.
    pub reserved: u32,
    /// Share of the set-up.
    pub setup_s: f64,
    /// Load and unload.
    pub handling_s: f64,
    /// In the cut.
    pub cutting_s: f64,
    /// Moves outside the cut.
    pub moving_s: f64,
    /// Share of tool changes.
    pub tool_change_s: f64,
    /// Share of gauging.
    pub gauging_s: f64,
    /// Allowance.
    pub allowance_s: f64,
    /// Cost of the share of the set-up.
    pub setup_money: f64,
    /// Cost of load and unload.
    pub handling_money: f64,
    /// Cost of the time in the cut.
    pub cutting_money: f64,
    /// Cost of moves outside the cut.
    pub moving_money: f64,
    /// Cost of the time of tool changes.
    pub tool_change_money: f64,
    /// Cost of gauging.
    pub gauging_money: f64,
    /// Cost of the allowance.
    pub allowance_money: f64,
    /// Cost of cutting edges.
    pub edges_money: f64,
    /// Cost of material.
    pub material_money: f64,
    /// Normal time of one part, a mean over the lot.
    pub normal_time_s: f64,
    /// Standard time of one part: with the allowance, without the set-up.
    pub standard_time_s: f64,
    /// Time of one part with its share of the set-up.
    pub time_per_part_s: f64,
    /// Cost of one part.
    pub cost_per_part_money: f64,
    /// Time of the lot.
    pub lot_time_s: f64,
    /// Cost of the lot.
    pub lot_cost_money: f64,
}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_lot_price {
    const NAME: &'static str = "gullet_lot_price";
    const FIRST: usize = 184;
}

/// A number whose zero stands for one.
fn or_one(value: f64) -> f64 {
    if value == 0.0 { 1.0 } else { value }
}

/// Reads the inputs of the economic speed.
///
/// # Safety
/// As [`take`].
unsafe fn edge(pointer: *const gullet_edge_economics) -> Result<EdgeEconomics, Failure> {
    // SAFETY: the same promise.
    let given = unsafe { take(pointer, "economics")? };
    Ok(EdgeEconomics {
        machine_rate: si(given.machine_rate_money_per_s),
        edge_cost: si(given.edge_cost_money),
        change_time: si(given.change_time_s),
        handling_time: si(given.handling_time_s),
        in_cut_share: si(or_one(given.in_cut_share)),
        taylor_speed: si(given.taylor_speed_m_per_s),
        taylor_exponent: si(given.taylor_exponent),
        diameter: si(given.diameter_m),
        travel: si(given.travel_m),
        feed_per_rev: si(given.feed_per_rev_m),
    })
}

fn aim_of(aim: i32) -> Result<Aim, Failure> {
    choose("aim", aim, Aim::ALL)
}

fn written(priced: &Priced) -> gullet_economic_speed {
    let speed = &priced.speed;
    let whole = priced.whole.as_ref();
    gullet_economic_speed {
        struct_size: size_of::<gullet_economic_speed>() as u32,
        reserved: 0,
        cutting_speed_m_per_s: speed.cutting_speed.value,
        spindle_speed_rev_per_s: speed.spindle_speed.value,
        feed_speed_m_per_s: speed.feed_speed.value,
        tool_life_s: speed.tool_life.value,
        cutting_time_s: speed.cutting_time.value,
        parts_per_edge: speed.parts_per_edge.value,
        time_per_part_s: speed.time_per_part.value,
        cost_per_part_money: speed.cost_per_part.value,
        whole_parts_per_edge: whole.map_or(0.0, |whole| whole.parts_per_edge.value),
        whole_parts_time_per_part_s: whole.map_or(0.0, |whole| whole.time_per_part.value),
        whole_parts_cost_per_part_money: whole.map_or(0.0, |whole| whole.cost_per_part.value),
    }
}

/// The speed of least cost or least time; `aim` is GULLET_LEAST_COST or GULLET_LEAST_TIME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_economics_best(
    economics: *const gullet_edge_economics,
    aim: i32,
    speed_out: *mut gullet_economic_speed,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (edge, target) = unsafe { (edge(economics)?, room(speed_out, "speed_out")?) };
        let best = match aim_of(aim)? {
            Aim::LeastCost => edge.minimum_cost()?,
            Aim::LeastTime => edge.maximum_production()?,
        };
        target.write(written(&best));
        Ok(GULLET_OK)
    })
}

/// What a part takes and costs at a spindle speed.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_economics_at(
    economics: *const gullet_edge_economics,
    spindle_speed_rev_per_s: f64,
    speed_out: *mut gullet_economic_speed,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (edge, target) = unsafe { (edge(economics)?, room(speed_out, "speed_out")?) };
        target.write(written(
            &edge.at_spindle_speed(si(spindle_speed_rev_per_s))?,
        ));
        Ok(GULLET_OK)
    })
}

/// The best of a spindle's steps, rising, each tried through the whole cost function, and what it
/// costs against the speed that would be best.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_economics_snap(
    economics: *const gullet_edge_economics,
    aim: i32,
    speeds_rev_per_s: *const f64,
    speed_count: usize,
    chosen_out: *mut gullet_economic_speed,
    snapping_out: *mut gullet_snapping,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (edge, speeds, chosen, snapping) = unsafe {
            (
                edge(economics)?,
                slice(speeds_rev_per_s, speed_count, "speeds_rev_per_s")?,
                room(chosen_out, "chosen_out")?,
                room(snapping_out, "snapping_out")?,
            )
        };
        let drive = Drive::Stepped(speeds.iter().map(|speed| si(*speed)).collect());
        let found = edge.snapped(&drive, aim_of(aim)?)?;
        let speed = |priced: &Option<Priced>| {
            let priced = priced.as_ref();
            priced.map_or(0.0, |priced| priced.speed.spindle_speed.value)
        };
        chosen.write(written(&found.chosen));
        snapping.write(gullet_snapping {
            struct_size: size_of::<gullet_snapping>() as u32,
            reserved: 0,
            wanted_rev_per_s: found.wanted.speed.spindle_speed.value,
            below_rev_per_s: speed(&found.below),
            above_rev_per_s: speed(&found.above),
            whole_parts_rev_per_s: speed(&found.chosen_whole),
            extra_cost_money: found.extra_cost.value,
            extra_cost_share: found.extra_cost_share.value,
            extra_time_s: found.extra_time.value,
            extra_time_share: found.extra_time_share.value,
            left_out: found.left_out as u64,
        });
        Ok(GULLET_OK)
    })
}

/// What a lot takes and costs, share by share.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_lot_compute(
    lot: *const gullet_lot,
    price_out: *mut gullet_lot_price,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (given, target) = unsafe { (take(lot, "lot")?, room(price_out, "price_out")?) };
        let price = LotCost {
            lot_size: si(given.lot_size),
            machine_rate: si(given.machine_rate_money_per_s),
            setup_time: si(given.setup_time_s),
            handling_time: si(given.handling_time_s),
            cutting_time: si(given.cutting_time_s),
            moving_time: si(given.moving_time_s),
            change_time: si(given.change_time_s),
            edge_cost: si(given.edge_cost_money),
            parts_per_edge: si(or_one(given.parts_per_edge)),
            gauging_time: si(given.gauging_time_s),
            gauged_every: si(or_one(given.gauged_every)),
            allowance_of_normal_time: si(given.allowance_of_normal_time),
            allowance_of_standard_time: si(given.allowance_of_standard_time),
            wright_rate: si(or_one(given.wright_rate)),
            crawford_rate: si(or_one(given.crawford_rate)),
            material_cost: si(given.material_cost_money),
        }
        .price()?;
        let [
            setup,
            handling,
            cutting,
            moving,
            change,
            gauging,
            allowance,
            edges,
            material,
        ] = price.shares;
        target.write(gullet_lot_price {
            struct_size: size_of::<gullet_lot_price>() as u32,
            reserved: 0,
            setup_s: setup.time.value,
            handling_s: handling.time.value,
            cutting_s: cutting.time.value,
            moving_s: moving.time.value,
            tool_change_s: change.time.value,
            gauging_s: gauging.time.value,
            allowance_s: allowance.time.value,
            setup_money: setup.cost.value,
            handling_money: handling.cost.value,
            cutting_money: cutting.cost.value,
            moving_money: moving.cost.value,
            tool_change_money: change.cost.value,
            gauging_money: gauging.cost.value,
            allowance_money: allowance.cost.value,
            edges_money: edges.cost.value,
            material_money: material.cost.value,
            normal_time_s: price.normal_time.value,
            standard_time_s: price.standard_time.value,
            time_per_part_s: price.time_per_part.value,
            cost_per_part_money: price.cost_per_part.value,
            lot_time_s: price.lot_time.value,
            lot_cost_money: price.lot_cost.value,
        });
        Ok(GULLET_OK)
    })
}
