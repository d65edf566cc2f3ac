//! A set-up, whose parts are read and checked once for any number of passes.

use super::Cut;
use crate::array::Data;
use crate::errors::{Fault, of_problems, warn};
use crate::model::{Library, Part, Tables, wrong_section};
use crate::quantity::{read, system, units_of_argument};
use gullet::error::unknown_name;
use gullet::model::{Blank, Cutter, Direction, Hold, Machine, PassKind, Practice};
use gullet::operation::{self as core, Milling, Operation, Pass};
use gullet::plan::Part as CorePart;
use gullet::quantity::{Kind, UnitSystem, format, si};
use gullet::table::Material;
use gullet::{Code, Problem};
use pyo3::prelude::*;
use pyo3::types::PyDict;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::OnceLock;

/// A set-up whose parts are read and checked once; see ``gullet.setup``.
///
/// >>> import gullet
/// >>> setup = gullet.setup(
/// ...     material="6061",
/// ...     blank={"length": "3 in", "width": "2 in", "height": "1 in"},
/// ...     cutter=gullet.Cutter(form="square", material="HSS", diameter="1/2 in", teeth=2,
/// ...                          flute_length="1 in", stick_out="1.5 in"),
/// ...     machine="manual-knee-mill",
/// ...     hold={"clamping_force": "10 kN", "grip_depth": "0.5 in"},
/// ... )
/// >>> setup
/// <Setup EN AW-6061 T6 with 0.5 in 2-tooth HSS square end mill on manual knee mill (generic)>
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
    /// The system its parts are written in: inch where one is.
    units: UnitSystem,
    metric: OnceLock<Milling>,
    inch: OnceLock<Milling>,
}

impl Setup {
    fn core(&self, units: UnitSystem) -> core::Setup<'_> {
        core::Setup {
            units,
            library: self.tables.get(),
            material: &self.material,
            cutter: &self.cutter,
            machine: &self.machine,
            hold: &self.hold,
            practice: &self.practice,
            part_height: self.blank.height,
        }
    }

    /// Made ready at the first pass in these units.
    pub fn milling(&self, units: UnitSystem) -> &Milling {
        let ready = match units {
            UnitSystem::Metric => &self.metric,
            UnitSystem::Inch => &self.inch,
        };
        ready.get_or_init(|| Milling::new(&self.core(units)))
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

/// One optional quantity; arrays are refused.
pub fn one(
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
            let inch = |part: &&Bound<'_, Part>| part.get().units() == UnitSystem::Inch;
            let inches = parts.iter().any(inch);
            Ok(Setup {
                metric: OnceLock::new(),
                inch: OnceLock::new(),
                units: if inches {
                    UnitSystem::Inch
                } else {
                    system(py)?
                },
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

    /// One pass: settings, consequences, limits and worked steps.
    ///
    /// >>> import gullet
    /// >>> setup = gullet.setup(
    /// ...     material="6061",
    /// ...     blank={"length": "3 in", "width": "2 in", "height": "1 in"},
    /// ...     cutter=gullet.Cutter(form="square", material="HSS", diameter="1/2 in", teeth=2,
    /// ...                          flute_length="1 in", stick_out="1.5 in"),
    /// ...     machine="manual-knee-mill",
    /// ...     hold={"clamping_force": "10 kN", "grip_depth": "0.5 in"},
    /// ... )
    /// >>> cut = setup.mill(operation="side-milling", axial_depth="0.4 in", radial_depth="0.03 in",
    /// ...                  warn_of_doubts=False)
    /// >>> cut.settings.table_feed.kind
    /// 'velocity'
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
        let given = [
            axial_depth,
            radial_depth,
            length,
            offset,
            mean_roughness,
            spindle_speed,
            feed_per_tooth,
        ];
        let inch = |any: &&Bound<'_, PyAny>| units_of_argument(any) == Some(UnitSystem::Inch);
        let units = if given.iter().flatten().any(inch) {
            UnitSystem::Inch
        } else {
            setup.units
        };
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
                    std::format!("above {}", format(Kind::Length, 0.0, units)),
                    std::format!("give {name}"),
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
        let cut = Cut::milled(slf, &pass, units, lower_loads)?;
        if warn_of_doubts {
            warn(py, &cut.doubts(py)?)?;
        }
        Ok(cut)
    }

    /// The keys of every part as JSON, as given.
    fn to_json(&self) -> String {
        let part = |part: &Py<Part>| {
            let part = part.get();
            let keys = serde_json::from_str(part.given()).unwrap_or(serde_json::Value::Null);
            (part.section().to_owned(), keys)
        };
        let parts: serde_json::Map<_, _> = self.parts.iter().map(part).collect();
        serde_json::Value::Object(parts).to_string()
    }

    /// Reads what ``to_json`` writes.
    #[staticmethod]
    #[pyo3(signature = (text, library=None))]
    fn from_json<'py>(
        py: Python<'py>,
        text: &str,
        library: Option<&Bound<'py, Library>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let setup = py.import("gullet._model")?.getattr("_setup_of_json")?;
        setup.call1((text, library))
    }

    /// Its parts.
    #[getter]
    fn parts(&self, py: Python<'_>) -> Vec<Py<Part>> {
        self.parts.iter().map(|part| part.clone_ref(py)).collect()
    }

    /// The tables it was read against.
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
        std::format!(
            "<Setup {} with {} on {}>",
            self.material.name,
            self.cutter.name,
            self.machine.name
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

/// A cut made again, its doubts told before.
#[pyfunction]
pub fn _cut<'py>(
    setup: &Bound<'py, Setup>,
    keys: &Bound<'py, PyDict>,
) -> PyResult<Bound<'py, PyAny>> {
    keys.set_item("warn_of_doubts", false)?;
    setup.getattr("mill")?.call((), Some(keys))
}
