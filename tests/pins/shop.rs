//! Books: the demo's with many things otherwise, and small ones in round numbers, where things tie.

use pourwright_tests::demo::{BOOK, json};
use serde_json::{Map, Value, json};

use crate::chance::Chance;

/// Where the demo's book is otherwise: how often of a hundred, and with what; nothing leaves the field out.
const TWISTS: &[(usize, &str, &[&str])] = &[
    // The bench.
    (
        12,
        "/bench/balance",
        &[
            "",
            r#"{"reads":"1 g","to":"3000 g"}"#,
            r#"{"reads":"0.01 g","to":"200 g"}"#,
            r#"{"reads":"0.1 g","from":"2 g","to":"300 g"}"#,
            r#"{"reads":"0.05 g"}"#,
        ],
    ),
    (
        8,
        "/bench/spoons",
        &["", r#"["1 tbsp","1 tsp"]"#, r#"["1 tsp"]"#, r#"["5 mL","2.5 mL","1.25 mL"]"#],
    ),
    (8, "/bench/most_drops", &["", "20", "200", "1"]),
    (
        25,
        "/bench/cups",
        &[
            r#"[{"holds":"2 cup","marks":"1/4 cup","film":"5 g","heel":"12 g"}]"#,
            r#"[{"holds":"1 cup","marks":"1/4 cup","heel":"20 g","film":"4 g"},{"holds":"3 cup","marks":"1/2 cup","heel":"30 g"}]"#,
            r#"[{"holds":"2 cup"},{"holds":"4 cup"}]"#,
            r#"[{"holds":"1 cup","marks":"1/8 cup"}]"#,
            r#"[{"holds":"500 mL","marks":"50 mL","film":"6 g"},{"holds":"1 L","marks":"100 mL","film":"9 g","heel":"9 g"}]"#,
            r#"[{"holds":"8 cup","marks":"1/2 cup","film":"12 g","heel":"40 g","brim":"2.2 L"}]"#,
        ],
    ),
    (
        15,
        "/bench/injector",
        &[
            r#"{"holds":"4 fl oz"}"#,
            r#"{"holds":"6 fl oz","keeps":"6 mL","count":3}"#,
            r#"{"holds":"2 fl oz","keeps":"2 mL","count":2}"#,
            r#"{"holds":"4 fl oz","keeps":"0 mL","count":2}"#,
            r#"{"holds":"100 mL","keeps":"5 mL"}"#,
        ],
    ),
    (
        15,
        "/bench/vacuum",
        &[
            "",
            r#"{"absolute":"10 kPa"}"#,
            r#"{"gauge":"25 inHg"}"#,
            r#"{"gauge":"20 inHg","entrained":"5 %"}"#,
            r#"{"gauge":"27 inHg","rise":2.5}"#,
            r#"{"absolute":"5 kPa","entrained":"12 %"}"#,
            r#"{"gauge":"24 inHg","rise":1,"dial_tolerance":"0.5 inHg"}"#,
        ],
    ),
    (
        28,
        "/bench/oven",
        &[
            "",
            r#"{"power":"900 W","hot_for":"6 min"}"#,
            r#"{"power":"900 W","setting":"50 %"}"#,
            r#"{"timings":[{"mix":"1 cup","from":"68 °F","to":"335 °F","time":"130 s"}],"hot_for":"5 min"}"#,
            r#"{"timings":[{"mix":"1 cup","from":"68 °F","to":"335 °F","time":"240 s"},{"mix":"2 cup","from":"68 °F","to":"335 °F","time":"420 s"}],"setting":"50 %","turn":"22 s","cools":{"mix":"2 cup","from":"340 °F","to":"320 °F","time":"150 s"},"reheat_from":"230 °F"}"#,
            r#"{"timings":[{"mix":"1 cup","from":"68 °F","to":"335 °F","time":"121 s"},{"mix":"2 cup","from":"68 °F","to":"335 °F","time":"206 s"}],"cools":{"mix":"2 cup","from":"340 °F","to":"320 °F","time":"180 s","room":"72 °F"},"room":"75 °F","step":"10 s","longest":"60 s","thermometer":"1 K"}"#,
            r#"{"timings":[{"mix":"2 cup","from":"68 °F","to":"335 °F","time":"206 s"}],"hot_for":"3 min","reheat_from":"200 °F","longest":"30 s"}"#,
            r#"{"of":"firm-base","timings":[{"mix":"1/2 cup","from":"68 °F","to":"335 °F","time":"79 s"},{"mix":"4 cup","from":"68 °F","to":"335 °F","time":"380 s"}],"hot_for":"12 min"}"#,
        ],
    ),
    (6, "/bench/oven/hot_for", &["\"3 min\"", "\"100 s\"", "\"20 min\""]),
    (6, "/bench/oven/reheat_from", &["", "\"300 °F\"", "\"325 °F\""]),
    (
        5,
        "/bench/uncertainty",
        &[
            r#"{"balance_span":"0.5 %","cup_filling":"5 %","cup_size":"1 %"}"#,
            r#"{"drop":"5 %","drop_scatter":"4 %","spoon_level":"4 %","spoon_size":"1 %","unweighed_drop":"20 %"}"#,
        ],
    ),
    // Limits.
    (20, "/limits/sprues", &["\"melt-again\""]),
    (25, "/limits/heats", &["1", "2", "3", "4", "6"]),
    (25, "/limits/fresh_base", &["true"]),
    (15, "/limits/most_full", &["\"75 %\"", "\"80 %\"", "\"90 %\"", "\"60 %\""]),
    (10, "/limits/least_pot", &["", "\"1 cup\"", "\"1/4 cup\"", "\"300 mL\""]),
    (8, "/limits/solids", &["", "\"14 %\"", "\"16 %\"", "\"25 %\""]),
    (10, "/limits/tolerance", &["", "\"1 %\"", "\"2 %\"", "\"10 %\""]),
    (12, "/limits/rejects", &["", "\"0 %\"", "\"10 %\"", "\"20 %\""]),
    (8, "/limits/confidence", &["", "\"50 %\"", "\"99 %\""]),
    (
        10,
        "/limits/water",
        &[
            "",
            r#"{"temperature":"70 °F","salinity_practical":35}"#,
            r#"{"temperature":"4 °C","salinity_absolute":"20 g/kg"}"#,
        ],
    ),
    (6, "/altitude", &["", "\"0 m\"", "\"1000 ft\"", "\"-50 m\""]),
    (5, "/station_pressure", &["\"27.7 inHg\"", "\"90 kPa\""]),
    (
        5,
        "/shop",
        &["", "\"A shop whose name is longer than is good for the head of a sheet of paper\""],
    ),
    // Costs.
    (
        15,
        "/costing",
        &[
            "",
            r#"{"rate":"20.00 USD per 1 h","per_pot":"10 min","per_shot":"1 min"}"#,
            r#"{"margin":"30 %"}"#,
            r#"{"packing":[{"name":"tub","price":"30.00 USD per 10 pieces","per_pack":2}],"per_pack":"1 min","rate":"12.00 USD per 1 h","left_over_worth":"100 %"}"#,
            r#"{"rate":"15.00 USD per 1 h","per_heat":"5 min"}"#,
        ],
    ),
    (8, "/costing/margin", &["", "\"0 %\"", "\"60 %\""]),
    (8, "/costing/per_shot", &["", "\"20 s\"", "\"2 min\""]),
    (8, "/costing/left_over_worth", &["", "\"0 %\"", "\"100 %\""]),
    // Materials.
    (6, "/materials/clear-base/fused", &["", "\"1.05 g/mL\""]),
    (6, "/materials/clear-base/expansion", &["", "\"8e-4 1/K\""]),
    (5, "/materials/clear-base/specific_heat_rise", &["\"0.0012 1/K\""]),
    (
        8,
        "/materials/clear-base/shot_window",
        &["", r#"["330 °F","340 °F"]"#, r#"["300 °F","360 °F"]"#, r#"["340 °F","350 °F"]"#],
    ),
    (6, "/materials/clear-base/tolerance", &["", "\"5 %\""]),
    (5, "/materials/clear-base/activation_energy", &["", r#"{"value":"100 kJ/mol","source":"x"}"#]),
    (
        15,
        "/materials/clear-base/budget",
        &[
            "",
            r#"{"time":"12 min","at":"350 °F"}"#,
            r#"{"time":"9 min","at":"350 °F","with":"1 %"}"#,
            r#"{"time":"25 min","at":"340 °F","with":"4 %"}"#,
            r#"{"time":"5 min","at":"345 °F","with":"2 %"}"#,
        ],
    ),
    (6, "/materials/clear-base/price", &["", "\"12.00 USD per 1 qt\"", "\"30.00 USD per 8 lb\""]),
    (
        10,
        "/materials/clear-base/viscosity",
        &[r#"["0.5 Pa.s","3 Pa.s"]"#, r#"["0.1 Pa.s","0.4 Pa.s"]"#],
    ),
    (5, "/materials/firm-base/specific_heat", &[""]),
    (5, "/materials/firm-base/budget", &["", r#"{"time":"10 min","at":"350 °F","with":"1.9 %"}"#]),
    (
        5,
        "/materials/firm-base/shot_window",
        &["", r#"["340 °F","355 °F"]"#, r#"["345 °F","360 °F"]"#],
    ),
    (
        10,
        "/materials/softener/hardness",
        &[
            r#"{"scale":"shore-00","points":[{"point_ratio":"0 %","point_hardness":62},{"point_ratio":"10 %","point_hardness":50},{"point_ratio":"25 %","point_hardness":31}]}"#,
        ],
    ),
    (5, "/materials/softener/price", &[""]),
    (5, "/materials/softener/add", &["\"hot\""]),
    (8, "/materials/stabilizer/buys", &["", r#"{"time":"4 min","per":"1 %","most":"3 %"}"#]),
    (
        10,
        "/materials/stabilizer/most",
        &["\"3 tsp per 1 cup\"", "\"2 tsp per 1 cup\"", "\"6 % of base\""],
    ),
    (5, "/materials/stabilizer/add", &["\"hot\""]),
    (5, "/materials/stabilizer/price", &[""]),
    (5, "/materials/stabilizer/drop", &[""]),
    (6, "/materials/fine-salt/as_scooped", &["", "\"1.1 g/mL\""]),
    (15, "/materials/fine-salt/grain", &["\"0.3 mm\"", "\"0.1 mm\"", "\"1 mm\""]),
    (5, "/materials/fine-salt/most", &["\"1/2 cup per 1 cup\""]),
    (5, "/materials/fine-salt/add", &["\"cold\""]),
    (6, "/materials/plum/drop", &["", "\"0.05 g\"", "\"0.04 mL\"", "\"0.044 g ± 0.012\""]),
    (5, "/materials/plum/tolerance", &["\"1 %\"", "\"20 %\""]),
    (5, "/materials/plum/most", &["\"60 drops per 1 cup\""]),
    (5, "/materials/plum/add", &["\"hot\""]),
    (4, "/materials/rust/drop", &[""]),
    (4, "/materials/rust/price", &[""]),
    (4, "/materials/teal-flake/as_scooped", &["", "\"0.5 g/mL\""]),
    (4, "/materials/teal-flake/cut", &["", "\".062 hex\"", "\"1/64 hex\"", "\"0.4 mm square\""]),
    (4, "/materials/teal-flake/add", &["\"cold\""]),
    (4, "/materials/teal-flake/most", &["\"2 tsp per 1 cup\""]),
    (4, "/materials/silver-pearl/add", &["\"hot\""]),
    (4, "/materials/silver-pearl/as_scooped", &[""]),
    (
        4,
        "/materials/black-flake/name",
        &["\"black flake, fine cut, the bag from the second shelf\""],
    ),
    // Formulas.
    (
        8,
        "/formulas/plain/doses/stabilizer",
        &["", "\"2 % of base\"", "\"1 1/2 tsp\"", "\"40 drops\"", "\"3 tsp\""],
    ),
    (6, "/formulas/plain/base", &["\"firm-base\""]),
    (
        8,
        "/formulas/salted/doses/fine-salt",
        &[
            "\"15 % of base\"",
            "\"10 % of finished\"",
            "\"8 % of finished by volume\"",
            "\"90 g\"",
            "\"1 tbsp\"",
            "\"60 g\"",
        ],
    ),
    (6, "/formulas/salted/doses/softener", &["", "\"5 % of base\"", "\"1 fl oz\""]),
    (
        6,
        "/formulas/soft/doses/softener",
        &["\"25 % of base\"", "\"10 % of base by volume\"", "\"2 tbsp\""],
    ),
    (
        6,
        "/formulas/firm/base",
        &[
            r#"{"clear-base":"3 cup","firm-base":"1 cup"}"#,
            "\"firm-base\"",
            r#"{"clear-base":"100 g","firm-base":"300 g"}"#,
        ],
    ),
    (
        6,
        "/formulas/dusk/doses/plum",
        &["\"30 drops\"", "\"1.4 g\"", "\"1/4 tsp\"", "\"0.6 % of base\"", "\"3 drops\""],
    ),
    (6, "/formulas/dusk/doses/teal-flake", &["", "\"1/4 tsp\"", "\"1 g\""]),
    (5, "/formulas/dusk/per", &["\"2 cup\"", "\"250 g\""]),
    (5, "/formulas/reed/doses/rust", &["", "\"8 drops\""]),
    (5, "/formulas/ember/doses/soot", &["", "\"1 drop\""]),
    (5, "/formulas/shell/doses/chalk", &["\"2 g\"", "\"100 drops\""]),
    (5, "/formulas/night/doses/anise", &["", "\"1/4 tsp\""]),
    // Molds.
    (6, "/molds/finger-5/per_shot", &["\"40 s\"", "\"2 min\""]),
    (6, "/molds/finger-5/sets", &["\"4 min\"", "\"90 s\""]),
    (6, "/molds/finger-5/count", &["2", "3"]),
    (5, "/molds/finger-5/top", &["\"0.5 g\"", "\"3 g\""]),
    (5, "/molds/finger-5/voids", &["\"1 %\"", "\"3 %\""]),
    (6, "/molds/finger-5/feed", &["", "\"0 %\"", "\"100 %\""]),
    (5, "/molds/finger-5/sprue", &["", "\"0 mL\"", "\"20 mL\"", "\"1 mL\""]),
    (5, "/molds/finger-5/hook", &["", r#"{"mass":"0.3 g","volume":"0.2 mL"}"#]),
    (
        5,
        "/molds/finger-5/cooling",
        &[
            r#"{"mass":"500 g","take_out":"120 °F"}"#,
            r#"{"section":{"rod":"9 mm"},"at":"90 °F"}"#,
            r#"{"section":{"plate":"4 mm"},"mass":"200 g","specific_heat":"0.9 J/(g.K)"}"#,
        ],
    ),
    (5, "/molds/stick-6/cooling", &[r#"{"section":{"ball":"16 mm"}}"#, "{}"]),
    (5, "/molds/stick-6/sets", &["\"3 min\""]),
    (5, "/molds/stick-6/rejects", &["\"0 %\"", "\"15 %\""]),
    (5, "/molds/minnow-3/top", &["\"1 g\""]),
    (
        5,
        "/molds/minnow-3/body",
        &[
            "",
            r#"{"stick":{"diameter":"10 mm","length":"76 mm"},"drop":{"depth":"1.2 m","time":"9 s","density":"1.06 g/mL"}}"#,
        ],
    ),
    (5, "/molds/grub-2/hook", &["", r#"{"mass":"0.1 g","volume":"0.2 mL"}"#]),
    (
        5,
        "/molds/grub-2/body",
        &[
            "",
            r#"{"ball":{"diameter":"16 mm"},"drop":{"depth":"1 m","time":"4 s","density":"1.1 g/mL","water":{"temperature":"20 °C"}}}"#,
        ],
    ),
    (5, "/molds/paddle-4/voids", &["\"2 %\""]),
    (5, "/molds/claw-set/feed", &["", "\"80 %\""]),
    (5, "/molds/claw-set/per_shot", &["\"70 s\""]),
    (5, "/molds/paddle-4/cavity", &["\"20 mL\"", r#"{"water":"10.82 g","at":"4 °C"}"#]),
];

/// Sets a field, or leaves it out; nothing happens where the object that would have it is not there.
fn set(book: &mut Value, path: &str, to: &str) {
    let (parent, name) = path.rsplit_once('/').expect("a path");
    let Some(Value::Object(fields)) = book.pointer_mut(parent) else { return };
    match to {
        "" => _ = fields.remove(name),
        to => _ = fields.insert(name.to_owned(), json(to)),
    }
}

/// States the masses of all vessels: cups, and those of the timings.
fn weigh_vessels(c: &mut Chance, book: &mut Value) {
    let specific_heat = "0.84 J/(g.K)";
    let mass = format!("{} g", c.whole(10, 40) * 10);
    for cup in book["bench"]["cups"].as_array_mut().into_iter().flatten() {
        cup["mass"] = mass.clone().into();
        cup["specific_heat"] = specific_heat.into();
    }
    let oven = book.pointer_mut("/bench/oven/timings");
    for timing in oven.and_then(Value::as_array_mut).into_iter().flatten() {
        timing["vessel"] = mass.clone().into();
        timing["vessel_specific_heat"] = specific_heat.into();
    }
}

/// In metric measures, which have no ounces and gallons; a text without them stays.
const METRIC: [(&str, &str); 8] = [
    ("2 fl oz", "60 mL"),
    ("4 fl oz", "120 mL"),
    ("6 fl oz", "180 mL"),
    ("8 fl oz", "240 mL"),
    ("12 fl oz", "350 mL"),
    ("1 fl oz", "30 mL"),
    ("1 gal", "4 L"),
    ("1 qt", "1 L"),
];

pub(crate) fn in_measures(document: &Value, system: &str) -> Value {
    if system != "metric" {
        return document.clone();
    }
    let text = METRIC.iter().fold(document.to_string(), |text, (from, to)| text.replace(from, to));
    json(&text)
}

/// The demo's book with things otherwise: few in most, many in some.
pub(crate) fn twisted(c: &mut Chance) -> Value {
    let mut book = json(BOOK);
    let (times, of) = *c.one_of(&[(1, 2), (1, 1), (1, 1), (2, 1)]);
    for (in_hundred, path, to) in TWISTS {
        if c.happens(in_hundred * times / of) {
            set(&mut book, path, &c.word(to));
        }
    }
    if c.happens(10) {
        weigh_vessels(c, &mut book);
    }
    let system = c.word(&["us-customary", "us-customary", "us-label", "metric"]);
    let mut book = in_measures(&book, &system);
    book["measures"] = system.into();
    book
}

/// A small shop in round numbers: formulas of parts of the base, cups in milliliters, a shot of a number of grams.
pub(crate) fn round(c: &mut Chance) -> Value {
    let mut formulas = Map::new();
    let doses: [(&str, &[&str]); 4] = [
        ("softener", &["", "", "10 % of base", "20 % of base"]),
        ("salt", &["", "", "", "15 % of base", "25 % of base"]),
        ("stain", &["", "", "4 % of base", "8 % of base"]),
        ("tint", &["", "", "", "10 drops"]),
    ];
    for index in 0..c.whole(2, 5) {
        let mut own = Map::new();
        for (material, amounts) in doses {
            let amount = c.word(amounts);
            if !amount.is_empty() {
                own.insert(material.into(), amount.into());
            }
        }
        let base = c.value(&[
            "\"clear\"",
            "\"clear\"",
            "\"clear\"",
            "\"firm\"",
            r#"{"clear":"1 g","firm":"1 g"}"#,
        ]);
        formulas.insert(format!("f{index}"), json!({ "base": base, "per": "100 g", "doses": own }));
    }
    let mut molds = Map::new();
    let timed = c.happens(50);
    for index in 0..c.whole(1, 3) {
        let mut mold =
            json!({ "cavities": c.whole(1, 2), "cavity": format!("{} mL", c.whole(2, 8) * 10) });
        if c.happens(50) {
            mold["sprue"] = format!("{} mL", c.whole(1, 3) * 10).into();
        }
        if c.happens(15) {
            mold["rejects"] = c.value(&["\"10 %\"", "\"25 %\""]);
        }
        if timed {
            mold["per_shot"] = format!("{} s", c.whole(2, 6) * 10).into();
            if c.happens(40) {
                mold["sets"] = format!("{} s", c.whole(1, 6) * 10).into();
                mold["count"] = c.whole(1, 3).into();
            }
        }
        molds.insert(format!("m{index}"), mold);
    }
    if c.happens(20) {
        molds.insert("m9".into(), json!({ "cavities": { "long": { "count": 1, "cavity": "40 mL" }, "short": { "count": 2, "cavity": "20 mL" } } }));
    }
    let mut cups = Vec::new();
    let mut holds = 100;
    for _ in 0..*c.one_of(&[1, 1, 2, 3]) {
        holds += c.whole(1, 6) * 50;
        let mut cup = json!({ "holds": format!("{holds} mL") });
        let marks = c.word(&["100 mL", "50 mL", "25 mL", "10 mL", ""]);
        if !marks.is_empty() {
            cup["marks"] = marks.into();
        }
        for (what, to) in [("film", 5), ("heel", 50)] {
            if c.happens(40) {
                cup[what] = format!("{} g", c.whole(0, to / 5) * 5).into();
            }
        }
        cups.push(cup);
    }
    let mut injector = json!({ "holds": c.word(&["200 mL", "170 mL", "100 mL"]), "count": *c.one_of(&[1, 2, 3, 3, 3]) });
    if c.happens(50) {
        injector["keeps"] = format!("{} mL", c.whole(0, 2) * 5).into();
    }
    let mut bench = json!({ "cups": cups, "injector": injector, "balance": { "reads": "0.01 g", "to": "3000 g" } });
    if timed {
        bench["oven"] = json!({ "of": "clear", "power": "900 W", "hot_for": format!("{} s", c.whole(4, 20) * 10) });
    }
    let mut limits = json!({});
    for (in_hundred, name, to) in [
        (40, "heats", &["1", "2", "3", "4"] as &[&str]),
        (40, "fresh_base", &["true"]),
        (40, "sprues", &["\"melt-again\""]),
        (40, "most_full", &["\"80 %\"", "\"75 %\"", "\"90 %\"", "\"100 %\""]),
        (20, "least_pot", &["\"50 mL\"", "\"100 mL\""]),
        (20, "solids", &["\"5 %\"", "\"10 %\""]),
    ] {
        if c.happens(in_hundred) {
            limits[name] = c.value(to);
        }
    }
    json!({
        "format": "pourwright/1.0", "measures": "metric", "default_base": "clear",
        "materials": {
            "clear": { "kind": "plastisol", "density": "1 g/mL", "specific_heat": "2 J/(g.K)", "shot_window": ["160 °C", "180 °C"],
                "price": "10.00 USD per 1 kg", "activation_energy": { "value": "120 kJ/mol", "source": "x" }, "budget": { "time": c.word(&["20 min", "6 min", "60 min"]), "at": "170 °C" } },
            "firm": { "kind": "plastisol", "density": c.word(&["1 g/mL", "1.1 g/mL"]) },
            "softener": { "kind": "softener", "density": "1 g/mL" },
            "salt": { "kind": "salt", "density": "2 g/mL", "as_scooped": "1.25 g/mL" },
            "stain": { "kind": "colorant", "density": "1 g/mL", "drop": "0.05 g" },
            "tint": { "kind": "colorant", "density": "1.25 g/mL", "drop": "0.05 g" },
        },
        "formulas": formulas, "molds": molds, "bench": bench, "limits": limits,
    })
}
