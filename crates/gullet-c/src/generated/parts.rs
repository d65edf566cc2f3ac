// Written by gullet-c-gen: do not edit.
use super::status::gullet_status;
use crate::guard::guard;
use crate::memory::{Opaque, held};
use crate::model::{gullet_library, part_json, part_new, release};
use core::ffi::c_char;
use gullet::plan::Part;

/// A work material. Read-only after it is made: any number of threads may use it at once.
pub struct gullet_material {
    _private: (),
}

impl Opaque for gullet_material {
    type Inner = Part;
}

/// A work material from the keys of the section `material` of a job file, as a JSON object:
/// {"id": "6061"}
/// `library` NULL stands for the built-in tables. Free it with gullet_material_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_material_new(
    library: *const gullet_library,
    keys_json: *const c_char,
    keys_length: usize,
    material_out: *mut *mut gullet_material,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { part_new("material", library, keys_json, keys_length, material_out) }
}

/// The keys of a work material as JSON; reading them gives the same one, bit for bit. See "Text out" for
/// the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_material_json(
    material: *const gullet_material,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    guard(|| unsafe {
        part_json(held(material, "material"), buffer, capacity, needed_out)
    })
}

/// Frees a work material; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_material_free(material: *mut gullet_material) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(material) }
}

/// A blank. Read-only after it is made: any number of threads may use it at once.
pub struct gullet_blank {
    _private: (),
}

impl Opaque for gullet_blank {
    type Inner = Part;
}

/// A blank from the keys of the section `blank` of a job file, as a JSON object:
/// {"length": "3 in", "width": "50 mm", "height": "1 in"}
/// `library` NULL stands for the built-in tables. Free it with gullet_blank_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_blank_new(
    library: *const gullet_library,
    keys_json: *const c_char,
    keys_length: usize,
    blank_out: *mut *mut gullet_blank,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { part_new("blank", library, keys_json, keys_length, blank_out) }
}

/// The keys of a blank as JSON; reading them gives the same one, bit for bit. See "Text out" for
/// the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_blank_json(
    blank: *const gullet_blank,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    guard(|| unsafe {
        part_json(held(blank, "blank"), buffer, capacity, needed_out)
    })
}

/// Frees a blank; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_blank_free(blank: *mut gullet_blank) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(blank) }
}

/// A cutter. Read-only after it is made: any number of threads may use it at once.
pub struct gullet_cutter {
    _private: (),
}

impl Opaque for gullet_cutter {
    type Inner = Part;
}

/// A cutter from the keys of the section `cutter` of a job file, as a JSON object:
/// {"form": "square", "material": "HSS", "diameter": "1/2 in", "teeth": 2, "flute_length": "1 in", "stick_out": "1.5 in"}
/// `library` NULL stands for the built-in tables. Free it with gullet_cutter_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutter_new(
    library: *const gullet_library,
    keys_json: *const c_char,
    keys_length: usize,
    cutter_out: *mut *mut gullet_cutter,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { part_new("cutter", library, keys_json, keys_length, cutter_out) }
}

/// The keys of a cutter as JSON; reading them gives the same one, bit for bit. See "Text out" for
/// the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutter_json(
    cutter: *const gullet_cutter,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    guard(|| unsafe {
        part_json(held(cutter, "cutter"), buffer, capacity, needed_out)
    })
}

/// Frees a cutter; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_cutter_free(cutter: *mut gullet_cutter) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(cutter) }
}

/// A machine. Read-only after it is made: any number of threads may use it at once.
pub struct gullet_machine {
    _private: (),
}

impl Opaque for gullet_machine {
    type Inner = Part;
}

/// A machine from the keys of the section `machine` of a job file, as a JSON object:
/// {"base": "manual-knee-mill"}
/// `library` NULL stands for the built-in tables. Free it with gullet_machine_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_machine_new(
    library: *const gullet_library,
    keys_json: *const c_char,
    keys_length: usize,
    machine_out: *mut *mut gullet_machine,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { part_new("machine", library, keys_json, keys_length, machine_out) }
}

/// The keys of a machine as JSON; reading them gives the same one, bit for bit. See "Text out" for
/// the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_machine_json(
    machine: *const gullet_machine,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    guard(|| unsafe {
        part_json(held(machine, "machine"), buffer, capacity, needed_out)
    })
}

/// Frees a machine; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_machine_free(machine: *mut gullet_machine) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(machine) }
}

/// A vise. Read-only after it is made: any number of threads may use it at once.
pub struct gullet_hold {
    _private: (),
}

impl Opaque for gullet_hold {
    type Inner = Part;
}

/// A vise from the keys of the section `hold` of a job file, as a JSON object:
/// {"clamping_force": "12 kN", "grip_depth": "1/2 in"}
/// `library` NULL stands for the built-in tables. Free it with gullet_hold_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_hold_new(
    library: *const gullet_library,
    keys_json: *const c_char,
    keys_length: usize,
    hold_out: *mut *mut gullet_hold,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { part_new("hold", library, keys_json, keys_length, hold_out) }
}

/// The keys of a vise as JSON; reading them gives the same one, bit for bit. See "Text out" for
/// the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_hold_json(
    hold: *const gullet_hold,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    guard(|| unsafe {
        part_json(held(hold, "hold"), buffer, capacity, needed_out)
    })
}

/// Frees a vise; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_hold_free(hold: *mut gullet_hold) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(hold) }
}

/// A practice of a shop. Read-only after it is made: any number of threads may use it at once.
pub struct gullet_practice {
    _private: (),
}

impl Opaque for gullet_practice {
    type Inner = Part;
}

/// A practice of a shop from the keys of the section `practice` of a job file, as a JSON object:
/// {"base": "training"}
/// `library` NULL stands for the built-in tables. Free it with gullet_practice_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_practice_new(
    library: *const gullet_library,
    keys_json: *const c_char,
    keys_length: usize,
    practice_out: *mut *mut gullet_practice,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { part_new("practice", library, keys_json, keys_length, practice_out) }
}

/// The keys of a practice of a shop as JSON; reading them gives the same one, bit for bit. See "Text out" for
/// the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_practice_json(
    practice: *const gullet_practice,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    guard(|| unsafe {
        part_json(held(practice, "practice"), buffer, capacity, needed_out)
    })
}

/// Frees a practice of a shop; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_practice_free(practice: *mut gullet_practice) {
    // SAFETY: the caller's promise in the header.
    unsafe { release(practice) }
}
