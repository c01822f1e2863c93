//! What one record says about one number of the book.

use alloc::string::String;
use alloc::vec::Vec;

use super::Day;
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, Time, Volume};
use crate::shot::Melt;
use crate::uncertainty::{ToolUncertainty, by_difference, resolution};

/// A reading of a number on a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading<Q> {
    /// The day.
    pub day: Day,
    /// The number as this reading gives it.
    pub value: Q,
    /// Standard uncertainty of what differs from reading to reading: counting, leveling, rounding. Above zero.
    pub own: Q,
    /// What it shares with other readings.
    pub shared: Vec<Shared<Q>>,
}

/// An effect that readings share: the size of a spoon, the density of a base.
#[derive(Debug, Clone, PartialEq)]
pub struct Shared<Q> {
    /// The source. Readings that name the same one err together.
    pub source: String,
    /// What the reading would be more by if the source were one standard uncertainty more.
    pub effect: Q,
}

impl<Q: Measurable<Difference = Q>> Reading<Q> {
    /// A reading that shares nothing.
    pub const fn new(day: Day, value: Q, own: Q) -> Self {
        Self { day, value, own, shared: Vec::new() }
    }

    /// The same, with an effect that it shares with other readings; an effect of nothing is left out.
    #[must_use]
    pub fn sharing(mut self, source: impl Into<String>, effect: Q) -> Self {
        if effect.si() != 0.0 {
            self.shared.push(Shared { source: source.into(), effect });
        }
        self
    }

    fn of(day: Day, value: f64, variance: f64) -> Self {
        Self::new(day, Q::from_si(value), Q::from_si(libm::sqrt(variance)))
    }
}

/// The source that all weighings share.
const SPAN: &str = "span of the scale";

/// Scatter of good pieces of one cavity, relative to their mean (common practice, no source), and its weight in degrees of
/// freedom: two or three pieces do not show theirs.
const PIECE_SCATTER: f64 = 0.01;
const PIECE_FREEDOM: f64 = 4.0;

/// Relative scatter of one heating against the next, as of the timings of an [`Oven`](crate::process::heat::Oven).
const HEATING_SCATTER: f64 = 0.06;

/// The step of a clock that shots are timed by, in s: one minute.
const CLOCK_STEP: f64 = 60.0;

impl Reading<Mass> {
    /// One drop, of `count` drops that weighed `weight` together on a scale with steps of `readability`:
    /// m/n, u² = (s m/n)²/n + d²/6/n², s the scatter of drops.
    #[must_use]
    pub fn drop(
        day: Day,
        count: u32,
        weight: Mass,
        readability: Mass,
        tools: &ToolUncertainty,
    ) -> Self {
        let n = f64::from(count);
        let one = weight.si() / n;
        let scatter = tools.drop_scatter.value * one;
        let rounding = by_difference(readability).si() / n;
        let variance = scatter * scatter / n + rounding * rounding;
        Self::of(day, one, variance).sharing(SPAN, Mass::from_si(one * tools.balance_span.value))
    }
}

/// Level spoonfuls of one spoon.
#[derive(Debug, Clone, PartialEq)]
pub struct Spoonfuls {
    /// The spoon's name: spoons of one name are one spoon.
    pub spoon: String,
    /// Its volume.
    pub holds: Volume,
    /// How many.
    pub times: u32,
}

impl Reading<MassDensity> {
    /// The density as scooped, of level spoonfuls that weighed `weight` together: β = m/ΣnV,
    /// u² = Σ n (β V l)²/(ΣnV)² + d²/6/(ΣnV)², l the scatter of leveling. The size of each spoon is shared.
    #[must_use]
    pub fn as_scooped(
        day: Day,
        spoonfuls: &[Spoonfuls],
        weight: Mass,
        readability: Mass,
        tools: &ToolUncertainty,
    ) -> Self {
        let volume =
            spoonfuls.iter().fold(0.0, |sum, one| sum + one.holds.si() * f64::from(one.times));
        let density = weight.si() / volume;
        let level = spoonfuls.iter().fold(0.0, |sum, one| {
            let off = one.holds.si() / volume * density * tools.spoon_level.value;
            sum + f64::from(one.times) * off * off
        });
        let rounding = by_difference(readability).si() / volume;
        let of = |relative: f64| MassDensity::from_si(density * relative);
        let reading = Self::of(day, density, level + rounding * rounding)
            .sharing(SPAN, of(tools.balance_span.value));
        spoonfuls.iter().fold(reading, |reading, one| {
            // A larger spoon means a lower density.
            let share = one.holds.si() * f64::from(one.times) / volume;
            reading.sharing(one.spoon.clone(), of(-share * tools.spoon_size.value))
        })
    }
}

/// Pieces of one cavity and one mix, weighed on one day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pieces {
    /// How many.
    pub count: u32,
    /// In how many weighings, of one piece or several together.
    pub weighings: u32,
    /// Their mean.
    pub mean: Mass,
    /// Standard deviation of one, relative to the mean, over all days: [`Pieces::scatter`].
    pub scatter: Ratio,
    /// The plastic as made.
    pub melt: Melt,
    /// Standard uncertainty of its density at 20 °C, relative; the hot one errs with it.
    pub density: Ratio,
}

impl Pieces {
    /// The relative scatter of one piece, pooled over days of (count, standard deviation over mean):
    /// s² = (4 (1 %)² + Σ (n − 1) s²)/(4 + Σ (n − 1)).
    pub fn scatter(days: impl IntoIterator<Item = (u32, Ratio)>) -> Ratio {
        let (mut sum, mut freedom) = (PIECE_FREEDOM * PIECE_SCATTER * PIECE_SCATTER, PIECE_FREEDOM);
        for (count, deviation) in days {
            let more = f64::from(count.saturating_sub(1));
            sum += more * deviation.value * deviation.value;
            freedom += more;
        }
        Ratio::from(libm::sqrt(sum / freedom))
    }

    /// Relative variance of the mean: s²/n, and k d²/6/(n m)² of the rounding of k weighings.
    fn relative_variance(&self, readability: Mass) -> f64 {
        let (n, scatter) = (f64::from(self.count), self.scatter.value);
        let rounding = (by_difference(readability) / self.mean).value / n;
        scatter * scatter / n + f64::from(self.weighings) * rounding * rounding
    }

    /// The density that the cavity is filled with before what it draws: ρ_hot + f (ρ₂₀ − ρ_hot).
    fn inside(&self, feed: Ratio) -> f64 {
        (self.melt.hot + feed * (self.melt.cold - self.melt.hot)).si()
    }
}

impl Reading<Volume> {
    /// A cavity, of weighed pieces with the feed share known: V = m/((1 − φ) [ρ_hot + f (ρ₂₀ − ρ_hot)]). Shared are the
    /// density of `base` and, by `unsure_feed`, the feed share of the mold.
    #[must_use]
    pub fn cavity(
        day: Day,
        pieces: &Pieces,
        (feed, unsure_feed): (Ratio, Ratio),
        readability: Mass,
        base: &str,
    ) -> Self {
        let volume = pieces.mean / pieces.melt.filled_density(feed);
        let v = volume.si();
        let contraction = (pieces.melt.cold - pieces.melt.hot).si() / pieces.inside(feed);
        let of = |relative: f64| Volume::from_si(v * relative);
        Self::of(day, v, v * v * pieces.relative_variance(readability))
            .sharing(density_of(base), of(-pieces.density.value))
            .sharing("feed share", of(-contraction * unsure_feed.value))
    }

    /// What stays in an injector, of `kept` weighed over `emptied` emptyings: V = m/(n ρ), u² = d²/6/(n ρ)².
    #[must_use]
    pub fn kept(
        day: Day,
        kept: Mass,
        emptied: u32,
        density: MassDensity,
        unsure_density: Ratio,
        readability: Mass,
        base: &str,
    ) -> Self {
        let mass = f64::from(emptied) * density.si();
        let rounding = by_difference(readability).si() / mass;
        let volume = kept.si() / mass;
        Self::of(day, volume, rounding * rounding)
            .sharing(density_of(base), Volume::from_si(-volume * unsure_density.value))
    }
}

impl Reading<Ratio> {
    /// The feed share, of weighed pieces with the cavity known: f = (m/(V (1 − φ)) − ρ_hot)/(ρ₂₀ − ρ_hot). Shared are the
    /// density of `base` and, by `unsure_cavity`, the `cavity`. `None` where the plastic does not shrink.
    #[must_use]
    pub fn feed(
        day: Day,
        pieces: &Pieces,
        (cavity, unsure_cavity): (Volume, Volume),
        readability: Mass,
        (base, shape): (&str, &str),
    ) -> Option<Self> {
        let contraction = (pieces.melt.cold - pieces.melt.hot).si();
        let inside = pieces.mean.si() / (cavity.si() * (1.0 - pieces.melt.voids.value));
        let feed = (inside - pieces.melt.hot.si()) / contraction;
        // D/Δ: how many shares a piece is.
        let scale = inside / contraction;
        if !(feed.is_finite() && contraction > 0.0) {
            return None;
        }
        let reading = Self::of(day, feed, scale * scale * pieces.relative_variance(readability))
            .sharing(density_of(base), Ratio::from(-scale * pieces.density.value))
            .sharing(shape, Ratio::from(-scale * (unsure_cavity / cavity).value));
        Some(reading)
    }
}

impl Reading<Time> {
    /// How long a heating takes that the book has timed, of one that `took` and that the book `expected` to take
    /// `expected`: t = t_book · took/expected, known to 6 %.
    #[must_use]
    pub fn heating(day: Day, timed: Time, took: Time, expected: Time) -> Self {
        let time = timed.si() * (took / expected).value;
        let off = time * HEATING_SCATTER;
        Self::of(day, time, off * off)
    }

    /// From one shot to the next, of `shots`, two or more, that took `took` from the first to the last by a clock that
    /// shows minutes: t = T/(n − 1), u = (1 min/√6)/(n − 1).
    #[must_use]
    pub fn shot(day: Day, shots: u32, took: Time) -> Self {
        let n = f64::from(shots.saturating_sub(1));
        // From one reading of the clock to the next.
        let rounding = resolution(CLOCK_STEP) * core::f64::consts::SQRT_2 / n;
        Self::of(day, took.si() / n, rounding * rounding)
    }
}

fn density_of(base: &str) -> String {
    alloc::format!("density of {base}")
}

#[cfg(test)]
mod tests {
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;
    use uom::si::time::{minute, second};
    use uom::si::volume::milliliter;

    use super::*;

    fn day() -> Day {
        Day::from_number(20_000)
    }

    fn near(got: f64, wanted: f64) {
        assert!((got / wanted - 1.0).abs() < 1e-12, "{got} for {wanted}");
    }

    #[test]
    fn a_drop_by_hand() {
        // 40 drops of 1.8 g to 0.1 g: 45 mg; u² = (5 % · 45 mg)²/40 + (0.1 g/√6/40)².
        let tools = ToolUncertainty::default();
        let g = Mass::new::<gram>;
        let got = Reading::drop(day(), 40, g(1.8), g(0.1), &tools);
        near(got.value.get::<gram>(), 0.045);
        let u2 = 0.00225 * 0.00225 / 40.0 + 0.01 / 6.0 / 1600.0;
        near(got.own.get::<gram>(), libm::sqrt(u2));
        near(got.shared[0].effect.get::<gram>(), 0.045 * 0.001);
    }

    #[test]
    fn spoonfuls_by_hand() {
        // Two of 5 mL and one of 2.5 mL, 15 g: 1.2 g/mL; leveling 3 % each: u² = 1.2² · 9e-4 · (2·0.16 + 0.04).
        let tools = ToolUncertainty::default();
        let spoon = |name: &str, holds: f64, times| Spoonfuls {
            spoon: name.into(),
            holds: Volume::new::<milliliter>(holds),
            times,
        };
        let taken = [spoon("tsp", 5.0, 2), spoon("1/2 tsp", 2.5, 1)];
        let weight = Mass::new::<gram>(15.0);
        let got = Reading::as_scooped(day(), &taken, weight, Mass::default(), &tools);
        let of = |density: MassDensity| density.get::<gram_per_cubic_centimeter>();
        near(of(got.value), 1.2);
        near(of(got.own), 1.2 * 0.03 * 0.6);
        assert_eq!(got.shared.len(), 3);
        near(of(got.shared[1].effect), -1.2 * 0.8 * tools.spoon_size.value);
        near(of(got.shared[2].effect), -1.2 * 0.2 * tools.spoon_size.value);
        // A scale that shows 0.1 g adds (0.1/√6/12.5)².
        let got = Reading::as_scooped(day(), &taken, weight, Mass::new::<gram>(0.1), &tools);
        let level = 1.2 * 0.03 * 0.6;
        near(of(got.own), libm::sqrt(level * level + 0.01 / 6.0 / 156.25));
    }

    #[test]
    fn an_effect_of_nothing_is_not_shared() {
        let reading = || Reading::new(day(), Ratio::from(10.0), Ratio::from(1.0));
        assert_eq!(reading().sharing("spoon", Ratio::from(0.0)).shared, []);
        assert_eq!(reading().sharing("spoon", Ratio::from(1.0)).shared.len(), 1);
    }

    fn pieces() -> Pieces {
        let density = MassDensity::new::<gram_per_cubic_centimeter>;
        let melt = Melt { hot: density(0.9), cold: density(1.0), voids: Ratio::from(0.0) };
        Pieces {
            count: 4,
            weighings: 4,
            mean: Mass::new::<gram>(9.5),
            scatter: Ratio::from(0.02),
            melt,
            density: Ratio::from(0.008),
        }
    }

    #[test]
    fn a_cavity_and_a_feed_share_by_hand() {
        let ml = Volume::new::<milliliter>;
        let feed = (Ratio::from(0.5), Ratio::from(0.1));
        let got = Reading::cavity(day(), &pieces(), feed, Mass::default(), "clear");
        near(got.value.get::<milliliter>(), 10.0);
        near(got.own.get::<milliliter>(), 0.1);
        near(got.shared[0].effect.get::<milliliter>(), -0.08);
        near(got.shared[1].effect.get::<milliliter>(), -10.0 * 0.1 / 0.95 * 0.1);
        let names = ("clear", "cavity");
        let got = Reading::feed(day(), &pieces(), (ml(10.0), ml(0.1)), Mass::default(), names);
        let got = got.unwrap();
        near(got.value.value, 0.5);
        // D/Δ = 9.5: 1 % of a piece are 9.5 points.
        near(got.own.value, 0.095);
        near(got.shared[1].effect.value, -0.095);
        near(got.shared[0].effect.value, -9.5 * 0.008);
        assert_eq!(got.shared[0].source, "density of clear");
        // Four weighings to 0.1 g: 0.095² and 9.5² · 4 (0.1/√6/38)².
        let g = Mass::new::<gram>;
        let got = Reading::feed(day(), &pieces(), (ml(10.0), ml(0.1)), g(0.1), names).unwrap();
        let rounding = 9.5 * 9.5 * 4.0 * 0.01 / 6.0 / 1444.0;
        near(got.own.value, libm::sqrt(0.095 * 0.095 + rounding));
        // With 5 % of air 9.5 g in 10 mL are 1 g/mL: all of it fed.
        let mut airy = pieces();
        airy.melt.voids = Ratio::from(0.05);
        let of = |pieces: &Pieces, cavity| {
            Reading::feed(day(), pieces, (ml(cavity), ml(0.1)), Mass::default(), names)
        };
        near(of(&airy, 10.0).unwrap().value.value, 1.0);
        assert_eq!(of(&pieces(), 0.0), None);
        // A plastic that shrinks by half a part in a thousand still does: (0.95 - 0.9995)/0.0005.
        let mut little = pieces();
        little.melt.hot = MassDensity::new::<gram_per_cubic_centimeter>(0.9995);
        assert!((of(&little, 10.0).unwrap().value.value + 99.0).abs() < 1e-9);
        let mut stiff = pieces();
        stiff.melt.hot = stiff.melt.cold;
        assert_eq!(Reading::feed(day(), &stiff, (ml(10.0), ml(0.1)), Mass::default(), names), None);
    }

    #[test]
    fn the_scatter_of_pieces_is_pooled() {
        near(Pieces::scatter([]).value, 0.01);
        // (4 · 1 + 2 · 9)/(4 + 2) in per cent squared.
        near(Pieces::scatter([(3, Ratio::from(0.03))]).value, libm::sqrt(22.0 / 6.0) / 100.0);
        near(Pieces::scatter([(1, Ratio::from(0.0))]).value, 0.01);
    }

    #[test]
    fn the_rest_by_hand() {
        let density = MassDensity::new::<gram_per_cubic_centimeter>(0.95);
        let g = Mass::new::<gram>;
        let got = Reading::kept(day(), g(7.6), 2, density, Ratio::from(0.008), g(0.1), "clear");
        near(got.value.get::<milliliter>(), 4.0);
        near(got.own.get::<milliliter>(), 0.1 / libm::sqrt(6.0) / 1.9);
        near(got.shared[0].effect.get::<milliliter>(), -4.0 * 0.008);
        let s = Time::new::<second>;
        let got = Reading::heating(day(), s(120.0), s(55.0), s(50.0));
        near(got.value.get::<second>(), 132.0);
        near(got.own.get::<second>(), 7.92);
        let got = Reading::shot(day(), 13, Time::new::<minute>(9.0));
        near(got.value.get::<second>(), 45.0);
        near(got.own.get::<second>(), 60.0 / libm::sqrt(6.0) / 12.0);
    }
}
