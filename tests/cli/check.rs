//! `gullet check`: counts, marks, rows that cannot be read.

use super::{folder, json, out, run};
use serde_json::Value;
use std::fs;

const COLUMNS: &str = "id,formula,arguments,expected,rtol,source,provenance,note,status\n";
const ROW: &str = "table_feed,feed_per_tooth=0.1 mm; teeth=4; spindle_speed=1000 rpm";

#[test]
fn check_counts_and_tells_what_is_missed() {
    let folder = folder("check");
    let write = |name: &str, rows: &str| {
        let file = folder.join(name);
        fs::write(&file, format!("{COLUMNS}{rows}")).unwrap();
        file.to_str().unwrap().to_owned()
    };
    let good = write(
        "good.csv",
        &format!("a,{ROW},400 mm/min,1e-9,own arithmetic,identity,,\n"),
    );
    assert_eq!(out(&["check", &good]), "1 passed, 0 failed, 0 marked\n");
    assert_eq!(out(&["check", &good, "--verbose"]).lines().count(), 2);
    let marked = write(
        "marked.csv",
        &format!("b,{ROW},500 mm/min,1e-9,own arithmetic,identity,,missed: a wrong print\n"),
    );
    let text = out(&["check", &good, &marked]);
    assert!(text.ends_with("1 passed, 0 failed, 1 marked\n"), "{text}");
    assert!(text.contains("a wrong print"), "{text}");
    for (name, row) in [
        (
            "missed.csv",
            format!("c,{ROW},401 mm/min,1e-9,own arithmetic,identity,,\n"),
        ),
        (
            "stale.csv",
            format!("d,{ROW},400 mm/min,1e-9,own arithmetic,identity,,missed: no\n"),
        ),
        (
            "refused.csv",
            format!(
                "e,{},400 mm/min,1e-9,own arithmetic,identity,,\n",
                ROW.replace("1000", "-1")
            ),
        ),
    ] {
        let file = write(name, &row);
        let output = run(&["check", &good, &file, "--json"]);
        assert_eq!(output.status.code(), Some(1), "{name}");
        assert!(output.stderr.is_empty(), "{name}");
        let answer: Value = serde_json::from_slice(&output.stdout).unwrap();
        assert_eq!(
            (&answer["passed"], &answer["failed"]),
            (&1.into(), &1.into()),
            "{name}"
        );
        assert_eq!(answer["rows"].as_array().unwrap().len(), 1, "{name}");
    }
    let unread = write(
        "unread.csv",
        &format!("f,{ROW},400 kg,1e-9,own arithmetic,identity,,\n"),
    );
    let output = run(&["check", &good, &unread, "no_such_file.csv"]);
    assert_eq!(output.status.code(), Some(3));
    let errors = String::from_utf8(output.stderr).unwrap();
    assert_eq!(errors.lines().count(), 2, "{errors}");
    assert!(errors.contains("unread.csv:2:expected"), "{errors}");
    assert_eq!(run(&["check", &unread]).status.code(), Some(2));
}

#[test]
fn the_embedded_examples_pass_or_are_marked() {
    let answer = json(&["check", "--builtin", "--json"]);
    assert_eq!(
        (&answer["failed"], &answer["unread"]),
        (&0.into(), &0.into())
    );
    assert!(answer["passed"].as_u64().unwrap() > 200);
}
