//! The reference of the fields of books, order lists and actuals, `core/schema/FIELDS.md`, made from the JSON Schemas.
//!
//! The description of a field ends with its default, if it is optional, and an example, unless its fields have them:
//! ``Default: 5 %. Example: `"3 %"`.``

use std::collections::BTreeMap;
use std::fmt::Write;

use pourwright::document::{BookDocument, OrdersDocument};
use pourwright::quantity::Unit;
use pourwright::record::ActualsDocument;
use pourwright::schema;
use serde_json::{Map, Value, json};

/// The documents: name of the schema, heading, what holds it.
const DOCUMENTS: [(&str, &str); 3] =
    [("book", "Book"), ("orders", "Order list"), ("actuals", "Actuals")];

const INTRODUCTION: &str = "\
# Fields of the documents

Every field of a [book](#book), an [order list](#order-list) and the [actuals](#actuals) of a day. What you omit takes
its default. Where the default is *not known*, an answer that needs the value says so.

Anywhere, `ext` is an object that your own program keeps for itself. Any other field that is not listed is refused by
name, and so is a key that occurs twice. All faults come together: those of the text (JSON that does not end), else all
of the form (fields, amounts), else all of the meaning (names that do not exist, sums that do not add up).

";

/// What a description says.
struct Described {
    meaning: String,
    default: Option<String>,
    example: Option<String>,
}

fn described(schema: &Value) -> Described {
    let text = schema["description"].as_str().unwrap_or_default();
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let (text, example) = match text.split_once(" Example: `") {
        Some((text, example)) => (text, example.strip_suffix("`.").map(str::to_owned)),
        None => (text.as_str(), None),
    };
    let (text, default) = match text.split_once(" Default: ") {
        Some((text, default)) => (text, default.strip_suffix('.').map(str::to_owned)),
        None => (text, None),
    };
    Described { meaning: text.to_owned(), default, example }
}

/// One document with its definitions.
struct Reference {
    definitions: Map<String, Value>,
    /// Objects in the order of their sections, each with the places where it occurs.
    sections: Vec<(String, Vec<String>)>,
    /// Words in the order in which fields ask for them.
    words: Vec<String>,
}

impl Reference {
    fn new() -> Self {
        Self { definitions: Map::new(), sections: Vec::new(), words: Vec::new() }
    }

    /// Adds the document of the schema `name`.
    fn add(&mut self, name: &str, title: &str) {
        let mut document = serde_json::to_value(schema::schema(name).unwrap()).unwrap();
        let definitions = document["$defs"].take();
        self.definitions.extend(definitions.as_object().unwrap().clone());
        self.definitions.insert(title.to_owned(), document);
        self.visit(title, "");
    }

    /// Adds the object `name` at `place`, and those in it.
    fn visit(&mut self, name: &str, place: &str) {
        let known = self.sections.iter_mut().find(|(section, _)| section == name);
        if let Some((_, places)) = known {
            places.push(place.to_owned());
        } else {
            self.sections.push((name.to_owned(), vec![place.to_owned()]));
        }
        for (field, schema) in self.fields(name) {
            let place = if place.is_empty() { field } else { format!("{place}.{field}") };
            self.visit_parts(&schema, &place);
        }
    }

    fn visit_parts(&mut self, schema: &Value, place: &str) {
        for part in alternatives(schema) {
            match self.form(part) {
                Form::Object(name) => self.visit(&name, place),
                Form::List(item) => self.visit_parts(&item, &format!("{place}[]")),
                Form::Named(item) => self.visit_parts(&item, &format!("{place}.NAME")),
                Form::Either(part) => self.visit_parts(&part, place),
                Form::Words(name) if !self.words.contains(&name) => self.words.push(name),
                _ => {}
            }
        }
    }

    /// The fields of the object `name`, those that are required first.
    fn fields(&self, name: &str) -> Vec<(String, Value)> {
        let schema = &self.definitions[name];
        let required: Vec<&str> =
            schema["required"].as_array().into_iter().flatten().filter_map(Value::as_str).collect();
        let mut fields: Vec<(String, Value)> = schema["properties"]
            .as_object()
            .unwrap()
            .iter()
            .filter(|(field, _)| *field != "ext")
            .map(|(field, schema)| (field.clone(), schema.clone()))
            .collect();
        let place = |field: &str| required.iter().position(|name| *name == field);
        fields.sort_by_key(|(field, _)| place(field).unwrap_or(required.len()));
        fields
    }

    fn is_required(&self, name: &str, field: &str) -> bool {
        self.definitions[name]["required"]
            .as_array()
            .is_some_and(|required| required.contains(&json!(field)))
    }

    /// What one alternative of a field is.
    fn form(&self, schema: &Value) -> Form {
        if let Some(quantity) = schema["x-quantity"].as_str() {
            return Form::Kind(quantity.to_owned());
        }
        if let Some(reference) = schema["$ref"].as_str() {
            let name = reference.rsplit('/').next().unwrap().to_owned();
            let definition = &self.definitions[&name];
            return if definition["properties"].is_object() {
                Form::Object(name)
            } else if name == "Format"
                || ["Amount", "Name", "Percent", "Price", "Cut"].contains(&&*name)
            {
                Form::Kind(match &*name {
                    "Percent" => "per cent".to_owned(),
                    "Format" => "text".to_owned(),
                    other => other.to_lowercase(),
                })
            } else if definition["oneOf"].is_array() || definition["enum"].is_array() {
                Form::Words(name)
            } else if definition["type"] == "integer" {
                Form::Kind("whole number".to_owned())
            } else {
                Form::Either(definition.clone())
            };
        }
        let kind = match &schema["type"] {
            Value::Array(kinds) => kinds.iter().find(|kind| *kind != "null").unwrap(),
            kind => kind,
        };
        match kind.as_str() {
            Some("array") if schema["prefixItems"].is_array() => {
                Form::Pair(Box::new(self.form(&schema["prefixItems"][0])))
            }
            Some("array") => Form::List(schema["items"].clone()),
            Some("object") => Form::Named(schema["additionalProperties"].clone()),
            Some("string") => Form::Kind("text".to_owned()),
            Some("integer") => Form::Kind("whole number".to_owned()),
            Some("number") => Form::Kind("number".to_owned()),
            Some("boolean") => Form::Kind("`true` or `false`".to_owned()),
            _ => panic!("{schema}"),
        }
    }

    /// The unit of a field, or what else is written there.
    fn unit(&self, schema: &Value) -> String {
        let mut texts: Vec<String> = Vec::new();
        for part in alternatives(schema) {
            let text = self.unit_of(&self.form(part));
            if !texts.contains(&text) {
                texts.push(text);
            }
        }
        texts.join(" or ")
    }

    fn unit_of(&self, form: &Form) -> String {
        match form {
            Form::Kind(kind) => kind.clone(),
            Form::Words(name) | Form::Object(name) => link(name),
            Form::Pair(of) => format!("pair of {}s", self.unit_of(of)),
            Form::List(item) => format!("list of {}", self.unit(item)),
            Form::Named(item) => format!("{} by name", self.unit(item)),
            Form::Either(schema) => self.unit(schema),
        }
    }

    /// The example of `field` of the object `name`: the stated one, else one made of the examples of what it holds.
    fn example(&self, name: &str, field: &str, schema: &Value) -> Value {
        if let Some(text) = described(schema).example {
            return serde_json::from_str(&text)
                .unwrap_or_else(|error| panic!("{name}: {field}: {text}: {error}"));
        }
        self.whole(schema).unwrap_or_else(|| panic!("{name}: {field} has no example"))
    }

    fn whole(&self, schema: &Value) -> Option<Value> {
        alternatives(schema).into_iter().find_map(|part| match self.form(part) {
            Form::Object(name) => Some(self.example_of(&name)),
            Form::List(item) => Some(json!([self.whole(&item)?])),
            Form::Named(item) => Some(json!({ "A": self.whole(&item)? })),
            Form::Either(schema) => self.whole(&schema),
            _ => None,
        })
    }

    /// An object with every field, as its examples write it.
    fn example_of(&self, name: &str) -> Value {
        self.fields(name)
            .into_iter()
            .map(|(field, schema)| {
                let example = self.example(name, &field, &schema);
                (field, example)
            })
            .collect::<Map<_, _>>()
            .into()
    }

    fn write(&self) -> String {
        let mut text = INTRODUCTION.to_owned();
        text.push_str(&kinds());
        for (name, places) in &self.sections {
            let level = if places[0].is_empty() { "##" } else { "###" };
            writeln!(text, "{level} {}\n", heading(name)).unwrap();
            let about = described(&self.definitions[name]).meaning;
            match places.as_slice() {
                [place] if place.is_empty() => writeln!(text, "{about}\n").unwrap(),
                places => writeln!(text, "{about} At `{}`.\n", places.join("`, `")).unwrap(),
            }
            text.push_str(
                "| field | meaning | unit | default | example |\n| --- | --- | --- | --- | --- |\n",
            );
            for (field, schema) in self.fields(name) {
                let Described { meaning, default, example } = described(&schema);
                let default = if self.is_required(name, &field) {
                    assert!(default.is_none(), "{name}: {field} is required and has a default");
                    "**required**".to_owned()
                } else {
                    default.unwrap_or_else(|| panic!("{name}: {field} has no default"))
                };
                assert!(meaning.ends_with('.'), "{name}: {field}: {meaning}");
                let unit = self.unit(&schema);
                let example = example.map(|example| format!("`{example}`")).unwrap_or_default();
                writeln!(text, "| `{field}` | {meaning} | {unit} | {default} | {example} |")
                    .unwrap();
            }
            text.push('\n');
        }
        text.push_str("## Words\n\nWords that a field takes, in double quotes.\n\n");
        for name in &self.words {
            let definition = &self.definitions[name];
            let about = definition["description"].as_str().unwrap();
            writeln!(text, "### {}\n\n{about}\n\n| word | meaning |\n| --- | --- |", heading(name))
                .unwrap();
            for (word, meaning) in words(name, definition) {
                writeln!(text, "| `{word}` | {meaning} |").unwrap();
            }
            text.push('\n');
        }
        text.truncate(text.trim_end().len());
        text.push('\n');
        text
    }
}

/// What stands at one place of a document.
enum Form {
    /// A kind of plain value.
    Kind(String),
    /// One of some words.
    Words(String),
    /// An object with fields.
    Object(String),
    /// A list of two.
    Pair(Box<Form>),
    List(Value),
    Named(Value),
    /// One of several.
    Either(Value),
}

/// The alternatives of a schema, null left out.
fn alternatives(schema: &Value) -> Vec<&Value> {
    match schema["anyOf"].as_array() {
        Some(parts) => {
            parts.iter().filter(|part| part["type"] != "null").flat_map(alternatives).collect()
        }
        None => vec![schema],
    }
}

/// The words of a definition, each with its meaning.
fn words(name: &str, definition: &Value) -> Vec<(String, String)> {
    if name == "System" {
        let measure = |system: &Value, unit: &str| {
            let request = json!({ "calculate": "convert", "amount": format!("1 {unit}"), "to": "mL", "measures": system });
            let answer = pourwright::request::answer_value(&request);
            let amount = answer["result"]["amount"].as_str().map(str::to_owned);
            amount.map(|amount| format!("1 {unit} = {amount}"))
        };
        let systems = definition["enum"].as_array().unwrap().iter();
        return systems
            .map(|system| {
                let measures = ["cup", "tbsp", "tsp", "fl oz"].map(|unit| measure(system, unit));
                let measures: Vec<String> = measures.into_iter().flatten().collect();
                (system.as_str().unwrap().to_owned(), measures.join(", ") + ".")
            })
            .collect();
    }
    let variants = definition["oneOf"].as_array().unwrap().iter();
    variants
        .map(|variant| {
            let (word, meaning) = (&variant["const"], &variant["description"]);
            (word.as_str().unwrap().to_owned(), meaning.as_str().unwrap().to_owned())
        })
        .collect()
}

/// `ToolUncertaintyEntry` as a heading: `Tool uncertainty`.
fn heading(name: &str) -> String {
    let name = name.strip_suffix("Entry").unwrap_or(name);
    let mut text = String::new();
    for letter in name.chars() {
        if letter.is_uppercase() && !text.is_empty() {
            text.push(' ');
            text.extend(letter.to_lowercase());
        } else {
            text.push(letter);
        }
    }
    text
}

/// A link to the section of `name`.
fn link(name: &str) -> String {
    let heading = heading(name).to_lowercase();
    format!("[{heading}](#{})", heading.replace(' ', "-"))
}

/// The kinds of values, and the units that measure them.
fn kinds() -> String {
    let mut units: BTreeMap<&str, Vec<String>> = BTreeMap::new();
    for unit in Unit::all() {
        let kind = unit.dimension().name().unwrap_or_default();
        units.entry(kind).or_default().push(unit.to_string());
    }
    let of = |kind: &str| {
        let units = units.get(kind).unwrap_or_else(|| panic!("no unit measures {kind}"));
        format!("`{}`", units.join("`, `"))
    };
    let mut text = String::from(
        "## Kinds of values\n\n\
         Amounts are written as you would say them, in double quotes: `\"1 1/4 cup\"`, `\"40 drops\"`, `\"12.5 g\"`, \
         `\"8 % of base\"`, `\"330 °F\"`.\nWhat can be read two ways (`\"6 oz\"`, `\"1,25 cup\"`, `\"8 %\"`) is refused \
         with both readings. A program may write\n`{ \"value\": 12.5, \"unit\": \"g\" }`. Units multiply and divide: \
         `g/mL`, `J/(g.K)`. UCUM codes are read too: `[cup_us]`.\n\n\
         A measured quantity may carry its standard uncertainty: `\"0.044 g ± 0.003\"`. A property of a material may\n\
         also say where it comes from: `{ \"value\": \"1.03 g/mL\", \"source\": \"supplier's sheet\" }`.\n\n\
         | kind | written |\n| --- | --- |\n",
    );
    for (kind, written) in [
        ("amount", "a mass, a volume, drops, or a per cent with what it is of: `% of base`, `% of finished`, `% of base by volume`".to_owned()),
        ("volume", of("a volume")),
        ("mass", of("a mass")),
        ("density", "a mass per volume: `g/mL`, `lb/gal`".to_owned()),
        ("length", of("a length")),
        ("time", of("a time")),
        ("temperature", of("a temperature")),
        ("pressure", of("a pressure")),
        ("temperature difference", "`K`".to_owned()),
        ("power", of("a power")),
        ("viscosity", "a pressure times a time: `Pa.s`, `mPa.s`".to_owned()),
        ("specific heat", "an energy per mass and temperature difference: `J/(g.K)`".to_owned()),
        ("thermal expansion", "per temperature difference: `1/K`".to_owned()),
        ("energy per mole", "`kJ/mol`, `kcal/mol`".to_owned()),
        ("ratio", "`g/kg`, `%`".to_owned()),
        ("per cent", "from `\"0 %\"` to `\"100 %\"`".to_owned()),
        ("price", "money per amount, time or number of pieces: `\"58.00 USD per 1 gal\"`, `\"16.00 USD per 1 h\"`".to_owned()),
        ("cut", "as the trade writes it: `\".035\"`, `\"1/64 hex\"`, `\"0.4 mm square\"`".to_owned()),
        ("name", "text of 1 to 80 characters on one line".to_owned()),
        ("text", "any text".to_owned()),
        ("whole number, number", "without quotes".to_owned()),
    ] {
        writeln!(text, "| {kind} | {written} |").unwrap();
    }
    text.push('\n');
    text
}

fn reference() -> Reference {
    let mut reference = Reference::new();
    for (name, title) in DOCUMENTS {
        reference.add(name, title);
    }
    reference
}

#[test]
fn the_reference_of_fields_is_fresh() {
    crate::fresh("core/schema/FIELDS.md", &reference().write());
}

/// A document made of all examples at once is read without a fault of its form.
#[test]
fn every_example_can_be_read() {
    let reference = reference();
    let text = |title: &str| reference.example_of(title).to_string();
    BookDocument::from_text(&text("Book")).unwrap_or_else(|faults| panic!("{faults}"));
    OrdersDocument::from_text(&text("Order list")).unwrap_or_else(|faults| panic!("{faults}"));
    let actuals = serde_json::from_str::<ActualsDocument>(&text("Actuals"));
    actuals.unwrap_or_else(|error| panic!("{error}"));
}

/// An example of the wrong kind would be noticed.
#[test]
fn a_wrong_example_is_not_read() {
    let mut book = reference().example_of("Book");
    book["bench"]["cups"][0]["holds"] = json!("2 g");
    let faults = BookDocument::from_text(&book.to_string()).unwrap_err();
    assert_eq!(faults.count(), 1, "{faults}");
}
