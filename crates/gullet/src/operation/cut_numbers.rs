//! The numbers of a cut without its words.

use super::cut::{Band, Consequences, Limit, Settings, Spread};
use super::limits::{self, Entry, LimitName, See, Side};
use super::numbers::{Inputs, Kinds, known};
use super::request::Pass;
use super::results::{self, Ends, Pace, Reached};
use super::settle::Settled;
use super::{Cut, WarningCode};
use crate::formula::NoRecord;

/// A cut in numbers: what [`Cut`] says without words.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CutNumbers {
    /// The pass it belongs to.
    pub pass: Pass,
    /// What is set on the machine.
    pub settings: Settings,
    /// What follows from the settings.
    pub consequences: Consequences,
    /// Low, start and high of what rests on the tables' ranges.
    pub spread: Spread,
    /// Every limit that was looked at.
    pub ledger: LedgerNumbers,
    /// The limit that holds the feed below the wanted one.
    pub held_by: Option<LimitName>,
    /// The doubts there are.
    pub warnings: WarningCodes,
    sound: bool,
}

/// A set of doubts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct WarningCodes(u32);

impl WarningCodes {
    /// The bits: 1 shifted by the number of each code.
    pub fn bits(self) -> u32 {
        self.0
    }

    /// Whether the set holds a code.
    pub fn contains(self, code: WarningCode) -> bool {
        self.0 & (1 << code as u32) != 0
    }

    /// The set of these bits.
    pub fn from_bits(bits: u8) -> WarningCodes {
        WarningCodes(u32::from(bits))
    }

    /// The set of these codes.
    pub fn of(codes: impl IntoIterator<Item = WarningCode>) -> WarningCodes {
        WarningCodes(
            codes
                .into_iter()
                .fold(0, |bits, code| bits | 1 << code as u32),
        )
    }
}

/// One limit in numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LimitNumbers {
    /// Which limit.
    pub name: LimitName,
    /// Which side the value must stay on.
    pub side: Side,
    /// Value of this cut, in SI units.
    pub value: f64,
    /// Bound, in SI units.
    pub bound: f64,
    /// Share of the bound that is used; above 1 the limit is exceeded.
    pub share: f64,
    /// Whether this is the limit nearest to its bound.
    pub binding: bool,
}

impl LimitNumbers {
    /// Whether the value lies beyond the bound.
    pub fn exceeded(&self) -> bool {
        self.share > limits::EXCEEDED
    }
}

/// The limits of a cut, in the order they are looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LedgerNumbers {
    limits: [LimitNumbers; LimitName::ALL.len()],
    length: usize,
}

impl LedgerNumbers {
    fn new() -> LedgerNumbers {
        LedgerNumbers {
            limits: [LimitNumbers {
                name: LimitName::Power,
                side: Side::AtMost,
                value: 0.0,
                bound: 0.0,
                share: 0.0,
                binding: false,
            }; LimitName::ALL.len()],
            length: 0,
        }
    }

    fn push(&mut self, limit: LimitNumbers) {
        if let Some(slot) = self.limits.get_mut(self.length) {
            *slot = limit;
            self.length += 1;
        }
    }
}

impl core::ops::Deref for LedgerNumbers {
    type Target = [LimitNumbers];
    fn deref(&self) -> &[LimitNumbers] {
        self.limits.get(..self.length).unwrap_or_default()
    }
}

/// Collects the limits there are.
struct Collect<'l> {
    ledger: &'l mut LedgerNumbers,
    binding: f64,
}

impl See for Collect<'_> {
    fn see(&mut self, entry: Entry) {
        if let Some(name) = LimitName::from_lane(entry.number).filter(|_| entry.present) {
            self.ledger.push(LimitNumbers {
                name,
                side: entry.side,
                value: entry.value,
                bound: entry.bound,
                share: limits::share(entry.side, entry.value, entry.bound),
                binding: entry.number == self.binding,
            });
        }
    }
}

impl CutNumbers {
    pub(super) fn new(
        pass: &Pass,
        kinds: &Kinds,
        inputs: &Inputs,
        settled: &Settled,
    ) -> CutNumbers {
        let Settled {
            engaged,
            geometry,
            candidate,
            outcome,
            verdict,
            ..
        } = settled;
        let pace = results::pace(&mut NoRecord, kinds, inputs, outcome);
        let ends = results::ends(inputs, engaged, geometry, outcome);
        let mut ledger = LedgerNumbers::new();
        limits::each(
            kinds,
            inputs,
            candidate,
            outcome,
            &mut Collect {
                ledger: &mut ledger,
                binding: verdict.binding.value,
            },
        );
        let doubts = results::doubts(
            inputs,
            &settled.speeds,
            settled.reached(),
            candidate,
            settled.snapped,
            outcome,
        );
        CutNumbers {
            pass: *pass,
            settings: settings(settled, &pace),
            consequences: consequences(inputs, settled),
            spread: spread(inputs, settled, &ends),
            ledger,
            held_by: candidate.holder(),
            warnings: WarningCodes(doubts.value as u32),
            sound: results::sound(engaged, geometry, candidate, outcome, &pace, &ends, verdict),
        }
    }

    pub(super) fn is_sound(&self) -> bool {
        self.sound
    }

    /// The limit nearest to its bound.
    pub fn binding(&self) -> Option<&LimitNumbers> {
        self.ledger.iter().find(|limit| limit.binding)
    }
}

impl Settled {
    /// Whether every number is of a size that formulas admit.
    pub(crate) fn is_sound(&self, kinds: &Kinds, inputs: &Inputs) -> bool {
        results::sound(
            &self.engaged,
            &self.geometry,
            &self.candidate,
            &self.outcome,
            &results::pace(&mut NoRecord, kinds, inputs, &self.outcome),
            &results::ends(inputs, &self.engaged, &self.geometry, &self.outcome),
            &self.verdict,
        )
    }

    pub(crate) fn reached(&self) -> Reached {
        Reached {
            below_lowest: self.real.is_none(),
            worn_slower: self
                .fast
                .zip(self.real)
                .is_some_and(|(fast, slow)| slow.value < fast.value),
            first: self.first.value,
        }
    }
}

pub(super) fn settings(settled: &Settled, pace: &Pace) -> Settings {
    let outcome = &settled.outcome;
    Settings {
        wanted_speed: settled.speeds.wanted,
        spindle_speed: settled.candidate.speed,
        cutting_speed: outcome.motion.cutting_speed,
        chip_load: outcome.motion.max_chip,
        feed_per_tooth: settled.candidate.feed,
        feed_per_rev: outcome.motion.feed_per_rev,
        table_feed: outcome.motion.table_feed,
        handwheel_rate: known(pace.handwheel_rate, pace.handwheel_rate.value),
        time_per_inch: pace.time_per_inch,
        time_per_10_mm: pace.time_per_10_mm,
    }
}

pub(super) fn consequences(inputs: &Inputs, settled: &Settled) -> Consequences {
    let Settled {
        geometry, outcome, ..
    } = settled;
    Consequences {
        effective_diameter: settled.engaged.effective_diameter,
        entry_angle: geometry.entry_angle,
        exit_angle: geometry.exit_angle,
        max_chip_thickness: outcome.motion.max_chip,
        mean_chip_thickness: outcome.motion.mean_chip,
        removal_rate: outcome.motion.removal_rate,
        specific_cutting_force: outcome.motion.specific_cutting_force,
        cutting_power: outcome.motion.cutting_power,
        motor_power: outcome.motion.motor_power,
        torque: outcome.motion.torque,
        mean_tangential_force: outcome.motion.mean_force,
        unit_power_cutting_power: known(
            outcome.motion.unit_power_power,
            outcome.motion.unit_power_power.value,
        ),
        limit_power: outcome.rotary.limit_power,
        limit_torque: outcome.rotary.limit_torque,
        peak_tangential_force: outcome.peak.tangential,
        peak_force: outcome.peak.in_plane,
        axial_force: outcome.peak.axial,
        deflection: outcome.peak.deflection,
        clamping_needed: outcome.peak.clamping_needed,
        clamping_force: inputs.clamping_force,
        available_power: outcome.rotary.available_power,
        available_torque: outcome.rotary.available_torque,
        mean_roughness: known(
            outcome.finish.mean_roughness,
            outcome.finish.mean_roughness.value,
        ),
        travel: geometry.travel,
        time: outcome.finish.time,
    }
}

pub(super) fn spread(inputs: &Inputs, settled: &Settled, ends: &Ends) -> Spread {
    Spread {
        cutting_speed: Band {
            low: inputs.speed_low,
            start: inputs.speed_start,
            high: inputs.speed_high,
        },
        feed_per_tooth: Band {
            low: inputs.feed_low,
            start: inputs.feed_start,
            high: inputs.feed_high,
        },
        force: Band {
            low: ends.force_low,
            start: settled.outcome.motion.mean_force,
            high: ends.force_high,
        },
        power: Band {
            low: ends.power_low,
            start: settled.outcome.motion.cutting_power,
            high: ends.power_high,
        },
        time: Band {
            low: ends.time_low,
            start: ends.time_start,
            high: ends.time_high,
        },
    }
}

impl Limit {
    /// The limit in numbers; none where no limit has its name.
    pub fn numbers(&self) -> Option<LimitNumbers> {
        let name = LimitName::ALL
            .iter()
            .find(|name| name.name() == self.name)?;
        Some(LimitNumbers {
            name: *name,
            side: self.side,
            value: self.value,
            bound: self.bound,
            share: self.share,
            binding: self.binding,
        })
    }
}

impl Cut {
    /// The numbers of the cut alone.
    pub fn numbers(&self) -> CutNumbers {
        let mut ledger = LedgerNumbers::new();
        for limit in &self.ledger {
            if let Some(limit) = limit.numbers() {
                ledger.push(limit);
            }
        }
        CutNumbers {
            pass: self.pass,
            settings: self.settings,
            consequences: self.consequences,
            spread: self.spread,
            ledger,
            held_by: self.held_by,
            warnings: WarningCodes::of(self.warnings.iter().map(|warning| warning.code)),
            sound: true,
        }
    }
}
