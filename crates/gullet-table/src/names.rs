//! What a column's name says: which input it is, and in which unit.

use crate::takes::{Number, Pick, Takes};
use gullet::error::{Code, Problem, distance};
use gullet::quantity::{Kind, Unit, UnitSystem, column_unit, unit_behind, unit_of_suffix, units};

/// Name of the column with what machine and operator cost.
pub const COST_PER_HOUR: &str = "cost_per_hour";

/// What a column is for.
#[derive(Debug, Clone, PartialEq)]
pub enum Role {
    /// Numbers of an input, in a unit.
    Number(Number, &'static Unit),
    /// Words that rows choose by.
    Choice(Pick),
    /// Money per hour for machine and operator.
    CostPerHour,
    /// Nothing of ours: passed through.
    Other,
    /// A name that means an input and cannot be read.
    Refused(Problem),
}

impl Takes {
    /// What the column of this name is for.
    ///
    /// ```
    /// use gullet_table::{Role, Takes};
    /// let takes = Takes::of_operation(Some("side-milling"));
    /// let Role::Number(input, unit) = takes.role("axial_depth_in") else { panic!() };
    /// assert_eq!((input.name, unit.symbol), ("axial_depth", "in"));
    /// assert_eq!(takes.role("part_number"), Role::Other);
    /// assert!(matches!(takes.role("axial_depth"), Role::Refused(_)), "in which unit?");
    /// ```
    pub fn role(&self, name: &str) -> Role {
        if name == COST_PER_HOUR {
            return Role::CostPerHour;
        }
        if let Some(pick) = self.pick(name) {
            return Role::Choice(pick);
        }
        // The longest input that the name begins with.
        let known = self
            .numbers()
            .iter()
            .copied()
            .filter_map(|input| Some((input, name.strip_prefix(input.name)?)))
            .filter(|(_, rest)| rest.is_empty() || rest.starts_with('_'))
            .min_by_key(|(_, rest)| rest.len());
        match known {
            Some((input, rest)) => {
                let suffix = rest.strip_prefix('_').unwrap_or(rest);
                match unit_of_suffix(input.kind, suffix) {
                    Some(unit) => Role::Number(input, unit),
                    None if !suffix.is_empty() && !looks_like_unit(suffix) => Role::Other,
                    None => Role::Refused(wrong_unit(name, input, suffix)),
                }
            }
            None => near_miss(self, name).map_or(Role::Other, Role::Refused),
        }
    }
}

/// A name with a unit behind it.
///
/// ```
/// use gullet::quantity::{Kind, unit};
/// assert_eq!(gullet_table::with_unit("tool_life", unit(Kind::Time, "min")?), "tool_life_min");
/// # Ok::<(), gullet::Error>(())
/// ```
pub fn with_unit(name: &str, unit: &Unit) -> String {
    let suffix = unit.suffix();
    if suffix.is_empty() {
        name.to_owned()
    } else {
        format!("{name}_{suffix}")
    }
}

/// The names of an input's column in the two systems.
pub(crate) fn usual_names(input: Number) -> String {
    let name = |system| with_unit(input.name, column_unit(input.kind, system));
    let (metric, inch) = (name(UnitSystem::Metric), name(UnitSystem::Inch));
    if metric == inch {
        metric
    } else {
        format!("{metric} or {inch}")
    }
}

/// One word, or the last words are a unit of something.
fn looks_like_unit(suffix: &str) -> bool {
    let spelled = |kind: &Kind| {
        unit_of_suffix(*kind, suffix)
            .or_else(|| unit_behind(*kind, suffix))
            .is_some()
    };
    !suffix.contains('_') || Kind::ALL.iter().any(spelled)
}

fn wrong_unit(name: &str, input: Number, suffix: &str) -> Problem {
    let known: Vec<String> = units(input.kind)
        .iter()
        .map(|unit| with_unit(input.name, unit))
        .collect();
    let (code, value) = if suffix.is_empty() {
        (Code::UnitMissing, "a name without a unit".to_owned())
    } else {
        (Code::UnitUnknown, format!("unit \"{suffix}\""))
    };
    Problem::new(
        code,
        name,
        value,
        known.join(", "),
        format!(
            "rename the column to {}, or name it among those to pass through",
            usual_names(input)
        ),
    )
}

/// A name that is one or two letters from that of an input.
fn near_miss(takes: &Takes, name: &str) -> Option<Problem> {
    let near = |stem: &str, known: &str| {
        let allowed = match known.len() {
            0..7 => 0,
            7..10 => 1,
            _ => 2,
        };
        // The distance is at least what one is longer.
        let longer = stem.chars().count().abs_diff(known.chars().count());
        allowed > 0 && longer <= allowed && (1..=allowed).contains(&distance(stem, known))
    };
    let choice = takes
        .picks()
        .iter()
        .map(Pick::name)
        .find(|known| near(name, known))
        .map(str::to_owned);
    let number = || {
        let cuts = name.match_indices('_').map(|(at, _)| name.split_at(at));
        cuts.chain([(name, "")]).find_map(|(stem, rest)| {
            let suffix = rest.strip_prefix('_').unwrap_or(rest);
            takes
                .numbers()
                .iter()
                .find(|input| {
                    near(stem, input.name) && unit_of_suffix(input.kind, suffix).is_some()
                })
                .map(|input| format!("{}{rest}", input.name))
        })
    };
    let meant = choice.or_else(number)?;
    Some(Problem::new(
        Code::UnknownName,
        name,
        "",
        meant.clone(),
        format!("did you mean {meant}? Else name it among those to pass through"),
    ))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::panic)]
    use super::*;
    use gullet::study::Choice;

    fn role(name: &str) -> Role {
        Takes::milling().role(name)
    }

    fn number(name: &str) -> (&'static str, &'static str) {
        match role(name) {
            Role::Number(input, unit) => (input.name, unit.symbol),
            other => panic!("{name}: {other:?}"),
        }
    }

    #[test]
    fn units_stand_behind_the_name() {
        assert_eq!(number("cutter_diameter_in"), ("cutter_diameter", "in"));
        assert_eq!(number("axial_depth_mm"), ("axial_depth", "mm"));
        assert_eq!(number("axial_depth_inch"), ("axial_depth", "in"));
        assert_eq!(number("spindle_speed_rpm"), ("spindle_speed", "rpm"));
        assert_eq!(number("spindle_speed_rev_min"), ("spindle_speed", "rpm"));
        assert_eq!(
            number("feed_per_tooth_mm_per_tooth"),
            ("feed_per_tooth", "mm")
        );
        assert_eq!(number("clamping_force_kn"), ("clamping_force", "kN"));
        assert_eq!(
            number("cutter_helix_angle_deg"),
            ("cutter_helix_angle", "deg")
        );
        assert_eq!(number("jaw_friction_percent"), ("jaw_friction", "%"));
        assert_eq!(number("cutter_teeth"), ("cutter_teeth", ""));
        assert_eq!(role("material"), Role::Choice(Pick::Of(Choice::Material)));
    }

    #[test]
    fn what_is_none_of_ours_passes() {
        for name in [
            "part",
            "id",
            "material_lot",
            "length_of_run",
            "mass",
            "axis",
            "a b",
            "Ü",
            "path",
            "",
        ] {
            assert_eq!(role(name), Role::Other, "{name}");
        }
    }

    #[test]
    fn wrong_units_and_misspelled_names_are_refused() {
        for (name, code) in [
            ("axial_depth", Code::UnitMissing),
            ("axial_depth_n", Code::UnitUnknown),
            ("axial_depth_furlong", Code::UnitUnknown),
            ("axial_depth_max_mm", Code::UnitUnknown),
            ("axial_dept_mm", Code::UnknownName),
            ("cuter_diamter_in", Code::UnknownName),
            ("Axial_depth_mm", Code::UnknownName),
            ("cutter_tooth", Code::UnknownName),
            ("materal", Code::UnknownName),
        ] {
            match role(name) {
                Role::Refused(problem) => assert_eq!(problem.code, code, "{problem}"),
                other => panic!("{name}: {other:?}"),
            }
        }
    }
}
