//! Following each pot from what went in to what was left, against the plan.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

#[cfg(feature = "document")]
use super::colors;
use super::draws::{Counted, Shot};
use super::formula::{Measures, Written, written};
use super::found::{Sample, found};
use super::jar::{Rest, jars};
use super::told::{Told, pot_path, told};
use super::{
    Actuals, HeatTimed, Jar, MadePart, MeasuredAndWeighed, PotActuals, PotRecord, Record,
    RecordError, StageRecord, WentIn,
};
use crate::bench::Tool;
use crate::book::Book;
#[cfg(feature = "document")]
use crate::document::book::FormulaEntry;
use crate::fault::{Fault, Faults};
#[cfg(feature = "document")]
use crate::formula::Formula;
use crate::material::ShotWindow;
use crate::mix::{MaterialId, Mix, MixError, Phase, reference_temperature};
use crate::plan::{Plan, Pot, Stage};
use crate::quantity::{Dimension, Mass, Ratio, Rational, Time, Volume};
use crate::shot::Melt;
use crate::show::{Shown, text};

/// The record, or all that cannot have been.
pub(super) fn record(plan: &Plan, book: &Book, actuals: &Actuals) -> Result<Record, Faults> {
    let mut follow = Follow::of(plan, book);
    follow.check_pots(plan, actuals);
    let pots: Vec<PotRecord> = plan
        .pots
        .iter()
        .filter_map(|pot| {
            let actual = actuals.pots.iter().find(|actual| actual.pot == pot.pot);
            follow.pot(plan, pot, actual)
        })
        .collect();
    let molds = follow.molds();
    // What is wrong with weights has been reported with them.
    let found =
        if follow.faults.is_empty() { found(&follow.samples, book) } else { Ok(Vec::new()) };
    let found = follow.keep("/pots", found).unwrap_or_default();
    match Faults::from_vec(follow.faults) {
        Some(faults) => Err(faults),
        None => Ok(Record {
            #[cfg(feature = "document")]
            format: crate::document::Format::V1,
            shop: plan.shop.clone(),
            day: plan.day.clone(),
            measures: plan.measures,
            pots,
            molds,
            found,
            jars: follow.jars,
            #[cfg(feature = "document")]
            saved: follow.saved,
            #[cfg(feature = "document")]
            colors: follow.colors,
        }),
    }
}

pub(super) struct Follow<'a> {
    pub(super) book: &'a Book,
    #[cfg(feature = "document")]
    day: Option<&'a String>,
    pub(super) faults: Vec<Fault>,
    pub(super) counted: Vec<Counted>,
    pub(super) samples: Vec<Sample>,
    jars: Vec<Jar>,
    #[cfg(feature = "document")]
    saved: Vec<super::Saved>,
    #[cfg(feature = "document")]
    colors: Vec<super::SeenColor>,
}

/// Contents of the pot.
#[derive(Default)]
struct Contents {
    planned: Mix,
    made: Mix,
    /// As made, by the measures that were used where the scale showed another mass: what a formula says.
    measured: Mix,
    measures: Measures,
}

impl<'a> Follow<'a> {
    #[cfg_attr(not(feature = "document"), allow(unused_variables))] // a book keeps colors with their day
    fn of(plan: &'a Plan, book: &'a Book) -> Self {
        Self {
            book,
            #[cfg(feature = "document")]
            day: plan.day.as_ref(),
            faults: Vec::new(),
            counted: Vec::new(),
            samples: Vec::new(),
            jars: Vec::new(),
            #[cfg(feature = "document")]
            saved: Vec::new(),
            #[cfg(feature = "document")]
            colors: Vec::new(),
        }
    }
}

impl Follow<'_> {
    pub(super) fn keep<T>(&mut self, path: &str, result: Result<T, RecordError>) -> Option<T> {
        result.map_err(|error| self.faults.push(Fault::at(path, &error))).ok()
    }

    fn check_pots(&mut self, plan: &Plan, actuals: &Actuals) {
        for (index, actual) in actuals.pots.iter().enumerate() {
            let path = pot_path(&actual.pot);
            if !plan.pots.iter().any(|pot| pot.pot == actual.pot) {
                let known: Vec<&str> = plan.pots.iter().map(|pot| pot.pot.as_str()).collect();
                let (pot, known) = (actual.pot.clone(), known.join(", "));
                self.faults.push(Fault::at(path, &RecordError::NoPot { pot, known }));
            } else if actuals.pots.iter().take(index).any(|earlier| earlier.pot == actual.pot) {
                self.faults.push(Fault::at(path, &RecordError::PotTwice(actual.pot.clone())));
            }
        }
    }

    fn pot(&mut self, plan: &Plan, pot: &Pot, actual: Option<&PotActuals>) -> Option<PotRecord> {
        let path = pot_path(&pot.pot);
        let told = told(pot, actual, self.book, &mut self.faults);
        let mut contents = Contents::default();
        let before = pot.heats.in_all.map(|all| all.saturating_sub(pot.heats.count));
        let mut balance = Balance { heats: before, ..Balance::default() };
        let brought = self.brought(pot);
        self.keep(&path, brought.and_then(|mix| contents.both(&mix).map(|()| mix.mass())))
            .map(|mass| balance.put_in += mass)?;
        let mut stages = Vec::new();
        for (index, (stage, told)) in pot.stages.iter().zip(&told).enumerate() {
            let at = At {
                pot,
                stage,
                is_first: index == 0,
                is_last: index.saturating_add(1) == pot.stages.len(),
            };
            stages.push(self.stage(&at, told, &mut contents, &mut balance)?);
        }
        let lost = balance.left.map(|left| balance.put_in - balance.shot - left);
        let heats = stages.iter().fold(0_u32, |sum, stage| sum.saturating_add(stage.heats));
        let spent = spent(pot, heats);
        let jars = jars(plan, pot, balance.rests, spent.as_ref(), self.book, &self.jars);
        let jars = self.keep(&path, jars)?;
        self.jars.extend(jars);
        Some(PotRecord {
            pot: pot.pot.clone(),
            stages,
            put_in: text::mass(balance.put_in),
            shot: text::mass(balance.shot),
            left: balance.left.map(text::mass),
            lost: lost.map(signed_mass),
            planned_lost: pot.lost.clone(),
            heats: balance.heats,
            spent,
            notes: told.iter().filter_map(|told| told.notes).map(ToString::to_string).collect(),
        })
    }

    /// Mix that was in the pot already, and from the shelf, as planned.
    fn brought(&self, pot: &Pot) -> Result<Mix, RecordError> {
        let mut mix = Mix::new();
        let there = pot.there.iter().flat_map(|there| &there.parts);
        for brought in there.chain(pot.from_shelf.iter().flat_map(|from| &from.brings)) {
            mix.add(self.material(&brought.material)?, brought.mass.quantity)?;
        }
        Ok(mix)
    }

    fn material(&self, name: &str) -> Result<MaterialId, RecordError> {
        let found = self.book.materials.find(name);
        found.ok_or_else(|| RecordError::UnknownMaterial(name.to_string()))
    }

    fn stage(
        &mut self,
        at: &At<'_>,
        told: &Told<'_>,
        contents: &mut Contents,
        balance: &mut Balance,
    ) -> Option<StageRecord> {
        let (pot, stage, path) = (at.pot, at.stage, &told.path);
        let added = self.added(stage, told, |one| one.weighed.or(one.by_book()));
        let added = self.keep(path, added)?;
        let measured = self.added(stage, told, |one| self.as_measured(stage, one));
        let measured = self.keep(path, measured)?;
        balance.put_in += added.mass();
        let wanted = self.wanted(stage);
        let together = wanted.and_then(|wanted| {
            contents.planned.merge(&wanted)?;
            contents.made.merge(&added)?;
            contents.measured.merge(&measured)?;
            Ok(())
        });
        self.keep(path, together)?;
        contents.measures.note(stage, told, self.book);
        let written = written(stage, &contents.measured, &contents.measures, self.book);
        let written = self.keep(path, written)?;
        let made = self.made(&added, told, contents, &written);
        let made = self.keep(path, made)?;
        let melt = self.melt(stage, &contents.made);
        let pairs = self.pairs(stage, told);
        let pairs = self.keep(path, pairs)?;
        let shot = self.draws(pot, stage, told, melt)?;
        #[cfg(feature = "document")]
        let (color, body) = self.formulas(pot, stage, told, &written)?;
        #[cfg(feature = "document")]
        self.see(at, told, color.is_some(), &made);
        let held = contents.made.mass();
        let heats = heats(stage, told);
        let heats = self.keep(path, heats)?;
        let after = self.after(at, told, &shot, held, heats)?;
        balance.shot += shot.takes - shot.back;
        balance.left = told.left.filter(|_| at.is_last);
        balance.heats = balance.heats.map(|before| before.saturating_add(heats));
        balance.rests.push(Rest {
            formulas: stage.formulas.clone(),
            mix: contents.made.clone(),
            cup: if at.is_last { after } else { Mass::default() },
            sprues: shot.sprues - shot.back,
            heats: balance.heats,
            name: told.jar.map(ToString::to_string),
        });
        self.keep(path, contents.carry_on(stage, held, after))?;
        Some(StageRecord {
            formulas: stage.formulas.clone(),
            made,
            per: written.per.to_string(),
            held: text::mass(held),
            density: melt.map(|melt| text::density(melt.cold)),
            density_uncertainty: stage.density_uncertainty.clone(),
            planned_density: stage.density.clone(),
            hot_density: melt.map(|melt| text::density(melt.hot)),
            pairs,
            timed: self.timed(at, told, held),
            heats,
            injector: told.injector.iter().copied().map(text::mass).collect(),
            draws: shot.draws,
            after: text::mass(after),
            after_weighed: told.left.is_some(),
            #[cfg(feature = "document")]
            looks: told.looks.map(|looks| looks.color.clone()),
            #[cfg(feature = "document")]
            color,
            #[cfg(feature = "document")]
            body,
        })
    }

    /// Densities of the mix as made; `None` if the book lacks one.
    fn melt(&self, stage: &Stage, made: &Mix) -> Option<Melt> {
        let window = stage.shoot_from.as_ref().zip(stage.shoot_to.as_ref());
        let hot_at = window.map_or_else(reference_temperature, |(low, high)| {
            ShotWindow { low: low.quantity, high: high.quantity }.middle()
        });
        let density = |at| made.density(&self.book.materials, Phase::Fused, at, 0.0).ok();
        Some(Melt::new(density(hot_at)?, density(reference_temperature())?))
    }

    /// Heats as timed. What was in the pot is known of the first heat of a stage alone.
    fn timed(&self, at: &At<'_>, told: &Told<'_>, held: Mass) -> Vec<HeatTimed> {
        let degrees = |at| text::temperature(at, self.book.system);
        let each = told.heats.iter().enumerate().map(|(place, heat)| HeatTimed {
            mass: (place == 0).then(|| text::mass(held)),
            time: text::oven_time(heat.time),
            from: heat.from.map(degrees),
            to: heat.to.map(degrees),
            setting: heat.setting.map(text::percent),
            first: at.is_first && place == 0,
        });
        each.collect()
    }

    /// Amounts that were measured and weighed.
    fn pairs(
        &self,
        stage: &Stage,
        told: &Told<'_>,
    ) -> Result<Vec<MeasuredAndWeighed>, RecordError> {
        let mut pairs = Vec::new();
        for one in &told.went_in {
            if let Some(weighed) = one.weighed {
                pairs.extend(self.pair(stage, one, weighed)?);
            }
        }
        Ok(pairs)
    }

    /// A material as measured and as weighed; `None` if only the scale measured it.
    fn pair(
        &self,
        stage: &Stage,
        one: &WentIn,
        weighed: Mass,
    ) -> Result<Option<MeasuredAndWeighed>, RecordError> {
        const PURPOSE: &str = "its measure";
        let material = self.book.materials.get(one.material)?;
        let (measured, drops, volume, by_book) = if let Some((amount, by_book)) = one.measured {
            let is_volume = amount.basis().is_none() && amount.dimension() == Dimension::VOLUME;
            let volume: Option<Volume> =
                if is_volume { Some(amount.to(self.book.system)?) } else { None };
            (amount.to_string(), amount.drops().map(Rational::to_f64), volume, by_book)
        } else {
            let listed = stage.weigh.iter().find(|weigh| weigh.material == material.name);
            let Some(way) = listed.map(|weigh| &weigh.best) else { return Ok(None) };
            let gives = way.gives.quantity;
            let (drops, volume) = match way.tool {
                Tool::Drops => {
                    let drop = material.drop_mass(PURPOSE).map_err(MixError::from)?;
                    (Some(libm::round((gives / drop).value)), None)
                }
                Tool::Spoons | Tool::Cup => (
                    None,
                    Some(gives / material.by_volume(PURPOSE).map_err(MixError::from)?.density()),
                ),
                _ => (None, None),
            };
            (way.measure.clone(), drops, volume, gives)
        };
        if let (None, None) = (drops, volume) {
            return Ok(None);
        }
        Ok(Some(MeasuredAndWeighed {
            material: material.name.clone(),
            measured,
            drops,
            volume: volume.map(|volume| text::volume(volume, self.book.system)),
            by_book: text::mass(by_book),
            weighed: text::mass(weighed),
        }))
    }

    /// Mix that the plan adds.
    fn wanted(&self, stage: &Stage) -> Result<Mix, RecordError> {
        let mut mix = Mix::new();
        for one in &stage.weigh {
            mix.add(self.material(&one.material)?, one.wanted.quantity)?;
        }
        Ok(mix)
    }

    /// Mass that went in: `stated`, else what the chosen measure gives.
    fn added(
        &self,
        stage: &Stage,
        told: &Told<'_>,
        stated: impl Fn(&WentIn) -> Option<Mass>,
    ) -> Result<Mix, RecordError> {
        let mut mix = Mix::new();
        for one in &told.went_in {
            mix.add(one.material, stated(one).unwrap_or_default())?;
        }
        for one in &stage.weigh {
            let material = self.material(&one.material)?;
            if !told.went_in.iter().any(|stated| stated.material == material) {
                mix.add(material, one.best.gives.quantity)?;
            }
        }
        Ok(mix)
    }

    /// Mass of what was measured, by the book: as stated, else by spoons or drops of the sheet, else as weighed.
    fn as_measured(&self, stage: &Stage, one: &WentIn) -> Option<Mass> {
        let name = self.book.materials.get(one.material).map(|material| &material.name);
        let listed = stage.weigh.iter().find(|weigh| Ok(&weigh.material) == name);
        let by_sheet = listed.filter(|weigh| weigh.best.tool != Tool::Balance);
        let by_sheet = by_sheet.map(|weigh| weigh.best.gives.quantity);
        one.by_book().or(by_sheet).or(one.weighed)
    }

    /// Contents of the pot, plastisols first and then by kind.
    fn made(
        &self,
        added: &Mix,
        told: &Told<'_>,
        contents: &Contents,
        written: &Written,
    ) -> Result<Vec<MadePart>, RecordError> {
        let materials = &self.book.materials;
        let base = contents.made.base_mass(materials)?;
        let planned_base = contents.planned.base_mass(materials)?;
        let mut parts = Vec::new();
        for portion in contents.made.portions() {
            let material = materials.get(portion.material)?;
            let ratio = portion.mass / base;
            let planned = contents.planned.mass_of(portion.material) / planned_base;
            let off = (planned.value > 0.0).then(|| ratio / planned - Ratio::from(1.0));
            let dose = written.doses.iter().find(|(known, _)| *known == portion.material);
            parts.push(MadePart {
                material: material.name.clone(),
                kind: material.kind,
                added: text::mass(added.mass_of(portion.material)),
                stated: told.went_in.iter().any(|one| one.material == portion.material),
                mass: text::mass(portion.mass),
                of_base: Shown::new(ratio, fine_percent(ratio)),
                dose: dose.map_or_else(|| "nothing".to_string(), |(_, dose)| dose.clone()),
                off: off.map(|off| Shown::new(off, text::signed_percent(off))),
            });
        }
        parts.sort_by_key(|part| part.kind);
        Ok(parts)
    }

    /// Color and body as made, as a book writes them; those with a name are saved.
    #[cfg(feature = "document")]
    fn formulas(
        &mut self,
        pot: &Pot,
        stage: &Stage,
        told: &Told<'_>,
        written: &Written,
    ) -> Option<(Option<FormulaEntry>, FormulaEntry)> {
        let notes = alloc::format!("As made: {} in pot {}.", stage.formulas.join(" + "), pot.pot);
        let seen = told.looks.map(|looks| colors::dated(looks, self.day));
        let mut entry = |formula: &Formula| {
            let entry = FormulaEntry::of(formula, &self.book.materials, self.book.system);
            let entry = self.keep(&told.path, entry.map_err(RecordError::from))?;
            Some(FormulaEntry { notes: Some(notes.clone()), ..entry })
        };
        let color = match &written.color {
            Some(color) => Some(FormulaEntry { color: seen.clone(), ..entry(color)? }),
            None => None,
        };
        // Pieces without a color look as their body does.
        let of_body = seen.filter(|_| color.is_none());
        let body = FormulaEntry { color: of_body, ..entry(&written.body)? };
        let pot = &pot.pot;
        let saved =
            [(told.save_as, "save_as", color.as_ref()), (told.body_as, "body_as", Some(&body))];
        for (name, field, formula) in saved {
            match (name, formula) {
                (Some(name), Some(formula)) => {
                    let at = alloc::format!("{}/{field}", told.path);
                    let (materials, system) = (&self.book.materials, self.book.system);
                    self.faults.extend(formula.faults(name, &at, materials, system));
                    let (name, pot, formula) = (name.to_string(), pot.clone(), formula.clone());
                    self.saved.push(super::Saved { name, pot, formula });
                }
                (Some(_), None) => {
                    let at = alloc::format!("{}/save_as", told.path);
                    self.faults.push(Fault::at(at, &RecordError::NoColor(pot.clone())));
                }
                (None, _) => {}
            }
        }
        Some((color, body))
    }

    /// Keeps the color that a finished piece had.
    #[cfg(feature = "document")]
    fn see(&mut self, at: &At<'_>, told: &Told<'_>, has_color: bool, made: &[MadePart]) {
        let Some(looks) = told.looks else { return };
        let saved_as = if has_color { told.save_as } else { told.save_as.or(told.body_as) };
        let seen = colors::seen(at.pot, at.stage, looks, saved_as, made, self.book, self.day);
        let seen = self.keep(&alloc::format!("{}/looks", told.path), seen);
        self.colors.extend(seen);
    }

    /// Mix in the cup after the last shot.
    fn after(
        &mut self,
        at: &At<'_>,
        told: &Told<'_>,
        shot: &Shot,
        held: Mass,
        heats: u32,
    ) -> Option<Mass> {
        let path = &told.path;
        if let Some(left) = told.left {
            let possible = left <= held + shot.back;
            let checked =
                if possible { Ok(left) } else { Err(RecordError::LeftMore { left, held }) };
            return self.keep(&alloc::format!("{path}/left"), checked);
        }
        let after = held - shot.takes + shot.back - self.kept(at.stage, told, heats);
        if after > Mass::default() || at.is_last {
            return Some(after.max(Mass::default()));
        }
        self.keep(path, Err(RecordError::ShotMore { shot: shot.takes, held }))
    }

    /// Mass that stayed in cup and injector: by the plan, less what the plan gives the injector, plus what that kept.
    fn kept(&self, stage: &Stage, told: &Told<'_>, heats: u32) -> Mass {
        let planned = stage.draws.iter().fold(Mass::default(), |sum, draw| {
            sum + draw.per_shot.quantity * f64::from(draw.shots)
        });
        let kept =
            stage.holds.quantity - planned + stage.sprues_back.quantity - stage.carried.quantity;
        if told.injector.is_empty() && heats == stage.heats {
            return kept;
        }
        let each = self.injector_keeps(stage);
        let injector = if told.injector.is_empty() {
            each * f64::from(heats)
        } else {
            told.injector.iter().fold(Mass::default(), |sum, kept| sum + *kept)
        };
        kept - each * f64::from(stage.heats) + injector
    }

    /// Mass that the plan gives the injector at each heat.
    fn injector_keeps(&self, stage: &Stage) -> Mass {
        let hot = stage.holds.quantity / stage.fills_hot.quantity;
        let voids = stage.draws.iter().filter_map(|draw| self.mold(&draw.mold)).map(|it| it.voids);
        let fewest = voids.reduce(f64::min).unwrap_or(0.0);
        self.book.injector.keeps * hot * (1.0 - fewest)
    }
}

/// Heats of a stage: as stated, else as planned and at least those timed.
fn heats(stage: &Stage, told: &Told<'_>) -> Result<u32, RecordError> {
    let timed = u32::try_from(told.heats.len()).unwrap_or(u32::MAX);
    let Some(reheats) = told.reheats else { return Ok(stage.heats.max(timed)) };
    let heats = reheats.saturating_add(1);
    if timed > heats {
        return Err(RecordError::TimedMore { timed: told.heats.len(), reheats, heats });
    }
    Ok(heats)
}

/// Heat spent by `heats` of a pot, each as planned.
fn spent(pot: &Pot, heats: u32) -> Option<Shown<Time>> {
    let planned = pot.heats.budget.as_ref()?.known()?;
    if heats == pot.heats.count || pot.heats.count == 0 {
        return Some(planned.spent.clone());
    }
    let before = planned.before.as_ref().map(|before| before.quantity).unwrap_or_default();
    let each = (planned.spent.quantity - before) / f64::from(pot.heats.count);
    Some(text::minutes(before + each * f64::from(heats)))
}

/// A stage of a pot.
struct At<'p> {
    pot: &'p Pot,
    stage: &'p Stage,
    is_first: bool,
    is_last: bool,
}

/// Masses in and out of a pot so far.
#[derive(Default)]
struct Balance {
    put_in: Mass,
    shot: Mass,
    left: Option<Mass>,
    /// Heats so far, those of leftovers in it included; `None` if not known.
    heats: Option<u32>,
    rests: Vec<Rest>,
}

impl Contents {
    fn both(&mut self, mix: &Mix) -> Result<(), RecordError> {
        self.planned.merge(mix)?;
        self.made.merge(mix)?;
        self.measured.merge(mix)?;
        Ok(())
    }

    /// Leaves what the next stage begins with.
    fn carry_on(&mut self, stage: &Stage, held: Mass, after: Mass) -> Result<(), RecordError> {
        let planned = stage.carried.quantity / stage.holds.quantity;
        self.planned = self.planned.scaled(planned.value)?;
        self.made = self.made.scaled((after / held).value)?;
        self.measured = self.measured.scaled((after / held).value)?;
        Ok(())
    }
}

/// A mass that may be below zero.
fn signed_mass(mass: Mass) -> Shown<Mass> {
    if mass >= Mass::default() {
        return text::mass(mass);
    }
    Shown::new(mass, alloc::format!("-{}", text::mass(-mass).text))
}

/// A ratio in per cent, to four digits.
fn fine_percent(ratio: Ratio) -> String {
    crate::show::percent(&ratio).to_string()
}

#[cfg(all(test, feature = "document"))]
mod tests;
