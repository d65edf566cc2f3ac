//! Tables, and what a shop owns: sections of a job file read alone.

use crate::arrow::{Table, of_listing, system_named};
use crate::errors::{Fault, raise};
use crate::quantity::{Quantity, scalar};
use gullet::listing::{Cell, Form};
use gullet::model::{Machine, Practice};
use gullet::plan::{Part as CorePart, job_keys as core_job_keys};
use gullet::quantity::{Kind, UnitSystem};
use gullet::table::{Library as CoreLibrary, Material, Overlay, Process, Ranged, ToolMaterial};
use gullet::{Code, Problem};
use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;
use pyo3::types::PyDict;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::{Arc, OnceLock};

/// Tables with the texts that were laid over the built-in ones.
#[derive(Clone)]
pub struct Tables {
    library: Arc<CoreLibrary>,
    overlays: Arc<[(String, String)]>,
}

impl Tables {
    pub fn builtin() -> Tables {
        static BUILTIN: OnceLock<Tables> = OnceLock::new();
        BUILTIN
            .get_or_init(|| Tables {
                library: Arc::new(CoreLibrary::builtin().clone()),
                overlays: Arc::new([]),
            })
            .clone()
    }

    pub fn get(&self) -> &CoreLibrary {
        &self.library
    }

    pub fn shared(&self) -> Arc<CoreLibrary> {
        self.library.clone()
    }

    pub fn same(&self, other: &Tables) -> bool {
        Arc::ptr_eq(&self.library, &other.library) || self.overlays == other.overlays
    }

    pub fn of(library: Option<&Bound<'_, Library>>) -> Tables {
        library.map_or_else(Tables::builtin, |library| library.get().tables.clone())
    }

    pub fn to_py(&self) -> Library {
        Library {
            tables: self.clone(),
        }
    }
}

/// The reference tables, with a shop's own tables over them.
///
/// >>> import gullet
/// >>> library = gullet.Library()
/// >>> library.tables
/// ['materials', 'cutting_speeds', 'feeds', 'unit_power', 'saw_rates', 'tool_life', 'hardness', 'drills', 'sources']
/// >>> own = gullet.Library([("own.csv", "id,class,tool_material,process,sfm_start,src\no1,6061,HSS,end milling,220,trial\n")])
/// >>> gullet.Material("6061", library=own).cutting_speed("HSS").start == gullet.Quantity("220 ft/min")
/// True
#[pyclass(frozen, module = "gullet", name = "Library")]
pub struct Library {
    pub tables: Tables,
}

/// A name of a table, or the problem that lists those there are.
pub fn choice<T: Copy>(
    name: &str,
    text: &str,
    parse: fn(&str) -> Option<T>,
    all: &[T],
    show: fn(T) -> &'static str,
) -> Result<T, Fault> {
    parse(text).ok_or_else(|| {
        gullet::error::unknown_name(name, text, all.iter().map(|value| show(*value))).into()
    })
}

type Support = (
    String,
    String,
    &'static str,
    Quantity,
    Quantity,
    Quantity,
    String,
);
type RangedRow = (Quantity, Quantity, Quantity, Vec<Support>, Vec<String>);

fn ranged<T: Copy>(kind: Kind, ranged: Ranged<T>, si: fn(T) -> f64) -> RangedRow {
    let show = |value| scalar(kind, si(value));
    (
        show(ranged.low),
        show(ranged.start),
        show(ranged.high),
        ranged
            .support
            .iter()
            .map(|row| {
                (
                    row.row.clone(),
                    row.source.clone(),
                    row.provenance.name(),
                    show(row.low),
                    show(row.start),
                    show(row.high),
                    row.why.clone(),
                )
            })
            .collect(),
        ranged.assumptions,
    )
}

#[pymethods]
impl Library {
    #[new]
    #[pyo3(signature = (overlays=Vec::new()))]
    fn new(py: Python<'_>, overlays: Vec<(String, String)>) -> PyResult<Library> {
        if overlays.is_empty() {
            return Ok(Tables::builtin().to_py());
        }
        let files: Vec<Overlay> = overlays
            .iter()
            .map(|(file_name, text)| Overlay {
                file_name: file_name.clone(),
                text: text.clone(),
            })
            .collect();
        let library = py
            .detach(|| CoreLibrary::builtin().with_overlay(&files))
            .map_err(|error| raise(py, &error))?;
        Ok(Library {
            tables: Tables {
                library: Arc::new(library),
                overlays: overlays.into(),
            },
        })
    }

    /// Names and texts of the tables laid over.
    #[getter]
    fn overlays(&self) -> Vec<(String, String)> {
        self.tables.overlays.to_vec()
    }

    /// One of the tables, a shop's own rows included.
    ///
    /// >>> import gullet
    /// >>> feeds = gullet.Library().table("feeds", units="inch")
    /// >>> feeds["feed_start_in"].kind
    /// 'length'
    #[pyo3(signature = (name, *, units=None))]
    fn table(&self, py: Python<'_>, name: &str, units: Option<&str>) -> PyResult<Table> {
        let answer = || -> Result<Table, Fault> {
            of_listing(&self.tables.get().listing(name)?, system_named(py, units)?)
        };
        answer().map_err(|fault| fault.raise(py))
    }

    #[classattr]
    fn tables() -> Vec<&'static str> {
        CoreLibrary::LISTINGS.to_vec()
    }

    /// The table of materials.
    #[getter]
    fn materials(&self, py: Python<'_>) -> PyResult<Table> {
        self.table(py, "materials", None)
    }

    /// The table of sources.
    #[getter]
    fn sources(&self, py: Python<'_>) -> PyResult<Table> {
        self.table(py, "sources", None)
    }

    fn _cutting_speed(
        &self,
        py: Python<'_>,
        material: &Bound<'_, Part>,
        tool: &str,
        process: &str,
    ) -> PyResult<RangedRow> {
        let answer = || -> Result<RangedRow, Fault> {
            let (tool, process) = asked(tool, process)?;
            let material = material.get().material()?;
            let found = self.tables.get().cutting_speed(material, tool, process)?;
            Ok(ranged(Kind::Velocity, found, |value| value.value))
        };
        answer().map_err(|fault| fault.raise(py))
    }

    fn _feed_per_tooth(
        &self,
        py: Python<'_>,
        material: &Bound<'_, Part>,
        tool: &str,
        process: &str,
        diameter: f64,
        axial_depth: f64,
    ) -> PyResult<RangedRow> {
        let answer = || -> Result<RangedRow, Fault> {
            let (tool, process) = asked(tool, process)?;
            let found = self.tables.get().feed_per_tooth(
                material.get().material()?,
                tool,
                process,
                gullet::quantity::si(diameter),
                gullet::quantity::si(axial_depth),
            )?;
            Ok(ranged(Kind::Length, found, |value| value.value))
        };
        answer().map_err(|fault| fault.raise(py))
    }

    fn __eq__(&self, other: &Library) -> bool {
        self.tables.same(&other.tables)
    }

    fn __hash__(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        self.tables.overlays.hash(&mut hasher);
        hasher.finish()
    }

    fn __repr__(&self) -> String {
        let library = self.tables.get();
        let over: Vec<&str> = self
            .tables
            .overlays
            .iter()
            .map(|(name, _)| name.as_str())
            .collect();
        format!(
            "<Library of {} materials and {} sources{}{}>",
            library.materials().len(),
            library.sources().len(),
            if over.is_empty() { "" } else { ", with " },
            over.join(", ")
        )
    }

    fn __reduce__<'py>(slf: &Bound<'py, Library>) -> (Bound<'py, PyAny>, (Vec<(String, String)>,)) {
        (slf.get_type().into_any(), (slf.get().overlays(),))
    }
}

fn asked(tool: &str, process: &str) -> Result<(ToolMaterial, Process), Fault> {
    let tool = choice(
        "tool_material",
        tool,
        ToolMaterial::parse,
        ToolMaterial::ALL,
        ToolMaterial::name,
    )?;
    let process = choice(
        "process",
        process,
        Process::parse,
        Process::ALL,
        Process::name,
    )?;
    Ok((tool, process))
}

/// What the tables know of a material, by name.
fn material_row<'py>(py: Python<'py>, material: &Material) -> PyResult<Bound<'py, PyDict>> {
    let row = PyDict::new(py);
    for (column, cell) in material.fields() {
        row.set_item(column.name, told(py, column.form, cell)?)?;
    }
    Ok(row)
}

/// A cell of a listing as Python has it.
pub fn told(py: Python<'_>, form: Form, cell: Cell) -> PyResult<Bound<'_, PyAny>> {
    let kind = match form {
        Form::Number(kind) | Form::Range(kind) => kind,
        _ => Kind::Ratio,
    };
    // A pure number is a float, as in the sections of a job.
    let number = |si: f64| match kind {
        Kind::Ratio => si.into_bound_py_any(py),
        kind => scalar(kind, si).into_bound_py_any(py),
    };
    Ok(match cell {
        Cell::Text(text) => text.into_bound_py_any(py)?,
        Cell::Texts(texts) => texts.into_bound_py_any(py)?,
        Cell::Pairs(pairs) => pairs.into_bound_py_any(py)?,
        Cell::Whole(value) => value.into_bound_py_any(py)?,
        Cell::Flag(value) => value.into_bound_py_any(py)?,
        Cell::Number(si) => number(si)?,
        Cell::Range(low, high) => (number(low)?, number(high)?).into_bound_py_any(py)?,
        _ => py.None().into_bound(py),
    })
}

type ColumnRow = (&'static str, String, bool, &'static str);

/// Attributes of a material: name, type, whether one may be missing, meaning.
#[pyfunction]
pub fn material_fields() -> Vec<ColumnRow> {
    let number = |kind| {
        if kind == Kind::Ratio {
            "float"
        } else {
            "Quantity"
        }
    };
    Material::columns()
        .map(|column| {
            let form = match column.form {
                Form::Texts => "list[str]".to_owned(),
                Form::Pairs => "list[tuple[str, str]]".to_owned(),
                Form::Whole => "int".to_owned(),
                Form::Flag => "bool".to_owned(),
                Form::Number(kind) => number(kind).to_owned(),
                Form::Range(kind) => format!("tuple[{0}, {0}]", number(kind)),
                _ => "str".to_owned(),
            };
            (column.name, form, column.optional, column.meaning)
        })
        .collect()
}

/// One section of a job file with the tables it was read against.
#[pyclass(frozen, module = "gullet._gullet", name = "Part")]
pub struct Part {
    section: String,
    keys: String,
    tables: Tables,
    pub part: CorePart,
    assumptions: Vec<String>,
}

impl Part {
    pub fn units(&self) -> UnitSystem {
        CorePart::units_of(&self.section, &self.keys)
    }

    pub fn material(&self) -> Result<&Material, Fault> {
        match &self.part {
            CorePart::Material(material) => Ok(material),
            _ => Err(wrong_section("material", &self.section)),
        }
    }

    pub fn machine(&self) -> Result<&Machine, Fault> {
        match &self.part {
            CorePart::Machine(machine) => Ok(machine),
            _ => Err(wrong_section("machine", &self.section)),
        }
    }

    pub fn practice(&self) -> Result<&Practice, Fault> {
        match &self.part {
            CorePart::Practice(practice) => Ok(practice),
            _ => Err(wrong_section("practice", &self.section)),
        }
    }
}

pub fn wrong_section(wanted: &str, given: &str) -> Fault {
    Problem::new(
        Code::WrongType,
        wanted,
        format!("a {given}"),
        format!("a {wanted}"),
        "swap the arguments",
    )
    .into()
}

#[pymethods]
impl Part {
    #[new]
    #[pyo3(signature = (section, keys, library=None))]
    fn new(
        py: Python<'_>,
        section: &str,
        keys: &str,
        library: Option<&Bound<'_, Library>>,
    ) -> PyResult<Part> {
        let tables = Tables::of(library);
        let (part, assumptions) =
            CorePart::from_json(section, keys, tables.get()).map_err(|error| raise(py, &error))?;
        Ok(Part {
            section: section.to_owned(),
            keys: keys.to_owned(),
            tables,
            part,
            assumptions,
        })
    }

    #[getter]
    pub fn section(&self) -> &str {
        &self.section
    }

    /// The keys as given.
    #[getter]
    pub fn given(&self) -> &str {
        &self.keys
    }

    #[getter]
    fn library(&self) -> Library {
        self.tables.to_py()
    }

    /// Every key, as JSON.
    fn to_json(&self) -> String {
        serde_json::Value::Object(self.part.to_json()).to_string()
    }

    #[getter]
    fn assumptions(&self) -> Vec<String> {
        self.assumptions.clone()
    }

    /// What the tables know of a material; none of another part.
    fn row<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyDict>>> {
        self.material()
            .ok()
            .map(|material| material_row(py, material))
            .transpose()
    }

    fn __eq__(&self, other: &Part) -> bool {
        self.part == other.part
    }

    fn __hash__(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        self.to_json().hash(&mut hasher);
        hasher.finish()
    }

    fn __repr__(&self) -> String {
        format!("<Part {} {}>", self.section, self.to_json())
    }

    fn __reduce__<'py>(slf: &Bound<'py, Part>) -> (Bound<'py, PyAny>, (String, String, Library)) {
        let part = slf.get();
        (
            slf.get_type().into_any(),
            (part.section.clone(), part.keys.clone(), part.tables.to_py()),
        )
    }
}

type KeyRow = (
    &'static str,
    &'static str,
    &'static str,
    Option<&'static str>,
    &'static [&'static str],
    bool,
    String,
    &'static str,
    &'static str,
);

/// Every key of a job file: section, key, form, kind, words, required, left out, example, meaning.
#[pyfunction]
pub fn job_keys() -> Vec<KeyRow> {
    core_job_keys()
        .into_iter()
        .map(|key| {
            (
                key.section,
                key.key,
                key.form,
                key.kind.map(Kind::name),
                key.words,
                key.required,
                key.left_out,
                key.example,
                key.meaning,
            )
        })
        .collect()
}

/// Names of the built-in machines and practices; their data are invented.
///
/// >>> import gullet
/// >>> machines, practices = gullet.builtin_names()
/// >>> "manual-knee-mill" in machines
/// True
#[pyfunction]
pub fn builtin_names() -> (&'static [&'static str], &'static [&'static str]) {
    (Machine::BUILTIN, Practice::BUILTIN)
}
