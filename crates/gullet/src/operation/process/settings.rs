//! What an operation sets on the machine: the same for every one.

use crate::operation::cut::Field;
use crate::operation::lanes::lanes;
use crate::quantity::Kind;

lanes! {
    /// What is set on the machine.
    Settings, SettingsBlock {
        wanted_speed: RotationalSpeed,
        spindle_speed: RotationalSpeed,
        cutting_speed: Velocity,
        feed: Length,
        feed_speed: Velocity,
        /// NaN where the feed is not cranked by hand.
        handwheel_rate: RotationalSpeed,
        available_power: Power,
        available_torque: Torque,
    }
}

const fn setting(name: &'static str, kind: Kind, optional: bool, meaning: &'static str) -> Field {
    Field {
        name,
        kind,
        meaning,
        optional,
        value: None,
    }
}

/// The settings that every operation gives, in the order of [`Settings`].
pub(crate) const SETTINGS: &[Field] = &[
    setting(
        "wanted_speed",
        Kind::RotationalSpeed,
        false,
        "Spindle speed that the wanted cutting speed would need.",
    ),
    setting(
        "spindle_speed",
        Kind::RotationalSpeed,
        false,
        "Spindle speed the machine really has.",
    ),
    setting(
        "cutting_speed",
        Kind::Velocity,
        false,
        "Cutting speed at that spindle speed.",
    ),
    setting(
        "feed",
        Kind::Length,
        false,
        "Feed per revolution, or per tooth of a milling cutter, after limits.",
    ),
    setting(
        "feed_speed",
        Kind::Velocity,
        false,
        "Feed speed of the machine.",
    ),
    setting(
        "handwheel_rate",
        Kind::RotationalSpeed,
        true,
        "Pace of the handwheel for that feed speed; none where it is not cranked by hand.",
    ),
    setting(
        "available_power",
        Kind::Power,
        false,
        "Power that is available at the tool at this speed, within the practice's share.",
    ),
    setting(
        "available_torque",
        Kind::Torque,
        false,
        "Torque that is available at this speed, within the practice's share.",
    ),
];

impl Settings {
    pub(crate) fn values(&self) -> Vec<f64> {
        vec![
            self.wanted_speed.value,
            self.spindle_speed.value,
            self.cutting_speed.value,
            self.feed.value,
            self.feed_speed.value,
            self.handwheel_rate.value,
            self.available_power.value,
            self.available_torque.value,
        ]
    }
}
