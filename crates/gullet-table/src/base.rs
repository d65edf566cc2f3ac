//! What a study starts from where nothing is given.

use gullet::Result;
use gullet::model::{Cutter, CutterForm, Direction, Hold, PassKind, Practice};
use gullet::operation::{Operation, Pass};
use gullet::plan::Part;
use gullet::quantity::si;
use gullet::study::{Base, Input};
use gullet::table::Library;
use std::sync::OnceLock;

/// The defaults of job files.
pub(crate) struct Defaults {
    /// Helix angle of an end mill and of a face mill.
    pub helix: [f64; 2],
    pub hold: Hold,
    pub practice: Practice,
    cutter: Cutter,
}

impl Defaults {
    /// Those of every study: no table has a say in them.
    pub(crate) fn all() -> Result<&'static Defaults> {
        static ALL: OnceLock<Result<Defaults>> = OnceLock::new();
        let all = ALL.get_or_init(|| Defaults::read(Library::builtin()));
        all.as_ref().map_err(Clone::clone)
    }

    /// As the sections of a job file have them, where only the needed keys are given.
    fn read(library: &Library) -> Result<Defaults> {
        let end_mill = cutter("square", "", library)?;
        let face_mill = cutter("face-mill", r#", "cutting_edge_angle": "45 deg""#, library)?;
        let hold = r#"{"clamping_force": "1 kN", "grip_depth": "10 mm"}"#;
        let (hold, _) = Part::from_json("hold", hold, library)?;
        let (practice, _) = Part::from_json("practice", "{}", library)?;
        match (hold, practice) {
            (Part::Hold(hold), Part::Practice(practice)) => Ok(Defaults {
                helix: [end_mill.helix_angle.value, face_mill.helix_angle.value],
                hold,
                practice: *practice,
                cutter: end_mill,
            }),
            _ => Err(wrong_section()),
        }
    }

    /// A base in which every number that has no default is none: columns and constants give it.
    pub(crate) fn base(&self) -> Base {
        let none = f64::NAN;
        Base {
            materials: Vec::new(),
            machines: Vec::new(),
            practices: vec![self.practice.clone()],
            cutter: Cutter {
                diameter: si(none),
                flute_length: si(none),
                shank_diameter: si(none),
                stick_out: si(none),
                ..self.cutter.clone()
            },
            hold: self.hold.clone(),
            part_height: si(none),
            pass: Pass {
                operation: Operation::SideMilling,
                kind: PassKind::Roughing,
                axial_depth: si(none),
                radial_depth: si(none),
                offset: si(0.0),
                length: si(none),
                direction: Direction::Conventional,
                mean_roughness: None,
                spindle_speed: None,
                feed_per_tooth: None,
            },
        }
    }
}

fn cutter(form: &str, more: &str, library: &Library) -> Result<Cutter> {
    let keys = format!(
        r#"{{"form": "{form}", "material": "HSS", "diameter": "10 mm", "teeth": 2,
            "flute_length": "10 mm", "stick_out": "20 mm", "shank_diameter": "10 mm"{more}}}"#
    );
    match Part::from_json("cutter", &keys, library)?.0 {
        Part::Cutter(cutter) => Ok(cutter),
        _ => Err(wrong_section()),
    }
}

/// A section is never read as another one.
fn wrong_section() -> gullet::Error {
    gullet::error::unknown_name("section", "", Part::SECTIONS.iter().copied()).into()
}

/// Whether a base has no value for an input that every cut needs.
pub(crate) fn lacks(base: &Base, input: Input) -> bool {
    match input {
        Input::AxialDepth => base.pass.axial_depth.value.is_nan(),
        Input::RadialDepth => base.pass.radial_depth.value.is_nan(),
        Input::CutLength => base.pass.length.value.is_nan(),
        Input::PartHeight => base.part_height.value.is_nan(),
        _ => false,
    }
}

/// Whether a cut of this operation with this form of cutter needs an input.
pub(crate) fn needs(input: Input, operation: Operation, form: usize) -> bool {
    match input {
        Input::RadialDepth => operation != Operation::Slotting,
        Input::Offset => operation == Operation::FaceMilling,
        Input::CutterCornerRadius => form == CORNER_RADIUS,
        Input::CutterEdgeAngle => form == FACE_MILL,
        _ => !input.optional(),
    }
}

/// Places in [`gullet::study::FORMS`].
pub(crate) const CORNER_RADIUS: usize = 1;
pub(crate) const FACE_MILL: usize = 3;

/// Place of a form in [`gullet::study::FORMS`].
pub(crate) fn place_of(form: CutterForm) -> usize {
    match form {
        CutterForm::Square => 0,
        CutterForm::CornerRadius(_) => CORNER_RADIUS,
        CutterForm::BallNose => 2,
        CutterForm::FaceMill(_) => FACE_MILL,
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use gullet::study::FORMS;

    #[test]
    fn the_places_of_forms_are_those_of_the_list() {
        for (form, name) in [
            (CutterForm::Square, "square"),
            (CutterForm::CornerRadius(si(1.0)), "corner-radius"),
            (CutterForm::BallNose, "ball-nose"),
            (CutterForm::FaceMill(si(1.0)), "face-mill"),
        ] {
            assert_eq!(FORMS[place_of(form)], name);
        }
    }

    #[test]
    fn the_defaults_are_those_of_job_files() {
        let defaults = Defaults::all().unwrap();
        assert_eq!(defaults.helix[1], 0.0);
        assert!((defaults.helix[0].to_degrees() - 30.0).abs() < 1e-9);
        assert_eq!(defaults.hold.jaw_friction.value, 0.15);
        assert_eq!(defaults.practice, Practice::builtin("training").unwrap());
    }
}
