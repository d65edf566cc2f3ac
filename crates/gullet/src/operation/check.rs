//! The check of a set-up and a pass before anything is computed, and of the chain afterwards.

use super::cut::{Consequences, Limit, Settings, Spread, WorkedStep};
use super::request::{Operation, Pass, Setup};
use crate::error::{Code, Error, Problem, Result};
use crate::model::{Cutter, CutterForm, Feed, Machine};
use crate::quantity::{self, Kind, Length, UnitSystem, si};

/// Every problem of a set-up.
pub(super) fn setup(setup: &Setup) -> Vec<Problem> {
    let units = setup.units;
    let mut problems = Vec::new();
    for (section, found) in [
        ("cutter", setup.cutter.problems_in(units)),
        ("machine", setup.machine.problems_in(units)),
        ("hold", setup.hold.problems_in(units)),
        ("practice", setup.practice.problems_in(units)),
    ] {
        problems.extend(found.into_iter().map(|problem| problem.within(section)));
    }
    problems.extend(mills(setup.machine));
    if setup.material.pairs.is_empty() {
        problems.push(Problem::new(
            Code::NoData,
            "material",
            setup.material.id.as_str(),
            "a material with a pair of k_c1.1 and m_c",
            "add the pair in an overlay, with its source",
        ));
    }
    positive(&mut problems, units, "part_height", setup.part_height);
    problems
}

/// Why a machine does not mill: its feed follows its spindle.
pub(crate) fn mills(machine: &Machine) -> Option<Problem> {
    matches!(machine.feed, Feed::Geared(_)).then(|| {
        Problem::new(
            Code::Inconsistent,
            "machine.feed",
            "geared to the spindle",
            "a feed of the table's own, or cranked by hand",
            "take a milling machine: on a lathe the feed goes with the work, not with a cutter",
        )
    })
}

/// Every problem of a pass under a cutter.
pub(super) fn pass(cutter: &Cutter, units: UnitSystem, pass: &Pass) -> Vec<Problem> {
    let mut problems = Vec::new();
    let d = cutter.diameter;
    positive(&mut problems, units, "cut.axial_depth", pass.axial_depth);
    positive(&mut problems, units, "cut.radial_depth", pass.radial_depth);
    positive(&mut problems, units, "cut.length", pass.length);
    if pass.operation == Operation::SideMilling && pass.radial_depth.value > d.value * (1.0 + 1e-12)
    {
        problems.push(range(
            units,
            "cut.radial_depth",
            pass.radial_depth,
            format!("at most the cutter's diameter = {}", show(units, d)),
            "take it in more passes or with a larger cutter",
        ));
    }
    if pass.axial_depth.value > cutter.flute_length.value * (1.0 + 1e-12) {
        problems.push(range(
            units,
            "cut.axial_depth",
            pass.axial_depth,
            format!(
                "at most the cutter's flute length = {}",
                show(units, cutter.flute_length)
            ),
            "take it in more passes or with longer flutes: the shank would rub",
        ));
    }
    face(&mut problems, cutter, units, pass);
    if let Some(feed) = pass.feed_per_tooth {
        positive(&mut problems, units, "cut.feed_per_tooth", feed);
        if feed.value > d.value / 2.0 {
            problems.push(range(
                units,
                "cut.feed_per_tooth",
                feed,
                format!(
                    "at most half the cutter's diameter = {}",
                    show(units, d / 2.0)
                ),
                "a feed per tooth is a small part of the diameter",
            ));
        }
    }
    if let Some(speed) = pass.spindle_speed
        && !(speed.value.is_finite() && speed.value > 0.0)
    {
        let code = if speed.value.is_finite() {
            Code::OutOfRange
        } else {
            Code::NotFinite
        };
        problems.push(Problem::new(
            code,
            "cut.spindle_speed",
            quantity::format(Kind::RotationalSpeed, speed.value, units),
            "above 0 rpm",
            "leave it out to take the table's speed",
        ));
    }
    if let Some(roughness) = pass.mean_roughness {
        positive(&mut problems, units, "cut.mean_roughness", roughness);
        if roughness.value > 1e-3 {
            problems.push(range(
                units,
                "cut.mean_roughness",
                roughness,
                format!("at most {}", show(units, si(1e-3))),
                "write a mean roughness such as 3.2 um or 125 uin",
            ));
        }
    }
    problems
}

fn face(problems: &mut Vec<Problem>, cutter: &Cutter, units: UnitSystem, pass: &Pass) {
    let d = cutter.diameter;
    if pass.operation != Operation::FaceMilling {
        return;
    }
    let reach = (pass.radial_depth + d) / 2.0;
    if !pass.offset.value.is_finite() || pass.offset.value.abs() >= reach.value {
        problems.push(range(
            units,
            "cut.offset",
            pass.offset,
            format!("between {} and {}", show(units, -reach), show(units, reach)),
            "the cutter would miss the work: the offset runs from the cutter's axis to the middle of the work",
        ));
    }
    if matches!(cutter.form, CutterForm::BallNose) {
        problems.push(Problem::new(
            Code::Inconsistent,
            "cutter.form",
            "ball-nose",
            "square, corner-radius or face-mill",
            "a ball nose does not leave a flat face",
        ));
    }
}

fn show(units: UnitSystem, length: Length) -> String {
    quantity::format(Kind::Length, length.value, units)
}

fn range(
    units: UnitSystem,
    name: &str,
    value: Length,
    admissible: String,
    remedy: &str,
) -> Problem {
    let code = if value.value.is_finite() {
        Code::OutOfRange
    } else {
        Code::NotFinite
    };
    Problem::new(code, name, show(units, value), admissible, remedy)
}

fn positive(problems: &mut Vec<Problem>, units: UnitSystem, name: &str, value: Length) {
    if !(value.value > 0.0 && value.value <= 1e4) {
        problems.push(range(
            units,
            name,
            value,
            format!(
                "above {}, at most {}",
                show(units, si(0.0)),
                show(units, si(1e4))
            ),
            "give it as a length",
        ));
    }
}

/// Every formula of the chain was applied within its admissible range to a finite result.
pub(super) fn check_chain(steps: &[WorkedStep]) -> Result<()> {
    for step in steps {
        if let WorkedStep::Formula(step) = step {
            step.formula
                .call(&step.arguments)
                .map_err(|error| error.within(step.formula.name))?;
        }
    }
    Ok(())
}

/// Everything the cut returns is a number: an overflow between checked formulas is an error.
pub(super) fn check_finite(
    settings: &Settings,
    consequences: &Consequences,
    spread: &Spread,
    ledger: &[Limit],
) -> Result<()> {
    let ends = spread.ends();
    let fields = settings
        .fields()
        .into_iter()
        .chain(consequences.fields())
        .filter_map(|field| Some((field.name, field.value?)))
        .chain(ends);
    let limits = ledger
        .iter()
        .flat_map(|limit| [(limit.name, limit.value), (limit.name, limit.bound)]);
    let problems = fields
        .chain(limits)
        .filter(|(_, value)| !value.is_finite())
        .map(|(name, value)| {
            Problem::new(
                Code::ResultOverflow,
                name,
                format!("{value}"),
                "a result that a double can hold",
                "check the size of the inputs",
            )
        })
        .collect();
    Error::unless_empty(problems, ())
}
