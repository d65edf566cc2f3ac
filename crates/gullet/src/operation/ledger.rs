//! The limit ledger: every limit that is looked at, its bound and where that comes from.

use super::chain::{self, Geometry, Outcome};
use super::cut::{Consequences, Limit, Relief, Side};
use super::milling::{Candidate, Solver, Tables, clamping_force};
use super::request::Operation;
use crate::formula::{NoRecord, practice};
use crate::model::{Direction, Feed, PassKind};
use crate::quantity::{Force, Kind, Length, RotationalSpeed, si};
use crate::table::Ranged;

/// What a cut is asked about after it is computed.
pub(super) fn consequences(
    geometry: &Geometry,
    outcome: &Outcome,
    clamping_needed: Force,
    clamping_force: Force,
) -> Consequences {
    Consequences {
        effective_diameter: geometry.effective_diameter,
        entry_angle: geometry.entry_angle,
        exit_angle: geometry.exit_angle,
        max_chip_thickness: outcome.max_chip,
        mean_chip_thickness: outcome.mean_chip,
        removal_rate: outcome.removal_rate,
        specific_cutting_force: outcome.specific_cutting_force,
        cutting_power: outcome.cutting_power,
        motor_power: outcome.motor_power,
        torque: outcome.torque,
        mean_tangential_force: outcome.mean_force,
        unit_power_cutting_power: outcome.unit_power_power,
        limit_power: outcome.limit_power,
        limit_torque: outcome.limit_torque,
        peak_tangential_force: outcome.peak_tangential_force,
        peak_force: outcome.peak_force,
        axial_force: outcome.axial_force,
        deflection: outcome.deflection,
        clamping_needed,
        clamping_force,
        available_power: outcome.available_power,
        available_torque: outcome.available_torque,
        mean_roughness: outcome.mean_roughness,
        travel: geometry.travel,
        time: outcome.time,
    }
}

/// Every limit of a pass at the candidate's speed.
pub(super) fn ledger(
    solver: &Solver,
    geometry: &Geometry,
    candidate: &Candidate,
    outcome: &Outcome,
) -> Vec<Limit> {
    let mut limits = Vec::new();
    speeds(solver, geometry, candidate.speed, outcome, &mut limits);
    chips(solver, candidate, outcome, &mut limits);
    loads(solver, candidate.speed, outcome, &mut limits);
    hold_and_shop(solver, &mut limits);
    let most = limits
        .iter()
        .fold(0.0, |most: f64, limit| most.max(limit.share));
    // Of limits used to the same share, the one that holds the feed binds, else the first.
    let nearest = |limit: &Limit| limit.share >= most * (1.0 - 1e-9);
    let holding = limits
        .iter()
        .position(|limit| nearest(limit) && Some(limit.name) == candidate.held_by);
    let index = holding.or_else(|| limits.iter().position(nearest));
    if let Some(limit) = index.and_then(|index| limits.get_mut(index)) {
        limit.binding = true;
    }
    limits
}

/// The loads that axial depth relieves.
const LOADS: &[&str] = &["power", "torque", "deflection", "clamping"];

/// Adds the axial depth that would free a load which the wanted feed exceeds.
pub(super) fn add_reliefs(
    solver: &Solver,
    geometry: &Geometry,
    candidate: &Candidate,
    outcome: &Outcome,
    limits: &mut [Limit],
) {
    let wanted = if candidate.wanted.value > candidate.feed.value {
        &chain::outcome(
            &mut NoRecord,
            solver.inputs,
            geometry,
            candidate.speed,
            candidate.wanted,
        )
    } else {
        outcome
    };
    for limit in limits
        .iter_mut()
        .filter(|limit| LOADS.contains(&limit.name) && limit.share > 1.0 - 1e-9)
    {
        if load(solver, wanted, limit.name).is_some_and(|share| share > 1.0)
            && let Some(depth) = depth_that_frees(solver, limit.name)
        {
            limit.relief = Some(Relief {
                setting: "axial depth",
                kind: Kind::Length,
                to: depth.value,
            });
        }
    }
}

/// Share of its bound that a load uses.
fn load(solver: &Solver, outcome: &Outcome, name: &str) -> Option<f64> {
    let mut limits = Vec::with_capacity(LOADS.len());
    loads(solver, solver.inputs.base_speed, outcome, &mut limits);
    limits
        .iter()
        .find(|limit| limit.name == name)
        .map(|limit| limit.share)
}

/// Halvings in the search for a depth: to a thousandth of the depth.
const HALVINGS: u32 = 12;

/// The axial depth at which a load meets its bound with the feed wanted there. A helix makes the
/// force grow slower than the depth, and tables give another feed at another depth: it is searched.
fn depth_that_frees(solver: &Solver, name: &str) -> Option<Length> {
    let mut depth = solver.inputs.axial_depth;
    let mut feed = solver.tables.feed.clone();
    for _ in 0..4 {
        let free = |a_p: Length, feed: &Ranged<Length>| {
            solver.wanted_at(a_p, feed).is_some_and(|outcome| {
                load(solver, &outcome, name).is_some_and(|share| share <= 1.0 - 1e-6)
            })
        };
        let (mut good, mut bad): (Length, Length) = (si(0.0), depth);
        for _ in 0..HALVINGS {
            let middle = (good + bad) / 2.0;
            if free(middle, &feed) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        if good.value <= 0.0 {
            return None;
        }
        feed = Tables::feed(solver.setup, solver.pass, good).ok()?;
        if free(good, &feed) {
            return Some(good);
        }
        depth = good;
    }
    None
}

fn speeds(
    solver: &Solver,
    geometry: &Geometry,
    speed: RotationalSpeed,
    outcome: &Outcome,
    limits: &mut Vec<Limit>,
) {
    let kind = Kind::RotationalSpeed;
    let (lowest, highest) = solver.setup.machine.speed_range();
    let origin = || format!("machine: {}", solver.setup.machine.name);
    limits.push(Limit::new(
        "spindle_speed_highest",
        kind,
        Side::AtMost,
        speed.value,
        highest.value,
        origin(),
    ));
    limits.push(Limit::new(
        "spindle_speed_lowest",
        kind,
        Side::AtLeast,
        speed.value,
        lowest.value,
        origin(),
    ));
    if let Some(most) = solver.setup.cutter.maximum_speed {
        limits.push(Limit::new(
            "cutter_speed",
            kind,
            Side::AtMost,
            speed.value,
            most.value,
            "marked on the cutter or its holder",
        ));
    }
    let table = solver.tables.speed.high;
    let slowest =
        crate::formula::rotation::spindle_speed::value(table, geometry.effective_diameter);
    limits.push(
        Limit::new(
            "cutting_speed",
            Kind::Velocity,
            Side::AtMost,
            outcome.cutting_speed.value,
            table.value,
            "high end of the tables: the edge wears fast above it",
        )
        .freed_if_exceeded("spindle speed", kind, slowest.value),
    );
}

fn chips(solver: &Solver, candidate: &Candidate, outcome: &Outcome, limits: &mut Vec<Limit>) {
    let z = solver.inputs.teeth;
    let (lowest_speed, _) = solver.setup.machine.speed_range();
    let rotation = Kind::RotationalSpeed;
    if let Some((name, highest)) = solver.highest_feed(&mut NoRecord) {
        let origin = match name {
            "handwheel_pace" => format!(
                "practice {}: pace a hand can hold; {}",
                solver.setup.practice.name, solver.setup.practice.origin
            ),
            _ => format!("machine: {}", solver.setup.machine.name),
        };
        let slower =
            crate::formula::rotation::spindle_speed_for_feed::value(highest, candidate.wanted, z);
        let mut limit = Limit::new(
            name,
            Kind::Velocity,
            Side::AtMost,
            outcome.table_feed.value,
            highest.value,
            origin,
        );
        let attainable = slower.value >= lowest_speed.value && slower.value < candidate.speed.value;
        if attainable && limit.share > 1.0 - 1e-9 {
            limit = limit.freed_by("spindle speed", rotation, slower.value);
        }
        limits.push(limit);
    }
    let lowest = match &solver.setup.machine.feed {
        Feed::Continuous { lowest, .. } => Some(*lowest),
        Feed::Stepped(steps) => steps.first().copied(),
        Feed::Hand => None,
    };
    if let Some(lowest) = lowest {
        let faster =
            crate::formula::rotation::spindle_speed_for_feed::value(lowest, candidate.feed, z);
        limits.push(
            Limit::new(
                "table_feed_lowest",
                Kind::Velocity,
                Side::AtLeast,
                outcome.table_feed.value,
                lowest.value,
                format!("machine: {}", solver.setup.machine.name),
            )
            .freed_if_exceeded("spindle speed", rotation, faster.value),
        );
    }
    let practice = solver.setup.practice;
    limits.push(
        Limit::new(
            "smallest_chip",
            Kind::Length,
            Side::AtLeast,
            outcome.max_chip.value,
            practice.smallest_chip.value,
            format!(
                "practice {}: thinner chips rub; {}",
                practice.name, practice.origin
            ),
        )
        .freed_if_exceeded(
            "feed per tooth",
            Kind::Length,
            solver.feed_for_chip(practice.smallest_chip).value,
        ),
    );
    limits.push(
        Limit::new(
            "largest_chip",
            Kind::Length,
            Side::AtMost,
            outcome.max_chip.value,
            solver.tables.feed.high.value,
            "high end of the tables: the tooth or its chip space is overloaded above it",
        )
        .freed_if_exceeded(
            "feed per tooth",
            Kind::Length,
            solver.feed_for_chip(solver.tables.feed.high).value,
        ),
    );
    if let (Some(wanted), Some(reached)) = (solver.pass.mean_roughness, outcome.mean_roughness) {
        let mut limit = Limit::new(
            "mean_roughness",
            Kind::Length,
            Side::AtMost,
            reached.value,
            wanted.value,
            "asked for by the job; real surfaces come out 1.5 to 3 times rougher than theory (common practice, no source)",
        );
        if let Some(f) = chain::feed_per_rev_for_roughness(&mut NoRecord, solver.inputs, wanted) {
            limit = limit.freed_if_exceeded("feed per tooth", Kind::Length, (f / z).value);
        }
        limits.push(limit);
    }
}

fn loads(solver: &Solver, speed: RotationalSpeed, outcome: &Outcome, limits: &mut Vec<Limit>) {
    let setup = solver.setup;
    let across = setup.hold.feed_across_jaws;
    let clamping = clamping_force(&mut NoRecord, &setup.hold.clamping);
    let deflection = setup.practice.deflection(solver.pass.kind);
    let rating = || {
        format!(
            "machine: {}, practice {}: share of the rating that is used",
            setup.machine.name, setup.practice.name
        )
    };
    let at_most = |name, kind, value: f64, bound: f64, origin: String| {
        Limit::new(name, kind, Side::AtMost, value, bound, origin)
    };
    let power = at_most(
        "power",
        Kind::Power,
        outcome.limit_power.value,
        outcome.available_power.value,
        rating(),
    );
    let torque = at_most(
        "torque",
        Kind::Torque,
        outcome.limit_torque.value,
        outcome.available_torque.value,
        rating(),
    );
    if solver.torque_first(speed) {
        limits.extend([torque, power]);
    } else {
        limits.extend([power, torque]);
    }
    limits.push(at_most(
        "deflection",
        Kind::Length,
        outcome.deflection.value,
        deflection.value,
        format!(
            "practice {}, {} pass; {}",
            setup.practice.name,
            solver.pass.kind.name(),
            setup.practice.origin
        ),
    ));
    limits.push(at_most(
        "clamping",
        Kind::Force,
        chain::clamping_needed(outcome, across).value,
        clamping.value,
        format!(
            "hold: {}, safety factor {} of practice {}",
            setup.hold.name, setup.practice.holding_safety.value, setup.practice.name
        ),
    ));
}

fn hold_and_shop(solver: &Solver, limits: &mut Vec<Limit>) {
    let setup = solver.setup;
    let cutter = setup.cutter;
    let pass = solver.pass;
    let practice = setup.practice;
    let length = Kind::Length;
    limits.push(
        Limit::new(
            "flute_length",
            length,
            Side::AtMost,
            pass.axial_depth.value,
            cutter.flute_length.value,
            format!("cutter: {}", cutter.name),
        )
        .freed_if_exceeded("axial depth", length, cutter.flute_length.value),
    );
    if pass.kind == PassKind::Roughing {
        let cap = practice::practice_depth::value(
            cutter.diameter,
            practice.depth_ratio(setup.material.iso513),
        );
        let depth = pass.depth();
        limits.push(
            Limit::new(
                "roughing_depth",
                length,
                Side::AtMost,
                depth.value,
                cap.value,
                format!("practice {}; {}", practice.name, practice.origin),
            )
            .freed_if_exceeded("depth of the pass", length, cap.value),
        );
    }
    let backlash = setup.machine.backlash.value > 0.0;
    if pass.operation == Operation::SideMilling && pass.direction == Direction::Climb && backlash {
        limits.push(
            Limit::new(
                "climb_with_backlash",
                length,
                Side::AtMost,
                pass.depth().value,
                practice.climb_depth_with_backlash.value,
                format!(
                    "practice {}: a deeper climb cut can pull the table through its backlash; {}",
                    practice.name, practice.origin
                ),
            )
            .freed_if_exceeded(
                "depth of the pass",
                length,
                practice.climb_depth_with_backlash.value,
            ),
        );
    }
    let grip = practice.smallest_grip * setup.part_height;
    limits.push(
        Limit::new(
            "grip",
            length,
            Side::AtLeast,
            setup.hold.grip_depth.value,
            grip.value,
            format!(
                "practice {}: share of the part's height; {}",
                practice.name, practice.origin
            ),
        )
        .freed_if_exceeded("grip depth", length, grip.value),
    );
    let reach = practice.stick_out_ratio * cutter.diameter;
    limits.push(
        Limit::new(
            "stick_out",
            length,
            Side::AtMost,
            cutter.stick_out.value,
            reach.value,
            format!(
                "practice {}: multiple of the diameter; {}",
                practice.name, practice.origin
            ),
        )
        .freed_if_exceeded("stick-out", length, reach.value),
    );
}
