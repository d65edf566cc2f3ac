//! The macro that a formula is written with, once.
//!
//! ```text
//! name {
//!     symbol "v_f", r"v_f";                         result's symbol, plain and LaTeX
//!     meaning "Table feed of a milling cutter.";
//!     argument_name symbol: Kind, from 0.0, "what it is";
//!         bounds, each optional: `above x` or `from x`, then `below y` or `to y`, SI values,
//!         written with other arguments' names where one bounds another, angles with `PI`;
//!         then `default x`
//!     -> Velocity;
//!     equation "v_f = f_z z n", r"v_f = f_z\, z\, n";
//!     valid "range and assumptions";
//!     source "author, title, place";
//!     example "feed_per_tooth=0.1 mm; teeth=4; spindle_speed=1000 rpm" => "400 mm/min", 1e-9, "source";
//!     require name: (condition), "text";            optional, for conditions over several arguments
//!     = f_z * z * n                                 the body, in the arguments' symbols
//! }
//! ```
//!
//! From this come a function that checks its arguments, and a module of the same name with
//! `value` (the bare body, total and branch-free), `step` (the body, shown to a [`Recorder`]) and
//! `FORMULA` (everything said about it).
//!
//! [`Recorder`]: super::Recorder

macro_rules! formulas {
    (topic $topic:literal; $($name:ident { $($rest:tt)* })*) => {
        $( $crate::formula::define::formula! { $topic $name $($rest)* } )*

        /// The formulas of this topic, in the order they are written.
        pub(super) const ALL: &[&$crate::formula::Formula] = &[$(&$name::FORMULA),*];
    };
}

macro_rules! formula {
    ($topic:literal $name:ident
        symbol $symbol:literal, $symbol_latex:literal;
        meaning $meaning:literal;
        $( $argument:ident $short:ident: $kind:ident
            $(, above $above:expr)? $(, from $from:expr)? $(, below $below:expr)? $(, to $to:expr)?
            $(, default $default:expr)?
            , $what:literal; )*
        -> $result:ident;
        equation $equation:literal, $latex:literal;
        valid $valid:literal;
        source $source:literal;
        example $example:literal => $expected:literal, $rtol:literal, $example_source:literal;
        $( require $blamed:ident: ($condition:expr), $condition_text:literal; )*
        = $body:expr
    ) => {
        #[doc = $meaning]
        #[doc = concat!("\n```text\n", $equation, "\n```\n\n# Parameters\n")]
        $( #[doc = concat!("- `", stringify!($argument), "`: ", stringify!($short), ", ", $what, " [[`", stringify!($kind), "`](crate::quantity::", stringify!($kind), ")]",
            $("; above `", stringify!($above), "`",)? $("; from `", stringify!($from), "`",)?
            $("; below `", stringify!($below), "`",)? $("; to `", stringify!($to), "`",)? )] )*
        #[doc = concat!("\n# Returns\n", $symbol, " [[`", stringify!($result), "`](crate::quantity::", stringify!($result), ")]")]
        #[doc = concat!("\n# Valid for\n", $valid)]
        #[doc = "\n# Errors\nEvery argument that is not finite or outside its admissible range, all in one error; a result that no number can hold."]
        #[doc = concat!("\n# Source\n", $source)]
        #[doc = concat!("\n# Example\n", $example_source, ":\n\n```\nlet result = gullet::evaluate(\"", stringify!($name), "\", \"", $example, "\")?;\nassert!(result.agrees_with(\"", $expected, "\", ", stringify!($rtol), ")?, \"{result}\");\n# Ok::<(), gullet::Error>(())\n```")]
        #[allow(clippy::too_many_arguments)]
        pub fn $name($($argument: $crate::quantity::$kind),*) -> $crate::Result<$crate::quantity::$result> {
            $name::FORMULA.call(&[$($argument.value),*]).map($crate::quantity::si)
        }

        #[doc = concat!("What is known of [`", stringify!($name), "`](fn@", stringify!($name), ") besides its value.")]
        pub mod $name {
            #[allow(unused_imports)]
            use $crate::quantity::{self, math::*, si};
            #[allow(unused_imports)]
            use $crate::formula::shared::*;

            /// The bare value, unchecked: finite for admissible arguments.
            #[allow(non_snake_case, clippy::too_many_arguments)]
            #[inline(always)]
            #[allow(dead_code)]
            pub(crate) fn value($($short: quantity::$kind),*) -> quantity::$result {
                $body
            }

            /// The bare value, shown to `recorder` as a worked step.
            #[allow(non_snake_case, clippy::too_many_arguments)]
            #[inline(always)]
            #[allow(dead_code)]
            pub(crate) fn step(recorder: &mut impl $crate::formula::Recorder, $($short: quantity::$kind),*) -> quantity::$result {
                let result = value($($short),*);
                recorder.record(&FORMULA, &[$($short.value),*], result.value);
                result
            }

            #[allow(unused_variables)]
            fn of(arguments: &[f64]) -> f64 {
                match arguments {
                    [$($argument),*] => value($(si(*$argument)),*).value,
                    _ => f64::NAN,
                }
            }

            /// Everything said about the formula.
            pub const FORMULA: $crate::formula::Formula = $crate::formula::Formula {
                name: stringify!($name),
                topic: $topic,
                symbol: $symbol,
                symbol_latex: $symbol_latex,
                meaning: $meaning,
                parameters: $crate::formula::define::parameters!([$($argument)*] $({
                    $argument $short $kind
                    [$(above $above)? $(from $from)?] [$(below $below)? $(to $to)?] [$($default)?]
                    $what
                })*),
                conditions: $crate::formula::define::conditions!([$($argument)*] $({
                    $blamed ($condition) $condition_text
                })*),
                result: quantity::Kind::$result,
                equation: $equation,
                latex: $latex,
                validity: $valid,
                source: $source,
                example: $crate::formula::Example {
                    arguments: $example,
                    expected: $expected,
                    relative_tolerance: $rtol,
                    source: $example_source,
                },
                of,
            };
        }
    };
}

/// The description of each argument; `$all` is the list of their names.
macro_rules! parameters {
    ($all:tt $({ $argument:ident $short:ident $kind:ident $lower:tt $upper:tt $default:tt $what:literal })*) => {
        &[$(
            $crate::formula::Parameter {
                name: stringify!($argument),
                symbol: stringify!($short),
                kind: $crate::quantity::Kind::$kind,
                meaning: $what,
                default: $crate::formula::define::optional!($default),
                lower: $crate::formula::define::limit!($all $lower),
                upper: $crate::formula::define::limit!($all $upper),
            }
        ),*]
    };
}

macro_rules! conditions {
    ($all:tt $({ $blamed:ident ($condition:expr) $text:literal })*) => {
        &[$(
            $crate::formula::Condition {
                blamed: stringify!($blamed),
                text: $text,
                holds: $crate::formula::define::over!($all $condition),
            }
        ),*]
    };
}

macro_rules! optional {
    ([]) => {
        None
    };
    ([$value:expr]) => {
        Some($value)
    };
}

/// A function of all arguments, written with their names.
macro_rules! over {
    ([$($argument:ident)*] $expression:expr) => {
        |arguments: &[f64]| {
            #[allow(unused_variables)]
            let [$($argument),*] = *arguments else { return Default::default() };
            $expression
        }
    };
}

macro_rules! limit {
    ($all:tt []) => { None };
    ($all:tt [above $bound:expr]) => { $crate::formula::define::limit!(@ $all false $bound) };
    ($all:tt [from $bound:expr]) => { $crate::formula::define::limit!(@ $all true $bound) };
    ($all:tt [below $bound:expr]) => { $crate::formula::define::limit!(@ $all false $bound) };
    ($all:tt [to $bound:expr]) => { $crate::formula::define::limit!(@ $all true $bound) };
    (@ $all:tt $inclusive:literal $bound:expr) => {
        Some($crate::formula::Limit {
            inclusive: $inclusive,
            text: stringify!($bound),
            value: $crate::formula::define::over!($all $bound),
        })
    };
}

pub(crate) use {conditions, formula, formulas, limit, optional, over, parameters};
