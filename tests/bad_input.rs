//! The catalogue of bad input: each row must get its code, its parameter, its value and the words it
//! says what to do with, in every face. Job files have a catalogue of their own beside it.
//!
//! A row of `data/bad_input.csv` is
//! - `id`: unique;
//! - `entry`: `quantity` reads text as a kind of quantity, `formula` evaluates one by name;
//! - `subject`: the kind, or the formula's name;
//! - `input`: the text, or the arguments as `name=value; ...`;
//! - `code`, `parameter`, `value`: those of the first problem, empty where there is none;
//! - `problems`: how many problems are told;
//! - `text`: words of the message.
#![allow(clippy::unwrap_used, clippy::panic)]

use gullet::quantity::{Kind, Quantity};

const ROWS: &str = include_str!("data/bad_input.csv");

#[test]
fn every_row_gets_its_code_parameter_and_words() {
    let mut reader = csv::Reader::from_reader(ROWS.as_bytes());
    let mut rows = 0;
    let mut wrong = Vec::new();
    for record in reader.records() {
        let record = record.unwrap();
        let [
            id,
            entry,
            subject,
            input,
            code,
            parameter,
            problems,
            text,
            value,
        ] = [0, 1, 2, 3, 4, 5, 6, 7, 8].map(|column| record.get(column).unwrap());
        let result = match entry {
            "quantity" => {
                Quantity::parse(Kind::from_name(subject).unwrap(), input).map(|q| q.to_string())
            }
            "formula" => gullet::evaluate(subject, input).map(|q| q.to_string()),
            other => panic!("{id}: no entry {other}"),
        };
        rows += 1;
        match result {
            Ok(accepted) => wrong.push(format!("{id}: accepted as {accepted}")),
            Err(error) => {
                let first = error.first();
                let found = error.to_string();
                if first.code.name() != code
                    || first.parameter != parameter
                    || first.value != value
                    || error.problems().len().to_string() != problems
                    || !found.contains(text)
                {
                    wrong.push(format!("{id}: {found}; value {:?}", first.value));
                }
                // What is wrong, what would do, what to do: never left out.
                for problem in error.problems() {
                    assert!(!problem.remedy.is_empty(), "{id}: {problem}");
                    assert!(!problem.admissible.is_empty(), "{id}: {problem}");
                }
            }
        }
    }
    assert!(rows >= 200, "{rows} rows");
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn several_mistakes_are_told_at_once() {
    let error = gullet::evaluate(
        "max_chip_thickness",
        "feed_per_tooth=-1 mm; diameter=0 mm; radial_depth=NaN; cutting_edge_angle=95 deg",
    )
    .unwrap_err();
    let names: Vec<&str> = error
        .problems()
        .iter()
        .map(|problem| problem.parameter.as_str())
        .collect();
    assert_eq!(names, ["radial_depth"], "what cannot be read comes first");
    let error = gullet::evaluate(
        "max_chip_thickness",
        "feed_per_tooth=-1 mm; diameter=0 mm; radial_depth=1 mm; cutting_edge_angle=95 deg",
    )
    .unwrap_err();
    let names: Vec<&str> = error
        .problems()
        .iter()
        .map(|problem| problem.parameter.as_str())
        .collect();
    assert_eq!(
        names,
        [
            "feed_per_tooth",
            "diameter",
            "radial_depth",
            "cutting_edge_angle"
        ]
    );
}

#[test]
fn inch_input_is_answered_in_inches() {
    let error =
        gullet::evaluate("engagement_angle", "diameter=1/2 in; radial_depth=0.6 in").unwrap_err();
    let problem = error.first();
    assert_eq!(problem.value, "0.6 in");
    assert_eq!(problem.admissible, "above 0 in, at most diameter = 0.5 in");
}

#[test]
fn a_value_just_beyond_its_bound_does_not_look_like_it() {
    let error = gullet::evaluate(
        "engagement_angle",
        "diameter=12.7 mm; radial_depth=12.70000001 mm",
    )
    .unwrap_err();
    assert_eq!(error.first().value, "12.70000001 mm");
}
