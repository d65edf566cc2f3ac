//! What a study starts from: parts of a job alone and over one, problems told by the caller.

use super::*;
use arrow_array::cast::AsArray;
use gullet::error::Code;
use gullet::plan::Part;
use gullet_table::Start;

fn part(section: &str, keys: &str) -> Part {
    Part::from_json(section, keys, Library::builtin())
        .unwrap()
        .0
}

/// The parts that say what the constants of [`CUT`] say.
fn parts() -> Vec<Part> {
    vec![
        part("material", r#"{"id": "6061"}"#),
        part("machine", r#"{"base": "small-cnc-mill"}"#),
        part(
            "cutter",
            r#"{"form": "square", "material": "HSS", "diameter": "12 mm", "teeth": 2,
                "flute_length": "25 mm", "stick_out": "35 mm"}"#,
        ),
        part(
            "hold",
            r#"{"clamping_force": "10 kN", "grip_depth": "15 mm"}"#,
        ),
        part(
            "blank",
            r#"{"length": "80 mm", "width": "30 mm", "height": "25 mm"}"#,
        ),
    ]
}

const OF_PARTS: &[&str] = &[
    "material",
    "machine",
    "length",
    "part_height",
    "cutter_form",
    "cutter_material",
    "cutter_diameter",
    "cutter_teeth",
    "cutter_flute_length",
    "cutter_stick_out",
    "clamping_force",
    "grip_depth",
];

fn rows() -> RecordBatch {
    let depths: ArrayRef = Arc::new(Float64Array::from(vec![
        Some(0.2),
        None,
        Some(0.8),
        Some(-1.0),
    ]));
    RecordBatch::try_from_iter([("radial_depth_mm", depths)]).unwrap()
}

fn study(start: Start, constants: &[(String, String)]) -> gullet::Result<Answer> {
    let rows = rows();
    let library = Arc::new(Library::builtin().clone());
    let options = StudyOptions::default();
    let plan = StudyPlan::starting_from(&rows.schema(), constants, start, library, &options)?;
    plan.run(&rows, &[], Execution::default())
}

fn of_parts() -> Start {
    Start {
        parts: parts(),
        ..Start::default()
    }
}

#[test]
fn parts_mean_what_constants_mean() {
    let by_constants = study(Start::default(), &constants(&["radial_depth"], &[])).unwrap();
    let left: Vec<&str> = [&["radial_depth"], OF_PARTS].concat();
    let by_parts = study(of_parts(), &constants(&left, &[])).unwrap();
    assert_eq!(by_parts.summary, by_constants.summary);
    assert_eq!(by_parts.summary.ok(), 2);
    assert_eq!(by_parts.batch, by_constants.batch);
}

#[test]
fn constants_come_before_parts_and_parts_before_the_defaults() {
    let left: Vec<&str> = [&["radial_depth"], OF_PARTS].concat();
    let thicker = [("cutter_shank_diameter", "20 mm")];
    let one = study(of_parts(), &constants(&left, &[])).unwrap();
    let other = study(of_parts(), &constants(&left, &thicker)).unwrap();
    let deflection = |answer: &Answer| {
        let place = answer.batch.schema().index_of("deflection_mm").unwrap();
        answer.batch.column(place).clone()
    };
    assert_ne!(&deflection(&one), &deflection(&other));
    let own = part("practice", r#"{"base": "experienced"}"#);
    let mut start = of_parts();
    start.parts.push(own);
    let rows = rows();
    let library = Library::builtin();
    let given = constants(&left, &[]);
    let options = StudyOptions::default();
    let told = |start| {
        let plan = StudyPlan::starting_from(&rows.schema(), &given, start, library, &options);
        plan.unwrap().assumptions().join("\n")
    };
    assert!(told(of_parts()).contains("practice"));
    assert!(!told(start).contains("practice"));
    // A part says of itself what it assumes.
    assert!(
        !told(of_parts()).contains("cutter_"),
        "{}",
        told(of_parts())
    );
}

#[test]
fn what_no_part_covers_is_missing_and_what_the_caller_tells_is_not() {
    let mut start = of_parts();
    start
        .parts
        .retain(|part| !matches!(part, Part::Hold(_) | Part::Machine(_)));
    let missing = |start: Start| -> Vec<String> {
        let error = study(start, &[]).unwrap_err();
        let missing = |problem: &&gullet::Problem| problem.code == Code::Missing;
        let names = error.problems().iter().filter(missing);
        names.map(|problem| problem.parameter.clone()).collect()
    };
    let names = missing(start.clone());
    assert_eq!(
        names,
        [
            "axial_depth",
            "clamping_force",
            "grip_depth",
            "machine",
            "operation"
        ]
    );
    start.told = ["hold", "machine", "axial_depth"]
        .map(str::to_owned)
        .to_vec();
    assert_eq!(missing(start), ["operation"]);
}

#[test]
fn names_as_plain_text() {
    let rows = rows();
    let given = constants(&["radial_depth"], &[]);
    let run = |dictionaries| {
        let options = StudyOptions {
            dictionaries,
            ..StudyOptions::default()
        };
        let library = Library::builtin();
        let plan = StudyPlan::new(&rows.schema(), &given, None, library, &options).unwrap();
        let answer = plan.run(&rows, &[], Execution::default()).unwrap();
        assert_eq!(answer.batch.schema(), plan.schema());
        answer.batch
    };
    let (plain, encoded) = (run(false), run(true));
    for name in ["status", "binding_limit", "held_by", "warnings"] {
        let place = plain.schema().index_of(name).unwrap();
        let plain = plain.column(place).as_string::<i32>();
        let encoded = encoded.column(place);
        let encoded = encoded.as_any_dictionary();
        let values = encoded.values().as_string::<i32>();
        for row in 0..rows.num_rows() {
            let key = encoded.normalized_keys()[row];
            let text = (!encoded.is_null(row)).then(|| values.value(key));
            assert_eq!(
                (!plain.is_null(row)).then(|| plain.value(row)),
                text,
                "{name}"
            );
        }
    }
}
