use std::string::{String, ToString};
use std::vec::Vec;

use rstest::rstest;
use serde_json::{Value, json};

use crate::document::{LoadedBook, OpenPlan};

fn day(change: impl FnOnce(&mut Value)) -> OpenPlan {
    let mut book: Value =
        serde_json::from_str(include_str!("../../../examples/demo/book.json")).unwrap();
    change(&mut book);
    let orders = include_str!("../../../examples/demo/orders.json");
    LoadedBook::from_text(&serde_json::to_string(&book).unwrap())
        .unwrap()
        .open_plan_text(orders)
        .unwrap()
}

fn asked(plan: &OpenPlan, step: &str, reading: &str) -> Value {
    let request = json!({ "calculate": "next-burst", "heat_step": step, "reading": reading });
    let answer = plan.answer_text(&serde_json::to_string(&request).unwrap());
    serde_json::from_str(&answer).unwrap()
}

// The table of the demo's pot A: 1:30 under 260 °F, 0:45, 0:20, 0:10 under 329 °F, hot up to 346 °F. 329 °F is 165 °C.
#[rstest]
#[case("68 °F", "burst", Some("1:30"), Some("1"))]
#[case("259.9 °F", "burst", Some("1:30"), Some("1"))]
#[case("260 °F", "burst", Some("0:45"), Some("2"))]
#[case("295 °F", "burst", Some("0:20"), Some("3"))]
#[case("328 °F", "burst", Some("0:10"), Some("4"))]
#[case("329 °F", "hot", None, Some("hot"))]
#[case("165 °C", "hot", None, Some("hot"))]
#[case("346 °F", "hot", None, Some("hot"))]
#[case("346.1 °F", "cool", None, None)]
#[case("380 °F", "cool", None, None)]
fn a_reading_is_looked_up(
    #[case] reading: &str,
    #[case] go: &str,
    #[case] burst: Option<&str>,
    #[case] item: Option<&str>,
) {
    let plan = day(|_| {});
    let answer = &asked(&plan, "dusk + plain/heat", reading)["result"];
    assert_eq!(answer["go"], go, "{answer}");
    assert_eq!(answer["burst"]["text"].as_str(), burst);
    let id = item.map(|item| std::format!("dusk + plain/heat/{item}"));
    assert_eq!(answer["item"].as_str().map(String::from), id);
    assert_eq!(
        (&answer["hot_from"]["text"], &answer["hot_to"]["text"]),
        (&json!("329 °F"), &json!("346 °F"))
    );
    // Every burst says how far it can carry the pot: never above the material's window, which ends at 350 °F.
    let hottest = answer["at_most"]["value"].as_f64();
    assert_eq!(hottest.is_some(), burst.is_some());
    assert!(hottest.is_none_or(|celsius| celsius <= (350.0 - 32.0) / 1.8 + 0.5), "{answer}");
}

#[test]
fn each_heat_of_the_day_has_its_own_table() {
    let plan = day(|_| {});
    for step in &plan.document().plan.steps {
        for row in step.at.iter().flat_map(|at| &at.readings) {
            let (Some(below), Some(burst)) = (&row.below, &row.burst) else { continue };
            // A degree below the upper end of a band.
            let reading = std::format!("{} °C", below.quantity.value - 273.15 - 0.5);
            let answer = &asked(&plan, &step.id, &reading)["result"];
            assert_eq!(answer["burst"]["text"], burst.text.as_str(), "{}: {answer}", step.id);
            let limit = |limit: &str| answer[limit]["value"].as_f64().unwrap();
            assert!(limit("at_most") > limit("expected"), "{}: {answer}", step.id);
            assert!(limit("expected") > below.quantity.value - 273.15, "{}: {answer}", step.id);
        }
    }
}

#[test]
fn a_burst_carries_the_pot_as_far_as_its_table_says() {
    let plan = day(|_| {});
    let heating = plan.document().plan.pots[0].stages[0].heating.as_ref().unwrap();
    let band = &heating.known().unwrap().bands[1];
    let answer = &asked(&plan, "dusk + plain/heat", "270 °F")["result"];
    assert_eq!(answer["expected"], serde_json::to_value(&band.expected).unwrap());
    assert_eq!(answer["at_most"], serde_json::to_value(&band.at_most).unwrap());
}

// Its table had the bursts alone.
#[test]
fn a_plan_of_an_older_version_gives_the_burst() {
    let mut plan = serde_json::to_value(day(|_| {}).document()).unwrap();
    for step in plan["steps"].as_array_mut().unwrap() {
        for at in step["at"].as_array_mut().unwrap() {
            for row in at["readings"].as_array_mut().unwrap() {
                row.as_object_mut().unwrap().retain(|key, _| key != "expected" && key != "at_most");
            }
        }
    }
    let plan = OpenPlan::from_text(&plan.to_string()).unwrap();
    let answer = &asked(&plan, "dusk + plain/heat", "270 °F")["result"];
    assert_eq!((&answer["go"], &answer["burst"]["text"]), (&json!("burst"), &json!("0:45")));
    assert_eq!((&answer["expected"], &answer["at_most"]), (&Value::Null, &Value::Null));
}

// A pot in its window is shot; one that is heated on, or too hot, may smoke.
#[rstest]
#[case("270 °F", &["hot-plastisol", "fumes"])]
#[case("330 °F", &["hot-plastisol"])]
#[case("350 °F", &["hot-plastisol", "fumes"])]
fn cautions_are_those_of_what_is_done(#[case] reading: &str, #[case] expected: &[&str]) {
    let answer = &asked(&day(|_| {}), "dusk + plain/heat", reading)["result"];
    let cautions = answer["cautions"].as_array().unwrap().iter();
    let kinds: Vec<&Value> =
        cautions.map(|it| if it.is_object() { &it["kind"] } else { it }).collect();
    assert_eq!(kinds, expected);
}

#[test]
fn words_say_what_to_do() {
    let plan = day(|_| {});
    let text = |step, reading| asked(&plan, step, reading)["result"]["text"].clone();
    assert_eq!(text("dusk + plain/heat", "300 °F"), "0:20 in the oven, then stir and read again.");
    assert_eq!(text("dusk + plain/heat", "330 °F"), "It is hot: step 4.");
    assert_eq!(
        text("dusk + plain/heat", "350 °F"),
        "Stop, and let it cool to 346 °F or less. Do not heat it."
    );
    // 346 °F are 174.4 °C.
    let answer = &asked(&plan, "dusk + plain/heat", "350 °F")["result"];
    let other = "Stop, and let it cool to 174 °C or less. Do not heat it.";
    assert_eq!((&answer["scale"], &answer["other"]), (&json!("us"), &json!(other)));
    let answer = &asked(&plan, "dusk + plain/heat", "300 °F")["result"];
    assert_eq!((answer.get("scale"), answer.get("other")), (None, None));
}

#[rstest]
#[case("dusk + plain/measure", "300 °F", "step-does-not-heat", "/heat_step")]
#[case("dusk + plain/heat", "3000 °F", "out-of-range", "/reading")]
#[case("dusk + plain/heat", "300", "amount-no-unit", "/reading")]
fn refusals(#[case] step: &str, #[case] reading: &str, #[case] code: &str, #[case] path: &str) {
    let fault = &asked(&day(|_| {}), step, reading)["faults"][0];
    assert_eq!((&fault["code"], &fault["path"]), (&json!(code), &json!(path)), "{fault}");
}

#[test]
fn without_a_shot_window_there_is_no_table() {
    let plan = day(|book| {
        book["materials"]["clear-base"].as_object_mut().unwrap().remove("shot_window");
    });
    let fault = &asked(&plan, "dusk + plain/heat", "300 °F")["faults"][0];
    assert_eq!(fault["code"], "heat-times-not-known");
}
