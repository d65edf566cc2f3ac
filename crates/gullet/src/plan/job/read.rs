//! Builds the models of a job from the keys of its file.
//!
//! A key that has a problem is replaced by a stand-in that blames no other key, so that the rest of
//! the file is checked as well; a job with a stand-in in it is never handed out.

use super::super::document::{Node, Reader};
use super::machine::{machine, practice};
use super::sections::{BlankKeys, CutKeys, CutterKeys, HeadKeys, HoldKeys, MaterialKeys, SECTIONS};
use super::words::{Along, Counts, End};
use super::{Job, Stock, Strategy};
use crate::error::{Code, Problem, Result};
use crate::model::{Blank, Check, Clamping, Cutter, CutterForm, HUGE, Hold};
use crate::operation::Operation;
use crate::quantity::{self, Kind, Length, UnitSystem, si};
use crate::table::{Iso513, KienzlePair, Library, Material, Provenance, ToolMaterial};

/// Reads a job.
pub(in crate::plan) fn job(root: &Node, library: &Library) -> Result<Job> {
    let mut reader = Reader::open(root, SECTIONS)?;
    let head: HeadKeys = reader.section();
    let material = material(&mut reader, library);
    let units = head.units.unwrap_or(UnitSystem::Metric);
    let blank = blank(&mut reader, units);
    let cutter = cutter(&mut reader, units);
    let machine = machine(&mut reader, units);
    let hold = hold(&mut reader, units);
    let practice = practice(&mut reader, units);
    let cut: CutKeys = reader.section();
    cut_problems(&mut reader, units, &cut, &blank, &hold);
    hold_problems(&mut reader, units, &blank, &hold);

    let operation = cut.operation.unwrap_or(Operation::SideMilling);
    let stock = match (cut.remove, cut.measured, cut.target) {
        (_, Some(measured), Some(target)) => Stock::Measured { measured, target },
        (remove, ..) => Stock::Remove(remove.unwrap_or(si(0.0))),
    };
    let title = head.title.unwrap_or_else(|| {
        let material = material.as_ref().map_or("", |material| &material.name);
        format!("{} of {material}", operation.name())
    });
    let assumptions = reader.close()?;
    // Where one is missing there was a problem, which has been returned.
    let (Some(material), Some(practice)) = (material, practice) else {
        return Err(
            Problem::new(Code::Missing, "material", "", "", "name the work material").into(),
        );
    };
    Ok(Job {
        title,
        units,
        material,
        blank,
        cutter,
        machine,
        hold,
        practice,
        operation,
        stock,
        axial_depth: cut.axial_depth,
        radial_depth: cut.width,
        offset: cut.offset.unwrap_or(si(0.0)),
        length: cut.length,
        strategy: cut.strategy.unwrap_or(Strategy::Even),
        mean_roughness: cut.mean_roughness,
        readout_start: cut.readout_start.unwrap_or(si(0.0)),
        readout_rises: cut.readout_direction != Some(Counts::Down),
        spindle_speed: cut.spindle_speed,
        feed_per_tooth: cut.feed_per_tooth,
        assumptions,
    })
}

pub(in crate::plan) fn material(reader: &mut Reader<'_>, library: &Library) -> Option<Material> {
    let keys: MaterialKeys = reader.section();
    if let Some(id) = &keys.id {
        return of_tables(reader, library, "material.id", id).cloned();
    }
    // Tables print the pair in metric units.
    let mut check = Check::new(UnitSystem::Metric);
    if let Some(kc11) = keys.kc11 {
        check.range(
            "kc11",
            Kind::Pressure,
            kc11.value,
            0.0,
            false,
            20e9,
            "200 to 5000 N/mm2 are usual",
        );
    }
    if let Some(exponent) = keys.chip_exponent {
        check.range(
            "chip_exponent",
            Kind::Ratio,
            exponent.value,
            0.0,
            true,
            0.99,
            "0.15 to 0.35 are usual",
        );
    }
    reader.within("material", check.finish());
    let like = keys
        .like
        .as_ref()
        .and_then(|id| of_tables(reader, library, "material.like", id));
    if let (Some(like), Some(group)) = (like, keys.iso513)
        && like.iso513 != group
    {
        reader.problem(Problem::new(
            Code::Inconsistent,
            "material.like",
            format!("{} of group {:?}", like.name, like.iso513),
            format!("a material of group {group:?}"),
            "choose one of the same ISO 513 group, or correct iso513",
        ));
    }
    let (name, iso513) = (keys.name?, keys.iso513?);
    let pair = KienzlePair {
        kc11: keys.kc11?,
        exponent: keys.chip_exponent?,
        source: keys
            .source
            .unwrap_or_else(|| "the shop's own, no source given".to_owned()),
    };
    let Some(like) = like else {
        return Some(own_material(name, iso513, pair));
    };
    reader.assume(format!(
        "material.like: speeds and feeds of {} assumed",
        like.name
    ));
    let mut material = like.clone();
    material.id.clone_from(&name);
    material.name = name;
    material.pairs = vec![pair];
    Some(material)
}

fn of_tables<'l>(
    reader: &mut Reader<'_>,
    library: &'l Library,
    path: &str,
    id: &str,
) -> Option<&'l Material> {
    match library.material(id) {
        Ok(material) => Some(material),
        Err(error) => {
            for mut problem in error.into_problems() {
                path.clone_into(&mut problem.parameter);
                reader.problem(problem);
            }
            None
        }
    }
}

/// A material of the shop's own, of which nothing but its cutting force is known.
fn own_material(name: String, iso513: Iso513, pair: KienzlePair) -> Material {
    Material {
        id: name.clone(),
        name,
        aliases: Vec::new(),
        iso513,
        condition: "condition not given".to_owned(),
        hardness_brinell: None,
        beyond_brinell: false,
        hardness_given: None,
        tensile: None,
        pairs: vec![pair],
        density: None,
        youngs_modulus: None,
        machinability: None,
        classes: Vec::new(),
        cautions: Vec::new(),
        sources: Vec::new(),
        provenance: Provenance::Shop,
        assumptions: Vec::new(),
        note: String::new(),
    }
}

pub(super) fn blank(reader: &mut Reader<'_>, units: UnitSystem) -> Blank {
    let keys: BlankKeys = reader.section();
    let largest = si(100.0);
    let blank = Blank {
        length: keys.length.unwrap_or(largest),
        width: keys.width.unwrap_or(largest),
        height: keys.height.unwrap_or(largest),
    };
    reader.within("blank", blank.problems_in(units));
    blank
}

pub(super) fn cutter(reader: &mut Reader<'_>, units: UnitSystem) -> Cutter {
    let keys: CutterKeys = reader.section();
    cutter_of(reader, units, "cutter", keys)
}

/// The cutter that the keys of a section describe.
pub(in crate::plan) fn cutter_of(
    reader: &mut Reader<'_>,
    units: UnitSystem,
    section: &str,
    keys: CutterKeys,
) -> Cutter {
    let gives = |reader: &Reader<'_>, key: &str| reader.gives(&format!("{section}.{key}"));
    let form = match keys.form {
        Some(End::CornerRadius) => CutterForm::CornerRadius(keys.corner_radius.unwrap_or(si(0.0))),
        Some(End::BallNose) => CutterForm::BallNose,
        Some(End::FaceMill) => CutterForm::FaceMill(
            keys.cutting_edge_angle
                .unwrap_or(si(core::f64::consts::FRAC_PI_2)),
        ),
        Some(End::Square) | None => CutterForm::Square,
    };
    let face_mill = matches!(form, CutterForm::FaceMill(_));
    let material = keys.material.unwrap_or(ToolMaterial::Hss);
    let diameter = keys.diameter.unwrap_or(si(1.0));
    let teeth = keys.teeth.unwrap_or(1);
    if keys.diameter.is_some() && !gives(reader, "shank_diameter") && !face_mill {
        reader.assume(format!(
            "{section}.shank_diameter: the cutter's diameter assumed"
        ));
    }
    let helix_text = if face_mill { "0 deg" } else { "30 deg" };
    let helix = si(quantity::parse(Kind::Angle, helix_text).unwrap_or(0.0));
    if keys.form.is_some() && !gives(reader, "helix_angle") {
        reader.assume(format!(
            "{section}.helix_angle: {helix_text} assumed (common practice, no source)"
        ));
    }
    let cutter = Cutter {
        name: keys
            .name
            .unwrap_or_else(|| unnamed_cutter(form, material, diameter, teeth, units)),
        form,
        material,
        diameter,
        teeth,
        flute_length: keys.flute_length.unwrap_or(si(1e-9)),
        shank_diameter: keys.shank_diameter.unwrap_or(diameter),
        stick_out: keys.stick_out.unwrap_or(si(HUGE)),
        helix_angle: keys.helix_angle.unwrap_or(helix),
        rake_angle: keys.rake_angle,
        centre_cutting: keys.centre_cutting.unwrap_or(false),
        maximum_speed: keys.maximum_speed,
    };
    let mut problems = cutter.problems_in(units);
    if !gives(reader, "shank_diameter") {
        problems.retain(|problem| problem.parameter != "shank_diameter");
    }
    reader.within(section, problems);
    cutter
}

/// What a cutter without a name of its own is called.
pub(in crate::plan) fn unnamed_cutter(
    form: CutterForm,
    material: ToolMaterial,
    diameter: Length,
    teeth: u32,
    units: UnitSystem,
) -> String {
    let word = match form {
        CutterForm::Square => "square end mill",
        CutterForm::CornerRadius(_) => "end mill with corner radius",
        CutterForm::BallNose => "ball-nose end mill",
        CutterForm::FaceMill(_) => "face mill",
    };
    let size = quantity::format(Kind::Length, diameter.value, units);
    format!("{size} {teeth}-tooth {} {word}", material.name())
}

pub(super) fn hold(reader: &mut Reader<'_>, units: UnitSystem) -> Hold {
    let keys: HoldKeys = reader.section();
    hold_of(reader, units, keys)
}

/// The hold that the keys of its section describe.
pub(in crate::plan) fn hold_of(reader: &mut Reader<'_>, units: UnitSystem, keys: HoldKeys) -> Hold {
    let screw = reader.gives("hold.handle_torque")
        || reader.gives("hold.screw_lead")
        || reader.gives("hold.screw_efficiency");
    let clamping = if screw && keys.clamping_force.is_none() {
        Clamping::Screw {
            torque: keys.handle_torque.unwrap_or(si(1.0)),
            lead: keys.screw_lead.unwrap_or(si(1e-3)),
            efficiency: keys.screw_efficiency.unwrap_or(si(1.0)),
        }
    } else {
        Clamping::Force(keys.clamping_force.unwrap_or(si(1.0)))
    };
    let hold = Hold {
        name: keys.name.unwrap_or_default(),
        clamping,
        jaw_friction: keys.jaw_friction.unwrap_or(si(1.0)),
        jaw_height: keys.jaw_height,
        grip_depth: keys.grip_depth.unwrap_or(si(1e-9)),
        parallels: keys.parallels.unwrap_or_default(),
        feed_across_jaws: keys.feed == Some(Along::AcrossJaws),
    };
    reader.within("hold", hold.problems_in(units));
    hold
}

/// One length must not exceed another; both are named by their path.
fn at_most(
    reader: &mut Reader<'_>,
    units: UnitSystem,
    (path, value): (&str, Length),
    (other, limit): (&str, Length),
    remedy: &str,
) {
    if value.value > limit.value * (1.0 + 1e-12) && !reader.blamed(path) && !reader.blamed(other) {
        let show = |x: Length| quantity::format(Kind::Length, x.value, units);
        let shown = if matches!(path, "cut.remove" | "cut.final") {
            format!("{} to take off", show(value))
        } else {
            show(value)
        };
        reader.problem(Problem::new(
            Code::Inconsistent,
            path,
            shown,
            format!("at most {other} = {}", show(limit)),
            remedy,
        ));
    }
}

fn hold_problems(reader: &mut Reader<'_>, units: UnitSystem, blank: &Blank, hold: &Hold) {
    let grip = ("hold.grip_depth", hold.grip_depth);
    at_most(
        reader,
        units,
        grip,
        ("blank.height", blank.height),
        "the jaws cannot cover more than the blank's height",
    );
    if let Some(height) = hold.jaw_height {
        at_most(
            reader,
            units,
            grip,
            ("hold.jaw_height", height),
            "the jaws cannot cover more than their own height",
        );
    }
}

fn cut_problems(
    reader: &mut Reader<'_>,
    units: UnitSystem,
    cut: &CutKeys,
    blank: &Blank,
    hold: &Hold,
) {
    let mut check = Check::new(units);
    for (name, value) in [
        ("remove", cut.remove),
        ("measured", cut.measured),
        ("final", cut.target),
        ("axial_depth", cut.axial_depth),
        ("width", cut.width),
        ("length", cut.length),
    ] {
        if let Some(value) = value {
            check.range(
                name,
                Kind::Length,
                value.value,
                0.0,
                false,
                100.0,
                "give a size above zero",
            );
        }
    }
    for (name, value) in [("offset", cut.offset), ("readout_start", cut.readout_start)] {
        if let Some(value) = value {
            check.range(
                name,
                Kind::Length,
                value.value,
                -100.0,
                true,
                100.0,
                "give a length on the machine",
            );
        }
    }
    if let Some(speed) = cut.spindle_speed {
        check.range(
            "spindle_speed",
            Kind::RotationalSpeed,
            speed.value,
            0.0,
            false,
            1e5,
            "leave it out to use the tables'",
        );
    }
    if let Some(feed) = cut.feed_per_tooth {
        check.range(
            "feed_per_tooth",
            Kind::Length,
            feed.value,
            0.0,
            false,
            0.01,
            "leave it out to use the tables'",
        );
    }
    if let Some(roughness) = cut.mean_roughness {
        check.range(
            "mean_roughness",
            Kind::Length,
            roughness.value,
            0.0,
            false,
            1e-3,
            "leave it out where none is asked for",
        );
    }
    reader.within("cut", check.finish());

    if let (Some(measured), Some(target)) = (cut.measured, cut.target)
        && target.value >= measured.value
        && !reader.blamed("cut.final")
        && !reader.blamed("cut.measured")
    {
        let show = |x: Length| quantity::format(Kind::Length, x.value, units);
        reader.problem(Problem::new(
            Code::Inconsistent,
            "cut.final",
            show(target),
            format!("below cut.measured = {}", show(measured)),
            "milling only takes off: are measured and final swapped?",
        ));
    }
    sizes(reader, units, cut, blank, hold);
}

/// What is cut must be there.
fn sizes(reader: &mut Reader<'_>, units: UnitSystem, cut: &CutKeys, blank: &Blank, hold: &Hold) {
    let height = ("blank.height", blank.height);
    let width = ("blank.width", blank.width);
    let depth = match (cut.remove, cut.measured, cut.target) {
        (Some(remove), ..) => Some(("cut.remove", remove)),
        (None, Some(measured), Some(target))
            if measured.value > target.value && !reader.blamed("cut.measured") =>
        {
            Some(("cut.final", measured - target))
        }
        _ => None,
    };
    if let (Some(depth), Some(operation)) = (depth, cut.operation) {
        let across = operation == Operation::SideMilling;
        let room = if across { width } else { height };
        at_most(
            reader,
            units,
            depth,
            room,
            "there is not that much stock to take off",
        );
        if operation == Operation::FaceMilling
            && depth.1.value <= blank.height.value
            && hold.grip_depth.value <= blank.height.value
        {
            at_most(
                reader,
                units,
                depth,
                (
                    "blank.height - hold.grip_depth",
                    blank.height - hold.grip_depth,
                ),
                "the face would end below the top of the jaws: grip less or raise the work",
            );
        }
    }
    if let Some(depth) = cut.axial_depth {
        at_most(
            reader,
            units,
            ("cut.axial_depth", depth),
            height,
            "the wall cannot be higher than the blank",
        );
    }
    if let Some(size) = cut.width {
        at_most(
            reader,
            units,
            ("cut.width", size),
            width,
            "the face cannot be wider than the blank",
        );
    }
    if let Some(length) = cut.length {
        at_most(
            reader,
            units,
            ("cut.length", length),
            ("blank.length", blank.length),
            "the cut cannot be longer than the blank",
        );
    }
}
