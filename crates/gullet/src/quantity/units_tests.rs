#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use super::spelling::normalised;
use super::{Kind, Unit, parse, unit, units};
use crate::error::Code;
use std::collections::HashSet;

/// Sizes from the definitions, as products of whole numbers over powers of ten: independent of
/// the table, which holds the finished products.
#[test]
fn sizes_follow_from_the_definitions() {
    const INCH: f64 = 254e-4;
    const POUND: f64 = 45_359_237e-8;
    const GRAVITY: f64 = 980_665e-5;
    const POUND_FORCE: f64 = POUND * GRAVITY;
    const FOOT: f64 = 12.0 * INCH;
    const HORSEPOWER: f64 = 550.0 * FOOT * POUND_FORCE;
    let sizes = [
        (
            Kind::Length,
            "m 1, mm 1e-3, cm 1e-2, um 1e-6",
            &[1.0, 1e-3, 1e-2, 1e-6][..],
        ),
        (
            Kind::Length,
            "in, thou, uin, ft",
            &[INCH, INCH / 1e3, INCH / 1e6, FOOT],
        ),
        (
            Kind::Area,
            "mm2, cm2, m2, in2",
            &[1e-6, 1e-4, 1.0, INCH * INCH],
        ),
        (
            Kind::Velocity,
            "m/s, m/min, mm/min, mm/s",
            &[1.0, 1.0 / 60.0, 1e-3 / 60.0, 1e-3],
        ),
        (
            Kind::Velocity,
            "in/min, ft/min, in/s",
            &[INCH / 60.0, FOOT / 60.0, INCH],
        ),
        (
            Kind::Acceleration,
            "m/s2, mm/s2, in/s2, ft/s2",
            &[1.0, 1e-3, INCH, FOOT],
        ),
        (Kind::Time, "s, min, h, ms", &[1.0, 60.0, 3600.0, 1e-3]),
        (Kind::RotationalSpeed, "rpm, rps", &[1.0 / 60.0, 1.0]),
        (Kind::Frequency, "Hz, kHz", &[1.0, 1e3]),
        (
            Kind::Angle,
            "deg, rad",
            &[core::f64::consts::PI / 180.0, 1.0],
        ),
        (Kind::Ratio, ", %", &[1.0, 1e-2]),
        (Kind::Count, "", &[1.0]),
        (Kind::Money, "", &[1.0]),
        (Kind::Turns, "turns", &[1.0]),
        (Kind::Force, "N, kN, lbf", &[1.0, 1e3, POUND_FORCE]),
        (
            Kind::LineForce,
            "N/mm, N/m, lbf/in",
            &[1e3, 1.0, POUND_FORCE / INCH],
        ),
        (
            Kind::Stiffness,
            "N/mm, N/um, N/m, lbf/in",
            &[1e3, 1e6, 1.0, POUND_FORCE / INCH],
        ),
        (
            Kind::Pressure,
            "Pa, kPa, MPa, GPa, bar, N/mm2",
            &[1.0, 1e3, 1e6, 1e9, 1e5, 1e6],
        ),
        (
            Kind::Pressure,
            "J/mm3, W.s/mm3, kW.min/cm3, kW/(cm3/s)",
            &[1e9, 1e9, 6e10, 1e9],
        ),
        (
            Kind::Pressure,
            "psi, ksi",
            &[
                POUND_FORCE / (INCH * INCH),
                1e3 * POUND_FORCE / (INCH * INCH),
            ],
        ),
        (
            Kind::Pressure,
            "hp.min/in3",
            &[HORSEPOWER * 60.0 / (INCH * INCH * INCH)],
        ),
        (
            Kind::Power,
            "W, kW, hp, PS",
            &[1.0, 1e3, HORSEPOWER, 75.0 * GRAVITY],
        ),
        (
            Kind::Torque,
            "N.m, N.mm, lbf.ft, lbf.in",
            &[1.0, 1e-3, POUND_FORCE * FOOT, POUND_FORCE * INCH],
        ),
        (
            Kind::Energy,
            "J, kJ, MJ, Wh, kWh, hp.h",
            &[1.0, 1e3, 1e6, 3600.0, 3.6e6, HORSEPOWER * 3600.0],
        ),
        (
            Kind::VolumeRate,
            "mm3/min, mm3/s, cm3/min, cm3/s, m3/s",
            &[1e-9 / 60.0, 1e-9, 1e-6 / 60.0, 1e-6, 1.0],
        ),
        (Kind::VolumeRate, "in3/min", &[INCH * INCH * INCH / 60.0]),
        (
            Kind::AreaRate,
            "mm2/min, cm2/min, in2/min, m2/s",
            &[1e-6 / 60.0, 1e-4 / 60.0, INCH * INCH / 60.0, 1.0],
        ),
        (
            Kind::MoneyRate,
            "money/h, money/min",
            &[1.0 / 3600.0, 1.0 / 60.0],
        ),
        (
            Kind::Density,
            "kg/m3, g/cm3, lb/in3",
            &[1.0, 1e3, POUND / (INCH * INCH * INCH)],
        ),
    ];
    let mut seen = HashSet::new();
    for (kind, symbols, expected) in sizes {
        let symbols: Vec<&str> = symbols
            .split(',')
            .map(|part| part.trim().split(' ').next().unwrap())
            .collect();
        assert_eq!(symbols.len(), expected.len());
        for (symbol, expected) in symbols.iter().zip(expected) {
            let unit: &Unit = unit(kind, symbol).unwrap();
            let off = (unit.size() - expected).abs() / expected;
            assert!(off < 1e-15, "{kind:?} {symbol}: {} {expected}", unit.size());
            seen.insert((kind, unit.symbol));
        }
    }
    for kind in Kind::ALL {
        for unit in units(*kind) {
            assert!(
                seen.contains(&(*kind, unit.symbol)),
                "{kind:?} {} is unchecked",
                unit.symbol
            );
        }
    }
}

#[test]
fn published_equivalents_hold() {
    // Exact products of the definitions, as NIST SP 811 lists them (memory).
    assert_eq!(
        unit(Kind::Power, "hp").unwrap().size(),
        745.699_871_582_270_2
    );
    assert_eq!(unit(Kind::Power, "PS").unwrap().size(), 735.49875);
    assert_eq!(
        unit(Kind::Force, "lbf").unwrap().size(),
        4.448_221_615_260_5
    );
    assert_eq!(
        unit(Kind::Pressure, "psi").unwrap().size(),
        6_894.757_293_168_362
    );
    assert_eq!(
        unit(Kind::Angle, "deg").unwrap().size(),
        1.0_f64.to_radians()
    );
}

#[test]
fn every_spelling_is_read_and_stands_once() {
    for kind in Kind::ALL {
        let mut seen = HashSet::new();
        for each in units(*kind) {
            assert!(each.symbol.is_ascii());
            for spelling in each.spellings() {
                assert_eq!(normalised(spelling), spelling);
                assert!(seen.insert(spelling), "{kind:?}: {spelling} twice");
                assert_eq!(unit(*kind, spelling).unwrap().symbol, each.symbol);
                assert_eq!(
                    parse(*kind, &format!("3 {spelling}")).unwrap(),
                    parse(*kind, &format!("3 {}", each.symbol)).unwrap()
                );
            }
        }
    }
}

#[test]
fn names_of_kinds_are_stable() {
    let names: HashSet<&str> = Kind::ALL.iter().map(|kind| kind.name()).collect();
    assert_eq!(names.len(), Kind::ALL.len());
    for name in "length velocity rotational_speed turns count ratio angle area volume_rate force \
                 line_force pressure stiffness power torque time acceleration area_rate money \
                 money_rate frequency density energy"
        .split_whitespace()
    {
        assert_eq!(Kind::from_name(name).unwrap().name(), name);
    }
    assert_eq!(Kind::from_name("Length"), None);
}

#[test]
fn alphabets_and_habits_of_spelling() {
    for (kind, spelled, symbol) in [
        (Kind::Length, "µm", "um"),
        (Kind::Length, "μm", "um"),
        (Kind::Length, "µin", "uin"),
        (Kind::Length, "″", "in"),
        (Kind::Length, "”", "in"),
        (Kind::Length, "′", "ft"),
        (Kind::Length, "in.", "in"),
        (Kind::Length, "mm / rev", "mm"),
        (Kind::Length, "in per tooth", "in"),
        (Kind::Area, "mm²", "mm2"),
        (Kind::Area, "mm^2", "mm2"),
        (Kind::Velocity, "in per min", "in/min"),
        (Kind::Velocity, "IPM", "in/min"),
        (Kind::Velocity, "SFM", "ft/min"),
        (Kind::Velocity, "mm / min", "mm/min"),
        (Kind::Velocity, "MM/MIN", "mm/min"),
        (Kind::Acceleration, "m/s²", "m/s2"),
        (Kind::RotationalSpeed, "1/min", "rpm"),
        (Kind::RotationalSpeed, "min^-1", "rpm"),
        (Kind::RotationalSpeed, "min⁻¹", "rpm"),
        (Kind::RotationalSpeed, "r/min", "rpm"),
        (Kind::RotationalSpeed, "RPM", "rpm"),
        (Kind::Angle, "°", "deg"),
        (Kind::Pressure, "N/mm²", "N/mm2"),
        (Kind::Pressure, "N/mm^2", "N/mm2"),
        (Kind::Pressure, "hp·min/in³", "hp.min/in3"),
        (Kind::Pressure, "hp-min/in3", "hp.min/in3"),
        (Kind::Pressure, "kW min/cm³", "kW.min/cm3"),
        (Kind::Pressure, "kW/(cm³/s)", "kW/(cm3/s)"),
        (Kind::Pressure, "Mpa", "MPa"),
        (Kind::Power, "Hp", "hp"),
        (Kind::Power, "KW", "kW"),
        (Kind::Torque, "N·m", "N.m"),
        (Kind::Torque, "N m", "N.m"),
        (Kind::Torque, "N*m", "N.m"),
        (Kind::Torque, "N×m", "N.m"),
        (Kind::Torque, "Nm", "N.m"),
        (Kind::Torque, "ft-lbf", "lbf.ft"),
        (Kind::Torque, "lbf·ft", "lbf.ft"),
        (Kind::VolumeRate, "in^3/min", "in3/min"),
        (Kind::MoneyRate, "per h", "money/h"),
        (Kind::MoneyRate, "per min", "money/min"),
        (Kind::MoneyRate, "/min", "money/min"),
    ] {
        assert_eq!(unit(kind, spelled).unwrap().symbol, symbol, "{spelled}");
    }
}

#[test]
fn letter_case_never_changes_the_size() {
    for (kind, spelled, near) in [
        (Kind::Pressure, "mPa", "MPa"),
        (Kind::Pressure, "mpa", "MPa"),
        (Kind::Length, "M", "m"),
        (Kind::Length, "Mm", "mm"),
        (Kind::Velocity, "M/min", "m/min"),
        (Kind::Time, "Ms", "ms"),
    ] {
        let error = unit(kind, spelled).unwrap_err();
        assert_eq!(error.code(), Code::UnitUnknown, "{spelled}");
        assert!(
            error
                .first()
                .remedy
                .contains(&format!("did you mean 12.5 {near}?")),
            "{error}"
        );
    }
}
