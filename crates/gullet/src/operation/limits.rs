//! The limits in numbers: value, bound and share of each, and which of them binds.

use super::lanes::lanes;
use super::numbers::{Candidate, Inputs, Kinds, Outcome};
use super::request::Operation;
use crate::formula::practice;
use crate::model::Direction;
use crate::quantity::math::select;
use crate::quantity::{Kind, RotationalSpeed, si};

/// Which side of its bound a value must stay on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Side {
    /// At most the bound.
    AtMost,
    /// At least the bound.
    AtLeast,
}

/// Share above which a limit counts as exceeded; rounding alone must not exceed one.
pub(crate) const EXCEEDED: f64 = 1.0 + 1e-9;

/// Share of its bound that a value uses; zero of zero uses nothing, something of zero is beyond any
/// share.
#[inline(always)]
pub(crate) fn share(side: Side, value: f64, bound: f64) -> f64 {
    let (part, whole) = match side {
        Side::AtMost => (value, bound),
        Side::AtLeast => (bound, value),
    };
    let ratio = part / whole;
    let ratio = if ratio < f64::MAX { ratio } else { f64::MAX };
    let ratio = if whole <= 0.0 { f64::MAX } else { ratio };
    if part <= 0.0 { 0.0 } else { ratio }
}

macro_rules! limit_names {
    ($($(#[$doc:meta])* $name:ident = $number:literal, $text:literal, $kind:ident;)*) => {
        /// The limits that operations look at; the same number and name in every face.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
        #[non_exhaustive]
        pub enum LimitName { $($(#[$doc])* $name = $number,)* }

        impl LimitName {
            /// Every limit, by number.
            pub const ALL: &'static [LimitName] = &[$(LimitName::$name),*];

            /// Stable name.
            pub fn name(self) -> &'static str {
                match self { $(LimitName::$name => $text,)* }
            }

            /// What it measures.
            pub fn kind(self) -> Kind {
                match self { $(LimitName::$name => Kind::$kind,)* }
            }

            /// The limit of this number.
            pub fn from_number(number: u8) -> Option<LimitName> {
                match number { $($number => Some(LimitName::$name),)* _ => None }
            }
        }
    };
}

limit_names! {
    /// Highest spindle speed of the machine.
    SpindleSpeedHighest = 1, "spindle_speed_highest", RotationalSpeed;
    /// Lowest spindle speed of the machine.
    SpindleSpeedLowest = 2, "spindle_speed_lowest", RotationalSpeed;
    /// Speed marked on the cutter or its holder.
    CutterSpeed = 3, "cutter_speed", RotationalSpeed;
    /// Cutting speed at the high end of the tables.
    CuttingSpeed = 4, "cutting_speed", Velocity;
    /// Pace that a hand can hold.
    HandwheelPace = 5, "handwheel_pace", Velocity;
    /// Highest table feed of the machine.
    TableFeed = 6, "table_feed", Velocity;
    /// Lowest table feed of the machine.
    TableFeedLowest = 7, "table_feed_lowest", Velocity;
    /// Thinnest chip that cuts.
    SmallestChip = 8, "smallest_chip", Length;
    /// Thickest chip of the tables.
    LargestChip = 9, "largest_chip", Length;
    /// Roughness asked for.
    MeanRoughness = 10, "mean_roughness", Length;
    /// Power at the cutter.
    Power = 11, "power", Power;
    /// Torque on the spindle.
    Torque = 12, "torque", Torque;
    /// Deflection of the cutter.
    Deflection = 13, "deflection", Length;
    /// Clamping force.
    Clamping = 14, "clamping", Force;
    /// Length of the flutes.
    FluteLength = 15, "flute_length", Length;
    /// Roughing depth of the practice.
    RoughingDepth = 16, "roughing_depth", Length;
    /// Depth of a climb cut on a table with backlash.
    ClimbWithBacklash = 17, "climb_with_backlash", Length;
    /// Height that the jaws grip.
    Grip = 18, "grip", Length;
    /// Stick-out over diameter.
    StickOut = 19, "stick_out", Length;
    /// Feed at the high end of the tables.
    LargestFeed = 20, "largest_feed", Length;
    /// Smallest feed that cuts instead of rubbing.
    SmallestFeed = 21, "smallest_feed", Length;
    /// Force along the spindle.
    Thrust = 22, "thrust", Force;
    /// Torque that turns the work out of its hold.
    HoldTorque = 23, "hold_torque", Torque;
    /// Depth of a hole over its diameter.
    DepthRatio = 24, "depth_ratio", Ratio;
    /// Stock on the diameter, largest.
    LargestStock = 25, "largest_stock", Length;
    /// Stock on the diameter, smallest.
    SmallestStock = 26, "smallest_stock", Length;
    /// Percentage of thread, largest.
    LargestThread = 27, "largest_thread", Ratio;
    /// Percentage of thread, smallest.
    SmallestThread = 28, "smallest_thread", Ratio;
    /// Travel that a tap runs on while the spindle reverses.
    Overrun = 29, "overrun", Length;
    /// Length of a bar or blade over its size.
    Overhang = 30, "overhang", Ratio;
    /// Force that holds work in a chuck.
    ChuckGrip = 31, "chuck_grip", Force;
    /// Speed of the carriage along a thread.
    CarriageSpeed = 32, "carriage_speed", Velocity;
    /// Depth of cut over what the edge or the practice allows.
    DepthOfCut = 33, "depth_of_cut", Length;
    /// Angle of a ramp or a helix into the work.
    RampAngle = 34, "ramp_angle", Angle;
    /// Diameter of a cutter over the bore or thread it cuts.
    CutterInBore = 35, "cutter_in_bore", Length;
    /// Stepover across the passes.
    Stepover = 36, "stepover", Length;
    /// Teeth in the work, most.
    MostTeeth = 37, "most_teeth", Ratio;
    /// Teeth in the work, fewest.
    FewestTeeth = 38, "fewest_teeth", Ratio;
    /// Rate at which a saw cuts through an area.
    AreaRate = 39, "area_rate", AreaRate;
    /// Length of work that stands out of a chuck, over its diameter.
    WorkOverhang = 40, "work_overhang", Ratio;
    /// Width of the chamfer over what the edge reaches.
    EdgeReach = 41, "edge_reach", Length;
    /// Acceleration length before a thread.
    RunIn = 42, "run_in", Length;
}

impl LimitName {
    /// The number as the lanes of a block carry it.
    #[inline(always)]
    pub(crate) fn lane(self) -> f64 {
        f64::from(self as u8)
    }

    /// The limit that a lane carries; none for 0.
    pub(crate) fn from_lane(lane: f64) -> Option<LimitName> {
        LimitName::from_number(lane as u8)
    }
}

/// One limit in numbers.
#[derive(Clone, Copy)]
pub(crate) struct Entry {
    /// Number of its name.
    pub number: f64,
    pub side: Side,
    pub value: f64,
    pub bound: f64,
    /// Whether there is such a limit here.
    pub present: bool,
}

/// Below the base speed the drive's torque is constant: power and torque then run out together,
/// and it is the torque that a lower speed does not relieve.
#[inline(always)]
pub(crate) fn torque_first(inputs: &Inputs, speed: RotationalSpeed) -> bool {
    speed.value < inputs.base_speed.value * (1.0 - 1e-9)
}

/// Looks at the limits, one after the other.
pub(crate) trait See {
    fn see(&mut self, entry: Entry);

    #[inline(always)]
    fn at(&mut self, present: bool, name: LimitName, side: Side, value: f64, bound: f64) {
        self.see(Entry {
            number: name.lane(),
            side,
            value,
            bound,
            present,
        });
    }
}

/// Shows every limit, in the order of the ledger.
#[inline(always)]
pub(crate) fn each(
    kinds: &Kinds,
    inputs: &Inputs,
    candidate: &Candidate,
    outcome: &Outcome,
    eye: &mut impl See,
) {
    use LimitName as Name;
    let speed = candidate.speed.value;
    let most = Side::AtMost;
    let least = Side::AtLeast;
    eye.at(
        true,
        Name::SpindleSpeedHighest,
        most,
        speed,
        inputs.highest_speed.value,
    );
    eye.at(
        true,
        Name::SpindleSpeedLowest,
        least,
        speed,
        inputs.lowest_speed.value,
    );
    let marked = inputs.cutter_speed.value;
    eye.at(
        marked < f64::INFINITY,
        Name::CutterSpeed,
        most,
        speed,
        marked,
    );
    let v_c = outcome.motion.cutting_speed.value;
    eye.at(true, Name::CuttingSpeed, most, v_c, inputs.speed_high.value);
    let feed_name = if kinds.by_hand {
        Name::HandwheelPace
    } else {
        Name::TableFeed
    };
    let v_f = outcome.motion.table_feed.value;
    let highest = inputs.highest_feed.value;
    eye.at(highest < f64::INFINITY, feed_name, most, v_f, highest);
    eye.at(
        !kinds.by_hand,
        Name::TableFeedLowest,
        least,
        v_f,
        inputs.lowest_feed.value,
    );
    let chip = outcome.motion.max_chip.value;
    eye.at(
        true,
        Name::SmallestChip,
        least,
        chip,
        inputs.smallest_chip.value,
    );
    eye.at(true, Name::LargestChip, most, chip, inputs.feed_high.value);
    let wanted = inputs.mean_roughness.value;
    let reached = outcome.finish.mean_roughness.value;
    eye.at(
        wanted < f64::INFINITY && !reached.is_nan(),
        Name::MeanRoughness,
        most,
        reached,
        wanted,
    );
    let (power, available_power) = (outcome.rotary.limit_power, outcome.rotary.available_power);
    let (torque, available_torque) = (outcome.rotary.limit_torque, outcome.rotary.available_torque);
    let swapped = torque_first(inputs, candidate.speed);
    let pick = |a: f64, b: f64| if swapped { b } else { a };
    eye.see(Entry {
        number: pick(Name::Power.lane(), Name::Torque.lane()),
        side: most,
        value: pick(power.value, torque.value),
        bound: pick(available_power.value, available_torque.value),
        present: true,
    });
    eye.see(Entry {
        number: pick(Name::Torque.lane(), Name::Power.lane()),
        side: most,
        value: pick(torque.value, power.value),
        bound: pick(available_torque.value, available_power.value),
        present: true,
    });
    eye.at(
        true,
        Name::Deflection,
        most,
        outcome.peak.deflection.value,
        inputs.deflection.value,
    );
    eye.at(
        true,
        Name::Clamping,
        most,
        outcome.peak.clamping_needed.value,
        inputs.clamping_force.value,
    );
    eye.at(
        true,
        Name::FluteLength,
        most,
        inputs.axial_depth.value,
        inputs.flute_length.value,
    );
    // The depth that a plan counts: radial in side milling, axial otherwise.
    let side = kinds.operation == Operation::SideMilling;
    let depth = if side {
        inputs.radial_depth.value
    } else {
        inputs.axial_depth.value
    };
    let cap = practice::practice_depth::value(inputs.diameter, inputs.roughing_depth_ratio);
    eye.at(
        !kinds.finishing,
        Name::RoughingDepth,
        most,
        depth,
        cap.value,
    );
    let climbs = side && kinds.direction == Direction::Climb && kinds.backlash;
    eye.at(
        climbs,
        Name::ClimbWithBacklash,
        most,
        depth,
        inputs.climb_depth.value,
    );
    let grip = practice::grip_for_height::value(inputs.part_height, inputs.smallest_grip);
    eye.at(true, Name::Grip, least, inputs.grip_depth.value, grip.value);
    let reach = practice::stick_out_cap::value(inputs.diameter, inputs.stick_out_ratio);
    eye.at(
        true,
        Name::StickOut,
        most,
        inputs.stick_out.value,
        reach.value,
    );
}

lanes! {
    /// What the limits say together.
    Verdict, VerdictBlock {
        /// Number of the limit nearest to its bound.
        binding: Ratio,
        /// Share of its bound that it uses.
        share: Ratio,
        /// Number of the first limit that is exceeded; 0 where all hold.
        exceeded: Ratio,
    }
}

/// Whether a limit can bind: what no setting of the cut moves only binds where it is exceeded.
#[inline(always)]
pub(crate) fn free(number: f64, share: f64) -> bool {
    let fixed = (number == LimitName::StickOut.lane())
        | (number == LimitName::Grip.lane())
        | (number == LimitName::DepthRatio.lane())
        | (number == LimitName::LargestStock.lane())
        | (number == LimitName::SmallestStock.lane())
        | (number == LimitName::LargestThread.lane())
        | (number == LimitName::SmallestThread.lane());
    (share > EXCEEDED) | !fixed
}

/// The limit that binds: the one used to the largest share; of those used alike the one that holds
/// the feed, else the first.
#[inline(always)]
pub(crate) fn judge(
    kinds: &Kinds,
    inputs: &Inputs,
    candidate: &Candidate,
    outcome: &Outcome,
) -> Verdict {
    let mut highest = Highest::default();
    each(kinds, inputs, candidate, outcome, &mut highest);
    let mut nearest = Nearest::new(&highest, candidate.held_by.value);
    each(kinds, inputs, candidate, outcome, &mut nearest);
    nearest.verdict(&highest)
}

/// The largest share of a limit that can bind, and the first limit that is exceeded.
#[derive(Default)]
pub(crate) struct Highest {
    share: f64,
    exceeded: f64,
}

impl See for Highest {
    #[inline(always)]
    fn see(&mut self, entry: Entry) {
        let share = share(entry.side, entry.value, entry.bound);
        let larger = entry.present & free(entry.number, share) & (share > self.share);
        self.share = if larger { share } else { self.share };
        let first = entry.present & (share > EXCEEDED) & (self.exceeded == 0.0);
        self.exceeded = if first { entry.number } else { self.exceeded };
    }
}

/// The limits used to the largest share: the first, and the one that holds the feed.
pub(crate) struct Nearest {
    least: f64,
    held_by: f64,
    first: (f64, f64),
    holding: (f64, f64),
}

impl Nearest {
    #[inline(always)]
    pub(crate) fn new(highest: &Highest, held_by: f64) -> Nearest {
        Nearest {
            least: highest.share * (1.0 - 1e-9),
            held_by,
            first: (0.0, 0.0),
            holding: (0.0, 0.0),
        }
    }

    #[inline(always)]
    pub(crate) fn verdict(&self, highest: &Highest) -> Verdict {
        let held = self.holding.0 > 0.0;
        Verdict {
            binding: select(held, si(self.holding.0), si(self.first.0)),
            share: select(held, si(self.holding.1), si(self.first.1)),
            exceeded: si(highest.exceeded),
        }
    }
}

impl See for Nearest {
    #[inline(always)]
    fn see(&mut self, entry: Entry) {
        let share = share(entry.side, entry.value, entry.bound);
        let near = entry.present & free(entry.number, share) & (share >= self.least);
        let takes = near & (self.first.0 == 0.0);
        self.first.0 = if takes { entry.number } else { self.first.0 };
        self.first.1 = if takes { share } else { self.first.1 };
        let holds = near & (entry.number == self.held_by);
        self.holding.0 = if holds { entry.number } else { self.holding.0 };
        self.holding.1 = if holds { share } else { self.holding.1 };
    }
}
