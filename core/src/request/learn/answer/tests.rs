use rstest::rstest;

use super::*;
use crate::document::small;

fn grams(grams: f64) -> Mass {
    Mass::from_si(grams / 1e3)
}

/// Readings in grams, each of its own day and sure to 0.02 g.
fn readings(list: &[f64]) -> Vec<Reading<Mass>> {
    let each = (0..).zip(list);
    each.map(|(day, value)| Reading::new(Day::from_number(day), grams(*value), grams(0.02)))
        .collect()
}

fn write(value: Mass, unsure: Mass) -> String {
    format!("{:.2} g ± {:.3}", value.si() * 1e3, unsure.si() * 1e3)
}

/// What is answered on these readings and the book's number, with its ±.
fn learned(
    list: &[f64],
    stated: Option<(f64, Option<f64>)>,
    with_unsure: bool,
) -> (Vec<BookChange>, Vec<BookQuestion>, Vec<String>, Vec<String>) {
    let book = LoadedBook::from_text(small::BOOK).unwrap();
    let mut answers = Answers::new(&book);
    let number = Number {
        what: "drop".into(),
        path: &At("/x"),
        book: stated.map(|(value, unsure)| Measured {
            value: grams(value),
            uncertainty: unsure.map(grams),
            source: None,
        }),
        with_unsure,
        changed: "Is it another bottle?",
        write: &write,
        value: &text_value,
    };
    answers.number(&readings(list), number);
    (answers.changes, answers.questions, answers.confirmed, answers.not_yet)
}

const STEADY: [f64; 5] = [10.0, 10.01, 9.99, 10.01, 9.99];

#[rstest]
#[case(None, true, "5 days show it, and the book does not state it.")]
#[case(Some((10.0, Some(0.5))), true, "5 days agree with the book, and make its ± smaller by a third or more.")]
#[case(Some((10.0, None)), true, "5 days agree with the book, which states no ±.")]
#[case(Some((12.0, None)), true, "and the book's value is more than twice that ± off.")]
#[case(Some((12.0, Some(0.05))), true, "too far from the book's value to average the two. Is it another bottle?")]
fn a_change_says_why(
    #[case] stated: Option<(f64, Option<f64>)>,
    #[case] with_unsure: bool,
    #[case] why: &str,
) {
    let (changes, questions, confirmed, not_yet) = learned(&STEADY, stated, with_unsure);
    assert_eq!((questions.len(), confirmed.len(), not_yet.len()), (0, 0, 0));
    assert!(changes[0].why.ends_with(why), "{}", changes[0].why);
    assert!(!changes[0].questioned);
    let before = stated.map(|(value, unsure)| match unsure {
        Some(unsure) => write(grams(value), grams(unsure)),
        None => format!("{value} g"),
    });
    assert_eq!(changes[0].before, before);
    assert_eq!(changes[0].write[0].value, Value::from(changes[0].after.as_str()));
}

#[rstest]
#[case(Some((10.0, Some(0.01))), true)]
// A ± that the book does not write is no change.
#[case(Some((10.0, None)), false)]
fn what_the_book_says_is_confirmed(
    #[case] stated: Option<(f64, Option<f64>)>,
    #[case] with_unsure: bool,
) {
    let (changes, _, confirmed, _) = learned(&STEADY, stated, with_unsure);
    assert_eq!(changes, []);
    assert!(confirmed[0].starts_with("drop: 10.00 g ± ") && confirmed[0].ends_with(" (5 days)"));
}

/// A ± that a timing does not write is not shown, though the library knows one.
#[test]
fn the_books_number_is_shown_as_it_writes_it() {
    let before =
        |with_unsure| learned(&STEADY, Some((12.0, Some(0.05))), with_unsure).0.remove(0).before;
    assert_eq!(before(true).as_deref(), Some("12.00 g ± 0.050"));
    assert_eq!(before(false).as_deref(), Some("12 g"));
}

#[test]
fn what_cannot_be_is_not_learned() {
    let (changes, _, _, not_yet) = learned(&[-1.0, -1.01, -0.99, -1.0], None, true);
    assert_eq!(changes, []);
    assert!(not_yet[0].contains("which cannot be. Check the weighings."), "{not_yet:?}");
    let (_, _, _, not_yet) = learned(&STEADY[..3], None, true);
    assert_eq!(not_yet, ["drop: 3 of 4 days."]);
}

#[test]
fn a_number_that_moves_is_asked_about() {
    let rising = [10.0, 10.1, 10.2, 10.3, 10.4, 10.5];
    let mut falling = rising;
    falling.reverse();
    for (list, word) in [(rising, "It rises from "), (falling, "It falls from ")] {
        let (changes, questions, _, _) = learned(&list, None, true);
        assert!(questions[0].question.starts_with(word), "{}", questions[0].question);
        assert!(changes[0].questioned);
    }
    let mut list = [10.0; 14];
    list[5] = 13.0;
    let (changes, questions, _, _) = learned(&list, None, true);
    assert!(
        questions[0].question.starts_with("13.00 g on 1970-01-06"),
        "{}",
        questions[0].question
    );
    assert!(changes[0].questioned);
}

#[rstest]
#[case("4.000 mL", "4 mL")]
#[case("4.500 mL", "4.5 mL")]
#[case("400 mL", "400 mL")]
#[case("4.000", "4.000")]
fn zeros_that_say_nothing_are_left_out(#[case] text: &str, #[case] expected: &str) {
    assert_eq!(plain(text), expected);
}

/// What is answered on counts: day, made, rejects.
fn rejects(counts: &[(i32, u32, u32)]) -> (Vec<BookChange>, Vec<BookQuestion>, Vec<String>) {
    let book = LoadedBook::from_text(small::BOOK).unwrap();
    let mut mold = book.ready().molds[0].clone();
    mold.rejects = Some(0.05);
    let mut answers = Answers::new(&book);
    let count = |&(day, made, rejects): &(i32, u32, u32)| CountedDay {
        day: Day::from_number(day),
        made,
        rejects,
    };
    answers.rejects(&mold, &counts.iter().map(count).collect::<Vec<_>>());
    (answers.changes, answers.questions, answers.confirmed)
}

#[test]
fn rejects_change_where_the_books_share_is_outside() {
    let (changes, questions, confirmed) =
        rejects(&[(0, 100, 20), (1, 100, 20), (2, 100, 20), (3, 100, 20)]);
    assert_eq!((questions.len(), confirmed.len()), (0, 0));
    // (80 + 1/2)/(400 + 1).
    assert_eq!((changes[0].before.as_deref(), &*changes[0].after), (Some("5 %"), "20.1 %"));
    assert!(!changes[0].questioned);
    let (changes, _, confirmed) = rejects(&[(0, 100, 5), (1, 100, 5), (2, 100, 5), (3, 100, 5)]);
    assert_eq!((changes.len(), confirmed.len()), (0, 1));
}

#[test]
fn rejects_that_become_more_or_stand_out_are_asked_about() {
    let rising = [(0, 200, 2), (1, 200, 12), (2, 200, 22), (3, 200, 32), (4, 200, 42)];
    let falling = [(0, 200, 42), (1, 200, 32), (2, 200, 22), (3, 200, 12), (4, 200, 2)];
    for (list, word) in [(rising, "They become more "), (falling, "They become fewer ")] {
        let (changes, questions, _) = rejects(&list);
        assert!(questions.iter().any(|one| one.question.starts_with(word)), "{questions:?}");
        assert!(changes.iter().all(|change| change.questioned));
    }
    let (changes, questions, _) =
        rejects(&[(0, 100, 20), (1, 100, 80), (2, 100, 20), (3, 100, 20)]);
    assert!(questions[0].question.starts_with("On 1970-01-02 80 of 100 pieces were rejects"));
    assert!(changes.iter().all(|change| change.questioned));
}

/// Whether five days of pieces with this feed share show it, with the cavity of 10 mL known to this share; and what is
/// then written. The plastic shrinks by 5 %, and the feed share is known to 1/√12: 1.44 % of a piece.
fn fed(share: f64, cavity: f64) -> (bool, Vec<BookChange>) {
    let book = LoadedBook::from_text(small::BOOK).unwrap();
    let mut mold = book.ready().molds.iter().find(|mold| mold.name == "worm").unwrap().clone();
    let volume = Volume::from_si(10e-6);
    mold.cavities[0].volume = Measured::new(volume, volume * cavity);
    let density = |g_per_ml: f64| crate::quantity::MassDensity::from_si(g_per_ml * 1e3);
    let of_day = |day| PiecesOfDay {
        day: Day::from_number(day),
        base: "clear".into(),
        pieces: crate::learn::Pieces {
            count: 20,
            weighings: 20,
            mean: grams(10.0 * (0.95 + share * 0.05)),
            scatter: Ratio::from(0.01),
            melt: crate::shot::Melt::new(density(0.95), density(1.0)),
            density: Ratio::from(0.0),
        },
    };
    let pieces: Vec<PiecesOfDay> = (0..5).map(of_day).collect();
    let mut answers = Answers::new(&book);
    let is_feed = answers.feed(&mold, &[(&mold.cavities[0], &pieces)]);
    (is_feed, answers.changes)
}

#[test]
fn weights_show_the_feed_share_where_the_cavity_is_known_better() {
    assert!(fed(0.8, 0.01).0);
    assert!(!fed(0.8, 0.02).0);
    // The cavity to 0.2 % makes the feed share sure to 4 %: 1.1 may be 1 by chance, 1.3 may not.
    let (is_feed, changes) = fed(1.1, 0.002);
    assert!(is_feed);
    assert_eq!(changes[0].after, "100 %");
    assert!(!fed(1.3, 0.002).0);
}

#[test]
fn heats_of_amounts_within_a_fifth_are_of_one_amount() {
    let book = LoadedBook::from_text(include_str!("../../../../examples/demo/book.json")).unwrap();
    let timing = known::timings(&book).remove(0);
    let load = |kilograms: f64| known::timed_load(&book, Mass::from_si(kilograms)).unwrap();
    let heat = |kilograms: f64| HeatOfDay {
        day: Day::from_number(0),
        load: load(kilograms),
        from: timing.start,
        to: timing.end,
        took: timing.duration,
    };
    let timed = |timing_of: f64| {
        let timing = Timing { load: load(timing_of), ..timing };
        Groups::of(&[heat(1.0)], &[timing]).timed.len()
    };
    assert_eq!((timed(1.2), timed(1.21)), (1, 0));
    let new = |other: f64| Groups::of(&[heat(1.0), heat(other)], &[]).new.len();
    assert_eq!((new(1.2), new(1.21)), (1, 2));
}
