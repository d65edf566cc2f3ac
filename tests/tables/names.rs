//! Names of materials, tool materials and processes.

use super::*;

#[test]
fn materials_are_found_by_the_names_of_the_trade() {
    for (name, id) in [
        ("6061", "6061"),
        ("6061-T6", "6061"),
        ("6061 t6", "6061"),
        ("EN AW-6061", "6061"),
        ("AISI 1018", "1018cd"),
        ("1018", "1018cd"),
        (" aisi1018 ", "1018cd"),
        ("1018 hot rolled", "1018hr"),
        ("304", "304"),
        ("1.4301", "304"),
        ("C45E", "c45hr"),
        ("c45e+qt", "c45qt"),
        ("A36", "s275jr"),
        ("12L14", "11smnpb30"),
        ("4140 annealed", "42crmo4a"),
        ("4140 QT", "42crmo4qt"),
        ("Ti-6Al-4V", "ti64"),
        ("GG25", "gjl250"),
        ("H13", "x40crmov51"),
        ("360 brass", "cuzn39pb3"),
    ] {
        assert_eq!(find(name).id, id, "{name}");
    }
}

#[test]
fn ambiguous_and_unknown_names_are_refused_with_the_near_ones() {
    for (name, ids) in [
        ("4140", ["42crmo4a", "42crmo4qt"]),
        ("AISI 4340", ["34crnimo6", "4340qt"]),
        ("17-4PH", ["174ph", "174phh900"]),
        ("alloy 718", ["in718", "in718sa"]),
    ] {
        let error = Library::builtin().material(name).unwrap_err();
        assert_eq!(error.code(), Code::Inconsistent, "{name}");
        assert!(
            ids.iter().all(|id| error.first().admissible.contains(id)),
            "{error}"
        );
    }
    let error = Library::builtin().material("6601").unwrap_err();
    assert_eq!(
        (error.code(), error.first().value.as_str()),
        (Code::UnknownName, "\"6601\"")
    );
    assert!(error.first().remedy.contains("6061"), "{error}");
    for name in [
        "",
        "   ",
        "---",
        "unobtainium",
        "\u{0}",
        &"x".repeat(100_000),
    ] {
        assert_eq!(
            Library::builtin().material(name).unwrap_err().code(),
            Code::UnknownName
        );
    }
}

#[test]
fn tool_materials_and_processes_read_trade_spellings() {
    for (text, tool) in [
        ("hss", ToolMaterial::Hss),
        ("High-Speed Steel", ToolMaterial::Hss),
        ("cobalt", ToolMaterial::HssCo),
        ("M42", ToolMaterial::HssCo),
        ("carbide", ToolMaterial::UncoatedCarbide),
        ("Coated Carbide", ToolMaterial::CoatedCarbide),
        ("pcd", ToolMaterial::Pcd),
    ] {
        assert_eq!(ToolMaterial::parse(text), Some(tool), "{text}");
    }
    assert_eq!(ToolMaterial::parse("wood"), None);
    assert_eq!(ToolMaterial::parse(""), None);
    for tool in ToolMaterial::ALL {
        assert_eq!(ToolMaterial::parse(tool.name()), Some(*tool));
    }
    for process in Process::ALL {
        assert_eq!(Process::parse(process.name()), Some(*process));
    }
}
