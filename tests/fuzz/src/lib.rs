//! What the C door must keep to, whatever bytes come.
//!
//! Two drivers feed it: libFuzzer through `tests/fuzz/targets/` for as long as one likes, and `ffi/tests/fuzzed.rs`
//! from a fixed seed in every run of the tests.

mod call;
pub mod document;
pub mod handles;
