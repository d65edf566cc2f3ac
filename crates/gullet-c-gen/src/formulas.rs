//! The typed functions, two a formula of the catalogue: one value, and arrays.

use crate::header::LINE;
use crate::unit::{named, suffix};
use crate::{HEAD, Outcome};
use gullet::formula::{Formula, catalogue};
use std::collections::BTreeMap;

/// Words that cannot name an argument in C, C++ or Rust and stand in the catalogue, if any.
const RESERVED: &[&str] = &[
    "register", "signed", "union", "type", "static", "const", "in",
];

/// An argument as C sees it: name with unit, what the catalogue says of it.
pub struct Argument {
    pub name: String,
    pub said: String,
}

/// The arguments of a formula, in order.
pub fn arguments(formula: &Formula) -> Outcome<Vec<Argument>> {
    let one = |parameter: &gullet::formula::Parameter| {
        let name = named(parameter.name, parameter.kind)?;
        if RESERVED.contains(&name.as_str()) {
            return Err(format!("{}: {name} is a reserved word", formula.name));
        }
        let (_, unit) = suffix(parameter.kind)?;
        let unit = if unit.is_empty() { "-" } else { unit };
        let said = format!(
            "{name}: {}, {} [{unit}]; {}",
            parameter.symbol,
            parameter.meaning,
            parameter.range()
        );
        Ok(Argument { name, said })
    };
    formula.parameters.iter().map(one).collect()
}

/// The name of the result.
pub fn result(formula: &Formula) -> Outcome<String> {
    Ok(format!("{}_out", named(formula.name, formula.result)?))
}

/// A line in several where it is too long for the header; what follows the first is set in.
fn wrapped(line: &str) -> Vec<String> {
    let (indent, _) = line.split_at(line.len() - line.trim_start().len());
    let mut lines = Vec::new();
    let mut current = indent.to_owned();
    for word in line.split_whitespace() {
        let empty = current.trim().is_empty();
        if !empty && current.len() + word.len() + 4 > LINE {
            lines.push(core::mem::replace(
                &mut current,
                format!("{indent}    {word}"),
            ));
        } else {
            current += if empty { "" } else { " " };
            current += word;
        }
    }
    lines.push(current);
    lines
}

fn function(formula: &Formula) -> Outcome<String> {
    let name = formula.name;
    let result = result(formula)?;
    let arguments = arguments(formula)?;
    let (_, unit) = suffix(formula.result)?;
    let unit = if unit.is_empty() { "-" } else { unit };
    let mut doc = vec![
        formula.meaning.to_owned(),
        String::new(),
        format!("    {}", formula.equation),
        String::new(),
    ];
    doc.extend(
        arguments
            .iter()
            .map(|argument| format!("{}.", argument.said)),
    );
    doc.extend(
        formula
            .conditions
            .iter()
            .map(|condition| format!("{}.", condition.text)),
    );
    doc.push(format!("{result}: {} [{unit}].", formula.symbol));
    doc.push(format!("Valid for: {}.", formula.validity));
    doc.push(format!("Source: {}.", formula.source));
    doc.push(format!(
        "Example: {} => {} ({}).",
        formula.example.arguments, formula.example.expected, formula.example.source
    ));
    // What stands between the signs of a comment must not end it.
    let doc: String = doc
        .iter()
        .flat_map(|line| wrapped(&line.replace("*/", "* /")))
        .map(|line| format!("/// {line}").trim_end().to_owned() + "\n")
        .collect();
    let each = |form: &dyn Fn(&str) -> String| -> String {
        arguments
            .iter()
            .map(|argument| form(&argument.name))
            .collect()
    };
    let scalars = each(&|name| format!("    {name}: f64,\n"));
    let pointers = each(&|name| format!("    {name}: *const f64,\n"));
    let list = each(&|name| format!("{name}, "));
    let list = list.trim_end_matches(", ");
    Ok(format!(
        r#"
{doc}#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_{name}(
{scalars}    {result}: *mut f64,
) -> gullet_status {{
    // SAFETY: the caller's promise in the header.
    unsafe {{ scalar(&{name}::FORMULA, &[{list}], {result}) }}
}}

/// gullet_{name} over arrays of `count` rows; see "Arrays".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_{name}_array(
    count: usize,
{pointers}    {result}: *mut f64,
    status_out: *mut gullet_status,
) -> gullet_status {{
    // SAFETY: the caller's promise in the header.
    unsafe {{ array(&{name}::FORMULA, count, [{list}], {result}, status_out) }}
}}
"#
    ))
}

/// Lines after which a topic goes on in another file.
const MOST_LINES: usize = 400;

/// Name and text of each file, in the catalogue's order: one a topic, or more for one that is long or
/// that the catalogue comes back to.
pub fn rust() -> Outcome<Vec<(String, String)>> {
    let mut files: Vec<(String, String)> = Vec::new();
    let mut topic = "";
    let mut parts: BTreeMap<&str, u32> = BTreeMap::new();
    for formula in catalogue() {
        let full = files
            .last()
            .is_none_or(|(_, text)| text.lines().count() > MOST_LINES);
        if formula.topic != topic || full {
            topic = formula.topic;
            let part = parts.entry(topic).or_default();
            *part += 1;
            let number = match part {
                1 => String::new(),
                part => format!("_{part}"),
            };
            files.push((
                format!("formulas_{topic}{number}.rs"),
                format!(
                    "{HEAD}use super::status::gullet_status;\nuse crate::formula::{{array, scalar}};\n\
                    use gullet::formula::{topic}::*;\n"
                ),
            ));
        }
        if let Some((_, text)) = files.last_mut() {
            *text += &function(formula)?;
        }
    }
    Ok(files)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn every_formula_stands_in_one_file_of_its_own_name() {
        let files = rust().unwrap();
        let names: std::collections::BTreeSet<&String> =
            files.iter().map(|(name, _)| name).collect();
        assert_eq!(names.len(), files.len());
        for formula in catalogue() {
            let head = format!("fn gullet_{}(", formula.name);
            let found = files.iter().filter(|(_, text)| text.contains(&head));
            assert_eq!(found.count(), 1, "{}", formula.name);
        }
    }
}
