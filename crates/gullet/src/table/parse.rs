//! How a line of text becomes a row.

use super::reader::{Row, UnitColumn, above, clip, from_below};
use super::rows::{
    Class, Common, FeedRow, HardnessRow, LifeRow, MeasuredAt, PowerRow, SawRow, SpeedRow,
};
use super::types::{Process, Provenance, Source, ToolMaterial, plain};
use crate::error::nearest;
use std::collections::{BTreeMap, BTreeSet};

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
/// 1 in2 in m2.
const IN2: f64 = 0.0254 * 0.0254;
const RATE_UNITS: [[UnitColumn; 2]; 3] = [
    [
        ("rate_low_cm2_min", "cm2/min", 1.0, 600_000.0),
        ("rate_low_in2_min", "in2/min", IN2, 60.0),
    ],
    [
        ("rate_start_cm2_min", "cm2/min", 1.0, 600_000.0),
        ("rate_start_in2_min", "in2/min", IN2, 60.0),
    ],
    [
        ("rate_high_cm2_min", "cm2/min", 1.0, 600_000.0),
        ("rate_high_in2_min", "in2/min", IN2, 60.0),
    ],
];
const TESTED_UNITS: [[UnitColumn; 2]; 2] = [
    [
        ("vc_tested_low_m_min", "m/min", 1.0, 60.0),
        ("sfm_tested_low", "ft/min", 0.3048, 60.0),
    ],
    [
        ("vc_tested_high_m_min", "m/min", 1.0, 60.0),
        ("sfm_tested_high", "ft/min", 0.3048, 60.0),
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

pub(crate) fn provenance(row: &mut Row, shop: bool) -> Option<Provenance> {
    if shop {
        return Some(Provenance::Shop);
    }
    let names: Vec<&str> = Provenance::ALL.iter().map(|value| value.name()).collect();
    row.name("provenance", Provenance::parse, &names)
}

impl Context<'_> {
    pub(crate) fn source(&mut self, row: &mut Row, column: &str) -> String {
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
                    clip(&name),
                    ids.iter().cloned().collect::<Vec<_>>().join(", "),
                    "the name means several materials: write the id of one",
                ),
                None => {
                    let near = nearest(
                        &name,
                        self.classes
                            .keys()
                            .chain(self.materials.values().flatten())
                            .map(String::as_str),
                    );
                    row.refuse(
                        column,
                        clip(&name),
                        format!("one of {} classes, or a material", self.classes.len()),
                        near.map_or_else(
                            || "use an id of the table of classes, or a material".to_owned(),
                            |near| format!("did you mean {near}?"),
                        ),
                    );
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
        let column = start
            .iter()
            .find(|column| !row.text(column.0).is_empty())
            .or_else(|| start.iter().find(|column| row.has(column.0)))
            .map_or(start[0].0, |column| column.0);
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

    pub(crate) fn saw(&mut self, row: &mut Row) -> Option<SawRow> {
        let common = self.common(row);
        let [low, _, high] = SPEED_UNITS;
        let speed = above(0.0, 50.0);
        let slow = row.quantity(&low, speed, "");
        let fast = row.quantity(&high, speed, "").or(slow);
        let slow = slow.or(fast);
        let length = above(0.0, 5.0);
        let narrow = row.quantity(
            &[
                ("stock_min_mm", "mm", 1.0, 1000.0),
                ("stock_min_in", "in", 25.4, 1000.0),
            ],
            length,
            "",
        );
        let wide = row.quantity(
            &[
                ("stock_max_mm", "mm", 1.0, 1000.0),
                ("stock_max_in", "in", 25.4, 1000.0),
            ],
            length,
            "",
        );
        let stock = narrow.or(wide).zip(wide.or(narrow));
        for (given, column, what) in [
            (slow, "vc_low_m_min", "the blade speed"),
            (
                stock.map(|(low, _)| low),
                "stock_min_mm",
                "the width of the stock",
            ),
        ] {
            if given.is_none() && !row.failed() {
                row.refuse(
                    column,
                    "",
                    "a value",
                    format!("give {what} the rate belongs to"),
                );
            }
        }
        if let (Some(low), Some(high)) = (slow, fast) {
            row.ordered("vc_low_m_min", low, low, high);
        }
        if let Some((low, high)) = stock {
            row.ordered("stock_min_mm", low, low, high);
        }
        let values = Self::triple(row, &RATE_UNITS, 0.01);
        (!row.failed()).then_some(())?;
        let (slow, fast) = (slow?, fast?);
        Some(SawRow {
            common,
            stock: stock?,
            blade_speed: [slow, (slow + fast) / 2.0, fast],
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
        let limits = from_below(-10.0, 10.0);
        let feed_exponent = row.number("feed_exponent", "", limits);
        let depth_exponent = row.number("depth_exponent", "", limits);
        for (exponent, reference, column, column_in) in [
            (feed_exponent, feed, "feed_mm", "feed_in"),
            (depth_exponent, depth, "depth_mm", "depth_in"),
        ] {
            if exponent.is_some() && reference.is_none() {
                row.refuse(
                    column,
                    "",
                    format!("a value in {column} or {column_in}"),
                    "an exponent goes with the reference its C is for: 1 mm where C is of an equation in mm",
                );
            }
        }
        let slowest = row.quantity(&TESTED_UNITS[0], above(0.0, 1000.0), "");
        let fastest = row.quantity(&TESTED_UNITS[1], above(0.0, 1000.0), "");
        let tested_speeds = slowest.zip(fastest);
        if tested_speeds.is_some_and(|(low, high)| low > high)
            || slowest.is_some() != fastest.is_some()
        {
            row.refuse(
                "vc_tested_low_m_min",
                row.text("vc_tested_low_m_min").to_owned(),
                "both speeds of the tests, the lower one first",
                "give both or neither, in order",
            );
        }
        let classes = if row.text("class").is_empty() {
            Vec::new()
        } else {
            self.classes(row, "class")
        };
        let source = self.source(row, "src");
        let provenance = provenance(row, self.shop);
        (!row.failed()).then_some(())?;
        Some(LifeRow {
            id: row.text("id").to_owned(),
            work: row.text("work").to_owned(),
            classes,
            tools: tools?,
            exponent: [low?, n?, high?],
            speed_at_one_minute: speed,
            feed,
            depth,
            feed_exponent,
            depth_exponent,
            tested_speeds,
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
}
