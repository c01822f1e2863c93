//! Weighed pieces against the mix as made: what is left is the mold's.
//!
//! With N = Σn_k pieces of one cavity in the draws k, each of the mean mass m̄_k, and e_k the mass by the mix as made, the
//! pieces are off by Σ n_k m̄_k/Σ n_k e_k − 1: what the composition explains is no longer in it. That is a number of the
//! mold only if it is more than twice its standard uncertainty, u² = Σ (n_k u_k)²/(Σ n_k m̄_k)² + u²(ρ)/ρ² + u²(V_c)/V_c²,
//! with u_k that of a mean ([`Weighed`]). Draws that differ by more than twice the uncertainty of their difference show
//! that one of the mixes is not what it is said to be; then nothing is the mold's.
//!
//! A mold with a known feed share gives its cavity, any other its feed share ([`calibrate`](crate::calibrate)).

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Found, RecordError};
use crate::book::{Book, Cavities, Mold};
use crate::calibrate::{CalibrateError, Counted, Unsure, Weighed};
use crate::quantity::{Mass, MassDensity, Ratio};
use crate::shot::Melt;
use crate::show::{Shown, text};
use crate::uncertainty::by_difference;

/// How many standard uncertainties a deviation must have.
const BEYOND: f64 = 2.0;

/// Bounds within which pieces of one cavity keep, for those that were weighed together or alone; evenly spread within
/// them (common practice, no source).
const PIECES_KEEP: f64 = 0.03;

/// Relative uncertainty of a density that the plan gives none for (common practice, no source).
const DENSITY_NOT_KNOWN: f64 = 0.01;

/// A feed share is said if it is at least twice as sure as an even spread from 0 to 1, 1/√12 (JCGM 100, 4.3.7).
const FEED_SAYS: f64 = 0.144;

/// Weighed pieces of one shape and draw.
pub(super) struct Sample {
    pub(super) pot: String,
    pub(super) mold: String,
    pub(super) shape: Option<String>,
    pub(super) weights: Vec<Counted>,
    pub(super) planned: Mass,
    /// By the mix as made.
    pub(super) expected: Mass,
    /// The mix as made, with the voids of the mold.
    pub(super) melt: Melt,
    /// The share of the contraction that the sprue feeds.
    pub(super) feed: Ratio,
    /// Standard uncertainty of the cold density, where the plan states it.
    pub(super) unsure: Option<MassDensity>,
}

impl Sample {
    fn count(&self) -> f64 {
        self.weights.iter().fold(0.0, |sum, one| sum + f64::from(one.count))
    }

    fn total(&self) -> Mass {
        self.weights.iter().fold(Mass::default(), |sum, one| sum + one.weight)
    }

    /// Standard uncertainty of the mean: from the scatter if it was seen, else from what pieces keep within; and from the
    /// rounding of each weighing.
    fn mean_unsure(&self, readability: Mass) -> Result<Mass, CalibrateError> {
        if self.weights.len() > 1 && self.weights.iter().all(|one| one.count == 1) {
            let masses: Vec<Mass> = self.weights.iter().map(|one| one.weight).collect();
            return Ok(Weighed::new(&masses, readability)?.uncertainty);
        }
        let count = self.count();
        let piece = self.total() / count * (PIECES_KEEP / libm::sqrt(3.0));
        let (scatter, weighings) = (piece / libm::sqrt(count), self.weights.len() as f64);
        let rounding = by_difference(readability) * libm::sqrt(weighings) / count;
        let squares = scatter.value * scatter.value + rounding.value * rounding.value;
        Ok(Mass { value: libm::sqrt(squares), ..Mass::default() })
    }

    fn density_unsure(&self) -> f64 {
        self.unsure.map_or(DENSITY_NOT_KNOWN, |unsure| (unsure / self.melt.cold).value)
    }
}

/// Weighed pieces of all draws of one cavity, summed up.
struct Pool {
    count: f64,
    weighs: Mass,
    planned: Mass,
    expected: Mass,
    melt: Melt,
    feed: Ratio,
    /// Relative standard uncertainties: of the mean, and of the density.
    mean_unsure: f64,
    density_unsure: f64,
    /// The largest difference between two draws, if it is beyond its uncertainty, and their pots.
    differ: Option<(f64, String, String)>,
}

impl Pool {
    fn of(samples: &[&Sample], readability: Mass) -> Result<Option<Self>, CalibrateError> {
        let Some(first) = samples.first() else { return Ok(None) };
        let count = samples.iter().fold(0.0, |sum, one| sum + one.count());
        let weighs = samples.iter().fold(Mass::default(), |sum, one| sum + one.total());
        let mean = |of: fn(&Sample) -> f64| {
            samples.iter().fold(0.0, |sum, one| sum + one.count() * of(one)) / count
        };
        let density =
            |of: fn(&Sample) -> f64| MassDensity { value: mean(of), ..MassDensity::default() };
        let mass = |of: fn(&Sample) -> f64| Mass { value: mean(of), ..Mass::default() };
        let (mut squares, mut density_unsure) = (0.0, 0.0_f64);
        let mut seen: Vec<(f64, f64, &str)> = Vec::new();
        let mut differ: Option<(f64, String, String)> = None;
        for one in samples {
            let unsure = one.mean_unsure(readability)?;
            let part = one.count() * (unsure / weighs).value;
            squares += part * part;
            density_unsure = density_unsure.max(one.density_unsure());
            let (of_mean, of_density) = ((unsure / one.expected).value, one.density_unsure());
            let share = (one.total() / one.count() / one.expected).value;
            let square = of_mean * of_mean + of_density * of_density;
            for (other, other_square, pot) in &seen {
                let apart = share - other;
                let is_beyond = libm::fabs(apart) > BEYOND * libm::sqrt(square + other_square);
                let is_largest = differ.as_ref().is_none_or(|known| libm::fabs(apart) > known.0);
                if is_beyond && is_largest {
                    let (heavier, lighter) = if apart > 0.0 {
                        (one.pot.as_str(), *pot)
                    } else {
                        (*pot, one.pot.as_str())
                    };
                    differ = Some((libm::fabs(apart), heavier.into(), lighter.into()));
                }
            }
            seen.push((share, square, &one.pot));
        }
        Ok(Some(Self {
            count,
            weighs: weighs / count,
            planned: mass(|one| one.planned.value),
            expected: mass(|one| one.expected.value),
            melt: Melt {
                hot: density(|one| one.melt.hot.value),
                cold: density(|one| one.melt.cold.value),
                voids: first.melt.voids,
            },
            feed: first.feed,
            mean_unsure: libm::sqrt(squares),
            density_unsure,
            differ,
        }))
    }

    fn weighed(&self) -> Weighed {
        Weighed {
            count: self.count as usize,
            mean: self.weighs,
            deviation: Mass::default(),
            uncertainty: self.weighs * self.mean_unsure,
            questioned: None,
        }
    }
}

/// What weighed pieces show of the molds, by mold and shape.
pub(super) fn found(samples: &[Sample], book: &Book) -> Result<Vec<Found>, RecordError> {
    let readability = book.tools.balance().map(|balance| balance.readability).unwrap_or_default();
    let mut names: Vec<(&str, Option<&str>)> =
        samples.iter().map(|one| (one.mold.as_str(), one.shape.as_deref())).collect();
    names.sort_unstable();
    names.dedup();
    let mut all = Vec::new();
    for (mold, shape) in names {
        let of = |one: &&Sample| one.mold == mold && one.shape.as_deref() == shape;
        let samples: Vec<&Sample> = samples.iter().filter(of).collect();
        let in_book = book.find_mold(mold).and_then(|place| book.molds.get(place));
        let Some(in_book) = in_book else { continue };
        let cavities = in_book.cavities.iter().find(|one| one.shape.as_deref() == shape);
        let Some((pool, cavities)) = Pool::of(&samples, readability)?.zip(cavities) else {
            continue;
        };
        all.push(one(&pool, &samples, in_book, cavities)?);
    }
    Ok(all)
}

fn one(
    pool: &Pool,
    samples: &[&Sample],
    mold: &Mold,
    cavities: &Cavities,
) -> Result<Found, RecordError> {
    let volume = cavities.volume.value;
    let volume_unsure = cavities.volume.uncertainty.unwrap_or_default();
    let off = (pool.weighs / pool.expected).value - 1.0;
    let unsure = libm::sqrt(
        pool.mean_unsure * pool.mean_unsure
            + pool.density_unsure * pool.density_unsure
            + (volume_unsure / volume).value * (volume_unsure / volume).value,
    );
    let unsure_of = Unsure {
        cold: pool.melt.cold * pool.density_unsure,
        cavity: volume_unsure,
        ..Unsure::default()
    };
    let is_beyond = libm::fabs(off) > BEYOND * unsure;
    let (mut cavity, mut feed, mut feed_unsure) = (None, None, None);
    let rest = format!(
        "{} (± {})",
        text::signed_percent(Ratio::from(off)),
        text::percent(Ratio::from(unsure)).text
    );
    let why = match (&pool.differ, mold.feed) {
        (Some((apart, heavier, lighter)), _) => format!(
            "Those of pot {heavier} are {} heavier than those of pot {lighter}, each against its mix: check what went into one of them.",
            text::percent(Ratio::from(*apart)).text
        ),
        (None, Some(_)) if !is_beyond => format!("The rest, {rest}, shows nothing of the cavity."),
        (None, Some(_)) => {
            let solved = pool.weighed().cavity_volume(&pool.melt, pool.feed, &unsure_of)?;
            let written = text::uncertain(solved.volume, solved.uncertainty).both;
            let was = text::milliliters(volume).text;
            let why = format!("The rest, {rest}, is the cavity: {written} for {was}.");
            cavity = Some(written);
            why
        }
        (None, None) => match pool.weighed().feed_share(&pool.melt, volume, &unsure_of) {
            Ok(share) if share.uncertainty.value <= FEED_SAYS => {
                let (shown, unsure) =
                    (text::percent(share.share), text::percent(share.uncertainty));
                let why = format!("Its feed share is {} ± {}.", shown.text, unsure.text);
                (feed, feed_unsure) = (Some(shown), Some(unsure));
                why
            }
            Ok(share) => format!(
                "Its feed share stays open: {} ± {}. Weigh more pieces.",
                text::percent(share.share).text,
                text::percent(share.uncertainty).text
            ),
            Err(CalibrateError::FeedOutOfRange { least, most, .. }) => format!(
                "This mix and cavity give {} (no feed) to {}: check the cavity, and what went in.",
                text::mass(least).text,
                text::mass(most).text
            ),
            Err(error @ CalibrateError::NoContraction) => sentence(&error.to_string()),
            Err(error) => return Err(error.into()),
        },
    };
    let (weighs, planned) = (text::mass(pool.weighs), text::mass(pool.planned));
    let expected = text::mass(pool.expected);
    let name = cavities
        .shape
        .as_ref()
        .map_or_else(|| mold.name.clone(), |shape| format!("{} ({shape})", mold.name));
    let made = if expected.text == planned.text {
        String::new()
    } else {
        format!(" The mix as made gives {}.", expected.text)
    };
    let pieces = pool.count as u32;
    let counted = crate::show::page::counted(pieces, "piece");
    let verb = if pieces == 1 { "weighs" } else { "weigh" };
    let each = if pieces == 1 { "" } else { " each" };
    let text = format!(
        "{name}: {counted} {verb} {}{each}, {} planned.{made} {why}",
        weighs.text, planned.text
    );
    let off = Ratio::from(off);
    let mut pots: Vec<String> = samples.iter().map(|one| one.pot.clone()).collect();
    pots.dedup();
    Ok(Found {
        mold: mold.name.clone(),
        shape: cavities.shape.clone(),
        pots,
        pieces,
        weighs,
        planned,
        expected,
        off: Shown::new(off, text::signed_percent(off)),
        off_uncertainty: text::percent(Ratio::from(unsure)),
        cavity,
        feed,
        feed_uncertainty: feed_unsure,
        text,
    })
}

/// A message as a sentence of its own.
fn sentence(message: &str) -> String {
    let mut letters = message.chars();
    let first = letters.next().map(|letter| letter.to_uppercase().to_string());
    format!("{}{}.", first.unwrap_or_default(), letters.as_str())
}

#[cfg(all(test, feature = "document"))]
mod tests;
