//! A file that is given to the planner: a job, or a route of several clampings.

use super::Card;
use super::document::Node;
use super::job::{self, Job};
use super::part_route::{self, PartCard, PartRoute};
use super::route::{self, RouteCard, SquaredBlock};
use crate::error::Result;
use crate::quantity::UnitSystem;
use crate::table::Library;

/// What a job file holds.
#[derive(Debug, Clone, PartialEq)]
pub enum JobFile {
    /// One operation in one clamping.
    Job(Box<Job>),
    /// The route of a block that is squared: the file says `route = "squared-block"`.
    SquaredBlock(Box<SquaredBlock>),
    /// A part made by several operations: the file says `route = "part"`.
    Part(Box<PartRoute>),
}

impl JobFile {
    /// Reads a file in TOML; `library` holds the materials.
    ///
    /// # Errors
    /// Those of [`Job::from_toml`] or of [`SquaredBlock::from_toml`].
    pub fn from_toml(text: &str, library: &Library) -> Result<JobFile> {
        JobFile::read(&Node::from_toml(text)?, library)
    }

    /// Reads a file in JSON.
    ///
    /// # Errors
    /// Those of [`JobFile::from_toml`], without lines but for faults of form.
    pub fn from_json(text: &str, library: &Library) -> Result<JobFile> {
        JobFile::read(&Node::from_json(text)?, library)
    }

    /// Whether a text in TOML or JSON is a route rather than a job; no text of that form is neither.
    ///
    /// ```
    /// use gullet::plan::JobFile;
    /// assert!(JobFile::is_route("route = 'squared-block'", false));
    /// assert!(!JobFile::is_route("{\"cut\": {}}", true));
    /// ```
    pub fn is_route(text: &str, in_json: bool) -> bool {
        let root = if in_json {
            Node::from_json(text)
        } else {
            Node::from_toml(text)
        };
        root.is_ok_and(|root| {
            root.get("route").and_then(Node::as_text) != Some("part") && root.has("route")
        })
    }

    fn read(root: &Node, library: &Library) -> Result<JobFile> {
        let route = root.get("route").and_then(Node::as_text);
        Ok(if route == Some("part") {
            JobFile::Part(Box::new(part_route::part(root.clone(), library)?))
        } else if root.has("route") {
            JobFile::SquaredBlock(Box::new(route::block(root, library)?))
        } else {
            JobFile::Job(Box::new(job::job(root, library)?))
        })
    }

    /// The units its cards print in.
    pub fn units_mut(&mut self) -> &mut UnitSystem {
        match self {
            JobFile::Job(job) => &mut job.units,
            JobFile::SquaredBlock(block) => &mut block.units,
            JobFile::Part(part) => &mut part.units,
        }
    }

    /// Plans it and makes its card or cards.
    ///
    /// # Errors
    /// Those of [`Card::new`] or of [`RouteCard::new`].
    pub fn card(self, library: &Library) -> Result<JobFileCard> {
        Ok(match self {
            JobFile::Job(job) => JobFileCard::Job(Box::new(Card::new(*job, library)?)),
            JobFile::SquaredBlock(block) => {
                JobFileCard::Route(Box::new(RouteCard::new(*block, library)?))
            }
            JobFile::Part(part) => JobFileCard::Part(Box::new(PartCard::new(*part, library)?)),
        })
    }
}

/// The card of a job, or the cards of a route, in the same forms.
#[derive(Clone)]
pub enum JobFileCard {
    /// The card of a job.
    Job(Box<Card>),
    /// The cards of a route.
    Route(Box<RouteCard>),
    /// The cards of a part made by several operations.
    Part(Box<PartCard>),
}

impl JobFileCard {
    /// As text for a terminal or a plain printer: of a job with its worked steps, of a route without.
    pub fn text(&self) -> String {
        match self {
            JobFileCard::Job(card) => card.text(),
            JobFileCard::Route(card) => card.text(),
            JobFileCard::Part(card) => card.text(),
        }
    }

    /// As text with every worked step.
    pub fn text_with_steps(&self) -> String {
        match self {
            JobFileCard::Job(card) => card.text(),
            JobFileCard::Route(card) => card.text_with_steps(),
            JobFileCard::Part(card) => card.text_with_steps(),
        }
    }

    /// As printable sheets: no script, no network, black on white.
    pub fn html(&self) -> String {
        match self {
            JobFileCard::Job(card) => card.html(),
            JobFileCard::Route(card) => card.html(),
            JobFileCard::Part(card) => card.html(),
        }
    }

    /// As sheets with every worked step behind them.
    pub fn html_with_steps(&self) -> String {
        match self {
            JobFileCard::Job(card) => card.html_with_steps(),
            JobFileCard::Route(card) => card.html_with_steps(),
            JobFileCard::Part(card) => card.html_with_steps(),
        }
    }

    /// As JSON: every quantity with its SI value and as the card prints it.
    pub fn json(&self) -> serde_json::Value {
        match self {
            JobFileCard::Job(card) => card.json(),
            JobFileCard::Route(card) => card.json(),
            JobFileCard::Part(card) => card.json(),
        }
    }
}
