//! Simulated shops whose truth is known: the estimates are not biased, and their ± covers the truth as often as it says.
//!
//! Each shop has its own truth, which its book knows to within the book's ±; its own spoon, which is off by what spoons are
//! off; days on which it holds the bottle a little differently; and a scale that rounds. So all that the estimate counts
//! with happens, and in the sizes that it counts with.

use pourwright::learn::{CountedDay, Day, Learned, Pieces, Reading, RejectRate, Spoonfuls, learn};
use pourwright::quantity::{Mass, MassDensity, Measurable, Measured, Ratio, Volume};
use pourwright::shot::Melt;
use pourwright::uncertainty::ToolUncertainty;

use pourwright_tests::chance::{Chance, shown};

const SHOPS: u32 = 2000;

/// The scale shows 0.1 g.
const STEP: f64 = 1e-4;

/// How often the truth was within one and two ±, and how far off the estimates were on average.
#[derive(Default)]
struct Tally {
    shops: f64,
    one: f64,
    two: f64,
    off: f64,
    questioned: f64,
    with_book: f64,
}

impl Tally {
    fn count<Q: Measurable>(&mut self, learned: &Learned<Q>, truth: f64)
    where
        Q::Difference: Measurable,
    {
        let off = (learned.value.si() - truth) / learned.uncertainty.si();
        self.shops += 1.0;
        self.one += f64::from(off.abs() <= 1.0);
        self.two += f64::from(off.abs() <= 2.0);
        self.off += off;
        self.questioned += f64::from(learned.drift.is_some());
        self.with_book += f64::from(learned.with_book);
    }

    /// One ± covers 68.27 % and two cover 95.45 %, to within three standard deviations of the binomial distribution;
    /// `spare` is how much more they may cover, for the few days that have few degrees of freedom.
    fn check(&self, what: &str, spare: f64) {
        let n = self.shops;
        let bound = |rate: f64| 3.0 * (rate * (1.0 - rate) / n).sqrt();
        let (one, two) = (self.one / n, self.two / n);
        let lines = format!("{what}: {one} within ±, {two} within 2 ±, off {}", self.off / n);
        assert!(
            one > 0.6827 - bound(0.6827) && one < 0.6827 + bound(0.6827) + 2.0 * spare,
            "{lines}"
        );
        assert!(two > 0.9545 - bound(0.9545) && two < 0.9545 + bound(0.9545) + spare, "{lines}");
        assert!((self.off / n).abs() < 4.0 / n.sqrt(), "{lines}");
        // Of steady shops, one in a hundred shows a trend by chance.
        assert!(self.questioned / n < 0.01 + bound(0.01), "{what}: {} trends", self.questioned);
    }
}

fn day(number: i32) -> Day {
    Day::from_number(20_000 + number)
}

/// A true value, and the book's, which is off by its ± at random.
fn known(chance: &mut Chance, truth: f64, unsure: f64) -> (f64, f64) {
    (truth, truth + unsure * chance.normal())
}

/// Net of a load and its tare, each rounded.
fn net(chance: &mut Chance, mass: f64) -> Mass {
    let tare = chance.between(0.1, 0.2);
    Mass::from_si(shown(tare + mass, STEP) - shown(tare, STEP))
}

/// Drops of which the shop knows 44 mg ± 3 mg, dropped 3 % larger or smaller from day to day.
#[test]
fn the_drop() {
    let tools = ToolUncertainty::default();
    for (days, spare) in [(4, 0.07), (6, 0.05), (12, 0.03), (40, 0.02)] {
        let mut chance = Chance::seeded(10 + u64::try_from(days).unwrap());
        let mut tally = Tally::default();
        for _ in 0..SHOPS {
            let (truth, book) = known(&mut chance, 44e-6, 3e-6);
            let span = 1.0 + tools.balance_span.value * chance.normal();
            let mut readings = Vec::new();
            for number in 0..days {
                let today = truth * (1.0 + 0.03 * chance.normal());
                for _ in 0..chance.whole(1, 2) {
                    let count = chance.whole(20, 60);
                    let drops: f64 = (0..count)
                        .map(|_| today * (1.0 + tools.drop_scatter.value * chance.normal()))
                        .sum();
                    let weight = net(&mut chance, drops * span);
                    readings.push(Reading::drop(
                        day(number),
                        count,
                        weight,
                        Mass::from_si(STEP),
                        &tools,
                    ));
                }
            }
            let book = Measured::new(Mass::from_si(book), Mass::from_si(3e-6));
            tally.count(&learn(&readings, Some(&book)).expect("an estimate"), truth);
        }
        tally.check(&format!("a drop, {days} days"), spare);
        assert!(tally.with_book / tally.shops > 0.93, "{}", tally.with_book);
    }
}

/// Salt by one spoon, which is as far off its size as spoons are.
#[test]
fn the_density_as_scooped() {
    let tools = ToolUncertainty::default();
    let mut chance = Chance::seeded(20);
    let mut tally = Tally::default();
    for _ in 0..SHOPS {
        let (truth, book) = known(&mut chance, 1220.0, 60.0);
        // What the spoon really holds, as the readings count it: the nominal over the true one is 1 + u.
        let holds = 5e-6 * (1.0 + tools.spoon_size.value * chance.normal());
        let mut readings = Vec::new();
        for number in 0..12 {
            let today = truth * (1.0 + 0.02 * chance.normal());
            let times = chance.whole(1, 4);
            let mass: f64 = (0..times)
                .map(|_| holds * today * (1.0 + tools.spoon_level.value * chance.normal()))
                .sum();
            let spoon = Spoonfuls { spoon: "1 tsp".into(), holds: Volume::from_si(5e-6), times };
            let weight = net(&mut chance, mass);
            readings.push(Reading::as_scooped(
                day(number),
                &[spoon],
                weight,
                Mass::from_si(STEP),
                &tools,
            ));
        }
        let book = Measured::new(MassDensity::from_si(book), MassDensity::from_si(60.0));
        tally.count(&learn(&readings, Some(&book)).expect("an estimate"), truth);
    }
    tally.check("salt as scooped", 0.02);
}

/// Pieces of a day, with a base whose density is `base` of the book's.
fn poured(chance: &mut Chance, cavity: f64, feed: f64, base: f64) -> Pieces {
    const COLD: f64 = 1042.0;
    // Mixes differ from day to day, and the record knows how.
    let mixed = chance.between(1.0, 1.15);
    let hot = 0.93;
    let melt = |scale: f64| Melt {
        cold: MassDensity::from_si(COLD * mixed * scale),
        hot: MassDensity::from_si(COLD * mixed * hot * scale),
        voids: Ratio::from(0.0),
    };
    let true_melt = melt(base);
    let contraction = true_melt.cold - true_melt.hot;
    let one = cavity * (true_melt.hot + contraction * Ratio::from(feed)).si();
    let one = one * (1.0 + 0.004 * chance.normal());
    let count = chance.whole(3, 5);
    let together: f64 = (0..count)
        .map(|_| {
            let piece = one * (1.0 + 0.01 * chance.normal());
            net(chance, piece).si()
        })
        .sum();
    let mean = together / f64::from(count);
    Pieces {
        count,
        weighings: count,
        mean: Mass::from_si(mean),
        scatter: Ratio::from(0.01),
        melt: melt(1.0),
        density: Ratio::from(0.008),
    }
}

#[test]
fn the_cavity() {
    let mut chance = Chance::seeded(30);
    let mut tally = Tally::default();
    let step = Mass::from_si(STEP);
    for _ in 0..SHOPS {
        let (truth, book) = known(&mut chance, 9.5e-6, 0.2e-6);
        let feed = 0.6 + 0.1 * chance.normal();
        let base = 1.0 + 0.008 * chance.normal();
        let readings: Vec<_> = (0..10)
            .map(|number| {
                let pieces = poured(&mut chance, truth, feed, base);
                let feed = (Ratio::from(0.6), Ratio::from(0.1));
                Reading::cavity(day(number), &pieces, feed, step, "clear-base")
            })
            .collect();
        let book = Measured::new(Volume::from_si(book), Volume::from_si(0.2e-6));
        tally.count(&learn(&readings, Some(&book)).expect("an estimate"), truth);
    }
    tally.check("a cavity", 0.02);
}

#[test]
fn the_feed_share() {
    let mut chance = Chance::seeded(40);
    let mut tally = Tally::default();
    let step = Mass::from_si(STEP);
    for _ in 0..SHOPS {
        let feed = 0.5 + 0.15 * chance.normal();
        let (truth, cavity) = known(&mut chance, 9.5e-6, 0.01e-6);
        let base = 1.0 + 0.008 * chance.normal();
        let readings: Vec<_> = (0..10)
            .filter_map(|number| {
                let pieces = poured(&mut chance, truth, feed, base);
                let cavity = (Volume::from_si(cavity), Volume::from_si(0.01e-6));
                Reading::feed(day(number), &pieces, cavity, step, ("clear-base", "cavity"))
            })
            .collect();
        tally.count(&learn(&readings, None).expect("an estimate"), feed);
    }
    tally.check("a feed share", 0.02);
}

/// The interval of the rejects covers the true rate in at least 95 of 100 shops, with days that are alike.
#[test]
fn the_rejects() {
    let mut chance = Chance::seeded(50);
    let (mut covered, mut questioned, mut trends, mut off) = (0.0, 0.0, 0.0, 0.0);
    for _ in 0..SHOPS {
        let truth = chance.between(0.01, 0.12);
        let counts: Vec<_> = (0..10)
            .map(|number| {
                let made = 4 * chance.whole(5, 20);
                CountedDay { day: day(number), made, rejects: chance.of(made, truth) }
            })
            .collect();
        let got = RejectRate::new(&counts).expect("a rate");
        covered += f64::from(!got.excludes(Ratio::from(truth)));
        questioned += f64::from(got.outlying.is_some());
        trends += f64::from(got.trend.is_some());
        off += got.rate.value - truth;
    }
    let n = f64::from(SHOPS);
    let bound = |rate: f64| 3.0 * (rate * (1.0 - rate) / n).sqrt();
    assert!(covered / n > 0.95 - bound(0.95), "{covered}");
    assert!(questioned / n < 0.01 + bound(0.01), "{questioned}");
    assert!(trends / n < 0.01 + bound(0.01), "{trends}");
    assert!((off / n).abs() < 0.002, "{off}");
}

/// Days that differ by more than chance: the dispersion widens the interval, which then still covers.
#[test]
fn the_rejects_of_uneven_days() {
    let mut chance = Chance::seeded(60);
    let mut covered = 0.0;
    for _ in 0..SHOPS {
        let truth = chance.between(0.04, 0.12);
        let counts: Vec<_> = (0..15)
            .map(|number| {
                let made = 4 * chance.whole(10, 20);
                let today = truth * chance.between(0.3, 1.7);
                CountedDay { day: day(number), made, rejects: chance.of(made, today) }
            })
            .collect();
        let got = RejectRate::new(&counts).expect("a rate");
        covered += f64::from(!got.excludes(Ratio::from(truth)));
    }
    let n = f64::from(SHOPS);
    assert!(covered / n > 0.95 - 3.0 * (0.95_f64 * 0.05 / n).sqrt(), "{covered}");
}

/// A bottle that empties drops less and less, and a miscount stands out: both are found nearly always.
#[test]
fn what_is_wrong_is_questioned() {
    let mut chance = Chance::seeded(70);
    let (mut drifts, mut outliers) = (0, 0);
    for _ in 0..200 {
        let reading = |chance: &mut Chance, number: i32, truth: f64| {
            let value = truth * (1.0 + 0.015 * chance.normal());
            Reading::new(day(number), Mass::from_si(value), Mass::from_si(0.01 * truth))
        };
        let falling: Vec<_> = (0..15)
            .map(|number| reading(&mut chance, number, 44e-6 * (1.0 - 0.01 * f64::from(number))))
            .collect();
        let drift = learn(&falling, None).expect("an estimate").drift;
        drifts += u32::from(drift.is_some_and(|drift| drift.per_day.si() < 0.0));
        let miscounted: Vec<_> = (0..12)
            .map(|number| {
                let truth = if number == 7 { 44e-6 * 1.25 } else { 44e-6 };
                reading(&mut chance, number, truth)
            })
            .collect();
        let outlying = learn(&miscounted, None).expect("an estimate").outlying;
        outliers += u32::from(outlying.is_some_and(|out| out.day == day(7)));
    }
    assert!(drifts > 190 && outliers > 190, "{drifts} {outliers}");
}
