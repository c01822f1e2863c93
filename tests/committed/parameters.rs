//! The one text per parameter serves the requests.

use std::collections::BTreeSet;

use pourwright::parameter::PARAMETERS;
use pourwright::schema;

#[test]
fn parameters_are_sorted_and_whole() {
    for pair in PARAMETERS.windows(2) {
        assert!(pair[0].name < pair[1].name, "{} comes after {}", pair[0].name, pair[1].name);
    }
    for parameter in PARAMETERS {
        assert!(parameter.meaning.ends_with('.'), "{}", parameter.name);
        assert!(!parameter.unit.is_empty() && !parameter.range.is_empty(), "{}", parameter.name);
    }
}

/// Every field of a request is described by a text of the table.
#[test]
fn every_field_of_a_request_has_its_text() {
    let schema = serde_json::to_value(schema::schema("request").unwrap()).unwrap();
    let texts: BTreeSet<String> = PARAMETERS
        .iter()
        .map(|p| format!("{} Unit: {}; {}.", p.meaning, p.unit, p.range))
        .collect();
    let mut used = BTreeSet::new();
    for request in schema["oneOf"].as_array().unwrap() {
        for (field, description) in request["properties"].as_object().unwrap() {
            if field == "calculate" || field == "ext" {
                continue;
            }
            let text = description["description"].as_str().unwrap_or_default().to_owned();
            assert!(texts.contains(&text), "{}: {field}: {text:?}", request["description"]);
            used.insert(text);
        }
    }
    let unused: Vec<&String> = texts.difference(&used).collect();
    assert!(unused.is_empty(), "no request has {unused:?}");
}
