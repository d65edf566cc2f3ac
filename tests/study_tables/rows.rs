//! Rows: the bits of the scalar call, codes, totals, borders between batches.

use super::*;
use gullet::error::Code;
use gullet::model::{Clamping, Cutter, CutterForm, Direction, Hold, Machine, PassKind, Practice};
use gullet::operation::{Lowering, Milling, Operation, Pass, Setup};
use gullet::quantity::{Kind, format_exact, parse, si, unit};
use gullet::table::ToolMaterial;
use gullet_table::{Columns, Summary};

/// Rows that differ in everything a table usually has, some of them bad.
fn many(count: usize) -> RecordBatch {
    let mut state = 88_172_645_463_325_252_u64;
    let mut share = move || {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        (state >> 11) as f64 / (1_u64 << 53) as f64
    };
    let mut column = |low: f64, high: f64, digits: i32| -> Vec<Option<f64>> {
        let scale = 10_f64.powi(digits);
        (0..count)
            .map(|_| Some(((low + (high - low) * share()) * scale).round() / scale))
            .collect()
    };
    let mut radial = column(0.05, 2.0, 3);
    let (axial, diameter, length) = (
        column(0.5, 20.0, 2),
        column(4.0, 20.0, 15),
        column(5.0, 300.0, 1),
    );
    for row in (7..count).step_by(31) {
        radial[row] = [None, Some(f64::NAN), Some(-1.0), Some(0.0)][row % 4];
    }
    let pick = |list: &[&'static str], step: usize| -> Vec<Option<&'static str>> {
        (0..count)
            .map(|row| Some(list[row / step % list.len()]))
            .collect()
    };
    batch(vec![
        (
            "material",
            texts(&pick(&["6061", "1018cd", "nothing", "o1"], 3)),
        ),
        (
            "machine",
            texts(&pick(&["manual-knee-mill", "small-cnc-mill"], 1)),
        ),
        (
            "operation",
            texts(&pick(&["side-milling", "slotting", "face-milling"], 5)),
        ),
        ("pass", texts(&pick(&["roughing", "finishing"], 2))),
        ("practice", texts(&pick(&["training", "experienced"], 7))),
        ("axial_depth_mm", numbers(&axial)),
        ("radial_depth_mm", numbers(&radial)),
        ("cutter_diameter_mm", numbers(&diameter)),
        ("length_mm", numbers(&length)),
        ("cost_per_hour", numbers(&column(40.0, 90.0, 2))),
    ])
}

fn plan_of(rows: &RecordBatch) -> StudyPlan<'static> {
    let options = StudyOptions {
        columns: Columns::All,
        ..StudyOptions::default()
    };
    plan(rows, &[], &options).unwrap_or_else(|error| panic!("{error}"))
}

fn cell(rows: &RecordBatch, name: &str, row: usize) -> f64 {
    cells(rows, name)[row].unwrap()
}

fn word(rows: &RecordBatch, name: &str, row: usize) -> String {
    let array = rows.column_by_name(name).unwrap();
    arrow_array::cast::as_string_array(array)
        .value(row)
        .to_owned()
}

/// A length as a person would write it.
fn length(rows: &RecordBatch, name: &str, row: usize) -> f64 {
    parse(Kind::Length, &format!("{} mm", cell(rows, name, row))).unwrap()
}

#[test]
fn rows_get_the_bits_of_the_scalar_call() {
    let rows = many(600);
    let answer = plan_of(&rows)
        .run(&rows, &[], Execution::default())
        .unwrap();
    let status = status(&answer);
    let library = Library::builtin();
    let mut compared = 0;
    for (row, status) in status.iter().enumerate() {
        let Ok(material) = library.material(&word(&rows, "material", row)) else {
            assert_eq!(status, "unknown_name");
            continue;
        };
        if cells(&rows, "radial_depth_mm")[row].is_none_or(f64::is_nan) {
            continue;
        }
        let named =
            |list: &[&'static str], name: &str| list.iter().position(|word| *word == name).unwrap();
        let operation = Operation::ALL[named(
            &["side-milling", "slotting", "face-milling"],
            &word(&rows, "operation", row),
        )];
        let kind = PassKind::ALL[named(&["roughing", "finishing"], &word(&rows, "pass", row))];
        let machine = Machine::builtin(&word(&rows, "machine", row)).unwrap();
        let practice = Practice::builtin(&word(&rows, "practice", row)).unwrap();
        let diameter = length(&rows, "cutter_diameter_mm", row);
        let cutter = Cutter {
            name: String::new(),
            form: CutterForm::Square,
            material: ToolMaterial::Hss,
            diameter: si(diameter),
            teeth: 2,
            flute_length: si(0.025),
            shank_diameter: si(diameter),
            stick_out: si(0.035),
            helix_angle: si(parse(Kind::Angle, "30 deg").unwrap()),
            rake_angle: None,
            centre_cutting: false,
            maximum_speed: None,
        };
        let hold = Hold {
            name: String::new(),
            clamping: Clamping::Force(si(10e3)),
            jaw_friction: si(0.15),
            jaw_height: None,
            grip_depth: si(0.015),
            parallels: Vec::new(),
            feed_across_jaws: false,
        };
        let radial = match operation {
            Operation::Slotting => diameter,
            _ => length(&rows, "radial_depth_mm", row),
        };
        let mut pass = Pass {
            operation,
            kind,
            axial_depth: si(length(&rows, "axial_depth_mm", row)),
            radial_depth: si(radial),
            offset: si(0.0),
            length: si(length(&rows, "length_mm", row)),
            direction: Direction::Conventional,
            mean_roughness: None,
            spindle_speed: None,
            feed_per_tooth: None,
        };
        pass.direction = practice.direction_with_backlash(kind, pass.depth(), machine.backlash);
        let setup = Setup {
            library,
            material,
            cutter: &cutter,
            machine: &machine,
            hold: &hold,
            practice: &practice,
            part_height: si(0.025),
            units: gullet::quantity::UnitSystem::Metric,
        };
        match Milling::new(&setup).numbers(&pass, Lowering::Allowed) {
            Err(error) => assert_eq!(status, error.code().name(), "row {row}: {error}"),
            Ok(cut) => {
                assert_eq!(status, "ok", "row {row}");
                compared += 1;
                let fields = cut
                    .settings
                    .fields()
                    .into_iter()
                    .chain(cut.consequences.fields());
                let schema = answer.batch.schema();
                for field in fields {
                    let column = schema
                        .fields()
                        .iter()
                        .skip(rows.num_columns())
                        .find(|column| {
                            column
                                .name()
                                .trim_start_matches("result_")
                                .strip_prefix(field.name)
                                .is_some_and(|rest| {
                                    rest.is_empty()
                                        || column.metadata().get("unit").is_some_and(|symbol| {
                                            rest == format!(
                                                "_{}",
                                                unit(field.kind, symbol).unwrap().suffix()
                                            )
                                        })
                                })
                        })
                        .unwrap_or_else(|| panic!("{}", field.name));
                    let computed = cells(&answer.batch, column.name())[row];
                    let symbol = column.metadata().get("unit").map_or("", String::as_str);
                    let expected = field
                        .value
                        .map(|si| gullet::quantity::to_unit(si, unit(field.kind, symbol).unwrap()));
                    assert_eq!(
                        computed.map(f64::to_bits),
                        expected.map(f64::to_bits),
                        "row {row}, {}: {}",
                        field.name,
                        format_exact(
                            field.kind,
                            field.value.unwrap_or_default(),
                            unit(field.kind, symbol).unwrap()
                        )
                    );
                }
            }
        }
    }
    assert!(compared > 100, "{compared} rows are good");
}

#[test]
fn borders_between_batches_and_threads_change_nothing() {
    let rows = many(300);
    let whole = plan_of(&rows)
        .run(&rows, &[], Execution::default())
        .unwrap();
    for size in [1, 7, 64, 133] {
        let plan = plan_of(&rows);
        let mut sum = Summary::default();
        let mut starts: Vec<usize> = (0..300).step_by(size).collect();
        starts.reverse();
        for start in starts {
            let length = size.min(300 - start);
            let execution = Execution::default().with_threads(1 + start % 3).unwrap();
            let part = plan
                .run(&rows.slice(start, length), &[], execution)
                .unwrap();
            assert_eq!(
                part.batch,
                whole.batch.slice(start, length),
                "{start} of {size}"
            );
            sum.add(&part.summary);
        }
        assert_eq!(sum, whole.summary);
    }
}

#[test]
fn totals_count_every_row_once() {
    let rows = many(2000);
    let answer = plan_of(&rows)
        .run(&rows, &[], Execution::default())
        .unwrap();
    let sum = &answer.summary;
    let status = status(&answer);
    assert_eq!(sum.rows(), 2000);
    let count =
        |list: &[String], word: &str| list.iter().filter(|other| *other == word).count() as u64;
    assert_eq!(sum.ok(), count(&status, "ok"));
    assert!(sum.ok() > 300, "{}", sum.ok());
    for (code, rows) in sum.codes() {
        assert_eq!(rows, count(&status, code.name()), "{code:?}");
    }
    let all: u64 = sum.codes().iter().map(|(_, rows)| rows).sum();
    assert_eq!(all + sum.ok(), 2000);
    assert!(
        sum.codes()
            .iter()
            .any(|(code, _)| *code == Code::LimitExceeded)
    );
    let bound: u64 = sum.binding().iter().map(|(_, rows)| rows).sum();
    assert_eq!(bound, sum.ok());
    let limits = words(&answer.batch, "binding_limit");
    let exceeded: u64 = sum.exceeded().iter().map(|(_, rows)| rows).sum();
    assert_eq!(
        bound + exceeded,
        limits.iter().filter(|limit| !limit.is_empty()).count() as u64
    );
    // Time and cost again, from the columns.
    let (mut time, mut cost) = (0.0, 0.0);
    let rates = cells(&rows, "cost_per_hour");
    let costs = cells(&answer.batch, "cost");
    for (row, seconds) in cells(&answer.batch, "time_s").into_iter().enumerate() {
        assert_eq!(seconds.is_some(), status[row] == "ok");
        assert_eq!(costs[row].is_some(), seconds.is_some());
        let Some(seconds) = seconds else { continue };
        time += seconds;
        cost += seconds / 3600.0 * rates[row].unwrap();
        let own = costs[row].unwrap();
        assert!((own - seconds / 3600.0 * rates[row].unwrap()).abs() <= 1e-12 * own);
    }
    let half_of_each_row = 0.5e-9 * 2000.0;
    assert!((sum.cutting_time() as f64 / 1e9 - time).abs() < half_of_each_row + 1e-9 * time);
    assert!((sum.cost().unwrap() as f64 / 1e6 - cost).abs() < 0.5e-6 * 2000.0 + 1e-9 * cost);
    assert!(sum.energy() > 0);
}

#[test]
fn rows_that_the_reader_refuses_keep_their_code() {
    let rows = batch(vec![(
        "radial_depth_mm",
        numbers(&[Some(1.0), None, Some(1.0)]),
    )]);
    let plan = plan(&rows, &[], &StudyOptions::default()).unwrap();
    let answer = plan
        .run(
            &rows,
            &[(0, Code::BadRow), (1, Code::BadRow)],
            Execution::default(),
        )
        .unwrap();
    assert_eq!(status(&answer), ["bad_row", "bad_row", "ok"]);
    let other = batch(vec![("radial_depth_in", numbers(&[Some(1.0)]))]);
    let error = plan.run(&other, &[], Execution::default()).unwrap_err();
    assert_eq!(error.code(), Code::Inconsistent);
}

#[test]
fn a_null_that_the_row_does_not_need_is_no_fault() {
    let rows = batch(vec![
        (
            "operation",
            texts(&[
                Some("slotting"),
                Some("side-milling"),
                None,
                Some("polishing"),
            ]),
        ),
        ("radial_depth_mm", numbers(&[None, None, Some(1.0), None])),
        ("offset_mm", numbers(&[None, None, None, None])),
        ("axial_depth_mm", numbers(&[Some(1.0); 4])),
    ]);
    let answer = run(&rows);
    assert_eq!(
        status(&answer),
        ["ok", "missing", "missing", "unknown_name"]
    );
    let told: Vec<(usize, &str)> = answer
        .problems
        .iter()
        .map(|told| (told.row, told.problem.parameter.as_str()))
        .collect();
    assert_eq!(told, [(3, "operation")]);
}

#[test]
fn names_of_the_trade_are_read_and_ambiguous_ones_are_not() {
    let rows = batch(vec![(
        "material",
        texts(&[
            Some("6061-T6"),
            Some(" AISI 1018 "),
            Some("4140"),
            Some(""),
            Some("unobtainium"),
        ]),
    )]);
    let answer = run(&rows);
    let library = Library::builtin();
    let code = |name: &str| library.material(name).unwrap_err().code().name();
    assert_eq!(
        status(&answer),
        ["ok", "ok", code("4140"), code(""), "unknown_name"]
    );
}

#[test]
fn columns_and_constants_of_an_input_mean_the_same() {
    let by_column = batch(vec![
        ("cutter_form", texts(&[Some("square")])),
        (
            "feed_across_jaws",
            Arc::new(arrow_array::BooleanArray::from(vec![true])),
        ),
        ("direction", texts(&[Some("climb")])),
        ("jaw_friction", numbers(&[Some(0.2)])),
    ]);
    let by_constant = batch(vec![("part", texts(&[None]))]);
    let with = [
        ("feed_across_jaws", "true"),
        ("direction", "climb"),
        ("jaw_friction", "20 %"),
    ];
    let plan = plan(&by_constant, &with, &StudyOptions::default()).unwrap();
    let other = plan.run(&by_constant, &[], Execution::default()).unwrap();
    let one = run(&by_column);
    assert_eq!(
        cells(&one.batch, "binding_share"),
        cells(&other.batch, "binding_share")
    );
    assert_eq!(one.summary, other.summary);
}
