//! The numbers of a milling pass: what the chain starts from and what it ends in.
//!
//! Choices that take different formulas stand apart in [`Kinds`]; everything else is a number, also
//! where nothing is known: a bound that is not there is infinite, a value that was not asked for 0.

use super::lanes::lanes;
use super::request::Operation;
use crate::model::{CutterForm, Direction};
use crate::quantity::{Length, Pressure, Ratio, si};

/// Shape of the cutting end, as far as formulas differ by it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(crate) enum Form {
    Square,
    CornerRadius,
    BallNose,
    FaceMill,
}

impl Form {
    pub(crate) fn of(form: CutterForm) -> Form {
        match form {
            CutterForm::Square => Form::Square,
            CutterForm::CornerRadius(_) => Form::CornerRadius,
            CutterForm::BallNose => Form::BallNose,
            CutterForm::FaceMill(_) => Form::FaceMill,
        }
    }
}

/// What decides which formulas apply; the same for all rows of a block.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(crate) struct Kinds {
    pub operation: Operation,
    pub direction: Direction,
    pub finishing: bool,
    /// The cutter's form, a flag each: a choice between four is no work for vectors.
    pub ball_nose: bool,
    pub corner_radius: bool,
    pub face_mill: bool,
    /// Whether the feed runs across the jaws.
    pub across_jaws: bool,
    pub by_hand: bool,
    /// Whether a climb cut can pull the table through its backlash.
    pub backlash: bool,
    /// Whether a unit power is known, whether with its chip thickness, whether measured at a motor.
    pub unit_power: bool,
    pub unit_power_at_chip: bool,
    pub unit_power_at_motor: bool,
}

lanes! {
    /// Everything the chain needs, made once a pass.
    Inputs, InputsBlock {
        // The pass.
        axial_depth: Length,
        radial_depth: Length,
        offset: Length,
        cut_length: Length,
        part_height: Length,
        /// 0 where the tables decide.
        asked_speed: RotationalSpeed,
        /// 0 where the tables decide.
        asked_feed: Length,
        /// Infinite where none is asked for.
        mean_roughness: Length,
        // The cutter.
        diameter: Length,
        teeth: Ratio,
        cutting_edge_angle: Angle,
        corner_radius: Length,
        helix_angle: Angle,
        stick_out: Length,
        flute_length: Length,
        shank_diameter: Length,
        modulus: Pressure,
        /// Infinite where none is marked.
        cutter_speed: RotationalSpeed,
        // The machine.
        lowest_speed: RotationalSpeed,
        highest_speed: RotationalSpeed,
        motor_power: Power,
        efficiency: Ratio,
        base_speed: RotationalSpeed,
        /// Infinite where none is known.
        maximum_torque: Torque,
        /// Of the table or the hand; infinite where neither bounds it.
        highest_feed: Velocity,
        /// 0 by hand.
        lowest_feed: Velocity,
        travel_per_turn: Length,
        // The hold.
        friction: Ratio,
        clamping_force: Force,
        grip_depth: Length,
        // The practice.
        speed_factor: Ratio,
        feed_factor: Ratio,
        thinning_cap: Ratio,
        smallest_chip: Length,
        power_share: Ratio,
        wear_factor: Ratio,
        radial_force_ratio: Ratio,
        safety: Ratio,
        deflection: Length,
        clearance: Length,
        roughing_depth_ratio: Ratio,
        climb_depth: Length,
        stick_out_ratio: Ratio,
        smallest_grip: Ratio,
        // The tables.
        speed_low: Velocity,
        speed_start: Velocity,
        speed_high: Velocity,
        /// Low or start, as the practice chooses.
        speed_chosen: Velocity,
        feed_low: Length,
        feed_start: Length,
        feed_high: Length,
        kc11_a: Pressure,
        kc11_b: Pressure,
        kc11_c: Pressure,
        kc11_d: Pressure,
        exponent_a: Ratio,
        exponent_b: Ratio,
        exponent_c: Ratio,
        exponent_d: Ratio,
        unit_power: Pressure,
        unit_power_chip: Length,
        unit_power_efficiency: Ratio,
        /// 1 where a value of the tables rests on something assumed.
        assumed: Ratio,
    }
}

/// A Kienzle pair.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Pair {
    pub kc11: Pressure,
    pub exponent: Ratio,
}

impl Inputs {
    /// The pairs that limits are checked with: those of the material, the default one first and
    /// repeated where there are fewer, and the unit power as a pair.
    #[inline(always)]
    pub(crate) fn pairs(&self) -> [Pair; 4] {
        let pair = |kc11, exponent| Pair { kc11, exponent };
        [
            pair(self.kc11_a, self.exponent_a),
            pair(self.kc11_b, self.exponent_b),
            pair(self.kc11_c, self.exponent_c),
            pair(self.kc11_d, self.exponent_d),
        ]
    }

    pub(super) fn set_pairs(&mut self, [a, b, c, d]: [Pair; 4]) {
        (self.kc11_a, self.exponent_a) = (a.kc11, a.exponent);
        (self.kc11_b, self.exponent_b) = (b.kc11, b.exponent);
        (self.kc11_c, self.exponent_c) = (c.kc11, c.exponent);
        (self.kc11_d, self.exponent_d) = (d.kc11, d.exponent);
    }

    /// Whether the cut lies within the round part of the edge.
    #[inline(always)]
    pub(crate) fn within_round_edge(&self) -> bool {
        self.axial_depth.value < self.corner_radius.value
    }
}

impl InputsBlock {
    /// Takes over the speeds of one row.
    pub(crate) fn set_speeds(&mut self, lane: usize, row: &Inputs) {
        self.speed_low[lane] = row.speed_low.value;
        self.speed_start[lane] = row.speed_start.value;
        self.speed_high[lane] = row.speed_high.value;
        self.speed_chosen[lane] = row.speed_chosen.value;
        self.assumed[lane] = row.assumed.value;
    }
}

lanes! {
    /// How the cutter meets the work.
    Engagement, EngagementBlock {
        effective_diameter: Length,
        /// Width of the work under the cutter.
        radial_depth: Length,
        /// Its edges, from the cutter's axis.
        edge_low: Length,
        edge_high: Length,
        /// That forces are computed with: the cutter's own, or within a round edge that of the straight
        /// edge with the same length and the same chip area.
        cutting_edge_angle: Angle,
    }
}

lanes! {
    /// Spindle speeds before the machine's own are looked at.
    Speeds, SpeedsBlock {
        wanted: RotationalSpeed,
        /// Within what is marked on the cutter.
        capped: RotationalSpeed,
        /// Within the high end of the tables too.
        bound: RotationalSpeed,
    }
}

lanes! {
    /// What does not depend on speed and feed.
    Geometry, GeometryBlock {
        entry_angle: Angle,
        exit_angle: Angle,
        arc: Angle,
        largest_sine: Ratio,
        /// Largest chip over feed per tooth.
        chip_per_feed: Ratio,
        /// Mean over largest chip.
        chip_ratio: Ratio,
        chip_width: Length,
        travel: Length,
    }
}

lanes! {
    /// What the laws of all pairs take from the arc and the helix.
    Teeth, TeethBlock {
        /// In the arc at one instant at most.
        teeth: Ratio,
        /// Bound of the sum of their sines over the largest.
        sines: Ratio,
        /// Angles of a pitch and of the lag of an edge, in radians, and whole pitches in that.
        pitch: Ratio,
        lag: Ratio,
        whole: Ratio,
    }
}

lanes! {
    /// A pair with what the arc and the helix make of it: a law that limits are checked with.
    Law, LawBlock {
        kc11: Pressure,
        exponent: Ratio,
        /// Sum over the teeth in the arc over the largest force of one tooth.
        tooth_sum: Ratio,
        /// Helical edges over straight ones.
        relief: Ratio,
    }
}

lanes! {
    /// A feed per tooth that limits leave at a spindle speed.
    Candidate, CandidateBlock {
        speed: RotationalSpeed,
        feed: Length,
        wanted: Length,
        /// Number of the limit that holds the feed below the wanted one; 0 where none does.
        held_by: Ratio,
    }
}

lanes! {
    /// What follows from speed and feed: motion, chips, and power with the material's own pair.
    Motion, MotionBlock {
        cutting_speed: Velocity,
        feed_per_rev: Length,
        table_feed: Velocity,
        max_chip: Length,
        mean_chip: Length,
        removal_rate: VolumeRate,
        specific_cutting_force: Pressure,
        cutting_power: Power,
        motor_power: Power,
        torque: Torque,
        mean_force: Force,
        /// NaN where no unit power is known.
        unit_power_power: Power,
    }
}

lanes! {
    /// The law that is the worst at some chip thickness, and its specific cutting force there with a
    /// worn edge.
    Worst, WorstBlock {
        kc11: Pressure,
        exponent: Ratio,
        tooth_sum: Ratio,
        relief: Ratio,
        k: Pressure,
    }
}

lanes! {
    /// What the loads of every law are computed from: the chips of the wanted feed, and what the
    /// machine gives.
    Wanted, WantedBlock {
        mean_chip: Length,
        max_chip: Length,
        removal_rate: VolumeRate,
        power: Power,
        torque: Torque,
    }
}

lanes! {
    /// The load that uses most of its bound.
    Load, LoadBlock {
        /// Number of its limit.
        number: Ratio,
        share: Ratio,
    }
}

lanes! {
    /// The loads that limits are checked with: power and torque.
    Rotary, RotaryBlock {
        limit_power: Power,
        limit_torque: Torque,
        available_power: Power,
        available_torque: Torque,
    }
}

lanes! {
    /// Peak forces with what bends and loosens under them.
    Peak, PeakBlock {
        tangential: Force,
        in_plane: Force,
        axial: Force,
        deflection: Length,
        clamping_needed: Force,
    }
}

lanes! {
    /// What the pass leaves and takes.
    Finish, FinishBlock {
        /// NaN where no model applies.
        mean_roughness: Length,
        time: Time,
    }
}

/// What follows from speed and feed.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Outcome {
    pub motion: Motion,
    pub rotary: Rotary,
    pub peak: Peak,
    pub finish: Finish,
}

/// A value that may be missing.
pub(crate) fn known<T: Copy>(value: T, si: f64) -> Option<T> {
    (!si.is_nan()).then_some(value)
}

/// No rake: the pairs are used as the tables give them.
pub(crate) fn no_rake() -> crate::quantity::Angle {
    si(0.0)
}

/// Length that stands for one unit of feed.
pub(crate) fn unit_feed() -> Length {
    si(1.0)
}

/// Exponent that carries a unit power to another chip thickness.
pub(crate) const UNIT_POWER_EXPONENT: f64 = 0.2;

/// 1 as a number.
#[inline(always)]
pub(crate) fn one() -> Ratio {
    si(1.0)
}
