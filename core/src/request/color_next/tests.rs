use alloc::string::ToString;
use alloc::vec::Vec;

use rstest::rstest;
use serde_json::{Value, json};

use crate::request::tests::{fault_codes, result};

const BOOK: &str = include_str!("../../../examples/demo/book.json");

fn request() -> Value {
    let mut request: Value =
        serde_json::from_str(include_str!("../../../examples/requests/color-next.json")).unwrap();
    request["book"] = serde_json::from_str(BOOK).unwrap();
    request
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value}"))
}

/// A cup that is too light gets more of what is in it; the difference is expected to fall; the strength that its samples show
/// is offered for the book, which takes it.
#[test]
fn a_light_cup_gets_more() {
    let answer = result(request());
    assert_eq!(answer["verdict"], "add", "{answer}");
    let plum = &answer["add"][0];
    assert_eq!(plum["material"], "plum", "{answer}");
    assert!(
        number(&answer["after"]["difference"]) < number(&answer["now"]["difference"]),
        "{answer}"
    );
    let all = answer["all_the_way"].as_array().unwrap();
    assert!(all.iter().any(|one| one["material"] == "plum"), "{answer}");
    let change = &answer["strengths"][0]["write"][0];
    assert_eq!(change["path"], "/materials/plum/strength", "{answer}");
    let mut again = request();
    again["book"]["materials"]["plum"]["strength"] = change["value"].clone();
    let learned = result(again);
    // What was learned once is not counted as new by far: the strength hardly moves.
    let [before, after] =
        [&answer, &learned].map(|answer| number(&answer["strengths"][0]["factors"][0]));
    assert!((after / before - 1.0).abs() < 0.05, "{before} {after}");
    assert!(answer["text"].to_string().contains("The eye decides"), "{answer}");
}

/// Base alone is a formula to begin with: nothing was seen, so nothing is learned, and less than all the way goes in.
#[test]
fn a_cup_of_base_gets_a_formula_to_begin_with() {
    let mut request = request();
    request["trial"] = json!({ "start": "1/2 cup", "formulas": ["plain"] });
    request.as_object_mut().unwrap().remove("seen");
    let answer = result(request);
    assert_eq!((&answer["verdict"], &answer["strengths"]), (&json!("add"), &json!([])), "{answer}");
    let drops = |list: &Value| -> u32 {
        let of = |one: &Value| -> u32 {
            one["amount"].as_str().unwrap().split(' ').next().unwrap().parse().unwrap()
        };
        list.as_array().unwrap().iter().map(of).sum()
    };
    assert!(drops(&answer["add"]) < drops(&answer["all_the_way"]), "{answer}");
    assert!(number(&answer["stays_off"]) < 1.0, "{answer}");
}

#[test]
fn a_cup_that_is_there_is_left() {
    let mut request = request();
    request["target"] = request["seen"].clone();
    request["close_enough"] = json!(2);
    let answer = result(request);
    assert_eq!(
        (&answer["verdict"], &answer["add"]),
        (&json!("close-enough"), &json!([])),
        "{answer}"
    );
}

/// Twice too much of a colorant: about as much base again brings the target into reach.
#[test]
fn too_much_takes_a_larger_pot() {
    let mut request = request();
    request["trial"]["log"] = json!([{ "plum": "40 drops" }]);
    // White would help, too.
    request["leave_out"] = json!(["chalk"]);
    request["target"] = json!({ "lab": [65.7, 18, -7.7] });
    request.as_object_mut().unwrap().remove("seen");
    let answer = result(request);
    assert_eq!(
        (&answer["verdict"], &answer["too_much"]),
        (&json!("more-base"), &json!("plum")),
        "{answer}"
    );
    let more = answer["more_base"]["text"].as_str().unwrap();
    let grams: f64 = more.split(' ').next().unwrap().parse().unwrap();
    assert!((100.0..600.0).contains(&grams), "{answer}");
}

/// In 15 g of base a drop of soot is far too dark for a light gray, and nothing is in it that could be too much. In the base that is
/// asked for, one drop goes in.
#[test]
fn one_drop_may_be_too_much() {
    let mut request = request();
    request["trial"] = json!({ "start": "15 g", "base": "clear-base", "log": [] });
    request["target"] = json!({ "lab": [80, -0.3, 2] });
    request["leave_out"] = json!(["plum", "rust", "moss", "chalk"]);
    request.as_object_mut().unwrap().remove("seen");
    let answer = result(request.clone());
    assert_eq!(
        (&answer["verdict"], &answer["too_much"], &answer["add"]),
        (&json!("more-base"), &json!(null), &json!([])),
        "{answer}"
    );
    let more = answer["more_base"]["text"].as_str().unwrap();
    let line = alloc::format!(
        "One drop or spoon of what is missing is too much for so little base. Add {more} of base, stir, and ask again."
    );
    assert_eq!(answer["text"][0], line, "{answer}");
    request["trial"]["log"] = json!([{ "clear-base": more }]);
    let answer = result(request);
    assert_eq!(answer["all_the_way"][0]["amount"], "1 drop", "{answer}");
    assert!(number(&answer["stays_off"]) <= 1.0, "{answer}");
}

#[test]
fn a_color_that_these_cannot_make_is_out_of_reach() {
    let mut request = request();
    request["trial"] = json!({ "start": "1/2 cup", "formulas": ["plain"] });
    request["target"] = json!({ "srgb": [20, 60, 230] });
    request.as_object_mut().unwrap().remove("seen");
    let mut answer = result(request.clone());
    // Follow it to its end: what can be done is done first.
    let mut log: Vec<Value> = Vec::new();
    for _ in 0..20 {
        if answer["verdict"] != "add" {
            break;
        }
        for one in answer["add"].as_array().unwrap() {
            log.push(json!({ one["material"].as_str().unwrap(): one["amount"] }));
        }
        request["trial"]["log"] = json!(log);
        answer = result(request.clone());
    }
    assert_eq!(answer["verdict"], "out-of-reach", "{answer}");
    assert!(number(&answer["stays_off"]) > 5.0, "{answer}");
}

/// The drops that are in the cup scatter: n of them by s/√n of their dose. What that adds to u² is what a strength that is as
/// unsure in all bands alike adds, in this ratio of squares, as both are carried by the same derivatives.
#[test]
fn drops_in_the_cup_scatter() {
    let unsure = |log: Value, common: &str, scatter: &str| {
        let mut request = request();
        request["trial"] = json!({ "start": "120 g", "formulas": ["plain"], "log": log });
        request.as_object_mut().unwrap().remove("seen");
        (request["close_enough"], request["target"]) = (json!(20), json!({ "lab": [63, 18, -8] }));
        request["book"]["bench"]["uncertainty"] = json!({ "drop_scatter": scatter });
        let strength = json!({ "factors": [1, 1, 1], "common": common, "own": "0 %" });
        request["book"]["materials"]["plum"]["strength"] = strength;
        let answer = result(request);
        assert_eq!(answer["verdict"], "close-enough", "{answer}");
        let number = number(&answer["expected_uncertainty"][0]);
        number * number
    };
    let sixteen = json!([{ "plum": "16 drops" }]);
    let none = unsure(sixteen.clone(), "0 %", "0 %");
    let common = unsure(sixteen.clone(), "10 %", "0 %") - none;
    let scatter = unsure(sixteen, "0 %", "20 %") - none;
    // (0.2/√16)² next to 0.1².
    assert!(common > 0.1 && (scatter / common - 0.25).abs() < 1e-6, "{common} {scatter}");
    // Added at once or one after the other, with a look in between that says next to nothing, they are the same drops.
    let look = json!({ "looks": { "lab": [63, 18, -8], "uncertainty": [50, 50, 50] } });
    let halves = json!([{ "plum": "8 drops" }, look, { "plum": "8 drops" }]);
    let none = unsure(halves.clone(), "0 %", "0 %");
    let found = unsure(halves, "0 %", "20 %") - none;
    // Of the first eight 0.2²/8 of their own dose, of the second eight (0.2/√8/2)² of all.
    let wanted = common * (0.04 / 8.0 + 0.04 / 8.0 / 4.0) / 0.01;
    assert!((found / wanted - 1.0).abs() < 0.01, "{found} {wanted}");
}

/// Uneven spoonfuls make the cup less sure. A powder that was weighed, on a bench without spoons, is as sure as with exact spoons.
#[test]
fn what_was_weighed_does_not_scatter() {
    let unsure = |spoons: Option<&str>| {
        let mut request = request();
        let book = &mut request["book"];
        let chalk = book["materials"]["chalk"].as_object_mut().unwrap();
        chalk.remove("drop");
        chalk.insert("as_scooped".into(), json!("0.35 g/mL"));
        chalk["let_downs"][0]["dose"] = json!("0.116 g");
        chalk["let_downs"][1]["dose"] = json!("0.464 g");
        book["formulas"]["shell"]["doses"]["chalk"] = json!("1 g");
        match spoons {
            Some(level) => book["bench"]["uncertainty"] = json!({ "spoon_level": level }),
            None => drop(book["bench"].as_object_mut().unwrap().remove("spoons")),
        }
        let log = json!([{ "soot": "1 drop", "chalk": "1 g" }]);
        request["trial"] = json!({ "start": "120 g", "base": "clear-base", "log": log });
        request.as_object_mut().unwrap().remove("seen");
        (request["close_enough"], request["target"]) = (json!(20), json!({ "lab": [80, 0, 0] }));
        let answer = result(request);
        assert_eq!(answer["verdict"], "close-enough", "{answer}");
        number(&answer["expected_uncertainty"][0])
    };
    let (heaped, exact, weighed) = (unsure(Some("50 %")), unsure(Some("0 %")), unsure(None));
    assert!(heaped > 1.05 * exact, "{heaped} {exact}");
    assert!((weighed / exact - 1.0).abs() < 1e-9, "{weighed} {exact}");
}

/// As much base again halves what is in the cup: the pot is what it would be if it had been poured so.
#[test]
fn more_base_thins_what_is_there() {
    let at = |start: &str, log: Value| {
        let mut request = request();
        request["trial"] = json!({ "start": start, "base": "clear-base", "log": log });
        request.as_object_mut().unwrap().remove("seen");
        request["book"]["bench"]["uncertainty"] = json!({ "drop_scatter": "0 %" });
        result(request)
    };
    let look = json!({ "looks": { "lab": [60, 20, -8], "uncertainty": [50, 50, 50] } });
    let thinned = at(
        "60 g",
        json!([{ "plum": "8 drops", "rust": "2 drops" }, look, { "clear-base": "60 g" }]),
    );
    let poured = at("120 g", json!([{ "plum": "8 drops", "rust": "2 drops" }]));
    let [found, wanted] = [&thinned, &poured].map(|answer| number(&answer["now"]["difference"]));
    assert!((found - wanted).abs() < 0.05, "{found} {wanted}");
    assert_eq!(thinned["strengths"].as_array().unwrap().len(), 2, "{thinned}");
}

/// The lines are made of what the answer says.
#[test]
fn an_answer_is_put_in_lines() {
    let answer = result(request());
    let lines: Vec<&str> =
        answer["text"].as_array().unwrap().iter().map(|line| line.as_str().unwrap()).collect();
    let listed = |list: &Value| {
        let each = list.as_array().unwrap().iter().map(|one| {
            alloc::format!(
                "{} {}",
                one["material"].as_str().unwrap(),
                one["amount"].as_str().unwrap()
            )
        });
        each.collect::<Vec<_>>().join(", ")
    };
    assert_eq!(
        lines[0],
        alloc::format!("Add: {}. Stir, cool a sample, and look again.", listed(&answer["add"]))
    );
    let off = |place: &str| {
        let off = &answer[place];
        alloc::format!(
            "ΔE₀₀ {:.1} ({:.1} to {:.1}), {}",
            number(&off["difference"]),
            number(&off["low"]),
            number(&off["high"]),
            off["looks"].as_str().unwrap()
        )
    };
    assert_eq!(lines[1], alloc::format!("Now: {}.", off("now")));
    assert_eq!(lines[2], alloc::format!("Expected then: {}.", off("after")));
    let all = listed(&answer["all_the_way"]);
    assert_eq!(lines[3], alloc::format!("Not at once: in all it may take {all}."));
    assert_eq!(
        (lines.len(), lines[4], &answer["notes"]),
        (5, answer["statement"].as_str().unwrap(), &json!([]))
    );
    // A drop of plum is 0.044 g.
    let all = answer["all_the_way"].as_array().unwrap();
    let plum = all.iter().find(|one| one["material"] == "plum").unwrap();
    let count: f64 = plum["amount"].as_str().unwrap().split(' ').next().unwrap().parse().unwrap();
    assert!((number(&plum["mass"]["value"]) - 0.044 * count).abs() < 1e-9, "{plum}");
    let factors = answer["strengths"][0]["factors"].as_array().unwrap();
    assert!(
        factors.iter().all(|x| (number(x) * 1e3 - libm::round(number(x) * 1e3)).abs() < 1e-9),
        "{answer}"
    );
}

#[test]
fn what_is_left_out_does_not_go_in() {
    let mut request = request();
    request["leave_out"] = json!(["plum", "rust", "moss", "soot"]);
    let answer = result(request);
    let all = answer["all_the_way"].as_array().unwrap();
    assert!(all.iter().all(|one| one["material"] == "chalk"), "{answer}");
}

/// Of a colorant without test pieces nothing may be in the cup; a step that names it and adds none of it is no fault.
#[test]
fn none_of_a_colorant_needs_no_test_pieces() {
    let mut request = request();
    request["book"]["materials"]["moss"]["let_downs"] = json!([]);
    request["trial"]["log"][2] = json!({ "plum": "3 drops", "moss": "0 drops" });
    result(request.clone());
    request["trial"]["log"][2] = json!({ "plum": "3 drops", "moss": "1 drop" });
    assert_eq!(fault_codes(request), ["color-not-let-down"]);
}

/// A cup of base alone has the color that the book says of the base, however much of it there is; nothing of a flake is no flake.
#[test]
fn base_alone_has_its_own_color() {
    for start in ["60 g", "240 g"] {
        let mut request = request();
        request["trial"] =
            json!({ "start": start, "base": "clear-base", "log": [{ "teal-flake": "0 tsp" }] });
        request["target"] = json!({ "lab": [93.8, -0.7, 3.2] });
        request.as_object_mut().unwrap().remove("seen");
        let answer = result(request);
        assert_eq!((&answer["verdict"], &answer["notes"]), (&json!("close-enough"), &json!([])));
        assert!(number(&answer["now"]["difference"]) < 1e-6, "{answer}");
    }
}

#[test]
fn flake_and_pearl_are_outside_the_model() {
    let mut request = request();
    request["trial"]["log"][2] = json!({ "plum": "3 drops", "teal-flake": "1/8 tsp" });
    let answer = result(request);
    let notes = answer["notes"].as_array().unwrap();
    assert!(notes.iter().any(|note| note["code"] == "color-outside-model"), "{answer}");
}

#[test]
fn a_sample_of_another_pot_is_a_surprise() {
    let mut request = request();
    request["seen"] = json!({ "lab": [45, -30, 30] });
    let answer = result(request);
    let notes = answer["notes"].as_array().unwrap();
    assert_eq!((notes.len(), &notes[0]["code"]), (1, &json!("color-surprise")), "{answer}");
    let text = answer["text"].as_array().unwrap();
    assert!(text.contains(&notes[0]["message"]), "{answer}");
    // The check comes first, and once.
    assert_eq!(text[0], notes[0]["message"]);
    assert_eq!(text.iter().filter(|line| **line == text[0]).count(), 1);
    // Nobody counts thousands of drops: no more than 0.3 per base of 122 g go in, and many are also weighed.
    for part in ["add", "all_the_way"] {
        for one in answer[part].as_array().unwrap() {
            assert!(part != "add" || number(&one["mass"]["value"]) <= 0.3 * 122.0, "{answer}");
            let (amount, measure) =
                (one["amount"].as_str().unwrap(), one["measure"].as_str().unwrap());
            let count: u32 =
                amount.trim_end_matches(" drops").trim_end_matches(" drop").parse().unwrap();
            let mass = one["mass"]["text"].as_str().unwrap();
            let words = if count > 30 { std::format!("{amount} or {mass}") } else { amount.into() };
            assert_eq!(measure, words, "{answer}");
        }
    }
}

/// A thin piece of the demo's base over white and over black, as the fluxes of K 0.004 and S 0.2 per mm have it (3 mm).
fn over_backings() -> Value {
    json!({ "film_thickness": "3 mm", "white": { "lab": [96, 0, 1] }, "black": { "lab": [20, 0, 0] },
        "over_white": { "lab": [93.5, -0.6, 3.0] }, "over_black": { "lab": [66, -1.5, -2.5] } })
}

/// White powder goes in by the spoons of the bench, and a trial takes the amount as it is written.
#[test]
fn a_powder_goes_in_by_the_spoon() {
    let mut request = request();
    let chalk = request["book"]["materials"]["chalk"].as_object_mut().unwrap();
    chalk.remove("drop");
    chalk.insert("as_scooped".into(), json!("0.35 g/mL"));
    chalk["let_downs"][0]["dose"] = json!("0.116 g");
    chalk["let_downs"][1]["dose"] = json!("0.464 g");
    request["book"]["formulas"]["shell"]["doses"]["chalk"] = json!("3/4 tsp");
    request["trial"]["log"] = json!([{ "soot": "1 drop" }, { "chalk": "1/8 tsp" }]);
    request["target"] = json!({ "lab": [88, -0.5, 0] });
    request["leave_out"] = json!(["plum", "rust", "moss", "soot"]);
    request.as_object_mut().unwrap().remove("seen");
    let answer = result(request.clone());
    let chalk = &answer["all_the_way"][0];
    assert_eq!(chalk["material"], "chalk", "{answer}");
    let amount = chalk["amount"].as_str().unwrap();
    assert!(amount.ends_with(" tsp"), "{answer}");
    assert!(chalk["measure"].as_str().unwrap().contains("tsp"), "{answer}");
    // Whole eighths, each of 0.616 mL of 0.35 g/mL.
    let grams = number(&chalk["mass"]["value"]);
    let eighths = grams / (4.928_921_593_75 / 8.0 * 0.35);
    assert!((eighths - libm::round(eighths)).abs() < 1e-9 && eighths > 0.5, "{eighths}");
    request["trial"]["log"].as_array_mut().unwrap().push(json!({ "chalk": amount }));
    let after = result(request.clone());
    assert!(number(&after["now"]["difference"]) < number(&answer["now"]["difference"]), "{after}");
    // Without spoons nothing can measure it, and the answer says so.
    request["book"]["bench"].as_object_mut().unwrap().remove("spoons");
    request["leave_out"] = json!([]);
    let none = result(request);
    let notes = none["notes"].as_array().unwrap();
    let note = notes.iter().find(|note| note["code"] == "color-no-measure").unwrap();
    assert!(note["message"].as_str().unwrap().contains("chalk"), "{none}");
}

/// A piece of a thickness has a color over white and one over black; the darker one is over black, and a thick piece has one.
#[test]
fn a_thin_piece_shows_what_is_behind_it() {
    let mut request = request();
    request["book"]["materials"]["clear-base"]["over_backings"] = over_backings();
    assert_eq!(result(request.clone())["through_now"], json!(null));
    let shows = |request: &Value| {
        let answer = result(request.clone());
        let through = &answer["through_now"];
        let light = |over: &str| number(&through[over]["lightness"]);
        assert!(light("over_white") > light("over_black"), "{answer}");
        assert!(number(&through["over_black_uncertainty"][0]) > 0.7, "{answer}");
        assert!(answer["text"].to_string().contains("over black"), "{answer}");
        (
            number(&through["shows_through"]),
            number(&answer["through_after"]["shows_through"]),
            answer,
        )
    };
    request["piece_thickness"] = json!("2 mm");
    let (thin, thin_after, _) = shows(&request);
    request["piece_thickness"] = json!("9.6 mm");
    let (rod, _, stated) = shows(&request);
    // More colorant hides more, and so does more plastic.
    assert!(thin > thin_after && thin > 2.0 * rod && rod > 0.0, "{thin} {thin_after} {rod}");
    // The worm is a stick of 9.6 mm.
    request.as_object_mut().unwrap().remove("piece_thickness");
    request["piece_mold"] = json!("finger-5");
    assert_eq!(result(request.clone())["through_now"], stated["through_now"]);
    // Without the opaque color of the base its thin piece shows K/S.
    request["book"]["materials"]["clear-base"].as_object_mut().unwrap().remove("color");
    assert!(number(&result(request)["through_now"]["shows_through"]) > 0.0);
}

/// The lines say how a thin piece looks now and, if something is added, how it looks then; what else to know comes after that.
#[test]
fn a_thin_piece_has_its_lines() {
    let mut request = request();
    request["book"]["materials"]["clear-base"]["over_backings"] = over_backings();
    request["piece_thickness"] = json!("2 mm");
    request["trial"]["log"][2] = json!({ "plum": "3 drops", "teal-flake": "1/8 tsp" });
    for (close, starts) in [(0.5, &["A piece now. ", "Then. "][..]), (20.0, &["A piece now. "])] {
        request["close_enough"] = json!(close);
        let answer = result(request.clone());
        assert_eq!(answer["verdict"], if close < 1.0 { "add" } else { "close-enough" }, "{answer}");
        let lines: Vec<&str> =
            answer["text"].as_array().unwrap().iter().map(|line| line.as_str().unwrap()).collect();
        let at = lines.iter().position(|line| line.starts_with("A piece now. ")).unwrap();
        for (line, start) in lines[at..].iter().zip(starts) {
            assert!(line.starts_with(start), "{lines:?}");
        }
        let notes = answer["notes"].as_array().unwrap().iter().map(|note| &note["message"]);
        let notes: Vec<&str> = notes.map(|message| message.as_str().unwrap()).collect();
        assert!(!notes.is_empty(), "{answer}");
        let rest = [&notes[..], &[answer["statement"].as_str().unwrap()]].concat();
        assert_eq!(lines[at + starts.len()..], rest, "{lines:?}");
    }
}

#[test]
fn a_target_is_a_formula_that_was_seen() {
    let mut request = request();
    let target = request.as_object_mut().unwrap().remove("target").unwrap();
    request["book"]["formulas"]["dusk"]["color"] = target;
    request["target_like"] = json!("dusk");
    let mut stated = self::request();
    stated["book"] = request["book"].clone();
    assert_eq!(result(request), result(stated));
}

/// Flake: a share of 1 − e^(−a t/2) by hand, for 1/8 tsp of film of 50 µm and 1.39 g/mL in a half cup; a glowing colorant.
#[test]
fn what_is_outside_is_named() {
    let mut request = request();
    request["book"]["materials"]["moss"]["fluorescent"] = json!(true);
    request["trial"]["log"] =
        json!([{ "plum": "6 drops", "moss": "2 drops", "teal-flake": "1/8 tsp" }]);
    request.as_object_mut().unwrap().remove("seen");
    let answer = result(request.clone());
    let text = answer["notes"].to_string();
    assert!(
        text.contains("\\\"moss\\\" is outside the model of the color: it gives light of its own"),
        "{text}"
    );
    assert!(answer["all_the_way"].as_array().unwrap().iter().all(|one| one["material"] != "moss"));
    // 0.616 mL of 0.55 g/mL are 0.339 g: 48.8 cm² of film in 119 mL, 41 per m: 1 − e^(−0.5·0.041).
    assert!(text.contains("about 2 % of the surface for each mm"), "{text}");
    // Known test pieces of a glowing colorant do not matter, nor does their lack.
    request["book"]["materials"]["moss"].as_object_mut().unwrap().remove("let_downs");
    result(request);
}

#[rstest]
#[case("/close_enough", json!(0), &["out-of-range"])]
#[case("/leave_out", json!(["plumb"]), &["unknown-name"])]
#[case("/target_like", json!("dusk"), &["color-target-or-like"])]
#[case("/piece_thickness", json!("0 mm"), &["out-of-range"])]
#[case("/piece_thickness", json!("5 mm"), &["color-no-backings"])]
#[case("/piece_mold", json!("worm"), &["unknown-name"])]
#[case("/piece_mold", json!("paddle-4"), &["mold-no-thickness"])]
#[case("/book/materials/clear-base/over_backings", json!({ "film_thickness": "3 mm", "white": { "lab": [96, 0, 1] },
    "black": { "lab": [20, 0, 0] }, "over_white": { "lab": [90, 0, 1] }, "over_black": { "lab": [90, 0, 1] } }), &["color-no-film"])]
#[case("/book/materials/plum/over_backings", over_backings(), &["property-of-another-kind"])]
#[case("/book/materials/clear-base/fluorescent", json!(true), &["property-of-another-kind"])]
#[case("/target", json!({ "lab": [90, -100, 90] }), &["color-outside-srgb"])]
#[case("/trial/log/1", json!({ "looks": {} }), &["lab-or-srgb"])]
#[case("/trial/log/1", json!({ "looks": { "lab": [50, 0, 0] }, "plum": "1 drop" }), &["trial-step-in-two"])]
#[case("/book/materials/clear-base/color", json!(null), &["wrong-type"])]
#[case("/book/materials/moss/let_downs", json!([]), &[])]
#[case("/book/materials/plum/let_downs", json!([]), &["color-not-let-down"])]
#[case("/book/materials/soot/let_downs/1/dose", json!("2 drops"), &["color-too-few-let-downs"])]
#[case("/book/materials/soot/let_downs/1/base_mass", json!("0 g"), &["out-of-range"])]
fn faults(#[case] path: &str, #[case] value: Value, #[case] codes: &[&str]) {
    let mut request = request();
    let (parent, key) = path.rsplit_once('/').unwrap();
    match request.pointer_mut(path) {
        Some(place) => *place = value,
        None => request.pointer_mut(parent).unwrap()[key] = value,
    }
    if codes.is_empty() {
        result(request);
    } else {
        assert_eq!(fault_codes(request), codes);
    }
}

#[test]
fn a_target_that_was_not_seen_is_refused() {
    let mut request = request();
    request.as_object_mut().unwrap().remove("target");
    assert_eq!(fault_codes(request.clone()), ["color-target-or-like"]);
    request["target_like"] = json!("dusk");
    assert_eq!(fault_codes(request.clone()), ["color-of-no-formula"]);
    request["target_like"] = json!("dust");
    assert_eq!(fault_codes(request.clone()), ["unknown-name"]);
    request["target"] = json!({ "lab": [50, 0, 0] });
    request["piece_thickness"] = json!("5 mm");
    request["piece_mold"] = json!("finger-5");
    request.as_object_mut().unwrap().remove("target_like");
    assert_eq!(fault_codes(request), ["thickness-or-mold"]);
}

/// A colorant that is ten times as strong as its test pieces, or a tenth, may still be the same one.
#[rstest]
#[case([10.0, 0.1, 1.0], true)]
#[case([10.1, 1.0, 1.0], false)]
#[case([1.0, 1.0, 0.09], false)]
fn a_strength_has_limits(#[case] factors: [f64; 3], #[case] will_do: bool) {
    let mut request = request();
    let strength = json!({ "factors": factors, "common": "4 %", "own": "3 %" });
    request["book"]["materials"]["plum"]["strength"] = strength;
    if will_do {
        result(request);
    } else {
        assert_eq!(fault_codes(request), ["out-of-range"]);
    }
}
