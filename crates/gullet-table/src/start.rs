//! What a study starts from: a job, parts of one laid over it, or parts alone.

use crate::base::Defaults;
use gullet::plan::Part;
use gullet::study::{Base, Choice, Input};

/// What a study starts from; columns and constants come before it.
#[derive(Debug, Clone, Default)]
pub struct Start {
    /// All that a job says.
    pub base: Option<Base>,
    /// Parts that take the place of the base's: a blank gives height and length.
    pub parts: Vec<Part>,
    /// Inputs, choices and sections of a job whose problems the caller tells: they count as given.
    pub told: Vec<String>,
}

/// Which parts are given as a whole.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Covered {
    job: bool,
    material: bool,
    machine: bool,
    practice: bool,
    cutter: bool,
    hold: bool,
    blank: bool,
}

impl Covered {
    pub(crate) fn input(self, input: Input) -> bool {
        self.job
            || match input {
                Input::CutterDiameter
                | Input::CutterTeeth
                | Input::CutterFluteLength
                | Input::CutterShankDiameter
                | Input::CutterStickOut
                | Input::CutterHelixAngle
                | Input::CutterMaximumSpeed
                | Input::CutterCornerRadius
                | Input::CutterEdgeAngle => self.cutter,
                Input::ClampingForce | Input::JawFriction | Input::GripDepth => self.hold,
                Input::CutLength | Input::PartHeight => self.blank,
                _ => false,
            }
    }

    pub(crate) fn choice(self, choice: Choice) -> bool {
        self.job
            || match choice {
                Choice::Material => self.material,
                Choice::Machine => self.machine,
                Choice::Practice => self.practice,
                Choice::CutterMaterial | Choice::CutterForm => self.cutter,
                Choice::FeedAcrossJaws => self.hold,
                _ => false,
            }
    }
}

impl Start {
    pub(crate) fn covered(&self) -> Covered {
        let told = |section: &str| self.told.iter().any(|name| name == section);
        let part = |is: fn(&Part) -> bool, section| self.parts.iter().any(is) || told(section);
        Covered {
            job: self.base.is_some(),
            material: part(|part| matches!(part, Part::Material(_)), "material"),
            machine: part(|part| matches!(part, Part::Machine(_)), "machine"),
            practice: part(|part| matches!(part, Part::Practice(_)), "practice"),
            cutter: part(|part| matches!(part, Part::Cutter(_)), "cutter"),
            hold: part(|part| matches!(part, Part::Hold(_)), "hold"),
            blank: part(|part| matches!(part, Part::Blank(_)), "blank"),
        }
    }

    /// The base with the parts laid over; parts come first in the lists that names pick from.
    pub(crate) fn lay_over(self, defaults: &Defaults) -> Base {
        let mut base = self.base.unwrap_or_else(|| defaults.base());
        for part in self.parts {
            match part {
                Part::Material(material) => base.materials.insert(0, *material),
                Part::Machine(machine) => base.machines.insert(0, machine),
                Part::Practice(practice) => base.practices.insert(0, *practice),
                Part::Cutter(cutter) => base.cutter = cutter,
                Part::Hold(hold) => base.hold = hold,
                Part::Blank(blank) => {
                    base.part_height = blank.height;
                    base.pass.length = blank.length;
                }
            }
        }
        base
    }
}
