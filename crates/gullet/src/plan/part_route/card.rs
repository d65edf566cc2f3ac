//! The cards of a part: a summary page, then a card a clamping.

use super::super::process_card::ProcessCard;
use super::super::route::{Route, RouteCard, RouteEntry, RouteTotals, TimeParts};
use super::operations::{PartOperation, PartStep};
use super::price::LotOfPart;
use super::{PartRoute, html, json, text};
use crate::error::{Error, Problem, Result};
use crate::operation::process::Bench;
use crate::quantity::{Time, si};
use crate::table::Library;

/// The cards of a part.
#[derive(Clone)]
pub struct PartCard {
    /// The route.
    pub route: PartRoute,
    /// The sheets in order.
    pub(super) sheets: Vec<Sheet>,
    /// The lines of the summary.
    pub entries: Vec<RouteEntry>,
    /// Their sum, of a single part.
    pub totals: RouteTotals,
    /// Time and cost a part in lots.
    pub lots: Vec<LotOfPart>,
    /// The cards of the squared block.
    pub block: Option<RouteCard>,
}

/// What stands on one sheet.
#[derive(Clone)]
pub(super) enum Sheet {
    /// The operations of one clamping.
    Clamping(Clamping),
    /// A clamping of the squared block, by its place among them.
    Block(usize),
}

/// Operations that share a clamping.
#[derive(Clone)]
pub(super) struct Clamping {
    pub number: usize,
    pub held: String,
    pub work: Vec<(PartOperation, ProcessCard)>,
}

impl PartCard {
    /// Computes every operation and makes the cards.
    ///
    /// # Errors
    /// The problems of every operation at once, each with its place in the file.
    pub fn new(route: PartRoute, library: &Library) -> Result<PartCard> {
        let mut problems: Vec<Problem> = Vec::new();
        let mut sheets: Vec<Sheet> = Vec::new();
        let mut entries: Vec<RouteEntry> = Vec::new();
        let block = block_card(&route, library)
            .map_err(|error| problems.extend(error.within("squaring").into_problems()))
            .ok()
            .flatten();
        let mut number = 0;
        for (index, step) in route.steps.iter().enumerate() {
            match step {
                PartStep::Squaring => {
                    let clampings = block.iter().flat_map(|card| &card.route.clampings);
                    sheets.extend(clampings.enumerate().map(|(place, _)| Sheet::Block(place)));
                    entries.extend(block.iter().flat_map(block_entries));
                }
                PartStep::Operation(operation) => {
                    let card = match card(&route, operation, library) {
                        Ok(card) => card,
                        Err(error) => {
                            let path = format!("operation[{}]", index + 1);
                            problems.extend(error.within(&path).into_problems());
                            continue;
                        }
                    };
                    entries.push(entry(&route, operation, &card));
                    let work = (operation.as_ref().clone(), card);
                    match sheets.last_mut() {
                        Some(Sheet::Clamping(last)) if last.held == operation.clamping => {
                            last.work.push(work);
                        }
                        _ => {
                            number += 1;
                            sheets.push(Sheet::Clamping(Clamping {
                                number,
                                held: operation.clamping.clone(),
                                work: vec![work],
                            }));
                        }
                    }
                }
            }
        }
        Error::unless_empty(problems, ())?;
        let totals = RouteTotals::of(&entries)?;
        let lots = route
            .lots
            .iter()
            .map(|size| LotOfPart::new(*size, &entries, route.material_cost))
            .collect::<Result<Vec<_>>>()?;
        Ok(PartCard {
            route,
            sheets,
            entries,
            totals,
            lots,
            block,
        })
    }

    /// The summary, then the card of every clamping, as text.
    pub fn text(&self) -> String {
        text::render(self, false)
    }

    /// The same, every card with its worked steps.
    pub fn text_with_steps(&self) -> String {
        text::render(self, true)
    }

    /// The summary and the cards as printable sheets: no script, no network.
    pub fn html(&self) -> String {
        html::render(self, false)
    }

    /// The sheets, each clamping's with its worked steps behind it.
    pub fn html_with_steps(&self) -> String {
        html::render(self, true)
    }

    /// Summary and cards as JSON.
    pub fn json(&self) -> serde_json::Value {
        json::render(self)
    }

    /// The cuts of the operations, in order; those of the squared block stand in its own cards.
    pub fn cuts(&self) -> impl Iterator<Item = (&PartOperation, &ProcessCard)> {
        self.sheets.iter().flat_map(|sheet| {
            let work = match sheet {
                Sheet::Clamping(clamping) => clamping.work.as_slice(),
                Sheet::Block(_) => &[],
            };
            work.iter().map(|(operation, card)| (operation, card))
        })
    }

    /// Every caution once.
    pub fn cautions(&self) -> Vec<String> {
        let mut texts: Vec<String> = Vec::new();
        let own = self
            .cuts()
            .flat_map(|(_, card)| card.cut.cautions.iter().map(|text| (*text).to_owned()));
        let block = self.block.iter().flat_map(RouteCard::cautions);
        for text in own.chain(block) {
            if !texts.contains(&text) {
                texts.push(text);
            }
        }
        texts
    }
}

fn block_card(route: &PartRoute, library: &Library) -> Result<Option<RouteCard>> {
    let Some(block) = &route.block else {
        return Ok(None);
    };
    let mut block = block.as_ref().clone();
    block.rate = block.rate.or(route.rate);
    block.units = route.units;
    RouteCard::of(Route::new(block, library)?).map(Some)
}

/// The lines of the squared block, with names that tell them from those of the operations.
fn block_entries(card: &RouteCard) -> Vec<RouteEntry> {
    let clampings = &card.route.clampings;
    // Before the first clamping, machine and vise are made ready.
    let ready = card.entries.len().saturating_sub(clampings.len());
    let faces = clampings.iter().map(|clamping| {
        format!(
            "square {}, {} face",
            clamping.number,
            clamping.seat.cut.name()
        )
    });
    let names = core::iter::repeat_n("set-up of the vise".to_owned(), ready).chain(faces);
    names
        .zip(&card.entries)
        .map(|(name, entry)| RouteEntry {
            name,
            ..entry.clone()
        })
        .collect()
}

fn card(route: &PartRoute, operation: &PartOperation, library: &Library) -> Result<ProcessCard> {
    let cut = operation.request.cut(&Bench {
        library,
        material: &route.material,
        tool: operation.tool,
        machine: &operation.machine,
        practice: &route.practice,
        units: route.units,
    })?;
    Ok(ProcessCard::new(operation.name.clone(), cut, library))
}

/// The line of an operation: each part of its time in whole seconds.
fn entry(route: &PartRoute, operation: &PartOperation, card: &ProcessCard) -> RouteEntry {
    let count = f64::from(operation.count);
    let cut: Time = si(card.cut.value("time").map_or(0.0, |time| time.si));
    RouteEntry {
        name: operation.name.clone(),
        machine: operation.machine.name.clone(),
        time: TimeParts {
            setup: operation.setup_time,
            clamping: operation.clamping_time,
            cutting: count * cut,
            handling: count * operation.handling_time + operation.tool_change_time,
            measuring: operation.measuring_time,
            deburring: operation.deburring_time,
            ..TimeParts::default()
        }
        .in_seconds(),
        rate: operation.rate.or(route.rate),
        cautions: card
            .cut
            .cautions
            .iter()
            .map(|text| (*text).to_owned())
            .collect(),
    }
}

impl Clamping {
    /// The machines of its operations.
    pub(super) fn machine(&self) -> String {
        let mut names: Vec<&str> = Vec::new();
        for (operation, _) in &self.work {
            if !names.contains(&operation.machine.name.as_str()) {
                names.push(&operation.machine.name);
            }
        }
        names.join(", ")
    }
}
