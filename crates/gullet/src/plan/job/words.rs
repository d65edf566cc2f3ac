//! The words that keys are chosen by.

use super::super::document::Word;
use super::Strategy;
use crate::model::{Direction, Machine, Practice, SpeedChoice};
use crate::operation::Operation;
use crate::quantity::UnitSystem;
use crate::table::{Iso513, ToolMaterial};

macro_rules! words {
    ($($type:ty { $($word:literal => $value:expr),* $(,)? })*) => {$(
        impl Word for $type {
            const WORDS: &'static [&'static str] = &[$($word),*];
            fn at(index: usize) -> Option<$type> {
                let values: &[$type] = &[$($value),*];
                values.get(index).copied()
            }
        }
    )*};
}

/// Shape of the cutting end, before its radius or angle is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) enum End {
    Square,
    CornerRadius,
    BallNose,
    FaceMill,
}

/// The one feed that is a word.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) struct ByHand;

/// How the cut runs in the vise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) enum Along {
    Jaws,
    AcrossJaws,
}

/// Which way the readout counts while stock is removed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) enum Counts {
    Up,
    Down,
}

words! {
    UnitSystem { "metric" => UnitSystem::Metric, "inch" => UnitSystem::Inch }
    Iso513 {
        "P" => Iso513::P, "M" => Iso513::M, "K" => Iso513::K,
        "N" => Iso513::N, "S" => Iso513::S, "H" => Iso513::H,
    }
    ToolMaterial {
        "HSS" => ToolMaterial::Hss,
        "HSS-Co" => ToolMaterial::HssCo,
        "uncoated carbide" => ToolMaterial::UncoatedCarbide,
        "coated carbide" => ToolMaterial::CoatedCarbide,
    }
    End {
        "square" => End::Square,
        "corner-radius" => End::CornerRadius,
        "ball-nose" => End::BallNose,
        "face-mill" => End::FaceMill,
    }
    ByHand { "hand" => ByHand }
    Along { "along-jaws" => Along::Jaws, "across-jaws" => Along::AcrossJaws }
    SpeedChoice { "low" => SpeedChoice::Low, "start" => SpeedChoice::Start }
    Direction { "conventional" => Direction::Conventional, "climb" => Direction::Climb }
    Operation {
        "side-milling" => Operation::SideMilling,
        "slotting" => Operation::Slotting,
        "face-milling" => Operation::FaceMilling,
    }
    Strategy { "even" => Strategy::Even, "deepest-first" => Strategy::DeepestFirst }
    Counts { "up" => Counts::Up, "down" => Counts::Down }
}

/// Name of a built-in machine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) struct MachineName(pub(in crate::plan) &'static str);

impl Word for MachineName {
    const WORDS: &'static [&'static str] = Machine::BUILTIN;
    fn at(index: usize) -> Option<MachineName> {
        Machine::BUILTIN.get(index).copied().map(MachineName)
    }
}

/// Name of a built-in practice.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) struct PracticeName(pub(in crate::plan) &'static str);

impl Word for PracticeName {
    const WORDS: &'static [&'static str] = Practice::BUILTIN;
    fn at(index: usize) -> Option<PracticeName> {
        Practice::BUILTIN.get(index).copied().map(PracticeName)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_those_that_cards_print() {
        for (index, word) in Operation::WORDS.iter().enumerate() {
            assert_eq!(Operation::at(index).map(Operation::name), Some(*word));
        }
        assert_eq!(Operation::WORDS.len(), Operation::ALL.len());
        for (index, word) in Direction::WORDS.iter().enumerate() {
            assert_eq!(Direction::at(index).map(Direction::name), Some(*word));
        }
    }
}
