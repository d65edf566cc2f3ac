//! The commands, one file each.

mod card;
mod check;
mod cost;
mod evaluate;
mod explain;
mod fit;
mod list;
mod operate;
mod reference;
mod schema;
mod spreads;
mod study;
mod tap_drill;

pub use operate::quoted as operate_words;

use crate::answer::Answer;
use crate::help;
use gullet::error::{Result, unknown_name};

/// Runs a command by name.
pub fn run(name: &str, words: &[String]) -> Result<Answer> {
    match name {
        "card" => card::run(words),
        "explain" => explain::run(words),
        "evaluate" => evaluate::run(words),
        "check" => check::run(words),
        "cost" => cost::run(words),
        "fit" => fit::run(words),
        "list" => list::run(words),
        "operate" => operate::run(words),
        "reference" => reference::run(words),
        "schema" => schema::run(words),
        "study" => study::run(words),
        "tap-drill" => tap_drill::run(words),
        "help" => help::run(words),
        _ => Err(unknown_name("command", name, help::names()).into()),
    }
}
