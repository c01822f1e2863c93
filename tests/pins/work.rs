//! What is asked of an open plan through a day: pots that came out wrong, a new plan at noon, the record, troubles.

use std::collections::BTreeMap;

use serde_json::{Map, Value, json};

use crate::chance::{Chance, decimal};
use crate::day::{Day, list, names, number, text};
use crate::plain;

const KINDS: [&str; 9] =
    ["base", "softener", "stabilizer", "colorant", "pearl", "flake", "salt", "scent", "hardener"];

/// What went in instead of `grams` of a material.
fn instead(c: &mut Chance, grams: f64, has_drops: bool) -> Value {
    match c.below(12) {
        2..=4 if !has_drops => c.grams(grams, 40),
        0 => c.value(&["\"twice\"", "\"3 times\"", "\"4 times\""]),
        1 => c.value(&["\"half\"", "\"none\""]),
        2 => json!(format!("+ {} drops", c.whole(1, 40))),
        3 => json!(format!("- {} drops", c.whole(1, 20))),
        4 => json!(format!("{} drops", c.whole(1, 200))),
        5 => json!(format!("+ {}", c.word(&["1 tsp", "1/4 tsp", "1 cup", "10 g", "1 g"]))),
        6 => json!(c.word(&["1 tsp", "1/2 cup", "2 tbsp", "1 1/2 cup", "100 g", "3 cup"])),
        7 => json!(format!("+ {} g", decimal(grams * c.whole(1, 30) as f64 / 100.0, 2))),
        8 => json!(format!("- {} g", decimal(grams * c.whole(1, 90) as f64 / 100.0, 2))),
        _ => {
            let times =
                *c.one_of(&[0.3, 0.5, 0.8, 0.9, 0.95, 1.0, 1.04, 1.05, 1.06, 1.1, 1.2, 1.5, 2.5]);
            json!(format!("{} g", decimal(grams * times, 2)))
        }
    }
}

fn maybe(c: &mut Chance, request: &mut Value, in_hundred: usize, field: &str, to: &[&str]) {
    if c.happens(in_hundred) {
        request[field] = c.value(to);
    }
}

/// A pot that came out wrong.
pub(crate) fn correct(c: &mut Chance, day: &Day) -> Value {
    let mut wrong = Map::new();
    let mut request = json!({ "calculate": "correct" });
    let mut grams = BTreeMap::new();
    let pots = day.pots();
    if !pots.is_empty() && c.happens(75) {
        let pot = c.one_of(pots);
        let stages = list(&pot["stages"]);
        let stage = c.below(stages.len());
        let steps: Vec<&Value> = list(&day.plan["steps"])
            .iter()
            .filter(|step| list(&step["at"]).iter().any(|at| at["pot"] == pot["pot"]))
            .collect();
        if c.happens(30) && !steps.is_empty() {
            request["step"] = c.one_of(&steps)["id"].clone();
        } else {
            request["pot"] = pot["pot"].clone();
            if stage > 0 || c.happens(20) {
                request["stage"] = (stage + 1).into();
            }
        }
        for weigh in list(&stages[stage]["weigh"]) {
            grams.insert(text(&weigh["material"]).to_owned(), number(&weigh["wanted"]));
        }
    } else {
        let (formulas, base) = asked_formulas(c, day);
        if let Ok(book) = &day.loaded {
            grams = crate::day::recipe(book, &formulas, &base).into_iter().collect();
        }
        request["formulas"] = formulas;
        if c.happens(80) {
            request["pot_base"] = base.into();
        } else {
            for (name, grams) in &grams {
                wrong.insert(name.clone(), c.grams(*grams, 15));
            }
        }
        maybe(c, &mut request, 5, "overlap", &["\"add\"", "\"last\""]);
    }
    for _ in 0..*c.one_of(&[1, 1, 1, 2, 2, 3]) {
        let name = match c.below(10) {
            0 => c.one_of(&names(&day.book["materials"])).clone(),
            1 => c.word(&KINDS),
            _ if grams.is_empty() => "base".to_owned(),
            _ => c.one_of(&grams.keys().cloned().collect::<Vec<_>>()).clone(),
        };
        let kind = text(&day.book["materials"][&name]["kind"]);
        let has_drops = matches!(kind, "colorant" | "scent" | "stabilizer") || c.happens(5);
        if !grams.contains_key(&name) && !KINDS.contains(&name.as_str()) && c.happens(80) {
            wrong.insert(name, json!(c.word(&["5 g", "1 g", "20 g", "0.1 g"])));
            continue;
        }
        let usual = grams.get(&name).copied().unwrap_or(5.0);
        wrong.insert(name, instead(c, usual, has_drops));
    }
    let first = wrong.keys().next().cloned();
    request["instead"] = wrong.into();
    maybe(c, &mut request, 30, "hot", &["true", "false"]);
    if c.happens(20) {
        let whole: f64 = grams.values().sum();
        request["still_there"] = c.grams(whole * 0.5, 40);
    }
    maybe(c, &mut request, 3, "still_there", &["\"1/2 cup\"", "\"1/4 cup\"", "\"2 cup\""]);
    maybe(
        c,
        &mut request,
        18,
        "cup",
        &[
            "\"8 cup\"",
            "\"2 L\"",
            "\"2 cup\"",
            "\"4 cup\"",
            "\"1 cup\"",
            "\"500 mL\"",
            "\"6 cup\"",
            "\"1 L\"",
        ],
    );
    maybe(c, &mut request, 10, "trace", &["\"0 %\"", "\"0.1 %\"", "\"2 %\"", "\"5 %\""]);
    if c.happens(15) {
        let own =
            if c.happens(70) { first } else { names(&day.book["materials"]).first().cloned() };
        request["on_purpose"] = json!(own.into_iter().collect::<Vec<_>>());
    }
    maybe(
        c,
        &mut request,
        25,
        "save_as",
        &["\"dusk, darker\"", "\"dusk, darker\"", "\"dusk, darker\"", "\"f9\"", "\"dusk\""],
    );
    maybe(c, &mut request, 12, "body_as", &["\"salted, more\"", "\"plain\""]);
    maybe(c, &mut request, 10, "replace", &["true"]);
    request
}

fn asked_formulas(c: &mut Chance, day: &Day) -> (Value, String) {
    let all = names(&day.book["formulas"]);
    let (bodies, colors): (Vec<_>, Vec<_>) =
        all.into_iter().partition(|name| !day.book["formulas"][name]["base"].is_null());
    let body = c.one_of(&bodies).clone();
    let formulas = if colors.is_empty() { json!([body]) } else { json!([c.one_of(&colors), body]) };
    (formulas, c.word(&["1 cup", "2 cup", "250 g", "100 g", "1/2 cup", "3 1/2 cup"]))
}

/// What is there at noon.
pub(crate) fn go_on(c: &mut Chance, day: &Day) -> Value {
    let steps = list(&day.plan["steps"]);
    let done = c.below(steps.len() + 1);
    let mut pots: BTreeMap<String, Value> = BTreeMap::new();
    for step in steps.iter().take(done) {
        for at in list(&step["at"]) {
            pots.insert(text(&at["pot"]).to_owned(), json!({ "done": at["number"] }));
        }
    }
    let mut request = json!({ "calculate": "go-on" });
    for pot in day.pots() {
        let letter = text(&pot["pot"]).to_owned();
        if !pots.contains_key(&letter) && !c.happens(5) {
            continue;
        }
        let now = pots.entry(letter).or_insert_with(|| json!({}));
        let next = steps.iter().find(|step| {
            let mut at = list(&step["at"]).iter();
            at.any(|at| at["pot"] == pot["pot"] && at["number"].as_u64() > now["done"].as_u64())
        });
        let shoots = next.is_some_and(|step| step["kind"] == "shoot");
        maybe(c, now, if shoots { 60 } else { 1 }, "shots", &["1", "2", "3"]);
        maybe(c, now, 12, "hot", &["true", "false"]);
        maybe(
            c,
            now,
            12,
            "left",
            &["\"212 g\"", "\"60 g\"", "\"1 cup\"", "\"1/4 cup\"", "\"0 g\"", "\"20 g\""],
        );
        maybe(c, now, 8, "heats", &["0", "1", "2", "3"]);
        maybe(c, now, 8, "degassed", &["true", "false"]);
        maybe(c, now, 5, "lost", &["true"]);
        if c.happens(4) {
            now["cup"] = c.one_of(list(&day.book["bench"]["cups"]))["holds"].clone();
        }
        if c.happens(12) {
            let stage = &list(&pot["stages"])[0];
            let mut parts = Map::new();
            for weigh in list(&stage["weigh"]) {
                let off = *c.one_of(&[0, 0, 0, 3, 10, 40]);
                if c.happens(85) {
                    parts.insert(
                        text(&weigh["material"]).to_owned(),
                        c.grams(number(&weigh["wanted"]), off),
                    );
                }
            }
            now["parts"] = parts.into();
        }
    }
    if c.happens(15) {
        let (formulas, base) = asked_formulas(c, day);
        let mut trial = json!({ "start": base, "formulas": formulas });
        if c.happens(50) {
            trial["log"] = log(c, day);
        }
        pots.insert("X".into(), json!({ "trial": trial, "hot": c.happens(50) }));
    }
    if c.happens(30) && done > 0 {
        let items = steps.iter().take(done).flat_map(|step| list(&step["items"]));
        request["ticks"] = items.map(|item| item["id"].clone()).collect();
        if c.happens(50) {
            pots.clear();
        }
    }
    if !pots.is_empty() {
        request["pots_now"] = json!(pots);
    }
    if c.happens(30) {
        let lines = list(&day.orders["lines"]).len();
        request["good_pieces"] = json!([{ "line": c.whole(1, lines), "pieces": c.whole(0, 30) }]);
    }
    if c.happens(30) {
        let mut line = c.one_of(list(&day.orders["lines"])).clone();
        let fields = line.as_object_mut().expect("a line");
        fields.retain(|name, _| name != "packs" && name != "pack_of");
        fields.insert("pieces".into(), c.whole(1, 30).into());
        request["more_lines"] = json!([line]);
    }
    if c.happens(10) {
        request["broken_molds"] = json!([c.one_of(&names(&day.book["molds"]))]);
    }
    if c.happens(4) {
        request["broken_cups"] = json!([c.one_of(list(&day.book["bench"]["cups"]))["holds"]]);
    }
    request
}

/// The log of a trial.
fn log(c: &mut Chance, day: &Day) -> Value {
    let materials = names(&day.book["materials"]);
    let mut log = Vec::new();
    for _ in 0..c.whole(1, 6) {
        log.push(match c.below(8) {
            0 if !log.is_empty() => json!("again"),
            1 => json!({ "taken": c.word(&["5 g", "10 g", "1 tbsp", "40 g"]) }),
            _ => {
                let name = c.one_of(&materials).clone();
                let amounts: &[&str] = match text(&day.book["materials"][&name]["kind"]) {
                    "colorant" | "scent" => &["3 drops", "1 drop", "10 drops", "0.3 g"],
                    "plastisol" => &["1/4 cup", "20 g", "1/2 cup"],
                    "pearl" | "flake" => &["1/8 tsp", "1/4 tsp", "0.5 g"],
                    _ => &["1 tsp", "5 g", "1/2 tsp"],
                };
                json!({ name: c.word(amounts) })
            }
        });
    }
    log.into()
}

/// A color found by eye.
pub(crate) fn trial(c: &mut Chance, day: &Day) -> Value {
    let mut trial = json!({ "start": c.word(&["1/2 cup", "1 cup", "100 g", "250 mL", "3/4 cup"]), "log": log(c, day) });
    match c.below(4) {
        0 => {}
        1 => trial["base"] = c.word(&["clear-base", "firm-base", "clear"]).into(),
        2 => {
            let bodies = names(&day.book["formulas"]);
            let bodies: Vec<_> = bodies
                .into_iter()
                .filter(|name| !day.book["formulas"][name]["base"].is_null())
                .collect();
            trial["formulas"] = json!([c.one_of(&bodies)]);
        }
        _ => trial["formulas"] = asked_formulas(c, day).0,
    }
    maybe(c, &mut trial, 10, "overlap", &["\"add\"", "\"last\""]);
    maybe(c, &mut trial, 10, "notes", &["\"By daylight.\""]);
    let mut request = json!({ "calculate": "trial", "trial": trial });
    maybe(c, &mut request, 30, "per", &["\"1 cup\"", "\"2 cup\"", "\"100 g\"", "\"1/2 cup\""]);
    maybe(
        c,
        &mut request,
        60,
        "save_as",
        &["\"dusk, darker\"", "\"dusk, darker\"", "\"dusk, darker\"", "\"f9\"", "\"dusk\""],
    );
    maybe(c, &mut request, 25, "body_as", &["\"salted, more\"", "\"plain\""]);
    maybe(c, &mut request, 15, "replace", &["true"]);
    request
}

/// The record of the day, with notes of what differed.
pub(crate) fn record(c: &mut Chance, day: &Day) -> Value {
    let mut pots = Map::new();
    for pot in day.pots() {
        if c.happens(25) {
            continue;
        }
        let stages = list(&pot["stages"]);
        let mut made: Vec<Value> = stages.iter().map(|stage| stage_made(c, stage)).collect();
        let letter = text(&pot["pot"]).to_owned();
        let last = made.last_mut().expect("a stage");
        if c.happens(50) {
            let left = number(&pot["left_over"]);
            last["left"] = c.grams(left, 20);
        }
        maybe(c, last, 15, "jar", &["\"jar, tin 4\"", "\"jar 0\""]);
        maybe(c, last, 10, "notes", &["\"Smoked a little at 345 °F.\""]);
        let whole = made.len() == 1 && c.happens(70);
        pots.insert(letter, if whole { made.remove(0) } else { made.into() });
    }
    json!({ "calculate": "record", "actuals": { "format": "pourwright/1.0", "pots": pots } })
}

fn stage_made(c: &mut Chance, stage: &Value) -> Value {
    let mut made = json!({});
    let mut went_in = Map::new();
    for weigh in list(&stage["weigh"]) {
        if !c.happens(30) {
            continue;
        }
        let grams = number(&weigh["best"]["gives"]);
        let off = *c.one_of(&[2, 5, 10, 40]);
        let ways = std::iter::once(&weigh["best"]).chain(list(&weigh["others"]));
        let counted = ways
            .filter(|way| way["tool"] == "drops" || way["tool"] == "spoons")
            .find(|way| !text(&way["measure"]).contains('+'));
        let has_drops = weigh["kind"] == "colorant" || weigh["kind"] == "scent";
        let value = match c.below(6) {
            0 => json!({ "weighed": c.grams(grams, off) }),
            1..=3 if counted.is_some() => {
                let measure = counted.map(|way| way["measure"].clone());
                json!({ "measured": measure, "weighed": c.grams(grams, off) })
            }
            4 if has_drops => c.value(&["\"0 g\"", "\"12 drops\"", "\"1/4 tsp\"", "\"30 drops\""]),
            _ => c.grams(grams, off),
        };
        went_in.insert(text(&weigh["material"]).to_owned(), value);
    }
    if !went_in.is_empty() {
        made["went_in"] = went_in.into();
    }
    let mut molds: BTreeMap<String, Vec<Value>> = BTreeMap::new();
    for draw in list(&stage["draws"]) {
        molds.entry(text(&draw["mold"]).to_owned()).or_default().push(draw_made(c, draw));
    }
    let molds: Map<String, Value> = molds
        .into_iter()
        .filter(|_| c_keeps(stage))
        .map(|(mold, mut draws)| {
            (mold, if draws.len() == 1 { draws.remove(0) } else { draws.into() })
        })
        .collect();
    if !molds.is_empty() && c.happens(80) {
        made["molds"] = molds.into();
    }
    maybe(c, &mut made, 15, "reheats", &["0", "1", "2", "3"]);
    maybe(
        c,
        &mut made,
        15,
        "injector",
        &["\"4.1 g\"", "\"3.7 g\"", "[\"4.0 g\",\"4.4 g\"]", "\"9 g\""],
    );
    maybe(
        c,
        &mut made,
        12,
        "save_as",
        &["\"dusk, darker\"", "\"dusk, darker\"", "\"dusk, darker\"", "\"f9\"", "\"dusk\""],
    );
    maybe(c, &mut made, 8, "body_as", &["\"salted, more\"", "\"plain\""]);
    if c.happens(25) {
        let heat = json!({ "time": format!("{} s", c.whole(80, 400)), "from": "68 °F", "to": c.word(&["335 °F", "338 °F", "341 °F"]) });
        made["heats"] = json!([heat]);
        if c.happens(40) {
            let again = json!({ "time": format!("{} s", c.whole(20, 90)) });
            made["heats"].as_array_mut().expect("a list").push(again);
        }
        if c.happens(15) {
            made["heats"][0]["setting"] = "100 %".into();
        }
    }
    made
}

/// Stages without draws have no molds.
fn c_keeps(stage: &Value) -> bool {
    !list(&stage["draws"]).is_empty()
}

fn draw_made(c: &mut Chance, draw: &Value) -> Value {
    let planned = draw["shots"].as_u64().unwrap_or(1) as usize;
    let mut made = json!({});
    let mut shots = planned;
    if c.happens(35) {
        shots = (planned + c.below(3)).saturating_sub(1);
        made["shots"] = shots.into();
    }
    let pieces = list(&draw["pieces"]);
    let counted = |c: &mut Chance, piece: &Value| {
        let cast = piece["made"].as_u64().unwrap_or(1) as usize * shots / planned.max(1);
        let mut made = json!({});
        if c.happens(60) {
            made["good"] = cast.saturating_sub(*c.one_of(&[0, 0, 1, 2, 5])).into();
        }
        if c.happens(55) {
            let weighs = number(&piece["weighs"]);
            let off = *c.one_of(&[1.0, 1.0, 0.99, 1.02, 1.06, 0.93, 1.2]);
            let one = |c: &mut Chance| {
                let scatter = 1.0 + (c.whole(0, 20) as f64 - 10.0) / 1000.0;
                format!("{} g", decimal(weighs * off * scatter, 2))
            };
            made["weights"] = match c.below(4) {
                0 if cast >= 10 => {
                    json!({ "count": 10, "weigh": format!("{} g", decimal(weighs * off * 10.0, 1)) })
                }
                1 => json!(one(c)),
                2 if cast >= 4 => {
                    json!([one(c), { "count": 3, "weigh": format!("{} g", decimal(weighs * off * 3.0, 1)) }])
                }
                _ => (0..c.whole(1, cast.clamp(1, 6))).map(|_| one(c)).collect::<Vec<_>>().into(),
            };
        }
        made
    };
    if pieces.len() > 1 || pieces.first().is_some_and(|piece| !piece["shape"].is_null()) {
        let mut shapes = Map::new();
        for piece in pieces {
            shapes.insert(text(&piece["shape"]).to_owned(), counted(c, piece));
        }
        made["shapes"] = shapes.into();
    } else if let Some(piece) = pieces.first() {
        for (name, value) in counted(c, piece).as_object().expect("fields") {
            made[name] = value.clone();
        }
    }
    maybe(c, &mut made, 30, "took", &["\"6 min\"", "\"90 s\"", "\"12 min\"", "\"4 min\""]);
    made
}

/// What the records of several days show: mostly days that went alike.
pub(crate) fn learn(c: &mut Chance, day: &Day) -> Value {
    let usual = record(c, day);
    let is_alike = c.happens(75);
    let mut records = Vec::new();
    for number in 0..*c.one_of(&[1, 3, 4, 5, 6, 8]) {
        let mut request = if is_alike { usual.clone() } else { record(c, day) };
        let mut found = Vec::new();
        plain::places(&request, "", &mut found);
        for place in found {
            let by = 1.0 + (c.whole(0, 6) as f64 - 3.0) / 100.0;
            match request.pointer_mut(&place) {
                Some(Value::String(text)) if text.ends_with(" g") || text.ends_with(" s") => {
                    if let Some(other) = plain::scaled(text, by) {
                        *text = other;
                    }
                }
                Some(value) if place.ends_with("/good") && c.happens(40) => {
                    *value = (value.as_u64().unwrap_or(1).saturating_sub(1)).into();
                }
                _ => {}
            }
        }
        let answer = day.answer(&request);
        let answer = answer.lines().next().unwrap_or_default();
        let mut record: Value = serde_json::from_str(answer).unwrap_or(Value::Null);
        if !record["pots"].is_array() {
            continue;
        }
        record["day"] = format!("2027-{:02}-{:02}", 3 + number / 4, 1 + 7 * (number % 4)).into();
        record.as_object_mut().expect("a record").remove("calculate");
        records.push(record);
    }
    let mut request = json!({ "calculate": "learn", "records": records });
    maybe(c, &mut request, 10, "after", &["\"2027-03-01\"", "\"2027-03-15\""]);
    request
}

const TROUBLES: [&str; 9] = [
    "too-thick",
    "too-soft",
    "sinking-salt",
    "yellowing",
    "clumps",
    "air-in-noses",
    "spitting",
    "sticky-sprues",
    "dents",
];

pub(crate) fn troubles(c: &mut Chance, day: &Day) -> Value {
    let mut request = json!({ "calculate": "troubles" });
    if c.happens(95) {
        // Those that are calculated, more often.
        let some: &[&str] = if c.happens(70) { &TROUBLES[..4] } else { &TROUBLES };
        request["trouble"] = c.word(some).into();
    }
    let pots = day.pots();
    if !pots.is_empty() && c.happens(70) {
        let pot = c.one_of(pots);
        request["pot"] = pot["pot"].clone();
        let stages = list(&pot["stages"]).len();
        if c.happens(50) {
            request["stage"] = c.whole(1, stages).into();
        }
    } else {
        maybe(
            c,
            &mut request,
            80,
            "base_in_pot",
            &["\"1 cup\"", "\"300 g\"", "\"2 cup\"", "\"100 g\""],
        );
    }
    maybe(c, &mut request, 50, "hardness_now", &["55", "50", "40", "62", "33.5"]);
    maybe(c, &mut request, 50, "hardness_wanted", &["45", "50", "60", "35", "62"]);
    maybe(c, &mut request, 20, "with_material", &["\"softener\"", "\"plum\"", "\"stabilizer\""]);
    request
}

/// What is asked of a book alone: recipes, costs, leftovers.
pub(crate) fn of_book(c: &mut Chance, day: &Day) -> Value {
    let (formulas, base) = asked_formulas(c, day);
    let mut request = match c.below(3) {
        0 => json!({ "calculate": "formula", "formulas": formulas }),
        1 => json!({ "calculate": "cost", "formulas": formulas }),
        _ => {
            let mut orders = day.orders.clone();
            orders.as_object_mut().expect("orders").remove("pots");
            if orders["shelf"].is_null() {
                orders["shelf"] =
                    json!([{ "name": "old", "formulas": formulas, "mass": "120 g", "heats": 1 }]);
            }
            return json!({ "calculate": "leftovers", "orders": orders });
        }
    };
    if c.happens(60) {
        request["base_amount"] = base.into();
    } else if c.happens(70) {
        request["finished_amount"] = c.value(&["\"400 g\"", "\"2 cup\"", "\"500 mL\""]);
    }
    if request["calculate"] == "cost" {
        maybe(c, &mut request, 40, "made", &["40", "7", "100"]);
        maybe(c, &mut request, 40, "packs", &["4", "10"]);
        maybe(c, &mut request, 30, "work_time", &["\"40 min\"", "\"90 s\""]);
        maybe(c, &mut request, 30, "work_rate", &["\"20.00 USD per 1 h\""]);
        maybe(c, &mut request, 30, "cost_margin", &["\"45 %\"", "\"0 %\"", "\"10 %\""]);
        maybe(c, &mut request, 30, "returned_mass", &["\"40 g\"", "\"100 g\""]);
        maybe(c, &mut request, 30, "returned_worth", &["\"60 %\"", "\"100 %\""]);
        maybe(
            c,
            &mut request,
            20,
            "packing",
            &[r#"[{"name":"bag","price":"9.00 USD per 100 pieces"}]"#],
        );
    }
    maybe(c, &mut request, 8, "overlap", &["\"add\"", "\"last\""]);
    request
}
