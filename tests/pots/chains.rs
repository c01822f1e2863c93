//! Fewest chains and their proofs against all partitions and all subsets.

use pourwright::plan::internals::cover::{fewest_chains, proves};
use pourwright::plan::internals::order::Order;
use pourwright_tests::oracle::chains;
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]
    #[test]
    fn as_few_as_exhaustive_search_finds(
        nodes in 1_usize..9,
        pairs in proptest::collection::vec((0_usize..9, 0_usize..9), 0..16),
        key in proptest::collection::vec(0_u32..4, 9),
    ) {
        let pairs: Vec<_> = pairs.into_iter().filter(|(a, b)| a < b && *b < nodes).collect();
        let before = chains::closure(nodes, &pairs);
        let order = Order::from_pairs(nodes, pairs.iter().copied()).unwrap();
        let cover = fewest_chains(&order, &vec![1; nodes], &key[..nodes]).unwrap();
        prop_assert_eq!(cover.chains.len(), chains::fewest_chains(&before));
        prop_assert_eq!(cover.antichain.len(), chains::largest_antichain(&before));
        prop_assert!(proves(&cover.antichain, &order));
    }
}

#[test]
fn pairs_without_their_closure_would_count_too_many() {
    // Two plain colors, one softened mix of both, two salted ones.
    let pairs = [(0, 2), (1, 2), (2, 3), (2, 4)];
    assert_eq!(chains::fewest_paths(5, &pairs), 3);
    let order = Order::from_pairs(5, pairs).unwrap();
    assert_eq!(fewest_chains(&order, &[1; 5], &[0; 5]).unwrap().chains.len(), 2);
}
