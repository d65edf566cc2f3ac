//! The macro that a section is written with, once.

macro_rules! key {
    ($field:ident) => {
        stringify!($field)
    };
    ($field:ident $key:literal) => {
        $key
    };
}

/// Writes a section as a struct with one field a key, and its description.
///
/// Form of an entry: `name [as "key"]: Form, presence, "example", "meaning";`.
macro_rules! keys {
    (
        $(#[doc = $doc:literal])+
        struct $Keys:ident = $name:literal, required: $required:literal, rules: [$($rule:expr),* $(,)?];
        $($field:ident $(as $key:literal)?: $form:ty, $presence:expr, $example:literal, $meaning:literal;)*
    ) => {
        $(#[doc = $doc])+
        pub(in crate::plan) struct $Keys {
            $(#[doc = $meaning] pub(in crate::plan) $field: Option<<$form as $crate::plan::document::Form>::Out>,)*
        }

        impl $crate::plan::document::Keys for $Keys {
            fn section() -> &'static $crate::plan::document::Section {
                static SECTION: $crate::plan::document::Section = $crate::plan::document::Section {
                    name: $name,
                    meaning: concat!($($doc),+).trim_ascii(),
                    required: $required,
                    fields: &[$($crate::plan::document::Field {
                        key: $crate::plan::document::key!($field $($key)?),
                        shape: <$form as $crate::plan::document::Form>::SHAPE,
                        presence: $presence,
                        example: $example,
                        meaning: $meaning,
                    },)*],
                    rules: &[$($rule),*],
                };
                &SECTION
            }

            fn read(section: &mut $crate::plan::document::SectionReader<'_>) -> $Keys {
                $Keys { $($field: section.take::<$form>($crate::plan::document::key!($field $($key)?)),)* }
            }
        }
    };
}

pub(in crate::plan) use {key, keys};
