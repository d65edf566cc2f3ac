//! The economic speed and the price of a lot.

use crate::array::Data;
use crate::errors::{Fault, of_problems, raise};
use crate::quantity::{Quantity, read, scalar, system};
use crate::step::Step;
use gullet::economics::{self as core, EdgeEconomics, LotCost, Priced, Snapped};
use gullet::formula::Parameter;
use gullet::model::{Drive, Machine};
use gullet::operation::Field;
use gullet::quantity::{Kind, exact_text, si};
use gullet::{Code, Error, Problem, Result};
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// A record of the package made from plain values.
fn made<'py>(
    py: Python<'py>,
    name: &str,
    values: impl pyo3::call::PyCallArgs<'py>,
) -> PyResult<Bound<'py, PyAny>> {
    py.import("gullet._economics")?.getattr(name)?.call1(values)
}

/// One quantity of a kind, not an array of them.
pub fn one(kind: Kind, any: &Bound<'_, PyAny>) -> std::result::Result<f64, Fault> {
    match read(kind, any)? {
        Data::Scalar(value) => Ok(value),
        Data::Array(..) => Err(Problem::new(
            Code::WrongType,
            "",
            "an array",
            "one quantity",
            "give one value, or call once a row",
        )
        .into()),
    }
}

/// Inputs from keywords, every problem at once; those that are None are left to their defaults.
fn inputs<T>(
    py: Python<'_>,
    given: &Bound<'_, PyDict>,
    parameters: &[Parameter],
    mut problems: Vec<Problem>,
    make: fn(&[(String, String)]) -> Result<T>,
) -> PyResult<T> {
    let mut pairs = Vec::new();
    for (key, any) in given.iter().filter(|(_, any)| !any.is_none()) {
        let name: String = key.extract()?;
        let mut text = String::new();
        if let Some(parameter) = parameters.iter().find(|p| p.name == name) {
            match one(parameter.kind, &any) {
                // The text that reads back to the same bits.
                Ok(si) => text = exact_text(parameter.kind, si),
                Err(fault) => fault.collect(parameter.name, &mut problems)?,
            }
        }
        pairs.push((name, text));
    }
    let found = make(&pairs);
    let refused = match (found, problems.is_empty()) {
        (Ok(inputs), true) => return Ok(inputs),
        (Ok(_), false) => Vec::new(),
        (Err(error), true) => error.into_problems(),
        // What could not be read has been told.
        (Err(error), false) => error
            .into_problems()
            .into_iter()
            .filter(|problem| matches!(problem.code, Code::UnknownName | Code::Missing))
            .collect(),
    };
    problems.extend(refused);
    Err(of_problems(py, &problems, None))
}

fn values(fields: &[Field]) -> Vec<Option<Quantity>> {
    fields
        .iter()
        .map(|field| field.value.map(|si| scalar(field.kind, si)))
        .collect()
}

fn worked(steps: &[gullet::formula::Step]) -> Vec<Step> {
    let step = |step: &gullet::formula::Step| Step { step: step.clone() };
    steps.iter().map(step).collect()
}

type PricedRow = (
    Vec<Option<Quantity>>,
    Option<Vec<Option<Quantity>>>,
    Vec<Step>,
);

fn priced(priced: &Priced) -> PricedRow {
    (
        values(&priced.speed.fields()),
        priced.whole.map(|whole| values(&whole.fields())),
        worked(&priced.steps),
    )
}

fn snapped<'py>(py: Python<'py>, one: &Snapped) -> PyResult<Bound<'py, PyAny>> {
    let maybe = |one: &Option<Priced>| one.as_ref().map(priced);
    made(
        py,
        "_snapped",
        (
            one.aim.name(),
            priced(&one.wanted),
            priced(&one.chosen),
            maybe(&one.below),
            maybe(&one.above),
            maybe(&one.chosen_whole),
            vec![
                scalar(Kind::Money, one.extra_cost.value),
                scalar(Kind::Ratio, one.extra_cost_share.value),
                scalar(Kind::Time, one.extra_time.value),
                scalar(Kind::Ratio, one.extra_time_share.value),
            ],
            one.left_out,
        ),
    )
}

fn drive(
    machine: Option<&str>,
    speeds: Option<Vec<Bound<'_, PyAny>>>,
    problems: &mut Vec<Problem>,
) -> PyResult<Option<Drive>> {
    match (machine, speeds) {
        (Some(_), Some(_)) => problems.push(Problem::new(
            Code::Inconsistent,
            "speeds",
            "",
            "without machine",
            "give one of the two",
        )),
        (Some(name), None) => match Machine::builtin(name) {
            Ok(machine) => return Ok(Some(machine.drive)),
            Err(error) => problems.extend(error.into_problems()),
        },
        (None, Some(speeds)) => {
            let mut steps = Vec::new();
            for any in speeds {
                match one(Kind::RotationalSpeed, &any) {
                    Ok(value) => steps.push(si(value)),
                    Err(fault) => fault.collect("speeds", problems)?,
                }
            }
            return Ok(Some(Drive::Stepped(steps)));
        }
        (None, None) => {}
    }
    Ok(None)
}

#[pyfunction]
pub fn _economics<'py>(
    py: Python<'py>,
    given: &Bound<'py, PyDict>,
    machine: Option<&str>,
    speeds: Option<Vec<Bound<'py, PyAny>>>,
) -> PyResult<Bound<'py, PyAny>> {
    let mut problems = Vec::new();
    let drive = drive(machine, speeds, &mut problems)?;
    let parameters = EdgeEconomics::PARAMETERS;
    let inputs = inputs(py, given, parameters, problems, EdgeEconomics::read)?;
    let units = system(py)?;
    let found = core::Economics::new_in(inputs, drive.as_ref(), units);
    let found = found.map_err(|error: Error| raise(py, &error))?;
    let spindle = |one: &Option<Snapped>| one.as_ref().map(|one| snapped(py, one)).transpose();
    made(
        py,
        "_economics",
        (
            priced(&found.least_cost),
            found.least_time.as_ref().map(priced),
            spindle(&found.spindle_least_cost)?,
            spindle(&found.spindle_least_time)?,
            found.text(units),
            found.json(units).to_string(),
        ),
    )
}

#[pyfunction]
pub fn _lot_cost<'py>(py: Python<'py>, given: &Bound<'py, PyDict>) -> PyResult<Bound<'py, PyAny>> {
    let lot = inputs(py, given, LotCost::PARAMETERS, Vec::new(), LotCost::read)?;
    let units = system(py)?;
    let price = lot.price_in(units).map_err(|error| raise(py, &error))?;
    let time = |si| scalar(Kind::Time, si);
    let money = |si| scalar(Kind::Money, si);
    let shares: Vec<_> = price
        .shares
        .iter()
        .map(|share| {
            let (time, cost) = (time(share.time.value), money(share.cost.value));
            (share.name, share.meaning, time, cost)
        })
        .collect();
    made(
        py,
        "_lot_price",
        (
            shares,
            vec![
                time(price.normal_time.value),
                time(price.standard_time.value),
                time(price.time_per_part.value),
                money(price.cost_per_part.value),
                time(price.lot_time.value),
                money(price.lot_cost.value),
            ],
            price.allowance_text(units),
            price.learning_text(units),
            worked(&price.steps),
            price.text(units),
            price.json(units).to_string(),
        ),
    )
}

type ParameterRow = (
    &'static str,
    &'static str,
    &'static str,
    &'static str,
    String,
    Option<String>,
);

/// What `economics` and `lot_cost` take: name, symbol, kind, meaning, range, default.
#[pyfunction]
pub fn economics_parameters() -> (Vec<ParameterRow>, Vec<ParameterRow>) {
    let rows = |parameters: &'static [Parameter]| {
        let row = |p: &'static Parameter| {
            let default = p.default.map(|si| exact_text(p.kind, si));
            (
                p.name,
                p.symbol,
                p.kind.name(),
                p.meaning,
                p.range(),
                default,
            )
        };
        parameters.iter().map(row).collect()
    };
    (rows(EdgeEconomics::PARAMETERS), rows(LotCost::PARAMETERS))
}
