//! The limits and the struct of a cut, from the core's lists of limits, settings and consequences.

use crate::status::variants;
use crate::unit::{named, suffix};
use crate::{HEAD, Outcome};
use gullet::operation::{Consequences, Field, LimitName, Settings};
use gullet::quantity::Kind;

/// What the tables' ranges give: name, kind, meaning; the core's `Spread` has one field for each.
const SPREAD: &[(&str, Kind, &str)] = &[
    (
        "cutting_speed",
        Kind::Velocity,
        "Cutting speed of the tables",
    ),
    (
        "feed_per_tooth",
        Kind::Length,
        "Feed per tooth of the tables",
    ),
    (
        "force",
        Kind::Force,
        "Mean tangential force at the settings, over the pairs of the material",
    ),
    (
        "power",
        Kind::Power,
        "Power at the cutter at the settings, over the pairs of the material",
    ),
    (
        "time",
        Kind::Time,
        "Time of the pass with speed and feed at the ends of the tables",
    ),
];
const BANDS: &[(&str, &str)] = &[
    ("low", "low end"),
    ("start", "starting value"),
    ("high", "high end"),
];

/// Fields of the struct, the values that fill them, and their size in bytes.
#[derive(Default)]
struct Members {
    fields: String,
    values: String,
    size: usize,
}

impl Members {
    fn number(&mut self, name: &str, kind: Kind, meaning: &str, value: &str) -> Outcome<()> {
        let member = named(name, kind)?;
        self.fields += &format!("    /// {meaning}\n    pub {member}: f64,\n");
        self.values += &format!("            {member}: {value},\n");
        self.size += 8;
        Ok(())
    }

    fn flag(&mut self, name: &str, meaning: &str, value: &str) {
        self.fields += &format!("    /// {meaning}\n    pub {name}: i32,\n");
        self.values += &format!("            {name}: {value},\n");
        self.size += 4;
    }
}

fn members() -> Outcome<Members> {
    let mut members = Members::default();
    let mut optional = Vec::new();
    for (record, list) in [
        ("settings", Settings::FIELDS),
        ("consequences", Consequences::FIELDS),
    ] {
        for field in list {
            let Field {
                name,
                kind,
                meaning,
                ..
            } = *field;
            let value = format!("cut.{record}.{name}");
            if field.optional {
                members.number(
                    name,
                    kind,
                    meaning,
                    &format!("{value}.map_or(0.0, |v| v.value)"),
                )?;
                optional.push((name, format!("i32::from({value}.is_some())")));
            } else {
                members.number(name, kind, meaning, &format!("{value}.value"))?;
            }
        }
    }
    for (name, kind, meaning) in SPREAD {
        for (end, what) in BANDS {
            // The settings have a cutting speed and a feed per tooth of their own.
            let member = format!("{name}_{end}");
            let value = format!("cut.spread.{name}.{end}.value");
            members.number(&member, *kind, &format!("{meaning}: {what}."), &value)?;
        }
    }
    for (name, value) in &optional {
        let meaning = format!("1 where {name} is known, 0 where it is not and its field is 0.");
        members.flag(&format!("{name}_known"), &meaning, value);
    }
    if optional.len() % 2 == 1 {
        members.flag("reserved", "Zero.", "0");
    }
    Ok(members)
}

/// The limits: constants, names and units.
fn limits() -> Outcome<String> {
    let found = variants("operation/limits.rs", "limit_names! {\n")?;
    if found.len() != LimitName::ALL.len() {
        return Err(format!("limits.rs lists {} limits", found.len()));
    }
    let mut text = String::new();
    let mut texts = String::new();
    for (limit, variant) in LimitName::ALL.iter().zip(&found) {
        let (number, name) = (*limit as i32, limit.name());
        if number != variant.number {
            return Err(format!(
                "limits.rs gives {name} the number {}",
                variant.number
            ));
        }
        let constant = format!("GULLET_LIMIT_{}", name.to_uppercase());
        let (_, unit) = suffix(limit.kind())?;
        text += &format!(
            "/// {}\npub const {constant}: i32 = {number};\n",
            variant.meaning
        );
        texts += &format!("        {constant} => (c\"{name}\", c\"{unit}\"),\n");
    }
    text += &format!(
        "/// Room for the ledger of any cut of this version.\npub const GULLET_LIMITS_MOST: usize = {};\n",
        LimitName::ALL.len()
    );
    Ok(format!(
        "{text}\npub(crate) fn limit_texts(limit: i32) -> (&'static CStr, &'static CStr) {{\n    match limit {{\n{texts}        _ => (c\"\", c\"\"),\n    }}\n}}\n"
    ))
}

pub fn rust() -> Outcome<String> {
    let limits = limits()?;
    let Members {
        fields,
        values,
        size,
    } = members()?;
    Ok(format!(
        r#"{HEAD}use crate::structs::Sized32;
use core::ffi::CStr;
use gullet::operation::CutNumbers;

{limits}
/// A cut: what a person sets on the machine, and what follows from it.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_cut {{
    /// sizeof(gullet_cut); set by gullet_cut_init().
    pub struct_size: u32,
    /// Number of limits in the ledger.
    pub limit_count: u32,
    /// Doubts: 1 << GULLET_WARNING_... for each.
    pub warning_bits: u32,
    /// The limit nearest to its bound, one of GULLET_LIMIT_...; 0 for none.
    pub binding_limit: i32,
    /// The limit that holds the feed below the wanted one, one of GULLET_LIMIT_...; 0 for none.
    pub held_by_limit: i32,
    /// Number of limits that are exceeded; some only where loads lower nothing.
    pub exceeded_count: u32,
{fields}}}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_cut {{
    const NAME: &'static str = "gullet_cut";
    const FIRST: usize = {};
}}

impl gullet_cut {{
    pub(crate) fn of(cut: &CutNumbers) -> gullet_cut {{
        gullet_cut {{
            struct_size: size_of::<gullet_cut>() as u32,
            limit_count: cut.ledger.len() as u32,
            warning_bits: cut.warnings.bits(),
            binding_limit: cut.binding().map_or(0, |limit| limit.name as i32),
            held_by_limit: cut.held_by.map_or(0, |limit| limit as i32),
            exceeded_count: cut.ledger.iter().filter(|limit| limit.exceeded()).count() as u32,
{values}        }}
    }}
}}
"#,
        size + 24
    ))
}
