#![no_main]
libfuzzer_sys::fuzz_target!(|bytes: &[u8]| pourwright_fuzz::handles::any_calls(bytes));
