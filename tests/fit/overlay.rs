//! What is fitted, in a shop's own table: written, read back, and used by a cut.

use super::*;
use gullet::model::{Clamping, Cutter, CutterForm, Direction, Hold, Machine, PassKind, Practice};
use gullet::operation::{Cut, Lowering, Milling, Operation, Pass, Setup};
use gullet::quantity::UnitSystem;

fn kienzle() -> gullet::fit::KienzleFit {
    let chips = [0.04, 0.04, 0.08, 0.12, 0.20, 0.30];
    let forces: Vec<f64> = chips.iter().map(|h: &f64| 987.6 * h.powf(0.69)).collect();
    let options = FitOptions {
        source: "dynamometer, lot 7".to_owned(),
        ..FitOptions::default()
    };
    fit_kienzle(&mm(&chips), &n_per_mm(&forces), &options).unwrap()
}

fn cut(library: &Library) -> Cut {
    let cutter = Cutter {
        name: "end mill".to_owned(),
        form: CutterForm::Square,
        material: ToolMaterial::Hss,
        diameter: si(10e-3),
        teeth: 3,
        flute_length: si(22e-3),
        shank_diameter: si(10e-3),
        stick_out: si(30e-3),
        helix_angle: si(0.5),
        rake_angle: None,
        centre_cutting: true,
        maximum_speed: None,
    };
    let hold = Hold {
        name: "vise".to_owned(),
        clamping: Clamping::Force(si(15e3)),
        jaw_friction: si(0.15),
        jaw_height: Some(si(0.04)),
        grip_depth: si(0.02),
        parallels: vec![],
        feed_across_jaws: false,
    };
    let setup = Setup {
        units: UnitSystem::Metric,
        library,
        material: library.material("AISI 1018").unwrap(),
        cutter: &cutter,
        machine: &Machine::builtin("manual-knee-mill").unwrap(),
        hold: &hold,
        practice: &Practice::builtin("training").unwrap(),
        part_height: si(0.04),
    };
    let pass = Pass {
        operation: Operation::SideMilling,
        kind: PassKind::Roughing,
        axial_depth: si(3e-3),
        radial_depth: si(0.5e-3),
        offset: si(0.0),
        length: si(0.1),
        direction: Direction::Conventional,
        mean_roughness: None,
        spindle_speed: None,
        feed_per_tooth: None,
    };
    Milling::new(&setup).cut(&pass, Lowering::Allowed).unwrap()
}

#[test]
fn a_fitted_pair_goes_into_the_tables_and_a_cut_uses_it() {
    let fit = kienzle();
    let builtin = Library::builtin();
    let material = builtin.material("AISI 1018").unwrap();
    let text =
        Overlay::of_materials("our steel.csv", &[&material.with_pair(fit.pair.clone())]).unwrap();
    let shop = builtin.with_overlay(&[text]).unwrap();
    let own = shop.material("AISI 1018").unwrap();
    let pair = &own.pairs[0];
    assert!((pair.kc11.value / 987.6e6 - 1.0).abs() < 1e-9);
    assert!((pair.exponent.value - 0.31).abs() < 1e-9);
    assert_eq!(pair.source, "dynamometer, lot 7");
    assert_eq!(
        shop.source("dynamometer, lot 7").unwrap().provenance,
        Provenance::Shop
    );
    // The pairs of the table stand behind it, and the rest of the material is what it was.
    assert_eq!(&own.pairs[1..], &material.pairs[..own.pairs.len() - 1]);
    assert_eq!(
        (
            &own.classes,
            own.hardness_brinell,
            own.tensile,
            &own.cautions,
            &own.aliases
        ),
        (
            &material.classes,
            material.hardness_brinell,
            material.tensile,
            &material.cautions,
            &material.aliases
        )
    );
    let (before, after) = (cut(builtin), cut(&shop));
    let h = after.consequences.mean_chip_thickness.value * 1e3;
    let expected = 987.6e6 * h.powf(-0.31);
    assert!((after.consequences.specific_cutting_force.value / expected - 1.0).abs() < 1e-9);
    let change = before.consequences.specific_cutting_force.value / expected - 1.0;
    assert!(change.abs() > 0.05, "{change}");
    assert!(
        after
            .data
            .iter()
            .any(|datum| datum.origin.contains("dynamometer, lot 7")),
        "{:?}",
        after.data
    );
}

#[test]
fn every_material_of_the_tables_reads_back_as_it_was() {
    let builtin = Library::builtin();
    for material in builtin.materials() {
        let text = Overlay::of_materials("all.csv", &[material]).unwrap();
        let shop = builtin.with_overlay(&[text]).unwrap();
        let own = shop
            .materials()
            .iter()
            .find(|own| own.id == material.id)
            .unwrap();
        let mut expected = material.clone();
        expected.provenance = Provenance::Shop;
        if own.sources != expected.sources {
            // A row that joins no sources gets the file's name.
            assert!(expected.sources.is_empty(), "{}", material.id);
            expected.sources.clone_from(&own.sources);
        }
        assert_eq!(
            format!("{own:?}"),
            format!("{expected:?}"),
            "{}",
            material.id
        );
    }
}

#[test]
fn a_fitted_life_goes_into_the_tables_with_its_range() {
    let fit = fit_lathe1(1e-3);
    let classes = ["42crmo4a".to_owned()];
    let row = fit.to_row(
        "ours1",
        "4140, lot 3",
        &classes,
        &[ToolMaterial::CoatedCarbide],
    );
    let builtin = Library::builtin();
    let text = Overlay::of_tool_lives("life.csv", &[&row]).unwrap();
    let shop = builtin.with_overlay(&[text]).unwrap();
    let material = shop.material("4140 annealed").unwrap();
    let rows = shop
        .tool_life_for(material, ToolMaterial::CoatedCarbide)
        .unwrap();
    let [own] = rows.as_slice() else {
        panic!("a shop's row answers alone: {rows:?}")
    };
    assert_eq!(own.provenance, Provenance::Shop);
    assert!(
        own.note.contains("20 readings") && own.note.contains("median"),
        "{}",
        own.note
    );
    assert!(own.exponent[0] < own.exponent[1] && own.exponent[1] < own.exponent[2]);
    let law = ToolLife::from_row(own).unwrap();
    let at = (si(4.0), Some(si(0.3e-3)));
    let life = law.life(at.0, at.1, None).unwrap();
    let fitted = fit.law.life(at.0, at.1, None).unwrap();
    assert!((life.time.value / fitted.time.value - 1.0).abs() < 1e-12);
    assert!(!law.life(si(20.0), at.1, None).unwrap().warnings.is_empty());
    // Elsewhere the rows are what they were.
    let other = shop.tool_life_for(material, ToolMaterial::Ceramic).unwrap();
    assert!(other.iter().all(|row| row.provenance != Provenance::Shop));
}

#[test]
fn rows_of_life_in_a_shop_table_are_checked() {
    let head = "id,work,class,tool_material,n,c_m_min,feed_mm,feed_exponent,vc_tested_low_m_min,vc_tested_high_m_min\n";
    let refused = |row: &str| {
        let overlay = Overlay {
            file_name: "life.csv".into(),
            text: format!("{head}{row}\n"),
        };
        let error = Library::builtin().with_overlay(&[overlay]).unwrap_err();
        let problem = error.first().clone();
        assert_eq!(problem.code, Code::BadRow, "{problem}");
        problem.parameter
    };
    assert_eq!(
        refused("a,bar,42crmo4a,HSS,1.2,30,0.2,0.3,20,40"),
        "life.csv:2:n"
    );
    assert_eq!(
        refused("a,bar,42crmo4a,HSS,0.12,30,,0.3,20,40"),
        "life.csv:2:feed_mm"
    );
    assert_eq!(
        refused("a,bar,42crmo4a,HSS,0.12,30,0.2,0.3,40,20"),
        "life.csv:2:vc_tested_low_m_min"
    );
    assert_eq!(
        refused("a,bar,42crmo4a,HSS,0.12,30,0.2,0.3,40,"),
        "life.csv:2:vc_tested_low_m_min"
    );
    assert_eq!(
        refused("a,bar,no such class,HSS,0.12,30,0.2,0.3,20,40"),
        "life.csv:2:class"
    );
}
