//! Traps of cost and time, one by one: the learning curve, the kind of an allowance, the unit of a rate.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::economics::{Allowance, EdgeEconomics, Learning, LotCost};
use gullet::quantity::si;
use gullet::{Code, evaluate};

const LOT: &str = "lot_size=100; machine_rate=60 money/h; handling_time=10 min; cutting_time=5 min";

fn lot(more: &str) -> LotCost {
    LotCost::from_text(&format!("{LOT}; {more}")).unwrap()
}

#[test]
fn pitfall_12_learning_curve_type() {
    // The two curves at one rate are far apart, so the rate says by its name which it is.
    let wright = lot("wright_rate=80 %");
    let crawford = lot("crawford_rate=80 %");
    assert!(matches!(wright.learning(), Learning::Wright(rate) if rate.value == 0.8));
    assert!(matches!(crawford.learning(), Learning::Crawford(rate) if rate.value == 0.8));
    assert_eq!(lot("setup_time=0 min").learning(), Learning::None);
    let handling = |lot: LotCost| lot.price().unwrap().shares[1].time.value / 600.0;
    let exponent = 0.8f64.log2();
    let mean: f64 = (1..=100).map(|x| f64::from(x).powf(exponent)).sum::<f64>() / 100.0;
    assert!((handling(wright) - 100f64.powf(exponent)).abs() < 1e-13);
    assert!((handling(crawford) - mean).abs() < 1e-13);
    // A third less: the limit of the quotient is 1 + log2(0.8) = 0.678.
    let quotient = handling(wright) / handling(crawford);
    assert!((0.678..0.71).contains(&quotient), "{quotient}");
    // Both at once is refused, and so is a rate above 1: practice that slows down.
    let error = lot("wright_rate=80 %; crawford_rate=80 %")
        .price()
        .err()
        .unwrap();
    assert_eq!(error.code(), Code::Inconsistent);
    assert_eq!(
        lot("wright_rate=120 %").price().err().unwrap().code(),
        Code::OutOfRange
    );
    // The machine does not learn.
    assert_eq!(wright.price().unwrap().shares[2].time.value, 300.0);
}

#[test]
fn pitfall_13_allowance_as_percent_of_total() {
    let normal = lot("allowance_of_normal_time=15 %");
    let standard = lot("allowance_of_standard_time=15 %");
    assert!(matches!(normal.allowance(), Allowance::OfNormalTime(_)));
    assert!(matches!(standard.allowance(), Allowance::OfStandardTime(_)));
    let minutes = |lot: LotCost| lot.price().unwrap().standard_time.value / 60.0;
    assert!((minutes(normal) - 15.0 * 1.15).abs() < 1e-12);
    assert!((minutes(standard) - 15.0 / 0.85).abs() < 1e-12);
    // Each is a share of what its name says.
    let share = |lot: LotCost| {
        let price = lot.price().unwrap();
        let allowance = price.shares[6].time;
        (
            allowance / price.normal_time,
            allowance / price.standard_time,
        )
    };
    assert!((share(normal).0.value - 0.15).abs() < 1e-12);
    assert!((share(standard).1.value - 0.15).abs() < 1e-12);
    let both = lot("allowance_of_normal_time=15 %; allowance_of_standard_time=15 %");
    assert_eq!(both.price().err().unwrap().code(), Code::Inconsistent);
    assert_eq!(
        lot("allowance_of_standard_time=100 %")
            .price()
            .err()
            .unwrap()
            .first()
            .parameter,
        "allowance_of_standard_time"
    );
}

#[test]
fn pitfall_18_minute_rates_against_hour_rates() {
    let edge = |rate: &str| {
        EdgeEconomics::from_text(&format!(
            "machine_rate={rate}; edge_cost=2.50; change_time=2 min; taylor_speed=75 m/min; \
             taylor_exponent=0.25; diameter=50 mm; travel=100 mm; feed_per_rev=0.2 mm"
        ))
    };
    let best = |rate: &str| edge(rate).unwrap().minimum_cost().unwrap().speed;
    // The same rate in either unit; 27.42 m/min: A. Ghosh, A.K. Mallik, Manufacturing Science, Ex. 4.26 p. 268.
    let (minute, hour) = (best("0.15 money/min"), best("9 money/h"));
    assert!((minute.cutting_speed.value * 60.0 - 27.42).abs() < 0.005);
    assert!(
        (minute.cutting_speed / hour.cutting_speed - si(1.0))
            .value
            .abs()
            < 1e-14
    );
    // Sixty times the rate is another speed, and a bare number no rate at all.
    assert!(best("0.15 money/h").cutting_speed < 0.5 * minute.cutting_speed);
    assert_eq!(edge("0.15").err().unwrap().code(), Code::UnitMissing);
    let bare = evaluate("time_cost", "time=6 min; machine_rate=45");
    assert_eq!(bare.err().unwrap().code(), Code::UnitMissing);
    let cost = evaluate("time_cost", "time=6 min; machine_rate=45 money/h").unwrap();
    assert_eq!(cost.si, 4.5);
}
