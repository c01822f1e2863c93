//! Changes of JSON values that keep them JSON.

use serde_json::{Value, json};

use super::chance::Chance;

/// Texts and numbers that are easily misread, or that no shop has.
const ODD: [&str; 30] = [
    r#"null"#,
    r#"true"#,
    r#"0"#,
    r#"-0.0"#,
    r#"-1"#,
    r#"1e300"#,
    r#"4294967296"#,
    r#"[]"#,
    r#"{}"#,
    r#""""#,
    r#""0 g""#,
    r#""-1 g""#,
    r#""6 oz""#,
    r#""1,25 cup""#,
    r#""1e300 cup""#,
    r#""1/4 tsp""#,
    r#""1/0 cup""#,
    r#""8 %""#,
    r#""100 % of finished""#,
    r#""40 drops ± 3""#,
    r#""350 °C""#,
    r#""-459.67 °F""#,
    r#""1.03 g/mL""#,
    r#""2027-02-30""#,
    r#""0.0000001 mL""#,
    r#""10000 kg""#,
    r#""a\u202eb""#,
    r#""a\u0000""#,
    r#""melt-again""#,
    r#"{"value":"1 g","sure":true}"#,
];

/// Changes something in `value`, now and then for what stands at the same place in `donor`.
pub fn change(value: &mut Value, donor: &Value, chance: &mut Chance<'_>) {
    match value {
        Value::Object(fields) if !fields.is_empty() => {
            let names: Vec<String> = fields.keys().cloned().collect();
            let name = chance.one_of(&names).clone();
            match chance.below(12) {
                0 => drop(fields.remove(&name)),
                1 => {
                    let other = chance.one_of(&names).clone();
                    let taken = fields[&other].clone();
                    fields.insert(name, taken);
                }
                2 => {
                    let renamed = fields[&name].clone();
                    fields.insert(format!("{name}2"), renamed);
                }
                3 => {
                    if let Some((name, field)) = any_field(donor, chance) {
                        fields.insert(name, field);
                    }
                }
                _ => change(&mut fields[&name], &donor[&name], chance),
            }
        }
        Value::Array(items) if !items.is_empty() => {
            let at = chance.below(items.len());
            match chance.below(10) {
                0 => drop(items.remove(at)),
                1 => items.insert(at, items[at].clone()),
                2 => {
                    let other = chance.below(items.len());
                    items.swap(at, other);
                }
                3 => items.extend(donor.as_array().and_then(|all| all.get(at)).cloned()),
                _ => change(&mut items[at], &donor[at], chance),
            }
        }
        leaf => change_leaf(leaf, donor, chance),
    }
}

fn any_field(donor: &Value, chance: &mut Chance<'_>) -> Option<(String, Value)> {
    let fields = donor.as_object().filter(|fields| !fields.is_empty())?;
    let at = chance.below(fields.len());
    fields.iter().nth(at).map(|(name, field)| (name.clone(), field.clone()))
}

fn change_leaf(leaf: &mut Value, donor: &Value, chance: &mut Chance<'_>) {
    match (chance.below(8), &mut *leaf) {
        (0..=2, Value::String(text)) => {
            let mut bytes = std::mem::take(text).into_bytes();
            chance.change_text(&mut bytes);
            *text = String::from_utf8_lossy(&bytes).into_owned();
        }
        (3 | 4, _) => scale(leaf, chance),
        (5, _) if !donor.is_null() => *leaf = donor.clone(),
        (6, _) => *leaf = json!([leaf.take()]),
        _ => *leaf = serde_json::from_str(chance.one_of::<&str>(&ODD)).unwrap(),
    }
}

/// Changes the number of an amount or a count, which stays a number of the same form: `12.5 g` becomes `1.25 g`.
pub fn scale(leaf: &mut Value, chance: &mut Chance<'_>) {
    let factor = *chance.one_of(&[0.0, 0.01, 0.1, 0.5, 0.9, 1.1, 2.0, 3.0, 10.0, 100.0]);
    match leaf {
        Value::Number(number) => {
            if let Some(whole) = number.as_u64() {
                *leaf = ((whole as f64 * factor).ceil() as u64).into();
            }
        }
        Value::String(text) => {
            let end = text.find(|c: char| c != '.' && !c.is_ascii_digit()).unwrap_or(0);
            let (number, unit) = text.split_at(end);
            if let Ok(number) = number.parse::<f64>()
                && !unit.starts_with(['/', '-'])
                && !unit.trim_start().starts_with(|c: char| c.is_ascii_digit())
            {
                // As fine as a bench scale shows.
                let scaled = format!("{:.4}", number * factor);
                let scaled = scaled.trim_end_matches('0').trim_end_matches('.');
                *text = format!("{scaled}{unit}");
            }
        }
        _ => {}
    }
}

/// Puts something of `donor` at the same place in `value`, which keeps its form: both are documents of one kind.
pub fn cross(value: &mut Value, donor: &Value, chance: &mut Chance<'_>) {
    match (&mut *value, donor) {
        (Value::Object(fields), Value::Object(others))
            if !fields.is_empty() || !others.is_empty() =>
        {
            let names: Vec<String> = fields.keys().chain(others.keys()).cloned().collect();
            let name = chance.one_of(&names).clone();
            match (fields.get_mut(&name), others.get(&name)) {
                (Some(field), Some(other)) if chance.happens(8) => cross(field, other, chance),
                (_, Some(other)) => drop(fields.insert(name, other.clone())),
                (_, None) => drop(fields.remove(&name)),
            }
        }
        (Value::Array(items), Value::Array(others)) if !items.is_empty() && !others.is_empty() => {
            let (at, from) = (chance.below(items.len()), chance.below(others.len()));
            match chance.below(6) {
                0 if items.len() > 1 => drop(items.remove(at)),
                1 => items.push(others[from].clone()),
                _ => cross(&mut items[at], &others[from], chance),
            }
        }
        _ if chance.happens(4) => scale(value, chance),
        _ => *value = donor.clone(),
    }
}
