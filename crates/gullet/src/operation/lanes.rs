//! Records of quantities that also come as blocks of rows, so that one function serves the scalar
//! call and the columns.

/// Rows of a block: small enough that a block with all its columns stays in the cache.
pub(crate) const LANES: usize = 64;

/// Declares a record of quantities and the block that holds [`LANES`] of them, a column a field.
macro_rules! lanes {
    ($(#[$doc:meta])* $name:ident, $block:ident { $($(#[$field_doc:meta])* $field:ident: $kind:ident,)* }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy)]
        pub(crate) struct $name {
            $($(#[$field_doc])* pub $field: $crate::quantity::$kind,)*
        }

        impl $name {
            /// Every field the same SI value.
            #[allow(dead_code)]
            pub fn every(value: f64) -> $name {
                $name { $($field: $crate::quantity::si(value),)* }
            }
        }

        #[doc = concat!("A block of rows of [`", stringify!($name), "`], in SI values.")]
        #[derive(Clone)]
        pub(crate) struct $block {
            $(pub $field: [f64; $crate::operation::lanes::LANES],)*
        }

        impl $block {
            /// Every field of every row the same.
            pub fn every(value: f64) -> $block {
                $block { $($field: [value; $crate::operation::lanes::LANES],)* }
            }

            /// Every row the same.
            #[allow(dead_code)]
            pub fn fill(&mut self, row: &$name) {
                $(self.$field = [row.$field.value; $crate::operation::lanes::LANES];)*
            }

            #[allow(dead_code)]
            #[inline(always)]
            pub fn get(&self, lane: usize) -> $name {
                $name { $($field: $crate::quantity::si(self.$field[lane]),)* }
            }

            #[allow(dead_code)]
            #[inline(always)]
            pub fn set(&mut self, lane: usize, row: $name) {
                $(self.$field[lane] = row.$field.value;)*
            }
        }
    };
}

pub(crate) use lanes;
