use alloc::{format, vec};

use rstest::rstest;
use serde_json::{Value, json};

use super::*;
use crate::document::{LoadedBook, small};
use crate::plan::{MaterialMass, OnShelf};
use crate::quantity::{Measurable, Ratio, Time};
use crate::record::Actuals;
use crate::show::text;

fn mass(grams: f64) -> Shown<Mass> {
    text::mass(Mass::from_si(grams / 1e3))
}

/// The plan of a small day, with these leftovers: name, used and stays, in g.
fn plan(shelf: &[(&str, f64, f64)]) -> (LoadedBook, PlanDocument) {
    let book = LoadedBook::from_text(small::BOOK).unwrap();
    let line = r#"{ "order": "1", "product": "sky worm", "pieces": 4 }"#;
    let mut plan = book.plan_text(&small::orders(line)).unwrap();
    let entry = |&(name, used, stays): &(&str, f64, f64)| {
        let entry =
            json!({ "name": name, "mass": format!("{} g", used + stays), "formulas": ["body"] });
        crate::json::reader::read_value::<ShelfEntry>(&entry).unwrap()
    };
    plan.made_from.as_mut().unwrap().orders.shelf = Some(shelf.iter().map(entry).collect());
    let on_shelf = |&(name, used, stays): &(&str, f64, f64)| OnShelf {
        name: name.into(),
        made: None,
        had: mass(used + stays),
        used: mass(used),
        stays: mass(stays),
        pots: Vec::new(),
        ext: None,
    };
    plan.plan.shelf = shelf.iter().map(on_shelf).collect();
    (book, plan)
}

fn jar(name: &str, heats: Option<u32>, minutes: Option<f64>) -> Jar {
    Jar {
        name: name.into(),
        pot: "A".into(),
        mass: mass(40.0),
        sprues: mass(0.0),
        parts: vec![MaterialMass { material: "clear".into(), mass: mass(40.0) }],
        heats,
        spent: minutes.map(|minutes| text::minutes(Time::from_si(60.0 * minutes))),
    }
}

/// Name and mass of the entries that the next day's shelf gets, and where they are written.
fn written(plan: &PlanDocument, record: &Record) -> (Vec<String>, Vec<(String, String)>) {
    let changes = shelf(plan, record, System::UsCustomary).unwrap();
    let text = |entry: &Value, key: &str| entry[key].as_str().unwrap().to_string();
    let entries = changes.iter().flat_map(|change| match &change.value {
        Value::Array(list) => list.clone(),
        one => vec![one.clone()],
    });
    let entries = entries.map(|entry| (text(&entry, "name"), text(&entry, "mass"))).collect();
    (changes.into_iter().map(|change| change.path).collect(), entries)
}

fn pairs(list: &[(&str, &str)]) -> Vec<(String, String)> {
    list.iter().map(|(a, b)| (a.to_string(), b.to_string())).collect()
}

#[test]
fn the_next_shelf_is_what_stays_and_what_is_left() {
    let (book, mut plan) = plan(&[("all", 30.0, 0.0), ("some", 30.0, 20.0), ("none", 0.0, 50.0)]);
    let mut record = Record::make(&plan.plan, book.ready(), &Actuals::default()).unwrap();
    record.jars = vec![jar("new", Some(1), None)];
    let (paths, entries) = written(&plan, &record);
    assert_eq!(paths, ["/shelf"]);
    assert_eq!(entries, pairs(&[("some", "20 g"), ("none", "50 g"), ("new", "40 g")]));
    // Of a plan without its orders only the new jars are known; they come after what is there.
    plan.made_from = None;
    let (paths, entries) = written(&plan, &record);
    assert_eq!((paths, entries), (vec!["/shelf/-".to_string()], pairs(&[("new", "40 g")])));
    plan.plan.shelf.clear();
    assert_eq!(written(&plan, &record).0, ["/shelf"]);
    record.jars.clear();
    assert_eq!(written(&plan, &record).0, Vec::<String>::new());
}

#[test]
fn a_leftover_that_was_not_touched_stays_as_it_is_written() {
    let (book, mut plan) = plan(&[("none", 0.0, 50.0)]);
    let mut record = Record::make(&plan.plan, book.ready(), &Actuals::default()).unwrap();
    record.jars.clear();
    let entry = json!({ "name": "none", "mass": "0.05 kg", "formulas": ["body"] });
    let entry = crate::json::reader::read_value::<ShelfEntry>(&entry).unwrap();
    plan.made_from.as_mut().unwrap().orders.shelf = Some(vec![entry]);
    assert_eq!(written(&plan, &record).1, pairs(&[("none", "0.05 kg")]));
}

#[rstest]
#[case(Some(0), None, json!(null), json!(null))]
#[case(Some(1), Some(0.0), json!(1), json!(null))]
#[case(Some(2), Some(4.5), json!(2), json!("4.5 min"))]
#[case(None, Some(0.5), json!(null), json!("0.5 min"))]
#[case(None, Some(0.01), json!(null), json!("0.01 min"))]
fn a_jar_keeps_what_it_has_been_through(
    #[case] heats: Option<u32>,
    #[case] minutes: Option<f64>,
    #[case] expected_heats: Value,
    #[case] expected_spent: Value,
) {
    let (_, plan) = plan(&[]);
    let entry = entry(&jar("new", heats, minutes), &plan.plan, System::UsCustomary).unwrap();
    let entry = value(&entry);
    assert_eq!((&entry["heats"], &entry["spent"]), (&expected_heats, &expected_spent));
}

#[rstest]
#[case(Some(0.05), Some(0.04), true, false)]
#[case(Some(0.04), Some(0.05), false, true)]
// Of two alike the first by shape; one that is not known takes no part.
#[case(Some(0.05), Some(0.05), true, false)]
#[case(None, Some(0.05), true, false)]
#[case(Some(0.05), None, false, true)]
fn a_mold_gets_the_surest_feed_of_its_shapes(
    #[case] short: Option<f64>,
    #[case] long: Option<f64>,
    #[case] of_long: bool,
    #[case] of_short: bool,
) {
    let percent = |share: f64| Shown::new(Ratio::from(share), "50 %");
    let found = |mold: &str, shape: &str, unsure: Option<f64>| Found {
        mold: mold.into(),
        shape: Some(shape.into()),
        pots: Vec::new(),
        pieces: 1,
        weighs: mass(9.5),
        planned: mass(9.5),
        expected: mass(9.5),
        off: percent(0.0),
        off_uncertainty: percent(0.0),
        cavity: None,
        feed: unsure.map(|_| percent(0.5)),
        feed_uncertainty: unsure.map(percent),
        text: String::new(),
    };
    let all = [
        found("pair", "long", long),
        found("pair", "short", short),
        found("worm", "short", Some(0.01)),
    ];
    let has = |one: &Found| feed(one, &all).is_some();
    assert_eq!((has(&all[0]), has(&all[1]), has(&all[2])), (of_long, of_short, true));
}

#[test]
fn a_record_is_read_back_from_an_answer_or_alone() {
    let (_, plan) = plan(&[]);
    let open = crate::document::OpenPlan::try_from(plan).unwrap();
    let ask =
        json!({ "calculate": "record", "actuals": { "format": "pourwright/1.0", "pots": {} } });
    let answer: Value = serde_json::from_str(&open.answer_text(&ask.to_string())).unwrap();
    let read = |value: &Value| crate::json::reader::read_value::<Record>(value);
    let whole = read(&answer["result"]).unwrap_or_else(|faults| panic!("{faults}"));
    let mut alone = answer["result"].clone();
    for field in ["calculate", "write", "shelf", "text"] {
        alone.as_object_mut().unwrap().remove(field);
    }
    assert_eq!(read(&alone).unwrap_or_else(|faults| panic!("{faults}")), whole);
    // Another calculation's answer is no record.
    let mut other = answer["result"].clone();
    other["calculate"] = "mix".into();
    assert!(read(&other).is_err());
    alone["calculate"] = "record".into();
    assert!(read(&alone).is_err());
}
