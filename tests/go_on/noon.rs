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

/// An item of a step at one pot.
#[derive(Clone, Copy)]
struct PotItem<'v> {
    at: &'v Value,
    stage: &'v Value,
    item: &'v Value,
}

impl<'v> PotItem<'v> {
    /// The pot and the formulas that it is at.
    fn place(self) -> String {
        format!("{} {}", self.at["pot"], self.stage["formulas"])
    }

    /// The draw that it shoots.
    fn draw(self) -> &'v Value {
        &self.stage["draws"][self.at["draw"].as_u64().expect("a draw") as usize - 1]
    }
}

/// The items of steps, at each pot that these are at.
fn items_of_pots<'v>(
    steps: &'v [Value],
    plan: &'v Value,
) -> impl Iterator<Item = PotItem<'v>> + use<'v> {
    let list = |value: &'v Value| value.as_array().into_iter().flatten();
    steps.iter().flat_map(move |step| {
        list(&step["at"]).flat_map(move |at| {
            let pots = plan["pots"].as_array().expect("pots");
            let pot = pots.iter().find(|pot| pot["pot"] == at["pot"]).expect("its pot");
            let stage = &pot["stages"][at["stage"].as_u64().expect("a stage") as usize - 1];
            list(&step["items"]).map(move |item| PotItem { at, stage, item })
        })
    })
}

/// What goes into pots and comes out of them, by pot and formulas: materials with their measures, shots by mold.
pub(crate) fn work(steps: &[Value], plan: &Value) -> BTreeMap<String, u64> {
    let mut work = BTreeMap::new();
    for one in items_of_pots(steps, plan) {
        if one.item["weigh"].is_u64() {
            *work.entry(format!("{} {}", one.place(), one.item["text"])).or_default() += 1;
        } else if let Some(shots) = one.item["shots"].as_u64() {
            *work.entry(format!("{} {}", one.place(), one.draw()["mold"])).or_default() += shots;
        }
    }
    work
}

/// Of each material that goes into a pot, named as by [`work`], the same by its other measures.
pub(crate) fn otherwise(steps: &[Value], plan: &Value) -> BTreeMap<String, Vec<String>> {
    let weighed = items_of_pots(steps, plan).filter_map(|one| {
        let PotItem { stage, item, .. } = one;
        let (place, number) = (one.place(), item["weigh"].as_u64()?);
        let material = item["material"].as_str().expect("a material");
        let others = stage["weigh"][number as usize - 1]["others"].as_array();
        let text = |other: &Value| {
            let measure = other["measure"].as_str().expect("a measure");
            format!("{place} {}", json!(format!("{material}: {measure}")))
        };
        let others = others.expect("others").iter().map(text).collect();
        Some((format!("{place} {}", item["text"]), others))
    });
    weighed.collect()
}

/// Shots of steps, by line and layer.
pub(crate) fn shots_of(steps: &[Value], plan: &Value) -> BTreeMap<(u64, u64), u64> {
    let mut all = BTreeMap::new();
    for one in items_of_pots(steps, plan) {
        let Some(shots) = one.item["shots"].as_u64() else { continue };
        let number = |key: &str| one.draw()[key].as_u64().expect("a number");
        *all.entry((number("line"), number("layer"))).or_default() += shots;
    }
    all
}
