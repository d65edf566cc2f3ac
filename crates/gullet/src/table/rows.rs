//! The rows of the tables, typed, and the columns of each table.

use super::types::{Process, Provenance, ToolMaterial};

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

#[derive(Debug, Clone)]
pub(crate) struct SawRow {
    pub common: Common,
    /// Widths of the stock in m the values hold for, from smallest to largest.
    pub stock: (f64, f64),
    /// Blade speed in m/s the rate belongs to: low, middle, high.
    pub blade_speed: [f64; 3],
    /// Low, start, high in m2/s.
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
    /// Classes or ids of materials the row is for; empty where the source's word means none.
    pub classes: Vec<String>,
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
    /// Exponent a of `v T^n (f/f_0)^a (d/d_0)^b = C`, where feed is the reference f_0.
    pub feed_exponent: Option<f64>,
    /// Exponent b of that law, where depth is the reference d_0.
    pub depth_exponent: Option<f64>,
    /// Lowest and highest cutting speed in m/s of the tests.
    pub tested_speeds: Option<(f64, f64)>,
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
pub(crate) const SAW_COLUMNS: &[&str] = &[
    "id",
    "class",
    "material",
    "hb_min",
    "hb_max",
    "stock_min_mm",
    "stock_max_mm",
    "stock_min_in",
    "stock_max_in",
    "vc_low_m_min",
    "vc_high_m_min",
    "sfm_low",
    "sfm_high",
    "rate_low_cm2_min",
    "rate_start_cm2_min",
    "rate_high_cm2_min",
    "rate_low_in2_min",
    "rate_start_in2_min",
    "rate_high_in2_min",
    "printed_in",
    "range_rule",
    "basis",
    "src",
    "provenance",
    "note",
];
pub(crate) const LIFE_COLUMNS: &[&str] = &[
    "id",
    "work",
    "class",
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
    "feed_exponent",
    "depth_exponent",
    "vc_tested_low_m_min",
    "vc_tested_high_m_min",
    "sfm_tested_low",
    "sfm_tested_high",
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
