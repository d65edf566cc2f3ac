//! Studies over tables: columns and their problems, rows and their codes, totals.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "study_tables/columns.rs"]
mod columns;
#[path = "study_tables/operations.rs"]
mod operations;
#[path = "study_tables/pitfalls.rs"]
mod pitfalls;
#[path = "study_tables/rows.rs"]
mod rows;
#[path = "study_tables/start.rs"]
mod start;

use arrow_array::{Array, ArrayRef, Float64Array, RecordBatch, StringArray};
use arrow_schema::{Field, Schema};
use gullet::Error;
use gullet::study::Execution;
use gullet::table::Library;
use gullet_table::{Answer, StudyOptions, StudyPlan};
use std::sync::Arc;

/// A whole cut by constants.
const CUT: &[(&str, &str)] = &[
    ("material", "6061"),
    ("machine", "small-cnc-mill"),
    ("operation", "side-milling"),
    ("axial_depth", "6 mm"),
    ("radial_depth", "0.5 mm"),
    ("length", "80 mm"),
    ("part_height", "25 mm"),
    ("cutter_form", "square"),
    ("cutter_material", "HSS"),
    ("cutter_diameter", "12 mm"),
    ("cutter_teeth", "2"),
    ("cutter_flute_length", "25 mm"),
    ("cutter_stick_out", "35 mm"),
    ("clamping_force", "10 kN"),
    ("grip_depth", "15 mm"),
];

/// The cut's constants without those that columns give, and with others in their place.
fn constants(without: &[&str], with: &[(&str, &str)]) -> Vec<(String, String)> {
    CUT.iter()
        .filter(|(name, _)| !without.contains(name))
        .filter(|(name, _)| !with.iter().any(|(other, _)| other == name))
        .chain(with)
        .map(|(name, value)| ((*name).to_owned(), (*value).to_owned()))
        .collect()
}

/// The input that a column gives, by its name.
fn given(batch: &RecordBatch) -> Vec<&'static str> {
    let schema = batch.schema();
    CUT.iter()
        .map(|(name, _)| *name)
        .filter(|name| {
            let begins = |field: &Arc<Field>| {
                field.name() == name || field.name().starts_with(&format!("{name}_"))
            };
            schema.fields().iter().any(begins)
        })
        .collect()
}

fn batch(columns: Vec<(&str, ArrayRef)>) -> RecordBatch {
    let fields: Vec<Field> = columns
        .iter()
        .map(|(name, array)| Field::new(*name, array.data_type().clone(), true))
        .collect();
    let arrays = columns.into_iter().map(|(_, array)| array).collect();
    RecordBatch::try_new(Arc::new(Schema::new(fields)), arrays).unwrap()
}

fn numbers(values: &[Option<f64>]) -> ArrayRef {
    Arc::new(Float64Array::from(values.to_vec()))
}

fn texts(values: &[Option<&str>]) -> ArrayRef {
    Arc::new(StringArray::from(values.to_vec()))
}

fn plan(
    batch: &RecordBatch,
    with: &[(&str, &str)],
    options: &StudyOptions,
) -> Result<StudyPlan<'static>, Error> {
    let constants = constants(&given(batch), with);
    StudyPlan::new(
        &batch.schema(),
        &constants,
        None,
        Library::builtin(),
        options,
    )
}

fn run(batch: &RecordBatch) -> Answer {
    let plan = plan(batch, &[], &StudyOptions::default()).unwrap_or_else(|e| panic!("{e}"));
    plan.run(batch, &[], Execution::default()).unwrap()
}

/// The cells of a column of names; empty for null.
fn words(answer: &RecordBatch, name: &str) -> Vec<String> {
    let column = answer.column_by_name(name).unwrap();
    let dictionary =
        arrow_array::cast::as_dictionary_array::<arrow_array::types::Int32Type>(column);
    let list = arrow_array::cast::as_string_array(dictionary.values());
    dictionary
        .keys()
        .iter()
        .map(|key| key.map_or(String::new(), |key| list.value(key as usize).to_owned()))
        .collect()
}

fn status(answer: &Answer) -> Vec<String> {
    words(&answer.batch, "status")
}

/// The cells of a column of numbers.
fn cells(batch: &RecordBatch, name: &str) -> Vec<Option<f64>> {
    let column = batch
        .column_by_name(name)
        .unwrap_or_else(|| panic!("{name}: {:?}", batch.schema()));
    let array: &Float64Array = column.as_any().downcast_ref().unwrap();
    array.iter().collect()
}
