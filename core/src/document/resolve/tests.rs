//! Books that are whole, and books with one slip each.

use alloc::borrow::ToOwned;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use rstest::rstest;
use serde_json::{Value, json};

use crate::book::Book;
use crate::codes::code;
use crate::document::BookDocument;
use crate::document::resolve::Resolver;
use crate::document::small::BOOK;
use crate::fault::Faults;
use crate::json::path::Path;
use crate::parameter::Parameter;
use crate::process::heat::Load;
use crate::process::shot_cooling::Section;
use crate::quantity::{HeatCapacity, Mass, Measurable, SpecificHeatCapacity, System};

fn read(book: &Value) -> Result<Book, Faults> {
    BookDocument::from_text(&book.to_string()).and_then(|document| Book::try_from(&document))
}

fn places(faults: &Faults) -> Vec<(String, String)> {
    faults.iter().map(|fault| (fault.path.clone(), fault.code.to_string())).collect()
}

#[rstest]
#[case("/materials/clear/density", json!("0 g/mL"), "/materials/clear/density", "out-of-range")]
#[case("/materials/salt/as_scooped", json!("2.9 g/mL"), "/materials/salt/as_scooped", "scooped-above-true")]
#[case("/materials/clear/shot_window", json!(["350 °F", "320 °F"]), "/materials/clear/shot_window", "shot-window-reversed")]
#[case("/materials/clear/tolerance", json!("0 %"), "/materials/clear/tolerance", "tolerance-out-of-range")]
#[case("/materials/clear/tolerance", json!("100 %"), "/materials/clear/tolerance", "tolerance-out-of-range")]
#[case("/materials/clear/viscosity", json!(["0 Pa.s", "1 Pa.s"]), "/materials/clear/viscosity/0", "out-of-range")]
#[case("/materials/clear/viscosity", json!(["1 Pa.s", "0 Pa.s"]), "/materials/clear/viscosity/1", "out-of-range")]
#[case("/materials/salt/like", json!("sodium"), "/materials/salt/like", "unknown-name")]
#[case("/default_base", json!("salt"), "/default_base", "base-no-plastisol")]
#[case("/default_base", json!("cleer"), "/default_base", "unknown-name")]
#[case("/formulas/body/base", json!({}), "/formulas/body/base", "empty-blend")]
#[case("/formulas/body/per", json!("8 drops"), "/formulas/body/per", "wrong-dimension")]
#[case("/formulas/body/per", json!("0 cup"), "/formulas/body/per", "formula-empty-base")]
#[case("/formulas/unused", json!({ "per": "0 g", "doses": { "blue": "1 g" } }), "/formulas/unused/per", "formula-empty-base")]
#[case("/formulas/apart/base/firm", json!("0 cup"), "/formulas/apart/base/firm", "formula-empty-base")]
#[case("/formulas/body/doses/salt", json!("300 °F"), "/formulas/body/doses/salt", "wrong-dimension")]
#[case("/molds/worm/cavity", json!("0 mL"), "/molds/worm/cavity", "out-of-range")]
#[case("/molds/worm/cavity", json!({ "water": "9 g", "at": "90 °C" }), "/molds/worm/cavity", "out-of-range")]
#[case("/molds/pair/cavity", json!("9 mL"), "/molds/pair/cavity", "one-cavity-for-unlike")]
#[case("/molds/worm/cavities", json!({}), "/molds/worm/cavity", "one-cavity-for-unlike")]
#[case("/molds/pair/cavities", json!({}), "/molds/pair/cavities", "no-cavities")]
#[case("/molds/worm/voids", json!("30 %"), "/molds/worm/voids", "out-of-range")]
#[case("/molds/worm/rejects", json!("100 %"), "/molds/worm/rejects", "out-of-range")]
#[case("/products/two/layers/0/share", json!("50 %"), "/products/two/layers", "layer-shares")]
#[case("/products/two/overlap", json!("add"), "/products/two/overlap", "overlap-beside-layers")]
#[case("/products/two/formulas", json!(["sky"]), "/products/two", "formulas-or-layers")]
#[case("/bench/injector/count", json!(1), "/products/two/layers", "too-few-injectors")]
#[case("/bench/injector/keeps", json!("1 cup"), "/bench/injector/keeps", "injector-keeps-all")]
#[case("/bench/injector/keeps", json!("4 fl oz"), "/bench/injector/keeps", "injector-keeps-all")]
#[case("/bench/cups", json!([]), "/bench/cups", "no-cup")]
#[case("/bench/balance/reads", json!("0 g"), "/bench/balance/reads", "out-of-range")]
#[case("/limits", json!({ "confidence": "100 %" }), "/limits/confidence", "confidence-out-of-range")]
#[case("/limits", json!({ "most_full": "0 %" }), "/limits/most_full", "share-of-nothing")]
fn one_slip_is_reported_once_at_its_place(
    #[case] place: &str,
    #[case] value: Value,
    #[case] path: &str,
    #[case] code: &str,
) {
    let mut document: Value = serde_json::from_str(BOOK).unwrap();
    let (parent, key) = place.rsplit_once('/').unwrap();
    let parent = document.pointer_mut(parent).unwrap();
    match parent {
        Value::Array(items) => items[key.parse::<usize>().unwrap()] = value,
        parent => parent[key] = value,
    }
    let faults = read(&document).unwrap_err();
    assert_eq!(places(&faults), [(path.to_owned(), code.to_owned())], "{faults}");
}

#[test]
fn voids_of_30_per_cent_are_asked_back_as_rejects() {
    let mut document: Value = serde_json::from_str(BOOK).unwrap();
    document["molds"]["worm"]["voids"] = json!("30 %");
    let faults = read(&document).unwrap_err();
    let help = &faults.iter().next().unwrap().help;
    assert!(help.contains(r#""rejects": "30 %""#), "{help}");
    document["molds"]["worm"]["voids"] = json!("10 %");
    assert!(read(&document).is_ok());
}

/// The faults of the small book after `change`.
fn changed(change: impl FnOnce(&mut Value)) -> Vec<(String, String)> {
    let mut document: Value = serde_json::from_str(BOOK).unwrap();
    change(&mut document);
    read(&document).as_ref().err().map(places).unwrap_or_default()
}

#[test]
fn what_is_equal_is_not_reversed() {
    let found = changed(|book| {
        book["materials"]["clear"]["shot_window"] = json!(["330 °F", "330 °F"]);
        book["materials"]["clear"]["viscosity"] = json!(["1 Pa.s", "1 Pa.s"]);
    });
    assert_eq!(found, []);
    let found = changed(|book| {
        let sand =
            json!({ "kind": "salt", "density": "2 g/mL", "as_scooped": "2 g/mL", "sure": true });
        book["materials"]["sand"] = sand;
    });
    assert!(!found.iter().any(|(_, code)| code == "scooped-above-true"), "{found:?}");
}

/// Beyond the limit only the names that are listed are looked at.
#[test]
fn beyond_a_limit_no_name_is_compared() {
    let names: Vec<String> = (10..40).map(|number| std::format!("mold-{number}")).collect();
    let find = |to_compare: usize| {
        let mut resolver = Resolver::new(System::Metric);
        resolver.to_compare = to_compare;
        let mut looked_at = 0;
        let mut known = names.iter().map(|name| {
            looked_at += 1;
            name.as_str()
        });
        assert_eq!(resolver.find::<()>("mold", &Path::ROOT, "mold-3O", None, &mut known), None);
        (looked_at, resolver.faults.remove(0).help)
    };
    assert_eq!(find(1), (30, "Did you mean \"mold-30\"?".to_owned()));
    let (looked_at, help) = find(0);
    assert!(help.starts_with("Known: mold-10, ") && help.ends_with(", mold-21, ...."), "{help}");
    assert_eq!(looked_at, 13);
}

/// Shares come to 100 % but for rounding, and each layer has one.
#[test]
fn layers_share_a_piece() {
    let with = |one: &str, other: &str| {
        changed(|book| {
            let layers = &mut book["products"]["two"]["layers"];
            (layers[0]["share"], layers[1]["share"]) = (json!(one), json!(other));
        })
    };
    let wrong = [("/products/two/layers".to_owned(), "layer-shares".to_owned())];
    assert_eq!(with("50 %", "49.99999995 %"), []);
    assert_eq!(with("50 %", "49.99999985 %"), wrong);
    assert_eq!(with("0 %", "100 %"), wrong);
}

/// What follows from a fault is not another one; what does not follow from it is.
#[test]
fn a_recipe_is_blamed_only_for_itself() {
    let with = |formulas: Value| {
        changed(|book| {
            book["default_base"] = json!("cleer");
            book["products"]["new"] = json!({ "mold": "worm", "formulas": formulas });
        })
    };
    let base = ("/default_base".to_owned(), "unknown-name".to_owned());
    let twice = ("/products/new/formulas".to_owned(), "formula-dosed-twice".to_owned());
    assert_eq!(with(json!(["sky"])).as_slice(), core::slice::from_ref(&base));
    assert_eq!(with(json!(["body"])).as_slice(), core::slice::from_ref(&base));
    let mut found = with(json!(["body", "twin"]));
    found.sort();
    assert_eq!(found, [base, twice]);
}

#[test]
fn a_bench_has_one_injector_if_it_says_nothing() {
    let mut document: Value = serde_json::from_str(BOOK).unwrap();
    document["bench"]["injector"].as_object_mut().unwrap().remove("count");
    let faults = read(&document).unwrap_err();
    let message = &faults.iter().next().unwrap().message;
    assert!(message.ends_with("the bench has 1."), "{message}");
}

#[test]
fn a_value_of_another_kind_is_met_with_the_kinds_that_serve() {
    for (place, help) in [
        ("/formulas/body/base", "Write the name of a plastisol, or a blend"),
        ("/molds/worm/cavities", "Write a number of cavities, or unlike ones"),
        ("/materials/clear/shot_window", "Write a list of two"),
    ] {
        let mut document: Value = serde_json::from_str(BOOK).unwrap();
        *document.pointer_mut(place).unwrap() = json!([1]);
        let faults = read(&document).unwrap_err();
        let fault = faults.iter().next().unwrap();
        assert_eq!((fault.path.as_str(), faults.count()), (place, 1), "{faults}");
        assert!(fault.help.starts_with(help), "{faults}");
    }
    let found = changed(|book| book["materials"]["clear"]["shot_window"] = json!([1, 2]));
    let at = |place: usize| std::format!("/materials/clear/shot_window/{place}");
    let paths: Vec<String> = found.into_iter().map(|(path, _)| path).collect();
    assert_eq!(paths, [at(0), at(1)]);
}

/// A mold of metal is calculated by the body that cools most slowly; of another it is timed.
#[test]
fn a_mold_cools_by_its_slowest_body() {
    let stick = json!({ "count": 1, "cavity": "9.5 mL", "body": { "stick": { "diameter": "10 mm", "length": "12 cm" } } });
    let ball = |diameter: &str, cavity: &str| json!({ "count": 1, "cavity": cavity, "body": { "ball": { "diameter": diameter } } });
    let section = |ball: Value, cooling: Value| {
        let mut document: Value = serde_json::from_str(BOOK).unwrap();
        document["molds"]["pair"] =
            json!({ "cavities": { "a ball": ball, "stick": stick }, "cooling": cooling });
        let book = read(&document).unwrap_or_else(|faults| panic!("{faults}"));
        let mold = book.molds.iter().find(|mold| mold.name == "pair").unwrap();
        mold.cooling.map(|cooling| cooling.section)
    };
    // A ball cools as slowly as a rod if it is π/2.4048 = 1.306 times as thick.
    for (diameter, volume, slowest) in
        [("10 mm", "0.52 mL", "rod"), ("13 mm", "1.15 mL", "rod"), ("14 mm", "1.44 mL", "ball")]
    {
        for cooling in [json!({}), json!({ "of": "metal" })] {
            let found = match section(ball(diameter, volume), cooling).unwrap() {
                Section::Rod { .. } => "rod",
                Section::Plate { .. } => "plate",
                Section::Ball { .. } => "ball",
            };
            assert_eq!(found, slowest, "{diameter}");
        }
    }
    let cooling = |cooling: Value| changed(|book| book["molds"]["worm"]["cooling"] = cooling);
    let one =
        |path: &str, code: &str| [(std::format!("/molds/worm/cooling{path}"), code.to_owned())];
    assert_eq!(cooling(json!({ "of": "metal" })), one("", "section-not-known"));
    let warm = json!({ "section": { "rod": "10 mm" }, "at": "50 °C", "take_out": "50 °C" });
    assert_eq!(cooling(warm), one("", "mold-too-warm"));
    // Of another material nothing is asked that would not help.
    assert_eq!(cooling(json!({ "of": "plaster" })), one("/of", "mold-not-metal"));
}

#[test]
fn a_fault_is_at_its_value_and_in_what_holds_it() {
    let mut resolver = Resolver::new(System::Metric);
    resolver.fault(code!("out-of-range"), &Path::At("/materials/salt").key("density"), &"x", &"y");
    let has = |path: &'static str| resolver.has_fault(&Path::At(path));
    assert!(has("/materials/salt/density") && has("/materials/salt") && has("/materials"));
    assert!(!has("/materials/sal") && !has("/materials/salt/dens") && !has("/materials/sugar"));
}

#[test]
fn a_name_is_met_with_those_that_are_known() {
    let names: Vec<String> = (0..13).map(|i| std::format!("worm-{}", "x".repeat(i))).collect();
    let help = |resolver: &mut Resolver, name: &str, count: usize| {
        let mut known = names.iter().take(count).map(String::as_str);
        assert_eq!(resolver.find("mold", &Path::ROOT, name, None::<()>, &mut known), None);
        resolver.faults.pop().unwrap().help
    };
    let mut resolver = Resolver::new(System::Metric);
    assert_eq!(help(&mut resolver, "tail", 0), "There is no mold at all yet; add it to the book.");
    assert_eq!(help(&mut resolver, "tail", 2), "Known: worm-, worm-x.");
    assert_eq!(help(&mut resolver, "vorm-x", 2), "Did you mean \"worm-x\"?");
    let all = |count: usize| names[..count].join(", ");
    assert_eq!(help(&mut resolver, "tail", 12), std::format!("Known: {}.", all(12)));
    assert_eq!(help(&mut resolver, "tail", 13), std::format!("Known: {}, ....", all(12)));
}

/// A parameter of a request is blamed in its own field, where the request has one.
#[test]
fn a_parameter_is_blamed_in_its_field() {
    let mut resolver = Resolver::new(System::Metric);
    let refused = || Parameter::Voids.check_si(1.5);
    let path = Path::At("/melt");
    assert_eq!(resolver.keep_named(&path, &["voids"], refused()), None);
    assert_eq!(resolver.keep_named(&path, &["other"], refused()), None);
    let paths: Vec<&str> = resolver.faults.iter().map(|fault| fault.path.as_str()).collect();
    assert_eq!(paths, ["/voids", "/melt"]);
}

/// A book with all that vacuum, oven, heat and water need.
fn process_book() -> Value {
    json!({
        "format": "pourwright/1.0", "measures": "us-customary", "altitude": "640 m",
        "default_base": "base",
        "materials": {
            "base": {
                "kind": "plastisol", "density": "1.03 g/mL", "specific_heat": "1.9 J/(g.K)",
                "activation_energy": { "value": "120 kJ/mol", "source": "invented" },
                "budget": { "time": "30 min", "at": "350 °F" }
            },
            "glitter": { "kind": "flake", "cut": ".035", "thickness": "50 um" },
            "saver": { "kind": "stabilizer", "buys": { "time": "6 min", "per": "2 %", "most": "4 %" } }
        },
        "formulas": {},
        "molds": {
            "worm": {
                "cavities": 4, "cavity": "9.5 mL",
                "body": { "stick": { "diameter": "10 mm", "length": "12 cm" } },
                "hook": { "mass": "1 g", "volume": "0.13 mL" }
            }
        },
        "bench": {
            "cups": [{ "holds": "2 cup", "brim": "590 mL" }],
            "injector": { "holds": "4 fl oz" },
            "vacuum": { "gauge": "25 inHg", "rise": 2 },
            "oven": {
                "timings": [{ "mix": "2 cup", "from": "20 °C", "to": "170 °C", "time": "4 min" }],
                "reheat_from": "120 °C", "hot_for": "8 min"
            }
        },
        "limits": { "water": { "temperature": "15 °C", "salinity_absolute": "35 g/kg" } }
    })
}

#[test]
fn a_book_says_it_all() {
    let book = read(&process_book()).unwrap_or_else(|faults| panic!("{faults}"));
    assert!(book.air.is_some() && book.chamber.is_some() && book.limits.water.is_some());
    let oven = book.oven.unwrap();
    // 487.4 g of 1.9 J/(g K) by 150 K in 240 s: 579 W (plain arithmetic).
    let watts = 2.0 * 236.588_236_5 * 1.03 * 1.9 * 150.0 / 240.0;
    let two_cups = Mass::from_si(2.0 * 0.236_588_236_5 * 1.03);
    let specific_heat = SpecificHeatCapacity::from_si(1900.0);
    let load = Load::new(two_cups, specific_heat, HeatCapacity::default()).unwrap();
    assert!((oven.timed.power(load).value - watts).abs() < 1e-6 * watts);
    let material = |name| book.materials.get(book.materials.find(name).unwrap()).unwrap();
    // 6 min for 2 % are 300 min for all of it.
    assert!((material("saver").buys.unwrap().time.value - 18_000.0).abs() < 1e-6);
    assert!(material("glitter").cut.is_some());
    // The stated time is that of the plastisol without more stabilizer.
    assert_eq!(material("base").budget.map(|budget| budget.with.si()), Some(0.0));
    let mold = book.molds.first().unwrap();
    assert!(mold.cavities[0].body.is_some() && mold.hook.mass.value > 0.0);
}

/// Without a default base it must be said what was timed.
#[test]
fn an_oven_was_timed_with_something() {
    let mut book = process_book();
    book.as_object_mut().unwrap().remove("default_base");
    let faults = read(&book).unwrap_err();
    assert_eq!(places(&faults), [("/bench/oven".to_owned(), "missing-field".to_owned())]);
}

/// An omitted field stays unknown.
#[test]
fn a_book_may_say_nothing() {
    let mut silent = process_book();
    for (parent, field) in
        [("", "altitude"), ("/bench", "vacuum"), ("/bench", "oven"), ("", "limits")]
    {
        silent.pointer_mut(parent).unwrap().as_object_mut().unwrap().remove(field);
    }
    let book = read(&silent).unwrap_or_else(|faults| panic!("{faults}"));
    assert_eq!((book.air, book.chamber, book.limits.water), (None, None, None));
    assert!(book.oven.is_none());
}

#[rstest]
#[case("", "station_pressure", json!("101 kPa"), "/station_pressure", "air-pressure-looks-reduced")]
#[case("", "altitude", json!("30 km"), "/altitude", "out-of-range")]
#[case("/bench/vacuum", "gauge", json!("30 inHg"), "/bench/vacuum/gauge", "gauge-more-than-the-air")]
#[case("/bench/vacuum", "absolute", json!("10 kPa"), "/bench/vacuum", "gauge-or-absolute")]
#[case("/bench/vacuum", "rise", json!(50), "/bench/vacuum/rise", "degas-not-air")]
#[case("/bench/vacuum", "entrained", json!("5 %"), "/bench/vacuum", "rise-and-entrained")]
#[case("/bench/vacuum", "dial_tolerance", json!("40 inHg"), "/bench/vacuum/dial_tolerance", "out-of-range")]
#[case("/bench/cups/0", "brim", json!("1 cup"), "/bench/cups/0/brim", "brim-below-marks")]
#[case("/bench/oven", "of", json!("bas"), "/bench/oven/of", "unknown-name")]
#[case("/bench/oven", "of", json!("saver"), "/bench/oven", "missing-property")]
#[case("/bench/oven/timings/0", "to", json!("10 °C"), "/bench/oven/timings/0", "heat-not-hotter")]
#[case("/bench/oven/timings/0", "vessel_specific_heat", json!("0.8 J/(g.K)"), "/bench/oven/timings/0", "vessel-half-known")]
#[case("/bench/oven/timings/0", "mix", json!("2 drops"), "/bench/oven/timings/0/mix", "amount-wrong-dimension")]
#[case("/materials/base", "activation_energy", json!("120 kJ/mol"), "/materials/base/activation_energy", "history-no-source")]
#[case("/materials/base", "cut", json!(".035"), "/materials/base/cut", "property-of-another-kind")]
#[case("/materials/glitter", "cut", json!("35 mm"), "/materials/glitter/cut", "cut-suspicious")]
#[case("/materials/saver/buys", "per", json!("0 %"), "/materials/saver/buys/per", "share-of-nothing")]
#[case("/molds/worm", "body", json!({}), "/molds/worm/body", "stick-or-ball")]
#[case("/molds/worm/body/stick", "length", json!("12 mm"), "/molds/worm/body/stick", "sink-stick-too-short")]
#[case("/limits/water", "salinity_absolute", json!("90 g/kg"), "/limits/water/salinity_absolute", "out-of-range")]
#[case("/limits/water", "temperature", json!("90 °C"), "/limits/water/temperature", "out-of-range")]
fn one_slip_in_what_the_process_takes_is_reported_once(
    #[case] parent: &str,
    #[case] field: &str,
    #[case] value: Value,
    #[case] path: &str,
    #[case] code: &str,
) {
    let mut book = process_book();
    book.pointer_mut(parent).unwrap()[field] = value;
    let faults = read(&book).unwrap_err();
    assert_eq!(places(&faults), [(path.to_owned(), code.to_owned())], "{faults}");
}
