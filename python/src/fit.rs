//! Laws fitted to a shop's own readings.

use crate::errors::raise;
use crate::model::{Library, Tables, told};
use crate::quantity::{Quantity, scalar, units_of_call};
use crate::wear::{Reading, ToolLife, tell, tool_named};
use gullet::fit::{self as core, FitOptions, Regression};
use gullet::listing::{Cell, Column};
use gullet::quantity::{Kind, Length, LineForce, Time, UnitSystem, Velocity, si};
use gullet::table::Overlay;
use gullet::wear::WearCriterion;
use pyo3::prelude::*;
use pyo3::types::PyDict;

type CoefficientRow = (&'static str, f64, f64, f64, f64, f64);

fn coefficients(regression: &Regression) -> Vec<CoefficientRow> {
    let rows = regression.coefficients.iter();
    rows.map(|c| (c.name, c.value, c.standard_error, c.low, c.high, c.p_value))
        .collect()
}

fn values(
    py: Python<'_>,
    fields: impl Iterator<Item = (Column, Cell)>,
) -> PyResult<Bound<'_, PyDict>> {
    let row = PyDict::new(py);
    for (column, cell) in fields {
        row.set_item(column.name, told(py, column.form, cell)?)?;
    }
    Ok(row)
}

/// Sources, criterion and confidence as every fit takes them.
fn options<'py>(
    reading: &mut Reading<'py>,
    confidence: Option<&Bound<'py, PyAny>>,
    source: Option<&str>,
    criterion: Option<&str>,
) -> PyResult<FitOptions> {
    let mut options = FitOptions::default();
    if let Some(confidence) = reading.one("confidence", Kind::Ratio, confidence)? {
        options.confidence = si(confidence);
    }
    if let Some(source) = source {
        source.clone_into(&mut options.source);
    }
    options.criterion = WearCriterion::read(criterion.unwrap_or(""));
    Ok(options)
}

/// Taylor's law fitted to readings: exponents and C with the limits of their confidence, the
/// regression behind them, and the law itself. Made by ``fit_taylor`` and ``fit_extended_taylor``.
#[pyclass(frozen, eq, module = "gullet", name = "TaylorFit")]
#[derive(PartialEq)]
pub struct TaylorFit {
    fit: core::TaylorFit,
}

#[pymethods]
impl TaylorFit {
    /// The law, which gives median lives: half of all edges last longer.
    #[getter]
    fn law(&self) -> ToolLife {
        let mut law = self.fit.law.clone();
        // Each call says in which units it is told.
        law.units = UnitSystem::Metric;
        ToolLife { law }
    }

    /// Everything the fit tells, by name.
    #[getter]
    fn values<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        values(py, self.fit.fields())
    }

    /// The constant and the slopes of the regression of ln(T/1 min) on ln(v/1 m/min), ln(f/1 mm) and
    /// ln(d/1 mm): name, value, standard error, limits, p value.
    #[getter]
    fn coefficients(&self) -> Vec<CoefficientRow> {
        coefficients(&self.fit.regression)
    }

    /// Logarithm of each life less the fitted one.
    #[getter]
    fn residuals(&self) -> Vec<f64> {
        self.fit.regression.residuals.clone()
    }

    /// Doubts about the fit.
    #[getter]
    fn warnings(&self) -> Vec<String> {
        self.fit
            .warnings
            .iter()
            .map(|doubt| doubt.text.clone())
            .collect()
    }

    /// The life at a speed, feed and depth: ``median``, ``mean``, and the limits ``low`` and ``high``
    /// of a single edge.
    #[pyo3(signature = (*, cutting_speed, feed_per_rev=None, depth_of_cut=None))]
    fn predict<'py>(
        &self,
        py: Python<'py>,
        cutting_speed: &Bound<'py, PyAny>,
        feed_per_rev: Option<&Bound<'py, PyAny>>,
        depth_of_cut: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Bound<'py, PyDict>> {
        let mut reading = Reading::new(py);
        let speed = reading.one("cutting_speed", Kind::Velocity, Some(cutting_speed))?;
        let feed = reading.one("feed_per_rev", Kind::Length, feed_per_rev)?;
        let depth = reading.one("depth_of_cut", Kind::Length, depth_of_cut)?;
        reading.end()?;
        let life = self
            .fit
            .predict(si(speed.unwrap_or(f64::NAN)), feed.map(si), depth.map(si))
            .map_err(|error| raise(py, &error))?;
        tell(py, &life.warnings)?;
        let row = PyDict::new(py);
        for (name, time) in [
            ("median", life.median),
            ("mean", life.mean),
            ("low", life.low),
            ("high", life.high),
        ] {
            row.set_item(name, scalar(Kind::Time, time.value))?;
        }
        Ok(row)
    }

    /// The row of a shop's own table of tool life, as name and text for ``gullet.Library``.
    #[pyo3(signature = (*, material, tool_material, id="own-1", file_name="own_tool_life.csv", library=None))]
    fn overlay(
        &self,
        py: Python<'_>,
        material: &str,
        tool_material: &str,
        id: &str,
        file_name: &str,
        library: Option<&Bound<'_, Library>>,
    ) -> PyResult<(String, String)> {
        let tables = Tables::of(library);
        let tool = tool_named(tool_material).map_err(|fault| fault.raise(py))?;
        let written = tables.get().material(material).and_then(|material| {
            let classes = [material.id.clone()];
            let row = self.fit.to_row(id, &material.name, &classes, &[tool]);
            Overlay::of_tool_lives(file_name, &[&row])
        });
        let table = written.map_err(|error| raise(py, &error))?;
        Ok((table.file_name, table.text))
    }

    fn __repr__(&self) -> String {
        let f = &self.fit;
        let speed = scalar(Kind::Velocity, f.taylor_speed.value).text(f.law.units);
        format!(
            "TaylorFit(taylor_exponent={:.4}, taylor_speed='{speed}', readings={}, correlation={:.4})",
            f.exponent.value,
            f.regression.readings(),
            f.regression.correlation
        )
    }
}

/// The pair k_c1.1 and m_c fitted to readings, with the limits of its confidence. The two belong
/// together. Made by ``fit_kienzle``.
#[pyclass(frozen, eq, module = "gullet", name = "KienzleFit")]
#[derive(PartialEq)]
pub struct KienzleFit {
    fit: core::KienzleFit,
}

#[pymethods]
impl KienzleFit {
    /// k_c1.1 and m_c.
    #[getter]
    fn pair(&self) -> (Quantity, f64) {
        let pair = &self.fit.pair;
        (scalar(Kind::Pressure, pair.kc11.value), pair.exponent.value)
    }

    /// Everything the fit tells, by name.
    #[getter]
    fn values<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        values(py, self.fit.fields())
    }

    /// The constant and the slope of the regression of ln(F/b in N/mm) on ln(h in mm): name, value,
    /// standard error, limits, p value.
    #[getter]
    fn coefficients(&self) -> Vec<CoefficientRow> {
        coefficients(&self.fit.regression)
    }

    /// Logarithm of each force less the fitted one.
    #[getter]
    fn residuals(&self) -> Vec<f64> {
        self.fit.regression.residuals.clone()
    }

    /// Doubts about the fit.
    #[getter]
    fn warnings(&self) -> Vec<String> {
        self.fit
            .warnings
            .iter()
            .map(|doubt| doubt.text.clone())
            .collect()
    }

    /// The material with this pair in the first place, as name and text of a shop's own table for
    /// ``gullet.Library``.
    #[pyo3(signature = (*, material, file_name="own_materials.csv", library=None))]
    fn overlay(
        &self,
        py: Python<'_>,
        material: &str,
        file_name: &str,
        library: Option<&Bound<'_, Library>>,
    ) -> PyResult<(String, String)> {
        let tables = Tables::of(library);
        let written = tables.get().material(material).and_then(|material| {
            Overlay::of_materials(file_name, &[&material.with_pair(self.fit.pair.clone())])
        });
        let table = written.map_err(|error| raise(py, &error))?;
        Ok((table.file_name, table.text))
    }

    fn __repr__(&self) -> String {
        let f = &self.fit;
        let main = scalar(Kind::Pressure, f.kc11.value).text(UnitSystem::Metric);
        format!(
            "KienzleFit(kc11='{main}', chip_exponent={:.4}, readings={}, correlation={:.4})",
            f.chip_exponent.value,
            f.regression.readings(),
            f.regression.correlation
        )
    }
}

fn lengths(values: &[f64]) -> Vec<Length> {
    values.iter().copied().map(si).collect()
}

fn finish(py: Python<'_>, fit: gullet::Result<core::TaylorFit>) -> PyResult<TaylorFit> {
    let fit = fit.map_err(|error| raise(py, &error))?;
    tell(py, &fit.warnings)?;
    Ok(TaylorFit { fit })
}

/// Fits Taylor's law ``v T^n = C`` to readings: a cutting speed and the life of an edge each.
///
/// Refuses fewer than three speeds or six readings, a correlation below 0.9, an exponent outside 0
/// to 1. Doubts are warned of.
///
/// >>> import gullet
/// >>> fit = gullet.fit_taylor(
/// ...     cutting_speed=gullet.Quantity([100, 100, 150, 150, 200, 200], "m/min"),
/// ...     tool_life=gullet.Quantity([61, 55, 12.5, 13.4, 4.4, 4.1], "min"),
/// ...     source="wear test of lot 7", criterion="VB 0.3 mm")
/// >>> fit
/// TaylorFit(taylor_exponent=0.2656, taylor_speed='294.6 m/min', readings=6, correlation=-0.9992)
/// >>> round(fit.values["taylor_exponent_limits"][0], 3)
/// 0.251
#[pyfunction]
#[pyo3(signature = (*, cutting_speed, tool_life, confidence=None, source=None, criterion=None))]
pub fn fit_taylor<'py>(
    py: Python<'py>,
    cutting_speed: &Bound<'py, PyAny>,
    tool_life: &Bound<'py, PyAny>,
    confidence: Option<&Bound<'py, PyAny>>,
    source: Option<&str>,
    criterion: Option<&str>,
) -> PyResult<TaylorFit> {
    let mut reading = Reading::new(py);
    let speeds = reading.values("cutting_speed", Kind::Velocity, cutting_speed)?;
    let lives = reading.values("tool_life", Kind::Time, tool_life)?;
    let mut options = options(&mut reading, confidence, source, criterion)?;
    reading.end()?;
    options.units = units_of_call(py, [cutting_speed.clone()]);
    let speeds: Vec<Velocity> = speeds.into_iter().map(si).collect();
    let lives: Vec<Time> = lives.into_iter().map(si).collect();
    finish(py, core::fit_taylor(&speeds, &lives, &options))
}

/// Fits ``v T^n (f/f_0)^a (d/d_0)^b = C`` to readings, without the depth where there are no depths.
///
/// ``reference_feed`` and ``reference_depth`` are f_0 and d_0 that C is for; the geometric means of
/// the readings without them.
///
/// >>> import gullet
/// >>> fit = gullet.fit_extended_taylor(
/// ...     cutting_speed=gullet.Quantity([100, 100, 150, 150, 200, 200, 150], "m/min"),
/// ...     feed_per_rev=gullet.Quantity([0.1, 0.3, 0.1, 0.2, 0.1, 0.3, 0.3], "mm"),
/// ...     tool_life=gullet.Quantity([93, 31, 22, 11.5, 7.1, 2.4, 6.9], "min"), reference_feed="1 mm")
/// >>> round(fit.law.feed_exponent, 2), print(fit.law.reference_feed)
/// 1 mm
/// (0.27, None)
#[pyfunction]
#[pyo3(signature = (*, cutting_speed, feed_per_rev, tool_life, depth_of_cut=None, reference_feed=None, reference_depth=None,
    confidence=None, source=None, criterion=None))]
#[allow(clippy::too_many_arguments)]
pub fn fit_extended_taylor<'py>(
    py: Python<'py>,
    cutting_speed: &Bound<'py, PyAny>,
    feed_per_rev: &Bound<'py, PyAny>,
    tool_life: &Bound<'py, PyAny>,
    depth_of_cut: Option<&Bound<'py, PyAny>>,
    reference_feed: Option<&Bound<'py, PyAny>>,
    reference_depth: Option<&Bound<'py, PyAny>>,
    confidence: Option<&Bound<'py, PyAny>>,
    source: Option<&str>,
    criterion: Option<&str>,
) -> PyResult<TaylorFit> {
    let mut reading = Reading::new(py);
    let speeds = reading.values("cutting_speed", Kind::Velocity, cutting_speed)?;
    let feeds = reading.values("feed_per_rev", Kind::Length, feed_per_rev)?;
    let lives = reading.values("tool_life", Kind::Time, tool_life)?;
    let depths = match depth_of_cut {
        Some(depths) => Some(reading.values("depth_of_cut", Kind::Length, depths)?),
        None => None,
    };
    let mut options = options(&mut reading, confidence, source, criterion)?;
    options.reference_feed = reading
        .one("reference_feed", Kind::Length, reference_feed)?
        .map(si);
    options.reference_depth = reading
        .one("reference_depth", Kind::Length, reference_depth)?
        .map(si);
    reading.end()?;
    options.units = units_of_call(py, [cutting_speed.clone(), feed_per_rev.clone()]);
    let speeds: Vec<Velocity> = speeds.into_iter().map(si).collect();
    let lives: Vec<Time> = lives.into_iter().map(si).collect();
    let depths = depths.as_deref().map(lengths);
    let fit = core::fit_extended_taylor(
        &speeds,
        &lengths(&feeds),
        depths.as_deref(),
        &lives,
        &options,
    );
    finish(py, fit)
}

/// Fits the pair k_c1.1 and m_c to readings: a chip thickness and the cutting force per width of chip
/// each.
///
/// >>> import gullet
/// >>> fit = gullet.fit_kienzle(
/// ...     chip_thickness=gullet.Quantity([0.05, 0.05, 0.1, 0.2, 0.3, 0.3], "mm"),
/// ...     force_per_width=gullet.Quantity([190, 196, 325, 541, 731, 742], "N/mm"),
/// ...     source="dynamometer, lot 7")
/// >>> library = gullet.Library([fit.overlay(material="AISI 1018")])
/// >>> gullet.Material("AISI 1018", library=library).kc11.to("N/mm2") == fit.pair[0].to("N/mm2")
/// True
#[pyfunction]
#[pyo3(signature = (*, chip_thickness, force_per_width, confidence=None, source=None))]
pub fn fit_kienzle<'py>(
    py: Python<'py>,
    chip_thickness: &Bound<'py, PyAny>,
    force_per_width: &Bound<'py, PyAny>,
    confidence: Option<&Bound<'py, PyAny>>,
    source: Option<&str>,
) -> PyResult<KienzleFit> {
    let mut reading = Reading::new(py);
    let chips = reading.values("chip_thickness", Kind::Length, chip_thickness)?;
    let forces = reading.values("force_per_width", Kind::LineForce, force_per_width)?;
    let mut options = options(&mut reading, confidence, source, None)?;
    reading.end()?;
    options.units = units_of_call(py, [chip_thickness.clone()]);
    let forces: Vec<LineForce> = forces.into_iter().map(si).collect();
    let fit = core::fit_kienzle(&lengths(&chips), &forces, &options);
    let fit = fit.map_err(|error| raise(py, &error))?;
    tell(py, &fit.warnings)?;
    Ok(KienzleFit { fit })
}
