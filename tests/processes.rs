//! Operations that are described once: every one is held to the same promises.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "processes/band_sawing.rs"]
mod band_sawing;
#[path = "processes/bench.rs"]
mod bench;
#[path = "processes/boring.rs"]
mod boring;
#[path = "processes/description.rs"]
mod description;
#[path = "processes/facing.rs"]
mod facing;
#[path = "processes/hand.rs"]
mod hand;
#[path = "processes/parity.rs"]
mod parity;
#[path = "processes/threading.rs"]
mod threading;
#[path = "processes/turning.rs"]
mod turning;
