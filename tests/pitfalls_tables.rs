//! Known traps of machines and tables, one by one, by the number each has in the list of pitfalls of
//! the other operations.
#![allow(clippy::unwrap_used, clippy::panic)]

use gullet::Code;
use gullet::model::{Machine, Practice};
use gullet::operation::process::{Bench, ProcessCut, Request};
use gullet::quantity::{UnitSystem, si};
use gullet::table::{HardnessScale, Iso513, Library, Process, ToolMaterial};

/// A cut on the small mill whose gear stands this torque.
fn cut(operation: &str, inputs: &str, torque: Option<f64>) -> Result<ProcessCut, gullet::Error> {
    let library = Library::builtin();
    let mut machine = Machine::builtin("small-cnc-mill").unwrap();
    machine.maximum_torque = torque.map(si);
    Request::new(operation)?.texts(inputs)?.cut(&Bench {
        library,
        material: library.material("1018").unwrap(),
        tool: ToolMaterial::Hss,
        machine: &machine,
        practice: &Practice::builtin("experienced").unwrap(),
        units: UnitSystem::Metric,
    })
}

fn value(cut: &ProcessCut, name: &str) -> f64 {
    cut.value(name).unwrap().si
}

/// A lower speed leaves the torque of a cut as it is: the feed falls and the speed stays; where the feed
/// is fixed, as in a thread, the cut is refused.
#[test]
fn pitfall_11_torque_limit_is_not_answered_by_lowering_the_speed() {
    let hole = "diameter=12 mm; depth=20 mm";
    let free = cut("drilling", hole, None).unwrap();
    let needed = value(&free, "limit_torque");
    // The practice uses a share of the rating.
    let bound = free.limit("torque").unwrap().bound;
    let rated = Machine::builtin("small-cnc-mill").unwrap().maximum_torque;
    let share = rated.map_or(0.8, |rated| (bound / rated.value).min(0.8));
    let tight = cut("drilling", hole, Some(0.6 * needed / share)).unwrap();
    assert_eq!(
        value(&tight, "spindle_speed").to_bits(),
        value(&free, "spindle_speed").to_bits()
    );
    assert!(value(&tight, "feed") < 0.9 * value(&free, "feed"));
    let limit = tight.limit("torque").unwrap();
    assert!(limit.share <= 1.0 + 1e-9, "{}", limit.share);
    assert_eq!(tight.held_by.map(|limit| limit.name()), Some("torque"));

    let thread = "major_diameter=8 mm; pitch=1.25 mm; drill_diameter=6.8 mm; depth=11 mm";
    let free = cut("tapping", thread, None).unwrap();
    let error = cut("tapping", thread, Some(0.3 * value(&free, "limit_torque")))
        .err()
        .unwrap();
    let problem = error.first();
    assert_eq!(
        (problem.code, problem.parameter.as_str()),
        (Code::LimitExceeded, "torque")
    );
    assert!(
        problem.remedy.contains("a lower speed does not help"),
        "{problem}"
    );
    // Not even where the shop asks for next to no speed.
    let slow = format!("{thread}; spindle_speed=70 rpm");
    let error = cut("tapping", &slow, Some(0.3 * value(&free, "limit_torque")))
        .err()
        .unwrap();
    assert_eq!(error.first().parameter, "torque");
}

/// The points are those of ASTM E140 for steel that is not austenitic: nothing beyond their ends, no
/// HRC below 20, and of other work only with the doubt said.
#[test]
fn pitfall_14_hrc_to_hb_outside_its_alloys() {
    let library = Library::builtin();
    for (scale, outside) in [
        (HardnessScale::RockwellC, 19.0),
        (HardnessScale::RockwellC, 59.0),
        (HardnessScale::RockwellB, 101.0),
        (HardnessScale::Vickers, 700.0),
    ] {
        let error = library.brinell(scale, outside).unwrap_err();
        assert_eq!(
            error.code(),
            Code::OutOfRange,
            "{} {outside}",
            scale.symbol()
        );
        assert!(error.first().remedy.contains("state the hardness in HB"));
    }
    let mut foreign = 0;
    for material in library.materials() {
        let told = material.assumptions.join("; ");
        if !told.contains("given as ") {
            // Given in HB, or not known: nothing is converted.
            assert!(!told.contains("hardness converted"), "{}", material.id);
            continue;
        }
        // Austenitic steel, aluminium and grey iron are given in HB.
        assert!(
            matches!(material.iso513, Iso513::P | Iso513::H | Iso513::S),
            "{}: {told}",
            material.id
        );
        if material.hardness_brinell.is_none() {
            assert!(told.contains("beyond the Brinell scale"), "{told}");
            continue;
        }
        let white = material.classes.contains(&"white-iron".to_owned());
        let steel = material.iso513 != Iso513::S && !white;
        assert!(told.contains("points for carbon and alloy steel"), "{told}");
        assert_eq!(
            told.contains("which this work is not"),
            !steel,
            "{}: {told}",
            material.id
        );
        foreign += usize::from(!steel);
    }
    // The nickel alloys and the white iron.
    assert!(foreign >= 3, "{foreign}");
}

/// Group M of ISO 513 is austenitic and duplex stainless steel. Ferritic, martensitic and
/// precipitation-hardened stainless are steel, group P, and cut like it.
#[test]
fn pitfall_17_group_m_is_not_every_stainless_steel() {
    let library = Library::builtin();
    for id in ["430", "410", "416", "420", "440c", "174ph", "174phh900"] {
        assert_eq!(library.material(id).unwrap().iso513, Iso513::P, "{id}");
    }
    for id in ["304", "303", "316", "316l", "321", "310", "2205", "904l"] {
        assert_eq!(library.material(id).unwrap().iso513, Iso513::M, "{id}");
    }
    // What a job file says of the groups tells them apart as well.
    let schema = gullet::plan::job_schema();
    assert!(!schema.contains("M stainless"));
    assert!(schema.contains("ferritic or martensitic stainless"));
    assert!(schema.contains("M austenitic and duplex stainless"));
    // Where rows for martensitic steel exist, those of austenitic are not taken; where none do, the
    // card says what stands in and which way it errs.
    let speed = |id: &str, process| {
        let material = library.material(id).unwrap();
        library
            .cutting_speed(material, ToolMaterial::Hss, process)
            .unwrap()
    };
    let drilling = speed("410", Process::Drilling);
    assert!(
        drilling.assumptions.is_empty(),
        "{:?}",
        drilling.assumptions
    );
    for support in &drilling.support {
        assert!(!support.why.contains("austenitic"), "{}", support.why);
    }
    assert!(drilling.start > speed("304", Process::Drilling).start);
    let turning = speed("410", Process::Turning).assumptions.join("; ");
    assert!(
        turning.contains("taken as austenitic, which is cut more slowly"),
        "{turning}"
    );
    let own = speed("304", Process::Turning).assumptions.join("; ");
    assert!(!own.contains("taken as"), "{own}");
}
