//! `gullet fit`: laws from tables of readings, shop tables from laws, refusals.

use super::*;

/// A folder of its own, removed at the end.
struct Folder(PathBuf);

impl Folder {
    fn new(name: &str) -> Folder {
        let path = std::env::temp_dir().join(format!("gullet-fit-{name}-{}", std::process::id()));
        fs::create_dir_all(&path).unwrap();
        Folder(path)
    }

    fn file(&self, name: &str) -> String {
        self.0.join(name).to_str().unwrap().to_owned()
    }

    fn with(&self, name: &str, text: &str) -> String {
        fs::write(self.0.join(name), text).unwrap();
        self.file(name)
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(&self.0);
    }
}

const LATHE1: &str = "tests/data/lathe1.csv";

#[test]
fn lathe1_as_text_and_json() {
    let text = out(&[
        "fit",
        "extended-taylor",
        LATHE1,
        "--reference-feed",
        "1 in",
        "--units",
        "inch",
    ]);
    for part in ["0.22021", "262.06 ft/min", "-4.54120", "-1.59582", "17"] {
        assert!(text.contains(part), "{part} in {text}");
    }
    let fit = json(&[
        "fit",
        "extended-taylor",
        LATHE1,
        "--reference-feed=1 mm",
        "--json",
    ]);
    let n = fit["taylor_exponent"].as_f64().unwrap();
    assert!((n - 0.2202).abs() < 5e-5);
    assert!((fit["taylor_speed"].as_f64().unwrap() * 60.0 - 248.9).abs() < 0.05);
    assert_eq!(fit["degrees_of_freedom"], 17);
    assert_eq!(fit["coefficients"].as_array().unwrap().len(), 3);
    assert_eq!(fit["residuals"].as_array().unwrap().len(), 20);
    let wide = json(&[
        "fit",
        "extended-taylor",
        LATHE1,
        "--confidence",
        "99 %",
        "--json",
    ]);
    let low = |fit: &Value| fit["taylor_exponent_limits"][0].as_f64().unwrap();
    assert!(low(&wide) < low(&fit));
}

#[test]
fn a_pair_goes_into_a_shop_table() {
    let folder = Folder::new("pair");
    let readings = folder.with(
        "forces.csv",
        "lot,chip_thickness_mm,force_per_width_n_per_mm\n7,0.05,106\n7,0.05,108\n7,0.1,178\n7,0.2,299\n7,0.3,406\n7,0.4,503\n",
    );
    let table = folder.file("ours.csv");
    let text = out(&[
        "fit",
        "kienzle",
        &readings,
        "--source",
        "dynamometer",
        "--material",
        "AISI 1018",
        "--output",
        &table,
    ]);
    assert!(text.contains("columns not used: lot"), "{text}");
    let listed = json(&["list", "materials", "--overlay", &table, "--json"]);
    let row = |listed: &Value| {
        let rows = listed["materials"].as_array().unwrap().clone();
        rows.into_iter().find(|row| row["id"] == "1018cd").unwrap()
    };
    assert_ne!(row(&listed), row(&json(&["list", "materials", "--json"])));
    let written = fs::read_to_string(&table).unwrap();
    assert!(written.contains("dynamometer"), "{written}");
}

#[test]
fn a_life_goes_into_a_shop_table() {
    let folder = Folder::new("life");
    let table = folder.file("life.csv");
    let words = [
        "fit",
        "extended-taylor",
        LATHE1,
        "--material",
        "AISI 1018",
        "--tool-material",
        "carbide",
        "--id",
        "lathe-1",
        "--output",
        &table,
    ];
    out(&words);
    let written = fs::read_to_string(&table).unwrap();
    assert!(
        written.contains("lathe-1,") && written.contains("uncoated carbide"),
        "{written}"
    );
    assert!(out(&["list", "materials", "--overlay", &table]).contains("1018cd"));
}

#[test]
fn what_cannot_be_read_or_fitted_is_told_at_once() {
    let folder = Folder::new("bad");
    let bad = folder.with("bad.csv", "cutting_speed_m_min,tool_life\n100,60\n100,x\n");
    let (code, errors) = refusal(&[
        "fit",
        "taylor",
        &bad,
        "--confidence",
        "x",
        "--output",
        "o.csv",
    ]);
    assert_eq!(code, 2);
    let all = errors.join("\n");
    for part in [
        "--confidence",
        "unit_missing",
        "--material",
        "--tool-material",
    ] {
        assert!(all.contains(part), "{part} in {all}");
    }
    let bad = folder.with(
        "cells.csv",
        "cutting_speed_m_min,tool_life_min\n100,60\n100,x\n150\n",
    );
    let all = refusal(&["fit", "taylor", &bad]).1.join("\n");
    assert!(
        all.contains("cells.csv:3:tool_life_min") && all.contains("cells.csv:4"),
        "{all}"
    );
    let near = folder.with("near.csv", "cuting_speed_m_min,tool_life_min\n100,60\n");
    let all = refusal(&["fit", "taylor", &near]).1.join("\n");
    assert!(all.contains("did you mean cutting_speed?"), "{all}");
    let few = folder.with(
        "few.csv",
        "cutting_speed_m_min,tool_life_min\n100,60\n150,12\n",
    );
    let (code, errors) = refusal(&["fit", "taylor", &few]);
    assert_eq!((code, errors.len()), (2, 2), "{errors:?}");
    let (code, errors) = refusal(&["fit", "tailor", LATHE1]);
    assert!(
        code == 2 && errors[0].contains("did you mean taylor?"),
        "{errors:?}"
    );
    assert_eq!(refusal(&["fit", "taylor", "no such file.csv"]).0, 3);
}
