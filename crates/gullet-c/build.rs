//! The name a program looks for when it loads the shared library.

/// Grows with every change that programs must be built anew for; see DEVELOPERS.md.
const ABI: u32 = 0;

fn main() {
    println!("cargo:rerun-if-changed=build.rs");
    let system = std::env::var("CARGO_CFG_TARGET_OS").unwrap_or_default();
    match system.as_str() {
        "linux" | "android" | "freebsd" | "netbsd" | "openbsd" => {
            println!("cargo:rustc-cdylib-link-arg=-Wl,-soname,libgullet.so.{ABI}");
        }
        "macos" => {
            println!("cargo:rustc-cdylib-link-arg=-Wl,-install_name,@rpath/libgullet.{ABI}.dylib");
        }
        _ => {}
    }
}
