//! Job files: good ones, the list of bad ones, the schema.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::plan::{Job, Stock, job_reference, job_schema};
use gullet::quantity::UnitSystem;
use gullet::table::Library;
use gullet::{Code, Error};

const GOOD: &str = include_str!("data/good_job.toml");
const GOOD_JSON: &str = include_str!("data/good_job.json");
const BAD: &str = include_str!("data/bad_jobs.csv");
const SHIPPED: &[(&str, &str)] = &[
    (
        "bearing_bracket",
        include_str!("../crates/gullet-cli/jobs/bearing_bracket.toml"),
    ),
    (
        "gib_strip",
        include_str!("../crates/gullet-cli/jobs/gib_strip.toml"),
    ),
    (
        "sensor_plate",
        include_str!("../crates/gullet-cli/jobs/sensor_plate.toml"),
    ),
];

fn read(text: &str) -> Result<Job, Error> {
    Job::from_toml(text, Library::builtin())
}

fn good(text: &str) -> Job {
    read(text).unwrap_or_else(|error| panic!("{error}"))
}

fn close(value: f64, expected: f64) -> bool {
    (value - expected).abs() <= 1e-12 * expected.abs()
}

/// Applies the edits of a row: `raw: text`, or edits joined by ` && `, each `section.key = value`
/// (set or add), `- section.key` and `- [section]` (take out), `[section]` (add).
fn edited(text: &str, edits: &str) -> String {
    if let Some(raw) = edits.strip_prefix("raw: ").or(edits.strip_prefix("raw:")) {
        return raw
            .replace("\\n", "\n")
            .replace("\\r", "\r")
            .replace("\\u0000", "\0");
    }
    let mut lines: Vec<String> = text.lines().map(str::to_owned).collect();
    let bounds = |lines: &[String], section: &str| {
        let header = format!("[{section}]");
        let start = if section.is_empty() {
            0
        } else {
            1 + lines.iter().position(|line| *line == header)?
        };
        let length = lines[start..].iter().position(|line| line.starts_with('['));
        Some((start, length.map_or(lines.len(), |length| start + length)))
    };
    for edit in edits.split(" && ") {
        let (remove, edit) = match edit.strip_prefix("- ") {
            Some(edit) => (true, edit),
            None => (false, edit),
        };
        if edit.starts_with('[') {
            if remove {
                let (start, end) = bounds(&lines, edit.trim_matches(['[', ']'])).expect(edit);
                lines.drain(start - 1..end);
            } else {
                lines.push(edit.to_owned());
            }
            continue;
        }
        let (path, value) = edit.split_once(" = ").unwrap_or((edit, ""));
        let (section, key) = path.split_once('.').unwrap_or(("", path));
        let (start, end) = bounds(&lines, section).expect(path);
        let begins = format!("{key} = ");
        let at = (start..end).find(|at| lines[*at].starts_with(&begins));
        match (at, remove) {
            (Some(at), true) => drop(lines.remove(at)),
            (Some(at), false) => lines[at] = format!("{key} = {value}"),
            (None, false) => {
                let blank = (start..end).rev().find(|at| !lines[*at].is_empty());
                let at = blank.map_or(start, |at| at + 1);
                lines.insert(at, format!("{key} = {value}"));
            }
            (None, true) => panic!("nothing to take out: {edit}"),
        }
    }
    lines.join("\n") + "\n"
}

#[test]
fn a_good_job_gives_its_models() {
    let job = good(GOOD);
    assert_eq!(job.title, "Test block, long side");
    assert_eq!(job.units, UnitSystem::Inch);
    assert_eq!(job.material.id, "6061");
    assert!(close(job.blank.width.value, 0.0508));
    assert!(close(job.cutter.diameter.value, 0.0127));
    assert_eq!(job.cutter.teeth, 2);
    assert!(close(job.hold.parallels[1].value, 0.03175));
    assert_eq!(job.practice.name, "training");
    assert!(matches!(job.stock, Stock::Remove(depth) if close(depth.value, 0.003048)));
    assert!(job.readout_rises && !job.hold.feed_across_jaws);
    assert!(job.assumptions.is_empty(), "{:?}", job.assumptions);
}

#[test]
fn toml_and_json_give_the_same_job() {
    let toml = good(GOOD);
    assert_eq!(toml, Job::from_json(GOOD_JSON, Library::builtin()).unwrap());
    assert_eq!(toml, good(&GOOD.replace('\n', "\r\n")));
    assert_eq!(toml, good(&format!("\u{feff}{GOOD}")));
    let marked = format!("\u{feff}{GOOD_JSON}");
    assert_eq!(toml, Job::from_json(&marked, Library::builtin()).unwrap());
}

#[test]
fn inch_and_metric_text_give_the_same_bits() {
    let metric = edited(
        GOOD,
        "cutter.diameter = \"12.7 mm\" && blank.width = \"50.8 mm\" && cut.remove = \"3.048 mm\"",
    );
    assert_eq!(good(GOOD), good(&metric));
}

#[test]
fn counts_and_ratios_are_numbers_or_text() {
    for teeth in ["2", "2.0", "0x2", "\"2\""] {
        let edits = format!("cutter.teeth = {teeth} && hold.jaw_friction = \"15 %\"");
        assert_eq!(good(GOOD), good(&edited(GOOD, &edits)), "{teeth}");
    }
}

#[test]
fn what_is_assumed_is_told() {
    let edits = "- cutter.shank_diameter && - cutter.helix_angle && - hold.jaw_friction \
                 && - hold.feed && - [practice]";
    let job = good(&edited(GOOD, edits));
    let told = job.assumptions.join("\n");
    for text in [
        "cutter.shank_diameter: the cutter's diameter",
        "cutter.helix_angle: 30 deg",
        "hold.jaw_friction: 0.15",
        "hold.feed: along-jaws",
        "practice.base: training",
    ] {
        assert!(told.contains(text), "{text} in {told}");
    }
    assert_eq!(job.assumptions.len(), 5, "{told}");
    assert_eq!(job.cutter.shank_diameter, job.cutter.diameter);
    assert_eq!(job.hold.jaw_friction.value, 0.15);
    let mut same = good(GOOD);
    same.assumptions.clone_from(&job.assumptions);
    assert_eq!(same, job);
}

#[test]
fn a_base_is_changed_by_the_keys_given() {
    let job = good(&edited(
        GOOD,
        "machine.base = \"small-cnc-mill\" && machine.highest_speed = \"4000 rpm\" \
         && practice.holding_safety = 2.5 && practice.roughing_depth_n = \"15 %\"",
    ));
    let (low, high) = job.machine.speed_range();
    assert!(close(low.value, 100.0 / 60.0) && close(high.value, 4000.0 / 60.0));
    assert!(
        job.machine
            .origin
            .ends_with("changed by the job: highest_speed")
    );
    assert_eq!(job.practice.holding_safety.value, 2.5);
    assert_eq!(job.practice.roughing_depth.n, 0.15);
    assert!(
        job.practice
            .origin
            .ends_with("changed by the job: holding_safety, roughing_depth_n")
    );
}

#[test]
fn a_shop_may_bring_its_own_material_and_machine() {
    let job = good(&edited(
        GOOD,
        "- material.id && material.name = \"melt 17\" && material.iso513 = \"N\" \
         && material.kc11 = \"820 N/mm2\" && material.chip_exponent = 0.27 \
         && - machine.base && machine.speeds = [\"80 rpm\", \"160 rpm\"] \
         && machine.motor_power = \"1.5 hp\" && machine.efficiency = \"75 %\" \
         && machine.feeds = [\"1 in/min\", \"2 in/min\"] && machine.backlash = \"0.1 mm\"",
    ));
    assert_eq!(job.material.name, "melt 17");
    assert!(close(job.material.pairs[0].kc11.value, 820e6));
    assert_eq!(job.material.pairs[0].exponent.value, 0.27);
    assert_eq!(job.machine.origin, "the shop's own data");
    assert!(close(job.machine.efficiency.value, 0.75));
}

#[test]
fn every_bad_job_gets_its_error() {
    let mut rows = csv::Reader::from_reader(BAD.as_bytes());
    let mut ids = std::collections::BTreeSet::new();
    let mut faults = Vec::new();
    for row in rows.records() {
        let row = row.unwrap();
        let [id, edits, code, parameter, problems, text] =
            [0, 1, 2, 3, 4, 5].map(|column| row[column].to_owned());
        assert!(ids.insert(id.clone()), "{id} is there twice");
        let Err(error) = read(&edited(GOOD, &edits)) else {
            faults.push(format!("{id}: accepted"));
            continue;
        };
        let hit = error.problems().iter().any(|problem| {
            problem.code.name() == code
                && problem.parameter == parameter
                && problem.to_string().contains(&text)
        });
        let all: usize = problems.parse().unwrap();
        if !hit || error.problems().len() != all {
            faults.push(format!(
                "{id}: wanted {all}, {code} {parameter} {text}; got\n{error}"
            ));
        }
    }
    assert!(ids.len() >= 100, "{} rows", ids.len());
    assert!(faults.is_empty(), "{}", faults.join("\n\n"));
}

#[test]
fn json_gets_the_same_errors_as_toml() {
    let library = Library::builtin();
    let cases = [
        (
            "\"teeth\": 2,",
            "\"teeth\": 2, \"teeth\": 3,",
            Code::Duplicate,
            "cutter.teeth",
        ),
        (
            "\"teeth\": 2,",
            "\"teath\": 2, \"teeth\": 2,",
            Code::UnknownName,
            "cutter.teath",
        ),
        (
            "\"teeth\": 2,",
            "\"teeth\": null,",
            Code::WrongType,
            "cutter.teeth",
        ),
        ("\"1/2 in\"", "0.5", Code::UnitMissing, "cutter.diameter"),
        (
            "\"teeth\": 2,",
            "\"teeth\": 2.5,",
            Code::NotWhole,
            "cutter.teeth",
        ),
        ("\"teeth\": 2,", "\"teeth\": ,", Code::Syntax, ""),
        ("0.15", "1e999", Code::Syntax, ""),
    ];
    for (from, to, code, parameter) in cases {
        let error = Job::from_json(&GOOD_JSON.replacen(from, to, 1), library).unwrap_err();
        let hit = error
            .problems()
            .iter()
            .any(|problem| problem.code == code && problem.parameter == parameter);
        assert!(hit, "{to}: {error}");
    }
    let error = Job::from_json("[1, 2]", library).unwrap_err();
    assert_eq!(error.code(), Code::WrongType);
    let error = Job::from_json("{\"title\":", library).unwrap_err();
    assert!(error.to_string().contains("line 1, column"), "{error}");
}

#[test]
fn hostile_files_are_refused_without_a_panic() {
    let library = Library::builtin();
    let deep = format!("x = {}{}", "[".repeat(100_000), "]".repeat(100_000));
    assert_eq!(read(&deep).unwrap_err().code(), Code::Syntax);
    let deep = "[".repeat(100_000);
    assert_eq!(
        Job::from_json(&deep, library).unwrap_err().code(),
        Code::Syntax
    );
    let dotted = format!("{}x = 1", "a.".repeat(100_000));
    assert_eq!(read(&dotted).unwrap_err().code(), Code::Syntax);
    let huge = format!("title = \"{}\"", "x".repeat(1 << 20));
    let error = read(&huge).unwrap_err();
    assert_eq!(error.code(), Code::OutOfRange);
    assert!(error.to_string().contains("bytes"), "{error}");
    let names: String = (0..15_000).map(|i| format!("k{i} = {i}\n")).collect();
    let error = read(&names).unwrap_err();
    assert!(error.problems().len() >= 15_000);
    let long = format!("[cutter]\n{} = 1\n", "x".repeat(10_000));
    assert!(read(&long).unwrap_err().to_string().len() < 10_000);
    let list = edited(
        GOOD,
        &format!("hold.parallels = [{}]", "\"1 in\", ".repeat(101)),
    );
    assert!(read(&list).unwrap_err().to_string().contains("101 entries"));
}

/// Every prefix and every file with one character taken out is read or refused, never a panic.
#[test]
fn damaged_files_never_panic() {
    for (at, _) in GOOD.char_indices() {
        let _ = read(&GOOD[..at]);
        let mut less = GOOD.to_owned();
        less.remove(at);
        let _ = read(&less);
    }
    for (at, _) in GOOD_JSON.char_indices() {
        let _ = Job::from_json(&GOOD_JSON[..at], Library::builtin());
    }
}

#[test]
fn shipped_jobs_are_read() {
    for (name, text) in SHIPPED {
        let job = read(text).unwrap_or_else(|error| panic!("{name}: {error}"));
        assert!(text.contains("nvented demo data"), "{name}");
        assert!(
            job.hold.parallel_for(job.hold.grip_depth).is_some(),
            "{name}"
        );
    }
}

#[test]
fn the_committed_schema_is_the_generated_one() {
    let path = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../reference-data/job.schema.json"
    );
    if std::env::var_os("GULLET_WRITE_SCHEMA").is_some() {
        std::fs::write(path, job_schema()).unwrap();
    }
    let committed = std::fs::read_to_string(path).unwrap();
    assert!(
        committed == job_schema(),
        "reference-data/job.schema.json is not up to date: run this test with GULLET_WRITE_SCHEMA=1"
    );
}

#[test]
fn the_schema_names_every_key_once_and_closes_every_section() {
    let schema: serde_json::Value = serde_json::from_str(&job_schema()).unwrap();
    assert_eq!(schema["additionalProperties"], false);
    let reference = job_reference();
    let mut keys = 0;
    for (name, section) in schema["properties"].as_object().unwrap() {
        let Some(properties) = section["properties"].as_object() else {
            assert!(section["description"].is_string(), "{name}");
            assert!(reference.contains(&format!("| `{name}` |")), "{name}");
            continue;
        };
        assert_eq!(section["additionalProperties"], false, "{name}");
        assert!(reference.contains(&format!("## `[{name}]`")), "{name}");
        for (key, property) in properties {
            keys += 1;
            assert!(property["description"].is_string(), "{name}.{key}");
            assert!(property["examples"].is_array(), "{name}.{key}");
            assert!(reference.contains(&format!("| `{key}` |")), "{name}.{key}");
        }
    }
    assert!(keys > 90, "{keys} keys");
    let required: Vec<_> = schema["required"].as_array().unwrap().iter().collect();
    assert_eq!(
        required,
        ["material", "blank", "cutter", "machine", "hold", "cut"]
    );
}

/// The examples of the schema are values that the reader takes.
#[test]
fn every_example_is_read() {
    let schema: serde_json::Value = serde_json::from_str(&job_schema()).unwrap();
    for (name, section) in schema["properties"].as_object().unwrap() {
        let Some(properties) = section["properties"].as_object() else {
            continue;
        };
        for (key, property) in properties {
            let mut job: serde_json::Value = serde_json::from_str(GOOD_JSON).unwrap();
            job[name][key] = property["examples"][0].clone();
            let path = format!("{name}.{key}");
            let Err(error) = Job::from_json(&job.to_string(), Library::builtin()) else {
                continue;
            };
            // An example may contradict the rest of this job, never be unreadable.
            for problem in error.problems() {
                let readable = matches!(problem.code, Code::Inconsistent | Code::Missing);
                assert!(problem.parameter != path || readable, "{path}: {problem}");
            }
        }
    }
}
