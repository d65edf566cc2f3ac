//! Every worked example of the reference data: it passes, or it is marked as missed.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::Code;
use gullet::formula::cases::{Outcome, read_cases};
use gullet_reference_data::CASES;
use std::collections::{HashMap, HashSet};

#[test]
fn every_embedded_example_passes_or_is_marked() {
    let mut faults = Vec::new();
    let mut run = 0;
    for (file, text) in CASES {
        let (cases, problems) = read_cases(file, text);
        faults.extend(problems.iter().map(ToString::to_string));
        for case in &cases {
            run += 1;
            let verdict = case.run();
            if !verdict.in_order() {
                faults.push(format!(
                    "{file}:{} {} {}: {verdict}",
                    case.line, case.id, case.formula.name
                ));
            }
        }
    }
    assert!(run > 0);
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn identifiers_are_unique_over_all_files() {
    let mut seen: HashMap<String, &str> = HashMap::new();
    for (file, text) in CASES {
        for case in read_cases(file, text).0 {
            if let Some(other) = seen.insert(case.id.clone(), file) {
                panic!("{} stands in {other} and in {file}", case.id);
            }
        }
    }
}

#[test]
fn files_are_named_once_and_hold_examples() {
    let mut names = HashSet::new();
    for (file, text) in CASES {
        assert!(names.insert(file), "{file} twice");
        assert!(file.ends_with(".csv"), "{file}");
        assert!(text.lines().count() > 1, "{file} holds no example");
    }
}

#[test]
fn every_file_of_the_folder_is_embedded() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../reference-data/cases");
    let mut found: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    found.sort_unstable();
    let embedded: Vec<&str> = CASES.iter().map(|(file, _)| *file).collect();
    assert_eq!(found, embedded);
}

const HEAD: &str = "id,formula,arguments,expected,rtol,source,provenance,note,status\n";

fn verdict_of(row: &str) -> gullet::formula::cases::Verdict {
    let (cases, problems) = read_cases("own.csv", &format!("{HEAD}{row}\n"));
    assert!(problems.is_empty(), "{problems:?}");
    cases[0].run()
}

#[test]
fn verdicts_tell_passed_missed_refused_and_stale() {
    let good = "a,threading_depth,thread_height=1 mm; passes=4; index=1";
    let verdict = verdict_of(&format!("{good},0.5 mm,1e-12,s,identity,,"));
    assert!(verdict.in_order() && verdict.passed() && !verdict.stale_mark());

    let verdict = verdict_of(&format!("{good},0.6 mm,1e-12,s,identity,,"));
    assert_eq!(verdict.outcome, Outcome::Missed);
    assert!(!verdict.in_order());
    let deviation = verdict.relative_deviation.unwrap();
    assert!((deviation - 1.0 / 6.0).abs() < 1e-12, "{deviation}");
    assert!(verdict.to_string().contains("not marked"), "{verdict}");

    let verdict = verdict_of(&format!(
        "{good},0.6 mm,1e-12,s,seen,,missed: slip of the source"
    ));
    assert_eq!(verdict.outcome, Outcome::Missed);
    assert!(verdict.in_order());

    let verdict = verdict_of(&format!(
        "{good},0.5 mm,1e-12,s,seen,,missed: slip of the source"
    ));
    assert!(verdict.stale_mark() && !verdict.in_order());
    assert!(verdict.to_string().contains("stale"), "{verdict}");

    let verdict = verdict_of(
        "a,threading_depth,thread_height=1 mm; passes=4; index=5,1 mm,1e-12,s,identity,,",
    );
    let Outcome::Refused(error) = &verdict.outcome else {
        panic!("{verdict}")
    };
    assert_eq!(error.first().parameter, "index");
    assert!(!verdict.in_order() && verdict.computed.is_none());
}

#[test]
fn a_tolerance_is_not_stretched() {
    let row = |expected: &str| {
        format!("a,standard_time,normal_time=1 min; allowance=0,{expected},1e-3,s,identity,,")
    };
    assert!(verdict_of(&row("1.0009 min")).passed());
    assert!(!verdict_of(&row("1.0011 min")).passed());
    assert!(!verdict_of(&row("-1 min")).passed());
}

#[test]
fn bad_rows_are_all_told_and_the_good_ones_kept() {
    let text = format!(
        "{HEAD}\
         ,standard_time,normal_time=1 min; allowance=0,1 min,1e-9,s,identity,,\n\
         b,standard_time,normal_time=1 min; allowances=0,1 min,1e-9,s,identity,,\n\
         c,standard_tine,normal_time=1 min; allowance=0,1 min,1e-9,s,identity,,\n\
         good,standard_time,normal_time=1 min; allowance=0,1 min,1e-9,s,identity,,\n\
         d,standard_time,normal_time=1 min; allowance=0,one,-1,s,hearsay,,wrong\n\
         good,standard_time,normal_time=1 min; allowance=0,1 min,1e-9,s,identity,,\n\
         e,standard_time,too,short\n\
         f,standard_time,normal_time 1 min,1 min,nan,s,identity,,missed:\n\
         last,standard_time,normal_time=1 min; allowance=100 %,2 min,1e-9,\"s, quoted\",identity,,\n"
    );
    let (cases, problems) = read_cases("own.csv", &text);
    let ids: Vec<&str> = cases.iter().map(|case| case.id.as_str()).collect();
    assert_eq!(ids, ["good", "last"]);
    assert_eq!(cases[1].source, "s, quoted");
    let told: Vec<&str> = problems
        .iter()
        .map(|problem| problem.parameter.as_str())
        .collect();
    for place in [
        "own.csv:2:id",
        "own.csv:3:arguments:standard_time",
        "own.csv:3:arguments:allowance",
        "own.csv:4:formula",
        "own.csv:6:expected",
        "own.csv:6:rtol",
        "own.csv:6:provenance",
        "own.csv:6:status",
        "own.csv:7:id",
        "own.csv:8",
        "own.csv:9:arguments",
        "own.csv:9:rtol",
        "own.csv:9:status",
    ] {
        assert!(told.contains(&place), "{place} missing in {told:?}");
    }
    assert_eq!(told.len(), 13, "{told:?}");
    let formula = problems
        .iter()
        .find(|problem| problem.parameter == "own.csv:4:formula")
        .unwrap();
    assert_eq!(formula.code, Code::UnknownName);
    assert!(formula.remedy.contains("standard_time"), "{formula}");
}

#[test]
fn a_wrong_head_or_an_empty_file_is_one_problem() {
    for text in ["", "id,formula\na,b\n", "a,standard_time\n"] {
        let (cases, problems) = read_cases("own.csv", text);
        assert!(cases.is_empty());
        assert_eq!(problems.len(), 1, "{problems:?}");
        assert_eq!(problems[0].code, Code::BadRow);
    }
}
