//! Jobs, plans and set-up cards.

use crate::cut::{Computed, Ledger, gullet_limit, write};
use crate::failure::{Failure, fault};
use crate::generated::records::gullet_cut;
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{Opaque, handle, handle_out, held, text, write_text};
use crate::model::{Prepared, Tables, gullet_library, gullet_setup, release};
use crate::report::doubtful;
use crate::structs::{Sized32, room};
use core::ffi::c_char;
use gullet::operation::WarningCodes;
use gullet::plan::{Card, Job, JobFile, JobFileCard, PassPlan, PassTime, PlannedPass};
use gullet::{Code, Problem};

/// What a job file holds: a job, with what is to be cut, with what, how held; a block to be squared;
/// or a part made by several operations. Read-only after it is made: any number of threads
/// may use it at once.
pub struct gullet_job {
    _private: (),
}

impl Opaque for gullet_job {
    type Inner = ReadJob;
}

/// What a job holds.
pub(crate) struct ReadJob {
    file: JobFile,
    pub(crate) tables: Tables,
}

/// The refusal of what is no job of one operation.
fn no_job(parameter: &str, value: &str, remedy: &str) -> Failure {
    fault(
        GULLET_ERROR_WRONG_TYPE,
        parameter,
        value,
        "a job of one milling operation",
        remedy,
    )
}

impl ReadJob {
    /// The job; the other files have plans and cards alone.
    pub(crate) fn job(&self) -> Result<&Job, Failure> {
        match &self.file {
            JobFile::Job(job) => Ok(job),
            _ => Err(no_job(
                "job",
                "a route",
                "make its cards by gullet_plan_new, or give the file of a job",
            )),
        }
    }
}

/// The card of a plan of passes; the other files have cards alone.
fn passes_of(plan: &JobFileCard) -> Result<&Card, Failure> {
    match plan {
        JobFileCard::Job(card) => Ok(card),
        _ => Err(no_job(
            "plan",
            "the cards of a route",
            "take them by gullet_card_text, gullet_card_html or gullet_card_json",
        )),
    }
}

/// The pass plan of a job and its card, or the cards of a route or a part. Read-only after it is made: any number of threads may use
/// it at once.
pub struct gullet_plan {
    _private: (),
}

impl Opaque for gullet_plan {
    type Inner = JobFileCard;
}

/// Reads a job.
///
/// # Safety
/// As the header asks of the function it serves.
unsafe fn job_new(
    of: fn(&str, &gullet::table::Library) -> gullet::Result<JobFile>,
    library: *const gullet_library,
    job_text: *const c_char,
    job_length: usize,
    job_out: *mut *mut gullet_job,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise.
        let (tables, text, target) = unsafe {
            (
                Tables::of(library)?,
                text(job_text, job_length, "job")?,
                handle_out(job_out, "job_out")?,
            )
        };
        let file = of(text, tables.get())?;
        target.write(handle(ReadJob { file, tables }));
        Ok(GULLET_OK)
    })
}

/// Reads a job file in TOML; `library` NULL stands for the built-in tables. With `route =
/// "squared-block"` or `route = "part"` it is a route, which has cards but no passes. Every problem is told at once, each with its path, such as cutter.teeth, and its line. Free it with gullet_job_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_job_new_toml(
    library: *const gullet_library,
    job_text: *const c_char,
    job_length: usize,
    job_out: *mut *mut gullet_job,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { job_new(JobFile::from_toml, library, job_text, job_length, job_out) }
}

/// Reads a job file in JSON, with the same sections and keys as in TOML.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_job_new_json(
    library: *const gullet_library,
    job_text: *const c_char,
    job_length: usize,
    job_out: *mut *mut gullet_job,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { job_new(JobFile::from_json, library, job_text, job_length, job_out) }
}

/// Frees a job; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_job_free(job: *mut gullet_job) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(job) }
}

/// The set-up of a job, for cuts of one's own. Free it with gullet_setup_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_job_setup(
    job: *const gullet_job,
    setup_out: *mut *mut gullet_setup,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (job, target) = unsafe { (held(job, "job")?, handle_out(setup_out, "setup_out")?) };
        let read = job.job()?;
        let setup = read.setup(job.tables.get());
        target.write(handle(Prepared::new(&setup, read.blank)));
        Ok(GULLET_OK)
    })
}

/// Plans the passes of a job, or everything of a route, and makes the cards. A positive status is the
/// first of the doubts about the plan of a job as a whole, which the card tells in words; the doubts of
/// a route stand on its cards alone. The job is copied: its handle may be freed. Free the plan with gullet_plan_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plan_new(
    job: *const gullet_job,
    plan_out: *mut *mut gullet_plan,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (job, target) = unsafe { (held(job, "job")?, handle_out(plan_out, "plan_out")?) };
        let card = job.file.clone().card(job.tables.get())?;
        let status = match &card {
            JobFileCard::Job(card) => doubtful(warning_bits(&card.plan)),
            _ => GULLET_OK,
        };
        target.write(handle(card));
        Ok(status)
    })
}

/// Frees a plan; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plan_free(plan: *mut gullet_plan) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(plan) }
}

/// A plan as a whole.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_plan_summary {
    /// sizeof(gullet_plan_summary); set by gullet_plan_summary_init().
    pub struct_size: u32,
    /// Doubts about the plan as a whole: 1 << GULLET_WARNING_... for each.
    pub warning_bits: u32,
    /// Number of passes; the last one finishes.
    pub pass_count: u64,
    /// Stock to remove, in counts of the readout.
    pub stock_counts: u64,
    /// Stock to remove.
    pub stock_m: f64,
    /// Smallest step of the readout or dial.
    pub resolution_m: f64,
    /// Deepest roughing pass that every limit allows.
    pub largest_roughing_depth_m: f64,
    /// Time in the cut, of all passes.
    pub cutting_s: f64,
    /// Time back to the start, of all passes.
    pub returning_s: f64,
    /// Time to set, measure and clear chips, of all passes.
    pub handling_s: f64,
}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_plan_summary {
    const NAME: &'static str = "gullet_plan_summary";
    const FIRST: usize = 72;
}

/// A pass of a plan.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_planned_pass {
    /// sizeof(gullet_planned_pass); set by gullet_planned_pass_init().
    pub struct_size: u32,
    /// GULLET_ROUGHING or GULLET_FINISHING.
    pub kind: i32,
    /// GULLET_CONVENTIONAL or GULLET_CLIMB.
    pub direction: i32,
    /// Zero.
    pub reserved: i32,
    /// Number of the pass, from 1.
    pub number: u64,
    /// Depth in counts of the readout.
    pub depth_counts: u64,
    /// Stock left after the pass, in counts.
    pub left_counts: u64,
    /// What the readout shows where the pass is set, in counts from zero.
    pub readout_counts: i64,
    /// Depth.
    pub depth_m: f64,
    /// What the readout shows where the pass is set.
    pub readout_m: f64,
    /// Time in the cut, with approach and overtravel.
    pub cutting_s: f64,
    /// Time back to the start.
    pub returning_s: f64,
    /// Time to set, measure and clear chips.
    pub handling_s: f64,
}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_planned_pass {
    const NAME: &'static str = "gullet_planned_pass";
    const FIRST: usize = 88;
}

/// The doubts of a plan as a whole.
fn warning_bits(plan: &PassPlan) -> u32 {
    WarningCodes::of(plan.warnings.iter().map(|warning| warning.code)).bits()
}

fn seconds(time: PassTime) -> [f64; 3] {
    [time.cutting, time.returning, time.handling].map(|part| part.value)
}

/// What a plan comes to.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plan_summarise(
    plan: *const gullet_plan,
    summary_out: *mut gullet_plan_summary,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (plan, target) = unsafe { (held(plan, "plan")?, room(summary_out, "summary_out")?) };
        let plan = &passes_of(plan)?.plan;
        let [cutting_s, returning_s, handling_s] = seconds(plan.time());
        target.write(gullet_plan_summary {
            struct_size: size_of::<gullet_plan_summary>() as u32,
            warning_bits: warning_bits(plan),
            pass_count: plan.passes.len() as u64,
            stock_counts: plan.total,
            stock_m: plan.stock.value,
            resolution_m: plan.resolution.value,
            largest_roughing_depth_m: plan.largest_roughing.0.value,
            cutting_s,
            returning_s,
            handling_s,
        });
        Ok(GULLET_OK)
    })
}

fn planned(plan: &JobFileCard, index: usize) -> Result<&PlannedPass, Failure> {
    let passes = &passes_of(plan)?.plan.passes;
    passes.get(index).ok_or_else(|| {
        Problem::new(
            Code::OutOfRange,
            "index",
            index.to_string(),
            format!("below {}", passes.len()),
            "count up to pass_count of the summary",
        )
        .into()
    })
}

/// A pass of a plan, from 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plan_pass(
    plan: *const gullet_plan,
    index: usize,
    pass_out: *mut gullet_planned_pass,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (plan, target) = unsafe { (held(plan, "plan")?, room(pass_out, "pass_out")?) };
        let pass = planned(plan, index)?;
        let [cutting_s, returning_s, handling_s] = seconds(pass.time);
        target.write(gullet_planned_pass {
            struct_size: size_of::<gullet_planned_pass>() as u32,
            kind: pass.cut.pass.kind as i32,
            direction: pass.cut.pass.direction as i32,
            reserved: 0,
            number: pass.number as u64,
            depth_counts: pass.counts,
            left_counts: pass.left,
            readout_counts: pass.readout_counts,
            depth_m: pass.depth.value,
            readout_m: pass.readout.value,
            cutting_s,
            returning_s,
            handling_s,
        });
        Ok(GULLET_OK)
    })
}

/// The cut of a pass of a plan, from 0, with reliefs; as gullet_cut_compute.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_plan_cut(
    plan: *const gullet_plan,
    index: usize,
    cut_out: *mut gullet_cut,
    limits_out: *mut gullet_limit,
    limit_capacity: usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (plan, target, ledger) = unsafe {
            (
                held(plan, "plan")?,
                room(cut_out, "cut_out")?,
                Ledger::new(limits_out, limit_capacity)?,
            )
        };
        write(&Computed::of(&planned(plan, index)?.cut), &target, &ledger)
    })
}

/// Writes a form of the card.
///
/// # Safety
/// As the header asks of the function it serves.
unsafe fn card(
    form: fn(&JobFileCard) -> String,
    plan: *const gullet_plan,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise.
        let plan = unsafe { held(plan, "plan")? };
        // SAFETY: the caller's promise.
        unsafe { write_text(&form(plan), buffer, capacity, needed_out) }
    })
}

/// The set-up card of a plan as text for a terminal or a plain printer. See "Text out" for the
/// buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_card_text(
    plan: *const gullet_plan,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { card(JobFileCard::text, plan, buffer, capacity, needed_out) }
}

/// The set-up card of a plan as one printable page of HTML: no script, no network. See "Text out"
/// for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_card_html(
    plan: *const gullet_plan,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { card(JobFileCard::html, plan, buffer, capacity, needed_out) }
}

/// The set-up card of a plan as JSON: every quantity with its SI value and as the card prints it.
/// See "Text out" for the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_card_json(
    plan: *const gullet_plan,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe {
        card(
            |card| card.json().to_string(),
            plan,
            buffer,
            capacity,
            needed_out,
        )
    }
}
