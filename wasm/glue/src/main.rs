//! Writes the JavaScript glue of a compiled WebAssembly module: `pourwright-glue MODULE FOLDER NAME [CALCULATION ...]`.
//!
//! With names of calculations, the module is written in two parts, too: NAME_first_bg.wasm has these, NAME_rest_bg.wasm the others.

use std::env;
use std::error::Error;
use std::fs;
use std::path::Path;

use wasm_bindgen_cli_support::Bindgen;

mod parts;

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = env::args().skip(1).collect();
    let [module, folder, name, first @ ..] = arguments.as_slice() else {
        return Err("usage: pourwright-glue MODULE FOLDER NAME [CALCULATION ...]".into());
    };
    Bindgen::new()
        .input_path(module)
        .out_name(name)
        .web(true)?
        .typescript(true)
        .omit_default_module_path(false)
        .remove_name_section(false)
        .remove_producers_section(true)
        .generate(folder)?;
    if !first.is_empty() {
        let file = |part: &str| Path::new(folder).join(format!("{name}{part}_bg.wasm"));
        let [first, rest] = parts::split(&fs::read(file(""))?, first)?;
        fs::write(file("_first"), first)?;
        fs::write(file("_rest"), rest)?;
    }
    Ok(())
}
