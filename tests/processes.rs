//! Operations that are described once: every one is held to the same promises.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "processes/arcs.rs"]
mod arcs;
#[path = "processes/bench.rs"]
mod bench;
#[path = "processes/description.rs"]
mod description;
#[path = "processes/parity.rs"]
mod parity;
#[path = "processes/recomputed.rs"]
mod recomputed;
#[path = "processes/rows.rs"]
mod rows;
