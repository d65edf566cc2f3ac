//! The struct of a cut, from the core's lists of settings and consequences.

use crate::unit::named;
use crate::{HEAD, Outcome};
use gullet::operation::{Consequences, Field, Settings};

pub fn rust() -> Outcome<String> {
    let mut fields = String::new();
    let mut values = String::new();
    let mut size = 16;
    let mut known = Vec::new();
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
            let member = named(name, kind)?;
            fields += &format!("    /// {meaning}\n    pub {member}: f64,\n");
            let source = format!("cut.{record}.{name}");
            if field.optional {
                values += &format!("            {member}: {source}.map_or(0.0, |v| v.value),\n");
                known.push((name, source));
            } else {
                values += &format!("            {member}: {source}.value,\n");
            }
            size += 8;
        }
    }
    for (name, source) in &known {
        fields += &format!(
            "    /// 1 where {name} is known, 0 where it is not and its field is 0.\n    pub {name}_known: i32,\n"
        );
        values += &format!("            {name}_known: i32::from({source}.is_some()),\n");
        size += 4;
    }
    if known.len() % 2 == 1 {
        fields += "    /// Zero.\n    pub reserved: i32,\n";
        values += "            reserved: 0,\n";
        size += 4;
    }
    Ok(format!(
        r#"{HEAD}use crate::structs::Sized32;
use gullet::operation::Cut;

/// A cut: what a person sets on the machine, and what follows from it.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_cut {{
    /// sizeof(gullet_cut); set by gullet_cut_init().
    pub struct_size: u32,
    /// Number of limits in the ledger.
    pub limit_count: u32,
    /// Number of doubts; gullet_last_warning_text tells them.
    pub warning_count: u32,
    /// Number of settings that were lowered for a limit.
    pub adjustment_count: u32,
{fields}}}

// SAFETY: `repr(C)`, plain numbers, the size first.
unsafe impl Sized32 for gullet_cut {{
    const NAME: &'static str = "gullet_cut";
    const FIRST: usize = {size};
}}

impl gullet_cut {{
    pub(crate) fn of(cut: &Cut) -> gullet_cut {{
        gullet_cut {{
            struct_size: size_of::<gullet_cut>() as u32,
            limit_count: cut.ledger.len() as u32,
            warning_count: cut.warnings.len() as u32,
            adjustment_count: cut.adjustments.len() as u32,
{values}        }}
    }}
}}
"#
    ))
}
