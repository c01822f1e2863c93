//! The steps of the day, in the order of work.

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::words::{self, Entry, ShotSeries, Then, Words};
use crate::book::Book;
use crate::caution::Caution;
use crate::material::Kind;
use crate::mix::Materials;
use crate::plan::layout::{DrawLayout, Layout, StageLayout, WorkFromLayout, WorkLayout};
use crate::plan::process::{Cup, Late, late};
use crate::plan::{
    Draw, HeatBand, PlanStep, PlannedHeating, Pot, Stage, StageHeat, StepAt, StepItem, StepKind,
    Weigh,
};
use crate::quantity::{HeatCapacity, Mass, System};
use crate::show::Calculated;
use crate::show::sentence::{Sentence, Sentences};

/// The steps of the `pots` of a layout, in its order of work.
pub(super) fn steps(
    layout: &Layout<'_>,
    pots: &[Pot],
    book: &Book,
    date: Option<&str>,
) -> Vec<PlanStep> {
    let pots = at_work(layout, pots, &book.materials);
    let mut day = Day { book, late: BTreeMap::new(), date, pots, steps: Vec::new(), work: 0 };
    for work in &layout.work {
        for from in &work.from {
            day.count(from);
        }
    }
    for work in &layout.work {
        day.work = day.work.saturating_add(1);
        day.run(work);
    }
    day.steps
}

/// A pot while the day runs.
struct PotAtWork<'l> {
    vessel: HeatCapacity,
    planned: &'l Pot,
    /// Steps so far.
    steps: u32,
    /// The first step at which it is heated, once there is one.
    heat: Option<u32>,
    stages: Vec<StageAtWork<'l>>,
}

/// A stage while the day runs.
struct StageAtWork<'l> {
    layout: &'l StageLayout<'l>,
    planned: &'l Stage,
    number: u32,
    is_last: bool,
    /// Names it among all steps.
    key: String,
    /// Whether there is salt in the pot.
    salted: bool,
    begun: bool,
    /// Whether what goes in hot is in.
    whole: bool,
    /// The step at which it is first heated, which others refer to.
    heat: u32,
    /// Entries of the order of work that are still to come.
    left: u32,
    draws: Vec<(&'l DrawLayout<'l>, &'l Draw)>,
    /// Ids of its steps.
    ids: Vec<String>,
}

fn at_work<'l>(
    layout: &'l Layout<'_>,
    pots: &'l [Pot],
    materials: &Materials,
) -> Vec<PotAtWork<'l>> {
    let each = layout.pots.iter().zip(pots);
    let at_work = each.map(|(of, pot)| {
        let mut salted = false;
        let last = of.stages.len();
        let stages =
            (1_u32..).zip(of.stages.iter().zip(&pot.stages)).map(|(number, (of, planned))| {
                salted |= of.recipe.holds(Kind::Salt, materials);
                StageAtWork {
                    layout: of,
                    planned,
                    number,
                    is_last: number as usize == last,
                    key: match number {
                        1 if begins_with(&pot.id, &of.recipe.name()) => pot.id.clone(),
                        _ => joined(&[&pot.id, &named(&of.recipe.name())]),
                    },
                    salted,
                    begun: false,
                    whole: false,
                    heat: 0,
                    left: 0,
                    draws: of.draws.iter().zip(&planned.draws).collect(),
                    ids: Vec::new(),
                }
            });
        PotAtWork {
            vessel: of.cup.vessel.heat_capacity,
            planned: pot,
            steps: 0,
            heat: None,
            stages: stages.collect(),
        }
    });
    at_work.collect()
}

/// Whether a pot with this id was begun with the mix of that name; one that is there may be at a later stage.
fn begins_with(id: &str, name: &str) -> bool {
    let rest = id.strip_prefix(&named(name));
    rest.is_some_and(|rest| {
        ["", " for ", " ("].iter().any(|next| match *next {
            "" => rest.is_empty(),
            next => rest.starts_with(next),
        })
    })
}

/// `name`, or the same with a number where that is taken.
fn free(name: String, taken: impl Fn(&str) -> bool) -> String {
    if !taken(&name) {
        return name;
    }
    let mut number = 2_u32;
    loop {
        let numbered = format!("{name} ({number})");
        if !taken(&numbered) {
            return numbered;
        }
        number = number.saturating_add(1);
    }
}

/// A name as a part of an id.
pub(super) fn named(name: &str) -> String {
    name.replace('~', "~0").replace('/', "~1")
}

fn joined(parts: &[&str]) -> String {
    parts.join("/")
}

impl PotAtWork<'_> {
    /// The step at which it was first heated, before that of this `number`, which is one itself.
    fn heated_at(&mut self, number: u32) -> Option<u32> {
        let first = *self.heat.get_or_insert(number);
        (first != number).then_some(first)
    }
}

/// All that the advice for a pot that is too cold depends on.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
struct LateKey {
    recipe: usize,
    mass: u64,
    vessel: u64,
    shots: u32,
    per_shot: u64,
}

/// A day while its steps are put together.
struct Day<'l> {
    book: &'l Book,
    /// Advice for runs of shots, kept: a large day has many alike.
    late: BTreeMap<LateKey, Option<Late>>,
    date: Option<&'l str>,
    pots: Vec<PotAtWork<'l>>,
    steps: Vec<PlanStep>,
    /// The entry of the order of work, counted from 1.
    work: u32,
}

/// An action at a stage, and how it is done.
struct Act {
    kind: StepKind,
    /// Names it among the acts of its stage.
    name: String,
    cautions: &'static [Caution],
    items: Vec<StepItem>,
}

impl<'l> Day<'l> {
    fn at(&mut self, from: &WorkFromLayout) -> Option<(&'l Pot, &mut StageAtWork<'l>)> {
        let pot = self.pots.get_mut(from.pot)?;
        Some((pot.planned, pot.stages.get_mut(from.stage)?))
    }

    fn count(&mut self, from: &WorkFromLayout) {
        if let Some((_, stage)) = self.at(from) {
            stage.left = stage.left.saturating_add(1);
        }
    }

    fn run(&mut self, work: &WorkLayout<'_>) {
        for from in &work.from {
            self.begin(from);
        }
        for from in work.from.iter().filter(|from| from.heated) {
            self.heat(from, work);
        }
        for from in &work.from {
            self.add_hot(from);
        }
        self.shoot(work);
        for from in &work.from {
            self.end(from);
        }
    }

    /// Adds a step at one pot.
    fn add(&mut self, from: &WorkFromLayout, act: Act, words: Words) {
        let number = self.number(from);
        let Some((pot, stage)) = self.at(from) else { return };
        let id = stage.id(&act.name);
        let at = Vec::from([at(pot, stage.number, None, number, words)]);
        self.push(id, act, at);
    }

    /// The number of the pot's next step.
    fn next_number(&self, from: &WorkFromLayout) -> u32 {
        self.pots.get(from.pot).map_or(0, |pot| pot.steps).saturating_add(1)
    }

    /// The same, as that of a step that is added.
    fn number(&mut self, from: &WorkFromLayout) -> u32 {
        let number = self.next_number(from);
        if let Some(pot) = self.pots.get_mut(from.pot) {
            pot.steps = number;
        }
        number
    }

    fn push(&mut self, id: String, act: Act, at: Vec<StepAt>) {
        let Act { kind, cautions, mut items, .. } = act;
        for item in &mut items {
            item.id = if item.id.is_empty() { id.clone() } else { joined(&[&id, &item.id]) };
        }
        let cautions = cautions.to_vec();
        self.steps.push(PlanStep { id, kind, work: self.work, at, cautions, items });
    }

    /// Steps before a stage is first heated.
    fn begin(&mut self, from: &WorkFromLayout) {
        let system = self.book.system;
        let Some((pot, stage)) = self.at(from) else { return };
        if core::mem::replace(&mut stage.begun, true) {
            return;
        }
        let (planned, first) = (stage.planned, stage.number == 1);
        if first {
            for part in pot.from_shelf.iter().flat_map(|from| &from.left_overs) {
                let words = words::from_shelf(part);
                let act = Act {
                    kind: StepKind::FromShelf,
                    name: joined(&["from-shelf", &named(&part.name)]),
                    cautions: &[],
                    items: Vec::from([item(words.text.clone(), part.mass.text.clone())]),
                };
                self.add(from, act, words);
            }
        }
        // What was heated is no empty cup any more.
        let was_heated = pot.there.as_ref().is_some_and(|there| there.heats != Some(0));
        let entry = if first && !was_heated { Entry::First } else { Entry::Later };
        self.weigh(from, planned, entry);
        if first && pot.there.as_ref().is_none_or(|there| !there.degassed) {
            let act = Act {
                kind: StepKind::Degas,
                name: "degas".to_string(),
                cautions: &[Caution::Vacuum],
                items: fills(pot, system),
            };
            self.add(from, act, words::degas(pot.degas.as_ref(), system));
        }
    }

    /// Additions to the hot pot, once it is hot for the first time.
    fn add_hot(&mut self, from: &WorkFromLayout) {
        let Some((_, stage)) = self.at(from) else { return };
        if core::mem::replace(&mut stage.whole, true) {
            return;
        }
        let (planned, heat) = (stage.planned, stage.heat);
        self.weigh(from, planned, Entry::Hot { heat });
        self.weigh(from, planned, Entry::Last { heat });
    }

    /// Additions at one time, if any.
    fn weigh(&mut self, from: &WorkFromLayout, planned: &Stage, entry: Entry) {
        let list: Vec<(u32, &Weigh)> =
            (1..).zip(&planned.weigh).filter(|(_, weigh)| entry.takes(weigh)).collect();
        if list.is_empty() {
            return;
        }
        let (kind, name) = match entry {
            Entry::First => (StepKind::Measure, "measure"),
            Entry::Later => (StepKind::Add, "add"),
            Entry::Hot { .. } => (StepKind::Add, "add-hot"),
            Entry::Last { .. } => (StepKind::Add, "add-last"),
        };
        // What is in a pot that was begun cold is not measured again: it is more of it.
        let begun = self.at(from).filter(|(_, stage)| stage.number == 1);
        let begun = begun.and_then(|(pot, _)| pot.there.as_ref());
        let begun = begun.filter(|there| there.heats == Some(0));
        let is_more = |weigh: &Weigh| {
            let mut parts = begun.iter().flat_map(|there| &there.parts);
            weigh.best.gives.quantity > Mass::default()
                && parts.any(|part| part.material == weigh.material)
        };
        let items = list.iter().map(|(place, weigh)| {
            let amount = &weigh.best.measure;
            let more = is_more(weigh).then_some(true);
            let text = match more {
                Some(_) => format!("{}: {amount} more", weigh.material),
                None => format!("{}: {amount}", weigh.material),
            };
            let (id, material) = (named(&weigh.material), Some(weigh.material.clone()));
            StepItem {
                id,
                material,
                weigh: Some(*place),
                more,
                ..item(text.into(), amount.clone())
            }
        });
        let list: Vec<&Weigh> = list.iter().map(|(_, weigh)| *weigh).collect();
        let salted = list.iter().any(|weigh| weigh.kind == Kind::Salt);
        let act = Act {
            kind,
            name: name.to_string(),
            cautions: match (entry, salted) {
                (Entry::First, false) => &[],
                (Entry::First, true) => &[Caution::DampSalt],
                (_, false) => &[Caution::HotPlastisol],
                (_, true) => &[Caution::HotPlastisol, Caution::DampSalt],
            },
            items: items.collect(),
        };
        let nothing_later = planned.weigh.iter().all(|weigh| !entry.is_before(weigh));
        let words = words::weigh(planned, &list, entry, nothing_later, self.book.system);
        self.add(from, act, words);
    }

    fn heat(&mut self, from: &WorkFromLayout, work: &WorkLayout<'_>) {
        let system = self.book.system;
        let Some((_, stage)) = self.at(from) else { return };
        let planned = stage.planned;
        let to_come = !stage.whole && planned.weigh.iter().any(words::is_hot);
        let number = self.next_number(from);
        let like = self.pots.get_mut(from.pot).and_then(|pot| pot.heated_at(number));
        let next = number.saturating_add(1);
        let then = if to_come { Then::Step(next) } else { Then::Shoot };
        // A pot is heated again for each laminated piece, which tells these heats apart.
        let name = match work.of.batch.is_laminated() {
            true => joined(&["heat", &piece(work)]),
            false => "heat".to_string(),
        };
        let Some((_, stage)) = self.at(from) else { return };
        let before = stage.shots_before(from);
        let again = stage.clock().find(|heat| heat.after == before);
        match again.filter(|heat| heat.heating.is_some()) {
            Some(heat) => self.reheat(from, name, heat),
            None => {
                let items = readings(planned.heating.as_ref(), then, system);
                stage.heat = number;
                self.add(from, heat_act(name, items), words::heat(planned, like, then, system));
            }
        }
    }

    /// A heat of what the stage still holds.
    fn reheat(&mut self, from: &WorkFromLayout, name: String, heat: &StageHeat) {
        let items = readings(heat.heating.as_ref(), Then::Shoot, self.book.system);
        self.add(from, heat_act(name, items), words::reheat(heat));
    }

    /// The shots of `work`, and the reheats among them.
    fn shoot(&mut self, work: &WorkLayout<'_>) {
        let mut reheats: Vec<(u32, &WorkFromLayout, &'l StageHeat)> = Vec::new();
        for from in &work.from {
            let Some((_, stage)) = self.at(from) else { continue };
            let before = stage.shots_before(from);
            let reheat = |heat: &'l StageHeat| {
                let after = heat.after.checked_sub(before).filter(|&after| after < work.shots)?;
                // The heat of the pot for this work has a step before it.
                (after > 0 || !from.heated).then_some((after, from, heat))
            };
            reheats.extend(stage.clock().filter(|heat| heat.after > 0).filter_map(reheat));
        }
        reheats.sort_by_key(|(after, ..)| *after);
        let mut after = 0;
        for (at, from, heat) in reheats {
            if at > after {
                self.run_of(work, ShotSeries { after, shots: at.saturating_sub(after) });
                after = at;
            }
            self.reheat(from, joined(&["reheat", &piece(work)]), heat);
        }
        self.run_of(work, ShotSeries { after, shots: work.shots.saturating_sub(after) });
    }

    /// Shots of `work` that no reheat comes between.
    fn run_of(&mut self, work: &WorkLayout<'_>, run: ShotSeries) {
        let name = joined(&["shoot", &piece(work)]);
        let system = self.book.system;
        let (mut all, mut first) = (Vec::new(), None);
        for from in &work.from {
            let (step, late) = (self.number(from), self.late(from, run));
            let Some((pot, stage)) = self.at(from) else { continue };
            let Some((_, planned)) = stage.draws.get(from.draw).copied() else { continue };
            let place = Some(number(from.draw));
            let words = words::shoot(stage.planned, planned, run, stage.salted, late, system);
            all.push(at(pot, stage.number, place, step, words));
            if first.is_none() {
                first = Some((stage.id(&name), loads(planned, run)));
            }
        }
        if let Some((id, items)) = first {
            let cautions = &[Caution::Water, Caution::HotPlastisol];
            self.push(id, Act { kind: StepKind::Shoot, name, cautions, items }, all);
        }
    }

    /// Action if the pot is too cold for one of the shots of `run`.
    fn late(&mut self, from: &WorkFromLayout, run: ShotSeries) -> Option<Late> {
        let pot = self.pots.get(from.pot)?;
        let stage = pot.stages.get(from.stage)?;
        let (own, _) = stage.draws.get(from.draw)?;
        let before = stage.draws.iter().take(from.draw);
        let taken = before.fold(Mass::default(), |sum, (draw, _)| {
            sum + draw.layer.mass.fill * f64::from(draw.shots)
        });
        let per_shot = own.layer.mass.fill;
        // The injector is emptied back for a reheat, but for what stays in it.
        let kept = self.book.injector.keeps * stage.layout.recipe.melt.hot;
        let cup = Cup {
            recipe: stage.layout.recipe,
            mass: stage.layout.held - taken - kept - per_shot * f64::from(run.after),
            hot: &[],
            vessel: pot.vessel,
            first: false,
        };
        let key = LateKey {
            recipe: cup.recipe.number,
            mass: cup.mass.value.to_bits(),
            vessel: cup.vessel.value.to_bits(),
            shots: run.shots,
            per_shot: per_shot.value.to_bits(),
        };
        let book = self.book;
        self.late.entry(key).or_insert_with(|| late(book, &cup, run.shots, per_shot)).clone()
    }

    /// Steps after the last shot of a stage.
    fn end(&mut self, from: &WorkFromLayout) {
        let Some((pot, stage)) = self.at(from) else { return };
        stage.left = stage.left.saturating_sub(1);
        if stage.left > 0 {
            return;
        }
        let (planned, is_last) = (stage.planned, stage.is_last);
        if stage.layout.returned > Mass::default() {
            let words = words::sprues_back(planned);
            let act = Act {
                kind: StepKind::SpruesBack,
                name: "sprues-back".to_string(),
                cautions: &[Caution::HotPlastisol],
                items: Vec::from([item(words.text.clone(), planned.sprues_back.text.clone())]),
            };
            self.add(from, act, words);
        }
        if is_last {
            let words = words::store(pot, self.date);
            let act = Act {
                kind: StepKind::Store,
                name: "store".to_string(),
                cautions: &[],
                items: Vec::from([item(words.text.clone(), pot.left_over.text.clone())]),
            };
            self.add(from, act, words);
        }
    }
}

impl<'l> StageAtWork<'l> {
    /// Its heats by the clock, where they are known.
    fn clock(&self) -> impl Iterator<Item = &'l StageHeat> + use<'l> {
        self.planned.clock.as_ref().and_then(Calculated::known).into_iter().flatten()
    }

    /// Shots of the stage that are made before a draw.
    fn shots_before(&self, from: &WorkFromLayout) -> u32 {
        let before = self.draws.iter().take(from.draw);
        before.fold(0, |sum: u32, (of, _)| sum.saturating_add(of.shots))
    }

    /// The id of what is done there. Where it is done twice, as for a laminated piece that takes more shots than one pot
    /// holds at once, a number tells the later ones apart.
    fn id(&mut self, name: &str) -> String {
        let id = free(joined(&[&self.key, name]), |taken| self.ids.iter().any(|id| id == taken));
        self.ids.push(id.clone());
        id
    }
}

/// Name of the piece: the mold, and of a laminated piece its layers.
fn piece(work: &WorkLayout<'_>) -> String {
    let mold = named(&work.of.batch.mold.name);
    if !work.of.batch.is_laminated() {
        return mold;
    }
    let layers = work.of.layers.iter().map(|layer| named(&layer.recipe.name()));
    format!("{mold} of {}", layers.collect::<Vec<_>>().join(", "))
}

/// A place as it is shown: counted from 1.
fn number(place: usize) -> u32 {
    u32::try_from(place.saturating_add(1)).unwrap_or(u32::MAX)
}

fn at(pot: &Pot, stage: u32, draw: Option<u32>, number: u32, words: Words) -> StepAt {
    let Words { text: Sentence { text, other }, details, readings, notes } = words;
    let Sentences { texts: details, others: other_details } = details.into_iter().collect();
    let pot = pot.pot.clone();
    StepAt { pot, stage, draw, number, text, other, details, other_details, readings, notes }
}

fn item(text: Sentence, amount: String) -> StepItem {
    let Sentence { text, other } = text;
    StepItem {
        id: String::new(),
        text,
        other,
        amount,
        material: None,
        weigh: None,
        more: None,
        number: None,
        shots: None,
    }
}

/// One of several alike.
fn numbered(number: u32, text: Sentence, amount: String) -> StepItem {
    StepItem { id: number.to_string(), number: Some(number), ..item(text, amount) }
}

fn fills(pot: &Pot, system: System) -> Vec<StepItem> {
    let known = pot.degas.as_ref().and_then(Calculated::known);
    let Some(degas) = known else {
        return Vec::from([numbered(1, "Degas".to_string().into(), "degassed".to_string())]);
    };
    let fills = degas.fills;
    let fill = |number: u32| {
        let which = if fills > 1 { format!("fill {number} of {fills}: ") } else { String::new() };
        let text = Sentence::of(system, |on| {
            let (level, cup) = (on.text(&degas.level), &degas.cup_name);
            format!("Degas {which}{level} with the air in it, in the {cup}")
        });
        numbered(number, text, degas.level.text.clone())
    };
    (1..=fills).map(fill).collect()
}

fn heat_act(name: String, items: Vec<StepItem>) -> Act {
    let cautions = &[Caution::HotPlastisol, Caution::Fumes];
    Act { kind: StepKind::Heat, name, cautions, items }
}

/// The lines of a table of readings; the last is that the pot is hot, and what is done then.
fn readings(
    heating: Option<&Calculated<PlannedHeating>>,
    then: Then,
    system: System,
) -> Vec<StepItem> {
    let Some(heating) = heating.and_then(Calculated::known) else {
        let text = "Heat in short bursts, with a thermometer".to_string();
        return Vec::from([numbered(1, text.into(), "heated".to_string())]);
    };
    let mut from = None;
    let mut items: Vec<StepItem> = Vec::new();
    for (number, HeatBand { below, burst, .. }) in (1..).zip(&heating.bands) {
        let burst = &burst.text;
        let text = Sentence::of(system, |on| match from {
            None => format!("{burst} while it shows under {}", on.text(below)),
            Some(from) => format!("{burst} while it shows {} to {}", on.text(from), on.text(below)),
        });
        items.push(numbered(number, text, burst.clone()));
        from = Some(below);
    }
    let text = Sentence::of(system, |on| {
        let (from, to) = (on.text(&heating.shoot_from), on.text(&heating.shoot_to));
        format!("It shows {from} to {to}: {}", then.words())
    });
    items.push(StepItem { id: "hot".to_string(), ..item(text, "in the window".to_string()) });
    items
}

fn loads(planned: &Draw, run: ShotSeries) -> Vec<StepItem> {
    let all = run.loads(planned.shots_per_load).count();
    let load = |(number, shots): (u32, u32)| {
        let (mold, per_shot) = (&planned.mold, &planned.per_shot.text);
        let text = format!("Load {number} of {all}: {shots} × {mold}, {per_shot} a shot");
        let amount = format!("{mold}: {shots} × {per_shot}");
        StepItem { shots: Some(shots), ..numbered(number, text.into(), amount) }
    };
    (1..).zip(run.loads(planned.shots_per_load)).map(load).collect()
}

#[cfg(test)]
mod tests {
    use super::begins_with;

    #[test]
    fn the_id_of_a_pot_begins_with_its_first_mix() {
        for id in ["dusk", "dusk for worm", "dusk (2)", "dusk for worm (2)"] {
            assert!(begins_with(id, "dusk"), "{id}");
        }
        for id in ["dusk + plain", "dusky", "plain", "plain for dusk"] {
            assert!(!begins_with(id, "dusk"), "{id}");
        }
        assert!(begins_with("a~1b for worm", "a/b"));
    }
}
