//! The shelf: what of it goes into the day's pots, and what the plan then says.

use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};

use crate::demo::{ask, book, fingers, list, number, of, orders, words};

fn with_shelf(mut orders: Value, shelf: Value) -> Value {
    orders["shelf"] = shelf;
    orders
}

fn dusk(name: &str, grams: f64, made: &str) -> Value {
    json!({ "name": name, "formulas": ["dusk", "plain"], "mass": format!("{grams} g"), "made": made })
}

fn leftovers(orders: Value) -> Result<Value, Value> {
    ask(json!({ "calculate": "leftovers", "orders": orders }))
}

#[test]
fn the_same_mix_goes_in_whole_and_the_plan_says_so() {
    let orders = with_shelf(orders(), json!([dusk("dusk of 1 March", 120.0, "2027-03-01")]));
    let answer = leftovers(orders.clone()).expect("an answer");
    assert!((number(&answer["used"]) - 120.0).abs() < 1e-9);
    let plan = ask(json!({ "calculate": "plan", "orders": orders })).expect("a plan");
    let pot = &plan["pots"][0];
    assert_eq!(pot["from_shelf"], answer["pots"][0]["from_shelf"]);
    assert_eq!(pot["stages"][0]["weigh"], answer["pots"][0]["add"]);
    // Fresh and from the shelf come to what the pot holds.
    let fresh: f64 =
        list(&pot["stages"][0]["weigh"]).iter().map(|one| number(&one["wanted"])).sum();
    let held = number(&pot["stages"][0]["holds"]);
    assert!((fresh + 120.0 - held).abs() < 1e-9 * held);
}

#[test]
fn the_sheet_prints_what_comes_from_the_shelf() {
    let book = pourwright::document::LoadedBook::from_text(&book().to_string()).unwrap();
    let orders = with_shelf(orders(), json!([dusk("dusk of 1 March", 120.0, "2027-03-01")]));
    let sheet = book.plan_text(&orders.to_string()).unwrap().sheet().to_string();
    let sheet = sheet.split_whitespace().collect::<Vec<_>>().join(" ");
    let first =
        "1 CUT small and put in: 120.0 g of \"dusk of 1 March\" from the shelf (heats not known).";
    assert!(sheet.contains(first), "{sheet}");
}

#[test]
fn the_oldest_is_used_first_and_what_is_not_used_stays() {
    let shelf = json!([
        dusk("young", 400.0, "2027-02-20"), dusk("old", 400.0, "2027-01-20"),
        { "name": "reed", "formulas": ["reed", "plain"], "mass": "90 g" },
    ]);
    let answer = leftovers(with_shelf(fingers(&["dusk", "plain"], 48), shelf)).expect("an answer");
    let used = |name: &str| {
        let one =
            list(&answer["shelf"]).iter().find(|one| one["name"] == name).expect("it is there");
        assert!((number(&one["used"]) + number(&one["stays"]) - number(&one["had"])).abs() < 1e-9);
        number(&one["used"])
    };
    assert!((used("old") - 400.0).abs() < 1e-9);
    assert!(used("young") > 0.0 && used("young") < 400.0);
    assert_eq!(used("reed"), 0.0);
    let names: Vec<&Value> = list(&answer["pots"][0]["from_shelf"]["left_overs"])
        .iter()
        .map(|one| &one["name"])
        .collect();
    assert_eq!(names, ["young", "old"]);
}

#[test]
fn spent_heats_are_carried_on_and_limit() {
    let mut book = book();
    book["limits"]["heats"] = json!(3);
    let ask_with = |heats: Option<u32>| {
        let mut left = dusk("dusk", 120.0, "2027-03-01");
        if let Some(heats) = heats {
            left["heats"] = json!(heats);
        }
        let orders = with_shelf(fingers(&["dusk", "plain"], 24), json!([left]));
        ask(json!({ "calculate": "leftovers", "orders": orders, "book": book.clone() }))
    };
    let fresh = ask_with(Some(2)).expect("two and one are three");
    assert_eq!(fresh["pots"][0]["from_shelf"]["heats"], 2);
    let spent = ask_with(Some(3)).expect("an answer");
    assert_eq!(number(&spent["used"]), 0.0);
    let unknown = ask_with(None).expect_err("the book limits heats");
    assert_eq!(unknown[0]["path"], "/orders/shelf/0");
}

#[test]
fn what_it_is_made_of_may_be_told_by_its_parts() {
    let parts = json!({ "clear-base": "3 cup", "stabilizer": "3 tsp", "plum": "96 drops", "teal-flake": "3/2 tsp" });
    let shelf = json!([{ "name": "by parts", "parts": parts, "mass": "100 g" }]);
    let answer = leftovers(with_shelf(fingers(&["dusk", "plain"], 24), shelf)).expect("an answer");
    assert!((number(&answer["used"]) - 100.0).abs() < 1e-9);
    assert!(list(&answer["pots"][0]["from_shelf"]["off"]).is_empty());
}

#[rstest]
#[case(json!([{ "name": "x", "mass": "10 g" }]), "formulas-or-parts", "/orders/shelf/0")]
#[case(json!([{ "name": "x", "mass": "0 g", "formulas": ["plain"] }]), "out-of-range", "/orders/shelf/0/mass")]
#[case(json!([{ "name": "x", "mass": "9 g", "formulas": ["plane"] }]), "unknown-name", "/orders/shelf/0/formulas/0")]
#[case(json!([{ "name": "x", "mass": "9 g", "parts": { "plum": "2 cup", "chalc": "1 g" } }]), "unknown-name", "/orders/shelf/0/parts/chalc")]
#[case(json!([{ "name": "x", "mass": "9 g", "formulas": ["plain"], "made": "May" }]), "not-a-date", "/orders/shelf/0/made")]
#[case(json!([dusk("x", 1.0, "2027-01-01"), dusk("x", 1.0, "2027-01-01")]), "shelf-name-twice", "/orders/shelf/1/name")]
#[case(json!([]), "shelf-missing", "/orders")]
fn slips_on_the_shelf(#[case] shelf: Value, #[case] code: &str, #[case] path: &str) {
    let faults = leftovers(with_shelf(fingers(&["plain"], 24), shelf)).expect_err("a slip");
    assert_eq!((&faults[0]["code"], &faults[0]["path"]), (&json!(code), &json!(path)), "{faults}");
}

#[test]
fn without_a_balance_nothing_can_be_weighed_off() {
    let mut book = book();
    book["bench"].as_object_mut().unwrap().remove("balance");
    let orders = with_shelf(fingers(&["plain"], 24), json!([dusk("x", 9.0, "2027-01-01")]));
    let request = json!({ "calculate": "leftovers", "orders": orders, "book": book });
    let faults = ask(request).expect_err("no scale");
    assert!(list(&faults).iter().any(|fault| fault["code"] == "shelf-without-balance"), "{faults}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(16))]

    /// Whatever is on the shelf: the mix in the pot, by the measures of the bench, keeps
    /// every material's tolerance, and no more goes in than is on hand.
    #[test]
    fn a_pot_with_left_overs_keeps_its_tolerances(
        plum in 5_u32..120, flake in 1_u32..12, grams in 10_u32..400, second in 10_u32..200,
    ) {
        let shelf = json!([
            { "name": "off", "mass": format!("{grams} g"), "parts": {
                "clear-base": "2 cup", "stabilizer": "2 tsp",
                "plum": format!("{plum} drops"), "teal-flake": format!("{flake}/4 tsp") } },
            { "name": "plain", "formulas": ["plain"], "mass": format!("{second} g") },
        ]);
        let plain = ask(json!({ "calculate": "plan", "orders": fingers(&["dusk", "plain"], 40) })).expect("a plan");
        let answer = leftovers(with_shelf(fingers(&["dusk", "plain"], 40), shelf)).expect("an answer");
        for one in list(&answer["shelf"]) {
            prop_assert!(number(&one["used"]) <= number(&one["had"]) * (1.0 + 1e-12));
        }
        let book = book();
        for pot in list(&answer["pots"]) {
            prop_assert!(!words(&pot["formulas"]).is_empty());
            let wanted = &plain["pots"][0]["stages"][0]["weigh"];
            for one in list(wanted) {
                let name = one["material"].as_str().expect("a name");
                let brought = of(&pot["from_shelf"]["brings"], name).map_or(0.0, |one| number(&one["mass"]));
                let given = of(&pot["add"], name).map_or(0.0, |one| number(&one["best"]["gives"]));
                let tolerance = book["materials"][name]["tolerance"].as_str().unwrap_or("5 %");
                let tolerance: f64 = tolerance.trim_end_matches(" %").parse().unwrap();
                let off = (brought + given) / number(&one["wanted"]) - 1.0;
                prop_assert!(off.abs() <= tolerance / 100.0 * (1.0 + tolerance / 100.0), "{name}: {off}");
            }
        }
    }
}
