//! Books as people break them: each file in `broken/` beside the faults that it must give, all of them at once.

use std::fs;
use std::path::PathBuf;

use pourwright::document::LoadedBook;
use serde_json::Value;

/// The faults of a broken book as `[path, code]`, in the order in which they are told.
fn faults(text: &str) -> Vec<[String; 2]> {
    let faults = LoadedBook::from_text(text).expect_err("a broken book");
    for fault in faults.iter() {
        // A sentence says what is wrong, another what would do.
        for said in [&fault.message, &fault.help] {
            let first = said.chars().next().expect("a sentence");
            assert!(!first.is_lowercase(), "{fault}");
            assert!(said.ends_with(['.', '?']), "{fault}");
        }
    }
    faults.iter().map(|fault| [fault.path.clone(), fault.code.to_string()]).collect()
}

#[test]
fn every_broken_book_says_all_that_is_wrong() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("documents/broken");
    let mut books = 0;
    for entry in fs::read_dir(&folder).expect("the folder") {
        let path = entry.expect("a file").path();
        if path.to_string_lossy().ends_with(".faults.json") {
            continue;
        }
        books += 1;
        let text = fs::read_to_string(&path).expect("the book");
        let expected = fs::read_to_string(path.with_extension("faults.json")).expect("its faults");
        let expected: Value = serde_json::from_str(&expected).expect("a list");
        assert_eq!(serde_json::json!(faults(&text)), expected, "{}", path.display());
    }
    assert!(books >= 10, "{books}");
}
