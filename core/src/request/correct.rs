//! A pot that came out wrong, said in short, and the ways to go on with it.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::change::Change;
use super::formula::{base_mass, combined};
use super::instead::{Instead, kind_of, listed};
use super::saving::Saving;
use super::{Open, request, response};
use crate::book::{Book, Layer};
use crate::codes::code;
use crate::document::PlanDocument;
use crate::document::book::{BookDocument, FormulaEntry};
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Written};
use crate::fault::Faults;
use crate::formula::write::Measure;
use crate::formula::{Overlap, WrittenIn};
use crate::json::Named;
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::material::{Adding, Kind};
use crate::mix::{MaterialId, Mix, Phase};
use crate::parameter::Parameter;
use crate::plan::mispour::meant::Meant;
use crate::plan::mispour::{Mispour, PutRight, RightWay, Target, WayKind};
use crate::plan::{Plan, StepKind};
use crate::quantity::{Amount, Dimension, Mass, Volume};
use crate::trial::{Trial, TrialBody, TrialNames};

request! {
    /// Asks how to go on with a pot that came out wrong.
    ///
    /// At the bench one says what went in instead of what was meant: of an open plan `"pot": "B", "instead": { "flake": "twice" }`;
    /// else `"formulas": ["dusk", "plain"], "pot_base": "2 cup", "instead": { "plum": "+ 10 drops", "base": "1 1/2 cup" }`. Without
    /// `pot_base`, `instead` names all that is in the cup.
    pub struct CorrectRequest {
        required {
            instead: Named<Instead>,
        }
        optional {
            book: BookDocument,
            plan: PlanDocument,
            pot: Name,
            stage: u32,
            step: Name,
            formulas: Vec<Name>,
            overlap: Overlap,
            pot_base: Amount,
            hot: bool,
            still_there: Amount,
            cup: Written<Volume>,
            trace: Share,
            on_purpose: Vec<Name>,
            save_as: Name,
            body_as: Name,
            replace: bool,
        }
    }
}

response! {
    /// A pot that came out wrong, and the ways to go on with it.
    pub struct CorrectResponse {
        /// The ways; their fields stand next to these.
        #[serde(flatten)]
        pub right: PutRight,
        /// The mix in it as a formula, for the way that keeps it.
        pub kept: KeptFormula,
        /// The change to the book that saves it under the name of `save_as`; empty without one.
        pub write: Vec<Change>,
        /// The answer in short lines.
        pub text: Vec<String>,
    }
}

response! {
    /// A pot as a formula.
    pub struct KeptFormula {
        /// Amount of base that the doses are for.
        pub per: Amount,
        /// The color alone; none if there is no color in it.
        pub color: Option<FormulaEntry>,
        /// The formulas of the book that are the body in it; none if it is the default base alone, or `own_body`.
        pub body: Vec<String>,
        /// The body in it, if the book does not have it.
        pub own_body: Option<FormulaEntry>,
        /// Rule to combine color and body with.
        pub overlap: Overlap,
    }
}

/// Name of the formula if none was given.
const UNNAMED: &str = "as it is";

impl CorrectRequest {
    /// Offers the ways to go on.
    ///
    /// # Errors
    /// Faults of the book, unknown names, amounts that are none of a material, an empty pot or one fuller than its cup.
    pub fn answer(mut self, open: Open<'_>) -> Result<CorrectResponse, Faults> {
        let loaded = open.book(self.book.take())?;
        let is_of_plan = self.pot.is_some() || self.step.is_some();
        let plan = match is_of_plan || self.plan.is_some() {
            true => Some(open.plan(self.plan.take())?),
            false => None,
        };
        let book = loaded.ready();
        let mut resolver = Resolver::new(book.system);
        let plan = plan.as_deref().map(|plan| &plan.plan);
        let response = self.response(plan, book, &mut resolver);
        resolver.finish(response)
    }

    fn response(
        &self,
        plan: Option<&Plan>,
        book: &Book,
        resolver: &mut Resolver,
    ) -> Option<CorrectResponse> {
        let asked = match plan {
            Some(plan) => self.of_plan(plan, book, resolver)?,
            None => self.of_formulas(book, resolver)?,
        };
        let pot = self.went_in(&asked, book, resolver)?;
        let on_purpose = self.on_purpose(&asked, book, resolver)?;
        let pot = self.remaining(pot, book, resolver)?;
        let cup = match &self.cup {
            Some(cup) => Some(resolver.quantity(&At("/cup"), cup)?),
            None => asked.cup,
        };
        let trace = resolver.share(Parameter::Trace, self.trace)?;
        let mispour = Mispour {
            book,
            target: &asked.target,
            pot: &pot,
            cup,
            trace,
            on_purpose: &on_purpose,
            is_hot: self.hot.unwrap_or(asked.is_hot),
            is_used: asked.is_used || self.still_there.is_some(),
        };
        let path = if self.cup.is_some() { At("/cup") } else { At("/instead") };
        let right = resolver.keep(&path, mispour.put_right())?;
        let saving = Saving {
            save_as: self.save_as.as_ref(),
            body_as: self.body_as.as_ref(),
            replace: self.replace.unwrap_or(false),
        };
        let asked = asked.by_formula();
        let as_formula = self.went_in(&asked, book, resolver)?;
        let kept = self.kept(&asked, &as_formula, &saving, book, resolver)?;
        let write = saving.changes(kept.color.as_ref(), kept.own_body.as_ref(), book, resolver)?;
        let mut text = lines(&right, &kept);
        if self.hot.is_none() && !asked.is_hot && asked.has_hot_slip(self, book) {
            text.push("Cold pot assumed. If it is hot, add \"hot\": true.".to_string());
        }
        text.extend(saving.lines(&write, [kept.color.as_ref(), kept.own_body.as_ref()], book));
        Some(CorrectResponse { right, kept, write, text })
    }

    /// What a stage of a pot of the plan was meant to be.
    fn of_plan(&self, plan: &Plan, book: &Book, resolver: &mut Resolver) -> Option<Asked> {
        for (given, field) in
            [(self.formulas.is_some(), "formulas"), (self.pot_base.is_some(), "pot_base")]
        {
            if given {
                resolver.fault(
                    code!("plan-and-formulas"),
                    &Path::ROOT.key(field),
                    &format_args!("\"{field}\" is given for a pot of the plan, which has its own."),
                    &"Leave it out, or ask without \"pot\", \"step\" and \"plan\".",
                );
                return None;
            }
        }
        let (pot, stage, after_heat) = self.place(plan, resolver)?;
        let known = plan.pots.iter().find(|one| one.pot == pot);
        let mut names = plan.pots.iter().map(|one| one.pot.as_str());
        let pot = resolver.find("pot", &At("/pot"), &pot, known, &mut names)?;
        let index = usize::try_from(stage).unwrap_or(usize::MAX).saturating_sub(1);
        let meant = resolver.keep(&At("/pot"), Meant::of(pot, index, book))?;
        let (Some(meant), Some(stage)) = (meant, pot.stages.get(index)) else {
            resolver.fault(
                code!("no-such-stage"),
                &At("/stage"),
                &format_args!("Pot {} has no stage {stage}.", pot.pot),
                &format_args!("It has {}.", pot.stages.len()),
            );
            return None;
        };
        let whole = resolver.keep(&At("/pot"), meant.whole())?;
        let written = |id: MaterialId| {
            let found = meant.written.iter().find(|(known, _)| *known == id);
            found.map_or(WrittenIn::Mass, |(_, written)| *written)
        };
        let target = resolver.keep(&At("/pot"), Target::of_mix(&whole, written, book))?;
        let formulas =
            stage.formulas.iter().filter_map(|name| book.find_formula(name)).collect::<Vec<_>>();
        let layer = (!formulas.is_empty() && formulas.len() == stage.formulas.len())
            .then_some(Layer { formulas, share: 1.0, overlap: Overlap::Add });
        let by_formula = resolver.keep(&At("/pot"), Meant::by_formula(pot, index, book))?;
        let slip_is_hot = self.instead.keys().any(|name| {
            let id = book
                .materials
                .find(name)
                .or_else(|| one_of_kind(name, &meant.added, book).ok().flatten()?.first().copied());
            let material = id.and_then(|id| book.materials.get(id).ok());
            material.is_some_and(|material| material.adding() == Adding::Hot)
        });
        Some(Asked {
            target,
            before: meant.before,
            added: Some(meant.added),
            by_formula: by_formula.map(|meant| (meant.before, meant.added)),
            layer,
            cup: Some(pot.cup.quantity * book.limits.most_full),
            is_hot: meant.is_hot || after_heat || slip_is_hot,
            is_used: meant.is_used,
        })
    }

    /// Pot and stage, and whether the step that names them comes after a heat.
    fn place(&self, plan: &Plan, resolver: &mut Resolver) -> Option<(String, u32, bool)> {
        if let Some(step) = &self.step {
            let known = plan.steps.iter().find(|one| one.id == step.0);
            let mut ids = plan.steps.iter().map(|one| one.id.as_str());
            let known = resolver.find("step", &At("/step"), &step.0, known, &mut ids)?;
            let own = self.pot.as_ref();
            let at = known.at.iter().find(|at| own.is_none_or(|pot| pot.0 == at.pot));
            let Some(at) = at else {
                resolver.fault(
                    code!("step-of-another-pot"),
                    &At("/pot"),
                    &"That step is not of this pot.",
                    &"Leave \"pot\" out: the step has it.",
                );
                return None;
            };
            let before_heat =
                matches!(known.kind, StepKind::FromShelf | StepKind::Measure | StepKind::Degas);
            return Some((at.pot.clone(), at.stage, !before_heat));
        }
        let Some(pot) = &self.pot else {
            let letters: Vec<&str> = plan.pots.iter().map(|pot| pot.pot.as_str()).collect();
            resolver.fault(
                code!("missing-field"),
                &Path::ROOT,
                &"\"pot\" is missing: it is not said which pot of the plan it is.",
                &format_args!("Add \"pot\", one of: {}.", letters.join(", ")),
            );
            return None;
        };
        Some((pot.0.clone(), self.stage.unwrap_or(1), false))
    }

    /// What formulas and base were meant to be.
    fn of_formulas(&self, book: &Book, resolver: &mut Resolver) -> Option<Asked> {
        let Some(formulas) = &self.formulas else {
            resolver.fault(
                code!("missing-field"),
                &Path::ROOT,
                &"It is not said what the pot was meant to be.",
                &"Add \"pot\": \"A\" for a pot of the open plan, or \"formulas\": [\"dusk\", \"plain\"] with \"pot_base\": \"2 cup\".",
            );
            return None;
        };
        let (recipe, known) = combined(formulas, self.overlap, book, resolver)?;
        let indices = known.iter().filter_map(|formula| book.find_formula(&formula.name));
        let layer = Layer {
            formulas: indices.collect(),
            share: 1.0,
            overlap: self.overlap.unwrap_or(Overlap::Refuse),
        };
        let added = match &self.pot_base {
            Some(base) => {
                let meant = recipe.for_base(base_mass(base, &recipe, book, resolver)?);
                Some(resolver.keep(&At("/pot_base"), meant)?)
            }
            None => None,
        };
        Some(Asked {
            target: Target::from(&recipe),
            before: Mix::new(),
            added,
            by_formula: None,
            layer: Some(layer),
            cup: None,
            is_hot: false,
            is_used: false,
        })
    }

    /// Mix that is in the pot.
    fn went_in(&self, asked: &Asked, book: &Book, resolver: &mut Resolver) -> Option<Mix> {
        resolver.whole(|resolver| self.put_in(asked, book, resolver))
    }

    fn put_in(&self, asked: &Asked, book: &Book, resolver: &mut Resolver) -> Option<Mix> {
        let mut pot = asked.before.clone();
        let mut changed: Vec<MaterialId> = Vec::new();
        for (name, instead) in &self.instead {
            let path = At("/instead");
            let path = path.key(name);
            let added = asked.materials(name, &path, book, resolver).and_then(|materials| {
                asked.instead(name, &materials, instead, &path, book, resolver)
            });
            for (material, mass) in added.into_iter().flatten() {
                if changed.contains(&material) {
                    resolver.fault(
                        code!("instead-twice"),
                        &path,
                        &"It is said twice of one material.",
                        &"Keep one of the two.",
                    );
                }
                changed.push(material);
                resolver.keep(&path, pot.add(material, mass));
            }
        }
        for portion in asked.added.iter().flat_map(Mix::portions) {
            if !changed.contains(&portion.material) {
                resolver.keep(&At("/instead"), pot.add(portion.material, portion.mass));
            }
        }
        Some(pot)
    }

    fn on_purpose(
        &self,
        asked: &Asked,
        book: &Book,
        resolver: &mut Resolver,
    ) -> Option<Vec<MaterialId>> {
        let names = self.on_purpose.as_deref().unwrap_or_default();
        let found = resolver.each(&At("/on_purpose"), names, |resolver, path, name| {
            let materials = asked.materials(&name.0, path, book, resolver)?;
            let is_base = |id: &MaterialId| {
                book.materials.get(*id).is_ok_and(|material| material.kind == Kind::Plastisol)
            };
            if materials.iter().any(is_base) {
                resolver.fault(
                    code!("base-on-purpose"),
                    path,
                    &"All doses are per base: another amount of it changes every one of them.",
                    &"Leave it out here; the way \"keep\" has the formula of the pot as it is.",
                );
                return None;
            }
            Some(materials)
        })?;
        Some(found.into_iter().flatten().collect())
    }

    /// Mix that is left of it, if some was shot.
    fn remaining(&self, mut pot: Mix, book: &Book, resolver: &mut Resolver) -> Option<Mix> {
        let Some(left) = &self.still_there else { return Some(pot) };
        let mass: Mass = if left.dimension() == Dimension::VOLUME {
            let volume: Volume = resolver.keep(&At("/still_there"), left.to(book.system))?;
            let filled =
                resolver.keep(&At("/instead"), pot.volume(&book.materials, Phase::Liquid))?;
            pot.mass() * (volume / filled).value
        } else {
            resolver.keep(&At("/still_there"), left.to(book.system))?
        };
        resolver.keep(&At("/still_there"), pot.draw(mass))
    }

    /// The pot as a formula.
    fn kept(
        &self,
        asked: &Asked,
        pot: &Mix,
        saving: &Saving<'_>,
        book: &Book,
        resolver: &mut Resolver,
    ) -> Option<KeptFormula> {
        let measure = |id: MaterialId| self.measure(asked, id, book);
        let trial = Trial::of_mix(pot, asked.layer.clone(), measure, book);
        let trial = resolver.keep(&At("/instead"), trial)?;
        let body_name = saving.body(UNNAMED);
        let names = TrialNames { color: saving.color(UNNAMED), body: &body_name };
        let found = resolver.keep(&At("/instead"), trial.formulas(names, None))?;
        let entry = |formula| FormulaEntry::of(formula, &book.materials, book.system);
        let color = found.color.as_ref().map(|color| entry(&color.formula));
        let color = resolver.keep(&At("/instead"), color.transpose())?;
        let (body, own_body) = match &found.body {
            TrialBody::OfBook(formulas) => {
                let formulas = formulas.iter().filter_map(|&index| book.formulas.get(index));
                (formulas.map(|formula| formula.name.clone()).collect(), None)
            }
            TrialBody::Own(body) => {
                (Vec::new(), Some(resolver.keep(&At("/instead"), entry(&body.formula))?))
            }
        };
        Some(KeptFormula { per: found.per, color, body, own_body, overlap: found.overlap })
    }

    /// The measure that a material of the pot is written in: that of its formulas, and of what went in instead.
    fn measure(&self, asked: &Asked, material: MaterialId, book: &Book) -> Measure {
        let formulas = asked.layer.iter().flat_map(|layer| &layer.formulas);
        let formulas = formulas.filter_map(|&index| book.formulas.get(index));
        let doses = formulas.flat_map(|formula| &formula.doses);
        let doses = doses.filter(|dose| dose.material == material);
        let of_formulas = doses.map(|dose| Measure::of(&dose.amount)).reduce(Measure::and);
        let name = book.materials.get(material).map(|material| material.name.as_str());
        let instead = name.ok().and_then(|name| self.instead.get(name));
        let of_instead = match instead {
            Some(Instead::Amount(amount) | Instead::More(amount) | Instead::Less(amount)) => {
                Some(Measure::of(amount))
            }
            _ => None,
        };
        match (of_formulas, of_instead) {
            (Some(one), Some(other)) => one.and(other),
            (Some(one), None) | (None, Some(one)) => one,
            (None, None) => Measure::written_in(WrittenIn::Mass),
        }
    }
}

/// A pot as it was meant.
struct Asked {
    target: Target,
    /// What is in it before.
    before: Mix,
    /// What was to go in; `None` if only what did is said.
    added: Option<Mix>,
    /// The two as the formulas say, where `before` and `added` are as a sheet measures them.
    by_formula: Option<(Mix, Mix)>,
    layer: Option<Layer>,
    cup: Option<Volume>,
    is_hot: bool,
    is_used: bool,
}

/// The material of a kind that is in `mix`, or the plastisols of its base; `Err` with all of them where there are several,
/// `None` for a word that is no kind.
fn one_of_kind(
    word: &str,
    mix: &Mix,
    book: &Book,
) -> Result<Option<Vec<MaterialId>>, Vec<MaterialId>> {
    let Some(kind) = kind_of(word) else { return Ok(None) };
    let of_kind = mix.portions().iter().filter(|portion| portion.mass > Mass::default());
    let of_kind = of_kind
        .map(|portion| portion.material)
        .filter(|id| book.materials.get(*id).is_ok_and(|material| material.kind == kind));
    let of_kind: Vec<MaterialId> = of_kind.collect();
    match of_kind.len() {
        1 => Ok(Some(of_kind)),
        _ if kind == Kind::Plastisol && !of_kind.is_empty() => Ok(Some(of_kind)),
        _ => Err(of_kind),
    }
}

impl Asked {
    /// The same as the formulas say: what is saved must not keep the roundings of a sheet.
    fn by_formula(self) -> Self {
        match self.by_formula {
            Some((before, added)) => Self { before, added: Some(added), by_formula: None, ..self },
            None => self,
        }
    }

    /// The materials that a name of `instead` is for: one, or all parts of the base.
    fn materials(
        &self,
        name: &str,
        path: &Path<'_>,
        book: &Book,
        resolver: &mut Resolver,
    ) -> Option<Vec<MaterialId>> {
        if let Some(id) = book.materials.find(name) {
            return Some(Vec::from([id]));
        }
        let mut pot = self.before.clone();
        let merged = self.added.as_ref().map_or(Ok(()), |added| pot.merge(added));
        resolver.keep(path, merged)?;
        let added = self.added.as_ref().filter(|added| one_of_kind(name, added, book).is_ok());
        match one_of_kind(name, added.unwrap_or(&pot), book) {
            Ok(Some(materials)) => Some(materials),
            Ok(None) => {
                let mut names = book.materials.iter().map(|(_, material)| material.name.as_str());
                resolver.find("material", path, name, None::<()>, &mut names);
                None
            }
            Err(several) => {
                let names = several.iter().filter_map(|id| book.materials.get(*id).ok());
                let names: Vec<&str> = names.map(|material| material.name.as_str()).collect();
                let message = match names.as_slice() {
                    [] => format!("There is no {name} in the pot."),
                    names => {
                        format!("There is more than one {name} in the pot: {}.", listed(names))
                    }
                };
                resolver.fault(
                    code!("not-one-of-kind"),
                    path,
                    &message,
                    &"Write the name of the material itself.",
                );
                None
            }
        }
    }

    /// The masses that went in instead.
    fn instead(
        &self,
        name: &str,
        materials: &[MaterialId],
        instead: &Instead,
        path: &Path<'_>,
        book: &Book,
        resolver: &mut Resolver,
    ) -> Option<Vec<(MaterialId, Mass)>> {
        let none = Mix::new();
        let added = self.added.as_ref().unwrap_or(&none);
        let meant = materials.iter().map(|id| added.mass_of(*id));
        let meant = meant.fold(Mass::default(), |sum, mass| sum + mass);
        let mass = |amount: &Amount, resolver: &mut Resolver| {
            self.mass(materials, amount, path, book, resolver)
        };
        let total = match instead {
            Instead::Amount(amount) => mass(amount, resolver)?,
            Instead::Times(_) | Instead::More(_) | Instead::Less(_) if meant <= Mass::default() => {
                resolver.fault(
                    code!("instead-of-nothing"),
                    path,
                    &format_args!(
                        "No \"{name}\" was to go in here, so that \"{instead}\" of it says nothing."
                    ),
                    &"Write the amount that went in: \"10 drops\", \"1/4 tsp\".",
                );
                return None;
            }
            Instead::Times(times) => meant * times.to_f64(),
            Instead::More(amount) => meant + mass(amount, resolver)?,
            Instead::Less(amount) => {
                let less = mass(amount, resolver)?;
                if less > meant {
                    resolver.fault(
                        code!("instead-below-nothing"),
                        path,
                        &format_args!(
                            "That is less than nothing: {} was to go in.",
                            crate::show::text::mass(meant).text
                        ),
                        &"Write \"none\", or the amount that went in.",
                    );
                    return None;
                }
                meant - less
            }
        };
        let share = |id: &MaterialId| match materials.len() {
            1 => total,
            _ => total * (added.mass_of(*id) / meant).value,
        };
        Some(materials.iter().map(|id| (*id, share(id))).collect())
    }

    /// The mass of an amount of one material, or of the base together.
    fn mass(
        &self,
        materials: &[MaterialId],
        amount: &Amount,
        path: &Path<'_>,
        book: &Book,
        resolver: &mut Resolver,
    ) -> Option<Mass> {
        if let [only] = materials {
            let material = resolver.keep(path, book.materials.get(*only))?;
            let mass = material.mass_of(amount, book.system, "weighing what is in the pot");
            return resolver.keep(path, mass);
        }
        let added = self.added.as_ref()?;
        let base = resolver.keep(path, crate::trial::base_of(added, book))?;
        let mass =
            crate::formula::write::mass_of_base(*amount, &base, &book.materials, book.system);
        resolver.keep(path, mass)
    }

    /// Whether something that goes in hot is said to have gone in otherwise.
    fn has_hot_slip(&self, request: &CorrectRequest, book: &Book) -> bool {
        request.instead.keys().any(|name| {
            let kind = match book.materials.find(name).map(|id| book.materials.get(id)) {
                Some(Ok(material)) => return material.adding() == Adding::Hot,
                _ => kind_of(name),
            };
            kind.is_some_and(|kind| kind.adding() == Adding::Hot)
        })
    }
}

/// The answer in short lines: what is off, then each way.
fn lines(right: &PutRight, kept: &KeptFormula) -> Vec<String> {
    let mut lines = Vec::new();
    let off = right.pot.iter().filter_map(|one| {
        let off = one.off.as_ref().filter(|off| off.text != "0 %")?;
        let allowed = one.allowed.as_ref().map(|why| format!(" ({why})")).unwrap_or_default();
        Some(format!("{} {}{allowed}", one.material, off.text))
    });
    let off: Vec<String> = off.collect();
    lines.push(match off.as_slice() {
        [] => "Nothing is off.".to_string(),
        off => format!("Off, per base: {}.", off.join(", ")),
    });
    lines.extend(right.fault.as_ref().map(|fault| fault.message.clone()));
    for way in &right.ways {
        lines.push(line(way, right, kept));
    }
    let details = right.ways.iter().flat_map(|way| &way.details);
    let mut said: Vec<&String> = Vec::new();
    for detail in details {
        if !said.contains(&detail) {
            said.push(detail);
        }
    }
    lines.extend(said.into_iter().cloned());
    lines.extend(right.not_offered.iter().map(|note| note.message.clone()));
    let becomes: Vec<String> = right
        .becomes
        .iter()
        .filter(|one| one.fits)
        .take(MOST_BECOMES)
        .map(|one| format!("{} (add {})", one.formulas.join(" + "), one.adds.text))
        .collect();
    if !becomes.is_empty() {
        lines.push(format!("Could become: {}.", becomes.join(", ")));
    }
    lines
}

/// How many other formulas a short answer names.
const MOST_BECOMES: usize = 3;

fn line(way: &RightWay, right: &PutRight, kept: &KeptFormula) -> String {
    let is_allowed =
        |name: &str| right.pot.iter().any(|one| one.material == name && one.allowed.is_some());
    let off = way.off.iter().filter(|off| !is_allowed(&off.material));
    let worst = off.max_by(|a, b| {
        let size = |off: &crate::plan::Off| off.off.quantity.value.abs();
        size(a).total_cmp(&size(b))
    });
    let leaves = worst.filter(|worst| worst.off.text != "0 %");
    let leaves = leaves
        .map(|worst| format!(" Leaves {} {}.", worst.material, worst.off.text))
        .unwrap_or_default();
    let add = || {
        let add = way.add.iter().map(|weigh| format!("{} {}", weigh.material, weigh.best.measure));
        let cost = way.cost.as_ref().map(|cost| format!(" ({})", cost.text)).unwrap_or_default();
        format!(
            "add {}{cost}. Then {}, {}.",
            add.collect::<Vec<_>>().join(", "),
            way.mass.text,
            way.volume.on_both_scales()
        )
    };
    match way.way {
        WayKind::AsItIs => "As it is: all within tolerance, add nothing.".to_string(),
        WayKind::Within => format!("Within tolerance: {}{leaves}", add()),
        WayKind::Exact => format!("Exact: {}{leaves}", add()),
        WayKind::Nearest => format!("Nearest: {}{leaves}", add()),
        WayKind::Keep => {
            let doses = kept.color.iter().chain(&kept.own_body).flat_map(|entry| &entry.doses);
            let doses: Vec<String> =
                doses.map(|(name, amount)| format!("{name} {amount}")).collect();
            let body = match kept.body.as_slice() {
                [] => String::new(),
                body => format!(" with {}", body.join(" + ")),
            };
            let doses = if doses.is_empty() { "no doses".to_string() } else { doses.join(", ") };
            format!("Keep it as a formula: {doses} per {}{body}.", kept.per)
        }
    }
}

#[cfg(test)]
mod tests;
