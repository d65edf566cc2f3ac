//! The order of the six clampings of a block, with the datum and the jaw of each.
//!
//! Teaching pages agree on it: the largest face first, each later face square to one that is
//! milled already, the ends last. Which of two opposite faces goes first: the sawn one, so that no
//! saw mark ever serves as a datum where that can be helped.

use super::face::{Axis, Face};
use crate::model::Blank;

/// How a face comes under the cutter.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Seating {
    /// The block lies between the jaws, the face up.
    Lying,
    /// The block stands on its end, the other end up.
    OnEnd,
    /// The block lies with its end beyond the jaws, cut by the side of an end mill.
    Overhanging,
}

/// How the ends are cut.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ends {
    /// Standing on end in the vise.
    OnEnd,
    /// Overhanging the vise, cut by the side of an end mill.
    Overhanging,
}

/// How the block sits in one clamping.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Seat {
    /// The face that is cut.
    pub cut: Face,
    /// The face against the fixed jaw.
    pub fixed: Face,
    /// The face at the movable jaw.
    pub movable: Face,
    /// The face that rests below.
    pub down: Face,
    /// The size that lies along the jaws.
    pub along: Axis,
    /// Whether the face at the movable jaw is still rough, so that a round bar goes between.
    pub rough_at_movable: bool,
    /// How the face comes under the cutter.
    pub seating: Seating,
}

/// Two opposite faces, the one that is cut first before the other.
#[derive(Clone, Copy)]
struct Pair(Face, Face);

impl Pair {
    fn of(axis: Axis, sawn: &[Face]) -> Pair {
        let (first, second) = axis.faces();
        if sawn.contains(&second) && !sawn.contains(&first) {
            Pair(second, first)
        } else {
            Pair(first, second)
        }
    }
}

/// The sizes from the smallest, whose faces are the largest, to the largest, which runs to the ends;
/// of equal ones height before width before length.
pub(super) fn axes(finished: &Blank) -> [Axis; 3] {
    let mut axes = [Axis::Height, Axis::Width, Axis::Length];
    axes.sort_by(|a, b| a.of(finished).value.total_cmp(&b.of(finished).value));
    axes
}

/// The six clampings in order.
pub(super) fn seats(finished: &Blank, sawn: &[Face], ends: Ends) -> [Seat; 6] {
    let [thin, middle, long] = axes(finished);
    let large = Pair::of(thin, sawn);
    let side = Pair::of(middle, sawn);
    let end = Pair::of(long, sawn);
    let lying = |cut: Face, fixed: Face, rough_at_movable| Seat {
        cut,
        fixed,
        movable: fixed.opposite(),
        down: cut.opposite(),
        along: long,
        rough_at_movable,
        seating: Seating::Lying,
    };
    let last = |cut: Face| match ends {
        Ends::OnEnd => Seat {
            cut,
            fixed: large.0,
            movable: large.1,
            down: cut.opposite(),
            along: middle,
            rough_at_movable: false,
            seating: Seating::OnEnd,
        },
        Ends::Overhanging => Seat {
            cut,
            fixed: side.0,
            movable: side.1,
            down: large.0,
            along: long,
            rough_at_movable: false,
            seating: Seating::Overhanging,
        },
    };
    [
        // The side that is cut later is the better one: it is the datum of the first cut.
        lying(large.0, side.1, true),
        lying(side.0, large.0, true),
        lying(side.1, large.0, true),
        lying(large.1, side.0, false),
        last(end.0),
        last(end.1),
    ]
}

impl Seat {
    /// Why this face, and why held so.
    pub(super) fn reason(&self, number: usize, sawn: &[Face]) -> String {
        let cut = self.cut.name();
        let fixed = self.fixed.name();
        let down = self.down.name();
        let marks = if sawn.contains(&self.cut) {
            " Its saw marks go before it serves as a datum."
        } else {
            ""
        };
        match (number, self.seating) {
            (1, _) => {
                let best = match (sawn.contains(&self.fixed), sawn.contains(&self.movable)) {
                    (false, true) => "not sawn, so the best datum there is",
                    (true, true) => "sawn like every side: the bar makes it seat, flat is enough",
                    _ => "the best datum there is",
                };
                format!(
                    "The {cut} face is the largest: milled flat it is the datum of the rest.{marks} The {fixed} face goes to the fixed jaw: {best}."
                )
            }
            (2, _) => format!(
                "The {fixed} face is milled: against the fixed jaw it makes the {cut} face square to it.{marks}"
            ),
            (3, _) => format!(
                "The {fixed} face stays the datum; the {down} face, milled square, rests below: the {cut} face comes out parallel to it, to size."
            ),
            (4, _) => format!(
                "The {down} face, milled first, rests below and the {fixed} face is square to it: the {cut} face comes out parallel, to size. Both sides at the jaws are milled: no bar."
            ),
            (5, Seating::Overhanging) => format!(
                "The ends come last, square to four milled faces. Lying, the {cut} end overhangs the vise and the side of the cutter takes it.{marks}"
            ),
            (5, _) => format!(
                "The ends come last, square to four milled faces. Standing with the {fixed} face to the fixed jaw, upright by a square.{marks}"
            ),
            (_, Seating::Overhanging) => format!(
                "The {} end is milled: the length is measured from it. Lying as before, the {cut} end overhangs the vise.",
                self.cut.opposite().name()
            ),
            _ => format!(
                "The {down} end is milled and rests below: the {cut} end comes out parallel to it, to length."
            ),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::si;

    fn block(length: f64, width: f64, height: f64) -> Blank {
        Blank {
            length: si(length),
            width: si(width),
            height: si(height),
        }
    }

    #[test]
    fn the_smallest_size_gives_the_first_face_whatever_it_is_called() {
        let order = |block| axes(&block).map(Axis::name);
        assert_eq!(order(block(3.0, 2.0, 1.0)), ["height", "width", "length"]);
        assert_eq!(order(block(1.0, 2.0, 3.0)), ["length", "width", "height"]);
        assert_eq!(order(block(2.0, 1.0, 3.0)), ["width", "length", "height"]);
        assert_eq!(order(block(1.0, 1.0, 1.0)), ["height", "width", "length"]);
    }

    #[test]
    fn sawn_faces_are_cut_before_their_opposites() {
        let sawn = [Face::Back, Face::Bottom, Face::Right];
        let cut = seats(&block(3.0, 2.0, 1.0), &sawn, Ends::OnEnd).map(|seat| seat.cut);
        assert_eq!(
            cut,
            [
                Face::Bottom,
                Face::Back,
                Face::Front,
                Face::Top,
                Face::Right,
                Face::Left
            ]
        );
    }
}
