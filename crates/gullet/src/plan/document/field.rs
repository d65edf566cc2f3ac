//! How sections, keys and the rules between them are described.

use super::key::KeyReader;
use super::node::Node;
use crate::quantity::Kind;

/// A section of a document with its keys.
#[derive(Debug)]
pub(in crate::plan) struct Section {
    /// Its name; empty for the keys that stand before every section.
    pub(in crate::plan) name: &'static str,
    /// What it describes.
    pub(in crate::plan) meaning: &'static str,
    /// Whether it must be there.
    pub(in crate::plan) required: bool,
    /// Its keys, in the order of the reference.
    pub(in crate::plan) fields: &'static [Field],
    /// What holds between its keys.
    pub(in crate::plan) rules: &'static [Rule],
}

/// A key.
#[derive(Debug, Clone, Copy)]
pub(in crate::plan) struct Field {
    pub(in crate::plan) key: &'static str,
    pub(in crate::plan) shape: Shape,
    pub(in crate::plan) presence: Presence,
    /// The value in an example, as TOML writes it but without quotes or brackets.
    pub(in crate::plan) example: &'static str,
    pub(in crate::plan) meaning: &'static str,
}

/// What may stand behind a key.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) enum Shape {
    /// Free text of one line.
    Text,
    /// Text of a number with a unit; a bare number is refused.
    Quantity(Kind),
    /// A number, or text of a number with or without %.
    Ratio,
    /// A whole number from 1.
    Count,
    /// true or false.
    Flag,
    /// One of these words.
    Choice(&'static [&'static str]),
    /// A list of texts, each a number with a unit.
    List(Kind),
    /// A list of these words, each at most once.
    Words(&'static [&'static str]),
}

/// What holds where a key is left out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) enum Presence {
    /// It must be given.
    Required,
    /// It must be given unless this other key of the section is.
    RequiredUnless(&'static str),
    /// It may be left out; the words say what holds then.
    Optional(&'static str),
    /// Left out, it reads as this.
    Default(&'static str),
    /// Left out, it reads as this, and the card states it with this reason.
    Assumed(&'static str, &'static str),
}

/// One way to say something: keys that belong together.
#[derive(Debug)]
pub(in crate::plan) struct Group {
    /// Keys that are needed for this way.
    pub(in crate::plan) needs: &'static [&'static str],
    /// Keys that may join them.
    pub(in crate::plan) may: &'static [&'static str],
}

impl Group {
    /// Every key of the group.
    pub(super) fn keys(&self) -> impl Iterator<Item = &'static str> {
        self.needs.iter().chain(self.may).copied()
    }

    /// The needed keys as words.
    pub(super) fn words(&self) -> String {
        self.needs.join(" with ")
    }
}

/// What holds between the keys of a section.
#[derive(Debug)]
pub(in crate::plan) enum Rule {
    /// Exactly one group is given, in full. Where the key `unless` is given, none or a part of one
    /// group will do.
    OneOf {
        groups: &'static [Group],
        unless: Option<&'static str>,
    },
    /// `key` belongs to documents whose key `other` is this word: needed there or not, allowed
    /// elsewhere or not.
    With {
        key: &'static str,
        other: &'static str,
        word: &'static str,
        needed: bool,
        elsewhere: bool,
    },
}

/// The type a key is read as.
pub(in crate::plan) trait Form {
    /// What reading gives.
    type Out;
    /// What the key may hold.
    const SHAPE: Shape;
    /// Reads the value; none where a problem was reported.
    fn read(node: &Node, key: &mut KeyReader<'_>) -> Option<Self::Out>;
}

/// A type whose values are chosen by words.
pub(in crate::plan) trait Word: Copy + 'static {
    /// The words.
    const WORDS: &'static [&'static str];
    /// The value of the word at this place.
    fn at(index: usize) -> Option<Self>;
}

/// The forms of keys.
pub(in crate::plan) mod form {
    use super::super::key::KeyReader;
    use super::super::node::Node;
    use super::{Form, Shape, Word};
    use crate::quantity::{self, Kind, si};
    use core::marker::PhantomData;

    /// Free text of one line.
    pub(in crate::plan) struct Text;
    /// A whole number from 1.
    pub(in crate::plan) struct Count;
    /// A pure number.
    pub(in crate::plan) struct Ratio;
    /// true or false.
    pub(in crate::plan) struct Flag;
    /// One word of a list.
    pub(in crate::plan) struct Choice<T>(PhantomData<T>);
    /// A list of quantities.
    pub(in crate::plan) struct List<T>(PhantomData<T>);
    /// Words of a list, each at most once.
    pub(in crate::plan) struct Words<T>(PhantomData<T>);

    impl Form for Text {
        type Out = String;
        const SHAPE: Shape = Shape::Text;
        fn read(node: &Node, key: &mut KeyReader<'_>) -> Option<String> {
            key.text(node)
        }
    }

    impl Form for Count {
        type Out = u32;
        const SHAPE: Shape = Shape::Count;
        fn read(node: &Node, key: &mut KeyReader<'_>) -> Option<u32> {
            key.count(node)
        }
    }

    impl Form for Ratio {
        type Out = quantity::Ratio;
        const SHAPE: Shape = Shape::Ratio;
        fn read(node: &Node, key: &mut KeyReader<'_>) -> Option<quantity::Ratio> {
            key.ratio(node).map(si)
        }
    }

    impl Form for Flag {
        type Out = bool;
        const SHAPE: Shape = Shape::Flag;
        fn read(node: &Node, key: &mut KeyReader<'_>) -> Option<bool> {
            key.flag(node)
        }
    }

    impl<T: Word> Form for Choice<T> {
        type Out = T;
        const SHAPE: Shape = Shape::Choice(T::WORDS);
        fn read(node: &Node, key: &mut KeyReader<'_>) -> Option<T> {
            T::at(key.choice(node, T::WORDS)?)
        }
    }

    impl<T: Word> Form for Words<T> {
        type Out = Vec<T>;
        const SHAPE: Shape = Shape::Words(T::WORDS);
        fn read(node: &Node, key: &mut KeyReader<'_>) -> Option<Vec<T>> {
            let places = key.words(node, T::WORDS)?;
            places.into_iter().map(T::at).collect()
        }
    }

    macro_rules! quantities {
        ($($kind:ident),* $(,)?) => {$(
            #[doc = concat!("Text of a ", stringify!($kind), " with its unit.")]
            pub(in crate::plan) struct $kind;

            impl Form for $kind {
                type Out = quantity::$kind;
                const SHAPE: Shape = Shape::Quantity(Kind::$kind);
                fn read(node: &Node, key: &mut KeyReader<'_>) -> Option<quantity::$kind> {
                    key.quantity(node, Kind::$kind).map(si)
                }
            }

            impl Form for List<$kind> {
                type Out = Vec<quantity::$kind>;
                const SHAPE: Shape = Shape::List(Kind::$kind);
                fn read(node: &Node, key: &mut KeyReader<'_>) -> Option<Vec<quantity::$kind>> {
                    Some(key.list(node, Kind::$kind)?.into_iter().map(si).collect())
                }
            }
        )*};
    }

    quantities!(
        Acceleration,
        Angle,
        Force,
        Length,
        MoneyRate,
        Power,
        Pressure,
        RotationalSpeed,
        Time,
        Torque,
        Velocity,
    );
}
