//! Rows that choose alike: what the tables, the machine and the practice say to all of them.

use super::base::Base;
use super::milling::MillingStudy;
use super::rows::{Choice, Codes, FORMS};
use crate::error::{Code, Problem};
use crate::model::{Clamping, CutterForm, Direction, PassKind};
use crate::operation::inputs::{Shop, fill_pass, kinds, process, template};
use crate::operation::numbers::{Form, Inputs, Kinds, Pair};
use crate::operation::{Milling, Operation, Pass, Setup};
use crate::quantity::{UnitSystem, si};
use crate::table::{Grounds, Process, ToolMaterial};
use std::collections::HashMap;
use std::sync::{Arc, Mutex, PoisonError};

/// The places that a row chooses, by the number of the [`Choice`].
pub(super) type Key = [u32; Choice::ALL.len()];

/// Stands in a key for what the base decides.
const OF_BASE: u32 = u32::MAX;

/// Groups and tables that were made already.
#[derive(Default)]
pub(super) struct Groups {
    made: Mutex<HashMap<Key, Arc<Made>>>,
    grounds: Mutex<HashMap<(u32, ToolMaterial, Process), Arc<Grounds>>>,
}

/// A group, or the code of the choice that names nothing.
pub(super) type Made = Result<Group, Code>;

/// What rows that choose alike have in common.
pub(super) struct Group {
    pub kinds: Kinds,
    pub grounds: Arc<Grounds>,
    /// The numbers; columns are laid over them.
    pub template: Inputs,
    /// The same before anything of the base's pass is filled in.
    pub tables: Inputs,
    /// The different pairs that limits are checked with, the default one first.
    pub pairs: Vec<Pair>,
    /// The base with the choices made.
    pub base: Base,
}

/// How the choices of the rows are read.
pub(super) struct Keys<'a> {
    constant: Key,
    varying: Vec<(usize, &'a [u32])>,
}

impl<'a> Keys<'a> {
    pub(super) fn new(choices: &[(Choice, Codes<'a>)]) -> Keys<'a> {
        let mut keys = Keys {
            constant: [OF_BASE; Choice::ALL.len()],
            varying: Vec::new(),
        };
        for (choice, codes) in choices {
            let place = *choice as usize;
            match codes {
                Codes::Constant(code) => {
                    if let Some(slot) = keys.constant.get_mut(place) {
                        *slot = *code;
                    }
                }
                Codes::Values(values) => keys.varying.push((place, values)),
            }
        }
        keys
    }

    /// Whether all rows choose alike.
    pub(super) fn uniform(&self) -> bool {
        self.varying.is_empty()
    }

    pub(super) fn of(&self, row: usize) -> Key {
        let mut key = self.constant;
        for (place, values) in &self.varying {
            if let (Some(slot), Some(value)) = (key.get_mut(*place), values.get(row)) {
                *slot = *value;
            }
        }
        key
    }
}

fn pick<T: Copy>(list: &[T], code: u32, own: T) -> Result<T, Code> {
    if code == OF_BASE {
        return Ok(own);
    }
    list.get(code as usize).copied().ok_or(Code::UnknownName)
}

/// An entry of a base's own list, which may go on with others.
pub(super) fn listed<'s, T>(own: &'s [T], others: Option<&'s [T]>, place: usize) -> Option<&'s T> {
    match place.checked_sub(own.len()) {
        None => own.get(place),
        Some(behind) => others?.get(behind),
    }
}

/// The entry that a code chooses, the first one where it chooses none.
pub(super) fn pick_entry<'s, T: Clone + 's>(
    listed: impl FnOnce(usize) -> Option<&'s T>,
    code: u32,
) -> Result<(u32, T), Code> {
    let (place, nothing) = match code {
        OF_BASE => (0, Code::Missing),
        chosen => (chosen, Code::UnknownName),
    };
    let entry = listed(place as usize).ok_or(nothing)?;
    Ok((place, entry.clone()))
}

impl MillingStudy<'_> {
    /// The group of a key; made at its first use.
    pub(super) fn group(&self, key: &Key) -> Arc<Made> {
        let known = |groups: &HashMap<Key, Arc<Made>>| groups.get(key).cloned();
        let lock = || {
            self.groups
                .made
                .lock()
                .unwrap_or_else(PoisonError::into_inner)
        };
        if let Some(made) = known(&lock()) {
            return made;
        }
        let made = Arc::new(self.make(key));
        lock().entry(*key).or_insert(made).clone()
    }

    fn make(&self, key: &Key) -> Made {
        let code = |choice: Choice| key.get(choice as usize).copied().unwrap_or(OF_BASE);
        let (place, material) = pick_entry(|place| self.material(place), code(Choice::Material))?;
        let machine = pick_entry(|place| self.machine(place), code(Choice::Machine))?.1;
        let practice = pick_entry(|place| self.practice(place), code(Choice::Practice))?.1;
        let mut base = Base {
            materials: vec![material],
            machines: vec![machine],
            practices: vec![practice],
            cutter: self.base.cutter.clone(),
            hold: self.base.hold.clone(),
            part_height: self.base.part_height,
            pass: self.base.pass,
        };
        let pass = &mut base.pass;
        pass.operation = pick(Operation::ALL, code(Choice::Operation), pass.operation)?;
        pass.kind = pick(PassKind::ALL, code(Choice::Pass), pass.kind)?;
        pass.direction = pick(Direction::ALL, code(Choice::Direction), pass.direction)?;
        let cutter = &mut base.cutter;
        cutter.material = pick(
            ToolMaterial::ALL,
            code(Choice::CutterMaterial),
            cutter.material,
        )?;
        cutter.form = form(cutter.form, code(Choice::CutterForm))?;
        base.hold.feed_across_jaws = match code(Choice::FeedAcrossJaws) {
            OF_BASE => base.hold.feed_across_jaws,
            0 => false,
            1 => true,
            _ => return Err(Code::UnknownName),
        };
        let process = process(base.pass.operation, Form::of(base.cutter.form));
        let grounds = self.grounds(place, &base, process);
        let shop = base.shop().ok_or(Code::Missing)?;
        let kinds = kinds(&shop, &grounds, &base.pass);
        let tables = template(&shop, &grounds);
        let mut template = tables;
        fill_pass(&mut template, shop.practice, &grounds, &base.pass);
        let [own, others @ ..] = template.pairs();
        let pairs = core::iter::once(own)
            .chain(others.into_iter().filter(|pair| *pair != own))
            .collect();
        Ok(Group {
            kinds,
            grounds,
            template,
            tables,
            pairs,
            base,
        })
    }

    /// The tables for a material under a tool; looked up at their first use.
    fn grounds(&self, material: u32, base: &Base, process: Process) -> Arc<Grounds> {
        let key = (material, base.cutter.material, process);
        let lock = || {
            self.groups
                .grounds
                .lock()
                .unwrap_or_else(PoisonError::into_inner)
        };
        if let Some(grounds) = lock().get(&key) {
            return grounds.clone();
        }
        let made = base.materials.first().map(|material| {
            self.library
                .grounds(material, base.cutter.material, process)
        });
        match made {
            Some(made) => lock().entry(key).or_insert(made).clone(),
            None => Arc::new(Grounds::nothing()),
        }
    }
}

/// The form of a code; sizes that a form needs and the base does not have are not numbers.
fn form(own: CutterForm, code: u32) -> Result<CutterForm, Code> {
    if code == OF_BASE {
        return Ok(own);
    }
    let form = match FORMS.get(code as usize) {
        Some(&"square") => CutterForm::Square,
        Some(&"corner-radius") => CutterForm::CornerRadius(si(f64::NAN)),
        Some(&"ball-nose") => CutterForm::BallNose,
        Some(&"face-mill") => CutterForm::FaceMill(si(f64::NAN)),
        _ => return Err(Code::UnknownName),
    };
    Ok(if Form::of(form) == Form::of(own) {
        own
    } else {
        form
    })
}

impl Base {
    pub(super) fn shop(&self) -> Option<Shop<'_>> {
        Some(Shop {
            material: self.materials.first()?,
            cutter: &self.cutter,
            machine: self.machines.first()?,
            hold: &self.hold,
            practice: self.practices.first()?,
            part_height: self.part_height,
        })
    }
}

impl Group {
    /// Everything of one row as the scalar call takes it.
    pub(super) fn base_of(&self, inputs: &Inputs) -> Base {
        let mut base = self.base.clone();
        let cutter = &mut base.cutter;
        cutter.diameter = inputs.diameter;
        // A count that is no whole number is refused before.
        cutter.teeth = inputs.teeth.value as u32;
        cutter.flute_length = inputs.flute_length;
        cutter.shank_diameter = inputs.shank_diameter;
        cutter.stick_out = inputs.stick_out;
        cutter.helix_angle = inputs.helix_angle;
        cutter.maximum_speed =
            (inputs.cutter_speed.value != f64::INFINITY).then_some(inputs.cutter_speed);
        cutter.form = match cutter.form {
            CutterForm::CornerRadius(_) => CutterForm::CornerRadius(inputs.corner_radius),
            CutterForm::FaceMill(_) => CutterForm::FaceMill(inputs.cutting_edge_angle),
            same => same,
        };
        if inputs.clamping_force.value.to_bits() != self.template.clamping_force.value.to_bits() {
            base.hold.clamping = Clamping::Force(inputs.clamping_force);
        }
        base.hold.jaw_friction = inputs.friction;
        base.hold.grip_depth = inputs.grip_depth;
        base.part_height = inputs.part_height;
        base.pass = Pass {
            axial_depth: inputs.axial_depth,
            radial_depth: inputs.radial_depth,
            offset: inputs.offset,
            length: inputs.cut_length,
            mean_roughness: (inputs.mean_roughness.value != f64::INFINITY)
                .then_some(inputs.mean_roughness),
            spindle_speed: (inputs.asked_speed.value != 0.0).then_some(inputs.asked_speed),
            feed_per_tooth: (inputs.asked_feed.value != 0.0).then_some(inputs.asked_feed),
            ..base.pass
        };
        base
    }
}

impl MillingStudy<'_> {
    /// The scalar set-up of a row, for what the columns do not decide themselves.
    pub(super) fn milling(&self, base: &Base) -> Option<Milling> {
        let shop = base.shop()?;
        Some(Milling::new(&Setup {
            library: &self.library,
            material: shop.material,
            cutter: shop.cutter,
            machine: shop.machine,
            hold: shop.hold,
            practice: shop.practice,
            part_height: shop.part_height,
            units: UnitSystem::Metric,
        }))
    }

    /// The first problem of a row's set-up and pass.
    pub(super) fn first_problem(&self, base: &Base) -> Option<Problem> {
        let shop = base.shop()?;
        let setup = Setup {
            library: &self.library,
            material: shop.material,
            cutter: shop.cutter,
            machine: shop.machine,
            hold: shop.hold,
            practice: shop.practice,
            part_height: shop.part_height,
            units: UnitSystem::Metric,
        };
        crate::operation::problems(&setup, &base.pass)
            .into_iter()
            .next()
    }
}
