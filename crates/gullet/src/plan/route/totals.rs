//! Time and cost of a route: entries of any kind of work, and their sum.

use crate::error::Result;
use crate::formula::cost;
use crate::plan::PassTime;
use crate::quantity::{MoneyRate, Time, si};

/// One line of a route's summary: a clamping, or any other work on the part.
///
/// ```
/// use gullet::plan::{RouteEntry, RouteTotals, TimeParts};
/// use gullet::quantity::si;
/// let sawing = RouteEntry {
///     name: "Saw to length".to_owned(),
///     machine: "band saw".to_owned(),
///     time: TimeParts { clamping: si(45.0), cutting: si(190.4), ..TimeParts::default() }.in_seconds(),
///     rate: Some(si(36.0 / 3600.0)),
///     cautions: vec![],
/// };
/// let totals = RouteTotals::of(&[sawing])?;
/// assert_eq!(totals.time.total().value, 235.0);
/// assert_eq!(totals.cost.map(|cost| cost.hundredths()), Some(235));
/// # Ok::<(), gullet::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct RouteEntry {
    /// What is done.
    pub name: String,
    /// On which machine.
    pub machine: String,
    /// How long it takes.
    pub time: TimeParts,
    /// Machine and operator, money per time; no cost where not given.
    pub rate: Option<MoneyRate>,
    /// What can hurt, beyond what every entry says.
    pub cautions: Vec<String>,
}

macro_rules! time_parts {
    ($($name:ident, $head:literal, $what:literal;)*) => {
        /// Time in its parts.
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct TimeParts {
            $(#[doc = $what] pub $name: Time,)*
        }

        impl Default for TimeParts {
            fn default() -> TimeParts {
                TimeParts { $($name: si(0.0),)* }
            }
        }

        impl TimeParts {
            /// Name and heading of each part, in order.
            pub const NAMES: &'static [(&'static str, &'static str)] =
                &[$((stringify!($name), $head)),*];

            /// The parts, in the order of their names.
            pub fn parts(&self) -> Vec<Time> {
                vec![$(self.$name),*]
            }

            /// Each part in whole seconds, so that sums on paper are exact.
            pub fn in_seconds(&self) -> TimeParts {
                TimeParts { $($name: si(self.$name.value.round()),)* }
            }

            /// The sum of two, part by part.
            pub fn plus(&self, other: &TimeParts) -> TimeParts {
                TimeParts { $($name: self.$name + other.$name,)* }
            }
        }
    };
}

time_parts! {
    setup, "Set-up", "To make machine and vise ready.";
    clamping, "Clamp", "To clean, seat and clamp the work.";
    cutting, "Cut", "In the cut, with approach and overtravel.";
    returning, "Return", "Back to the start.";
    handling, "Handle", "To set passes and clear chips.";
    measuring, "Measure", "To measure the work after a clamping.";
    deburring, "Deburr", "To deburr the work.";
}

impl TimeParts {
    /// All parts together.
    pub fn total(&self) -> Time {
        self.parts()
            .into_iter()
            .fold(si(0.0), |sum, part| sum + part)
    }

    /// The time of a pass plan.
    pub(super) fn of_passes(time: PassTime) -> TimeParts {
        TimeParts {
            cutting: time.cutting,
            returning: time.returning,
            handling: time.handling,
            ..TimeParts::default()
        }
    }
}

/// Cost in hundredths of the shop's money, part by part, so that sums on paper are exact.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RouteCost {
    /// Hundredths of each part, in the order of [`TimeParts::NAMES`].
    pub parts: Vec<u64>,
}

impl RouteCost {
    /// What machine and operator cost in this time; tools and material are not in it.
    ///
    /// # Errors
    /// A rate or a time that is out of range.
    fn of(time: &TimeParts, rate: MoneyRate) -> Result<RouteCost> {
        let mut parts = Vec::new();
        for part in time.parts() {
            // The machining cost without change of tool.
            let money = cost::unit_cost(part, si(0.0), si(0.0), si(1.0), si(0.0), rate, si(1.0))?;
            parts.push((money.value * 100.0).round() as u64);
        }
        Ok(RouteCost { parts })
    }

    /// All parts together, in hundredths.
    pub fn hundredths(&self) -> u64 {
        self.parts
            .iter()
            .fold(0, |sum, part| sum.saturating_add(*part))
    }

    fn plus(&self, other: &RouteCost) -> RouteCost {
        RouteCost {
            parts: self
                .parts
                .iter()
                .zip(&other.parts)
                .map(|(a, b)| a.saturating_add(*b))
                .collect(),
        }
    }
}

/// The sum over the entries of a route.
#[derive(Debug, Clone, PartialEq)]
pub struct RouteTotals {
    /// Time, part by part.
    pub time: TimeParts,
    /// Cost of the entries in order, where they have a rate.
    pub entries: Vec<Option<RouteCost>>,
    /// Cost of all entries together; none where one of them has no rate.
    pub cost: Option<RouteCost>,
}

impl RouteTotals {
    /// Adds up the entries.
    ///
    /// # Errors
    /// A rate or a time that is out of range.
    pub fn of(entries: &[RouteEntry]) -> Result<RouteTotals> {
        let mut time = TimeParts::default();
        let mut costs = Vec::new();
        let mut sum: Option<RouteCost> = Some(RouteCost {
            parts: vec![0; TimeParts::NAMES.len()],
        });
        for entry in entries {
            time = time.plus(&entry.time);
            let cost = entry
                .rate
                .map(|rate| RouteCost::of(&entry.time, rate))
                .transpose()?;
            sum = sum.zip(cost.as_ref()).map(|(sum, cost)| sum.plus(cost));
            costs.push(cost);
        }
        Ok(RouteTotals {
            time,
            entries: costs,
            cost: sum.filter(|_| !entries.is_empty()),
        })
    }
}

/// A time as hours, minutes and seconds.
pub(in crate::plan) fn clock(time: Time) -> String {
    let seconds = time.value.round().clamp(0.0, 1e15) as u64;
    format!(
        "{}:{:02}:{:02}",
        seconds / 3600,
        seconds / 60 % 60,
        seconds % 60
    )
}

/// Hundredths of money as a person writes it.
pub(super) fn money(hundredths: u64) -> String {
    format!("{}.{:02}", hundredths / 100, hundredths % 100)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn time_and_money_are_written_as_people_do() {
        assert_eq!(clock(si(3725.4)), "1:02:05");
        assert_eq!(clock(si(59.6)), "0:01:00");
        assert_eq!(money(123_405), "1234.05");
    }

    #[test]
    fn an_entry_without_a_rate_leaves_the_sum_without_cost() {
        let entry = |rate| RouteEntry {
            name: "cut".to_owned(),
            machine: "mill".to_owned(),
            time: TimeParts {
                cutting: si(100.4),
                handling: si(20.7),
                ..TimeParts::default()
            }
            .in_seconds(),
            rate,
            cautions: vec![],
        };
        let rate = Some(si(0.0125));
        let both = RouteTotals::of(&[entry(rate), entry(rate)]).unwrap();
        assert_eq!(both.time.total().value, 242.0);
        // 100 s and 21 s at 45 an hour: 1.25 and 0.2625, twice.
        assert_eq!(both.cost.as_ref().map(RouteCost::hundredths), Some(302));
        let one = RouteTotals::of(&[entry(rate), entry(None)]).unwrap();
        assert_eq!(one.cost, None);
        assert!(one.entries[0].is_some() && one.entries[1].is_none());
        assert!(RouteTotals::of(&[entry(Some(si(-1.0)))]).is_err());
    }
}
