//! The fuzz targets of `tests/fuzz/`, for a bounded number of inputs from a fixed seed.

// There it is a crate, here a module.
#[allow(unreachable_pub)]
#[path = "../../tests/fuzz/src/lib.rs"]
mod fuzz;

use std::sync::LazyLock;

use proptest::prelude::*;
use proptest::test_runner::RngSeed;

/// Documents to begin with: the demo shop's, the plan of its day, and the requests of the vectors.
static DOCUMENTS: LazyLock<Vec<&[u8]>> = LazyLock::new(|| {
    let demo = [
        include_bytes!("../../core/examples/demo/book.json").as_slice(),
        include_bytes!("../../core/examples/demo/orders.json"),
        PLAN.as_bytes(),
    ];
    let requests =
        include_bytes!("../../tests/vectors/requests.jsonl").split(|byte| *byte == b'\n');
    demo.into_iter().chain(requests).collect()
});

/// The plan of the demo day.
static PLAN: LazyLock<String> = LazyLock::new(|| {
    let book = include_str!("../../core/examples/demo/book.json");
    let orders = include_str!("../../core/examples/demo/orders.json");
    let book = pourwright::document::LoadedBook::from_text(book).unwrap();
    serde_json::to_string(&book.plan_text(orders).unwrap()).unwrap()
});

/// Changes that break a document more often than random bytes do.
const TOKENS: [&str; 16] = [
    "\"",
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "null",
    "-1",
    "1e999",
    "0",
    "\"6 oz\"",
    "\"\\u0000\"",
    "\u{fffd}",
    " ± ",
    "\"1e300 cup\"",
];

/// One of these documents with one to four stretches of it replaced.
fn broken(documents: &[&'static [u8]]) -> impl Strategy<Value = Vec<u8>> {
    let put = prop_oneof![
        2 => prop::sample::select(TOKENS.to_vec()).prop_map(|token| token.as_bytes().to_vec()),
        1 => prop::collection::vec(any::<u8>(), 0..12),
    ];
    let cut = (any::<prop::sample::Index>(), 0_usize..8, put);
    let document = prop::sample::select(documents.to_vec());
    (document, prop::collection::vec(cut, 1..5)).prop_map(|(document, cuts)| {
        let mut text = document.to_vec();
        for (at, cut, put) in cuts {
            let at = at.index(text.len() + 1);
            let end = (at + cut).min(text.len());
            text.splice(at..end, put);
        }
        text
    })
}

fn seeded(cases: u32) -> ProptestConfig {
    ProptestConfig { cases, rng_seed: RngSeed::Fixed(20_270_302), ..ProptestConfig::default() }
}

proptest! {
    #![proptest_config(seeded(200))]

    #[test]
    fn broken_documents(text in broken(&DOCUMENTS)) {
        fuzz::document::any_text(&text);
    }
}

proptest! {
    #![proptest_config(seeded(100))]

    #[test]
    fn broken_plans(text in broken(&[PLAN.as_bytes()])) {
        fuzz::document::any_text(&text);
    }
}

proptest! {
    #![proptest_config(seeded(400))]

    #[test]
    fn any_calls_in_any_order(bytes in prop::collection::vec(any::<u8>(), 0..300)) {
        fuzz::handles::any_calls(&bytes);
    }
}

/// Whole documents pass too, so that what is broken of them was whole.
#[test]
fn whole_documents() {
    for document in DOCUMENTS.iter() {
        fuzz::document::any_text(document);
    }
}
