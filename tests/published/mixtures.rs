use pourwright::formula::{Dose, Formula, Overlap, Recipe};
use pourwright::material::{Kind, Material};
use pourwright::mix::{MaterialId, Materials, Mix, Phase, reference_temperature};
use pourwright::quantity::{
    Amount, Mass, MassDensity, Measurable, Measured, System, ThermodynamicTemperature, Volume,
};
use pourwright::uom::si::mass::gram;
use pourwright::uom::si::mass_density::gram_per_cubic_centimeter;
use pourwright::uom::si::volume::milliliter;
use pourwright_tests::demo::BOOK;
use serde_json::Value;

use crate::rows::{self, Row};

fn g(x: f64) -> Mass {
    Mass::new::<gram>(x)
}

fn material(name: &str, kind: Kind, g_per_ml: f64) -> Material {
    let mut material = Material::new(name, kind);
    material.density =
        Some(Measured::exact(MassDensity::new::<gram_per_cubic_centimeter>(g_per_ml)));
    material
}

fn mix(masses: &[f64]) -> Mix {
    let mut mix = Mix::new();
    for (place, &mass) in (0..).zip(masses) {
        mix.add(MaterialId(place), g(mass)).unwrap();
    }
    mix
}

/// PVC resin as base, and parts of plasticizer to a hundred of it.
fn plasticized(row: &Row, (resin, plasticizer): (f64, f64)) -> (Mix, Materials) {
    let materials = Materials::new(vec![
        material("a resin", Kind::Plastisol, resin),
        material("b plasticizer", Kind::Softener, plasticizer),
    ]);
    let dose = |material: u32, text: &str| Dose {
        material: MaterialId(material),
        amount: Amount::parse(text).unwrap(),
    };
    let formula = Formula {
        name: row.id.clone(),
        per: None,
        color: None,
        base: vec![dose(0, "1 g")],
        doses: vec![dose(1, &format!("{} % of base", row.number("phr")))],
    };
    let recipe =
        Recipe::combine(&[&formula], Overlap::Refuse, None, &materials, System::Metric).unwrap();
    let mix = recipe.for_base(g(100.0)).unwrap();
    assert!(
        (mix.parts_per_hundred(MaterialId(1), &materials).unwrap() - row.number("phr")).abs()
            < 1e-12
    );
    (mix, materials)
}

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().expect("a list").iter().map(|x| x.as_f64().expect("a number")).collect()
}

/// The share of the first constituent, in per cent, in a mix of (mass, per cent) portions.
fn strength(portions: &[(f64, f64)]) -> f64 {
    let mut all = Mix::new();
    for (mass, percent) in portions {
        let active = mass * percent / 100.0;
        all.merge(&mix(&[active, mass - active])).unwrap();
    }
    100.0 * all.mass_fraction(MaterialId(0))
}

/// The mass to add of strength `c2` that brings `mass` of `c1` to `target`: a bisection on the mixes themselves.
fn to_add(mass: f64, c1: f64, c2: f64, target: f64) -> f64 {
    let (mut low, mut high) = (0.0, 1e6);
    for _ in 0..200 {
        let middle = (low + high) / 2.0;
        let reached = strength(&[(mass, c1), (middle, c2)]);
        if (reached > target) == (c1 > target) { low = middle } else { high = middle }
    }
    (low + high) / 2.0
}

/// Amounts of the demo's color formulas for one cup of base: drops of all colorants together, and level teaspoons of
/// each powder of `kind`.
fn in_the_demo(kind: Kind) -> Vec<f64> {
    let book = pourwright::document::LoadedBook::from_text(BOOK).unwrap();
    let book = book.ready();
    let cup: Volume = Amount::parse("1 cup").unwrap().to(book.system).unwrap();
    let mut found = Vec::new();
    for name in ["dusk", "reed", "shell", "ember", "night"] {
        let formula = &book.formulas[book.find_formula(name).unwrap()];
        let (base, system) = (book.default_base, book.system);
        let recipe =
            Recipe::combine(&[formula], Overlap::Refuse, base, &book.materials, system).unwrap();
        let mix = recipe.for_base(cup * recipe.base_density(&book.materials).unwrap()).unwrap();
        let amounts = recipe.additives().iter().filter_map(|one| {
            let material = book.materials.get(one.material).unwrap();
            let mass = mix.mass_of(one.material);
            let scooped = material.scooped_density("a spoon").map(|density| density.scoop_of(mass));
            (material.kind == kind).then(|| match scooped {
                Ok(volume) => 48.0 * (volume / cup).value,
                Err(_) => (mass / material.drop_mass("a count").unwrap()).value,
            })
        });
        let amounts: Vec<f64> = amounts.collect();
        if kind == Kind::Colorant {
            found.push(amounts.iter().sum());
        } else {
            found.extend(amounts);
        }
    }
    found
}

#[test]
fn mixtures() {
    for row in rows::read("mixtures") {
        let got = match row.id.as_str() {
            id if id.starts_with("i-sg-plastisol") => {
                let densities = (row.number("rho_resin"), row.number("rho_plasticiser"));
                let (mix, materials) = plasticized(&row, densities);
                let at = reference_temperature();
                let density = mix.density(&materials, Phase::Liquid, at, 0.0).unwrap();
                density.get::<gram_per_cubic_centimeter>()
            }
            id if id.starts_with("i-phr") => {
                100.0 * plasticized(&row, (1.4, 0.98)).0.mass_fraction(MaterialId(1))
            }
            "i-all-81" | "i-all-12" | "i-all-14" => {
                to_add(row.number("m1_g"), row.number("c1"), row.number("c2"), row.number("target"))
            }
            "i-all-hc" => {
                let added = to_add(
                    row.number("m2_g"),
                    row.number("c2"),
                    row.number("c1"),
                    row.number("target"),
                );
                (added * 1e9).round() / 1e9
            }
            "i-all-3" => {
                // The printed parts come to the target.
                let parts: Vec<(f64, f64)> =
                    numbers(&row.expected).into_iter().zip(numbers(&row.inputs["c"])).collect();
                assert!((strength(&parts) - row.number("target")).abs() < 1e-12);
                continue;
            }
            "i-all-drop" => {
                let (parts, c) = (numbers(&row.inputs["parts"]), numbers(&row.inputs["c"]));
                let whole =
                    mix(&parts).scaled(row.number("total_mL") / parts.iter().sum::<f64>()).unwrap();
                assert!(
                    (strength(&[(parts[0], c[0]), (parts[1], c[1])]) - row.number("target")).abs()
                        < 1e-12
                );
                whole.mass_of(MaterialId(0)).get::<gram>()
            }
            "i-sg-volume" => {
                let parts = numbers(&row.inputs["parts"]);
                let whole =
                    mix(&parts).scaled(row.number("total_g") / parts.iter().sum::<f64>()).unwrap();
                let tar = mix(&[whole.mass_of(MaterialId(0)).get::<gram>()]);
                let table = Materials::new(vec![material("tar", Kind::Other, row.number("sg"))]);
                tar.volume(&table, Phase::Liquid).unwrap().get::<milliliter>()
            }
            "i-fold" => {
                let parts = numbers(&row.inputs["parts"]);
                let whole = mix(&parts);
                let scaled =
                    whole.scaled(row.number("total_g") / whole.mass().get::<gram>()).unwrap();
                for (portion, expected) in scaled.portions().iter().zip(numbers(&row.expected)) {
                    // Exact but for the gram, which is a thousandth of the kilogram that is computed in.
                    assert!((portion.mass.get::<gram>() - expected).abs() <= 1e-15 * 25.0);
                }
                assert_eq!(scaled.portions().len(), numbers(&row.expected).len());
                continue;
            }
            "i-pct-9-items" => {
                // The batch in which the item has its per cent of the finished mass.
                let share = row.number("pct_of_finished");
                let materials = Materials::new(vec![
                    material("a base", Kind::Plastisol, 1.0),
                    material("b item", Kind::Other, 1.0),
                ]);
                let amount = Amount::parse(&format!("{share} % of finished")).unwrap();
                let formula = Formula {
                    name: "x".into(),
                    per: None,
                    color: None,
                    base: vec![Dose {
                        material: MaterialId(0),
                        amount: Amount::parse("1 g").unwrap(),
                    }],
                    doses: vec![Dose { material: MaterialId(1), amount }],
                };
                let system = System::Metric;
                let recipe =
                    Recipe::combine(&[&formula], Overlap::Refuse, None, &materials, system)
                        .unwrap();
                let one = recipe.for_mass(g(1.0)).unwrap();
                let batch = row.number("m_g") / one.mass_of(MaterialId(1)).get::<gram>();
                (batch * 1e9).round() / 1e9
            }
            // Rules of the trade (common practice, no source): the demo's doses keep to them.
            "k-pearl" | "k-flake-fine" | "k-colorant" => {
                let kind = match row.id.as_str() {
                    "k-pearl" => Kind::Pearl,
                    "k-flake-fine" => Kind::Flake,
                    _ => Kind::Colorant,
                };
                let doses = in_the_demo(kind);
                assert!(!doses.is_empty());
                doses.into_iter().for_each(|dose| row.check(dose));
                continue;
            }
            "k-shot-temperature" => {
                // The demo's plastisol is shot at the middle of its window.
                let book = pourwright::document::LoadedBook::from_text(BOOK).unwrap();
                let book = book.ready();
                let clear = book.materials.get(book.default_base.unwrap()).unwrap();
                fahrenheit(clear.shot_window.unwrap().middle())
            }
            "k-scale-not-double" => {
                let one = mix(&[1.0]).scaled(row.number("cups")).unwrap();
                one.mass_of(MaterialId(0)).get::<gram>()
            }
            other => panic!("{other} has no check"),
        };
        row.check(got);
    }
}

fn fahrenheit(at: ThermodynamicTemperature) -> f64 {
    (at.si() - 273.15) * 1.8 + 32.0
}
