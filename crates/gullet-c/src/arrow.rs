//! Studies over tables that other programs hold in the form of Apache Arrow.

use crate::failure::{Failure, fault, message};
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{Opaque, handle, handle_out, held, maybe, out, text, write_text};
use crate::model::{Over, Tables, gullet_library, release};
use crate::plan::gullet_job;
use crate::study::{execution, status_of};
use crate::table_report::{Shared, gullet_study_report};
use core::ffi::{CStr, c_char};
use gullet::error::Error;
use gullet::formula::split_arguments;
use gullet::study::{Base, Execution};
use gullet_arrow::{
    FFI_ArrowArray as ArrowArray, FFI_ArrowArrayStream as ArrowArrayStream,
    FFI_ArrowSchema as ArrowSchema, ImportError, Incoming, array_of, batch_of, computed,
    schema_from_ffi, schema_of,
};
use gullet_table::{StudyOptions, StudyPlan};
use std::sync::Arc;

/// A study made ready for tables of one schema. Any number of threads may use it at once. It needs a
/// library with Arrow in it, as it is built by default.
pub struct gullet_table_study {
    _private: (),
}

impl Opaque for gullet_table_study {
    type Inner = Prepared;
}

/// What a study of tables holds; streams keep it too.
pub(crate) struct Prepared {
    plan: Arc<Over<StudyPlan<'static>>>,
}

impl From<ImportError> for Failure {
    fn from(error: ImportError) -> Failure {
        fault(
            GULLET_ERROR_ARROW_DATA,
            "rows",
            error.to_string(),
            "what the Arrow C data interface asks for",
            "mend what makes the table",
        )
    }
}

/// Some text, which may be left out.
///
/// # Safety
/// As [`text`].
unsafe fn optional<'a>(
    pointer: *const c_char,
    length: usize,
    name: &str,
) -> Result<&'a str, Failure> {
    if pointer.is_null() && matches!(length, 0 | usize::MAX) {
        return Ok("");
    }
    // SAFETY: the same promise.
    unsafe { text(pointer, length, name) }
}

/// Prepares a study for tables of the columns of `schema`, which stays the caller's.
///
/// A column is named as an input with its unit behind (axial_depth_mm, cutter_diameter_in,
/// spindle_speed_rpm, cutter_teeth), or as a choice (material, machine, practice, operation, pass,
/// direction, cutter_material, cutter_form as text, dictionary-encoded or not; feed_across_jaws as
/// booleans or text). Numbers are float64, float32 or integers; a float32 is widened as it is.
/// cost_per_hour adds a column with the cost. Other columns are passed through; a name that is
/// nearly that of an input is refused. `constants` gives what no column does: "material=6061;
/// axial_depth=6 mm". `options`: "units=metric" or inch; "columns=usual", all, or names with commas;
/// "text_numbers=refused", kept or replaced; "pass_through=" names with commas;
/// "spread.cutting_force=0.9..1.15" draws that quantity, spread evenly between two factors
/// (0.9..1..1.2 likeliest in the middle, sigma 0.1 log-normal), with "draws=1000", "seed=1",
/// "quantiles=0.05,0.5,0.95" and "first_row=0" as in gullet_draws. Either may be NULL.
/// What neither gives is as in `job`; without a job some inputs have the defaults of job files, see
/// gullet_table_study_assumptions. Rows are milling cuts; with "operation=drilling" among the
/// constants, or another operation of its own, the columns are the inputs of that operation
/// (diameter_mm, depth_in, hole), and a column operation is refused: such a table is split. `library`
/// NULL stands for the tables of the job, or the built-in
/// ones. Every problem of the columns, constants and options is told at once. Free it with
/// gullet_table_study_free.
#[unsafe(no_mangle)]
#[allow(clippy::too_many_arguments)]
pub unsafe extern "C" fn gullet_table_study_new(
    library: *const gullet_library,
    job: *const gullet_job,
    schema: *const ArrowSchema,
    constants: *const c_char,
    constants_length: usize,
    options: *const c_char,
    options_length: usize,
    study_out: *mut *mut gullet_table_study,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (tables, job, schema, constants, options, target) = unsafe {
            (
                Tables::of(library)?,
                maybe(job, "job")?,
                crate::memory::read(schema, "schema")?,
                optional(constants, constants_length, "constants")?,
                optional(options, options_length, "options")?,
                handle_out(study_out, "study_out")?,
            )
        };
        let tables = match job {
            Some(job) if library.is_null() => job.tables.clone(),
            _ => tables,
        };
        let schema = schema_from_ffi(schema)?;
        let mut problems = Vec::new();
        let mut keep = |error: Error| problems.extend(error.into_problems());
        let constants = split_arguments(constants)
            .map_err(|error| keep(error.within("constants")))
            .unwrap_or_default();
        let job = job.map(|read| read.job()).transpose()?;
        let units = job.map(|job| job.units);
        let options = split_arguments(options).and_then(|pairs| {
            let usual = StudyOptions::default();
            let units = units.unwrap_or(usual.units);
            StudyOptions { units, ..usual }.with(&pairs)
        });
        let options = options
            .map_err(|error| keep(error.within("options")))
            .unwrap_or_default();
        let base = job.map(Base::of_job);
        let plan = Over::new(tables, |library| {
            let plan = StudyPlan::new(&schema, &constants, base, library, &options);
            Ok(match plan {
                Ok(plan) => Error::unless_empty(problems, plan)?,
                Err(error) => {
                    problems.extend(error.clone().into_problems());
                    return Err(Error::unless_empty(problems, error)
                        .unwrap_or_else(|all| all)
                        .into());
                }
            })
        })?;
        let plan = Arc::new(plan);
        target.write(handle(Prepared { plan }));
        Ok(GULLET_OK)
    })
}

/// Frees a study of tables; NULL is left alone. Streams made with it keep what they need.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_table_study_free(study: *mut gullet_table_study) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(study) }
}

/// What was assumed where no column, constant or job gives it, a line each. See "Text out" for the
/// buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_table_study_assumptions(
    study: *const gullet_table_study,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let study = unsafe { held(study, "study")? };
        let text = study.plan.get().assumptions().join("\n");
        // SAFETY: the caller's promise in the header.
        unsafe { write_text(&text, buffer, capacity, needed_out) }
    })
}

/// The schema of the results: the columns of the rows, then the results with their units in name and
/// metadata, then status, binding_limit, held_by and warnings as dictionaries of text. The caller
/// calls its release.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_table_study_schema(
    study: *const gullet_table_study,
    schema_out: *mut ArrowSchema,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (study, target) = unsafe { (held(study, "study")?, out(schema_out, "schema_out")?) };
        target.write(schema_of(&study.plan.get().schema())?);
        Ok(GULLET_OK)
    })
}

/// Computes the rows of one struct array. The array is taken over once every pointer is found good:
/// its release is then NULL, and called by the library, where the call fails too. Columns that are
/// passed through are not copied, so the rows are released with the results. A null in an input that
/// the row needs gives the row the status "missing"; in another one it means none. Rows that are
/// refused have their status and nulls for results; the call then returns
/// GULLET_WARNING_ROWS_REFUSED. Text that is not UTF-8 and whatever else contradicts the schema is
/// refused with GULLET_ERROR_ARROW_DATA. `threads` as in gullet_study_batch. The caller calls the
/// release of the results.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_table_study_run(
    study: *const gullet_table_study,
    rows: *mut ArrowArray,
    threads: u32,
    results_out: *mut ArrowArray,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { run(study, rows, threads, core::ptr::null(), results_out) }
}

/// As gullet_table_study_run, and adds the rows to a report, unless NULL. They are numbered on from the
/// rows that the report has, which what is drawn depends on.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_table_study_run_with_report(
    study: *const gullet_table_study,
    rows: *mut ArrowArray,
    threads: u32,
    report: *const gullet_study_report,
    results_out: *mut ArrowArray,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { run(study, rows, threads, report, results_out) }
}

/// # Safety
/// As the header asks of the functions it serves; the report may be NULL.
unsafe fn run(
    study: *const gullet_table_study,
    rows: *mut ArrowArray,
    threads: u32,
    report: *const gullet_study_report,
    results_out: *mut ArrowArray,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (study, report, target) = unsafe {
            (
                held(study, "study")?,
                maybe(report, "report")?.cloned().unwrap_or_default(),
                out(results_out, "results_out")?,
            )
        };
        let execution = execution(threads)?;
        // SAFETY: the caller's promise in the header.
        unsafe { out(rows, "rows")? };
        // SAFETY: the pointer is good; an array that is taken over is left as a released one.
        let array = unsafe { ArrowArray::from_raw(rows) };
        let plan = study.plan.get();
        // SAFETY: the caller's promise in the header.
        let batch = unsafe { batch_of(array, &plan.input_schema())? };
        let mut report = report.lock();
        let answer = plan.run_from(report.rows(), &batch, &[], execution)?;
        let refused = answer.summary.ok() < answer.summary.rows();
        target.write(array_of(report.add(answer)));
        Ok(status_of(refused))
    })
}

/// Reads, computes and gives the next batch of a stream.
fn next(
    plan: &StudyPlan,
    incoming: &mut Incoming,
    execution: Execution,
    report: &Shared,
) -> Option<Result<gullet_arrow::RecordBatch, String>> {
    let mut done = None;
    let status = guard(|| {
        if let Some(batch) = incoming.next().transpose()? {
            let mut report = report.lock();
            let answer = plan.run_from(report.rows(), &batch, &[], execution)?;
            done = Some(report.add(answer));
        }
        Ok(GULLET_OK)
    });
    if status < GULLET_OK {
        // SAFETY: text of this thread's last failure, which was just now.
        let text = unsafe { CStr::from_ptr(message()) };
        return Some(Err(text.to_string_lossy().into_owned()));
    }
    done.map(Ok)
}

/// Computes the batches of a stream as they are asked for: a stream again, of the schema of
/// gullet_table_study_schema. `rows` is taken over once every pointer is found good: its release is
/// then NULL, and called by the library, where the call fails too. One batch is at hand at a time. A
/// batch that contradicts the schema ends the results with an error, which get_last_error tells. The
/// caller calls the release of the results; the study may be freed before.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_table_study_stream(
    study: *const gullet_table_study,
    rows: *mut ArrowArrayStream,
    threads: u32,
    results_out: *mut ArrowArrayStream,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { stream(study, rows, threads, core::ptr::null(), results_out) }
}

/// As gullet_table_study_stream, and adds each batch to a report, unless NULL, as it is computed. Rows
/// are numbered on from the rows that the report has then. The report may be freed before the results.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_table_study_stream_with_report(
    study: *const gullet_table_study,
    rows: *mut ArrowArrayStream,
    threads: u32,
    report: *const gullet_study_report,
    results_out: *mut ArrowArrayStream,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { stream(study, rows, threads, report, results_out) }
}

/// # Safety
/// As the header asks of the functions it serves; the report may be NULL.
unsafe fn stream(
    study: *const gullet_table_study,
    rows: *mut ArrowArrayStream,
    threads: u32,
    report: *const gullet_study_report,
    results_out: *mut ArrowArrayStream,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (study, report, target) = unsafe {
            (
                held(study, "study")?,
                maybe(report, "report")?.cloned().unwrap_or_default(),
                out(results_out, "results_out")?,
            )
        };
        let execution = execution(threads)?;
        // SAFETY: the caller's promise in the header.
        unsafe { out(rows, "rows")? };
        // SAFETY: the pointer is good, and the caller promises a stream.
        let mut incoming = unsafe { Incoming::from_raw(rows)? };
        let plan = study.plan.clone();
        plan.get().check(&incoming.schema())?;
        let schema = plan.get().schema();
        let stream = computed(schema, move || {
            next(plan.get(), &mut incoming, execution, &report)
        });
        target.write(stream);
        Ok(GULLET_OK)
    })
}
