//! Writes the JSON Schemas into the folder given, `core/schema` as a rule.

use std::path::PathBuf;
use std::{env, fs};

use pourwright::schema;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let folder = PathBuf::from(env::args().nth(1).ok_or("usage: schema FOLDER")?);
    for name in schema::NAMES {
        if let Some(text) = schema::text(name)? {
            fs::write(folder.join(format!("{name}.json")), text)?;
        }
    }
    Ok(())
}
