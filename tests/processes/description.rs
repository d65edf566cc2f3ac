//! What every operation promises: an example that runs, limits that hold, steps, sources, cautions,
//! and errors that say what to do.

use super::bench::{Shop, cut, example};
use gullet::Code;
use gullet::operation::WorkedStep;
use gullet::operation::process::{ALL, Request, find};
use gullet::quantity::UnitSystem;

/// The limits that every operation looks at.
const COMMON: &[&str] = &[
    "spindle_speed_highest",
    "spindle_speed_lowest",
    "cutter_speed",
    "cutting_speed",
    "handwheel_pace",
    "table_feed",
    "table_feed_lowest",
    "smallest_feed",
    "largest_feed",
    "power",
    "torque",
];

#[test]
fn every_example_is_a_whole_cut() {
    for process in ALL {
        let cut = cut(process);
        let name = process.name;
        assert!(cut.ledger.iter().all(|limit| !limit.exceeded()), "{name}");
        assert_eq!(
            cut.ledger.iter().filter(|limit| limit.binding).count(),
            1,
            "{name}"
        );
        assert!(
            cut.ledger.iter().all(|limit| !limit.origin.is_empty()),
            "{name}"
        );
        let formulas = cut
            .steps
            .iter()
            .filter(|step| matches!(step, WorkedStep::Formula(_)))
            .count();
        assert!(formulas >= 5, "{name}: {formulas} worked steps");
        for step in &cut.steps {
            for system in [UnitSystem::Metric, UnitSystem::Inch] {
                assert!(
                    !step.text(system).contains("NaN"),
                    "{name}: {}",
                    step.text(system)
                );
            }
        }
        assert!(cut.cautions.len() >= 5 + process.cautions.len(), "{name}");
        assert!(
            !process.cautions.is_empty(),
            "{name} has cautions of its own"
        );
        assert!(
            cut.value("time").is_some_and(|time| time.si > 0.0),
            "{name} takes time"
        );
        assert!(cut.spread.iter().any(|band| band.name == "time"), "{name}");
        for band in &cut.spread {
            let band = band.band;
            assert!(
                band.low <= band.start * (1.0 + 1e-9) || band.start <= band.high * (1.0 + 1e-9),
                "{name}"
            );
        }
        for limit in &cut.ledger {
            let told = COMMON.contains(&limit.name)
                || process.limits.iter().any(|own| own.name() == limit.name);
            assert!(told, "{name} looks at {} and does not say so", limit.name);
        }
    }
}

#[test]
fn names_are_their_own() {
    for process in ALL {
        let mut names: Vec<&str> = process.inputs.iter().map(|input| input.name()).collect();
        names.sort_unstable();
        let count = names.len();
        names.dedup();
        assert_eq!(names.len(), count, "{}", process.name);
        let mut names: Vec<&str> = process.fields().map(|field| field.name).collect();
        names.sort_unstable();
        let count = names.len();
        names.dedup();
        assert_eq!(names.len(), count, "{}", process.name);
        assert!(find(process.name).is_ok());
    }
}

#[test]
fn a_missing_input_is_named_with_the_others() {
    for process in ALL {
        let shop = Shop::of(process);
        let error = Request::of(process)
            .cut(&shop.bench())
            .map(|_| ())
            .unwrap_err();
        let missing: Vec<&str> = process
            .inputs
            .iter()
            .filter(|input| input.required())
            .map(|input| input.name())
            .collect();
        let told: Vec<&str> = error
            .problems()
            .iter()
            .filter(|problem| problem.code == Code::Missing)
            .map(|problem| problem.parameter.as_str())
            .collect();
        assert_eq!(told, missing, "{}", process.name);
    }
}

#[test]
fn a_bad_value_of_each_input_is_an_error_that_names_it() {
    for process in ALL {
        let shop = Shop::of(process);
        for input in process.inputs.iter().filter(|input| input.words.is_empty()) {
            for bad in [f64::NAN, f64::NEG_INFINITY, -1.0, 1e12] {
                let request = example(process).si(input.name(), bad).unwrap();
                match request.cut(&shop.bench()) {
                    Err(error) => assert!(!error.first().remedy.is_empty(), "{error}"),
                    Ok(cut) => panic!(
                        "{}: {} = {bad} gives {:?}",
                        process.name,
                        input.name(),
                        cut.value("time")
                    ),
                }
            }
        }
        for input in process
            .inputs
            .iter()
            .filter(|input| !input.words.is_empty())
        {
            let error = Request::of(process)
                .text(input.name(), "no such word")
                .map(|_| ())
                .unwrap_err();
            assert_eq!(error.code(), Code::UnknownName);
        }
    }
}
