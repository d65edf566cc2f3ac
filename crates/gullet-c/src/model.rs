//! Handles: the tables, and the parts of a set-up.

use crate::failure::{Failure, fault};
use crate::generated::parts::*;
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{free, handle, handle_out, maybe, name, read, slice, text, write_text};
use core::ffi::c_char;
use gullet::model::{Blank, Cutter, Hold, Machine, Practice};
use gullet::operation;
use gullet::plan::{Job, Part};
use gullet::quantity::UnitSystem;
use gullet::table::{Library, Material, Overlay};
use serde_json::Value;
use std::sync::Arc;

/// The reference tables, with a shop's own rows over them. Read-only after it is made: any number
/// of threads may use it at once.
pub struct gullet_library {
    tables: Arc<Library>,
}

/// Tables that a handle keeps alive.
#[derive(Clone)]
pub(crate) enum Tables {
    Builtin,
    Shop(Arc<Library>),
}

impl Tables {
    pub(crate) fn get(&self) -> &Library {
        match self {
            Tables::Builtin => Library::builtin(),
            Tables::Shop(library) => library,
        }
    }

    /// Those of a handle; the built-in ones for NULL.
    ///
    /// # Safety
    /// As [`maybe`].
    pub(crate) unsafe fn of(library: *const gullet_library) -> Result<Tables, Failure> {
        // SAFETY: the same promise.
        Ok(match unsafe { maybe(library, "library")? } {
            None => Tables::Builtin,
            Some(library) => Tables::Shop(library.tables.clone()),
        })
    }
}

/// A shop's own table, as text.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_overlay {
    /// Name that problems are reported under.
    pub file_name: *const c_char,
    /// CSV text with a header line.
    pub text: *const c_char,
    /// Bytes of the text, or GULLET_NUL_TERMINATED.
    pub text_length: usize,
}

/// The built-in tables with a shop's own laid over them; `base` NULL stands for the built-in ones,
/// another library for itself. Every row that is refused is told at once, with file, line, column.
/// Free it with gullet_library_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_library_new(
    base: *const gullet_library,
    overlays: *const gullet_overlay,
    overlay_count: usize,
    library_out: *mut *mut gullet_library,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (base, given, target) = unsafe {
            (
                Tables::of(base)?,
                slice(overlays, overlay_count, "overlays")?,
                handle_out(library_out, "library_out")?,
            )
        };
        let mut files = Vec::with_capacity(given.len());
        for overlay in given {
            // SAFETY: the caller's promise in the header.
            let (file_name, text) = unsafe {
                (
                    name(overlay.file_name, "overlays.file_name")?,
                    text(overlay.text, overlay.text_length, "overlays.text")?,
                )
            };
            files.push(Overlay {
                file_name: file_name.to_owned(),
                text: text.to_owned(),
            });
        }
        let tables = Arc::new(base.get().with_overlay(&files)?);
        target.write(handle(gullet_library { tables }));
        Ok(GULLET_OK)
    })
}

/// Frees a library; NULL is left alone. Handles made with it keep what they need.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_library_free(library: *mut gullet_library) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(library) }
}

/// Frees a handle of any type.
///
/// # Safety
/// As [`free`].
pub(crate) unsafe fn release<T>(pointer: *mut T) {
    guard(|| {
        // SAFETY: the same promise.
        unsafe { free(pointer)? };
        Ok(GULLET_OK)
    });
}

/// Reads a section of a job file into a handle.
///
/// # Safety
/// As the header asks of the function it serves.
pub(crate) unsafe fn part_new<H>(
    section: &str,
    wrap: fn(Part) -> H,
    library: *const gullet_library,
    keys_json: *const c_char,
    keys_length: usize,
    target: *mut *mut H,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise.
        let (tables, keys, target) = unsafe {
            (
                Tables::of(library)?,
                text(keys_json, keys_length, "keys_json")?,
                handle_out(target, section)?,
            )
        };
        let (part, _) = Part::from_json(section, keys, tables.get())?;
        target.write(handle(wrap(part)));
        Ok(GULLET_OK)
    })
}

/// Writes the keys of a part.
///
/// # Safety
/// As the header asks of the function it serves.
pub(crate) unsafe fn part_json(
    part: Result<&Part, Failure>,
    buffer: *mut c_char,
    capacity: usize,
    needed: *mut usize,
) -> Result<i32, Failure> {
    let keys = Value::Object(part?.to_json()).to_string();
    // SAFETY: the caller's promise.
    unsafe { write_text(&keys, buffer, capacity, needed) }
}

/// Everything a cut is made with. Read-only after it is made: any number of threads may use it at
/// once.
pub struct gullet_setup {
    pub(crate) tables: Tables,
    pub(crate) material: Material,
    pub(crate) blank: Blank,
    pub(crate) cutter: Cutter,
    pub(crate) machine: Machine,
    pub(crate) hold: Hold,
    pub(crate) practice: Practice,
    pub(crate) units: UnitSystem,
}

impl gullet_setup {
    pub(crate) fn core(&self) -> operation::Setup<'_> {
        operation::Setup {
            library: self.tables.get(),
            material: &self.material,
            cutter: &self.cutter,
            machine: &self.machine,
            hold: &self.hold,
            practice: &self.practice,
            part_height: self.blank.height,
            units: self.units,
        }
    }

    pub(crate) fn of_job(job: &Job, tables: &Tables) -> gullet_setup {
        gullet_setup {
            tables: tables.clone(),
            material: job.material.clone(),
            blank: job.blank,
            cutter: job.cutter.clone(),
            machine: job.machine.clone(),
            hold: job.hold.clone(),
            practice: job.practice.clone(),
            units: job.units,
        }
    }
}

/// The part of a handle, which was read from the section of its name.
macro_rules! part {
    ($handle:expr, $variant:ident, $name:literal) => {
        match unsafe { read($handle, $name)? }.part() {
            Part::$variant(part) => Ok(part.clone()),
            _ => Err(fault(
                GULLET_ERROR_WRONG_TYPE,
                $name,
                "a handle of another section",
                concat!("a handle of gullet_", $name, "_new"),
                "pass the handle that belongs here",
            )),
        }
    };
}

/// Puts the parts of a set-up together; `library` NULL stands for the built-in tables. The parts are
/// copied: their handles may be freed. Errors and doubts of its cuts are told in `units`:
/// GULLET_METRIC or GULLET_INCH. Free it with gullet_setup_free.
#[unsafe(no_mangle)]
#[allow(clippy::too_many_arguments)]
pub unsafe extern "C" fn gullet_setup_new(
    library: *const gullet_library,
    material: *const gullet_material,
    blank: *const gullet_blank,
    cutter: *const gullet_cutter,
    machine: *const gullet_machine,
    hold: *const gullet_hold,
    practice: *const gullet_practice,
    units: i32,
    setup_out: *mut *mut gullet_setup,
) -> gullet_status {
    // SAFETY: of every block in here: the caller's promise in the header.
    #[allow(clippy::undocumented_unsafe_blocks)]
    guard(|| {
        let target = unsafe { handle_out(setup_out, "setup_out")? };
        let setup = gullet_setup {
            tables: unsafe { Tables::of(library)? },
            material: *part!(material, Material, "material")?,
            blank: part!(blank, Blank, "blank")?,
            cutter: part!(cutter, Cutter, "cutter")?,
            machine: part!(machine, Machine, "machine")?,
            hold: part!(hold, Hold, "hold")?,
            practice: *part!(practice, Practice, "practice")?,
            units: crate::quantity::system(units)?,
        };
        target.write(handle(setup));
        Ok(GULLET_OK)
    })
}

/// Frees a set-up; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_setup_free(setup: *mut gullet_setup) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(setup) }
}
