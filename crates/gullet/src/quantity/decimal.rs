//! Exact fractions between text and doubles: correctly rounded one way, shortest digits the other.

use super::kind::Unit;
use super::natural::Natural;

/// Decimal exponents beyond this lie outside every double in every unit.
const FAR: i64 = 700;

/// An exact number from 0: `numerator / denominator`.
#[derive(Debug, Clone)]
pub(super) struct Fraction {
    numerator: Natural,
    denominator: Natural,
}

impl Fraction {
    /// `digits * 10^exponent`. Where that is beyond every double in every unit, any number that
    /// also is takes its place, so that an exponent costs no time.
    pub(super) fn decimal(digits: &[u8], exponent: i64) -> Fraction {
        let significant = digits.iter().skip_while(|digit| **digit == 0).copied();
        let magnitude = significant.clone().count() as i64 + exponent;
        let zero = significant.clone().next().is_none();
        let (numerator, exponent) = if zero {
            (Natural::from_u64(0), 0)
        } else if magnitude < -FAR {
            (Natural::from_u64(1), -FAR)
        } else if magnitude > FAR {
            (Natural::from_u64(1), FAR)
        } else {
            (Natural::from_digits(significant), exponent)
        };
        let one = Natural::from_u64(1);
        if exponent < 0 {
            Fraction {
                numerator,
                denominator: one.times_power_of_ten(exponent.unsigned_abs()),
            }
        } else {
            Fraction {
                numerator: numerator.times_power_of_ten(exponent.unsigned_abs()),
                denominator: one,
            }
        }
    }

    /// `whole + numerator / denominator` from their digits; `None` where the denominator is 0.
    pub(super) fn mixed(whole: &[u8], numerator: &[u8], denominator: &[u8]) -> Option<Fraction> {
        let whole = Natural::from_digits(whole.iter().copied());
        let numerator = Natural::from_digits(numerator.iter().copied());
        let denominator = Natural::from_digits(denominator.iter().copied());
        (!denominator.is_zero()).then(|| Fraction {
            numerator: whole.times(&denominator).plus(&numerator),
            denominator,
        })
    }

    /// The size of a unit.
    pub(super) fn of_unit(unit: &Unit) -> Fraction {
        Fraction::written(unit.numerator).over(&Fraction::written(unit.denominator))
    }

    /// A plain decimal such as `0.0254`, as the table of units writes it.
    fn written(text: &str) -> Fraction {
        let digits: Vec<u8> = text
            .bytes()
            .filter(u8::is_ascii_digit)
            .map(|byte| byte - b'0')
            .collect();
        let places = text.split_once('.').map_or(0, |(_, tail)| tail.len());
        Fraction::decimal(&digits, -(places as i64))
    }

    /// The magnitude of a finite double.
    pub(super) fn of_double(value: f64) -> Fraction {
        let (mantissa, exponent) = parts(value);
        let mantissa = Natural::from_u64(mantissa);
        let one = Natural::from_u64(1);
        if exponent < 0 {
            Fraction {
                numerator: mantissa,
                denominator: one.shifted_left(exponent.unsigned_abs()),
            }
        } else {
            Fraction {
                numerator: mantissa.shifted_left(exponent.unsigned_abs()),
                denominator: one,
            }
        }
    }

    /// Ten to a power.
    pub(super) fn power_of_ten(power: i32) -> Fraction {
        Fraction::decimal(&[1], i64::from(power))
    }

    pub(super) fn times(&self, other: &Fraction) -> Fraction {
        Fraction {
            numerator: self.numerator.times(&other.numerator),
            denominator: self.denominator.times(&other.denominator),
        }
    }

    /// Divided by `other`, not 0.
    pub(super) fn over(&self, other: &Fraction) -> Fraction {
        Fraction {
            numerator: self.numerator.times(&other.denominator),
            denominator: self.denominator.times(&other.numerator),
        }
    }

    /// Whether it is at least 1.
    pub(super) fn is_improper(&self) -> bool {
        self.numerator >= self.denominator
    }

    /// The nearest double, ties to even; infinity beyond the largest.
    pub(super) fn to_f64(&self) -> f64 {
        if self.numerator.is_zero() {
            return 0.0;
        }
        let exact = |natural: &Natural| natural.to_u64().filter(|value| *value <= 1 << 53);
        if let (Some(a), Some(b)) = (exact(&self.numerator), exact(&self.denominator)) {
            // Both are doubles, and the division rounds once.
            return a as f64 / b as f64;
        }
        // Scaled so that the quotient has 65 or 66 bits: enough to round by, with the remainder.
        let shift = 65 + self.denominator.bits() as i64 - self.numerator.bits() as i64;
        let up = shift.max(0).unsigned_abs();
        let down = (-shift).max(0).unsigned_abs();
        let mut remainder = self.numerator.shifted_left(up);
        let quotient = remainder.divide(&self.denominator.shifted_left(down), 66);
        let bits = 128 - i64::from(quotient.leading_zeros());
        let exponent = bits - 1 - shift;
        if exponent > 1023 {
            return f64::INFINITY;
        }
        // Below the normal range a double keeps fewer bits.
        let kept = 53.min(53 + 1022 + exponent);
        if kept < 0 {
            return 0.0;
        }
        let dropped = bits - kept;
        let mantissa = (quotient >> dropped) as u64;
        let rest = quotient & ((1 << dropped) - 1);
        let half = 1_u128 << (dropped - 1);
        let up = rest > half || (rest == half && (!remainder.is_zero() || mantissa % 2 == 1));
        // A carry out of the mantissa raises the exponent field by itself, up to infinity.
        let field = (exponent + 1022).max(0).unsigned_abs() << 52;
        f64::from_bits(field + mantissa + u64::from(up))
    }
}

/// A number as the sum of two doubles, the second far smaller: about 106 bits.
#[derive(Debug, Clone, Copy)]
pub(super) struct Twofold {
    pub(super) head: f64,
    pub(super) tail: f64,
}

impl Fraction {
    /// As two doubles; for numbers from 1e-200 to 1e200, as units and powers of ten are.
    pub(super) fn twofold(&self) -> Twofold {
        // Scaled so that the quotient has 119 or 120 bits.
        let shift = 119 + self.denominator.bits() as i64 - self.numerator.bits() as i64;
        let up = shift.max(0).unsigned_abs();
        let down = (-shift).max(0).unsigned_abs();
        let mut rest = self.numerator.shifted_left(up);
        let quotient = rest.divide(&self.denominator.shifted_left(down), 120);
        let low_bits = 128 - i64::from(quotient.leading_zeros()) - 53;
        let low = quotient & ((1 << low_bits) - 1);
        let power = |exponent: i64| f64::from_bits(((exponent + 1023).max(1) as u64) << 52);
        Twofold {
            head: (quotient >> low_bits) as f64 * power(low_bits - shift),
            tail: low as f64 * power(-shift),
        }
    }
}

/// Mantissa and exponent of the magnitude of a finite double: `mantissa * 2^exponent`.
fn parts(value: f64) -> (u64, i64) {
    let bits = value.to_bits();
    let fraction = bits & ((1 << 52) - 1);
    match (bits >> 52) & 0x7ff {
        0 => (fraction, -1074),
        field => (fraction | (1 << 52), field as i64 - 1075),
    }
}

/// Decimal digits of a magnitude: `0.d1 d2 d3 ... * 10^point`; none for zero.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Digits {
    pub(super) digits: Vec<u8>,
    pub(super) point: i64,
}

impl Digits {
    /// The fewest digits of `|value| / size` that no other double is nearest to.
    ///
    /// Digits are taken off the exact quotient until what is left is smaller than half the gap to
    /// the neighbouring doubles. As a double's gap is more than 1e-16 of it, 17 digits suffice in
    /// every unit.
    pub(super) fn shortest(value: f64, size: &Fraction) -> Digits {
        let (mantissa, exponent) = parts(value);
        if mantissa == 0 {
            return Digits {
                digits: Vec::new(),
                point: 0,
            };
        }
        // The gap below a power of two is half the gap above it.
        let uneven = mantissa == 1 << 52 && exponent > -1074;
        let scale = if uneven { 2 } else { 1 };
        let up = exponent.max(0).unsigned_abs();
        let down = (-exponent).max(0).unsigned_abs();
        let mut gap_below = size.denominator.shifted_left(up);
        let mut gap_above = gap_below.shifted_left(scale - 1);
        let mut rest = gap_below
            .shifted_left(scale)
            .times(&Natural::from_u64(mantissa));
        let mut unit = size.numerator.shifted_left(down + scale);
        // A text halfway between two doubles is read as the one with the even mantissa.
        let inclusive = mantissa % 2 == 0;
        let reaches = |rest: &Natural, gap: &Natural, unit: &Natural| {
            let end = rest.plus(gap);
            end > *unit || (inclusive && end == *unit)
        };

        let mut point = (rest.bits() as i64 - unit.bits() as i64) * 30_103 / 100_000;
        let power = point.unsigned_abs();
        if point >= 0 {
            unit = unit.times_power_of_ten(power);
        } else {
            rest = rest.times_power_of_ten(power);
            gap_below = gap_below.times_power_of_ten(power);
            gap_above = gap_above.times_power_of_ten(power);
        }
        while reaches(&rest, &gap_above, &unit) {
            unit.multiply_add(10, 0);
            point += 1;
        }
        let mut digits = Vec::new();
        loop {
            rest.multiply_add(10, 0);
            gap_below.multiply_add(10, 0);
            gap_above.multiply_add(10, 0);
            let digit = rest.divide(&unit, 4) as u8;
            let low = rest < gap_below || (inclusive && rest == gap_below);
            let high = reaches(&rest, &gap_above, &unit);
            if !low && !high {
                // Zeros in front only say that the estimate of the point was one too high.
                if digit == 0 && digits.is_empty() {
                    point -= 1;
                } else {
                    digits.push(digit);
                }
                continue;
            }
            let nearer_above = rest.plus(&rest) >= unit;
            digits.push(digit + u8::from(high && (!low || nearer_above)));
            return Digits { digits, point };
        }
    }

    /// Rounded half up to so many significant digits; trailing zeros are dropped.
    pub(super) fn significant(mut self, count: i64) -> Digits {
        let count = usize::try_from(count).ok();
        let up = count
            .and_then(|count| self.digits.get(count))
            .is_some_and(|digit| *digit >= 5);
        self.digits.truncate(count.unwrap_or(0));
        if up {
            while self.digits.last() == Some(&9) {
                self.digits.pop();
            }
            if let Some(last) = self.digits.last_mut() {
                *last += 1;
            } else {
                self.digits.push(1);
                self.point += 1;
            }
        }
        while self.digits.last() == Some(&0) {
            self.digits.pop();
        }
        self
    }

    /// Rounded half up to so many places behind the point; trailing zeros are dropped.
    pub(super) fn decimals(self, places: i64) -> Digits {
        let count = self.point + places;
        self.significant(count)
    }

    /// The number as text: plain where the point stands from `least` to `most`, else scientific.
    pub(super) fn text(&self, negative: bool, least: i64, most: i64) -> String {
        let mut text = String::from(if negative { "-" } else { "" });
        let mut digits = self.digits.iter().map(|digit| char::from(b'0' + digit));
        let count = self.digits.len() as i64;
        if count == 0 {
            text.push('0');
        } else if self.point < least || self.point > most {
            text.extend(digits.next());
            if count > 1 {
                text.push('.');
                text.extend(digits);
            }
            text += &format!("e{}", self.point - 1);
        } else if self.point <= 0 {
            text += "0.";
            text.extend((self.point..0).map(|_| '0'));
            text.extend(digits);
        } else {
            text.extend((0..self.point).map(|_| digits.next().unwrap_or('0')));
            if count > self.point {
                text.push('.');
                text.extend(digits);
            }
        }
        text
    }
}
