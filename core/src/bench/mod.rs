//! Bench measures: a mass as the tools on the bench can give it.
//!
//! The balance gives multiples of its readability, the spoons level spoonfuls, a cup its marks
//! (finished with spoons), the dropper whole drops. Of the tools that stay inside the tolerance
//! the one with the smallest amount of handling is chosen; where two handle alike, the smaller deviation; then
//! the one that gives less rather than more, for one can always add and never take away; then
//! balance before cup before spoons before drops.
//!
//! Handling is counted in acts: one for a reading of the balance, one for a spoonful, one for a
//! filling of a cup, one for every [`Handling::drops_per_act`] drops begun (common practice, no
//! source).
//!
//! A measure in steps of q is off by q/2 at worst, so a tool keeps a relative tolerance t from
//! m = q/(2 t) on; the errors name that mass. Below it a spoon or a drop may still happen to fit,
//! and is taken where it does. A balance is not: what it shows is true only to half its
//! readability, however well the number fits.

mod error;
mod formula;
mod spoons;
mod tools;

use alloc::vec;
use alloc::vec::Vec;

use crate::parameter::{Check, Parameter};
use crate::quantity::{Mass, MassDensity, Ratio, Volume};
use crate::words::words;
use spoons::{Aim, BILLIONTH, Combination, Start, parts_per_billion};
use tools::ratio_floor;

pub use error::{MeasureError, Shortfall};
pub use formula::{DoseGiven, FormulaDeviation, dose_deviation, formula_deviation};
pub use tools::{Balance, Bench, Cup, Handling, MOST_ACTS, MOST_CUPS, MOST_SPOONS};

/// How a material lets itself be measured, the balance apart, which takes everything.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Manner {
    /// Mass per volume as a spoon or a cup shows it: of a liquid its density, of a powder its
    /// as-scooped density, never its true one. `None`: not to be measured by volume.
    pub by_volume: Option<MassDensity>,
    /// Mass of one drop. `None`: not to be dropped.
    pub drop: Option<Mass>,
}

words! {
    /// A tool of the bench, in the order in which the last tie is broken.
    pub enum Tool {
        /// The balance.
        Balance = "balance",
        /// A cup filled to a mark, finished with spoons.
        Cup = "cup",
        /// Spoons alone.
        Spoons = "spoons",
        /// Whole drops.
        Drops = "drops",
    }
}

/// One thing to do, a number of times.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Step {
    /// Weigh until the balance shows `reading`, from zero each time.
    Weigh {
        /// Reading of the scale: `increments` times its readability.
        reading: Mass,
        /// The reading in units of the readability.
        increments: u64,
        /// How often: more than once only above the balance's capacity.
        times: u32,
    },
    /// Fill a cup to a mark.
    Fill {
        /// Index among [`Bench::cups`].
        cup: usize,
        /// Which mark, the lowest being 1.
        mark: u32,
        /// How often.
        times: u32,
    },
    /// Fill a cup between two of its marks.
    Between {
        /// Index among [`Bench::cups`].
        cup: usize,
        /// How far.
        volume: Volume,
    },
    /// Take level spoonfuls.
    Spoon {
        /// Index among [`Bench::spoons`].
        spoon: usize,
        /// How many.
        times: u32,
    },
    /// Count drops.
    Drop {
        /// How many.
        times: u32,
    },
}

impl Step {
    /// How often something is done; drops count as one.
    fn acts(&self) -> u32 {
        match self {
            Self::Weigh { times, .. } | Self::Fill { times, .. } | Self::Spoon { times, .. } => {
                *times
            }
            Self::Between { .. } | Self::Drop { .. } => 1,
        }
    }
}

/// A mass as one tool measures it.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Measure {
    /// The tool.
    pub tool: Tool,
    /// The steps, in this order.
    pub steps: Vec<Step>,
    /// The mass that it gives.
    pub mass: Mass,
    /// (given − wanted) / wanted.
    pub deviation: Ratio,
    /// How many acts it takes.
    pub acts: u32,
    /// Whether it keeps the tolerance.
    pub within: bool,
}

impl Measure {
    /// The way by `steps` of one tool, which give `mass` where just `wanted` is asked for.
    pub(crate) fn exactly(tool: Tool, steps: Vec<Step>, wanted: Mass, mass: Mass) -> Self {
        let deviation = (mass - wanted) / wanted;
        let acts = steps.iter().fold(0_u32, |sum, step| sum.saturating_add(step.acts()));
        Self { tool, steps, mass, deviation, acts, within: true }
    }

    /// Whether it is a cup filled to its marks, and nothing else.
    pub(crate) fn is_to_a_mark(&self) -> bool {
        self.steps.iter().all(|step| matches!(step, Step::Fill { .. }))
    }

    /// Order of the choice, smallest first: the handling within the tolerance, outside it the
    /// deviation.
    pub(crate) fn rank(&self) -> (bool, u64, u64, bool, Tool) {
        let acts = u64::from(self.acts);
        let off = parts_per_billion(self.deviation.value);
        let (first, second) = if self.within { (acts, off) } else { (off, acts) };
        (!self.within, first, second, self.deviation.value > 0.0, self.tool)
    }
}

/// The bench measure chosen for a mass.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Choice {
    /// The chosen one: it keeps the tolerance.
    pub best: Measure,
    /// The best of every other tool that the material and the bench allow, next best first; each
    /// says whether it keeps the tolerance.
    pub others: Vec<Measure>,
}

/// The request to every tool.
#[derive(Clone, Copy)]
struct Wanted {
    mass: Mass,
    tolerance: f64,
}

impl Wanted {
    fn new(mass: Mass, material: &Manner, tolerance: Ratio) -> Result<Self, MeasureError> {
        let tolerance = tolerance.value;
        let mut check = Check::new();
        check
            .number(Parameter::MassToMeasure, mass.value)
            .number(Parameter::Tolerance, tolerance)
            .option(Parameter::AsMeasuredDensity, material.by_volume.map(|density| density.value))
            .option(Parameter::DropMass, material.drop.map(|drop| drop.value));
        check.finish()?;
        Ok(Self { mass, tolerance })
    }

    fn measured(self, tool: Tool, steps: Vec<Step>, mass: Mass, acts: u32) -> Measure {
        let deviation = (mass - self.mass) / self.mass;
        let within = deviation.value.abs() <= self.tolerance;
        Measure { tool, steps, mass, deviation, acts, within }
    }

    /// The mass from which on steps of `step` keep the tolerance, where the tool can give it.
    fn least(self, step: Mass, most: Mass) -> Option<Mass> {
        let least = step / (2.0 * self.tolerance);
        (least <= most).then_some(least)
    }
}

impl Bench {
    /// The bench measure for `wanted` of a material, within the relative `tolerance`.
    ///
    /// # Errors
    ///
    /// A mass, density, drop or tolerance out of its range;
    /// [`MeasureError::NoTool`] where nothing on the bench can measure the material;
    /// [`MeasureError::NotReached`] where no tool keeps the tolerance: it holds the nearest that
    /// each comes, and from what mass on it would do.
    pub fn measure(
        &self,
        wanted: Mass,
        material: &Manner,
        tolerance: Ratio,
    ) -> Result<Choice, MeasureError> {
        let wanted = Wanted::new(wanted, material, tolerance)?;
        let mut tried = Vec::with_capacity(Tool::ALL.len());
        for &tool in Tool::ALL {
            tried.extend(self.by(tool, wanted, material));
        }
        choose(wanted, tried)
    }

    /// The nearest that `tool` comes to `wanted` of a material; `None` where it does not measure it, or for what
    /// [`Bench::measure`] refuses.
    pub(crate) fn nearest(
        &self,
        tool: Tool,
        wanted: Mass,
        material: &Manner,
        tolerance: Ratio,
    ) -> Option<Measure> {
        let wanted = Wanted::new(wanted, material, tolerance).ok()?;
        self.by(tool, wanted, material).map(|shortfall| shortfall.nearest)
    }

    /// How far a tool comes.
    fn by(&self, tool: Tool, wanted: Wanted, material: &Manner) -> Option<Shortfall> {
        match tool {
            Tool::Balance => Some(self.weigh(self.balance()?, wanted)),
            Tool::Cup => self.fill(material.by_volume?, wanted),
            Tool::Spoons => self.spoon(material.by_volume?, wanted),
            Tool::Drops => self.drop(material.drop?, wanted),
        }
    }

    /// The readings that give no less than `mass`, by less than the readability more, and what they give; `None` where
    /// the balance does not weigh that in as many acts as a person can be asked for.
    pub(crate) fn weigh_at_least(&self, mass: Mass) -> Option<(Vec<Step>, Mass)> {
        let balance = self.balance()?;
        let (least, capacity) = balance.increments();
        let increments = -ratio_floor(-(mass / balance.readability).value);
        let most = capacity.saturating_mul(u64::from(self.limits().acts));
        if !(least as f64..=most as f64).contains(&increments) {
            return None;
        }
        let (steps, _) = balance.steps(increments as u64);
        Some((steps, balance.readability * increments))
    }

    /// Readings of the balance.
    fn weigh(&self, balance: &Balance, wanted: Wanted) -> Shortfall {
        let (least, capacity) = balance.increments();
        let most = capacity.saturating_mul(u64::from(self.limits().acts));
        let increments = nearest_whole(wanted.mass / balance.readability, least, most);
        let (steps, readings) = balance.steps(increments);
        let mass = balance.readability * increments as f64;
        let mut nearest = wanted.measured(Tool::Balance, steps, mass, readings);
        let resolution = balance.readability * (0.5 * f64::from(readings));
        nearest.within &= (resolution / wanted.mass).value <= wanted.tolerance;
        let most = balance.readability * most as f64;
        let least = wanted.least(balance.readability, most);
        let least =
            least.map(|mass| if mass < balance.least_load { balance.least_load } else { mass });
        Shortfall { nearest, least, most }
    }

    /// Whole drops.
    fn drop(&self, drop: Mass, wanted: Wanted) -> Option<Shortfall> {
        let limits = self.limits();
        if limits.drops == 0 {
            return None;
        }
        let drops = nearest_whole(wanted.mass / drop, 1, u64::from(limits.drops));
        let times = u32::try_from(drops).unwrap_or(limits.drops);
        let mass = drop * f64::from(times);
        let acts = times.div_ceil(limits.drops_per_act.max(1));
        let most = drop * f64::from(limits.drops);
        Some(Shortfall {
            nearest: wanted.measured(Tool::Drops, vec![Step::Drop { times }], mass, acts),
            least: wanted.least(drop, most),
            most,
        })
    }

    /// Spoonfuls alone.
    fn spoon(&self, density: MassDensity, wanted: Wanted) -> Option<Shortfall> {
        let sizes = self.relative_spoons(density, wanted.mass);
        let sizes = sizes.get(..self.spoons().len())?;
        let most = self.limits().acts;
        let found = fewest_or_nearest(sizes, Start::NOTHING, most, wanted)?;
        let largest = density * self.largest_spoon()?;
        let most = largest * f64::from(most);
        Some(Shortfall {
            nearest: self.combined(
                Tool::Spoons,
                Vec::new(),
                Volume::default(),
                found,
                density,
                wanted,
            ),
            least: wanted.least(density * self.smallest_spoon()?, most),
            most,
        })
    }

    /// The best of the cups: each filled to its last mark that is not above the mass and finished
    /// with spoons, or filled to the next mark.
    fn fill(&self, density: MassDensity, wanted: Wanted) -> Option<Shortfall> {
        let sizes = self.relative_spoons(density, wanted.mass);
        let sizes = sizes.get(..self.spoons().len())?;
        let filled = self.cups().iter().enumerate().filter_map(|(index, cup)| {
            let nearest = self.fill_one(index, cup, sizes, density, wanted)?;
            let step = self
                .smallest_spoon()
                .map_or(cup.mark, |spoon| if spoon < cup.mark { spoon } else { cup.mark });
            let most = density * cup.capacity * f64::from(self.limits().acts);
            Some(Shortfall { nearest, least: wanted.least(density * step, most), most })
        });
        filled.min_by_key(|filled| filled.nearest.rank())
    }

    /// One of the cups.
    fn fill_one(
        &self,
        index: usize,
        cup: &Cup,
        sizes: &[f64],
        density: MassDensity,
        wanted: Wanted,
    ) -> Option<Measure> {
        let per_mark = (density * cup.mark / wanted.mass).value;
        let acts = self.limits().acts;
        let most = cup.marks().saturating_mul(acts);
        let below = ratio_floor(1.0 / per_mark).min(f64::from(most)) as u32;
        let finish = |marks: u32, sizes: &[f64]| {
            let fillings = marks.div_ceil(cup.marks().max(1));
            let start = Start { given: f64::from(marks) * per_mark, acts: fillings };
            let found = fewest_or_nearest(sizes, start, acts, wanted)?;
            let filled = cup.mark * f64::from(marks);
            Some(self.combined(Tool::Cup, cup.steps(index, marks), filled, found, density, wanted))
        };
        let short = if below > 0 { finish(below, sizes) } else { None };
        let over = if below < most { finish(below.saturating_add(1), &[]) } else { None };
        short.into_iter().chain(over).min_by_key(Measure::rank)
    }

    /// The `steps` of a cup, which give `filled`, and the spoonfuls `found` as one measure.
    fn combined(
        &self,
        tool: Tool,
        mut steps: Vec<Step>,
        filled: Volume,
        found: Combination,
        density: MassDensity,
        wanted: Wanted,
    ) -> Measure {
        let mut volume = filled;
        for ((spoon, size), times) in self.spoons_by_size().zip(found.counts) {
            if times > 0 {
                steps.push(Step::Spoon { spoon, times });
                volume += size * f64::from(times);
            }
        }
        // The search's own sum decides, so that no rounding between the two contradicts it.
        let within = found.deviation.abs() <= wanted.tolerance;
        Measure { within, ..wanted.measured(tool, steps, density * volume, found.acts) }
    }
}

/// The fewest spoonfuls upon `start` that keep the tolerance, or else the nearest.
fn fewest_or_nearest(
    sizes: &[f64],
    start: Start,
    most: u32,
    wanted: Wanted,
) -> Option<Combination> {
    let fewest = Aim::Fewest { tolerance: wanted.tolerance };
    spoons::search(sizes, start, most, fewest)
        .or_else(|| spoons::search(sizes, start, most, Aim::Nearest))
}

/// The nearest whole number to `ratio` between `least` and `most`, the lower of two as near.
fn nearest_whole(ratio: Ratio, least: u64, most: u64) -> u64 {
    // The billionth keeps rounding from deciding a tie. The cast saturates.
    let nearest = libm::ceil(ratio.value - 0.5 - BILLIONTH) as u64;
    nearest.clamp(least.min(most), most)
}

fn choose(wanted: Wanted, mut tried: Vec<Shortfall>) -> Result<Choice, MeasureError> {
    tried.sort_by_key(|shortfall| shortfall.nearest.rank());
    match tried.first() {
        None => Err(MeasureError::NoTool),
        Some(first) if !first.nearest.within => Err(MeasureError::NotReached {
            wanted: wanted.mass,
            tolerance: wanted.tolerance,
            tools: tried,
        }),
        Some(_) => {
            let mut all = tried.into_iter().map(|shortfall| shortfall.nearest);
            let best = all.next().ok_or(MeasureError::NoTool)?;
            Ok(Choice { best, others: all.collect() })
        }
    }
}

#[cfg(test)]
mod tests;
