//! How the base of a pot is measured: up to a mark of a cup, and what does where that overfills.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{DayRecipe, PotError, Workshop};
use crate::batch::{BatchError, Marks};
use crate::bench::{Manner, Measure, Step, Tool};
use crate::quantity::{Mass, Measurable, Ratio, Volume};
use crate::show::text;

/// How to come to an amount of base, in the order in which the ways are tried.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Measuring {
    /// Up to the next mark of a cup; what is more than needed makes extra pieces.
    UpToMark,
    /// To the mark below, where fresh base makes up for it later.
    DownToMark,
    /// Just as much as is needed: weighed, else by cup and spoons, else between two marks.
    Exactly,
}

impl Measuring {
    pub(super) const ALL: [Self; 3] = [Self::UpToMark, Self::DownToMark, Self::Exactly];
}

/// The base of a pot, measured.
pub(super) struct BaseMeasure {
    /// The mix that it makes.
    pub(super) mix: Mass,
    /// What the pot must not start above, where less than it could use is measured.
    pub(super) most: Option<Mass>,
    /// How it is measured, where it is one plastisol.
    pub(super) way: Measure,
    /// What to say where it is not measured to a mark above.
    pub(super) off_marks: Option<String>,
    volume: Volume,
    mark: Volume,
}

impl Workshop<'_> {
    /// The base for `wanted` of a recipe, for a pot in cup `cup`; no less than the least pot.
    pub(super) fn measure_base(
        &self,
        cup: usize,
        recipe: &DayRecipe,
        wanted: Mass,
        measuring: Measuring,
    ) -> Result<BaseMeasure, PotError> {
        let density = recipe.recipe.base_density(&self.book.materials)?;
        let fraction = Ratio::from(1.0 / recipe.recipe.total_per_base());
        let needed = wanted * fraction / density;
        let to_mark = |volume| -> Result<BaseMeasure, PotError> {
            let (measurer, mark) = self.measurer(volume)?;
            self.to_mark(cup, recipe, (measurer, mark), volume)
        };
        match measuring {
            Measuring::UpToMark => to_mark(needed),
            Measuring::DownToMark => self.down_to_mark(recipe, needed),
            Measuring::Exactly => {
                let next = to_mark(needed).ok().map(|above| above.volume);
                self.exactly(recipe, wanted, (needed, next))
            }
        }
    }

    /// A mark more than `measured`, of the same measuring cup.
    pub(super) fn one_mark_more(
        &self,
        cup: usize,
        recipe: &DayRecipe,
        measured: &BaseMeasure,
    ) -> Result<BaseMeasure, PotError> {
        let with = match measured.way.steps.first() {
            Some(Step::Fill { cup, .. }) => (*cup, measured.mark),
            _ => self.measurer(measured.volume)?,
        };
        self.to_mark(cup, recipe, with, measured.volume + measured.mark * 0.5)
    }

    /// `volume` up to a mark of cup `measurer`, no more than cup `cup` takes.
    fn to_mark(
        &self,
        cup: usize,
        recipe: &DayRecipe,
        (measurer, mark): (usize, Volume),
        volume: Volume,
    ) -> Result<BaseMeasure, PotError> {
        let capacity = self.book.tools.cups().get(cup).ok_or(PotError::Lost)?.capacity;
        let volume = Marks::Every { step: mark, capacity }.round_up(volume)?;
        self.filled(recipe, (measurer, mark), volume)
    }

    /// Base to the mark `volume` of cup `measurer`.
    fn filled(
        &self,
        recipe: &DayRecipe,
        (measurer, mark): (usize, Volume),
        volume: Volume,
    ) -> Result<BaseMeasure, PotError> {
        let mass = volume * recipe.recipe.base_density(&self.book.materials)?;
        let tool = self.book.tools.cups().get(measurer).ok_or(PotError::Lost)?;
        let marks = libm::round((volume / mark).value);
        let steps = tool.steps(measurer, marks as u32);
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
    fn down_to_mark(&self, recipe: &DayRecipe, volume: Volume) -> Result<BaseMeasure, PotError> {
        let mut best: Option<(Volume, (usize, Volume))> = None;
        for (index, cup) in self.book.tools.cups().iter().enumerate() {
            let below = cup.mark * libm::floor((volume / cup.mark).value);
            if best.is_none_or(|(most, _)| below > most) {
                best = Some((below, (index, cup.mark)));
            }
        }
        let none = BatchError::AboveMarks { needed: volume, highest: Volume::default() };
        let best = best.filter(|(below, _)| below.value > 0.0 && self.book.limits.fresh_base);
        let (below, with) = best.ok_or_else(|| none.clone())?;
        let measured = self.filled(recipe, with, below)?;
        if measured.mix < self.least_pot(recipe) {
            return Err(none.into());
        }
        let next = text::mark(below + with.1, with.1, self.book.system);
        Ok(BaseMeasure {
            most: Some(measured.mix),
            off_marks: Some(format!(
                "measure its base to the mark below, fresh base makes up for it later; up to the next mark, \
                 {next}, it would overfill the cup."
            )),
            ..measured
        })
    }

    /// Just the base for `wanted`, which is `volume` of it; `next` is the mark above.
    fn exactly(
        &self,
        recipe: &DayRecipe,
        wanted: Mass,
        (volume, next): (Volume, Option<Volume>),
    ) -> Result<BaseMeasure, PotError> {
        let mass = wanted / recipe.recipe.total_per_base();
        let (finest, mark) = self.finest_cup(volume)?;
        let exact =
            |way, off_marks| BaseMeasure { mix: wanted, most: None, way, off_marks, volume, mark };
        if recipe.recipe.base().len() > 1 {
            // Each plastisol of a blend is measured by itself.
            return Ok(exact(Measure::exactly(Tool::Cup, Vec::new(), mass, mass), None));
        }
        let system = self.book.system;
        let why = match next {
            Some(next) => {
                let next = text::mark(next, mark, system);
                format!("up to the next mark, {next}, it would overfill the cup")
            }
            None => "no mark of the cup is high enough".to_string(),
        };
        if let Some((steps, given)) = self.book.tools.weigh_at_least(mass) {
            let way = Measure::exactly(Tool::Balance, steps, mass, given);
            return Ok(exact(way, Some(format!("weigh its base; {why}."))));
        }
        // Cup and spoons, as near as they come, where that is nearer than the eye between two marks.
        let by_eye = self.book.unsure.cup_filling * (mark / volume);
        let manner = Manner { by_volume: Some(mass / volume), drop: None };
        for nearer in [0.1, 0.3, 1.0] {
            if let Ok(choice) = self.book.tools.measure(mass, &manner, by_eye * nearer) {
                let how = "measure its base with cup and spoons";
                return Ok(exact(choice.best, Some(format!("{how}; {why}."))));
            }
        }
        let off = text::volume(mark * self.book.unsure.cup_filling, system).text;
        let way = Measure::exactly(
            Tool::Cup,
            Vec::from([Step::Between { cup: finest, volume }]),
            mass,
            mass,
        );
        let how = format!("fill its base between two marks, sure to some {off}");
        Ok(exact(way, Some(format!("{how}; {why}. A scale would be surer."))))
    }

    /// Of the cups that hold `volume` the one with the finest marks, and their distance.
    fn finest_cup(&self, volume: Volume) -> Result<(usize, Volume), PotError> {
        let cups = self.book.tools.cups().iter().enumerate();
        let holding = cups.filter(|(_, cup)| cup.capacity >= volume * (1.0 - 1e-9));
        let finest = holding.min_by(|a, b| a.1.mark.value.total_cmp(&b.1.mark.value));
        finest.map(|(index, cup)| (index, cup.mark)).ok_or(PotError::Lost)
    }

    /// The cup to measure `base` with, and its mark: the one whose marks take the least more, of
    /// those the one with the fewest fillings.
    fn measurer(&self, base: Volume) -> Result<(usize, Volume), PotError> {
        let mut rounded = Vec::new();
        for (index, cup) in self.book.tools.cups().iter().enumerate() {
            let marks = Marks::Every { step: cup.mark, capacity: base + cup.mark };
            let volume = marks.round_up(base)?;
            let fillings = libm::ceil((volume / cup.capacity).si() - 1e-9);
            rounded.push((volume.si(), fillings, index, cup.mark));
        }
        let least = rounded.into_iter().min_by(|a, b| {
            // What differs by rounding alone is the same mark.
            let same = (a.0 - b.0).abs() <= 1e-9 * a.0;
            let volume = if same { core::cmp::Ordering::Equal } else { a.0.total_cmp(&b.0) };
            volume.then(a.1.total_cmp(&b.1)).then(a.2.cmp(&b.2))
        });
        least.map(|(.., index, mark)| (index, mark)).ok_or(PotError::Lost)
    }
}
