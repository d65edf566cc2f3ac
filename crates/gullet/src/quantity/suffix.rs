//! Units at the end of a column's name.

use super::kind::{Kind, Unit};
use super::units::units;

/// The unit that the end of a name spells: as [`Unit::suffix`], without `per`, or by another spelling
/// of the unit written in the same way.
///
/// ```
/// use gullet::quantity::{Kind, unit_of_suffix};
/// for suffix in ["m_per_min", "m_min"] {
///     assert_eq!(unit_of_suffix(Kind::Velocity, suffix).unwrap().symbol, "m/min");
/// }
/// assert_eq!(unit_of_suffix(Kind::Length, "inch").unwrap().symbol, "in");
/// assert!(unit_of_suffix(Kind::Length, "kg").is_none());
/// ```
pub fn unit_of_suffix(kind: Kind, suffix: &str) -> Option<&'static Unit> {
    units(kind)
        .iter()
        .find(|unit| spellings(unit).any(|spelling| spelling == suffix))
}

/// The unit that a column's name ends with: the longest end that spells one. An empty unit is none.
///
/// ```
/// use gullet::quantity::{Kind, unit_behind};
/// assert_eq!(unit_behind(Kind::Velocity, "table_feed_in_per_min").unwrap().symbol, "in/min");
/// assert_eq!(unit_behind(Kind::Length, "length_in").unwrap().symbol, "in");
/// assert!(unit_behind(Kind::Length, "length").is_none());
/// ```
pub fn unit_behind(kind: Kind, name: &str) -> Option<&'static Unit> {
    name.match_indices('_')
        .filter_map(|(at, _)| name.get(at + 1..))
        .filter(|suffix| !suffix.is_empty())
        .find_map(|suffix| unit_of_suffix(kind, suffix))
}

/// Every way to spell a unit at the end of a name.
fn spellings(unit: &'static Unit) -> impl Iterator<Item = String> {
    let others = unit
        .aliases
        .iter()
        .filter(|alias| {
            !alias.is_empty() && alias.chars().all(|c| c.is_ascii_alphanumeric() || c == '/')
        })
        .filter(|alias| !alias.starts_with('/'))
        .map(|alias| alias.replace('/', "_per_").to_ascii_lowercase());
    core::iter::once(unit.suffix())
        .chain(others)
        .flat_map(|spelling| {
            let short = spelling.replace("_per_", "_");
            [spelling, short]
        })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_suffix_spells_two_units_of_a_kind() {
        for kind in Kind::ALL {
            let mut all: Vec<(String, &str)> = units(*kind)
                .iter()
                .flat_map(|unit| spellings(unit).map(|spelling| (spelling, unit.symbol)))
                .collect();
            all.sort();
            all.dedup();
            let mut names: Vec<&String> = all.iter().map(|(spelling, _)| spelling).collect();
            let count = names.len();
            names.dedup();
            assert_eq!(names.len(), count, "{kind:?}: {all:?}");
        }
    }

    #[test]
    fn every_suffix_behind_a_name_is_read_as_its_unit() {
        for kind in Kind::ALL {
            for unit in units(*kind).iter().filter(|unit| !unit.symbol.is_empty()) {
                let name = format!("some_name_{}", unit.suffix());
                assert_eq!(unit_behind(*kind, &name), Some(unit), "{kind:?}: {name}");
            }
        }
    }
}
