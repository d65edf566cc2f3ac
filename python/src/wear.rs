//! The life of an edge by Taylor's law.

use crate::array::Data;
use crate::errors::{Fault, of_problems, raise, warn};
use crate::quantity::{Quantity, read, scalar, units_of_call};
use gullet::error::Warning;
use gullet::quantity::{Kind, Length, Time, UnitSystem, Velocity, si};
use gullet::wear::{self as core, Influence, WearCriterion};
use gullet::{Code, Problem};
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// Arguments read one after another, every problem kept for one error.
pub struct Reading<'py> {
    py: Python<'py>,
    problems: Vec<Problem>,
}

impl<'py> Reading<'py> {
    pub fn new(py: Python<'py>) -> Reading<'py> {
        let problems = Vec::new();
        Reading { py, problems }
    }

    /// The values of an argument; none where it was refused.
    pub fn values(&mut self, name: &str, kind: Kind, any: &Bound<'_, PyAny>) -> PyResult<Vec<f64>> {
        match read(kind, any) {
            Ok(data) => Ok(data.values().to_vec()),
            Err(fault) => fault.collect(name, &mut self.problems).map(|()| Vec::new()),
        }
    }

    /// One value of an argument that may be left out; none where it was refused.
    pub fn one(
        &mut self,
        name: &str,
        kind: Kind,
        any: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Option<f64>> {
        let Some(any) = any else { return Ok(None) };
        match read(kind, any) {
            Ok(Data::Scalar(value)) => return Ok(Some(value)),
            Ok(Data::Array(..)) => self.problems.push(Problem::new(
                Code::WrongType,
                name,
                "several values",
                "one value",
                "call once for each",
            )),
            Err(fault) => fault.collect(name, &mut self.problems)?,
        }
        Ok(None)
    }

    /// The lower and the higher end of a range.
    fn range(
        &mut self,
        name: &str,
        kind: Kind,
        any: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Option<(f64, f64)>> {
        let Some(any) = any else { return Ok(None) };
        let before = self.problems.len();
        match self.values(name, kind, any)?.as_slice() {
            [low, high] if 0.0 < *low && low <= high => return Ok(Some((*low, *high))),
            _ if self.problems.len() > before => {}
            _ => self.problems.push(Problem::new(
                Code::OutOfRange,
                name,
                any.str()?.to_string_lossy(),
                "two values above zero, the lower one first",
                "give the ends of what was tested",
            )),
        }
        Ok(None)
    }

    /// An error with every problem, if there is one.
    pub fn end(self) -> PyResult<()> {
        if self.problems.is_empty() {
            return Ok(());
        }
        Err(of_problems(self.py, &self.problems, None))
    }
}

/// Doubts as one warning.
pub fn tell(py: Python<'_>, doubts: &[Warning]) -> PyResult<()> {
    let texts: Vec<String> = doubts.iter().map(|doubt| doubt.text.clone()).collect();
    warn(py, &texts)
}

/// The life of a cutting edge by Taylor's law, with what it was found for.
///
/// ``v T^n (f/f_0)^a (d/d_0)^b = C``: ``taylor_speed`` is C, the cutting speed for a life of one
/// minute at the reference feed and depth. Speeds, feeds and depths that were not tested are
/// told as a warning. A law of a fit gives median lives.
///
/// >>> import gullet
/// >>> law = gullet.ToolLife(taylor_speed="400 m/min", taylor_exponent=0.25,
/// ...                       tested_speeds=["80 m/min", "200 m/min"], criterion="ISO 3685 VB 0.3 mm")
/// >>> law.life(cutting_speed="100 m/min").to("min")
/// 256.0
/// >>> law.parts(cutting_speed="100 m/min", cutting_time="10 min")
/// 25
/// >>> print(law.speed(tool_life="16 min"))
/// 200 m/min
#[pyclass(frozen, eq, module = "gullet", name = "ToolLife")]
#[derive(Clone, PartialEq)]
pub struct ToolLife {
    pub law: core::ToolLife,
}

/// What the methods are asked for, in SI units.
struct Asked {
    value: f64,
    feed: Option<Length>,
    depth: Option<Length>,
}

impl ToolLife {
    fn asked<'py>(
        py: Python<'py>,
        (name, kind, any): (&str, Kind, &Bound<'py, PyAny>),
        feed: Option<&Bound<'py, PyAny>>,
        depth: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Asked> {
        let mut reading = Reading::new(py);
        let value = reading.one(name, kind, Some(any))?;
        let feed = reading.one("feed_per_rev", Kind::Length, feed)?;
        let depth = reading.one("depth_of_cut", Kind::Length, depth)?;
        reading.end()?;
        Ok(Asked {
            value: value.unwrap_or(f64::NAN),
            feed: feed.map(si),
            depth: depth.map(si),
        })
    }

    /// The law with doubts told in the units of the call.
    fn in_units<'py>(
        &self,
        py: Python<'py>,
        arguments: impl IntoIterator<Item = Bound<'py, PyAny>>,
    ) -> core::ToolLife {
        let mut law = self.law.clone();
        law.units = units_of_call(py, arguments);
        law
    }

    fn edge<'py>(
        &self,
        py: Python<'py>,
        cutting_speed: &Bound<'py, PyAny>,
        feed: Option<&Bound<'py, PyAny>>,
        depth: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<core::EdgeLife> {
        let asked = Self::asked(
            py,
            ("cutting_speed", Kind::Velocity, cutting_speed),
            feed,
            depth,
        )?;
        let edge = self
            .in_units(py, [cutting_speed.clone()])
            .life(si(asked.value), asked.feed, asked.depth)
            .map_err(|error| raise(py, &error))?;
        tell(py, &edge.warnings)?;
        Ok(edge)
    }
}

fn length(value: Option<Length>) -> Option<Quantity> {
    value.map(|value| scalar(Kind::Length, value.value))
}

fn lengths(range: Option<(Length, Length)>) -> Option<(Quantity, Quantity)> {
    let (low, high) = range?;
    Some((
        scalar(Kind::Length, low.value),
        scalar(Kind::Length, high.value),
    ))
}

#[pymethods]
impl ToolLife {
    #[new]
    #[pyo3(signature = (*, taylor_speed, taylor_exponent, unit_life=None, feed_exponent=None, reference_feed=None,
        tested_feeds=None, depth_exponent=None, reference_depth=None, tested_depths=None, tested_speeds=None,
        criterion="", source=""))]
    #[allow(clippy::too_many_arguments)]
    fn new(
        py: Python<'_>,
        taylor_speed: &Bound<'_, PyAny>,
        taylor_exponent: &Bound<'_, PyAny>,
        unit_life: Option<&Bound<'_, PyAny>>,
        feed_exponent: Option<&Bound<'_, PyAny>>,
        reference_feed: Option<&Bound<'_, PyAny>>,
        tested_feeds: Option<&Bound<'_, PyAny>>,
        depth_exponent: Option<&Bound<'_, PyAny>>,
        reference_depth: Option<&Bound<'_, PyAny>>,
        tested_depths: Option<&Bound<'_, PyAny>>,
        tested_speeds: Option<&Bound<'_, PyAny>>,
        criterion: &str,
        source: &str,
    ) -> PyResult<ToolLife> {
        let mut reading = Reading::new(py);
        let speed = reading.one("taylor_speed", Kind::Velocity, Some(taylor_speed))?;
        let exponent = reading.one("taylor_exponent", Kind::Ratio, Some(taylor_exponent))?;
        let life = reading.one("unit_life", Kind::Time, unit_life)?;
        let mut influence = |name: &str, given: [Option<&Bound<'_, PyAny>>; 3]| {
            let [exponent, reference, tested] = given;
            let pair = reading.range(&format!("tested_{name}s"), Kind::Length, tested)?;
            PyResult::Ok(Influence {
                exponent: reading
                    .one(&format!("{name}_exponent"), Kind::Ratio, exponent)?
                    .map(si),
                reference: reading
                    .one(&format!("reference_{name}"), Kind::Length, reference)?
                    .map(si),
                tested: pair.map(|(low, high)| (si(low), si(high))),
            })
        };
        let feed = influence("feed", [feed_exponent, reference_feed, tested_feeds])?;
        let depth = influence("depth", [depth_exponent, reference_depth, tested_depths])?;
        let tested = reading.range("tested_speeds", Kind::Velocity, tested_speeds)?;
        reading.end()?;
        let (Some(speed), Some(exponent)) = (speed, exponent) else {
            return Err(pyo3::exceptions::PyTypeError::new_err(
                "taylor_speed and taylor_exponent",
            ));
        };
        let (speed, exponent) = (si(speed), si(exponent));
        let made = match life {
            Some(life) => core::ToolLife::through(speed, si(life), exponent),
            None => core::ToolLife::new(speed, exponent),
        };
        let mut law = made.map_err(|error| raise(py, &error))?;
        law.feed = feed;
        law.depth = depth;
        law.tested_speeds = tested.map(|(low, high)| (si(low), si(high)));
        law.criterion = WearCriterion::read(criterion);
        source.clone_into(&mut law.source);
        Ok(ToolLife { law })
    }

    /// The life in the cut at a speed, feed and depth.
    #[pyo3(signature = (*, cutting_speed, feed_per_rev=None, depth_of_cut=None))]
    fn life<'py>(
        &self,
        py: Python<'py>,
        cutting_speed: &Bound<'py, PyAny>,
        feed_per_rev: Option<&Bound<'py, PyAny>>,
        depth_of_cut: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Quantity> {
        let edge = self.edge(py, cutting_speed, feed_per_rev, depth_of_cut)?;
        Ok(scalar(Kind::Time, edge.time.value))
    }

    /// Whole parts that an edge makes, each with this time in the cut.
    #[pyo3(signature = (*, cutting_speed, cutting_time, feed_per_rev=None, depth_of_cut=None))]
    fn parts<'py>(
        &self,
        py: Python<'py>,
        cutting_speed: &Bound<'py, PyAny>,
        cutting_time: &Bound<'py, PyAny>,
        feed_per_rev: Option<&Bound<'py, PyAny>>,
        depth_of_cut: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<u64> {
        let time: Time = match read(Kind::Time, cutting_time) {
            Ok(Data::Scalar(time)) => si(time),
            Ok(_) => si(f64::NAN),
            Err(fault) => return Err(fault.raise(py)),
        };
        let edge = self.edge(py, cutting_speed, feed_per_rev, depth_of_cut)?;
        edge.parts(time).map_err(|error| raise(py, &error))
    }

    /// The cutting speed for a life, at a feed and depth.
    #[pyo3(signature = (*, tool_life, feed_per_rev=None, depth_of_cut=None))]
    fn speed<'py>(
        &self,
        py: Python<'py>,
        tool_life: &Bound<'py, PyAny>,
        feed_per_rev: Option<&Bound<'py, PyAny>>,
        depth_of_cut: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Quantity> {
        let life = ("tool_life", Kind::Time, tool_life);
        let asked = Self::asked(py, life, feed_per_rev, depth_of_cut)?;
        let found = self
            .in_units(py, feed_per_rev.into_iter().cloned())
            .speed(si(asked.value), asked.feed, asked.depth)
            .map_err(|error| raise(py, &error))?;
        tell(py, &found.warnings)?;
        Ok(scalar(Kind::Velocity, found.speed.value))
    }

    /// The law for another width of flank wear, which grows in proportion to time.
    fn for_criterion(&self, py: Python<'_>, criterion: &str) -> PyResult<ToolLife> {
        let law = self.law.for_criterion(WearCriterion::read(criterion));
        law.map(|law| ToolLife { law })
            .map_err(|error| raise(py, &error))
    }

    /// C, the cutting speed for a life of one minute at the reference feed and depth.
    #[getter]
    fn taylor_speed(&self) -> Quantity {
        scalar(Kind::Velocity, self.law.taylor_speed.value)
    }

    /// n, above 0 and below 1.
    #[getter]
    fn taylor_exponent(&self) -> f64 {
        self.law.taylor_exponent.value
    }

    /// a, the exponent of the feed.
    #[getter]
    fn feed_exponent(&self) -> Option<f64> {
        self.law.feed.exponent.map(|value| value.value)
    }

    /// f_0, the feed that C is for.
    #[getter]
    fn reference_feed(&self) -> Option<Quantity> {
        length(self.law.feed.reference)
    }

    /// Lowest and highest feed of the tests.
    #[getter]
    fn tested_feeds(&self) -> Option<(Quantity, Quantity)> {
        lengths(self.law.feed.tested)
    }

    /// b, the exponent of the depth of cut.
    #[getter]
    fn depth_exponent(&self) -> Option<f64> {
        self.law.depth.exponent.map(|value| value.value)
    }

    /// d_0, the depth of cut that C is for.
    #[getter]
    fn reference_depth(&self) -> Option<Quantity> {
        length(self.law.depth.reference)
    }

    /// Lowest and highest depth of cut of the tests.
    #[getter]
    fn tested_depths(&self) -> Option<(Quantity, Quantity)> {
        lengths(self.law.depth.tested)
    }

    /// Lowest and highest cutting speed of the tests.
    #[getter]
    fn tested_speeds(&self) -> Option<(Quantity, Quantity)> {
        let show = |speed: Velocity| scalar(Kind::Velocity, speed.value);
        let (low, high) = self.law.tested_speeds?;
        Some((show(low), show(high)))
    }

    /// When an edge counts as worn; empty where not stated.
    #[getter]
    fn criterion(&self) -> String {
        self.law.criterion.to_string()
    }

    /// Where the constants come from.
    #[getter]
    fn source(&self) -> &str {
        &self.law.source
    }

    fn __getnewargs_ex__<'py>(&self, py: Python<'py>) -> PyResult<((), Bound<'py, PyDict>)> {
        let given = PyDict::new(py);
        given.set_item("taylor_speed", self.taylor_speed())?;
        given.set_item("taylor_exponent", self.taylor_exponent())?;
        given.set_item("feed_exponent", self.feed_exponent())?;
        given.set_item("reference_feed", self.reference_feed())?;
        given.set_item("tested_feeds", self.tested_feeds())?;
        given.set_item("depth_exponent", self.depth_exponent())?;
        given.set_item("reference_depth", self.reference_depth())?;
        given.set_item("tested_depths", self.tested_depths())?;
        given.set_item("tested_speeds", self.tested_speeds())?;
        given.set_item("criterion", self.criterion())?;
        given.set_item("source", self.source())?;
        Ok(((), given))
    }

    fn __repr__(&self) -> String {
        let speed = self.taylor_speed().text(UnitSystem::Metric);
        let mut text = format!(
            "ToolLife(taylor_speed='{speed}', taylor_exponent={}",
            self.taylor_exponent()
        );
        for (name, exponent) in [
            ("feed", self.feed_exponent()),
            ("depth", self.depth_exponent()),
        ] {
            if let Some(exponent) = exponent {
                text += &format!(", {name}_exponent={exponent}");
            }
        }
        text + ")"
    }
}

/// A name of a tool material, or the problem that lists those there are.
pub fn tool_named(text: &str) -> Result<gullet::table::ToolMaterial, Fault> {
    use gullet::table::ToolMaterial;
    ToolMaterial::parse(text).ok_or_else(|| {
        let names = ToolMaterial::ALL.iter().map(|tool| tool.name());
        gullet::error::unknown_name("tool_material", text, names).into()
    })
}
