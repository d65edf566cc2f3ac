//! Command line of gullet.
fn main() {}
