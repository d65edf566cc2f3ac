//! The same bits as the scalar call: row by row, whatever runs beside it.

use super::draw::{Drawn, Random, base};
use gullet::Code;
use gullet::model::Machine;
use gullet::operation::{CutNumbers, Lowering, Milling};
use gullet::study::{Choice, Execution, InstructionSet, MillingStudy, ResultField, Results};
use gullet::table::Library;

/// Every result of a cut, in the order of the list of all; NaN where it has none.
fn values(cut: &CutNumbers) -> Vec<f64> {
    let spread = &cut.spread;
    cut.settings
        .fields()
        .into_iter()
        .chain(cut.consequences.fields())
        .map(|field| field.value.unwrap_or(f64::NAN))
        .chain([
            spread.cutting_speed.low.value,
            spread.cutting_speed.start.value,
            spread.cutting_speed.high.value,
            spread.force.low.value,
            spread.force.high.value,
            spread.power.low.value,
            spread.power.high.value,
            spread.time.low.value,
            spread.time.start.value,
            spread.time.high.value,
            cut.binding().map_or(f64::NAN, |limit| limit.share),
        ])
        .collect()
}

fn run(drawn: &Drawn, execution: Execution) -> Results {
    let all: Vec<usize> = (0..ResultField::all().len()).collect();
    let study = MillingStudy::new(Library::builtin(), base());
    study.run(&drawn.rows(), &all, execution).unwrap()
}

/// Rows of a test: unoptimized code gets fewer.
fn rows() -> usize {
    if cfg!(debug_assertions) {
        1_000
    } else {
        20_000
    }
}

/// Compares every row with the scalar call; how many rows were cuts.
fn compare(drawn: &Drawn, results: &Results, step: usize) -> usize {
    let fields = ResultField::all();
    let mut good = 0;
    for row in (0..drawn.count).step_by(step) {
        let scalar = drawn.scalar(row, |setup, pass| {
            Milling::new(setup).numbers(pass, Lowering::Allowed)
        });
        let status = results.status[row];
        match scalar {
            // A count that is none cannot stand in a cutter.
            None => assert!(
                [Code::NotWhole, Code::NotFinite, Code::OutOfRange]
                    .iter()
                    .any(|code| code.number() == status),
                "row {row}: status {status}"
            ),
            Some(Err(error)) => {
                assert_eq!(status, error.code().number(), "row {row}: {error}");
                if error.code() == Code::LimitExceeded {
                    let name = results.binding(row).map(|limit| limit.name());
                    assert_eq!(name, Some(error.first().parameter.as_str()), "row {row}");
                }
                assert!(results.columns.iter().all(|column| column[row].is_nan()));
            }
            Some(Ok(cut)) => {
                good += 1;
                assert_eq!(status, 0, "row {row}: {cut:?}");
                for ((field, column), value) in
                    fields.iter().zip(&results.columns).zip(values(&cut))
                {
                    assert_eq!(
                        column[row].to_bits(),
                        value.to_bits(),
                        "row {row}: {} {} against {value}",
                        field.name,
                        column[row]
                    );
                }
                assert_eq!(
                    results.binding(row),
                    cut.binding().map(|limit| limit.name),
                    "row {row}"
                );
                assert_eq!(
                    results.held_by[row],
                    cut.held_by.map_or(0, |limit| limit as u8),
                    "row {row}"
                );
                assert_eq!(results.warnings(row), cut.warnings, "row {row}");
            }
        }
    }
    good
}

#[test]
fn rows_have_the_bits_of_the_scalar_call() {
    let drawn = Drawn::new(&mut Random(1), rows(), false);
    let results = run(&drawn, Execution::default());
    let good = compare(&drawn, &results, 1);
    assert!(good > rows() / 10, "{good} cuts among {}", drawn.count);
}

#[test]
fn bad_rows_get_their_code_and_spoil_no_other() {
    let drawn = Drawn::new(&mut Random(2), rows(), true);
    let results = run(&drawn, Execution::default());
    assert!(compare(&drawn, &results, 1) > rows() / 25);
}

#[test]
fn a_machine_that_does_not_mill_is_refused_row_by_row() {
    let drawn = Drawn::new(&mut Random(7), 70, false);
    let mut rows = drawn.rows();
    rows.choices
        .retain(|(choice, _)| *choice != Choice::Machine);
    let mut base = base();
    base.machines = vec![Machine::builtin("engine-lathe").unwrap()];
    let results = MillingStudy::new(Library::builtin(), base)
        .run(&rows, &[], Execution::default())
        .unwrap();
    let geared = Code::Inconsistent.number();
    assert!(results.status.iter().all(|status| *status != 0));
    assert!(results.status.contains(&geared), "{:?}", results.status);
}

/// What two runs must share.
fn same(a: &Results, b: &Results, what: &str) {
    assert_eq!(a.status, b.status, "{what}");
    assert_eq!(a.binding, b.binding, "{what}");
    assert_eq!(a.held_by, b.held_by, "{what}");
    assert_eq!(a.warnings, b.warnings, "{what}");
    let bits = |column: &[f64]| column.iter().map(|x| x.to_bits()).collect::<Vec<_>>();
    for (place, (x, y)) in a.columns.iter().zip(&b.columns).enumerate() {
        assert_eq!(
            bits(x),
            bits(y),
            "{what}: {}",
            ResultField::all()[place].name
        );
    }
}

#[test]
fn neither_threads_nor_instructions_nor_neighbours_change_a_bit() {
    let drawn = Drawn::new(&mut Random(3), 3 * rows() + 1, true);
    let first = run(&drawn, Execution::default().with_threads(1).unwrap());
    for threads in [2, 3, 7] {
        let execution = Execution::default().with_threads(threads).unwrap();
        same(
            &first,
            &run(&drawn, execution),
            &format!("{threads} threads"),
        );
    }
    for set in InstructionSet::available() {
        let execution = Execution::default().with_instruction_set(set);
        same(&first, &run(&drawn, execution), set.name());
    }
    // A row alone is a block with other neighbours.
    for row in [0, 1, 63, 64, 3 * rows()] {
        let alone = Drawn {
            numbers: drawn
                .numbers
                .iter()
                .map(|(input, values)| (*input, vec![values[row]]))
                .collect(),
            choices: drawn
                .choices
                .iter()
                .map(|(choice, values)| (*choice, vec![values[row]]))
                .collect(),
            count: 1,
        };
        let results = run(&alone, Execution::default());
        assert_eq!(results.status[0], first.status[row]);
        for (x, y) in results.columns.iter().zip(&first.columns) {
            assert_eq!(x[0].to_bits(), y[row].to_bits());
        }
    }
}

/// What is left out where it is not asked for decides nothing.
#[test]
fn fewer_results_change_no_bit_of_the_others() {
    let drawn = Drawn::new(&mut Random(4), rows(), true);
    let all = run(&drawn, Execution::default());
    let fields = ResultField::all();
    let ends = ["force_low", "force_high", "power_low", "power_high"];
    let wanted: Vec<usize> = (0..fields.len())
        .filter(|place| !ends.contains(&fields[*place].name))
        .collect();
    assert_eq!(wanted.len() + ends.len(), fields.len());
    let study = MillingStudy::new(Library::builtin(), base());
    let fewer = study
        .run(&drawn.rows(), &wanted, Execution::default())
        .unwrap();
    let kept = Results {
        columns: wanted
            .iter()
            .map(|place| all.columns[*place].clone())
            .collect(),
        ..all
    };
    same(&kept, &fewer, "fewer results");
}

#[cfg(not(debug_assertions))]
#[test]
fn a_million_rows_have_the_bits_of_the_scalar_call() {
    // Drawn in parts, so that memory stays small.
    for part in 0..20 {
        let drawn = Drawn::new(&mut Random(100 + part), 50_000, part % 2 == 1);
        let results = run(&drawn, Execution::default());
        assert!(compare(&drawn, &results, 1) > 0);
    }
}
