//! What the core refuses, as JavaScript errors.

use pourwright::{Diagnose, Fault, Faults};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen(raw_module = "../src/error.js")]
extern "C" {
    type PourwrightError;

    /// The error that carries these faults, a JSON array.
    #[wasm_bindgen(constructor)]
    fn new(faults: &str) -> PourwrightError;
}

/// What a call throws: one fault or more.
#[derive(Debug)]
pub struct Refused(Vec<Fault>);

impl Refused {
    /// `error`, found at the parameter `name` of the call.
    pub(crate) fn at(name: &str, error: &dyn Diagnose) -> Self {
        Self(vec![Fault::at(format!("/{name}"), error)])
    }

    /// All faults of a document.
    pub(crate) fn all(faults: Faults) -> Self {
        Self(faults.into_vec())
    }
}

impl<E: Diagnose> From<E> for Refused {
    fn from(error: E) -> Self {
        Self(vec![Fault::at("", &error)])
    }
}

impl From<Refused> for JsValue {
    fn from(Refused(faults): Refused) -> Self {
        let faults = serde_json::Value::from_iter(faults.into_iter().map(|fault| {
            serde_json::json!({
                "code": fault.code, "path": fault.path, "message": fault.message, "help": fault.help,
            })
        }));
        PourwrightError::new(&faults.to_string()).into()
    }
}
