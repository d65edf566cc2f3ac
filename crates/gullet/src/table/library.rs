//! The library: the embedded tables, and a shop's own tables laid over them.

use super::drill::{DRILL_COLUMNS, Drill};
use super::grounds::Answered;
use super::hardness::{ASSUMPTION, FOREIGN, HardnessScale, to_brinell};
use super::parse::Context;
use super::parse_material::{GivenHardness, class_row, source_row};
use super::reader::{Sheet, bad, header_names};
use super::rows::*;
use super::types::{Iso513, Material, Source, plain};
use crate::error::{Error, Problem, Result};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, OnceLock};

/// A shop's own table as text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Overlay {
    /// Name that problems are reported under.
    pub file_name: String,
    /// CSV text with a header line.
    pub text: String,
}

impl Overlay {
    /// An overlay from the bytes of a file.
    ///
    /// # Errors
    /// [`Code::BadRow`](crate::error::Code::BadRow) with file and line where the bytes are not UTF-8.
    pub fn from_bytes(file_name: &str, bytes: &[u8]) -> Result<Overlay> {
        match core::str::from_utf8(bytes) {
            Ok(text) => Ok(Overlay {
                file_name: file_name.to_owned(),
                text: text.to_owned(),
            }),
            Err(error) => {
                let before = bytes.get(..error.valid_up_to()).unwrap_or(bytes);
                let line = 1 + before.iter().filter(|byte| **byte == b'\n').count() as u64;
                Err(bad(
                    file_name,
                    line,
                    "bytes",
                    "",
                    "text in UTF-8",
                    "save the file as UTF-8",
                )
                .into())
            }
        }
    }
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    Sources,
    Classes,
    Hardness,
    Materials,
    Speeds,
    Feeds,
    Powers,
    Saws,
    Lives,
    Drills,
}

impl Kind {
    const OVERLAID: [Kind; 9] = [
        Kind::Sources,
        Kind::Hardness,
        Kind::Materials,
        Kind::Speeds,
        Kind::Feeds,
        Kind::Powers,
        Kind::Saws,
        Kind::Lives,
        Kind::Drills,
    ];

    fn columns(self) -> &'static [&'static str] {
        match self {
            Kind::Sources => SOURCE_COLUMNS,
            Kind::Classes => CLASS_COLUMNS,
            Kind::Hardness => HARDNESS_COLUMNS,
            Kind::Materials => MATERIAL_COLUMNS,
            Kind::Speeds => SPEED_COLUMNS,
            Kind::Feeds => FEED_COLUMNS,
            Kind::Powers => POWER_COLUMNS,
            Kind::Saws => SAW_COLUMNS,
            Kind::Lives => LIFE_COLUMNS,
            Kind::Drills => DRILL_COLUMNS,
        }
    }

    /// Columns without which no row can be read; each entry needs one of its names.
    fn needed(self) -> &'static [&'static [&'static str]] {
        match self {
            Kind::Sources => &[&["id"], &["title"]],
            Kind::Classes => &[&["id"]],
            Kind::Hardness => &[&["id"]],
            Kind::Materials => &[&["id"], &["name"], &["iso513"]],
            Kind::Speeds => &[
                &["id"],
                &["class"],
                &["tool_material"],
                &["process"],
                &["vc_start_m_min", "sfm_start"],
            ],
            Kind::Feeds => &[
                &["id"],
                &["class"],
                &["tool_material"],
                &["process"],
                &["feed_start_mm", "feed_start_in"],
            ],
            Kind::Powers => &[
                &["id"],
                &["class"],
                &["u_start_j_mm3", "u_start_hp_min_in3"],
            ],
            Kind::Saws => &[
                &["id"],
                &["class"],
                &["rate_start_cm2_min", "rate_start_in2_min"],
            ],
            Kind::Lives => &[&["id"], &["tool_material"], &["n"]],
            Kind::Drills => &[&["id"], &["name"], &["diameter_mm", "diameter_in"]],
        }
    }

    /// The kind most of whose columns a header names.
    fn of(text: &str) -> Option<Kind> {
        let names = header_names(text);
        let score = |kind: Kind| {
            names
                .iter()
                .filter(|name| kind.columns().contains(&name.as_str()))
                .count()
        };
        let own = |kind: Kind| {
            let general = ["id", "src", "note", "provenance", "name"];
            names.iter().any(|name| {
                kind.columns().contains(&name.as_str()) && !general.contains(&name.as_str())
            })
        };
        let mut best: Option<(usize, Kind)> = None;
        for kind in Kind::OVERLAID {
            let points = score(kind);
            if own(kind) && best.is_none_or(|(most, _)| points > most) {
                best = Some((points, kind));
            }
        }
        best.map(|(_, kind)| kind)
    }
}

/// The reference tables, with a shop's own rows over them where there are any.
#[derive(Debug, Clone)]
pub struct Library {
    pub(crate) classes: BTreeMap<String, Class>,
    pub(crate) materials: Vec<Material>,
    pub(crate) sources: Vec<Source>,
    pub(crate) source_index: BTreeMap<String, Source>,
    pub(crate) speeds: Vec<SpeedRow>,
    pub(crate) feeds: Vec<FeedRow>,
    pub(crate) powers: Vec<PowerRow>,
    pub(crate) saws: Vec<SawRow>,
    pub(crate) lives: Vec<LifeRow>,
    pub(crate) hardness: Vec<HardnessRow>,
    pub(crate) drills: Vec<Drill>,
    /// Ids of the materials a plain name or alias means.
    pub(crate) index: BTreeMap<String, BTreeSet<String>>,
    pub(super) answered: Answered,
}

/// Tables that somebody else keeps, or that are kept together with others.
///
/// ```
/// use gullet::table::{Library, LibraryRef};
/// use std::sync::Arc;
/// let shared: LibraryRef<'static> = Arc::new(Library::builtin().clone()).into();
/// let borrowed: LibraryRef = Library::builtin().into();
/// assert_eq!(shared.materials().len(), borrowed.materials().len());
/// ```
#[derive(Debug, Clone)]
pub enum LibraryRef<'a> {
    /// Somebody else's.
    Borrowed(&'a Library),
    /// Kept as long as this is.
    Shared(Arc<Library>),
}

impl core::ops::Deref for LibraryRef<'_> {
    type Target = Library;

    fn deref(&self) -> &Library {
        match self {
            LibraryRef::Borrowed(library) => library,
            LibraryRef::Shared(library) => library,
        }
    }
}

impl<'a> From<&'a Library> for LibraryRef<'a> {
    fn from(library: &'a Library) -> LibraryRef<'a> {
        LibraryRef::Borrowed(library)
    }
}

impl From<Arc<Library>> for LibraryRef<'_> {
    fn from(library: Arc<Library>) -> Self {
        LibraryRef::Shared(library)
    }
}

/// Rows of one id replace the row before them; new ones are added.
fn lay<T>(rows: &mut Vec<T>, new: Vec<T>, id: impl Fn(&T) -> &str) {
    let mut places: BTreeMap<String, usize> = rows
        .iter()
        .enumerate()
        .map(|(place, row)| (id(row).to_owned(), place))
        .collect();
    for row in new {
        let name = id(&row).to_owned();
        match places.get(&name).and_then(|place| rows.get_mut(*place)) {
            Some(old) => *old = row,
            None => {
                places.insert(name, rows.len());
                rows.push(row);
            }
        }
    }
}

impl Library {
    /// The embedded tables, read once.
    pub fn builtin() -> &'static Library {
        static BUILTIN: OnceLock<Library> = OnceLock::new();
        BUILTIN.get_or_init(|| Library::read_builtin().0)
    }

    fn empty() -> Library {
        Library {
            classes: BTreeMap::new(),
            materials: Vec::new(),
            sources: Vec::new(),
            source_index: BTreeMap::new(),
            speeds: Vec::new(),
            feeds: Vec::new(),
            powers: Vec::new(),
            saws: Vec::new(),
            lives: Vec::new(),
            hardness: Vec::new(),
            drills: Vec::new(),
            index: BTreeMap::new(),
            answered: Answered::default(),
        }
    }

    /// The embedded tables and what is wrong with them; a test keeps the list empty.
    pub(crate) fn read_builtin() -> (Library, Vec<Problem>) {
        use gullet_reference_data as data;
        let mut library = Library::empty();
        let mut problems = Vec::new();
        for (kind, file, text) in [
            (Kind::Sources, "sources.csv", data::SOURCES),
            (Kind::Classes, "classes.csv", data::CLASSES),
            (Kind::Hardness, "hardness.csv", data::HARDNESS),
            (Kind::Materials, "materials.csv", data::MATERIALS),
            (Kind::Speeds, "cutting_speeds.csv", data::CUTTING_SPEEDS),
            (Kind::Feeds, "feeds.csv", data::FEEDS),
            (Kind::Powers, "unit_power.csv", data::UNIT_POWER),
            (Kind::Saws, "saw_rates.csv", data::SAW_RATES),
            (Kind::Lives, "tool_life.csv", data::TOOL_LIFE),
            (Kind::Drills, "drills.csv", data::DRILLS),
        ] {
            library.add(kind, file, text, false, &mut problems);
        }
        (library, problems)
    }

    /// A copy of this library with a shop's own rows added, or put in place of rows of the same id.
    ///
    /// The kind of each file is recognised by its header; columns may stand in any order, and a
    /// value may be given in either of its units. Where a shop's row applies to a question, it
    /// answers alone.
    ///
    /// # Errors
    /// [`Code::BadRow`](crate::error::Code::BadRow) for every row that is refused, in every file at once, with
    /// `file:line:column` as the parameter. This library is left as it is.
    ///
    /// ```
    /// use gullet::table::{Library, Overlay, Process, ToolMaterial};
    /// let shop = Overlay {
    ///     file_name: "ours.csv".into(),
    ///     text: "id,class,tool_material,process,sfm_start,src\no1,6061,HSS,end milling,220,shop trial\n".into(),
    /// };
    /// let library = Library::builtin().with_overlay(&[shop])?;
    /// let speed = library.cutting_speed(library.material("6061")?, ToolMaterial::Hss, Process::EndMilling)?;
    /// assert!((speed.start.value * 60.0 / 0.3048 - 220.0).abs() < 1e-9);
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn with_overlay(&self, files: &[Overlay]) -> Result<Library> {
        let mut library = self.clone();
        let mut problems = Vec::new();
        let kinds: Vec<Option<Kind>> = files.iter().map(|file| Kind::of(&file.text)).collect();
        for (file, kind) in files.iter().zip(&kinds) {
            if kind.is_none() {
                problems.push(bad(
                    &file.file_name, 1, "header", "",
                    "the columns of one of the tables: materials, cutting speeds, feeds, unit power, saw rates, tool life, hardness, drills, sources",
                    "begin the file with a line of column names",
                ));
            }
        }
        // Sources and materials first, so that rows of other files may refer to them.
        for kind in Kind::OVERLAID {
            for (file, _) in files
                .iter()
                .zip(&kinds)
                .filter(|(_, found)| **found == Some(kind))
            {
                library.add(kind, &file.file_name, &file.text, true, &mut problems);
            }
        }
        Error::unless_empty(problems, library)
    }

    fn add(&mut self, kind: Kind, file: &str, text: &str, shop: bool, problems: &mut Vec<Problem>) {
        let sheet = Sheet::read(file, text, kind.columns(), problems);
        let before = problems.len();
        for columns in kind.needed() {
            sheet.need(columns, problems);
        }
        if problems.len() > before {
            return;
        }
        let mut context = Context {
            classes: &self.classes,
            materials: &self.index,
            sources: &self.source_index,
            new_sources: BTreeMap::new(),
            shop,
        };
        match kind {
            Kind::Sources => {
                let mut rows = Vec::new();
                sheet.rows(problems, |row| rows.extend(source_row(row, shop)));
                self.lay_sources(rows);
            }
            Kind::Classes => {
                let mut rows = Vec::new();
                sheet.rows(problems, |row| rows.extend(class_row(row)));
                self.classes.extend(rows);
            }
            Kind::Hardness => {
                let mut rows = Vec::new();
                sheet.rows(problems, |row| rows.extend(context.hardness(row)));
                let named = context.new_sources.into_values().collect();
                lay(&mut self.hardness, rows, |row| &row.id);
                self.lay_sources(named);
            }
            Kind::Materials => {
                let mut rows = Vec::new();
                let points = &self.hardness;
                sheet.rows(problems, |row| {
                    if let Some((mut material, hardness)) = context.material(row) {
                        take_hardness(points, &mut material, hardness);
                        rows.push(material);
                    }
                });
                let named = context.new_sources.into_values().collect();
                lay(&mut self.materials, rows, |row| &row.id);
                self.lay_sources(named);
                self.index_materials();
            }
            Kind::Speeds => {
                let mut rows = Vec::new();
                sheet.rows(problems, |row| rows.extend(context.speed(row)));
                let named = context.new_sources.into_values().collect();
                lay(&mut self.speeds, rows, |row| &row.common.id);
                self.lay_sources(named);
            }
            Kind::Feeds => {
                let mut rows = Vec::new();
                sheet.rows(problems, |row| rows.extend(context.feed(row)));
                let named = context.new_sources.into_values().collect();
                lay(&mut self.feeds, rows, |row| &row.common.id);
                self.lay_sources(named);
            }
            Kind::Powers => {
                let mut rows = Vec::new();
                sheet.rows(problems, |row| rows.extend(context.power(row)));
                let named = context.new_sources.into_values().collect();
                lay(&mut self.powers, rows, |row| &row.common.id);
                self.lay_sources(named);
            }
            Kind::Saws => {
                let mut rows = Vec::new();
                sheet.rows(problems, |row| rows.extend(context.saw(row)));
                let named = context.new_sources.into_values().collect();
                lay(&mut self.saws, rows, |row| &row.common.id);
                self.lay_sources(named);
            }
            Kind::Lives => {
                let mut rows = Vec::new();
                sheet.rows(problems, |row| rows.extend(context.life(row)));
                let named = context.new_sources.into_values().collect();
                lay(&mut self.lives, rows, |row| &row.id);
                self.lay_sources(named);
            }
            Kind::Drills => {
                let mut rows = Vec::new();
                sheet.rows(problems, |row| rows.extend(context.drill(row)));
                let named = context.new_sources.into_values().collect();
                lay(&mut self.drills, rows, |row| &row.id);
                self.lay_sources(named);
            }
        }
    }

    fn lay_sources(&mut self, rows: Vec<Source>) {
        for row in &rows {
            self.source_index.insert(row.id.clone(), row.clone());
        }
        lay(&mut self.sources, rows, |row| &row.id);
    }

    fn index_materials(&mut self) {
        let mut index: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
        for material in &self.materials {
            let names = material
                .aliases
                .iter()
                .chain([&material.id, &material.name]);
            for name in names {
                index
                    .entry(plain(name))
                    .or_default()
                    .insert(material.id.clone());
            }
        }
        self.index = index;
    }

    /// Every material, in the order of the table, a shop's new ones last.
    pub fn materials(&self) -> &[Material] {
        &self.materials
    }

    /// Every source.
    pub fn sources(&self) -> &[Source] {
        &self.sources
    }

    /// The source of this id.
    pub fn source(&self, id: &str) -> Option<&Source> {
        self.source_index.get(id)
    }

    /// Rank of a source's publisher: named, none, withheld.
    pub(crate) fn publisher_rank(&self, id: &str) -> u8 {
        match self.source(id) {
            Some(source) if source.publisher_named => 0,
            Some(source) if !source.publisher_withheld => 1,
            _ => 2,
        }
    }
}

/// Whether the points of hardness, those of carbon and alloy steel, hold for a material.
fn is_steel(material: &Material) -> bool {
    let iron = material.classes.iter().any(|class| class.contains("iron"));
    matches!(material.iso513, Iso513::P | Iso513::H) && !iron
}

fn take_hardness(points: &[HardnessRow], material: &mut Material, hardness: Option<GivenHardness>) {
    let Some((low, high, scale)) = hardness else {
        return;
    };
    let scale = match scale.as_str() {
        "HRC" => HardnessScale::RockwellC,
        "HRB" => HardnessScale::RockwellB,
        "HV" => HardnessScale::Vickers,
        _ => HardnessScale::Brinell,
    };
    let ends = to_brinell(points, scale, low).zip(to_brinell(points, scale, high));
    if scale != HardnessScale::Brinell {
        let given = format!("given as {low} to {high} {}", scale.symbol());
        material.assumptions.push(match ends {
            Some(_) if is_steel(material) => format!("{ASSUMPTION}; {given}"),
            Some(_) => format!("{FOREIGN}; {given}"),
            None => format!("{given}, beyond the Brinell scale"),
        });
    }
    material.beyond_brinell = ends.is_none();
    material.hardness_given = Some((low, high, scale.symbol().to_owned()));
    material.hardness_brinell = ends;
}
