//! Surfaces finished in rows by a round edge: what ball and corner radius have in common.

use super::Loads;
use super::ground::Ground;
use super::limits::{Eye, Look};
use super::mills::{self, Chips, Peak, Powers, Side, Tool};
use crate::formula::{chip, finish, practice, removal, rotation, surface};
use crate::operation::LimitName;
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::quantity::math::{asin, min};
use crate::quantity::{
    Angle, Kind, Length, Ratio, RotationalSpeed, Time, Velocity, VolumeRate, si,
};

/// An area that is finished in rows.
#[derive(Clone, Copy)]
pub(crate) struct Area {
    /// Across the rows and along them.
    pub width: Length,
    pub length: Length,
    /// Along the surface normal.
    pub stock: Length,
    /// Largest step between two rows.
    pub largest_step: Length,
    pub tilt: Angle,
    /// Diameter of the round of the edge.
    pub edge_diameter: Length,
    /// Largest diameter that cuts.
    pub effective_diameter: Length,
    pub link_time: Time,
}

/// The rows, and the side cut that each comes down to.
#[derive(Clone, Copy)]
pub(crate) struct Rows {
    pub passes: Ratio,
    pub stepover: Length,
    pub side: Side,
}

/// Angle of the straight edge that has the length and the mean chip of the round one.
#[inline(always)]
fn straight(ratio: Ratio) -> Angle {
    asin(min(ratio, one()))
}

#[inline(always)]
pub(crate) fn lay(log: &mut impl Log, area: &Area) -> Rows {
    let passes = surface::raster_passes::step(log, area.width, area.largest_step);
    let stepover = surface::raster_stepover::step(log, area.width, passes);
    let mean = surface::tilted_edge_mean_thickness_ratio::step(
        log,
        area.edge_diameter,
        area.stock,
        area.tilt,
    );
    let kappa = straight(mean);
    log.choose(Kind::Angle, kappa.value, || {
        "the angle whose sine is that ratio: a straight edge of the same length stands for the round one".to_owned()
    });
    let upright = straight(chip::round_edge_mean_thickness_ratio::step(
        log,
        area.edge_diameter,
        area.stock,
    ));
    let chip_width = chip::turning_chip_width::step(log, area.stock, upright);
    let side = Side {
        circle: area.effective_diameter,
        radial_depth: min(stepover, area.effective_diameter),
        axial_depth: area.stock,
        cutting_edge_angle: kappa,
        chip_width,
    };
    Rows {
        passes,
        stepover,
        side,
    }
}

/// What follows from speed and feed.
#[derive(Clone, Copy)]
pub(crate) struct RowCut {
    pub table_feed: Velocity,
    pub feed_per_rev: Length,
    pub chips: Chips,
    pub removal_rate: VolumeRate,
    pub powers: Powers,
    pub peak: Peak,
    pub feed_mark_height: Length,
    pub travel: Length,
    pub time: Time,
}

#[inline(always)]
pub(crate) fn cut(
    log: &mut impl Log,
    ground: &Ground,
    tool: &Tool,
    area: &Area,
    rows: &Rows,
    n: RotationalSpeed,
    f: Length,
) -> RowCut {
    let side = &rows.side;
    let table_feed = rotation::table_feed::step(log, f, tool.teeth, n);
    let feed_per_rev = rotation::feed_per_rev::step(log, f, tool.teeth);
    let chips = side.chips(log, f);
    let removal_rate =
        removal::milling_removal_rate::step(log, area.stock, rows.stepover, table_feed);
    let powers = mills::powers(log, ground, removal_rate, chips.mean, n, side.circle);
    let peak = mills::peak(log, ground, tool, side, &chips, tool.fluted());
    log.choose(Kind::Length, feed_per_rev.value, || {
        "for the marks along the rows the feed per revolution, as the step of round edges: with run-out one tooth leaves the mark".to_owned()
    });
    let feed_mark_height = finish::scallop_height::step(log, area.edge_diameter, feed_per_rev);
    let travel = practice::cut_travel::step(log, area.length, si(0.0), si(0.0), ground.clearance);
    let time = surface::passes_time::step(log, rows.passes, travel, table_feed, area.link_time);
    RowCut {
        table_feed,
        feed_per_rev,
        chips,
        removal_rate,
        powers,
        peak,
        feed_mark_height,
        travel,
        time,
    }
}

/// The limit of the marks along a row: no higher than the ridges that are allowed between two.
#[inline(always)]
pub(crate) fn marks_limit(height: Length, allowed: Length, eye: &mut impl Eye) {
    eye.look(
        Look::most(
            LimitName::MeanRoughness,
            finish::feed_mark_mean_roughness::value(height).value,
            finish::feed_mark_mean_roughness::value(allowed).value,
        )
        .with_feed(si(2.0))
        .from("marks along a row as high as the ridges allowed between two")
        .change("take a lower feed, a larger radius or more teeth"),
    );
}

impl RowCut {
    #[inline(always)]
    pub(crate) fn loads(&self) -> Loads {
        Loads {
            limit_power: self.powers.limit,
            limit_torque: self.powers.limit_torque,
            exponent: self.powers.exponent,
            chip: self.chips.mean,
            force: self.powers.mean_force,
            power: self.powers.cutting,
            time: self.time,
        }
    }
}
