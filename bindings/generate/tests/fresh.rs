//! What is committed is what the table gives.

use std::fs;

#[test]
fn every_generated_file_is_fresh() {
    let stale: Vec<&str> = pourwright_generate::files()
        .iter()
        .filter(|file| !fs::read_to_string(file.place()).is_ok_and(|found| found == file.text))
        .map(|file| file.path)
        .collect();
    assert!(stale.is_empty(), "{stale:?} are stale: run cargo run -p pourwright-generate");
}
