//! Days in progress, as a person would say them.

use std::collections::{BTreeMap, BTreeSet};

use pourwright::document::{LoadedBook, OpenPlan};
use serde_json::{Map, Value, json};

/// A plan that is open, and the same as JSON.
pub(crate) struct Morning {
    pub(crate) open: OpenPlan,
    pub(crate) plan: Value,
}

impl Morning {
    pub(crate) fn of(book: &str, orders: &str) -> Result<Self, pourwright::Faults> {
        let open = LoadedBook::from_text(book)?.open_plan_text(orders)?;
        let plan = serde_json::to_value(open.document()).expect("a plan as JSON");
        Ok(Self { open, plan })
    }

    pub(crate) fn demo() -> Self {
        let book = pourwright_tests::demo::json(include_str!("../../core/examples/demo/book.json"));
        let orders = include_str!("../../core/examples/demo/orders.json");
        Self::of(&book.to_string(), orders).expect("the demo day")
    }

    /// The plan of an answer, opened as it was stored.
    pub(crate) fn reopened(answer: &Value) -> Self {
        let open = OpenPlan::from_text(&answer["plan"].to_string()).expect("a stored plan");
        Self { open, plan: answer["plan"].clone() }
    }

    pub(crate) fn steps(&self) -> &[Value] {
        self.plan["steps"].as_array().map_or(&[], Vec::as_slice)
    }

    /// What is done of each pot after so many steps of the day.
    pub(crate) fn done(&self, steps: usize) -> Map<String, Value> {
        let mut done: BTreeMap<String, u64> = BTreeMap::new();
        for step in self.steps().iter().take(steps) {
            for at in step["at"].as_array().expect("places") {
                let number = at["number"].as_u64().expect("a number");
                done.insert(at["pot"].as_str().expect("a letter").to_owned(), number);
            }
        }
        done.into_iter().map(|(pot, number)| (pot, json!({ "done": number }))).collect()
    }

    /// The answer of the day going on, with these fields.
    pub(crate) fn go_on(&self, mut request: Value) -> Result<Value, Value> {
        request["calculate"] = "go-on".into();
        let answer = self.open.answer_text(&request.to_string());
        let mut answer: Value = serde_json::from_str(&answer).expect("JSON");
        match answer["faults"].take() {
            Value::Null => Ok(answer["result"].take()),
            faults => Err(faults),
        }
    }
}

/// The items of steps, each with how much it is.
pub(crate) fn items<'v>(steps: impl IntoIterator<Item = &'v Value>) -> Vec<(String, String)> {
    let items = steps.into_iter().flat_map(|step| step["items"].as_array().into_iter().flatten());
    let text = |item: &Value, key: &str| item[key].as_str().unwrap_or_default().to_owned();
    items.map(|item| (text(item, "id"), text(item, "amount"))).collect()
}

/// Items that are not heats: a pot is read again when the day goes on, whatever its clock said before.
pub(crate) fn but_heats(steps: &[Value]) -> BTreeSet<(String, String)> {
    let steps = steps.iter().filter(|step| step["kind"] != "heat");
    items(steps).into_iter().collect()
}

/// What goes into pots and comes out of them, by pot and formulas: materials with their measures, shots by mold.
pub(crate) fn work(steps: &[Value], plan: &Value) -> BTreeMap<String, u64> {
    let mut work = BTreeMap::new();
    for step in steps {
        for at in step["at"].as_array().into_iter().flatten() {
            let stage = stage_at(at, plan);
            let place = format!("{} {}", at["pot"], stage["formulas"]);
            for item in step["items"].as_array().into_iter().flatten() {
                if item["weigh"].is_u64() {
                    *work.entry(format!("{place} {}", item["text"])).or_default() += 1;
                } else if let Some(shots) = item["shots"].as_u64() {
                    let draw = &stage["draws"][at["draw"].as_u64().expect("a draw") as usize - 1];
                    *work.entry(format!("{place} {}", draw["mold"])).or_default() += shots;
                }
            }
        }
    }
    work
}

/// Of each material that goes into a pot, named as by [`work`], the same by its other measures.
pub(crate) fn otherwise(steps: &[Value], plan: &Value) -> BTreeMap<String, Vec<String>> {
    let mut otherwise = BTreeMap::new();
    for step in steps {
        for at in step["at"].as_array().into_iter().flatten() {
            let stage = stage_at(at, plan);
            let place = format!("{} {}", at["pot"], stage["formulas"]);
            for item in step["items"].as_array().into_iter().flatten() {
                let Some(number) = item["weigh"].as_u64() else { continue };
                let material = item["material"].as_str().expect("a material");
                let others = stage["weigh"][number as usize - 1]["others"].as_array();
                let measures = others.expect("others").iter().map(|other| &other["measure"]);
                let text = |measure: &Value| {
                    let measure = measure.as_str().expect("a measure");
                    format!("{place} {}", json!(format!("{material}: {measure}")))
                };
                otherwise.insert(format!("{place} {}", item["text"]), measures.map(text).collect());
            }
        }
    }
    otherwise
}

fn stage_at<'v>(at: &Value, plan: &'v Value) -> &'v Value {
    let pots = plan["pots"].as_array().expect("pots");
    let pot = pots.iter().find(|pot| pot["pot"] == at["pot"]).expect("its pot");
    &pot["stages"][at["stage"].as_u64().expect("a stage") as usize - 1]
}

/// The draws that steps shoot, one for each time.
pub(crate) fn draws_of<'v>(steps: &'v [Value], plan: &'v Value) -> Vec<&'v Value> {
    let mut draws = Vec::new();
    for step in steps.iter().filter(|step| step["kind"] == "shoot") {
        for at in step["at"].as_array().into_iter().flatten() {
            let stage = stage_at(at, plan);
            draws.push(&stage["draws"][at["draw"].as_u64().expect("a draw") as usize - 1]);
        }
    }
    draws
}
