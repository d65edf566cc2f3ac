//! The check of a set-up and a pass before anything is computed, and of the chain afterwards.

use super::cut::{Cut, WorkedStep};
use super::request::{Operation, Pass, Setup};
use crate::error::{Code, Error, Problem, Result};
use crate::model::CutterForm;
use crate::quantity::{self, Kind, Length, UnitSystem};

/// Every problem of the set-up and the pass, at once.
pub(super) fn check(setup: &Setup, pass: &Pass) -> Result<()> {
    let mut problems = Vec::new();
    for (section, found) in [
        ("cutter", setup.cutter.problems()),
        ("machine", setup.machine.problems()),
        ("hold", setup.hold.problems()),
        ("practice", setup.practice.problems()),
    ] {
        problems.extend(found.into_iter().map(|problem| problem.within(section)));
    }
    if setup.material.pairs.is_empty() {
        problems.push(Problem::new(
            Code::NoData,
            "material",
            setup.material.id.as_str(),
            "a material with a pair of k_c1.1 and m_c",
            "add the pair in an overlay, with its source",
        ));
    }
    let d = setup.cutter.diameter;
    positive(&mut problems, "part_height", setup.part_height);
    positive(&mut problems, "cut.axial_depth", pass.axial_depth);
    positive(&mut problems, "cut.radial_depth", pass.radial_depth);
    positive(&mut problems, "cut.length", pass.length);
    if pass.operation == Operation::SideMilling && pass.radial_depth.value > d.value * (1.0 + 1e-12)
    {
        problems.push(range(
            "cut.radial_depth",
            pass.radial_depth,
            format!("at most the cutter's diameter = {}", show(d)),
            "take it in more passes or with a larger cutter",
        ));
    }
    if pass.axial_depth.value > setup.cutter.flute_length.value * (1.0 + 1e-12) {
        problems.push(range(
            "cut.axial_depth",
            pass.axial_depth,
            format!(
                "at most the cutter's flute length = {}",
                show(setup.cutter.flute_length)
            ),
            "take it in more passes or with longer flutes: the shank would rub",
        ));
    }
    face(&mut problems, setup, pass);
    if let Some(feed) = pass.feed_per_tooth {
        positive(&mut problems, "cut.feed_per_tooth", feed);
        if feed.value > d.value / 2.0 {
            problems.push(range(
                "cut.feed_per_tooth",
                feed,
                format!("at most half the cutter's diameter = {}", show(d / 2.0)),
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
            quantity::format(Kind::RotationalSpeed, speed.value, UnitSystem::Metric),
            "above 0 rpm",
            "leave it out to take the table's speed",
        ));
    }
    if let Some(roughness) = pass.mean_roughness {
        positive(&mut problems, "cut.mean_roughness", roughness);
        if roughness.value > 1e-3 {
            problems.push(range(
                "cut.mean_roughness",
                roughness,
                "at most 1 mm".to_owned(),
                "write a mean roughness such as 3.2 um or 125 uin",
            ));
        }
    }
    Error::unless_empty(problems, ())
}

fn face(problems: &mut Vec<Problem>, setup: &Setup, pass: &Pass) {
    let d = setup.cutter.diameter;
    if pass.operation != Operation::FaceMilling {
        return;
    }
    let reach = (pass.radial_depth + d) / 2.0;
    if !pass.offset.value.is_finite() || pass.offset.value.abs() >= reach.value {
        problems.push(range(
            "cut.offset",
            pass.offset,
            format!("between {} and {}", show(-reach), show(reach)),
            "the cutter would miss the work: the offset runs from the cutter's axis to the middle of the work",
        ));
    }
    if matches!(setup.cutter.form, CutterForm::BallNose) {
        problems.push(Problem::new(
            Code::Inconsistent,
            "cutter.form",
            "ball-nose",
            "square, corner-radius or face-mill",
            "a ball nose does not leave a flat face",
        ));
    }
}

fn show(length: Length) -> String {
    quantity::format(Kind::Length, length.value, UnitSystem::Metric)
}

fn range(name: &str, value: Length, admissible: String, remedy: &str) -> Problem {
    let code = if value.value.is_finite() {
        Code::OutOfRange
    } else {
        Code::NotFinite
    };
    Problem::new(code, name, show(value), admissible, remedy)
}

fn positive(problems: &mut Vec<Problem>, name: &str, value: Length) {
    if !(value.value > 0.0 && value.value <= 1e4) {
        problems.push(range(
            name,
            value,
            "above 0 mm, at most 10 km".to_owned(),
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
pub(super) fn check_finite(cut: &Cut) -> Result<()> {
    let s = &cut.settings;
    let c = &cut.consequences;
    let spread = &cut.spread;
    let fields = [
        ("wanted_speed", s.wanted_speed.value),
        ("spindle_speed", s.spindle_speed.value),
        ("table_feed", s.table_feed.value),
        ("handwheel_rate", s.handwheel_rate.map_or(0.0, |x| x.value)),
        ("time_per_inch", s.time_per_inch.value),
        ("time_per_10_mm", s.time_per_10_mm.value),
        ("clamping_needed", c.clamping_needed.value),
        ("clamping_force", c.clamping_force.value),
        ("mean_roughness", c.mean_roughness.map_or(0.0, |x| x.value)),
        ("cutting_speed", spread.cutting_speed.high.value),
        ("feed_per_tooth", spread.feed_per_tooth.high.value),
        ("force", spread.force.high.value),
        ("power", spread.power.high.value),
        ("time", spread.time.high.value),
        ("time", spread.time.low.value),
    ];
    let limits = cut
        .ledger
        .iter()
        .flat_map(|limit| [(limit.name, limit.value), (limit.name, limit.bound)]);
    let problems = fields
        .into_iter()
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
