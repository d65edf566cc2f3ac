// Written by gullet-c-gen: do not edit.
use crate::names::{ChoiceEntry, InputEntry, ResultEntry};
use gullet::study::{Choice, Input};

/// Back engagement a_p, along the axis. In m.
pub const GULLET_INPUT_AXIAL_DEPTH: i32 = 1;
/// Working engagement a_e, across the axis; of a slot the cutter's diameter, of a face the width of the work under the cutter. In m.
pub const GULLET_INPUT_RADIAL_DEPTH: i32 = 2;
/// Face milling: distance from the cutter's axis to the middle of the work. In m.
pub const GULLET_INPUT_OFFSET: i32 = 3;
/// Length of the cut along the feed. In m.
pub const GULLET_INPUT_LENGTH: i32 = 4;
/// Mean roughness R_a wanted. In m. -INFINITY stands for none.
pub const GULLET_INPUT_MEAN_ROUGHNESS: i32 = 5;
/// Spindle speed to use instead of the table's. In rev/s. -INFINITY stands for none.
pub const GULLET_INPUT_SPINDLE_SPEED: i32 = 6;
/// Feed per tooth to use instead of the table's. In m. -INFINITY stands for none.
pub const GULLET_INPUT_FEED_PER_TOOTH: i32 = 7;
/// Cutting diameter D. In m.
pub const GULLET_INPUT_CUTTER_DIAMETER: i32 = 8;
/// Number of teeth z.
pub const GULLET_INPUT_CUTTER_TEETH: i32 = 9;
/// Length of the flutes, along the axis from the tip. In m.
pub const GULLET_INPUT_CUTTER_FLUTE_LENGTH: i32 = 10;
/// Diameter of the shank in the holder. In m.
pub const GULLET_INPUT_CUTTER_SHANK_DIAMETER: i32 = 11;
/// Distance from the tip to the holder. In m.
pub const GULLET_INPUT_CUTTER_STICK_OUT: i32 = 12;
/// Helix angle of the flutes. In rad.
pub const GULLET_INPUT_CUTTER_HELIX_ANGLE: i32 = 13;
/// Highest speed marked on the cutter or its holder. In rev/s. -INFINITY stands for none.
pub const GULLET_INPUT_CUTTER_MAXIMUM_SPEED: i32 = 14;
/// Corner radius of a cutter with one. In m.
pub const GULLET_INPUT_CUTTER_CORNER_RADIUS: i32 = 15;
/// Cutting-edge angle kappa_r of a face mill. In rad.
pub const GULLET_INPUT_CUTTER_EDGE_ANGLE: i32 = 16;
/// Clamping force of the hold. In N.
pub const GULLET_INPUT_CLAMPING_FORCE: i32 = 17;
/// Static friction between jaw and work.
pub const GULLET_INPUT_JAW_FRICTION: i32 = 18;
/// Height of the work that the jaws cover. In m.
pub const GULLET_INPUT_GRIP_DEPTH: i32 = 19;
/// Height of the part along the spindle axis. In m.
pub const GULLET_INPUT_PART_HEIGHT: i32 = 20;
/// Work material: place in the study's list.
pub const GULLET_CHOICE_MATERIAL: i32 = 1;
/// Machine: place in the study's list.
pub const GULLET_CHOICE_MACHINE: i32 = 2;
/// Practice: place in the study's list.
pub const GULLET_CHOICE_PRACTICE: i32 = 3;
/// Operation: GULLET_SIDE_MILLING, GULLET_SLOTTING or GULLET_FACE_MILLING.
pub const GULLET_CHOICE_OPERATION: i32 = 4;
/// GULLET_ROUGHING or GULLET_FINISHING.
pub const GULLET_CHOICE_PASS: i32 = 5;
/// GULLET_CONVENTIONAL or GULLET_CLIMB.
pub const GULLET_CHOICE_DIRECTION: i32 = 6;
/// What the edges are made of: one of GULLET_CUTTER_MATERIAL_...
pub const GULLET_CHOICE_CUTTER_MATERIAL: i32 = 7;
/// Shape of the cutting end: one of GULLET_CUTTER_FORM_...
pub const GULLET_CHOICE_CUTTER_FORM: i32 = 8;
/// Whether the feed runs across the jaws: 0 or 1.
pub const GULLET_CHOICE_FEED_ACROSS_JAWS: i32 = 9;
/// Spindle speed that the wanted cutting speed would need. In rev/s.
pub const GULLET_RESULT_WANTED_SPEED: i32 = 1;
/// Spindle speed the machine really has. In rev/s.
pub const GULLET_RESULT_SPINDLE_SPEED: i32 = 2;
/// Cutting speed at that spindle speed. In m/s.
pub const GULLET_RESULT_CUTTING_SPEED: i32 = 3;
/// Largest chip wanted. In m.
pub const GULLET_RESULT_CHIP_LOAD: i32 = 4;
/// Feed per tooth, after thinning and limits. In m.
pub const GULLET_RESULT_FEED_PER_TOOTH: i32 = 5;
/// Feed per revolution. In m.
pub const GULLET_RESULT_FEED_PER_REV: i32 = 6;
/// Table feed. In m/s.
pub const GULLET_RESULT_TABLE_FEED: i32 = 7;
/// Pace of the handwheel for that table feed; none where the table is not cranked by hand. In rev/s. Good rows may lack it.
pub const GULLET_RESULT_HANDWHEEL_RATE: i32 = 8;
/// Time to travel one inch, or 10 mm in a metric shop, at that table feed. In s.
pub const GULLET_RESULT_TIME_PER_INCH: i32 = 9;
/// Time to travel 10 mm at that table feed. In s.
pub const GULLET_RESULT_TIME_PER_10_MM: i32 = 10;
/// Diameter that cuts at this depth. In m.
pub const GULLET_RESULT_EFFECTIVE_DIAMETER: i32 = 11;
/// Angle of tooth immersion at entry. In rad.
pub const GULLET_RESULT_ENTRY_ANGLE: i32 = 12;
/// Angle of tooth immersion at exit. In rad.
pub const GULLET_RESULT_EXIT_ANGLE: i32 = 13;
/// Largest undeformed chip thickness. In m.
pub const GULLET_RESULT_MAX_CHIP_THICKNESS: i32 = 14;
/// Mean undeformed chip thickness. In m.
pub const GULLET_RESULT_MEAN_CHIP_THICKNESS: i32 = 15;
/// Removal rate while the cut is at full width. In m3/s.
pub const GULLET_RESULT_REMOVAL_RATE: i32 = 16;
/// Specific cutting force at the mean chip, default pair, sharp edge. In Pa.
pub const GULLET_RESULT_SPECIFIC_CUTTING_FORCE: i32 = 17;
/// Power at the cutter, default pair, sharp edge. In W.
pub const GULLET_RESULT_CUTTING_POWER: i32 = 18;
/// Power of the motor for that. In W.
pub const GULLET_RESULT_MOTOR_POWER: i32 = 19;
/// Mean torque on the spindle, default pair, sharp edge. In N.m.
pub const GULLET_RESULT_TORQUE: i32 = 20;
/// Mean tangential force, default pair, sharp edge. In N.
pub const GULLET_RESULT_MEAN_TANGENTIAL_FORCE: i32 = 21;
/// Power at the cutter by the unit-power method, where a unit power is known. In W. Good rows may lack it.
pub const GULLET_RESULT_UNIT_POWER_CUTTING_POWER: i32 = 22;
/// Power at the cutter that limits are checked with: the highest pair, worn edge. In W.
pub const GULLET_RESULT_LIMIT_POWER: i32 = 23;
/// Torque that limits are checked with: the highest pair, worn edge. In N.m.
pub const GULLET_RESULT_LIMIT_TORQUE: i32 = 24;
/// Peak tangential force of the teeth in cut: the highest pair, worn edge. In N.
pub const GULLET_RESULT_PEAK_TANGENTIAL_FORCE: i32 = 25;
/// Peak force across the cutter's axis: the highest pair, worn edge. In N.
pub const GULLET_RESULT_PEAK_FORCE: i32 = 26;
/// Peak force along the axis: pulls the work up and the cutter out. In N.
pub const GULLET_RESULT_AXIAL_FORCE: i32 = 27;
/// Deflection of the cutter's tip under the peak force. In m.
pub const GULLET_RESULT_DEFLECTION: i32 = 28;
/// Clamping force needed along the jaws and against lift, with the safety factor. In N.
pub const GULLET_RESULT_CLAMPING_NEEDED: i32 = 29;
/// Clamping force the hold gives. In N.
pub const GULLET_RESULT_CLAMPING_FORCE: i32 = 30;
/// Power that is available at the cutter at this speed, within the practice's share. In W.
pub const GULLET_RESULT_AVAILABLE_POWER: i32 = 31;
/// Torque that is available at this speed, within the practice's share. In N.m.
pub const GULLET_RESULT_AVAILABLE_TORQUE: i32 = 32;
/// Theoretical mean roughness of the surface the pass leaves; none where no model applies. In m. Good rows may lack it.
pub const GULLET_RESULT_MEAN_ROUGHNESS: i32 = 33;
/// Travel of the pass with approach, overtravel and clearance. In m.
pub const GULLET_RESULT_TRAVEL: i32 = 34;
/// Time of the pass in the cut, without return and handling. In s.
pub const GULLET_RESULT_TIME: i32 = 35;
/// Cutting speed at the low end of the tables. In m/s.
pub const GULLET_RESULT_SPEED_LOW: i32 = 36;
/// Cutting speed that the tables start with. In m/s.
pub const GULLET_RESULT_SPEED_START: i32 = 37;
/// Cutting speed at the high end of the tables. In m/s.
pub const GULLET_RESULT_SPEED_HIGH: i32 = 38;
/// Mean tangential force with the lowest pair of the material. In N.
pub const GULLET_RESULT_FORCE_LOW: i32 = 39;
/// Mean tangential force with the highest pair of the material. In N.
pub const GULLET_RESULT_FORCE_HIGH: i32 = 40;
/// Power at the cutter with the lowest pair of the material. In W.
pub const GULLET_RESULT_POWER_LOW: i32 = 41;
/// Power at the cutter with the highest pair of the material. In W.
pub const GULLET_RESULT_POWER_HIGH: i32 = 42;
/// Time of the pass with speed and feed at the high ends of the tables. In s.
pub const GULLET_RESULT_TIME_LOW: i32 = 43;
/// Time of the pass with speed and feed at the tables' starting values. In s.
pub const GULLET_RESULT_TIME_START: i32 = 44;
/// Time of the pass with speed and feed at the low ends of the tables. In s.
pub const GULLET_RESULT_TIME_HIGH: i32 = 45;
/// Share of its bound that the binding limit uses.
pub const GULLET_RESULT_BINDING_SHARE: i32 = 46;
/// What edges are made of: HSS.
#[allow(dead_code)]
pub const GULLET_CUTTER_MATERIAL_HSS: u32 = 0;
/// What edges are made of: HSS-Co.
#[allow(dead_code)]
pub const GULLET_CUTTER_MATERIAL_HSS_CO: u32 = 1;
/// What edges are made of: cast cobalt alloy.
#[allow(dead_code)]
pub const GULLET_CUTTER_MATERIAL_CAST_COBALT_ALLOY: u32 = 2;
/// What edges are made of: uncoated carbide.
#[allow(dead_code)]
pub const GULLET_CUTTER_MATERIAL_UNCOATED_CARBIDE: u32 = 3;
/// What edges are made of: coated carbide.
#[allow(dead_code)]
pub const GULLET_CUTTER_MATERIAL_COATED_CARBIDE: u32 = 4;
/// What edges are made of: cermet.
#[allow(dead_code)]
pub const GULLET_CUTTER_MATERIAL_CERMET: u32 = 5;
/// What edges are made of: ceramic.
#[allow(dead_code)]
pub const GULLET_CUTTER_MATERIAL_CERAMIC: u32 = 6;
/// What edges are made of: CBN.
#[allow(dead_code)]
pub const GULLET_CUTTER_MATERIAL_CBN: u32 = 7;
/// What edges are made of: PCD.
#[allow(dead_code)]
pub const GULLET_CUTTER_MATERIAL_PCD: u32 = 8;
/// Shape of the cutting end: square.
#[allow(dead_code)]
pub const GULLET_CUTTER_FORM_SQUARE: u32 = 0;
/// Shape of the cutting end: corner-radius.
#[allow(dead_code)]
pub const GULLET_CUTTER_FORM_CORNER_RADIUS: u32 = 1;
/// Shape of the cutting end: ball-nose.
#[allow(dead_code)]
pub const GULLET_CUTTER_FORM_BALL_NOSE: u32 = 2;
/// Shape of the cutting end: face-mill.
#[allow(dead_code)]
pub const GULLET_CUTTER_FORM_FACE_MILL: u32 = 3;

pub(crate) const INPUTS: &[InputEntry] = &[
    InputEntry { number: GULLET_INPUT_AXIAL_DEPTH, input: Input::AxialDepth, name: c"axial_depth", unit: c"m" },
    InputEntry { number: GULLET_INPUT_RADIAL_DEPTH, input: Input::RadialDepth, name: c"radial_depth", unit: c"m" },
    InputEntry { number: GULLET_INPUT_OFFSET, input: Input::Offset, name: c"offset", unit: c"m" },
    InputEntry { number: GULLET_INPUT_LENGTH, input: Input::CutLength, name: c"length", unit: c"m" },
    InputEntry { number: GULLET_INPUT_MEAN_ROUGHNESS, input: Input::MeanRoughness, name: c"mean_roughness", unit: c"m" },
    InputEntry { number: GULLET_INPUT_SPINDLE_SPEED, input: Input::SpindleSpeed, name: c"spindle_speed", unit: c"rev/s" },
    InputEntry { number: GULLET_INPUT_FEED_PER_TOOTH, input: Input::FeedPerTooth, name: c"feed_per_tooth", unit: c"m" },
    InputEntry { number: GULLET_INPUT_CUTTER_DIAMETER, input: Input::CutterDiameter, name: c"cutter_diameter", unit: c"m" },
    InputEntry { number: GULLET_INPUT_CUTTER_TEETH, input: Input::CutterTeeth, name: c"cutter_teeth", unit: c"" },
    InputEntry { number: GULLET_INPUT_CUTTER_FLUTE_LENGTH, input: Input::CutterFluteLength, name: c"cutter_flute_length", unit: c"m" },
    InputEntry { number: GULLET_INPUT_CUTTER_SHANK_DIAMETER, input: Input::CutterShankDiameter, name: c"cutter_shank_diameter", unit: c"m" },
    InputEntry { number: GULLET_INPUT_CUTTER_STICK_OUT, input: Input::CutterStickOut, name: c"cutter_stick_out", unit: c"m" },
    InputEntry { number: GULLET_INPUT_CUTTER_HELIX_ANGLE, input: Input::CutterHelixAngle, name: c"cutter_helix_angle", unit: c"rad" },
    InputEntry { number: GULLET_INPUT_CUTTER_MAXIMUM_SPEED, input: Input::CutterMaximumSpeed, name: c"cutter_maximum_speed", unit: c"rev/s" },
    InputEntry { number: GULLET_INPUT_CUTTER_CORNER_RADIUS, input: Input::CutterCornerRadius, name: c"cutter_corner_radius", unit: c"m" },
    InputEntry { number: GULLET_INPUT_CUTTER_EDGE_ANGLE, input: Input::CutterEdgeAngle, name: c"cutter_edge_angle", unit: c"rad" },
    InputEntry { number: GULLET_INPUT_CLAMPING_FORCE, input: Input::ClampingForce, name: c"clamping_force", unit: c"N" },
    InputEntry { number: GULLET_INPUT_JAW_FRICTION, input: Input::JawFriction, name: c"jaw_friction", unit: c"" },
    InputEntry { number: GULLET_INPUT_GRIP_DEPTH, input: Input::GripDepth, name: c"grip_depth", unit: c"m" },
    InputEntry { number: GULLET_INPUT_PART_HEIGHT, input: Input::PartHeight, name: c"part_height", unit: c"m" },
];

pub(crate) const CHOICES: &[ChoiceEntry] = &[
    ChoiceEntry { number: GULLET_CHOICE_MATERIAL, choice: Choice::Material, name: c"material", words: &[] },
    ChoiceEntry { number: GULLET_CHOICE_MACHINE, choice: Choice::Machine, name: c"machine", words: &[] },
    ChoiceEntry { number: GULLET_CHOICE_PRACTICE, choice: Choice::Practice, name: c"practice", words: &[] },
    ChoiceEntry { number: GULLET_CHOICE_OPERATION, choice: Choice::Operation, name: c"operation", words: &[c"side-milling", c"slotting", c"face-milling"] },
    ChoiceEntry { number: GULLET_CHOICE_PASS, choice: Choice::Pass, name: c"pass", words: &[c"roughing", c"finishing"] },
    ChoiceEntry { number: GULLET_CHOICE_DIRECTION, choice: Choice::Direction, name: c"direction", words: &[c"conventional", c"climb"] },
    ChoiceEntry { number: GULLET_CHOICE_CUTTER_MATERIAL, choice: Choice::CutterMaterial, name: c"cutter_material", words: &[c"HSS", c"HSS-Co", c"cast cobalt alloy", c"uncoated carbide", c"coated carbide", c"cermet", c"ceramic", c"CBN", c"PCD"] },
    ChoiceEntry { number: GULLET_CHOICE_CUTTER_FORM, choice: Choice::CutterForm, name: c"cutter_form", words: &[c"square", c"corner-radius", c"ball-nose", c"face-mill"] },
    ChoiceEntry { number: GULLET_CHOICE_FEED_ACROSS_JAWS, choice: Choice::FeedAcrossJaws, name: c"feed_across_jaws", words: &[c"false", c"true"] },
];

/// In the order of the core's list.
pub(crate) const RESULTS: &[ResultEntry] = &[
    ResultEntry { number: GULLET_RESULT_WANTED_SPEED, name: c"wanted_speed", unit: c"rev/s" },
    ResultEntry { number: GULLET_RESULT_SPINDLE_SPEED, name: c"spindle_speed", unit: c"rev/s" },
    ResultEntry { number: GULLET_RESULT_CUTTING_SPEED, name: c"cutting_speed", unit: c"m/s" },
    ResultEntry { number: GULLET_RESULT_CHIP_LOAD, name: c"chip_load", unit: c"m" },
    ResultEntry { number: GULLET_RESULT_FEED_PER_TOOTH, name: c"feed_per_tooth", unit: c"m" },
    ResultEntry { number: GULLET_RESULT_FEED_PER_REV, name: c"feed_per_rev", unit: c"m" },
    ResultEntry { number: GULLET_RESULT_TABLE_FEED, name: c"table_feed", unit: c"m/s" },
    ResultEntry { number: GULLET_RESULT_HANDWHEEL_RATE, name: c"handwheel_rate", unit: c"rev/s" },
    ResultEntry { number: GULLET_RESULT_TIME_PER_INCH, name: c"time_per_inch", unit: c"s" },
    ResultEntry { number: GULLET_RESULT_TIME_PER_10_MM, name: c"time_per_10_mm", unit: c"s" },
    ResultEntry { number: GULLET_RESULT_EFFECTIVE_DIAMETER, name: c"effective_diameter", unit: c"m" },
    ResultEntry { number: GULLET_RESULT_ENTRY_ANGLE, name: c"entry_angle", unit: c"rad" },
    ResultEntry { number: GULLET_RESULT_EXIT_ANGLE, name: c"exit_angle", unit: c"rad" },
    ResultEntry { number: GULLET_RESULT_MAX_CHIP_THICKNESS, name: c"max_chip_thickness", unit: c"m" },
    ResultEntry { number: GULLET_RESULT_MEAN_CHIP_THICKNESS, name: c"mean_chip_thickness", unit: c"m" },
    ResultEntry { number: GULLET_RESULT_REMOVAL_RATE, name: c"removal_rate", unit: c"m3/s" },
    ResultEntry { number: GULLET_RESULT_SPECIFIC_CUTTING_FORCE, name: c"specific_cutting_force", unit: c"Pa" },
    ResultEntry { number: GULLET_RESULT_CUTTING_POWER, name: c"cutting_power", unit: c"W" },
    ResultEntry { number: GULLET_RESULT_MOTOR_POWER, name: c"motor_power", unit: c"W" },
    ResultEntry { number: GULLET_RESULT_TORQUE, name: c"torque", unit: c"N.m" },
    ResultEntry { number: GULLET_RESULT_MEAN_TANGENTIAL_FORCE, name: c"mean_tangential_force", unit: c"N" },
    ResultEntry { number: GULLET_RESULT_UNIT_POWER_CUTTING_POWER, name: c"unit_power_cutting_power", unit: c"W" },
    ResultEntry { number: GULLET_RESULT_LIMIT_POWER, name: c"limit_power", unit: c"W" },
    ResultEntry { number: GULLET_RESULT_LIMIT_TORQUE, name: c"limit_torque", unit: c"N.m" },
    ResultEntry { number: GULLET_RESULT_PEAK_TANGENTIAL_FORCE, name: c"peak_tangential_force", unit: c"N" },
    ResultEntry { number: GULLET_RESULT_PEAK_FORCE, name: c"peak_force", unit: c"N" },
    ResultEntry { number: GULLET_RESULT_AXIAL_FORCE, name: c"axial_force", unit: c"N" },
    ResultEntry { number: GULLET_RESULT_DEFLECTION, name: c"deflection", unit: c"m" },
    ResultEntry { number: GULLET_RESULT_CLAMPING_NEEDED, name: c"clamping_needed", unit: c"N" },
    ResultEntry { number: GULLET_RESULT_CLAMPING_FORCE, name: c"clamping_force", unit: c"N" },
    ResultEntry { number: GULLET_RESULT_AVAILABLE_POWER, name: c"available_power", unit: c"W" },
    ResultEntry { number: GULLET_RESULT_AVAILABLE_TORQUE, name: c"available_torque", unit: c"N.m" },
    ResultEntry { number: GULLET_RESULT_MEAN_ROUGHNESS, name: c"mean_roughness", unit: c"m" },
    ResultEntry { number: GULLET_RESULT_TRAVEL, name: c"travel", unit: c"m" },
    ResultEntry { number: GULLET_RESULT_TIME, name: c"time", unit: c"s" },
    ResultEntry { number: GULLET_RESULT_SPEED_LOW, name: c"speed_low", unit: c"m/s" },
    ResultEntry { number: GULLET_RESULT_SPEED_START, name: c"speed_start", unit: c"m/s" },
    ResultEntry { number: GULLET_RESULT_SPEED_HIGH, name: c"speed_high", unit: c"m/s" },
    ResultEntry { number: GULLET_RESULT_FORCE_LOW, name: c"force_low", unit: c"N" },
    ResultEntry { number: GULLET_RESULT_FORCE_HIGH, name: c"force_high", unit: c"N" },
    ResultEntry { number: GULLET_RESULT_POWER_LOW, name: c"power_low", unit: c"W" },
    ResultEntry { number: GULLET_RESULT_POWER_HIGH, name: c"power_high", unit: c"W" },
    ResultEntry { number: GULLET_RESULT_TIME_LOW, name: c"time_low", unit: c"s" },
    ResultEntry { number: GULLET_RESULT_TIME_START, name: c"time_start", unit: c"s" },
    ResultEntry { number: GULLET_RESULT_TIME_HIGH, name: c"time_high", unit: c"s" },
    ResultEntry { number: GULLET_RESULT_BINDING_SHARE, name: c"binding_share", unit: c"" },
];
