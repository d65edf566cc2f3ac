//! Studies: every row has the bits of the scalar call, or the code of its error.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "study/draw.rs"]
mod draw;
#[path = "study/parity.rs"]
mod parity;
#[path = "random.rs"]
mod random;
#[path = "study/uncertainty.rs"]
mod uncertainty;
