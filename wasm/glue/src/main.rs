//! Writes the JavaScript glue of a compiled WebAssembly module: `pourwright-glue MODULE FOLDER NAME`.

use std::env;
use std::error::Error;

use wasm_bindgen_cli_support::Bindgen;

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = env::args().skip(1).collect();
    let [module, folder, name] = arguments.as_slice() else {
        return Err("usage: pourwright-glue MODULE FOLDER NAME".into());
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
    Ok(())
}
