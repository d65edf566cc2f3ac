//! What kind a product, a quotient or a sum of quantities is.
//!
//! Revolutions, radians and money count as dimensions of their own: a torque times a spindle speed
//! is no power until the 2 pi of a revolution is written, which the formulas do.

use super::kind::Kind;
use super::units::units;

/// Exponents of length, mass, time, revolution, plane angle and money.
type Dimension = [i8; 6];

fn dimension(kind: Kind) -> Dimension {
    match kind {
        Kind::Length => [1, 0, 0, 0, 0, 0],
        Kind::Area => [2, 0, 0, 0, 0, 0],
        Kind::Velocity => [1, 0, -1, 0, 0, 0],
        Kind::Acceleration => [1, 0, -2, 0, 0, 0],
        Kind::Time => [0, 0, 1, 0, 0, 0],
        Kind::RotationalSpeed => [0, 0, -1, 1, 0, 0],
        Kind::Frequency => [0, 0, -1, 0, 0, 0],
        Kind::Angle => [0, 0, 0, 0, 1, 0],
        Kind::Ratio | Kind::Count => [0, 0, 0, 0, 0, 0],
        Kind::Turns => [0, 0, 0, 1, 0, 0],
        Kind::Force => [1, 1, -2, 0, 0, 0],
        Kind::LineForce | Kind::Stiffness => [0, 1, -2, 0, 0, 0],
        Kind::Pressure => [-1, 1, -2, 0, 0, 0],
        Kind::Power => [2, 1, -3, 0, 0, 0],
        Kind::Torque | Kind::Energy => [2, 1, -2, 0, 0, 0],
        Kind::VolumeRate => [3, 0, -1, 0, 0, 0],
        Kind::AreaRate => [2, 0, -1, 0, 0, 0],
        Kind::Money => [0, 0, 0, 0, 0, 1],
        Kind::MoneyRate => [0, 0, -1, 0, 0, 1],
        Kind::Density => [-3, 1, 0, 0, 0, 0],
    }
}

/// The kind of this dimension; of several the first of [`Kind::ALL`].
fn kind_of(wanted: Dimension) -> Option<Kind> {
    Kind::ALL
        .iter()
        .copied()
        .find(|kind| dimension(*kind) == wanted)
}

fn combined(a: Kind, b: Kind, sign: i8) -> Option<Kind> {
    let mut result = dimension(a);
    for (exponent, other) in result.iter_mut().zip(dimension(b)) {
        *exponent += sign * other;
    }
    // A length times a count stays a length, and a stiffness times a ratio a stiffness.
    if result == dimension(a) && a != Kind::Count {
        return Some(a);
    }
    kind_of(result)
}

/// The kind of `a` times `b`; none where the product is no known kind.
///
/// ```
/// use gullet::quantity::{Kind, product};
/// assert_eq!(product(Kind::Force, Kind::Velocity), Some(Kind::Power));
/// assert_eq!(product(Kind::Power, Kind::Time), Some(Kind::Energy));
/// assert_eq!(product(Kind::Torque, Kind::RotationalSpeed), None, "2 pi of a revolution");
/// ```
pub fn product(a: Kind, b: Kind) -> Option<Kind> {
    if matches!(a, Kind::Ratio | Kind::Count) && !matches!(b, Kind::Ratio | Kind::Count) {
        return Some(b);
    }
    // A force times a length is a torque, of the same dimension.
    if matches!(
        (a, b),
        (Kind::Power, Kind::Time) | (Kind::Time, Kind::Power)
    ) {
        return Some(Kind::Energy);
    }
    combined(a, b, 1)
}

/// The kind of `a` over `b`; none where the quotient is no known kind.
///
/// ```
/// use gullet::quantity::{Kind, quotient};
/// assert_eq!(quotient(Kind::Length, Kind::Velocity), Some(Kind::Time));
/// assert_eq!(quotient(Kind::Velocity, Kind::Length), Some(Kind::Frequency), "no spindle speed");
/// ```
pub fn quotient(a: Kind, b: Kind) -> Option<Kind> {
    combined(a, b, -1)
}

/// Whether a quantity of one kind may stand for the other: both are printed in a common unit.
///
/// ```
/// use gullet::quantity::{Kind, interchangeable};
/// assert!(interchangeable(Kind::LineForce, Kind::Stiffness));
/// assert!(!interchangeable(Kind::Frequency, Kind::RotationalSpeed));
/// ```
pub fn interchangeable(a: Kind, b: Kind) -> bool {
    a == b
        || units(a).iter().any(|unit| {
            units(b)
                .iter()
                .any(|other| other.symbol == unit.symbol && other.size() == unit.size())
        })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quotients_undo_products() {
        for a in Kind::ALL {
            for b in Kind::ALL {
                if let Some(both) = product(*a, *b) {
                    let back = quotient(both, *b).map(dimension);
                    assert_eq!(back, Some(dimension(*a)), "{a:?} {b:?}");
                }
                assert_eq!(
                    product(*a, *b).map(dimension),
                    product(*b, *a).map(dimension)
                );
            }
        }
    }

    #[test]
    fn numbers_keep_the_kind() {
        for kind in Kind::ALL {
            let kept = if *kind == Kind::Count {
                Kind::Ratio
            } else {
                *kind
            };
            assert_eq!(product(*kind, Kind::Ratio), Some(kept));
            assert_eq!(product(Kind::Ratio, *kind), Some(kept));
            assert_eq!(quotient(*kind, Kind::Ratio), Some(kept));
            assert_eq!(quotient(*kind, *kind), Some(Kind::Ratio));
        }
    }

    #[test]
    fn revolutions_and_radians_are_not_dropped() {
        for other in [
            Kind::Torque,
            Kind::Length,
            Kind::Angle,
            Kind::RotationalSpeed,
        ] {
            assert_eq!(product(Kind::RotationalSpeed, other), None);
        }
        assert_eq!(product(Kind::Angle, Kind::Length), None);
        assert_eq!(
            product(Kind::RotationalSpeed, Kind::Time),
            Some(Kind::Turns)
        );
    }

    #[test]
    fn only_kinds_of_one_meaning_stand_for_each_other() {
        let mut pairs = Vec::new();
        for (index, a) in Kind::ALL.iter().enumerate() {
            for b in Kind::ALL.iter().skip(index + 1) {
                if interchangeable(*a, *b) {
                    pairs.push((*a, *b));
                }
            }
        }
        assert_eq!(
            pairs,
            [
                (Kind::Ratio, Kind::Count),
                (Kind::Ratio, Kind::Money),
                (Kind::Count, Kind::Money),
                (Kind::LineForce, Kind::Stiffness),
            ]
        );
    }
}
