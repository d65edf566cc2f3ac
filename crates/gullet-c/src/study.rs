//! Studies: cuts over columns of many rows.

use crate::cut::gullet_pass;
use crate::failure::{Failure, fault};
use crate::generated::parts::*;
use crate::generated::status::*;
use crate::generated::studies::{CHOICES, INPUTS, RESULTS};
use crate::guard::guard;
use crate::memory::{Opaque, apart, extent, handle, handle_out, held, slice, slice_mut};
use crate::model::{Over, Tables, gullet_library, part, release};
use crate::names::spelled;
use crate::plan::gullet_job;
use crate::structs::{Sized32, take};
use gullet::formula::Column;
use gullet::operation::Lowering;
use gullet::plan::Part;
use gullet::study::{Base, Codes, Execution, MillingStudy, Results, Rows};
use gullet::{Code, Problem};

/// Rows that a thread computes before they are handed over: bounds the memory that a run takes.
const BLOCK: usize = 1 << 14;

/// What cuts over columns are computed with: lists that rows choose from, and what no column gives.
/// Any number of threads may use it at once.
pub struct gullet_study {
    _private: (),
}

impl Opaque for gullet_study {
    type Inner = Over<MillingStudy<'static>>;
}

/// A study over lists of which a row chooses by the place, from 0; a row that does not choose gets
/// the first entry. `pass` and the parts stand for what is not among the inputs; of the blank come
/// height, and length and width as in gullet_cut_compute; pass->lowering and pass->with_reliefs are
/// zero. `library` NULL stands for the built-in tables. The parts are copied: their handles may be
/// freed. Free it with gullet_study_free.
#[unsafe(no_mangle)]
#[allow(clippy::too_many_arguments, clippy::undocumented_unsafe_blocks)]
pub unsafe extern "C" fn gullet_study_new(
    library: *const gullet_library,
    materials: *const *const gullet_material,
    material_count: usize,
    machines: *const *const gullet_machine,
    machine_count: usize,
    practices: *const *const gullet_practice,
    practice_count: usize,
    blank: *const gullet_blank,
    cutter: *const gullet_cutter,
    hold: *const gullet_hold,
    pass: *const gullet_pass,
    study_out: *mut *mut gullet_study,
) -> gullet_status {
    // SAFETY: of every block in here: the caller's promise in the header.
    guard(|| {
        let target = unsafe { handle_out(study_out, "study_out")? };
        let tables = unsafe { Tables::of(library)? };
        let mut all = (Vec::new(), Vec::new(), Vec::new());
        for material in unsafe { slice(materials, material_count, "materials")? } {
            all.0
                .push(part!(*material, Material, "material")?.as_ref().clone());
        }
        for machine in unsafe { slice(machines, machine_count, "machines")? } {
            all.1.push(part!(*machine, Machine, "machine")?.clone());
        }
        for practice in unsafe { slice(practices, practice_count, "practices")? } {
            all.2
                .push(part!(*practice, Practice, "practice")?.as_ref().clone());
        }
        let empty = [
            ("materials", all.0.is_empty()),
            ("machines", all.1.is_empty()),
            ("practices", all.2.is_empty()),
        ];
        if let Some((list, _)) = empty.iter().find(|(_, empty)| *empty) {
            let remedy = "give the handles that rows choose from";
            return Err(Problem::new(Code::Missing, *list, "", "at least one", remedy).into());
        }
        let blank = part!(blank, Blank, "blank")?;
        let cutter = part!(cutter, Cutter, "cutter")?;
        let hold = part!(hold, Hold, "hold")?;
        let pass = unsafe { take(pass, "pass")? };
        let (pass, lowering) = pass.core(cutter.diameter.value, blank)?;
        if lowering != Lowering::Allowed {
            let remedy = "use gullet_cut_compute for cuts of which loads lower nothing";
            let value = "GULLET_DO_NOT_LOWER_FOR_LOADS";
            let code = Code::OutOfRange;
            return Err(Problem::new(code, "pass.lowering", value, "GULLET_LOWER", remedy).into());
        }
        let base = Base {
            materials: all.0,
            machines: all.1,
            practices: all.2,
            cutter: cutter.clone(),
            hold: hold.clone(),
            part_height: blank.height,
            pass,
        };
        let study = Over::new(tables, |library| Ok(MillingStudy::new(library, base)))?;
        target.write(handle(study));
        Ok(GULLET_OK)
    })
}

/// A study with everything as a job has it: a roughing pass whose depth, which the plan of passes
/// would choose, is among the inputs. Lists have one entry. The job is copied. Free it with
/// gullet_study_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_of_job(
    job: *const gullet_job,
    study_out: *mut *mut gullet_study,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (job, target) = unsafe { (held(job, "job")?, handle_out(study_out, "study_out")?) };
        let base = Base::of_job(job.job()?);
        let tables = job.tables.clone();
        let study = Over::new(tables, |library| Ok(MillingStudy::new(library, base)))?;
        target.write(handle(study));
        Ok(GULLET_OK)
    })
}

/// Frees a study; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_free(study: *mut gullet_study) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(study) }
}

/// Numbers of an input: one a row, or the same one in all rows.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_input {
    /// Which input: one of GULLET_INPUT_...
    pub input: i32,
    /// Zero.
    pub reserved: i32,
    /// A number a row, in the unit of gullet_input_unit; NULL for `value_si` in every row.
    pub values_si: *const f64,
    /// The number of every row, where `values_si` is NULL.
    pub value_si: f64,
}

/// What rows choose: one place a row, or the same one in all rows. A row that chooses what is not
/// there gets GULLET_ERROR_UNKNOWN_NAME.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_choice {
    /// Which choice: one of GULLET_CHOICE_...
    pub choice: i32,
    /// The place in every row, where `places` is NULL.
    pub place: u32,
    /// A place a row: of materials, machines and practices in the lists of the study, else what the
    /// constant of the choice says, and UINT32_MAX for what the study has; NULL for `place` in every
    /// row.
    pub places: *const u32,
}

/// A result that is wanted.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_result {
    /// Which result: one of GULLET_RESULT_...
    pub result: i32,
    /// Zero.
    pub reserved: i32,
    /// Room for a number a row, in the unit of gullet_result_unit. A row that is refused, or that
    /// does not have the value, keeps what stood there.
    pub values_si_out: *mut f64,
}

/// Rows of a study, and where their results go.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_study_batch {
    /// sizeof(gullet_study_batch); set by gullet_study_batch_init().
    pub struct_size: u32,
    /// Most threads that work, the caller's included; 0 for one a processor. No bit of the results
    /// depends on it.
    pub threads: u32,
    /// Number of rows.
    pub count: usize,
    /// The numbers, each input at most once.
    pub inputs: *const gullet_input,
    /// How many inputs there are.
    pub input_count: usize,
    /// The choices, each at most once.
    pub choices: *const gullet_choice,
    /// How many choices there are.
    pub choice_count: usize,
    /// The results that are wanted.
    pub results: *const gullet_result,
    /// How many results there are.
    pub result_count: usize,
    /// A status a row: 0, or the error that the row has no results for.
    pub status_out: *mut gullet_status,
    /// A limit a row, or NULL: the one nearest to its bound, or that made the row an error; one of
    /// GULLET_LIMIT_..., 0 for none.
    pub binding_limit_out: *mut u8,
    /// A limit a row, or NULL: the one that holds the feed below the wanted one; 0 for none.
    pub held_by_limit_out: *mut u8,
    /// Doubts of a row, or NULL: 1 << GULLET_WARNING_... for each.
    pub warning_bits_out: *mut u8,
}

// SAFETY: `repr(C)`, pointers and numbers, the size first.
unsafe impl Sized32 for gullet_study_batch {
    const NAME: &'static str = "gullet_study_batch";
    const FIRST: usize = 8 + 11 * size_of::<usize>();
}

/// A number of the header that stands for nothing.
pub(crate) fn no_such(parameter: &str, number: i32) -> Failure {
    Problem::new(
        Code::OutOfRange,
        parameter,
        number.to_string(),
        "a constant of the header",
        "set it to one of the constants that its comment names",
    )
    .into()
}

fn reserved(parameter: &str, value: i32) -> Result<(), Failure> {
    if value == 0 {
        return Ok(());
    }
    let remedy = "set every field that is not used to zero";
    Err(Problem::new(Code::OutOfRange, parameter, value.to_string(), "0", remedy).into())
}

/// What is written, as bytes of the caller.
type Written = Vec<Target>;

/// A parameter, and where its bytes begin and end.
pub(crate) type Target = (&'static str, (usize, usize));

/// The rows of a batch, and the places of the results in the core's list.
pub(crate) struct Read<'a> {
    pub(crate) rows: Rows<'a>,
    pub(crate) wanted: Vec<usize>,
}

/// Where the results of a batch go: checked, and apart from all that is read.
pub(crate) struct Targets<'a> {
    columns: Vec<&'a mut [f64]>,
    status: &'a mut [i32],
    bytes: [&'a mut [u8]; 3],
}

/// A column of the caller that is read, apart from all that is written.
///
/// # Safety
/// As [`slice`].
unsafe fn column<'a, T>(
    pointer: *const T,
    count: usize,
    parameter: &'static str,
    written: &Written,
) -> Result<&'a [T], Failure> {
    // SAFETY: the same promise.
    let values = unsafe { slice(pointer, count, parameter)? };
    let range = extent(pointer, count, parameter)?;
    for target in written {
        apart(*target, (parameter, range))?;
    }
    Ok(values)
}

impl gullet_study_batch {
    /// What is read and written; `more` is written too.
    ///
    /// # Safety
    /// Each pointer is NULL, misaligned, or points to as many values as the batch says.
    pub(crate) unsafe fn read<'a>(
        &self,
        more: &[Target],
    ) -> Result<(Read<'a>, Targets<'a>), Failure> {
        let count = self.count;
        // Copied, so that nothing borrows from what might be written over.
        // SAFETY: the same promise.
        let (inputs, choices, results) = unsafe {
            (
                slice(self.inputs, self.input_count, "inputs")?.to_vec(),
                slice(self.choices, self.choice_count, "choices")?.to_vec(),
                slice(self.results, self.result_count, "results")?.to_vec(),
            )
        };
        let mut wanted = Vec::with_capacity(results.len());
        let mut written: Written = Vec::with_capacity(results.len() + 4);
        written.extend_from_slice(more);
        written.push(("status_out", extent(self.status_out, count, "status_out")?));
        let bytes = [
            ("binding_limit_out", self.binding_limit_out),
            ("held_by_limit_out", self.held_by_limit_out),
            ("warning_bits_out", self.warning_bits_out),
        ];
        // How many are written where: none for NULL.
        let room = |pointer: *mut u8| if pointer.is_null() { 0 } else { count };
        for (parameter, pointer) in bytes {
            written.push((parameter, extent(pointer, room(pointer), parameter)?));
        }
        for result in &results {
            reserved("results.reserved", result.reserved)?;
            let found = RESULTS
                .iter()
                .position(|entry| entry.number == result.result);
            let place = found.ok_or_else(|| no_such("results.result", result.result))?;
            let parameter = RESULTS.get(place).map_or("", |entry| spelled(entry.name));
            written.push((parameter, extent(result.values_si_out, count, parameter)?));
            wanted.push(place);
        }
        for (place, target) in written.iter().enumerate() {
            for other in written.iter().take(place) {
                apart(*target, *other)?;
            }
        }

        let mut rows = Rows {
            count,
            ..Rows::default()
        };
        for given in &inputs {
            reserved("inputs.reserved", given.reserved)?;
            let entry = INPUTS.iter().find(|entry| entry.number == given.input);
            let entry = entry.ok_or_else(|| no_such("inputs.input", given.input))?;
            let values = if given.values_si.is_null() {
                Column::Constant(given.value_si)
            } else {
                // SAFETY: the same promise.
                let values =
                    unsafe { column(given.values_si, count, spelled(entry.name), &written)? };
                Column::Values(values)
            };
            rows.numbers.push((entry.input, values));
        }
        for given in &choices {
            let entry = CHOICES.iter().find(|entry| entry.number == given.choice);
            let entry = entry.ok_or_else(|| no_such("choices.choice", given.choice))?;
            let places = if given.places.is_null() {
                Codes::Constant(given.place)
            } else {
                // SAFETY: the same promise.
                let places = unsafe { column(given.places, count, spelled(entry.name), &written)? };
                Codes::Values(places)
            };
            rows.choices.push((entry.choice, places));
        }

        // SAFETY: the same promise; what is written overlaps nothing, as was checked.
        let targets = unsafe {
            let mut columns = Vec::with_capacity(results.len());
            for (result, place) in results.iter().zip(&wanted) {
                let parameter = RESULTS.get(*place).map_or("", |entry| spelled(entry.name));
                columns.push(slice_mut(result.values_si_out, count, parameter)?);
            }
            let [binding, held_by, warnings] = bytes;
            let byte = |(parameter, pointer): (&str, *mut u8)| {
                slice_mut(pointer, room(pointer), parameter)
            };
            Targets {
                columns,
                status: slice_mut(self.status_out, count, "status_out")?,
                bytes: [byte(binding)?, byte(held_by)?, byte(warnings)?],
            }
        };
        Ok((Read { rows, wanted }, targets))
    }
}

/// The rows from `start` to `end` alone.
fn part_of<'a>(rows: &Rows<'a>, start: usize, end: usize) -> Rows<'a> {
    let numbers = rows.numbers.iter().map(|(input, column)| {
        let column = match column {
            Column::Constant(value) => Column::Constant(*value),
            Column::Values(values) => Column::Values(values.get(start..end).unwrap_or_default()),
        };
        (*input, column)
    });
    let choices = rows.choices.iter().map(|(choice, codes)| {
        let codes = match codes {
            Codes::Constant(place) => Codes::Constant(*place),
            Codes::Values(places) => Codes::Values(places.get(start..end).unwrap_or_default()),
        };
        (*choice, codes)
    });
    Rows {
        count: end - start,
        numbers: numbers.collect(),
        choices: choices.collect(),
        missing: None,
    }
}

impl Targets<'_> {
    /// Takes over the results of the rows from `start` on; whether a row was refused.
    pub(crate) fn write(&mut self, start: usize, results: &Results) -> bool {
        let mut refused = false;
        let room = self.status.iter_mut().skip(start);
        for (slot, code) in room.zip(&results.status) {
            *slot = -*code;
            refused |= *code != 0;
        }
        for (target, values) in self.columns.iter_mut().zip(&results.columns) {
            let room = target.iter_mut().skip(start);
            for ((slot, value), code) in room.zip(values).zip(&results.status) {
                if *code == 0 && !value.is_nan() {
                    *slot = *value;
                }
            }
        }
        let bytes = [&results.binding, &results.held_by, &results.warnings];
        for (target, values) in self.bytes.iter_mut().zip(bytes) {
            for (slot, value) in target.iter_mut().skip(start).zip(values) {
                *slot = *value;
            }
        }
        refused
    }
}

/// Computes rows block after block; whether one was refused. Once without rows too, so that a wrong
/// batch is always refused.
pub(crate) fn in_blocks(
    rows: &Rows<'_>,
    block: usize,
    mut compute: impl FnMut(usize, &Rows<'_>) -> Result<bool, Failure>,
) -> Result<bool, Failure> {
    let mut refused = false;
    let mut start = 0usize;
    loop {
        let end = start.saturating_add(block).min(rows.count);
        refused |= compute(start, &part_of(rows, start, end))?;
        start = end;
        if start >= rows.count {
            return Ok(refused);
        }
    }
}

/// The status of a call over rows.
pub(crate) fn status_of(refused: bool) -> gullet_status {
    if refused {
        GULLET_WARNING_ROWS_REFUSED
    } else {
        GULLET_OK
    }
}

/// How a study runs on so many threads; 0 for one a processor.
pub(crate) fn execution(threads: u32) -> gullet::Result<Execution> {
    match threads {
        0 => Ok(Execution::default()),
        threads => Execution::default().with_threads(threads as usize),
    }
}

/// Computes every row of a batch; each gets the bits that gullet_cut_compute gives. A row that is
/// refused gets the status of its error, the others 0; the call then returns
/// GULLET_WARNING_ROWS_REFUSED. What is written may overlap nothing (GULLET_ERROR_OVERLAP). Nothing
/// is written where the call fails. With count 0 every array of rows may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_study_run(
    study: *const gullet_study,
    batch: *const gullet_study_batch,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (study, batch) = unsafe { (held(study, "study")?, take(batch, "batch")?) };
        let execution = execution(batch.threads)?;
        // SAFETY: the caller's promise in the header.
        let (Read { rows, wanted }, mut targets) = unsafe { batch.read(&[])? };
        let block = BLOCK.saturating_mul(execution.threads());
        let mut results = Results::default();
        let refused = in_blocks(&rows, block, |start, rows| {
            study
                .get()
                .run_into(rows, &wanted, execution, &mut results)?;
            Ok(targets.write(start, &results))
        })?;
        Ok(status_of(refused))
    })
}
