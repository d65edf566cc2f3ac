//! What goes wrong in calculations for holes and threads, one test each, by the number it has in the
//! list of pitfalls of the other operations.
#![allow(clippy::unwrap_used, clippy::panic)]

use gullet::quantity::si;
use gullet::table::{DrillSet, Library, TapDrillWish, ThreadBasis};
use gullet::{Code, evaluate};

fn value(name: &str, arguments: &str) -> f64 {
    evaluate(name, arguments)
        .unwrap_or_else(|error| panic!("{name}: {error}"))
        .si
}

fn near(a: f64, b: f64, tolerance: f64) -> bool {
    (a - b).abs() <= tolerance * a.abs().max(b.abs())
}

/// Feed per revolution, per lip and per minute are three things.
#[test]
fn pitfall_6_feed_per_revolution_tooth_and_minute() {
    let per_minute = value("feed_rate", "feed_per_rev=0.2 mm; spindle_speed=800 rpm");
    let by_lips = value(
        "table_feed",
        "feed_per_tooth=0.1 mm; teeth=2; spindle_speed=800 rpm",
    );
    assert!(near(per_minute, by_lips, 1e-12));
    // A lip cuts half the feed per revolution: taken for its feed, the chip would double.
    let lip = value(
        "drilling_chip_thickness",
        "feed_per_rev=0.2 mm; point_angle=118 deg",
    );
    let shared = value(
        "hole_chip_thickness",
        "feed_per_rev=0.2 mm; teeth=2; point_angle=118 deg",
    );
    let one = value(
        "hole_chip_thickness",
        "feed_per_rev=0.2 mm; teeth=1; point_angle=118 deg",
    );
    assert!(near(lip, shared, 1e-15) && near(one, 2.0 * lip, 1e-15));
    // A feed per minute in its place is refused by its unit.
    let error = evaluate(
        "feed_rate",
        "feed_per_rev=160 mm/min; spindle_speed=800 rpm",
    )
    .unwrap_err();
    assert_eq!(error.code(), Code::UnitUnknown);
    assert_eq!(error.first().parameter, "feed_per_rev");
}

/// M10 with 8.5 mm is 77 % in a chart and 92 % of the overlap; a percentage without its basis is no
/// drill.
#[test]
fn pitfall_8_percent_of_thread_has_two_bases() {
    let wish = |basis| TapDrillWish {
        major_diameter: si(0.010),
        pitch: si(0.0015),
        thread_percent: si(0.77),
        smallest_percent: si(0.6),
        largest_percent: si(0.83),
        basis,
    };
    let library = Library::builtin();
    let chart = library
        .tap_drills(&wish(ThreadBasis::Chart), &[DrillSet::Metric])
        .unwrap();
    assert_eq!(chart[0].drill.name, "8.5 mm");
    assert!(near(chart[0].chart_percent.unwrap().value, 0.7698, 1e-4));
    assert!(near(chart[0].overlap_percent.unwrap().value, 0.9238, 1e-4));
    assert_eq!(chart[0].percent, chart[0].chart_percent.unwrap());
    // The same number on the other basis is a hole 0.2 mm wider.
    let overlap = library
        .tap_drills(&wish(ThreadBasis::Overlap), &[DrillSet::Metric])
        .unwrap();
    assert_eq!(overlap[0].drill.name, "8.7 mm");
    assert_eq!(overlap[0].percent, overlap[0].overlap_percent.unwrap());
    // A full thread on the overlap is the basic minor diameter; on the chart's basis it is less.
    let minor = value(
        "thread_minor_diameter",
        "major_diameter=10 mm; pitch=1.5 mm",
    );
    let full = "major_diameter=10 mm; pitch=1.5 mm; thread_percent=100 %";
    let on_overlap = value(
        "tap_drill_diameter",
        &format!("{full}; thread_basis=1.0825318"),
    );
    assert!(near(minor, on_overlap, 1e-7));
    assert!(value("tap_drill_diameter", full) < minor - 0.0003);
}

/// The point goes once into the travel: through the far face, or below the full diameter.
#[test]
fn pitfall_9_point_allowance_once() {
    let point = value("drill_point_length", "diameter=20 mm; point_angle=118 deg");
    let through = value(
        "through_hole_travel",
        &format!("thickness=15 mm; point_length={} m; approach=0 mm", point),
    );
    // The textbook's 15 + 6.01 mm: neither 15 nor 27.
    assert!(near(through, 0.02101, 3e-4), "{through}");
    // A depth to the tip has the point in it already.
    let full = value(
        "full_diameter_depth",
        &format!("tip_depth=40 mm; point_length={point} m"),
    );
    let blind = value(
        "blind_hole_travel",
        &format!("depth={full} m; point_length={point} m; approach=2 mm"),
    );
    assert!(near(blind, 0.042, 1e-12), "{blind}");
    // A hole shallower to its tip than the point is long has no full diameter.
    let error = evaluate(
        "full_diameter_depth",
        &format!("tip_depth=5 mm; point_length={point} m"),
    )
    .unwrap_err();
    assert_eq!(error.code(), Code::OutOfRange);
    assert_eq!(error.first().parameter, "point_length");
}

/// A tap of several starts goes ahead by its lead in a turn.
#[test]
fn pitfall_20_tapping_feed_is_the_lead() {
    let lead = value("thread_lead", "pitch=2 mm; starts=3");
    assert!(near(lead, 0.006, 1e-12));
    let feed = value(
        "feed_rate",
        &format!("feed_per_rev={lead} m; spindle_speed=300 rpm"),
    );
    assert!(near(feed, 0.030, 1e-12));
    let time = |lead: f64| {
        value(
            "tapping_time",
            &format!(
                "depth=24 mm; approach=6 mm; lead={lead} m; spindle_speed=300 rpm; reverse_speed=300 rpm"
            ),
        )
    };
    // Both ways over 30 mm at the feed; by the pitch it would be three times as long.
    assert!(near(time(lead), 2.0 * 0.030 / feed, 1e-12));
    assert!(near(time(0.002), 3.0 * time(lead), 1e-12));
    assert!(near(value("thread_lead", "pitch=1.5 mm"), 0.0015, 1e-12));
}
