//! The keys of a job file as data, for faces that take the same keys.

use super::super::document::{Presence, Shape};
use super::sections::SECTIONS;
use crate::quantity::Kind;

/// A key of a job file.
#[derive(Debug, Clone, PartialEq)]
pub struct JobKey {
    /// Section; empty for the keys before every section.
    pub section: &'static str,
    /// What the section describes.
    pub section_meaning: &'static str,
    /// Name.
    pub key: &'static str,
    /// Form of the value: `text`, `quantity`, `ratio`, `count`, `flag`, `choice`, `list` or
    /// `words`.
    pub form: &'static str,
    /// What a quantity, or each of a list, measures.
    pub kind: Option<Kind>,
    /// The words of a choice or a list of words.
    pub words: &'static [&'static str],
    /// Whether it must be given.
    pub required: bool,
    /// What holds where it is left out.
    pub left_out: String,
    /// A value as an example.
    pub example: &'static str,
    /// What it is.
    pub meaning: &'static str,
}

/// Every key of a job file, section by section.
pub fn job_keys() -> Vec<JobKey> {
    let mut keys = Vec::new();
    for section in SECTIONS.iter().map(|section| section()) {
        for field in section.fields {
            let (form, kind, words): (_, _, &[&str]) = match field.shape {
                Shape::Text => ("text", None, &[]),
                Shape::Quantity(kind) => ("quantity", Some(kind), &[]),
                Shape::Ratio => ("ratio", Some(Kind::Ratio), &[]),
                Shape::Count => ("count", None, &[]),
                Shape::Flag => ("flag", None, &[]),
                Shape::Choice(words) => ("choice", None, words),
                Shape::List(kind) => ("list", Some(kind), &[]),
                Shape::Words(words) => ("words", None, words),
            };
            let left_out = match field.presence {
                Presence::Required => String::new(),
                Presence::RequiredUnless(other) => format!("needed unless {other} is given"),
                Presence::Optional(text) | Presence::Default(text) => text.to_owned(),
                Presence::Assumed(text, reason) => format!("{text} ({reason})"),
            };
            keys.push(JobKey {
                section: section.name,
                section_meaning: section.meaning,
                key: field.key,
                form,
                kind,
                words,
                required: field.presence == Presence::Required,
                left_out,
                example: field.example,
                meaning: field.meaning,
            });
        }
    }
    keys
}
