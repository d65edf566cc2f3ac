//! What README.md says is true: its commands are run, its counts are counted.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use std::path::Path;
use std::process::{Command, Output};

const ROOT: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../..");

fn readme() -> String {
    std::fs::read_to_string(Path::new(ROOT).join("README.md")).unwrap()
}

fn gullet(words: &[String]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_gullet"))
        .current_dir(ROOT)
        .args(words)
        .output()
        .unwrap()
}

/// Words of a command line with plain single quotes.
fn words(line: &str) -> Vec<String> {
    let mut words = Vec::new();
    let mut word: Option<String> = None;
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '\'' => {
                quoted = !quoted;
                word.get_or_insert_default();
            }
            ' ' if !quoted => words.extend(word.take()),
            _ => word.get_or_insert_default().push(c),
        }
    }
    assert!(!quoted, "{line}");
    words.extend(word);
    words
}

#[test]
fn the_examples_of_the_command_line_print_what_the_readme_shows() {
    let text = readme();
    let mut run = 0;
    for block in text.split("```console\n").skip(1) {
        let block = block.split("```").next().unwrap();
        for example in block.split("$ ").skip(1) {
            let (line, shown) = example.split_once('\n').unwrap();
            let words = words(line);
            assert_eq!(words[0], "gullet", "{line}");
            let output = gullet(&words[1..]);
            let mut printed = String::from_utf8(output.stdout).unwrap();
            printed += &String::from_utf8(output.stderr).unwrap();
            assert_eq!(printed, shown, "{line}");
            run += 1;
        }
    }
    assert!(run >= 3);
}

#[test]
fn the_job_of_the_first_command_gives_a_card() {
    let text = readme();
    let line = text
        .lines()
        .find_map(|line| {
            line.trim()
                .strip_prefix("cargo run --release -q -p gullet-cli -- ")
        })
        .unwrap();
    let output = gullet(&words(line));
    assert_eq!(output.status.code(), Some(0));
    assert!(
        String::from_utf8(output.stdout)
            .unwrap()
            .contains("SET-UP CARD")
    );
}

#[test]
fn the_counts_of_worked_examples_and_formulas_stand_right() {
    let count = |words: &[&str]| {
        let words: Vec<String> = words.iter().map(|word| (*word).to_owned()).collect();
        let output = gullet(&words);
        serde_json::from_slice::<serde_json::Value>(&output.stdout).unwrap()
    };
    let checked = count(&["check", "--builtin", "--json"]);
    let number = |key: &str| checked[key].as_u64().unwrap();
    let all = number("passed") + number("failed") + number("marked");
    let marked = number("marked");
    let formulas = count(&["list", "formulas", "--json"]);
    let formulas = formulas["formulas"].as_array().unwrap().len();
    let flat = readme().split_whitespace().collect::<Vec<_>>().join(" ");
    for sentence in [
        format!("{formulas} formulas"),
        format!("{all} worked examples, {marked} of them marked as missed"),
    ] {
        assert!(
            flat.contains(&sentence),
            "README.md does not say: {sentence}"
        );
    }
}

#[test]
fn every_operation_and_exit_code_is_named() {
    let text = readme();
    for operation in gullet::operation::Operation::ALL {
        assert!(
            text.contains(&format!("| {} |", operation.name())),
            "{}",
            operation.name()
        );
    }
    for code in 0..=4 {
        assert!(text.contains(&format!("| {code} |")), "{code}");
    }
}

/// The blocks themselves are run: this one by the documentation tests of the core and the tests above,
/// those of Python and C by the tests of these faces.
#[test]
fn the_same_example_gives_the_same_digits_in_every_language() {
    let text = readme();
    for language in ["rust", "python", "c", "console"] {
        let blocks: Vec<&str> = text
            .split(&format!("```{language}\n"))
            .skip(1)
            .map(|rest| rest.split("```").next().unwrap())
            .collect();
        assert!(!blocks.is_empty(), "{language}");
        assert!(
            blocks
                .iter()
                .any(|block| block.contains("90 ft/min") && block.contains("1/2 in")),
            "{language}"
        );
        // What C prints stands above its block, and is compared with the others by its tests.
        if language != "c" {
            let shown = blocks.iter().any(|block| block.contains("687.55 rpm"));
            assert!(shown, "{language}");
        }
    }
    assert!(text.contains("This prints `687.55 rpm`, as the examples above do"));
}
