//! Whole numbers of any size, as far as exact unit conversion needs them.

use core::cmp::Ordering;

/// A whole number from 0; limbs of 32 bits, least first, the last one never 0.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Natural {
    limbs: Vec<u32>,
}

/// The low 32 bits and the rest.
fn split(wide: u64) -> (u32, u64) {
    ((wide & 0xffff_ffff) as u32, wide >> 32)
}

impl Natural {
    pub(super) fn from_u64(value: u64) -> Natural {
        let (low, high) = split(value);
        let mut result = Natural {
            limbs: vec![low, (high & 0xffff_ffff) as u32],
        };
        result.trim();
        result
    }

    /// From decimal digits 0 to 9, most significant first.
    pub(super) fn from_digits(digits: impl IntoIterator<Item = u8>) -> Natural {
        let mut result = Natural { limbs: Vec::new() };
        let (mut chunk, mut scale) = (0_u32, 1_u32);
        for digit in digits {
            chunk = chunk * 10 + u32::from(digit);
            scale *= 10;
            if scale == 1_000_000_000 {
                result.multiply_add(scale, chunk);
                (chunk, scale) = (0, 1);
            }
        }
        result.multiply_add(scale, chunk);
        result
    }

    fn trim(&mut self) {
        while self.limbs.last() == Some(&0) {
            self.limbs.pop();
        }
    }

    pub(super) fn is_zero(&self) -> bool {
        self.limbs.is_empty()
    }

    /// Bits up to and with the highest one set; 0 for zero.
    pub(super) fn bits(&self) -> u64 {
        match self.limbs.last() {
            Some(last) => 32 * self.limbs.len() as u64 - u64::from(last.leading_zeros()),
            None => 0,
        }
    }

    /// The value where it fits into 64 bits.
    pub(super) fn to_u64(&self) -> Option<u64> {
        (self.limbs.len() <= 2).then(|| {
            self.limbs
                .iter()
                .rev()
                .fold(0, |value, limb| (value << 32) | u64::from(*limb))
        })
    }

    /// `self * factor + addend`, in place.
    pub(super) fn multiply_add(&mut self, factor: u32, addend: u32) {
        let mut carry = u64::from(addend);
        for limb in &mut self.limbs {
            let (low, high) = split(u64::from(*limb) * u64::from(factor) + carry);
            *limb = low;
            carry = high;
        }
        if carry != 0 {
            self.limbs.push((carry & 0xffff_ffff) as u32);
        }
        self.trim();
    }

    pub(super) fn times(&self, other: &Natural) -> Natural {
        let mut limbs = vec![0_u32; self.limbs.len() + other.limbs.len()];
        for (offset, a) in self.limbs.iter().enumerate() {
            let mut carry = 0;
            let mut slots = limbs.iter_mut().skip(offset);
            for b in &other.limbs {
                let Some(slot) = slots.next() else { break };
                let (low, high) = split(u64::from(*a) * u64::from(*b) + u64::from(*slot) + carry);
                *slot = low;
                carry = high;
            }
            // The place behind the last product is still untouched, so it takes the carry whole.
            if let Some(slot) = slots.next() {
                *slot = (carry & 0xffff_ffff) as u32;
            }
        }
        let mut result = Natural { limbs };
        result.trim();
        result
    }

    pub(super) fn times_power_of_ten(mut self, exponent: u64) -> Natural {
        for _ in 0..exponent / 9 {
            self.multiply_add(1_000_000_000, 0);
        }
        for _ in 0..exponent % 9 {
            self.multiply_add(10, 0);
        }
        self
    }

    pub(super) fn shifted_left(&self, bits: u64) -> Natural {
        if self.is_zero() {
            return self.clone();
        }
        let mut limbs = vec![0_u32; (bits / 32) as usize];
        let mut carry = 0;
        for limb in &self.limbs {
            let (low, high) = split((u64::from(*limb) << (bits % 32)) | carry);
            limbs.push(low);
            carry = high;
        }
        limbs.push((carry & 0xffff_ffff) as u32);
        let mut result = Natural { limbs };
        result.trim();
        result
    }

    fn halve(&mut self) {
        let mut carry = 0;
        for limb in self.limbs.iter_mut().rev() {
            let next = *limb << 31;
            *limb = (*limb >> 1) | carry;
            carry = next;
        }
        self.trim();
    }

    pub(super) fn plus(&self, other: &Natural) -> Natural {
        let length = self.limbs.len().max(other.limbs.len());
        let mut carry = 0;
        let mut limbs = Vec::with_capacity(length + 1);
        let mut a = self.limbs.iter();
        let mut b = other.limbs.iter();
        for _ in 0..=length {
            let sum = u64::from(a.next().copied().unwrap_or(0))
                + u64::from(b.next().copied().unwrap_or(0))
                + carry;
            let (low, high) = split(sum);
            limbs.push(low);
            carry = high;
        }
        let mut result = Natural { limbs };
        result.trim();
        result
    }

    /// Takes `other`, which is not larger, away.
    fn subtract(&mut self, other: &Natural) {
        let mut borrow = false;
        let mut others = other.limbs.iter();
        for limb in &mut self.limbs {
            let (once, under) = limb.overflowing_sub(others.next().copied().unwrap_or(0));
            let (twice, under_again) = once.overflowing_sub(u32::from(borrow));
            *limb = twice;
            borrow = under || under_again;
        }
        self.trim();
    }

    /// Divides by `divisor`, not 0, where the quotient has at most `bits` bits (up to 127);
    /// `self` becomes the remainder.
    pub(super) fn divide(&mut self, divisor: &Natural, bits: u64) -> u128 {
        let mut part = divisor.shifted_left(bits);
        let mut quotient = 0;
        for _ in 0..bits {
            part.halve();
            quotient <<= 1;
            if *self >= part {
                self.subtract(&part);
                quotient |= 1;
            }
        }
        quotient
    }
}

impl PartialOrd for Natural {
    fn partial_cmp(&self, other: &Natural) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Natural {
    fn cmp(&self, other: &Natural) -> Ordering {
        self.limbs
            .len()
            .cmp(&other.limbs.len())
            .then_with(|| self.limbs.iter().rev().cmp(other.limbs.iter().rev()))
    }
}
