//! Text with units, read: the SI value is the exact decimal or fraction times the exact size of
//! the unit, rounded once. `1/2 in`, `0.5 in` and `12.7 mm` are the same double.

use super::decimal::Fraction;
use super::kind::Kind;
use super::spelling::{find, shown};
use crate::error::{Code, Problem, Result};

/// Longest text that is read, in bytes; the exact decimals of every double fit.
const LONGEST: usize = 1200;

const NUMBERS: &str = "a number such as 12.7, 1e-3, 1/2 or 1-1/4";

/// Reads text such as `1/2 in` as a quantity of this kind and gives its SI value.
///
/// A number is decimal (`12.7`, `.5`, `5.`, `1e-3`), a fraction (`1/2`) or mixed (`1-1/4`,
/// `2 3/8`), signed or not. The unit follows with or without a space: `0.5in`, `2 3/8"`. Products
/// are written with `.`, `*`, `·` or a space, powers with or without `^`, `per` for `/`. Letter
/// case matters only where it tells two units apart (`MM` is read, `mPa` is not `MPa`).
///
/// The result is the double nearest to the exact value; it may be 0 for tiny text.
///
/// # Errors
/// [`Code::NumberUnreadable`] for text that is no number (decimal comma and thousands separators
/// included), [`Code::NotFinite`] for NaN, infinity and overflow, [`Code::UnitMissing`] and
/// [`Code::UnitUnknown`] with the units that would do.
///
/// ```
/// use gullet::quantity::{Kind, parse};
/// assert_eq!(parse(Kind::Length, "1-1/4 in")?, 0.03175);
/// assert_eq!(parse(Kind::RotationalSpeed, "1200 rpm")?, 20.0);
/// # Ok::<(), gullet::Error>(())
/// ```
pub fn parse(kind: Kind, text: &str) -> Result<f64> {
    let plain = plain(text)?;
    let number = Number::read(&plain, text)?;
    let unit = find(kind, number.text, number.rest, text)?;
    finite(
        number.negative,
        &number.value.times(&Fraction::of_unit(unit)),
        text,
    )
}

/// Reads a number without a unit, written as [`parse`] takes it.
///
/// # Errors
/// As [`parse`]; [`Code::NumberUnreadable`] where anything stands behind the number.
pub fn parse_number(text: &str) -> Result<f64> {
    let plain = plain(text)?;
    let number = Number::read(&plain, text)?;
    if !number.rest.is_empty() {
        return Err(unreadable(
            text,
            "a number without a unit",
            format!("write {}", number.text),
        )
        .into());
    }
    finite(number.negative, &number.value, text)
}

fn finite(negative: bool, value: &Fraction, text: &str) -> Result<f64> {
    let magnitude = value.to_f64();
    if magnitude.is_finite() {
        return Ok(if negative { -magnitude } else { magnitude });
    }
    Err(not_finite(text).into())
}

/// The text with the characters of a number in ASCII: minus sign, fraction slash, `½` and the like.
fn plain(text: &str) -> core::result::Result<String, Problem> {
    let text = text.trim();
    if text.len() > LONGEST {
        return Err(unreadable(
            text,
            format!("at most {LONGEST} characters"),
            "write the number with fewer digits",
        ));
    }
    let mut plain = String::with_capacity(text.len() + 4);
    for c in text.chars() {
        let fraction = match c {
            '½' => "1/2",
            '¼' => "1/4",
            '¾' => "3/4",
            '⅛' => "1/8",
            '⅜' => "3/8",
            '⅝' => "5/8",
            '⅞' => "7/8",
            '\u{2212}' => "-",
            '\u{2044}' => "/",
            _ => {
                plain.push(c);
                continue;
            }
        };
        if fraction.len() > 1 && plain.ends_with(|before: char| before.is_ascii_digit()) {
            plain.push(' ');
        }
        plain.push_str(fraction);
    }
    Ok(plain)
}

/// A number at the head of a text, and what stands behind it.
struct Number<'a> {
    negative: bool,
    value: Fraction,
    /// The number as written.
    text: &'a str,
    /// What stands behind it, without space around.
    rest: &'a str,
}

impl<'a> Number<'a> {
    /// Reads the number; `given` is the text for the error.
    fn read(plain: &'a str, given: &str) -> core::result::Result<Number<'a>, Problem> {
        let (negative, unsigned) = match plain.strip_prefix('-') {
            Some(rest) => (true, rest),
            None => (false, plain.strip_prefix('+').unwrap_or(plain)),
        };
        let (value, rest) = match fraction(unsigned) {
            Some((whole, above, below, rest)) => {
                let zero = || {
                    unreadable(
                        given,
                        "a denominator other than 0",
                        "write the fraction with another denominator",
                    )
                };
                let part = Fraction::mixed(&[], &values(above), &values(below)).ok_or_else(zero)?;
                if !whole.is_empty() && part.is_improper() {
                    return Err(unreadable(
                        given,
                        "a fraction below 1 behind a whole number",
                        "write one number, such as 1-1/4 or 1.25",
                    ));
                }
                let sum = Fraction::mixed(&values(whole), &values(above), &values(below));
                (sum.ok_or_else(zero)?, rest)
            }
            None => decimal(unsigned).ok_or_else(|| no_number(unsigned, given))?,
        };
        let length = plain.len() - rest.len();
        let text = plain.get(..length).unwrap_or(plain);
        let rest = rest.trim();
        if continues(text, rest) {
            return Err(second_number(text, rest, given));
        }
        Ok(Number {
            negative,
            value,
            text,
            rest,
        })
    }
}

/// The digits at the head of a text, and the rest.
fn digits(text: &str) -> (&str, &str) {
    text.split_at(
        text.find(|c: char| !c.is_ascii_digit())
            .unwrap_or(text.len()),
    )
}

fn values(digits: &str) -> Vec<u8> {
    digits
        .bytes()
        .filter(u8::is_ascii_digit)
        .map(|byte| byte - b'0')
        .collect()
}

/// `1/2`, `1-1/2` or `1 1/2`: whole number (or nothing), numerator, denominator, rest.
fn fraction(text: &str) -> Option<(&str, &str, &str, &str)> {
    let quotient = |text| {
        let (above, rest) = digits(text);
        let (below, rest) = digits(rest.strip_prefix('/')?);
        (!above.is_empty() && !below.is_empty()).then_some((above, below, rest))
    };
    if let Some((above, below, rest)) = quotient(text) {
        return Some(("", above, below, rest));
    }
    let (whole, rest) = digits(text);
    if whole.is_empty() {
        return None;
    }
    let part = match rest.strip_prefix('-') {
        Some(part) => part,
        None if rest.starts_with(char::is_whitespace) => rest.trim_start(),
        None => return None,
    };
    quotient(part).map(|(above, below, rest)| (whole, above, below, rest))
}

/// `12.7`, `.5`, `5.` or `1e-3`, and the rest.
pub(super) fn decimal(text: &str) -> Option<(Fraction, &str)> {
    let (whole, rest) = digits(text);
    let (places, rest) = rest.strip_prefix('.').map_or(("", rest), digits);
    if whole.is_empty() && places.is_empty() {
        return None;
    }
    let (power, rest) = exponent(rest).unwrap_or((0, rest));
    let mut all = values(whole);
    all.extend(values(places));
    Some((Fraction::decimal(&all, power - places.len() as i64), rest))
}

/// `e-3` at the head of a text, held within a million, and the rest.
fn exponent(text: &str) -> Option<(i64, &str)> {
    let text = text.strip_prefix(['e', 'E'])?;
    let (sign, text) = match text.strip_prefix('-') {
        Some(rest) => (-1, rest),
        None => (1, text.strip_prefix('+').unwrap_or(text)),
    };
    let (power, rest) = digits(text);
    let capped = values(power).iter().fold(0_i64, |value, digit| {
        (value * 10 + i64::from(*digit)).min(1_000_000)
    });
    (!power.is_empty()).then_some((sign * capped, rest))
}

/// Whether what stands behind a number goes on as a number would, so that a unit would be a guess.
fn continues(number: &str, rest: &str) -> bool {
    let mut letters = rest.chars();
    let first = letters.next();
    let second_digit = letters.next().is_some_and(|c| c.is_ascii_digit());
    match first {
        Some('+' | '-' | ',' | '_') => true,
        Some('.' | '/' | '\'' | '’' | '"') => second_digit,
        // `1000 1/min` is a unit, `1 000 mm` a thousands separator.
        Some(c) if c.is_numeric() => {
            !rest.starts_with("1/") || rest.chars().nth(2).is_some_and(|c| c.is_ascii_digit())
        }
        Some('x' | 'X') => number.ends_with('0'),
        Some('e' | 'E') => exponent(rest).is_some(),
        _ => false,
    }
}

fn second_number(number: &str, rest: &str, given: &str) -> Problem {
    if let Some(tail) = rest.strip_prefix(',') {
        let (places, _) = digits(tail);
        let whole = number;
        let remedy = match places.len() {
            0 => format!("write {whole}"),
            3 => format!("write {whole}{places} or {whole}.{places}, whichever is meant"),
            _ => format!("write {whole}.{places}"),
        };
        return unreadable(
            given,
            "a decimal point, and no comma or thousands separator",
            shown(&remedy),
        );
    }
    unreadable(
        given,
        "one number with one unit",
        "write one number, such as 1000, 12.7, 1/2 or 1-1/4, without thousands separators",
    )
}

/// Problem for a text that no number stands at the head of.
fn no_number(unsigned: &str, given: &str) -> Problem {
    let word: String = unsigned
        .chars()
        .take_while(|c| c.is_alphabetic())
        .take(9)
        .flat_map(char::to_lowercase)
        .collect();
    match word.as_str() {
        "nan" | "inf" | "infinity" => not_finite(given),
        _ if unsigned.is_empty() => unreadable(given, NUMBERS, "write a number"),
        _ => unreadable(given, NUMBERS, "begin with a number"),
    }
}

fn not_finite(given: &str) -> Problem {
    Problem::new(
        Code::NotFinite,
        "",
        shown(given),
        "a finite number",
        "write a number of less than 300 digits",
    )
}

fn unreadable(given: &str, admissible: impl Into<String>, remedy: impl Into<String>) -> Problem {
    Problem::new(Code::NumberUnreadable, "", shown(given), admissible, remedy)
}
