use pourwright::document::LoadedBook;
use pourwright::formula::{Formula, Overlap, Recipe};
use pourwright::material::{Kind, Material};
use pourwright::mix::{MaterialId, Materials, Mix, Phase};
use pourwright::quantity::{
    Measurable, Measured, TemperatureCoefficient, ThermodynamicTemperature,
};
use pourwright_tests::demo::{STARTER, json};
use pourwright_tests::generate::documents;
use pourwright_tests::reference::mix as plain;
use pourwright_tests::reference::shop::Shop;
use proptest::prelude::*;

use crate::units::{close, g, in_g, per_ml};

proptest! {
    #[test]
    fn mixes_agree(
        parts in prop::collection::vec((0.0..900.0, 0.5..4.5, 0.0..9e-4), 1..9),
        (celsius, voids) in (-20.0..220.0, 0.0..0.3),
    ) {
        let parts: Vec<plain::Part> = parts
            .into_iter()
            .map(|(mass_g, density_g_per_ml, expansion_per_k)| plain::Part {
                mass_g,
                density_g_per_ml,
                expansion_per_k,
            })
            .collect();
        let mut materials = Vec::new();
        let mut mix = Mix::new();
        for (index, part) in (0_u32..).zip(&parts) {
            let mut material = Material::new(format!("m{index}"), Kind::Other);
            material.density = Some(Measured::exact(per_ml(part.density_g_per_ml)));
            material.expansion =
                Some(Measured::exact(TemperatureCoefficient::from_si(part.expansion_per_k)));
            materials.push(material);
            mix.add(MaterialId(index), g(part.mass_g)).unwrap();
        }
        let materials = Materials::new(materials);
        let at = ThermodynamicTemperature::from_si(celsius + 273.15);
        prop_assert!(close(in_g(mix.mass()), plain::mass_g(&parts), 1e-14));
        let volume = mix.volume_at(&materials, Phase::Liquid, at).unwrap();
        prop_assert!(close(volume.si() * 1e6, plain::volume_ml(&parts, celsius), 1e-13));
        if plain::mass_g(&parts) > 0.0 {
            let density = mix.density(&materials, Phase::Liquid, at, voids).unwrap();
            let expected = plain::density_g_per_ml(&parts, celsius, voids);
            prop_assert!(close(density.si() / 1e3, expected, 1e-13));
        }
    }

    #[test]
    fn finished_masses_agree(
        of_base in prop::collection::vec(0_u32..400, 0..4),
        of_finished in prop::collection::vec(0_u32..240, 0..4),
    ) {
        let share = |&thousandths: &u32| f64::from(thousandths) / 1000.0;
        let per_base: Vec<f64> = of_base.iter().map(share).collect();
        let finished: Vec<f64> = of_finished.iter().map(share).collect();
        let text = |thousandths: &u32, of: &str| format!("{}.{} % of {of}", thousandths / 10, thousandths % 10);
        let doses: serde_json::Map<String, serde_json::Value> = of_base
            .iter()
            .map(|share| text(share, "base"))
            .chain(of_finished.iter().map(|share| text(share, "finished")))
            .enumerate()
            .map(|(index, text)| (format!("m{index}"), text.into()))
            .collect();
        let book = one_formula(doses);
        let book = LoadedBook::from_text(&book).unwrap_or_else(|faults| panic!("{faults}"));
        let book = book.ready();
        let recipe = Recipe::combine(
            &[&book.formulas[0]], Overlap::Refuse, None, &book.materials, book.system,
        ).unwrap();
        let got = in_g(recipe.for_base(g(250.0)).unwrap().mass());
        prop_assert!(close(got, plain::finished_g(250.0, &per_base, &finished), 1e-13));
    }

    #[test]
    fn recipes_agree(documents in documents()) {
        let starter = json(STARTER);
        let shop = Shop::new(&documents.book, &starter);
        let text = documents.book.to_string();
        let book = LoadedBook::from_text(&text).unwrap_or_else(|faults| panic!("{faults}"));
        let book = book.ready();
        for color in ["dusk", "reed", "shell", "ember"] {
            for body in ["plain", "salted", "soft", "blend"] {
                let formulas: Vec<&Formula> = [color, body]
                    .iter()
                    .map(|name| &book.formulas[book.find_formula(name).unwrap()])
                    .collect();
                let got = Recipe::combine(
                    &formulas, Overlap::Refuse, book.default_base, &book.materials, book.system,
                ).unwrap();
                let plain = shop.recipe(&[color, body], "refuse");
                for (name, part) in plain.base.iter().chain(&plain.additives) {
                    let material = book.materials.find(name).unwrap();
                    let found = got.ingredients().find(|one| one.material == material);
                    let ratio = found.map_or(0.0, |one| one.ratio);
                    prop_assert!(close(ratio, *part, 1e-12), "{name}: {ratio}, {part}");
                }
                let count = plain.base.len() + plain.additives.len();
                prop_assert_eq!(got.ingredients().count(), count);
            }
        }
    }
}

/// A book with one formula on one base, its doses of materials m0, m1, ...
fn one_formula(doses: serde_json::Map<String, serde_json::Value>) -> String {
    let mut materials = serde_json::Map::new();
    for name in doses.keys() {
        materials.insert(name.clone(), serde_json::json!({ "kind": "other" }));
    }
    materials.insert("base".into(), serde_json::json!({ "kind": "plastisol" }));
    serde_json::json!({
        "format": "pourwright/1.0",
        "measures": "metric",
        "materials": materials,
        "formulas": { "one": { "base": "base", "doses": doses } },
        "molds": {},
        "bench": { "cups": [{ "holds": "1 cup" }], "injector": { "holds": "100 mL" } }
    })
    .to_string()
}
