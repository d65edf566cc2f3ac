//! The suffix that names a number's SI unit.

use crate::Outcome;
use gullet::quantity::Kind;

/// Suffix and SI unit of a kind; empty for a pure number.
pub fn suffix(kind: Kind) -> Outcome<(&'static str, &'static str)> {
    Ok(match kind {
        Kind::Length => ("_m", "m"),
        Kind::Area => ("_m2", "m2"),
        Kind::Velocity => ("_m_per_s", "m/s"),
        Kind::Acceleration => ("_m_per_s2", "m/s2"),
        Kind::Time => ("_s", "s"),
        Kind::RotationalSpeed => ("_rev_per_s", "rev/s"),
        Kind::Frequency => ("_hz", "Hz"),
        Kind::Angle => ("_rad", "rad"),
        Kind::Ratio => ("", ""),
        Kind::Count => ("", ""),
        Kind::Turns => ("_turns", "turns"),
        Kind::Force => ("_n", "N"),
        Kind::LineForce => ("_n_per_m", "N/m"),
        Kind::Stiffness => ("_n_per_m", "N/m"),
        Kind::Pressure => ("_pa", "Pa"),
        Kind::Power => ("_w", "W"),
        Kind::Torque => ("_n_m", "N.m"),
        Kind::Energy => ("_j", "J"),
        Kind::VolumeRate => ("_m3_per_s", "m3/s"),
        Kind::AreaRate => ("_m2_per_s", "m2/s"),
        Kind::Money => ("_money", ""),
        Kind::MoneyRate => ("_money_per_s", "money/s"),
        Kind::Density => ("_kg_per_m3", "kg/m3"),
        other => return Err(format!("no suffix for the unit of {other:?}")),
    })
}

/// A name with the suffix of its unit, once.
pub fn named(name: &str, kind: Kind) -> Outcome<String> {
    let (suffix, _) = suffix(kind)?;
    Ok(if name.ends_with(suffix) {
        name.to_owned()
    } else {
        format!("{name}{suffix}")
    })
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use gullet::quantity::unit;

    #[test]
    fn every_suffix_names_the_si_unit_of_its_kind() {
        for kind in Kind::ALL {
            let (suffix, text) = suffix(*kind).unwrap();
            // The list of units has none for money a second.
            if *kind != Kind::MoneyRate {
                assert_eq!(unit(*kind, text).unwrap().size(), 1.0, "{kind:?}");
            }
            if *kind != Kind::Money && *kind != Kind::RotationalSpeed {
                let spelled = text.to_lowercase().replace('/', "_per_").replace('.', "_");
                assert_eq!(suffix.trim_start_matches('_'), spelled, "{kind:?}");
            }
        }
    }

    #[test]
    fn a_suffix_is_not_written_twice() {
        assert_eq!(
            named("handwheel_turns", Kind::Turns).unwrap(),
            "handwheel_turns"
        );
        assert_eq!(named("diameter", Kind::Length).unwrap(), "diameter_m");
        assert_eq!(named("teeth", Kind::Count).unwrap(), "teeth");
    }
}
