//! Milling operations: properties over set-ups, and what bad input gets.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::Code;
use gullet::model::{
    Clamping, CutterForm, Direction, Drive, Feed, Machine, PassKind, Practice, Readout,
};
use gullet::operation::{Lowering, Operation};
use gullet::quantity::{Kind, Length, si};
use gullet::table::ToolMaterial;
use proptest::prelude::*;

#[path = "operations/bad_input.rs"]
mod bad_input;
#[path = "operations/lean.rs"]
mod lean;
#[path = "operations/numbers.rs"]
mod numbers;
#[path = "operations/shop.rs"]
mod shop;

use numbers::{consistent, numbers};
use shop::{INCH, Shop, shop};

/// Names that limits of a ledger may have.
const LIMITS: &[&str] = &[
    "spindle_speed_highest",
    "spindle_speed_lowest",
    "cutter_speed",
    "cutting_speed",
    "handwheel_pace",
    "table_feed",
    "table_feed_lowest",
    "smallest_chip",
    "largest_chip",
    "mean_roughness",
    "power",
    "torque",
    "deflection",
    "clamping",
    "flute_length",
    "roughing_depth",
    "climb_with_backlash",
    "grip",
    "stick_out",
];

proptest! {
    #![proptest_config(ProptestConfig { cases: 1000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_cut_is_consistent_and_every_error_names_a_limit(shop in shop()) {
        for lowering in [Lowering::Allowed, Lowering::NotForLoads] {
            match shop.mill(lowering) {
                Ok(cut) => consistent(&cut, lowering)?,
                Err(error) => for problem in error.problems() {
                    prop_assert!(!problem.parameter.is_empty() && !problem.remedy.is_empty(), "{problem}");
                    if problem.code == Code::LimitExceeded {
                        prop_assert!(LIMITS.contains(&problem.parameter.as_str()), "{problem}");
                        prop_assert!(!problem.value.is_empty() && !problem.admissible.is_empty(), "{problem}");
                    } else {
                        // A ball leaves no flat face; nothing else of a plausible set-up is refused.
                        prop_assert!(problem.parameter == "cutter.form" || problem.code == Code::NoData, "{problem}");
                    }
                },
            }
        }
    }

    #[test]
    fn a_ledger_without_lowering_names_what_the_error_names(shop in shop()) {
        if let Err(error) = shop.mill(Lowering::Allowed)
            && error.code() == Code::LimitExceeded
            && let Ok(cut) = shop.mill(Lowering::NotForLoads)
        {
            for problem in error.problems() {
                prop_assert!(cut.limit(&problem.parameter).is_some(), "{problem}");
            }
        }
    }

    #[test]
    fn applying_a_relief_frees_the_limit(shop in shop()) {
        let found = match shop.mill(Lowering::Allowed) {
            Ok(cut) => cut,
            Err(_) => return Ok(()),
        };
        for limit in &found.ledger {
            let Some(relief) = limit.relief else { continue };
            let mut changed = shop.clone();
            match relief.setting {
                "axial depth" => changed.pass.axial_depth = si(relief.to),
                "spindle speed" => changed.pass.spindle_speed = Some(si(relief.to)),
                "feed per tooth" => changed.pass.feed_per_tooth = Some(si(relief.to)),
                other => prop_assert!(false, "{other} of {limit:?} in a cut that holds every limit"),
            }
            prop_assert!(relief.kind == Kind::Length || relief.setting == "spindle speed");
            match changed.mill(Lowering::NotForLoads) {
                Ok(cut) => {
                    let free = cut.limit(limit.name).unwrap();
                    prop_assert!(!free.exceeded(), "{limit:?} still {free:?}");
                    // A feed box also lowers to its step, whatever the highest one is.
                    let box_step = matches!(shop.machine.feed, Feed::Stepped(_)) && limit.name == "table_feed";
                    let held = cut.adjustments.iter().any(|a| a.limit == limit.name && a.setting == "feed_per_tooth");
                    prop_assert!(!held || box_step, "{limit:?}");
                }
                Err(error) => prop_assert!(false, "{limit:?}: {error}"),
            }
        }
    }

    #[test]
    fn more_hold_power_or_stiffness_never_lowers_the_feed(shop in shop(), factor in 1.0f64..4.0) {
        // At one spindle speed: a speed that falls so that the chip stays thick leaves a higher feed
        // within the same power.
        let Ok(before) = shop.mill(Lowering::Allowed) else { return Ok(()) };
        for change in 0..4 {
            let mut stronger = shop.clone();
            match change {
                0 => stronger.hold.clamping = match stronger.hold.clamping {
                    Clamping::Force(force) => Clamping::Force(force * factor),
                    other => other,
                },
                1 => stronger.machine.motor_power *= factor,
                2 => stronger.cutter.shank_diameter *= factor,
                _ => stronger.practice.roughing_deflection *= factor,
            }
            let after = stronger.mill(Lowering::Allowed).unwrap();
            let (n, faster) = (before.settings.spindle_speed.value, after.settings.spindle_speed.value);
            prop_assert!(faster >= n * (1.0 - 1e-9), "{change}");
            if faster <= n * (1.0 + 1e-9) {
                prop_assert!(after.settings.table_feed.value >= before.settings.table_feed.value * (1.0 - 1e-9), "{change}");
            }
        }
    }

    #[test]
    fn lowering_never_raises_a_load(shop in shop()) {
        if let (Ok(lowered), Ok(wanted)) = (shop.mill(Lowering::Allowed), shop.mill(Lowering::NotForLoads)) {
            // At a lower speed the chip is meant to be thicker.
            if lowered.settings.spindle_speed < wanted.settings.spindle_speed {
                return Ok(());
            }
            for name in ["power", "deflection", "clamping"] {
                let (low, high) = (lowered.limit(name).unwrap().value, wanted.limit(name).unwrap().value);
                prop_assert!(low <= high * (1.0 + 1e-9), "{name}: {low} above {high}");
            }
        }
    }

    #[test]
    fn stepped_drives_take_a_real_step_at_or_below_the_target(shop in shop()) {
        for lowering in [Lowering::Allowed, Lowering::NotForLoads] {
            let Ok(cut) = shop.mill(lowering) else { continue };
            let n = cut.settings.spindle_speed;
            match &shop.machine.drive {
                Drive::Stepped(steps) => {
                    prop_assert!(steps.contains(&n));
                    prop_assert!(n.value <= cut.settings.wanted_speed.value * (1.0 + 1e-9) || n == steps[0]);
                }
                Drive::Continuous { lowest, highest } => prop_assert!(n >= *lowest && n <= *highest),
            }
            if let Some(most) = shop.cutter.maximum_speed {
                prop_assert!(n.value <= most.value * (1.0 + 1e-9));
            }
            if let Feed::Stepped(steps) = &shop.machine.feed {
                let v = cut.settings.table_feed.value;
                prop_assert!(steps.iter().any(|step| (step.value / v - 1.0).abs() < 1e-9), "{v}");
            }
        }
    }

    #[test]
    fn up_and_down_milling_are_mirrored(shop in shop()) {
        let mut shop = shop;
        shop.pass.operation = Operation::SideMilling;
        shop.machine.backlash = si(0.0);
        if shop.pass.radial_depth > shop.cutter.diameter { shop.pass.radial_depth = shop.cutter.diameter; }
        let mut other = shop.clone();
        shop.pass.direction = Direction::Conventional;
        other.pass.direction = Direction::Climb;
        if let (Ok(up), Ok(down)) = (shop.mill(Lowering::Allowed), other.mill(Lowering::Allowed)) {
            let pi = core::f64::consts::PI;
            prop_assert_eq!(up.consequences.entry_angle.value, 0.0);
            prop_assert!((down.consequences.exit_angle.value - pi).abs() < 1e-15);
            prop_assert!((up.consequences.exit_angle.value + down.consequences.entry_angle.value - pi).abs() < 1e-12);
            prop_assert_eq!(up.consequences.peak_force, down.consequences.peak_force);
        }
    }
}

/// Every numeric field of a set-up.
fn fields(shop: &mut Shop) -> Vec<&mut f64> {
    let Shop {
        cutter,
        machine,
        hold,
        practice,
        part_height,
        pass,
        ..
    } = shop;
    let mut all: Vec<&mut f64> = vec![
        &mut cutter.diameter.value,
        &mut cutter.flute_length.value,
        &mut cutter.shank_diameter.value,
        &mut cutter.stick_out.value,
        &mut cutter.helix_angle.value,
        &mut machine.motor_power.value,
        &mut machine.efficiency.value,
        &mut machine.backlash.value,
        &mut hold.jaw_friction.value,
        &mut hold.grip_depth.value,
        &mut practice.speed_factor.value,
        &mut practice.feed_factor.value,
        &mut practice.thinning_cap.value,
        &mut practice.smallest_chip.value,
        &mut practice.finish_allowance.value,
        &mut practice.smallest_depth.value,
        &mut practice.roughing_deflection.value,
        &mut practice.finishing_deflection.value,
        &mut practice.power_share.value,
        &mut practice.holding_safety.value,
        &mut practice.wear_factor.value,
        &mut practice.radial_force_ratio.value,
        &mut practice.smallest_grip.value,
        &mut practice.stick_out_ratio.value,
        &mut practice.handwheel_pace.value,
        &mut practice.handwheel_return_pace.value,
        &mut practice.clearance.value,
        &mut practice.handling_per_pass.value,
        &mut practice.strip_width.value,
        &mut practice.jaw_clearance.value,
        &mut practice.setup_time.value,
        &mut practice.clamping_time.value,
        &mut practice.measuring_time.value,
        &mut practice.deburring_time.value,
        &mut practice.climb_depth_with_backlash.value,
        &mut practice.roughing_depth.p,
        &mut practice.roughing_depth.m,
        &mut practice.roughing_depth.k,
        &mut practice.roughing_depth.n,
        &mut practice.roughing_depth.s,
        &mut practice.roughing_depth.h,
        part_height,
        &mut pass.axial_depth.value,
        &mut pass.radial_depth.value,
        &mut pass.offset.value,
        &mut pass.length.value,
    ];
    match &mut cutter.form {
        CutterForm::CornerRadius(x) => all.push(&mut x.value),
        CutterForm::FaceMill(x) => all.push(&mut x.value),
        _ => {}
    }
    all.extend(cutter.rake_angle.as_mut().map(|x| &mut x.value));
    all.extend(cutter.maximum_speed.as_mut().map(|x| &mut x.value));
    all.extend(machine.base_speed.as_mut().map(|x| &mut x.value));
    all.extend(machine.maximum_torque.as_mut().map(|x| &mut x.value));
    all.extend(machine.travel_per_turn.as_mut().map(|x| &mut x.value));
    all.extend(machine.graduation.as_mut().map(|x| &mut x.value));
    all.extend(machine.rapid_speed.as_mut().map(|x| &mut x.value));
    all.extend(machine.acceleration.as_mut().map(|x| &mut x.value));
    all.extend(
        machine
            .readout
            .as_mut()
            .map(|x: &mut Readout| &mut x.resolution.value),
    );
    match &mut machine.drive {
        Drive::Continuous { lowest, highest } => {
            all.extend([&mut lowest.value, &mut highest.value])
        }
        Drive::Stepped(steps) => all.extend(steps.iter_mut().map(|x| &mut x.value)),
    }
    match &mut machine.feed {
        Feed::Continuous { lowest, highest } => all.extend([&mut lowest.value, &mut highest.value]),
        Feed::Stepped(steps) => all.extend(steps.iter_mut().map(|x| &mut x.value)),
        Feed::Geared(steps) => all.extend(steps.iter_mut().map(|x| &mut x.value)),
        Feed::Hand => {}
    }
    match &mut hold.clamping {
        Clamping::Force(x) => all.push(&mut x.value),
        Clamping::Screw {
            torque,
            lead,
            efficiency,
        } => {
            all.extend([&mut torque.value, &mut lead.value, &mut efficiency.value]);
        }
    }
    all.extend(hold.jaw_height.as_mut().map(|x| &mut x.value));
    all.extend(hold.parallels.iter_mut().map(|x| &mut x.value));
    all.extend(pass.mean_roughness.as_mut().map(|x| &mut x.value));
    all.extend(pass.spindle_speed.as_mut().map(|x| &mut x.value));
    all.extend(pass.feed_per_tooth.as_mut().map(|x| &mut x.value));
    all
}

/// Bits of any kind, or a power of two of any size.
fn wild() -> impl Strategy<Value = f64> {
    prop_oneof![
        any::<u64>().prop_map(f64::from_bits),
        (-1074i32..1024).prop_map(|x| 2f64.powi(x)),
        prop::sample::select(vec![
            0.0,
            -0.0,
            -1.0,
            f64::NAN,
            f64::INFINITY,
            f64::MIN_POSITIVE,
            f64::MAX
        ]),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_bits_make_a_cut_panic_or_give_what_is_not_a_number(
        shop in shop(), changes in prop::collection::vec((0usize..200, wild()), 1..4), teeth in prop::option::weighted(0.1, any::<u32>())
    ) {
        let mut shop = shop;
        shop.hold.parallels = vec![si(0.01)];
        {
            let mut fields = fields(&mut shop);
            let count = fields.len();
            for (which, value) in changes { *fields[which % count] = value; }
        }
        if let Some(teeth) = teeth { shop.cutter.teeth = teeth; }
        for lowering in [Lowering::Allowed, Lowering::NotForLoads] {
            match shop.mill(lowering) {
                Ok(cut) => for (name, value) in numbers(&cut) { prop_assert!(value.is_finite(), "{name} = {value}"); },
                Err(error) => for problem in error.problems() {
                    prop_assert!(!problem.parameter.is_empty() && !problem.remedy.is_empty(), "{problem}");
                }
            }
        }
    }
}

#[test]
fn inch_input_is_metric_input_bit_for_bit() {
    let read = |text: &str| -> Length { si(gullet::quantity::parse(Kind::Length, text).unwrap()) };
    let with = |d: &str, a_p: &str, a_e: &str, length: &str| {
        let mut shop = Shop::usual();
        shop.cutter.diameter = read(d);
        shop.pass.axial_depth = read(a_p);
        shop.pass.radial_depth = read(a_e);
        shop.pass.length = read(length);
        numbers(&shop.mill(Lowering::Allowed).unwrap())
    };
    let inch = with("1/2 in", "0.25 in", "0.1 in", "4 in");
    let metric = with("12.7 mm", "6.35 mm", "2.54 mm", "101.6 mm");
    assert_eq!(inch, metric);
}

#[test]
fn torque_binds_below_the_base_speed_and_power_above() {
    let mut shop = Shop::usual();
    shop.material = "1018cd".to_owned();
    shop.machine = Machine::builtin("small-cnc-mill").unwrap();
    shop.machine.motor_power = si(300.0);
    shop.practice = Practice::builtin("experienced").unwrap();
    shop.practice.roughing_deflection = si(5e-3);
    shop.hold.clamping = Clamping::Force(si(2e5));
    shop.cutter.teeth = 4;
    shop.cutter.material = ToolMaterial::UncoatedCarbide;
    for (rpm, expected) in [
        (600.0, "torque"),
        (1200.0, "torque"),
        (1800.0, "power"),
        (2400.0, "power"),
    ] {
        shop.pass.spindle_speed = Some(si(rpm / 60.0));
        let cut = shop.mill(Lowering::Allowed).unwrap();
        assert_eq!(cut.binding().unwrap().name, expected, "{rpm}");
        assert_eq!(cut.adjustments[0].limit, expected, "{rpm}");
        assert!((cut.binding().unwrap().share - 1.0).abs() < 1e-9);
    }
}

#[test]
fn balls_radii_and_leaning_edges_work_where_they_may() {
    for operation in Operation::ALL {
        for form in [
            CutterForm::Square,
            CutterForm::BallNose,
            CutterForm::CornerRadius(si(2e-3)),
            CutterForm::FaceMill(si(45f64.to_radians())),
        ] {
            let mut shop = Shop::usual();
            shop.cutter.form = form;
            shop.pass.operation = *operation;
            if *operation != Operation::SideMilling {
                shop.pass.axial_depth = si(0.03 * INCH);
                shop.pass.radial_depth = shop.cutter.diameter;
            }
            let cut = shop.mill(Lowering::Allowed);
            if *operation == Operation::FaceMilling && form == CutterForm::BallNose {
                assert_eq!(cut.err().unwrap().first().parameter, "cutter.form");
            } else {
                let cut = cut.unwrap_or_else(|error| panic!("{operation:?} {form:?}: {error}"));
                let d = shop.cutter.diameter.value;
                let effective = cut.consequences.effective_diameter.value;
                match form {
                    CutterForm::Square => assert_eq!(effective, d),
                    CutterForm::FaceMill(_) => {
                        assert!((effective - d - 2.0 * shop.pass.axial_depth.value).abs() < 1e-12)
                    }
                    _ => assert!(effective <= d),
                }
            }
        }
    }
}

#[test]
fn thinning_stops_at_half_the_diameter() {
    let mut shop = Shop::usual();
    shop.pass.kind = PassKind::Finishing;
    shop.practice.handwheel_pace = si(10.0);
    let d = shop.cutter.diameter;
    for (share, factor) in [(0.5, 1.0), (0.8, 1.0), (1.0, 1.0), (0.2, 1.25), (0.01, 2.0)] {
        shop.pass.radial_depth = d * share;
        let cut = shop.mill(Lowering::NotForLoads).unwrap();
        // The training practice takes 0.8 of the table's start and thins up to twice.
        let chip = 0.8
            * cut
                .data
                .iter()
                .find(|datum| datum.name == "feed per tooth, start")
                .unwrap()
                .value;
        let f_z = cut.settings.feed_per_tooth.value;
        assert!(
            (f_z / (chip * factor) - 1.0).abs() < 1e-9,
            "{share}: {f_z} {chip}"
        );
    }
}

#[test]
fn a_roughness_nothing_models_is_said_to_be_unchecked() {
    let mut shop = Shop::usual();
    shop.pass.operation = Operation::FaceMilling;
    shop.pass.axial_depth = si(0.02 * INCH);
    shop.pass.mean_roughness = Some(si(1.6e-6));
    let cut = shop.mill(Lowering::Allowed).unwrap();
    assert!(cut.limit("mean_roughness").is_none());
    assert!(
        cut.warnings
            .iter()
            .any(|warning| warning.text.contains("not checked"))
    );
}

#[test]
fn a_speed_above_the_tables_is_lowered_and_said_so() {
    let mut shop = Shop::usual();
    shop.machine = Machine::builtin("small-cnc-mill").unwrap();
    shop.pass.spindle_speed = Some(si(100.0));
    let cut = shop.mill(Lowering::Allowed).unwrap();
    let high = cut.spread.cutting_speed.high.value;
    assert!((cut.settings.cutting_speed.value / high - 1.0).abs() < 1e-9);
    assert!(
        cut.adjustments
            .iter()
            .any(|a| a.limit == "cutting_speed" && a.from == 100.0)
    );
    assert_eq!(cut.settings.wanted_speed.value, 100.0);
}

#[test]
fn a_shallow_round_edge_needs_more_force_than_a_square_one_at_the_same_feed() {
    let force = |form: CutterForm| {
        let mut shop = Shop::usual();
        shop.cutter.form = form;
        shop.pass.axial_depth = si(1e-3);
        shop.pass.spindle_speed = Some(si(10.0));
        shop.pass.feed_per_tooth = Some(si(0.05e-3));
        let cut = shop.mill(Lowering::NotForLoads).unwrap();
        cut.consequences.specific_cutting_force.value
    };
    let square = force(CutterForm::Square);
    // Straight edge of the same chip area: sin kappa = a_p/(r acos(1 - a_p/r)), k_c by its power -m_c.
    let r: f64 = 2.0;
    let sine = 1.0 / (r * (1.0 - 1.0 / r).acos());
    let round = force(CutterForm::CornerRadius(si(2e-3)));
    let exponent = -(round / square).ln() / sine.ln();
    assert!((0.1..0.4).contains(&exponent), "{exponent}");
    assert!(force(CutterForm::BallNose) > round);
}
