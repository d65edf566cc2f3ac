//! Inputs, choices and results of studies by number and name.

use crate::generated::status::{GULLET_OK, gullet_status};
use crate::generated::studies::{CHOICES, INPUTS, RESULTS};
use crate::guard::guard;
use crate::memory::{name, out};
use core::ffi::{CStr, c_char};
use gullet::error::unknown_name;
use gullet::study::{Choice, Input};

/// An input by its number.
pub(crate) struct InputEntry {
    pub(crate) number: i32,
    pub(crate) input: Input,
    pub(crate) name: &'static CStr,
    pub(crate) unit: &'static CStr,
}

/// A choice by its number, and the names of the places in a list that is always the same.
pub(crate) struct ChoiceEntry {
    pub(crate) number: i32,
    pub(crate) choice: Choice,
    pub(crate) name: &'static CStr,
    pub(crate) words: &'static [&'static CStr],
}

/// A result by its number; its place is that of the core's list.
pub(crate) struct ResultEntry {
    pub(crate) number: i32,
    pub(crate) name: &'static CStr,
    pub(crate) unit: &'static CStr,
}

/// Text of the library's own.
pub(crate) fn spelled(text: &'static CStr) -> &'static str {
    text.to_str().unwrap_or_default()
}

fn input(number: i32) -> Option<&'static InputEntry> {
    INPUTS.iter().find(|entry| entry.number == number)
}

fn choice(number: i32) -> Option<&'static ChoiceEntry> {
    CHOICES.iter().find(|entry| entry.number == number)
}

fn result(number: i32) -> Option<&'static ResultEntry> {
    RESULTS.iter().find(|entry| entry.number == number)
}

/// Text of the library's own; empty for none.
fn own(text: Option<&'static CStr>) -> *const c_char {
    text.unwrap_or(c"").as_ptr()
}

/// Name of an input, such as "axial_depth", as columns of tables have it before their unit; empty
/// for a number that is none. Numbers run from 1 without a gap. Static.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_input_name(number: i32) -> *const c_char {
    own(input(number).map(|entry| entry.name))
}

/// SI unit of an input as text; empty for a pure number. Static.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_input_unit(number: i32) -> *const c_char {
    own(input(number).map(|entry| entry.unit))
}

/// Name of a choice, such as "material"; empty for a number that is none. Numbers run from 1
/// without a gap. Static.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_choice_name(number: i32) -> *const c_char {
    own(choice(number).map(|entry| entry.name))
}

/// Name of a place that a choice picks, from 0, such as "slotting"; empty behind the last one, and
/// for materials, machines and practices, whose lists are a study's own. Static.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_choice_place_name(number: i32, place: u32) -> *const c_char {
    let words = choice(number).map_or(&[] as &[&CStr], |entry| entry.words);
    own(words.get(place as usize).copied())
}

/// Name of a result, such as "spindle_speed"; empty for a number that is none. Numbers run from 1
/// without a gap. Static.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_result_name(number: i32) -> *const c_char {
    own(result(number).map(|entry| entry.name))
}

/// SI unit of a result as text; empty for a pure number. Static.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_result_unit(number: i32) -> *const c_char {
    own(result(number).map(|entry| entry.unit))
}

/// The number behind a name.
///
/// # Safety
/// As the header asks of the functions it serves.
unsafe fn number_of(
    list: &mut dyn Iterator<Item = (&'static CStr, i32)>,
    text: *const c_char,
    parameter: &str,
    number_out: *mut i32,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise.
        let (text, target) = unsafe { (name(text, parameter)?, out(number_out, "number_out")?) };
        let known: Vec<(&str, i32)> = list.map(|(name, number)| (spelled(name), number)).collect();
        let found = known.iter().find(|(name, _)| *name == text);
        let (_, number) = found
            .ok_or_else(|| unknown_name(parameter, text, known.iter().map(|(name, _)| *name)))?;
        target.write(*number);
        Ok(GULLET_OK)
    })
}

/// The number of an input by its name.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_input_number(
    input_name: *const c_char,
    number_out: *mut i32,
) -> gullet_status {
    let mut list = INPUTS.iter().map(|entry| (entry.name, entry.number));
    // SAFETY: the caller's promise in the header.
    unsafe { number_of(&mut list, input_name, "input", number_out) }
}

/// The number of a choice by its name.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_choice_number(
    choice_name: *const c_char,
    number_out: *mut i32,
) -> gullet_status {
    let mut list = CHOICES.iter().map(|entry| (entry.name, entry.number));
    // SAFETY: the caller's promise in the header.
    unsafe { number_of(&mut list, choice_name, "choice", number_out) }
}

/// The number of a result by its name.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_result_number(
    result_name: *const c_char,
    number_out: *mut i32,
) -> gullet_status {
    let mut list = RESULTS.iter().map(|entry| (entry.name, entry.number));
    // SAFETY: the caller's promise in the header.
    unsafe { number_of(&mut list, result_name, "result", number_out) }
}
