//! The demo shop on many days, by the doors that a program has: a plan, notes of what differed, a record, what is learned.

use pourwright::document::{LoadedBook, OpenPlan};
use pourwright_tests::demo::{BOOK, json};
use serde_json::{Value, json};

use pourwright_tests::chance::{Chance, shown};

/// The shop as it really is.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Truth {
    /// One drop of plum, in g.
    pub(crate) plum: f64,
    /// Salt as scooped, in g/mL.
    pub(crate) salt: f64,
    /// The cavity of finger-5 over that of the book.
    pub(crate) cavity: f64,
    pub(crate) rejects: f64,
    /// What the injector keeps, in mL.
    pub(crate) keeps: f64,
    /// How long a heating takes over what the book expects.
    pub(crate) heating: f64,
    /// From one shot to the next, in s.
    pub(crate) shot: f64,
}

/// The shop as its book has it.
pub(crate) const AS_IN_THE_BOOK: Truth = Truth {
    plum: 0.044,
    salt: 1.22,
    cavity: 1.0,
    rejects: 0.03,
    keeps: 4.0,
    heating: 1.0,
    shot: 50.0,
};

pub(crate) struct Shop {
    pub(crate) book: LoadedBook,
    plan: OpenPlan,
}

fn result(answer: &str) -> Value {
    let answer: Value = json(answer);
    assert!(answer.get("faults").is_none(), "{answer}");
    answer["result"].clone()
}

pub(crate) fn value(shown: &Value) -> f64 {
    shown["value"].as_f64().unwrap_or_else(|| panic!("no number: {shown}"))
}

impl Shop {
    pub(crate) fn demo() -> Self {
        Self::of(&json(BOOK))
    }

    pub(crate) fn of(book: &Value) -> Self {
        Self::pouring(book, 42)
    }

    pub(crate) fn pouring(book: &Value, pieces: u32) -> Self {
        let book = LoadedBook::from_text(&book.to_string()).expect("a book");
        let orders = json!({
            "format": "pourwright/1.0",
            "lines": [{ "order": "1", "product": "dusk finger, salted", "pieces": pieces }],
        });
        let plan = book.open_plan_text(&orders.to_string()).expect("a plan");
        Self { book, plan }
    }

    /// The record of `day`, from notes of its pots.
    pub(crate) fn record(&self, day: &str, pots: &Value) -> Value {
        let actuals = json!({ "format": "pourwright/1.0", "pots": pots });
        let request = json!({ "calculate": "record", "actuals": actuals });
        let mut record = result(&self.plan.answer_text(&request.to_string()));
        record["day"] = json!(day);
        record
    }

    pub(crate) fn ask(&self, records: &[Value], more: &[(&str, Value)]) -> Value {
        let mut request = json!({ "calculate": "learn", "records": records });
        for (field, value) in more {
            request[*field] = value.clone();
        }
        json(&self.book.answer_text(&request.to_string()))
    }

    pub(crate) fn learn(&self, records: &[Value]) -> Value {
        result(&self.ask(records, &[]).to_string())
    }

    /// A day at the bench, its notes in the roundings of the bench: 0.1 g, 1 s, 1 min.
    pub(crate) fn pour(&self, chance: &mut Chance, day: &str, truth: &Truth) -> Value {
        let grams = |mass: f64| format!("{:.1} g", shown(mass, 0.1));
        let drops = chance.whole(55, 65);
        let plum = f64::from(drops) * truth.plum * (1.0 + 0.02 * chance.normal());
        // 1/2 cup is 118.294 mL.
        let salt = 118.294 * truth.salt * (1.0 + 0.02 * chance.normal());
        let went_in = json!({
            "plum": { "measured": format!("{drops} drops"), "weighed": grams(plum) },
            "fine-salt": { "measured": "1/2 cup", "weighed": grams(salt) },
        });
        // By the mix as made.
        let made = self.record(day, &json!({ "A": { "went_in": went_in.clone() } }));
        let stage = &made["pots"][0]["stages"][0];
        let draw = &stage["draws"][0];
        let expected = value(&draw["pieces"][0]["expected"]);
        let hot = value(&stage["hot_density"]);
        let shots = chance.whole(11, 12);
        let rejects = chance.of(4 * shots, truth.rejects);
        let weights: Vec<String> = (0..3)
            .map(|_| grams(expected * truth.cavity * (1.0 + 0.01 * chance.normal())))
            .collect();
        let took = f64::from(shots - 1) * truth.shot * (1.0 + 0.04 * chance.normal()) / 60.0;
        let kept = truth.keeps * hot * (1.0 + 0.05 * chance.normal());
        // The book's oven takes 206 s for 487.4 g of its base, and the salt goes in hot, after it.
        let cold = value(&stage["held"]) - salt;
        let heat = 206.0 * cold / 487.4 * truth.heating * (1.0 + 0.05 * chance.normal());
        let pot = json!({
            "went_in": went_in,
            "molds": { "finger-5": {
                "shots": shots,
                "good": 4 * shots - rejects,
                "weights": weights,
                "took": format!("{:.0} min", took),
            } },
            "injector": grams(kept),
            "heats": [{ "time": format!("{heat:.0} s"), "from": "68 °F", "to": "335 °F" }],
            "reheats": 0,
        });
        self.record(day, &json!({ "A": pot }))
    }

    pub(crate) fn days(&self, chance: &mut Chance, count: u32, truth: &Truth) -> Vec<Value> {
        (0..count).map(|number| self.pour(chance, &date(number), truth)).collect()
    }
}

/// A day of 2027, two days apart.
pub(crate) fn date(number: u32) -> String {
    let day = 2 * number;
    format!("2027-{:02}-{:02}", 3 + day / 28, 1 + day % 28)
}

pub(crate) fn change<'a>(learned: &'a Value, what: &str) -> Option<&'a Value> {
    let changes = learned["changes"].as_array().expect("a list");
    changes.iter().find(|change| change["what"] == what)
}
