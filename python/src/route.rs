//! Routes: several clampings of one part, with their cards.

use crate::array::Data;
use crate::errors::{Fault, raise};
use crate::model::{Library, Tables};
use crate::quantity::{self, Quantity, escaped, scalar};
use gullet::plan::{Face, JobFile, JobForm, Route as CoreRoute, RouteCard, SquaredBlock};
use gullet::quantity::{Kind, si};
use pyo3::prelude::*;
use std::sync::Arc;

/// What a route was read from, and what was measured since.
#[derive(Clone)]
struct Given {
    text: String,
    toml: bool,
    tables: Tables,
    readings: Vec<(Face, f64)>,
}

/// One length.
fn length(size: &Bound<'_, PyAny>) -> Result<f64, Fault> {
    match quantity::read(Kind::Length, size)? {
        Data::Scalar(si) => Ok(si),
        Data::Array(..) => Err(quantity::wrong_type(size, Kind::Length)),
    }
}

/// The route of a block that is squared: order, datums, parallels, cards, time and cost.
///
/// >>> import gullet
/// >>> route = gullet.route({
/// ...     "route": "squared-block", "units": "metric",
/// ...     "material": {"id": "1018cd"}, "machine": {"base": "manual-knee-mill"},
/// ...     "blank": {"length": "84 mm", "width": "53 mm", "height": "29 mm", "sawn": ["left", "right"]},
/// ...     "part": {"length": "80 mm", "width": "50 mm", "height": "26 mm", "tolerance": "0.1 mm"},
/// ...     "cutter": {"form": "square", "material": "HSS", "diameter": "20 mm", "teeth": 4,
/// ...                "flute_length": "38 mm", "stick_out": "45 mm"},
/// ...     "hold": {"clamping_force": "14 kN", "jaw_height": "40 mm", "round_bar": "12 mm",
/// ...              "parallels": ["10 mm", "18 mm", "22 mm", "26 mm"]},
/// ... })
/// >>> route.faces
/// ['top', 'front', 'back', 'bottom', 'left', 'right']
/// >>> route.measured("top", "27.2 mm").faces
/// ['front', 'back', 'bottom', 'left', 'right']
#[pyclass(frozen, module = "gullet", name = "Route")]
pub struct Route {
    card: Arc<RouteCard>,
    given: Given,
}

impl Route {
    fn made(py: Python<'_>, given: Given) -> PyResult<Route> {
        let card = py.detach(|| {
            let library = given.tables.get();
            let block = if given.toml {
                SquaredBlock::from_toml(&given.text, library)?
            } else {
                SquaredBlock::from_json(&given.text, library)?
            };
            let mut route = CoreRoute::new(block, library)?;
            for (face, size) in &given.readings {
                route = route.measured(*face, si(*size), library)?;
            }
            RouteCard::of(route)
        });
        let card = Arc::new(card.map_err(|error| raise(py, &error))?);
        Ok(Route { card, given })
    }
}

#[pymethods]
impl Route {
    /// Reads a route file in TOML.
    #[staticmethod]
    #[pyo3(signature = (text, library=None))]
    fn from_toml(
        py: Python<'_>,
        text: String,
        library: Option<&Bound<'_, Library>>,
    ) -> PyResult<Route> {
        Route::read(py, text, true, library)
    }

    /// Reads a route file in JSON.
    #[staticmethod]
    #[pyo3(signature = (text, library=None))]
    fn from_json(
        py: Python<'_>,
        text: String,
        library: Option<&Bound<'_, Library>>,
    ) -> PyResult<Route> {
        Route::read(py, text, false, library)
    }

    /// What is left to do after the size across a face was measured.
    fn measured(&self, py: Python<'_>, face: &str, size: &Bound<'_, PyAny>) -> PyResult<Route> {
        let face = Face::from_name(face).map_err(|error| raise(py, &error))?;
        let size = length(size).map_err(|fault| fault.raise(py))?;
        let mut given = self.given.clone();
        given.readings.push((face, size));
        let library = given.tables.get();
        let route = py.detach(|| {
            let route = self.card.route.measured(face, si(size), library)?;
            RouteCard::of(route)
        });
        let card = Arc::new(route.map_err(|error| raise(py, &error))?);
        Ok(Route { card, given })
    }

    /// Title of the route.
    #[getter]
    fn title(&self) -> &str {
        &self.card.route.block.title
    }

    /// Faces that are still to be cut, in order.
    #[getter]
    fn faces(&self) -> Vec<&'static str> {
        let clampings = self.card.route.clampings.iter();
        clampings.map(|clamping| clamping.seat.cut.name()).collect()
    }

    /// Time of what is still to be done.
    #[getter]
    fn time(&self) -> Quantity {
        scalar(Kind::Time, self.card.totals.time.total().value)
    }

    /// The summary page as text.
    #[getter]
    fn summary(&self) -> String {
        self.card.summary()
    }

    /// The summary and the card of every clamping as text.
    #[getter]
    fn text(&self) -> String {
        self.card.text()
    }

    /// The same as printable sheets of one page each.
    #[getter]
    fn html(&self) -> String {
        self.card.html()
    }

    /// The sheets with every worked step.
    #[getter]
    fn html_with_steps(&self) -> String {
        self.card.html_with_steps()
    }

    /// Summary and cards as JSON.
    fn to_json(&self) -> String {
        self.card.json().to_string()
    }

    fn __str__(&self) -> String {
        self.card.text()
    }

    fn __repr__(&self) -> String {
        format!(
            "<Route {}: {} clampings>",
            self.card.route.block.title,
            self.card.route.clampings.len()
        )
    }

    fn _repr_html_(&self) -> String {
        format!("<pre>{}</pre>", escaped(&self.card.summary()))
    }

    fn __eq__(&self, other: &Route) -> bool {
        self.card.route.block == other.card.route.block
            && self.given.readings == other.given.readings
            && self.given.tables.same(&other.given.tables)
    }

    fn __hash__(&self) -> u64 {
        use std::hash::{DefaultHasher, Hash, Hasher};
        let mut hasher = DefaultHasher::new();
        self.card.route.block.title.hash(&mut hasher);
        hasher.finish()
    }

    #[allow(clippy::type_complexity)]
    fn __reduce__(
        &self,
        py: Python<'_>,
    ) -> PyResult<(Py<PyAny>, (String, bool, Library, Vec<(String, f64)>))> {
        let make = py.import("gullet._gullet")?.getattr("_route")?.unbind();
        let given = &self.given;
        let readings = given.readings.iter();
        let readings = readings.map(|(face, size)| (face.name().to_owned(), *size));
        Ok((
            make,
            (
                given.text.clone(),
                given.toml,
                given.tables.to_py(),
                readings.collect(),
            ),
        ))
    }
}

impl Route {
    fn read(
        py: Python<'_>,
        text: String,
        toml: bool,
        library: Option<&Bound<'_, Library>>,
    ) -> PyResult<Route> {
        let given = Given {
            text,
            toml,
            tables: Tables::of(library),
            readings: Vec::new(),
        };
        Route::made(py, given)
    }
}

#[pyfunction]
pub fn _route(
    py: Python<'_>,
    text: String,
    toml: bool,
    library: &Bound<'_, Library>,
    readings: Vec<(String, f64)>,
) -> PyResult<Route> {
    let faces: gullet::Result<Vec<(Face, f64)>> = readings
        .into_iter()
        .map(|(face, size)| Ok((Face::from_name(&face)?, size)))
        .collect();
    let given = Given {
        text,
        toml,
        tables: Tables::of(Some(library)),
        readings: faces.map_err(|error| raise(py, &error))?,
    };
    Route::made(py, given)
}

/// What a text describes: a job, a squared block or a part.
#[pyfunction]
pub fn _form(text: &str, in_json: bool) -> &'static str {
    match JobFile::form(text, in_json) {
        JobForm::Job => "job",
        JobForm::SquaredBlock => "squared-block",
        JobForm::Part => "part",
    }
}

/// The JSON Schema of a route file.
#[pyfunction]
pub fn route_schema() -> String {
    gullet::plan::route_schema()
}

/// The JSON Schema of the file of a part.
#[pyfunction]
pub fn part_schema() -> String {
    gullet::plan::part_schema()
}
