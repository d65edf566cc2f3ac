//! Own measurements: fits against a published set, against laws that are known, and what is refused;
//! the fitted pair in a shop's own table.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::fit::{FitOptions, TaylorFit, fit_extended_taylor, fit_kienzle, fit_taylor};
use gullet::quantity::{Length, LineForce, Time, Velocity, si};
use gullet::table::{Library, Overlay, Provenance, ToolMaterial};
use gullet::wear::ToolLife;
use gullet::{Code, Error};
use proptest::prelude::*;

#[path = "fit/overlay.rs"]
mod overlay;

const FOOT: f64 = 0.3048;
const INCH: f64 = 0.0254;
const MINUTE: f64 = 60.0;

fn m_per_min(values: &[f64]) -> Vec<Velocity> {
    values.iter().map(|v| si(v / MINUTE)).collect()
}

fn mm(values: &[f64]) -> Vec<Length> {
    values.iter().map(|v| si(v * 1e-3)).collect()
}

fn minutes(values: &[f64]) -> Vec<Time> {
    values.iter().map(|t| si(t * MINUTE)).collect()
}

fn n_per_mm(values: &[f64]) -> Vec<LineForce> {
    values.iter().map(|f| si(f * 1e3)).collect()
}

/// Speeds, feeds and lives of the data set lathe1: S. Weisberg, Applied Linear Regression, 4th ed.,
/// package alr4 of R; 20 lives of carbide edges at feeds and speeds of a designed test.
fn lathe1() -> (Vec<Velocity>, Vec<Length>, Vec<Time>) {
    let mut set = (Vec::new(), Vec::new(), Vec::new());
    let mut reader = csv::Reader::from_reader(include_str!("data/lathe1.csv").as_bytes());
    for row in reader.deserialize() {
        let (feed, speed, life): (f64, f64, f64) = row.unwrap();
        set.0.push(si(speed * FOOT / MINUTE));
        set.1.push(si(feed * INCH));
        set.2.push(si(life * MINUTE));
    }
    assert_eq!(set.0.len(), 20);
    set
}

fn fit_lathe1(reference: f64) -> TaylorFit {
    let (speeds, feeds, lives) = lathe1();
    let options = FitOptions {
        reference_feed: Some(si(reference)),
        ..FitOptions::default()
    };
    fit_extended_taylor(&speeds, &feeds, None, &lives, &options).unwrap()
}

/// Within half a unit of the last printed digit.
#[track_caller]
fn prints(value: f64, printed: &str) {
    let decimals = printed
        .split_once('.')
        .map_or(0, |(_, digits)| digits.len());
    let half = 0.5 * 10f64.powi(-i32::try_from(decimals).unwrap());
    let expected: f64 = printed.parse().unwrap();
    assert!(
        (value - expected).abs() <= half * 1.000_001,
        "{value} for {printed}"
    );
}

/// Ordinary least squares of the set by another program's output, as kept with the set.
#[test]
fn lathe1_has_the_published_regression() {
    let fit = fit_lathe1(INCH);
    let regression = &fit.regression;
    let [constant, speed, feed] = regression.coefficients.as_slice() else {
        panic!()
    };
    prints(speed.value, "-4.5412");
    prints(feed.value, "-1.5958");
    prints(speed.standard_error, ".2516");
    prints(feed.standard_error, ".1690");
    prints(speed.low, "-5.072");
    prints(speed.high, "-4.010");
    prints(regression.deviation, ".3100");
    prints(regression.r_squared, ".9607");
    assert_eq!(
        (regression.degrees_of_freedom, regression.readings()),
        (17, 20)
    );
    // Printed for ft/min and in: ours is for m/min and mm.
    prints(
        constant.value + speed.value * FOOT.ln() + feed.value * 25.4f64.ln(),
        "25.288",
    );
    prints(fit.exponent.value, ".2202");
    prints(fit.exponent.low, ".197");
    prints(fit.exponent.high, ".249");
    prints(fit.feed_exponent.unwrap().value, ".3514");
    prints(fit.taylor_speed.value / FOOT * MINUTE, "262.1");
    prints(fit_lathe1(1e-3).taylor_speed.value * MINUTE, "248.9");
    // Eight readings at the centre scatter less than the whole set about its law; no reading is off.
    assert!(fit.warnings.is_empty(), "{:?}", fit.warnings);
}

#[test]
fn the_reference_changes_c_and_no_life() {
    let (speeds, feeds, lives) = lathe1();
    let own = fit_extended_taylor(&speeds, &feeds, None, &lives, &FitOptions::default()).unwrap();
    let (inch, metric) = (fit_lathe1(INCH), fit_lathe1(1e-3));
    let at = (si(4.0), Some(si(0.3e-3)));
    let life = own.law.life(at.0, at.1, None).unwrap().time.value;
    for other in [inch, metric] {
        let same = other.law.life(at.0, at.1, None).unwrap().time.value;
        assert!((same / life - 1.0).abs() < 1e-11, "{same} {life}");
        assert!((other.taylor_speed.value / own.taylor_speed.value - 1.0).abs() > 0.1);
        // C far from the readings is known less well.
        let wide = |fit: &TaylorFit| fit.taylor_speed.high / fit.taylor_speed.low;
        assert!(wide(&other) > wide(&own));
    }
    let reference = own.law.feed.reference.unwrap().value;
    assert!(reference > 0.004516 * INCH && reference < 0.021484 * INCH);
}

#[test]
fn the_mean_life_is_longer_than_the_median() {
    let fit = fit_lathe1(INCH);
    let life = fit
        .predict(si(900.0 * FOOT / MINUTE), Some(si(0.013 * INCH)), None)
        .unwrap();
    let s = fit.regression.deviation;
    assert!((life.mean / life.median).value > 1.0);
    assert!(((life.mean / life.median).value - (s * s / 2.0).exp()).abs() < 1e-12);
    assert!(life.low < life.median && life.median < life.high && life.warnings.is_empty());
    // Of a single edge at the centre: t s sqrt(1 + 1/20 and next to nothing for the distance).
    let wide = (life.high / life.median).value.ln() / (fit.regression.t * s);
    assert!(wide > (1.0f64 + 1.0 / 20.0).sqrt() && wide < 1.04, "{wide}");
    let beyond = fit.predict(si(10.0), Some(si(0.013 * INCH)), None).unwrap();
    assert_eq!(beyond.warnings[0].code.name(), "outside_validity");
}

/// What is refused of a fit: code and parameter of every problem.
#[track_caller]
fn refused<T: core::fmt::Debug>(result: Result<T, Error>) -> Vec<(Code, String)> {
    let problems = result.unwrap_err().into_problems();
    for problem in &problems {
        assert!(
            !problem.admissible.is_empty() && !problem.remedy.is_empty(),
            "{problem}"
        );
    }
    problems
        .into_iter()
        .map(|problem| (problem.code, problem.parameter))
        .collect()
}

fn plain(speeds: &[f64], lives: &[f64]) -> gullet::Result<TaylorFit> {
    fit_taylor(&m_per_min(speeds), &minutes(lives), &FitOptions::default())
}

#[test]
fn what_the_readings_cannot_carry_is_refused() {
    let of = |name: &str| (Code::OutOfRange, name.to_owned());
    let two = [100.0, 100.0, 100.0, 150.0, 150.0, 150.0];
    let lives = [60.0, 62.0, 58.0, 12.0, 13.0, 12.5];
    assert_eq!(refused(plain(&two, &lives)), [of("cutting_speed")]);
    let near = [100.0, 100.3, 100.5, 150.0, 150.2, 150.5];
    assert_eq!(
        refused(plain(&near, &lives)),
        [of("cutting_speed")],
        "scatter of a speed is no third speed"
    );
    assert_eq!(
        refused(plain(&[100.0, 150.0, 200.0], &[60.0, 12.0, 4.0])),
        [of("readings")]
    );
    assert_eq!(refused(plain(&[], &[])), [of("readings")]);
    let three = [100.0, 100.0, 150.0, 150.0, 200.0, 200.0];
    assert_eq!(
        refused(plain(&three, &lives[..5])),
        [(Code::Inconsistent, "tool_life".to_owned())]
    );
    let bad = [60.0, -1.0, f64::NAN, 12.0, 0.0, 4.0];
    assert_eq!(
        refused(plain(&three, &bad)),
        [
            of("tool_life[1]"),
            (Code::NotFinite, "tool_life[2]".to_owned()),
            of("tool_life[4]"),
        ]
    );
    // Life that rises with the speed, hardly falls, and scatters.
    assert_eq!(
        refused(plain(&three, &[4.0, 4.2, 12.0, 12.5, 60.0, 61.0])),
        [of("taylor_exponent")]
    );
    assert_eq!(
        refused(plain(&three, &[60.0, 59.0, 45.0, 46.0, 40.0, 39.0])),
        [of("taylor_exponent")]
    );
    let scattered = refused(plain(&three, &[60.0, 2.0, 5.0, 80.0, 1.0, 20.0]));
    assert!(scattered.contains(&of("correlation")), "{scattered:?}");
}

#[test]
fn options_are_checked_with_the_readings() {
    let speeds = m_per_min(&[100.0, 100.0, 150.0, 150.0, 200.0, 200.0]);
    let lives = minutes(&[60.0, 58.0, 12.0, 13.0, 4.0, 4.2]);
    let options = FitOptions {
        confidence: si(95.0),
        source: String::new(),
        reference_feed: Some(si(0.0)),
        ..FitOptions::default()
    };
    let parameters: Vec<String> = refused(fit_taylor(&speeds, &lives, &options))
        .into_iter()
        .map(|(_, parameter)| parameter)
        .collect();
    assert_eq!(parameters, ["confidence", "source", "reference_feed"]);
}

#[test]
fn exponents_that_cannot_be_told_apart_are_refused() {
    let speeds = [100.0, 100.0, 150.0, 150.0, 200.0, 200.0, 100.0];
    let lives = [60.0, 58.0, 12.0, 13.0, 4.0, 4.2, 61.0];
    // Feed in step with the speed, read to three digits.
    let feeds = [0.100, 0.100, 0.150, 0.150, 0.200, 0.201, 0.100];
    let result = fit_extended_taylor(
        &m_per_min(&speeds),
        &mm(&feeds),
        None,
        &minutes(&lives),
        &FitOptions::default(),
    );
    assert_eq!(
        refused(result),
        [(Code::Inconsistent, "feed_per_rev".to_owned())]
    );
    // Not quite in step: fitted, with a doubt.
    let feeds = [0.100, 0.110, 0.150, 0.140, 0.190, 0.210, 0.100];
    let fit = fit_extended_taylor(
        &m_per_min(&speeds),
        &mm(&feeds),
        None,
        &minutes(&lives),
        &FitOptions::default(),
    )
    .unwrap();
    assert!(
        fit.warnings
            .iter()
            .any(|doubt| doubt.text.contains("inflated")),
        "{:?}",
        fit.warnings
    );
}

#[test]
fn pairs_need_chips_that_differ() {
    let chips = [0.10, 0.10, 0.15, 0.20, 0.30, 0.40];
    let forces: Vec<f64> = chips.iter().map(|h: &f64| 1800.0 * h.powf(0.75)).collect();
    let fit = |chips: &[f64], forces: &[f64]| {
        fit_kienzle(&mm(chips), &n_per_mm(forces), &FitOptions::default())
    };
    assert_eq!(
        refused(fit(&chips, &forces)),
        [(Code::OutOfRange, "chip_thickness".to_owned())]
    );
    // A force that grows more than the chip.
    let chips = [0.05, 0.05, 0.10, 0.20, 0.30, 0.40];
    let steep: Vec<f64> = chips.iter().map(|h: &f64| 1800.0 * h.powf(1.2)).collect();
    assert_eq!(
        refused(fit(&chips, &steep)),
        [(Code::OutOfRange, "chip_exponent".to_owned())]
    );
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn readings_without_scatter_give_back_their_law(
        n in 0.08..0.7_f64, a in 0.1..0.7_f64, b in 0.05..0.4_f64, c in 60.0..900.0_f64, feed in 0.05..0.5_f64, depth in 0.5..4.0_f64,
    ) {
        let mut readings = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
        for (v, f, d) in [
            (1.0, 1.0, 1.0), (1.5, 1.0, 2.0), (2.0, 1.3, 1.0), (1.2, 2.0, 1.4), (0.8, 1.7, 0.9), (1.7, 0.7, 1.1), (1.1, 1.1, 1.6), (1.4, 0.9, 0.7),
        ] {
            let (speed, f, d): (f64, f64, f64) = (0.4 * c * v, feed * f, depth * d);
            readings.0.push(speed);
            readings.1.push(f);
            readings.2.push(d);
            readings.3.push((c / (speed * (f / feed).powf(a) * (d / depth).powf(b))).powf(1.0 / n));
        }
        let (speeds, feeds, depths, lives) = readings;
        let options = FitOptions {
            reference_feed: Some(si(feed * 1e-3)),
            reference_depth: Some(si(depth * 1e-3)),
            ..FitOptions::default()
        };
        let fit = fit_extended_taylor(&m_per_min(&speeds), &mm(&feeds), Some(&mm(&depths)), &minutes(&lives), &options).unwrap();
        let near = |value: f64, known: f64| (value / known - 1.0).abs() < 1e-9;
        prop_assert!(near(fit.exponent.value, n) && near(fit.taylor_speed.value * MINUTE, c), "{fit:?}");
        prop_assert!(near(fit.feed_exponent.unwrap().value, a) && near(fit.depth_exponent.unwrap().value, b), "{fit:?}");
        prop_assert!(fit.regression.deviation < 1e-9 && fit.regression.r_squared > 1.0 - 1e-12);
    }

    /// Whatever the readings: an answer of finite numbers, or a refusal.
    #[test]
    fn any_readings_are_fitted_or_refused(
        rows in prop::collection::vec((any::<f64>(), any::<f64>(), any::<f64>()), 0..12),
        tame in prop::collection::vec((1.0..400.0_f64, 0.02..0.8_f64, 0.1..300.0_f64), 0..12),
    ) {
        for rows in [rows, tame] {
            let speeds: Vec<Velocity> = rows.iter().map(|row| si(row.0)).collect();
            let feeds: Vec<Length> = rows.iter().map(|row| si(row.1)).collect();
            let lives: Vec<Time> = rows.iter().map(|row| si(row.2)).collect();
            let forces: Vec<LineForce> = rows.iter().map(|row| si(row.2)).collect();
            let options = FitOptions::default();
            for fit in [fit_taylor(&speeds, &lives, &options), fit_extended_taylor(&speeds, &feeds, None, &lives, &options)].into_iter().flatten() {
                for estimate in [Some(fit.exponent), Some(fit.taylor_speed), fit.feed_exponent].into_iter().flatten() {
                    prop_assert!(estimate.low <= estimate.value && estimate.value <= estimate.high && estimate.high.is_finite(), "{fit:?}");
                }
                prop_assert!(fit.regression.coefficients.iter().all(|known| known.value.is_finite() && known.p_value.is_finite()));
            }
            if let Ok(fit) = fit_kienzle(&feeds, &forces, &options) {
                prop_assert!(fit.kc11.low.is_finite() && fit.kc11.high.is_finite(), "{fit:?}");
            }
        }
    }
}

#[test]
fn a_pair_is_told_where_the_readings_lie() {
    let chips = [0.05, 0.05, 0.08, 0.12, 0.20, 0.30, 0.30];
    let factors = [1.02, 0.97, 1.01, 0.99, 1.03, 0.98, 1.0];
    let forces: Vec<f64> = chips
        .iter()
        .zip(factors)
        .map(|(h, factor): (&f64, f64)| factor * 1800.0 * h.powf(0.75))
        .collect();
    let fit = fit_kienzle(&mm(&chips), &n_per_mm(&forces), &FitOptions::default()).unwrap();
    assert!(
        (fit.chip_exponent.value - 0.25).abs() < 0.02
            && fit.chip_exponent.low < 0.25
            && fit.chip_exponent.high > 0.25
    );
    assert!(fit.kc11.low < 1800e6 && fit.kc11.high > 1800e6);
    // The main value lies beyond the readings: known less well than the force at the mean chip.
    let share = |estimate: &gullet::fit::Estimate| estimate.high / estimate.low;
    assert!(share(&fit.specific_force_at_mean) < share(&fit.kc11));
    assert!(fit.pair_correlation < -0.8, "{}", fit.pair_correlation);
    assert!(fit.warnings.is_empty(), "{:?}", fit.warnings);
    let names: Vec<&str> = fit.fields().map(|(column, _)| column.name).collect();
    assert!(names.contains(&"specific_force_at_mean") && names.contains(&"degrees_of_freedom"));
}
