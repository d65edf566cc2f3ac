//! Rows drawn at random, as columns and as the set-ups and passes they stand for.

pub use super::random::Random;
use gullet::formula::Column;
use gullet::model::{
    Clamping, Cutter, CutterForm, Direction, Drive, Feed, Hold, Machine, PassKind, Practice,
};
use gullet::operation::{Operation, Pass, Setup};
use gullet::quantity::{UnitSystem, si};
use gullet::study::{Base, Choice, Codes, Input, NONE, Rows};
use gullet::table::{Library, Material, ToolMaterial};

const MATERIALS: &[&str] = &["6061", "1018cd", "304", "s235jr", "gg25"];

/// Materials that the library has under these names.
fn materials() -> Vec<Material> {
    MATERIALS
        .iter()
        .filter_map(|id| Library::builtin().material(id).ok().cloned())
        .collect()
}

fn machines() -> Vec<Machine> {
    let mut machines: Vec<Machine> = ["manual-knee-mill", "small-cnc-mill"]
        .iter()
        .map(|name| Machine::builtin(name).unwrap())
        .collect();
    // Every kind of drive and feed.
    let first = machines[0].clone();
    machines.push(Machine {
        drive: Drive::Continuous {
            lowest: si(1.0),
            highest: si(100.0),
        },
        feed: Feed::Continuous {
            lowest: si(1e-4),
            highest: si(0.05),
        },
        base_speed: Some(si(20.0)),
        maximum_torque: Some(si(15.0)),
        ..first.clone()
    });
    machines.push(Machine {
        feed: Feed::Stepped((1..14).map(|i| si(2.5e-4 * 1.5f64.powi(i))).collect()),
        ..first
    });
    machines
}

/// What the rows have in common.
pub fn base() -> Base {
    let d = 0.0127;
    Base {
        materials: materials(),
        machines: machines(),
        practices: Practice::BUILTIN
            .iter()
            .map(|name| Practice::builtin(name).unwrap())
            .collect(),
        cutter: Cutter {
            name: "end mill".to_owned(),
            form: CutterForm::Square,
            material: ToolMaterial::Hss,
            diameter: si(d),
            teeth: 2,
            flute_length: si(0.026),
            shank_diameter: si(d),
            stick_out: si(0.04),
            helix_angle: si(0.5),
            rake_angle: None,
            centre_cutting: true,
            maximum_speed: None,
        },
        hold: Hold {
            name: "vise".to_owned(),
            clamping: Clamping::Force(si(15e3)),
            jaw_friction: si(0.15),
            jaw_height: Some(si(0.04)),
            grip_depth: si(0.02),
            parallels: vec![],
            feed_across_jaws: false,
        },
        part_height: si(0.04),
        pass: Pass {
            operation: Operation::SideMilling,
            kind: PassKind::Roughing,
            axial_depth: si(0.006),
            radial_depth: si(0.002),
            offset: si(0.0),
            length: si(0.1),
            direction: Direction::Conventional,
            mean_roughness: None,
            spindle_speed: None,
            feed_per_tooth: None,
        },
    }
}

/// Columns of drawn rows.
pub struct Drawn {
    pub numbers: Vec<(Input, Vec<f64>)>,
    pub choices: Vec<(Choice, Vec<u32>)>,
    pub count: usize,
}

impl Drawn {
    /// Rows of plausible cuts, some with values that no cut admits.
    pub fn new(random: &mut Random, count: usize, bad: bool) -> Drawn {
        let base = base();
        let mut drawn = Drawn {
            numbers: Input::ALL
                .iter()
                .map(|input| (*input, Vec::with_capacity(count)))
                .collect(),
            choices: Choice::ALL
                .iter()
                .map(|choice| (*choice, Vec::with_capacity(count)))
                .collect(),
            count,
        };
        for _ in 0..count {
            let operation = random.below(3);
            let form = random.below(4);
            let d = random.between(0.003, 0.06);
            let flutes = d * random.between(1.0, 4.0);
            let (axial, radial) = match operation {
                0 => (random.between(0.05, 1.5), random.between(0.01, 0.6)),
                1 => (random.between(0.02, 0.6), 1.0),
                _ => (random.between(0.01, 0.2), random.between(0.2, 1.1)),
            };
            let ill = if bad && random.below(6) == 0 {
                random.below(Input::ALL.len() as u64) as usize
            } else {
                usize::MAX
            };
            for (index, (input, column)) in drawn.numbers.iter_mut().enumerate() {
                let maybe = |random: &mut Random, value: f64| {
                    if random.below(3) == 0 { value } else { NONE }
                };
                let value = match input {
                    Input::AxialDepth => axial * d,
                    Input::RadialDepth => radial * d,
                    Input::Offset => random.between(-0.3, 0.3) * d,
                    Input::CutLength => random.between(0.01, 0.3),
                    Input::MeanRoughness => {
                        let value = random.between(0.2e-6, 10e-6);
                        maybe(random, value)
                    }
                    Input::SpindleSpeed => {
                        let value = random.between(1.0, 60.0);
                        maybe(random, value)
                    }
                    Input::FeedPerTooth => {
                        let value = random.between(0.01e-3, 0.3e-3);
                        maybe(random, value)
                    }
                    Input::CutterDiameter => d,
                    Input::CutterTeeth => (1 + random.below(8)) as f64,
                    Input::CutterFluteLength => flutes,
                    Input::CutterShankDiameter => d * random.between(0.5, 1.2),
                    Input::CutterStickOut => flutes * random.between(1.0, 1.5),
                    Input::CutterHelixAngle => random.between(0.0, 0.9),
                    Input::CutterMaximumSpeed => {
                        let value = random.between(5.0, 300.0);
                        maybe(random, value)
                    }
                    Input::CutterCornerRadius => d * random.between(0.0, 0.5),
                    Input::CutterEdgeAngle => random.between(0.5, 1.57),
                    Input::ClampingForce => random.between(500.0, 40e3),
                    Input::JawFriction => random.between(0.05, 0.4),
                    Input::GripDepth => random.between(0.005, 0.03),
                    Input::PartHeight => random.between(0.01, 0.08),
                    other => panic!("{other:?} is not drawn"),
                };
                const ILL: &[f64] = &[
                    0.0,
                    -1.0,
                    f64::NAN,
                    f64::INFINITY,
                    1e-300,
                    1e300,
                    1e-12,
                    2.5,
                    NONE,
                    5e-324,
                ];
                let ill_value = ILL[random.below(ILL.len() as u64) as usize];
                column.push(if index == ill { ill_value } else { value });
            }
            for (choice, column) in &mut drawn.choices {
                let most = match choice {
                    Choice::Material => base.materials.len() as u64,
                    Choice::Machine => base.machines.len() as u64,
                    Choice::Practice => base.practices.len() as u64,
                    Choice::Operation => 0,
                    Choice::Pass | Choice::Direction | Choice::FeedAcrossJaws => 2,
                    Choice::CutterMaterial => 2,
                    Choice::CutterForm => 0,
                    other => panic!("{other:?} is not drawn"),
                };
                column.push(match choice {
                    Choice::Operation => operation as u32,
                    Choice::CutterForm => form as u32,
                    _ => random.below(most) as u32,
                });
            }
        }
        drawn
    }

    pub fn rows(&self) -> Rows<'_> {
        Rows {
            count: self.count,
            numbers: self
                .numbers
                .iter()
                .map(|(input, values)| (*input, Column::Values(values)))
                .collect(),
            choices: self
                .choices
                .iter()
                .map(|(choice, values)| (*choice, Codes::Values(values)))
                .collect(),
            missing: None,
        }
    }

    fn number(&self, input: Input, row: usize) -> f64 {
        self.numbers
            .iter()
            .find(|(other, _)| *other == input)
            .map_or(f64::NAN, |(_, values)| values[row])
    }

    fn choice(&self, choice: Choice, row: usize) -> usize {
        self.choices
            .iter()
            .find(|(other, _)| *other == choice)
            .map_or(usize::MAX, |(_, values)| values[row] as usize)
    }

    /// The row as the scalar call takes it, written down a second time; none where its count of teeth
    /// is no count.
    pub fn scalar<T>(&self, row: usize, use_it: impl FnOnce(&Setup, &Pass) -> T) -> Option<T> {
        let base = base();
        let at = |input| self.number(input, row);
        let asked = |input| Some(at(input)).filter(|value| *value != NONE);
        let teeth = at(Input::CutterTeeth);
        if !(0.0..=1e9).contains(&teeth) || teeth.fract() != 0.0 {
            return None;
        }
        let cutter = Cutter {
            form: match self.choice(Choice::CutterForm, row) {
                0 => CutterForm::Square,
                1 => CutterForm::CornerRadius(si(at(Input::CutterCornerRadius))),
                2 => CutterForm::BallNose,
                _ => CutterForm::FaceMill(si(at(Input::CutterEdgeAngle))),
            },
            material: ToolMaterial::ALL[self.choice(Choice::CutterMaterial, row)],
            diameter: si(at(Input::CutterDiameter)),
            teeth: teeth as u32,
            flute_length: si(at(Input::CutterFluteLength)),
            shank_diameter: si(at(Input::CutterShankDiameter)),
            stick_out: si(at(Input::CutterStickOut)),
            helix_angle: si(at(Input::CutterHelixAngle)),
            maximum_speed: asked(Input::CutterMaximumSpeed).map(si),
            ..base.cutter
        };
        let hold = Hold {
            clamping: Clamping::Force(si(at(Input::ClampingForce))),
            jaw_friction: si(at(Input::JawFriction)),
            grip_depth: si(at(Input::GripDepth)),
            feed_across_jaws: self.choice(Choice::FeedAcrossJaws, row) == 1,
            ..base.hold
        };
        let operation = Operation::ALL[self.choice(Choice::Operation, row)];
        let pass = Pass {
            operation,
            kind: [PassKind::Roughing, PassKind::Finishing][self.choice(Choice::Pass, row)],
            axial_depth: si(at(Input::AxialDepth)),
            radial_depth: si(match operation {
                Operation::Slotting => at(Input::CutterDiameter),
                _ => at(Input::RadialDepth),
            }),
            offset: si(at(Input::Offset)),
            length: si(at(Input::CutLength)),
            direction: [Direction::Conventional, Direction::Climb]
                [self.choice(Choice::Direction, row)],
            mean_roughness: asked(Input::MeanRoughness).map(si),
            spindle_speed: asked(Input::SpindleSpeed).map(si),
            feed_per_tooth: asked(Input::FeedPerTooth).map(si),
        };
        let setup = Setup {
            library: Library::builtin(),
            material: &base.materials[self.choice(Choice::Material, row)],
            cutter: &cutter,
            machine: &base.machines[self.choice(Choice::Machine, row)],
            hold: &hold,
            practice: &base.practices[self.choice(Choice::Practice, row)],
            part_height: si(at(Input::PartHeight)),
            units: UnitSystem::Metric,
        };
        Some(use_it(&setup, &pass))
    }
}
