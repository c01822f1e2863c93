//! A pot that came out wrong, and the ways to go on with it.
//!
//! A pot is off where a material's ratio to the base differs from the target's by more than its tolerance. More of a material
//! up to its own largest dose ([`most`](crate::material::MostDose)) is no fault, and neither is what was added on purpose: that
//! belongs to the target as it is. The ways are
//!
//! - *as it is*, if all is within tolerance;
//! - *within*: the smallest additions that bring all of it within tolerance ([`correction::least_within`]);
//! - *exact*: the smallest that make it right;
//! - *nearest*: if the cup is too small for that, the nearest mix that fits ([`correction::nearest_in_cup`]); if no base may
//!   be added, what is short is topped up and what is too much stays;
//! - *keep*: nothing is added, and the mix is a formula of its own.
//!
//! Into a hot pot, and into one that was shot from, fresh base goes only if the book allows it. An addition is measured to the
//! tolerance of *all* of its material in the pot, for that is what the piece shows. One that no tool can measure is left out
//! where its material keeps the tolerance without it, and is named. A way within tolerance is checked with the measures that
//! the bench gives: it aims at the whole tolerance, or leaves the tools a part of it, whichever takes less.

mod becomes;
#[cfg(feature = "document")]
pub(crate) mod meant;

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

pub use becomes::Becomes;

use super::correction::{self, Bound, CorrectionError};
use super::cost::MoneyShown;
use super::tool_names::ToolNames;
use super::weigh::{self, Addition, WeighError};
use super::{MaterialMass, Off, Weigh};
use crate::bench::MeasureError;
use crate::book::Book;
use crate::caution::Caution;
use crate::codes::{code, codes};
use crate::cost::{Money, Used};
use crate::fault::{Diagnose, Fault};
use crate::formula::{Recipe, WrittenIn};
use crate::material::{Kind, Material};
use crate::mix::{MaterialId, Mix, MixError, Phase};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, Volume};
use crate::show::{Note, Shown, part, text};
use crate::words::words;

/// A pot that is not what it should be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mispour<'a> {
    /// The shop's book: materials, tools, tolerances, and what else a pot could become.
    pub book: &'a Book,
    /// The mix that the pot should have, on any scale.
    pub target: &'a Target,
    /// The mix in it.
    pub pot: &'a Mix,
    /// Maximum fill of the cup. Default: the book's largest cup, as full as its limits allow.
    pub cup: Option<Volume>,
    /// Share of the pot up to which a material that does not belong may stay, 0 to 1.
    pub trace: Ratio,
    /// Materials that went in on purpose, other than the target has them.
    pub on_purpose: &'a [MaterialId],
    /// Whether it is hot.
    pub is_hot: bool,
    /// Whether some of it has been shot.
    pub is_used: bool,
}

/// The mix that a pot should have: ratios to its base.
#[derive(Debug, Clone, PartialEq)]
pub struct Target {
    parts: Vec<TargetPart>,
}

/// A material of a target.
#[derive(Debug, Clone, Copy, PartialEq)]
struct TargetPart {
    material: MaterialId,
    /// Mass per mass of base; of a part of the base, its share.
    ratio: f64,
    written: WrittenIn,
    is_base: bool,
}

impl From<&Recipe> for Target {
    fn from(recipe: &Recipe) -> Self {
        let part = |is_base| {
            move |one: &crate::formula::Ingredient| TargetPart {
                material: one.material,
                ratio: one.ratio,
                written: one.written,
                is_base,
            }
        };
        let base = recipe.base().iter().map(part(true));
        Self { parts: base.chain(recipe.additives().iter().map(part(false))).collect() }
    }
}

impl Target {
    /// The composition of `mix`, each material dosed in the measure that `written` has for it.
    ///
    /// # Errors
    /// The mix has no base.
    pub fn of_mix(
        mix: &Mix,
        written: impl Fn(MaterialId) -> WrittenIn,
        book: &Book,
    ) -> Result<Self, MixError> {
        let base = mix.base_mass(&book.materials)?;
        if base <= Mass::default() {
            return Err(MixError::NoBase);
        }
        let mut parts = Vec::with_capacity(mix.portions().len());
        for portion in mix.portions().iter().filter(|portion| portion.mass > Mass::default()) {
            parts.push(TargetPart {
                material: portion.material,
                ratio: (portion.mass / base).value,
                written: written(portion.material),
                is_base: book.materials.get(portion.material)?.kind == Kind::Plastisol,
            });
        }
        Ok(Self { parts })
    }

    /// Whether it has the materials of `other`, each within its tolerance: what a sheet's measures make of formulas is
    /// these formulas.
    fn is_within(&self, other: &Self, book: &Book) -> bool {
        let near = |part: &TargetPart| {
            let own = book.materials.get(part.material).ok().and_then(|one| one.tolerance);
            let tolerance = own.unwrap_or(book.limits.tolerance);
            other
                .part(part.material)
                .is_some_and(|known| (part.ratio - known.ratio).abs() <= tolerance * known.ratio)
        };
        self.parts.len() == other.parts.len() && self.parts.iter().all(near)
    }

    fn part(&self, material: MaterialId) -> Option<&TargetPart> {
        self.parts.iter().find(|part| part.material == material)
    }

    /// Whether it holds `material`.
    #[must_use]
    pub fn contains(&self, material: MaterialId) -> bool {
        self.part(material).is_some()
    }
}

words! {
    /// A way to go on with a pot.
    pub enum WayKind {
        /// Nothing is added: all is within its tolerance.
        AsItIs = "as-it-is",
        /// The smallest additions with which all is within its tolerance.
        Within = "within",
        /// The smallest additions that make it right.
        Exact = "exact",
        /// What comes nearest where it cannot be made right: in this cup, without base, or with these tools.
        Nearest = "nearest",
        /// Nothing is added: the mix is a formula of its own.
        Keep = "keep",
    }
}

part! {
    /// A pot that came out wrong, and the ways to go on with it.
    pub struct PutRight {
        /// The mix in the pot.
        pub pot: Vec<PotMaterial>,
        /// Mass of the pot.
        pub mass: Shown<Mass>,
        /// Its volume, cold and liquid.
        pub volume: Shown<Volume>,
        /// Maximum fill of the cup.
        pub cup: Shown<Volume>,
        /// Whether it is hot.
        pub hot: bool,
        /// Whether fresh base may go in.
        pub fresh_base: bool,
        /// The ways, the smallest additions first; keeping it as it is comes last.
        pub ways: Vec<RightWay>,
        /// Ways that are not offered, and why.
        pub not_offered: Vec<Note>,
        /// Materials that do not belong, but are little enough to stay.
        pub traces: Vec<MaterialMass>,
        /// Materials that do not belong.
        pub foreign: Vec<MaterialMass>,
        /// Why the pot cannot be made right.
        pub fault: Option<Fault>,
        /// Other formulas of the book that it could become, the smallest addition first; empty if all is within tolerance.
        pub becomes: Vec<Becomes>,
        /// Dangers of adding to it.
        pub cautions: Vec<Caution>,
    }
}

part! {
    /// A material in the pot.
    pub struct PotMaterial {
        /// Which.
        pub material: String,
        /// How much of it.
        pub mass: Shown<Mass>,
        /// How far it is off per mass of base; none if the target lacks it or there is no base.
        pub off: Option<Shown<Ratio>>,
        /// Why that is no fault: it went in on purpose, or is below its largest dose.
        pub allowed: Option<String>,
    }
}

part! {
    /// A way to go on with a pot.
    pub struct RightWay {
        /// Which.
        pub way: WayKind,
        /// Additions, in measures of the bench.
        pub add: Vec<Weigh>,
        /// Materials of which too little is missing for any tool; they keep their tolerance without it.
        pub too_little: Vec<String>,
        /// Mass of all additions.
        pub adds: Shown<Mass>,
        /// What these cost; none if the book lacks a price.
        pub cost: Option<MoneyShown>,
        /// Mass of the pot then.
        pub mass: Shown<Mass>,
        /// Its volume then, cold and liquid.
        pub volume: Shown<Volume>,
        /// How far each material is off per mass of base then, as the bench measures.
        pub off: Vec<Off>,
        /// Whether all is within tolerance then.
        pub within: bool,
        /// All that is in the pot then, by material.
        pub then: Vec<MaterialMass>,
        /// What to mind at the bench, each a sentence.
        pub details: Vec<String>,
    }
}

/// The materials of pot and target in the order of the table, and what each may be.
struct Checked {
    materials: Vec<MaterialId>,
    held: Vec<Mass>,
    /// Exactly right, surplus that is allowed included.
    exact: Vec<Bound>,
    /// Within tolerance.
    within: Vec<Bound>,
}

/// Share of its tolerance that the base of additions within tolerance is measured to.
const FINE_BASE: f64 = 0.25;

/// Parts of the tolerance up to which additions within it leave what is too much; of those that the tools of the bench keep,
/// the smallest counts.
const AIMS: [f64; 8] = [1.0, 0.97, 0.94, 0.9, 0.85, 0.75, 0.5, 0.25];

/// The same for what is too little: none of it is what the formula asks for.
const LOW_AIMS: [f64; 3] = [1.0, 0.5, 0.0];

impl Mispour<'_> {
    /// Calculates the ways to go on.
    ///
    /// # Errors
    /// An empty pot, or one without base; one that is fuller than the cup may be; a density that is missing. A material that
    /// does not belong is not an error: the answer has its fault.
    pub fn put_right(&self) -> Result<PutRight, MispourError> {
        if self.pot.mass() <= Mass::default() {
            return Err(MispourError::EmptyPot);
        }
        let cup = self.cup()?;
        let filled = self.pot.volume(&self.book.materials, Phase::Liquid)?;
        if filled > cup {
            return Err(CorrectionError::OverFull { filled, capacity: cup }.into());
        }
        let target = self.with_purpose()?;
        let asked = Mispour { target: &target, ..*self };
        let mut answer = asked.contents(cup)?;
        let foreign = asked.foreign(&target);
        let traces = asked.pot.portions().iter().map(|portion| portion.material);
        let traces: Vec<MaterialId> =
            traces.filter(|id| !target.contains(*id) && !foreign.contains(id)).collect();
        answer.traces = asked.named(&traces)?;
        if foreign.is_empty() {
            asked.ways(&mut answer, cup)?;
        } else {
            answer.fault = Some(asked.foreign_fault(&foreign)?);
            answer.foreign = asked.named(&foreign)?;
        }
        let keep = asked.way(WayKind::Keep, &asked.checked()?, &[])?;
        answer.ways.extend(keep);
        if !answer.ways.iter().any(|way| way.way == WayKind::AsItIs) {
            answer.becomes = asked.becomes(cup)?;
        }
        Ok(answer)
    }

    /// Whether fresh base may go in: into a pot in use only if the book allows it.
    fn takes_base(&self) -> bool {
        self.book.limits.fresh_base || !(self.is_hot || self.is_used)
    }

    /// The target with what went in on purpose as it is.
    fn with_purpose(&self) -> Result<Target, MispourError> {
        let base = self.pot.base_mass(&self.book.materials)?;
        if base <= Mass::default() {
            return Err(MixError::NoBase.into());
        }
        let mut target = self.target.clone();
        for &material in self.on_purpose {
            let ratio = (self.pot.mass_of(material) / base).value;
            target.parts.retain(|part| part.material != material);
            if ratio > 0.0 {
                let written = self.target.part(material).map_or(WrittenIn::Mass, |it| it.written);
                target.parts.push(TargetPart { material, ratio, written, is_base: false });
            }
        }
        Ok(target)
    }

    /// The ways but keeping it, for a pot in which all belongs.
    fn ways(&self, answer: &mut PutRight, cup: Volume) -> Result<(), MispourError> {
        let checked = self.checked()?;
        let needed = self.additions(&checked, &checked.within, self.takes_base());
        let is_within = needed.is_some_and(|additions| is_nothing(&additions));
        if is_within {
            answer.ways.extend(self.way(WayKind::AsItIs, &checked, &[])?);
        }
        let exact = self.additions(&checked, &checked.exact, self.takes_base());
        let Some(exact) = exact else {
            self.without_base(answer, &checked, is_within)?;
            return Ok(());
        };
        if !is_within && let Some(way) = self.within(&checked, cup)? {
            answer.ways.push(way);
        }
        if is_nothing(&exact) {
            return Ok(());
        }
        let finished = self.mix_with(&checked.materials, &exact)?;
        if finished.volume(&self.book.materials, Phase::Liquid)? <= cup {
            self.offer(answer, WayKind::Exact, &checked, &exact)?;
        } else {
            self.in_the_cup(answer, &checked, &exact, &finished, cup)?;
        }
        Ok(())
    }

    /// The nearest mix that the cup holds, where the exact one does not fit.
    fn in_the_cup(
        &self,
        answer: &mut PutRight,
        checked: &Checked,
        exact: &[Mass],
        finished: &Mix,
        cup: Volume,
    ) -> Result<(), MispourError> {
        let volume = self.volume(finished)?;
        answer.not_offered.push(Note {
            code: code!("pot-over-cup").to_string(),
            message: format!(
                "To make it exact takes {} more, {} in all: the cup may hold {}.",
                text::mass(exact.iter().fold(Mass::default(), |sum, one| sum + *one)).text,
                volume.on_both_scales(),
                text::volume(cup, self.book.system).on_both_scales(),
            ),
        });
        let shares = self.shares(checked);
        let density = self.densities(&checked.materials)?;
        let near =
            correction::nearest_in_cup(&checked.held, &shares, &density, cup, Ratio::from(1.0))?;
        self.offer(answer, WayKind::Nearest, checked, &near.correction.additions)
    }

    /// What can be done without fresh base where the exact way takes some.
    fn without_base(
        &self,
        answer: &mut PutRight,
        checked: &Checked,
        is_within: bool,
    ) -> Result<(), MispourError> {
        if let Some(exact) = self.additions(checked, &checked.exact, true) {
            let base = checked.materials.iter().zip(&exact).filter(|(material, _)| {
                self.target.part(**material).is_some_and(|part| part.is_base)
            });
            let base = base.fold(Mass::default(), |sum, (_, mass)| sum + *mass);
            let state = if self.is_hot { "a hot pot" } else { "a pot that was shot from" };
            answer.not_offered.push(Note {
                code: code!("fresh-base-not-allowed").to_string(),
                message: format!(
                    "To make it exact takes {} of fresh base. The book allows none in {state} (\"fresh_base\" in the limits).",
                    text::mass(base).text
                ),
            });
        }
        let additions = correction::top_up(&checked.held, &checked.exact);
        if !is_within {
            self.offer(answer, WayKind::Nearest, checked, &additions)?;
        }
        Ok(())
    }

    /// The smallest additions that the bench measures within tolerance; `None` if the cup or the tools do not allow it.
    fn within(&self, checked: &Checked, cup: Volume) -> Result<Option<RightWay>, MispourError> {
        let mut best: Option<RightWay> = None;
        let aims =
            LOW_AIMS.into_iter().flat_map(|low| AIMS.into_iter().map(move |high| [low, high]));
        for aim in aims {
            let bounds = self.bounds(&checked.materials, aim)?;
            let Some(additions) = self.additions(checked, &bounds, self.takes_base()) else {
                continue;
            };
            match self.way(WayKind::Within, checked, &listed(checked, &additions)) {
                Ok(Some(way)) if way.within && way.volume.quantity <= cup => {
                    let least = best.as_ref().map(|best| best.adds.quantity);
                    if least.is_none_or(|least| way.adds.quantity < least) {
                        best = Some(way);
                    }
                }
                Ok(_) | Err(MispourError::Measure { .. }) => {}
                Err(error) => return Err(error),
            }
        }
        Ok(best)
    }

    /// Offers a way, or says why the bench cannot take it.
    fn offer(
        &self,
        answer: &mut PutRight,
        way: WayKind,
        checked: &Checked,
        additions: &[Mass],
    ) -> Result<(), MispourError> {
        match self.way(way, checked, &listed(checked, additions)) {
            // What the tools of the bench cannot do finer is not exact.
            Ok(Some(coarse)) if way == WayKind::Exact && !coarse.within => {
                answer.ways.push(RightWay { way: WayKind::Nearest, ..coarse });
            }
            Ok(offered) => answer.ways.extend(offered),
            Err(error @ MispourError::Measure { .. }) => answer.not_offered.push(Note {
                code: error.code().to_string(),
                message: format!("Not to be measured ({way}): {error} {}", error.help()),
            }),
            Err(error) => return Err(error),
        }
        Ok(())
    }

    /// One way, with the measures of the bench; `None` if it is to add something and no tool is needed for it.
    fn way(
        &self,
        kind: WayKind,
        checked: &Checked,
        additions: &[(MaterialId, Mass)],
    ) -> Result<Option<RightWay>, MispourError> {
        let names = ToolNames::of(self.book);
        let tools = weigh::Tools::new(&names, self.book);
        let mut wanted = Vec::with_capacity(additions.len());
        for &(material, mass) in additions {
            let written = self.target.part(material).map_or(WrittenIn::Mass, |it| it.written);
            let total = self.pot.mass_of(material) + mass;
            let addition = Addition { material, written, wanted: mass, total };
            // Base is most of what is added, and rounding it is most of what could be saved.
            let is_base = self.target.part(material).is_some_and(|part| part.is_base);
            let fine = if is_base && kind == WayKind::Within { FINE_BASE } else { 1.0 };
            wanted.push((addition, self.tolerance(material)? * fine));
        }
        let made = weigh::list_to_mix(&wanted, self.book, &names)?;
        let mut mix = self.pot.clone();
        let mut used = Vec::new();
        for listed in &made.list {
            mix.add(listed.addition.material, listed.gives())?;
            used.push(Used { material: listed.material, mass: listed.gives() });
        }
        let adds_nothing = used.is_empty();
        if adds_nothing && !matches!(kind, WayKind::AsItIs | WayKind::Keep) {
            return Ok(None);
        }
        let off = self.off(&mix, checked)?;
        let within = self.is_within(&mix, checked)?;
        let too_little = made.left_out.iter().map(|material| self.name(*material));
        let too_little = too_little.collect::<Result<_, _>>()?;
        let details = if adds_nothing {
            Vec::new()
        } else {
            self.details(&used.iter().map(|it| it.material).collect::<Vec<_>>())
        };
        Ok(Some(RightWay {
            way: kind,
            add: made.list.iter().map(|listed| listed.shown(tools)).collect(),
            too_little,
            adds: text::mass(used.iter().fold(Mass::default(), |sum, used| sum + used.mass)),
            cost: self.cost(&used),
            mass: text::mass(mix.mass()),
            volume: self.volume(&mix)?,
            off,
            within,
            then: self.masses(&mix)?,
            details,
        }))
    }

    /// What additions cost; `None` if a price is missing or prices are in different currencies.
    fn cost(&self, used: &[Used<'_>]) -> Option<MoneyShown> {
        let mut sum: Option<Money> = None;
        for used in used {
            let cost = used.cost(self.book.system).ok()?;
            sum = Some(match sum {
                Some(sum) => sum.plus(cost).ok()?,
                None => cost,
            });
        }
        sum.map(MoneyShown::from)
    }

    /// What to mind when `added` go in.
    fn details(&self, added: &[&Material]) -> Vec<String> {
        let mut details = Vec::new();
        if self.is_hot {
            details.push(
                "The pot is hot: add a little at a time, stir, and read again before you shoot."
                    .to_string(),
            );
            if added.iter().any(|material| material.kind == Kind::Plastisol) {
                details.push("Fresh base cools it and must fuse: heat it again.".to_string());
            }
            if added.iter().any(|material| material.kind == Kind::Salt) {
                details.push(Caution::DampSalt.reminder().to_string());
            }
        }
        details
    }

    /// The materials of pot and target, and what each may be.
    fn checked(&self) -> Result<Checked, MispourError> {
        let pot = self.pot.portions().iter().map(|portion| portion.material);
        let target = self.target.parts.iter().map(|part| part.material);
        let mut materials: Vec<MaterialId> = pot.chain(target).collect();
        materials.sort_unstable();
        materials.dedup();
        let held = materials.iter().map(|&material| self.pot.mass_of(material)).collect();
        let (exact, within) =
            (self.bounds(&materials, [0.0; 2])?, self.bounds(&materials, [1.0; 2])?);
        Ok(Checked { materials, held, exact, within })
    }

    /// What each material may be, so much of its tolerance down and up.
    fn bounds(
        &self,
        materials: &[MaterialId],
        [down, up]: [f64; 2],
    ) -> Result<Vec<Bound>, MispourError> {
        let mut bounds = Vec::with_capacity(materials.len());
        for &material in materials {
            bounds.push(match self.target.part(material) {
                Some(TargetPart { ratio, is_base: true, .. }) => Bound::Base(*ratio),
                Some(TargetPart { ratio, .. }) => {
                    let off = self.tolerance(material)?;
                    let most = self.most(material)?.unwrap_or(0.0);
                    let (low, high) = (ratio * (1.0 - off * down), ratio * (1.0 + off * up));
                    Bound::Between(low, high.max(most))
                }
                // A trace is let pass.
                None => Bound::Between(0.0, f64::INFINITY),
            });
        }
        Ok(bounds)
    }

    fn additions(
        &self,
        checked: &Checked,
        bounds: &[Bound],
        fresh_base: bool,
    ) -> Option<Vec<Mass>> {
        correction::least_within(&checked.held, bounds, fresh_base)
    }

    fn tolerance(&self, material: MaterialId) -> Result<f64, MispourError> {
        let own = self.book.materials.get(material)?.tolerance;
        Ok(own.unwrap_or(self.book.limits.tolerance))
    }

    /// The largest ratio of a material that does no harm, where the book states one.
    fn most(&self, material: MaterialId) -> Result<Option<f64>, MispourError> {
        let material = self.book.materials.get(material)?;
        let Some(most) = &material.most else { return Ok(None) };
        let mut base = Mix::new();
        for part in self.target.parts.iter().filter(|part| part.is_base) {
            base.add(part.material, Mass::from_si(part.ratio))?;
        }
        let density = base.mass() / base.volume(&self.book.materials, Phase::Liquid)?;
        let ratio = most.ratio(material, density, self.book.system).map_err(MixError::from)?;
        Ok(Some(ratio.value))
    }

    /// The ratios of the target, in the order of the materials.
    fn shares(&self, checked: &Checked) -> Vec<f64> {
        let share = |material: &MaterialId| self.target.part(*material).map_or(0.0, |it| it.ratio);
        checked.materials.iter().map(share).collect()
    }

    /// How far each material of the target is off per mass of base in `mix`; of a single base nothing.
    fn off(&self, mix: &Mix, checked: &Checked) -> Result<Vec<Off>, MispourError> {
        let base = mix.base_mass(&self.book.materials)?;
        let is_blend = self.target.parts.iter().filter(|part| part.is_base).count() > 1;
        let mut all = Vec::new();
        for &material in &checked.materials {
            let Some(part) = self.target.part(material) else { continue };
            if part.is_base && !is_blend {
                continue;
            }
            let off = rounded(Ratio::from((mix.mass_of(material) / base).value / part.ratio - 1.0));
            let off = Shown::new(off, text::signed_percent(off));
            all.push(Off { material: self.name(material)?, off });
        }
        Ok(all)
    }

    /// Whether all is within its tolerance in `mix`.
    fn is_within(&self, mix: &Mix, checked: &Checked) -> Result<bool, MispourError> {
        const ROUNDING: f64 = 1e-9;
        let base = mix.base_mass(&self.book.materials)?;
        for (&material, bound) in checked.materials.iter().zip(&checked.within) {
            let ratio = (mix.mass_of(material) / base).value;
            let (low, high) = match *bound {
                Bound::Base(share) => {
                    let off = self.tolerance(material)?;
                    (share * (1.0 - off), share * (1.0 + off))
                }
                // A trace is none of the target.
                Bound::Between(_, f64::INFINITY) => continue,
                Bound::Between(low, high) => (low, high),
            };
            if ratio < low * (1.0 - ROUNDING) || ratio > high * (1.0 + ROUNDING) {
                return Ok(false);
            }
        }
        Ok(true)
    }

    fn cup(&self) -> Result<Volume, MispourError> {
        let cups = self.book.tools.cups().iter().map(|cup| cup.capacity);
        let largest = cups.reduce(Volume::max);
        let allowed = largest.map(|largest| largest * self.book.limits.most_full);
        self.cup.or(allowed).ok_or(MispourError::NoCup)
    }

    /// Contents of the pot, with nothing done yet.
    fn contents(&self, cup: Volume) -> Result<PutRight, MispourError> {
        let base = self.pot.base_mass(&self.book.materials)?;
        let mut pot = Vec::new();
        for portion in self.pot.portions() {
            let ratio = (portion.mass / base).value;
            let part = self.target.part(portion.material);
            let off = part.map(|part| rounded(Ratio::from(ratio / part.ratio - 1.0)));
            let most = self.most(portion.material)?;
            let is_below = most.is_some_and(|most| ratio <= most);
            let tolerance = self.tolerance(portion.material)?;
            let is_over = off.is_some_and(|off| off.value > tolerance);
            let allowed = if self.on_purpose.contains(&portion.material) {
                Some("on purpose".to_string())
            } else if is_over && is_below {
                self.book.materials.get(portion.material)?.most.map(|most| format!("up to {most}"))
            } else {
                None
            };
            pot.push(PotMaterial {
                material: self.name(portion.material)?,
                mass: text::mass(portion.mass),
                off: off.map(|off| Shown::new(off, text::signed_percent(off))),
                allowed,
            });
        }
        let cautions = match self.is_hot {
            true => Vec::from([Caution::HotPlastisol, Caution::Fumes, Caution::Water]),
            false => Vec::new(),
        };
        Ok(PutRight {
            pot,
            mass: text::mass(self.pot.mass()),
            volume: self.volume(self.pot)?,
            cup: text::volume(cup, self.book.system),
            hot: self.is_hot,
            fresh_base: self.takes_base(),
            ways: Vec::new(),
            not_offered: Vec::new(),
            traces: Vec::new(),
            foreign: Vec::new(),
            fault: None,
            becomes: Vec::new(),
            cautions,
        })
    }

    /// The pot after additions.
    fn mix_with(&self, materials: &[MaterialId], additions: &[Mass]) -> Result<Mix, MispourError> {
        let mut mix = self.pot.clone();
        for (material, addition) in materials.iter().zip(additions) {
            mix.add(*material, *addition)?;
        }
        Ok(mix)
    }

    fn volume(&self, mix: &Mix) -> Result<Shown<Volume>, MispourError> {
        let volume = mix.volume(&self.book.materials, Phase::Liquid)?;
        Ok(text::volume(volume, self.book.system))
    }

    fn densities(&self, materials: &[MaterialId]) -> Result<Vec<MassDensity>, MispourError> {
        let mut densities = Vec::with_capacity(materials.len());
        for material in materials {
            let density = self.book.materials.get(*material)?.true_density("filling the cup");
            densities.push(density.map_err(MixError::from)?.get());
        }
        Ok(densities)
    }

    fn name(&self, material: MaterialId) -> Result<String, MispourError> {
        Ok(self.book.materials.get(material)?.name.clone())
    }

    /// All of a mix, by material.
    fn masses(&self, mix: &Mix) -> Result<Vec<MaterialMass>, MispourError> {
        let mut masses = Vec::with_capacity(mix.portions().len());
        for portion in mix.portions().iter().filter(|portion| portion.mass > Mass::default()) {
            let material = self.name(portion.material)?;
            masses.push(MaterialMass { material, mass: text::mass(portion.mass) });
        }
        Ok(masses)
    }

    fn named(&self, materials: &[MaterialId]) -> Result<Vec<MaterialMass>, MispourError> {
        let mut named = Vec::with_capacity(materials.len());
        for &material in materials {
            let mass = text::mass(self.pot.mass_of(material));
            named.push(MaterialMass { material: self.name(material)?, mass });
        }
        Ok(named)
    }

    /// Materials in the pot that `target` lacks, traces apart.
    fn foreign(&self, target: &Target) -> Vec<MaterialId> {
        let trace = self.pot.mass() * self.trace.value;
        let portions = self.pot.portions().iter();
        portions
            .filter(|portion| portion.mass > trace && !target.contains(portion.material))
            .map(|portion| portion.material)
            .collect()
    }

    fn foreign_fault(&self, foreign: &[MaterialId]) -> Result<Fault, MispourError> {
        let named = self.named(foreign)?;
        let listed: Vec<String> =
            named.iter().map(|one| format!("{} of \"{}\"", one.mass.text, one.material)).collect();
        Ok(Fault {
            code: code!("pot-foreign-material").into(),
            path: "/instead".into(),
            message: format!("The pot holds {}, which the formula lacks.", listed.join(" and ")),
            help: "Nothing can be taken out: make of it what \"becomes\" lists, keep it as a formula of its own, let a trace pass with \"trace\", or say that it is \"on_purpose\".".to_string(),
        })
    }
}

/// Additions by material.
fn listed(checked: &Checked, additions: &[Mass]) -> Vec<(MaterialId, Mass)> {
    checked.materials.iter().copied().zip(additions.iter().copied()).collect()
}

fn is_nothing(additions: &[Mass]) -> bool {
    additions.iter().all(|mass| *mass <= Mass::default())
}

/// A deviation without the rounding of its calculation.
fn rounded(off: Ratio) -> Ratio {
    if libm::fabs(off.value) < 1e-12 { Ratio::from(0.0) } else { off }
}

/// The ratios of `recipe` to its base, 0 for materials that it lacks.
pub(super) fn shares(recipe: &Recipe, materials: &[MaterialId]) -> Vec<f64> {
    let ratio = |material: &MaterialId| {
        let found = recipe.ingredients().find(|one| one.material == *material);
        found.map_or(0.0, |one| one.ratio)
    };
    materials.iter().map(ratio).collect()
}

/// Why nothing can be said of a pot.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum MispourError {
    /// There is nothing in it.
    #[error("The pot holds nothing.")]
    EmptyPot,
    /// No cup is known.
    #[error("The book has no cup.")]
    NoCup,
    /// The correction cannot be had.
    #[error(transparent)]
    Correction(#[from] CorrectionError),
    /// No tool of the bench measures an addition, and it cannot be left out.
    #[error("\"{material}\" cannot be measured: {error}")]
    Measure {
        /// The material to add.
        material: String,
        /// How far each tool comes.
        error: MeasureError,
    },
    /// The plan was made with another book.
    #[error("The plan's pot holds \"{material}\", which the book lacks.")]
    OtherBook {
        /// The material.
        material: String,
    },
    /// A number is missing.
    #[error(transparent)]
    Mix(#[from] MixError),
}

impl From<WeighError> for MispourError {
    fn from(error: WeighError) -> Self {
        match error {
            WeighError::Mix(error) => Self::Mix(error),
            WeighError::Measure { material, error, .. } => Self::Measure { material, error },
        }
    }
}

impl Diagnose for MispourError {
    codes! {
        Self::EmptyPot => "pot-empty",
        Self::NoCup => "pot-without-cup",
        Self::Correction(error) => error.code(),
        Self::Measure { error, .. } => error.code(),
        Self::OtherBook { .. } => "plan-of-another-book",
        Self::Mix(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::EmptyPot => {
                "Say what is in it: \"instead\": { \"clear-base\": \"1 cup\", ... }.".into()
            }
            Self::NoCup => "Say what the cup holds: \"cup\": \"2 cup\".".into(),
            Self::Correction(error) => error.help(),
            Self::Measure { error, .. } => error.help(),
            Self::OtherBook { .. } => "Ask with the book that the plan was made from.".into(),
            Self::Mix(error) => error.help(),
        }
    }
}

#[cfg(all(test, feature = "document"))]
mod tests;
