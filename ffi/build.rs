//! Gives the shared library the name by which programs that link to it will look for it.

use std::env;

/// Goes up when a program that was linked to an older library could no longer run with this one.
const ABI: u32 = 0;

fn main() {
    println!("cargo:rerun-if-changed=build.rs");
    match env::var("CARGO_CFG_TARGET_OS").as_deref() {
        Ok("linux" | "android" | "freebsd" | "netbsd" | "openbsd" | "dragonfly") => {
            println!("cargo:rustc-cdylib-link-arg=-Wl,-soname,libpourwright.so.{ABI}");
        }
        Ok("macos") => {
            println!(
                "cargo:rustc-cdylib-link-arg=-Wl,-install_name,@rpath/libpourwright.{ABI}.dylib"
            );
        }
        _ => {}
    }
}
