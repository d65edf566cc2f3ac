//! Inputs that know their own names, kinds, ranges and defaults, so that every face reads the same
//! ones.

/// A struct of quantities with a description of each, in the form of a formula's arguments.
macro_rules! inputs {
    (
        $(#[$doc:meta])*
        $name:ident ($owner:literal) {
            $( $argument:ident $symbol:ident: $kind:ident
                $(, above $above:expr)? $(, from $from:expr)? $(, below $below:expr)? $(, to $to:expr)?
                $(, default $default:expr)?
                , $what:literal; )*
        }
    ) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct $name {
            $(#[doc = concat!("`", stringify!($symbol), "`, ", $what, ".")] pub $argument: $crate::quantity::$kind,)*
        }

        impl $name {
            /// Every field in order: name, symbol, kind, meaning, default and admissible range.
            pub const PARAMETERS: &'static [$crate::formula::Parameter] =
                $crate::formula::define::parameters!([$($argument)*] $({
                    $argument $symbol $kind
                    [$(above $above)? $(from $from)?] [$(below $below)? $(to $to)?] [$($default)?]
                    $what
                })*);

            /// The fields from `(name, text)` pairs, defaults filled in.
            ///
            /// # Errors
            /// Every name that is unknown, given twice or missing, and every text that is no such
            /// quantity.
            pub fn read(given: &[(String, String)]) -> $crate::Result<$name> {
                let values = $crate::formula::read_parameters($owner, $name::PARAMETERS, given)?;
                let mut values = values.into_iter();
                // As many values as parameters, in their order.
                Ok($name { $($argument: $crate::quantity::si(values.next().unwrap_or(f64::NAN)),)* })
            }

            /// The fields from text: `"name=value; name=value"`.
            ///
            /// # Errors
            /// As [`Self::read`].
            pub fn from_text(text: &str) -> $crate::Result<$name> {
                $name::read(&$crate::formula::split_arguments(text)?)
            }

            /// SI values of the fields in order.
            pub fn si(&self) -> Vec<f64> {
                vec![$(self.$argument.value),*]
            }
        }
    };
}

pub(super) use inputs;
