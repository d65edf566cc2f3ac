//! What the operations of milling cutters have in common: the feed of a thin cut, chips, power, and the
//! peak force with what bends under it.

use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use crate::formula::{
    NoRecord, chip, engagement, finish, force, path, power, practice, rotation, surface,
};
use crate::model::{CARBIDE_MODULUS, STEEL_MODULUS};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::{LimitName, WarningCode, loads, speed_feed};
use crate::quantity::math::{min, select};
use crate::quantity::{
    Angle, Force, Kind, Length, Power, Pressure, Ratio, RotationalSpeed, Torque, Velocity,
    VolumeRate, si,
};

/// A milling cutter in its holder.
#[derive(Clone, Copy)]
pub(crate) struct Tool {
    pub diameter: Length,
    pub teeth: Ratio,
    /// 0 where the edges are taken for straight.
    pub helix_angle: Angle,
    pub flute_length: Length,
    /// 0 where it is the cutter's diameter.
    pub shank_diameter: Length,
    pub stick_out: Length,
    /// 0 of steel, 1 of carbide.
    pub body: Ratio,
}

impl Tool {
    #[inline(always)]
    pub(crate) fn shank(&self) -> Length {
        select(
            self.shank_diameter.value > 0.0,
            self.shank_diameter,
            self.diameter,
        )
    }

    #[inline(always)]
    fn modulus(&self) -> Pressure {
        select(
            self.body.value < 0.5,
            si(STEEL_MODULUS),
            si(CARBIDE_MODULUS),
        )
    }

    /// Flutes that stand out of the holder.
    #[inline(always)]
    pub(crate) fn fluted(&self) -> Length {
        min(self.flute_length, self.stick_out)
    }

    /// The part of a depth that the flutes must reach over: all of it under a shank as thick as the
    /// cutter, the cut alone under a relieved one.
    #[inline(always)]
    pub(crate) fn along_flutes(&self, depth: Length, cut: Length) -> Length {
        select(
            self.shank().value < self.diameter.value * (1.0 - 1e-9),
            cut,
            depth,
        )
    }

    #[inline(always)]
    pub(crate) fn flute_limit(&self, depth: Length, cut: Length, eye: &mut impl Eye) {
        eye.look(
            Look::most(
                LimitName::FluteLength,
                self.along_flutes(depth, cut).value,
                self.fluted().value,
            )
            .from("cutter: flutes that stand out of the holder")
            .change("take longer flutes, a relieved shank with smaller levels, or less depth"),
        );
    }

    #[inline(always)]
    pub(crate) fn doubt_stick_out(&self, ground: &Ground, doubt: &mut impl Doubt) {
        let cap = practice::stick_out_cap::value(self.diameter, ground.stick_out_ratio);
        doubt.doubt(
            self.stick_out.value > cap.value * (1.0 + 1e-9),
            WarningCode::OutsideValidity,
            "the cutter stands out further than the practice allows: start slow, listen for chatter, shorten it where you can",
        );
    }
}

/// A side cut or slot, as arcs and rows come down to one.
#[derive(Clone, Copy)]
pub(crate) struct Side {
    /// Diameter of the circle that cuts.
    pub circle: Length,
    pub radial_depth: Length,
    pub axial_depth: Length,
    /// Of the straight edge that stands for the real one.
    pub cutting_edge_angle: Angle,
    /// Length of edge in the cut.
    pub chip_width: Length,
}

/// The angle of an edge along the cutter's axis.
#[inline(always)]
pub(crate) fn right_angle() -> Angle {
    si(core::f64::consts::FRAC_PI_2)
}

impl Side {
    /// Feed per tooth whose largest chip this is.
    #[inline(always)]
    pub(crate) fn feed_for_chip(&self, h: Length) -> Length {
        chip::feed_for_max_chip_thickness::value(
            h,
            self.circle,
            self.radial_depth,
            self.cutting_edge_angle,
        )
    }

    /// Feed per tooth of the tables under the practice, raised where the cut thins the chip.
    #[inline(always)]
    pub(crate) fn wanted_feed(&self, log: &mut impl Log, ground: &Ground) -> Length {
        let h = practice::practice_feed_per_tooth::step(log, ground.feed_start, ground.feed_factor);
        speed_feed::thinned_feed(
            log,
            h,
            self.circle,
            self.radial_depth,
            self.cutting_edge_angle,
            ground.thinning_cap,
        )
    }

    #[inline(always)]
    pub(crate) fn chips(&self, log: &mut impl Log, f: Length) -> Chips {
        let (d, a_e, kappa) = (self.circle, self.radial_depth, self.cutting_edge_angle);
        Chips {
            largest: chip::max_chip_thickness::step(log, f, d, a_e, kappa),
            mean: chip::mean_chip_thickness::step(log, f, d, a_e, kappa),
        }
    }
}

/// Cutting speed of the tables under the practice.
#[inline(always)]
pub(crate) fn wanted_speed(log: &mut impl Log, ground: &Ground) -> Velocity {
    practice::practice_cutting_speed::step(log, ground.speed_chosen, ground.speed_factor)
}

/// Feed of the cutter's centre over the feed at an inside contour.
#[inline(always)]
pub(crate) fn inside_share(contour: Length, diameter: Length) -> Ratio {
    let unit: Velocity = si(1.0);
    path::inside_arc_feed::value(unit, contour, diameter) / unit
}

/// The same of an outside contour.
#[inline(always)]
pub(crate) fn outside_share(contour: Length, diameter: Length) -> Ratio {
    let unit: Velocity = si(1.0);
    path::outside_arc_feed::value(unit, contour, diameter) / unit
}

/// Feeds along an arc.
#[derive(Clone, Copy)]
pub(crate) struct ArcFeed {
    pub contour: Velocity,
    pub centre: Velocity,
    /// Of the centre, a tooth. The cutter turns about the arc's middle, but its circle is round: each
    /// point of it meets the work as the centre moves, so this is the feed that makes the chip.
    pub per_tooth: Length,
}

/// Feeds inside a contour, from the feed per tooth at it.
#[inline(always)]
pub(crate) fn inside_feed(
    log: &mut impl Log,
    f: Length,
    teeth: Ratio,
    n: RotationalSpeed,
    contour_diameter: Length,
    diameter: Length,
) -> ArcFeed {
    let contour = rotation::table_feed::step(log, f, teeth, n);
    let centre = path::inside_arc_feed::step(log, contour, contour_diameter, diameter);
    let per_tooth = rotation::feed_per_tooth::step(log, centre, teeth, n);
    ArcFeed {
        contour,
        centre,
        per_tooth,
    }
}

/// Ideal mean roughness of the wall of a bore that a cutter runs round in: circles within a circle, as
/// of a ball in a hollow. With run-out one tooth leaves the mark.
#[inline(always)]
pub(crate) fn bore_wall_roughness(
    log: &mut impl Log,
    bore: Length,
    diameter: Length,
    feed_per_rev: Length,
) -> Length {
    log.choose(Kind::Length, feed_per_rev.value, || {
        "for the feed marks the feed per revolution, as the step of circles in a round hollow: with run-out one tooth leaves the mark".to_owned()
    });
    let height = surface::concave_scallop_height::step(log, diameter, bore / 2.0, feed_per_rev);
    finish::feed_mark_mean_roughness::step(log, height)
}

/// What one tooth takes.
#[derive(Clone, Copy)]
pub(crate) struct Chips {
    pub largest: Length,
    pub mean: Length,
}

/// Power with the material's own pair and a sharp edge, and what limits are checked with.
#[derive(Clone, Copy)]
pub(crate) struct Powers {
    pub cutting: Power,
    pub motor: Power,
    pub torque: Torque,
    pub mean_force: Force,
    pub limit: Power,
    pub limit_torque: Torque,
    /// Exponent of the feed in the loads of the limits.
    pub exponent: Ratio,
}

#[inline(always)]
pub(crate) fn powers(
    log: &mut impl Log,
    ground: &Ground,
    removal_rate: VolumeRate,
    h: Length,
    n: RotationalSpeed,
    circle: Length,
) -> Powers {
    let k = ground.own_force(log, h, one());
    let cutting = power::cutting_power::step(log, removal_rate, k);
    let motor = power::motor_power::step(log, cutting, ground.efficiency);
    let torque = power::cutting_torque::step(log, cutting, n);
    let v_c = rotation::cutting_speed::value(n, circle);
    let mean_force = force::tangential_force::step(log, cutting, v_c);
    let worst = ground.worst_force(log, h, one());
    let (limit, limit_torque) = loads::rotary_load(log, worst.k, removal_rate, n);
    Powers {
        cutting,
        motor,
        torque,
        mean_force,
        limit,
        limit_torque,
        exponent: one() - worst.exponent,
    }
}

/// The peak within a revolution: the highest pair, a worn edge.
#[derive(Clone, Copy)]
pub(crate) struct Peak {
    pub in_plane: Force,
    pub axial: Force,
    pub deflection: Length,
}

/// Exponent of the feed in the peak forces and in what bends under them.
#[inline(always)]
pub(crate) fn peak_exponent(ground: &Ground, largest_chip: Length) -> Ratio {
    one()
        - ground
            .worst_force(&mut NoRecord, largest_chip, one())
            .exponent
}

#[inline(always)]
pub(crate) fn peak(
    log: &mut impl Log,
    ground: &Ground,
    tool: &Tool,
    side: &Side,
    chips: &Chips,
    fluted: Length,
) -> Peak {
    let worst = ground.worst_force(log, chips.largest, one());
    let arc = engagement::engagement_angle::step(log, side.circle, side.radial_depth);
    let sine = one() / chip::radial_thinning_factor::value(side.circle, side.radial_depth);
    let (sum, relief) = loads::tooth_factors(
        log,
        tool.teeth,
        arc,
        sine,
        chips.mean / chips.largest,
        worst.exponent,
        side.axial_depth,
        tool.diameter,
        tool.helix_angle,
    );
    let tangential = force::peak_tangential_force::step(
        log,
        worst.k,
        chips.largest,
        side.chip_width,
        sum,
        relief,
    );
    bent(log, ground, tool, tangential, fluted)
}

/// What follows from a peak of the tangential force.
#[inline(always)]
pub(crate) fn bent(
    log: &mut impl Log,
    ground: &Ground,
    tool: &Tool,
    tangential: Force,
    fluted: Length,
) -> Peak {
    let in_plane = force::in_plane_force::step(log, tangential, ground.radial_force_ratio);
    let axial = force::helix_axial_force::step(log, tangential, tool.helix_angle);
    let deflection = loads::bending(
        log,
        in_plane,
        tool.diameter,
        fluted,
        tool.stick_out,
        tool.shank(),
        tool.modulus(),
    );
    Peak {
        in_plane,
        axial,
        deflection,
    }
}

/// The limit of the cutter's deflection.
#[inline(always)]
pub(crate) fn deflection_limit(
    deflection: Length,
    bound: Length,
    exponent: Ratio,
    eye: &mut impl Eye,
) {
    eye.look(
        Look::most(LimitName::Deflection, deflection.value, bound.value)
            .with_feed(exponent)
            .from("practice: deflection of the cutter's tip")
            .change("shorten the stick-out, take a thicker cutter or a smaller depth"),
    );
}

/// The limit of the clamping force; none where it is not known.
#[inline(always)]
pub(crate) fn clamping_limit(needed: Force, held: Force, exponent: Ratio, eye: &mut impl Eye) {
    eye.look(
        Look::most(LimitName::Clamping, needed.value, held.value)
            .only(held.value < f64::INFINITY)
            .with_feed(exponent)
            .from("hold: clamping force given")
            .change("clamp harder or take a smaller depth"),
    );
}

/// The limit of a roughness that grows with the square of the feed; none where none is asked for.
#[inline(always)]
pub(crate) fn roughness_limit(reached: Length, wanted: Length, eye: &mut impl Eye) {
    eye.look(
        Look::most(LimitName::MeanRoughness, reached.value, wanted.value)
            .only(wanted.value < f64::INFINITY)
            .with_feed(si(2.0))
            .from("asked for")
            .change("take a lower feed, a larger cutter or more teeth"),
    );
}

/// A circle needs two axes that move together.
#[inline(always)]
pub(crate) fn doubt_by_hand(ground: &Ground, doubt: &mut impl Doubt) {
    doubt.doubt(
        ground.by_hand.value > 0.0,
        WarningCode::MachineLimits,
        "a table cranked by hand does not run round: the path needs a control, or a rotary table",
    );
}

/// Feed marks are parabolas only while the feed a
/// revolution is small against the cutter.
#[inline(always)]
pub(crate) fn doubt_feed_marks(feed_per_rev: Length, diameter: Length, doubt: &mut impl Doubt) {
    doubt.doubt(
        feed_per_rev.value > diameter.value / 2.0,
        WarningCode::OutsideValidity,
        "the feed a revolution is larger than half the diameter that cuts: the roughness is no longer that of feed marks",
    );
}
