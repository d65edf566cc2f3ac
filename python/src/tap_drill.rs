//! Drills for a thread.

use crate::economics::one;
use crate::errors::{of_problems, raise};
use crate::model::{Library, Tables};
use crate::quantity::{Quantity, scalar};
use gullet::error::Result;
use gullet::quantity::Kind;
use gullet::table::{DrillSet, TapDrillWish, ThreadBasis};
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// Name, set, diameter, percentage; percentages of a cutting tap as charts reckon and of the overlap.
type Row = (
    String,
    &'static str,
    Quantity,
    Quantity,
    Option<Quantity>,
    Option<Quantity>,
);

#[pyfunction]
pub fn _tap_drills(
    py: Python<'_>,
    given: &Bound<'_, PyDict>,
    basis: &str,
    sets: Option<Vec<String>>,
    library: Option<&Bound<'_, Library>>,
) -> PyResult<Vec<Row>> {
    let mut problems = Vec::new();
    let mut values = Vec::new();
    for (name, kind, _) in TapDrillWish::INPUTS {
        let Some(any) = given.get_item(name)?.filter(|any| !any.is_none()) else {
            continue;
        };
        match one(*kind, &any) {
            Ok(value) => values.push((*name, value)),
            Err(fault) => {
                fault.collect(name, &mut problems)?;
                // Given, if wrongly: not missing as well.
                values.push((*name, f64::NAN));
            }
        }
    }
    let mut keep = |error: gullet::Error| problems.extend(error.into_problems());
    let basis = ThreadBasis::parse(basis).map_err(&mut keep).ok();
    let names = sets.iter().flatten().map(String::as_str);
    let sets = DrillSet::parse_all(names).map_err(&mut keep).ok();
    let wish: Result<TapDrillWish> =
        TapDrillWish::from_values(&values, basis.unwrap_or(ThreadBasis::Chart));
    let wish = wish.map_err(&mut keep).ok();
    let (Some(wish), Some(sets), true) = (wish, sets, problems.is_empty()) else {
        return Err(of_problems(py, &problems, None));
    };
    let tables = Tables::of(library);
    let found = tables
        .get()
        .tap_drills(&wish, &sets)
        .map_err(|error| raise(py, &error))?;
    let share = |percent: gullet::quantity::Ratio| scalar(Kind::Ratio, percent.value);
    Ok(found
        .iter()
        .map(|near| {
            (
                near.drill.name.clone(),
                near.drill.set.name(),
                scalar(Kind::Length, near.drill.diameter.value),
                share(near.percent),
                near.chart_percent.map(share),
                near.overlap_percent.map(share),
            )
        })
        .collect())
}
