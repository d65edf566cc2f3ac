//! How a line of text becomes a material, a source or a class.

use super::parse::{Context, provenance};
use super::reader::{Row, UnitColumn, above, clip, from_below};
use super::rows::Class;
use super::types::{Iso513, KienzlePair, Material, Source};
use crate::error::nearest;
use crate::quantity::si;

/// Lowest and highest hardness and the symbol of its scale, as a row gives them.
pub(crate) type GivenHardness = (f64, f64, String);

impl Context<'_> {
    /// A material with its hardness as the table gives it; the scale comes back beside it.
    pub(crate) fn material(&mut self, row: &mut Row) -> Option<(Material, Option<GivenHardness>)> {
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
            hardness_given: None,
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
                let near = nearest(name, self.classes.keys().map(String::as_str));
                row.refuse(
                    "classes",
                    clip(name),
                    format!("ids of {} classes", self.classes.len()),
                    near.map_or_else(
                        || "use ids of the table of classes".to_owned(),
                        |near| format!("did you mean {near}?"),
                    ),
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
    let known = matches!(publisher, "named" | "withheld" | "none");
    if !known && (!shop || !publisher.is_empty()) {
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
