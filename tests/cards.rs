//! Three jobs computed again with plain numbers, from the handbooks' formulas and the tables' values.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use core::f64::consts::PI;
use gullet::model::{
    Blank, Clamping, Cutter, CutterForm, Direction, Hold, Machine, PassKind, Practice,
};
use gullet::operation::{Cut, Lowering, Operation, Pass, Setup, WorkedStep, mill};
use gullet::plan::{Job, PassPlan, Stock, Strategy};
use gullet::quantity::{UnitSystem, si};
use gullet::table::{Library, MeasuredAt, ToolMaterial};

#[path = "cards/by_hand.rs"]
mod by_hand;

use by_hand::{ByHand, Given, by_hand};

const INCH: f64 = 0.0254;

fn library() -> &'static Library {
    Library::builtin()
}

fn end_mill(material: ToolMaterial, teeth: u32) -> Cutter {
    Cutter {
        name: "half-inch end mill".to_owned(),
        form: CutterForm::Square,
        material,
        diameter: si(0.5 * INCH),
        teeth,
        flute_length: si(1.25 * INCH),
        shank_diameter: si(0.5 * INCH),
        stick_out: si(1.5 * INCH),
        helix_angle: si(30f64.to_radians()),
        rake_angle: None,
        centre_cutting: true,
        maximum_speed: None,
    }
}

fn job(
    material: &str,
    cutter: Cutter,
    machine: &str,
    practice: &str,
    operation: Operation,
    stock: f64,
) -> Job {
    Job {
        title: operation.name().to_owned(),
        units: UnitSystem::Inch,
        material: library().material(material).unwrap().clone(),
        blank: Blank {
            length: si(4.0 * INCH),
            width: si(0.4 * INCH),
            height: si(1.2 * INCH),
        },
        cutter,
        machine: Machine::builtin(machine).unwrap(),
        hold: Hold {
            name: "vise".to_owned(),
            clamping: Clamping::Screw {
                torque: si(45.0),
                lead: si(5e-3),
                efficiency: si(0.3),
            },
            jaw_friction: si(0.15),
            jaw_height: Some(si(1.5 * INCH)),
            grip_depth: si(0.6 * INCH),
            parallels: vec![si(0.5 * INCH), si(0.75 * INCH), si(1.0 * INCH)],
            feed_across_jaws: false,
        },
        practice: Practice::builtin(practice).unwrap(),
        operation,
        stock: Stock::Remove(si(stock)),
        axial_depth: Some(si(0.5 * INCH)),
        radial_depth: None,
        offset: si(0.0),
        length: None,
        strategy: Strategy::Even,
        mean_roughness: None,
        readout_start: si(0.0),
        readout_rises: true,
        spindle_speed: None,
        feed_per_tooth: None,
        assumptions: vec![],
    }
}

/// Side milling aluminium, facing cold-drawn steel, slotting stainless steel.
fn jobs() -> Vec<Job> {
    vec![
        job(
            "6061",
            end_mill(ToolMaterial::Hss, 2),
            "manual-knee-mill",
            "training",
            Operation::SideMilling,
            0.3 * INCH,
        ),
        job(
            "1018cd",
            end_mill(ToolMaterial::Hss, 4),
            "manual-knee-mill",
            "training",
            Operation::FaceMilling,
            0.1 * INCH,
        ),
        job(
            "304",
            end_mill(ToolMaterial::CoatedCarbide, 4),
            "small-cnc-mill",
            "experienced",
            Operation::Slotting,
            0.2 * INCH,
        ),
    ]
}

/// Values of the cut's data by name, in order.
fn data(cut: &Cut, name: &str) -> Vec<f64> {
    cut.data
        .iter()
        .filter(|datum| datum.name == name)
        .map(|datum| datum.value)
        .collect()
}

fn one(cut: &Cut, name: &str) -> f64 {
    let found = data(cut, name);
    assert_eq!(found.len(), 1, "{name}: {found:?}");
    found[0]
}

/// What a person copies out of job and tables before taking a pencil.
fn given(job: &Job, cut: &Cut) -> Given {
    let practice = &job.practice;
    let unit = library().unit_power(&job.material).unwrap();
    assert_eq!(unit.measured_at, MeasuredAt::Cutter);
    let Clamping::Screw {
        torque,
        lead,
        efficiency,
    } = job.hold.clamping
    else {
        panic!("a screw")
    };
    let low_speed = job.practice.name == "training";
    Given {
        operation: job.operation,
        finishing: cut.pass.kind == PassKind::Finishing,
        climb: cut.pass.direction == Direction::Climb,
        d: job.cutter.diameter.value,
        z: f64::from(job.cutter.teeth),
        flutes: job.cutter.flute_length.value,
        out: job.cutter.stick_out.value,
        helix: job.cutter.helix_angle.value,
        a_p: cut.pass.axial_depth.value,
        a_e: cut.pass.radial_depth.value,
        length: cut.pass.length.value,
        table_speed: one(
            cut,
            if low_speed {
                "cutting speed, low"
            } else {
                "cutting speed, start"
            },
        ),
        speeds: ["low", "start", "high"].map(|end| one(cut, &format!("cutting speed, {end}"))),
        feeds: ["low", "start", "high"].map(|end| one(cut, &format!("feed per tooth, {end}"))),
        pairs: data(cut, "k_c1.1")
            .into_iter()
            .zip(data(cut, "m_c"))
            .collect(),
        unit_power: one(cut, "unit power"),
        unit_chip: unit.chip_thickness.unwrap().value,
        modulus: one(cut, "modulus of the cutter"),
        steps: match &job.machine.drive {
            gullet::model::Drive::Stepped(steps) => steps.iter().map(|step| step.value).collect(),
            gullet::model::Drive::Continuous { .. } => vec![],
        },
        motor: job.machine.motor_power.value,
        eta: job.machine.efficiency.value,
        base: job.machine.base_speed.map(|speed| speed.value),
        crank: job.machine.travel_per_turn.map(|lead| lead.value),
        speed_factor: practice.speed_factor.value,
        feed_factor: practice.feed_factor.value,
        thinning: practice.thinning_cap.value,
        wear: practice.wear_factor.value,
        radial: practice.radial_force_ratio.value,
        share: practice.power_share.value,
        safety: practice.holding_safety.value,
        mu: job.hold.jaw_friction.value,
        vise: 2.0 * PI * efficiency.value * torque.value / lead.value,
        bend: practice.deflection(cut.pass.kind).value,
        clearance: practice.clearance.value,
        pace: practice.handwheel_pace.value,
        fastest_feed: match job.machine.feed {
            gullet::model::Feed::Continuous { highest, .. } => Some(highest.value),
            _ => None,
        },
    }
}

fn same(what: &str, found: f64, expected: f64) {
    assert!(
        (found - expected).abs() <= 1e-9 * expected.abs(),
        "{what}: {found} by the cut, {expected} by hand"
    );
}

fn compare(job: &Job, cut: &Cut) -> ByHand {
    let hand = by_hand(&given(job, cut));
    let (s, c, p) = (&cut.settings, &cut.consequences, &cut.spread);
    let ten_mm = 0.01 / hand.table_feed;
    for (what, found, expected) in [
        ("wanted speed", s.wanted_speed.value, hand.wanted_speed),
        ("spindle speed", s.spindle_speed.value, hand.n),
        ("cutting speed", s.cutting_speed.value, hand.v_c),
        ("chip load", s.chip_load.value, hand.h_max),
        ("feed per tooth", s.feed_per_tooth.value, hand.f_z),
        ("feed per revolution", s.feed_per_rev.value, hand.f),
        ("table feed", s.table_feed.value, hand.table_feed),
        (
            "time per inch",
            s.time_per_inch.value,
            0.0254 / hand.table_feed,
        ),
        ("time per 10 mm", s.time_per_10_mm.value, ten_mm),
        ("effective diameter", c.effective_diameter.value, 0.0127),
        ("entry", c.entry_angle.value, hand.entry),
        ("exit", c.exit_angle.value, hand.exit),
        ("largest chip", c.max_chip_thickness.value, hand.h_max),
        ("mean chip", c.mean_chip_thickness.value, hand.h_m),
        ("removal rate", c.removal_rate.value, hand.q),
        ("k_c", c.specific_cutting_force.value, hand.k_c),
        ("power", c.cutting_power.value, hand.power),
        ("motor power", c.motor_power.value, hand.motor),
        ("torque", c.torque.value, hand.torque),
        ("mean force", c.mean_tangential_force.value, hand.mean_force),
        (
            "unit power",
            c.unit_power_cutting_power.unwrap().value,
            hand.unit_power,
        ),
        ("limit power", c.limit_power.value, hand.limit_power),
        ("limit torque", c.limit_torque.value, hand.limit_torque),
        (
            "peak tangential force",
            c.peak_tangential_force.value,
            hand.peak_tangential,
        ),
        ("peak force", c.peak_force.value, hand.peak),
        ("axial force", c.axial_force.value, hand.axial),
        ("deflection", c.deflection.value, hand.bend),
        ("clamping needed", c.clamping_needed.value, hand.clamp),
        ("clamping force", c.clamping_force.value, hand.vise),
        (
            "available power",
            c.available_power.value,
            hand.available_power,
        ),
        (
            "available torque",
            c.available_torque.value,
            hand.available_torque,
        ),
        ("travel", c.travel.value, hand.travel),
        ("time", c.time.value, hand.time),
        ("speed low", p.cutting_speed.low.value, hand.speeds[0]),
        ("speed start", p.cutting_speed.start.value, hand.speeds[1]),
        ("speed high", p.cutting_speed.high.value, hand.speeds[2]),
        ("feed low", p.feed_per_tooth.low.value, hand.feeds[0]),
        ("feed start", p.feed_per_tooth.start.value, hand.feeds[1]),
        ("feed high", p.feed_per_tooth.high.value, hand.feeds[2]),
        ("force low", p.force.low.value, hand.forces[0]),
        ("force start", p.force.start.value, hand.mean_force),
        ("force high", p.force.high.value, hand.forces[1]),
        ("power low", p.power.low.value, hand.powers[0]),
        ("power start", p.power.start.value, hand.power),
        ("power high", p.power.high.value, hand.powers[1]),
        ("time low", p.time.low.value, hand.times[2]),
        ("time start", p.time.start.value, hand.times[1]),
        ("time high", p.time.high.value, hand.times[0]),
    ] {
        same(what, found, expected);
    }
    match (s.handwheel_rate, hand.crank_rate) {
        (Some(found), Some(expected)) => same("handwheel", found.value, expected),
        (None, None) => {}
        other => panic!("handwheel: {other:?}"),
    }
    match (c.mean_roughness, hand.roughness) {
        (Some(found), Some(expected)) => same("roughness", found.value, expected),
        (None, None) => {}
        other => panic!("roughness: {other:?}"),
    }
    let practice = &job.practice;
    let (d, group) = (0.0127, practice.depth_ratio(job.material.iso513).value);
    let depth = cut.pass.depth().value;
    for limit in &cut.ledger {
        let (value, bound) = match limit.name {
            "spindle_speed_highest" => (hand.n, job.machine.speed_range().1.value),
            "spindle_speed_lowest" => (hand.n, job.machine.speed_range().0.value),
            "cutting_speed" => (hand.v_c, hand.speeds[2]),
            "handwheel_pace" => (hand.table_feed, 0.2 * INCH * practice.handwheel_pace.value),
            "table_feed" => (hand.table_feed, 5.0 / 60.0),
            "table_feed_lowest" => (hand.table_feed, 1e-3 / 60.0),
            "smallest_chip" => (hand.h_max, 1e-5),
            "largest_chip" => (hand.h_max, hand.feeds[2]),
            "power" => (hand.limit_power, hand.available_power),
            "torque" => (hand.limit_torque, hand.available_torque),
            "deflection" => (
                hand.bend,
                if cut.pass.kind == PassKind::Finishing {
                    2e-5
                } else {
                    5e-5
                },
            ),
            "clamping" => (hand.clamp, hand.vise),
            "flute_length" => (cut.pass.axial_depth.value, 1.25 * INCH),
            "roughing_depth" => (depth, d * group),
            "climb_with_backlash" => (depth, 0.01 * INCH),
            "grip" => (0.6 * INCH, 1.2 * INCH / 3.0),
            "stick_out" => (1.5 * INCH, 4.0 * d),
            other => panic!("{other} is not computed by hand"),
        };
        same(limit.name, limit.value, value);
        same(limit.name, limit.bound, bound);
        let share = match limit.side {
            gullet::operation::Side::AtMost => value / bound,
            gullet::operation::Side::AtLeast => bound / value,
        };
        same(limit.name, limit.share, share);
    }
    hand
}

#[test]
fn every_number_of_three_jobs_comes_out_by_hand() {
    let mut passes = 0;
    for job in jobs() {
        let plan =
            PassPlan::new(&job, library()).unwrap_or_else(|error| panic!("{}: {error}", job.title));
        assert!(plan.passes.len() >= 2, "{}", job.title);
        for pass in &plan.passes {
            let hand = compare(&job, &pass.cut);
            same("cutting time", pass.time.cutting.value, hand.time);
            let back = match job.machine.rapid_speed {
                // 15 m/min and 2 m/s2: 0.25 m/s is reached after 31.25 mm in all.
                Some(_) if hand.travel >= 0.25 * 0.25 / 2.0 => hand.travel / 0.25 + 0.25 / 2.0,
                Some(_) => 2.0 * (hand.travel / 2.0).sqrt(),
                None => hand.travel / (0.2 * INCH * job.practice.handwheel_return_pace.value),
            };
            same("return time", pass.time.returning.value, back);
            same(
                "handling",
                pass.time.handling.value,
                job.practice.handling_per_pass.value,
            );
            passes += 1;
        }
        let sum: f64 = plan.passes.iter().map(|pass| pass.time.total().value).sum();
        same("time of all passes", plan.time().total().value, sum);
        // The lowest parallel that leaves no less than the grip: 1.5 - 0.75 in.
        let (parallel, grip) = plan.parallel.unwrap();
        same("parallel", parallel.value, 0.75 * INCH);
        same("grip", grip.value, 0.75 * INCH);
    }
    assert!(passes >= 6);
}

#[test]
fn aluminium_and_a_half_inch_cutter_turn_near_1200_rpm() {
    // Near 1200 rpm: common practice, no source.
    let plan = PassPlan::new(&jobs()[0], library()).unwrap();
    for pass in &plan.passes {
        let rpm = pass.cut.settings.spindle_speed.value * 60.0;
        assert!((900.0..=1500.0).contains(&rpm), "{rpm}");
        assert_eq!(rpm, 1200.0);
    }
    assert!(plan.largest_roughing.0.value <= 0.1 * INCH * (1.0 + 1e-12));
}

#[test]
fn every_datum_has_an_origin_and_every_source_is_in_the_library() {
    for job in jobs() {
        for pass in &PassPlan::new(&job, library()).unwrap().passes {
            let mut named = 0;
            for datum in &pass.cut.data {
                assert!(!datum.origin.trim().is_empty(), "{}", datum.name);
                for part in datum.origin.split('[').skip(1) {
                    let id = part.split(']').next().unwrap();
                    assert!(library().source(id).is_some(), "{}: {id}", datum.name);
                    named += 1;
                }
            }
            assert!(named >= 9, "{named}");
            for limit in &pass.cut.ledger {
                assert!(!limit.origin.trim().is_empty(), "{}", limit.name);
            }
        }
    }
}

/// Constants the chain states: pi, right angle, no angle, 1, the sensitivity to rake, the share of a
/// fluted diameter, the exponent of unit power.
const STATED: &[f64] = &[0.0, 1.0, PI, PI / 2.0, 0.01, 0.8, 0.2];

#[test]
fn worked_steps_follow_from_inputs_and_one_another() {
    for job in jobs() {
        for pass in &PassPlan::new(&job, library()).unwrap().passes {
            let cut = &pass.cut;
            let given = given(&job, cut);
            let mut known: Vec<f64> = STATED.to_vec();
            known.extend(cut.data.iter().map(|datum| datum.value));
            known.extend([
                given.d,
                given.z,
                given.flutes,
                given.out,
                given.helix,
                given.a_p,
                given.a_e,
                given.length,
                given.unit_chip,
                given.motor,
                given.eta,
                given.speed_factor,
                given.feed_factor,
                given.thinning,
                given.share,
                given.safety,
                given.clearance,
                given.d / 2.0,
                given.a_e / 2.0,
                -given.a_e / 2.0,
                given.d / 2.0,
                given
                    .base
                    .unwrap_or(given.steps.first().copied().unwrap_or(0.0)),
                job.practice.smallest_chip.value,
            ]);
            known.extend(given.crank);
            if let Clamping::Screw {
                torque,
                lead,
                efficiency,
            } = job.hold.clamping
            {
                known.extend([torque.value, lead.value, efficiency.value]);
            }
            let mut formulas = 0;
            for step in &cut.steps {
                match step {
                    WorkedStep::Formula(step) => {
                        let again = step.formula.call(&step.arguments).unwrap();
                        assert_eq!(
                            again.to_bits(),
                            step.result.to_bits(),
                            "{}",
                            step.formula.name
                        );
                        for (argument, parameter) in
                            step.arguments.iter().zip(step.formula.parameters)
                        {
                            // Two ratios stand in no step of their own: mean over largest chip, largest sine.
                            let ratio = ["chip_ratio", "largest_sine"].contains(&parameter.name)
                                && (0.0..=1.0).contains(argument);
                            let found = ratio
                                || known
                                    .iter()
                                    .any(|x| (x - argument).abs() <= 1e-12 * argument.abs());
                            assert!(
                                found,
                                "{} of {} = {argument} comes from nowhere",
                                parameter.name, step.formula.name
                            );
                        }
                        known.push(step.result);
                        formulas += 1;
                    }
                    WorkedStep::Choice(choice) => {
                        assert!(!choice.text.is_empty());
                        known.push(choice.value);
                    }
                }
            }
            assert!(formulas > 25, "{formulas}");
        }
    }
}

#[test]
fn a_cut_is_the_plans_cut() {
    // The plan adds nothing of its own to a pass: the same pass asked for alone is the same cut.
    for job in jobs() {
        let plan = PassPlan::new(&job, library()).unwrap();
        let planned = &plan.passes[0].cut;
        let setup: Setup = job.setup(library());
        let pass: Pass = planned.pass;
        let alone = mill(&setup, &pass, Lowering::Allowed).unwrap();
        assert_eq!(alone.settings, planned.settings);
        assert_eq!(alone.consequences, planned.consequences);
        assert_eq!(alone.ledger, planned.ledger);
    }
}
