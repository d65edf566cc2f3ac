//! What can hurt: general words that shops repeat (common practice, no source).

use super::milling::Milling;
use super::request::{Operation, Pass};
use crate::model::{CutterForm, Direction, Feed};
use crate::table::Material;

/// Cautions of every operation.
const EVERY: &[&str] = &[
    "These are starting values. The machine's manual, the shop's rules, local codes and the responsible instructor come first.",
    "Wear eye protection: chips fly. Tie back hair; no sleeves, gloves, jewellery or rags near a turning spindle or a running blade.",
    "Stop the machine before measuring, clearing chips or touching the work. Use a brush or hook, never fingers.",
    "Never exceed the speed marked on the tool, its holder or the chuck.",
    "Deburr before handling: cut edges cut.",
];

/// The cautions of every operation.
pub(super) fn common() -> &'static [&'static str] {
    EVERY
}

/// The cautions of a work material.
pub(super) fn of_work(material: &Material) -> impl Iterator<Item = &'static str> {
    material.cautions.iter().filter_map(|tag| of_material(tag))
}

/// Cautions that every milling card carries.
const ALWAYS: &[&str] = &[
    "These are starting values. The machine's manual, the shop's rules, local codes and the responsible instructor come first.",
    "Wear eye protection: chips fly. Tie back hair; no sleeves, gloves, jewellery or rags near a turning spindle.",
    "Stop the spindle before measuring, clearing chips or touching the work. Use a brush or hook, never fingers.",
    "Never exceed the speed marked on the cutter, collet or holder.",
    "Hold the cutter in a rag when the collet opens: it drops and its edges cut.",
    "Deburr with a file before handling: milled edges cut.",
];

/// The cautions that fit this set-up and pass.
pub(super) fn cautions(setup: &Milling, pass: &Pass) -> Vec<&'static str> {
    let mut cautions = ALWAYS.to_vec();
    cautions.push(
        "Seat the work on clean parallels, tighten the vise, tap down until no parallel moves. Keep cutter and jaws apart.",
    );
    if pass.operation == Operation::SideMilling {
        match pass.direction {
            Direction::Climb if setup.machine.backlash.value > 0.0 => cautions.push(
                "Climb cut on a table with backlash: the cutter can grab the table. Light finishing cut only, with the table lock dragged.",
            ),
            Direction::Climb => cautions.push(
                "Climb cut: only on a table whose backlash is taken up. The cut pulls the work along.",
            ),
            Direction::Conventional => cautions.push(
                "Conventional cut: feed the work against the turning teeth. Going back the same way is a climb cut: clear the cutter first.",
            ),
        }
    }
    if !setup.cutter.centre_cutting && !matches!(setup.cutter.form, CutterForm::FaceMill(_)) {
        cautions.push("This cutter does not cut at its centre: enter from the side, never plunge.");
    }
    if setup.cutter.stick_out.value > 3.0 * setup.cutter.diameter.value {
        cautions.push("Long stick-out: start slow, listen for chatter, shorten it where you can.");
    }
    if matches!(setup.machine.feed, Feed::Hand) {
        cautions.push("Feed by hand evenly, always from the same side because of backlash; lock the axes that do not move.");
    }
    if matches!(setup.machine.drive, crate::model::Drive::Stepped(_)) {
        cautions
            .push("Change belts and gears only with the spindle stopped and the power locked off.");
    }
    cautions.extend(of_work(&setup.material));
    cautions
}

/// The caution behind a tag of the material tables.
fn of_material(tag: &str) -> Option<&'static str> {
    match tag {
        "fire_risk" => Some(
            "Fire: chips and fines of this metal burn. Sharp edge, heavy chip, never dwell; no water on the fire, a class D medium at hand; keep fines apart.",
        ),
        "work_hardens" => Some(
            "Work-hardens: never let the cutter rub or dwell; keep the feed up, conventional entry without pause.",
        ),
        "abrasive" => Some("Abrasive: edges wear fast; check size and finish often."),
        "dust" => Some("Dust: extract it, keep it out of slideways and lungs."),
        "melts" => Some("Melts: sharp edge, clear the chips, keep the work cool."),
        _ => None,
    }
}
