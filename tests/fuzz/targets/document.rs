#![no_main]
libfuzzer_sys::fuzz_target!(|bytes: &[u8]| pourwright_fuzz::document::any_text(bytes));
