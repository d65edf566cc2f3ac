//! What the card of a clamping says around its cut.

use super::block::SquaredBlock;
use super::order::Seating;
use super::planned::BlockClamping;
use super::vise::TIP_BELOW;
use crate::plan::card::{Instructions, Print};
use crate::quantity::{Kind, Length, format, si};

/// Prints the sizes of a clamping.
fn print(clamping: &BlockClamping, block: &SquaredBlock) -> Print {
    Print {
        system: block.units,
        resolution: clamping.card.plan.resolution,
    }
}

/// How the part sits, what to do before the cut and after it.
pub(super) fn instructions(clamping: &BlockClamping, block: &SquaredBlock) -> Instructions {
    Instructions {
        seat: seat(clamping, block),
        before: before(clamping, block),
        after: after(clamping, block),
    }
}

/// Where the part rests.
pub(super) fn rests(clamping: &BlockClamping, block: &SquaredBlock) -> String {
    match clamping.placement.parallel {
        Some(height) => {
            std::format!(
                "parallels {}",
                format(Kind::Length, height.value, block.units)
            )
        }
        None => "bed of the vise".to_owned(),
    }
}

/// What is between the part and the movable jaw.
pub(super) fn movable(clamping: &BlockClamping, block: &SquaredBlock) -> String {
    let name = clamping.seat.movable.name();
    match (clamping.placement.round_bar, clamping.seat.rough_at_movable) {
        (Some(bar), _) => std::format!(
            "{name}, round bar {}",
            format(Kind::Length, bar.value, block.units)
        ),
        (None, true) => std::format!("{name}, soft strip"),
        (None, false) => name.to_owned(),
    }
}

/// The size that is measured after the cut, with what is allowed.
pub(super) fn wanted(clamping: &BlockClamping, block: &SquaredBlock) -> String {
    let print = print(clamping, block);
    if clamping.finishes {
        std::format!(
            "{} to {}",
            print.position(clamping.after - block.tolerance),
            print.position(clamping.after + block.tolerance)
        )
    } else {
        std::format!("about {}", print.position(clamping.after))
    }
}

fn seat(clamping: &BlockClamping, block: &SquaredBlock) -> Vec<(&'static str, String)> {
    let print = print(clamping, block);
    let seat = &clamping.seat;
    let placement = &clamping.placement;
    let len = |x: Length| print.length(x);
    let axis = seat.cut.axis();
    let mut rows = vec![
        (
            "Cut",
            std::format!(
                "{} face, clamping {} of 6: {} {} to {}",
                seat.cut.name(),
                clamping.number,
                axis.name(),
                print.position(axis.of(&clamping.before)),
                print.position(clamping.after)
            ),
        ),
        ("Fixed jaw", std::format!("{} face", seat.fixed.name())),
        (
            "Movable jaw",
            std::format!(
                "{}; opening {}",
                movable(clamping, block),
                len(placement.opening)
            ),
        ),
        (
            "Below",
            std::format!("{} face on {}", seat.down.name(), rests(clamping, block)),
        ),
    ];
    if let Some(overhang) = placement.overhang {
        rows.push((
            "Stands out",
            std::format!(
                "{} end by {} beyond the jaws, no further than needed",
                seat.cut.name(),
                len(overhang)
            ),
        ));
    } else {
        rows.push((
            "Above jaws",
            std::format!(
                "{}, after the cut {}",
                len(placement.above_jaws),
                len(placement.above_jaws - clamping.stock)
            ),
        ));
    }
    rows.push(("Why", clamping.reason.clone()));
    rows
}

fn before(clamping: &BlockClamping, block: &SquaredBlock) -> Vec<String> {
    let print = print(clamping, block);
    let seat = &clamping.seat;
    let placement = &clamping.placement;
    let fixed = seat.fixed.name();
    let down = seat.down.name();
    let mut steps = vec![
        "Spindle stopped: brush chips off jaws, parallels and part; no burr may lie between them."
            .to_owned(),
    ];
    steps.push(std::format!(
        "Part with the {down} face on the {}, the {fixed} face to the fixed jaw.",
        match placement.parallel {
            Some(height) => std::format!("pair of parallels {} high", print.length(height)),
            None => "clean bed of the vise".to_owned(),
        }
    ));
    match (placement.round_bar, seat.rough_at_movable) {
        (Some(bar), _) => steps.push(std::format!(
            "Round bar {} level between the {} face and the movable jaw, at the middle of the grip: it presses the part flat on the fixed jaw.",
            print.length(bar),
            seat.movable.name()
        )),
        (None, true) => steps.push(std::format!(
            "No round bar at hand: a soft strip between the rough {} face and the movable jaw, so that the part lies flat on the fixed jaw.",
            seat.movable.name()
        )),
        (None, false) => {}
    }
    match (seat.seating, clamping.number) {
        (Seating::OnEnd, 5) => steps.push(std::format!(
            "Upright by a square between the bed of the vise and the {} face, then clamp.",
            clamping.side().name()
        )),
        (Seating::Overhanging, _) => {
            steps.push(std::format!(
                "Tip of the cutter {} or more below the part. Where the part does not fill the jaws, packing of its width at their other end.",
                print.length(si(TIP_BELOW))
            ));
        }
        _ => {}
    }
    steps.push(
        if matches!(clamping.number, 1 | 2) || clamping.rough_below() {
            std::format!(
                "Clamp. The {down} face is rough and only rests: the fixed jaw is the datum."
            )
        } else {
            std::format!("Clamp and tap down with a soft hammer until the {down} face sits fast.")
        },
    );
    if placement.beyond_jaws.value > 0.0 {
        steps.push(std::format!(
            "The part is {} longer than the jaws: the same at both ends, light cuts there.",
            print.length(placement.beyond_jaws)
        ));
    }
    if let Some(gone) = clamping.marks_gone(block) {
        steps.push(gone);
    }
    steps
}

fn after(clamping: &BlockClamping, block: &SquaredBlock) -> Vec<String> {
    let seat = &clamping.seat;
    let axis = seat.cut.axis().name();
    let mut steps = vec!["Spindle stopped: clear chips, measure in the vise.".to_owned()];
    steps.push(std::format!(
        "{} {}: {}.",
        if clamping.finishes {
            "Size"
        } else {
            "Measure the"
        },
        axis,
        wanted(clamping, block)
    ));
    steps.push(if clamping.finishes {
        "Both ends alike, within the tolerance: parallel. Over size: plan this cut anew from the size measured.".to_owned()
    } else {
        "Another size: plan what follows anew from it; the opposite face takes the rest.".to_owned()
    });
    if matches!(clamping.number, 2 | 5) {
        steps.push(std::format!(
            "Square on the {} and {} faces: no light between.",
            seat.cut.name(),
            seat.fixed.name()
        ));
    }
    steps.push("Unclamp, deburr every edge with a file, wipe clean.".to_owned());
    steps
}

impl BlockClamping {
    /// The milled side that a part on its end is set upright by, besides the one at the fixed jaw.
    fn side(&self) -> super::face::Face {
        self.seat.along.faces().0
    }

    /// Whether the face below is not milled yet.
    fn rough_below(&self) -> bool {
        self.seat.seating == Seating::OnEnd && self.number == 5
    }

    /// After which pass the marks of the saw are gone.
    fn marks_gone(&self, block: &SquaredBlock) -> Option<String> {
        if !block.sawn_faces.contains(&self.seat.cut) || block.saw_marks.value <= 0.0 {
            return None;
        }
        let print = print(self, block);
        let plan = &self.card.plan;
        let mut removed: Length = si(0.0);
        plan.passes.iter().find_map(|pass| {
            removed += pass.depth;
            (removed.value >= block.saw_marks.value * (1.0 - 1e-9)).then(|| {
                std::format!(
                    "Saw marks {} deep are gone after pass {}; until then the cut is interrupted.",
                    print.length(block.saw_marks),
                    pass.number
                )
            })
        })
    }
}
