//! The cards of a part: a summary and a sheet a clamping, the same in every form.

use super::{EXAMPLE, FILE, card, edited, library, read};
use gullet::plan::{JobFile, PartRoute};

#[test]
fn toml_and_json_give_the_same_part() {
    for text in [EXAMPLE, FILE] {
        let json: serde_json::Value = toml::from_str(text).unwrap();
        let json = json.to_string();
        assert_eq!(
            PartRoute::from_json(&json, library()).unwrap(),
            read(text).unwrap()
        );
        assert!(matches!(
            JobFile::from_json(&json, library()),
            Ok(JobFile::Part(_))
        ));
    }
}

#[test]
fn the_example_is_a_summary_and_ten_sheets() {
    let card = card(EXAMPLE);
    let html = card.html();
    assert_eq!(html.matches("<h1>").count(), 11);
    assert_eq!(html.matches("<section class=\"sheet").count(), 10);
    let text = card.text();
    assert!(text.starts_with("PART  Tailstock post"));
    assert_eq!(text.matches("\nCLAMPING ").count(), 4);
    assert_eq!(text.matches("\nSET-UP CARD ").count(), 6);
    assert!(!text.contains("[band_saw_time]"));
    for formula in ["band_saw_time", "tapping_time", "peck_cycle_time"] {
        assert!(card.text_with_steps().contains(&format!("[{formula}]")));
        assert!(card.html_with_steps().contains(&format!("[{formula}]")));
    }
    let json = card.json();
    assert_eq!(json["sheets"].as_array().unwrap().len(), 10);
    for all in [
        text.clone(),
        card.text_with_steps(),
        html.clone(),
        card.html_with_steps(),
        json.to_string(),
    ] {
        assert!(
            !all.contains("NaN") && !all.contains("inf "),
            "not a number"
        );
        assert!(!all.contains("<script") && !all.contains("http"));
    }
    for (operation, process) in card.cuts() {
        for place in [&text, &html] {
            assert!(place.contains(&operation.name), "{}", operation.name);
            assert!(place.contains(&operation.clamping), "{}", operation.name);
        }
        for (id, _) in &process.sources {
            assert!(text.contains(&format!("[{id}]")) && html.contains(&format!("[{id}]")));
        }
        for caution in &process.cut.cautions {
            assert!(card.cautions().iter().any(|told| told == caution));
        }
    }
}

#[test]
fn the_summary_fits_its_page() {
    let text = card(EXAMPLE).text();
    let summary = text.split("\nCLAMPING").next().unwrap();
    for line in summary.lines() {
        // The table of times has a column for each part of the time.
        assert!(line.chars().count() <= 110, "{line}");
        assert!(!matches!(line.trim(), "mm/min" | "rpm" | "card"), "{line}");
    }
    assert!(summary.contains("set-up of the vise") && summary.contains("square 1, top face"));
    assert!(summary.contains("square 1 to 6"));
}

#[test]
fn operations_in_a_row_with_the_same_words_share_a_sheet() {
    let shared = card(FILE);
    let sheets = |card: &gullet::plan::PartCard| {
        let json = card.json();
        let sheets = json["sheets"].as_array().unwrap().iter();
        sheets
            .map(|sheet| sheet["operations"].as_array().unwrap().len())
            .collect::<Vec<_>>()
    };
    assert_eq!(sheets(&shared), [2]);
    let json = shared.json();
    assert_eq!(json["sheets"][0]["held"], "vise on the mill");
    let (_, rest) = FILE.split_once("operation = \"countersinking\"").unwrap();
    assert!(!rest.contains("clamping"));

    // The words back again after others: clamped once more.
    let other = "[[operation]]\nclamping = \"strap clamps\"\noperation = \"countersinking\"\ndiameter = \"10 mm\"\nhole_diameter = \"8.5 mm\"\n\n[[operation]]\nclamping = \"vise on the mill\"\noperation = \"countersinking\"";
    let text = edited(FILE, "[[operation]]\noperation = \"countersinking\"", other);
    let parted = card(&text);
    assert_eq!(sheets(&parted), [1, 1, 1]);
    let clamping: Vec<f64> = parted
        .entries
        .iter()
        .map(|entry| entry.time.clamping.value)
        .collect();
    assert!(clamping.iter().all(|time| *time > 0.0), "{clamping:?}");
    // Set-up once for each machine: the mill, the countersink's own, the bench.
    assert_eq!(shared.entries[1].time.clamping.value, 0.0);
}

#[test]
fn units_and_words_are_the_files() {
    let text = edited(FILE, "title =", "units = \"inch\"\ntitle =");
    let text = edited(&text, "Drill two holes", "Drill <b> & \\\"two\\\"");
    let card = card(&text);
    assert!(card.text().contains("in/min") && !card.text().contains("mm/min"));
    let html = card.html();
    assert!(html.contains("Drill &lt;b&gt; &amp; &quot;two&quot;") && !html.contains("<b> &"));
}
