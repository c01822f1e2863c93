//! Requests without end, one line of JSON each, with what the native library answers, for `wasm.mjs` to compare.

use std::io::{self, Write};

use pourwright::request::answer_text;
use pourwright_fuzz::chance::{Chance, splice};
use pourwright_fuzz::{document, target};
use serde_json::{Value, json};

fn main() {
    let seed = std::env::args().nth(1).and_then(|seed| seed.parse().ok()).unwrap_or(1_u64);
    // It ends when nobody reads any more.
    if let Err(error) = answer(seed) {
        assert_eq!(error.kind(), io::ErrorKind::BrokenPipe, "{error}");
    }
}

fn answer(seed: u64) -> io::Result<()> {
    let mut out = io::stdout().lock();
    let mut cases = ["amounts", "document", "document", "plans"].map(|name| (name, Value::Null));
    for seed in seed.. {
        for (name, case) in &mut cases {
            if seed % 16 == 0 {
                *case = Value::Null;
            }
            (target(name).change)(case, &mut Chance::new(seed << 3, &mut splice(seed)));
            let text = request(name, case);
            // JavaScript has no texts that are not Unicode.
            if let Ok(text) = String::from_utf8(text) {
                let answer: Value = serde_json::from_str(&answer_text(&text))?;
                writeln!(out, "{}", json!({ "request": text, "answer": answer }))?;
            }
        }
    }
    Ok(())
}

fn request(name: &str, case: &Value) -> Vec<u8> {
    match name {
        "amounts" => {
            json!({ "calculate": "convert", "amount": case["text"], "to": "mL" }).to_string().into()
        }
        "plans" => json!({ "calculate": "plan", "book": case["book"], "orders": case["orders"] })
            .to_string()
            .into(),
        _ => document::text_of(case).unwrap_or_default(),
    }
}
