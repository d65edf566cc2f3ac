//! Times a few formulas by their three entries: the typed call, by name over numbers, from text.
//!
//! Prints medians of nanoseconds a call; asserts nothing about them.
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used)]

use gullet::formula::{chip, find, removal, rotation};
use gullet::quantity::{Quantity, si};
use std::hint::black_box;
use std::time::Instant;

/// Median over batches, so that a switch of tasks in one of them does not count.
fn nanoseconds(mut one: impl FnMut()) -> f64 {
    const CALLS: u32 = 2_000;
    let mut batches: Vec<f64> = (0..41)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..CALLS {
                one();
            }
            start.elapsed().as_secs_f64() * 1e9 / f64::from(CALLS)
        })
        .collect();
    batches.sort_by(f64::total_cmp);
    batches[batches.len() / 2]
}

fn row(name: &str, typed: f64) {
    let formula = find(name).expect("in the catalogue");
    let arguments = formula.example_arguments().expect("a good example");
    let by_name = nanoseconds(|| {
        let formula = find(black_box(name)).expect("in the catalogue");
        black_box(formula.call(black_box(&arguments))).expect("a value");
    });
    let text = formula.example.arguments;
    let from_text = nanoseconds(|| {
        let value: Quantity = gullet::evaluate(black_box(name), black_box(text)).expect("a value");
        black_box(value);
    });
    println!("{name:<24} {typed:>10.1} {by_name:>10.1} {from_text:>10.1}");
}

fn arguments<const N: usize>(name: &str) -> [f64; N] {
    let values = find(name).and_then(|formula| formula.example_arguments());
    values
        .expect("a good example")
        .try_into()
        .expect("as many arguments as the formula has")
}

fn main() {
    println!(
        "{:<24} {:>10} {:>10} {:>10}",
        "ns a call", "typed", "by name", "from text"
    );
    let a: [f64; 2] = arguments("spindle_speed");
    row(
        "spindle_speed",
        nanoseconds(|| {
            let [speed, diameter] = black_box(a);
            black_box(rotation::spindle_speed(si(speed), si(diameter))).expect("a value");
        }),
    );
    let a: [f64; 4] = arguments("max_chip_thickness");
    row(
        "max_chip_thickness",
        nanoseconds(|| {
            let [feed, diameter, width, angle] = black_box(a);
            let value = chip::max_chip_thickness(si(feed), si(diameter), si(width), si(angle));
            black_box(value).expect("a value");
        }),
    );
    let a: [f64; 3] = arguments("geometric_step_ratio");
    row(
        "geometric_step_ratio",
        nanoseconds(|| {
            let [lowest, highest, steps] = black_box(a);
            let value = rotation::geometric_step_ratio(si(lowest), si(highest), si(steps));
            black_box(value).expect("a value");
        }),
    );
    let a: [f64; 3] = arguments("milling_removal_rate");
    row(
        "milling_removal_rate",
        nanoseconds(|| {
            let [axial, radial, feed] = black_box(a);
            let value = removal::milling_removal_rate(si(axial), si(radial), si(feed));
            black_box(value).expect("a value");
        }),
    );
}
