//! The route of a squared block: order and datums, stock, parallels, time, measurements, bad input.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::plan::{Ends, Face, Route, RouteCard, Seating, SquaredBlock};
use gullet::quantity::{Length, si};
use gullet::table::Library;
use gullet::{Code, Error};

#[path = "routes/files.rs"]
mod files;
#[path = "routes/order.rs"]
mod order;
#[path = "routes/remeasured.rs"]
mod remeasured;
#[path = "routes/time.rs"]
mod time;

const INCH: f64 = 0.0254;

/// A strip of cold-drawn steel, sawn to length, on the knee mill.
const FILE: &str = r#"
route = "squared-block"
title = "Stop block"
units = "inch"

[material]
id = "1018cd"

[blank]
length = "3.300 in"
width = "2.100 in"
height = "1.150 in"
sawn = ["left", "right"]
saw_mark_depth = "0.020 in"

[part]
length = "3.200 in"
width = "2.000 in"
height = "1.050 in"
tolerance = "0.004 in"

[cutter]
form = "square"
material = "HSS"
diameter = "3/4 in"
teeth = 4
flute_length = "1-1/2 in"
shank_diameter = "3/4 in"
stick_out = "1-3/4 in"
helix_angle = "30 deg"

[machine]
base = "manual-knee-mill"

[hold]
name = "6 in vise"
clamping_force = "14 kN"
jaw_friction = 0.15
jaw_height = "1-3/4 in"
jaw_opening = "6 in"
jaw_width = "6 in"
parallels = ["1/2 in", "3/4 in", "7/8 in", "1 in", "1-1/8 in"]
round_bar = "1/2 in"

[practice]
base = "training"

[rates]
machine_rate = "45 money/h"
"#;

fn library() -> &'static Library {
    Library::builtin()
}

fn read(text: &str) -> Result<SquaredBlock, Error> {
    SquaredBlock::from_toml(text, library())
}

fn block() -> SquaredBlock {
    read(FILE).unwrap_or_else(|error| panic!("{error}"))
}

fn route(block: &SquaredBlock) -> Route {
    Route::new(block.clone(), library()).unwrap_or_else(|error| panic!("{error}"))
}

fn refused(block: &SquaredBlock) -> Error {
    match Route::new(block.clone(), library()) {
        Ok(_) => panic!("planned"),
        Err(error) => error,
    }
}

fn inch(value: f64) -> Length {
    si(value * INCH)
}

fn close(a: Length, b: f64) -> bool {
    (a.value - b * INCH).abs() < 1e-9
}

#[test]
fn stock_is_shared_out_over_opposite_faces() {
    let route = route(&block());
    for clamping in &route.clampings {
        // 0.100 in on every size: 100 counts of half a thou for each face.
        assert!(close(clamping.stock, 0.05), "{}", clamping.reason);
        assert_eq!(clamping.card.plan.total, 100);
        let sum: u64 = clamping
            .card
            .plan
            .passes
            .iter()
            .map(|pass| pass.counts)
            .sum();
        assert_eq!(sum, 100);
    }
    let sizes: Vec<f64> = route
        .clampings
        .iter()
        .map(|clamping| (clamping.after.value / INCH * 1e4).round() / 1e4)
        .collect();
    assert_eq!(sizes, [1.1, 2.05, 2.0, 1.05, 3.25, 3.2]);
    let finishing: Vec<bool> = route.clampings.iter().map(|c| c.finishes).collect();
    assert_eq!(finishing, [false, false, true, true, false, true]);
}

#[test]
fn the_lowest_parallel_that_clears_the_jaws_is_taken() {
    let route = route(&block());
    let parallels: Vec<Option<f64>> = route
        .clampings
        .iter()
        .map(|clamping| {
            clamping
                .placement
                .parallel
                .map(|x| (x.value / INCH * 1e6).round() / 1e6)
        })
        .collect();
    // Jaws 1.750, clearance 0.125: 1.750 + 0.050 + 0.125 - height of the part, by hand:
    // 1 and 4 (1.150, 1.100): 0.775 and 0.825; 2 and 3 (2.100, 2.050): below the bed.
    assert_eq!(
        parallels,
        [Some(0.875), None, None, Some(0.875), None, None]
    );
    let first = &route.clampings[0].placement;
    assert!(close(first.grip, 0.875) && close(first.above_jaws, 0.275));
    // Between the jaws 2.100 with a bar of 1/2 in, then 1.100 with it.
    assert!(close(first.opening, 2.6));
    assert!(close(route.clampings[1].placement.opening, 1.6));
    assert!(close(route.clampings[3].placement.opening, 2.0));
}

#[test]
fn a_missing_parallel_is_named_with_its_height() {
    let mut block = block();
    block.vise.hold.parallels = vec![inch(0.5), inch(1.5)];
    let error = refused(&block);
    // Grip of a third of 1.150: at most 1.750 - 0.3833 high.
    let problem = error.first();
    assert_eq!(
        (problem.code, problem.parameter.as_str()),
        (Code::NoPlan, "hold.parallels")
    );
    assert_eq!(problem.value, "0.5 in, 1.5 in");
    assert_eq!(problem.admissible, "a pair 0.775 in to 1.3667 in high");
    assert!(
        problem.remedy.contains("clamping 1 (top face)"),
        "{problem}"
    );
    // Clamping 4 has the same trouble with 1.100 in; both are told.
    assert_eq!(error.problems().len(), 2, "{error}");
}

#[test]
fn a_part_too_low_for_grip_and_cutter_has_no_parallel() {
    let mut block = block();
    block.practice.smallest_grip = si(0.95);
    let error = refused(&block);
    let problem = error.first();
    assert_eq!(problem.parameter, "hold.parallels");
    assert_eq!(problem.admissible, "none would do");
}

#[test]
fn a_vise_that_is_too_small_is_refused() {
    let mut narrow = block();
    narrow.vise.jaw_opening = Some(inch(2.55));
    let error = refused(&narrow);
    assert_eq!(error.first().parameter, "hold.jaw_opening");
    assert_eq!(error.first().admissible, "at least 2.6 in");
    // Without the bar it goes in.
    narrow.vise.round_bar = None;
    let route = route(&narrow);
    assert!(
        route
            .clampings
            .iter()
            .all(|c| c.placement.round_bar.is_none())
    );
    let words = route.clampings[0].card.instructions.before.join(" ");
    assert!(words.contains("soft strip"), "{words}");

    let mut short = block();
    short.vise.jaw_width = Some(inch(1.5));
    let error = refused(&short);
    assert_eq!(error.first().parameter, "hold.jaw_width");
    assert_eq!(error.first().admissible, "at least 1.65 in");
}

#[test]
fn ends_stand_where_the_jaws_reach_and_overhang_where_not() {
    let standing = route(&block());
    assert_eq!(standing.ends, Ends::OnEnd);
    let mut low = block();
    low.practice.smallest_grip = si(0.55);
    // 0.55 of 3.3 in is more than the jaws: only the ends have no way but lying.
    let lying = route(&low);
    assert_eq!(lying.ends, Ends::Overhanging);
    let end = &lying.clampings[4];
    assert_eq!(end.seat.seating, Seating::Overhanging);
    assert!(end.card.job.hold.feed_across_jaws);
    assert!(end.placement.overhang.is_some_and(|out| close(out, 0.175)));
    // The side of the cutter covers the finished height.
    assert!(close(end.card.plan.passes[0].cut.pass.axial_depth, 1.05));

    low.ends = Some(Ends::OnEnd);
    let error = refused(&low);
    assert_eq!(error.first().parameter, "hold.jaw_height");
    assert!(error.first().remedy.contains("overhanging"), "{error}");

    low.ends = Some(Ends::Overhanging);
    low.cutter.flute_length = inch(1.05);
    let error = refused(&low);
    assert_eq!(error.first().parameter, "cutter.flute_length");
    low.end_cutter = Some(block().cutter);
    assert!(Route::new(low, library()).is_ok());
}

#[test]
fn cards_say_the_same_in_every_form() {
    let card = RouteCard::new(block(), library()).unwrap();
    let text = card.text();
    assert!(text.starts_with("ROUTE  Stop block"));
    assert_eq!(text.matches("SET-UP CARD").count(), 6);
    assert!(!text.contains("Worked steps") && card.text_with_steps().contains("Worked steps"));
    let json = card.json();
    assert_eq!(json["clampings"].as_array().unwrap().len(), 6);
    assert_eq!(json["clampings"][0]["parallel"]["text"], "0.875 in");
    let html = card.html();
    assert_eq!(html.matches("<h1>").count(), 7);
    assert!(!html.contains("<script") && !html.contains("http"));
    assert_eq!(
        card.html_with_steps().matches("class=\"steps\"").count(),
        html_groups(&json)
    );
    for caution in card.cautions() {
        assert!(
            json["cautions"]
                .as_array()
                .unwrap()
                .iter()
                .any(|c| *c == caution)
        );
    }
}

/// Groups of passes over all cards: their settings differ.
fn html_groups(json: &serde_json::Value) -> usize {
    json["clampings"]
        .as_array()
        .unwrap()
        .iter()
        .map(|clamping| {
            let passes = clamping["card"]["plan"]["passes"].as_array().unwrap();
            let mut kinds: Vec<&str> = passes.iter().map(|p| p["kind"].as_str().unwrap()).collect();
            kinds.dedup();
            kinds.len()
        })
        .sum()
}

#[test]
fn saw_marks_are_told_only_of_sawn_faces() {
    let route = route(&block());
    for clamping in &route.clampings {
        let told = clamping
            .card
            .instructions
            .before
            .join(" ")
            .contains("Saw marks");
        let sawn = matches!(clamping.seat.cut, Face::Left | Face::Right);
        assert_eq!(told, sawn, "{:?}", clamping.seat.cut);
    }
}
