//! Which face when, held how: by hand for one block, in general for many.

use super::{INCH, block, library, route};
use gullet::model::Blank;
use gullet::plan::{Face, Route, Seating};
use gullet::quantity::si;
use proptest::prelude::*;

/// The sequence that teaching pages agree on (seen): best side to the fixed jaw, largest face first,
/// then a side, the other side, the opposite face, the ends last; a bar while the movable jaw meets
/// a rough face. That the bar also goes in at the third face is common practice, no source.
#[test]
fn a_flat_block_follows_the_sequence_of_the_shops() {
    let route = route(&block());
    let table: Vec<[&str; 5]> = route
        .clampings
        .iter()
        .map(|c| {
            [
                c.seat.cut.name(),
                c.seat.fixed.name(),
                c.seat.movable.name(),
                c.seat.down.name(),
                if c.placement.round_bar.is_some() {
                    "bar"
                } else {
                    "-"
                },
            ]
        })
        .collect();
    assert_eq!(
        table,
        [
            ["top", "back", "front", "bottom", "bar"],
            ["front", "top", "bottom", "back", "bar"],
            ["back", "top", "bottom", "front", "bar"],
            ["bottom", "front", "back", "top", "-"],
            ["left", "top", "bottom", "right", "-"],
            ["right", "top", "bottom", "left", "-"],
        ]
    );
    assert!(route.clampings[4].seat.seating == Seating::OnEnd);
}

#[test]
fn the_part_lies_as_its_seat_says() {
    let route = route(&block());
    for clamping in &route.clampings {
        let seat = clamping.seat;
        let blank = clamping.card.job.blank;
        assert_eq!(blank.height, seat.cut.axis().of(&clamping.before));
        assert_eq!(blank.width, seat.fixed.axis().of(&clamping.before));
        assert_eq!(blank.length, seat.along.of(&clamping.before));
        assert_eq!(clamping.card.job.hold.grip_depth, clamping.placement.grip);
        let [a, b, c] = [seat.cut.axis(), seat.fixed.axis(), seat.along];
        assert!(a != b && b != c && a != c);
    }
}

fn sizes() -> impl Strategy<Value = (f64, f64, f64)> {
    let size = 1.0f64..3.2;
    (size.clone(), size.clone(), size)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn every_block_is_squared_on_milled_datums(
        (length, width, height) in sizes(),
        sawn in proptest::sample::subsequence(Face::ALL.to_vec(), 0..=6),
    ) {
        let mut block = block();
        let blank = |add: f64| Blank {
            length: si((length + add) * INCH),
            width: si((width + add) * INCH),
            height: si((height + add) * INCH),
        };
        block.finished = blank(0.0);
        block.sawn = blank(0.1);
        block.sawn_faces = sawn.clone();
        // Any parallel at hand: only the order is looked at.
        block.vise.hold.parallels = (1..=100).map(|i| si(f64::from(i) * 0.02 * INCH)).collect();
        let route = match Route::new(block.clone(), library()) {
            Ok(route) => route,
            Err(error) => return Err(TestCaseError::fail(error.to_string())),
        };
        let area = |face: Face| {
            let volume = block.finished.length.value * block.finished.width.value * block.finished.height.value;
            volume / face.axis().of(&block.finished).value
        };
        let mut milled: Vec<Face> = Vec::new();
        for clamping in &route.clampings {
            let seat = clamping.seat;
            let number = clamping.number;
            prop_assert_eq!(number, milled.len() + 1);
            prop_assert!(!milled.contains(&seat.cut));
            prop_assert_eq!(seat.movable, seat.fixed.opposite());
            prop_assert!(seat.fixed.axis() != seat.cut.axis());
            // From the second clamping on a milled face is at the fixed jaw.
            prop_assert!(number == 1 || milled.contains(&seat.fixed));
            // What comes to size rests on its milled opposite.
            prop_assert_eq!(clamping.finishes, milled.contains(&seat.cut.opposite()));
            if clamping.finishes && seat.seating != Seating::Overhanging {
                prop_assert_eq!(seat.down, seat.cut.opposite());
            }
            // The bar goes where the movable jaw meets a rough face, and only there.
            prop_assert_eq!(clamping.placement.round_bar.is_some(), !milled.contains(&seat.movable));
            // Of two opposite faces the sawn one goes first.
            if !clamping.finishes && sawn.contains(&seat.cut.opposite()) {
                prop_assert!(sawn.contains(&seat.cut));
            }
            // Cutter and jaws stay apart, and the grip is enough.
            let height = clamping.card.job.blank.height.value;
            let grip = clamping.placement.grip.value;
            prop_assert!(grip >= block.practice.smallest_grip.value * height * (1.0 - 1e-9));
            if seat.seating != Seating::Overhanging {
                let left = clamping.placement.above_jaws - clamping.stock;
                prop_assert!(left.value >= block.practice.jaw_clearance.value * (1.0 - 1e-6));
            }
            milled.push(seat.cut);
        }
        prop_assert_eq!(milled.len(), 6);
        let areas: Vec<f64> = milled.iter().map(|face| area(*face)).collect();
        prop_assert!(areas.iter().all(|other| *other <= areas[0] * (1.0 + 1e-12)));
        prop_assert!(areas.iter().all(|other| *other >= areas[5] * (1.0 - 1e-12)));
        prop_assert_eq!(milled[4].axis(), milled[5].axis());
        for axis in gullet::plan::Axis::ALL {
            let stock: f64 = route.clampings.iter()
                .filter(|clamping| clamping.seat.cut.axis() == *axis)
                .map(|clamping| clamping.stock.value)
                .sum();
            let allowance = (axis.of(&block.sawn) - axis.of(&block.finished)).value;
            prop_assert!((stock - allowance).abs() < 1e-12);
        }
    }
}
