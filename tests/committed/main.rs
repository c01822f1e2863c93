//! What is generated and committed is fresh: JSON Schemas, the reference of fields, the table of error codes, the parameter
//! texts, what is plausible, the requests, the vectors, and the examples of the README.
//!
//! `UPDATE=1 cargo test -p pourwright-tests --test committed` writes them again.

mod calls;
mod errors;
mod fields;
mod parameters;
mod plausible;
mod readme;
mod requests;
mod samples;
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

/// The names of the broken books of `tests/documents/broken/`.
fn broken_books() -> Vec<String> {
    let files = std::fs::read_dir(root().join("tests/documents/broken")).unwrap();
    let names = files.map(|file| file.unwrap().file_name().into_string().unwrap());
    let mut names: Vec<_> = names.filter(|name| !name.ends_with(".faults.json")).collect();
    names.sort();
    names
}

/// Writes the answers of this door where all doors do, `tests/doors`, if it is asked for.
fn write_answers(name: &str, answers: &str) {
    if let Some(folder) = std::env::var_os("POURWRIGHT_ANSWERS").filter(|folder| !folder.is_empty())
    {
        let path = PathBuf::from(folder).join(format!("{name}.jsonl"));
        std::fs::write(&path, answers).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    }
}

/// Fails unless the file at `path` holds `wanted`; writes it there under `UPDATE=1`.
fn fresh(path: &str, wanted: &str) {
    let found = std::fs::read_to_string(root().join(path)).unwrap_or_default();
    if found != wanted && std::env::var_os("UPDATE").is_some() {
        std::fs::write(root().join(path), wanted).unwrap_or_else(|e| panic!("{path}: {e}"));
        return;
    }
    assert!(
        found == wanted,
        "{path} is stale: run UPDATE=1 cargo test -p pourwright-tests --test committed"
    );
}
