//! What the tables say of a set-up, looked up once, and the numbers the chain starts from.

use super::numbers::{Form, Inputs, Kinds, Pair, UNIT_POWER_EXPONENT};
use super::request::{Operation, Pass};
use crate::error::{Code, Error, Problem, Result};
use crate::formula::{NoRecord, holding, power, rotation};
use crate::model::{Clamping, Cutter, Feed, Hold, Machine, PassKind, Practice, SpeedChoice};
use crate::quantity::math::number;
use crate::quantity::{Force, Length, Pressure, Ratio, Velocity, si};
use crate::table::{
    FeedNumbers, Grounds, Kienzle, KienzlePair, Library, Material, MeasuredAt, Process, Ranged,
    UnitPower,
};

/// The process of the tables that a pass belongs to.
pub(crate) fn process(operation: Operation, form: Form) -> Process {
    match (operation, form) {
        (Operation::FaceMilling, Form::FaceMill) => Process::FaceMilling,
        _ => Process::EndMilling,
    }
}

impl Grounds {
    /// Whether the tables, or the job itself, hold everything that these numbers are made from.
    pub(crate) fn answers(&self, inputs: &Inputs) -> bool {
        self.kienzle.is_ok()
            && !inputs.speed_start.value.is_nan()
            && !inputs.feed_start.value.is_nan()
    }

    /// No table answers.
    pub(crate) fn nothing() -> Grounds {
        Grounds {
            speed: Err(no_data("material").into()),
            feed: None,
            no_feed: Some(no_data("material").into()),
            kienzle: Err(no_data("material").into()),
            unit_power: None,
            area_rate: None,
        }
    }

    /// Whether the numbers rest on something assumed, beside the feed's own.
    fn assumed(&self) -> bool {
        let speed = self
            .speed
            .as_ref()
            .map_or(&[][..], |speed| &speed.assumptions);
        let kienzle = self
            .kienzle
            .as_ref()
            .map_or(&[][..], |kienzle| &kienzle.assumptions);
        let unit_power = self.unit_power.as_ref().map_or(&[][..], stated);
        !(speed.is_empty() && kienzle.is_empty() && unit_power.is_empty())
    }

    /// Feed per tooth at an axial depth; the job's own where the tables hold none.
    pub(crate) fn feed(
        &self,
        cutter: &Cutter,
        pass: &Pass,
        depth: Length,
    ) -> Option<Ranged<Length>> {
        self.feed
            .as_ref()
            .and_then(|reader| reader.range(cutter.diameter, depth))
            .or_else(|| pass.feed_per_tooth.map(asked_for))
    }

    /// Cutting speed of the tables with its words.
    pub(crate) fn speed(&self) -> &Result<Ranged<Velocity>> {
        &self.speed
    }

    /// Pairs of the material with their words.
    pub(crate) fn kienzle(&self) -> &Result<Kienzle> {
        &self.kienzle
    }

    /// Why the tables hold no feed.
    pub(crate) fn no_feed(&self) -> Option<&Error> {
        self.no_feed.as_ref()
    }

    /// Everything with its words.
    pub(crate) fn tables(
        &self,
        cutter: &Cutter,
        practice: &Practice,
        pass: &Pass,
    ) -> Result<Tables> {
        let mut problems = Vec::new();
        let mut keep = |error: &Error| problems.extend(error.clone().into_problems());
        let asked = || {
            pass.spindle_speed
                .map(|n| asked_for(rotation::cutting_speed::value(n, cutter.diameter)))
        };
        let speed = self.speed.as_ref().map_or_else(
            |error| {
                asked().or_else(|| {
                    keep(error);
                    None
                })
            },
            |speed| Some(speed.clone()),
        );
        let feed = self.feed(cutter, pass, pass.axial_depth);
        if feed.is_none()
            && let Some(error) = &self.no_feed
        {
            keep(error);
        }
        let kienzle = self.kienzle.as_ref().map_err(&mut keep).ok().cloned();
        match (speed, feed, kienzle) {
            (Some(speed), Some(feed), Some(kienzle)) => Ok(Tables {
                speed,
                feed,
                kienzle,
                unit_power: self.unit_power.clone(),
                low_end: practice.speed_choice == SpeedChoice::Low,
            }),
            _ => Err(Error::unless_empty(problems, ())
                .err()
                .unwrap_or_else(|| no_data("material").into())),
        }
    }
}

/// The assumptions of a unit power that are doubts: power at the cutter is what the second method is
/// compared by.
pub(super) fn stated(unit_power: &UnitPower) -> &[String] {
    let all = &unit_power.range.assumptions;
    let skip = usize::from(unit_power.measured_at == MeasuredAt::Cutter);
    all.get(..all.len().saturating_sub(skip))
        .unwrap_or_default()
}

/// What the tables say of a pass, with its words.
pub(crate) struct Tables {
    pub speed: Ranged<Velocity>,
    pub feed: Ranged<Length>,
    pub kienzle: Kienzle,
    pub unit_power: Option<UnitPower>,
    /// Whether the practice takes the low end of the speeds.
    pub low_end: bool,
}

/// The job's own value where the tables hold none: all there is to compare with.
fn asked_for<T: Copy>(value: T) -> Ranged<T> {
    Ranged {
        low: value,
        start: value,
        high: value,
        support: Vec::new(),
        assumptions: vec![
            "the tables hold no value for this material: the one asked for stands unchecked"
                .to_owned(),
        ],
    }
}

pub(super) fn no_data(parameter: &str) -> Problem {
    Problem::new(
        Code::NoData,
        parameter,
        "",
        "",
        "give speed, feed and cutting force in an overlay",
    )
}

/// The force the hold clamps with.
pub(super) fn clamping_force(
    log: &mut impl crate::formula::Recorder,
    clamping: &Clamping,
) -> Force {
    match *clamping {
        Clamping::Force(force) => force,
        Clamping::Screw {
            torque,
            lead,
            efficiency,
        } => holding::screw_clamping_force_efficiency::step(log, torque, lead, efficiency),
    }
}

impl Pair {
    fn of(pair: &KienzlePair) -> Pair {
        Pair {
            kc11: pair.kc11,
            exponent: pair.exponent,
        }
    }

    /// A unit power as a pair: its value at a chip of 1 mm, at the cutter; without a known chip
    /// thickness the same for every chip.
    fn of_unit_power(start: Pressure, chip: Option<Length>, efficiency: Option<Ratio>) -> Pair {
        let millimetre: Length = si(1e-3);
        let exponent = number(UNIT_POWER_EXPONENT);
        let (kc11, exponent) = match chip {
            Some(chip) => (
                power::unit_power_at_chip::value(start, chip, millimetre, exponent),
                exponent,
            ),
            None => (start, number(0.0)),
        };
        Pair {
            kc11: efficiency.map_or(kc11, |eta| eta * kc11),
            exponent,
        }
    }
}

impl Cutter {
    /// The part of the numbers that is the cutter's.
    pub(crate) fn fill(&self, inputs: &mut Inputs) {
        inputs.diameter = self.diameter;
        inputs.teeth = si(f64::from(self.teeth));
        inputs.cutting_edge_angle = self.cutting_edge_angle();
        inputs.corner_radius = self.corner_radius();
        inputs.helix_angle = self.helix_angle;
        inputs.stick_out = self.stick_out;
        inputs.flute_length = self.flute_length;
        inputs.shank_diameter = self.shank_diameter;
        inputs.modulus = self.modulus();
        inputs.cutter_speed = self.maximum_speed.unwrap_or(si(f64::INFINITY));
    }
}

impl Machine {
    fn fill(&self, practice: &Practice, inputs: &mut Inputs) {
        (inputs.lowest_speed, inputs.highest_speed) = self.speed_range();
        inputs.motor_power = self.motor_power;
        inputs.efficiency = self.efficiency;
        inputs.base_speed = self.base_speed.unwrap_or(inputs.lowest_speed);
        inputs.maximum_torque = self.maximum_torque.unwrap_or(si(f64::INFINITY));
        let endless: Velocity = si(f64::INFINITY);
        (inputs.lowest_feed, inputs.highest_feed) = match &self.feed {
            Feed::Hand => (
                si(0.0),
                self.travel_per_turn.map_or(endless, |lead| {
                    rotation::feed_rate::value(lead, practice.handwheel_pace)
                }),
            ),
            Feed::Continuous { lowest, highest } => (*lowest, *highest),
            Feed::Stepped(steps) => (
                steps.first().copied().unwrap_or(si(0.0)),
                steps.last().copied().unwrap_or(endless),
            ),
            // Its ends go with the spindle speed.
            Feed::Geared(_) => (si(0.0), endless),
        };
        inputs.travel_per_turn = self.travel_per_turn.unwrap_or(si(f64::NAN));
    }
}

impl Hold {
    /// The part of the numbers that is the hold's.
    pub(crate) fn fill(&self, inputs: &mut Inputs) {
        inputs.friction = self.jaw_friction;
        inputs.clamping_force = clamping_force(&mut NoRecord, &self.clamping);
        inputs.grip_depth = self.grip_depth;
    }
}

impl Practice {
    fn fill(&self, material: &Material, inputs: &mut Inputs) {
        inputs.speed_factor = self.speed_factor;
        inputs.feed_factor = self.feed_factor;
        inputs.thinning_cap = self.thinning_cap;
        inputs.smallest_chip = self.smallest_chip;
        inputs.power_share = self.power_share;
        inputs.wear_factor = self.wear_factor;
        inputs.radial_force_ratio = self.radial_force_ratio;
        inputs.safety = self.holding_safety;
        inputs.clearance = self.clearance;
        inputs.roughing_depth_ratio = self.depth_ratio(material.iso513);
        inputs.climb_depth = self.climb_depth_with_backlash;
        inputs.stick_out_ratio = self.stick_out_ratio;
        inputs.smallest_grip = self.smallest_grip;
    }
}

/// The owned parts of a set-up that numbers are made from.
pub(crate) struct Shop<'a> {
    pub material: &'a Material,
    pub cutter: &'a Cutter,
    pub machine: &'a Machine,
    pub hold: &'a Hold,
    pub practice: &'a Practice,
    pub part_height: Length,
}

/// The choices between formulas for an operation and a kind of pass.
pub(crate) fn kinds(shop: &Shop, grounds: &Grounds, pass: &Pass) -> Kinds {
    let unit_power = grounds.unit_power.as_ref();
    let form = Form::of(shop.cutter.form);
    Kinds {
        operation: pass.operation,
        direction: pass.direction,
        finishing: pass.kind == PassKind::Finishing,
        ball_nose: form == Form::BallNose,
        corner_radius: form == Form::CornerRadius,
        face_mill: form == Form::FaceMill,
        across_jaws: shop.hold.feed_across_jaws,
        by_hand: shop.machine.feed == Feed::Hand,
        backlash: shop.machine.backlash.value > 0.0,
        unit_power: unit_power.is_some(),
        unit_power_at_chip: unit_power
            .is_some_and(|unit_power| unit_power.chip_thickness.is_some()),
        unit_power_at_motor: unit_power
            .is_some_and(|unit_power| matches!(unit_power.measured_at, MeasuredAt::Motor { .. })),
    }
}

/// The numbers of a set-up; those of the pass and its feed are filled in by [`fill_pass`].
pub(crate) fn template(shop: &Shop, grounds: &Grounds) -> Inputs {
    let mut inputs = without_tool(shop.material, shop.machine, shop.practice, grounds);
    shop.cutter.fill(&mut inputs);
    shop.hold.fill(&mut inputs);
    inputs.part_height = shop.part_height;
    inputs
}

/// The numbers of machine, practice and tables.
pub(crate) fn without_tool(
    material: &Material,
    machine: &Machine,
    practice: &Practice,
    grounds: &Grounds,
) -> Inputs {
    let mut inputs = Inputs::every(f64::NAN);
    machine.fill(practice, &mut inputs);
    practice.fill(material, &mut inputs);
    if let Ok(speed) = &grounds.speed {
        inputs.speed_low = speed.low;
        inputs.speed_start = speed.start;
        inputs.speed_high = speed.high;
        inputs.speed_chosen = match practice.speed_choice {
            SpeedChoice::Low => speed.low,
            SpeedChoice::Start => speed.start,
        };
    }
    let unit_power = grounds.unit_power.as_ref();
    let chip = unit_power.and_then(|unit_power| unit_power.chip_thickness);
    let efficiency = unit_power.and_then(|unit_power| match unit_power.measured_at {
        MeasuredAt::Motor { efficiency } => Some(efficiency.map_or(machine.efficiency, si)),
        _ => None,
    });
    if let Ok(kienzle) = &grounds.kienzle {
        let a = Pair::of(&kienzle.default);
        let mut others = kienzle.others.iter().map(Pair::of);
        let (b, c) = (others.next().unwrap_or(a), others.next().unwrap_or(a));
        let d = unit_power.map_or(a, |unit_power| {
            Pair::of_unit_power(unit_power.range.start, chip, efficiency)
        });
        inputs.set_pairs([a, b, c, d]);
    }
    if let Some(unit_power) = unit_power {
        inputs.unit_power = unit_power.range.start;
        inputs.unit_power_chip = chip.unwrap_or(si(f64::NAN));
        inputs.unit_power_efficiency = efficiency.unwrap_or(si(f64::NAN));
    }
    inputs.assumed = si(f64::from(u8::from(grounds.assumed())));
    inputs
}

/// Fills in the numbers of a pass, and the feed of the tables at its size.
pub(crate) fn fill_pass(inputs: &mut Inputs, practice: &Practice, grounds: &Grounds, pass: &Pass) {
    inputs.axial_depth = pass.axial_depth;
    inputs.radial_depth = pass.radial_depth;
    inputs.offset = pass.offset;
    inputs.cut_length = pass.length;
    inputs.asked_speed = pass.spindle_speed.unwrap_or(si(0.0));
    inputs.asked_feed = pass.feed_per_tooth.unwrap_or(si(0.0));
    inputs.mean_roughness = pass.mean_roughness.unwrap_or(si(f64::INFINITY));
    inputs.deflection = practice.deflection(pass.kind);
    fill_feed(inputs, grounds);
    fill_asked_speed(inputs);
}

/// Fills in the feed of the tables at the size of cutter and cut.
pub(crate) fn fill_feed(inputs: &mut Inputs, grounds: &Grounds) {
    let found = grounds
        .feed
        .as_ref()
        .map(|reader| reader.numbers(inputs.diameter.value, inputs.axial_depth.value));
    let feed = feed_or_asked(found, inputs.asked_feed.value);
    inputs.feed_low = si(feed.low);
    inputs.feed_start = si(feed.start);
    inputs.feed_high = si(feed.high);
    if feed.assumed {
        inputs.assumed = si(1.0);
    }
}

/// The feed of the tables; where they hold none, the one asked for is all there is to compare with.
pub(crate) fn feed_or_asked(found: Option<FeedNumbers>, asked: f64) -> FeedNumbers {
    found.filter(|feed| !feed.start.is_nan()).unwrap_or({
        let asked = if asked == 0.0 { f64::NAN } else { asked };
        FeedNumbers {
            low: asked,
            start: asked,
            high: asked,
            assumed: true,
        }
    })
}

/// Where the tables hold no speed, the one asked for is all there is to compare with.
pub(crate) fn fill_asked_speed(inputs: &mut Inputs) {
    if inputs.speed_start.value.is_nan() && inputs.asked_speed.value > 0.0 {
        let speed = rotation::cutting_speed::value(inputs.asked_speed, inputs.diameter);
        inputs.speed_low = speed;
        inputs.speed_start = speed;
        inputs.speed_high = speed;
        inputs.speed_chosen = speed;
        inputs.assumed = si(1.0);
    }
}

impl Grounds {
    /// What the tables say of the force alone.
    pub(crate) fn pairs_alone(library: &Library, material: &Material) -> Grounds {
        Grounds {
            kienzle: library.kienzle(material),
            unit_power: library.unit_power(material).ok(),
            ..Grounds::nothing()
        }
    }
}
