//! Parts made by several operations: time and cost by hand, bad input, cards.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::Error;
use gullet::plan::{PartCard, PartRoute};
use gullet::table::Library;

#[path = "parts/bad_input.rs"]
mod bad_input;
#[path = "parts/by_hand.rs"]
mod by_hand;
#[path = "parts/schema.rs"]
mod schema;
#[path = "parts/sheets.rs"]
mod sheets;

/// The example: sawn, squared, drilled, tapped, reamed, turned.
const EXAMPLE: &str = include_str!("../crates/gullet-cli/jobs/parts/tailstock_post.toml");

/// Two operations on two machines, one of them the shop's own.
const FILE: &str = r#"
route = "part"
title = "Bracket with two holes"

[material]
id = "1018"

[practice]
base = "experienced"

[rates]
machine_rate = "48 money/h"
material_cost = 2.5
lots = [1, 10]

[[operation]]
name = "Drill two holes"
clamping = "vise on the mill"
operation = "drilling"
machine = "small-cnc-mill"
tool = "HSS"
count = 2
diameter = "8.5 mm"
depth = "12 mm"
hole = "through"
handling_time = "20 s"

[[operation]]
operation = "countersinking"
machine = "bench"
diameter = "10 mm"
hole_diameter = "8.5 mm"

[machines.bench]
base = "drill-press"
motor_power = "500 W"
"#;

fn library() -> &'static Library {
    Library::builtin()
}

fn read(text: &str) -> Result<PartRoute, Error> {
    PartRoute::from_toml(text, library())
}

#[track_caller]
fn card(text: &str) -> PartCard {
    let route = read(text).unwrap_or_else(|error| panic!("{error}"));
    PartCard::new(route, library()).unwrap_or_else(|error| panic!("{error}"))
}

/// A text with some of it in the place of other.
#[track_caller]
fn edited(text: &str, from: &str, to: &str) -> String {
    assert!(text.contains(from), "{from}");
    text.replacen(from, to, 1)
}
