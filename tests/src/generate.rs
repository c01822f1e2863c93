//! Random shops and days, valid by construction, in amounts as a person writes them.
//!
//! A document is built from a list of random numbers, taken one after the other: the shrinking of that list towards
//! zero shrinks every choice towards its first and simplest.

use proptest::prelude::*;
use serde_json::{Map, Value, json};

/// A shop's book and a day's orders.
#[derive(Clone)]
pub struct Documents {
    /// The book.
    pub book: Value,
    /// The orders.
    pub orders: Value,
}

impl std::fmt::Debug for Documents {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "\n{}\n{}\n", self.book, self.orders)
    }
}

/// Books with orders that they can be asked for.
pub fn documents() -> impl Strategy<Value = Documents> {
    Choices::of(400).prop_map(day)
}

/// The same from numbers that are at hand.
#[must_use]
pub fn documents_of(numbers: Vec<u32>) -> Documents {
    day(Choices::from_numbers(numbers))
}

fn day(mut choices: Choices) -> Documents {
    let shop = Shop::choose(&mut choices);
    Documents { orders: shop.orders(&mut choices), book: shop.book }
}

/// Random numbers, taken one after the other; 0 once they are used up.
#[derive(Debug)]
pub(crate) struct Choices {
    numbers: Vec<u32>,
    next: usize,
}

impl Choices {
    /// These numbers.
    pub(crate) fn from_numbers(numbers: Vec<u32>) -> Self {
        Self { numbers, next: 0 }
    }

    /// `count` random numbers to begin with.
    pub(crate) fn of(count: usize) -> impl Strategy<Value = Self> {
        prop::collection::vec(any::<u32>(), count).prop_map(Self::from_numbers)
    }

    fn number(&mut self) -> u32 {
        self.next += 1;
        self.numbers.get(self.next - 1).copied().unwrap_or(0)
    }

    pub(crate) fn whole(&mut self, from: u32, to: u32) -> u32 {
        from + self.number() % (to - from + 1)
    }

    pub(crate) fn one_of<'a, T>(&mut self, all: &'a [T]) -> &'a T {
        &all[self.number() as usize % all.len()]
    }

    /// Whether something happens that does `in_ten` times of ten.
    pub(crate) fn happens(&mut self, in_ten: u32) -> bool {
        self.number() % 10 >= 10 - in_ten
    }

    /// A decimal with this number of places.
    pub(crate) fn decimal(&mut self, from: u32, to: u32, places: u32) -> String {
        let scaled = self.whole(from, to);
        let unit = 10_u32.pow(places);
        format!("{}.{:0width$}", scaled / unit, scaled % unit, width = places as usize)
    }
}

/// How sure a cavity is, where its measure says so.
fn unsure(c: &mut Choices) -> &'static str {
    c.one_of::<&str>(&["", " ± 0.1", " ± 2 %", ""])
}

const SYSTEMS: [&str; 4] = ["us-customary", "metric", "us-label", "imperial"];
const BODIES: [&str; 4] = ["plain", "salted", "soft", "blend"];
const COLORS: [&str; 4] = ["dusk", "reed", "shell", "ember"];

struct Shop {
    system: &'static str,
    molds: Vec<(String, Vec<String>)>,
    products: Vec<(String, usize)>,
    formulas: Vec<(&'static str, &'static str)>,
    book: Value,
}

impl Shop {
    fn choose(c: &mut Choices) -> Self {
        let system = *c.one_of(&SYSTEMS);
        let mut shop = Self {
            system,
            molds: Vec::new(),
            products: Vec::new(),
            formulas: Vec::new(),
            book: Value::Null,
        };
        for color in COLORS {
            for body in BODIES {
                shop.formulas.push((color, body));
            }
        }
        let materials = materials(c);
        let formulas = shop.formula_entries(c);
        let molds = shop.mold_entries(c);
        let products = shop.product_entries(c);
        shop.book = json!({
            "format": "pourwright/1.0",
            "shop": "a random shop",
            "measures": system,
            "default_base": "clear",
            "materials": materials,
            "formulas": formulas,
            "molds": molds,
            "products": products,
            "bench": shop.bench(c),
            "limits": shop.limits(c),
        });
        shop
    }

    /// A volume as a spoon has it; imperial measures have no spoons.
    fn spoon(&self, c: &mut Choices) -> String {
        if self.system == "imperial" {
            format!("{} mL", c.one_of(&["5", "2.5", "1.25", "10"]))
        } else {
            (*c.one_of(&["1 tsp", "1/2 tsp", "1/4 tsp", "3/4 tsp", "1 tbsp", "1/8 tsp"])).to_owned()
        }
    }

    fn formula_entries(&self, c: &mut Choices) -> Value {
        let per = |c: &mut Choices| {
            (*c.one_of(&["1 cup", "2 cup", "3 cup", "250 g", "1/2 cup"])).to_owned()
        };
        let mut formulas = Map::new();
        formulas.insert(
            "plain".into(),
            json!({ "per": per(c), "base": "clear", "doses": self.heat(c) }),
        );
        let salt = match c.whole(0, 3) {
            0 => "1/4 cup".to_owned(),
            1 => format!("{} % of base", c.decimal(50, 300, 1)),
            2 => format!("{} % of finished", c.decimal(50, 250, 1)),
            _ => format!("{} % of finished by volume", c.decimal(20, 90, 1)),
        };
        let mut doses = self.heat(c);
        doses.insert("salt".into(), salt.into());
        doses.insert("softener".into(), format!("{} % of base", c.decimal(10, 90, 1)).into());
        formulas
            .insert("salted".into(), json!({ "per": "1 cup", "base": "clear", "doses": doses }));
        let mut doses = self.heat(c);
        let softener = match c.whole(0, 2) {
            0 => format!("{} % of base by volume", c.whole(2, 30)),
            1 => format!("{} % of finished by volume", c.whole(2, 20)),
            _ => "2 fl oz".to_owned(),
        };
        let softener = if softener.ends_with("oz") && self.system == "metric" {
            "60 mL".to_owned()
        } else {
            softener
        };
        doses.insert("softener".into(), softener.into());
        formulas.insert("soft".into(), json!({ "per": "1 cup", "doses": doses }));
        let blend = if c.happens(5) {
            json!({ "clear": format!("{} cup", c.whole(1, 3)), "firm": format!("{} cup", c.whole(1, 3)) })
        } else {
            json!({ "clear": format!("{} g", c.whole(50, 500)), "firm": format!("{} g", c.whole(50, 500)) })
        };
        formulas
            .insert("blend".into(), json!({ "per": per(c), "base": blend, "doses": self.heat(c) }));
        for color in COLORS {
            let mut doses = Map::new();
            for colorant in ["plum", "moss"] {
                if doses.is_empty() || c.happens(4) {
                    let dose = match c.whole(0, 3) {
                        0 => format!("{} drops", c.whole(20, 60)),
                        1 => format!("{} g", c.decimal(80, 400, 2)),
                        2 => self.spoon(c),
                        _ => format!("{} % of base", c.decimal(30, 150, 2)),
                    };
                    doses.insert(colorant.into(), dose.into());
                }
            }
            for powder in ["pearl", "flake"] {
                if c.happens(4) {
                    doses.insert(powder.into(), self.spoon(c).into());
                }
            }
            formulas.insert(color.into(), json!({ "per": per(c), "doses": doses }));
        }
        Value::Object(formulas)
    }

    /// Heat stabilizer, in most bodies.
    fn heat(&self, c: &mut Choices) -> Map<String, Value> {
        let mut doses = Map::new();
        if c.happens(7) {
            doses.insert("stabilizer".into(), format!("{} % of base", c.decimal(10, 40, 1)).into());
        }
        doses
    }

    fn mold_entries(&mut self, c: &mut Choices) -> Value {
        let mut molds = Map::new();
        for index in 0..c.whole(2, 4) {
            let mut mold = Map::new();
            let mut shapes = Vec::new();
            if c.happens(3) {
                let mut cavities = Map::new();
                for shape in ["long", "short", "tail"].iter().take(c.whole(1, 3) as usize) {
                    shapes.push((*shape).to_owned());
                    let entry = json!({ "count": c.whole(1, 4), "cavity": format!("{} mL{}", c.decimal(10, 120, 1), unsure(c)) });
                    cavities.insert((*shape).into(), entry);
                }
                mold.insert("cavities".into(), cavities.into());
            } else {
                mold.insert("cavities".into(), c.whole(1, 8).into());
                let cavity = if c.happens(3) {
                    json!({ "water": format!("{} g{}", c.decimal(200, 1200, 2), unsure(c)), "at": format!("{} °C", c.whole(5, 35)) })
                } else {
                    json!(format!("{} mL{}", c.decimal(15, 130, 1), unsure(c)))
                };
                mold.insert("cavity".into(), cavity);
            }
            let mut maybe = |c: &mut Choices, key: &str, in_ten, text: String| {
                if c.happens(in_ten) {
                    mold.insert(key.into(), text.into());
                }
            };
            let sprue = format!("{} mL", c.decimal(5, 90, 1));
            maybe(c, "sprue", 9, sprue);
            let feed = format!("{} %", c.whole(0, 100));
            maybe(c, "feed", 6, feed);
            let voids = format!("{} %", c.decimal(0, 30, 1));
            maybe(c, "voids", 3, voids);
            let rejects = format!("{} %", c.whole(0, 15));
            maybe(c, "rejects", 3, rejects);
            let top = format!("{} g", c.decimal(0, 20, 1));
            maybe(c, "top", 2, top);
            let name = format!("mold {index}");
            molds.insert(name.clone(), mold.into());
            self.molds.push((name, shapes));
        }
        Value::Object(molds)
    }

    fn layers(&self, c: &mut Choices) -> Value {
        let count = if c.happens(2) { 3 } else { 2 };
        let first = c.whole(1, 7) * 10;
        let shares =
            if count == 2 { vec![first, 100 - first] } else { vec![first, 20, 80 - first] };
        let layers: Vec<Value> = shares
            .iter()
            .zip(COLORS)
            .map(|(share, color)| {
                let body = *c.one_of(&BODIES);
                json!({ "formulas": [color, body], "share": format!("{share} %") })
            })
            .collect();
        layers.into()
    }

    fn formulas_of(&self, c: &mut Choices) -> Value {
        let (color, body) = *c.one_of(&self.formulas);
        if c.happens(2) { json!([body]) } else { json!([color, body]) }
    }

    fn product_entries(&mut self, c: &mut Choices) -> Value {
        let mut products = Map::new();
        for index in 0..c.whole(2, 6) {
            let mold = c.whole(0, self.molds.len() as u32 - 1) as usize;
            let name = format!("product {index}");
            let mut product = json!({ "mold": self.molds[mold].0 });
            if c.happens(3) {
                product["layers"] = self.layers(c);
            } else {
                product["formulas"] = self.formulas_of(c);
            }
            products.insert(name.clone(), product);
            self.products.push((name, mold));
        }
        Value::Object(products)
    }

    fn bench(&self, c: &mut Choices) -> Value {
        let spoons = if self.system == "imperial" {
            json!(["5 mL", "2.5 mL", "1.25 mL"])
        } else {
            json!(["1/4 tsp", "1 tsp", "1 tbsp", "1/8 tsp", "1/2 tsp"])
        };
        let mut cups = Vec::new();
        for (holds, marks) in [
            ("1 cup", "1/4 cup"),
            ("2 cup", "1/4 cup"),
            ("4 cup", "1/2 cup"),
            ("12 cup", "1/2 cup"),
        ] {
            let mut cup = json!({ "holds": holds, "marks": marks });
            if c.happens(5) {
                cup["film"] = format!("{} g", c.decimal(0, 90, 1)).into();
            }
            if c.happens(3) {
                cup["heel"] = format!("{} g", c.whole(0, 60)).into();
            }
            cups.push(cup);
        }
        let mut injector = json!({ "holds": format!("{} mL", c.whole(110, 300)), "count": 3 });
        if c.happens(7) {
            injector["keeps"] = format!("{} mL", c.whole(0, 9)).into();
        }
        let mut bench = json!({ "spoons": spoons, "cups": cups, "injector": injector });
        if c.happens(9) {
            let reads = *c.one_of(&["0.1 g", "0.01 g", "0.05 g", "0.25 g"]);
            bench["balance"] = json!({ "reads": reads, "from": "0.5 g", "to": "600 g" });
        }
        bench
    }

    fn limits(&self, c: &mut Choices) -> Value {
        let mut limits = Map::new();
        let mut maybe = |c: &mut Choices, key: &str, text: String| {
            if c.happens(5) {
                limits.insert(key.into(), text.into());
            }
        };
        let rejects = format!("{} %", c.whole(0, 12));
        maybe(c, "rejects", rejects);
        let confidence = format!("{} %", c.whole(50, 99));
        maybe(c, "confidence", confidence);
        let tolerance = format!("{} %", c.whole(3, 15));
        maybe(c, "tolerance", tolerance);
        let solids = format!("{} %", c.whole(15, 40));
        maybe(c, "solids", solids);
        let most_full = format!("{} %", c.whole(60, 100));
        maybe(c, "most_full", most_full);
        maybe(c, "least_pot", "1/2 cup".to_owned());
        Value::Object(limits)
    }

    fn orders(&self, c: &mut Choices) -> Value {
        let lines: Vec<Value> = (0..c.whole(1, 7)).map(|index| self.line(c, index)).collect();
        json!({ "format": "pourwright/1.0", "day": "2027-03-02", "lines": lines })
    }

    fn line(&self, c: &mut Choices, index: u32) -> Value {
        let mut line = json!({ "order": format!("{}", 30 + index / 2) });
        let mold = if c.happens(7) {
            let (name, mold) = c.one_of(&self.products);
            line["product"] = name.as_str().into();
            *mold
        } else {
            let mold = c.whole(0, self.molds.len() as u32 - 1) as usize;
            line["mold"] = self.molds[mold].0.as_str().into();
            if c.happens(2) {
                line["layers"] = self.layers(c);
            } else {
                line["formulas"] = self.formulas_of(c);
                if c.happens(2) {
                    line["overlap"] = (*c.one_of(&["add", "last"])).into();
                }
            }
            mold
        };
        let shapes = &self.molds[mold].1;
        if !shapes.is_empty() {
            line["shape"] = c.one_of(shapes).as_str().into();
        }
        if c.happens(3) {
            line["packs"] = c.whole(1, 8).into();
            line["pack_of"] = c.whole(1, 10).into();
        } else {
            line["pieces"] = c.whole(1, 80).into();
        }
        if c.happens(5) {
            line["promised"] = format!("2027-03-{:02}", c.whole(1, 28)).into();
        }
        if c.happens(2) {
            line["ext"] = json!({ "row": index, "note": ["kept", null, 0.1] });
        }
        line
    }
}

fn materials(c: &mut Choices) -> Value {
    let mut materials = Map::new();
    let window = [(325, 350), (330, 360), (320, 345)];
    for (name, from, to) in [("clear", 980, 1060), ("firm", 1050, 1150)] {
        let mut plastisol = json!({ "kind": "plastisol", "density": format!("{} g/mL ± 0.01", c.decimal(from, to, 3)) });
        if c.happens(7) {
            plastisol["fused"] = json!({ "value": format!("{} g/mL", c.decimal(from + 5, to + 20, 3)), "source": "x" });
        }
        if c.happens(7) {
            plastisol["expansion"] = format!("0.000{} 1/K", c.whole(400, 800)).into();
        }
        if c.happens(8) {
            let (low, high) = *c.one_of(&window);
            plastisol["shot_window"] = json!([format!("{low} °F"), format!("{high} °F")]);
        }
        if c.happens(3) {
            plastisol["tolerance"] = "2 %".into();
        }
        materials.insert(name.into(), plastisol);
    }
    materials.insert(
        "softener".into(),
        json!({ "kind": "softener", "like": c.one_of(&["dotp", "dinp", "deha"]) }),
    );
    materials.insert(
        "salt".into(),
        json!({ "kind": "salt", "like": "sodium-chloride", "as_scooped": { "value": 1.2, "unit": "g/mL" } }),
    );
    materials.insert(
        "stabilizer".into(),
        json!({ "kind": "stabilizer", "density": "1.02 g/mL", "expansion": "0.0007 1/K", "tolerance": "10 %" }),
    );
    for name in ["plum", "moss"] {
        let mut colorant =
            json!({ "kind": "colorant", "density": format!("{} g/mL", c.decimal(100, 145, 2)) });
        match c.whole(0, 3) {
            0 => {}
            1 => colorant["drop"] = "0.04 mL".into(),
            _ => colorant["drop"] = format!("{} g ± 0.003", c.decimal(30, 60, 3)).into(),
        }
        materials.insert(name.into(), colorant);
    }
    materials.insert(
        "pearl".into(),
        json!({ "kind": "pearl", "like": "mica-muscovite", "as_scooped": "0.31 g/mL ± 0.04", "tolerance": "10 %" }),
    );
    materials.insert(
        "flake".into(),
        json!({ "kind": "flake", "density": "1.38 g/mL", "as_scooped": format!("{} g/mL", c.decimal(40, 70, 2)), "tolerance": "10 %" }),
    );
    Value::Object(materials)
}
