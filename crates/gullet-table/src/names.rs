//! What a column's name says: which input it is, and in which unit.

use gullet::error::{Code, Problem, distance};
use gullet::quantity::{Kind, Unit, UnitSystem, column_unit, units};
use gullet::study::{Choice, Input};

/// Name of the column with what machine and operator cost.
pub const COST_PER_HOUR: &str = "cost_per_hour";

/// What a column is for.
#[derive(Debug, Clone, PartialEq)]
pub enum Role {
    /// Numbers of an input, in a unit.
    Number(Input, &'static Unit),
    /// Names that a choice picks by.
    Choice(Choice),
    /// Money per hour for machine and operator.
    CostPerHour,
    /// Nothing of ours: passed through.
    Other,
    /// A name that means an input and cannot be read.
    Refused(Problem),
}

/// What the column of this name is for.
///
/// ```
/// use gullet::study::Input;
/// use gullet_table::{Role, role};
/// let Role::Number(input, unit) = role("axial_depth_in") else { panic!() };
/// assert_eq!((input, unit.symbol), (Input::AxialDepth, "in"));
/// assert_eq!(role("part_number"), Role::Other);
/// assert!(matches!(role("axial_depth"), Role::Refused(_)), "in which unit?");
/// ```
pub fn role(name: &str) -> Role {
    if name == COST_PER_HOUR {
        return Role::CostPerHour;
    }
    if let Some(choice) = Choice::ALL.iter().find(|choice| choice.name() == name) {
        return Role::Choice(*choice);
    }
    // The longest input that the name begins with.
    let known = Input::ALL
        .iter()
        .copied()
        .filter_map(|input| Some((input, name.strip_prefix(input.name())?)))
        .filter(|(_, rest)| rest.is_empty() || rest.starts_with('_'))
        .min_by_key(|(_, rest)| rest.len());
    match known {
        Some((input, rest)) => {
            let suffix = rest.strip_prefix('_').unwrap_or(rest);
            match unit_of(input.kind(), suffix) {
                Some(unit) => Role::Number(input, unit),
                None if !suffix.is_empty() && !looks_like_unit(suffix) => Role::Other,
                None => Role::Refused(wrong_unit(name, input, suffix)),
            }
        }
        None => near_miss(name).map_or(Role::Other, Role::Refused),
    }
}

/// The unit that a suffix spells: as [`Unit::suffix`], without `per`, or by another spelling of the
/// unit written in the same way.
///
/// ```
/// use gullet::quantity::Kind;
/// assert_eq!(gullet_table::unit_of(Kind::Velocity, "m_min").unwrap().symbol, "m/min");
/// ```
pub fn unit_of(kind: Kind, suffix: &str) -> Option<&'static Unit> {
    units(kind)
        .iter()
        .find(|unit| spellings(unit).any(|spelling| spelling == suffix))
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
pub(crate) fn usual_names(input: Input) -> String {
    let name = |system| with_unit(input.name(), column_unit(input.kind(), system));
    let (metric, inch) = (name(UnitSystem::Metric), name(UnitSystem::Inch));
    if metric == inch {
        metric
    } else {
        format!("{metric} or {inch}")
    }
}

/// One word, or the last words are a unit of something.
fn looks_like_unit(suffix: &str) -> bool {
    let ends = |at: usize| suffix.get(at..).unwrap_or_default();
    let starts = core::iter::once(0).chain(suffix.match_indices('_').map(|(at, _)| at + 1));
    !suffix.contains('_')
        || starts.map(ends).any(|end| {
            !end.is_empty() && Kind::ALL.iter().any(|kind| unit_of(*kind, end).is_some())
        })
}

fn wrong_unit(name: &str, input: Input, suffix: &str) -> Problem {
    let known: Vec<String> = units(input.kind())
        .iter()
        .map(|unit| with_unit(input.name(), unit))
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
fn near_miss(name: &str) -> Option<Problem> {
    let near = |stem: &str, known: &str| {
        let allowed = match known.len() {
            0..7 => 0,
            7..10 => 1,
            _ => 2,
        };
        (1..=allowed).contains(&distance(stem, known))
    };
    let choice = Choice::ALL
        .iter()
        .map(|choice| choice.name())
        .find(|known| near(name, known))
        .map(str::to_owned);
    let number = || {
        let cuts = name.match_indices('_').map(|(at, _)| name.split_at(at));
        cuts.chain([(name, "")]).find_map(|(stem, rest)| {
            let suffix = rest.strip_prefix('_').unwrap_or(rest);
            Input::ALL
                .iter()
                .find(|input| near(stem, input.name()) && unit_of(input.kind(), suffix).is_some())
                .map(|input| format!("{}{rest}", input.name()))
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

    fn number(name: &str) -> (Input, &'static str) {
        match role(name) {
            Role::Number(input, unit) => (input, unit.symbol),
            other => panic!("{name}: {other:?}"),
        }
    }

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
    fn units_stand_behind_the_name() {
        assert_eq!(number("cutter_diameter_in"), (Input::CutterDiameter, "in"));
        assert_eq!(number("axial_depth_mm"), (Input::AxialDepth, "mm"));
        assert_eq!(number("axial_depth_inch"), (Input::AxialDepth, "in"));
        assert_eq!(number("spindle_speed_rpm"), (Input::SpindleSpeed, "rpm"));
        assert_eq!(
            number("spindle_speed_rev_min"),
            (Input::SpindleSpeed, "rpm")
        );
        assert_eq!(
            number("feed_per_tooth_mm_per_tooth"),
            (Input::FeedPerTooth, "mm")
        );
        assert_eq!(number("clamping_force_kn"), (Input::ClampingForce, "kN"));
        assert_eq!(
            number("cutter_helix_angle_deg"),
            (Input::CutterHelixAngle, "deg")
        );
        assert_eq!(number("jaw_friction_percent"), (Input::JawFriction, "%"));
        assert_eq!(number("cutter_teeth"), (Input::CutterTeeth, ""));
        assert_eq!(role("material"), Role::Choice(Choice::Material));
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
