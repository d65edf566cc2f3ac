//! Times operations over columns: nanoseconds a row with every result, by instruction set, on one
//! thread; beside them the scalar call.
//!
//! Prints the best of several runs; asserts nothing about them. The first argument is the number of
//! rows, 100 000 where there is none; a second one names an operation.
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used)]

use gullet::formula::Column;
use gullet::model::{Machine, Practice};
use gullet::operation::process::{self, Bench, Process, Request};
use gullet::quantity::UnitSystem;
use gullet::study::{Execution, InstructionSet, ProcessBase, ProcessRows, ProcessStudy};
use gullet::table::Library;
use std::hint::black_box;
use std::time::Instant;

const RUNS: usize = 5;

fn main() {
    let words: Vec<String> = std::env::args()
        .skip(1)
        .filter(|word| !word.starts_with("--"))
        .collect();
    let count: usize = words
        .iter()
        .find_map(|word| word.parse().ok())
        .unwrap_or(100_000);
    let only = words.iter().find(|word| word.parse::<usize>().is_err());
    let sets = InstructionSet::available();
    print!("{:<24} {:>8}", "operation", "good");
    for set in &sets {
        print!(" {:>12}", set.name());
    }
    println!(" {:>12}", "scalar");
    for process in process::ALL {
        if only.is_none_or(|name| name == process.name) {
            time(process, count, &sets);
        }
    }
}

/// Rows around the example, the quantity that comes first drawn within a fifth below it.
fn time(process: &'static Process, count: usize, sets: &[InstructionSet]) {
    let library = Library::builtin();
    let example = &process.example;
    let request = Request::of(process)
        .texts(example.inputs)
        .expect("a good example");
    let values = request.values().to_vec();
    let material = library
        .material(example.material)
        .expect("a known material");
    let machine = Machine::builtin(example.machine).expect("a known machine");
    let practice = Practice::builtin("experienced").expect("a known practice");
    let drawn = process
        .inputs
        .iter()
        .position(|input| input.required() && input.words.is_empty())
        .expect("an input to draw");
    let mut state = 7u64;
    let column: Vec<f64> = (0..count)
        .map(|_| {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1);
            values[drawn] * (0.98 + 0.02 * (state >> 11) as f64 / (1u64 << 53) as f64)
        })
        .collect();
    let study = ProcessStudy::new(
        library,
        ProcessBase {
            process,
            materials: vec![material.clone()],
            machines: vec![machine.clone()],
            practices: vec![practice.clone()],
            tool: example.tool,
            values,
        },
    );
    let rows = ProcessRows {
        count,
        numbers: vec![(drawn, Column::Values(&column))],
        ..ProcessRows::default()
    };
    let wanted: Vec<usize> = (0..ProcessStudy::fields(process).len()).collect();
    let one = Execution::default().with_threads(1).expect("one thread");
    let mut results = study.run(&rows, &wanted, one).expect("good columns");
    let good = results.status.iter().filter(|status| **status == 0).count();
    print!("{:<24} {good:>8}", process.name);
    for set in sets {
        let execution = one.with_instruction_set(*set);
        let best = best(|| {
            study
                .run_into(&rows, &wanted, execution, &mut results)
                .expect("good columns");
            black_box(&results);
        });
        print!(" {:>9.0} ns", best / count as f64);
    }
    let bench = Bench {
        library,
        material,
        tool: example.tool,
        machine: &machine,
        practice: &practice,
        units: UnitSystem::Metric,
    };
    let calls = 200;
    let best = best(|| {
        for _ in 0..calls {
            let _ = black_box(request.cut(&bench));
        }
    });
    println!(" {:>9.0} ns", best / f64::from(calls));
}

/// The fastest of several runs, in nanoseconds.
fn best(mut work: impl FnMut()) -> f64 {
    (0..RUNS)
        .map(|_| {
            let start = Instant::now();
            work();
            start.elapsed().as_secs_f64() * 1e9
        })
        .fold(f64::INFINITY, f64::min)
}
