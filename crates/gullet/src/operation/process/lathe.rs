//! What the operations of a lathe have in common: the edge with its nose, and the forces on it.

use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::pick::pick;
use crate::formula::{chuck, force, turning};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{min, number, select, sin};
use crate::quantity::{Angle, Force, Length, Pressure, Ratio, RotationalSpeed, Velocity, si};

/// The edge of a turning tool.
#[derive(Clone, Copy)]
pub(super) struct Edge {
    pub nose_radius: Length,
    pub cutting_edge_angle: Angle,
    /// Thrust in the plane of the cut over the cutting force.
    pub thrust_share: Ratio,
}

/// Forces on the edge.
pub(super) struct Forces {
    /// Mean undeformed chip thickness.
    pub chip: Length,
    /// Specific cutting force of the material's own pair, sharp edge.
    pub k: Pressure,
    /// Of the highest pair, worn edge.
    pub worst_k: Pressure,
    /// Exponent of the feed in the forces.
    pub exponent: Ratio,
    /// Cutting force of the material's own pair, sharp edge.
    pub cutting: Force,
    /// The forces that limits are checked with.
    pub worst: Force,
    pub passive: Force,
    pub feed: Force,
}

impl Edge {
    /// The forces of a cut, with a factor of the operation on the specific cutting force.
    #[inline(always)]
    pub(super) fn forces(
        &self,
        log: &mut impl Log,
        ground: &Ground,
        depth: Length,
        feed: Length,
        factor: Ratio,
    ) -> Forces {
        let (r, kappa) = (self.nose_radius, self.cutting_edge_angle);
        let edge_length = turning::turning_edge_length::step(log, depth, feed, r, kappa);
        let chip = turning::turning_mean_chip_thickness::step(log, depth, feed, edge_length);
        let k = ground.own_force(log, chip, factor);
        let cutting = force::chip_section_force::step(log, k, chip, edge_length);
        let worst = ground.worst_force(log, chip, factor);
        let highest = force::chip_section_force::step(log, worst.k, chip, edge_length);
        let chord = turning::turning_chord_angle::step(log, depth, feed, r, kappa);
        let share = self.thrust_share;
        Forces {
            chip,
            k,
            worst_k: worst.k,
            exponent: one() - worst.exponent,
            cutting,
            worst: highest,
            passive: turning::turning_passive_force::step(log, highest, chord, share),
            feed: turning::turning_feed_force::step(log, highest, chord, share),
        }
    }

    /// The feed of the thinnest chip that the straight edge still cuts.
    #[inline(always)]
    pub(super) fn least_feed(&self, smallest_chip: Length) -> Length {
        smallest_chip / sin(self.cutting_edge_angle)
    }
}

/// Finishing passes run 1.2 times as fast with high-speed steel, 1.5 times with carbide (machining
/// data handbook of public domain, seen); the smaller of both.
const FINISHING_SPEED: f64 = 1.2;

/// Cutting speed and feed of the tables for a pass, with the practice's factors: a finishing pass
/// starts faster, with the feed at the low end.
#[inline(always)]
pub(super) fn wanted(log: &mut impl Log, ground: &Ground, finishing: bool) -> (Velocity, Length) {
    use crate::formula::practice::{practice_cutting_speed, practice_feed_per_tooth};
    let factor = select(finishing, si(FINISHING_SPEED), one());
    let table = select(finishing, ground.feed_low, ground.feed_start);
    (
        practice_cutting_speed::step(log, ground.speed_chosen, ground.speed_factor * factor),
        practice_feed_per_tooth::step(log, table, ground.feed_factor),
    )
}

/// The limits of the tool's tip: the roughness asked for, and the length of the edge.
#[inline(always)]
pub(super) fn edge_limits(
    eye: &mut impl Eye,
    roughness: Length,
    wanted: Length,
    depth: Length,
    edge_length: Length,
    cutting_edge_angle: Angle,
) {
    eye.look(
        Look::most(LimitName::MeanRoughness, roughness.value, wanted.value)
            .only(wanted.value < f64::INFINITY)
            .with_feed(number(2.0))
            .from("asked for; the ideal roughness is compared")
            .change("take a larger nose radius"),
    );
    let cap =
        turning::turning_depth_cap::value(edge_length, cutting_edge_angle, number(EDGE_SHARE));
    eye.look(
        Look::most(LimitName::DepthOfCut, depth.value, cap.value)
            .only(edge_length.value < f64::INFINITY)
            .from("length of the edge; two thirds of it may cut: common practice, no source")
            .change("take the stock in more passes, or with a longer edge"),
    );
}

/// Share of the edge that may cut in one pass (common practice, no source).
const EDGE_SHARE: f64 = 2.0 / 3.0;

/// Grip that a chuck must have at rest for a grip at a speed; the speed takes none where none is
/// marked on the chuck.
#[inline(always)]
pub(super) fn grip_at_rest(
    log: &mut impl Log,
    grip: Force,
    n: RotationalSpeed,
    marked: RotationalSpeed,
) -> Force {
    pick(
        log,
        marked.value < f64::INFINITY,
        |log| chuck::static_grip_for_speed::step(log, grip, n, marked, number(GRIP_LOSS)),
        |_| grip,
    )
}

/// Work in a chuck that a cut across its end turns in the jaws. A spindle that holds the cutting speed
/// takes grip away while the lever of the force shortens: what is needed is highest at one of the ends.
pub(super) struct Hold {
    pub force: Force,
    /// Diameter that the jaws grip.
    pub diameter: Length,
    pub friction: Ratio,
    /// Speed marked on the chuck.
    pub marked: RotationalSpeed,
}

impl Hold {
    /// Grip at rest for the force at a diameter and a speed.
    #[inline(always)]
    pub(super) fn grip_at_rest(
        &self,
        log: &mut impl Log,
        ground: &Ground,
        at: Length,
        n: RotationalSpeed,
    ) -> Force {
        let grip = chuck::required_chuck_grip::step(
            log,
            self.force,
            si(0.0),
            at,
            self.diameter,
            self.friction,
            ground.safety,
        );
        grip_at_rest(log, grip, n, self.marked)
    }
}

/// Share of a chuck's grip that is lost at its largest speed (DIN EN 1550, seen in a chuck manual).
const GRIP_LOSS: f64 = 2.0 / 3.0;
pub(super) const GRIP_ORIGIN: &str = "grip of the chuck at rest, less what the speed takes of it";
pub(super) const GRIP_REMEDY: &str =
    "take a smaller depth or a lower speed, or grip on a larger diameter";

/// Largest speed of a spindle that holds the cutting speed: the machine's, or that marked on the chuck.
#[inline(always)]
pub(super) fn clamp(ground: &Ground, marked: RotationalSpeed) -> RotationalSpeed {
    min(ground.highest_speed, marked)
}

/// Whether the spindle holds the cutting speed: where that is chosen, and the drive has no steps.
#[inline(always)]
pub(super) fn holds_speed(drive: Ratio, ground: &Ground) -> bool {
    (drive.value > 0.5) & (ground.stepped.value <= 0.0)
}

/// The doubts of a spindle that is to hold the cutting speed.
#[inline(always)]
pub(super) fn constant_speed_doubts(
    drive: Ratio,
    marked: RotationalSpeed,
    ground: &Ground,
    doubt: &mut impl Doubt,
) {
    doubt.doubt(
        (drive.value > 0.5) & (ground.stepped.value > 0.0),
        WarningCode::MachineLimits,
        "a spindle with steps cannot hold the cutting speed: one speed was taken",
    );
    doubt.doubt(
        holds_speed(drive, ground) & (marked.value == f64::INFINITY),
        WarningCode::Assumed,
        "no largest speed is marked on the chuck: the machine's highest was taken as the clamp",
    );
}
