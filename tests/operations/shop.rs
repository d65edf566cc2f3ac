//! Set-ups that own their parts: the usual one, and drawn ones.

use gullet::model::{
    Clamping, Cutter, CutterForm, Direction, Feed, Hold, Machine, PassKind, Practice,
};
use gullet::operation::{Cut, Lowering, Operation, Pass, Setup, mill};
use gullet::quantity::si;
use gullet::table::{Library, Material, ToolMaterial};
use proptest::prelude::*;

pub const INCH: f64 = 0.0254;

/// A set-up that owns its parts.
#[derive(Clone, Debug)]
pub struct Shop {
    pub material: String,
    pub cutter: Cutter,
    pub machine: Machine,
    pub hold: Hold,
    pub practice: Practice,
    pub part_height: f64,
    pub pass: Pass,
}

impl Shop {
    /// Half-inch end mill in aluminium on the knee mill, side milling.
    pub fn usual() -> Shop {
        let d = 0.5 * INCH;
        Shop {
            material: "6061".to_owned(),
            cutter: Cutter {
                name: "end mill".to_owned(),
                form: CutterForm::Square,
                material: ToolMaterial::Hss,
                diameter: si(d),
                teeth: 2,
                flute_length: si(INCH),
                shank_diameter: si(d),
                stick_out: si(1.5 * INCH),
                helix_angle: si(30f64.to_radians()),
                rake_angle: None,
                centre_cutting: true,
                maximum_speed: None,
            },
            machine: Machine::builtin("manual-knee-mill").unwrap(),
            hold: Hold {
                name: "vise".to_owned(),
                clamping: Clamping::Force(si(15e3)),
                jaw_friction: si(0.15),
                jaw_height: Some(si(0.04)),
                grip_depth: si(0.02),
                parallels: vec![],
                feed_across_jaws: false,
            },
            practice: Practice::builtin("training").unwrap(),
            part_height: 0.04,
            pass: Pass {
                operation: Operation::SideMilling,
                kind: PassKind::Roughing,
                axial_depth: si(0.25 * INCH),
                radial_depth: si(0.1 * INCH),
                offset: si(0.0),
                length: si(4.0 * INCH),
                direction: Direction::Conventional,
                mean_roughness: None,
                spindle_speed: None,
                feed_per_tooth: None,
            },
        }
    }

    pub fn material(&self) -> &'static Material {
        Library::builtin().material(&self.material).unwrap()
    }

    pub fn setup(&self) -> Setup<'_> {
        Setup {
            units: gullet::quantity::UnitSystem::Metric,
            library: Library::builtin(),
            material: self.material(),
            cutter: &self.cutter,
            machine: &self.machine,
            hold: &self.hold,
            practice: &self.practice,
            part_height: si(self.part_height),
        }
    }

    pub fn mill(&self, lowering: Lowering) -> gullet::Result<Cut> {
        mill(&self.setup(), &self.pass, lowering)
    }
}

const MATERIALS: &[&str] = &["6061", "1018cd", "304", "1018hr", "s235jr"];

prop_compose! {
    fn cutter()(
        tool in prop::sample::select(vec![ToolMaterial::Hss, ToolMaterial::HssCo, ToolMaterial::UncoatedCarbide, ToolMaterial::CoatedCarbide]),
        d in 2e-3f64..60e-3, teeth in 1u32..9, flutes in 0.6f64..3.5, out in 1.0f64..1.6,
        helix in 0.0f64..50.0, form in 0u8..4, corner in 0.02f64..0.5, kappa in 30.0f64..90.0,
        capped in prop::option::weighted(0.2, 5.0f64..300.0),
    ) -> Cutter {
        Cutter {
            name: "cutter".to_owned(),
            form: match form {
                0 => CutterForm::Square,
                1 => CutterForm::CornerRadius(si(corner * d)),
                2 => CutterForm::BallNose,
                _ => CutterForm::FaceMill(si(kappa.to_radians())),
            },
            material: tool,
            diameter: si(d),
            teeth,
            flute_length: si(flutes * d),
            shank_diameter: si(d),
            stick_out: si(flutes * d * out),
            helix_angle: si(helix.to_radians()),
            rake_angle: None,
            centre_cutting: true,
            maximum_speed: capped.map(si),
        }
    }
}

prop_compose! {
    fn machine()(
        kind in 0u8..4, power in 300.0f64..15e3, base in prop::option::of(5.0f64..60.0),
        torque in prop::option::weighted(0.2, 2.0f64..80.0), backlash in prop::sample::select(vec![0.0, 1e-4]),
    ) -> Machine {
        let mut machine = Machine::builtin(if kind % 2 == 0 { "manual-knee-mill" } else { "small-cnc-mill" }).unwrap();
        machine.motor_power = si(power);
        machine.base_speed = base.map(si);
        machine.maximum_torque = torque.map(si);
        machine.backlash = si(backlash);
        if kind == 2 {
            machine.feed = Feed::Stepped([0.4, 0.8, 1.6, 3.2, 6.4, 12.8].map(|x| si(x * 1e-3)).to_vec());
        }
        machine
    }
}

prop_compose! {
    pub fn shop()(
        material in prop::sample::select(MATERIALS), cutter in cutter(), machine in machine(),
        practice in prop::sample::select(Practice::BUILTIN), clamp in 1e3f64..40e3, across: bool,
        operation in prop::sample::select(Operation::ALL), finishing: bool, climb: bool,
        axial in 0.01f64..1.0, radial in 0.005f64..1.0, offset in -0.9f64..0.9,
        length in 0.01f64..0.5, rough in prop::option::weighted(0.3, 2e-7f64..1e-5),
        speed in prop::option::weighted(0.2, 1.0f64..200.0), feed in prop::option::weighted(0.2, 5e-6f64..3e-4),
    ) -> Shop {
        let usual = Shop::usual();
        let d = cutter.diameter;
        Shop {
            material: material.to_owned(),
            pass: Pass {
                operation: *Operation::ALL.iter().find(|x| **x == operation).unwrap(),
                kind: if finishing { PassKind::Finishing } else { PassKind::Roughing },
                axial_depth: match operation {
                    Operation::SideMilling => cutter.flute_length * axial,
                    _ => d * axial * 0.3,
                },
                radial_depth: match operation {
                    Operation::SideMilling => d * radial * if finishing { 0.1 } else { 1.0 },
                    Operation::Slotting => d,
                    Operation::FaceMilling => d * radial * 1.3,
                },
                offset: si(offset * d.value * (1.0 + radial * 1.3) / 2.0),
                length: si(length),
                direction: if climb { Direction::Climb } else { Direction::Conventional },
                mean_roughness: rough.map(si),
                spindle_speed: speed.map(si),
                feed_per_tooth: feed.map(si),
            },
            cutter, machine,
            hold: Hold { clamping: Clamping::Force(si(clamp)), feed_across_jaws: across, ..usual.hold.clone() },
            practice: Practice::builtin(practice).unwrap(),
            ..usual
        }
    }
}
