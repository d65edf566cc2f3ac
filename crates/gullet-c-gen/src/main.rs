//! Writes what follows from the catalogue and the core's lists: the generated part of the crate
//! `gullet-c`, its header and the list of its exported names.
//!
//! `gullet-c-gen` writes; `gullet-c-gen --check` says what it would change, and changes nothing;
//! `gullet-c-gen --test-table FILE` writes a C table of all formulas for the tests.

#![forbid(unsafe_code)]

mod formulas;
mod header;
mod parts;
mod records;
mod status;
mod studies;
mod test_table;
mod unit;

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

type Outcome<T> = Result<T, String>;

/// What stands at the head of each generated Rust file.
const HEAD: &str = "// Written by gullet-c-gen: do not edit.\n";

fn crate_directory() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../gullet-c")
}

fn read(path: &Path) -> Outcome<String> {
    std::fs::read_to_string(path).map_err(|error| format!("{}: {error}", path.display()))
}

fn write(path: &Path, text: &str) -> Outcome<()> {
    std::fs::write(path, text).map_err(|error| format!("{}: {error}", path.display()))
}

/// Every Rust file by its name in `src/generated`.
fn rust_files() -> Outcome<BTreeMap<String, String>> {
    let mut files = BTreeMap::new();
    files.insert("status.rs".to_owned(), status::rust()?);
    files.insert("parts.rs".to_owned(), parts::rust()?);
    files.insert("records.rs".to_owned(), records::rust()?);
    files.insert("studies.rs".to_owned(), studies::rust()?);
    files.extend(formulas::rust()?);
    let modules: String = files
        .keys()
        .map(|name| format!("pub(crate) mod {};\n", name.trim_end_matches(".rs")))
        .collect();
    files.insert("mod.rs".to_owned(), format!("{HEAD}{modules}"));
    Ok(files)
}

/// Writes or compares a file; whether it differs.
fn keep(path: &Path, text: &str, check: bool) -> Outcome<bool> {
    let same = read(path).is_ok_and(|found| found == text);
    if same {
        return Ok(false);
    }
    if check {
        eprintln!("{} is out of date", path.display());
    } else {
        write(path, text)?;
    }
    Ok(true)
}

fn run(check: bool) -> Outcome<bool> {
    let root = crate_directory();
    let generated = root.join("src/generated");
    std::fs::create_dir_all(&generated).map_err(|error| error.to_string())?;
    let mut changed = false;
    let files = rust_files()?;
    for (name, text) in &files {
        changed |= keep(&generated.join(name), text, check)?;
    }
    let found = std::fs::read_dir(&generated).map_err(|error| error.to_string())?;
    for file in found.flatten() {
        if !files.contains_key(&file.file_name().to_string_lossy().into_owned()) {
            eprintln!("{} belongs to nothing", file.path().display());
            if !check {
                std::fs::remove_file(file.path()).map_err(|error| error.to_string())?;
            }
            changed = true;
        }
    }
    let header = header::text(&root)?;
    changed |= keep(&root.join("include/gullet.h"), &header, check)?;
    changed |= keep(&root.join("exports.txt"), &header::exports(&header), check)?;
    Ok(changed)
}

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let outcome = match words.as_slice() {
        [] => run(false).map(|_| true),
        ["--check"] => run(true).map(|changed| !changed),
        ["--test-table", file] => {
            test_table::c().and_then(|text| write(Path::new(file), &text).map(|()| true))
        }
        _ => Err("gullet-c-gen [--check | --test-table FILE]".to_owned()),
    };
    match outcome {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => {
            eprintln!("run `cargo run -p gullet-c-gen` and commit what it writes");
            ExitCode::FAILURE
        }
        Err(error) => {
            eprintln!("{error}");
            ExitCode::FAILURE
        }
    }
}
