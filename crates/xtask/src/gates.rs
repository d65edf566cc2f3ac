//! The gates, in order, each with a heading and its time.

use crate::counts::Counts;
use crate::process::{SEED, cargo, quiet, root, shown, works};
use crate::{dependencies, render};
use std::path::PathBuf;
use std::process::Command;
use std::time::{Duration, Instant};

/// Largest size of the command's release binary; Parquet takes 8 MB of it.
const LARGEST_BINARY: u64 = 20_000_000;

/// Lets form and lint checks be left out where their tools are not installed.
const ALLOW_MISSING: &str = "GULLET_ALLOW_MISSING_TOOLS";

/// What came of a gate.
pub enum Verdict {
    Passed(String),
    Skipped(String),
    Failed(String),
}

use Verdict::{Failed, Passed, Skipped};

struct Gates {
    counts: Counts,
    results: Vec<(&'static str, Verdict, Duration)>,
}

impl Gates {
    fn gate(&mut self, name: &'static str, run: impl FnOnce(&mut Counts) -> Verdict) {
        println!("\n== {name}");
        let start = Instant::now();
        let verdict = run(&mut self.counts);
        let time = start.elapsed();
        println!("{}", line(name, &verdict, time));
        self.results.push((name, verdict, time));
    }

    fn passed(&self) -> bool {
        !self
            .results
            .iter()
            .any(|(_, verdict, _)| matches!(verdict, Failed(_)))
    }
}

fn line(name: &str, verdict: &Verdict, time: Duration) -> String {
    let (word, text) = match verdict {
        Passed(text) => ("passed", text),
        Skipped(text) => ("skipped", text),
        Failed(text) => ("FAILED", text),
    };
    let colon = if text.is_empty() { "" } else { ": " };
    format!(
        "{name:<14} {:>6.1} s  {word}{colon}{text}",
        time.as_secs_f64()
    )
}

/// Every gate; whether all passed.
pub fn run_all() -> bool {
    let mut gates = Gates {
        counts: Counts::default(),
        results: Vec::new(),
    };
    let before = untracked();
    gates.gate("form", |_| tool("fmt", &["fmt", "--all", "--check"]));
    gates.gate("lints", |_| {
        tool(
            "clippy",
            &[
                "clippy",
                "--workspace",
                "--all-targets",
                "--locked",
                "--",
                "-D",
                "warnings",
            ],
        )
    });
    gates.gate("build", |_| {
        status(cargo(&[
            "build",
            "--release",
            "--package",
            "gullet-cli",
            "--locked",
        ]))
    });
    gates.gate("tests", tests);
    gates.gate("parity", |counts| {
        counted(
            cargo(&[
                "test",
                "--profile",
                "c",
                "--package",
                "gullet",
                "--test",
                "study",
                "--test",
                "processes",
                "--locked",
            ]),
            counts,
        )
    });
    gates.gate("doctests", |counts| {
        counted(
            // The documentation of the C library is for its header: its examples are C.
            cargo(&[
                "test",
                "--workspace",
                "--exclude",
                "gullet-c",
                "--doc",
                "--no-fail-fast",
                "--locked",
            ]),
            counts,
        )
    });
    gates.gate("examples", |_| match binary() {
        Ok(binary) => {
            let mut command = Command::new(binary);
            command.args(["check", "--builtin"]).current_dir(root());
            status(command)
        }
        Err(error) => Failed(error),
    });
    gates.gate("python", python);
    gates.gate("c", c);
    gates.gate("docs", |_| {
        let mut command = cargo(&["doc", "--workspace", "--no-deps", "--locked"]);
        command.env("RUSTDOCFLAGS", "-D warnings");
        match (status(command), binary()) {
            (Passed(text), Ok(binary)) => {
                let mut command = Command::new(binary);
                command
                    .args(["reference", "--output", "target/doc/reference.html"])
                    .current_dir(root());
                match status(command) {
                    Passed(_) => Passed(text),
                    other => other,
                }
            }
            (Passed(_), Err(error)) => Failed(error),
            (other, _) => other,
        }
    });
    gates.gate("dependencies", |_| {
        dependencies::check().map_or_else(Failed, Passed)
    });
    gates.gate("size", |_| size().map_or_else(Failed, Passed));
    gates.gate("page", |_| page());
    gates.gate("tidiness", |_| tidiness(before));

    println!("\n== all gates");
    for (name, verdict, time) in &gates.results {
        println!("{}", line(name, verdict, *time));
    }
    let Counts { passed, failed } = gates.counts;
    println!("\n{passed} passed, {failed} failed");
    gates.passed()
}

/// The core's tests in release, each round with a seed of its own that a failure can be found by.
pub fn run_campaign(rounds: u64) -> bool {
    let start = std::time::SystemTime::now()
        .duration_since(std::time::UNIX_EPOCH)
        .map_or(1, |time| time.as_secs());
    let mut failed = 0;
    for seed in (0..rounds).map(|round| start + round) {
        println!("\n== seed {seed}");
        let mut command = cargo(&[
            "test",
            "--release",
            "--package",
            "gullet",
            "--lib",
            "--tests",
            "--locked",
            "--quiet",
        ]);
        command.env(
            SEED,
            std::env::var(SEED).unwrap_or_else(|_| seed.to_string()),
        );
        if !matches!(status(command), Passed(_)) {
            println!("seed {seed} failed: repeat it with {SEED}={seed} cargo xtask campaign 1");
            failed += 1;
        }
    }
    println!("\n{} rounds passed, {failed} failed", rounds - failed);
    failed == 0
}

/// The page alone, from a fresh build.
pub fn run_render() -> bool {
    let built = status(cargo(&[
        "build",
        "--release",
        "--package",
        "gullet-cli",
        "--locked",
    ]));
    let verdict = match built {
        Passed(_) => page(),
        other => other,
    };
    println!("{}", line("page", &verdict, Duration::ZERO));
    !matches!(verdict, Failed(_))
}

fn status(mut command: Command) -> Verdict {
    match shown(&mut command) {
        Ok((true, _)) => Passed(String::new()),
        Ok((false, _)) => Failed("see above".to_owned()),
        Err(error) => Failed(error),
    }
}

/// A gate whose cargo command may not be installed.
fn tool(name: &str, words: &[&str]) -> Verdict {
    if works(&mut cargo(&[name, "--version"])) {
        return status(cargo(words));
    }
    let missing = format!("cargo {name} is not installed");
    if std::env::var_os(ALLOW_MISSING).is_some() {
        Skipped(missing)
    } else {
        Failed(format!("{missing}; set {ALLOW_MISSING}=1 to go without"))
    }
}

fn tests(counts: &mut Counts) -> Verdict {
    if works(&mut cargo(&["nextest", "--version"])) {
        return counted(
            cargo(&[
                "nextest",
                "run",
                "--workspace",
                "--no-fail-fast",
                "--locked",
            ]),
            counts,
        );
    }
    counted(
        cargo(&[
            "test",
            "--workspace",
            "--lib",
            "--bins",
            "--tests",
            "--no-fail-fast",
            "--locked",
        ]),
        counts,
    )
}

/// The wheel, installed, and the tests of the Python face; skipped where there is no Python.
fn python(counts: &mut Counts) -> Verdict {
    if !works(Command::new("python3").arg("--version")) {
        return Skipped("no python3: install Python 3.10 or newer".to_owned());
    }
    let mut command = Command::new("sh");
    command.arg("tests/python/run.sh").current_dir(root());
    counted(command, counts)
}

/// The C library, its package, and the tests of the C face; skipped where there is no compiler.
fn c(counts: &mut Counts) -> Verdict {
    for compiler in ["gcc", "g++"] {
        if !works(Command::new(compiler).arg("--version")) {
            return Skipped(format!("no {compiler}: install a C and C++ compiler"));
        }
    }
    let mut command = Command::new("sh");
    command.arg("tests/c/run.sh").current_dir(root());
    counted(command, counts)
}

fn counted(mut command: Command, counts: &mut Counts) -> Verdict {
    match shown(&mut command) {
        Ok((done, text)) => {
            let found = Counts::read(&text);
            *counts = counts.and(found);
            let told = format!("{} passed, {} failed", found.passed, found.failed);
            if done && found.passed > 0 && found.failed == 0 {
                Passed(told)
            } else {
                Failed(told)
            }
        }
        Err(error) => Failed(error),
    }
}

/// The release binary of the command.
fn binary() -> Result<PathBuf, String> {
    let name = format!("gullet{}", std::env::consts::EXE_SUFFIX);
    let binary = target_directory()?.join("release").join(name);
    if binary.is_file() {
        Ok(binary)
    } else {
        Err(format!("{} is not built", binary.display()))
    }
}

fn target_directory() -> Result<PathBuf, String> {
    let metadata = quiet(&mut cargo(&[
        "metadata",
        "--format-version",
        "1",
        "--no-deps",
        "--locked",
    ]))?;
    metadata
        .split_once("\"target_directory\":\"")
        .and_then(|(_, rest)| rest.split_once('"'))
        .map(|(path, _)| PathBuf::from(path.replace("\\\\", "\\")))
        .ok_or_else(|| "cargo metadata names no target directory".to_owned())
}

fn size() -> Result<String, String> {
    let binary = binary()?;
    let size = std::fs::metadata(&binary)
        .map_err(|error| error.to_string())?
        .len();
    let told = format!("{size} bytes of at most {LARGEST_BINARY}");
    if size < LARGEST_BINARY {
        Ok(told)
    } else {
        Err(told)
    }
}

fn page() -> Verdict {
    match (binary(), target_directory()) {
        (Ok(binary), Ok(target)) => render::render(&binary, &target.join("xtask")),
        (Err(error), _) | (_, Err(error)) => Failed(error),
    }
}

/// What git sees beside the committed files; none where there is no git.
fn untracked() -> Option<String> {
    let mut command = Command::new("git");
    command
        .args(["status", "--porcelain", "--untracked-files=all"])
        .current_dir(root());
    quiet(&mut command).ok()
}

fn tidiness(before: Option<String>) -> Verdict {
    match (before, untracked()) {
        (Some(before), Some(after)) if before == after => {
            Passed("nothing left outside target".to_owned())
        }
        (Some(_), Some(after)) => Failed(format!("the gates changed the tree:\n{after}")),
        _ => Skipped("no git".to_owned()),
    }
}
