//! What is committed but made from the code is fresh: JSON Schemas, the table of error codes, the
//! parameter texts, the vectors, and the examples of the README.
//!
//! `UPDATE=1 cargo test -p pourwright-tests --test committed` writes schemas, error table and vectors anew.

mod errors;
mod fields;
mod parameters;
mod readme;
mod schemas;
mod vectors;

use std::path::{Path, PathBuf};

/// The root of the repository.
fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn read(path: &str) -> String {
    std::fs::read_to_string(root().join(path)).unwrap_or_else(|e| panic!("{path}: {e}"))
}

/// Fails unless the file at `path` holds `wanted`; writes it there under `UPDATE=1`.
fn fresh(path: &str, wanted: &str) {
    if std::env::var_os("UPDATE").is_some() {
        std::fs::write(root().join(path), wanted).unwrap_or_else(|e| panic!("{path}: {e}"));
    }
    let found = std::fs::read_to_string(root().join(path)).unwrap_or_default();
    assert!(
        found == wanted,
        "{path} is stale: run UPDATE=1 cargo test -p pourwright-tests --test committed"
    );
}
