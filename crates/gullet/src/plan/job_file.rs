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

/// What a file given to the planner describes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum JobForm {
    /// One operation in one clamping.
    Job,
    /// A block that is squared.
    SquaredBlock,
    /// A part made by several operations.
    Part,
}

impl JobForm {
    fn of(root: &Node) -> JobForm {
        match root.get("route").and_then(Node::as_text) {
            Some("part") => JobForm::Part,
            _ if root.has("route") => JobForm::SquaredBlock,
            _ => JobForm::Job,
        }
    }
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

    /// What a text in TOML or JSON describes; a job where it is of neither form.
    ///
    /// ```
    /// use gullet::plan::{JobFile, JobForm};
    /// assert_eq!(JobFile::form("route = 'part'", false), JobForm::Part);
    /// assert_eq!(JobFile::form("route = 'squared-block'", false), JobForm::SquaredBlock);
    /// assert_eq!(JobFile::form("{\"cut\": {}}", true), JobForm::Job);
    /// ```
    pub fn form(text: &str, in_json: bool) -> JobForm {
        let root = if in_json {
            Node::from_json(text)
        } else {
            Node::from_toml(text)
        };
        root.map_or(JobForm::Job, |root| JobForm::of(&root))
    }

    fn read(root: &Node, library: &Library) -> Result<JobFile> {
        Ok(match JobForm::of(root) {
            JobForm::Part => JobFile::Part(Box::new(part_route::part(root.clone(), library)?)),
            JobForm::SquaredBlock => JobFile::SquaredBlock(Box::new(route::block(root, library)?)),
            JobForm::Job => JobFile::Job(Box::new(job::job(root, library)?)),
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
    /// Those of [`Card::new`], of [`RouteCard::new`] or of [`PartCard::new`].
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
