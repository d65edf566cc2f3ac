//! Handles of the parts of a set-up, one a section of a job file that can be read alone.

use crate::{HEAD, Outcome};
use gullet::plan::Part;

/// What a section describes.
fn meaning(section: &str) -> &'static str {
    match section {
        "material" => "work material",
        "blank" => "blank",
        "cutter" => "cutter",
        "machine" => "machine",
        "hold" => "vise",
        "practice" => "practice of a shop",
        _ => "part of a set-up",
    }
}

/// An example of the keys.
fn example(section: &str) -> &'static str {
    match section {
        "material" => r#"{"id": "6061"}"#,
        "blank" => r#"{"length": "3 in", "width": "50 mm", "height": "1 in"}"#,
        "machine" => r#"{"base": "manual-knee-mill"}"#,
        "practice" => r#"{"base": "training"}"#,
        "hold" => r#"{"clamping_force": "12 kN", "grip_depth": "1/2 in"}"#,
        _ => {
            r#"{"form": "square", "material": "HSS", "diameter": "1/2 in", "teeth": 2, "flute_length": "1 in", "stick_out": "1.5 in"}"#
        }
    }
}

pub fn rust() -> Outcome<String> {
    let mut text = format!(
        "{HEAD}use super::status::gullet_status;\nuse crate::guard::guard;\n\
        use crate::memory::{{Opaque, held}};\nuse crate::model::{{gullet_library, part_json, part_new, release}};\n\
        use core::ffi::c_char;\nuse gullet::plan::Part;\n"
    );
    for section in Part::SECTIONS {
        let (meaning, example) = (meaning(section), example(section));
        text += &format!(
            r#"
/// A {meaning}. Read-only after it is made: any number of threads may use it at once.
pub struct gullet_{section} {{
    _private: (),
}}

impl Opaque for gullet_{section} {{
    type Inner = Part;
}}

/// A {meaning} from the keys of the section `{section}` of a job file, as a JSON object:
/// {example}
/// `library` NULL stands for the built-in tables. Free it with gullet_{section}_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_{section}_new(
    library: *const gullet_library,
    keys_json: *const c_char,
    keys_length: usize,
    {section}_out: *mut *mut gullet_{section},
) -> gullet_status {{
    // SAFETY: the caller's promise in the header.
    unsafe {{ part_new("{section}", library, keys_json, keys_length, {section}_out) }}
}}

/// The keys of a {meaning} as JSON; reading them gives the same one, bit for bit. See "Text out" for
/// the buffer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_{section}_json(
    {section}: *const gullet_{section},
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {{
    // SAFETY: the caller's promise in the header.
    guard(|| unsafe {{
        part_json(held({section}, "{section}"), buffer, capacity, needed_out)
    }})
}}

/// Frees a {meaning}; NULL is left alone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_{section}_free({section}: *mut gullet_{section}) {{
    // SAFETY: the caller's promise in the header.
    unsafe {{ release({section}) }}
}}
"#
        );
    }
    Ok(text)
}
