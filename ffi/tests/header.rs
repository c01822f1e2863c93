//! The committed headers and the list of symbols are what the source makes of them.
//!
//! `UPDATE=1 cargo test -p pourwright-ffi --test header` writes all again; look at the difference before committing it.

use std::collections::BTreeSet;
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

use serde_json::Value;

fn here() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn header() -> String {
    let mut config = cbindgen::Config::from_file(here().join("cbindgen.toml")).unwrap();
    config.header = config.header.map(|contract| contract + &requests());
    config.after_includes = Some(pourwright_generate::c::initializers());
    let bindings = cbindgen::Builder::new().with_crate(here()).with_config(config).generate();
    let mut header = Vec::new();
    bindings.unwrap().write(&mut header);
    String::from_utf8(header).unwrap()
}

/// The comment that lists the requests with their fields, from the schema that the types give.
fn requests() -> String {
    let schema = fs::read_to_string(here().join("../core/schema/request.json")).unwrap();
    let schema: Value = serde_json::from_str(&schema).unwrap();
    let mut text = String::from(
        "\n\n/* THE REQUESTS\n *\n * Each by its name, what it answers, and its fields; those in brackets may be omitted. \
         With `book` or `plan` in brackets, it\n * is asked of an open one by pour_book_request or pour_plan_request, or names \
         its own. Every request may have `ext`, an\n * object of the host's own. What each field means, and those of objects in \
         it: pour_schema, \"request\"; an example of each:\n * core/REQUESTS.md.\n *\n",
    );
    for request in schema["oneOf"].as_array().unwrap() {
        let name = request["properties"]["calculate"]["const"].as_str().unwrap();
        writeln!(text, " * {name}: {}", request["description"].as_str().unwrap()).unwrap();
        let required = request["required"].as_array().unwrap();
        let fields = request["properties"].as_object().unwrap().keys();
        let fields = fields.filter(|field| !["calculate", "ext"].contains(&field.as_str()));
        let (given, omitted): (Vec<_>, Vec<_>) =
            fields.partition(|field| required.contains(&Value::from(field.as_str())));
        let omitted = omitted.into_iter().map(|field| format!("[{field}]"));
        let fields: Vec<String> = given.into_iter().cloned().chain(omitted).collect();
        for line in pourwright_generate::wrap(&fields.join(", "), 115) {
            writeln!(text, " *     {line}").unwrap();
        }
    }
    text + " */"
}

/// The declarations of `header` alone, for readers of declarations that know no preprocessor and no comments. Its whole
/// numbers become constants of an enum; a reader has no other constants.
fn declarations(header: &str) -> String {
    let mut text = String::from("enum {");
    let mut of_preprocessor = false;
    let mut of_comment = false;
    let mut rest = String::new();
    for line in header.lines() {
        if of_comment || line.starts_with("/*") {
            of_comment = !line.ends_with("*/");
        } else if of_preprocessor || line.starts_with('#') {
            of_preprocessor = line.ends_with('\\');
            if let Some((name, value)) =
                line.strip_prefix("#define ").and_then(|it| it.split_once(' '))
                && value.parse::<u32>().is_ok()
            {
                write!(text, "\n    {name} = {value},").unwrap();
            }
        } else if !line.trim_start().starts_with("//") && !line.trim().is_empty() {
            rest += line;
            rest.push('\n');
        }
    }
    let rest = rest.replace("extern \"C\" {\n", "");
    let rest = rest.replace("}  // extern \"C\"\n", "");
    text.pop();
    text + "\n};\n" + &rest
}

fn fresh(path: &str, wanted: &str) {
    let path = here().join(path);
    if std::env::var_os("UPDATE").is_some() {
        fs::write(&path, wanted).unwrap();
    }
    let found = fs::read_to_string(&path).unwrap_or_default();
    assert!(
        found == wanted,
        "{} is stale: run UPDATE=1 cargo test -p pourwright-ffi --test header",
        path.display()
    );
}

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() { sources(&path, found) } else { found.push(path) }
    }
}

/// Name and body of each export of the source, but for the one that only the tests have.
fn exports() -> Vec<(String, String)> {
    let mut files = Vec::new();
    sources(&here().join("src"), &mut files);
    let mut exports = Vec::new();
    for file in files {
        let source = fs::read_to_string(file).unwrap();
        for part in source.split("#[unsafe(no_mangle)]").skip(1) {
            let name = part.split("fn ").nth(1).unwrap().split('(').next().unwrap().to_owned();
            let body = part[..part.find("\n}\n").unwrap()].to_owned();
            if name != "pour_test_panic" {
                exports.push((name, body));
            }
        }
    }
    exports
}

#[test]
fn the_header_is_fresh() {
    fresh("include/pourwright.h", &header());
}

#[test]
fn the_declarations_are_fresh() {
    let header = header();
    let declarations = declarations(&header);
    for sign in ["#", "/", "\"", "extern"] {
        assert!(!declarations.contains(sign), "{sign}");
    }
    for (name, _) in exports() {
        assert!(declarations.contains(&format!("{name}(")), "{name}");
    }
    fresh("include/pourwright.cdef.h", &declarations);
}

/// What the header teaches of a request is in it.
#[test]
fn the_header_lists_every_request() {
    let header = header();
    for name in pourwright::request::CALCULATIONS {
        assert!(header.contains(&format!("\n * {name}: ")), "{name}");
    }
}

#[test]
fn the_list_of_symbols_is_fresh() {
    let names: BTreeSet<String> = exports().into_iter().map(|(name, _)| name).collect();
    assert!(
        names.len() > pourwright::table::CALCULATIONS.len() + 30,
        "only {} exports were found",
        names.len()
    );
    let list: Vec<String> = names.into_iter().collect();
    fresh("symbols.txt", &(list.join("\n") + "\n"));
}

#[test]
fn the_header_declares_every_symbol() {
    let header = header();
    for (name, _) in exports() {
        assert!(header.contains(&format!("{name}(")), "{name}");
    }
    for calculation in pourwright::table::CALCULATIONS {
        assert!(header.contains(&format!("int32_t pour_{}(", calculation.name)), "{calculation:?}");
    }
    assert!(!header.contains("pour_test_panic"));
}

/// No export calculates outside the guard. Those that only read a field of an error or a constant need none.
#[test]
fn every_export_is_guarded() {
    let plain = [
        "pour_abi_version",
        "pour_version",
        "pour_error_status",
        "pour_error_count",
        "pour_error_text",
        "pour_error_json",
    ];
    for (name, body) in exports() {
        let guarded =
            ["guard(error, &mut || {", "guard_or((), ||", "guard_text(|| {", "    of_fault("]
                .iter()
                .any(|guard| body.contains(guard));
        assert!(guarded != plain.contains(&name.as_str()), "{name}");
    }
}

/// The versions in the header and the build are those of the package.
#[test]
fn the_versions_agree() {
    let build = fs::read_to_string(here().join("build.rs")).unwrap();
    let abi = pourwright_ffi::POUR_ABI_VERSION;
    assert!(build.contains(&format!("const ABI: u32 = {abi};")));
    assert!(header().contains(&format!("#define POUR_ABI_VERSION {abi}\n")));
    assert_eq!(pourwright_ffi::pour_abi_version(), abi);
}
