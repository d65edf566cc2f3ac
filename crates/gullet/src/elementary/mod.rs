//! Elementary functions that give the same bits on every platform.
//!
//! Every function here is a fixed sequence of additions, subtractions, multiplications, divisions,
//! square roots and bit operations on `f64`, each of which IEEE 754 rounds in one way only. So a
//! result does not depend on the platform's maths library, on the build profile, on whether a call
//! is scalar or part of a vectorised loop, nor on the width of the vectors. To keep that: no fused
//! multiply-add, no function of the standard library that is not exact or correctly rounded. It does
//! need IEEE doubles: not the x87 registers, and not a processor told to flush subnormals to zero.
//!
//! The functions are branch-free (both sides of a choice are computed, then one is selected), have
//! no tables and no loops, and are inlined, so that a plain loop over slices vectorises. They are
//! total: no argument panics, and a value outside the domain gives what IEEE 754 and C give, with
//! two narrowings for [`pow`]. Which of the NaNs a NaN result is, is not said.
//!
//! | function | furthest from the correctly rounded result, ulp | range of that bound |
//! |---|---|---|
//! | [`exp`] | 1 | every argument, gradual underflow included |
//! | [`ln`] | 1 | every argument |
//! | [`pow`] | 2 | every `x >= 0`, every `y`; 2 only for `abs(y)` in the thousands |
//! | [`fractional_power`] | 2 | every positive `x`, `abs(y) <= 1` |
//! | [`sin`], [`cos`], [`tan`] | 1 | `abs(x) <= 16384` |
//! | [`asin`], [`acos`], [`atan`] | 1 | every argument |
//! | [`inverse_half_versine`] | 1 | every argument |
//!
//! An ulp is the distance between neighbouring numbers at the correctly rounded result.
//!
//! The polynomials are minimax fits of this project (Remez exchange at 200 bits or more of
//! the error relative to the result). All but those of [`exp`] and [`fractional_power`] have their leading coefficients rounded
//! one after another, the rest refitted each time. The stated degree, interval and largest error are
//! those of the coefficients as rounded.

/// `c0 + x c1 + x^2 c2 + ...`, summed in pairs, pairs of pairs and so on: a few multiplications more
/// than one chain, but so much less waiting that it is the faster in a loop.
macro_rules! polynomial {
    ($x:expr; $($c:expr),+ $(,)?) => {{
        let x = $x;
        polynomial!(@pairs x; []; $($c,)+)
    }};
    (@pairs $x:ident; [$last:expr,];) => { $last };
    (@pairs $x:ident; [$($done:expr,)*]; $a:expr, $b:expr, $($rest:expr,)*) => {
        polynomial!(@pairs $x; [$($done,)* ($a + $x * $b),]; $($rest,)*)
    };
    (@pairs $x:ident; [$($done:expr,)+]; $($a:expr,)?) => {{
        let square = $x * $x;
        polynomial!(@pairs square; []; $($done,)+ $($a,)?)
    }};
}

mod bits;
mod exponential;
mod inverse;
mod trigonometric;

pub use bits::{ceil, floor};
pub use exponential::{exp, fractional_power, ln, pow};
pub use inverse::{acos, asin, atan, inverse_half_versine};
pub use trigonometric::{cos, sin, tan};
