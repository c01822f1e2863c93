//! A plan with what was really weighed and shot: the day's record, and what it changes in the book and on the shelf.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use serde_json::Value;

use super::change::{Change, of_formula, of_mold, writing};
use super::{Open, request};
use crate::document::book::BookDocument;
use crate::document::orders::ShelfEntry;
use crate::document::resolve::date::is_date;
use crate::document::written::Written;
use crate::document::{MadeFrom, PlanDocument};
use crate::fault::{Fault, Faults};
use crate::json::Named;
use crate::json::path::Path::{self, At};
use crate::json::read_back::{self, Parts, ReadBack};
use crate::json::reader::{Name, Node, Read};
use crate::plan::Plan;
use crate::quantity::{Amount, AmountError, Mass, MeasuredAmount, System, Unit, significant};
use crate::record::colors::for_the_book;
use crate::record::{ActualsDocument, Found, Jar, Record};
use crate::show::Shown;

request! {
    /// Asks for the record of a day.
    pub struct RecordRequest {
        required {
            actuals: ActualsDocument,
        }
        optional {
            book: BookDocument,
            plan: PlanDocument,
        }
    }
}

/// The record of a day, and the changes to accept.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(rename = "Record", deny_unknown_fields))]
pub struct RecordDocument {
    /// The record; its fields stand next to these.
    #[serde(flatten)]
    pub record: Record,
    /// Changes to the book, as a JSON Patch (RFC 6902): what weighed pieces show of molds, and colors to save. Empty if
    /// the day shows nothing new.
    pub write: Vec<Change>,
    /// The change to the next day's order list, as a JSON Patch (RFC 6902): its shelf is what stays of today's, and what
    /// is left of today's pots. Empty if there is nothing.
    pub shelf: Vec<Change>,
    /// The record as text, in lines of at most 80 columns.
    pub text: Vec<String>,
}

/// Digits of the parts of a jar: far below any scale.
const DIGITS: u8 = 6;

impl RecordRequest {
    /// Says what became of the plan.
    ///
    /// # Errors
    /// Faults of the book, else of the actuals, alone and against the plan.
    pub fn answer(self, open: Open<'_>) -> Result<RecordDocument, Faults> {
        let (book, plan) = (open.book(self.book)?, open.plan(self.plan)?);
        let record = book.record(&plan.plan, &self.actuals);
        let record = record.map_err(|faults| faults.below("/actuals"))?;
        let shelf = shelf(&plan, &record, book.ready().system);
        let shelf = shelf.map_err(|error| Faults::from(Fault::at("/plan", &error)))?;
        let text = record.sheet().to_string().lines().map(ToString::to_string).collect();
        Ok(RecordDocument { write: book_changes(&record), shelf, text, record })
    }
}

/// Changes of a record to the book.
fn book_changes(record: &Record) -> Vec<Change> {
    let mut changes = Vec::new();
    for found in &record.found {
        let (mold, shape) = (Name(found.mold.clone()), found.shape.clone().map(Name));
        if let Some(cavity) = &found.cavity {
            changes.extend(of_mold(Some(&mold), shape.as_ref(), "cavity", cavity));
        }
        if let Some(feed) = feed(found, &record.found) {
            changes.extend(of_mold(Some(&mold), None, "feed", &feed.text));
        }
    }
    for saved in &record.saved {
        changes.extend(of_formula(&saved.name, &saved.formula));
    }
    for (formula, color) in for_the_book(record) {
        let path = At("/formulas");
        // An entry of a book always is a JSON value: it has texts alone for keys.
        let color = serde_json::to_value(color).unwrap_or_default();
        changes.extend(writing(&path.key(&formula).key("color"), color));
    }
    changes
}

/// The feed share that the mold of `found` gets: it has one, the surest of those that its shapes show.
fn feed<'a>(found: &'a Found, all: &[Found]) -> Option<&'a Shown<crate::quantity::Ratio>> {
    let unsure = |one: &Found| Some(one.feed_uncertainty.as_ref()?.quantity.value);
    let own = unsure(found)?;
    let mut others = all.iter().filter(|one| one.mold == found.mold && one.shape != found.shape);
    let is_surest = others.all(|other| {
        unsure(other)
            .is_none_or(|unsure| own < unsure || (own == unsure && found.shape < other.shape))
    });
    found.feed.as_ref().filter(|_| is_surest)
}

/// The change to the next day's shelf. Of a plan that does not say what it was made from, jars that stay are not known;
/// then what is new is added to a shelf that is there.
fn shelf(plan: &PlanDocument, record: &Record, system: System) -> Result<Vec<Change>, AmountError> {
    let stays = |name: &str| {
        let shelf = plan.plan.shelf.iter().find(|shelf| shelf.name == name)?;
        Some((shelf.used.quantity, shelf.stays.quantity))
    };
    let new = record.jars.iter().map(|jar| entry(jar, &plan.plan, system));
    let new = new.collect::<Result<Vec<ShelfEntry>, AmountError>>()?;
    let before: &[ShelfEntry] = match &plan.made_from {
        Some(MadeFrom { orders, .. }) => orders.shelf.as_deref().unwrap_or_default(),
        None if plan.plan.shelf.is_empty() => &[],
        None => {
            let path = At("/shelf");
            let path = path.key("-");
            return Ok(new.iter().flat_map(|entry| writing(&path, value(entry))).collect());
        }
    };
    let mut all: Vec<Value> = Vec::new();
    for entry in before {
        match stays(&entry.name.0) {
            Some((used, left)) if used > Mass::default() => {
                if left > Mass::default() {
                    all.push(value(&ShelfEntry { mass: grams(left, system)?, ..entry.clone() }));
                }
            }
            _ => all.push(value(entry)),
        }
    }
    all.extend(new.iter().map(value));
    Ok(if all.is_empty() { Vec::new() } else { writing(&Path::At("/shelf"), all) })
}

/// An entry of a shelf always is a JSON value: it has texts alone for keys.
fn value(entry: &ShelfEntry) -> Value {
    serde_json::to_value(entry).unwrap_or_default()
}

/// A mass in grams.
fn grams(mass: Mass, system: System) -> Result<Written<Mass>, AmountError> {
    let amount = significant(mass, Unit::GRAM, DIGITS, system)?;
    Written::try_from(MeasuredAmount::from(amount))
}

/// A jar as an order list has it on its shelf.
fn entry(jar: &Jar, plan: &Plan, system: System) -> Result<ShelfEntry, AmountError> {
    let mut parts: Named<Amount> = Named::default();
    for part in &jar.parts {
        let amount = significant(part.mass.quantity, Unit::GRAM, DIGITS, system)?;
        parts.insert(part.material.clone(), amount);
    }
    Ok(ShelfEntry {
        name: Name(jar.name.clone()),
        mass: grams(jar.mass.quantity, system)?,
        formulas: None,
        overlap: None,
        parts: Some(parts),
        heats: jar.heats.filter(|heats| *heats > 0),
        spent: match &jar.spent {
            Some(spent) if spent.quantity.value > 0.0 => {
                let amount = significant(spent.quantity, Unit::MINUTE, DIGITS, system)?;
                Some(Written::try_from(MeasuredAmount::from(amount))?)
            }
            _ => None,
        },
        made: plan.day.as_ref().filter(|day| is_date(day)).map(ToString::to_string),
        ext: None,
    })
}

read_back::deserialize_by_reading_back! { RecordDocument; }

impl ReadBack for RecordDocument {
    fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
        let mut parts = Parts::open(node, faults);
        let (write, shelf) = (parts.take("write", faults), parts.take("shelf", faults));
        let text = parts.take("text", faults);
        let read = Self { record: Record::take_from(&mut parts, faults), write, shelf, text };
        parts.close(faults);
        read
    }
}

impl Read for RecordDocument {
    /// Reads a record that the library wrote. The `calculate` of an answer may still be in it.
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Object(fields)
                if fields.get("calculate").is_some_and(|name| name == "record") =>
            {
                read_back::whole(&node.tagged("calculate"), faults)
            }
            _ => read_back::whole(node, faults),
        }
    }
}

impl Read for Record {
    /// Reads a record, with the changes that an answer has next to it or without.
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Object(fields) if fields.contains_key("write") => {
                RecordDocument::read(node, faults).map(|read| read.record)
            }
            _ => read_back::whole(node, faults),
        }
    }
}

impl ReadBack for Change {
    fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
        let mut parts = Parts::open(node, faults);
        let (op, path) = (parts.take("op", faults), parts.take("path", faults));
        let read = Self { op, path, value: parts.take("value", faults) };
        parts.close(faults);
        read
    }
}

#[cfg(test)]
mod tests;
