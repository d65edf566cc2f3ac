//! An operation with its inputs and what it is done with.

use crate::failure::{Failure, fault};
use crate::generated::parts::{gullet_machine, gullet_material, gullet_practice};
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{Opaque, handle, handle_out, held, name};
use crate::model::{Tables, gullet_library, part, release};
use crate::operation_cut::{doubts, gullet_operation_cut};
use crate::quantity::system;
use core::ffi::c_char;
use gullet::error::unknown_name;
use gullet::model::{Machine, Practice};
use gullet::operation::process::{Bench, Request};
use gullet::plan::{Part, ProcessCard};
use gullet::quantity::UnitSystem;
use gullet::table::{Material, ToolMaterial};
use gullet::{Code, Error, Problem};
use std::sync::{Mutex, MutexGuard, PoisonError};

/// An operation with its inputs, and the material, tool, machine and practice it is done with. Several
/// threads may use it at once; their calls take turns.
pub struct gullet_operation {
    _private: (),
}

impl Opaque for gullet_operation {
    type Inner = Mutex<Asked>;
}

/// What is asked for so far.
pub(crate) struct Asked {
    tables: Tables,
    units: UnitSystem,
    request: Request,
    material: Option<Material>,
    tool: ToolMaterial,
    machine: Option<Machine>,
    practice: Practice,
}

fn missing(what: &str, admissible: &str, remedy: &str) -> Problem {
    Problem::new(Code::Missing, what, "", admissible, remedy)
}

impl Asked {
    /// Takes what it is done with by name, or an input as text.
    fn text(&mut self, name: &str, text: &str) -> Result<(), Failure> {
        match name {
            "material" => self.material = Some(self.tables.get().material(text)?.clone()),
            "machine" => self.machine = Some(Machine::builtin(text)?),
            "practice" => self.practice = Practice::builtin(text)?,
            "tool" => {
                let names = || ToolMaterial::ALL.iter().map(|tool| tool.name());
                self.tool =
                    ToolMaterial::parse(text).ok_or_else(|| unknown_name("tool", text, names()))?;
            }
            _ => self.request = self.request.clone().text(name, text)?,
        }
        Ok(())
    }

    fn cut(&self) -> Result<ProcessCard, Failure> {
        let (Some(material), Some(machine)) = (&self.material, &self.machine) else {
            let mut problems = Vec::new();
            if self.material.is_none() {
                problems.push(missing(
                    "material",
                    "a material of the tables",
                    "name one by gullet_operation_set_text, or give a handle",
                ));
            }
            if self.machine.is_none() {
                problems.push(missing(
                    "machine",
                    &Machine::BUILTIN.join(", "),
                    "name one by gullet_operation_set_text, or give a handle",
                ));
            }
            problems.extend(self.request.problems(self.units));
            return Err(match Error::unless_empty(problems, ()) {
                Err(error) => error.into(),
                Ok(()) => missing("machine", "", "").into(),
            });
        };
        let library = self.tables.get();
        let cut = self.request.cut(&Bench {
            library,
            material,
            tool: self.tool,
            machine,
            practice: &self.practice,
            units: self.units,
        })?;
        Ok(ProcessCard::new(cut.process.title, cut, library))
    }
}

/// What an operation asks for.
///
/// # Safety
/// As [`held`].
unsafe fn asked<'a>(operation: *const gullet_operation) -> Result<MutexGuard<'a, Asked>, Failure> {
    // SAFETY: the same promise.
    let asked = unsafe { held(operation, "operation")? };
    Ok(asked.lock().unwrap_or_else(PoisonError::into_inner))
}

/// An operation by its name, nothing given yet but the practice "training" and tools of HSS. Errors,
/// doubts and cards are told in `units`: GULLET_METRIC or GULLET_INCH. `library` NULL stands for the
/// built-in tables. Free it with gullet_operation_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_new(
    library: *const gullet_library,
    operation_name: *const c_char,
    units: i32,
    operation_out: *mut *mut gullet_operation,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (tables, wanted, target) = unsafe {
            (
                Tables::of(library)?,
                name(operation_name, "operation_name")?,
                handle_out(operation_out, "operation_out")?,
            )
        };
        let asked = Asked {
            tables,
            units: system(units)?,
            request: Request::new(wanted)?,
            material: None,
            tool: ToolMaterial::Hss,
            machine: None,
            practice: Practice::builtin("training")?,
        };
        target.write(handle(Mutex::new(asked)));
        Ok(GULLET_OK)
    })
}

/// Frees an operation; NULL is left alone. Its cuts keep what they need.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_free(operation: *mut gullet_operation) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(operation) }
}

/// Gives an input as text with its unit, such as "8.5 mm", or as the word of a choice; or, by the names
/// "material", "machine", "practice" and "tool", what the operation is done with, such as "1018",
/// "small-cnc-mill", "experienced" and "HSS". Later values replace earlier ones.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_set_text(
    operation: *mut gullet_operation,
    input_name: *const c_char,
    value_text: *const c_char,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (mut asked, input, text) = unsafe {
            (
                asked(operation)?,
                name(input_name, "input_name")?,
                name(value_text, "value_text")?,
            )
        };
        asked.text(input, text)?;
        Ok(GULLET_OK)
    })
}

/// Gives an input as a number in the SI unit of its kind, or as the place of the word of a choice, from
/// 0. What is not admissible is told when the cut is computed.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_set(
    operation: *mut gullet_operation,
    input_name: *const c_char,
    value_si: f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (mut asked, input) = unsafe { (asked(operation)?, name(input_name, "input_name")?) };
        asked.request = asked.request.clone().si(input, value_si)?;
        Ok(GULLET_OK)
    })
}

/// Gives the work material by its handle, which is copied.
#[unsafe(no_mangle)]
#[allow(clippy::undocumented_unsafe_blocks)]
pub unsafe extern "C" fn gullet_operation_set_material(
    operation: *mut gullet_operation,
    material: *const gullet_material,
) -> gullet_status {
    // SAFETY: of every block in here: the caller's promise in the header.
    guard(|| {
        let mut asked = unsafe { asked(operation)? };
        let material: Result<_, Failure> = part!(material, Material, "material");
        asked.material = Some(material?.as_ref().clone());
        Ok(GULLET_OK)
    })
}

/// Gives the machine by its handle, which is copied.
#[unsafe(no_mangle)]
#[allow(clippy::undocumented_unsafe_blocks)]
pub unsafe extern "C" fn gullet_operation_set_machine(
    operation: *mut gullet_operation,
    machine: *const gullet_machine,
) -> gullet_status {
    // SAFETY: of every block in here: the caller's promise in the header.
    guard(|| {
        let mut asked = unsafe { asked(operation)? };
        let machine: Result<_, Failure> = part!(machine, Machine, "machine");
        asked.machine = Some(machine?.clone());
        Ok(GULLET_OK)
    })
}

/// Gives the practice by its handle, which is copied.
#[unsafe(no_mangle)]
#[allow(clippy::undocumented_unsafe_blocks)]
pub unsafe extern "C" fn gullet_operation_set_practice(
    operation: *mut gullet_operation,
    practice: *const gullet_practice,
) -> gullet_status {
    // SAFETY: of every block in here: the caller's promise in the header.
    guard(|| {
        let mut asked = unsafe { asked(operation)? };
        let practice: Result<_, Failure> = part!(practice, Practice, "practice");
        asked.practice = practice?.as_ref().clone();
        Ok(GULLET_OK)
    })
}

/// Computes the cut: settings the machine really has, what follows from them, every limit, worked
/// steps. Every problem is told at once. A positive status is the first of the doubts there are. The
/// operation may be changed and computed again. Free the cut with gullet_operation_cut_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_compute(
    operation: *const gullet_operation,
    cut_out: *mut *mut gullet_operation_cut,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (asked, target) = unsafe { (asked(operation)?, handle_out(cut_out, "cut_out")?) };
        let card = asked.cut()?;
        let status = crate::report::doubtful(doubts(&card));
        target.write(handle(card));
        Ok(status)
    })
}
