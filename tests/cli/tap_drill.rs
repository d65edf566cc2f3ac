//! `gullet tap-drill`: the drills of the core's choice, as text and as JSON.

use super::{json, out, refusal};
use gullet::table::{DrillSet, Library, TapDrillWish, ThreadBasis};

const THREAD: &[&str] = &["tap-drill", "major_diameter=1/4 in", "pitch=1/20 in"];
const INCH: &str = "fraction,number,letter";

fn with<'a>(more: &[&'a str]) -> Vec<&'a str> {
    [THREAD, more].concat()
}

#[test]
fn the_drills_are_those_of_the_core() {
    let pairs = [("major_diameter", "1/4 in"), ("pitch", "1/20 in")]
        .map(|(name, text)| (name.to_owned(), text.to_owned()));
    for basis in ThreadBasis::ALL {
        let wish = TapDrillWish::read(&pairs, *basis).unwrap();
        let sets = [DrillSet::Fraction, DrillSet::Number, DrillSet::Letter];
        let core = Library::builtin().tap_drills(&wish, &sets).unwrap();
        let words = with(&["--sets", INCH, "--basis", basis.name()]);
        let told = json(&[&words[..], &["--json"]].concat());
        let drills = told["drills"].as_array().unwrap();
        assert_eq!(drills.len(), core.len());
        for (one, near) in drills.iter().zip(&core) {
            assert_eq!(one["name"], near.drill.name);
            assert_eq!(one["diameter_m"], near.drill.diameter.value);
            assert_eq!(one["percent"], near.percent.value);
        }
        assert_eq!(out(&words).lines().count(), core.len());
    }
}

#[test]
fn a_quarter_inch_with_twenty_threads_takes_number_seven() {
    let text = out(&with(&["--sets", INCH]));
    let first = text.lines().next().unwrap();
    assert!(first.starts_with("No 7 "), "{first}");
    assert!(first.contains("0.201 in"), "{first}");
    // The same hole on both bases, each named.
    assert!(first.contains("75.4 % of thread as charts"), "{first}");
    assert!(first.contains("overlap"), "{first}");
}

#[test]
fn wrong_words_are_told_together() {
    let (_, lines) = refusal(&["tap-drill", "major=10 mm", "pitch=1.5", "--sets", "metrik"]);
    let error = lines.join("\n");
    for word in ["major", "pitch", "metrik", "major_diameter"] {
        assert!(error.contains(word), "{word} in {error}");
    }
    let (_, lines) = refusal(&with(&["thread_percent=70 %", "smallest_percent=90 %"]));
    assert!(lines[0].contains("smallest_percent"), "{lines:?}");
}
