//! Whole columns of numbers from and to a unit: the bits of [`Converter`], without its exact
//! arithmetic but where a rounding is in doubt.

use super::convert::Converter;
use super::decimal::{Fraction, Twofold};
use super::kind::Unit;
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

/// Powers of ten that a column's numbers are read with; others take the exact way.
const POWERS: core::ops::RangeInclusive<i32> = -32..=12;

/// Part of a product that its two doubles leave open; four times what the roundings add up to.
const DOUBT: f64 = 1.0 / ((1_u64 << 49) as f64 * (1_u64 << 49) as f64);

/// Products beyond these might lose bits below the smallest double.
const SAFE: core::ops::Range<f64> = 1e-250..1e250;

/// Converts columns of numbers in one unit; each number gets the bits of [`Converter`].
///
/// ```
/// use gullet::quantity::{ColumnConverter, Kind, unit};
/// let inches = ColumnConverter::new(unit(Kind::Length, "in")?);
/// let mut column = [0.5, 1.25];
/// inches.to_si(&mut column);
/// assert_eq!(column, [0.0127, 0.03175]);
/// inches.from_si(&mut column);
/// assert_eq!(column, [0.5, 1.25]);
/// # Ok::<(), gullet::Error>(())
/// ```
#[derive(Debug, Clone)]
pub struct ColumnConverter {
    exact: Converter,
    /// One factor or divisor that a double holds exactly.
    single: Option<Single>,
    /// Units in an SI unit.
    inverse: Twofold,
    size: Fraction,
    /// The unit's size times each of [`POWERS`], made when the first long number is read.
    powers: OnceLock<Vec<Twofold>>,
}

#[derive(Debug, Clone, Copy)]
enum Single {
    Times(f64),
    Over(f64),
}

impl ColumnConverter {
    /// For numbers in this unit.
    pub fn new(unit: &Unit) -> ColumnConverter {
        let exact = Converter::new(unit);
        let size = Fraction::of_unit(unit);
        let one = Fraction::power_of_ten(0);
        let single = match exact.quotient() {
            Some((1.0, below)) => Some(Single::Times(below)),
            Some((above, 1.0)) => Some(Single::Over(above)),
            _ => None,
        };
        ColumnConverter {
            single,
            inverse: one.over(&size).twofold(),
            powers: OnceLock::new(),
            size,
            exact,
        }
    }

    /// The one for all columns in units of this size, made at its first use: its exact arithmetic takes
    /// longer than some hundred numbers.
    ///
    /// ```
    /// use gullet::quantity::{ColumnConverter, Kind, unit};
    /// let mut column = [0.5];
    /// ColumnConverter::shared(unit(Kind::Length, "in")?).to_si(&mut column);
    /// assert_eq!(column, [0.0127]);
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn shared(unit: &'static Unit) -> Arc<ColumnConverter> {
        type Size = (&'static str, &'static str);
        static MADE: Mutex<BTreeMap<Size, Arc<ColumnConverter>>> = Mutex::new(BTreeMap::new());
        MADE.lock()
            .unwrap_or_else(PoisonError::into_inner)
            .entry((unit.numerator, unit.denominator))
            .or_insert_with(|| Arc::new(ColumnConverter::new(unit)))
            .clone()
    }

    /// Numbers in the unit become SI values, as [`Converter::to_si`] reads them.
    pub fn to_si(&self, column: &mut [f64]) {
        for value in column {
            *value = self
                .exact
                .short_to_si(*value)
                .or_else(|| self.long_to_si(*value))
                .unwrap_or_else(|| self.exact.to_si(*value));
        }
    }

    /// SI values become numbers in the unit, as [`Converter::from_si`] gives them.
    pub fn from_si(&self, column: &mut [f64]) {
        match self.single {
            // One rounding of two exact numbers is the nearest double.
            Some(Single::Times(factor)) => column.iter_mut().for_each(|value| *value *= factor),
            Some(Single::Over(divisor)) => column.iter_mut().for_each(|value| *value /= divisor),
            None => {
                for value in column {
                    *value = self
                        .inverse
                        .times(*value, 0.0)
                        .unwrap_or_else(|| self.exact.from_si(*value));
                }
            }
        }
    }

    fn powers(&self) -> &[Twofold] {
        self.powers.get_or_init(|| {
            POWERS
                .map(|power| self.size.times(&Fraction::power_of_ten(power)).twofold())
                .collect()
        })
    }

    /// A number of many digits, by its shortest decimal text.
    fn long_to_si(&self, value: f64) -> Option<f64> {
        if !value.is_finite() {
            return None;
        }
        let magnitude = value.abs();
        let (digits, power) = if may_be_halfway(magnitude) {
            shortest(&format!("{magnitude:e}"))?
        } else {
            shortest(ryu::Buffer::new().format_finite(magnitude))?
        };
        let place = usize::try_from(power.checked_sub(*POWERS.start())?).ok()?;
        let scale = self.powers().get(place)?;
        let head = digits as f64;
        // At most 17 digits: the difference is a small whole number.
        let rest = (digits as i64).wrapping_sub(head as i64) as f64;
        Some(scale.times(head, rest)?.copysign(value))
    }
}

/// Whether the number may lie halfway between two texts of 17 digits, of which `ryu` takes the even
/// and the standard library the upper one. It then has 18 digits in all: below 2^30 such a number
/// ends in more than eight zero bits.
fn may_be_halfway(magnitude: f64) -> bool {
    magnitude >= 1_073_741_824.0 || magnitude.to_bits().trailing_zeros() >= 8
}

/// Digits and power of ten of a number in text.
fn shortest(text: &str) -> Option<(u64, i32)> {
    let (number, exponent) = match text.split_once('e') {
        Some((number, exponent)) => (number, exponent.parse().ok()?),
        None => (text, 0_i32),
    };
    let mut digits = 0_u64;
    let mut places = 0;
    let mut behind = false;
    for byte in number.bytes() {
        match byte {
            b'.' => behind = true,
            _ => {
                digits = digits
                    .checked_mul(10)?
                    .checked_add(u64::from(byte.wrapping_sub(b'0')))?;
                places += i32::from(behind);
            }
        }
    }
    (digits < 1 << 60).then_some((digits, exponent - places))
}

impl Twofold {
    /// The double nearest to `(head + rest) * self`, where `rest` is below the last bit of `head`;
    /// none where the rounding is in doubt.
    #[inline(always)]
    fn times(&self, head: f64, rest: f64) -> Option<f64> {
        let product = head * self.head;
        let (a, b) = halves(head);
        let (c, d) = halves(self.head);
        let error = ((a * c - product) + a * d + b * c) + b * d;
        let tail = error + (head * self.tail + rest * self.head);
        let doubt = product.abs() * DOUBT;
        let (low, high) = (product + (tail - doubt), product + (tail + doubt));
        (low == high && SAFE.contains(&product.abs())).then_some(low)
    }
}

/// A double as the sum of two of at most 26 bits, after Dekker.
#[inline(always)]
fn halves(value: f64) -> (f64, f64) {
    let scaled = value * 134_217_729.0;
    let head = scaled - (scaled - value);
    (head, value - head)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use crate::quantity::{Kind, units};

    /// Numbers of every length and size, and the edges.
    fn numbers() -> Vec<f64> {
        let mut state = 0x9e37_79b9_7f4a_7c15_u64;
        let mut random = move || {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            state
        };
        let mut all = vec![
            0.0,
            -0.0,
            1.0,
            0.1,
            0.3,
            1e22,
            1e23,
            5e-324,
            f64::MIN_POSITIVE,
            f64::MAX,
            f64::NAN,
            f64::INFINITY,
            f64::NEG_INFINITY,
            9_007_199_254_740_993.0,
            0.1_f32.into(),
        ];
        for _ in 0..80 {
            all.push(f64::from_bits(random()));
            let share = random() as f64 / u64::MAX as f64;
            all.push(share * 10.0);
            all.push(-share * 1e-4);
            all.push((share * 1e6).round() / 1e4);
            all.push(f64::from((share * 100.0) as f32));
        }
        all
    }

    #[test]
    fn columns_get_the_bits_of_single_numbers_in_every_unit() {
        let numbers = numbers();
        for unit in Kind::ALL.iter().flat_map(|kind| units(*kind)) {
            let (one, columns) = (Converter::new(unit), ColumnConverter::new(unit));
            let (mut to, mut from) = (numbers.clone(), numbers.clone());
            columns.to_si(&mut to);
            columns.from_si(&mut from);
            for ((number, to), from) in numbers.iter().zip(to).zip(from) {
                let symbol = unit.symbol;
                let bits = |value: f64| if value.is_nan() { 0 } else { value.to_bits() };
                assert_eq!(bits(to), bits(one.to_si(*number)), "{number:?} {symbol}");
                assert_eq!(
                    bits(from),
                    bits(one.from_si(*number)),
                    "{number:?} to {symbol}"
                );
            }
        }
    }

    #[test]
    fn few_numbers_take_the_exact_way() {
        let columns = ColumnConverter::new(units(Kind::Power).first().unwrap());
        let doubtful = (1..10_000)
            .map(|i| f64::from(i) * 0.618_033_988_749_895)
            .filter(|value| columns.long_to_si(*value).is_none())
            .count();
        assert_eq!(doubtful, 0);
    }
}
