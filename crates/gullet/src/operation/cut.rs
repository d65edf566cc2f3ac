//! What an operation returns: settings, consequences, limit ledger, worked steps, spread, cautions.

use super::limits::{self, Entry, LimitName, Side};
use super::request::Pass;
use crate::error::Warning;
use crate::formula::{Formula, Recorder, Step};
use crate::quantity::{self, Force, Kind, Length, Power, Ratio, Time, UnitSystem, Velocity};
use crate::table::Support;

/// A cut: everything about one pass.
#[derive(Clone)]
pub struct Cut {
    /// The pass it belongs to.
    pub pass: Pass,
    /// What is set on the machine.
    pub settings: Settings,
    /// What follows from the settings.
    pub consequences: Consequences,
    /// Every limit that was looked at.
    pub ledger: Vec<Limit>,
    /// The limit that holds the feed below the wanted one.
    pub held_by: Option<LimitName>,
    /// What was lowered, and why.
    pub adjustments: Vec<Adjustment>,
    /// The chain of formulas and choices, in order.
    pub steps: Vec<WorkedStep>,
    /// Low, start and high of what rests on the tables' ranges.
    pub spread: Spread,
    /// Values that came from tables, model or practice, with their sources.
    pub data: Vec<Datum>,
    /// Doubts: outside a model's validity, a default assumed, sources that disagree.
    pub warnings: Vec<Warning>,
    /// What can hurt.
    pub cautions: Vec<&'static str>,
}

/// A record of quantities that lists its own fields, so that every face shows the same ones.
macro_rules! records {
    ($($(#[$doc:meta])* $name:ident { $($field:ident: $kind:ident $(($maybe:ident))?, $what:literal;)* })*) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct $name {
            $(#[doc = $what] pub $field: records!(@type $kind $($maybe)?),)*
        }

        impl $name {
            /// Every field in order, without a value.
            pub const FIELDS: &'static [Field] = &[$(Field {
                name: stringify!($field),
                kind: Kind::$kind,
                meaning: $what,
                optional: records!(@optional $($maybe)?),
                value: None,
            }),*];

            /// Every field in order, with its value in SI units.
            pub fn fields(&self) -> Vec<Field> {
                vec![$(Field {
                    name: stringify!($field),
                    kind: Kind::$kind,
                    meaning: $what,
                    optional: records!(@optional $($maybe)?),
                    value: records!(@value self.$field, $($maybe)?),
                }),*]
            }
        }
    )*};
    (@type $kind:ident) => { quantity::$kind };
    (@type $kind:ident $maybe:ident) => { Option<quantity::$kind> };
    (@optional) => { false };
    (@optional $maybe:ident) => { true };
    (@value $quantity:expr,) => { Some($quantity.value) };
    (@value $quantity:expr, $maybe:ident) => { $quantity.map(|quantity| quantity.value) };
}

pub(crate) use records;

/// A field of a record of quantities.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Field {
    /// Name, the same in every face.
    pub name: &'static str,
    /// What it measures.
    pub kind: Kind,
    /// What it is.
    pub meaning: &'static str,
    /// Whether it may be missing.
    pub optional: bool,
    /// SI value; none where it is missing.
    pub value: Option<f64>,
}

records! {
    /// What a person sets on the machine.
    Settings {
        wanted_speed: RotationalSpeed, "Spindle speed that the wanted cutting speed would need.";
        spindle_speed: RotationalSpeed, "Spindle speed the machine really has.";
        cutting_speed: Velocity, "Cutting speed at that spindle speed.";
        chip_load: Length, "Largest chip wanted.";
        feed_per_tooth: Length, "Feed per tooth, after thinning and limits.";
        feed_per_rev: Length, "Feed per revolution.";
        table_feed: Velocity, "Table feed.";
        handwheel_rate: RotationalSpeed (maybe), "Pace of the handwheel for that table feed; none where the table is not cranked by hand.";
        time_per_inch: Time, "Time to travel one inch, or 10 mm in a metric shop, at that table feed.";
        time_per_10_mm: Time, "Time to travel 10 mm at that table feed.";
    }

    /// What follows from the settings.
    Consequences {
        effective_diameter: Length, "Diameter that cuts at this depth.";
        entry_angle: Angle, "Angle of tooth immersion at entry.";
        exit_angle: Angle, "Angle of tooth immersion at exit.";
        max_chip_thickness: Length, "Largest undeformed chip thickness.";
        mean_chip_thickness: Length, "Mean undeformed chip thickness.";
        removal_rate: VolumeRate, "Removal rate while the cut is at full width.";
        specific_cutting_force: Pressure, "Specific cutting force at the mean chip, default pair, sharp edge.";
        cutting_power: Power, "Power at the cutter, default pair, sharp edge.";
        motor_power: Power, "Power of the motor for that.";
        torque: Torque, "Mean torque on the spindle, default pair, sharp edge.";
        mean_tangential_force: Force, "Mean tangential force, default pair, sharp edge.";
        unit_power_cutting_power: Power (maybe), "Power at the cutter by the unit-power method, where a unit power is known.";
        limit_power: Power, "Power at the cutter that limits are checked with: the highest pair, worn edge.";
        limit_torque: Torque, "Torque that limits are checked with: the highest pair, worn edge.";
        peak_tangential_force: Force, "Peak tangential force of the teeth in cut: the highest pair, worn edge.";
        peak_force: Force, "Peak force across the cutter's axis: the highest pair, worn edge.";
        axial_force: Force, "Peak force along the axis: pulls the work up and the cutter out.";
        deflection: Length, "Deflection of the cutter's tip under the peak force.";
        clamping_needed: Force, "Clamping force needed along the jaws and against lift, with the safety factor.";
        clamping_force: Force, "Clamping force the hold gives.";
        available_power: Power, "Power that is available at the cutter at this speed, within the practice's share.";
        available_torque: Torque, "Torque that is available at this speed, within the practice's share.";
        mean_roughness: Length (maybe), "Theoretical mean roughness of the surface the pass leaves; none where no model applies.";
        travel: Length, "Travel of the pass with approach, overtravel and clearance.";
        time: Time, "Time of the pass in the cut, without return and handling.";
    }
}

/// One limit that was looked at.
#[derive(Debug, Clone, PartialEq)]
pub struct Limit {
    /// Stable name.
    pub name: &'static str,
    /// What it measures.
    pub kind: Kind,
    /// Value of this cut.
    pub value: f64,
    /// Bound.
    pub bound: f64,
    /// Which side the value must stay on.
    pub side: Side,
    /// Share of the bound that is used; above 1 the limit is exceeded.
    pub share: f64,
    /// Where the bound comes from.
    pub origin: String,
    /// The smallest change that would free it; none where it holds nothing back.
    pub relief: Option<Relief>,
    /// Whether this is the limit nearest to its bound.
    pub binding: bool,
}

/// The smallest change that would free a limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Relief {
    /// What would have to change.
    pub setting: &'static str,
    /// What it measures.
    pub kind: Kind,
    /// The value that would free the limit.
    pub to: f64,
}

impl Relief {
    /// In words.
    pub fn text(&self, system: UnitSystem) -> String {
        format!(
            "{} to {}",
            self.setting,
            quantity::format(self.kind, self.to, system)
        )
    }
}

impl Limit {
    /// A limit with its share worked out.
    pub(super) fn new(name: LimitName, entry: &Entry, origin: String, binding: bool) -> Limit {
        Limit {
            name: name.name(),
            kind: name.kind(),
            value: entry.value,
            bound: entry.bound,
            side: entry.side,
            share: limits::share(entry.side, entry.value, entry.bound),
            origin,
            relief: None,
            binding,
        }
    }

    /// Whether the value lies beyond the bound.
    pub fn exceeded(&self) -> bool {
        self.share > limits::EXCEEDED
    }
}

/// Something that was lowered because of a limit.
#[derive(Debug, Clone, PartialEq)]
pub struct Adjustment {
    /// The limit it was lowered for.
    pub limit: &'static str,
    /// What was lowered.
    pub setting: &'static str,
    /// What the setting measures.
    pub kind: Kind,
    /// Before.
    pub from: f64,
    /// After.
    pub to: f64,
}

impl Adjustment {
    /// In words.
    pub fn text(&self, system: UnitSystem) -> String {
        format!(
            "{} lowered from {} to {} for the limit {}",
            self.setting,
            quantity::format(self.kind, self.from, system),
            quantity::format(self.kind, self.to, system),
            self.limit
        )
    }
}

/// A value over the range of its tables.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band<T> {
    /// With the low ends.
    pub low: T,
    /// With the starting values.
    pub start: T,
    /// With the high ends.
    pub high: T,
}

/// What the tables' ranges make of speed, force, power and time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// Cutting speed of the tables.
    pub cutting_speed: Band<Velocity>,
    /// Feed per tooth of the tables.
    pub feed_per_tooth: Band<Length>,
    /// Mean tangential force at the settings, over the pairs of the material.
    pub force: Band<Force>,
    /// Power at the cutter at the settings, over the pairs of the material.
    pub power: Band<Power>,
    /// Time of the pass if speed and feed were set to the ends of the tables; low is the shortest.
    pub time: Band<Time>,
}

/// A value that came from a table, the model or the practice.
#[derive(Debug, Clone, PartialEq)]
pub struct Datum {
    /// What it is.
    pub name: String,
    /// The value as text in SI-independent form: kind and SI value.
    pub kind: Kind,
    /// SI value.
    pub value: f64,
    /// Where it comes from.
    pub origin: String,
}

/// One line of the worked chain.
#[derive(Clone)]
pub enum WorkedStep {
    /// A formula with its numbers.
    Formula(Step),
    /// A choice between what formulas gave.
    Choice(Choice),
}

/// A choice in words, with the value chosen.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// What is chosen and why.
    pub text: String,
    /// What it measures.
    pub kind: Kind,
    /// SI value chosen.
    pub value: f64,
}

impl WorkedStep {
    /// The step in one line.
    pub fn text(&self, system: UnitSystem) -> String {
        match self {
            WorkedStep::Formula(step) => step.text(system),
            WorkedStep::Choice(choice) => format!(
                "{}: {}",
                choice.text,
                quantity::format_worked(choice.kind, choice.value, system)
            ),
        }
    }
}

/// A recorder that also notes choices.
pub(crate) trait Log: Recorder {
    /// Whether anything is kept; what serves the record alone is left out otherwise.
    fn records(&self) -> bool;
    fn choose(&mut self, kind: Kind, value: f64, text: impl FnOnce() -> String);
}

impl Log for crate::formula::NoRecord {
    #[inline(always)]
    fn records(&self) -> bool {
        false
    }
    #[inline(always)]
    fn choose(&mut self, _: Kind, _: f64, _: impl FnOnce() -> String) {}
}

/// Keeps formulas and choices in order.
#[derive(Default)]
pub(crate) struct Chain(pub Vec<WorkedStep>);

impl Recorder for Chain {
    fn record(&mut self, formula: &'static Formula, arguments: &[f64], result: f64) {
        self.0
            .push(WorkedStep::Formula(Step::new(formula, arguments, result)));
    }
}

impl Log for Chain {
    fn records(&self) -> bool {
        true
    }

    fn choose(&mut self, kind: Kind, value: f64, text: impl FnOnce() -> String) {
        self.0.push(WorkedStep::Choice(Choice {
            text: text(),
            kind,
            value,
        }));
    }
}

impl Spread {
    /// The ends that were computed, by name.
    pub(super) fn ends(&self) -> [(&'static str, f64); 6] {
        [
            ("cutting_speed", self.cutting_speed.high.value),
            ("feed_per_tooth", self.feed_per_tooth.high.value),
            ("force", self.force.high.value),
            ("power", self.power.high.value),
            ("time", self.time.high.value),
            ("time", self.time.low.value),
        ]
    }
}

impl Cut {
    /// The limit nearest to its bound.
    pub fn binding(&self) -> Option<&Limit> {
        self.ledger.iter().find(|limit| limit.binding)
    }

    /// The ledger's limit of this name.
    pub fn limit(&self, name: &str) -> Option<&Limit> {
        self.ledger.iter().find(|limit| limit.name == name)
    }

    /// Specific cutting force ratio of the two methods: unit power over Kienzle.
    pub fn method_ratio(&self) -> Option<Ratio> {
        self.consequences
            .unit_power_cutting_power
            .map(|power| power / self.consequences.cutting_power)
    }
}

/// What supports a value of the tables, in words.
pub(super) fn support_text<T>(support: &[Support<T>]) -> String {
    let mut parts: Vec<String> = support
        .iter()
        .map(|support| format!("{} [{}]", support.row, support.source))
        .collect();
    parts.dedup();
    parts.join(", ")
}
