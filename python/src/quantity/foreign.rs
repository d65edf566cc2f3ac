//! Quantities of a units library, by their look alone.

use crate::array::Data;
use crate::errors::Fault;
use gullet::quantity::{Converter, Kind, unit, units};
use gullet::{Code, Problem};
use pyo3::prelude::*;

/// A quantity of a units library: its number in our own unit where both mean the same by the
/// unit's name, else as the library converts it to SI.
pub fn foreign(kind: Kind, any: &Bound<'_, PyAny>) -> Result<Data, Fault> {
    let py = any.py();
    let refused = || -> Fault {
        let shown = any.str().map_or_else(|_| "?".to_owned(), |s| s.to_string());
        let admissible: Vec<&str> = units(kind).iter().map(|unit| unit.symbol).collect();
        Problem::new(
            Code::UnitUnknown,
            "",
            shown.chars().take(80).collect::<String>(),
            admissible.join(", "),
            if kind == Kind::RotationalSpeed {
                "give revolutions a time, such as rpm: 1/s or rad/s may mean either".to_owned()
            } else {
                format!("give a {}", kind.name().replace('_', " "))
            },
        )
        .into()
    };
    let name = unit_text(any)?;
    let own = unit(kind, &name).ok();
    let magnitude = || -> Result<Data, Fault> { Data::take(&any.getattr("magnitude")?) };
    let in_own = |own| -> Result<Data, Fault> {
        let converter = Converter::new(own);
        Ok(magnitude()?.map(py, |value| converter.to_si(value))?)
    };
    if kind == Kind::RotationalSpeed {
        // Libraries take a revolution for 2 pi; only a name that counts revolutions is safe.
        return match own {
            Some(own) => in_own(own),
            None => Err(refused()),
        };
    }
    let si = units(kind)
        .iter()
        .find(|unit| unit.size() == 1.0)
        .map(|unit| library_spelling(unit.symbol));
    let Some(si) = si else { return Err(refused()) };
    let converted = match any.call_method1("m_as", (si,)) {
        Ok(value) => Data::take(&value)?,
        Err(error) if error.is_instance_of::<pyo3::exceptions::PyException>(py) => {
            return Err(refused());
        }
        Err(error) => return Err(error.into()),
    };
    if let Some(own) = own {
        let exact = in_own(own)?;
        let close = exact
            .values()
            .iter()
            .zip(converted.values())
            .all(|(a, b)| (a - b).abs() <= 1e-6 * b.abs() || !b.is_finite());
        if close {
            return Ok(exact);
        }
    }
    Ok(converted)
}

/// The short spelling of a library quantity's unit.
pub fn unit_text(any: &Bound<'_, PyAny>) -> PyResult<String> {
    let py = any.py();
    let units = any.getattr("units")?;
    match py
        .import("builtins")?
        .getattr("format")?
        .call1((&units, "~C"))
    {
        Ok(text) => Ok(text.str()?.to_string()),
        Err(_) => Ok(units.str()?.to_string()),
    }
}

/// `N.m` and `m3/s` as libraries write them: `N*m`, `m**3/s`; a pure number as the empty text.
fn library_spelling(symbol: &str) -> String {
    let mut text = String::new();
    for c in symbol.chars() {
        match c {
            '.' => text.push('*'),
            c if c.is_ascii_digit() => {
                text.push_str("**");
                text.push(c);
            }
            c => text.push(c),
        }
    }
    text
}
