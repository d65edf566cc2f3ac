//! The set-up card of a job: one content, shown as text, HTML or JSON.

mod content;
mod html;
mod json;
mod limits;
mod print;
mod text;

pub(super) use html::{crowded, escape, head, sheet};
pub use json::cut as cut_json;
pub(super) use json::{parts as parts_json, quantity as quantity_json, record as record_json};
pub(super) use print::Print;
pub(super) use text::{Page, WIDTH, render as card_text};

use super::job::Job;
use super::pass_plan::PassPlan;
use crate::error::Result;
use crate::operation::{Cut, Datum};
use crate::table::{Library, Source};

/// The set-up card of a job.
///
/// Carries the job, its pass plan, and the groups of passes that share their settings.
#[derive(Clone)]
pub struct Card {
    /// The job.
    pub job: Job,
    /// Its pass plan.
    pub plan: PassPlan,
    /// Sources that values on the card come from: id and full reference.
    pub sources: Vec<(String, String)>,
    /// What to do around the cut; nothing on the card of a job by itself.
    pub instructions: Instructions,
}

/// What a clamping of a route says besides its cut.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Instructions {
    /// How the part sits: label and text.
    pub seat: Vec<(&'static str, String)>,
    /// Before the spindle starts, in order.
    pub before: Vec<String>,
    /// After the last pass, in order.
    pub after: Vec<String>,
}

/// Passes that share one cut.
#[derive(Clone, Copy)]
pub(super) struct Group<'a> {
    /// Numbers of the first and the last pass.
    pub first: usize,
    pub last: usize,
    pub cut: &'a Cut,
}

impl Card {
    /// Plans a job and makes its card.
    ///
    /// # Errors
    /// Problems of the job, and a plan that no limit-keeping split satisfies.
    pub fn new(job: Job, library: &Library) -> Result<Card> {
        let plan = PassPlan::new(&job, library)?;
        Ok(Card::of(job, plan, library))
    }

    /// The card of a plan that was made for the job.
    pub(super) fn of(job: Job, plan: PassPlan, library: &Library) -> Card {
        Card {
            sources: sources(&plan, library),
            job,
            plan,
            instructions: Instructions::default(),
        }
    }

    /// The card as text for a terminal or a plain printer, with every worked step.
    pub fn text(&self) -> String {
        text::render(self, true)
    }

    /// The card as one printable page: no script, no network, black on white.
    pub fn html(&self) -> String {
        html::render(self, false)
    }

    /// The card as a page followed by pages with every worked step.
    pub fn html_with_steps(&self) -> String {
        html::render(self, true)
    }

    /// The card as JSON: every quantity with its SI value and as the card prints it.
    pub fn json(&self) -> serde_json::Value {
        json::render(self)
    }

    /// Runs of passes of one kind that set the machine alike; the first, deepest one stands for all.
    pub(super) fn groups(&self) -> Vec<Group<'_>> {
        let mut groups: Vec<Group> = Vec::new();
        for pass in &self.plan.passes {
            match groups.last_mut() {
                Some(group) if alike(group.cut, &pass.cut) => group.last = pass.number,
                _ => groups.push(Group {
                    first: pass.number,
                    last: pass.number,
                    cut: &pass.cut,
                }),
            }
        }
        groups
    }
}

/// Same kind, direction, speed and feed, and no deeper.
fn alike(first: &Cut, other: &Cut) -> bool {
    let same = |a: f64, b: f64| (a - b).abs() <= 1e-9 * a.abs();
    first.pass.kind == other.pass.kind
        && first.pass.direction == other.pass.direction
        && other.pass.depth().value <= first.pass.depth().value
        && same(
            first.settings.spindle_speed.value,
            other.settings.spindle_speed.value,
        )
        && same(
            first.settings.table_feed.value,
            other.settings.table_feed.value,
        )
}

/// Full references of every source id that a datum of a cut names in brackets.
fn sources(plan: &PassPlan, library: &Library) -> Vec<(String, String)> {
    let data = plan.passes.iter().flat_map(|pass| &pass.cut.data);
    sources_of(data, library)
}

/// Full references of every source id that data name in brackets.
pub(super) fn sources_of<'d>(
    data: impl Iterator<Item = &'d Datum>,
    library: &Library,
) -> Vec<(String, String)> {
    let mut ids: Vec<String> = Vec::new();
    let mut keep = |id: &str| {
        if !id.is_empty() && !ids.iter().any(|known| known == id) {
            ids.push(id.to_owned());
        }
    };
    for datum in data {
        for part in datum.origin.split('[').skip(1) {
            if let Some((id, _)) = part.split_once(']') {
                keep(id);
            }
        }
    }
    ids.into_iter()
        .map(|id| {
            let reference = library
                .source(&id)
                .map_or_else(|| "the shop's own".to_owned(), reference);
            (id, reference)
        })
        .collect()
}

/// Author, title, edition, year, place, and whether the source was opened.
fn reference(source: &Source) -> String {
    let parts = [
        source.author.as_str(),
        source.title.as_str(),
        source.edition.as_str(),
        source.year.as_str(),
        source.place.as_str(),
    ];
    let text = parts
        .into_iter()
        .filter(|part| !part.is_empty() && *part != "-")
        .collect::<Vec<_>>()
        .join(", ");
    format!("{text} ({})", source.provenance.name())
}
