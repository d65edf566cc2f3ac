#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use super::{Kind, Quantity, UnitSystem, format, format_exact, format_in, parse, unit, units};
use crate::error::Code;
use proptest::prelude::*;

fn both(kind: Kind, text: &str) -> (String, String) {
    let si = parse(kind, text).unwrap();
    (
        format(kind, si, UnitSystem::Metric),
        format(kind, si, UnitSystem::Inch),
    )
}

#[test]
fn people_read_shop_units() {
    for (kind, given, metric, inch) in [
        (Kind::Length, "0.5 in", "12.7 mm", "0.5 in"),
        (Kind::Length, "5/8 in", "15.875 mm", "0.625 in"),
        (Kind::Length, "0.0005 in", "12.7 um", "0.0005 in"),
        (Kind::Length, "0.0004 in", "10.16 um", "0.0004 in"),
        (Kind::Length, "32 uin", "0.8128 um", "32 uin"),
        (Kind::Length, "0.8 um", "0.8 um", "31.5 uin"),
        (Kind::Length, "0.002 in", "0.051 mm", "0.002 in"),
        (Kind::Length, "0.005 mm", "5 um", "196.9 uin"),
        (Kind::Length, "0.01 mm", "0.01 mm", "393.7 uin"),
        (Kind::Length, "0.06 mm", "0.06 mm", "0.0024 in"),
        (Kind::Length, "311.874342 mm", "311.874 mm", "12.2785 in"),
        (Kind::Length, "-1/8 in", "-3.175 mm", "-0.125 in"),
        (Kind::Length, "25 m", "25 m", "984.252 in"),
        (Kind::Length, "0 mm", "0 mm", "0 in"),
        (Kind::Velocity, "300 ft/min", "91.44 m/min", "300 ft/min"),
        (Kind::Velocity, "30 m/min", "30 m/min", "98.43 ft/min"),
        (Kind::Velocity, "9 in/min", "228.6 mm/min", "9 in/min"),
        (
            Kind::Velocity,
            "265.2582 mm/min",
            "265.3 mm/min",
            "10.44 in/min",
        ),
        (Kind::RotationalSpeed, "1114.6 rpm", "1115 rpm", "1115 rpm"),
        (Kind::RotationalSpeed, "24123 rpm", "24123 rpm", "24123 rpm"),
        (Kind::RotationalSpeed, "7.25 rpm", "7.25 rpm", "7.25 rpm"),
        (Kind::Torque, "10 N.m", "10 N.m", "7.376 lbf.ft"),
        (Kind::Energy, "3 kWh", "10.8 MJ", "4.023 hp.h"),
        (Kind::Energy, "0.5 kJ", "500 J", "0.0001863 hp.h"),
        (Kind::Power, "1.5 hp", "1.119 kW", "1.5 hp"),
        (Kind::Power, "0.5 hp", "372.8 W", "0.5 hp"),
        (Kind::Pressure, "700 N/mm2", "700 N/mm2", "101.5 ksi"),
        (Kind::Pressure, "80 kPa", "80 kPa", "11.6 psi"),
        (Kind::Pressure, "210 GPa", "210 GPa", "30460 ksi"),
        (
            Kind::VolumeRate,
            "10 cm3/min",
            "10 cm3/min",
            "0.6102 in3/min",
        ),
        (Kind::Force, "1234.56 N", "1235 N", "277.5 lbf"),
        (Kind::Force, "12345.6 N", "12.35 kN", "2775 lbf"),
        (Kind::Angle, "60 deg", "60 deg", "60 deg"),
        (Kind::Ratio, "77 %", "0.77", "0.77"),
        (Kind::Ratio, "1.2990381", "1.299", "1.299"),
        (Kind::Count, "12345", "12345", "12345"),
        (Kind::Turns, "12.375", "12.375 turns", "12.375 turns"),
        (Kind::Time, "37.5 s", "37.5 s", "37.5 s"),
        (Kind::Time, "150 s", "2.5 min", "2.5 min"),
        (Kind::Time, "3 h", "3 h", "3 h"),
        (Kind::Money, "1234.567", "1234.57", "1234.57"),
        (
            Kind::MoneyRate,
            "0.75 money/min",
            "45 money/h",
            "45 money/h",
        ),
        (Kind::Density, "7850 kg/m3", "7850 kg/m3", "0.2836 lb/in3"),
        (Kind::Frequency, "66.6667 Hz", "66.67 Hz", "66.67 Hz"),
        (Kind::Stiffness, "1e6 N/m", "1000 N/mm", "5710 lbf/in"),
        (Kind::LineForce, "250 N/mm", "250 N/mm", "1428 lbf/in"),
        (Kind::Area, "645.16 mm2", "645.2 mm2", "1 in2"),
        (Kind::AreaRate, "1 in2/min", "6.452 cm2/min", "1 in2/min"),
        (
            Kind::Acceleration,
            "9.80665 m/s2",
            "9.807 m/s2",
            "386.1 in/s2",
        ),
    ] {
        assert_eq!(both(kind, given), (metric.into(), inch.into()), "{given}");
    }
}

#[test]
fn odd_numbers_print_plainly() {
    for system in [UnitSystem::Metric, UnitSystem::Inch] {
        for kind in Kind::ALL {
            assert_eq!(format(*kind, f64::NAN, system), "not a number");
            assert_eq!(format(*kind, f64::INFINITY, system), "infinity");
            assert_eq!(format(*kind, f64::NEG_INFINITY, system), "-infinity");
            assert!(format(*kind, -0.0, system).starts_with('0'));
        }
    }
    assert_eq!(
        format(Kind::Power, 1.2345e15, UnitSystem::Metric),
        "1.235e12 kW"
    );
    assert_eq!(
        format(Kind::Ratio, 1.2345e-9, UnitSystem::Metric),
        "1.235e-9"
    );
    assert_eq!(format(Kind::Ratio, -1e-9, UnitSystem::Metric), "-1e-9");
    assert_eq!(
        format(Kind::Length, f64::MAX, UnitSystem::Metric),
        "1.798e308 m"
    );
    assert_eq!(format(Kind::Length, 5e-324, UnitSystem::Inch), "2e-316 uin");
}

#[test]
fn a_named_unit_is_kept() {
    let feed = parse(Kind::Velocity, "0.5 m/s").unwrap();
    assert_eq!(
        format_in(Kind::Velocity, feed, "mm/min", 4).unwrap(),
        "30000 mm/min"
    );
    assert_eq!(
        format_in(Kind::Velocity, feed, "ipm", 3).unwrap(),
        "1180 in/min"
    );
    assert_eq!(format_in(Kind::Ratio, 0.8, "%", 3).unwrap(), "80 %");
    assert_eq!(format_in(Kind::Length, 0.0127, "in", 0).unwrap(), "0.5 in");
    assert_eq!(format_in(Kind::Length, 0.0127, "in", 99).unwrap(), "0.5 in");
    assert_eq!(
        format_in(Kind::Length, 0.0127, "rpm", 3)
            .unwrap_err()
            .code(),
        Code::UnitUnknown
    );
}

#[test]
fn exact_text_is_short() {
    let exact = |kind, si, symbol| format_exact(kind, si, unit(kind, symbol).unwrap());
    assert_eq!(exact(Kind::Length, 0.0127, "in"), "0.5 in");
    assert_eq!(exact(Kind::Length, 0.0127, "mm"), "12.7 mm");
    assert_eq!(exact(Kind::Length, -0.0, "mm"), "-0 mm");
    assert_eq!(
        exact(Kind::RotationalSpeed, 1115.0 / 60.0, "rpm"),
        "1115 rpm"
    );
    assert_eq!(exact(Kind::Angle, core::f64::consts::PI, "deg"), "180 deg");
    assert_eq!(exact(Kind::Ratio, 0.1 + 0.2, ""), "0.30000000000000004");
    assert_eq!(exact(Kind::Ratio, f64::NAN, ""), "not a number");
}

#[test]
fn quantities_convert_and_print() {
    let speed = Quantity::parse(Kind::RotationalSpeed, "1115 rpm").unwrap();
    assert_eq!(speed.to("rpm").unwrap(), 1115.0);
    assert_eq!(speed.to_string(), "1115 rpm");
    assert_eq!(format!("{speed:>10}"), "  1115 rpm");
    assert_eq!(format!("{speed:.2}"), "1115 rpm");
    assert_eq!(speed.to("ft").unwrap_err().code(), Code::UnitUnknown);
    assert_eq!(speed.to("").unwrap_err().code(), Code::UnitMissing);
    let power = Quantity::new(Kind::Power, 1.5, "hp").unwrap();
    assert_eq!(power, Quantity::parse(Kind::Power, "1 1/2 hp").unwrap());
    assert_eq!(power.text(UnitSystem::Inch), "1.5 hp");
    assert!(power.agrees_with("1.1185 kW", 1e-4).unwrap());
    assert!(!power.agrees_with("1.12 kW", 1e-4).unwrap());
    let huge = Quantity {
        kind: Kind::Length,
        si: 1e308,
    };
    assert_eq!(huge.to("um").unwrap_err().code(), Code::NotFinite);
    assert_eq!(
        Quantity::new(Kind::Length, f64::NAN, "mm")
            .unwrap_err()
            .code(),
        Code::NotFinite
    );
    assert_eq!(
        Quantity::new(Kind::Pressure, 1e300, "GPa")
            .unwrap_err()
            .code(),
        Code::NotFinite
    );
}

proptest! {
    /// What people read is the number itself to a rounding that the kind and size allow.
    #[test]
    fn printed_text_is_near_the_value(power in -12.0..9.0_f64, negative in any::<bool>()) {
        let si = 10_f64.powf(power) * if negative { -1.0 } else { 1.0 };
        for kind in Kind::ALL {
            for system in [UnitSystem::Metric, UnitSystem::Inch] {
                let text = format(*kind, si, system);
                let read = parse(*kind, &text).unwrap();
                let step = match (kind, system) {
                    (Kind::Length, UnitSystem::Metric) if si.abs() > 1e-5 => 0.5e-6,
                    (Kind::Length, UnitSystem::Inch) if si.abs() > 1e-6 => 0.5e-4 * 0.0254,
                    (Kind::RotationalSpeed, _) => 0.5 / 60.0,
                    (Kind::Money | Kind::MoneyRate | Kind::Turns, _) => 0.005,
                    _ => 0.0,
                };
                prop_assert!(
                    (read - si).abs() <= (5.01e-4 * si.abs()).max(step * (1.0 + 1e-9)),
                    "{:?} {} {}", kind, si, text
                );
            }
        }
    }

    #[test]
    fn a_named_unit_keeps_its_digits(power in -300.0..300.0_f64, digits in 1_u32..17) {
        let si = 10_f64.powf(power);
        for kind in Kind::ALL {
            for unit in units(*kind) {
                let text = format_in(*kind, si, unit.symbol, digits).unwrap();
                let read = parse(*kind, &text).unwrap();
                let allowed = 0.5 * 10_f64.powi(1 - digits as i32) + 1e-15;
                prop_assert!((read / si - 1.0).abs() <= allowed, "{} {}", si, text);
            }
        }
    }
}
