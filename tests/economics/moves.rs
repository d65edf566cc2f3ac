//! Time of moves: against motion integrated step by step, hand wheels, axes together.

use super::near;
use gullet::Code;
use gullet::economics::{Axes, Way};
use gullet::model::{Machine, Practice};
use gullet::quantity::si;
use proptest::prelude::*;

/// Time from rest to rest by small steps: as fast as the speed and the way to brake allow.
fn stepped(distance: f64, speed: f64, acceleration: f64) -> f64 {
    let dt = 1e-5;
    let (mut x, mut v, mut t) = (0.0, 0.0f64, 0.0);
    while x < distance && t < 100.0 {
        let brake = (2.0 * acceleration * (distance - x)).sqrt();
        v = (v + acceleration * dt).min(speed).min(brake);
        if v < 1e-9 {
            break;
        }
        x += v * dt;
        t += dt;
    }
    t
}

#[test]
fn a_driven_move_gains_and_loses_speed() {
    for (distance, speed, acceleration) in [(0.5, 0.5, 2.5), (0.05, 0.5, 2.5), (0.02, 0.1, 1.0)] {
        let way = Way::Driven {
            speed: si(speed),
            acceleration: Some(si(acceleration)),
        };
        let time = way.straight(si(distance)).unwrap().time.value;
        let other = stepped(distance, speed, acceleration);
        assert!((time - other).abs() < 2e-3 * time, "{time} {other}");
        assert!(time > distance / speed);
    }
}

proptest! {
    #![proptest_config(super::cases(300))]

    #[test]
    fn axes_go_together(x in -1.0..1.0f64, y in -1.0..1.0f64, z in -0.5..0.5f64, speed in 0.02..1.0f64, a in 0.1..10.0f64) {
        let way = Way::Driven { speed: si(speed), acceleration: Some(si(a)) };
        let time = |x: f64, y: f64, z: f64, axes| way.time_of([si(x), si(y), si(z)], axes).unwrap().time.value;
        let each = [x, y, z].map(|one| way.straight(si(one)).unwrap().time.value);
        let together = time(x, y, z, Axes::Independent);
        prop_assert_eq!(together, each.into_iter().fold(0.0, f64::max));
        let path = (x * x + y * y + z * z).sqrt();
        let straight = time(x, y, z, Axes::Interpolated);
        prop_assert!(near(straight, way.straight(si(path)).unwrap().time.value, 1e-12));
        prop_assert!(straight >= together * (1.0 - 1e-12));
        prop_assert_eq!(time(-x, y, -z, Axes::Interpolated), straight);
        // A short move never reaches the speed.
        let moved = way.straight(si(path)).unwrap();
        let peak = moved.peak_speed.map_or(0.0, |peak| peak.value);
        prop_assert!(peak <= speed);
        prop_assert_eq!(peak < speed * (1.0 - 1e-12), path < speed * speed / a * (1.0 - 2e-12));
    }

    #[test]
    fn a_hand_holds_its_pace(x in -0.5..0.5f64, y in -0.5..0.5f64) {
        let machine = Machine::builtin("manual-knee-mill").unwrap();
        let practice = Practice::builtin("training").unwrap();
        let way = Way::rapid(&machine, &practice).unwrap();
        let moved = way.time_of([si(x), si(y), si(0.0)], Axes::Independent).unwrap();
        // 0.2 in a turn, two turns a second.
        let turns = (x.abs() + y.abs()) / (0.2 * 0.0254);
        prop_assert!(near(moved.turns.unwrap().value, turns, 1e-12));
        prop_assert!(near(moved.time.value, turns / 2.0, 1e-12));
    }
}

#[test]
fn what_no_practice_knows_is_refused() {
    let practice = Practice::builtin("training").unwrap();
    let mut machine = Machine::builtin("manual-knee-mill").unwrap();
    let way = Way::rapid(&machine, &practice).unwrap();
    let error = way
        .time_of([si(0.1), si(0.0), si(0.02)], Axes::Independent)
        .err()
        .unwrap();
    assert_eq!(
        (error.code(), error.first().parameter.as_str()),
        (Code::NoData, "travel_z")
    );
    machine.travel_per_turn = None;
    assert!(Way::rapid(&machine, &practice).is_none());
    for (speed, acceleration) in [
        (0.0, 1.0),
        (f64::NAN, 1.0),
        (1.0, -1.0),
        (1.0, f64::INFINITY),
    ] {
        let way = Way::Driven {
            speed: si(speed),
            acceleration: Some(si(acceleration)),
        };
        assert!(way.straight(si(0.1)).is_err());
    }
    let rapid = Way::Driven {
        speed: si(0.5),
        acceleration: None,
    };
    assert!(rapid.straight(si(f64::NAN)).is_err());
    let moved = rapid.straight(si(0.5)).unwrap();
    assert_eq!(moved.time.value, 1.0);
    assert!(!moved.assumptions.is_empty());
    assert_eq!(rapid.straight(si(0.0)).unwrap().time.value, 0.0);
}
