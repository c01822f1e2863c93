//! Invented days: a shop with any number of formulas, and orders for it.
//!
//! The same numbers give the same day on every machine.

use serde_json::{Map, Value, json};

/// Formulas that say what a color goes into; all others are colors.
const BODIES: [&str; 3] = ["plain", "soft", "salted"];

/// Molds: name, cavities, volume of one, sprue.
const MOLDS: [(&str, u32, &str, &str); 6] = [
    ("finger-5", 4, "9.5 mL", "6 mL"),
    ("paddle-4", 3, "10.8 mL", "5 mL"),
    ("minnow-3", 6, "4.2 mL", "5 mL"),
    ("grub-2", 8, "2.1 mL", "4 mL"),
    ("stick-6", 3, "13.4 mL", "6 mL"),
    ("tube-3", 4, "5.6 mL", "4 mL"),
];

const COLORANTS: u64 = 12;

/// Of so many order lines one is for a laminated piece.
const LINES_A_LAMINATE: u64 = 20;

/// Numbers without pattern, the same every time (Steele, Lea and Flood 2014: SplitMix64).
struct Numbers(u64);

impl Numbers {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// From `least` to `most`, both included.
    fn between(&mut self, least: u64, most: u64) -> u64 {
        least + self.next() % (most - least + 1)
    }

    fn pick<'a, T>(&mut self, list: &'a [T]) -> &'a T {
        let index = usize::try_from(self.between(0, list.len() as u64 - 1));
        &list[index.expect("an index of a list")]
    }
}

/// A shop's book with `formulas` formulas, as JSON text: three bodies, the others colors of one to
/// three colorants, some with flake.
///
/// # Panics
/// Fewer than four formulas leave no color.
#[must_use]
pub fn book(formulas: usize) -> String {
    assert!(formulas > BODIES.len(), "a shop needs a color");
    let mut numbers = Numbers(1);
    let mut list = bodies();
    for color in colors(formulas) {
        let mut doses = Map::new();
        for _ in 0..numbers.between(1, 3) {
            let colorant = colorant(numbers.between(1, COLORANTS));
            doses.insert(colorant, json!(format!("{} drops", numbers.between(12, 48))));
        }
        if numbers.between(1, 3) == 1 {
            doses.insert("flake".into(), json!(numbers.pick(&["1/2 tsp", "1 tsp"])));
        }
        list.insert(color, json!({ "per": "1 cup", "doses": doses }));
    }
    let molds: Map<String, Value> = MOLDS
        .iter()
        .map(|(name, cavities, cavity, sprue)| {
            let mold =
                json!({ "cavities": cavities, "cavity": cavity, "sprue": sprue, "feed": "50 %" });
            ((*name).to_owned(), mold)
        })
        .collect();
    json!({
        "format": "pourwright/1.0",
        "about": "Bench data: an invented shop.",
        "measures": "us-customary",
        "default_base": "base",
        "materials": materials(),
        "formulas": list,
        "molds": molds,
        "bench": {
            "balance": { "reads": "0.1 g", "from": "0.5 g", "to": "2 kg" },
            "spoons": ["1 tbsp", "1 tsp", "1/2 tsp", "1/4 tsp", "1/8 tsp"],
            "cups": [
                { "holds": "1 cup", "marks": "1/4 cup", "film": "3 g" },
                { "holds": "2 cup", "marks": "1/4 cup", "film": "5 g" },
                { "holds": "8 cup", "marks": "1/2 cup", "film": "8 g" },
            ],
            "injector": { "holds": "4 fl oz", "keeps": "4 mL", "count": 2 },
        },
        "limits": { "rejects": "3 %", "confidence": "90 %", "tolerance": "5 %", "solids": "20 %" },
    })
    .to_string()
}

/// A day of `lines` order lines for the shop with `formulas` formulas, as JSON text: 1 to 12 pieces
/// a line, of one color in one body; one line in twenty is for a piece of two colors.
///
/// # Panics
/// Fewer than four formulas leave no color.
#[must_use]
pub fn orders(lines: usize, formulas: usize) -> String {
    assert!(formulas > BODIES.len(), "a shop needs a color");
    let colors: Vec<String> = colors(formulas).collect();
    let mut numbers = Numbers(2);
    let lines: Vec<Value> = (0..lines)
        .map(|line| {
            let body = numbers.pick(&BODIES).to_owned();
            let mut line = json!({
                "order": (line / 3 + 1).to_string(),
                "mold": numbers.pick(&MOLDS).0,
                "pieces": numbers.between(1, 12),
                "promised": format!("2027-03-{:02}", numbers.between(1, 31)),
            });
            let (field, value) = if numbers.between(1, LINES_A_LAMINATE) == 1 {
                let (top, belly) = (numbers.pick(&colors), numbers.pick(&colors));
                let layers = json!([
                    { "formulas": [top, body], "share": "60 %" },
                    { "formulas": [belly, body], "share": "40 %" },
                ]);
                ("layers", layers)
            } else {
                ("formulas", json!([numbers.pick(&colors), body]))
            };
            line[field] = value;
            line
        })
        .collect();
    json!({ "format": "pourwright/1.0", "day": "2027-03-01", "lines": lines }).to_string()
}

fn colors(formulas: usize) -> impl Iterator<Item = String> {
    (1..=formulas - BODIES.len()).map(|number| format!("color-{number:04}"))
}

fn colorant(number: u64) -> String {
    format!("colorant-{number:02}")
}

fn bodies() -> Map<String, Value> {
    let doses = [
        json!({ "stabilizer": "1 tsp" }),
        json!({ "stabilizer": "1 tsp", "softener": "2 tsp" }),
        json!({ "stabilizer": "1 tsp", "softener": "1 tbsp", "fine-salt": "1/4 cup" }),
    ];
    let body = |doses: Value| json!({ "per": "1 cup", "base": "base", "doses": doses });
    BODIES.iter().zip(doses).map(|(name, doses)| ((*name).to_owned(), body(doses))).collect()
}

fn materials() -> Map<String, Value> {
    let mut materials = Map::new();
    let mut add = |name: String, material: Value| materials.insert(name, material);
    add(
        "base".into(),
        json!({
            "kind": "plastisol", "density": "1.03 g/mL", "fused": "1.042 g/mL",
            "expansion": "6.5e-4 1/K", "shot_window": ["325 °F", "350 °F"], "tolerance": "2 %",
        }),
    );
    add("softener".into(), json!({ "kind": "softener", "like": "dotp" }));
    add(
        "stabilizer".into(),
        json!({
            "kind": "stabilizer", "density": "1.02 g/mL", "expansion": "7e-4 1/K",
            "drop": "0.041 g", "tolerance": "10 %",
        }),
    );
    let salt = json!({ "kind": "salt", "like": "sodium-chloride", "as_scooped": "1.22 g/mL" });
    add("fine-salt".into(), salt);
    let flake = json!({
        "kind": "flake", "like": "pet-flake", "as_scooped": "0.55 g/mL", "tolerance": "10 %",
    });
    add("flake".into(), flake);
    for number in 1..=COLORANTS {
        let density = 1.02 + 0.03 * number as f64;
        let drop = 0.0425 * density;
        let material = json!({
            "kind": "colorant",
            "density": format!("{density:.2} g/mL"),
            "drop": format!("{drop:.3} g"),
        });
        add(colorant(number), material);
    }
    materials
}

#[cfg(test)]
mod tests {
    use pourwright::document::LoadedBook;
    use pourwright::plan::Plan;

    fn planned(lines: usize, formulas: usize) -> Plan {
        let book = LoadedBook::from_text(&super::book(formulas)).expect("a book");
        book.plan_text(&super::orders(lines, formulas)).expect("a plan").plan
    }

    #[test]
    fn an_invented_day_can_be_planned() {
        assert_eq!(planned(60, 20).lines.len(), 60);
    }

    // Pots that the bench can hardly dose are raised, and the day is not refused for them.
    #[test]
    fn a_large_day_is_planned_whole() {
        let plan = planned(1_000, 500);
        assert!(plan.assumptions.iter().any(|note| note.code == "pot-raised"));
        assert_eq!(plan.lines.len(), 1_000);
    }
}
