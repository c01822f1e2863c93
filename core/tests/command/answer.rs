//! Requests answered by name.

use std::collections::BTreeSet;

use pourwright::document::LoadedBook;
use pourwright::request::{CALCULATIONS, answer_text};
use rstest::rstest;
use serde_json::{Value, json};

use crate::{book, file, orders, read, run, temporary};

fn value(text: &str) -> Value {
    serde_json::from_str(text).unwrap_or_else(|error| panic!("{error}: {text}"))
}

/// Every calculation has an example, which is answered, and nothing else has one.
#[test]
fn every_example_is_answered() {
    let names = run(&["example"], "").fine();
    assert_eq!(names.lines().collect::<Vec<_>>(), CALCULATIONS);
    let plan = LoadedBook::from_text(&read(&book())).unwrap().open_plan_text(&read(&orders()));
    let plan = plan.unwrap();
    for name in CALCULATIONS {
        let example = run(&["example", name], "").fine();
        assert_eq!(example, read(&file(&format!("examples/requests/{name}.json"))));
        assert_eq!(value(&example)["calculate"], *name);
        let answer = run(&["answer", name, "-", "--demo", "--json"], &example).fine();
        assert_eq!(value(&answer), value(&plan.answer_text(&example)), "{name}");
        let outline = run(&["answer", name, "-", "--demo"], &example).fine();
        assert!(!outline.trim().is_empty() && !outline.contains("{\""), "{name}: {outline}");
    }
    let folder = std::fs::read_dir(file("examples/requests")).unwrap();
    let files: BTreeSet<String> =
        folder.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    assert_eq!(files, CALCULATIONS.iter().map(|name| format!("{name}.json")).collect());
}

#[test]
fn fields_go_before_those_of_the_file() {
    let request = temporary("convert.json", r#"{ "amount": "1 cup", "to": "mL" }"#);
    let answer = |given: &[&str]| {
        value(&run(&[&["answer", "convert", "--json"], given].concat(), "").fine())["result"].take()
    };
    assert_eq!(answer(&[&request])["value"], json!(236.5882365));
    assert_eq!(answer(&[&request, "measures=metric"])["value"], json!(250.0));
    assert_eq!(answer(&["to=tsp", &request])["unit"], "tsp");
    assert_eq!(answer(&["amount={ \"value\": 2, \"unit\": \"cup\" }", "to=mL"])["unit"], "mL");
}

#[test]
fn an_outline_is_short_and_in_order() {
    let outline = run(&["answer", "salt", &file("examples/requests/salt.json")], "").fine();
    let expected = "mass: 44.1 g\nas scooped: 36.16 mL (about 2 1/2 tbsp, +2.2 %)\n";
    assert!(outline.starts_with(expected), "{outline}");
    let correct = run(&["correct", &file("examples/requests/correct.json"), "--demo"], "").fine();
    let fields: Vec<&str> = correct.lines().filter(|line| line.starts_with("- ")).collect();
    assert_eq!(fields, Vec::<&str>::new());
    assert!(correct.lines().all(|line| line.chars().count() <= 80), "{correct}");
}

#[test]
fn a_plan_is_answered_by_its_sheet() {
    let example = run(&["example", "plan"], "").fine();
    let sheet = run(&["answer", "plan", "-", "--book", &book()], &example).fine();
    assert!(sheet.starts_with("BENCH SHEET"), "{sheet}");
}

/// A day goes on from the plan that was stored.
#[test]
fn a_stored_plan_is_opened_again() {
    let plan = temporary("plan.json", &run(&["plan", "--json"], "").fine());
    let record = run(&["example", "record"], "").fine();
    let opened = run(&["record", "-", "--plan", &plan, "--json"], &record).fine();
    assert_eq!(opened, run(&["record", "-", "--demo", "--json"], &record).fine());
    // So is the plan in the answer of a day that goes on.
    let noon = temporary("noon.json", &run(&["go-on", "--demo", "--json"], "").fine());
    let nothing = r#"{ "format": "pourwright/1.0", "pots": {} }"#;
    let rest = value(&run(&["record", "-", "--plan", &noon, "--json"], nothing).fine());
    assert_eq!(rest["result"]["pots"].as_array().map(Vec::is_empty), Some(false));
    let stale = temporary("no-plan.json", r#"{ "format": "pourwright/1.0" }"#);
    let ran = run(&["record", "-", "--plan", &stale], &record);
    assert_eq!(ran.code, Some(1));
    assert!(ran.complaint.starts_with(&format!("{stale}:1:1: error: ")), "{}", ran.complaint);
}

/// The notes of a day are a document of their own.
#[test]
fn actuals_alone_are_a_record() {
    let actuals = file("examples/demo/actuals.json");
    let record = run(&["record", &actuals, "--demo", "--json"], "").fine();
    let whole = format!(r#"{{ "actuals": {} }}"#, read(&actuals));
    assert_eq!(run(&["record", "-", "--demo", "--json"], &whole).fine(), record);
    let page = run(&["record", &actuals, "--demo"], "").fine();
    assert!(page.lines().count() <= 60 && page.lines().all(|line| line.chars().count() <= 80));
    let wrong = "{\n  \"format\": \"pourwright/1.0\",\n  \"pots\": { \"Q\": {} }\n}";
    let ran = run(&["record", "-", "--demo"], wrong);
    assert!(ran.complaint.starts_with("standard input:3:18: error: "), "{}", ran.complaint);
    let trial = r#"{ "start": "1/2 cup", "log": [{ "plum": "12 drops" }] }"#;
    assert!(run(&["trial", "-", "--demo"], trial).fine().contains("plum 24 drops"));
}

/// A book learns from records as they were printed.
#[test]
fn records_of_days_are_read_from_their_files() {
    let day = |day: &str| {
        let orders = read(&orders()).replace("2027-03-02", day);
        let plan = temporary("day.json", &run(&["plan", &book(), "-", "--json"], &orders).fine());
        let pots = r#"actuals={ "format": "pourwright/1.0", "pots": {} }"#;
        let record = run(&["record", pots, "--plan", &plan, "--json"], "").fine();
        temporary(&format!("{day}.json"), &record)
    };
    let days = [day("2027-03-02"), day("2027-03-03")];
    let learn =
        |given: &[&str]| run(&[&["learn", "--book", &book(), &days[0]], given].concat(), "");
    let outline = learn(&[&days[1]]).fine();
    assert!(outline.contains("2027-03-03") && outline.lines().count() < 60, "{outline}");
    let later = learn(&[&days[1], "--after", "2027-03-02", "--json"]).fine();
    assert_eq!(value(&later)["result"]["days"], 1);
    let broken =
        temporary("broken-record.json", &read(&days[1]).replace("\"us-customary\"", "\"us\""));
    let ran = learn(&[&broken]);
    assert_eq!((ran.code, ran.out.as_str()), (Some(1), ""));
    let place = ran.complaint.lines().next().unwrap().split_once(": error: ").unwrap().0;
    let line = place.strip_prefix(&format!("{broken}:")).unwrap().split_once(':').unwrap().0;
    let line = read(&broken).lines().nth(line.parse::<usize>().unwrap() - 1).unwrap().to_owned();
    assert!(line.contains("\"measures\": \"us\""), "{}", ran.complaint);
}

#[test]
fn faults_are_where_they_were_written() {
    let request = temporary("salt.json", "{\n  \"base_volume\": \"1,25 cup\",\n  \"sold\": 1\n}");
    let ran = run(&["answer", "salt", &request, "loading=5"], "");
    assert_eq!((ran.code, ran.out.as_str()), (Some(1), ""));
    for place in ["salt.json:2:18: error: ", "salt.json:3:3: error: ", "loading=5: error: "] {
        assert!(ran.complaint.contains(place), "{place}: {}", ran.complaint);
    }
    let request = r#"{ "calculate": "salt", "base_volume": "1,25 cup" }"#;
    let ran = run(&["answer", "salt", "-", "--json"], request);
    assert_eq!((ran.code, ran.complaint.as_str()), (Some(1), ""));
    assert_eq!(value(&ran.out), value(&answer_text(request)));
}

#[rstest]
#[case::other_name(&["answer", "convert", "-"], r#"{ "calculate": "salt" }"#, 1, "was asked for")]
#[case::not_an_object(&["answer", "convert", "-"], "[]", 1, "pourwright example convert")]
#[case::not_json(&["answer", "convert", "-"], "{\n  \"to\": mL\n}", 1, "standard input:2:9: ")]
#[case::no_name(&["answer", "konvert"], "", 2, "'convert'")]
#[case::two_files(&["answer", "convert", "-", "b.json"], "{}", 2, "a second file")]
#[case::two_open(&["answer", "cost", "--demo", "--book", "x"], "", 2, "cannot be used with")]
fn slips(#[case] given: &[&str], #[case] input: &str, #[case] code: i32, #[case] says: &str) {
    let ran = run(given, input);
    assert_eq!((ran.code, ran.out.as_str()), (Some(code), ""));
    assert!(ran.complaint.contains(says), "{}", ran.complaint);
}
