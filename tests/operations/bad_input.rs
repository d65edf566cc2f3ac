//! A catalogue of bad input: what is changed, the code and the parameter of the problem it must get.

use super::*;

type Case = (&'static str, fn(&mut Shop), Code, &'static str);

/// What is refused before any formula is applied, then limits that nothing lowered helps.
const CASES: &[Case] = &[
    (
        "zero diameter",
        |s| s.cutter.diameter = si(0.0),
        Code::OutOfRange,
        "cutter.diameter",
    ),
    (
        "diameter in inches taken for metres",
        |s| s.cutter.diameter = si(12.7),
        Code::OutOfRange,
        "cutter.diameter",
    ),
    (
        "unknown diameter",
        |s| s.cutter.diameter = si(f64::NAN),
        Code::NotFinite,
        "cutter.diameter",
    ),
    (
        "no teeth",
        |s| s.cutter.teeth = 0,
        Code::OutOfRange,
        "cutter.teeth",
    ),
    (
        "a thousand teeth",
        |s| s.cutter.teeth = 1000,
        Code::OutOfRange,
        "cutter.teeth",
    ),
    (
        "flutes in the holder",
        |s| s.cutter.stick_out = si(0.5 * INCH),
        Code::Inconsistent,
        "cutter.stick_out",
    ),
    (
        "no shank",
        |s| s.cutter.shank_diameter = si(0.0),
        Code::OutOfRange,
        "cutter.shank_diameter",
    ),
    (
        "endless stick-out",
        |s| s.cutter.stick_out = si(f64::INFINITY),
        Code::NotFinite,
        "cutter.stick_out",
    ),
    (
        "helix in degrees",
        |s| s.cutter.helix_angle = si(30.0),
        Code::OutOfRange,
        "cutter.helix_angle",
    ),
    (
        "left-hand helix",
        |s| s.cutter.helix_angle = si(-0.5),
        Code::OutOfRange,
        "cutter.helix_angle",
    ),
    (
        "rake in degrees",
        |s| s.cutter.rake_angle = Some(si(6.0)),
        Code::OutOfRange,
        "cutter.rake_angle",
    ),
    (
        "corner wider than the cutter",
        |s| s.cutter.form = CutterForm::CornerRadius(si(0.01)),
        Code::OutOfRange,
        "cutter.corner_radius",
    ),
    (
        "edge angle past square",
        |s| s.cutter.form = CutterForm::FaceMill(si(2.0)),
        Code::OutOfRange,
        "cutter.cutting_edge_angle",
    ),
    (
        "speed mark of zero",
        |s| s.cutter.maximum_speed = Some(si(0.0)),
        Code::OutOfRange,
        "cutter.maximum_speed",
    ),
    (
        "speeds out of order",
        |s| s.machine.drive = Drive::Stepped(vec![si(20.0), si(10.0)]),
        Code::OutOfRange,
        "machine.speeds",
    ),
    (
        "no speeds",
        |s| s.machine.drive = Drive::Stepped(vec![]),
        Code::Missing,
        "machine.speeds",
    ),
    (
        "no power",
        |s| s.machine.motor_power = si(0.0),
        Code::OutOfRange,
        "machine.motor_power",
    ),
    (
        "efficiency in per cent",
        |s| s.machine.efficiency = si(80.0),
        Code::OutOfRange,
        "machine.efficiency",
    ),
    (
        "a lathe mills",
        |s| s.machine.feed = Feed::Geared(vec![si(1e-4), si(2e-4)]),
        Code::Inconsistent,
        "machine.feed",
    ),
    (
        "geared feeds that fall",
        |s| s.machine.feed = Feed::Geared(vec![si(2e-4), si(1e-4)]),
        Code::OutOfRange,
        "machine.feeds_per_rev",
    ),
    (
        "hand feed without a handwheel",
        |s| s.machine.travel_per_turn = None,
        Code::Missing,
        "machine.travel_per_turn",
    ),
    (
        "negative backlash",
        |s| s.machine.backlash = si(-1e-4),
        Code::OutOfRange,
        "machine.backlash",
    ),
    (
        "base speed of zero",
        |s| s.machine.base_speed = Some(si(0.0)),
        Code::OutOfRange,
        "machine.base_speed",
    ),
    (
        "feeds the wrong way round",
        |s| {
            s.machine.feed = Feed::Continuous {
                lowest: si(1.0),
                highest: si(0.1),
            }
        },
        Code::OutOfRange,
        "machine.highest_feed",
    ),
    (
        "readout of zero",
        |s| {
            s.machine.readout = Some(Readout {
                resolution: si(0.0),
            })
        },
        Code::OutOfRange,
        "machine.readout_resolution",
    ),
    (
        "no clamping",
        |s| s.hold.clamping = Clamping::Force(si(0.0)),
        Code::OutOfRange,
        "hold.clamping_force",
    ),
    (
        "screw efficiency of 15",
        |s| {
            s.hold.clamping = Clamping::Screw {
                torque: si(40.0),
                lead: si(5e-3),
                efficiency: si(15.0),
            }
        },
        Code::OutOfRange,
        "hold.screw_efficiency",
    ),
    (
        "no friction",
        |s| s.hold.jaw_friction = si(0.0),
        Code::OutOfRange,
        "hold.jaw_friction",
    ),
    (
        "no grip",
        |s| s.hold.grip_depth = si(0.0),
        Code::OutOfRange,
        "hold.grip_depth",
    ),
    (
        "a factor of zero",
        |s| s.practice.speed_factor = si(0.0),
        Code::OutOfRange,
        "practice.speed_factor",
    ),
    (
        "safety below one",
        |s| s.practice.holding_safety = si(0.5),
        Code::OutOfRange,
        "practice.holding_safety",
    ),
    (
        "thinning cap below one",
        |s| s.practice.thinning_cap = si(0.9),
        Code::OutOfRange,
        "practice.thinning_cap",
    ),
    (
        "still hand",
        |s| s.practice.handwheel_pace = si(0.0),
        Code::OutOfRange,
        "practice.handwheel_pace",
    ),
    (
        "no depth ratio",
        |s| s.practice.roughing_depth.n = 0.0,
        Code::OutOfRange,
        "practice.roughing_depth_n",
    ),
    (
        "no part",
        |s| s.part_height = 0.0,
        Code::OutOfRange,
        "part_height",
    ),
    (
        "no axial depth",
        |s| s.pass.axial_depth = si(0.0),
        Code::OutOfRange,
        "cut.axial_depth",
    ),
    (
        "axial depth beyond the flutes",
        |s| s.pass.axial_depth = si(1.1 * INCH),
        Code::OutOfRange,
        "cut.axial_depth",
    ),
    (
        "radial depth beyond the diameter",
        |s| s.pass.radial_depth = si(0.6 * INCH),
        Code::OutOfRange,
        "cut.radial_depth",
    ),
    (
        "unknown radial depth",
        |s| s.pass.radial_depth = si(f64::NAN),
        Code::NotFinite,
        "cut.radial_depth",
    ),
    (
        "negative length",
        |s| s.pass.length = si(-0.1),
        Code::OutOfRange,
        "cut.length",
    ),
    (
        "feed of half the cutter",
        |s| s.pass.feed_per_tooth = Some(si(0.01)),
        Code::OutOfRange,
        "cut.feed_per_tooth",
    ),
    (
        "feed of zero",
        |s| s.pass.feed_per_tooth = Some(si(0.0)),
        Code::OutOfRange,
        "cut.feed_per_tooth",
    ),
    (
        "speed of zero",
        |s| s.pass.spindle_speed = Some(si(0.0)),
        Code::OutOfRange,
        "cut.spindle_speed",
    ),
    (
        "unknown speed",
        |s| s.pass.spindle_speed = Some(si(f64::NAN)),
        Code::NotFinite,
        "cut.spindle_speed",
    ),
    (
        "roughness of metres",
        |s| s.pass.mean_roughness = Some(si(1.6)),
        Code::OutOfRange,
        "cut.mean_roughness",
    ),
    (
        "face beside the cutter",
        |s| {
            s.pass.operation = Operation::FaceMilling;
            s.pass.offset = si(INCH);
        },
        Code::OutOfRange,
        "cut.offset",
    ),
    (
        "face with a ball",
        |s| {
            s.pass.operation = Operation::FaceMilling;
            s.cutter.form = CutterForm::BallNose;
        },
        Code::Inconsistent,
        "cutter.form",
    ),
    (
        "edge material without a row",
        |s| s.cutter.material = ToolMaterial::Pcd,
        Code::NoData,
        "tool_material",
    ),
    (
        "feed that only rubs",
        |s| s.pass.feed_per_tooth = Some(si(1e-6)),
        Code::LimitExceeded,
        "smallest_chip",
    ),
    (
        "cutter slower than the machine",
        |s| s.cutter.maximum_speed = Some(si(0.5)),
        Code::LimitExceeded,
        "cutter_speed",
    ),
    (
        "vise that hardly clamps",
        |s| s.hold.clamping = Clamping::Force(si(50.0)),
        Code::LimitExceeded,
        "clamping",
    ),
    (
        "thin grip of a tall part",
        |s| s.part_height = 0.2,
        Code::LimitExceeded,
        "grip",
    ),
    (
        "pass deeper than the practice",
        |s| s.pass.radial_depth = si(0.2 * INCH),
        Code::LimitExceeded,
        "roughing_depth",
    ),
    (
        "climb through the backlash",
        |s| s.pass.direction = Direction::Climb,
        Code::LimitExceeded,
        "climb_with_backlash",
    ),
    (
        "long and slender",
        |s| s.practice.stick_out_ratio = si(2.0),
        Code::LimitExceeded,
        "stick_out",
    ),
    (
        "motor of a toy",
        |s| s.machine.motor_power = si(2.0),
        Code::LimitExceeded,
        "power",
    ),
    (
        "machine too fast for the edge",
        |s| {
            s.machine.drive = Drive::Continuous {
                lowest: si(100.0),
                highest: si(600.0),
            };
        },
        Code::LimitExceeded,
        "cutting_speed",
    ),
    (
        "finish nothing reaches",
        |s| s.pass.mean_roughness = Some(si(1e-11)),
        Code::LimitExceeded,
        "mean_roughness",
    ),
    (
        "feed box too fast",
        |s| s.machine.feed = Feed::Stepped(vec![si(0.5)]),
        Code::LimitExceeded,
        "table_feed_lowest",
    ),
];

#[test]
fn each_case_gets_its_code_and_parameter() {
    Shop::usual().mill(Lowering::Allowed).unwrap();
    for (name, change, code, parameter) in CASES {
        let mut shop = Shop::usual();
        change(&mut shop);
        let error = shop
            .mill(Lowering::Allowed)
            .err()
            .unwrap_or_else(|| panic!("{name}: no error"));
        let found = error
            .problems()
            .iter()
            .find(|problem| problem.parameter == *parameter)
            .unwrap_or_else(|| panic!("{name}: {error}"));
        assert_eq!(found.code, *code, "{name}: {error}");
        assert!(
            !found.remedy.is_empty() && !found.admissible.is_empty(),
            "{name}: {error}"
        );
        assert!(
            !found.value.is_empty() || *code == Code::Missing,
            "{name}: {error}"
        );
    }
}

#[test]
fn all_problems_come_at_once() {
    let mut shop = Shop::usual();
    shop.cutter.diameter = si(-1.0);
    shop.machine.efficiency = si(80.0);
    shop.hold.jaw_friction = si(0.0);
    shop.practice.power_share = si(7.0);
    shop.pass.length = si(0.0);
    let error = shop.mill(Lowering::Allowed).err().unwrap();
    let names: Vec<&str> = error
        .problems()
        .iter()
        .map(|problem| problem.parameter.as_str())
        .collect();
    for name in [
        "cutter.diameter",
        "machine.efficiency",
        "hold.jaw_friction",
        "practice.power_share",
        "cut.length",
    ] {
        assert!(names.contains(&name), "{name} not in {names:?}");
    }
}
