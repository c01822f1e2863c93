//! Records of the demo shop: what its book learns, and the laws that hold for any records.

use json_patch::{Patch, patch};
use pourwright::request::LearnResponse;
use pourwright_tests::demo::{BOOK, json};
use serde_json::{Value, json};

use crate::shop::{AS_IN_THE_BOOK, Shop, Truth, change, date};
use pourwright_tests::chance::Chance;

const OTHER: Truth = Truth {
    plum: 0.052,
    salt: 1.42,
    cavity: 1.05,
    rejects: 0.15,
    keeps: 6.0,
    heating: 1.25,
    shot: 38.0,
};

fn applied(book: &Value, change: &Value) -> Value {
    let operations: Patch = serde_json::from_value(change["write"].clone()).expect("a patch");
    let mut book = book.clone();
    patch(&mut book, &operations).expect("it applies");
    book
}

fn all_applied(book: &Value, learned: &Value) -> Value {
    list(learned, "changes").iter().fold(book.clone(), |book, change| applied(&book, change))
}

fn list<'a>(value: &'a Value, key: &str) -> &'a [Value] {
    value[key].as_array().unwrap_or_else(|| panic!("no {key} in {value}"))
}

/// The numbers of a text such as `0.044 g ± 0.003`: the value, and its ± where it has one.
fn numbers(text: &Value) -> (f64, Option<f64>) {
    let text = text.as_str().expect("a text");
    let number =
        |text: &str| text.split_whitespace().next().and_then(|one| one.parse::<f64>().ok());
    let mut parts = text.split('±');
    let value = parts.next().and_then(number).unwrap_or_else(|| panic!("{text}"));
    (value, parts.next().and_then(number))
}

fn codes(answer: &Value) -> Vec<(&str, &str)> {
    list(answer, "faults")
        .iter()
        .map(|fault| (fault["code"].as_str().unwrap(), fault["path"].as_str().unwrap()))
        .collect()
}

#[test]
fn a_shop_that_differs_from_its_book() {
    let shop = Shop::demo();
    let records = shop.days(&mut Chance::seeded(5), 14, &OTHER);
    let learned = shop.learn(&records);
    assert_eq!((&learned["days"], &learned["from"]), (&json!(14), &json!("2027-03-01")));
    for (what, truth, slack) in [
        ("drop of plum", OTHER.plum, 0.03),
        ("fine-salt as scooped", OTHER.salt, 0.06),
        ("cavity of finger-5", 9.5 * OTHER.cavity, 0.03),
        ("rejects of finger-5", 100.0 * OTHER.rejects, 0.3),
        ("volume that the injector keeps", OTHER.keeps, 0.06),
        ("heating of 487.4 g", 206.0 * OTHER.heating, 0.06),
        ("time of a shot into finger-5", OTHER.shot, 0.06),
    ] {
        let change = change(&learned, what).unwrap_or_else(|| panic!("no {what} in {learned}"));
        let (after, _) = numbers(&change["after"]);
        assert!((after / truth - 1.0).abs() < slack, "{change} for {truth}");
        assert_ne!(change["before"], Value::Null);
        assert_eq!(change["days"], 14);
        // It fits on two lines of a page.
        let why = change["why"].as_str().unwrap();
        assert!(why.ends_with(['.', '?']) && why.chars().count() < 154, "{why}");
        // It applies by itself.
        Shop::of(&applied(&json(BOOK), change));
    }
    assert_eq!(list(&learned, "changes").len(), 7, "{learned}");
    assert!(list(&learned, "not_yet").is_empty(), "{learned}");
    // All together give a book that the same days confirm.
    let again = Shop::of(&all_applied(&json(BOOK), &learned)).learn(&records);
    assert_eq!(list(&again, "changes"), [] as [Value; 0], "{again}");
    assert_eq!(list(&again, "confirmed").len(), 7, "{again}");
}

/// What is within the book's ± is not a change, unless the ± becomes much smaller.
#[test]
fn a_shop_as_its_book_has_it() {
    let shop = Shop::demo();
    let records = shop.days(&mut Chance::seeded(6), 14, &AS_IN_THE_BOOK);
    let learned = shop.learn(&records);
    for change in list(&learned, "changes") {
        let ((before, of_book), (after, unsure)) =
            (numbers(&change["before"]), numbers(&change["after"]));
        let of_book = of_book.unwrap_or(2.0 * unsure.unwrap_or(0.0));
        assert!((after - before).abs() <= of_book * 1.01, "{change}");
        assert!(unsure.unwrap() <= of_book * 0.67, "{change}");
    }
    assert!(change(&learned, "drop of plum").is_some(), "{learned}");
    for what in ["rejects of finger-5", "time of a shot into finger-5", "heating of 487.4 g"] {
        assert!(change(&learned, what).is_none(), "{learned}");
    }
    let again = Shop::of(&all_applied(&json(BOOK), &learned)).learn(&records);
    assert_eq!(list(&again, "changes"), [] as [Value; 0], "{again}");
}

#[test]
fn records_without_differences_teach_nothing() {
    let shop = Shop::demo();
    let records: Vec<Value> = (0..12).map(|day| shop.record(&date(day), &json!({}))).collect();
    let learned = shop.learn(&records);
    assert_eq!(learned["days"], 12);
    for key in ["changes", "questions", "confirmed", "not_yet"] {
        assert_eq!(list(&learned, key), [] as [Value; 0], "{learned}");
    }
    let nothing = shop.learn(&[]);
    assert_eq!((&nothing["days"], &nothing["to"]), (&json!(0), &Value::Null));
}

/// On bits: the same text.
#[test]
fn the_order_of_records_does_not_matter() {
    let shop = Shop::demo();
    let mut chance = Chance::seeded(7);
    let mut records = shop.days(&mut chance, 9, &OTHER);
    let learned = shop.learn(&records).to_string();
    for _ in 0..6 {
        for place in (1..records.len()).rev() {
            records.swap(place, chance.whole(0, u32::try_from(place).unwrap()) as usize);
        }
        assert_eq!(shop.learn(&records).to_string(), learned);
    }
}

#[test]
fn a_day_counts_once() {
    let shop = Shop::demo();
    let mut chance = Chance::seeded(8);
    let records = shop.days(&mut chance, 4, &OTHER);
    let twice = [&records[..], &records[1..2]].concat();
    assert_eq!(codes(&shop.ask(&twice, &[])), [("learn-record-twice", "/records/4")]);
    // The same plan with other numbers may be a correction; a day is one day all the same.
    let mut corrected = shop.pour(&mut chance, &date(1), &OTHER);
    let three = [&records[..3], &[corrected.clone()]].concat();
    let learned = shop.learn(&three);
    let question = list(&learned, "questions")[0]["question"].as_str().unwrap();
    assert!(question.starts_with("2 records are of 2027-03-03 and of one plan."), "{question}");
    assert_eq!(list(&learned, "changes"), [] as [Value; 0], "{learned}");
    assert!(list(&learned, "not_yet").contains(&json!("drop of plum: 3 of 4 days.")), "{learned}");
    // On another day it is one more.
    corrected["day"] = json!("2027-03-04");
    let four = [&records[..3], &[corrected]].concat();
    assert!(change(&shop.learn(&four), "drop of plum").is_some());
}

#[test]
fn only_later_days_count() {
    let shop = Shop::demo();
    let mut chance = Chance::seeded(9);
    let old = shop.days(&mut chance, 6, &AS_IN_THE_BOOK);
    let new: Vec<Value> = (6..12).map(|day| shop.pour(&mut chance, &date(day), &OTHER)).collect();
    let after = [("after", json!(date(5)))];
    let all = [&old[..], &new[..]].concat();
    let answer = shop.ask(&all, &after);
    assert_eq!(answer["result"], shop.learn(&new), "{answer}");
}

#[test]
fn what_cannot_be_counted_is_refused_with_its_place() {
    let shop = Shop::demo();
    let record = shop.record("2027-03-05", &json!({}));
    let with_day = |day: Value| {
        let mut record = record.clone();
        record["day"] = day;
        record
    };
    let faulty = [record.clone(), with_day(Value::Null), with_day(json!("5 March"))];
    let faults = shop.ask(&faulty, &[("after", json!("yesterday"))]);
    assert_eq!(codes(&faults), [("not-a-date", "/after")]);
    let faults = shop.ask(&faulty, &[]);
    let expected = [("learn-no-day", "/records/1"), ("not-a-date", "/records/2/day")];
    assert_eq!(codes(&faults), expected);
    let not_one = shop.ask(&[json!({ "pots": [] })], &[]);
    assert!(codes(&not_one).iter().all(|(_, path)| path.starts_with("/records/0")), "{not_one}");
}

/// An answer of the door is taken as it comes, with the name of its calculation.
#[test]
fn a_record_is_taken_as_it_was_answered() {
    let shop = Shop::demo();
    let mut record = shop.record("2027-03-05", &json!({}));
    assert_eq!(record["calculate"], "record");
    let learned = shop.learn(std::slice::from_ref(&record));
    record.as_object_mut().unwrap().remove("calculate");
    assert_eq!(shop.learn(&[record]), learned);
}

#[test]
fn a_bottle_that_empties_and_a_miscount_are_questioned() {
    let shop = Shop::demo();
    let mut chance = Chance::seeded(10);
    let falling: Vec<Value> = (0..12)
        .map(|day| {
            let truth = Truth { plum: 0.05 - 0.001 * f64::from(day), ..AS_IN_THE_BOOK };
            shop.pour(&mut chance, &date(day), &truth)
        })
        .collect();
    let learned = shop.learn(&falling);
    let asked = list(&learned, "questions");
    assert_eq!(asked.len(), 1, "{learned}");
    assert_eq!(asked[0]["what"], "drop of plum");
    let question = asked[0]["question"].as_str().unwrap();
    assert!(question.starts_with("It falls from 0.0"), "{question}");
    assert!(question.contains(" on 2027-03-01 to "), "{question}");
    assert_eq!(
        change(&learned, "drop of plum").map(|change| &change["questioned"]),
        Some(&json!(true))
    );

    let mut miscounted = shop.days(&mut chance, 10, &AS_IN_THE_BOOK);
    let wrong = Truth { plum: 0.044 * 1.4, ..AS_IN_THE_BOOK };
    miscounted[6] = shop.pour(&mut chance, &date(6), &wrong);
    let learned = shop.learn(&miscounted);
    let asked = list(&learned, "questions");
    assert_eq!(asked.len(), 1, "{learned}");
    let question = asked[0]["question"].as_str().unwrap();
    assert!(question.contains("on 2027-03-13, and 0.04"), "{question}");
}

/// A pot of 325 g is between the amounts that were timed: its heatings become a timing of their own.
#[test]
fn an_amount_without_a_timing_gets_one() {
    let book = json(BOOK);
    let shop = Shop::pouring(&book, 30);
    let mut chance = Chance::seeded(14);
    let records: Vec<Value> = (0..8)
        .map(|day| {
            let heat = 150.0 * (1.0 + 0.05 * chance.normal());
            let heats =
                json!([{ "time": format!("{heat:.0} s"), "from": "68 °F", "to": "335 °F" }]);
            shop.record(&date(day), &json!({ "A": { "heats": heats, "reheats": 0 } }))
        })
        .collect();
    let learned = shop.learn(&records);
    let [change] = list(&learned, "changes") else { panic!("{learned}") };
    let write = &change["write"][0];
    assert_eq!(write["path"], "/bench/oven/timings/-");
    let timing = &write["value"];
    assert_eq!((&timing["from"], &timing["to"]), (&json!("68 °F"), &json!("335 °F")));
    // Of pure base: what the mix of the pot takes, within a few per cent.
    assert!((numbers(&timing["time"]).0 / 150.0 - 1.0).abs() < 0.06, "{timing}");
    assert_eq!(change["before"], Value::Null);
    let sharper = applied(&book, change);
    assert_eq!(list(&sharper["bench"]["oven"], "timings").len(), 5);
    let again = Shop::pouring(&sharper, 30).learn(&records);
    assert_eq!(list(&again, "changes"), [] as [Value; 0], "{again}");
}

/// A page of 80 columns.
#[test]
fn the_sheet_fits_a_page() {
    let shop = Shop::demo();
    let mut records = shop.days(&mut Chance::seeded(5), 14, &OTHER);
    let wrong = Truth { plum: 0.03, ..OTHER };
    records[6] = shop.pour(&mut Chance::seeded(15), &date(6), &wrong);
    let learned: LearnResponse = serde_json::from_value(shop.learn(&records)).expect("an answer");
    let sheet = learned.sheet().to_string();
    assert!(sheet.starts_with("LEARNED FROM 14 DAYS"), "{sheet}");
    assert!(sheet.lines().all(|line| line.chars().count() <= 80), "{sheet}");
    assert!(sheet.lines().count() < 45, "{sheet}");
    for change in &learned.changes {
        assert!(sheet.contains(&change.after), "{sheet}");
    }
    assert!(sheet.contains("TO LOOK AT\n  drop of plum: 0.0"), "{sheet}");
    let nothing: LearnResponse = serde_json::from_value(shop.learn(&[])).expect("an answer");
    assert!(nothing.sheet().to_string().contains("No change to the book."));
}

/// Where the cavity is known by its water and the feed share is not, the weights give the feed share.
#[test]
fn a_feed_share_is_learned_where_the_cavity_is_known() {
    let mut book: Value = json(BOOK);
    let mold = &mut book["molds"]["finger-5"];
    mold["cavity"] = json!({ "water": "9.47 g ± 0.005", "at": "22 °C" });
    mold.as_object_mut().unwrap().remove("feed");
    let shop = Shop::of(&book);
    // 1.5 % heavier than with half of the contraction fed, of which there are some 9 %.
    let truth = Truth { cavity: 1.015, ..AS_IN_THE_BOOK };
    let records = shop.days(&mut Chance::seeded(11), 12, &truth);
    let learned = shop.learn(&records);
    let change = change(&learned, "feed share of finger-5").unwrap_or_else(|| panic!("{learned}"));
    let (feed, _) = numbers(&change["after"]);
    assert!((55.0..80.0).contains(&feed), "{change}");
    assert_eq!(change["write"][0]["path"], "/molds/finger-5/feed");
    let again = Shop::of(&all_applied(&book, &learned)).learn(&records);
    assert_eq!(list(&again, "changes"), [] as [Value; 0], "{again}");
    // Heavier than any feed makes it: then it is the cavity.
    let heavy = Truth { cavity: 1.15, ..AS_IN_THE_BOOK };
    let learned = shop.learn(&shop.days(&mut Chance::seeded(12), 12, &heavy));
    assert!(crate::shop::change(&learned, "cavity of finger-5").is_some(), "{learned}");
}

/// Shops whose truth their book knows to within its ±: what is learned from their records covers it as often as it says.
#[test]
fn what_is_learned_from_records_covers_the_truth() {
    const SHOPS: u32 = 120;
    let mut chance = Chance::seeded(13);
    let shop = Shop::demo();
    let (mut one, mut two) = ([0.0; 3], [0.0; 3]);
    for _ in 0..SHOPS {
        let truth = Truth {
            plum: 0.044 + 0.003 * chance.normal(),
            cavity: 1.0 + 0.1 / 9.5 * chance.normal(),
            keeps: 4.0,
            ..AS_IN_THE_BOOK
        };
        let learned = shop.learn(&shop.days(&mut chance, 10, &truth));
        let truths = [
            ("drop of plum", truth.plum),
            ("cavity of finger-5", 9.5 * truth.cavity),
            ("volume that the injector keeps", truth.keeps),
        ];
        for (place, (what, truth)) in truths.into_iter().enumerate() {
            let (value, unsure) = match change(&learned, what) {
                Some(change) => numbers(&change["after"]),
                None => confirmed(&learned, what),
            };
            let off = ((value - truth) / unsure.expect("a ±")).abs();
            one[place] += f64::from(off <= 1.0);
            two[place] += f64::from(off <= 2.0);
        }
    }
    let n = f64::from(SHOPS);
    let least = |rate: f64| rate - 3.0 * (rate * (1.0 - rate) / n).sqrt();
    for place in 0..3 {
        assert!(one[place] / n > least(0.6827), "{one:?}");
        assert!(two[place] / n > least(0.9545), "{two:?}");
    }
}

fn confirmed(learned: &Value, what: &str) -> (f64, Option<f64>) {
    let lines = list(learned, "confirmed").iter().filter_map(Value::as_str);
    let found = lines.filter_map(|line| line.strip_prefix(what)).next();
    let found = found.unwrap_or_else(|| panic!("no {what} in {learned}"));
    numbers(&json!(found.trim_start_matches(": ").replace('(', " ")))
}
