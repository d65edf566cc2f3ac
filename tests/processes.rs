//! Operations that are described once: every one is held to the same promises.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "processes/bench.rs"]
mod bench;
#[path = "processes/description.rs"]
mod description;
#[path = "processes/parity.rs"]
mod parity;
