#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use super::{Kind, parse, parse_number};
use crate::error::Code;
use proptest::prelude::*;

fn length(text: &str) -> f64 {
    parse(Kind::Length, text).unwrap_or_else(|error| panic!("{text}: {error}"))
}

#[test]
fn numbers_in_every_form() {
    for (text, value) in [
        ("12.7", 12.7),
        (".5", 0.5),
        ("5.", 5.0),
        ("1e-3", 1e-3),
        ("1E+3", 1e3),
        ("+2", 2.0),
        ("-2", -2.0),
        ("\u{2212}2", -2.0),
        ("1/2", 0.5),
        ("1\u{2044}2", 0.5),
        ("½", 0.5),
        ("1½", 1.5),
        ("-1-1/4", -1.25),
        ("2 3/8", 2.375),
        ("  7\u{a0}", 7.0),
        ("007", 7.0),
        ("0e999999999999999999999", 0.0),
    ] {
        assert_eq!(parse_number(text).unwrap(), value, "{text}");
    }
}

#[test]
fn an_inch_is_25_4_mm_to_the_bit() {
    for (inch, metric) in [
        ("0.5 in", "12.7 mm"),
        ("1/2 in", "12.7 mm"),
        ("1/2\"", "12700 um"),
        ("0.5in", "1.27 cm"),
        ("500 thou", "12.7mm"),
        ("1-1/4 in", "31.75 mm"),
        ("2 3/8\"", "60.325 mm"),
        ("2-3/8″", "60.325 mm"),
        ("2⅜ in", "60.325 mm"),
        ("5/64 inch", "1.984375 mm"),
        ("0.0005 in", "12.7 µm"),
        ("10 mil", "0.254 mm/tooth"),
        ("1 ft", "304.8 mm"),
        ("1'", "304.8 mm"),
        ("63 uin", "1.6002 um"),
        ("-1/8 in", "-3.175 mm"),
    ] {
        assert_eq!(
            length(inch).to_bits(),
            length(metric).to_bits(),
            "{inch} {metric}"
        );
    }
}

#[test]
fn values_are_rounded_once() {
    assert_eq!(length("12.7 mm"), 0.0127);
    assert_eq!(length("1/3 m"), 1.0 / 3.0);
    assert_eq!(
        parse(Kind::Angle, "180 deg").unwrap(),
        core::f64::consts::PI
    );
    assert_eq!(
        parse(Kind::Angle, "90°").unwrap(),
        core::f64::consts::FRAC_PI_2
    );
    assert_eq!(parse(Kind::RotationalSpeed, "1200 rpm").unwrap(), 20.0);
    assert_eq!(parse(Kind::RotationalSpeed, "1200 1/min").unwrap(), 20.0);
    assert_eq!(parse(Kind::RotationalSpeed, "1200/min").unwrap(), 20.0);
    assert_eq!(parse(Kind::RotationalSpeed, "1/min").unwrap(), 1.0 / 60.0);
    assert_eq!(parse(Kind::Velocity, "300 sfpm").unwrap(), 1.524);
    assert_eq!(parse(Kind::Ratio, "77 %").unwrap(), 0.77);
    assert_eq!(parse(Kind::Ratio, "77%").unwrap(), 0.77);
    assert_eq!(parse(Kind::Ratio, "1/8").unwrap(), 0.125);
    assert_eq!(parse(Kind::Count, "4").unwrap(), 4.0);
    assert_eq!(parse(Kind::Turns, "12 1/2 turns").unwrap(), 12.5);
    assert_eq!(parse(Kind::Turns, "12.5").unwrap(), 12.5);
    assert_eq!(parse(Kind::Money, "19.90").unwrap(), 19.9);
    assert_eq!(parse(Kind::MoneyRate, "36/h").unwrap(), 0.01);
    assert_eq!(parse(Kind::MoneyRate, "36 per h").unwrap(), 0.01);
    assert_eq!(parse(Kind::Pressure, "3 W.s/mm3").unwrap(), 3e9);
    assert_eq!(parse(Kind::Torque, "12 N m").unwrap(), 12.0);
}

#[test]
fn tiny_and_huge_numbers() {
    assert_eq!(length("1e-400 mm"), 0.0);
    assert_eq!(length("5e-321 mm"), 5e-324);
    assert_eq!(length("1e311 mm"), 1e308);
    assert_eq!(length("1e-999999999999999999999 mm"), 0.0);
    let long = format!("{}.{} mm", "0".repeat(500), "1".repeat(500));
    assert_eq!(length(&long), 1.0 / 9000.0);
}

#[test]
fn bad_input_is_refused_with_its_code() {
    use Code::{NotFinite, NumberUnreadable, UnitMissing, UnitUnknown};
    for (kind, text, code) in [
        (Kind::Length, "", NumberUnreadable),
        (Kind::Length, "   ", NumberUnreadable),
        (Kind::Length, "mm", NumberUnreadable),
        (Kind::Length, "-", NumberUnreadable),
        (Kind::Length, ".", NumberUnreadable),
        (Kind::Length, ". mm", NumberUnreadable),
        (Kind::Length, "- 5 mm", NumberUnreadable),
        (Kind::Length, "--5 mm", NumberUnreadable),
        (Kind::Length, "e5 mm", NumberUnreadable),
        (Kind::Length, "/2 in", NumberUnreadable),
        (Kind::Length, "1/0 in", NumberUnreadable),
        (Kind::Length, "2-0/0 in", NumberUnreadable),
        (Kind::Length, "2 8/3 in", NumberUnreadable),
        (Kind::Length, "1/2/3 in", NumberUnreadable),
        (Kind::Length, "1.5/2 in", NumberUnreadable),
        (Kind::Length, "1/2.5 in", NumberUnreadable),
        (Kind::Length, "1/2e3 in", NumberUnreadable),
        (Kind::Length, "1.5-1/2 in", NumberUnreadable),
        (Kind::Length, "1+1/2 in", NumberUnreadable),
        (Kind::Length, "1 - 1/2 in", NumberUnreadable),
        (Kind::Length, "5-3 mm", NumberUnreadable),
        (Kind::Length, "12,7 mm", NumberUnreadable),
        (Kind::Length, ",7 mm", NumberUnreadable),
        (Kind::Length, "1,000 mm", NumberUnreadable),
        (Kind::Length, "1,000.5 mm", NumberUnreadable),
        (Kind::Length, "1.000,5 mm", NumberUnreadable),
        (Kind::Length, "1.2.3 mm", NumberUnreadable),
        (Kind::Length, "1 000 mm", NumberUnreadable),
        (Kind::Length, "1_000 mm", NumberUnreadable),
        (Kind::Length, "1'000 mm", NumberUnreadable),
        (Kind::Length, "5'6\"", NumberUnreadable),
        (Kind::Length, "0x10 mm", NumberUnreadable),
        (Kind::Length, "١٢ mm", NumberUnreadable),
        (Kind::Length, "NaN mm", NotFinite),
        (Kind::Length, "inf", NotFinite),
        (Kind::Length, "-Infinity mm", NotFinite),
        (Kind::Length, "1e999 mm", NotFinite),
        (Kind::Length, "1e999999999999999999999 mm", NotFinite),
        (Kind::Length, "0.5", UnitMissing),
        (Kind::Length, "1/2", UnitMissing),
        (Kind::Velocity, "300", UnitMissing),
        (Kind::RotationalSpeed, "1000", UnitMissing),
        (Kind::Angle, "45", UnitMissing),
        (Kind::MoneyRate, "45", UnitMissing),
        (Kind::Length, "5 mm mm", UnitUnknown),
        (Kind::Length, "5 mm 3", UnitUnknown),
        (Kind::Length, "5 furlong", UnitUnknown),
        (Kind::Length, "5 %", UnitUnknown),
        (Kind::Length, "5 rpm", UnitUnknown),
        (Kind::Length, "5e", UnitUnknown),
        (Kind::Count, "4 mm", UnitUnknown),
        (Kind::Count, "50 %", UnitUnknown),
        (Kind::Money, "5 %", UnitUnknown),
        (Kind::RotationalSpeed, "100 rad/s", UnitUnknown),
        (Kind::RotationalSpeed, "100 Hz", UnitUnknown),
        (Kind::Pressure, "700 mPa", UnitUnknown),
    ] {
        let error = parse(kind, text).expect_err(text);
        assert_eq!(error.code(), code, "{text}: {error}");
        assert_eq!(error.first().value, text.trim(), "{text}");
        assert!(!error.first().admissible.is_empty(), "{error}");
        assert!(!error.first().remedy.is_empty(), "{error}");
    }
    assert_eq!(parse_number("5 mm").unwrap_err().code(), NumberUnreadable);
    assert_eq!(parse_number("50 %").unwrap_err().code(), NumberUnreadable);
}

#[test]
fn errors_show_how_to_write_it() {
    let message = |kind, text| parse(kind, text).unwrap_err().to_string();
    assert_eq!(
        message(Kind::Length, "0.5"),
        "unit_missing: 0.5; admissible: mm, in, thou, um, cm, m, ft, uin; write 0.5 mm or 0.5 in"
    );
    assert_eq!(
        message(Kind::RotationalSpeed, "1000"),
        "unit_missing: 1000; admissible: rpm, rps; write 1000 rpm"
    );
    assert_eq!(
        message(Kind::RotationalSpeed, "300 ft/min"),
        "unit_unknown: 300 ft/min; admissible: rpm, rps; \
         ft/min is a unit of velocity, not of rotational speed; give it in rpm"
    );
    assert_eq!(
        message(Kind::Velocity, "300 ft/mn"),
        "unit_unknown: 300 ft/mn; \
         admissible: ft/min, m/min, mm/min, in/min, mm/s, in/s, m/s; \
         ft/mn is no unit of velocity; did you mean 300 ft/min?"
    );
    assert_eq!(
        message(Kind::Count, "4 mm"),
        "unit_unknown: 4 mm; admissible: no unit; mm is a unit of length, not of count; give a number without a unit"
    );
    assert_eq!(
        message(Kind::Length, "12,7 mm"),
        "number_unreadable: 12,7 mm; \
         admissible: a decimal point, and no comma or thousands separator; write 12.7"
    );
    assert_eq!(
        message(Kind::Length, "1,000 mm"),
        "number_unreadable: 1,000 mm; \
         admissible: a decimal point, and no comma or thousands separator; \
         write 1000 or 1.000, whichever is meant"
    );
    assert_eq!(
        message(Kind::Length, "1/0 in"),
        "number_unreadable: 1/0 in; admissible: a denominator other than 0; \
         write the fraction with another denominator"
    );
    assert_eq!(
        message(Kind::Length, ""),
        "number_unreadable; admissible: a number such as 12.7, 1e-3, 1/2 or 1-1/4; write a number"
    );
}

#[test]
fn misspelt_units_find_their_neighbour() {
    for (kind, text, near) in [
        (Kind::Length, "2 inchs", "2 in"),
        (Kind::Length, "5 mn", "5 mm"),
        (Kind::Length, "5 M", "5 m"),
        (Kind::RotationalSpeed, "900 rmp", "900 rpm"),
        (Kind::Torque, "5 lb-ftf", "5 lbf.ft"),
        (Kind::Pressure, "2 hp.min/in", "2 hp.min/in3"),
        (Kind::Pressure, "700 mPa", "700 MPa"),
    ] {
        let error = parse(kind, text).unwrap_err();
        let remedy = &error.first().remedy;
        assert!(
            remedy.ends_with(&format!("did you mean {near}?")),
            "{error}"
        );
    }
}

#[test]
fn absurd_lengths_are_refused_at_once() {
    let start = std::time::Instant::now();
    for text in [
        "1".repeat(10_000_000),
        format!("1 {}", "m".repeat(10_000_000)),
        format!("1e{} mm", "9".repeat(1000)),
        "1".repeat(1000),
        format!("1 {}", "m".repeat(1000)),
    ] {
        let error = parse(Kind::Length, &text).unwrap_err();
        assert!(error.to_string().len() < 400, "{error}");
    }
    assert!(start.elapsed().as_secs() < 5);
}

proptest! {
    #[test]
    fn any_text_gives_a_finite_number_or_an_error(text in ".*") {
        for kind in Kind::ALL {
            if let Ok(value) = parse(*kind, &text) {
                prop_assert!(value.is_finite());
            }
        }
    }

    #[test]
    fn text_of_the_right_letters_too(text in "[-+]?[0-9½/. e,'\"_-]{0,12}(mm|in|%|°|µm|N.m| per |min⁻¹|\"|/|1/min|.)?") {
        for kind in Kind::ALL {
            if let Ok(value) = parse(*kind, &text) {
                prop_assert!(value.is_finite());
            }
        }
    }

    #[test]
    fn fractions_of_an_inch_are_exact(whole in 0_u32..100, above in 0_u32..64) {
        let decimal = f64::from(whole) + f64::from(above) / 64.0;
        let expected = length(&format!("{decimal} in"));
        prop_assert_eq!(length(&format!("{whole}-{above}/64 in")), expected);
        prop_assert_eq!(length(&format!("{whole} {above}/64\"")), expected);
        prop_assert_eq!(length(&format!("-{whole} {above}/64\"")), -expected);
        prop_assert_eq!(length(&format!("{}/64 in", whole * 64 + above)), expected);
    }
}
