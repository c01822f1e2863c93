//! Chance from a fixed seed, the same on every machine.

use pourwright_tests::split_mix::SplitMix64;
use serde_json::{Value, json};

/// Choices by chance.
pub(crate) struct Chance(SplitMix64);

impl Chance {
    /// That of a thing by its name and number.
    pub(crate) fn of(name: &str, number: usize) -> Self {
        Self(SplitMix64(crate::pin::hash(format!("{name} {number}").as_bytes())))
    }

    /// From 0 to below `n`, which is above 0.
    pub(crate) fn below(&mut self, n: usize) -> usize {
        (self.0.bits() % n as u64) as usize
    }

    /// From `from` to `to`, both included.
    pub(crate) fn whole(&mut self, from: usize, to: usize) -> usize {
        from + self.below(to - from + 1)
    }

    /// Whether something happens that does `in_hundred` times of a hundred.
    pub(crate) fn happens(&mut self, in_hundred: usize) -> bool {
        self.below(100) < in_hundred
    }

    pub(crate) fn one_of<'a, T>(&mut self, all: &'a [T]) -> &'a T {
        &all[self.below(all.len())]
    }

    pub(crate) fn word(&mut self, all: &[&str]) -> String {
        (*self.one_of(all)).to_owned()
    }

    /// One of them as JSON text.
    pub(crate) fn value(&mut self, all: &[&str]) -> Value {
        pourwright_tests::demo::json(self.one_of::<&str>(all))
    }

    /// A mass near `grams`, as a scale shows it.
    pub(crate) fn grams(&mut self, grams: f64, per_cent: usize) -> Value {
        let off = self.whole(0, 2 * per_cent) as f64 - per_cent as f64;
        json!(format!("{} g", decimal((grams * (1.0 + off / 100.0)).max(0.0), 1)))
    }
}

pub(crate) fn decimal(x: f64, places: usize) -> String {
    format!("{x:.places$}")
}
