//! A list that has a first entry: the layers of a piece, the stages of a pot.

use alloc::vec::Vec;
use core::iter::{Chain, Once, once};
use core::slice;

/// One entry or more.
#[derive(Debug, Clone)]
pub(super) struct OneOrMore<T> {
    pub(super) first: T,
    pub(super) later: Vec<T>,
}

impl<T> OneOrMore<T> {
    /// The entries of a list; `None` of an empty one.
    pub(super) fn of(entries: impl IntoIterator<Item = T>) -> Option<Self> {
        let mut entries = entries.into_iter();
        Some(Self { first: entries.next()?, later: entries.collect() })
    }

    /// Applies `make` to each and its place.
    pub(super) fn try_map<'a, U, E>(
        &'a self,
        mut make: impl FnMut(usize, &'a T) -> Result<U, E>,
    ) -> Result<OneOrMore<U>, E> {
        let first = make(0, &self.first)?;
        let mut later = Vec::with_capacity(self.later.len());
        for (place, one) in (1..).zip(&self.later) {
            later.push(make(place, one)?);
        }
        Ok(OneOrMore { first, later })
    }

    pub(super) fn iter(&self) -> Chain<Once<&T>, slice::Iter<'_, T>> {
        once(&self.first).chain(&self.later)
    }

    pub(super) fn iter_mut(&mut self) -> impl Iterator<Item = &mut T> {
        once(&mut self.first).chain(&mut self.later)
    }

    pub(super) fn len(&self) -> usize {
        self.later.len().saturating_add(1)
    }
}

impl<'a, T> IntoIterator for &'a OneOrMore<T> {
    type Item = &'a T;
    type IntoIter = Chain<Once<&'a T>, slice::Iter<'a, T>>;

    fn into_iter(self) -> Self::IntoIter {
        self.iter()
    }
}
