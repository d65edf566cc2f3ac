//! The reference page: every formula and operation as the catalogue has it.

mod html;
mod text;

pub use html::render as html;
pub use text::render as text;

use gullet::formula::{Formula, Parameter, catalogue};
use gullet::operation::LimitName;
use gullet::operation::process::{Process, ProcessInput};
use gullet::quantity::{UnitSystem, format};

/// The formulas of each topic, in the catalogue's order.
fn topics() -> Vec<(&'static str, Vec<&'static Formula>)> {
    let mut topics: Vec<(&str, Vec<&Formula>)> = Vec::new();
    for formula in catalogue() {
        match topics.iter_mut().find(|(topic, _)| *topic == formula.topic) {
            Some((_, formulas)) => formulas.push(formula),
            None => topics.push((formula.topic, vec![formula])),
        }
    }
    topics
}

/// Admissible range and default of an argument.
fn range(parameter: &Parameter) -> String {
    let mut text = parameter.range();
    if let Some(default) = parameter.default.filter(|value| value.is_finite()) {
        text += &std::format!(
            "; {} without it",
            format(parameter.kind, default, UnitSystem::Metric)
        );
    }
    text
}

/// Range or words, and default, of an input of an operation.
fn input_range(input: &ProcessInput) -> String {
    let default = input.parameter.default;
    if !input.words.is_empty() {
        let chosen = default
            .and_then(|place| input.words.get(place as usize))
            .map_or_else(String::new, |word| std::format!("; {word} without it"));
        return std::format!("{}{chosen}", input.words.join(" or "));
    }
    match default {
        None => std::format!("{}; must be given", input.parameter.range()),
        Some(value) if value == 0.0 || !value.is_finite() => {
            std::format!("{}; may be left out", input.parameter.range())
        }
        Some(_) => range(&input.parameter),
    }
}

/// Limits that an operation looks at, the common ones first.
fn limits(process: &Process) -> String {
    const COMMON: &[LimitName] = &[
        LimitName::SpindleSpeedHighest,
        LimitName::SpindleSpeedLowest,
        LimitName::CutterSpeed,
        LimitName::CuttingSpeed,
        LimitName::HandwheelPace,
        LimitName::TableFeed,
        LimitName::TableFeedLowest,
        LimitName::SmallestFeed,
        LimitName::LargestFeed,
        LimitName::Torque,
        LimitName::Power,
    ];
    COMMON
        .iter()
        .chain(process.limits)
        .map(|limit| limit.name().replace('_', " "))
        .collect::<Vec<_>>()
        .join(", ")
}
