//! Materials by the names of the trade.

use super::library::Library;
use super::types::{Material, Provenance, plain};
use crate::error::{Code, Error, Problem, Result};
use std::collections::BTreeMap;

impl Library {
    /// The material of this id, name or alias; case, spaces and hyphens do not matter.
    ///
    /// # Errors
    /// [`Code::UnknownName`] where no material has the name, with the nearest ones;
    /// [`Code::Inconsistent`] where several have it, such as one grade in two conditions.
    ///
    /// ```
    /// let library = gullet::table::Library::builtin();
    /// assert_eq!(library.material("AISI 1018")?.condition, "cold drawn");
    /// assert_eq!(library.material("6061-T6")?.id, library.material("6061")?.id);
    /// assert!(library.material("4140").is_err(), "annealed or quenched and tempered?");
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn material(&self, id_or_alias: &str) -> Result<&Material> {
        let trimmed = id_or_alias.trim();
        if let Some(exact) = self
            .materials
            .iter()
            .find(|material| material.id.eq_ignore_ascii_case(trimmed))
        {
            return Ok(exact);
        }
        let ids = self.index.get(&plain(trimmed)).cloned().unwrap_or_default();
        let mut found: Vec<&Material> = self
            .materials
            .iter()
            .filter(|material| ids.contains(&material.id))
            .collect();
        // A shop that gives its own material a name means that one.
        if found
            .iter()
            .any(|material| material.provenance == Provenance::Shop)
        {
            found.retain(|material| material.provenance == Provenance::Shop);
        }
        match found.as_slice() {
            [one] => Ok(one),
            [] => Err(self.unknown_material(trimmed)),
            several => {
                let names: Vec<String> = several
                    .iter()
                    .map(|material| format!("{} ({})", material.id, material.condition))
                    .collect();
                Err(Problem::new(
                    Code::Inconsistent,
                    "material",
                    quoted(trimmed),
                    names.join(", "),
                    "the name means several materials: write the id of the one you have",
                )
                .into())
            }
        }
    }

    fn unknown_material(&self, name: &str) -> Error {
        let wanted = plain(name);
        let mut near: BTreeMap<&str, ()> = BTreeMap::new();
        let names = || self.index.iter().filter(|(key, _)| !key.is_empty());
        let mut left: Vec<&str> = names().map(|(key, _)| key.as_str()).collect();
        for _ in 0..3 {
            let Some(key) = crate::error::nearest(&wanted, left.iter().copied()) else {
                break;
            };
            left.retain(|other| *other != key);
            near.extend(
                self.index
                    .get(key)
                    .into_iter()
                    .flatten()
                    .map(|id| (id.as_str(), ())),
            );
        }
        let near: Vec<&str> = near.into_keys().collect();
        let remedy = if near.is_empty() {
            "list the materials, or add your own in a shop table".to_owned()
        } else {
            format!("did you mean {}?", near.join(", "))
        };
        let admissible = format!(
            "one of {} materials or their other names",
            self.materials.len()
        );
        Problem::new(
            Code::UnknownName,
            "material",
            quoted(name),
            admissible,
            remedy,
        )
        .into()
    }
}

fn quoted(text: &str) -> String {
    format!("\"{}\"", text.chars().take(80).collect::<String>())
}
