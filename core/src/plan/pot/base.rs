//! How the base of a pot is measured: up to a mark of a cup, or otherwise if that overfills it.

use alloc::vec::Vec;

use super::{PotError, Workshop};
use crate::batch::{BatchError, Marks};
use crate::bench::{Manner, Measure, Step, Tool};
use crate::plan::day::DayRecipe;
use crate::plan::layout::PotCup;
use crate::quantity::{Mass, Measurable, Ratio, Volume};

/// The smallest amount by which a pot is made larger at a time, as a share of its cup.
const FINEST_RAISE: f64 = 1.0 / 32.0;

/// How to come to an amount of base, in the order in which the ways are tried.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Measuring {
    /// Up to the next mark of a cup; what is more than needed makes extra pieces.
    UpToMark,
    /// To the mark below, if fresh base makes up for it later.
    DownToMark,
    /// Exactly the amount needed: weighed, else by cup and spoons, else between two marks.
    Exactly,
}

impl Measuring {
    pub(super) const ALL: [Self; 3] = [Self::UpToMark, Self::DownToMark, Self::Exactly];
}

/// How base is measured that would overfill its cup up to the next mark.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) struct OffMarks {
    pub(in crate::plan) how: OffMark,
    /// The next mark, and the distance between marks; `None` if no mark is high enough.
    pub(in crate::plan) next: Option<(Volume, Volume)>,
}

/// A way to measure base that is not up to the next mark.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) enum OffMark {
    /// To the mark below; fresh base makes up for it later.
    MarkBelow,
    /// Weighed.
    Weighed,
    /// By cup and spoons.
    Spoons,
    /// Between two marks, with this uncertainty.
    Between { off: Volume },
}

/// The base of a pot, measured.
pub(super) struct BaseMeasure {
    /// The mix that it makes.
    pub(super) mix: Mass,
    /// Maximum start of the pot, if less is measured than it could use.
    pub(super) most: Option<Mass>,
    /// How it is measured, if it is one plastisol.
    pub(super) way: Measure,
    /// Why it is not measured to a mark above; `None` if it is.
    pub(super) off_marks: Option<OffMarks>,
    volume: Volume,
    mark: Volume,
}

impl Workshop<'_> {
    /// The base for `wanted` of a recipe, for a pot in `cup`; at least the smallest pot.
    pub(super) fn measure_base(
        &self,
        cup: &PotCup,
        recipe: &DayRecipe<'_>,
        wanted: Mass,
        measuring: Measuring,
    ) -> Result<BaseMeasure, PotError> {
        let density = recipe.recipe.base_density(&self.book.materials)?;
        let fraction = Ratio::from(1.0 / recipe.recipe.total_per_base());
        let needed = wanted * fraction / density;
        let up_to_mark = || self.to_mark(cup, recipe, self.measurer(needed)?, needed);
        match measuring {
            Measuring::UpToMark => up_to_mark(),
            Measuring::DownToMark => self.down_to_mark(recipe, needed),
            Measuring::Exactly => {
                let next = up_to_mark().ok().map(|above| (above.volume, above.mark));
                self.exactly(recipe, wanted, needed, next)
            }
        }
    }

    /// A mark more than `measured`, of the same measuring cup; at least [`FINEST_RAISE`] more. With no
    /// cups but those to weigh into, that much more to weigh.
    pub(super) fn one_mark_more(
        &self,
        cup: &PotCup,
        recipe: &DayRecipe<'_>,
        measured: &BaseMeasure,
    ) -> Result<BaseMeasure, PotError> {
        let known = match measured.way.steps.first() {
            Some(Step::Fill { cup, .. }) => self.cups.get(*cup),
            _ => None,
        };
        let finest = cup.cup.capacity * FINEST_RAISE;
        if known.is_none() && self.measuring_cups().next().is_none() {
            let more = (measured.volume + finest) / measured.volume;
            return self.measure_base(cup, recipe, measured.mix * more, Measuring::Exactly);
        }
        let with = known.map_or_else(|| self.measurer(measured.volume), Ok)?;
        let raise = if with.cup.mark > finest { with.cup.mark } else { finest };
        self.to_mark(cup, recipe, with, measured.volume + raise - with.cup.mark * 0.5)
    }

    /// `volume` up to a mark of `measurer`, no more than `cup` takes.
    fn to_mark(
        &self,
        cup: &PotCup,
        recipe: &DayRecipe<'_>,
        measurer: &PotCup,
        volume: Volume,
    ) -> Result<BaseMeasure, PotError> {
        let marks = Marks::Every { step: measurer.cup.mark, capacity: cup.cup.capacity };
        self.filled(recipe, measurer, marks.round_up(volume)?)
    }

    /// Base to the mark `volume` of `measurer`.
    fn filled(
        &self,
        recipe: &DayRecipe<'_>,
        measurer: &PotCup,
        volume: Volume,
    ) -> Result<BaseMeasure, PotError> {
        let mark = measurer.cup.mark;
        let mass = volume * recipe.recipe.base_density(&self.book.materials)?;
        let marks = libm::round((volume / mark).value);
        let steps = measurer.cup.steps(measurer.number, marks as u32);
        Ok(BaseMeasure {
            mix: mass * recipe.recipe.total_per_base(),
            most: None,
            way: Measure::exactly(Tool::Cup, steps, mass, mass),
            off_marks: None,
            volume,
            mark,
        })
    }

    /// The highest mark of any cup that is not above `volume`, to which fresh base is added later.
    fn down_to_mark(
        &self,
        recipe: &DayRecipe<'_>,
        volume: Volume,
    ) -> Result<BaseMeasure, PotError> {
        let mut best: Option<(Volume, &PotCup)> = None;
        for cup in self.measuring_cups() {
            let below = cup.cup.mark * libm::floor((volume / cup.cup.mark).value);
            if best.is_none_or(|(most, _)| below > most) {
                best = Some((below, cup));
            }
        }
        let none = no_mark(volume);
        let best = best.filter(|(below, _)| below.value > 0.0 && self.book.limits.fresh_base);
        let (below, with) = best.ok_or_else(|| none.clone())?;
        let measured = self.filled(recipe, with, below)?;
        if measured.mix < self.least_pot(recipe) {
            return Err(none);
        }
        let next = Some((below + measured.mark, measured.mark));
        let off_marks = Some(OffMarks { how: OffMark::MarkBelow, next });
        Ok(BaseMeasure { most: Some(measured.mix), off_marks, ..measured })
    }

    /// Just the base for `wanted`, which is `volume` of it; `next` is the mark above and the distance of marks.
    fn exactly(
        &self,
        recipe: &DayRecipe<'_>,
        wanted: Mass,
        volume: Volume,
        next: Option<(Volume, Volume)>,
    ) -> Result<BaseMeasure, PotError> {
        let mass = wanted / recipe.recipe.total_per_base();
        let finest = self.finest_cup(volume)?;
        let mark = finest.cup.mark;
        let (how, way) = self.off_marks(mass, volume, finest)?;
        // Each plastisol of a blend is measured by itself. A cup without marks is one to weigh into.
        let is_single = recipe.recipe.base().len() == 1;
        let has_marks = self.measuring_cups().next().is_some();
        let off_marks = (is_single && has_marks).then_some(OffMarks { how, next });
        Ok(BaseMeasure { mix: wanted, most: None, way, off_marks, volume, mark })
    }

    /// The surest way to `mass` of base that the bench has, which is `volume` of it.
    fn off_marks(
        &self,
        mass: Mass,
        volume: Volume,
        finest: &PotCup,
    ) -> Result<(OffMark, Measure), PotError> {
        let tools = &self.book.tools;
        if let Some((steps, given)) = tools.weigh_at_least(mass) {
            return Ok((OffMark::Weighed, Measure::exactly(Tool::Balance, steps, mass, given)));
        }
        if finest.is_unmarked() {
            return Err(PotError::NoMarks { cup: self.names.cup(finest.number).into() });
        }
        // Cup and spoons, if they come nearer than the eye between two marks.
        let filling = self.book.unsure.cup_filling;
        let by_eye = filling * (finest.cup.mark / volume);
        let manner = Manner { by_volume: Some(mass / volume), drop: None };
        for nearer in [0.1, 0.3, 1.0] {
            if let Ok(choice) = tools.measure(mass, &manner, by_eye * nearer) {
                return Ok((OffMark::Spoons, choice.best));
            }
        }
        let steps = Vec::from([Step::Between { cup: finest.number, volume }]);
        let off = finest.cup.mark * filling;
        Ok((OffMark::Between { off }, Measure::exactly(Tool::Cup, steps, mass, mass)))
    }

    /// Cups that measure base: those with marks, and without a scale also those that can only be filled whole.
    pub(super) fn measuring_cups(&self) -> impl Iterator<Item = &PotCup> {
        let is_weighed = self.book.tools.balance().is_some();
        self.cups.iter().filter(move |cup| !(is_weighed && cup.is_unmarked()))
    }

    /// Of the cups that hold `volume` the one with the finest marks.
    fn finest_cup(&self, volume: Volume) -> Result<&PotCup, PotError> {
        let holds = |cup: &&PotCup| cup.cup.capacity >= volume * (1.0 - 1e-9);
        let by_mark = |a: &&PotCup, b: &&PotCup| a.cup.mark.value.total_cmp(&b.cup.mark.value);
        self.cups.iter().filter(holds).min_by(by_mark).ok_or(PotError::NoCup)
    }

    /// The cup to measure `base` with: the one whose marks add least, of those the one with the fewest fillings.
    fn measurer(&self, base: Volume) -> Result<&PotCup, PotError> {
        let mut rounded = Vec::with_capacity(self.cups.len());
        for cup in self.measuring_cups() {
            let marks = Marks::Every { step: cup.cup.mark, capacity: base + cup.cup.mark };
            let volume = marks.round_up(base)?;
            let fillings = libm::ceil((volume / cup.cup.capacity).si() - 1e-9);
            rounded.push((volume.si(), fillings, cup));
        }
        let least = rounded.into_iter().min_by(|a, b| {
            // What differs by rounding alone is the same mark.
            let same = (a.0 - b.0).abs() <= 1e-9 * a.0;
            let volume = if same { core::cmp::Ordering::Equal } else { a.0.total_cmp(&b.0) };
            volume.then(a.1.total_cmp(&b.1)).then(a.2.number.cmp(&b.2.number))
        });
        least.map(|(.., cup)| cup).ok_or_else(|| no_mark(base))
    }
}

/// Error that no cup has a mark for `needed`.
fn no_mark(needed: Volume) -> PotError {
    BatchError::AboveMarks { needed, highest: Volume::default() }.into()
}
