//! The one command for every gate.
fn main() {}
