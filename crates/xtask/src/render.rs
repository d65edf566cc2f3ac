//! The card as a browser prints it: one sheet of paper, and a picture.

use crate::gates::Verdict::{self, Failed, Passed, Skipped};
use crate::process::{quiet, root, within, works};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

/// Width and height of an A4 sheet in CSS pixels.
const SHEET: (u32, u32) = (794, 1123);

/// A page without text and lines compresses to less than this.
const SMALLEST_PICTURE: u64 = 20_000;

const FLAGS: &[&str] = &[
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--hide-scrollbars",
];

/// Set to keep the gate from installing a browser.
const NO_INSTALL: &str = "GULLET_NO_INSTALL";

/// Renders the card of every job into a folder and checks the sheets.
pub fn render(gullet: &Path, folder: &Path) -> Verdict {
    let browser = match browser() {
        Ok(browser) => browser,
        Err(reason) => return Skipped(format!("no browser: {reason}")),
    };
    match all(gullet, &browser, &folder.join("render")) {
        Ok(done) => Passed(done),
        Err(error) => Failed(error),
    }
}

fn all(gullet: &Path, browser: &str, folder: &Path) -> Result<String, String> {
    let failed = |error: std::io::Error| error.to_string();
    if folder.exists() {
        fs::remove_dir_all(folder).map_err(failed)?;
    }
    fs::create_dir_all(folder).map_err(failed)?;
    let jobs_folder = root().join("crates/gullet-cli/jobs");
    let mut jobs: Vec<PathBuf> = Vec::new();
    for folder in [
        jobs_folder.clone(),
        jobs_folder.join("routes"),
        jobs_folder.join("parts"),
    ] {
        let files = fs::read_dir(folder).map_err(failed)?;
        jobs.extend(
            files
                .filter_map(|entry| entry.ok().map(|entry| entry.path()))
                .filter(|path| path.extension().is_some_and(|ending| ending == "toml")),
        );
    }
    jobs.sort();
    if jobs.is_empty() {
        return Err("no job to render".to_owned());
    }
    for job in &jobs {
        one(gullet, browser, folder, job).map_err(|error| format!("{}: {error}", job.display()))?;
    }
    Ok(format!(
        "{} jobs, routes and parts, a sheet a card, in {}",
        jobs.len(),
        folder.display()
    ))
}

fn one(gullet: &Path, browser: &str, folder: &Path, job: &Path) -> Result<(), String> {
    let stem = job
        .file_stem()
        .unwrap_or_default()
        .to_string_lossy()
        .into_owned();
    let page = folder.join(format!("{stem}.html"));
    let mut command = Command::new(gullet);
    command
        .arg("card")
        .arg(job)
        .args(["--format", "html", "--output"])
        .arg(&page);
    quiet(&mut command)?;

    let picture = folder.join(format!("{stem}.png"));
    let (width, height) = SHEET;
    let size = format!("--window-size={width},{height}");
    print(
        browser,
        folder,
        &page,
        &[&format!("--screenshot={}", picture.display()), &size],
    )?;
    let bytes = fs::read(&picture).map_err(|error| format!("no picture: {error}"))?;
    if picture_size(&bytes) != Some(SHEET) {
        return Err(format!(
            "the picture is not {width} x {height}: {:?}",
            picture_size(&bytes)
        ));
    }
    if (bytes.len() as u64) < SMALLEST_PICTURE {
        return Err(format!(
            "the picture holds next to nothing: {} bytes",
            bytes.len()
        ));
    }

    let paper = folder.join(format!("{stem}.pdf"));
    let to_paper = format!("--print-to-pdf={}", paper.display());
    print(
        browser,
        folder,
        &page,
        &[&to_paper, "--no-pdf-header-footer"],
    )?;
    let told = quiet(Command::new("pdfinfo").arg(&paper))?;
    // A job is one sheet; a route or a part a summary and one for each clamping.
    let html = fs::read_to_string(&page).map_err(|error| error.to_string())?;
    let sheets = html.matches("<h1>").count();
    match pages(&told) {
        Some(pages) if pages as usize == sheets => {}
        Some(pages) => return Err(format!("{sheets} cards take {pages} sheets")),
        None => return Err(format!("no count of sheets in: {told}")),
    }
    let words = quiet(Command::new("pdftotext").arg(&paper).arg("-"))?;
    for word in [
        "Cautions",
        "Spindle speed",
        "Stop at",
        "Where the numbers come from",
    ] {
        if !words.contains(word) {
            return Err(format!("\"{word}\" is not on the sheet"));
        }
    }
    Ok(())
}

/// Runs the browser with everything it writes kept in the folder.
fn print(browser: &str, folder: &Path, page: &Path, words: &[&str]) -> Result<(), String> {
    let own = folder.join("browser");
    fs::create_dir_all(&own).map_err(|error| error.to_string())?;
    let mut command = Command::new(browser);
    command
        .args(FLAGS)
        .arg(format!("--user-data-dir={}", own.join("profile").display()))
        .args(words)
        .arg(format!("file://{}", page.display()))
        .current_dir(&own);
    for name in ["HOME", "XDG_CONFIG_HOME", "XDG_CACHE_HOME", "TMPDIR"] {
        command.env(name, &own);
    }
    within(&mut command, Duration::from_secs(120))
}

/// Width and height of a PNG picture.
fn picture_size(bytes: &[u8]) -> Option<(u32, u32)> {
    let header = bytes.strip_prefix(b"\x89PNG\r\n\x1a\n")?.get(8..16)?;
    let (width, height) = header.split_first_chunk::<4>()?;
    Some((
        u32::from_be_bytes(*width),
        u32::from_be_bytes(*height.first_chunk()?),
    ))
}

fn pages(told: &str) -> Option<u32> {
    told.lines()
        .find_map(|line| line.strip_prefix("Pages:"))?
        .trim()
        .parse()
        .ok()
}

/// The name of a browser that starts, installed first where that is allowed.
fn browser() -> Result<String, String> {
    if let Some(name) = installed() {
        return Ok(name);
    }
    if std::env::var_os(NO_INSTALL).is_some() {
        return Err(format!("{NO_INSTALL} is set"));
    }
    let root_user = quiet(Command::new("id").arg("-u")).is_ok_and(|id| id.trim() == "0");
    if !root_user {
        return Err("install chromium and poppler-utils".to_owned());
    }
    println!("installing chromium and poppler-utils");
    let apt = |words: &[&str]| {
        let mut command = Command::new("apt-get");
        command.args(words).env("DEBIAN_FRONTEND", "noninteractive");
        within(&mut command, Duration::from_secs(600))
    };
    // An old list of packages may still do.
    let _ = apt(&["update", "-q"]);
    apt(&[
        "install",
        "-y",
        "-q",
        "--no-install-recommends",
        "chromium",
        "poppler-utils",
        "fonts-dejavu-core",
    ])?;
    installed().ok_or_else(|| "chromium does not start".to_owned())
}

fn installed() -> Option<String> {
    // These two print their version on the error stream and end well.
    let reads = ["pdfinfo", "pdftotext"]
        .iter()
        .all(|name| works(Command::new(name).arg("-v")));
    ["chromium", "chromium-browser"]
        .into_iter()
        .find(|name| reads && works(Command::new(name).arg("--version")))
        .map(str::to_owned)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_and_counts_are_read() {
        let mut png = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR".to_vec();
        png.extend([0, 0, 3, 26, 0, 0, 4, 99]);
        assert_eq!(picture_size(&png), Some(SHEET));
        assert_eq!(picture_size(b"\x89PNG"), None);
        assert_eq!(pages("Title: x\nPages:           2\n"), Some(2));
        assert_eq!(pages("Pages: none"), None);
    }
}
