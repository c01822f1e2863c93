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

/// The mark of a function of the library.
const EXPORT: &str = "POUR_API";

/// The same declarations with `mark`, or nothing, in place of that of functions, which may have a line of its own.
fn marked(text: &str, mark: &str) -> String {
    text.replace(&format!("{EXPORT}\n"), mark).replace(&format!("{EXPORT} "), mark)
}

/// Before the declarations: what `POUR_API` is.
const EXPORT_MACRO: &str = "
/* How a function of the library is declared. A host that links statically on Windows defines POUR_STATIC. */
#ifndef POUR_API
#if defined(_WIN32) && !defined(POUR_STATIC)
#define POUR_API __declspec(dllimport)
#elif defined(__GNUC__) && !defined(_WIN32)
#define POUR_API __attribute__((visibility(\"default\")))
#else
#define POUR_API
#endif
#endif
";

/// What cbindgen makes of the source.
fn bound() -> String {
    let mut config = cbindgen::Config::from_file(here().join("cbindgen.toml")).unwrap();
    config.header = config.header.map(|contract| contract + &requests());
    config.after_includes = Some(EXPORT_MACRO.to_owned() + &pourwright_generate::c::initializers());
    config.function.prefix = Some(EXPORT.to_owned());
    let bindings = cbindgen::Builder::new().with_crate(here()).with_config(config).generate();
    let mut header = Vec::new();
    bindings.unwrap().write(&mut header);
    String::from_utf8(header).unwrap()
}

/// The header: that of cbindgen with constants as enumerators and comments as C89 knows them.
fn header() -> String {
    let counts =
        ["#define POUR_OMITTED_COUNT 4294967295", "#define POUR_OMITTED_COUNT 4294967295u"];
    old_comments(&enumerated(&bound()).replace(counts[0], counts[1]))
}

/// A constant of cbindgen that can be an enumerator: its comment, and its line. A version is for the preprocessor, and what
/// an `int` does not hold is no enumerator in C89.
fn enumerator(block: &str) -> Option<(&str, String)> {
    let (comment, line) = block.rsplit_once('\n')?;
    let (name, value) = line.strip_prefix("#define ")?.split_once(' ')?;
    value.parse::<i32>().ok().filter(|_| name != "POUR_ABI_VERSION")?;
    Some((comment, format!("{name} = {value}")))
}

/// The same with constants as enumerators: those of one word, or one after the other, in one list.
fn enumerated(text: &str) -> String {
    let mut made = Vec::new();
    let mut blocks = text.split("\n\n").peekable();
    while let Some(block) = blocks.next() {
        let Some((comment, constant)) = enumerator(block) else {
            made.push(block.to_owned());
            continue;
        };
        let word = of_word(comment);
        let mut list = match word {
            Some(word) => format!("// Of `{word}`.\nenum {{\n    {constant}"),
            None => format!("enum {{\n{}\n    {constant}", indented(comment)),
        };
        while let Some((comment, constant)) = blocks
            .peek()
            .and_then(|block| enumerator(block))
            .filter(|(other, _)| of_word(other) == word)
        {
            blocks.next();
            list += ",\n";
            if word.is_none() {
                list += &indented(comment);
                list.push('\n');
            }
            list += &format!("    {constant}");
        }
        made.push(list + "\n};");
    }
    made.join("\n\n")
}

/// The word that a constant is a value of.
fn of_word(comment: &str) -> Option<&str> {
    comment.strip_prefix("// Of `")?.split('`').next()
}

fn indented(text: &str) -> String {
    text.lines().map(|line| format!("    {line}")).collect::<Vec<_>>().join("\n")
}

/// The same with `/*` comments.
fn old_comments(text: &str) -> String {
    let words = |line: &str| line.trim_start().strip_prefix("//").map(str::to_owned);
    let (mut made, mut inside) = (String::new(), false);
    let mut lines = text.lines().peekable();
    while let Some(line) = lines.next() {
        let Some(words_here) = words(line) else {
            // Of the preprocessor, or the end of `extern "C"`.
            match line.split_once("//") {
                Some((code, words)) => made += &format!("{} /*{words} */", code.trim_end()),
                None => made += line,
            }
            made.push('\n');
            continue;
        };
        let indent = &line[..line.len() - line.trim_start().len()];
        made += indent;
        made += if inside { " *" } else { "/*" };
        made += &words_here;
        inside = lines.peek().is_some_and(|next| words(next).is_some());
        made += if inside { "\n" } else { " */\n" };
    }
    made
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
    let declarations = declarations(&marked(&bound(), ""));
    for sign in ["#", "/", "\"", "extern", EXPORT] {
        assert!(!declarations.contains(sign), "{sign}");
    }
    for (name, _) in exports() {
        assert!(declarations.contains(&format!("{name}(")), "{name}");
    }
    fresh("include/pourwright.cdef.h", &declarations);
}

/// Old compilers take it: no comment is that of C99, and a list of enumerators ends without a comma.
#[test]
fn the_header_is_c89() {
    let header = header();
    for line in header.lines() {
        let code = line.split("/*").next().unwrap();
        assert!(line.trim_start().starts_with('*') || !code.contains("//"), "{line}");
    }
    assert!(!header.contains(",\n}"));
    assert_eq!(header.matches("/*").count(), header.matches("*/").count());
    assert!(header.contains("    POUR_OK = 0,\n") && header.contains("/* Of `form`. */\nenum {\n"));
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
    let header = marked(&header(), "export ");
    for (name, _) in exports() {
        let declared =
            |line: &str| line.starts_with("export ") && line.contains(&format!("{name}("));
        assert!(header.lines().any(declared), "{name}");
    }
    for calculation in pourwright::table::CALCULATIONS {
        let declared = format!("export int32_t pour_{}(", calculation.name);
        assert!(header.contains(&declared), "{calculation:?}");
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
