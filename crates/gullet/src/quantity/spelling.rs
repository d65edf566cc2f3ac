//! Which unit a text means, whatever alphabet and letter case it is spelled in.

use super::kind::{Kind, Unit};
use super::units::{units, usual};
use crate::error::{Code, Problem, edit_distance, nearest};

/// The unit of this kind that `text` spells.
///
/// # Errors
/// [`Code::UnitMissing`] for empty text where the kind needs a unit, [`Code::UnitUnknown`]
/// otherwise; both list the units that would do.
pub fn unit(kind: Kind, text: &str) -> crate::Result<&'static Unit> {
    Ok(find(kind, "", text, text)?)
}

/// The unit that `spelled` means; `number` and `given`, the text it stands in, are for the error.
pub(super) fn find(
    kind: Kind,
    number: &str,
    spelled: &str,
    given: &str,
) -> Result<&'static Unit, Problem> {
    let name = normalised(spelled);
    exact(kind, &name)
        .or_else(|| but_for_case(kind, &name))
        .ok_or_else(|| refused(kind, number, &name, given))
}

/// The text as the list of units spells it: ASCII but for the degree sign, `.` between factors.
pub(super) fn normalised(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for c in text.trim().chars() {
        match c {
            'µ' | 'μ' => plain.push('u'),
            '¹' => plain.push('1'),
            '²' => plain.push('2'),
            '³' => plain.push('3'),
            '⁻' | '\u{2212}' => plain.push('-'),
            '·' | '⋅' | '∙' | '×' | '*' => plain.push('.'),
            '″' | '“' | '”' => plain.push('"'),
            '′' | '‘' | '’' => plain.push('\''),
            '\u{2044}' | '\u{2215}' => plain.push('/'),
            'º' => plain.push('°'),
            '^' => {}
            c if c.is_whitespace() => plain.push(' '),
            c => plain.push(c),
        }
    }
    let mut name = String::with_capacity(plain.len());
    for word in plain.split(' ').filter(|word| !word.is_empty()) {
        if word.eq_ignore_ascii_case("per") {
            name.push('/');
            continue;
        }
        let joined =
            name.is_empty() || name.ends_with(['/', '.', '(']) || word.starts_with(['/', '.', ')']);
        if !joined {
            name.push('.');
        }
        name.push_str(word);
    }
    hyphens_as_products(name.strip_suffix('.').unwrap_or(&name))
}

/// `ft-lbf` is a product; `min-1` is not.
fn hyphens_as_products(name: &str) -> String {
    let mut result = String::with_capacity(name.len());
    let mut letters = name.chars().peekable();
    while let Some(c) = letters.next() {
        let follows = letters.peek().is_some_and(|next| next.is_alphabetic());
        if c == '-' && follows && result.ends_with(char::is_alphanumeric) {
            result.push('.');
        } else {
            result.push(c);
        }
    }
    result
}

fn exact(kind: Kind, name: &str) -> Option<&'static Unit> {
    units(kind)
        .iter()
        .find(|unit| unit.spellings().any(|spelling| spelling == name))
}

/// The only unit whose spelling differs from `name` in nothing but letter case.
fn but_for_case(kind: Kind, name: &str) -> Option<&'static Unit> {
    let mut found = units(kind)
        .iter()
        .filter(|unit| unit.spellings().any(|known| harmless_case(name, known)));
    let first = found.next();
    first.filter(|_| found.next().is_none())
}

/// Whether `given` is `known` in other letter case, and none of the letters that differ turns a
/// milli into a mega or a metre into something else. `MM` in capitals is read, `Mm` is not.
fn harmless_case(given: &str, known: &str) -> bool {
    let between = |c: char| !c.is_alphabetic();
    given.eq_ignore_ascii_case(known)
        && given
            .split(between)
            .zip(known.split(between))
            .all(|(a, b)| {
                let prefixed = ["m", "mm", "ms", "mpa"].contains(&b.to_ascii_lowercase().as_str());
                !prefixed || a == "MM" || a.chars().next() == b.chars().next()
            })
}

/// Refusal of a unit that is missing, unknown, or of another kind.
///
/// Only a bare number is repeated with another unit behind it: 100 rad/s is not 100 rpm.
fn refused(kind: Kind, number: &str, name: &str, given: &str) -> Problem {
    let number = match number.len() {
        1..=24 => number,
        _ => "12.5",
    };
    let value = shown(given);
    if name.is_empty() {
        let ways: Vec<String> = usual(kind)
            .iter()
            .map(|unit| with_unit(number, unit))
            .collect();
        let remedy = format!("write {}", ways.join(" or "));
        return Problem::new(Code::UnitMissing, "", value, symbols(kind, ""), remedy);
    }
    let elsewhere = Kind::ALL
        .iter()
        .copied()
        .find(|other| exact(*other, name).is_some());
    let spellings = || units(kind).iter().flat_map(Unit::spellings);
    let near = spellings()
        .find(|known| known.eq_ignore_ascii_case(name))
        .or_else(|| nearest(name, spellings().filter(|known| !known.is_empty())))
        .and_then(|known| exact(kind, known));
    // An angle per time is one letter or two from revolutions per time, and 2 pi off.
    let angular = ["rad", "deg", "°"]
        .iter()
        .any(|angle| name.starts_with(angle));
    let near = near.filter(|_| kind != Kind::RotationalSpeed || !angular);
    let remedy = match (elsewhere, near) {
        (Some(other), _) => format!(
            "{} is a unit of {}, not of {}; {}",
            shown(name),
            other.words(),
            kind.words(),
            instead(kind)
        ),
        (None, Some(near)) => format!(
            "{} is no unit of {}; did you mean {}?",
            shown(name),
            kind.words(),
            with_unit(number, near.symbol)
        ),
        (None, None) => format!(
            "{} is no unit of {}; {}",
            shown(name),
            kind.words(),
            instead(kind)
        ),
    };
    let admissible = symbols(kind, name);
    Problem::new(Code::UnitUnknown, "", value, admissible, remedy)
}

fn instead(kind: Kind) -> String {
    match usual(kind) {
        [""] => "give a number without a unit".to_owned(),
        symbols => format!("give it in {}", symbols.join(" or ")),
    }
}

/// The symbols of a kind, the nearest to `name` first, else in the order of the list.
fn symbols(kind: Kind, name: &str) -> String {
    let wanted: Vec<char> = name.to_lowercase().chars().take(64).collect();
    let mut symbols: Vec<&str> = units(kind).iter().map(|unit| unit.symbol).collect();
    if !wanted.is_empty() {
        symbols.sort_by_cached_key(|symbol| edit_distance(&wanted, symbol));
    }
    for symbol in &mut symbols {
        if symbol.is_empty() {
            *symbol = "no unit";
        }
    }
    symbols.join(", ")
}

/// A number with a unit, as people write it.
pub(super) fn with_unit(number: &str, symbol: &str) -> String {
    if symbol.is_empty() {
        number.to_owned()
    } else {
        format!("{number} {symbol}")
    }
}

/// Given text for a message: one line, cut short.
pub(super) fn shown(text: &str) -> String {
    const LONGEST: usize = 60;
    let mut result: String = text
        .trim()
        .chars()
        .map(|c| if c.is_control() { '\u{fffd}' } else { c })
        .take(LONGEST)
        .collect();
    if text.trim().chars().nth(LONGEST).is_some() {
        result.push('…');
    }
    result
}
