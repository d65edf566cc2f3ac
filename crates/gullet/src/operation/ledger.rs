//! The limit ledger: every limit that is looked at, its bound and where that comes from.

use super::chain::{self, Geometry, Outcome};
use super::cut::{Consequences, Limit, Side};
use super::milling::{Solver, clamping_force};
use super::request::Operation;
use crate::formula::{NoRecord, practice};
use crate::model::{Direction, PassKind};
use crate::quantity::{Force, Kind, Length, RotationalSpeed, si};

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

/// Every limit of a pass at a speed; `wanted` is the feed per tooth before any limit lowered it.
pub(super) fn ledger(
    solver: &Solver,
    geometry: &Geometry,
    speed: RotationalSpeed,
    wanted: Length,
    outcome: &Outcome,
) -> Vec<Limit> {
    let mut limits = Vec::new();
    speeds(solver, geometry, speed, outcome, &mut limits);
    chips(solver, speed, wanted, outcome, &mut limits);
    loads(solver, geometry, speed, wanted, outcome, &mut limits);
    hold_and_shop(solver, outcome, &mut limits);
    let nearest = limits
        .iter()
        .enumerate()
        .max_by(|(_, a), (_, b)| a.share.total_cmp(&b.share))
        .map(|(index, _)| index);
    if let Some(limit) = nearest.and_then(|index| limits.get_mut(index)) {
        limit.binding = true;
    }
    limits
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
        .freed_by("spindle speed", kind, slowest.value),
    );
}

fn chips(
    solver: &Solver,
    speed: RotationalSpeed,
    wanted: Length,
    outcome: &Outcome,
    limits: &mut Vec<Limit>,
) {
    let z = solver.inputs.teeth;
    if let Some((name, highest)) = solver.highest_feed(&mut NoRecord) {
        let origin = match name {
            "handwheel_pace" => format!(
                "practice {}: pace a hand can hold; {}",
                solver.setup.practice.name, solver.setup.practice.origin
            ),
            _ => format!("machine: {}", solver.setup.machine.name),
        };
        let slower = crate::formula::rotation::spindle_speed_for_feed::value(highest, wanted, z);
        let mut limit = Limit::new(
            name,
            Kind::Velocity,
            Side::AtMost,
            outcome.table_feed.value,
            highest.value,
            origin,
        );
        if slower.value < speed.value {
            limit = limit.freed_by("spindle speed", Kind::RotationalSpeed, slower.value);
        }
        limits.push(limit);
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
        .freed_by(
            "largest chip thickness",
            Kind::Length,
            practice.smallest_chip.value,
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
        .freed_by(
            "largest chip thickness",
            Kind::Length,
            solver.tables.feed.high.value,
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
            limit = limit.freed_by("feed per tooth", Kind::Length, (f / z).value);
        }
        limits.push(limit);
    }
}

fn loads(
    solver: &Solver,
    geometry: &Geometry,
    speed: RotationalSpeed,
    wanted: Length,
    outcome: &Outcome,
    limits: &mut Vec<Limit>,
) {
    let setup = solver.setup;
    let across = setup.hold.feed_across_jaws;
    let clamping = clamping_force(&mut NoRecord, &setup.hold.clamping);
    let deflection = setup.practice.deflection(solver.pass.kind);
    let nominal = chain::outcome(&mut NoRecord, solver.inputs, geometry, speed, wanted);
    let depth = solver.pass.axial_depth;
    let share_text = format!(
        "machine: {}, practice {}: share of the rating that is used",
        setup.machine.name, setup.practice.name
    );
    let mut push = |name, kind, value: f64, unreduced: f64, bound: f64, origin: String| {
        let mut limit = Limit::new(name, kind, Side::AtMost, value, bound, origin);
        let share = unreduced / bound;
        if share > 1.0 && share.is_finite() {
            let free = practice::depth_for_load_share::value(depth, si(share));
            limit = limit.freed_by("axial depth", Kind::Length, free.value);
        }
        limits.push(limit);
    };
    push(
        "power",
        Kind::Power,
        outcome.limit_power.value,
        nominal.limit_power.value,
        outcome.available_power.value,
        share_text.clone(),
    );
    push(
        "torque",
        Kind::Torque,
        outcome.limit_torque.value,
        nominal.limit_torque.value,
        outcome.available_torque.value,
        share_text,
    );
    push(
        "deflection",
        Kind::Length,
        outcome.deflection.value,
        nominal.deflection.value,
        deflection.value,
        format!(
            "practice {}, {} pass; {}",
            setup.practice.name,
            solver.pass.kind.name(),
            setup.practice.origin
        ),
    );
    push(
        "clamping",
        Kind::Force,
        chain::clamping_needed(outcome, across).value,
        chain::clamping_needed(&nominal, across).value,
        clamping.value,
        format!(
            "hold: {}, safety factor {} of practice {}",
            setup.hold.name, setup.practice.holding_safety.value, setup.practice.name
        ),
    );
}

fn hold_and_shop(solver: &Solver, outcome: &Outcome, limits: &mut Vec<Limit>) {
    let setup = solver.setup;
    let cutter = setup.cutter;
    let pass = solver.pass;
    let practice = setup.practice;
    let length = Kind::Length;
    let _ = outcome;
    limits.push(
        Limit::new(
            "flute_length",
            length,
            Side::AtMost,
            pass.axial_depth.value,
            cutter.flute_length.value,
            format!("cutter: {}", cutter.name),
        )
        .freed_by("axial depth", length, cutter.flute_length.value),
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
            .freed_by("depth of the pass", length, cap.value),
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
            .freed_by(
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
        .freed_by("grip depth", length, grip.value),
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
        .freed_by("stick-out", length, reach.value),
    );
}
