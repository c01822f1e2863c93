//! The list of codes, `core/ERRORS.md`, from the enums themselves and from what the documents answer today.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use pourwright::codes::{COMMAND, STATED, enums};
use pourwright::document::LoadedBook;
use regex::Regex;
use serde_json::Value;

use crate::samples::Sample;
use crate::vectors::vectors;
use crate::{root, samples};

/// Codes that several enums share, each with one meaning.
const SHARED: &[&str] = &["out-of-range", "pot-without-cup"];

/// Codes of the typed API and of plain numbers. The reader of documents, or the planner before it asks, refuses what they
/// are about. `budget-memory` comes from the machine;
/// `heat-not-known`, `leftover-solver` and `split-deadlock` would be defects of the library. What a document is told of
/// `heat-out-of-reach` and of the codes of learning is a sentence of the answer, without a code.
const RUST_ONLY: &[&str] = &[
    "bad-property",
    "batch-above-cup-marks",
    "batch-pot-too-small",
    "bench-limit",
    "budget-memory",
    "budget-too-long",
    "color-wrong-bands",
    "color-wrong-doses",
    "correction-bad-number",
    "correction-empty-target",
    "correction-lengths",
    "correction-not-in-target",
    "correction-over-capacity",
    "cost-margin",
    "cost-material-twice",
    "cost-negative",
    "cost-no-weights",
    "cost-nothing-made",
    "cost-nothing-used",
    "cost-out-of-range",
    "cost-returned-too-much",
    "cost-share-out-of-range",
    "cover-lengths",
    "flake-no-scoop",
    "formula-bad-amount",
    "heat-not-known",
    "heat-nothing",
    "heat-out-of-reach",
    "heat-power",
    "learn-bad-book",
    "learn-bad-count",
    "learn-bad-reading",
    "learn-too-few-days",
    "leftover-bad-number",
    "leftover-lengths",
    "leftover-solver",
    "line-not-of-book",
    "mix-bad-factor",
    "mix-bad-mass",
    "mix-bad-temperature",
    "mix-unknown-material",
    "no-mold",
    "not-finite",
    "order-cycle",
    "order-no-such-node",
    "order-too-many",
    "plan-stopped",
    "pot-out-of-order",
    "pot-without-cup",
    "precedence-negative",
    "precedence-no-base",
    "precedence-out-of-range",
    "precedence-twice",
    "price-too-large",
    "record-pot-twice",
    "rounding-no-step",
    "sequence-bad-composition",
    "sequence-bad-number",
    "sequence-no-stage",
    "sequence-nothing-carries",
    "sequence-over-capacity",
    "sequence-over-heats",
    "softener-mixed-scales",
    "softener-other-scale",
    "split-bad-number",
    "split-bad-shot",
    "split-capacities",
    "split-deadlock",
    "split-least-over-capacity",
    "split-no-cup",
    "split-no-heat",
    "split-no-such-formula",
    "split-one-layer",
    "split-shot-too-large",
    "split-shot-too-long",
    "split-too-few-injectors",
    "split-unlike-shots",
    "system-unknown",
    "uncertainty-bad-freedom",
    "uncertainty-bad-input",
    "uncertainty-level",
    "uncertainty-no-number",
    "uncertainty-nothing-taken",
    "uncertainty-out-of-reach",
    "uncertainty-tool",
    "uncertainty-tool-figure",
    "uncertainty-voids",
    "unit-out-of-range",
    "unreadable",
];

/// Where each code is declared.
fn declared() -> BTreeMap<&'static str, BTreeSet<String>> {
    let mut codes: BTreeMap<&str, BTreeSet<String>> = BTreeMap::new();
    for listed in enums() {
        let of = listed.of.replace(' ', "");
        let of = of.rsplit("::").next().unwrap_or_default();
        for row in listed.codes {
            for variant in row.variants.split('|') {
                let end = |c: char| !c.is_alphanumeric();
                let name = variant.trim().rsplit("::").next().unwrap_or_default();
                let name = name.split(end).next().unwrap_or_default();
                codes.entry(row.code).or_default().insert(format!("`{of}::{name}`"));
            }
        }
    }
    for code in STATED {
        codes.entry(code).or_default().insert("documents".to_owned());
    }
    for code in COMMAND {
        codes.entry(code).or_default().insert("command line".to_owned());
    }
    codes
}

/// All objects with a code and a message in `value`, in their order.
fn said(value: &Value, found: &mut Vec<(String, String)>) {
    match value {
        Value::Array(all) => all.iter().for_each(|one| said(one, found)),
        Value::Object(fields) => {
            if let (Some(Value::String(code)), Some(message)) =
                (fields.get("code"), fields.get("message").or_else(|| fields.get("how")))
            {
                found.push((code.clone(), message.as_str().unwrap_or_default().to_owned()));
            }
            fields.values().for_each(|one| said(one, found));
        }
        _ => {}
    }
}

/// What the documents answer: every vector, sample and broken book.
fn answered() -> Vec<(String, String)> {
    let mut found = Vec::new();
    for answer in &vectors().answers {
        said(&serde_json::from_str(answer).unwrap(), &mut found);
    }
    for sample in samples::all() {
        said(&sample.answer, &mut found);
    }
    for name in crate::broken_books() {
        let book = crate::read(&format!("tests/documents/broken/{name}"));
        let faults = LoadedBook::from_text(&book).unwrap_err();
        found.extend(faults.iter().map(|fault| (fault.code.to_string(), fault.message.clone())));
    }
    found
}

#[test]
fn the_list_of_codes_is_fresh() {
    let (codes, answered) = (declared(), answered());
    let mut examples: BTreeMap<&str, &str> = BTreeMap::new();
    for (code, message) in &answered {
        examples.entry(code).or_insert(message);
    }
    let mut table = String::from(
        "# Codes of faults and notes\n\n\
         A fault has a code, a path (JSON Pointer), a message and a help. Codes are stable: programs may rely on them.\n\
         The message is an example, as a document gets it.\n\n\
         | code | message, an example | from |\n| --- | --- | --- |\n",
    );
    for (code, from) in &codes {
        let from: Vec<&str> = from.iter().map(String::as_str).collect();
        let example = match examples.get(code) {
            Some(message) => message.replace('|', "\\|").replace('\n', " "),
            None if COMMAND.contains(code) => String::from("*command line only*"),
            None if RUST_ONLY.contains(code) => String::from("*Rust API only*"),
            None => String::new(),
        };
        table.push_str(&format!("| `{code}` | {example} | {} |\n", from.join(", ")));
    }
    crate::fresh("core/ERRORS.md", &table);
}

/// A code that is answered is declared; one that is declared is answered, or is known to be out of reach for a document.
#[test]
fn what_is_declared_is_answered_and_nothing_else() {
    let codes = declared();
    let answered: BTreeSet<String> = answered().into_iter().map(|(code, _)| code).collect();
    let strange: Vec<_> =
        answered.iter().filter(|code| !codes.contains_key(code.as_str())).collect();
    assert!(strange.is_empty(), "not in core/src/codes.rs: {strange:?}");
    let out_of_reach = |code: &str| RUST_ONLY.contains(&code) || COMMAND.contains(&code);
    let silent: Vec<_> =
        codes.keys().filter(|code| !answered.contains(**code) && !out_of_reach(code)).collect();
    assert!(silent.is_empty(), "no sample gives {silent:#?}");
    let reached: Vec<_> = RUST_ONLY.iter().filter(|code| answered.contains(**code)).collect();
    assert!(reached.is_empty(), "documents do give {reached:?}");
    let gone: Vec<_> = RUST_ONLY.iter().filter(|code| !codes.contains_key(**code)).collect();
    assert!(gone.is_empty(), "no longer declared: {gone:?}");
}

/// Codes that no vector gets: a request would be of 16 MiB, or is asked of an open book.
const NO_VECTOR: [&str; 2] = ["document-too-long", "open-and-given"];

/// Every code that a request can get is in an answer of the vectors.
#[test]
fn vectors_get_every_code() {
    let mut found = Vec::new();
    for answer in &vectors().answers {
        said(&serde_json::from_str(answer).unwrap(), &mut found);
    }
    let found: BTreeSet<String> = found.into_iter().map(|(code, _)| code).collect();
    let reached = |code: &str| {
        !(RUST_ONLY.contains(&code) || COMMAND.contains(&code) || NO_VECTOR.contains(&code))
    };
    let missing: Vec<_> =
        declared().into_keys().filter(|code| reached(code) && !found.contains(*code)).collect();
    assert!(missing.is_empty(), "no vector gets {missing:?}");
}

#[test]
fn each_sample_gets_its_code() {
    for sample in samples::all() {
        let mut found = Vec::new();
        said(&sample.answer, &mut found);
        let codes: Vec<&str> = found.iter().map(|(code, _)| code.as_str()).collect();
        assert!(codes.contains(&sample.code.as_str()), "{}: {codes:?}", sample.code);
    }
}

/// A fault is at a place that the request has, or at what lacks a field. Its message and help are sentences without words of
/// ours and without absurd digits.
#[test]
fn faults_name_what_was_written() {
    let ours = Regex::new(r"\b(?:Stage \d|NaN|inf|index|None|Some)\b").unwrap();
    let digits = Regex::new(r"\d*\.?\d*").unwrap();
    for Sample { code, request, answer, .. } in samples::all() {
        for fault in answer["faults"].as_array().into_iter().flatten() {
            let [path, message, help] =
                ["path", "message", "help"].map(|field| fault[field].as_str().unwrap());
            if !request.is_null() {
                let above = path.rsplit_once('/').map_or("", |(above, _)| above);
                let is_there = request.pointer(path).or_else(|| request.pointer(above)).is_some();
                assert!(is_there, "{code}: nothing at {path} of the request");
            }
            for text in [message, help] {
                assert!(text.ends_with(['.', '?', '!']), "{code}: {text}");
                assert!(!text.starts_with(char::is_lowercase), "{code}: {text}");
                assert!(!ours.is_match(text), "{code}: {text}");
                let long = digits.find_iter(text).find(|number| number.len() > 12);
                assert!(long.is_none(), "{code}: {text}");
            }
        }
    }
}

/// A code has one meaning: no two enums have the same one, but for those of every number.
#[test]
fn a_code_belongs_to_one_enum() {
    let mut of: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for listed in enums() {
        for row in listed.codes {
            of.entry(row.code).or_default().insert(listed.of);
        }
    }
    let shared: BTreeSet<&str> =
        of.iter().filter(|(_, enums)| enums.len() > 1).map(|(code, _)| *code).collect();
    assert_eq!(shared, SHARED.iter().copied().collect());
    let stated: BTreeSet<&str> = STATED.iter().copied().collect();
    assert_eq!(stated.len(), STATED.len(), "a code is listed twice");
    for code in of.keys().copied().chain(STATED.iter().copied()) {
        let is_kebab = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        assert!(code.chars().all(is_kebab), "{code}");
    }
}

/// The files below `folder` by their paths in it.
fn sources(folder: &str) -> Vec<(String, String)> {
    let folder = root().join(folder);
    let mut files = Vec::new();
    collect(&folder, &folder, &mut files);
    files
}

fn collect(base: &Path, folder: &Path, files: &mut Vec<(String, String)>) {
    let mut entries: Vec<_> =
        fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    entries.sort();
    for path in entries {
        if path.is_dir() {
            collect(base, &path, files);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            let source = fs::read_to_string(&path).unwrap();
            let name = path.strip_prefix(base).unwrap().display().to_string();
            files.push((name, source));
        }
    }
}

/// The modules for JavaScript are built without `Debug`: what it should write would be missing there, without a word.
#[test]
fn no_text_is_made_by_debug() {
    let tests = Regex::new(r"#\[cfg\((?:test|all\(test, .*\))\)\]\nmod tests \{").unwrap();
    let debug = Regex::new(r":#?\?\}").unwrap();
    for folder in ["core/src", "wasm/src"] {
        for (file, source) in sources(folder) {
            let code = tests.split(&source).next().unwrap();
            let is_test = file.ends_with("tests.rs") || file.contains("tests/");
            let found = debug.is_match(code) && !is_test;
            assert!(!found, "{folder}/{file}: write the text by Display");
        }
    }
}
