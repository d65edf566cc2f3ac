//! `gullet study` over rows of operations that have columns of their own.

use super::study::{JOB, column, path};
use super::{folder, refusal, run, run_with_input};
use std::fs;

const HOLES: &str = "crates/gullet-cli/studies/holes.csv";

const DRILLING: [&str; 6] = [
    "--set",
    "operation=drilling",
    "--set",
    "machine=small-cnc-mill",
    "--set",
    "cutter_material=HSS",
];

/// What a refused command tells.
fn told(words: &[&str]) -> String {
    let (code, lines) = refusal(words);
    assert_ne!(code, 0);
    lines.join("\n")
}

#[test]
fn holes_give_rows_and_totals() {
    let folder = folder("study_holes");
    let to = path(&folder, "holes.csv");
    let mut words = vec![
        "study",
        HOLES,
        &to,
        "--summary",
        "--json",
        "--set",
        "cost_per_hour=45",
    ];
    words.extend(DRILLING);
    let output = run(&words);
    let errors = String::from_utf8(output.stderr).unwrap();
    assert_eq!((output.status.code(), errors.as_str()), (Some(0), ""));
    let totals: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    let status = column(&to, "status");
    assert_eq!(status, ["ok", "ok", "ok", "limit_exceeded", "missing"]);
    assert_eq!(
        (totals["rows"].as_u64(), totals["computed"].as_u64()),
        (Some(5), Some(3))
    );
    assert_eq!(totals["limit_exceeded"]["depth_ratio"], 1);
    assert_eq!(totals["energy_of"], "of the motor at its power in the cut");
    assert!(totals["energy_kwh"].as_f64().unwrap() > 0.0);
    let sum = |name: &str| -> f64 {
        let cells = column(&to, name);
        cells
            .iter()
            .filter_map(|cell| cell.parse::<f64>().ok())
            .sum()
    };
    let time = totals["cutting_time_s"].as_f64().unwrap();
    assert!((time - sum("time_s")).abs() < 1e-6);
    assert!((totals["cost"].as_f64().unwrap() - time / 3600.0 * 45.0).abs() < 1e-5);
    assert_eq!(column(&to, "part"), column(HOLES, "part"));
    assert_eq!(column(&to, "hole"), column(HOLES, "hole"));
    let assumed = totals["assumed"].as_array().unwrap();
    for told in ["practice: training", "point_angle: 118 deg"] {
        assert!(assumed.iter().any(|it| it == told), "{assumed:?}");
    }
}

#[test]
fn a_job_gives_material_machine_practice_and_what_the_edges_are_made_of() {
    let rows = b"diameter_in,depth_in\n1/4,1/2\n3/8,1/2\n";
    let words = [
        "study",
        "-",
        "-",
        "--job",
        JOB,
        "--set",
        "operation=drilling",
    ];
    let output = run_with_input(&words, rows);
    let text = String::from_utf8(output.stdout).unwrap();
    assert_eq!(output.status.code(), Some(0), "{text}");
    // The units of the job, and a handwheel on its machine.
    assert!(
        text.starts_with("diameter_in,depth_in,spindle_speed_rpm,"),
        "{text}"
    );
    assert!(text.contains("feed_speed_in_per_min"), "{text}");
    assert_eq!(text.matches(",ok,").count(), 2, "{text}");
}

#[test]
fn a_mixed_table_is_refused_and_leaves_nothing() {
    let folder = folder("study_mixed");
    let from = path(&folder, "mixed.csv");
    let to = path(&folder, "out.csv");
    let rows = "operation,radial_depth_in,diameter_in\nside-milling,0.02,\ndrilling,,1/4\n";
    fs::write(&from, rows).unwrap();
    let mixed = [
        "study",
        &from,
        &to,
        "--job",
        JOB,
        "--set",
        "axial_depth=0.2 in",
    ];
    let told_once = told(&mixed);
    assert_eq!(told_once.lines().count(), 1, "{told_once}");
    assert!(
        told_once.contains("split the table by operation"),
        "{told_once}"
    );
    assert!(!fs::exists(&to).unwrap());
    let words = [
        "study",
        &from,
        &to,
        "--job",
        JOB,
        "--set",
        "operation=drilling",
    ];
    let told = told(&words);
    assert!(told.contains("duplicate: operation"), "{told}");
}

#[test]
fn every_problem_of_a_table_of_holes_is_told_together() {
    let folder = folder("study_bad_holes");
    let from = path(&folder, "holes.csv");
    fs::write(&from, "diameter,point_angle_mm,hole\n8,118,blind\n").unwrap();
    let to = path(&folder, "out.csv");
    let mut words = vec!["study", &from, &to];
    words.extend(DRILLING);
    words.extend([
        "--set",
        "material=unobtainium",
        "--spread",
        "cutting_force=0.9..1.1",
    ]);
    let told = told(&words);
    for problem in [
        "unit_missing: diameter",
        "unit_unknown: point_angle_mm",
        "missing: depth",
        "unknown_name: material",
        "not offered yet",
    ] {
        assert!(told.contains(problem), "{problem}: {told}");
    }
    assert!(!fs::exists(&to).unwrap());
}
