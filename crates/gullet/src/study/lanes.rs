//! A block of rows with everything that is computed of them.

use super::rows::{Input, NONE};
use crate::operation::lanes::LANES;
use crate::operation::limits::VerdictBlock;
use crate::operation::numbers::{
    CandidateBlock, EngagementBlock, FinishBlock, GeometryBlock, InputsBlock, LawBlock, LoadBlock,
    MotionBlock, PeakBlock, RotaryBlock, SpeedsBlock, TeethBlock, WantedBlock, WorstBlock,
};
use crate::operation::results::{EndsBlock, PaceBlock};

/// One value a row of a block.
pub(super) type Lanes = [f64; LANES];

/// A block of rows.
pub(super) struct Block {
    pub inputs: InputsBlock,
    pub engaged: EngagementBlock,
    pub speeds: SpeedsBlock,
    /// The machine's speed for the wanted one, and within the tables; NaN below its lowest.
    pub fast: Lanes,
    pub real: Lanes,
    pub geometry: GeometryBlock,
    pub teeth: TeethBlock,
    /// The laws of the group, the default pair's first; those beyond its number are not used.
    pub laws: [LawBlock; 4],
    /// The worst of them at the mean and at the largest chip.
    pub at_mean: WorstBlock,
    pub at_largest: WorstBlock,
    pub wanted: WantedBlock,
    /// Of one law after the other.
    pub load: LoadBlock,
    /// Before and after the machine's feed is looked at.
    pub unsnapped: CandidateBlock,
    pub candidate: CandidateBlock,
    /// The table feed wanted, and the machine's at or below it; NaN below its lowest.
    pub wanted_feed: Lanes,
    pub machine_feed: Lanes,
    pub motion: MotionBlock,
    pub rotary: RotaryBlock,
    pub peak: PeakBlock,
    pub finish: FinishBlock,
    pub pace: PaceBlock,
    pub ends: EndsBlock,
    pub verdict: VerdictBlock,
    pub doubts: Lanes,
    /// Not 0 where the scalar call must decide.
    pub careful: Lanes,
    /// 0, or the number of the code of the row's error.
    pub status: [i32; LANES],
}

impl Block {
    pub(super) fn new() -> Box<Block> {
        let zeros = [0.0; LANES];
        Box::new(Block {
            inputs: InputsBlock::every(0.0),
            engaged: EngagementBlock::every(0.0),
            speeds: SpeedsBlock::every(0.0),
            fast: zeros,
            real: zeros,
            geometry: GeometryBlock::every(0.0),
            teeth: TeethBlock::every(0.0),
            laws: core::array::from_fn(|_| LawBlock::every(0.0)),
            at_mean: WorstBlock::every(0.0),
            at_largest: WorstBlock::every(0.0),
            wanted: WantedBlock::every(0.0),
            load: LoadBlock::every(0.0),
            unsnapped: CandidateBlock::every(0.0),
            candidate: CandidateBlock::every(0.0),
            wanted_feed: zeros,
            machine_feed: zeros,
            motion: MotionBlock::every(0.0),
            rotary: RotaryBlock::every(0.0),
            peak: PeakBlock::every(0.0),
            finish: FinishBlock::every(0.0),
            pace: PaceBlock::every(0.0),
            ends: EndsBlock::every(0.0),
            verdict: VerdictBlock::every(0.0),
            doubts: zeros,
            careful: zeros,
            status: [0; LANES],
        })
    }

    /// Whether a result is one that the stages leave out unless it is asked for.
    pub(super) fn is_spread(&self, result: usize) -> bool {
        let spread = [
            &self.ends.force_low,
            &self.ends.force_high,
            &self.ends.power_low,
            &self.ends.power_high,
        ];
        let lanes = self.results().get(result).copied();
        lanes.is_some_and(|lanes| spread.iter().any(|other| core::ptr::eq(*other, lanes)))
    }

    /// The lanes of every result, in the order of the list of all.
    pub(super) fn results(&self) -> [&Lanes; RESULTS] {
        let (m, r, p) = (&self.motion, &self.rotary, &self.peak);
        let (g, i) = (&self.geometry, &self.inputs);
        [
            &self.speeds.wanted,
            &self.candidate.speed,
            &m.cutting_speed,
            &m.max_chip,
            &self.candidate.feed,
            &m.feed_per_rev,
            &m.table_feed,
            &self.pace.handwheel_rate,
            &self.pace.time_per_inch,
            &self.pace.time_per_10_mm,
            &self.engaged.effective_diameter,
            &g.entry_angle,
            &g.exit_angle,
            &m.max_chip,
            &m.mean_chip,
            &m.removal_rate,
            &m.specific_cutting_force,
            &m.cutting_power,
            &m.motor_power,
            &m.torque,
            &m.mean_force,
            &m.unit_power_power,
            &r.limit_power,
            &r.limit_torque,
            &p.tangential,
            &p.in_plane,
            &p.axial,
            &p.deflection,
            &p.clamping_needed,
            &i.clamping_force,
            &r.available_power,
            &r.available_torque,
            &self.finish.mean_roughness,
            &g.travel,
            &self.finish.time,
            &i.speed_low,
            &i.speed_start,
            &i.speed_high,
            &self.ends.force_low,
            &self.ends.force_high,
            &self.ends.power_low,
            &self.ends.power_high,
            &self.ends.time_low,
            &self.ends.time_start,
            &self.ends.time_high,
            &self.verdict.share,
        ]
    }
}

/// Results there are: settings, consequences, and those beside them.
pub(super) const RESULTS: usize = 46;

macro_rules! inputs {
    ($($name:ident => $field:ident;)*) => {
        impl Input {
            /// The lanes that hold it.
            pub(super) fn lanes(self, block: &mut InputsBlock) -> &mut Lanes {
                match self { $(Input::$name => &mut block.$field,)* }
            }
        }
    };
}

inputs! {
    AxialDepth => axial_depth;
    RadialDepth => radial_depth;
    Offset => offset;
    CutLength => cut_length;
    MeanRoughness => mean_roughness;
    SpindleSpeed => asked_speed;
    FeedPerTooth => asked_feed;
    CutterDiameter => diameter;
    CutterTeeth => teeth;
    CutterFluteLength => flute_length;
    CutterShankDiameter => shank_diameter;
    CutterStickOut => stick_out;
    CutterHelixAngle => helix_angle;
    CutterMaximumSpeed => cutter_speed;
    CutterCornerRadius => corner_radius;
    CutterEdgeAngle => cutting_edge_angle;
    ClampingForce => clamping_force;
    JawFriction => friction;
    GripDepth => grip_depth;
    PartHeight => part_height;
}

impl Input {
    /// The value as the numbers of a pass hold it: where nothing is asked for a speed or feed is 0 and
    /// a bound infinite, so a 0 or an infinity that was given must stay recognizable as bad.
    #[inline(always)]
    pub(super) fn held(self, value: f64) -> f64 {
        match self {
            Input::SpindleSpeed | Input::FeedPerTooth => {
                let given = if value == 0.0 { -1.0 } else { value };
                if value == NONE { 0.0 } else { given }
            }
            Input::MeanRoughness | Input::CutterMaximumSpeed => {
                let given = if value == f64::INFINITY {
                    f64::NAN
                } else {
                    value
                };
                if value == NONE { f64::INFINITY } else { given }
            }
            _ => value,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::study::ResultField;

    #[test]
    fn every_result_has_its_lanes() {
        assert_eq!(ResultField::all().len(), RESULTS);
    }
}
