//! The tables as CSV text. Every row names its source; `sources.csv` says what each source is.

/// Material classes: the tree, and which class stands in for which.
pub const CLASSES: &str = include_str!("tables/classes.csv");
/// Cutting speeds by class, tool material and process.
pub const CUTTING_SPEEDS: &str = include_str!("tables/cutting_speeds.csv");
/// Drills of standard sizes.
pub const DRILLS: &str = include_str!("tables/drills.csv");
/// Feeds per tooth and per revolution.
pub const FEEDS: &str = include_str!("tables/feeds.csv");
/// Hardness conversion points.
pub const HARDNESS: &str = include_str!("tables/hardness.csv");
/// Work materials.
pub const MATERIALS: &str = include_str!("tables/materials.csv");
/// Coefficients of the linear-edge force model, each with its conditions.
pub const MECHANISTIC: &str = include_str!("tables/mechanistic.csv");
/// Area rates of band sawing.
pub const SAW_RATES: &str = include_str!("tables/saw_rates.csv");
/// Sources of every value.
pub const SOURCES: &str = include_str!("tables/sources.csv");
/// Taylor exponents and constants.
pub const TOOL_LIFE: &str = include_str!("tables/tool_life.csv");
/// Unit power (specific cutting energy).
pub const UNIT_POWER: &str = include_str!("tables/unit_power.csv");

/// Every table by its file name.
pub const TABLES: &[(&str, &str)] = &[
    ("classes.csv", CLASSES),
    ("cutting_speeds.csv", CUTTING_SPEEDS),
    ("drills.csv", DRILLS),
    ("feeds.csv", FEEDS),
    ("hardness.csv", HARDNESS),
    ("materials.csv", MATERIALS),
    ("mechanistic.csv", MECHANISTIC),
    ("saw_rates.csv", SAW_RATES),
    ("sources.csv", SOURCES),
    ("tool_life.csv", TOOL_LIFE),
    ("unit_power.csv", UNIT_POWER),
];
