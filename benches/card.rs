//! Times the set-up card: as a process from start to end, and as a call.
//!
//! Prints medians; asserts nothing about them.
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used)]

use gullet::plan::{Card, Job};
use gullet::table::Library;
use std::hint::black_box;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

const JOB: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/jobs/bearing_bracket.toml");

fn median(runs: usize, mut one: impl FnMut()) -> Duration {
    for _ in 0..runs / 10 + 1 {
        one();
    }
    let mut times: Vec<Duration> = (0..runs)
        .map(|_| {
            let start = Instant::now();
            one();
            start.elapsed()
        })
        .collect();
    times.sort_unstable();
    times[runs / 2]
}

fn print(what: &str, time: Duration) {
    println!("{what:<44} {:>9.3} ms", time.as_secs_f64() * 1e3);
}

fn process(words: &[&str]) -> Duration {
    median(300, || {
        let status = Command::new(env!("CARGO_BIN_EXE_gullet"))
            .args(words)
            .stdout(Stdio::null())
            .status()
            .expect("the binary starts");
        assert!(status.success());
    })
}

fn main() {
    let text = std::fs::read_to_string(JOB).expect("the job can be read");
    print("gullet --version, whole process", process(&["--version"]));
    for format in ["text", "json", "html"] {
        let time = process(&["card", JOB, "--format", format]);
        print(
            &format!("gullet card --format {format}, whole process"),
            time,
        );
    }
    // Reading the tables is paid once a process; the calls below find them read.
    let library = Library::builtin();
    let job = Job::from_toml(&text, library).expect("the job is good");
    let card = Card::new(job.clone(), library).expect("the job can be planned");
    print(
        "Job::from_toml",
        median(1000, || {
            black_box(Job::from_toml(black_box(&text), library)).expect("the job is good");
        }),
    );
    print(
        "Card::new",
        median(1000, || {
            black_box(Card::new(black_box(&job).clone(), library)).expect("a plan");
        }),
    );
    print(
        "Card::text",
        median(1000, || drop(black_box(black_box(&card).text()))),
    );
    print(
        "Card::json",
        median(1000, || drop(black_box(black_box(&card).json()))),
    );
    print(
        "Card::html",
        median(1000, || drop(black_box(black_box(&card).html()))),
    );
}
