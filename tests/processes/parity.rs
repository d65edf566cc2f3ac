//! Columns give the bits of the scalar call, for every operation and every instruction set.

use super::bench::{Random, Shop, drawn};
use gullet::Code;
use gullet::formula::Column;
use gullet::operation::process::{ALL, Process, Request};
use gullet::study::{
    Choice, Codes, Execution, InstructionSet, ProcessBase, ProcessRows, ProcessStudy, Results,
};

const MATERIALS: &[&str] = &["1018", "6061", "304", "gg25"];

/// Rows of a test: unoptimized code gets fewer.
fn rows() -> usize {
    if cfg!(debug_assertions) { 400 } else { 20_000 }
}

/// Values of every row, and the material of each.
struct Drawn {
    values: Vec<Vec<f64>>,
    materials: Vec<u32>,
}

impl Drawn {
    fn new(process: &'static Process, count: usize) -> Drawn {
        let mut random = Random(process.name.len() as u64);
        let values = (0..count).map(|_| drawn(process, &mut random)).collect();
        let materials = (0..count)
            .map(|_| random.below(MATERIALS.len() as u64) as u32)
            .collect();
        Drawn { values, materials }
    }
}

fn base(process: &'static Process) -> ProcessBase {
    let shop = Shop::of(process);
    ProcessBase {
        process,
        materials: MATERIALS
            .iter()
            .filter_map(|id| shop.library.material(id).ok().cloned())
            .collect(),
        machines: vec![shop.machine.clone()],
        practices: vec![shop.practice.clone()],
        tool: shop.tool,
        values: process.defaults(),
    }
}

fn run(process: &'static Process, drawn: &Drawn, execution: Execution) -> Results {
    let columns: Vec<Vec<f64>> = (0..process.inputs.len())
        .map(|place| drawn.values.iter().map(|row| row[place]).collect())
        .collect();
    let rows = ProcessRows {
        count: drawn.values.len(),
        numbers: columns
            .iter()
            .enumerate()
            .map(|(place, column)| (place, Column::Values(column)))
            .collect(),
        choices: vec![(Choice::Material, Codes::Values(&drawn.materials))],
        missing: None,
    };
    let all: Vec<usize> = (0..ProcessStudy::fields(process).len()).collect();
    ProcessStudy::new(gullet::table::Library::builtin(), base(process))
        .run(&rows, &all, execution)
        .unwrap()
}

#[test]
fn every_row_has_the_bits_of_the_scalar_call() {
    for process in ALL {
        let shop = Shop::of(process);
        let drawn = Drawn::new(process, rows());
        let results = run(process, &drawn, Execution::default());
        let base = base(process);
        let fields = ProcessStudy::fields(process);
        let mut good = 0;
        for (row, values) in drawn
            .values
            .iter()
            .enumerate()
            .step_by(if cfg!(debug_assertions) { 1 } else { 7 })
        {
            let mut request = Request::of(process);
            for (input, value) in process.inputs.iter().zip(values) {
                // In a column no number stands for "not given".
                let value = if value.is_nan() {
                    input.parameter.default.unwrap_or(f64::NAN)
                } else {
                    *value
                };
                request = request.si(input.name(), value).unwrap();
            }
            let mut bench = shop.bench();
            bench.material = &base.materials[drawn.materials[row] as usize];
            match request.cut(&bench) {
                Err(error) => {
                    assert_eq!(
                        results.status[row],
                        error.code().number(),
                        "{} {row}: {error}",
                        process.name
                    );
                    if error.code() == Code::LimitExceeded {
                        let name = results.binding(row).map(|limit| limit.name());
                        assert_eq!(
                            name,
                            Some(error.first().parameter.as_str()),
                            "{} {row}",
                            process.name
                        );
                    }
                    assert!(results.columns.iter().all(|column| column[row].is_nan()));
                }
                Ok(cut) => {
                    good += 1;
                    assert_eq!(results.status[row], 0, "{} {row}", process.name);
                    for (field, column) in fields.iter().zip(&results.columns) {
                        let Some(value) = cut
                            .settings
                            .iter()
                            .chain(&cut.results)
                            .find(|other| other.name == field.name)
                        else {
                            continue;
                        };
                        let value = value.value.unwrap_or(f64::NAN);
                        assert!(
                            column[row].to_bits() == value.to_bits()
                                || (column[row].is_nan() && value.is_nan()),
                            "{} {row}: {} = {} in the study, {value} by the scalar call",
                            process.name,
                            field.name,
                            column[row]
                        );
                    }
                    assert_eq!(
                        results.binding(row).map(|limit| limit.name()),
                        cut.binding().map(|limit| limit.name),
                        "{} {row}",
                        process.name
                    );
                    let codes = gullet::operation::WarningCodes::of(
                        cut.warnings.iter().map(|warning| warning.code),
                    );
                    assert_eq!(results.warnings(row), codes, "{} {row}", process.name);
                }
            }
        }
        assert!(
            good * 5 > drawn.values.len() / if cfg!(debug_assertions) { 1 } else { 7 },
            "{}: {good} good rows",
            process.name
        );
    }
}

#[test]
fn instruction_sets_threads_and_neighbours_change_no_bit() {
    for process in ALL {
        let drawn = Drawn::new(process, rows());
        let expected = run(
            process,
            &drawn,
            Execution::default()
                .with_threads(1)
                .unwrap()
                .with_instruction_set(InstructionSet::Baseline),
        );
        let mut executions: Vec<Execution> = InstructionSet::available()
            .into_iter()
            .map(|set| {
                Execution::default()
                    .with_threads(1)
                    .unwrap()
                    .with_instruction_set(set)
            })
            .collect();
        executions.push(Execution::default().with_threads(3).unwrap());
        for execution in executions {
            assert_same(&run(process, &drawn, execution), &expected, process);
        }
        let part = Drawn {
            values: drawn.values[5..77].to_vec(),
            materials: drawn.materials[5..77].to_vec(),
        };
        let few = run(process, &part, Execution::default());
        for (column, whole) in few.columns.iter().zip(&expected.columns) {
            for (a, b) in column.iter().zip(&whole[5..77]) {
                assert!(a.to_bits() == b.to_bits() || (a.is_nan() && b.is_nan()));
            }
        }
    }
}

fn assert_same(a: &Results, b: &Results, process: &Process) {
    assert_eq!(a.status, b.status, "{}", process.name);
    assert_eq!(a.binding, b.binding, "{}", process.name);
    assert_eq!(a.held_by, b.held_by, "{}", process.name);
    assert_eq!(a.warnings, b.warnings, "{}", process.name);
    for (a, b) in a.columns.iter().zip(&b.columns) {
        for (a, b) in a.iter().zip(b) {
            assert!(
                a.to_bits() == b.to_bits() || (a.is_nan() && b.is_nan()),
                "{}",
                process.name
            );
        }
    }
}
