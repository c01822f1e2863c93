//! The pots of a day against all ways to put its shots together, from the documents.

use std::cell::Cell;

use pourwright::batch::{Loads, Run};
use pourwright::fault::Faults;
use pourwright::quantity::{Mass, Ratio};
use pourwright::uom::si::mass::gram;
use pourwright_tests::demo::{STARTER, json, plan};
use pourwright_tests::generate::{Documents, documents};
use pourwright_tests::oracle::documents::fewest_pots;
use pourwright_tests::reference::plan::objections;
use pourwright_tests::reference::shop::text;
use pourwright_tests::small::small_days;
use proptest::test_runner::{Config, TestCaseError, TestRunner};
use serde_json::{Value, json as object};

fn made(book: &Value, orders: &Value) -> Result<Value, Faults> {
    let made = plan(&book.to_string(), &orders.to_string())?;
    Ok(serde_json::to_value(made).expect("a plan as JSON"))
}

fn pots(plan: &Value) -> usize {
    plan["pots"].as_array().expect("pots").len()
}

fn number(value: &Value) -> usize {
    usize::try_from(value.as_u64().expect("a number")).expect("a small one")
}

#[test]
fn no_small_day_has_a_plan_with_fewer_pots_than_it_says() {
    const DAYS: u32 = 1500;
    let starter = json(STARTER);
    let (least, compared) = (Cell::new(0), Cell::new(0));
    let mut runner = TestRunner::new(Config { cases: DAYS, ..Config::with_source_file(file!()) });
    let result = runner.run(&small_days(), |Documents { book, orders }| {
        let fewest = fewest_pots(&book, &orders, &starter);
        let plan = match (made(&book, &orders), fewest) {
            (Ok(plan), _) => plan,
            (Err(_), None) => return Ok(()),
            (Err(faults), Some(fewest)) => {
                proptest::prop_assert!(false, "{fewest} pots do, but: {faults}");
                return Ok(());
            }
        };
        let found = objections(&book, &orders, &starter, &plan);
        proptest::prop_assert!(found.is_empty(), "{}", found.join("\n"));
        let proof = &plan["proof"];
        let Some(fewest) = fewest else {
            proptest::prop_assert!(false, "a plan where none can be");
            return Ok(());
        };
        proptest::prop_assert_eq!(number(&proof["pots"]), pots(&plan));
        proptest::prop_assert!(pots(&plan) >= fewest, "{} pots, not {fewest}", pots(&plan));
        proptest::prop_assert!(number(&proof["least"]) <= fewest, "{proof}, but {fewest} do");
        compared.set(compared.get() + 1);
        least.set(least.get() + u32::from(pots(&plan) == fewest));
        // Fresh base and fuller cups are leave to do more, never a reason for more pots.
        for (key, value) in [("fresh_base", object!(true)), ("most_full", object!("100 %"))] {
            let mut freer = book.clone();
            freer["limits"][key] = value;
            if freer == book {
                continue;
            }
            match made(&freer, &orders) {
                Ok(freer) => proptest::prop_assert!(
                    pots(&freer) <= pots(&plan),
                    "{} pots with {key}, {} without",
                    pots(&freer),
                    pots(&plan)
                ),
                Err(faults) => proptest::prop_assert!(false, "with {key}: {faults}"),
            }
        }
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    // Of plans that are not proven least few are not: heats of a laminated piece are counted before its shots from the
    // same pots come together, and with fresh base one order of like formulas is tried.
    assert!(compared.get() >= DAYS * 9 / 10, "only {} days have a plan", compared.get());
    assert!(least.get() >= compared.get() * 99 / 100, "{} of {}", least.get(), compared.get());
}

/// A day of cups, formulas on bases of density 1 and a mold of one cavity of 10 mL.
fn day(cups: Value, formulas: Value, limits: Value, lines: Value) -> (Value, Value) {
    let plastisol =
        object!({ "kind": "plastisol", "density": "1 g/mL", "price": "10.00 USD per 1 L" });
    let colorant =
        object!({ "kind": "colorant", "density": "1 g/mL", "price": "10.00 USD per 1 L" });
    let book = object!({
        "format": "pourwright/1.0",
        "measures": "metric",
        "materials": {
            "north": plastisol, "south": plastisol,
            "softener": { "kind": "softener", "density": "1 g/mL", "price": "10.00 USD per 1 L" },
            "rose": colorant, "slate": colorant,
        },
        "formulas": formulas,
        "molds": { "stub": { "cavities": 1, "cavity": "10 mL" } },
        "limits": limits,
        "bench": {
            "cups": cups,
            "injector": { "holds": "100 mL", "count": 2 },
            "balance": { "reads": "0.1 g" },
        },
    });
    (book, object!({ "format": "pourwright/1.0", "lines": lines }))
}

fn planned(of: &(Value, Value)) -> Value {
    let plan = made(&of.0, &of.1).unwrap_or_else(|faults| panic!("{faults}"));
    let found = objections(&of.0, &of.1, &json(STARTER), &plan);
    assert!(found.is_empty(), "{}", found.join("\n"));
    plan
}

fn note(plan: &Value, code: &str) -> String {
    let notes = plan["assumptions"].as_array().expect("notes");
    let note = notes.iter().find(|note| note["code"] == code);
    note.unwrap_or_else(|| panic!("no {code} in {notes:?}"))["message"].to_string()
}

/// Two bases, of which one pot each is filled almost to the brim.
fn two_bases() -> (Value, Value) {
    day(
        object!([{ "holds": "500 mL", "marks": "100 mL" }]),
        object!({
            "x": { "base": "north", "per": "100 g", "doses": { "softener": "12 g" } },
            "y": { "base": "south", "per": "100 g", "doses": {} },
        }),
        object!({}),
        object!([
            { "order": "1", "mold": "stub", "formulas": ["x"], "pieces": 45 },
            { "order": "2", "mold": "stub", "formulas": ["y"], "pieces": 49 },
        ]),
    )
}

#[test]
fn a_mark_that_overfills_a_pot_is_no_reason_for_another_one() {
    // 450 g of x have 401.8 g of base: up to the mark of 500 mL it would be 560 g.
    let plan = planned(&two_bases());
    assert_eq!(pots(&plan), 2);
    let base = &plan["pots"][0]["stages"][0]["weigh"][0];
    assert_eq!(
        (&base["best"]["tool"], &base["best"]["measure"]),
        (&object!("balance"), &object!("401.8 g"))
    );
    assert_eq!(base["others"], object!([]), "another way may overfill the cup");
    let said = note(&plan, "base-off-marks");
    assert!(said.contains("Pot A: weigh its base") && said.contains("500 mL"), "{said}");
    // The other pot is full at a mark: 490 g are rounded up to 500. The formula is in grams, so they are weighed, or filled.
    let full = &plan["pots"][1]["stages"][0]["weigh"][0];
    assert_eq!(
        (&full["best"]["measure"], &full["others"][0]["measure"]),
        (&object!("500.0 g"), &object!("500 mL"))
    );
}

#[test]
fn a_proof_names_every_formula_and_what_it_needs() {
    let proof = &planned(&two_bases())["proof"];
    assert_eq!((number(&proof["pots"]), number(&proof["least"])), (2, 2));
    let reasons = proof["reasons"].as_array().expect("reasons");
    let told: Vec<(&str, usize, &str)> = reasons
        .iter()
        .flat_map(|reason| reason["formulas"].as_array().expect("formulas"))
        .map(|of| {
            let text = |key: &str| of[key].as_str().expect("a text");
            (text("formula"), number(&of["pots"]), text("because"))
        })
        .collect();
    let most = "of which a pot gives at most 500 g";
    let expected =
        [("x", 1, format!("450 g of shots, {most}")), ("y", 1, format!("490 g of shots, {most}"))];
    assert!(
        told.iter().zip(&expected).all(|(t, e)| (t.0, t.1, t.2) == (e.0, e.1, e.2.as_str())),
        "{told:?}"
    );
    assert_eq!(told.len(), 2);
}

#[test]
fn base_and_heats_are_proven_with_their_numbers() {
    let formulas = object!({
        "plain": { "base": "north", "per": "100 g", "doses": {} },
        "soft": { "base": "north", "per": "100 g", "doses": { "softener": "25 g" } },
    });
    let lines = |pieces: [u32; 2]| {
        object!([
            { "order": "1", "mold": "stub", "formulas": ["plain"], "pieces": pieces[0] },
            { "order": "2", "mold": "stub", "formulas": ["soft"], "pieces": pieces[1] },
        ])
    };
    // 390 g and 400 · 0.8 g of base, where a pot has 400 g of it at most: 710/400.
    let cups = object!([{ "holds": "400 mL", "marks": "10 mL" }]);
    let plan = planned(&day(cups.clone(), formulas.clone(), object!({}), lines([39, 40])));
    let reason = &plan["proof"]["reasons"][0];
    assert_eq!((number(&reason["pots"]), pots(&plan)), (2, 2));
    let because = reason["because"].as_str().expect("a sentence");
    assert!(because.contains("710 g / 400 g = 1.775"), "{because}");
    assert_eq!(reason["formulas"][0]["because"], "390 g of base");
    assert_eq!(reason["formulas"][1]["because"], "320 g of base");
    // Two formulas in one pot are two heats.
    let plan = planned(&day(cups, formulas, object!({ "heats": 1 }), lines([5, 5])));
    let reason = &plan["proof"]["reasons"][0];
    assert_eq!((number(&reason["pots"]), pots(&plan)), (2, 2));
    let because = reason["because"].as_str().expect("a sentence");
    assert!(because.contains("at least 2 heats, and a pot withstands 1"), "{because}");
    assert_eq!(reason["formulas"][1]["because"], "1 heat");
}

#[test]
fn without_a_balance_spoons_come_near_a_brim_and_else_the_eye() {
    // 440 g of the 450 that the cup may hold; the next mark is 500.
    let (mut book, orders) = day(
        object!([{ "holds": "500 mL", "marks": "100 mL" }]),
        object!({ "plain": { "base": "north", "per": "100 g", "doses": {} } }),
        object!({ "most_full": "90 %" }),
        object!([{ "order": "1", "mold": "stub", "formulas": ["plain"], "pieces": 44 }]),
    );
    book["bench"].as_object_mut().expect("a bench").remove("balance");
    let way = |book: &Value| {
        let plan = planned(&(book.clone(), orders.clone()));
        let best = &plan["pots"][0]["stages"][0]["weigh"][0]["best"];
        (text(&best["tool"]), text(&best["measure"]), note(&plan, "base-off-marks"))
    };
    let (tool, measure, said) = way(&book);
    assert_eq!((&*tool, &*measure), ("cup", "440 mL"));
    assert!(said.contains("between two marks, sure to some 10 mL"), "{said}");
    assert!(said.contains("a scale would be surer"), "{said}");
    book["bench"]["spoons"] = object!(["1 tbsp", "1 tsp"]);
    let (tool, measure, said) = way(&book);
    assert_eq!((&*tool, &*measure), ("cup", "400 mL + 2 × 1 tbsp + 2 × 1 tsp"));
    assert!(said.contains("with cup and spoons"), "{said}");
}

/// Nine lines of four bodies and colors on two bases, with sprues, film and what the injector keeps.
fn many_lines(fresh_base: bool, most_full: &str) -> (Value, Value) {
    let (mut book, _) = day(
        object!([{ "holds": "480 mL", "marks": "60 mL", "film": "3 g" }]),
        object!({
            "salty": { "base": "north", "per": "250 mL", "doses": { "softener": "2 % of base", "rose": "20 % of base" } },
            "mild": { "base": "north", "per": "250 mL", "doses": { "softener": "6 % of base", "rose": "12 % of finished" } },
            "bare": { "base": "south", "per": "250 mL", "doses": { "softener": "2 % of base" } },
            "pale": { "per": "250 mL", "doses": { "slate": "1.9 g" } },
        }),
        object!({ "rejects": "3 %", "fresh_base": fresh_base, "most_full": most_full }),
        object!([]),
    );
    book["molds"] = object!({
        "tri": { "sprue": "3 mL", "cavities": 3, "cavity": "4.2 mL" },
        "quad": { "sprue": "4 mL", "cavities": 4, "cavity": "4.2 mL", "top": "1.5 g" },
        "six": { "sprue": "3 mL", "cavities": 6, "cavity": "10.8 mL" },
    });
    book["bench"]["injector"] = object!({ "holds": "150 mL", "count": 2, "keeps": "4 mL" });
    let lines = [
        ("tri", vec!["pale", "salty"], 19),
        ("tri", vec!["pale", "mild"], 40),
        ("quad", vec!["pale", "bare"], 13),
        ("six", vec!["pale", "bare"], 13),
        ("quad", vec!["salty"], 19),
        ("six", vec!["pale", "mild"], 1),
    ];
    let line = |(mold, formulas, pieces): &(&str, Vec<&str>, u32)| object!({ "order": "1", "mold": mold, "formulas": formulas, "pieces": pieces });
    let lines: Vec<Value> = lines.iter().map(line).collect();
    (book, object!({ "format": "pourwright/1.0", "lines": lines }))
}

#[test]
fn leave_to_do_more_takes_no_more_pots() {
    for most_full in ["100 %", "90 %", "80 %"] {
        let without = pots(&planned(&many_lines(false, most_full)));
        let with = pots(&planned(&many_lines(true, most_full)));
        assert!(with <= without, "{with} with fresh base, {without} without, {most_full} full");
    }
    for fresh_base in [false, true] {
        let of = |most_full| pots(&planned(&many_lines(fresh_base, most_full)));
        assert!(of("100 %") <= of("90 %") && of("90 %") <= of("80 %"));
    }
}

#[test]
fn lines_that_are_planned_alone_are_planned_together() {
    // 12 and 13 shots of 46 g; with fresh base the first stage is as full as the second can use.
    let lines = [("plain", 35), ("tinted", 37)];
    let of = |lines: &[(&str, u32)]| {
        let line = |(formula, pieces): &(&str, u32)| object!({ "order": "1", "mold": "trio", "formulas": [formula], "pieces": pieces });
        let (mut book, orders) = day(
            object!([{ "holds": "1000 mL", "marks": "125 mL" }]),
            object!({
                "plain": { "base": "north", "per": "100 g", "doses": { "softener": "11 g" } },
                "tinted": { "base": "north", "per": "100 g", "doses": { "softener": "11 g", "rose": "0.1 g" } },
            }),
            object!({ "fresh_base": true }),
            lines.iter().map(line).collect(),
        );
        book["molds"] =
            object!({ "trio": { "cavities": 3, "cavity": "10.8 mL", "sprue": "8 mL" } });
        book["materials"]["rose"]["tolerance"] = "40 %".into();
        pots(&planned(&(book, orders)))
    };
    assert_eq!((of(&lines[..1]), of(&lines[1..])), (1, 1));
    assert!(of(&lines) <= 2);
}

#[test]
fn a_refusal_names_the_order_line_and_the_cup() {
    let (book, orders) = two_bases();
    let refused = |change: &dyn Fn(&mut Value)| {
        let mut book = book.clone();
        change(&mut book);
        let faults = made(&book, &orders).expect_err("no plan");
        let fault = faults.iter().next().expect("a fault").clone();
        assert_eq!(fault.path, "/lines/0", "{fault}");
        assert!(!fault.message.contains("tage"), "{fault}");
        fault
    };
    let shot = refused(&|book| {
        let cup = object!({ "holds": "20 mL", "heel": "15 g", "sure": true });
        book["bench"]["cups"] = object!([cup]);
    });
    assert_eq!(shot.code, "pot-shot-over-cup");
    assert_eq!(
        shot.message,
        "A shot of \"stub\" takes 10 g of x, but no cup gives more than 5 g of it; the largest is the 20 mL cup."
    );
    assert!(shot.help.contains("a cup that gives 10 g"), "{}", shot.help);
    let least = refused(&|book| book["limits"]["least_pot"] = "600 mL".into());
    assert_eq!(least.code, "pot-least-over-cup");
    assert!(
        least.message.contains("600 g of x, but the 500 mL cup may hold only 500 g"),
        "{least}"
    );
}

/// 40 pieces of 80 and 20 %, of which the larger layer fills two pots.
fn laminate() -> (Value, Value) {
    let (mut book, orders) = day(
        object!([{ "holds": "250 mL", "marks": "10 mL" }]),
        object!({
            "one": { "base": "north", "per": "100 g", "doses": { "rose": "5 g" } },
            "two": { "base": "north", "per": "100 g", "doses": { "slate": "5 g" } },
        }),
        object!({}),
        object!([{
            "order": "1", "mold": "stub", "pieces": 40,
            "layers": [
                { "formulas": ["one"], "share": "80 %" },
                { "formulas": ["two"], "share": "20 %" },
            ],
        }]),
    );
    book["costing"] = object!({ "rate": "36.00 USD per 1 h", "per_shot": "100 s" });
    (book, orders)
}

#[test]
fn a_shot_of_a_laminate_is_one_shot_of_work() {
    // 40 shots of 100 s at 36 USD an hour.
    assert_eq!(planned(&laminate())["cost"]["known"]["work"]["text"], "40.00 USD");
}

#[test]
fn a_draw_names_the_pots_that_are_hot_with_it_and_its_part_of_the_order() {
    let plan = planned(&laminate());
    let mut told = Vec::new();
    for pot in plan["pots"].as_array().expect("pots") {
        for draw in pot["stages"][0]["draws"].as_array().expect("draws") {
            let pieces = &draw["pieces"][0];
            assert_eq!(pieces["ordered"], pieces["made"]);
            let with = draw["together_with"].as_array().expect("pots");
            assert_eq!(with.len(), 1);
            told.push((text(&pot["pot"]), text(&with[0]), number(&pieces["ordered"])));
        }
    }
    // 31 shots of 8 g fill the cup of 250 mL.
    let told: Vec<(&str, &str, usize)> = told.iter().map(|(a, b, n)| (&**a, &**b, *n)).collect();
    assert_eq!(told, [("A", "B", 31), ("B", "A", 31), ("B", "C", 9), ("C", "B", 9)]);
}

#[test]
fn a_batch_and_a_plan_agree_on_film_and_heel() {
    // 10 shots of 10 g, and of film and heel the larger.
    for (film, heel, total) in [(5.0, 24.0, 124.0), (24.0, 5.0, 124.0), (5.0, 0.0, 105.0)] {
        let (book, orders) = day(
            object!([{ "holds": "250 mL", "marks": "1 mL", "film": format!("{film} g"), "heel": format!("{heel} g") }]),
            object!({ "plain": { "base": "north", "per": "100 g", "doses": {} } }),
            object!({}),
            object!([{ "order": "1", "mold": "stub", "formulas": ["plain"], "pieces": 10 }]),
        );
        let plan = planned(&(book, orders));
        let holds = plan["pots"][0]["stages"][0]["holds"]["value"].as_f64().expect("grams");
        let g = Mass::new::<gram>;
        let need = Run {
            shots: 10,
            loads: Loads { shots_per_load: 10, loads: 1, shots_in_last: 10 },
            fill: g(10.0),
            sprue: g(0.0),
            returned: Ratio::from(0.0),
            injector_keeps: g(0.0),
            cleanings: 1,
            film: g(film),
            heel: g(heel),
        };
        let batch = need.need().expect("a batch").total.get::<gram>();
        assert!((holds - total).abs() < 1e-9 && (batch - total).abs() < 1e-9, "{holds} {batch}");
    }
}

/// Larger days: what is allowed in addition takes no more pots.
#[test]
fn fresh_base_takes_no_more_pots_on_larger_days() {
    const DAYS: u32 = 60;
    let mut runner = TestRunner::new(Config { cases: DAYS, ..Config::with_source_file(file!()) });
    let result = runner.run(&documents(), |Documents { mut book, orders }| {
        book["limits"]["fresh_base"] = false.into();
        let Ok(without) = made(&book, &orders) else { return Ok(()) };
        book["limits"]["fresh_base"] = true.into();
        let with =
            made(&book, &orders).map_err(|faults| TestCaseError::fail(faults.to_string()))?;
        let found = objections(&book, &orders, &json(STARTER), &with);
        proptest::prop_assert!(found.is_empty(), "{}", found.join("\n"));
        proptest::prop_assert!(pots(&with) <= pots(&without), "{} {}", pots(&with), pots(&without));
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
}
