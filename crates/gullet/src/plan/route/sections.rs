//! The keys of a route file: those of a job file where they mean the same, and its own.

use super::face::Face;
use super::order::Ends;
use crate::plan::document::{Field, Keys, Presence, Section, SectionReader, Word, form, keys};
use crate::plan::job::{CutterKeys, HoldKeys, MachineKeys, MaterialKeys, PracticeKeys};
use crate::quantity::UnitSystem;
use Presence::{Assumed, Default, Optional, Required};
use form::{Choice, Length, MoneyRate, Text, Words};
use std::sync::LazyLock;

/// The sections, the keys before every section first.
pub(super) const SECTIONS: &[fn() -> &'static Section] = &[
    RouteKeys::section,
    MaterialKeys::section,
    SawnKeys::section,
    PartKeys::section,
    CutterKeys::section,
    EndCutterKeys::section,
    MachineKeys::section,
    ViseKeys::section,
    PracticeKeys::section,
    RateKeys::section,
    MeasuredKeys::section,
];

/// The built-in routes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct SquaredBlockRoute;

impl Word for SquaredBlockRoute {
    const WORDS: &'static [&'static str] = &["squared-block"];
    fn at(index: usize) -> Option<SquaredBlockRoute> {
        (index == 0).then_some(SquaredBlockRoute)
    }
}

impl Word for Face {
    const WORDS: &'static [&'static str] = &["left", "right", "front", "back", "top", "bottom"];
    fn at(index: usize) -> Option<Face> {
        Face::ALL.get(index).copied()
    }
}

impl Word for Ends {
    const WORDS: &'static [&'static str] = &["on-end", "overhanging"];
    fn at(index: usize) -> Option<Ends> {
        [Ends::OnEnd, Ends::Overhanging].get(index).copied()
    }
}

keys! {
    /// Which route, what its cards are headed with and printed in.
    struct RouteKeys = "", required: false, rules: [];
    _route as "route": Choice<SquaredBlockRoute>, Required, "squared-block", "The built-in route.";
    title: Text, Optional("the material"), "Guide block", "Title on the cards.";
    units: Choice<UnitSystem>, Default("metric"), "inch", "Units the cards print in; every quantity may be given in either.";
    _schema as "$schema": Text, Optional("nothing"), "route.schema.json", "Address of this schema, for editors; not read.";
}

keys! {
    /// The blank as sawn, as it lies on the drawing.
    struct SawnKeys = "blank", required: true, rules: [];
    length: Length, Required, "102 mm", "Size from left to right, the largest that can be measured.";
    width: Length, Required, "64 mm", "Size from front to back.";
    height: Length, Required, "34 mm", "Size from bottom to top.";
    sawn: Words<Face>, Optional("no face is sawn"), "left, right", "The faces that a saw has left.";
    saw_mark_depth: Length, Assumed("0.5 mm", "common practice, no source; only of sawn faces"), "0.5 mm", "Depth of the saw's marks.";
}

keys! {
    /// The finished block.
    struct PartKeys = "part", required: true, rules: [];
    length: Length, Required, "100 mm", "Size from left to right.";
    width: Length, Required, "60 mm", "Size from front to back.";
    height: Length, Required, "30 mm", "Size from bottom to top.";
    tolerance: Length, Required, "0.1 mm", "Deviation allowed from each size, both ways.";
    mean_roughness: Length, Optional("none asked for"), "3.2 um", "Mean roughness R_a wanted of every face.";
}

keys! {
    /// What the vise of a route tells besides that of a job.
    struct OwnViseKeys = "hold", required: true, rules: [];
    jaw_opening: Length, Optional("not known, not checked"), "150 mm", "How far the jaws open.";
    jaw_width: Length, Optional("not known, not checked"), "125 mm", "Length of the jaws.";
    round_bar: Length, Optional("none at hand: a soft strip"), "10 mm", "Diameter of the round bar that goes to the movable jaw while a face there is rough.";
    ends: Choice<Ends>, Optional("on end where the jaws reach high enough, else overhanging"), "on-end", "How the ends are cut: standing on end, or overhanging the vise by the side of an end mill.";
}

keys! {
    /// What time costs.
    struct RateKeys = "rates", required: false, rules: [];
    machine_rate: MoneyRate, Optional("no cost on the summary"), "60 money/h", "Machine and operator, money per time; tools and material are not in it.";
}

keys! {
    /// Sizes measured so far, each after its clamping; what is left is planned from them.
    struct MeasuredKeys = "measured", required: false, rules: [];
    left: Length, Optional("not measured"), "101 mm", "Length after the left end was cut.";
    right: Length, Optional("not measured"), "100 mm", "Length after the right end was cut.";
    front: Length, Optional("not measured"), "62 mm", "Width after the front was cut.";
    back: Length, Optional("not measured"), "60 mm", "Width after the back was cut.";
    top: Length, Optional("not measured"), "32 mm", "Height after the top was cut.";
    bottom: Length, Optional("not measured"), "30 mm", "Height after the bottom was cut.";
}

/// The end mill of the ends: the keys of the cutter, in a section of its own.
pub(super) struct EndCutterKeys(pub(super) CutterKeys);

impl Keys for EndCutterKeys {
    fn section() -> &'static Section {
        static SECTION: LazyLock<Section> = LazyLock::new(|| {
            let cutter = CutterKeys::section();
            Section {
                name: "end_cutter",
                meaning: "An end mill for ends that overhang the vise; the cutter where it is one.",
                required: false,
                fields: cutter.fields,
                rules: cutter.rules,
            }
        });
        &SECTION
    }

    fn read(section: &mut SectionReader<'_>) -> EndCutterKeys {
        EndCutterKeys(CutterKeys::read(section))
    }
}

/// The vise: the keys of a job's hold but for what the route finds itself, and its own.
pub(super) struct ViseKeys {
    pub(super) hold: HoldKeys,
    pub(super) own: OwnViseKeys,
}

impl Keys for ViseKeys {
    fn section() -> &'static Section {
        static FIELDS: LazyLock<Vec<Field>> = LazyLock::new(|| {
            let found = ["grip_depth", "feed"];
            let hold = HoldKeys::section().fields.iter();
            let own = OwnViseKeys::section().fields.iter();
            hold.filter(|field| !found.contains(&field.key))
                .chain(own)
                .map(|field| match field.key {
                    "jaw_height" => Field {
                        presence: Required,
                        ..*field
                    },
                    _ => *field,
                })
                .collect()
        });
        static SECTION: LazyLock<Section> = LazyLock::new(|| {
            let hold = HoldKeys::section();
            Section {
                name: hold.name,
                meaning: "The vise, its parallels and its round bar; grip and parallels are chosen by the route.",
                required: true,
                fields: FIELDS.as_slice(),
                rules: hold.rules,
            }
        });
        &SECTION
    }

    fn read(section: &mut SectionReader<'_>) -> ViseKeys {
        ViseKeys {
            hold: HoldKeys::read(section),
            own: OwnViseKeys::read(section),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_the_names_of_faces() {
        for (index, word) in Face::WORDS.iter().enumerate() {
            assert_eq!(Face::at(index).map(Face::name), Some(*word));
        }
        assert_eq!(Face::WORDS.len(), Face::ALL.len());
    }
}
