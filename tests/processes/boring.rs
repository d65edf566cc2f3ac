//! Boring: bars that bend, bores that come out smaller, limits of the bar.

use super::hand::{assert_near, exceeds, holds, limit, strong, value};
use gullet::quantity::si;

const PI: f64 = core::f64::consts::PI;
const EXAMPLE: &str = "bore_before=38 mm; bore_after=40 mm; length=50 mm; bar_diameter=25 mm; overhang=75 mm; spindle_speed=400 rpm; feed=0.1 mm";

/// E. Isakov, Boring: calculating deflection (trade magazine article, July 2019, seen): a steel bar of
/// 25.4 mm with an overhang of 101.6 mm bends by 0.0757 mm under 911.1 N.
#[test]
fn a_bar_of_isakov() {
    let cut = holds(
        "boring",
        "bore_before=40 mm; bore_after=42 mm; length=60 mm; bar_diameter=25.4 mm; overhang=101.6 mm; spindle_speed=250 rpm; feed=0.1 mm",
        |shop| {
            strong(shop);
            shop.practice.roughing_deflection = si(1e-3);
        },
    );
    let per_newton = 0.0757e-3 / 911.1;
    assert_near(
        value(&cut, "radial_deflection") / value(&cut, "passive_force"),
        per_newton,
        1e-3,
    );
    // Four diameters of a steel bar: the limit is met to the last digit, not exceeded.
    assert_near(limit(&cut, "overhang").share, 1.0, 1e-12);
}

/// A pass in plain arithmetic: speed at the finished bore, force with the factor of inside turning.
#[test]
fn a_pass_by_hand() {
    let cut = holds("boring", EXAMPLE, |_| ());
    let shop = super::bench::Shop::of(gullet::operation::process::find("boring").unwrap());
    let (n, f) = (value(&cut, "spindle_speed"), value(&cut, "feed"));
    assert_near(value(&cut, "cutting_speed"), PI * 0.040 * n, 1e-12);
    let (a, r) = (1e-3, 0.4e-3);
    let edge = r * (PI / 2.0 + (f / (2.0 * r)).asin()) + (a - r);
    let h = a * f / edge;
    let pair = &shop.material.pairs[0];
    let k = 1.2 * pair.kc11.value * (h * 1e3).powf(-pair.exponent.value);
    assert_near(value(&cut, "cutting_force"), k * a * f, 1e-11);
    assert_near(value(&cut, "torque"), k * a * f * 0.039 / 2.0, 1e-11);
    let second_moment = PI * 0.025f64.powi(4) / 64.0;
    let bend = |force: f64| force * 0.075f64.powi(3) / (3.0 * 206e9 * second_moment);
    let passive = value(&cut, "passive_force");
    assert_near(value(&cut, "radial_deflection"), bend(passive), 1e-11);
    assert_near(value(&cut, "diameter_error"), 2.0 * bend(passive), 1e-11);
    let worst = value(&cut, "limit_torque") * 2.0 / 0.039;
    let drop = bend(worst);
    assert_near(value(&cut, "tangential_deflection"), drop, 1e-10);
    let radius = (0.020f64.powi(2) + drop * drop).sqrt() - 0.020;
    assert_near(value(&cut, "radius_error"), radius, 1e-3);
    assert!(value(&cut, "radius_error") < 0.01 * value(&cut, "diameter_error"));
    let travel = 0.050 + shop.practice.clearance.value;
    assert_near(value(&cut, "time"), travel / (f * n), 1e-9);
}

/// Four to five diameters double the deflection, a carbide bar more than halves it.
#[test]
fn overhang_and_bar_decide() {
    let bend = |overhang: f64, bar: &str| {
        let inputs = format!(
            "bore_before=38 mm; bore_after=40 mm; length=50 mm; bar_diameter=20 mm; overhang={overhang} mm; bar={bar}; spindle_speed=250 rpm; feed=0.1 mm"
        );
        let cut = holds("boring", &inputs, |shop| {
            shop.practice.roughing_deflection = si(1e-2);
        });
        value(&cut, "radial_deflection")
    };
    assert_near(bend(100.0, "carbide") / bend(80.0, "carbide"), 1.953, 1e-3);
    assert_near(
        bend(80.0, "steel") / bend(80.0, "carbide"),
        550.0 / 206.0,
        1e-9,
    );
}

#[test]
fn limits_of_the_bar() {
    let bar = |material: &str, overhang: f64| {
        format!(
            "bore_before=38 mm; bore_after=40 mm; length=50 mm; bar_diameter=20 mm; overhang={overhang} mm; bar={material}; spindle_speed=250 rpm; feed=0.1 mm"
        )
    };
    let soft = |shop: &mut super::bench::Shop| shop.practice.roughing_deflection = si(1e-2);
    holds("boring", &bar("steel", 79.9), soft);
    assert_eq!(exceeds("boring", &bar("steel", 80.1), soft), "overhang");
    holds("boring", &bar("carbide", 119.9), soft);
    assert_eq!(exceeds("boring", &bar("carbide", 120.1), soft), "overhang");
    // The bar must leave room in the bore.
    let error = super::hand::run(
        "boring",
        "bore_before=38 mm; bore_after=40 mm; length=50 mm; bar_diameter=38 mm; overhang=75 mm",
        |_| (),
    )
    .map(|_| ())
    .unwrap_err();
    assert_eq!(error.first().parameter, "bar_diameter");
}

/// A deflection that the pass may not have holds the feed.
#[test]
fn deflection_holds_the_feed() {
    let free = holds("boring", EXAMPLE, |_| ());
    let bound = 0.6 * value(&free, "radial_deflection");
    let held = holds("boring", EXAMPLE, |shop| {
        shop.practice.roughing_deflection = si(bound);
    });
    assert!(value(&held, "feed") < value(&free, "feed"));
    assert!(value(&held, "radial_deflection") <= bound * (1.0 + 1e-9));
}

/// A bar shorter than the bore, and one that fills it, are told.
#[test]
fn doubts_are_told() {
    let cut = holds(
        "boring",
        "bore_before=38 mm; bore_after=40 mm; length=90 mm; bar_diameter=32 mm; overhang=75 mm; feed=0.1 mm; spindle_speed=250 rpm",
        |_| (),
    );
    for word in ["fills the bore", "shorter than"] {
        assert!(
            cut.warnings
                .iter()
                .any(|warning| warning.text.contains(word)),
            "{word}"
        );
    }
}
