//! The library with one function more, which panics: a C test sees that the panic stays inside.
#![allow(clippy::panic)]

use gullet_c::guard;

/// Panics inside the guard every entry runs in.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_provoke_panic() -> i32 {
    guard(|| panic!("provoked for a test"))
}
