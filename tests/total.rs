//! Every public function that takes numbers, over raw bit patterns: it answers or refuses, and
//! never panics nor gives a number that is not finite.
#![allow(clippy::unwrap_used)]

use gullet::model::{Blank, Clamping, Cutter, CutterForm, Hold, Machine, Practice};
use gullet::plan::{Strategy, passes};
use gullet::quantity::{
    Kind, Length, Quantity, UnitSystem, format, format_digits, format_exact, format_worked, si,
    units,
};
use gullet::table::{HardnessScale, Library, Process, Ranged, ToolMaterial};
use proptest::prelude::*;

fn bits() -> impl Strategy_<Value = f64> {
    prop_oneof![
        any::<u64>().prop_map(f64::from_bits),
        prop_oneof![
            Just(0.0),
            Just(-0.0),
            Just(f64::INFINITY),
            Just(f64::NEG_INFINITY),
            Just(f64::NAN),
            Just(f64::MAX),
            Just(f64::MIN_POSITIVE),
        ],
        -1.0..1.0f64,
    ]
}
use proptest::strategy::Strategy as Strategy_;

fn finite<T: Copy>(range: &Ranged<T>, value: impl Fn(T) -> f64) -> bool {
    [range.low, range.start, range.high]
        .into_iter()
        .all(|end| value(end).is_finite() && value(end) > 0.0)
}

const TOOLS: &[ToolMaterial] = &[
    ToolMaterial::Hss,
    ToolMaterial::HssCo,
    ToolMaterial::UncoatedCarbide,
    ToolMaterial::CoatedCarbide,
];

const PROCESSES: &[Process] = &[
    Process::EndMilling,
    Process::FaceMilling,
    Process::SideMilling,
    Process::Drilling,
    Process::Reaming,
    Process::Tapping,
    Process::Turning,
];

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn tables_answer_or_refuse(
        material in any::<prop::sample::Index>(),
        tool in any::<prop::sample::Index>(),
        process in any::<prop::sample::Index>(),
        diameter in bits(),
        depth in bits(),
    ) {
        let library = Library::builtin();
        let material = material.get(library.materials());
        let tool = *tool.get(TOOLS);
        let process = *process.get(PROCESSES);
        if let Ok(range) = library.feed_per_tooth(material, tool, process, si(diameter), si(depth)) {
            prop_assert!(finite(&range, |length| length.value), "{diameter} {depth} {range:?}");
        }
        if let Ok(range) = library.feed_per_revolution(material, tool, process, si(diameter)) {
            prop_assert!(finite(&range, |length| length.value), "{diameter} {range:?}");
        }
        if let Ok(range) = library.cutting_speed(material, tool, process) {
            prop_assert!(finite(&range, |speed| speed.value));
        }
        if let Ok(kienzle) = library.kienzle(material)
            && let Ok(band) = kienzle.band(si(depth))
        {
            for k in [band.low, band.default, band.high] {
                prop_assert!(k.value.is_finite(), "{depth}: {k:?}");
            }
        }
        if let Ok(hardness) = library.brinell(HardnessScale::RockwellC, diameter) {
            prop_assert!(hardness.is_finite() && hardness > 0.0);
        }
    }

    #[test]
    fn printing_never_fails(value in bits(), digits in any::<u32>()) {
        for kind in Kind::ALL {
            for system in [UnitSystem::Metric, UnitSystem::Inch] {
                prop_assert!(!format(*kind, value, system).is_empty());
                prop_assert!(!format_worked(*kind, value, system).is_empty());
                prop_assert!(!format_digits(*kind, value, system, digits).is_empty());
            }
            for unit in units(*kind) {
                prop_assert!(!format_exact(*kind, value, unit).is_empty());
                let quantity = Quantity { kind: *kind, si: value };
                if let Ok(number) = quantity.to(unit.symbol) {
                    prop_assert!(number.is_finite());
                }
                if let Ok(quantity) = Quantity::new(*kind, value, unit.symbol) {
                    prop_assert!(quantity.si.is_finite());
                }
            }
        }
    }

    #[test]
    fn machines_give_real_settings(wanted in bits()) {
        for name in Machine::BUILTIN {
            let machine = Machine::builtin(name).unwrap();
            if let Some(speed) = machine.speed_at_or_below(si(wanted)) {
                prop_assert!(speed.value.is_finite() && speed.value > 0.0);
            }
            if let Some(feed) = machine.feed_at_or_below(si(wanted)) {
                prop_assert!(feed.value.is_finite());
            }
            if let Some(feed) = machine.feed_at_speed(si(wanted), si(10.0)) {
                prop_assert!(feed.value.is_finite());
            }
        }
    }

    #[test]
    fn models_name_what_is_wrong(values in prop::collection::vec(bits(), 12), teeth in any::<u32>()) {
        let [a, b, c, d, e, f, g, h, i, j, k, l] = values.try_into().unwrap();
        let cutter = Cutter {
            name: String::new(),
            form: CutterForm::CornerRadius(si(a)),
            material: ToolMaterial::Hss,
            diameter: si(b),
            teeth,
            flute_length: si(c),
            shank_diameter: si(d),
            stick_out: si(e),
            helix_angle: si(f),
            rake_angle: Some(si(g)),
            centre_cutting: true,
            maximum_speed: Some(si(h)),
        };
        let hold = Hold {
            name: String::new(),
            clamping: Clamping::Screw { torque: si(i), lead: si(j), efficiency: si(k) },
            jaw_friction: si(l),
            jaw_height: Some(si(a)),
            grip_depth: si(b),
            parallels: vec![si(c), si(d)],
            feed_across_jaws: false,
        };
        let blank = Blank { length: si(a), width: si(b), height: si(c) };
        let practice = Practice {
            finish_allowance: si(a),
            smallest_depth: si(b),
            wear_factor: si(c),
            ..Practice::builtin("training").unwrap()
        };
        for problem in cutter
            .problems()
            .into_iter()
            .chain(hold.problems())
            .chain(blank.problems())
            .chain(practice.problems())
        {
            prop_assert!(!problem.parameter.is_empty() && !problem.remedy.is_empty());
        }
        if let Some((parallel, grip)) = hold.parallel_for(si(l)) {
            prop_assert!(parallel.value.is_finite() && grip.value.is_finite());
        }
    }

    #[test]
    fn splits_are_whole_or_refused(
        total in prop_oneof![any::<u64>(), 0..5_000u64],
        finish in prop_oneof![any::<u64>(), 0..100u64],
        smallest in prop_oneof![any::<u64>(), 0..30u64],
        largest_rough in prop_oneof![any::<u64>(), 0..500u64],
        largest_finish in prop_oneof![any::<u64>(), 0..100u64],
        even in any::<bool>(),
        length in bits(),
        resolution in bits(),
    ) {
        let counts = passes::Counts { total, finish, smallest, largest_rough, largest_finish };
        let strategy = if even { Strategy::Even } else { Strategy::DeepestFirst };
        if let Ok(split) = passes::split(counts, strategy) {
            let sum: u64 = split.roughing.iter().sum::<u64>() + split.finishing;
            prop_assert_eq!(sum, total);
            prop_assert!(split.roughing.iter().all(|depth| *depth >= smallest.max(1) && *depth <= largest_rough));
        }
        let length: Length = si(length);
        if let Ok((counts, _)) = passes::counts_of(length, si(resolution)) {
            prop_assert!(counts <= 1_000_000_000_000);
        }
    }
}
