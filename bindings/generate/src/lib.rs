//! Writes what the doors have of the calculations: signatures, types, defaults and texts, all from
//! [`pourwright::table`]. Nothing of a calculation is declared by hand at a door.
//!
//! One module per door, each with `files()`: what it writes. The results are committed; `cargo run -p
//! pourwright-generate` writes them again, and a test of this crate compares them.

pub mod c;
mod c_test;
mod calc;
mod csharp;
mod docs;
mod ffi_test;
mod java;
mod js;
mod lua;
mod php;
mod python;
mod ruby;
mod script;
mod sheets;
mod sqlite;
mod text;

use std::path::{Path, PathBuf};

pub use text::wrap;

/// A file that is made from the table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct File {
    /// The path, from the root of the repository.
    pub path: &'static str,
    /// Its text.
    pub text: String,
}

impl File {
    fn new(path: &'static str, text: String) -> Self {
        Self { path, text }
    }

    /// Its path.
    #[must_use]
    pub fn place(&self) -> PathBuf {
        root().join(self.path)
    }
}

/// The root of the repository.
#[must_use]
pub fn root() -> &'static Path {
    Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../.."))
}

/// All files, of all doors.
#[must_use]
pub fn files() -> Vec<File> {
    [
        c::files(),
        calc::files(),
        csharp::files(),
        docs::files(),
        java::files(),
        js::files(),
        lua::files(),
        php::files(),
        python::files(),
        ruby::files(),
        sheets::files(),
        sqlite::files(),
    ]
    .concat()
}
