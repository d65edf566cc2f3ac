#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use super::decimal::{Digits, Fraction};
use super::natural::Natural;
use super::units::units;
use super::{Kind, format_exact, from_unit, parse, parse_number, to_unit};
use proptest::prelude::*;

fn one() -> Fraction {
    Fraction::decimal(&[1], 0)
}

/// The standard library's shortest text, as digits and exponent.
fn std_shortest(value: f64) -> (String, i64) {
    let text = format!("{:e}", value.abs());
    let (digits, exponent) = text.split_once('e').unwrap();
    (digits.replace('.', ""), exponent.parse().unwrap())
}

fn own_shortest(value: f64) -> (String, i64) {
    let Digits { digits, point } = Digits::shortest(value, &one());
    let text = digits.iter().map(|d| char::from(b'0' + d)).collect();
    (text, point - 1)
}

#[test]
fn naturals_multiply_and_divide() {
    // (2^128 - 1)^2 = 2^256 - 2^129 + 1, and 2^128 - 1 divides its multiples without rest.
    let digits = "340282366920938463463374607431768211455".bytes();
    let a = Natural::from_digits(digits.map(|byte| byte - b'0'));
    let one = Natural::from_u64(1);
    assert_eq!(a.plus(&one), one.shifted_left(128));
    let square = a.times(&a);
    assert_eq!(
        square.plus(&one.shifted_left(129)),
        one.shifted_left(256).plus(&one)
    );
    let factor: u128 = 0x1_2345_6789_abcd_ef01;
    let wide = Natural::from_u64((factor >> 64) as u64)
        .shifted_left(64)
        .plus(&Natural::from_u64(factor as u64));
    let mut rest = a.times(&wide).plus(&Natural::from_u64(7));
    assert_eq!(rest.divide(&a, 66), factor);
    assert_eq!(rest.to_u64(), Some(7));
    assert_eq!(
        one.times_power_of_ten(19).to_u64(),
        Some(10_000_000_000_000_000_000)
    );
    assert!(Natural::from_digits([0, 0]).is_zero());
}

#[test]
fn halfway_cases_round_to_even() {
    // 2^53 + 1 lies halfway between two doubles; a digit far behind decides.
    assert_eq!(
        parse_number("9007199254740993").unwrap(),
        9007199254740992.0
    );
    assert_eq!(
        parse_number("9007199254740995").unwrap(),
        9007199254740996.0
    );
    let above = format!("9007199254740993.{}1", "0".repeat(900));
    assert_eq!(parse_number(&above).unwrap(), 9007199254740994.0);
    let below = format!("9007199254740992.{}", "9".repeat(900));
    assert_eq!(parse_number(&below).unwrap(), 9007199254740992.0);
}

#[test]
fn the_ends_of_the_doubles() {
    for value in [
        f64::MAX,
        f64::MIN_POSITIVE,
        f64::MIN_POSITIVE.next_down(),
        5e-324,
        1e-323,
        f64::EPSILON,
        1.0,
        1.0_f64.next_down(),
        9007199254740992.0,
    ] {
        assert_eq!(own_shortest(value), std_shortest(value));
        assert_eq!(parse_number(&format!("{value:?}")).unwrap(), value);
    }
    // Halfway between the largest double and the next power of two, and just below.
    let half = "179769313486231580793728971405303415079934132710037826936173778980444968292764750946649017977587207096330286416692887910946555547851940402630657488671505820681908902000708383676273854845817711531764475730270069855571366959622842914819860834936475292719074168444365510704342711559699508093042880177904174497792";
    assert!(parse_number(half).is_err());
    let below = format!("{}.9", half.replace("74497792", "74497791"));
    assert_eq!(parse_number(&below).unwrap(), f64::MAX);
    // Half the smallest double is 0, a little more is the smallest double.
    assert_eq!(parse_number("2.4703282292062327e-324").unwrap(), 0.0);
    assert_eq!(parse_number("2.4703282292062328e-324").unwrap(), 5e-324);
    assert!(parse_number("-1e-400").unwrap().is_sign_negative());
}

#[test]
fn odd_numbers_convert_to_themselves() {
    for unit in units(Kind::Length) {
        assert!(from_unit(f64::NAN, unit).is_nan() && to_unit(f64::NAN, unit).is_nan());
        assert_eq!(from_unit(f64::INFINITY, unit), f64::INFINITY);
        assert_eq!(to_unit(f64::NEG_INFINITY, unit), f64::NEG_INFINITY);
        assert_eq!(from_unit(-0.0, unit).to_bits(), (-0.0_f64).to_bits());
        assert_eq!(to_unit(-0.0, unit).to_bits(), (-0.0_f64).to_bits());
    }
}

#[test]
fn digits_round_half_up_and_carry() {
    let rounded = |value: f64, count| {
        Digits::shortest(value, &one())
            .significant(count)
            .text(false, -3, 7)
    };
    assert_eq!(rounded(0.99996, 4), "1");
    assert_eq!(rounded(0.99994, 4), "0.9999");
    assert_eq!(rounded(2.5, 1), "3");
    assert_eq!(rounded(1995.0, 3), "2000");
    assert_eq!(rounded(1.0005, 4), "1.001");
    let places = |value: f64, places| {
        Digits::shortest(value, &one())
            .decimals(places)
            .text(false, -3, 7)
    };
    assert_eq!(places(0.0005, 4), "0.0005");
    assert_eq!(places(0.0005, 3), "0.001");
    assert_eq!(places(0.0004, 3), "0");
    assert_eq!(places(0.00004, 3), "0");
    assert_eq!(places(99.9996, 3), "100");
}

#[test]
fn digits_become_text() {
    let text = |value: f64| Digits::shortest(value, &one()).text(value < 0.0, -3, 7);
    assert_eq!(text(0.0), "0");
    assert_eq!(text(-12.5), "-12.5");
    assert_eq!(text(1234567.0), "1234567");
    assert_eq!(text(12345678.0), "1.2345678e7");
    assert_eq!(text(1e8), "1e8");
    assert_eq!(text(0.00012), "0.00012");
    assert_eq!(text(0.000012), "1.2e-5");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    #[test]
    fn reading_agrees_with_the_standard_library(
        text in r"-?([0-9]{1,30}\.?[0-9]{0,30}|\.[0-9]{1,20})(e-?[0-9]{1,2})?"
    ) {
        let expected: f64 = text.parse().unwrap();
        prop_assert_eq!(parse_number(&text).unwrap().to_bits(), expected.to_bits());
    }

    #[test]
    fn reading_agrees_near_the_ends(digits in "[1-9][0-9]{0,25}", power in -350_i32..290) {
        let text = format!("{digits}e{power}");
        let expected: f64 = text.parse().unwrap();
        match parse_number(&text) {
            Ok(value) => prop_assert_eq!(value.to_bits(), expected.to_bits()),
            Err(_) => prop_assert!(expected.is_infinite()),
        }
    }

    #[test]
    fn shortest_digits_agree_with_the_standard_library(bits in any::<u64>()) {
        let value = f64::from_bits(bits);
        prop_assume!(value.is_finite() && value != 0.0);
        prop_assert_eq!(own_shortest(value), std_shortest(value));
    }

}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(100))]

    #[test]
    fn exact_text_reads_back_in_every_unit(bits in any::<u64>()) {
        let value = f64::from_bits(bits);
        prop_assume!(value.is_finite());
        for kind in Kind::ALL {
            for unit in units(*kind) {
                let text = format_exact(*kind, value, unit);
                let read = parse(*kind, &text);
                prop_assert!(read.is_ok(), "{} {:?}", text, read);
                prop_assert_eq!(read.unwrap().to_bits(), value.to_bits(), "{}", text);
                let digits = text.split(['e', ' ', '%']).next().unwrap();
                let count = digits.trim_start_matches(['-', '0', '.']).replace('.', "").trim_end_matches('0').len();
                prop_assert!(count <= 17, "{}", text);
            }
        }
    }

    #[test]
    fn numbers_and_text_give_the_same_bits(value in -1e6..1e6_f64) {
        for kind in Kind::ALL {
            for unit in units(*kind) {
                let text = format!("{value} {}", unit.symbol);
                prop_assert_eq!(from_unit(value, unit).to_bits(), parse(*kind, &text).unwrap().to_bits());
            }
        }
    }

    #[test]
    fn short_numbers_and_text_give_the_same_bits(whole in -10_000_000_i64..10_000_000, places in 0_usize..9) {
        let value: f64 = format!("{whole}e-{places}").parse().unwrap();
        for kind in Kind::ALL {
            for unit in units(*kind) {
                let text = format!("{value} {}", unit.symbol);
                prop_assert_eq!(from_unit(value, unit).to_bits(), parse(*kind, &text).unwrap().to_bits());
            }
        }
    }

    #[test]
    fn whole_numbers_survive_the_way_out(value in 1_u32..1_000_000) {
        for kind in Kind::ALL {
            for unit in units(*kind) {
                let there = from_unit(f64::from(value), unit);
                let back = to_unit(there, unit);
                prop_assert!((back - f64::from(value)).abs() <= back * f64::EPSILON, "{back} {value}");
            }
        }
    }
}
