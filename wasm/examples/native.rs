//! The native answers for the tests of the package, one line of JSON each: to a request, or to a call of the table,
//! `{"evaluate": "pieceMass", "given": {"cavityVolumeMl": 9.5, ...}}`. To `"table"` it answers with the table itself.

#![allow(clippy::print_stdout)] // prints the answers

use std::io::{self, BufRead};

use pourwright::parameter::{Parameter, PlainUnit};
use pourwright::table::{self, Argument, CALCULATIONS, Calculation, ValueKind};
use serde_json::{Map, Value, json};

#[path = "../src/name.rs"]
mod name;

fn main() -> io::Result<()> {
    for line in io::stdin().lock().lines() {
        let line = line?;
        let asked: Option<Value> = serde_json::from_str(&line).ok();
        match asked.as_ref().and_then(answer) {
            Some(answer) => println!("{answer}"),
            None => println!("{}", pourwright::request::answer_text(&line)),
        }
    }
    Ok(())
}

/// The answer of the table.
fn answer(asked: &Value) -> Option<Value> {
    if asked == "table" {
        return Some(
            CALCULATIONS.iter().map(|calculation| calculation_as_json(calculation)).collect(),
        );
    }
    let wanted = asked.get("evaluate")?;
    let mut all = CALCULATIONS.iter();
    let calculation = all.find(|calculation| *wanted == function(calculation))?;
    Some(evaluate(calculation, asked.get("given")?))
}

fn evaluate(calculation: &Calculation, given: &Value) -> Value {
    let given = |field| given.get(name::of(field));
    let lists = calculation.parameters.iter().map(|field| numbers(given(field)));
    let lists: Vec<Vec<f64>> = lists.collect();
    let arguments =
        calculation.parameters.iter().zip(&lists).map(|(field, list)| match given(field) {
            Some(Value::Number(number)) => Argument::Number(number.as_f64().unwrap_or(f64::NAN)),
            Some(Value::String(text)) => Argument::Text(text),
            Some(Value::Array(_)) => Argument::Numbers(list),
            _ => Argument::Omitted,
        });
    let arguments: Vec<Argument<'_>> = arguments.collect();
    let mut values = Vec::new();
    match calculation.evaluate(&arguments, &mut values) {
        Ok(()) => json!({ "result": results(calculation, &values) }),
        Err(refusal) => json!({ "faults": name::faults(calculation, &refusal) }),
    }
}

/// The numbers of a list, or of a list of rows.
fn numbers(list: Option<&Value>) -> Vec<f64> {
    match list {
        Some(Value::Array(items)) => items.iter().flat_map(|item| numbers(Some(item))).collect(),
        Some(number) => number.as_f64().into_iter().collect(),
        None => Vec::new(),
    }
}

fn results(calculation: &Calculation, values: &[table::Value]) -> Map<String, Value> {
    let named = calculation.results.iter().zip(values).map(|(result, value)| {
        let value = match value {
            table::Value::Number(number) => json!(number),
            table::Value::Word(word) => json!(word),
            table::Value::Numbers(numbers) => json!(numbers),
            _ => Value::Null,
        };
        (result.unit.camel_name(result.name), value)
    });
    named.collect()
}

fn function(calculation: &Calculation) -> String {
    PlainUnit::None.camel_name(calculation.name)
}

fn calculation_as_json(calculation: &Calculation) -> Value {
    let example = calculation.example();
    let parameters = calculation.parameters.iter().map(|field| {
        json!({
            "name": name::of(field),
            "kind": kind(field.kind),
            "optional": field.optional,
            "range": range(field.parameter),
            "words": field.parameter.words(),
            "columns": field.parameter.columns().iter().map(|column| range(*column)).collect::<Vec<_>>(),
        })
    });
    let given = calculation.parameters.iter().zip(&example.arguments);
    let given = given.filter_map(|(field, argument)| {
        let value = match (argument, field.kind) {
            (Argument::Number(number), _) => json!(number),
            (Argument::Text(text), _) => json!(text),
            (Argument::Numbers(numbers), ValueKind::Rows(columns)) => {
                numbers.chunks(columns).collect()
            }
            (Argument::Numbers(numbers), _) => json!(numbers),
            _ => return None,
        };
        Some((name::of(field), value))
    });
    json!({
        "name": function(calculation),
        "parameters": parameters.collect::<Vec<_>>(),
        "example": {
            "given": given.collect::<Map<_, _>>(),
            "results": results(calculation, &example.results),
        },
    })
}

fn kind(kind: ValueKind) -> &'static str {
    match kind {
        ValueKind::Number => "number",
        ValueKind::Count => "count",
        ValueKind::Text => "text",
        ValueKind::Word { .. } => "word",
        ValueKind::List => "list",
        _ => "rows",
    }
}

fn range(parameter: Parameter) -> Value {
    match parameter.range() {
        Some(range) => json!({
            "least": range.least,
            "most": range.most,
            "above": range.above,
            "below": range.below,
            "whole": parameter.unit() == PlainUnit::Count,
        }),
        None => Value::Null,
    }
}
