//! Documents made from their JSON Schemas and broken one place at a time: what the schema takes, the reader takes, and what it
//! refuses, the reader refuses. What an amount or a name says is not the schema's affair.

use jsonschema::Validator;
use pourwright::document::{BookDocument, OrdersDocument};
use pourwright::record::ActualsDocument;
use pourwright::schema;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value, json};

/// Codes of what a schema can see.
const STRUCTURE: &[&str] = &["unknown-field", "missing-field", "wrong-type", "unknown-word"];

/// Numbers without an order, the same ones each time (splitmix64).
#[derive(Default)]
struct Dice(u64);

impl Dice {
    fn below(&mut self, sides: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) % sides as u64) as usize
    }
}

/// Walks a schema.
#[derive(Default)]
struct Maker {
    root: Value,
    dice: Dice,
    /// The quantity of the amount that is made, and the definition that a text is of.
    quantity: String,
    of: String,
}

/// A number and a unit of `quantity`, or of any where an amount may be of any.
fn amount(quantity: &str) -> (f64, &'static str) {
    match quantity {
        "density" => (1.03, "g/mL"),
        "energy per mole" => (135.0, "kJ/mol"),
        "length" => (9.5, "mm"),
        "mass" | "" => (12.5, "g"),
        "power" => (900.0, "W"),
        "pressure" => (90.0, "kPa"),
        "ratio" => (35.0, "g/kg"),
        "specific heat" => (1.9, "J/(g.K)"),
        "temperature difference" => (2.0, "K"),
        "temperature" => (165.0, "°C"),
        "thermal expansion" => (6.5e-4, "1/K"),
        "time" => (90.0, "s"),
        "viscosity" => (0.5, "Pa.s"),
        "volume" => (40.0, "mL"),
        _ => panic!("a quantity that is not known: {quantity}"),
    }
}

impl Maker {
    /// A document that `schema` takes; an amount is one of the quantity that was named last.
    fn make(&mut self, schema: &Value, depth: usize) -> Value {
        if let Some(quantity) = schema["x-quantity"].as_str() {
            quantity.clone_into(&mut self.quantity);
        }
        if let Some(to) = schema["$ref"].as_str() {
            to.rsplit('/').next().unwrap().clone_into(&mut self.of);
            if self.of == "Amount" {
                self.quantity.clear();
            }
            let to = self.root.pointer(to.strip_prefix('#').unwrap()).unwrap().clone();
            return self.make(&to, depth);
        }
        if let Some(only) = schema.get("const") {
            return only.clone();
        }
        for key in ["enum", "anyOf", "oneOf"] {
            if let Some(forms) = schema[key].as_array() {
                let form = forms[self.dice.below(forms.len())].clone();
                return if key == "enum" { form } else { self.make(&form, depth) };
            }
        }
        let kind = match &schema["type"] {
            Value::Array(kinds) => kinds[self.dice.below(kinds.len())].as_str(),
            kind => kind.as_str(),
        };
        match kind.unwrap_or_else(|| panic!("a kind of schema that is not known: {schema}")) {
            "object" => self.object(schema, depth),
            "array" => self.array(schema, depth),
            "string" if schema["pattern"].is_string() => json!("8 %"),
            "string" => json!(self.text()),
            "boolean" => json!(self.dice.below(2) == 0),
            "integer" => json!(schema["minimum"].as_u64().unwrap_or(0).max(1)),
            "number" => json!(1.5),
            "null" => Value::Null,
            kind => panic!("a type that is not known: {kind}"),
        }
    }

    fn text(&self) -> String {
        match self.of.as_str() {
            "Amount" | "MeasuredAmount" => {
                let (number, unit) = amount(&self.quantity);
                format!("{number} {unit}")
            }
            "Price" => "58.00 USD per 1 gal".to_owned(),
            "Cut" => ".035 hex".to_owned(),
            // Any text; this one is a largest dose, too.
            _ => "3 tsp per 1 cup".to_owned(),
        }
    }

    fn object(&mut self, schema: &Value, depth: usize) -> Value {
        if schema["properties"]["unit"].is_object() {
            let (number, unit) = amount(&self.quantity);
            return json!({ "value": number, "unit": unit });
        }
        let mut made = Map::new();
        let required = schema["required"].as_array().cloned().unwrap_or_default();
        for (name, field) in schema["properties"].as_object().into_iter().flatten() {
            let is_required = required.iter().any(|required| required == name);
            if is_required || depth < 8 && self.dice.below(3) == 0 {
                made.insert(name.clone(), self.make(field, depth + 1));
            }
        }
        if schema["additionalProperties"].is_object() {
            let each = schema["additionalProperties"].clone();
            for index in 0..self.dice.below(3) {
                made.insert(format!("name-{index}"), self.make(&each, depth + 1));
            }
        }
        Value::Object(made)
    }

    fn array(&mut self, schema: &Value, depth: usize) -> Value {
        let fixed = schema["prefixItems"].as_array().cloned().unwrap_or_default();
        if !fixed.is_empty() {
            return fixed.iter().map(|item| self.make(item, depth + 1)).collect();
        }
        let least = schema["minItems"].as_u64().unwrap_or(0).max(1) as usize;
        let most = schema["maxItems"].as_u64().map_or(least + 1, |most| most as usize);
        let count = least + self.dice.below(most - least + 1);
        (0..count).map(|_| self.make(&schema["items"], depth + 1)).collect()
    }

    /// `document` with one place broken, or at least another.
    fn broken(&mut self, mut document: Value) -> Value {
        let mut places = Vec::new();
        pointers(&document, String::new(), &mut places);
        let place = places[self.dice.below(places.len())].clone();
        let found = document.pointer_mut(&place).unwrap();
        if let (Value::Object(fields), true) = (&mut *found, self.dice.below(2) == 0) {
            let names: Vec<String> = fields.keys().cloned().collect();
            if names.is_empty() || self.dice.below(4) == 0 {
                fields.insert("no-such-field".to_owned(), json!(1));
            } else {
                fields.remove(&names[self.dice.below(names.len())]);
            }
            return document;
        }
        let others =
            [json!(null), json!(true), json!(7), json!(-0.5), json!("x"), json!([]), json!({})];
        *found = others[self.dice.below(others.len())].clone();
        document
    }
}

/// Pointers to all in `value` but what a program keeps for itself.
fn pointers(value: &Value, at: String, all: &mut Vec<String>) {
    match value {
        Value::Object(fields) => {
            for (name, field) in fields.iter().filter(|(name, _)| *name != "ext") {
                pointers(
                    field,
                    format!("{at}/{}", name.replace('~', "~0").replace('/', "~1")),
                    all,
                );
            }
        }
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                pointers(item, format!("{at}/{index}"), all);
            }
        }
        _ => {}
    }
    all.push(at);
}

/// All that the reader of `T` says of `document`.
fn refused<T: DeserializeOwned>(document: &Value) -> Option<String> {
    Some(serde_json::from_value::<T>(document.clone()).err()?.to_string())
}

fn agree<T: DeserializeOwned>(name: &str) {
    let root = serde_json::to_value(schema::schema(name).unwrap()).unwrap();
    let validator: Validator = jsonschema::validator_for(&root).unwrap();
    let (mut taken, mut not_taken) = (0, 0);
    for seed in 0..1500 {
        let mut maker = Maker { root: root.clone(), dice: Dice(seed), ..Maker::default() };
        let document = maker.make(&root, 0);
        let why = validator.validate(&document).err().map(|error| error.to_string());
        assert_eq!(why, None, "{name}, seed {seed}: {document}");
        let said = refused::<T>(&document);
        assert_eq!(said, None, "{name}, seed {seed}: {document}");
        for _ in 0..4 {
            let broken = maker.broken(document.clone());
            let schema = validator.validate(&broken).err();
            let schema = schema.map(|error| format!("{} at {}", error, error.instance_path));
            let reader = refused::<T>(&broken);
            let of_structure = reader.as_ref().is_some_and(|said| {
                STRUCTURE.iter().any(|code| said.contains(&format!("[{code}]")))
            });
            let agreed = if schema.is_some() { reader.is_some() } else { !of_structure };
            assert!(
                agreed,
                "{name}, seed {seed}\nschema: {schema:?}\nreader: {reader:?}\n{broken}"
            );
            *if schema.is_some() { &mut not_taken } else { &mut taken } += 1;
        }
    }
    assert!(taken > 100 && not_taken > 1000, "{name}: {taken} taken, {not_taken} not");
}

#[test]
fn a_book_is_read_as_its_schema_says() {
    agree::<BookDocument>("book");
}

#[test]
fn an_order_list_is_read_as_its_schema_says() {
    agree::<OrdersDocument>("orders");
}

#[test]
fn actuals_are_read_as_their_schema_says() {
    agree::<ActualsDocument>("actuals");
}
