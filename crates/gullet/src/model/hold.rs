//! How the work is held, and the blank.

use super::{Check, HUGE};
use crate::error::Problem;
use crate::quantity::{Force, Kind, Length, Ratio, Torque};

/// How hard the vise clamps.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Clamping {
    /// Clamping force as measured or as the vise's maker states it.
    Force(Force),
    /// Torque on the handle, lead of the screw, efficiency of the screw with its collar.
    Screw {
        /// Torque on the handle.
        torque: Torque,
        /// Lead of the screw.
        lead: Length,
        /// Efficiency of the screw with its collar.
        efficiency: Ratio,
    },
}

/// A vise with the work in it.
#[derive(Debug, Clone, PartialEq)]
pub struct Hold {
    /// What the shop calls it.
    pub name: String,
    /// How hard it clamps.
    pub clamping: Clamping,
    /// Static friction between jaw and work.
    pub jaw_friction: Ratio,
    /// Height of the jaws above the bed of the vise.
    pub jaw_height: Option<Length>,
    /// Height of the work that the jaws cover.
    pub grip_depth: Length,
    /// Heights of the parallels at hand.
    pub parallels: Vec<Length>,
    /// Whether the cut runs across the jaws instead of along them.
    pub feed_across_jaws: bool,
}

/// The blank: what is clamped.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Blank {
    /// Size along the feed.
    pub length: Length,
    /// Size across the feed.
    pub width: Length,
    /// Size along the spindle axis.
    pub height: Length,
}

impl Hold {
    /// The lowest parallel at hand that holds the work no deeper than `grip_depth` in the jaws, and
    /// the grip it gives; none where the jaws' height is not known or no parallel fits.
    pub fn parallel_for(&self, grip_depth: Length) -> Option<(Length, Length)> {
        let jaw = self.jaw_height?;
        self.parallels
            .iter()
            .map(|parallel| (*parallel, jaw - *parallel))
            .filter(|(_, grip)| grip.value.is_finite())
            .filter(|(_, grip)| grip.value >= grip_depth.value * (1.0 - 1e-9))
            .min_by(|a, b| a.1.value.total_cmp(&b.1.value))
    }

    /// Every problem of the fields.
    pub fn problems(&self) -> Vec<Problem> {
        let mut check = Check::new();
        match self.clamping {
            Clamping::Force(force) => check.range(
                "clamping_force",
                Kind::Force,
                force.value,
                0.0,
                false,
                1e7,
                "give the force the vise clamps with",
            ),
            Clamping::Screw {
                torque,
                lead,
                efficiency,
            } => {
                check.range(
                    "handle_torque",
                    Kind::Torque,
                    torque.value,
                    0.0,
                    false,
                    1e4,
                    "force on the handle times its length",
                );
                check.range(
                    "screw_lead",
                    Kind::Length,
                    lead.value,
                    0.0,
                    false,
                    0.1,
                    "travel of the jaw for one turn",
                );
                check.range(
                    "screw_efficiency",
                    Kind::Ratio,
                    efficiency.value,
                    0.0,
                    false,
                    1.0,
                    "0.1 to 0.2 for a plain collar (range of seen examples); write 15 % or 0.15",
                );
            }
        }
        check.range(
            "jaw_friction",
            Kind::Ratio,
            self.jaw_friction.value,
            0.0,
            false,
            1.0,
            "0.15 for smooth steel jaws on machined metal (from memory)",
        );
        check.range(
            "grip_depth",
            Kind::Length,
            self.grip_depth.value,
            0.0,
            false,
            HUGE,
            "height of the work between the jaws",
        );
        if let Some(height) = self.jaw_height {
            check.range(
                "jaw_height",
                Kind::Length,
                height.value,
                0.0,
                false,
                HUGE,
                "from the bed of the vise to the top of the jaws",
            );
        }
        for parallel in &self.parallels {
            check.range(
                "parallels",
                Kind::Length,
                parallel.value,
                0.0,
                false,
                HUGE,
                "heights of the parallels at hand",
            );
        }
        check.finish()
    }
}

impl Blank {
    /// Every problem of the fields.
    pub fn problems(&self) -> Vec<Problem> {
        let mut check = Check::new();
        for (name, value) in [
            ("length", self.length),
            ("width", self.width),
            ("height", self.height),
        ] {
            check.range(
                name,
                Kind::Length,
                value.value,
                0.0,
                false,
                100.0,
                "measure the blank",
            );
        }
        check.finish()
    }
}
