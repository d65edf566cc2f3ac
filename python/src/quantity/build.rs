//! A `Quantity` made from text, numbers with a unit, arrays, or objects of a units library.

use super::foreign::{foreign, unit_text};
use super::read::{read, text_of, units_of_argument, wrong_type};
use super::{Quantity, scalar};
use crate::array::Data;
use crate::errors::Fault;
use gullet::quantity::{self as core, Converter, Kind, parse, unit, units};
use gullet::{Code, Problem};
use pyo3::prelude::*;
use pyo3::types::{PyList, PyString};

/// The kind whose unit this text spells: an exact spelling before one that differs in case.
fn kind_of_unit(text: &str) -> Result<Kind, Fault> {
    let exact = Kind::ALL.iter().copied().find(|kind| {
        units(*kind)
            .iter()
            .any(|unit| unit.symbol == text || unit.aliases.contains(&text))
    });
    let known = || {
        Kind::ALL
            .iter()
            .copied()
            .find(|kind| unit(*kind, text).is_ok())
    };
    exact.or_else(known).ok_or_else(|| unknown_unit(text))
}

fn unknown_unit(text: &str) -> Fault {
    let symbols: Vec<&str> = Kind::ALL
        .iter()
        .filter_map(|kind| units(*kind).first())
        .map(|unit| unit.symbol)
        .filter(|symbol| !symbol.is_empty())
        .collect();
    Problem::new(
        Code::UnitUnknown,
        "",
        text.chars().take(80).collect::<String>(),
        symbols.join(", "),
        "write a unit such as \"3 mm\"; gullet.units_of(kind) lists them",
    )
    .into()
}

/// Reads text whose unit tells the kind.
fn parse_any(text: &str) -> Result<Quantity, Fault> {
    if core::parse_number(text).is_ok() {
        parse(Kind::Length, text)?;
    }
    // A unit known to several kinds means the first one: 1/s is a spindle speed, N/mm a line force.
    for kind in Kind::ALL {
        if let Ok(si) = parse(*kind, text) {
            return Ok(scalar(*kind, si));
        }
    }
    match parse(Kind::Length, text) {
        Err(error) if error.code() != Code::UnitUnknown => Err(error.into()),
        _ => Err(unknown_unit(text)),
    }
}

pub fn kind_named(name: &str) -> Result<Kind, Fault> {
    Kind::from_name(name).ok_or_else(|| {
        gullet::error::unknown_name("kind", name, Kind::ALL.iter().map(|kind| kind.name())).into()
    })
}

/// A quantity of anything that tells its own unit.
pub fn quantity_of(value: &Bound<'_, PyAny>) -> Result<Quantity, Fault> {
    build(value, None, None)
}

pub fn build(
    value: &Bound<'_, PyAny>,
    symbol: Option<&str>,
    kind: Option<&str>,
) -> Result<Quantity, Fault> {
    let mut quantity = made(value, symbol, kind)?;
    quantity.units = match symbol {
        Some(symbol) => Some(gullet::formula::units_of(symbol)),
        None => units_of_argument(value),
    };
    Ok(quantity)
}

fn made(
    value: &Bound<'_, PyAny>,
    symbol: Option<&str>,
    kind: Option<&str>,
) -> Result<Quantity, Fault> {
    let kind = kind.map(kind_named).transpose()?;
    if let Some(symbol) = symbol {
        let kind = kind.map_or_else(|| kind_of_unit(symbol), Ok)?;
        let converter = Converter::new(unit(kind, symbol)?);
        // The number alone is read as a ratio, which has no unit.
        let text = value.is_instance_of::<PyString>() || value.is_instance_of::<Quantity>();
        if text {
            return Err(Problem::new(
                Code::WrongType,
                "",
                value
                    .str()?
                    .to_string()
                    .chars()
                    .take(80)
                    .collect::<String>(),
                "a number or an array before the unit",
                format!(
                    "write gullet.Quantity(3, \"{symbol}\") or gullet.Quantity(\"3 {symbol}\")"
                ),
            )
            .into());
        }
        let numbers = read(Kind::Ratio, value)?;
        if let Data::Scalar(number) = numbers {
            let quantity = core::Quantity::new(kind, number, symbol)?;
            return Ok(scalar(kind, quantity.si));
        }
        let data = numbers.map(value.py(), |number| converter.to_si(number))?;
        return Ok(Quantity::of(kind, data));
    }
    if let Some(kind) = kind {
        let data = read(kind, value)?;
        return match data {
            Data::Scalar(si) if !si.is_finite() => Err(not_finite(si)),
            data => Ok(Quantity::of(kind, data)),
        };
    }
    if let Ok(quantity) = value.cast::<Quantity>() {
        return Ok(quantity.get().clone());
    }
    if let Ok(text) = value.cast::<PyString>() {
        return parse_any(&text_of(text)?);
    }
    if value.hasattr("m_as")? && value.hasattr("units")? {
        let name = unit_text(value)?;
        if let Ok(kind) = kind_of_unit(&name)
            && let Ok(data) = foreign(kind, value)
        {
            return Ok(Quantity::of(kind, data));
        }
        for kind in Kind::ALL {
            if let Ok(data) = foreign(*kind, value) {
                return Ok(Quantity::of(*kind, data));
            }
        }
        return Err(unknown_unit(&name));
    }
    if let Ok(items) = value.cast::<PyList>()
        && let Some(first) = items.iter().next()
        && (first.is_instance_of::<PyString>() || first.is_instance_of::<Quantity>())
    {
        let kind = build(&first, None, None)?.kind;
        let data = read(kind, value)?;
        return Ok(Quantity::of(kind, data));
    }
    // No kind: the error of a length shows how a unit is written.
    read(Kind::Length, value)?;
    Err(wrong_type(value, Kind::Length))
}

fn not_finite(si: f64) -> Fault {
    Problem::new(
        Code::NotFinite,
        "",
        format!("{si}"),
        "a finite number",
        "check where the number comes from",
    )
    .into()
}
