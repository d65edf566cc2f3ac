//! Rows as the text of a shop's own table, which reads back to the same rows.

use super::library::Overlay;
use super::rows::LifeRow;
use super::types::{Material, ToolMaterial};
use crate::error::Result;
use crate::quantity::{Kind, to_unit, unit};

/// A number in a unit as its shortest text; empty for none.
fn in_unit(value: Option<f64>, kind: Kind, symbol: &str) -> Result<String> {
    Ok(match value {
        Some(si) => to_unit(si, unit(kind, symbol)?).to_string(),
        None => String::new(),
    })
}

fn plain_number(value: Option<f64>) -> String {
    value.map_or_else(String::new, |value| value.to_string())
}

/// A table of one row: column names and cells side by side.
fn sheet(file_name: &str, rows: &[Vec<(&'static str, String)>]) -> Overlay {
    let mut writer = csv::Writer::from_writer(Vec::new());
    let header = rows.first().map_or(&[] as &[_], Vec::as_slice);
    // Into memory, and every row has the columns of the first: neither can fail.
    let _ = writer.write_record(header.iter().map(|(name, _)| *name));
    for row in rows {
        let _ = writer.write_record(row.iter().map(|(_, cell)| one_line(cell)));
    }
    let bytes = writer.into_inner().unwrap_or_default();
    Overlay {
        file_name: file_name.to_owned(),
        text: String::from_utf8_lossy(&bytes).into_owned(),
    }
}

/// Text without the control characters that no table may hold.
fn one_line(cell: &str) -> String {
    let spaced = |c: char| if c.is_control() { ' ' } else { c };
    cell.chars().map(spaced).collect()
}

fn material_cells(material: &Material) -> Result<Vec<(&'static str, String)>> {
    let (low, high, scale) = match &material.hardness_given {
        Some((low, high, scale)) => (Some(*low), Some(*high), scale.clone()),
        None => (None, None, String::new()),
    };
    let source = |what: &str| {
        let found = material.sources.iter().find(|(known, _)| known == what);
        found.map_or_else(String::new, |(_, id)| id.clone())
    };
    let mut cells = vec![
        ("id", material.id.clone()),
        ("name", material.name.clone()),
        ("aliases", material.aliases.join(";")),
        ("iso513", material.iso513.name().to_owned()),
        ("condition", material.condition.clone()),
        ("hardness_min", plain_number(low)),
        ("hardness_max", plain_number(high)),
        ("hardness_scale", scale),
        (
            "tensile_mpa",
            in_unit(material.tensile.map(|v| v.value), Kind::Pressure, "N/mm2")?,
        ),
    ];
    const PAIRS: [[&str; 3]; Material::PAIRS] = [
        ["kc11_mpa", "mc", "src_kc"],
        ["kc11_second_mpa", "mc_second", "src_kc_second"],
        ["kc11_third_mpa", "mc_third", "src_kc_third"],
    ];
    for (place, [kc11, exponent, src]) in PAIRS.into_iter().enumerate() {
        let pair = material.pairs.get(place);
        let value = pair.map(|pair| pair.kc11.value);
        cells.extend([
            (kc11, in_unit(value, Kind::Pressure, "N/mm2")?),
            (exponent, plain_number(pair.map(|pair| pair.exponent.value))),
            (
                src,
                pair.map_or_else(String::new, |pair| pair.source.clone()),
            ),
        ]);
    }
    let modulus = material.youngs_modulus.map(|v| v.value);
    let machinability = material.machinability.map(|v| v.value);
    cells.extend([
        (
            "density_kg_m3",
            plain_number(material.density.map(|v| v.value)),
        ),
        ("e_gpa", in_unit(modulus, Kind::Pressure, "GPa")?),
        (
            "machinability_pct",
            in_unit(machinability, Kind::Ratio, "%")?,
        ),
        ("classes", material.classes.join(";")),
        ("cautions", material.cautions.join(";")),
        ("src", source("all")),
        ("src_hardness", source("hardness")),
        ("src_tensile", source("tensile")),
        ("src_phys", source("phys")),
        ("src_machinability", source("machinability")),
        ("note", material.note.clone()),
    ]);
    Ok(cells)
}

fn tool_names(tools: &[ToolMaterial]) -> String {
    let names: Vec<&str> = tools.iter().map(|tool| tool.name()).collect();
    names.join(";")
}

fn life_cells(row: &LifeRow) -> Result<Vec<(&'static str, String)>> {
    let speed = |value| in_unit(value, Kind::Velocity, "m/min");
    let length = |value| in_unit(value, Kind::Length, "mm");
    let [low, typical, high] = row.exponent;
    Ok(vec![
        ("id", row.id.clone()),
        ("work", row.work.clone()),
        ("class", row.classes.join(";")),
        ("tool_material", tool_names(&row.tools)),
        ("n_low", low.to_string()),
        ("n", typical.to_string()),
        ("n_high", high.to_string()),
        ("c_m_min", speed(row.speed_at_one_minute)?),
        ("feed_mm", length(row.feed)?),
        ("depth_mm", length(row.depth)?),
        ("feed_exponent", plain_number(row.feed_exponent)),
        ("depth_exponent", plain_number(row.depth_exponent)),
        (
            "vc_tested_low_m_min",
            speed(row.tested_speeds.map(|(low, _)| low))?,
        ),
        (
            "vc_tested_high_m_min",
            speed(row.tested_speeds.map(|(_, high)| high))?,
        ),
        ("criterion", row.criterion.clone()),
        ("src", row.source.clone()),
        ("note", row.note.clone()),
    ])
}

impl Overlay {
    /// Materials as a shop's own table: what is laid over the tables takes the place of the rows of
    /// the same ids. Every value counts then as the shop's, pairs and properties with the sources
    /// they have.
    ///
    /// ```
    /// use gullet::quantity::si;
    /// use gullet::table::{KienzlePair, Library, Overlay};
    /// let library = Library::builtin();
    /// let ours = KienzlePair { kc11: si(1700e6), exponent: si(0.24), source: "own turning tests".into() };
    /// let steel = library.material("AISI 1018")?.with_pair(ours.clone());
    /// let shop = library.with_overlay(&[Overlay::of_materials("ours.csv", &[&steel])?])?;
    /// assert_eq!(shop.material("AISI 1018")?.pairs[0], ours);
    /// # Ok::<(), gullet::Error>(())
    /// ```
    ///
    /// # Errors
    /// None for materials of a library.
    pub fn of_materials(file_name: &str, materials: &[&Material]) -> Result<Overlay> {
        let rows: Result<Vec<_>> = materials.iter().copied().map(material_cells).collect();
        Ok(sheet(file_name, &rows?))
    }

    /// Taylor constants as a shop's own table.
    ///
    /// # Errors
    /// None for rows of a library or of a fit.
    pub fn of_tool_lives(file_name: &str, rows: &[&LifeRow]) -> Result<Overlay> {
        let rows: Result<Vec<_>> = rows.iter().copied().map(life_cells).collect();
        Ok(sheet(file_name, &rows?))
    }
}
