//! Refusals of the core as JavaScript errors.

use pourwright::Fault;
use pourwright::table::{Calculation, Refusal};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::name;

#[wasm_bindgen(raw_module = "../src/error.js")]
extern "C" {
    /// A fault in JavaScript.
    fn fault(code: &str, path: &str, message: &str, help: &str) -> JsValue;

    type PourwrightError;

    /// The error with these faults.
    #[wasm_bindgen(constructor)]
    fn new(faults: Vec<JsValue>) -> PourwrightError;
}

/// The error that a call throws: one fault or more.
#[derive(Debug)]
pub struct Refused(pub(crate) Vec<Fault>);

impl Refused {
    /// Why `calculation` refuses its arguments.
    #[cold]
    pub(crate) fn arguments(calculation: &Calculation, refusal: &Refusal) -> Self {
        Self(name::faults(calculation, refusal))
    }
}

impl From<Refused> for JsValue {
    fn from(Refused(faults): Refused) -> Self {
        let faults = faults.iter();
        let faults =
            faults.map(|found| fault(&found.code, &found.path, &found.message, &found.help));
        PourwrightError::new(faults.collect()).into()
    }
}
