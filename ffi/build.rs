//! Gives the shared library the name by which programs that link to it will look for it, and packs the JSON Schemas.

use std::collections::BTreeMap;
use std::path::Path;
use std::{env, fs};

use serde_json::{Map, Value};

/// Goes up when a program that was linked to an older library could no longer run with this one.
const ABI: u32 = 1;

fn main() {
    println!("cargo:rerun-if-changed=build.rs");
    pack_schemas();
    match env::var("CARGO_CFG_TARGET_OS").as_deref() {
        Ok("linux" | "android" | "freebsd" | "netbsd" | "openbsd" | "dragonfly") => {
            println!("cargo:rustc-cdylib-link-arg=-Wl,-soname,libpourwright.so.{ABI}");
        }
        Ok("macos") => {
            println!(
                "cargo:rustc-cdylib-link-arg=-Wl,-install_name,@rpath/libpourwright.{ABI}.dylib"
            );
        }
        _ => {}
    }
}

/// Writes all schemas into one text: each definition once, as most are in several of them.
fn pack_schemas() {
    let folder = Path::new("../core/schema");
    println!("cargo:rerun-if-changed={}", folder.display());
    let (mut roots, mut definitions) = (BTreeMap::new(), Map::new());
    // `calculations.json` is a list, not a schema.
    for name in ["request", "answer", "book", "orders", "actuals", "plan"] {
        let text =
            fs::read_to_string(folder.join(name).with_extension("json")).expect("it is committed");
        let mut schema: Map<String, Value> = serde_json::from_str(&text).expect("it is JSON");
        let Some(Value::Object(own)) = schema.remove("$defs") else {
            panic!("{name} has no definitions")
        };
        for (key, definition) in own {
            let known = definitions.entry(key.clone()).or_insert_with(|| definition.clone());
            assert!(*known == definition, "two definitions are named {key}");
        }
        roots.insert(name, schema);
    }
    let packed = serde_json::json!({ "roots": roots, "definitions": definitions });
    let to = Path::new(&env::var_os("OUT_DIR").expect("cargo sets it")).join("schemas.json");
    fs::write(to, packed.to_string()).expect("cargo made the folder");
}
