//! Turning: passes of textbooks, a whole cut a second time, limits at their edges, traps.

use super::hand::{assert_near, exceeds, holds, limit, plain_work, run, strong, value};
use gullet::model::{Drive, Feed};
use gullet::operation::process::find;
use gullet::quantity::si;

const EXAMPLE: &str = "outer_diameter=60 mm; finished_diameter=56 mm; length=90 mm";

/// P.N. Rao, Manufacturing Technology vol. 2, 2nd ed., p.130 (seen in a digest): 30 m/min at 46 mm is
/// 207.59 rpm, of which the lathe has 176; 120 mm at 0.24 mm with 2 mm of approach take 2.888 min.
#[test]
fn a_pass_of_rao_on_a_stepped_lathe() {
    let cut = holds(
        "turning",
        "outer_diameter=46 mm; finished_diameter=42 mm; length=120 mm; support=centres; spindle_speed=207.59 rpm; feed=0.24 mm",
        |shop| {
            strong(shop);
            plain_work(shop, 1.6e9);
            shop.machine.drive =
                Drive::Stepped([120.0, 176.0, 280.0].map(|n| si(n / 60.0)).to_vec());
            shop.practice.clearance = si(2e-3);
        },
    );
    assert_near(value(&cut, "spindle_speed") * 60.0, 176.0, 1e-12);
    assert_near(value(&cut, "feed_speed") * 60e3, 42.24, 1e-9);
    assert_near(value(&cut, "time") / 60.0, 2.888, 5e-4);
}

/// P.N. Rao, the same, p.134 (seen in a digest): 145 m/min, 0.38 mm and 2 mm at 1600 N/mm2 need 2.94 kW.
#[test]
fn the_power_of_rao() {
    // The speed of the book is taken at the mean diameter, 50 mm here.
    let n = 145.0 / 60.0 / (core::f64::consts::PI * 0.050);
    let inputs = format!(
        "outer_diameter=52 mm; finished_diameter=48 mm; length=100 mm; spindle_speed={n} r/s; feed=0.38 mm"
    );
    let cut = holds("turning", &inputs, |shop| {
        strong(shop);
        plain_work(shop, 1.6e9);
    });
    assert_near(value(&cut, "removal_rate") * 60e6, 110.2, 1e-9);
    assert_near(value(&cut, "cutting_power") / 1e3, 2.94, 0.002);
}

/// M.P. Groover, Fundamentals of Modern Manufacturing, 4th ed., ch. 22 (from memory): 120 mm by 450 mm
/// at 2 m/s, 0.25 mm and 2.2 mm takes 5.65 min and removes 1100 mm3/s by the speed at the outside.
#[test]
fn a_pass_of_groover() {
    let n = 2.0 / (core::f64::consts::PI * 0.120);
    let inputs = format!(
        "outer_diameter=120 mm; finished_diameter=115.6 mm; length=450 mm; support=tailstock; spindle_speed={n} r/s; feed=0.25 mm"
    );
    let cut = holds("turning", &inputs, |shop| {
        strong(shop);
        plain_work(shop, 2e9);
        shop.practice.clearance = si(0.0);
    });
    assert_near(value(&cut, "depth_of_cut"), 2.2e-3, 1e-9);
    assert_near(value(&cut, "time") / 60.0, 5.65, 0.001);
    // The mean diameter tells what is really removed: D - a_p over D of the book's value.
    let outside = value(&cut, "removal_rate") * 120.0 / (120.0 - 2.2);
    assert_near(outside, 1100e-9, 1e-9);
    let ring = core::f64::consts::PI / 4.0 * (0.120f64.powi(2) - 0.1156f64.powi(2));
    assert_near(
        value(&cut, "removal_rate"),
        ring * value(&cut, "feed_speed"),
        1e-12,
    );
}

/// M.P. Groover, the same, ch. 21 (from memory): 200 m/min, 0.25 mm and 7.5 mm at 2.8 J/mm3 with an
/// efficiency of 90 % need 19.44 kW of the motor.
#[test]
fn the_motor_of_groover() {
    let n = 200.0 / 60.0 / (core::f64::consts::PI * 0.100);
    let inputs = format!(
        "outer_diameter=107.5 mm; finished_diameter=92.5 mm; length=100 mm; spindle_speed={n} r/s; feed=0.25 mm; support=tailstock"
    );
    let cut = holds("turning", &inputs, |shop| {
        strong(shop);
        plain_work(shop, 2.8e9);
        shop.machine.efficiency = si(0.9);
        shop.practice.roughing_deflection = si(1e-2);
    });
    assert_near(value(&cut, "cutting_power") / 1e3, 17.5, 1e-9);
    assert_near(value(&cut, "motor_power") / 1e3, 19.44, 3e-4);
}

/// The example once more in plain arithmetic, from the settings on.
#[test]
fn the_example_by_hand() {
    let process = find("turning").unwrap();
    let shop = super::bench::Shop::of(process);
    let cut = holds("turning", process.example.inputs, |_| ());
    let (n, f) = (value(&cut, "spindle_speed"), value(&cut, "feed"));
    let pi = core::f64::consts::PI;
    // A step of the gearbox and one of the feed box.
    assert!(
        [
            40.0, 63.0, 100.0, 160.0, 250.0, 400.0, 630.0, 1000.0, 1600.0
        ]
        .iter()
        .any(|step| (step / 60.0 - n).abs() < 1e-9)
    );
    assert!(
        [
            40.0, 50.0, 63.0, 80.0, 100.0, 125.0, 160.0, 200.0, 250.0, 315.0, 400.0, 500.0
        ]
        .iter()
        .any(|step| (step * 1e-6 - f).abs() < 1e-12)
    );
    let (d1, d2, r) = (0.060, 0.056, 0.8e-3);
    let a = (d1 - d2) / 2.0;
    let edge = r * (pi / 2.0 + (f / (2.0 * r)).asin()) + (a - r);
    let h = a * f / edge;
    assert_near(value(&cut, "chip_thickness"), h, 1e-12);
    let law = |kc11: f64, m: f64| kc11 * (h * 1e3).powf(-m);
    let pairs: Vec<(f64, f64)> = shop
        .material
        .pairs
        .iter()
        .map(|pair| (pair.kc11.value, pair.exponent.value))
        .collect();
    let k = law(pairs[0].0, pairs[0].1);
    let force = k * a * f;
    assert_near(value(&cut, "cutting_force"), force, 1e-11);
    let mean = d1 - a;
    assert_near(value(&cut, "torque"), force * mean / 2.0, 1e-11);
    assert_near(value(&cut, "cutting_power"), force * pi * mean * n, 1e-11);
    assert_near(
        value(&cut, "motor_power"),
        force * pi * mean * n / shop.machine.efficiency.value,
        1e-11,
    );
    // Worst of the pairs that the ledger looks at, worn edge, from its own torque.
    let worst = value(&cut, "limit_torque") * 2.0 / mean;
    let wear = shop.practice.wear_factor.value;
    let highest = pairs
        .iter()
        .map(|(kc11, m)| law(*kc11, *m))
        .fold(0.0, f64::max);
    assert!(worst >= wear * highest * a * f * (1.0 - 1e-11));
    let chord = (a / (r + f / 2.0)).atan();
    let (passive, feed) = (0.6 * worst * chord.cos(), 0.6 * worst * chord.sin());
    assert_near(value(&cut, "passive_force"), passive, 1e-10);
    let grip = shop.practice.holding_safety.value * worst.hypot(feed) / 0.15;
    let kept = 1.0 - 2.0 / 3.0 * (n / 50.0).powi(2);
    assert_near(value(&cut, "static_grip_needed"), grip / kept, 1e-10);
    let second_moment = pi * d2.powi(4) / 64.0;
    let modulus = shop.material.youngs_modulus.unwrap().value;
    let bend = passive * 0.090f64.powi(3) / (3.0 * modulus * second_moment);
    assert_near(value(&cut, "work_deflection"), bend, 1e-10);
    assert_near(value(&cut, "diameter_error"), 2.0 * bend, 1e-10);
    assert_near(
        value(&cut, "ideal_roughness"),
        f * f / (18.0 * 3f64.sqrt() * r),
        1e-12,
    );
    let travel = 0.090 + shop.practice.clearance.value;
    assert_near(value(&cut, "time"), travel / (f * n), 1e-9);
}

/// A feed box gives its own steps, at whatever spindle speed; asked for 0.19 mm it has 0.16 mm.
#[test]
fn a_geared_feed_is_a_step_of_the_box() {
    for speed in ["100 rpm", "250 rpm", "400 rpm"] {
        let cut = holds(
            "turning",
            &format!("{EXAMPLE}; feed=0.19 mm; spindle_speed={speed}"),
            |_| (),
        );
        assert_near(value(&cut, "feed"), 0.16e-3, 1e-12);
        let n = value(&cut, "spindle_speed");
        assert_near(value(&cut, "feed_speed"), 0.16e-3 * n, 1e-12);
    }
    // Below the smallest step there is none.
    assert_eq!(
        exceeds("turning", &format!("{EXAMPLE}; feed=0.03 mm"), |_| ()),
        "table_feed_lowest"
    );
}

/// Pitfall 11: a lower speed frees no torque. The feed falls, and where it may not, the limit is told;
/// the speed stays.
#[test]
fn a_torque_limit_is_not_answered_by_a_lower_speed() {
    let inputs = format!("{EXAMPLE}; spindle_speed=250 rpm");
    let free = holds("turning", &inputs, |_| ());
    let needed = value(&free, "limit_torque");
    let tight = |share: f64| {
        move |shop: &mut super::bench::Shop| {
            shop.machine.maximum_torque = Some(si(share * needed));
        }
    };
    let cut = holds("turning", &inputs, tight(0.5));
    assert_eq!(value(&cut, "spindle_speed"), value(&free, "spindle_speed"));
    assert!(value(&cut, "feed") < 0.6 * value(&free, "feed"));
    assert!(limit(&cut, "torque").share <= 1.0 + 1e-9);
    assert_eq!(exceeds("turning", &inputs, tight(0.01)), "torque");
}

/// A feed box has a smallest step: where the power does not suffice for it, the speed falls.
#[test]
fn power_below_the_smallest_step_lowers_the_speed() {
    let inputs = format!("{EXAMPLE}; spindle_speed=250 rpm; feed=0.05 mm");
    let free = holds("turning", &inputs, |_| ());
    let share = 0.5 * value(&free, "limit_power") / value(&free, "available_power");
    let cut = holds("turning", &inputs, |shop| shop.machine.motor_power *= share);
    assert!(value(&cut, "feed") >= 0.04e-3 * (1.0 - 1e-9));
    assert!(value(&cut, "spindle_speed") < value(&free, "spindle_speed"));
    assert!(limit(&cut, "power").share <= 1.0);
}

/// The roughness asked for holds the feed: it goes with the square.
#[test]
fn the_roughness_holds_the_feed() {
    let finish = |wanted: &str| {
        let inputs = format!("{EXAMPLE}; pass=finishing; feed=0.3 mm; mean_roughness={wanted}");
        holds("turning", &inputs, |shop| {
            shop.machine.feed = Feed::Continuous {
                lowest: si(0.0),
                highest: si(1.0),
            };
        })
    };
    let (coarse, fine) = (finish("1.6 um"), finish("0.8 um"));
    assert_near(value(&coarse, "ideal_roughness"), 1.6e-6, 1e-9);
    assert_near(
        value(&coarse, "feed") / value(&fine, "feed"),
        2f64.sqrt(),
        1e-9,
    );
    assert_eq!(
        coarse.held_by.map(gullet::operation::LimitName::name),
        Some("mean_roughness")
    );
}

#[test]
fn limits_at_their_edges() {
    // Two thirds of an edge of 3 mm at 90 deg are 2 mm, the depth of the example.
    holds(
        "turning",
        &format!("{EXAMPLE}; edge_length=3.001 mm"),
        |_| (),
    );
    assert_eq!(
        exceeds(
            "turning",
            &format!("{EXAMPLE}; edge_length=2.99 mm"),
            |_| ()
        ),
        "depth_of_cut"
    );
    // Three diameters from a chuck, ten with a centre.
    let long = |support: &str, length: f64| {
        format!(
            "outer_diameter=60 mm; finished_diameter=58 mm; length=90 mm; work_length={length} mm; support={support}"
        )
    };
    let rigid = |shop: &mut super::bench::Shop| shop.practice.roughing_deflection = si(1e-3);
    holds("turning", &long("chuck", 179.9), rigid);
    assert_eq!(
        exceeds("turning", &long("chuck", 180.1), rigid),
        "work_overhang"
    );
    holds("turning", &long("tailstock", 599.0), rigid);
    assert_eq!(
        exceeds("turning", &long("centres", 601.0), rigid),
        "work_overhang"
    );
    // A chuck too weak for the smallest feed of the box; between centres it holds nothing.
    let weak = format!("{EXAMPLE}; static_grip=500 N");
    assert_eq!(exceeds("turning", &weak, |_| ()), "chuck_grip");
    holds("turning", &format!("{weak}; support=centres"), |_| ());
}

/// A grip that the speed takes: the same cut needs a stronger chuck at a higher speed.
#[test]
fn speed_takes_grip() {
    let grip = |speed: &str| {
        let inputs =
            format!("{EXAMPLE}; feed=0.1 mm; maximum_speed=1000 rpm; spindle_speed={speed}");
        value(&holds("turning", &inputs, |_| ()), "static_grip_needed")
    };
    let (slow, fast) = (grip("100 rpm"), grip("400 rpm"));
    let kept = |share: f64| 1.0 - 2.0 / 3.0 * share * share;
    assert_near(fast / slow, kept(0.1) / kept(0.4), 1e-9);
}

/// The support decides how the work bends: 1/3, 7/768 and 1/48 of F L^3/(E I).
#[test]
fn supports_bend_as_beams() {
    let bend = |support: &str| {
        let inputs = format!("{EXAMPLE}; support={support}; feed=0.1 mm; spindle_speed=250 rpm");
        value(&holds("turning", &inputs, |_| ()), "work_deflection")
    };
    assert_near(bend("tailstock") / bend("chuck"), 3.0 * 7.0 / 768.0, 1e-9);
    assert_near(bend("centres") / bend("chuck"), 3.0 / 48.0, 1e-9);
}

/// Below the depth of the nose the cutting-edge angle means nothing to the force.
#[test]
fn a_nose_cuts_alone() {
    let force = |angle: &str| {
        let inputs = format!(
            "outer_diameter=60 mm; finished_diameter=59.6 mm; length=90 mm; nose_radius=1.2 mm; cutting_edge_angle={angle}; feed=0.1 mm; spindle_speed=250 rpm"
        );
        value(&holds("turning", &inputs, |_| ()), "cutting_force")
    };
    assert_near(force("45 deg"), force("90 deg"), 1e-12);
}

/// A feed below the machine's lowest is raised by asking for a larger one, which the remedy says.
#[test]
fn a_feed_below_the_box_asks_for_a_larger_one() {
    let error = run("turning", &format!("{EXAMPLE}; feed=0.03 mm"), |_| ())
        .map(|_| ())
        .unwrap_err();
    let problem = error.first();
    assert_eq!(problem.parameter, "table_feed_lowest");
    assert!(problem.remedy.contains("larger feed"), "{error}");
}

/// A speed asked for that wears the edge too fast is lowered, and that is told.
#[test]
fn a_speed_asked_for_beyond_the_tables_is_told() {
    let told = |speed: &str| {
        let inputs = format!("{EXAMPLE}; spindle_speed={speed}");
        holds("turning", &inputs, |_| ())
            .warnings
            .iter()
            .any(|warning| warning.text.contains("speed asked for"))
    };
    // 60 mm at 1600 rpm are 302 m/min, and the tables end at 210 m/min.
    assert!(told("1600 rpm"));
    assert!(!told("250 rpm"));
}
