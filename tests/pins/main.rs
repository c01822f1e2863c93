//! Answers to a fixed set of random requests, each pinned by a digest of its text: JSON, sheets and notes, or faults.
//!
//! A changed digest says THAT an answer changed. It never says that either of the two is right: that is judged by
//! `tests/src/reference/`, `tests/src/oracle/` and the published values. So after a change that is meant, look at some of the
//! answers, write the lines again and commit them with the change:
//!
//! ```sh
//! UPDATE=1 cargo test -p pourwright-tests --all-features --test pins
//! ```
//!
//! A failure prints the kind and number of a request, as `plan-12`. `PIN=plan-12` writes request and answer to `target/pins/`, at
//! any commit, so that both answers can be compared.
//!
//! A request is made from its kind and number by a generator of our own in [`chance`], the same on every machine. A change of a
//! generator or of the demo's book changes the requests, and with them the lines.

mod chance;
mod day;
mod pin;
mod plain;
mod shop;
mod table;
mod work;

use chance::Chance;
use day::Day;
use pin::{Asked, Kind};
use serde_json::Value;

/// The request `at` of the days of a kind of shop, `each` to a day.
fn of_day(
    (kind, name): (&str, &str),
    (at, each): (usize, usize),
    make: fn(&mut Chance, &Day) -> Value,
) -> Asked {
    let day = Day::that_can_be(kind, at / each);
    let request = make(&mut Chance::of(&format!("{kind} {name}"), at), &day);
    let answer = day.answer(&request);
    Asked { request, answer, day: Some(day) }
}

/// Tests of a kind, each of `each` requests in a row, one after each name.
macro_rules! pins {
    ($($kind:ident: $ask:expr, $each:literal of [$($part:ident)+];)+) => {
        $(mod $kind {
            use super::*;

            const KIND: Kind = Kind { name: stringify!($kind), ask: $ask };

            /// The numbers of a test, by its place among those of its kind.
            fn check(part: &str) {
                const PARTS: &[&str] = &[$(stringify!($part)),+];
                let at = PARTS.iter().position(|one| *one == part).expect("a part");
                KIND.check(at * $each..(at + 1) * $each);
            }

            $(#[test]
            fn $part() {
                check(stringify!($part));
            })+
        })+
    };
}

pins! {
    call: table::call, 192 of [a b c d e f g h i j];
    request: plain::plain, 83 of [a b c d e f g h i j k l m n o p q r s t];
    sure: plain::sure, 100 of [a b c d];
    broken: plain::broken, 100 of [a b c];
    mistaken: plain::mistaken, 40 of [a b c d e f g h i j];
    plan: |at| Day::of("twisted", at).planned(), 10 of [a b c d e f g h i j k l m n o p q r s t];
    round_plan: |at| Day::of("round", at).planned(), 25 of [a b c d e f g h i j k l m n o p q r s t];
    correct: |at| of_day(("twisted", "correct"), (at, 8), work::correct), 48 of [a b c d e f g h i j];
    round_correct: |at| of_day(("round", "correct"), (at, 8), work::correct), 64 of [a b c d e f g h i j];
    go_on: |at| of_day(("twisted", "go-on"), (at, 5), work::go_on), 10 of [a b c d e f g h i j k l m n o p q r s t];
    round_go_on: |at| of_day(("round", "go-on"), (at, 5), work::go_on), 25 of [a b c d e f g h i j];
    record: |at| of_day(("twisted", "record"), (at, 6), work::record), 24 of [a b c d e f g h i j];
    learn: |at| of_day(("twisted", "learn"), (at, 3), work::learn), 6 of [a b c d e f g h i j k l m n o p q r s t];
    trial: |at| of_day(("twisted", "trial"), (at, 10), work::trial), 60 of [a b c d e f g h i j];
    troubles: |at| of_day(("twisted", "troubles"), (at, 10), work::troubles), 60 of [a b c d e];
    of_book: |at| of_day(("twisted", "of-book"), (at, 6), work::of_book), 60 of [a b c d e f];
}
