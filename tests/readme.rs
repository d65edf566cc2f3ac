//! What README.md says is true: its commands are run, its counts are counted.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::formula::cases::{Provenance, read_cases};
use gullet::model::{Machine, Practice};
use gullet::operation::process::{self, Bench, Process, Request};
use gullet::operation::{Operation, WorkedStep};
use gullet::plan::{Job, PassPlan, ProcessCard};
use gullet::quantity::UnitSystem;
use gullet::table::Library;
use std::collections::{BTreeSet, HashMap};
use std::path::Path;
use std::process::{Command, Output};

const ROOT: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../..");

fn readme() -> String {
    std::fs::read_to_string(Path::new(ROOT).join("README.md")).unwrap()
}

fn gullet(words: &[String]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_gullet"))
        .current_dir(ROOT)
        .args(words)
        .output()
        .unwrap()
}

/// Words of a command line with plain single quotes.
fn words(line: &str) -> Vec<String> {
    let mut words = Vec::new();
    let mut word: Option<String> = None;
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '\'' => {
                quoted = !quoted;
                word.get_or_insert_default();
            }
            ' ' if !quoted => words.extend(word.take()),
            _ => word.get_or_insert_default().push(c),
        }
    }
    assert!(!quoted, "{line}");
    words.extend(word);
    words
}

#[test]
fn the_examples_of_the_command_line_print_what_the_readme_shows() {
    let text = readme();
    let mut run = 0;
    for block in text.split("```console\n").skip(1) {
        let block = block.split("```").next().unwrap();
        for example in block.split("$ ").skip(1) {
            let (line, shown) = example.split_once('\n').unwrap();
            let words = words(line);
            assert_eq!(words[0], "gullet", "{line}");
            let output = gullet(&words[1..]);
            let mut printed = String::from_utf8(output.stdout).unwrap();
            printed += &String::from_utf8(output.stderr).unwrap();
            assert!(
                shows(shown, &printed),
                "{line}\nprints\n{printed}\nand README.md shows\n{shown}"
            );
            run += 1;
        }
    }
    assert!(run >= 3);
}

/// Whether a text is the printed one, a line `...` standing for lines left out.
fn shows(shown: &str, printed: &str) -> bool {
    let shown: Vec<&str> = shown.lines().collect();
    let printed: Vec<&str> = printed.lines().collect();
    let parts: Vec<&[&str]> = shown.split(|line| *line == "...").collect();
    let [first, .., last] = parts.as_slice() else {
        return shown == printed;
    };
    if !printed.starts_with(first) || !printed.ends_with(last) {
        return false;
    }
    let Some(mut rest) = printed.get(first.len()..printed.len() - last.len()) else {
        return false;
    };
    for part in parts.get(1..parts.len() - 1).unwrap_or_default() {
        let Some(at) = rest.windows(part.len()).position(|window| window == *part) else {
            return false;
        };
        rest = &rest[at + part.len()..];
    }
    true
}

#[test]
fn what_is_left_out_leaves_the_rest_in_order() {
    let printed = "a\nb\nc\nd\n";
    for shown in [
        "a\nb\nc\nd\n",
        "a\n...\nd\n",
        "...\nb\n...\n",
        "a\n...\nc\nd\n",
    ] {
        assert!(shows(shown, printed), "{shown}");
    }
    for shown in [
        "a\nb\nd\n",
        "a\n...\nc\n",
        "b\n...\n",
        "...\nc\n...\nb\n...\n",
    ] {
        assert!(!shows(shown, printed), "{shown}");
    }
}

#[test]
fn the_job_of_the_first_command_gives_a_card() {
    let text = readme();
    let line = text
        .lines()
        .find_map(|line| {
            line.trim()
                .strip_prefix("cargo run --release -q -p gullet-cli -- ")
        })
        .unwrap();
    let output = gullet(&words(line));
    assert_eq!(output.status.code(), Some(0));
    assert!(
        String::from_utf8(output.stdout)
            .unwrap()
            .contains("SET-UP CARD")
    );
}

#[test]
fn the_counts_of_worked_examples_and_formulas_stand_right() {
    let count = |words: &[&str]| {
        let words: Vec<String> = words.iter().map(|word| (*word).to_owned()).collect();
        let output = gullet(&words);
        serde_json::from_slice::<serde_json::Value>(&output.stdout).unwrap()
    };
    let checked = count(&["check", "--builtin", "--json"]);
    let number = |key: &str| checked[key].as_u64().unwrap();
    let all = number("passed") + number("failed") + number("marked");
    let marked = number("marked");
    let formulas = count(&["list", "formulas", "--json"]);
    let formulas = formulas["formulas"].as_array().unwrap().len();
    let flat = readme().split_whitespace().collect::<Vec<_>>().join(" ");
    for sentence in [
        format!("{formulas} formulas"),
        format!("{} other operations", process::ALL.len()),
        format!("{all} worked examples, {marked} of them marked as missed"),
        format!(
            "A source prints {} of them",
            published().values().sum::<usize>()
        ),
    ] {
        assert!(
            flat.contains(&sentence),
            "README.md does not say: {sentence}"
        );
    }
}

#[test]
fn every_exit_code_and_command_is_named() {
    let text = readme();
    for code in 0..=4 {
        assert!(text.contains(&format!("| {code} |")), "{code}");
    }
    let help = String::from_utf8(gullet(&["help".to_owned()]).stdout).unwrap();
    let commands = help
        .lines()
        .skip_while(|line| !line.contains("gullet COMMAND"))
        .skip(2)
        .take_while(|line| !line.is_empty());
    let mut named = 0;
    for command in commands.filter_map(|line| line.split_whitespace().next()) {
        assert!(text.contains(&format!("| `gullet {command}")), "{command}");
        named += 1;
    }
    assert!(named > 10, "{help}");
}

/// The table of operations: the cells of each row.
fn table_of_operations() -> Vec<Vec<String>> {
    readme()
        .lines()
        .skip_while(|line| !line.starts_with("| operation |"))
        .skip(2)
        .take_while(|line| line.starts_with('|'))
        .map(|line| {
            let line = line.trim_matches('|');
            line.split('|').map(|cell| cell.trim().to_owned()).collect()
        })
        .collect()
}

/// Names of the formulas among worked steps.
fn formulas<'s>(steps: impl IntoIterator<Item = &'s WorkedStep>) -> BTreeSet<&'static str> {
    let formula = |step: &WorkedStep| match step {
        WorkedStep::Formula(step) => Some(step.formula.name),
        _ => None,
    };
    steps.into_iter().filter_map(formula).collect()
}

/// How many published worked examples each formula meets.
fn published() -> HashMap<&'static str, usize> {
    let mut counts = HashMap::new();
    for (file, text) in gullet_reference_data::CASES {
        for case in read_cases(file, text).0 {
            let printed = matches!(case.provenance, Provenance::Seen | Provenance::Memory);
            if printed && case.run().passed() {
                *counts.entry(case.formula.name).or_default() += 1;
            }
        }
    }
    counts
}

/// The formulas in the worked steps of an operation's example, whose card is made too.
fn steps_of_example(process: &'static Process) -> BTreeSet<&'static str> {
    let library = Library::builtin();
    let example = &process.example;
    let bench = Bench {
        library,
        material: library.material(example.material).unwrap(),
        tool: example.tool,
        machine: &Machine::builtin(example.machine).unwrap(),
        practice: &Practice::builtin("training").unwrap(),
        units: UnitSystem::Metric,
    };
    let request = Request::of(process).texts(example.inputs).unwrap();
    let cut = request.cut(&bench).unwrap();
    let found = formulas(&cut.steps);
    let card = ProcessCard::new(process.title.to_owned(), cut, library);
    assert!(card.text().contains("SET-UP CARD"), "{}", process.name);
    found
}

/// The formulas in the worked steps of a job's passes, and the limits they look at.
fn steps_of_job(operation: Operation) -> (BTreeSet<&'static str>, BTreeSet<&'static str>) {
    let job = match operation {
        Operation::SideMilling => "bearing_bracket",
        Operation::Slotting => "sensor_plate",
        Operation::FaceMilling => "gib_strip",
    };
    let file = Path::new(ROOT).join(format!("crates/gullet-cli/jobs/{job}.toml"));
    let text = std::fs::read_to_string(file).unwrap();
    let library = Library::builtin();
    let job = Job::from_toml(&text, library).unwrap();
    let plan = PassPlan::new(&job, library).unwrap();
    let cuts = || plan.passes.iter().map(|pass| &pass.cut);
    assert!(
        cuts().all(|cut| cut.pass.operation == operation),
        "{operation:?}"
    );
    (
        formulas(cuts().flat_map(|cut| &cut.steps)),
        cuts()
            .flat_map(|cut| &cut.ledger)
            .map(|limit| limit.name)
            .collect(),
    )
}

#[test]
fn the_table_of_operations_is_that_of_the_code() {
    let published = published();
    let counts = |formulas: &BTreeSet<&str>| {
        let printed = || formulas.iter().filter_map(|name| published.get(name));
        let examples: usize = printed().sum();
        [formulas.len(), printed().count(), examples].map(|count| count.to_string())
    };
    let table = table_of_operations();
    let mut faults = Vec::new();
    let mut untold_limits: Vec<String> = Vec::new();
    let mut names = Vec::new();
    let mut row = |name: &'static str, cells: &[String]| {
        names.push(name);
        let expected = [&[name.to_owned()], cells].concat();
        let found = table.iter().find(|row| row[0] == name);
        if found.is_none_or(|row| !row.starts_with(&expected)) {
            faults.push(format!("| {} | ...", expected.join(" | ")));
        }
    };
    for operation in Operation::ALL {
        let (formulas, limits) = steps_of_job(*operation);
        row(operation.name(), &counts(&formulas));
        let found = table.iter().find(|row| row[0] == operation.name());
        let told = found.map_or("", |row| &row[4]);
        let words = |limit: &str| limit.replace('_', " ");
        let untold = |limit: &&str| !COMMON.contains(limit) && !told.contains(&words(limit));
        untold_limits.extend(limits.into_iter().filter(untold).map(words));
    }
    for process in process::ALL {
        let own: Vec<String> = process
            .limits
            .iter()
            .map(|limit| limit.name().replace('_', " "))
            .collect();
        let counts = counts(&steps_of_example(process));
        row(process.name, &[&counts[..], &[own.join(", ")]].concat());
    }
    assert!(
        faults.is_empty(),
        "README.md has not these rows:\n{}",
        faults.join("\n")
    );
    assert!(untold_limits.is_empty(), "{}", untold_limits.join(", "));
    let told: Vec<&str> = table.iter().map(|row| row[0].as_str()).collect();
    assert_eq!(told, names);
}

/// Limits that every operation may look at, which the table leaves out.
const COMMON: &[&str] = &[
    "spindle_speed_highest",
    "spindle_speed_lowest",
    "cutter_speed",
    "cutting_speed",
    "handwheel_pace",
    "table_feed",
    "table_feed_lowest",
    "power",
    "torque",
];

/// The blocks themselves are run: this one by the documentation tests of the core and the tests above,
/// those of Python and C by the tests of these faces.
#[test]
fn the_same_example_gives_the_same_digits_in_every_language() {
    let text = readme();
    for language in ["rust", "python", "c", "console"] {
        let blocks: Vec<&str> = text
            .split(&format!("```{language}\n"))
            .skip(1)
            .map(|rest| rest.split("```").next().unwrap())
            .collect();
        assert!(!blocks.is_empty(), "{language}");
        assert!(
            blocks
                .iter()
                .any(|block| block.contains("90 ft/min") && block.contains("1/2 in")),
            "{language}"
        );
        // What C prints stands above its block, and is compared with the others by its tests.
        if language != "c" {
            let shown = blocks.iter().any(|block| block.contains("687.55 rpm"));
            assert!(shown, "{language}");
        }
    }
    assert!(text.contains("This prints `687.55 rpm`, as the examples above do"));
}
