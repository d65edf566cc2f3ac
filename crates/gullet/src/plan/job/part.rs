//! One section of a job file by itself: read from JSON, written back with every key.

use super::super::document::{Node, Reader, Section, Word};
use super::sections::{BlankKeys, CutterKeys, HoldKeys, MachineKeys, MaterialKeys, PracticeKeys};
use super::{job_keys, machine, read};
use crate::error::{Code, Problem, Result, unknown_name};
use crate::formula;
use crate::model::{
    Blank, Clamping, Cutter, CutterForm, Drive, Feed, Hold, Machine, Practice, SpeedChoice,
};
use crate::plan::document::Keys;
use crate::quantity::{Kind, UnitSystem, exact_text};
use crate::table::{Library, Material};
use serde_json::{Map, Value, json};

/// What a section of a job file describes.
#[derive(Debug, Clone, PartialEq)]
pub enum Part {
    /// The section `material`.
    Material(Box<Material>),
    /// The section `blank`.
    Blank(Blank),
    /// The section `cutter`.
    Cutter(Cutter),
    /// The section `machine`.
    Machine(Machine),
    /// The section `hold`.
    Hold(Hold),
    /// The section `practice`.
    Practice(Box<Practice>),
}

impl Part {
    /// Names of the sections that can be read alone.
    pub const SECTIONS: &'static [&'static str] =
        &["material", "blank", "cutter", "machine", "hold", "practice"];

    /// Reads the keys of one section from a JSON object; also tells what was assumed.
    ///
    /// # Errors
    /// Those of [`Job::from_json`](super::Job::from_json), for this section.
    ///
    /// ```
    /// use gullet::{plan::Part, table::Library};
    /// let keys = r#"{"length": "3 in", "width": "50.8 mm", "height": "1 in"}"#;
    /// let (blank, _) = Part::from_json("blank", keys, Library::builtin())?;
    /// assert_eq!(blank.to_json()["width"], "2 in");
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn from_json(section: &str, keys: &str, library: &Library) -> Result<(Part, Vec<String>)> {
        type Sections = &'static [fn() -> &'static Section];
        let sections: Sections = match section {
            "material" => &[MaterialKeys::section],
            "blank" => &[BlankKeys::section],
            "cutter" => &[CutterKeys::section],
            "machine" => &[MachineKeys::section],
            "hold" => &[HoldKeys::section],
            "practice" => &[PracticeKeys::section],
            _ => {
                return Err(
                    unknown_name("section", section, Part::SECTIONS.iter().copied()).into(),
                );
            }
        };
        // The keys alone first: their faults of form keep their own lines.
        Node::from_json(keys)?;
        let root = Node::from_json(&format!("{{\"{section}\":{keys}}}"))?;
        let mut reader = Reader::open(&root, sections)?;
        let units = Part::units_of(section, keys);
        let part = match section {
            "material" => read::material(&mut reader, library).map(|m| Part::Material(Box::new(m))),
            "blank" => Some(Part::Blank(read::blank(&mut reader, units))),
            "cutter" => Some(Part::Cutter(read::cutter(&mut reader, units))),
            "machine" => Some(Part::Machine(machine::machine(&mut reader, units))),
            "hold" => Some(Part::Hold(read::hold(&mut reader, units))),
            _ => machine::practice(&mut reader, units).map(|p| Part::Practice(Box::new(p))),
        };
        let assumptions = reader.close()?;
        // Where there is none a problem was reported, which has been returned.
        part.map(|part| (part, assumptions)).ok_or_else(|| {
            Problem::new(Code::Missing, section, "", "", "give the needed keys").into()
        })
    }

    /// The system the quantities of a section in JSON are written in: inch where one is.
    pub fn units_of(section: &str, keys: &str) -> UnitSystem {
        let Ok(Value::Object(keys)) = serde_json::from_str(keys) else {
            return UnitSystem::Metric;
        };
        let inch = |value: &Value| {
            value
                .as_str()
                .is_some_and(|text| formula::units_of(text) == UnitSystem::Inch)
        };
        let inches = job_keys()
            .iter()
            .filter(|key| key.section == section && key.kind.is_some())
            .filter_map(|key| keys.get(key.key))
            .any(|value| match value {
                Value::Array(items) => items.iter().any(inch),
                value => inch(value),
            });
        if inches {
            UnitSystem::Inch
        } else {
            UnitSystem::Metric
        }
    }

    /// The keys of its section; reading them gives the same part, bit for bit. Of a material only
    /// its id, or what a job file can say of the shop's own.
    pub fn to_json(&self) -> Map<String, Value> {
        let mut keys = match self {
            Part::Material(material) => material_keys(material),
            Part::Blank(blank) => json!({
                "length": length(blank.length.value),
                "width": length(blank.width.value),
                "height": length(blank.height.value),
            }),
            Part::Cutter(cutter) => cutter_keys(cutter),
            Part::Machine(machine) => machine_keys(machine),
            Part::Hold(hold) => hold_keys(hold),
            Part::Practice(practice) => practice_keys(practice),
        };
        match keys.as_object_mut() {
            Some(keys) => {
                keys.retain(|_, value| !value.is_null());
                core::mem::take(keys)
            }
            None => Map::new(),
        }
    }
}

fn length(si: f64) -> Value {
    exact_text(Kind::Length, si).into()
}

fn maybe(kind: Kind, si: Option<f64>) -> Value {
    si.map_or(Value::Null, |si| exact_text(kind, si).into())
}

/// The word of a choice.
fn word<T: Word + PartialEq>(value: T) -> Value {
    let at = (0..T::WORDS.len()).find(|index| T::at(*index) == Some(value));
    at.and_then(|index| T::WORDS.get(index))
        .map_or(Value::Null, |word| (*word).into())
}

fn material_keys(material: &Material) -> Value {
    match material.pairs.first() {
        Some(pair) if !Library::builtin().materials().contains(material) => json!({
            "name": material.name,
            "iso513": word(material.iso513),
            "kc11": exact_text(Kind::Pressure, pair.kc11.value),
            "chip_exponent": pair.exponent.value,
            "source": pair.source,
        }),
        _ => json!({"id": material.id}),
    }
}

fn cutter_keys(cutter: &Cutter) -> Value {
    let (form, radius, angle) = match cutter.form {
        CutterForm::Square => ("square", None, None),
        CutterForm::CornerRadius(radius) => ("corner-radius", Some(radius.value), None),
        CutterForm::BallNose => ("ball-nose", None, None),
        CutterForm::FaceMill(angle) => ("face-mill", None, Some(angle.value)),
    };
    json!({
        "name": cutter.name,
        "form": form,
        "corner_radius": maybe(Kind::Length, radius),
        "cutting_edge_angle": maybe(Kind::Angle, angle),
        "material": word(cutter.material),
        "diameter": length(cutter.diameter.value),
        "teeth": cutter.teeth,
        "flute_length": length(cutter.flute_length.value),
        "shank_diameter": length(cutter.shank_diameter.value),
        "stick_out": length(cutter.stick_out.value),
        "helix_angle": exact_text(Kind::Angle, cutter.helix_angle.value),
        "rake_angle": maybe(Kind::Angle, cutter.rake_angle.map(|angle| angle.value)),
        "centre_cutting": cutter.centre_cutting,
        "maximum_speed": maybe(Kind::RotationalSpeed, cutter.maximum_speed.map(|n| n.value)),
    })
}

fn machine_keys(machine: &Machine) -> Value {
    let n = |si| exact_text(Kind::RotationalSpeed, si);
    let v = |si| exact_text(Kind::Velocity, si);
    let (speeds, lowest_speed, highest_speed) = match &machine.drive {
        Drive::Stepped(steps) => (
            Some(steps.iter().map(|step| n(step.value)).collect::<Vec<_>>()),
            None,
            None,
        ),
        Drive::Continuous { lowest, highest } => {
            (None, Some(n(lowest.value)), Some(n(highest.value)))
        }
    };
    let (mut feed, mut feeds, mut feeds_per_rev) = (None, None, None);
    let (mut lowest_feed, mut highest_feed) = (None, None);
    match &machine.feed {
        Feed::Hand => feed = Some("hand"),
        Feed::Stepped(steps) => {
            feeds = Some(steps.iter().map(|step| v(step.value)).collect::<Vec<_>>());
        }
        Feed::Geared(steps) => {
            let steps = steps.iter().map(|step| length(step.value));
            feeds_per_rev = Some(steps.collect::<Vec<_>>());
        }
        Feed::Continuous { lowest, highest } => {
            lowest_feed = Some(v(lowest.value));
            highest_feed = Some(v(highest.value));
        }
    }
    json!({
        "name": machine.name,
        "speeds": speeds,
        "lowest_speed": lowest_speed,
        "highest_speed": highest_speed,
        "motor_power": exact_text(Kind::Power, machine.motor_power.value),
        "efficiency": machine.efficiency.value,
        "base_speed": maybe(Kind::RotationalSpeed, machine.base_speed.map(|n| n.value)),
        "maximum_torque": maybe(Kind::Torque, machine.maximum_torque.map(|torque| torque.value)),
        "feed": feed,
        "feeds": feeds,
        "feeds_per_rev": feeds_per_rev,
        "lowest_feed": lowest_feed,
        "highest_feed": highest_feed,
        "travel_per_turn": maybe(Kind::Length, machine.travel_per_turn.map(|x| x.value)),
        "graduation": maybe(Kind::Length, machine.graduation.map(|x| x.value)),
        "readout_resolution": maybe(Kind::Length, machine.readout.map(|r| r.resolution.value)),
        "backlash": length(machine.backlash.value),
        "rapid_speed": maybe(Kind::Velocity, machine.rapid_speed.map(|v| v.value)),
        "acceleration": maybe(Kind::Acceleration, machine.acceleration.map(|a| a.value)),
        "origin": machine.origin,
    })
}

fn hold_keys(hold: &Hold) -> Value {
    let (force, torque, lead, efficiency) = match hold.clamping {
        Clamping::Force(force) => (Some(force.value), None, None, None),
        Clamping::Screw {
            torque,
            lead,
            efficiency,
        } => (
            None,
            Some(torque.value),
            Some(lead.value),
            Some(efficiency.value),
        ),
    };
    let parallels: Vec<Value> = hold.parallels.iter().map(|x| length(x.value)).collect();
    json!({
        "name": hold.name,
        "clamping_force": maybe(Kind::Force, force),
        "handle_torque": maybe(Kind::Torque, torque),
        "screw_lead": maybe(Kind::Length, lead),
        "screw_efficiency": efficiency,
        "jaw_friction": hold.jaw_friction.value,
        "jaw_height": maybe(Kind::Length, hold.jaw_height.map(|x| x.value)),
        "grip_depth": length(hold.grip_depth.value),
        "parallels": (!parallels.is_empty()).then_some(parallels),
        "feed": if hold.feed_across_jaws { "across-jaws" } else { "along-jaws" },
    })
}

fn practice_keys(practice: &Practice) -> Value {
    let pace = |si| exact_text(Kind::RotationalSpeed, si);
    let time = |si| exact_text(Kind::Time, si);
    let choice: SpeedChoice = practice.speed_choice;
    json!({
        "name": practice.name,
        "speed_choice": word(choice),
        "speed_factor": practice.speed_factor.value,
        "feed_factor": practice.feed_factor.value,
        "thinning_cap": practice.thinning_cap.value,
        "smallest_chip": length(practice.smallest_chip.value),
        "roughing_depth_p": practice.roughing_depth.p,
        "roughing_depth_m": practice.roughing_depth.m,
        "roughing_depth_k": practice.roughing_depth.k,
        "roughing_depth_n": practice.roughing_depth.n,
        "roughing_depth_s": practice.roughing_depth.s,
        "roughing_depth_h": practice.roughing_depth.h,
        "finish_allowance": length(practice.finish_allowance.value),
        "smallest_depth": length(practice.smallest_depth.value),
        "roughing_deflection": length(practice.roughing_deflection.value),
        "finishing_deflection": length(practice.finishing_deflection.value),
        "power_share": practice.power_share.value,
        "holding_safety": practice.holding_safety.value,
        "wear_factor": practice.wear_factor.value,
        "radial_force_ratio": practice.radial_force_ratio.value,
        "smallest_grip": practice.smallest_grip.value,
        "stick_out_ratio": practice.stick_out_ratio.value,
        "handwheel_pace": pace(practice.handwheel_pace.value),
        "handwheel_return_pace": pace(practice.handwheel_return_pace.value),
        "clearance": length(practice.clearance.value),
        "handling_per_pass": time(practice.handling_per_pass.value),
        "strip_width": practice.strip_width.value,
        "jaw_clearance": length(practice.jaw_clearance.value),
        "setup_time": time(practice.setup_time.value),
        "clamping_time": time(practice.clamping_time.value),
        "measuring_time": time(practice.measuring_time.value),
        "deburring_time": time(practice.deburring_time.value),
        "roughing_direction": word(practice.roughing_direction),
        "finishing_direction": word(practice.finishing_direction),
        "climb_depth_with_backlash": length(practice.climb_depth_with_backlash.value),
        "origin": practice.origin,
    })
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    fn again(part: &Part) -> (Part, usize) {
        let section = match part {
            Part::Material(_) => "material",
            Part::Blank(_) => "blank",
            Part::Cutter(_) => "cutter",
            Part::Machine(_) => "machine",
            Part::Hold(_) => "hold",
            Part::Practice(_) => "practice",
        };
        let text = Value::Object(part.to_json()).to_string();
        let (part, assumptions) = Part::from_json(section, &text, Library::builtin()).unwrap();
        (part, assumptions.len())
    }

    fn of(section: &str, keys: &str) -> Part {
        Part::from_json(section, keys, Library::builtin())
            .unwrap()
            .0
    }

    #[test]
    fn what_is_written_reads_as_the_same_part() {
        let cutter = r#""material": "HSS", "diameter": "0.3333 in", "teeth": 3, "flute_length": "17.77 mm",
            "shank_diameter": "3/8 in", "stick_out": "1.77 in""#;
        let hold = r#""jaw_friction": 0.137, "jaw_height": "1.75 in", "grip_depth": "0.5 in""#;
        let mut parts = vec![
            of(
                "blank",
                r#"{"length": "3.3 in", "width": "2 in", "height": "1/3 in"}"#,
            ),
            of(
                "cutter",
                &format!(
                    r#"{{"form": "square", {cutter}, "rake_angle": "7 deg", "maximum_speed": "12345 rpm"}}"#
                ),
            ),
            of(
                "cutter",
                &format!(r#"{{"form": "corner-radius", "corner_radius": "0.7 mm", {cutter}}}"#),
            ),
            of(
                "cutter",
                &format!(r#"{{"form": "ball-nose", {cutter}, "centre_cutting": true}}"#),
            ),
            of(
                "cutter",
                &format!(r#"{{"form": "face-mill", "cutting_edge_angle": "47 deg", {cutter}}}"#),
            ),
            of(
                "hold",
                &format!(
                    r#"{{"clamping_force": "10.1 kN", {hold}, "parallels": ["1 in", "1-1/4 in"]}}"#
                ),
            ),
            of(
                "hold",
                &format!(
                    r#"{{"handle_torque": "41 N.m", "screw_lead": "5 mm", "screw_efficiency": "14 %", {hold}, "feed": "across-jaws"}}"#
                ),
            ),
            of(
                "machine",
                r#"{"base": "manual-knee-mill", "feeds": ["1 in/min", "2.3 in/min"], "maximum_torque": "40 N.m"}"#,
            ),
            of(
                "machine",
                r#"{"base": "engine-lathe", "feeds_per_rev": ["0.003 in", "0.1 mm"]}"#,
            ),
            of(
                "practice",
                r#"{"base": "experienced", "speed_factor": 0.77, "clearance": "1/7 in"}"#,
            ),
            of("material", r#"{"id": "6061"}"#),
            of(
                "material",
                r#"{"name": "plate", "iso513": "N", "kc11": "801.5 N/mm2", "chip_exponent": 0.237}"#,
            ),
        ];
        for name in Machine::BUILTIN {
            parts.push(Part::Machine(Machine::builtin(name).unwrap()));
        }
        for name in Practice::BUILTIN {
            parts.push(Part::Practice(Box::new(Practice::builtin(name).unwrap())));
        }
        for part in parts {
            let (back, assumed) = again(&part);
            assert_eq!(part, back);
            let base = usize::from(matches!(part, Part::Practice(_)));
            assert_eq!(assumed, base, "{part:?}");
        }
    }

    #[test]
    fn problems_are_those_of_a_job_file() {
        let error = Part::from_json("cutter", r#"{"teath": 2}"#, Library::builtin()).unwrap_err();
        assert_eq!(error.first().parameter, "cutter.teath");
        assert!(error.problems().len() > 3);
        let error = Part::from_json("cutter", "{\"a\": ", Library::builtin()).unwrap_err();
        assert_eq!(error.code(), Code::Syntax);
        let error = Part::from_json("cuter", "{}", Library::builtin()).unwrap_err();
        assert_eq!(error.code(), Code::UnknownName);
        let error = Part::from_json("blank", "{}, \"cutter\": {}", Library::builtin()).unwrap_err();
        assert_eq!(error.code(), Code::Syntax);
    }
}
