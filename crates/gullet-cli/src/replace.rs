//! A file that takes the place of another one, or of nothing, when it is whole.

use std::fs::{self, File, OpenOptions};
use std::io;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

/// Begins the middle part of a temporary name.
const MARK: &str = ".gullet-";
/// Ends a temporary name.
const END: &str = ".part";

/// The temporary file that an interruption has to remove.
static OPEN: Mutex<Option<PathBuf>> = Mutex::new(None);

/// A file under a temporary name in the folder of its place; dropped before it is put in place, it
/// is removed.
pub struct Replacement {
    file: Option<File>,
    temporary: PathBuf,
    path: PathBuf,
}

impl Replacement {
    /// Opens the temporary file. What a killed run left behind for the same place is removed.
    pub fn new(path: &Path) -> io::Result<Replacement> {
        remove_leftovers(path);
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        let temporary = path.with_file_name(format!(".{name}{MARK}{}{END}", std::process::id()));
        let mut options = OpenOptions::new();
        let file = options.write(true).create_new(true).open(&temporary)?;
        *open() = Some(temporary.clone());
        let replacement = Replacement {
            file: Some(file),
            temporary,
            path: path.to_owned(),
        };
        if let Some(file) = &replacement.file {
            // Tells other runs that this one lives; where a file system has no locks, they take it
            // for a leftover, and this one fails when it is put in place.
            let _ = file.try_lock();
            if let Ok(known) = fs::metadata(path) {
                file.set_permissions(known.permissions())?;
            }
        }
        Ok(replacement)
    }

    /// Another handle of the temporary file.
    pub fn handle(&self) -> io::Result<File> {
        match &self.file {
            Some(file) => file.try_clone(),
            None => Err(io::Error::from(io::ErrorKind::NotFound)),
        }
    }

    /// Puts the file in place, whole and on the disk.
    pub fn commit(mut self) -> io::Result<()> {
        if let Some(file) = &self.file {
            file.sync_all()?;
        }
        let mut open = open();
        fs::rename(&self.temporary, &self.path)?;
        *open = None;
        self.file = None;
        // The name, too, should outlive a failure of the power; not every system can say so.
        if let Some(folder) = self
            .path
            .parent()
            .filter(|folder| !folder.as_os_str().is_empty())
        {
            let _ = File::open(folder).and_then(|folder| folder.sync_all());
        }
        Ok(())
    }
}

impl Drop for Replacement {
    fn drop(&mut self) {
        if self.file.take().is_some() {
            // It may be gone already.
            let _ = fs::remove_file(&self.temporary);
            *open() = None;
        }
    }
}

fn open() -> std::sync::MutexGuard<'static, Option<PathBuf>> {
    OPEN.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Removes the temporary file of this run, if there is one, and ends the program; nothing is put in
/// place meanwhile.
pub fn abandon(code: i32) -> ! {
    let open = open();
    if let Some(temporary) = open.as_ref() {
        let _ = fs::remove_file(temporary);
    }
    std::process::exit(code)
}

/// Removes temporary files for this place that no living run holds.
fn remove_leftovers(path: &Path) {
    let Some(name) = path.file_name() else { return };
    let begin = format!(".{}{MARK}", name.to_string_lossy());
    let folder = match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    };
    let Ok(entries) = fs::read_dir(folder) else {
        return;
    };
    for entry in entries.flatten() {
        let name = entry.file_name();
        let name = name.to_string_lossy();
        let number = name
            .strip_prefix(&begin)
            .and_then(|rest| rest.strip_suffix(END));
        if !number.is_some_and(|number| number.bytes().all(|byte| byte.is_ascii_digit())) {
            continue;
        }
        let file = OpenOptions::new().write(true).open(entry.path());
        if file.is_ok_and(|file| file.try_lock().is_ok()) {
            let _ = fs::remove_file(entry.path());
        }
    }
}
