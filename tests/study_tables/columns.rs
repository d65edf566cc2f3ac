//! What columns are for, and all their problems at once.

use super::*;
use arrow_array::{BooleanArray, Int64Array};
use arrow_schema::DataType;
use gullet::error::Code;
use gullet::operation::{Operation, process};
use gullet::plan::Job;
use gullet::quantity::UnitSystem;
use gullet::study::Base;
use gullet_table::{Columns, Role, Takes, TextNumbers};

fn schema(columns: &[(&str, DataType)]) -> Schema {
    let fields: Vec<Field> = columns
        .iter()
        .map(|(name, data_type)| Field::new(*name, data_type.clone(), true))
        .collect();
    Schema::new(fields)
}

fn problems(columns: &[(&str, DataType)], constants: &[(String, String)]) -> Vec<(Code, String)> {
    let found = StudyPlan::new(
        &schema(columns),
        constants,
        None,
        Library::builtin(),
        &StudyOptions::default(),
    );
    match found {
        Ok(_) => Vec::new(),
        Err(error) => error
            .problems()
            .iter()
            .map(|problem| (problem.code, problem.parameter.clone()))
            .collect(),
    }
}

#[test]
fn every_input_and_choice_has_a_column_that_is_read() {
    let milling = Operation::ALL.iter().map(|operation| operation.name());
    for operation in milling.chain(process::ALL.iter().map(|process| process.name)) {
        let takes = Takes::of_operation(Some(operation));
        for input in takes.numbers() {
            for unit in gullet::quantity::units(input.kind) {
                let suffix = unit.suffix();
                let name = match suffix.is_empty() {
                    true => input.name.to_owned(),
                    false => format!("{}_{suffix}", input.name),
                };
                assert_eq!(
                    takes.role(&name),
                    Role::Number(*input, unit),
                    "{operation}: {name}"
                );
            }
        }
        for pick in takes.picks() {
            assert_eq!(takes.role(pick.name()), Role::Choice(*pick), "{operation}");
        }
    }
}

#[test]
fn missing_columns_wrong_units_and_wrong_types_are_told_together() {
    let columns = [
        ("axial_depth_n", DataType::Float64),
        ("radial_depth_mm", DataType::Utf8),
        ("cutter_diameter", DataType::Float64),
        ("length_mm", DataType::Float64),
        ("length_in", DataType::Float64),
        ("material", DataType::Int32),
        ("grip_dept_mm", DataType::Float64),
        ("part", DataType::Utf8),
    ];
    let constants = [
        ("length", "3 in"),
        ("cutter_teeth", "two"),
        ("machine", "none"),
        ("depth", "1 mm"),
    ]
    .map(|(name, value)| (name.to_owned(), value.to_owned()));
    let found = problems(&columns, &constants);
    for wanted in [
        (Code::UnitUnknown, "axial_depth_n"),
        (Code::WrongType, "radial_depth_mm"),
        (Code::UnitMissing, "cutter_diameter"),
        (Code::Duplicate, "length_in"),
        (Code::Duplicate, "length"),
        (Code::WrongType, "material"),
        (Code::UnknownName, "grip_dept_mm"),
        (Code::NumberUnreadable, "cutter_teeth"),
        (Code::UnknownName, "machine"),
        (Code::UnknownName, "constant"),
        (Code::Missing, "cutter_flute_length"),
        (Code::Missing, "cutter_stick_out"),
        (Code::Missing, "clamping_force"),
        (Code::Missing, "part_height"),
        (Code::Missing, "operation"),
        (Code::Missing, "cutter_form"),
        (Code::Missing, "cutter_material"),
    ] {
        let wanted = (wanted.0, wanted.1.to_owned());
        assert!(found.contains(&wanted), "{wanted:?} is not in {found:?}");
    }
    assert_eq!(found.len(), 17, "{found:?}");
}

#[test]
fn types_that_are_no_numbers_are_refused_with_the_reason() {
    for data_type in [
        DataType::Utf8,
        DataType::LargeUtf8,
        DataType::Utf8View,
        DataType::Decimal128(10, 3),
        DataType::Float16,
        DataType::Null,
        DataType::Boolean,
        DataType::Binary,
        DataType::Date32,
        DataType::RunEndEncoded(
            Arc::new(Field::new("run_ends", DataType::Int32, false)),
            Arc::new(Field::new("values", DataType::Float64, true)),
        ),
        DataType::Dictionary(Box::new(DataType::Int32), Box::new(DataType::Float64)),
    ] {
        let schema = schema(&[("axial_depth_mm", data_type.clone())]);
        let constants = constants(&["axial_depth"], &[]);
        let options = StudyOptions::default();
        let Err(error) = StudyPlan::new(&schema, &constants, None, Library::builtin(), &options)
        else {
            panic!("{data_type} is taken");
        };
        let problem = error.first();
        assert_eq!(
            (problem.code, error.problems().len()),
            (Code::WrongType, 1),
            "{error}"
        );
        assert!(problem.value.contains(&data_type.to_string()), "{error}");
        assert!(
            !problem.remedy.is_empty() && !problem.admissible.is_empty(),
            "{error}"
        );
    }
}

#[test]
fn units_of_either_system_give_the_same_bits_as_text() {
    let by_column = batch(vec![
        ("axial_depth_in", numbers(&[Some(0.25)])),
        ("cutter_diameter_in", numbers(&[Some(0.5)])),
    ]);
    let by_constant = batch(vec![("part", texts(&[Some("a")]))]);
    let with = [("axial_depth", "1/4 in"), ("cutter_diameter", "1/2 in")];
    let one = run(&by_column).batch;
    let plan = plan(&by_constant, &with, &StudyOptions::default()).unwrap();
    let other = plan
        .run(&by_constant, &[], Execution::default())
        .unwrap()
        .batch;
    for name in [
        "spindle_speed_rpm",
        "time_s",
        "deflection_mm",
        "peak_force_n",
    ] {
        let bits = |batch| cells(batch, name)[0].unwrap().to_bits();
        assert_eq!(bits(&one), bits(&other), "{name}");
    }
}

#[test]
fn results_carry_their_unit_in_name_and_metadata() {
    let rows = batch(vec![("axial_depth_mm", numbers(&[Some(6.0)]))]);
    for (units, name, symbol) in [
        (UnitSystem::Metric, "table_feed_mm_per_min", "mm/min"),
        (UnitSystem::Inch, "table_feed_in_per_min", "in/min"),
        (UnitSystem::Metric, "cutting_speed_m_per_min", "m/min"),
        (UnitSystem::Inch, "cutting_speed_ft_per_min", "ft/min"),
        (UnitSystem::Inch, "motor_power_hp", "hp"),
        (UnitSystem::Metric, "torque_n_m", "N.m"),
    ] {
        let options = StudyOptions {
            units,
            columns: Columns::All,
            ..StudyOptions::default()
        };
        let schema = plan(&rows, &[], &options).unwrap().schema();
        let field = schema.field_with_name(name).unwrap();
        assert_eq!(
            field.metadata().get("unit").map(String::as_str),
            Some(symbol)
        );
        assert!(field.metadata().contains_key("kind") && field.metadata().contains_key("meaning"));
    }
}

#[test]
fn named_results_are_written_and_unknown_ones_refused() {
    let rows = batch(vec![("axial_depth_mm", numbers(&[Some(6.0)]))]);
    let named = |names: &[&str]| StudyOptions {
        columns: Columns::Named(names.iter().map(|name| (*name).to_owned()).collect()),
        ..StudyOptions::default()
    };
    let schema = plan(&rows, &[], &named(&["time", "deflection_mm"]))
        .unwrap()
        .schema();
    let names: Vec<&str> = schema
        .fields()
        .iter()
        .map(|field| field.name().as_str())
        .collect();
    let wanted = [
        "axial_depth_mm",
        "time_s",
        "deflection_mm",
        "status",
        "binding_limit",
        "held_by",
        "warnings",
    ];
    assert_eq!(names, wanted);
    let Err(error) = plan(&rows, &[], &named(&["time", "time_s", "tim"])) else {
        panic!("taken");
    };
    let codes: Vec<Code> = error
        .problems()
        .iter()
        .map(|problem| problem.code)
        .collect();
    assert_eq!(codes, [Code::Duplicate, Code::UnknownName]);
}

#[test]
fn a_column_of_the_rows_keeps_its_name_before_a_result() {
    let rows = batch(vec![
        ("spindle_speed_rpm", numbers(&[Some(900.0)])),
        ("status", texts(&[Some("urgent")])),
    ]);
    let answer = run(&rows).batch;
    assert_eq!(cells(&answer, "spindle_speed_rpm"), [Some(900.0)]);
    assert_eq!(cells(&answer, "result_spindle_speed_rpm"), [Some(900.0)]);
    assert_eq!(words(&answer, "result_status"), ["ok"]);
    let both = batch(vec![
        ("status", texts(&[None])),
        ("result_status", texts(&[None])),
    ]);
    let Err(error) = plan(&both, &[], &StudyOptions::default()) else {
        panic!("taken");
    };
    assert_eq!(error.first().parameter, "result_status");
}

#[test]
fn other_columns_are_passed_through_as_they_are() {
    let rows = batch(vec![
        ("id", Arc::new(Int64Array::from(vec![Some(7), None]))),
        ("urgent", Arc::new(BooleanArray::from(vec![true, false]))),
        ("radial_depth_mm", numbers(&[Some(1.0), Some(0.5)])),
        ("note", texts(&[Some("see drawing"), None])),
    ]);
    let answer = run(&rows);
    for place in 0..4 {
        assert_eq!(answer.batch.column(place), rows.column(place));
    }
    let plan = plan(&rows, &[], &StudyOptions::default()).unwrap();
    assert_eq!(plan.passed_through(), ["id", "urgent", "note"]);
}

#[test]
fn a_name_like_that_of_an_input_can_be_passed_through_by_name() {
    let rows = batch(vec![("axial_depth_max_mm", numbers(&[Some(1.0)]))]);
    let Err(error) = StudyPlan::new(
        &rows.schema(),
        &constants(&[], &[]),
        None,
        Library::builtin(),
        &StudyOptions::default(),
    ) else {
        panic!("taken");
    };
    assert_eq!(
        (error.code(), error.problems().len()),
        (Code::UnitUnknown, 1),
        "{error}"
    );
    let options = |name: &str| StudyOptions {
        pass_through: vec![name.to_owned()],
        ..StudyOptions::default()
    };
    let plan = |name: &str| {
        let constants = constants(&[], &[]);
        StudyPlan::new(
            &rows.schema(),
            &constants,
            None,
            Library::builtin(),
            &options(name),
        )
        .map(drop)
    };
    assert!(plan("axial_depth_max_mm").is_ok());
    assert_eq!(plan("axial").unwrap_err().first().parameter, "pass_through");
}

const JOB: &str = r#"
    [material]
    id = "6061"
    [blank]
    length = "3 in"
    width = "2 in"
    height = "1 in"
    [cutter]
    form = "square"
    material = "HSS"
    diameter = "1/2 in"
    teeth = 2
    flute_length = "1 in"
    stick_out = "1.5 in"
    [machine]
    base = "manual-knee-mill"
    name = "knee mill 2"
    [hold]
    clamping_force = "15 kN"
    grip_depth = "1/2 in"
    [cut]
    operation = "side-milling"
    remove = "0.120 in"
    axial_depth = "0.25 in"
"#;

#[test]
fn a_job_gives_what_no_column_gives() {
    let job = Job::from_toml(JOB, Library::builtin()).unwrap();
    let with = |columns: &[(&str, DataType)]| {
        let options = StudyOptions::default();
        StudyPlan::new(
            &schema(columns),
            &[],
            Some(Base::of_job(&job)),
            Library::builtin(),
            &options,
        )
        .map(drop)
    };
    assert!(with(&[("radial_depth_in", DataType::Float64)]).is_ok());
    // The job's stock is split into passes: a study is told the depth of each.
    let error = with(&[]).unwrap_err();
    assert_eq!(
        (error.code(), error.first().parameter.as_str()),
        (Code::Missing, "radial_depth")
    );
    assert_eq!(error.problems().len(), 1, "{error}");
    // A form without its size.
    let rows = batch(vec![
        ("radial_depth_in", numbers(&[Some(0.02); 4])),
        (
            "cutter_form",
            texts(&[
                Some("square"),
                Some("corner-radius"),
                Some("ball_nose"),
                Some("Ball Nose"),
            ]),
        ),
        (
            "machine",
            texts(&[
                Some("knee mill 2"),
                Some("knee mill 2"),
                Some("small-cnc-mill"),
                Some("mill"),
            ]),
        ),
    ]);
    let plan = StudyPlan::new(
        &rows.schema(),
        &[],
        Some(Base::of_job(&job)),
        Library::builtin(),
        &StudyOptions::default(),
    )
    .unwrap();
    let answer = plan.run(&rows, &[], Execution::default()).unwrap();
    assert_eq!(status(&answer), ["ok", "missing", "ok", "unknown_name"]);
}

#[test]
fn text_numbers_are_read_where_rows_come_from_text() {
    let rows = batch(vec![
        (
            "radial_depth_mm",
            texts(&[
                Some("1.0"),
                Some("1/2"),
                Some("0,5"),
                Some(""),
                Some("nan"),
                Some(" 0.50 "),
            ]),
        ),
        (
            "cutter_teeth",
            texts(&[
                Some("2"),
                Some("2"),
                Some("2"),
                Some("2"),
                Some("2"),
                Some("2.5"),
            ]),
        ),
    ]);
    for text_numbers in [TextNumbers::Kept, TextNumbers::Replaced] {
        let options = StudyOptions {
            text_numbers,
            ..StudyOptions::default()
        };
        let plan = plan(&rows, &[], &options).unwrap();
        let answer = plan.run(&rows, &[], Execution::default()).unwrap();
        let wanted = [
            "ok",
            "ok",
            "number_unreadable",
            "missing",
            "not_finite",
            "not_whole",
        ];
        assert_eq!(status(&answer), wanted);
        let told: Vec<usize> = answer.problems.iter().map(|told| told.row).collect();
        assert_eq!(told, [2, 4]);
        assert_eq!(answer.problems[0].problem.parameter, "radial_depth_mm");
        match text_numbers {
            TextNumbers::Kept => assert_eq!(answer.batch.column(0), rows.column(0)),
            _ => assert_eq!(
                cells(&answer.batch, "radial_depth_mm"),
                [Some(1.0), Some(0.5), None, None, None, Some(0.5)]
            ),
        }
    }
}
