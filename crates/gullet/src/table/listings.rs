//! The tables as listings, one list of fields a table.

use super::Library;
use super::drill::Drill;
use super::rows::{FeedRow, HardnessRow, LifeRow, MeasuredAt, PowerRow, SawRow, SpeedRow};
use super::types::{Material, Source, ToolMaterial};
use crate::error::{Result, unknown_name};
use crate::listing::{Cell, Column, Field, Form, Listing};
use crate::quantity::Kind;

const LENGTH: Form = Form::Number(Kind::Length);
const PRESSURE: Form = Form::Number(Kind::Pressure);
const RATIO: Form = Form::Number(Kind::Ratio);
const SPEED: Form = Form::Number(Kind::Velocity);
const AREA_RATE: Form = Form::Number(Kind::AreaRate);
const BRINELL: Form = Form::Range(Kind::Ratio);

fn tools(tools: &[ToolMaterial]) -> Cell {
    Cell::Texts(tools.iter().map(|tool| tool.name().to_owned()).collect())
}

const MATERIALS: &[Field<Material>] = &[
    Field::<Material>::new("id", Form::Text, "Id, unique in the library.", |m| {
        (&m.id).into()
    }),
    Field::<Material>::new("name", Form::Text, "Name.", |m| (&m.name).into()),
    Field::<Material>::new("aliases", Form::Texts, "Other names.", |m| {
        (&m.aliases).into()
    }),
    Field::<Material>::new("iso513", Form::Text, "Application group of ISO 513.", |m| {
        m.iso513.name().into()
    }),
    Field::<Material>::new(
        "condition",
        Form::Text,
        "Condition, such as cold drawn.",
        |m| (&m.condition).into(),
    ),
    Field::<Material>::new(
        "hardness_brinell",
        BRINELL,
        "Brinell hardness from lowest to highest.",
        |m| m.hardness_brinell.into(),
    )
    .optional(),
    Field::<Material>::new("tensile", PRESSURE, "Tensile strength.", |m| {
        m.tensile.map(|v| v.value).into()
    })
    .optional()
    .shown_in("N/mm2", "ksi"),
    Field::<Material>::new(
        "kc11",
        PRESSURE,
        "Specific cutting force k_c1.1 of the default pair.",
        |m| m.pairs.first().map(|pair| pair.kc11.value).into(),
    )
    .optional(),
    Field::<Material>::new(
        "chip_exponent",
        RATIO,
        "Exponent m_c of the default pair.",
        |m| m.pairs.first().map(|pair| pair.exponent.value).into(),
    )
    .optional(),
    Field::<Material>::new(
        "force_source",
        Form::Text,
        "Id of the source of the default pair.",
        |m| m.pairs.first().map(|pair| &pair.source).into(),
    )
    .optional(),
    Field::<Material>::new("density", Form::Number(Kind::Density), "Density.", |m| {
        m.density.map(|v| v.value).into()
    })
    .optional(),
    Field::<Material>::new("youngs_modulus", PRESSURE, "Young's modulus.", |m| {
        m.youngs_modulus.map(|v| v.value).into()
    })
    .optional()
    .shown_in("GPa", "ksi"),
    Field::<Material>::new(
        "machinability",
        RATIO,
        "Machinability against its list's reference steel.",
        |m| m.machinability.map(|v| v.value).into(),
    )
    .optional(),
    Field::<Material>::new(
        "classes",
        Form::Texts,
        "Classes the other tables hold it under, the nearest first.",
        |m| (&m.classes).into(),
    ),
    Field::<Material>::new("cautions", Form::Texts, "Tags of dangers.", |m| {
        (&m.cautions).into()
    }),
    Field::<Material>::new(
        "sources",
        Form::Pairs,
        "What comes from which source.",
        |m| Cell::Pairs(m.sources.clone()),
    ),
    Field::<Material>::new("provenance", Form::Text, "How the row came here.", |m| {
        m.provenance.name().into()
    }),
    Field::<Material>::new("note", Form::Text, "Remark of the table.", |m| {
        (&m.note).into()
    }),
];

impl Material {
    /// What a material tells of itself: the columns of the table of materials.
    pub fn columns() -> impl Iterator<Item = Column> {
        MATERIALS.iter().map(|field| field.column)
    }

    /// Every column with its cell.
    pub fn fields(&self) -> impl Iterator<Item = (Column, Cell)> {
        MATERIALS
            .iter()
            .map(|field| (field.column, (field.cell)(self)))
    }
}

const SOURCES: &[Field<Source>] = &[
    Field::<Source>::new("id", Form::Text, "Short id that rows refer to.", |s| {
        (&s.id).into()
    }),
    Field::<Source>::new("author", Form::Text, "Author.", |s| (&s.author).into()),
    Field::<Source>::new("title", Form::Text, "Title.", |s| (&s.title).into()),
    Field::<Source>::new("year", Form::Text, "Year as printed.", |s| (&s.year).into()),
    Field::<Source>::new("edition", Form::Text, "Edition.", |s| (&s.edition).into()),
    Field::<Source>::new(
        "place",
        Form::Text,
        "Table, page or chapter, and how it was reached.",
        |s| (&s.place).into(),
    ),
    Field::<Source>::new("provenance", Form::Text, "Whether it was opened.", |s| {
        s.provenance.name().into()
    }),
];

macro_rules! common {
    ($row:ty; $($field:expr),* $(,)?) => {{
        const FIELDS: &[Field<$row>] = &[
            Field::<$row>::new("id", Form::Text, "Id of the row.", |r| (&r.common.id).into()),
            Field::<$row>::new("classes", Form::Texts, "Classes or ids of materials the row is for.", |r| {
                (&r.common.classes).into()
            }),
            Field::<$row>::new("material", Form::Text, "The material as the source words it.", |r| {
                (&r.common.material).into()
            }),
            Field::<$row>::new("hardness_brinell", BRINELL, "Brinell hardness the row is for.", |r| r.common.hb.into())
                .optional(),
            $($field,)*
            Field::<$row>::new("source", Form::Text, "Id of the source.", |r| (&r.common.source).into()),
            Field::<$row>::new("provenance", Form::Text, "How the value came here.", |r| {
                r.common.provenance.name().into()
            }),
        ];
        FIELDS
    }};
}

const SPEEDS: &[Field<SpeedRow>] = common![SpeedRow;
    Field::<SpeedRow>::new("tool_materials", Form::Texts, "Tool materials the row is for.", |r| tools(&r.tools)),
    Field::<SpeedRow>::new("process", Form::Text, "Way of cutting the row is for.", |r| r.process.name().into()),
    Field::<SpeedRow>::new("cutting_speed_low", SPEED, "Lowest cutting speed.", |r| r.values[0].into()),
    Field::<SpeedRow>::new("cutting_speed_start", SPEED, "Cutting speed to start with.", |r| r.values[1].into()),
    Field::<SpeedRow>::new("cutting_speed_high", SPEED, "Highest cutting speed.", |r| r.values[2].into()),
];

const FEEDS: &[Field<FeedRow>] = common![FeedRow;
    Field::<FeedRow>::new("tool_materials", Form::Texts, "Tool materials the row is for.", |r| tools(&r.tools)),
    Field::<FeedRow>::new("process", Form::Text, "Way of cutting the row is for.", |r| r.process.name().into()),
    Field::<FeedRow>::new("diameter", Form::Range(Kind::Length), "Diameters the row is for.", |r| r.diameter.into()).optional(),
    Field::<FeedRow>::new("axial_depth", LENGTH, "Axial depth of the table's column.", |r| r.axial_depth.into()).optional(),
    Field::<FeedRow>::new("per", Form::Text, "Whether the feed is one of a tooth or of a revolution.", |r| {
        if r.per_tooth { "tooth" } else { "revolution" }.into()
    }),
    Field::<FeedRow>::new("feed_low", LENGTH, "Lowest feed.", |r| r.values[0].into()),
    Field::<FeedRow>::new("feed_start", LENGTH, "Feed to start with.", |r| r.values[1].into()),
    Field::<FeedRow>::new("feed_high", LENGTH, "Highest feed.", |r| r.values[2].into()),
];

const POWERS: &[Field<PowerRow>] = common![PowerRow;
    Field::<PowerRow>::new("measured_at", Form::Text, "Where the power was measured.", |r| {
        match r.measured_at {
            MeasuredAt::Cutter => "cutter",
            MeasuredAt::Motor { .. } => "motor",
            MeasuredAt::Unstated => "unstated",
        }
        .into()
    }),
    Field::<PowerRow>::new("efficiency", RATIO, "Efficiency from motor to cutter, as stated.", |r| {
        match r.measured_at {
            MeasuredAt::Motor { efficiency } => efficiency.into(),
            _ => Cell::Empty,
        }
    })
    .optional(),
    Field::<PowerRow>::new("chip_thickness", LENGTH, "Chip thickness the value was found at.", |r| r.chip_thickness.into())
        .optional(),
    Field::<PowerRow>::new("unit_power_low", PRESSURE, "Lowest unit power.", |r| r.values[0].into())
        .shown_in("J/mm3", "hp.min/in3"),
    Field::<PowerRow>::new("unit_power_start", PRESSURE, "Unit power to reckon with.", |r| r.values[1].into())
        .shown_in("J/mm3", "hp.min/in3"),
    Field::<PowerRow>::new("unit_power_high", PRESSURE, "Highest unit power.", |r| r.values[2].into())
        .shown_in("J/mm3", "hp.min/in3"),
];

const SAWS: &[Field<SawRow>] = common![SawRow;
    Field::<SawRow>::new("stock", Form::Range(Kind::Length), "Widths of the stock the row is for.", |r| Some(r.stock).into()),
    Field::<SawRow>::new("blade_speed_low", SPEED, "Lowest blade speed the rate belongs to.", |r| r.blade_speed[0].into()),
    Field::<SawRow>::new("blade_speed_high", SPEED, "Highest blade speed the rate belongs to.", |r| r.blade_speed[2].into()),
    Field::<SawRow>::new("area_rate_low", AREA_RATE, "Lowest area sawn per time.", |r| r.values[0].into()),
    Field::<SawRow>::new("area_rate_start", AREA_RATE, "Area sawn per time to start with.", |r| r.values[1].into()),
    Field::<SawRow>::new("area_rate_high", AREA_RATE, "Highest area sawn per time.", |r| r.values[2].into()),
];

const LIVES: &[Field<LifeRow>] = &[
    Field::<LifeRow>::new("id", Form::Text, "Id of the row.", |r| (&r.id).into()),
    Field::<LifeRow>::new(
        "work",
        Form::Text,
        "Work material as the source words it.",
        |r| (&r.work).into(),
    ),
    Field::<LifeRow>::new(
        "classes",
        Form::Texts,
        "Classes or ids of materials the row is for.",
        |r| (&r.classes).into(),
    ),
    Field::<LifeRow>::new(
        "tool_materials",
        Form::Texts,
        "Tool materials the row is for.",
        |r| tools(&r.tools),
    ),
    Field::<LifeRow>::new(
        "taylor_exponent_low",
        RATIO,
        "Lowest exponent n of v T^n = C.",
        |r| r.exponent[0].into(),
    ),
    Field::<LifeRow>::new("taylor_exponent", RATIO, "Typical exponent.", |r| {
        r.exponent[1].into()
    }),
    Field::<LifeRow>::new("taylor_exponent_high", RATIO, "Highest exponent.", |r| {
        r.exponent[2].into()
    }),
    Field::<LifeRow>::new(
        "taylor_speed",
        SPEED,
        "C, the cutting speed for a life of one minute.",
        |r| r.speed_at_one_minute.into(),
    )
    .optional(),
    Field::<LifeRow>::new(
        "feed",
        LENGTH,
        "Feed per revolution the constants were found at.",
        |r| r.feed.into(),
    )
    .optional(),
    Field::<LifeRow>::new(
        "depth",
        LENGTH,
        "Depth of cut the constants were found at.",
        |r| r.depth.into(),
    )
    .optional(),
    Field::<LifeRow>::new(
        "feed_exponent",
        RATIO,
        "Exponent a of v T^n (f/f_0)^a (d/d_0)^b = C, the feed above being f_0.",
        |r| r.feed_exponent.into(),
    )
    .optional(),
    Field::<LifeRow>::new(
        "depth_exponent",
        RATIO,
        "Exponent b of that law, the depth above being d_0.",
        |r| r.depth_exponent.into(),
    )
    .optional(),
    Field::<LifeRow>::new(
        "tested_speeds",
        Form::Range(Kind::Velocity),
        "Cutting speeds of the tests.",
        |r| r.tested_speeds.into(),
    )
    .optional(),
    Field::<LifeRow>::new("criterion", Form::Text, "Wear criterion.", |r| {
        (&r.criterion).into()
    }),
    Field::<LifeRow>::new("source", Form::Text, "Id of the source.", |r| {
        (&r.source).into()
    }),
    Field::<LifeRow>::new("provenance", Form::Text, "How the value came here.", |r| {
        r.provenance.name().into()
    }),
    Field::<LifeRow>::new("note", Form::Text, "Remark of the table.", |r| {
        (&r.note).into()
    }),
];

const HARDNESS: &[Field<HardnessRow>] = &[
    Field::<HardnessRow>::new("id", Form::Text, "Id of the row.", |r| (&r.id).into()),
    Field::<HardnessRow>::new("rockwell_c", RATIO, "Rockwell C.", |r| r.hrc.into()).optional(),
    Field::<HardnessRow>::new("rockwell_b", RATIO, "Rockwell B.", |r| r.hrb.into()).optional(),
    Field::<HardnessRow>::new("vickers", RATIO, "Vickers.", |r| r.hv.into()).optional(),
    Field::<HardnessRow>::new("brinell", RATIO, "Brinell.", |r| r.hb.into()).optional(),
];

const DRILLS: &[Field<Drill>] = &[
    Field::<Drill>::new("id", Form::Text, "Id of the row.", |d| (&d.id).into()),
    Field::<Drill>::new("name", Form::Text, "Name in the trade.", |d| {
        (&d.name).into()
    }),
    Field::<Drill>::new("set", Form::Text, "Set it belongs to.", |d| {
        d.set.name().into()
    }),
    Field::<Drill>::new("diameter", LENGTH, "Diameter.", |d| d.diameter.value.into()),
    Field::<Drill>::new("source", Form::Text, "Id of the source.", |d| {
        (&d.source).into()
    }),
    Field::<Drill>::new("provenance", Form::Text, "How the row came here.", |d| {
        d.provenance.name().into()
    }),
];

impl Library {
    /// Names of the tables that can be listed.
    pub const LISTINGS: &'static [&'static str] = &[
        "materials",
        "cutting_speeds",
        "feeds",
        "unit_power",
        "saw_rates",
        "tool_life",
        "hardness",
        "drills",
        "sources",
    ];

    /// A table with every row, a shop's own included.
    ///
    /// # Errors
    /// [`Code::UnknownName`](crate::error::Code::UnknownName) for another name.
    ///
    /// ```
    /// let feeds = gullet::table::Library::builtin().listing("feeds")?;
    /// assert!(feeds.columns.iter().any(|column| column.name == "feed_start"));
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn listing(&self, name: &str) -> Result<Listing> {
        Ok(match name {
            "materials" => Listing::new("materials", MATERIALS, &self.materials),
            "cutting_speeds" => Listing::new("cutting_speeds", SPEEDS, &self.speeds),
            "feeds" => Listing::new("feeds", FEEDS, &self.feeds),
            "unit_power" => Listing::new("unit_power", POWERS, &self.powers),
            "saw_rates" => Listing::new("saw_rates", SAWS, &self.saws),
            "tool_life" => Listing::new("tool_life", LIVES, &self.lives),
            "hardness" => Listing::new("hardness", HARDNESS, &self.hardness),
            "drills" => Listing::new("drills", DRILLS, &self.drills),
            "sources" => Listing::new("sources", SOURCES, &self.sources),
            _ => {
                let names = Library::LISTINGS.iter().copied();
                return Err(unknown_name("table", name, names).into());
            }
        })
    }
}
