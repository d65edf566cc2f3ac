//! What a study of milling cuts is computed from: numbers and choices, each a constant or a column.

use crate::formula::Column;
use crate::quantity::Kind;

/// Stands in a column of an optional input for "none": the tables or the default decide.
pub const NONE: f64 = f64::NEG_INFINITY;

macro_rules! inputs {
    ($($name:ident, $text:literal, $kind:ident, $optional:literal, $meaning:literal;)*) => {
        /// The numbers of a cut that a study takes as columns.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        #[non_exhaustive]
        pub enum Input { $(#[doc = $meaning] $name,)* }

        impl Input {
            /// Every input.
            pub const ALL: &'static [Input] = &[$(Input::$name),*];

            /// Name of its column, without the unit.
            pub fn name(self) -> &'static str {
                match self { $(Input::$name => $text,)* }
            }

            /// What it measures.
            pub fn kind(self) -> Kind {
                match self { $(Input::$name => Kind::$kind,)* }
            }

            /// Whether a row may do without it: [`NONE`].
            pub fn optional(self) -> bool {
                match self { $(Input::$name => $optional,)* }
            }

            /// What it is, in words.
            pub fn meaning(self) -> &'static str {
                match self { $(Input::$name => $meaning,)* }
            }
        }
    };
}

inputs! {
    AxialDepth, "axial_depth", Length, false, "Back engagement a_p, along the axis.";
    RadialDepth, "radial_depth", Length, false, "Working engagement a_e, across the axis; of a slot the cutter's diameter, of a face the width of the work under the cutter.";
    Offset, "offset", Length, false, "Face milling: distance from the cutter's axis to the middle of the work.";
    CutLength, "length", Length, false, "Length of the cut along the feed.";
    MeanRoughness, "mean_roughness", Length, true, "Mean roughness R_a wanted.";
    SpindleSpeed, "spindle_speed", RotationalSpeed, true, "Spindle speed to use instead of the table's.";
    FeedPerTooth, "feed_per_tooth", Length, true, "Feed per tooth to use instead of the table's.";
    CutterDiameter, "cutter_diameter", Length, false, "Cutting diameter D.";
    CutterTeeth, "cutter_teeth", Count, false, "Number of teeth z.";
    CutterFluteLength, "cutter_flute_length", Length, false, "Length of the flutes, along the axis from the tip.";
    CutterShankDiameter, "cutter_shank_diameter", Length, false, "Diameter of the shank in the holder.";
    CutterStickOut, "cutter_stick_out", Length, false, "Distance from the tip to the holder.";
    CutterHelixAngle, "cutter_helix_angle", Angle, false, "Helix angle of the flutes.";
    CutterMaximumSpeed, "cutter_maximum_speed", RotationalSpeed, true, "Highest speed marked on the cutter or its holder.";
    CutterCornerRadius, "cutter_corner_radius", Length, false, "Corner radius of a cutter with one.";
    CutterEdgeAngle, "cutter_edge_angle", Angle, false, "Cutting-edge angle kappa_r of a face mill.";
    ClampingForce, "clamping_force", Force, false, "Clamping force of the hold.";
    JawFriction, "jaw_friction", Ratio, false, "Static friction between jaw and work.";
    GripDepth, "grip_depth", Length, false, "Height of the work that the jaws cover.";
    PartHeight, "part_height", Length, false, "Height of the part along the spindle axis.";
}

macro_rules! choices {
    ($($name:ident, $text:literal, $meaning:literal;)*) => {
        /// What a row chooses from a list, by its place in the list.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        #[non_exhaustive]
        pub enum Choice { $(#[doc = $meaning] $name,)* }

        impl Choice {
            /// Every choice.
            pub const ALL: &'static [Choice] = &[$(Choice::$name),*];

            /// Name of its column.
            pub fn name(self) -> &'static str {
                match self { $(Choice::$name => $text,)* }
            }

            /// What it is, in words.
            pub fn meaning(self) -> &'static str {
                match self { $(Choice::$name => $meaning,)* }
            }
        }
    };
}

choices! {
    Material, "material", "Work material: place in the study's list.";
    Machine, "machine", "Machine: place in the study's list.";
    Practice, "practice", "Practice: place in the study's list.";
    Operation, "operation", "Operation: place in `Operation::ALL`.";
    Pass, "pass", "Roughing or finishing: place in `PassKind::ALL`.";
    Direction, "direction", "Conventional or climb: place in `Direction::ALL`.";
    CutterMaterial, "cutter_material", "What the edges are made of: place in `ToolMaterial::ALL`.";
    CutterForm, "cutter_form", "Shape of the cutting end: place in [`FORMS`].";
    FeedAcrossJaws, "feed_across_jaws", "Whether the feed runs across the jaws: 0 or 1.";
}

/// The shapes of the cutting end, as job files name them.
pub const FORMS: &[&str] = &["square", "corner-radius", "ball-nose", "face-mill"];

/// A choice over all rows.
#[derive(Debug, Clone, Copy)]
pub enum Codes<'a> {
    /// The same place in every row.
    Constant(u32),
    /// One place a row.
    Values(&'a [u32]),
}

/// Rows of cuts: what is not among the columns is as in the study's base.
#[derive(Debug, Clone, Default)]
pub struct Rows<'a> {
    /// How many rows there are.
    pub count: usize,
    /// The numbers, in SI units.
    pub numbers: Vec<(Input, Column<'a>)>,
    /// The choices.
    pub choices: Vec<(Choice, Codes<'a>)>,
    /// Rows in which something that is needed is missing; they get the code `Missing`.
    pub missing: Option<&'a [bool]>,
}
