//! Pass plans: counts that add up, stops of the readout, depths within their bounds.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::Code;
use gullet::model::{
    Blank, Clamping, Cutter, CutterForm, Hold, Machine, PassKind, Practice, Readout,
};
use gullet::operation::Operation;
use gullet::plan::passes::{Counts, Split, split};
use gullet::plan::{Job, PassPlan, Stock, Strategy as PassStrategy};
use gullet::quantity::{UnitSystem, si};
use gullet::table::{Library, ToolMaterial};
use proptest::prelude::*;

const INCH: f64 = 0.0254;
const MILLS: &[&str] = &["manual-knee-mill", "small-cnc-mill"];
const STRATEGIES: [PassStrategy; 2] = [PassStrategy::Even, PassStrategy::DeepestFirst];

fn library() -> &'static Library {
    Library::builtin()
}

/// A block of aluminium, half-inch end mill, knee mill.
fn usual() -> Job {
    let d = si(0.5 * INCH);
    Job {
        title: "block".to_owned(),
        units: UnitSystem::Inch,
        material: library().material("6061").unwrap().clone(),
        blank: Blank {
            length: si(4.0 * INCH),
            width: si(2.0 * INCH),
            height: si(INCH),
        },
        cutter: Cutter {
            name: "end mill".to_owned(),
            form: CutterForm::Square,
            material: ToolMaterial::Hss,
            diameter: d,
            teeth: 2,
            flute_length: si(1.25 * INCH),
            shank_diameter: d,
            stick_out: si(1.5 * INCH),
            helix_angle: si(30f64.to_radians()),
            rake_angle: None,
            centre_cutting: true,
            maximum_speed: None,
        },
        machine: Machine::builtin("manual-knee-mill").unwrap(),
        hold: Hold {
            name: "vise".to_owned(),
            clamping: Clamping::Force(si(15e3)),
            jaw_friction: si(0.15),
            jaw_height: Some(si(0.04)),
            grip_depth: si(0.5 * INCH),
            parallels: vec![si(0.5 * INCH), si(INCH)],
            feed_across_jaws: false,
        },
        practice: Practice::builtin("training").unwrap(),
        operation: Operation::SideMilling,
        stock: Stock::Remove(si(0.3 * INCH)),
        axial_depth: Some(si(0.4 * INCH)),
        radial_depth: None,
        offset: si(0.0),
        length: None,
        strategy: PassStrategy::Even,
        mean_roughness: None,
        readout_start: si(0.0),
        readout_rises: true,
        spindle_speed: None,
        feed_per_tooth: None,
        assumptions: vec![],
    }
}

/// What holds of every plan.
fn consistent(job: &Job, plan: &PassPlan) -> Result<(), TestCaseError> {
    let resolution = plan.resolution.value;
    let smallest = (job.practice.smallest_depth.value / resolution - 1e-6)
        .ceil()
        .max(1.0) as u64;
    let sum: u64 = plan.passes.iter().map(|pass| pass.counts).sum();
    prop_assert_eq!(sum, plan.total);
    prop_assert!(plan.total as f64 * resolution <= stock(job) * (1.0 + 1e-9) + 1e-6 * resolution);
    prop_assert!(plan.total as f64 * resolution > stock(job) - resolution);
    let start = job.readout_start.value;
    let sign = if job.readout_rises { 1.0 } else { -1.0 };
    let mut removed = 0;
    let last = plan.passes.len();
    for (index, pass) in plan.passes.iter().enumerate() {
        removed += pass.counts;
        prop_assert_eq!(pass.number, index + 1);
        prop_assert!(pass.counts >= smallest, "{} counts", pass.counts);
        prop_assert_eq!(pass.left, plan.total - removed);
        prop_assert_eq!(pass.depth.value, pass.counts as f64 * resolution);
        prop_assert_eq!(
            pass.readout.value,
            start + sign * removed as f64 * resolution
        );
        let from_start = pass.readout_counts - (start / resolution).round() as i64;
        prop_assert_eq!(from_start, sign as i64 * removed as i64);
        let kind = pass.cut.pass.kind;
        prop_assert_eq!(kind == PassKind::Finishing, index + 1 == last);
        prop_assert_eq!(pass.cut.pass.depth(), pass.depth);
        if kind == PassKind::Roughing {
            prop_assert!(pass.depth.value <= plan.largest_roughing.0.value * (1.0 + 1e-12));
        } else {
            let allowance = job.practice.finish_allowance.value;
            prop_assert!(
                pass.depth.value
                    <= (2.0 * allowance).max(smallest as f64 * resolution) * (1.0 + 1e-9)
            );
        }
        prop_assert!(pass.cut.ledger.iter().all(|limit| !limit.exceeded()));
        for time in [
            pass.time.cutting,
            pass.time.returning,
            pass.time.handling,
            pass.time.total(),
        ] {
            prop_assert!(time.value.is_finite() && time.value >= 0.0);
        }
    }
    prop_assert_eq!(plan.passes.last().unwrap().left, 0);
    let time = plan.time();
    let total: f64 = plan.passes.iter().map(|pass| pass.time.total().value).sum();
    prop_assert!((time.total().value - total).abs() <= 1e-9 * total);
    if let Some((parallel, grip)) = plan.parallel {
        prop_assert!(grip.value >= job.hold.grip_depth.value * (1.0 - 1e-9));
        prop_assert!(
            (parallel.value + grip.value - job.hold.jaw_height.unwrap().value).abs() < 1e-12
        );
    }
    Ok(())
}

fn stock(job: &Job) -> f64 {
    match job.stock {
        Stock::Remove(depth) => depth.value,
        Stock::Measured { measured, target } => measured.value - target.value,
    }
}

prop_compose! {
    fn job()(
        material in prop::sample::select(vec!["6061", "1018cd", "304"]), operation in prop::sample::select(Operation::ALL),
        practice in prop::sample::select(Practice::BUILTIN), machine in prop::sample::select(MILLS),
        carbide: bool, teeth in 2u32..5, d in 6e-3f64..20e-3, stock in 5e-5f64..12e-3, axial in 0.1f64..1.5,
        start in -3000i32..3000, rises: bool, deepest: bool, readout: bool, helix in 0.0f64..40.0,
    ) -> Job {
        let mut job = usual();
        job.material = library().material(material).unwrap().clone();
        job.operation = operation;
        job.practice = Practice::builtin(practice).unwrap();
        job.machine = Machine::builtin(machine).unwrap();
        if !readout { job.machine.readout = None; }
        job.cutter.material = if carbide { ToolMaterial::CoatedCarbide } else { ToolMaterial::Hss };
        job.cutter.teeth = teeth;
        job.cutter.diameter = si(d);
        job.cutter.shank_diameter = si(d);
        job.cutter.flute_length = si(1.6 * d);
        job.cutter.stick_out = si(2.5 * d);
        job.cutter.helix_angle = si(helix.to_radians());
        job.stock = Stock::Remove(si(stock));
        job.axial_depth = Some(si(axial * d));
        let resolution = job.machine.resolution().map_or(1e-5, |x| x.value);
        job.readout_start = si(f64::from(start) * resolution);
        job.readout_rises = rises;
        job.strategy = if deepest { PassStrategy::DeepestFirst } else { PassStrategy::Even };
        job
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 150, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_plan_adds_up_and_every_error_says_why(job in job()) {
        match PassPlan::new(&job, library()) {
            Ok(plan) => consistent(&job, &plan)?,
            Err(error) => for problem in error.problems() {
                prop_assert!(matches!(problem.code, Code::NoPlan | Code::LimitExceeded), "{problem}");
                prop_assert!(!problem.value.is_empty() && !problem.admissible.is_empty() && !problem.remedy.is_empty());
            },
        }
    }

    #[test]
    fn deeper_stock_never_needs_fewer_passes(job in job(), more in 0.01f64..2.0) {
        let mut deeper = job.clone();
        deeper.stock = Stock::Remove(si(stock(&job) * (1.0 + more)));
        if let (Ok(less), Ok(more)) = (PassPlan::new(&job, library()), PassPlan::new(&deeper, library())) {
            prop_assert!(more.passes.len() >= less.passes.len(), "{} then {}", less.passes.len(), more.passes.len());
        }
    }

    #[test]
    fn inch_stock_is_metric_stock(thousandths in 20u32..300) {
        let mut inch = usual();
        let mut metric = usual();
        let read = |text: String| gullet::quantity::parse(gullet::quantity::Kind::Length, &text).unwrap();
        inch.stock = Stock::Remove(si(read(format!("{}.{:03} in", thousandths / 1000, thousandths % 1000))));
        let tenths = thousandths * 254;
        metric.stock = Stock::Remove(si(read(format!("{}.{:04} mm", tenths / 10_000, tenths % 10_000))));
        let [inch, metric] = [inch, metric].map(|job| PassPlan::new(&job, library()).unwrap());
        let counts = |plan: &PassPlan| plan.passes.iter().map(|pass| pass.counts).collect::<Vec<_>>();
        prop_assert_eq!(counts(&inch), counts(&metric));
        prop_assert_eq!(inch.total, u64::from(thousandths) * 2);
        prop_assert_eq!(inch.time(), metric.time());
    }
}

/// Numbers of a job that a person types.
fn fields(job: &mut Job) -> Vec<&mut f64> {
    let Job {
        blank,
        cutter,
        machine,
        hold,
        practice,
        stock,
        offset,
        readout_start,
        ..
    } = job;
    let mut all = vec![
        &mut blank.length.value,
        &mut blank.width.value,
        &mut blank.height.value,
        &mut cutter.diameter.value,
        &mut cutter.flute_length.value,
        &mut cutter.stick_out.value,
        &mut practice.smallest_depth.value,
        &mut practice.finish_allowance.value,
        &mut practice.clearance.value,
        &mut practice.handling_per_pass.value,
        &mut practice.strip_width.value,
        &mut practice.jaw_clearance.value,
        &mut practice.setup_time.value,
        &mut practice.clamping_time.value,
        &mut practice.measuring_time.value,
        &mut practice.deburring_time.value,
        &mut practice.handwheel_return_pace.value,
        &mut practice.climb_depth_with_backlash.value,
        &mut hold.grip_depth.value,
        &mut offset.value,
        &mut readout_start.value,
    ];
    all.extend(
        machine
            .readout
            .as_mut()
            .map(|x: &mut Readout| &mut x.resolution.value),
    );
    all.extend(machine.graduation.as_mut().map(|x| &mut x.value));
    all.extend(machine.travel_per_turn.as_mut().map(|x| &mut x.value));
    all.extend(machine.rapid_speed.as_mut().map(|x| &mut x.value));
    all.extend(machine.acceleration.as_mut().map(|x| &mut x.value));
    all.extend(hold.jaw_height.as_mut().map(|x| &mut x.value));
    all.extend(hold.parallels.iter_mut().map(|x| &mut x.value));
    match stock {
        Stock::Remove(depth) => all.push(&mut depth.value),
        Stock::Measured { measured, target } => {
            all.extend([&mut measured.value, &mut target.value])
        }
    }
    all
}

fn wild() -> impl Strategy<Value = f64> {
    prop_oneof![
        any::<u64>().prop_map(f64::from_bits),
        (-60i32..20).prop_map(|x| 2f64.powi(x)),
        prop::sample::select(vec![
            0.0,
            -1.0,
            f64::NAN,
            f64::INFINITY,
            f64::MIN_POSITIVE,
            f64::MAX
        ]),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_bits_make_a_plan_panic_or_give_what_is_not_a_number(
        job in job(), changes in prop::collection::vec((0usize..100, wild()), 1..3), measured: bool
    ) {
        let mut job = job;
        if measured { job.stock = Stock::Measured { measured: si(0.05), target: si(0.048) }; }
        {
            let mut fields = fields(&mut job);
            let count = fields.len();
            for (which, value) in changes { *fields[which % count] = value; }
        }
        match PassPlan::new(&job, library()) {
            Ok(plan) => {
                prop_assert!(plan.stock.value.is_finite() && plan.largest_roughing.0.value.is_finite());
                for pass in &plan.passes {
                    for value in [pass.depth.value, pass.readout.value, pass.time.total().value] {
                        prop_assert!(value.is_finite());
                    }
                }
                prop_assert_eq!(plan.passes.iter().map(|pass| pass.counts).sum::<u64>(), plan.total);
            }
            Err(error) => for problem in error.problems() {
                prop_assert!(!problem.parameter.is_empty() && !problem.remedy.is_empty(), "{problem}");
            }
        }
    }
}

/// Whether some split exists at all, by counting.
fn possible(counts: Counts) -> bool {
    let smallest = counts.smallest.max(1);
    (smallest..=counts.largest_finish).any(|finish| {
        let Some(rest) = counts.total.checked_sub(finish) else {
            return false;
        };
        rest == 0
            || (1..=rest)
                .any(|number| number * smallest <= rest && rest <= number * counts.largest_rough)
    })
}

#[test]
fn every_small_split_is_right_or_impossible() {
    let mut splits = 0;
    for smallest in 1..=4 {
        for finish in 0..=5 {
            for largest_finish in 0..=8 {
                for largest_rough in 0..=9 {
                    let mut fewest = 0;
                    for total in 0..=40 {
                        let counts = Counts {
                            total,
                            finish,
                            smallest,
                            largest_rough,
                            largest_finish,
                        };
                        for strategy in STRATEGIES {
                            match split(counts, strategy) {
                                Ok(Split {
                                    roughing,
                                    finishing,
                                }) => {
                                    splits += 1;
                                    assert_eq!(
                                        roughing.iter().sum::<u64>() + finishing,
                                        total,
                                        "{counts:?}"
                                    );
                                    assert!(
                                        (smallest..=largest_finish).contains(&finishing),
                                        "{counts:?}"
                                    );
                                    assert!(
                                        roughing
                                            .iter()
                                            .all(|x| (smallest..=largest_rough).contains(x)),
                                        "{counts:?} {roughing:?}"
                                    );
                                    let number = roughing.len() + 1;
                                    assert!(
                                        number >= fewest,
                                        "{counts:?}: {number} after {fewest}"
                                    );
                                    fewest = number;
                                    if strategy == PassStrategy::Even && !roughing.is_empty() {
                                        assert!(roughing[0] - roughing[roughing.len() - 1] <= 1);
                                    }
                                }
                                Err(error) => {
                                    assert!(!possible(counts), "{counts:?} {strategy:?}: {error}");
                                    assert_eq!(error.code(), Code::NoPlan);
                                }
                            }
                        }
                    }
                }
            }
        }
    }
    assert!(splits > 10_000);
}

#[test]
fn the_readout_ends_at_the_start_plus_or_minus_the_stock() {
    for rises in [true, false] {
        for start in [0.0, 1.25, -0.75] {
            let mut job = usual();
            job.readout_start = si(start * INCH);
            job.readout_rises = rises;
            let plan = PassPlan::new(&job, library()).unwrap();
            let end = plan.passes.last().unwrap();
            let counts = (start / 0.0005) as i64;
            assert_eq!(
                end.readout_counts,
                if rises { counts + 600 } else { counts - 600 }
            );
            assert_eq!(plan.total, 600);
            let expected = start + if rises { 0.3 } else { -0.3 };
            assert!((end.readout.value / INCH - expected).abs() < 1e-12);
        }
    }
}

#[test]
fn a_measurement_replans_what_is_left() {
    let job = usual();
    let plan =
        PassPlan::after_measurement(&job, library(), si(2.05 * INCH), si(2.0 * INCH)).unwrap();
    assert_eq!(plan.total, 100);
    for (measured, target) in [(2.0, 2.0), (1.9, 2.0), (f64::NAN, 2.0), (2.0, -1.0)] {
        let error =
            PassPlan::after_measurement(&job, library(), si(measured * INCH), si(target * INCH))
                .err()
                .unwrap();
        assert_eq!(error.first().parameter, "cut.final");
    }
}

/// What is changed, the code and the parameter it must get.
type Case = (&'static str, fn(&mut Job), Code, &'static str);

const BAD: &[Case] = &[
    (
        "no stock",
        |j| j.stock = Stock::Remove(si(0.0)),
        Code::NoPlan,
        "stock",
    ),
    (
        "less than the smallest pass",
        |j| j.stock = Stock::Remove(si(0.002 * INCH)),
        Code::NoPlan,
        "stock",
    ),
    (
        "negative stock",
        |j| j.stock = Stock::Remove(si(-1e-3)),
        Code::OutOfRange,
        "stock",
    ),
    (
        "unknown stock",
        |j| j.stock = Stock::Remove(si(f64::NAN)),
        Code::NotFinite,
        "stock",
    ),
    (
        "endless stock",
        |j| j.stock = Stock::Remove(si(f64::INFINITY)),
        Code::NotFinite,
        "stock",
    ),
    (
        "unknown start",
        |j| j.readout_start = si(f64::NAN),
        Code::NotFinite,
        "cut.readout_start",
    ),
    (
        "start beyond the hills",
        |j| j.readout_start = si(1e6),
        Code::OutOfRange,
        "cut.readout_start",
    ),
    (
        "flat blank",
        |j| j.blank.height = si(0.0),
        Code::OutOfRange,
        "blank.height",
    ),
    (
        "endless blank",
        |j| j.blank.width = si(f64::INFINITY),
        Code::NotFinite,
        "blank.width",
    ),
    (
        "readout of zero",
        |j| {
            j.machine.readout = Some(Readout {
                resolution: si(0.0),
            })
        },
        Code::OutOfRange,
        "machine.readout_resolution",
    ),
    (
        "smallest pass of nothing",
        |j| j.practice.smallest_depth = si(0.0),
        Code::OutOfRange,
        "practice.smallest_depth",
    ),
    (
        "wall higher than the flutes",
        |j| j.axial_depth = Some(si(2.0 * INCH)),
        Code::OutOfRange,
        "cut.axial_depth",
    ),
    (
        "vise that hardly clamps",
        |j| j.hold.clamping = Clamping::Force(si(20.0)),
        Code::NoPlan,
        "finishing_depth",
    ),
    (
        "thin grip",
        |j| j.hold.grip_depth = si(1e-3),
        Code::LimitExceeded,
        "grip",
    ),
];

#[test]
fn bad_jobs_get_their_code_and_parameter() {
    PassPlan::new(&usual(), library()).unwrap();
    for (name, change, code, parameter) in BAD {
        let mut job = usual();
        change(&mut job);
        let error = PassPlan::new(&job, library())
            .err()
            .unwrap_or_else(|| panic!("{name}: no error"));
        let found = error
            .problems()
            .iter()
            .find(|problem| problem.parameter == *parameter)
            .unwrap_or_else(|| panic!("{name}: {error}"));
        assert_eq!(found.code, *code, "{name}: {error}");
        assert!(
            !found.value.is_empty() && !found.admissible.is_empty() && !found.remedy.is_empty(),
            "{name}: {error}"
        );
    }
}
