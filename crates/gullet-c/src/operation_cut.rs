//! What a cut of an operation tells.

use crate::cut::{Ledger, gullet_limit};
use crate::failure::{Failure, fault};
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{Opaque, apart, extent, held, name, out, slice_mut, write_text};
use crate::model::release;
use crate::structs::{Sized32, room};
use core::ffi::c_char;
use gullet::error::unknown_name;
use gullet::operation::{LimitNumbers, Relief, WarningCodes, WorkedStep};
use gullet::plan::ProcessCard;
use gullet::{Code, Problem};

/// A cut of an operation. Read-only after it is made: any number of threads may use it at once.
pub struct gullet_operation_cut {
    _private: (),
}

impl Opaque for gullet_operation_cut {
    type Inner = ProcessCard;
}

/// A cut of an operation as a whole.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_operation_summary {
    /// sizeof(gullet_operation_summary); set by gullet_operation_summary_init().
    pub struct_size: u32,
    /// Number of limits in the ledger.
    pub limit_count: u32,
    /// Doubts: 1 << GULLET_WARNING_... for each.
    pub warning_bits: u32,
    /// The limit nearest to its bound, one of GULLET_LIMIT_...; 0 for none.
    pub binding_limit: i32,
    /// The limit that holds the feed below the wanted one, one of GULLET_LIMIT_...; 0 for none.
    pub held_by_limit: i32,
    /// Number of settings and results.
    pub value_count: u32,
}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_operation_summary {
    const NAME: &'static str = "gullet_operation_summary";
    const FIRST: usize = 24;
}

/// The doubts of a cut, a bit each.
pub(crate) fn doubts(card: &ProcessCard) -> u32 {
    let codes = card.cut.warnings.iter().map(|warning| warning.code);
    WarningCodes::of(codes).bits()
}

fn limits(card: &ProcessCard) -> Vec<(LimitNumbers, Option<Relief>)> {
    let ledger = card.cut.ledger.iter();
    ledger
        .filter_map(|limit| Some((limit.numbers()?, limit.relief)))
        .collect()
}

/// Settings and results in order.
fn values(card: &ProcessCard) -> impl Iterator<Item = Option<f64>> {
    let fields = card.cut.settings.iter().chain(&card.cut.results);
    fields.map(|field| field.value)
}

/// Frees a cut of an operation; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_free(cut: *mut gullet_operation_cut) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(cut) }
}

/// What a cut of an operation comes to.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_summarise(
    cut: *const gullet_operation_cut,
    summary_out: *mut gullet_operation_summary,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (card, target) = unsafe { (held(cut, "cut")?, room(summary_out, "summary_out")?) };
        let limits = limits(card);
        let binding = limits.iter().find(|(limit, _)| limit.binding);
        target.write(gullet_operation_summary {
            struct_size: size_of::<gullet_operation_summary>() as u32,
            limit_count: limits.len() as u32,
            warning_bits: doubts(card),
            binding_limit: binding.map_or(0, |(limit, _)| limit.name as i32),
            held_by_limit: card.cut.held_by.map_or(0, |limit| limit as i32),
            value_count: values(card).count() as u32,
        });
        Ok(GULLET_OK)
    })
}

/// A setting or a result by its name, in the SI unit of its kind. GULLET_ERROR_MISSING where the cut
/// has none, as of the pace of a handwheel on a machine without one.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_value(
    cut: *const gullet_operation_cut,
    value_name: *const c_char,
    value_si_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (card, wanted, target) = unsafe {
            (
                held(cut, "cut")?,
                name(value_name, "value_name")?,
                out(value_si_out, "value_si_out")?,
            )
        };
        if let Some(value) = card.cut.value(wanted) {
            target.write(value.si);
            return Ok(GULLET_OK);
        }
        let names = || card.cut.process.fields().map(|field| field.name);
        if names().any(|name| name == wanted) {
            return Err(Problem::new(
                Code::Missing,
                wanted,
                "",
                "a value the cut has",
                "go without it: this cut has none",
            )
            .into());
        }
        Err(unknown_name(card.cut.process.name, wanted, names()).into())
    })
}

fn short(capacity: usize, needed: usize, of: &str) -> Failure {
    fault(
        GULLET_ERROR_BUFFER_TOO_SHORT,
        "capacity",
        capacity.to_string(),
        format!("at least {needed}"),
        format!("give room for {needed} {of}; gullet_operation_cut_summarise tells how many"),
    )
}

/// All settings and results in the order of gullet_operation_value, in SI units. `known_out` may be
/// NULL; else it receives 1 for each value, or 0 where the cut has none and its value is 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_values(
    cut: *const gullet_operation_cut,
    values_si_out: *mut f64,
    known_out: *mut i32,
    capacity: usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let card = unsafe { held(cut, "cut")? };
        let found: Vec<Option<f64>> = values(card).collect();
        let count = found.len();
        if capacity < count {
            return Err(short(capacity, count, "values"));
        }
        if !known_out.is_null() {
            let values = extent(values_si_out, count, "values_si_out")?;
            let known = extent(known_out, count, "known_out")?;
            apart(("known_out", known), ("values_si_out", values))?;
        }
        // SAFETY: the caller's promise in the header.
        let room = unsafe { slice_mut(values_si_out, count, "values_si_out")? };
        if !known_out.is_null() {
            // SAFETY: the caller's promise in the header; checked above to be memory of its own.
            let known = unsafe { slice_mut(known_out, count, "known_out")? };
            for (slot, value) in known.iter_mut().zip(&found) {
                *slot = i32::from(value.is_some());
            }
        }
        for (slot, value) in room.iter_mut().zip(found) {
            *slot = value.unwrap_or(0.0);
        }
        Ok(GULLET_OK)
    })
}

/// The ledger of a cut of an operation. The struct_size of the first limit is set and there is room for
/// `limit_capacity` of them; gullet_operation_cut_summarise tells how many there are.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_limits(
    cut: *const gullet_operation_cut,
    limits_out: *mut gullet_limit,
    limit_capacity: usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (card, ledger) =
            unsafe { (held(cut, "cut")?, Ledger::new(limits_out, limit_capacity)?) };
        let limits = limits(card);
        ledger.write(limits.len(), limits.into_iter())?;
        Ok(GULLET_OK)
    })
}

/// Writes a form of a cut.
///
/// # Safety
/// As the header asks of the functions it serves.
unsafe fn form(
    form: fn(&ProcessCard) -> String,
    cut: *const gullet_operation_cut,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise.
        let card = unsafe { held(cut, "cut")? };
        // SAFETY: the caller's promise.
        unsafe { write_text(&form(card), buffer, capacity, needed_out) }
    })
}

/// The card of a cut of an operation as text, worked steps included. See "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_text(
    cut: *const gullet_operation_cut,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { form(ProcessCard::text, cut, buffer, capacity, needed_out) }
}

/// The card of a cut of an operation as one printable page of HTML: no script, no network. See "Text
/// out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_html(
    cut: *const gullet_operation_cut,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { form(ProcessCard::html, cut, buffer, capacity, needed_out) }
}

/// The card of a cut of an operation as JSON: every quantity with its SI value and as the card prints
/// it. See "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_json(
    cut: *const gullet_operation_cut,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe {
        form(
            |card| card.json().to_string(),
            cut,
            buffer,
            capacity,
            needed_out,
        )
    }
}

/// The chain of formulas and choices, a line each. See "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_steps(
    cut: *const gullet_operation_cut,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    let steps = |card: &ProcessCard| {
        let text = |step: &WorkedStep| step.text(card.cut.units);
        card.cut
            .steps
            .iter()
            .map(text)
            .collect::<Vec<_>>()
            .join("\n")
    };
    // SAFETY: the caller's promise in the header.
    unsafe { form(steps, cut, buffer, capacity, needed_out) }
}

/// The doubts in words, a line each. See "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_warnings(
    cut: *const gullet_operation_cut,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    let doubts = |card: &ProcessCard| {
        let warnings = card.cut.warnings.iter();
        let texts: Vec<&str> = warnings.map(|warning| warning.text.as_str()).collect();
        texts.join("\n")
    };
    // SAFETY: the caller's promise in the header.
    unsafe { form(doubts, cut, buffer, capacity, needed_out) }
}

/// What can hurt, a line each. See "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_cut_cautions(
    cut: *const gullet_operation_cut,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe {
        form(
            |card| card.cut.cautions.join("\n"),
            cut,
            buffer,
            capacity,
            needed_out,
        )
    }
}
