//! libFuzzer on the target that the variable `TARGET` names. A case is changed as JSON, so that it stays a case.
#![no_main]

use std::sync::LazyLock;

use libfuzzer_sys::{Corpus, fuzz_mutator, fuzz_target, fuzzer_mutate};
use pourwright_fuzz::chance::Chance;
use pourwright_fuzz::{Target, target};

static TARGET: LazyLock<&Target> = LazyLock::new(|| target(&std::env::var("TARGET").unwrap()));

fuzz_target!(|text: &[u8]| -> Corpus {
    let checked = serde_json::from_slice(text).map(|case| (TARGET.check)(&case));
    if matches!(checked, Ok(Ok(_))) { Corpus::Keep } else { Corpus::Reject }
});

fuzz_mutator!(|text: &mut [u8], len: usize, most: usize, seed: u32| {
    let mut case = serde_json::from_slice(&text[..len]).unwrap_or_default();
    let mut other_text = |text: &mut Vec<u8>, most: usize| {
        let len = text.len();
        text.resize(most, 0);
        let len = fuzzer_mutate(text, len, most);
        text.truncate(len);
    };
    (TARGET.change)(&mut case, &mut Chance::new(seed.into(), &mut other_text));
    let other = case.to_string();
    if other.len() > most {
        return len;
    }
    text[..other.len()].copy_from_slice(other.as_bytes());
    other.len()
});
