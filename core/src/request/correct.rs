//! The least that makes a pot right that came out wrong.

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::dose::mass_of;
use super::formula::{below, find_formulas, of_base};
use super::{Faulty, response};
use crate::book::Book;
use crate::document::book::BookDocument;
use crate::document::reader::{Name, entry, pointer};
use crate::document::written::{Percent, Written};
use crate::fault::{Fault, Faults};
use crate::formula::{Overlap, Recipe};
use crate::mix::{MaterialId, Mix, Phase};
use crate::parameter::parameter;
use crate::plan::correction::{Correction, CorrectionError, correct, could_become, nearest};
use crate::plan::day::recipe_of;
use crate::plan::weigh::{self, Addition};
use crate::plan::{Shown, Weigh, text};
use crate::quantity::{Amount, Mass, MassDensity, Measurable, Ratio, Volume};

entry! {
    /// Asks what makes a pot right: either all that is in it, or the base it was made for and what
    /// went in instead.
    pub struct CorrectRequest {
        required {
            #[doc = parameter!(book)]
            book: BookDocument,
            #[doc = parameter!(formulas)]
            formulas: Vec<Name>,
        }
        optional {
            #[doc = parameter!(overlap)]
            overlap: Overlap,
            #[doc = parameter!(pot)]
            pot: BTreeMap<String, Amount>,
            #[doc = parameter!(made_for)]
            made_for: Amount,
            #[doc = parameter!(instead)]
            instead: BTreeMap<String, Amount>,
            #[doc = parameter!(cup)]
            cup: Written<Volume>,
            #[doc = parameter!(trace)]
            trace: Percent,
        }
    }
}

response! {
    /// What makes a pot right.
    pub struct CorrectResponse {
        /// What is in the pot.
        pub held: Shown<Mass>,
        /// What to add; empty where the pot is right.
        pub add: Vec<Weigh>,
        /// The material that is most too much: nothing of it is added.
        pub binds: Option<String>,
        /// What the pot holds then.
        pub total: Shown<Mass>,
        /// Its volume cold and liquid.
        pub fills: Shown<Volume>,
        /// What the cup may hold.
        pub cup: Shown<Volume>,
        /// The nearest that fits the cup, where the whole correction does not.
        pub nearest: Option<NearestResponse>,
        /// Traces of materials that the formulas lack, let pass.
        pub traces: Vec<Trace>,
        /// What else of the book the pot could become by adding, the least addition first.
        pub could_become: Vec<Becomes>,
    }
}

response! {
    /// The nearest mix that fits the cup.
    pub struct NearestResponse {
        /// What to add.
        pub add: Vec<Weigh>,
        /// What the pot holds then.
        pub total: Shown<Mass>,
        /// How far each material stays off.
        pub off: Vec<StaysOff>,
    }
}

response! {
    /// How far a material stays off its formula.
    pub struct StaysOff {
        /// Which.
        pub material: String,
        /// Relative to its share in the formula.
        pub off: Shown<Ratio>,
    }
}

response! {
    /// A trace of a material.
    pub struct Trace {
        /// Which.
        pub material: String,
        /// How much of it.
        pub mass: Shown<Mass>,
    }
}

response! {
    /// A recipe that a pot could become.
    pub struct Becomes {
        /// Its formulas.
        pub formulas: Vec<String>,
        /// All that would have to be added.
        pub adds: Shown<Mass>,
    }
}

/// A pot and what it should be.
struct Pot<'a> {
    book: &'a Book,
    recipe: Recipe,
    mix: Mix,
    /// All materials of the book.
    materials: Vec<MaterialId>,
    trace: Ratio,
}

impl CorrectRequest {
    /// Corrects the pot.
    ///
    /// # Errors
    /// A material in the pot that the formulas lack, with what the pot could still become; a
    /// cup that holds less than what is in it; amounts that cannot be.
    pub fn answer(&self) -> Result<CorrectResponse, Faults> {
        let book = Book::try_from(&self.book).map_err(|faults| below("/book", faults))?;
        let mut faulty = Faulty::new(Some(book.system));
        let response = self.response(&book, &mut faulty);
        faulty.finish(response)
    }

    fn response(&self, book: &Book, faulty: &mut Faulty) -> Option<CorrectResponse> {
        let formulas = find_formulas(&self.formulas, book, faulty)?;
        let recipe = Recipe::combine(
            &formulas,
            self.overlap.unwrap_or(Overlap::Refuse),
            book.default_base,
            &book.materials,
            book.system,
        );
        let recipe = faulty.keep("formulas", recipe)?;
        let mix = self.mix(&recipe, book, faulty)?;
        let cup = self.cup(book, faulty)?;
        let materials = book.materials.iter().map(|(id, _)| id).collect();
        let trace = Ratio::from(self.trace.map_or(0.0, Percent::share));
        let pot = Pot { book, recipe, mix, materials, trace };
        match correct(&pot.masses(), &pot.target(&pot.recipe), trace) {
            Ok(correction) => pot.respond(&correction, cup, faulty),
            Err(CorrectionError::NotInTarget { .. }) => {
                faulty.faults.extend(pot.strangers(&self.formulas));
                None
            }
            error => faulty.keep("pot", error.map(|_| None))?,
        }
    }

    /// What is in the pot.
    fn mix(&self, recipe: &Recipe, book: &Book, faulty: &mut Faulty) -> Option<Mix> {
        match (&self.pot, &self.made_for, &self.instead) {
            (Some(pot), None, None) => mix_of("/pot", pot, book, faulty),
            (None, Some(made_for), Some(instead)) => {
                let base = of_base(recipe, made_for, "made_for", book, faulty)?;
                let meant = faulty.keep("made_for", recipe.for_base(base))?;
                let wrong = mix_of("/instead", instead, book, faulty)?;
                let mut mix = Mix::new();
                let replaced = |material| {
                    instead.keys().any(|name| book.materials.find(name) == Some(material))
                };
                for portion in meant.portions().iter().filter(|p| !replaced(p.material)) {
                    faulty.keep("made_for", mix.add(portion.material, portion.mass))?;
                }
                faulty.keep("instead", mix.merge(&wrong))?;
                Some(mix)
            }
            _ => {
                faulty.faults.push(Fault {
                    code: "pot-or-instead".into(),
                    path: String::new(),
                    message: "It must say what is in the pot.".into(),
                    help: "Give \"pot\" with all that went in, or \"made_for\" (the base it was made for) with \"instead\" (what went in of the materials that went wrong).".into(),
                });
                None
            }
        }
    }

    /// What the cup may hold: that of the request, else the largest of the book.
    fn cup(&self, book: &Book, faulty: &mut Faulty) -> Option<Volume> {
        match &self.cup {
            Some(cup) => faulty.quantity("cup", cup),
            None => {
                let cups = book.tools.cups().iter().map(|cup| cup.capacity);
                let largest = cups.reduce(|a, b| if b > a { b } else { a })?;
                Some(largest * book.limits.most_full)
            }
        }
    }
}

/// The mix of amounts by material.
fn mix_of(
    path: &str,
    amounts: &BTreeMap<String, Amount>,
    book: &Book,
    faulty: &mut Faulty,
) -> Option<Mix> {
    let mut mix = Mix::new();
    let before = faulty.faults.len();
    for (name, amount) in amounts {
        let path = pointer(path, name);
        let found =
            book.materials.find(name).and_then(|id| Some((id, book.materials.get(id).ok()?)));
        let Some((id, material)) = found else {
            faulty.faults.push(Fault {
                code: "unknown-name".into(),
                path,
                message: format!("There is no material \"{name}\" in the book."),
                help: "Name it as the book does.".into(),
            });
            continue;
        };
        // The paths of an amount's faults go below the pot's field.
        let mut own = Faulty::new(Some(book.system));
        match mass_of(material, amount, &mut own) {
            Some(mass) => {
                if let Err(error) = mix.add(id, mass) {
                    faulty.faults.push(Fault::at(path, &error));
                }
            }
            None => {
                let moved =
                    own.faults.into_iter().map(|fault| Fault { path: path.clone(), ..fault });
                faulty.faults.extend(moved);
            }
        }
    }
    (faulty.faults.len() == before).then_some(mix)
}

impl Pot<'_> {
    /// The masses in the pot, by the book's materials.
    fn masses(&self) -> Vec<Mass> {
        self.materials.iter().map(|&material| self.mix.mass_of(material)).collect()
    }

    /// The parts of a recipe, by the book's materials.
    fn target(&self, recipe: &Recipe) -> Vec<f64> {
        let part = |&material: &MaterialId| {
            recipe
                .ingredients()
                .find(|ingredient| ingredient.material == material)
                .map_or(0.0, |ingredient| ingredient.ratio)
        };
        self.materials.iter().map(part).collect()
    }

    fn name(&self, index: usize) -> String {
        let material = self.materials.get(index).and_then(|&id| self.book.materials.get(id).ok());
        material.map(|material| material.name.clone()).unwrap_or_default()
    }

    /// The density of a recipe's mix, cold and liquid.
    fn liquid(&self, faulty: &mut Faulty) -> Option<MassDensity> {
        let unit = faulty.keep("formulas", self.recipe.for_base(Mass::from_si(1.0)))?;
        let volume = faulty.keep("book", unit.volume(&self.book.materials, Phase::Liquid))?;
        Some(unit.mass() / volume)
    }

    fn respond(
        &self,
        correction: &Correction,
        cup: Volume,
        faulty: &mut Faulty,
    ) -> Option<CorrectResponse> {
        let liquid = self.liquid(faulty)?;
        let capacity = cup * liquid;
        let nearest = if correction.total > capacity * (1.0 + 1e-9) {
            let nearest = nearest(&self.masses(), &self.target(&self.recipe), capacity, self.trace);
            let nearest = faulty.keep("cup", nearest)?;
            let off = nearest.off.iter().enumerate().filter(|(_, off)| off.value != 0.0);
            Some(NearestResponse {
                add: self.weigh(&nearest.correction, faulty)?,
                total: text::mass(nearest.correction.total),
                off: off
                    .map(|(index, &off)| StaysOff {
                        material: self.name(index),
                        off: Shown::new(off, text::signed_percent(off)),
                    })
                    .collect(),
            })
        } else {
            None
        };
        Some(CorrectResponse {
            held: text::mass(self.mix.mass()),
            add: self.weigh(correction, faulty)?,
            binds: correction.binds.map(|index| self.name(index)),
            total: text::mass(correction.total),
            fills: text::volume(correction.total / liquid, self.book.system),
            cup: text::volume(cup, self.book.system),
            nearest,
            traces: correction
                .traces
                .iter()
                .map(|&(index, mass)| Trace { material: self.name(index), mass: text::mass(mass) })
                .collect(),
            could_become: self.could_become(),
        })
    }

    /// The additions in bench measures.
    fn weigh(&self, correction: &Correction, faulty: &mut Faulty) -> Option<Vec<Weigh>> {
        let additions: Vec<Addition> = self
            .materials
            .iter()
            .zip(&correction.additions)
            .map(|(&material, &wanted)| Addition {
                material,
                wanted,
                total: self.mix.mass_of(material) + wanted,
            })
            .collect();
        faulty.keep("book", weigh::list(&additions, None, self.book))
    }

    /// All recipes of the book's products, each once, that the pot can become.
    fn could_become(&self) -> Vec<Becomes> {
        let mut recipes: Vec<(Vec<String>, Recipe)> = Vec::new();
        for layer in self.book.products.iter().flat_map(|product| &product.layers) {
            let Ok(recipe) = recipe_of(layer, self.book) else { continue };
            let known = recipe == self.recipe || recipes.iter().any(|(_, other)| *other == recipe);
            if !known {
                let names =
                    layer.formulas.iter().filter_map(|&index| self.book.formulas.get(index));
                recipes.push((names.map(|formula| formula.name.clone()).collect(), recipe));
            }
        }
        let targets: Vec<Vec<f64>> =
            recipes.iter().map(|(_, recipe)| self.target(recipe)).collect();
        let targets: Vec<&[f64]> = targets.iter().map(Vec::as_slice).collect();
        let found = could_become(&self.masses(), &targets, self.trace).unwrap_or_default();
        let mut becomes: Vec<Becomes> = found
            .iter()
            .filter_map(|becoming| {
                let adds = becoming
                    .correction
                    .additions
                    .iter()
                    .fold(Mass::default(), |sum, &addition| sum + addition);
                let (formulas, _) = recipes.get(becoming.target)?;
                Some(Becomes { formulas: formulas.clone(), adds: text::mass(adds) })
            })
            .collect();
        becomes.sort_by(|a, b| a.adds.quantity.value.total_cmp(&b.adds.quantity.value));
        becomes
    }

    /// A fault for each material that the formulas lack, with what the pot could still become.
    fn strangers(&self, formulas: &[Name]) -> Vec<Fault> {
        let wanted: Vec<&str> = formulas.iter().map(|name| name.0.as_str()).collect();
        let becomes: Vec<String> = self
            .could_become()
            .iter()
            .map(|becomes| format!("{} (add {})", becomes.formulas.join(" + "), becomes.adds.text))
            .collect();
        let help = if becomes.is_empty() {
            "Nothing can be taken out again; no product of the book holds all that is in the pot. Save it as a formula of its own.".into()
        } else {
            format!(
                "Nothing can be taken out again. The pot could still become: {}.",
                becomes.join("; ")
            )
        };
        let masses = self.masses();
        let total = self.mix.mass();
        let target = self.target(&self.recipe);
        masses
            .iter()
            .zip(&target)
            .enumerate()
            .filter(|(_, (held, part))| **part <= 0.0 && **held > total * self.trace.value)
            .map(|(index, (held, _))| Fault {
                code: "not-in-formulas".into(),
                path: pointer("/pot", &self.name(index)),
                message: format!(
                    "The pot holds {} of \"{}\", which {} lacks.",
                    text::mass(*held).text,
                    self.name(index),
                    wanted.join(" + ")
                ),
                help: help.clone(),
            })
            .collect()
    }
}
