//! Times the study of milling cuts: nanoseconds a row, by instruction set and by threads.
//!
//! Prints the best of several runs; asserts nothing about them. The first argument is the number of
//! rows, 1 million where there is none; a second one names an instruction set.
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used)]

use gullet::formula::Column;
use gullet::study::{Base, Execution, Input, InstructionSet, MillingStudy, Rows};
use gullet::table::Library;
use std::hint::black_box;
use std::time::Instant;

mod full_study;

fn main() {
    let count: usize = std::env::args()
        .skip(1)
        .find_map(|word| word.parse().ok())
        .unwrap_or(1_000_000);
    let library = Library::builtin();
    let job = full_study::job(library).expect("a good job");
    let study = MillingStudy::new(library, Base::of_job(&job));
    let mut state = 7u64;
    let mut draw = |low: f64, high: f64| {
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1);
        low + (high - low) * (state >> 11) as f64 / (1u64 << 53) as f64
    };
    let d = job.cutter.diameter.value;
    let flutes = job.cutter.flute_length.value;
    let axial: Vec<f64> = (0..count).map(|_| draw(0.05, 0.6) * flutes).collect();
    let radial: Vec<f64> = (0..count).map(|_| draw(0.02, 0.2) * d).collect();
    let length: Vec<f64> = (0..count).map(|_| draw(0.02, 0.3)).collect();
    let rows = Rows {
        count,
        numbers: vec![
            (Input::AxialDepth, Column::Values(&axial)),
            (Input::RadialDepth, Column::Values(&radial)),
            (Input::CutLength, Column::Values(&length)),
        ],
        ..Rows::default()
    };
    let wanted = full_study::wanted().expect("known results");
    println!("{count} rows, {} result columns", wanted.len());
    let mut results = study
        .run(&rows, &wanted, Execution::default())
        .expect("good rows");
    let good = results.status.iter().filter(|status| **status == 0).count();
    println!("{good} cuts, {} rows beyond a limit", count - good);
    println!(
        "{:<12} {:>8} {:>12} {:>14}",
        "set", "threads", "ns a row", "rows a second"
    );
    // Cargo adds words of its own.
    let only = std::env::args()
        .skip(2)
        .find(|word| !word.starts_with("--"));
    let chosen = |set: &InstructionSet| only.as_ref().is_none_or(|name| name == set.name());
    for set in InstructionSet::available().into_iter().filter(chosen) {
        for threads in [1, 2] {
            let execution = Execution::default()
                .with_instruction_set(set)
                .with_threads(threads)
                .expect("threads");
            // Memory for the results is used again, as for the batches of a large table.
            let best = (0..7)
                .map(|_| {
                    let start = Instant::now();
                    study
                        .run_into(&rows, &wanted, execution, &mut results)
                        .expect("good rows");
                    black_box(&results);
                    start.elapsed().as_secs_f64()
                })
                .fold(f64::INFINITY, f64::min);
            println!(
                "{:<12} {threads:>8} {:>12.1} {:>14.0}",
                set.name(),
                best * 1e9 / count as f64,
                count as f64 / best
            );
        }
    }
}
