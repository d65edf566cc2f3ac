//! The macro that an operation's inputs and results are written with, once.
//!
//! ```text
//! process! {
//!     Drilling "drilling", "Drilling";
//!     meaning "One sentence.";
//!     tables Some(TableProcess::Drilling);
//!     inputs {
//!         diameter D: Length, above 0.0, "what it is";      as the arguments of a formula
//!     }
//!     choices {
//!         hole: ["through", "blind"], 0.0, "what is chosen";  words, place of the default
//!     }
//!     results {
//!         time: Time, "what it is";
//!     }
//!     example "1018", Hss, "small-cnc-mill", "diameter=8.5 mm; depth=22 mm";
//!     limits [Thrust];
//!     cautions ["What can hurt."];
//! }
//! ```
//!
//! From this come the records `Own` and `Results` with their blocks of lanes, and `PROCESS`, what is
//! known of the operation. How it is computed is written below it as an `impl Operate`.

macro_rules! process {
    ($type:ident $name:literal, $title:literal;
        meaning $meaning:literal;
        tables $tables:expr;
        inputs { $( $input:ident $short:ident: $kind:ident
            $(, above $above:expr)? $(, from $from:expr)? $(, below $below:expr)? $(, to $to:expr)?
            $(, default $default:expr)?
            , $what:literal; )* }
        choices { $( $choice:ident: [$($word:literal),+], $chosen:expr, $choice_what:literal; )* }
        results { $( $result:ident: $result_kind:ident, $result_what:literal; )* }
        example $material:literal, $tool:ident, $machine:literal, $example:literal;
        limits [$($limit:ident),*];
        cautions [$($caution:literal),* $(,)?];
    ) => {
        #[doc = $meaning]
        pub(crate) struct $type;

        $crate::operation::lanes::lanes! {
            /// The operation's own inputs.
            Own, OwnBlock {
                $($input: $kind,)*
                $($choice: Ratio,)*
                /// 0 where the tables decide.
                spindle_speed: RotationalSpeed,
                /// 0 where the tables decide.
                feed: Length,
                /// Infinite where none is marked.
                maximum_speed: RotationalSpeed,
            }
        }

        $crate::operation::lanes::lanes! {
            /// What the operation gives.
            Results, ResultsBlock { $($result: $result_kind,)* }
        }

        #[allow(non_camel_case_types, dead_code)]
        enum Place { $($input,)* $($choice,)* spindle_speed, feed, maximum_speed }

        #[allow(non_camel_case_types, dead_code)]
        enum ResultPlace { $($result,)* }

        /// What is known of the operation.
        pub(crate) static PROCESS: $crate::operation::process::Process = $crate::operation::process::Process {
            name: $name,
            title: $title,
            meaning: $meaning,
            tables: $tables,
            inputs: $crate::operation::process::define::inputs!(
                [$($input)* $($choice)* spindle_speed feed maximum_speed]
                $({ $input $short $kind [$(above $above)? $(from $from)?] [$(below $below)? $(to $to)?] [$($default)?] $what [] })*
                $({ $choice $choice Ratio [from 0.0] [to [$($word),+].len() as f64 - 1.0] [$chosen] $choice_what [$($word),+] })*
                { spindle_speed n RotationalSpeed [above 0.0] [to 1e5] [0.0] "spindle speed to use instead of the table's" [] }
                { feed f Length [above 0.0] [to 1.0] [0.0] "feed per revolution, or per tooth of a milling cutter, to use instead of the table's" [] }
                { maximum_speed n_max RotationalSpeed [above 0.0] [to 1e5] [f64::INFINITY] "highest speed marked on the tool, the chuck or its holder" [] }
            ),
            results: &[$($crate::operation::cut::Field {
                name: stringify!($result),
                kind: $crate::quantity::Kind::$result_kind,
                meaning: $result_what,
                optional: false,
                value: None,
            }),*],
            limits: &[$($crate::operation::LimitName::$limit),*],
            example: $crate::operation::process::ProcessExample {
                material: $material,
                tool: $crate::table::ToolMaterial::$tool,
                machine: $machine,
                inputs: $example,
            },
            cautions: &[$($caution),*],
            cut: $crate::operation::process::report::cut::<$type>,
            study: $crate::study::process_kernel::<$type>,
        };

        impl $crate::operation::process::Shape for $type {
            type Own = Own;
            type OwnBlock = OwnBlock;
            type Results = Results;
            type ResultsBlock = ResultsBlock;

            fn process() -> &'static $crate::operation::process::Process {
                &PROCESS
            }

            fn own(values: &[f64]) -> Own {
                let value = |place: Place| values.get(place as usize).copied().unwrap_or(f64::NAN);
                Own {
                    $($input: $crate::quantity::si(value(Place::$input)),)*
                    $($choice: $crate::quantity::si(value(Place::$choice)),)*
                    spindle_speed: $crate::quantity::si(value(Place::spindle_speed)),
                    feed: $crate::quantity::si(value(Place::feed)),
                    maximum_speed: $crate::quantity::si(value(Place::maximum_speed)),
                }
            }

            #[inline(always)]
            fn asked(own: &Own) -> $crate::operation::process::settle::Asked {
                $crate::operation::process::settle::Asked {
                    spindle_speed: own.spindle_speed,
                    feed: own.feed,
                    maximum_speed: own.maximum_speed,
                }
            }

            fn values(results: &Results) -> Vec<f64> {
                vec![$(results.$result.value),*]
            }

            fn own_block() -> OwnBlock {
                OwnBlock::every(f64::NAN)
            }

            fn results_block() -> ResultsBlock {
                ResultsBlock::every(f64::NAN)
            }

            #[inline(always)]
            fn own_of(block: &OwnBlock, lane: usize) -> Own {
                block.get(lane)
            }

            #[inline(always)]
            fn results_of(block: &ResultsBlock, lane: usize) -> Results {
                block.get(lane)
            }

            #[inline(always)]
            fn set_results(block: &mut ResultsBlock, lane: usize, results: Results) {
                block.set(lane, results);
            }

            fn input_lanes(block: &mut OwnBlock, place: usize) -> Option<&mut $crate::operation::process::Lanes> {
                $(if place == Place::$input as usize { return Some(&mut block.$input); })*
                $(if place == Place::$choice as usize { return Some(&mut block.$choice); })*
                if place == Place::spindle_speed as usize { return Some(&mut block.spindle_speed); }
                if place == Place::feed as usize { return Some(&mut block.feed); }
                if place == Place::maximum_speed as usize { return Some(&mut block.maximum_speed); }
                None
            }

            fn result_lanes(block: &ResultsBlock, place: usize) -> Option<&$crate::operation::process::Lanes> {
                $(if place == ResultPlace::$result as usize { return Some(&block.$result); })*
                None
            }
        }
    };
}

/// The description of each input; `$all` is the list of their names.
macro_rules! inputs {
    ($all:tt $({ $argument:ident $short:ident $kind:ident $lower:tt $upper:tt $default:tt $what:literal [$($word:literal),*] })*) => {
        &[$($crate::operation::process::ProcessInput {
            parameter: $crate::formula::Parameter {
                name: stringify!($argument),
                symbol: stringify!($short),
                kind: $crate::quantity::Kind::$kind,
                meaning: $what,
                default: $crate::formula::define::optional!($default),
                lower: $crate::formula::define::limit!($all $lower),
                upper: $crate::formula::define::limit!($all $upper),
            },
            words: &[$($word),*],
        }),*]
    };
}

pub(crate) use {inputs, process};
