//! Known errors of milling calculators, one by one: each test fails where the error is made.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use core::f64::consts::PI;
use gullet::formula::find;
use gullet::model::{Clamping, CutterForm, Direction, Machine};
use gullet::operation::{Cut, Lowering, Operation};
use gullet::quantity::{Kind, UnitSystem, format, parse, si};

#[allow(dead_code)]
#[path = "operations/shop.rs"]
mod shop;

use shop::{INCH, Shop};

/// The SI value of a formula over arguments as text.
fn of(name: &str, arguments: &str) -> f64 {
    gullet::evaluate(name, arguments).unwrap().si
}

#[track_caller]
fn near(a: f64, b: f64, tolerance: f64) {
    assert!(
        (a - b).abs() <= tolerance * b.abs(),
        "{a:e} against {b:e}, allowed {tolerance:e}"
    );
}

/// The cut at a feed per tooth of 0.05 mm and 1200 rpm, whatever the limits say.
fn cut(change: impl FnOnce(&mut Shop)) -> Cut {
    let mut shop = Shop::usual();
    shop.pass.feed_per_tooth = Some(si(5e-5));
    shop.pass.spindle_speed = Some(si(20.0));
    change(&mut shop);
    shop.mill(Lowering::NotForLoads).unwrap()
}

#[test]
fn pitfall_1_thinning_ends_at_half_the_diameter_and_over_a_centred_face() {
    for width in ["10 mm", "12 mm", "18 mm", "20 mm"] {
        let arguments = format!("diameter=20 mm; radial_depth={width}");
        assert_eq!(of("radial_thinning_factor", &arguments), 1.0);
    }
    assert!(
        of(
            "radial_thinning_factor",
            "diameter=20 mm; radial_depth=2 mm"
        ) > 1.6
    );
    // A narrow part under the middle of a face mill meets every tooth at its full feed.
    let h = of(
        "face_max_chip_thickness",
        "feed_per_tooth=0.2 mm; diameter=100 mm; edge_low=-5 mm; edge_high=5 mm",
    );
    near(h, 0.2e-3, 1e-15);
    for share in [0.5, 0.7, 1.0] {
        let wide = cut(|shop| shop.pass.radial_depth = shop.cutter.diameter * share);
        near(wide.consequences.max_chip_thickness.value, 5e-5, 1e-12);
    }
}

#[test]
fn pitfall_2_the_mean_chip_takes_its_arc_in_radians() {
    let mean = |width: &str| {
        of(
            "mean_chip_thickness",
            &format!("feed_per_tooth=0.1 mm; diameter=20 mm; radial_depth={width}"),
        )
    };
    near(mean("20 mm"), 0.2e-3 / PI, 1e-14);
    near(mean("10 mm"), 0.2e-3 / PI, 1e-14);
    // The constant 114.59 of textbooks belongs to an arc of 60 degrees here.
    near(mean("5 mm"), 114.59 * 0.1e-3 * 5.0 / (20.0 * 60.0), 1e-4);
}

#[test]
fn pitfall_3_the_specific_force_is_that_of_the_mean_chip_and_not_of_the_feed() {
    let [thin, thick] = [0.05, 0.5].map(|share| {
        cut(|shop| shop.pass.radial_depth = shop.cutter.diameter * share).consequences
    });
    let (h, k) = (
        thick.mean_chip_thickness.value / thin.mean_chip_thickness.value,
        thin.specific_cutting_force.value / thick.specific_cutting_force.value,
    );
    // At one feed per tooth: a thinner chip is dearer, by its exponent.
    let exponent = k.ln() / h.ln();
    assert!((0.1..0.45).contains(&exponent), "{exponent}");
}

#[test]
fn pitfall_4_the_rake_counts_from_that_of_the_table() {
    let k = |rake: &str, reference: &str| {
        of(
            "specific_cutting_force",
            &format!(
                "kc11=1800 N/mm2; chip_exponent=0.25; chip_thickness=1 mm; rake_angle={rake}; reference_rake={reference}"
            ),
        )
    };
    near(k("6 deg", "6 deg"), 1800e6, 1e-12);
    near(k("6 deg", "0 deg"), 0.94 * 1800e6, 1e-12);
    near(k("0 deg", "6 deg"), 1.06 * 1800e6, 1e-12);
}

#[test]
fn pitfall_5_conventional_enters_thin_and_climb_leaves_thin() {
    let up = cut(|_| {}).consequences;
    let down = cut(|shop| {
        shop.pass.direction = Direction::Climb;
        shop.machine.backlash = si(0.0);
    })
    .consequences;
    assert_eq!(up.entry_angle.value, 0.0);
    near(down.exit_angle.value, PI, 1e-15);
    near(down.entry_angle.value, PI - up.exit_angle.value, 1e-14);
    // Test cut in aluminium, half immersion, own integration of the published coefficients
    // (S. Engin, Y. Altintas, 2001, from memory).
    let force = |name: &str, entry: f64| {
        of(
            name,
            &format!(
                "ktc=796.1 N/mm2; krc=168.8 N/mm2; kte=27.7 N/mm; kre=30.8 N/mm; teeth=4; axial_depth=5 mm; feed_per_tooth=0.1 mm; entry_angle={entry} deg; exit_angle={} deg",
                entry + 90.0
            ),
        )
    };
    for (name, entry, newton) in [
        ("mean_feed_force", 0.0, -355.1),
        ("mean_normal_force", 0.0, 162.3),
        ("mean_feed_force", 90.0, 74.6),
        ("mean_normal_force", 90.0, 412.1),
    ] {
        near(force(name, entry), newton, 7e-4);
    }
}

#[test]
fn pitfall_6_breakage_and_hold_are_looked_at_with_the_peak_and_not_the_mean() {
    let found = cut(|_| {}).consequences;
    let (mean, peak) = (
        found.mean_tangential_force.value,
        found.peak_tangential_force.value,
    );
    // Two teeth in a narrow cut: most of the turn nothing cuts.
    assert!(peak > 4.0 * mean, "{peak} {mean}");
    assert!(found.peak_force >= found.peak_tangential_force);
    let shop = Shop::usual();
    let needed = of(
        "required_clamping_force",
        &format!(
            "force_along={} N; force_lift={} N; friction=0.15; safety_factor={}",
            found.peak_force.value, found.axial_force.value, shop.practice.holding_safety.value
        ),
    );
    near(found.clamping_needed.value, needed, 1e-12);
}

#[test]
fn pitfall_7_a_vise_holds_by_two_faces_against_the_vector_of_both_forces() {
    let clamping = of(
        "required_clamping_force",
        "force_along=300 N; force_lift=400 N; friction=0.2; safety_factor=2",
    );
    // 2 x 500/(2 x 0.2); one face would want 5000 N, each force alone at most 2000 N.
    near(clamping, 2500.0, 1e-12);
    let held = of(
        "two_face_friction_capacity",
        &format!("clamping_force={clamping} N; friction=0.2"),
    );
    near(held, 2.0 * 500.0, 1e-12);
    let loose = cut(|shop| shop.hold.clamping = Clamping::Force(si(100.0)));
    assert!(loose.limit("clamping").unwrap().exceeded());
}

#[test]
fn pitfall_8_a_ball_takes_its_speed_at_the_diameter_that_cuts() {
    let ball = cut(|shop| {
        shop.cutter.form = CutterForm::BallNose;
        shop.pass.operation = Operation::Slotting;
        shop.pass.radial_depth = shop.cutter.diameter;
        shop.pass.axial_depth = shop.cutter.diameter * 0.02;
    });
    let (d, found) = (0.5 * INCH, ball.consequences.effective_diameter.value);
    near(found, d * 2.0 * (0.02f64 * 0.98).sqrt(), 1e-12);
    near(ball.settings.cutting_speed.value, PI * found * 20.0, 1e-12);
    // Tilted by 15 deg the lowest point moves as well, and the top faster still.
    let top = of(
        "ball_effective_diameter",
        "diameter=0.5 in; axial_depth=0.01 in; tilt_angle=15 deg",
    );
    let low = of(
        "contact_diameter",
        "diameter=0.5 in; corner_radius=0.25 in; tilt_angle=15 deg",
    );
    assert!(top > found && top < d && low > 0.0 && low < top);
}

#[test]
fn pitfall_9_chatter_takes_the_branch_where_the_compliance_turns_back() {
    // Zeroth order of a slot with one mode along the feed, written out: parameters of the benchmark
    // of T. Insperger and G. Stepan as seen in public research files.
    let (k, zeta, k_t, k_r, teeth) = (
        0.03993 * (2.0 * PI * 922.0f64).powi(2),
        0.011,
        600e6,
        1.0 / 3.0,
        2.0,
    );
    let mut least = f64::INFINITY;
    for step in 1..400_000 {
        let r = f64::from(step) * 5e-6 + 1e-6;
        // -1/(a_xx Phi) with a_xx = -pi K_r.
        let (real, imaginary) = (
            k * (1.0 - r * r) / (PI * k_r),
            k * 2.0 * zeta * r / (PI * k_r),
        );
        let limit = -2.0 * PI * real * (1.0 + (imaginary / real).powi(2)) / (teeth * k_t);
        if limit > 0.0 {
            // Only above the natural frequency.
            assert!(r > 1.0);
            least = least.min(limit);
        }
    }
    let found = of(
        "stability_limit_slot_single_mode",
        &format!("stiffness={k} N/m; damping_ratio=0.011; krc=200 MPa; teeth=2"),
    );
    near(found, least, 1e-6);
    // Y. Ding et al., 2010, from memory: stable at 0.2 mm, not at 0.5 mm, at 5000 rpm; the least limit
    // over all speeds cannot lie above that.
    assert!(found > 0.0 && found < 0.5e-3);
    // Hertz are turns a second, not radians.
    let best = of(
        "best_spindle_speed",
        "natural_frequency=922 Hz; teeth=2; waves=1",
    );
    near(best * 60.0, 27_660.0, 1e-12);
}

#[test]
fn pitfall_10_the_centre_runs_slower_inside_and_faster_outside_and_only_once() {
    for (name, path, slower) in [
        ("inside_arc_feed", "inside_path_diameter", true),
        ("outside_arc_feed", "outside_path_diameter", false),
    ] {
        let size = "feature_diameter=40 mm; cutter_diameter=16 mm";
        let centre = of(name, &format!("contour_feed=600 mm/min; {size}"));
        let wanted = 600e-3 / 60.0;
        assert_eq!(centre < wanted, slower);
        // One angular rate: what the centre does on its path the contour does on its own.
        near(centre / of(path, size), wanted / 40e-3, 1e-12);
        let said = find(name).unwrap().validity;
        assert!(said.contains("do not correct twice"), "{said}");
    }
}

#[test]
fn pitfall_11_the_teeth_that_share_the_feed_are_the_effective_ones() {
    // A staggered side cutter of 16 teeth cuts each flank with 8: chip and power of a flank are those
    // of 8 teeth.
    let chip = |teeth: u32| {
        of(
            "feed_per_tooth",
            &format!("table_feed=160 mm/min; spindle_speed=100 rpm; teeth={teeth}"),
        )
    };
    near(chip(8), 0.2e-3, 1e-12);
    for name in ["feed_per_tooth", "table_feed", "feed_per_rev"] {
        let formula = find(name).unwrap();
        let teeth = formula.parameters.iter().find(|p| p.name == "teeth");
        assert_eq!(teeth.unwrap().meaning, "effective teeth", "{name}");
    }
    // With run-out beyond the feed one tooth cuts, and leaves the marks of a whole revolution.
    let marks = |feed: &str| {
        of(
            "feed_mark_height",
            &format!("feed_per_tooth={feed}; diameter=12 mm"),
        )
    };
    near(marks("0.2 mm") / marks("0.05 mm"), 16.0, 1e-12);
}

#[test]
fn pitfall_12_a_fluted_cutter_bends_like_a_bar_of_eight_tenths() {
    let bend = |d: f64| {
        of(
            "cantilever_deflection",
            &format!("force=200 N; overhang=38.1 mm; diameter={d} mm; modulus=206 GPa"),
        )
    };
    let fluted = of("fluted_equivalent_diameter", "diameter=12.7 mm");
    near(bend(fluted * 1e3) / bend(12.7), 2.4414, 1e-4);
    let found = cut(|shop| shop.cutter.flute_length = shop.cutter.stick_out).consequences;
    let solid = of(
        "cantilever_deflection",
        &format!(
            "force={} N; overhang=1.5 in; diameter=0.5 in; modulus=206 GPa",
            found.peak_force.value
        ),
    );
    near(found.deflection.value / solid, 0.8f64.powi(-4), 1e-9);
}

#[test]
fn pitfall_13_the_motor_gives_more_than_the_cutter_gets() {
    // P.C. Sharma, A Textbook of Production Engineering, Ex. 15.1, seen in a companion.
    let motor = of("motor_power", "cutting_power=20.60 hp; efficiency=0.60");
    near(motor, parse(Kind::Power, "34.34 hp").unwrap(), 5e-4);
    let found = cut(|_| {}).consequences;
    let efficiency = Machine::builtin("manual-knee-mill")
        .unwrap()
        .efficiency
        .value;
    near(
        found.motor_power.value * efficiency,
        found.cutting_power.value,
        1e-12,
    );
    assert!(found.motor_power > found.cutting_power);
}

#[test]
fn pitfall_14_four_times_the_speed_over_the_diameter_is_a_rule_and_not_the_speed() {
    let size = "cutting_speed=300 ft/min; diameter=0.5 in";
    let exact = of("spindle_speed", size);
    near(of("rule_of_thumb_speed", size) / exact, PI / 3.0, 1e-12);
    let found = cut(|_| {}).settings;
    near(found.cutting_speed.value, PI * 0.5 * INCH * 20.0, 1e-12);
}

#[test]
fn pitfall_15_half_a_thousandth_of_an_inch_is_nearly_thirteen_micrometres() {
    let step = parse(Kind::Length, "0.0005 in").unwrap();
    near(step, 12.7e-6, 1e-12);
    let machine = Machine::builtin("manual-knee-mill").unwrap();
    let readout = machine.readout.unwrap().resolution.value;
    near(readout, step, 1e-12);
    assert_eq!(format(Kind::Length, readout, UnitSystem::Metric), "12.7 um");
    near(parse(Kind::Length, "5 um").unwrap() / INCH, 0.000_197, 1e-3);
}
