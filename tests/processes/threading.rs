//! Single-point threading: passes, plans, speeds that carriage and run-in allow.

use super::hand::{assert_near, holds, limit, plain_work, run, strong, value};
use gullet::operation::process::threading_plan;
use gullet::quantity::si;

const PI: f64 = core::f64::consts::PI;
const THREAD: &str = "major_diameter=24 mm; pitch=3 mm; length=40 mm";

/// P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.21 p.231 (seen in a companion):
/// five passes of 89 mm at 217.03 mm/min take 2.05 min; 2 mm of lead at 108.5 rpm.
#[test]
fn a_thread_of_sharma() {
    // 0.613435 x 2 mm in five passes: 0.5487 mm first.
    let n = 217.03e-3 / 60.0 / 2e-3;
    let inputs = format!(
        "major_diameter=30 mm; pitch=2 mm; length=89 mm; first_depth=0.549 mm; spring_passes=0; spindle_speed={n} r/s"
    );
    let cut = holds("threading", &inputs, |shop| {
        strong(shop);
        plain_work(shop, 2e9);
    });
    assert_near(value(&cut, "total_passes"), 5.0, 1e-12);
    assert_near(value(&cut, "time") / 60.0, 2.05, 2e-3);
}

/// Table of basic dimensions of M10, DIN 13-1 (from memory): heights of 0.920 mm outside, 0.812 mm
/// inside.
#[test]
fn heights_of_m10() {
    let height = |thread: &str| {
        let inputs = format!(
            "major_diameter=10 mm; pitch=1.5 mm; length=20 mm; thread={thread}; spindle_speed=160 rpm"
        );
        value(&holds("threading", &inputs, |_| ()), "height")
    };
    assert_near(height("external"), 0.920e-3, 6e-4);
    assert_near(height("internal"), 0.812e-3, 7e-4);
}

/// A thread in plain arithmetic.
#[test]
fn a_thread_by_hand() {
    let cut = holds(
        "threading",
        &format!(
            "{THREAD}; spindle_speed=100 rpm; first_depth=0.25 mm; run_in=6 mm; run_out=2 mm; return_time=5 s; tool_flat=0.3 mm"
        ),
        |_| (),
    );
    let shop = super::bench::Shop::of(gullet::operation::process::find("threading").unwrap());
    let height = 17.0 / 24.0 * (3f64.sqrt() / 2.0) * 3e-3;
    assert_near(value(&cut, "height"), height, 1e-12);
    let passes = ((height / 0.25e-3).powi(2)).ceil();
    assert_near(value(&cut, "passes"), passes, 1e-12);
    let first = height / passes.sqrt();
    assert_near(value(&cut, "first_infeed"), first, 1e-12);
    let before = height * ((passes - 1.0) / passes).sqrt();
    assert_near(value(&cut, "last_infeed"), height - before, 1e-9);
    assert_near(
        value(&cut, "compound_infeed"),
        height / 29.5f64.to_radians().cos(),
        1e-12,
    );
    let pair = &shop.material.pairs[0];
    let (tan, cos) = ((PI / 6.0).tan(), (PI / 6.0).cos());
    let force = |depth: f64, before: f64| {
        let section = (depth - before) * (0.3e-3 + (depth + before) * tan);
        let edge = 0.3e-3 + 2.0 * depth / cos;
        let k = pair.kc11.value * (section / edge * 1e3).powf(-pair.exponent.value);
        (k * section, section)
    };
    let (early, late) = (force(first, 0.0), force(height, before));
    let heavier = if late.0 > early.0 { late } else { early };
    assert_near(value(&cut, "chip_section"), heavier.1, 1e-8);
    assert_near(value(&cut, "cutting_force"), heavier.0, 1e-8);
    assert_near(value(&cut, "torque"), heavier.0 * 0.012, 1e-8);
    let n = value(&cut, "spindle_speed");
    let time = (passes + 1.0) * (0.048 / (3e-3 * n) + 5.0);
    assert_near(value(&cut, "time"), time, 1e-11);
}

/// Without a first depth the last infeed decides: one pass more would rub.
#[test]
fn the_smallest_infeed_decides() {
    for smallest in [0.03, 0.05, 0.08] {
        let inputs = format!("{THREAD}; spindle_speed=100 rpm; smallest_infeed={smallest} mm");
        let cut = holds("threading", &inputs, |_| ());
        let (height, passes) = (value(&cut, "height"), value(&cut, "passes"));
        let last = |passes: f64| height * (1.0 - ((passes - 1.0) / passes).sqrt());
        assert_near(value(&cut, "last_infeed"), last(passes), 1e-9);
        assert!(last(passes) >= smallest * 1e-3 && last(passes + 1.0) < smallest * 1e-3);
        assert!(
            !cut.warnings
                .iter()
                .any(|warning| warning.text.contains("rubs"))
        );
    }
}

/// The plan ends at the height, cuts equal areas, and its first depth is the cut's.
#[test]
fn the_plan_of_passes() {
    let cut = holds(
        "threading",
        &format!("{THREAD}; spindle_speed=100 rpm"),
        |_| (),
    );
    let depths = threading_plan(si(value(&cut, "height")), value(&cut, "passes") as u16);
    assert_eq!(depths.len() as f64, value(&cut, "passes"));
    assert_near(depths[0].value, value(&cut, "first_infeed"), 1e-12);
    assert_near(depths.last().unwrap().value, value(&cut, "height"), 1e-12);
    let areas: Vec<f64> = depths.iter().map(|depth| depth.value.powi(2)).collect();
    for pair in areas.windows(2) {
        assert_near(pair[1] - pair[0], areas[0], 1e-9);
    }
    assert!(threading_plan(si(1e-3), 0).is_empty());
    assert_eq!(cut.depths, depths);
    let card =
        gullet::plan::ProcessCard::new("Spindle nose", cut, gullet::table::Library::builtin());
    assert!(card.text().contains("Depth after each pass"));
    let listed = card.json()["depths"].as_array().map(Vec::len);
    assert_eq!(listed, Some(depths.len()));
    // Hundreds of passes are no plan.
    let fine = holds(
        "threading",
        &format!("{THREAD}; spindle_speed=100 rpm; first_depth=0.05 mm"),
        |_| (),
    );
    assert!(value(&fine, "passes") > 200.0 && fine.depths.is_empty());
}

/// Pitfall 20: the feed of a thread with several starts is its lead, and every start has its passes.
#[test]
fn starts_multiply_lead_and_passes() {
    let one = holds(
        "threading",
        &format!("{THREAD}; spindle_speed=40 rpm"),
        |_| (),
    );
    let three = holds(
        "threading",
        &format!("{THREAD}; starts=3; spindle_speed=40 rpm"),
        |_| (),
    );
    assert_near(value(&three, "feed"), 9e-3, 1e-12);
    assert_near(value(&one, "feed"), 3e-3, 1e-12);
    assert_near(
        value(&three, "total_passes"),
        3.0 * value(&one, "total_passes"),
        1e-12,
    );
    assert_near(value(&three, "height"), value(&one, "height"), 1e-12);
    // A feed asked for does not change a lead.
    let asked = holds(
        "threading",
        &format!("{THREAD}; feed=0.2 mm; spindle_speed=40 rpm"),
        |_| (),
    );
    assert_near(value(&asked, "feed"), 3e-3, 1e-12);
}

/// The carriage follows at the lead: what it allows bounds the spindle, on a stepped drive the step.
#[test]
fn the_carriage_bounds_the_spindle() {
    let with = |speed: &str| {
        holds(
            "threading",
            &format!("{THREAD}; carriage_speed={speed}"),
            |_| (),
        )
    };
    // 0.48 m/min over 3 mm are 160 rpm, a step of the gearbox.
    let exact = with("0.48 m/min");
    assert_near(value(&exact, "spindle_speed") * 60.0, 160.0, 1e-9);
    assert_near(limit(&exact, "carriage_speed").share, 1.0, 1e-9);
    let below = with("0.47 m/min");
    assert_near(value(&below, "spindle_speed") * 60.0, 100.0, 1e-9);
    // 3 mm at the lowest speed of 40 rpm are 0.12 m/min.
    let error = run(
        "threading",
        &format!("{THREAD}; carriage_speed=0.1 m/min"),
        |_| (),
    )
    .map(|_| ())
    .unwrap_err();
    assert_eq!(error.first().parameter, "carriage_speed");
}

/// Run-in (P n)^2/(2 a): identity, 2 mm at 3000 rpm and 2 m/s2 need 2.5 mm.
#[test]
fn the_run_in_bounds_the_spindle() {
    let fast = |shop: &mut super::bench::Shop| {
        strong(shop);
        plain_work(shop, 2e9);
        shop.machine.acceleration = Some(si(2.0));
    };
    let inputs =
        "major_diameter=30 mm; pitch=2 mm; length=40 mm; spindle_speed=100 r/s; run_in=2.5 mm";
    let cut = holds("threading", inputs, fast);
    assert_near(value(&cut, "spindle_speed") * 60.0, 3000.0, 1e-9);
    assert_near(value(&cut, "run_in_needed"), 2.5e-3, 1e-9);
    // Not given, or on a lathe without an acceleration, it sets no limit.
    let free = holds("threading", &inputs.replace("; run_in=2.5 mm", ""), fast);
    assert_near(value(&free, "spindle_speed"), 100.0, 1e-12);
    assert!(free.limit("run_in").is_none());
}

/// Too fine a last pass rubs, too deep a first one breaks the tip: both are told.
#[test]
fn passes_too_fine_or_too_deep_are_told() {
    let told = |first: &str, word: &str| {
        let inputs = format!("{THREAD}; spindle_speed=100 rpm; first_depth={first}");
        let cut = holds("threading", &inputs, strong);
        cut.warnings
            .iter()
            .any(|warning| warning.text.contains(word))
    };
    assert!(told("0.2 mm", "rubs") && !told("0.6 mm", "rubs"));
    assert!(told("1.2 mm", "breaks") && !told("0.6 mm", "breaks"));
}

/// On a lathe that sets no bound a hand opens the half-nut: without a speed of the carriage that is told.
#[test]
fn a_carriage_without_a_speed_is_told() {
    let told = |inputs: &str| {
        holds("threading", inputs, |_| ())
            .warnings
            .iter()
            .any(|warning| warning.text.contains("half-nut"))
    };
    assert!(told(THREAD));
    assert!(!told(&format!("{THREAD}; carriage_speed=1.2 m/min")));
}

/// The feed of a thread is its lead: the spread tells no feed of the tables.
#[test]
fn the_spread_of_a_thread_has_no_feed() {
    for (name, free) in [("threading", false), ("tapping", false), ("turning", true)] {
        let process = gullet::operation::process::find(name).unwrap();
        let cut = holds(name, process.example.inputs, |_| ());
        assert_eq!(cut.spread.iter().any(|band| band.name == "feed"), free);
    }
}
