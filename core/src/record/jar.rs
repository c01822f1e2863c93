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
