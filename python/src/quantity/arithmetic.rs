//! Sums, products and comparisons of quantities.

use super::{Quantity, read};
use crate::array::Data;
use crate::errors::Fault;
use gullet::quantity::{self as core, Kind, UnitSystem, interchangeable};
use gullet::{Code, Problem};
use pyo3::basic::CompareOp;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyString};

/// A result whose overflow is an error and not an infinity.
fn checked(
    kind: Kind,
    data: Data,
    operands: &[&Data],
    units: Option<UnitSystem>,
) -> Result<Quantity, Fault> {
    let finite = |data: &&Data| data.values().iter().all(|value| value.is_finite());
    if !finite(&&data) && operands.iter().all(finite) {
        return Err(Problem::new(
            Code::ResultOverflow,
            "",
            "",
            "operands whose result a double can hold",
            "check for a division by zero and the size of the operands",
        )
        .into());
    }
    Ok(Quantity { kind, data, units })
}

/// The other operand of a product: a quantity, or numbers without a unit.
fn factor(any: &Bound<'_, PyAny>) -> Result<Option<Quantity>, Fault> {
    if let Ok(quantity) = any.cast::<Quantity>() {
        return Ok(Some(quantity.get().clone()));
    }
    if any.is_instance_of::<PyString>() || any.hasattr("m_as")? {
        return Ok(None);
    }
    let data = read(Kind::Ratio, any)?;
    Ok(Some(Quantity::of(Kind::Ratio, data)))
}

impl Quantity {
    fn unknown_kind(&self, sign: &str, other: &Quantity) -> Fault {
        let turning = [self.kind, other.kind]
            .iter()
            .any(|kind| matches!(kind, Kind::RotationalSpeed | Kind::Turns | Kind::Angle));
        Problem::new(
            Code::Inconsistent,
            "",
            format!("{} {sign} {}", self.kind.name(), other.kind.name()),
            "operands whose result is one of gullet.kinds()",
            if turning {
                "revolutions and angles carry a 2 pi: use the formula in gullet.formula"
            } else {
                "use a formula in gullet.formula, or numbers from .to(unit)"
            },
        )
        .into()
    }

    pub fn times(&self, py: Python<'_>, other: &Quantity) -> Result<Quantity, Fault> {
        let kind =
            core::product(self.kind, other.kind).ok_or_else(|| self.unknown_kind("*", other))?;
        let data = self.data.zip(py, &other.data, |a, b| a * b)?;
        let units = self.units.or(other.units);
        checked(kind, data, &[&self.data, &other.data], units)
    }

    pub fn over(&self, py: Python<'_>, other: &Quantity) -> Result<Quantity, Fault> {
        let kind =
            core::quotient(self.kind, other.kind).ok_or_else(|| self.unknown_kind("/", other))?;
        let data = self.data.zip(py, &other.data, |a, b| a / b)?;
        let units = self.units.or(other.units);
        checked(kind, data, &[&self.data, &other.data], units)
    }

    pub fn sum(&self, other: &Bound<'_, PyAny>, sign: f64) -> Result<Quantity, Fault> {
        let py = other.py();
        let other = read(self.kind, other)?;
        let data = self.data.zip(py, &other, |a, b| a + sign * b)?;
        checked(self.kind, data, &[&self.data, &other], self.units)
    }
}

pub fn product<'py>(
    other: &Bound<'py, PyAny>,
    combine: impl FnOnce(Python<'py>, Quantity) -> Result<Quantity, Fault>,
) -> PyResult<Bound<'py, PyAny>> {
    let py = other.py();
    let answer = factor(other).and_then(|factor| factor.map(|own| combine(py, own)).transpose());
    match answer.map_err(|fault| fault.raise(py))? {
        Some(quantity) => Ok(Bound::new(py, quantity)?.into_any()),
        None => Ok(py.NotImplemented().into_bound(py)),
    }
}

pub fn compared<'py>(
    own: &Quantity,
    other: &Bound<'py, PyAny>,
    op: CompareOp,
) -> PyResult<Bound<'py, PyAny>> {
    let py = other.py();
    let equality = matches!(op, CompareOp::Eq | CompareOp::Ne);
    let comparable = match other.cast::<Quantity>() {
        Ok(quantity) => !equality || interchangeable(own.kind, quantity.get().kind),
        Err(_) => !equality,
    };
    if !comparable {
        return Ok(py.NotImplemented().into_bound(py));
    }
    let other = read(own.kind, other).map_err(|fault| fault.raise(py))?;
    let holds = |a: f64, b: f64| {
        f64::from(u8::from(match op {
            CompareOp::Lt => a < b,
            CompareOp::Le => a <= b,
            CompareOp::Eq => a == b,
            CompareOp::Ne => a != b,
            CompareOp::Gt => a > b,
            CompareOp::Ge => a >= b,
        }))
    };
    let answer = own
        .data
        .zip(py, &other, holds)
        .map_err(|fault| fault.raise(py))?;
    match answer {
        Data::Scalar(value) => Ok(PyBool::new(py, value != 0.0).to_owned().into_any()),
        array => array.give(py)?.call_method1("astype", ("bool",)),
    }
}
