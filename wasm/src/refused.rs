//! What the core refuses, as JavaScript errors.

use pourwright::{Diagnose, Fault};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::parameter::InParameter;

#[wasm_bindgen(raw_module = "../src/error.js")]
extern "C" {
    /// A fault as JavaScript has it.
    fn fault(code: &str, path: &str, message: &str, help: &str) -> JsValue;

    type PourwrightError;

    /// The error that carries these faults.
    #[wasm_bindgen(constructor)]
    fn new(faults: Vec<JsValue>) -> PourwrightError;
}

/// What a call throws: one fault or more.
#[derive(Debug)]
pub struct Refused(pub(crate) Vec<Fault>);

impl Refused {
    /// `error`, found at the parameter `path` of the call; at no single one where that is empty.
    pub(crate) fn at(path: &str, error: &dyn Diagnose) -> Self {
        Self(vec![Fault::at(path, error)])
    }
}

impl<E: InParameter> From<E> for Refused {
    fn from(error: E) -> Self {
        Self::at(&error.path(), &error)
    }
}

impl From<Refused> for JsValue {
    fn from(Refused(faults): Refused) -> Self {
        let faults = faults.iter();
        let faults = faults.map(|told| fault(&told.code, &told.path, &told.message, &told.help));
        PourwrightError::new(faults.collect()).into()
    }
}
