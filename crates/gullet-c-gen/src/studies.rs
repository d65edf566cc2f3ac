//! What a study takes and gives, from the core's lists of inputs, choices and results.

use crate::unit::suffix;
use crate::{HEAD, Outcome, crate_directory, read};
use gullet::model::{Direction, PassKind};
use gullet::operation::Operation;
use gullet::study::{Choice, FORMS, Input, ResultField};
use gullet::table::ToolMaterial;
use std::collections::BTreeMap;

/// Names with their numbers, of one kind of constant.
///
/// A number that the file at hand gives a name stays, wherever the name stands in the core's list;
/// new names get the next ones.
fn numbers<'a>(
    before: &str,
    prefix: &str,
    first: i64,
    names: impl Iterator<Item = &'a str>,
) -> Outcome<Vec<(String, &'a str, i64)>> {
    let head = format!("pub const {prefix}");
    let mut known: BTreeMap<String, i64> = BTreeMap::new();
    for line in before.lines() {
        let Some((name, rest)) = line.strip_prefix(&head).and_then(|l| l.split_once(':')) else {
            continue;
        };
        let number = rest.split_once("= ").map(|(_, n)| n.trim_end_matches(';'));
        let number = number.and_then(|n| n.parse().ok()).ok_or(line)?;
        known.insert(name.to_owned(), number);
    }
    let mut next = known.values().max().map_or(first, |last| last + 1);
    let mut numbered = Vec::new();
    for name in names {
        let constant = name.to_uppercase().replace(['-', ' '], "_");
        let number = known.remove(&constant).unwrap_or_else(|| {
            next += 1;
            next - 1
        });
        numbered.push((format!("{prefix}{constant}"), name, number));
    }
    match known.first_key_value() {
        None => Ok(numbered),
        Some((gone, _)) => Err(format!(
            "{prefix}{gone} is gone from the core: that is another ABI; take its line out of studies.rs"
        )),
    }
}

/// The names that a choice picks from, but for those of a study's own lists.
fn words(choice: Choice) -> Vec<&'static str> {
    match choice {
        Choice::Operation => Operation::ALL.iter().map(|word| word.name()).collect(),
        Choice::Pass => PassKind::ALL.iter().map(|word| word.name()).collect(),
        Choice::Direction => Direction::ALL.iter().map(|word| word.name()).collect(),
        Choice::CutterMaterial => ToolMaterial::ALL.iter().map(|word| word.name()).collect(),
        Choice::CutterForm => FORMS.to_vec(),
        Choice::FeedAcrossJaws => vec!["false", "true"],
        _ => Vec::new(),
    }
}

/// The meaning of a choice for somebody who reads a header.
fn meaning(choice: Choice) -> &'static str {
    match choice {
        Choice::Operation => {
            "Operation: GULLET_SIDE_MILLING, GULLET_SLOTTING or GULLET_FACE_MILLING."
        }
        Choice::Pass => "GULLET_ROUGHING or GULLET_FINISHING.",
        Choice::Direction => "GULLET_CONVENTIONAL or GULLET_CLIMB.",
        Choice::CutterMaterial => "What the edges are made of: one of GULLET_CUTTER_MATERIAL_...",
        Choice::CutterForm => "Shape of the cutting end: one of GULLET_CUTTER_FORM_...",
        other => other.meaning(),
    }
}

/// Constants for the places in a list of the core, which must not move.
fn places(before: &str, prefix: &str, what: &str, list: &[&str]) -> Outcome<String> {
    let mut text = String::new();
    for (place, (constant, name, number)) in numbers(before, prefix, 0, list.iter().copied())?
        .iter()
        .enumerate()
    {
        if *number != place as i64 {
            return Err(format!(
                "{constant} was {number} and is now {place}: another ABI"
            ));
        }
        // C alone reads it.
        text += &format!(
            "/// {what}: {name}.\n#[allow(dead_code)]\npub const {constant}: u32 = {number};\n"
        );
    }
    Ok(text)
}

fn all(before: &str) -> Outcome<String> {
    let inputs = numbers(
        before,
        "GULLET_INPUT_",
        1,
        Input::ALL.iter().map(|i| i.name()),
    )?;
    let choices = numbers(
        before,
        "GULLET_CHOICE_",
        1,
        Choice::ALL.iter().map(|c| c.name()),
    )?;
    let fields = ResultField::all();
    let results = numbers(
        before,
        "GULLET_RESULT_",
        1,
        fields.iter().map(|field| field.name),
    )?;

    let mut text = format!(
        "{HEAD}use crate::names::{{ChoiceEntry, InputEntry, ResultEntry}};\nuse gullet::study::{{Choice, Input}};\n\n"
    );
    let in_unit = |unit: &str| {
        if unit.is_empty() {
            String::new()
        } else {
            format!(" In {unit}.")
        }
    };
    let mut entries = String::from("\npub(crate) const INPUTS: &[InputEntry] = &[\n");
    for (input, (constant, name, number)) in Input::ALL.iter().zip(&inputs) {
        let (_, unit) = suffix(input.kind())?;
        let none = if input.optional() {
            " -INFINITY stands for none."
        } else {
            ""
        };
        text += &format!(
            "/// {}{}{none}\npub const {constant}: i32 = {number};\n",
            input.meaning(),
            in_unit(unit)
        );
        entries += &format!(
            "    InputEntry {{ number: {constant}, input: Input::{input:?}, name: c\"{name}\", unit: c\"{unit}\" }},\n"
        );
    }
    entries += "];\n\npub(crate) const CHOICES: &[ChoiceEntry] = &[\n";
    for (choice, (constant, name, number)) in Choice::ALL.iter().zip(&choices) {
        text += &format!(
            "/// {}\npub const {constant}: i32 = {number};\n",
            meaning(*choice)
        );
        let words: String = words(*choice)
            .iter()
            .map(|word| format!("c\"{word}\", "))
            .collect();
        entries += &format!(
            "    ChoiceEntry {{ number: {constant}, choice: Choice::{choice:?}, name: c\"{name}\", words: &[{}] }},\n",
            words.trim_end_matches(", ")
        );
    }
    entries += "];\n\n/// In the order of the core's list.\npub(crate) const RESULTS: &[ResultEntry] = &[\n";
    for (field, (constant, name, number)) in fields.iter().zip(&results) {
        let (_, unit) = suffix(field.kind)?;
        let none = if field.optional {
            " Good rows may lack it."
        } else {
            ""
        };
        text += &format!(
            "/// {}{}{none}\npub const {constant}: i32 = {number};\n",
            field.meaning,
            in_unit(unit)
        );
        entries += &format!(
            "    ResultEntry {{ number: {constant}, name: c\"{name}\", unit: c\"{unit}\" }},\n"
        );
    }
    entries += "];\n";
    let materials = words(Choice::CutterMaterial);
    text += &places(
        before,
        "GULLET_CUTTER_MATERIAL_",
        "What edges are made of",
        &materials,
    )?;
    text += &places(
        before,
        "GULLET_CUTTER_FORM_",
        "Shape of the cutting end",
        FORMS,
    )?;
    Ok(text + &entries)
}

pub fn rust() -> Outcome<String> {
    // The first time there is no file yet.
    let before = read(&crate_directory().join("src/generated/studies.rs")).unwrap_or_default();
    all(&before)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn numbers_stay_with_their_names() {
        let names = |names: &'static [&'static str]| names.iter().copied();
        let first = numbers("", "A_", 1, names(&["one", "two-b"])).unwrap();
        let text: String = first
            .iter()
            .map(|(constant, _, number)| format!("pub const {constant}: i32 = {number};\n"))
            .collect();
        assert_eq!(
            text,
            "pub const A_ONE: i32 = 1;\npub const A_TWO_B: i32 = 2;\n"
        );
        let later = numbers(&text, "A_", 1, names(&["new", "two-b", "one"])).unwrap();
        let later: Vec<i64> = later.iter().map(|(_, _, number)| *number).collect();
        assert_eq!(later, [3, 2, 1]);
        assert!(numbers(&text, "A_", 1, names(&["one"])).is_err());
        assert!(places(&text, "A_", "", &["two-b", "one"]).is_err());
    }

    #[test]
    fn writing_again_changes_nothing() {
        let once = all("").unwrap();
        assert_eq!(all(&once).unwrap(), once);
    }
}
