//! The keys as text for people.

use super::field::{Field, Presence, Rule, Section, Shape};
use super::key::{example, items};
use core::fmt::Write;

/// A Markdown chapter: each section with a table of its keys and the rules between them.
pub(in crate::plan) fn reference(sections: &[&Section]) -> String {
    let mut text = String::new();
    for section in sections {
        let (title, need) = match (section.name, section.required) {
            ("", _) => ("Keys before the first section".to_owned(), ""),
            (name, true) => (format!("`[{name}]`"), ""),
            (name, false) => (format!("`[{name}]`"), " May be left out."),
        };
        // Writing to a string cannot fail.
        let _ = write!(text, "## {title}\n\n{}{need}\n\n", section.meaning);
        text += "| key | value | left out | meaning |\n|---|---|---|---|\n";
        for field in section.fields {
            let _ = writeln!(
                text,
                "| `{}` | {} | {} | {} |",
                field.key,
                value(field),
                left_out(field.presence),
                field.meaning
            );
        }
        for rule in section.rules {
            let _ = write!(text, "\n{}\n", sentence(rule));
        }
        text += "\n";
    }
    text
}

fn value(field: &Field) -> String {
    let kind = match field.shape {
        Shape::Text => "text".to_owned(),
        Shape::Quantity(kind) => format!("{} with unit", words(kind)),
        Shape::Ratio => "number".to_owned(),
        Shape::Count => "whole number".to_owned(),
        Shape::Flag => "true or false".to_owned(),
        Shape::Choice(words) => {
            let words: Vec<String> = words.iter().map(|word| format!("`\"{word}\"`")).collect();
            return words.join(", ");
        }
        Shape::Words(words) => {
            let words: Vec<String> = words.iter().map(|word| format!("`\"{word}\"`")).collect();
            return format!("list of {}", words.join(", "));
        }
        Shape::List(kind) => {
            let shown: Vec<String> = items(field).map(|item| format!("\"{item}\"")).collect();
            return format!(
                "list of {} with unit: `[{}]`",
                words(kind),
                shown.join(", ")
            );
        }
    };
    let written = example(field);
    let shown = written.split_once(" = ").map_or("", |(_, shown)| shown);
    format!("{kind}: `{shown}`")
}

/// A kind in words: `rotational speed`.
fn words(kind: crate::quantity::Kind) -> String {
    let mut words = String::new();
    for c in format!("{kind:?}").chars() {
        if c.is_uppercase() && !words.is_empty() {
            words.push(' ');
        }
        words.extend(c.to_lowercase());
    }
    words
}

fn left_out(presence: Presence) -> String {
    match presence {
        Presence::Required => "required".to_owned(),
        Presence::RequiredUnless(other) => format!("required unless `{other}` is given"),
        Presence::Optional(words) => words.to_owned(),
        Presence::Default(text) => format!("`{text}`"),
        Presence::Assumed(text, reason) => format!("`{text}`, stated on the card: {reason}"),
    }
}

fn sentence(rule: &Rule) -> String {
    let code = |keys: &[&str]| -> String {
        let keys: Vec<String> = keys.iter().map(|key| format!("`{key}`")).collect();
        keys.join(" with ")
    };
    match rule {
        Rule::OneOf { groups, unless } => {
            let ways: Vec<String> = groups.iter().map(|group| code(group.needs)).collect();
            let or = unless.map_or_else(String::new, |key| format!("; not needed with `{key}`"));
            format!("Give one of: {}{or}.", ways.join("; "))
        }
        Rule::With {
            key,
            other,
            word,
            needed,
            elsewhere,
        } => {
            let verb = if *needed { "is needed" } else { "may be given" };
            let only = if *elsewhere { "" } else { " only" };
            format!("`{key}` {verb}{only} with `{other} = \"{word}\"`.")
        }
    }
}
