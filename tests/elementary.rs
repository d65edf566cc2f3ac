//! The elementary functions against correctly rounded results, and what formulas rely on.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use core::f64::consts::{FRAC_PI_2, FRAC_PI_3, FRAC_PI_4, PI};
use gullet::elementary::{
    acos, asin, atan, cos, exp, fractional_power, inverse_half_versine, ln, pow, sin, tan,
};
use proptest::prelude::*;
use std::hint::black_box;

/// Correctly rounded results; `data/elementary.py` writes them with mpmath at 260 bits.
const REFERENCE: &str = include_str!("data/elementary.csv");

type Unary = (&'static str, fn(f64) -> f64);

const UNARY: [Unary; 9] = [
    ("exp", |x| exp(x)),
    ("ln", |x| ln(x)),
    ("sin", |x| sin(x)),
    ("cos", |x| cos(x)),
    ("tan", |x| tan(x)),
    ("asin", |x| asin(x)),
    ("acos", |x| acos(x)),
    ("atan", |x| atan(x)),
    ("inverse_half_versine", |x| inverse_half_versine(x)),
];

type Binary = (&'static str, fn(f64, f64) -> f64);

const BINARY: [Binary; 2] = [
    ("pow", |x, y| pow(x, y)),
    ("fractional_power", |x, y| fractional_power(x, y)),
];

fn unary(name: &str) -> fn(f64) -> f64 {
    UNARY.iter().find(|entry| entry.0 == name).unwrap().1
}

/// How many doubles lie between two results; the two zeros are one.
fn distance(a: f64, b: f64) -> u64 {
    assert!(!a.is_nan() && !b.is_nan());
    let place = |x: f64| {
        let size = (x.to_bits() & !(1 << 63)).cast_signed();
        if x.is_sign_negative() { -size } else { size }
    };
    place(a).abs_diff(place(b))
}

/// The largest distance from the reference, its argument, and the number of rows.
fn worst(name: &str) -> (u64, String, usize) {
    let bits = |text: &str| f64::from_bits(u64::from_str_radix(text, 16).unwrap());
    let mut worst = (0, String::new(), 0);
    for line in REFERENCE.lines().skip(1) {
        let fields: Vec<&str> = line.split(',').collect();
        if fields[0] != name {
            continue;
        }
        let x = bits(fields[1]);
        let binary = BINARY.iter().find(|entry| entry.0 == name);
        let (got, at) = if let Some((_, power)) = binary {
            let y = bits(fields[2]);
            (power(x, y), format!("{x:e}, {y:e}"))
        } else {
            (unary(name)(x), format!("{x:e}"))
        };
        let off = distance(got, bits(fields[3]));
        if off > worst.0 {
            worst = (off, at, worst.2);
        }
        worst.2 += 1;
    }
    worst
}

#[test]
fn results_are_within_their_bound_of_the_correctly_rounded_ones() {
    let mut missed = Vec::new();
    let unary = UNARY.into_iter().map(|entry| entry.0);
    for name in unary.chain(BINARY.into_iter().map(|entry| entry.0)) {
        let (off, at, rows) = worst(name);
        println!("{name}: at most {off} ulp over {rows} rows ({at})");
        assert!(rows > 1400, "{name} has {rows} rows only");
        let bound = if name == "pow" || name == "fractional_power" {
            2
        } else {
            1
        };
        if off > bound {
            missed.push(format!("{name}({at}): {off} ulp"));
        }
    }
    assert!(missed.is_empty(), "{missed:?}");
}

/// Equal in every bit, or both NaN.
fn same(got: f64, expected: f64) -> bool {
    got.to_bits() == expected.to_bits() || (got.is_nan() && expected.is_nan())
}

#[test]
fn special_values_are_those_of_ieee_754() {
    const INF: f64 = f64::INFINITY;
    const NAN: f64 = f64::NAN;
    let cases = [
        ("exp", 0.0, 1.0),
        ("exp", -0.0, 1.0),
        ("exp", INF, INF),
        ("exp", -INF, 0.0),
        ("exp", 1e300, INF),
        ("exp", -1e300, 0.0),
        ("exp", 710.0, INF),
        ("exp", -746.0, 0.0),
        ("exp", NAN, NAN),
        ("exp", -745.1, 5e-324),
        ("exp", f64::MIN_POSITIVE, 1.0),
        ("ln", 1.0, 0.0),
        ("ln", 0.0, -INF),
        ("ln", -0.0, -INF),
        ("ln", -1.0, NAN),
        ("ln", -5e-324, NAN),
        ("ln", INF, INF),
        ("ln", -INF, NAN),
        ("ln", NAN, NAN),
        ("ln", 5e-324, -744.4400719213812),
        ("sin", 0.0, 0.0),
        ("sin", -0.0, -0.0),
        ("sin", FRAC_PI_2, 1.0),
        ("sin", -FRAC_PI_2, -1.0),
        ("sin", PI, 1.2246467991473532e-16),
        ("sin", INF, NAN),
        ("sin", NAN, NAN),
        ("sin", 5e-324, 5e-324),
        ("cos", 0.0, 1.0),
        ("cos", -0.0, 1.0),
        ("cos", FRAC_PI_2, 6.123233995736766e-17),
        ("cos", PI, -1.0),
        ("cos", 2.0 * PI, 1.0),
        ("cos", -INF, NAN),
        ("cos", NAN, NAN),
        ("tan", 0.0, 0.0),
        ("tan", -0.0, -0.0),
        ("tan", FRAC_PI_2, 1.633123935319537e16),
        ("tan", -FRAC_PI_2, -1.633123935319537e16),
        ("tan", PI, -1.2246467991473532e-16),
        ("tan", INF, NAN),
        ("tan", NAN, NAN),
        ("tan", 5e-324, 5e-324),
        ("asin", 0.0, 0.0),
        ("asin", -0.0, -0.0),
        ("asin", 1.0, FRAC_PI_2),
        ("asin", -1.0, -FRAC_PI_2),
        ("asin", 1.0f64.next_up(), NAN),
        ("asin", -2.0, NAN),
        ("asin", INF, NAN),
        ("asin", NAN, NAN),
        ("acos", 1.0, 0.0),
        ("acos", -1.0, PI),
        ("acos", 0.0, FRAC_PI_2),
        ("acos", -0.0, FRAC_PI_2),
        ("acos", 1.0f64.next_up(), NAN),
        ("acos", -2.0, NAN),
        ("acos", -INF, NAN),
        ("acos", NAN, NAN),
        ("atan", 0.0, 0.0),
        ("atan", -0.0, -0.0),
        ("atan", 1.0, FRAC_PI_4),
        ("atan", -1.0, -FRAC_PI_4),
        ("atan", INF, FRAC_PI_2),
        ("atan", -INF, -FRAC_PI_2),
        ("atan", f64::MAX, FRAC_PI_2),
        ("atan", NAN, NAN),
        ("atan", 5e-324, 5e-324),
        ("inverse_half_versine", 0.0, 0.0),
        ("inverse_half_versine", 0.25, FRAC_PI_3),
        ("inverse_half_versine", 0.5, FRAC_PI_2),
        ("inverse_half_versine", 0.5f64.next_up(), NAN),
        ("inverse_half_versine", 1.0, NAN),
        ("inverse_half_versine", -5e-324, NAN),
        ("inverse_half_versine", INF, NAN),
        ("inverse_half_versine", NAN, NAN),
    ];
    for (name, x, expected) in cases {
        let got = unary(name)(x);
        assert!(
            same(got, expected),
            "{name}({x:e}) = {got:e}, not {expected:e}"
        );
    }
}

#[test]
fn special_powers_are_those_of_ieee_754_for_bases_that_are_not_negative() {
    const INF: f64 = f64::INFINITY;
    const NAN: f64 = f64::NAN;
    let cases = [
        (0.0, 0.0, 1.0),
        (0.0, 2.0, 0.0),
        (0.0, 1e-300, 0.0),
        (0.0, -1.0, INF),
        (0.0, INF, 0.0),
        (0.0, -INF, INF),
        (-0.0, 2.0, 0.0),
        (-0.0, 0.0, 1.0),
        (1.0, 1e300, 1.0),
        (1.0, INF, 1.0),
        (1.0, -INF, 1.0),
        (1.0, -3.5, 1.0),
        (INF, 0.0, 1.0),
        (INF, 1e-300, INF),
        (INF, -1e-300, 0.0),
        (INF, INF, INF),
        (INF, -INF, 0.0),
        (2.0, INF, INF),
        (2.0, -INF, 0.0),
        (0.5, INF, 0.0),
        (0.5, -INF, INF),
        (7.5, 0.0, 1.0),
        (7.5, -0.0, 1.0),
        (1.0f64.next_up(), INF, INF),
        (1.0f64.next_up(), -INF, 0.0),
        (1.0f64.next_down(), INF, 0.0),
        (f64::MAX, f64::MAX, INF),
        (f64::MAX, -f64::MAX, 0.0),
        (5e-324, f64::MAX, 0.0),
        (5e-324, -f64::MAX, INF),
        (3.0, 5e-324, 1.0),
        (2.0, 1024.0, INF),
        (2.0, -1074.0, 5e-324),
        (2.0, -1080.0, 0.0),
        (-1.0, 2.0, NAN),
        (-1.0, 0.0, NAN),
        (-INF, 1.0, NAN),
        (NAN, 1.0, NAN),
        (NAN, 0.0, NAN),
        (2.0, NAN, NAN),
        (0.0, NAN, NAN),
        (1.0, NAN, NAN),
        (INF, NAN, NAN),
    ];
    for (x, y, expected) in cases {
        let got = pow(x, y);
        assert!(
            same(got, expected),
            "pow({x:e}, {y:e}) = {got:e}, not {expected:e}"
        );
    }
}

#[test]
fn fractional_powers_outside_their_range_are_not_numbers() {
    const INF: f64 = f64::INFINITY;
    let cases = [
        (0.0, 0.5),
        (-0.0, 0.5),
        (-1.0, 0.5),
        (-INF, 0.5),
        (f64::NAN, 0.5),
        (2.0, f64::NAN),
        (2.0, 1.0f64.next_up()),
        (2.0, -2.0),
        (2.0, INF),
        (1.0, -INF),
    ];
    for (x, y) in cases {
        assert!(fractional_power(x, y).is_nan(), "{x:e}, {y:e}");
    }
    assert_eq!(fractional_power(5e-324, -1.0), INF);
    assert_eq!(fractional_power(INF, -0.25), pow(2.0, -256.0));
    assert_eq!(fractional_power(INF, 1.0), INF);
}

#[test]
fn powers_that_a_double_holds_exactly_come_out_exactly() {
    for k in 1..2000_u32 {
        let x = f64::from(k);
        assert_eq!(pow(x, 2.0), x * x, "{k} squared");
        assert_eq!(pow(x * x, 0.5), x, "root of {k} squared");
        assert_eq!(pow(x, 3.0), x * x * x, "{k} cubed");
    }
    for e in -1074..1024_i32 {
        let power = pow(2.0, f64::from(e));
        assert_eq!(
            power,
            if e < -1022 {
                f64::from_bits(1 << (e + 1074))
            } else {
                f64::from_bits(((e + 1023) as u64) << 52)
            },
            "2^{e}"
        );
    }
    assert_eq!(pow(10.0, 22.0), 1e22);
}

/// A well-mixed sequence of 64-bit numbers (splitmix64).
fn mixed(state: &mut u64) -> u64 {
    *state = state.wrapping_add(0x9e37_79b9_7f4a_7c15);
    let mut z = *state;
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}

/// Numbers evenly spread over `low..high`.
fn spread(low: f64, high: f64, count: usize) -> Vec<f64> {
    let mut state = 7;
    (0..count)
        .map(|_| low + (high - low) * ((mixed(&mut state) >> 11) as f64 / (1_u64 << 53) as f64))
        .collect()
}

/// FNV-1a over the bits of the results.
fn digest(results: &[f64]) -> u64 {
    results
        .iter()
        .flat_map(|x| x.to_bits().to_le_bytes())
        .fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
            (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
        })
}

macro_rules! in_a_loop {
    ($name:ident, $x:expr) => {{
        let x = black_box($x);
        let mut out = vec![0.0; x.len()];
        for (out, x) in out.iter_mut().zip(&x) {
            *out = $name(*x);
        }
        for (out, x) in out.iter().zip(&x) {
            let single = $name(black_box(*x));
            assert_eq!(
                out.to_bits(),
                single.to_bits(),
                "{} of {x:e} alone and in a loop",
                stringify!($name)
            );
        }
        (stringify!($name), digest(&out))
    }};
}

#[test]
fn bits_are_the_same_everywhere_and_do_not_change_unnoticed() {
    const N: usize = 100_000;
    let bases = black_box(spread(0.0, 100.0, N));
    let exponents: Vec<f64> = black_box(spread(-40.0, 3.0, N)).into_iter().rev().collect();
    let mut powers = vec![0.0; N];
    for ((out, x), y) in powers.iter_mut().zip(&bases).zip(&exponents) {
        *out = pow(*x, *y);
    }
    for ((out, x), y) in powers.iter().zip(&bases).zip(&exponents) {
        assert_eq!(out.to_bits(), pow(black_box(*x), *y).to_bits());
    }
    let mut fractional = vec![0.0; N];
    for ((out, x), y) in fractional.iter_mut().zip(&bases).zip(&exponents) {
        *out = fractional_power(*x, *y / 40.0);
    }
    for ((out, x), y) in fractional.iter().zip(&bases).zip(&exponents) {
        assert_eq!(
            out.to_bits(),
            fractional_power(black_box(*x), *y / 40.0).to_bits()
        );
    }
    let digests = [
        in_a_loop!(exp, spread(-746.0, 710.0, N)),
        in_a_loop!(ln, spread(0.0, 10.0, N)),
        in_a_loop!(sin, spread(-20.0, 20.0, N)),
        in_a_loop!(cos, spread(-20.0, 20.0, N)),
        in_a_loop!(tan, spread(-20.0, 20.0, N)),
        in_a_loop!(asin, spread(-1.0, 1.0, N)),
        in_a_loop!(acos, spread(-1.0, 1.0, N)),
        in_a_loop!(atan, spread(-6.0, 6.0, N)),
        in_a_loop!(inverse_half_versine, spread(0.0, 0.5, N)),
        ("pow", digest(&powers)),
        ("fractional_power", digest(&fractional)),
    ];
    let expected = [
        ("exp", 0x2ad4ab201dca6e1b),
        ("ln", 0x43630f09ec44bd7d),
        ("sin", 0xc91ca96e4abb1985),
        ("cos", 0x1407c88544e16ab2),
        ("tan", 0xb966ff43b5becbbc),
        ("asin", 0x57c6ce237cd3cc12),
        ("acos", 0x4ccf2ed84f09a532),
        ("atan", 0x943847a47351b098),
        ("inverse_half_versine", 0x8796365f3d8a5b61),
        ("pow", 0xfab3cc2e62ecc8df),
        ("fractional_power", 0x5cbf9045c28e97c9),
    ];
    assert_eq!(digests, expected);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 20_000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_argument_gives_a_sane_result(x in proptest::num::f64::ANY, y in proptest::num::f64::ANY) {
        prop_assert_eq!(exp(x).is_nan(), x.is_nan());
        prop_assert!(x.is_nan() || exp(x) >= 0.0);
        prop_assert_eq!(ln(x).is_nan(), x.is_nan() || x < 0.0);
        prop_assert!(!x.is_finite() || sin(x).abs() <= 1.0);
        prop_assert!(!x.is_finite() || cos(x).abs() <= 1.0);
        prop_assert_eq!(tan(x).is_finite(), x.is_finite());
        prop_assert_eq!(asin(x).is_nan(), x.is_nan() || x.abs() > 1.0);
        prop_assert_eq!(acos(x).is_nan(), x.is_nan() || x.abs() > 1.0);
        prop_assert!(x.is_nan() || atan(x).abs() <= FRAC_PI_2);
        prop_assert_eq!(pow(x, y).is_nan(), x.is_nan() || x < 0.0 || y.is_nan());
        prop_assert_eq!(pow(x.abs(), y).is_nan(), x.is_nan() || y.is_nan());
        let inside = x > 0.0 && y.abs() <= 1.0;
        prop_assert_eq!(fractional_power(x, y).is_nan(), !inside);
        prop_assert_eq!(inverse_half_versine(x).is_nan(), !(0.0..=0.5).contains(&x));
    }

    #[test]
    fn odd_functions_are_odd_and_cosine_is_even(x in proptest::num::f64::NORMAL, u in -1.0..1.0_f64) {
        for f in [sin, tan, atan] {
            prop_assert_eq!(f(-x).to_bits(), (-f(x)).to_bits());
        }
        prop_assert_eq!(cos(-x).to_bits(), cos(x).to_bits());
        prop_assert_eq!(asin(-u).to_bits(), (-asin(u)).to_bits());
    }

    #[test]
    fn squares_of_sine_and_cosine_sum_to_one(x in -1e6..1e6_f64) {
        prop_assert!((sin(x) * sin(x) + cos(x) * cos(x) - 1.0).abs() <= 5e-16);
        prop_assert!((tan(x) * cos(x) - sin(x)).abs() <= 5e-16);
    }

    #[test]
    fn inverses_lead_back(x in -700.0..700.0_f64, angle in -1.5..1.5_f64) {
        prop_assert!((ln(exp(x)) - x).abs() <= 2.3e-16 * (1.0 + x.abs()));
        prop_assert!((atan(tan(angle)) - angle).abs() <= 1e-15);
        prop_assert!((asin(sin(angle)) - angle).abs() <= 3e-16 / cos(angle));
        prop_assert!((acos(cos(angle)) - angle.abs()).abs() <= 3e-16 / sin(angle).abs().max(1e-8));
    }

    #[test]
    fn powers_of_one_and_zero(x in proptest::num::f64::POSITIVE, y in proptest::num::f64::NORMAL) {
        prop_assert_eq!(pow(x, 1.0), x);
        prop_assert_eq!(pow(x, 0.0), 1.0);
        prop_assert_eq!(pow(1.0, y), 1.0);
        prop_assert_eq!(fractional_power(x, 0.0), 1.0);
        prop_assert_eq!(fractional_power(1.0, y % 1.0), 1.0);
    }

    #[test]
    fn exponents_add(x in 1e-12..1e12_f64, a in -5.0..5.0_f64, b in -5.0..5.0_f64) {
        let together = pow(x, a + b);
        // The sum of the exponents is itself rounded, which the logarithm magnifies.
        let bound = 1e-15 + 5e-16 * ln(x).abs() * (a + b).abs();
        prop_assert!((pow(x, a) * pow(x, b) / together - 1.0).abs() <= bound);
    }
}
