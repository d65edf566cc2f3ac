//! What a card says, as labels and texts in the shop's units.

use super::super::job::unnamed_cutter;
use super::print::Print;
use super::{Card, Group};
use crate::model::{Clamping, CutterForm, Drive, PassKind};
use crate::operation::{Operation, WarningCode, WorkedStep};
use crate::quantity::{self, Kind, UnitSystem, format, format_in};

/// A label and its text.
pub(in crate::plan) type Row = (&'static str, String);

impl Card {
    pub(super) fn print(&self) -> Print {
        Print {
            system: self.job.units,
            resolution: self.plan.resolution,
        }
    }

    /// What is cut, with what, how held.
    pub(in crate::plan) fn setup_rows(&self) -> Vec<Row> {
        let job = &self.job;
        let print = self.print();
        let len = |x| print.length(x);
        let mut rows = self.instructions.seat.clone();
        rows.extend([
            ("Operation", job.operation.name().replace('-', " ")),
            (
                "Material",
                std::format!(
                    "{}, {} (ISO 513 group {})",
                    job.material.name,
                    job.material.condition,
                    job.material.iso513.name()
                ),
            ),
            (
                "Blank",
                std::format!(
                    "{} x {} x {}",
                    len(job.blank.length),
                    len(job.blank.width),
                    len(job.blank.height)
                ),
            ),
            ("Cutter", self.cutter_text()),
            ("Machine", self.machine_text()),
            ("Hold", self.hold_text()),
        ]);
        if let Some((parallel, grip)) = self.plan.parallel {
            rows.push((
                "Parallels",
                std::format!("{} high: grip {}", len(parallel), len(grip)),
            ));
        }
        rows.push((
            "Practice",
            std::format!("{} ({})", job.practice.name, job.practice.origin),
        ));
        rows.push(("Stock", self.stock_text()));
        let strips = self.plan.strips;
        if strips.count > 1 {
            rows.push((
                "Strips",
                std::format!(
                    "{} side by side at every depth, each {} wide",
                    strips.count,
                    len(strips.width)
                ),
            ));
        }
        rows
    }

    fn cutter_text(&self) -> String {
        let cutter = &self.job.cutter;
        let print = self.print();
        let form = match cutter.form {
            CutterForm::Square => "square end mill".to_owned(),
            CutterForm::CornerRadius(radius) => {
                std::format!("end mill with corner radius {}", print.length(radius))
            }
            CutterForm::BallNose => "ball-nose end mill".to_owned(),
            CutterForm::FaceMill(angle) => std::format!(
                "face mill, cutting-edge angle {}",
                print.any(Kind::Angle, angle.value)
            ),
        };
        // A name that only repeats what follows is left out.
        let unnamed = [UnitSystem::Inch, UnitSystem::Metric].map(|units| {
            unnamed_cutter(
                cutter.form,
                cutter.material,
                cutter.diameter,
                cutter.teeth,
                units,
            )
        });
        let name = if unnamed.contains(&cutter.name) {
            String::new()
        } else {
            std::format!("{}: ", cutter.name)
        };
        std::format!(
            "{name}{} {} {}, {} teeth, flutes {}, stick-out {}",
            print.length(cutter.diameter),
            cutter.material.name(),
            form,
            cutter.teeth,
            print.length(cutter.flute_length),
            print.length(cutter.stick_out),
        )
    }

    fn machine_text(&self) -> String {
        let machine = &self.job.machine;
        let print = self.print();
        let (lowest, highest) = machine.speed_range();
        let speeds = match &machine.drive {
            Drive::Continuous { .. } => {
                std::format!("{} to {}", print.speed(lowest), print.speed(highest))
            }
            Drive::Stepped(steps) => std::format!(
                "{} steps, {} to {}",
                steps.len(),
                print.speed(lowest),
                print.speed(highest)
            ),
        };
        std::format!(
            "{}, {}, {} at the motor; {}",
            machine.name,
            speeds,
            print.any(Kind::Power, machine.motor_power.value),
            machine.origin
        )
    }

    fn hold_text(&self) -> String {
        let hold = &self.job.hold;
        let print = self.print();
        let clamping = match hold.clamping {
            Clamping::Force(force) => {
                std::format!("clamps with {}", print.any(Kind::Force, force.value))
            }
            Clamping::Screw { torque, .. } => {
                std::format!("handle torque {}", print.any(Kind::Torque, torque.value))
            }
        };
        std::format!(
            "{}, {}, grip {}, feed {} the jaws",
            hold.name,
            clamping,
            print.length(hold.grip_depth),
            if hold.feed_across_jaws {
                "across"
            } else {
                "along"
            }
        )
    }

    fn stock_text(&self) -> String {
        let print = self.print();
        let plan = &self.plan;
        std::format!(
            "{} to remove, {} counts of {}; deepest roughing pass {} (set by {})",
            print.position(plan.stock),
            plan.total,
            print.step(),
            print.position(plan.largest_roughing.0),
            words(&plan.largest_roughing.1)
        )
    }

    /// What is set on the machine for a group of passes.
    pub(super) fn setting_rows(&self, group: &Group) -> Vec<Row> {
        let print = self.print();
        let cut = group.cut;
        let s = &cut.settings;
        let c = &cut.consequences;
        let mut rows = vec![
            ("Spindle speed", print.speed(s.spindle_speed)),
            ("Table feed", print.feed(s.table_feed)),
        ];
        if let Some(rate) = s.handwheel_rate {
            rows.push((
                "Handwheel",
                std::format!(
                    "{} turns a minute",
                    trim(format_in(Kind::RotationalSpeed, rate.value, "rpm", 3))
                ),
            ));
        }
        match self.job.units {
            UnitSystem::Inch => rows.push(("Time for 1 in", print.time(s.time_per_inch))),
            UnitSystem::Metric => rows.push(("Time for 10 mm", print.time(s.time_per_10_mm))),
        }
        rows.push(("Feed per tooth", print.fine(s.feed_per_tooth)));
        rows.push(("Cutting speed", print.cutting_speed(s.cutting_speed)));
        rows.push((
            "Depth along axis",
            match cut.pass.operation {
                Operation::SideMilling => print.length(cut.pass.axial_depth),
                _ => print.position(cut.pass.axial_depth),
            },
        ));
        rows.push((
            "Width across axis",
            match cut.pass.operation {
                Operation::SideMilling => print.position(cut.pass.radial_depth),
                Operation::Slotting => print.length(c.effective_diameter),
                Operation::FaceMilling => print.length(cut.pass.radial_depth),
            },
        ));
        rows.push(("Largest chip", print.fine(c.max_chip_thickness)));
        rows.push((
            "Power at cutter",
            print.load(Kind::Power, c.cutting_power.value),
        ));
        if let Some(power) = c.unit_power_cutting_power {
            rows.push(("  by unit power", print.load(Kind::Power, power.value)));
        }
        rows.push((
            "Power at motor",
            print.load(Kind::Power, c.motor_power.value),
        ));
        rows.push(("Torque", print.load(Kind::Torque, c.torque.value)));
        rows.push(("Peak force", print.load(Kind::Force, c.peak_force.value)));
        rows.push(("Deflection", print.fine(c.deflection)));
        if let Some(roughness) = c.mean_roughness {
            rows.push((
                "R_a in theory",
                print.named(Kind::Length, roughness.value, "um", "uin", 3),
            ));
        }
        rows
    }

    /// Heading of a group of passes.
    pub(super) fn group_title(&self, group: &Group) -> String {
        let passes = if group.first == group.last {
            std::format!("Pass {}", group.first)
        } else {
            std::format!("Passes {} to {}", group.first, group.last)
        };
        std::format!("{passes}, {}", group.cut.pass.kind.name())
    }

    /// Heads of the table of passes.
    pub(super) const PASS_HEADS: [&'static str; 5] =
        ["Pass", "Depth", "Stop at", "Left", "Direction"];

    /// The table of passes.
    pub(super) fn pass_rows(&self) -> Vec<[String; 5]> {
        let print = self.print();
        self.plan
            .passes
            .iter()
            .map(|pass| {
                let direction = match pass.cut.pass.operation {
                    Operation::SideMilling => pass.cut.pass.direction.name().to_owned(),
                    _ => "-".to_owned(),
                };
                [
                    match pass.cut.pass.kind {
                        PassKind::Roughing => pass.number.to_string(),
                        PassKind::Finishing => std::format!("{} finish", pass.number),
                    },
                    print.position(pass.depth),
                    print.position(pass.readout),
                    print.position(super::super::passes::length_of(
                        pass.left,
                        self.plan.resolution,
                    )),
                    direction,
                ]
            })
            .collect()
    }

    /// How the readout is zeroed and when to measure.
    pub(super) fn pass_notes(&self) -> Vec<String> {
        let print = self.print();
        let mut notes = vec![std::format!(
            "Touch off on the stock and set the readout to {}; it counts {}.",
            print.position(self.job.readout_start),
            if self.job.readout_rises { "up" } else { "down" }
        )];
        if self
            .plan
            .passes
            .iter()
            .any(|pass| pass.cut.pass.kind == PassKind::Roughing)
        {
            notes.push(
                "Measure before the finishing pass; where the size is off, plan anew from what is left."
                    .to_owned(),
            );
        }
        let time = self.plan.time();
        notes.push(std::format!(
            "Time {}: cutting {}, return {}, handling {}.",
            print.time(time.cutting + time.returning + time.handling),
            print.time(time.cutting),
            print.time(time.returning),
            print.time(time.handling)
        ));
        notes
    }

    /// Low, start and high of what rests on the tables.
    pub(super) fn spread_rows(&self, group: &Group) -> Vec<[String; 4]> {
        let print = self.print();
        let spread = &group.cut.spread;
        let row = |name: &str, low, start, high| [name.to_owned(), low, start, high];
        let any = |kind, x: f64| print.load(kind, x);
        vec![
            row(
                "cutting speed of the tables",
                print.cutting_speed(spread.cutting_speed.low),
                print.cutting_speed(spread.cutting_speed.start),
                print.cutting_speed(spread.cutting_speed.high),
            ),
            row(
                "feed per tooth of the tables",
                print.fine(spread.feed_per_tooth.low),
                print.fine(spread.feed_per_tooth.start),
                print.fine(spread.feed_per_tooth.high),
            ),
            row(
                "mean cutting force, over sources",
                any(Kind::Force, spread.force.low.value),
                any(Kind::Force, spread.force.start.value),
                any(Kind::Force, spread.force.high.value),
            ),
            row(
                "power at cutter, over sources",
                any(Kind::Power, spread.power.low.value),
                any(Kind::Power, spread.power.start.value),
                any(Kind::Power, spread.power.high.value),
            ),
            row(
                "time in the cut, at table values",
                print.time(spread.time.low),
                print.time(spread.time.start),
                print.time(spread.time.high),
            ),
        ]
    }

    /// The values behind a group, with where they come from.
    pub(super) fn data_rows(&self, group: &Group) -> Vec<[String; 3]> {
        let print = self.print();
        group
            .cut
            .data
            .iter()
            .map(|datum| {
                let value = match datum.kind {
                    Kind::Velocity => print.cutting_speed(quantity::si(datum.value)),
                    Kind::Length => print.fine(quantity::si(datum.value)),
                    // As tables print them: the power law is one of millimetres.
                    Kind::Pressure => format(datum.kind, datum.value, UnitSystem::Metric),
                    _ => print.any(datum.kind, datum.value),
                };
                [datum.name.clone(), value, datum.origin.clone()]
            })
            .collect()
    }

    /// The values behind a group in short: one entry an origin.
    pub(super) fn data_text(&self, group: &Group) -> String {
        let mut entries: Vec<(String, String)> = Vec::new();
        for [name, value, origin] in self.data_rows(group) {
            let (head, tail) = name.split_once(", ").unwrap_or((name.as_str(), ""));
            match entries.last_mut() {
                Some((text, known)) if *known == origin && !tail.is_empty() => {
                    *text += &std::format!(", {tail} {value}");
                }
                Some((text, known)) if *known == origin => {
                    *text += &std::format!(", {name} {value}");
                }
                _ => entries.push((
                    std::format!("{head} {tail} {value}").replace("  ", " "),
                    origin,
                )),
            }
        }
        let entries: Vec<String> = entries
            .into_iter()
            .map(|(text, origin)| match origin.strip_prefix('[') {
                Some(_) => std::format!("{text} {origin}"),
                None => std::format!("{text} ({origin})"),
            })
            .collect();
        entries.join("; ")
    }

    /// Every doubt once, those of the job's defaults first.
    pub(super) fn warnings(&self) -> Vec<String> {
        let mut texts: Vec<String> = Vec::new();
        let keep = |texts: &mut Vec<String>, text: &str| {
            if !texts.iter().any(|known| known == text) {
                texts.push(text.to_owned());
            }
        };
        for assumption in &self.job.assumptions {
            keep(&mut texts, assumption);
        }
        for warning in &self.plan.warnings {
            keep(&mut texts, &warning.text);
        }
        let mut disagree = false;
        for group in self.groups() {
            for adjustment in &group.cut.adjustments {
                let text = words(&adjustment.text(self.job.units));
                match texts.iter_mut().find(|known| known.ends_with(&text)) {
                    Some(known) if !known.starts_with("Pass") => {}
                    // The same in more than one group: said once, for all.
                    Some(known) => *known = text,
                    None => texts.push(std::format!("{}: {text}", self.group_title(&group))),
                }
            }
            for warning in &group.cut.warnings {
                // Lowered settings stand above in the shop's units; one word on sources is enough.
                let said = warning.code == WarningCode::SourcesDisagree && disagree;
                disagree |= warning.code == WarningCode::SourcesDisagree;
                if warning.code != WarningCode::Lowered && !said {
                    keep(&mut texts, &warning.text);
                }
            }
        }
        texts
    }

    /// Every caution once.
    pub(in crate::plan) fn cautions(&self) -> Vec<&'static str> {
        let mut texts: Vec<&'static str> = Vec::new();
        for group in self.groups() {
            for caution in &group.cut.cautions {
                if !texts.contains(caution) {
                    texts.push(caution);
                }
            }
        }
        texts
    }

    /// The worked chain of a group, numbered.
    pub(super) fn step_rows(&self, group: &Group) -> Vec<String> {
        group
            .cut
            .steps
            .iter()
            .enumerate()
            .map(|(index, step)| {
                let name = match step {
                    WorkedStep::Formula(step) => words(step.formula.name),
                    WorkedStep::Choice(_) => "choice".to_owned(),
                };
                std::format!("{:>2}. {name}: {}", index + 1, step.text(self.job.units))
            })
            .collect()
    }
}

fn trim(text: crate::Result<String>) -> String {
    text.map(|text| text.trim_end_matches(" rpm").to_owned())
        .unwrap_or_default()
}

/// A stable name as words.
pub(super) fn words(name: &str) -> String {
    name.replace(['_', '-'], " ")
}
