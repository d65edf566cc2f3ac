//! Status codes, from the core's codes of errors and doubts.

use crate::{HEAD, Outcome, crate_directory, read};
use gullet::Code;

/// What only this interface can say: number, name, meaning.
const OWN: &[(i32, &str, &str)] = &[
    (-100, "null_pointer", "A pointer is NULL that must not be."),
    (
        -101,
        "misaligned",
        "A pointer is not aligned for what it points to.",
    ),
    (
        -102,
        "too_large",
        "A count of values or bytes is more than memory can hold.",
    ),
    (
        -103,
        "overlap",
        "Memory that is written to overlaps other memory of the call.",
    ),
    (
        -104,
        "buffer_too_short",
        "A buffer is too short; the error and `needed_out` say how long it must be.",
    ),
    (
        -105,
        "struct_size",
        "The struct_size of a struct is not set, or of a version that is not known.",
    ),
    (-106, "text_encoding", "Text is not UTF-8."),
    (
        -107,
        "arrow_data",
        "Arrow data contradict their schema, or hold text that is not UTF-8, or are spent.",
    ),
    (-120, "panic", "A fault of the library; please report it."),
    (
        100,
        "rows_refused",
        "Some rows have no result; each has its own status.",
    ),
];

/// A variant of an enum of the core: its meaning, its name in lower case, its number.
pub struct Variant {
    pub meaning: String,
    pub name: String,
    pub number: i32,
}

/// The variants of an enum in a source file of the core, with their doc comments.
pub fn variants(file: &str, head: &str) -> Outcome<Vec<Variant>> {
    let text = read(&crate_directory().join("../gullet/src").join(file))?;
    let body = text
        .split_once(head)
        .and_then(|(_, rest)| rest.split_once("\n}"))
        .map(|(body, _)| body)
        .ok_or_else(|| format!("{file} has no {head}"))?;
    let mut variants = Vec::new();
    let mut meaning = String::new();
    for line in body.lines().map(str::trim) {
        if let Some(words) = line.strip_prefix("///") {
            meaning = format!("{meaning} {}", words.trim()).trim().to_owned();
        } else if let Some((name, number)) = line.trim_end_matches(',').split_once(" = ") {
            let (number, _) = number.split_once(',').unwrap_or((number, ""));
            let number = number.parse().map_err(|_| format!("{file}: {line}"))?;
            let name = snake(name);
            let meaning = core::mem::take(&mut meaning);
            variants.push(Variant {
                meaning,
                name,
                number,
            });
        }
    }
    Ok(variants)
}

fn snake(name: &str) -> String {
    let mut snake = String::new();
    for c in name.chars() {
        if c.is_ascii_uppercase() && !snake.is_empty() {
            snake.push('_');
        }
        snake.push(c.to_ascii_lowercase());
    }
    snake
}

/// Every error and every doubt of the core.
fn core_codes() -> Outcome<(Vec<Variant>, Vec<Variant>)> {
    let errors = variants("error.rs", "pub enum Code {")?;
    let known: Vec<_> = Code::ALL
        .iter()
        .map(|c| (c.name().to_owned(), c.number()))
        .collect();
    let found: Vec<_> = errors.iter().map(|v| (v.name.clone(), v.number)).collect();
    if known != found {
        return Err(format!("error.rs says {found:?}, the core {known:?}"));
    }
    Ok((errors, variants("error.rs", "pub enum WarningCode {")?))
}

/// The constants and the function that names them.
pub fn rust() -> Outcome<String> {
    let (errors, doubts) = core_codes()?;
    let mut text = format!(
        "{HEAD}use core::ffi::CStr;\n\n\
        /// What came of a call: 0 done; below 0 an error, and nothing is written; above 0 done, with\n\
        /// doubts. Numbers are never used anew.\n\
        pub type gullet_status = i32;\n\n\
        /// Done.\npub const GULLET_OK: i32 = 0;\n"
    );
    let mut names = vec![("GULLET_OK".to_owned(), "ok".to_owned())];
    let mut add = |kind: &str, meaning: &str, name: &str, number: i32| {
        let constant = format!("GULLET_{kind}_{}", name.to_uppercase());
        text += &format!("/// {meaning}\npub const {constant}: i32 = {number};\n");
        names.push((constant, name.to_owned()));
    };
    for error in &errors {
        add("ERROR", &error.meaning, &error.name, -error.number);
    }
    for doubt in &doubts {
        add("WARNING", &doubt.meaning, &doubt.name, doubt.number);
    }
    for (number, name, meaning) in OWN {
        let kind = if *number < 0 { "ERROR" } else { "WARNING" };
        add(kind, meaning, name, *number);
    }
    text += "\npub(crate) fn status_name(status: i32) -> &'static CStr {\n    match status {\n";
    for (constant, name) in &names {
        text += &format!("        {constant} => c\"{name}\",\n");
    }
    text += "        _ => c\"unknown\",\n    }\n}\n";
    Ok(text)
}
