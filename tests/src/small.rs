//! Small random days of few large shots, on which all ways to put shots into pots can be tried.

use proptest::prelude::*;
use serde_json::{Map, Value, json};

use crate::generate::{Choices, Documents};

/// Shots of a day, each layer counted.
const MOST_SHOTS: u32 = 7;

/// Days with marks, several cups, film and heel, fresh base, laminates, heats with reheats between shots, sprues
/// that are melted again.
pub fn small_days() -> impl Strategy<Value = Documents> {
    Choices::of(110).prop_map(day)
}

/// The same from numbers that are at hand.
#[must_use]
pub fn small_day_of(numbers: Vec<u32>) -> Documents {
    day(Choices::from_numbers(numbers))
}

fn day(mut c: Choices) -> Documents {
    let book = book(&mut c);
    let orders = orders(&mut c, &book);
    Documents { book, orders }
}

fn book(c: &mut Choices) -> Value {
    let mut formulas = Map::new();
    for index in 0..c.whole(2, 4) {
        let mut doses = Map::new();
        for (material, per_cents) in
            [("softener", [0, 0, 10, 20]), ("salt", [0, 0, 0, 15]), ("stain", [0, 0, 4, 8])]
        {
            let per_cent = *c.one_of(&per_cents);
            if per_cent > 0 {
                doses.insert(material.into(), format!("{per_cent} % of base").into());
            }
        }
        let base = *c.one_of(&["clear", "clear", "clear", "firm"]);
        formulas
            .insert(format!("f{index}"), json!({ "base": base, "per": "100 g", "doses": doses }));
    }
    let mut molds = Map::new();
    let is_timed = c.happens(5);
    for index in 0..c.whole(1, 3) {
        let mut mold = json!({ "cavities": 1, "cavity": format!("{} mL", c.whole(3, 12) * 10) });
        if c.happens(5) {
            mold["sprue"] = format!("{} mL", c.whole(1, 30)).into();
        }
        if is_timed {
            mold["per_shot"] = format!("{} s", c.whole(2, 6) * 10).into();
            if c.happens(4) {
                mold["sets"] = format!("{} s", c.whole(1, 6) * 10).into();
                mold["count"] = c.whole(1, 3).into();
            }
        }
        molds.insert(format!("m{index}"), mold);
    }
    let mut bench = bench(c);
    if is_timed {
        bench["oven"] = json!({ "of": "clear", "power": "900 W", "hot_for": format!("{} s", c.whole(4, 20) * 10) });
    }
    json!({
        "format": "pourwright/1.0",
        "measures": "metric",
        "materials": {
            "clear": { "kind": "plastisol", "density": c.one_of(&["1 g/mL", "1.03 g/mL"]), "specific_heat": "1.9 J/(g.K)" },
            "firm": { "kind": "plastisol", "density": "1.08 g/mL" },
            "softener": { "kind": "softener", "density": c.one_of(&["1 g/mL", "0.98 g/mL"]) },
            "salt": { "kind": "salt", "density": "2.165 g/mL", "as_scooped": "1.2 g/mL" },
            "stain": { "kind": "colorant", "density": "1.1 g/mL" },
        },
        "formulas": formulas,
        "molds": molds,
        "bench": bench,
        "limits": limits(c),
    })
}

fn bench(c: &mut Choices) -> Value {
    let mut cups = Vec::new();
    let mut holds = 150;
    for _ in 0..*c.one_of(&[1, 1, 2, 3]) {
        holds += c.whole(2, 8) * 25;
        let marks = *c.one_of(&[100, 50, 25, 10, 0]);
        let mut cup = json!({ "holds": format!("{holds} mL") });
        if marks > 0 {
            cup["marks"] = format!("{marks} mL").into();
        }
        for (what, to) in [("film", 6), ("heel", 50)] {
            if c.happens(4) {
                cup[what] = format!("{} g", c.whole(0, to)).into();
            }
        }
        cups.push(cup);
    }
    let mut injector = json!({ "holds": "170 mL", "count": 3 });
    if c.happens(5) {
        injector["keeps"] = format!("{} mL", c.whole(0, 9)).into();
    }
    json!({ "cups": cups, "injector": injector, "balance": { "reads": "0.01 g", "to": "3000 g" } })
}

fn limits(c: &mut Choices) -> Value {
    let mut limits = Map::new();
    let mut maybe = |c: &mut Choices, in_ten, key: &str, value: Value| {
        if c.happens(in_ten) {
            limits.insert(key.into(), value);
        }
    };
    let heats = c.whole(1, 4);
    maybe(c, 4, "heats", heats.into());
    maybe(c, 4, "fresh_base", true.into());
    maybe(c, 4, "sprues", "melt-again".into());
    let full = format!("{} %", c.whole(14, 19) * 5);
    maybe(c, 4, "most_full", full.into());
    let least = format!("{} mL", c.whole(3, 12) * 10);
    maybe(c, 2, "least_pot", least.into());
    Value::Object(limits)
}

fn orders(c: &mut Choices, book: &Value) -> Value {
    let names = |key: &str| -> Vec<String> {
        book[key].as_object().into_iter().flatten().map(|(name, _)| name.clone()).collect()
    };
    let (formulas, molds) = (names("formulas"), names("molds"));
    let mut lines = Vec::new();
    let mut left = MOST_SHOTS;
    for index in 0..c.whole(1, 5) {
        let mut line = json!({ "order": format!("{}", 1 + index / 2), "mold": c.one_of(&molds) });
        let laminated = c.happens(3) && left > 1;
        let layers = if laminated { 2 } else { 1 };
        let pieces = c.whole(1, 4).min(left / layers);
        if pieces == 0 {
            break;
        }
        left -= pieces * layers;
        line["pieces"] = pieces.into();
        if laminated {
            let share = c.whole(2, 8) * 10;
            line["layers"] = json!([
                { "formulas": [c.one_of(&formulas)], "share": format!("{share} %") },
                { "formulas": [c.one_of(&formulas)], "share": format!("{} %", 100 - share) },
            ]);
        } else {
            line["formulas"] = json!([c.one_of(&formulas)]);
        }
        lines.push(line);
    }
    json!({ "format": "pourwright/1.0", "lines": lines })
}
