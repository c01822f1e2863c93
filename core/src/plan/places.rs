//! Places of things with lists of numbers as keys.

use alloc::collections::BTreeMap;
use alloc::vec::Vec;

/// Places by key. All keys are of one type, because each further type of map adds some 4 kB of code.
#[derive(Debug, Clone, Default)]
pub(super) struct Places(BTreeMap<Vec<u64>, usize>);

impl Places {
    pub(super) const fn new() -> Self {
        Self(BTreeMap::new())
    }

    /// The place of `key`, if it has one.
    pub(super) fn get(&self, key: &[u64]) -> Option<usize> {
        self.0.get(key).copied()
    }

    /// The place of `key`: `next` if it has none yet.
    pub(super) fn get_or(&mut self, key: Vec<u64>, next: usize) -> usize {
        *self.0.entry(key).or_insert(next)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_place_stays() {
        let mut places = Places::default();
        assert_eq!(places.get(&[1, 2]), None);
        assert_eq!(places.get_or(Vec::from([1, 2]), 7), 7);
        assert_eq!(places.get_or(Vec::from([1]), 8), 8);
        assert_eq!(places.get_or(Vec::from([1, 2]), 9), 7);
        assert_eq!(places.get(&[1, 2]), Some(7));
    }
}
