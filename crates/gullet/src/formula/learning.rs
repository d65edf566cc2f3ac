//! Learning: what a unit and a lot take as hands get used to the work, by the unit curve and by the
//! curve of the cumulative average.

use super::define::formulas;
use crate::quantity::Ratio;
use crate::quantity::math::{ln, number, pow, select};

formulas! {
    topic "learning";

    learning_unit_time {
        symbol "t_x", "t_x";
        meaning "Time of a unit after learning on the units before it.";
        first_unit_time t_1: Time, from 0.0, "time of the first unit";
        learning_rate r: Ratio, above 0.0, to 1.0, "time of a unit over the time of the unit half its number";
        unit x: Count, from 1.0, "number of the unit";
        -> Time;
        equation "t_x = t_1 x^(log2(r))", r"t_x = t_1\, x^{\log_2 r}";
        valid "unit curve (Crawford), not the cumulative average (Wright): taking one for the other errs by a third at 80 %";
        source "unit learning curve, from memory; T.P. Wright, Factors affecting the cost of airplanes, quoted";
        example "first_unit_time=60 min; learning_rate=90 %; unit=4" => "48.6 min", 1e-12, "identity: 60 x 0.9^2 min";
        = t_1 * pow(x, super::exponent(r))
    }

    learning_total_time_unit_curve {
        symbol "t", "t";
        meaning "Time of the first units together, where the time of a unit falls by the rate at every doubling.";
        first_unit_time t_1: Time, from 0.0, "time of the first unit";
        learning_rate r: Ratio, above 0.0, to 1.0, "time of a unit over the time of the unit half its number";
        units N: Count, from 1.0, "units made";
        -> Time;
        equation "t = t_1 S; S = sum of x^(log2(r)) over x from 1 to N", r"t = t_1 \sum_{x=1}^{N} x^{\log_2 r}";
        valid "unit curve (Crawford); the sum by its first terms and the Euler-Maclaurin formula, to rounding for any number of units";
        source "sum of the unit learning curve; example: C.T. Horngren et al., Cost Accounting, incremental unit-time learning model, from memory";
        example "first_unit_time=100 h; learning_rate=80 %; units=4" => "314.21 h", 2e-5,
            "C.T. Horngren et al., Cost Accounting: A Managerial Emphasis, exhibit of the incremental unit-time learning model, from memory";
        = t_1 * super::power_sum(N, super::exponent(r))
    }

    learning_average_time {
        symbol "t_m", "t_m";
        meaning "Mean time of the first units, where that mean falls by the rate at every doubling.";
        first_unit_time t_1: Time, from 0.0, "time of the first unit";
        learning_rate r: Ratio, above 0.0, to 1.0, "mean time of so many units over that of half as many";
        units N: Count, from 1.0, "units made";
        -> Time;
        equation "t_m = t_1 N^(log2(r))", r"t_m = t_1\, N^{\log_2 r}";
        valid "cumulative average (Wright), not the unit curve (Crawford): taking one for the other errs by a third at 80 %";
        source "T.P. Wright, Factors affecting the cost of airplanes, quoted; example: C.T. Horngren et al., Cost Accounting, cumulative average-time learning model, from memory";
        example "first_unit_time=100 h; learning_rate=80 %; units=7" => "53.45 h", 1e-4,
            "C.T. Horngren et al., Cost Accounting: A Managerial Emphasis, exhibit of the cumulative average-time learning model, from memory";
        = t_1 * pow(N, super::exponent(r))
    }

    learning_total_time_cumulative_average {
        symbol "t", "t";
        meaning "Time of the first units together, where their mean falls by the rate at every doubling.";
        first_unit_time t_1: Time, from 0.0, "time of the first unit";
        learning_rate r: Ratio, above 0.0, to 1.0, "mean time of so many units over that of half as many";
        units N: Count, from 1.0, "units made";
        -> Time;
        equation "t = N t_1 N^(log2(r))", r"t = N\, t_1\, N^{\log_2 r}";
        valid "cumulative average (Wright), not the unit curve (Crawford): taking one for the other errs by a third at 80 %";
        source "T.P. Wright, Factors affecting the cost of airplanes, quoted; example: C.T. Horngren et al., Cost Accounting, cumulative average-time learning model, from memory";
        example "first_unit_time=100 h; learning_rate=80 %; units=3" => "210.63 h", 3e-5,
            "C.T. Horngren et al., Cost Accounting: A Managerial Emphasis, exhibit of the cumulative average-time learning model, from memory";
        = N * super::learning_average_time::value(t_1, r, N)
    }

    mean_unit_time {
        symbol "t_m", "t_m";
        meaning "Mean time of the units of a lot.";
        total_time t: Time, from 0.0, "time of all the units";
        units N: Count, from 1.0, "units made";
        -> Time;
        equation "t_m = t/N", r"t_m = \frac{t}{N}";
        valid "any curve of learning, or none";
        source "definition";
        example "total_time=314.21 h; units=4" => "78.5525 h", 1e-12, "identity: 314.21/4";
        = t / N
    }
}

/// log2 of a learning rate.
#[inline(always)]
fn exponent(rate: Ratio) -> Ratio {
    ln(rate) / ln(number(2.0))
}

/// The first unit that the Euler-Maclaurin formula serves; those before it are added one by one.
const FIRST: u32 = 16;

/// B_2k/(2k)! for k from 1: what is left out then is below the rounding of the sum.
const BERNOULLI: [f64; 5] = [
    1.0 / 12.0,
    -1.0 / 720.0,
    1.0 / 30_240.0,
    -1.0 / 1_209_600.0,
    1.0 / 47_900_160.0,
];

/// Sum of x^b over the whole x from 1 to `count`, for b <= 0.
#[inline(always)]
fn power_sum(count: Ratio, b: Ratio) -> Ratio {
    let mut sum = number(1.0);
    for x in 2..FIRST {
        let x = number(f64::from(x));
        sum += select(x.value <= count.value, pow(x, b), number(0.0));
    }
    let first = number(f64::from(FIRST));
    let beyond = count.value >= first.value;
    // Held at the first unit, where there is no tail, so that nothing below overflows.
    let last = select(beyond, count, first);
    let tail =
        integral(first, last, b) + (pow(first, b) + pow(last, b)) / 2.0 + derivatives(last, b)
            - derivatives(first, b);
    sum + select(beyond, tail, number(0.0))
}

/// Integral of x^b between two ends: first^(1 + b) (e^u - 1)/(1 + b) with u = (1 + b) ln(last/first);
/// by its series where u is small.
#[inline(always)]
fn integral(first: Ratio, last: Ratio, b: Ratio) -> Ratio {
    let power = number(1.0) + b;
    let logarithm = ln(last / first);
    let u = power * logarithm;
    let mut series = number(1.0);
    for k in (2..12).rev() {
        series = number(1.0) + u / f64::from(k) * series;
    }
    let grown = select(
        u.value.abs() < 0.1,
        logarithm * series,
        (pow(last / first, power) - number(1.0)) / power,
    );
    pow(first, power) * grown
}

/// Sum of B_2k/(2k)! times the (2k - 1)-th derivative of x^b.
#[inline(always)]
fn derivatives(x: Ratio, b: Ratio) -> Ratio {
    let mut derivative = b * pow(x, b) / x;
    let mut sum = number(0.0);
    for (k, factor) in BERNOULLI.iter().enumerate() {
        sum += *factor * derivative;
        let order = number((2 * k) as f64);
        derivative = derivative * (b - order - number(1.0)) / x * (b - order - number(2.0)) / x;
    }
    sum
}
