//! Limits as an operation shows them, and who looks at them.

use crate::operation::WarningCode;
use crate::operation::limits::{EXCEEDED, Entry, LimitName, See, Side, share};
use crate::quantity::Ratio;
use crate::quantity::math::{number, pow, select, sqrt};

/// A limit with what moves its value.
#[derive(Clone, Copy)]
pub(crate) struct Look {
    pub entry: Entry,
    /// Exponent of the feed in the value; 0 where the feed does not move it.
    pub feed: Ratio,
    /// Exponent of the spindle speed in the value.
    pub speed: Ratio,
    /// Where the bound comes from.
    pub origin: &'static str,
    /// What would have to change to free it; empty where nothing is known.
    pub remedy: &'static str,
}

impl Look {
    #[inline(always)]
    fn new(name: LimitName, side: Side, value: f64, bound: f64) -> Look {
        Look {
            entry: Entry {
                number: name.lane(),
                side,
                value,
                bound,
                present: true,
            },
            feed: number(0.0),
            speed: number(0.0),
            origin: "",
            remedy: "",
        }
    }

    /// A value that must stay at or below its bound.
    #[inline(always)]
    pub(crate) fn most(name: LimitName, value: f64, bound: f64) -> Look {
        Look::new(name, Side::AtMost, value, bound)
    }

    /// A value that must stay at or above its bound.
    #[inline(always)]
    pub(crate) fn least(name: LimitName, value: f64, bound: f64) -> Look {
        Look::new(name, Side::AtLeast, value, bound)
    }

    /// Only there where this holds.
    #[inline(always)]
    pub(crate) fn only(mut self, present: bool) -> Look {
        self.entry.present = present;
        self
    }

    /// The value grows with this power of the feed.
    #[inline(always)]
    pub(crate) fn with_feed(mut self, exponent: Ratio) -> Look {
        self.feed = exponent;
        self
    }

    /// The value grows with this power of the spindle speed.
    #[inline(always)]
    pub(crate) fn with_speed(mut self, exponent: Ratio) -> Look {
        self.speed = exponent;
        self
    }

    /// Where the bound comes from.
    #[inline(always)]
    pub(crate) fn from(mut self, origin: &'static str) -> Look {
        self.origin = origin;
        self
    }

    /// What would free it.
    #[inline(always)]
    pub(crate) fn change(mut self, remedy: &'static str) -> Look {
        self.remedy = remedy;
        self
    }
}

/// Looks at limits, one after the other.
pub(crate) trait Eye {
    fn look(&mut self, look: Look);
}

/// Passes the limits on to those who see entries.
pub(crate) struct Entries<'s, S>(pub &'s mut S);

impl<S: See> Eye for Entries<'_, S> {
    #[inline(always)]
    fn look(&mut self, look: Look) {
        self.0.see(look.entry);
    }
}

/// Finds the factor by which a setting must fall so that the limits it moves hold.
///
/// Of the limits that move alike the one that is exceeded most is kept, so that each kind takes one root
/// however many limits there are. Powers other than the first two are taken as one kind: where two differ,
/// the next round sees the other.
pub(crate) struct Lower {
    /// Whether the feed is lowered, else the spindle speed.
    feed: bool,
    linear: Most,
    square: Most,
    power: Most,
    exponent: Ratio,
}

/// The limit that is exceeded most: its share and its number.
#[derive(Clone, Copy)]
struct Most {
    share: f64,
    number: f64,
}

impl Most {
    const NONE: Most = Most {
        share: 1.0,
        number: 0.0,
    };

    #[inline(always)]
    fn take(&mut self, holds: bool, share: f64, number: f64) -> bool {
        let larger = holds & (share > self.share);
        self.share = if larger { share } else { self.share };
        self.number = if larger { number } else { self.number };
        larger
    }
}

impl Lower {
    /// For the feed, or else for the spindle speed.
    #[inline(always)]
    pub(crate) fn new(feed: bool) -> Lower {
        Lower {
            feed,
            linear: Most::NONE,
            square: Most::NONE,
            power: Most::NONE,
            exponent: number(1.0),
        }
    }

    /// The smallest factor, and the number of the limit that asks for it; 1 and 0 where all hold.
    #[inline(always)]
    pub(crate) fn factor(&self) -> (Ratio, Ratio) {
        let linear = number(1.0 / self.linear.share);
        let square = number(1.0) / sqrt(number(self.square.share));
        let power = pow(number(self.power.share), number(-1.0) / self.exponent);
        let by_square = square.value < linear.value;
        let factor = select(by_square, square, linear);
        let of = select(
            by_square,
            number(self.square.number),
            number(self.linear.number),
        );
        let by_power = power.value < factor.value;
        (
            select(by_power, power, factor),
            select(by_power, number(self.power.number), of),
        )
    }
}

impl Eye for Lower {
    #[inline(always)]
    fn look(&mut self, look: Look) {
        let exponent = if self.feed { look.feed } else { look.speed };
        let entry = look.entry;
        let share = share(entry.side, entry.value, entry.bound);
        let moves = entry.present & (share > EXCEEDED);
        let (one, two) = (exponent.value == 1.0, exponent.value == 2.0);
        let other = (exponent.value > 0.0) & !one & !two;
        self.linear.take(moves & one, share, entry.number);
        self.square.take(moves & two, share, entry.number);
        let taken = self.power.take(moves & other, share, entry.number);
        self.exponent = select(taken, exponent, self.exponent);
    }
}

/// Hears the doubts of an operation.
pub(crate) trait Doubt {
    fn doubt(&mut self, holds: bool, code: WarningCode, text: &'static str);
}

/// Doubts as bits.
pub(crate) struct Bits(pub u8);

impl Doubt for Bits {
    #[inline(always)]
    fn doubt(&mut self, holds: bool, code: WarningCode, _: &'static str) {
        let bit = 1u8 << (code as u8);
        self.0 |= if holds { bit } else { 0 };
    }
}
