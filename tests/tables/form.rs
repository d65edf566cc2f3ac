//! Form of the embedded tables.

use super::*;

#[test]
fn every_table_has_unique_ids_and_whole_rows() {
    for (file, text) in data::TABLES {
        let rows = rows(text);
        let ids: BTreeSet<&String> = rows.iter().map(|row| &row["id"]).collect();
        assert_eq!(ids.len(), rows.len(), "{file}");
        assert!(ids.iter().all(|id| !id.is_empty()), "{file}");
        assert!(!text.contains('\r') && text.is_ascii(), "{file}");
    }
}

#[test]
fn every_source_exists_and_is_used() {
    let sources: BTreeSet<String> = rows(data::SOURCES)
        .iter()
        .map(|row| row["id"].clone())
        .collect();
    let mut used = BTreeSet::new();
    for (file, text) in data::TABLES {
        if matches!(*file, "sources.csv" | "classes.csv") {
            continue;
        }
        for row in rows(text) {
            let mut any = false;
            for (column, value) in &row {
                if (column == "src" || column.starts_with("src_")) && !value.is_empty() {
                    assert!(sources.contains(value), "{file} {}: {value}", row["id"]);
                    used.insert(value.clone());
                    any = true;
                }
            }
            assert!(any, "{file} {} has no source", row["id"]);
            assert!(
                Provenance::parse(&row["provenance"]).is_some(),
                "{file} {}",
                row["id"]
            );
        }
    }
    assert_eq!(used, sources);
    for row in rows(data::SOURCES) {
        assert!(
            matches!(row["publisher"].as_str(), "named" | "withheld" | "none"),
            "{}",
            row["id"]
        );
    }
}

#[test]
fn triples_are_ordered_and_unit_columns_agree() {
    // Half a step of the coarser print: 0.05 m/min with 0.5 ft/min, and so on.
    let check = |text: &str, metric: [&str; 3], inch: [&str; 3], factor: f64, slack: f64| {
        for row in rows(text) {
            let m = metric.map(|column| number(&row, column));
            let i = inch.map(|column| number(&row, column));
            assert!(0.0 < m[0] && m[0] <= m[1] && m[1] <= m[2], "{}", row["id"]);
            assert!(0.0 < i[0] && i[0] <= i[1] && i[1] <= i[2], "{}", row["id"]);
            for (m, i) in m.iter().zip(i) {
                assert!((m - i * factor).abs() <= slack, "{}: {m} {i}", row["id"]);
            }
        }
    };
    check(
        data::CUTTING_SPEEDS,
        ["vc_low_m_min", "vc_start_m_min", "vc_high_m_min"],
        ["sfm_low", "sfm_start", "sfm_high"],
        0.3048,
        0.05 + 0.5 * 0.3048 + 1e-9,
    );
    check(
        data::FEEDS,
        ["feed_low_mm", "feed_start_mm", "feed_high_mm"],
        ["feed_low_in", "feed_start_in", "feed_high_in"],
        25.4,
        2e-5,
    );
    check(
        data::UNIT_POWER,
        ["u_low_j_mm3", "u_start_j_mm3", "u_high_j_mm3"],
        [
            "u_low_hp_min_in3",
            "u_start_hp_min_in3",
            "u_high_hp_min_in3",
        ],
        2.730_297,
        0.005 + 0.0014,
    );
}

#[test]
fn classes_form_a_tree_and_materials_hang_on_it() {
    let classes: BTreeMap<String, Row> = rows(data::CLASSES)
        .into_iter()
        .map(|row| (row["id"].clone(), row))
        .collect();
    for (id, row) in &classes {
        for column in ["parent", "stand_in", "feed_stand_in"] {
            assert!(
                row[column].is_empty() || classes.contains_key(&row[column]),
                "{id} {column}"
            );
        }
        assert_eq!(row["stand_in"].is_empty(), row["reason"].is_empty(), "{id}");
        assert!(
            row["speed_factor"].is_empty() || !row["stand_in"].is_empty(),
            "{id}"
        );
        let (mut name, mut steps) = (id, 0);
        while !classes[name]["parent"].is_empty() {
            name = &classes[name]["parent"];
            steps += 1;
            assert!(steps < 10, "{id}");
        }
    }
    for material in Library::builtin().materials() {
        assert!(!material.classes.is_empty(), "{}", material.id);
        assert!(
            !Library::builtin()
                .materials()
                .iter()
                .any(|_| classes.contains_key(&material.id)),
            "{}",
            material.id
        );
        for class in &material.classes {
            let group = &classes[class]["iso513"];
            assert!(
                group.is_empty() || group == material.iso513.name(),
                "{} {class}",
                material.id
            );
        }
    }
}

#[test]
fn materials_are_sane() {
    for material in Library::builtin().materials() {
        let id = &material.id;
        for pair in &material.pairs {
            assert!((0.0..1.0).contains(&pair.exponent.value), "{id}");
            assert!((200e6..4000e6).contains(&pair.kc11.value), "{id}");
            assert!(Library::builtin().source(&pair.source).is_some(), "{id}");
        }
        if let Some((low, high)) = material.hardness_brinell {
            assert!(
                20.0 < low && low <= high && high < 660.0,
                "{id} {low} {high}"
            );
        }
        let fire = matches!(id.as_str(), "az91" | "az31" | "tigr2" | "ti64");
        assert_eq!(
            material.cautions.iter().any(|tag| tag == "fire_risk"),
            fire,
            "{id}"
        );
    }
    assert_eq!(find("1018").machinability.unwrap().value, 0.70);
    assert_eq!(find("6061").density.unwrap().value, 2700.0);
}

#[test]
fn a_withheld_source_is_a_default_only_where_no_other_is() {
    let library = Library::builtin();
    let withheld = |id: &str| library.source(id).unwrap().publisher_withheld;
    for material in library.materials() {
        if let Some(first) = material.pairs.first() {
            let all = material.pairs.iter().all(|pair| withheld(&pair.source));
            assert_eq!(withheld(&first.source), all, "{}", material.id);
            let stated = library
                .kienzle(material)
                .unwrap()
                .assumptions
                .iter()
                .any(|text| text.contains("withheld"));
            assert_eq!(stated, all, "{}", material.id);
        }
        for process in Process::ALL {
            for tool in ToolMaterial::ALL.iter().take(5) {
                if let Ok(range) = library.cutting_speed(material, *tool, *process)
                    && range.support.iter().any(|row| !withheld(&row.source))
                {
                    assert!(
                        !withheld(&range.support[0].source),
                        "{} {tool} {process}",
                        material.id
                    );
                }
            }
        }
    }
}
