//! `gullet evaluate`: the bare number of a formula.

use crate::answer::{Answer, joined};
use crate::arguments::{Flag, JSON, Spec, read};
use gullet::error::{Code, Error, Problem, Result};
use gullet::formula::{self, Formula};
use gullet::quantity::{Kind, Quantity, Unit, UnitSystem, unit, units};
use serde_json::json;

const SPEC: Spec = Spec {
    flags: &[JSON, Flag::with_value("--unit", "UNIT")],
    operand: "FORMULA",
    least: 1,
    most: usize::MAX,
};

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    let (formula, arguments) = formula_and_arguments(&given.operands)?;
    let result = Quantity {
        kind: formula.result,
        si: formula.call_in(&arguments, formula::units_of(&given.operands.join(" ")))?,
    };
    let unit = match given.value("--unit") {
        Some(text) => unit(result.kind, text).map_err(|error| error.within("--unit"))?,
        None => si_unit(result.kind),
    };
    let value = result.to(unit.symbol)?;
    if given.has("--json") {
        return Ok(Answer::json(&json!({
            "formula": formula.name,
            "kind": result.kind.name(),
            "value": value,
            "unit": unit.symbol,
            "si": result.si,
            "text": result.text(UnitSystem::Metric),
        })));
    }
    Ok(Answer::text(format!("{}\n", seventeen_digits(value))))
}

/// The formula and its SI arguments from `NAME=VALUE` words; every problem at once.
pub fn formula_and_arguments(operands: &[String]) -> Result<(&'static Formula, Vec<f64>)> {
    let (name, words) = operands
        .split_first()
        .map_or(("", operands), |(name, words)| (name.as_str(), words));
    let (pairs, problems) = named_values(words);
    let formula = match formula::find(name) {
        Ok(formula) => formula,
        Err(error) => return Err(joined(problems, error)),
    };
    match formula.read_arguments(&pairs) {
        Ok(values) => Error::unless_empty(problems, (formula, values)),
        Err(error) => Err(joined(problems, error)),
    }
}

/// Pairs from `NAME=VALUE` words, and what is wrong with the others.
pub fn named_values(words: &[String]) -> (Vec<(String, String)>, Vec<Problem>) {
    let mut problems = Vec::new();
    let mut pairs = Vec::new();
    // The semicolons of the catalogue's examples may stay where a whole example is pasted.
    for word in words.iter().flat_map(|word| word.split(';')) {
        match word.split_once('=') {
            Some((name, value)) => pairs.push((name.trim().to_owned(), value.trim().to_owned())),
            None if word.trim().is_empty() => {}
            None => problems.push(Problem::new(
                Code::Syntax,
                "argument",
                format!("\"{word}\""),
                "NAME=VALUE",
                "put quotes round a value with blanks: diameter='1/2 in'",
            )),
        }
    }
    (pairs, problems)
}

/// The unit of size one; the first of the list where a kind, money per time, has none.
fn si_unit(kind: Kind) -> &'static Unit {
    static NONE: Unit = Unit {
        symbol: "",
        aliases: &[],
        numerator: "1",
        denominator: "1",
    };
    let list = units(kind);
    list.iter()
        .find(|unit| unit.size() == 1.0)
        .or(list.first())
        .unwrap_or(&NONE)
}

/// Seventeen significant digits, which tell every double from its neighbours; zeros at the end
/// are dropped.
fn seventeen_digits(value: f64) -> String {
    let scientific = format!("{value:.16e}");
    let Some((mantissa, exponent)) = scientific.split_once('e') else {
        return scientific;
    };
    let exponent: i32 = exponent.parse().unwrap_or(0);
    if (-5..17).contains(&exponent) {
        let decimals = usize::try_from(16 - exponent).unwrap_or(0);
        return trimmed(&format!("{value:.decimals$}")).to_owned();
    }
    format!("{}e{exponent}", trimmed(mantissa))
}

fn trimmed(number: &str) -> &str {
    if number.contains('.') {
        number.trim_end_matches('0').trim_end_matches('.')
    } else {
        number
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]
    use super::*;

    #[test]
    fn seventeen_digits_give_the_same_bits_back() {
        let mut x = 1.2345e-320;
        while x < 1e300 {
            for value in [x, -x] {
                let back: f64 = seventeen_digits(value).parse().unwrap();
                assert_eq!(back.to_bits(), value.to_bits(), "{value:?}");
            }
            x *= 7.3;
        }
        assert_eq!(seventeen_digits(0.0), "0");
        assert_eq!(seventeen_digits(400.0), "400");
        assert_eq!(seventeen_digits(0.1), "0.10000000000000001");
        assert_eq!(seventeen_digits(1e17), "1e17");
    }

    #[test]
    fn the_default_unit_is_the_si_unit() {
        for kind in Kind::ALL {
            let unit = si_unit(*kind);
            assert_eq!(unit.size() == 1.0, *kind != Kind::MoneyRate, "{kind:?}");
        }
    }
}
