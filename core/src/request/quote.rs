//! Quote for an order list.

use super::{BudgetEntry, Open, request};
use crate::document::book::BookDocument;
use crate::document::orders::OrdersDocument;
use crate::fault::Faults;
use crate::plan::Quote;

request! {
    /// Asks for the quote of an order list.
    pub struct QuoteRequest {
        required {
            orders: OrdersDocument,
        }
        optional {
            book: BookDocument,
            budget: BudgetEntry,
        }
    }
}

impl QuoteRequest {
    /// Makes the quote.
    ///
    /// # Errors
    /// Those of [`PlanRequest::answer`](super::PlanRequest::answer).
    pub fn answer(self, open: Open<'_>) -> Result<Quote, Faults> {
        let book = open.book(self.book)?;
        let quote = book.quote_within(&self.orders, &BudgetEntry::or_default(self.budget.as_ref()));
        quote.map_err(|faults| faults.below("/orders"))
    }
}

#[cfg(test)]
mod tests {
    use alloc::string::ToString;

    use serde_json::{Value, json};

    use crate::request::answer_text;

    fn answered(calculate: &str, change: impl Fn(&mut Value)) -> Value {
        let part = |text: &str| serde_json::from_str::<Value>(text).unwrap();
        let mut request = json!({
            "calculate": calculate,
            "book": part(include_str!("../../examples/demo/book.json")),
            "orders": part(include_str!("../../examples/demo/orders.json")),
        });
        change(&mut request);
        serde_json::from_str(&answer_text(&request.to_string())).unwrap()
    }

    #[test]
    fn a_quote_is_of_the_plan_but_for_sink_rates() {
        let quote = answered("quote", |_| ());
        let mut plan = answered("plan", |_| ());
        for line in plan["result"]["lines"].as_array_mut().unwrap() {
            assert_ne!(line["sinks"], Value::Null);
            line["sinks"] = Value::Null;
        }
        let expected = json!({
            "calculate": "quote",
            "lines": plan["result"]["lines"],
            "parcels": plan["result"]["parcels"],
            "stock": plan["result"]["stock"],
            "cost": plan["result"]["cost"],
        });
        assert_eq!(quote["result"], expected);
    }

    #[test]
    fn it_is_refused_as_the_plan_is() {
        let changes: [fn(&mut Value); 4] = [
            |request| request["orders"]["lines"][0]["pieces"] = json!("many"),
            |request| request["orders"]["lines"][0]["product"] = json!("nothing"),
            |request| request["book"]["molds"] = json!(3),
            |request| request["budget"] = json!({ "pots": 1 }),
        ];
        for change in changes {
            let faults = answered("quote", change)["faults"].clone();
            assert_ne!(faults, Value::Null);
            assert_eq!(faults, answered("plan", change)["faults"]);
        }
    }

    #[test]
    fn work_is_limited_in_thousands_of_steps() {
        let budget = |packs: u32| {
            answered("quote", |request| {
                request["budget"] = json!({ "thousand_steps": 1 });
                request["orders"]["lines"] = json!([{ "order": "1", "product": "dusk finger", "packs": packs, "pack_of": 8 }]);
            })
        };
        assert_ne!(budget(1)["result"], Value::Null);
        let message = &budget(1000)["faults"][0]["message"];
        assert_eq!(message, "The plan takes more than the 1000 steps of work of its budget.");
    }
}
