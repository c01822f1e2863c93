//! Days: a book with orders, shelves, stock and pots that are there, and the plan for them.

use std::cell::RefCell;
use std::rc::Rc;

use pourwright::Faults;
use pourwright::document::{LoadedBook, OpenPlan};
use pourwright::request::{Open, Response, read};
use serde_json::{Map, Value, json};

use crate::chance::{Chance, decimal};
use crate::pin::Asked;
use crate::shop;

/// A day with its plan, if there is one.
pub(crate) struct Day {
    pub(crate) book: Value,
    pub(crate) orders: Value,
    pub(crate) loaded: Result<LoadedBook, String>,
    pub(crate) open: Result<OpenPlan, String>,
    /// The plan as JSON; null without one.
    pub(crate) plan: Value,
}

thread_local! {
    /// The last one: the requests of a day come one after the other.
    static LAST: RefCell<Option<(String, usize, Rc<Day>)>> = const { RefCell::new(None) };
}

pub(crate) fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

pub(crate) fn text(value: &Value) -> &str {
    value.as_str().unwrap_or_default()
}

pub(crate) fn number(value: &Value) -> f64 {
    value["value"].as_f64().unwrap_or(0.0)
}

pub(crate) fn names(fields: &Value) -> Vec<String> {
    fields.as_object().into_iter().flatten().map(|(name, _)| name.clone()).collect()
}

impl Day {
    /// Day `number` of a kind of shop: "twisted" or "round".
    pub(crate) fn of(kind: &str, day: usize) -> Rc<Self> {
        LAST.with_borrow_mut(|last| match last {
            Some((known, at, found)) if known == kind && *at == day => Rc::clone(found),
            _ => {
                let found = Rc::new(Self::made(kind, day));
                *last = Some((kind.to_owned(), day, Rc::clone(&found)));
                found
            }
        })
    }

    /// Like [`Day::of`], but mostly one that can be planned.
    pub(crate) fn that_can_be(kind: &str, day: usize) -> Rc<Self> {
        let mut found = Self::of(kind, day);
        for more in 1..4 {
            if found.plan.is_null() {
                found = Self::of(kind, 100_000 * more + day);
            }
        }
        found
    }

    fn made(kind: &str, day: usize) -> Self {
        let c = &mut Chance::of(kind, day);
        let book = match kind {
            "round" => shop::round(c),
            _ => shop::twisted(c),
        };
        let loaded = LoadedBook::from_text(&book.to_string()).map_err(shown);
        let orders = orders(c, &book, loaded.as_ref().ok());
        let open = match &loaded {
            Ok(loaded) => loaded.open_plan_text(&orders.to_string()).map_err(shown),
            Err(faults) => Err(faults.clone()),
        };
        let plan = match &open {
            Ok(open) => serde_json::to_value(open.document()).expect("a plan as JSON"),
            Err(_) => Value::Null,
        };
        Self { book, orders, loaded, open, plan }
    }

    /// The plan of the day, its sheet and the notes to it.
    pub(crate) fn planned(self: Rc<Self>) -> Asked {
        let answer = match &self.open {
            Ok(open) => {
                let document = open.document();
                let json = serde_json::to_string(document).expect("a plan as JSON");
                format!("{json}\n{}\n{}", document.sheet(), document.notes())
            }
            Err(faults) => faults.clone(),
        };
        let request = json!({ "calculate": "plan", "orders": self.orders });
        Asked { request, answer, day: Some(self) }
    }

    /// The answer to a request of the open plan, or of the book where there is none.
    pub(crate) fn answer(&self, request: &Value) -> String {
        match (&self.open, &self.loaded) {
            (Ok(open), _) => answer(request, open.into()),
            (_, Ok(book)) => answer(request, book.into()),
            (_, Err(faults)) => faults.clone(),
        }
    }

    pub(crate) fn pots(&self) -> &[Value] {
        list(&self.plan["pots"])
    }
}

/// Faults as JSON.
fn shown(faults: Faults) -> String {
    serde_json::to_string(&faults.into_vec()).expect("faults as JSON")
}

/// The answer as JSON, with the sheets that it has.
pub(crate) fn answer(request: &Value, open: Open<'_>) -> String {
    let answer = match read(request) {
        Ok(request) => request.answer_of(open),
        Err(faults) => Err(faults),
    };
    let response = match answer {
        Ok(response) => response,
        Err(faults) => return shown(faults),
    };
    let json = serde_json::to_string(&response).expect("an answer as JSON");
    match &response {
        Response::Plan(plan) => format!("{json}\n{}\n{}", plan.sheet(), plan.notes()),
        Response::Record(made) => format!("{json}\n{}", made.record.sheet()),
        Response::Learn(learned) => format!("{json}\n{}", learned.sheet()),
        Response::GoOn(gone) => match &gone.plan {
            Some(plan) => format!("{json}\n{}\n{}", plan.sheet(), plan.notes()),
            None => json,
        },
        _ => json,
    }
}

/// What a book can shoot.
struct Wares {
    colors: Vec<String>,
    bodies: Vec<String>,
}

impl Wares {
    fn of(book: &Value) -> Self {
        let all = names(&book["formulas"]);
        let (bodies, colors): (Vec<_>, Vec<_>) =
            all.into_iter().partition(|name| !book["formulas"][name]["base"].is_null());
        Self { colors, bodies }
    }

    fn formulas(&self, c: &mut Chance) -> Value {
        let body = c.one_of(&self.bodies).clone();
        if self.colors.is_empty() || c.happens(10) {
            return json!([body]);
        }
        let color = c.one_of(&self.colors).clone();
        if c.happens(3) { json!([color]) } else { json!([color, body]) }
    }

    fn layers(&self, c: &mut Chance) -> Value {
        let first = c.whole(2, 8) * 10;
        let shares = if c.happens(5) { vec![30, 30, 40] } else { vec![first, 100 - first] };
        let layer = |share| json!({ "formulas": self.formulas(c), "share": format!("{share} %") });
        shares.into_iter().map(layer).collect()
    }
}

/// The order lines, and what else a list may have.
fn orders(c: &mut Chance, book: &Value, loaded: Option<&LoadedBook>) -> Value {
    let wares = Wares::of(book);
    let is_small = book["products"].is_null();
    let count = if is_small { c.whole(1, 6) } else { *c.one_of(&[1, 2, 3, 3, 4, 5, 6, 8]) };
    let lines: Vec<Value> =
        (0..count).map(|index| line(c, book, &wares, is_small, index)).collect();
    let mut orders = json!({ "format": "pourwright/1.0", "lines": lines });
    if c.happens(70) {
        orders["day"] = "2027-03-02".into();
    }
    if c.happens(30) {
        orders["shelf"] = (0..c.whole(1, 3)).map(|index| jar(c, book, &wares, index)).collect();
    }
    if c.happens(30) {
        let mut stock = Map::new();
        for name in names(&book["materials"]) {
            if c.happens(60) {
                stock.insert(
                    name,
                    c.value(&[
                        "\"40 g\"",
                        "\"1 g\"",
                        "\"900 g\"",
                        "\"5 kg\"",
                        "\"200 mL\"",
                        "\"0 g\"",
                    ]),
                );
            }
        }
        orders["stock"] = stock.into();
    }
    if c.happens(25)
        && let Some(loaded) = loaded
    {
        let pots = (0..c.whole(1, 3)).map(|index| there(c, &orders, (book, loaded), &wares, index));
        let pots = pots.collect();
        orders["pots"] = pots;
    }
    if c.happens(5) {
        orders["letters"] = json!({ "dusk + plain": "C", "f0": "B", "ember + plain": "A" });
    }
    orders
}

fn line(c: &mut Chance, book: &Value, wares: &Wares, is_small: bool, index: usize) -> Value {
    let mut line = json!({ "order": format!("{}", 30 + index / 2) });
    let products = names(&book["products"]);
    let mold;
    let mut layers = 1;
    if !is_small && c.happens(55) {
        let product = c.one_of(&products).clone();
        mold = text(&book["products"][&product]["mold"]).to_owned();
        line["product"] = product.into();
    } else {
        mold = c.one_of(&names(&book["molds"])).clone();
        line["mold"] = mold.clone().into();
        let injectors = book["bench"]["injector"]["count"].as_u64().unwrap_or(1);
        if c.happens(25) && (injectors > 1 || c.happens(5)) {
            line["layers"] = wares.layers(c);
            layers = 2;
        } else {
            line["formulas"] = wares.formulas(c);
            if c.happens(6) {
                let more = c.one_of(&wares.bodies).clone();
                line["formulas"].as_array_mut().expect("a list").push(more.into());
                line["overlap"] = c.value(&["\"add\"", "\"last\"", "\"refuse\""]);
            }
        }
    }
    let shapes = names(&book["molds"][&mold]["cavities"]);
    if !shapes.is_empty() {
        line["shape"] = c.one_of(&shapes).as_str().into();
    }
    let most = if is_small { 10 / layers } else { *c.one_of(&[12, 40, 60, 120]) };
    if !is_small && c.happens(25) {
        line["packs"] = c.whole(1, 8).into();
        line["pack_of"] = c.whole(1, 10).into();
    } else {
        line["pieces"] = c.whole(1, most).into();
    }
    if c.happens(50) {
        line["promised"] = format!("2027-03-{:02}", c.whole(1, 28)).into();
    }
    line
}

/// A leftover on the shelf.
fn jar(c: &mut Chance, book: &Value, wares: &Wares, index: usize) -> Value {
    let mut jar = json!({
        "name": format!("jar {index}"),
        "mass": c.value(&["\"40 g\"", "\"100 g\"", "\"104.5 g\"", "\"250 g\"", "\"600 g\"", "\"8 g\""]),
    });
    if c.happens(75) {
        jar["formulas"] = wares.formulas(c);
    } else {
        let mut parts = Map::new();
        for name in names(&book["materials"]) {
            let is_base = book["materials"][&name]["kind"] == "plastisol";
            if is_base && c.happens(70) {
                parts.insert(name, "100 g".into());
            } else if c.happens(20) {
                parts.insert(name, c.value(&["\"1 g\"", "\"5 g\"", "\"20 g\""]));
            }
        }
        jar["parts"] = parts.into();
    }
    if c.happens(99) {
        jar["heats"] = c.whole(1, 4).into();
    }
    if c.happens(60) {
        jar["made"] = format!("2027-0{}-{:02}", c.whole(1, 2), c.whole(1, 28)).into();
    }
    if c.happens(50) {
        jar["spent"] = c.value(&["\"3 min\"", "\"20 min\"", "\"44 min\""]);
    }
    jar
}

/// The masses of a recipe by material for an amount of base, as its answer has them.
pub(crate) fn recipe(book: &LoadedBook, formulas: &Value, base: &str) -> Vec<(String, f64)> {
    let request = json!({ "calculate": "formula", "formulas": formulas, "base_amount": base });
    let answer: Value = pourwright_tests::demo::json(&book.answer_text(&request.to_string()));
    let parts = list(&answer["result"]["parts"]).iter();
    parts.map(|part| (text(&part["material"]).to_owned(), number(&part["mass"]))).collect()
}

/// A pot that is there already, begun for some of the lines or for none.
fn there(
    c: &mut Chance,
    orders: &Value,
    (book, loaded): (&Value, &LoadedBook),
    wares: &Wares,
    index: usize,
) -> Value {
    let lines = list(&orders["lines"]);
    let at = c.below(lines.len());
    let mut formulas = lines[at]["formulas"].clone();
    let mut layer = 1;
    if let Some(layers) = lines[at]["layers"].as_array() {
        layer = c.whole(1, layers.len());
        formulas = layers[layer - 1]["formulas"].clone();
    }
    if let Some(product) = lines[at]["product"].as_str() {
        let product = &book["products"][product];
        formulas = product["formulas"].clone();
        if let Some(layers) = product["layers"].as_array() {
            layer = c.whole(1, layers.len());
            formulas = layers[layer - 1]["formulas"].clone();
        }
    }
    if formulas.is_null() || c.happens(15) {
        formulas = wares.formulas(c);
    }
    let mut pot = json!({ "pot": c.word(&["P", "Q", "R"][index..=index]) });
    if c.happens(90) {
        let base = c.word(&["1 cup", "200 g", "100 g", "2 cup", "400 g", "1/2 cup", "3 cup"]);
        let mut parts = Map::new();
        for (material, grams) in recipe(loaded, &formulas, &base) {
            let off = *c.one_of(&[1.0, 1.0, 1.0, 1.0, 1.02, 0.97, 1.05, 0.5, 1.3, 0.0]);
            if off > 0.0 {
                parts.insert(material, format!("{} g", decimal(grams * off, 3)).into());
            }
        }
        pot["parts"] = parts.into();
    }
    if c.happens(70) {
        pot["draws"] = json!([{ "line": at + 1, "shots": c.whole(1, 6), "layer": layer }]);
        if c.happens(25) && lines.len() > 1 {
            let other = c.below(lines.len());
            pot["draws"]
                .as_array_mut()
                .expect("a list")
                .push(json!({ "line": other + 1, "shots": c.whole(1, 4) }));
        }
    }
    if c.happens(60) {
        pot["hot"] = c.happens(60).into();
    }
    if c.happens(40) {
        pot["heats"] = c.whole(0, 3).into();
    }
    if c.happens(30) {
        pot["degassed"] = c.happens(60).into();
    }
    if c.happens(30) {
        pot["takes_more"] = c.happens(40).into();
    }
    if c.happens(30) {
        pot["spent"] = c.value(&["\"4.6 min\"", "\"30 min\"", "\"1 min\""]);
    }
    if c.happens(20) {
        pot["cup"] = list(&book["bench"]["cups"])[0]["holds"].clone();
    }
    if c.happens(30) {
        let name = list(&formulas).iter().map(text).collect::<Vec<_>>().join(" + ");
        pot["id"] = name.into();
    }
    pot
}
