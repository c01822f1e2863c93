//! Books, plans and records that earlier versions stored are read by this one.

use std::fs;
use std::path::{Path, PathBuf};

use pourwright::document::{LoadedBook, OpenPlan, OrdersDocument};
use serde_json::{Value, json};

/// The folder of each version.
fn versions() -> Vec<PathBuf> {
    let stored = Path::new(env!("CARGO_MANIFEST_DIR")).join("stored");
    let folders = fs::read_dir(stored).unwrap().map(|entry| entry.unwrap().path());
    let mut folders: Vec<PathBuf> = folders.filter(|path| path.is_dir()).collect();
    folders.sort();
    assert!(folders.len() >= 2);
    folders
}

fn text(path: &Path) -> String {
    fs::read_to_string(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

fn value(text: &str) -> Value {
    serde_json::from_str(text).unwrap()
}

/// The answer's result.
fn result(answer: &str) -> Value {
    let answer = value(answer);
    assert_eq!(answer.get("faults"), None, "{:#}", answer["faults"]);
    answer["result"].clone()
}

/// Whether all of `stored` is in `written`.
fn assert_holds(written: &Value, stored: &Value, path: &str) {
    match (written, stored) {
        (Value::Object(written), Value::Object(stored)) => {
            for (name, value) in stored {
                let found = written.get(name).unwrap_or(&Value::Null);
                assert_holds(found, value, &format!("{path}/{name}"));
            }
        }
        (Value::Array(written), Value::Array(stored)) if written.len() == stored.len() => {
            for (index, (written, stored)) in written.iter().zip(stored).enumerate() {
                assert_holds(written, stored, &format!("{path}/{index}"));
            }
        }
        _ => assert_eq!(written, stored, "{path}"),
    }
}

/// The plan, as it was before plans stated which lines are pooled and which lines draws are for.
fn older(mut plan: Value) -> Value {
    for line in plan["lines"].as_array_mut().unwrap() {
        line.as_object_mut().unwrap().remove("pooled_with");
    }
    for pot in plan["pots"].as_array_mut().unwrap() {
        for stage in pot["stages"].as_array_mut().unwrap() {
            for draw in stage["draws"].as_array_mut().unwrap() {
                let draw = draw.as_object_mut().unwrap();
                draw.remove("line");
                draw.remove("layer");
            }
        }
    }
    plan
}

/// The day of this version ends with a folder of its own.
#[test]
fn this_version_has_its_folder_or_is_not_released() {
    let changelog = text(&Path::new(env!("CARGO_MANIFEST_DIR")).join("../CHANGELOG.md"));
    for version in changelog.lines().filter_map(|line| line.strip_prefix("## ")) {
        let number = version.split(' ').next().unwrap();
        if number == "Unreleased" {
            continue;
        }
        let has = versions().iter().any(|folder| folder.ends_with(number));
        assert!(has, "tests/stored/{number} is missing: see tests/stored/README.md");
    }
}

#[test]
fn a_stored_book_and_its_orders_are_read_and_planned() {
    for version in versions() {
        let plan = value(&text(&version.join("plan.json")));
        let book = LoadedBook::from_text(&plan["made_from"]["book"].to_string()).unwrap();
        let orders = OrdersDocument::from_text(&plan["made_from"]["orders"].to_string()).unwrap();
        let again = serde_json::to_value(book.plan(orders).unwrap()).unwrap();
        for line in 0..plan["lines"].as_array().unwrap().len() {
            for field in ["order", "what", "mold", "pieces"] {
                assert_eq!(again["lines"][line][field], plan["lines"][line][field]);
            }
        }
    }
}

#[test]
fn a_stored_plan_is_opened_and_printed() {
    for version in versions() {
        let stored = text(&version.join("plan.json"));
        let plan = OpenPlan::from_text(&stored).unwrap();
        let sheet = plan.document().sheet().to_string();
        for pot in value(&stored)["pots"].as_array().unwrap() {
            let letter = pot["pot"].as_str().unwrap();
            assert!(sheet.contains(&format!("POT {letter}")), "{sheet}");
        }
        // All that is read is written again; fields that came later may be there as well.
        let written = serde_json::to_value(plan.document()).unwrap();
        assert_holds(&written, &value(&stored), &version.display().to_string());
    }
}

#[test]
fn a_stored_plan_gets_its_record() {
    for version in versions() {
        let plan = OpenPlan::from_text(&text(&version.join("plan.json"))).unwrap();
        let request = json!({ "calculate": "record", "actuals": {
            "format": "pourwright/1.0", "pots": { "A": { "left": "20 g" } }
        } });
        let record = result(&plan.answer_text(&request.to_string()));
        assert_eq!(record["pots"][0]["pot"], "A");
        assert_eq!(record["shelf"].as_array().map(Vec::len), Some(1), "{:#}", record["shelf"]);
    }
}

#[test]
fn the_day_of_a_stored_plan_goes_on() {
    for version in versions() {
        let stored = value(&text(&version.join("plan.json")));
        let plan = OpenPlan::from_text(&stored.to_string()).unwrap();
        let request = json!({ "calculate": "go-on", "pots_now": { "A": { "lost": true } } });
        let on = result(&plan.answer_text(&request.to_string()));
        assert!(!on["plan"]["pots"].as_array().unwrap().is_empty());
    }
}

/// Plans of this version without what older ones lack go on as the whole ones do: what lines are pooled and what draws are for is
/// found again, laminated pieces, unlike cavities and two products for one piece included.
#[test]
fn what_an_older_plan_lacks_is_found_in_its_orders() {
    let demo = value(&text(&versions()[0].join("plan.json")));
    let (book, orders) = (&demo["made_from"]["book"], &demo["made_from"]["orders"]);
    let mut twice = book.clone();
    let same = book["products"]["reed paddle"].clone();
    assert!(same.is_object());
    twice["products"]["paddle of reed"] = same;
    let mut more = orders.clone();
    let lines = more["lines"].as_array_mut().unwrap();
    lines.push(json!({ "order": "40", "product": "paddle of reed", "pieces": 7 }));
    // Laminated pieces that share their first layer, and one of two equal layers.
    for layers in [
        json!([{ "formulas": ["reed", "plain"], "share": "60 %" }, { "formulas": ["ember", "plain"], "share": "40 %" }]),
        json!([{ "formulas": ["reed", "plain"], "share": "50 %" }, { "formulas": ["night", "plain"], "share": "50 %" }]),
    ] {
        lines.push(json!({ "order": "41", "mold": "minnow-3", "layers": layers, "pieces": 15 }));
    }
    for (book, orders) in [(book, orders), (&twice, &more)] {
        let loaded = LoadedBook::from_text(&book.to_string()).unwrap();
        let plan = loaded.plan_text(&orders.to_string()).unwrap();
        let whole = serde_json::to_value(&plan).unwrap();
        let older = older(whole.clone());
        assert_ne!(older, whole);
        let first = whole["pots"][0]["pot"].as_str().unwrap();
        for now in [json!({}), json!({ first: { "lost": true } })] {
            let ask = |plan: &Value| {
                let request =
                    json!({ "calculate": "go-on", "book": book, "plan": plan, "pots_now": now });
                result(&pourwright::request::answer_text(&request.to_string()))
            };
            assert_eq!(ask(&older), ask(&whole));
        }
    }
}

/// Where the orders do not show it either, the day does not go on with a guess.
#[test]
fn a_draw_that_fits_no_order_is_refused() {
    let mut plan = older(value(&text(&versions()[0].join("plan.json"))));
    plan["pots"][0]["stages"][0]["draws"][0]["mold"] = json!("no such mold");
    let request = json!({ "calculate": "go-on", "book": plan["made_from"]["book"], "plan": plan });
    let answer = value(&pourwright::request::answer_text(&request.to_string()));
    assert_eq!(answer["faults"][0]["code"], "missing-field");
    assert_eq!(answer["faults"][0]["path"], "/plan/pots");
}

#[test]
fn a_stored_record_is_learned_from() {
    for version in versions() {
        // Nothing read a record back when it was stored.
        if version.ends_with("0.1.0-first") {
            continue;
        }
        let plan = value(&text(&version.join("plan.json")));
        let record = value(&text(&version.join("record.json")));
        let request = json!({
            "calculate": "learn", "book": plan["made_from"]["book"], "records": [record]
        });
        let learned = result(&pourwright::request::answer_text(&request.to_string()));
        assert_eq!(learned["days"], 1);
    }
}
