//! What operations there are, and what each takes and gives.

use crate::cut::si_unit;
use crate::failure::Failure;
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{name, out};
use crate::structs::{Sized32, room};
use core::ffi::c_char;
use gullet::operation::Field;
use gullet::operation::process::{ALL, Process, ProcessInput, find};
use gullet::quantity::UnitSystem;
use gullet::{Code, Problem};
use std::ffi::CString;
use std::sync::OnceLock;

/// An operation. Every text is static.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_operation_listing {
    /// sizeof(gullet_operation_listing); set by gullet_operation_listing_init().
    pub struct_size: u32,
    /// Number of inputs, for gullet_operation_input.
    pub input_count: u32,
    /// Number of settings and results, for gullet_operation_value.
    pub value_count: u32,
    /// Zero.
    pub reserved: u32,
    /// Name, such as "drilling", the same in every language.
    pub name: *const c_char,
    /// Name as a heading.
    pub title: *const c_char,
    /// What it does.
    pub meaning: *const c_char,
    /// Limits it looks at beside those of spindle, feed, power and torque: names with commas between.
    pub limits: *const c_char,
    /// Material of an example with an invented part.
    pub example_material: *const c_char,
    /// What the edges of the example's tool are made of.
    pub example_tool: *const c_char,
    /// Built-in machine of the example.
    pub example_machine: *const c_char,
    /// Inputs of the example: "name=value; ...".
    pub example_inputs: *const c_char,
}

// SAFETY: `repr(C)`, pointers and numbers, the size first.
unsafe impl Sized32 for gullet_operation_listing {
    const NAME: &'static str = "gullet_operation_listing";
    const FIRST: usize = 80;
}

/// An input of an operation, or a value it gives. Every text is static.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_operation_field {
    /// sizeof(gullet_operation_field); set by gullet_operation_field_init().
    pub struct_size: u32,
    /// Input: 1 where it must be given. Value: 1 where every cut has it.
    pub always: i32,
    /// Name, the same in every language.
    pub name: *const c_char,
    /// What it measures, such as "length"; "choice" for one of words.
    pub kind: *const c_char,
    /// SI unit; empty for a pure number, a count and a choice.
    pub unit: *const c_char,
    /// What it is.
    pub meaning: *const c_char,
    /// Input: what is admissible, in the names of the other inputs, or the words of a choice with
    /// commas between, whose places count from 0. Value: empty.
    pub admissible: *const c_char,
    /// Input: what is taken without it, in metric units; empty where it must be given or the tables
    /// decide. Value: empty.
    pub default_text: *const c_char,
}

// SAFETY: `repr(C)`, pointers and numbers, the size first.
unsafe impl Sized32 for gullet_operation_field {
    const NAME: &'static str = "gullet_operation_field";
    const FIRST: usize = 56;
}

/// Texts of an input or a value: name, kind, unit, meaning, admissible, default.
struct ListedField {
    always: bool,
    texts: [CString; 6],
}

/// Texts of an operation: name, title, meaning, limits, and those of its example.
struct Listed {
    texts: [CString; 8],
    inputs: Vec<ListedField>,
    values: Vec<ListedField>,
}

fn text(text: &str) -> CString {
    CString::new(text).unwrap_or_default()
}

fn input(input: &ProcessInput) -> ListedField {
    let kind = input.parameter.kind;
    let (kind, unit) = if input.words.is_empty() {
        (kind.name(), si_unit(kind))
    } else {
        ("choice", "")
    };
    let default = input.default_text(UnitSystem::Metric).unwrap_or_default();
    ListedField {
        always: input.required(),
        texts: [
            text(input.name()),
            text(kind),
            text(unit),
            text(input.parameter.meaning),
            text(&input.admissible()),
            text(&default),
        ],
    }
}

fn value(field: &Field) -> ListedField {
    ListedField {
        always: !field.optional,
        texts: [
            text(field.name),
            text(field.kind.name()),
            text(si_unit(field.kind)),
            text(field.meaning),
            CString::default(),
            CString::default(),
        ],
    }
}

fn listed(process: &Process) -> Listed {
    let limits: Vec<&str> = process.limits.iter().map(|limit| limit.name()).collect();
    let example = &process.example;
    Listed {
        texts: [
            text(process.name),
            text(process.title),
            text(process.meaning),
            text(&limits.join(", ")),
            text(example.material),
            text(example.tool.name()),
            text(example.machine),
            text(example.inputs),
        ],
        inputs: process.inputs.iter().map(input).collect(),
        values: process.fields().map(value).collect(),
    }
}

/// The list, made at its first use and kept.
fn list() -> &'static [Listed] {
    static LIST: OnceLock<Vec<Listed>> = OnceLock::new();
    LIST.get_or_init(|| ALL.iter().map(|process| listed(process)).collect())
}

/// An entry of a list.
pub(crate) fn entry<'a, T>(list: &'a [T], index: usize, what: &str) -> Result<&'a T, Failure> {
    list.get(index).ok_or_else(|| {
        Problem::new(
            Code::OutOfRange,
            what,
            index.to_string(),
            format!("below {}", list.len()),
            "count up to the number that is told",
        )
        .into()
    })
}

/// Number of operations. Lists in programs should not rely on it: later versions have more.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_operation_count() -> usize {
    ALL.len()
}

/// Place of an operation in the list, by its name.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_find(
    operation_name: *const c_char,
    index_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (wanted, target) = unsafe {
            (
                name(operation_name, "operation_name")?,
                out(index_out, "index_out")?,
            )
        };
        let process = find(wanted)?;
        let place = ALL.iter().position(|other| *other == process);
        target.write(place.unwrap_or_default());
        Ok(GULLET_OK)
    })
}

/// An operation of the list, from 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_list(
    index: usize,
    listing_out: *mut gullet_operation_listing,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let target = unsafe { room(listing_out, "listing_out")? };
        let listed = entry(list(), index, "index")?;
        let [
            name,
            title,
            meaning,
            limits,
            material,
            tool,
            machine,
            inputs,
        ] = listed.texts.each_ref().map(|text| text.as_ptr());
        target.write(gullet_operation_listing {
            struct_size: size_of::<gullet_operation_listing>() as u32,
            input_count: listed.inputs.len() as u32,
            value_count: listed.values.len() as u32,
            reserved: 0,
            name,
            title,
            meaning,
            limits,
            example_material: material,
            example_tool: tool,
            example_machine: machine,
            example_inputs: inputs,
        });
        Ok(GULLET_OK)
    })
}

/// Writes a field of a list.
///
/// # Safety
/// As the header asks of the functions it serves.
unsafe fn field(
    of: fn(&Listed) -> &[ListedField],
    operation: usize,
    index: usize,
    field_out: *mut gullet_operation_field,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise.
        let target = unsafe { room(field_out, "field_out")? };
        let field = entry(of(entry(list(), operation, "operation")?), index, "index")?;
        let [name, kind, unit, meaning, admissible, default_text] =
            field.texts.each_ref().map(|text| text.as_ptr());
        target.write(gullet_operation_field {
            struct_size: size_of::<gullet_operation_field>() as u32,
            always: i32::from(field.always),
            name,
            kind,
            unit,
            meaning,
            admissible,
            default_text,
        });
        Ok(GULLET_OK)
    })
}

/// An input of an operation of the list, both from 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_input(
    operation: usize,
    index: usize,
    field_out: *mut gullet_operation_field,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { field(|listed| &listed.inputs, operation, index, field_out) }
}

/// A value that an operation of the list gives, both from 0: the settings, then the results, in the
/// order of gullet_operation_cut_values.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_operation_value(
    operation: usize,
    index: usize,
    field_out: *mut gullet_operation_field,
) -> gullet_status {
    // SAFETY: the caller's promise in the header.
    unsafe { field(|listed| &listed.values, operation, index, field_out) }
}
