//! The catalogue: every formula once, with everything said about it.

mod columns;
pub(crate) mod define;
mod describe;
mod equation;
mod listings;
pub(crate) mod shared;
mod step;
mod substitute;

pub mod chamfer;
pub mod chip;
pub mod chuck;
pub mod cost;
pub mod deflection;
pub mod diameter;
pub mod drilling;
pub mod engagement;
pub mod finish;
pub mod force;
pub mod holding;
pub mod hole;
pub mod learning;
pub mod lot;
pub mod moves;
pub mod path;
pub mod power;
pub mod practice;
pub mod removal;
pub mod rotation;
pub mod sawing;
pub mod stability;
pub mod surface;
pub mod thread;
pub mod thread_milling;
pub mod threading;
pub mod time;
pub mod turning;
pub mod wear;

pub mod cases;

pub use columns::Column;
pub(crate) use columns::uneven;
pub use describe::{Condition, Example, Formula, Limit, Parameter, split_arguments};
pub(crate) use describe::{parameter_problems, read_parameters};
pub use listings::{catalogue_listing, examples_listing};
pub use step::{NoRecord, Recorder, Step, Steps, description};

use crate::error::{Result, unknown_name};
use crate::quantity::{Quantity, UnitSystem};

const TOPICS: &[&[&Formula]] = &[
    rotation::ALL,
    diameter::ALL,
    engagement::ALL,
    chip::ALL,
    removal::ALL,
    force::ALL,
    force::MEAN,
    force::PEAK,
    drilling::ALL,
    power::ALL,
    practice::ALL,
    deflection::ALL,
    finish::ALL,
    surface::ALL,
    chamfer::ALL,
    path::ALL,
    hole::ALL,
    time::ALL,
    moves::ALL,
    learning::ALL,
    holding::ALL,
    wear::ALL,
    cost::ALL,
    lot::ALL,
    thread::ALL,
    thread_milling::ALL,
    thread::FORM,
    thread::TAP,
    threading::ALL,
    turning::ALL,
    chuck::ALL,
    sawing::ALL,
    stability::ALL,
];

/// Every formula, by topic, in the order written.
pub fn catalogue() -> impl Iterator<Item = &'static Formula> {
    TOPICS.iter().flat_map(|topic| topic.iter().copied())
}

/// The formula of this name; the error suggests the nearest one.
pub fn find(name: &str) -> Result<&'static Formula> {
    catalogue()
        .find(|formula| formula.name == name)
        .ok_or_else(|| {
            unknown_name("formula", name, catalogue().map(|formula| formula.name)).into()
        })
}

/// Evaluates a formula by name over arguments as text: `"cutting_speed=300 ft/min; diameter=1/2 in"`.
///
/// ```
/// let n = gullet::evaluate("spindle_speed", "cutting_speed=300 ft/min; diameter=0.5 in")?;
/// assert!(n.agrees_with("2291.83 rpm", 1e-6)?);
/// # Ok::<(), gullet::Error>(())
/// ```
pub fn evaluate(name: &str, arguments: &str) -> Result<Quantity> {
    let formula = find(name)?;
    let values = formula.read_arguments(&split_arguments(arguments)?)?;
    formula
        .call_in(&values, units_of(arguments))
        .map(|si| Quantity {
            kind: formula.result,
            si,
        })
}

/// The worked step of a formula by name over arguments as text.
pub fn explain(name: &str, arguments: &str) -> Result<Step> {
    let formula = find(name)?;
    let values = formula.read_arguments(&split_arguments(arguments)?)?;
    let result = formula.call_in(&values, units_of(arguments))?;
    Ok(Step::new(formula, &values, result))
}

/// The units a text is written in: inch where it names an inch unit, else metric.
pub fn units_of(text: &str) -> UnitSystem {
    const INCH_UNITS: &[&str] = &[
        "in", "ft", "thou", "lbf", "psi", "ksi", "hp", "fpm", "sfm", "ipm",
    ];
    // The underscore keeps a name such as run_in in one piece.
    let inch = text
        .split(|c: char| !c.is_ascii_alphabetic() && c != '_')
        .any(|word| INCH_UNITS.contains(&word));
    if inch || text.contains('"') {
        UnitSystem::Inch
    } else {
        UnitSystem::Metric
    }
}
