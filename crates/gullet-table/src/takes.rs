//! What the rows of a study give: the inputs and choices of milling, or of one operation of
//! [`gullet::operation::process`].

use gullet::error::nearest;
use gullet::operation::Operation;
use gullet::operation::process::{self, Process, ProcessInput};
use gullet::quantity::Kind;
use gullet::study::{Choice, Input};

/// A number that rows give.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Number {
    /// Place among the inputs of its operation.
    pub place: usize,
    /// Name of its column, without the unit.
    pub name: &'static str,
    /// What it measures.
    pub kind: Kind,
    /// What it is, in words.
    pub meaning: &'static str,
    /// Whether a row may do without it.
    pub optional: bool,
}

/// What rows choose by a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pick {
    /// An entry of a list.
    Of(Choice),
    /// One of the words of an operation's own input.
    Word(Word),
}

/// An input of an operation that is a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Word {
    /// Place among the inputs of its operation.
    pub place: usize,
    /// Name of its column.
    pub name: &'static str,
    /// The words to choose between.
    pub words: &'static [&'static str],
    /// Place of the word that stands for "not given"; none where it must be given.
    pub default: Option<u32>,
}

impl Pick {
    /// Name of its column.
    pub fn name(&self) -> &'static str {
        match self {
            Pick::Of(choice) => choice.name(),
            Pick::Word(word) => word.name,
        }
    }
}

/// What the rows of a study give.
///
/// ```
/// use gullet_table::Takes;
/// let holes = Takes::of_operation(Some("drilling"));
/// assert_eq!(holes.number("diameter").map(|number| number.optional), Some(false));
/// assert!(holes.pick("hole").is_some());
/// assert!(Takes::of_operation(Some("side-milling")).number("axial_depth").is_some());
/// ```
#[derive(Debug, Clone)]
pub struct Takes {
    process: Option<&'static Process>,
    numbers: Vec<Number>,
    picks: Vec<Pick>,
}

/// The choices that every operation takes.
const SHARED: [Choice; 5] = [
    Choice::Material,
    Choice::Machine,
    Choice::Practice,
    Choice::Operation,
    Choice::CutterMaterial,
];

impl Takes {
    /// Of the operation that all rows have. Where none is named, rows are milling cuts, which may
    /// differ by row; a name that means nothing stands for the nearest one.
    pub fn of_operation(name: Option<&str>) -> Takes {
        let Some(name) = name else {
            return Takes::milling();
        };
        let meant = operation_named(name).or_else(|| nearest(name, operations()));
        let process = meant.and_then(|meant| process::find(meant).ok());
        process.map_or_else(Takes::milling, Takes::of)
    }

    /// Of the operation among constants, as [`Takes::of_operation`].
    pub(crate) fn of_constants(constants: &[(String, String)]) -> Takes {
        let named = constants
            .iter()
            .find(|(name, _)| name == Choice::Operation.name());
        Takes::of_operation(named.map(|(_, word)| word.as_str()))
    }

    /// Of milling cuts.
    pub(crate) fn milling() -> Takes {
        let number = |(place, input): (usize, &Input)| Number {
            place,
            name: input.name(),
            kind: input.kind(),
            meaning: input.meaning(),
            optional: input.optional(),
        };
        Takes {
            process: None,
            numbers: Input::ALL.iter().enumerate().map(number).collect(),
            picks: Choice::ALL.iter().map(|choice| Pick::Of(*choice)).collect(),
        }
    }

    fn of(process: &'static Process) -> Takes {
        let inputs = || process.inputs.iter().enumerate();
        let number = |(place, input): (usize, &ProcessInput)| Number {
            place,
            name: input.name(),
            kind: input.parameter.kind,
            meaning: input.parameter.meaning,
            optional: !input.required(),
        };
        let word = |(place, input): (usize, &ProcessInput)| {
            Pick::Word(Word {
                place,
                name: input.name(),
                words: input.words,
                default: input.parameter.default.map(|place| place as u32),
            })
        };
        let shared = SHARED.iter().map(|choice| Pick::Of(*choice));
        Takes {
            process: Some(process),
            numbers: inputs()
                .filter(|(_, input)| input.words.is_empty())
                .map(number)
                .collect(),
            picks: shared
                .chain(
                    inputs()
                        .filter(|(_, input)| !input.words.is_empty())
                        .map(word),
                )
                .collect(),
        }
    }

    /// The operation of all rows; none where they are milling cuts.
    pub fn process(&self) -> Option<&'static Process> {
        self.process
    }

    /// The numbers that rows give.
    pub fn numbers(&self) -> &[Number] {
        &self.numbers
    }

    /// What rows choose by words.
    pub fn picks(&self) -> &[Pick] {
        &self.picks
    }

    /// The number of this name, without its unit.
    pub fn number(&self, name: &str) -> Option<Number> {
        let mut all = self.numbers.iter().copied();
        all.find(|number| number.name == name)
    }

    /// The choice of this name.
    pub fn pick(&self, name: &str) -> Option<Pick> {
        let mut all = self.picks.iter().copied();
        all.find(|pick| pick.name() == name)
    }

    /// Every name of an input or choice.
    pub(crate) fn names(&self) -> impl Iterator<Item = &'static str> + '_ {
        let numbers = self.numbers.iter().map(|number| number.name);
        numbers.chain(self.picks.iter().map(Pick::name))
    }
}

/// Names of all operations, those of milling first.
pub(crate) fn operations() -> impl Iterator<Item = &'static str> + Clone {
    let milling = Operation::ALL.iter().map(|operation| operation.name());
    milling.chain(process::ALL.iter().map(|process| process.name))
}

/// The operation that a word means, as [`plain`] sees it.
pub(crate) fn operation_named(word: &str) -> Option<&'static str> {
    let wanted = plain(word.trim());
    operations().find(|name| plain(name) == wanted)
}

/// A word whatever its case and whether its parts are joined by `-`, `_` or a blank.
pub(crate) fn plain(text: &str) -> String {
    text.to_ascii_lowercase().replace(['_', ' '], "-")
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn names_of_inputs_and_choices_are_different_in_every_operation() {
        let all = process::ALL.iter().map(|process| Takes::of(process));
        for takes in all.chain([Takes::milling()]) {
            let different: BTreeSet<&str> = takes.names().collect();
            assert_eq!(different.len(), takes.names().count(), "{takes:?}");
        }
    }

    #[test]
    fn places_are_those_of_the_core() {
        for (place, input) in Input::ALL.iter().enumerate() {
            assert_eq!(*input as usize, place);
        }
        for process in process::ALL {
            let takes = Takes::of(process);
            let words = takes.picks().iter().filter_map(|pick| match pick {
                Pick::Word(word) => Some((word.name, word.place)),
                Pick::Of(_) => None,
            });
            let numbers = takes.numbers().iter().map(|it| (it.name, it.place));
            let all: Vec<(&str, usize)> = numbers.chain(words).collect();
            assert_eq!(all.len(), process.inputs.len());
            for (name, place) in all {
                assert_eq!(process.input(name).unwrap().0, place);
            }
        }
    }

    #[test]
    fn an_operation_is_found_however_its_words_are_joined_and_a_slip_means_the_nearest() {
        let process = |name| Takes::of_operation(name).process().map(|found| found.name);
        assert_eq!(process(Some("Drilling")), Some("drilling"));
        assert_eq!(process(Some("driling")), Some("drilling"));
        assert_eq!(process(Some("side_milling")), None);
        assert_eq!(process(Some("side-miling")), None);
        assert_eq!(process(None), None);
    }
}
