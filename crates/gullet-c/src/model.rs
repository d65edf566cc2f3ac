//! Handles: the tables, and the parts of a set-up.

use crate::failure::{Failure, fault};
use crate::generated::parts::*;
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{Opaque, free, handle, handle_out, held, maybe, name, slice, text, write_text};
use core::ffi::c_char;
use gullet::model::Blank;
use gullet::operation::{Milling, Setup};
use gullet::plan::Part;
use gullet::table::{Library, Overlay};
use serde_json::Value;
use std::sync::Arc;

/// The reference tables, with a shop's own rows over them. Read-only after it is made: any number
/// of threads may use it at once.
pub struct gullet_library {
    _private: (),
}

impl Opaque for gullet_library {
    type Inner = Arc<Library>;
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
            Some(library) => Tables::Shop(library.clone()),
        })
    }
}

/// What borrows from tables, with the tables that it borrows from.
pub(crate) struct Over<T> {
    // Dropped in this order.
    value: T,
    _tables: Tables,
}

impl<T> Over<T> {
    pub(crate) fn new(
        tables: Tables,
        make: impl FnOnce(&'static Library) -> Result<T, Failure>,
    ) -> Result<Over<T>, Failure> {
        // SAFETY: tables stay where they are and are never changed; these are kept until after the
        // value is dropped, and nothing takes what it borrows out of it.
        let library: &'static Library = unsafe { &*core::ptr::from_ref(tables.get()) };
        Ok(Over {
            value: make(library)?,
            _tables: tables,
        })
    }

    pub(crate) fn get(&self) -> &T {
        &self.value
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
        target.write(handle(tables));
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
pub(crate) unsafe fn release<H: Opaque>(pointer: *mut H) {
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
pub(crate) unsafe fn part_new<H: Opaque<Inner = Part>>(
    section: &str,
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
        target.write(handle(part));
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

/// Everything a cut is made with, looked up in the tables once. Read-only after it is made: any
/// number of threads may use it at once.
pub struct gullet_setup {
    _private: (),
}

impl Opaque for gullet_setup {
    type Inner = Prepared;
}

/// What a set-up holds.
pub(crate) struct Prepared {
    pub(crate) milling: Milling,
    pub(crate) blank: Blank,
    pub(crate) cutter_diameter_m: f64,
}

impl Prepared {
    pub(crate) fn new(setup: &Setup, blank: Blank) -> Prepared {
        Prepared {
            milling: Milling::new(setup),
            blank,
            cutter_diameter_m: setup.cutter.diameter.value,
        }
    }
}

/// The part of a handle, which was read from the section of its name.
macro_rules! part {
    ($handle:expr, $variant:ident, $name:literal) => {
        match unsafe { held($handle, $name)? } {
            Part::$variant(part) => Ok(part),
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

pub(crate) use part;

/// Puts the parts of a set-up together; `library` NULL stands for the built-in tables. The parts are
/// copied: their handles may be freed. Errors of its cuts are told in `units`:
/// GULLET_METRIC or GULLET_INCH. Free it with gullet_setup_free.
#[unsafe(no_mangle)]
#[allow(clippy::too_many_arguments, clippy::undocumented_unsafe_blocks)]
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
    guard(|| {
        let target = unsafe { handle_out(setup_out, "setup_out")? };
        let tables = unsafe { Tables::of(library)? };
        let material = part!(material, Material, "material")?;
        let blank: &Blank = part!(blank, Blank, "blank")?;
        let setup = Setup {
            library: tables.get(),
            material,
            cutter: part!(cutter, Cutter, "cutter")?,
            machine: part!(machine, Machine, "machine")?,
            hold: part!(hold, Hold, "hold")?,
            practice: part!(practice, Practice, "practice")?,
            part_height: blank.height,
            units: crate::quantity::system(units)?,
        };
        let setup = Prepared::new(&setup, *blank);
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
