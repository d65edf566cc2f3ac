//! A cut: one pass of a set-up.

use crate::failure::{Failure, fault};
use crate::generated::records::{GULLET_LIMITS_MOST, gullet_cut};
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{held, write_text};
use crate::model::{Prepared, gullet_setup};
use crate::quantity::{choose, system};
use crate::report::doubtful;
use crate::structs::{Room, Sized32, room, take};
use core::ffi::c_char;
use gullet::model::{Blank, Direction, PassKind};
use gullet::operation::{Cut, CutNumbers, LimitNumbers, Lowering, Operation, Pass, Relief, Side};
use gullet::plan::cut_json;
use gullet::quantity::{Kind, si, units};

/// The side of an end mill cuts a wall; the depth of a pass is radial.
pub const GULLET_SIDE_MILLING: i32 = 0;
/// A slot as wide as the cutter; the depth of a pass is axial.
pub const GULLET_SLOTTING: i32 = 1;
/// The end of the cutter sweeps a face; the depth of a pass is axial.
pub const GULLET_FACE_MILLING: i32 = 2;

/// A pass that takes stock away.
pub const GULLET_ROUGHING: i32 = 0;
/// A pass that leaves the surface.
pub const GULLET_FINISHING: i32 = 1;

/// Up milling: teeth run against the feed; the chip starts thin.
pub const GULLET_CONVENTIONAL: i32 = 0;
/// Down milling: teeth run with the feed; the chip starts thick and pulls at the table.
pub const GULLET_CLIMB: i32 = 1;

/// Feed, then speed, are lowered until every limit holds.
pub const GULLET_LOWER: i32 = 0;
/// Loads that exceed their limits stand in the ledger; nothing is lowered for them.
pub const GULLET_DO_NOT_LOWER_FOR_LOADS: i32 = 1;

/// One pass. Zero stands for what is said behind each field.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_pass {
    /// sizeof(gullet_pass); set by gullet_pass_init().
    pub struct_size: u32,
    /// GULLET_SIDE_MILLING, GULLET_SLOTTING or GULLET_FACE_MILLING.
    pub operation: i32,
    /// GULLET_ROUGHING or GULLET_FINISHING.
    pub kind: i32,
    /// GULLET_CONVENTIONAL or GULLET_CLIMB.
    pub direction: i32,
    /// GULLET_LOWER or GULLET_DO_NOT_LOWER_FOR_LOADS.
    pub lowering: i32,
    /// 1 to work out the reliefs of the ledger as well, which takes some fifty times longer; else 0.
    pub with_reliefs: i32,
    /// Back engagement a_p, along the axis; needed.
    pub axial_depth_m: f64,
    /// Working engagement a_e, across the axis; needed in side milling, 0 for the cutter's diameter
    /// in slotting and for the width of the blank in face milling.
    pub radial_depth_m: f64,
    /// Face milling: distance from the cutter's axis to the middle of the work, positive towards the
    /// side where teeth enter.
    pub offset_m: f64,
    /// Length of the cut along the feed; 0 for the length of the blank.
    pub length_m: f64,
    /// Mean roughness R_a wanted; 0 for none.
    pub mean_roughness_m: f64,
    /// Spindle speed to use instead of the table's; 0 for the table's.
    pub spindle_speed_rev_per_s: f64,
    /// Feed per tooth to use instead of the table's; 0 for the table's.
    pub feed_per_tooth_m: f64,
}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_pass {
    const NAME: &'static str = "gullet_pass";
    const FIRST: usize = 80;
}

/// One limit that was looked at.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_limit {
    /// sizeof(gullet_limit); that of the first one counts for all of an array.
    pub struct_size: u32,
    /// Which limit: one of GULLET_LIMIT_...; gullet_limit_name names it.
    pub limit: i32,
    /// 0 where the value must be at most the bound, 1 where it must be at least the bound.
    pub at_least: i32,
    /// 1 where the value lies beyond the bound.
    pub exceeded: i32,
    /// 1 for the limit nearest to its bound.
    pub binding: i32,
    /// Zero.
    pub reserved: i32,
    /// Value of this cut, in the unit of gullet_limit_unit.
    pub value_si: f64,
    /// Bound, in the same unit.
    pub bound_si: f64,
    /// Share of the bound that is used; above 1 the limit is exceeded.
    pub share: f64,
    /// The value of `relief_setting` that would free the limit, in `relief_unit`.
    pub relief_si: f64,
    /// What the smallest change that would free it changes; empty where it holds nothing back or
    /// was not asked for.
    pub relief_setting: [c_char; 32],
    /// SI unit of the relief; empty for a pure number.
    pub relief_unit: [c_char; 16],
}

// SAFETY: `repr(C)`, plain numbers and bytes, the size first.
unsafe impl Sized32 for gullet_limit {
    const NAME: &'static str = "gullet_limit";
    const FIRST: usize = 104;
}

/// Text in a field of fixed size; what is too long is cut off, which a test of all names excludes.
fn field<const N: usize>(text: &str) -> [c_char; N] {
    let mut field = [0; N];
    for (slot, byte) in field.iter_mut().take(N - 1).zip(text.bytes()) {
        *slot = byte as c_char;
    }
    field
}

/// The SI unit of a kind as text.
pub(crate) fn si_unit(kind: Kind) -> &'static str {
    let unit = units(kind).iter().find(|unit| unit.size() == 1.0);
    unit.map_or("", |unit| unit.symbol)
}

impl gullet_limit {
    fn of(limit: &LimitNumbers, relief: Option<Relief>) -> gullet_limit {
        let (relief_setting, relief_unit) = relief.map_or(([0; 32], [0; 16]), |relief| {
            (field(relief.setting), field(si_unit(relief.kind)))
        });
        gullet_limit {
            struct_size: size_of::<gullet_limit>() as u32,
            limit: limit.name as i32,
            at_least: i32::from(limit.side == Side::AtLeast),
            exceeded: i32::from(limit.exceeded()),
            binding: i32::from(limit.binding),
            reserved: 0,
            value_si: limit.value,
            bound_si: limit.bound,
            share: limit.share,
            relief_si: relief.map_or(0.0, |relief| relief.to),
            relief_setting,
            relief_unit,
        }
    }
}

impl gullet_pass {
    /// The pass that zeros are filled in for, of a cutter of this diameter over this blank.
    pub(crate) fn core(
        &self,
        cutter_diameter_m: f64,
        blank: &Blank,
    ) -> Result<(Pass, Lowering), Failure> {
        let operation = choose("pass.operation", self.operation, Operation::ALL)?;
        let kinds = [PassKind::Roughing, PassKind::Finishing];
        let directions = [Direction::Conventional, Direction::Climb];
        let lowerings = [Lowering::Allowed, Lowering::NotForLoads];
        let unless_zero = |value: f64| (value != 0.0).then_some(value);
        let radial = unless_zero(self.radial_depth_m).unwrap_or(match operation {
            Operation::Slotting => cutter_diameter_m,
            Operation::FaceMilling => blank.width.value,
            Operation::SideMilling => 0.0,
        });
        let pass = Pass {
            operation,
            kind: choose("pass.kind", self.kind, &kinds)?,
            axial_depth: si(self.axial_depth_m),
            radial_depth: si(radial),
            offset: si(self.offset_m),
            length: unless_zero(self.length_m).map_or(blank.length, si),
            direction: choose("pass.direction", self.direction, &directions)?,
            mean_roughness: unless_zero(self.mean_roughness_m).map(si),
            spindle_speed: unless_zero(self.spindle_speed_rev_per_s).map(si),
            feed_per_tooth: unless_zero(self.feed_per_tooth_m).map(si),
        };
        Ok((pass, choose("pass.lowering", self.lowering, &lowerings)?))
    }
}

impl Prepared {
    fn pass(&self, pass: &gullet_pass) -> Result<(Pass, Lowering), Failure> {
        pass.core(self.cutter_diameter_m, &self.blank)
    }
}

/// The numbers of a cut, and the reliefs of its limits where they are wanted.
pub(crate) struct Computed {
    numbers: CutNumbers,
    reliefs: Vec<Option<Relief>>,
}

impl Computed {
    pub(crate) fn of(cut: &Cut) -> Computed {
        Computed {
            numbers: cut.numbers(),
            reliefs: cut.ledger.iter().map(|limit| limit.relief).collect(),
        }
    }
}

/// The one place where a cut is computed.
fn compute(setup: &Prepared, pass: &gullet_pass) -> Result<Computed, Failure> {
    let with_reliefs = choose("pass.with_reliefs", pass.with_reliefs, &[false, true])?;
    let (pass, lowering) = setup.pass(pass)?;
    if with_reliefs {
        return Ok(Computed::of(&setup.milling.cut(&pass, lowering)?));
    }
    Ok(Computed {
        numbers: setup.milling.numbers(&pass, lowering)?,
        reliefs: Vec::new(),
    })
}

/// Checked room for a ledger; none is wanted where `limits` is NULL.
pub(crate) struct Ledger {
    first: Option<Room<gullet_limit>>,
    capacity: usize,
}

impl Ledger {
    /// # Safety
    /// Not NULL, `limits` points to `capacity` structs of the size the first one says.
    pub(crate) unsafe fn new(
        limits: *mut gullet_limit,
        capacity: usize,
    ) -> Result<Ledger, Failure> {
        let first = if limits.is_null() || capacity == 0 {
            None
        } else {
            // SAFETY: the same promise.
            let room = unsafe { room(limits, "limits")? };
            let bytes = capacity.checked_mul(room.size());
            crate::memory::extent(limits.cast::<u8>(), bytes.unwrap_or(usize::MAX), "limits")?;
            Some(room)
        };
        Ok(Ledger { first, capacity })
    }

    /// Writes so many limits with their reliefs; nothing where they do not fit.
    pub(crate) fn write(
        &self,
        count: usize,
        limits: impl Iterator<Item = (LimitNumbers, Option<Relief>)>,
    ) -> Result<(), Failure> {
        let Some(first) = &self.first else {
            return Ok(());
        };
        if count > self.capacity {
            return Err(fault(
                GULLET_ERROR_BUFFER_TOO_SHORT,
                "limit_capacity",
                self.capacity.to_string(),
                format!("at least {count}"),
                format!("give room for GULLET_LIMITS_MOST = {GULLET_LIMITS_MOST} limits"),
            ));
        }
        for (index, (limit, relief)) in limits.take(count).enumerate() {
            // SAFETY: below the capacity, which `Ledger::new` was promised room for.
            unsafe { first.at(index) }.write(gullet_limit::of(&limit, relief));
        }
        Ok(())
    }
}

/// Writes a cut and its ledger; nothing where the ledger does not fit.
pub(crate) fn write(
    cut: &Computed,
    target: &Room<gullet_cut>,
    ledger: &Ledger,
) -> Result<i32, Failure> {
    let numbers = &cut.numbers;
    let reliefs = cut.reliefs.iter().copied().chain(core::iter::repeat(None));
    let limits = numbers.ledger.iter().copied().zip(reliefs);
    ledger.write(numbers.ledger.len(), limits)?;
    target.write(gullet_cut::of(numbers));
    Ok(doubtful(numbers.warnings.bits()))
}

/// Computes one pass: settings the machine really has, what follows from them, and the ledger of
/// limits. A positive status is the first of the doubts there are; gullet_cut_json tells them in words.
/// `limits_out` may be NULL; else the struct_size of its first one is set and there is room for
/// `limit_capacity` of them. Nothing is written where the call fails.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cut_compute(
    setup: *const gullet_setup,
    pass: *const gullet_pass,
    cut_out: *mut gullet_cut,
    limits_out: *mut gullet_limit,
    limit_capacity: usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (setup, pass, target, ledger) = unsafe {
            (
                held(setup, "setup")?,
                take(pass, "pass")?,
                room(cut_out, "cut_out")?,
                Ledger::new(limits_out, limit_capacity)?,
            )
        };
        write(&compute(setup, &pass)?, &target, &ledger)
    })
}

/// A pass worked out in full as JSON: settings, consequences, limits with the origin of each bound,
/// what was lowered, spread, worked steps, data with sources, doubts and cautions, as text in
/// GULLET_METRIC or GULLET_INCH units beside each SI value. See "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cut_json(
    setup: *const gullet_setup,
    pass: *const gullet_pass,
    units: i32,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (setup, pass) = unsafe { (held(setup, "setup")?, take(pass, "pass")?) };
        let (pass, lowering) = setup.pass(&pass)?;
        let cut = setup.milling.cut(&pass, lowering)?;
        let text = cut_json(&cut, system(units)?).to_string();
        // SAFETY: the caller's promise in the header.
        unsafe { write_text(&text, buffer, capacity, needed_out)? };
        Ok(doubtful(cut.numbers().warnings.bits()))
    })
}
