//! Which version this library is.

use core::ffi::c_char;

/// Version of the library in use as text, such as "0.1.0"; static.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_version() -> *const c_char {
    concat!(env!("CARGO_PKG_VERSION"), "\0").as_ptr().cast()
}

/// Version of the library in use as a number: compare it with GULLET_VERSION_NUMBER of the header
/// a program was compiled with.
#[unsafe(no_mangle)]
pub extern "C" fn gullet_version_number() -> u32 {
    let part = |text: &str| text.parse::<u32>().unwrap_or(0);
    part(env!("CARGO_PKG_VERSION_MAJOR")) * 1_000_000
        + part(env!("CARGO_PKG_VERSION_MINOR")) * 1_000
        + part(env!("CARGO_PKG_VERSION_PATCH"))
}
