//! How a quantity is written, as patterns of a schema.

use crate::quantity::Kind;

/// A decimal, a fraction or a whole number with a fraction, in the regular expressions that JSON
/// Schema shares with its validators.
pub(super) const NUMBER: &str =
    r"[-+]?([0-9]+[ -])?([0-9]+/[0-9]+)|[-+]?([0-9]+\.?[0-9]*|\.[0-9]+)([eE][-+]?[0-9]+)?";

/// The usual spellings of the units of a kind. The reader knows more, such as the words in full and
/// raised digits; a schema that listed them all would be hard to read in an editor's message.
pub(super) fn spellings(kind: Kind) -> &'static [&'static str] {
    match kind {
        Kind::Length => &[
            "mm", "in", "inch", "inches", "\"", "thou", "um", "cm", "m", "ft", "uin",
        ],
        Kind::Velocity => &[
            "m/min", "ft/min", "mm/min", "in/min", "mm/s", "in/s", "m/s", "fpm", "sfm", "ipm",
        ],
        Kind::Acceleration => &["m/s2", "mm/s2", "in/s2", "ft/s2"],
        Kind::Time => &["s", "min", "h", "ms"],
        Kind::RotationalSpeed => &["rpm", "rev/min", "r/min", "1/min", "rps", "rev/s", "1/s"],
        Kind::Angle => &["deg", "rad", "°"],
        Kind::Ratio => &["%"],
        Kind::Force => &["N", "kN", "lbf"],
        Kind::Pressure => &["N/mm2", "MPa", "psi", "ksi", "GPa"],
        Kind::Power => &["kW", "hp", "W", "PS"],
        Kind::Torque => &["N.m", "Nm", "N m", "lbf.ft", "ft.lbf", "lbf.in", "N.mm"],
        _ => &[],
    }
}

/// Pattern of the text of a quantity of this kind; a ratio may stand without its unit.
pub(in crate::plan) fn pattern(kind: Kind) -> String {
    let units: Vec<String> = spellings(kind).iter().map(|unit| escaped(unit)).collect();
    let optional = if kind == Kind::Ratio { "?" } else { "" };
    format!("^ *({NUMBER}) *({}){optional} *$", units.join("|"))
}

fn escaped(unit: &str) -> String {
    unit.replace('.', "\\.")
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]
    use super::*;
    use crate::quantity;

    /// Reads by hand what [`NUMBER`] describes: the rest after every number it could match.
    fn rests(text: &str) -> Vec<&str> {
        fn digits(text: &str) -> usize {
            text.bytes().take_while(u8::is_ascii_digit).count()
        }
        let unsigned = text.strip_prefix(['-', '+']).unwrap_or(text);
        let mut rests = Vec::new();
        let fraction = |text: &str| {
            let above = digits(text);
            let below = text[above..].strip_prefix('/').map(digits);
            (above > 0).then_some(())?;
            below.filter(|n| *n > 0).map(|n| above + 1 + n)
        };
        let whole = digits(unsigned);
        rests.extend(fraction(unsigned).map(|n| &unsigned[n..]));
        if whole > 0
            && let Some(rest) = unsigned[whole..].strip_prefix([' ', '-'])
        {
            rests.extend(fraction(rest).map(|n| &rest[n..]));
        }
        let decimal = match unsigned[whole..].strip_prefix('.') {
            Some(rest) if whole + digits(rest) > 0 => &rest[digits(rest)..],
            _ if whole > 0 => &unsigned[whole..],
            _ => return rests,
        };
        rests.push(decimal);
        if let Some(rest) = decimal.strip_prefix(['e', 'E']) {
            let rest = rest.strip_prefix(['-', '+']).unwrap_or(rest);
            if digits(rest) > 0 {
                rests.push(&rest[digits(rest)..]);
            }
        }
        rests
    }

    fn matches(kind: Kind, text: &str) -> bool {
        let trimmed = text.trim_matches(' ');
        rests(trimmed).iter().any(|rest| {
            let unit = rest.trim_start_matches(' ');
            spellings(kind).contains(&unit) || (kind == Kind::Ratio && unit.is_empty())
        })
    }

    fn kind(name: &str) -> Kind {
        match name {
            "length" => Kind::Length,
            "velocity" => Kind::Velocity,
            "acceleration" => Kind::Acceleration,
            "time" => Kind::Time,
            "rotational_speed" => Kind::RotationalSpeed,
            "angle" => Kind::Angle,
            "ratio" => Kind::Ratio,
            "force" => Kind::Force,
            "pressure" => Kind::Pressure,
            "power" => Kind::Power,
            "torque" => Kind::Torque,
            _ => panic!("no kind {name}"),
        }
    }

    const TEXTS: &str = include_str!("../../../../../tests/data/quantity_texts.csv");

    #[test]
    fn the_schema_and_the_reader_agree_on_the_list_of_texts() {
        let mut rows = csv::ReaderBuilder::new().from_reader(TEXTS.as_bytes());
        let mut count = 0;
        for row in rows.records() {
            let row = row.unwrap();
            let (kind, text) = (kind(&row[0]), &row[1]);
            let accepted = |who: &str| match who {
                "both" => (true, true),
                "reader" => (false, true),
                "neither" => (false, false),
                _ => panic!("{who}"),
            };
            let (schema, reader) = accepted(&row[2]);
            assert_eq!(
                matches(kind, text),
                schema,
                "schema on {text:?} as {kind:?}"
            );
            assert_eq!(
                quantity::parse(kind, text).is_ok(),
                reader,
                "reader on {text:?} as {kind:?}"
            );
            count += 1;
        }
        assert!(count >= 40, "{count} rows");
    }

    #[test]
    fn every_spelling_of_the_schema_is_read() {
        for name in [
            "length",
            "velocity",
            "acceleration",
            "time",
            "rotational_speed",
            "angle",
            "ratio",
            "force",
            "pressure",
            "power",
            "torque",
        ] {
            let kind = kind(name);
            assert!(!spellings(kind).is_empty());
            for unit in spellings(kind) {
                let text = format!("1 {unit}");
                assert!(quantity::parse(kind, &text).is_ok(), "{text}");
            }
        }
    }

    #[test]
    fn patterns_are_anchored_and_escape_what_they_must() {
        let torque = pattern(Kind::Torque);
        assert!(torque.starts_with("^ *(") && torque.ends_with(" *$"));
        assert!(torque.contains("N\\.m") && !torque.contains("(N.m"));
        assert!(pattern(Kind::Ratio).ends_with("(%)? *$"));
    }
}
