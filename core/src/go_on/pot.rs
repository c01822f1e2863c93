//! A pot of the plan as it is now: what the steps that are done put into it and took out.

use alloc::collections::{BTreeMap, BTreeSet};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::Now;
use super::document::PotNowEntry;
use super::owed::{grams, written};
use crate::book::Book;
use crate::codes::{Code, code};
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::json::Named;
use crate::json::path::Path::{self, At};
use crate::mix::{Mix, Phase};
use crate::plan::{Draw, InPot, Plan, PlanStep, Pot, Stage, StepAt, StepItem, StepKind};
use crate::quantity::{Amount, Dimension, Mass, Time, Unit, Volume};
use crate::show::{Note, Shown, text};

/// A pot as it is.
pub(super) struct PotNow<'a> {
    pub(super) letter: String,
    /// The pot of the plan; `None` of another one.
    pub(super) planned: Option<&'a Pot>,
    /// Whether a person said something of it.
    pub(super) is_said: bool,
    pub(super) mix: Mix,
    pub(super) cup: Option<Written<Volume>>,
    pub(super) hot: bool,
    pub(super) degassed: bool,
    pub(super) heats: u32,
    pub(super) lost: bool,
    /// Whether its mix counts as its formulas.
    pub(super) accepted: bool,
    /// The number of its last step that is done.
    pub(super) done: u32,
    /// The step after that, if it has one.
    pub(super) next_step: Option<u32>,
    /// Shots that are done, by stage and draw.
    pub(super) shot: Vec<Vec<u32>>,
    /// Masses that went in by its weigh lists.
    pub(super) weighed: Mix,
    /// Leftovers of the shelf that went in: names and masses.
    pub(super) from_shelf: Vec<(String, Mass)>,
}

/// Shots of a draw that are still to come.
pub(super) struct LeftDraw {
    pub(super) line: u32,
    pub(super) layer: u32,
    pub(super) shots: u32,
}

/// All pots of the plan as they are, and the others.
pub(super) fn read<'a>(
    book: &Book,
    plan: &'a Plan,
    now: &Now<'a>,
    resolver: &mut Resolver,
) -> Option<Vec<PotNow<'a>>> {
    let entry = |letter: &str| now.pots.and_then(|pots| pots.get(letter));
    let ticks: BTreeSet<&str> = now.ticks.iter().map(String::as_str).collect();
    let mut by_pot: BTreeMap<&str, Vec<(&PlanStep, &StepAt)>> = BTreeMap::new();
    for step in &plan.steps {
        for at in &step.at {
            by_pot.entry(&at.pot).or_default().push((step, at));
        }
    }
    let mut pots = Vec::with_capacity(plan.pots.len());
    for pot in &plan.pots {
        let path = At("/pots_now").key(&pot.pot);
        let steps = by_pot.get(pot.pot.as_str()).map_or(&[][..], Vec::as_slice);
        let steps = Steps { steps, pot, entry: entry(&pot.pot), ticks: &ticks };
        pots.extend(steps.run(book, &path, resolver));
    }
    steps_together(plan, &pots, resolver);
    for (letter, entry) in now.pots.into_iter().flatten() {
        if plan.pots.iter().any(|pot| pot.pot == *letter) {
            continue;
        }
        let path = At("/pots_now").key(letter);
        if entry.parts.is_none() && entry.trial.is_none() {
            let mut known = plan.pots.iter().map(|pot| pot.pot.as_str());
            resolver.find::<()>("pot of the plan", &path, letter, None, &mut known);
            continue;
        }
        let mut pot = PotNow::new(letter.clone(), None);
        if pot.said(entry, book, &path, resolver).is_some() {
            pots.push(pot);
        }
    }
    resolver.faults.is_empty().then_some(pots)
}

/// Refuses a step of several pots that is done at some of them only.
fn steps_together(plan: &Plan, pots: &[PotNow<'_>], resolver: &mut Resolver) {
    let is_done = |at: &StepAt| {
        pots.iter().find(|pot| pot.letter == at.pot).is_some_and(|pot| at.number <= pot.done)
    };
    for step in &plan.steps {
        let done = step.at.iter().find(|at| is_done(at));
        let other = step.at.iter().find(|at| !is_done(at));
        if let (Some(done), Some(other)) = (done, other) {
            resolver.fault(
                code!("shot-together"),
                &At("/pots_now").key(&other.pot),
                &format_args!(
                    "Step {} of pot {} is done, but step {} of pot {} is not: they are one.",
                    done.number, done.pot, other.number, other.pot
                ),
                &"Write \"done\" of both pots up to it, or of both before it.",
            );
        }
    }
}

/// The steps of a pot, and what is said of it.
struct Steps<'a, 'e> {
    steps: &'e [(&'a PlanStep, &'a StepAt)],
    pot: &'a Pot,
    entry: Option<&'e PotNowEntry>,
    ticks: &'e BTreeSet<&'e str>,
}

impl<'a> Steps<'a, '_> {
    fn is_ticked(&self, id: &str) -> bool {
        self.ticks.contains(id)
    }

    /// The number of the last step that is done.
    fn done(&self) -> u32 {
        let whole = |(step, _): &(&PlanStep, &StepAt)| {
            let mut items = step.items.iter().filter(|item| match step.kind {
                // Bursts that were not needed are not ticked: its last line says that it is hot.
                StepKind::Heat => is_hot(step, item),
                _ => true,
            });
            self.is_ticked(&step.id) || items.all(|item| self.is_ticked(&item.id))
        };
        let ticked =
            self.steps.iter().copied().take_while(whole).last().map_or(0, |(_, at)| at.number);
        self.entry.and_then(|entry| entry.done).map_or(ticked, |done| done.0)
    }

    fn run(&self, book: &Book, path: &Path<'_>, resolver: &mut Resolver) -> Option<PotNow<'a>> {
        let done = self.done();
        let last = self.steps.iter().copied().map(|(_, at)| at.number).max().unwrap_or(0);
        if done > last {
            resolver.fault(
                code!("no-such-step"),
                &path.key("done"),
                &format_args!("Pot {} has no step {done}.", self.pot.pot),
                &format_args!("Its last step is {last}."),
            );
            return None;
        }
        let mut now = PotNow::new(self.pot.pot.clone(), Some(self.pot));
        if let Some(there) = &self.pot.there {
            resolver.keep(path, now.was_there(there, book))?;
        }
        now.done = done;
        now.next_step = (done < last).then(|| done.saturating_add(1));
        // Leftovers go in one a step, in the order of the list.
        let mut shelf_step: usize = 0;
        for (step, at) in self.steps.iter().copied() {
            let is_done = at.number <= done;
            let items = step.items.iter().filter(|item| is_done || self.is_ticked(&item.id));
            let items: Vec<&StepItem> = items.collect();
            let from_shelf = shelf_step;
            shelf_step = shelf_step.saturating_add(usize::from(step.kind == StepKind::FromShelf));
            if items.is_empty() {
                continue;
            }
            resolver.keep(path, now.does(step, at, &items, from_shelf, book))?;
        }
        if let Some(shots) =
            self.entry.and_then(|entry| entry.shots).map(|shots| shots.0).filter(|shots| *shots > 0)
        {
            self.shoots(done, shots, &mut now, path, resolver)?;
        }
        now.cup = milliliters(&self.pot.cup);
        now.heats = now.heats.max(u32::from(now.hot));
        if let Some(entry) = self.entry {
            now.said(entry, book, path, resolver)?;
        }
        Some(now)
    }

    /// Shots that are done of the step after those that are.
    fn shoots(
        &self,
        done: u32,
        shots: u32,
        now: &mut PotNow<'a>,
        path: &Path<'_>,
        resolver: &mut Resolver,
    ) -> Option<()> {
        let next = self.steps.iter().copied().find(|(_, at)| at.number == done.saturating_add(1));
        let most = next.filter(|(step, _)| step.kind == StepKind::Shoot).map(|(step, _)| {
            step.items.iter().filter_map(|item| item.shots).fold(0, u32::saturating_add)
        });
        match (next, most) {
            (Some((_, at)), Some(most)) if shots < most => {
                resolver.keep(path, now.shoots(at, shots))
            }
            (Some((_, at)), Some(most)) => {
                resolver.fault(
                    code!("too-many-shots"),
                    &path.key("shots"),
                    &format_args!("Step {} of pot {} is {most} shots.", at.number, self.pot.pot),
                    &format_args!("Write fewer, or \"done\": {}.", at.number),
                );
                None
            }
            _ => {
                resolver.fault(
                    code!("shots-without-shooting"),
                    &path.key("shots"),
                    &format_args!("The step of pot {} after {done} does not shoot.", self.pot.pot),
                    &"Write the number of the step before the shots as \"done\".",
                );
                None
            }
        }
    }
}

impl<'a> PotNow<'a> {
    pub(super) fn new(letter: String, planned: Option<&'a Pot>) -> Self {
        let stages = planned.map_or(&[][..], |pot| &pot.stages);
        Self {
            letter,
            planned,
            is_said: false,
            mix: Mix::new(),
            cup: None,
            hot: false,
            degassed: false,
            heats: 0,
            lost: false,
            accepted: false,
            done: 0,
            next_step: None,
            shot: stages.iter().map(|stage| alloc::vec![0; stage.draws.len()]).collect(),
            weighed: Mix::new(),
            from_shelf: Vec::new(),
        }
    }

    /// Whether something is in it, or was.
    pub(super) fn is_begun(&self) -> bool {
        self.mix.mass() > Mass::default()
    }

    /// Begins with what the plan found in it: it may be the plan of a day that went on before.
    fn was_there(&mut self, there: &InPot, book: &Book) -> Result<(), crate::mix::MixError> {
        for part in &there.parts {
            if let Some(material) = book.materials.find(&part.material) {
                self.mix.add(material, part.mass.quantity)?;
            }
        }
        self.hot = there.hot;
        self.degassed = there.degassed;
        self.heats = there.heats.unwrap_or(0);
        self.accepted = there.accepted.unwrap_or(false);
        Ok(())
    }

    fn stage(&self, at: &StepAt) -> Option<&'a Stage> {
        self.planned?.stages.get((at.stage as usize).checked_sub(1)?)
    }

    /// Does the items of a step.
    fn does(
        &mut self,
        step: &PlanStep,
        at: &StepAt,
        items: &[&StepItem],
        from_shelf: usize,
        book: &Book,
    ) -> Result<(), crate::mix::MixError> {
        let Some(stage) = self.stage(at) else { return Ok(()) };
        match step.kind {
            StepKind::FromShelf => self.takes_from_shelf(from_shelf, book)?,
            StepKind::Measure | StepKind::Add => {
                for weigh in items
                    .iter()
                    .filter_map(|item| stage.weigh.get((item.weigh? as usize).checked_sub(1)?))
                {
                    if let Some(material) = book.materials.find(&weigh.material) {
                        self.mix.add(material, weigh.wanted.quantity)?;
                        self.weighed.add(material, weigh.wanted.quantity)?;
                    }
                }
            }
            StepKind::Degas => self.degassed = true,
            // After a burst it is neither cold nor hot: it must still be heated, and no base goes in.
            StepKind::Heat => {
                self.hot = items.is_empty() || items.iter().any(|item| is_hot(step, item));
                self.heats = self.heats.saturating_add(1);
            }
            StepKind::Shoot => {
                let shots = items.iter().filter_map(|item| item.shots);
                self.shoots(at, shots.fold(0, u32::saturating_add))?;
            }
            StepKind::SpruesBack => {
                let mass = self.mix.mass() + stage.sprues_back.quantity;
                self.scale_to(mass)?;
            }
            StepKind::Store => self.hot = false,
        }
        Ok(())
    }

    /// Takes the leftover at `place` of its list.
    fn takes_from_shelf(&mut self, place: usize, book: &Book) -> Result<(), crate::mix::MixError> {
        let from = self.planned.and_then(|pot| pot.from_shelf.as_ref());
        let Some((from, one)) = from.and_then(|from| Some((from, from.left_overs.get(place)?)))
        else {
            return Ok(());
        };
        let all = from.left_overs.iter().fold(Mass::default(), |sum, one| sum + one.mass.quantity);
        self.from_shelf.push((one.name.clone(), one.mass.quantity));
        let share = (one.mass.quantity / all).value;
        for part in &from.brings {
            if let Some(material) = book.materials.find(&part.material) {
                self.mix.add(material, part.mass.quantity * share)?;
            }
        }
        Ok(())
    }

    /// Shoots at a step. The pot then holds what its shots that are left take, what the injector keeps of these, and what
    /// the plan carries on.
    fn shoots(&mut self, at: &StepAt, shots: u32) -> Result<(), crate::mix::MixError> {
        let Some(stage) = self.stage(at) else { return Ok(()) };
        let Some(shot) = self.shot.get_mut((at.stage as usize).saturating_sub(1)) else {
            return Ok(());
        };
        let place = at.draw.and_then(|draw| (draw as usize).checked_sub(1));
        if let Some(shot) = place.and_then(|place| shot.get_mut(place)) {
            *shot = shot.saturating_add(shots);
        }
        let rest = stage.carried.quantity - stage.sprues_back.quantity;
        let taken = |left: &dyn Fn(u32, u32) -> u32| {
            let draws = stage.draws.iter().zip(shot.iter());
            draws.fold(Mass::default(), |sum, (draw, shot)| {
                sum + draw.per_shot.quantity * f64::from(left(draw.shots, *shot))
            })
        };
        let all = stage.holds.quantity - taken(&|shots, _| shots) - rest;
        let each = stage.draws.iter().zip(shot.iter());
        let heated = heats(each.clone().map(|(draw, _)| draw));
        let still = heats(each.filter(|(draw, shot)| *shot < &draw.shots).map(|(draw, _)| draw));
        let keeps = all * (f64::from(still) / f64::from(heated.max(1)));
        let left = taken(&|shots, shot| shots.saturating_sub(shot));
        self.scale_to(rest + left + keeps)
    }

    fn scale_to(&mut self, mass: Mass) -> Result<(), crate::mix::MixError> {
        let held = self.mix.mass();
        let mass = mass.max(Mass::default());
        if held > Mass::default() {
            self.mix = self.mix.scaled((mass / held).value)?;
        }
        Ok(())
    }

    /// Puts in place what a person says of it.
    fn said(
        &mut self,
        entry: &PotNowEntry,
        book: &Book,
        path: &Path<'_>,
        resolver: &mut Resolver,
    ) -> Option<()> {
        if entry.parts.is_some() && entry.trial.is_some() {
            resolver.fault(
                code!("parts-or-trial"),
                path,
                &"It says what is in it twice, by \"parts\" and by \"trial\".",
                &"Keep one of the two.",
            );
            return None;
        }
        if let Some(parts) = &entry.parts {
            self.mix = resolver.mixed(parts, &path.key("parts"), book)?;
        }
        if let Some(trial) = &entry.trial {
            self.mix = trial.mix(book, resolver, &path.key("trial"))?;
        }
        self.is_said = true;
        self.cup = entry.cup.clone().or_else(|| self.cup.take());
        if let Some(left) = &entry.left {
            self.left(left, book, &path.key("left"), resolver)?;
        }
        self.hot = entry.hot.unwrap_or(self.hot);
        self.degassed = entry.degassed.unwrap_or(self.degassed);
        self.heats =
            entry.heats.map_or_else(|| self.heats.max(u32::from(self.hot)), |heats| heats.0);
        self.lost = entry.lost.unwrap_or(false);
        self.accepted = entry.accepted.unwrap_or(self.accepted);
        Some(())
    }

    /// Takes it that so much is left of it.
    fn left(
        &mut self,
        left: &Amount,
        book: &Book,
        path: &Path<'_>,
        resolver: &mut Resolver,
    ) -> Option<()> {
        if !self.is_begun() {
            resolver.fault(
                code!("left-of-nothing"),
                path,
                &format_args!("Pot {} is not begun, so nothing can be left of it.", self.letter),
                &"Write which of its steps are done (\"done\"), or what is in it (\"parts\").",
            );
            return None;
        }
        let filled = resolver.keep(path, self.mix.volume(&book.materials, Phase::Liquid))?;
        let mass: Mass = if left.dimension() == Dimension::VOLUME {
            let volume: Volume = resolver.keep(path, left.to(book.system))?;
            self.mix.mass() * (volume / filled).value
        } else {
            resolver.keep(path, left.to(book.system))?
        };
        let holds = self.cup.as_ref().and_then(|cup| cup.to(book.system).ok());
        let holds = holds.filter(|holds| filled * (mass / self.mix.mass()).value > *holds);
        if let Some(holds) = holds {
            resolver.fault(
                code!("left-over-cup"),
                path,
                &format_args!(
                    "Pot {} cannot hold {left}: its cup holds {}.",
                    self.letter,
                    text::volume(holds, book.system).text
                ),
                &"Write what is in it without the cup, or the \"cup\" that it is in now.",
            );
            return None;
        }
        resolver.keep(path, self.scale_to(mass))
    }

    /// Its shots that are still to come, in their order.
    pub(super) fn left_draws(&self) -> Vec<LeftDraw> {
        let Some(pot) = self.planned else { return Vec::new() };
        let mut left = Vec::new();
        for (stage, shot) in pot.stages.iter().zip(&self.shot) {
            for (draw, shot) in stage.draws.iter().zip(shot) {
                let shots = draw.shots.saturating_sub(*shot);
                if let (Some(line), Some(layer), 1..) = (draw.line, draw.layer, shots) {
                    left.push(LeftDraw { line, layer, shots });
                }
            }
        }
        left
    }

    /// Heat used: what it had used before the plan, and the plan's in equal parts a heat.
    pub(super) fn spent(&self) -> Option<Written<Time>> {
        let pot = self.planned?;
        let there = pot.there.as_ref();
        let heats_before = there.and_then(|there| there.heats).unwrap_or(0);
        let before = there.and_then(|there| Some(there.spent.as_ref()?.quantity));
        let before = before.unwrap_or_default();
        let of_plan = pot.heats.spent()?.quantity - before;
        let count = pot.heats.count.max(1);
        let own = self.heats.saturating_sub(heats_before).min(count);
        let spent = before + of_plan * (f64::from(own) / f64::from(count));
        let minutes = written(spent, Unit::MINUTE)?;
        (self.heats > 0 && spent > Time::default()).then(|| Written::of_amount(minutes))
    }

    /// How it goes on.
    pub(super) fn note(&self, plan: Option<&Plan>) -> Option<Note> {
        let note = |code: Code, message: String| Some(Note { code: code.to_string(), message });
        let letter = &self.letter;
        if self.lost {
            return note(
                code!("pot-lost"),
                format!("Pot {letter} is lost; its shots are planned again."),
            );
        }
        if !self.is_begun() {
            return None;
        }
        let new = plan.and_then(|plan| plan.pots.iter().find(|pot| pot.pot == *letter));
        let mass = text::mass(self.mix.mass()).text;
        let state = if self.hot { "hot" } else { "not hot" };
        match (new, self.next_step) {
            (Some(new), _) => {
                let stages = new.stages.iter().map(|stage| stage.formulas.join(" + "));
                let stages = stages.collect::<Vec<_>>().join(", then ");
                note(
                    code!("pot-goes-on"),
                    format!("Pot {letter} goes on as {stages}: {mass} in it, {state}."),
                )
            }
            (None, Some(step)) if self.left_draws().is_empty() => note(
                code!("pot-to-finish"),
                format!(
                    "Pot {letter} has no more shots, {mass} is in it: finish it by its card, from step {step}."
                ),
            ),
            (None, _) if self.is_said || !self.left_draws().is_empty() => note(
                code!("pot-not-used"),
                format!(
                    "Pot {letter} is not used: no shot that is owed can be made from the {mass} in it as it is. Put it right (\"correct\"), or keep it as a leftover."
                ),
            ),
            (None, _) => None,
        }
    }

    /// What is in it, by material.
    pub(super) fn parts(&self, book: &Book) -> Named<Amount> {
        let portions = self.mix.portions().iter();
        let parts = portions.filter_map(|portion| {
            let material = book.materials.get(portion.material).ok()?;
            Some((material.name.clone(), grams(portion.mass)?))
        });
        parts.collect()
    }
}

/// Whether an item of a heat is its last: the pot is hot.
fn is_hot(step: &PlanStep, item: &StepItem) -> bool {
    step.items.last().is_some_and(|last| last.id == item.id)
}

/// How often a pot is heated for draws in this order: once for plain ones, and for each laminated piece.
fn heats<'d>(draws: impl Iterator<Item = &'d Draw>) -> u32 {
    let heated = |(place, draw): (usize, &Draw)| place == 0 || !draw.together_with.is_empty();
    draws.enumerate().fold(0, |sum: u32, one| sum.saturating_add(u32::from(heated(one))))
}

/// A volume of a plan as a document writes it.
fn milliliters(shown: &Shown<Volume>) -> Option<Written<Volume>> {
    written(shown.quantity, Unit::MILLILITER).map(Written::of_amount)
}

#[cfg(test)]
mod tests;
