//! The fewest chains that cover an order, and the proof that fewer cannot.

use alloc::borrow::Cow;
use alloc::collections::VecDeque;
use alloc::format;
use alloc::vec;
use alloc::vec::Vec;

use super::bits::Bits;
use super::order::Order;
use crate::codes::codes;
use crate::fault::Diagnose;

/// Errors of a cover.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum CoverError {
    /// A list that should hold one entry a node does not.
    #[error("There are {nodes} nodes but {entries} {what}.")]
    Lengths {
        /// Nodes of the order.
        nodes: usize,
        /// Entries given.
        entries: usize,
        /// Entries of what.
        what: &'static str,
    },
}

impl Diagnose for CoverError {
    codes! {
        Self::Lengths { .. } => "cover-lengths",
    }

    fn help(&self) -> Cow<'static, str> {
        let Self::Lengths { nodes, what, .. } = self;
        format!("Give {nodes} {what}, one for each node.").into()
    }
}

/// Chains that cover an order, and nodes that show why fewer do not.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cover {
    /// Each chain from its first node to its last; the chain whose first node has the smallest
    /// key comes first.
    pub chains: Vec<Vec<usize>>,
    /// Nodes of which no two lie on one chain. Their times add up to the number of chains,
    /// which is the proof (Dilworth 1950).
    pub antichain: Vec<usize>,
}

/// The fewest chains that go through node `i` of `order` at least `times[i]` times (once, for
/// a plain cover), no chain twice through the same node.
///
/// The chains are Σ times less the greatest flow from each node to its successors, no node
/// giving or taking more than its times; with all times 1 that is the maximum bipartite
/// matching on the transitive closure (Fulkerson 1956). The antichain is what the minimum cut
/// leaves (Kőnig 1931). Augmenting paths are grown from all free nodes at once, a row of 64
/// successors a step, and end at the first free one: a general-purpose graph library would
/// first copy the closure's up to n²/2 edges out of its bits.
///
/// # Ties
///
/// Nodes are taken by rising `key` (equal keys by number), and so are the successors of each:
/// with keys from light to dark, or from the earliest promise to the latest, a chain goes on to
/// the nearest node that is free, and gives it up only if fewer chains result.
///
/// # Errors
///
/// `times` or `key` does not hold one entry a node.
pub fn fewest_chains(order: &Order, times: &[u32], key: &[u32]) -> Result<Cover, CoverError> {
    let nodes = order.len();
    for (entries, what) in [(times.len(), "times"), (key.len(), "keys")] {
        if entries != nodes {
            return Err(CoverError::Lengths { nodes, entries, what });
        }
    }
    let mut names: Vec<usize> = (0..nodes).collect();
    names.sort_unstable_by_key(|&n| (key.get(n).copied(), n));
    let ranked = order.renumbered(&names);
    let times: Vec<u32> = names.iter().filter_map(|&n| times.get(n).copied()).collect();

    let mut flow = Flow::new(&ranked, &times);
    flow.start();
    let cut = loop {
        if let Some(cut) = flow.augment() {
            break cut;
        }
    };
    let name = |i: usize| names.get(i).copied();
    let chains = flow.chains();
    Ok(Cover {
        chains: chains.into_iter().map(|c| c.into_iter().filter_map(name).collect()).collect(),
        antichain: cut.antichain().into_iter().filter_map(name).collect(),
    })
}

/// Whether no two of `antichain` are comparable in `order` (and none is in it twice), so
/// that no two of them can share a chain.
#[must_use]
pub fn proves(antichain: &[usize], order: &Order) -> bool {
    antichain.iter().enumerate().all(|(i, &a)| {
        a < order.len()
            && antichain
                .iter()
                .skip(i.saturating_add(1))
                .all(|&b| a != b && !order.comparable(a, b))
    })
}

/// How often each node is followed by which other.
struct Flow<'a> {
    order: &'a Order,
    /// How often each node may yet be followed.
    gives: Vec<u32>,
    /// How often each node may yet follow.
    takes: Vec<u32>,
    /// Whom each node follows, and how often.
    from: Vec<Vec<(usize, u32)>>,
}

/// Nodes that the last search reached: no augmenting path leads out of them.
struct Cut {
    givers: Bits,
    takers: Bits,
}

impl Cut {
    /// A giver is in some chain, so each of these counts.
    fn antichain(&self) -> Vec<usize> {
        self.givers.iter().filter(|&i| !self.takers.contains(i)).collect()
    }
}

/// How a search came to each node.
struct Forest {
    givers: Bits,
    takers: Bits,
    /// The giver through which each taker was found.
    found_by: Vec<usize>,
    /// The taker through which each giver was found: none for a root.
    freed_by: Vec<Option<usize>>,
    root: Vec<usize>,
    spent: Bits,
}

impl<'a> Flow<'a> {
    fn new(order: &'a Order, times: &[u32]) -> Self {
        let from = vec![Vec::new(); order.len()];
        Self { order, gives: times.to_vec(), takes: times.to_vec(), from }
    }

    fn free(list: &[u32], i: usize) -> u32 {
        list.get(i).copied().unwrap_or(0)
    }

    /// Each node, in order, goes on to the first that is free.
    fn start(&mut self) {
        let mut free = Bits::empty(self.order.len());
        (0..self.order.len())
            .filter(|&i| Self::free(&self.takes, i) > 0)
            .for_each(|i| free.insert(i));
        for (giver, row) in self.order.rows().iter().enumerate() {
            let mut open = row.clone();
            open.intersect(&free);
            for taker in open.iter() {
                let more = Self::free(&self.gives, giver).min(Self::free(&self.takes, taker));
                if more == 0 {
                    break;
                }
                self.join(giver, taker, more);
                if Self::free(&self.takes, taker) == 0 {
                    free.remove(taker);
                }
            }
        }
    }

    /// Lets `taker` follow `giver` this many times more.
    fn join(&mut self, giver: usize, taker: usize, more: u32) {
        if let Some(free) = self.gives.get_mut(giver) {
            *free = free.saturating_sub(more);
        }
        if let Some(free) = self.takes.get_mut(taker) {
            *free = free.saturating_sub(more);
        }
        self.shift(giver, taker, i64::from(more));
    }

    fn shift(&mut self, giver: usize, taker: usize, change: i64) {
        let Some(from) = self.from.get_mut(taker) else { return };
        let changed = |now: u32| u32::try_from(i64::from(now).saturating_add(change)).unwrap_or(0);
        match from.iter_mut().find(|(g, _)| *g == giver) {
            Some((_, times)) => *times = changed(*times),
            None => from.push((giver, changed(0))),
        }
        from.retain(|(_, times)| *times > 0);
    }

    /// Grows a tree from every node that may yet be followed, and augments once in each tree
    /// that reaches a node that may yet follow; the cut, where none does.
    fn augment(&mut self) -> Option<Cut> {
        let order = self.order;
        let count = order.len();
        let mut forest = Forest {
            givers: Bits::empty(count),
            takers: Bits::empty(count),
            found_by: vec![0; count],
            freed_by: vec![None; count],
            root: (0..count).collect(),
            spent: Bits::empty(count),
        };
        let roots = (0..count).filter(|&i| Self::free(&self.gives, i) > 0);
        let mut queue: VecDeque<usize> = roots.collect();
        queue.iter().for_each(|&root| forest.givers.insert(root));
        let mut unseen = Bits::full(count);
        let mut augmented = false;
        while let Some(giver) = queue.pop_front() {
            let Some(&root) = forest.root.get(giver) else { continue };
            let Some(row) = order.rows().get(giver) else { continue };
            if forest.spent.contains(root) {
                continue;
            }
            let mut open = row.clone();
            open.intersect(&unseen);
            for taker in open.iter() {
                unseen.remove(taker);
                forest.takers.insert(taker);
                if let Some(by) = forest.found_by.get_mut(taker) {
                    *by = giver;
                }
                if Self::free(&self.takes, taker) > 0 {
                    self.augment_along(&forest, taker);
                    forest.spent.insert(root);
                    augmented = true;
                    break;
                }
                for &(holder, _) in self.from.get(taker).into_iter().flatten() {
                    if forest.givers.contains(holder) {
                        continue;
                    }
                    forest.givers.insert(holder);
                    if let (Some(by), Some(r)) =
                        (forest.freed_by.get_mut(holder), forest.root.get_mut(holder))
                    {
                        *by = Some(taker);
                        *r = root;
                    }
                    queue.push_back(holder);
                }
            }
        }
        (!augmented).then_some(Cut { givers: forest.givers, takers: forest.takers })
    }

    /// Moves as much as the path to `end` allows.
    fn augment_along(&mut self, forest: &Forest, end: usize) {
        // Links from the end back to the root: (giver, taker it gains, taker it gives up).
        let mut links = Vec::new();
        let mut taker = end;
        let mut most = Self::free(&self.takes, end);
        while let Some(&giver) = forest.found_by.get(taker) {
            let freed = forest.freed_by.get(giver).copied().flatten();
            links.push((giver, taker, freed));
            let Some(next) = freed else {
                most = most.min(Self::free(&self.gives, giver));
                break;
            };
            let held = self.from.get(next).into_iter().flatten().find(|(g, _)| *g == giver);
            most = most.min(held.map_or(0, |&(_, times)| times));
            taker = next;
        }
        for &(giver, taker, freed) in &links {
            self.shift(giver, taker, i64::from(most));
            match freed {
                Some(lost) => self.shift(giver, lost, -i64::from(most)),
                None => {
                    if let Some(free) = self.gives.get_mut(giver) {
                        *free = free.saturating_sub(most);
                    }
                }
            }
        }
        if let Some(free) = self.takes.get_mut(end) {
            *free = free.saturating_sub(most);
        }
    }

    /// The chains, each node's turns handed out in order.
    fn chains(&self) -> Vec<Vec<usize>> {
        let count = self.order.len();
        let mut next: Vec<Vec<(usize, u32)>> = vec![Vec::new(); count];
        for (taker, from) in self.from.iter().enumerate() {
            for &(giver, n) in from {
                next.get_mut(giver).into_iter().for_each(|list| list.push((taker, n)));
            }
        }
        let starts = |(i, free): (usize, &u32)| core::iter::repeat_n(i, *free as usize);
        let mut chains: Vec<Vec<usize>> = Vec::new();
        for start in self.takes.iter().enumerate().flat_map(starts) {
            chains.push(vec![start]);
        }
        // All chains that come to a node must be there before its turns are handed out.
        let mut at: Vec<Vec<usize>> = vec![Vec::new(); count];
        for (chain, nodes) in chains.iter().enumerate() {
            nodes.first().and_then(|&n| at.get_mut(n)).into_iter().for_each(|l| l.push(chain));
        }
        for node in self.order.linear_extension() {
            let mut here = at.get(node).cloned().unwrap_or_default();
            here.sort_unstable();
            let turns = next.get(node).into_iter().flatten();
            let turns = turns.flat_map(|&(taker, n)| core::iter::repeat_n(taker, n as usize));
            for (chain, taker) in here.into_iter().zip(turns) {
                chains.get_mut(chain).into_iter().for_each(|c| c.push(taker));
                at.get_mut(taker).into_iter().for_each(|l| l.push(chain));
            }
        }
        chains
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn plain(order: &Order) -> Cover {
        fewest_chains(order, &vec![1; order.len()], &vec![0; order.len()]).unwrap()
    }

    /// Each node is in the required number of chains, each chain rises, and the antichain weighs as many.
    fn check(order: &Order, times: &[u32], cover: &Cover) {
        let mut seen = vec![0; order.len()];
        for chain in &cover.chains {
            assert!(chain.windows(2).all(|w| order.precedes(w[0], w[1])), "{chain:?}");
            chain.iter().for_each(|&n| seen[n] += 1);
        }
        assert_eq!(seen, times);
        assert!(proves(&cover.antichain, order), "{:?}", cover.antichain);
        let weight: u32 = cover.antichain.iter().map(|&n| times[n]).sum();
        assert_eq!(weight as usize, cover.chains.len());
    }

    #[test]
    fn two_chains_cross_in_one_node() {
        // Chains may pass over the middle node, which covering pairs alone do not allow: without
        // the closure three paths are needed.
        let order = Order::from_pairs(5, [(0, 2), (1, 2), (2, 3), (2, 4)]).unwrap();
        let cover = plain(&order);
        check(&order, &[1; 5], &cover);
        assert_eq!(cover.chains.len(), 2);
    }

    #[test]
    fn chains_go_on_to_the_nearest_key() {
        let order = Order::from_pairs(4, [(0, 1), (0, 2), (0, 3)]).unwrap();
        let cover = fewest_chains(&order, &[1; 4], &[0, 9, 3, 5]).unwrap();
        assert_eq!(cover.chains, [vec![0, 2], vec![3], vec![1]]);
    }

    #[test]
    fn a_node_may_be_wanted_several_times() {
        let order = Order::from_pairs(3, [(0, 1), (1, 2)]).unwrap();
        let cover = fewest_chains(&order, &[2, 3, 1], &[0, 1, 2]).unwrap();
        check(&order, &[2, 3, 1], &cover);
        assert_eq!((cover.chains.len(), cover.antichain), (3, vec![1]));
    }

    #[test]
    fn all_chains_go_on_to_the_nearest_node_as_often_as_it_is_wanted() {
        // 0 and 1 both go on to 3, which is wanted twice; 2 is not wanted, and 4 begins a chain of its own.
        let pairs = [0, 1].into_iter().flat_map(|a| [2, 3, 4].map(|b| (a, b)));
        let order = Order::from_pairs(5, pairs).unwrap();
        let times = [1, 1, 0, 2, 1];
        let cover = fewest_chains(&order, &times, &[0, 1, 2, 3, 4]).unwrap();
        check(&order, &times, &cover);
        assert_eq!(cover.chains, [vec![0, 3], vec![1, 3], vec![4]]);
    }

    #[test]
    fn where_chains_meet_the_first_goes_on_to_the_nearest() {
        let order = Order::from_pairs(6, [(0, 2), (2, 3), (1, 3), (3, 4), (3, 5)]).unwrap();
        let times = [1, 1, 1, 2, 1, 1];
        let cover = fewest_chains(&order, &times, &[0, 1, 2, 3, 4, 5]).unwrap();
        check(&order, &times, &cover);
        assert_eq!(cover.chains, [vec![0, 2, 3, 4], vec![1, 3, 5]]);
    }

    #[test]
    fn where_the_nearest_node_is_taken_a_chain_goes_on_to_the_next() {
        let order = Order::from_pairs(4, [(0, 2), (1, 2), (2, 3)]).unwrap();
        assert_eq!(plain(&order).chains, [vec![0, 2], vec![1, 3]]);
    }

    // 2 could go on to 3 as well, but 1 is on its way there, and nothing is gained.
    #[test]
    fn no_more_is_given_up_than_one_chain_less_takes() {
        let pairs = [
            [(0, 2), (0, 6), (1, 3), (1, 4), (1, 6), (2, 3)].as_slice(),
            &[(3, 4), (3, 5), (3, 6), (4, 5), (4, 6)],
        ];
        let order = Order::from_pairs(7, pairs.concat()).unwrap();
        let cover = fewest_chains(&order, &[1; 7], &[1, 2, 1, 2, 1, 0, 0]).unwrap();
        check(&order, &[1; 7], &cover);
        assert_eq!(cover.chains, [vec![0, 2, 6], vec![1, 3, 4, 5]]);
    }

    #[test]
    fn nothing_needs_no_chain() {
        let order = Order::from_pairs(0, []).unwrap();
        assert_eq!(plain(&order), Cover { chains: vec![], antichain: vec![] });
        let two = Order::from_pairs(2, []).unwrap();
        let refused = fewest_chains(&two, &[1], &[0, 0]).unwrap_err();
        assert_eq!(refused, CoverError::Lengths { nodes: 2, entries: 1, what: "times" });
        assert_eq!(refused.help(), "Give 2 times, one for each node.");
        let refused = fewest_chains(&two, &[1, 1], &[0]).unwrap_err();
        assert_eq!(refused, CoverError::Lengths { nodes: 2, entries: 1, what: "keys" });
    }

    #[test]
    fn a_chain_is_no_antichain() {
        let order = Order::from_pairs(3, [(0, 1)]).unwrap();
        assert!(proves(&[1, 2], &order) && proves(&[], &order));
        assert!(!proves(&[0, 1], &order) && !proves(&[2, 2], &order) && !proves(&[3], &order));
    }

    proptest! {
        #[test]
        fn the_proof_matches_the_count(
            nodes in 1_usize..40,
            pairs in proptest::collection::vec((0_usize..40, 0_usize..40), 0..120),
            times in proptest::collection::vec(0_u32..4, 40),
            key in proptest::collection::vec(0_u32..10, 40),
        ) {
            let rising = pairs.into_iter().filter(|(a, b)| a < b && *b < nodes);
            let order = Order::from_pairs(nodes, rising).unwrap();
            let cover = fewest_chains(&order, &times[..nodes], &key[..nodes]).unwrap();
            check(&order, &times[..nodes], &cover);
        }
    }
}
