//! `gullet cost`: the economic speed of a cut, and what a lot takes and costs.

use super::evaluate::named_values;
use crate::answer::{Answer, joined};
use crate::arguments::{Flag, Given, JSON, Spec, UNITS, read};
use gullet::economics::{Economics, EdgeEconomics, LotCost, LotPrice};
use gullet::error::{Code, Error, Problem, Result, unknown_name};
use gullet::formula::units_of;
use gullet::model::{Drive, Machine};
use gullet::quantity::{Kind, UnitSystem, parse, si};
use serde_json::Value;

const SPEC: Spec = Spec {
    flags: &[
        JSON,
        UNITS,
        Flag::with_value("--machine", "NAME"),
        Flag::with_value("--speeds", "LIST"),
        Flag::with_value("--lots", "LIST"),
        Flag::switch("--steps"),
    ],
    operand: "speed|lot",
    least: 1,
    most: usize::MAX,
};

/// Options of one of the two that the other does not have.
const OF_SPEED: &[&str] = &["--machine", "--speeds"];
const OF_LOT: &[&str] = &["--lots", "--steps"];

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    let (what, values) = given
        .operands
        .split_first()
        .map_or(("", given.operands.as_slice()), |(what, values)| {
            (what.as_str(), values)
        });
    let units = given.units().unwrap_or_else(|| units_of(&values.join(" ")));
    match what {
        "speed" => speed(&given, values, units),
        "lot" => lot(&given, values, units),
        _ => Err(unknown_name("cost", what, ["speed", "lot"]).into()),
    }
}

fn foreign(given: &Given, options: &[&str], home: &str) -> Vec<Problem> {
    options
        .iter()
        .filter(|option| given.has(option))
        .map(|option| {
            Problem::new(
                Code::Inconsistent,
                *option,
                "",
                format!("with gullet cost {home}"),
                "drop it",
            )
        })
        .collect()
}

/// Texts with commas between them, read as one kind; every problem at once.
fn list(option: &str, kind: Kind, text: &str) -> Result<Vec<f64>> {
    let mut problems = Vec::new();
    let mut values = Vec::new();
    for word in text.split(',').map(str::trim) {
        match parse(kind, word) {
            Ok(value) => values.push(value),
            Err(error) => problems.extend(error.within(option).into_problems()),
        }
    }
    Error::unless_empty(problems, values)
}

fn drive(given: &Given) -> Result<Option<Drive>> {
    match (given.value("--machine"), given.value("--speeds")) {
        (Some(_), Some(speeds)) => Err(Problem::new(
            Code::Inconsistent,
            "--speeds",
            speeds,
            "without --machine",
            "give one of the two",
        )
        .into()),
        (Some(name), None) => {
            let machine = Machine::builtin(name).map_err(|error| error.within("--machine"))?;
            Ok(Some(machine.drive))
        }
        (None, Some(text)) => {
            let speeds = list("--speeds", Kind::RotationalSpeed, text)?;
            Ok(Some(Drive::Stepped(speeds.into_iter().map(si).collect())))
        }
        (None, None) => Ok(None),
    }
}

fn speed(given: &Given, values: &[String], units: UnitSystem) -> Result<Answer> {
    let (pairs, mut problems) = named_values(values);
    problems.extend(foreign(given, OF_LOT, "lot"));
    let drive = drive(given).unwrap_or_else(|error| {
        problems.extend(error.into_problems());
        None
    });
    let inputs = match EdgeEconomics::read(&pairs) {
        Ok(inputs) => Error::unless_empty(problems, inputs)?,
        Err(error) => return Err(joined(problems, error)),
    };
    let economics = Economics::new_in(inputs, drive.as_ref(), units)?;
    Ok(if given.has("--json") {
        Answer::json(&economics.json(units))
    } else {
        Answer::text(economics.text(units))
    })
}

fn lot(given: &Given, values: &[String], units: UnitSystem) -> Result<Answer> {
    let (mut pairs, mut problems) = named_values(values);
    problems.extend(foreign(given, OF_SPEED, "speed"));
    let sizes = match given.value("--lots") {
        None => Vec::new(),
        Some(text) => list("--lots", Kind::Count, text).unwrap_or_else(|error| {
            problems.extend(error.into_problems());
            Vec::new()
        }),
    };
    if given.has("--lots") {
        // Stands for the sizes of the option; one given besides is told as given twice.
        pairs.push(("lot_size".to_owned(), "1".to_owned()));
    }
    let inputs = match LotCost::read(&pairs) {
        Ok(inputs) => Error::unless_empty(problems, inputs)?,
        Err(error) => return Err(joined(problems, error)),
    };
    let lots = if sizes.is_empty() {
        vec![inputs]
    } else {
        sizes
            .into_iter()
            .map(|size| inputs.with_lot_size(si(size)))
            .collect()
    };
    let prices: Vec<LotPrice> = lots
        .iter()
        .map(|lot| lot.price_in(units))
        .collect::<Result<_>>()?;
    if given.has("--json") {
        let prices: Vec<Value> = prices.iter().map(|price| price.json(units)).collect();
        return Ok(Answer::json(&Value::Array(prices)));
    }
    let blocks: Vec<String> = prices
        .iter()
        .map(|price| {
            let mut text = price.text(units);
            if given.has("--steps") {
                text += &price.steps_text(units);
            }
            text
        })
        .collect();
    Ok(Answer::text(blocks.join("\n")))
}
