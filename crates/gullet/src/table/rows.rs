//! The rows of the tables, typed, and how a line of text becomes one.

use super::reader::{Row, UnitColumn, above, from_below};
use super::types::{
    Iso513, KienzlePair, Material, Process, Provenance, Source, ToolMaterial, plain,
};
use crate::quantity::si;
use std::collections::{BTreeMap, BTreeSet};

/// A class of materials, a node of the tree that rows and materials hang on.
#[derive(Debug, Clone)]
pub(crate) struct Class {
    pub name: String,
    pub parent: Option<String>,
    /// Rows up to this ancestor apply equally well; beyond it they only fill gaps.
    pub family: bool,
    pub stand_in: Option<String>,
    pub speed_factor: f64,
    /// Class whose feeds are taken where there are none, if not that of `stand_in`.
    pub feed_stand_in: Option<String>,
    pub reason: String,
}

/// What every row of a table carries.
#[derive(Debug, Clone)]
pub(crate) struct Common {
    pub id: String,
    /// Class ids, or ids of materials.
    pub classes: Vec<String>,
    /// The material as the source words it.
    pub material: String,
    pub hb: Option<(f64, f64)>,
    pub source: String,
    pub provenance: Provenance,
}

#[derive(Debug, Clone)]
pub(crate) struct SpeedRow {
    pub common: Common,
    pub tools: Vec<ToolMaterial>,
    pub process: Process,
    /// Low, start, high in m/s.
    pub values: [f64; 3],
}

#[derive(Debug, Clone)]
pub(crate) struct FeedRow {
    pub common: Common,
    pub tools: Vec<ToolMaterial>,
    pub process: Process,
    /// Diameters in m the values hold for, from smallest to largest.
    pub diameter: Option<(f64, f64)>,
    /// Axial depth in m of the table column.
    pub axial_depth: Option<f64>,
    pub per_tooth: bool,
    /// Low, start, high in m.
    pub values: [f64; 3],
}

/// Where the power behind a unit power was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum MeasuredAt {
    /// At the cutter: cutting power.
    Cutter,
    /// At the motor, with the efficiency the source states.
    Motor {
        /// Efficiency from motor to cutter, if stated.
        efficiency: Option<f64>,
    },
    /// Not stated.
    Unstated,
}

#[derive(Debug, Clone)]
pub(crate) struct PowerRow {
    pub common: Common,
    pub measured_at: MeasuredAt,
    pub chip_thickness: Option<f64>,
    /// Low, start, high in Pa.
    pub values: [f64; 3],
}

/// Taylor constants of one row: `v T^n = C`.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct LifeRow {
    /// Row id.
    pub id: String,
    /// Work material as the source words it.
    pub work: String,
    /// Tool materials the row is for.
    pub tools: Vec<ToolMaterial>,
    /// Exponent n: lowest, typical, highest.
    pub exponent: [f64; 3],
    /// C, the cutting speed in m/s for a life of one minute; a constant of the law, not a working
    /// speed. `None` where the source gives the exponent only.
    pub speed_at_one_minute: Option<f64>,
    /// Feed per revolution in m the constants were found at.
    pub feed: Option<f64>,
    /// Depth of cut in m the constants were found at.
    pub depth: Option<f64>,
    /// Wear criterion.
    pub criterion: String,
    /// Source id.
    pub source: String,
    /// How the value came here.
    pub provenance: Provenance,
    /// Remark.
    pub note: String,
}

#[derive(Debug, Clone)]
pub(crate) struct HardnessRow {
    pub id: String,
    pub hrc: Option<f64>,
    pub hrb: Option<f64>,
    pub hv: Option<f64>,
    pub hb: Option<f64>,
}

/// What a row may refer to.
pub(crate) struct Context<'c> {
    pub classes: &'c BTreeMap<String, Class>,
    /// Material ids by plain name or alias.
    pub materials: &'c BTreeMap<String, BTreeSet<String>>,
    pub sources: &'c BTreeMap<String, Source>,
    /// Sources named by a shop's rows.
    pub new_sources: BTreeMap<String, Source>,
    pub shop: bool,
}

pub(crate) const SPEED_COLUMNS: &[&str] = &[
    "id",
    "class",
    "material",
    "hb_min",
    "hb_max",
    "tool_material",
    "process",
    "vc_low_m_min",
    "vc_start_m_min",
    "vc_high_m_min",
    "sfm_low",
    "sfm_start",
    "sfm_high",
    "printed_in",
    "range_rule",
    "basis",
    "src",
    "provenance",
    "note",
];
pub(crate) const FEED_COLUMNS: &[&str] = &[
    "id",
    "class",
    "material",
    "hb_min",
    "hb_max",
    "tool_material",
    "process",
    "dia_min_mm",
    "dia_max_mm",
    "dia_min_in",
    "dia_max_in",
    "axial_depth_mm",
    "axial_depth_in",
    "feed_low_mm",
    "feed_start_mm",
    "feed_high_mm",
    "feed_low_in",
    "feed_start_in",
    "feed_high_in",
    "per",
    "printed_in",
    "range_rule",
    "basis",
    "src",
    "provenance",
    "note",
];
pub(crate) const POWER_COLUMNS: &[&str] = &[
    "id",
    "class",
    "material",
    "hb_min",
    "hb_max",
    "u_low_j_mm3",
    "u_start_j_mm3",
    "u_high_j_mm3",
    "u_low_hp_min_in3",
    "u_start_hp_min_in3",
    "u_high_hp_min_in3",
    "measured_at",
    "efficiency",
    "chip_thickness_mm",
    "chip_thickness_in",
    "basis",
    "src",
    "provenance",
    "note",
];
pub(crate) const LIFE_COLUMNS: &[&str] = &[
    "id",
    "work",
    "tool_material",
    "n_low",
    "n",
    "n_high",
    "c_m_min",
    "c_sfm",
    "feed_mm",
    "feed_in",
    "depth_mm",
    "depth_in",
    "criterion",
    "src",
    "provenance",
    "note",
];
pub(crate) const HARDNESS_COLUMNS: &[&str] = &[
    "id",
    "hrc",
    "hrb",
    "hv",
    "hb",
    "tensile_mpa",
    "src",
    "provenance",
    "note",
];
pub(crate) const SOURCE_COLUMNS: &[&str] = &[
    "id",
    "author",
    "title",
    "year",
    "edition",
    "place",
    "provenance",
    "how",
    "publisher",
];
pub(crate) const CLASS_COLUMNS: &[&str] = &[
    "id",
    "name",
    "iso513",
    "parent",
    "family",
    "stand_in",
    "speed_factor",
    "feed_stand_in",
    "reason",
];
pub(crate) const MATERIAL_COLUMNS: &[&str] = &[
    "id",
    "name",
    "aliases",
    "iso513",
    "condition",
    "hardness_min",
    "hardness_max",
    "hardness_scale",
    "tensile_mpa",
    "tensile_ksi",
    "kc11_mpa",
    "kc11_psi",
    "mc",
    "src_kc",
    "kc11_second_mpa",
    "mc_second",
    "src_kc_second",
    "kc11_third_mpa",
    "mc_third",
    "src_kc_third",
    "density_kg_m3",
    "e_gpa",
    "machinability_pct",
    "classes",
    "cautions",
    "src",
    "src_hardness",
    "src_tensile",
    "src_phys",
    "src_machinability",
    "provenance",
    "note",
];

const SPEED_UNITS: [[UnitColumn; 2]; 3] = [
    [
        ("vc_low_m_min", "m/min", 1.0, 60.0),
        ("sfm_low", "ft/min", 0.3048, 60.0),
    ],
    [
        ("vc_start_m_min", "m/min", 1.0, 60.0),
        ("sfm_start", "ft/min", 0.3048, 60.0),
    ],
    [
        ("vc_high_m_min", "m/min", 1.0, 60.0),
        ("sfm_high", "ft/min", 0.3048, 60.0),
    ],
];
const FEED_UNITS: [[UnitColumn; 2]; 3] = [
    [
        ("feed_low_mm", "mm", 1.0, 1000.0),
        ("feed_low_in", "in", 25.4, 1000.0),
    ],
    [
        ("feed_start_mm", "mm", 1.0, 1000.0),
        ("feed_start_in", "in", 25.4, 1000.0),
    ],
    [
        ("feed_high_mm", "mm", 1.0, 1000.0),
        ("feed_high_in", "in", 25.4, 1000.0),
    ],
];
/// 1 hp.min/in3 in J/m3: 550 ft.lbf/s x 60 s over a cubic inch, that is 396 000 psi.
const HP_MIN_PER_IN3: f64 = 396_000.0 * 4.4482216152605 / (0.0254 * 0.0254);
const POWER_UNITS: [[UnitColumn; 2]; 3] = [
    [
        ("u_low_j_mm3", "J/mm3", 1e9, 1.0),
        ("u_low_hp_min_in3", "hp.min/in3", HP_MIN_PER_IN3, 1.0),
    ],
    [
        ("u_start_j_mm3", "J/mm3", 1e9, 1.0),
        ("u_start_hp_min_in3", "hp.min/in3", HP_MIN_PER_IN3, 1.0),
    ],
    [
        ("u_high_j_mm3", "J/mm3", 1e9, 1.0),
        ("u_high_hp_min_in3", "hp.min/in3", HP_MIN_PER_IN3, 1.0),
    ],
];

pub(crate) fn tool_list(text: &str) -> Option<Vec<ToolMaterial>> {
    let mut tools = Vec::new();
    for item in text.split(';').map(str::trim) {
        // A row that says only carbide holds for both kinds.
        if plain(item) == "carbide" {
            tools.extend([ToolMaterial::UncoatedCarbide, ToolMaterial::CoatedCarbide]);
        } else {
            tools.push(ToolMaterial::parse(item)?);
        }
    }
    Some(tools)
}

fn tools(row: &mut Row) -> Option<Vec<ToolMaterial>> {
    let mut names: Vec<&str> = ToolMaterial::ALL.iter().map(|tool| tool.name()).collect();
    names.push("carbide");
    row.name("tool_material", tool_list, &names)
}

fn process(row: &mut Row) -> Option<Process> {
    let names: Vec<&str> = Process::ALL.iter().map(|process| process.name()).collect();
    row.name("process", Process::parse, &names)
}

fn provenance(row: &mut Row, shop: bool) -> Option<Provenance> {
    if shop {
        return Some(Provenance::Shop);
    }
    let names: Vec<&str> = Provenance::ALL.iter().map(|value| value.name()).collect();
    row.name("provenance", Provenance::parse, &names)
}

impl Context<'_> {
    fn source(&mut self, row: &mut Row, column: &str) -> String {
        let text = row.text(column);
        if self.sources.contains_key(text) || self.new_sources.contains_key(text) {
            return text.to_owned();
        }
        if !self.shop {
            row.refuse(
                column,
                text,
                "an id of the table of sources",
                "add the source, or correct the id",
            );
            return String::new();
        }
        let id = if text.is_empty() {
            format!("shop file {}", row.file())
        } else {
            text.to_owned()
        };
        let source = Source {
            id: id.clone(),
            author: String::new(),
            title: id.clone(),
            year: String::new(),
            edition: String::new(),
            place: row.file().to_owned(),
            provenance: Provenance::Shop,
            publisher_named: true,
            publisher_withheld: false,
        };
        self.new_sources.insert(id.clone(), source);
        id
    }

    fn classes(&self, row: &mut Row, column: &str) -> Vec<String> {
        let given = row.list(column);
        if given.is_empty() {
            row.refuse(column, "", "a class or a material", "fill in the field");
        }
        let mut found = Vec::new();
        for name in given {
            if self.classes.contains_key(&name) {
                found.push(name);
                continue;
            }
            match self.materials.get(&plain(&name)) {
                Some(ids) if ids.len() == 1 => found.extend(ids.iter().cloned()),
                Some(ids) => row.refuse(
                    column,
                    format!("\"{name}\""),
                    ids.iter().cloned().collect::<Vec<_>>().join(", "),
                    "the name means several materials: write the id of one",
                ),
                None => {
                    let names: Vec<&str> = self.classes.keys().map(String::as_str).collect();
                    row.name(column, |_| None::<()>, &names);
                }
            }
        }
        found
    }

    fn common(&mut self, row: &mut Row) -> Common {
        let limits = above(0.0, 1000.0);
        let low = row.number("hb_min", "HB", limits);
        let high = row.number("hb_max", "HB", limits);
        let hb = match (low, high) {
            (None, None) => None,
            (low, high) => Some((low.unwrap_or(0.0), high.unwrap_or(1000.0))),
        };
        if hb.is_some_and(|(low, high)| low > high) {
            row.refuse(
                "hb_min",
                row.text("hb_min").to_owned(),
                "not above hb_max",
                "exchange the two values",
            );
        }
        Common {
            id: row.text("id").to_owned(),
            classes: self.classes(row, "class"),
            material: row.text("material").to_owned(),
            hb,
            source: self.source(row, "src"),
            provenance: provenance(row, self.shop).unwrap_or(Provenance::Memory),
        }
    }

    fn triple(row: &mut Row, units: &[[UnitColumn; 2]; 3], top: f64) -> Option<[f64; 3]> {
        let printed = row.text("printed_in");
        let [low, start, high] = units;
        let limits = above(0.0, top);
        let column = if row.text(start[0].0).is_empty() && !row.text(start[1].0).is_empty() {
            start[1].0
        } else {
            start[0].0
        };
        let missing = row.text(start[0].0).is_empty() && row.text(start[1].0).is_empty();
        let s = row.quantity(start, limits, printed);
        let l = row.quantity(low, limits, printed);
        let h = row.quantity(high, limits, printed);
        if missing {
            row.refuse(
                column,
                "",
                "a value",
                "give the start value in one of its units",
            );
        }
        let s = s?;
        let (l, h) = (l.unwrap_or(s), h.unwrap_or(s));
        if !row.failed() {
            row.ordered(column, l, s, h);
        }
        Some([l, s, h])
    }

    pub(crate) fn speed(&mut self, row: &mut Row) -> Option<SpeedRow> {
        let common = self.common(row);
        let tools = tools(row);
        let process = process(row);
        let values = Self::triple(row, &SPEED_UNITS, 6000.0 / 60.0);
        (!row.failed()).then_some(())?;
        Some(SpeedRow {
            common,
            tools: tools?,
            process: process?,
            values: values?,
        })
    }

    pub(crate) fn feed(&mut self, row: &mut Row) -> Option<FeedRow> {
        let common = self.common(row);
        let tools = tools(row);
        let process = process(row);
        let length = above(0.0, 1.0);
        let low = row.quantity(
            &[
                ("dia_min_mm", "mm", 1.0, 1000.0),
                ("dia_min_in", "in", 25.4, 1000.0),
            ],
            length,
            "",
        );
        let high = row.quantity(
            &[
                ("dia_max_mm", "mm", 1.0, 1000.0),
                ("dia_max_in", "in", 25.4, 1000.0),
            ],
            length,
            "",
        );
        let diameter = low.or(high).zip(high.or(low));
        if diameter.is_some_and(|(low, high)| low > high) {
            row.refuse(
                "dia_min_mm",
                row.text("dia_min_mm").to_owned(),
                "not above dia_max_mm",
                "exchange the two values",
            );
        }
        let axial_depth = row.quantity(
            &[
                ("axial_depth_mm", "mm", 1.0, 1000.0),
                ("axial_depth_in", "in", 25.4, 1000.0),
            ],
            length,
            "",
        );
        let per = match row.text("per") {
            "tooth" => Some(true),
            "rev" => Some(false),
            "" => process.map(Process::is_milling),
            _ => row.name("per", |_| None, &["tooth", "rev"]),
        };
        let values = Self::triple(row, &FEED_UNITS, 5.0 / 1000.0);
        (!row.failed()).then_some(())?;
        Some(FeedRow {
            common,
            tools: tools?,
            process: process?,
            diameter,
            axial_depth,
            per_tooth: per?,
            values: values?,
        })
    }

    pub(crate) fn power(&mut self, row: &mut Row) -> Option<PowerRow> {
        let common = self.common(row);
        let efficiency = row.number("efficiency", "", above(0.0, 1.0));
        let measured_at = match row.text("measured_at") {
            "cutter" => Some(MeasuredAt::Cutter),
            "motor" => Some(MeasuredAt::Motor { efficiency }),
            "unstated" | "" => Some(MeasuredAt::Unstated),
            _ => row.name("measured_at", |_| None, &["cutter", "motor", "unstated"]),
        };
        let chip_thickness = row.quantity(
            &[
                ("chip_thickness_mm", "mm", 1.0, 1000.0),
                ("chip_thickness_in", "in", 25.4, 1000.0),
            ],
            above(0.0, 0.005),
            "",
        );
        let values = Self::triple(row, &POWER_UNITS, 50e9);
        (!row.failed()).then_some(())?;
        Some(PowerRow {
            common,
            measured_at: measured_at?,
            chip_thickness,
            values: values?,
        })
    }

    pub(crate) fn life(&mut self, row: &mut Row) -> Option<LifeRow> {
        let tools = tools(row);
        let exponent = above(0.0, 0.999);
        if row.text("n").is_empty() {
            row.required("n");
        }
        let n = row.number("n", "", exponent);
        let low = row.number("n_low", "", exponent).or(n);
        let high = row.number("n_high", "", exponent).or(n);
        if let (Some(low), Some(n), Some(high)) = (low, n, high) {
            row.ordered("n", low, n, high);
        }
        let speed = row.quantity(
            &[
                ("c_m_min", "m/min", 1.0, 60.0),
                ("c_sfm", "ft/min", 0.3048, 60.0),
            ],
            above(0.0, 1000.0),
            "",
        );
        let length = above(0.0, 0.1);
        let feed = row.text("feed_mm").to_owned();
        let feed = if feed == "variable" {
            None
        } else {
            row.quantity(
                &[
                    ("feed_mm", "mm", 1.0, 1000.0),
                    ("feed_in", "in", 25.4, 1000.0),
                ],
                length,
                "",
            )
        };
        let depth = row.quantity(
            &[
                ("depth_mm", "mm", 1.0, 1000.0),
                ("depth_in", "in", 25.4, 1000.0),
            ],
            length,
            "",
        );
        let source = self.source(row, "src");
        let provenance = provenance(row, self.shop);
        (!row.failed()).then_some(())?;
        Some(LifeRow {
            id: row.text("id").to_owned(),
            work: row.text("work").to_owned(),
            tools: tools?,
            exponent: [low?, n?, high?],
            speed_at_one_minute: speed,
            feed,
            depth,
            criterion: row.text("criterion").to_owned(),
            source,
            provenance: provenance?,
            note: row.text("note").to_owned(),
        })
    }

    pub(crate) fn hardness(&mut self, row: &mut Row) -> Option<HardnessRow> {
        let hrc = row.number("hrc", "HRC", from_below(20.0, 70.0));
        let hrb = row.number("hrb", "HRB", from_below(40.0, 101.0));
        let hv = row.number("hv", "HV", above(10.0, 1500.0));
        let hb = row.number("hb", "HB", above(10.0, 700.0));
        row.number("tensile_mpa", "N/mm2", above(0.0, 4000.0));
        self.source(row, "src");
        provenance(row, self.shop);
        if [hrc, hrb, hv, hb].iter().flatten().count() < 2 && !row.failed() {
            row.refuse(
                "hv",
                "",
                "at least two of hrc, hrb, hv, hb",
                "fill in a second scale",
            );
        }
        (!row.failed()).then(|| HardnessRow {
            id: row.text("id").to_owned(),
            hrc,
            hrb,
            hv,
            hb,
        })
    }

    /// A material with its hardness as the table gives it; the scale comes back beside it.
    pub(crate) fn material(
        &mut self,
        row: &mut Row,
    ) -> Option<(Material, Option<(f64, f64, String)>)> {
        let names: Vec<&str> = Iso513::ALL.iter().map(|group| group.name()).collect();
        let iso513 = row.name("iso513", Iso513::parse, &names);
        let name = row.required("name");
        let low = row.number("hardness_min", "", above(0.0, 1000.0));
        let high = row.number("hardness_max", "", above(0.0, 1000.0));
        let hardness = low.or(high).zip(high.or(low));
        if hardness.is_some_and(|(low, high)| low > high) {
            row.refuse(
                "hardness_min",
                row.text("hardness_min").to_owned(),
                "not above hardness_max",
                "exchange the two values",
            );
        }
        let scale = match row.text("hardness_scale") {
            text @ ("HB" | "HRC" | "HRB" | "HV") => Some(text.to_owned()),
            "" if hardness.is_none() => Some(String::new()),
            _ => row.name("hardness_scale", |_| None, &["HB", "HRC", "HRB", "HV"]),
        };
        let tensile = row.quantity(
            &[
                ("tensile_mpa", "N/mm2", 1e6, 1.0),
                ("tensile_ksi", "ksi", 4448.2216152605, 0.00064516),
            ],
            above(0.0, 4e9),
            "",
        );
        let mut sources = Vec::new();
        let mut pairs = Vec::new();
        for (kc, psi, mc, src) in [
            ("kc11_mpa", Some("kc11_psi"), "mc", "src_kc"),
            ("kc11_second_mpa", None, "mc_second", "src_kc_second"),
            ("kc11_third_mpa", None, "mc_third", "src_kc_third"),
        ] {
            let mut columns: Vec<UnitColumn> = vec![(kc, "N/mm2", 1e6, 1.0)];
            columns.extend(
                psi.map(|name| -> UnitColumn { (name, "psi", 4.4482216152605, 0.00064516) }),
            );
            let value = row.quantity(&columns, above(100e6, 10_000e6), "");
            let exponent = row.number(mc, "", from_below(0.0, 1.0));
            let given = columns.iter().any(|column| !row.text(column.0).is_empty());
            if given == row.text(mc).is_empty() {
                row.refuse(
                    if given { mc } else { kc },
                    "",
                    "a value",
                    "k_c1.1 and m_c go together: give both or neither",
                );
            }
            if let (Some(kc11), Some(exponent)) = (value, exponent) {
                let source = self.source(row, src);
                pairs.push(KienzlePair {
                    kc11: si(kc11),
                    exponent: si(exponent),
                    source,
                });
            }
        }
        let density = row.number("density_kg_m3", "kg/m3", above(100.0, 25_000.0));
        let modulus = row.number("e_gpa", "GPa", above(0.1, 1200.0));
        let machinability = row.number("machinability_pct", "%", above(0.0, 2000.0));
        for column in [
            "src",
            "src_hardness",
            "src_tensile",
            "src_phys",
            "src_machinability",
        ] {
            if !row.text(column).is_empty() {
                let what = column.strip_prefix("src_").unwrap_or("all");
                sources.push((what.to_owned(), self.source(row, column)));
            }
        }
        if sources.is_empty() && self.shop {
            sources.push(("all".to_owned(), self.source(row, "src")));
        }
        let classes = if row.text("classes").is_empty() && self.shop {
            Vec::new()
        } else {
            self.material_classes(row)
        };
        let provenance = provenance(row, self.shop);
        (!row.failed()).then_some(())?;
        let material = Material {
            id: row.text("id").to_owned(),
            name,
            aliases: row.list("aliases"),
            iso513: iso513?,
            condition: row.text("condition").to_owned(),
            hardness_brinell: None,
            beyond_brinell: false,
            tensile: tensile.map(si),
            pairs,
            density: density.map(si),
            youngs_modulus: modulus.map(|x| si(x * 1e9)),
            machinability: machinability.map(|x| si(x / 100.0)),
            classes,
            cautions: row.list("cautions"),
            sources,
            provenance: provenance?,
            assumptions: Vec::new(),
            note: row.text("note").to_owned(),
        };
        let scale = scale?;
        Some((material, hardness.map(|(low, high)| (low, high, scale))))
    }

    fn material_classes(&self, row: &mut Row) -> Vec<String> {
        let given = row.list("classes");
        for name in &given {
            if !self.classes.contains_key(name) {
                let names: Vec<&str> = self.classes.keys().map(String::as_str).collect();
                row.refuse(
                    "classes",
                    format!("\"{name}\""),
                    names.join(", "),
                    "use ids of the table of classes",
                );
            }
        }
        given
    }
}

pub(crate) fn source_row(row: &mut Row, shop: bool) -> Option<Source> {
    let title = row.required("title");
    let provenance = provenance(row, shop);
    let publisher = row.text("publisher");
    if !matches!(publisher, "named" | "withheld" | "none") && !(shop && publisher.is_empty()) {
        row.name("publisher", |_| None::<()>, &["named", "withheld", "none"]);
    }
    let how = row.text("how");
    let place = row.text("place");
    (!row.failed()).then_some(())?;
    Some(Source {
        id: row.text("id").to_owned(),
        author: row.text("author").to_owned(),
        title,
        year: row.text("year").to_owned(),
        edition: row.text("edition").to_owned(),
        place: if how.is_empty() {
            place.to_owned()
        } else {
            format!("{place} ({how})")
        },
        provenance: provenance?,
        publisher_named: matches!(publisher, "named" | ""),
        publisher_withheld: publisher == "withheld",
    })
}

pub(crate) fn class_row(row: &mut Row) -> Option<(String, Class)> {
    let factor = if row.text("speed_factor").is_empty() {
        Some(1.0)
    } else {
        row.number("speed_factor", "", above(0.0, 1.0))
    };
    let optional = |text: &str| (!text.is_empty()).then(|| text.to_owned());
    (!row.failed()).then_some(())?;
    Some((
        row.text("id").to_owned(),
        Class {
            name: row.text("name").to_owned(),
            parent: optional(row.text("parent")),
            family: row.text("family") == "yes",
            stand_in: optional(row.text("stand_in")),
            speed_factor: factor?,
            feed_stand_in: optional(row.text("feed_stand_in")),
            reason: row.text("reason").to_owned(),
        },
    ))
}
