//! Every number of a cut, and whether they agree with one another.

use gullet::operation::{Cut, Lowering, Operation, Side};
use gullet::quantity::{Length, si};
use proptest::prelude::*;

/// Every number of a cut.
pub fn numbers(cut: &Cut) -> Vec<(String, f64)> {
    let s = &cut.settings;
    let c = &cut.consequences;
    let p = &cut.spread;
    let mut all: Vec<(String, f64)> = [
        ("wanted_speed", s.wanted_speed.value),
        ("spindle_speed", s.spindle_speed.value),
        ("cutting_speed", s.cutting_speed.value),
        ("chip_load", s.chip_load.value),
        ("feed_per_tooth", s.feed_per_tooth.value),
        ("feed_per_rev", s.feed_per_rev.value),
        ("table_feed", s.table_feed.value),
        ("handwheel_rate", s.handwheel_rate.map_or(0.0, |x| x.value)),
        ("time_per_inch", s.time_per_inch.value),
        ("time_per_10_mm", s.time_per_10_mm.value),
        ("effective_diameter", c.effective_diameter.value),
        ("entry_angle", c.entry_angle.value),
        ("exit_angle", c.exit_angle.value),
        ("max_chip_thickness", c.max_chip_thickness.value),
        ("mean_chip_thickness", c.mean_chip_thickness.value),
        ("removal_rate", c.removal_rate.value),
        ("specific_cutting_force", c.specific_cutting_force.value),
        ("cutting_power", c.cutting_power.value),
        ("motor_power", c.motor_power.value),
        ("torque", c.torque.value),
        ("mean_tangential_force", c.mean_tangential_force.value),
        (
            "unit_power_cutting_power",
            c.unit_power_cutting_power.map_or(0.0, |x| x.value),
        ),
        ("limit_power", c.limit_power.value),
        ("limit_torque", c.limit_torque.value),
        ("peak_tangential_force", c.peak_tangential_force.value),
        ("peak_force", c.peak_force.value),
        ("axial_force", c.axial_force.value),
        ("deflection", c.deflection.value),
        ("clamping_needed", c.clamping_needed.value),
        ("clamping_force", c.clamping_force.value),
        ("available_power", c.available_power.value),
        ("available_torque", c.available_torque.value),
        ("mean_roughness", c.mean_roughness.map_or(0.0, |x| x.value)),
        ("travel", c.travel.value),
        ("time", c.time.value),
        ("spread.cutting_speed.low", p.cutting_speed.low.value),
        ("spread.cutting_speed.start", p.cutting_speed.start.value),
        ("spread.cutting_speed.high", p.cutting_speed.high.value),
        ("spread.feed_per_tooth.low", p.feed_per_tooth.low.value),
        ("spread.feed_per_tooth.start", p.feed_per_tooth.start.value),
        ("spread.feed_per_tooth.high", p.feed_per_tooth.high.value),
        ("spread.force.low", p.force.low.value),
        ("spread.force.start", p.force.start.value),
        ("spread.force.high", p.force.high.value),
        ("spread.power.low", p.power.low.value),
        ("spread.power.start", p.power.start.value),
        ("spread.power.high", p.power.high.value),
        ("spread.time.low", p.time.low.value),
        ("spread.time.start", p.time.start.value),
        ("spread.time.high", p.time.high.value),
    ]
    .into_iter()
    .map(|(name, value)| (name.to_owned(), value))
    .collect();
    for limit in &cut.ledger {
        all.push((format!("{} value", limit.name), limit.value));
        all.push((format!("{} bound", limit.name), limit.bound));
        all.push((format!("{} share", limit.name), limit.share));
        if let Some(relief) = limit.relief {
            all.push((format!("{} relief", limit.name), relief.to));
        }
    }
    for adjustment in &cut.adjustments {
        all.push((format!("{} from", adjustment.setting), adjustment.from));
        all.push((format!("{} to", adjustment.setting), adjustment.to));
    }
    for datum in &cut.data {
        all.push((datum.name.clone(), datum.value));
    }
    all
}

/// What holds of every cut.
pub fn consistent(cut: &Cut, lowering: Lowering) -> Result<(), TestCaseError> {
    for (name, value) in numbers(cut) {
        prop_assert!(value.is_finite(), "{name} = {value}");
        prop_assert!(value >= 0.0, "{name} = {value}");
    }
    let mut names = Vec::new();
    let mut most: f64 = 0.0;
    for limit in &cut.ledger {
        let share = match limit.side {
            Side::AtMost => limit.value / limit.bound,
            Side::AtLeast if limit.bound <= 0.0 => 0.0,
            Side::AtLeast => limit.bound / limit.value,
        };
        prop_assert!((limit.share - share).abs() <= 1e-12 * share, "{limit:?}");
        prop_assert!(!limit.origin.is_empty());
        prop_assert!(!names.contains(&limit.name), "{} twice", limit.name);
        names.push(limit.name);
        // Stick-out and grip are as they are: they bind only where they are exceeded.
        if limit.exceeded() || !["stick_out", "grip"].contains(&limit.name) {
            most = most.max(limit.share);
        }
        if lowering == Lowering::Allowed {
            prop_assert!(!limit.exceeded(), "{limit:?}");
        }
    }
    let binding: Vec<_> = cut.ledger.iter().filter(|limit| limit.binding).collect();
    prop_assert_eq!(binding.len(), 1);
    prop_assert!(binding[0].share >= most * (1.0 - 1e-9));
    for adjustment in &cut.adjustments {
        prop_assert!(adjustment.to < adjustment.from);
        prop_assert!(names.contains(&adjustment.limit), "{adjustment:?}");
    }
    let (c, s) = (&cut.consequences, &cut.settings);
    prop_assert!(c.mean_chip_thickness.value <= c.max_chip_thickness.value * (1.0 + 1e-12));
    prop_assert!(c.max_chip_thickness.value <= s.feed_per_tooth.value * (1.0 + 1e-12));
    prop_assert!(c.peak_force.value >= c.peak_tangential_force.value);
    prop_assert!(
        c.peak_tangential_force.value >= c.mean_tangential_force.value * (1.0 - 1e-9)
            || !matches!(
                cut.pass.operation,
                Operation::SideMilling | Operation::Slotting
            )
            || c.effective_diameter < cut_diameter(cut)
    );
    let band = &cut.spread.force;
    prop_assert!(band.low <= band.start && band.start <= band.high);
    prop_assert!(
        cut.spread.power.low <= cut.spread.power.start
            && cut.spread.power.start <= cut.spread.power.high
    );
    prop_assert!(
        cut.spread.time.low <= cut.spread.time.start
            && cut.spread.time.start <= cut.spread.time.high
    );
    Ok(())
}

/// A diameter no smaller than any that cuts: of balls and radii the mean force belongs to a smaller
/// circle than the peak does.
pub fn cut_diameter(cut: &Cut) -> Length {
    cut.steps
        .iter()
        .find_map(|step| match step {
            gullet::operation::WorkedStep::Formula(step)
                if step.formula.name == "fluted_equivalent_diameter" =>
            {
                step.arguments.first().map(|d| si(*d))
            }
            _ => None,
        })
        .unwrap()
}
