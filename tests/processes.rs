//! Operations that are described once: every one is held to the same promises.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "processes/arcs.rs"]
mod arcs;
#[path = "processes/band_sawing.rs"]
mod band_sawing;
#[path = "processes/bench.rs"]
mod bench;
#[path = "processes/boring.rs"]
mod boring;
#[path = "processes/description.rs"]
mod description;
#[path = "processes/drilling.rs"]
mod drilling;
#[path = "processes/facing.rs"]
mod facing;
#[path = "processes/hand.rs"]
mod hand;
#[path = "processes/holes.rs"]
mod holes;
#[path = "processes/parity.rs"]
mod parity;
#[path = "random.rs"]
mod random;
#[path = "processes/recomputed.rs"]
mod recomputed;
#[path = "processes/rows.rs"]
mod rows;
#[path = "processes/threading.rs"]
mod threading;
#[path = "processes/turning.rs"]
mod turning;
