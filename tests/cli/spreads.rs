//! `gullet study --spread`: quantiles of what is drawn.

use super::study::{JOB, ROWS, column, path, study};
use super::{folder, run};
use std::path::Path;

#[test]
fn quantiles_stand_behind_their_results_and_are_drawn_alike() {
    let folder = folder("study_spreads");
    let spreads = [
        "--columns",
        "time,deflection",
        "--spread",
        "cutting_force=0.85..1.2",
        "--spread",
        "feed=0.9..1..1.05",
        "--draws",
        "400",
        "--quantiles",
        "0,0.5,1",
    ];
    let first = path(&folder, "first.csv");
    study(ROWS, &first, &spreads);
    let numbers = |file: &str, name: &str| -> Vec<f64> {
        let cells = column(file, name);
        let told = cells.iter().filter(|cell| !cell.is_empty());
        told.map(|cell| cell.parse().unwrap()).collect()
    };
    let time = numbers(&first, "time_s");
    assert_eq!(time.len(), 5);
    for (row, time) in time.iter().enumerate() {
        let at = |name: &str| numbers(&first, name)[row];
        let (least, median, most) = (at("time_p0_s"), at("time_p50_s"), at("time_p100_s"));
        // The time goes with the inverse of the feed.
        assert!(time / 1.05 <= least && least < median && median < most && most <= time / 0.9);
        assert!(at("deflection_p0_in") < at("deflection_p50_in"));
        assert_eq!(at("draws_left_out"), 0.0);
    }
    // Another number of threads, and Parquet, give the same draws; another seed does not.
    let parquet = path(&folder, "rows.parquet");
    let threads = [&spreads[..], &["--threads", "1"]].concat();
    study(ROWS, &parquet, &threads);
    let again = path(&folder, "again.csv");
    let named = ["--columns", "travel", "--pass-through", "time_s"];
    study(&parquet, &again, &named);
    assert_eq!(numbers(&again, "time_p50_s"), numbers(&first, "time_p50_s"));
    let other = path(&folder, "other.csv");
    study(ROWS, &other, &[&spreads[..], &["--seed", "2"]].concat());
    assert_ne!(numbers(&other, "time_p50_s"), numbers(&first, "time_p50_s"));
}

#[test]
fn every_bad_spread_is_told_at_once() {
    let folder = folder("study_bad_spreads");
    let to = path(&folder, "out.csv");
    let words = |more: &[&'static str]| {
        let mut words = vec!["study", ROWS, to.as_str(), "--job", JOB];
        words.extend(more);
        let output = run(&words);
        assert_eq!(output.status.code(), Some(2));
        String::from_utf8(output.stderr).unwrap()
    };
    let told = words(&[
        "--spread",
        "cuting_force=0.9..1.1",
        "--spread",
        "feed=wide",
        "--draws",
        "many",
    ]);
    for part in ["did you mean cutting_force?", "sigma 0.1", "--draws = many"] {
        assert!(told.contains(part), "{told}");
    }
    let told = words(&[
        "--spread",
        "feed=1.1..0.9",
        "--draws",
        "0",
        "--quantiles",
        "0.5,2",
    ]);
    for part in [
        "out_of_range: feed",
        "out_of_range: draws",
        "out_of_range: quantiles",
    ] {
        assert!(told.contains(part), "{told}");
    }
    assert!(!Path::new(&to).exists());
}
