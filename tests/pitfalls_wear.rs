//! Known traps of tool life and of pairs of cutting force, each a test.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::Code;
use gullet::error::WarningCode;
use gullet::evaluate;
use gullet::fit::{FitOptions, fit_kienzle, fit_taylor};
use gullet::quantity::si;
use gullet::table::{KienzlePair, Library, Overlay};
use gullet::wear::{Influence, ToolLife, WearCriterion};

const FOOT: f64 = 0.3048;

fn near(a: f64, b: f64) -> bool {
    (a / b - 1.0).abs() < 1e-12
}

/// Pitfall 1: C of Taylor without the units of v and T.
#[test]
fn pitfall_1_c_carries_its_units() {
    // One law: C 300 ft/min for minutes is 91.44 m/min for minutes, and another number for seconds.
    let law = ToolLife::new(si(300.0 * FOOT / 60.0), si(0.25)).unwrap();
    let metric = ToolLife::new(si(91.44 / 60.0), si(0.25)).unwrap();
    assert!(near(law.taylor_speed.value, metric.taylor_speed.value));
    // C of a law for lives in seconds: v (60 s)^n = C_s at the speed of one minute.
    let for_seconds = 91.44 / 60.0 * 60f64.powf(0.25);
    let second = ToolLife::through(si(for_seconds), si(1.0), si(0.25)).unwrap();
    assert!(near(second.taylor_speed.value, law.taylor_speed.value));
    // A speed for a life of 60 minutes.
    let sixty =
        ToolLife::through(si(91.44 / 60.0 * 60f64.powf(-0.25)), si(3600.0), si(0.25)).unwrap();
    assert!(near(sixty.taylor_speed.value, law.taylor_speed.value));
    // A bare number is refused with how to write it.
    let error = evaluate(
        "tool_life",
        "cutting_speed=50 m/min; taylor_speed=300; taylor_exponent=0.25",
    )
    .unwrap_err();
    assert_eq!(
        (error.code(), error.first().parameter.as_str()),
        (Code::UnitMissing, "taylor_speed")
    );
    // C of an extended law is one at a reference feed, which is not guessed.
    let mut extended = law;
    extended.feed = Influence {
        exponent: Some(si(0.35)),
        reference: None,
        tested: None,
    };
    let error = extended.life(si(1.0), Some(si(0.2e-3)), None).unwrap_err();
    assert_eq!(
        (error.code(), error.first().parameter.as_str()),
        (Code::Missing, "reference_feed")
    );
    let inch = |reference: f64| {
        let mut law = extended.clone();
        law.feed.reference = Some(si(reference));
        law.life(si(1.0), Some(si(0.2e-3)), None)
            .unwrap()
            .time
            .value
    };
    assert!(
        inch(0.0254) > 50.0 * inch(1e-3),
        "in inches and in mm the same C is not the same law"
    );
}

/// Pitfall 2: the conventions n and 1/n, and the two of the extended law.
#[test]
fn pitfall_2_conventions_of_the_exponent() {
    // v^4 T = K is v T^0.25 = C: 4 itself is no exponent of the life.
    let n = evaluate("taylor_exponent_from_power", "speed_power=4")
        .unwrap()
        .si;
    assert_eq!(n, 0.25);
    assert_eq!(
        ToolLife::new(si(2.0), si(4.0))
            .unwrap_err()
            .first()
            .parameter,
        "taylor_exponent"
    );
    for n in [0.0, 1.0, -0.2, f64::NAN] {
        assert_eq!(
            ToolLife::new(si(2.0), si(n)).unwrap_err().first().parameter,
            "taylor_exponent"
        );
    }
    // T = K v^-4 f^-2 d^-0.6 and v T^0.25 f^0.5 d^0.15 = C are one law.
    let a = evaluate("exponent_from_power", "power=2; taylor_exponent=0.25")
        .unwrap()
        .si;
    let b = evaluate("exponent_from_power", "power=0.6; taylor_exponent=0.25")
        .unwrap()
        .si;
    let by_powers = evaluate(
        "tool_life_by_powers",
        "reference_life=60 min; speed_ratio=1.2; feed_ratio=1.3; depth_ratio=1.4; speed_power=4; feed_power=2; depth_power=0.6",
    );
    let by_exponents = evaluate(
        "scaled_tool_life",
        &format!(
            "reference_life=60 min; speed_ratio=1.2; feed_ratio=1.3; depth_ratio=1.4; taylor_exponent=0.25; feed_exponent={a}; depth_exponent={b}"
        ),
    );
    let right = by_powers.unwrap().si;
    assert!(near(right, by_exponents.unwrap().si));
    // The powers taken for exponents give another life by far.
    let mixed = evaluate(
        "scaled_tool_life",
        "reference_life=60 min; speed_ratio=1.2; feed_ratio=1.3; depth_ratio=1.4; taylor_exponent=0.25; feed_exponent=2; depth_exponent=0.6",
    );
    assert!(mixed.unwrap().si < 0.2 * right);
}

/// Pitfall 3: values of k_c1.1 and m_c of different pairs, or a chip in inches in a law for mm.
#[test]
fn pitfall_3_pairs_stay_together() {
    // Two sets of readings of one steel, each with its pair: they agree where they were read, and
    // the main value of one with the exponent of the other does not.
    let chips = [0.05, 0.05, 0.1, 0.2, 0.3, 0.3].map(|h: f64| si(h * 1e-3));
    let pair = |kc: f64, m: f64| {
        let forces = chips.map(|h: gullet::quantity::Length| {
            let h = h.value * 1e3;
            si(kc * (h / 0.122f64).powf(-m) * h * 1e3)
        });
        fit_kienzle(&chips, &forces, &FitOptions::default()).unwrap()
    };
    let (first, second) = (pair(3000.0, 0.17), pair(3050.0, 0.30));
    let at_mean = |kc11: f64, m: f64| kc11 * (first.mean_chip_thickness.value * 1e3).powf(-m);
    let right = first.specific_force_at_mean.value;
    assert!(near(
        at_mean(first.kc11.value, first.chip_exponent.value),
        right
    ));
    assert!((second.specific_force_at_mean.value / right - 1.0).abs() < 0.03);
    let mixed = at_mean(first.kc11.value, second.chip_exponent.value);
    assert!((mixed / right - 1.0).abs() > 0.25);
    // A row with one value of a pair is refused.
    let half = Overlay {
        file_name: "ours.csv".into(),
        text: "id,name,iso513,kc11_mpa\nx,X,P,1800\n".into(),
    };
    let error = Library::builtin().with_overlay(&[half]).unwrap_err();
    assert_eq!(
        (error.code(), error.first().parameter.as_str()),
        (Code::BadRow, "ours.csv:2:mc")
    );
    // A new pair goes before those of other sources, whole.
    let own = KienzlePair {
        kc11: first.pair.kc11,
        exponent: first.pair.exponent,
        source: "ours".into(),
    };
    let steel = Library::builtin().material("AISI 1018").unwrap();
    assert_eq!(
        steel.with_pair(own.clone()).pairs[..2],
        [own, steel.pairs[0].clone()]
    );
    // Chips in inches and lbf are the same readings.
    let inches = evaluate(
        "specific_cutting_force",
        "kc11=1800 N/mm2; chip_exponent=0.25; chip_thickness=0.004 in",
    )
    .unwrap();
    let metric = evaluate(
        "specific_cutting_force",
        "kc11=1800 N/mm2; chip_exponent=0.25; chip_thickness=0.1016 mm",
    )
    .unwrap();
    assert!(near(inches.si, metric.si));
}

/// Pitfall 15: a law used beyond what was tested, and exponents of 1 and more.
#[test]
fn pitfall_15_beyond_the_tests() {
    let speeds = [100.0, 100.0, 150.0, 150.0, 200.0, 200.0].map(|v| si(v / 60.0));
    let lives = [61.0, 55.0, 12.5, 13.4, 4.4, 4.1].map(|t| si(t * 60.0));
    let fit = fit_taylor(&speeds, &lives, &FitOptions::default()).unwrap();
    for (speed, told) in [
        (100.0, false),
        (150.0, false),
        (200.0, false),
        (99.0, true),
        (60.0, true),
        (240.0, true),
    ] {
        let edge = fit.law.life(si(speed / 60.0), None, None).unwrap();
        assert_eq!(
            edge.warnings
                .iter()
                .any(|doubt| doubt.code == WarningCode::OutsideValidity),
            told,
            "{speed}"
        );
    }
    // A life for which a speed beyond the tests comes out, too.
    let speed = fit.law.speed(si(300.0 * 60.0), None, None).unwrap();
    assert!(speed.speed.value * 60.0 < 100.0);
    assert_eq!(speed.warnings[0].code, WarningCode::OutsideValidity);
    assert!(
        speed.warnings[0].text.contains("100 m/min to 200 m/min"),
        "{}",
        speed.warnings[0].text
    );
    // A law without its range says that it is taken on trust.
    let bare = ToolLife::new(si(5.0), si(0.25)).unwrap();
    assert_eq!(
        bare.life(si(2.0), None, None).unwrap().warnings[0].code,
        WarningCode::Assumed
    );
    // Another feed than that of the tests, of which the law has no exponent.
    let mut at_feed = fit.law;
    at_feed.feed.reference = Some(si(0.25e-3));
    assert!(
        at_feed
            .life(si(2.0), Some(si(0.26e-3)), None)
            .unwrap()
            .warnings
            .is_empty()
    );
    let other = at_feed.life(si(2.0), Some(si(0.4e-3)), None).unwrap();
    assert!(
        other.warnings[0].text.contains("no exponent of the feed"),
        "{:?}",
        other.warnings
    );
    // A life that hardly depends on the speed is not one of Taylor's.
    let flat = [20.0, 19.0, 14.0, 14.5, 11.0, 10.6].map(|t| si(t * 60.0));
    let error = fit_taylor(&speeds, &flat, &FitOptions::default()).unwrap_err();
    assert_eq!(
        (error.code(), error.first().parameter.as_str()),
        (Code::OutOfRange, "taylor_exponent")
    );
}

#[test]
fn criteria_scale_the_life_and_keep_the_exponent() {
    let mut law = ToolLife::new(si(4.0), si(0.25)).unwrap();
    law.tested_speeds = Some((si(1.0), si(3.0)));
    let error = law
        .for_criterion(WearCriterion::TurningUniform)
        .unwrap_err();
    assert_eq!(
        error.code(),
        Code::Inconsistent,
        "the law's own criterion is not stated"
    );
    law.criterion = WearCriterion::TurningUniform;
    let local = law.for_criterion(WearCriterion::TurningLocal).unwrap();
    let life = |law: &ToolLife| law.life(si(2.0), None, None).unwrap().time.value;
    assert!(near(life(&local), 2.0 * life(&law)) && local.taylor_exponent == law.taylor_exponent);
    assert!(law.for_criterion(WearCriterion::TurningFailure).is_err());
    let crater = WearCriterion::TurningCrater
        .crater_depth(si(0.2e-3))
        .unwrap()
        .unwrap();
    assert!(near(crater.value, 0.12e-3));
    for name in WearCriterion::standard_names() {
        assert_eq!(WearCriterion::read(name).to_string(), name);
    }
    for text in ["VB 0.2 mm", "burr too large", ""] {
        assert_eq!(WearCriterion::read(text).to_string(), text);
    }
    assert_eq!(
        WearCriterion::read("VB 0.008 in")
            .flank_wear()
            .unwrap()
            .value,
        0.008 * 0.0254
    );
}

#[test]
fn an_edge_makes_whole_parts() {
    let law = ToolLife::new(si(4.0), si(0.5)).unwrap();
    let edge = law.life(si(2.0), None, None).unwrap();
    assert!(near(edge.time.value, 240.0));
    assert_eq!(edge.parts(si(80.0)).unwrap(), 3, "exactly three");
    assert_eq!(edge.parts(si(80.1)).unwrap(), 2);
    assert_eq!(
        edge.parts(si(241.0)).unwrap_err().first().parameter,
        "cutting_time"
    );
}
