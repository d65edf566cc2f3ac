//! `gullet explain`: a formula described, or worked through with numbers.

use super::evaluate::formula_and_arguments;
use crate::answer::Answer;
use crate::arguments::{JSON, Spec, UNITS, read};
use gullet::error::Result;
use gullet::formula::{self, Formula, Step};
use gullet::quantity::{UnitSystem, format_worked};
use serde_json::{Value, json};

const SPEC: Spec = Spec {
    flags: &[JSON, UNITS],
    operand: "FORMULA",
    least: 1,
    most: usize::MAX,
};

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    let system = given.units().unwrap_or(UnitSystem::Metric);
    if let [name] = given.operands.as_slice() {
        let formula = formula::find(name)?;
        return Ok(if given.has("--json") {
            Answer::json(&description(formula))
        } else {
            Answer::text(formula::description(formula))
        });
    }
    let (formula, arguments) = formula_and_arguments(&given.operands)?;
    let result = formula.call(&arguments)?;
    let step = Step::new(formula, &arguments, result);
    Ok(if given.has("--json") {
        Answer::json(&step_json(&step, system))
    } else {
        Answer::text(step_text(&step, system))
    })
}

fn step_text(step: &Step, system: UnitSystem) -> String {
    let formula = step.formula;
    let mut text = format!("{}: {}\n", formula.name, formula.meaning);
    text += &format!("  {}\n", step.text(system));
    text += "  arguments\n";
    for (parameter, value) in formula.parameters.iter().zip(&step.arguments) {
        text += &format!(
            "    {} {} = {}; {}; {}\n",
            parameter.name,
            parameter.symbol,
            format_worked(parameter.kind, *value, system),
            parameter.meaning,
            parameter.admissible(&step.arguments, system),
        );
    }
    for condition in formula.conditions {
        text += &format!("    {}\n", condition.text);
    }
    text += &format!("  valid for  {}\n", formula.validity);
    text += &format!("  source     {}\n", formula.source);
    text
}

fn step_json(step: &Step, system: UnitSystem) -> Value {
    let formula = step.formula;
    let arguments: Vec<Value> = formula
        .parameters
        .iter()
        .zip(&step.arguments)
        .map(|(parameter, value)| {
            json!({
                "name": parameter.name,
                "symbol": parameter.symbol,
                "meaning": parameter.meaning,
                "kind": parameter.kind.name(),
                "si": value,
                "text": format_worked(parameter.kind, *value, system),
                "admissible": parameter.admissible(&step.arguments, system),
            })
        })
        .collect();
    json!({
        "formula": formula.name,
        "meaning": formula.meaning,
        "arguments": arguments,
        "conditions": conditions(formula),
        "result": {
            "symbol": formula.symbol,
            "kind": formula.result.name(),
            "si": step.result,
            "text": format_worked(formula.result, step.result, system),
        },
        "text": step.text(system),
        "latex": step.latex(system),
        "validity": formula.validity,
        "source": formula.source,
    })
}

fn conditions(formula: &Formula) -> Vec<&'static str> {
    formula
        .conditions
        .iter()
        .map(|condition| condition.text)
        .collect()
}

/// Everything said about a formula, as JSON.
pub fn description(formula: &Formula) -> Value {
    let arguments: Vec<Value> = formula
        .parameters
        .iter()
        .map(|parameter| {
            json!({
                "name": parameter.name,
                "symbol": parameter.symbol,
                "kind": parameter.kind.name(),
                "meaning": parameter.meaning,
                "range": parameter.range(),
                "default_si": parameter.default,
            })
        })
        .collect();
    json!({
        "formula": formula.name,
        "topic": formula.topic,
        "meaning": formula.meaning,
        "symbol": formula.symbol,
        "symbol_latex": formula.symbol_latex,
        "equation": formula.equation,
        "latex": formula.latex,
        "arguments": arguments,
        "conditions": conditions(formula),
        "result_kind": formula.result.name(),
        "validity": formula.validity,
        "source": formula.source,
        "example": {
            "arguments": formula.example.arguments,
            "expected": formula.example.expected,
            "rtol": formula.example.relative_tolerance,
            "source": formula.example.source,
        },
    })
}
