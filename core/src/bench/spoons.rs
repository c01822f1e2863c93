//! The search for spoonfuls: exact, bounded, without allocation.

use core::cmp::Reverse;

use super::tools::MOST_SPOONS;

/// How many of each spoon, the largest spoon first.
pub(super) type Counts = [u32; MOST_SPOONS];

/// Aim of a combination of spoonfuls.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Aim {
    /// The fewest acts within the relative tolerance.
    Fewest { tolerance: f64 },
    /// The smallest deviation.
    Nearest,
}

/// Contents of the vessel before the first spoonful.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Start {
    /// As a share of the mass needed.
    pub(super) given: f64,
    /// The acts that it took.
    pub(super) acts: u32,
}

impl Start {
    pub(super) const NOTHING: Self = Self { given: 0.0, acts: 0 };
}

/// A combination of spoonfuls upon the start.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Combination {
    pub(super) counts: Counts,
    /// Spoonfuls, and what the start took.
    pub(super) acts: u32,
    /// (given − wanted) / wanted.
    pub(super) deviation: f64,
}

/// Smallest first: the aim's two numbers, less before more, fewer different spoons, larger ones.
type Rank = (u64, u64, bool, usize, Reverse<Counts>);

impl Combination {
    fn rank(&self, aim: Aim) -> Rank {
        let acts = u64::from(self.acts);
        let off = parts_per_billion(self.deviation);
        let (first, second) = match aim {
            Aim::Fewest { .. } => (acts, off),
            Aim::Nearest => (off, acts),
        };
        let different = self.counts.iter().filter(|&&count| count > 0).count();
        (first, second, self.deviation > 0.0, different, Reverse(self.counts))
    }
}

/// The size of a relative deviation in steps that rounding cannot reach, so that two ways to the
/// same amount compare equal.
pub(super) fn parts_per_billion(deviation: f64) -> u64 {
    libm::round(deviation.abs() * 1e9) as u64
}

/// One step of [`parts_per_billion`].
pub(super) const BILLIONTH: f64 = 1e-9;

/// The best combination of at most `most` acts, or `None` where none is within the tolerance.
///
/// `sizes` holds the mass of a spoonful as a share of the mass needed, the largest first. The search
/// goes through the counts spoon by spoon and leaves a branch where the spoonfuls left, all of the
/// next size, no longer reach, or where what is given is already too much. Of n spoons it looks at
/// no more than the C(most + n, n) combinations that there are, and mostly at a few dozen.
pub(super) fn search(sizes: &[f64], start: Start, most: u32, aim: Aim) -> Option<Combination> {
    let mut search = Search { aim, most, counts: [0; MOST_SPOONS], best: None };
    if !search.all_largest(sizes, start) {
        search.descend(sizes, 0, start.given, start.acts);
    }
    search.best
}

struct Search {
    aim: Aim,
    most: u32,
    counts: Counts,
    best: Option<Combination>,
}

impl Search {
    /// How far off a combination may be and still be the best.
    fn slack(&self) -> f64 {
        match (self.aim, &self.best) {
            (Aim::Fewest { tolerance }, _) => tolerance,
            (Aim::Nearest, Some(best)) => best.deviation.abs() + BILLIONTH,
            (Aim::Nearest, None) => f64::INFINITY,
        }
    }

    /// How many acts are left after `acts`, if a combination that uses them may still be the best.
    fn left(&self, acts: u32) -> Option<u32> {
        let most = match (self.aim, &self.best) {
            (Aim::Fewest { .. }, Some(best)) => best.acts,
            _ => self.most,
        };
        most.checked_sub(acts)
    }

    /// Offers as many of the largest spoon as are allowed where even these give too little: against
    /// an enormous amount all combinations look alike, and none could be skipped.
    fn all_largest(&mut self, sizes: &[f64], start: Start) -> bool {
        let (Some(&largest), Some(count)) = (sizes.first(), self.most.checked_sub(start.acts))
        else {
            return false;
        };
        let given = start.given + f64::from(count) * largest;
        if given >= 1.0 || self.aim != Aim::Nearest {
            return false;
        }
        self.set(0, count);
        self.offer(given, self.most);
        true
    }

    fn descend(&mut self, sizes: &[f64], depth: usize, given: f64, acts: u32) {
        let Some((&size, smaller)) = sizes.split_first() else {
            self.offer(given, acts);
            return;
        };
        let next = smaller.first().copied().unwrap_or(0.0);
        let fitting = libm::floor((1.0 - given) / size).clamp(0.0, f64::from(self.most)) as u32;
        for count in (0..=fitting).rev() {
            let Some(left) = self.left(acts.saturating_add(count)) else { continue };
            let with = given + f64::from(count) * size;
            if with + f64::from(left) * next < 1.0 - self.slack() {
                break;
            }
            self.take(smaller, depth, with, acts, count);
        }
        for count in fitting.saturating_add(1)..=self.most {
            let with = given + f64::from(count) * size;
            if self.left(acts.saturating_add(count)).is_none() || with > 1.0 + self.slack() {
                break;
            }
            self.take(smaller, depth, with, acts, count);
        }
    }

    fn take(&mut self, smaller: &[f64], depth: usize, with: f64, acts: u32, count: u32) {
        self.set(depth, count);
        self.descend(smaller, depth.saturating_add(1), with, acts.saturating_add(count));
    }

    fn set(&mut self, depth: usize, count: u32) {
        if let Some(place) = self.counts.get_mut(depth) {
            *place = count;
        }
    }

    fn offer(&mut self, given: f64, acts: u32) {
        let found = Combination { counts: self.counts, acts, deviation: given - 1.0 };
        let allowed = match self.aim {
            Aim::Fewest { tolerance } => found.deviation.abs() <= tolerance,
            Aim::Nearest => true,
        };
        if acts == 0 || acts > self.most || !allowed {
            return;
        }
        if self.best.is_none_or(|best| found.rank(self.aim) < best.rank(self.aim)) {
            self.best = Some(found);
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use std::vec::Vec;

    use super::*;

    /// Every combination of at most `most` acts, by counting through them all.
    fn all(sizes: &[f64], start: Start, most: u32) -> Vec<Combination> {
        let mut all = Vec::new();
        let mut counts = [0; MOST_SPOONS];
        loop {
            let acts = start.acts + counts.iter().sum::<u32>();
            if acts <= most {
                let given =
                    sizes.iter().zip(counts).fold(start.given, |g, (s, c)| g + f64::from(c) * s);
                if acts > 0 {
                    all.push(Combination { counts, acts, deviation: given - 1.0 });
                }
            }
            let mut place = 0;
            loop {
                if place == sizes.len() {
                    return all;
                }
                counts[place] += 1;
                if counts[place] <= most {
                    break;
                }
                counts[place] = 0;
                place += 1;
            }
        }
    }

    fn oracle(sizes: &[f64], start: Start, most: u32, aim: Aim) -> Option<Combination> {
        let within = |c: &Combination| match aim {
            Aim::Fewest { tolerance } => c.deviation.abs() <= tolerance,
            Aim::Nearest => true,
        };
        all(sizes, start, most).into_iter().filter(within).min_by_key(|c| c.rank(aim))
    }

    /// Spoons as shares of a target, the largest first: odd sizes, or halves of one another.
    fn sizes() -> impl Strategy<Value = Vec<f64>> {
        let odd = prop::collection::vec(0.005..3.0f64, 0..=4);
        let halves = (0.01..2.0f64, 1..=4usize)
            .prop_map(|(first, n)| (0..n).map(|i| first / f64::from(1u32 << i)).collect());
        prop_oneof![odd, halves].prop_map(|mut sizes| {
            sizes.sort_by(|a, b| b.total_cmp(a));
            sizes
        })
    }

    proptest! {
        #[test]
        fn agrees_with_counting_through_them_all(
            sizes in sizes(),
            given in prop_oneof![Just(0.0), 0.0..1.5f64],
            most in 1..=7u32,
            tolerance in 1e-4..0.3f64,
        ) {
            let start = Start { given, acts: u32::from(given > 0.0) };
            for aim in [Aim::Fewest { tolerance }, Aim::Nearest] {
                let found = search(&sizes, start, most, aim);
                let best = oracle(&sizes, start, most, aim);
                prop_assert_eq!(found, best);
            }
        }
    }

    #[test]
    fn two_ways_to_the_same_amount_prefer_fewer_different_spoons() {
        let found = search(&[0.75, 0.5, 0.25], Start::NOTHING, 8, Aim::Fewest { tolerance: 0.01 });
        assert_eq!(found.map(|c| c.counts[..3].to_vec()), Some(std::vec![0, 2, 0]));
    }

    #[test]
    fn nearest_gives_less_rather_than_more() {
        let found = search(&[1.25, 0.75], Start::NOTHING, 1, Aim::Nearest).unwrap();
        assert_eq!(found.deviation, -0.25);
    }
    /// Of an enormous amount every spoonful is as good as nothing; all that a person can be asked for are taken.
    #[test]
    fn an_enormous_amount_takes_all_of_the_largest() {
        let found = search(&[2e-12, 1e-12], Start::NOTHING, 4, Aim::Nearest).unwrap();
        assert_eq!((found.counts[..2].to_vec(), found.acts), (std::vec![4, 0], 4));
    }

    #[test]
    fn the_tolerance_itself_is_kept() {
        for size in [0.5, 1.5] {
            let found = search(&[size], Start::NOTHING, 1, Aim::Fewest { tolerance: 0.5 });
            assert_eq!(found.map(|c| c.deviation), Some(size - 1.0));
        }
    }

    #[test]
    fn exactly_is_not_more() {
        let found = search(&[0.5, 0.5 - 1e-12], Start::NOTHING, 2, Aim::Nearest).unwrap();
        assert_eq!(found.counts[..2], [2, 0]);
        assert_eq!([0.4e-9, -1e-9, 2.4e-9].map(parts_per_billion), [0, 1, 2]);
    }
}
