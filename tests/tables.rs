//! The reference tables: their form, the answers they give, and a shop's tables laid over them.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

use gullet::Code;
use gullet::quantity::{Length, Velocity, si};
use gullet::table::{
    HardnessScale, Library, Material, MeasuredAt, Overlay, Process, Provenance, Ranged,
    ToolMaterial,
};
use gullet_reference_data as data;
use std::collections::{BTreeMap, BTreeSet};

type Row = BTreeMap<String, String>;

fn rows(text: &str) -> Vec<Row> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let header: Vec<String> = reader
        .headers()
        .unwrap()
        .iter()
        .map(str::to_owned)
        .collect();
    reader
        .records()
        .map(|record| {
            let record = record.unwrap();
            header
                .iter()
                .cloned()
                .zip(record.iter().map(str::to_owned))
                .collect()
        })
        .collect()
}

fn number(row: &Row, column: &str) -> f64 {
    row[column]
        .parse()
        .unwrap_or_else(|_| panic!("{} {column} {}", row["id"], row[column]))
}

fn sfm(value: Velocity) -> f64 {
    value.value * 60.0 / 0.3048
}

fn inch(value: Length) -> f64 {
    value.value / 0.0254
}

fn inches(value: f64) -> Length {
    si(value * 0.0254)
}

fn find(name: &str) -> &'static Material {
    Library::builtin().material(name).unwrap()
}

fn speed(name: &str, tool: ToolMaterial, process: Process) -> Ranged<Velocity> {
    Library::builtin()
        .cutting_speed(find(name), tool, process)
        .unwrap()
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * b.abs()
}

#[path = "tables/form.rs"]
mod form;
#[path = "tables/names.rs"]
mod names;
#[path = "tables/overlays.rs"]
mod overlays;
#[path = "tables/queries.rs"]
mod queries;
