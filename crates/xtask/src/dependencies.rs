//! The core's dependency tree against the table of DEVELOPERS.md.

use crate::process::{cargo, quiet, root};
use std::collections::BTreeSet;

const BEGIN: &str = "<!-- dependencies of the core -->";
const END: &str = "<!-- end -->";

/// Every crate that the core is built with has its row, and every row its crate.
pub fn check() -> Result<String, String> {
    let text = std::fs::read_to_string(root().join("DEVELOPERS.md"))
        .map_err(|error| format!("DEVELOPERS.md: {error}"))?;
    let listed = listed(&text)?;
    let found = tree(&quiet(&mut cargo(&[
        "tree",
        "--package",
        "gullet",
        "--edges",
        "normal",
        "--target",
        "all",
        "--prefix",
        "none",
        "--format",
        "{p}",
        "--locked",
    ]))?);
    let mut faults = Vec::new();
    for name in found.difference(&listed) {
        faults.push(format!("{name} is in the tree and not in DEVELOPERS.md"));
    }
    for name in listed.difference(&found) {
        faults.push(format!("{name} is in DEVELOPERS.md and not in the tree"));
    }
    if faults.is_empty() {
        Ok(format!("{} crates, each with its reason", found.len()))
    } else {
        Err(faults.join("\n"))
    }
}

/// The names in backquotes of the table's rows.
fn listed(text: &str) -> Result<BTreeSet<String>, String> {
    let table = text
        .split_once(BEGIN)
        .and_then(|(_, rest)| rest.split_once(END))
        .map(|(table, _)| table)
        .ok_or_else(|| format!("DEVELOPERS.md: no table between {BEGIN} and {END}"))?;
    Ok(table
        .lines()
        .filter(|line| line.starts_with('|'))
        .filter_map(|line| line.split('|').nth(1))
        .flat_map(|cell| cell.split('`').skip(1).step_by(2))
        .map(str::to_owned)
        .collect())
}

/// The crates of a tree, the core itself left out.
fn tree(text: &str) -> BTreeSet<String> {
    text.lines()
        .filter_map(|line| line.split_whitespace().next())
        .filter(|name| *name != "gullet")
        .map(str::to_owned)
        .collect()
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn rows_and_tree_are_read() {
        let text = format!(
            "`x`\n{BEGIN}\n| crate | why |\n|---|---|\n| `csv`, `csv-core` | `no` |\n{END}\n| `y` |"
        );
        let names: Vec<String> = listed(&text).unwrap().into_iter().collect();
        assert_eq!(names, ["csv", "csv-core"]);
        let names: Vec<String> = tree("gullet v0.1.0 (x)\ncsv v1.4.0\ncsv v1.4.0 (*)\n")
            .into_iter()
            .collect();
        assert_eq!(names, ["csv"]);
        assert!(listed("none").is_err());
    }
}
