//! The C ABI of pourwright. Its contract is at the top of `include/pourwright.h`, which is made from this crate.
//!
//! Three levels: *scalar* calls on plain numbers, *columnar* calls on arrays of them, *documents* as JSON. The maths
//! is the core's; here pointers become references, numbers quantities, and errors a status and a list of faults.
//!
//! Where Rust has a type with the layout of a C pointer, the signature has that type: `Option<&T>` is a `const T *`
//! that may be null, `Option<&mut MaybeUninit<T>>` one to write to, `Option<Box<T>>` a handle that is given back. So
//! what is left of `unsafe` is text, arrays, columns and the floating-point registers.

#![deny(unsafe_op_in_unsafe_fn)]
#![deny(clippy::undocumented_unsafe_blocks)]
// What every pointer must be is said once, at the top of the header.
#![allow(clippy::missing_safety_doc)]
#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::indexing_slicing,
        clippy::string_slice,
        clippy::panic,
        clippy::unreachable
    )
)]

#[cfg(panic = "abort")]
compile_error!(
    "With panic = \"abort\" a panic would take the host down: build this crate with panic = \"unwind\"."
);

// The header follows this order.
mod status;

mod error;

mod report;

mod call;

mod column;

#[rustfmt::skip] // as the generator writes it
mod calculations;

mod convert;

mod columnar;

mod document;

mod book;

mod mix;

mod failure;
mod float;
mod guard;
mod memory;
mod schema;

pub use book::*;
pub use calculations::*;
pub use call::{POUR_OMITTED, POUR_OMITTED_COUNT};
pub use column::{pour_column, pour_result_column};
pub use columnar::*;
pub use convert::*;
pub use document::*;
pub use error::Error;
pub use mix::*;
pub use report::*;
pub use status::*;

use std::ffi::c_char;

/// The version of this interface. It goes up when a program that was compiled against an older header
/// could no longer run with this library; new functions and new status numbers do not raise it.
pub const POUR_ABI_VERSION: u32 = 1;

/// The [`POUR_ABI_VERSION`] of the library that is loaded. A host compares it with that of its header.
#[unsafe(no_mangle)]
pub extern "C" fn pour_abi_version() -> u32 {
    POUR_ABI_VERSION
}

/// The version of the library that is loaded, such as `"0.1.0"`. The text belongs to the library: it is never freed.
#[unsafe(no_mangle)]
pub extern "C" fn pour_version() -> *const c_char {
    const VERSION: &std::ffi::CStr = match std::ffi::CStr::from_bytes_with_nul(
        concat!(env!("CARGO_PKG_VERSION"), "\0").as_bytes(),
    ) {
        Ok(version) => version,
        Err(_) => c"",
    };
    VERSION.as_ptr()
}

/// Panics inside the guard, like a defect of the library would. Only in builds for the tests.
#[cfg(feature = "panic-test")]
#[unsafe(no_mangle)]
#[allow(clippy::panic)] // what it is for
pub extern "C" fn pour_test_panic(error: Option<&mut std::mem::MaybeUninit<Box<Error>>>) -> i32 {
    guard::guard(error, &mut || panic!("a panic on purpose"))
}

// What may be used by several threads at once, and what may move from one to another.
const _: () = {
    const fn shared<T: Send + Sync>() {}
    const fn moved<T: Send>() {}
    shared::<Book>();
    shared::<Plan>();
    shared::<Error>();
    moved::<Mix>();
};
