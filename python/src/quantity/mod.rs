//! `gullet.Quantity`: a number or an array with a unit.

mod arithmetic;
mod build;
mod foreign;
mod json;
mod read;

pub use build::{kind_named, quantity_of};
pub use read::{read, text_of, units_of_argument, units_of_call, wrong_type};

use crate::array::{self, Data};
use crate::errors::raise;
use arithmetic::{compared, product};
use gullet::quantity::{self as core, Converter, Kind, UnitSystem, units};
use gullet::{Code, Problem};
use pyo3::basic::CompareOp;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyBytes, PyTuple};
use read::unitless;
use std::hash::{DefaultHasher, Hash, Hasher};

/// The system of units that is printed in, of this thread or task.
pub fn system(py: Python<'_>) -> PyResult<UnitSystem> {
    let get = py.import("gullet._units")?.getattr("_get")?;
    let inch = get.call0()?.extract::<String>()? == "inch";
    Ok(if inch {
        UnitSystem::Inch
    } else {
        UnitSystem::Metric
    })
}

pub fn escaped(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
}

/// A number or an array with a unit.
///
/// >>> import gullet
/// >>> half = gullet.Quantity("1/2 in")
/// >>> half.to("mm"), gullet.Quantity(0.5, "in") == half
/// (12.7, True)
/// >>> (half / gullet.Quantity("2 s")).kind
/// 'velocity'
/// >>> with gullet.units("inch"):
/// ...     print(half + gullet.Quantity("0.3 mm"))
/// 0.5118 in
///
/// A bare number is no length:
///
/// >>> try:
/// ...     half + 3
/// ... except gullet.GulletError as error:
/// ...     print(error.remedy)
/// write 3 mm or 3 in
#[pyclass(frozen, module = "gullet", name = "Quantity")]
#[derive(Debug, Clone)]
pub struct Quantity {
    pub kind: Kind,
    pub data: Data,
    /// The system it was written in, for errors that name it; none where it was computed.
    pub units: Option<UnitSystem>,
}

impl Quantity {
    /// A computed quantity.
    pub fn of(kind: Kind, data: Data) -> Quantity {
        let units = None;
        Quantity { kind, data, units }
    }

    fn with(&self, data: Data) -> Quantity {
        let (kind, units) = (self.kind, self.units);
        Quantity { kind, data, units }
    }

    pub fn text(&self, system: UnitSystem) -> String {
        let values = match &self.data {
            Data::Scalar(si) => return core::format(self.kind, *si, system),
            Data::Array(values, _) => values,
        };
        // All in the unit of the largest, so that rows compare at a glance.
        let largest = values
            .iter()
            .filter(|value| value.is_finite())
            .fold(0.0, |a: f64, b| a.max(b.abs()));
        let printed = core::format_digits(self.kind, largest, system, 5);
        let symbol = units(self.kind)
            .iter()
            .map(|unit| unit.symbol)
            .filter(|symbol| !symbol.is_empty() && printed.ends_with(&format!(" {symbol}")))
            .max_by_key(|symbol| symbol.len())
            .unwrap_or("");
        let show = |si: &f64| {
            if !si.is_finite() {
                return "nan".to_owned();
            }
            core::format_in(self.kind, *si, symbol, 5)
                .unwrap_or_else(|_| format!("{si:?}"))
                .trim_end_matches(symbol)
                .trim_end()
                .to_owned()
        };
        let mut parts: Vec<String> = values.iter().take(6).map(show).collect();
        if values.len() > 6 {
            parts.push(format!("... {} in all", values.len()));
        }
        format!("[{}] {symbol}", parts.join(", "))
            .trim_end()
            .to_owned()
    }
}

pub fn scalar(kind: Kind, si: f64) -> Quantity {
    Quantity::of(kind, Data::Scalar(si))
}

#[pymethods]
impl Quantity {
    #[classattr]
    fn __array_ufunc__() -> Option<bool> {
        // numpy leaves the operators to this class.
        None
    }

    #[new]
    #[pyo3(signature = (value, unit=None, *, kind=None))]
    fn new(value: &Bound<'_, PyAny>, unit: Option<&str>, kind: Option<&str>) -> PyResult<Quantity> {
        build::build(value, unit, kind).map_err(|fault| fault.raise(value.py()))
    }

    /// Reads what ``to_json`` writes, bit for bit.
    #[staticmethod]
    fn from_json(py: Python<'_>, text: &str) -> PyResult<Quantity> {
        json::read(py, text)
    }

    /// The quantity as JSON, without loss.
    fn to_json(&self) -> String {
        json::write(self)
    }

    /// The number in a unit: a float, or an array of numpy.
    ///
    /// >>> import gullet
    /// >>> gullet.Quantity("90 ft/min").to("m/min")
    /// 27.432
    fn to<'py>(&self, py: Python<'py>, unit: &str) -> PyResult<Bound<'py, PyAny>> {
        if let Data::Scalar(si) = self.data {
            let quantity = core::Quantity {
                kind: self.kind,
                si,
            };
            let value = quantity.to(unit).map_err(|error| raise(py, &error))?;
            return Ok(value.into_pyobject(py)?.into_any());
        }
        let own = core::unit(self.kind, unit).map_err(|error| raise(py, &error))?;
        let converter = Converter::new(own);
        self.data.map(py, |si| converter.from_si(si))?.give(py)
    }

    /// The number in SI units, revolutions a second and radians.
    #[getter]
    fn si<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.data.give(py)
    }

    /// Kind of quantity, one of ``gullet.kinds()``.
    #[getter]
    fn kind(&self) -> &'static str {
        self.kind.name()
    }

    /// Lengths of the axes; empty for a single quantity.
    #[getter]
    fn shape<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(py, self.data.shape())
    }

    fn __len__(&self) -> PyResult<usize> {
        self.data
            .shape()
            .first()
            .copied()
            .ok_or_else(|| PyTypeError::new_err("a single Quantity has no len()"))
    }

    fn __getitem__(&self, py: Python<'_>, index: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        if matches!(self.data, Data::Scalar(_)) {
            return Err(PyTypeError::new_err("a single Quantity has no rows"));
        }
        let part = self.data.give(py)?.get_item(index)?;
        let data = Data::take(&part).map_err(|fault| fault.raise(py))?;
        Ok(self.with(data))
    }

    fn __add__(&self, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        self.sum(other, 1.0)
            .map_err(|fault| fault.raise(other.py()))
    }

    fn __radd__(&self, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        self.__add__(other)
    }

    fn __sub__(&self, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        self.sum(other, -1.0)
            .map_err(|fault| fault.raise(other.py()))
    }

    fn __rsub__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        self.__neg__(py)?.__add__(other)
    }

    fn __mul__<'py>(&self, other: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        product(other, |py, other| self.times(py, &other))
    }

    fn __rmul__<'py>(&self, other: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        product(other, |py, other| other.times(py, self))
    }

    fn __truediv__<'py>(&self, other: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        product(other, |py, other| self.over(py, &other))
    }

    fn __rtruediv__<'py>(&self, other: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        product(other, |py, other| other.over(py, self))
    }

    fn __neg__(&self, py: Python<'_>) -> PyResult<Quantity> {
        Ok(self.with(self.data.map(py, |value| -value)?))
    }

    fn __pos__(&self) -> Quantity {
        self.clone()
    }

    fn __abs__(&self, py: Python<'_>) -> PyResult<Quantity> {
        Ok(self.with(self.data.map(py, f64::abs)?))
    }

    fn __float__(&self, py: Python<'_>) -> PyResult<f64> {
        match self.data {
            Data::Scalar(si) if unitless(self.kind) => Ok(si),
            Data::Scalar(_) => Err(raise(
                py,
                &Problem::new(
                    Code::UnitMissing,
                    "",
                    self.text(UnitSystem::Metric),
                    "a number without a unit",
                    "name the unit: .to(\"mm\")",
                )
                .into(),
            )),
            Data::Array(..) => Err(PyTypeError::new_err("an array is no single number")),
        }
    }

    fn __bool__(&self) -> PyResult<bool> {
        match self.data {
            Data::Scalar(si) => Ok(si != 0.0),
            Data::Array(..) => Err(PyTypeError::new_err(
                "an array is neither true nor false: use .any() or .all() of a comparison",
            )),
        }
    }

    fn __richcmp__<'py>(
        &self,
        other: &Bound<'py, PyAny>,
        op: CompareOp,
    ) -> PyResult<Bound<'py, PyAny>> {
        compared(self, other, op)
    }

    fn __hash__(&self) -> PyResult<u64> {
        match self.data {
            Data::Scalar(si) => {
                let mut hasher = DefaultHasher::new();
                // Equal zeros hash alike whatever their sign.
                (si + 0.0).to_bits().hash(&mut hasher);
                Ok(hasher.finish())
            }
            Data::Array(..) => Err(PyTypeError::new_err("unhashable: a Quantity of an array")),
        }
    }

    fn __copy__(slf: Py<Quantity>) -> Py<Quantity> {
        slf
    }

    fn __deepcopy__(slf: Py<Quantity>, _memo: &Bound<'_, PyAny>) -> Py<Quantity> {
        slf
    }

    fn __reduce__<'py>(
        &self,
        py: Python<'py>,
    ) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let make = py.import("gullet._gullet")?.getattr("_quantity")?;
        let bytes: Vec<u8> = self
            .data
            .values()
            .iter()
            .flat_map(|value| value.to_le_bytes())
            .collect();
        let inch = self.units.map(|units| units == UnitSystem::Inch);
        let shape = match &self.data {
            Data::Scalar(_) => None,
            Data::Array(_, shape) => Some(shape.clone()),
        };
        Ok((
            make,
            (self.kind.name(), PyBytes::new(py, &bytes), shape, inch).into_pyobject(py)?,
        ))
    }

    fn __str__(&self, py: Python<'_>) -> PyResult<String> {
        Ok(self.text(system(py)?))
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        Ok(format!("Quantity('{}')", self.text(system(py)?)))
    }

    fn __format__(&self, py: Python<'_>, spec: &str) -> PyResult<String> {
        if spec.is_empty() {
            return self.__str__(py);
        }
        match self.data {
            Data::Scalar(si) => {
                core::format_in(self.kind, si, spec, 4).map_err(|error| raise(py, &error))
            }
            Data::Array(..) => Err(PyTypeError::new_err(
                "an array is printed without a format: take a row",
            )),
        }
    }

    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        Ok(format!("<span>{}</span>", escaped(&self.text(system(py)?))))
    }
}

#[pyfunction]
#[pyo3(signature = (kind, bytes, shape, inch=None))]
pub fn _quantity(
    py: Python<'_>,
    kind: &str,
    bytes: &Bound<'_, PyBytes>,
    shape: Option<Vec<usize>>,
    inch: Option<bool>,
) -> PyResult<Quantity> {
    let kind = kind_named(kind).map_err(|fault| fault.raise(py))?;
    let values: Vec<f64> = bytes
        .as_bytes()
        .chunks_exact(8)
        .map(|eight| {
            let mut value = [0; 8];
            value.copy_from_slice(eight);
            f64::from_le_bytes(value)
        })
        .collect();
    let fits = array::size(shape.as_deref().unwrap_or(&[]))? == values.len();
    let data = match (shape, values.as_slice()) {
        (None, [si]) => Data::Scalar(*si),
        (Some(shape), _) if fits => Data::Array(values.into(), shape),
        _ => return Err(PyTypeError::new_err("no pickled Quantity")),
    };
    let units = inch.map(|inch| {
        if inch {
            UnitSystem::Inch
        } else {
            UnitSystem::Metric
        }
    });
    Ok(Quantity { kind, data, units })
}

/// The units of a kind, the common ones first.
///
/// >>> import gullet
/// >>> gullet.units_of("velocity")[:2]
/// ['m/min', 'ft/min']
#[pyfunction]
pub fn units_of(py: Python<'_>, kind: &str) -> PyResult<Vec<&'static str>> {
    let kind = kind_named(kind).map_err(|fault| fault.raise(py))?;
    Ok(units(kind).iter().map(|unit| unit.symbol).collect())
}

/// Every kind of quantity.
///
/// >>> import gullet
/// >>> "specific_cutting_force" in gullet.kinds(), "pressure" in gullet.kinds()
/// (False, True)
#[pyfunction]
pub fn kinds() -> Vec<&'static str> {
    Kind::ALL.iter().map(|kind| kind.name()).collect()
}
