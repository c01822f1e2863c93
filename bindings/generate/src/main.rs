//! Writes all that is made from the table of calculations: `cargo run -p pourwright-generate`.

use std::fs;
use std::io;

fn main() -> io::Result<()> {
    for file in pourwright_generate::files() {
        if fs::read_to_string(file.place()).is_ok_and(|found| found == file.text) {
            continue;
        }
        fs::write(file.place(), &file.text)?;
    }
    Ok(())
}
