//! Chance from a fixed seed, the same on every machine.

use serde_json::{Value, json};

/// SplitMix64.
pub(crate) struct Chance(u64);

impl Chance {
    /// That of a thing by its name and number.
    pub(crate) fn of(name: &str, number: usize) -> Self {
        Self(crate::pin::hash(format!("{name} {number}").as_bytes()))
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// From 0 to below `n`, which is above 0.
    pub(crate) fn below(&mut self, n: usize) -> usize {
        (self.next() % n as u64) as usize
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
