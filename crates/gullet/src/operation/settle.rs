//! From the numbers of a pass to the settings a machine really has.

use super::chain;
use super::cut::Log;
use super::inputs::Tables;
use super::law;
use super::limits::{self, LimitName, Verdict};
use super::milling::Lowering;
use super::numbers::{Candidate, Engagement, Geometry, Inputs, Kinds, Outcome, Speeds};
use super::speed_feed;
use crate::formula::{NoRecord, rotation};
use crate::model::{Drive, Machine};
use crate::quantity::{Kind, Length, RotationalSpeed, Velocity, si};

/// Why there are no settings.
#[derive(Clone, Copy)]
pub(crate) enum Stop {
    /// The machine's lowest speed is above what is marked on the cutter.
    CutterSpeed,
    /// The chip stays too thin whatever is lowered.
    Stuck(Stuck),
    /// The feed wanted lies below the lowest of the table.
    TableFeedLowest(Stuck),
}

/// Where the search ended.
#[derive(Clone, Copy)]
pub(crate) struct Stuck {
    pub engaged: Engagement,
    pub geometry: Geometry,
    pub candidate: Candidate,
    /// The feed per tooth of the table feed the machine has; the candidate's where it has none.
    pub real: Length,
    pub smallest: Length,
}

impl Stuck {
    /// The limit that holds the feed below the smallest that cuts, or the smallest chip itself where
    /// no other limit does.
    pub(crate) fn limit(&self, kinds: &Kinds, inputs: &Inputs) -> LimitName {
        let at_smallest = chain::outcome(
            &mut NoRecord,
            kinds,
            inputs,
            &self.engaged,
            &self.geometry,
            &law::laws(inputs, &self.geometry),
            self.candidate.speed,
            self.smallest,
        );
        let held_by = self.candidate.held_by.value;
        let mut exceeded = Exceeded {
            number: held_by,
            found: false,
        };
        limits::each(kinds, inputs, &self.candidate, &at_smallest, &mut exceeded);
        LimitName::from_lane(held_by)
            .filter(|_| exceeded.found)
            .unwrap_or(LimitName::SmallestChip)
    }
}

/// Looks whether one limit is exceeded.
struct Exceeded {
    number: f64,
    found: bool,
}

impl limits::See for Exceeded {
    fn see(&mut self, entry: limits::Entry) {
        let beyond = limits::share(entry.side, entry.value, entry.bound) > limits::EXCEEDED;
        self.found |= entry.present && entry.number == self.number && beyond;
    }
}

/// Settings with everything that follows from them.
#[derive(Clone, Copy)]
pub(crate) struct Settled {
    pub engaged: Engagement,
    pub speeds: Speeds,
    /// The speed the machine has for the wanted one; none below its lowest.
    pub fast: Option<RotationalSpeed>,
    /// The same within the tables.
    pub real: Option<RotationalSpeed>,
    /// The speed that was tried first.
    pub first: RotationalSpeed,
    pub geometry: Geometry,
    pub candidate: Candidate,
    /// The limit that held the feed before the machine's step was looked at.
    pub held_before_snap: Option<LimitName>,
    /// Whether the machine's feed step lies below the feed wanted.
    pub snapped: bool,
    pub outcome: Outcome,
    pub verdict: Verdict,
}

/// Lowers feed and speed until every limit that they relieve holds.
#[allow(clippy::result_large_err)]
pub(crate) fn settle(
    log: &mut impl Log,
    kinds: &Kinds,
    inputs: &Inputs,
    machine: &Machine,
    lowering: Lowering,
    tables: Option<&Tables>,
) -> Result<Settled, Stop> {
    let engaged = chain::engage(log, kinds, inputs);
    let speeds = speed_feed::wanted_speed(log, inputs, &engaged, tables);
    let real = machine.speed_at_or_below(speeds.bound);
    let fast = machine.speed_at_or_below(speeds.capped);
    if real.is_none() && inputs.lowest_speed.value > inputs.cutter_speed.value * (1.0 + 1e-9) {
        return Err(Stop::CutterSpeed);
    }
    let first = real.unwrap_or(inputs.lowest_speed);
    log.choose(Kind::RotationalSpeed, first.value, || {
        if real.is_some() {
            "spindle speed the machine has at or below that".to_owned()
        } else {
            "lowest spindle speed of the machine, above that".to_owned()
        }
    });
    let geometry = chain::geometry(log, kinds, inputs, &engaged);
    let laws = law::laws(inputs, &geometry);
    let smallest = speed_feed::feed_for_chip(&geometry, inputs.smallest_chip);
    let feed_at = |speed| {
        speed_feed::feed(
            &mut NoRecord,
            kinds,
            inputs,
            &engaged,
            &geometry,
            &laws,
            speed,
            lowering,
            None,
        )
    };
    let mut candidate = feed_at(first);
    while let Some(real) =
        real_feed(inputs, machine, &candidate).filter(|real| too_thin(*real, smallest))
    {
        if lowering != Lowering::Allowed {
            break;
        }
        let Some(slower) = slower(machine, &candidate, real, smallest) else {
            return Err(Stop::Stuck(Stuck {
                engaged,
                geometry,
                candidate,
                real,
                smallest,
            }));
        };
        candidate = feed_at(slower);
    }
    if log.records() {
        if candidate.speed.value < first.value {
            log.choose(Kind::RotationalSpeed, candidate.speed.value, || {
                "a lower speed, so that the chip stays thick enough to cut".to_owned()
            });
        }
        // The same choice once more, now for the record.
        candidate = speed_feed::feed(
            log,
            kinds,
            inputs,
            &engaged,
            &geometry,
            &laws,
            candidate.speed,
            lowering,
            tables,
        );
    }
    let wanted = rotation::table_feed::value(candidate.feed, inputs.teeth, candidate.speed);
    let Some(at_machine) = machine.feed_at_or_below(wanted) else {
        return Err(Stop::TableFeedLowest(Stuck {
            engaged,
            geometry,
            candidate,
            real: candidate.feed,
            smallest,
        }));
    };
    let snapped = steps_down(at_machine, wanted);
    let held_before_snap = candidate.holder();
    if snapped {
        let feed = rotation::feed_per_tooth::step(log, at_machine, inputs.teeth, candidate.speed);
        candidate = snap(candidate, feed);
        log.choose(Kind::Velocity, at_machine.value, || {
            "table feed the machine has at or below that".to_owned()
        });
    }
    let outcome = chain::outcome(
        log,
        kinds,
        inputs,
        &engaged,
        &geometry,
        &laws,
        candidate.speed,
        candidate.feed,
    );
    let verdict = limits::judge(kinds, inputs, &candidate, &outcome);
    Ok(Settled {
        engaged,
        speeds,
        fast,
        real,
        first,
        geometry,
        candidate,
        held_before_snap,
        snapped,
        outcome,
        verdict,
    })
}

/// Whether a feed gives a chip that rubs instead of cutting.
#[inline(always)]
pub(crate) fn too_thin(feed: Length, smallest: Length) -> bool {
    feed.value < smallest.value * (1.0 - 1e-9)
}

/// Whether the machine's feed lies below the one wanted.
#[inline(always)]
pub(crate) fn steps_down(real: Velocity, wanted: Velocity) -> bool {
    real.value < wanted.value * (1.0 - 1e-9)
}

/// The candidate at the machine's own feed.
#[inline(always)]
pub(crate) fn snap(candidate: Candidate, feed: Length) -> Candidate {
    let held = candidate.held_by.value > 0.0;
    Candidate {
        feed,
        held_by: if held {
            candidate.held_by
        } else {
            si(LimitName::TableFeed.lane())
        },
        ..candidate
    }
}

/// The feed per tooth of the table feed the machine has; none below its lowest.
fn real_feed(inputs: &Inputs, machine: &Machine, candidate: &Candidate) -> Option<Length> {
    let z = inputs.teeth;
    let wanted = rotation::table_feed::value(candidate.feed, z, candidate.speed);
    let real = machine.feed_at_or_below(wanted)?;
    Some(if steps_down(real, wanted) {
        rotation::feed_per_tooth::value(real, z, candidate.speed)
    } else {
        candidate.feed
    })
}

/// The next lower speed worth trying, if a lower speed thickens the chip.
pub(crate) fn slower(
    machine: &Machine,
    candidate: &Candidate,
    real: Length,
    smallest: Length,
) -> Option<RotationalSpeed> {
    let held_by = if too_thin(candidate.feed, smallest) {
        candidate.holder()?
    } else {
        // The step below: at a lower speed the same step gives a thicker chip.
        LimitName::TableFeed
    };
    if !matches!(
        held_by,
        LimitName::HandwheelPace | LimitName::TableFeed | LimitName::Power
    ) {
        return None;
    }
    let ratio = real / smallest;
    let reach = match machine.drive {
        Drive::Continuous { .. } => candidate.speed * ratio * 0.999_999,
        Drive::Stepped(_) => candidate.speed * 0.999_999,
    };
    machine.speed_at_or_below(reach)
}
