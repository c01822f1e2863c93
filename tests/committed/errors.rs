//! The table of error codes, `core/ERRORS.md`, against the codes in the source.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::sync::LazyLock;

use regex::Regex;

use crate::root;

/// Where a code comes from, and what its message looks like.
struct Origin {
    file: String,
    message: String,
}

/// A pattern, compiled once.
type Pattern = LazyLock<Regex>;

macro_rules! pattern {
    ($name:ident, $text:literal) => {
        static $name: Pattern = LazyLock::new(|| Regex::new($text).unwrap());
    };
}

// An arm of `fn code`, and the one code of an enum with one variant.
pattern!(
    ARM,
    r#"Self::([A-Z]\w*)(?:\s*\{[^}]*\}|\s*\([^)]*\))?(?:\s*\|[^=]*)?\s*=>\s*(?:\{\s*)?"([a-z0-9-]+)""#
);
pattern!(SOLE, r#""([a-z0-9-]+)""#);
// A fault or note written out, one made by the resolver, and an assumption's.
pattern!(
    INLINE,
    r#"(?s)code:\s*"([a-z0-9-]+)"\.(?:into|to_string)\(\).*?message:\s*(?:alloc::)?(?:format!\(\s*)?"((?:[^"\\]|\\.)*)""#
);
pattern!(
    CALLED,
    r#"(?s)\.fault\(\s*"([a-z0-9-]+)",.*?(?:format_args!\(\s*|,\s*&)"((?:[^"\\]|\\.)* (?:[^"\\]|\\.)*)""#
);
// A note on the process.
pattern!(TOLD, r#"(?s)\bnote\(\s*"([a-z0-9-]+)",\s*(?:format!\(\s*)?"((?:[^"\\]|\\.)*)""#);
pattern!(
    NOTED,
    r#"(?s)Assumption::\w+\(_\) => \(\s*"([a-z-]+)",\s*format!\(\s*"((?:[^"\\]|\\.)*)""#
);
pattern!(VARIANT, r#"(?s)#\[error\(\s*"((?:[^"\\]|\\.)*)".*?\)\]\s*([A-Z]\w*)"#);

/// Every code that the source of the core gives to a fault or a note.
fn codes() -> BTreeMap<String, Origin> {
    let mut codes = BTreeMap::new();
    for (file, source) in sources("core/src") {
        let messages = variant_messages(&source);
        let mut add = |code: &str, message: &str| {
            codes.entry(code.to_owned()).or_insert_with(|| Origin {
                file: file.clone(),
                message: message.replace("\\\"", "\"").replace('|', "\\|"),
            });
        };
        for body in code_functions(&source) {
            let mut arms = ARM.captures_iter(body).peekable();
            if arms.peek().is_none() {
                for found in SOLE.captures_iter(body) {
                    add(&found[1], messages.values().next().map_or("", String::as_str));
                }
            }
            for found in arms {
                add(&found[2], messages.get(&found[1]).map_or("", String::as_str));
            }
        }
        for pattern in [&INLINE, &CALLED, &TOLD, &NOTED] {
            for found in pattern.captures_iter(&source) {
                add(&found[1], &found[2]);
            }
        }
    }
    // A parameter's error words itself by what is wrong with it.
    for (code, message) in [
        ("missing-field", "the {parameter} is missing"),
        ("wrong-type", "the {parameter} must be {wanted}"),
        ("not-finite", "the {parameter} is {value}; it must be a finite number"),
        ("out-of-range", "the {parameter} is {value}; it must be {range}"),
        ("needs-other", "the {parameter} is missing; the {other} needs it"),
        ("excludes-other", "the {parameter} cannot be given together with the {other}"),
        ("unknown-word", "\"{found}\" is not a word for the {parameter}"),
    ] {
        let silent = codes.get_mut(code).filter(|origin| origin.message.is_empty());
        if let Some(origin) = silent {
            origin.message = message.to_owned();
        }
    }
    codes
}

/// The files below `folder` by their paths in it, each without its tests.
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
            let source = source.split("#[cfg(test)]\nmod tests").next().unwrap().to_owned();
            let name = path.strip_prefix(base).unwrap().display().to_string();
            files.push((name, source));
        }
    }
}

/// The message of each variant of the file's error enums.
fn variant_messages(source: &str) -> BTreeMap<String, String> {
    VARIANT.captures_iter(source).map(|found| (found[2].to_owned(), found[1].to_owned())).collect()
}

/// The bodies of `fn code`.
fn code_functions(source: &str) -> Vec<&str> {
    source
        .match_indices("fn code(&self) -> &'static str {")
        .map(|(start, _)| {
            let body = &source[start..];
            &body[..body.find("\n    }").unwrap_or(body.len())]
        })
        .collect()
}

#[test]
fn the_table_of_error_codes_is_fresh() {
    let mut table = String::from(
        "# Codes of faults and notes\n\n\
         A fault has a code, a path (JSON Pointer), a message and a help. Codes are stable: programs may rely on them.\n\
         In the messages, braces stand for what was found.\n\n\
         | code | message | from |\n| --- | --- | --- |\n",
    );
    let codes = codes();
    for (code, origin) in &codes {
        table.push_str(&format!("| `{code}` | {} | `{}` |\n", origin.message, origin.file));
    }
    assert!(codes.len() > 150, "only {} codes were found", codes.len());
    let silent: Vec<&String> = codes
        .iter()
        .filter(|(_, origin)| origin.message.is_empty())
        .map(|(code, _)| code)
        .collect();
    assert!(silent.is_empty(), "no message was found for {silent:?}");
    crate::fresh("core/ERRORS.md", &table);
}

/// The extraction finds what is known to be there, in each of the ways to write a code.
#[test]
fn every_way_to_write_a_code_is_found() {
    let codes = codes();
    for known in [
        "mix-draw-too-large",
        "cover-lengths",
        "duplicate-key",
        "unknown-calculation",
        "layer-shares",
        "no-expansion",
        "pot-raised",
    ] {
        assert!(codes.contains_key(known), "{known}");
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
            let found = debug.is_match(code) && !file.ends_with("tests.rs");
            assert!(!found, "{folder}/{file}: write the text by Display");
        }
    }
}
