//! What the summary page says, as labels, tables and lists in the shop's units.

use super::card::RouteCard;
use super::face::Axis;
use super::order::Ends;
use super::totals::{RouteEntry, RouteTotals, TimeParts, clock, money};
use super::words::{movable, rests, wanted};
use crate::model::Blank;
use crate::plan::card::Print;
use crate::plan::pass_plan;
use crate::quantity::Length;

/// A table with its heads.
pub(super) struct Table {
    pub title: &'static str,
    pub heads: Vec<String>,
    pub rows: Vec<Vec<String>>,
}

fn print(card: &RouteCard) -> Print {
    Print {
        system: card.route.block.units,
        resolution: pass_plan::step(&card.route.block.machine),
    }
}

/// What is made, from what, with what.
pub(super) fn rows(card: &RouteCard) -> Vec<(&'static str, String)> {
    let block = &card.route.block;
    let print = print(card);
    let sizes = |b: &Blank| {
        format!(
            "{} x {} x {}",
            print.length(b.length),
            print.length(b.width),
            print.length(b.height)
        )
    };
    let sawn: Vec<&str> = block.sawn_faces.iter().map(|face| face.name()).collect();
    let mut rows = vec![
        (
            "Part",
            format!(
                "{}, {} either way",
                sizes(&block.finished),
                print.length(block.tolerance)
            ),
        ),
        (
            "Blank",
            format!(
                "{}{}",
                sizes(&block.sawn),
                if sawn.is_empty() {
                    String::new()
                } else {
                    format!(
                        ", sawn {}, marks {} deep",
                        sawn.join(" "),
                        print.length(block.saw_marks)
                    )
                }
            ),
        ),
    ];
    // The cards of the clampings say the rest in the same words.
    let of = |at: usize, label: &str| {
        let clamping = card.route.clampings.get(at)?;
        let rows = clamping.card.setup_rows();
        let row = rows.into_iter().find(|(name, _)| *name == label)?;
        Some(row.1)
    };
    for label in ["Material", "Cutter", "Machine", "Practice"] {
        rows.extend(of(0, label).map(|text| (label, text)));
    }
    let last = card.route.clampings.len().saturating_sub(1);
    if card.route.ends == Ends::Overhanging
        && let Some(text) = of(last, "Cutter")
        && of(0, "Cutter").as_ref() != Some(&text)
    {
        rows.push(("End cutter", text));
    }
    rows.push(("Vise", vise(card)));
    rows.push((
        "Ends",
        match card.route.ends {
            Ends::OnEnd => "standing on end in the vise",
            Ends::Overhanging => "overhanging the vise, by the side of the end mill",
        }
        .to_owned(),
    ));
    for done in &card.route.done {
        rows.push((
            "Done",
            format!(
                "{} {}: {} {}{}",
                done.number,
                done.face.name(),
                done.face.axis().name(),
                print.position(done.size),
                if done.measured {
                    ", measured"
                } else {
                    ", as planned"
                }
            ),
        ));
    }
    rows
}

fn vise(card: &RouteCard) -> String {
    let vise = &card.route.block.vise;
    let print = print(card);
    let maybe = |label: &str, length: Option<Length>| {
        length.map_or_else(String::new, |x| format!(", {label} {}", print.length(x)))
    };
    let parallels: Vec<String> = vise
        .hold
        .parallels
        .iter()
        .map(|x| print.length(*x))
        .collect();
    format!(
        "{}{}{}{}; parallels {}; {}",
        vise.hold.name,
        maybe("jaws high", vise.hold.jaw_height),
        maybe("wide", vise.jaw_width),
        maybe("opening", vise.jaw_opening),
        if parallels.is_empty() {
            "none".to_owned()
        } else {
            parallels.join(", ")
        },
        vise.round_bar.map_or_else(
            || "no round bar".to_owned(),
            |bar| format!("round bar {}", print.length(bar))
        )
    )
}

fn heads(words: &[&str]) -> Vec<String> {
    words.iter().map(|word| (*word).to_owned()).collect()
}

/// Which face, how held; its sizes; its time.
pub(super) fn tables(card: &RouteCard) -> Vec<Table> {
    let block = &card.route.block;
    let print = print(card);
    let clampings = &card.route.clampings;
    let holding = clampings
        .iter()
        .map(|c| {
            vec![
                c.number.to_string(),
                c.seat.cut.name().to_owned(),
                c.seat.fixed.name().to_owned(),
                movable(c, block),
                c.seat.down.name().to_owned(),
                rests(c, block),
                print.length(c.placement.grip),
                print.length(c.placement.above_jaws),
            ]
        })
        .collect();
    let sizes = clampings
        .iter()
        .map(|c| {
            let axis: Axis = c.seat.cut.axis();
            vec![
                c.number.to_string(),
                c.seat.cut.name().to_owned(),
                axis.name().to_owned(),
                print.position(axis.of(&c.before)),
                print.position(c.stock),
                print.position(c.after),
                c.card.plan.passes.len().to_string(),
                wanted(c, block),
            ]
        })
        .collect();
    vec![
        Table {
            title: "Clampings",
            heads: heads(&[
                "No",
                "Cut",
                "Fixed jaw",
                "Movable jaw",
                "Below",
                "On",
                "Grip",
                "Above jaws",
            ]),
            rows: holding,
        },
        Table {
            title: "Sizes and where to measure",
            heads: heads(&[
                "No", "Cut", "Size", "Before", "Stock", "After", "Passes", "Measure",
            ]),
            rows: sizes,
        },
        times(card),
    ]
}

fn times(card: &RouteCard) -> Table {
    let (heads, rows) = time_table(&card.entries, &card.totals);
    Table {
        title: "Time (h:mm:ss)",
        heads,
        rows,
    }
}

/// Time of each entry in its parts, hours:minutes:seconds, and the sums: heads and rows.
pub(in crate::plan) fn time_table(
    entries: &[RouteEntry],
    totals: &RouteTotals,
) -> (Vec<String>, Vec<Vec<String>>) {
    let with_cost = totals.entries.iter().any(Option::is_some);
    let mut heads = vec!["Work".to_owned()];
    heads.extend(TimeParts::NAMES.iter().map(|(_, head)| (*head).to_owned()));
    heads.push("Total".to_owned());
    if with_cost {
        heads.push("Cost".to_owned());
    }
    let row = |name: &str, time: &TimeParts, cost: Option<u64>| {
        let mut row = vec![name.to_owned()];
        row.extend(time.parts().into_iter().map(clock));
        row.push(clock(time.total()));
        if with_cost {
            row.push(cost.map_or_else(|| "-".to_owned(), money));
        }
        row
    };
    let mut rows: Vec<Vec<String>> = entries
        .iter()
        .zip(&totals.entries)
        .map(|(entry, cost)| {
            row(
                &entry.name,
                &entry.time,
                cost.as_ref().map(|cost| cost.hundredths()),
            )
        })
        .collect();
    rows.push(row(
        "together",
        &totals.time,
        totals.cost.as_ref().map(|cost| cost.hundredths()),
    ));
    if let Some(cost) = totals.cost.as_ref().filter(|_| with_cost) {
        let mut last = vec!["cost".to_owned()];
        last.extend(cost.parts.iter().map(|part| money(*part)));
        last.push(String::new());
        last.push(money(cost.hundredths()));
        rows.push(last);
    }
    (heads, rows)
}

/// Before the first clamping.
pub(super) fn first(card: &RouteCard) -> Vec<String> {
    if card.route.clampings.is_empty() || !card.route.done.is_empty() {
        return Vec::new();
    }
    vec![
        "Head square to the table, fixed jaw along the feed and upright: check both with an indicator.".to_owned(),
        "Bed and jaws of the vise clean, without burrs; the parallels of a pair alike.".to_owned(),
        "Measure the blank: where a size differs from this page, plan anew from it.".to_owned(),
    ]
}

/// Between clampings.
pub(super) fn between() -> Vec<String> {
    vec![
        "Spindle stopped. Deburr every edge with a file, brush chips off, wipe the faces that seat."
            .to_owned(),
        "Measure as the table says. A first face off its size is made up by its opposite: plan anew from what was measured.".to_owned(),
        "A face under size is not made good by another cut: stop and ask.".to_owned(),
    ]
}

/// Doubts of the route as a whole.
pub(super) fn doubts(card: &RouteCard) -> Vec<String> {
    let block = &card.route.block;
    let print = print(card);
    let mut texts = block.assumptions.clone();
    if block.tolerance.value < print.resolution.value {
        texts.push(format!(
            "the tolerance is finer than a step of the readout, {}: measure instead of reading",
            print.step()
        ));
    }
    if !card.route.clampings.is_empty() {
        texts.push("each card names the doubts of its own cut".to_owned());
    }
    texts
}

/// Every caution once.
pub(super) fn cautions(card: &RouteCard) -> Vec<String> {
    let mut texts: Vec<String> = Vec::new();
    let clampings = &card.route.clampings;
    let said = clampings
        .iter()
        .flat_map(|clamping| clamping.card.cautions())
        .map(str::to_owned);
    let others = card.entries.iter().flat_map(|entry| entry.cautions.clone());
    for text in said.chain(others) {
        if !texts.contains(&text) {
            texts.push(text);
        }
    }
    texts
}
