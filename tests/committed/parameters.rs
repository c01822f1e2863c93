//! The one text per parameter serves requests and calculations.

use std::collections::BTreeSet;

use pourwright::parameter::Parameter;
use pourwright::schema;
use pourwright::table::CALCULATIONS;

#[test]
fn parameters_are_sorted_and_whole() {
    for pair in Parameter::ALL.windows(2) {
        assert!(pair[0].name() < pair[1].name(), "{} comes after {}", pair[0], pair[1]);
    }
    for parameter in Parameter::ALL {
        assert!(parameter.meaning().ends_with('.'), "{parameter}");
        assert!(!parameter.range_text().is_empty(), "{parameter}");
    }
}

/// Fields of requests that have another name than their parameter: a loading is its form and its number in one, the
/// second color of two is the same parameter again, and the target of a cup may be left out.
const NAMED: [(&str, &str); 3] =
    [("loading", "loading_requested"), ("other_color", "color"), ("target", "next_target")];

/// Every field of a request is described by a text of the table and has the name of its parameter, and every parameter is one of a request or a calculation,
/// or a number that the core checks.
#[test]
fn every_field_of_a_request_has_its_text() {
    let schema = serde_json::to_value(schema::schema("request").unwrap()).unwrap();
    let texts: BTreeSet<&str> = Parameter::ALL.iter().map(|parameter| parameter.text()).collect();
    let mut used = BTreeSet::new();
    for request in schema["oneOf"].as_array().unwrap() {
        for (field, description) in request["properties"].as_object().unwrap() {
            if field == "calculate" || field == "ext" {
                continue;
            }
            let text = description["description"].as_str().unwrap_or_default();
            assert!(texts.contains(text), "{}: {field}: {text:?}", request["description"]);
            let named = |name: &str| field == name || NAMED.contains(&(field, name));
            let mut same = Parameter::ALL.iter().filter(|parameter| parameter.text() == text);
            assert!(
                same.any(|parameter| named(parameter.name())),
                "{}: {field}",
                request["description"]
            );
            used.insert(text.to_owned());
        }
    }
    for field in CALCULATIONS.iter().flat_map(|calculation| calculation.parameters) {
        used.insert(field.parameter.text().to_owned());
        used.extend(field.parameter.columns().iter().map(|column| column.text().to_owned()));
    }
    // Other numbers that typed calculations check.
    for parameter in [
        Parameter::DialAccuracy,
        Parameter::DialSpan,
        Parameter::DragFactor,
        Parameter::FusedDensity,
        Parameter::MaterialExpansion,
        Parameter::MeltViscosity,
        Parameter::MixDensity,
        Parameter::MoldHeatCapacity,
        Parameter::ResidueMass,
        Parameter::ShotEvery,
        Parameter::ShotHeatCapacity,
        Parameter::VesselHeatCapacity,
        Parameter::WaterDensity,
        Parameter::WaterViscosity,
    ] {
        used.insert(parameter.text().to_owned());
    }
    let unused: Vec<&str> = texts.into_iter().filter(|text| !used.contains(*text)).collect();
    assert!(unused.is_empty(), "nothing takes {unused:?}");
}
