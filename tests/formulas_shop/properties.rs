//! Properties of the shop's formulas: inverses, limits, what rises with what.

use super::{cases, near, value};
use gullet::formula::find;
use proptest::prelude::*;

proptest! {
    #![proptest_config(cases(256))]

    #[test]
    fn deflection_forms_agree(
        force in 1.0..5e3_f64, overhang in 0.01..0.2_f64, diameter in 2e-3..0.05_f64, share in 0.0..1.0_f64, slim in 0.3..0.99_f64,
    ) {
        let modulus = 206e9;
        let tip = value("cantilever_deflection", &[force, overhang, diameter, modulus]);
        assert_near!(tip, value("cantilever_deflection_inboard", &[force, overhang, overhang, diameter, modulus]), 1e-13);
        assert_near!(tip, value("stepped_cutter_deflection", &[force, overhang, share * overhang, diameter, diameter, modulus]), 1e-13);
        let inboard = value("cantilever_deflection_inboard", &[force, overhang, share * overhang, diameter, modulus]);
        prop_assert!(inboard <= tip * (1.0 + 1e-14));
        let stepped = value("stepped_cutter_deflection", &[force, overhang, share * overhang, slim * diameter, diameter, modulus]);
        prop_assert!(stepped >= tip * (1.0 - 1e-13));
        prop_assert!(stepped <= value("cantilever_deflection", &[force, overhang, slim * diameter, modulus]) * (1.0 + 1e-13));
        assert_near!(value("cantilever_deflection", &[-force, 2.0 * overhang, diameter, modulus]), -8.0 * tip, 1e-13);
        assert_near!(value("cantilever_deflection", &[force, overhang, 2.0 * diameter, modulus]), tip / 16.0, 1e-13);
    }

    #[test]
    fn finish_inverts(feed_share in 1e-3..2.0_f64, nose in 1e-4..5e-3_f64) {
        let feed = feed_share * nose;
        let mean = value("turning_mean_roughness", &[feed, nose]);
        assert_near!(value("feed_for_mean_roughness", &[mean, nose]), feed, 1e-13);
        assert_near!(value("nose_radius_for_mean_roughness", &[feed, mean]), nose, 1e-13);
        let peak = value("turning_peak_to_valley", &[feed, nose]);
        assert_near!(value("feed_for_peak_to_valley", &[peak, nose]), feed, 1e-13);
        assert_near!(value("feed_mark_mean_roughness", &[peak]), mean, 1e-13);
        prop_assert!(mean > feed * feed / (32.0 * nose));
    }

    #[test]
    fn scallop_inverts(share in 1e-7..1.0_f64, ball in 1e-3..0.05_f64) {
        let stepover = share * ball;
        let height = value("scallop_height", &[ball, stepover]);
        // Near the full diameter the height hardly tells the stepover.
        let tolerance = 1e-13 / (1.0 - share * share).max(1e-13).sqrt();
        assert_near!(value("stepover_for_scallop", &[ball, height]), stepover, tolerance.max(1e-13));
        prop_assert!(height >= stepover * stepover / (4.0 * ball) * (1.0 - 1e-14));
        prop_assert!(height <= ball / 2.0);
    }

    #[test]
    fn feed_marks_of_up_milling_are_the_lowest(feed in 1e-5..1e-3_f64, diameter in 0.01..0.1_f64, teeth in 1_u8..8) {
        let z = f64::from(teeth);
        let up = value("feed_mark_height_up", &[feed, diameter, z]);
        let plain = value("feed_mark_height", &[feed, diameter]);
        let down = value("feed_mark_height_down", &[feed, diameter, z]);
        prop_assert!(up < plain && plain < down);
        assert_near!(1.0 / up + 1.0 / down, 2.0 / plain, 1e-12);
    }

    #[test]
    fn arc_feeds_keep_the_angular_rate(feed in 1e-3..0.1_f64, cutter in 1e-3..0.05_f64, wider in 1.01..10.0_f64) {
        let feature = wider * cutter;
        let inside = value("inside_arc_feed", &[feed, feature, cutter]);
        let outside = value("outside_arc_feed", &[feed, feature, cutter]);
        assert_near!(inside / (feature - cutter), feed / feature, 1e-12);
        assert_near!(outside / (feature + cutter), feed / feature, 1e-12);
        prop_assert!(inside < feed && feed < outside);
    }

    #[test]
    fn a_bore_engages_more_and_a_boss_less_than_a_wall(cutter in 1e-3..0.05_f64, wider in 1.01..10.0_f64, share in 0.01..0.9_f64) {
        let finished = wider * cutter;
        let stock = share * cutter.min(finished) / 2.0;
        let bore = value("bore_radial_depth", &[finished, finished - 2.0 * stock, cutter]);
        prop_assert!(bore > stock * (1.0 - 1e-12) && bore <= cutter);
        let boss = value("boss_radial_depth", &[finished, finished + 2.0 * stock, cutter]);
        // Areas swept by one turn of the centre and by the ring of stock.
        let ring = core::f64::consts::PI * ((finished / 2.0 + stock).powi(2) - (finished / 2.0).powi(2));
        assert_near!(boss * core::f64::consts::PI * (finished + cutter), ring, 1e-10);
        prop_assert!(boss < stock);
    }

    #[test]
    fn approaches_stay_within_the_radius(diameter in 1e-3..0.3_f64, share in 1e-6..1.0_f64) {
        let depth = share * diameter;
        let side = value("peripheral_approach", &[diameter, depth]);
        prop_assert!(side <= diameter / 2.0 * (1.0 + 1e-15));
        prop_assert!(side >= value("peripheral_approach", &[diameter, 0.9 * depth]) * (1.0 - 1e-15));
        let face = value("face_approach_centred", &[diameter, depth]);
        prop_assert!(face <= diameter / 2.0 && face <= side * (1.0 + 1e-15));
        // The exact identity l (D - l) = a_e^2/4, without cancellation.
        assert_near!(face * (diameter - face), depth * depth / 4.0, 1e-13);
        if share >= 0.5 {
            prop_assert_eq!(side, diameter / 2.0);
        }
    }

    #[test]
    fn facing_time_is_the_integral(
        outer in 0.01..0.4_f64, share in 0.0..0.99_f64, speed in 0.1..5.0_f64, feed in 5e-5..1e-3_f64, limit in 1.0..200.0_f64,
    ) {
        let inner = share * outer;
        let limited = value("facing_time_limited_speed", &[outer, inner, speed, feed, limit]);
        let free = value("facing_time_constant_speed", &[outer, inner, speed, feed]);
        prop_assert!(limited >= free * (1.0 - 1e-12));
        // The time per radius has a kink where the limit is reached; the midpoint rule errs by h^2.
        let steps = 4000;
        let width = (outer - inner) / 2.0 / f64::from(steps);
        let sum: f64 = (0..steps)
            .map(|step| inner / 2.0 + (f64::from(step) + 0.5) * width)
            .map(|radius| width / (feed * limit.min(speed / (2.0 * core::f64::consts::PI * radius))))
            .sum();
        assert_near!(limited, sum, 1e-6);
        let high = value("facing_time_limited_speed", &[outer, inner, speed, feed, 1e9]);
        assert_near!(high, free, 1e-6);
    }

    #[test]
    fn rapids_are_continuous_and_rise(speed in 0.01..2.0_f64, acceleration in 0.1..20.0_f64, share in 0.0..4.0_f64) {
        let edge = speed * speed / acceleration;
        let time = |distance: f64| value("rapid_time", &[distance, speed, acceleration]);
        assert_near!(time(edge * (1.0 - 1e-12)), time(edge * (1.0 + 1e-12)), 1e-11);
        prop_assert!(time(share * edge) <= time((share + 0.01) * edge));
        prop_assert!(time(share * edge) >= share * edge / speed);
        prop_assert_eq!(time(0.0), 0.0);
    }

    #[test]
    fn learning_falls_by_its_rate_per_doubling(first in 1.0..1e4_f64, rate in 0.5..1.0_f64, unit in 1_u32..1000) {
        let x = f64::from(unit);
        assert_near!(
            value("learning_unit_time", &[first, rate, 2.0 * x]),
            rate * value("learning_unit_time", &[first, rate, x]),
            1e-12
        );
        prop_assert_eq!(value("learning_unit_time", &[first, rate, 1.0]), first);
    }

    #[test]
    fn tapping_takes_its_turns(depth in 1e-3..0.1_f64, approach in 0.0..0.02_f64, lead in 3e-4..6e-3_f64, speed in 0.5..50.0_f64, faster in 1.1..4.0_f64) {
        let turns = (depth + approach) / lead;
        let time = value("tapping_time", &[depth, approach, lead, speed, faster * speed, 0.25]);
        assert_near!(time, turns / speed * (1.0 + 1.0 / faster) + 0.5, 1e-12);
    }

    #[test]
    fn friction_holds_what_it_must(along in -5e3..5e3_f64, lift in 1.0..5e3_f64, friction in 0.05..0.5_f64, safety in 1.0..3.0_f64) {
        let needed = value("required_clamping_force", &[along, lift, friction, safety]);
        let held = value("two_face_friction_capacity", &[needed, friction]);
        assert_near!(held, safety * along.hypot(lift), 1e-13);
        assert_near!(needed, value("required_clamping_force", &[-along, lift, friction, safety]), 1e-15);
        prop_assert!(needed >= value("required_clamping_force", &[along, 0.0, friction, safety]));
    }

    #[test]
    fn tipping_is_in_balance(
        across in 1.0..5e3_f64, height in 0.0..0.1_f64, grip in 5e-3..0.05_f64, width in 5e-3..0.1_f64,
        friction in 0.05..0.5_f64, safety in 1.0..3.0_f64,
    ) {
        let needed = value("tipping_clamping_force", &[across, height, grip, width, friction, safety]);
        let open = value("clamping_force_across", &[across, safety]);
        prop_assert!(needed >= open);
        // Moments about the middle of the grip: force, friction couple, shifted pressure.
        let fixed_jaw = needed - open;
        let moments = open * height - friction * fixed_jaw * width - fixed_jaw * grip / 2.0;
        prop_assert!(moments.abs() <= 1e-14 * needed * (height + width + grip), "{moments}");
        assert_near!(value("tipping_clamping_force", &[across, 0.0, grip, width, friction, safety]), open, 1e-15);
        prop_assert!(needed <= value("tipping_clamping_force", &[across, height + 0.01, grip, width, friction, safety]));
        prop_assert!(needed >= value("tipping_clamping_force", &[across, height, 1.1 * grip, width, friction, safety]));
    }

    #[test]
    fn screws_follow_the_inclined_plane(
        torque in 1.0..200.0_f64, diameter in 5e-3..0.05_f64, steep in 0.02..0.5_f64, friction in 0.0..0.4_f64,
        half_angle in 0.0..0.8_f64, collar in 0.0..0.05_f64, collar_friction in 0.0..0.3_f64,
    ) {
        let lead = steep * core::f64::consts::PI * diameter;
        let force = value("screw_clamping_force", &[torque, diameter, lead, friction, half_angle, collar, collar_friction]);
        let slope = (steep.atan() + (friction / half_angle.cos()).atan()).tan();
        assert_near!(force, torque / (diameter / 2.0 * slope + collar_friction * collar / 2.0), 1e-12);
        let smooth = value("screw_clamping_force", &[torque, diameter, lead, 0.0, half_angle, 0.0, 0.0]);
        assert_near!(smooth, value("screw_clamping_force_efficiency", &[torque, lead, 1.0]), 1e-13);
        prop_assert!(force <= smooth * (1.0 + 1e-13));
    }

    #[test]
    fn life_and_speed_invert(speed in 0.1..10.0_f64, share in 0.3..3.0_f64, exponent in 0.08..0.8_f64) {
        let taylor = share * speed;
        let life = value("tool_life", &[speed, taylor, exponent]);
        assert_near!(value("speed_for_life", &[life, taylor, exponent]), speed, 1e-12);
        prop_assert!(value("tool_life", &[1.01 * speed, taylor, exponent]) < life);
        assert_near!(value("scaled_tool_life", &[life, 1.2, 1.0, 1.0, exponent, 0.3, 0.1]), value("tool_life", &[1.2 * speed, taylor, exponent]), 1e-12);
    }

    #[test]
    fn two_tests_give_the_exponents_back(
        speed in 0.1..5.0_f64, faster in 1.1..3.0_f64, taylor in 0.5..10.0_f64, exponent in 0.08..0.8_f64, feed_exponent in 0.05..1.2_f64,
    ) {
        let lives = [speed, faster * speed].map(|speed| value("tool_life", &[speed, taylor, exponent]));
        let tests = [speed, lives[0], faster * speed, lives[1]];
        assert_near!(value("taylor_exponent_from_two", &tests), exponent, 1e-11);
        assert_near!(value("taylor_speed_from_two", &tests), taylor, 1e-9);
        let fed = value("scaled_tool_life", &[lives[0], 1.0, faster, 1.0, exponent, feed_exponent, 0.4]);
        let feeds = [2e-4, lives[0], faster * 2e-4, fed, exponent];
        assert_near!(value("feed_exponent_from_two", &feeds), feed_exponent, 1e-11);
        let turned = [tests[0], tests[3], tests[2], tests[1]];
        let refused = find("taylor_exponent_from_two").unwrap().call(&turned).unwrap_err();
        prop_assert_eq!(&refused.first().parameter, "second_life");
    }

    #[test]
    fn no_speed_costs_less_than_the_cheapest(
        taylor in 0.5..10.0_f64, exponent in 0.1..0.7_f64, change in 0.0..600.0_f64, edge in 0.01..20.0_f64, rate in 1e-3..0.05_f64,
        share in 0.05..1.0_f64, other in 0.5..2.0_f64,
    ) {
        let cheapest = value("minimum_cost_speed", &[taylor, exponent, change, edge, rate, share]);
        let cost = |speed: f64| {
            let life = value("tool_life", &[speed, taylor, exponent]);
            value("unit_cost", &[30.0, 100.0 / speed, change, life, edge, rate, share])
        };
        prop_assert!(cost(cheapest) <= cost(other * cheapest) * (1.0 + 1e-12));
        let life = value("minimum_cost_life", &[exponent, change, edge, rate, share]);
        assert_near!(value("tool_life", &[cheapest, taylor, exponent]), life, 1e-11);
        prop_assert!(value("maximum_production_life", &[exponent, change, share]) <= life);
        if change > 0.0 {
            prop_assert!(value("maximum_production_speed", &[taylor, exponent, change, share]) >= cheapest * (1.0 - 1e-12));
        }
    }

    #[test]
    fn whole_parts_cost_at_least_the_smooth_mean(
        handling in 0.0..600.0_f64, cutting in 1.0..600.0_f64, change in 0.0..600.0_f64, parts in 1.0..50.0_f64, edge in 0.0..20.0_f64, rate in 0.0..0.05_f64,
        share in 0.05..1.0_f64,
    ) {
        let arguments = [handling, cutting, change, parts * cutting, edge, rate, share];
        prop_assert!(value("unit_cost_whole_parts", &arguments) >= value("unit_cost", &arguments) * (1.0 - 2e-9));
    }

    #[test]
    fn rounding_decides_no_whole_number(cutting in 0.1..600.0_f64, whole in 1_u32..200, depth in 1e-5..1e-3_f64, root in 1_u32..20) {
        let m = f64::from(whole);
        // 5 an edge and nothing else: the cost is 5/m.
        let cost = value("unit_cost_whole_parts", &[0.0, cutting, 0.0, m * cutting, 5.0, 0.0, 1.0]);
        assert_near!(cost, 5.0 / m, 1e-14);
        let root = f64::from(root);
        prop_assert_eq!(value("threading_passes", &[root * depth, depth]), root * root);
    }

    #[test]
    fn thread_percent_and_drill_invert(major in 1e-3..0.05_f64, pitch_share in 0.05..0.25_f64, percent in 0.0..1.2_f64, basis in 1.0..1.3_f64) {
        let pitch = pitch_share * major;
        let drill = value("tap_drill_diameter", &[major, pitch, percent, basis]);
        prop_assert!(drill <= major);
        let back = value("thread_percent", &[major, pitch, drill, basis]);
        prop_assert!((back - percent).abs() <= 1e-13, "{back} against {percent}");
    }

    #[test]
    fn passes_take_equal_areas(height in 1e-4..5e-3_f64, share in 0.05..1.5_f64, index in 1_u32..30) {
        let first = share * height;
        let passes = value("threading_passes", &[height, first]);
        let depth = |i: f64| value("threading_depth", &[height, passes, i]);
        prop_assert!(depth(1.0) <= first * (1.0 + 1e-9));
        prop_assert!(passes == 1.0 || height / (passes - 1.0).sqrt() > first);
        assert_near!(depth(passes), height, 1e-15);
        let i = f64::from(index).min(passes);
        let before = if i > 1.0 { depth(i - 1.0) } else { 0.0 };
        assert_near!(depth(i).powi(2) - before.powi(2), height * height / passes, 1e-11);
    }

    #[test]
    fn stability_limits_follow_the_compliance(stiffness in 1e5..1e9_f64, damping in 1e-3..0.2_f64, coefficient in 1e8..5e9_f64, teeth in 1_u8..9) {
        let limit = value("stability_limit_single_mode", &[stiffness, damping, coefficient]);
        // Least real part of 1/(k (1 - r^2 + 2 i zeta r)) at r^2 = 1 + 2 zeta.
        let r = (1.0 + 2.0 * damping).sqrt();
        let (a, b) = (1.0 - r * r, 2.0 * damping * r);
        assert_near!(limit, -1.0 / (2.0 * coefficient * a / (a * a + b * b) / stiffness), 1e-12);
        let z = f64::from(teeth);
        let slot = value("stability_limit_slot_single_mode", &[stiffness, damping, coefficient, z]);
        assert_near!(slot * z, 4.0 * limit, 1e-12);
        assert_near!(value("best_spindle_speed", &[900.0, z, 3.0]) * z * 3.0, 900.0, 1e-14);
    }
}
