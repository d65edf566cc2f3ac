//! From the numbers of an operation to the settings a machine really has: the same for every
//! operation, for scalar calls and for columns.

use super::ground::Ground;
use super::limits::{Doubt, Entries, Eye, Look, Lower};
use super::{Loads, Operate, Start};
use crate::formula::{NoRecord, practice, rotation};
use crate::model::Machine;
use crate::operation::cut::Log;
use crate::operation::lanes::lanes;
use crate::operation::limits::{Highest, LimitName, Nearest, Verdict};
use crate::operation::numbers::one;
use crate::operation::{WarningCode, settle};
use crate::quantity::math::{max, min, number, select};
use crate::quantity::{Kind, Length, RotationalSpeed, Time, Velocity, si};

pub(crate) use super::settings::{SETTINGS, Settings, SettingsBlock};

/// How often the feed is lowered at most: the limits are powers of it, so that each is met at once, and
/// few take turns.
pub(crate) const ROUNDS: usize = 6;

/// How often the speed is lowered at most for what the wanted feed loads too much.
pub(crate) const SPEED_ROUNDS: usize = 2;

lanes! {
    /// Spindle speeds before the machine's own are looked at.
    Speeds, SpeedsBlock {
        wanted: RotationalSpeed,
        /// Within what tool, operation and tables allow.
        bound: RotationalSpeed,
    }
}

lanes! {
    /// The feed on its way down.
    Feeding, FeedingBlock {
        feed: Length,
        wanted: Length,
        /// Number of the limit that holds it; 0 where none does.
        held_by: Ratio,
    }
}

lanes! {
    /// Low and high ends that the tables' ranges give.
    Ends, EndsBlock {
        force_low: Force,
        force_high: Force,
        power_low: Power,
        power_high: Power,
        time_low: Time,
        time_high: Time,
    }
}

/// What is asked for in place of the tables, and what is marked on the tool.
#[derive(Clone, Copy)]
pub(crate) struct Asked {
    pub spindle_speed: RotationalSpeed,
    pub feed: Length,
    pub maximum_speed: RotationalSpeed,
}

/// The speeds to look for on the machine.
#[inline(always)]
pub(crate) fn speeds<P: Operate>(
    log: &mut impl Log,
    own: &P::Own,
    ground: &Ground,
    start: &Start,
) -> Speeds {
    let asked = P::asked(own);
    let n = if log.records() && asked.spindle_speed.value > 0.0 {
        log.choose(Kind::RotationalSpeed, asked.spindle_speed.value, || {
            "spindle speed asked for".to_owned()
        });
        asked.spindle_speed
    } else {
        rotation::spindle_speed::step(log, start.cutting_speed, start.diameter)
    };
    let wanted = select(asked.spindle_speed.value > 0.0, asked.spindle_speed, n);
    let capped = min(wanted, min(asked.maximum_speed, start.highest_speed));
    let high = ground.speed_high * P::table_factor(own);
    let worn = rotation::spindle_speed::value(high, start.diameter);
    Speeds {
        wanted,
        bound: select(worn.value < capped.value, worn, capped),
    }
}

/// Shows every limit of an operation.
#[inline(always)]
#[allow(clippy::too_many_arguments)]
fn looks<P: Operate>(
    own: &P::Own,
    ground: &Ground,
    start: &Start,
    n: RotationalSpeed,
    f: Length,
    results: &P::Results,
    loads: &Loads,
    eye: &mut impl Eye,
) {
    use LimitName as Name;
    let asked = P::asked(own);
    eye.look(
        Look::most(
            Name::SpindleSpeedHighest,
            n.value,
            ground.highest_speed.value,
        )
        .from("machine"),
    );
    eye.look(
        Look::least(Name::SpindleSpeedLowest, n.value, ground.lowest_speed.value).from("machine"),
    );
    let marked = asked.maximum_speed.value;
    eye.look(
        Look::most(Name::CutterSpeed, n.value, marked)
            .only(marked < f64::INFINITY)
            .from("marked on the tool, the chuck or its holder")
            .change("take a machine with a lower speed, or another tool"),
    );
    let v_c = rotation::cutting_speed::value(n, start.diameter);
    let high = (ground.speed_high * P::table_factor(own)).value;
    eye.look(
        Look::most(Name::CuttingSpeed, v_c.value, high)
            .only(!high.is_nan())
            .from("high end of the tables: the edge wears fast above it")
            .change("take a machine with a lower speed, or a smaller diameter"),
    );
    let v_f = feed_speed(start, n, f);
    let free = is_free(start);
    // A lathe's feed box is geared to the spindle, but a thread is cut by its own train.
    let geared = |step: Length, none: f64| {
        let feed: Velocity = step * n;
        if free { feed.value } else { none }
    };
    let box_highest = geared(ground.highest_geared, f64::INFINITY);
    let box_lowest = geared(ground.lowest_geared, 0.0);
    let highest = ground.highest_feed.value.min(box_highest);
    let lowest = ground.lowest_feed.value.max(box_lowest);
    let by_hand = ground.by_hand.value > 0.0;
    let pace = if by_hand {
        Name::HandwheelPace.lane()
    } else {
        Name::TableFeed.lane()
    };
    let mut feed = Look::most(Name::TableFeed, v_f.value, highest)
        .only(highest < f64::INFINITY)
        .with_feed(one())
        .with_speed(one())
        .from("machine, or the pace a hand can hold")
        .change("lower the spindle speed");
    feed.entry.number = pace;
    eye.look(feed);
    eye.look(
        Look::least(Name::TableFeedLowest, v_f.value, lowest)
            .only(!by_hand)
            .from("machine")
            .change("give the larger feed that the machine has"),
    );
    // An operation that raises the feed for thin chips raises what the tables allow alike.
    let table = practice::practice_feed_per_tooth::value(ground.feed_start, ground.feed_factor);
    let raised = max(start.feed / table, one());
    eye.look(
        Look::least(Name::SmallestFeed, f.value, start.least_feed.value)
            .only(free)
            .from("practice: a smaller feed rubs instead of cutting")
            .change("give a larger feed, or take another cutter"),
    );
    eye.look(
        Look::most(
            Name::LargestFeed,
            f.value,
            (ground.feed_high * raised).value,
        )
        .only(free & !ground.feed_high.value.is_nan())
        .with_feed(one())
        .from("high end of the tables"),
    );
    let (power, torque) = ground.available(&mut NoRecord, n);
    let above_base = n.value >= ground.base_speed.value * (1.0 - 1e-9);
    eye.look(
        Look::most(Name::Torque, loads.limit_torque.value, torque.value)
            .with_feed(loads.exponent)
            .from("machine and practice: share of the rating that is used")
            .change(
                "take a smaller depth or diameter, or a lower gear: a lower speed does not help",
            ),
    );
    eye.look(
        Look::most(Name::Power, loads.limit_power.value, power.value)
            .with_feed(loads.exponent)
            .with_speed(select(above_base, one(), number(0.0)))
            .from("machine and practice: share of the rating that is used")
            .change("take a smaller depth or a lower speed"),
    );
    P::limits(own, ground, f, results, loads, eye);
}

#[inline(always)]
pub(crate) fn feed_speed(start: &Start, n: RotationalSpeed, f: Length) -> Velocity {
    rotation::feed_rate::value(f * start.feeds_per_rev, n)
}

/// The speed at which these loads, of the wanted feed, meet every limit that the speed moves: power above
/// the base speed and the pace of the feed are answered by speed first, which keeps the chip; what no speed
/// relieves is left to the feed.
#[inline(always)]
pub(crate) fn relieved<P: Operate>(
    own: &P::Own,
    ground: &Ground,
    start: &Start,
    n: RotationalSpeed,
    results: &P::Results,
    loads: &Loads,
) -> RotationalSpeed {
    let mut lower = Lower::new(false);
    let f = wanted(start, P::asked(own).feed);
    looks::<P>(own, ground, start, n, f, results, loads, &mut lower);
    let (factor, _) = lower.factor();
    n * factor
}

/// Whether the feed may be set at all: that of a thread is its lead. A smallest feed above the wanted one
/// leaves it free, and is a limit that is exceeded.
#[inline(always)]
pub(crate) fn is_free(start: &Start) -> bool {
    start.least_feed.value != start.feed.value
}

/// The smallest feed: that of a geared feed box where it is larger, never above the one wanted.
#[inline(always)]
pub(crate) fn least(ground: &Ground, start: &Start, asked: Length) -> Length {
    min(
        max(start.least_feed, ground.lowest_geared),
        wanted(start, asked),
    )
}

#[inline(always)]
pub(crate) fn wanted(start: &Start, asked: Length) -> Length {
    select((asked.value > 0.0) & is_free(start), asked, start.feed)
}

/// The feed to start from.
#[inline(always)]
pub(crate) fn first_feed(start: &Start, asked: Length) -> Feeding {
    let feed = wanted(start, asked);
    Feeding {
        feed,
        wanted: feed,
        held_by: number(0.0),
    }
}

/// The feed lowered once for the limits that these loads exceed.
#[inline(always)]
pub(crate) fn lowered<P: Operate>(
    own: &P::Own,
    ground: &Ground,
    start: &Start,
    n: RotationalSpeed,
    feeding: Feeding,
    results: &P::Results,
    loads: &Loads,
) -> Feeding {
    let mut lower = Lower::new(true);
    looks::<P>(
        own,
        ground,
        start,
        n,
        feeding.feed,
        results,
        loads,
        &mut lower,
    );
    let (factor, limit) = lower.factor();
    let feed = max(
        feeding.feed * factor,
        least(ground, start, P::asked(own).feed),
    );
    let falls = feed.value < feeding.feed.value;
    Feeding {
        feed: select(falls, feed, feeding.feed),
        wanted: feeding.wanted,
        held_by: select(falls, limit, feeding.held_by),
    }
}

/// The feed of the machine's own feed speed; a thread's is geared to the spindle and stays.
#[inline(always)]
pub(crate) fn snapped(
    start: &Start,
    n: RotationalSpeed,
    feeding: Feeding,
    real: Velocity,
) -> Feeding {
    let v_f = feed_speed(start, n, feeding.feed);
    let below = is_free(start) & settle::steps_down(real, v_f);
    let feed = feeding.feed * (real / v_f);
    let held = feeding.held_by.value > 0.0;
    Feeding {
        feed: select(below, feed, feeding.feed),
        wanted: feeding.wanted,
        held_by: select(
            below & !held,
            number(LimitName::TableFeed.lane()),
            feeding.held_by,
        ),
    }
}

/// The settings of a speed and a feed.
#[inline(always)]
pub(crate) fn settings(
    log: &mut impl Log,
    ground: &Ground,
    start: &Start,
    speeds: &Speeds,
    n: RotationalSpeed,
    feed: Length,
) -> Settings {
    let cutting_speed = rotation::cutting_speed::step(log, n, start.diameter);
    let feed_speed = rotation::feed_rate::step(log, feed * start.feeds_per_rev, n);
    let handwheel = rotation::handwheel_rate::value(feed_speed, ground.travel_per_turn);
    let by_hand = ground.by_hand.value > 0.0;
    let (available_power, available_torque) = ground.available(log, n);
    Settings {
        wanted_speed: speeds.wanted,
        spindle_speed: n,
        cutting_speed,
        feed,
        feed_speed,
        handwheel_rate: select(by_hand, handwheel, si(f64::NAN)),
        available_power,
        available_torque,
    }
}

/// The limit that binds.
#[inline(always)]
pub(crate) fn judged<P: Operate>(
    own: &P::Own,
    ground: &Ground,
    start: &Start,
    n: RotationalSpeed,
    feeding: &Feeding,
    results: &P::Results,
    loads: &Loads,
) -> Verdict {
    let f = feeding.feed;
    let mut highest = Highest::default();
    let mut entries = Entries(&mut highest);
    looks::<P>(own, ground, start, n, f, results, loads, &mut entries);
    let mut nearest = Nearest::new(&highest, feeding.held_by.value);
    let mut entries = Entries(&mut nearest);
    looks::<P>(own, ground, start, n, f, results, loads, &mut entries);
    nearest.verdict(&highest)
}

/// Shows every limit once more, to those who put words to them.
pub(crate) fn show<P: Operate>(
    own: &P::Own,
    ground: &Ground,
    settled: &Settled<P>,
    eye: &mut impl Eye,
) {
    looks::<P>(
        own,
        ground,
        &settled.start,
        settled.speed,
        settled.feeding.feed,
        &settled.results,
        &settled.loads,
        eye,
    );
}

/// Every doubt; `first` is the machine's speed before loads were looked at.
#[inline(always)]
#[allow(clippy::too_many_arguments)]
pub(crate) fn doubts<P: Operate>(
    own: &P::Own,
    ground: &Ground,
    speeds: &Speeds,
    first: RotationalSpeed,
    n: RotationalSpeed,
    feeding: &Feeding,
    results: &P::Results,
    loads: &Loads,
    doubt: &mut impl Doubt,
) {
    use WarningCode as Code;
    doubt.doubt(
        ground.assumed.value > 0.0,
        Code::Assumed,
        "a value of the tables rests on something assumed",
    );
    doubt.doubt(
        ground.lowest_speed.value > speeds.bound.value * (1.0 + 1e-9),
        Code::MachineLimits,
        "the machine's lowest speed is above the speed wanted: the tool wears sooner",
    );
    let asked = P::asked(own).spindle_speed.value;
    doubt.doubt(
        (asked > 0.0) & (speeds.bound.value < asked * (1.0 - 1e-9)),
        Code::MachineLimits,
        "the spindle speed asked for is above what tables, mark or operation allow: it is lowered",
    );
    doubt.doubt(
        speeds.bound.value > ground.highest_speed.value * (1.0 + 1e-9),
        Code::MachineLimits,
        "the machine's highest speed is below the speed wanted: the cut runs at the highest there is",
    );
    doubt.doubt(
        (feeding.feed.value < feeding.wanted.value * (1.0 - 1e-9)) | (n.value < first.value),
        Code::Lowered,
        "feed or speed lowered because of a limit",
    );
    let h = loads.chip.value;
    doubt.doubt(
        !(THINNEST_CHIP..=THICKEST_CHIP).contains(&h) & !h.is_nan(),
        Code::OutsideValidity,
        "the chip lies outside the 0.02 to 1.5 mm for which the power law of the cutting force is usual: thinner chips plough and need more force",
    );
    let (low, high) = ground.force_band(loads.chip);
    doubt.doubt(
        high.value > 4.0 / 3.0 * low.value,
        Code::SourcesDisagree,
        "the sources of the specific cutting force lie more than a third apart at this chip",
    );
    P::doubts(own, ground, results, doubt);
}

const THINNEST_CHIP: f64 = 0.02e-3;
const THICKEST_CHIP: f64 = 1.5e-3;

/// Spindle speed and feed at an end of the tables, with the factors of operation and practice.
#[inline(always)]
pub(crate) fn end_of_tables<P: Operate>(
    own: &P::Own,
    ground: &Ground,
    start: &Start,
    v: Velocity,
    f: Length,
) -> (RotationalSpeed, Length) {
    let asked = P::asked(own);
    let ratio = v / ground.speed_chosen;
    let n = rotation::spindle_speed::value(start.cutting_speed * ratio, start.diameter);
    let scaled = start.feed * (f / ground.feed_start);
    let from_tables = is_free(start) & !scaled.value.is_nan();
    (
        select(n.value.is_nan(), asked.spindle_speed, n),
        select(from_tables, scaled, wanted(start, asked.feed)),
    )
}

/// Force and power over the material's pairs at the settings, time at the ends of the tables.
#[inline(always)]
pub(crate) fn ends(ground: &Ground, loads: &Loads, time_low: Time, time_high: Time) -> Ends {
    let (low, high) = ground.force_band(loads.chip);
    Ends {
        force_low: loads.force * low,
        force_high: loads.force * high,
        power_low: loads.power * low,
        power_high: loads.power * high,
        time_low,
        time_high,
    }
}

/// Everything of a scalar call.
pub(crate) struct Settled<P: Operate> {
    pub start: Start,
    pub speeds: Speeds,
    /// The machine's speed before loads were looked at.
    pub first: RotationalSpeed,
    pub speed: RotationalSpeed,
    pub feeding: Feeding,
    pub settings: Settings,
    pub results: P::Results,
    pub loads: Loads,
    pub verdict: Verdict,
    pub ends: Ends,
}

/// Settles speed and feed of one cut.
// One copy an operation is enough: it is called from several places and is large.
#[inline(never)]
pub(crate) fn settle_one<P: Operate>(
    own: &P::Own,
    ground: &Ground,
    machine: &Machine,
) -> Settled<P> {
    let silent = &mut NoRecord;
    let asked = P::asked(own);
    let start = P::start(silent, own, ground);
    let speeds = speeds::<P>(silent, own, ground, &start);
    let on_machine =
        |n: RotationalSpeed| machine.speed_at_or_below(n).unwrap_or(ground.lowest_speed);
    let first = on_machine(speeds.bound);
    let mut speed = first;
    let first_wanted = wanted(&start, asked.feed);
    for _ in 0..SPEED_ROUNDS {
        let (results, loads) = P::evaluate(silent, own, ground, speed, first_wanted);
        let slower = relieved::<P>(own, ground, &start, speed, &results, &loads);
        if slower.value < speed.value {
            speed = on_machine(slower);
        }
    }
    let mut feeding = first_feed(&start, asked.feed);
    for _ in 0..ROUNDS {
        let (results, loads) = P::evaluate(silent, own, ground, speed, feeding.feed);
        feeding = lowered::<P>(own, ground, &start, speed, feeding, &results, &loads);
    }
    if let Some(real) = machine.feed_at_speed(feed_speed(&start, speed, feeding.feed), speed) {
        feeding = snapped(&start, speed, feeding, real);
    }
    let (results, loads) = P::evaluate(silent, own, ground, speed, feeding.feed);
    let time = |v, f| {
        let (n, f) = end_of_tables::<P>(own, ground, &start, v, f);
        P::evaluate(&mut NoRecord, own, ground, n, f).1.time
    };
    let time_low = time(ground.speed_high, ground.feed_high);
    let time_high = time(ground.speed_low, ground.feed_low);
    Settled {
        settings: settings(silent, ground, &start, &speeds, speed, feeding.feed),
        verdict: judged::<P>(own, ground, &start, speed, &feeding, &results, &loads),
        ends: ends(ground, &loads, time_low, time_high),
        start,
        speeds,
        first,
        speed,
        feeding,
        results,
        loads,
    }
}

impl<P: Operate> Settled<P> {
    /// Whether everything that was computed is a number.
    pub(crate) fn is_sound(&self) -> bool {
        let finite = |values: &[f64]| values.iter().all(|value| value.is_finite());
        let settings = Settings {
            handwheel_rate: si(0.0),
            ..self.settings
        };
        finite(&settings.values())
            && finite(&P::values(&self.results))
            && finite(&[
                self.ends.force_high.value,
                self.ends.power_high.value,
                self.ends.time_low.value,
                self.ends.time_high.value,
                self.verdict.share.value,
            ])
    }
}
