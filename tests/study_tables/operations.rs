//! Tables of operations that have columns of their own: every row as the scalar call, and what is
//! wrong with columns and cells.

use super::*;
use arrow_array::DictionaryArray;
use arrow_array::types::Int32Type;
use gullet::error::Code;
use gullet::formula::split_arguments;
use gullet::model::{Machine, Practice};
use gullet::operation::process::{self, Bench, Process, ProcessCut, Request};
use gullet::plan::Part;
use gullet::quantity::{UnitSystem, column_unit, to_unit, unit};
use gullet::study::{ProcessStudy, Spread, Uncertain, Uncertainty};
use gullet_table::{Columns, Pick, Start, Takes, with_unit};

fn owned(pairs: &[(&str, &str)]) -> Vec<(String, String)> {
    let pair = |(name, value): &(&str, &str)| ((*name).to_owned(), (*value).to_owned());
    pairs.iter().map(pair).collect()
}

/// What holes have in common.
const HOLES: &[(&str, &str)] = &[
    ("operation", "drilling"),
    ("material", "1018"),
    ("machine", "small-cnc-mill"),
    ("practice", "experienced"),
    ("cutter_material", "HSS"),
];

/// A plan of holes, with constants beside.
fn holes(
    rows: &RecordBatch,
    with: &[(&str, &str)],
    options: &StudyOptions,
) -> Result<StudyPlan<'static>, Error> {
    let given = |name: &str| rows.schema().index_of(name).is_ok();
    let common = HOLES.iter().filter(|(name, _)| !given(name)).copied();
    let constants: Vec<(&str, &str)> = common.chain(with.iter().copied()).collect();
    let library = Library::builtin();
    StudyPlan::new(&rows.schema(), &owned(&constants), None, library, options)
}

fn all() -> StudyOptions {
    StudyOptions {
        columns: Columns::All,
        ..StudyOptions::default()
    }
}

fn drilled(rows: &RecordBatch, with: &[(&str, &str)]) -> Answer {
    let plan = holes(rows, with, &all()).unwrap_or_else(|error| panic!("{error}"));
    plan.run(rows, &[], Execution::default()).unwrap()
}

fn problems<T>(result: Result<T, Error>) -> Vec<(Code, String)> {
    let error = result.err().expect("an error");
    let problems = error.problems().iter();
    problems.map(|it| (it.code, it.parameter.clone())).collect()
}

/// The scalar cut.
fn cut(request: Request, material: &str, tool: &str, machine: &str) -> ProcessCut {
    let library = Library::builtin();
    request
        .cut(&Bench {
            library,
            material: library.material(material).unwrap(),
            tool: gullet::table::ToolMaterial::parse(tool).unwrap(),
            machine: &Machine::builtin(machine).unwrap(),
            practice: &Practice::builtin("experienced").unwrap(),
            units: UnitSystem::Metric,
        })
        .unwrap_or_else(|error| panic!("{error}"))
}

/// Every setting and result of a row has the bits of the scalar cut.
fn same(answer: &Answer, row: usize, cut: &ProcessCut, process: &Process) {
    let schema = answer.batch.schema();
    let mut compared = 0;
    for field in schema.fields() {
        let known = ProcessStudy::fields(process);
        let name =
            |name: &str| field.name() == name || field.name().starts_with(&format!("{name}_"));
        let Some(meaning) = field.metadata().get("meaning") else {
            continue;
        };
        let result = known
            .iter()
            .find(|it| name(it.name) && it.meaning == meaning);
        let Some(value) = result.and_then(|result| cut.value(result.name)) else {
            continue;
        };
        let symbol = field.metadata().get("unit").map_or("", String::as_str);
        let expected = to_unit(value.si, unit(value.kind, symbol).unwrap());
        assert_eq!(
            cells(&answer.batch, field.name())[row],
            Some(expected),
            "{}",
            field.name()
        );
        compared += 1;
    }
    assert!(compared >= process.results.len() + 7, "{compared}");
}

#[test]
fn every_operation_takes_its_example_as_constants() {
    let rows = batch(vec![("part", texts(&[Some("plate")]))]);
    for process in process::ALL {
        let example = &process.example;
        let mut constants = split_arguments(example.inputs).unwrap();
        constants.extend(owned(&[
            ("operation", process.name),
            ("material", example.material),
            ("machine", example.machine),
            ("practice", "experienced"),
            ("cutter_material", example.tool.name()),
        ]));
        let plan = StudyPlan::new(&rows.schema(), &constants, None, Library::builtin(), &all());
        let plan = plan.unwrap_or_else(|error| panic!("{}: {error}", process.name));
        let answer = plan.run(&rows, &[], Execution::default()).unwrap();
        assert_eq!(status(&answer), ["ok"], "{}", process.name);
        let request = Request::of(process).texts(example.inputs).unwrap();
        let cut = cut(
            request,
            example.material,
            example.tool.name(),
            example.machine,
        );
        same(&answer, 0, &cut, process);
        let binding = cut.binding().map_or("", |limit| limit.name);
        assert_eq!(words(&answer.batch, "binding_limit"), [binding]);
        let held = cut.held_by.map_or("", |limit| limit.name());
        assert_eq!(words(&answer.batch, "held_by"), [held]);
    }
}

#[test]
fn every_operation_takes_its_example_as_columns() {
    for process in process::ALL {
        let example = &process.example;
        let request = Request::of(process).texts(example.inputs).unwrap();
        let takes = Takes::of_operation(Some(process.name));
        let mut columns: Vec<(String, ArrayRef)> = vec![
            ("material".to_owned(), texts(&[Some(example.material)])),
            ("machine".to_owned(), texts(&[Some(example.machine)])),
            ("practice".to_owned(), texts(&[Some("experienced")])),
            (
                "cutter_material".to_owned(),
                texts(&[Some(example.tool.name())]),
            ),
        ];
        for number in takes.numbers() {
            let si = request.values()[number.place];
            let given = si.is_finite();
            let unit = column_unit(number.kind, UnitSystem::Inch);
            let default = process.inputs[number.place].parameter.default;
            // A null where nothing is given.
            let cell = (given && default != Some(si)).then(|| to_unit(si, unit));
            columns.push((with_unit(number.name, unit), numbers(&[cell])));
        }
        for pick in takes.picks() {
            if let Pick::Word(word) = pick {
                let place = request.values()[word.place] as usize;
                columns.push((word.name.to_owned(), texts(&[Some(word.words[place])])));
            }
        }
        let rows = RecordBatch::try_from_iter(columns).unwrap();
        let constants = owned(&[("operation", process.name)]);
        let library = Library::builtin();
        let options = StudyOptions::default();
        let plan = StudyPlan::new(&rows.schema(), &constants, None, library, &options);
        let plan = plan.unwrap_or_else(|error| panic!("{}: {error}", process.name));
        assert_eq!(plan.assumptions().len(), 0, "{:?}", plan.assumptions());
        let answer = plan.run(&rows, &[], Execution::default()).unwrap();
        assert_eq!(status(&answer), ["ok"], "{}", process.name);
        let cut = cut(
            request,
            example.material,
            example.tool.name(),
            example.machine,
        );
        let wanted = cut.value("time").unwrap().si;
        let time = answer.summary.cutting_time() as f64 / 1e9;
        assert!(
            (time - wanted).abs() < 1e-8 + 1e-9 * wanted,
            "{}: {time} {wanted}",
            process.name
        );
        let powered = plan.energy().is_some();
        assert_eq!(powered, answer.summary.energy() > 0, "{}", process.name);
    }
}

#[test]
fn each_row_is_the_scalar_cut() {
    let encoded: DictionaryArray<Int32Type> =
        vec!["blind", "through", "Blind"].into_iter().collect();
    let materials = [Some("1018"), Some("6061"), Some("1018")];
    let machines = [
        Some("small-cnc-mill"),
        Some("small-cnc-mill"),
        Some("manual-knee-mill"),
    ];
    let rows = batch(vec![
        ("diameter_mm", numbers(&[Some(8.5), Some(5.0), Some(6.35)])),
        ("depth_in", numbers(&[Some(0.75), Some(0.5), Some(0.25)])),
        ("hole", Arc::new(encoded)),
        ("material", texts(&materials)),
        ("machine", texts(&machines)),
        (
            "cutter_material",
            texts(&[Some("HSS"), Some("hss"), Some("hss")]),
        ),
    ]);
    let answer = drilled(&rows, &[]);
    assert_eq!(status(&answer), ["ok"; 3]);
    for (row, (diameter, depth, hole, tool)) in [
        ("8.5 mm", "0.75 in", "blind", "HSS"),
        ("5 mm", "0.5 in", "through", "HSS"),
        ("6.35 mm", "0.25 in", "blind", "HSS"),
    ]
    .into_iter()
    .enumerate()
    {
        let request = Request::new("drilling")
            .and_then(|it| it.text("diameter", diameter))
            .and_then(|it| it.text("depth", depth))
            .and_then(|it| it.text("hole", hole))
            .unwrap();
        let cut = cut(
            request,
            materials[row].unwrap(),
            tool,
            machines[row].unwrap(),
        );
        same(&answer, row, &cut, process::find("drilling").unwrap());
    }
    // The handwheel's pace is none on a machine without one.
    let wheel = cells(&answer.batch, "handwheel_rate_rpm");
    assert_eq!(
        wheel.iter().map(Option::is_some).collect::<Vec<_>>(),
        [false, false, true]
    );
}

#[test]
fn nulls_are_the_default_where_there_is_one_and_else_missing() {
    let rows = batch(vec![
        (
            "diameter_mm",
            numbers(&[Some(8.0), None, Some(8.0), Some(8.0)]),
        ),
        ("depth_mm", numbers(&[Some(16.0); 4])),
        (
            "point_angle_deg",
            numbers(&[None, Some(118.0), Some(118.0), Some(140.0)]),
        ),
        ("feed_mm", numbers(&[None, None, None, Some(0.1)])),
        (
            "hole",
            texts(&[None, Some("through"), Some("through"), Some("through")]),
        ),
    ]);
    let answer = drilled(&rows, &[]);
    assert_eq!(status(&answer), ["ok", "missing", "ok", "ok"]);
    let time = cells(&answer.batch, "time_s");
    let point = cells(&answer.batch, "point_length_mm");
    assert!(time[0].is_some() && time[1].is_none());
    assert_eq!((time[0], point[0]), (time[2], point[2]));
    assert_ne!(point[0], point[3]);
    assert_eq!(cells(&answer.batch, "feed_mm").last(), Some(&Some(0.1)));
    assert!(answer.batch.schema().index_of("result_feed_mm").is_ok());
}

#[test]
fn a_bad_cell_gives_its_row_a_code() {
    let rows = batch(vec![
        (
            "diameter_mm",
            numbers(&[Some(8.0), Some(-8.0), Some(f64::NAN), Some(8.0), Some(8.0)]),
        ),
        (
            "depth_mm",
            numbers(&[Some(16.0), Some(16.0), Some(16.0), Some(16.0), Some(400.0)]),
        ),
        (
            "hole",
            texts(&[Some("through"), None, None, Some("trough"), Some("blind")]),
        ),
    ]);
    let answer = drilled(&rows, &[]);
    assert_eq!(
        status(&answer),
        [
            "ok",
            "out_of_range",
            "not_finite",
            "unknown_name",
            "limit_exceeded"
        ]
    );
    assert_eq!(words(&answer.batch, "binding_limit")[4], "depth_ratio");
    let [told] = answer.problems.as_slice() else {
        panic!("{:?}", answer.problems)
    };
    assert_eq!((told.row, told.problem.parameter.as_str()), (3, "hole"));
    assert!(
        told.problem.to_string().contains("through"),
        "{}",
        told.problem
    );
    assert_eq!(answer.summary.ok(), 1);
}

#[test]
fn what_is_wrong_with_columns_and_constants_is_told_together() {
    let rows = batch(vec![
        ("diameter_n", numbers(&[Some(8.0)])),
        ("point_angle_deg", texts(&[Some("118")])),
        ("hole", numbers(&[Some(1.0)])),
        ("chisel_facter", numbers(&[Some(1.0)])),
        ("cutter_diameter_mm", numbers(&[Some(8.0)])),
    ]);
    let with = [("axial_depth", "6 mm"), ("feed", "0.1")];
    let told = problems(holes(&rows, &with, &StudyOptions::default()));
    for expected in [
        (Code::UnitUnknown, "diameter_n"),
        (Code::WrongType, "point_angle_deg"),
        (Code::WrongType, "hole"),
        (Code::UnknownName, "chisel_facter"),
        (Code::UnknownName, "constant"),
        (Code::UnitMissing, "feed"),
        (Code::Missing, "depth"),
    ] {
        assert!(
            told.contains(&(expected.0, expected.1.to_owned())),
            "{expected:?}: {told:?}"
        );
    }
    assert_eq!(told.len(), 7, "{told:?}");
    let nothing = batch(vec![("part", texts(&[None]))]);
    let constants = owned(&[("operation", "drilling")]);
    let library = Library::builtin();
    let plan = StudyPlan::new(&nothing.schema(), &constants, None, library, &all());
    let names: Vec<String> = problems(plan).into_iter().map(|(_, name)| name).collect();
    assert_eq!(
        names,
        [
            "diameter",
            "depth",
            "material",
            "machine",
            "cutter_material"
        ]
    );
}

#[test]
fn a_column_mixes_milling_operations_alone() {
    for words in [
        [Some("side-milling"), Some("drilling")],
        [Some("Drilling"); 2],
    ] {
        let encoded: DictionaryArray<Int32Type> = words.into_iter().collect();
        for column in [texts(&words), Arc::new(encoded) as ArrayRef] {
            let rows = batch(vec![("operation", column)]);
            let plan = plan(&rows, &[], &StudyOptions::default()).unwrap();
            for told in [
                plan.check_operations(&rows),
                plan.run(&rows, &[], Execution::default()).map(drop),
            ] {
                let error = told.unwrap_err();
                assert_eq!(error.code(), Code::Inconsistent);
                let text = error.to_string();
                assert!(text.contains("split the table by operation"), "{text}");
                assert!(text.contains("operation=drilling"), "{text}");
            }
        }
    }
    let rows = batch(vec![(
        "operation",
        texts(&[Some("side-milling"), Some("slotting")]),
    )]);
    let milled = plan(&rows, &[], &StudyOptions::default()).unwrap();
    milled.check_operations(&rows).unwrap();
    // A constant and a column: the column may be passed through.
    let columns = [
        ("diameter", "8 mm"),
        ("depth", "16 mm"),
        ("operation", "drilling"),
    ];
    let told = problems(holes(&rows, &columns, &StudyOptions::default()));
    assert_eq!(told, [(Code::Duplicate, "operation".to_owned())]);
    let options = StudyOptions {
        pass_through: vec!["operation".to_owned()],
        ..StudyOptions::default()
    };
    let drilled = holes(&rows, &columns, &options).unwrap();
    let answer = drilled.run(&rows, &[], Execution::default()).unwrap();
    assert_eq!(status(&answer), ["ok", "ok"]);
}

#[test]
fn an_operation_that_is_misspelled_is_told_with_its_own_columns_at_hand() {
    let rows = batch(vec![("diameter_mm", numbers(&[Some(8.0)]))]);
    let mut constants = owned(&HOLES[1..]);
    constants.extend(owned(&[("operation", "driling"), ("depth", "16 mm")]));
    let library = Library::builtin();
    let plan = StudyPlan::new(&rows.schema(), &constants, None, library, &all());
    let error = plan.err().unwrap();
    assert!(
        error.to_string().contains("did you mean drilling?"),
        "{error}"
    );
    assert_eq!(
        problems::<()>(Err(error)),
        [(Code::UnknownName, "operation".to_owned())]
    );
}

#[test]
fn totals_hold_time_cost_and_the_energy_of_the_motor() {
    let rows = batch(vec![("diameter_mm", numbers(&[Some(8.0), Some(5.0)]))]);
    let with = [("depth", "10 mm"), ("cost_per_hour", "60")];
    let options = StudyOptions::default();
    let plan = holes(&rows, &with, &options).unwrap();
    assert!(plan.energy().unwrap().contains("motor"));
    assert!(
        plan.assumptions()
            .contains(&"point_angle: 118 deg".to_owned())
    );
    assert!(plan.assumptions().contains(&"hole: through".to_owned()));
    let decided = ["spindle_speed", "feed", "maximum_speed"];
    let assumed = |name: &&str| plan.assumptions().iter().any(|it| it.starts_with(*name));
    assert!(!decided.iter().any(assumed), "{:?}", plan.assumptions());
    let answer = plan.run(&rows, &[], Execution::default()).unwrap();
    let times = cells(&answer.batch, "time_s");
    let powers = cells(&answer.batch, "motor_power_kw");
    let costs = cells(&answer.batch, "cost");
    let energy: f64 = times
        .iter()
        .zip(&powers)
        .map(|(t, p)| t.unwrap() * p.unwrap())
        .sum();
    let summary = &answer.summary;
    assert!((summary.energy() as f64 / 1e9 - energy).abs() < 1e-8);
    let time: f64 = times.iter().flatten().sum();
    assert!((summary.cutting_time() as f64 / 1e9 - time).abs() < 1e-8);
    assert!((costs[0].unwrap() - times[0].unwrap() / 60.0).abs() < 1e-12);
    assert_eq!(
        summary.binding().iter().map(|(_, rows)| rows).sum::<u64>(),
        2
    );
    // Results that nobody asked for by name: settings, the operation's own, the binding share.
    let schema = answer.batch.schema();
    for name in [
        "feed_speed_mm_per_min",
        "thrust_n",
        "point_length_mm",
        "binding_share",
    ] {
        assert!(schema.index_of(name).is_ok(), "{name}: {schema:?}");
    }
}

#[test]
fn draws_and_parts_of_milling_are_refused() {
    let rows = batch(vec![("diameter_mm", numbers(&[Some(8.0)]))]);
    let options = StudyOptions {
        uncertainty: Some(Uncertainty {
            spreads: vec![(
                Uncertain::named("cutting_force").unwrap(),
                Spread::parse("0.9..1.1").unwrap(),
            )],
            draws: 10,
            seed: 1,
            quantiles: vec![0.5],
            first_row: 0,
        }),
        ..StudyOptions::default()
    };
    let error = holes(&rows, &[("depth", "10 mm")], &options).err().unwrap();
    assert!(error.to_string().contains("not offered yet"), "{error}");
    assert_eq!(error.problems().len(), 1);

    let part = |section: &str, keys: &str| {
        Part::from_json(section, keys, Library::builtin())
            .unwrap()
            .0
    };
    let start = Start {
        parts: vec![
            part("machine", r#"{"base": "small-cnc-mill", "name": "mill 3"}"#),
            part(
                "hold",
                r#"{"clamping_force": "10 kN", "grip_depth": "15 mm"}"#,
            ),
        ],
        ..Start::default()
    };
    let constants = owned(&[
        ("operation", "drilling"),
        ("material", "1018"),
        ("cutter_material", "HSS"),
        ("depth", "10 mm"),
    ]);
    let library = Library::builtin();
    let plan = |start| StudyPlan::starting_from(&rows.schema(), &constants, start, library, &all());
    let told = problems(plan(start.clone()));
    assert_eq!(told, [(Code::Inconsistent, "hold".to_owned())]);
    let alone = Start {
        parts: start.parts[..1].to_vec(),
        ..Start::default()
    };
    let plan = plan(alone).unwrap();
    assert!(
        plan.assumptions()
            .contains(&"practice: training".to_owned())
    );
    let answer = plan.run(&rows, &[], Execution::default()).unwrap();
    assert_eq!(status(&answer), ["ok"]);
}
