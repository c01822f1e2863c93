//! What is left of a pot, as jars for the shelf.
//!
//! What was left in the cup and the sprues of the last stage are one mix and go into one jar. The sprues of an earlier
//! stage are a mix of their own. Sprues of laminated pieces hold two colors, which no formula is made of: they are in no
//! jar. A jar of earlier sprues counts the heat of the whole pot: it had no more.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{Jar, RecordError};
use crate::book::Book;
use crate::mix::Mix;
use crate::plan::{MaterialMass, Plan, Pot};
use crate::quantity::{Mass, Time};
use crate::show::{Shown, text};

/// The mix of one stage that is left.
pub(super) struct Rest {
    pub(super) formulas: Vec<String>,
    pub(super) mix: Mix,
    /// Left in the cup; zero but at the last stage.
    pub(super) cup: Mass,
    pub(super) sprues: Mass,
    /// Heats of the pot up to then, those of leftovers in it included.
    pub(super) heats: Option<u32>,
    pub(super) name: Option<String>,
}

/// The jars of a pot.
pub(super) fn jars(
    plan: &Plan,
    pot: &Pot,
    rests: Vec<Rest>,
    spent: Option<&Shown<Time>>,
    book: &Book,
    known: &[Jar],
) -> Result<Vec<Jar>, RecordError> {
    let mut jars: Vec<Jar> = Vec::new();
    for rest in rests {
        let mass = rest.cup + rest.sprues;
        if mass <= Mass::default() {
            continue;
        }
        let mut parts = Vec::new();
        for portion in rest.mix.scaled((mass / rest.mix.mass()).value)?.portions() {
            if portion.mass > Mass::default() {
                let material = book.materials.get(portion.material)?.name.clone();
                parts.push(MaterialMass { material, mass: text::mass(portion.mass) });
            }
        }
        let is_sprues = rest.cup <= Mass::default();
        let name = rest.name.unwrap_or_else(|| {
            let mut name = rest.formulas.join(" + ");
            if is_sprues {
                name.push_str(" sprues");
            }
            plan.day.iter().for_each(|day| name.push_str(&format!(", {day}")));
            name
        });
        let is_taken = |name: &str| {
            plan.shelf.iter().any(|shelf| shelf.name == name)
                || known.iter().chain(&jars).any(|jar| jar.name == name)
        };
        let name = if is_taken(&name) { format!("{name}, pot {}", pot.pot) } else { name };
        jars.push(Jar {
            name,
            pot: pot.pot.clone(),
            mass: text::mass(mass),
            sprues: text::mass(rest.sprues),
            parts,
            heats: rest.heats,
            spent: spent.filter(|_| is_at_one_temperature(&rest.mix, book)).cloned(),
        });
    }
    Ok(jars)
}

/// Whether the budgets of its plastisols are stated at one temperature, at which a time can count.
fn is_at_one_temperature(mix: &Mix, book: &Book) -> bool {
    let mut at = None;
    let budgets = mix.portions().iter().filter_map(|portion| {
        book.materials.get(portion.material).ok().and_then(|material| material.budget)
    });
    budgets.into_iter().all(|budget| *at.get_or_insert(budget.at) == budget.at) && at.is_some()
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use alloc::string::ToString;
    use alloc::vec;

    use rstest::rstest;

    use super::*;
    use crate::document::{book_from_text, orders_from_text, small};
    use crate::material::HeatBudget;
    use crate::quantity::{Measurable, Ratio, ThermodynamicTemperature};

    /// The small book, whose plastisols withstand 45 min at these temperatures, in K.
    fn book(at: [Option<f64>; 2]) -> Book {
        let book = book_from_text(small::BOOK).unwrap();
        let mut materials: Vec<_> = book.materials.iter().map(|(_, one)| one.clone()).collect();
        for (name, at) in ["clear", "firm"].into_iter().zip(at) {
            let one = materials.iter_mut().find(|one| one.name == name).unwrap();
            one.budget = at.map(|at| HeatBudget {
                time: Time::from_si(2700.0),
                at: ThermodynamicTemperature::from_si(at),
                with: Ratio::from(0.02),
            });
        }
        Book { materials: crate::mix::Materials::new(materials), ..book }
    }

    fn mix(book: &Book, parts: &[(&str, f64)]) -> Mix {
        let mut mix = Mix::new();
        for (name, kilograms) in parts {
            let id = book.materials.find(name).unwrap();
            mix.add(id, Mass::from_si(*kilograms)).unwrap();
        }
        mix
    }

    #[rstest]
    #[case([Some(450.0), Some(450.0)], true)]
    #[case([Some(450.0), Some(451.0)], false)]
    #[case([Some(450.0), None], true)]
    #[case([None, None], false)]
    fn a_time_counts_at_one_temperature(#[case] at: [Option<f64>; 2], #[case] expected: bool) {
        let book = book(at);
        let mix = mix(&book, &[("clear", 0.1), ("firm", 0.1), ("salt", 0.1)]);
        assert_eq!(is_at_one_temperature(&mix, &book), expected);
    }

    /// The jars of what is left, in kg in the cup and of sprues, of the small day's pot.
    fn of(rests: &[(f64, f64)], shelf: &[&str], at: [Option<f64>; 2]) -> Vec<Jar> {
        let book = book(at);
        let line = r#"{ "order": "1", "product": "sky worm", "pieces": 4 }"#;
        let day = orders_from_text(&small::orders(line), &book).unwrap();
        let mut plan = Plan::make(&book, &day).unwrap();
        plan.day = Some("2027-03-02".into());
        plan.shelf = shelf
            .iter()
            .map(|name| crate::plan::OnShelf {
                name: (*name).into(),
                made: None,
                had: text::mass(Mass::default()),
                used: text::mass(Mass::default()),
                stays: text::mass(Mass::default()),
                pots: Vec::new(),
                ext: None,
            })
            .collect();
        let rest = |&(cup, sprues): &(f64, f64)| Rest {
            formulas: vec!["sky".into(), "body".into()],
            mix: mix(&book, &[("clear", 0.5), ("blue", 0.0), ("salt", 0.5)]),
            cup: Mass::from_si(cup),
            sprues: Mass::from_si(sprues),
            heats: Some(1),
            name: None,
        };
        let rests = rests.iter().map(rest).collect();
        let spent = text::minutes(Time::from_si(300.0));
        jars(&plan, &plan.pots[0], rests, Some(&spent), &book, &[]).unwrap()
    }

    #[test]
    fn what_is_left_goes_into_jars() {
        let at = [Some(450.0), None];
        let jars = of(&[(0.0, 0.0), (0.0, 0.02), (0.03, 0.01)], &[], at);
        let found: Vec<(&str, &str)> =
            jars.iter().map(|jar| (jar.name.as_str(), jar.mass.text.as_str())).collect();
        assert_eq!(
            found,
            [("sky + body sprues, 2027-03-02", "20 g"), ("sky + body, 2027-03-02", "40 g")]
        );
        // Half and half; nothing of the blue is no part.
        let parts: Vec<(&str, &str)> = jars[1]
            .parts
            .iter()
            .map(|part| (part.material.as_str(), part.mass.text.as_str()))
            .collect();
        assert_eq!(parts, [("clear", "20 g"), ("salt", "20 g")]);
        assert!(jars.iter().all(|jar| jar.spent.is_some()));
        assert_eq!(of(&[(0.03, 0.0)], &[], [None, None])[0].spent, None);
    }

    #[test]
    fn a_name_that_is_taken_says_the_pot() {
        let name = "sky + body, 2027-03-02";
        let at = [None, None];
        assert_eq!(of(&[(0.03, 0.0)], &[name], at)[0].name, [name, ", pot A"].concat());
        let twice = of(&[(0.03, 0.0), (0.02, 0.0)], &[], at);
        assert_eq!(twice[0].name, name);
        assert_eq!(twice[1].name, [name, ", pot A"].concat().to_string());
    }
}
