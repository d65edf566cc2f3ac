//! The Python face: conversions only, every number comes from the core.
#![forbid(unsafe_code)]
// What `help` shows is written for Python: its examples begin with three signs, and run.
#![allow(missing_docs, clippy::doc_lazy_continuation)]
// Records cross as plain tuples, which the package names.
#![allow(clippy::type_complexity)]

mod array;
mod arrow;
mod cut;
mod economics;
mod errors;
mod fit;
mod formula;
mod job;
mod model;
mod part;
mod plan;
mod process;
mod quantity;
mod route;
mod step;
mod study;
mod tap_drill;
mod wear;

use pyo3::prelude::*;

/// The compiled part of `gullet`; use the package.
// Every class is frozen and holds plain data or locks of its own, so no global lock is needed.
#[pymodule(gil_used = false)]
fn _gullet(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add("__version__", env!("CARGO_PKG_VERSION"))?;
    module.add_class::<quantity::Quantity>()?;
    module.add_class::<formula::Formula>()?;
    module.add_class::<step::Step>()?;
    module.add_class::<model::Library>()?;
    module.add_class::<model::Part>()?;
    module.add_class::<cut::Setup>()?;
    module.add_class::<cut::Cut>()?;
    module.add_class::<job::Job>()?;
    module.add_class::<plan::PassPlan>()?;
    module.add_class::<plan::Card>()?;
    module.add_class::<route::Route>()?;
    module.add_class::<part::PartCard>()?;
    module.add_class::<process::OperationCut>()?;
    module.add_function(wrap_pyfunction!(quantity::_quantity, module)?)?;
    module.add_function(wrap_pyfunction!(quantity::units_of, module)?)?;
    module.add_function(wrap_pyfunction!(quantity::kinds, module)?)?;
    module.add_function(wrap_pyfunction!(formula::formulas, module)?)?;
    module.add_function(wrap_pyfunction!(formula::evaluate, module)?)?;
    module.add_function(wrap_pyfunction!(step::explain, module)?)?;
    module.add_function(wrap_pyfunction!(step::_step, module)?)?;
    module.add_function(wrap_pyfunction!(model::job_keys, module)?)?;
    module.add_function(wrap_pyfunction!(model::material_fields, module)?)?;
    module.add_function(wrap_pyfunction!(model::builtin_names, module)?)?;
    module.add_function(wrap_pyfunction!(cut::record_fields, module)?)?;
    module.add_function(wrap_pyfunction!(cut::_cut, module)?)?;
    module.add_function(wrap_pyfunction!(job::_job, module)?)?;
    module.add_function(wrap_pyfunction!(plan::_plan, module)?)?;
    module.add_function(wrap_pyfunction!(plan::_card, module)?)?;
    module.add_function(wrap_pyfunction!(plan::_planned_cut, module)?)?;
    module.add_function(wrap_pyfunction!(route::_route, module)?)?;
    module.add_function(wrap_pyfunction!(route::_form, module)?)?;
    module.add_function(wrap_pyfunction!(part::_part_card, module)?)?;
    module.add_function(wrap_pyfunction!(process::_operations, module)?)?;
    module.add_function(wrap_pyfunction!(process::_operation_values, module)?)?;
    module.add_function(wrap_pyfunction!(process::_operation_cut, module)?)?;
    module.add_function(wrap_pyfunction!(route::route_schema, module)?)?;
    module.add_function(wrap_pyfunction!(route::part_schema, module)?)?;
    module.add_function(wrap_pyfunction!(job::job_schema, module)?)?;
    module.add_function(wrap_pyfunction!(job::job_reference, module)?)?;
    module.add_class::<arrow::Table>()?;
    module.add_function(wrap_pyfunction!(arrow::_table, module)?)?;
    module.add_function(wrap_pyfunction!(arrow::catalogue, module)?)?;
    module.add_function(wrap_pyfunction!(arrow::column_unit, module)?)?;
    module.add_function(wrap_pyfunction!(arrow::worked_examples, module)?)?;
    module.add_class::<study::Plan>()?;
    module.add_class::<study::Source>()?;
    module.add_class::<study::Stream>()?;
    module.add_function(wrap_pyfunction!(study::_study_source, module)?)?;
    module.add_function(wrap_pyfunction!(economics::_economics, module)?)?;
    module.add_function(wrap_pyfunction!(economics::_lot_cost, module)?)?;
    module.add_function(wrap_pyfunction!(economics::economics_parameters, module)?)?;
    module.add_function(wrap_pyfunction!(tap_drill::_tap_drills, module)?)?;
    module.add_function(wrap_pyfunction!(errors::codes, module)?)?;
    module.add_class::<wear::ToolLife>()?;
    module.add_class::<fit::TaylorFit>()?;
    module.add_class::<fit::KienzleFit>()?;
    module.add_function(wrap_pyfunction!(fit::fit_taylor, module)?)?;
    module.add_function(wrap_pyfunction!(fit::fit_extended_taylor, module)?)?;
    module.add_function(wrap_pyfunction!(fit::fit_kienzle, module)?)?;
    Ok(())
}
