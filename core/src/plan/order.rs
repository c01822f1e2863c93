//! A partial order: what can come before what in one pot.

use alloc::borrow::Cow;
use alloc::format;
use alloc::vec;
use alloc::vec::Vec;
use core::cmp::Reverse;

use super::bits::Bits;
use crate::codes::codes;
use crate::fault::Diagnose;

/// Maximum number of nodes of an order: its bits then take 50 MB.
pub const MOST_NODES: usize = 20_000;

/// Errors of an order.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum OrderError {
    /// More nodes than [`MOST_NODES`].
    #[error("{count} formulas are too many for one plan.")]
    TooMany {
        /// Number of nodes.
        count: usize,
    },
    /// A pair names a node that is not there.
    #[error("Node {node} is not one of the {count} nodes of the order.")]
    NoSuchNode {
        /// The node named.
        node: usize,
        /// Number of nodes.
        count: usize,
    },
    /// A node would come before itself.
    #[error("Node {node} would have to come before itself.")]
    Cycle {
        /// One node of the cycle.
        node: usize,
    },
}

impl Diagnose for OrderError {
    codes! {
        Self::TooMany { .. } => "order-too-many",
        Self::NoSuchNode { .. } => "order-no-such-node",
        Self::Cycle { .. } => "order-cycle",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::TooMany { .. } => format!("Plan at most {MOST_NODES} at a time.").into(),
            Self::NoSuchNode { count, .. } => {
                format!("Nodes are numbered 0 to {count} - 1.").into()
            }
            Self::Cycle { .. } => "Take one of the pairs of the cycle away.".into(),
        }
    }
}

/// A strict partial order on the nodes `0..len`: irreflexive and transitive.
///
/// It is closed by construction. Chains counted on anything less (covering pairs only) come
/// out too many, so there is no way to have an order that is not closed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Order {
    /// For each node, what comes after it.
    after: Vec<Bits>,
}

impl Order {
    /// The transitive closure of `pairs` (before, after) on the nodes `0..count`.
    ///
    /// # Errors
    ///
    /// Too many nodes, a pair that names no node, a cycle.
    pub fn from_pairs(
        count: usize,
        pairs: impl IntoIterator<Item = (usize, usize)>,
    ) -> Result<Self, OrderError> {
        if count > MOST_NODES {
            return Err(OrderError::TooMany { count });
        }
        let mut after = vec![Bits::empty(count); count];
        for (a, b) in pairs {
            if b >= count {
                return Err(OrderError::NoSuchNode { node: b, count });
            }
            after.get_mut(a).ok_or(OrderError::NoSuchNode { node: a, count })?.insert(b);
        }
        close(&mut after);
        match after.iter().enumerate().find(|(node, row)| row.contains(*node)) {
            Some((node, _)) => Err(OrderError::Cycle { node }),
            None => Ok(Self { after }),
        }
    }

    /// From rows that are known to be irreflexive and transitive.
    pub(super) fn from_closed_rows(after: Vec<Bits>) -> Self {
        Self { after }
    }

    /// Number of nodes.
    #[must_use]
    pub fn len(&self) -> usize {
        self.after.len()
    }

    /// Whether the order is empty.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.after.is_empty()
    }

    /// Whether `a` comes strictly before `b`.
    #[must_use]
    pub fn precedes(&self, a: usize, b: usize) -> bool {
        self.after.get(a).is_some_and(|row| row.contains(b))
    }

    /// Whether one of two different nodes comes before the other.
    #[must_use]
    pub fn comparable(&self, a: usize, b: usize) -> bool {
        self.precedes(a, b) || self.precedes(b, a)
    }

    /// Number of nodes of the longest chain; that number of antichains covers the order, and no
    /// fewer (Mirsky 1971).
    #[must_use]
    pub fn height(&self) -> usize {
        let mut height = vec![0_usize; self.len()];
        for node in self.linear_extension().into_iter().rev() {
            let above = self.rows().get(node).into_iter().flat_map(Bits::iter);
            let above = above.filter_map(|b| height.get(b).copied()).max().unwrap_or(0);
            if let Some(h) = height.get_mut(node) {
                *h = above.saturating_add(1);
            }
        }
        height.into_iter().max().unwrap_or(0)
    }

    /// All nodes, each before what it precedes: the more a node precedes the earlier it
    /// comes, then by number.
    #[must_use]
    pub fn linear_extension(&self) -> Vec<usize> {
        // A node precedes all that its successors precede, and the successor too.
        let followers = self.after.iter().map(|row| Reverse(row.count()));
        let mut nodes: Vec<(Reverse<usize>, usize)> = followers.zip(0..).collect();
        nodes.sort_unstable();
        nodes.into_iter().map(|(_, node)| node).collect()
    }

    pub(super) fn rows(&self) -> &[Bits] {
        &self.after
    }

    /// The same order with node `names[i]` as node `i`.
    pub(super) fn renumbered(&self, names: &[usize]) -> Self {
        let mut number = vec![0; self.len()];
        for (new, &old) in names.iter().enumerate() {
            if let Some(n) = number.get_mut(old) {
                *n = new;
            }
        }
        let after = names
            .iter()
            .map(|&old| {
                let mut row = Bits::empty(self.len());
                for b in self.after.get(old).into_iter().flat_map(Bits::iter) {
                    number.get(b).into_iter().for_each(|&n| row.insert(n));
                }
                row
            })
            .collect();
        Self { after }
    }
}

/// Transitive closure (Warshall 1962), a row at a time.
fn close(after: &mut [Bits]) {
    for via in 0..after.len() {
        let beyond = after.get(via).filter(|row| row.iter().next().is_some());
        let Some(beyond) = beyond.cloned() else { continue };
        for row in after.iter_mut().filter(|row| row.contains(via)) {
            row.union(&beyond);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pairs_are_closed() {
        let order = Order::from_pairs(4, [(0, 1), (1, 2), (2, 3)]).unwrap();
        assert!(order.precedes(0, 3) && !order.precedes(3, 0) && order.comparable(3, 0));
        assert_eq!(order.height(), 4);
        assert_eq!(order.linear_extension(), [0, 1, 2, 3]);
    }

    #[test]
    fn a_cycle_is_refused() {
        let cycle = Order::from_pairs(3, [(0, 1), (1, 2), (2, 0)]);
        assert_eq!(cycle, Err(OrderError::Cycle { node: 0 }));
    }

    #[test]
    fn a_node_that_is_not_there_is_named() {
        let wrong = Order::from_pairs(3, [(0, 7)]);
        assert_eq!(wrong, Err(OrderError::NoSuchNode { node: 7, count: 3 }));
        let next = Order::from_pairs(3, [(0, 3)]).unwrap_err();
        assert_eq!(next, OrderError::NoSuchNode { node: 3, count: 3 });
        assert_eq!(next.help(), "Nodes are numbered 0 to 3 - 1.");
    }

    #[test]
    fn an_order_has_at_most_as_many_nodes_as_its_bits_have_room_for() {
        assert_eq!(Order::from_pairs(MOST_NODES, []).map(|order| order.len()), Ok(MOST_NODES));
        let more = Order::from_pairs(MOST_NODES + 1, []).unwrap_err();
        assert_eq!(more, OrderError::TooMany { count: MOST_NODES + 1 });
        assert_eq!(more.help(), "Plan at most 20000 at a time.");
    }

    #[test]
    fn an_order_of_nothing_is_empty_and_has_no_height() {
        let none = Order::from_pairs(0, []).unwrap();
        assert!(none.is_empty());
        assert_eq!((none.len(), none.height()), (0, 0));
        let one = Order::from_pairs(1, []).unwrap();
        assert!(!one.is_empty());
        assert_eq!((one.len(), one.height()), (1, 1));
    }

    #[test]
    fn renumbering_keeps_the_order() {
        let order = Order::from_pairs(3, [(2, 0), (0, 1)]).unwrap();
        let same = order.renumbered(&[2, 0, 1]);
        assert!(same.precedes(0, 1) && same.precedes(1, 2) && same.precedes(0, 2));
    }
}
