//! Route files: read, refused with every problem, described by their schema.

use super::{FILE, block, library, read, refused};
use gullet::Code;
use gullet::plan::{JobFile, JobFileCard, SquaredBlock, route_reference, route_schema};
use gullet::quantity::si;

/// The file with a line in the place of another.
fn edited(from: &str, to: &str) -> String {
    assert!(FILE.contains(from), "{from}");
    FILE.replacen(from, to, 1)
}

#[test]
fn toml_and_json_give_the_same_block() {
    let json: serde_json::Value = toml::from_str(FILE).unwrap();
    let json = json.to_string();
    assert_eq!(SquaredBlock::from_json(&json, library()).unwrap(), block());
    assert!(matches!(
        JobFile::from_json(&json, library()),
        Ok(JobFile::SquaredBlock(_))
    ));
}

#[test]
fn bad_files_get_their_error() {
    let rows = [
        (
            "squared-block\"",
            "squared-bloc\"",
            Code::UnknownName,
            "route",
            "squared-block",
        ),
        (
            "sawn = [\"left\"",
            "sawn = [\"lefd\"",
            Code::UnknownName,
            "blank.sawn",
            "did you mean left?",
        ),
        (
            "\"left\", \"right\"",
            "\"left\", \"left\"",
            Code::Duplicate,
            "blank.sawn",
            "left",
        ),
        (
            "sawn = [\"left\", \"right\"]",
            "sawn = \"left\"",
            Code::WrongType,
            "blank.sawn",
            "a list",
        ),
        (
            "height = \"1.150 in\"",
            "height = \"1.030 in\"",
            Code::Inconsistent,
            "blank.height",
            "1.06 in",
        ),
        (
            "length = \"3.300 in\"",
            "length = \"3.230 in\"",
            Code::Inconsistent,
            "blank.length",
            "at least 3.24 in",
        ),
        (
            "tolerance = \"0.004 in\"",
            "tolerance = \"0 in\"",
            Code::OutOfRange,
            "part.tolerance",
            "above 0 in",
        ),
        (
            "tolerance = \"0.004 in\"",
            "",
            Code::Missing,
            "part.tolerance",
            "tolerance",
        ),
        (
            "[part]",
            "[prat]",
            Code::UnknownName,
            "prat",
            "did you mean part?",
        ),
        (
            "jaw_height = \"1-3/4 in\"",
            "",
            Code::Missing,
            "hold.jaw_height",
            "jaw_height",
        ),
        (
            "jaw_height = ",
            "grip_depth = \"1 in\"\njaw_height = ",
            Code::UnknownName,
            "hold.grip_depth",
            "",
        ),
        (
            "round_bar = \"1/2 in\"",
            "round_bar = \"-1/2 in\"",
            Code::OutOfRange,
            "hold.round_bar",
            "above 0 in",
        ),
        (
            "round_bar = \"1/2 in\"",
            "round_bar = 12",
            Code::UnitMissing,
            "hold.round_bar",
            "unit",
        ),
        (
            "saw_mark_depth = \"0.020 in\"",
            "saw_mark_depth = \"2 in\"",
            Code::OutOfRange,
            "blank.saw_mark_depth",
            "at most",
        ),
        (
            "45 money/h",
            "-45 money/h",
            Code::OutOfRange,
            "rates.machine_rate",
            "at least 0",
        ),
        (
            "45 money/h",
            "45",
            Code::UnitMissing,
            "rates.machine_rate",
            "money/h",
        ),
        (
            "[rates]",
            "[cut]\noperation = \"slotting\"\n[rates]",
            Code::UnknownName,
            "cut",
            "",
        ),
        (
            "diameter = \"3/4 in\"",
            "diameter = \"0 in\"",
            Code::OutOfRange,
            "cutter.diameter",
            "above 0 in",
        ),
    ];
    let mut faults = Vec::new();
    for (from, to, code, parameter, text) in rows {
        let Err(error) = read(&edited(from, to)) else {
            faults.push(format!("{to}: accepted"));
            continue;
        };
        let hit = error.problems().iter().any(|problem| {
            problem.code == code
                && problem.parameter == parameter
                && problem.to_string().contains(text)
        });
        if !hit || error.problems().len() > 2 {
            faults.push(format!("{to}: {error}"));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n\n"));
}

#[test]
fn every_problem_is_told_at_once() {
    let text = edited("teeth = 4", "teath = 4").replacen("1.150 in", "0 in", 1);
    let text = text.replacen("45 money/h", "-1 money/h", 1);
    let error = read(&text).unwrap_err();
    let named: Vec<&str> = error
        .problems()
        .iter()
        .map(|p| p.parameter.as_str())
        .collect();
    for parameter in [
        "cutter.teath",
        "cutter.teeth",
        "blank.height",
        "rates.machine_rate",
    ] {
        assert!(named.contains(&parameter), "{parameter} in {error}");
    }
}

#[test]
fn numbers_that_are_none_are_refused_without_a_panic() {
    let edits: [fn(&mut SquaredBlock); 9] = [
        |b| b.sawn.length = si(f64::NAN),
        |b| b.finished.width = si(f64::INFINITY),
        |b| b.saw_marks = si(f64::NAN),
        |b| b.tolerance = si(-1.0),
        |b| b.vise.hold.jaw_height = None,
        |b| b.vise.hold.parallels = vec![si(f64::NAN)],
        |b| b.rate = Some(si(f64::INFINITY)),
        |b| b.practice.jaw_clearance = si(f64::NAN),
        |b| b.cutter.diameter = si(0.0),
    ];
    for edit in edits {
        let mut block = block();
        edit(&mut block);
        let error = refused(&block);
        assert!(!error.to_string().is_empty());
    }
}

#[test]
fn damaged_files_never_panic() {
    for (at, _) in FILE.char_indices().step_by(3) {
        let _ = read(&FILE[..at]);
        let mut less = FILE.to_owned();
        less.remove(at);
        let _ = read(&less);
    }
}

#[test]
fn the_committed_schema_is_the_generated_one() {
    let path = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../reference-data/route.schema.json"
    );
    if std::env::var_os("GULLET_WRITE_SCHEMA").is_some() {
        std::fs::write(path, route_schema()).unwrap();
    }
    assert!(
        std::fs::read_to_string(path).unwrap() == route_schema(),
        "reference-data/route.schema.json is not up to date: run this test with GULLET_WRITE_SCHEMA=1"
    );
    let schema: serde_json::Value = serde_json::from_str(&route_schema()).unwrap();
    let hold = &schema["properties"]["hold"]["properties"];
    assert!(hold["jaw_opening"].is_object() && hold["grip_depth"].is_null());
    assert!(schema["properties"]["end_cutter"]["properties"]["teeth"].is_object());
    assert!(route_reference().contains("| `saw_mark_depth` |"));
}

#[test]
fn a_job_is_still_a_job() {
    let text = include_str!("../../crates/gullet-cli/jobs/gib_strip.toml");
    let file = JobFile::from_toml(text, library()).unwrap();
    assert!(matches!(file, JobFile::Job(_)));
    assert!(matches!(file.card(library()), Ok(JobFileCard::Job(_))));
}

/// The examples of the schema are values that the reader takes.
#[test]
fn every_example_is_read() {
    let schema: serde_json::Value = serde_json::from_str(&route_schema()).unwrap();
    let good: serde_json::Value = toml::from_str(FILE).unwrap();
    let mut keys = 0;
    for (name, section) in schema["properties"].as_object().unwrap() {
        let Some(properties) = section["properties"].as_object() else {
            continue;
        };
        assert_eq!(section["additionalProperties"], false, "{name}");
        for (key, property) in properties {
            keys += 1;
            let mut file = good.clone();
            file[name][key] = property["examples"][0].clone();
            let path = format!("{name}.{key}");
            let Err(error) = SquaredBlock::from_json(&file.to_string(), library()) else {
                continue;
            };
            // An example may contradict the rest of this file, never be unreadable.
            for problem in error.problems() {
                let readable = matches!(problem.code, Code::Inconsistent | Code::Missing);
                assert!(problem.parameter != path || readable, "{path}: {problem}");
            }
        }
    }
    assert!(keys > 90, "{keys} keys");
    assert_eq!(
        schema["required"],
        serde_json::json!([
            "route", "material", "blank", "part", "cutter", "machine", "hold"
        ])
    );
}
