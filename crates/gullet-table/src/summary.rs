//! Totals over rows.

use gullet::error::Code;
use gullet::formula::power;
use gullet::operation::LimitName;
use gullet::quantity::si;
use std::collections::BTreeMap;

/// Totals over rows: the same however the rows are split into batches and in whatever order they
/// are added.
///
/// Times, energies and costs are rounded row by row, to a nanosecond, a microjoule and a millionth,
/// and added as whole numbers.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Summary {
    rows: u64,
    ok: u64,
    codes: BTreeMap<i32, u64>,
    binding: Counts,
    exceeded: Counts,
    held_by: Counts,
    nanoseconds: u128,
    microjoules: u128,
    cost: Option<i128>,
}

/// Rows by the number of a limit.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Counts([u64; LIMITS]);

/// Numbers of limits stay below.
const LIMITS: usize = 64;

impl Default for Counts {
    fn default() -> Counts {
        Counts([0; LIMITS])
    }
}

impl Counts {
    fn count(&mut self, number: u8) {
        if let Some(count) = self.0.get_mut(usize::from(number)) {
            *count += 1;
        }
    }

    fn add(&mut self, other: &Counts) {
        for (own, other) in self.0.iter_mut().zip(other.0) {
            *own += other;
        }
    }

    fn named(&self) -> Vec<(LimitName, u64)> {
        LimitName::ALL
            .iter()
            .filter_map(|limit| Some((*limit, *self.0.get(*limit as usize)?)))
            .filter(|(_, count)| *count > 0)
            .collect()
    }
}

/// One row for the totals.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Row {
    pub status: i32,
    pub binding: u8,
    pub held_by: u8,
    /// In seconds.
    pub time: f64,
    /// Power that energy is counted of, in watts.
    pub power: f64,
    pub cost: Option<f64>,
}

impl Summary {
    pub(crate) fn add_row(&mut self, row: Row) {
        self.rows += 1;
        if row.status != 0 {
            *self.codes.entry(row.status).or_default() += 1;
            self.exceeded.count(row.binding);
            return;
        }
        self.ok += 1;
        self.binding.count(row.binding);
        self.held_by.count(row.held_by);
        // Good rows are finite and above 0; what is beyond the whole numbers saturates.
        self.nanoseconds += (row.time * 1e9).round() as u128;
        let energy = power::cutting_energy(si(row.power), si(row.time));
        let joules = energy.map_or(0.0, |energy| energy.value);
        self.microjoules += (joules * 1e6).round() as u128;
        if let Some(cost) = row.cost.filter(|cost| cost.is_finite()) {
            *self.cost.get_or_insert(0) += (cost * 1e6).round() as i128;
        }
    }

    /// Adds the totals of other rows.
    pub fn add(&mut self, other: &Summary) {
        self.rows += other.rows;
        self.ok += other.ok;
        self.binding.add(&other.binding);
        self.exceeded.add(&other.exceeded);
        self.held_by.add(&other.held_by);
        for (code, count) in &other.codes {
            *self.codes.entry(*code).or_default() += count;
        }
        self.nanoseconds += other.nanoseconds;
        self.microjoules += other.microjoules;
        if let Some(cost) = other.cost {
            *self.cost.get_or_insert(0) += cost;
        }
    }

    /// Rows there are.
    pub fn rows(&self) -> u64 {
        self.rows
    }

    /// Rows that were computed.
    pub fn ok(&self) -> u64 {
        self.ok
    }

    /// Rows with an error, by its code.
    pub fn codes(&self) -> Vec<(Code, u64)> {
        Code::ALL
            .iter()
            .filter_map(|code| Some((*code, *self.codes.get(&code.number())?)))
            .collect()
    }

    /// Computed rows by the limit nearest to its bound.
    pub fn binding(&self) -> Vec<(LimitName, u64)> {
        self.binding.named()
    }

    /// Rows that a limit made an error, by that limit.
    pub fn exceeded(&self) -> Vec<(LimitName, u64)> {
        self.exceeded.named()
    }

    /// Computed rows by the limit that holds the feed below the wanted one.
    pub fn held_by(&self) -> Vec<(LimitName, u64)> {
        self.held_by.named()
    }

    /// Time in the cut over the computed rows, in whole nanoseconds: of milling cuts without return,
    /// of other operations the result `time`; without handling and set-up.
    pub fn cutting_time(&self) -> u128 {
        self.nanoseconds
    }

    /// Energy over the computed rows, in whole microjoules: the power of the spindle motor, of milling
    /// cuts at full width, times the time in the cut, without idling, feed drives and coolant. Where
    /// an operation gives no power of the motor, that at the tool: [`crate::StudyPlan::energy`] says
    /// which.
    pub fn energy(&self) -> u128 {
        self.microjoules
    }

    /// Cost of machine and operator for the time in the cut over the computed rows, in whole
    /// millionths; none where no cost per hour is given. Without return, handling, set-up, tools and
    /// material.
    pub fn cost(&self) -> Option<i128> {
        self.cost
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_limit_has_a_place() {
        assert!(
            LimitName::ALL
                .iter()
                .all(|limit| (*limit as usize) < LIMITS)
        );
    }
}
