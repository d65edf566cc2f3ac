//! The keys of a job file: the one description that reading, schema and reference come from.

use super::super::document::{Group, Keys, Presence, Rule, Section, form, keys};
use super::Strategy;
use super::words::{Along, ByHand, Counts, End, MachineName, PracticeName};
use crate::model::{Direction, SpeedChoice};
use crate::operation::Operation;
use crate::quantity::UnitSystem;
use crate::table::{Iso513, ToolMaterial};
use Presence::{Assumed, Default, Optional, Required, RequiredUnless};
use form::{
    Acceleration, Angle, Choice, Count, Flag, Force, Length, List, Power, Pressure, Ratio,
    RotationalSpeed, Text, Time, Torque, Velocity,
};

/// The sections, the keys before every section first.
pub(super) const SECTIONS: &[fn() -> &'static Section] = &[
    HeadKeys::section,
    MaterialKeys::section,
    BlankKeys::section,
    CutterKeys::section,
    MachineKeys::section,
    HoldKeys::section,
    PracticeKeys::section,
    CutKeys::section,
];

const fn only(key: &'static str, other: &'static str, word: &'static str) -> Rule {
    Rule::With {
        key,
        other,
        word,
        needed: false,
        elsewhere: false,
    }
}

const fn needed_only(key: &'static str, other: &'static str, word: &'static str) -> Rule {
    Rule::With {
        key,
        other,
        word,
        needed: true,
        elsewhere: false,
    }
}

const fn way(needs: &'static [&'static str]) -> Group {
    Group { needs, may: &[] }
}

keys! {
    /// What the card is headed with and printed in.
    struct HeadKeys = "", required: false, rules: [];
    title: Text, Optional("operation and material"), "Bracket, long edge", "Title on the card.";
    units: Choice<UnitSystem>, Default("metric"), "inch", "Units the card prints in; every quantity may be given in either.";
    _schema as "$schema": Text, Optional("nothing"), "job.schema.json", "Address of this schema, for editors; not read.";
}

keys! {
    /// The work material: one of the tables by its id, or the shop's own with its cutting force.
    struct MaterialKeys = "material", required: true, rules: [
        Rule::OneOf {
            groups: &[
                way(&["id"]),
                Group { needs: &["name", "iso513", "kc11", "chip_exponent"], may: &["source", "like"] },
            ],
            unless: None,
        },
    ];
    id: Text, Optional("own data are given"), "6061", "Id or trade name of a material of the tables.";
    name: Text, Optional("the tables' name"), "cast plate, melt 17", "Name of the shop's own material.";
    iso513: Choice<Iso513>, Optional("the tables' group"), "N", "ISO 513 group: P steel and ferritic or martensitic stainless, M austenitic and duplex stainless, K cast iron, N non-ferrous, S superalloy and titanium, H hardened.";
    kc11: Pressure, Optional("the tables' value"), "800 N/mm2", "Specific cutting force k_c1.1 at a chip 1 mm thick and 1 mm wide.";
    chip_exponent: Ratio, Optional("the tables' value"), "0.25", "Exponent m_c with which the specific cutting force falls as the chip grows; 0 to below 1.";
    source: Text, Optional("named the shop's own, no source given"), "measured in the shop", "Where the cutting force comes from.";
    like: Text, Optional("speed and feed must be given in the cut"), "6061", "Material of the tables whose speeds and feeds are used for the shop's own.";
}

keys! {
    /// The blank as it is clamped.
    struct BlankKeys = "blank", required: true, rules: [];
    length: Length, Required, "3 in", "Size along the feed.";
    width: Length, Required, "2 in", "Size across the feed.";
    height: Length, Required, "1 in", "Size along the spindle axis.";
}

keys! {
    /// The cutter as it sits in the holder.
    struct CutterKeys = "cutter", required: true, rules: [
        needed_only("corner_radius", "form", "corner-radius"),
        needed_only("cutting_edge_angle", "form", "face-mill"),
        Rule::With { key: "shank_diameter", other: "form", word: "face-mill", needed: true, elsewhere: true },
    ];
    name: Text, Optional("diameter, teeth, material and form"), "rack 3, no. 12", "What the shop calls it.";
    form: Choice<End>, Required, "square", "Shape of the cutting end.";
    corner_radius: Length, Optional("none"), "0.030 in", "Corner radius.";
    cutting_edge_angle: Angle, Optional("90 deg"), "45 deg", "Tool cutting-edge angle kappa_r of a face mill: 90 deg less the lead angle.";
    material: Choice<ToolMaterial>, Required, "HSS", "What the edges are made of.";
    diameter: Length, Required, "1/2 in", "Cutting diameter.";
    teeth: Count, Required, "2", "Number of teeth.";
    flute_length: Length, Required, "1 in", "Length of the flutes from the tip; of a face mill the height of its edges.";
    shank_diameter: Length, Optional("the diameter, stated on the card"), "1/2 in", "Diameter of the shank in the holder; of a face mill that of its arbor.";
    stick_out: Length, Required, "1.5 in", "Distance from the tip to the holder.";
    helix_angle: Angle, Optional("30 deg, of a face mill 0 deg, stated on the card"), "30 deg", "Helix angle of the flutes.";
    rake_angle: Angle, Optional("not known"), "10 deg", "Rake angle, kept for the record.";
    centre_cutting: Flag, Optional("false"), "true", "Whether the cutter can be fed straight down.";
    maximum_speed: RotationalSpeed, Optional("not known"), "12000 rpm", "Highest speed marked on the cutter or its holder.";
}

keys! {
    /// The machine: a built-in one, changed where keys are given, or the shop's own.
    struct MachineKeys = "machine", required: true, rules: [
        Rule::OneOf {
            groups: &[way(&["speeds"]), way(&["lowest_speed", "highest_speed"])],
            unless: Some("base"),
        },
        Rule::OneOf {
            groups: &[way(&["feed"]), way(&["feeds"]), way(&["feeds_per_rev"]), way(&["lowest_feed", "highest_feed"])],
            unless: Some("base"),
        },
    ];
    base: Choice<MachineName>, Optional("every needed key is given"), "manual-knee-mill", "A built-in machine to start from; its data are invented.";
    name: Text, Optional("the base's name"), "knee mill 2", "What the shop calls it.";
    speeds: List<RotationalSpeed>, Optional("the base's"), "70 rpm, 115 rpm, 190 rpm", "Spindle speeds of a stepped drive, rising.";
    lowest_speed: RotationalSpeed, Optional("the base's"), "100 rpm", "Lowest spindle speed of a continuous drive.";
    highest_speed: RotationalSpeed, Optional("the base's"), "6000 rpm", "Highest spindle speed of a continuous drive.";
    motor_power: Power, RequiredUnless("base"), "1.5 hp", "Rated power of the spindle motor.";
    efficiency: Ratio, RequiredUnless("base"), "75 %", "Share of the motor's power that reaches the cutter.";
    base_speed: RotationalSpeed, Optional("the base's, or full power at every speed"), "1500 rpm", "Spindle speed below which the torque is constant instead of the power.";
    maximum_torque: Torque, Optional("the base's, or not known"), "40 N.m", "Torque at which the drive slips or trips.";
    feed: Choice<ByHand>, Optional("the base's"), "hand", "The table is cranked by hand.";
    feeds: List<Velocity>, Optional("the base's"), "1 in/min, 2 in/min, 4 in/min", "Table feeds of a feed box, rising.";
    feeds_per_rev: List<Length>, Optional("the base's"), "0.1 mm, 0.2 mm, 0.4 mm", "Feeds per revolution of a lathe's feed box, rising.";
    lowest_feed: Velocity, Optional("the base's"), "1 mm/min", "Lowest table feed of a continuous drive.";
    highest_feed: Velocity, Optional("the base's"), "5 m/min", "Highest table feed of a continuous drive.";
    travel_per_turn: Length, Optional("the base's; needed for a table cranked by hand"), "0.200 in", "Travel of the table for one turn of its handwheel.";
    graduation: Length, Optional("the base's, or none"), "0.001 in", "Travel of one graduation of the dial.";
    readout_resolution: Length, Optional("the base's, or no readout"), "0.0005 in", "Smallest step the position readout shows.";
    backlash: Length, RequiredUnless("base"), "0.006 in", "Lost motion between screw and nut; 0 mm where it is taken up.";
    rapid_speed: Velocity, Optional("the base's, or every move is cranked"), "15 m/min", "Rapid traverse.";
    acceleration: Acceleration, Optional("the base's, or not known"), "2 m/s2", "Acceleration of the rapid traverse.";
    origin: Text, Optional("the base's with the changed keys named, or the shop's own data"), "motor plate and manual", "Where the data come from.";
}

keys! {
    /// The vise and how the work sits in it.
    struct HoldKeys = "hold", required: true, rules: [
        Rule::OneOf {
            groups: &[
                way(&["clamping_force"]),
                way(&["handle_torque", "screw_lead", "screw_efficiency"]),
            ],
            unless: None,
        },
    ];
    name: Text, Default("vise"), "6 in vise", "What the shop calls it.";
    clamping_force: Force, Optional("from torque, lead and efficiency of the screw"), "10 kN", "Force the vise clamps with.";
    handle_torque: Torque, Optional("the clamping force is given"), "40 N.m", "Torque on the handle: force times length of the handle.";
    screw_lead: Length, Optional("the clamping force is given"), "5 mm", "Travel of the jaw for one turn of the screw.";
    screw_efficiency: Ratio, Optional("the clamping force is given"), "15 %", "Efficiency of the screw with its collar.";
    jaw_friction: Ratio, Assumed("0.15", "smooth steel jaws on machined metal, from memory"), "0.15", "Static friction between jaw and work.";
    jaw_height: Length, Optional("not known: no parallel is chosen"), "1.75 in", "Height of the jaws above the bed of the vise.";
    grip_depth: Length, Required, "3/4 in", "Height of the work that the jaws cover.";
    parallels: List<Length>, Optional("none"), "1/2 in, 3/4 in, 1 in", "Heights of the parallels at hand.";
    feed: Choice<Along>, Assumed("along-jaws", "the usual way to clamp"), "along-jaws", "Whether the cut runs along or across the jaws.";
}

keys! {
    /// What the shop allows itself: a built-in practice, changed where keys are given.
    struct PracticeKeys = "practice", required: false, rules: [];
    base: Choice<PracticeName>, Assumed("training", "the most cautious built-in practice"), "training", "The built-in practice to start from.";
    name: Text, Optional("the base's"), "second-year shop", "What the shop calls it.";
    speed_choice: Choice<SpeedChoice>, Optional("the base's"), "low", "Value of the speed table a cut starts from.";
    speed_factor: Ratio, Optional("the base's"), "0.8", "Factor on the table's cutting speed.";
    feed_factor: Ratio, Optional("the base's"), "0.8", "Factor on the table's feed per tooth.";
    thinning_cap: Ratio, Optional("the base's"), "2", "Largest factor by which radial chip thinning may raise the feed per tooth.";
    smallest_chip: Length, Optional("the base's"), "0.01 mm", "Thinnest chip, at its thickest, that still cuts instead of rubbing.";
    roughing_depth_p: Ratio, Optional("the base's"), "0.08", "Largest roughing depth of a pass over the diameter, steel.";
    roughing_depth_m: Ratio, Optional("the base's"), "0.06", "The same, stainless steel.";
    roughing_depth_k: Ratio, Optional("the base's"), "0.08", "The same, cast iron.";
    roughing_depth_n: Ratio, Optional("the base's"), "0.2", "The same, non-ferrous metal.";
    roughing_depth_s: Ratio, Optional("the base's"), "0.04", "The same, superalloy and titanium.";
    roughing_depth_h: Ratio, Optional("the base's"), "0.01", "The same, hardened material.";
    finish_allowance: Length, Optional("the base's"), "0.010 in", "Stock left for the finishing pass.";
    smallest_depth: Length, Optional("the base's"), "0.005 in", "Thinnest pass that still cuts instead of rubbing.";
    roughing_deflection: Length, Optional("the base's"), "0.05 mm", "Largest deflection of the tip in a roughing pass.";
    finishing_deflection: Length, Optional("the base's"), "0.02 mm", "Largest deflection of the tip in a finishing pass.";
    power_share: Ratio, Optional("the base's"), "0.8", "Largest share of power and torque that is used.";
    holding_safety: Ratio, Optional("the base's"), "2", "Safety factor of the clamping on the peak force.";
    wear_factor: Ratio, Optional("the base's"), "1.3", "Factor on forces for a worn edge.";
    radial_force_ratio: Ratio, Optional("the base's"), "0.3", "Radial over tangential force.";
    smallest_grip: Ratio, Optional("the base's"), "0.33", "Smallest grip of the jaws over the height of the part.";
    stick_out_ratio: Ratio, Optional("the base's"), "4", "Largest stick-out over the diameter.";
    handwheel_pace: RotationalSpeed, Optional("the base's"), "60 rpm", "Fastest pace of a handwheel in a cut.";
    handwheel_return_pace: RotationalSpeed, Optional("the base's"), "120 rpm", "Fastest pace of a handwheel on the way back.";
    clearance: Length, Optional("the base's"), "0.1 in", "Clearance before and behind the cut.";
    handling_per_pass: Time, Optional("the base's"), "60 s", "Time to set, measure and clear chips, a pass.";
    strip_width: Ratio, Optional("the base's"), "0.75", "Widest strip over the cutter's diameter, where a face is wider than the cutter.";
    jaw_clearance: Length, Optional("the base's"), "1/8 in", "Distance kept between cutter and jaws.";
    setup_time: Time, Optional("the base's"), "15 min", "Time to make machine and vise ready, once.";
    clamping_time: Time, Optional("the base's"), "3 min", "Time to clean, seat and clamp the work, a clamping.";
    measuring_time: Time, Optional("the base's"), "60 s", "Time to measure the work after a clamping.";
    deburring_time: Time, Optional("the base's"), "60 s", "Time to deburr the work after a clamping.";
    roughing_direction: Choice<Direction>, Optional("the base's"), "conventional", "Direction of a roughing pass.";
    finishing_direction: Choice<Direction>, Optional("the base's"), "climb", "Direction of a finishing pass.";
    climb_depth_with_backlash: Length, Optional("the base's"), "0.010 in", "Largest depth of a climb cut on a table with backlash.";
    origin: Text, Optional("the base's with the changed keys named"), "shop rules", "Where the numbers come from.";
}

keys! {
    /// The cut.
    struct CutKeys = "cut", required: true, rules: [
        Rule::OneOf { groups: &[way(&["remove"]), way(&["measured", "final"])], unless: None },
        needed_only("axial_depth", "operation", "side-milling"),
        only("width", "operation", "face-milling"),
        only("offset", "operation", "face-milling"),
    ];
    operation: Choice<Operation>, Required, "side-milling", "The operation.";
    remove: Length, Optional("from measured and final"), "0.120 in", "Depth to take off: across the axis in side milling, along it in slotting and face milling.";
    measured: Length, Optional("the depth to take off is given"), "2.120 in", "Size as measured before the cut.";
    target as "final": Length, Optional("the depth to take off is given"), "2.000 in", "Size wanted.";
    axial_depth: Length, Optional("not used"), "0.5 in", "Side milling: height of the wall the cutter covers.";
    width: Length, Optional("the blank's width"), "2 in", "Face milling: width of the work under the cutter.";
    offset: Length, Optional("0 mm"), "1/4 in", "Face milling: distance from the cutter's axis to the middle of the work, positive towards the side where teeth enter.";
    length: Length, Optional("the blank's length"), "3 in", "Length of the cut.";
    strategy: Choice<Strategy>, Default("even"), "even", "How the stock is split: into even passes, or the deepest first.";
    mean_roughness: Length, Optional("none asked for"), "1.6 um", "Mean roughness R_a wanted of the finishing pass.";
    readout_start: Length, Optional("0 mm"), "0 in", "What the readout shows when the cutter touches the stock.";
    readout_direction: Choice<Counts>, Default("up"), "up", "Which way the readout counts while stock is removed.";
    spindle_speed: RotationalSpeed, Optional("from the tables"), "1200 rpm", "Spindle speed to use instead of the tables'.";
    feed_per_tooth: Length, Optional("from the tables"), "0.003 in", "Feed per tooth to use instead of the tables'.";
}
