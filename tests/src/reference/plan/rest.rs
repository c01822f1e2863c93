//! The rest of a plan: what is shown of the process, the steps, the clock, the parcels, the stock and the costs.

use serde_json::Value;

use super::super::amount;
use super::{Check, list};

impl<'a> Check<'a> {
    /// All that is not a pot's mixing or a line's piece.
    pub(super) fn rest(&mut self, orders: &Value) {
        let plan = self.plan;
        self.object(plan["format"] == "pourwright/1.0", || format!("format {}", plan["format"]));
        self.object(same_document(&plan["made_from"]["book"], self.shop.book), || {
            "made from another book".to_owned()
        });
        self.object(same_document(&plan["made_from"]["orders"], orders), || {
            "made from other orders".to_owned()
        });
        for (key, part) in plan.as_object().into_iter().flatten() {
            let is_none = ["clock", "cost", "water"].contains(&key.as_str()) && part.is_number();
            self.object(!is_none, || format!("/{key}: {part}"));
            if key != "made_from" {
                self.every_quantity(&format!("/{key}"), part);
            }
        }
        for pot in list(&plan["pots"]) {
            self.process(pot, orders);
        }
        self.sinking(orders);
        self.water();
        self.steps();
        self.day_clock();
        self.parcels(orders);
        self.stock(orders);
        self.costs(orders);
        self.proof();
        self.notes();
    }
}

/// The entry with a number counted from 1.
pub(super) fn nth<'v>(entries: &'v Value, number: &Value) -> Option<&'v Value> {
    list(entries).get((number.as_u64()? as usize).checked_sub(1)?)
}

pub(super) fn is_word(text: &str) -> bool {
    !text.is_empty() && text.chars().all(|c| c.is_ascii_lowercase() || c == '-')
}

pub(super) fn is_code(code: &Value) -> bool {
    code.as_str().is_some_and(is_word)
}

pub(super) fn ends_in_word(id: &str) -> bool {
    id.chars().last().is_some_and(|last| last.is_alphanumeric() || last == ')')
}

/// Two documents that state the same: a number in a text may be written otherwise.
pub(super) fn same_document(a: &Value, b: &Value) -> bool {
    let is_amount = |value: &Value| value["value"].is_number() && value["unit"].is_string();
    match (a, b) {
        (Value::String(_), other) | (other, Value::String(_)) if is_amount(other) => {
            let (a, b) = (amount::text(a), amount::text(b));
            amount::number(&a).is_some_and(|number| Some(number) == amount::number(&b))
        }
        (Value::Array(a), Value::Array(b)) => {
            a.len() == b.len() && a.iter().zip(b).all(|(a, b)| same_document(a, b))
        }
        (Value::Object(a), Value::Object(b)) => {
            let stated = |of: &serde_json::Map<String, Value>| {
                of.iter().filter(|(_, field)| !field.is_null()).count()
            };
            stated(a) == stated(b)
                && a.iter().all(|(key, field)| {
                    field.is_null() || b.get(key).is_some_and(|other| same_document(field, other))
                })
        }
        (Value::String(a), Value::String(b)) if a != b => {
            amount::number(a).is_some_and(|number| Some(number) == amount::number(b))
        }
        (Value::Number(a), Value::Number(b)) => a.as_f64() == b.as_f64(),
        _ => a == b,
    }
}
