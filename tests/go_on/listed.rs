//! An order list that changes while pots are begun: what is made of it, what is owed, and what is in the pots.

use pourwright_tests::demo::{ORDERS, STARTER, json};
use pourwright_tests::reference::plan::objections;
use rstest::rstest;
use serde_json::{Value, json};

use crate::noon::Morning;

fn judged(answer: &Value) {
    let plan = &answer["plan"];
    let made_from = &plan["made_from"];
    let found = objections(&made_from["book"], &made_from["orders"], &json(STARTER), plan);
    assert!(found.is_empty(), "{}", found.join("\n"));
}

fn pot<'p>(plan: &'p Value, letter: &str) -> Option<&'p Value> {
    plan["pots"].as_array()?.iter().find(|pot| pot["pot"] == letter)
}

/// The demo's orders, with line `number` of so many pieces.
fn orders(number: usize, pieces: u32) -> Value {
    let mut orders = json(ORDERS);
    orders["lines"][number - 1]["pieces"] = pieces.into();
    orders
}

fn grams(list: &Value, material: &str) -> f64 {
    let list = list.as_array().into_iter().flatten();
    let own = list.filter(|part| part["material"] == material);
    own.map(|part| part["mass"]["value"].as_f64().unwrap()).sum()
}

#[test]
fn what_was_poured_is_not_poured_again() {
    let morning = Morning::demo();
    let ticks = json!(["dusk + plain/measure/clear-base"]);
    let request = json!({ "ticks": ticks, "orders_now": orders(1, 36) });
    let answer = morning.go_on(request).expect("a plan");
    judged(&answer);
    let plan = &answer["plan"];
    let a = pot(plan, "A").expect("pot A");
    let planned = &pot(&morning.plan, "A").unwrap()["stages"][0]["weigh"][0];
    let poured = planned["wanted"]["value"].as_f64().unwrap();
    assert!((grams(&a["there"]["parts"], "clear-base") - poured).abs() < 1e-6 * poured);
    let more = a["stages"][0]["weigh"].as_array().unwrap();
    let more = more.iter().find(|weigh| weigh["material"] == "clear-base").unwrap();
    let more = more["wanted"]["value"].as_f64().unwrap();
    assert!(more > 0.0 && more < 0.3 * poured, "{more} g of {poured} g");
    // In the words of the step, too.
    let step = &plan["steps"][0];
    let text = step["items"][0]["text"].as_str().unwrap();
    assert!(text.starts_with("clear-base: ") && text.ends_with(" more"), "{text}");
    let plum = step["items"].as_array().unwrap().iter().find(|item| item["material"] == "plum");
    assert!(!plum.unwrap()["text"].as_str().unwrap().contains("more"));
}

#[test]
fn the_same_list_owes_what_the_plan_owes() {
    let morning = Morning::demo();
    for steps in 0..morning.steps().len() {
        let done = morning.done(steps);
        let without = morning.go_on(json!({ "pots_now": done })).expect("a plan");
        let with = morning.go_on(json!({ "pots_now": done, "orders_now": json(ORDERS) }));
        let with = with.expect("a plan");
        assert_eq!(without["lines"], with["lines"], "after {steps} steps");
        let orders = |answer: &Value| answer["plan"]["made_from"]["orders"].clone();
        let (one, other) = (orders(&without), orders(&with));
        assert_eq!((&one["lines"], &one["shelf"]), (&other["lines"], &other["shelf"]));
        assert_eq!(without["so_far"], Value::Null);
        for (material, left) in one["stock"].as_object().into_iter().flatten() {
            same_grams(left, &other["stock"][material]);
        }
    }
}

/// Whether two amounts are the same, but for the rounding of grams that are written and read.
fn same_grams(one: &Value, other: &Value) {
    if one == other {
        return;
    }
    let grams = |text: &Value| {
        let text = text.as_str().unwrap_or_default();
        text.strip_suffix(" g").and_then(|grams| grams.parse::<f64>().ok()).unwrap_or(f64::NAN)
    };
    let (a, b) = (grams(one), grams(other));
    assert!((a - b).abs() <= 1e-11 * a, "{one} and {other}");
}

/// Three times on: what was made before the plan counts as what it made itself.
#[test]
fn what_was_made_before_the_plan_counts() {
    let morning = Morning::demo();
    // All plain fingers are shot; the customer wants 4 salted ones more.
    let first = morning
        .go_on(json!({ "pots_now": { "A": { "done": 5 } }, "orders_now": orders(2, 24) }))
        .expect("a plan");
    judged(&first);
    assert_eq!(first["lines"][0], json!({ "made": 24, "owed": 0, "line": null }));
    assert_eq!(first["lines"][1], json!({ "made": 0, "owed": 24, "line": 1 }));
    let made = &first["so_far"]["made"];
    assert_eq!((&made[0]["product"], &made[0]["pieces"]), (&json!("dusk finger"), &json!(24)));
    // Then 6 plain ones more. The line is at another place of the list by now, and its order has another name.
    let noon = Morning::reopened(&first);
    let mut list = orders(2, 24);
    let mut line = list["lines"].as_array_mut().unwrap().remove(0);
    (line["pieces"], line["order"]) = (json!(30), json!("31b"));
    list["lines"].as_array_mut().unwrap().push(line);
    let second =
        noon.go_on(json!({ "orders_now": list, "so_far": first["so_far"] })).expect("a plan");
    judged(&second);
    assert_eq!(second["lines"][9]["made"], 24);
    assert_eq!(second["lines"][9]["owed"], 6);
    let place = second["lines"][9]["line"].as_u64().unwrap() as usize;
    let owed = &second["plan"]["lines"][place - 1];
    assert_eq!((&owed["order"], &owed["pieces"]), (&json!("31b"), &json!(6)));
    // Nothing more was made meanwhile.
    assert_eq!(second["so_far"]["made"][0]["pieces"], 24);
    for (material, used) in first["so_far"]["used"].as_object().unwrap() {
        same_grams(used, &second["so_far"]["used"][material]);
    }
    let stock = |answer: &Value| answer["plan"]["made_from"]["orders"]["stock"].clone();
    assert_ne!(stock(&first), json(ORDERS)["stock"]);
    for (material, left) in stock(&first).as_object().unwrap() {
        same_grams(left, &stock(&second)[material]);
    }
}

#[test]
fn a_line_that_is_gone_is_not_made() {
    let morning = Morning::demo();
    let mut list = json(ORDERS);
    list["lines"].as_array_mut().unwrap().remove(6);
    let answer = morning.go_on(json!({ "orders_now": list })).expect("a plan");
    judged(&answer);
    let plan = &answer["plan"];
    assert!(!plan["lines"].as_array().unwrap().iter().any(|line| line["order"] == "35"));
    assert_eq!(answer["lines"].as_array().unwrap().len(), 9);
}

#[rstest]
#[case("/lines/3/pieces", json!(0), "/orders_now/lines/3/pieces")]
#[case("/lines/0/product", json!("dusk figner"), "/orders_now/lines/0/product")]
#[case("/lines", json!([]), "/orders_now/lines")]
fn faults_are_those_of_the_list(#[case] at: &str, #[case] value: Value, #[case] path: &str) {
    let mut list = json(ORDERS);
    match list.pointer_mut(at) {
        Some(place) => *place = value,
        None => list["lines"][3]["pieces"] = value,
    }
    let faults = Morning::demo().go_on(json!({ "orders_now": list })).unwrap_err();
    assert_eq!(faults[0]["path"], path, "{faults}");
}

/// A pot that is off cannot be used hot; accepted as it is, it keeps the shots that it was begun for.
#[test]
fn a_pot_that_is_accepted_keeps_its_shots() {
    let morning = Morning::demo();
    let planned = pot(&morning.plan, "A").unwrap();
    let mut parts = json!({});
    for weigh in planned["stages"][0]["weigh"].as_array().unwrap() {
        let grams = weigh["wanted"]["value"].as_f64().unwrap();
        let grams = if weigh["material"] == "plum" { 1.8 * grams } else { grams };
        parts[weigh["material"].as_str().unwrap()] = json!({ "value": grams, "unit": "g" });
    }
    let now = |accepted: bool| {
        let pot = json!({ "done": 4, "parts": parts, "accepted": accepted });
        morning.go_on(json!({ "pots_now": { "A": pot } })).expect("a plan")
    };
    assert!(pot(&now(false)["plan"], "A").is_none());
    let answer = now(true);
    let a = pot(&answer["plan"], "A").expect("pot A");
    assert_eq!(a["there"]["accepted"], true);
    let shots = |pot: &Value| {
        let stages = pot["stages"].as_array().unwrap().iter();
        stages.map(|stage| stage["draws"][0]["shots"].clone()).collect::<Vec<_>>()
    };
    assert_eq!(shots(a), shots(planned));
    assert_eq!(a["stages"][0]["weigh"], json!([]));
    // It stays accepted when the day goes on again.
    let again = Morning::reopened(&answer);
    let again = again.go_on(json!({ "orders_now": orders(1, 24) })).expect("a plan");
    assert_eq!(pot(&again["plan"], "A").expect("pot A")["there"]["accepted"], true);
}

/// After the additions of a way the pot needs nothing more for the shots that it was begun for.
#[test]
fn a_pot_that_is_put_right_goes_on() {
    let morning = Morning::demo();
    let request =
        json!({ "calculate": "correct", "pot": "D", "instead": { "rust": "+ 40 drops" } });
    let answer: Value =
        serde_json::from_str(&morning.open.answer_text(&request.to_string())).unwrap();
    let ways = answer["result"]["ways"].as_array().unwrap();
    assert!(ways.len() > 1, "{answer}");
    for way in ways {
        let then = way["then"].as_array().unwrap();
        let sum: f64 = then.iter().map(|part| part["mass"]["value"].as_f64().unwrap()).sum();
        assert!((sum - way["mass"]["value"].as_f64().unwrap()).abs() < 1e-9 * sum);
        let parts: serde_json::Map<String, Value> = then
            .iter()
            .map(|part| {
                let grams = json!({ "value": part["mass"]["value"], "unit": "g" });
                (part["material"].as_str().unwrap().to_owned(), grams)
            })
            .collect();
        let pots = json!({ "D": { "done": 1, "parts": parts, "accepted": true } });
        let answer = morning.go_on(json!({ "pots_now": pots })).expect("a plan");
        let d = pot(&answer["plan"], "D").unwrap_or_else(|| panic!("pot D after {way}"));
        assert_eq!(d["stages"][0]["weigh"], json!([]), "{}", way["way"]);
        let planned = &pot(&morning.plan, "D").unwrap()["stages"][0]["draws"][0]["shots"];
        assert_eq!(&d["stages"][0]["draws"][0]["shots"], planned, "{}", way["way"]);
    }
}

/// After a burst a pot is not hot yet, and gets no base.
#[test]
fn a_burst_alone_is_no_heat() {
    let morning = Morning::demo();
    let heat = morning.steps().iter().find(|step| step["kind"] == "heat").unwrap();
    let mut ticks: Vec<Value> = Vec::new();
    for step in morning.steps().iter().take(2) {
        ticks.push(step["id"].clone());
    }
    let item = |place: usize| heat["items"][place]["id"].clone();
    let now = |more: Value| {
        let mut ticks = ticks.clone();
        ticks.push(more);
        let answer = morning.go_on(json!({ "ticks": ticks })).expect("a plan");
        let there = &pot(&answer["plan"], "A").expect("pot A")["there"];
        (there["hot"].clone(), there["heats"].clone())
    };
    assert_eq!(now(item(0)), (json!(false), json!(1)));
    let last = heat["items"].as_array().unwrap().len() - 1;
    assert_eq!(now(item(last)), (json!(true), json!(1)));
}
