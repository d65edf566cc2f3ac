//! A set-up and the cuts it makes.

use crate::array::Data;
use crate::errors::{Fault, of_problems, raise, warn};
use crate::formula::Step;
use crate::model::{Library, Part, Tables, wrong_section};
use crate::plan::JobData;
use crate::quantity::{Quantity, escaped, read, scalar, system};
use gullet::error::unknown_name;
use gullet::model::{Blank, Cutter, Direction, Hold, Machine, PassKind, Practice};
use gullet::operation::{
    self as core, Band, Consequences, Field, Lowering, Operation, Pass, Settings, Side, WorkedStep,
    mill,
};
use gullet::plan::{Part as CorePart, cut_json};
use gullet::quantity::{Kind, UnitSystem, format, si};
use gullet::table::Material;
use gullet::{Code, Problem};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::Arc;

/// Parts of a set-up, each read and checked.
#[pyclass(frozen, module = "gullet._gullet", name = "Setup")]
pub struct Setup {
    parts: Vec<Py<Part>>,
    tables: Tables,
    material: Material,
    blank: Blank,
    cutter: Cutter,
    machine: Machine,
    hold: Hold,
    practice: Practice,
}

impl Setup {
    fn core(&self) -> core::Setup<'_> {
        core::Setup {
            units: gullet::quantity::UnitSystem::Metric,
            library: self.tables.get(),
            material: &self.material,
            cutter: &self.cutter,
            machine: &self.machine,
            hold: &self.hold,
            practice: &self.practice,
            part_height: self.blank.height,
        }
    }

    fn cut(&self, py: Python<'_>, pass: &Pass, lowering: Lowering) -> PyResult<core::Cut> {
        mill(&self.core(), pass, lowering).map_err(|error| raise(py, &error))
    }
}

macro_rules! part {
    ($part:expr, $variant:ident, $name:literal) => {
        match &$part.get().part {
            CorePart::$variant(part) => Ok(part.clone()),
            other => Err(wrong_section($name, section(other))),
        }
    };
}

fn section(part: &CorePart) -> &'static str {
    match part {
        CorePart::Material(_) => "material",
        CorePart::Blank(_) => "blank",
        CorePart::Cutter(_) => "cutter",
        CorePart::Machine(_) => "machine",
        CorePart::Hold(_) => "hold",
        CorePart::Practice(_) => "practice",
    }
}

/// One of the named values of a choice.
fn choose<T: Copy>(
    parameter: &str,
    text: &str,
    all: &[T],
    name: fn(T) -> &'static str,
    problems: &mut Vec<Problem>,
) -> Option<T> {
    let found = all.iter().copied().find(|value| name(*value) == text);
    if found.is_none() {
        problems.push(unknown_name(
            parameter,
            text,
            all.iter().map(|value| name(*value)),
        ));
    }
    found
}

const KINDS: &[PassKind] = &[PassKind::Roughing, PassKind::Finishing];
const DIRECTIONS: &[Direction] = &[Direction::Conventional, Direction::Climb];

/// One optional quantity of a pass; arrays are refused.
fn one(
    name: &str,
    kind: Kind,
    any: Option<&Bound<'_, PyAny>>,
    problems: &mut Vec<Problem>,
) -> PyResult<Option<f64>> {
    let Some(any) = any else { return Ok(None) };
    match read(kind, any) {
        Ok(Data::Scalar(value)) => Ok(Some(value)),
        Ok(Data::Array(..)) => {
            problems.push(Problem::new(
                Code::WrongType,
                name,
                "an array",
                "one quantity",
                "a cut is made for one pass: call it for each row",
            ));
            Ok(None)
        }
        Err(fault) => {
            fault.collect(name, problems)?;
            Ok(None)
        }
    }
}

#[pymethods]
impl Setup {
    #[new]
    #[pyo3(signature = (material, blank, cutter, machine, hold, practice, library=None))]
    #[allow(clippy::too_many_arguments)]
    fn new(
        py: Python<'_>,
        material: &Bound<'_, Part>,
        blank: &Bound<'_, Part>,
        cutter: &Bound<'_, Part>,
        machine: &Bound<'_, Part>,
        hold: &Bound<'_, Part>,
        practice: &Bound<'_, Part>,
        library: Option<&Bound<'_, Library>>,
    ) -> PyResult<Setup> {
        let build = || -> Result<Setup, Fault> {
            let parts = [material, blank, cutter, machine, hold, practice];
            Ok(Setup {
                parts: parts.iter().map(|part| (*part).clone().unbind()).collect(),
                tables: Tables::of(library),
                material: *part!(material, Material, "material")?,
                blank: part!(blank, Blank, "blank")?,
                cutter: part!(cutter, Cutter, "cutter")?,
                machine: part!(machine, Machine, "machine")?,
                hold: part!(hold, Hold, "hold")?,
                practice: *part!(practice, Practice, "practice")?,
            })
        };
        build().map_err(|fault| fault.raise(py))
    }

    /// Computes one pass.
    #[pyo3(signature = (*, operation, axial_depth=None, radial_depth=None, length=None, offset=None, kind="roughing", direction="conventional", mean_roughness=None, spindle_speed=None, feed_per_tooth=None, lower_loads=true, warn_of_doubts=true))]
    #[allow(clippy::too_many_arguments)]
    fn mill(
        slf: &Bound<'_, Setup>,
        operation: &str,
        axial_depth: Option<&Bound<'_, PyAny>>,
        radial_depth: Option<&Bound<'_, PyAny>>,
        length: Option<&Bound<'_, PyAny>>,
        offset: Option<&Bound<'_, PyAny>>,
        kind: &str,
        direction: &str,
        mean_roughness: Option<&Bound<'_, PyAny>>,
        spindle_speed: Option<&Bound<'_, PyAny>>,
        feed_per_tooth: Option<&Bound<'_, PyAny>>,
        lower_loads: bool,
        warn_of_doubts: bool,
    ) -> PyResult<Cut> {
        let py = slf.py();
        let setup = slf.get();
        let mut problems = Vec::new();
        let found = &mut problems;
        let operation = choose(
            "operation",
            operation,
            Operation::ALL,
            Operation::name,
            found,
        );
        let kind = choose("kind", kind, KINDS, PassKind::name, found);
        let direction = choose("direction", direction, DIRECTIONS, Direction::name, found);
        let axial = one("axial_depth", Kind::Length, axial_depth, found)?;
        let radial = one("radial_depth", Kind::Length, radial_depth, found)?.or(match operation {
            Some(Operation::Slotting) => Some(setup.cutter.diameter.value),
            Some(Operation::FaceMilling) => Some(setup.blank.width.value),
            _ => None,
        });
        let length = one("length", Kind::Length, length, found)?;
        let offset = one("offset", Kind::Length, offset, found)?;
        let rough = one("mean_roughness", Kind::Length, mean_roughness, found)?;
        let speed = one("spindle_speed", Kind::RotationalSpeed, spindle_speed, found)?;
        let feed = one("feed_per_tooth", Kind::Length, feed_per_tooth, found)?;
        let given = [("axial_depth", axial), ("radial_depth", radial)];
        for (name, value) in given {
            if value.is_none() && !found.iter().any(|problem| problem.parameter == name) {
                found.push(Problem::new(
                    Code::Missing,
                    name,
                    "",
                    "above 0 mm",
                    format!("give {name}"),
                ));
            }
        }
        let (Some(operation), Some(kind), Some(direction), Some(axial), Some(radial), true) =
            (operation, kind, direction, axial, radial, found.is_empty())
        else {
            return Err(of_problems(py, &problems, None));
        };
        let pass = Pass {
            operation,
            kind,
            axial_depth: si(axial),
            radial_depth: si(radial),
            offset: si(offset.unwrap_or(0.0)),
            length: length.map_or(setup.blank.length, si),
            direction,
            mean_roughness: rough.map(si),
            spindle_speed: speed.map(si),
            feed_per_tooth: feed.map(si),
        };
        let cut = Cut::milled(slf, pass, lower_loads)?;
        if warn_of_doubts && !cut.cut.warnings.is_empty() {
            let texts: Vec<String> = cut.cut.warnings.iter().map(|w| w.text.clone()).collect();
            warn(py, &texts)?;
        }
        Ok(cut)
    }

    #[getter]
    fn parts(&self, py: Python<'_>) -> Vec<Py<Part>> {
        self.parts.iter().map(|part| part.clone_ref(py)).collect()
    }

    #[getter]
    fn library(&self) -> Library {
        self.tables.to_py()
    }

    fn __eq__(&self, other: &Setup) -> bool {
        self.tables.same(&other.tables)
            && self.material == other.material
            && self.blank == other.blank
            && self.cutter == other.cutter
            && self.machine == other.machine
            && self.hold == other.hold
            && self.practice == other.practice
    }

    fn __hash__(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        self.cutter.name.hash(&mut hasher);
        self.material.id.hash(&mut hasher);
        hasher.finish()
    }

    fn __repr__(&self) -> String {
        format!(
            "<Setup {} with {} on {}>",
            self.material.name, self.cutter.name, self.machine.name
        )
    }

    fn __reduce__<'py>(
        slf: &Bound<'py, Setup>,
    ) -> PyResult<(Bound<'py, PyAny>, Bound<'py, pyo3::types::PyTuple>)> {
        let py = slf.py();
        let setup = slf.get();
        let mut parts: Vec<Py<PyAny>> = setup
            .parts
            .iter()
            .map(|part| part.clone_ref(py).into_any())
            .collect();
        parts.push(Bound::new(py, setup.library())?.into_any().unbind());
        Ok((
            slf.get_type().into_any(),
            pyo3::types::PyTuple::new(py, parts)?,
        ))
    }
}

/// Where a cut came from, so that a pickle can make it again, bit for bit.
enum Origin {
    Milled(Py<Setup>, bool),
    Planned(Arc<JobData>, usize),
}

#[pyclass(frozen, module = "gullet", name = "Cut")]
pub struct Cut {
    cut: core::Cut,
    origin: Origin,
}

impl Cut {
    fn milled(setup: &Bound<'_, Setup>, pass: Pass, lower: bool) -> PyResult<Cut> {
        let lowering = if lower {
            Lowering::Allowed
        } else {
            Lowering::NotForLoads
        };
        Ok(Cut {
            cut: setup.get().cut(setup.py(), &pass, lowering)?,
            origin: Origin::Milled(setup.clone().unbind(), lower),
        })
    }

    pub fn planned(cut: core::Cut, job: Arc<JobData>, index: usize) -> Cut {
        Cut {
            cut,
            origin: Origin::Planned(job, index),
        }
    }

    fn bits(&self) -> Vec<Option<u64>> {
        let settings = self.cut.settings.fields();
        let consequences = self.cut.consequences.fields();
        settings
            .iter()
            .chain(&consequences)
            .map(|field| field.value.map(f64::to_bits))
            .collect()
    }
}

/// A record of the package made from plain values.
pub fn made<'py>(
    py: Python<'py>,
    name: &str,
    values: impl pyo3::call::PyCallArgs<'py>,
) -> PyResult<Bound<'py, PyAny>> {
    py.import("gullet._records")?.getattr(name)?.call1(values)
}

type Values = Vec<(&'static str, Option<Quantity>)>;

fn values(fields: &[Field]) -> Values {
    fields
        .iter()
        .map(|field| (field.name, field.value.map(|si| scalar(field.kind, si))))
        .collect()
}

type PassRow = (&'static str, &'static str, &'static str, Values);
type LimitRow = (
    &'static str,
    Quantity,
    Quantity,
    &'static str,
    f64,
    String,
    bool,
    bool,
    Option<(&'static str, Quantity)>,
);

/// Limits as the rows of a page.
fn limits_html(cut: &core::Cut, system: UnitSystem) -> String {
    let mut html = String::from(
        "<table><thead><tr><th>limit</th><th>value</th><th>bound</th><th>share</th></tr></thead><tbody>",
    );
    for limit in &cut.ledger {
        let (open, close) = if limit.binding {
            ("<b>", "</b>")
        } else {
            ("", "")
        };
        let side = match limit.side {
            Side::AtMost => "at most",
            Side::AtLeast => "at least",
        };
        html += &format!(
            "<tr><td>{open}{}{close}</td><td>{}</td><td>{side} {}</td><td>{:.0} %</td></tr>",
            escaped(&limit.name.replace('_', " ")),
            escaped(&format(limit.kind, limit.value, system)),
            escaped(&format(limit.kind, limit.bound, system)),
            limit.share * 100.0
        );
    }
    html + "</tbody></table>"
}

fn fields_html(title: &str, fields: &[Field], system: UnitSystem) -> String {
    let mut html = format!("<table><thead><tr><th colspan=\"2\">{title}</th></tr></thead><tbody>");
    for field in fields {
        if let Some(si) = field.value {
            html += &format!(
                "<tr title=\"{}\"><td>{}</td><td>{}</td></tr>",
                escaped(field.meaning),
                field.name.replace('_', " "),
                escaped(&format(field.kind, si, system))
            );
        }
    }
    html + "</tbody></table>"
}

impl Cut {
    fn read_pass(&self) -> PassRow {
        let pass = &self.cut.pass;
        let length = |value: f64| Some(scalar(Kind::Length, value));
        (
            pass.operation.name(),
            pass.kind.name(),
            pass.direction.name(),
            vec![
                ("axial_depth", length(pass.axial_depth.value)),
                ("radial_depth", length(pass.radial_depth.value)),
                ("offset", length(pass.offset.value)),
                ("length", length(pass.length.value)),
                (
                    "mean_roughness",
                    pass.mean_roughness.and_then(|v| length(v.value)),
                ),
                (
                    "spindle_speed",
                    pass.spindle_speed
                        .map(|v| scalar(Kind::RotationalSpeed, v.value)),
                ),
                (
                    "feed_per_tooth",
                    pass.feed_per_tooth.and_then(|v| length(v.value)),
                ),
            ],
        )
    }

    fn read_settings(&self) -> Values {
        values(&self.cut.settings.fields())
    }

    fn read_consequences(&self) -> Values {
        values(&self.cut.consequences.fields())
    }

    fn read_limits(&self) -> Vec<LimitRow> {
        let row = |limit: &core::Limit| {
            (
                limit.name,
                scalar(limit.kind, limit.value),
                scalar(limit.kind, limit.bound),
                match limit.side {
                    Side::AtMost => "at_most",
                    Side::AtLeast => "at_least",
                },
                limit.share,
                limit.origin.clone(),
                limit.binding,
                limit.exceeded(),
                limit
                    .relief
                    .map(|relief| (relief.setting, scalar(relief.kind, relief.to))),
            )
        };
        self.cut.ledger.iter().map(row).collect()
    }

    fn read_adjustments(&self) -> Vec<(&'static str, &'static str, Quantity, Quantity)> {
        let row = |a: &core::Adjustment| {
            (
                a.limit,
                a.setting,
                scalar(a.kind, a.from),
                scalar(a.kind, a.to),
            )
        };
        self.cut.adjustments.iter().map(row).collect()
    }

    fn read_data(&self) -> Vec<(String, Quantity, String)> {
        let row = |d: &core::Datum| (d.name.clone(), scalar(d.kind, d.value), d.origin.clone());
        self.cut.data.iter().map(row).collect()
    }

    fn read_warnings(&self) -> Vec<(&'static str, String)> {
        let row = |w: &core::Warning| (w.code.name(), w.text.clone());
        self.cut.warnings.iter().map(row).collect()
    }

    fn read_spread(&self) -> Vec<(&'static str, Quantity, Quantity, Quantity)> {
        fn row<T: Copy>(
            name: &'static str,
            kind: Kind,
            band: &Band<T>,
            si: fn(T) -> f64,
        ) -> (&'static str, Quantity, Quantity, Quantity) {
            let show = |value| scalar(kind, si(value));
            (name, show(band.low), show(band.start), show(band.high))
        }
        let spread = &self.cut.spread;
        vec![
            row(
                "cutting_speed",
                Kind::Velocity,
                &spread.cutting_speed,
                |v| v.value,
            ),
            row(
                "feed_per_tooth",
                Kind::Length,
                &spread.feed_per_tooth,
                |v| v.value,
            ),
            row("force", Kind::Force, &spread.force, |v| v.value),
            row("power", Kind::Power, &spread.power, |v| v.value),
            row("time", Kind::Time, &spread.time, |v| v.value),
        ]
    }

    fn read_steps<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyAny>>> {
        let step = |step: &WorkedStep| match step {
            WorkedStep::Formula(step) => {
                Ok(Bound::new(py, Step { step: step.clone() })?.into_any())
            }
            WorkedStep::Choice(choice) => Ok((
                PyString::new(py, &choice.text),
                scalar(choice.kind, choice.value),
            )
                .into_pyobject(py)?
                .into_any()),
        };
        self.cut.steps.iter().map(step).collect()
    }
}

#[pymethods]
impl Cut {
    #[getter]
    fn pass_<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_pass", (self.read_pass(),))
    }

    #[getter]
    fn settings<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_settings", (self.read_settings(),))
    }

    #[getter]
    fn consequences<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_consequences", (self.read_consequences(),))
    }

    #[getter]
    fn ledger<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_limits", (self.read_limits(),))
    }

    #[getter]
    fn adjustments<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_adjustments", (self.read_adjustments(),))
    }

    #[getter]
    fn data<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_data", (self.read_data(),))
    }

    #[getter]
    fn warnings<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_warnings", (self.read_warnings(),))
    }

    #[getter]
    fn spread<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_spread", (self.read_spread(),))
    }

    #[getter]
    fn cautions(&self) -> Vec<&'static str> {
        self.cut.cautions.clone()
    }

    #[getter]
    fn steps<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_steps", (self.read_steps(py)?,))
    }

    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        Ok(cut_json(&self.cut, system(py)?).to_string())
    }

    fn __eq__(&self, other: &Cut) -> bool {
        self.cut.pass == other.cut.pass
            && self.bits() == other.bits()
            && self.cut.ledger == other.cut.ledger
            && self.cut.warnings == other.cut.warnings
    }

    fn __hash__(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        self.bits().hash(&mut hasher);
        hasher.finish()
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        let system = system(py)?;
        let settings = &self.cut.settings;
        Ok(format!(
            "<Cut {} {}: {}, {}, table feed {}; power {}>",
            self.cut.pass.operation.name(),
            self.cut.pass.kind.name(),
            format(Kind::RotationalSpeed, settings.spindle_speed.value, system),
            format(Kind::Length, settings.feed_per_tooth.value, system) + " a tooth",
            format(Kind::Velocity, settings.table_feed.value, system),
            format(
                Kind::Power,
                self.cut.consequences.cutting_power.value,
                system
            ),
        ))
    }

    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        let system = system(py)?;
        let mut html = String::from("<div>");
        html += &fields_html("settings", &self.cut.settings.fields(), system);
        html += &fields_html("consequences", &self.cut.consequences.fields(), system);
        html += &limits_html(&self.cut, system);
        for warning in &self.cut.warnings {
            html += &format!("<p>{}</p>", escaped(&warning.text));
        }
        Ok(html + "</div>")
    }

    fn __reduce__<'py>(
        &self,
        py: Python<'py>,
    ) -> PyResult<(Bound<'py, PyAny>, Bound<'py, pyo3::types::PyTuple>)> {
        let own = py.import("gullet._gullet")?;
        match &self.origin {
            Origin::Milled(setup, lower) => {
                let pass = &self.cut.pass;
                let keys = PyDict::new(py);
                keys.set_item("operation", pass.operation.name())?;
                keys.set_item("kind", pass.kind.name())?;
                keys.set_item("direction", pass.direction.name())?;
                keys.set_item("lower_loads", lower)?;
                for (name, value) in self.read_pass().3 {
                    keys.set_item(name, value)?;
                }
                let arguments = (setup.clone_ref(py), keys).into_pyobject(py)?;
                Ok((own.getattr("_cut")?, arguments))
            }
            Origin::Planned(job, index) => {
                let arguments = (job.to_py(), index).into_pyobject(py)?;
                Ok((own.getattr("_planned_cut")?, arguments))
            }
        }
    }
}

/// A cut made again, its doubts told before.
#[pyfunction]
pub fn _cut<'py>(
    setup: &Bound<'py, Setup>,
    keys: &Bound<'py, PyDict>,
) -> PyResult<Bound<'py, PyAny>> {
    keys.set_item("warn_of_doubts", false)?;
    setup.getattr("mill")?.call((), Some(keys))
}

type FieldRow = (&'static str, &'static str, &'static str, bool);

/// Fields of settings and of consequences: name, kind, meaning, whether one may be missing.
#[pyfunction]
pub fn record_fields() -> (Vec<FieldRow>, Vec<FieldRow>) {
    let rows = |fields: &[Field]| -> Vec<FieldRow> {
        fields
            .iter()
            .map(|field| (field.name, field.kind.name(), field.meaning, field.optional))
            .collect()
    };
    (rows(Settings::FIELDS), rows(Consequences::FIELDS))
}
