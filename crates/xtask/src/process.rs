//! Other programs: run with their output shown and kept, or quietly within a time.

use std::io::{BufRead, BufReader, Read, Write};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

/// The root of the repository.
pub fn root() -> PathBuf {
    let own = Path::new(env!("CARGO_MANIFEST_DIR"));
    own.ancestors().nth(2).unwrap_or(own).to_path_buf()
}

/// A command of the cargo that runs this program, at the root of the repository.
pub fn cargo(words: &[&str]) -> Command {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let mut command = Command::new(cargo);
    command
        .args(words)
        .current_dir(root())
        .env("CARGO_TERM_COLOR", "never");
    command
}

/// Whether a program can be started and says that all is well.
pub fn works(command: &mut Command) -> bool {
    command
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .is_ok_and(|status| status.success())
}

/// Runs a command, shows what it prints as it comes, and returns it with whether all went well.
pub fn shown(command: &mut Command) -> Result<(bool, String), String> {
    let mut child = command
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .map_err(|error| format!("{}: {error}", command.get_program().display()))?;
    let errors = child
        .stderr
        .take()
        .map(|pipe| std::thread::spawn(move || pass_on(pipe)));
    let mut text = child.stdout.take().map(pass_on).unwrap_or_default();
    if let Some(Ok(errors)) = errors.map(std::thread::JoinHandle::join) {
        text += &errors;
    }
    let status = child.wait().map_err(|error| error.to_string())?;
    Ok((status.success(), text))
}

fn pass_on(pipe: impl Read) -> String {
    let mut text = String::new();
    let mut reader = BufReader::new(pipe);
    let mut line = Vec::new();
    while reader
        .read_until(b'\n', &mut line)
        .is_ok_and(|read| read > 0)
    {
        let mut out = std::io::stdout().lock();
        // Where nobody reads any longer, the gates still run to their verdict.
        let _ = out.write_all(&line).and_then(|()| out.flush());
        text += &String::from_utf8_lossy(&line);
        line.clear();
    }
    text
}

/// Runs a command to its end and returns its standard output; its errors only where it fails.
pub fn quiet(command: &mut Command) -> Result<String, String> {
    let name = command.get_program().display().to_string();
    let output = command
        .stdin(Stdio::null())
        .output()
        .map_err(|error| format!("{name}: {error}"))?;
    if output.status.success() {
        Ok(String::from_utf8_lossy(&output.stdout).into_owned())
    } else {
        Err(format!(
            "{name}: {}\n{}",
            output.status,
            String::from_utf8_lossy(&output.stderr)
        ))
    }
}

/// Runs a command that might hang; ends it when its time is up.
pub fn within(command: &mut Command, time: Duration) -> Result<(), String> {
    let name = command.get_program().display().to_string();
    let mut child = command
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .map_err(|error| format!("{name}: {error}"))?;
    let start = Instant::now();
    while start.elapsed() < time {
        match child.try_wait() {
            Ok(Some(status)) if status.success() => return Ok(()),
            Ok(Some(status)) => return Err(format!("{name}: {status}")),
            Ok(None) => std::thread::sleep(Duration::from_millis(50)),
            Err(error) => return Err(format!("{name}: {error}")),
        }
    }
    // It may have ended by itself in this moment.
    let _ = child.kill();
    let _ = child.wait();
    Err(format!("{name}: not done after {} s", time.as_secs()))
}
