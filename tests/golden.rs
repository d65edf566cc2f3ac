//! The cards of the example jobs, letter for letter: a change of a number or a word must be meant.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::plan::JobFile;
use gullet::table::Library;
use std::fs;
use std::path::{Path, PathBuf};

/// Folders of the jobs, of the routes and of the parts.
const FOLDERS: [&str; 3] = [
    "crates/gullet-cli/jobs",
    "crates/gullet-cli/jobs/routes",
    "crates/gullet-cli/jobs/parts",
];

/// Set to write the cards anew.
const WRITE: &str = "GULLET_WRITE_GOLDEN";

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// Names of the files with an ending in a folder, without the ending, sorted.
fn stems(folder: &str, ending: &str) -> Vec<String> {
    let mut stems: Vec<String> = fs::read_dir(root().join(folder))
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|found| found == ending))
        .map(|path| path.file_stem().unwrap().to_str().unwrap().to_owned())
        .collect();
    stems.sort();
    stems
}

fn card(stem: &str) -> String {
    let text = FOLDERS
        .iter()
        .find_map(|folder| fs::read_to_string(root().join(format!("{folder}/{stem}.toml"))).ok())
        .unwrap();
    let library = Library::builtin();
    let file = JobFile::from_toml(&text, library).unwrap();
    file.card(library).unwrap().text()
}

/// The first line in which two texts differ, with its number.
fn first_difference(golden: &str, now: &str) -> Option<String> {
    let (mut golden, mut now) = (golden.lines(), now.lines());
    let mut number = 0;
    loop {
        number += 1;
        match (golden.next(), now.next()) {
            (None, None) => return None,
            (before, after) if before != after => {
                let show = |line: Option<&str>| line.unwrap_or("(end of the card)").to_owned();
                let (before, after) = (show(before), show(after));
                return Some(format!("line {number}\n  kept: {before}\n  now:  {after}"));
            }
            _ => {}
        }
    }
}

#[test]
fn every_job_has_its_golden_card() {
    let folder = root().join("tests/golden");
    let mut jobs = FOLDERS.map(|folder| stems(folder, "toml")).concat();
    jobs.sort();
    if std::env::var_os(WRITE).is_some() {
        for stem in &jobs {
            fs::write(folder.join(format!("{stem}.txt")), card(stem)).unwrap();
        }
    }
    assert!(!jobs.is_empty());
    assert_eq!(stems("tests/golden", "txt"), jobs, "one card a job");
    let mut told = String::new();
    for stem in &jobs {
        let golden = fs::read_to_string(folder.join(format!("{stem}.txt"))).unwrap();
        if let Some(difference) = first_difference(&golden, &card(stem)) {
            told += &format!("{stem}.txt, {difference}\n");
        }
    }
    assert!(
        told.is_empty(),
        "{told}where every difference is meant: {WRITE}=1 cargo test -p gullet --test golden"
    );
}

#[test]
fn a_difference_is_told_by_its_line() {
    assert_eq!(first_difference("a\nb\n", "a\nb\n"), None);
    let told = first_difference("a\n1200 rpm\n", "a\n1201 rpm\n").unwrap();
    assert!(told.contains("line 2") && told.contains("1200") && told.contains("1201"));
    assert!(first_difference("a\n", "a\nb\n").is_some());
}
