//! The vise: which parallel carries the part, what the jaws grip, whether they open wide enough.

use super::block::SquaredBlock;
use super::order::{Seat, Seating};
use crate::error::{Code, Problem};
use crate::formula::practice::grip_for_height;
use crate::model::{Blank, Check, HUGE, Hold};
use crate::quantity::{self, Kind, Length, UnitSystem, si};

/// A vise with parallels and round bar.
#[derive(Debug, Clone, PartialEq)]
pub struct Vise {
    /// How it clamps, the height of its jaws, the parallels at hand; its grip is found by the route.
    pub hold: Hold,
    /// How far the jaws open; not checked where not known.
    pub jaw_opening: Option<Length>,
    /// Length of the jaws; not checked where not known.
    pub jaw_width: Option<Length>,
    /// Diameter of the round bar at hand, if there is one.
    pub round_bar: Option<Length>,
}

/// How the part stands in the vise in one clamping.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placement {
    /// Height of the pair of parallels; none where the part stands on the bed of the vise.
    pub parallel: Option<Length>,
    /// Height that the jaws grip.
    pub grip: Length,
    /// Height of the part above the jaws, before the cut.
    pub above_jaws: Length,
    /// Opening of the jaws, with the round bar.
    pub opening: Length,
    /// Diameter of the round bar, where one goes in.
    pub round_bar: Option<Length>,
    /// Length that stands out of the jaws sideways, before the cut.
    pub overhang: Option<Length>,
    /// Length that finds no jaw, at both ends together.
    pub beyond_jaws: Length,
}

/// How far the tip of an end mill reaches below an overhanging part (common practice, no source).
pub(super) const TIP_BELOW: f64 = 1e-3;

/// Longest part over the length of the jaws (common practice, no source).
const LONGEST_OVER_JAWS: f64 = 2.0;

/// Nearness at which two heights count as the same.
const NEAR: f64 = 1e-9;

impl Vise {
    /// Every problem of the fields, in a shop's units.
    pub fn problems_in(&self, units: UnitSystem) -> Vec<Problem> {
        let hold = Hold {
            grip_depth: si(1e-3),
            ..self.hold.clone()
        };
        let mut problems = hold.problems_in(units);
        if hold.jaw_height.is_none() {
            problems.push(Problem::new(
                Code::Missing,
                "jaw_height",
                "",
                "",
                "measure from the bed of the vise to the top of the jaws",
            ));
        }
        let mut check = Check::new(units);
        for (name, value, remedy) in [
            ("jaw_opening", self.jaw_opening, "how far the jaws open"),
            ("jaw_width", self.jaw_width, "length of the jaws"),
            ("round_bar", self.round_bar, "diameter of the round bar"),
        ] {
            if let Some(value) = value {
                check.range(name, Kind::Length, value.value, 0.0, false, HUGE, remedy);
            }
        }
        problems.extend(check.finish());
        problems
    }
}

/// Places the part in the vise: the lowest parallel that keeps cutter and jaws apart grips most.
///
/// # Errors
/// No parallel at hand does, or the vise is too small.
pub(super) fn place(
    block: &SquaredBlock,
    seat: &Seat,
    number: usize,
    sizes: &Blank,
    stock: Length,
) -> Result<Placement, Vec<Problem>> {
    let vise = &block.vise;
    let at = format!("clamping {number} ({} face)", seat.cut.name());
    let mut problems = Vec::new();
    let bar = vise.round_bar.filter(|_| seat.rough_at_movable);
    let between = seat.fixed.axis().of(sizes);
    let opening = between + bar.unwrap_or(si(0.0));
    let along = seat.along.of(sizes);
    let show = |x: Length| quantity::format(Kind::Length, x.value, block.units);
    if let Some(widest) = vise.jaw_opening
        && opening.value > widest.value * (1.0 + NEAR)
    {
        let with = if bar.is_some() {
            " and the round bar"
        } else {
            ""
        };
        problems.push(Problem::new(
            Code::Inconsistent,
            "hold.jaw_opening",
            show(widest),
            format!("at least {}", show(opening)),
            format!("{at}: the part{with} must go between the jaws; take a larger vise"),
        ));
    }
    if let Some(width) = vise.jaw_width
        && along.value > LONGEST_OVER_JAWS * width.value
    {
        problems.push(Problem::new(
            Code::Inconsistent,
            "hold.jaw_width",
            show(width),
            format!("at least {}", show(along / LONGEST_OVER_JAWS)),
            format!(
                "{at}: the jaws must hold half of the {} along them (common practice, no source); take two vises in line",
                show(along)
            ),
        ));
    }
    let height = match seat.seating {
        Seating::Overhanging => seat.down.axis().of(sizes),
        Seating::Lying | Seating::OnEnd => seat.cut.axis().of(sizes),
    };
    let parallel = parallel(block, seat, &at, height, stock);
    if let Err(problem) = &parallel {
        problems.push(problem.clone());
    }
    let (Ok(parallel), true) = (parallel, problems.is_empty()) else {
        return Err(problems);
    };
    let grip = jaws(block) - parallel;
    Ok(Placement {
        parallel: (parallel.value > 0.0).then_some(parallel),
        grip,
        above_jaws: height - grip,
        opening,
        round_bar: bar,
        overhang: (seat.seating == Seating::Overhanging)
            .then_some(stock + block.practice.jaw_clearance),
        beyond_jaws: vise.jaw_width.map_or(si(0.0), |width| {
            if along.value > width.value {
                along - width
            } else {
                si(0.0)
            }
        }),
    })
}

/// Height of the jaws; checked before anything is placed.
fn jaws(block: &SquaredBlock) -> Length {
    block.vise.hold.jaw_height.unwrap_or(si(0.0))
}

/// Height of the parallel, zero for the bed of the vise.
fn parallel(
    block: &SquaredBlock,
    seat: &Seat,
    at: &str,
    height: Length,
    stock: Length,
) -> Result<Length, Problem> {
    let jaws = jaws(block);
    let clearance = block.practice.jaw_clearance;
    let grip = grip_for_height::value(height, block.practice.smallest_grip);
    // What must stand above the jaws, and how high the part must lie for the tip below it.
    let (above, bed) = match seat.seating {
        Seating::Overhanging => (si(0.0), si(TIP_BELOW)),
        Seating::Lying | Seating::OnEnd => (stock + clearance, si(0.0)),
    };
    let raised = jaws + above - height;
    let lowest = if raised.value > bed.value {
        raised
    } else {
        bed
    };
    let highest = jaws - grip;
    let near = NEAR * jaws.value;
    let show = |x: Length| quantity::format(Kind::Length, x.value, block.units);
    if highest.value < -near {
        return Err(Problem::new(
            Code::NoPlan,
            "hold.jaw_height",
            show(jaws),
            format!("at least {}", show(grip)),
            format!(
                "{at}: the part is {} high and the practice asks for a grip of {:.0} % of it; take higher jaws{}",
                show(height),
                block.practice.smallest_grip.value * 100.0,
                if seat.seating == Seating::OnEnd {
                    ", or let the ends overhang the vise: hold.ends = \"overhanging\""
                } else {
                    ""
                }
            ),
        ));
    }
    if lowest.value > highest.value + near {
        return Err(Problem::new(
            Code::NoPlan,
            "hold.parallels",
            listed(block),
            "none would do",
            format!(
                "{at}: the part is {} high, {} must stand above the jaws and {} be gripped; saw the blank closer to size, or clamp it another way",
                show(height),
                show(above),
                show(grip)
            ),
        ));
    }
    let at_hand = core::iter::once(si(0.0)).chain(block.vise.hold.parallels.iter().copied());
    let lowest_fit = at_hand
        .filter(|parallel: &Length| {
            parallel.value >= lowest.value - near && parallel.value <= highest.value + near
        })
        .min_by(|a, b| a.value.total_cmp(&b.value));
    lowest_fit.ok_or_else(|| {
        let wanted = if (highest - lowest).value.abs() <= near {
            format!("a pair {} high", show(highest))
        } else {
            format!("a pair {} to {} high", show(lowest), show(highest))
        };
        Problem::new(
            Code::NoPlan,
            "hold.parallels",
            listed(block),
            wanted,
            format!(
                "{at}: lower ones let the cutter reach the jaws, higher ones leave less grip than {}; add such a pair to the list",
                show(grip)
            ),
        )
    })
}

/// The parallels at hand, for a message.
fn listed(block: &SquaredBlock) -> String {
    let heights: Vec<String> = block
        .vise
        .hold
        .parallels
        .iter()
        .map(|x| quantity::format(Kind::Length, x.value, block.units))
        .collect();
    if heights.is_empty() {
        "none".to_owned()
    } else {
        heights.join(", ")
    }
}
