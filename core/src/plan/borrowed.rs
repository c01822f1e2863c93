//! Numbers that a day needs and its book does not state: what is assumed for them, how unsure that is, and which to
//! measure first.
//!
//! The gain of measuring a number is the relative standard uncertainty that it gives the mass of a piece: for a true
//! density its share of the volume times its own uncertainty, for a spoonful or a drop its share of the mass times that;
//! at the recipe of the day where it is largest.

use alloc::format;
use alloc::rc::Rc;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::day::DayRecipe;
use crate::book::Book;
use crate::codes::code;
use crate::fault::{Diagnose, Fault, Faults};
use crate::formula::{Ingredient, WrittenIn};
use crate::material::{Material, Property, pharmacy_drop};
use crate::mix::{Mix, MixError, Phase};
use crate::quantity::{Mass, MassDensity, Measurable, Measured, Ratio, Volume};
use crate::show::{Showable, Shown, part, text};

part! {
    /// A number that the book does not state, and what the plan assumes for it.
    pub struct Borrowed {
        /// Stable code in kebab case.
        pub code: String,
        /// The material.
        pub material: String,
        /// The property.
        pub property: Property,
        /// The assumed value, as a book writes it: `1.03 g/mL ± 0.03`.
        pub value: String,
        /// Its standard uncertainty, relative.
        pub uncertainty: Shown<Ratio>,
        /// Its source.
        pub source: String,
        /// Relative uncertainty of a piece's mass that measuring it would remove: the maximum of the day's recipes.
        pub gain: Shown<Ratio>,
        /// How to measure it.
        pub how: String,
    }
}

/// Numbers that `recipes` need and `book` does not state, the largest gain first.
pub(super) fn borrowed(
    recipes: &[Rc<DayRecipe<'_>>],
    book: &Book,
) -> Result<Vec<Borrowed>, Faults> {
    gathered(recipes, book).map_err(|error| Faults::from(Fault::at(String::new(), &error)))
}

fn gathered(recipes: &[Rc<DayRecipe<'_>>], book: &Book) -> Result<Vec<Borrowed>, MixError> {
    let mut all: Vec<Borrowed> = Vec::new();
    for day in recipes {
        let recipe = &day.recipe;
        let mix = recipe.for_mass(Mass::from_si(1.0))?;
        for ingredient in recipe.ingredients() {
            for one in of_ingredient(ingredient, &mix, book)? {
                let is_same = |other: &&mut Borrowed| {
                    (&other.material, other.property) == (&one.material, one.property)
                };
                match all.iter_mut().find(is_same) {
                    Some(other) if other.gain.quantity >= one.gain.quantity => {}
                    Some(other) => *other = one,
                    None => all.push(one),
                }
            }
        }
    }
    all.sort_by(|a, b| {
        let gain = b.gain.quantity.value.total_cmp(&a.gain.quantity.value);
        gain.then_with(|| (&a.material, a.property).cmp(&(&b.material, b.property)))
    });
    Ok(all)
}

/// Borrowed properties behind one material of a mix.
fn of_ingredient(
    ingredient: &Ingredient,
    mix: &Mix,
    book: &Book,
) -> Result<Vec<Borrowed>, MixError> {
    let material = book.materials.get(ingredient.material)?;
    let by_mass = (mix.mass_of(ingredient.material) / mix.mass()).value;
    let by_volume = mix.volume_fraction(ingredient.material, &book.materials, Phase::Fused)?;
    let is_spooned = ingredient.written == WrittenIn::Volume || book.tools.balance().is_none();
    let mut found = Vec::new();
    for &property in &material.borrowed {
        let (density, share) = match property {
            Property::Density => (&material.density, by_volume),
            Property::AsScooped if is_spooned => (&material.as_scooped, by_mass),
            _ => continue,
        };
        found.extend(
            density.as_ref().and_then(|density| of_density(material, property, density, share)),
        );
    }
    if ingredient.written == WrittenIn::Drops && !material.drop_is_calibrated() {
        let unsure = book.unsure.unweighed_drop;
        let milliliters = |drop: Volume| drop.shown_value();
        found.push(Borrowed {
            code: code!("pharmacy-drop").to_string(),
            material: material.name.clone(),
            property: Property::Drop,
            value: format!(
                "{} mL ± {:.3}",
                milliliters(pharmacy_drop()),
                milliliters(pharmacy_drop() * unsure)
            ),
            uncertainty: text::percent(unsure),
            source: "20 drops a mL: pharmacy practice, UCUM [drp]".to_string(),
            gain: text::percent(unsure * by_mass),
            how: how(material, Property::Drop),
        });
    }
    Ok(found)
}

fn of_density(
    material: &Material,
    property: Property,
    density: &Measured<MassDensity>,
    share: f64,
) -> Option<Borrowed> {
    let uncertainty = density.uncertainty?;
    let unsure = uncertainty / density.value;
    let code = match property {
        Property::AsScooped => code!("scooped-density-borrowed"),
        _ => code!("density-borrowed"),
    };
    Some(Borrowed {
        code: code.to_string(),
        material: material.name.clone(),
        property,
        value: format!("{} ± {}", text::density(density.value).text, uncertainty.shown_value()),
        uncertainty: text::percent(unsure),
        source: density.source.clone().unwrap_or_default(),
        gain: text::percent(unsure * share),
        how: how(material, property),
    })
}

/// How to measure a property, and where the book has it.
fn how(material: &Material, property: Property) -> String {
    let missing = crate::material::MaterialError::Missing {
        material: material.name.clone(),
        property,
        purpose: "",
    };
    missing.help().into_owned()
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use serde_json::{Value, json};

    use super::*;
    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text};
    use crate::plan::Plan;

    /// A book that states of its materials what they are, and no number.
    fn begun() -> Value {
        let mut book: Value = serde_json::from_str(BOOK).unwrap();
        book["materials"] = json!({
            "clear": { "kind": "plastisol" },
            "blue": { "kind": "colorant" },
            "salt": { "kind": "salt" },
        });
        book["formulas"] = json!({
            "sky": { "per": "1 cup", "doses": { "blue": "40 drops" } },
            "body": { "per": "1 cup", "base": "clear", "doses": { "salt": "1/4 cup" } },
        });
        book["products"] = json!({ "sky worm": { "mold": "worm", "formulas": ["sky", "body"] } });
        book
    }

    fn plan(book: &Value) -> Plan {
        let book = book_from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"));
        let line = r#"{ "order": "1", "product": "sky worm", "pieces": 12 }"#;
        let day = orders_from_text(&orders(line), &book).unwrap();
        Plan::make(&book, &day).unwrap_or_else(|faults| panic!("{faults}"))
    }

    fn asked(plan: &Plan) -> Vec<(&str, Property)> {
        plan.borrowed.iter().map(|one| (&*one.material, one.property)).collect()
    }

    // A quarter cup of salt to a cup: 0.20 to 0.25 of the mass, 1.14 to 1.19 g/mL (common practice, no source).
    #[test]
    fn a_book_can_be_begun_without_weighing() {
        let plan = plan(&begun());
        let stage = &plan.pots[0].stages[0];
        let density = stage.density.quantity.shown_value();
        assert!((1.14..1.19).contains(&density), "{density}");
        let salt = stage.weigh.iter().find(|one| one.material == "salt").unwrap();
        let share = (salt.best.gives.quantity / stage.holds.quantity).value;
        assert!((0.20..0.25).contains(&share), "{share}");
        // What is borrowed is less sure than what is stated: never without its ±.
        assert!(stage.density_uncertainty.is_some());
    }

    // By hand, of 1 g: 0.78 g base, 0.22 g salt, 0.6 % color; by volume 0.87 base, 0.12 salt, 0.6 % color.
    // Salt as scooped 0.22 · 12.3 % = 2.8 %; base 0.87 · 2.9 % = 2.5 %; drop 0.7 % · 29 % = 0.2 %; grains 0.12 · 0.9 % =
    // 0.1 %; color 0.7 % · 9 % = 0.06 %.
    #[test]
    fn what_would_gain_most_is_measured_first() {
        let plan = plan(&begun());
        let expected = [
            ("salt", Property::AsScooped),
            ("clear", Property::Density),
            ("blue", Property::Drop),
            ("salt", Property::Density),
            ("blue", Property::Density),
        ];
        assert_eq!(asked(&plan), expected);
        let gain: Vec<f64> = plan.borrowed.iter().map(|one| one.gain.quantity.value).collect();
        for (found, expected) in gain.iter().zip([0.028, 0.0253, 0.0019, 0.0011, 0.0006]) {
            assert!((found - expected).abs() < 0.05 * expected + 1e-4, "{gain:?}");
        }
        let first = &plan.borrowed[0];
        assert_eq!(
            (&*first.code, &*first.value),
            ("scooped-density-borrowed", "1.217 g/mL ± 0.15")
        );
        assert!(
            first.source.contains("starter table") && first.how.contains("ten level spoonfuls")
        );
        assert_eq!(plan.borrowed[1].source, "common practice, no source");
        let sheet = plan.notes().to_string();
        assert!(
            sheet.contains("BORROWED NUMBERS") && sheet.contains("1.03 g/mL ± 0.03"),
            "{sheet}"
        );
    }

    #[test]
    fn what_is_stated_is_not_borrowed() {
        let mut book = begun();
        book["materials"]["salt"]["as_scooped"] = json!("1.22 g/mL ± 0.02");
        book["materials"]["blue"]["drop"] = json!("0.044 g");
        let plan = plan(&book);
        let expected = [
            ("clear", Property::Density),
            ("salt", Property::Density),
            ("blue", Property::Density),
        ];
        assert_eq!(asked(&plan), expected);
    }

    // Weighed salt needs no number of a spoonful, unless spoons are all that there is.
    #[test]
    fn a_number_that_the_plan_does_not_use_is_not_asked_for() {
        let mut book = begun();
        book["formulas"]["body"]["doses"]["salt"] = json!("70 g");
        let scooped = ("salt", Property::AsScooped);
        assert!(!asked(&plan(&book)).contains(&scooped));
        let weigh = &plan(&book).pots[0].stages[0].weigh;
        let salt = weigh.iter().find(|one| one.material == "salt").unwrap();
        assert!(salt.others.is_empty(), "{salt:?}");
        book["bench"].as_object_mut().unwrap().remove("balance");
        assert!(asked(&plan(&book)).contains(&scooped));
    }
}
