//! The card of a cut of an operation that is described once: as text, HTML or JSON.

mod html;
mod json;
mod text;

use super::card::sources_of;
use crate::operation::process::ProcessCut;
use crate::operation::{Limit, Side, WorkedStep};
use crate::quantity::{Kind, UnitSystem, format, format_digits};
use crate::table::Library;

/// The card of one cut.
///
/// ```
/// use gullet::model::{Machine, Practice};
/// use gullet::operation::process::{Bench, Request};
/// use gullet::plan::ProcessCard;
/// use gullet::quantity::UnitSystem;
/// use gullet::table::{Library, ToolMaterial};
/// let library = Library::builtin();
/// let bench = Bench {
///     library,
///     material: library.material("1018")?,
///     tool: ToolMaterial::Hss,
///     machine: &Machine::builtin("small-cnc-mill")?,
///     practice: &Practice::builtin("experienced")?,
///     units: UnitSystem::Metric,
/// };
/// let cut = Request::new("drilling")?.texts("diameter=8.5 mm; depth=22 mm")?.cut(&bench)?;
/// let card = ProcessCard::new("Pump foot, four holes", cut, library);
/// assert!(card.text().contains("thrust"));
/// assert!(card.html().starts_with("<!DOCTYPE html>"));
/// # Ok::<(), gullet::Error>(())
/// ```
#[derive(Clone)]
pub struct ProcessCard {
    /// Title.
    pub title: String,
    /// The cut.
    pub cut: ProcessCut,
    /// Sources that values on the card come from: id and full reference.
    pub sources: Vec<(String, String)>,
}

impl ProcessCard {
    /// The card of a cut, with the full references of the library it was made from.
    pub fn new(title: impl Into<String>, cut: ProcessCut, library: &Library) -> ProcessCard {
        ProcessCard {
            title: title.into(),
            sources: sources_of(cut.data.iter(), library),
            cut,
        }
    }

    /// The card as text, with every worked step.
    pub fn text(&self) -> String {
        text::render(self)
    }

    /// The card as one printable page: no script, no network, black on white.
    pub fn html(&self) -> String {
        html::render(self, false)
    }

    /// The card as a page followed by pages with every worked step.
    pub fn html_with_steps(&self) -> String {
        html::render(self, true)
    }

    /// The card without the page around it, for documents of several.
    pub fn sheet(&self, with_steps: bool) -> String {
        let mut out = String::new();
        html::sheet(&mut out, self, with_steps);
        out
    }

    /// The card as JSON: every quantity with its SI value and as the card prints it.
    pub fn json(&self) -> serde_json::Value {
        json::render(self)
    }

    pub(super) fn units(&self) -> UnitSystem {
        self.cut.units
    }

    /// What is done with what: label and text.
    pub(super) fn setup_rows(&self) -> Vec<(String, String)> {
        let mut rows = vec![("Operation".to_owned(), self.cut.process.title.to_owned())];
        rows.extend(
            self.cut
                .setup
                .iter()
                .map(|(label, text)| ((*label).to_owned(), text.clone())),
        );
        rows.extend(self.input_rows());
        rows
    }

    /// What the operation was given.
    pub(in crate::plan) fn input_rows(&self) -> Vec<(String, String)> {
        self.cut
            .inputs_text()
            .into_iter()
            .map(|(name, text)| (sentence(name), text))
            .collect()
    }

    /// What is set on the machine.
    pub(in crate::plan) fn setting_rows(&self) -> Vec<(String, String)> {
        self.rows(&self.cut.settings)
    }

    /// What follows.
    pub(in crate::plan) fn result_rows(&self) -> Vec<(String, String)> {
        let mut rows = self.rows(&self.cut.results);
        if !self.cut.depths.is_empty() {
            let depths: Vec<String> = self
                .cut
                .depths
                .iter()
                .map(|depth| self.show(Kind::Length, depth.value))
                .collect();
            rows.push(("Depth after each pass".to_owned(), depths.join(", ")));
        }
        rows
    }

    fn rows(&self, fields: &[crate::operation::Field]) -> Vec<(String, String)> {
        fields
            .iter()
            .filter_map(|field| Some((sentence(field.name), self.show(field.kind, field.value?))))
            .collect()
    }

    /// Speeds and lengths as they are set, loads and times with the digits that models are good for.
    fn show(&self, kind: Kind, si: f64) -> String {
        match kind {
            Kind::Force
            | Kind::Power
            | Kind::Torque
            | Kind::Time
            | Kind::VolumeRate
            | Kind::AreaRate
            | Kind::Ratio => format_digits(kind, si, self.units(), 3),
            _ => format(kind, si, self.units()),
        }
    }

    pub(super) const LIMIT_HEADS: [&'static str; 5] =
        ["Limit", "Value", "Bound", "Used", "Bound from"];

    /// The ledger, the most used first, and whether each binds.
    pub(in crate::plan) fn limit_rows(&self) -> Vec<([String; 5], bool)> {
        let mut limits: Vec<&Limit> = self.cut.ledger.iter().collect();
        limits.sort_by(|a, b| b.share.total_cmp(&a.share));
        limits
            .into_iter()
            .map(|limit| {
                let sign = match limit.side {
                    Side::AtMost => "max",
                    Side::AtLeast => "min",
                };
                (
                    [
                        words(limit.name),
                        self.show(limit.kind, limit.value),
                        std::format!("{sign} {}", self.show(limit.kind, limit.bound)),
                        std::format!("{:.0} %", limit.share * 100.0),
                        limit.origin.clone(),
                    ],
                    limit.binding,
                )
            })
            .collect()
    }

    pub(super) fn spread_rows(&self) -> Vec<[String; 4]> {
        self.cut
            .spread
            .iter()
            .map(|named| {
                let show = |si: f64| {
                    if si.is_finite() {
                        self.show(named.kind, si)
                    } else {
                        "-".to_owned()
                    }
                };
                [
                    words(named.name),
                    show(named.band.low),
                    show(named.band.start),
                    show(named.band.high),
                ]
            })
            .collect()
    }

    pub(in crate::plan) fn warnings(&self) -> Vec<&str> {
        self.cut
            .warnings
            .iter()
            .map(|warning| warning.text.as_str())
            .collect()
    }

    /// The worked steps, numbered.
    pub(in crate::plan) fn step_rows(&self) -> Vec<String> {
        self.cut
            .steps
            .iter()
            .enumerate()
            .map(|(index, step)| {
                let source = match step {
                    WorkedStep::Formula(step) => std::format!("  [{}]", step.formula.name),
                    WorkedStep::Choice(_) => String::new(),
                };
                std::format!("{}. {}{source}", index + 1, step.text(self.units()))
            })
            .collect()
    }

    pub(super) fn data_rows(&self) -> Vec<[String; 3]> {
        self.cut
            .data
            .iter()
            .map(|datum| {
                [
                    datum.name.clone(),
                    format(datum.kind, datum.value, self.units()),
                    datum.origin.clone(),
                ]
            })
            .collect()
    }
}

/// A name as words.
pub(super) fn words(name: &str) -> String {
    name.replace('_', " ")
}

/// A name as words with a capital letter.
pub(super) fn sentence(name: &str) -> String {
    let words = words(name);
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
