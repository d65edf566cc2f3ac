//! Files and standard streams: read whole, written whole or not at all.

use crate::replace::Replacement;
use gullet::error::{Code, Problem};
use std::fs::{self, File, OpenOptions};
use std::io::{self, ErrorKind, Read, Write};
use std::path::{Path, PathBuf};

/// Larger files are refused: no job, overlay or file of examples comes near.
const LARGEST: u64 = 64 << 20;

/// How much of the output reached its reader.
pub enum Printed {
    /// All of it.
    Whole,
    /// The reader closed the pipe before the end.
    ReaderGone,
}

/// Writes to standard output.
pub fn print(text: &str) -> Result<Printed, Problem> {
    let mut out = io::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Ok(()) => Ok(Printed::Whole),
        Err(error) if error.kind() == ErrorKind::BrokenPipe => Ok(Printed::ReaderGone),
        Err(error) => Err(problem("standard output", &error, "write elsewhere")),
    }
}

/// The text of a file, or of standard input for `-`.
pub fn read(name: &str) -> Result<String, Problem> {
    let bytes = read_bytes(name)?;
    match String::from_utf8(bytes) {
        // Some editors begin a file with a byte order mark.
        Ok(text) => Ok(text
            .strip_prefix('\u{feff}')
            .map_or(text.clone(), str::to_owned)),
        Err(error) => {
            let good = error
                .as_bytes()
                .iter()
                .take(error.utf8_error().valid_up_to());
            let line = 1 + good.filter(|byte| **byte == b'\n').count();
            Err(Problem::new(
                Code::Syntax,
                format!("{}:{line}", shown(name)),
                "bytes that are no text",
                "text in UTF-8",
                "save the file as UTF-8",
            ))
        }
    }
}

/// The bytes of a file, or of standard input for `-`.
pub fn read_bytes(name: &str) -> Result<Vec<u8>, Problem> {
    let failed = |error: io::Error| problem(name, &error, "give a file that can be read");
    let mut bytes = Vec::new();
    let source: Box<dyn Read> = if name == "-" {
        Box::new(io::stdin().lock())
    } else {
        Box::new(File::open(name).map_err(failed)?)
    };
    source
        .take(LARGEST + 1)
        .read_to_end(&mut bytes)
        .map_err(failed)?;
    if bytes.len() as u64 > LARGEST {
        return Err(Problem::new(
            Code::File,
            shown(name),
            "larger",
            "at most 64 MiB",
            "give the right file",
        ));
    }
    Ok(bytes)
}

/// Writes a file so that it holds all of the text or stays as it was.
pub fn write(name: &str, text: &str) -> Result<(), Problem> {
    let failed = |error: io::Error| problem(name, &error, "give a place that can be written to");
    // A link keeps pointing to its file, whose content is replaced.
    let path = fs::canonicalize(name).unwrap_or_else(|_| PathBuf::from(name));
    match fs::metadata(&path) {
        Ok(known) if known.is_dir() => {
            return Err(failed(io::Error::from(ErrorKind::IsADirectory)));
        }
        // A device or pipe is written to, never replaced.
        Ok(known) if !known.is_file() => {
            let mut device = OpenOptions::new().write(true).open(&path).map_err(failed)?;
            return device.write_all(text.as_bytes()).map_err(failed);
        }
        _ => {}
    }
    let replaced = Replacement::new(&path).and_then(|replacement| {
        replacement.handle()?.write_all(text.as_bytes())?;
        replacement.commit()
    });
    replaced.map_err(failed)
}

/// Whether a name ends in a dot and this ending, whatever its case.
pub fn has_ending(name: &str, ending: &str) -> bool {
    Path::new(name)
        .extension()
        .is_some_and(|found| found.eq_ignore_ascii_case(ending))
}

/// What a file is called in a message.
pub fn shown(name: &str) -> &str {
    if name == "-" { "standard input" } else { name }
}

/// A file that cannot be used.
pub fn problem(name: &str, error: &io::Error, remedy: &str) -> Problem {
    Problem::new(Code::File, shown(name), error.to_string(), "", remedy)
}

/// A file that cannot be written; of a full disk, what to do.
pub fn unwritable(name: &str, error: &io::Error) -> Problem {
    let remedy = match error.kind() {
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded => {
            "make room on the disk, or write elsewhere; what was there before is untouched"
        }
        _ => "give a place that can be written to",
    };
    problem(name, error, remedy)
}
