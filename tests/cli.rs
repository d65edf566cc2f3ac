//! The command line as a person or a script meets it: answers, exit codes, refusals.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use serde_json::Value;
use std::fs;
use std::io::{Read, Write};
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

#[path = "cli/card.rs"]
mod card;
#[path = "cli/check.rs"]
mod check;
#[path = "cli/cost.rs"]
mod cost;
#[path = "cli/fit.rs"]
mod fit;
#[path = "cli/spreads.rs"]
mod spreads;
#[path = "cli/study.rs"]
mod study;
#[path = "cli/study_operations.rs"]
mod study_operations;
#[path = "cli/tap_drill.rs"]
mod tap_drill;

const ROOT: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../..");

fn gullet() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_gullet"));
    command.current_dir(ROOT);
    command
}

fn run(words: &[&str]) -> Output {
    gullet().args(words).output().unwrap()
}

fn run_with_input(words: &[&str], input: &[u8]) -> Output {
    let mut child = gullet()
        .args(words)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    // Refused early, the command may close its input before all of it is written.
    let _ = child.stdin.take().unwrap().write_all(input);
    child.wait_with_output().unwrap()
}

#[track_caller]
fn out(words: &[&str]) -> String {
    let output = run(words);
    let errors = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(0), "{words:?}: {errors}");
    assert_eq!(errors, "", "{words:?}");
    String::from_utf8(output.stdout).unwrap()
}

#[track_caller]
fn json(words: &[&str]) -> Value {
    serde_json::from_str(&out(words)).unwrap()
}

/// What is told on standard error, with the exit code; nothing may stand on standard output.
#[track_caller]
fn refusal(words: &[&str]) -> (i32, Vec<String>) {
    let output = run(words);
    assert_eq!(String::from_utf8(output.stdout).unwrap(), "", "{words:?}");
    let lines: Vec<String> = String::from_utf8(output.stderr)
        .unwrap()
        .lines()
        .map(str::to_owned)
        .collect();
    assert!(!lines.is_empty(), "{words:?}");
    for line in &lines {
        assert!(line.starts_with("error: "), "{words:?}: {line}");
    }
    (output.status.code().unwrap(), lines)
}

/// A folder of its own for one test, emptied before use.
fn folder(test: &str) -> PathBuf {
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(test);
    let _ = fs::remove_dir_all(&path);
    fs::create_dir_all(&path).unwrap();
    path
}

const BRACKET: &str = "crates/gullet-cli/jobs/bearing_bracket.toml";

#[test]
fn evaluate_prints_the_bare_number() {
    let words = [
        "evaluate",
        "table_feed",
        "feed_per_tooth=0.1 mm",
        "teeth=4",
        "spindle_speed=1000 rpm",
    ];
    let si: f64 = out(&words).trim().parse().unwrap();
    assert!((si - 0.4 / 60.0).abs() < 1e-17);
    let mut in_unit = words.to_vec();
    in_unit.extend(["--unit", "mm/min"]);
    assert_eq!(out(&in_unit), "400\n");
    in_unit.push("--json");
    let answer = json(&in_unit);
    assert_eq!(
        (&answer["unit"], &answer["value"]),
        (&"mm/min".into(), &400.0.into())
    );
    assert_eq!(answer["si"].as_f64(), Some(si));
    let pasted = "feed_per_tooth=0.1 mm; teeth=4; spindle_speed=1000 rpm";
    assert_eq!(
        out(&["evaluate", "table_feed", pasted, "--unit=mm/min"]),
        "400\n"
    );
    let (code, lines) = refusal(&[
        words[0], words[1], words[2], words[3], words[4], "--unit", "kg",
    ]);
    assert_eq!(code, 2);
    assert!(lines[0].contains("mm/min"), "{lines:?}");
}

#[test]
fn explain_describes_and_works_through() {
    let described = out(&["explain", "max_chip_thickness"]);
    for part in [
        "h_max",
        "feed_per_tooth",
        "radial_depth <= diameter",
        "default",
        "source",
        "example",
    ] {
        assert!(described.contains(part), "{part} in {described}");
    }
    let words = [
        "explain",
        "table_feed",
        "feed_per_tooth=0.004 in",
        "teeth=4",
        "spindle_speed=800 rpm",
    ];
    let metric = out(&words);
    assert!(
        metric.contains("= 0.1016 mm x 4 x 800 rpm = 325.12 mm/min"),
        "{metric}"
    );
    let mut inch = words.to_vec();
    inch.extend(["--units", "inch"]);
    assert!(out(&inch).contains("= 12.8 in/min"));
    inch.push("--json");
    let step = json(&inch);
    assert_eq!(step["result"]["text"], "12.8 in/min");
    assert_eq!(step["arguments"].as_array().unwrap().len(), 3);
}

#[test]
fn every_formula_is_listed_described_and_evaluated() {
    let formulas = json(&["list", "formulas", "--json"]);
    let formulas = formulas["formulas"].as_array().unwrap();
    assert_eq!(formulas.len(), out(&["list", "formulas"]).lines().count());
    for formula in formulas {
        let name = formula["formula"].as_str().unwrap();
        assert_eq!(&json(&["explain", name, "--json"]), formula);
        let example = formula["example"]["arguments"].as_str().unwrap();
        json(&["evaluate", name, example, "--json"]);
        assert!(out(&["explain", name, example]).contains(formula["source"].as_str().unwrap()));
    }
}

#[test]
fn wrong_arguments_are_refused_all_at_once() {
    let (code, lines) = refusal(&[
        "evaluate",
        "spindle_speed",
        "cutting_speed=5",
        "diametr=1 mm",
        "stray",
    ]);
    assert_eq!((code, lines.len()), (2, 4), "{lines:?}");
    for part in ["stray", "unit_missing", "diameter?", "missing: diameter"] {
        assert!(
            lines.iter().any(|line| line.contains(part)),
            "{part} in {lines:?}"
        );
    }
    let (code, lines) = refusal(&["evaluate", "spindle_sped", "diameter=1 mm"]);
    assert_eq!(code, 2);
    assert!(
        lines[0].contains("did you mean spindle_speed?"),
        "{lines:?}"
    );
    let (code, lines) = refusal(&[
        "evaluate",
        "spindle_speed",
        "cutting_speed=9 m/min",
        "diameter=0 mm",
    ]);
    assert_eq!(code, 2);
    assert!(
        lines[0].starts_with("error: out_of_range: diameter = 0 mm"),
        "{lines:?}"
    );
    let (_, lines) = refusal(&["evaluate", "spindle_speed", "diameter=a\nb\u{1b}[2J"]);
    assert_eq!(
        lines.len(),
        2,
        "a line each, whatever the input held: {lines:?}"
    );
}

#[test]
fn wrong_command_lines_are_refused_with_the_nearest_right_word() {
    for (words, part) in [
        (&[][..], "missing: command"),
        (&["crad"], "did you mean card?"),
        (&["--versoin"], "did you mean --version?"),
        (&["card"], "missing: JOB"),
        (&["card", "a.toml", "b.toml"], "b.toml"),
        (
            &["card", BRACKET, "--fromat", "json"],
            "did you mean --format?",
        ),
        (&["card", BRACKET, "--format", "htlm"], "did you mean html?"),
        (&["card", BRACKET, "--format"], "text, json, html"),
        (&["card", BRACKET, "--steps"], "inconsistent"),
        (
            &["card", BRACKET, "--units", "inch", "--units", "metric"],
            "duplicate",
        ),
        (&["list"], "materials"),
        (&["list", "material"], "did you mean materials?"),
        (&["check"], "--builtin"),
        (&["explain"], "missing: FORMULA"),
        (&["schema", "x"], "x"),
        (&["help", "chek"], "did you mean check?"),
    ] {
        let (code, lines) = refusal(words);
        assert_eq!(code, 2, "{words:?}");
        assert!(lines[0].contains(part), "{words:?}: {lines:?}");
    }
}

#[test]
fn problems_are_json_where_json_is_asked_for() {
    for words in [
        &["evaluate", "spindle_sped", "--json"][..],
        &["crad", "--json"],
        &["list", "--jsn", "--json"],
        &["card", "no_such_job.toml", "--format", "json"],
    ] {
        let output = run(words);
        let errors: Value = serde_json::from_slice(&output.stderr).unwrap();
        let first = errors["errors"][0].as_object().unwrap();
        let keys: Vec<&String> = first.keys().collect();
        assert_eq!(
            keys,
            [
                "code",
                "number",
                "parameter",
                "value",
                "admissible",
                "remedy"
            ]
        );
        assert!(first["number"].as_i64().unwrap() >= 10);
    }
}

#[test]
fn lists_hold_what_the_card_can_be_made_with() {
    for (thing, one) in [
        ("materials", "6061"),
        ("machines", "manual-knee-mill"),
        ("practices", "training"),
        ("formulas", "spindle_speed"),
        ("sources", "Kalpakjian"),
        ("units", "rotational_speed"),
        ("operations", "slotting"),
    ] {
        let text = out(&["list", thing]);
        assert!(text.contains(one), "{thing}");
        let list = json(&["list", thing, "--json"]);
        assert_eq!(
            list[thing].as_array().unwrap().len(),
            text.lines().count(),
            "{thing}"
        );
    }
}

#[test]
fn schema_help_and_version_answer() {
    let schema: Value = serde_json::from_str(&out(&["schema"])).unwrap();
    assert!(schema["properties"]["cutter"].is_object());
    let part: Value = serde_json::from_str(&out(&["schema", "part"])).unwrap();
    assert!(part["properties"]["operation"].is_object());
    let route: Value = serde_json::from_str(&out(&["schema", "route"])).unwrap();
    assert!(route["properties"]["end_cutter"].is_object());
    let overview = out(&["help"]);
    assert_eq!(overview, out(&["--help"]));
    for command in [
        "card", "explain", "evaluate", "check", "list", "schema", "help",
    ] {
        assert!(overview.contains(&format!("\n  {command}")), "{command}");
        let page = out(&["help", command]);
        assert!(page.starts_with(&format!("gullet {command}")), "{command}");
        assert_eq!(page, out(&[command, "--help"]));
    }
    assert_eq!(
        out(&["--version"]),
        format!("gullet {}\n", env!("CARGO_PKG_VERSION"))
    );
}

#[test]
fn a_reader_that_goes_away_ends_the_command_quietly() {
    let words = ["list", "formulas", "--json"];
    // More than a pipe holds, so that writing goes on after the reader has gone.
    assert!(out(&words).len() > 80_000);
    let mut child = gullet()
        .args(words)
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    let mut first = [0; 10];
    let mut reader = child.stdout.take().unwrap();
    reader.read_exact(&mut first).unwrap();
    drop(reader);
    let output = child.wait_with_output().unwrap();
    assert_eq!(output.status.code(), Some(0));
    assert_eq!(String::from_utf8(output.stderr).unwrap(), "");
}

#[cfg(target_os = "linux")]
#[test]
fn output_that_cannot_be_written_exits_with_3() {
    let full = fs::OpenOptions::new()
        .write(true)
        .open("/dev/full")
        .unwrap();
    let output = gullet()
        .args(["list", "units"])
        .stdout(full)
        .output()
        .unwrap();
    assert_eq!(output.status.code(), Some(3));
    assert!(
        String::from_utf8(output.stderr)
            .unwrap()
            .starts_with("error: file")
    );
    let words = ["card", BRACKET, "--output", "/dev/full"];
    assert_eq!(run(&words).status.code(), Some(3));
}
