//! A set of small numbers, one bit each: a row of an order.

use alloc::vec;
use alloc::vec::Vec;

#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(super) struct Bits(Vec<u64>);

/// The word that holds bit `i`, and the bit within it.
const fn place(i: usize) -> (usize, u64) {
    (i >> 6, 1 << (i & 63))
}

impl Bits {
    /// The empty set, with room for `0..count`.
    pub(super) fn empty(count: usize) -> Self {
        Self(vec![0; count.div_ceil(64)])
    }

    /// The set `0..count`.
    pub(super) fn full(count: usize) -> Self {
        let mut all = Self::empty(count);
        for i in 0..count {
            all.insert(i);
        }
        all
    }

    pub(super) fn insert(&mut self, i: usize) {
        let (word, bit) = place(i);
        if let Some(w) = self.0.get_mut(word) {
            *w |= bit;
        }
    }

    pub(super) fn remove(&mut self, i: usize) {
        let (word, bit) = place(i);
        if let Some(w) = self.0.get_mut(word) {
            *w &= !bit;
        }
    }

    pub(super) fn contains(&self, i: usize) -> bool {
        let (word, bit) = place(i);
        self.0.get(word).is_some_and(|w| w & bit != 0)
    }

    pub(super) fn union(&mut self, other: &Self) {
        for (a, b) in self.0.iter_mut().zip(&other.0) {
            *a |= b;
        }
    }

    pub(super) fn intersect(&mut self, other: &Self) {
        for (a, b) in self.0.iter_mut().zip(&other.0) {
            *a &= b;
        }
    }

    pub(super) fn count(&self) -> usize {
        self.0.iter().fold(0, |sum, w| sum.saturating_add(w.count_ones() as usize))
    }

    /// The members, least first.
    pub(super) fn iter(&self) -> impl Iterator<Item = usize> {
        self.0.iter().enumerate().flat_map(|(i, &word)| {
            core::iter::successors((word != 0).then_some(word), |w| {
                let rest = w & w.wrapping_sub(1);
                (rest != 0).then_some(rest)
            })
            .map(move |w| (i << 6) | w.trailing_zeros() as usize)
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn members_come_least_first() {
        let mut set = Bits::empty(200);
        for i in [199, 0, 64, 63, 127] {
            set.insert(i);
        }
        assert_eq!(set.iter().collect::<Vec<_>>(), [0, 63, 64, 127, 199]);
        set.remove(64);
        assert!(!set.contains(64) && set.contains(63));
        assert_eq!(set.count(), 4);
        assert_eq!(Bits::full(130).count(), 130);
    }

    #[test]
    fn what_lies_beyond_the_room_is_no_member() {
        let mut set = Bits::empty(3);
        set.insert(700);
        assert!(!set.contains(700));
        assert_eq!(set.count(), 0);
    }
}
