//! `gullet card`: formats, units, files, overlays, refusals.

use super::{BRACKET, ROOT, folder, json, out, refusal, run_with_input};
use serde_json::Value;
use std::fs;
use std::path::Path;

fn jobs() -> Vec<String> {
    let jobs = Path::new(ROOT).join("crates/gullet-cli/jobs");
    let mut names: Vec<String> = [jobs.clone(), jobs.join("routes"), jobs.join("parts")]
        .iter()
        .flat_map(|folder| fs::read_dir(folder).unwrap())
        .map(|entry| entry.unwrap().path().to_str().unwrap().to_owned())
        .filter(|name| name.ends_with(".toml"))
        .collect();
    names.sort();
    assert!(!names.is_empty());
    names
}

#[test]
fn every_job_gives_a_card_in_every_format() {
    for job in jobs() {
        let text = out(&["card", &job]);
        let title = fs::read_to_string(&job).unwrap();
        let title = title
            .lines()
            .find_map(|line| line.strip_prefix("title = \""))
            .unwrap();
        let title = title.trim_end_matches('"');
        assert!(text.contains(title), "{job}");
        assert!(text.contains("rpm"), "{job}");
        let card = json(&["card", &job, "--format", "json"]);
        assert_eq!(card["title"], title);
        // A part holds the cards of its operations in sheets, those of its block as a route.
        let sheets = card["sheets"].as_array().into_iter().flatten();
        for sheet in sheets.filter(|sheet| sheet["operations"].is_array()) {
            for operation in sheet["operations"].as_array().unwrap() {
                let speed = &operation["card"]["settings"]["spindle_speed"]["si"];
                assert!(speed.as_f64().unwrap() > 0.0, "{job}");
            }
        }
        let block = &card["squaring"];
        let card = if block.is_null() { &card } else { block };
        let route = card["clampings"].as_array();
        let cards = route.map_or(vec![card], |clampings| {
            clampings.iter().map(|clamping| &clamping["card"]).collect()
        });
        for card in cards {
            assert!(!card["plan"]["passes"].as_array().unwrap().is_empty());
        }
        let page = out(&["card", &job, "--format=html"]);
        assert!(page.starts_with("<!DOCTYPE html>") && page.trim_end().ends_with("</html>"));
        assert!(!page.contains("<script") && !page.contains("http"), "{job}");
        let longer = out(&["card", &job, "--format=html", "--steps"]);
        assert!(longer.len() > page.len());
    }
}

#[test]
fn a_card_is_the_same_from_standard_input_and_in_json() {
    let text = fs::read(Path::new(ROOT).join(BRACKET)).unwrap();
    let output = run_with_input(&["card", "-"], &text);
    assert_eq!(
        String::from_utf8(output.stdout).unwrap(),
        out(&["card", BRACKET])
    );
    let mut marked = b"\xef\xbb\xbf".to_vec();
    marked.extend(&text);
    assert_eq!(
        run_with_input(&["card", "-"], &marked).status.code(),
        Some(0)
    );
    let output = run_with_input(&["card", "-"], b" {\"title\": \"x\"}");
    let errors = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(2));
    assert!(
        errors.contains("missing") && !errors.contains("syntax"),
        "{errors}"
    );
}

#[test]
fn the_units_asked_for_replace_those_of_the_job() {
    let inch = out(&["card", BRACKET]);
    assert!(inch.contains("in/min") && !inch.contains("mm/min"));
    let metric = out(&["card", BRACKET, "--units", "metric"]);
    assert!(metric.contains("mm/min") && !metric.contains("in/min"));
}

#[test]
fn a_file_is_written_whole_or_stays_as_it_was() {
    let folder = folder("output");
    let file = folder.join("card.html");
    let name = file.to_str().unwrap();
    assert_eq!(out(&["card", BRACKET, "--output", name]), "");
    // The ending of the name decides the format.
    assert!(
        fs::read_to_string(&file)
            .unwrap()
            .starts_with("<!DOCTYPE html>")
    );
    fs::write(&file, "before").unwrap();
    let (code, _) = refusal(&["card", "no_such_job.toml", "--output", name]);
    assert_eq!(
        (code, fs::read_to_string(&file).unwrap().as_str()),
        (3, "before")
    );
    let missing = folder.join("missing/card.txt");
    let (code, lines) = refusal(&["card", BRACKET, "--output", missing.to_str().unwrap()]);
    assert_eq!(code, 3);
    assert!(lines[0].contains("card.txt"), "{lines:?}");
    assert_eq!(
        refusal(&["card", BRACKET, "--output", folder.to_str().unwrap()]).0,
        3
    );
    let left: Vec<_> = fs::read_dir(&folder)
        .unwrap()
        .map(|e| e.unwrap().file_name())
        .collect();
    assert_eq!(left, ["card.html"]);
}

#[cfg(unix)]
#[test]
fn links_and_devices_are_written_to_and_not_replaced() {
    let folder = folder("links");
    let (file, link) = (folder.join("card.txt"), folder.join("link.txt"));
    fs::write(&file, "before").unwrap();
    std::os::unix::fs::symlink(&file, &link).unwrap();
    out(&["card", BRACKET, "--output", link.to_str().unwrap()]);
    assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
    assert!(fs::read_to_string(&file).unwrap().contains("SET-UP CARD"));
    let words = [
        "card",
        BRACKET,
        "--output",
        "/dev/stdout",
        "--format",
        "text",
    ];
    assert_eq!(out(&words), out(&["card", BRACKET]));
}

#[test]
fn a_shops_own_table_changes_the_card() {
    let folder = folder("overlay");
    let (good, bad) = (folder.join("good.csv"), folder.join("bad.csv"));
    let head = "id,class,tool_material,process,sfm_start,src\n";
    fs::write(
        &good,
        format!("{head}o1,6061,HSS,end milling,60,shop trial\n"),
    )
    .unwrap();
    fs::write(
        &bad,
        format!("{head}o1,6061,HSS,end milling,fast,shop trial\n"),
    )
    .unwrap();
    let card = out(&["card", BRACKET, "--overlay", good.to_str().unwrap()]);
    assert_ne!(card, out(&["card", BRACKET]));
    assert!(card.contains("shop trial"));
    let bad = bad.to_str().unwrap();
    let (code, lines) = refusal(&["card", "no_such_job.toml", "--overlay", bad]);
    assert_eq!((code, lines.len()), (3, 2), "{lines:?}");
    assert!(lines[1].contains("bad.csv:2:sfm_start"), "{lines:?}");
}

#[test]
fn bad_jobs_are_refused_with_all_their_problems() {
    for (input, code, parts) in [
        (&b""[..], 2, &["missing"][..]),
        (b"title = ", 2, &["syntax"]),
        (b"{\"title\": ", 2, &["syntax"]),
        (b"\xff\xfe", 2, &["UTF-8"]),
        (
            b"titel = \"x\"\n[cuter]\nteeth = 2\n",
            2,
            &["title?", "cutter?"],
        ),
    ] {
        let output = run_with_input(&["card", "-"], input);
        let errors = String::from_utf8(output.stderr).unwrap();
        assert_eq!(output.status.code(), Some(code), "{errors}");
        for part in parts {
            assert!(errors.contains(part), "{part} in {errors}");
        }
    }
    let text = fs::read_to_string(Path::new(ROOT).join(BRACKET)).unwrap();
    let fast = text.replace(
        "remove = \"0.120 in\"",
        "remove = \"0.120\"\nspindle_sped = \"9 rpm\"",
    );
    let output = run_with_input(&["card", "-"], fast.as_bytes());
    let errors = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(2));
    assert!(errors.contains("unit_missing: cut.remove"), "{errors}");
    assert!(errors.contains("spindle_speed?"), "{errors}");
}

#[test]
fn limits_that_nothing_helps_exit_with_1() {
    let text = fs::read_to_string(Path::new(ROOT).join(BRACKET)).unwrap();
    let weak = text.replace("12 kN", "1 N");
    assert_ne!(weak, text);
    let output = run_with_input(&["card", "-", "--format", "json"], weak.as_bytes());
    assert_eq!(output.status.code(), Some(1));
    assert!(output.stdout.is_empty());
    let errors: Value = serde_json::from_slice(&output.stderr).unwrap();
    let code = errors["errors"][0]["code"].as_str().unwrap();
    assert!(["limit_exceeded", "no_plan"].contains(&code), "{errors}");
}

const ROUTE: &str = "crates/gullet-cli/jobs/routes/guide_shoe.toml";

#[test]
fn a_route_is_a_summary_and_six_cards() {
    let text = out(&["card", ROUTE]);
    assert!(text.starts_with("ROUTE  Guide shoe"));
    assert_eq!(text.matches("SET-UP CARD").count(), 6);
    let with_steps = out(&["card", ROUTE, "--steps"]);
    assert!(!text.contains("Worked steps") && with_steps.contains("Worked steps"));
    assert!(out(&["card", ROUTE, "--units", "inch"]).contains("3.5827 in"));
    let cards = json(&["card", ROUTE, "--format", "json"]);
    assert_eq!(cards["route"], "squared-block");
    assert_eq!(cards["clampings"].as_array().unwrap().len(), 6);
}
